/// @file import_dialog.h  A daily weather record from a file: columns, units, a look at it, and
/// what to do with what is wrong in it.
#pragma once
#include <QDialog>
#include <array>
#include <functional>

#include "exchange/weather_file.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;
class QTableWidget;
class QVBoxLayout;

namespace tenthday {

/// Stays open while what was given is refused.
class WeatherImportDialog : public QDialog {
    Q_OBJECT

public:
    /// Empty when done, else why not.
    using Save = std::function<QString(const std::vector<WeatherFileDay>&)>;

    /// @param text  of the whole file
    WeatherImportDialog(const QString& fileName, std::string text, Save save,
                        QWidget* parent = nullptr);

    /// The choice of the file's column for a meaning; entry 0 is none.
    [[nodiscard]] QComboBox& column(WeatherColumn column) {
        return *columns_[static_cast<std::size_t>(column)];
    }
    [[nodiscard]] QComboBox& heat() { return *heat_; }
    [[nodiscard]] QComboBox& rain() { return *rain_; }
    [[nodiscard]] QComboBox& wind() { return *wind_; }
    [[nodiscard]] QTableWidget& preview() { return *preview_; }
    [[nodiscard]] QListWidget& troubles() { return *troubles_; }
    /// To skip what is wrong in this way; hidden where nothing is.
    [[nodiscard]] QCheckBox& skip(WeatherTrouble kind) {
        return *skips_[static_cast<std::size_t>(kind)];
    }
    [[nodiscard]] QPushButton& importButton() { return *import_; }
    [[nodiscard]] QString summary() const;
    [[nodiscard]] QString told() const;

    void accept() override;

private:
    [[nodiscard]] QWidget* makeChoices(const WeatherColumns& found,
                                       const std::vector<std::string>& header);
    [[nodiscard]] QWidget* makeUnits();
    [[nodiscard]] QWidget* makeLook();
    void makeSkips(QVBoxLayout& column);
    [[nodiscard]] WeatherColumns chosenColumns() const;
    void read();
    void showDays();
    void showTroubles();
    void judge();

    std::string text_;
    Save save_;
    WeatherFile file_;
    bool readable_ = false;
    std::array<QComboBox*, kTokenCount<WeatherColumn>> columns_{};
    std::array<QCheckBox*, kTokenCount<WeatherTrouble>> skips_{};
    QComboBox* heat_;
    QComboBox* rain_;
    QComboBox* wind_;
    QTableWidget* preview_;
    QListWidget* troubles_;
    QLabel* summary_;
    QLabel* told_;
    QPushButton* import_;
};

}  // namespace tenthday
