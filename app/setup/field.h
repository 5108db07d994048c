/// @file field.h  What a form asks for, as data. The same few kinds of fields serve every thing.
#pragma once
#include <QDate>
#include <QString>
#include <QVariant>
#include <vector>

#include "calendar/day.h"

namespace tenthday {

enum class FieldKind : std::uint8_t {
    Text,    ///< QString, trimmed; `choices` complete it
    Note,    ///< QString of several lines
    Choice,  ///< the chosen entry's value
    Number,  ///< int; invalid where empty; QString where it is no number
    Date,    ///< QDate; invalid where empty; QString where it is no day
    Checks,  ///< QStringList of the ticked entries' values
    Steps,   ///< QVariantList of QVariantList{kind, from hour, to hour, rest days}
};

struct FieldChoice {
    QString text;
    QVariant value;
};

struct Field {
    FieldKind kind = FieldKind::Text;
    QString name;
    bool needed = false;
    std::vector<FieldChoice> choices = {};
    int low = 0;  ///< of a number
    int high = 9999;
    QString unit = {};   ///< after a number
    bool inRow = false;  ///< checks stand side by side
};

/// A value per field, in the order of the fields.
using FieldValues = std::vector<QVariant>;

/// What stands under a field, and the sources behind it.
struct Hint {
    QString text;
    QString tip = {};
    bool warns = false;
};

/// Values to and from the columns of rows.
[[nodiscard]] QVariant fromDay(std::optional<Day> day);
[[nodiscard]] std::optional<Day> toDay(const QVariant& value);
[[nodiscard]] QVariant fromText(const std::string& text);
[[nodiscard]] std::string toStdText(const QVariant& value);

/// Why the value cannot be taken, in words; empty when it can.
[[nodiscard]] QString complaintAbout(const Field& field, const QVariant& value);

}  // namespace tenthday
