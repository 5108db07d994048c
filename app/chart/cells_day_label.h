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

/// Cells for which there is no ready nuc, and none likely either.
[[nodiscard]] bool isUncovered(const CellsDay& day);

/// "today", or its date.
[[nodiscard]] QString cellsDayName(const LaneInput& input, Day day);

/// px beside the lines of a label.
inline constexpr qreal kLabelPad = 5;

class CellsDayLabels {
public:
    /// Before others are asked for: forgets what is of another layout's days and type.
    void begin(const LaneInput& input);
    /// @param brief  in the least room  @param named  says which batches have too many cells
    /// @return it stays until begin()
    [[nodiscard]] const CellsDayLabel& of(const LaneInput& input, const CellsDay& day, bool brief,
                                          bool named, const TextRuler& ruler);

private:
    /// A sum, with its batches held, and its labels by `brief` and `named`.
    struct Kept {
        CellsDay sum;
        std::vector<std::shared_ptr<const BatchOutlook>> batches;
        std::array<std::optional<CellsDayLabel>, 4> labels;
    };
    [[nodiscard]] static bool isOf(const Kept& kept, const LaneInput& input, const CellsDay& day);
    std::map<Day, Kept> kept_;
};

}  // namespace tenthday
