#include "orders/orders_paste.h"

#include <QLocale>
#include <QRegularExpression>
#include <algorithm>

#include "orders/order_asks.h"
#include "paste/table_lines.h"
#include "records/order_days.h"
#include "screen_text/order_page_text.h"
#include "screen_text/order_text.h"
#include "screen_text/paste_text.h"
#include "screen_text/window_text.h"
#include "setup/day_edit.h"

namespace tenthday {
namespace {

std::string isoDay(Day day) { return toText(day); }

bool isDay(const QString& typed) { return dayFromTyped(typed).isValid(); }

std::optional<OrderKind> kindOf(const QString& typed) {
    const auto word = typed.simplified();
    for (std::size_t i = 0; i < kTokenCount<OrderKind>; ++i) {
        const auto kind = static_cast<OrderKind>(i);
        const auto name = token(kind);
        const auto asToken = QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size()));
        const auto asWords = order_text::kind(kind);
        if (word.compare(asToken, Qt::CaseInsensitive) == 0 ||
            word.startsWith(asWords, Qt::CaseInsensitive) ||
            (word.size() > 3 && asWords.startsWith(word, Qt::CaseInsensitive)))
            return kind;
    }
    return std::nullopt;
}

QString kindToken(const QString& typed) {
    const auto kind = kindOf(typed);
    if (!kind) return typed;
    const auto name = token(*kind);
    return QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size()));
}

bool isWholeNumber(const QString& typed) {
    static const QRegularExpression digits(QStringLiteral("^\\d{1,4}$"));
    return digits.match(typed).hasMatch();
}

/// "90 %", "90", "92,5": a plain number. One that says more than is kept stays as it is: to round
/// it is not for us.
QString percentToken(const QString& typed) {
    auto text = typed;
    text.remove(u'%');
    bool good = false;
    const double value = QLocale().toDouble(text.trimmed(), &good);
    return good && areTenths(value) ? QString::number(value, 'f', 1) : text.trimmed();
}

QString yesToken(const QString& typed) {
    const auto word = typed.simplified();
    if (word.compare(order_page_text::whole(), Qt::CaseInsensitive) == 0)
        return QStringLiteral("no");
    if (word.compare(order_page_text::inParts(), Qt::CaseInsensitive) == 0)
        return QStringLiteral("yes");
    return word.toLower();
}

QString lineToken(const QString& typed) {
    return typed.compare(order_page_text::any(), Qt::CaseInsensitive) == 0 ? QString() : typed;
}

/// The token that is typed, or that a word stands for; what is neither stays as it is.
template <class Enum>
QString tokenFor(const QString& typed, QString (*words)(Enum)) {
    const auto word = typed.simplified();
    for (std::size_t i = 0; i < kTokenCount<Enum>; ++i) {
        const auto value = static_cast<Enum>(i);
        const auto name = token(value);
        const auto text = QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size()));
        if (word.compare(text, Qt::CaseInsensitive) == 0 ||
            word.compare(words(value), Qt::CaseInsensitive) == 0)
            return text;
    }
    return typed;
}

QString standingToken(const QString& typed) {
    return tokenFor<OrderStanding>(typed, order_text::standing);
}
QString purposeToken(const QString& typed) {
    return tokenFor<OrderPurpose>(typed, order_page_text::purposeChoice);
}

/// "Mon, Tue", "Monday Tuesday", "1 2" or "12": the digits of ISO weekdays, rising. "Any day" is
/// none of them.
QString shipDaysToken(const QString& typed) {
    if (typed.compare(order_page_text::weekdays({}), Qt::CaseInsensitive) == 0) return {};
    static const QRegularExpression kParts(QStringLiteral("[\\s,;/+.]+"));
    QString days;
    for (const auto& part : typed.split(kParts, Qt::SkipEmptyParts)) {
        static const QRegularExpression kDigits(QStringLiteral("^[1-7]+$"));
        if (kDigits.match(part).hasMatch()) {
            days += part;
            continue;
        }
        int found = 0;
        for (int day = 1; day <= 7 && found == 0; ++day)
            if (part.startsWith(order_page_text::weekday(day).remove(u'.'), Qt::CaseInsensitive))
                found = day;
        if (found == 0) return typed;
        days += QString::number(found);
    }
    std::sort(days.begin(), days.end());
    days.erase(std::unique(days.begin(), days.end()), days.end());
    return days;
}

template <class Enum>
QStringList wordsOf(QString (*words)(Enum)) {
    QStringList all;
    for (std::size_t i = 0; i < kTokenCount<Enum>; ++i) all += words(static_cast<Enum>(i));
    return all;
}

/// The words for what was typed; what is not known stands as it was typed.
template <class Enum>
QString inWords(const QString& token, QString (*words)(Enum)) {
    const auto value = fromToken<Enum>(token.toStdString());
    return value ? words(*value) : token;
}

QString kindInWords(const QString& typed) {
    const auto kind = kindOf(typed);
    return kind ? order_text::kind(*kind) : typed;
}
QString kindWrong(const QString& typed) {
    if (typed.isEmpty()) return paste_text::isMissing();
    return kindOf(typed) ? QString()
                         : paste_text::notKnown(typed, wordsOf<OrderKind>(order_text::kind));
}
QString countWrong(const QString& typed) {
    if (typed.isEmpty()) return paste_text::isMissing();
    bool isNumber = false;  // whether it is one that can be is for import to say
    return typed.toInt(&isNumber) > 0 && isNumber ? QString() : paste_text::notANumber(typed);
}
QString dayWrong(const QString& typed) {
    return typed.isEmpty() || isDay(typed) ? QString() : paste_text::notADay(typed);
}
QString dueWrong(const QString& typed) {
    return typed.isEmpty() ? paste_text::isMissing() : dayWrong(typed);
}
QString percentWrong(const QString& typed) {
    bool good = typed.isEmpty();
    if (!good) percentToken(typed).toDouble(&good);
    if (!good) QLocale().toDouble(QString(typed).remove(u'%').trimmed(), &good);
    return good ? QString() : paste_text::notANumber(typed);
}
QString partInWords(const QString& typed) {
    const auto token = yesToken(typed);
    return token == QStringLiteral("yes")  ? order_page_text::inParts()
           : token == QStringLiteral("no") ? order_page_text::whole()
                                           : typed;
}
/// @param words  what was typed, in the screen's words
QString notAmong(const QStringList& known, const QString& typed, const QString& words) {
    return typed.isEmpty() || known.contains(words) ? QString()
                                                    : paste_text::notKnown(typed, known);
}
QString partWrong(const QString& typed) {
    return notAmong({order_page_text::inParts(), order_page_text::whole()}, typed,
                    partInWords(typed));
}
QString standingInWords(const QString& typed) {
    return inWords<OrderStanding>(standingToken(typed), order_text::standing);
}
QString standingWrong(const QString& typed) {
    return notAmong(wordsOf<OrderStanding>(order_text::standing), typed, standingInWords(typed));
}
QString purposeInWords(const QString& typed) {
    return inWords<OrderPurpose>(purposeToken(typed), order_page_text::purposeChoice);
}
QString purposeWrong(const QString& typed) {
    return notAmong(wordsOf<OrderPurpose>(order_page_text::purposeChoice), typed,
                    purposeInWords(typed));
}
bool areWeekdays(const QString& token) {
    return std::all_of(token.begin(), token.end(),
                       [](QChar digit) { return digit >= u'1' && digit <= u'7'; });
}
QString shipDaysInWords(const QString& typed) {
    const auto token = shipDaysToken(typed);
    return !typed.isEmpty() && areWeekdays(token) ? order_page_text::weekdays(token) : typed;
}
QString shipDaysWrong(const QString& typed) {
    if (areWeekdays(shipDaysToken(typed))) return {};
    QStringList known{order_page_text::weekdays({})};
    for (int day = 1; day <= 7; ++day) known += order_page_text::weekday(day);
    return paste_text::notKnown(typed, known);
}

QString asTyped(const QString& typed) { return typed; }
bool never(const QString&) { return false; }
bool isText(const QString& typed) { return !isWholeNumber(typed) && !isDay(typed); }

QString name(OrderField field) {
    return order_page_text::field(static_cast<int>(field)).remove(u'&');
}

}  // namespace

PasteKind ordersToPaste() {
    PasteKind kind;
    kind.head = window_text::asTitle(order_page_text::pasteHead());
    kind.kind = "orders";
    kind.named = window_text::kindName(QStringLiteral("orders")).toStdString();
    kind.takeIn = [](int lines) { return order_page_text::takeIn(lines); };
    // In this order the columns of a list without a header find their place.
    kind.columns = {
        {"kind", name(OrderField::Kind), true, kindToken,
         [](const QString& typed) { return kindOf(typed).has_value(); }, kindWrong, kindInWords},
        {"count", name(OrderField::Count), true, asTyped, isWholeNumber, countWrong},
        {"due", name(OrderField::Due), true, dayToken, isDay, dueWrong},
        {"not_before", name(OrderField::NotBefore), false, dayToken, never, dayWrong},
        {"label", name(OrderField::Label), true, asTyped, isText},
        {"line", name(OrderField::Line), false, lineToken, never},
        {"part_ok", name(OrderField::Part), false, yesToken, never, partWrong, partInWords},
        {"sure", name(OrderField::Sure), false, percentToken, never, percentWrong},
        {"weight", name(OrderField::Weight), false, asTyped, never},
        {"standing", order_page_text::standingField(), false, standingToken, never, standingWrong,
         standingInWords},
        {"purpose", name(OrderField::Purpose), false, purposeToken, never, purposeWrong,
         purposeInWords},
        {"ship_days", name(OrderField::ShipDays), false, shipDaysToken, never, shipDaysWrong,
         shipDaysInWords},
        {"note", name(OrderField::Note), false, asTyped, isText}};
    return kind;
}

std::vector<std::string> pastedHeads() {
    std::vector<std::string> heads;
    for (const auto field :
         {OrderField::Label, OrderField::Kind, OrderField::Count, OrderField::Due,
          OrderField::NotBefore, OrderField::Line, OrderField::Part, OrderField::Sure,
          OrderField::Weight, OrderField::Purpose, OrderField::ShipDays, OrderField::Note})
        heads.push_back(name(field).toStdString());
    heads.push_back(order_page_text::standingField().toStdString());
    return heads;
}

std::vector<std::string> pastedCells(const Snapshot& book, const Order& order) {
    const auto line = order.line ? book.find(*order.line) : nullptr;
    const auto terms = termsOf(book, order.id);
    return {order.label,
            order_text::kind(order.kind).toStdString(),
            std::to_string(order.count),
            isoDay(order.due),
            order.notBefore ? isoDay(*order.notBefore) : std::string(),
            line ? line->label : std::string(),
            (order.partOk ? order_page_text::inParts() : order_page_text::whole()).toStdString(),
            QLocale().toString(order.sure.value / 10.0, 'f', 1).toStdString(),
            std::to_string(order.weight),
            order_page_text::purposeChoice(terms.purpose).toStdString(),
            order_page_text::weekdays(QString::fromStdString(terms.shipDays)).toStdString(),
            order.note,
            order_text::standing(terms.standing).toStdString()};
}

}  // namespace tenthday
