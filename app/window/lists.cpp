#include "window/lists.h"

#include <QLocale>

#include "book/finished_file.h"
#include "exchange/export.h"
#include "exchange/spreadsheet.h"

namespace tenthday {

Result<void> exportList(Desk& desk, const std::string& kind, const QString& path,
                        bool forSpreadsheet) {
    const auto all = desk.file().read({{}, true});
    if (!all) return all.error();
    const auto listing = exportOf(all.value(), kind);
    const bool comma = QLocale().decimalPoint() == QStringLiteral(",");
    return writeWhole(
        path, QByteArray::fromStdString(
                  forSpreadsheet ? renderForSpreadsheet(listing, kind, spreadsheetForm(comma))
                                 : render(listing, ListingForm::Csv)));
}

}  // namespace tenthday
