-- Littoral store, schema version 3: days on which the keeper is away and a helper looks after the row.

CREATE TABLE journey (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    leaves TEXT NOT NULL CHECK (leaves GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    returns TEXT NOT NULL CHECK (returns GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    helper TEXT NOT NULL,
    phone TEXT NOT NULL,
    note TEXT NOT NULL,
    entered_utc INTEGER,
    entered_offset INTEGER CHECK (abs(entered_offset) <= 64800),
    CHECK (returns > leaves),
    CHECK ((entered_utc IS NULL) = (entered_offset IS NULL))
) STRICT;
