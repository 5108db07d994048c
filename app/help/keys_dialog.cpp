#include "help/keys_dialog.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QScrollArea>
#include <QVBoxLayout>

#include "screen_text/key_text.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

void gather(const QMenu& menu, std::vector<key_text::Key>& keys) {
    for (const auto* action : menu.actions()) {
        if (action->menu() != nullptr) gather(*action->menu(), keys);
        if (action->shortcut().isEmpty()) continue;
        keys.push_back({action->shortcut().toString(QKeySequence::NativeText),
                        window_text::asTitle(action->text()).section(u':', 0, 0)});
    }
}

/// One column: a head, then a line for each key.
QWidget* column(const std::vector<std::pair<QString, std::vector<key_text::Key>>>& parts) {
    auto* page = new QWidget;
    auto* grid = new QGridLayout(page);
    grid->setHorizontalSpacing(18);
    grid->setVerticalSpacing(5);
    int row = 0;
    for (const auto& [name, keys] : parts) {
        auto* head = new QLabel(name);
        auto bold = head->font();
        bold.setBold(true);
        head->setFont(bold);
        if (row > 0) grid->setRowMinimumHeight(row++, 10);
        grid->addWidget(head, row++, 0, 1, 2);
        for (const auto& key : keys) {
            grid->addWidget(new QLabel(key.keys), row, 0, Qt::AlignTop | Qt::AlignLeft);
            auto* what = new QLabel(key.what);
            what->setWordWrap(true);
            grid->addWidget(what, row++, 1, Qt::AlignTop);
        }
    }
    grid->setColumnStretch(1, 1);
    grid->setRowStretch(row, 1);
    return page;
}

}  // namespace

KeysDialog::KeysDialog(const QMenuBar& menus, QWidget* parent) : QDialog(parent) {
    setWindowTitle(key_text::head());
    std::vector<key_text::Key> anywhere;
    for (const auto* action : menus.actions())
        if (action->menu() != nullptr) gather(*action->menu(), anywhere);
    auto* both = new QWidget;
    auto* side = new QHBoxLayout(both);
    side->setSpacing(36);
    side->addWidget(column({{key_text::onTheChart(), key_text::chartKeys()},
                            {key_text::withThePointer(), key_text::pointer()},
                            {key_text::planningABatch(), key_text::batchKeys()},
                            {key_text::onTheWeather(), key_text::weatherKeys()}}),
                    3);
    side->addWidget(column({{key_text::anywhere(), anywhere},
                            {key_text::onThePageOfNucs(), key_text::nucsKeys()},
                            {key_text::onTheWeek(), key_text::weekKeys()},
                            {key_text::onTheVirgins(), key_text::virginKeys()},
                            {key_text::onTheEvening(), key_text::eveningKeys()},
                            {key_text::onTheCellsDay(), key_text::cellsDayKeys()},
                            {key_text::onTheOrders(), key_text::orderKeys()},
                            {key_text::inTheSetUp(), key_text::setupKeys()},
                            {key_text::onTheTradeNumbers(), key_text::factsKeys()}}),
                    2);
    auto* area = new QScrollArea;
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidget(both);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* outer = new QVBoxLayout(this);
    outer->addWidget(area, 1);
    outer->addWidget(buttons);
    resize(820, 560);
}

}  // namespace tenthday
