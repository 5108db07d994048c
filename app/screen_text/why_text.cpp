#include "screen_text/why_text.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

#include "facts/sources.h"
#include "outlook/plan_of.h"
#include "screen_text/batch_text.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/fact_text.h"
#include "screen_text/why_rules.h"
#include "screen_text/words.h"

namespace tenthday::why_text {
namespace {

using Kind = Reason::Kind;

QString plain(const std::string& text) { return QString::fromStdString(text); }
QString withUnit(const FactEntry& entry, double value) {
    return Words::tr("%1 %2").arg(fact_text::value(entry, value), fact_text::unit(entry));
}

QString momentOfBatch(const Batch& batch) { return dayAndClock(momentOf(batch.day, batch.hour)); }

Input startOf(const Batch& batch) {
    const auto name = batch.start == Start::Graft         ? Words::tr("Day of the graft")
                      : batch.start == Start::Confined    ? Words::tr("Breeder queen confined on")
                      : batch.start == Start::SealedFound ? Words::tr("Found sealed on")
                      : batch.start == Start::Ripe        ? Words::tr("Ripe cells came on")
                                                          : Words::tr("Virgins came on");
    auto input = setByYou(name, momentOfBatch(batch));
    if (!batch.hour) input.from = Words::tr("set by you; without an hour noon is taken");
    return input;
}

std::optional<OutcomeKind> outcomeOf(Event event) {
    switch (event) {
        case Event::Graft:
            return OutcomeKind::Graft;
        case Event::TakeCount:
            return OutcomeKind::TakeCount;
        case Event::Sealed:
            return OutcomeKind::Sealed;
        case Event::Ripe:
            return OutcomeKind::Ripe;
        case Event::Emergence:
            return OutcomeKind::Emergence;
        default:
            return std::nullopt;
    }
}

Input outcome(const Told& told) {
    Ptr<Outcome> first;
    for (const auto& row : told.outlook.snapshot.all<Outcome>().of(told.batch.batch->id.uuid))
        if (row->kind == outcomeOf(told.reason.event) && !row->side &&
            (!first || row->day < first->day))
            first = row;
    if (!first) return {};
    auto value =
        first->hour ? dayAndClock(momentOf(first->day, first->hour)) : weekdayAndDay(first->day);
    if (first->count)
        value = Words::tr("%1: %2").arg(value, chart_text::number(first->count->value));
    return seen(Words::tr("Recorded on"), value);
}

Input stepInput(const Told& told) {
    const auto method = told.outlook.snapshot.find(told.batch.batch->method);
    for (const auto& step : told.outlook.snapshot.all<Step>().of(told.batch.batch->method.uuid))
        if (step->where == BuilderKind::Starter)
            return {
                Words::tr("Step %1, %2")
                    .arg(chart_text::number(step->step), chart_text::builderKind(step->where)),
                Words::tr("until %1 after the graft").arg(hours(step->toHour)),
                Words::tr("of the method \"%1\"").arg(method ? plain(method->label) : QString()),
                {}};
    return {};
}

Input larvae(const Batch& batch) {
    const double from = batch.larvaFromH.value_or(batch.larvaToH.value_or(0));
    const double to = batch.larvaToH.value_or(from);
    return setByYou(
        Words::tr("Age of the larvae since hatching"),
        from == to ? hours(from) : Words::tr("%1 to %2 h").arg(decimal(from), decimal(to)));
}

/// An outcome tells the cells, or they are reckoned from what was or will be grafted.
Input cells(const Told& told) {
    bool counted = false;
    for (const auto& row : told.outlook.snapshot.all<Outcome>().of(told.batch.batch->id.uuid))
        counted = counted || (row->count && row->kind != OutcomeKind::Graft);
    return {Words::tr("Living cells in the fullest box"),
            decimal(std::round(told.reason.hours * 10) / 10),
            counted ? Words::tr("from your count") : Words::tr("planned"),
            {}};
}

std::vector<Input> inputsOf(const Told& told) {
    const auto& reason = told.reason;
    const auto& batch = *told.batch.batch;
    std::vector<Input> inputs;
    if (reason.kind == Kind::Entered || reason.kind == Kind::ReckonedBack)
        inputs.push_back(startOf(batch));
    if (reason.kind == Kind::Observed) inputs.push_back(outcome(told));
    if (reason.kind == Kind::Method) inputs.push_back(stepInput(told));
    if (reason.from) {
        const auto* from = told.batch.timeline.find(*reason.from);
        inputs.push_back({chart_text::event(*reason.from),
                          dayAndClock(from ? from->likely : told.batch.timeline.graft),
                          Words::tr("see below"),
                          {}});
    }
    if (reason.kind == Kind::FirstOfMany) inputs.push_back(cells(told));
    if (reason.event == Event::Catch) inputs.push_back(catchRule(told.outlook, batch));
    const bool ages = reason.event == Event::Sealed || reason.event == Event::Emergence;
    if (ages && reason.kind == Kind::Rule && batch.start == Start::Graft &&
        (batch.larvaFromH || batch.larvaToH))
        inputs.push_back(larvae(batch));
    if (reason.fact) inputs.push_back(number(told.facts(), *reason.fact));
    for (const auto fact : reason.also) inputs.push_back(number(told.facts(), fact));
    return inputs;
}

Link linkOf(const Told& told) {
    const auto& line = told.batch.timeline;
    const auto* dates = line.find(told.reason.event);
    const Moment moment = dates ? dates->likely : line.graft;
    Link step;
    step.what = chart_text::event(told.reason.event);
    step.when = Words::tr("%1, %2").arg(dayAndClock(moment), dayFromGraft(line.dayNumber(moment)));
    step.rule = ruleOf(told);
    step.inputs = inputsOf(told);
    return step;
}

/// Short words stay in one line; beside a long value they would break word by word.
QString wrapOf(const QString& words, qsizetype shortest) {
    return words.size() > shortest ? QStringLiteral("normal") : QStringLiteral("nowrap");
}

QString inputRow(const Input& input) {
    // A day or number stays in one line; a list of nucs may take several.
    return QStringLiteral(
               "<tr><td style=\"padding-right:14px;white-space:%5\">%1</td>"
               "<td style=\"padding-right:14px;white-space:%4\"><b>%2</b></td>"
               "<td style=\"white-space:%6\">%3</td></tr>")
        .arg(input.name.toHtmlEscaped(), input.value.toHtmlEscaped(), input.from.toHtmlEscaped(),
             wrapOf(input.value, 24), wrapOf(input.name, 18), wrapOf(input.from, 12));
}

}  // namespace

std::vector<Link> event(const Outlook& outlook, Id<Batch> id, Event event) {
    const auto* batch = outlook.find(id);
    if (!batch) return {};
    std::vector<Link> steps;
    const auto reasons = why(outlook.snapshot, id, event);
    for (const auto& reason : reasons) steps.push_back(linkOf({outlook, *batch, reason}));
    const auto plan = planOf(outlook, id);
    const auto otherDay = plan ? plannedElse(*plan, batch->timeline, event) : std::nullopt;
    if (otherDay && !steps.empty())
        steps.front().when =
            Words::tr("planned %1, now %2").arg(weekdayAndDay(*otherDay), steps.front().when);
    return steps;
}

Input number(const Facts& facts, Fact fact) {
    const auto& entry = facts.entry(fact);
    Input input{fact_text::name(fact), withUnit(entry, facts[fact]), Words::tr("default"), {}};
    if (facts.isOverridden(fact))
        input.from = Words::tr("set by you; the default is %1").arg(withUnit(entry, entry.value));
    for (const auto& line : sourceLines(entry.source)) input.sources += plain(line);
    return input;
}

Input setByYou(const QString& name, const QString& value) {
    return {name, value, Words::tr("set by you"), {}};
}
Input seen(const QString& name, const QString& value) {
    return {name, value, Words::tr("seen"), {}};
}
Input planned(const QString& name, const QString& value) {
    return {name, value, Words::tr("planned"), {}};
}

Input catchRule(const Outlook& outlook, const Batch& batch) {
    const auto rule = batch.catchRule.value_or(outlook.snapshot.book().catchRule);
    return {Words::tr("Queens are caught"),
            batch_text::catchRuleName(rule, {}),
            batch.catchRule ? Words::tr("set by you for this batch")
                            : Words::tr("the rule of the whole book"),
            {}};
}

Input endOfMethod(const Outlook& outlook, const Batch& batch) {
    const auto method = outlook.snapshot.find(batch.method);
    double end = outlook.snapshot.facts()[Fact::RipeH];
    std::int32_t last = 0;
    for (const auto& step : outlook.snapshot.all<Step>().of(batch.method.uuid))
        if (step->step > last) last = step->step, end = step->toHour;
    return {Words::tr("Last step ends after the graft"),
            hours(end),
            method ? Words::tr("of the method \"%1\"").arg(plain(method->label)) : QString(),
            {}};
}

QString asRichText(const std::vector<Link>& steps) {
    QString text;
    for (const auto& step : steps) {
        text += QStringLiteral(
                    "<p style=\"margin-top:10px;margin-bottom:2px\"><b>%1</b>"
                    "&nbsp;&nbsp;%2</p>")
                    .arg(step.what.toHtmlEscaped(), step.when.toHtmlEscaped());
        text += QStringLiteral("<p style=\"margin-top:0;margin-bottom:4px\">%1</p>")
                    .arg(step.rule.toHtmlEscaped());
        QStringList sources;
        text += QStringLiteral("<table>");
        for (const auto& input : step.inputs) {
            text += inputRow(input);
            for (const auto& source : input.sources)
                if (!sources.contains(source)) sources += source;
        }
        text += QStringLiteral("</table>");
        if (sources.isEmpty()) continue;
        for (auto& source : sources) source = source.toHtmlEscaped();
        text +=
            QStringLiteral("<p style=\"margin-top:4px;margin-bottom:0\"><small>%1 %2</small></p>")
                .arg(Words::tr("Source:"), sources.join(QStringLiteral("<br>")));
    }
    return text;
}

QString head() { return Words::tr("Why this day?"); }
QString head(const QString& batch) { return Words::tr("Why this day? Batch %1").arg(batch); }
QString menuEntry() { return Words::tr("Wh&y this day?"); }
QString chooseBatch() { return Words::tr("Choose a batch first, or a task or nuc of one."); }
QString batchIsGone() { return Words::tr("This batch is no longer in the book."); }
QString dates() { return Words::tr("Dates of the batch"); }
QString reasons() { return Words::tr("Why it is that day"); }

QString columnHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("What");
        case 1:
            return Words::tr("Day");
        case 2:
            return Words::tr("Earliest");
        case 3:
            return Words::tr("Likely");
        default:
            return Words::tr("Latest");
    }
}

QString dayFromGraft(int day) { return Words::tr("day %1").arg(chart_text::number(day)); }

}  // namespace tenthday::why_text
