#include "orders/order_dialog.h"

#include <QLabel>

#include "screen_text/order_page_text.h"

namespace tenthday {
namespace {

constexpr int kLines = 5;  ///< room kept, so that the dialog does not jump as it is entered

}  // namespace

OrderDialog::OrderDialog(Desk& desk, const OrderWords& words, bool isNew, bool askWeight,
                         KeepChanges keep, QWidget* parent)
    : FieldsDialog(askOrder(desk, words, isNew, askWeight, std::move(keep)),
                   desk.snapshot().today(), parent),
      desk_(desk),
      before_(words),
      live_(new QLabel) {
    live_->setWordWrap(true);
    live_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    live_->setMinimumHeight(kLines * live_->fontMetrics().lineSpacing());
    live_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto bold = live_->font();
    bold.setBold(true);
    live_->setFont(bold);
    setLive(live_);
    rest_.setSingleShot(true);
    rest_.setInterval(kRest);
    connect(&rest_, &QTimer::timeout, this, &OrderDialog::reckon);
    connect(this, &FieldsDialog::changed, this, &OrderDialog::wait);
    reckon();
}

QString OrderDialog::prospect() const { return isReckoning_ ? QString() : live_->text(); }

void OrderDialog::wait() {
    work_.cancel();
    isReckoning_ = true;
    rest_.start();
}

void OrderDialog::reckon() {
    auto words = orderOf(before_, values());
    if (words.order.label.empty())
        words.order.label.assign(1, '?');  // not needed to know how it would be
    isReckoning_ = true;
    if (live_->text().isEmpty()) live_->setText(order_page_text::reckoning());
    work_.ask([outlook = desk_.outlook(), words] { return prospectOf(*outlook, words); },
              [this, words](const Result<OrderProspect>& found) { tell(words, found); });
}

void OrderDialog::tell(const OrderWords& words, const Result<OrderProspect>& found) {
    isReckoning_ = false;
    live_->setText(found ? order_page_text::prospect(words, found.value())
                         : order_page_text::cannotBe(QString::fromStdString(found.error().text)));
}

}  // namespace tenthday
