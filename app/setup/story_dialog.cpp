#include "setup/story_dialog.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include "look/page_parts.h"
#include "look/palette.h"
#include "look/table_keys.h"
#include "screen_text/derived_text.h"

namespace tenthday {
namespace {

constexpr int kColumns = 3;

Role roleOf(CardTone tone) {
    return tone == CardTone::Danger    ? Role::Danger
           : tone == CardTone::Caution ? Role::Caution
                                       : Role::Ink;
}

}  // namespace

StoryDialog::StoryDialog(const Story& story, QWidget* parent)
    : QDialog(parent),
      lines_(new QTableWidget(0, kColumns)),
      empty_(new QLabel(story.empty)),
      foot_(new QLabel(story.foot)) {
    setWindowTitle(story.head);
    auto* head = new QLabel(story.head);
    makeHead(*head);
    makeList(*lines_, story.head);
    sayNoPaste(*lines_, derived_text::story);
    lines_->setSelectionMode(QAbstractItemView::SingleSelection);
    lines_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    lines_->setTabKeyNavigation(false);
    lines_->setWordWrap(true);
    lines_->horizontalHeader()->setStretchLastSection(true);
    lines_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    for (auto* label : {empty_, foot_}) label->setWordWrap(true);
    empty_->setAlignment(Qt::AlignCenter);
    empty_->setMargin(24);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    column->addWidget(head);
    column->addWidget(lines_, 1);
    column->addWidget(empty_, 1);
    column->addWidget(foot_);
    column->addWidget(buttons);
    fill(story.lines);
    lines_->setVisible(!story.lines.empty());
    empty_->setVisible(story.lines.empty());
    foot_->setVisible(!story.foot.isEmpty());
    resize(fontMetrics().averageCharWidth() * 160, fontMetrics().lineSpacing() * 40);
    (story.lines.empty() ? static_cast<QWidget*>(buttons) : lines_)->setFocus();
}

void StoryDialog::fill(const std::vector<StoryLine>& lines) {
    const auto& colours = paletteOf(lookOf(palette()));
    lines_->setRowCount(static_cast<int>(lines.size()));
    for (int column = 0; column < kColumns; ++column)
        lines_->setHorizontalHeaderItem(column,
                                        new QTableWidgetItem(story_text::columnHead(column)));
    for (int row = 0; row < lines_->rowCount(); ++row) {
        const auto& line = lines[static_cast<std::size_t>(row)];
        const QStringList cells{line.when, line.what, line.more};
        for (int column = 0; column < kColumns; ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setToolTip(line.tip.isEmpty() ? cells[column] : line.tip);
            item->setForeground(colours[roleOf(line.tone)]);
            lines_->setItem(row, column, item);
        }
    }
    if (!lines.empty()) lines_->setCurrentCell(0, 0);
}

QString StoryDialog::emptyText() const { return empty_->isHidden() ? QString() : empty_->text(); }
QString StoryDialog::foot() const { return foot_->text(); }

}  // namespace tenthday
