#include "sheets/print_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QFileDialog>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrintPreviewWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QVBoxLayout>

#include "look/day_field.h"
#include "screen_text/dates.h"
#include "screen_text/paper_text.h"
#include "screen_text/print_text.h"
#include "screen_text/sheet_text.h"
#include "sheets/page_painter.h"
#include "sheets/paper_names.h"
#include "sheets/preview.h"
#include "tasks/given.h"

namespace tenthday {

PrintDialog::PrintDialog(OutlookPtr outlook, Settings& settings, PaperWish wish, QWidget* parent)
    : QDialog(parent),
      outlook_(std::move(outlook)),
      settings_(settings),
      ways_(settings.wayOrder()),
      placements_(wish.placements),
      placementsDay_(wish.day),
      printer_(QPrinter::HighResolution),
      shown_(Error{}),
      kind_(new QComboBox),
      day_(new QDateEdit),
      subject_(new QComboBox),
      who_(new QComboBox),
      nextWeek_(new QCheckBox(print_text::nextWeekToo())),
      paper_(new QComboBox),
      landscape_(new QCheckBox(print_text::landscape())),
      large_(new QCheckBox(print_text::large())),
      labels_(new QGroupBox(print_text::labels())),
      cutLines_(new QCheckBox(print_text::cutLines())),
      told_(new QLabel),
      view_(new QPrintPreviewWidget(&printer_)),
      print_(new QPushButton(print_text::print())),
      pdf_(new QPushButton(print_text::keepPdf())) {
    setWindowTitle(print_text::head());
    auto* row = new QHBoxLayout(this);
    row->addWidget(makeOptions());
    row->addWidget(view_, 1);
    fillFrom(wish);
    connectAll();
    resize(1120, 690);
    filling_ = false;
    fit();
    showPages();
}

QWidget* PrintDialog::makeOptions() {
    auto* fields = new QWidget;
    auto* form = new QFormLayout(fields);
    form->setContentsMargins(0, 0, 8, 0);
    form->setRowWrapPolicy(QFormLayout::WrapAllRows);
    for (std::size_t i = 0; i < kTokenCount<PaperKind>; ++i)
        kind_->addItem(paper_text::kind(static_cast<PaperKind>(i)));
    for (std::size_t i = 0; i < kTokenCount<Paper>; ++i)
        paper_->addItem(print_text::paper(static_cast<Paper>(i)));
    makeDayField(*day_);
    who_->setEditable(true);
    form->addRow(print_text::what(), kind_);
    form->addRow(print_text::day(), day_);
    form->addRow(print_text::about(), subject_);
    form->addRow(print_text::who(), who_);
    form->addRow(nextWeek_);
    form->addRow(print_text::onPaper(), paper_);
    form->addRow(landscape_);
    form->addRow(large_);
    form->addRow(makeLabels());
    told_->setWordWrap(true);
    auto* scroll = new QScrollArea;
    scroll->setWidget(fields);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* close = new QPushButton(print_text::close());
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(scroll, 1);
    column->addWidget(told_);
    for (auto* button : {print_, pdf_, close}) column->addWidget(button);
    print_->setDefault(true);
    part->setFixedWidth(std::max(290, fields->minimumSizeHint().width() + 30));
    return part;
}

QWidget* PrintDialog::makeLabels() {
    auto* form = new QFormLayout(labels_);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    for (std::size_t i = 0; i < counts_.size(); ++i) {
        counts_[i] = new QSpinBox;
        counts_[i]->setRange(1, i == 0 ? 12 : i == 1 ? 30 : 360);
        form->addRow(print_text::labelCount(static_cast<int>(i)), counts_[i]);
    }
    for (std::size_t i = 0; i < lengths_.size(); ++i) {
        lengths_[i] = new QDoubleSpinBox;
        lengths_[i]->setRange(0, 100);
        lengths_[i]->setDecimals(1);
        lengths_[i]->setSuffix(print_text::mm());
        form->addRow(print_text::labelLength(static_cast<int>(i)), lengths_[i]);
    }
    form->addRow(cutLines_);
    return labels_;
}

void PrintDialog::fillFrom(const PaperWish& wish) {
    const auto choice = settings_.printChoice();
    kind_->setCurrentIndex(static_cast<int>(wish.choice.kind));
    day_->setDate(toQDate(wish.day));
    paper_->setCurrentIndex(static_cast<int>(choice.form.paper));
    landscape_->setChecked(choice.form.landscape);
    large_->setChecked(choice.form.large);
    nextWeek_->setChecked(choice.nextWeekToo);
    who_->addItem(QString());
    for (const auto& one : everybody(outlook_->snapshot)) who_->addItem(plainText(one));
    who_->setCurrentText(choice.who);
    who_->lineEdit()->setPlaceholderText(print_text::everybody());
    const auto& grid = choice.labels;
    const std::array counts{grid.columns, grid.rows, 1};
    const std::array lengths{grid.left,   grid.top,       grid.right,
                             grid.bottom, grid.gapAcross, grid.gapDown};
    for (std::size_t i = 0; i < counts.size(); ++i) counts_[i]->setValue(counts[i]);
    for (std::size_t i = 0; i < lengths.size(); ++i) lengths_[i]->setValue(lengths[i]);
    cutLines_->setChecked(grid.cutLines);
    fillSubjects();
    const auto id = wish.batch   ? toText(wish.batch->uuid)
                    : wish.order ? toText(wish.order->uuid)
                                 : std::string();
    subject_->setCurrentIndex(std::max(subject_->findData(plainText(id)), 0));
}

void PrintDialog::fillSubjects() {
    const auto kind = static_cast<PaperKind>(kind_->currentIndex());
    subject_->clear();
    const auto add = [&](const auto& row) {
        subject_->addItem(plainText(row->label), plainText(toText(row->id.uuid)));
    };
    if (kind == PaperKind::BatchCard)
        for (const auto& batch : outlook_->batches) add(batch->batch);
    if (kind == PaperKind::Order)
        for (const auto& order : outlook_->snapshot.all<Order>()) add(order);
}

void PrintDialog::connectAll() {
    const auto changed = [this] {
        if (filling_) return;
        fit();
        showPages();
    };
    connect(kind_, &QComboBox::currentIndexChanged, this, [this, changed] {
        if (!filling_) fillSubjects();
        changed();
    });
    connect(day_, &QDateEdit::dateChanged, this, changed);
    for (auto* box : {subject_, paper_})
        connect(box, &QComboBox::currentIndexChanged, this, changed);
    connect(who_, &QComboBox::currentTextChanged, this, changed);
    for (auto* box : {nextWeek_, landscape_, large_, cutLines_})
        connect(box, &QCheckBox::toggled, this, changed);
    for (auto* box : counts_) connect(box, &QSpinBox::valueChanged, this, changed);
    for (auto* box : lengths_) connect(box, &QDoubleSpinBox::valueChanged, this, changed);
    connect(view_, &QPrintPreviewWidget::paintRequested, this, [this](QPrinter* printer) {
        if (shown_) (void)printOn(*printer, shown_.value().form, shown_.value().pages);
    });
    connect(print_, &QPushButton::clicked, this, &PrintDialog::print);
    connect(pdf_, &QPushButton::clicked, this, &PrintDialog::askForPdf);
}

PaperWish PrintDialog::wish() const {
    PaperWish wish;
    auto& choice = wish.choice;
    choice.kind = static_cast<PaperKind>(kind_->currentIndex());
    choice.form = {static_cast<Paper>(paper_->currentIndex()), landscape_->isChecked(),
                   large_->isChecked()};
    choice.who = who_->currentText().trimmed();
    choice.nextWeekToo = nextWeek_->isChecked();
    choice.labels = {counts_[0]->value(),   counts_[1]->value(),  lengths_[0]->value(),
                     lengths_[1]->value(),  lengths_[2]->value(), lengths_[3]->value(),
                     lengths_[4]->value(),  lengths_[5]->value(), counts_[2]->value(),
                     cutLines_->isChecked()};
    wish.day = fromQDate(day_->date());
    wish.ways = ways_;
    if (wish.day == placementsDay_) wish.placements = placements_;
    const auto id = uuidFromText(subject_->currentData().toString().toStdString());
    if (id && choice.kind == PaperKind::BatchCard) wish.batch = Id<Batch>{*id};
    if (id && choice.kind == PaperKind::Order) wish.order = Id<Order>{*id};
    return wish;
}

/// Shows the fields that belong to what is printed.
void PrintDialog::fit() {
    const auto kind = static_cast<PaperKind>(kind_->currentIndex());
    const bool weeks = kind == PaperKind::Week || kind == PaperKind::Clips;
    const bool about = kind == PaperKind::BatchCard || kind == PaperKind::Order;
    auto* form = static_cast<QFormLayout*>(kind_->parentWidget()->layout());
    const auto show = [form](QWidget* field, bool shown) {
        field->setVisible(shown);
        if (auto* label = form->labelForField(field)) label->setVisible(shown);
    };
    show(who_, weeks);
    show(nextWeek_, weeks);
    show(subject_, about);
    show(day_, !about && kind != PaperKind::Year);
    show(paper_, kind != PaperKind::Clips);
    show(landscape_, kind != PaperKind::Clips);
    show(large_, kind != PaperKind::NucCards);
    show(labels_, kind == PaperKind::NucCards);
}

void PrintDialog::showPages() {
    shown_ = dayPaper(outlook_, wish());
    const PaperRuler ruler;
    pageCount_ =
        shown_ ? static_cast<int>(shown_.value().pages(shown_.value().form, ruler).size()) : 0;
    told_->setText(shown_ ? print_text::pages(pageCount_) : print_text::refused(wish().choice));
    print_->setEnabled(shown_.ok());
    pdf_->setEnabled(shown_.ok());
    if (!shown_) return;
    printer_.setDocName(shown_.value().title);
    setForm(printer_, shown_.value().form);
    view_->updatePreview();
}

QString PrintDialog::told() const { return told_->text(); }

void PrintDialog::print() {
    QPrintDialog dialog(&printer_, this);
    if (dialog.exec() != QDialog::Accepted) return;
    remember();
    if (!printOn(printer_, shown_.value().form, shown_.value().pages))
        QMessageBox::warning(this, windowTitle(), sheet_text::cannotPrint());
}

QString PrintDialog::keepAsPdf(const QString& path) {
    remember();
    const PaperRuler ruler;
    const auto& [title, form, pages] = shown_.value();
    const auto written = writePdf(path, pages(form, ruler), form, title, ruler);
    return written ? QString() : plainText(written.error().text);
}

void PrintDialog::askForPdf() {
    QFileDialog dialog(this, windowTitle(), QString(), QStringLiteral("PDF (*.pdf)"));
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("pdf"));  // it asks before a file gives way
    if (dialog.exec() != QDialog::Accepted) return;
    if (const auto why = keepAsPdf(dialog.selectedFiles().value(0)); !why.isEmpty())
        QMessageBox::warning(this, windowTitle(), why);
}

void PrintDialog::remember() { settings_.setPrintChoice(wish().choice); }

void PrintDialog::done(int result) {
    remember();
    QDialog::done(result);
}

}  // namespace tenthday
