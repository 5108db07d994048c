#include "screen_text/queen_source_text.h"

#include "screen_text/words.h"

namespace tenthday::order_text {

QString boughtIn() { return Words::tr("bought in"); }
QString earlierSeason() { return Words::tr("of an earlier season"); }

}  // namespace tenthday::order_text
