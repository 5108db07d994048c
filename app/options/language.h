/// @file language.h  The language of the window. Headless output is English always.
#pragma once
#include <QLocale>
#include <QString>
#include <QStringList>

#include "base/tokens.h"

namespace tenthday {

enum class Language : std::uint8_t { System, English, German, French, Spanish };
/// "system", else the language's code in ISO 639.
template <>
struct TokensOf<Language> {
    static constexpr auto names =
        std::to_array<std::string_view>({"system", "en", "de", "fr", "es"});
};

/// What the language calls itself; empty for System.
[[nodiscard]] QString nameOf(Language language);

/// Its texts are complete. The others can be chosen, and show English where they lack a text.
[[nodiscard]] bool isComplete(Language language);

/// The language a choice means; for System the first complete one of those wished, else English.
/// @param wished  as QLocale::uiLanguages() gives them: "de-AT", "en"
[[nodiscard]] Language resolved(Language choice, const QStringList& wished);

/// Loads the texts of a language, not System: the program's own, and those of Qt's dialogs where
/// they are installed. What lacks a translation stays English; English itself has its plurals
/// there. Replaces what an earlier call loaded.
void useTexts(Language language);

/// Makes the window speak what a choice means. Days and numbers go with the system, unless a
/// language was chosen that is not the system's.
void speak(Language choice);

}  // namespace tenthday
