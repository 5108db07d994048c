/// @file why_text.h  Why a day is what it is, in words: the rule, what it leans on, the sources.
#pragma once
#include <QString>
#include <QStringList>
#include <vector>

#include "outlook/outlook.h"

namespace tenthday::why_text {

/// One number or day a rule leans on.
struct Input {
    QString name;
    QString value;
    QString from;         ///< "default", "your own", "set by you", "seen", "reckoned, see below"
    QStringList sources;  ///< published, in full; none of what the user entered or saw
};

/// One link of the chain: what is explained, when it is, by which rule, and from what.
struct Link {
    QString what;
    QString when;
    QString rule;
    std::vector<Input> inputs;
};

/// The event first, then what it leans on, back to what was entered or seen. Empty where the
/// batch has no such event.
[[nodiscard]] std::vector<Link> event(const Outlook& outlook, Id<Batch> batch, Event event);

/// A trade number in force, as an input.
[[nodiscard]] Input number(const Facts& facts, Fact fact);
/// A day of the user's own making.
[[nodiscard]] Input setByYou(const QString& name, const QString& value);
[[nodiscard]] Input seen(const QString& name, const QString& value);
[[nodiscard]] Input planned(const QString& name, const QString& value);
/// By which rule the batch's queens are caught, and whether the batch or the book says so.
[[nodiscard]] Input catchRule(const Outlook& outlook, const Batch& batch);
/// Hours of the last step of the batch's method.
[[nodiscard]] Input endOfMethod(const Outlook& outlook, const Batch& batch);

/// The chain as rich text, for a view that shows it.
[[nodiscard]] QString asRichText(const std::vector<Link>& steps);

[[nodiscard]] QString head();
/// "Why this day? Batch 705".
[[nodiscard]] QString head(const QString& batch);
[[nodiscard]] QString menuEntry();
[[nodiscard]] QString chooseBatch();
[[nodiscard]] QString batchIsGone();
[[nodiscard]] QString dates();
[[nodiscard]] QString reasons();
/// Of the list of events: event, day, earliest, likely, latest.
[[nodiscard]] QString columnHead(int column);
/// "day 10"; day 0 is the graft.
[[nodiscard]] QString dayFromGraft(int day);

}  // namespace tenthday::why_text
