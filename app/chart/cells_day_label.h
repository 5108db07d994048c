/// @file cells_day_label.h  The lines of a cells day's sum, made once for as long as they say the
/// same.
#pragma once
#include <array>
#include <map>

#include "chart/lane.h"

namespace tenthday {

/// Its day, ripe, ready, left.
struct CellsDayLabel {
    static constexpr std::size_t kLines = 4;
    struct Line {
        QString text;
        Type type{};
    };
    std::array<Line, kLines> lines;
    qreal width = 0;  ///< px, with air beside them
};

/// Likely ones are whole nucs one may count on in the mean: rounded down.
[[nodiscard]] int wholeLikely(const ReadyNumbers& numbers);
/// Cells for which there is no ready nuc, and none likely either.
[[nodiscard]] bool isUncovered(const CellsDay& day);
/// The same of a day that is not over: what can still be mended.
[[nodiscard]] bool isUncovered(const CellsDay& day, Day today);
/// Cells for which there is no ready nuc, but likely ones once they are caught.
[[nodiscard]] bool isToFree(const CellsDay& day);

/// "today", or its date.
[[nodiscard]] QString cellsDayName(const LaneInput& input, Day day);

/// px beside the lines of a label.
inline constexpr qreal kLabelPad = 5;

/// How the last line says what is left.
enum class LeftWords : std::uint8_t {
    Fewest,      ///< what it must say
    Named,       ///< of which batches, where a day has too many cells
    NamedWhole,  ///< and that they are cells
    Whole,       ///< that they are cells; of no batch
    NucsLeft     ///< that they are nucs, where there are enough
};
inline constexpr std::size_t kLeftWords = 5;

class CellsDayLabels {
public:
    /// Before others are asked for: forgets what is of another layout's days and type.
    void begin(const LaneInput& input);
    /// @param brief  in the least room
    /// @return it stays until begin(); null where the day has nothing to say in such words
    [[nodiscard]] const CellsDayLabel* of(const LaneInput& input, const CellsDay& day, bool brief,
                                          LeftWords words, const TextRuler& ruler);

private:
    /// A sum, with its batches held, and its labels by words and `brief`.
    struct Kept {
        CellsDay sum;
        std::vector<std::shared_ptr<const BatchOutlook>> batches;
        std::array<std::optional<CellsDayLabel>, 2 * kLeftWords> labels;
    };
    [[nodiscard]] static bool isOf(const Kept& kept, const LaneInput& input, const CellsDay& day);
    std::map<Day, Kept> kept_;
};

}  // namespace tenthday
