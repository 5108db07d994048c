#include "evening/entry_typed.h"

#include <QLocale>

#include "screen_text/evening_text.h"
#include "screen_text/paste_text.h"

namespace tenthday {
namespace {

constexpr int kHours = 24;

bool isWord(const QString& typed, const QString& word) {
    return typed.compare(word.simplified(), Qt::CaseInsensitive) == 0;
}

QString tokenText(std::string_view token) {
    return QString::fromLatin1(token.data(), static_cast<qsizetype>(token.size()));
}

/// The page's keys for looks, in the order of NucLook; none for a queen that is gone: there it is
/// X, which in all other cells that are pasted means yes.
constexpr auto kLookKeys = "ELSVN";
constexpr std::size_t kLookKeyCount = 5;

std::optional<NucLook> lookTyped(const QString& typed) {
    for (std::size_t i = 0; i < kTokenCount<NucLook>; ++i) {
        const auto look = static_cast<NucLook>(i);
        if (isWord(typed, evening_text::look(look)) || isWord(typed, tokenText(token(look))) ||
            (i < kLookKeyCount && isWord(typed, QString(QLatin1Char(kLookKeys[i])))))
            return look;
    }
    return std::nullopt;
}

QStringList looks() {
    QStringList words;
    for (std::size_t i = 0; i < kTokenCount<NucLook>; ++i)
        words += evening_text::look(static_cast<NucLook>(i));
    return words;
}

std::optional<std::int32_t> numberTyped(const QString& typed) {
    bool isWhole = false;
    int number = typed.toInt(&isWhole);
    if (!isWhole) number = QLocale().toInt(typed, &isWhole);
    return isWhole ? std::optional(number) : std::nullopt;
}

/// A cause in words is kept as its token.
std::string noteFrom(const QString& typed, const EveningInput& input) {
    if (input.look == NucLook::Gone)
        for (std::size_t i = 0; i < kTokenCount<LossCause>; ++i)
            if (isWord(typed, evening_text::cause(static_cast<LossCause>(i))))
                return std::string(token(static_cast<LossCause>(i)));
    return typed.toStdString();
}

bool isSame(const EveningInput& a, const EveningInput& b) {
    return a.day == b.day && a.hour == b.hour && a.count == b.count && a.look == b.look &&
           a.note == b.note && a.stays == b.stays;
}

/// One line on its way into one row.
class Reading {
public:
    Reading(const EveningRow& row, const PastedLine& line, Day day, const std::string& queenNumbers)
        : row_(row), line_(line), day_(day), isHeld_(row.isFilled()) {
        if (isHeld_)
            input_ = inputOf(row);
        else
            input_.day = day;
        input_.queenNumbers = queenNumbers;
    }

    EntryTyped read() {
        if (line_.has("entered")) readEntered();
        if (line_.has("hour")) readHour();
        if (line_.has("note")) readNote();
        if (!trouble_.isEmpty()) return {EntryTyped::Says::CannotBeRead, trouble_, {}};
        const bool wasHeld = row_.isFilled();
        if (!isHeld_ && !wasHeld) return {};
        if (!isHeld_) return {EntryTyped::Says::Something, {}, std::nullopt};
        if (wasHeld && isSame(input_, inputOf(row_))) return {};
        return {EntryTyped::Says::Something, {}, input_};
    }

private:
    void refuse(const QString& why) {
        if (trouble_.isEmpty()) trouble_ = why;
    }

    void readEntered() {
        const auto typed = line_["entered"];
        if (isWord(typed, evening_text::seen(row_, day_))) return;
        isHeld_ = !typed.isEmpty();
        if (!isHeld_) return;
        switch (row_.entry) {
            case EveningEntry::Count:
                return readCount(typed);
            case EveningEntry::Look:
                return readLook(typed);
            case EveningEntry::Caught:
                return readCatch(typed);
            case EveningEntry::Placed:
                return readYes(typed, evening_text::wentIn());
            case EveningEntry::Tick:
                return readYes(typed, evening_text::done());
            case EveningEntry::None:
                break;
        }
    }
    void readCount(const QString& typed) {
        const auto count = numberTyped(typed);
        if (!count) return refuse(evening_text::badCount());
        input_.count = *count;
    }
    void readLook(const QString& typed) {
        const auto look = lookTyped(typed);
        if (!look) return refuse(paste_text::notKnown(typed, looks()));
        if (input_.look != look) input_.note.clear();  // the cause of another look
        input_.look = look;
    }
    void readCatch(const QString& typed) {
        const bool stays =
            isWord(typed, evening_text::staysForWinter()) || isWord(typed, QStringLiteral("W"));
        if (!stays && tickTyped(typed, {evening_text::caught()}) != TickTyped::Yes)
            return refuse(paste_text::notKnown(
                typed, {evening_text::caught(), evening_text::staysForWinter()}));
        input_.stays = stays;
    }
    void readYes(const QString& typed, const QString& word) {
        const auto answer = tickTyped(typed, {word});
        if (answer == TickTyped::Other) refuse(paste_text::notKnown(typed, {word}));
        isHeld_ = answer == TickTyped::Yes;
    }

    [[nodiscard]] bool keepsNotes() const {
        return row_.entry != EveningEntry::Placed && row_.entry != EveningEntry::Tick;
    }
    void readHour() {
        const auto typed = line_["hour"];
        if (!isHeld_ || row_.entry == EveningEntry::Tick) {
            if (!typed.isEmpty()) refuse(evening_text::noHourHere());
            return;
        }
        const auto hour = numberTyped(typed);
        if (!typed.isEmpty() && (!hour || *hour < 0 || *hour >= kHours))
            return refuse(evening_text::badHour());
        input_.hour = typed.isEmpty() ? std::nullopt : std::optional(Hour{*hour});
    }
    void readNote() {
        const auto typed = line_["note"];
        if (!isHeld_ || !keepsNotes() || input_.stays) {
            if (!typed.isEmpty()) refuse(evening_text::noNoteHere());
            return;
        }
        const bool asShown =
            row_.seen && isWord(typed, evening_text::note(row_)) && input_.look == row_.look();
        if (!asShown) input_.note = noteFrom(typed, input_);
    }

    const EveningRow& row_;
    const PastedLine& line_;
    Day day_;
    bool isHeld_;  ///< the row is to hold something
    EveningInput input_;
    QString trouble_;
};

}  // namespace

EntryTyped entryTyped(const EveningRow& row, const PastedLine& line, Day day,
                      const std::string& queenNumbers) {
    return Reading(row, line, day, queenNumbers).read();
}

QString lookInWords(const QString& typed) {
    const auto look = lookTyped(typed);
    return look ? evening_text::look(*look) : typed;
}

}  // namespace tenthday
