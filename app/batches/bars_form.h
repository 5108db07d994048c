/// @file bars_form.h  The bars of a batch: breeder queen, grafts, builders, take.
#pragma once
#include <QWidget>

#include "drafting/batch_draft.h"
#include "outlook/outlook.h"

class QComboBox;
class QGridLayout;
class QPushButton;
class QSpinBox;

namespace tenthday {

class BarsForm : public QWidget {
    Q_OBJECT

public:
    explicit BarsForm(const Snapshot& snapshot, QWidget* parent = nullptr);

    /// Shows bars, for the steps of a method and words of a start.
    void show(const BatchDraft& draft);
    /// Writes the bars into a draft; builders for the steps of its method.
    void read(BatchDraft& draft) const;
    /// The steps of another method: builders that still fit stay, others begin with the first of
    /// their kind that stands there on the day.
    void setMethod(Id<Method> method, Start start, Day day);
    /// Whether takes can be counted yet.
    void setCountable(bool countable);

    [[nodiscard]] int count() const { return static_cast<int>(bars_.size()); }
    [[nodiscard]] QComboBox& breeder(int bar) { return *at(bar).breeder; }
    [[nodiscard]] QSpinBox& grafts(int bar) { return *at(bar).cells; }
    [[nodiscard]] QComboBox& builder(int bar, int step) { return *at(bar).steps.at(index(step)); }
    [[nodiscard]] QSpinBox& take(int bar) { return *at(bar).take; }
    [[nodiscard]] QPushButton& addButton() { return *add_; }
    [[nodiscard]] QPushButton& removeButton(int bar) { return *at(bar).remove; }

Q_SIGNALS:
    void changed();

private:
    struct Bar {
        std::int32_t number;  ///< in the book; 0 for a new one
        QComboBox* breeder;
        QSpinBox* cells;
        std::vector<QComboBox*> steps;
        QSpinBox* take;
        QPushButton* remove;
    };
    static std::size_t index(int number) { return static_cast<std::size_t>(number); }
    Bar& at(int bar) { return bars_.at(index(bar)); }

    void build();
    void addHeads();
    [[nodiscard]] Bar makeBar(const BarDraft& draft, std::int32_t number, int row);
    [[nodiscard]] QComboBox* builderField(BuilderKind where, std::optional<Id<Builder>> chosen);
    [[nodiscard]] bool isOffered(const Queen& queen) const;
    void addBar();
    void removeBar(int bar);
    void tellTake(const Bar& bar) const;
    void keep();

    const Snapshot snapshot_;
    Id<Batch> batch_;
    QGridLayout* grid_;
    QPushButton* add_;
    std::vector<Bar> bars_;
    std::vector<BarDraft> shown_;
    std::vector<Ptr<Step>> steps_;
    Start start_ = Start::Graft;
    bool countable_ = false;
};

}  // namespace tenthday
