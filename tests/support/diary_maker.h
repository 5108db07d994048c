/// @file diary_maker.h  Notes of every kind in the diaries of a season's builders.
#pragma once
#include "support/season_maker.h"

namespace tenthday::test {

/// A season to which notes and make-ups in full are added; each takes what the call before left.
class DiaryMaker {
public:
    explicit DiaryMaker(const SeasonMaker& maker) : maker_(maker), snapshot_(maker.snapshot()) {}

    DiaryMaker& note(const std::string& builder, BuilderNoteKind kind, std::string_view on,
                     bool openBrood = false) {
        BuilderNote row;
        row.id = id<BuilderNote>(++count_);
        row.builder = maker_.builderId(builder);
        row.kind = kind;
        row.day = day(on);
        row.openBrood = openBrood;
        return add(row);
    }
    DiaryMaker& makeUp(const std::string& builder, std::string_view on, bool openBrood,
                       std::optional<Frames> frames = {}) {
        MakeUp row;
        row.id = id<MakeUp>(++count_);
        row.builder = maker_.builderId(builder);
        row.day = day(on);
        row.openBrood = openBrood;
        row.broodFrames = frames;
        return add(row);
    }
    template <class Row>
    DiaryMaker& add(Row row) {
        ChangeSet changes;
        changes.add(std::move(row));
        snapshot_ = applied(snapshot_, changes).value();
        return *this;
    }
    DiaryMaker& ends(const std::string& builder, std::string_view on) {
        const auto row = snapshot_.find(maker_.builderId(builder));
        Builder ended = *row;
        ended.until = day(on);
        ChangeSet changes;
        changes.edit(row, ended);
        snapshot_ = applied(snapshot_, changes).value();
        return *this;
    }

    [[nodiscard]] const Snapshot& snapshot() const { return snapshot_; }
    [[nodiscard]] OutlookPtr outlook() const {
        OutlookMemo memo;
        return outlookOf(snapshot_, memo);
    }

private:
    const SeasonMaker& maker_;
    Snapshot snapshot_;
    std::uint64_t count_ = 860'000;
};

}  // namespace tenthday::test
