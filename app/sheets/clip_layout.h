/// @file clip_layout.h  A week as leaves for a clip: one day and yard on each.
#pragma once
#include "sheets/page.h"
#include "sheets/week_content.h"

namespace tenthday {

/// The usual form of a leaf.
[[nodiscard]] inline PaperForm clipForm(bool large) { return {Paper::A5, true, large}; }

/// A leaf per day and yard with work, more where its tasks do not go on one; the head, with "goes
/// on", stands on each. A week without work is one leaf that says so.
[[nodiscard]] std::vector<Page> layOutClips(const WeekContent& week, const PaperForm& form,
                                            const PaperRuler& ruler);

}  // namespace tenthday
