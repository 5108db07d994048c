/// @file side_work.h  Work beside the window's own: one question at a time.
#pragma once
#include <QCoreApplication>
#include <QObject>
#include <QPointer>
#include <atomic>
#include <memory>

#include "desk/beside.h"

namespace tenthday {

/// A new question ends the one before, whose answer is dropped. Ending never waits.
class SideWork {
public:
    /// @param owner  answers are for it; none comes once it is gone
    explicit SideWork(QObject* owner) : owner_(owner) {}
    ~SideWork() { cancel(); }
    SideWork(const SideWork&) = delete;
    SideWork& operator=(const SideWork&) = delete;

    /// @param find  called beside; touches nothing of the owner
    /// @param take  called with what it found, in the owner's thread
    template <class Find, class Take>
    void ask(Find find, Take take) {
        cancel();
        auto cancelled = std::make_shared<std::atomic<bool>>(false);
        cancelled_ = cancelled;
        beside(Haste::Later, [cancelled, find, take, owner = owner_] {
            if (*cancelled) return;
            const auto answer = find();
            QMetaObject::invokeMethod(qApp, [cancelled, take, owner, answer] {
                if (owner && !*cancelled) take(answer);
            });
        });
    }
    void cancel() {
        if (cancelled_) *cancelled_ = true;
        cancelled_.reset();
    }

private:
    QPointer<QObject> owner_;
    std::shared_ptr<std::atomic<bool>> cancelled_;
};

}  // namespace tenthday
