#include "cellsday/ways_grid.h"

#include <QApplication>
#include <QGridLayout>
#include <QLabel>
#include <QPainter>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>
#include <algorithm>

#include "look/glyph.h"
#include "look/palette.h"
#include "screen_text/cells_text.h"
#include "screen_text/chart_text.h"

namespace tenthday {
namespace {

constexpr int kMostCells = 9999;

QString plain(const std::string& text) { return QString::fromStdString(text); }
QString asLabel(QString text) { return text.replace(QStringLiteral("&"), QStringLiteral("&&")); }

Role roleOf(int left) { return left == 0 ? Role::Good : left > 0 ? Role::Caution : Role::Danger; }

/// A tick where it adds up, else a triangle.
QPixmap markOf(int left, const QWidget& on) {
    const int size = on.fontMetrics().ascent() + 2;
    QPixmap mark(QSize(size, size) * on.devicePixelRatioF());
    mark.setDevicePixelRatio(on.devicePixelRatioF());
    mark.fill(Qt::transparent);
    const auto glyph = left == 0 ? Glyph::LookDone : Glyph::Warning;
    const auto ink = paletteOf(lookOf(QApplication::palette()))[roleOf(left)];
    const auto path = glyphPath(glyph, {size / 2.0, size / 2.0}, size * 0.8);
    QPainter painter(&mark);
    painter.setRenderHint(QPainter::Antialiasing);
    if (isFilled(glyph))
        painter.fillPath(path, ink);
    else
        painter.strokePath(path, QPen(ink, size / 7.0, Qt::SolidLine, Qt::RoundCap));
    return mark;
}

void showNumber(QSpinBox* field, int number) {
    const QSignalBlocker quiet(field);
    field->setValue(number);
}

}  // namespace

WaysGrid::WaysGrid(QWidget* parent) : QWidget(parent), grid_(nullptr) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
}

QSpinBox* WaysGrid::field(const QString& line, const QString& batch, const QString& hint) {
    auto* field = new QSpinBox;
    field->setRange(0, kMostCells);
    field->setEnabled(editable_);
    field->setAccessibleName(cells_text::field(line, batch));
    field->setToolTip(hint);
    return field;
}

QLabel* WaysGrid::lineName(const QString& words, const QString& hint) {
    auto* label = new QLabel(asLabel(words));
    label->setToolTip(hint);
    grid_->addWidget(label, row_, 0);
    return label;
}

void WaysGrid::show(const Outlook& outlook, const CellsDraft& draft,
                    const std::vector<CellsNuc>& nucs, bool editable) {
    delete fields_;
    fields_ = new QWidget;
    layout()->addWidget(fields_);
    grid_ = new QGridLayout(fields_);
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setVerticalSpacing(4);
    grid_->setHorizontalSpacing(10);
    row_ = 0;
    editable_ = editable;
    yards_.clear();
    batches_.clear();
    columns_.assign(draft.batches.size(), {});
    addHeads(outlook, draft);
    addRipe(outlook, draft);
    addYards(outlook, draft, nucs);
    addWays(draft);
    addSum(draft);
    grid_->setColumnStretch(static_cast<int>(draft.batches.size()) + 1, 1);
    grid_->setRowStretch(row_, 1);
    refresh(draft, nucs);
}

void WaysGrid::addHeads(const Outlook& outlook, const CellsDraft& draft) {
    for (std::size_t i = 0; i < draft.batches.size(); ++i) {
        const auto batch = outlook.snapshot.find(draft.batches[i].batch);
        batches_.push_back(cells_text::batch(batch ? plain(batch->label) : QString()));
        auto* head = new QLabel(asLabel(batches_.back()));
        auto strong = head->font();
        strong.setBold(true);
        head->setFont(strong);
        grid_->addWidget(head, row_, static_cast<int>(i) + 1);
    }
    ++row_;
}

void WaysGrid::addRipe(const Outlook& outlook, const CellsDraft& draft) {
    auto* name = lineName(cells_text::ripe(), {});
    for (std::size_t i = 0; i < draft.batches.size(); ++i) {
        const auto hint = cells_text::ripeHint(outlook, draft.batches[i]);
        auto* ripe = field(cells_text::ripe(), batches_[i], hint);
        // What is still to come cannot be counted.
        ripe->setEnabled(editable_ && draft.day <= outlook.snapshot.today());
        connect(ripe, &QSpinBox::valueChanged, this,
                [this, i](int cells) { Q_EMIT ripeCounted(static_cast<int>(i), cells); });
        grid_->addWidget(ripe, row_, static_cast<int>(i) + 1);
        columns_[i].ripe = ripe;
        if (i == 0) name->setBuddy(ripe), name->setToolTip(hint);
    }
    ++row_;
}

void WaysGrid::addYards(const Outlook& outlook, const CellsDraft& draft,
                        const std::vector<CellsNuc>& nucs) {
    const int last = static_cast<int>(draft.batches.size()) + 1;
    for (const auto& nuc : nucs) {
        if (!yards_.empty() && yards_.back().yard == nuc.yard) continue;
        const auto yard = outlook.snapshot.find(nuc.yard);
        const auto words = cells_text::nucsAt(yard ? plain(yard->label) : QString());
        auto* name = lineName(words, cells_text::nucsHint());
        YardRow row{nuc.yard, words, new QLabel, {}};
        for (std::size_t i = 0; i < draft.batches.size(); ++i) {
            auto* cells = field(words, batches_[i], cells_text::nucsHint());
            cells->setKeyboardTracking(false);  // half a number would untick nucs
            connect(cells, &QSpinBox::valueChanged, this, [this, i, id = nuc.yard](int count) {
                Q_EMIT nucsWished(static_cast<int>(i), id, count);
            });
            grid_->addWidget(cells, row_, static_cast<int>(i) + 1);
            row.cells.push_back(cells);
            if (i == 0) name->setBuddy(cells);
        }
        row.open->setToolTip(cells_text::nucsHint());
        grid_->addWidget(row.open, row_++, last);
        yards_.push_back(std::move(row));
    }
}

void WaysGrid::addWays(const CellsDraft& draft) {
    for (std::size_t w = 1; w < kTokenCount<CellTarget>; ++w) {
        const auto way = static_cast<CellTarget>(w);
        auto* name = lineName(cells_text::way(way), cells_text::wayHint(way));
        for (std::size_t i = 0; i < draft.batches.size(); ++i) {
            auto* cells = field(cells_text::way(way), batches_[i], cells_text::wayHint(way));
            connect(cells, &QSpinBox::valueChanged, this, [this, i, way](int count) {
                Q_EMIT wayWished(static_cast<int>(i), way, count);
            });
            grid_->addWidget(cells, row_, static_cast<int>(i) + 1);
            columns_[i].ways[w] = cells;
            if (i == 0) name->setBuddy(cells);
        }
        ++row_;
    }
}

void WaysGrid::addSum(const CellsDraft& draft) {
    const bool any = std::any_of(draft.batches.begin(), draft.batches.end(),
                                 [](const auto& cells) { return cells.done() > 0; });
    if (any) {
        lineName(cells_text::recorded(), cells_text::recordedHint());
        for (std::size_t i = 0; i < draft.batches.size(); ++i) {
            columns_[i].recorded = new QLabel(chart_text::number(draft.batches[i].done()));
            columns_[i].recorded->setToolTip(cells_text::recordedHint());
            grid_->addWidget(columns_[i].recorded, row_, static_cast<int>(i) + 1);
        }
        ++row_;
    }
    auto* name = lineName(cells_text::left(), {});
    auto strong = name->font();
    strong.setBold(true);
    name->setFont(strong);
    for (std::size_t i = 0; i < draft.batches.size(); ++i) {
        auto* part = new QWidget;
        auto* row = new QHBoxLayout(part);
        row->setContentsMargins(0, 4, 0, 4);
        columns_[i].mark = new QLabel;
        columns_[i].left = new QLabel;
        columns_[i].left->setFont(strong);
        columns_[i].left->setWordWrap(true);
        row->addWidget(columns_[i].mark, 0, Qt::AlignTop);
        row->addWidget(columns_[i].left, 1);
        grid_->addWidget(part, row_, static_cast<int>(i) + 1, 1,
                         i + 1 == draft.batches.size() ? 2 : 1);
    }
    ++row_;
}

void WaysGrid::refresh(const CellsDraft& draft, const std::vector<CellsNuc>& nucs) {
    for (const auto& row : yards_) {
        int ready = 0;
        int likely = 0;
        for (const auto& nuc : nucs)
            if (nuc.yard == row.yard)
                ready += nuc.fit == NucFit::Ready, likely += nuc.fit == NucFit::Likely;
        row.open->setText(cells_text::openIn(ready, likely));
        for (std::size_t i = 0; i < row.cells.size(); ++i)
            showNumber(row.cells[i], cellsIn(draft, nucs, i, row.yard));
    }
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        const auto& cells = draft.batches[i];
        const auto& column = columns_[i];
        showNumber(column.ripe, cells.ripe());
        for (std::size_t w = 1; w < column.ways.size(); ++w)
            showNumber(column.ways[w], cells.others[w]);
        column.left->setText(cells_text::leftWords(cells.left()));
        column.mark->setPixmap(markOf(cells.left(), *this));
        auto colours = column.left->palette();
        colours.setColor(QPalette::WindowText,
                         paletteOf(lookOf(QApplication::palette()))[roleOf(cells.left())]);
        column.left->setPalette(colours);
    }
}

QSpinBox* WaysGrid::ripe(std::size_t batch) const {
    return batch < columns_.size() ? columns_[batch].ripe : nullptr;
}
QSpinBox* WaysGrid::nucsAt(std::size_t batch, Id<Yard> yard) const {
    for (const auto& row : yards_)
        if (row.yard == yard && batch < row.cells.size()) return row.cells[batch];
    return nullptr;
}
QSpinBox* WaysGrid::way(std::size_t batch, CellTarget way) const {
    return batch < columns_.size() ? columns_[batch].ways[static_cast<std::size_t>(way)] : nullptr;
}
QString WaysGrid::leftText(std::size_t batch) const {
    return batch < columns_.size() ? columns_[batch].left->text() : QString();
}

}  // namespace tenthday
