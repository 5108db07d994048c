/// @file weather_page.h  The weather that is reckoned with: its source, the limits of flying days,
/// what was seen on the last days, and the usual weather of the months.
#pragma once
#include <QPointer>
#include <QWidget>

#include "desk/desk.h"
#include "desk/while_seen.h"
#include "weather/fly_fit.h"
#include "weather/import_dialog.h"

class QLabel;
class QPushButton;
class QTableView;

namespace tenthday {

class DaysModel;
class MonthsModel;

class WeatherPage : public QWidget {
    Q_OBJECT

public:
    /// @param desk  must outlive the page
    explicit WeatherPage(Desk& desk, QWidget* parent = nullptr);

    /// The last days, today first.
    [[nodiscard]] QTableView& days() { return *days_; }
    [[nodiscard]] QTableView& months() { return *months_; }
    [[nodiscard]] QPushButton& flewButton() { return *flew_; }
    [[nodiscard]] QPushButton& notButton() { return *not_; }
    [[nodiscard]] QPushButton& unsaidButton() { return *unsaid_; }
    /// Takes the fitted limit; can be pressed while it differs from the one in force.
    [[nodiscard]] QPushButton& useFitButton() { return *useFit_; }
    [[nodiscard]] QPushButton& importButton() { return *import_; }
    /// Asks how a daily record is to be taken in from this file.
    void importFrom(const QString& path);
    /// The dialog that is open now, or null.
    [[nodiscard]] WeatherImportDialog* importing() const { return importing_; }
    [[nodiscard]] QString sourceText() const;
    [[nodiscard]] QString fitText() const;
    /// What the season's virgins want of drones, yard by yard.
    [[nodiscard]] QString dronesText() const;
    /// The line that tells a refusal.
    [[nodiscard]] QString told() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] QWidget* makeTop();
    [[nodiscard]] QWidget* makeDays();
    [[nodiscard]] QWidget* makeMonths();
    void follow();
    void tellFit();
    void tellChosen();
    void say(std::optional<bool> flew);
    void useFit();
    void setMonth(int month, std::optional<Tenths> tmaxC, std::optional<Tenths> rainDays);
    void chooseFile();
    [[nodiscard]] QString takeIn(const std::vector<WeatherFileDay>& days);
    /// Empty when done, else why not.
    [[nodiscard]] QString save(const Result<ChangeSet>& changes);

    Desk& desk_;
    DaysModel* daysModel_;
    MonthsModel* monthsModel_;
    QTableView* days_;
    QTableView* months_;
    QLabel* source_;
    QLabel* limits_;
    QLabel* drones_;
    QLabel* monthsHead_;
    QLabel* fitted_;
    QLabel* told_;
    QPushButton* flew_;
    QPushButton* not_;
    QPushButton* unsaid_;
    QPushButton* useFit_;
    QPushButton* import_;
    QPointer<WeatherImportDialog> importing_;
    std::optional<FlyFit> fit_;
    WhileSeen seen_{this, [this] { follow(); }};
};

}  // namespace tenthday
