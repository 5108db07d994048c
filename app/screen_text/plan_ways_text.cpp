/// Ways to fix a shortfall, in words.
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/plan_text.h"
#include "screen_text/words.h"

namespace tenthday::plan_text {
namespace {

QString buildersMore(std::optional<BuilderKind> where, int count) {
    const auto more = Words::tr("%Ln more builder(s)", nullptr, count);
    return where ? Words::tr("%1 (%2)").arg(more, chart_text::builderKind(*where)) : more;
}

QString orderOf(const Outlook& outlook, const WayPart& part) {
    const auto order = part.order ? outlook.snapshot.find(*part.order) : nullptr;
    return order ? QString::fromStdString(order->label) : QString();
}

QString partText(const Outlook& outlook, const WayPart& part) {
    switch (part.kind) {
        case WayKind::MoreNucs: {
            const auto nucs = Words::tr("%Ln more nuc(s)", nullptr, part.amount);
            return part.from ? Words::tr("%1 from %2").arg(nucs, weekdayAndDay(*part.from)) : nucs;
        }
        case WayKind::MoreBuilders:
            return buildersMore(part.where, part.amount);
        case WayKind::EarlierGrafts: {
            const auto days = Words::tr("graft %Ln day(s) earlier", nullptr, part.amount);
            return part.from ? Words::tr("%1, from %2").arg(days, weekdayAndDay(*part.from)) : days;
        }
        case WayKind::LaterDue: {
            const auto days = Words::tr("%Ln day(s) later", nullptr, part.amount);
            const auto moved = Words::tr("order %1 due %2").arg(orderOf(outlook, part), days);
            return part.due ? Words::tr("%1, on %2").arg(moved, weekdayAndDay(*part.due)) : moved;
        }
    }
    return {};
}

/// What fixes nothing however much there is of it.
QString kindAlone(const Outlook& outlook, const WayPart& part) {
    switch (part.kind) {
        case WayKind::MoreNucs:
            return Words::tr("More nucs alone fix nothing.");
        case WayKind::MoreBuilders:
            return part.where ? Words::tr("More builders (%1) alone fix nothing.")
                                    .arg(chart_text::builderKind(*part.where))
                              : Words::tr("More builders alone fix nothing.");
        case WayKind::EarlierGrafts:
            return Words::tr("Grafting earlier alone fixes nothing.");
        case WayKind::LaterDue:
            return part.order ? Words::tr("A later due day of order %1 alone fixes nothing.")
                                    .arg(orderOf(outlook, part))
                              : Words::tr("Later due days alone fix nothing.");
    }
    return {};
}

}  // namespace

QString waysHead() { return Words::tr("Ways to fix it"); }
QString searchingWays(int tried) {
    return tried <= 0
               ? Words::tr("Looking for ways ...")
               : Words::tr("Looking for ways: way %1 is tried ...").arg(chart_text::number(tried));
}

QString way(const Outlook& outlook, const WayToFix& way) {
    if (way.parts.empty()) return {};
    if (!way.fixes) return kindAlone(outlook, way.parts.front());
    auto text = partText(outlook, way.parts.front());
    for (std::size_t i = 1; i < way.parts.size(); ++i)
        text = Words::tr("%1, and %2").arg(text, partText(outlook, way.parts[i]));
    return Words::tr("✓ %1: no order is short.").arg(text);
}

QString noWay() {
    return Words::tr(
        "No way was found: neither nucs, builders, earlier grafts nor later due days, "
        "one or two of them together.");
}
QString wayBecause() {
    return Words::tr(
        "Each is planned by itself and is the least that does: one less leaves an "
        "order short.");
}

}  // namespace tenthday::plan_text
