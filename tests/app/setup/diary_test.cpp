// The diary of builders on the set-up page: make-ups and notes in one list.
#include <gtest/gtest.h>

#include <QCheckBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>

#include "app/setup/setup_page_fixture.h"
#include "screen_text/diary_text.h"
#include "setup/diary_hints.h"

namespace tenthday {
namespace {

using setup_text::Kind;
using setup_text::Name;
using test::day;
using namespace diary_field;

class DiaryPage : public test::SetupPageTest {
protected:
    /// A builder in a yard, and a batch of 20 grafts in it on 10 June.
    void openWithBuilder() {
        openEmpty();
        Yard yard;
        yard.id = newId<Yard>();
        yard.label = "Mill";
        Builder builder;
        builder.id = builder_ = newId<Builder>();
        builder.label = "Box";
        builder.yard = yard_ = yard.id;
        builder.from = day("2027-04-01");
        ChangeSet changes;
        changes.add(yard);
        changes.add(builder);
        addBatch(changes);
        ASSERT_TRUE(desk_->apply(changes));
        goTo(Kind::Diary);
    }
    void addBatch(ChangeSet& changes) {
        const auto& methods = desk_->snapshot().all<Method>();
        ASSERT_FALSE(methods.empty());
        Batch batch;
        batch.id = newId<Batch>();
        batch.label = "7";
        batch.day = day("2027-06-10");
        batch.method = (*methods.begin())->id;
        BatchBar bar;
        bar.id = newId<BatchBar>();
        bar.batch = batch.id;
        bar.cells = Cells{20};
        BatchLoad load;
        load.id = newId<BatchLoad>();
        load.batch = batch.id;
        load.builder = builder_;
        changes.add(batch);
        changes.add(bar);
        changes.add(load);
    }
    void hold(std::string_view from, std::string_view until) {
        ChangeSet changes;
        changes.add(YardNote{
            newId<YardNote>(), 1, yard_, YardNoteKind::Disease, day(from), day(until), {}});
        ASSERT_TRUE(desk_->apply(changes));
    }
    void begin(const QString& what, std::string_view on) {
        QTest::mouseClick(&page_->addButton(), Qt::LeftButton);
        choose(diary_text::whatHead(), what);
        typeDay(Name::Day, on);
    }
    void tick(const QString& words) {
        for (auto* box : page_->form().findChildren<QCheckBox*>())
            if (box->text() == words) {
                box->setFocus();
                QTest::keyClick(box, Qt::Key_Space);
                return;
            }
        FAIL() << "no tick " << words.toStdString();
    }
    void save() { QTest::keyClick(page_.get(), Qt::Key_S, Qt::ControlModifier); }
    /// Names of the fields that are to be seen, in order.
    QStringList seen() {
        QStringList names;
        for (const auto* label : page_->form().findChildren<QLabel*>())
            if (label->buddy() != nullptr && !label->isHidden() && label->isVisible())
                names += label->text();
        return names;
    }
    template <class Row>
    Ptr<Row> only() {
        EXPECT_EQ(desk_->snapshot().all<Row>().size(), 1U) << page_->form().told().toStdString();
        return desk_->snapshot().all<Row>().empty() ? nullptr
                                                    : *desk_->snapshot().all<Row>().begin();
    }

    Id<Builder> builder_;
    Id<Yard> yard_;
};

TEST_F(DiaryPage, AMakeUpIsAddedChangedAndRemoved) {
    openWithBuilder();
    EXPECT_TRUE(page_->emptyText().startsWith(QStringLiteral("Nothing yet")));
    begin(QStringLiteral("made up"), "2027-06-09");
    type(diary_text::hour(), QStringLiteral("17"));
    type(diary_text::donors(), QStringLiteral("Heath"));
    type(diary_text::bees(), QStringLiteral("9000"));
    type(diary_text::broodFrames(), QStringLiteral("4"));
    tick(diary_text::movedAwayTick());
    QTest::keyClick(&field<QLineEdit>(diary_text::bees()), Qt::Key_Return);
    const auto row = only<MakeUp>();
    ASSERT_TRUE(row);
    EXPECT_EQ(row->builder, builder_);
    EXPECT_EQ(row->day, day("2027-06-09"));
    EXPECT_EQ(row->hour, Hour{17});
    EXPECT_TRUE(row->openBrood) << "so that no look is left out by forgetting a tick";
    EXPECT_TRUE(row->movedAway);
    EXPECT_EQ(row->beesMl, BeesMl{9000});
    EXPECT_EQ(row->broodFrames, Frames{4});
    EXPECT_EQ(row->donors, "Heath");
    EXPECT_EQ(page_->form().head(), QStringLiteral("Box, made up, Wed 9 Jun 2027"));
    EXPECT_EQ(cell(0, 5), QStringLiteral("with open brood, 9,000 ml of bees, 4 brood frames, moved "
                                         "away"));

    tick(diary_text::openBroodTick());
    save();
    EXPECT_FALSE(desk_->snapshot().find(row->id)->openBrood);
    QTest::keyClick(&page_->table(), Qt::Key_Delete);
    EXPECT_TRUE(desk_->snapshot().all<MakeUp>().empty());
    ASSERT_TRUE(desk_->undo());
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(desk_->snapshot().find(row->id)->openBrood);
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(desk_->snapshot().all<MakeUp>().empty());
}

TEST_F(DiaryPage, NotesOfEachKindAreKeptWithWhatBelongsToThem) {
    openWithBuilder();
    begin(QStringLiteral("brood put in"), "2027-06-05");
    choose(diary_text::broodAge(), QStringLiteral("eggs only"));
    type(diary_text::donors(), QStringLiteral("Heath 2"));
    save();
    auto note = only<BuilderNote>();
    ASSERT_TRUE(note);
    EXPECT_EQ(note->kind, BuilderNoteKind::BroodIn);
    EXPECT_EQ(note->broodAge, BroodAge::Eggs);
    EXPECT_TRUE(note->openBrood);
    EXPECT_EQ(note->donor, "Heath 2");
    // As something else it keeps nothing that has no place there.
    choose(diary_text::whatHead(), QStringLiteral("feed"));
    save();
    note = only<BuilderNote>();
    EXPECT_EQ(note->kind, BuilderNoteKind::Feed);
    EXPECT_FALSE(note->openBrood);
    EXPECT_EQ(note->broodAge, BroodAge::All);
    EXPECT_EQ(note->donor, "");
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(only<BuilderNote>()->broodAge, BroodAge::Eggs);
}

TEST_F(DiaryPage, OnlyFieldsThatBelongToWhatWasDoneAreShown) {
    openWithBuilder();
    QTest::mouseClick(&page_->addButton(), Qt::LeftButton);
    const QStringList all{QStringLiteral("Builder"), QStringLiteral("What"), QStringLiteral("Day"),
                          QStringLiteral("Hour")};
    EXPECT_EQ(seen(), all) << seen().join(u',').toStdString();
    const auto after = [&](const char* what, const QStringList& more) {
        choose(diary_text::whatHead(), QString::fromLatin1(what));
        EXPECT_EQ(seen(), all + more) << what << seen().join(u',').toStdString();
    };
    const auto brood = diary_text::openBrood();
    const auto donors = diary_text::donors();
    const auto note = setup_text::name(Name::Note);
    after("made up",
          {brood, donors, diary_text::place(), diary_text::bees(), diary_text::broodFrames()});
    after("look for wild cells", {note});
    after("brood put in", {brood, diary_text::broodAge(), donors, note});
    after("bees added", {donors, note});
    after("feed", {note});
    after("pollen", {note});
    choose(diary_text::whatHead(), QStringLiteral("brood put in"));
    tick(diary_text::openBroodTick());
    EXPECT_FALSE(seen().contains(diary_text::broodAge())) << "sealed brood has no age to ask for";
}

TEST_F(DiaryPage, AMakeUpDoesNotBecomeANote) {
    openWithBuilder();
    begin(QStringLiteral("made up"), "2027-06-09");
    save();
    EXPECT_EQ(field<QComboBox>(diary_text::whatHead()).count(), 1);
    begin(QStringLiteral("pollen"), "2027-06-09");
    save();
    EXPECT_EQ(field<QComboBox>(diary_text::whatHead()).count(), 5);
}

TEST_F(DiaryPage, WorkersWantedAreToldForTheBatchThatComes) {
    openWithBuilder();
    begin(QStringLiteral("made up"), "2027-06-09");
    EXPECT_EQ(under(On), QStringLiteral("For batch 7, graft Thu 10 Jun."));
    // 300 a cell (S77): 20 want 6,000, on 3 to 4 full deep frames.
    EXPECT_EQ(under(Bees),
              QStringLiteral("Its 20 grafts want 6,000 workers at 300 a cell (S77). Deep frames "
                             "full of bees, 1,600 to 2,000 on each: 3 to 4."));
    typeDay(Name::Day, "2027-06-11");
    EXPECT_TRUE(under(On).startsWith(QStringLiteral("No batch"))) << under(On).toStdString();
    EXPECT_EQ(under(Bees), QString());
}

TEST_F(DiaryPage, BroodTellsWhenWildQueensComeAndWhenToLook) {
    openWithBuilder();
    begin(QStringLiteral("brood put in"), "2027-06-05");
    type(diary_text::hour(), QStringLiteral("10"));
    // 216 and 240 h (S118); looks on days 5 to 7 and 8 to 9.
    EXPECT_EQ(under(Age).toStdString(),
              "A wild queen can be out from Mon 14 Jun 10:00, seldom, and from Tue 15 Jun 10:00 "
              "more often; look for wild cells on Thu 10 Jun to Sat 12 Jun and again on Sun 13 Jun "
              "to Mon 14 Jun.");
    choose(diary_text::broodAge(), QStringLiteral("none older than 36 h"));
    EXPECT_TRUE(under(Age).startsWith(
        QStringLiteral("A wild queen can be out from Wed 16 Jun 22:00; look")))
        << under(Age).toStdString();
    choose(diary_text::broodAge(), QStringLiteral("eggs only"));
    EXPECT_TRUE(under(Age).startsWith(QStringLiteral("A wild queen can be out from Fri 18 Jun")))
        << under(Age).toStdString();
    tick(diary_text::openBroodTick());
    EXPECT_EQ(under(OpenBrood), diary_text::noWildCells());
}

TEST_F(DiaryPage, DonorsHeldForDiseaseWarn) {
    openWithBuilder();
    hold("2027-06-01", "2027-06-20");
    begin(QStringLiteral("made up"), "2027-06-09");
    EXPECT_EQ(under(Donors), diary_text::donorsHint());
    type(diary_text::donors(), QStringLiteral("Heath, Mill 3"));
    EXPECT_TRUE(under(Donors).startsWith(
        QStringLiteral("Warning: Mill is held for disease until Sun 20 Jun")))
        << under(Donors).toStdString();
    typeDay(Name::Day, "2027-06-21");
    EXPECT_EQ(under(Donors), diary_text::donorsHint());
}

TEST_F(DiaryPage, CautionsAreShown) {
    openWithBuilder();
    begin(QStringLiteral("made up"), "2027-06-09");
    EXPECT_TRUE(under(Done).contains(QStringLiteral("two people"))) << under(Done).toStdString();
    EXPECT_TRUE(under(MovedAway).contains(QStringLiteral("fly back")));
    tick(diary_text::movedAwayTick());
    EXPECT_EQ(under(MovedAway), QString());
}

TEST_F(DiaryPage, ALookTellsWhichBroodItIsFor) {
    openWithBuilder();
    begin(QStringLiteral("made up"), "2027-06-01");
    save();
    begin(QStringLiteral("look for wild cells"), "2027-06-07");
    EXPECT_TRUE(
        under(On).startsWith(QStringLiteral("Open brood of Tue 1 Jun: look for wild cells "
                                            "on Sun 6 Jun to Tue 8 Jun")))
        << under(On).toStdString();
    typeDay(Name::Day, "2027-05-20");
    EXPECT_EQ(under(On), diary_text::noLookWanted());
}

TEST_F(DiaryPage, ADayOutsideTheBuildersDaysWarns) {
    openWithBuilder();
    begin(QStringLiteral("pollen"), "2027-03-20");
    EXPECT_TRUE(under(Of).contains(QStringLiteral("Box is there from Thu 1 Apr 2027")))
        << under(Of).toStdString();
    typeDay(Name::Day, "2027-04-01");
    EXPECT_EQ(under(Of), QString());
}

TEST_F(DiaryPage, WhatIsMissingIsToldInPlainWords) {
    openEmpty();
    goTo(Kind::Diary);
    QTest::mouseClick(&page_->addButton(), Qt::LeftButton);
    EXPECT_TRUE(under(Of).startsWith(QStringLiteral("A builder is needed first")));
    QTest::mouseClick(&page_->form().saveButton(), Qt::LeftButton);
    EXPECT_EQ(under(Of), QStringLiteral("Builder: this is needed."));
}

TEST_F(DiaryPage, WhatWasDoneIsNotGuessed) {
    openWithBuilder();
    QTest::mouseClick(&page_->addButton(), Qt::LeftButton);
    save();
    EXPECT_EQ(under(Done), QStringLiteral("What: this is needed."));
    choose(diary_text::whatHead(), QStringLiteral("feed"));
    type(diary_text::hour(), QStringLiteral("24"));
    save();
    EXPECT_TRUE(under(At).startsWith(QStringLiteral("A whole number from 0 to 23")));
    EXPECT_TRUE(desk_->snapshot().all<BuilderNote>().empty());
}

TEST_F(DiaryPage, AFieldThatIsHiddenIsNotAskedFor) {
    openWithBuilder();
    begin(QStringLiteral("made up"), "2027-06-09");
    type(diary_text::bees(), QStringLiteral("many"));
    choose(diary_text::whatHead(), QStringLiteral("feed"));
    save();
    EXPECT_EQ(only<BuilderNote>()->kind, BuilderNoteKind::Feed);
}

TEST_F(DiaryPage, AllBuildersStandTogetherTheNewestFirstAndCanBeFound) {
    openExample();
    goTo(Kind::Diary);
    const auto& model = *page_->table().model();
    const auto& book = desk_->snapshot();
    EXPECT_EQ(static_cast<std::size_t>(model.rowCount()),
              book.all<MakeUp>().size() + book.all<BuilderNote>().size());
    EXPECT_EQ(cell(0, 2), QStringLiteral("West"));
    EXPECT_EQ(cell(0, 3), QStringLiteral("made up"));
    EXPECT_EQ(cell(model.rowCount() - 1, 0), QStringLiteral("Mon 3 May 2027"));
    QTest::keyClicks(&page_->find(), QStringLiteral("north"));
    ASSERT_GT(model.rowCount(), 0);
    for (int row = 0; row < model.rowCount(); ++row)
        EXPECT_EQ(cell(row, 2), QStringLiteral("North"));
}

}  // namespace
}  // namespace tenthday
