/// @file lookup.h  What a label or an id in a file means, in a snapshot and in the file itself.
#pragma once
#include <string>
#include <string_view>
#include <tuple>
#include <unordered_map>
#include <vector>

#include "base/id_source.h"
#include "exchange/field_text.h"
#include "records/snapshot.h"

namespace tenthday {

/// Labels of every kind, and the sides of boxes by day. Built once per import or export.
class Lookup {
public:
    explicit Lookup(const Snapshot& snapshot);

    /// A row that the file brings: it can be referred to as if it were in the book.
    template <class Row>
    void add(const std::string& label, Id<Row> id) {
        auto& labels = std::get<LabelMap<Row>>(labels_);
        labels.byLabel[label] = id;
        labels.coming.insert_or_assign(id, label);
    }

    /// By id or label; none when there is no such row.
    template <class Row>
    [[nodiscard]] Id<Row> find(std::string_view text) const {
        const auto& labels = std::get<LabelMap<Row>>(labels_);
        if (const auto uuid = uuidFromText(text)) {
            const Id<Row> id{*uuid};
            if (labels.coming.contains(id) || snapshot_->find(id)) return id;
        }
        return findLabel<Row>(text);
    }
    /// By label alone.
    template <class Row>
    [[nodiscard]] Id<Row> findLabel(std::string_view text) const {
        const auto& byLabel = std::get<LabelMap<Row>>(labels_).byLabel;
        const auto at = byLabel.find(std::string(text));
        return at == byLabel.end() ? Id<Row>{} : at->second;
    }
    /// How a row is referred to: by its label, or by its id where the label looks like an id.
    template <class Row>
    [[nodiscard]] std::string nameOf(Id<Row> id) const {
        const auto row = snapshot_->find(id);
        return row && !uuidFromText(row->label) ? row->label : toText(id.uuid);
    }

    struct Place {
        std::string box;  ///< as nameOf
        std::string side;
    };
    [[nodiscard]] Place placeOf(Id<NucSide> side) const;

    /// The side of the layout in force on a day. An empty name means "-". On the day of a new
    /// layout the old sides can still be meant: when the new layout has none of that name, or when
    /// only the old one was given a cell of `batch`. None when there is no such side.
    [[nodiscard]] Id<NucSide> sideOn(Id<Box> box, std::string_view side, Day day,
                                     std::optional<Id<Batch>> batch = {}) const;
    /// The layout in force on a day, or null.
    [[nodiscard]] Ptr<BoxLayout> layoutOn(Id<Box> box, Day day) const;
    /// All layouts of a box, by day.
    [[nodiscard]] std::vector<Ptr<BoxLayout>> layoutsOf(Id<Box> box) const;

    [[nodiscard]] const Snapshot& snapshot() const { return *snapshot_; }

private:
    template <class Row>
    struct LabelMap {
        std::unordered_map<std::string, Id<Row>> byLabel;
        std::unordered_map<Id<Row>, std::string> coming;
    };
    [[nodiscard]] Id<NucSide> sideOf(Id<BoxLayout> layout, std::string_view side) const;
    [[nodiscard]] bool tookCell(Id<NucSide> side, Id<Batch> batch) const;

    const Snapshot* snapshot_;
    std::tuple<LabelMap<Season>, LabelMap<Yard>, LabelMap<Box>, LabelMap<Builder>, LabelMap<Method>,
               LabelMap<Line>, LabelMap<Queen>, LabelMap<Batch>, LabelMap<Order>>
        labels_;
    std::unordered_map<Id<Box>, std::vector<Ptr<BoxLayout>>> layouts_;  // each by day
    std::unordered_map<Id<BoxLayout>, std::vector<Ptr<NucSide>>> sides_;
};

}  // namespace tenthday
