#include "occupancy/bare_sides.h"

#include <algorithm>
#include <functional>
#include <string>
#include <unordered_map>

#include "base/natural_order.h"
#include "occupancy/sides.h"

namespace tenthday {
namespace {

/// Boxes are mostly made in the order of their labels: then they stand in order already.
template <class Things, class Before>
void sortIfNot(Things& things, Before before) {
    if (!std::is_sorted(things.begin(), things.end(), before))
        std::sort(things.begin(), things.end(), before);
}

/// Boxes by label, each with its stays and how long each of its layouts is in force.
class Boxes {
public:
    Boxes(const Snapshot& snapshot, std::vector<BoxStayFrom>& stays) {
        const auto& table = snapshot.all<Box>();
        std::vector<std::pair<std::string, Ptr<Box>>> byLabel;
        byLabel.reserve(table.size());
        for (const auto& box : table) byLabel.emplace_back(naturalKey(box->label), box);
        sortIfNot(byLabel, [](const auto& a, const auto& b) {
            return a.first != b.first ? a.first < b.first : a.second->id < b.second->id;
        });
        stays.reserve(snapshot.all<BoxStay>().size());
        for (auto& [key, box] : byLabel) {
            rank_[box->id] = boxes_.size();
            const auto first = stays.size();
            for (const auto& stay : snapshot.all<BoxStay>().of(box->id.uuid))
                stays.push_back({stay->from, stay->yard});
            std::sort(stays.begin() + static_cast<std::ptrdiff_t>(first), stays.end(),
                      [](const auto& a, const auto& b) { return a.from < b.from; });
            boxes_.push_back({std::move(box), {stays.data() + first, stays.size() - first}, {}});
        }
        for (const auto& layout : snapshot.all<BoxLayout>()) {
            auto& box = boxes_[rank_[layout->box]];
            for (const auto& other : box.layouts) {
                auto& earlier = other->from < layout->from ? ends_[other->id] : ends_[layout->id];
                const Day end = std::max(other->from, layout->from) - Days{1};
                earlier = earlier == Day{} ? end : std::min(earlier, end);
            }
            box.layouts.push_back(layout);
        }
    }

    struct Standing {
        Ptr<Box> box;
        std::span<const BoxStayFrom> stays;
        std::vector<Ptr<BoxLayout>> layouts;
    };
    [[nodiscard]] std::size_t rank(Id<Box> box) const { return rank_.at(box); }
    [[nodiscard]] const Standing& at(std::size_t rank) const { return boxes_[rank]; }
    [[nodiscard]] DayWindow inForce(const BoxLayout& layout) const {
        const auto end = ends_.find(layout.id);
        return {layout.from, end == ends_.end() ? kLastDay : end->second};
    }

private:
    std::unordered_map<Id<Box>, std::size_t> rank_;
    std::vector<Standing> boxes_;
    std::unordered_map<Id<BoxLayout>, Day> ends_;  ///< only of layouts that gave way
};

}  // namespace

BareSides::BareSides(const Snapshot& snapshot)
    : boxes_(snapshot.all<Box>()),
      boxStays_(snapshot.all<BoxStay>()),
      layouts_(snapshot.all<BoxLayout>()),
      nucSides_(snapshot.all<NucSide>()),
      stockings_(snapshot.all<Stocking>()),
      cares_(snapshot.all<NucCare>()),
      facts_(snapshot.factsPtr()) {
    const Boxes boxes(snapshot, stays_);
    struct Place {
        std::size_t rank;
        Day from;
        const Ptr<NucSide>* side;
        const BoxLayout* layout;
    };
    std::vector<Place> order;
    order.reserve(snapshot.all<NucSide>().size());
    for (const auto& side : snapshot.all<NucSide>()) {
        const auto layout = snapshot.find(side->layout);
        order.push_back({boxes.rank(layout->box), layout->from, &side, layout.get()});
    }
    sortIfNot(order, [](const Place& a, const Place& b) {
        if (a.rank != b.rank) return a.rank < b.rank;
        return a.from != b.from ? a.from < b.from : (*a.side)->side < (*b.side)->side;
    });
    sides_.reserve(order.size());
    for (const auto& place : order) {
        const auto& box = boxes.at(place.rank);
        sides_.push_back({*place.side,
                          box.box,
                          boxes.inForce(*place.layout),
                          box.stays,
                          snapshot.all<Stocking>().of((*place.side)->id.uuid),
                          {},
                          {},
                          {}});
        divide(sides_.back(), snapshot);
    }
    byId_.reserve(sides_.size());
    for (std::size_t i = 0; i < sides_.size(); ++i) byId_.emplace_back(sides_[i].side->id, i);
    sortIfNot(byId_, std::less<>{});
}

bool BareSides::areOf(const Snapshot& snapshot) const {
    return boxes_.isSame(snapshot.all<Box>()) && boxStays_.isSame(snapshot.all<BoxStay>()) &&
           layouts_.isSame(snapshot.all<BoxLayout>()) &&
           nucSides_.isSame(snapshot.all<NucSide>()) &&
           stockings_.isSame(snapshot.all<Stocking>()) && cares_.isSame(snapshot.all<NucCare>()) &&
           facts_ == snapshot.factsPtr();
}

std::optional<std::size_t> BareSides::find(Id<NucSide> id) const {
    const auto at = std::lower_bound(byId_.begin(), byId_.end(), id,
                                     [](const auto& a, Id<NucSide> b) { return a.first < b; });
    return at == byId_.end() || at->first != id ? std::nullopt : std::optional(at->second);
}

}  // namespace tenthday
