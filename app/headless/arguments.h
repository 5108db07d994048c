/// @file arguments.h  The command line, taken apart by hand: one clear line for whatever is wrong.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace tenthday {

/// An option of a verb: `--name` or, where it takes a value, `--name VALUE` or `--name=VALUE`.
struct OptionForm {
    std::string_view name;  ///< with the dashes
    bool takesValue = true;
    bool repeats = false;
};

/// What a verb takes: operands by name, all needed, and options.
struct CallForm {
    std::vector<std::string_view> operands;  ///< BOOK, KIND ...
    std::vector<OptionForm> options;
};

/// Operands and options as given. Every Error names the option or operand.
class Arguments {
public:
    /// @param words  what follows the program's name, without the verb. `--` ends the options.
    [[nodiscard]] static Result<Arguments> read(const std::vector<std::string>& words,
                                                const CallForm& form);

    [[nodiscard]] const std::string& operand(std::size_t i) const { return operands_[i]; }
    [[nodiscard]] bool has(std::string_view option) const;
    /// The value, or nothing when the option was not given.
    [[nodiscard]] std::optional<std::string> value(std::string_view option) const;
    /// All values of an option that repeats, in order.
    [[nodiscard]] std::vector<std::string> values(std::string_view option) const;

private:
    std::vector<std::string> operands_;
    std::multimap<std::string, std::string, std::less<>> options_;
};

/// "option --on: what".
[[nodiscard]] Error optionError(std::string_view option, std::string_view what);

}  // namespace tenthday
