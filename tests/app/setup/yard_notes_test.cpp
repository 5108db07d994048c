// What is noted of yards, on the set-up page: drones, nectar flow, dearth and robbing.
#include <gtest/gtest.h>

#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>

#include "app/setup/setup_page_fixture.h"
#include "biology/drones.h"

namespace tenthday {
namespace {

using setup_text::Kind;
using setup_text::Name;
using test::day;

class YardNotesPage : public test::SetupPageTest {
protected:
    void addYard(const char* label) {
        Yard yard;
        yard.id = newId<Yard>();
        yard.label = label;
        ChangeSet changes;
        changes.add(yard);
        ASSERT_TRUE(desk_->apply(changes));
    }
    /// Types one sighting and saves it by Enter.
    void addSealedBrood(std::string_view on) {
        QTest::mouseClick(&page_->addButton(), Qt::LeftButton);
        typeDay(Name::Day, on);
        choose(Name::Stage, QStringLiteral("sealed brood"));
        type(setup_text::name(Name::Colonies), QStringLiteral("12"));
        QTest::keyClick(&field<QLineEdit>(setup_text::name(Name::Colonies)), Qt::Key_Return);
    }
};

TEST_F(YardNotesPage, DronesAreAddedChangedAndRemoved) {
    openEmpty();
    addYard("Orchard");
    goTo(Kind::Drones);
    EXPECT_TRUE(page_->emptyText().startsWith(QStringLiteral("No drones yet")));
    addSealedBrood("2027-05-10");
    ASSERT_EQ(desk_->snapshot().all<DroneSighting>().size(), 1U)
        << page_->form().told().toStdString();
    const auto seen = *desk_->snapshot().all<DroneSighting>().begin();
    EXPECT_EQ(seen->day, day("2027-05-10"));
    EXPECT_EQ(seen->stage, DroneStage::Sealed);
    EXPECT_EQ(seen->colonies, 12);
    EXPECT_EQ(page_->form().head(), QStringLiteral("Drones of Orchard, Mon 10 May 2027"));

    choose(Name::Stage, QStringLiteral("emerging"));
    QTest::keyClick(page_.get(), Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(desk_->snapshot().find(seen->id)->stage, DroneStage::Emerging);
    QTest::keyClick(&page_->table(), Qt::Key_Delete);
    EXPECT_TRUE(desk_->snapshot().all<DroneSighting>().empty());
    ASSERT_TRUE(desk_->undo());
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(desk_->snapshot().find(seen->id)->stage, DroneStage::Sealed);
}

TEST_F(YardNotesPage, TheDayOfMatureDronesIsToldWithItsRuleAndSource) {
    openEmpty();
    addYard("Orchard");
    goTo(Kind::Drones);
    addSealedBrood("2027-05-10");
    // Sealed at 9.5 d (S1, S2), out at 24 d (S18), mature 16 d later (S53): 30.5 d more.
    EXPECT_EQ(cell(0, 3), QStringLiteral("Thu 10 Jun 2027"));
    const auto tip = cell(0, 3, Qt::ToolTipRole);
    EXPECT_TRUE(tip.contains(QStringLiteral("24 until they emerge (S1, S2, S18) and 16 more (S53")))
        << tip.toStdString();
    EXPECT_EQ(cell(0, 1, Qt::ToolTipRole), QStringLiteral("Orchard"));
    EXPECT_TRUE(under(2).startsWith(QStringLiteral("All mature by Thu 10 Jun 2027.")))
        << under(2).toStdString();
    // While typing, before anything is saved.
    choose(Name::Stage, QStringLiteral("drone comb put in"));
    EXPECT_TRUE(under(2).startsWith(QStringLiteral("All mature by Sat 19 Jun 2027.")))
        << under(2).toStdString();
    choose(Name::Stage, QStringLiteral("flying"));
    EXPECT_TRUE(under(2).contains(QStringLiteral("taken as mature"))) << under(2).toStdString();
}

TEST_F(YardNotesPage, TheFirstGraftFollowsTheDronesOfAYard) {
    openExample();
    const auto matureFrom = [&] {
        const auto outlook = desk_->outlook();
        for (const auto& limit : outlook->limits.all)
            if (limit.limit == Limit::DronesReady) return limit.cause;
        return std::optional<Day>{};
    };
    const auto before = matureFrom();
    goTo(Kind::Drones);
    const auto rows = page_->table().model()->rowCount();
    QTest::mouseClick(&page_->addButton(), Qt::LeftButton);
    typeDay(Name::Day, "2027-04-20");  // before any others are mature
    choose(Name::Stage, QStringLiteral("flying"));
    QTest::keyClick(page_.get(), Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(page_->table().model()->rowCount(), rows + 1) << page_->form().told().toStdString();
    EXPECT_LT(matureFrom(), before);
}

TEST_F(YardNotesPage, WhatIsMissingIsToldInPlainWords) {
    openEmpty();
    goTo(Kind::Drones);
    QTest::mouseClick(&page_->addButton(), Qt::LeftButton);
    EXPECT_TRUE(under(0).startsWith(QStringLiteral("A yard is needed first")));
    QTest::mouseClick(&page_->form().saveButton(), Qt::LeftButton);
    EXPECT_EQ(under(0), QStringLiteral("Yard: this is needed."));
    page_->form().discardButton().click();
    addYard("Orchard");
    QTest::mouseClick(&page_->addButton(), Qt::LeftButton);
    QTest::mouseClick(&page_->form().saveButton(), Qt::LeftButton);
    EXPECT_EQ(under(2), QStringLiteral("Stage: this is needed.")) << "it is not guessed";
    choose(Name::Stage, QStringLiteral("eggs"));
    type(setup_text::name(Name::Colonies), QStringLiteral("many"));
    QTest::mouseClick(&page_->form().saveButton(), Qt::LeftButton);
    EXPECT_TRUE(under(3).startsWith(QStringLiteral("A whole number")));
    EXPECT_TRUE(desk_->snapshot().all<DroneSighting>().empty());
}

TEST_F(YardNotesPage, AFlowIsAddedAndItsEndPutRight) {
    openEmpty();
    addYard("Orchard");
    goTo(Kind::YardNotes);
    EXPECT_TRUE(page_->emptyText().contains(QStringLiteral("nectar flow")));
    QTest::mouseClick(&page_->addButton(), Qt::LeftButton);
    choose(Name::Kind, QStringLiteral("nectar flow"));
    typeDay(Name::From, "2027-06-10");
    // The last day, at first today (1 June), comes along with the first.
    EXPECT_EQ(field<QLineEdit>(setup_text::name(Name::Until)).text(),
              setup_text::day(day("2027-06-10")));
    QTest::keyClick(page_.get(), Qt::Key_S, Qt::ControlModifier);
    ASSERT_EQ(desk_->snapshot().all<YardNote>().size(), 1U) << page_->form().told().toStdString();
    EXPECT_EQ(page_->form().head(), QStringLiteral("Orchard, nectar flow, Thu 10 Jun 2027"));
    typeDay(Name::Until, "2027-06-09");
    QTest::keyClick(page_.get(), Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(under(3), setup_text::endsTooEarly());
    typeDay(Name::Until, "2027-06-29");
    QTest::keyClick(page_.get(), Qt::Key_S, Qt::ControlModifier);
    const auto note = *desk_->snapshot().all<YardNote>().begin();
    EXPECT_EQ(note->kind, YardNoteKind::Flow);
    EXPECT_EQ(note->until, day("2027-06-29"));
    EXPECT_EQ(cell(0, 4), QStringLiteral("20"));
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ((*desk_->snapshot().all<YardNote>().begin())->until, day("2027-06-10"));
    page_->table().setFocus();
    QTest::keyClick(&page_->table(), Qt::Key_Delete);
    EXPECT_TRUE(desk_->snapshot().all<YardNote>().empty());
}

TEST_F(YardNotesPage, AYardWithThemIsNotDeleted) {
    openEmpty();
    addYard("Orchard");
    goTo(Kind::Drones);
    addSealedBrood("2027-05-10");
    const auto yard = *desk_->snapshot().all<Yard>().begin();
    EXPECT_FALSE(deleteWhole(desk_->snapshot(), yard->id));
    EXPECT_EQ(usesOf(desk_->snapshot(), yard->id).size(), 1U);
}

}  // namespace
}  // namespace tenthday
