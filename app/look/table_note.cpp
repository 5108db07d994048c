#include "look/table_note.h"

#include <QAccessible>
#include <QEvent>
#include <QLabel>
#include <QTableView>
#include <algorithm>

namespace tenthday {
namespace {

constexpr int kPadding = 6;
const QString kName = QStringLiteral("note");

/// A label that lies over the table's foot and goes away with the next stroke.
class Note : public QLabel {
public:
    explicit Note(QTableView& table) : QLabel(&table), table_(table) {
        setObjectName(kName);
        setAutoFillBackground(true);
        setBackgroundRole(QPalette::ToolTipBase);
        setForegroundRole(QPalette::ToolTipText);
        setFrameStyle(QFrame::StyledPanel | QFrame::Plain);
        setMargin(kPadding);
        setWordWrap(true);
        setTextFormat(Qt::PlainText);
        table.installEventFilter(this);
        table.viewport()->installEventFilter(this);
    }
    void tell(const QString& words) {
        setText(words);
        setAccessibleName(words);
        place();
        show();
        raise();
        QAccessibleEvent alert(this, QAccessible::Alert);
        QAccessible::updateAccessibility(&alert);
    }
    bool eventFilter(QObject* watched, QEvent* event) override {
        switch (event->type()) {
            case QEvent::KeyPress:
            case QEvent::MouseButtonPress:
            case QEvent::Wheel:
            case QEvent::FocusOut:
                hide();
                break;
            case QEvent::Resize:
                if (isVisible()) place();
                break;
            default:
                break;
        }
        return QLabel::eventFilter(watched, event);
    }

private:
    void place() {
        const auto area = table_.viewport()->geometry();
        const int high = std::min(heightForWidth(area.width()), area.height());
        setGeometry(area.left(), area.bottom() + 1 - high, area.width(), high);
    }

    QTableView& table_;
};

}  // namespace

void showNote(QTableView& table, const QString& words) {
    auto* found = table.findChild<QLabel*>(kName, Qt::FindDirectChildrenOnly);
    auto* note = found != nullptr ? static_cast<Note*>(found) : new Note(table);
    note->tell(words);
}

QString noteOn(const QTableView& table) {
    const auto* note = table.findChild<QLabel*>(kName, Qt::FindDirectChildrenOnly);
    return note != nullptr && note->isVisibleTo(&table) ? note->text() : QString();
}

}  // namespace tenthday
