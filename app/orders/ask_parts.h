/// @file ask_parts.h  Pieces that the dialogs of orders have alike. Inner to the room.
#pragma once
#include "base/id_source.h"
#include "book/new_id.h"
#include "outlook/outlook.h"
#include "records/change_set.h"
#include "setup/field.h"

namespace tenthday {

inline QString plain(const std::string& text) { return QString::fromStdString(text); }
inline IdSource freshIds() {
    return [] { return idMaker().next(); };
}

/// The tokens of an enum as choices; `word` says each.
template <class Enum, class Word>
std::vector<FieldChoice> choicesOf(Word&& word, std::size_t from = 0) {
    std::vector<FieldChoice> choices;
    for (std::size_t i = from; i < kTokenCount<Enum>; ++i)
        choices.push_back({word(static_cast<Enum>(i)), static_cast<int>(i)});
    return choices;
}

template <class Enum>
Enum chosen(const QVariant& value) {
    return static_cast<Enum>(value.toInt());
}

/// The lines of the book, to complete what is typed.
[[nodiscard]] std::vector<FieldChoice> linesOf(const Snapshot& book);

/// Batches of the season, those likely meant first, then as their labels stand; values are ids.
[[nodiscard]] std::vector<FieldChoice> batchChoices(const Outlook& outlook,
                                                    const std::vector<Id<Batch>>& likely);

/// The id a choice stands for; nothing for the entry that names none.
template <class Row>
std::optional<Id<Row>> idOf(const QVariant& value) {
    const auto uuid = uuidFromText(value.toString().toStdString());
    return uuid ? std::optional(Id<Row>{*uuid}) : std::nullopt;
}

/// The same edit under a name that says what it did.
[[nodiscard]] Result<ChangeSet> named(Result<ChangeSet> changes, Verb verb, const QString& subject);

}  // namespace tenthday
