/// @file print_dialog.h  What to print, on which paper, seen before it is printed or kept as PDF.
#pragma once
#include <QDialog>
#include <QPrinter>
#include <array>

#include "options/settings.h"
#include "sheets/day_papers.h"

class QCheckBox;
class QComboBox;
class QDateEdit;
class QDoubleSpinBox;
class QGroupBox;
class QLabel;
class QPrintPreviewWidget;
class QPushButton;
class QSpinBox;

namespace tenthday {

/// The choice is remembered when something is printed or kept, and when the dialog closes.
class PrintDialog : public QDialog {
    Q_OBJECT

public:
    /// @param wish  what is shown first; its form, labels and person come from the settings
    PrintDialog(OutlookPtr outlook, Settings& settings, PaperWish wish, QWidget* parent = nullptr);

    [[nodiscard]] PaperWish wish() const;
    /// The pages shown; none where the choice cannot be printed.
    [[nodiscard]] int pageCount() const { return pageCount_; }
    /// Why nothing is shown, or how many pages there are.
    [[nodiscard]] QString told() const;
    [[nodiscard]] QComboBox& kind() { return *kind_; }
    [[nodiscard]] QComboBox& paper() { return *paper_; }
    [[nodiscard]] QComboBox& subject() { return *subject_; }
    [[nodiscard]] QComboBox& who() { return *who_; }
    [[nodiscard]] QCheckBox& large() { return *large_; }
    [[nodiscard]] QCheckBox& nextWeek() { return *nextWeek_; }
    /// Keeps the pages as a PDF; empty when done, else why not.
    [[nodiscard]] QString keepAsPdf(const QString& path);

    void done(int result) override;

private:
    [[nodiscard]] QWidget* makeOptions();
    [[nodiscard]] QWidget* makeLabels();
    void fillFrom(const PaperWish& wish);
    void fillSubjects();
    void connectAll();
    void fit();
    void showPages();
    void print();
    void askForPdf();
    void remember();

    OutlookPtr outlook_;
    Settings& settings_;
    WayOrder ways_;
    std::shared_ptr<const ListPaper> placements_;  ///< as drafted for placementsDay_
    Day placementsDay_;
    QPrinter printer_;
    Result<DayPaper> shown_;
    int pageCount_ = 0;
    bool filling_ = true;
    QComboBox* kind_;
    QDateEdit* day_;
    QComboBox* subject_;
    QComboBox* who_;
    QCheckBox* nextWeek_;
    QComboBox* paper_;
    QCheckBox* landscape_;
    QCheckBox* large_;
    QGroupBox* labels_;
    std::array<QSpinBox*, 3> counts_{};         ///< columns, rows, first
    std::array<QDoubleSpinBox*, 6> lengths_{};  ///< left, top, right, bottom, across, down
    QCheckBox* cutLines_;
    QLabel* told_;
    QPrintPreviewWidget* view_;
    QPushButton* print_;
    QPushButton* pdf_;
};

}  // namespace tenthday
