/// @file facts_page.h  Every trade number with unit, range and source, and the user's own in place.
#pragma once
#include <QWidget>
#include <memory>

#include "desk/desk.h"
#include "facts/facts_model.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QSortFilterProxyModel;
class QTableView;

namespace tenthday {

class FactsPage : public QWidget {
    Q_OBJECT

public:
    /// @param desk  must outlive the page
    explicit FactsPage(Desk& desk, QWidget* parent = nullptr);

    [[nodiscard]] QTableView& table() { return *table_; }
    [[nodiscard]] QLineEdit& find() { return *find_; }
    [[nodiscard]] QPushButton& useDefault() { return *useDefault_; }
    /// The line that tells a refusal or the chosen number's sources.
    [[nodiscard]] QString told() const;

private:
    void layOut();
    void follow();
    void set(Fact fact, std::optional<double> value);
    [[nodiscard]] std::optional<Fact> chosen() const;
    void tellChosen();

    Desk& desk_;
    std::shared_ptr<const Facts> shownFacts_;
    FactsModel* model_;
    QSortFilterProxyModel* shown_;
    QTableView* table_;
    QLineEdit* find_;
    QPushButton* useDefault_;
    QLabel* told_;
};

}  // namespace tenthday
