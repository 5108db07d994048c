// What we write, property by property, as libical reads it; and that we read it ourselves.
#include "exchange/icalendar.h"

#include <gtest/gtest.h>

#include <random>

#include "exchange/content_lines.h"
#include "exchange/csv.h"
#include "support/days.h"
#include "support/ical.h"

namespace tenthday {
namespace {

using test::alarmIn;
using test::day;
using test::Ical;
using test::minutesOf;
using test::startOf;
using test::textOf;

constexpr Uuid kBook{0x0190000000007000ULL, 0x8000000000000001ULL};

UtcSecond utc(std::string_view text) {
    return UtcSecond{test::moment(text).time_since_epoch()} + std::chrono::seconds{7};
}

CalendarEvent graft() {
    CalendarEvent event;
    event.uid = "graft-1-0@tenthday";
    event.summary = "Graft batch 19: 40 larvae";
    event.description = "at 14:00; bar 1: 20 from Aster, bar 2: 20\nMust be done on this day.";
    event.location = "North, by the mill";
    event.categories = {"Graft"};
    event.day = day("2027-06-14");
    event.hour = Hour{14};
    event.alarm = -60;
    event.sequence = 3;
    event.stamp = utc("2027-06-01T08:30");
    return event;
}

CalendarEvent allDay() {
    auto event = graft();
    event.uid = "first_look-1-0@tenthday";
    event.day = day("2027-12-31");
    event.hour.reset();
    event.alarm = 420;
    return event;
}

std::string written(std::vector<CalendarEvent> events) {
    return writeCalendar({kBook, "Alder Lane", std::move(events)});
}

TEST(ICalendar, TheCalendarSaysWhoMadeItAndForWhom) {
    const Ical read(written({}));
    // RFC 5545, 3.6: PRODID and VERSION must be there, CALSCALE may.
    EXPECT_EQ(textOf(read.root(), ICAL_VERSION_PROPERTY), "2.0");
    EXPECT_EQ(textOf(read.root(), ICAL_PRODID_PROPERTY), "-//Tenthday//Tenthday//EN");
    EXPECT_EQ(textOf(read.root(), ICAL_CALSCALE_PROPERTY), "GREGORIAN");
    // RFC 7986, 5.1 and 5.3.
    EXPECT_EQ(textOf(read.root(), ICAL_NAME_PROPERTY), "Alder Lane");
    EXPECT_EQ(textOf(read.root(), ICAL_UID_PROPERTY), "01900000-0000-7000-8000-000000000001");
    // RFC 5546, 3.2.1: a METHOD would want an ORGANIZER.
    EXPECT_EQ(icalcomponent_get_method(read.root()), ICAL_METHOD_NONE);
}

TEST(ICalendar, EveryPropertyOfATimedEvent) {
    const Ical read(written({graft()}));
    ASSERT_TRUE(read.isSound());
    ASSERT_EQ(read.events().size(), 1U);
    auto* event = read.events()[0];
    EXPECT_EQ(textOf(event, ICAL_UID_PROPERTY), graft().uid);                  // 3.8.4.7
    EXPECT_EQ(textOf(event, ICAL_SUMMARY_PROPERTY), graft().summary);          // 3.8.1.12
    EXPECT_EQ(textOf(event, ICAL_DESCRIPTION_PROPERTY), graft().description);  // 3.8.1.5
    EXPECT_EQ(textOf(event, ICAL_LOCATION_PROPERTY), graft().location);        // 3.8.1.7
    EXPECT_EQ(textOf(event, ICAL_CATEGORIES_PROPERTY), "Graft");               // 3.8.1.2
    EXPECT_EQ(textOf(event, ICAL_STATUS_PROPERTY), "CONFIRMED");               // 3.8.1.11
    EXPECT_EQ(textOf(event, ICAL_TRANSP_PROPERTY), "OPAQUE");                  // 3.8.2.7
    EXPECT_EQ(test::sequenceOf(event), 3);                                     // 3.8.7.4
    // 3.8.7.2: in UTC. 3.3.5, form 1: the times of work float.
    const auto stamp = icalcomponent_get_dtstamp(event);
    EXPECT_TRUE(icaltime_is_utc(stamp));
    EXPECT_STREQ(icaltime_as_ical_string(stamp), "20270601T083007Z");
    const auto start = icalcomponent_get_dtstart(event);
    EXPECT_FALSE(icaltime_is_date(start));
    EXPECT_FALSE(icaltime_is_utc(start));
    EXPECT_EQ(icaltime_get_timezone(start), nullptr);
    EXPECT_EQ(startOf(event), "20270614T140000");
    EXPECT_STREQ(icaltime_as_ical_string(icalcomponent_get_dtend(event)), "20270614T150000");
}

TEST(ICalendar, AnAllDayEventEndsOnTheNextDay) {
    const Ical read(written({allDay()}));
    ASSERT_TRUE(read.isSound());
    auto* event = read.events().at(0);
    EXPECT_TRUE(icaltime_is_date(icalcomponent_get_dtstart(event)));
    EXPECT_EQ(startOf(event), "20271231");
    EXPECT_STREQ(icaltime_as_ical_string(icalcomponent_get_dtend(event)), "20280101");  // 3.6.1
    EXPECT_EQ(textOf(event, ICAL_TRANSP_PROPERTY), "TRANSPARENT");
}

TEST(ICalendar, AnHourBeforeMidnightEndsAtMidnight) {
    auto late = graft();
    late.hour = Hour{23};
    const Ical read(written({late}));
    EXPECT_STREQ(icaltime_as_ical_string(icalcomponent_get_dtend(read.events().at(0))),
                 "20270615T000000");
}

TEST(ICalendar, AnAlarmRingsSoManyMinutesFromTheStart) {
    for (const int minutes : {-1441, -1440, -61, -60, -1, 0, 1, 59, 60, 420, 1440, 3300}) {
        auto event = allDay();
        event.alarm = minutes;
        const Ical read(written({event}));
        ASSERT_TRUE(read.isSound()) << minutes;
        auto* alarm = alarmIn(read.events().at(0));
        ASSERT_NE(alarm, nullptr);
        EXPECT_EQ(minutesOf(alarm), minutes);                                   // 3.8.6.3
        EXPECT_EQ(textOf(alarm, ICAL_ACTION_PROPERTY), "DISPLAY");              // 3.8.6.1
        EXPECT_EQ(textOf(alarm, ICAL_DESCRIPTION_PROPERTY), allDay().summary);  // 3.6.6
        EXPECT_EQ(readCalendar(written({event})).value().events.at(0).alarm, minutes);
    }
    auto silent = allDay();
    silent.alarm.reset();
    EXPECT_EQ(alarmIn(Ical(written({silent})).events().at(0)), nullptr);
}

TEST(ICalendar, ACancelledEventIsMarkedAndKeepsNobody) {
    auto off = graft();
    off.cancelled = true;
    const Ical read(written({off}));
    ASSERT_TRUE(read.isSound());
    EXPECT_TRUE(test::isCancelled(read.events().at(0)));
    EXPECT_EQ(textOf(read.events().at(0), ICAL_TRANSP_PROPERTY), "TRANSPARENT");
}

TEST(ICalendar, WhatIsEmptyIsNotWritten) {
    auto bare = graft();
    bare.description.clear();
    bare.location.clear();
    bare.categories.clear();
    const Ical read(written({bare}));
    ASSERT_TRUE(read.isSound());
    for (const auto kind :
         {ICAL_DESCRIPTION_PROPERTY, ICAL_LOCATION_PROPERTY, ICAL_CATEGORIES_PROPERTY})
        EXPECT_EQ(textOf(read.events().at(0), kind), "(none)");
}

// 3.3.11: what must not stand bare in a text.
TEST(ICalendar, MarksAndLineEndsInATextAreEscaped) {
    EXPECT_EQ(escapedText("a\\b;c,d\ne\r\nf\rg:h\"i"), "a\\\\b\\;c\\,d\\ne\\nf\\ng:h\"i");
    EXPECT_EQ(unescapedText("a\\\\b\\;c\\,d\\ne\\Nf"), "a\\b;c,d\ne\nf");
    EXPECT_EQ(unescapedText("\\\\n"), "\\n");
    EXPECT_EQ(escapedText(std::string_view("a\0b\x07\x7F\tc", 7)), "a b  \tc");
    EXPECT_EQ(escapedText("a\xC3(\xFF"), "a\xEF\xBF\xBD(\xEF\xBF\xBD");
    EXPECT_EQ(partsOf("a\\,b,c,"), (std::vector<std::string>{"a\\,b", "c", ""}));
}

TEST(ICalendar, ALineOf75OctetsIsNotFoldedOneOf76Is) {
    std::string text;
    appendContentLine(text, std::string(75, 'x'));
    EXPECT_EQ(text, std::string(75, 'x') + "\r\n");
    text.clear();
    appendContentLine(text, std::string(76, 'x'));
    EXPECT_EQ(text, std::string(75, 'x') + "\r\n x\r\n");
    text.clear();
    appendContentLine(text, std::string(75 + 74 + 1, 'x'));
    EXPECT_EQ(text, std::string(75, 'x') + "\r\n " + std::string(74, 'x') + "\r\n x\r\n");
    text.clear();
    appendContentLine(text, std::string(74, 'x') + "\xC3\xA9");
    EXPECT_EQ(text, std::string(74, 'x') + "\r\n \xC3\xA9\r\n");
}

/// Texts of every width of character, with the marks that are escaped among them; no blank at an
/// end, which libical drops.
class RandomTexts {
public:
    std::string next() {
        const int length = std::uniform_int_distribution<>(0, 200)(random_);
        std::string text = "(";
        for (int i = 0; i < length; ++i) append(text);
        return text + ")";
    }
    int number(int most) { return std::uniform_int_distribution<>(0, most)(random_); }

private:
    void append(std::string& text) {
        static constexpr std::string_view kMarks = "\\;,:\"\n ^n";
        static constexpr char32_t kLast[] = {0x7E, 0x7FF, 0xFFFD, 0x10FFFF};
        const auto width = static_cast<std::size_t>(number(4));
        if (width == 4) {
            text += kMarks[static_cast<std::size_t>(number(static_cast<int>(kMarks.size()) - 1))];
            return;
        }
        static constexpr char32_t kFirst[] = {0x20, 0xA0, 0x800, 0x10000};
        auto c = std::uniform_int_distribution<std::uint32_t>(kFirst[width], kLast[width])(random_);
        if (c >= 0xD800 && c <= 0xDFFF) c = 0x2713;
        encode(text, c);
    }
    static void encode(std::string& text, std::uint32_t c) {
        if (c < 0x80) {
            text += static_cast<char>(c);
            return;
        }
        const int more = c < 0x800 ? 1 : c < 0x10000 ? 2 : 3;
        constexpr unsigned kLead[] = {0, 0xC0, 0xE0, 0xF0};
        text += static_cast<char>(kLead[more] | (c >> (6 * more)));
        for (int i = more - 1; i >= 0; --i) text += static_cast<char>(0x80 | ((c >> (6 * i)) & 63));
    }
    std::mt19937 random_{5545};
};

bool isUtf8(std::string_view text) {
    while (!text.empty()) {
        const auto length = utf8Length(text);
        if (length == 0) return false;
        text.remove_prefix(length);
    }
    return true;
}

/// 3.1: every line ends in CRLF, has 75 octets at the most and no half characters.
void expectFolded(const std::string& text) {
    std::size_t from = 0;
    while (from < text.size()) {
        const auto end = text.find("\r\n", from);
        ASSERT_NE(end, std::string::npos);
        const auto line = text.substr(from, end - from);
        EXPECT_LE(line.size(), 75U);
        EXPECT_FALSE(line.empty());
        EXPECT_EQ(line.find_first_of("\r\n"), std::string::npos);
        EXPECT_TRUE(isUtf8(line)) << line;
        from = end + 2;
    }
}

CalendarEvent anyEvent(RandomTexts& texts, int n) {
    CalendarEvent event;
    event.uid = "own-" + std::to_string(n) + "@tenthday";
    event.summary = texts.next();
    event.description = texts.next();
    event.location = texts.next();
    for (int i = texts.number(3); i > 0; --i) event.categories.push_back(texts.next());
    event.day = day("2027-01-01") + Days{texts.number(1000)};
    if (texts.number(1) == 1) event.hour = Hour{texts.number(23)};
    if (event.hour) event.minutes = 1 + texts.number(1439);
    if (texts.number(1) == 1) event.alarm = texts.number(20'000) - 10'000;
    event.sequence = texts.number(1000);
    event.stamp = UtcSecond{std::chrono::seconds{1'800'000'000 + texts.number(100'000'000)}};
    event.cancelled = texts.number(3) == 0;
    return event;
}

TEST(ICalendar, AnyTextComesBackFromLibicalAndFromOurselves) {
    RandomTexts texts;
    for (int round = 0; round < 40; ++round) {
        Calendar calendar{kBook, texts.next(), {}};
        for (int n = 0; n < 10; ++n) calendar.events.push_back(anyEvent(texts, n));
        const auto text = writeCalendar(calendar);
        expectFolded(text);
        const Ical read(text);
        EXPECT_TRUE(read.isSound());
        const auto events = read.events();
        ASSERT_EQ(events.size(), calendar.events.size());
        for (std::size_t i = 0; i < events.size(); ++i) {
            const auto& event = calendar.events[i];
            EXPECT_EQ(textOf(events[i], ICAL_SUMMARY_PROPERTY), event.summary);
            EXPECT_EQ(textOf(events[i], ICAL_DESCRIPTION_PROPERTY), event.description);
            EXPECT_EQ(textOf(events[i], ICAL_LOCATION_PROPERTY), event.location);
        }
        const auto ours = readCalendar(text);
        ASSERT_TRUE(ours) << ours.error().text;
        EXPECT_EQ(ours.value(), calendar);
    }
}

TEST(ICalendarReader, TakesLineFeedsAndTextsFoldedOtherwise) {
    const Calendar calendar{kBook, "Alder Lane", {graft(), allDay()}};
    auto text = writeCalendar(calendar);
    std::string bare;
    for (const char c : text)
        if (c != '\r') bare += c;
    EXPECT_EQ(readCalendar(bare).value(), calendar);
    // Others may fold earlier, with a tab.
    const auto at = text.find("SUMMARY:Graft") + 10;
    EXPECT_EQ(readCalendar(text.insert(at, "\r\n\t")).value(), calendar);
}

TEST(ICalendarReader, RefusesATextThatIsCutOffAnywhere) {
    const auto text = written({graft(), allDay()});
    for (std::size_t length = 0; length + 2 < text.size(); ++length)
        EXPECT_FALSE(readCalendar(text.substr(0, length)).ok()) << length;
    EXPECT_TRUE(readCalendar(text.substr(0, text.size() - 2)).ok());
}

struct Damage {
    const char* name;
    std::string from;
    std::string to;
    std::string error;
};
void PrintTo(const Damage& c, std::ostream* out) { *out << c.name; }
class ICalendarDamage : public ::testing::TestWithParam<Damage> {};
TEST_P(ICalendarDamage, IsNamedByItsLine) {
    auto text = written({graft()});
    const auto at = text.find(GetParam().from);
    ASSERT_NE(at, std::string::npos);
    const auto read = readCalendar(text.replace(at, GetParam().from.size(), GetParam().to));
    ASSERT_FALSE(read.ok());
    EXPECT_EQ(read.error().text, GetParam().error);
}

// clang-format off
INSTANTIATE_TEST_SUITE_P(Kinds, ICalendarDamage, ::testing::Values(
    Damage{"OfAnother", "//Tenthday//Tenthday//", "//Someone//Else//", "line 3: another program made it"},
    Damage{"NoCalendar", "BEGIN:VCALENDAR", "BEGIN:VCARD", "line 1: no VCARD belongs here"},
    Damage{"NotEvenText", "VERSION:2.0", "VERSION:2.\xFF", "line 2: not valid text in UTF-8"},
    Damage{"NoColon", "CALSCALE:", "CALSCALE", "line 4: a name and a colon are needed"},
    Damage{"NoId", "UID:0190", "UID:019", "line 5: an id is needed"},
    Damage{"NoUid", "UID:graft", "X-UID:graft", "line 26: UID is missing"},
    Damage{"NoDay", "20270614T14", "20270631T14", "line 12: a time is needed"},
    Damage{"NoHour", "20270614T140000", "20270614T143000", "line 12: a full hour is needed"},
    Damage{"NoStamp", "083007Z", "083007", "line 10: a time in UTC is needed"},
    Damage{"NoSequence", "SEQUENCE:3", "SEQUENCE:-3", "line 11: a number from 0 is needed"},
    Damage{"NoStatus", "CONFIRMED", "TENTATIVE", "line 19: STATUS is unknown"},
    Damage{"TwoSummaries", "LOCATION:", "SUMMARY:", "line 17: SUMMARY twice"},
    Damage{"NoTrigger", "TRIGGER:-PT1H", "TRIGGER:-PT1X", "line 24: a duration is needed"},
    Damage{"NotClosed", "END:VALARM\r\n", "", "line 25: no VEVENT is open"},
    Damage{"More", "END:VCALENDAR\r\n", "END:VCALENDAR\r\nBEGIN:VCALENDAR\r\n", "line 28: the calendar has ended"}),
    [](const auto& test) { return test.param.name; });
// clang-format on

TEST(ICalendarReader, RefusesTheSameUidTwice) {
    const auto read = readCalendar(written({graft(), graft()}));
    ASSERT_FALSE(read.ok());
    EXPECT_NE(read.error().text.find("twice"), std::string::npos);
}

}  // namespace
}  // namespace tenthday
