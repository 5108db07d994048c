#include <map>

#include "records/queen_verbs.h"
#include "records/relations.h"
#include "screen_text/queen_text.h"
#include "setup/row_kind.h"

namespace tenthday {
namespace {

using setup_text::Name;

enum CaughtField { To, From, PlaceNote, Breeder };
constexpr int kDaysColumn = 8;

/// One queen with her catch and where she is now.
struct Known {
    Ptr<Queen> queen;
    Ptr<CaughtQueen> caught;  ///< null: taken out of the book with its batch
    Ptr<QueenStay> stay;
};

QString labelOf(const Snapshot& book, std::optional<Id<Line>> id) {
    const auto line = id ? book.find(*id) : nullptr;
    return line ? QString::fromStdString(line->label) : QString();
}

/// Where her nuc stood; of a batch at a mating station, that.
QString matedIn(const Snapshot& book, const CaughtQueen& caught) {
    const auto batch = book.find(caught.batch);
    if (batch && batch->mating == Mating::Insemination) return {};
    if (batch && batch->mating == Mating::Station)
        for (const auto& stay : book.all<MatingStay>().of(batch->id.uuid))
            if (stay->yard) return yardName(book, *stay->yard);
    const auto side = caught.side ? book.find(*caught.side) : nullptr;
    const auto layout = side ? book.find(side->layout) : nullptr;
    const auto yard = layout ? yardOn(book, layout->box, caught.day) : std::nullopt;
    return yard ? yardName(book, *yard) : QString();
}

/// Of a queen left in her nuc, its name too.
QString placeOf(const Snapshot& book, const QueenStay& stay, const Ptr<CaughtQueen>& caught) {
    const auto side = stay.place == QueenPlace::Nuc && caught && caught->side
                          ? book.find(*caught->side)
                          : nullptr;
    const auto layout = side ? book.find(side->layout) : nullptr;
    const auto box = layout ? book.find(layout->box) : nullptr;
    return box ? queen_text::inNuc(QString::fromStdString(nucName(*box, *side)))
               : queen_text::place(stay.place);
}

class CaughtKind : public RowKind<Queen> {
public:
    [[nodiscard]] setup_text::Kind kind() const override { return setup_text::Kind::Caught; }
    [[nodiscard]] bool canAdd() const override { return false; }
    [[nodiscard]] bool takesMany() const override { return true; }

    [[nodiscard]] QStringList columns() const override {
        return {queen_text::number(),         setup_text::name(Name::Born),
                setup_text::name(Name::Line), queen_text::batch(),
                queen_text::matedIn(),        queen_text::caughtOn(),
                queen_text::where(),          queen_text::since(),
                queen_text::daysThere(),      setup_text::name(Name::Note)};
    }
    /// The newest catch first.
    [[nodiscard]] std::vector<ListRow> rows(const Snapshot& book) const override {
        auto all = known(book);
        std::stable_sort(all.begin(), all.end(), [](const Known& a, const Known& b) {
            const auto day = [](const Known& one) {
                return one.caught ? one.caught->day : kFirstDay;
            };
            return day(a) > day(b);
        });
        std::vector<ListRow> rows;
        for (const auto& one : all) rows.push_back(rowFor(book, one));
        return rows;
    }

    [[nodiscard]] std::vector<Field> fields(const Snapshot&,
                                            const std::vector<Uuid>&) const override {
        std::vector<FieldChoice> places;
        for (std::size_t i = 0; i < kTokenCount<QueenPlace>; ++i)
            places.push_back({queen_text::place(static_cast<QueenPlace>(i)), static_cast<int>(i)});
        return {{FieldKind::Choice, queen_text::moveTo(), true, places},
                {FieldKind::Date, queen_text::from(), true},
                {FieldKind::Text, setup_text::name(Name::Note)},
                {FieldKind::Date, setup_text::name(Name::BreederFrom)}};
    }
    /// Where she is; of several nothing is taken to be so. What is changed is a move of today.
    [[nodiscard]] FieldValues values(const Snapshot& book,
                                     const std::vector<Uuid>& ids) const override {
        const auto queen = find(book, ids);
        const auto stay = queen ? stayNow(book, queen->id) : nullptr;
        return {stay ? QVariant(static_cast<int>(stay->place)) : QVariant(),
                fromDay(stay ? stay->from : book.today()), stay ? fromText(stay->note) : QString(),
                fromDay(queen ? queen->breederFrom : std::nullopt)};
    }
    void follow(const Snapshot& book, Draft& draft, std::size_t field) const override {
        if (field == To && draft.changed(To) && !draft.changed(From)) {
            draft.values[From] = fromDay(book.today());
            draft.values[PlaceNote] = QString();
        }
    }
    [[nodiscard]] bool fits(const Draft& draft, std::size_t field) const override {
        return field != Breeder || !draft.isMany();
    }
    [[nodiscard]] Hint hint(const Snapshot& book, const Draft& draft,
                            std::size_t field) const override {
        const auto place = toPlace(draft.values[To]);
        if (!place) return {};
        if (field == PlaceNote) return {queen_text::noteHint(*place)};
        if (field != To) return {};
        if (*place == QueenPlace::Bank) return bankHint(book, draft);
        return {queen_text::caution(*place)};
    }
    [[nodiscard]] std::optional<FieldFault> fault(const Snapshot& book,
                                                  const Draft& draft) const override {
        const auto from = toDay(draft.values[From]);
        const bool toNuc = draft.changed(To) && toPlace(draft.values[To]) == QueenPlace::Nuc;
        for (const auto& one : known(book)) {
            if (std::find(draft.ids.begin(), draft.ids.end(), one.queen->id.uuid) ==
                draft.ids.end())
                continue;
            if (from && one.caught && *from < one.caught->day)
                return FieldFault{From, queen_text::beforeCatch(one.caught->day)};
            if (toNuc && (!one.caught || !one.caught->side))
                return FieldFault{To, queen_text::nucUnknown()};
        }
        return std::nullopt;
    }
    [[nodiscard]] Result<ChangeSet> save(const Snapshot& book, const Draft& draft) const override {
        const bool moved = draft.changed(To) || draft.changed(From) || draft.changed(PlaceNote);
        ChangeSet changes{Verb::EditRow, {}, {}, {}};
        if (moved) {
            std::vector<Id<Queen>> queens;
            for (const auto& id : draft.ids) queens.push_back({id});
            auto move =
                moveQueens(book, queens, *toPlace(draft.values[To]), *toDay(draft.values[From]),
                           toStdText(draft.values[PlaceNote]), [] { return idMaker().next(); });
            if (!move) return move;
            changes = std::move(move).value();
        }
        if (!draft.isMany() && draft.changed(Breeder))
            if (const auto queen = find(book, draft.ids)) {
                auto breeder = *queen;
                breeder.breederFrom = toDay(draft.values[Breeder]);
                changes.edit(queen, std::move(breeder));
            }
        return changes;
    }

private:
    static std::optional<QueenPlace> toPlace(const QVariant& value) {
        return value.isValid() ? std::optional(static_cast<QueenPlace>(value.toInt()))
                               : std::nullopt;
    }
    /// As of today; of one caught on a day to come, her first.
    static Ptr<QueenStay> stayNow(const Snapshot& book, Id<Queen> queen) {
        if (auto stay = stayOn(book, queen, book.today())) return stay;
        const auto stays = staysOf(book, queen);
        return stays.empty() ? nullptr : stays.front();
    }
    static std::vector<Known> known(const Snapshot& book) {
        std::map<Id<Queen>, Ptr<CaughtQueen>> catches;
        for (const auto& caught : book.all<CaughtQueen>()) catches[caught->queen] = caught;
        std::vector<Known> all;
        for (const auto& queen : ordered(book)) {
            const auto caught = catches.find(queen->id);
            if (caught == catches.end() && !isCaughtQueen(book, queen->id)) continue;
            all.push_back({queen, caught == catches.end() ? nullptr : caught->second,
                           stayNow(book, queen->id)});
        }
        return all;
    }
    static ListRow rowFor(const Snapshot& book, const Known& one) {
        const auto& [queen, caught, stay] = one;
        const auto batch = caught ? book.find(caught->batch) : nullptr;
        const bool banked = stay && stay->place == QueenPlace::Bank && stay->from <= book.today();
        const int days = banked ? static_cast<int>((book.today() - stay->from).count()) : 0;
        ListRow row{
            queen->id.uuid,
            {nameOf(*queen), queen->year ? setup_text::yearAndMark(*queen->year) : QString(),
             labelOf(book, queen->line), batch ? QString::fromStdString(batch->label) : QString(),
             caught ? matedIn(book, *caught) : QString(),
             caught ? setup_text::day(caught->day) : QString(),
             stay ? placeOf(book, *stay, caught) : QString(),
             stay ? setup_text::day(stay->from) : QString(),
             banked ? queen_text::daysInBank(days, book.facts()) : QString(),
             stay ? QString::fromStdString(stay->note) : QString()}};
        if (queen->year) row.mark = yearMark(*queen->year);
        row.markColumn = 1;
        row.tips.resize(row.cells.size());
        if (banked) row.tips[kDaysColumn] = queen_text::bankDaysTip(book.facts());
        return row;
    }
    /// How many there are once the chosen ones have come.
    static Hint bankHint(const Snapshot& book, const Draft& draft) {
        const auto day = toDay(draft.values[From]).value_or(book.today());
        int queens = queensInBank(book, day);
        for (const auto& id : draft.ids) {
            const auto stay = stayOn(book, Id<Queen>{id}, day);
            if (!stay || stay->place != QueenPlace::Bank) ++queens;
        }
        return {queen_text::bankHint(queens, book.facts()),
                {},
                queen_text::isBankFull(queens, book.facts())};
    }
};

}  // namespace

std::unique_ptr<SetupKind> caughtKind() { return std::make_unique<CaughtKind>(); }

}  // namespace tenthday
