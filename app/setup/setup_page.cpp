#include "setup/setup_page.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QListWidget>
#include <QMessageBox>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QScrollBar>
#include <QShortcut>
#include <QSortFilterProxyModel>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

#include "look/page_parts.h"
#include "paste/kept_list.h"
#include "records/hold_guard.h"
#include "records/queen_verbs.h"
#include "screen_text/diary_text.h"
#include "screen_text/window_text.h"
#include "setup/in_use_dialog.h"
#include "setup/story_dialog.h"

namespace tenthday {
namespace {

/// Kinds of `export` that a kind's things are lines of.
std::vector<std::string> listsOf(setup_text::Kind kind) {
    switch (kind) {
        case setup_text::Kind::Yards:
            return {"yards"};
        case setup_text::Kind::Boxes:
            return {"boxes"};
        case setup_text::Kind::Builders:
            return {"builders"};
        case setup_text::Kind::Diary:
            return {"makeups", "buildernotes"};
        case setup_text::Kind::Queens:
            return {"queens"};
        case setup_text::Kind::Caught:
            return {"queens", "caught", "queenstays"};
        case setup_text::Kind::Methods:
            return {"methods"};
        case setup_text::Kind::Drones:
            return {"drones"};
        case setup_text::Kind::YardNotes:
            return {"yardnotes"};
        case setup_text::Kind::DaysOff:
            return {"daysoff"};
        case setup_text::Kind::Seasons:
            return {"seasons"};
    }
    return {};
}

/// Ids of the lines that a thing is: a queen caught is she, her catch and her stays.
std::vector<std::string> lineKeys(setup_text::Kind kind, const Snapshot& book, const Uuid& id) {
    std::vector<std::string> keys{toText(id)};
    if (kind != setup_text::Kind::Caught) return keys;
    const Id<Queen> queen{id};
    for (const auto& caught : book.all<CaughtQueen>())
        if (caught->queen == queen) keys.push_back(toText(caught->id.uuid));
    for (const auto& stay : staysOf(book, queen)) keys.push_back(toText(stay->id.uuid));
    return keys;
}

}  // namespace

SetupPage::SetupPage(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      all_(allSetupKinds()),
      model_(new SetupModel(this)),
      shown_(new QSortFilterProxyModel(this)),
      kinds_(new QListWidget),
      table_(new QTableView),
      list_(new QStackedWidget),
      empty_(new QLabel),
      head_(new QLabel),
      find_(new QLineEdit),
      count_(new QLabel),
      add_(new QPushButton(setup_text::add())),
      remove_(new QPushButton(setup_text::remove())),
      story_(new QPushButton(story_text::open())),
      form_(new SetupForm),
      split_(new QSplitter) {
    shown_->setSourceModel(model_);
    shown_->setFilterCaseSensitivity(Qt::CaseInsensitive);
    shown_->setFilterKeyColumn(-1);
    table_->setModel(shown_);
    split_->addWidget(makeList());
    split_->addWidget(form_);
    split_->setStretchFactor(0, 2);
    split_->setStretchFactor(1, 1);
    split_->setChildrenCollapsible(false);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 14, 16, 12);
    row->setSpacing(16);
    row->addWidget(makeKinds());
    row->addWidget(split_, 1);
    setFocusProxy(table_);
    addKeys();
    connect(form_, &SetupForm::saveWanted, this, &SetupPage::save);
    connect(form_, &SetupForm::discardWanted, this, &SetupPage::discard);
    connect(&desk_, &Desk::shown, this,
            [this](const OutlookPtr&, const Changes& changes) { follow(changes); });
    readBook();
    showKind(0);
}

SetupPage::~SetupPage() = default;

QWidget* SetupPage::makeKinds() {
    auto* side = new QWidget;
    auto* head = new QLabel(setup_text::head());
    makeHead(*head);
    kinds_->setAccessibleName(setup_text::head());
    kinds_->setFrameShape(QFrame::NoFrame);
    kinds_->setSpacing(3);
    kinds_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    for (const auto& kind : all_) kinds_->addItem(setup_text::kindAndCount(kind->kind(), 0));
    auto* numbers = new QPushButton(setup_text::numbers());
    connect(numbers, &QPushButton::clicked, this, &SetupPage::tradeNumbersWanted);
    connect(kinds_, &QListWidget::currentRowChanged, this, [this](int row) {
        if (busy_ || row < 0 || row == static_cast<int>(current_)) return;
        if (mayLeave()) return showKind(row);
        const QScopedValueRollback busy(busy_, true);
        kinds_->setCurrentRow(static_cast<int>(current_));
    });
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(head);
    column->addWidget(kinds_, 1);
    column->addWidget(numbers);
    return side;
}

QWidget* SetupPage::makeList() {
    auto* side = new QWidget;
    makeHead(*head_, 1.2);
    find_->setClearButtonEnabled(true);
    tenthday::makeList(*table_, setup_text::head());
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->setTabKeyNavigation(false);
    keepList(desk_, *table_, [this] {
        return KeptList{listsOf(kind().kind()), [this](int row) {
                            const auto at = shown_->mapToSource(shown_->index(row, 0));
                            return lineKeys(kind().kind(), book_, model_->idAt(at.row()));
                        }};
    });
    empty_->setWordWrap(true);
    empty_->setAlignment(Qt::AlignCenter);
    empty_->setMargin(24);
    list_->addWidget(table_);
    list_->addWidget(empty_);
    add_->setToolTip(setup_text::addTip());
    remove_->setToolTip(setup_text::removeTip());
    story_->setToolTip(story_text::openTip());
    for (auto* button : {add_, remove_, story_}) button->setAutoDefault(true);
    auto* top = new QHBoxLayout;
    top->addWidget(head_);
    top->addWidget(count_, 1);
    top->addWidget(find_, 1);
    auto* foot = new QHBoxLayout;
    foot->addWidget(add_);
    foot->addWidget(remove_);
    foot->addWidget(story_);
    foot->addStretch();
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(top);
    column->addWidget(list_, 1);
    column->addLayout(foot);
    connect(find_, &QLineEdit::textChanged, this, [this](const QString& text) {
        const QScopedValueRollback busy(busy_, true);
        const auto ids = selected();
        shown_->setFilterFixedString(text);
        select(ids);
        tellCount();
    });
    connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &SetupPage::selectionChanged);
    connect(add_, &QPushButton::clicked, this, &SetupPage::addNew);
    connect(remove_, &QPushButton::clicked, this, &SetupPage::removeChosen);
    connect(story_, &QPushButton::clicked, this, &SetupPage::tellStory);
    return side;
}

void SetupPage::addKeys() {
    const auto key = [this](QWidget* where, const QKeySequence& keys, auto act) {
        auto* shortcut = new QShortcut(keys, where);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    key(this, QKeySequence(Qt::CTRL | Qt::Key_S), [this] { save(); });
    key(this, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N), [this] { addNew(); });
    key(this, QKeySequence(Qt::CTRL | Qt::Key_F), [this] { find_->setFocus(); });
    key(this, QKeySequence(Qt::Key_F4), [this] { tellStory(); });
    key(table_, QKeySequence(Qt::Key_Insert), [this] { addNew(); });
    key(table_, QKeySequence(Qt::Key_Delete), [this] { removeChosen(); });
}

QString SetupPage::emptyText() const {
    return list_->currentWidget() == empty_ ? empty_->text() : QString();
}

void SetupPage::follow(const Changes& changes) {
    if (changes.isPreview() || busy_) return;
    seen_.follow();
}

void SetupPage::readBook() {
    // Batches of other seasons hang on these things too.
    auto all = desk_.file().read({{}, true});
    book_ = all ? std::move(all).value() : desk_.snapshot();
    const QScopedValueRollback busy(busy_, true);
    for (std::size_t i = 0; i < all_.size(); ++i)
        kinds_->item(static_cast<int>(i))
            ->setText(setup_text::kindAndCount(all_[i]->kind(),
                                               static_cast<int>(all_[i]->rows(book_).size())));
    kinds_->setMaximumWidth(kinds_->sizeHintForColumn(0) + 30);
}

void SetupPage::reload(const std::vector<Uuid>& ids) {
    readBook();
    const QScopedValueRollback busy(busy_, true);
    const int place = table_->verticalScrollBar()->value();
    model_->show(kind().columns(), kind().rows(book_));
    select(ids);
    table_->verticalScrollBar()->setValue(place);
    const bool kept = form_->isDirty() && (form_->draft().isNew() || selected() == ids);
    if (!kept) showChosen();
    tellCount();
}

void SetupPage::showKind(int index) {
    const QScopedValueRollback busy(busy_, true);
    current_ = static_cast<std::size_t>(index);
    kinds_->setCurrentRow(index);
    const auto name = setup_text::kindName(kind().kind());
    head_->setText(name);
    find_->clear();
    find_->setPlaceholderText(setup_text::find(kind().kind()));
    find_->setAccessibleName(setup_text::find(kind().kind()));
    table_->setAccessibleName(name);
    table_->setSelectionMode(kind().takesMany() ? QAbstractItemView::ExtendedSelection
                                                : QAbstractItemView::SingleSelection);
    model_->show(kind().columns(), kind().rows(book_));
    if (model_->rowCount() > 0) select({model_->idAt(0)});
    showChosen();
    tellCount();
}

void SetupPage::select(const std::vector<Uuid>& ids) {
    QItemSelection selection;
    QModelIndex first;
    for (const auto& id : ids) {
        const int row = model_->rowOf(id);
        const auto at = row < 0 ? QModelIndex() : shown_->mapFromSource(model_->index(row, 0));
        if (!at.isValid()) continue;
        if (!first.isValid()) first = at;
        selection.select(at, at);
    }
    table_->selectionModel()->select(
        selection, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    if (!first.isValid()) return;
    table_->selectionModel()->setCurrentIndex(first, QItemSelectionModel::NoUpdate);
    table_->scrollTo(first);
}

std::vector<Uuid> SetupPage::selected() const {
    std::vector<Uuid> ids;
    for (const auto& index : table_->selectionModel()->selectedRows())
        ids.push_back(model_->idAt(shown_->mapToSource(index).row()));
    return ids;
}

void SetupPage::selectionChanged() {
    if (busy_) return;
    if (!mayLeave()) {
        const QScopedValueRollback busy(busy_, true);
        return select(form_->draft().ids);
    }
    showChosen();
}

void SetupPage::showChosen() {
    const auto ids = selected();
    if (ids.empty())
        form_->showNothing(model_->rowCount() > 0 ? setup_text::chooseOne(kind().kind())
                                                  : QString());
    else
        form_->show(kind(), book_, ids, desk_.isReadOnly());
    remove_->setEnabled(!ids.empty() && !desk_.isReadOnly());
    story_->setVisible(kind().hasStory());
    story_->setEnabled(ids.size() == 1);
    add_->setEnabled(!desk_.isReadOnly() && kind().canAdd());
}

void SetupPage::tellCount() {
    const int all = model_->rowCount();
    count_->setText(setup_text::shownOf(shown_->rowCount(), all));
    empty_->setText(all == 0 ? setup_text::begin(kind().kind()) : setup_text::nothingFound());
    list_->setCurrentWidget(shown_->rowCount() == 0 ? static_cast<QWidget*>(empty_) : table_);
}

void SetupPage::addNew() {
    if (desk_.isReadOnly() || !kind().canAdd() || !mayLeave()) return;
    {
        const QScopedValueRollback busy(busy_, true);
        table_->clearSelection();
    }
    showChosen();
    form_->show(kind(), book_, {}, false);
    form_->focusFirst();
}

QString SetupPage::apply(Result<ChangeSet> changes, const QString& subject) {
    if (changes) changes.value().subject = subject.toStdString();
    const QScopedValueRollback busy(busy_, true);
    if (const auto broken = changes ? brokenHold(desk_.snapshot(), changes.value()) : std::nullopt)
        return diary_text::notOutOfHold(*broken);
    const auto done = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (done) return {};
    return window_text::cannotSaveEdit() + u' ' + QString::fromStdString(done.error().text);
}

bool SetupPage::save() {
    if (desk_.isReadOnly() || !form_->isOpen() || !form_->check()) return false;
    auto ids = form_->draft().ids;
    const auto changes = kind().save(book_, form_->draft());
    const auto brought = changes ? kind().broughtBy(changes.value()) : std::nullopt;
    const auto subject = brought ? kind().nameOfBrought(changes.value()) : kind().title(book_, ids);
    if (const auto why = apply(changes, subject); !why.isEmpty())
        return form_->tell(why, true), false;
    if (brought) ids = {*brought};
    form_->showNothing({});
    find_->clear();
    reload(ids);
    form_->tell(setup_text::saved());
    table_->setFocus();
    return true;
}

void SetupPage::discard() {
    form_->showNothing({});
    showChosen();
    table_->setFocus();
}

bool SetupPage::mayLeave() {
    if (!form_->isDirty()) return true;
    QMessageBox box(QMessageBox::Question, setup_text::leaveHead(),
                    setup_text::leaveText(form_->head()), QMessageBox::NoButton, this);
    const auto* keep = box.addButton(setup_text::save(), QMessageBox::AcceptRole);
    const auto* drop = box.addButton(setup_text::discard(), QMessageBox::DestructiveRole);
    box.setEscapeButton(box.addButton(setup_text::keepEditing(), QMessageBox::RejectRole));
    box.exec();
    if (box.clickedButton() == keep) return save();
    if (box.clickedButton() != drop) return false;
    form_->showNothing({});
    return true;
}

void SetupPage::removeChosen() {
    if (desk_.isReadOnly() || selected().empty() || !mayLeave()) return;
    const auto ids = selected();
    if (ids.empty()) return;
    const auto thing = kind().title(book_, ids);
    const auto uses = kind().uses(book_, ids);
    if (uses.empty()) {
        const auto why = apply(kind().remove(book_, ids), thing);
        if (!why.isEmpty()) return form_->tell(why, true);
        reload({});
        return form_->tell(setup_text::deleted(thing));
    }
    InUseDialog::Retire retiring;
    if (kind().canRetire()) retiring = [this, ids](Day from) { return retire(ids, from); };
    InUseDialog dialog(kind().kind(), thing, uses, desk_.snapshot().today(), retiring, this);
    if (dialog.exec() == QDialog::Accepted) form_->tell(setup_text::retired(thing));
}

/// As the book is: what stands unsaved in the form has no part in it.
void SetupPage::tellStory() {
    const auto ids = selected();
    if (!kind().hasStory() || ids.size() != 1) return;
    StoryDialog(kind().story(*desk_.outlook(), ids.front()), this).exec();
}

QString SetupPage::retire(const std::vector<Uuid>& ids, Day from) {
    const auto why = apply(kind().retire(book_, ids, from), kind().title(book_, ids));
    if (why.isEmpty()) reload(ids);
    return why;
}

void SetupPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    model_->setLook(lookOf(palette()));
}

void SetupPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool isNarrow = width() < fontMetrics().averageCharWidth() * 130;
    split_->setOrientation(isNarrow ? Qt::Vertical : Qt::Horizontal);
}

void SetupPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) model_->setLook(lookOf(palette()));
}

}  // namespace tenthday
