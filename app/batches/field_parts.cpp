#include "batches/field_parts.h"

#include "look/day_field.h"
#include "screen_text/dates.h"

namespace tenthday {

QVariant asData(const Uuid& uuid) { return QString::fromStdString(toText(uuid)); }

void choose(QComboBox& field, const std::optional<Uuid>& uuid) {
    const auto at = uuid ? field.findData(asData(*uuid)) : 0;
    field.setCurrentIndex(std::max(at, 0));
}

QDateEdit* dateField() {
    auto* field = new QDateEdit;
    makeDayField(*field);
    field->setDateRange(toQDate(kFirstDay), toQDate(kLastDay));
    return field;
}

void makeRoomFor(QComboBox& field, const QStringList& words) {
    QComboBox widest;
    widest.setFont(field.font());
    widest.addItems(words);
    field.setMinimumWidth(widest.sizeHint().width());
}

}  // namespace tenthday
