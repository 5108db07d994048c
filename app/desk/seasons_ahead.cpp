#include "desk/seasons_ahead.h"

#include <algorithm>
#include <deque>
#include <mutex>
#include <optional>
#include <utility>

#include "desk/beside.h"

namespace tenthday {
namespace {

/// The one shown, three ahead of it, the one behind, and two more for a hand that turns about.
constexpr std::size_t kMostKept = 7;

/// Which rows an edit turns into which: those of the very same edit are the very same rows.
using Rows = std::vector<std::pair<std::shared_ptr<const void>, std::shared_ptr<const void>>>;
Rows rowsOf(const ChangeSet& edit) {
    Rows rows;
    for (const auto& change : edit.rows)
        rows.push_back(visitChange(
            [](const auto& of) { return Rows::value_type(of.before, of.after); }, change));
    return rows;
}

/// An edit of what was saved then.
struct Edit {
    OutlookPtr saved;
    ChangeSet changes;
    Rows rows;

    [[nodiscard]] bool isSame(const Edit& other) const {
        return saved == other.saved && rows == other.rows;
    }
};

struct Derived {
    Edit edit;
    OutlookPtr season;
    bool isAhead = false;  ///< and was not asked for yet
};

}  // namespace

struct SeasonsAhead::State {
    std::function<void()> whenThere;
    std::mutex deriving;  ///< taken before `listing`; held while a season is derived
    OutlookMemo memo;

    std::mutex listing;
    std::deque<Edit> expected;
    std::deque<Derived> kept;  ///< those asked for last, or derived last, at the end
    bool isAtWork = false;

    explicit State(std::function<void()> tell) : whenThere(std::move(tell)) {}
    State(std::function<void()> tell, const Outlook& last)
        : whenThere(std::move(tell)), memo(last) {}

    void add(Derived derived) {
        Derived gone;  // is freed once nobody has to wait for that
        const std::lock_guard lock(listing);
        kept.push_back(std::move(derived));
        if (kept.size() <= kMostKept) return;
        gone = std::move(kept.front());
        kept.pop_front();
    }
    /// Under `listing`. Those that are looked for go last.
    [[nodiscard]] Derived* find(const Edit& edit) {
        const auto found = std::find_if(kept.begin(), kept.end(),
                                        [&](const Derived& of) { return of.edit.isSame(edit); });
        if (found == kept.end()) return nullptr;
        std::rotate(found, found + 1, kept.end());
        return &kept.back();
    }
    /// The next of those expected; none: the thread beside is done.
    [[nodiscard]] std::optional<Edit> next() {
        const std::lock_guard lock(listing);
        if (expected.empty()) {
            isAtWork = false;
            return std::nullopt;
        }
        auto edit = std::move(expected.front());
        expected.pop_front();
        return edit;
    }
    /// @return whether there may be more
    bool deriveOne() {
        const std::lock_guard lock(deriving);
        const auto edit = next();
        if (!edit) return false;
        const auto snapshot = applied(edit->saved->snapshot, edit->changes);
        if (!snapshot) return true;  // whoever asks for it is told why
        auto season = outlookOf(snapshot.value(), memo);
        add({*edit, std::move(season), true});
        if (whenThere) whenThere();
        return true;
    }
    /// One by one: what else is asked for beside meanwhile has its turn between them.
    static void deriveExpected(const std::shared_ptr<State>& state) {
        beside(Haste::Now, [state] {
            if (state->deriveOne()) deriveExpected(state);
        });
    }
};

SeasonsAhead::SeasonsAhead(std::function<void()> whenThere)
    : state_(std::make_shared<State>(std::move(whenThere))) {}
SeasonsAhead::~SeasonsAhead() { expect(nullptr, {}); }

OutlookPtr SeasonsAhead::of(const Snapshot& snapshot) {
    expect(nullptr, {});
    const std::lock_guard lock(state_->deriving);
    {
        const std::lock_guard list(state_->listing);
        state_->kept.clear();
    }
    return outlookOf(snapshot, state_->memo);
}

Result<OutlookPtr> SeasonsAhead::after(const OutlookPtr& saved, const ChangeSet& edit) {
    Edit wanted{saved, edit, rowsOf(edit)};
    const auto kept = [&]() -> OutlookPtr {
        const std::lock_guard list(state_->listing);
        state_->expected.clear();  // what is wanted now is derived here, if it is not yet
        auto* found = state_->find(wanted);
        if (found == nullptr) return nullptr;
        wereThere_ += std::exchange(found->isAhead, false);
        return found->season;
    };
    if (auto season = kept()) return season;
    const std::lock_guard lock(state_->deriving);
    if (auto season = kept()) return season;
    const auto next = applied(saved->snapshot, edit);
    if (!next) return next.error();
    auto season = outlookOf(next.value(), state_->memo);
    state_->add({std::move(wanted), season, false});
    return season;
}

OutlookPtr SeasonsAhead::find(const OutlookPtr& saved, const ChangeSet& edit) const {
    const std::lock_guard list(state_->listing);
    const auto* found = state_->find({saved, edit, rowsOf(edit)});
    return found ? found->season : nullptr;
}

void SeasonsAhead::expect(const OutlookPtr& saved, const std::vector<ChangeSet>& edits) {
    const std::lock_guard list(state_->listing);
    state_->expected.clear();
    for (const auto& changes : edits) {
        Edit edit{saved, changes, rowsOf(changes)};
        if (!state_->find(edit)) state_->expected.push_back(std::move(edit));
    }
    if (edits.empty()) std::erase_if(state_->kept, [](const Derived& of) { return of.isAhead; });
    if (state_->expected.empty() || std::exchange(state_->isAtWork, true)) return;
    State::deriveExpected(state_);
}

/// Whatever is being derived just now is dropped with the rest, without waiting for it.
void SeasonsAhead::goOnFrom(const OutlookPtr& saved) {
    expect(nullptr, {});
    state_ = std::make_shared<State>(state_->whenThere, *saved);
}

}  // namespace tenthday
