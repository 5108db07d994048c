#include "setup/next_season_dialog.h"

#include <QDateEdit>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "book/new_id.h"
#include "look/day_field.h"
#include "screen_text/dates.h"
#include "screen_text/season_text.h"

namespace tenthday {
namespace {

constexpr int kIdRole = Qt::UserRole;

QString plain(const std::string& text) { return QString::fromStdString(text); }

template <class Row>
void addGroup(QTreeWidget& tree, const QString& name, const std::vector<Ptr<Row>>& rows) {
    if (rows.empty()) return;
    auto* group = new QTreeWidgetItem(&tree, {name});
    group->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable |
                    Qt::ItemIsAutoTristate);
    for (const auto& row : rows) {
        auto* item = new QTreeWidgetItem(group, {plain(row->label)});
        item->setData(0, kIdRole, plain(toText(row->id.uuid)));
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(0, Qt::Checked);
    }
}

/// Ids of a group that are not ticked.
template <class Row>
std::vector<Id<Row>> unticked(const QTreeWidget& tree, const QString& name) {
    std::vector<Id<Row>> ids;
    for (int i = 0; i < tree.topLevelItemCount(); ++i) {
        const auto* group = tree.topLevelItem(i);
        if (group->text(0) != name) continue;
        for (int k = 0; k < group->childCount(); ++k)
            if (group->child(k)->checkState(0) == Qt::Unchecked)
                if (const auto id =
                        uuidFromText(group->child(k)->data(0, kIdRole).toString().toStdString()))
                    ids.push_back({*id});
    }
    return ids;
}

}  // namespace

NextSeasonDialog::NextSeasonDialog(Desk& desk, QWidget* parent)
    : QDialog(parent),
      desk_(desk),
      label_(new QLineEdit),
      from_(new QDateEdit),
      until_(new QDateEdit),
      things_(new QTreeWidget),
      told_(new QLabel),
      begin_(new QPushButton(season_text::begin())) {
    setWindowTitle(season_text::head());
    auto* explained = new QLabel(season_text::explained());
    auto* always = new QLabel(season_text::always());
    for (auto* words : {explained, always, told_}) words->setWordWrap(true);
    for (auto* day : {from_, until_}) makeDayField(*day);
    things_->setHeaderHidden(true);
    things_->setAccessibleName(season_text::goOn());
    auto* form = new QFormLayout;
    form->addRow(season_text::label(), label_);
    form->addRow(season_text::from(), from_);
    form->addRow(season_text::until(), until_);
    auto* cancel = new QPushButton(season_text::cancel());
    auto* buttons = new QHBoxLayout;
    buttons->addStretch();
    buttons->addWidget(begin_);
    buttons->addWidget(cancel);
    auto* column = new QVBoxLayout(this);
    column->addWidget(explained);
    column->addLayout(form);
    column->addWidget(things_, 1);
    column->addWidget(always);
    column->addWidget(told_);
    column->addLayout(buttons);
    connect(begin_, &QPushButton::clicked, this, &QDialog::accept);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    begin_->setDefault(true);
    resize(520, 620);
    fill();
}

void NextSeasonDialog::fill() {
    const auto& snapshot = desk_.snapshot();
    const auto next = nextSeasonAfter(snapshot);
    label_->setText(plain(next.label));
    from_->setDate(toQDate(next.from));
    until_->setDate(toQDate(next.until));
    addGroup(*things_, season_text::boxes(), standingBoxes(snapshot));
    addGroup(*things_, season_text::builders(), standingBuilders(snapshot));
    addGroup(*things_, season_text::breeders(), servingBreeders(snapshot));
    for (int i = 0; i < things_->topLevelItemCount(); ++i)
        things_->topLevelItem(i)->setExpanded(things_->topLevelItem(i)->childCount() <= 20);
    begin_->setEnabled(!desk_.isReadOnly());
    if (desk_.isReadOnly()) told_->setText(season_text::readOnly());
}

NextSeason NextSeasonDialog::chosen() const {
    return {label_->text().trimmed().toStdString(),
            fromQDate(from_->date()),
            fromQDate(until_->date()),
            unticked<Box>(*things_, season_text::boxes()),
            unticked<Builder>(*things_, season_text::builders()),
            unticked<Queen>(*things_, season_text::breeders())};
}

QString NextSeasonDialog::told() const { return told_->text(); }

void NextSeasonDialog::accept() {
    if (desk_.isReadOnly()) return;
    const auto changes = carryOver(desk_.snapshot(), chosen(), [] { return idMaker().next(); });
    const auto done = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (!done) return told_->setText(season_text::cannot(plain(done.error().text)));
    for (const auto& change : changes.value().rows)
        if (const auto season = change.as<Season>()) made_ = plain(toText(season->after->id.uuid));
    QDialog::accept();
}

}  // namespace tenthday
