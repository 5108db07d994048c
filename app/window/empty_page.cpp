#include "window/empty_page.h"

#include <QAction>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "look/page_parts.h"
#include "screen_text/window_text.h"

namespace tenthday {

EmptyPage::EmptyPage(const QList<QAction*>& actions, QWidget* parent) : QWidget(parent) {
    auto* head = new QLabel(window_text::noBookHead());
    makeHead(*head, 1.6);
    auto* text = new QLabel(window_text::noBookText());
    text->setWordWrap(true);
    auto* narrow = new QWidget;
    narrow->setFixedWidth(420);
    auto* column = new QVBoxLayout(narrow);
    column->setSpacing(12);
    column->addWidget(head);
    column->addWidget(text);
    column->addSpacing(12);
    for (auto* action : actions) addButton(*column, action);
    // Stretches, not an alignment: with one, wrapped text would be given too little height.
    auto* middle = new QHBoxLayout;
    middle->addStretch();
    middle->addWidget(narrow);
    middle->addStretch();
    auto* outer = new QVBoxLayout(this);
    outer->addStretch(2);
    outer->addLayout(middle);
    outer->addStretch(3);
}

void EmptyPage::addButton(QVBoxLayout& column, QAction* action) {
    auto* button = new QPushButton(action->text());
    button->setMinimumHeight(36);
    button->setAutoDefault(true);
    const auto follow = [button, action] {
        button->setEnabled(action->isEnabled());
        button->setVisible(action->isVisible());
    };
    follow();
    connect(action, &QAction::changed, button, follow);
    connect(button, &QPushButton::clicked, action, &QAction::trigger);
    column.addWidget(button);
}

}  // namespace tenthday
