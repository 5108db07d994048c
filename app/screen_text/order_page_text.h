/// @file order_page_text.h  The words of the page of orders and of its dialogs.
#pragma once
#include <QString>

#include "outlook/order_prospect.h"
#include "outlook/season_orders.h"

namespace tenthday::order_page_text {

// The page.
[[nodiscard]] QString pageEntry();
[[nodiscard]] QString head();
[[nodiscard]] QString columnHead(int column);
/// What a column's figure is, and the order's note under it.
[[nodiscard]] QString because(const Outlook& outlook, const std::string& note, int column);
/// Queens ready and owed by the end of this week, and what can be promised in it and the next.
[[nodiscard]] QString totals(const PromiseWeek* thisWeek, const PromiseWeek* next);
/// "3 met, 1 in doubt, 1 short; 2 on the waiting list".
[[nodiscard]] QString counts(int met, int doubt, int isShort, int waiting);
[[nodiscard]] QString noOrders();
[[nodiscard]] QString noneOfThese();
[[nodiscard]] QString chooseOrder();
/// Entries of the filter: open, waiting, cancelled, all.
[[nodiscard]] QString filter(int entry);
inline constexpr int kFilters = 4;
[[nodiscard]] QString find();
[[nodiscard]] QString newOrder();
[[nodiscard]] QString paste();
[[nodiscard]] QString pasteHead();
/// "Take in 12 orders".
[[nodiscard]] QString takeIn(int lines);
[[nodiscard]] QString bought();
[[nodiscard]] QString whatIf();
[[nodiscard]] QString losses();
[[nodiscard]] QString change();
[[nodiscard]] QString deliver();
[[nodiscard]] QString replace();
[[nodiscard]] QString earmark();
/// Of the button: onto the list, or off it.
[[nodiscard]] QString waitingList(OrderStanding now);
/// Cancel, or open again.
[[nodiscard]] QString cancel(OrderStanding now);
[[nodiscard]] QString remove();
[[nodiscard]] QString removeSure(const QString& label);
[[nodiscard]] QString nothingToReplace();
[[nodiscard]] QString notOpen();

// Of one order.
/// "met", "71 % sure", "9 short", "waiting: from Mon 14 Jun", "cancelled", "delivered".
/// @param isOld  it is being reckoned anew: "71 % sure, about"
[[nodiscard]] QString state(OrderStanding standing, const OrderOutlook* outlook,
                            std::optional<Day> earliest, bool isOld);
/// "704: 6.2"; an empty label means bought in.
[[nodiscard]] QString fill(const QString& batch, double count);
[[nodiscard]] QString percent(Tenths sure);
[[nodiscard]] QString any();
/// Where an open order has no day on which it can go.
[[nodiscard]] QString noDayToGo(const std::optional<OrderOutlook>& outlook);
[[nodiscard]] QString weekday(int isoDay);
/// "Mon, Tue, Wed"; "any day".
[[nodiscard]] QString weekdays(const QString& shipDays);
[[nodiscard]] QString standingField();
[[nodiscard]] QString loss(DeliveryLoss why);
[[nodiscard]] QString neverWent();

// The order's dialog.
[[nodiscard]] QString newHead();
[[nodiscard]] QString changeHead(const QString& label);
[[nodiscard]] QString field(int which);
[[nodiscard]] QString purposeChoice(OrderPurpose purpose);
[[nodiscard]] QString whole();
[[nodiscard]] QString inParts();
[[nodiscard]] QString percentUnit();
[[nodiscard]] QString save();
[[nodiscard]] QString labelHint();
[[nodiscard]] QString anyLine();
/// When it would go and be caged; that no day fits.
[[nodiscard]] QString goes(const std::optional<OrderDays>& days, OrderKind kind);
/// The lines below the fields: chance, first day whole, by catch rule, who would be harmed.
[[nodiscard]] QString prospect(const OrderWords& words, const OrderProspect& prospect);
[[nodiscard]] QString reckoning();
[[nodiscard]] QString cannotBe(const QString& why);

// The other dialogs.
[[nodiscard]] QString howMany();
[[nodiscard]] QString onDay();
[[nodiscard]] QString ofBatch();
[[nodiscard]] QString matedAt();
[[nodiscard]] QString note();
[[nodiscard]] QString deliverHead(const QString& label, int rest);
[[nodiscard]] QString deliverWord();
[[nodiscard]] QString severalBatches();
[[nodiscard]] QString yardNotNamed();
[[nodiscard]] QString whyBatch();
[[nodiscard]] QString batchChoice(const QString& label, Day caught);
[[nodiscard]] QString replaceHead(const QString& label);
[[nodiscard]] QString replaceWord();
[[nodiscard]] QString whichDelivery();
[[nodiscard]] QString deliveryChoice(const Delivery& delivery, const QString& batch,
                                     const QString& yard);
[[nodiscard]] QString howManyFailed();
[[nodiscard]] QString ofDelivered(int count);
[[nodiscard]] QString whyFailed();
[[nodiscard]] QString earmarkHead(const QString& label);
[[nodiscard]] QString earmarkWord();
[[nodiscard]] QString earmarkHint();
[[nodiscard]] QString boughtHead();
[[nodiscard]] QString whichBought();
[[nodiscard]] QString newBought();
[[nodiscard]] QString boughtChoice(const QueenLot& lot);
[[nodiscard]] QString zeroTakesAway();
[[nodiscard]] QString lineField();
[[nodiscard]] QString inHandFrom();
[[nodiscard]] QString brood();
[[nodiscard]] QString proven();
[[nodiscard]] QString notProven();
[[nodiscard]] QString leaveOutHead(const QString& batch);
[[nodiscard]] QString leaveOutWord();
[[nodiscard]] QString leaveOutHint();
[[nodiscard]] QString reason();

// What an edit is called in "Undo: ...", after add, change, delete or record.
[[nodiscard]] QString orderName(const QString& label);
[[nodiscard]] QString deliveryName(int count, const QString& label);
[[nodiscard]] QString replacementName(int count, const QString& label);
[[nodiscard]] QString earmarkName(int count, const QString& batch, const QString& label);
[[nodiscard]] QString standingName(OrderStanding standing, const QString& label);
[[nodiscard]] QString boughtName(int count);
[[nodiscard]] QString leftOutName(const QString& batch);
[[nodiscard]] QString takenInName(const QString& batch);

}  // namespace tenthday::order_page_text
