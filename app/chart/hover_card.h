/// @file hover_card.h  A card beside the pointer: what this is, and how each number came to be.
#pragma once
#include <QWidget>

#include "look/palette.h"
#include "look/type.h"
#include "screen_text/chart_cards.h"

namespace tenthday {

class HoverCard : public QWidget {
    Q_OBJECT

public:
    explicit HoverCard(QWidget* parent);

    void setLook(Look look, const Typeface& face);
    /// Shows the card beside a point of the parent, kept inside it. An empty card hides.
    void showCard(const CardText& card, QPointF beside);
    [[nodiscard]] const CardText& card() const { return card_; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QSize wantedSize();

    CardText card_;
    Look look_ = Look::Light;
    Typeface face_;
    qreal names_ = 0;   ///< width of the first column
    qreal values_ = 0;  ///< of the second
};

}  // namespace tenthday
