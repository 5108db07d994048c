/// @file hover_card.h  A card beside the pointer: what this is, and how each number came to be.
#pragma once
#include <QWidget>

#include "chart/chart_painter.h"
#include "chart/text_ruler.h"
#include "screen_text/chart_cards.h"

namespace tenthday {

/// Of a point.
enum class CardSide : std::uint8_t { Right, Left };

class HoverCard : public QWidget {
    Q_OBJECT

public:
    explicit HoverCard(QWidget* parent);

    void setLook(Look look, const Typeface& face);
    /// Shows the card beside a point of the parent, kept inside it. An empty card hides.
    /// @param side  where it stands as far as there is room
    void showCard(const CardText& card, QPointF beside, CardSide side = CardSide::Right);
    [[nodiscard]] const CardText& card() const { return card_; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QSize wantedSize() const;
    /// As the chart's own items: what is painted once is put again.
    [[nodiscard]] Layout laidOut() const;

    /// Widths of the columns, px.
    struct Columns {
        qreal names = 0;
        qreal values = 0;
        qreal because = 0;
        qreal sentence = 0;  ///< of a line that runs over all of them
    };
    [[nodiscard]] Columns columns() const;

    CardText card_;
    std::unique_ptr<FontRuler> ruler_;
    std::unique_ptr<ChartPainter> painter_;
};

}  // namespace tenthday
