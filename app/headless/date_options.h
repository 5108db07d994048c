/// @file date_options.h  From the options of `dates` to a plan of dates.
#pragma once
#include "headless/arguments.h"
#include "timeline/batch_timeline.h"

namespace tenthday {

/// What is asked, apart from any book.
struct DateQuestion {
    DatePlan plan;
    Facts facts;  ///< the newest published, with what --set says
};

/// All options of `dates`.
[[nodiscard]] const std::vector<OptionForm>& dateOptions();
/// The Error names the option and what it needs.
[[nodiscard]] Result<DateQuestion> readDateQuestion(const Arguments& arguments);

}  // namespace tenthday
