#include "screen_text/loss_text.h"

#include <cmath>

#include "screen_text/because.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/fact_text.h"
#include "screen_text/words.h"

namespace tenthday::loss_text {
namespace {

QString percent(double share) {
    return Words::tr("%1 %").arg(chart_text::number(static_cast<int>(std::lround(share * 100))));
}

/// "78 % (71 to 84)".
QString ranged(const RangedShare& share) {
    const auto whole = [](double value) {
        return chart_text::number(static_cast<int>(std::lround(value * 100)));
    };
    return Words::tr("%1 (%2 to %3)")
        .arg(percent(share.value), whole(share.low), whole(share.high));
}

}  // namespace

QString head() { return Words::tr("Losses from graft to good queen"); }
QString intro() {
    return Words::tr(
        "At each stage your own batches speak beside what is published. Ranges hold the rate with "
        "80 %. From %Ln batch(es) on your own rate is reckoned with in orders and promises, unless "
        "the trade number is set by hand. Leave a batch out when something was odd about it.",
        nullptr, kBatchesToSpeak);
}

QString stage(LossStage stage) {
    switch (stage) {
        case LossStage::Accepted:
            return Words::tr("grafts that are started");
        case LossStage::Sealed:
            return Words::tr("started cells that are sealed");
        case LossStage::Emerged:
            return Words::tr("ripe cells that emerge");
        case LossStage::Mated:
            return Words::tr("virgins that mate in flying weather");
        case LossStage::JudgedGood:
            return Words::tr("laying queens judged good");
    }
    return {};
}

QStringList stageHeads() {
    return {Words::tr("Stage"),        Words::tr("Published"),       Words::tr("Your own record"),
            Words::tr("Result"),       Words::tr("Between batches"), Words::tr("Batches"),
            Words::tr("Reckoned with")};
}

QStringList stageCells(const Facts& facts, LossStage which, const RateFit& fit, bool isOwnInForce) {
    const auto own = fit.ownRate
                         ? Words::tr("%1, %2 of %3")
                               .arg(ranged(*fit.ownRate), chart_text::number(fit.record.passed),
                                    chart_text::number(fit.record.tried))
                         : Words::tr("none yet");
    auto batches = chart_text::number(fit.batches);
    if (fit.leftOut > 0)
        batches = Words::tr("%1, %2 left out").arg(batches, chart_text::number(fit.leftOut));
    const auto inForce = isOwnInForce ? Words::tr("result: %1").arg(percent(fit.rate.value))
                         : facts.isOverridden(rateFact(which))
                             ? Words::tr("set by hand: %1").arg(percent(facts[rateFact(which)]))
                             : Words::tr("published: %1").arg(percent(facts[rateFact(which)]));
    return {stage(which),
            ranged(fit.priorRate),
            own,
            ranged(fit.rate),
            Words::tr("± %1").arg(percent(fit.spread.value)),
            batches,
            inForce};
}

QString because(const Facts& facts, LossStage which) {
    return Words::tr(
               "Published: %1.\nResult: the published rate put right by your batches, each "
               "with luck of its own (Bayes' rule on a grid of rate and spread).")
        .arg(because::share(facts, rateFact(which)));
}

QString batches() { return Words::tr("Batches that speak for it"); }
QString batchesOf(LossStage which, int batches) {
    return batches == 0
               ? Words::tr("No batch speaks yet for: %1").arg(stage(which))
               : Words::tr("%Ln batch(es) speak(s) for: %1", nullptr, batches).arg(stage(which));
}
QStringList batchHeads() {
    return {Words::tr("Batch"),  Words::tr("Begun"), Words::tr("Came to it"),
            Words::tr("Passed"), Words::tr("Share"), Words::tr("Counts")};
}
QStringList batchCells(const BatchOutcome& batch) {
    const auto& count = batch.outcome.count;
    const auto share =
        count.tried > 0 ? percent(static_cast<double>(count.passed) / count.tried) : QString();
    const auto counts =
        batch.outcome.leftOut.empty()
            ? Words::tr("yes")
            : Words::tr("left out: %1").arg(QString::fromStdString(batch.outcome.leftOut));
    return {QString::fromStdString(batch.label),
            Words::tr("%1 %2").arg(shortDay(batch.day), yearNumber(batch.day)),
            chart_text::number(count.tried),
            chart_text::number(count.passed),
            share,
            counts};
}
QString leaveOut() { return Words::tr("&Leave out ..."); }
QString changeReason() { return Words::tr("Change the &reason ..."); }
QString takeIn() { return Words::tr("&Count it again"); }

}  // namespace tenthday::loss_text
