#include "support/sample_outlook.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace tenthday {
namespace {

constexpr Day day(int year, unsigned month, unsigned dayOfMonth) {
    return Day{date::local_days{date::year{year} / static_cast<int>(month) /
                                static_cast<int>(dayOfMonth)}};
}

struct SampleBatch {
    std::string_view label;
    Day graft;
    int builder;  ///< place in kBuilders
    int grafts;
    std::array<int, 3> cells;  ///< planned by yard
    bool grafted;
};

constexpr std::array<std::string_view, 4> kBuilders{"Builder 1", "Builder 2", "Builder 3",
                                                    "Incubator"};
constexpr std::array<std::string_view, 3> kYards{"Home", "Alder", "Mill"};
constexpr std::array<int, 3> kSides{28, 40, 34};
const std::array<Day, 3> kStocked{day(2027, 5, 10), day(2027, 5, 16), day(2027, 5, 24)};
const DayWindow kSeason{day(2027, 4, 26), day(2027, 7, 31)};
const Day kToday = day(2027, 6, 2);

const std::array<SampleBatch, 8> kBatches{{
    {"14", day(2027, 5, 3), 0, 40, {28, 0, 0}, true},
    {"15", day(2027, 5, 10), 1, 38, {0, 25, 0}, true},
    {"16", day(2027, 5, 18), 2, 32, {0, 0, 22}, true},
    {"17", day(2027, 5, 26), 0, 38, {0, 15, 11}, true},
    {"18", day(2027, 6, 7), 1, 44, {27, 4, 0}, false},
    {"19", day(2027, 6, 11), 2, 46, {0, 20, 12}, false},
    {"20", day(2027, 6, 24), 0, 36, {0, 0, 24}, false},
    {"21", day(2027, 7, 2), 1, 44, {0, 33, 0}, false},
}};

template <class Row>
Id<Row> id(std::uint64_t kind, std::size_t number) {
    return {Uuid{kind, number + 1}};
}

Moment at(Day start, double hours) {
    return Moment{start} + std::chrono::hours{9} +
           std::chrono::minutes{static_cast<int>(hours * 60)};
}

EventDates dates(Event event, Day graft, double early, double likely, double late) {
    return {event, at(graft, early), at(graft, likely), at(graft, late), EventNote::None};
}

StateShares sharesOn(int sinceTransfer) {
    StateShares shares{};
    const auto set = [&](NucState state, double share) {
        shares[static_cast<std::size_t>(state)] = static_cast<float>(share);
    };
    if (sinceTransfer <= 0) {
        set(NucState::Ready, 1);
    } else if (sinceTransfer <= 2) {
        set(NucState::Cell, 1);
    } else if (sinceTransfer <= 8) {
        set(NucState::Virgin, 1);
    } else if (sinceTransfer < 17) {
        set(NucState::DueToFly, sinceTransfer < 13 ? 1 : 1 - 0.2 * (sinceTransfer - 12));
        set(NucState::Laying, sinceTransfer < 13 ? 0 : 0.2 * (sinceTransfer - 12));
    } else {
        set(sinceTransfer < 22 ? NucState::Laying : NucState::JudgedGood, 0.7);
        set(NucState::NoQueen, 0.3);
    }
    return shares;
}

BatchTimeline timeline(const SampleBatch& sample) {
    BatchTimeline line;
    const Day graft = sample.graft;
    line.graft = at(graft, 0);
    line.grafted = sample.grafted;
    line.events = {dates(Event::MakeUpBuilder, graft, -24, -24, -24),
                   dates(Event::Graft, graft, 0, 0, 0),
                   dates(Event::TakeCount, graft, 24, 48, 72),
                   dates(Event::Sealed, graft, 102, 110, 118),
                   dates(Event::Ripe, graft, 240, 240, 240),
                   dates(Event::LatestMove, graft, 258, 258, 258),
                   dates(Event::FirstOut, graft, 262, 276, 284),
                   dates(Event::Emergence, graft, 280, 294, 308),
                   dates(Event::DueToFly, graft, 450, 462, 480),
                   dates(Event::FirstLook, graft, 640, 640, 640),
                   dates(Event::Catch, graft, 768, 768, 768)};
    const double accepted = std::round(sample.grafts * 0.75);
    const double sealed = std::round(accepted * 0.95);
    line.counts = {static_cast<double>(sample.grafts),
                   accepted,
                   sealed,
                   sealed,
                   sealed * 0.88,
                   sealed * 0.7,
                   sealed * 0.65};
    const Day rest = graft + Days{13};
    line.loads.push_back({id<Builder>(3, static_cast<std::size_t>(sample.builder)),
                          BuilderKind::StarterFinisher,
                          1,
                          {1},
                          {at(graft, 0), at(graft, 240)},
                          rest,
                          {{at(graft, 0), static_cast<double>(sample.grafts), false},
                           {at(graft, 48), accepted, false},
                           {at(graft, 110), sealed, true}}});
    line.hold.transfer = at(graft, 240);
    line.hold.transferDay = graft + Days{10};
    line.hold.lookDay = graft + Days{26};
    line.hold.catchDay = graft + Days{33};
    line.hold.layingShare = 0.7;
    for (int since = 0; since <= 24; ++since) line.hold.shares.push_back(sharesOn(since));
    line.latestMove = at(graft, 258);
    return line;
}

Snapshot snapshot(const std::array<SampleBatch, 8>& batches) {
    Snapshot made;
    std::vector<Ptr<Yard>> yards;
    for (std::size_t i = 0; i < kYards.size(); ++i) {
        Yard yard;
        yard.id = id<Yard>(2, i);
        yard.label = kYards[i];
        yard.roles = "mating";
        yards.push_back(std::make_shared<const Yard>(yard));
    }
    std::vector<Ptr<Builder>> builders;
    for (std::size_t i = 0; i < kBuilders.size(); ++i) {
        Builder builder;
        builder.id = id<Builder>(3, i);
        builder.label = kBuilders[i];
        builder.kind = i == 3 ? BuilderKind::Incubator : BuilderKind::StarterFinisher;
        builders.push_back(std::make_shared<const Builder>(builder));
    }
    std::vector<Ptr<Batch>> rows;
    for (std::size_t i = 0; i < batches.size(); ++i) {
        Batch batch;
        batch.id = id<Batch>(1, i);
        batch.label = batches[i].label;
        batch.day = batches[i].graft;
        batch.hour = Hour{9};
        rows.push_back(std::make_shared<const Batch>(batch));
    }
    Season season;
    season.id = id<Season>(4, 0);
    season.from = kSeason.first;
    season.until = kSeason.last;
    DayOff off;
    off.id = id<DayOff>(5, 0);
    off.from = day(2027, 7, 14);
    off.until = day(2027, 7, 16);
    made.setAll<Yard>(Table<Yard>::from(yards));
    made.setAll<Builder>(Table<Builder>::from(builders));
    made.setAll<Batch>(Table<Batch>::from(rows));
    made.setAll<Season>(Table<Season>::from({std::make_shared<const Season>(season)}));
    made.setAll<DayOff>(Table<DayOff>::from({std::make_shared<const DayOff>(off)}));
    made.setSeason(season.id);
    made.setToday(kToday);
    return made;
}

SharedList<BuilderOutlook> builders(const Outlook& outlook) {
    SharedList<BuilderOutlook> made;
    for (std::size_t i = 0; i < kBuilders.size(); ++i) {
        BuilderOutlook builder;
        builder.builder = outlook.snapshot.find(id<Builder>(3, i));
        for (const auto& batch : outlook.batches) {
            const auto& span = batch->timeline.loads.front();
            if (span.builder != builder.builder->id) continue;
            builder.loads.push_back({batch->batch->id, &span});
            MakeUp makeUp;
            makeUp.id = {Uuid{6, batch->batch->id.uuid.low}};
            makeUp.builder = builder.builder->id;
            makeUp.day = dayOf(span.span.from) - Days{1};
            makeUp.openBrood = true;
            builder.makeUps.push_back(std::make_shared<const MakeUp>(makeUp));
            builder.idle.push_back({makeUp.day, makeUp.day});
            const Day start = makeUp.day;
            WildClock clock{};
            clock.start = momentOf(start);
            clock.firstLook = {start + Days{5}, start + Days{7}};
            clock.secondLook = {start + Days{8}, start + Days{9}};
            if (start + Days{6} < kToday) clock.firstTicked = start + Days{6};
            if (start + Days{9} < kToday) clock.secondTicked = start + Days{9};
            builder.clocks.push_back(clock);
        }
        made.push_back(std::move(builder));
    }
    return made;
}

YardDay yardDay(const Outlook& outlook, std::size_t yard, Day on,
                const std::array<SampleBatch, 8>& batches) {
    YardDay made;
    made.sides = static_cast<std::int16_t>(kSides[yard]);
    std::array<double, kTokenCount<NucState>> counts{};
    double held = 0;
    for (std::size_t i = 0; i < batches.size(); ++i) {
        const auto& hold = outlook.batches[i]->timeline.hold;
        const auto since = (on - hold.transferDay).count();
        if (since <= 0 || on > hold.catchDay) continue;
        for (std::size_t state = 0; state < counts.size(); ++state)
            counts[state] +=
                static_cast<double>(hold.shares[static_cast<std::size_t>(since)][state]) *
                batches[i].cells[yard];
        held += batches[i].cells[yard];
        if (on == hold.catchDay) made.numbers.likely += 0.7 * batches[i].cells[yard];
    }
    const auto since = static_cast<double>((on - kStocked[yard]).count());
    const double stocked = std::clamp(since * 9, 0.0, static_cast<double>(kSides[yard]));
    counts[static_cast<std::size_t>(NucState::NotStocked)] = kSides[yard] - std::max(stocked, held);
    counts[static_cast<std::size_t>(NucState::Ready)] = std::max(0.0, stocked - held);
    // Whole numbers by largest remainder.
    int sum = 0;
    std::vector<std::pair<double, std::size_t>> rests;
    for (std::size_t state = 0; state < counts.size(); ++state) {
        const double whole = std::floor(counts[state] + 1e-6);
        made.stack[state] = static_cast<std::int16_t>(whole);
        sum += static_cast<int>(whole);
        rests.push_back({whole - counts[state], state});
    }
    std::stable_sort(rests.begin(), rests.end());
    for (std::size_t i = 0; sum < made.sides; ++i, ++sum) ++made.stack[rests[i].second];
    made.numbers.ready = made.stack[static_cast<std::size_t>(NucState::Ready)];
    made.numbers.canStock = made.stack[static_cast<std::size_t>(NucState::NotStocked)];
    return made;
}

void addNucs(Outlook& outlook, const std::array<SampleBatch, 8>& batches) {
    for (std::size_t yard = 0; yard < kYards.size(); ++yard) {
        YardOutlook made;
        made.yard = outlook.snapshot.find(id<Yard>(2, yard));
        made.mostSides = kSides[yard];
        for (Day on = kSeason.first; on <= kSeason.last; on += Days{1})
            made.days.push_back(yardDay(outlook, yard, on, batches));
        for (std::size_t i = 0; i < batches.size(); ++i)
            if (batches[i].cells[yard] > 0) {
                const auto& hold = outlook.batches[i]->timeline.hold;
                made.blocks.push_back(
                    {id<Batch>(1, i), {hold.transferDay, hold.catchDay}, batches[i].cells[yard]});
            }
        std::stable_sort(made.blocks.begin(), made.blocks.end(),
                         [](const auto& a, const auto& b) { return a.days.first < b.days.first; });
        outlook.nucs.yards.push_back(std::move(made));
    }
    for (std::size_t i = 0; i < batches.size(); ++i) {
        const auto& line = outlook.batches[i]->timeline;
        CellsDay cells;
        cells.day = line.hold.transferDay;
        cells.batches = {id<Batch>(1, i)};
        cells.ripe = static_cast<std::int32_t>(line.counts.ripe);
        cells.toNucs = cells.ripe;
        const auto at = static_cast<std::size_t>((cells.day - kSeason.first).count());
        for (const auto& yard : outlook.nucs.yards) cells.numbers += yard.days[at].numbers;
        outlook.nucs.cellsDays.push_back(cells);
    }
    std::stable_sort(outlook.nucs.cellsDays.begin(), outlook.nucs.cellsDays.end(),
                     [](const auto& a, const auto& b) { return a.day < b.day; });
}

void addFindings(Outlook& outlook) {
    Finding overfull;
    overfull.day = kBatches[1].graft;
    overfull.severity = Severity::Warning;
    overfull.kind = FindingKind::BoxOverfull;
    overfull.subject = id<Batch>(1, 1);
    overfull.subjectLabel = "15";
    overfull.builder = id<Builder>(3, 1);
    overfull.builderLabel = "Builder 2";
    overfull.moment = at(overfull.day, 0);
    overfull.count = 28;
    overfull.limit = 24;
    outlook.findings.push_back(overfull);
    Finding wild;
    wild.day = day(2027, 6, 19);
    wild.severity = Severity::Danger;
    wild.kind = FindingKind::WildQueenOverdue;
    wild.subject = id<Builder>(3, 2);
    wild.subjectLabel = wild.builderLabel = "Builder 3";
    wild.builder = id<Builder>(3, 2);
    outlook.findings.push_back(wild);
}

OutlookPtr outlookFrom(const std::array<SampleBatch, 8>& batches) {
    auto made = std::make_shared<Outlook>();
    made->snapshot = snapshot(batches);
    made->season = kSeason;
    for (std::size_t i = 0; i < batches.size(); ++i) {
        auto batch = std::make_shared<BatchOutlook>();
        batch->batch = made->snapshot.find(id<Batch>(1, i));
        batch->timeline = timeline(batches[i]);
        made->batches.push_back(std::move(batch));
    }
    made->builders = builders(*made);
    addNucs(*made, batches);
    addFindings(*made);
    return made;
}

template <std::size_t n>
std::size_t placeOf(const std::array<std::string_view, n>& labels, std::string_view label) {
    return static_cast<std::size_t>(std::find(labels.begin(), labels.end(), label) -
                                    labels.begin());
}

}  // namespace

OutlookPtr sampleOutlook() { return outlookFrom(kBatches); }

OutlookPtr sampleOutlook(std::string_view movedLabel, Day graft) {
    auto batches = kBatches;
    for (auto& batch : batches)
        if (batch.label == movedLabel) batch.graft = graft;
    return outlookFrom(batches);
}

Id<Batch> sampleBatch(std::string_view label) {
    for (std::size_t i = 0; i < kBatches.size(); ++i)
        if (kBatches[i].label == label) return id<Batch>(1, i);
    return {};
}

Id<Builder> sampleBuilder(std::string_view label) {
    return id<Builder>(3, placeOf(kBuilders, label));
}

Id<Yard> sampleYard(std::string_view label) { return id<Yard>(2, placeOf(kYards, label)); }

}  // namespace tenthday
