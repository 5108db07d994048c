#include "desk/while_seen.h"

#include <QEvent>

namespace tenthday {

WhileSeen::WhileSeen(QWidget* page, std::function<void()> follow)
    : page_(page), follow_(std::move(follow)) {
    page_->installEventFilter(this);
}

void WhileSeen::follow() {
    isDue_ = !page_->isVisible();
    if (!isDue_) follow_();
}

bool WhileSeen::eventFilter(QObject* watched, QEvent* event) {
    if (watched == page_ && event->type() == QEvent::Show && isDue_) follow();
    return false;
}

}  // namespace tenthday
