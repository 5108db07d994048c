#include "screen_text/builder_names_text.h"

#include "screen_text/words.h"

namespace tenthday::builder_names_text {

QString stemOf(const QString& label) {
    auto end = label.size();
    while (end > 0 && label[end - 1].isDigit()) --end;
    return end == label.size() ? QString() : label.left(end);
}

QString joined(const QString& first, const QString& last) {
    const auto stem = stemOf(first);
    const bool alike = !stem.isEmpty() && stem == stemOf(last);
    return Words::tr("%1 to %2").arg(first, alike ? last.mid(stem.size()) : last);
}

}  // namespace tenthday::builder_names_text
