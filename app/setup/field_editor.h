/// @file field_editor.h  The widget of a field: one for each kind, all used alike.
#pragma once
#include <QWidget>
#include <functional>
#include <memory>

#include "setup/field.h"

namespace tenthday {

/// A widget that shows and changes one value. The form owns the widget.
struct FieldEditor {
    QWidget* widget = nullptr;
    std::function<QVariant()> value;
    std::function<void(const QVariant&)> setValue;
};

/// @param edited  called at each change by the user
/// @param today  the day on which calendars open
[[nodiscard]] FieldEditor makeEditor(const Field& field, Day today, std::function<void()> edited);

}  // namespace tenthday
