/// @file print_choice.h  What to print, and on which paper: remembered between runs.
#pragma once
#include <QString>
#include <cstdint>

#include "base/tokens.h"

namespace tenthday {

enum class Paper : std::uint8_t { A4, Letter, A5 };
template <>
struct TokensOf<Paper> {
    static constexpr auto names = std::to_array<std::string_view>({"a4", "letter", "a5"});
};

/// A paper as it lies in the printer, and whether all on it is larger.
struct PaperForm {
    Paper paper = Paper::A4;
    bool landscape = false;
    bool large = false;

    PaperForm() = default;
    PaperForm(Paper which, bool across = false, bool enlarged = false)
        : paper(which), landscape(across), large(enlarged) {}
    friend bool operator==(const PaperForm&, const PaperForm&) = default;
};

/// Everything that is printed by day; the season's picture is not among it.
enum class PaperKind : std::uint8_t {
    Week,        ///< a week's sheet
    Clips,       ///< a leaf per day and yard, A5 across, for a clip
    Placements,  ///< where the cells of a day go
    Catches,     ///< queens to catch
    Recells,     ///< nucs that failed, with the cell each gets
    Stocking,    ///< nucs that want bees or brood
    Loading,     ///< what goes into the car
    NucCards,    ///< to pin under the lid
    BatchCard,   ///< one batch
    Order,       ///< a confirmation without prices
    Year         ///< the season looked back on
};
template <>
struct TokensOf<PaperKind> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"week", "clips", "placements", "catches", "recells", "stocking", "loading", "nuc_cards",
         "batch_card", "order", "year"});
};

/// A sheet of labels, in mm.
struct LabelGrid {
    int columns = 2;  ///< 1..12
    int rows = 4;     ///< 1..30
    double left = 8;  ///< margins and gaps, 0..100
    double top = 8;
    double right = 8;
    double bottom = 8;
    double gapAcross = 4;
    double gapDown = 4;
    int first = 1;         ///< the first free label of the first sheet, 1 top left, line by line
    bool cutLines = true;  ///< thin frames, for plain paper
    friend bool operator==(const LabelGrid&, const LabelGrid&) = default;
};

struct PrintChoice {
    PaperKind kind = PaperKind::Week;
    PaperForm form;
    LabelGrid labels;
    QString who;  ///< initials: only what is given to them; empty: all
    bool nextWeekToo = false;
    friend bool operator==(const PrintChoice&, const PrintChoice&) = default;
};

}  // namespace tenthday
