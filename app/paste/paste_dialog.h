/// @file paste_dialog.h  Lines copied out of a spreadsheet, looked at before they are taken in.
#pragma once
#include <QDialog>
#include <functional>
#include <memory>
#include <vector>

#include "desk/desk.h"
#include "exchange/pasted.h"

class QComboBox;
class QLabel;
class QPlainTextEdit;
class QPushButton;
class QTableWidget;
class QTimer;
class QVBoxLayout;

namespace tenthday {

/// A column of the kind that is pasted.
struct PasteColumn {
    std::string token;  ///< as import names it
    QString name;
    bool needed = false;
    /// What was typed, as import takes it; what cannot be read stays as it is and is refused there.
    std::function<QString(const QString&)> read;
    /// Whether a cell looks as if it belonged here: for lines that come without a header. Columns
    /// that say no to everything are found by their header alone.
    std::function<bool(const QString&)> fits;
    /// What is wrong with what was typed, in the screen's words, as far as that can be told before
    /// import reads it; empty where nothing is. None: all is left to import.
    std::function<QString(const QString&)> wrong = {};
    /// What was typed, in the screen's words. None: as import takes it.
    std::function<QString(const QString&)> shown = {};
};

/// What can be pasted, as data; a page makes one.
struct PasteKind {
    QString head;
    std::string kind;   ///< one of exportKinds()
    std::string named;  ///< of the undo step: "orders"
    std::vector<PasteColumn> columns;
    /// "Take in 12 orders".
    std::function<QString(int)> takeIn;
    /// What the lines are judged against: all seasons, of a list of such; null: what the desk
    /// shows.
    std::shared_ptr<const Snapshot> book = {};
    /// What lines with these columns would bring, where it is not for import to say.
    std::function<PastedEdit(const std::vector<std::string>& columns,
                             const std::vector<std::vector<std::string>>& lines)>
        edit = {};
    /// More lists follow in the same edit: lines that say nothing new are fine.
    bool isPart = false;
};

/// A column that is found by its heads alone and read as it stands.
[[nodiscard]] PasteColumn plainColumn(std::string token, QString name, bool needed = false);

/// Any kind with all its columns, found by the heads that export gives them.
[[nodiscard]] PasteKind listToPaste(const std::string& kind);

/// All lines or none, one undo step. Stays open while what was given is refused.
class PasteDialog : public QDialog {
    Q_OBJECT

public:
    /// Empty when done, else why not.
    using Save = std::function<QString(const ChangeSet&)>;

    /// @param desk  must outlive the dialog
    PasteDialog(const Desk& desk, PasteKind kind, const QString& text, Save save,
                QWidget* parent = nullptr);

    [[nodiscard]] QPlainTextEdit& text() { return *text_; }
    /// Where a column of the kind is found; entry 0 is nowhere.
    [[nodiscard]] QComboBox& column(std::size_t index) { return *columns_[index]; }
    [[nodiscard]] QTableWidget& preview() { return *preview_; }
    [[nodiscard]] QPushButton& takeButton() { return *take_; }
    [[nodiscard]] QString summary() const;
    /// How many lines the preview shows, where that is not all; else empty.
    [[nodiscard]] QString shownOf() const;
    [[nodiscard]] QString told() const;

    void accept() override;

private:
    [[nodiscard]] QWidget* makeColumns();
    void readText();
    /// The text as it came, as long as nobody has changed it.
    [[nodiscard]] std::string textGiven() const;
    void offerColumns();
    void offerColumn(std::size_t column, std::optional<std::size_t> found);
    /// Heads that stand over cells which nothing is read from.
    [[nodiscard]] QStringList unreadHeads() const;
    [[nodiscard]] QString summaryOf(const QStringList& missing, int lines) const;
    void judge();
    [[nodiscard]] PastedEdit editFor(const std::vector<std::string>& tokens,
                                     const std::vector<std::vector<std::string>>& lines) const;
    /// "line 3: why", of the first line that cannot be taken; empty when all can.
    [[nodiscard]] QString firstTrouble() const;
    void show(const PastedEdit& edit, int lines);
    /// The lines of the preview begin below a header.
    [[nodiscard]] std::size_t firstLine() const { return hasHeader_ ? 1 : 0; }
    /// A column that is read, and the cell of a line it stands in.
    struct UsedColumn {
        const PasteColumn* column;
        std::size_t at;
    };
    [[nodiscard]] std::vector<UsedColumn> usedColumns() const;
    [[nodiscard]] std::vector<std::vector<std::string>> linesRead(
        const std::vector<UsedColumn>& used) const;
    /// Puts troubles into the screen's words: what columns refuse themselves, and columns by name.
    void tellInWords(const std::vector<UsedColumn>& used, PastedEdit& edit) const;

    const Desk& desk_;
    PasteKind kind_;
    Save save_;
    QString came_;
    PastedCells cells_;
    bool hasHeader_ = false;
    bool filling_ = false;
    PastedEdit edit_;
    std::vector<std::string> offered_;  ///< heads that are offered, or empty cells without heads
    std::vector<bool> byHand_;          ///< columns somebody chose the place of
    QPlainTextEdit* text_;
    std::vector<QComboBox*> columns_;
    QTableWidget* preview_;
    QLabel* summary_;
    QLabel* shownOf_;
    QLabel* told_;
    QPushButton* take_;
    QTimer* rest_;
};

/// Which cell of a line each column of the kind stands in, by the header if there is one, else by
/// what the cells look like; none where it is not there.
struct PastePlaces {
    bool hasHeader = false;
    std::vector<std::optional<std::size_t>> at;
};
[[nodiscard]] PastePlaces placesOf(const PasteKind& kind, const PastedCells& cells);

}  // namespace tenthday
