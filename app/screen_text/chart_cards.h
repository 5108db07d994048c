/// @file chart_cards.h  What the card beside the pointer says: each number with the rule, the input
/// and the source it comes from.
#pragma once
#include <QString>
#include <vector>

#include "outlook/outlook.h"

namespace tenthday {

enum class CardTone : std::uint8_t { Plain, Caution, Danger };

struct CardLine {
    QString name;
    QString value;    ///< empty: the name is a sentence by itself
    QString because;  ///< rule, input, source
    CardTone tone = CardTone::Plain;
};

struct CardText {
    QString title;
    std::vector<CardLine> lines;
};

namespace chart_cards {

/// A batch's cells in a builder (none: not placed yet).
[[nodiscard]] CardText load(const Outlook& outlook, Id<Batch> batch, Id<Builder> builder);
/// A yard's nucs on a day, and a batch's stay there where one is given.
[[nodiscard]] CardText yardDay(const Outlook& outlook, Id<Yard> yard, Day day, Id<Batch> batch);
[[nodiscard]] CardText yardName(const Outlook& outlook, Id<Yard> yard);
[[nodiscard]] CardText nuc(const Outlook& outlook, const SideOutlook& side, Day day);
[[nodiscard]] CardText cellsDay(const Outlook& outlook, const CellsDay& day);
[[nodiscard]] CardText makeUp(const Outlook& outlook, const BuilderOutlook& builder,
                              const MakeUp& makeUp);
[[nodiscard]] CardText look(const Outlook& outlook, const BuilderOutlook& builder,
                            const WildClock& clock, bool second);
[[nodiscard]] CardText rest(const Outlook& outlook, Id<Builder> builder, Id<Batch> batch,
                            Day until);
[[nodiscard]] CardText idle(const BuilderOutlook& builder, const DayWindow& days);
[[nodiscard]] CardText trouble(const Finding& finding);
/// While a batch is dragged: its new days, and what they do to its cells day.
/// @param saved  day on which it starts as saved
[[nodiscard]] CardText dragged(const Outlook& outlook, Id<Batch> batch, Day saved);
/// Why a move is not possible.
[[nodiscard]] CardText refused(const QString& why);

/// A line each, for where there is no card.
[[nodiscard]] QString asPlainText(const CardText& card);

}  // namespace chart_cards
}  // namespace tenthday
