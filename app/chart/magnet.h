/// @file magnet.h  Days on which a dragged batch clashes with nothing; found beside the window's
/// own work, while the drag goes on.
#pragma once
#include <QObject>
#include <memory>
#include <vector>

#include "desk/side_work.h"
#include "outlook/outlook.h"

namespace tenthday {

class Magnet : public QObject {
    Q_OBJECT

public:
    /// So many days on either side of the batch's own are tried.
    static constexpr int kReach = 14;

    explicit Magnet(QObject* parent = nullptr);
    ~Magnet() override { end(); }

    /// Looks for days about the batch's start. @param saved  the season as kept
    void begin(const OutlookPtr& saved, Id<Batch> batch);
    /// Forgets them.
    void end();
    /// In order, as far as they are found: those within five days come first.
    [[nodiscard]] const std::vector<Day>& clearDays() const { return clear_; }
    /// More may come.
    [[nodiscard]] bool isLooking() const { return isLooking_; }
    /// Frames of the drag: the search goes on where they rest, and slowly where they do not.
    void frameBegins();
    void frameEnds();

Q_SIGNALS:
    /// More of them.
    void found();

private:
    class Search;
    void lookOn(const std::shared_ptr<Search>& search);

    std::vector<Day> clear_;
    bool isLooking_ = false;
    class Pace;
    std::shared_ptr<Pace> pace_;
    SideWork work_{this};
};

/// Whole days for so many days of a drag: a clear day draws from further away than another, so that
/// those between can still be reached.
[[nodiscard]] Days drawnTo(Day start, qreal days, const std::vector<Day>& clear);

}  // namespace tenthday
