#include "setup/field.h"

#include "screen_text/dates.h"
#include "screen_text/setup_text.h"

namespace tenthday {

QVariant fromDay(std::optional<Day> day) { return day ? QVariant(toQDate(*day)) : QVariant(); }

std::optional<Day> toDay(const QVariant& value) {
    if (value.typeId() != QMetaType::QDate) return std::nullopt;
    const auto epoch = toQDate(Day{}).toJulianDay();
    return Day{} + Days{static_cast<int>(value.toDate().toJulianDay() - epoch)};
}

QVariant fromText(const std::string& text) { return QString::fromStdString(text); }
std::string toStdText(const QVariant& value) { return value.toString().toStdString(); }

QString complaintAbout(const Field& field, const QVariant& value) {
    const bool isEmpty = !value.isValid() || value.toString().isEmpty();
    switch (field.kind) {
        case FieldKind::Number: {
            if (isEmpty) break;
            const bool good = value.typeId() == QMetaType::Int && value.toInt() >= field.low &&
                              value.toInt() <= field.high;
            return good ? QString() : setup_text::wholeNumber(field.low, field.high);
        }
        case FieldKind::Date:
            if (isEmpty) break;
            return value.typeId() == QMetaType::QDate ? QString()
                                                      : setup_text::noDay(value.toString());
        case FieldKind::Checks:
        case FieldKind::Steps:
            return {};
        default:
            break;
    }
    return isEmpty && field.needed ? setup_text::needed(field.name) : QString();
}

}  // namespace tenthday
