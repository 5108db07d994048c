#include "window/new_book_dialog.h"

#include <QComboBox>
#include <QDateEdit>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QSignalBlocker>

#include "look/day_field.h"
#include "records/validity.h"
#include "screen_text/dates.h"
#include "screen_text/welcome_text.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

QDateEdit* dateField() {
    auto* field = new QDateEdit;
    makeDayField(*field);
    field->setDateRange(toQDate(kFirstDay), toQDate(kLastDay));
    return field;
}

const QString kSuffix = QStringLiteral("tenthday");

/// A name a file can have on any system.
QString fileName(QString label) {
    static const QRegularExpression unfit(QStringLiteral("[\\\\/:*?\"<>|\\x00-\\x1f]"));
    return label.replace(unfit, QStringLiteral("-")).trimmed() + u'.' + kSuffix;
}

}  // namespace

NewBookDialog::NewBookDialog(Day today, const QString& folder, QWidget* parent)
    : QDialog(parent),
      today_(today),
      folder_(folder),
      operation_(new QLineEdit),
      place_(new QLineEdit),
      choose_(new QPushButton(welcome_text::choosePlace())),
      hemisphere_(new QComboBox),
      from_(dateField()),
      until_(dateField()),
      yard_(new QLineEdit),
      told_(new QLabel),
      make_(new QPushButton(welcome_text::make())) {
    setWindowTitle(window_text::asTitle(window_text::newBook()));
    hemisphere_->addItems({welcome_text::north(), welcome_text::south()});
    layOut();
    proposeSeason();
    connect(operation_, &QLineEdit::textEdited, this, &NewBookDialog::proposePlace);
    connect(place_, &QLineEdit::textEdited, this, [this] {
        placeIsOwn_ = true;
        follow();
    });
    connect(choose_, &QPushButton::clicked, this, &NewBookDialog::choosePlace);
    connect(hemisphere_, &QComboBox::currentIndexChanged, this, &NewBookDialog::proposeSeason);
    connect(yard_, &QLineEdit::textEdited, this, &NewBookDialog::follow);
    for (auto* field : {from_, until_})
        connect(field, &QDateEdit::dateChanged, this, [this] {
            seasonIsOwn_ = true;
            follow();
        });
    connect(make_, &QPushButton::clicked, this, &QDialog::accept);
    follow();
}

void NewBookDialog::layOut() {
    auto* rows = new QFormLayout;
    const auto add = [&](const QString& words, QWidget* field, QWidget* shown) {
        auto* label = new QLabel(words);
        label->setBuddy(field);
        field->setAccessibleName(QString(words).remove(u'&'));
        rows->addRow(label, shown);
    };
    add(welcome_text::operation(), operation_, operation_);
    auto* place = new QWidget;
    auto* line = new QHBoxLayout(place);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(place_, 1);
    line->addWidget(choose_);
    choose_->setAutoDefault(false);
    add(welcome_text::place(), place_, place);
    add(welcome_text::hemisphere(), hemisphere_, hemisphere_);
    add(welcome_text::seasonFrom(), from_, from_);
    add(welcome_text::seasonUntil(), until_, until_);
    add(welcome_text::firstYard(), yard_, yard_);
    auto* buttons = new QHBoxLayout;
    auto* cancel = new QPushButton(window_text::cancel());
    cancel->setAutoDefault(false);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    make_->setDefault(true);
    buttons->addWidget(told_, 1);
    buttons->addWidget(cancel);
    buttons->addWidget(make_);
    auto* column = new QVBoxLayout(this);
    column->addLayout(rows);
    column->addSpacing(8);
    column->addLayout(buttons);
    setMinimumWidth(fontMetrics().averageCharWidth() * 80);
}

QString NewBookDialog::told() const { return told_->text(); }

NewBookWish NewBookDialog::wish() const {
    NewBookWish wish;
    wish.path = place_->text().trimmed();
    if (!wish.path.isEmpty()) {
        if (QFileInfo(wish.path).suffix() != kSuffix) wish.path += u'.' + kSuffix;
        wish.path = QDir(folder_).absoluteFilePath(wish.path);  // a bare name means this folder
    }
    wish.plan.label = operation_->text().trimmed().toStdString();
    wish.plan.hemisphere = hemisphere_->currentIndex() == 1 ? Hemisphere::South : Hemisphere::North;
    wish.plan.season = {fromQDate(from_->date()), fromQDate(until_->date())};
    wish.plan.firstYard = yard_->text().trimmed().toStdString();
    return wish;
}

/// The file follows the name until the user gives it one of its own.
void NewBookDialog::proposePlace() {
    const auto label = operation_->text().trimmed();
    if (!placeIsOwn_)
        place_->setText(label.isEmpty() ? QString() : QDir(folder_).filePath(fileName(label)));
    follow();
}

/// The usual season of that half of the earth, unless the user gave one.
void NewBookDialog::proposeSeason() {
    const bool south = hemisphere_->currentIndex() == 1;
    yard_->setPlaceholderText(south ? welcome_text::firstYardWanted()
                                    : welcome_text::firstYardHint());
    if (seasonIsOwn_) return follow();
    const auto plan = planFor({}, today_, south ? Hemisphere::South : Hemisphere::North);
    const QSignalBlocker quietFrom(from_);
    const QSignalBlocker quietUntil(until_);
    from_->setDate(toQDate(plan.season.first));
    until_->setDate(toQDate(plan.season.last));
    follow();
}

void NewBookDialog::choosePlace() {
    QFileDialog dialog(this, windowTitle(), folder_, window_text::bookFiles());
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(kSuffix);
    dialog.selectFile(place_->text());
    if (dialog.exec() != QDialog::Accepted) return;
    placeIsOwn_ = true;
    place_->setText(dialog.selectedFiles().value(0));
    follow();
}

QString NewBookDialog::complaint() const {
    const auto now = wish();
    if (now.plan.label.empty()) return welcome_text::needsOperation();
    if (now.path.isEmpty()) return welcome_text::needsPlace();
    if (QFileInfo::exists(now.path)) return welcome_text::placeIsTaken();
    if (!QFileInfo(now.path).absoluteDir().exists()) return welcome_text::noFolder();
    if (now.plan.season.isEmpty()) return welcome_text::endsBefore();
    if (now.plan.season.last - now.plan.season.first > kLongestSeason)
        return welcome_text::seasonTooLong(static_cast<int>(kLongestSeason.count()));
    // The yards say on which half of the earth they stand; later ones follow the first.
    if (now.plan.hemisphere == Hemisphere::South && now.plan.firstYard.empty())
        return welcome_text::needsYard();
    return {};
}

void NewBookDialog::follow() {
    told_->setText(complaint());
    make_->setEnabled(told_->text().isEmpty());
}

}  // namespace tenthday
