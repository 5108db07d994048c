#include "sheets/page_stack.h"

#include "screen_text/sheet_text.h"

namespace tenthday {

void PageStack::begin() {
    pages_.emplace_back();
    y_ = area_.top();
}

void PageStack::put(const Piece& piece) {
    stamp(piece, y_);
    y_ += piece.height;
}

void PageStack::number(qreal top) {
    for (std::size_t i = 0; i < pages_.size(); ++i) {
        Piece piece;
        piece.textBefore(ruler_, Print::Small,
                         sheet_text::page(static_cast<int>(i) + 1, static_cast<int>(pages_.size())),
                         width(), top);
        stampOn(pages_[i], piece, area_.top());
    }
}

void PageStack::stampOn(Page& page, const Piece& piece, qreal top) const {
    for (auto mark : piece.marks) {
        mark.rect.translate(area_.left(), top);
        page.marks.push_back(std::move(mark));
    }
}

}  // namespace tenthday
