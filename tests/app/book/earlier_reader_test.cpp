/// Rates of losses learn from earlier seasons of the same book.
#include "book/earlier_reader.h"

#include <QTest>

#include "app/book/book_fixture.h"
#include "desk/desk.h"
#include "outlook/supply_of.h"
#include "records/method_catalogue.h"
#include "records/order_verbs.h"
#include "support/ids.h"
#include "support/season_maker.h"

namespace tenthday::test {
namespace {

constexpr int kPatience = 20'000;  // ms

/// A book of two seasons: three batches of 2026 with takes, one of 2027.
class EarlierReaderTest : public BookTest {
protected:
    void SetUp() override {
        ChangeSet rows{Verb::MakeBook, "Two years", {}, {}};
        rows.add(Book{id<Book>(1), 1, "Two years", 1, CatchRule::SealedBrood, {}});
        for (const auto& made : builtInMethods()) {
            rows.add(made.method);
            for (const auto& step : made.steps) rows.add(step);
        }
        rows.add(Season{id<Season>(1), 1, "2026", day("2026-04-01"), day("2026-08-31")});
        rows.add(Season{id<Season>(2), 1, "2027", day("2027-04-01"), day("2027-08-31")});
        batch(rows, 1, "2026-05-04", 20);
        batch(rows, 2, "2026-05-11", 24);
        batch(rows, 3, "2026-05-18", 28);
        batch(rows, 4, "2027-05-10", 16);
        path_ = at(QStringLiteral("years.tenthday"));
        ASSERT_TRUE(createBook(path_, rows, fixedOptions()).ok());
    }
    static void batch(ChangeSet& rows, std::uint64_t n, std::string_view on, int taken) {
        Batch row;
        row.id = id<Batch>(n);
        row.label = std::to_string(n);
        row.day = day(on);
        row.method = builtInMethods().front().method.id;
        rows.add(row);
        rows.add(BatchBar{id<BatchBar>(n), 1, row.id, 1, {}, Cells{40}});
        const auto outcome = [&](std::uint64_t which, OutcomeKind kind, Day seen, int count) {
            rows.add(
                Outcome{id<Outcome>(which), 1, row.id, 1, {}, kind, seen, {}, Cells{count}, {}});
        };
        outcome(10 * n, OutcomeKind::Graft, row.day, 40);
        outcome(10 * n + 1, OutcomeKind::TakeCount, row.day + Days{1}, taken);
    }
    static StageCount recordIn(const Outlook& outlook) {
        return ownRatesOf(outlook).fits[LossStage::Accepted].record;
    }

    QString path_;
};

TEST_F(EarlierReaderTest, EarlierSeasonsAreReadBeforeTheOneShown) {
    auto file = open(path_);
    const auto shown = file->read();
    ASSERT_TRUE(shown.ok());
    ASSERT_EQ(shown.value().all<Batch>().size(), 1U);
    const auto earlier = readEarlier(*file, shown.value());
    ASSERT_TRUE(earlier.ok());
    ASSERT_NE(earlier.value(), nullptr);
    std::string labels;
    for (const auto& each : earlier.value()->batches) labels += each.label + " ";
    EXPECT_EQ(labels, "1 2 3 ");
    EXPECT_EQ(earlier.value()->batches[1].counts[LossStage::Accepted], (StageCount{40, 24}));
    const auto first = file->read({id<Season>(1), false});
    EXPECT_EQ(readEarlier(*file, first.value()).value(), nullptr) << "none before the first";
}

TEST_F(EarlierReaderTest, TheWindowLearnsThemSoonAfterOpening) {
    const auto desk = Desk::open(path_, fixedOptions()).value();
    EXPECT_EQ(recordIn(*desk->outlook()), (StageCount{40, 16}));
    std::vector<Cause> causes;
    QObject::connect(desk.get(), &Desk::shown, desk.get(),
                     [&](const auto&, const Changes& changes) { causes.push_back(changes.cause); });
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk->snapshot().earlier() != nullptr; }, kPatience));
    EXPECT_EQ(causes, std::vector{Cause::Learnt});
    EXPECT_EQ(recordIn(*desk->outlook()), (StageCount{160, 88}));

    // An odd batch of the year before is left out; that is an edit like any other.
    const auto odd = leaveOut(desk->snapshot(), id<Batch>(3), "Bought-in larvae.", id<LeftOut>(1));
    ASSERT_TRUE(odd.ok());
    ASSERT_TRUE(desk->apply(odd.value()).ok());
    EXPECT_EQ(recordIn(*desk->outlook()), (StageCount{120, 60}));
    ASSERT_TRUE(desk->undo().ok());
    EXPECT_EQ(recordIn(*desk->outlook()), (StageCount{160, 88}));
    ASSERT_TRUE(desk->redo().ok());
    const auto reopened = Desk::open(path_, fixedOptions(Access::ReadOnly)).value();
    EXPECT_EQ(reopened->snapshot().all<LeftOut>().size(), 1U);

    ASSERT_TRUE(desk->showSeason(id<Season>(1)).ok());
    EXPECT_EQ(desk->snapshot().earlier(), nullptr);
    EXPECT_EQ(recordIn(*desk->outlook()), (StageCount{80, 44}));
}

}  // namespace
}  // namespace tenthday::test
