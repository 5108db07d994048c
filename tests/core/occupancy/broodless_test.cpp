// Worker brood is sealed 9 d from the egg and out after 21 d (S1, S2, S27).
#include "occupancy/broodless.h"

#include <gtest/gtest.h>

#include "support/diary_maker.h"

namespace tenthday {
namespace {

using test::DiaryMaker;

class Broodless : public ::testing::Test {
protected:
    Broodless() { maker_.yard("East").builder("Box", "East"); }

    static std::vector<std::string> spans(const DiaryMaker& diary) {
        const auto outlook = diary.outlook();
        std::vector<std::string> all;
        for (const auto& span : broodlessSpans(outlook->snapshot, outlook->builders[0]))
            all.push_back(toText(span.from) + " to " + (span.until ? toText(*span.until) : "on") +
                          (span.noneFrom ? ", none from " + toText(*span.noneFrom) : ""));
        return all;
    }
    using Texts = std::vector<std::string>;

    test::SeasonMaker maker_{"2027-06-01"};
    DiaryMaker diary() { return DiaryMaker(maker_); }
};

TEST_F(Broodless, NothingIsKnownBeforeAMakeUp) {
    EXPECT_TRUE(spans(diary().note("Box", BuilderNoteKind::BroodIn, "2027-05-01", true)).empty());
}

TEST_F(Broodless, OpenBroodIsSealedOnDay9AndOutOnDay21) {
    EXPECT_EQ(spans(diary().makeUp("Box", "2027-05-01", true)),
              (Texts{"2027-05-10 to on, none from 2027-05-22"}));
    EXPECT_EQ(spans(diary().makeUp("Box", "2027-05-01", true).ends("Box", "2027-05-15")),
              (Texts{"2027-05-10 to 2027-05-15"}));
    EXPECT_TRUE(spans(diary().makeUp("Box", "2027-05-01", true).ends("Box", "2027-05-09")).empty());
}

TEST_F(Broodless, NewOpenBroodEndsThemTheDayBefore) {
    EXPECT_EQ(spans(diary()
                        .makeUp("Box", "2027-05-01", true)
                        .note("Box", BuilderNoteKind::BroodIn, "2027-05-16", true)),
              (Texts{"2027-05-10 to 2027-05-15", "2027-05-25 to on, none from 2027-06-06"}));
    // Put in before all is sealed it only puts the span off.
    EXPECT_EQ(spans(diary()
                        .makeUp("Box", "2027-05-01", true)
                        .note("Box", BuilderNoteKind::BroodIn, "2027-05-08", true)),
              (Texts{"2027-05-17 to on, none from 2027-05-29"}));
    EXPECT_EQ(spans(diary().makeUp("Box", "2027-05-01", true).makeUp("Box", "2027-05-13", true)),
              (Texts{"2027-05-10 to 2027-05-12", "2027-05-22 to on, none from 2027-06-03"}));
}

TEST_F(Broodless, ShakenBeesAloneHaveNoneAtOnce) {
    EXPECT_EQ(spans(diary().makeUp("Box", "2027-05-01", false, Frames{0})),
              (Texts{"2027-05-01 to on, none from 2027-05-01"}));
    EXPECT_EQ(spans(diary().makeUp("Box", "2027-05-01", false)),
              (Texts{"2027-05-01 to on, none from 2027-05-13"}))
        << "brood frames not counted may have been some, sealed";
}

TEST_F(Broodless, SealedBroodEndsOnlyDaysWithoutAny) {
    EXPECT_EQ(spans(diary()
                        .makeUp("Box", "2027-05-01", true)
                        .note("Box", BuilderNoteKind::BroodIn, "2027-05-16", false)),
              (Texts{"2027-05-10 to on, none from 2027-05-28"}));
    EXPECT_EQ(spans(diary()
                        .makeUp("Box", "2027-05-01", false, Frames{0})
                        .note("Box", BuilderNoteKind::BroodIn, "2027-05-16", false)),
              (Texts{"2027-05-01 to 2027-05-15, none from 2027-05-01",
                     "2027-05-16 to on, none from 2027-05-28"}));
}

TEST_F(Broodless, BeesAndFeedChangeNothing) {
    EXPECT_EQ(spans(diary()
                        .makeUp("Box", "2027-05-01", true)
                        .note("Box", BuilderNoteKind::BeesIn, "2027-05-16")
                        .note("Box", BuilderNoteKind::Feed, "2027-05-17")),
              (Texts{"2027-05-10 to on, none from 2027-05-22"}));
}

}  // namespace
}  // namespace tenthday
