#include "headless/headless.h"

#include <unistd.h>

#include <QFileInfo>
#include <QGuiApplication>
#include <QLocale>
#include <algorithm>
#include <array>
#include <cstdio>

#include "exchange/field_text.h"
#include "headless/paper.h"
#include "headless/review.h"
#include "headless/verb.h"
#include "options/language.h"

namespace tenthday {
namespace {

using Words = std::vector<std::string>;

const std::array<const HeadlessVerb*, 25>& verbs() {
    static const std::array all{
        &newVerb(),      &exampleVerb(),   &datesVerb(),    &nucsVerb(),   &virginsVerb(),
        &stockingVerb(), &broodlessVerb(), &findingsVerb(), &limitsVerb(), &dronesVerb(),
        &promiseVerb(),  &ordersVerb(),    &graftsVerb(),   &planVerb(),   &whatIfVerb(),
        &ratesVerb(),    &checkVerb(),     &pictureVerb(),  &tasksVerb(),  &sheetVerb(),
        &paperVerb(),    &reviewVerb(),    &icsVerb(),      &exportVerb(), &importVerb()};
    return all;
}
const HeadlessVerb* verbNamed(std::string_view name) {
    const auto at = std::find_if(verbs().begin(), verbs().end(),
                                 [&](const auto* verb) { return verb->name == name; });
    return at == verbs().end() ? nullptr : *at;
}

bool isOneOf(std::string_view word, std::initializer_list<std::string_view> names) {
    return std::find(names.begin(), names.end(), word) != names.end();
}

/// Where the verb should stand: the first word that is no option and no option's value.
Words::const_iterator verbPlace(const Words& words) {
    for (auto word = words.begin(); word != words.end(); ++word) {
        if (*word == "--today" && word + 1 != words.end())
            ++word;
        else if (!word->starts_with('-'))
            return word;
    }
    return words.end();
}

std::string helpText() {
    std::string text = "tenthday [BOOK]     the window\n";
    for (const auto* verb : verbs())
        text += "tenthday " + std::string(verb->name) + " " + std::string(verb->usage) +
                "\n                    " + std::string(verb->what) + "\n";
    return text +
           "Listings: --csv (default when output is no terminal) or --json. Anywhere: --today "
           "DAY.\n"
           "Exit status: 0 good, 1 refused or failed, 2 wrong use.\n";
}

std::string verbNames() {
    std::string names;
    for (const auto* verb : verbs()) names += (names.empty() ? "" : ", ") + std::string(verb->name);
    return names;
}

/// One line, whatever a file name or a label held.
std::string onOneLine(std::string text) {
    for (char& c : text)
        if (static_cast<unsigned char>(c) < 0x20) c = ' ';
    return text;
}

int finish(const Answer& answer, std::string_view verb) {
    const bool written =
        std::fwrite(answer.out.data(), 1, answer.out.size(), stdout) == answer.out.size() &&
        std::fflush(stdout) == 0;
    auto error = answer.error;
    if (!written && error.empty()) error = "standard output cannot be written";
    const auto where = verb.empty() ? std::string() : std::string(verb) + ": ";
    if (!error.empty())
        std::fprintf(stderr, "tenthday: %s%s\n", where.c_str(), onOneLine(error).c_str());
    return static_cast<int>(written ? answer.exit : Exit::Failed);
}

/// Qt's chatter has no place on standard error; what is wrong is told in one line by us.
void keepQuiet(QtMsgType, const QMessageLogContext&, const QString&) {}

/// No display is asked for; numbers, days and words do not follow the machine's language.
void prepareQt() {
    qInstallMessageHandler(keepQuiet);
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QLocale::setDefault(QLocale::c());
}

Result<ListingForm> formOf(const HeadlessVerb& verb, const Arguments& arguments) {
    if (!verb.lists) return ListingForm::Csv;
    if (arguments.has("--csv") && arguments.has("--json"))
        return optionError("--json", "does not go with --csv");
    if (arguments.has("--json")) return ListingForm::Json;
    return arguments.has("--csv") || isatty(STDOUT_FILENO) == 0 ? ListingForm::Csv
                                                                : ListingForm::Table;
}

Answer call(const HeadlessVerb& verb, const Words& words) {
    CallForm form = verb.form;
    form.options.push_back({"--today"});
    if (verb.lists) form.options.insert(form.options.end(), {{"--csv", false}, {"--json", false}});
    const auto arguments = Arguments::read(words, form);
    if (!arguments) return Answer::wrongUse(arguments.error());
    const auto listing = formOf(verb, arguments.value());
    if (!listing) return Answer::wrongUse(listing.error());
    std::optional<Day> today;
    if (arguments.value().has("--today")) {
        const auto day = dayOption(arguments.value(), "--today");
        if (!day) return Answer::wrongUse(day.error());
        today = day.value();
    }
    return verb.run({arguments.value(), listing.value(), Clock(today)});
}

}  // namespace

bool isHeadless(const Words& words) {
    for (const auto& word : words)
        if (isOneOf(word, {"--help", "-h", "--version"})) return true;
    const auto verb = verbPlace(words);
    const bool asksToList = std::any_of(words.begin(), words.end(), [](const auto& word) {
        return isOneOf(word, {"--csv", "--json"});
    });
    if (verb == words.end() || verbNamed(*verb)) return verb != words.end() || asksToList;
    const bool isPath = verb->find('/') != std::string::npos || verb->ends_with(".tenthday") ||
                        QFileInfo::exists(QString::fromStdString(*verb));
    const Words rest(verb + 1, words.end());
    const bool alone = verbPlace(rest) == rest.end();
    return !isPath || !alone || asksToList;
}

int runHeadless(const Words& words) {
    const auto place = verbPlace(words);
    const auto* verb = place == words.end() ? nullptr : verbNamed(*place);
    for (const auto& word : words) {
        if (word == "--version")
            return finish({Exit::Good, "tenthday " TENTHDAY_VERSION "\n", {}}, {});
        if (isOneOf(word, {"--help", "-h"})) return finish({Exit::Good, helpText(), {}}, {});
    }
    if (verb == nullptr) {
        const auto what = place == words.end() ? std::string("a verb is missing")
                                               : "unknown verb " + inQuotes(*place);
        return finish(Answer::wrongUse({what + "; verbs are " + verbNames()}), {});
    }
    Words rest(words.begin(), place);
    rest.insert(rest.end(), place + 1, words.end());
    prepareQt();
    int count = 1;
    std::string name = "tenthday";
    std::array<char*, 2> none{name.data(), nullptr};
    const QGuiApplication application(count, none.data());
    useTexts(Language::English);
    return finish(call(*verb, rest), verb->name);
}

}  // namespace tenthday
