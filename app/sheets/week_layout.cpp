#include "sheets/week_layout.h"

#include <algorithm>

#include "screen_text/sheet_text.h"
#include "sheets/page_stack.h"
#include "sheets/week_pieces.h"

namespace tenthday {
namespace {

/// Puts the parts on pages, one below the other.
class WeekPages {
public:
    WeekPages(const WeekContent& week, const PaperForm& form, const PaperRuler& ruler)
        : week_(week),
          ruler_(ruler),
          pages_(ruler, printable(form)),
          room_{ruler, pages_.width()} {}

    std::vector<Page> lay() {
        beginPage();
        put(dayStrip(room_, week_.days));
        put(hoursExplained());
        for (const auto& day : week_.days) {
            if (day.blocks.empty()) putWhole(emptyDay(room_, day.day));
            for (const auto& block : day.blocks) putBlock(block);
        }
        putNotes();
        pages_.number(pageNumberTop_);
        return pages_.take();
    }

private:
    [[nodiscard]] qreal width() const { return pages_.width(); }
    [[nodiscard]] qreal foot() const {
        return pages_.area().bottom() - (pages_.isFirst() ? cautions_ : 0);
    }
    [[nodiscard]] bool fits(qreal height) const { return pages_.fits(height, foot()); }

    void put(const Piece& piece) { pages_.put(piece); }
    void putWhole(const Piece& piece) {
        if (!fits(piece.height)) beginPage();
        put(piece);
    }

    void beginPage() {
        pages_.begin();
        put(pageHead());
        if (pages_.isFirst()) layCautions();
    }

    [[nodiscard]] Piece pageHead() {
        Piece head;
        const auto week = sheet_text::weekOf(week_.week, week_.who);
        const auto days = sheet_text::daysOfWeek(week_.week);
        const qreal besides = ruler_.width(week, Print::Huge) + 10;
        const qreal taken = besides + ruler_.width(days, Print::Large) + 12;
        head.text(ruler_, Print::Huge, week, 0, 0);
        head.text(ruler_, Print::Large, days, besides,
                  ruler_.ascent(Print::Huge) - ruler_.ascent(Print::Large));
        head.height = ruler_.line(Print::Huge);
        const auto& name = week_.operation;
        if (taken + ruler_.width(name, Print::SmallStrong) <= width()) {
            head.textBefore(ruler_, Print::SmallStrong, name, width(), 0);
        } else {
            // A long name, or one on a small page, has lines of its own.
            const qreal number = ruler_.width(sheet_text::page(88, 88), Print::Small) + 8;
            head.height += head.lines(ruler_, Print::SmallStrong,
                                      ruler_.atMost(2, name, Print::SmallStrong, width() - number),
                                      0, head.height);
        }
        pageNumberTop_ = head.height - ruler_.line(Print::Small);
        head.line({0, 0, width(), head.height + 2}, kThick);
        head.height += 8;
        return head;
    }

    [[nodiscard]] Piece hoursExplained() const {
        Piece piece;
        if (week_.hours.isEmpty()) return piece;
        piece.height = piece.paragraph(ruler_, Print::Small, week_.hours, 0, 0, width()) + 4;
        return piece;
    }

    /// At the foot of the first page.
    void layCautions() {
        Piece piece;
        qreal y = 8;
        for (const auto& caution : week_.cautions)
            y += piece.paragraph(ruler_, Print::Small, caution, 0, y, width());
        piece.line({0, 2, width(), 0}, kThin);
        pages_.stamp(piece, pages_.area().bottom() - y);
        cautions_ = y + 6;
    }

    void putBlock(const WeekBlock& block) {
        const auto name = sheet_text::head(block.day, block.yard);
        const auto head = blockHead(room_, name);
        const auto things = takeAlong(room_, block.takeAlong);
        const auto first = rowPieces(room_, block.rows.front());
        if (!fits(head.height + things.height + first.front().height)) beginPage();
        put(head);
        put(things);
        const auto follow = [&](const Piece& piece) {
            if (!fits(piece.height)) {
                beginPage();
                put(blockHead(room_, sheet_text::goesOn(name)));
            }
            put(piece);
        };
        for (const auto& row : block.rows)
            for (const auto& piece : rowPieces(room_, row)) follow(piece);
        if (!block.sum.isEmpty()) follow(sumLine(room_, block.sum));
        pages_.skip(5);
    }

    /// Two yards side by side; what is left of the last page is room to write.
    void putNotes() {
        const auto yards = week_.yards.size();
        const auto rows = (yards + 1) / 2;
        if (rows == 0) return;
        if (!fits(static_cast<qreal>(rows) * (kNotes + 2))) beginPage();
        const qreal each = (foot() - pages_.y()) / static_cast<qreal>(rows) - 2;
        for (qsizetype i = 0; i < yards; i += 2)
            putWhole(notesFor(room_, week_.yards.mid(i, 2), std::clamp(each, kNotes, 4 * kNotes)));
    }

    const WeekContent& week_;
    const PaperRuler& ruler_;
    PageStack pages_;
    WeekRoom room_;
    qreal cautions_ = 0;
    qreal pageNumberTop_ = 0;
};

}  // namespace

std::vector<Page> layOutWeek(const WeekContent& week, const PaperForm& form,
                             const PaperRuler& ruler) {
    return WeekPages(week, form, ruler).lay();
}

}  // namespace tenthday
