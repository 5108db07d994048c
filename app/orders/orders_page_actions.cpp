/// What is done with orders on their page.
#include <QAbstractButton>
#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QMessageBox>
#include <QSortFilterProxyModel>
#include <QTableView>

#include "book/new_id.h"
#include "exchange/pasted.h"
#include "look/table_note.h"
#include "orders/losses_dialog.h"
#include "orders/order_dialog.h"
#include "orders/orders_filter.h"
#include "orders/orders_page.h"
#include "orders/orders_paste.h"
#include "orders/what_if_dialog.h"
#include "screen_text/order_page_text.h"
#include "screen_text/order_text.h"
#include "screen_text/paste_text.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

/// Batches that are expected to fill an order, the one that gives most first.
std::vector<Id<Batch>> likelyBatches(const OrderRow& row) {
    if (!row.outlook) return {};
    auto fills = row.outlook->fills;
    std::stable_sort(fills.begin(), fills.end(),
                     [](const auto& a, const auto& b) { return a.count > b.count; });
    std::vector<Id<Batch>> batches;
    for (const auto& fill : fills)
        if (!fill.batch.isNone()) batches.push_back(fill.batch);
    return batches;
}

}  // namespace

QString OrdersPage::save(const Result<ChangeSet>& changes) {
    const auto done = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (done) return {};
    return window_text::cannotSaveEdit() + u' ' + plain(done.error().text);
}

void OrdersPage::open(QDialog* dialog) {
    told_->hide();
    delete asking_;
    asking_ = dialog;
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void OrdersPage::ask(FieldsAsked asked) {
    open(new FieldsDialog(std::move(asked), desk_.snapshot().today(), this));
}

const OrderRow* OrdersPage::openOrder() {
    const auto* row = chosen();
    if (row == nullptr || desk_.isReadOnly()) return nullptr;
    if (row->terms.standing == OrderStanding::Open) return row;
    told_->setText(order_page_text::notOpen());
    told_->show();
    return nullptr;
}

void OrdersPage::addOrder() {
    if (desk_.isReadOnly()) return;
    OrderWords words;
    const auto& season = desk_.outlook()->season;
    words.order.id = newId<Order>();
    words.order.due = std::clamp(desk_.snapshot().today() + Days{28}, season.first, season.last);
    open(new OrderDialog(
        desk_, words, true, model_->isAnythingShort(),
        [this, id = words.order.id](const Result<ChangeSet>& changes) {
            auto why = save(changes);
            if (why.isEmpty()) choose(id);
            return why;
        },
        this));
}

void OrdersPage::changeOrder() {
    const auto* row = chosen();
    if (row == nullptr || desk_.isReadOnly()) return;
    open(new OrderDialog(
        desk_, wordsOf(desk_.snapshot(), row->order->id), false, model_->isAnythingShort(),
        [this](const Result<ChangeSet>& changes) { return save(changes); }, this));
}

void OrdersPage::deliver() {
    if (const auto* row = openOrder())
        ask(askDelivery(desk_, *row->order, likelyBatches(*row),
                        [this](const auto& changes) { return save(changes); }));
}

void OrdersPage::replace() {
    const auto* row = chosen();
    if (row == nullptr || desk_.isReadOnly()) return;
    if (desk_.snapshot().all<Delivery>().of(row->order->id.uuid).empty()) {
        told_->setText(order_page_text::nothingToReplace());
        return told_->show();
    }
    ask(askReplacement(desk_, *row->order, [this](const auto& changes) { return save(changes); }));
}

void OrdersPage::earmark() {
    if (const auto* row = openOrder())
        ask(askEarmark(desk_, *row->order, likelyBatches(*row),
                       [this](const auto& changes) { return save(changes); }));
}

void OrdersPage::setStandingTo(OrderStanding standing) {
    const auto* row = chosen();
    if (row == nullptr || desk_.isReadOnly()) return;
    auto changes = setStanding(desk_.snapshot(), row->order->id, standing, newId<OrderTerms>());
    if (changes) {
        changes.value().verb = Verb::RecordOutcome;
        changes.value().subject =
            order_page_text::standingName(standing, plain(row->order->label)).toStdString();
    }
    told_->setText(save(changes));
    told_->setVisible(!told_->text().isEmpty());
    table_->setFocus();  // the order may have left the list, and keys go on
}

void OrdersPage::toggleWaiting() {
    if (const auto* row = chosen())
        setStandingTo(row->terms.standing == OrderStanding::Waiting ? OrderStanding::Open
                                                                    : OrderStanding::Waiting);
}

void OrdersPage::toggleCancelled() {
    if (const auto* row = chosen())
        setStandingTo(row->terms.standing == OrderStanding::Cancelled ? OrderStanding::Open
                                                                      : OrderStanding::Cancelled);
}

void OrdersPage::deleteOrder() {
    const auto* row = chosen();
    if (row == nullptr || desk_.isReadOnly()) return;
    const auto label = plain(row->order->label);
    auto* sure = new QMessageBox(QMessageBox::Question, order_page_text::head(),
                                 order_page_text::removeSure(label),
                                 QMessageBox::Yes | QMessageBox::No, this);
    sure->setDefaultButton(QMessageBox::No);
    connect(sure, &QMessageBox::buttonClicked, this,
            [this, sure, id = row->order->id, label](const QAbstractButton* pressed) {
                if (sure->standardButton(const_cast<QAbstractButton*>(pressed)) != QMessageBox::Yes)
                    return;
                auto changes = tenthday::deleteOrder(desk_.snapshot(), id);
                if (changes) {
                    changes.value().verb = Verb::DeleteRow;
                    changes.value().subject = order_page_text::orderName(label).toStdString();
                }
                told_->setText(save(changes));
                told_->setVisible(!told_->text().isEmpty());
            });
    open(sure);
}

void OrdersPage::addBought() {
    if (desk_.isReadOnly()) return;
    ask(askBought(desk_, [this](const auto& changes) { return save(changes); }));
}

void OrdersPage::askWhatIf() { open(new WhatIfDialog(desk_.outlook(), this)); }

void OrdersPage::showLosses() { open(new LossesDialog(desk_, this)); }

void OrdersPage::pasteOrders(const QString& text) {
    if (desk_.isReadOnly()) return showNote(*table_, paste_text::readOnly());
    open(new PasteDialog(
        desk_, ordersToPaste(), text.isEmpty() ? QApplication::clipboard()->text() : text,
        [this](const ChangeSet& changes) { return save(changes); }, this));
}

void OrdersPage::copyOrders() {
    std::string text;
    appendPasted(text, pastedHeads());
    for (int row = 0; row < shown_->rowCount(); ++row) {
        const auto& each = model_->at(shown_->mapToSource(shown_->index(row, 0)).row());
        appendPasted(text, pastedCells(desk_.snapshot(), *each.order));
    }
    QApplication::clipboard()->setText(plain(text));
}

}  // namespace tenthday
