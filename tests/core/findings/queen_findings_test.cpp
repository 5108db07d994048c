/// Cautions with days: heat and cold on the way to an order, queens in a bank.
#include <gtest/gtest.h>

#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

/// Finding by finding: day, severity, kind, subject, what it is against what it should be.
std::string cautionsIn(const Snapshot& snapshot) {
    std::string all;
    const auto outlook = freshOutlook(snapshot);
    for (const auto& finding : outlook->findings)
        if (finding.kind >= FindingKind::ShipWeather && finding.kind <= FindingKind::BankLong)
            all += toText(finding.day) + " " + std::string(token(finding.severity)) + " " +
                   std::string(token(finding.kind)) + " " + finding.subjectLabel + " " +
                   std::to_string(std::lround(finding.count)) + "/" +
                   std::to_string(std::lround(finding.limit)) + "\n";
    return all;
}

WeatherDay weatherOn(std::string_view on, int high, int low) {
    WeatherDay row;
    row.id = id<WeatherDay>(static_cast<std::uint64_t>(day(on).time_since_epoch().count()));
    row.date = day(on);
    row.tmaxC = Tenths{high * 10};
    row.tminC = Tenths{low * 10};
    return row;
}

// Queens on the way: 15 to 38 °C (S99); below 8 or above 40 °C can kill half of the sperm (S100).
TEST(QueenFindings, HeatAndColdOnTheWayAreToldByDay) {
    const auto season = SeasonMaker("2027-06-14").snapshot();
    const auto snapshot = with(season, orderFor(1, 5, "2027-06-18"), weatherOn("2027-06-16", 45, 5),
                               weatherOn("2027-06-17", 38, 15), weatherOn("2027-06-18", 39, 7),
                               weatherOn("2027-06-19", 41, 15), weatherOn("2027-06-20", 45, 5));
    EXPECT_EQ(cautionsIn(snapshot),
              "2027-06-18 danger ship_weather Order 1 7/15\n"
              "2027-06-18 warning ship_weather Order 1 39/38\n"
              "2027-06-19 danger ship_weather Order 1 41/38\n")
        << "caged on the 17th, on the way to the 19th";
}

TEST(QueenFindings, NobodyShipsCellsQueensOfOnesOwnOrWhatIsDelivered) {
    const auto season = with(SeasonMaker("2027-06-14").snapshot(), weatherOn("2027-06-18", 39, 15));
    for (const auto kind : {OrderKind::RipeCell, OrderKind::Own})
        EXPECT_EQ(cautionsIn(with(season, orderFor(1, 5, "2027-06-18", kind))), "");
    for (const auto kind : {OrderKind::Virgin, OrderKind::Mated, OrderKind::Proven})
        EXPECT_NE(cautionsIn(with(season, orderFor(1, 5, "2027-06-18", kind))), "");
    Delivery all;
    all.id = id<Delivery>(1);
    all.order = id<Order>(1);
    all.day = day("2027-06-14");
    all.count = 5;
    EXPECT_EQ(cautionsIn(with(season, orderFor(1, 5, "2027-06-18"), all)), "");
}

/// So many queens in one bank from a day on.
Snapshot banked(Snapshot snapshot, int first, int count, std::string_view from,
                const std::string& bank) {
    ChangeSet changes;
    for (int n = first; n < first + count; ++n) {
        Queen queen;
        queen.id = id<Queen>(static_cast<std::uint64_t>(5000 + n));
        queen.label = "Q" + std::to_string(n);
        queen.year = 2027;
        changes.add(queen);
        QueenStay stay;
        stay.id = id<QueenStay>(static_cast<std::uint64_t>(5000 + n));
        stay.queen = queen.id;
        stay.place = QueenPlace::Bank;
        stay.from = day(from);
        stay.note = bank;
        changes.add(stay);
    }
    return applied(snapshot, changes).value();
}

// 120 queens in a bank colony, up to two months (S20).
TEST(QueenFindings, ABankKeepsSoManyQueensForSoLong) {
    const auto season = SeasonMaker("2027-08-01").snapshot();
    EXPECT_EQ(cautionsIn(banked(season, 1, 120, "2027-06-02", "B7")), "");
    EXPECT_EQ(cautionsIn(banked(season, 1, 121, "2027-06-02", "B7")),
              "2027-08-01 warning bank_full B7 121/120\n");
    auto two = banked(season, 1, 100, "2027-06-02", "B7");
    two = banked(two, 101, 100, "2027-06-02", "B8");
    EXPECT_EQ(cautionsIn(two), "") << "each colony by itself";
    auto old = banked(season, 1, 3, "2027-05-20", "B7");
    old = banked(old, 4, 2, "2027-06-30", "B7");
    EXPECT_EQ(cautionsIn(old), "2027-07-20 warning bank_long B7 3/60\n");
}

}  // namespace
}  // namespace tenthday::test
