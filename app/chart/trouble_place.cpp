#include "chart/trouble_place.h"

namespace tenthday {
namespace {

template <class T>
bool isOr(const Id<T>& wanted, const Id<T>& is) {
    return wanted.isNone() || wanted == is;
}

/// Of a batch, but about the nucs its cells go to.
bool isOfNucs(FindingKind kind) {
    return kind == FindingKind::YardFull || kind == FindingKind::NucNotFree ||
           kind == FindingKind::CatchHoldsNucs;
}

}  // namespace

bool TroublePlace::is(const TargetKey& key) const {
    return hit != Hit::None && key.hit == hit && isOr(batch, key.batch) &&
           isOr(builder, key.builder) && isOr(yard, key.yard) && (!day || day == key.day);
}

std::optional<LaneName> TroublePlace::lane() const {
    switch (hit) {
        case Hit::Load:
        case Hit::BuilderRow:
            return LaneName::Builders;
        case Hit::CellsDay:
            return LaneName::CellsDays;
        default:
            return std::nullopt;
    }
}

TroublePlace placeOf(const Finding& finding) {
    if (finding.kind == FindingKind::TooManyCells)
        return {.hit = Hit::CellsDay, .day = finding.day};
    if (isOfNucs(finding.kind))
        if (const auto* batch = std::get_if<Id<Batch>>(&finding.subject))
            return {.hit = Hit::YardDay, .batch = *batch};
    const auto builder = finding.builder.value_or(Id<Builder>{});
    if (const auto* batch = std::get_if<Id<Batch>>(&finding.subject))
        return {.hit = Hit::Load, .batch = *batch, .builder = builder};
    if (const auto* of = std::get_if<Id<Builder>>(&finding.subject))
        return {.hit = Hit::BuilderRow, .builder = *of};
    if (const auto* yard = std::get_if<Id<Yard>>(&finding.subject))
        return {.hit = Hit::YardRow, .yard = *yard};
    return {};
}

TroublePlace placeOf(const Outlook& outlook, const TargetKey& trouble) {
    if (trouble.index >= 0 && trouble.index < static_cast<int>(outlook.findings.size()))
        return placeOf(outlook.findings[static_cast<std::size_t>(trouble.index)]);
    return {.hit = Hit::YardDay, .batch = trouble.batch};
}

}  // namespace tenthday
