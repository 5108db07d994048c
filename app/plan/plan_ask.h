/// @file plan_ask.h  Changing a proposed batch before it is taken over: its graft day, its grafts.
#pragma once
#include "planning/season_plan.h"
#include "setup/fields_dialog.h"

namespace tenthday {

/// @param outlook  must outlive the dialog
/// @param keep     is given the batch as it was changed
[[nodiscard]] FieldsAsked askProposal(const Outlook& outlook, const ProposedBatch& batch,
                                      std::function<void(const ProposedBatch&)> keep);

/// The batch grafted on another day: all that hangs on it goes along, about, until it is looked at
/// again.
[[nodiscard]] ProposedBatch graftedOn(ProposedBatch batch, Day day);

}  // namespace tenthday
