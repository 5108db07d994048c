/// @file orders_page.h  The page of orders: how sure each is, what more can be promised, and all
/// that is done with an order.
#pragma once
#include <QPointer>
#include <QWidget>

#include "desk/desk.h"
#include "desk/side_work.h"
#include "desk/while_seen.h"
#include "orders/orders_model.h"
#include "reasons/why_dialog.h"

class QComboBox;
class QDialog;
class QLabel;
class QLineEdit;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace tenthday {

class OrdersFilter;
class ReasonsView;
struct FieldsAsked;

/// Reckons only while it is seen. Every action is one undo step.
class OrdersPage : public QWidget {
    Q_OBJECT

public:
    /// @param desk  must outlive the page
    explicit OrdersPage(Desk& desk, QWidget* parent = nullptr);
    ~OrdersPage() override;

    /// The current order, or null.
    [[nodiscard]] const OrderRow* chosen() const;
    /// Shows an order, whatever the filter.
    void choose(Id<Order> order);
    /// The catch of the batch that gives the current order most; none where none does.
    [[nodiscard]] DateOfBatch chosenDate() const;

    void addOrder();
    void changeOrder();
    void deliver();
    void replace();
    void earmark();
    void toggleWaiting();
    void toggleCancelled();
    void deleteOrder();
    void addBought();
    void askWhatIf();
    void showLosses();
    /// Takes in lines copied from a spreadsheet: what is on the clipboard, unless a text is given.
    void pasteOrders(const QString& text = {});
    /// The orders listed, or the chosen one, for a spreadsheet.
    void copyOrders();

    [[nodiscard]] QTableView& table() { return *table_; }
    [[nodiscard]] QComboBox& filter() { return *filter_; }
    [[nodiscard]] QLineEdit& find() { return *find_; }
    [[nodiscard]] ReasonsView& reasons() { return *reasons_; }
    [[nodiscard]] QString totals() const;
    [[nodiscard]] QString told() const;
    /// What is shown in place of an empty table; empty where there are orders.
    [[nodiscard]] QString emptyText() const;
    /// The dialog open now, or null.
    [[nodiscard]] QDialog* dialog() const { return asking_; }
    /// How orders stand is not known for what is shown yet; until then it is told as it was.
    [[nodiscard]] bool isReckoning() const { return isReckoning_; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] QWidget* makeTop();
    [[nodiscard]] QWidget* makeFoot();
    void connectParts();
    bool key(int key, Qt::KeyboardModifiers with);
    void follow();
    void take(const OrdersReckoned& made);
    /// Keeps the chosen order while it is listed, else the place in the list.
    void showRows(const OutlookPtr& outlook, std::vector<OrderRow> rows);
    void tellTotals(const std::vector<PromiseWeek>& weeks);
    void tellCounts();
    void tellCurrent();
    void tellEmpty();
    void ask(FieldsAsked asked);
    void open(QDialog* dialog);
    /// Whether the current order can be worked on now; tells why not.
    [[nodiscard]] const OrderRow* openOrder();
    void setStandingTo(OrderStanding standing);
    /// Empty when done, else why not.
    QString save(const Result<ChangeSet>& changes);

    Desk& desk_;
    WhileSeen seen_{this, [this] { follow(); }};
    bool isReckoning_ = false;
    SideWork work_{this};
    OrdersModel* model_;
    OrdersFilter* shown_;
    QTableView* table_;
    QStackedWidget* list_;
    QLabel* empty_;
    ReasonsView* reasons_;
    QLabel* head_;
    QLabel* totals_;
    QLabel* counts_;
    QLabel* told_;
    QComboBox* filter_;
    QLineEdit* find_;
    QPushButton* change_;
    QPushButton* deliver_;
    QPushButton* replace_;
    QPushButton* earmark_;
    QPushButton* waiting_;
    QPushButton* cancel_;
    std::vector<QPushButton*> writing_;  ///< need a book that can be written
    QPointer<QDialog> asking_;
};

}  // namespace tenthday
