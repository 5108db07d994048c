/// @file stable_ids.h  Ids for an edit that is made again at every keystroke: the same ones.
#pragma once
#include <memory>
#include <vector>

#include "book/new_id.h"
#include "drafting/batch_draft.h"

namespace tenthday {

class StableIds {
public:
    /// Gives the ids of the last time again, in order, and new ones when they run out.
    [[nodiscard]] IdSource fromStart() {
        return [this, next = std::size_t{0}]() mutable {
            if (next == ids_.size()) ids_.push_back(idMaker().next());
            return ids_[next++];
        };
    }

private:
    std::vector<Uuid> ids_;
};

}  // namespace tenthday
