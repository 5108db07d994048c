#include "plan/plan_ask.h"

#include "screen_text/plan_text.h"

namespace tenthday {
namespace {

constexpr int kMostGrafts = 999;

ProposedBatch changed(const ProposedBatch& before, const FieldValues& values) {
    auto batch = before;
    if (const auto day = toDay(values[0])) batch = graftedOn(batch, *day);
    for (std::size_t i = 0; i < batch.bars.size(); ++i)
        if (values[i + 1].typeId() == QMetaType::Int) batch.bars[i].grafts = values[i + 1].toInt();
    return batch;
}

}  // namespace

ProposedBatch graftedOn(ProposedBatch batch, Day day) {
    const auto by = day - batch.graft;
    batch.graft = day;
    batch.cellsDay += by;
    batch.ready += by;
    return batch;
}

FieldsAsked askProposal(const Outlook& outlook, const ProposedBatch& batch,
                        std::function<void(const ProposedBatch&)> keep) {
    FieldsAsked asked;
    asked.head = plan_text::changeHead(batch.graft);
    asked.saveWord = plan_text::changeDone();
    asked.fields = {{FieldKind::Date, plan_text::graftDay(), true}};
    asked.values = {fromDay(batch.graft)};
    for (const auto& bar : batch.bars) {
        Field grafts{FieldKind::Number, plan_text::graftsOf(outlook, bar, batch.bars.size() == 1),
                     true};
        grafts.low = 1;
        grafts.high = kMostGrafts;
        grafts.unit = plan_text::graftsUnit().trimmed();
        asked.fields.push_back(grafts);
        asked.values.emplace_back(bar.grafts);
    }
    asked.hint = [last = asked.fields.size() - 1](const FieldValues&, std::size_t field) {
        return field == last ? Hint{plan_text::changeHint()} : Hint{};
    };
    asked.save = [batch, keep](const FieldValues& values) {
        keep(changed(batch, values));
        return QString();
    };
    return asked;
}

}  // namespace tenthday
