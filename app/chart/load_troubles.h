/// @file load_troubles.h  Findings by what they are about, so that no bar walks over all of them.
#pragma once
#include <unordered_map>
#include <vector>

#include "outlook/outlook.h"

namespace tenthday {

struct BuilderRow;

/// Of a season's findings those that are told at the end of a load: warnings and worse. The
/// findings must stay.
class LoadTroubles {
public:
    explicit LoadTroubles(const std::vector<Finding>& findings);

    /// Index of the worst about a load of this row, the first of equals; -1: there is none.
    [[nodiscard]] int worst(const BuilderRow& row, const BuilderLoad& load) const;

private:
    const std::vector<Finding>& findings_;
    std::unordered_map<Id<Batch>, std::vector<int>> ofBatch_;
    std::unordered_map<Id<Builder>, std::vector<int>> ofBuilder_;
};

}  // namespace tenthday
