#include "chart/legend.h"

#include "chart/bands.h"
#include "chart/legend_signs.h"
#include "look/space.h"
#include "screen_text/chart_hand_text.h"
#include "screen_text/chart_text.h"
#include "screen_text/legend_text.h"

namespace tenthday {
namespace {

using chart_text::LegendEntry;

QString textOf(const LegendMark& entry) {
    if (const auto* of = std::get_if<LegendEntry>(&entry)) return chart_text::legend(*of);
    return legend_text::sign(std::get<LegendSign>(entry));
}

constexpr qreal kSwatch = 15;
constexpr qreal kToText = space::kPart;
constexpr qreal kBetween = 17;

qreal lineHeight(const TextRuler& ruler) { return ruler.line(Type::Small) + 4; }

/// Places entries left to right, in lines; gives each its line and x.
template <class Do>
int flow(const std::vector<LegendMark>& marks, qreal width, const TextRuler& ruler, Do&& place) {
    int line = 0;
    qreal x = 0;
    for (const auto& entry : marks) {
        const qreal needs = kSwatch + kToText + ruler.width(textOf(entry), Type::Small);
        if (x > 0 && x + needs > width) {
            ++line;
            x = 0;
        }
        place(entry, x, line);
        x += needs + kBetween;
    }
    return line + 1;
}

/// Days from due to fly to laying.
void layFirstEggsSwatch(const QRectF& box, Sheet& sheet) {
    constexpr int kDays = 4;
    const qreal width = box.width() / kDays;
    sheet.fill(Layer::Heads, Role::DueToFly, box);
    for (int day = 1; day <= kDays; ++day) {
        const qreal height = box.height() * day / (kDays + 1);
        sheet.fill(Layer::Heads, Role::Laying,
                   {box.left() + (day - 1) * width, box.bottom() - height, width, height});
    }
}

/// The marks of weather, drones and limits.
void laySeasonSwatch(LegendEntry entry, const QRectF& box, Sheet& sheet) {
    const qreal hair = sheet.snap().hair();
    const QRectF bar(box.left() + 3, box.top(), box.width() - 6, box.height());
    if (entry == LegendEntry::FlyingDay) sheet.fill(Layer::Heads, Role::FlyingDay, bar);
    if (entry == LegendEntry::NoFlyingDay)
        sheet.fill(Layer::Heads, Role::InkSoft,
                   {bar.left(), bar.bottom() - 2 * hair, bar.width(), 2 * hair});
    if (entry == LegendEntry::FlyingChance)
        sheet.frame(Layer::Heads, Role::FlyingDay, bar.adjusted(0, 2, 0, 0), hair);
    if (entry == LegendEntry::DronesMature)
        sheet.fill(Layer::Heads, Role::Ink,
                   {box.left(), box.center().y() - hair, box.width(), 2 * hair});
    if (entry == LegendEntry::OutsideLimits)
        sheet.hatch(Layer::Heads, Role::OutsideHatch, box, Slope::Rising, 4.5, 1);
}

void laySwatch(LegendEntry entry, const QRectF& box, Sheet& sheet) {
    const auto fill = [&](Role role) { sheet.fill(Layer::Heads, role, box, -1, 2); };
    const auto edge = [&](Role role) {
        sheet.frame(Layer::Heads, role, box, sheet.snap().hair(), 2);
    };
    switch (entry) {
        case LegendEntry::OpenCells:
            fill(Role::OpenCells);
            sheet.dots(Layer::Heads, Role::OpenDots, box, 4, 1.8);
            break;
        case LegendEntry::SealedCells:
            fill(Role::SealedCells);
            break;
        case LegendEntry::Virgin:
            fill(Role::Virgin);
            break;
        case LegendEntry::DueToFly:
            fill(Role::DueToFly);
            break;
        case LegendEntry::FirstEggs:
            layFirstEggsSwatch(box, sheet);
            break;
        case LegendEntry::Laying:
            fill(Role::Laying);
            break;
        case LegendEntry::JudgedGood:
            fill(Role::JudgedGood);
            break;
        case LegendEntry::NoQueen:
            layBandSwatch(Band::NoQueen, box, sheet);
            break;
        case LegendEntry::Ready:
            fill(Role::Ready);
            edge(Role::ReadyEdge);
            break;
        case LegendEntry::Likely:
            layBandSwatch(Band::Likely, box, sheet);
            edge(Role::ReadyEdge);
            break;
        case LegendEntry::Waiting:
            fill(Role::Waiting);
            break;
        case LegendEntry::NotStocked:
            layNotStocked(Layer::Heads, box, 3, sheet);
            edge(Role::NotStockedHatch);
            break;
        case LegendEntry::LookDue:
            sheet.glyph(Layer::Heads, Role::InkSoft, Glyph::LookDue, box.center(), 8);
            break;
        case LegendEntry::LookDone:
            sheet.glyph(Layer::Heads, Role::Good, Glyph::LookDone, box.center(), 8);
            break;
        case LegendEntry::Rest:
            sheet.dotted(Layer::Heads, Role::InkSoft,
                         {box.left(), box.center().y() - 1, box.width(), 2}, 1.5);
            break;
        default:
            laySeasonSwatch(entry, box, sheet);
    }
}

void layEntry(const LegendMark& entry, const QRectF& box, Sheet& sheet) {
    if (const auto* of = std::get_if<LegendEntry>(&entry)) return laySwatch(*of, box, sheet);
    layLegendSign(std::get<LegendSign>(entry), box, sheet);
}

/// The mark that folds it; beside it, where it is folded, what it is.
void layFold(bool folded, const QRectF& area, Sheet& sheet) {
    constexpr qreal kMark = 7;
    const qreal middle = area.top() + 6 + lineHeight(sheet.ruler()) / 2;
    const int target = sheet.target({.hit = Hit::LegendName},
                                    {0, area.top(), folded ? area.right() : area.left() - kMark,
                                     lineHeight(sheet.ruler()) + 10});
    const qreal x = folded ? area.left() + kMark / 2 : area.left() - 2 * kMark;
    sheet.glyph(Layer::Heads, Role::InkSoft, folded ? Glyph::Closed : Glyph::Opened, {x, middle},
                kMark, target);
    if (folded)
        sheet.text(Layer::Heads, Role::InkSoft, Type::Small, chart_hand_text::legend(),
                   {area.left() + 2 * kMark, sheet.baselineAt(Type::Small, middle)}, Align::Left,
                   target);
}

}  // namespace

qreal legendHeight(const std::vector<LegendMark>& marks, qreal width, const TextRuler& ruler) {
    return flow(marks, width, ruler, [](const LegendMark&, qreal, int) {}) * lineHeight(ruler) + 10;
}

qreal foldedLegendHeight(const TextRuler& ruler) { return lineHeight(ruler) + 10; }

void layLegend(const LaneInput& input, const std::vector<LegendMark>& marks, bool folded,
               const QRectF& area, Sheet& sheet) {
    if (input.options.canFold) layFold(folded, area, sheet);
    if (folded) return;
    const auto& snap = sheet.snap();
    const qreal line = lineHeight(sheet.ruler());
    flow(marks, area.width(), sheet.ruler(), [&](const LegendMark& entry, qreal x, int row) {
        const qreal middle = area.top() + 6 + (row + 0.5) * line;
        const auto box =
            snap.rect(area.left() + x, middle - 5, area.left() + x + kSwatch, middle + 5);
        layEntry(entry, box, sheet);
        sheet.text(Layer::Heads, Role::InkSoft, Type::Small, textOf(entry),
                   {box.right() + kToText, sheet.baselineAt(Type::Small, middle)}, Align::Left);
    });
}

}  // namespace tenthday
