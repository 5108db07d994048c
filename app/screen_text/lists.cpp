#include "screen_text/lists.h"

#include "screen_text/chart_text.h"
#include "screen_text/words.h"

namespace tenthday {
namespace {

QString beside(const QStringList& parts) { return parts.join(QStringLiteral(", ")); }

}  // namespace

QString listed(const QStringList& parts) {
    if (parts.size() < 2) return beside(parts);
    return Words::tr("%1 and %2").arg(beside(parts.mid(0, parts.size() - 1)), parts.last());
}

QString listedWithMore(const QStringList& first, int more) {
    if (more <= 0) return listed(first);
    return Words::tr("%1 and %2 more").arg(beside(first), chart_text::number(more));
}

}  // namespace tenthday
