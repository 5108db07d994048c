/// @file row_import.h  Takes the lines of a kind whose lines are rows.
#pragma once
#include <algorithm>
#include <array>
#include <map>

#include "exchange/import_rows.h"
#include "exchange/kind_columns.h"
#include "occupancy/winter.h"
#include "records/method_catalogue.h"
#include "records/order_checks.h"
#include "records/yard_roles.h"

namespace tenthday {

/// Takes the lines of a kind whose lines are rows.
template <class Row>
class RowImport {
public:
    RowImport(ImportWork& work, const ImportFile& file)
        : work_(work), file_(file), named_(idsNamed(file, work.errors)) {}

    void run() {
        std::vector<Meant> meant(file_.size());
        if constexpr (LabelledRow<Row>)  // first all: a line may refer to a later one (mothers)
            for (std::size_t i = 0; i < file_.size(); ++i) meant[i] = byLabel(file_.line(i));
        for (std::size_t i = 0; i < file_.size() && work_.errors.none(); ++i) {
            const auto line = file_.line(i);
            if constexpr (!LabelledRow<Row>) meant[i] = byPlace(line);
            takeLine(line, meant[i]);
        }
        if constexpr (kHasFaults)
            if (work_.errors.none()) checkStanding();
    }

private:
    /// The row a line means; null for a new one.
    struct Meant {
        Ptr<Row> before;
        Id<Row> id;
    };

    Meant byLabel(const ImportLine& line) {
        const std::string label(line.text("label"));
        labels_.add(line, label, work_.errors);
        auto found = work_.snapshot.find(work_.lookup.findLabel<Row>(label));
        if (found && found->label != label) found = nullptr;  // brought by an earlier line
        const auto meant = byId(line, found);
        if (found && found->id != meant.id && !named_.contains(found->id.uuid))
            work_.errors.refuse(line.number(), "label",
                                inQuotes(label) + " is there already, with another id");
        work_.lookup.add(label, meant.id);
        return meant;
    }

    Meant byPlace(const ImportLine& line) {
        Row row;
        readColumns(line, row);
        const auto key = KindOf<Row>::same(row);
        if (!key || !work_.errors.none() || !line.text("id").empty()) return byId(line, nullptr);
        placesInFile_.add(line, *key, work_.errors);
        if (places_.empty())
            for (const auto& other : work_.snapshot.template all<Row>())
                if (const auto place = KindOf<Row>::same(*other)) places_.emplace(*place, other);
        const auto at = places_.find(*key);
        return byId(line, at == places_.end() ? nullptr : at->second);
    }

    Meant byId(const ImportLine& line, const Ptr<Row>& found) {
        const auto uuid = idOf(line, work_.errors);
        if (uuid == Uuid{}) {
            if (found && !named_.contains(found->id.uuid)) return {found, found->id};
            return {nullptr, {work_.newId()}};
        }
        ids_.add(line, uuid, work_.errors);
        return {work_.snapshot.find(Id<Row>{uuid}), {uuid}};
    }

    void takeLine(const ImportLine& line, const Meant& meant) {
        Row row = meant.before ? *meant.before : Row{};
        row.id = meant.id;
        readColumns(line, row);
        fillIn(row);
        if (!work_.errors.none()) return;
        checkLine(line.number(), row, work_.errors);
        checkAcross(line, row);
        if constexpr (std::is_same_v<Row, Placement>)
            if (!meant.before || !(*meant.before == row)) checkWinter(line, row);
        if constexpr (kHasFaults)
            taken_.push_back({line.number(), meant.before, std::make_shared<const Row>(row)});
        work_.put(meant.before, std::move(row));
    }

    /// Orders and what hangs on them are looked at together, once all lines are read.
    static constexpr bool kHasFaults = requires(const Snapshot& snapshot, const Row& row) {
        faultOf(snapshot, row);
    };
    struct Taken {
        std::int32_t line = 0;
        Ptr<Row> before;
        Ptr<Row> after;
    };

    void checkStanding() {
        const auto next = applied(work_.snapshot, work_.changes);
        if (!next) return;  // told when the edit is made
        const auto isBad = [&](const Taken& taken) {
            return isChanged(taken) && faultOf(next.value(), *taken.after);
        };
        const auto bad = std::find_if(taken_.begin(), taken_.end(), isBad);
        if (bad == taken_.end() || findFirstFault()) return;
        refuse(*bad, *faultOf(next.value(), *bad->after));
    }
    /// Of several lines that are too much together the first that is one too many.
    bool findFirstFault() {
        auto step = work_.snapshot;
        for (const auto& taken : taken_) {
            if (!isChanged(taken)) continue;
            step.setAll(step.template all<Row>().with(taken.before, taken.after));
            if (const auto fault = faultOf(step, *taken.after)) {
                refuse(taken, *fault);
                return true;
            }
        }
        return false;
    }
    static bool isChanged(const Taken& taken) {
        return !taken.before || !(*taken.before == *taken.after);
    }
    void refuse(const Taken& taken, const OrderFault& fault) {
        work_.errors.refuse(taken.line, fault.column, fault.why);
    }

    void readColumns(const ImportLine& line, Row& row) {
        std::apply([&](const auto&... c) { (readColumn(line, row, c), ...); },
                   KindOf<Row>::columns);
        // A side is named by box, side and day: the day must be read first.
        std::apply([&](const auto&... c) { (readSide(line, row, c), ...); }, KindOf<Row>::columns);
    }

    template <class Member>
    void readColumn(const ImportLine& line, Row& row, const FileColumn<Row, Member>& column) {
        const auto text = line.find(column.name);
        if (!text) return;
        if (text->empty())
            row.*column.member = Row{}.*column.member;
        else if (const auto complaint = readValue(*text, row.*column.member))
            work_.errors.refuse(line.number(), column.name, *complaint);
    }
    template <class Member>
    void readColumn(const ImportLine&, Row&, const SideColumns<Row, Member>&) {}

    template <class T>
    FieldComplaint readValue(std::string_view text, T& value) {
        return readField(text, value);
    }
    template <class T>
    FieldComplaint readValue(std::string_view text, std::optional<T>& value) {
        return readValue(text, value.emplace());
    }
    template <class Other>
    FieldComplaint readValue(std::string_view text, Id<Other>& id) {
        id = work_.lookup.find<Other>(text);
        return id.isNone() ? FieldComplaint(nothingNamed<Other>(text)) : std::nullopt;
    }
    FieldComplaint readValue(std::string_view text, Id<Line>& id) {
        id = work_.lookup.find<Line>(text);
        if (!id.isNone()) return std::nullopt;
        Line line{{work_.newId()}, 1, std::string(text)};
        id = line.id;
        work_.lookup.add(line.label, line.id);
        work_.changes.add(std::move(line));
        return std::nullopt;
    }

    template <class Member>
    void readSide(const ImportLine&, Row&, const FileColumn<Row, Member>&) {}
    template <class Member>
    void readSide(const ImportLine& line, Row& row, const SideColumns<Row, Member>& column) {
        if (!work_.errors.none() || (!line.find("box") && !line.find("side"))) return;
        const auto box = line.text("box");
        const auto side = line.text("side");
        if (box.empty() && side.empty() && !column.needed) {
            row.*column.member = Member{};
            return;
        }
        if (box.empty()) return work_.errors.refuse(line.number(), "box", "a box is needed");
        const auto id = work_.lookup.find<Box>(box);
        if (id.isNone()) return work_.errors.refuse(line.number(), "box", nothingNamed<Box>(box));
        const auto found = work_.lookup.sideOn(id, side, row.day, batchOf(row));
        if (found.isNone()) return refuseSide(line, id, row.day);
        row.*column.member = found;
    }

    void refuseSide(const ImportLine& line, Id<Box> box, Day day) {
        const auto layout = work_.lookup.layoutOn(box, day);
        const auto where = "box " + inQuotes(line.text("box")) +
                           (layout ? " is laid out as " + layout->layout : " has no layout") +
                           " on " + toText(day);
        work_.errors.refuse(
            line.number(), layout ? "side" : "box",
            layout ? "no side " + inQuotes(line.text("side")) + ": " + where : where);
    }

    /// No cell goes in where by the book a queen stays over the winter.
    void checkWinter(const ImportLine& line, const Placement& row) {
        if (!row.done || !row.side) return;
        if (!winter_) winter_ = winterStays(work_.snapshot, kFirstDay);
        const auto* stay = winterStayIn(*winter_, *row.side, row.day);
        if (stay == nullptr || stay->raised->batch == row.batch) return;
        work_.errors.refuse(line.number(), "side",
                            "queen " + inQuotes(stay->queen ? stay->queen->label : "") +
                                " stays in it since " + toText(stay->from) +
                                "; import first where she is now, as queenstays");
    }

    static std::optional<Id<Batch>> batchOf(const Row& row) {
        if constexpr (std::is_same_v<Row, Outcome>) return row.batch;
        return std::nullopt;
    }

    void fillIn(Row& row) {
        if constexpr (std::is_same_v<Row, Batch>)
            if (row.method.isNone()) row.method = builtInMethods().front().method.id;
    }

    /// What a row by itself can't tell.
    void checkAcross(const ImportLine& line, const Row& row) {
        if constexpr (std::is_same_v<Row, Yard>) checkYardRoles(line, row.roles);
        if constexpr (std::is_same_v<Row, Outcome>)
            if (row.bar) checkBar(line, row.batch, *row.bar);
        if constexpr (std::is_same_v<Row, Batch>) checkLoads(line, row);
        if constexpr (std::is_same_v<Row, BatchLoad>) {
            checkBar(line, row.batch, row.bar);
            checkStep(line, row.batch, row.step);
        }
    }

    void checkYardRoles(const ImportLine& line, std::string_view roles) {
        while (!roles.empty()) {
            const auto role = roles.substr(0, roles.find(' '));
            roles.remove_prefix(std::min(roles.size(), role.size() + 1));
            if (std::find(kYardRoles.begin(), kYardRoles.end(), role) == kYardRoles.end())
                work_.errors.refuse(line.number(), "roles",
                                    oneOfNeeded(kYardRoles.data(), kYardRoles.size(), role));
        }
    }

    /// Once a batch has bars, others can't be named.
    void checkBar(const ImportLine& line, Id<Batch> batch, std::int32_t bar) {
        const auto bars = work_.snapshot.template all<BatchBar>().of(batch.uuid);
        const auto isIt = [&](const auto& b) { return b->bar == bar; };
        if (!bars.empty() && std::none_of(bars.begin(), bars.end(), isIt))
            work_.errors.refuse(
                line.number(), "bar",
                "batch " + inQuotes(line.text("batch")) + " has no bar " + std::to_string(bar));
    }

    /// Cells that stand in a builder at a step keep a method with that step.
    void checkLoads(const ImportLine& line, const Batch& batch) {
        const auto steps = work_.snapshot.template all<Step>().of(batch.method.uuid);
        for (const auto& load : work_.snapshot.template all<BatchLoad>().of(batch.id.uuid)) {
            const auto isIt = [&](const auto& s) { return s->step == load->step; };
            if (std::any_of(steps.begin(), steps.end(), isIt)) continue;
            return work_.errors.refuse(line.number(), "method",
                                       "has no step " + std::to_string(load->step) +
                                           ", at which cells of this batch stand in a builder");
        }
    }

    void checkStep(const ImportLine& line, Id<Batch> batch, std::int32_t step) {
        const auto method = work_.snapshot.find(work_.snapshot.find(batch)->method);
        const auto steps = work_.snapshot.template all<Step>().of(method->id.uuid);
        const auto isIt = [&](const auto& s) { return s->step == step; };
        if (std::none_of(steps.begin(), steps.end(), isIt))
            work_.errors.refuse(
                line.number(), "step",
                "method " + inQuotes(method->label) + " has no step " + std::to_string(step));
    }

    template <class R, bool = LabelledRow<R>>
    struct PlaceOf {
        using type = int;
        static constexpr std::string_view column = "label";
    };
    template <class R>
    struct PlaceOf<R, false> {
        using type = typename decltype(KindOf<R>::same(R{}))::value_type;
        static constexpr std::string_view column = KindOf<R>::sameColumn;
    };
    using Place = typename PlaceOf<Row>::type;

    ImportWork& work_;
    const ImportFile& file_;
    std::set<Uuid> named_;
    std::vector<Taken> taken_;
    std::optional<std::vector<WinterStay>> winter_;  ///< of placements, once asked for
    SeenOnce<Uuid> ids_{"id"};
    SeenOnce<std::string> labels_{"label"};
    SeenOnce<Place> placesInFile_{PlaceOf<Row>::column};
    std::map<Place, Ptr<Row>> places_;
};

}  // namespace tenthday
