#include "biology/drones.h"
#include "records/yard_roles.h"
#include "setup/row_kind.h"

namespace tenthday {
namespace {

using setup_text::Name;

enum DronesField { InYard, On, Stage, Colonies, Note };

constexpr int kMostColonies = 999;  // as the book takes
constexpr int kMatureColumn = 3;

std::optional<DroneStage> toStage(const QVariant& value) {
    return value.isValid() ? std::optional(static_cast<DroneStage>(value.toInt())) : std::nullopt;
}

class DronesKind : public RowKind<DroneSighting> {
public:
    [[nodiscard]] setup_text::Kind kind() const override { return setup_text::Kind::Drones; }
    [[nodiscard]] QStringList columns() const override {
        return {setup_text::name(Name::Day),      setup_text::name(Name::Yard),
                setup_text::name(Name::Stage),    setup_text::name(Name::MatureBy),
                setup_text::name(Name::Colonies), setup_text::name(Name::Note)};
    }
    [[nodiscard]] std::vector<ListRow> rows(const Snapshot& book) const override {
        const auto& facts = book.facts();
        std::vector<ListRow> rows;
        for (const auto& seen : ordered(book)) {
            ListRow row{seen->id.uuid,
                        {setup_text::day(seen->day), yardName(book, seen->yard),
                         yard_text::droneStage(seen->stage),
                         setup_text::day(dronesMatureBy(seen->stage, seen->day, facts)),
                         seen->colonies ? setup_text::count(*seen->colonies) : QString(),
                         QString::fromStdString(seen->note)}};
            row.tips.resize(row.cells.size());
            row.tips[kMatureColumn] =
                yard_text::whyMature(seen->stage, facts) + u'\n' + yard_text::matureSources(facts);
            rows.push_back(std::move(row));
        }
        return rows;
    }
    [[nodiscard]] std::vector<Field> fields(const Snapshot& book,
                                            const std::vector<Uuid>&) const override {
        std::vector<FieldChoice> stages;
        for (std::size_t i = 0; i < kTokenCount<DroneStage>; ++i)
            stages.push_back(
                {yard_text::droneStage(static_cast<DroneStage>(i)), static_cast<int>(i)});
        return {{FieldKind::Choice, setup_text::name(Name::Yard), true, choicesOf<Yard>(book)},
                {FieldKind::Date, setup_text::name(Name::Day), true},
                {FieldKind::Choice, setup_text::name(Name::Stage), true, stages},
                {FieldKind::Number, setup_text::name(Name::Colonies), false, {}, 0, kMostColonies},
                {FieldKind::Note, setup_text::name(Name::Note)}};
    }
    /// Of a new one the stage is not guessed: the first graft hangs on it.
    [[nodiscard]] FieldValues values(const Snapshot& book,
                                     const std::vector<Uuid>& ids) const override {
        const auto seen = find(book, ids);
        if (!seen)
            return {fromId(likelyYard(book)), fromDay(book.today()), QVariant(), QVariant(),
                    QString()};
        return {fromId(std::optional(seen->yard)), fromDay(seen->day),
                static_cast<int>(seen->stage),
                seen->colonies ? QVariant(int{*seen->colonies}) : QVariant(), fromText(seen->note)};
    }
    [[nodiscard]] Hint hint(const Snapshot& book, const Draft& draft,
                            std::size_t field) const override {
        if (field == InYard && book.all<Yard>().empty()) return {setup_text::yardNeeded()};
        const auto stage = toStage(draft.values[Stage]);
        const auto day = toDay(draft.values[On]);
        if (field != Stage || !stage || !day) return {};
        const auto& facts = book.facts();
        return {yard_text::matureBy(dronesMatureBy(*stage, *day, facts)) + u'\n' +
                    yard_text::whyMature(*stage, facts),
                yard_text::matureSources(facts)};
    }
    [[nodiscard]] Result<ChangeSet> save(const Snapshot& book, const Draft& draft) const override {
        const auto& values = draft.values;
        DroneSighting seen = rowOf(book, draft);
        seen.yard = toId<Yard>(values[InYard]).value_or(Id<Yard>{});
        seen.day = *toDay(values[On]);
        seen.stage = *toStage(values[Stage]);
        seen.colonies = values[Colonies].isValid()
                            ? std::optional<std::int32_t>(values[Colonies].toInt())
                            : std::nullopt;
        seen.note = toStdText(values[Note]);
        return saveRow(book, seen);
    }

private:
    /// Where drones were seen last; else a yard of drone colonies; else the only one.
    static std::optional<Id<Yard>> likelyYard(const Snapshot& book) {
        if (const auto all = ordered(book); !all.empty()) return all.back()->yard;
        for (const auto& yard : book.all<Yard>())
            if (book.all<Yard>().size() == 1 || hasRole(yard->roles, "drone")) return yard->id;
        return std::nullopt;
    }
};

}  // namespace

std::unique_ptr<SetupKind> dronesKind() { return std::make_unique<DronesKind>(); }

}  // namespace tenthday
