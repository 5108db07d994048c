#include "options/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>
#include <memory>
#include <vector>

namespace tenthday {
namespace {

QString codeOf(Language language) {
    const auto code = token(language);
    return QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size()));
}

const QString kTexts = QStringLiteral(":/i18n");

std::unique_ptr<QTranslator> loaded(const QString& name, const QString& folder) {
    auto translator = std::make_unique<QTranslator>();
    return translator->load(name, folder) ? std::move(translator) : nullptr;
}

}  // namespace

QString nameOf(Language language) {
    if (language == Language::System) return {};
    if (language == Language::English) return QStringLiteral("English");
    auto name = QLocale(codeOf(language)).nativeLanguageName();
    if (!name.isEmpty()) name[0] = name[0].toUpper();
    return name;
}

bool isComplete(Language language) { return language == Language::English; }

Language resolved(Language choice, const QStringList& wished) {
    if (choice != Language::System) return choice;
    for (const auto& wish : wished)
        for (const auto language :
             {Language::English, Language::German, Language::French, Language::Spanish})
            if (isComplete(language) && wish.section(u'-', 0, 0) == codeOf(language))
                return language;
    return Language::English;
}

void useTexts(Language language) {
    static std::vector<std::unique_ptr<QTranslator>> installed;
    installed.clear();  // a translator that goes takes itself out
    const auto code = codeOf(language);
    const auto add = [](std::unique_ptr<QTranslator> translator) {
        if (!translator) return;
        QCoreApplication::installTranslator(translator.get());
        installed.push_back(std::move(translator));
    };
    // What a language lacks stays English, with its plurals: the one put in last is asked first.
    const auto own = [](Language which) { return QStringLiteral("tenthday_") + codeOf(which); };
    if (language != Language::English) add(loaded(own(Language::English), kTexts));
    add(loaded(QStringLiteral("qtbase_") + code,
               QLibraryInfo::path(QLibraryInfo::TranslationsPath)));
    add(loaded(own(language), kTexts));
}

QLocale localeFor(Language language, QLocale::Territory territory) {
    const QLocale own(codeOf(language));
    const QLocale there(own.language(), territory);
    if (there.territory() == territory) return there;
    return language == Language::English ? QLocale(QLocale::English, QLocale::UnitedKingdom) : own;
}

void speak(Language choice) {
    const auto language = resolved(choice, QLocale::system().uiLanguages());
    const auto locale = localeFor(language, QLocale::system().territory());
    if (QLocale::system().language() != locale.language()) QLocale::setDefault(locale);
    useTexts(language);
}

}  // namespace tenthday
