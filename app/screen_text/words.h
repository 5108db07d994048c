/// @file words.h  The context under which translators find the window's words.
#pragma once
#include <QCoreApplication>

namespace tenthday {

/// Every translated text goes through Words::tr, in this room only.
class Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

}  // namespace tenthday
