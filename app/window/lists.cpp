#include "window/lists.h"

#include <QLocale>
#include <algorithm>

#include "book/finished_file.h"
#include "book/new_id.h"
#include "exchange/export.h"
#include "exchange/import.h"
#include "exchange/spreadsheet.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

/// Batches outside the season shown would be mixed into it until it is read anew.
bool bringsOtherSeasons(const Snapshot& shown, const ChangeSet& changes) {
    return std::any_of(changes.rows.begin(), changes.rows.end(), [&](const RowChange& row) {
        const auto batch = row.as<Batch>();
        return batch && batch->after && !shown.startDays().contains(batch->after->day);
    });
}

/// @param all  the book with the batches of all seasons, from which the changes were made
Result<void> take(Desk& desk, const Snapshot& all, const ChangeSet& changes) {
    const bool others = bringsOtherSeasons(desk.snapshot(), changes);
    if (!others || desk.isReadOnly()) {
        const auto done = desk.apply(changes);
        // Refused, maybe only because it speaks of rows that are not shown.
        if (done || desk.isReadOnly() || !applied(all, changes)) return done;
    }
    if (auto possible = applied(all, changes); !possible) return possible.error();
    if (auto written = desk.file().write(changes); !written) return written;
    return desk.showSeason(desk.snapshot().seasonId());
}

}  // namespace

Result<std::shared_ptr<const Snapshot>> allSeasons(Desk& desk) {
    auto all = desk.file().read({{}, true});
    if (!all) return all.error();
    return std::make_shared<const Snapshot>(std::move(all).value());
}

Result<void> takeList(Desk& desk, const Snapshot& all, const ChangeSet& changes) {
    return take(desk, all, changes);
}

Result<int> importList(Desk& desk, const std::string& kind, const QString& path) {
    const auto text = readWhole(path);
    if (!text) return text.error();
    const auto all = desk.file().read({{}, true});
    if (!all) return all.error();
    auto changes =
        importOf(all.value(), kind, plainCsv(text.value(), kind), [] { return idMaker().next(); });
    if (!changes) return Error{path.toStdString() + " " + changes.error().text};
    changes.value().verb = Verb::Import;
    changes.value().subject = window_text::kindName(QString::fromStdString(kind)).toStdString();
    if (auto done = take(desk, all.value(), changes.value()); !done) return done.error();
    return static_cast<int>(changes.value().rows.size());
}

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
