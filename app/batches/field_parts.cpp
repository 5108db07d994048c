#include "batches/field_parts.h"

#include <QLocale>

#include "screen_text/dates.h"

namespace tenthday {

QVariant asData(const Uuid& uuid) { return QString::fromStdString(toText(uuid)); }

void choose(QComboBox& field, const std::optional<Uuid>& uuid) {
    const auto at = uuid ? field.findData(asData(*uuid)) : 0;
    field.setCurrentIndex(std::max(at, 0));
}

QDateEdit* dateField() {
    auto* field = new QDateEdit;
    field->setCalendarPopup(true);
    field->setDisplayFormat(QStringLiteral("ddd ") + QLocale().dateFormat(QLocale::ShortFormat));
    field->setDateRange(toQDate(kFirstDay), toQDate(kLastDay));
    return field;
}

}  // namespace tenthday
