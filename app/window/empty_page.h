/// @file empty_page.h  What the window shows while no book is open.
#pragma once
#include <QWidget>

class QAction;
class QVBoxLayout;

namespace tenthday {

/// A heading, a sentence, and a button for each action, the first being the default.
class EmptyPage : public QWidget {
    Q_OBJECT

public:
    explicit EmptyPage(const QList<QAction*>& actions, QWidget* parent = nullptr);

private:
    void addButton(QVBoxLayout& column, QAction* action);
};

}  // namespace tenthday
