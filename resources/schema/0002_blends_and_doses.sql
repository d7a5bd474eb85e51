-- SPDX-License-Identifier: GPL-3.0-or-later
-- Version 2: what a blend is made of, what plants are judged to take up, and what a layout is dosed with.

ALTER TABLE source_water ADD COLUMN first_part INTEGER REFERENCES source_water (id) DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE source_water ADD COLUMN second_part INTEGER REFERENCES source_water (id) DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE source_water ADD COLUMN first_share REAL CHECK (first_share BETWEEN 0 AND 1);
CREATE INDEX source_water_first_part ON source_water (first_part) WHERE first_part IS NOT NULL;
CREATE INDEX source_water_second_part ON source_water (second_part) WHERE second_part IS NOT NULL;

ALTER TABLE layout ADD COLUMN uptake_low_mg_per_l_wk REAL CHECK (uptake_low_mg_per_l_wk >= 0);
ALTER TABLE layout ADD COLUMN uptake_high_mg_per_l_wk REAL CHECK (uptake_high_mg_per_l_wk >= 0);

CREATE TABLE dose_regimen (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    tank INTEGER NOT NULL,
    layout INTEGER NOT NULL,
    name TEXT NOT NULL CHECK (length(trim(name)) > 0),
    form TEXT NOT NULL CHECK (form IN ('salt', 'stock', 'fertiliser')),
    salt TEXT NOT NULL,
    stock_g REAL NOT NULL CHECK (stock_g >= 0),
    stock_ml REAL NOT NULL CHECK (stock_ml >= 0),
    nitrate_mg_per_ml REAL NOT NULL CHECK (nitrate_mg_per_ml >= 0),
    phosphate_mg_per_ml REAL NOT NULL CHECK (phosphate_mg_per_ml >= 0),
    potassium_mg_per_ml REAL NOT NULL CHECK (potassium_mg_per_ml >= 0),
    magnesium_mg_per_ml REAL NOT NULL CHECK (magnesium_mg_per_ml >= 0),
    iron_mg_per_ml REAL NOT NULL CHECK (iron_mg_per_ml >= 0),
    amount REAL NOT NULL CHECK (amount > 0),
    every_days INTEGER NOT NULL CHECK (every_days BETWEEN 0 AND 365),
    weekdays INTEGER NOT NULL CHECK (weekdays BETWEEN 0 AND 127),
    from_day TEXT NOT NULL CHECK (from_day GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    until_day TEXT CHECK (until_day GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    lean_start INTEGER NOT NULL CHECK (lean_start IN (0, 1)),
    note TEXT NOT NULL,
    FOREIGN KEY (layout, tank) REFERENCES layout (id, tank) DEFERRABLE INITIALLY DEFERRED,
    CHECK (every_days > 0 OR weekdays > 0)
) STRICT;
CREATE INDEX dose_regimen_layout ON dose_regimen (layout);
