// Numbers that are means: as short as they can be said.
#include <gtest/gtest.h>

#include <QLocale>

#include "screen_text/chart_text.h"

namespace tenthday {
namespace {

class Expected : public ::testing::Test {
protected:
    Expected() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom)); }
    ~Expected() override { QLocale::setDefault(QLocale::c()); }
    static std::string of(double count) { return chart_text::expected(count).toStdString(); }
};

TEST_F(Expected, HasTenthsOnlyWhereThereAreSome) {
    EXPECT_EQ(of(53.3), "53.3");
    EXPECT_EQ(of(39), "39");
    EXPECT_EQ(of(2.96), "3");
    EXPECT_EQ(of(0.04), "0");
    EXPECT_EQ(of(-0.04), "0");
    EXPECT_EQ(of(-2.5), "-2.5");
    EXPECT_EQ(of(-20), "-20");
    EXPECT_EQ(of(1234.5), "1,234.5");
}

}  // namespace
}  // namespace tenthday
