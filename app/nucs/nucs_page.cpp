#include "nucs/nucs_page.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QSpinBox>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include "book/new_id.h"
#include "look/column_fit.h"
#include "look/page_parts.h"
#include "nucs/mite_dialog.h"
#include "nucs/nucs_filter.h"
#include "nucs/nucs_paste.h"
#include "nucs/stocking_dialog.h"
#include "paste/table_lines.h"
#include "reasons/reasons_view.h"
#include "records/hold_guard.h"
#include "records/verbs.h"
#include "screen_text/cells_text.h"
#include "screen_text/diary_text.h"
#include "screen_text/nuc_text.h"
#include "screen_text/upkeep_text.h"
#include "screen_text/why_task.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

/// A label and its field, joined for the keyboard and for screen readers.
void addField(QHBoxLayout& row, const QString& words, QWidget* field) {
    auto* label = new QLabel(words);
    label->setBuddy(field);
    field->setAccessibleName(words);
    row.addWidget(label);
    row.addWidget(field);
    row.addSpacing(10);
}

}  // namespace

NucsPage::NucsPage(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      model_(new NucsModel(this)),
      shown_(new NucsFilter(this)),
      table_(new QTableView),
      parts_(new QSplitter(Qt::Horizontal)),
      reasons_(new ReasonsView),
      head_(new QLabel),
      numbers_(new QLabel),
      yards_(new QLabel),
      filter_(new QComboBox),
      find_(new QLineEdit),
      what_(new QComboBox),
      bees_(new QSpinBox),
      brood_(new QSpinBox),
      openBrood_(new QCheckBox(nuc_text::openBrood())),
      donor_(new QComboBox),
      all_(new QPushButton(nuc_text::chooseAll())),
      stock_(new QPushButton),
      told_(new QLabel) {
    const auto& season = desk.outlook()->season;
    day_ = std::clamp(desk.snapshot().today(), season.first, season.last);
    model_->show(desk.outlook(), day_);
    shown_->setSourceModel(model_);
    shown_->setFilterCaseSensitivity(Qt::CaseInsensitive);
    shown_->setFilterKeyColumn(-1);
    shown_->setSortRole(NucsModel::kSortRole);
    table_->setModel(shown_);
    makeList(*table_, nuc_text::head(day_));
    table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->installEventFilter(this);
    setTableLines(desk_, *table_,
                  {[this] {
                       return copiedNucs(*table_, *model_, [this](int row) {
                           return shown_->mapToSource(shown_->index(row, 0)).row();
                       });
                   },
                   [this] { return nucsToPaste(*model_); }});
    table_->setSortingEnabled(true);
    table_->horizontalHeader()->setSortIndicatorClearable(true);
    table_->sortByColumn(-1, Qt::AscendingOrder);  // driving order until a head is pressed
    parts_->addWidget(table_);
    parts_->addWidget(reasons_);
    parts_->setStretchFactor(0, 7);
    parts_->setStretchFactor(1, 3);
    parts_->setChildrenCollapsible(false);
    connect(parts_, &QSplitter::splitterMoved, this, [this] { isDivided_ = true; });
    auto* column = pageColumn(*this);
    column->addWidget(makeTop());
    column->addWidget(parts_, 1);
    column->addWidget(makeStocking());
    setFocusProxy(table_);
    connect(find_, &QLineEdit::textChanged, shown_, &QSortFilterProxyModel::setFilterFixedString);
    connect(filter_, &QComboBox::currentIndexChanged, this, [this](int entry) {
        if (entry == nuc_text::kFilters) return shown_->setOnlyWorn();
        shown_->setGroup(entry <= 0 ? std::nullopt
                                    : std::optional(static_cast<NucsModel::Group>(entry - 1)));
    });
    connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &NucsPage::tellSelection);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &NucsPage::tellCurrent);
    connect(all_, &QPushButton::clicked, table_, &QTableView::selectAll);
    connect(stock_, &QPushButton::clicked, this, &NucsPage::enterSelected);
    connect(&desk_, &Desk::shown, &seen_, &WhileSeen::follow);
    seen_.follow();
}

QWidget* NucsPage::makeTop() {
    auto* top = new QWidget;
    makeStrong(*numbers_);
    yards_->setWordWrap(true);
    for (int i = 0; i < nuc_text::kFilters; ++i) filter_->addItem(nuc_text::filter(i));
    filter_->addItem(upkeep_text::wornFilter());
    filter_->setAccessibleName(nuc_text::filter(0));
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
    column->addWidget(numbers_);
    column->addWidget(yards_);
    return top;
}

QWidget* NucsPage::makeStocking() {
    auto* bar = new QWidget;
    for (int i = 0; i < upkeep_text::kWhats; ++i) {
        what_->addItem(upkeep_text::what(i));
        what_->setItemData(i, upkeep_text::whatHint(i), Qt::ToolTipRole);
    }
    bees_->setRange(0, 20000);
    bees_->setSingleStep(50);
    bees_->setValue(static_cast<int>(desk_.snapshot().facts()[Fact::NucBeesMl]));
    bees_->setSuffix(nuc_text::millilitres());
    brood_->setRange(0, 20);
    openBrood_->setEnabled(false);
    donor_->setEditable(true);
    donor_->setMinimumContentsLength(12);
    told_->setWordWrap(true);
    connect(brood_, &QSpinBox::valueChanged, this, [this](int frames) {
        openBrood_->setEnabled(frames > 0);
        openBrood_->setChecked(frames > 0);
    });
    connect(what_, &QComboBox::currentIndexChanged, this, &NucsPage::followWhat);
    connect(donor_, &QComboBox::editTextChanged, this, &NucsPage::tellSelection);
    auto* fields = new QHBoxLayout;
    addField(*fields, upkeep_text::whatHead(), what_);
    addField(*fields, nuc_text::bees(), bees_);
    addField(*fields, nuc_text::broodFrames(), brood_);
    fields->addWidget(openBrood_);
    fields->addSpacing(10);
    addField(*fields, nuc_text::donor(), donor_);
    fields->addStretch();
    fields->addWidget(all_);
    fields->addWidget(stock_);
    auto* lists = new QHBoxLayout;
    lists->addWidget(told_, 1);
    const auto button = [&](const QString& words, auto act) {
        auto* made = new QPushButton(words);
        connect(made, &QPushButton::clicked, this, act);
        lists->addWidget(made);
    };
    button(upkeep_text::stockingButton(), [this] { showStockings(); });
    button(upkeep_text::mitesButton(), [this] { showMiteWork(); });
    button(cells_text::menuEntry(), [this] { Q_EMIT cellsDayWished(day()); });
    auto* column = new QVBoxLayout(bar);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(fields);
    column->addLayout(lists);
    return bar;
}

/// Only what belongs to what is done can be entered.
void NucsPage::followWhat() {
    const auto kind = careKind();
    const bool bees = !kind || *kind == NucCareKind::Boost || *kind == NucCareKind::Thin;
    const bool brood = kind != NucCareKind::Feed;
    bees_->setEnabled(bees && !isTakeBack());
    brood_->setEnabled(brood && !isTakeBack());
    if (kind == NucCareKind::BroodIn && brood_->value() == 0) brood_->setValue(1);
    openBrood_->setEnabled(brood && kind != NucCareKind::Thin && brood_->value() > 0 &&
                           !isTakeBack());
    donor_->setEnabled(!isTakeBack() && kind != NucCareKind::Feed && kind != NucCareKind::Thin);
    what_->setToolTip(upkeep_text::whatHint(what_->currentIndex()));
    tellSelection();
}

std::optional<NucCareKind> NucsPage::careKind() const {
    const int entry = what_->currentIndex();
    if (entry <= 0 || isTakeBack()) return std::nullopt;
    return static_cast<NucCareKind>(entry - 1);
}

bool NucsPage::isTakeBack() const { return what_->currentIndex() == upkeep_text::kTakeBack; }

void NucsPage::showStockings() {
    StockingDialog(*desk_.outlook(), day(), this).exec();
    table_->setFocus();
}

void NucsPage::showMiteWork() {
    MiteDialog(desk_, this).exec();
    table_->setFocus();
}

void NucsPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    divide();
}

/// The list gets what all its columns take, as far as the reasons keep a readable width.
void NucsPage::divide() {
    if (isDivided_) return;
    const int all = parts_->width() - parts_->handleWidth();
    const int wanted = widthOfColumns(*table_) + 2 * table_->frameWidth() +
                       table_->verticalScrollBar()->sizeHint().width();
    const int reasons = fontMetrics().averageCharWidth() * 46;
    const int list = std::clamp(wanted, std::min(all * 6 / 10, std::max(all - reasons, 0)),
                                std::max(all - reasons, 0));
    parts_->setSizes({list, all - list});
}

QString NucsPage::numbersText() const { return numbers_->text(); }
QString NucsPage::told() const { return told_->text(); }

void NucsPage::setDay(Day day) {
    const auto& season = desk_.outlook()->season;
    day = std::clamp(day, season.first, season.last);
    if (day == day_) return;
    day_ = day;
    seen_.follow();
    Q_EMIT dayChosen(day);
}

void NucsPage::follow() {
    const auto chosen = selected();
    const int currentRow = table_->currentIndex().row();
    const auto& season = desk_.outlook()->season;
    day_ = std::clamp(day_, season.first, season.last);
    model_->show(desk_.outlook(), day_);
    head_->setText(nuc_text::head(day_));
    const auto numbers = model_->numbers();
    numbers_->setText(model_->rowCount() == 0
                          ? nuc_text::noNucs()
                          : QStringList{nuc_text::ready(numbers), nuc_text::likely(numbers),
                                        nuc_text::canStock(numbers), nuc_text::needsBrood(numbers)}
                                .join(QStringLiteral("  ·  ")));
    yards_->setText(model_->yardLines().join(QStringLiteral("     ")));
    const auto text = donor_->currentText();
    donor_->clear();
    const auto& book = desk_.outlook()->snapshot;
    for (const auto& yard : book.all<Yard>())
        if (donorHolds(book, yard->label, day_).empty())
            donor_->addItem(QString::fromStdString(yard->label));
    donor_->setCurrentText(text);
    for (int row = 0; row < shown_->rowCount(); ++row) {
        const auto side = model_->sideAt(shown_->mapToSource(shown_->index(row, 0)).row());
        if (std::find(chosen.begin(), chosen.end(), side) != chosen.end())
            table_->selectionModel()->select(
                shown_->index(row, 0), QItemSelectionModel::Select | QItemSelectionModel::Rows);
    }
    if (!table_->currentIndex().isValid() && shown_->rowCount() > 0)
        table_->selectionModel()->setCurrentIndex(
            shown_->index(std::clamp(currentRow, 0, shown_->rowCount() - 1), 0),
            QItemSelectionModel::NoUpdate);
    divide();
    tellSelection();
    tellCurrent();
}

/// Why the current nuc is, or is not, ready.
void NucsPage::tellCurrent() {
    const auto at = shown_->mapToSource(table_->currentIndex());
    reasons_->showChain(at.isValid()
                            ? why_text::nuc(*desk_.outlook(), model_->sideOutlookAt(at.row()), day_)
                            : std::vector<why_text::Link>{},
                        model_->rowCount() == 0 ? nuc_text::noNucs() : QString());
}

DateOfBatch NucsPage::chosenDate() const {
    const auto at = shown_->mapToSource(table_->currentIndex());
    if (!at.isValid()) return {};
    const auto is =
        sideOn(model_->sideOutlookAt(at.row()), day_, desk_.outlook()->snapshot.today());
    if (is.round == nullptr) return {};
    return {is.round->batch, Event::Catch};
}

void NucsPage::choose(Id<NucSide> side) {
    filter_->setCurrentIndex(0);
    find_->clear();
    for (int row = 0; row < model_->rowCount(); ++row)
        if (model_->sideAt(row) == side) {
            const auto index = shown_->mapFromSource(model_->index(row, 0));
            table_->setCurrentIndex(index);
            table_->scrollTo(index, QAbstractItemView::PositionAtCenter);
        }
}

std::vector<Id<NucSide>> NucsPage::selected() const {
    std::vector<Id<NucSide>> sides;
    if (table_->selectionModel() == nullptr) return sides;
    for (const auto& index : table_->selectionModel()->selectedRows())
        sides.push_back(model_->sideAt(shown_->mapToSource(index).row()));
    return sides;
}

void NucsPage::tellSelection() {
    const auto count = static_cast<int>(selected().size());
    const auto kind = careKind();
    stock_->setText(kind           ? upkeep_text::enter(*kind, count, day_)
                    : isTakeBack() ? upkeep_text::takeBack(count, day_)
                                   : nuc_text::stock(count, day_));
    stock_->setEnabled(count > 0 && !desk_.isReadOnly());
    all_->setEnabled(shown_->rowCount() > 0);
    QStringList held;
    if (donor_->isEnabled())
        for (const auto& hold :
             donorHolds(desk_.snapshot(), donor_->currentText().toStdString(), day_))
            held += diary_text::held(hold);
    if (!held.isEmpty())
        told_->setText(held.join(u' '));
    else
        told_->setText(count == 0 ? nuc_text::chooseNucs()
                                  : upkeep_text::whatHint(what_->currentIndex()));
}

Result<ChangeSet> NucsPage::stocking(const std::vector<Id<NucSide>>& sides) const {
    StockingPlan plan;
    plan.day = day_;
    if (bees_->value() > 0) plan.beesMl = BeesMl{bees_->value()};
    if (brood_->value() > 0) plan.broodFrames = Frames{brood_->value()};
    plan.openBrood = brood_->value() > 0 && openBrood_->isChecked();
    plan.donor = donor_->currentText().toStdString();
    std::vector<Id<Stocking>> fresh;
    for (std::size_t i = 0; i < sides.size(); ++i) fresh.push_back(newId<Stocking>());
    return stockNucs(desk_.snapshot(), sides, plan, fresh);
}

Result<ChangeSet> NucsPage::care(const std::vector<Id<NucSide>>& sides) const {
    CarePlan plan;
    plan.kind = *careKind();
    plan.day = day_;
    if (bees_->value() > 0) plan.beesMl = BeesMl{bees_->value()};
    if (brood_->value() > 0) plan.broodFrames = Frames{brood_->value()};
    plan.openBrood = brood_->value() > 0 && openBrood_->isChecked();
    plan.donor = donor_->currentText().toStdString();
    return careForNucs(desk_.outlook()->nucs, sides, plan, [] { return idMaker().next(); });
}

void NucsPage::enterSelected() {
    const auto changes = isTakeBack() ? takeBackCare(desk_.snapshot(), selected(), day_)
                         : careKind() ? care(selected())
                                      : stocking(selected());
    if (const auto broken = changes ? brokenHold(desk_.snapshot(), changes.value()) : std::nullopt)
        return told_->setText(diary_text::notOutOfHold(*broken));
    const auto done = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (!done)
        told_->setText(window_text::cannotSaveEdit() + u' ' +
                       QString::fromStdString(done.error().text));
}

bool NucsPage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->modifiers() == Qt::NoModifier) switch (key->key()) {
                case Qt::Key_Left:
                    setDay(day() - Days{1});
                    return true;
                case Qt::Key_Right:
                    setDay(day() + Days{1});
                    return true;
                case Qt::Key_Home:
                    setDay(desk_.snapshot().today());
                    return true;
                default:
                    break;
            }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace tenthday
