#include "records/yard_roles.h"
#include "screen_text/chart_text.h"
#include "screen_text/fact_text.h"
#include "setup/row_kind.h"

namespace tenthday {
namespace {

using setup_text::Name;

enum BuilderField { Label, Kind, InYard, OpenRoom, SealedRoom, From, Until, Note };

/// The trade number that bounds a builder whose own room is not given; an incubator has none.
std::optional<Fact> defaultRoom(tenthday::BuilderKind kind) {
    switch (kind) {
        case tenthday::BuilderKind::Starter:
            return Fact::RoomStarter;
        case tenthday::BuilderKind::Finisher:
        case tenthday::BuilderKind::StarterFinisher:
            return Fact::RoomFinisher;
        default:
            return std::nullopt;
    }
}

class BuilderSetup : public RowKind<Builder> {
public:
    [[nodiscard]] setup_text::Kind kind() const override { return setup_text::Kind::Builders; }
    [[nodiscard]] QStringList columns() const override {
        return {setup_text::name(Name::Label), setup_text::name(Name::Kind),
                setup_text::name(Name::Yard),  setup_text::name(Name::OpenRoom),
                setup_text::name(Name::From),  setup_text::name(Name::Until),
                setup_text::name(Name::Note)};
    }
    [[nodiscard]] std::vector<ListRow> rows(const Snapshot& book) const override {
        std::vector<ListRow> rows;
        for (const auto& builder : ordered(book)) {
            rows.push_back({builder->id.uuid,
                            {nameOf(*builder), chart_text::builderKind(builder->kind),
                             yardName(book, builder->yard), roomWords(book, *builder),
                             setup_text::day(builder->from),
                             builder->until ? setup_text::day(*builder->until) : QString(),
                             QString::fromStdString(builder->note)}});
        }
        return rows;
    }
    [[nodiscard]] std::vector<Field> fields(const Snapshot& book,
                                            const std::vector<Uuid>&) const override {
        std::vector<FieldChoice> kinds;
        for (std::size_t i = 0; i < kTokenCount<tenthday::BuilderKind>; ++i)
            kinds.push_back({chart_text::builderKind(static_cast<tenthday::BuilderKind>(i)),
                             static_cast<int>(i)});
        const auto unit = setup_text::cellsUnit();
        return {{FieldKind::Text, setup_text::name(Name::Label), true},
                {FieldKind::Choice, setup_text::name(Name::Kind), true, kinds},
                {FieldKind::Choice, setup_text::name(Name::Yard), true, choicesOf<Yard>(book)},
                {FieldKind::Number, setup_text::name(Name::OpenRoom), false, {}, 0, 9999, unit},
                {FieldKind::Number, setup_text::name(Name::SealedRoom), false, {}, 0, 9999, unit},
                {FieldKind::Date, setup_text::name(Name::From), true},
                {FieldKind::Date, setup_text::name(Name::Until)},
                {FieldKind::Note, setup_text::name(Name::Note)}};
    }
    [[nodiscard]] FieldValues values(const Snapshot& book,
                                     const std::vector<Uuid>& ids) const override {
        const auto row = find(book, ids);
        const Builder builder = row ? *row : likely(book);
        return {fromText(builder.label),
                static_cast<int>(builder.kind),
                fromId(std::optional(builder.yard)),
                fromCount(builder.openRoom),
                fromCount(builder.sealedRoom),
                fromDay(builder.from),
                fromDay(builder.until),
                fromText(builder.note)};
    }
    [[nodiscard]] Hint hint(const Snapshot& book, const Draft& draft,
                            std::size_t field) const override {
        const auto& facts = book.facts();
        const auto fact =
            defaultRoom(static_cast<tenthday::BuilderKind>(draft.values[Kind].toInt()));
        if (field == OpenRoom && fact)
            return {setup_text::emptyIs(facts, *fact), fact_text::sources(facts.entry(*fact))};
        if (field == OpenRoom || field == SealedRoom) return {setup_text::emptyIsUnbounded()};
        if (field == Until) return {setup_text::emptyUntil()};
        if (field == InYard && book.all<Yard>().empty()) return {setup_text::yardNeeded()};
        return {};
    }
    [[nodiscard]] std::optional<FieldFault> fault(const Snapshot& book,
                                                  const Draft& draft) const override {
        if (auto taken = takenLabel(book, draft, Label)) return taken;
        return endsTooEarly(draft, From, Until);
    }
    [[nodiscard]] Result<ChangeSet> save(const Snapshot& book, const Draft& draft) const override {
        const auto& values = draft.values;
        Builder builder = rowOf(book, draft);
        builder.label = toStdText(values[Label]);
        builder.kind = static_cast<tenthday::BuilderKind>(values[Kind].toInt());
        builder.yard = toId<Yard>(values[InYard]).value_or(Id<Yard>{});
        builder.openRoom = toCount<Cells>(values[OpenRoom]);
        builder.sealedRoom = toCount<Cells>(values[SealedRoom]);
        builder.from = *toDay(values[From]);
        builder.until = toDay(values[Until]);
        builder.note = toStdText(values[Note]);
        return saveRow(book, builder);
    }
    [[nodiscard]] bool hasStory() const override { return true; }
    [[nodiscard]] Story story(const Outlook& outlook, const Uuid& id) const override {
        return story_text::builder(outlook, {id});
    }
    [[nodiscard]] bool canRetire() const override { return true; }
    [[nodiscard]] Result<ChangeSet> retire(const Snapshot& book, const std::vector<Uuid>& ids,
                                           Day from) const override {
        return retireBuilder(book, {ids.front()}, from);
    }

private:
    static QString roomWords(const Snapshot& book, const Builder& builder) {
        if (builder.openRoom) return chart_text::number(builder.openRoom->value);
        const auto fact = defaultRoom(builder.kind);
        return fact ? fact_text::value(book.facts().entry(*fact), book.facts()[*fact]) : QString();
    }
    static Builder likely(const Snapshot& book) {
        Builder builder;
        builder.from = book.today();
        const auto& yards = book.all<Yard>();
        for (const auto& yard : yards)
            if (yards.size() == 1 || hasRole(yard->roles, "builder")) builder.yard = yard->id;
        return builder;
    }
};

}  // namespace

std::unique_ptr<SetupKind> builderKind() { return std::make_unique<BuilderSetup>(); }

}  // namespace tenthday
