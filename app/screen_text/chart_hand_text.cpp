#include "screen_text/chart_hand_text.h"

#include <QKeySequence>
#include <cmath>

#include "screen_text/chart_text.h"
#include "screen_text/lists.h"
#include "screen_text/words.h"

namespace tenthday::chart_hand_text {
namespace {

CardText lanesCard(const QString& title, const QStringList& lanes, const QString& key) {
    constexpr int kMost = 12;
    CardText card;
    card.title = title;
    for (const auto& lane : lanes.mid(0, kMost)) card.lines.push_back({lane, {}, {}});
    if (const int more = static_cast<int>(lanes.size()) - kMost; more > 0)
        card.lines.push_back({Words::tr("%1 more").arg(chart_text::number(more)), {}, {}});
    card.lines.push_back({Words::tr("Press, or key %1, to scroll there.").arg(key), {}, {}});
    return card;
}

}  // namespace

QString legend() { return Words::tr("What the colours and marks mean"); }
QString wholeSeason() { return Words::tr("Whole season"); }
QString noWeather() {
    return Words::tr("Days on which virgins can fly stand here, once there is weather.");
}
QString noOrders() {
    return Words::tr("Queens caught and the orders that want them stand here, once there are any.");
}
QString noBuilderLoads() { return Words::tr("Cells stand here from the graft on."); }

QString in(const QString& clock) { return Words::tr("in %1").arg(clock); }
QString out(const QString& clock) { return Words::tr("out %1").arg(clock); }

QString grafts(int count) { return Words::tr("%Ln graft(s)", nullptr, count); }
QString were(int count) { return Words::tr("were %1").arg(chart_text::number(count)); }
QString toBuilder(const QString& name) { return Words::tr("into builder %1").arg(name); }
QString toYard(const QString& name) { return Words::tr("to yard %1").arg(name); }
QString batches(int count) { return Words::tr("%Ln batch(es)", nullptr, count); }
QString batchNames(const QStringList& first, int more) {
    return first.size() + more == 1 ? Words::tr("batch %1").arg(first.front())
                                    : Words::tr("batches %1").arg(listedWithMore(first, more));
}
QString byDays(int days) {
    return days < 0 ? Words::tr("%Ln day(s) earlier", nullptr, -days)
                    : Words::tr("%Ln day(s) later", nullptr, days);
}
QString magnetHint() {
    return Words::tr("Drawn to days that clash with nothing; hold Shift for any day.");
}

QString yardOn(const QString& yard, const QString& day) {
    return Words::tr("Yard %1 on %2").arg(yard, day);
}
QString numbers(const ReadyNumbers& numbers) {
    return Words::tr("ready %1, likely %2, can be stocked %3, needs open brood first %4")
        .arg(chart_text::number(numbers.ready),
             chart_text::number(static_cast<int>(std::floor(numbers.likely + 1e-6))),
             chart_text::number(numbers.canStock), chart_text::number(numbers.needsBrood));
}
QString batch(const QString& label) { return Words::tr("Batch %1").arg(label); }
QString lanesBelow(const QStringList& first, int more) {
    return Words::tr("below: %1").arg(listedWithMore(first, more));
}
QString lanesAbove(const QStringList& first, int more) {
    return Words::tr("above: %1").arg(listedWithMore(first, more));
}
QString lanesLacking(const QStringList& first, int more) {
    return Words::tr("not in this picture: %1").arg(listedWithMore(first, more));
}
CardText lanesBelowCard(const QStringList& lanes) {
    return lanesCard(lanesBelowName(), lanes, lanesBelowKey());
}
CardText lanesAboveCard(const QStringList& lanes) {
    return lanesCard(lanesAboveName(), lanes, lanesAboveKey());
}
QString lanesBelowName() { return Words::tr("Lanes below"); }
QString lanesAboveName() { return Words::tr("Lanes above"); }
QString scrollThere() { return Words::tr("Scroll there"); }
QString lanesBelowKey() { return QKeySequence(Qt::Key_B).toString(QKeySequence::NativeText); }
QString lanesAboveKey() {
    return QKeySequence(Qt::SHIFT | Qt::Key_B).toString(QKeySequence::NativeText);
}
QString moreNucsOf(const QString& yard) { return Words::tr("more nucs of %1").arg(yard); }
QString loadIn(const QString& batch, const QString& builder) {
    return Words::tr("Batch %1 in %2").arg(batch, builder);
}
QString batchValue(const QString& graft, const QString& out, const QString& caught) {
    return Words::tr("graft %1, cells out %2, catch %3").arg(graft, out, caught);
}
QString orderDue(const QString& label, const QString& day) {
    return Words::tr("Order %1 due %2").arg(label, day);
}
QString choose() { return Words::tr("Choose"); }
QString change() { return Words::tr("Change"); }
QString earlier() { return Words::tr("A day earlier"); }
QString later() { return Words::tr("A day later"); }
QString noClash() { return Words::tr("No clash in that direction."); }
QString noMust() { return Words::tr("No work in that direction that must be done on its day."); }

}  // namespace tenthday::chart_hand_text
