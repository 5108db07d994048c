#include "facts/facts.h"

#include <charconv>
#include <cmath>
#include <cstdlib>
#include <string>

#include "tenthday_core_embedded.h"

namespace tenthday {
namespace {

/// Cuts the text up to `separator` off the front of `rest`.
std::string_view cut(std::string_view& rest, char separator) {
    const auto at = rest.find(separator);
    const auto piece = rest.substr(0, at);
    rest = at == std::string_view::npos ? std::string_view{} : rest.substr(at + 1);
    return piece;
}

double number(std::string_view text) {
    double value = std::nan("");
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

std::array<FactEntry, kTokenCount<Fact>> parse(std::string_view text) {
    std::array<FactEntry, kTokenCount<Fact>> entries;
    std::size_t found = 0;
    while (!text.empty()) {
        auto line = cut(text, '\n');
        if (line.empty() || line.front() == '#') continue;
        const auto fact = fromToken<Fact>(cut(line, '\t'));
        if (!fact) std::abort();  // the embedded table and fact.h disagree
        auto& entry = entries[static_cast<std::size_t>(*fact)];
        entry.fact = *fact;
        entry.value = number(cut(line, '\t'));
        entry.unit = cut(line, '\t');
        entry.low = number(cut(line, '\t'));
        entry.high = number(cut(line, '\t'));
        entry.source = cut(line, '\t');
        entry.what = line;
        ++found;
    }
    if (found != entries.size()) std::abort();
    return entries;
}

}  // namespace

const std::array<FactEntry, kTokenCount<Fact>>& factsRevision(std::int32_t /*revision*/) {
    static const auto first = parse(embedded::facts_revision_1());
    return first;
}

Facts::Facts(std::int32_t revision) : revision_(revision) {
    const auto& entries = factsRevision(revision);
    for (std::size_t i = 0; i < entries.size(); ++i) values_[i] = entries[i].value;
}

FactBounds boundsOf(const FactEntry& entry) {
    switch (entry.fact) {
        case Fact::FirstOutRisk:
        case Fact::LikelyLevel:
            return {0.001, 0.999};  // a quantile: neither never nor surely
        case Fact::AcceptedSd:
        case Fact::SealedSd:
        case Fact::EmergedSd:
        case Fact::MatedSd:
        case Fact::JudgedGoodSd:
            return {0, 0.5};  // no share spreads wider
        case Fact::SeasonShiftD:
            return {0, 60};
        case Fact::LastMatingD:
        case Fact::EggsAfterFlightD:
            return {1, 90};
        case Fact::QueensPerDroneColony:
            return {1, 10000};  // divided by
        case Fact::EmergenceH:
        case Fact::RipeH:
        case Fact::Mated:
        case Fact::Emerged:
            return {0.001, entry.unit == "share" ? 1.0 : 10000.0};  // divided by
        default:
            return {0, entry.unit == "share" ? 1.0 : 10000.0};
    }
}

Result<void> Facts::set(Fact fact, double value) {
    const auto bounds = boundsOf(entry(fact));
    const auto text = [](double number) {
        std::array<char, 32> digits{};
        const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), number).ptr;
        return std::string(digits.data(), end);
    };
    if (!(value >= bounds.least && value <= bounds.most))
        return Error{"fact " + std::string(token(fact)) + ": a value from " + text(bounds.least) +
                     " to " + text(bounds.most) + " is needed"};
    values_[static_cast<std::size_t>(fact)] = value;
    return {};
}

}  // namespace tenthday
