/// @file stays_form.h  The days of a batch at a mating station, or of its insemination.
#pragma once
#include <QWidget>
#include <array>

#include "drafting/batch_draft.h"
#include "timeline/batch_timeline.h"

class QComboBox;
class QDateEdit;
class QGridLayout;
class QLabel;
class QPushButton;

namespace tenthday {

/// Each way of mating keeps its own days while the editor is open, so that going back and forth
/// loses none. Days count from the graft and move with it. Hidden for open mating.
class StaysForm : public QWidget {
    Q_OBJECT

public:
    explicit StaysForm(const Snapshot& snapshot, QWidget* parent = nullptr);

    /// Shows the days of a draft, as they came.
    void show(const BatchDraft& draft);
    void setMating(Mating mating);
    /// The day from which days count.
    void setGraft(Day graft);
    /// Writes the days of the way chosen into a draft.
    void read(BatchDraft& draft) const;
    /// This way of mating was chosen here and has no days yet: usual ones are to be suggested.
    [[nodiscard]] bool wantsDays() const;
    /// None given: they are wanted still.
    void suggest(std::vector<StayDraft> stays);
    /// Says when the virgins are ready for it.
    void follow(const BatchTimeline& timeline);
    /// Its labels stand in a column so wide, and the keyboard comes to it after that field.
    void standBelow(QWidget& field, int labelWidth, int spacing);

    [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
    [[nodiscard]] QComboBox& yard(int stay) { return *rows_.at(index(stay)).yard; }
    [[nodiscard]] QDateEdit& from(int stay) { return *rows_.at(index(stay)).from; }
    [[nodiscard]] QDateEdit& until(int stay) { return *rows_.at(index(stay)).until; }
    [[nodiscard]] QPushButton& removeButton(int stay) { return *rows_.at(index(stay)).remove; }
    [[nodiscard]] QPushButton& addButton() { return *add_; }
    [[nodiscard]] QString told() const;

    using QWidget::show;

Q_SIGNALS:
    void changed();

private:
    struct Row {
        QComboBox* yard;  ///< null for insemination
        QDateEdit* from;
        QDateEdit* until;
        QPushButton* remove;
    };
    using Stays = std::vector<StayDraft>;
    static std::size_t index(int number) { return static_cast<std::size_t>(number); }
    [[nodiscard]] std::optional<Stays>& own() { return lists_[static_cast<std::size_t>(mating_)]; }
    [[nodiscard]] const std::optional<Stays>& own() const {
        return lists_[static_cast<std::size_t>(mating_)];
    }
    [[nodiscard]] StayDraft& stay(int number) { return own()->at(index(number)); }

    void build();
    void clear();
    [[nodiscard]] Row makeRow(int number, int& line);
    [[nodiscard]] QComboBox* yardField(std::optional<Id<Yard>> chosenOne);
    void connectRow(int number);
    void put(int line, const QString& words, QWidget* field, int number);
    void showDays();
    void addStay();
    void removeStay(int number);
    void chainKeys();

    const Snapshot snapshot_;
    Mating mating_ = Mating::Open;
    Day graft_;
    std::array<std::optional<Stays>, kTokenCount<Mating>> lists_;  ///< none: never chosen
    std::vector<Row> rows_;
    QGridLayout* grid_;
    QLabel* told_;
    QPushButton* add_;
    QWidget* before_ = nullptr;
};

}  // namespace tenthday
