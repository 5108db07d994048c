/// @file placement_sheet.h  The placement list of a cells day on paper: yard by yard in walking
/// order, a box to tick for each nuc.
#pragma once
#include <QString>
#include <vector>

#include "calendar/day.h"
#include "sheets/page.h"

namespace tenthday {

struct PlacementSheet {
    struct Nuc {
        QString nuc;
        QString batch;  ///< whose cell it gets
        bool done = false;
    };
    struct Stop {
        QString yard;
        std::vector<Nuc> nucs;
    };
    QString title;
    QString operation;
    QString sum;  ///< where all cells of the day go
    std::vector<Stop> stops;
};

/// Nucs stand side by side, read line by line. A yard's name never stands alone at a page's foot
/// and is said again where its nucs go on. At least one page.
[[nodiscard]] std::vector<Page> layOutPlacements(const PlacementSheet& sheet, Paper paper,
                                                 const PaperRuler& ruler);

}  // namespace tenthday
