#include "chart/builder_names.h"

#include "screen_text/builder_names_text.h"

namespace tenthday {
namespace {

using builder_names_text::stemOf;

bool areAlike(const BuilderRow& a, const BuilderRow& b) {
    if (a.builder == nullptr || b.builder == nullptr) return false;  // loads that have none yet
    const auto stem = stemOf(a.name);
    return !stem.isEmpty() && stem == stemOf(b.name);
}

/// The last rows are too low for a name of their own: to those before them where these are alike,
/// or where nothing comes after.
void giveToNeighbour(std::vector<JoinedRows>& named, const std::vector<BuilderRow>& rows,
                     qreal line, bool isLast) {
    if (named.size() < 2 || named.back().height >= line) return;
    const auto gone = named.back();
    auto& into = named[named.size() - 2];
    if (!isLast && !areAlike(rows[into.last], rows[gone.first])) return;
    into.last = gone.last;
    into.height += gone.height;
    named.pop_back();
}

/// From the first of the rows to the last; where that is too long, each is cut by itself.
QString nameOf(const BuilderRow& first, const BuilderRow& last, Type type, qreal room,
               const TextRuler& ruler) {
    const auto whole = builder_names_text::joined(first.name, last.name);
    if (ruler.width(whole, type) <= room || areAlike(first, last))
        return ruler.elided(whole, type, room);
    const qreal between = ruler.width(builder_names_text::joined({}, {}), type);
    const qreal half = (room - between) / 2;
    return builder_names_text::joined(ruler.elided(first.name, type, half),
                                      ruler.elided(last.name, type, half));
}

}  // namespace

std::vector<JoinedRows> joinedRows(const std::vector<BuilderRow>& rows, qreal track, qreal line) {
    std::vector<JoinedRows> named;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const qreal height = track * rows[i].trackCount;
        if (!named.empty() && !areAlike(rows[i - 1], rows[i]))
            giveToNeighbour(named, rows, line, false);
        if (named.empty() || named.back().height >= line)
            named.push_back({i, i, height});
        else
            named.back() = {named.back().first, i, named.back().height + height};
    }
    giveToNeighbour(named, rows, line, true);
    return named;
}

void layBracket(const LaneInput& input, qreal top, qreal bottom, Sheet& sheet) {
    constexpr qreal kBeside = 4;
    constexpr qreal kArm = 4;
    const qreal hair = sheet.snap().hair();
    const qreal x = input.titleRight + kBeside;
    const auto line = [&](const QRectF& rect) { sheet.fill(Layer::Names, Role::InkSoft, rect); };
    line({x, top, hair, bottom - top});
    line({x, top, kArm, hair});
    line({x, bottom - hair, kArm, hair});
}

void layBuilderNames(const LaneInput& input, const std::vector<BuilderRow>& rows, qreal top,
                     const BuilderTracks& tracks, Sheet& sheet) {
    const auto& ruler = sheet.ruler();
    // Letters of two lines may come a little closer than lines of prose.
    const auto leastOf = [&](Type type) { return ruler.line(type) - 2; };
    const auto type = tracks.track >= leastOf(Type::Body) ? Type::Body : Type::Small;
    const qreal room = input.titleRight - input.titleLeft;
    for (const auto& group : joinedRows(rows, tracks.track, leastOf(type))) {
        const bool isOne = group.first == group.last;
        const auto& first = rows[group.first];
        const auto name = isOne ? ruler.elided(first.name, type, room)
                                : nameOf(first, rows[group.last], type, room, ruler);
        const qreal bottom = top + group.height;
        // Of a high row the name stands at its bars, which stand on its foot.
        const qreal middle = tracks.isDense() ? (top + bottom) / 2
                                              : bottom - tracks.belowBar() - tracks.track * 0.28;
        sheet.text(Layer::Names, Role::Ink, type, name,
                   {input.titleRight, sheet.baselineAt(type, middle)}, Align::Right);
        if (!isOne) layBracket(input, top + 1, bottom - 1, sheet);
        top = bottom;
    }
}

}  // namespace tenthday
