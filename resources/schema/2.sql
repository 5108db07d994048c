-- Schema 2: orders, weather by day, the user's own tasks, and ticks of tasks.

CREATE TABLE orders (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    label TEXT NOT NULL UNIQUE CHECK (label <> ''),
    kind TEXT NOT NULL CHECK (kind IN ('ripe_cell', 'virgin', 'mated', 'proven', 'own')),
    count INTEGER NOT NULL CHECK (count BETWEEN 1 AND 9999),
    not_before TEXT CHECK (not_before IS NULL OR date(not_before, '+0 days') IS not_before),
    due TEXT NOT NULL CHECK (date(due, '+0 days') IS due),
    line TEXT REFERENCES line (id) DEFERRABLE INITIALLY DEFERRED,
    part_ok INTEGER NOT NULL CHECK (part_ok IN (0, 1)),
    sure_permille INTEGER NOT NULL CHECK (sure_permille BETWEEN 1 AND 999),
    weight INTEGER NOT NULL CHECK (weight BETWEEN 0 AND 999),
    note TEXT NOT NULL
) STRICT;
CREATE INDEX orders_line ON orders (line);

CREATE TABLE weather_day (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    date TEXT NOT NULL UNIQUE CHECK (date(date, '+0 days') IS date),
    tmax_tenths_c INTEGER,
    tmin_tenths_c INTEGER,
    rain_tenths_mm INTEGER,
    wind_tenths_ms INTEGER,
    flew INTEGER CHECK (flew IN (0, 1))
) STRICT;

CREATE TABLE own_task (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    yard TEXT REFERENCES yard (id) DEFERRABLE INITIALLY DEFERRED,
    text TEXT NOT NULL CHECK (text <> ''),
    must INTEGER NOT NULL CHECK (must IN (0, 1))
) STRICT;
CREATE INDEX own_task_yard ON own_task (yard);

CREATE TABLE task_done (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    rule TEXT NOT NULL
        CHECK (rule IN ('cells_out', 'cells_in', 'cage_cells', 'free_breeder', 'confine',
            'make_up_builder', 'graft', 'take_count', 'move_cells', 'first_wild_look',
            'second_wild_look', 'first_look', 'catch', 'stock_nucs', 'own')),
    subject TEXT NOT NULL CHECK (length(subject) = 36),
    place TEXT NOT NULL,
    occurrence INTEGER NOT NULL CHECK (occurrence BETWEEN 0 AND 999),
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day)
) STRICT;
CREATE INDEX task_done_subject ON task_done (subject);
