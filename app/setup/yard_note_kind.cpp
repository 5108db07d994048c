#include "setup/row_kind.h"

namespace tenthday {
namespace {

using setup_text::Name;

enum YardNoteField { InYard, What, From, Until, Note };

class YardNotes : public RowKind<YardNote> {
public:
    [[nodiscard]] setup_text::Kind kind() const override { return setup_text::Kind::YardNotes; }
    [[nodiscard]] QStringList columns() const override {
        return {setup_text::name(Name::From), setup_text::name(Name::Until),
                setup_text::name(Name::Yard), setup_text::name(Name::Kind),
                setup_text::name(Name::Days), setup_text::name(Name::Note)};
    }
    [[nodiscard]] std::vector<ListRow> rows(const Snapshot& book) const override {
        std::vector<ListRow> rows;
        for (const auto& note : ordered(book)) {
            const auto days = static_cast<int>((note->until - note->from).count()) + 1;
            rows.push_back({note->id.uuid,
                            {setup_text::day(note->from), setup_text::day(note->until),
                             yardName(book, note->yard), yard_text::noteKind(note->kind),
                             setup_text::count(days), QString::fromStdString(note->note)}});
        }
        return rows;
    }
    [[nodiscard]] std::vector<Field> fields(const Snapshot& book,
                                            const std::vector<Uuid>&) const override {
        std::vector<FieldChoice> kinds;
        for (std::size_t i = 0; i < kTokenCount<YardNoteKind>; ++i)
            kinds.push_back(
                {yard_text::noteKind(static_cast<YardNoteKind>(i)), static_cast<int>(i)});
        return {{FieldKind::Choice, setup_text::name(Name::Yard), true, choicesOf<Yard>(book)},
                {FieldKind::Choice, setup_text::name(Name::Kind), true, kinds},
                {FieldKind::Date, setup_text::name(Name::From), true},
                {FieldKind::Date, setup_text::name(Name::Until), true},
                {FieldKind::Note, setup_text::name(Name::Note)}};
    }
    /// Of a new one the kind is not guessed.
    [[nodiscard]] FieldValues values(const Snapshot& book,
                                     const std::vector<Uuid>& ids) const override {
        const auto note = find(book, ids);
        if (!note)
            return {fromId(likelyYard(book)), QVariant(), fromDay(book.today()),
                    fromDay(book.today()), QString()};
        return {fromId(std::optional(note->yard)), static_cast<int>(note->kind),
                fromDay(note->from), fromDay(note->until), fromText(note->note)};
    }
    void follow(const Snapshot&, Draft& draft, std::size_t field) const override {
        if (field == From) untilNotBefore(draft, From, Until);
    }
    [[nodiscard]] Hint hint(const Snapshot& book, const Draft&, std::size_t field) const override {
        if (field == InYard && book.all<Yard>().empty()) return {setup_text::yardNeeded()};
        if (field == Until) return {yard_text::notOverHint()};
        return {};
    }
    [[nodiscard]] std::optional<FieldFault> fault(const Snapshot&,
                                                  const Draft& draft) const override {
        return endsTooEarly(draft, From, Until);
    }
    [[nodiscard]] Result<ChangeSet> save(const Snapshot& book, const Draft& draft) const override {
        const auto& values = draft.values;
        YardNote note = rowOf(book, draft);
        note.yard = toId<Yard>(values[InYard]).value_or(Id<Yard>{});
        note.kind = static_cast<YardNoteKind>(values[What].toInt());
        note.from = *toDay(values[From]);
        note.until = *toDay(values[Until]);
        note.note = toStdText(values[Note]);
        return saveRow(book, note);
    }

private:
    /// Where something was noted last; else the only yard.
    static std::optional<Id<Yard>> likelyYard(const Snapshot& book) {
        if (const auto all = ordered(book); !all.empty()) return all.back()->yard;
        return book.all<Yard>().size() == 1 ? std::optional((*book.all<Yard>().begin())->id)
                                            : std::nullopt;
    }
};

}  // namespace

std::unique_ptr<SetupKind> yardNoteKind() { return std::make_unique<YardNotes>(); }

}  // namespace tenthday
