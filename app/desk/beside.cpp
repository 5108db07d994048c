#include "desk/beside.h"

#include <QCoreApplication>
#include <QThreadPool>
#include <algorithm>

#include "base/side_by_side.h"

#ifdef Q_OS_LINUX
#include <sys/resource.h>
#endif

namespace tenthday {
namespace {

/// Of the thread that calls it, for good; as far as the system lets it. Frames are made of short
/// pieces of work on all cores: one that waits until a thread beside has had its turn makes the
/// frame late by a whole turn, some milliseconds. Qt's own priorities change nothing on Linux, but
/// for one that may stand still.
void giveWay() {
#ifdef Q_OS_LINUX
    constexpr int kMore = 10;
    constexpr int kMost = 19;
    thread_local const int done =
        setpriority(PRIO_PROCESS, 0, std::min(kMost, getpriority(PRIO_PROCESS, 0) + kMore));
    Q_UNUSED(done)
#endif
}

/// Threads of one haste. They end with the application, as those of Qt's own pool do: answers go
/// through it.
QThreadPool& poolOf(Haste haste) {
    static QThreadPool now;
    static QThreadPool later;
    static const bool isWaitedFor = [] {
        now.setMaxThreadCount(1);  // in the order asked for; frames keep the other cores
        qAddPostRoutine([] {
            now.waitForDone();
            later.waitForDone();
        });
        return true;
    }();
    Q_UNUSED(isWaitedFor)
    return haste == Haste::Now ? now : later;
}

}  // namespace

void beside(Haste haste, std::function<void()> work) {
    poolOf(haste).start([haste, work = std::move(work)] {
        if (haste == Haste::Later) giveWay();
        const OneByOne onOneCore;
        work();
    });
}

}  // namespace tenthday
