/// @file page_stack.h  Pages of a sheet while they are filled, from the top of each downwards.
#pragma once
#include <vector>

#include "sheets/piece.h"

namespace tenthday {

class PageStack {
public:
    /// @param area  what is printed on, of each page
    PageStack(const PaperRuler& ruler, const QRectF& area) : ruler_(ruler), area_(area) {}

    [[nodiscard]] qreal width() const { return area_.width(); }
    [[nodiscard]] bool isFirst() const { return pages_.size() == 1; }
    /// The next piece's top.
    [[nodiscard]] qreal y() const { return y_; }
    [[nodiscard]] bool fits(qreal height, qreal foot) const { return y_ + height <= foot + 0.01; }
    [[nodiscard]] const QRectF& area() const { return area_; }

    /// A new page, still empty.
    void begin();
    void put(const Piece& piece);
    void skip(qreal height) { y_ += height; }
    /// On the last page, wherever its pieces have come to.
    void stamp(const Piece& piece, qreal top) { stampOn(pages_.back(), piece, top); }
    /// "page 1 of 3" at the right of each page. @param top  below the area's top
    void number(qreal top);
    [[nodiscard]] std::vector<Page> take() { return std::move(pages_); }

private:
    void stampOn(Page& page, const Piece& piece, qreal top) const;

    const PaperRuler& ruler_;
    QRectF area_;
    std::vector<Page> pages_;
    qreal y_ = 0;
};

}  // namespace tenthday
