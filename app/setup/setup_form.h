/// @file setup_form.h  The form of the set-up page: the fields of a thing, and whether they are
/// saved.
#pragma once
#include <QLabel>

#include "setup/field_editor.h"
#include "setup/setup_kind.h"

class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace tenthday {

class SetupForm : public QWidget {
    Q_OBJECT

public:
    explicit SetupForm(QWidget* parent = nullptr);

    /// Shows things, or what is asked of a new one. Both must outlive what is shown.
    void show(const SetupKind& kind, const Snapshot& book, const std::vector<Uuid>& ids,
              bool readOnly);
    /// Nothing is chosen.
    void showNothing(const QString& told);

    [[nodiscard]] bool isOpen() const { return kind_ != nullptr; }
    [[nodiscard]] const Draft& draft() const { return draft_; }
    /// Something was changed and is not saved.
    [[nodiscard]] bool isDirty() const { return isOpen() && draft_.before != draft_.values; }
    /// Looks whether all can be taken. What cannot is told beside its field, and waits for the
    /// keys.
    [[nodiscard]] bool check();
    void focusFirst();

    void tell(const QString& text, bool isRefusal = false);
    [[nodiscard]] QString told() const { return told_->text(); }
    /// What stands under a field: what is wrong with it, or its hint.
    [[nodiscard]] QString under(std::size_t field) const { return parts_[field].under->text(); }
    [[nodiscard]] QString head() const { return head_->text(); }
    [[nodiscard]] QPushButton& saveButton() { return *save_; }
    [[nodiscard]] QPushButton& discardButton() { return *discard_; }

Q_SIGNALS:
    void saveWanted();
    void discardWanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    struct Part {
        Field field;
        FieldEditor editor;
        QLabel* under;
        QWidget* whole;  ///< hidden where the field has nothing to do with what is entered
        bool isFault = false;
        bool warns = false;
    };
    void makeRoom();
    void build(const std::vector<Field>& fields, bool readOnly);
    [[nodiscard]] Part makePart(const Field& field, std::size_t index, QVBoxLayout& column);
    void clear();
    void edited(std::size_t field);
    void read();
    void showHint(std::size_t field);
    void showFault(std::size_t field, const QString& text);
    void followState();
    void tint();

    const SetupKind* kind_ = nullptr;
    const Snapshot* book_ = nullptr;
    bool readOnly_ = false;
    bool filling_ = false;
    bool refused_ = false;
    Draft draft_;
    std::vector<Part> parts_;
    QLabel* head_;
    QWidget* fields_ = nullptr;
    QScrollArea* area_;
    QLabel* told_;
    QPushButton* save_;
    QPushButton* discard_;
};

}  // namespace tenthday
