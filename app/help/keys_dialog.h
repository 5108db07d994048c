/// @file keys_dialog.h  All keys, by where they work. Those of the menus are read from the menus.
#pragma once
#include <QDialog>

class QMenuBar;

namespace tenthday {

class KeysDialog : public QDialog {
public:
    KeysDialog(const QMenuBar& menus, QWidget* parent);
};

}  // namespace tenthday
