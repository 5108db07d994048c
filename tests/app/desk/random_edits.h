/// @file random_edits.h  Random valid edits of a book, the same for the same seed.
#pragma once
#include <random>

#include "records/change_set.h"

namespace tenthday::test {

class RandomEdits {
public:
    explicit RandomEdits(std::uint32_t seed) : random_(seed) {}

    /// An edit that suits the snapshot: rows that come, change, go, swap labels, several kinds at
    /// once. Now and then one that changes nothing.
    [[nodiscard]] ChangeSet next(const Snapshot& snapshot);
    /// 0 .. below - 1.
    [[nodiscard]] std::size_t below(std::size_t limit);

private:
    void addBatch(const Snapshot& snapshot, ChangeSet& changes);
    void deleteBatch(const Snapshot& snapshot, ChangeSet& changes);
    void moveBatch(const Snapshot& snapshot, ChangeSet& changes);
    void addOutcome(const Snapshot& snapshot, ChangeSet& changes);
    void deleteOutcome(const Snapshot& snapshot, ChangeSet& changes);
    void swapLabels(const Snapshot& snapshot, ChangeSet& changes);
    void addBox(const Snapshot& snapshot, ChangeSet& changes);
    void setFact(const Snapshot& snapshot, ChangeSet& changes);

    template <class Row>
    [[nodiscard]] Ptr<Row> any(const Snapshot& snapshot);
    template <class Row>
    [[nodiscard]] Id<Row> freshId();

    std::mt19937 random_;
    std::uint64_t ids_ = 1000;
};

}  // namespace tenthday::test
