/// @file why_rules.h  The rule behind an event's day, as a sentence.
#pragma once
#include <QString>

#include "outlook/outlook.h"

namespace tenthday::why_text {

/// Everything that words of one batch's reasons need.
struct Told {
    const Outlook& outlook;
    const BatchOutlook& batch;
    const Reason& reason;

    [[nodiscard]] const Facts& facts() const { return outlook.snapshot.facts(); }
    [[nodiscard]] double fact(Fact fact) const { return facts()[fact]; }
    [[nodiscard]] Start start() const { return batch.batch->start; }
};

/// With what must be said beside the date.
[[nodiscard]] QString ruleOf(const Told& told);

/// "384", with up to four digits.
[[nodiscard]] QString decimal(double value);
/// "384 h", without its sign.
[[nodiscard]] QString hours(double value);
/// "1 %" of 0.01.
[[nodiscard]] QString percent(double share);

}  // namespace tenthday::why_text
