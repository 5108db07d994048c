/// @file backup_dialog.h  The backups there are, newest first, to choose one.
#pragma once
#include <QDialog>
#include <QStringList>

class QListWidget;

namespace tenthday {

class BackupDialog : public QDialog {
public:
    /// @param backups  full paths, newest first, at least one
    BackupDialog(const QStringList& backups, QWidget* parent);
    [[nodiscard]] QString chosen() const;

private:
    QStringList backups_;
    QListWidget* list_;
};

}  // namespace tenthday
