#include "window/welcome_page.h"

#include <QAction>
#include <QDir>
#include <QFileInfo>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QStyle>
#include <QVBoxLayout>

#include "look/page_parts.h"
#include "screen_text/welcome_text.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

constexpr int kWidthInLetters = 74;
constexpr int kMargin = 11;      // px left and right of the column
constexpr int kLineSpacing = 3;  // px around a book of the list

const QString kBetween = QStringLiteral("  ·  ");

/// Two lines: the book, then where it is and when it was opened.
QString lineOf(const RecentBook& book, const QFontMetrics& letters, int width) {
    const QFileInfo file(book.path);
    const auto name = book.label.isEmpty() ? file.completeBaseName() : book.label;
    const auto when = file.exists() ? welcome_text::opened(book.opened) : welcome_text::notFound();
    const auto place = letters.elidedText(QDir::toNativeSeparators(book.path), Qt::ElideMiddle,
                                          width - letters.horizontalAdvance(kBetween + when));
    return name + u'\n' + place + kBetween + when;
}

}  // namespace

WelcomePage::WelcomePage(const QList<Way>& ways, QWidget* parent)
    : QWidget(parent),
      recentHead_(new QLabel(welcome_text::recentHead())),
      recent_(new QListWidget),
      recentKeys_(new QLabel(welcome_text::recentKeys())) {
    auto* head = new QLabel(window_text::title({}));
    makeHead(*head, 2);
    auto* text = new QLabel(welcome_text::purpose());
    text->setWordWrap(true);
    auto* narrow = new QWidget;
    narrow->setFixedWidth(fontMetrics().averageCharWidth() * kWidthInLetters);
    auto* column = new QVBoxLayout(narrow);
    column->setSpacing(8);
    column->setContentsMargins(kMargin, kMargin, kMargin, kMargin);
    column->addWidget(head);
    column->addWidget(text);
    column->addSpacing(14);
    for (const auto& way : ways) addWay(*column, way);
    column->addSpacing(14);
    makeHead(*recentHead_, 1.15);
    column->addWidget(recentHead_);
    recent_->setAccessibleName(welcome_text::recentHead());
    recent_->setAlternatingRowColors(true);
    recent_->setSpacing(kLineSpacing);
    recent_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    recent_->installEventFilter(this);
    recent_->setContextMenuPolicy(Qt::ActionsContextMenu);
    const auto addEntry = [this](const QString& words, auto told) {
        auto* entry = new QAction(words, recent_);
        connect(entry, &QAction::triggered, this, [this, told] {
            if (const auto path = currentPath(); !path.isEmpty()) told(path);
        });
        recent_->addAction(entry);
    };
    addEntry(welcome_text::openRecent(), [this](const QString& path) { Q_EMIT bookWished(path); });
    addEntry(welcome_text::forgetRecent(),
             [this](const QString& path) { Q_EMIT bookForgotten(path); });
    column->addWidget(recent_);
    column->addWidget(recentKeys_);
    connect(recent_, &QListWidget::itemDoubleClicked, this, &WelcomePage::openCurrent);
    // Stretches, not an alignment: with one, wrapped text would be given too little height.
    auto* page = new QWidget;
    auto* middle = new QHBoxLayout;
    middle->setContentsMargins(0, 0, 0, 0);
    middle->addStretch();
    middle->addWidget(narrow);
    middle->addStretch();
    auto* rows = new QVBoxLayout(page);
    rows->addStretch(2);
    rows->addLayout(middle);
    rows->addStretch(3);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(scrolling(page));  // small windows, large letters
    showRecent({});
}

void WelcomePage::addWay(QVBoxLayout& column, const Way& way) {
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(14);
    auto* button = new QPushButton(way.action->text());
    button->setMinimumHeight(36);
    button->setMinimumWidth(fontMetrics().averageCharWidth() * 26);
    button->setAutoDefault(true);
    button->setAccessibleDescription(way.does);
    auto* does = new QLabel(way.does);
    does->setWordWrap(true);
    line->addWidget(button);
    line->addWidget(does, 1);
    const auto follow = [row, button, action = way.action] {
        button->setEnabled(action->isEnabled());
        row->setVisible(action->isVisible());
    };
    follow();
    connect(way.action, &QAction::changed, row, follow);
    connect(button, &QPushButton::clicked, way.action, &QAction::trigger);
    column.addWidget(row);
}

void WelcomePage::showRecent(const QList<RecentBook>& books) {
    const int kept = recent_->currentRow();
    recent_->clear();
    const int margin = kMargin + kLineSpacing + recent_->frameWidth() +
                       style()->pixelMetric(QStyle::PM_FocusFrameHMargin) + 1;
    const int width = fontMetrics().averageCharWidth() * kWidthInLetters - 2 * margin -
                      style()->pixelMetric(QStyle::PM_ScrollBarExtent);
    for (const auto& book : books) {
        auto* item = new QListWidgetItem(lineOf(book, recent_->fontMetrics(), width));
        item->setData(Qt::UserRole, book.path);
        item->setToolTip(QDir::toNativeSeparators(book.path));
        recent_->addItem(item);
    }
    recent_->setCurrentRow(std::clamp(kept, 0, std::max(recent_->count() - 1, 0)));
    for (auto* part : {static_cast<QWidget*>(recentHead_), static_cast<QWidget*>(recent_),
                       static_cast<QWidget*>(recentKeys_)})
        part->setVisible(!books.isEmpty());
    const int line = recent_->fontMetrics().lineSpacing() * 2 + 10;
    recent_->setFixedHeight(std::min(static_cast<int>(books.size()), 5) * line + 6);
}

void WelcomePage::focusFirst() {
    if (recent_->count() > 0)
        recent_->setFocus();
    else if (auto* first = findChild<QPushButton*>())
        first->setFocus();
}

QString WelcomePage::currentPath() const {
    const auto* item = recent_->currentItem();
    return item != nullptr ? item->data(Qt::UserRole).toString() : QString();
}

void WelcomePage::openCurrent() {
    if (const auto path = currentPath(); !path.isEmpty()) Q_EMIT bookWished(path);
}

bool WelcomePage::eventFilter(QObject* watched, QEvent* event) {
    const auto path = currentPath();
    if (watched == recent_ && event->type() == QEvent::KeyPress && !path.isEmpty()) {
        switch (static_cast<QKeyEvent*>(event)->key()) {
            case Qt::Key_Return:
            case Qt::Key_Enter:
                Q_EMIT bookWished(path);
                return true;
            case Qt::Key_Delete:
                Q_EMIT bookForgotten(path);
                return true;
            default:
                break;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace tenthday
