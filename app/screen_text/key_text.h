/// @file key_text.h  What the keys of each page do, for the list under F1.
#pragma once
#include <QString>
#include <vector>

namespace tenthday::key_text {

struct Key {
    QString keys;
    QString what;
};

[[nodiscard]] QString head();
[[nodiscard]] QString anywhere();
[[nodiscard]] QString onTheChart();
[[nodiscard]] QString withThePointer();
[[nodiscard]] QString onThePageOfNucs();
[[nodiscard]] QString onTheWeek();
[[nodiscard]] QString onTheWeather();
[[nodiscard]] QString onTheVirgins();
[[nodiscard]] QString onTheEvening();
[[nodiscard]] QString onTheCellsDay();
[[nodiscard]] QString onTheOrders();
[[nodiscard]] QString onTheTradeNumbers();
[[nodiscard]] QString planningABatch();
[[nodiscard]] QString inTheSetUp();
/// Keys that only the season chart knows; those of the menus are read from the menus.
[[nodiscard]] std::vector<Key> chartKeys();
[[nodiscard]] std::vector<Key> pointer();
[[nodiscard]] std::vector<Key> nucsKeys();
[[nodiscard]] std::vector<Key> weekKeys();
[[nodiscard]] std::vector<Key> weatherKeys();
[[nodiscard]] std::vector<Key> virginKeys();
[[nodiscard]] std::vector<Key> eveningKeys();
[[nodiscard]] std::vector<Key> cellsDayKeys();
[[nodiscard]] std::vector<Key> orderKeys();
[[nodiscard]] std::vector<Key> factsKeys();
[[nodiscard]] std::vector<Key> batchKeys();
[[nodiscard]] std::vector<Key> setupKeys();

}  // namespace tenthday::key_text
