// A breeder queen's season: when she is confined, how long she lays freely, who is in reserve.
#include <algorithm>

#include "screen_text/because.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/story_text.h"
#include "screen_text/words.h"

namespace tenthday::story_text {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

QString span(const BreederUse& use) {
    return Words::tr("%1 to %2")
        .arg(dayAndClock(use.confined.from), dayAndClock(use.confined.until));
}

QString what(const BreederUse& use) {
    QStringList labels;
    for (const auto& batch : use.batches) labels += plain(batch->label);
    return labels.size() == 1
               ? Words::tr("confined for batch %1").arg(labels[0])
               : Words::tr("confined for batches %1").arg(labels.join(Words::tr(", ")));
}

QString freeDays(const BreederUse& use) {
    if (!use.free) return Words::tr("her first this season");
    const auto days =
        Words::tr("free for %Ln day(s) before", nullptr, static_cast<int>(use.free->count()));
    return use.tooSoon ? Words::tr("too soon: %1").arg(days) : days;
}

QString reserve(const Queen& queen, const BreederUse& use) {
    if (!queen.line) return Words::tr("no reserve: her line is not given");
    QStringList labels;
    for (const auto& other : use.reserve) labels += plain(other->label);
    return labels.isEmpty() ? Words::tr("no reserve of her line")
                            : Words::tr("in reserve: %1").arg(labels.join(Words::tr(", ")));
}

/// What was seen of her comb before the graft of each batch.
QString looksFor(const Snapshot& snapshot, const Queen& queen, const BreederUse& use) {
    QStringList parts;
    for (const auto& batch : use.batches)
        for (const auto& look : larvaeLooks(snapshot, batch->id)) {
            if (look.queen->id != queen.id) continue;
            parts += look.seen == QueenNoteKind::Larvae ? larvaeSeen(QueenNoteKind::Larvae)
                                                        : larvae(snapshot, batch->id, look);
        }
    parts.removeDuplicates();
    return parts.join(Words::tr(", "));
}

QString whyDays(const Facts& facts) {
    return because::hours(facts, Fact::ConfineBeforeH, Words::tr("from confining to the graft")) +
           u'\n' + because::hours(facts, Fact::ConfineH, Words::tr("from confining to freeing")) +
           u'\n' +
           Words::tr(
               "Fewer than %Ln free day(s) are called too soon (derived from S25: three queens "
               "share a batch every fourth day).",
               nullptr, static_cast<int>(facts[Fact::ConfineRestD]));
}

const BreederUse* firstTooSoon(const BreederSeason& season, Day today) {
    for (const auto& use : season.uses)
        if (use.tooSoon && dayOf(use.confined.until) >= today) return &use;
    return nullptr;
}

}  // namespace

QString larvae(const Snapshot& snapshot, Id<Batch> batch, const LarvaeLook& look) {
    const auto queen = plain(look.queen->label);
    const bool isOver = look.due + Days{1} < snapshot.today();  // grafted all the same
    if (!look.seen && isOver) return {};
    if (!look.seen) return Words::tr("see larvae of %1 on %2").arg(queen, weekdayAndDay(look.due));
    if (*look.seen == QueenNoteKind::Larvae) return {};
    QStringList labels;
    for (const auto& other : reserveFor(snapshot, look.queen->id, batch))
        labels += plain(other->label);
    return labels.isEmpty() ? Words::tr("%1 has no larvae, and nobody is in reserve").arg(queen)
                            : Words::tr("%1 has no larvae: graft from %2")
                                  .arg(queen, labels.join(Words::tr(" or ")));
}

QString larvaeSeen(QueenNoteKind kind) {
    return kind == QueenNoteKind::Larvae ? Words::tr("larvae seen") : Words::tr("no larvae");
}
QString larvaeHead() { return Words::tr("Larvae fit to graft"); }
QString larvaeDay() { return Words::tr("Looked on"); }
QString notLooked() { return Words::tr("not looked"); }
QString larvaeHint() {
    return Words::tr(
        "Look the day before the graft (common practice). Without larvae the reserve "
        "of her line is named.");
}

QString confined() { return Words::tr("Confined this season"); }

QString usesOf(const BreederSeason& season, Day today) {
    if (season.uses.empty()) return Words::tr("not used");
    QStringList parts{Words::tr("%Ln time(s)", nullptr, static_cast<int>(season.uses.size()))};
    if (const auto* soon = firstTooSoon(season, today))
        parts += Words::tr("too soon %1").arg(weekdayAndDay(dayOf(soon->confined.from)));
    for (const auto& use : season.uses) {
        if (dayOf(use.confined.from) < today) continue;
        parts += Words::tr("next %1").arg(weekdayAndDay(dayOf(use.confined.from)));
        break;
    }
    return parts.join(Words::tr(", "));
}

QString allUses(const BreederSeason& season) {
    QStringList lines;
    for (const auto& use : season.uses)
        lines += Words::tr("%1: %2; %3; %4")
                     .arg(span(use), what(use), freeDays(use), reserve(*season.queen, use));
    return lines.join(u'\n');
}

namespace {

QString toldOf(const Snapshot& snapshot, const Queen& queen, const BreederUse& use) {
    QStringList parts{freeDays(use), reserve(queen, use), looksFor(snapshot, queen, use)};
    parts.removeAll(QString());
    return parts.join(QStringLiteral("; "));
}

}  // namespace

Story breeder(const Snapshot& snapshot, Id<Queen> id) {
    Story story;
    const auto row = snapshot.find(id);
    story.head = row ? Words::tr("The season of queen %1").arg(plain(row->label)) : QString();
    story.empty = Words::tr("No batch of the season shown is grafted from her.");
    for (const auto& season : breederSeasons(snapshot)) {
        if (season.queen->id != id) continue;
        for (const auto& use : season.uses)
            story.lines.push_back({span(use), what(use), toldOf(snapshot, *season.queen, use),
                                   whyDays(snapshot.facts()),
                                   use.tooSoon ? CardTone::Caution : CardTone::Plain});
        if (!season.uses.empty())
            story.foot = Words::tr(
                "Handle her as little as you can: each time she can be lost. Keep one in reserve "
                "of each line.");
    }
    return story;
}

}  // namespace tenthday::story_text
