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
    /// @param plan  what was planned, told where it is another day now; none: not told
    void show(const BatchTimeline& timeline, const std::optional<BatchTimeline>& plan = {});
    /// The event of the chosen line.
    [[nodiscard]] std::optional<Event> chosen() const;
    using QTableWidget::show;

Q_SIGNALS:
    /// Why a date is that day: W, Enter or a double click.
    void whyWished(tenthday::Event event);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    std::vector<Event> events_;
};

}  // namespace tenthday
