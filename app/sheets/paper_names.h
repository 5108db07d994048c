/// @file paper_names.h  Names of things as papers write them.
#pragma once
#include <QString>
#include <QStringList>

#include "outlook/outlook.h"
#include "records/relations.h"

namespace tenthday {

[[nodiscard]] inline QString plainText(const std::string& text) {
    return QString::fromStdString(text);
}
/// The label of a row, or nothing.
template <class Row>
[[nodiscard]] QString labelOf(const Outlook& outlook, const std::optional<Id<Row>>& id) {
    const auto row = id ? outlook.snapshot.find(*id) : nullptr;
    return row ? plainText(row->label) : QString();
}
[[nodiscard]] inline QString nucOf(const SideOutlook& side) {
    return plainText(nucName(*side.box, *side.side));
}
/// The breeder queens of a batch, each once, by bar.
[[nodiscard]] inline QString breedersOf(const Outlook& outlook, Id<Batch> id) {
    const auto* batch = outlook.find(id);
    QStringList names;
    if (batch != nullptr)
        for (const auto& bar : batch->bars) names += labelOf(outlook, bar->breeder);
    names.removeAll(QString());
    names.removeDuplicates();
    return names.join(QStringLiteral(", "));
}

}  // namespace tenthday
