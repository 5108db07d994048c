#include "setup/diary_hints.h"

#include <algorithm>

#include "occupancy/wild_clock.h"
#include "records/donor_gifts.h"
#include "screen_text/upkeep_text.h"
#include "setup/row_kind.h"

namespace tenthday {

using namespace diary_field;

namespace {

using diary_text::What;

/// What follows from a draft, live.
class Follows {
public:
    Follows(const Snapshot& book, const Draft& draft)
        : book_(book),
          values_(draft.values),
          what_(diaryWhat(draft)),
          day_(toDay(draft.values[On])) {
        if (const auto id = toId<Builder>(draft.values[Of])) builder_ = book.find(*id);
    }

    [[nodiscard]] Hint under(std::size_t field) const {
        switch (field) {
            case Of:
                return ofBuilder();
            case Done:
                return {what_ ? diary_text::caution(*what_) : QString()};
            case On:
                return ofDay();
            case At:
                return {diary_text::hourHint()};
            case OpenBrood:
                return what_ == What::BroodIn && isTicked(values_[OpenBrood]) ? Hint{} : ofBrood();
            case Age:
                return ofBrood();
            case Donors:
                return ofDonors();
            case MovedAway:
                return isTicked(values_[MovedAway]) ? Hint{} : Hint{diary_text::fliesBack()};
            case Bees:
                return {wanted()};
            default:
                return {};
        }
    }

private:
    [[nodiscard]] Hint ofBuilder() const {
        if (book_.all<Builder>().empty()) return {diary_text::builderNeeded()};
        if (!builder_ || !day_) return {};
        const bool isThere = builder_->from <= *day_ && *day_ <= builder_->until.value_or(kLastDay);
        return isThere ? Hint{} : Hint{diary_text::notThere(*builder_), {}, true};
    }
    [[nodiscard]] Hint ofDay() const {
        if (!builder_ || !day_ || !what_) return {};
        if (what_ == What::MadeUp || what_ == What::BeesIn) {
            const auto words = diary_text::serves(servedBy(book_, builder_->id, *day_));
            return {what_ == What::BeesIn && !wanted().isEmpty() ? words + u' ' + wanted() : words};
        }
        if (what_ == What::Look) return {looks()};
        if (what_ == What::Feed) {
            const auto serves = static_cast<int>(book_.facts()[Fact::FeedServesD]);
            return {diary_text::feedServes(*day_ + Days{serves})};
        }
        return {};
    }
    [[nodiscard]] QString looks() const {
        QStringList lines;
        for (const auto& outlook : builderOutlooks(book_, {}))
            if (outlook.builder->id == builder_->id)
                for (const auto& clock : outlook.clocks)
                    if (!clock.secondTicked && dayOf(clock.start) <= *day_ &&
                        *day_ <= dayOf(clock.runsOut))
                        lines += diary_text::looksOf(clock);
        return lines.isEmpty() ? diary_text::noLookWanted() : lines.join(u'\n');
    }
    [[nodiscard]] QString wanted() const {
        if (!builder_ || !day_) return {};
        const auto served = servedBy(book_, builder_->id, *day_);
        return served.cells > Cells{0} ? diary_text::workers(served.cells, book_.facts())
                                       : QString();
    }
    /// What is made up is queenless from then on.
    [[nodiscard]] Hint ofBrood() const {
        if (!isTicked(values_[OpenBrood])) return {diary_text::noWildCells()};
        if (!builder_ || !day_) return {};
        if (what_ != What::MadeUp && !isQueenless(book_, *builder_))
            return {diary_text::queenIsThere()};
        const auto age = what_ == What::BroodIn && values_[Age].isValid()
                             ? static_cast<BroodAge>(values_[Age].toInt())
                             : BroodAge::All;
        const auto& facts = book_.facts();
        const auto start = momentOf(*day_, diaryHour(values_[At]));
        return {diary_text::wildQueens(wildClockFrom({}, start, facts, age)),
                diary_text::whyWildQueens(facts, age)};
    }
    [[nodiscard]] Hint ofDonors() const {
        QStringList held;
        if (day_)
            for (const auto& hold : donorHolds(book_, toStdText(values_[Donors]), *day_))
                held += diary_text::held(hold);
        if (!held.isEmpty()) return {held.join(u'\n'), {}, true};
        return {QStringList{diary_text::donorsHint(), gifts(true)}.join(u'\n').trimmed(),
                gifts(false) + u'\n' + upkeep_text::whyMayGive(book_.facts())};
    }
    /// What donors gave lately and may still give: those that gave least first. Of all, or of those
    /// that are entered; the first three where none is.
    [[nodiscard]] QString gifts(bool entered) const {
        const auto named = donorsIn(toStdText(values_[Donors]));
        QStringList lines;
        for (const auto& donor : donorGifts(book_, day_.value_or(book_.today()))) {
            const bool isNamed = std::find(named.begin(), named.end(), donor.donor) != named.end();
            if (!entered || (named.empty() ? lines.size() < 3 : isNamed))
                lines += upkeep_text::gifts(donor, book_.facts());
        }
        if (lines.isEmpty()) return {};
        const auto text = lines.join(u'\n');
        return named.empty() ? upkeep_text::donorsHead() + QStringLiteral(":\n") + text : text;
    }

    const Snapshot& book_;
    const FieldValues& values_;
    std::optional<What> what_;
    std::optional<Day> day_;
    Ptr<Builder> builder_;
};

}  // namespace

QString diaryTick() { return QStringLiteral("yes"); }

bool isTicked(const QVariant& value) { return !value.toStringList().isEmpty(); }

std::optional<Hour> diaryHour(const QVariant& value) {
    return value.typeId() == QMetaType::Int ? std::optional(Hour{value.toInt()}) : std::nullopt;
}

std::optional<What> diaryWhat(const Draft& draft) {
    const auto& value = draft.values[Done];
    return value.isValid() ? std::optional(static_cast<What>(value.toInt())) : std::nullopt;
}

bool diaryFits(const Draft& draft, std::size_t field) {
    if (field <= At) return true;
    const auto what = diaryWhat(draft);
    if (!what) return false;
    const bool isBrood = *what == What::BroodIn;
    switch (field) {
        case OpenBrood:
            return *what == What::MadeUp || isBrood;
        case Age:
            return isBrood && isTicked(draft.values[OpenBrood]);
        case Donors:
            return *what == What::MadeUp || isBrood || *what == What::BeesIn;
        case Note:
            return *what != What::MadeUp;
        default:
            return *what == What::MadeUp;
    }
}

Hint diaryHint(const Snapshot& book, const Draft& draft, std::size_t field) {
    return Follows(book, draft).under(field);
}

}  // namespace tenthday
