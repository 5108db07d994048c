// The phone's calendar of a book, through edits, as libical reads the file.
#include "phone/phone_calendar.h"

#include <sys/resource.h>

#include <csignal>

#include "app/book/book_fixture.h"
#include "book/finished_file.h"
#include "desk/desk.h"
#include "drafting/batch_draft.h"
#include "exchange/example.h"
#include "exchange/task_event.h"
#include "records/verbs.h"
#include "screen_text/phone_text.h"
#include "support/ical.h"

namespace tenthday {
namespace {

using test::day;
using test::Ical;
using test::isCancelled;
using test::sequenceOf;
using test::startOf;
using test::textOf;

class PhoneCalendar : public test::BookTest {
protected:
    void SetUp() override { openBook(makeSmallBook()); }
    void TearDown() override { desk_.reset(); }
    void openBook(const QString& path) {
        desk_.reset();
        desk_ = Desk::open(path, test::fixedOptions()).value();
    }
    void edit(const Result<ChangeSet>& changes) {
        ASSERT_TRUE(changes) << changes.error().text;
        ASSERT_TRUE(desk_->apply(changes.value()));
    }
    Result<void> update() {
        kept_.path = at(QStringLiteral("tasks.ics"));
        stamp_ += std::chrono::hours{1};
        return updateCalendarFile(kept_, *desk_->outlook(), stamp_);
    }
    std::string bytes() const { return readWhole(at(QStringLiteral("tasks.ics"))).value(); }
    /// Brings the file up to date and reads it.
    const std::map<std::string, icalcomponent*>& events() {
        const auto done = update();
        EXPECT_TRUE(done) << done.error().text;
        read_ = std::make_unique<Ical>(bytes());
        EXPECT_TRUE(read_->isSound());
        return events_ = read_->byUid();
    }
    /// How many events of a fresh file have not passed on a day.
    std::size_t openOn(Day today) {
        std::size_t open = 0;
        for (const auto& task : tasksOf(*desk_->outlook())) open += task.day >= today ? 1 : 0;
        EXPECT_GE(events().size(), open);
        return open;
    }
    static std::string uid(TaskRule rule, Uuid subject = test::kBatch.uuid) {
        return uidOf({rule, subject, {}, 0});
    }

    std::unique_ptr<Desk> desk_;
    KeptCalendar kept_;
    UtcSecond stamp_{std::chrono::seconds{1'800'000'000}};
    std::unique_ptr<Ical> read_;
    std::map<std::string, icalcomponent*> events_;
};

TEST_F(PhoneCalendar, EveryTaskIsAnEventOnItsDayWithTheWordsOfTheWeek) {
    const auto path = at(QStringLiteral("example.tenthday"));
    ASSERT_TRUE(createBook(path, exampleContent(), test::fixedOptions()).ok());
    openBook(path);
    const auto& outlook = *desk_->outlook();
    const auto tasks = tasksOf(outlook);
    ASSERT_GT(tasks.size(), 50U);
    const auto& read = events();
    ASSERT_EQ(read.size(), tasks.size()) << "no two have the same UID";
    int alarms = 0;
    for (const auto& task : tasks) {
        auto* event = read.at(uidOf(task.key));
        EXPECT_EQ(textOf(event, ICAL_SUMMARY_PROPERTY),
                  phone_text::summary(outlook, task).toStdString());
        const auto start = icalcomponent_get_dtstart(event);
        EXPECT_EQ(icaltime_is_date(start) != 0, !task.hour.has_value());
        if (task.hour) {
            EXPECT_EQ(start.hour, task.hour->value);
        }
        EXPECT_EQ(Day(date::year{start.year} / start.month / start.day), task.day);
        const auto yard = task.yard ? outlook.snapshot.find(*task.yard) : nullptr;
        EXPECT_EQ(textOf(event, ICAL_LOCATION_PROPERTY), yard ? yard->label : "(none)");
        EXPECT_EQ(sequenceOf(event), 0);
        const bool rings = test::alarmIn(event) != nullptr;
        if (task.must) {
            EXPECT_EQ(rings, !task.done) << textOf(event, ICAL_SUMMARY_PROPERTY);
        }
        alarms += rings ? 1 : 0;
    }
    EXPECT_GT(alarms, 10);
}

TEST_F(PhoneCalendar, AMovedBatchTakesItsEventsAlongAndNoOthers) {
    auto other = *desk_->snapshot().find(test::kBatch);
    other.id = test::id<Batch>(2);
    other.label = "2";
    other.day = day("2027-07-04");
    ChangeSet second;
    second.add(other);
    edit(second);
    events();
    edit(moveBatch(desk_->snapshot(), test::kBatch, day("2027-06-08")));
    const auto& after = events();
    EXPECT_EQ(startOf(after.at(uid(TaskRule::Graft))), "20270608T140000");
    EXPECT_EQ(sequenceOf(after.at(uid(TaskRule::Graft))), 1);
    EXPECT_EQ(startOf(after.at(uid(TaskRule::Graft, other.id.uuid))), "20270704T140000");
    EXPECT_EQ(sequenceOf(after.at(uid(TaskRule::Graft, other.id.uuid))), 0);
    for (const auto& [id, event] : after) EXPECT_FALSE(isCancelled(event)) << id;
}

TEST_F(PhoneCalendar, ADeletedBatchIsCancelledAndUndoConfirmsItAgain) {
    const auto planned = openOn(day("2027-06-01"));
    ASSERT_GT(planned, 2U);
    edit(deleteBatch(desk_->snapshot(), test::kBatch));
    const auto off = events();
    ASSERT_EQ(off.size(), planned) << "what is past is dropped";
    for (const auto& [id, event] : off) {
        EXPECT_TRUE(isCancelled(event)) << id;
        EXPECT_EQ(sequenceOf(event), 1) << id;
        EXPECT_EQ(test::alarmIn(event), nullptr) << id;
    }
    ASSERT_TRUE(desk_->undo());
    for (const auto& [id, event] : events()) {
        EXPECT_FALSE(isCancelled(event)) << id;
        EXPECT_EQ(sequenceOf(event), off.contains(id) ? 2 : 0) << id;
    }
}

TEST_F(PhoneCalendar, NothingNewIsNotWritten) {
    ASSERT_TRUE(update());
    const auto first = bytes();
    ASSERT_TRUE(QFile::setPermissions(kept_.path, QFile::ReadOwner));
    const QFileInfo before(kept_.path);
    ASSERT_TRUE(update());
    EXPECT_EQ(bytes(), first);
    EXPECT_EQ(QFileInfo(kept_.path).permissions(), before.permissions()) << "the file is the same";
    EXPECT_EQ(QFileInfo(kept_.path).lastModified(), before.lastModified());
}

TEST_F(PhoneCalendar, KindsChosenAndAllDayAreWhatIsWritten) {
    const auto open = openOn(day("2027-06-01"));
    kept_.wish = {{TaskRule::Graft, TaskRule::CellsOut}, true};
    int kept = 0;
    for (const auto& [id, event] : events()) {
        const bool wanted = id.starts_with("graft-") || id.starts_with("cells_out-");
        EXPECT_EQ(isCancelled(event), !wanted) << id;
        EXPECT_TRUE(!wanted || icaltime_is_date(icalcomponent_get_dtstart(event))) << id;
        kept += wanted ? 1 : 0;
    }
    EXPECT_EQ(kept, 2);
    EXPECT_EQ(events_.size(), open) << "the others are off on the phone";
}

TEST_F(PhoneCalendar, WhatIsDoneIsTickedAndRingsNoMore) {
    EXPECT_NE(test::alarmIn(events().at(uid(TaskRule::Graft))), nullptr);
    Outcome done;
    done.id = test::id<Outcome>(1);
    done.batch = test::kBatch;
    done.kind = OutcomeKind::Graft;
    done.day = day("2027-06-04");
    done.count = Cells{20};
    ChangeSet changes;
    changes.add(done);
    edit(changes);
    auto* graft = events().at(uid(TaskRule::Graft));
    EXPECT_TRUE(textOf(graft, ICAL_SUMMARY_PROPERTY).starts_with("✓ Graft batch 1"));
    EXPECT_EQ(test::alarmIn(graft), nullptr);
    EXPECT_EQ(sequenceOf(graft), 1);
}

TEST_F(PhoneCalendar, AnEmptyFileIsBegunOneThatIsNotOursIsLeft) {
    kept_.path = at(QStringLiteral("tasks.ics"));
    ASSERT_TRUE(writeWhole(kept_.path, ""));
    EXPECT_TRUE(update());
    const auto ours = bytes();
    auto cut = QByteArray::fromStdString(ours);
    cut.chop(cut.size() / 3);
    for (const auto& text : {QByteArray("Buy sugar\n"), cut, QByteArray("\xFF\xFE\x00", 3)}) {
        ASSERT_TRUE(writeWhole(kept_.path, text));
        const auto done = update();
        ASSERT_FALSE(done.ok());
        EXPECT_TRUE(done.error().text.starts_with(kept_.path.toStdString() +
                                                  ": is no calendar that this program wrote"))
            << done.error().text;
        EXPECT_TRUE(done.error().text.ends_with("it is left as it is"));
        EXPECT_EQ(bytes(), text.toStdString());
    }
}

TEST_F(PhoneCalendar, TheCalendarOfAnotherBookIsLeft) {
    const auto path = at(QStringLiteral("example.tenthday"));
    ASSERT_TRUE(createBook(path, exampleContent(), test::fixedOptions()).ok());
    ASSERT_TRUE(update());
    const auto first = bytes();
    openBook(path);
    const auto done = update();
    ASSERT_FALSE(done.ok());
    EXPECT_NE(done.error().text.find("is the calendar of another book"), std::string::npos);
    EXPECT_EQ(bytes(), first);
}

TEST_F(PhoneCalendar, OfTheSeasonThatTodayLiesInWhicheverIsShown) {
    ChangeSet changes;
    changes.add(Season{test::id<Season>(2), 1, "2028", day("2028-04-01"), day("2028-09-30")});
    edit(changes);
    ASSERT_TRUE(desk_->showSeason(test::id<Season>(2)));
    EXPECT_TRUE(desk_->outlook()->batches.empty());
    const auto outlook = outlookOfToday(desk_->outlook(), desk_->file());
    ASSERT_TRUE(outlook);
    EXPECT_EQ(outlook.value()->batches.size(), 1U);
    ASSERT_TRUE(desk_->showSeason(test::id<Season>(1)));
    EXPECT_EQ(outlookOfToday(desk_->outlook(), desk_->file()).value(), desk_->outlook());
}

/// No file may grow beyond so many bytes while it lives: writing fails half-way.
class FullDisk {
public:
    explicit FullDisk(rlim_t bytes) {
        getrlimit(RLIMIT_FSIZE, &before_);
        signal_ = std::signal(SIGXFSZ, SIG_IGN);
        const rlimit small{bytes, before_.rlim_max};
        setrlimit(RLIMIT_FSIZE, &small);
    }
    ~FullDisk() {
        setrlimit(RLIMIT_FSIZE, &before_);
        std::signal(SIGXFSZ, signal_);
    }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;

private:
    rlimit before_{};
    void (*signal_)(int) = nullptr;
};

TEST_F(PhoneCalendar, AWriteThatFailsHalfWayLeavesTheFileAsItWas) {
    ASSERT_TRUE(update());
    const auto first = bytes();
    ASSERT_GT(first.size(), 1000U);
    edit(moveBatch(desk_->snapshot(), test::kBatch, day("2027-06-08")));
    const auto folder = state().keys();
    Result<void> done;
    {
        const FullDisk full(700);
        done = update();
    }
    ASSERT_FALSE(done.ok());
    EXPECT_NE(done.error().text.find("tasks.ics: cannot be written"), std::string::npos);
    EXPECT_EQ(bytes(), first);
    EXPECT_EQ(state().keys(), folder) << "nothing unfinished is left beside it";
    EXPECT_EQ(sequenceOf(events().at(uid(TaskRule::Graft))), 1);
}

TEST_F(PhoneCalendar, AFolderThatIsGoneIsNamed) {
    kept_.path = at(QStringLiteral("gone/tasks.ics"));
    const auto done = updateCalendarFile(kept_, *desk_->outlook(), stamp_);
    ASSERT_FALSE(done.ok());
    EXPECT_NE(done.error().text.find("gone/tasks.ics: cannot be written"), std::string::npos);
    kept_.path = at(QStringLiteral("."));
    EXPECT_FALSE(updateCalendarFile(kept_, *desk_->outlook(), stamp_).ok());
}

}  // namespace
}  // namespace tenthday
