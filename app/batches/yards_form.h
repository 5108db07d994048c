/// @file yards_form.h  How many cells each yard gets, beside what is ready there.
#pragma once
#include <QWidget>

#include "drafting/batch_draft.h"
#include "outlook/outlook.h"

class QLabel;
class QSpinBox;

namespace tenthday {

class YardsForm : public QWidget {
    Q_OBJECT

public:
    explicit YardsForm(const Snapshot& snapshot, QWidget* parent = nullptr);

    void show(const BatchDraft& draft);
    /// Writes the shares into a draft; a yard with no cells is not named.
    void read(BatchDraft& draft) const;
    /// What is ready on the day the cells leave, and the sum.
    void follow(const Outlook& outlook, Id<Batch> batch);

    [[nodiscard]] QSpinBox* cells(Id<Yard> yard) const;
    [[nodiscard]] QString sumText() const;

Q_SIGNALS:
    void changed();

private:
    struct Row {
        Id<Yard> yard;
        QSpinBox* cells;
        QLabel* numbers;
    };
    std::vector<Row> rows_;
    QLabel* sum_;
};

}  // namespace tenthday
