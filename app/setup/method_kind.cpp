#include "screen_text/chart_text.h"
#include "screen_text/fact_text.h"
#include "setup/row_kind.h"

namespace tenthday {
namespace {

using setup_text::Name;

enum MethodField { Label, Steps };

std::vector<Ptr<Step>> stepsOf(const Snapshot& book, Id<Method> method) {
    const auto rows = book.all<Step>().of(method.uuid);
    std::vector<Ptr<Step>> steps(rows.begin(), rows.end());
    std::sort(steps.begin(), steps.end(),
              [](const auto& a, const auto& b) { return a->step < b->step; });
    return steps;
}

int batchesOf(const Snapshot& book, Id<Method> method) {
    const auto& batches = book.all<Batch>();
    return static_cast<int>(std::count_if(batches.begin(), batches.end(),
                                          [&](const auto& b) { return b->method == method; }));
}

class MethodKind : public RowKind<Method> {
public:
    [[nodiscard]] setup_text::Kind kind() const override { return setup_text::Kind::Methods; }
    [[nodiscard]] QStringList columns() const override {
        return {setup_text::name(Name::Label), setup_text::name(Name::Steps),
                setup_text::name(Name::UsedBy)};
    }
    [[nodiscard]] std::vector<ListRow> rows(const Snapshot& book) const override {
        std::vector<ListRow> rows;
        for (const auto& method : ordered(book)) {
            QStringList steps;
            for (const auto& step : stepsOf(book, method->id))
                steps += chart_text::builderKind(step->where) + u' ' +
                         setup_text::daySpan(step->fromHour, step->toHour);
            const int used = batchesOf(book, method->id);
            rows.push_back({method->id.uuid,
                            {nameOf(*method), steps.join(QStringLiteral("; ")),
                             used > 0 ? setup_text::batches(used) : QString()}});
        }
        return rows;
    }
    [[nodiscard]] std::vector<Field> fields(const Snapshot&,
                                            const std::vector<Uuid>&) const override {
        return {{FieldKind::Text, setup_text::name(Name::Label), true},
                {FieldKind::Steps, setup_text::name(Name::Steps)}};
    }
    [[nodiscard]] FieldValues values(const Snapshot& book,
                                     const std::vector<Uuid>& ids) const override {
        const auto row = find(book, ids);
        QVariantList steps;
        if (row)
            for (const auto& step : stepsOf(book, row->id))
                steps.append(QVariant(QVariantList{static_cast<int>(step->where), step->fromHour,
                                                   step->toHour, step->restDays}));
        else
            steps.append(QVariant(QVariantList{static_cast<int>(BuilderKind::StarterFinisher), 0,
                                               static_cast<int>(book.facts()[Fact::RipeH]), 1}));
        return {row ? nameOf(*row) : QString(), steps};
    }
    [[nodiscard]] Hint hint(const Snapshot& book, const Draft& draft,
                            std::size_t field) const override {
        if (field == Label) {
            const int used = draft.isNew() ? 0 : batchesOf(book, {draft.ids.front()});
            return used > 0 ? Hint{setup_text::copyHint(used)} : Hint{};
        }
        const auto& facts = book.facts();
        QStringList lines;
        QStringList sources;
        for (const auto& [what, fact] :
             {std::pair{setup_text::starterStep(), Fact::StarterH},
              std::pair{setup_text::incubatorStep(), Fact::IncubatorFromH},
              std::pair{setup_text::ripeStep(), Fact::RipeH}}) {
            lines += setup_text::usual(what, facts, fact);
            sources += fact_text::sources(facts.entry(fact));
        }
        sources.removeDuplicates();
        return {lines.join(u'\n'), sources.join(u'\n')};
    }
    [[nodiscard]] std::optional<FieldFault> fault(const Snapshot& book,
                                                  const Draft& draft) const override {
        if (auto taken = takenLabel(book, draft, Label)) return taken;
        const auto steps = draft.values[Steps].toList();
        for (qsizetype i = 0; i < steps.size(); ++i) {
            const auto step = steps[i].toList();
            if (step.value(2).toInt() <= step.value(1).toInt())
                return FieldFault{Steps, setup_text::endsTooEarly()};
            if (i > 0 && step.value(1).toInt() < steps[i - 1].toList().value(2).toInt())
                return FieldFault{Steps, setup_text::stepsOverlap(static_cast<int>(i) + 1)};
        }
        return std::nullopt;
    }
    [[nodiscard]] Result<ChangeSet> save(const Snapshot& book, const Draft& draft) const override {
        Method method = rowOf(book, draft);
        method.label = toStdText(draft.values[Label]);
        std::vector<Step> steps;
        for (const auto& value : draft.values[Steps].toList()) {
            const auto parts = value.toList();
            Step step;
            step.where = static_cast<BuilderKind>(parts.value(0).toInt());
            step.fromHour = parts.value(1).toInt();
            step.toHour = parts.value(2).toInt();
            step.restDays = parts.value(3).toInt();
            steps.push_back(step);
        }
        return saveMethod(book, method, steps, [] { return idMaker().next(); });
    }
};

}  // namespace

std::unique_ptr<SetupKind> methodKind() { return std::make_unique<MethodKind>(); }

}  // namespace tenthday
