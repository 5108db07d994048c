#include "batches/dates_list.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <algorithm>

#include "look/page_parts.h"
#include "look/table_keys.h"
#include "outlook/plan_of.h"
#include "screen_text/batch_text.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/derived_text.h"

namespace tenthday {
namespace {

constexpr int kColumns = 4;

QString capital(QString text) {
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

QString rangeOf(const EventDates& dates, std::optional<Day> planned) {
    if (dates.note == EventNote::Observed)
        return planned ? batch_text::seenNotAsPlanned(*planned) : batch_text::seen();
    if (planned) return batch_text::planned(*planned);
    if (dates.earliest == dates.latest) return {};
    return batch_text::range(shortDayAndClock(dates.earliest), shortDayAndClock(dates.latest));
}

}  // namespace

DatesList::DatesList(QWidget* parent) : QTableWidget(parent) {
    setColumnCount(kColumns);
    QStringList heads;
    for (int i = 0; i < kColumns; ++i) heads += batch_text::dateHead(i);
    setHorizontalHeaderLabels(heads);
    makeList(*this, batch_text::dates());
    sayNoPaste(*this, derived_text::datesOfBatch);
    makeCompact(*this);
    setEditTriggers(NoEditTriggers);
    setSelectionMode(SingleSelection);
    horizontalHeader()->setStretchLastSection(true);
    connect(this, &QTableWidget::cellDoubleClicked, this, [this] {
        if (const auto event = chosen()) Q_EMIT whyWished(*event);
    });
}

void DatesList::show(const BatchTimeline& timeline, const std::optional<BatchTimeline>& plan) {
    const auto kept = chosen();
    auto events = timeline.events;
    std::stable_sort(events.begin(), events.end(),
                     [](const auto& a, const auto& b) { return a.likely < b.likely; });
    setRowCount(static_cast<int>(events.size()));
    events_.clear();
    for (int row = 0; row < rowCount(); ++row) {
        const auto& dates = events[static_cast<std::size_t>(row)];
        events_.push_back(dates.event);
        const auto planned = plan ? plannedElse(*plan, timeline, dates.event) : std::nullopt;
        const QStringList cells{capital(chart_text::event(dates.event)), dayAndClock(dates.likely),
                                batch_text::dayNumber(timeline.dayNumber(dates.likely)),
                                rangeOf(dates, planned)};
        for (int column = 0; column < kColumns; ++column)
            setItem(row, column, new QTableWidgetItem(cells[column]));
        item(row, 2)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
        if (kept == dates.event) setCurrentCell(row, 0);
    }
}

void DatesList::keyPressEvent(QKeyEvent* event) {
    const auto asked = chosen();
    const auto key = event->key();
    if (asked && (key == Qt::Key_W || key == Qt::Key_Return || key == Qt::Key_Enter)) {
        Q_EMIT whyWished(*asked);
        return;
    }
    QTableWidget::keyPressEvent(event);
}

std::optional<Event> DatesList::chosen() const {
    const auto row = static_cast<std::size_t>(currentRow());
    return row < events_.size() ? std::optional(events_[row]) : std::nullopt;
}

}  // namespace tenthday
