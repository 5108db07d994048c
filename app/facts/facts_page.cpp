#include "facts/facts_page.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QVBoxLayout>

#include "book/new_id.h"
#include "look/page_parts.h"
#include "paste/kept_list.h"
#include "records/verbs.h"
#include "screen_text/fact_text.h"
#include "screen_text/window_text.h"

namespace tenthday {

FactsPage::FactsPage(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      model_(new FactsModel(this)),
      shown_(new QSortFilterProxyModel(this)),
      table_(new QTableView),
      find_(new QLineEdit),
      useDefault_(new QPushButton(fact_text::useDefault())),
      told_(new QLabel) {
    shown_->setSourceModel(model_);
    shown_->setFilterCaseSensitivity(Qt::CaseInsensitive);
    shown_->setFilterKeyColumn(-1);
    table_->setModel(shown_);
    layOut();
    connect(find_, &QLineEdit::textChanged, shown_, &QSortFilterProxyModel::setFilterFixedString);
    connect(model_, &FactsModel::wished, this,
            [this](Fact fact, double value) { set(fact, value); });
    connect(model_, &FactsModel::refused, this,
            [this](const QString& why) { told_->setText(why); });
    connect(useDefault_, &QPushButton::clicked, this, [this] {
        if (const auto fact = chosen()) set(*fact, std::nullopt);
    });
    connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &FactsPage::tellChosen);
    connect(&desk_, &Desk::shown, this, &FactsPage::follow);
    follow();
    table_->setCurrentIndex(shown_->index(0, FactsModel::InUse));
}

void FactsPage::layOut() {
    auto* head = new QLabel(fact_text::head());
    makeHead(*head);
    auto* intro = new QLabel(fact_text::intro());
    intro->setWordWrap(true);
    find_->setPlaceholderText(fact_text::find());
    find_->setClearButtonEnabled(true);
    find_->setMaximumWidth(320);
    find_->setAccessibleName(fact_text::find());

    makeList(*table_, fact_text::head());
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                            QAbstractItemView::AnyKeyPressed);
    table_->horizontalHeader()->setSectionResizeMode(FactsModel::What, QHeaderView::Stretch);

    keepList(desk_, *table_, [this] {
        return KeptList{{"facts"}, [this](int row) {
                            const auto at = shown_->mapToSource(shown_->index(row, 0));
                            return std::vector{std::string(token(FactsModel::factAt(at.row())))};
                        }};
    });

    told_->setWordWrap(true);
    told_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    told_->setMinimumHeight(told_->fontMetrics().lineSpacing() * 4);
    told_->setAlignment(Qt::AlignTop | Qt::AlignLeft);

    auto* top = new QHBoxLayout;
    top->addWidget(intro, 1);
    top->addWidget(find_);
    auto* foot = new QHBoxLayout;
    foot->addWidget(told_, 1);
    foot->addWidget(useDefault_, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 14, 16, 12);
    column->setSpacing(10);
    column->addWidget(head);
    column->addLayout(top);
    column->addWidget(table_, 1);
    column->addLayout(foot);
    setFocusProxy(table_);
}

QString FactsPage::told() const { return told_->text(); }

void FactsPage::follow() {
    const auto facts = desk_.outlook()->snapshot.factsPtr();
    if (facts != shownFacts_) {  // most edits leave them as they are
        shownFacts_ = facts;
        model_->setEditable(!desk_.isReadOnly());
        model_->setFacts(*facts);
    }
    tellChosen();  // a refusal ends with the next edit
}

std::optional<Fact> FactsPage::chosen() const {
    const auto at = shown_->mapToSource(table_->currentIndex());
    return at.isValid() ? std::optional(FactsModel::factAt(at.row())) : std::nullopt;
}

void FactsPage::tellChosen() {
    const auto fact = chosen();
    const auto& facts = model_->facts();
    useDefault_->setEnabled(fact && facts.isOverridden(*fact) && !desk_.isReadOnly());
    told_->setText(fact ? fact_text::sources(facts.entry(*fact)) : QString());
}

void FactsPage::set(Fact fact, std::optional<double> value) {
    const auto changes = setFact(desk_.snapshot(), fact, value, newId<FactOverride>());
    const auto done = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (!done)
        told_->setText(window_text::cannotSaveEdit() + QStringLiteral(" ") +
                       QString::fromStdString(done.error().text));
}

}  // namespace tenthday
