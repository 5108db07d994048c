#include "options/language.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "options/settings.h"
#include "screen_text/batch_text.h"
#include "screen_text/chart_text.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

const QString kTranslations = QStringLiteral(TENTHDAY_SOURCE_DIR "/translations/");

/// English again for the tests that follow.
class LanguageTest : public ::testing::Test {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    }
    void TearDown() override {
        useTexts(Language::English);
        QLocale::setDefault(QLocale::system());
    }
};

TEST(Language, IsTheFirstWishedThatThereIs) {
    const QStringList austrian{QStringLiteral("it-CH"), QStringLiteral("de-AT"),
                               QStringLiteral("fr")};
    EXPECT_EQ(resolved(Language::System, austrian),
              isComplete(Language::German) ? Language::German : Language::English);
    EXPECT_EQ(resolved(Language::French, austrian), Language::French);
    EXPECT_EQ(resolved(Language::System, {QStringLiteral("fi")}), Language::English);
    EXPECT_EQ(resolved(Language::System, {}), Language::English);
}

TEST(Language, NamesItself) {
    EXPECT_EQ(nameOf(Language::German), QStringLiteral("Deutsch"));
    EXPECT_EQ(nameOf(Language::French), QStringLiteral("Français"));
    EXPECT_TRUE(nameOf(Language::Spanish).startsWith(QStringLiteral("Español")));
    EXPECT_TRUE(nameOf(Language::System).isEmpty());
}

TEST_F(LanguageTest, EnglishCounts) {
    EXPECT_EQ(chart_text::nucs(1), QStringLiteral("1 nuc"));
    EXPECT_EQ(chart_text::nucs(2), QStringLiteral("2 nucs"));
    EXPECT_EQ(chart_text::nucsToFree(1), QStringLiteral("1 nuc to free"));
    EXPECT_EQ(chart_text::nucsToFree(3), QStringLiteral("3 nucs to free"));
}

TEST_F(LanguageTest, GermanFrenchAndSpanishSpeak) {
    useTexts(Language::German);
    EXPECT_EQ(window_text::fileMenu(), QStringLiteral("&Datei"));
    EXPECT_EQ(chart_text::state(NucState::Laying), QStringLiteral("in Eilage, nicht beurteilt"));
    EXPECT_EQ(chart_text::cells(1), QStringLiteral("1 Zelle"));
    EXPECT_EQ(chart_text::cells(4), QStringLiteral("4 Zellen"));
    useTexts(Language::French);
    EXPECT_EQ(window_text::fileMenu(), QStringLiteral("&Fichier"));
    EXPECT_EQ(chart_text::cells(0), QStringLiteral("0 cellule"));
    EXPECT_EQ(chart_text::cells(4), QStringLiteral("4 cellules"));
    // What a language lacks stays English, with English plurals.
    EXPECT_EQ(batch_text::repeatMore(3), QStringLiteral("batches more"));
    useTexts(Language::Spanish);
    EXPECT_EQ(window_text::fileMenu(), QStringLiteral("&Archivo"));
    EXPECT_EQ(chart_text::cells(4), QStringLiteral("4 celdas"));
}

TEST(Language, WritesDaysAsTheCountryDoes) {
    const auto shortDay = [](Language language, QLocale::Territory territory) {
        return localeFor(language, territory).toString(QDate(2027, 6, 11), QLocale::ShortFormat);
    };
    EXPECT_TRUE(shortDay(Language::English, QLocale::UnitedStates).startsWith(u'6'));
    for (const auto territory :
         {QLocale::Germany, QLocale::Egypt, QLocale::Japan, QLocale::AnyTerritory})
        EXPECT_TRUE(shortDay(Language::English, territory).startsWith(QStringLiteral("11")))
            << QLocale::territoryToString(territory).toStdString();
    EXPECT_EQ(localeFor(Language::English, QLocale::Germany).dayName(5), QStringLiteral("Friday"));
    EXPECT_EQ(localeFor(Language::Spanish, QLocale::Mexico).territory(), QLocale::Mexico);
    EXPECT_EQ(localeFor(Language::German, QLocale::Japan).territory(), QLocale::Germany);
}

TEST_F(LanguageTest, DayNamesAreInTheLanguageOfTheSentences) {
    for (const auto choice : {Language::System, Language::English, Language::French}) {
        speak(choice);
        const auto texts = resolved(choice, QLocale::system().uiLanguages());
        EXPECT_EQ(QLocale().language(), localeFor(texts, QLocale::AnyTerritory).language());
        QLocale::setDefault(QLocale::system());
    }
}

TEST_F(LanguageTest, AChosenLanguageWritesItsDays) {
    speak(Language::Spanish);
    EXPECT_EQ(QLocale().language(), QLocale::Spanish);
    EXPECT_EQ(window_text::fileMenu(), QStringLiteral("&Archivo"));
}

QString readAll(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return QString::fromUtf8(file.readAll());
}

QStringList sourcesIn(const QString& ts) {
    static const QRegularExpression source(QStringLiteral("<source>(.*?)</source>"),
                                           QRegularExpression::DotMatchesEverythingOption);
    QStringList all;
    for (auto found = source.globalMatch(ts); found.hasNext();) all += found.next().captured(1);
    all.sort();
    return all;
}

/// What `update_translations` would write: the same texts as are kept.
TEST(Translations, AreUpToDateWithTheTexts) {
    const QTemporaryDir folder;
    QStringList texts;
    const QDir room(QStringLiteral(TENTHDAY_SOURCE_DIR "/app/screen_text"));
    for (const auto& name : room.entryList({QStringLiteral("*.cpp")})) texts += room.filePath(name);
    ASSERT_GT(texts.size(), 5);
    for (const auto& code : {"en", "de", "fr", "es"}) {
        const auto name = QStringLiteral("tenthday_%1.ts").arg(QLatin1String(code));
        QStringList options{QStringLiteral("-silent"), QStringLiteral("-no-obsolete")};
        if (code == std::string("en")) options += QStringLiteral("-pluralonly");
        const auto fresh = folder.filePath(name);
        ASSERT_EQ(QProcess::execute(QStringLiteral(TENTHDAY_LUPDATE),
                                    options + texts + QStringList{QStringLiteral("-ts"), fresh}),
                  0);
        const auto kept = sourcesIn(readAll(kTranslations + name));
        const auto wanted = sourcesIn(readAll(fresh));
        for (const auto& text : wanted)
            EXPECT_TRUE(kept.contains(text)) << name.toStdString() << ": " << text.toStdString()
                                             << "\nrun: ninja update_translations";
        EXPECT_EQ(kept.size(), wanted.size()) << name.toStdString() << ": texts that are gone";
    }
}

TEST(Translations, OfEnglishPluralsAreComplete) {
    const auto text = readAll(kTranslations + QStringLiteral("tenthday_en.ts"));
    EXPECT_GT(text.count(QStringLiteral("<numerusform>")), 10);
    EXPECT_FALSE(text.contains(QStringLiteral("<numerusform></numerusform>")));
    EXPECT_FALSE(text.contains(QStringLiteral("unfinished")));
}

/// The texts of one file: source, then its translations; none where it is unfinished.
std::vector<std::pair<QString, QStringList>> textsIn(const QString& ts) {
    static const QRegularExpression message(QStringLiteral("<message.*?</message>"),
                                            QRegularExpression::DotMatchesEverythingOption);
    static const QRegularExpression form(
        QStringLiteral("<(?:numerusform|translation)>([^<]+)</(?:numerusform|translation)>"));
    std::vector<std::pair<QString, QStringList>> texts;
    for (auto found = message.globalMatch(ts); found.hasNext();) {
        const auto part = found.next().captured();
        QStringList forms;
        if (!part.contains(QStringLiteral("unfinished")))
            for (auto one = form.globalMatch(part); one.hasNext();) forms += one.next().captured(1);
        texts.emplace_back(sourcesIn(part).value(0), forms);
    }
    return texts;
}

QStringList marksIn(const QString& text) {
    static const QRegularExpression mark(QStringLiteral("%(?:L?n|[1-9])"));
    QStringList marks;
    for (auto found = mark.globalMatch(text); found.hasNext();) marks += found.next().captured();
    marks.sort();
    return marks;
}

TEST(Translations, KeepEveryMark) {
    for (const auto& code : {"en", "de", "fr", "es"}) {
        const auto name = QStringLiteral("tenthday_%1.ts").arg(QLatin1String(code));
        int looked = 0;
        for (const auto& [source, forms] : textsIn(readAll(kTranslations + name)))
            for (const auto& form : forms) {
                EXPECT_EQ(marksIn(form), marksIn(source))
                    << name.toStdString() << ": " << form.toStdString();
                ++looked;
            }
        EXPECT_GT(looked, 20);
    }
}

TEST(Translations, OfALanguageSaidToBeCompleteAre) {
    for (std::size_t i = 1; i < kTokenCount<Language>; ++i) {
        const auto language = static_cast<Language>(i);
        if (!isComplete(language)) continue;
        const auto name = QStringLiteral("tenthday_%1.ts")
                              .arg(QString::fromStdString(std::string(token(language))));
        EXPECT_FALSE(readAll(kTranslations + name).contains(QStringLiteral("unfinished")));
    }
}

}  // namespace
}  // namespace tenthday
