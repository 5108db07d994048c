#include "batches/week_table.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <algorithm>

#include "look/page_parts.h"
#include "look/table_keys.h"
#include "screen_text/batch_text.h"
#include "screen_text/dates.h"
#include "screen_text/derived_text.h"

namespace tenthday {
namespace {

/// In the order of a batch's days.
constexpr std::array kOrder{
    TaskRule::Confine,        TaskRule::FreeBreeder, TaskRule::MakeUpBuilder,
    TaskRule::TakeCount,      TaskRule::MoveCells,   TaskRule::FirstWildLook,
    TaskRule::SecondWildLook, TaskRule::CageCells,   TaskRule::CellsOut};

std::vector<TaskRule> rulesIn(const std::vector<DayTrial>& week) {
    std::vector<TaskRule> rules;
    for (const auto rule : kOrder)
        if (std::any_of(week.begin(), week.end(), [&](const DayTrial& trial) {
                return std::any_of(trial.jobs.begin(), trial.jobs.end(),
                                   [&](const Job& job) { return job.rule == rule; });
            }))
            rules.push_back(rule);
    return rules;
}

QString dayText(Day day, const FreeDays& free) {
    const auto text = weekdayAndDay(day);
    return free.contains(day) ? batch_text::onFreeDay(text) : text;
}

}  // namespace

WeekTable::WeekTable(QWidget* parent) : QTableWidget(parent) {
    makeList(*this, batch_text::weekHead());
    sayNoPaste(*this, derived_text::weekOfBatch);
    makeCompact(*this);
    setEditTriggers(NoEditTriggers);
    setSelectionMode(SingleSelection);
    connect(this, &QTableWidget::cellDoubleClicked, this, [this](int row) {
        if (row < static_cast<int>(starts_.size()))
            Q_EMIT dayWished(starts_[static_cast<std::size_t>(row)]);
    });
}

void WeekTable::show(const std::vector<DayTrial>& week, const FreeDays& free, Day own) {
    const int kept = currentRow();
    rules_ = rulesIn(week);
    starts_.clear();
    QStringList heads{batch_text::graftColumn()};
    for (const auto rule : rules_) heads += batch_text::jobName(rule);
    heads += batch_text::verdictHead();
    setColumnCount(static_cast<int>(heads.size()));
    setHorizontalHeaderLabels(heads);
    setRowCount(static_cast<int>(week.size()));
    for (int row = 0; row < rowCount(); ++row) {
        const auto& trial = week[static_cast<std::size_t>(row)];
        starts_.push_back(trial.day);
        fill(row, trial, free, trial.day == own);
    }
    horizontalHeader()->setStretchLastSection(true);
    if (kept >= 0 && kept < rowCount()) setCurrentCell(kept, 0);
}

void WeekTable::fill(int row, const DayTrial& trial, const FreeDays& free, bool own) {
    QStringList cells{dayText(trial.graft, free)};
    for (const auto rule : rules_) {
        QStringList days;
        for (const auto& job : trial.jobs) {
            const auto text = dayText(job.dayBeside(free), free);
            if (job.rule == rule && !days.contains(text)) days += text;
        }
        cells += days.join(QStringLiteral(" · "));
    }
    cells += batch_text::verdict(trial, free);
    for (int column = 0; column < columnCount(); ++column) {
        auto* cell = new QTableWidgetItem(cells[column]);
        if (own) {
            auto font = cell->font();
            font.setBold(true);
            cell->setFont(font);
        }
        if (column == columnCount() - 1) cell->setToolTip(batch_text::reasons(trial, free));
        setItem(row, column, cell);
    }
}

void WeekTable::keyPressEvent(QKeyEvent* event) {
    const auto row = static_cast<std::size_t>(currentRow());
    if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && row < starts_.size()) {
        Q_EMIT dayWished(starts_[row]);
        return;
    }
    QTableWidget::keyPressEvent(event);
}

}  // namespace tenthday
