/// @file steps_edit.h  The steps of a method: where, from and to which hour, rest; also as days.
#pragma once
#include <QVariant>
#include <QWidget>
#include <vector>

class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;
class QSpinBox;

namespace tenthday {

class StepsEdit : public QWidget {
    Q_OBJECT

public:
    explicit StepsEdit(QWidget* parent = nullptr);

    /// A QVariantList{kind, from hour, to hour, rest days} per step.
    [[nodiscard]] QVariant value() const;
    void setValue(const QVariant& value);

    [[nodiscard]] QPushButton& addButton() { return *add_; }
    [[nodiscard]] QPushButton& dropButton() { return *drop_; }
    [[nodiscard]] QSpinBox& toHour(int step) { return *lines_[static_cast<std::size_t>(step)].to; }

Q_SIGNALS:
    void edited();

private:
    struct Line {
        QComboBox* where;
        QSpinBox* from;
        QSpinBox* to;
        QSpinBox* rest;
        QLabel* days;
    };
    void addLine(const QVariantList& step);
    void dropLine();
    void tell();

    QGridLayout* grid_;
    QPushButton* add_;
    QPushButton* drop_;
    std::vector<Line> lines_;
};

}  // namespace tenthday
