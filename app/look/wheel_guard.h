/// @file wheel_guard.h  Keeps the mouse wheel from changing fields it only passes over.
#pragma once
#include <QObject>

namespace tenthday {

/// For the whole application: a number, day or choice follows the wheel only while it has the
/// keyboard; else the page under it scrolls. The wheel alone does not give it the keyboard.
class WheelGuard : public QObject {
public:
    using QObject::QObject;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace tenthday
