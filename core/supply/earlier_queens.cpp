#include "supply/earlier_queens.h"

#include <algorithm>
#include <map>

#include "records/queen_verbs.h"
#include "supply/order_needs.h"

namespace tenthday {
namespace {

/// Where a queen is by the book, in the order in which deliveries take them.
enum class Where : std::uint8_t {
    AsCaught,  ///< in the bank since her catch: nothing more was said of her
    Kept,      ///< in a bank or cage
    InNuc,
    Went  ///< sold, or into a colony, this season
};

/// How queens go: into colonies of one's own, which fills own needs only, or away.
enum class Way : std::uint8_t { OwnColony, Away };

struct EarlierQueen {
    Id<Batch> batch;
    std::optional<Id<Line>> line;
    bool isProven = false;
    Where where{};
    Way way{};  ///< of one that went
    Day day;
};

bool isCaged(QueenPlace place) { return place == QueenPlace::Bank || place == QueenPlace::Cage; }
bool hasGone(QueenPlace place) { return place == QueenPlace::Sold || place == QueenPlace::Colony; }
Way wayOf(QueenPlace place) { return place == QueenPlace::Colony ? Way::OwnColony : Way::Away; }

class Search {
public:
    explicit Search(const Snapshot& snapshot)
        : snapshot_(snapshot),
          season_(snapshot.season()),
          until_(std::min(snapshot.today(), season_.last)) {}

    std::vector<EarlierQueen> run() {
        for (const auto& raised : snapshot_.all<CaughtQueen>())
            if (!snapshot_.find(raised->batch)) take(*raised);
        if (queens_.empty()) return {};
        std::stable_sort(queens_.begin(), queens_.end(), [](const auto& a, const auto& b) {
            return a.where != b.where ? a.where < b.where : a.day < b.day;
        });
        for (const auto way : {Way::OwnColony, Way::Away}) {
            countDeliveries(way);
            settle(way);
        }
        return std::move(queens_);
    }

private:
    void take(const CaughtQueen& raised) {
        auto stays = staysOf(snapshot_, raised.queen);
        std::erase_if(stays, [&](const auto& stay) { return stay->from > until_; });
        if (stays.empty()) return;
        const auto last = stays.back();
        const bool went = hasGone(last->place);
        const Way way = wayOf(last->place);
        if (went) ++went_[{way, raised.batch}], stays.pop_back();
        const auto queen = snapshot_.find(raised.queen);
        const bool isBreeder = !queen || queen->breederFrom || queen->breederUntil;
        if (isBreeder || stays.empty() || (went && last->from < season_.first)) return;
        const bool inNuc = stays.back()->place == QueenPlace::Nuc;
        if (!inNuc && !isCaged(stays.back()->place)) return;
        EarlierQueen found{raised.batch, queen->line, false, whereOf(stays, went), way, {}};
        found.day = went ? last->from : std::max(snapshot_.today(), season_.first);
        for (auto at = stays.rbegin(); at != stays.rend() && isCaged((*at)->place); ++at)
            found.day = (*at)->from;
        found.isProven = std::any_of(stays.begin(), stays.end(), [](const auto& stay) {
            return stay->place == QueenPlace::Nuc;
        });
        queens_.push_back(found);
    }

    static Where whereOf(const std::vector<Ptr<QueenStay>>& stays, bool went) {
        if (went) return Where::Went;
        if (stays.back()->place == QueenPlace::Nuc) return Where::InNuc;
        return stays.size() == 1 && stays.front()->version == 1 ? Where::AsCaught : Where::Kept;
    }

    void countDeliveries(Way way) {
        named_.clear();
        namedNow_.clear();
        looseBefore_ = looseNow_ = 0;
        for (const auto& delivery : snapshot_.all<Delivery>()) {
            const auto order = snapshot_.find(delivery->order);
            if (!order || !isForQueens(order->kind) || delivery->day > until_) continue;
            if ((order->kind == OrderKind::Own) != (way == Way::OwnColony)) continue;
            const bool isNow = delivery->day >= season_.first;
            if (delivery->fromBatch) {
                named_[*delivery->fromBatch] += delivery->count;
                if (isNow) namedNow_[*delivery->fromBatch] += delivery->count;
            } else if (isOfSeason(snapshot_, order->due)) {
                looseNow_ += delivery->count;
            } else if (!isNow) {
                looseBefore_ += delivery->count;
            }
        }
    }

    void settle(Way way) {
        const auto isWent = [way](const auto& queen) {
            return queen.where == Where::Went && queen.way == way;
        };
        for (const auto& [batch, count] : named_)
            drop(count - wentOf(way, batch), [of = batch](const auto& queen) {
                return queen.batch == of && queen.where != Where::Went;
            });
        for (const auto& [batch, count] : namedNow_)
            drop(count,
                 [&, of = batch](const auto& queen) { return queen.batch == of && isWent(queen); });
        std::int32_t unexplained = looseBefore_;
        for (const auto& [key, count] : went_)
            if (key.first == way) unexplained -= std::max(count - named_[key.second], 0);
        drop(unexplained, [](const auto& queen) { return queen.where == Where::AsCaught; });
        const auto went = std::count_if(queens_.begin(), queens_.end(), isWent);
        drop(static_cast<std::int32_t>(went) - looseNow_, isWent);
    }

    [[nodiscard]] std::int32_t wentOf(Way way, Id<Batch> batch) const {
        const auto at = went_.find({way, batch});
        return at == went_.end() ? 0 : at->second;
    }

    /// Leaves out the first so many of those.
    template <class Which>
    void drop(std::int32_t count, Which which) {
        std::erase_if(queens_, [&](const auto& queen) { return which(queen) && count-- > 0; });
    }

    const Snapshot& snapshot_;
    DayWindow season_;
    Day until_;
    std::vector<EarlierQueen> queens_;
    std::map<std::pair<Way, Id<Batch>>, std::int32_t> went_;  ///< by their stays, in all seasons
    // Of one way at a time:
    std::map<Id<Batch>, std::int32_t> named_;     ///< delivered of the batch, in all seasons
    std::map<Id<Batch>, std::int32_t> namedNow_;  ///< of these this season
    std::int32_t looseBefore_ = 0;                ///< delivered of no batch in particular
    std::int32_t looseNow_ = 0;
};

}  // namespace

std::vector<QueenPart> earlierQueens(const Snapshot& snapshot) {
    const auto none = std::make_shared<const EggDays>(eggsOn(kLastDay));
    std::vector<QueenPart> parts;
    for (const auto& queen : Search(snapshot).run()) {
        auto at = std::find_if(parts.begin(), parts.end(), [&](const auto& part) {
            return part.batch == queen.batch && part.line == queen.line &&
                   part.isProven == queen.isProven;
        });
        if (at == parts.end()) {
            QueenPart part;
            part.batch = queen.batch;
            part.line = queen.line;
            part.isProven = queen.isProven;
            part.from = queen.day;
            part.eggs = none;
            at = parts.insert(parts.end(), std::move(part));
        }
        at->from = std::min(at->from, queen.day);
        at->known.push_back({queen.day, 0, 1});
    }
    for (auto& part : parts)
        std::stable_sort(part.known.begin(), part.known.end(),
                         [](const auto& a, const auto& b) { return a.day < b.day; });
    return parts;
}

}  // namespace tenthday
