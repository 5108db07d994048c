#include "exchange/kinds.h"

#include <algorithm>
#include <array>

#include "exchange/kind_columns.h"

namespace tenthday {
namespace {

constexpr std::array<std::string_view, 39> kKinds{
    "seasons",      "yards",      kBoxes,         "stockings", "builders",   "makeups",
    "buildernotes", kMethods,     "queens",       "batches",   "bars",       "loads",
    "shares",       "placements", "outcomes",     "orders",    "weather",    "climate",
    "drones",       "yardnotes",  "matings",      "daysoff",   "owntasks",   "ticks",
    "nuccare",      "mitework",   "queennotes",   "caught",    "queenstays", "orderterms",
    "earmarks",     "deliveries", "promisemoves", "bought",    "leftout",    "worktimes",
    "drives",       "given",      kFacts};

template <class Row, class Member>
void append(std::vector<KindColumn>& columns, const FileColumn<Row, Member>& c) {
    columns.push_back({c.name, c.needed, c.alias});
}
template <class Row, class Member>
void append(std::vector<KindColumn>& columns, const SideColumns<Row, Member>& c) {
    columns.push_back({"box", c.needed});
    columns.push_back({"side", false});
}

}  // namespace

std::span<const std::string_view> exportKinds() { return kKinds; }

bool isKind(std::string_view text) {
    return std::find(kKinds.begin(), kKinds.end(), text) != kKinds.end();
}

std::vector<KindColumn> columnsOf(std::string_view kind) {
    if (kind == kBoxes)
        return {{"id", false},     {"label", true},        {"yard", false}, {"yard_from", false},
                {"layout", false}, {"layout_from", false}, {"note", false}};
    if (kind == kMethods)
        return {{"id", false},       {"label", true},   {"step", true},      {"where", true},
                {"from_hour", true}, {"to_hour", true}, {"rest_days", false}};
    if (kind == kFacts)
        return {{"fact", true},   {"value", false},  {"unit", false},
                {"range", false}, {"source", false}, {"override", false}};
    std::vector<KindColumn> columns;
    forEachRowType(FileKinds{}, [&]<class Row>(std::type_identity<Row>) {
        if (KindOf<Row>::name != kind) return;
        if (hasIdColumn<Row>()) columns.push_back({"id", false});
        std::apply([&](const auto&... c) { (append(columns, c), ...); }, KindOf<Row>::columns);
    });
    return columns;
}

}  // namespace tenthday
