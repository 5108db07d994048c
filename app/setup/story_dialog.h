/// @file story_dialog.h  One thing's season in order, to be read.
#pragma once
#include <QDialog>

#include "screen_text/story_text.h"

class QLabel;
class QTableWidget;

namespace tenthday {

class StoryDialog : public QDialog {
    Q_OBJECT

public:
    StoryDialog(const Story& story, QWidget* parent);

    [[nodiscard]] QTableWidget& lines() { return *lines_; }
    /// What stands in place of lines; empty where there are some.
    [[nodiscard]] QString emptyText() const;
    [[nodiscard]] QString foot() const;

private:
    void fill(const std::vector<StoryLine>& lines);

    QTableWidget* lines_;
    QLabel* empty_;
    QLabel* foot_;
};

}  // namespace tenthday
