// A builder's season, line by line.
#include "occupancy/builder_story.h"

#include <algorithm>
#include <cmath>

#include "screen_text/because.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/diary_text.h"
#include "screen_text/story_text.h"
#include "screen_text/words.h"

namespace tenthday::story_text {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }
QString count(double number) { return chart_text::number(static_cast<int>(std::lround(number))); }

QString joined(QStringList parts) {
    parts.removeAll(QString());
    return parts.join(Words::tr("; "));
}

/// "Mon 3 May 17:00"; without its hour where none was given.
QString when(Day day, std::optional<Hour> hour) {
    return hour ? dayAndClock(momentOf(day, hour)) : weekdayAndDay(day);
}

QString days(const BuilderStoryLine& line) {
    const auto from = weekdayAndDay(dayOf(line.from));
    if (!line.until) return Words::tr("from %1").arg(from);
    return dayOf(line.from) == dayOf(*line.until)
               ? from
               : Words::tr("%1 to %2").arg(from, weekdayAndDay(dayOf(*line.until)));
}

QString howMany(const BuilderStoryLine& line) {
    const auto n = static_cast<int>((dayOf(*line.until) - dayOf(line.from)).count()) + 1;
    return Words::tr("%Ln day(s)", nullptr, n);
}

QString wild(const WildClock* clock) {
    return clock == nullptr
               ? QString()
               : Words::tr("a wild queen can be out from %1").arg(dayAndClock(clock->oldest));
}

StoryLine madeUp(const Facts& facts, const BuilderStoryLine& line) {
    const auto& row = *line.makeUp;
    const auto from = row.donors.empty() ? QString() : Words::tr("from %1").arg(plain(row.donors));
    return {when(row.day, row.hour), diary_text::what(diary_text::What::MadeUp),
            joined({diary_text::detail(row), from, wild(line.clock)}),
            line.clock ? diary_text::whyWildQueens(facts, BroodAge::All) : QString()};
}

StoryLine noted(const Facts& facts, const BuilderStoryLine& line) {
    const auto& row = *line.note;
    const auto from = row.donor.empty() ? QString() : Words::tr("from %1").arg(plain(row.donor));
    StoryLine told{when(row.day, row.hour), diary_text::what(diary_text::whatOf(row.kind)), {}, {}};
    QString follows = wild(line.clock);
    if (line.clock) told.tip = diary_text::whyWildQueens(facts, row.broodAge);
    if (line.kind == StoryKind::Feed) {
        const auto serves = Days{static_cast<int>(facts[Fact::FeedServesD])};
        follows = Words::tr("serves until %1").arg(weekdayAndDay(row.day + serves));
        told.tip = because::days(facts, Fact::FeedServesD, Words::tr("from the feed"));
    }
    told.more = joined({diary_text::detail(row), from, follows, plain(row.note).simplified()});
    return told;
}

StoryLine look(const Facts& facts, const BuilderStoryLine& line) {
    const auto of = Words::tr("for open brood of %1").arg(weekdayAndDay(dayOf(line.clock->start)));
    StoryLine told{
        days(line),
        line.second ? Words::tr("look again for wild cells") : Words::tr("look for wild cells"),
        of,
        {}};
    told.tip = because::days(facts, line.second ? Fact::Look2FromD : Fact::Look1FromD,
                             Words::tr("from the open brood"));
    switch (line.look) {
        case LookState::Ahead:
            break;
        case LookState::Due:
            told.more = joined({Words::tr("due now"), of});
            told.tone = CardTone::Caution;
            break;
        case LookState::Overdue:
            told.more = joined({Words::tr("overdue"), of, wild(line.clock)});
            told.tone = CardTone::Danger;
            break;
        case LookState::Ticked:
            told.when = weekdayAndDay(dayOf(line.from));
            told.more = joined({Words::tr("ticked off"), of});
            break;
        case LookState::Missed:
            told.more = joined({Words::tr("not noted"), of});
            break;
    }
    return told;
}

QString roomOf(const BuilderStoryLine& line, const Builder& builder) {
    if (!raisesCells(builder.kind))
        return builder.sealedRoom
                   ? Words::tr("room for %1 sealed").arg(count(builder.sealedRoom->value))
                   : QString();
    if (!line.room) return Words::tr("no bound: a flow or a feed is noted");
    return line.room->dearth ? Words::tr("room for %1 in the dearth").arg(count(line.room->cells))
                             : Words::tr("room for %1").arg(count(line.room->cells));
}

StoryLine load(const BuilderStoryLine& line, const Builder& builder) {
    const auto cells = chart_text::cells(static_cast<int>(std::lround(line.cells)));
    const auto over = line.overfull ? Words::tr("overfull") : QString();
    return {Words::tr("%1 to %2").arg(dayAndClock(line.from), dayAndClock(*line.until)),
            line.batch ? Words::tr("batch %1").arg(plain(line.batch->label)) : QString(),
            joined({over, cells, roomOf(line, builder)}),
            Words::tr("Started cells once the take is known; sealed ones where they come sealed."),
            line.overfull ? CardTone::Caution : CardTone::Plain};
}

QString ofDays(int n) { return Words::tr("for mite work: %Ln day(s)", nullptr, n); }

StoryLine broodless(const Facts& facts, const BuilderStoryLine& line) {
    QStringList parts;
    if (line.until)
        parts += ofDays(static_cast<int>((dayOf(*line.until) - dayOf(line.from)).count()) + 1);
    else
        parts += Words::tr("for mite work: until open brood or a queen comes");
    if (line.noBroodFrom && *line.noBroodFrom == dayOf(line.from))
        parts += Words::tr("no sealed worker brood either");
    else if (line.noBroodFrom)
        parts += Words::tr("from %1 no sealed worker brood either")
                     .arg(weekdayAndDay(*line.noBroodFrom));
    return {days(line), Words::tr("no open brood"), joined(parts),
            Words::tr("Worker brood is sealed %1 d from the egg (S1, S2, S27) and out %2.")
                .arg(chart_text::number(static_cast<int>(kWorkerSealed.count())),
                     because::days(facts, Fact::WorkerD, Words::tr("from the egg")))};
}

StoryLine told(const Facts& facts, const BuilderStoryLine& line, const Builder& builder) {
    switch (line.kind) {
        case StoryKind::MadeUp:
            return madeUp(facts, line);
        case StoryKind::LookWanted:
            return look(facts, line);
        case StoryKind::Load:
            return load(line, builder);
        case StoryKind::Idle:
            return {days(line), Words::tr("queenless without cells"), howMany(line), {}};
        case StoryKind::NoOpenBrood:
            return broodless(facts, line);
        case StoryKind::Ends:
            return {weekdayAndDay(dayOf(line.from)), Words::tr("its last day"), {}, {}};
        default:
            return noted(facts, line);
    }
}

QString cautions(const std::vector<BuilderStoryLine>& lines) {
    const bool mites = std::any_of(lines.begin(), lines.end(), [](const auto& line) {
        return line.kind == StoryKind::NoOpenBrood;
    });
    if (!mites) return {};
    return Words::tr(
        "Treatments against mites: follow the label and the local rules, also on whether cells or "
        "queens may be in the box. Open it first: a queen or laying workers that nobody noted may "
        "have brood there. Drone brood comes out some days later than worker brood.");
}

}  // namespace

Story builder(const Outlook& outlook, Id<Builder> id) {
    Story story;
    const auto row = outlook.snapshot.find(id);
    story.head = row ? Words::tr("The season of builder %1").arg(plain(row->label)) : QString();
    story.empty = Words::tr(
        "Nothing happens in this builder in the season shown. Note in the diary of builders when "
        "it is made up, or let a batch stand in it.");
    for (const auto& builder : outlook.builders) {
        if (builder.builder->id != id) continue;
        const auto lines = builderStory(outlook.snapshot, builder);
        const bool onlyEnds = std::all_of(lines.begin(), lines.end(), [](const auto& line) {
            return line.kind == StoryKind::Ends;
        });
        if (onlyEnds) break;
        for (const auto& line : lines)
            story.lines.push_back(told(outlook.snapshot.facts(), line, *builder.builder));
        story.foot = cautions(lines);
    }
    return story;
}

QString columnHead(int column) {
    return column == 0 ? Words::tr("When") : column == 1 ? Words::tr("What") : Words::tr("Details");
}
QString open() { return Words::tr("Its seas&on ..."); }
QString openTip() { return Words::tr("Its season in order (F4)"); }

}  // namespace tenthday::story_text
