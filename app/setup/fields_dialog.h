/// @file fields_dialog.h  Asks for a few fields; what comes of them is told while they are entered.
#pragma once
#include <QDialog>
#include <functional>

#include "setup/field_editor.h"

class QLabel;
class QPushButton;
class QGridLayout;

namespace tenthday {

/// What a dialog asks for, as data.
struct FieldsAsked {
    QString head;
    QString saveWord;
    std::vector<Field> fields;
    FieldValues values;  ///< a value per field
    /// Called at each change by the user: may put other fields right. May be empty.
    std::function<void(FieldValues&, std::size_t field)> follow = {};
    /// Whether a field has to do with what is entered. Empty: all have.
    std::function<bool(const FieldValues&, std::size_t field)> fits = {};
    /// What stands under a field. May be empty.
    std::function<Hint(const FieldValues&, std::size_t field)> hint = {};
    /// Keeps it: empty when done, else why not.
    std::function<QString(const FieldValues&)> save;
};

/// Stays open, with one line that says why, while what was given is refused.
class FieldsDialog : public QDialog {
    Q_OBJECT

public:
    /// @param today  the day on which calendars open
    FieldsDialog(FieldsAsked asked, Day today, QWidget* parent = nullptr);

    [[nodiscard]] const FieldValues& values() const { return values_; }
    /// The widget of a field.
    [[nodiscard]] QWidget& field(std::size_t index) { return *parts_[index].editor.widget; }
    /// Enters a value as the user would.
    void enter(std::size_t field, const QVariant& value);
    /// What stands under a field: what is wrong with it, or its hint.
    [[nodiscard]] QString under(std::size_t field) const;
    [[nodiscard]] QString told() const;
    [[nodiscard]] QPushButton& saveButton() { return *save_; }
    /// A part below the fields: what comes of them.
    void setLive(QWidget* part);

    void accept() override;

Q_SIGNALS:
    void changed();

protected:
    void changeEvent(QEvent* event) override;

private:
    struct Part {
        QLabel* name;
        FieldEditor editor;
        QLabel* under;
        bool isFault = false;
        bool warns = false;
    };
    void makePart(std::size_t index, Day today);
    void edited(std::size_t field);
    void read();
    void showHints();
    void showFault(std::size_t field, const QString& text);
    [[nodiscard]] bool fits(std::size_t field) const;
    void tint();

    FieldsAsked asked_;
    FieldValues values_;
    std::vector<Part> parts_;
    QGridLayout* grid_;
    QWidget* liveHolder_;
    QLabel* told_;
    QPushButton* save_;
    bool filling_ = false;
};

}  // namespace tenthday
