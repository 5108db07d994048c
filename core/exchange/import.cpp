#include "exchange/import.h"

#include <cassert>

#include "exchange/kinds.h"
#include "exchange/row_import.h"

namespace tenthday {
namespace {

void takeLines(ImportWork& work, std::string_view kind, const ImportFile& file) {
    if (kind == kBoxes) return importBoxes(work, file);
    if (kind == kMethods) return importMethods(work, file);
    if (kind == kFacts) return importFacts(work, file);
    forEachRowType(FileKinds{}, [&]<class Row>(std::type_identity<Row>) {
        if (KindOf<Row>::name == kind) RowImport<Row>(work, file).run();
    });
}

}  // namespace

Result<ChangeSet> importOf(const Snapshot& snapshot, std::string_view kind, std::string_view text,
                           const IdSource& newId) {
    assert(isKind(kind));
    // Open records (NOAA's, for one) name the kind of day in words beside its figures.
    constexpr std::string_view kInWords = KindOf<WeatherDay>::name;
    const auto file =
        ImportFile::read(text, columnsOf(kind), kind == kInWords ? kInWords : std::string_view{});
    if (!file) return file.error();
    ImportWork work(snapshot, kind, newId);
    takeLines(work, kind, file.value());
    return work.result();
}

}  // namespace tenthday
