#include "virgins/virgins_page.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include "look/glyph_delegate.h"
#include "look/page_parts.h"
#include "look/table_keys.h"
#include "reasons/reasons_view.h"
#include "screen_text/derived_text.h"
#include "screen_text/nuc_text.h"
#include "screen_text/virgin_text.h"
#include "screen_text/why_virgin.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

/// Shows the nucs with one advice, or all; and of these what is searched for.
class VirginsFilter : public QSortFilterProxyModel {
public:
    using QSortFilterProxyModel::QSortFilterProxyModel;
    void setAdvice(std::optional<VirginAdvice> advice) {
        advice_ = advice;
        invalidateFilter();
    }

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override {
        const auto* virgins = static_cast<const VirginsModel*>(sourceModel());
        if (advice_ && virgins->at(row).advice != *advice_) return false;
        return QSortFilterProxyModel::filterAcceptsRow(row, parent);
    }

private:
    std::optional<VirginAdvice> advice_;
};

}  // namespace

VirginsPage::VirginsPage(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      day_(desk.snapshot().today()),
      model_(new VirginsModel(this)),
      shown_(new VirginsFilter(this)),
      groups_(new VirginGroupsModel(this)),
      table_(new QTableView),
      groupTable_(new QTableView),
      reasons_(new ReasonsView),
      head_(new QLabel),
      sentence_(new QLabel),
      advised_(new QLabel),
      filter_(new QComboBox),
      find_(new QLineEdit),
      nuc_(new QPushButton(virgin_text::goToNuc())),
      batch_(new QPushButton(virgin_text::changeBatch())) {
    shown_->setSourceModel(model_);
    shown_->setFilterCaseSensitivity(Qt::CaseInsensitive);
    shown_->setFilterKeyColumn(-1);
    shown_->setSortRole(VirginsModel::kSortRole);
    table_->setModel(shown_);
    makeList(*table_, window_text::asTitle(virgin_text::pageEntry()));
    sayNoPaste(*table_, derived_text::virgins);
    table_->setItemDelegateForColumn(VirginsModel::Advice, new GlyphDelegate(table_));
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setTabKeyNavigation(false);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->installEventFilter(this);
    table_->setSortingEnabled(true);
    table_->horizontalHeader()->setSortIndicatorClearable(true);
    table_->sortByColumn(-1, Qt::AscendingOrder);  // oldest first until a head is pressed
    auto* parts = new QSplitter(Qt::Horizontal);
    parts->addWidget(table_);
    parts->addWidget(makeSide());
    parts->setStretchFactor(0, 7);
    parts->setStretchFactor(1, 4);
    parts->setSizes({880, 400});  // the list first: its last column says what to do
    parts->setChildrenCollapsible(false);
    auto* column = pageColumn(*this);
    column->addWidget(makeTop());
    column->addWidget(parts, 1);
    column->addWidget(makeFoot());
    setFocusProxy(table_);
    connectParts();
}

void VirginsPage::connectParts() {
    connect(find_, &QLineEdit::textChanged, shown_, &QSortFilterProxyModel::setFilterFixedString);
    connect(filter_, &QComboBox::currentIndexChanged, this, [this](int entry) {
        static_cast<VirginsFilter*>(shown_)->setAdvice(
            entry <= 0 ? std::nullopt : std::optional(static_cast<VirginAdvice>(entry - 1)));
    });
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &VirginsPage::tellCurrent);
    connect(table_, &QTableView::doubleClicked, this, [this](const QModelIndex& index) {
        index.column() == VirginsModel::Batch ? wishBatch() : wishNuc();
    });
    connect(groupTable_, &QTableView::doubleClicked, this, [this](const QModelIndex& index) {
        Q_EMIT batchWished(groups_->at(index.row()).batch);
    });
    connect(nuc_, &QPushButton::clicked, this, &VirginsPage::wishNuc);
    connect(batch_, &QPushButton::clicked, this, &VirginsPage::wishBatch);
    connect(&desk_, &Desk::shown, &seen_, &WhileSeen::follow);
    seen_.follow();
}

QWidget* VirginsPage::makeTop() {
    auto* top = new QWidget;
    makeStrong(*sentence_);
    advised_->setWordWrap(true);
    for (std::size_t i = 0; i <= kTokenCount<VirginAdvice>; ++i)
        filter_->addItem(virgin_text::filter(static_cast<int>(i)));
    filter_->setAccessibleName(virgin_text::filter(0));
    makeSearch(*find_, nuc_text::find());
    auto* first = stepRow(
        {nuc_text::dayBefore(), nuc_text::dayAfter(), nuc_text::today()}, *head_,
        [this](int days) { setDay(day() + Days{days}); },
        [this] { setDay(desk_.snapshot().today()); });
    first->addWidget(filter_);
    first->addWidget(find_);
    auto* column = new QVBoxLayout(top);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(first);
    column->addWidget(sentence_);
    column->addWidget(advised_);
    return top;
}

QWidget* VirginsPage::makeSide() {
    groupTable_->setModel(groups_);
    makeList(*groupTable_, virgin_text::byBatch());
    sayNoPaste(*groupTable_, derived_text::virginBatches);
    makeCompact(*groupTable_);
    groupTable_->setSelectionMode(QAbstractItemView::SingleSelection);
    groupTable_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    groupTable_->setTabKeyNavigation(false);
    groupTable_->horizontalHeader()->setStretchLastSection(true);
    auto* name = new QLabel(virgin_text::byBatch());
    name->setBuddy(groupTable_);
    auto* upper = new QWidget;
    auto* column = new QVBoxLayout(upper);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(name);
    column->addWidget(groupTable_, 1);
    auto* side = new QSplitter(Qt::Vertical);
    side->addWidget(upper);
    side->addWidget(reasons_);
    side->setStretchFactor(0, 2);
    side->setStretchFactor(1, 5);
    side->setChildrenCollapsible(false);
    return side;
}

QWidget* VirginsPage::makeFoot() {
    auto* foot = new QWidget;
    auto* shut = new QLabel(virgin_text::leaveShut(desk_.snapshot().facts()));
    shut->setWordWrap(true);
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(shut, 1);
    row->addWidget(nuc_);
    row->addWidget(batch_);
    return foot;
}

QString VirginsPage::sentence() const { return sentence_->text(); }

const WaitingVirgin* VirginsPage::chosen() const {
    const auto at = shown_->mapToSource(table_->currentIndex());
    return at.isValid() ? &model_->at(at.row()) : nullptr;
}

DateOfBatch VirginsPage::chosenDate() const {
    const auto* virgin = chosen();
    if (virgin == nullptr) return {};
    return {virgin->round->batch, Event::FirstLook};
}

void VirginsPage::setDay(Day day) {
    const auto& season = desk_.outlook()->season;
    day = std::clamp(day, season.first, season.last);
    if (day == day_) return;
    day_ = day;
    seen_.follow();
    Q_EMIT dayChosen(day_);
}

/// Keeps the chosen nuc while it is listed, else the place in the list.
void VirginsPage::follow() {
    const auto* before = chosen();
    const auto side = before ? std::optional(before->side->side->id) : std::nullopt;
    const int row = std::max(table_->currentIndex().row(), 0);
    const auto& season = desk_.outlook()->season;
    day_ = std::clamp(day_, season.first, season.last);
    model_->show(desk_.outlook(), day_);
    const auto& virgins = model_->virgins();
    groups_->show(desk_.outlook(), virgins.groups);
    head_->setText(virgin_text::head(day_));
    const bool none = virgins.nucs.empty();
    sentence_->setText(none ? virgin_text::noVirgins() : virgin_text::sentence(virgins));
    std::array<std::int32_t, kTokenCount<VirginAdvice>> advised{};
    for (const auto& virgin : virgins.nucs) ++advised[static_cast<std::size_t>(virgin.advice)];
    auto line = virgin_text::advised(advised);
    if (!line.isEmpty()) line[0] = line[0].toUpper();  // it begins a line
    advised_->setText(line);
    advised_->setVisible(!none);
    int found = std::min(row, shown_->rowCount() - 1);
    for (int at = 0; side && at < shown_->rowCount(); ++at)
        if (model_->at(shown_->mapToSource(shown_->index(at, 0)).row()).side->side->id == *side)
            found = at;
    table_->setCurrentIndex(found < 0 ? QModelIndex() : shown_->index(found, 0));
    tellCurrent();
}

void VirginsPage::tellCurrent() {
    const auto* virgin = chosen();
    nuc_->setEnabled(virgin != nullptr);
    batch_->setEnabled(virgin != nullptr);
    reasons_->showChain(
        virgin ? why_text::virgin(*model_->outlook(), *virgin) : std::vector<why_text::Link>{},
        model_->rowCount() == 0 ? virgin_text::noVirgins() : QString());
}

void VirginsPage::wishNuc() {
    if (const auto* virgin = chosen()) Q_EMIT nucWished(virgin->side->side->id);
}

void VirginsPage::wishBatch() {
    if (const auto* virgin = chosen()) Q_EMIT batchWished(virgin->round->batch);
}

bool VirginsPage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if ((key->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier) switch (key->key()) {
                case Qt::Key_Left:
                    setDay(day_ - Days{1});
                    return true;
                case Qt::Key_Right:
                    setDay(day_ + Days{1});
                    return true;
                case Qt::Key_Home:
                    setDay(desk_.snapshot().today());
                    return true;
                case Qt::Key_Return:
                case Qt::Key_Enter:
                    wishNuc();
                    return true;
                default:
                    break;
            }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace tenthday
