/// @file setup_kind.h  What the set-up page must know about one kind of thing. The page, its list
/// and its form are the same for all.
#pragma once
#include <QStringList>
#include <memory>

#include "book/new_id.h"
#include "records/setup_verbs.h"
#include "records/uses.h"
#include "screen_text/setup_text.h"
#include "screen_text/story_text.h"
#include "setup/field.h"

namespace tenthday {

struct ListRow {
    Uuid id;
    QStringList cells;                  ///< a text per column
    std::optional<YearMark> mark = {};  ///< a queen's, shown as a dot
    int markColumn = 0;
    QStringList tips = {};  ///< a cell's text is its own where none is given
};

/// What a form holds.
struct Draft {
    std::vector<Uuid> ids;  ///< of what is changed; none: something new
    FieldValues before;
    FieldValues values;
    [[nodiscard]] bool isNew() const { return ids.empty(); }
    [[nodiscard]] bool isMany() const { return ids.size() > 1; }
    [[nodiscard]] bool changed(std::size_t field) const { return before[field] != values[field]; }
};

/// What is wrong with which field.
struct FieldFault {
    std::size_t field;
    QString text;
};

/// Snapshots given here hold all seasons. Verbs are those of core; nothing is kept in a kind.
class SetupKind {
public:
    virtual ~SetupKind() = default;
    SetupKind() = default;
    SetupKind(const SetupKind&) = delete;
    SetupKind& operator=(const SetupKind&) = delete;

    [[nodiscard]] virtual setup_text::Kind kind() const = 0;
    [[nodiscard]] virtual QStringList columns() const = 0;
    /// In the order of the list.
    [[nodiscard]] virtual std::vector<ListRow> rows(const Snapshot& book) const = 0;

    /// Fields of the form for these things, for something new when there are none.
    [[nodiscard]] virtual std::vector<Field> fields(const Snapshot& book,
                                                    const std::vector<Uuid>& ids) const = 0;
    [[nodiscard]] virtual FieldValues values(const Snapshot& book,
                                             const std::vector<Uuid>& ids) const = 0;
    /// One can be added by hand.
    [[nodiscard]] virtual bool canAdd() const { return true; }
    /// Several can be changed at once.
    [[nodiscard]] virtual bool takesMany() const { return false; }
    /// Lets other fields follow the one just changed.
    virtual void follow(const Snapshot&, Draft&, std::size_t) const {}
    /// Whether a field has to do with what is entered: one that has not is hidden, and not asked
    /// for.
    [[nodiscard]] virtual bool fits(const Draft&, std::size_t) const { return true; }
    [[nodiscard]] virtual Hint hint(const Snapshot&, const Draft&, std::size_t) const { return {}; }
    /// What the fields by themselves cannot tell. Called once each of them is well.
    [[nodiscard]] virtual std::optional<FieldFault> fault(const Snapshot&, const Draft&) const {
        return std::nullopt;
    }
    [[nodiscard]] virtual Result<ChangeSet> save(const Snapshot& book,
                                                 const Draft& draft) const = 0;

    /// "box Q7", "12 boxes", "New yard".
    [[nodiscard]] virtual QString title(const Snapshot& book,
                                        const std::vector<Uuid>& ids) const = 0;
    [[nodiscard]] virtual std::vector<Use> uses(const Snapshot& book,
                                                const std::vector<Uuid>& ids) const = 0;
    [[nodiscard]] virtual Result<ChangeSet> remove(const Snapshot& book,
                                                   const std::vector<Uuid>& ids) const = 0;
    /// The thing an edit brought, to be shown next.
    [[nodiscard]] virtual std::optional<Uuid> broughtBy(const ChangeSet& changes) const = 0;
    /// What an edit brought, to name it by: "yard Mill", "box Q1 ... Q12".
    [[nodiscard]] virtual QString nameOfBrought(const ChangeSet& changes) const = 0;

    /// Its season can be told in order, read only.
    [[nodiscard]] virtual bool hasStory() const { return false; }
    [[nodiscard]] virtual Story story(const Outlook&, const Uuid&) const { return {}; }

    [[nodiscard]] virtual bool canRetire() const { return false; }
    [[nodiscard]] virtual Result<ChangeSet> retire(const Snapshot&, const std::vector<Uuid>&,
                                                   Day) const {
        return Error{"cannot be retired"};
    }
};

/// All kinds, in the order of the page.
[[nodiscard]] std::vector<std::unique_ptr<SetupKind>> allSetupKinds();

std::unique_ptr<SetupKind> yardKind();
std::unique_ptr<SetupKind> boxKind();
std::unique_ptr<SetupKind> builderKind();
std::unique_ptr<SetupKind> diaryKind();
std::unique_ptr<SetupKind> queenKind();
std::unique_ptr<SetupKind> caughtKind();
std::unique_ptr<SetupKind> methodKind();
std::unique_ptr<SetupKind> dronesKind();
std::unique_ptr<SetupKind> yardNoteKind();
std::unique_ptr<SetupKind> dayOffKind();
std::unique_ptr<SetupKind> seasonKind();

}  // namespace tenthday
