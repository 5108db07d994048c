#include "chart/sides_lane.h"

#include "chart/builder_names.h"
#include "chart/planned_stays.h"
#include "screen_text/builder_names_text.h"
#include "screen_text/flying_text.h"

namespace tenthday {
namespace {

constexpr qreal kAbove = 6;
constexpr qreal kBetween = 2;
constexpr qreal kHeading = 14;  ///< boxes stand in from their yard
constexpr qreal kToLetter = 8;

/// Bars without words, where room is short.
constexpr qreal kLowestRow = 3;

qreal rowHeight(const TextRuler& ruler) { return ruler.line(Type::Small) + kBetween; }

/// Each box and its sides have a name of their own.
bool hasNames(qreal row, const TextRuler& ruler) { return row >= rowHeight(ruler) - 2; }

bool standsThere(const SideOutlook& side, Id<Yard> yard, const DayWindow& season) {
    if (!side.stands.overlaps(season)) return false;
    const Day first = std::max(side.stands.first, season.first);
    if (side.yardOn(first) == yard) return true;
    return std::any_of(side.stays.begin(), side.stays.end(), [&](const BoxStayFrom& stay) {
        return stay.yard == yard && stay.from >= first && stay.from <= season.last &&
               stay.from <= side.stands.last;
    });
}

/// Places in `outlook.nucs.sides` of the nucs that stand in a yard on any day of the season.
std::vector<int> sidesOf(const Outlook& outlook, Id<Yard> yard) {
    std::vector<int> places;
    for (std::size_t i = 0; i < outlook.nucs.sides.size(); ++i)
        if (standsThere(outlook.nucs.sides[i], yard, outlook.season))
            places.push_back(static_cast<int>(i));
    return places;
}

/// Boxes by their own heading: it stands in the row of the first side in sight, which has its
/// letter alone. A box that is not divided is its one row's name.
struct BoxNames {
    Id<Box> last{};

    void write(const LaneInput& input, const SideOutlook& side, const QRectF& row, Sheet& sheet) {
        const auto& ruler = sheet.ruler();
        const qreal room = input.titleRight - input.titleLeft;
        const auto box = QString::fromStdString(side.box->label);
        const bool isDivided = side.side->side != "-";
        const auto letter = isDivided ? QString::fromStdString(side.side->side) : QString();
        const auto at = [&](Type type) { return sheet.baselineAt(type, row.center().y()); };
        sheet.text(Layer::Names, Role::InkSoft, Type::Small, letter,
                   {input.titleRight, at(Type::Small)}, Align::Right);
        if (side.box->id == last) return;
        last = side.box->id;
        const qreal beside = letter.isEmpty() ? 0 : ruler.width(letter, Type::Small) + kToLetter;
        sheet.text(Layer::Names, Role::Ink, Type::Strong,
                   ruler.elided(box, Type::Strong, room - beside - kHeading),
                   {input.titleLeft + kHeading, at(Type::Strong)}, Align::Left);
        sheet.fill(Layer::Names, Role::GridStrong,
                   {input.titleLeft + kHeading, row.top() - kBetween, room - kHeading,
                    sheet.snap().hair()});
    }
};

/// Where rows are too low for a name each: one for neighbouring boxes, with a bracket about them.
class SharedNames {
public:
    void add(const SideOutlook& side, const QRectF& row, qreal line) {
        const auto box = QString::fromStdString(side.box->label);
        const bool isOfLast = !groups_.empty() && groups_.back().last == box;
        if (!isOfLast && (groups_.empty() || groups_.back().height() >= line))
            groups_.push_back({box, box, row.top(), row.bottom()});
        groups_.back().last = box;
        groups_.back().bottom = row.bottom();
    }
    void write(const LaneInput& input, qreal line, Sheet& sheet) {
        if (groups_.size() > 1 && groups_.back().height() < line) {
            const auto gone = groups_.back();
            groups_.pop_back();
            groups_.back().last = gone.last;
            groups_.back().bottom = gone.bottom;
        }
        const auto& ruler = sheet.ruler();
        for (const auto& group : groups_) {
            const auto name = group.first == group.last
                                  ? group.first
                                  : builder_names_text::joined(group.first, group.last);
            const qreal room = input.titleRight - input.titleLeft - kHeading;
            sheet.text(
                Layer::Names, Role::Ink, Type::Small, ruler.elided(name, Type::Small, room),
                {input.titleRight, sheet.baselineAt(Type::Small, (group.top + group.bottom) / 2)},
                Align::Right);
            layBracket(input, group.top, group.bottom, sheet);
        }
    }

private:
    struct Group {
        QString first;
        QString last;
        qreal top;
        qreal bottom;
        [[nodiscard]] qreal height() const { return bottom - top; }
    };
    std::vector<Group> groups_;
};

}  // namespace

LaneHeight SidesLane::height(const LaneInput& input, const TextRuler& ruler) const {
    const auto yard = input.outlook.nucs.yards[yard_].yard->id;
    const auto rows = static_cast<qreal>(sidesOf(input.outlook, yard).size());
    const qreal all = kAbove + rows * rowHeight(ruler);
    return {std::min(all, kAbove + rows * kLowestRow), all, all, 0, all};
}

void SidesLane::lay(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    waits_.clear();
    const auto yard = input.outlook.nucs.yards[yard_].yard->id;
    const auto sides = sidesOf(input.outlook, yard);
    const auto count = static_cast<qreal>(std::max<std::size_t>(1, sides.size()));
    const qreal height = (area.height() - kAbove) / count;
    const bool named = hasNames(height, sheet.ruler());
    const qreal line = sheet.ruler().line(Type::Small) - 2;  // letters may come closer than prose
    qreal y = area.top() + kAbove;
    BoxNames names;
    SharedNames shared;
    for (const int place : sides) {
        const QRectF row(area.left(), y, area.width(), height - (named ? kBetween : 1));
        y += height;
        if (!named)
            shared.add(input.outlook.nucs.sides[static_cast<std::size_t>(place)], row, line);
        if (row.bottom() < 0 || row.top() > input.options.size.height()) continue;
        const LaySideRow laid(input, place, yard, row, sheet);
        waits_.insert(waits_.end(), laid.waits().begin(), laid.waits().end());
        const auto& side = input.outlook.nucs.sides[static_cast<std::size_t>(place)];
        layPlannedStays(input, side, row, sheet);
        if (named) names.write(input, side, row, sheet);
    }
    if (!named) shared.write(input, line, sheet);
}

void SidesLane::write(const LaneInput& input, Sheet& sheet) {
    std::vector<Id<Batch>> written;
    for (const auto& wait : waits_) {
        if (std::find(written.begin(), written.end(), wait.batch) != written.end()) continue;
        const auto* batch = input.find(wait.batch);
        const auto words = batch ? flying_text::late(input.outlook, *batch) : QString();
        if (words.isEmpty() || writeLate(input, wait, words, sheet)) written.push_back(wait.batch);
    }
}

}  // namespace tenthday
