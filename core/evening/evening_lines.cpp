#include "evening/evening_lines.h"

#include <algorithm>

namespace tenthday {
namespace {

Id<NucSide> sideOf(const EveningRow& row) {
    return row.side != nullptr ? row.side->side->id : Id<NucSide>{};
}

const EveningRow* find(const EveningPage& page, const EveningRow& wanted) {
    const auto found = std::find_if(page.rows.begin(), page.rows.end(), [&](const auto& row) {
        return row.task.key == wanted.task.key && row.isHead == wanted.isHead &&
               row.bar == wanted.bar && row.entry == wanted.entry && sideOf(row) == sideOf(wanted);
    });
    return found == page.rows.end() ? nullptr : &*found;
}

/// The day as it is after the lines until now.
class Entering {
public:
    Entering(const OutlookPtr& outlook, const EveningPage& page, const IdSource& newId)
        : first_(page), newId_(newId), outlook_(outlook), page_(page) {
        changes_.day = page.day;
    }

    std::optional<EveningTrouble> enter(const EveningLine& line) {
        const auto* row = find(page_, first_.rows.at(line.row));
        if (row == nullptr) return EveningTrouble{{}, "this is not asked for any more"};
        if (line.input)
            if (auto refusal = whyImpossible(*outlook_, *row, *line.input))
                return EveningTrouble{std::move(refusal), {}};
        auto edit = line.input ? tenthday::enter(*outlook_, *row, *line.input, newId_)
                               : takeBack(*outlook_, *row);
        if (!edit) return EveningTrouble{{}, edit.error().text};
        if (edit.value().isEmpty()) return std::nullopt;
        auto next = applied(outlook_->snapshot, edit.value());
        if (!next) return EveningTrouble{{}, next.error().text};
        add(edit.value());
        goOn(next.value());
        return std::nullopt;
    }
    [[nodiscard]] ChangeSet& changes() { return changes_; }

private:
    void add(const ChangeSet& edit) {
        changes_.verb = edit.verb;
        if (changes_.subject.empty()) changes_.subject = edit.subject;
        changes_.rows.insert(changes_.rows.end(), edit.rows.begin(), edit.rows.end());
    }
    void goOn(const Snapshot& next) {
        const auto before = outlook_;  // the page's rows point into it until the new one is made
        outlook_ = outlookOf(next, memo_);
        page_ = eveningOf(*outlook_, page_.day, page_);
    }

    const EveningPage& first_;
    const IdSource& newId_;
    OutlookMemo memo_;
    OutlookPtr outlook_;
    EveningPage page_;
    ChangeSet changes_;
};

}  // namespace

EveningLines enterLines(const OutlookPtr& outlook, const EveningPage& page,
                        const std::vector<EveningLine>& lines, const IdSource& newId) {
    Entering entering(outlook, page, newId);
    EveningLines entered;
    for (const auto& line : lines) entered.troubles.push_back(entering.enter(line));
    entered.changes = std::move(entering.changes());
    return entered;
}

}  // namespace tenthday
