/// @file what_if_text.h  The words of "what if": bad luck, and the orders before and after.
#pragma once
#include <QString>
#include <QStringList>

#include "supply/what_if.h"

namespace tenthday::what_if_text {

[[nodiscard]] QString head();
[[nodiscard]] QString cold();
[[nodiscard]] QString builderLost();
[[nodiscard]] QString robbed();
[[nodiscard]] QString takeLow();
[[nodiscard]] QString from();
[[nodiscard]] QString until();
[[nodiscard]] QString whichBuilder();
[[nodiscard]] QString whichYard();
[[nodiscard]] QString anyYard();
[[nodiscard]] QString howManyNucs();
[[nodiscard]] QString share();
[[nodiscard]] QString nothingKept();
[[nodiscard]] QString reckoning();
[[nodiscard]] QString cannotBe(const QString& why);
[[nodiscard]] QStringList columnHeads();
/// "30 mated queens for K-03".
[[nodiscard]] QString order(const Order& order);
/// Word and chance: "71 % sure", "9 short, 12 %".
[[nodiscard]] QString state(const OrderOutlook& order);
/// The same with an arrow where it is worse, and "the same" where nothing changes.
[[nodiscard]] QString stateAfter(const OrderOutlook& before, const OrderOutlook& after);
[[nodiscard]] QString summary(const WhatIfAnswer& answer, bool isNothing);

}  // namespace tenthday::what_if_text
