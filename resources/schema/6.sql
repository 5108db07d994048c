-- Schema 6: how long kinds of tasks and the ways between yards take, and tasks given to somebody.

CREATE TABLE work_time (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    rule TEXT NOT NULL UNIQUE
        CHECK (rule IN ('cells_out', 'cells_in', 'cage_cells', 'free_breeder', 'confine',
            'make_up_builder', 'feed', 'graft', 'take_count', 'move_cells', 'first_wild_look',
            'second_wild_look', 'first_look', 'catch', 'cage_queens', 'deliver', 'stock_nucs', 'to_station',
            'from_station', 'inseminate', 'drone_comb', 'own')),
    minutes INTEGER NOT NULL CHECK (minutes BETWEEN 0 AND 1440),
    each_tenths_min INTEGER NOT NULL CHECK (each_tenths_min BETWEEN 0 AND 2400)
) STRICT;

-- From home where from_yard is empty.
CREATE TABLE drive_time (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    from_yard TEXT REFERENCES yard (id) DEFERRABLE INITIALLY DEFERRED,
    to_yard TEXT NOT NULL REFERENCES yard (id) DEFERRABLE INITIALLY DEFERRED,
    minutes INTEGER NOT NULL CHECK (minutes BETWEEN 0 AND 1440),
    CHECK (from_yard IS NOT to_yard)
) STRICT;
CREATE INDEX drive_time_from_yard ON drive_time (from_yard);
CREATE INDEX drive_time_to_yard ON drive_time (to_yard);

CREATE TABLE task_given (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    rule TEXT NOT NULL
        CHECK (rule IN ('cells_out', 'cells_in', 'cage_cells', 'free_breeder', 'confine',
            'make_up_builder', 'feed', 'graft', 'take_count', 'move_cells', 'first_wild_look',
            'second_wild_look', 'first_look', 'catch', 'cage_queens', 'deliver', 'stock_nucs', 'to_station',
            'from_station', 'inseminate', 'drone_comb', 'own')),
    subject TEXT NOT NULL CHECK (length(subject) = 36),
    place TEXT NOT NULL,
    occurrence INTEGER NOT NULL CHECK (occurrence BETWEEN 0 AND 999),
    who TEXT NOT NULL CHECK (length(who) BETWEEN 1 AND 12)
) STRICT;
CREATE INDEX task_given_subject ON task_given (subject);
