/// @file desk.h  The open book: its snapshot, edits, undo, preview. What is to be seen is told by
/// `shown` alone.
///
///   verb -> ChangeSet -> apply: checked in memory -> written -> snapshot swapped -> shown()
///
/// A book with earlier seasons reads them beside, soon after it is opened, and shows once more.
/// If writing fails, memory, undo and file stay as they were.
#pragma once
#include <QObject>
#include <memory>
#include <optional>

#include "book/book_file.h"
#include "desk/seasons_ahead.h"
#include "desk/side_work.h"
#include "desk/undo_stack.h"
#include "outlook/outlook.h"

namespace tenthday {

class Desk : public QObject {
    Q_OBJECT

public:
    /// An Error is one English line that names the file and says why.
    [[nodiscard]] static Result<std::unique_ptr<Desk>> open(const QString& path,
                                                            const OpenOptions& options = {},
                                                            const ReadRange& range = {});

    [[nodiscard]] const QString& path() const { return file_->path(); }
    [[nodiscard]] bool isReadOnly() const { return file_->isReadOnly(); }

    /// What is saved.
    [[nodiscard]] const Snapshot& snapshot() const { return saved_->snapshot; }
    /// The season as saved. Never null.
    [[nodiscard]] const OutlookPtr& saved() const { return saved_; }
    /// What is to be seen: the preview while there is one, else what is saved. Never null.
    [[nodiscard]] const OutlookPtr& outlook() const { return preview_ ? preview_ : saved_; }
    [[nodiscard]] bool isPreviewing() const { return preview_ != nullptr; }

    /// Saves an edit; ends a preview. An edit that changes nothing is fine and leaves no trace.
    /// What of it belongs to other seasons is kept and not shown.
    [[nodiscard]] Result<void> apply(const ChangeSet& changes);

    [[nodiscard]] bool canUndo() const { return undo_.canUndo(); }
    [[nodiscard]] bool canRedo() const { return undo_.canRedo(); }
    [[nodiscard]] std::optional<EditName> undoName() const { return undo_.undoName(); }
    [[nodiscard]] std::optional<EditName> redoName() const { return undo_.redoName(); }
    /// The season that was shown when the edit was made, where it is not shown now and is still
    /// there; none otherwise.
    [[nodiscard]] Ptr<Season> undoSeason() const { return elsewhere(undo_.undoSeason()); }
    [[nodiscard]] Ptr<Season> redoSeason() const { return elsewhere(undo_.redoSeason()); }
    /// Each is a new edit in the file. Fine, and without effect, when there is nothing to do.
    [[nodiscard]] Result<void> undo();
    [[nodiscard]] Result<void> redo();

    /// Shows what an edit of what is saved would lead to, without saving; nullopt drops it.
    /// Each preview replaces the last.
    [[nodiscard]] Result<void> preview(const std::optional<ChangeSet>& changes);
    /// One of these edits is likely to be previewed next, the first sooner than the others: their
    /// seasons are derived beside, so that they are there by then. None: nothing is any more.
    void expect(const std::vector<ChangeSet>& edits) { seasons_.expect(saved_, edits); }
    /// The season of an expected edit; null where it is not there yet.
    [[nodiscard]] OutlookPtr expected(const ChangeSet& edit) const {
        return seasons_.find(saved_, edit);
    }
    /// So many previews were there when they were asked for. For those who measure or test.
    [[nodiscard]] int previewsWereThere() const { return seasons_.wereThere(); }

    /// Reads another season. What was done before can still be undone, though maybe not seen.
    [[nodiscard]] Result<void> showSeason(Id<Season> season);
    /// Asks the clock; tells when the day has changed.
    void refreshToday();

    [[nodiscard]] BookFile& file() { return *file_; }

Q_SIGNALS:
    /// After every successful change of what is to be seen, exactly once.
    void shown(const tenthday::OutlookPtr& outlook, const tenthday::Changes& changes);

    /// One of the expected edits has its season.
    void expectedIsThere();

private:
    Desk(std::unique_ptr<BookFile> file, const Clock& clock, Snapshot snapshot);
    /// Reads earlier seasons beside, for the rates of losses; what they say comes in later.
    void readEarlierSeasons();
    void forgetEarlier();
    void learn(const std::shared_ptr<const EarlierOutcomes>& earlier);
    [[nodiscard]] Ptr<Season> elsewhere(Id<Season> season) const {
        return season == snapshot().seasonId() ? nullptr : snapshot().find(season);
    }
    [[nodiscard]] Result<void> save(const ChangeSet& changes);
    [[nodiscard]] Error refused(Error error);
    void show(Cause cause, const ChangeSet* changes);

    std::unique_ptr<BookFile> file_;
    Clock clock_;
    SeasonsAhead seasons_;
    OutlookPtr saved_;
    OutlookPtr preview_;
    UndoStack undo_;
    SideWork reading_{this};
};

}  // namespace tenthday

Q_DECLARE_METATYPE(tenthday::OutlookPtr)
Q_DECLARE_METATYPE(tenthday::Changes)
