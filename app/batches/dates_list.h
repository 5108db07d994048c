/// @file dates_list.h  Every date of a batch, as a list.
#pragma once
#include <QTableWidget>

#include "timeline/batch_timeline.h"

namespace tenthday {

class DatesList : public QTableWidget {
    Q_OBJECT

public:
    explicit DatesList(QWidget* parent = nullptr);

    /// In the order of time. The chosen event stays chosen.
    void show(const BatchTimeline& timeline);
    /// The event of the chosen line.
    [[nodiscard]] std::optional<Event> chosen() const;
    using QTableWidget::show;

private:
    std::vector<Event> events_;
};

}  // namespace tenthday
