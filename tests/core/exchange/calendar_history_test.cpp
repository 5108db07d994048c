// Revisions of a calendar, told from what it said before, as libical reads them.
#include "exchange/calendar_history.h"

#include <gtest/gtest.h>

#include "support/days.h"
#include "support/ical.h"

namespace tenthday {
namespace {

using test::day;
using test::Ical;
using test::isCancelled;
using test::sequenceOf;
using test::startOf;

const Day kToday = day("2027-06-10");

UtcSecond at(int hour) { return UtcSecond{kToday.time_since_epoch()} + std::chrono::hours{hour}; }

CalendarEvent event(const std::string& uid, std::string_view on) {
    CalendarEvent event;
    event.uid = uid;
    event.summary = "Look for wild cells in North";
    event.day = day(on);
    event.alarm = 420;
    return event;
}

/// A calendar that goes through a file each time it is brought up to date.
class CalendarHistory : public ::testing::Test {
protected:
    void now(std::vector<CalendarEvent> events, int hour, Day today = kToday) {
        const auto before = readCalendar(text_);
        text_ = writeCalendar(continued(before ? before.value() : Calendar{},
                                        Calendar{Uuid{1, 1}, "Mill", std::move(events)}, today,
                                        at(hour)));
        read_ = std::make_unique<Ical>(text_);
        ASSERT_TRUE(read_->isSound());
    }
    icalcomponent* of(const std::string& uid) { return read_->byUid().at(uid); }
    bool has(const std::string& uid) { return read_->byUid().contains(uid); }
    std::string stampOf(const std::string& uid) {
        return icaltime_as_ical_string(icalcomponent_get_dtstamp(of(uid)));
    }

    std::string text_;
    std::unique_ptr<Ical> read_;
};

// RFC 5545, 3.8.7.4: SEQUENCE begins at 0 and rises with each significant revision.
TEST_F(CalendarHistory, WhatSaysTheSameKeepsItsRevisionAndItsStamp) {
    now({event("a", "2027-06-12"), event("b", "2027-06-13")}, 8);
    const auto first = text_;
    now({event("a", "2027-06-12"), event("b", "2027-06-13")}, 9);
    EXPECT_EQ(text_, first);
    EXPECT_EQ(sequenceOf(of("a")), 0);
    EXPECT_EQ(stampOf("a"), "20270610T080000Z");
}

TEST_F(CalendarHistory, AMoveRaisesTheRevisionOfTheMovedOneOnly) {
    now({event("a", "2027-06-12"), event("b", "2027-06-13")}, 8);
    now({event("a", "2027-06-14"), event("b", "2027-06-13")}, 9);
    EXPECT_EQ(sequenceOf(of("a")), 1);
    EXPECT_EQ(startOf(of("a")), "20270614");
    EXPECT_EQ(stampOf("a"), "20270610T090000Z");
    EXPECT_EQ(sequenceOf(of("b")), 0);
    EXPECT_EQ(stampOf("b"), "20270610T080000Z");
    now({event("a", "2027-06-12"), event("b", "2027-06-13")}, 10);
    EXPECT_EQ(sequenceOf(of("a")), 2) << "back again is a revision too";
}

TEST_F(CalendarHistory, OtherWordsPlaceHourOrAlarmAreARevision) {
    const auto plain = event("a", "2027-06-12");
    auto worded = plain;
    worded.summary += "!";
    auto described = plain;
    described.description = "every comb";
    auto elsewhere = plain;
    elsewhere.location = "West";
    auto timed = plain;
    timed.hour = Hour{9};
    auto silent = plain;
    silent.alarm.reset();
    auto sorted = plain;
    sorted.categories = {"Look"};
    int revision = 0;
    now({plain}, 8);
    for (const auto& other : {worded, described, elsewhere, timed, silent, sorted}) {
        now({other}, 9);
        EXPECT_EQ(sequenceOf(of("a")), ++revision);
    }
}

// 3.8.1.11: what is off is CANCELLED, not gone: a phone that has it must hear of it.
TEST_F(CalendarHistory, WhatFallsAwayIsCancelledUntilItsDayIsPast) {
    now({event("a", "2027-06-12"), event("b", "2027-06-13")}, 8);
    now({event("b", "2027-06-13")}, 9);
    ASSERT_TRUE(has("a"));
    EXPECT_TRUE(isCancelled(of("a")));
    EXPECT_EQ(sequenceOf(of("a")), 1);
    EXPECT_EQ(startOf(of("a")), "20270612");
    EXPECT_EQ(stampOf("a"), "20270610T090000Z");
    EXPECT_EQ(test::alarmIn(of("a")), nullptr);
    const auto cancelled = text_;
    now({event("b", "2027-06-13")}, 10, day("2027-06-12"));
    EXPECT_EQ(text_, cancelled) << "it is cancelled once";
    now({event("b", "2027-06-13")}, 11, day("2027-06-13"));
    EXPECT_FALSE(has("a"));
    EXPECT_EQ(sequenceOf(of("b")), 0);
}

TEST_F(CalendarHistory, WhatIsPastMayGoWithoutAWord) {
    now({event("a", "2027-06-09"), event("today", "2027-06-10")}, 8);
    now({}, 9);
    EXPECT_FALSE(has("a"));
    EXPECT_TRUE(isCancelled(of("today")));
}

TEST_F(CalendarHistory, WhatComesBackIsConfirmedAgainAsARevision) {
    now({event("a", "2027-06-12")}, 8);
    now({}, 9);
    now({event("a", "2027-06-12")}, 10);
    EXPECT_FALSE(isCancelled(of("a")));
    EXPECT_EQ(sequenceOf(of("a")), 2);
    EXPECT_EQ(stampOf("a"), "20270610T100000Z");
    EXPECT_NE(test::alarmIn(of("a")), nullptr);
}

TEST_F(CalendarHistory, WhatCannotBeWrittenIsNoRevision) {
    auto odd = event("a", "2027-06-12");
    odd.summary = "Look\x01 at \xFF North\r\nand West";
    now({odd}, 8);
    const auto first = text_;
    now({odd}, 9);
    EXPECT_EQ(text_, first);
}

}  // namespace
}  // namespace tenthday
