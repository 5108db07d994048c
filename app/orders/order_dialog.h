/// @file order_dialog.h  An order being entered, with what it would be like told below its fields.
#pragma once
#include <QTimer>

#include "desk/side_work.h"
#include "orders/order_asks.h"
#include "outlook/order_prospect.h"

class QLabel;

namespace tenthday {

class OrderDialog : public FieldsDialog {
    Q_OBJECT

public:
    /// So long the keys must rest before the prospect is reckoned, ms.
    static constexpr int kRest = 200;

    /// @param desk  must outlive the dialog
    OrderDialog(Desk& desk, const OrderWords& words, bool isNew, bool askWeight, KeepChanges keep,
                QWidget* parent = nullptr);

    /// What is told of the order as entered; empty while it is not known.
    [[nodiscard]] QString prospect() const;
    [[nodiscard]] bool isReckoning() const { return isReckoning_; }
    [[nodiscard]] QWidget& fieldOf(OrderField which) {
        return field(static_cast<std::size_t>(which));
    }
    void enterIn(OrderField which, const QVariant& value) {
        enter(static_cast<std::size_t>(which), value);
    }

private:
    void wait();
    void reckon();
    void tell(const OrderWords& words, const Result<OrderProspect>& found);

    Desk& desk_;
    OrderWords before_;
    QLabel* live_;
    QTimer rest_;
    SideWork work_{this};
    bool isReckoning_ = false;
};

}  // namespace tenthday
