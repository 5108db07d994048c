-- Schema 4: feed in a builder's diary; tasks of feeding, mating stations, insemination, drone comb.

CREATE TABLE builder_note_4 (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    builder TEXT NOT NULL REFERENCES builder (id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL CHECK (kind IN ('look', 'brood_in', 'feed')),
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    hour INTEGER CHECK (hour BETWEEN 0 AND 23),
    open_brood INTEGER NOT NULL CHECK (open_brood IN (0, 1)),
    note TEXT NOT NULL
) STRICT;
INSERT INTO builder_note_4 (id, version, builder, kind, day, hour, open_brood, note)
SELECT id, version, builder, kind, day, hour, open_brood, note FROM builder_note;
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
