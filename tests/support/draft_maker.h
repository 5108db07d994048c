/// @file draft_maker.h  Drafts of batches for tests, and ids for what they make.
#pragma once
#include "drafting/batch_draft.h"
#include "support/season_maker.h"

namespace tenthday::test {

/// Ids that count up from 500 000: none that a SeasonMaker gives.
inline IdSource freshIds() {
    return [n = std::uint64_t{500'000}]() mutable { return id<Batch>(++n).uuid; };
}

inline Id<Method> methodId(const Snapshot& snapshot, std::string_view label) {
    const auto method = findByLabel<Method>(snapshot, label);
    if (!method) throw std::out_of_range("no method " + std::string(label));
    return method->id;
}

/// The snapshot after the draft is saved; throws when refused.
inline Snapshot saved(const Snapshot& snapshot, const BatchDraft& draft,
                      const Repeat& repeat = {}) {
    const auto changes = changesOf(snapshot, draft, repeat, freshIds());
    if (!changes) throw std::invalid_argument(changes.error().text);
    auto next = applied(snapshot, changes.value());
    if (!next) throw std::invalid_argument(next.error().text);
    return std::move(next).value();
}

}  // namespace tenthday::test
