#include "sheets/placement_sheet.h"

#include <algorithm>

#include "screen_text/cells_text.h"
#include "screen_text/sheet_text.h"
#include "sheets/page_stack.h"
#include "sheets/week_pieces.h"

namespace tenthday {
namespace {

constexpr qreal kTick = millimetres(6);
constexpr qreal kRow = millimetres(9);
constexpr qreal kCell = millimetres(58);  ///< least width of one nuc

class PlacementPages {
public:
    PlacementPages(const PlacementSheet& sheet, Paper paper, const PaperRuler& ruler)
        : sheet_(sheet),
          ruler_(ruler),
          pages_(ruler, printable(paper)),
          room_{ruler, pages_.width()} {}

    std::vector<Page> lay() {
        beginPage();
        for (const auto& stop : sheet_.stops) putStop(stop);
        if (sheet_.stops.empty()) {
            Piece none;
            none.height = none.paragraph(ruler_, Print::Text, cells_text::noList(), 0, 0, width());
            put(none);
        }
        pages_.number(numberTop_);
        return pages_.take();
    }

private:
    [[nodiscard]] qreal width() const { return pages_.width(); }
    [[nodiscard]] bool fits(qreal height) const {
        return pages_.fits(height, pages_.area().bottom());
    }

    void put(const Piece& piece) { pages_.put(piece); }
    void beginPage() {
        pages_.begin();
        Piece head;
        head.height = head.paragraph(ruler_, Print::Huge, sheet_.title, 0, 0, width());
        const qreal number = ruler_.width(sheet_text::page(88, 88), Print::Small) + 8;
        head.height +=
            head.lines(ruler_, Print::SmallStrong,
                       ruler_.atMost(2, sheet_.operation, Print::SmallStrong, width() - number), 0,
                       head.height);
        numberTop_ = head.height - ruler_.line(Print::Small);
        if (pages_.isFirst())
            head.height += head.paragraph(ruler_, Print::Text, sheet_.sum, 0, head.height, width());
        head.line({0, 0, width(), head.height + 2}, kThick);
        head.height += 8;
        put(head);
    }

    void putStop(const PlacementSheet::Stop& stop) {
        const auto name = cells_text::stop(stop.yard, static_cast<int>(stop.nucs.size()));
        const auto head = blockHead(room_, name);
        if (!fits(head.height + kRow)) beginPage();
        put(head);
        const auto across = std::max<std::size_t>(static_cast<std::size_t>(width() / kCell), 1);
        for (std::size_t first = 0; first < stop.nucs.size(); first += across) {
            if (!fits(kRow)) {
                beginPage();
                put(blockHead(room_, sheet_text::goesOn(name)));
            }
            put(row(stop, first, std::min(first + across, stop.nucs.size()), across));
        }
        pages_.skip(6);
    }

    [[nodiscard]] Piece row(const PlacementSheet::Stop& stop, std::size_t first, std::size_t end,
                            std::size_t across) const {
        const qreal each = width() / static_cast<qreal>(across);
        Piece piece;
        piece.height = kRow;
        for (std::size_t i = first; i < end; ++i) {
            const auto& nuc = stop.nucs[i];
            const qreal x = each * static_cast<qreal>(i - first);
            const QRectF box(x, (kRow - kTick) / 2, kTick, kTick);
            piece.frame(box, kThick);
            if (nuc.done) piece.marks.push_back({Mark::Shape::Tick, box, {}, {}, kThick});
            const qreal words = x + kTick + 6;
            const qreal room = each - kTick - 12;
            const auto label = ruler_.atMost(1, nuc.nuc, Print::Strong, room * 0.55);
            const qreal top = (kRow - ruler_.ascent(Print::Strong)) / 2;
            piece.lines(ruler_, Print::Strong, label, words, top);
            const qreal after = ruler_.width(label.value(0), Print::Strong) + 8;
            piece.lines(ruler_, Print::Small,
                        ruler_.atMost(1, nuc.batch, Print::Small, room - after), words + after,
                        top + ruler_.ascent(Print::Strong) - ruler_.ascent(Print::Small));
        }
        return piece;
    }

    const PlacementSheet& sheet_;
    const PaperRuler& ruler_;
    PageStack pages_;
    WeekRoom room_;
    qreal numberTop_ = 0;
};

}  // namespace

std::vector<Page> layOutPlacements(const PlacementSheet& sheet, Paper paper,
                                   const PaperRuler& ruler) {
    return PlacementPages(sheet, paper, ruler).lay();
}

}  // namespace tenthday
