/// @file chart_states.h  The season chart in every state, as pictures: looks, zooms, languages, and
/// what a hand does. Seen side by side they show what a change of the layout has done.
#pragma once
#include <QImage>
#include <QString>
#include <functional>
#include <vector>

namespace tenthday::test {

struct ChartState {
    QString name;
    std::function<QImage()> picture;
};
[[nodiscard]] std::vector<ChartState> chartStates();

}  // namespace tenthday::test
