#include "options/settings.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

namespace tenthday {
namespace {

class SettingsTest : public ::testing::Test {
protected:
    Settings reopened() {
        return Settings(std::make_unique<QSettings>(folder_.filePath(QStringLiteral("s.ini")),
                                                    QSettings::IniFormat));
    }
    QTemporaryDir folder_;
};

TEST_F(SettingsTest, BeginEmpty) {
    const auto settings = reopened();
    EXPECT_EQ(settings.lastBook().toStdString(), "");
    EXPECT_EQ(settings.look(), LookChoice::System);
    EXPECT_TRUE(settings.windowPlace().isNull());
    EXPECT_FALSE(settings.isMaximized());
}

TEST_F(SettingsTest, AreRememberedAcrossRuns) {
    {
        auto settings = reopened();
        settings.setLastBook(QStringLiteral("/home/a/Žďár mill.tenthday"));
        settings.setLook(LookChoice::Dark);
        settings.setWindowPlace({10, -20, 1366, 768}, true);
    }
    const auto settings = reopened();
    EXPECT_EQ(settings.lastBook().toStdString(), "/home/a/Žďár mill.tenthday");
    EXPECT_EQ(settings.look(), LookChoice::Dark);
    EXPECT_EQ(settings.windowPlace(), QRect(10, -20, 1366, 768));
    EXPECT_TRUE(settings.isMaximized());
}

TEST_F(SettingsTest, ACalendarIsKeptForOneBookAndNoOther) {
    const auto book = QStringLiteral("/home/a/Žďár mill.tenthday");
    const KeptCalendar calendar{QStringLiteral("/home/a/shared/mill.ics"),
                                {{TaskRule::Graft, TaskRule::CellsOut}, true}};
    {
        auto settings = reopened();
        EXPECT_FALSE(settings.keptCalendar(book));
        settings.setKeptCalendar(book, calendar);
        settings.setKeptCalendar(QStringLiteral("/other.tenthday"),
                                 KeptCalendar{QStringLiteral("/other.ics"), {}});
    }
    auto settings = reopened();
    EXPECT_EQ(settings.keptCalendar(book), calendar);
    const auto other = settings.keptCalendar(QStringLiteral("/other.tenthday"));
    ASSERT_TRUE(other);
    EXPECT_TRUE(other->wish.wants(TaskRule::Own)) << "none named: all";
    EXPECT_FALSE(settings.keptCalendar(QStringLiteral("/home/a/mill.tenthday")));
    settings.setKeptCalendar(book, std::nullopt);
    EXPECT_FALSE(settings.keptCalendar(book));
    EXPECT_TRUE(settings.keptCalendar(QStringLiteral("/other.tenthday")));
}

TEST_F(SettingsTest, NonsenseCountsAsNeverSet) {
    {
        QSettings store(folder_.filePath(QStringLiteral("s.ini")), QSettings::IniFormat);
        store.setValue(QStringLiteral("window/look"), QStringLiteral("purple"));
        store.setValue(QStringLiteral("window/place"), QStringLiteral("there"));
    }
    EXPECT_EQ(reopened().look(), LookChoice::System);
    EXPECT_TRUE(reopened().windowPlace().isNull());
}

TEST_F(SettingsTest, TheOrderOfWaysIsRemembered) {
    EXPECT_EQ(reopened().wayOrder(), usualWays());
    const WayOrder order{{Way::Caged, 20}, {Way::OtherYards, {}}, {Way::Sold, {}}};
    {
        auto settings = reopened();
        settings.setWayOrder(order);
    }
    EXPECT_EQ(reopened().wayOrder(), order);
    reopened().setWayOrder({});
    EXPECT_TRUE(reopened().wayOrder().empty()) << "none is an answer too";
    QSettings store(folder_.filePath(QStringLiteral("s.ini")), QSettings::IniFormat);
    store.setValue(QStringLiteral("cells/ways"), QStringLiteral("moon sold:-3 caged:x"));
    store.sync();
    EXPECT_EQ(reopened().wayOrder(), (WayOrder{{Way::Sold, {}}, {Way::Caged, {}}}));
}

TEST(LookFor, FollowsTheDesktopUnlessToldOtherwise) {
    const auto dark = widgetPalette(Look::Dark);
    const auto light = widgetPalette(Look::Light);
    EXPECT_EQ(lookFor(LookChoice::System, dark), Look::Dark);
    EXPECT_EQ(lookFor(LookChoice::System, light), Look::Light);
    EXPECT_EQ(lookFor(LookChoice::Light, dark), Look::Light);
    EXPECT_EQ(lookFor(LookChoice::Dark, light), Look::Dark);
}

}  // namespace
}  // namespace tenthday
