#include "screen_text/plan_steps_text.h"

#include <QStringList>

#include "screen_text/chart_text.h"
#include "screen_text/window_text.h"
#include "screen_text/words.h"

namespace tenthday::plan_steps_text {
namespace {

QString ordersState(const PlanGround& ground) {
    if (ground.orders == 0)
        return Words::tr(
            "✗ Missing: no open order is due in this season. Enter what is promised and what you "
            "need yourself, each with its day and how sure it must be.");
    return Words::tr("✓ %1, %2 wanted in all. How sure each must be stands with it.")
        .arg(Words::tr("%Ln open order(s)", nullptr, ground.orders),
             chart_text::number(ground.wanted));
}

QString thingsState(const PlanGround& ground) {
    QStringList there;
    if (ground.builders > 0) there += Words::tr("%Ln builder(s)", nullptr, ground.builders);
    if (ground.nucs > 0)
        there += Words::tr("%1 in %2")
                     .arg(chart_text::nucs(ground.nucs),
                          Words::tr("%Ln yard(s)", nullptr, ground.yards));
    if (ground.breeders > 0) there += Words::tr("%Ln breeder queen(s)", nullptr, ground.breeders);
    QStringList lines;
    if (!there.isEmpty()) lines += Words::tr("✓ %1").arg(there.join(QStringLiteral(", ")));
    if (ground.builders == 0)
        lines += Words::tr("✗ Missing: a builder, in which the cells are raised.");
    if (ground.nucs == 0)
        lines += Words::tr("▲ No mating nucs: it is planned as if there were enough.");
    if (ground.breeders == 0)
        lines += Words::tr("▲ No breeder queen: bars are proposed without one.");
    return lines.join(u'\n');
}

QString planState(const PlanGround& ground) {
    if (ground.isOver)
        return Words::tr(
            "✗ This season is over. Enter the next one, then choose it under View, "
            "Season.");
    if (!ground.canPlan()) return Words::tr("First what is missing above.");
    return Words::tr(
        "What to graft, when and in what. Nothing goes into the book until you take it over.");
}

}  // namespace

QString season(const PlanGround& ground) {
    const auto name =
        window_text::season(ground.seasonLabel, ground.season.first, ground.season.last);
    return ground.batches == 0
               ? Words::tr("Season %1. Nothing is planned in it yet.").arg(name)
               : Words::tr("Season %1. %2 in the book, which stay as they are.")
                     .arg(name, Words::tr("%Ln batch(es)", nullptr, ground.batches));
}
QString seasons() { return Words::tr("S&easons ..."); }

QString name(int step) {
    switch (step) {
        case 0:
            return Words::tr("1  Orders in");
        case 1:
            return Words::tr("2  Boxes and builders as they are");
        default:
            return Words::tr("3  A plan out");
    }
}

QString state(int step, const PlanGround& ground) {
    return step == 0 ? ordersState(ground) : step == 1 ? thingsState(ground) : planState(ground);
}

QString go(int step) {
    switch (step) {
        case 0:
            return Words::tr("Go to &orders");
        case 1:
            return Words::tr("Go to set-&up");
        default:
            return Words::tr("&Plan the season");
    }
}

setup_text::Kind missing(const PlanGround& ground) {
    if (ground.builders == 0) return setup_text::Kind::Builders;
    if (ground.nucs == 0) return setup_text::Kind::Boxes;
    return ground.breeders == 0 ? setup_text::Kind::Queens : setup_text::Kind::Boxes;
}

}  // namespace tenthday::plan_steps_text
