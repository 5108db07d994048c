#include "options/settings.h"

#include <algorithm>

#include "records/queen_numbers.h"

namespace tenthday {
namespace {

const QString kRecent = QStringLiteral("book/recent");
const QString kRecentPath = QStringLiteral("path");
const QString kRecentLabel = QStringLiteral("label");
const QString kRecentOpened = QStringLiteral("opened");
const QString kLastBook = QStringLiteral("book/last");
const QString kLook = QStringLiteral("window/look");
const QString kPlace = QStringLiteral("window/place");
const QString kFreeWeekdays = QStringLiteral("work/free_weekdays");
const QString kWayOrder = QStringLiteral("cells/ways");
const QString kQueensNumbered = QStringLiteral("queens/numbered");
const QString kQueenPattern = QStringLiteral("queens/pattern");
const QString kLanguage = QStringLiteral("window/language");
const QString kCalendars = QStringLiteral("calendars");
const QString kCalendarPath = QStringLiteral("path");
const QString kCalendarKinds = QStringLiteral("kinds");
const QString kCalendarAllDay = QStringLiteral("all_day");
const QString kPrint = QStringLiteral("print/");
const QString kFoldedLanes = QStringLiteral("chart/folded_lanes");
const QString kFoldedLegend = QStringLiteral("chart/folded_legend");
const QString kOpenedLegend = QStringLiteral("chart/opened_legend");
const QString kMaximized = QStringLiteral("window/maximized");

}  // namespace

Look lookFor(LookChoice choice, const QPalette& desktop) {
    switch (choice) {
        case LookChoice::Light:
            return Look::Light;
        case LookChoice::Dark:
            return Look::Dark;
        case LookChoice::System:
            break;
    }
    return lookOf(desktop);
}

Settings::Settings(std::unique_ptr<QSettings> store) : store_(std::move(store)) {}

Settings Settings::ofUser() {
    return Settings(std::make_unique<QSettings>(QSettings::IniFormat, QSettings::UserScope,
                                                QStringLiteral("tenthday"),
                                                QStringLiteral("tenthday")));
}

QList<RecentBook> Settings::recentBooks() const {
    QList<RecentBook> books;
    const int count = store_->beginReadArray(kRecent);
    for (int i = 0; i < std::min(count, kMostRecent); ++i) {
        store_->setArrayIndex(i);
        const RecentBook book{store_->value(kRecentPath).toString(),
                              store_->value(kRecentLabel).toString(),
                              store_->value(kRecentOpened).toDate()};
        if (!book.path.isEmpty()) books += book;
    }
    store_->endArray();
    return books;
}

namespace {

void write(QSettings& store, const QList<RecentBook>& books) {
    store.remove(kRecent);
    store.beginWriteArray(kRecent, static_cast<int>(books.size()));
    for (int i = 0; i < books.size(); ++i) {
        store.setArrayIndex(i);
        store.setValue(kRecentPath, books[i].path);
        store.setValue(kRecentLabel, books[i].label);
        store.setValue(kRecentOpened, books[i].opened);
    }
    store.endArray();
}

}  // namespace

void Settings::rememberBook(const RecentBook& book) {
    forgetBook(book.path);
    auto books = recentBooks();
    books.prepend(book);
    write(*store_, books.mid(0, kMostRecent));
}

void Settings::forgetBook(const QString& path) {
    auto books = recentBooks();
    books.removeIf([&](const RecentBook& book) { return book.path == path; });
    write(*store_, books);
}

QString Settings::lastBook() const { return store_->value(kLastBook).toString(); }
void Settings::setLastBook(const QString& path) { store_->setValue(kLastBook, path); }

LookChoice Settings::look() const {
    const auto text = store_->value(kLook).toString().toStdString();
    return fromToken<LookChoice>(text).value_or(LookChoice::System);
}
void Settings::setLook(LookChoice choice) {
    const auto text = token(choice);
    store_->setValue(kLook, QString::fromUtf8(text.data(), text.size()));
}

Language Settings::language() const {
    const auto text = store_->value(kLanguage).toString().toStdString();
    return fromToken<Language>(text).value_or(Language::System);
}
void Settings::setLanguage(Language language) {
    const auto text = token(language);
    store_->setValue(kLanguage,
                     QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())));
}

std::array<bool, 7> Settings::freeWeekdays() const {
    // "0000011": Saturday and Sunday.
    const auto text = store_->value(kFreeWeekdays).toString();
    std::array<bool, 7> free{};
    for (int i = 0; i < 7 && i < text.size(); ++i)
        free[static_cast<std::size_t>(i)] = text[i] == u'1';
    return free;
}
void Settings::setFreeWeekdays(const std::array<bool, 7>& weekdays) {
    QString text;
    for (const bool free : weekdays) text += free ? u'1' : u'0';
    store_->setValue(kFreeWeekdays, text);
}

namespace {

QStringList tokensOf(const std::vector<TaskRule>& kinds) {
    QStringList tokens;
    for (const auto kind : kinds) tokens += QString::fromStdString(std::string(token(kind)));
    return tokens;
}

/// The group of a book's calendar. A path holds slashes, which would make groups of its parts.
QString calendarGroup(const QString& book) {
    return kCalendars + u'/' + QString::fromLatin1(book.toUtf8().toHex());
}

}  // namespace

std::optional<KeptCalendar> Settings::keptCalendar(const QString& book) const {
    const auto group = calendarGroup(book) + u'/';
    KeptCalendar calendar{store_->value(group + kCalendarPath).toString(), {}};
    if (calendar.path.isEmpty()) return std::nullopt;
    const auto kinds = store_->value(group + kCalendarKinds).toStringList();
    for (const auto& text : kinds)
        if (const auto kind = fromToken<TaskRule>(text.toStdString()))
            calendar.wish.kinds.push_back(*kind);
    calendar.wish.allDay = store_->value(group + kCalendarAllDay).toBool();
    return calendar;
}

void Settings::setKeptCalendar(const QString& book, const std::optional<KeptCalendar>& calendar) {
    store_->remove(calendarGroup(book));
    if (!calendar) return;
    const auto group = calendarGroup(book) + u'/';
    store_->setValue(group + kCalendarPath, calendar->path);
    store_->setValue(group + kCalendarKinds, tokensOf(calendar->wish.kinds));
    store_->setValue(group + kCalendarAllDay, calendar->wish.allDay);
}

WayOrder Settings::wayOrder() const {
    // "other_yards caged:20 sold"
    if (!store_->contains(kWayOrder)) return usualWays();
    WayOrder order;
    for (const auto& entry : store_->value(kWayOrder).toString().split(u' ', Qt::SkipEmptyParts)) {
        const auto parts = entry.split(u':');
        const auto way = fromToken<Way>(parts[0].toStdString());
        if (!way) continue;
        bool whole = false;
        const int most = parts.size() > 1 ? parts[1].toInt(&whole) : 0;
        order.push_back({*way, whole && most > 0 ? std::optional(most) : std::nullopt});
    }
    return order;
}
void Settings::setWayOrder(const WayOrder& order) {
    QStringList entries;
    for (const auto& step : order) {
        const auto name = token(step.way);
        entries += QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())) +
                   (step.most ? u':' + QString::number(*step.most) : QString());
    }
    store_->setValue(kWayOrder, entries.join(u' '));
}

QueenNumbering Settings::queenNumbering() const {
    const auto usual = QueenPattern::usual();
    const auto pattern =
        store_
            ->value(kQueenPattern,
                    QString::fromUtf8(usual.data(), static_cast<qsizetype>(usual.size())))
            .toString();
    return {store_->value(kQueensNumbered, true).toBool(), pattern};
}
void Settings::setQueenNumbering(const QueenNumbering& numbering) {
    store_->setValue(kQueensNumbered, numbering.on);
    store_->setValue(kQueenPattern, numbering.pattern);
}

namespace {

template <class Enum>
QString tokenText(Enum value) {
    const auto text = token(value);
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// Calls `visit(name, member)` for each number of a sheet of labels.
template <class Grid, class Visitor>
void eachOf(Grid& grid, Visitor&& visit) {
    visit(QStringLiteral("columns"), grid.columns);
    visit(QStringLiteral("rows"), grid.rows);
    visit(QStringLiteral("left"), grid.left);
    visit(QStringLiteral("top"), grid.top);
    visit(QStringLiteral("right"), grid.right);
    visit(QStringLiteral("bottom"), grid.bottom);
    visit(QStringLiteral("gap_across"), grid.gapAcross);
    visit(QStringLiteral("gap_down"), grid.gapDown);
    visit(QStringLiteral("cut_lines"), grid.cutLines);
}

}  // namespace

PrintChoice Settings::printChoice() const {
    const auto text = [&](const char* key) {
        return store_->value(kPrint + QLatin1String(key)).toString();
    };
    const auto yes = [&](const char* key) {
        return store_->value(kPrint + QLatin1String(key)).toBool();
    };
    PrintChoice choice;
    choice.kind = fromToken<PaperKind>(text("kind").toStdString()).value_or(choice.kind);
    choice.form.paper = fromToken<Paper>(text("paper").toStdString()).value_or(choice.form.paper);
    choice.form.landscape = yes("landscape");
    choice.form.large = yes("large");
    choice.who = text("who");
    choice.nextWeekToo = yes("next_week_too");
    eachOf(choice.labels, [&](const QString& name, auto& number) {
        using Number = std::remove_cvref_t<decltype(number)>;
        const auto value = store_->value(kPrint + QStringLiteral("labels/") + name);
        if (value.canConvert<Number>()) number = value.template value<Number>();
    });
    return choice;
}

void Settings::setPrintChoice(const PrintChoice& choice) {
    const auto set = [&](const char* key, const QVariant& value) {
        store_->setValue(kPrint + QLatin1String(key), value);
    };
    set("kind", tokenText(choice.kind));
    set("paper", tokenText(choice.form.paper));
    set("landscape", choice.form.landscape);
    set("large", choice.form.large);
    set("who", choice.who);
    set("next_week_too", choice.nextWeekToo);
    eachOf(choice.labels, [&](const QString& name, const auto& number) {
        store_->setValue(kPrint + QStringLiteral("labels/") + name, number);
    });
}

Settings::ChartFolds Settings::chartFolds() const {
    // Older settings know only the first: true where a hand folded it.
    const auto legend = store_->value(kFoldedLegend).toBool()   ? LegendFold::Folded
                        : store_->value(kOpenedLegend).toBool() ? LegendFold::Opened
                                                                : LegendFold::ByRoom;
    return {store_->value(kFoldedLanes).toStringList(), legend};
}
void Settings::setChartFolds(const ChartFolds& folds) {
    store_->setValue(kFoldedLanes, folds.lanes);
    store_->setValue(kFoldedLegend, folds.legend == LegendFold::Folded);
    store_->setValue(kOpenedLegend, folds.legend == LegendFold::Opened);
}

QRect Settings::windowPlace() const { return store_->value(kPlace).toRect(); }
bool Settings::isMaximized() const { return store_->value(kMaximized).toBool(); }
void Settings::setWindowPlace(const QRect& place, bool maximized) {
    store_->setValue(kPlace, place);
    store_->setValue(kMaximized, maximized);
}

}  // namespace tenthday
