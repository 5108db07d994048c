-- Schema 3: a climate by month, drones seen, the state of a yard over a span, nuc stays for mating.

-- Stands in where no past year is recorded.
CREATE TABLE climate_month (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    month INTEGER NOT NULL UNIQUE CHECK (month BETWEEN 1 AND 12),
    tmax_tenths_c INTEGER NOT NULL,
    rain_days_tenths INTEGER
) STRICT;

CREATE TABLE drone_sighting (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    yard TEXT NOT NULL REFERENCES yard (id) DEFERRABLE INITIALLY DEFERRED,
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    stage TEXT NOT NULL
        CHECK (stage IN ('comb_in', 'eggs', 'larvae', 'sealed', 'purple_eyes', 'emerging',
            'flying')),
    colonies INTEGER CHECK (colonies BETWEEN 0 AND 999),
    note TEXT NOT NULL
) STRICT;
CREATE INDEX drone_sighting_yard ON drone_sighting (yard);

CREATE TABLE yard_note (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    yard TEXT NOT NULL REFERENCES yard (id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL CHECK (kind IN ('flow', 'dearth', 'robbing')),
    from_day TEXT NOT NULL CHECK (date(from_day, '+0 days') IS from_day),
    until_day TEXT NOT NULL CHECK (date(until_day, '+0 days') IS until_day),
    note TEXT NOT NULL,
    CHECK (from_day <= until_day)
) STRICT;
CREATE INDEX yard_note_yard ON yard_note (yard);

-- A batch's nucs at a mating station, there and back; or the days of insemination.
CREATE TABLE mating_stay (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    batch TEXT NOT NULL REFERENCES batch (id) DEFERRABLE INITIALLY DEFERRED,
    yard TEXT REFERENCES yard (id) DEFERRABLE INITIALLY DEFERRED,
    from_day TEXT NOT NULL CHECK (date(from_day, '+0 days') IS from_day),
    until_day TEXT NOT NULL CHECK (date(until_day, '+0 days') IS until_day),
    CHECK (from_day <= until_day)
) STRICT;
CREATE INDEX mating_stay_batch ON mating_stay (batch);
CREATE INDEX mating_stay_yard ON mating_stay (yard);
