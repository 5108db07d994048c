// Every date of every kind of batch can be explained to the end, with its inputs and sources.
#include <gtest/gtest.h>

#include <QLocale>
#include <set>

#include "exchange/example.h"
#include "screen_text/why_task.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::SeasonMaker;

struct Case {
    const char* name;
    Start start;
    bool seen;
    CatchRule rule;
};
void PrintTo(const Case& is, std::ostream* out) { *out << is.name; }

class WhyText : public ::testing::TestWithParam<Case> {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    }
    void TearDown() override { QLocale::setDefault(QLocale::c()); }
};

OutlookPtr outlookFor(const Case& is) {
    SeasonMaker maker("2027-05-20");
    maker.yard("East").builder("Starter", "East", BuilderKind::Starter);
    maker.batch("1", "2027-05-15", 12, 20, "Starter", "starter and finisher");
    if (is.seen) {
        maker.outcome("1", OutcomeKind::Graft, "2027-05-15", 20);
        maker.outcome("1", OutcomeKind::TakeCount, "2027-05-16", 15);
        maker.outcome("1", OutcomeKind::Sealed, "2027-05-20", 14);
        maker.outcome("1", OutcomeKind::Ripe, "2027-05-25", 13);
        maker.outcome("1", OutcomeKind::Emergence, "2027-05-27");
    }
    auto snapshot = maker.snapshot();
    const auto before = snapshot.find(maker.batchId("1"));
    auto batch = *before;
    batch.start = is.start;
    batch.catchRule = is.rule;
    ChangeSet changes;
    changes.edit(before, batch);
    OutlookMemo memo;
    return outlookOf(applied(snapshot, changes).value(), memo);
}

TEST_P(WhyText, EachEventLeadsBackToWhatWasEnteredOrSeen) {
    const auto outlook = outlookFor(GetParam());
    const auto& batch = *outlook->batches.front();
    ASSERT_GE(batch.timeline.events.size(), 7U);
    for (const auto& dates : batch.timeline.events) {
        const auto name = std::string(token(dates.event));
        const auto reasons = why(outlook->snapshot, batch.batch->id, dates.event);
        ASSERT_FALSE(reasons.empty()) << name;
        EXPECT_FALSE(reasons.back().from) << name << ": the chain ends in the air";
        EXPECT_EQ(dates.note == EventNote::Observed, reasons.front().kind == Reason::Kind::Observed)
            << name;
        const auto chain = why_text::event(*outlook, batch.batch->id, dates.event);
        ASSERT_EQ(chain.size(), reasons.size()) << name;
        for (std::size_t i = 0; i < chain.size(); ++i) {
            const auto& link = chain[i];
            const auto where = name + "/" + std::string(token(reasons[i].event));
            EXPECT_FALSE(link.what.isEmpty()) << where;
            EXPECT_FALSE(link.when.isEmpty()) << where;
            EXPECT_TRUE(link.rule.endsWith(u'.')) << where << ": " << link.rule.toStdString();
            ASSERT_FALSE(link.inputs.empty()) << where;
            for (const auto& input : link.inputs) {
                EXPECT_FALSE(input.name.isEmpty()) << where;
                EXPECT_FALSE(input.value.isEmpty()) << where << " " << input.name.toStdString();
                EXPECT_FALSE(input.from.isEmpty()) << where << " " << input.name.toStdString();
            }
            if (!reasons[i].fact) continue;
            const auto number = why_text::number(outlook->snapshot.facts(), *reasons[i].fact);
            bool found = false;
            for (const auto& input : link.inputs)
                found = found || (input.name == number.name && input.sources == number.sources &&
                                  !input.sources.isEmpty());
            EXPECT_TRUE(found) << where << ": the number it leans on, with its source";
        }
        const auto text = why_text::asRichText(chain);
        for (const auto& link : chain)
            EXPECT_TRUE(text.contains(link.rule.toHtmlEscaped())) << name;
    }
}

std::vector<Case> allCases() {
    std::vector<Case> cases;
    for (const auto& [name, start] :
         {std::pair{"graft", Start::Graft}, std::pair{"confined", Start::Confined},
          std::pair{"sealed_found", Start::SealedFound}, std::pair{"ripe", Start::Ripe},
          std::pair{"virgin", Start::Virgin}})
        for (const auto rule : {CatchRule::Eggs, CatchRule::SealedBrood, CatchRule::Age})
            cases.push_back({name, start, false, rule});
    cases.push_back({"graft_seen", Start::Graft, true, CatchRule::SealedBrood});
    cases.push_back({"confined_seen", Start::Confined, true, CatchRule::SealedBrood});
    return cases;
}

INSTANTIATE_TEST_SUITE_P(Starts, WhyText, ::testing::ValuesIn(allCases()), [](const auto& test) {
    return std::string(test.param.name) + "_" + std::string(token(test.param.rule));
});

TEST(WhyTextOf, ANumberOfTheUsersOwnIsNamedWithTheDefaultAndTheFullSource) {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    Facts facts;
    auto number = why_text::number(facts, Fact::RipeH);
    EXPECT_EQ(number.value.toStdString(), "240 h");
    EXPECT_EQ(number.from.toStdString(), "default");
    ASSERT_EQ(number.sources.size(), 2);
    EXPECT_TRUE(number.sources[0].startsWith(QStringLiteral("S11 British")));
    ASSERT_TRUE(facts.set(Fact::RipeH, 228).ok());
    number = why_text::number(facts, Fact::RipeH);
    EXPECT_EQ(number.value.toStdString(), "228 h");
    EXPECT_EQ(number.from.toStdString(), "set by you; the default is 240 h");
    QLocale::setDefault(QLocale::c());
}

class WhyTextOfTheExample : public ::testing::Test {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        Snapshot snapshot = applied(Snapshot{}, exampleContent()).value();
        snapshot.setSeason((*snapshot.all<Season>().begin())->id);
        snapshot.setToday(day("2027-06-03"));
        OutlookMemo memo;
        outlook_ = outlookOf(snapshot, memo);
    }
    void TearDown() override { QLocale::setDefault(QLocale::c()); }
    OutlookPtr outlook_;
};

TEST_F(WhyTextOfTheExample, EachTaskTellsItsRuleAndWhatItIsAbout) {
    int tasks = 0;
    for (const auto& task : tasksOf(*outlook_)) {
        const auto chain = why_text::task(*outlook_, task);
        const auto name = std::string(token(task.key.rule)) + " " + task.subjectLabel;
        ASSERT_FALSE(chain.empty());
        EXPECT_TRUE(chain[0].rule.endsWith(u'.')) << name;
        std::size_t inputs = 0;
        bool nucs = task.sides.empty();
        for (const auto& link : chain)
            for (const auto& input : link.inputs) {
                ++inputs;
                nucs = nucs ||
                       input.value.contains(QString::fromStdString(task.sides.front()->box->label));
            }
        EXPECT_GT(inputs, task.sides.empty() ? 0U : 1U) << name;
        EXPECT_TRUE(nucs) << name;
        ++tasks;
    }
    EXPECT_GT(tasks, 50);
}

TEST_F(WhyTextOfTheExample, EachNucTellsItsStateAndWhyItIsOrIsNotReady) {
    std::set<NotReady> reasons;
    for (const auto& side : outlook_->nucs.sides)
        for (Day on = day("2027-05-10"); on < day("2027-07-20"); on += Days{3}) {
            const auto is = sideOn(side, on, outlook_->snapshot.today());
            const auto chain = why_text::nuc(*outlook_, side, on);
            reasons.insert(is.reason);
            ASSERT_GE(chain.size(), 2U);
            EXPECT_FALSE(chain[0].what.isEmpty());
            EXPECT_TRUE(chain[1].rule.endsWith(u'.'));
            EXPECT_TRUE(chain[1].rule.startsWith(is.ready ? QStringLiteral("Ready:")
                                                          : QStringLiteral("Not")));
            EXPECT_EQ(chain[1].inputs.empty(), is.reason == NotReady::Retired);
        }
    EXPECT_GE(reasons.size(), 6U);
}

}  // namespace
}  // namespace tenthday
