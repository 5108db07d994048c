#include "week/week_model.h"

#include <QApplication>
#include <QFont>
#include <QFontMetrics>
#include <algorithm>

#include "look/palette.h"
#include "screen_text/chart_text.h"
#include "screen_text/sheet_text.h"
#include "screen_text/week_text.h"
#include "tasks/given.h"

namespace tenthday {

void WeekModel::show(OutlookPtr outlook, IsoWeek week) {
    beginResetModel();
    outlook_ = std::move(outlook);
    week_ = week;
    const Day today = outlook_->snapshot.today();
    const auto all = tasksOf(*outlook_);
    const auto days = daysOf(week);
    tasks_ = ofWeek(all, week);
    open_ = today <= days.last ? stillOpen(all, today) : std::vector<NumberedTask>{};
    rows_.clear();
    if (!open_.empty())
        rows_.push_back({Group::StillOpen, open_.front().task.day,
                         week_text::stillOpen(static_cast<int>(open_.size())), nullptr});
    for (const auto& entry : open_) rows_.push_back({Group::StillOpen, entry.task.day, {}, &entry});
    auto next = tasks_.begin();
    for (Day day = days.first; day <= days.last; day += Days{1}) {
        const bool empty = next == tasks_.end() || next->task.day != day;
        rows_.push_back(
            {Group::OfDay, day, week_text::dayHead(day, day == today, empty), nullptr, empty});
        for (; next != tasks_.end() && next->task.day == day; ++next)
            rows_.push_back({Group::OfDay, day, {}, &*next});
    }
    endResetModel();
}

const Task* WeekModel::taskAt(int row) const {
    if (row < 0 || row >= rowCount()) return nullptr;
    const auto* entry = rows_[static_cast<std::size_t>(row)].entry;
    return entry ? &entry->task : nullptr;
}

bool WeekModel::isStillOpen(int row) const {
    return rows_[static_cast<std::size_t>(row)].group == Group::StillOpen;
}

Day WeekModel::dayAt(int row) const { return rows_[static_cast<std::size_t>(row)].day; }

int WeekModel::mustCount() const {
    return static_cast<int>(std::count_if(tasks_.begin(), tasks_.end(),
                                          [](const auto& entry) { return entry.task.must; }));
}

int WeekModel::doneCount() const {
    return static_cast<int>(std::count_if(tasks_.begin(), tasks_.end(), [](const auto& entry) {
        return entry.task.done.has_value();
    }));
}

int WeekModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int WeekModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString WeekModel::text(const Row& row, int column) const {
    const auto& task = row.entry->task;
    switch (column) {
        case Number:
            return isoWeekOf(row.day) == week_ ? chart_text::number(row.entry->number) : QString();
        case What:
            return week_text::task(*outlook_, task);
        case About:
            return sheet_text::with(
                week_text::subject(*outlook_, task),
                sheet_text::givenTo(QString::fromStdString(givenTo(outlook_->snapshot, task.key))));
        case Count:
            return week_text::count(task);
        case Yard: {
            const auto yard = task.yard ? outlook_->snapshot.find(*task.yard) : nullptr;
            return yard ? QString::fromStdString(yard->label) : QString();
        }
        case Must:
            return week_text::must(task);
        case When:
            return week_text::when(task, row.group == Group::StillOpen);
        default:
            return {};
    }
}

QVariant WeekModel::headData(const Row& row, int column, int role) const {
    const auto look = lookOf(QApplication::palette());
    switch (role) {
        case Qt::DisplayRole:
            return column == 0 ? row.head : QVariant();
        case Qt::FontRole: {
            QFont font;
            font.setBold(!row.empty);
            return font;
        }
        case Qt::ForegroundRole:
            return paletteOf(look)[row.group == Group::StillOpen ? Role::Caution : Role::Ink];
        case Qt::BackgroundRole:
            return paletteOf(look)[row.empty ? Role::WeekendGround : Role::DayOffGround];
        case Qt::SizeHintRole:  // a head goes over all columns: it must not widen the first
            return QSize(0, QFontMetrics(QApplication::font()).height() + 8);
        default:
            return {};
    }
}

QVariant WeekModel::data(const QModelIndex& index, int role) const {
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    if (!row.entry) return headData(row, index.column(), role);
    const auto& task = row.entry->task;
    if (role == Qt::DisplayRole) return text(row, index.column());
    if (role == Qt::CheckStateRole && index.column() == Done)
        return task.done ? Qt::Checked : Qt::Unchecked;
    if (role == Qt::AccessibleTextRole && index.column() == Done)
        return week_text::columnHead(Done);
    if (role == Qt::TextAlignmentRole && (index.column() == Number || index.column() == Count))
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role == Qt::ForegroundRole && task.done)
        return QApplication::palette().brush(QPalette::PlaceholderText);
    if (role == Qt::FontRole && task.must && !task.done) {
        QFont font;
        font.setBold(true);
        return font;
    }
    return {};
}

QVariant WeekModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return week_text::columnHead(section);
}

Qt::ItemFlags WeekModel::flags(const QModelIndex& index) const {
    if (taskAt(index.row()) == nullptr) return Qt::NoItemFlags;  // keys pass over heads
    auto flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    if (index.column() == Done && tickable_) flags |= Qt::ItemIsUserCheckable;
    return flags;
}

bool WeekModel::setData(const QModelIndex& index, const QVariant& /*value*/, int role) {
    if (role != Qt::CheckStateRole) return false;
    Q_EMIT tickWished(index.row());
    return true;
}

}  // namespace tenthday
