#include "headless/date_options.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "exchange/field_text.h"
#include "records/method_catalogue.h"

namespace tenthday {
namespace {

constexpr std::array<std::pair<std::string_view, Start>, 5> kStarts{
    {{"--graft", Start::Graft},
     {"--confined", Start::Confined},
     {"--sealed-found", Start::SealedFound},
     {"--ripe", Start::Ripe},
     {"--virgin", Start::Virgin}}};

constexpr std::int32_t kOldestLarvaH = 72;
constexpr std::int32_t kMostCells = 9999;
constexpr double kHottestC = 60;  // far outside what cells stand; the reckoning clamps before

std::optional<double> number(std::string_view text) {
    double value = 0;
    const auto* end = text.data() + text.size();
    const auto [stop, failed] = std::from_chars(text.data(), end, value, std::chars_format::fixed);
    const bool good = failed == std::errc{} && stop == end && std::isfinite(value);
    return good ? std::optional(value) : std::nullopt;
}
std::optional<std::int32_t> whole(std::string_view text) {
    std::int32_t value = 0;
    return readField(text, value) ? std::nullopt : std::optional(value);
}

Error needs(std::string_view option, std::string_view what, std::string_view given) {
    return optionError(option, std::string(what) + " is needed, not " + inQuotes(given));
}

Result<void> readStart(const Arguments& arguments, DatePlan& plan) {
    std::string_view first;
    for (const auto& [option, start] : kStarts) {
        const auto text = arguments.value(option);
        if (!text) continue;
        if (!first.empty()) return optionError(option, "does not go with " + std::string(first));
        first = option;
        const auto moment = momentFromText(*text);
        if (!moment) return needs(option, "a time of the calendar as YYYY-MM-DDTHH:MM", *text);
        plan.start = start;
        plan.begin = *moment;
    }
    if (first.empty())
        return Error{"one of --graft, --confined, --sealed-found, --ripe, --virgin is needed"};
    return {};
}

/// "18", or "12-24" for any age between.
Result<void> readLarvaAge(const Arguments& arguments, DatePlan& plan) {
    constexpr std::string_view kOption = "--larva-age";
    const auto text = arguments.value(kOption);
    if (!text) return {};
    if (plan.start != Start::Graft && plan.start != Start::Ripe)
        return optionError(kOption, "goes with --graft or --ripe only");
    const auto dash = text->find('-', 1);
    const auto from = whole(text->substr(0, dash));
    const auto to = dash == std::string::npos ? from : whole(text->substr(dash + 1));
    const auto fits = [](auto age) { return age && *age >= 0 && *age <= kOldestLarvaH; };
    if (!fits(from) || !fits(to) || *from > *to)
        return needs(kOption, "an age of 0 to 72 h, or a range such as 12-24,", *text);
    plan.larvaFromH = *from;
    plan.larvaToH = *to;
    return {};
}

Result<void> readCells(const Arguments& arguments, DatePlan& plan) {
    const auto text = arguments.value("--cells");
    if (!text) return {};
    const auto cells = whole(*text);
    if (!cells || *cells < 1 || *cells > kMostCells)
        return needs("--cells", "a number of sealed cells from 1 to 9999", *text);
    plan.cellsInBox = *cells;
    return {};
}

bool usesIncubator(const std::vector<Step>& steps) {
    return std::any_of(steps.begin(), steps.end(),
                       [](const auto& s) { return s.where == BuilderKind::Incubator; });
}

const MethodSteps* methodNamed(std::string_view label) {
    for (const auto& made : builtInMethods())
        if (made.method.label == label) return &made;
    return nullptr;
}

/// The same way of raising cells with an incubator from sealing on.
const MethodSteps& withIncubator(const MethodSteps& made) {
    const bool staged = made.steps.front().where == BuilderKind::Starter;
    return *methodNamed(staged ? "starter, finisher and incubator" : "one box and incubator");
}

Result<void> readMethod(const Arguments& arguments, const Facts& facts, DatePlan& plan) {
    const auto name = arguments.value("--method").value_or("starter and finisher");
    const auto* made = methodNamed(name);
    if (made == nullptr) {
        std::string names;
        for (const auto& other : builtInMethods())
            names += (names.empty() ? "'" : ", '") + other.method.label + "'";
        return needs("--method", "one of " + names, name);
    }
    if (const auto text = arguments.value("--incubator")) {
        plan.incubatorC = number(*text);
        if (!plan.incubatorC || *plan.incubatorC < 0 || *plan.incubatorC > kHottestC)
            return needs("--incubator", "a temperature in degrees Celsius from 0 to 60", *text);
        if (!usesIncubator(made->steps)) made = &withIncubator(*made);
    }
    plan.steps = stepsBy(*made, facts);
    return {};
}

Result<void> readCatchRule(const Arguments& arguments, DatePlan& plan) {
    const auto text = arguments.value("--catch-rule");
    if (!text) return {};
    if (const auto complaint = readField(*text, plan.catchRule))
        return optionError("--catch-rule", *complaint);
    return {};
}

Result<void> readFacts(const Arguments& arguments, Facts& facts) {
    constexpr std::string_view kOption = "--set";
    for (const auto& text : arguments.values(kOption)) {
        const auto equals = text.find('=');
        if (equals == std::string::npos) return needs(kOption, "FACT=VALUE", text);
        const auto fact = fromToken<Fact>(text.substr(0, equals));
        if (!fact) return optionError(kOption, "no fact " + inQuotes(text.substr(0, equals)));
        const auto value = number(text.substr(equals + 1));
        if (!value) return needs(kOption, "a number after " + text.substr(0, equals) + "=", text);
        if (auto set = facts.set(*fact, *value); !set)
            return optionError(kOption, set.error().text);
    }
    return {};
}

}  // namespace

const std::vector<OptionForm>& dateOptions() {
    static const std::vector<OptionForm> options = [] {
        std::vector<OptionForm> all{{"--larva-age"}, {"--method"},     {"--cells"},
                                    {"--incubator"}, {"--catch-rule"}, {"--set", true, true}};
        for (const auto& [option, start] : kStarts) all.push_back({option});
        return all;
    }();
    return options;
}

Result<DateQuestion> readDateQuestion(const Arguments& arguments) {
    DateQuestion question;
    auto done = readStart(arguments, question.plan);
    for (const auto read : {readLarvaAge, readCells, readCatchRule})
        if (done) done = read(arguments, question.plan);
    if (done) done = readFacts(arguments, question.facts);
    if (done) done = readMethod(arguments, question.facts, question.plan);
    if (!done) return done.error();
    return question;
}

}  // namespace tenthday
