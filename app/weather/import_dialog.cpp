#include "weather/import_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "exchange/csv.h"
#include "look/page_parts.h"
#include "look/table_keys.h"
#include "screen_text/derived_text.h"
#include "screen_text/record_text.h"
#include "screen_text/weather_text.h"

namespace tenthday {
namespace {

constexpr int kPreviewDays = 8;
constexpr int kMostTroubles = 200;

template <std::size_t N>
QComboBox* choice(const std::array<QString, N>& entries) {
    auto* box = new QComboBox;
    for (const auto& entry : entries) box->addItem(entry);
    return box;
}

/// What only looks wrong is skipped unless the user says otherwise; what may be a mistake in
/// reading the file is not.
bool isSkippedAtFirst(WeatherTrouble kind) { return kind >= WeatherTrouble::Placeholder; }

std::vector<std::string> headerOf(std::string_view text) {
    const auto records = readCsv(text);
    if (!records || records.value().empty()) return {};
    return records.value().front().fields;
}

QStringList cellsOf(const WeatherFileDay& day) {
    return {record_text::day(day.date),       weather_text::tenths(day.tmaxC),
            weather_text::tenths(day.tminC),  weather_text::tenths(day.rainMm),
            weather_text::tenths(day.windMs), record_text::flew(day.flew)};
}

}  // namespace

WeatherImportDialog::WeatherImportDialog(const QString& fileName, std::string text, Save save,
                                         QWidget* parent)
    : QDialog(parent),
      text_(std::move(text)),
      save_(std::move(save)),
      heat_(choice(record_text::heatUnits())),
      rain_(choice(record_text::rainUnits())),
      wind_(choice(record_text::windUnits())),
      preview_(new QTableWidget(0, static_cast<int>(kTokenCount<WeatherColumn>))),
      troubles_(new QListWidget),
      summary_(new QLabel),
      told_(new QLabel),
      import_(new QPushButton) {
    setWindowTitle(record_text::head(fileName));
    const auto header = headerOf(text_);
    auto* parts = new QHBoxLayout;
    parts->addWidget(makeChoices(weatherColumns(header), header));
    parts->addWidget(makeLook(), 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    buttons->addButton(import_, QDialogButtonBox::AcceptRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &WeatherImportDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addLayout(parts, 1);
    told_->setWordWrap(true);
    column->addWidget(told_);
    column->addWidget(buttons);
    resize(920, 560);
    read();
}

QWidget* WeatherImportDialog::makeChoices(const WeatherColumns& found,
                                          const std::vector<std::string>& header) {
    auto* columns = new QGroupBox(record_text::columns());
    auto* form = new QFormLayout(columns);
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        auto*& box = columns_[i];
        box = new QComboBox;
        box->addItem(record_text::notInFile());
        for (std::size_t c = 0; c < header.size(); ++c)
            box->addItem(header[c].empty() ? record_text::noName(static_cast<int>(c) + 1)
                                           : QString::fromStdString(header[c]));
        if (found[i]) box->setCurrentIndex(static_cast<int>(*found[i]) + 1);
        form->addRow(record_text::column(static_cast<WeatherColumn>(i)), box);
        connect(box, &QComboBox::currentIndexChanged, this, &WeatherImportDialog::read);
    }
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(columns);
    column->addWidget(makeUnits());
    column->addStretch();
    return part;
}

QWidget* WeatherImportDialog::makeUnits() {
    auto* units = new QGroupBox(record_text::units());
    auto* unitForm = new QFormLayout(units);
    unitForm->addRow(record_text::heat(), heat_);
    unitForm->addRow(record_text::rain(), rain_);
    unitForm->addRow(record_text::wind(), wind_);
    for (auto* box : {heat_, rain_, wind_})
        connect(box, &QComboBox::currentIndexChanged, this, &WeatherImportDialog::read);
    return units;
}

QWidget* WeatherImportDialog::makeLook() {
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    QStringList heads;
    for (std::size_t i = 0; i < columns_.size(); ++i)
        heads += record_text::columnHead(static_cast<WeatherColumn>(i));
    preview_->setHorizontalHeaderLabels(heads);
    preview_->verticalHeader()->hide();
    makeCompact(*preview_);
    sayNoPaste(*preview_, derived_text::weatherFile);
    preview_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    preview_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    preview_->setTabKeyNavigation(false);
    preview_->setAccessibleName(record_text::preview());
    troubles_->setAccessibleName(record_text::troubles());
    summary_->setWordWrap(true);
    column->addWidget(summary_);
    column->addWidget(new QLabel(record_text::preview()));
    column->addWidget(preview_, 3);
    column->addWidget(new QLabel(record_text::troubles()));
    column->addWidget(troubles_, 2);
    makeSkips(*column);
    return part;
}

void WeatherImportDialog::makeSkips(QVBoxLayout& column) {
    for (std::size_t i = 0; i < skips_.size(); ++i) {
        skips_[i] = new QCheckBox;
        skips_[i]->setChecked(isSkippedAtFirst(static_cast<WeatherTrouble>(i)));
        column.addWidget(skips_[i]);
        connect(skips_[i], &QCheckBox::toggled, this, &WeatherImportDialog::judge);
    }
}

QString WeatherImportDialog::summary() const { return summary_->text(); }
QString WeatherImportDialog::told() const { return told_->text(); }

WeatherColumns WeatherImportDialog::chosenColumns() const {
    WeatherColumns chosen;
    for (std::size_t i = 0; i < columns_.size(); ++i)
        if (const int entry = columns_[i]->currentIndex(); entry > 0)
            chosen[i] = static_cast<std::size_t>(entry - 1);
    return chosen;
}

void WeatherImportDialog::read() {
    const WeatherUnits units{static_cast<HeatUnit>(heat_->currentIndex()),
                             static_cast<RainUnit>(rain_->currentIndex()),
                             static_cast<WindUnit>(wind_->currentIndex())};
    auto file = readWeatherFile(text_, units, chosenColumns());
    readable_ = file.ok();
    const auto complaint = readable_ ? std::string() : file.error().text;
    file_ = readable_ ? std::move(file).value() : WeatherFile{};
    summary_->setText(readable_ ? record_text::summary(file_.days)
                                : QString::fromStdString(complaint));
    showDays();
    showTroubles();
    judge();
}

void WeatherImportDialog::showDays() {
    const int rows = std::min(kPreviewDays, static_cast<int>(file_.days.size()));
    preview_->setRowCount(rows);
    for (int row = 0; row < rows; ++row) {
        const auto cells = cellsOf(file_.days[static_cast<std::size_t>(row)]);
        for (int column = 0; column < cells.size(); ++column)
            preview_->setItem(row, column, new QTableWidgetItem(cells[column]));
    }
}

void WeatherImportDialog::showTroubles() {
    troubles_->clear();
    std::array<int, kTokenCount<WeatherTrouble>> counts{};
    for (const auto& trouble : file_.troubles) {
        ++counts[static_cast<std::size_t>(trouble.kind)];
        if (troubles_->count() < kMostTroubles) troubles_->addItem(record_text::trouble(trouble));
    }
    if (const int all = static_cast<int>(file_.troubles.size()); all > kMostTroubles)
        troubles_->addItem(record_text::moreTroubles(all - kMostTroubles));
    for (std::size_t i = 0; i < skips_.size(); ++i) {
        skips_[i]->setVisible(counts[i] > 0);
        skips_[i]->setText(record_text::skip(static_cast<WeatherTrouble>(i), counts[i]));
    }
}

/// Whether it can be taken in as it is.
void WeatherImportDialog::judge() {
    WeatherRefusals refused{};
    for (std::size_t i = 0; i < skips_.size(); ++i) refused[i] = !skips_[i]->isChecked();
    const bool good = checkTroubles(file_, refused).ok();
    told_->setText(good ? QString() : record_text::decide());
    import_->setText(record_text::importButton(static_cast<int>(file_.days.size())));
    import_->setEnabled(readable_ && good && !file_.days.empty());
}

void WeatherImportDialog::accept() {
    if (!import_->isEnabled()) return;
    const auto why = save_(file_.days);
    if (why.isEmpty()) return QDialog::accept();
    told_->setText(why);
}

}  // namespace tenthday
