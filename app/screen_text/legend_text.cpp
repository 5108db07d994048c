#include "screen_text/legend_text.h"

#include "screen_text/words.h"

namespace tenthday::legend_text {

QString leaves() { return Words::tr("an order leaves"); }
QString planned() { return Words::tr("as planned before, or proposed"); }
QString trouble() { return Words::tr("late, or other trouble"); }

}  // namespace tenthday::legend_text
