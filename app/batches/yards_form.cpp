#include "batches/yards_form.h"

#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSpinBox>
#include <algorithm>
#include <cmath>

#include "base/natural_order.h"
#include "screen_text/batch_text.h"

namespace tenthday {
namespace {

bool isForMating(const Yard& yard) { return yard.roles.find("mating") != std::string::npos; }

/// Yards for mating in driving order, and those the batch names already.
std::vector<Ptr<Yard>> yardsOf(const Snapshot& snapshot) {
    std::vector<Ptr<Yard>> yards(snapshot.all<Yard>().begin(), snapshot.all<Yard>().end());
    std::sort(yards.begin(), yards.end(), [](const auto& a, const auto& b) {
        return a->driveOrder != b->driveOrder ? a->driveOrder < b->driveOrder
                                              : naturalLess(a->label, b->label);
    });
    return yards;
}

}  // namespace

YardsForm::YardsForm(const Snapshot& snapshot, QWidget* parent)
    : QWidget(parent), sum_(new QLabel) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(4);
    grid->setColumnStretch(2, 1);
    int row = 0;
    for (const auto& yard : yardsOf(snapshot)) {
        const bool named =
            std::any_of(snapshot.all<BatchShare>().begin(), snapshot.all<BatchShare>().end(),
                        [&](const auto& share) { return share->yard == yard->id; });
        if (!isForMating(*yard) && !named) continue;
        auto* label = new QLabel(
            QString::fromStdString(yard->label).replace(QStringLiteral("&"), QStringLiteral("&&")));
        auto* cells = new QSpinBox;
        cells->setRange(0, 9999);
        cells->setAccessibleName(QString::fromStdString(yard->label));
        auto* numbers = new QLabel;
        label->setBuddy(cells);
        grid->addWidget(label, row, 0);
        grid->addWidget(cells, row, 1);
        grid->addWidget(numbers, row++, 2);
        connect(cells, &QSpinBox::valueChanged, this, &YardsForm::changed);
        rows_.push_back({yard->id, cells, numbers});
    }
    sum_->setWordWrap(true);
    if (rows_.empty()) sum_->setText(batch_text::noYards());
    grid->addWidget(sum_, row, 0, 1, 3);
    grid->setRowStretch(row + 1, 1);
}

void YardsForm::show(const BatchDraft& draft) {
    const QSignalBlocker quiet(this);
    for (const auto& row : rows_) row.cells->setValue(0);
    for (const auto& [yard, count] : draft.shares)
        if (auto* field = cells(yard)) field->setValue(count.value);
}

void YardsForm::read(BatchDraft& draft) const {
    draft.shares.clear();
    for (const auto& row : rows_)
        if (row.cells->value() > 0) draft.shares.emplace_back(row.yard, Cells{row.cells->value()});
}

void YardsForm::follow(const Outlook& outlook, Id<Batch> id) {
    const auto* batch = outlook.find(id);
    if (batch == nullptr || rows_.empty()) return;
    const Day day = batch->timeline.hold.transferDay;
    int given = 0;
    for (const auto& row : rows_) {
        given += row.cells->value();
        ReadyNumbers numbers;
        for (const auto& yard : outlook.nucs.yards)
            if (yard.yard->id == row.yard && outlook.season.contains(day))
                numbers = yard.days[static_cast<std::size_t>((day - outlook.season.first).count())]
                              .numbers;
        row.numbers->setText(batch_text::yardNumbers(numbers));
    }
    sum_->setText(
        batch_text::sum(static_cast<int>(std::lround(batch->timeline.counts.ripe)), given));
}

QSpinBox* YardsForm::cells(Id<Yard> yard) const {
    for (const auto& row : rows_)
        if (row.yard == yard) return row.cells;
    return nullptr;
}

QString YardsForm::sumText() const { return sum_->text(); }

}  // namespace tenthday
