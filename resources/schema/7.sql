-- Schema 7: queens that are left in their nuc for the winter. SQLite cannot change a CHECK in place.

CREATE TABLE queen_stay_7 (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36 AND id = lower(id)),
    version INTEGER NOT NULL CHECK (version >= 1),
    queen TEXT NOT NULL REFERENCES queen (id) DEFERRABLE INITIALLY DEFERRED,
    place TEXT NOT NULL CHECK (place IN ('bank', 'cage', 'colony', 'sold', 'lost', 'nuc')),
    from_day TEXT NOT NULL CHECK (date(from_day, '+0 days') IS from_day),
    note TEXT NOT NULL
) STRICT;
INSERT INTO queen_stay_7 (id, version, queen, place, from_day, note)
SELECT id, version, queen, place, from_day, note FROM queen_stay;
DROP TABLE queen_stay;
ALTER TABLE queen_stay_7 RENAME TO queen_stay;
CREATE INDEX queen_stay_queen ON queen_stay (queen);
