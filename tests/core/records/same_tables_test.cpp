#include "records/same_tables.h"

#include <gtest/gtest.h>

#include "support/days.h"
#include "support/ids.h"

namespace tenthday {
namespace {

/// Each table by itself: one row more in it, and nothing else.
template <class See>
void forEachTable(See see) {
    forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row> type) {
        Snapshot more;
        more.setAll<Row>(Table<Row>::from({std::make_shared<const Row>()}));
        see(type, more);
    });
}

TEST(SameTables, AreThoseOfACopy) {
    forEachTable([](auto, const Snapshot& more) {
        const Snapshot copy = more;
        EXPECT_TRUE(sameTablesBut<>(more, copy));
    });
}

TEST(SameTables, AreOthersWithARowMoreButInThoseNamed) {
    forEachTable([]<class Row>(std::type_identity<Row>, const Snapshot& more) {
        Snapshot without = more;
        without.setAll<Row>(Table<Row>());
        EXPECT_FALSE(sameTablesBut<>(without, more)) << typeid(Row).name();
        EXPECT_TRUE(sameTablesBut<Row>(without, more)) << typeid(Row).name();
    });
}

TEST(SameTables, AreOthersOnAnotherDayOrInAnotherSeason) {
    const Snapshot one;
    Snapshot other = one;
    other.setToday(one.today() + Days{1});
    EXPECT_FALSE(sameTablesBut<>(one, other));
    other = one;
    other.setSeason(test::id<Season>(1));
    EXPECT_FALSE(sameTablesBut<>(one, other));
}

}  // namespace
}  // namespace tenthday
