-- Schema 5: upkeep of nucs, work against mites, notes on breeder queens, caught queens and where they
-- are; terms, earmarks, deliveries and moved days of orders, queens bought in, odd batches; tasks of
-- caging and delivering queens.

CREATE TABLE nuc_care (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    side TEXT NOT NULL REFERENCES nuc_side (id) DEFERRABLE INITIALLY DEFERRED,
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    hour INTEGER CHECK (hour BETWEEN 0 AND 23),
    kind TEXT NOT NULL CHECK (kind IN ('boost', 'thin', 'brood_in', 'feed')),
    bees_ml INTEGER CHECK (bees_ml BETWEEN 0 AND 20000),
    brood_frames INTEGER CHECK (brood_frames BETWEEN 0 AND 20),
    open_brood INTEGER NOT NULL CHECK (open_brood IN (0, 1)),
    donor TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;
CREATE INDEX nuc_care_side ON nuc_care (side);

-- In a nuc or in a builder.
CREATE TABLE mite_work (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    side TEXT REFERENCES nuc_side (id) DEFERRABLE INITIALLY DEFERRED,
    builder TEXT REFERENCES builder (id) DEFERRABLE INITIALLY DEFERRED,
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    what TEXT NOT NULL CHECK (what <> ''),
    note TEXT NOT NULL,
    CHECK ((side IS NULL) <> (builder IS NULL))
) STRICT;
CREATE INDEX mite_work_side ON mite_work (side);
CREATE INDEX mite_work_builder ON mite_work (builder);

CREATE TABLE queen_note (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    queen TEXT NOT NULL REFERENCES queen (id) DEFERRABLE INITIALLY DEFERRED,
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    kind TEXT NOT NULL CHECK (kind IN ('larvae', 'no_larvae')),
    note TEXT NOT NULL
) STRICT;
CREATE INDEX queen_note_queen ON queen_note (queen);

CREATE TABLE caught_queen (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    queen TEXT NOT NULL REFERENCES queen (id) DEFERRABLE INITIALLY DEFERRED,
    batch TEXT NOT NULL REFERENCES batch (id) DEFERRABLE INITIALLY DEFERRED,
    side TEXT REFERENCES nuc_side (id) DEFERRABLE INITIALLY DEFERRED,
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day)
) STRICT;
CREATE INDEX caught_queen_queen ON caught_queen (queen);
CREATE INDEX caught_queen_batch ON caught_queen (batch);
CREATE INDEX caught_queen_side ON caught_queen (side);

CREATE TABLE queen_stay (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    queen TEXT NOT NULL REFERENCES queen (id) DEFERRABLE INITIALLY DEFERRED,
    place TEXT NOT NULL CHECK (place IN ('bank', 'cage', 'colony', 'sold', 'lost')),
    from_day TEXT NOT NULL CHECK (date(from_day, '+0 days') IS from_day),
    note TEXT NOT NULL
) STRICT;
CREATE INDEX queen_stay_queen ON queen_stay (queen);

CREATE TABLE order_terms (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    order_id TEXT NOT NULL UNIQUE REFERENCES orders (id) DEFERRABLE INITIALLY DEFERRED,
    standing TEXT NOT NULL CHECK (standing IN ('open', 'waiting', 'cancelled')),
    purpose TEXT NOT NULL CHECK (purpose IN ('none', 'split', 'requeen', 'winter', 'reserve')),
    ship_days TEXT NOT NULL CHECK (length(ship_days) <= 7)
) STRICT;

CREATE TABLE earmark (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    order_id TEXT NOT NULL REFERENCES orders (id) DEFERRABLE INITIALLY DEFERRED,
    batch TEXT NOT NULL REFERENCES batch (id) DEFERRABLE INITIALLY DEFERRED,
    count INTEGER NOT NULL CHECK (count BETWEEN 1 AND 9999)
) STRICT;
CREATE INDEX earmark_order_id ON earmark (order_id);
CREATE INDEX earmark_batch ON earmark (batch);

CREATE TABLE delivery (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    order_id TEXT NOT NULL REFERENCES orders (id) DEFERRABLE INITIALLY DEFERRED,
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    count INTEGER NOT NULL CHECK (count BETWEEN 1 AND 9999),
    from_batch TEXT REFERENCES batch (id) DEFERRABLE INITIALLY DEFERRED,
    yard TEXT REFERENCES yard (id) DEFERRABLE INITIALLY DEFERRED,
    failed INTEGER NOT NULL CHECK (failed BETWEEN 0 AND count),
    why TEXT NOT NULL CHECK (why IN ('none', 'dead_on_arrival', 'drone_layer', 'not_accepted', 'other')),
    note TEXT NOT NULL
) STRICT;
CREATE INDEX delivery_order_id ON delivery (order_id);
CREATE INDEX delivery_from_batch ON delivery (from_batch);
CREATE INDEX delivery_yard ON delivery (yard);

CREATE TABLE promise_move (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    order_id TEXT NOT NULL REFERENCES orders (id) DEFERRABLE INITIALLY DEFERRED,
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    due_before TEXT NOT NULL CHECK (date(due_before, '+0 days') IS due_before),
    due_after TEXT NOT NULL CHECK (date(due_after, '+0 days') IS due_after),
    reason TEXT NOT NULL
) STRICT;
CREATE INDEX promise_move_order_id ON promise_move (order_id);

CREATE TABLE queen_lot (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day),
    count INTEGER NOT NULL CHECK (count BETWEEN 1 AND 9999),
    line TEXT REFERENCES line (id) DEFERRABLE INITIALLY DEFERRED,
    proven INTEGER NOT NULL CHECK (proven IN (0, 1)),
    note TEXT NOT NULL
) STRICT;
CREATE INDEX queen_lot_line ON queen_lot (line);

CREATE TABLE left_out (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    batch TEXT NOT NULL UNIQUE REFERENCES batch (id) DEFERRABLE INITIALLY DEFERRED,
    reason TEXT NOT NULL CHECK (reason <> '')
) STRICT;

CREATE TABLE task_done_5 (
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
    day TEXT NOT NULL CHECK (date(day, '+0 days') IS day)
) STRICT;
INSERT INTO task_done_5 (id, version, rule, subject, place, occurrence, day)
SELECT id, version, rule, subject, place, occurrence, day FROM task_done;
DROP TABLE task_done;
ALTER TABLE task_done_5 RENAME TO task_done;
CREATE INDEX task_done_subject ON task_done (subject);
