/// @file while_seen.h  A page that follows the desk only while it is seen.
#pragma once
#include <QWidget>
#include <functional>

namespace tenthday {

/// What is asked while nobody sees the page is done once, as soon as it is shown.
class WhileSeen : public QObject {
public:
    /// Nothing is due at first. @param page  outlives this  @param follow  brings it up to date
    WhileSeen(QWidget* page, std::function<void()> follow);

    /// Now, or once the page is shown.
    void follow();
    /// Not now, though it is seen: when it is asked or shown again.
    void putOff() { isDue_ = true; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* page_;
    std::function<void()> follow_;
    bool isDue_ = false;
};

}  // namespace tenthday
