#include "look/table_keys.h"

#include <QApplication>
#include <QClipboard>
#include <QKeyEvent>
#include <QTableView>

#include "look/table_copy.h"
#include "look/table_note.h"

namespace tenthday {
namespace {

class KeysFilter : public QObject {
public:
    KeysFilter(QTableView& table, TableKeys keys) : QObject(&table), keys_(std::move(keys)) {}

    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::KeyPress) {
            const auto* key = static_cast<QKeyEvent*>(event);
            if (key->matches(QKeySequence::Copy)) return copy(), true;
            if (key->matches(QKeySequence::Paste) && keys_.paste) return keys_.paste(), true;
        }
        return QObject::eventFilter(watched, event);
    }

private:
    void copy() const {
        const auto text = keys_.copied();
        if (!text.isNull()) QApplication::clipboard()->setText(text);
    }

    TableKeys keys_;
};

}  // namespace

void setTableKeys(QTableView& table, TableKeys keys) {
    // A filter that was set later is asked first.
    table.installEventFilter(new KeysFilter(table, std::move(keys)));
}

void pasteInto(QTableView& table) {
    QKeyEvent press(QEvent::KeyPress, Qt::Key_V, Qt::ControlModifier);
    QApplication::sendEvent(&table, &press);
}

void sayNoPaste(QTableView& table, std::function<QString()> why) {
    setTableKeys(table, {[&table] { return textOf(table); },
                         [&table, why = std::move(why)] { showNote(table, why()); }});
}

}  // namespace tenthday
