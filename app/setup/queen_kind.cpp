#include "records/queen_verbs.h"
#include "setup/row_kind.h"

namespace tenthday {
namespace {

using setup_text::Name;

constexpr int kConfinedColumn = 3;

enum QueenField { Label, Born, Mother, InLine, From, Until, Larvae, LookedOn, Note };

class QueenKind : public RowKind<Queen> {
public:
    [[nodiscard]] setup_text::Kind kind() const override { return setup_text::Kind::Queens; }
    [[nodiscard]] QStringList columns() const override {
        return {setup_text::name(Name::Label),        setup_text::name(Name::Born),
                setup_text::name(Name::Line),         story_text::confined(),
                setup_text::name(Name::Mother),       setup_text::name(Name::BreederFrom),
                setup_text::name(Name::BreederUntil), setup_text::name(Name::Note)};
    }
    [[nodiscard]] std::vector<ListRow> rows(const Snapshot& book) const override {
        const auto seasons = breederSeasons(book);
        std::vector<ListRow> rows;
        for (const auto& queen : ordered(book)) {
            if (!isBreederQueen(book, *queen)) continue;
            const auto season =
                std::find_if(seasons.begin(), seasons.end(),
                             [&](const auto& other) { return other.queen == queen; });
            const bool used = season != seasons.end();
            const auto mother = queen->mother ? book.find(*queen->mother) : nullptr;
            const auto day = [](std::optional<Day> d) {
                return d ? setup_text::day(*d) : QString();
            };
            ListRow row{
                queen->id.uuid,
                {nameOf(*queen), queen->year ? setup_text::yearAndMark(*queen->year) : QString(),
                 lineOf(book, *queen), used ? story_text::usesOf(*season, book.today()) : QString(),
                 mother ? nameOf(*mother) : QString(), day(queen->breederFrom),
                 day(queen->breederUntil), QString::fromStdString(queen->note)}};
            if (queen->year) row.mark = yearMark(*queen->year);
            row.markColumn = 1;
            row.tips.resize(row.cells.size());
            if (used) row.tips[kConfinedColumn] = story_text::allUses(*season);
            rows.push_back(row);
        }
        return rows;
    }
    [[nodiscard]] std::vector<Field> fields(const Snapshot& book,
                                            const std::vector<Uuid>& ids) const override {
        auto mothers = choicesOf<Queen>(book);
        const auto self = find(book, ids);
        std::erase_if(mothers, [&](const auto& choice) {
            const auto queen = book.find(*toId<Queen>(choice.value));
            const bool isHers = self && queen->id == self->mother;
            return queen == self || (!isBreederQueen(book, *queen) && !isHers);
        });
        mothers.insert(mothers.begin(), {setup_text::unknown(), QString()});
        return {{FieldKind::Text, setup_text::name(Name::Label), true},
                {FieldKind::Number, setup_text::name(Name::Born), false, {}, 1950, 2199},
                {FieldKind::Choice, setup_text::name(Name::Mother), false, mothers},
                {FieldKind::Text, setup_text::name(Name::Line), false, choicesOf<Line>(book)},
                {FieldKind::Date, setup_text::name(Name::BreederFrom)},
                {FieldKind::Date, setup_text::name(Name::BreederUntil)},
                {FieldKind::Choice, story_text::larvaeHead(), false, larvaeChoices()},
                {FieldKind::Date, story_text::larvaeDay()},
                {FieldKind::Note, setup_text::name(Name::Note)}};
    }
    [[nodiscard]] FieldValues values(const Snapshot& book,
                                     const std::vector<Uuid>& ids) const override {
        const auto row = find(book, ids);
        Queen queen;
        queen.breederFrom = book.today();
        if (row) queen = *row;
        const auto note = row ? larvaeNoteBy(book, row->id, book.today()) : nullptr;
        return {fromText(queen.label),
                queen.year ? QVariant(int{*queen.year}) : QVariant(),
                fromId(queen.mother),
                lineOf(book, queen),
                fromDay(queen.breederFrom),
                fromDay(queen.breederUntil),
                note ? QVariant(static_cast<int>(note->kind)) : QVariant(kNotLooked),
                note ? fromDay(note->day) : QVariant(),
                fromText(queen.note)};
    }
    void follow(const Snapshot& book, Draft& draft, std::size_t field) const override {
        // What is seen anew is seen today, unless a day is given.
        if (field == Larvae && draft.changed(Larvae) && !draft.changed(LookedOn))
            draft.values[LookedOn] = fromDay(book.today());
        const auto mother = toId<Queen>(draft.values[Mother]);
        if (field != Mother || !mother || !draft.values[InLine].toString().isEmpty()) return;
        if (const auto row = book.find(*mother)) draft.values[InLine] = lineOf(book, *row);
    }
    [[nodiscard]] Hint hint(const Snapshot&, const Draft& draft, std::size_t field) const override {
        const auto year = draft.values[Born].toInt();
        if (field == Born && year >= 1950) return {setup_text::markHint(yearMark(year))};
        if (field == InLine) return {setup_text::lineHint()};
        if (field == Larvae) return {story_text::larvaeHint()};
        return {};
    }
    [[nodiscard]] std::optional<FieldFault> fault(const Snapshot& book,
                                                  const Draft& draft) const override {
        if (auto taken = takenLabel(book, draft, Label)) return taken;
        const auto from = toDay(draft.values[From]);
        const auto until = toDay(draft.values[Until]);
        if (from && until && *until < *from) return FieldFault{Until, setup_text::endsTooEarly()};
        return std::nullopt;
    }
    [[nodiscard]] Result<ChangeSet> save(const Snapshot& book, const Draft& draft) const override {
        const auto& values = draft.values;
        Queen queen = rowOf(book, draft);
        queen.label = toStdText(values[Label]);
        queen.year.reset();
        if (values[Born].isValid()) queen.year = values[Born].toInt();
        queen.mother = toId<Queen>(values[Mother]);
        queen.breederFrom = toDay(values[From]);
        queen.breederUntil = toDay(values[Until]);
        queen.note = toStdText(values[Note]);
        auto changes = saveQueen(book, queen, toStdText(values[InLine]), newId<Line>());
        if (!changes || draft.isNew() || (!draft.changed(Larvae) && !draft.changed(LookedOn)))
            return changes;
        const auto kind = values[Larvae].toInt();
        if (kind == kNotLooked) {  // what stands in the form was not so: it is taken back
            if (const auto shown = larvaeNoteBy(book, queen.id, book.today()))
                changes.value().erase(shown);
            return changes;
        }
        if (!toDay(values[LookedOn])) return changes;
        auto note = noteLarvae(book, queen.id, *toDay(values[LookedOn]),
                               static_cast<QueenNoteKind>(kind), newId<QueenNote>());
        if (!note) return note;
        for (auto& row : note.value().rows) changes.value().rows.push_back(std::move(row));
        return changes;
    }
    /// Of a new queen nothing was seen yet.
    [[nodiscard]] bool fits(const Draft& draft, std::size_t field) const override {
        return !draft.isNew() || (field != Larvae && field != LookedOn);
    }
    [[nodiscard]] bool hasStory() const override { return true; }
    [[nodiscard]] Story story(const Outlook& outlook, const Uuid& id) const override {
        return story_text::breeder(outlook.snapshot, {id});
    }
    [[nodiscard]] bool canRetire() const override { return true; }
    [[nodiscard]] Result<ChangeSet> retire(const Snapshot& book, const std::vector<Uuid>& ids,
                                           Day from) const override {
        return retireBreeder(book, {ids.front()}, from);
    }

private:
    static constexpr int kNotLooked = -1;
    static std::vector<FieldChoice> larvaeChoices() {
        std::vector<FieldChoice> choices{{story_text::notLooked(), kNotLooked}};
        for (const auto kind : {QueenNoteKind::Larvae, QueenNoteKind::NoLarvae})
            choices.push_back({story_text::larvaeSeen(kind), static_cast<int>(kind)});
        return choices;
    }
    static QString lineOf(const Snapshot& book, const Queen& queen) {
        const auto line = queen.line ? book.find(*queen.line) : nullptr;
        return line ? QString::fromStdString(line->label) : QString();
    }
};

}  // namespace

std::unique_ptr<SetupKind> queenKind() { return std::make_unique<QueenKind>(); }

}  // namespace tenthday
