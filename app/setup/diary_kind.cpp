#include <algorithm>

#include "screen_text/diary_text.h"
#include "setup/diary_hints.h"
#include "setup/row_kind.h"

namespace tenthday {
namespace {

using namespace diary_field;
using diary_text::What;
using setup_text::Name;

QVariant ticked(bool is) { return is ? QStringList{diaryTick()} : QStringList{}; }
QVariant fromHour(std::optional<Hour> hour) {
    return hour ? QVariant(int{hour->value}) : QVariant();
}

/// One line of the diary: a make-up or a note.
struct Entry {
    Ptr<MakeUp> makeUp;
    Ptr<BuilderNote> note;

    [[nodiscard]] Uuid id() const { return makeUp ? makeUp->id.uuid : note->id.uuid; }
    [[nodiscard]] Id<Builder> builder() const { return makeUp ? makeUp->builder : note->builder; }
    [[nodiscard]] Day day() const { return makeUp ? makeUp->day : note->day; }
    [[nodiscard]] std::optional<Hour> hour() const { return makeUp ? makeUp->hour : note->hour; }
    [[nodiscard]] What what() const {
        return makeUp ? What::MadeUp : diary_text::whatOf(note->kind);
    }
    explicit operator bool() const { return makeUp || note; }
};

Entry entryOf(const Snapshot& book, const Uuid& id) {
    return {book.find(Id<MakeUp>{id}), book.find(Id<BuilderNote>{id})};
}

QString labelOf(const Snapshot& book, Id<Builder> id) {
    const auto builder = book.find(id);
    return builder ? QString::fromStdString(builder->label) : QString();
}

QString nameOf(const Snapshot& book, const Entry& entry) {
    return diary_text::entry(labelOf(book, entry.builder()), entry.what(), entry.day());
}

/// Of all builders together, the newest first.
std::vector<Entry> entries(const Snapshot& book) {
    std::vector<Entry> all;
    for (const auto& row : book.all<MakeUp>()) all.push_back({row, nullptr});
    for (const auto& row : book.all<BuilderNote>()) all.push_back({nullptr, row});
    std::stable_sort(all.begin(), all.end(), [](const Entry& a, const Entry& b) {
        return momentOf(a.day(), a.hour()) > momentOf(b.day(), b.hour());
    });
    return all;
}

/// A make-up and a note are of two tables: one never becomes the other.
std::vector<FieldChoice> whats(const Entry& entry) {
    std::vector<FieldChoice> choices;
    for (int i = 0; i < diary_text::kWhats; ++i) {
        const auto what = static_cast<What>(i);
        if (!entry || (what == What::MadeUp) == (entry.what() == What::MadeUp))
            choices.push_back({diary_text::what(what), i});
    }
    return choices;
}

std::vector<FieldChoice> ages() {
    std::vector<FieldChoice> choices;
    for (std::size_t i = 0; i < kTokenCount<BroodAge>; ++i)
        choices.push_back({diary_text::age(static_cast<BroodAge>(i)), static_cast<int>(i)});
    return choices;
}

BuilderNoteKind noteKind(What what) {
    switch (what) {
        case What::BroodIn:
            return BuilderNoteKind::BroodIn;
        case What::BeesIn:
            return BuilderNoteKind::BeesIn;
        case What::Feed:
            return BuilderNoteKind::Feed;
        case What::Pollen:
            return BuilderNoteKind::Pollen;
        default:
            return BuilderNoteKind::Look;
    }
}

class DiaryKind : public SetupKind {
public:
    [[nodiscard]] setup_text::Kind kind() const override { return setup_text::Kind::Diary; }
    [[nodiscard]] QStringList columns() const override {
        return {setup_text::name(Name::Day), diary_text::hour(),   diary_text::builder(),
                diary_text::whatHead(),      diary_text::donors(), diary_text::details(),
                setup_text::name(Name::Note)};
    }
    [[nodiscard]] std::vector<ListRow> rows(const Snapshot& book) const override {
        std::vector<ListRow> rows;
        for (const auto& entry : entries(book)) {
            const auto& [makeUp, note] = entry;
            const auto hour = entry.hour();
            rows.push_back(
                {entry.id(),
                 {setup_text::day(entry.day()), hour ? setup_text::count(hour->value) : QString(),
                  labelOf(book, entry.builder()), diary_text::what(entry.what()),
                  QString::fromStdString(makeUp ? makeUp->donors : note->donor),
                  makeUp ? diary_text::detail(*makeUp) : diary_text::detail(*note),
                  note ? QString::fromStdString(note->note) : QString()}});
        }
        return rows;
    }
    [[nodiscard]] std::vector<Field> fields(const Snapshot& book,
                                            const std::vector<Uuid>& ids) const override {
        std::vector<Field> all(kCount);
        all[Of] = {FieldKind::Choice, diary_text::builder(), true, choicesOf<Builder>(book)};
        all[Done] = {FieldKind::Choice, diary_text::whatHead(), true, whats(find(book, ids))};
        all[On] = {FieldKind::Date, setup_text::name(Name::Day), true};
        all[At] = {FieldKind::Number, diary_text::hour(), false, {}, 0, 23, diary_text::hourUnit()};
        all[OpenBrood] = {FieldKind::Checks,
                          diary_text::openBrood(),
                          false,
                          {{diary_text::openBroodTick(), diaryTick()}}};
        all[Age] = {FieldKind::Choice, diary_text::broodAge(), true, ages()};
        all[Donors] = {FieldKind::Text, diary_text::donors(), false, choicesOf<Yard>(book)};
        all[MovedAway] = {FieldKind::Checks,
                          diary_text::place(),
                          false,
                          {{diary_text::movedAwayTick(), diaryTick()}}};
        all[Bees] = {FieldKind::Number,     diary_text::bees(), false, {}, 0, 40000,
                     diary_text::beesUnit()};
        all[BroodFrames] = {FieldKind::Number,       diary_text::broodFrames(), false, {}, 0, 40,
                            diary_text::framesUnit()};
        all[Note] = {FieldKind::Note, setup_text::name(Name::Note)};
        return all;
    }
    /// Of a new one it is not guessed what was done; brood is taken to hold eggs or larvae, so that
    /// no look is left out by forgetting a tick.
    [[nodiscard]] FieldValues values(const Snapshot& book,
                                     const std::vector<Uuid>& ids) const override {
        const auto entry = find(book, ids);
        FieldValues values(kCount);
        values[Of] = fromId(entry ? std::optional(entry.builder()) : likelyBuilder(book));
        values[Done] = entry ? QVariant(static_cast<int>(entry.what())) : QVariant();
        values[On] = fromDay(entry ? entry.day() : book.today());
        values[At] = fromHour(entry ? entry.hour() : std::nullopt);
        const auto& [makeUp, note] = entry;
        const bool isBrood = note && note->kind == BuilderNoteKind::BroodIn;
        values[OpenBrood] = ticked(makeUp ? makeUp->openBrood : !isBrood || note->openBrood);
        values[Age] = static_cast<int>(note ? note->broodAge : BroodAge::All);
        values[Donors] = makeUp ? fromText(makeUp->donors)
                         : note ? fromText(note->donor)
                                : QString();
        values[MovedAway] = ticked(makeUp && makeUp->movedAway);
        if (makeUp) values[Bees] = fromCount(makeUp->beesMl);
        if (makeUp) values[BroodFrames] = fromCount(makeUp->broodFrames);
        values[Note] = note ? fromText(note->note) : QString();
        return values;
    }
    [[nodiscard]] bool fits(const Draft& draft, std::size_t field) const override {
        return diaryFits(draft, field);
    }
    [[nodiscard]] Hint hint(const Snapshot& book, const Draft& draft,
                            std::size_t field) const override {
        return diaryHint(book, draft, field);
    }
    [[nodiscard]] Result<ChangeSet> save(const Snapshot& book, const Draft& draft) const override {
        return diaryWhat(draft) == What::MadeUp ? saveRow(book, makeUpOf(book, draft))
                                                : saveRow(book, noteOf(book, draft));
    }

    [[nodiscard]] QString title(const Snapshot& book, const std::vector<Uuid>& ids) const override {
        if (ids.empty()) return setup_text::newThing(kind());
        const auto entry = find(book, ids);
        return entry ? setup_text::thing(kind(), nameOf(book, entry)) : QString();
    }
    [[nodiscard]] std::vector<Use> uses(const Snapshot&, const std::vector<Uuid>&) const override {
        return {};  // nothing refers to a line of the diary but ticks, which go with it
    }
    [[nodiscard]] Result<ChangeSet> remove(const Snapshot& book,
                                           const std::vector<Uuid>& ids) const override {
        const auto entry = find(book, ids);
        return entry.makeUp ? deleteWhole(book, Id<MakeUp>{entry.id()})
               : entry.note ? deleteWhole(book, Id<BuilderNote>{entry.id()})
                            : Result<ChangeSet>(Error{"there is none with this id"});
    }
    [[nodiscard]] std::optional<Uuid> broughtBy(const ChangeSet& changes) const override {
        const auto entry = brought(changes);
        return entry ? std::optional(entry.id()) : std::nullopt;
    }
    [[nodiscard]] QString nameOfBrought(const ChangeSet& changes) const override {
        // The builder's label is not in the edit; what was done and when name it well enough.
        const auto entry = brought(changes);
        return entry ? diary_text::entry(entry.what(), entry.day()) : QString();
    }

    [[nodiscard]] bool hasStory() const override { return true; }
    [[nodiscard]] Story story(const Outlook& outlook, const Uuid& id) const override {
        const auto entry = entryOf(outlook.snapshot, id);
        return entry ? story_text::builder(outlook, entry.builder()) : Story{};
    }

private:
    static Entry find(const Snapshot& book, const std::vector<Uuid>& ids) {
        return ids.size() == 1 ? entryOf(book, ids.front()) : Entry{};
    }
    static Entry brought(const ChangeSet& changes) {
        for (const auto& change : changes.rows) {
            if (const auto row = change.as<MakeUp>(); row && !row->before)
                return {row->after, nullptr};
            if (const auto row = change.as<BuilderNote>(); row && !row->before)
                return {nullptr, row->after};
        }
        return {};
    }
    /// The one something was noted of last; else the only one.
    static std::optional<Id<Builder>> likelyBuilder(const Snapshot& book) {
        if (const auto all = entries(book); !all.empty()) return all.front().builder();
        return book.all<Builder>().size() == 1 ? std::optional((*book.all<Builder>().begin())->id)
                                               : std::nullopt;
    }
    static MakeUp makeUpOf(const Snapshot& book, const Draft& draft) {
        const auto& values = draft.values;
        const auto known = find(book, draft.ids).makeUp;
        MakeUp row;
        row.id = newId<MakeUp>();
        if (known) row = *known;
        row.builder = toId<Builder>(values[Of]).value_or(Id<Builder>{});
        row.day = *toDay(values[On]);
        row.hour = diaryHour(values[At]);
        row.openBrood = isTicked(values[OpenBrood]);
        row.donors = toStdText(values[Donors]);
        row.movedAway = isTicked(values[MovedAway]);
        row.beesMl = toCount<BeesMl>(values[Bees]);
        row.broodFrames = toCount<Frames>(values[BroodFrames]);
        return row;
    }
    /// What has no place in this kind of note is not kept.
    static BuilderNote noteOf(const Snapshot& book, const Draft& draft) {
        const auto& values = draft.values;
        const auto known = find(book, draft.ids).note;
        BuilderNote row;
        row.id = newId<BuilderNote>();
        if (known) row = *known;
        row.builder = toId<Builder>(values[Of]).value_or(Id<Builder>{});
        row.kind = noteKind(*diaryWhat(draft));
        row.day = *toDay(values[On]);
        row.hour = diaryHour(values[At]);
        row.openBrood = diaryFits(draft, OpenBrood) && isTicked(values[OpenBrood]);
        row.broodAge =
            diaryFits(draft, Age) ? static_cast<BroodAge>(values[Age].toInt()) : BroodAge::All;
        row.donor = diaryFits(draft, Donors) ? toStdText(values[Donors]) : std::string();
        row.note = toStdText(values[Note]);
        return row;
    }
};

}  // namespace

std::unique_ptr<SetupKind> diaryKind() { return std::make_unique<DiaryKind>(); }

}  // namespace tenthday
