#include "records/box_verbs.h"

#include <algorithm>

#include "records/relations.h"
#include "records/uses.h"
#include "records/validity.h"

namespace tenthday {
namespace {

/// Calls `visit(layout, day, isLook)` for each record of a nuc of the box.
template <class Visit>
void forEachRecord(const Snapshot& snapshot, Id<Box> box, Visit&& visit) {
    const auto tell = [&](Id<NucSide> id, Day day, bool isLook) {
        const auto side = snapshot.find(id);
        const auto layout = side ? snapshot.find(side->layout) : nullptr;
        if (layout && layout->box == box) visit(*layout, day, isLook);
    };
    for (const auto& row : snapshot.all<Stocking>()) tell(row->side, row->day, false);
    for (const auto& row : snapshot.all<Placement>())
        if (row->side) tell(*row->side, row->day, false);
    for (const auto& row : snapshot.all<Outcome>())
        if (row->side) tell(*row->side, row->day, true);
}

/// One box's changes, gathered.
class BoxEdit {
public:
    BoxEdit(const Snapshot& snapshot, Ptr<Box> box, const IdSource& newId, ChangeSet& changes)
        : snapshot_(snapshot), box_(std::move(box)), newId_(newId), changes_(changes) {}

    Result<void> change(const BoxChange& wish) {
        Box row = *box_;
        if (wish.label) row.label = *wish.label;
        if (wish.note) row.note = *wish.note;
        changes_.edit(box_, row);
        Result<void> done;
        if (wish.move && wish.move->yard) move(wish.move->yard, wish.move->from);
        if (wish.move && !wish.move->yard) done = retire(wish.move->from);
        if (!done) return done;
        if (wish.layout) done = layOut(wish.layout->layout, wish.layout->from);
        if (done && wish.stayDay) done = setStayDay(*wish.stayDay);
        if (done && wish.layoutDay) done = setLayoutDay(*wish.layoutDay);
        return done;
    }

    Result<void> retire(Day from) {
        if (const auto last = lastUseOfNucs(snapshot_, box_->id, from, kLastDay))
            return Error{box_->label + ": has bees, cells or looks until " + toText(*last)};
        for (const auto& stay : snapshot_.all<BoxStay>().of(box_->id.uuid))
            if (stay->from > from) changes_.erase(stay);
        move(std::nullopt, from);
        return {};
    }

private:
    void move(std::optional<Id<Yard>> yard, Day from) {
        const auto before = stayOn(snapshot_, box_->id, from);
        if (before ? before->yard == yard : !yard) return;
        BoxStay stay{{}, 1, box_->id, yard, from};
        if (before && before->from == from) return changes_.edit(before, stay);
        stay.id = {newId_()};
        changes_.add(stay);
    }

    Result<void> layOut(const std::string& text, Day from) {
        const auto before = layoutOn(snapshot_, box_->id, from);
        if (before && before->layout == text) return {};
        const BoxLayout layout{{newId_()}, 1, box_->id, text, from};
        if (const auto valid = checkRow(layout); !valid) return valid;
        if (before && before->from == from) {
            if (isUsed(*before))
                return Error{box_->label + ": is laid out as " + before->layout + " from " +
                             toText(from) + " already, and its nucs have records"};
            erase(before);
        } else if (const auto last = lastUseOfNucs(snapshot_, box_->id, from, from)) {
            return Error{box_->label + ": its nucs as they are have bees, cells or looks until " +
                         toText(*last)};
        }
        addLayout(changes_, layout, newId_);
        return {};
    }

    Result<void> setStayDay(const OtherDay<BoxStay>& wish) {
        const auto stay = snapshot_.find(wish.row);
        if (!stay) return Error{box_->label + ": the stay is gone"};
        for (const auto& other : snapshot_.all<BoxStay>().of(box_->id.uuid))
            if (other != stay && isBetween(other->from, stay->from, wish.from))
                return Error{box_->label + ": stood elsewhere from " + toText(other->from)};
        if (!stay->yard)
            if (const auto last = lastUseOfNucs(snapshot_, box_->id, wish.from, kLastDay))
                return Error{box_->label + ": has bees, cells or looks until " + toText(*last)};
        BoxStay moved = *stay;
        moved.from = wish.from;
        changes_.edit(stay, moved);
        return {};
    }

    Result<void> setLayoutDay(const OtherDay<BoxLayout>& wish) {
        const auto layout = snapshot_.find(wish.row);
        if (!layout) return Error{box_->label + ": the layout is gone"};
        for (const auto& other : snapshot_.all<BoxLayout>())
            if (other->box == box_->id && other != layout &&
                isBetween(other->from, layout->from, wish.from))
                return Error{box_->label + ": was laid out otherwise from " + toText(other->from)};
        std::optional<Day> inTheWay = lastUseOfNucs(snapshot_, box_->id, wish.from, layout->from);
        forEachRecord(snapshot_, box_->id, [&](const BoxLayout& of, Day day, bool) {
            if (of.id == layout->id && day < wish.from) inTheWay = day;
        });
        if (inTheWay)
            return Error{box_->label + ": its nucs have bees, cells or looks on " +
                         toText(*inTheWay)};
        BoxLayout moved = *layout;
        moved.from = wish.from;
        changes_.edit(layout, moved);
        return {};
    }

    static bool isBetween(Day day, Day a, Day b) {
        return std::min(a, b) <= day && day <= std::max(a, b);
    }
    bool isUsed(const BoxLayout& layout) const {
        bool used = false;
        forEachRecord(snapshot_, box_->id,
                      [&](const BoxLayout& of, Day, bool) { used |= of.id == layout.id; });
        return used;
    }
    void erase(const Ptr<BoxLayout>& layout) {
        for (const auto& side : snapshot_.all<NucSide>())
            if (side->layout == layout->id) changes_.erase(side);
        changes_.erase(layout);
    }

    const Snapshot& snapshot_;
    Ptr<Box> box_;
    const IdSource& newId_;
    ChangeSet& changes_;
};

}  // namespace

Result<std::vector<std::string>> countedLabels(const std::string& first, std::int32_t count) {
    if (count < 1 || count > 999) return Error{"1 to 999 boxes at once"};
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    auto start = first.size();
    while (start > 0 && isDigit(first[start - 1])) --start;
    const auto digits = first.size() - start;
    if (count == 1) return std::vector{first};
    if (digits == 0 || digits > 9)
        return Error{"a first label that ends in a number is needed, such as Q1: " + first};
    std::vector<std::string> labels;
    for (std::int32_t i = 0; i < count; ++i) {
        auto number = std::to_string(std::stol(first.substr(start)) + i);
        if (number.size() < digits) number.insert(0, digits - number.size(), '0');
        labels.push_back(first.substr(0, start) + number);
    }
    return labels;
}

Result<ChangeSet> addBoxes(const Snapshot& snapshot, const std::string& firstLabel,
                           std::int32_t count, const BoxPlan& plan, const IdSource& newId) {
    const auto labels = countedLabels(firstLabel, count);
    if (!labels) return labels.error();
    ChangeSet changes{Verb::AddRow, firstLabel, {}, {}};
    if (count > 1) changes.subject += " ... " + labels.value().back();
    for (const auto& label : labels.value()) {
        if (findByLabel<Box>(snapshot, label)) return Error{"box " + label + " is there already"};
        const Box box{{newId()}, 1, label, plan.note};
        if (const auto valid = checkRow(box); !valid) return valid.error();
        changes.add(box);
        if (plan.yard) changes.add(BoxStay{{newId()}, 1, box.id, plan.yard, plan.from});
        if (plan.layout.empty()) continue;
        const BoxLayout layout{{newId()}, 1, box.id, plan.layout, plan.from};
        if (const auto valid = checkRow(layout); !valid) return valid.error();
        addLayout(changes, layout, newId);
    }
    return changes;
}

namespace {

template <class Act>
Result<ChangeSet> forBoxes(const Snapshot& snapshot, const std::vector<Id<Box>>& boxes,
                           const IdSource& newId, Act&& act) {
    ChangeSet changes{Verb::EditRow, {}, {}, {}};
    for (const auto id : boxes) {
        const auto box = snapshot.find(id);
        if (!box) return Error{"box: there is none with this id"};
        changes.subject =
            changes.subject.empty() ? box->label : changes.subject + ", " + box->label;
        BoxEdit edit(snapshot, box, newId, changes);
        if (const auto done = act(edit); !done) return done.error();
    }
    return changes;
}

}  // namespace

Result<ChangeSet> changeBoxes(const Snapshot& snapshot, const std::vector<Id<Box>>& boxes,
                              const BoxChange& change, const IdSource& newId) {
    return forBoxes(snapshot, boxes, newId, [&](BoxEdit& edit) { return edit.change(change); });
}

Result<ChangeSet> retireBoxes(const Snapshot& snapshot, const std::vector<Id<Box>>& boxes, Day from,
                              const IdSource& newId) {
    return forBoxes(snapshot, boxes, newId, [&](BoxEdit& edit) { return edit.retire(from); });
}

std::optional<Day> lastUseOfNucs(const Snapshot& snapshot, Id<Box> box, Day from,
                                 Day laidOutBefore) {
    std::optional<Day> last;
    forEachRecord(snapshot, box, [&](const BoxLayout& layout, Day day, bool isLook) {
        if (layout.from >= laidOutBefore || day < from || (isLook && day == from)) return;
        last = last ? std::max(*last, day) : day;
    });
    return last;
}

void addLayout(ChangeSet& changes, const BoxLayout& layout, const IdSource& newId) {
    changes.add(layout);
    const auto frames = framesOfLayout(layout.layout);
    for (std::size_t i = 0; i < frames.size(); ++i)
        changes.add(
            NucSide{{newId()}, 1, layout.id, sideName(i, frames.size()), Frames{frames[i]}});
}

}  // namespace tenthday
