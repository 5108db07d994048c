/// @file label_sheet.h  Cards on sheets of labels of any size.
#pragma once
#include <QRectF>
#include <QString>
#include <QStringList>
#include <vector>

#include "base/result.h"
#include "sheets/page.h"

namespace tenthday {

struct LabelCard {
    QString title;
    QString beside;  ///< at the right of the title
    QStringList lines;
    QStringList
        spare{};  ///< of the lines, those left out where not all go in; the first goes first
};

/// Refuses what no sheet can be: numbers out of range, labels below 30 by 15 mm.
[[nodiscard]] Result<void> checkLabels(const LabelGrid& grid, const PaperForm& form);

/// Where the labels of a sheet are, line by line, in points.
[[nodiscard]] std::vector<QRectF> labelPlaces(const LabelGrid& grid, const PaperForm& form);

/// A card per label from the first free one on. What does not go in is set smaller, then run
/// together, then without its spare lines; only then it ends after a whole word, with an ellipsis.
/// Nothing stands outside its label. At least one page; a grid that is refused gives one empty
/// page.
[[nodiscard]] std::vector<Page> layOutLabels(const std::vector<LabelCard>& cards,
                                             const LabelGrid& grid, const PaperForm& form,
                                             const PaperRuler& ruler);

}  // namespace tenthday
