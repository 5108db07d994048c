#include "records/validity.h"
#include "screen_text/dates.h"
#include "setup/row_kind.h"
#include "weather/flying_seasons.h"

namespace tenthday {
namespace {

using setup_text::Name;

enum SeasonField { Label, From, Until };

/// The season's own days, and those before on which its first batches may start.
bool holds(const Season& season, Day start) {
    return start >= season.from - kLeadIn && start <= season.until;
}

class SeasonKind : public RowKind<Season> {
public:
    [[nodiscard]] setup_text::Kind kind() const override { return setup_text::Kind::Seasons; }
    [[nodiscard]] QStringList columns() const override {
        return {setup_text::name(Name::Label), setup_text::name(Name::From),
                setup_text::name(Name::Until), setup_text::name(Name::Batches)};
    }
    [[nodiscard]] std::vector<ListRow> rows(const Snapshot& book) const override {
        auto seasons = ordered(book);
        std::stable_sort(seasons.begin(), seasons.end(),
                         [](const auto& a, const auto& b) { return a->from < b->from; });
        std::vector<ListRow> rows;
        for (const auto& season : seasons)
            rows.push_back(
                {season->id.uuid,
                 {nameOf(*season), setup_text::day(season->from), setup_text::day(season->until),
                  setup_text::count(static_cast<int>(startsIn(book, *season)))}});
        return rows;
    }
    [[nodiscard]] std::vector<Field> fields(const Snapshot&,
                                            const std::vector<Uuid>&) const override {
        return {{FieldKind::Text, setup_text::name(Name::Label), true},
                {FieldKind::Date, setup_text::name(Name::From), true},
                {FieldKind::Date, setup_text::name(Name::Until), true}};
    }
    /// A new one is the last one's days a year later.
    [[nodiscard]] FieldValues values(const Snapshot& book,
                                     const std::vector<Uuid>& ids) const override {
        if (const auto season = find(book, ids))
            return {fromText(season->label), fromDay(season->from), fromDay(season->until)};
        Ptr<Season> last;
        for (const auto& season : book.all<Season>())
            if (!last || season->until > last->until) last = season;
        const Day from = last ? yearsBefore(last->from, -1) : book.season().first;
        const Day until = last ? yearsBefore(last->until, -1) : book.season().last;
        return {fromText(freeLabel<Season>(book, yearNumber(until).toStdString())), fromDay(from),
                fromDay(until)};
    }
    [[nodiscard]] std::optional<FieldFault> fault(const Snapshot& book,
                                                  const Draft& draft) const override {
        if (auto taken = takenLabel(book, draft, Label)) return taken;
        const Season season = rowFrom(book, draft);
        if (season.until < season.from) return FieldFault{Until, setup_text::endsTooEarly()};
        if (season.until - season.from > kLongestSeason)
            return FieldFault{Until,
                              setup_text::seasonTooLong(static_cast<int>(kLongestSeason.count()))};
        if (const int lost = left(book, season); lost > 0)
            return FieldFault{Until, setup_text::batchesOutside(lost)};
        return std::nullopt;
    }
    [[nodiscard]] Result<ChangeSet> save(const Snapshot& book, const Draft& draft) const override {
        return saveRow(book, rowFrom(book, draft));
    }
    /// Its batches would not be seen again.
    [[nodiscard]] Result<ChangeSet> remove(const Snapshot& book,
                                           const std::vector<Uuid>& ids) const override {
        for (const auto& id : ids) {
            const auto season = book.find(Id<Season>{id});
            if (!season) continue;
            Season gone = *season;
            gone.until = gone.from - kLeadIn - Days{1};  // holds no day at all
            if (left(book, gone) > 0) return Error{"season " + season->label + ": has batches"};
        }
        if (ids.size() >= book.all<Season>().size()) return Error{"a book needs a season"};
        return RowKind::remove(book, ids);
    }

private:
    static Season rowFrom(const Snapshot& book, const Draft& draft) {
        Season season = rowOf(book, draft);
        season.label = toStdText(draft.values[Label]);
        season.from = *toDay(draft.values[From]);
        season.until = *toDay(draft.values[Until]);
        return season;
    }
    static std::int64_t startsIn(const Snapshot& book, const Season& season) {
        return std::count_if(book.all<Batch>().begin(), book.all<Batch>().end(),
                             [&](const auto& batch) {
                                 return batch->day >= season.from && batch->day <= season.until;
                             });
    }
    /// Batches that would stand in no season any more.
    static int left(const Snapshot& book, const Season& changed) {
        int lost = 0;
        for (const auto& batch : book.all<Batch>()) {
            bool before = false;
            bool after = holds(changed, batch->day);
            for (const auto& season : book.all<Season>()) {
                before = before || holds(*season, batch->day);
                after = after || (season->id != changed.id && holds(*season, batch->day));
            }
            lost += before && !after ? 1 : 0;
        }
        return lost;
    }
};

}  // namespace

std::unique_ptr<SetupKind> seasonKind() { return std::make_unique<SeasonKind>(); }

}  // namespace tenthday
