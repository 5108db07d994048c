/// @file story_text.h  One thing's season told in order: a builder's, a breeder queen's.
#pragma once
#include "occupancy/breeder_larvae.h"
#include "occupancy/breeder_uses.h"
#include "screen_text/chart_cards.h"

namespace tenthday {

struct StoryLine {
    QString when;
    QString what;
    QString more;
    QString tip;  ///< rule, input, source
    CardTone tone = CardTone::Plain;
};

/// Read only.
struct Story {
    QString head;
    std::vector<StoryLine> lines;
    QString empty;  ///< what belongs here, where there is nothing
    QString foot;   ///< cautions
};

namespace story_text {

[[nodiscard]] Story builder(const Outlook& outlook, Id<Builder> id);
[[nodiscard]] Story breeder(const Snapshot& snapshot, Id<Queen> id);

/// How often she is confined, when next, and what is wrong with it: "4 times, next Sat 8 May".
[[nodiscard]] QString usesOf(const BreederSeason& season, Day today);
/// A line for each time.
[[nodiscard]] QString allUses(const BreederSeason& season);

/// "see larvae of B12 on Thu 10 Jun"; of one without larvae who is in reserve; empty where they
/// were seen.
[[nodiscard]] QString larvae(const Snapshot& snapshot, Id<Batch> batch, const LarvaeLook& look);
[[nodiscard]] QString larvaeSeen(QueenNoteKind kind);
[[nodiscard]] QString larvaeHead();
[[nodiscard]] QString larvaeDay();
[[nodiscard]] QString notLooked();
[[nodiscard]] QString larvaeHint();
[[nodiscard]] QString confined();
[[nodiscard]] QString columnHead(int column);
/// The button, and what it does.
[[nodiscard]] QString open();
[[nodiscard]] QString openTip();

}  // namespace story_text
}  // namespace tenthday
