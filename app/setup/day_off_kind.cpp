#include "setup/row_kind.h"

namespace tenthday {
namespace {

using setup_text::Name;

enum DayOffField { From, Until, Note };

class DayOffKind : public RowKind<DayOff> {
public:
    [[nodiscard]] setup_text::Kind kind() const override { return setup_text::Kind::DaysOff; }
    [[nodiscard]] QStringList columns() const override {
        return {setup_text::name(Name::From), setup_text::name(Name::Until),
                setup_text::name(Name::Days), setup_text::name(Name::Note)};
    }
    [[nodiscard]] std::vector<ListRow> rows(const Snapshot& book) const override {
        std::vector<ListRow> rows;
        for (const auto& off : ordered(book))
            rows.push_back({off->id.uuid,
                            {setup_text::day(off->from), setup_text::day(off->until),
                             QString::number((off->until - off->from).count() + 1),
                             QString::fromStdString(off->note)}});
        return rows;
    }
    [[nodiscard]] std::vector<Field> fields(const Snapshot&,
                                            const std::vector<Uuid>&) const override {
        return {{FieldKind::Date, setup_text::name(Name::From), true},
                {FieldKind::Date, setup_text::name(Name::Until), true},
                {FieldKind::Note, setup_text::name(Name::Note)}};
    }
    [[nodiscard]] FieldValues values(const Snapshot& book,
                                     const std::vector<Uuid>& ids) const override {
        const auto off = find(book, ids);
        if (!off) return {fromDay(book.today()), fromDay(book.today()), QString()};
        return {fromDay(off->from), fromDay(off->until), fromText(off->note)};
    }
    void follow(const Snapshot&, Draft& draft, std::size_t field) const override {
        if (field == From) untilNotBefore(draft, From, Until);
    }
    [[nodiscard]] std::optional<FieldFault> fault(const Snapshot&,
                                                  const Draft& draft) const override {
        return endsTooEarly(draft, From, Until);
    }
    [[nodiscard]] Result<ChangeSet> save(const Snapshot& book, const Draft& draft) const override {
        DayOff off = rowOf(book, draft);
        off.from = *toDay(draft.values[From]);
        off.until = *toDay(draft.values[Until]);
        off.note = toStdText(draft.values[Note]);
        return saveRow(book, off);
    }
};

}  // namespace

std::unique_ptr<SetupKind> dayOffKind() { return std::make_unique<DayOffKind>(); }

}  // namespace tenthday
