/// @file ways_grid.h  The sum of a cells day in numbers: what is ripe, each way, what is left.
#pragma once
#include <QWidget>
#include <array>

#include "cellsday/cells_draft.h"

class QGridLayout;
class QLabel;
class QSpinBox;

namespace tenthday {

/// A column per batch. Says what is wished; its owner changes the draft and shows it anew.
class WaysGrid : public QWidget {
    Q_OBJECT

public:
    explicit WaysGrid(QWidget* parent = nullptr);

    /// Makes the fields for the batches and yards of a draft.
    void show(const Outlook& outlook, const CellsDraft& draft, const std::vector<CellsNuc>& nucs,
              bool editable);
    /// Brings numbers and the sum up to date.
    void refresh(const CellsDraft& draft, const std::vector<CellsNuc>& nucs);

    /// Fields of a batch, by its place in the draft; null where there are none.
    [[nodiscard]] QSpinBox* ripe(std::size_t batch) const;
    [[nodiscard]] QSpinBox* nucsAt(std::size_t batch, Id<Yard> yard) const;
    [[nodiscard]] QSpinBox* way(std::size_t batch, CellTarget way) const;
    [[nodiscard]] QString leftText(std::size_t batch) const;

Q_SIGNALS:
    void ripeCounted(int batch, int cells);
    void nucsWished(int batch, tenthday::Id<tenthday::Yard> yard, int cells);
    void wayWished(int batch, tenthday::CellTarget way, int cells);

private:
    struct YardRow {
        Id<Yard> yard;
        QString label;
        QLabel* open;
        std::vector<QSpinBox*> cells;
    };
    struct BatchColumn {
        QSpinBox* ripe = nullptr;
        std::array<QSpinBox*, kTokenCount<CellTarget>> ways{};
        QLabel* recorded = nullptr;
        QLabel* mark = nullptr;
        QLabel* left = nullptr;
    };
    [[nodiscard]] QSpinBox* field(const QString& line, const QString& batch, const QString& hint);
    void addHeads(const Outlook& outlook, const CellsDraft& draft);
    void addRipe(const Outlook& outlook, const CellsDraft& draft);
    void addYards(const Outlook& outlook, const CellsDraft& draft,
                  const std::vector<CellsNuc>& nucs);
    void addWays(const CellsDraft& draft);
    void addSum(const CellsDraft& draft);
    QLabel* lineName(const QString& words, const QString& hint);

    QGridLayout* grid_;
    QWidget* fields_ = nullptr;
    int row_ = 0;
    bool editable_ = true;
    std::vector<QString> batches_;
    std::vector<YardRow> yards_;
    std::vector<BatchColumn> columns_;
};

}  // namespace tenthday
