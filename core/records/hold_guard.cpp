#include "records/hold_guard.h"

#include <algorithm>
#include <tuple>

#include "records/relations.h"

namespace tenthday {
namespace {

/// What a row takes, and from whom; nothing is taken where it names no donor.
struct Taken {
    Day day;
    std::string donors;
    friend bool operator==(const Taken&, const Taken&) = default;
};
Taken takenBy(const Stocking& row) { return {row.day, row.donor}; }
Taken takenBy(const MakeUp& row) { return {row.day, row.donors}; }
Taken takenBy(const NucCare& row) {
    const bool takes = row.kind == NucCareKind::Boost || row.kind == NucCareKind::BroodIn;
    return {row.day, takes ? row.donor : std::string()};
}
Taken takenBy(const BuilderNote& row) {
    const bool takes = row.kind == BuilderNoteKind::BroodIn || row.kind == BuilderNoteKind::BeesIn;
    return {row.day, takes ? row.donor : std::string()};
}

template <class Row>
concept Takes = requires(const Row& row) {
    takenBy(row);
};

class Guard {
public:
    explicit Guard(const Snapshot& snapshot) : snapshot_(snapshot) {}

    template <class Row>
    [[nodiscard]] std::optional<BrokenHold> operator()(const RowChangeOf<Row>& change) const {
        if constexpr (Takes<Row>)
            if (change.after) return taken(takenBy(*change.after), change.before);
        if constexpr (std::is_same_v<Row, BoxStay>)
            if (change.after) return moved(*change.after, change.before);
        return std::nullopt;
    }

private:
    template <class Row>
    [[nodiscard]] std::optional<BrokenHold> taken(const Taken& now, const Ptr<Row>& before) const {
        if (now.day <= snapshot_.today() || (before && takenBy(*before) == now))
            return std::nullopt;
        const auto holds = donorHolds(snapshot_, now.donors, now.day);
        return holds.empty() ? std::nullopt : std::optional(BrokenHold{now.day, holds.front()});
    }
    /// A box that stands in the yard the day before.
    [[nodiscard]] std::optional<BrokenHold> moved(const BoxStay& now,
                                                  const Ptr<BoxStay>& before) const {
        const bool same = before && before->from == now.from && before->yard == now.yard;
        if (now.from <= snapshot_.today() || same) return std::nullopt;
        const auto out = yardOn(snapshot_, now.box, now.from - Days{1});
        if (!out || out == now.yard) return std::nullopt;
        for (const auto& note : snapshot_.all<YardNote>())
            if (note->kind == YardNoteKind::Disease && note->yard == *out &&
                note->from <= now.from && now.from <= note->until)
                return BrokenHold{now.from, {note, snapshot_.find(*out)}};
        return std::nullopt;
    }

    const Snapshot& snapshot_;
};

}  // namespace

std::optional<BrokenHold> brokenHold(const Snapshot& snapshot, const ChangeSet& changes) {
    const auto& notes = snapshot.all<YardNote>();
    const bool any = std::any_of(notes.begin(), notes.end(), [&](const auto& note) {
        return note->kind == YardNoteKind::Disease && note->until > snapshot.today();
    });
    if (!any) return std::nullopt;
    Guard guard(snapshot);
    for (const auto& change : changes.rows)
        if (auto broken = visitChange(guard, change)) return broken;
    return std::nullopt;
}

std::string englishText(const BrokenHold& broken) {
    return broken.hold.yard->label + " is held until " + toText(broken.hold.note->until) +
           " for disease: no bees, brood or nucs may leave it on " + toText(broken.day) +
           "; ask the bee inspector";
}

}  // namespace tenthday
