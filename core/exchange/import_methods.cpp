#include <algorithm>
#include <map>

#include "exchange/import_rows.h"

namespace tenthday {
namespace {

struct MethodLines {
    Method row;
    Ptr<Method> before;
    std::int32_t firstLine = 0;
    std::map<std::int32_t, Ptr<Step>> known;  ///< by step number, in the book
    std::map<std::int32_t, std::int32_t> lineOfStep;
};

class MethodImport {
public:
    MethodImport(ImportWork& work, const ImportFile& file)
        : work_(work), file_(file), named_(idsNamed(file, work.errors)) {}

    void run() {
        for (std::size_t i = 0; i < file_.size() && work_.errors.none(); ++i)
            takeStep(file_.line(i), methodOf(file_.line(i)));
        for (const auto& [label, method] : methods_) checkComplete(method);
    }

private:
    void refuse(const ImportLine& line, std::string_view column, std::string_view what) {
        work_.errors.refuse(line.number(), column, what);
    }

    MethodLines& methodOf(const ImportLine& line) {
        const std::string label(line.text("label"));
        const auto uuid = idOf(line, work_.errors);
        const auto [at, isNew] = methods_.try_emplace(label);
        MethodLines& method = at->second;
        if (isNew) return begin(line, label, uuid, method);
        if (uuid != Uuid{} && uuid != method.row.id.uuid)
            refuse(line, "id",
                   "method " + inQuotes(label) + " has another id on line " +
                       std::to_string(method.firstLine));
        return method;
    }

    MethodLines& begin(const ImportLine& line, const std::string& label, Uuid uuid,
                       MethodLines& method) {
        const auto found = work_.snapshot.find(work_.lookup.findLabel<Method>(label));
        const bool taken = found && !named_.contains(found->id.uuid);
        Id<Method> id{uuid};
        if (uuid == Uuid{})
            id = taken ? found->id : Id<Method>{work_.newId()};
        else if (taken)
            refuse(line, "label", inQuotes(label) + " is there already, with another id");
        const auto [other, isNew] = ids_.emplace(id, line.number());
        if (!isNew)
            refuse(line, "id", "there twice, first on line " + std::to_string(other->second));
        method.before = work_.snapshot.find(id);
        method.row = {id, method.before ? method.before->version : 1, label};
        method.firstLine = line.number();
        for (const auto& step : work_.snapshot.all<Step>().of(id.uuid))
            method.known[step->step] = step;
        checkLine(line.number(), method.row, work_.errors);
        work_.put(method.before, method.row);
        return method;
    }

    template <class T>
    void read(const ImportLine& line, std::string_view column, T& value) {
        const auto text = line.text(column);
        if (text.empty()) return;
        if (const auto complaint = readField(text, value)) refuse(line, column, *complaint);
    }

    void takeStep(const ImportLine& line, MethodLines& method) {
        Step step;
        step.method = method.row.id;
        read(line, "step", step.step);
        read(line, "where", step.where);
        read(line, "from_hour", step.fromHour);
        read(line, "to_hour", step.toHour);
        const auto known = method.known.find(step.step);
        const auto before = known == method.known.end() ? nullptr : known->second;
        if (before && !line.find("rest_days")) step.restDays = before->restDays;
        read(line, "rest_days", step.restDays);
        const auto [other, isNew] = method.lineOfStep.emplace(step.step, line.number());
        if (!isNew)
            refuse(line, "step", "there twice, first on line " + std::to_string(other->second));
        if (!work_.errors.none()) return;
        keep(line, before, step);
    }

    void keep(const ImportLine& line, const Ptr<Step>& before, Step step) {
        step.id = before ? before->id : Id<Step>{work_.newId()};
        step.version = before ? before->version : 1;
        checkLine(line.number(), step, work_.errors);
        if (before && *before == step) return;
        if (const auto batch = userOf(step.method))
            return refuse(line, "step",
                          "batch " + inQuotes(batch->label) +
                              " uses this method: give a changed one a new label");
        work_.put(before, step);
    }

    Ptr<Batch> userOf(Id<Method> method) const {
        for (const auto& batch : work_.snapshot.all<Batch>())
            if (batch->method == method) return batch;
        return nullptr;
    }

    void checkComplete(const MethodLines& method) {
        auto steps = method.lineOfStep;
        for (const auto& [number, step] : method.known) steps.emplace(number, method.firstLine);
        std::int32_t next = 1;
        for (const auto& [number, line] : steps)
            if (number != next++)
                return work_.errors.refuse(line, "step",
                                           "step " + std::to_string(next - 1) + " is missing");
    }

    ImportWork& work_;
    const ImportFile& file_;
    std::set<Uuid> named_;
    std::map<std::string, MethodLines> methods_;
    std::map<Id<Method>, std::int32_t> ids_;  // of every method named, its first line
};

}  // namespace

void importMethods(ImportWork& work, const ImportFile& file) { MethodImport(work, file).run(); }

}  // namespace tenthday
