#include "chart/layouts_ahead.h"

#include <mutex>
#include <utility>

#include "desk/beside.h"

namespace tenthday {
namespace {

struct Made {
    LayoutAsk ask;
    LaidOutPtr laid;
};

}  // namespace

struct LayoutsAhead::State {
    std::mutex laying;  ///< taken before `listing`; held while a layout is made
    LaidBefore before;
    std::shared_ptr<const TextRuler> ruler;

    std::mutex listing;
    std::optional<LayoutAsk> expected;  ///< and not begun
    std::optional<LayoutAsk> begun;     ///< beside
    std::optional<Made> ahead;
    std::optional<Made> asked;  ///< for, last

    /// Under `laying`.
    [[nodiscard]] Made make(const LayoutAsk& ask) {
        auto layout = layOut(ask.outlook, ask.axis, ask.options, *ruler, before);
        PictureMarks marks(layout, ask.options.size.toSize());
        return {ask, std::make_shared<const LaidOut>(std::move(layout), std::move(marks))};
    }
    void makeExpected() {
        const std::lock_guard lock(laying);
        const auto ask = [this] {
            const std::lock_guard list(listing);
            return begun = std::exchange(expected, std::nullopt);
        }();
        if (!ask) return;  // asked for meanwhile, or something else was
        std::optional<Made> made = make(*ask);
        const std::lock_guard list(listing);
        if (begun) std::swap(ahead, made);  // else nothing is expected any more
        begun.reset();
    }
    /// Under `listing`.
    [[nodiscard]] bool has(const LayoutAsk& ask) const {
        return begun == ask || (asked && asked->ask == ask) || (ahead && ahead->ask == ask);
    }
};

LayoutsAhead::LayoutsAhead() : state_(std::make_shared<State>()) {}
LayoutsAhead::~LayoutsAhead() { expectNothing(); }

void LayoutsAhead::measureBy(std::shared_ptr<const TextRuler> ruler) {
    expectNothing();
    const std::lock_guard lock(state_->laying);
    const std::lock_guard list(state_->listing);
    state_->before.forget();  // what was laid refers to the ruler
    state_->ahead.reset();
    state_->asked.reset();
    state_->ruler = std::move(ruler);
}

LaidOutPtr LayoutsAhead::of(const LayoutAsk& ask) {
    std::optional<Made> gone;  // is freed once nobody has to wait for that
    const auto kept = [&]() -> LaidOutPtr {
        const std::lock_guard list(state_->listing);
        state_->expected.reset();  // what is wanted now is made here, if it is not yet
        if (state_->asked && state_->asked->ask == ask) return state_->asked->laid;
        if (!state_->ahead || state_->ahead->ask != ask) return nullptr;
        ++wereThere_;
        std::swap(gone, state_->asked);
        std::swap(state_->asked, state_->ahead);
        return state_->asked->laid;
    };
    if (auto laid = kept()) return laid;
    const std::lock_guard lock(state_->laying);
    if (auto laid = kept()) return laid;
    {
        const std::lock_guard list(state_->listing);
        std::swap(gone, state_->asked);
    }
    gone.reset();  // what it took is taken again
    gone = state_->make(ask);
    auto laid = gone->laid;
    const std::lock_guard list(state_->listing);
    std::swap(state_->asked, gone);
    return laid;
}

void LayoutsAhead::expect(const LayoutAsk& ask) {
    const std::lock_guard list(state_->listing);
    if (state_->has(ask)) return state_->expected.reset();
    if (std::exchange(state_->expected, ask)) return;  // its turn is to come
    beside(Haste::Now, [state = state_] { state->makeExpected(); });
}

void LayoutsAhead::expectNothing() {
    const std::lock_guard list(state_->listing);
    state_->expected.reset();
    state_->begun.reset();
    state_->ahead.reset();
}

}  // namespace tenthday
