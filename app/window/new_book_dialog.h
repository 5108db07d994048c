/// @file new_book_dialog.h  What a new book is called, where it is kept, and its first season.
#pragma once
#include <QDialog>

#include "book/new_book.h"

class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;
class QPushButton;

namespace tenthday {

/// A new book: its content and its file.
struct NewBookWish {
    QString path;
    BookPlan plan;
};

class NewBookDialog : public QDialog {
    Q_OBJECT

public:
    /// @param folder  where the file is proposed
    NewBookDialog(Day today, const QString& folder, QWidget* parent = nullptr);

    [[nodiscard]] NewBookWish wish() const;

    [[nodiscard]] QLineEdit& operation() { return *operation_; }
    [[nodiscard]] QLineEdit& place() { return *place_; }
    [[nodiscard]] QComboBox& hemisphere() { return *hemisphere_; }
    [[nodiscard]] QDateEdit& from() { return *from_; }
    [[nodiscard]] QDateEdit& until() { return *until_; }
    [[nodiscard]] QLineEdit& yard() { return *yard_; }
    [[nodiscard]] QPushButton& makeButton() { return *make_; }
    [[nodiscard]] QString told() const;

private:
    void layOut();
    void proposePlace();
    void proposeSeason();
    void choosePlace();
    void follow();
    /// Why the book cannot be made so; empty when it can.
    [[nodiscard]] QString complaint() const;

    Day today_;
    QString folder_;
    bool placeIsOwn_ = false;
    bool seasonIsOwn_ = false;
    QLineEdit* operation_;
    QLineEdit* place_;
    QPushButton* choose_;
    QComboBox* hemisphere_;
    QDateEdit* from_;
    QDateEdit* until_;
    QLineEdit* yard_;
    QLabel* told_;
    QPushButton* make_;
};

}  // namespace tenthday
