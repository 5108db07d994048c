/// @file welcome_page.h  What the window shows while no book is open: the ways to one.
#pragma once
#include <QWidget>

#include "options/settings.h"

class QAction;
class QLabel;
class QListWidget;
class QVBoxLayout;

namespace tenthday {

/// A button for each action with a line that says what it does, and the books opened lately.
class WelcomePage : public QWidget {
    Q_OBJECT

public:
    struct Way {
        QAction* action;
        QString does;
    };
    explicit WelcomePage(const QList<Way>& ways, QWidget* parent = nullptr);

    void showRecent(const QList<RecentBook>& books);
    /// The books opened lately, else the first way.
    void focusFirst();
    [[nodiscard]] QListWidget& recent() { return *recent_; }

Q_SIGNALS:
    void bookWished(const QString& path);
    void bookForgotten(const QString& path);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void addWay(QVBoxLayout& column, const Way& way);
    void openCurrent();
    [[nodiscard]] QString currentPath() const;

    QLabel* recentHead_;
    QListWidget* recent_;
    QLabel* recentKeys_;
};

}  // namespace tenthday
