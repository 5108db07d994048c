-- Schema 1 of a book. Types are TEXT and INTEGER (32 bits) only; days are YYYY-MM-DD text, an hour
-- is a nullable integer beside its day; ids are lower-case UUID text; version only rises.
-- date(d, '+0 days') IS d refuses days that are not in the calendar.

-- The operation; one row.
CREATE TABLE book (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    label TEXT NOT NULL,
    facts_revision INTEGER NOT NULL CHECK (facts_revision BETWEEN 1 AND 9999),
    catch_rule TEXT NOT NULL CHECK (catch_rule IN ('eggs', 'sealed_brood', 'age')),
    today TEXT CHECK (today IS NULL OR date(today, '+0 days') IS today)
) STRICT;

-- Trade numbers of the user's own, in thousandths of the fact's unit.
CREATE TABLE fact_override (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    fact TEXT NOT NULL UNIQUE,
    value_milli INTEGER NOT NULL
) STRICT;

CREATE TABLE season (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    label TEXT NOT NULL UNIQUE CHECK (label <> ''),
    from_day TEXT NOT NULL CHECK (date(from_day, '+0 days') IS from_day),
    until_day TEXT NOT NULL CHECK (date(until_day, '+0 days') IS until_day),
    CHECK (from_day <= until_day)
) STRICT;

CREATE TABLE yard (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    label TEXT NOT NULL UNIQUE CHECK (label <> ''),
    roles TEXT NOT NULL,
    hemisphere TEXT NOT NULL CHECK (hemisphere IN ('north', 'south')),
    frost_day TEXT CHECK (frost_day IS NULL OR date(frost_day, '+0 days') IS frost_day),
    drones_out_day TEXT
        CHECK (drones_out_day IS NULL OR date(drones_out_day, '+0 days') IS drones_out_day),
    drive_order INTEGER NOT NULL CHECK (drive_order BETWEEN 0 AND 9999),
    note TEXT NOT NULL
) STRICT;

CREATE TABLE box (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    label TEXT NOT NULL UNIQUE CHECK (label <> ''),
    note TEXT NOT NULL
) STRICT;

-- A box stands in a yard from a day on, until its next stay; no yard: retired.
CREATE TABLE box_stay (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    box TEXT NOT NULL REFERENCES box (id) DEFERRABLE INITIALLY DEFERRED,
    yard TEXT REFERENCES yard (id) DEFERRABLE INITIALLY DEFERRED,
    from_day TEXT NOT NULL CHECK (date(from_day, '+0 days') IS from_day)
) STRICT;
CREATE INDEX box_stay_box ON box_stay (box);
CREATE INDEX box_stay_yard ON box_stay (yard);

-- A box is divided so from a day on, until its next layout.
CREATE TABLE box_layout (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    box TEXT NOT NULL REFERENCES box (id) DEFERRABLE INITIALLY DEFERRED,
    layout TEXT NOT NULL,
    from_day TEXT NOT NULL CHECK (date(from_day, '+0 days') IS from_day)
) STRICT;
CREATE INDEX box_layout_box ON box_layout (box);

CREATE TABLE nuc_side (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    layout TEXT NOT NULL REFERENCES box_layout (id) DEFERRABLE INITIALLY DEFERRED,
    side TEXT NOT NULL CHECK (side <> ''),
    frames INTEGER NOT NULL CHECK (frames BETWEEN 1 AND 20)
) STRICT;
CREATE INDEX nuc_side_layout ON nuc_side (layout);

CREATE TABLE stocking (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    side TEXT NOT NULL REFERENCES nuc_side (id) DEFERRABLE INITIALLY DEFERRED,
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    hour INTEGER CHECK (hour BETWEEN 0 AND 23),
    bees_ml INTEGER CHECK (bees_ml BETWEEN 0 AND 20000),
    brood_frames INTEGER CHECK (brood_frames BETWEEN 0 AND 20),
    open_brood INTEGER NOT NULL CHECK (open_brood IN (0, 1)),
    donor TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;
CREATE INDEX stocking_side ON stocking (side);

CREATE TABLE builder (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    label TEXT NOT NULL UNIQUE CHECK (label <> ''),
    yard TEXT NOT NULL REFERENCES yard (id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL
        CHECK (kind IN ('starter', 'finisher', 'starter_finisher', 'incubator', 'holding')),
    open_room INTEGER CHECK (open_room BETWEEN 0 AND 9999),
    sealed_room INTEGER CHECK (sealed_room BETWEEN 0 AND 9999),
    from_day TEXT NOT NULL CHECK (date(from_day, '+0 days') IS from_day),
    until_day TEXT CHECK (until_day IS NULL OR date(until_day, '+0 days') IS until_day),
    note TEXT NOT NULL,
    CHECK (until_day IS NULL OR from_day <= until_day)
) STRICT;
CREATE INDEX builder_yard ON builder (yard);

CREATE TABLE make_up (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    builder TEXT NOT NULL REFERENCES builder (id) DEFERRABLE INITIALLY DEFERRED,
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    hour INTEGER CHECK (hour BETWEEN 0 AND 23),
    open_brood INTEGER NOT NULL CHECK (open_brood IN (0, 1)),
    bees_ml INTEGER CHECK (bees_ml BETWEEN 0 AND 40000),
    brood_frames INTEGER CHECK (brood_frames BETWEEN 0 AND 40),
    donors TEXT NOT NULL,
    moved_away INTEGER NOT NULL CHECK (moved_away IN (0, 1))
) STRICT;
CREATE INDEX make_up_builder ON make_up (builder);

CREATE TABLE builder_note (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    builder TEXT NOT NULL REFERENCES builder (id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL CHECK (kind IN ('look', 'brood_in')),
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    hour INTEGER CHECK (hour BETWEEN 0 AND 23),
    open_brood INTEGER NOT NULL CHECK (open_brood IN (0, 1)),
    note TEXT NOT NULL
) STRICT;
CREATE INDEX builder_note_builder ON builder_note (builder);

CREATE TABLE method (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    label TEXT NOT NULL UNIQUE CHECK (label <> '')
) STRICT;

-- Hours count from the graft; to_hour is not included.
CREATE TABLE step (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    method TEXT NOT NULL REFERENCES method (id) DEFERRABLE INITIALLY DEFERRED,
    step INTEGER NOT NULL CHECK (step BETWEEN 1 AND 20),
    where_kind TEXT NOT NULL
        CHECK (where_kind IN ('starter', 'finisher', 'starter_finisher', 'incubator', 'holding')),
    from_hour INTEGER NOT NULL CHECK (from_hour BETWEEN 0 AND 480),
    to_hour INTEGER NOT NULL CHECK (to_hour BETWEEN 1 AND 480),
    rest_days INTEGER NOT NULL CHECK (rest_days BETWEEN 0 AND 60),
    CHECK (from_hour < to_hour)
) STRICT;
CREATE INDEX step_method ON step (method);

CREATE TABLE line (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    label TEXT NOT NULL UNIQUE CHECK (label <> '')
) STRICT;

-- A breeder queen is a queen with a span as breeder.
CREATE TABLE queen (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    label TEXT NOT NULL UNIQUE CHECK (label <> ''),
    year INTEGER CHECK (year BETWEEN 1950 AND 2199),
    mother TEXT REFERENCES queen (id) DEFERRABLE INITIALLY DEFERRED,
    line TEXT REFERENCES line (id) DEFERRABLE INITIALLY DEFERRED,
    breeder_from TEXT
        CHECK (breeder_from IS NULL OR date(breeder_from, '+0 days') IS breeder_from),
    breeder_until TEXT
        CHECK (breeder_until IS NULL OR date(breeder_until, '+0 days') IS breeder_until),
    note TEXT NOT NULL,
    CHECK (breeder_from <= breeder_until)
) STRICT;
CREATE INDEX queen_mother ON queen (mother);
CREATE INDEX queen_line ON queen (line);

CREATE TABLE batch (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    label TEXT NOT NULL UNIQUE CHECK (label <> ''),
    start TEXT NOT NULL CHECK (start IN ('graft', 'confined', 'sealed_found', 'ripe', 'virgin')),
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    hour INTEGER CHECK (hour BETWEEN 0 AND 23),
    larva_from_h INTEGER CHECK (larva_from_h BETWEEN 0 AND 72),
    larva_to_h INTEGER CHECK (larva_to_h BETWEEN 0 AND 72),
    method TEXT NOT NULL REFERENCES method (id) DEFERRABLE INITIALLY DEFERRED,
    mating TEXT NOT NULL CHECK (mating IN ('open', 'station', 'insemination')),
    catch_rule TEXT CHECK (catch_rule IN ('eggs', 'sealed_brood', 'age')),
    note TEXT NOT NULL,
    CHECK (larva_from_h <= larva_to_h)
) STRICT;
CREATE INDEX batch_method ON batch (method);
CREATE INDEX batch_day ON batch (day);

CREATE TABLE batch_bar (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    batch TEXT NOT NULL REFERENCES batch (id) DEFERRABLE INITIALLY DEFERRED,
    bar INTEGER NOT NULL CHECK (bar BETWEEN 1 AND 99),
    breeder TEXT REFERENCES queen (id) DEFERRABLE INITIALLY DEFERRED,
    cells INTEGER NOT NULL CHECK (cells BETWEEN 1 AND 9999)
) STRICT;
CREATE INDEX batch_bar_batch ON batch_bar (batch);
CREATE INDEX batch_bar_breeder ON batch_bar (breeder);

CREATE TABLE batch_load (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    batch TEXT NOT NULL REFERENCES batch (id) DEFERRABLE INITIALLY DEFERRED,
    bar INTEGER NOT NULL CHECK (bar BETWEEN 1 AND 99),
    step INTEGER NOT NULL CHECK (step BETWEEN 1 AND 20),
    builder TEXT NOT NULL REFERENCES builder (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE INDEX batch_load_batch ON batch_load (batch);
CREATE INDEX batch_load_builder ON batch_load (builder);

-- Planned cells of a batch for a yard.
CREATE TABLE batch_yard (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    batch TEXT NOT NULL REFERENCES batch (id) DEFERRABLE INITIALLY DEFERRED,
    yard TEXT NOT NULL REFERENCES yard (id) DEFERRABLE INITIALLY DEFERRED,
    cells INTEGER NOT NULL CHECK (cells BETWEEN 0 AND 9999)
) STRICT;
CREATE INDEX batch_yard_batch ON batch_yard (batch);
CREATE INDEX batch_yard_yard ON batch_yard (yard);

CREATE TABLE placement (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    batch TEXT NOT NULL REFERENCES batch (id) DEFERRABLE INITIALLY DEFERRED,
    side TEXT REFERENCES nuc_side (id) DEFERRABLE INITIALLY DEFERRED,
    target TEXT NOT NULL
        CHECK (target IN ('nuc', 'split', 'sold', 'caged', 'incubator', 'given_away', 'culled')),
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    hour INTEGER CHECK (hour BETWEEN 0 AND 23),
    done INTEGER NOT NULL CHECK (done IN (0, 1)),
    CHECK ((target = 'nuc') = (side IS NOT NULL))
) STRICT;
CREATE INDEX placement_batch ON placement (batch);
CREATE INDEX placement_side ON placement (side);

CREATE TABLE outcome (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    batch TEXT NOT NULL REFERENCES batch (id) DEFERRABLE INITIALLY DEFERRED,
    bar INTEGER CHECK (bar BETWEEN 1 AND 99),
    side TEXT REFERENCES nuc_side (id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL
        CHECK (kind IN ('graft', 'take_count', 'sealed', 'ripe', 'emergence', 'first_eggs',
            'sealed_brood', 'judged_good', 'no_queen', 'drone_layer', 'catch', 'spent')),
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    hour INTEGER CHECK (hour BETWEEN 0 AND 23),
    count INTEGER CHECK (count BETWEEN 0 AND 9999),
    note TEXT NOT NULL
) STRICT;
CREATE INDEX outcome_batch ON outcome (batch);
CREATE INDEX outcome_side ON outcome (side);

CREATE TABLE day_off (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    from_day TEXT NOT NULL CHECK (date(from_day, '+0 days') IS from_day),
    until_day TEXT NOT NULL CHECK (date(until_day, '+0 days') IS until_day),
    note TEXT NOT NULL,
    CHECK (from_day <= until_day)
) STRICT;

-- The change log: one row per edit. The only clock time (UTC) stands here; images are the rows
-- before and after as JSON.
CREATE TABLE change (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    at TEXT NOT NULL,
    verb TEXT NOT NULL,
    subject TEXT NOT NULL,
    day TEXT CHECK (day IS NULL OR date(day, '+0 days') IS day),
    images TEXT NOT NULL
) STRICT;
