#include "chart/kept_rows.h"

#include <set>
#include <tuple>

#include "chart/load_bar.h"
#include "chart/planned_stays.h"
#include "screen_text/chart_text.h"

namespace tenthday {
namespace {

/// Names every field: one that is added is not forgotten here.
auto partsOf(const WildClock& clock) {
    const auto& [cause, start, firstLook, secondLook, firstTicked, secondTicked, oldest, old, young,
                 runsOut] = clock;
    return std::tie(cause, start, firstLook, secondLook, firstTicked, secondTicked, oldest, old,
                    young, runsOut);
}

template <class T, class Same>
bool areSame(const std::vector<T>& a, const std::vector<T>& b, Same same) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), same);
}

bool holdsMoved(const LaneInput& input, const BuilderRow& row, const BuilderTracks& tracks) {
    if (tracks.moved.empty() || !row.builder) return false;
    for (const auto& builder : input.options.before->builders)
        if (builder.builder->id == row.builder->builder->id)
            return std::any_of(builder.loads.begin(), builder.loads.end(),
                               [&](const auto& load) { return tracks.moved.contains(load.batch); });
    return false;
}

/// Places of trouble by where the findings of now tell of it.
void findAnew(const RowLeaning& before, const RowLeaning& now, std::vector<Target>& targets) {
    if (areSame(before.told, now.told,
                [](const auto& a, const auto& b) { return a.index == b.index; }))
        return;
    for (auto& target : targets) {
        if (target.key.hit != Hit::Trouble) continue;
        const auto was =
            std::find_if(before.told.begin(), before.told.end(), [&](const auto& told) {
                return told.index == target.key.index &&
                       before.loads[told.load].batch->batch->id == target.key.batch;
            });
        if (was == before.told.end()) continue;
        const auto told = static_cast<std::size_t>(was - before.told.begin());
        target.key.index = now.told[told].index;
    }
}

}  // namespace

RowLeaning::RowLeaning(const LaneInput& input, const BuilderRow& row, const QRectF& rowArea,
                       const BuilderTracks& tracks)
    : area(rowArea), track(tracks.track), pxPerCell(tracks.pxPerCell) {
    loads.reserve(row.loads.size());
    for (std::size_t i = 0; i < row.loads.size(); ++i) {
        const auto& load = row.loads[i];
        loads.push_back({input.stacks.held(load.batch), load.span, row.tracks[i]});
        const int index = worstInSight(input, row, load, tracks);
        if (index < 0) continue;
        const auto& finding = input.outlook.findings[static_cast<std::size_t>(index)];
        told.push_back({i, index, finding.day, finding.severity,
                        tracks.isDense() ? QString() : chart_text::trouble(finding)});
    }
    if (row.builder) {
        builder = row.builder->builder;
        makeUps = row.builder->makeUps;
        clocks = row.builder->clocks;
        idle = row.builder->idle;
    }
    hasGhosts = holdsMoved(input, row, tracks);
    showsPlan =
        !input.options.before && std::any_of(loads.begin(), loads.end(), [&](const Load& load) {
            return shiftToPlan(input.outlook, load.batch.get()).has_value();
        });
}

int RowLeaning::indexOf(std::size_t load) const {
    const auto at = std::find_if(told.begin(), told.end(),
                                 [load](const Told& one) { return one.load == load; });
    return at == told.end() ? -1 : at->index;
}

bool RowLeaning::standsAs(const RowLeaning& before) const {
    const auto isUnknown = [](const Load& load) { return load.batch == nullptr; };
    if (hasGhosts || before.hasGhosts || std::any_of(loads.begin(), loads.end(), isUnknown))
        return false;
    return track == before.track && pxPerCell == before.pxPerCell &&
           showsPlan == before.showsPlan && builder == before.builder && loads == before.loads &&
           makeUps == before.makeUps && idle == before.idle &&
           areSame(clocks, before.clocks,
                   [](const auto& a, const auto& b) { return partsOf(a) == partsOf(b); });
}

bool RowLeaning::tellsAs(const RowLeaning& before) const {
    return areSame(told, before.told, [](const Told& a, const Told& b) {
        return a.load == b.load && a.day == b.day && a.severity == b.severity && a.words == b.words;
    });
}

class KeptRows::Laying {
public:
    Laying(const LaneInput& input, BuilderTracks& tracks, const Sheet& sheet)
        : input_(input), tracks_(tracks), sheet_(sheet) {}

    /// @return whether its loads were laid afresh
    bool lay(const BuilderRow& row, const QRectF& area, Kept& kept) {
        const auto before = std::exchange(kept.leaning, RowLeaning(input_, row, area, tracks_));
        const auto down = before ? movedDown(before->area, area, sheet_.snap()) : std::nullopt;
        const bool stands = down && kept.leaning->standsAs(*before);
        const bool loadsStay = stands && isClear(*kept.loads, *down);
        auto& outs = input_.ribbon.outs;
        if (loadsStay) {
            keep(*kept.loads, *down);
            for (auto& out : kept.outs) out.right.ry() += *down;
            outs.insert(outs.end(), kept.outs.begin(), kept.outs.end());
        } else {
            const auto first = static_cast<std::ptrdiff_t>(outs.size());
            renew(kept.loads, [&](Sheet& on) { layBuilderRow(input_, row, area, tracks_, on); });
            kept.outs.assign(outs.begin() + first, outs.end());
        }
        if (stands && kept.leaning->tellsAs(*before) && isClear(*kept.troubles, *down)) {
            findAnew(*before, *kept.leaning, kept.troubles->sheet.targets());
            keep(*kept.troubles, *down);
        } else {
            const auto& is = *kept.leaning;
            renew(kept.troubles, [&](Sheet& on) {
                layTrouble(input_, row, area, is.hasGhosts || is.showsPlan, tracks_, on);
            });
        }
        return !loadsStay;
    }

private:
    /// Where a part stood and where it stands.
    struct Stood {
        Stripe was;
        Stripe is;
        std::optional<qreal> down;  ///< all of it moved so far; none: it stands elsewise
    };
    /// Where it looked for what stands there, all stands as it did, seen from where it is now.
    [[nodiscard]] bool isClear(const Part& part, qreal down) const {
        const auto& asked = part.places.asked;
        const auto askedNow = asked.movedDown(down);
        return std::none_of(stood_.begin(), stood_.end(), [&](const Stood& one) {
            return one.down != down && (one.was.meets(asked) || one.is.meets(askedNow));
        });
    }
    void keep(Part& part, qreal down) {
        const auto was = part.places.stripe();
        if (down != 0) {
            part.sheet.moveDown(down);
            part.places.moveDown(down);
        }
        tracks_.add(part.places);
        stood_.push_back({was, part.places.stripe(), down});
    }
    template <class Lay>
    void renew(std::unique_ptr<Part>& part, Lay lay) {
        const auto before = std::exchange(
            part, std::make_unique<Part>(Part{Sheet(sheet_.ruler(), sheet_.snap()), {}}));
        lay(part->sheet);
        part->places = tracks_.takeRow();
        const bool isSame = before && before->places.standsAs(part->places);
        stood_.push_back({before ? before->places.stripe() : Stripe(), part->places.stripe(),
                          isSame ? std::optional(0.0) : std::nullopt});
    }

    const LaneInput& input_;
    BuilderTracks& tracks_;
    const Sheet& sheet_;  ///< whose ruler all use
    std::vector<Stood> stood_;
};

void KeptRows::lay(const LaneInput& input, const std::vector<BuilderRow>& rows, const QRectF& lane,
                   qreal top, BuilderTracks& tracks, Sheet& sheet) {
    if (!input.isAsBefore) rows_.clear();
    rows_.resize(rows.size());
    Laying laying(input, tracks, sheet);
    std::vector<const Sheet*> sheets;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const QRectF area(lane.left(), top, lane.width(), tracks.track * rows[i].trackCount);
        top += area.height();
        laid_ += laying.lay(rows[i], area, rows_[i]);
        for (const auto* part : {rows_[i].loads.get(), rows_[i].troubles.get()})
            sheets.push_back(&part->sheet);
    }
    sheet.append(sheets);
}

std::vector<Trouble> KeptRows::untold(const LaneInput& input,
                                      const std::vector<BuilderRow>& rows) const {
    std::vector<Trouble> all;
    std::set<std::pair<Id<Batch>, int>> told;  // a batch may have it in several builders
    for (std::size_t i = 0; i < rows.size(); ++i)
        for (const auto load : rows_[i].troubles->places.untold) {
            const auto& of = rows[i].loads[load];
            const auto index = rows_[i].leaning->indexOf(load);
            if (told.insert({of.batch, index}).second) all.push_back(troubleOf(input, of, index));
        }
    return all;
}

}  // namespace tenthday
