-- SPDX-License-Identifier: GPL-3.0-or-later
-- Littoral store, schema version 1.
--
-- Ids are microseconds since 1970, made by the program. An instant is two columns: x_utc, milliseconds since 1970 UTC, and
-- x_offset, the seconds east of UTC the keeper's clock stood at when it was typed. A day is text, YYYY-MM-DD, by the
-- keeper's own calendar. Values that carry no unit in their column name are in the canonical unit of table parameter.
-- References are checked at commit and never cascade here: the program removes what hangs on a row itself, so that its
-- journal holds every removed row. Text that is JSON is checked by the program: SQLite 3.40 counts json_valid() as unsafe
-- in a schema that is not trusted. Statements end in a semicolon; triggers are not used.

CREATE TABLE parameter (
    key TEXT NOT NULL PRIMARY KEY,
    name TEXT NOT NULL,
    canonical_unit TEXT NOT NULL,
    units TEXT NOT NULL,
    lowest REAL NOT NULL,
    highest REAL NOT NULL
) STRICT;

CREATE TABLE tank (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL CHECK (length(trim(name)) > 0),
    position INTEGER NOT NULL,
    length_cm REAL NOT NULL CHECK (length_cm >= 0),
    depth_cm REAL NOT NULL CHECK (depth_cm >= 0),
    height_cm REAL NOT NULL CHECK (height_cm >= 0),
    glass_mm REAL NOT NULL CHECK (glass_mm >= 0),
    note TEXT NOT NULL
) STRICT;
CREATE UNIQUE INDEX tank_name ON tank (name COLLATE NOCASE);

CREATE TABLE source_water (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('tap', 'reverse-osmosis', 'blend', 'rain')),
    nitrate_mgn_per_l REAL,
    chloramine TEXT NOT NULL CHECK (chloramine IN ('no', 'unknown', 'yes')),
    alkalinity_meq_per_l REAL,
    hardness_mmol_per_l REAL,
    ph REAL,
    chloride_mg_per_l REAL,
    note TEXT NOT NULL
) STRICT;

CREATE TABLE layout (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    tank INTEGER NOT NULL REFERENCES tank (id) DEFERRABLE INITIALLY DEFERRED,
    number INTEGER NOT NULL CHECK (number > 0),
    name TEXT NOT NULL,
    flooded_utc INTEGER NOT NULL,
    flooded_offset INTEGER NOT NULL CHECK (abs(flooded_offset) <= 64800),
    ended_utc INTEGER,
    ended_offset INTEGER CHECK (abs(ended_offset) <= 64800),
    start TEXT NOT NULL CHECK (start IN ('new-media', 'mature-media', 'starter', 'dry-start', 'dark-start')),
    bed TEXT NOT NULL CHECK (bed IN ('rich-soil', 'mild-soil', 'spent-soil', 'inert')),
    bed_l REAL NOT NULL CHECK (bed_l >= 0),
    rock_kg REAL NOT NULL CHECK (rock_kg >= 0),
    rock_hardens INTEGER NOT NULL CHECK (rock_hardens IN (0, 1)),
    gap_cm REAL NOT NULL,
    measured_net_l REAL,
    plants TEXT NOT NULL CHECK (plants IN ('none', 'sparse', 'medium', 'dense')),
    source INTEGER REFERENCES source_water (id) DEFERRABLE INITIALLY DEFERRED,
    co2 TEXT NOT NULL CHECK (co2 IN ('none', 'pressurised', 'other')),
    co2_target_mg_per_l REAL NOT NULL,
    co2_hours REAL NOT NULL,
    light_hours REAL NOT NULL,
    light_par REAL NOT NULL,
    filter_flow_l_per_h REAL NOT NULL,
    temperature_c REAL NOT NULL,
    follows_cadence INTEGER NOT NULL CHECK (follows_cadence IN (0, 1)),
    note TEXT NOT NULL,
    UNIQUE (id, tank),
    CHECK ((ended_utc IS NULL) = (ended_offset IS NULL)),
    CHECK (ended_utc IS NULL OR ended_utc >= flooded_utc)
) STRICT;
CREATE INDEX layout_tank ON layout (tank);
CREATE INDEX layout_source ON layout (source);

CREATE TABLE test_kit (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL,
    parameter TEXT NOT NULL REFERENCES parameter (key) DEFERRABLE INITIALLY DEFERRED,
    unit TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('card', 'drops', 'strip', 'digital')),
    steps TEXT NOT NULL,
    reads_nitrite_too INTEGER NOT NULL CHECK (reads_nitrite_too IN (0, 1)),
    wait_minutes INTEGER NOT NULL CHECK (wait_minutes >= 0),
    lot TEXT NOT NULL,
    opened TEXT CHECK (opened GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    expires TEXT CHECK (expires GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    note TEXT NOT NULL,
    retired INTEGER NOT NULL CHECK (retired IN (0, 1))
) STRICT;
CREATE INDEX test_kit_parameter ON test_kit (parameter);

CREATE TABLE reading (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    tank INTEGER NOT NULL,
    layout INTEGER NOT NULL,
    parameter TEXT NOT NULL REFERENCES parameter (key) DEFERRABLE INITIALLY DEFERRED,
    at_utc INTEGER NOT NULL,
    at_offset INTEGER NOT NULL CHECK (abs(at_offset) <= 64800),
    typed TEXT NOT NULL,
    unit TEXT NOT NULL,
    censoring TEXT NOT NULL CHECK (censoring IN ('none', 'below', 'above', 'between')),
    value REAL NOT NULL,
    low REAL NOT NULL,
    high REAL NOT NULL,
    kit INTEGER REFERENCES test_kit (id) DEFERRABLE INITIALLY DEFERRED,
    note TEXT NOT NULL,
    entered_utc INTEGER,
    entered_offset INTEGER CHECK (abs(entered_offset) <= 64800),
    FOREIGN KEY (layout, tank) REFERENCES layout (id, tank) DEFERRABLE INITIALLY DEFERRED,
    CHECK (low <= high),
    CHECK ((entered_utc IS NULL) = (entered_offset IS NULL))
) STRICT;
CREATE INDEX reading_series ON reading (layout, parameter, at_utc, value);
CREATE INDEX reading_kit ON reading (kit) WHERE kit IS NOT NULL;

CREATE TABLE entry (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    tank INTEGER NOT NULL,
    layout INTEGER NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('water-change', 'top-up', 'dose', 'feeding', 'upkeep', 'observation', 'addition',
                                       'loss', 'media-transfer', 'light-change', 'co2-change', 'note')),
    at_utc INTEGER NOT NULL,
    at_offset INTEGER NOT NULL CHECK (abs(at_offset) <= 64800),
    planned INTEGER NOT NULL CHECK (planned IN (0, 1)),
    planned_for_utc INTEGER,
    planned_for_offset INTEGER CHECK (abs(planned_for_offset) <= 64800),
    planned_fraction REAL CHECK (planned_fraction BETWEEN 0 AND 1),
    subject TEXT NOT NULL,
    fraction REAL CHECK (fraction BETWEEN 0 AND 1),
    amount REAL,
    unit TEXT NOT NULL,
    second REAL,
    protein_share REAL CHECK (protein_share BETWEEN 0 AND 1),
    count INTEGER,
    load_mgn_per_l_d REAL,
    severity INTEGER CHECK (severity BETWEEN 0 AND 4),
    coverage REAL CHECK (coverage BETWEEN 0 AND 1),
    place TEXT NOT NULL,
    source INTEGER REFERENCES source_water (id) DEFERRABLE INITIALLY DEFERRED,
    other_tank INTEGER REFERENCES tank (id) DEFERRABLE INITIALLY DEFERRED,
    note TEXT NOT NULL,
    entered_utc INTEGER,
    entered_offset INTEGER CHECK (abs(entered_offset) <= 64800),
    FOREIGN KEY (layout, tank) REFERENCES layout (id, tank) DEFERRABLE INITIALLY DEFERRED,
    CHECK ((planned_for_utc IS NULL) = (planned_for_offset IS NULL)),
    CHECK ((entered_utc IS NULL) = (entered_offset IS NULL))
) STRICT;
CREATE INDEX entry_time ON entry (layout, at_utc);
CREATE INDEX entry_source ON entry (source) WHERE source IS NOT NULL;
CREATE INDEX entry_other_tank ON entry (other_tank) WHERE other_tank IS NOT NULL;

CREATE TABLE photo (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    tank INTEGER NOT NULL,
    layout INTEGER NOT NULL,
    at_utc INTEGER NOT NULL,
    at_offset INTEGER NOT NULL CHECK (abs(at_offset) <= 64800),
    width INTEGER NOT NULL CHECK (width BETWEEN 0 AND 1600),
    height INTEGER NOT NULL CHECK (height BETWEEN 0 AND 1600),
    note TEXT NOT NULL,
    jpeg BLOB NOT NULL CHECK (length(jpeg) > 0),
    FOREIGN KEY (layout, tank) REFERENCES layout (id, tank) DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE INDEX photo_time ON photo (layout, at_utc);

CREATE TABLE supply (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL,
    kind TEXT NOT NULL,
    amount REAL,
    unit TEXT NOT NULL,
    opened TEXT CHECK (opened GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    expires TEXT CHECK (expires GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    lot TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;

CREATE TABLE task_template (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    key TEXT NOT NULL UNIQUE CHECK (length(key) > 0),
    definition TEXT NOT NULL,
    disabled INTEGER NOT NULL CHECK (disabled IN (0, 1))
) STRICT;

CREATE TABLE task (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    tank INTEGER NOT NULL,
    layout INTEGER NOT NULL,
    template_key TEXT NOT NULL,
    title TEXT NOT NULL,
    due TEXT CHECK (due GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    moved_to TEXT CHECK (moved_to GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    snoozed INTEGER NOT NULL CHECK (snoozed IN (0, 1)),
    state TEXT NOT NULL CHECK (state IN ('open', 'done', 'skipped')),
    closed_utc INTEGER,
    closed_offset INTEGER CHECK (abs(closed_offset) <= 64800),
    closed_by INTEGER REFERENCES entry (id) DEFERRABLE INITIALLY DEFERRED,
    reason TEXT NOT NULL,
    fraction REAL CHECK (fraction BETWEEN 0 AND 1),
    entered_utc INTEGER,
    entered_offset INTEGER CHECK (abs(entered_offset) <= 64800),
    FOREIGN KEY (layout, tank) REFERENCES layout (id, tank) DEFERRABLE INITIALLY DEFERRED,
    CHECK ((closed_utc IS NULL) = (closed_offset IS NULL)),
    CHECK ((entered_utc IS NULL) = (entered_offset IS NULL))
) STRICT;
CREATE INDEX task_due ON task (layout, due);
CREATE INDEX task_closed_by ON task (closed_by) WHERE closed_by IS NOT NULL;

CREATE TABLE target (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    tank INTEGER NOT NULL REFERENCES tank (id) DEFERRABLE INITIALLY DEFERRED,
    parameter TEXT NOT NULL REFERENCES parameter (key) DEFERRABLE INITIALLY DEFERRED,
    low REAL,
    high REAL,
    UNIQUE (tank, parameter),
    CHECK (low IS NULL OR high IS NULL OR low <= high)
) STRICT;

CREATE TABLE plan (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    layout INTEGER NOT NULL REFERENCES layout (id) DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL,
    created_utc INTEGER NOT NULL,
    created_offset INTEGER NOT NULL CHECK (abs(created_offset) <= 64800),
    adopted_utc INTEGER,
    adopted_offset INTEGER CHECK (abs(adopted_offset) <= 64800),
    body TEXT NOT NULL,
    CHECK ((adopted_utc IS NULL) = (adopted_offset IS NULL))
) STRICT;
CREATE INDEX plan_layout ON plan (layout);

CREATE TABLE forecast (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    layout INTEGER NOT NULL REFERENCES layout (id) DEFERRABLE INITIALLY DEFERRED,
    issued_utc INTEGER NOT NULL,
    issued_offset INTEGER NOT NULL CHECK (abs(issued_offset) <= 64800),
    as_of_utc INTEGER NOT NULL,
    as_of_offset INTEGER NOT NULL CHECK (abs(as_of_offset) <= 64800),
    model TEXT NOT NULL,
    body TEXT NOT NULL
) STRICT;
CREATE INDEX forecast_issued ON forecast (layout, issued_utc);

CREATE TABLE setting (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    key TEXT NOT NULL UNIQUE CHECK (length(key) > 0),
    value TEXT NOT NULL
) STRICT;

-- One row per change as the keeper thinks of it. Undone changes are the newest ones; a new change drops them.
CREATE TABLE journal (
    id INTEGER PRIMARY KEY,
    at_utc INTEGER NOT NULL,
    at_offset INTEGER NOT NULL,
    label TEXT NOT NULL,
    state TEXT NOT NULL CHECK (state IN ('done', 'undone')),
    bytes INTEGER NOT NULL
) STRICT;

-- The rows a change touched, in order, each as it was before and after: JSON objects by column name (bytes as base64);
-- NULL where there was no row.
CREATE TABLE journal_row (
    change INTEGER NOT NULL REFERENCES journal (id) DEFERRABLE INITIALLY DEFERRED,
    step INTEGER NOT NULL,
    of_table TEXT NOT NULL,
    of_id INTEGER NOT NULL,
    before_row TEXT,
    after_row TEXT,
    PRIMARY KEY (change, step)
) STRICT, WITHOUT ROWID;
