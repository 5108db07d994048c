// `ics`: the season's tasks as a calendar, through libical.
#include <set>

#include "app/headless/program.h"
#include "support/ical.h"

namespace tenthday::test {
namespace {

class IcsVerb : public ProgramTest {
protected:
    void makeIcs(std::vector<std::string> words) const {
        words.insert(words.begin(), "ics");
        EXPECT_EQ(answer(words), "");
    }
    Ical read(const std::string& name) const { return Ical(bytesOf(at(name))); }
};

TEST_F(IcsVerb, HoldsTheTasksOfEveryWeekOfTheSeason) {
    const auto book = makeExample();
    makeIcs({book, "--out", "tasks.ics"});
    const auto calendar = read("tasks.ics");
    EXPECT_TRUE(calendar.isSound());
    EXPECT_EQ(textOf(calendar.root(), ICAL_NAME_PROPERTY), "Wrenfold queens");
    const auto rows = rowsOf(answer({"tasks", book, "--week", "2027-W23"}));
    ASSERT_GT(rows.size(), 5U);
    std::multiset<std::pair<std::string, std::string>> wanted;
    for (const auto& row : rows) wanted.emplace(row.at("task"), row.at("day"));
    std::multiset<std::pair<std::string, std::string>> found;
    for (auto* event : calendar.events()) {
        const auto start = icalcomponent_get_dtstart(event);
        const std::string uid = icalcomponent_get_uid(event);
        if (start.month != 6 || start.day < 7 || start.day > 13) continue;
        const auto day = (start.day < 10 ? "2027-06-0" : "2027-06-") + std::to_string(start.day);
        found.emplace(uid.substr(0, uid.find('-')), day);
    }
    EXPECT_EQ(found, wanted);
}

TEST_F(IcsVerb, AMoveRaisesTheRevisionAndWhatFallsAwayIsCancelled) {
    const auto book = makeExample();
    const auto batches = answer({"export", book, "batches"});
    makeIcs({book, "--out", "tasks.ics"});
    const auto first = bytesOf(at("tasks.ics"));
    makeIcs({book, "--out", "tasks.ics"});
    EXPECT_EQ(bytesOf(at("tasks.ics")), first) << "nothing new, not even a stamp";

    // The last batch is the one that is still only planned.
    const auto last = rowsOf(batches).back();
    import(book, "batches",
           "id,label,day\n" + last.at("id") + "," + last.at("label") + ",2027-07-20\n");
    makeIcs({book, "--out", "tasks.ics"});
    const Ical before(first);
    const auto after = read("tasks.ics");
    EXPECT_TRUE(after.isSound());
    const auto graft = "graft-" + last.at("id") + "-0@tenthday";
    EXPECT_EQ(startOf(after.byUid().at(graft)).substr(0, 8), "20270720");
    EXPECT_EQ(sequenceOf(after.byUid().at(graft)), 1);
    int same = 0;
    for (const auto& [uid, event] : before.byUid()) {
        ASSERT_TRUE(after.byUid().contains(uid)) << uid;
        if (startOf(after.byUid().at(uid)) != startOf(event)) {
            EXPECT_EQ(sequenceOf(after.byUid().at(uid)), 1) << uid;
        }
        same += sequenceOf(after.byUid().at(uid)) == 0 ? 1 : 0;
    }
    EXPECT_GT(same, 10) << "other batches stand";

    makeIcs({book, "--out", "tasks.ics", "--kinds", "cells_out,catch"});
    const auto chosen = read("tasks.ics");
    EXPECT_TRUE(isCancelled(chosen.byUid().at(graft)));
    EXPECT_EQ(sequenceOf(chosen.byUid().at(graft)), 2);
}

TEST_F(IcsVerb, KindsAndAllDay) {
    const auto book = makeExample();
    makeIcs({book, "--out", "some.ics", "--kinds", "graft,cells_in", "--all-day"});
    const auto calendar = read("some.ics");
    ASSERT_GT(calendar.events().size(), 3U);
    for (auto* event : calendar.events()) {
        const std::string uid = icalcomponent_get_uid(event);
        EXPECT_TRUE(uid.starts_with("graft-") || uid.starts_with("cells_in-")) << uid;
        EXPECT_TRUE(icaltime_is_date(icalcomponent_get_dtstart(event))) << uid;
    }
}

TEST_F(IcsVerb, AFileThatIsNoCalendarOfThisBookIsLeft) {
    const auto book = makeExample();
    write("notes.ics", "Buy sugar\n");
    auto refused = runHere({"ics", book, "--out", "notes.ics"});
    EXPECT_EQ(refused.exit, 1);
    EXPECT_EQ(refused.out, "");
    EXPECT_EQ(refused.err,
              "tenthday: ics: notes.ics: is no calendar that this program wrote, or it is damaged "
              "(line 1: a name and a colon are needed); it is left as it is\n");
    EXPECT_EQ(bytesOf(at("notes.ics")), "Buy sugar\n");
    makeIcs({book, "--out", "tasks.ics"});
    refused = runHere({"ics", makeNew(), "--out", "tasks.ics"});
    EXPECT_EQ(refused.err,
              "tenthday: ics: tasks.ics: is the calendar of another book; it is left as it is\n");
}

TEST_F(IcsVerb, TheSameBytesInEveryPlaceOnADayThatIsGiven) {
    const auto book = makeExample();
    for (const auto* place : {"C", "de_DE.UTF-8", "ar_EG.UTF-8", "fa_IR.UTF-8", "th_TH.UTF-8"}) {
        const auto file = at(std::string(place) + ".ics");
        const auto done = run({"ics", book, "--out", file, "--today", "2027-06-02"},
                              {{"LC_ALL", place}, {"TZ", "America/Santiago"}});
        EXPECT_EQ(done.exit, 0) << done.err;
        EXPECT_EQ(bytesOf(file), bytesOf(at("C.ics"))) << place;
    }
    EXPECT_NE(bytesOf(at("C.ics")).find("DTSTAMP:20270602T000000Z\r\n"), std::string::npos);
}

}  // namespace
}  // namespace tenthday::test
