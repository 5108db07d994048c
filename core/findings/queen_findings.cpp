#include "findings/queen_findings.h"

#include <algorithm>
#include <map>

#include "records/deliveries.h"
#include "records/queen_verbs.h"
#include "supply/order_needs.h"

namespace tenthday {
namespace {

class QueenSearch {
public:
    explicit QueenSearch(const Snapshot& snapshot) : snapshot_(snapshot) {}

    std::vector<Finding> run() {
        shipping();
        banks();
        return std::move(found_);
    }

private:
    Finding& add(FindingKind kind, Severity severity, Day day, const std::string& label) {
        Finding finding;
        finding.kind = kind;
        finding.severity = severity;
        finding.day = day;
        finding.subjectLabel = label;
        found_.push_back(std::move(finding));
        return found_.back();
    }

    /// Days ahead of which the weather is known, by day.
    [[nodiscard]] std::map<Day, Ptr<WeatherDay>> weatherAhead() const {
        std::map<Day, Ptr<WeatherDay>> ahead;
        for (const auto& row : snapshot_.all<WeatherDay>())
            if (row->date >= snapshot_.today() && row->tmaxC) ahead.emplace(row->date, row);
        return ahead;
    }

    void shipping() {
        const auto weather = weatherAhead();
        if (weather.empty()) return;
        for (const auto& order : ordersOf(snapshot_)) {
            const bool isSent = order->kind != OrderKind::Own && order->kind != OrderKind::RipeCell;
            const auto days = isSent ? orderDays(snapshot_, *order) : std::nullopt;
            if (!days || days->go < snapshot_.today()) continue;
            if (deliveredOf(snapshot_, order->id).restOf(*order) == 0) continue;
            const auto last = weather.upper_bound(days->go + Days{1});
            for (auto at = weather.lower_bound(days->cage); at != last; ++at)
                judge(*order, *at->second);
        }
    }

    void judge(const Order& order, const WeatherDay& day) {
        const auto& facts = snapshot_.facts();
        const double high = day.tmaxC->value / 10.0;
        const double low = day.tminC ? day.tminC->value / 10.0 : high;
        if (high > facts[Fact::ShipMaxC])
            onTheWay(order, day.date, high, facts[Fact::ShipMaxC], high > facts[Fact::SpermMaxC]);
        if (low < facts[Fact::ShipMinC])
            onTheWay(order, day.date, low, facts[Fact::ShipMinC], low < facts[Fact::SpermMinC]);
    }

    void onTheWay(const Order& order, Day day, double celsius, double limit, bool kills) {
        auto& finding = add(FindingKind::ShipWeather, kills ? Severity::Danger : Severity::Warning,
                            day, order.label);
        finding.count = celsius;
        finding.limit = limit;
    }

    void banks() {
        struct Bank {
            std::int32_t queens = 0;
            std::int32_t tooLong = 0;
            Day since;  ///< the first of these came
        };
        std::map<std::string, Bank> banks;
        const auto& facts = snapshot_.facts();
        const Days longest{static_cast<int>(facts[Fact::BankDaysD])};
        forEachInBank(snapshot_, snapshot_.today(), [&](const QueenStay& stay) {
            auto& bank = banks[stay.note];
            ++bank.queens;
            if (stay.from + longest >= snapshot_.today()) return;
            bank.since = bank.tooLong == 0 ? stay.from : std::min(bank.since, stay.from);
            ++bank.tooLong;
        });
        for (const auto& [label, bank] : banks) {
            if (bank.queens > facts[Fact::BankQueens]) {
                auto& finding =
                    add(FindingKind::BankFull, Severity::Warning, snapshot_.today(), label);
                finding.count = bank.queens;
                finding.limit = facts[Fact::BankQueens];
            }
            if (bank.tooLong > 0) {
                auto& finding = add(FindingKind::BankLong, Severity::Warning,
                                    bank.since + longest + Days{1}, label);
                finding.count = bank.tooLong;
                finding.limit = longest.count();
            }
        }
    }

    const Snapshot& snapshot_;
    std::vector<Finding> found_;
};

}  // namespace

std::vector<Finding> aboutQueens(const Snapshot& snapshot) { return QueenSearch(snapshot).run(); }

}  // namespace tenthday
