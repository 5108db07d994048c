#include "screen_text/queen_text.h"

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/words.h"

namespace tenthday::queen_text {
namespace {

int whole(const Facts& facts, Fact fact) { return static_cast<int>(facts[fact]); }

}  // namespace

QString number() { return Words::tr("Number"); }
QString batch() { return Words::tr("Batch"); }
QString matedIn() { return Words::tr("Mated in"); }
QString caughtOn() { return Words::tr("Caught on"); }
QString where() { return Words::tr("Where"); }
QString since() { return Words::tr("Since"); }
QString daysThere() { return Words::tr("Days in bank"); }
QString moveTo() { return Words::tr("Goes to"); }
QString from() { return Words::tr("On"); }

QString place(QueenPlace place) {
    switch (place) {
        case QueenPlace::Bank:
            return Words::tr("bank");
        case QueenPlace::Cage:
            return Words::tr("cage");
        case QueenPlace::Colony:
            return Words::tr("colony");
        case QueenPlace::Sold:
            return Words::tr("sold");
        case QueenPlace::Lost:
            return Words::tr("lost");
        case QueenPlace::Nuc:
            return Words::tr("her nuc, for the winter");
    }
    return {};
}

QString nucUnknown() { return Words::tr("The nuc that she was raised in is not known."); }
QString inNuc(const QString& nuc) { return Words::tr("in %1 for the winter").arg(nuc); }

QString noteHint(QueenPlace place) {
    switch (place) {
        case QueenPlace::Bank:
            return Words::tr("Which bank colony.");
        case QueenPlace::Cage:
            return Words::tr("Which cage, and for what.");
        case QueenPlace::Colony:
            return Words::tr("Which colony she was introduced to.");
        case QueenPlace::Sold:
            return Words::tr("For which order.");
        case QueenPlace::Lost:
            return Words::tr("How she was lost.");
        case QueenPlace::Nuc:
            return Words::tr("Anything to remember of her.");
    }
    return {};
}

QString daysInBank(int days, const Facts& facts) {
    const int most = whole(facts, Fact::BankDaysD);
    return days <= most ? chart_text::number(days)
                        : Words::tr("%1: longer than %2")
                              .arg(chart_text::number(days), chart_text::number(most));
}

QString bankDaysTip(const Facts& facts) {
    return Words::tr(
               "Queens stay in a bank for up to %1 days (S20; of those kept up to 75 days 59 to 71 "
               "in 100 lived, S97). Change it among the trade numbers.")
        .arg(chart_text::number(whole(facts, Fact::BankDaysD)));
}

bool isBankFull(int queens, const Facts& facts) { return queens > whole(facts, Fact::BankQueens); }

QString bankHint(int queens, const Facts& facts) {
    const auto there = Words::tr("In banks then: %1.").arg(chart_text::number(queens));
    const auto room = Words::tr("One bank colony keeps up to %1 queens (S20).")
                          .arg(chart_text::number(whole(facts, Fact::BankQueens)));
    return there + u' ' + room;
}

QString beforeCatch(Day caught) {
    return Words::tr("She was caught only on %1.").arg(weekdayAndDay(caught));
}

QString caution(QueenPlace place) {
    switch (place) {
        case QueenPlace::Sold:
            return Words::tr(
                "Selling and moving queens can need an inspection or a certificate: ask your bee "
                "inspector.");
        case QueenPlace::Colony:
            return Words::tr(
                "The receiving colony is queenless for 6 to 24 hours before (S103). Stings: do not "
                "work alone.");
        default:
            return {};
    }
}

QString numbersButton() { return Words::tr("&Queen numbers ..."); }
QString numbersTitle() { return Words::tr("Queen numbers"); }
QString giveNumbers() { return Words::tr("Give each caught &queen a number"); }
QString pattern() { return Words::tr("&Pattern"); }
QString patternHelp() {
    return Words::tr(
        "{n} running number, {n:3} with three digits; {year} or {yy} year of birth; {line} her "
        "line; {batch} her batch. All else stands as you write it. The number runs on by itself "
        "for each text around it. Queens caught stand in the set-up, first in the bank.");
}
QString nextNumbers(const QString& a, const QString& b, const QString& c) {
    return Words::tr("The next three: %1, %2, %3").arg(a, b, c);
}
QString badPattern(const QString& text) {
    const int numbers = static_cast<int>(text.count(QStringLiteral("{n")));
    if (numbers == 0) return Words::tr("The running number {n} is missing.");
    if (numbers > 1) return Words::tr("The running number {n} stands there more than once.");
    return Words::tr("A word in braces is not known, or a brace stands alone.");
}

}  // namespace tenthday::queen_text
