/// @file day_field.h  How a day is asked for, alike in all forms.
#pragma once

class QDateEdit;

namespace tenthday {

/// Shows the weekday before the day, which tells 2 June from 6 February in every order of day and
/// month, and opens a calendar.
void makeDayField(QDateEdit& field);

}  // namespace tenthday
