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

-- Until now a note of an outcome alone said so. Each such queen gets a row of her own, by which she
-- is known in the seasons to come.
CREATE TABLE wintered_7 (
    batch TEXT, side TEXT, day TEXT, queen TEXT, caught TEXT, stay TEXT, label TEXT
) STRICT;
INSERT INTO wintered_7 (batch, side, day, queen, caught, stay, label)
SELECT kept.batch, kept.side, kept.day,
    lower(printf('%s-%s-4%s-a%s-%s', hex(randomblob(4)), hex(randomblob(2)),
        substr(hex(randomblob(2)), 2), substr(hex(randomblob(2)), 2), hex(randomblob(6)))),
    lower(printf('%s-%s-4%s-a%s-%s', hex(randomblob(4)), hex(randomblob(2)),
        substr(hex(randomblob(2)), 2), substr(hex(randomblob(2)), 2), hex(randomblob(6)))),
    lower(printf('%s-%s-4%s-a%s-%s', hex(randomblob(4)), hex(randomblob(2)),
        substr(hex(randomblob(2)), 2), substr(hex(randomblob(2)), 2), hex(randomblob(6)))),
    batch.label || '-w' || row_number() OVER (PARTITION BY kept.batch ORDER BY kept.side)
FROM outcome AS kept JOIN batch ON batch.id = kept.batch
WHERE kept.kind = 'judged_good' AND kept.note = 'winter' AND kept.side IS NOT NULL
    AND NOT EXISTS (SELECT 1 FROM outcome AS later WHERE later.batch = kept.batch
        AND later.side = kept.side AND later.id <> kept.id
        AND (later.day > kept.day OR (later.day = kept.day
            AND later.kind IN ('no_queen', 'catch', 'spent', 'drone_layer'))))
    -- Another cell went in since: she is gone, though nobody said so.
    AND NOT EXISTS (SELECT 1 FROM placement AS newer WHERE newer.side = kept.side
        AND newer.done = 1 AND newer.day > kept.day);
INSERT INTO queen (id, version, label, year, mother, line, breeder_from, breeder_until, note)
SELECT queen, 1, label, CAST(substr(day, 1, 4) AS INTEGER), NULL, NULL, NULL, NULL, ''
FROM wintered_7;
INSERT INTO caught_queen (id, version, queen, batch, side, day)
SELECT caught, 1, queen, batch, side, day FROM wintered_7;
INSERT INTO queen_stay (id, version, queen, place, from_day, note)
SELECT stay, 1, queen, 'nuc', day, '' FROM wintered_7;
DROP TABLE wintered_7;
