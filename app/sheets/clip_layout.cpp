#include "sheets/clip_layout.h"

#include <algorithm>

#include "screen_text/sheet_text.h"
#include "sheets/page_stack.h"
#include "sheets/week_pieces.h"

namespace tenthday {
namespace {

class ClipPages {
public:
    ClipPages(const WeekContent& week, const PaperForm& form, const PaperRuler& ruler)
        : week_(week),
          ruler_(ruler),
          pages_(ruler, printable(form)),
          room_{ruler, pages_.width()} {}

    std::vector<Page> lay() {
        for (const auto& day : week_.days)
            for (const auto& block : day.blocks) putBlock(day, block);
        if (!begun_) {
            beginPage({});
            Piece none;
            none.height =
                none.paragraph(ruler_, Print::Text, sheet_text::nothing(), 0, 0, pages_.width());
            pages_.put(none);
        }
        pages_.number(0);
        return pages_.take();
    }

private:
    [[nodiscard]] bool fits(qreal height) const {
        return pages_.fits(height, pages_.area().bottom());
    }

    /// Week, hours and page number in one line, then the day and yard.
    void beginPage(const QString& hours) {
        pages_.begin();
        begun_ = true;
        Piece head;
        const qreal number = ruler_.width(sheet_text::page(888, 888), Print::Small) + 12;
        const auto words = sheet_text::with(sheet_text::weekOf(week_.week, week_.who), hours);
        head.lines(ruler_, Print::SmallStrong,
                   ruler_.atMost(1, words, Print::SmallStrong, pages_.width() - number), 0, 0);
        head.height = ruler_.line(Print::SmallStrong) + 4;
        pages_.put(head);
    }

    void putBlock(const WeekDay& day, const WeekBlock& block) {
        const auto name = sheet_text::head(block.day, block.yard);
        beginPage(day.hours);
        pages_.put(blockHead(room_, name));
        pages_.put(takeAlong(room_, block.takeAlong));
        const auto follow = [&](const Piece& piece) {
            if (!fits(piece.height)) {
                beginPage(day.hours);
                pages_.put(blockHead(room_, sheet_text::goesOn(name)));
            }
            pages_.put(piece);
        };
        for (const auto& row : block.rows)
            for (const auto& piece : rowPieces(room_, row)) follow(piece);
        if (!block.sum.isEmpty()) follow(sumLine(room_, block.sum));
        const qreal left = pages_.area().bottom() - pages_.y() - 4;
        if (left >= kNotes) pages_.put(notesFor(room_, {block.yard}, std::min(left, 3 * kNotes)));
    }

    const WeekContent& week_;
    const PaperRuler& ruler_;
    PageStack pages_;
    WeekRoom room_;
    bool begun_ = false;
};

}  // namespace

std::vector<Page> layOutClips(const WeekContent& week, const PaperForm& form,
                              const PaperRuler& ruler) {
    return ClipPages(week, form, ruler).lay();
}

}  // namespace tenthday
