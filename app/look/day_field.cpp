#include "look/day_field.h"

#include <QDateEdit>
#include <QLocale>

namespace tenthday {

void makeDayField(QDateEdit& field) {
    field.setCalendarPopup(true);
    field.setDisplayFormat(QStringLiteral("ddd ") + QLocale().dateFormat(QLocale::ShortFormat));
}

}  // namespace tenthday
