/// @file batch_editor.h  Planning a batch, or changing one, with all that follows shown at once.
#pragma once
#include <QDialog>
#include <QPointer>
#include <QTimer>
#include <functional>

#include "batches/stable_ids.h"
#include "batches/trial_worker.h"
#include "desk/desk.h"
#include "options/settings.h"

class QLabel;
class QPushButton;
class QScrollArea;
class QSpinBox;
class QToolButton;
class QVBoxLayout;

namespace tenthday {

class BarsForm;
class DatesList;
class DraftForm;
class WeekTable;
class WhyDialog;
class YardsForm;

/// While it is open the desk previews what is typed; closing it without saving drops the preview.
/// Saving is one edit.
class BatchEditor : public QDialog {
    Q_OBJECT

public Q_SLOTS:
    /// Leaves without saving; asks first when something was changed.
    void reject() override;

public:
    /// @param draft  a new one, or that of a batch of the book; desk and settings must outlive it
    BatchEditor(Desk& desk, Settings& settings, BatchDraft draft, QWidget* parent = nullptr);
    ~BatchEditor() override;

    [[nodiscard]] DraftForm& form() { return *form_; }
    [[nodiscard]] BarsForm& bars() { return *bars_; }
    [[nodiscard]] YardsForm& yards() { return *yards_; }
    [[nodiscard]] DatesList& dates() { return *dates_; }
    [[nodiscard]] WeekTable& week() { return *week_; }
    [[nodiscard]] QSpinBox& repeatEvery() { return *every_; }
    [[nodiscard]] QSpinBox& repeatMore() { return *more_; }
    [[nodiscard]] QPushButton& saveButton() { return *save_; }
    [[nodiscard]] QPushButton& deleteButton() { return *remove_; }
    /// Cups that were not started grafted anew, and a second graft as insurance; shown where they
    /// can be.
    [[nodiscard]] QPushButton& topUpButton() { return *topUp_; }
    [[nodiscard]] QPushButton& insureButton() { return *insure_; }
    [[nodiscard]] QToolButton& freeWeekday(int monday0) { return *weekdays_.at(index(monday0)); }
    [[nodiscard]] QString weekSum() const;
    [[nodiscard]] QString clashesText() const;
    [[nodiscard]] QString told() const;
    /// Buttons of the nearest clear days.
    [[nodiscard]] std::vector<QPushButton*> nearest() const { return nearestButtons_; }
    [[nodiscard]] const BatchDraft& draft() const { return draft_; }
    /// "Why this day?", or null while it is not open.
    [[nodiscard]] WhyDialog* why() const;
    /// Asks before a batch goes, or what was typed is dropped; true means yes.
    void setQuestion(std::function<bool(const QString&)> ask) { ask_ = std::move(ask); }

Q_SIGNALS:
    /// This is closed, and a further batch is to be planned.
    void furtherWished(const tenthday::BatchDraft& draft);

protected:
    void done(int result) override;

private:
    static std::size_t index(int number) { return static_cast<std::size_t>(number); }
    void layOut();
    [[nodiscard]] QWidget* makeFields();
    [[nodiscard]] QWidget* makeMiddle();
    [[nodiscard]] QWidget* makeRight();
    [[nodiscard]] QWidget* makeWeek();
    [[nodiscard]] QWidget* makeFoot();
    void connectAll();

    void readFields();
    [[nodiscard]] bool dayFromWish();
    void refresh();
    void showDerived();
    void showTrials(const TrialResult& result);
    void showNearest(const std::vector<DayTrial>& days);
    void tellRepeats();
    void take(Day start);
    void showWhy(std::optional<Event> event);
    void save();
    void removeBatch();
    void planFurther(bool asInsurance);
    void offerFurther();
    void refuse(const QString& why);
    void showFresh(bool fresh);
    [[nodiscard]] bool isGraftRecorded() const;
    [[nodiscard]] bool canCountTake() const;
    [[nodiscard]] QString toldOf(const ChangeSet& changes) const;
    [[nodiscard]] std::array<bool, 7> weekdaysOff() const;
    [[nodiscard]] Repeat repeat() const;

    Desk& desk_;
    Settings& settings_;
    BatchDraft draft_;
    BatchDraft opened_;  ///< as it was before anything was typed
    const bool isNew_;
    StableIds ids_;
    TrialWorker worker_;
    QPointer<WhyDialog> why_;
    QTimer soon_;
    std::function<bool(const QString&)> ask_;

    DraftForm* form_;
    BarsForm* bars_;
    YardsForm* yards_;
    DatesList* dates_;
    WeekTable* week_;
    QLabel* weekSum_;
    QWidget* weekPart_ = nullptr;
    QLabel* clashes_;
    QVBoxLayout* nearest_;
    QLabel* nearestTold_;
    std::vector<QPushButton*> nearestButtons_;
    std::vector<QToolButton*> weekdays_;
    QSpinBox* every_;
    QSpinBox* more_;
    QLabel* moreLabel_;
    QLabel* repeats_;
    QLabel* told_;
    QPushButton* whyButton_;
    QPushButton* save_;
    QPushButton* remove_;
    QPushButton* topUp_;
    QPushButton* insure_;
};

}  // namespace tenthday
