#include "look/column_fit.h"

#include <QEvent>
#include <QStyle>
#include <QTableView>
#include <QTimer>
#include <algorithm>

#include "look/airy_cells.h"
#include "look/airy_head.h"

namespace tenthday {
namespace {

constexpr int kFewestLetters = 10;
constexpr int kWholeLetters = 20;  ///< days and numbers are shown whole or not at all

int given(const ColumnWish& column, int room) {
    return std::max(column.least, std::min(column.wanted, room));
}

int widthOf(const std::vector<ColumnWish>& columns, int room) {
    int width = 0;
    for (const auto& column : columns) width += given(column, room);
    return width;
}

std::vector<int> unbounded(const AiryHead& head) {
    return std::vector<int>(static_cast<std::size_t>(head.count()), QWIDGETSIZE_MAX);
}

/// Whether words longer than a list lets one column ask for are asked for, too.
enum class Words : std::uint8_t { Most, All };

/// What the columns ask for, however much room there is; hidden ones nothing.
std::vector<ColumnWish> wishesOf(const QTableView& table, const AiryHead& head, AiryCells& cells,
                                 ListFit fit, Words asked = Words::Most) {
    auto before = cells.rooms();
    const auto fitBefore = cells.fit();
    cells.setRooms(asked == Words::All ? unbounded(head) : std::vector<int>());
    cells.setFit(fit);
    const QAbstractItemView& view = table;
    const int whole = cells.widthOfLetters(kWholeLetters, table.fontMetrics());
    std::vector<ColumnWish> columns(static_cast<std::size_t>(head.count()));
    for (int column = 0; column < head.count(); ++column) {
        if (head.isSectionHidden(column)) continue;
        const int name = head.widthOf(column, fit);
        const auto mode = head.sectionResizeMode(column);
        const bool isSet = mode == QHeaderView::Interactive || mode == QHeaderView::Fixed;
        const bool isBroken = mode == QHeaderView::Stretch && table.wordWrap();
        const int words = isSet      ? head.sectionSize(column)
                          : isBroken ? name
                                     : std::max(name, view.sizeHintForColumn(column));
        const bool isKept =
            isSet || words <= whole || table.itemDelegateForColumn(column) != nullptr;
        columns[static_cast<std::size_t>(column)] = {isKept ? words : name, words};
    }
    cells.setRooms(std::move(before));
    cells.setFit(fitBefore);
    return columns;
}

/// For each column the widest it may be; none where all have room for their words. One that is not
/// cut may grow with its words.
std::vector<int> roomsOf(const std::vector<ColumnWish>& columns, int room) {
    const auto isCut = [&](const ColumnWish& column) {
        return given(column, room) < column.wanted;
    };
    if (std::none_of(columns.begin(), columns.end(), isCut)) return {};
    std::vector<int> rooms;
    for (const auto& column : columns)
        rooms.push_back(isCut(column) ? given(column, room) : std::max(room, column.wanted));
    return rooms;
}

class ColumnFit : public QObject {
public:
    explicit ColumnFit(QTableView& table)
        : QObject(&table), table_(table), timer_(new QTimer(this)) {
        timer_->setSingleShot(true);
        timer_->setInterval(0);
        connect(timer_, &QTimer::timeout, this, [this] { fit(); });
        table.viewport()->installEventFilter(this);
        follow();
    }
    /// The table has another head.
    void follow() {
        auto* head = table_.horizontalHeader();
        const auto soon = [this] {
            if (!fitting_) timer_->start();
        };
        connect(head, &QHeaderView::sectionResized, this, soon);
        connect(head, &QHeaderView::sectionCountChanged, this, soon);
        timer_->start();
    }
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Resize || event->type() == QEvent::FontChange) timer_->start();
        return QObject::eventFilter(watched, event);
    }

private:
    void fit() {
        auto* head = dynamic_cast<AiryHead*>(table_.horizontalHeader());
        auto* cells = dynamic_cast<AiryCells*>(table_.itemDelegate());
        if (head == nullptr || cells == nullptr || head->count() == 0) return;
        const int width = table_.viewport()->width();
        auto chosen = ListFit::Airy;
        auto columns = wishesOf(table_, *head, *cells, chosen);
        for (const auto closer : {ListFit::Close, ListFit::Broken}) {
            if (widthOf(columns, QWIDGETSIZE_MAX) <= width) break;
            chosen = closer;
            columns = wishesOf(table_, *head, *cells, chosen);
        }
        // A bar that comes and goes with the height of rows must not make it loose and close in
        // turn.
        const int bar = table_.style()->pixelMetric(QStyle::PM_ScrollBarExtent);
        if (chosen < head->fit() && width > closeAt_ && width <= closeAt_ + bar) {
            chosen = head->fit();
            columns = wishesOf(table_, *head, *cells, chosen);
        }
        if (chosen > head->fit()) closeAt_ = width;
        const int narrowest = cells->widthOfLetters(kFewestLetters, table_.fontMetrics());
        int room = roomOfColumns(columns, width, narrowest);
        auto rooms = roomsOf(columns, room);
        if (rooms.empty()) {  // what they leave is for words longer than that
            columns = wishesOf(table_, *head, *cells, chosen, Words::All);
            room = std::max(roomOfColumns(columns, width, narrowest),
                            cells->widthOfMost(table_.fontMetrics()));
            rooms = roomsOf(columns, room);
            if (rooms.empty()) rooms = unbounded(*head);
        }
        const bool isWider = head->length() > std::max(width, widthOf(columns, room));
        if (rooms == cells->rooms() && chosen == head->fit() && !isWider) return;
        cells->setRooms(std::move(rooms));
        cells->setFit(chosen);
        fitting_ = true;
        head->setFit(chosen);
        // A stretched last column keeps what it once had until it is told otherwise.
        const int last = head->logicalIndex(head->count() - 1);
        if (head->stretchLastSection() && !head->isSectionHidden(last))
            head->resizeSection(last, given(columns[static_cast<std::size_t>(last)], room));
        fitting_ = false;
    }

    QTableView& table_;
    QTimer* timer_;
    bool fitting_ = false;
    int closeAt_ = QWIDGETSIZE_MAX;  ///< the width for which it was made closer last
};

}  // namespace

int roomOfColumns(const std::vector<ColumnWish>& columns, int width, int narrowest) {
    int most = narrowest;
    for (const auto& column : columns) most = std::max(most, column.wanted);
    if (widthOf(columns, most) <= width) return QWIDGETSIZE_MAX;
    int least = narrowest;  // fits or is all there can be; `most` does not fit
    while (most - least > 1) {
        const int middle = least + (most - least) / 2;
        (widthOf(columns, middle) <= width ? least : most) = middle;
    }
    return least;
}

int widthOfColumns(const QTableView& table) {
    const auto* head = dynamic_cast<AiryHead*>(table.horizontalHeader());
    auto* cells = dynamic_cast<AiryCells*>(table.itemDelegate());
    if (head == nullptr || cells == nullptr) return table.horizontalHeader()->length();
    return widthOf(wishesOf(table, *head, *cells, ListFit::Airy), QWIDGETSIZE_MAX);
}

void fitColumns(QTableView& table) {
    for (auto* child : table.children())
        if (auto* fit = dynamic_cast<ColumnFit*>(child)) return fit->follow();
    new ColumnFit(table);
}

}  // namespace tenthday
