#include "look/wheel_guard.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QEvent>

namespace tenthday {

bool WheelGuard::eventFilter(QObject* watched, QEvent* event) {
    const auto type = event->type();
    if (type != QEvent::Wheel && type != QEvent::Polish) return false;
    auto* field = qobject_cast<QWidget*>(watched);
    if (qobject_cast<QAbstractSpinBox*>(field) == nullptr &&
        qobject_cast<QComboBox*>(field) == nullptr)
        return false;
    if (type == QEvent::Polish) {
        if (field->focusPolicy() == Qt::WheelFocus) field->setFocusPolicy(Qt::StrongFocus);
        return false;
    }
    if (field->hasFocus()) return false;
    event->ignore();  // and on to what is around it
    return true;
}

}  // namespace tenthday
