#include "planning/ways.h"

#include <algorithm>

#include "planning/plan_rounds.h"
#include "records/box_verbs.h"
#include "records/edit_sequence.h"

namespace tenthday {
namespace {

constexpr std::int32_t kMostDays = 60;
constexpr std::int32_t kMostBuilders = 10;
constexpr std::int32_t kMostNucs = 999;
/// Rows of a way that is tried are named so; they are never kept.
constexpr auto kTriedLabel = "tried for a way 1";

/// Of rows that are never kept, apart from those of proposals (see planIds()).
IdSource triedIds() {
    return [next = std::uint64_t{0}]() mutable { return Uuid{0xFFFFFFFF0000C000ULL, ++next}; };
}

/// How much of each kind is tried together.
struct Help {
    std::int32_t nucs = 0;
    std::int32_t nucsFrom = 0;  ///< day of the horizon
    std::int32_t builders = 0;
    BuilderKind where{};
    std::int32_t earlier = 0;  ///< days
    std::int32_t later = 0;    ///< days
};

/// One kind of help, and how much of it can be thought of.
struct Kind {
    WayKind kind{};
    std::optional<BuilderKind> where;
    std::int32_t most = 0;
};

class Ways {
public:
    Ways(const Outlook& outlook, const PlanQuestion& question, const PlanControl& control)
        : outlook_(outlook),
          snapshot_(outlook.snapshot),
          question_(question),
          control_(control),
          quiet_{{}, control.cancel, control.seconds},
          budget_(quiet_) {}

    Result<std::vector<WayToFix>> find() {
        auto site = planSite(outlook_, question_);
        if (!site) return site.error();
        site_ = std::move(site.value());
        auto rounds = planInRounds(snapshot_, site_, solve, budget_);
        if (!rounds) return rounds.error();
        if (rounds.value().isMet) return std::vector<WayToFix>{};
        orders_ = std::move(rounds.value().season.orders);
        std::vector<WayToFix> ways;
        bool fixed = false;
        for (const auto& kind : kinds()) {
            if (budget_.isOver()) return ways;
            auto way = alone(kind);
            if (budget_.isOver()) return ways;  // what was not tried to the end is not told
            ways.push_back(std::move(way));
            fixed = fixed || ways.back().fixes;
        }
        if (!fixed) together(ways);
        return ways;
    }

private:
    [[nodiscard]] std::vector<Kind> kinds() const {
        std::vector<Kind> kinds;
        std::int32_t wanted = 0;
        for (const auto& demand : site_.problem.demands) wanted += demand.wanted;
        if (site_.problem.yards.front().isBound && !site_.yards.empty())
            kinds.push_back({WayKind::MoreNucs, {}, std::min(4 * wanted + 20, kMostNucs)});
        for (const auto where :
             {BuilderKind::Starter, BuilderKind::Finisher, BuilderKind::StarterFinisher})
            if (poolOf(where)) kinds.push_back({WayKind::MoreBuilders, where, kMostBuilders});
        const Day earliest = std::max(snapshot_.today(), outlook_.season.first);
        kinds.push_back(
            {WayKind::EarlierGrafts,
             {},
             std::min(kMostDays, static_cast<std::int32_t>((site_.first - earliest).count()))});
        kinds.push_back({WayKind::LaterDue, {}, mostLater()});
        return kinds;
    }

    /// So many days later an order that is short is still one of the season's.
    [[nodiscard]] std::int32_t mostLater() const {
        std::int32_t most = kMostDays;
        const Day last = outlook_.season.last + kLeadIn;
        for (const auto& order : orders_)
            if (lacks(order))
                most = std::min(most, static_cast<std::int32_t>((last - order.order->due).count()));
        return most;
    }

    /// A pool of that kind, the one that takes most.
    [[nodiscard]] std::optional<std::size_t> poolOf(BuilderKind where) const {
        std::optional<std::size_t> best;
        std::int32_t most = 0;
        for (const auto& option : site_.problem.options)
            for (const auto& step : option.steps)
                for (const auto& use : step)
                    if (use.room > most &&
                        snapshot_.find(site_.pools[use.pool].front())->kind == where)
                        best = use.pool, most = use.room;
        return best;
    }

    static void add(Help& help, const Kind& kind, std::int32_t amount) {
        switch (kind.kind) {
            case WayKind::MoreNucs:
                help.nucs = amount;
                break;
            case WayKind::MoreBuilders:
                help.builders = amount;
                help.where = *kind.where;
                break;
            case WayKind::EarlierGrafts:
                help.earlier = amount;
                break;
            case WayKind::LaterDue:
                help.later = amount;
                break;
        }
    }

    /// The book with the help in it; an Error where it cannot be.
    [[nodiscard]] Result<Snapshot> helped(const Help& help) const {
        EditSequence edits(snapshot_);
        const auto ids = triedIds();
        if (help.nucs > 0)
            if (auto done = edits.add(moreNucs(help, ids)); !done) return done.error();
        if (help.builders > 0)
            if (auto done = edits.add(moreBuilders(help, ids)); !done) return done.error();
        if (help.later > 0)
            if (auto done = edits.add(laterDue(help.later)); !done) return done.error();
        return edits.snapshot();
    }

    /// They stand in the yard that has most.
    [[nodiscard]] Result<ChangeSet> moreNucs(const Help& help, const IdSource& ids) const {
        std::size_t yard = 0;
        for (std::size_t i = 0; i < site_.yards.size(); ++i)
            if (site_.nucs[i] > site_.nucs[yard]) yard = i;
        const BoxPlan plan{site_.yards[yard], "7", site_.day(help.nucsFrom), {}};
        return addBoxes(snapshot_, kTriedLabel, help.nucs, plan, ids);
    }

    /// New builders stand all season, like the one of their kind that takes most.
    [[nodiscard]] ChangeSet moreBuilders(const Help& help, const IdSource& ids) const {
        ChangeSet changes;
        const auto pool = poolOf(help.where);
        if (!pool) return changes;
        auto builder = *snapshot_.find(site_.pools[*pool].front());
        builder.from = std::min(builder.from, outlook_.season.first);
        builder.until.reset();
        builder.version = 1;
        for (std::int32_t i = 0; i < help.builders; ++i) {
            builder.id = {ids()};
            builder.label = kTriedLabel + std::string(" ") + std::to_string(i + 1);
            changes.add(builder);
        }
        return changes;
    }

    /// Orders that are short go later.
    [[nodiscard]] ChangeSet laterDue(std::int32_t days) const {
        ChangeSet changes;
        for (const auto& order : orders_)
            if (lacks(order)) {
                auto later = *order.order;
                later.due += Days{days};
                changes.edit(order.order, std::move(later));
            }
        return changes;
    }

    static bool lacks(const OrderOutlook& order) { return order.state != OrderState::Met; }

    /// Every order is as sure as it must be.
    [[nodiscard]] bool does(const Help& help) {
        if (budget_.isOver()) return false;
        PlanProgress progress;
        progress.phase = PlanPhase::Ways;
        progress.round = ++tried_;
        control_.tell(progress);
        const auto snapshot = helped(help);
        if (!snapshot) return false;
        auto question = question_;
        question.grafts.first = site_.first - Days{help.earlier};
        const auto outlook = outlookOf(snapshot.value(), memo_);
        const auto site = planSite(*outlook, question);
        if (!site || site.value().orders.size() != site_.orders.size()) return false;
        const auto rounds = planInRounds(snapshot.value(), site.value(), solve, budget_, true);
        return rounds && rounds.value().isMet;
    }

    /// The least that does, beside other help; more never does worse. Nothing where none does.
    std::optional<std::int32_t> least(Help help, const Kind& kind) {
        const auto tries = [&](std::int32_t amount) {
            add(help, kind, amount);
            return does(help);
        };
        if (kind.most < 1 || !tries(kind.most)) return std::nullopt;
        std::int32_t low = 0;
        std::int32_t high = kind.most;
        while (high - low > 1) {
            const auto middle = low + (high - low) / 2;
            (tries(middle) ? high : low) = middle;
        }
        return high;
    }

    WayToFix alone(const Kind& kind) {
        const auto amount = least({}, kind);
        WayToFix way{parts(kind, amount.value_or(0), {}), amount.has_value()};
        if (!amount)
            for (auto& part : way.parts) part = {kind.kind, 0, {}, kind.where, {}, {}};
        if (way.parts.size() > 1 && !amount) way.parts.resize(1);
        return way;
    }

    /// Two kinds: of the second the least with all that can be of the first, then the least of it.
    void together(std::vector<WayToFix>& ways) {
        const auto all = kinds();
        for (std::size_t i = 0; i < all.size(); ++i)
            for (std::size_t k = i + 1; k < all.size(); ++k) {
                if (budget_.isOver()) return;
                if (all[i].kind == all[k].kind || all[i].most < 1) continue;
                Help help;
                add(help, all[i], all[i].most);
                const auto second = least(help, all[k]);
                if (!second) continue;
                help = {};
                add(help, all[k], *second);
                const auto first = least(help, all[i]);
                if (!first) continue;
                WayToFix way{parts(all[i], *first, help), true};
                for (auto& part : parts(all[k], *second, {})) way.parts.push_back(part);
                if (budget_.isOver()) return;  // what was not tried to the end is not told
                ways.push_back(std::move(way));
            }
    }

    std::vector<WayPart> parts(const Kind& kind, std::int32_t amount, Help beside) {
        WayPart part{kind.kind, amount, {}, kind.where, {}, {}};
        switch (kind.kind) {
            case WayKind::MoreNucs:
                if (amount > 0) part.from = nucsFrom(amount, beside);
                break;
            case WayKind::EarlierGrafts:
                part.from = site_.first - Days{amount};
                break;
            case WayKind::MoreBuilders:
                break;
            case WayKind::LaterDue: {
                std::vector<WayPart> all;
                for (const auto& order : orders_)
                    if (lacks(order)) {
                        part.order = order.order->id;
                        part.due = order.order->due + Days{amount};
                        all.push_back(part);
                    }
                return all;
            }
        }
        return {part};
    }

    /// The last day from which so many nucs do.
    Day nucsFrom(std::int32_t amount, Help help) {
        help.nucs = amount;
        std::int32_t low = 0;
        std::int32_t high = site_.problem.horizon - 1;
        while (high - low > 1) {
            const auto middle = low + (high - low) / 2;
            help.nucsFrom = middle;
            (does(help) ? low : high) = middle;
        }
        return site_.day(low);
    }

    const Outlook& outlook_;
    const Snapshot& snapshot_;
    const PlanQuestion& question_;
    const PlanControl& control_;
    PlanControl quiet_;  ///< what is tried tells nothing of itself
    PlanBudget budget_;
    OutlookMemo memo_;
    PlanSite site_;
    std::vector<OrderOutlook> orders_;  ///< as the best plan leaves them
    std::int32_t tried_ = 0;
};

}  // namespace

Result<std::vector<WayToFix>> waysToFix(const Outlook& outlook, const PlanQuestion& question,
                                        const PlanControl& control) {
    if (question.keep.empty()) return Ways(outlook, question, control).find();
    OutlookMemo memo;
    const auto season = seasonWith(outlook.snapshot, question.keep, memo);
    if (!season) return season.error();
    return Ways(*season.value().outlook, question, control).find();
}

}  // namespace tenthday
