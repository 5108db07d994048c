/// @file loss_text.h  The words of the rates of losses.
#pragma once
#include <QString>
#include <QStringList>

#include "supply/own_rates.h"

namespace tenthday::loss_text {

[[nodiscard]] QString head();
[[nodiscard]] QString intro();
[[nodiscard]] QString stage(LossStage stage);
[[nodiscard]] QStringList stageHeads();
/// A stage: prior, own record, result, each with its 80 % range; spread; what is in force.
[[nodiscard]] QStringList stageCells(const Facts& facts, LossStage stage, const RateFit& fit,
                                     bool isOwnInForce);
/// How the prior came, with its source, and how the result.
[[nodiscard]] QString because(const Facts& facts, LossStage stage);
[[nodiscard]] QString batches();
[[nodiscard]] QString batchesOf(LossStage stage, int batches);
[[nodiscard]] QStringList batchHeads();
[[nodiscard]] QStringList batchCells(const BatchOutcome& batch);
[[nodiscard]] QString leaveOut();
[[nodiscard]] QString changeReason();
[[nodiscard]] QString takeIn();

}  // namespace tenthday::loss_text
