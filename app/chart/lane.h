/// @file lane.h  What a lane is asked. A chart is a list of lanes; each stands in a file of its
/// own.
#pragma once
#include <QHash>
#include <map>
#include <memory>

#include "chart/chart_options.h"
#include "chart/sheet.h"
#include "outlook/outlook.h"

namespace tenthday {

/// Heights a lane can live with, logical px.
struct LaneHeight {
    qreal least = 0;
    qreal wished = 0;
    qreal most = 0;
    qreal pull = 1;  ///< its share of room above what all wish
};

/// Where the selected batch leaves a builder and enters a yard: what its ribbon joins.
struct RibbonEnds {
    struct Out {
        QPointF right;  ///< lower right corner of the bar
        qreal cells;
        qreal thickness;  ///< of the bar there, px
    };
    struct In {
        qreal left;  ///< of the batch's first column
        qreal top;
        qreal bottom;
        qreal cells;
    };
    std::vector<Out> outs;
    std::vector<In> ins;
};

/// What all lanes read, and the ends they leave for the ribbon.
struct LaneInput {
    const Outlook& outlook;
    const DayAxis& axis;
    const ChartOptions& options;
    DayWindow visible;
    qreal titleRight = 0;  ///< right end of row names
    qreal titleLeft = 0;
    RibbonEnds& ribbon;

    [[nodiscard]] bool isSelected(Id<Batch> batch) const {
        return options.selected && *options.selected == batch;
    }
};

class Lane {
public:
    virtual ~Lane() = default;
    [[nodiscard]] virtual LaneHeight height(const LaneInput& input,
                                            const TextRuler& ruler) const = 0;
    /// @param area x as the axis, y as given to this lane
    virtual void lay(const LaneInput& input, const QRectF& area, Sheet& sheet) const = 0;
};

}  // namespace tenthday
