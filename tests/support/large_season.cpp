#include "support/large_season.h"

#include <stdexcept>

#include "records/change_set.h"
#include "records/method_catalogue.h"
#include "support/days.h"
#include "support/ids.h"

namespace tenthday::test {
namespace {

constexpr int kYards = 8;
constexpr int kStarters = 6;
constexpr int kFinishers = 36;
constexpr Days kGraftSpan{118};
constexpr Days kTransferAfter{10};
constexpr Days kCatchAfter{24};  ///< after the transfer

/// A number from 0 to below `most`, mixed from n: the same on every machine.
int mixed(int n, int most) {
    const auto x = static_cast<std::uint64_t>(n + 1) * 0x9E3779B97F4A7C15ULL;
    return static_cast<int>((x >> 33) % static_cast<std::uint64_t>(most));
}

class Maker {
public:
    explicit Maker(LargeSeason size)
        : size_(size), freeFrom_(static_cast<std::size_t>(size.nucs)) {}

    ChangeSet makeRows() {
        addOperation();
        for (int n = 0; n < size_.nucs / 2; ++n) addBox(n);
        for (int n = 0; n < kStarters + kFinishers; ++n) addBuilder(n);
        for (int n = 0; n < size_.batches; ++n) addBatch(n);
        addWeather();
        return std::move(rows_);
    }

    Snapshot make() {
        Snapshot empty;
        empty.setToday(today_);
        empty.setSeason(id<Season>(1));
        auto made = applied(empty, makeRows());
        if (!made) throw std::logic_error(made.error().text);
        return std::move(made).value();
    }

private:
    void addOperation() {
        Book book;
        book.id = id<Book>(1);
        book.label = "Long Meadow";
        rows_.add(book);
        rows_.add(Season{id<Season>(1), 1, "2027", begin_, day("2027-10-15")});
        const auto& method = builtInMethods()[1];
        rows_.add(method.method);
        for (const auto& step : method.steps) rows_.add(step);
        for (int n = 0; n < kYards; ++n) {
            Yard yard;
            yard.id = yardId(n);
            yard.label = "Yard " + std::to_string(n + 1);
            yard.roles = "mating builder";
            yard.driveOrder = n;
            rows_.add(yard);
        }
    }

    /// Spells of four days about a yearly wave: 4 degrees at midwinter, 24 at midsummer.
    void addWeather() {
        int n = 0;
        for (Day on = today_ - Days{size_.weatherYears * 365}; on < today_; on += Days{1}, ++n) {
            const int away = std::abs((n + 5) % 365 - 182);  // of midwinter; today is in June
            WeatherDay row;
            row.id = id<WeatherDay>(number(n));
            row.date = on;
            row.tmaxC = Tenths{40 + (away * 200) / 182 + mixed(n / 4, 100) - 50};
            row.rainMm = Tenths{std::max(mixed(n / 2, 60) - 40, 0)};
            row.windMs = Tenths{10 + mixed(n, 50)};
            rows_.add(row);
        }
    }

    void addBox(int n) {
        const auto box = id<Box>(number(n));
        const auto layout = id<BoxLayout>(number(n));
        rows_.add(Box{box, 1, std::to_string(n + 1), ""});
        rows_.add(BoxStay{id<BoxStay>(number(n)), 1, box, yardId(n % kYards), begin_});
        rows_.add(BoxLayout{layout, 1, box, "3+3", begin_});
        for (int side = 0; side < 2; ++side) {
            rows_.add(NucSide{sideId(2 * n + side), 1, layout, side == 0 ? "A" : "B", Frames{3}});
            Stocking stocking;
            stocking.id = id<Stocking>(number(2 * n + side));
            stocking.side = sideId(2 * n + side);
            stocking.day = begin_ + Days{20 + mixed(n, 21)};
            stocking.openBrood = true;
            rows_.add(stocking);
        }
    }

    void addBuilder(int n) {
        Builder builder;
        builder.id = id<Builder>(number(n));
        builder.label = (n < kStarters ? "Starter " : "Finisher ") + std::to_string(n + 1);
        builder.yard = yardId(n % kYards);
        builder.kind = n < kStarters ? BuilderKind::Starter : BuilderKind::Finisher;
        builder.from = begin_;
        rows_.add(builder);
    }

    void addBatch(int n) {
        Batch batch;
        batch.id = largeSeasonBatch(n);
        batch.label = std::to_string(n + 1);
        batch.day = begin_ + Days{19} + Days{kGraftSpan.count() * n / size_.batches};
        batch.hour = Hour{9 + mixed(n, 9)};
        batch.method = builtInMethods()[1].method.id;
        rows_.add(batch);
        addMakeUp(n, batch);
        const int bars = n % 3 == 0 ? 2 : 1;
        for (int bar = 1; bar <= bars; ++bar) addBar(n, bar, batch);
        const auto yard = n % kYards;
        rows_.add(
            BatchShare{id<BatchShare>(number(n)), 1, batch.id, yardId(yard), Cells{14 * bars}});
        if (batch.day < today_) addOutcome(batch.id, {}, OutcomeKind::Graft, batch.day, 20 * bars);
        if (batch.day + kTransferAfter < today_) addCellsInNucs(batch, yard, 14 * bars);
    }

    void addMakeUp(int n, const Batch& batch) {
        MakeUp makeUp;
        makeUp.id = id<MakeUp>(number(n));
        makeUp.builder = id<Builder>(number(n % kStarters));
        makeUp.day = batch.day - Days{1};
        makeUp.openBrood = n % 4 == 0;
        rows_.add(makeUp);
    }

    void addBar(int n, int bar, const Batch& batch) {
        const int place = 2 * n + bar;
        rows_.add(BatchBar{id<BatchBar>(number(place)), 1, batch.id, bar, {}, Cells{20}});
        const auto finisher = kStarters + place % kFinishers;
        rows_.add(BatchLoad{id<BatchLoad>(number(2 * place)), 1, batch.id, bar, 1,
                            id<Builder>(number(n % kStarters))});
        rows_.add(BatchLoad{id<BatchLoad>(number(2 * place + 1)), 1, batch.id, bar, 2,
                            id<Builder>(number(finisher))});
    }

    /// Into the first sides of the yard that are free; caught again when the time has come.
    void addCellsInNucs(const Batch& batch, int yard, int cells) {
        const Day transfer = batch.day + kTransferAfter;
        for (int side = 0; side < size_.nucs && cells > 0; ++side) {
            if (side / 2 % kYards != yard) continue;
            auto& freeFrom = freeFrom_[static_cast<std::size_t>(side)];
            if (freeFrom > transfer) continue;
            const Day caught = transfer + kCatchAfter;
            freeFrom = caught + Days{1};
            rows_.add(Placement{id<Placement>(number(placements_++)),
                                1,
                                batch.id,
                                sideId(side),
                                CellTarget::Nuc,
                                transfer,
                                {},
                                true});
            if (caught < today_) addOutcome(batch.id, sideId(side), OutcomeKind::Catch, caught, {});
            --cells;
        }
    }

    void addOutcome(Id<Batch> batch, std::optional<Id<NucSide>> side, OutcomeKind kind, Day day,
                    std::optional<int> count) {
        Outcome outcome;
        outcome.id = id<Outcome>(number(outcomes_++));
        outcome.batch = batch;
        outcome.side = side;
        outcome.kind = kind;
        outcome.day = day;
        if (count) outcome.count = Cells{*count};
        rows_.add(outcome);
    }

    static std::uint64_t number(int n) { return static_cast<std::uint64_t>(n) + 1; }
    static Id<Yard> yardId(int n) { return id<Yard>(number(n)); }
    static Id<NucSide> sideId(int n) { return id<NucSide>(number(n)); }

    LargeSeason size_;
    Day begin_ = day("2027-04-01");
    Day today_ = day("2027-06-14");
    ChangeSet rows_{Verb::MakeBook, "", {}, {}};
    std::vector<Day> freeFrom_;  ///< per side, day from which it takes a cell
    int placements_ = 0;
    int outcomes_ = 0;
};

}  // namespace

Snapshot largeSeason(LargeSeason size) { return Maker(size).make(); }

ChangeSet largeSeasonRows(LargeSeason size) { return Maker(size).makeRows(); }

Id<Batch> largeSeasonBatch(int n) { return id<Batch>(static_cast<std::uint64_t>(n) + 1); }

}  // namespace tenthday::test
