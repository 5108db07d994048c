/// @file panels.h  Every panel of the window as a picture: one line a panel.
#pragma once
#include <QImage>
#include <QString>
#include <array>
#include <functional>
#include <vector>

#include "options/settings.h"

class QWidget;

namespace tenthday {
class MainWindow;
}

namespace tenthday::test {

/// Opens a panel in a window that shows the example, or the welcome where `example` is false.
/// @return what is to be taken: the window itself or a dialog of it
struct Panel {
    QString name;
    bool example = true;
    std::function<QWidget*(MainWindow&)> open;
};
[[nodiscard]] const std::vector<Panel>& panels();

/// The looks a panel is taken in.
inline constexpr std::array kLooks{LookChoice::Light, LookChoice::Dark};

/// Pictures of one panel in each of these looks, at 1366x768 or the dialog's own size, made in a
/// folder of scratch files. It is opened once and then the look is changed, as a user would. None
/// where it can't be opened.
[[nodiscard]] std::vector<QImage> picturesOf(const Panel& panel, const QString& scratch);

/// "season-chart-dark.png".
[[nodiscard]] QString fileName(const Panel& panel, LookChoice look);

}  // namespace tenthday::test
