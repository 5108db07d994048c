// Days at a mating station and of insemination, as parts of a draft.
#include <gtest/gtest.h>

#include "records/verbs.h"
#include "support/draft_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::freshIds;
using test::id;
using test::saved;
using test::SeasonMaker;

const auto kNew = id<Batch>(700'000);

/// Batch 1 grafted on 11 May at noon: queens out about 23 May, due to fly from 29 May on.
SeasonMaker season(std::string_view today = "2027-05-01") {
    SeasonMaker maker(today);
    maker.yard("Mill").yard("Isle").builder("Box", "Mill");
    return maker.batch("1", "2027-05-11", 12, 20, "Box");
}

struct Span {
    std::string from;
    std::string until;
    friend bool operator==(const Span&, const Span&) = default;
    friend void PrintTo(const Span& span, std::ostream* out) {
        *out << span.from << " to " << span.until;
    }
};

std::vector<Span> spansOf(const Snapshot& snapshot, Id<Batch> batch) {
    std::vector<Span> spans;
    for (const auto& stay : snapshot.all<MatingStay>().of(batch.uuid))
        spans.push_back({toText(stay->from), toText(stay->until)});
    std::sort(spans.begin(), spans.end(),
              [](const auto& a, const auto& b) { return a.from < b.from; });
    return spans;
}

/// Batch 1 at the Isle from 28 May to 7 June, as saved.
Snapshot atTheIsle(const SeasonMaker& maker) {
    auto draft = draftOf(maker.snapshot(), maker.batchId("1"));
    draft.mating = Mating::Station;
    draft.stays = {{{}, maker.yardId("Isle"), Days{17}, Days{27}}};
    return saved(maker.snapshot(), draft);
}

TEST(DraftStays, AreReadAsTheyWereSaved) {
    const auto maker = season();
    const auto after = atTheIsle(maker);
    const auto batch = maker.batchId("1");
    EXPECT_EQ(spansOf(after, batch), (std::vector<Span>{{"2027-05-28", "2027-06-07"}}));
    const auto draft = draftOf(after, batch);
    ASSERT_EQ(draft.stays.size(), 1U);
    EXPECT_EQ(draft.stays[0].yard, maker.yardId("Isle"));
    EXPECT_EQ(draft.stays[0].from, Days{17});
    EXPECT_TRUE(changesOf(after, draft, {}, freshIds()).value().isEmpty());
}

TEST(DraftStays, MoveWithTheGraft) {
    const auto maker = season();
    const auto before = atTheIsle(maker);
    auto draft = draftOf(before, maker.batchId("1"));
    draft.day = day("2027-05-14");
    EXPECT_EQ(spansOf(saved(before, draft), draft.id),
              (std::vector<Span>{{"2027-05-31", "2027-06-10"}}));
    draft.stays[0].until = Days{28};  // moved and changed at once
    EXPECT_EQ(spansOf(saved(before, draft), draft.id),
              (std::vector<Span>{{"2027-05-31", "2027-06-11"}}));
    draft.day = day("2027-05-11");
    draft.start = Start::Confined;  // grafted four days later
    draft.stays[0].until = Days{27};
    EXPECT_EQ(spansOf(saved(before, draft), draft.id),
              (std::vector<Span>{{"2027-06-01", "2027-06-11"}}));
}

TEST(DraftStays, ThatArePastStayUnlessTheyAreChanged) {
    const auto maker = season();
    auto before = atTheIsle(maker);
    before.setToday(day("2027-06-08"));
    auto draft = draftOf(before, maker.batchId("1"));
    draft.day = day("2027-06-11");
    EXPECT_EQ(spansOf(saved(before, draft), draft.id),
              (std::vector<Span>{{"2027-05-28", "2027-06-07"}}));
    draft.day = day("2027-05-11");
    draft.stays[0].until = Days{26};
    EXPECT_EQ(spansOf(saved(before, draft), draft.id),
              (std::vector<Span>{{"2027-05-28", "2027-06-06"}}));
}

TEST(DraftStays, OneOfSeveralGoesAndTheOthersKeepTheirRows) {
    const auto maker = season();
    auto draft = draftOf(maker.snapshot(), maker.batchId("1"));
    draft.mating = Mating::Station;
    draft.stays = {{{}, maker.yardId("Isle"), Days{17}, Days{20}},
                   {{}, maker.yardId("Isle"), Days{22}, Days{27}}};
    const auto before = saved(maker.snapshot(), draft);
    draft = draftOf(before, draft.id);
    const auto kept = draft.stays[1].id;
    draft.stays.erase(draft.stays.begin());
    const auto changes = changesOf(before, draft, {}, freshIds());
    ASSERT_TRUE(changes);
    EXPECT_EQ(changes.value().rows.size(), 1U) << "the other is not written again";
    const auto after = applied(before, changes.value()).value();
    EXPECT_TRUE(after.find(kept));
    EXPECT_EQ(after.all<MatingStay>().size(), 1U);
    const auto back = applied(after, changes.value().inverse());
    ASSERT_TRUE(back);
    EXPECT_TRUE(back.value().sameContent(before));
}

TEST(DraftStays, RepeatedBatchesHaveTheirsAsFarOn) {
    const auto maker = season();
    auto draft = newDraft(atTheIsle(maker), day("2027-06-11"), kNew);
    const auto after = saved(atTheIsle(maker), draft, {Days{4}, 2});
    const auto last = findByLabel<Batch>(after, "4");
    ASSERT_TRUE(last);
    EXPECT_EQ(last->day, day("2027-06-19"));
    EXPECT_EQ(spansOf(after, kNew), (std::vector<Span>{{"2027-06-28", "2027-07-08"}}));
    EXPECT_EQ(spansOf(after, last->id), (std::vector<Span>{{"2027-07-06", "2027-07-16"}}));
    EXPECT_EQ(spansOf(after, maker.batchId("1")), (std::vector<Span>{{"2027-05-28", "2027-06-07"}}))
        << "the model keeps its own";
}

TEST(DraftStays, ThatEndBeforeTheyBeginAreRefused) {
    const auto maker = season();
    auto draft = draftOf(maker.snapshot(), maker.batchId("1"));
    draft.mating = Mating::Station;
    draft.stays = {{{}, maker.yardId("Isle"), Days{20}, Days{19}}};
    const auto changes = changesOf(maker.snapshot(), draft, {}, freshIds());
    EXPECT_FALSE(changes && applied(maker.snapshot(), changes.value()));
}

/// Days of a draft's usual stay, reckoned from its graft.
std::vector<Span> usual(const Snapshot& snapshot, const BatchDraft& draft) {
    std::vector<Span> spans;
    const Day graft = plannedGraft(snapshot, draft);
    for (const auto& stay : usualStays(snapshot, draft))
        spans.push_back({toText(graft + stay.from), toText(graft + stay.until)});
    return spans;
}

TEST(UsualStays, ServeTheQueens) {
    const auto maker = season();
    const auto snapshot = maker.snapshot();
    auto draft = draftOf(snapshot, maker.batchId("1"));
    EXPECT_TRUE(usual(snapshot, draft).empty()) << "open mating needs none";
    draft.mating = Mating::Station;
    // 9 of 10 are due from 29 May to 1 June: there the day before, and a week to spare.
    EXPECT_EQ(usual(snapshot, draft), (std::vector<Span>{{"2027-05-28", "2027-06-08"}}));
    draft.mating = Mating::Insemination;  // out on 23 May, 8 days of age (from memory)
    EXPECT_EQ(usual(snapshot, draft), (std::vector<Span>{{"2027-05-31", "2027-05-31"}}));
}

TEST(UsualStays, BringNoWarningAndLoseNoQueen) {
    const auto maker = season();
    for (const auto mating : {Mating::Station, Mating::Insemination}) {
        auto draft = draftOf(maker.snapshot(), maker.batchId("1"));
        draft.mating = mating;
        draft.stays = usualStays(maker.snapshot(), draft);
        OutlookMemo memo;
        const auto outlook = outlookOf(saved(maker.snapshot(), draft), memo);
        EXPECT_TRUE(
            std::none_of(outlook->findings.begin(), outlook->findings.end(),
                         [](const auto& f) { return f.kind == FindingKind::NoMatingDays; }));
        EXPECT_EQ(outlook->batches.at(0)->timeline.neverMates, 0);
    }
}

TEST(UsualStays, AreAtTheStationUsedLast) {
    const auto maker = season();
    const auto before = atTheIsle(maker);
    auto draft = newDraft(before, day("2027-06-11"), kNew);
    draft.stays.clear();
    ASSERT_EQ(usualStays(before, draft).size(), 1U);
    EXPECT_EQ(usualStays(before, draft)[0].yard, maker.yardId("Isle"));
    draft.mating = Mating::Insemination;
    EXPECT_FALSE(usualStays(before, draft)[0].yard);
    draft.bars.clear();  // refused
    EXPECT_TRUE(usualStays(before, draft).empty());
}

TEST(UsualStays, DoNotHangOnDaysThatAreThere) {
    const auto maker = season();
    const auto before = atTheIsle(maker);
    auto draft = draftOf(before, maker.batchId("1"));
    const auto usualOnes = usual(before, draft);
    draft.stays[0].from = Days{2};
    draft.stays[0].until = Days{3};
    EXPECT_EQ(usual(before, draft), usualOnes);
}

}  // namespace
}  // namespace tenthday
