#include "sheets/list_paper.h"

#include <algorithm>
#include <numeric>

#include "screen_text/sheet_text.h"
#include "sheets/list_row.h"
#include "sheets/page_stack.h"
#include "sheets/week_pieces.h"

namespace tenthday {
namespace {

class ListPages {
public:
    ListPages(const ListPaper& list, const PaperForm& form, const PaperRuler& ruler, qreal row)
        : list_(list),
          ruler_(ruler),
          pages_(ruler, printable(form)),
          room_{ruler, pages_.width()},
          row_(row) {}

    std::vector<Page> lay() {
        beginPage();
        for (const auto& group : list_.groups) putGroup(group);
        if (list_.groups.empty()) put(paragraph(list_.none, Print::Text));
        putNotes();
        pages_.number(numberTop_);
        return pages_.take();
    }

private:
    [[nodiscard]] qreal width() const { return pages_.width(); }
    [[nodiscard]] bool fits(qreal height) const {
        return pages_.fits(height, pages_.area().bottom());
    }
    void put(const Piece& piece) { pages_.put(piece); }
    [[nodiscard]] Piece paragraph(const QString& words, Print type) const {
        Piece piece;
        piece.height = piece.paragraph(ruler_, type, words, 0, 0, width()) + 2;
        return piece;
    }

    void beginPage() {
        pages_.begin();
        Piece head;
        head.height = head.lines(ruler_, Print::Huge,
                                 ruler_.atMost(2, list_.title, Print::Huge, width()), 0, 0);
        const qreal number = ruler_.width(sheet_text::page(88, 88), Print::Small) + 8;
        const auto name = ruler_.atMost(2, list_.operation, Print::SmallStrong, width() - number);
        head.height += std::max(head.lines(ruler_, Print::SmallStrong, name, 0, head.height),
                                ruler_.line(Print::SmallStrong));
        numberTop_ = head.height - ruler_.line(Print::Small);
        if (pages_.isFirst())
            for (const auto& lead : list_.lead)
                head.height += head.paragraph(ruler_, Print::Text, lead, 0, head.height, width());
        head.line({0, 0, width(), head.height + 2}, kThick);
        head.height += 8;
        put(head);
    }

    /// Name, note and heads of the columns.
    [[nodiscard]] Piece headOf(const PaperGroup& group, const RowRoom& row, bool goesOn) const {
        Piece head;
        if (!group.name.isEmpty())
            head = blockHead(room_, goesOn ? sheet_text::goesOn(group.name) : group.name);
        if (!goesOn && !group.note.isEmpty()) {
            Piece note;
            note.height = note.paragraph(ruler_, Print::Small, group.note, 0, 0, width()) + 2;
            head.append(note);
        }
        if (list_.leastWidth <= 0) head.append(columnHeads(row, group.columns));
        return head;
    }

    void putGroup(const PaperGroup& group) {
        const auto across =
            list_.leastWidth > 0
                ? std::max<std::size_t>(static_cast<std::size_t>(width() / list_.leastWidth), 1)
                : 1;
        const RowRoom row{ruler_, width() / static_cast<qreal>(across), row_, list_.ticks,
                          across > 1};
        const auto line = [&](std::size_t first) {
            Piece piece;
            for (auto i = first; i < std::min(first + across, group.rows.size()); ++i) {
                auto one = rowPiece(row, group.columns, group.rows[i]);
                for (auto& mark : one.marks)
                    mark.rect.translate(row.width * static_cast<qreal>(i - first), 0);
                piece.marks.insert(piece.marks.end(), one.marks.begin(), one.marks.end());
                piece.height = std::max(piece.height, one.height);
            }
            return piece;
        };
        const auto head = headOf(group, row, false);
        if (!fits(head.height + line(0).height)) beginPage();
        put(head);
        for (std::size_t first = 0; first < group.rows.size(); first += across) {
            const auto piece = line(first);
            if (!fits(piece.height)) {
                beginPage();
                put(headOf(group, row, true));
            }
            put(piece);
        }
        pages_.skip(6);
    }

    void putNotes() {
        if (list_.notes.isEmpty()) return;
        Piece line;
        line.line({0, 0, width(), 2}, kThin);
        line.height = 6;
        const auto first = paragraph(list_.notes.front(), Print::Small);
        if (!fits(line.height + first.height)) beginPage();
        put(line);
        for (const auto& note : list_.notes) {
            const auto piece = paragraph(note, Print::Small);
            if (!fits(piece.height)) beginPage();
            put(piece);
        }
    }

    const ListPaper& list_;
    const PaperRuler& ruler_;
    PageStack pages_;
    WeekRoom room_;
    qreal row_;  ///< height of a row of one line
    qreal numberTop_ = 0;
};

}  // namespace

std::vector<Page> layOutList(const ListPaper& list, const PaperForm& form,
                             const PaperRuler& ruler) {
    auto pages = ListPages(list, form, ruler, kWideRow).lay();
    if (pages.size() == 1) return pages;
    auto closer = ListPages(list, form, ruler, kCloseRow).lay();
    return closer.size() < pages.size() ? closer : pages;
}

}  // namespace tenthday
