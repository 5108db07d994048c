#include "desk/desk.h"

#include <QCoreApplication>
#include <QPointer>
#include <algorithm>

#include "book/earlier_reader.h"
#include "records/hold_guard.h"
#include "records/season_reach.h"

namespace tenthday {
namespace {

bool touchesSeasons(const ChangeSet& changes) {
    return std::any_of(changes.rows.begin(), changes.rows.end(),
                       [](const RowChange& row) { return row.as<Season>().has_value(); });
}

/// Which seasons are earlier ones, or how what was seen in them is reckoned.
bool touchesEarlier(const ChangeSet& changes) {
    return touchesSeasons(changes) ||
           std::any_of(changes.rows.begin(), changes.rows.end(),
                       [](const RowChange& row) { return row.as<FactOverride>().has_value(); });
}

ReadRange rangeOf(Id<Season> season, bool allSeasons) {
    return {season.isNone() ? std::nullopt : std::optional(season), allSeasons};
}

/// A step taken back or brought back, on the rows as they are now: those of other seasons, which
/// are not read with the one shown, are looked for in all.
/// @param fresh  the step's edit for a snapshot
template <class Fresh>
Result<ChangeSet> stepOn(const Snapshot& shown, BookFile& file, Fresh fresh) {
    auto step = fresh(shown);
    if (step) return step;
    const auto all = file.read(rangeOf(shown.seasonId(), true));
    return all ? fresh(all.value()) : step;
}

}  // namespace

Desk::Desk(std::unique_ptr<BookFile> file, const Clock& clock, Snapshot snapshot)
    : file_(std::move(file)),
      clock_(clock),
      seasons_([desk = QPointer(this)] {
          QMetaObject::invokeMethod(qApp, [desk] {
              if (desk) Q_EMIT desk->expectedIsThere();
          });
      }),
      saved_(seasons_.of(snapshot)) {
    readEarlierSeasons();
}

/// With a connection of its own: one belongs to its thread.
void Desk::readEarlierSeasons() {
    reading_.cancel();
    if (earlierSeasons(snapshot()).empty()) {
        forgetEarlier();
        return;
    }
    OpenOptions options;
    options.access = Access::ReadOnly;
    options.clock = clock_;
    const auto find = [path = path(), options, shown = snapshot()] {
        auto book = BookFile::open(path, options);
        if (!book) return std::shared_ptr<const EarlierOutcomes>();
        auto earlier = readEarlier(*book.value(), shown);
        return earlier ? std::move(earlier).value() : nullptr;
    };
    reading_.ask(find, [this](const auto& earlier) {
        if (earlier) learn(earlier);
    });
}

/// Rates that were learned from a season which is no earlier one now.
void Desk::forgetEarlier() {
    if (!snapshot().earlier()) return;
    Snapshot alone = snapshot();
    alone.setEarlier(nullptr);
    saved_ = seasons_.of(alone);
}

void Desk::learn(const std::shared_ptr<const EarlierOutcomes>& earlier) {
    const auto with = [&](Snapshot snapshot) {
        snapshot.setEarlier(earlier);
        return seasons_.of(snapshot);
    };
    saved_ = with(saved_->snapshot);
    preview_.reset();  // what is shown now passes for what is saved
    show(Cause::Learnt, nullptr);
}

Result<std::unique_ptr<Desk>> Desk::open(const QString& path, const OpenOptions& options,
                                         const ReadRange& range) {
    auto file = BookFile::open(path, options);
    if (!file) return file.error();
    auto snapshot = file.value()->read(range);
    if (!snapshot) return snapshot.error();
    return std::unique_ptr<Desk>(
        new Desk(std::move(file).value(), options.clock, std::move(snapshot).value()));
}

void Desk::show(Cause cause, const ChangeSet* changes) {
    Changes what{cause, {}};
    if (changes == nullptr) what.tables.set();
    if (changes != nullptr)
        for (const auto& row : changes->rows) what.tables.set(row.table());
    if (changes != nullptr && touchesSeasons(*changes)) what.tables.set();  // read anew
    const auto outlook = this->outlook();  // a slot may change what is to be seen
    Q_EMIT shown(outlook, what);
}

Error Desk::refused(Error error) {
    if (preview_) {
        preview_.reset();
        show(Cause::PreviewDropped, nullptr);
    }
    return error;
}

/// What reaches beyond the season shown is checked against all seasons and written whole; shown is
/// what of it belongs to the season.
Result<void> Desk::save(const ChangeSet& changes) {
    const bool isWide = reachesBeyond(snapshot(), changes);
    const auto ground =
        isWide ? file_->read(rangeOf(snapshot().seasonId(), true)) : Result<Snapshot>(snapshot());
    if (!ground) return ground.error();
    auto next = applied(ground.value(), changes);
    if (!next) return next.error();
    if (auto written = file_->write(changes); !written) return written;
    // Other days of the season bring other batches.
    if (isWide || touchesSeasons(changes)) {
        const auto shown = snapshot().seasonId();
        const bool isThere = next.value().find(shown) != nullptr;
        auto read = file_->read(rangeOf(isThere ? shown : Id<Season>{}, false));
        if (read) next = std::move(read);  // else what is saved is shown as it was edited
        next.value().setEarlier(snapshot().earlier());
    }
    saved_ = seasons_.of(next.value());
    preview_.reset();
    if (isWide || touchesEarlier(changes)) readEarlierSeasons();
    return {};
}

Result<void> Desk::apply(const ChangeSet& changes) {
    if (changes.isEmpty()) {
        if (preview_) return preview(std::nullopt);
        return {};
    }
    // What comes from a list is told by findings: it may have been done elsewhere.
    const bool isImport = changes.verb == Verb::Import;
    if (const auto broken = isImport ? std::nullopt : brokenHold(snapshot(), changes))
        return refused(Error{englishText(*broken)});
    const auto season = snapshot().seasonId();
    if (auto done = save(changes); !done) return refused(done.error());
    undo_.push(changes, season);
    show(Cause::Edited, &changes);
    return {};
}

Result<void> Desk::undo() {
    if (!canUndo()) return {};
    const auto back =
        stepOn(snapshot(), *file_, [this](const auto& rows) { return undo_.toUndo(rows); });
    if (!back) return refused(back.error());
    if (auto done = save(back.value()); !done) return refused(done.error());
    undo_.undone(back.value());
    show(Cause::Undone, &back.value());
    return {};
}

Result<void> Desk::redo() {
    if (!canRedo()) return {};
    const auto again =
        stepOn(snapshot(), *file_, [this](const auto& rows) { return undo_.toRedo(rows); });
    if (!again) return refused(again.error());
    if (auto done = save(again.value()); !done) return refused(done.error());
    undo_.redone(again.value());
    show(Cause::Redone, &again.value());
    return {};
}

Result<void> Desk::preview(const std::optional<ChangeSet>& changes) {
    if (!changes) {
        if (!preview_) return {};
        preview_.reset();
        seasons_.goOnFrom(saved_);
        show(Cause::PreviewDropped, nullptr);
        return {};
    }
    auto next = seasons_.after(saved_, *changes);
    if (!next) return refused(next.error());
    preview_ = std::move(next).value();
    show(Cause::Previewed, &*changes);
    return {};
}

Result<void> Desk::showSeason(Id<Season> season) {
    auto read = file_->read({season, false});
    if (!read) return refused(read.error());
    preview_.reset();
    saved_ = seasons_.of(read.value());
    readEarlierSeasons();
    show(Cause::Opened, nullptr);
    return {};
}

void Desk::refreshToday() {
    const auto day = clock_.today(snapshot().book());
    if (day == snapshot().today()) return;
    Snapshot next = snapshot();
    next.setToday(day);
    preview_.reset();
    saved_ = seasons_.of(next);
    show(Cause::NewDay, nullptr);
}

}  // namespace tenthday
