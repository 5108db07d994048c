/// @file setup_page.h  The lasting things: kinds on the left, the list of one, the form of a thing.
#pragma once
#include <QWidget>

#include "desk/desk.h"
#include "desk/while_seen.h"
#include "setup/setup_form.h"
#include "setup/setup_model.h"

class QLineEdit;
class QListWidget;
class QSortFilterProxyModel;
class QSplitter;
class QStackedWidget;
class QTableView;

namespace tenthday {

class SetupPage : public QWidget {
    Q_OBJECT

public:
    /// @param desk  must outlive the page
    explicit SetupPage(Desk& desk, QWidget* parent = nullptr);
    ~SetupPage() override;

    /// Asks where something is not saved. False: the user keeps editing.
    [[nodiscard]] bool mayLeave();

    [[nodiscard]] QListWidget& kinds() { return *kinds_; }
    [[nodiscard]] QTableView& table() { return *table_; }
    [[nodiscard]] QLineEdit& find() { return *find_; }
    [[nodiscard]] SetupForm& form() { return *form_; }
    [[nodiscard]] QPushButton& addButton() { return *add_; }
    [[nodiscard]] QPushButton& removeButton() { return *remove_; }
    [[nodiscard]] QPushButton& storyButton() { return *story_; }
    [[nodiscard]] QString emptyText() const;

Q_SIGNALS:
    void tradeNumbersWanted();

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] QWidget* makeKinds();
    [[nodiscard]] QWidget* makeList();
    void addKeys();
    void follow(const Changes& changes);
    void readBook();
    /// Reads anew and chooses these, keeping the list's place.
    void reload(const std::vector<Uuid>& ids);
    void showKind(int index);
    void select(const std::vector<Uuid>& ids);
    void selectionChanged();
    void showChosen();
    void addNew();
    bool save();
    void discard();
    void removeChosen();
    void tellStory();
    [[nodiscard]] QString retire(const std::vector<Uuid>& ids, Day from);
    /// Why it was not saved; nothing when it was.
    [[nodiscard]] QString apply(Result<ChangeSet> changes, const QString& subject);
    void tellCount();
    [[nodiscard]] std::vector<Uuid> selected() const;
    [[nodiscard]] const SetupKind& kind() const { return *all_[current_]; }

    Desk& desk_;
    std::vector<std::unique_ptr<SetupKind>> all_;
    std::size_t current_ = 0;
    Snapshot book_;  ///< of all seasons
    WhileSeen seen_{this, [this] { reload(form_->draft().ids); }};
    bool busy_ = false;  ///< the page itself chooses or saves
    SetupModel* model_;
    QSortFilterProxyModel* shown_;
    QListWidget* kinds_;
    QTableView* table_;
    QStackedWidget* list_;
    QLabel* empty_;
    QLabel* head_;
    QLineEdit* find_;
    QLabel* count_;
    QPushButton* add_;
    QPushButton* remove_;
    QPushButton* story_;
    SetupForm* form_;
    QSplitter* split_;
};

}  // namespace tenthday
