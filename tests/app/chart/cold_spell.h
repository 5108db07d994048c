/// @file cold_spell.h  A season in which weather makes a batch late.
#pragma once
#include "support/season_maker.h"

namespace tenthday::test {

/// Fourteen nucs, cold from 25 May to 6 June: virgins of batch 1 wait, today being 1 June.
inline SeasonMaker coldSpell() {
    SeasonMaker maker;
    maker.yard("Mill").builder("Box", "Mill");
    for (int i = 1; i <= 14; ++i) {
        const auto box = "N" + std::to_string(i);
        maker.box(box, "Mill", "7", "2027-04-01").stock(box + "/-", "2027-05-10");
    }
    maker.batch("1", "2027-05-11", 12, 20, "Box");
    maker.weather("2026-01-01", "2026-12-31", 22);
    maker.weather("2027-05-20", "2027-05-24", 22).weather("2027-05-25", "2027-06-06", 12);
    return maker;
}

}  // namespace tenthday::test
