/// @file chart_access.h  The season chart for a screen reader: each batch, load, yard on the chosen
/// day and order is a child with name, value and actions, and so are the signs of lanes out of
/// sight. What is scrolled behind head, foot or names is off the screen.
#pragma once

namespace tenthday {

/// Makes Qt ask for it; calling it more than once does no harm.
void installChartAccess();

}  // namespace tenthday
