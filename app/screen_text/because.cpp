#include "screen_text/because.h"

#include <QLocale>

#include "screen_text/words.h"

namespace tenthday::because {
namespace {

/// The published source, or that the value is the user's own.
QString sourceOf(const Facts& facts, Fact fact) {
    const auto& source = facts.entry(fact).source;
    return facts.isOverridden(fact)
               ? Words::tr("your own")
               : QString::fromUtf8(source.data(), static_cast<qsizetype>(source.size()));
}

QString numberOf(double value) { return QLocale().toString(value, 'g', 4); }

}  // namespace

QString share(const Facts& facts, Fact fact) {
    return Words::tr("%1 % (%2)").arg(numberOf(facts[fact] * 100), sourceOf(facts, fact));
}

QString chance(const Facts& facts, Fact fact, const QString& ofWhat) {
    return Words::tr("%1 % chance %2 (%3)")
        .arg(numberOf(facts[fact] * 100), ofWhat, sourceOf(facts, fact));
}

QString hours(const Facts& facts, Fact fact, const QString& fromWhat) {
    return Words::tr("%1 h %2 (%3)").arg(numberOf(facts[fact]), fromWhat, sourceOf(facts, fact));
}

QString days(const Facts& facts, Fact fact, const QString& ofWhat) {
    return Words::tr("%1 d %2 (%3)").arg(numberOf(facts[fact]), ofWhat, sourceOf(facts, fact));
}

}  // namespace tenthday::because
