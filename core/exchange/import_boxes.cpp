#include <algorithm>
#include <map>

#include "exchange/import_rows.h"
#include "records/box_verbs.h"

namespace tenthday {
namespace {

/// A yard or a layout from a day on, as one line says it.
template <class Value>
struct Entry {
    std::int32_t line;
    Day from;
    Value value;
};

/// One box: the lines that tell of it.
struct BoxLines {
    Box row;
    Ptr<Box> before;
    std::int32_t firstLine = 0;
    std::int32_t noteLine = 0;  ///< 0: no line has a note
    std::vector<Entry<std::optional<Id<Yard>>>> stays;
    std::vector<Entry<std::string>> layouts;
};

class BoxImport {
public:
    BoxImport(ImportWork& work, const ImportFile& file)
        : work_(work), file_(file), named_(idsNamed(file, work.errors)) {}

    void run() {
        for (std::size_t i = 0; i < file_.size() && work_.errors.none(); ++i)
            readLine(file_.line(i));
        for (auto& [label, box] : boxes_) {
            if (!work_.errors.none()) return;
            checkLine(box.firstLine, box.row, work_.errors);
            work_.put(box.before, box.row);
            takeStays(box);
            takeLayouts(box);
        }
    }

private:
    void refuse(const ImportLine& line, std::string_view column, std::string_view what) {
        work_.errors.refuse(line.number(), column, what);
    }

    void readLine(const ImportLine& line) {
        BoxLines& box = boxOf(line);
        readNote(line, box);
        readStay(line, box);
        readLayout(line, box);
    }

    BoxLines& boxOf(const ImportLine& line) {
        const std::string label(line.text("label"));
        const auto uuid = idOf(line, work_.errors);
        const auto [at, isNew] = boxes_.try_emplace(label);
        BoxLines& box = at->second;
        if (isNew) return begin(line, label, uuid, box);
        if (uuid != Uuid{} && uuid != box.row.id.uuid)
            refuse(line, "id",
                   "box " + inQuotes(label) + " has another id on line " +
                       std::to_string(box.firstLine));
        return box;
    }

    BoxLines& begin(const ImportLine& line, const std::string& label, Uuid uuid, BoxLines& box) {
        const auto found = work_.snapshot.find(work_.lookup.findLabel<Box>(label));
        const bool taken = found && !named_.contains(found->id.uuid);
        Id<Box> id{uuid};
        if (uuid == Uuid{})
            id = taken ? found->id : Id<Box>{work_.newId()};
        else if (taken)
            refuse(line, "label", inQuotes(label) + " is there already, with another id");
        const auto [other, isNew] = labels_.emplace(id, line.number());
        if (!isNew)
            refuse(line, "id", "there twice, first on line " + std::to_string(other->second));
        box.before = work_.snapshot.find(id);
        if (box.before) box.row = *box.before;
        box.row.id = id;
        box.row.label = label;
        box.firstLine = line.number();
        return box;
    }

    void readNote(const ImportLine& line, BoxLines& box) {
        const auto note = line.find("note");
        if (!note || (note->empty() && box.firstLine != line.number())) return;
        if (box.noteLine != 0 && *note != box.row.note)
            return refuse(line, "note", "differs from line " + std::to_string(box.noteLine));
        box.row.note = *note;
        if (!note->empty()) box.noteLine = line.number();
    }

    /// The day in `column`, or where it is empty in `other`; an empty pair of fields says nothing.
    std::optional<Day> dayIn(const ImportLine& line, std::string_view column,
                             std::string_view other) {
        auto text = line.text(column);
        if (text.empty()) text = line.text(other);
        Day day;
        if (text.empty()) return refuse(line, column, "a day is needed"), std::nullopt;
        if (const auto complaint = readField(text, day))
            return refuse(line, line.text(column).empty() ? other : column, *complaint),
                   std::nullopt;
        return day;
    }

    void readStay(const ImportLine& line, BoxLines& box) {
        const auto yard = line.text("yard");
        if (yard.empty() && line.text("yard_from").empty()) return;
        const auto day = dayIn(line, "yard_from", "layout_from");
        if (!day) return;
        std::optional<Id<Yard>> id;
        if (!yard.empty()) id = work_.lookup.find<Yard>(yard);
        if (id && id->isNone()) return refuse(line, "yard", nothingNamed<Yard>(yard));
        add(box.stays, {line.number(), *day, id}, "yard");
    }

    void readLayout(const ImportLine& line, BoxLines& box) {
        const auto layout = line.text("layout");
        if (layout.empty() && line.text("layout_from").empty()) return;
        if (layout.empty()) return refuse(line, "layout", "a layout is needed, such as 7 or 3+3");
        const auto day = dayIn(line, "layout_from", "yard_from");
        if (day) add(box.layouts, {line.number(), *day, std::string(layout)}, "layout");
    }

    template <class Value>
    void add(std::vector<Entry<Value>>& entries, Entry<Value> entry, std::string_view column) {
        for (const auto& other : entries)
            if (other.from == entry.from && other.value != entry.value)
                work_.errors.refuse(entry.line, column,
                                    "line " + std::to_string(other.line) + " has another from " +
                                        toText(entry.from));
        entries.push_back(std::move(entry));
    }

    template <class Value>
    static void sortByDay(std::vector<Entry<Value>>& entries) {
        std::stable_sort(entries.begin(), entries.end(),
                         [](const auto& a, const auto& b) { return a.from < b.from; });
    }

    void takeStays(BoxLines& box) {
        std::map<Day, Ptr<BoxStay>> known;
        for (const auto& stay : work_.snapshot.all<BoxStay>().of(box.row.id.uuid))
            known[stay->from] = stay;
        sortByDay(box.stays);
        for (const auto& entry : box.stays) {
            const auto after = known.upper_bound(entry.from);
            const auto inForce = after == known.begin() ? nullptr : std::prev(after)->second;
            if (inForce && inForce->yard == entry.value) continue;
            BoxStay stay{{work_.newId()}, 1, box.row.id, entry.value, entry.from};
            const auto before = inForce && inForce->from == entry.from ? inForce : nullptr;
            if (before) stay.id = before->id;
            known[entry.from] = std::make_shared<const BoxStay>(stay);
            work_.put(before, stay);
        }
    }

    void takeLayouts(BoxLines& box) {
        std::map<Day, std::string> known;
        for (const auto& layout : work_.lookup.layoutsOf(box.row.id))
            known[layout->from] = layout->layout;
        sortByDay(box.layouts);
        for (const auto& entry : box.layouts) {
            const auto after = known.upper_bound(entry.from);
            const auto inForce = after == known.begin() ? known.end() : std::prev(after);
            if (inForce != known.end() && inForce->second == entry.value) continue;
            if (inForce != known.end() && inForce->first == entry.from)
                return work_.errors.refuse(
                    entry.line, "layout",
                    "laid out as " + inForce->second + " from " + toText(entry.from) + " already");
            if (const auto last = lastUseOfNucs(work_.snapshot, box.row.id, entry.from, entry.from))
                return work_.errors.refuse(
                    entry.line, "layout_from",
                    "its nucs as they are have bees, cells or looks until " + toText(*last));
            known[entry.from] = entry.value;
            addLayout(box.row.id, entry);
        }
    }

    void addLayout(Id<Box> box, const Entry<std::string>& entry) {
        const BoxLayout layout{{work_.newId()}, 1, box, entry.value, entry.from};
        checkLine(entry.line, layout, work_.errors);
        tenthday::addLayout(work_.changes, layout, work_.newId);
    }

    ImportWork& work_;
    const ImportFile& file_;
    std::set<Uuid> named_;
    std::map<std::string, BoxLines> boxes_;
    std::map<Id<Box>, std::int32_t> labels_;  // of every box named, its first line
};

}  // namespace

void importBoxes(ImportWork& work, const ImportFile& file) { BoxImport(work, file).run(); }

}  // namespace tenthday
