#include "screen_text/picture_text.h"

#include "screen_text/words.h"

namespace tenthday::picture_text {

QString entry() { return Words::tr("&Season as a poster or picture ..."); }
QString posterA3() { return Words::tr("Poster, A3 (*.pdf)"); }
QString posterA4() { return Words::tr("Poster, A4 (*.pdf)"); }
QString pixels() { return Words::tr("Picture (*.png)"); }
QString drawing() { return Words::tr("Drawing (*.svg)"); }
QString saved(const QString& path) { return Words::tr("Saved as %1.").arg(path); }
QString cannotSave() { return Words::tr("The picture could not be saved."); }

}  // namespace tenthday::picture_text
