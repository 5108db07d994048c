/// @file row_kind.h  What all kinds whose things are rows have alike.
#pragma once
#include <algorithm>
#include <map>

#include "base/natural_order.h"
#include "screen_text/yard_text.h"
#include "setup/setup_kind.h"

namespace tenthday {

/// The yard's label, for a cell.
[[nodiscard]] inline QString yardName(const Snapshot& book, Id<Yard> id) {
    const auto yard = book.find(id);
    return yard ? QString::fromStdString(yard->label) : QString();
}

template <class Row>
class RowKind : public SetupKind {
public:
    [[nodiscard]] QString title(const Snapshot& book, const std::vector<Uuid>& ids) const override {
        if (ids.empty()) return setup_text::newThing(kind());
        if (ids.size() > 1) return setup_text::things(kind(), static_cast<int>(ids.size()));
        const auto row = find(book, ids);
        return row ? setup_text::thing(kind(), fullName(book, *row)) : QString();
    }
    [[nodiscard]] std::vector<Use> uses(const Snapshot& book,
                                        const std::vector<Uuid>& ids) const override {
        std::vector<Use> all;
        for (const auto& id : ids)
            for (const auto& use : usesOf(book, Id<Row>{id})) {
                const auto same = std::find_if(all.begin(), all.end(), [&](const Use& other) {
                    return other.table == use.table;
                });
                same == all.end() ? all.push_back(use) : void(same->count += use.count);
            }
        return all;
    }
    [[nodiscard]] Result<ChangeSet> remove(const Snapshot& book,
                                           const std::vector<Uuid>& ids) const override {
        ChangeSet all{Verb::DeleteRow, {}, {}, {}};
        for (const auto& id : ids) {
            auto one = deleteWhole(book, Id<Row>{id});
            if (!one) return one;
            all.rows.insert(all.rows.end(), one.value().rows.begin(), one.value().rows.end());
        }
        return all;
    }
    [[nodiscard]] std::optional<Uuid> broughtBy(const ChangeSet& changes) const override {
        for (const auto& change : changes.rows)
            if (const auto mine = change.as<Row>(); mine && !mine->before)
                return mine->after->id.uuid;
        return std::nullopt;
    }
    [[nodiscard]] QString nameOfBrought(const ChangeSet& changes) const override {
        QStringList names;
        for (const auto& change : changes.rows)
            if (const auto mine = change.as<Row>(); mine && !mine->before)
                names += nameOf(*mine->after);
        return setup_text::thing(
            kind(), names.size() == 1 ? names.front() : QString::fromStdString(changes.subject));
    }

protected:
    [[nodiscard]] static Ptr<Row> find(const Snapshot& book, const std::vector<Uuid>& ids) {
        return ids.size() == 1 ? book.find(Id<Row>{ids.front()}) : nullptr;
    }
    /// The row being changed, or a new one with an id of its own.
    [[nodiscard]] static Row rowOf(const Snapshot& book, const Draft& draft) {
        if (const auto row = find(book, draft.ids)) return *row;
        Row fresh{};
        fresh.id = newId<Row>();
        return fresh;
    }
    /// By its label; of what has none by its days.
    [[nodiscard]] static QString nameOf(const Row& row) {
        if constexpr (requires { row.label; })
            return QString::fromStdString(row.label);
        else if constexpr (std::is_same_v<Row, YardNote>)
            return yard_text::note(row.kind, row.from, row.until);
        else if constexpr (requires { row.from; })
            return setup_text::dayOff(row.from, row.until);
        else
            return setup_text::day(row.day);
    }
    /// With what a row alone cannot tell.
    [[nodiscard]] static QString fullName(const Snapshot& book, const Row& row) {
        if constexpr (
            requires { row.yard; } && !requires { row.label; })
            return yard_text::inYard(yardName(book, row.yard), nameOf(row));
        else
            return nameOf(row);
    }
    /// All rows, as people order their labels; those without one by their days.
    [[nodiscard]] static std::vector<Ptr<Row>> ordered(const Snapshot& book) {
        std::vector<Ptr<Row>> rows(book.all<Row>().begin(), book.all<Row>().end());
        std::stable_sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) {
            if constexpr (requires { a->label; })
                return naturalLess(a->label, b->label);
            else if constexpr (requires { a->from; })
                return a->from < b->from;
            else
                return a->day < b->day;
        });
        return rows;
    }
    /// The label in a field is another row's.
    [[nodiscard]] static std::optional<FieldFault> takenLabel(const Snapshot& book,
                                                              const Draft& draft,
                                                              std::size_t field) {
        const auto other = findByLabel<Row>(book, toStdText(draft.values[field]));
        if (!other || (!draft.isNew() && other->id.uuid == draft.ids.front())) return std::nullopt;
        return FieldFault{field, setup_text::taken(draft.values[field].toString())};
    }
};

/// Rows of a kind as choices, by their ids as text.
template <class Row>
[[nodiscard]] std::vector<FieldChoice> choicesOf(const Snapshot& book) {
    std::vector<Ptr<Row>> rows(book.all<Row>().begin(), book.all<Row>().end());
    std::stable_sort(rows.begin(), rows.end(),
                     [](const auto& a, const auto& b) { return naturalLess(a->label, b->label); });
    std::vector<FieldChoice> choices;
    for (const auto& row : rows)
        choices.push_back(
            {QString::fromStdString(row->label), QString::fromStdString(toText(row->id.uuid))});
    return choices;
}

/// A last day follows a first day that is set beyond it.
inline void untilNotBefore(Draft& draft, std::size_t from, std::size_t until) {
    const auto first = toDay(draft.values[from]);
    const auto last = toDay(draft.values[until]);
    if (first && last && *last < *first) draft.values[until] = fromDay(first);
}
[[nodiscard]] inline std::optional<FieldFault> endsTooEarly(const Draft& draft, std::size_t from,
                                                            std::size_t until) {
    const auto last = toDay(draft.values[until]);
    if (!last || *toDay(draft.values[from]) <= *last) return std::nullopt;
    return FieldFault{until, setup_text::endsTooEarly()};
}

/// A reference as a choice's value, and back; an empty text is none.
template <class Row>
[[nodiscard]] QVariant fromId(std::optional<Id<Row>> id) {
    return id ? QString::fromStdString(toText(id->uuid)) : QString();
}
template <class Row>
[[nodiscard]] std::optional<Id<Row>> toId(const QVariant& value) {
    const auto uuid = uuidFromText(value.toString().toStdString());
    return uuid ? std::optional(Id<Row>{*uuid}) : std::nullopt;
}

/// An optional count as a number field's value, and back.
template <class Count>
[[nodiscard]] QVariant fromCount(const std::optional<Count>& count) {
    return count ? QVariant(int{count->value}) : QVariant();
}
template <class Count>
[[nodiscard]] std::optional<Count> toCount(const QVariant& value) {
    return value.isValid() ? std::optional(Count{value.toInt()}) : std::nullopt;
}

}  // namespace tenthday
