#include "planning/ways.h"

#include <algorithm>
#include <numeric>

#include "planning/plan_rounds.h"

namespace tenthday {
namespace {

constexpr std::int32_t kMostDays = 60;
constexpr std::int32_t kMostBuilders = 10;

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
    Ways(const Outlook& outlook, const PlanQuestion& question, PlanBudget& budget)
        : outlook_(outlook), snapshot_(outlook.snapshot), question_(question), budget_(budget) {}

    Result<std::vector<WayToFix>> find() {
        auto site = planSite(outlook_, question_);
        if (!site) return site.error();
        site_ = std::move(site.value());
        const auto rounds = planInRounds(snapshot_, site_, solve, budget_);
        if (!rounds) return rounds.error();
        rounds_ = rounds.value();
        const auto& solution = rounds_.solution;
        if (solution.weighed == 0 && solution.unsure == 0) return std::vector<WayToFix>{};
        std::vector<WayToFix> ways;
        bool fixed = false;
        for (const auto& kind : kinds()) {
            if (budget_.isOver()) return ways;
            ways.push_back(alone(kind));
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
        if (site_.problem.yards.front().isBound)
            kinds.push_back({WayKind::MoreNucs, {}, 4 * wanted + 20});
        for (const auto where :
             {BuilderKind::Starter, BuilderKind::Finisher, BuilderKind::StarterFinisher})
            if (poolOf(where)) kinds.push_back({WayKind::MoreBuilders, where, kMostBuilders});
        const Day earliest = std::max(snapshot_.today(), outlook_.season.first);
        kinds.push_back(
            {WayKind::EarlierGrafts,
             {},
             std::min(kMostDays, static_cast<std::int32_t>((site_.first - earliest).count()))});
        kinds.push_back({WayKind::LaterDue, {}, kMostDays});
        return kinds;
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

    struct Helped {
        PlanProblem problem;
        std::vector<double> margins;
    };
    /// The season with the help in it; nothing where it cannot be.
    [[nodiscard]] std::optional<Helped> helped(const Help& help) {
        auto site = site_;
        if (help.earlier > 0) {
            auto question = question_;
            question.grafts.first = site_.first - Days{help.earlier};
            auto earlier = planSite(outlook_, question);
            if (!earlier) return std::nullopt;
            site = std::move(earlier.value());
        }
        auto& problem = site.problem;
        const auto shift = site_.first - site.first;
        for (auto day = help.nucsFrom + static_cast<std::int32_t>(shift.count());
             day < problem.horizon; ++day)
            for (auto& yard : problem.yards)
                yard.nucs[static_cast<std::size_t>(std::max(day, 0))] += help.nucs;
        if (help.builders > 0) addBuilders(problem, help);
        Helped now{std::move(problem), rounds_.margins};
        if (help.later > 0) postpone(now, help.later);
        return now;
    }

    /// Orders that are short go later, and are filled in that order.
    void postpone(Helped& now, std::int32_t days) const {
        std::vector<std::size_t> order(now.problem.demands.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        for (const auto k : order)
            if (lacks(k)) {
                now.problem.demands[k].due += days;
                for (auto& day : now.problem.demands[k].goDays) day += days;
            }
        std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) {
            return now.problem.demands[a].due < now.problem.demands[b].due;
        });
        auto sorted = now;
        for (std::size_t i = 0; i < order.size(); ++i) {
            sorted.problem.demands[i] = now.problem.demands[order[i]];
            sorted.margins[i] = now.margins[order[i]];
        }
        now = std::move(sorted);
    }

    /// New builders stand all season, like the one of their kind that takes most.
    void addBuilders(PlanProblem& problem, const Help& help) const {
        const auto like = poolOf(help.where);
        if (!like) return;
        const auto fresh = problem.pools.size();
        problem.pools.push_back(
            {std::vector<std::int32_t>(static_cast<std::size_t>(problem.horizon), help.builders)});
        for (auto& option : problem.options)
            for (auto& step : option.steps)
                for (std::size_t i = 0; i < step.size(); ++i)
                    if (step[i].pool == *like) {
                        auto use = step[i];
                        use.pool = fresh;
                        step.push_back(use);
                        break;
                    }
    }

    [[nodiscard]] bool lacks(std::size_t demand) const {
        if (rounds_.solution.shortOf[demand] > 0) return true;
        const auto& orders = rounds_.season.orders;
        return std::any_of(orders.begin(), orders.end(), [&](const OrderOutlook& order) {
            return order.order->id == site_.orders[demand] && order.state != OrderState::Met;
        });
    }

    /// Nothing is short, with the margins the plan asked for.
    [[nodiscard]] bool does(const Help& help) {
        if (budget_.isOver()) return false;
        ++tried_;
        const auto season = helped(help);
        if (!season) return false;
        PlanModel model(season->problem, season->margins);
        for (const auto aim : {PlanAim::Short, PlanAim::Unsure}) {
            auto options = budget_.options(PlanPhase::Ways, tried_);
            options.gap = 0.999;
            const auto solved = solve(model.forAim(aim), options);
            budget_.spend(solved.seconds);
            if (solved.values.empty() || solved.cost > 0.5) return false;
            model.hold(aim, 0);
        }
        return true;
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
                for (std::size_t k = 0; k < site_.orders.size(); ++k)
                    if (lacks(k)) {
                        part.order = site_.orders[k];
                        part.due = snapshot_.find(site_.orders[k])->due + Days{amount};
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
    PlanBudget& budget_;
    PlanSite site_;
    PlanRounds rounds_;
    std::int32_t tried_ = 0;
};

}  // namespace

Result<std::vector<WayToFix>> waysToFix(const Outlook& outlook, const PlanQuestion& question,
                                        const PlanControl& control) {
    PlanBudget budget(control);
    if (question.keep.empty()) return Ways(outlook, question, budget).find();
    OutlookMemo memo;
    const auto season = seasonWith(outlook.snapshot, question.keep, memo);
    if (!season) return season.error();
    return Ways(*season.value().outlook, question, budget).find();
}

}  // namespace tenthday
