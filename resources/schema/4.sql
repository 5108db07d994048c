-- Schema 4: a fuller diary of builders, what looks into nucs find, a hold for disease, and tasks of
-- feeding, mating stations, insemination and drone comb. SQLite cannot change a CHECK in place.

CREATE TABLE builder_note_4 (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    builder TEXT NOT NULL REFERENCES builder (id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL CHECK (kind IN ('look', 'brood_in', 'bees_in', 'feed', 'pollen')),
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    hour INTEGER CHECK (hour BETWEEN 0 AND 23),
    open_brood INTEGER NOT NULL CHECK (open_brood IN (0, 1)),
    brood_age TEXT NOT NULL CHECK (brood_age IN ('all', 'young', 'eggs')),
    donor TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;
INSERT INTO builder_note_4 (id, version, builder, kind, day, hour, open_brood, brood_age, donor,
    note)
SELECT id, version, builder, kind, day, hour, open_brood, 'all', '', note FROM builder_note;
DROP TABLE builder_note;
ALTER TABLE builder_note_4 RENAME TO builder_note;
CREATE INDEX builder_note_builder ON builder_note (builder);

CREATE TABLE task_done_4 (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    rule TEXT NOT NULL
        CHECK (rule IN ('cells_out', 'cells_in', 'cage_cells', 'free_breeder', 'confine',
            'make_up_builder', 'feed', 'graft', 'take_count', 'move_cells', 'first_wild_look',
            'second_wild_look', 'first_look', 'catch', 'stock_nucs', 'to_station', 'from_station',
            'inseminate', 'drone_comb', 'own')),
    subject TEXT NOT NULL CHECK (length(subject) = 36),
    place TEXT NOT NULL,
    occurrence INTEGER NOT NULL CHECK (occurrence BETWEEN 0 AND 999),
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day)
) STRICT;
INSERT INTO task_done_4 (id, version, rule, subject, place, occurrence, day)
SELECT id, version, rule, subject, place, occurrence, day FROM task_done;
DROP TABLE task_done;
ALTER TABLE task_done_4 RENAME TO task_done;
CREATE INDEX task_done_subject ON task_done (subject);

CREATE TABLE yard_note_4 (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    yard TEXT NOT NULL REFERENCES yard (id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL CHECK (kind IN ('flow', 'dearth', 'robbing', 'disease')),
    from_day TEXT NOT NULL CHECK (date(from_day, '+0 days') IS from_day),
    until_day TEXT NOT NULL CHECK (date(until_day, '+0 days') IS until_day),
    note TEXT NOT NULL,
    CHECK (from_day <= until_day)
) STRICT;
INSERT INTO yard_note_4 (id, version, yard, kind, from_day, until_day, note)
SELECT id, version, yard, kind, from_day, until_day, note FROM yard_note;
DROP TABLE yard_note;
ALTER TABLE yard_note_4 RENAME TO yard_note;
CREATE INDEX yard_note_yard ON yard_note (yard);

CREATE TABLE outcome_4 (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    batch TEXT NOT NULL REFERENCES batch (id) DEFERRABLE INITIALLY DEFERRED,
    bar INTEGER CHECK (bar BETWEEN 1 AND 99),
    side TEXT REFERENCES nuc_side (id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL
        CHECK (kind IN ('graft', 'take_count', 'sealed', 'ripe', 'emergence', 'none_yet',
            'first_eggs', 'larvae', 'sealed_brood', 'judged_good', 'no_queen', 'drone_layer',
            'catch', 'spent')),
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    hour INTEGER CHECK (hour BETWEEN 0 AND 23),
    count INTEGER CHECK (count BETWEEN 0 AND 9999),
    note TEXT NOT NULL
) STRICT;
INSERT INTO outcome_4 (id, version, batch, bar, side, kind, day, hour, count, note)
SELECT id, version, batch, bar, side, kind, day, hour, count, note FROM outcome;
DROP TABLE outcome;
ALTER TABLE outcome_4 RENAME TO outcome;
CREATE INDEX outcome_batch ON outcome (batch);
CREATE INDEX outcome_side ON outcome (side);
