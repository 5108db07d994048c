/// @file airy_cells.h  The cells of a list: air around their words, and a width they may ask for.
#pragma once
#include <QStyledItemDelegate>
#include <cstdint>
#include <utility>
#include <vector>

namespace tenthday {

/// How a list makes do with its room.
enum class ListFit : std::uint8_t {
    Airy,    ///< there is enough
    Close,   ///< with less air
    Broken,  ///< and heads that are wider than their column in two lines
};

/// px of air. @param most  where there is enough
[[nodiscard]] constexpr int airFor(ListFit fit, int most) {
    return fit == ListFit::Airy ? most : most * 5 / 8;
}

/// Cells a little larger than their text: columns and broken lines would run into each other.
/// Words that are cut short for want of room are told in a tip.
class AiryCells : public QStyledItemDelegate {
    Q_OBJECT

public:
    /// @param air  px on each side of the words
    /// @param more  px above and below them, together
    /// @param most  letters of one column; longer words are cut short, unless it is given more room
    AiryCells(int air, int more, int most, QObject* parent);

    /// The widest a cell of each column asks for, px with its air; in columns beyond the list that
    /// is `most` letters.
    void setRooms(std::vector<int> rooms) { rooms_ = std::move(rooms); }
    [[nodiscard]] const std::vector<int>& rooms() const { return rooms_; }
    void setFit(ListFit fit) { fit_ = fit; }
    [[nodiscard]] ListFit fit() const { return fit_; }
    /// px of a cell with so many letters, with its air; of the most it asks for by itself.
    [[nodiscard]] int widthOfLetters(int letters, const QFontMetrics& font) const;
    [[nodiscard]] int widthOfMost(const QFontMetrics& font) const {
        return widthOfLetters(most_, font);
    }

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;
    bool helpEvent(QHelpEvent* event, QAbstractItemView* view, const QStyleOptionViewItem& option,
                   const QModelIndex& index) override;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;

private:
    [[nodiscard]] int air() const { return airFor(fit_, air_); }

    int air_;
    int more_;
    int most_;
    std::vector<int> rooms_;
    ListFit fit_ = ListFit::Airy;
};

}  // namespace tenthday
