// The worst about a load, found without walking over all findings.
#include "chart/load_troubles.h"

#include <gtest/gtest.h>

#include "chart/builder_row.h"
#include "support/days.h"
#include "support/ids.h"

namespace tenthday::test {
namespace {

class LoadTroublesTest : public ::testing::Test {
public:
    LoadTroublesTest& about(decltype(Finding::subject) subject, Severity severity,
                            const char* on = "2027-06-05",
                            FindingKind kind = FindingKind::BoxOverfull) {
        Finding finding;
        finding.subject = subject;
        finding.severity = severity;
        finding.day = day(on);
        finding.kind = kind;
        findings_.push_back(finding);
        return *this;
    }

protected:
    LoadTroublesTest() {
        auto box = std::make_shared<Builder>();
        box->id = id<Builder>(1);
        builder_.builder = box;
        row_.builder = &builder_;
        span_.span = {momentOf(day("2027-06-01")), momentOf(day("2027-06-10"))};
        load_ = {id<Batch>(7), &span_};
    }
    int worst() const { return LoadTroubles(findings_).worst(row_, load_); }

    std::vector<Finding> findings_;
    BuilderOutlook builder_;
    BuilderRow row_;
    LoadSpan span_;
    BuilderLoad load_;
};

TEST_F(LoadTroublesTest, TheWorstIsTakenAndTheFirstOfEquals) {
    about(id<Batch>(7), Severity::Note).about(id<Batch>(8), Severity::Danger);
    EXPECT_EQ(worst(), -1) << "notes and other batches are not told here";
    about(id<Batch>(7), Severity::Warning).about(id<Batch>(7), Severity::Warning);
    EXPECT_EQ(worst(), 2);
    about(id<Builder>(1), Severity::Danger);
    EXPECT_EQ(worst(), 4);
}

TEST_F(LoadTroublesTest, WhatABuilderHasIsToldOnTheDaysOfTheLoad) {
    about(id<Builder>(1), Severity::Danger, "2027-06-11");
    EXPECT_EQ(worst(), -1) << "the load has gone";
    about(id<Builder>(2), Severity::Danger);
    EXPECT_EQ(worst(), -1) << "another builder";
    about(id<Builder>(1), Severity::Warning);
    EXPECT_EQ(worst(), 2);
}

TEST_F(LoadTroublesTest, WhatIsAboutAnotherBuilderOrToldElsewhereIsLeftOut) {
    about(id<Batch>(7), Severity::Danger, "2027-06-05", FindingKind::TooManyCells);
    about(id<Batch>(7), Severity::Danger);
    findings_.back().builder = id<Builder>(2);
    EXPECT_EQ(worst(), -1);
    findings_.back().builder = id<Builder>(1);
    EXPECT_EQ(worst(), 1);
}

}  // namespace
}  // namespace tenthday::test
