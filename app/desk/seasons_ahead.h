/// @file seasons_ahead.h  Seasons as edits would make them: derived when asked for, or before,
/// beside the window's own work, where somebody says what is likely to be asked for next.
#pragma once
#include <functional>
#include <memory>
#include <vector>

#include "base/result.h"
#include "outlook/outlook.h"
#include "records/change_set.h"

namespace tenthday {

/// Of one thread, which waits for nothing but a season that is just being derived. What comes out
/// is the same whether it was expected or not.
class SeasonsAhead {
public:
    /// @param whenThere  is called beside, in the other thread, each time an expected one is there
    explicit SeasonsAhead(std::function<void()> whenThere = {});
    ~SeasonsAhead();
    SeasonsAhead(const SeasonsAhead&) = delete;
    SeasonsAhead& operator=(const SeasonsAhead&) = delete;

    /// The season of a snapshot.
    [[nodiscard]] OutlookPtr of(const Snapshot& snapshot);
    /// The season after an edit, or why it cannot be.
    [[nodiscard]] Result<OutlookPtr> after(const OutlookPtr& saved, const ChangeSet& edit);
    /// One of these edits is likely to be asked for next, the first sooner than the others. What
    /// was expected before and is not there yet is not any more. None: what was never asked for is
    /// forgotten as well.
    void expect(const OutlookPtr& saved, const std::vector<ChangeSet>& edits);
    /// Forgets what was derived ahead; what comes next is near this.
    void goOnFrom(const OutlookPtr& saved);
    /// What after() would give at once, without asking for it; null where it would not.
    [[nodiscard]] OutlookPtr find(const OutlookPtr& saved, const ChangeSet& edit) const;
    /// So many seasons were derived before they were asked for, and asked for then.
    [[nodiscard]] int wereThere() const { return wereThere_; }

private:
    struct State;
    std::shared_ptr<State> state_;  ///< of the thread beside as well
    int wereThere_ = 0;
};

}  // namespace tenthday
