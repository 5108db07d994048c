#include "window/backup_dialog.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "screen_text/window_text.h"

namespace tenthday {

BackupDialog::BackupDialog(const QStringList& backups, QWidget* parent)
    : QDialog(parent), backups_(backups), list_(new QListWidget) {
    setWindowTitle(window_text::asTitle(window_text::restoreBackup()));
    auto* text = new QLabel(window_text::whichBackup());
    text->setWordWrap(true);
    for (const auto& path : backups_) {
        const auto size = QLocale().formattedDataSize(QFileInfo(path).size(), 0);
        list_->addItem(window_text::backupName(path) + QStringLiteral("   ") + size);
    }
    list_->setCurrentRow(0);
    auto* buttons = new QDialogButtonBox;
    buttons->addButton(window_text::restoreNow(), QDialogButtonBox::AcceptRole);
    auto* cancel = buttons->addButton(window_text::cancel(), QDialogButtonBox::RejectRole);
    cancel->setDefault(true);  // Enter by mistake changes nothing
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(list_, &QListWidget::itemDoubleClicked, this, &QDialog::accept);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    column->addWidget(text);
    column->addWidget(list_, 1);
    column->addWidget(buttons);
    resize(460, 340);
}

QString BackupDialog::chosen() const { return backups_.value(list_->currentRow()); }

}  // namespace tenthday
