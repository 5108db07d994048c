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

/// How a language writes days and numbers in a country: names in the language, the order of day and
/// month as there. Where nobody has laid that down: as in the language's own country, English as in
/// the United Kingdom.
[[nodiscard]] QLocale localeFor(Language language, QLocale::Territory territory);

/// Makes the window speak what a choice means. Days and numbers go with the system where it speaks
/// that language, else with localeFor: names of days in the language of the sentences.
void speak(Language choice);

}  // namespace tenthday
