// Worker brood is sealed 9 d from the egg and out after 21 d (S1, S2, S27).
#include "occupancy/mite_spans.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday {
namespace {

using test::day;

class MiteSpans : public ::testing::Test {
protected:
    MiteSpans() : maker_("2027-07-20") {
        maker_.yard("Mill").yard("Home").builder("Box", "Home");
        maker_.makeUp("Box", "2027-05-01", 12, true);
        maker_.box("N1", "Mill", "7", "2027-04-01").stock("N1/-", "2027-05-01", true);
        read(maker_.snapshot());
    }
    void read(const Snapshot& snapshot) { outlook_ = outlookOf(snapshot, memo_); }
    std::vector<std::string> spans() const {
        std::vector<std::string> all;
        for (const auto& span : nucBroodlessSpans(outlook_->snapshot, outlook_->nucs.sides[0]))
            all.push_back(toText(span.from) + " to " + (span.until ? toText(*span.until) : "on") +
                          (span.noneFrom ? ", none from " + toText(*span.noneFrom) : ""));
        return all;
    }
    std::vector<MiteSpan> all() const {
        return miteSpans(outlook_->snapshot, outlook_->nucs, outlook_->builders);
    }
    Result<ChangeSet> record(const MitePlace& place, const char* on, const char* what = "drip") {
        return recordMiteWork(outlook_->snapshot, {place}, day(on), what, {},
                              [this] { return test::id<MiteWork>(++next_).uuid; });
    }
    void apply(const Result<ChangeSet>& changes) {
        ASSERT_TRUE(changes.ok()) << changes.error().text;
        read(applied(outlook_->snapshot, changes.value()).value());
    }
    using Texts = std::vector<std::string>;

    test::SeasonMaker maker_;
    OutlookMemo memo_;
    OutlookPtr outlook_;
    std::uint64_t next_ = 920'000;
};

TEST_F(MiteSpans, AQueenlessNucHasNoneOnceItsBroodIsSealed) {
    EXPECT_EQ(spans(), (Texts{"2027-05-10 to on, none from 2027-05-22"}));
}

TEST_F(MiteSpans, LayingEndsThemAndTheCatchBeginsTheNext) {
    maker_.batch("9", "2027-05-01", 15, 10, "Box").place("9", "N1/-", "2027-05-11", true);
    maker_.outcome("9", OutcomeKind::FirstEggs, "2027-05-25", {}, "N1/-");
    maker_.outcome("9", OutcomeKind::Catch, "2027-06-05", {}, "N1/-");
    read(maker_.snapshot());
    const auto texts = spans();
    ASSERT_EQ(texts.size(), 2U);
    const auto* eggs = outlook_->batches[0]->timeline.find(Event::FirstEggs);
    EXPECT_EQ(texts[0].substr(0, 24), "2027-05-10 to " + toText(dayOf(eggs->earliest) - Days{1}));
    EXPECT_EQ(texts[1], "2027-06-14 to on, none from 2027-06-26");
}

TEST_F(MiteSpans, AVirginThatWasLostBringsNoBrood) {
    maker_.batch("9", "2027-05-01", 15, 10, "Box").place("9", "N1/-", "2027-05-11", true);
    maker_.outcome("9", OutcomeKind::NoQueen, "2027-06-05", {}, "N1/-");
    read(maker_.snapshot());
    EXPECT_EQ(spans(), (Texts{"2027-05-10 to on, none from 2027-05-22"}));
}

TEST_F(MiteSpans, BroodPutInEndsThem) {
    NucCare care;
    care.id = test::id<NucCare>(5);
    care.side = maker_.sideId("N1/-");
    care.kind = NucCareKind::BroodIn;
    care.day = day("2027-06-01");
    care.openBrood = true;
    read(test::with(outlook_->snapshot, care));
    EXPECT_EQ(spans(), (Texts{"2027-05-10 to 2027-05-31, none from 2027-05-22",
                              "2027-06-10 to on, none from 2027-06-22"}));
}

TEST_F(MiteSpans, ANucGivenUpBeginsAnewOnceItIsStocked) {
    maker_.batch("9", "2027-05-01", 15, 10, "Box").place("9", "N1/-", "2027-05-11", true);
    maker_.outcome("9", OutcomeKind::Spent, "2027-05-20", {}, "N1/-");
    maker_.stock("N1/-", "2027-06-10", false);
    read(maker_.snapshot());
    EXPECT_EQ(spans(),
              (Texts{"2027-05-10 to 2027-05-20", "2027-06-10 to on, none from 2027-06-10"}));
}

TEST_F(MiteSpans, WorkStandsInItsSpanAndElsewhereByItself) {
    ASSERT_EQ(all().size(), 2U) << "the nuc and the builder";
    EXPECT_NE(all()[0].side, nullptr);
    EXPECT_NE(all()[1].builder, nullptr);
    for (const auto& span : all()) EXPECT_TRUE(span.work.empty());
    apply(record({maker_.sideId("N1/-"), {}}, "2027-05-12"));
    apply(record({{}, maker_.builderId("Box")}, "2027-05-04", "too early"));
    const auto spans = all();
    ASSERT_EQ(spans.size(), 3U);
    EXPECT_TRUE(spans[0].outside) << "there was open brood on 4 May";
    EXPECT_EQ(spans[0].work[0]->what, "too early");
    EXPECT_EQ(spans[1].work.size(), 1U);
    EXPECT_TRUE(spans[2].work.empty());
}

TEST_F(MiteSpans, WorkStillToComeOrWithoutAWordIsRefused) {
    EXPECT_FALSE(record({maker_.sideId("N1/-"), {}}, "2027-07-21").ok());
    EXPECT_FALSE(record({maker_.sideId("N1/-"), {}}, "2027-07-20", " ").ok());
    EXPECT_TRUE(record({maker_.sideId("N1/-"), {}}, "2027-07-20").ok());
}

}  // namespace
}  // namespace tenthday
