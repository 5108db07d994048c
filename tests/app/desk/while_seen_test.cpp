#include "desk/while_seen.h"

#include <gtest/gtest.h>

namespace tenthday::test {
namespace {

struct Page {
    QWidget widget;
    int followed = 0;
    bool puts = false;  ///< off
    WhileSeen seen{&widget, [this] {
                       ++followed;
                       if (puts) seen.putOff();
                   }};
};

TEST(WhileSeen, FollowsAtOnceWhatIsSeenAndOnceOnlyWhatIsShownLater) {
    Page page;
    page.widget.show();
    EXPECT_EQ(page.followed, 0) << "nothing was asked";
    page.seen.follow();
    page.seen.follow();
    EXPECT_EQ(page.followed, 2);
    page.widget.hide();
    page.seen.follow();
    page.seen.follow();
    EXPECT_EQ(page.followed, 2) << "nobody sees it";
    page.widget.show();
    EXPECT_EQ(page.followed, 3);
    page.widget.hide();
    page.widget.show();
    EXPECT_EQ(page.followed, 3) << "nothing is new";
}

TEST(WhileSeen, WhatIsPutOffIsDoneWhenItIsShownAgain) {
    Page page;
    page.puts = true;
    page.widget.show();
    page.seen.follow();
    page.puts = false;
    page.widget.hide();
    page.widget.show();
    EXPECT_EQ(page.followed, 2);
    page.widget.hide();
    page.widget.show();
    EXPECT_EQ(page.followed, 2);
}

}  // namespace
}  // namespace tenthday::test
