#include "headless/arguments.h"

#include <algorithm>

#include "exchange/field_text.h"

namespace tenthday {
namespace {

const OptionForm* find(const CallForm& form, std::string_view name) {
    const auto at = std::find_if(form.options.begin(), form.options.end(),
                                 [&](const auto& option) { return option.name == name; });
    return at == form.options.end() ? nullptr : &*at;
}

}  // namespace

Error optionError(std::string_view option, std::string_view what) {
    return {"option " + std::string(option) + ": " + std::string(what)};
}

Result<Arguments> Arguments::read(const std::vector<std::string>& words, const CallForm& form) {
    Arguments read;
    bool optionsOver = false;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::string_view word = words[i];
        if (optionsOver || word.size() < 2 || word.front() != '-') {
            read.operands_.emplace_back(word);
            continue;
        }
        if ((optionsOver = word == "--")) continue;
        const auto equals = word.find('=');
        const std::string name(word.substr(0, equals));
        const auto* option = find(form, name);
        if (option == nullptr) return Error{"unknown option " + inQuotes(name)};
        if (read.has(name) && !option->repeats) return optionError(name, "given twice");
        std::string value;
        if (equals != std::string_view::npos) {
            if (!option->takesValue) return optionError(name, "takes no value");
            value = word.substr(equals + 1);
        } else if (option->takesValue) {
            if (i + 1 == words.size() || words[i + 1].starts_with("--"))
                return optionError(name, "a value is needed");
            value = words[++i];
        }
        read.options_.emplace(name, std::move(value));
    }
    const auto given = read.operands_.size();
    if (given < form.operands.size())
        return Error{std::string(form.operands[given]) + " is missing"};
    if (given > form.operands.size())
        return Error{"one argument too many: " + inQuotes(read.operands_[form.operands.size()])};
    return read;
}

bool Arguments::has(std::string_view option) const { return options_.contains(option); }

std::optional<std::string> Arguments::value(std::string_view option) const {
    const auto at = options_.find(option);
    return at == options_.end() ? std::nullopt : std::optional(at->second);
}

std::vector<std::string> Arguments::values(std::string_view option) const {
    std::vector<std::string> values;
    const auto [first, last] = options_.equal_range(option);
    for (auto at = first; at != last; ++at) values.push_back(at->second);
    return values;
}

}  // namespace tenthday
