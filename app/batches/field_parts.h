/// @file field_parts.h  What the fields of the batch editor have alike: choices of rows, days.
#pragma once
#include <QComboBox>
#include <QDateEdit>
#include <algorithm>

#include "base/natural_order.h"
#include "records/snapshot.h"

namespace tenthday {

/// Rows as people order their labels.
template <class Row>
[[nodiscard]] std::vector<Ptr<Row>> byLabel(const Table<Row>& table) {
    std::vector<Ptr<Row>> rows(table.begin(), table.end());
    std::sort(rows.begin(), rows.end(),
              [](const auto& a, const auto& b) { return naturalLess(a->label, b->label); });
    return rows;
}

/// A row's id as the data of an entry.
[[nodiscard]] QVariant asData(const Uuid& uuid);
/// Chooses the entry of that row, else the first: the one without a row.
void choose(QComboBox& field, const std::optional<Uuid>& uuid);
/// The id of the chosen entry; nothing for the entry without one.
template <class Row>
[[nodiscard]] std::optional<Id<Row>> chosen(const QComboBox& field) {
    const auto uuid = uuidFromText(field.currentData().toString().toStdString());
    return uuid ? std::optional(Id<Row>{*uuid}) : std::nullopt;
}

/// A day with its weekday, and a calendar to choose it from.
[[nodiscard]] QDateEdit* dateField();

/// Makes a choice so wide that each of these words is read whole in it.
void makeRoomFor(QComboBox& field, const QStringList& words);

}  // namespace tenthday
