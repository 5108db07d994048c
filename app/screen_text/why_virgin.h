/// @file why_virgin.h  Where each figure of a waiting virgin comes from: rule, inputs, sources.
#pragma once
#include "occupancy/waiting_virgins.h"
#include "screen_text/why_text.h"

namespace tenthday::why_text {

/// What to do and why.
[[nodiscard]] Link virginAdvice(const Outlook& outlook, const WaitingVirgin& virgin);
/// Her age, and how sure it is.
[[nodiscard]] Link virginAge(const Outlook& outlook, const WaitingVirgin& virgin);
/// Flying days since she could fly.
[[nodiscard]] Link virginFlights(const Outlook& outlook, const WaitingVirgin& virgin);
/// Until when she can mate.
[[nodiscard]] Link virginLastDay(const Outlook& outlook, const WaitingVirgin& virgin);
/// Chances to have mated and to mate yet.
[[nodiscard]] Link virginChances(const Outlook& outlook, const WaitingVirgin& virgin);
/// When to look next.
[[nodiscard]] Link virginLook(const Outlook& outlook, const WaitingVirgin& virgin);

/// All of them, the advice first.
[[nodiscard]] std::vector<Link> virgin(const Outlook& outlook, const WaitingVirgin& virgin);

}  // namespace tenthday::why_text
