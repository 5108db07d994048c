/// @file chart_desk_link.h  Joins the chart to the open book: wishes go one way, pictures the
/// other.
#pragma once
#include <QObject>
#include <deque>
#include <optional>
#include <utility>

#include "chart/season_chart.h"
#include "desk/desk.h"

namespace tenthday {

/// Lives as long as both; a child of the chart. A refused move leaves the book as it was and is
/// told on the chart and by `refused`.
class ChartDeskLink : public QObject {
    Q_OBJECT

public:
    ChartDeskLink(SeasonChart& chart, Desk& desk);

Q_SIGNALS:
    /// One English line, for the window's status line.
    void refused(const QString& why);

private:
    void show(const OutlookPtr& outlook, const Changes& changes);
    void preview(const ChartWish& wish);
    void expect(const std::vector<ChartWish>& wishes);
    void giveNext();
    [[nodiscard]] Result<ChangeSet> changesOf(const ChartWish& wish);
    void dropPreview();
    void save(const ChartWish& wish);
    void tell(const Error& error);

    SeasonChart& chart_;
    Desk& desk_;
    OutlookPtr saved_;
    std::optional<ChangeSet> next_;  ///< expected, and the chart waits for its season
    std::optional<std::vector<ChangeSet>> afterFrame_;  ///< expected, and not to be derived before
    /// What wishes of what is saved make, of late: rows that are new keep their ids.
    std::deque<std::pair<ChartWish, ChangeSet>> made_;
};

}  // namespace tenthday
