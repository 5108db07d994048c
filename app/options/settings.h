/// @file settings.h  What the program remembers between runs. Nothing of a book stands here.
#pragma once
#include <QDate>
#include <QList>
#include <QRect>
#include <QSettings>
#include <QString>
#include <QStringList>
#include <array>
#include <memory>
#include <optional>

#include "base/tokens.h"
#include "cellsday/propose.h"
#include "look/palette.h"
#include "options/kept_calendar.h"
#include "options/language.h"
#include "options/legend_fold.h"
#include "options/print_choice.h"

namespace tenthday {

enum class LookChoice : std::uint8_t { System, Light, Dark };
template <>
struct TokensOf<LookChoice> {
    static constexpr auto names = std::to_array<std::string_view>({"system", "light", "dark"});
};

/// The screen look a choice means on a desktop with these colours.
[[nodiscard]] Look lookFor(LookChoice choice, const QPalette& desktop);

/// A book that was open.
struct RecentBook {
    QString path;   ///< full
    QString label;  ///< name of the operation
    QDate opened;   ///< last
};

/// Whether caught queens get numbers, and how they are made (see QueenPattern).
struct QueenNumbering {
    bool on = true;
    QString pattern;
    friend bool operator==(const QueenNumbering&, const QueenNumbering&) = default;
};

/// The door to QSettings; tests put a file of their own behind it. What cannot be read counts as
/// never set.
class Settings {
public:
    explicit Settings(std::unique_ptr<QSettings> store);
    /// The user's own, in the place of the platform.
    [[nodiscard]] static Settings ofUser();

    /// Books opened lately, the newest first, at most kMostRecent.
    [[nodiscard]] QList<RecentBook> recentBooks() const;
    /// Puts a book first; it is listed once.
    void rememberBook(const RecentBook& book);
    void forgetBook(const QString& path);
    static constexpr int kMostRecent = 8;

    /// Path of the book opened last; empty when there is none or it was closed.
    [[nodiscard]] QString lastBook() const;
    void setLastBook(const QString& path);

    [[nodiscard]] LookChoice look() const;
    void setLook(LookChoice choice);

    [[nodiscard]] Language language() const;
    void setLanguage(Language language);

    /// Weekdays on which nobody wants to work, Monday first; none when never set.
    [[nodiscard]] std::array<bool, 7> freeWeekdays() const;
    void setFreeWeekdays(const std::array<bool, 7>& weekdays);

    /// The calendar kept for the phone beside a book, by the book's full path: a copy of the book
    /// keeps none of its own accord.
    [[nodiscard]] std::optional<KeptCalendar> keptCalendar(const QString& book) const;
    /// nullopt: no longer.
    void setKeptCalendar(const QString& book, const std::optional<KeptCalendar>& calendar);
    /// Where ripe cells go that find no nuc; usualWays() when never set.
    [[nodiscard]] WayOrder wayOrder() const;
    void setWayOrder(const WayOrder& order);

    /// On, by the usual pattern, when never set.
    [[nodiscard]] QueenNumbering queenNumbering() const;
    void setQueenNumbering(const QueenNumbering& numbering);

    /// What was printed last, and how.
    [[nodiscard]] PrintChoice printChoice() const;
    void setPrintChoice(const PrintChoice& choice);

    /// Lanes of the chart that are folded, by their tokens, and what a hand did to its legend.
    struct ChartFolds {
        QStringList lanes;
        LegendFold legend = LegendFold::ByRoom;
        friend bool operator==(const ChartFolds&, const ChartFolds&) = default;
    };
    /// Nothing is folded when never set.
    [[nodiscard]] ChartFolds chartFolds() const;
    void setChartFolds(const ChartFolds& folds);

    /// Where the window stood, frame's corner and size without frame; null when never set.
    [[nodiscard]] QRect windowPlace() const;
    [[nodiscard]] bool isMaximized() const;
    void setWindowPlace(const QRect& place, bool maximized);

private:
    std::unique_ptr<QSettings> store_;
};

}  // namespace tenthday
