/// @file season_maker.h  Builds valid snapshots row by row, with labels instead of ids.
#pragma once
#include <map>
#include <string>
#include <vector>

#include "outlook/outlook.h"
#include "records/change_set.h"
#include "records/method_catalogue.h"
#include "support/days.h"
#include "support/ids.h"

namespace tenthday::test {

/// Rows are gathered, then checked and applied together by snapshot(), which throws when refused.
class SeasonMaker {
public:
    /// A book with the built-in methods and one season, the year 2027.
    explicit SeasonMaker(std::string_view today = "2027-06-01");

    SeasonMaker& yard(const std::string& label, std::int32_t driveOrder = 0);
    /// One box, standing and divided from a day on; sides "box/A" or "box/-".
    SeasonMaker& box(const std::string& label, const std::string& yard, const std::string& layout,
                     std::string_view from);
    SeasonMaker& layOut(const std::string& box, const std::string& layout, std::string_view from);
    SeasonMaker& stock(const std::string& side, std::string_view day, bool openBrood = true);
    SeasonMaker& builder(const std::string& label, const std::string& yard,
                         BuilderKind kind = BuilderKind::StarterFinisher);
    SeasonMaker& makeUp(const std::string& builder, std::string_view day, int hour, bool openBrood);
    SeasonMaker& look(const std::string& builder, std::string_view day);
    SeasonMaker& dayOff(std::string_view from, std::string_view until);
    /// Every day from one to another as warm as this, dry and calm.
    SeasonMaker& weather(std::string_view from, std::string_view until, int tmaxC);
    /// One batch of one bar, standing in `builder` at every step of its method.
    SeasonMaker& batch(const std::string& label, std::string_view day, int hour, int grafts,
                       const std::string& builder, const std::string& method = "one box");
    /// A further bar of a batch, standing in `builder` at every step.
    SeasonMaker& bar(const std::string& batch, int bar, int grafts, const std::string& builder);
    /// Puts a bar into another builder for one step.
    SeasonMaker& load(const std::string& batch, int bar, int step, const std::string& builder);
    SeasonMaker& share(const std::string& batch, const std::string& yard, int cells);
    SeasonMaker& outcome(const std::string& batch, OutcomeKind kind, std::string_view day,
                         std::optional<int> count = {}, const std::string& side = {},
                         std::optional<int> bar = {});
    SeasonMaker& place(const std::string& batch, const std::string& side, std::string_view day,
                       bool done);

    [[nodiscard]] Snapshot snapshot() const;
    [[nodiscard]] OutlookPtr outlook() const;

    [[nodiscard]] Id<Batch> batchId(const std::string& label) const { return batches_.at(label); }
    [[nodiscard]] Id<NucSide> sideId(const std::string& label) const { return sides_.at(label); }
    [[nodiscard]] Id<Builder> builderId(const std::string& l) const { return builders_.at(l); }
    [[nodiscard]] Id<Yard> yardId(const std::string& label) const { return yards_.at(label); }

private:
    template <class Row>
    Id<Row> next() {
        return id<Row>(++count_);
    }
    void sidesOf(const std::string& box, Id<BoxLayout> layout, const std::string& text);

    std::uint64_t count_ = 1000;
    Day today_;
    Id<Season> season_;
    ChangeSet rows_;
    std::map<std::string, Id<Yard>> yards_;
    std::map<std::string, Id<Box>> boxes_;
    std::map<std::string, Id<NucSide>> sides_;
    std::map<std::string, Id<Builder>> builders_;
    std::map<std::string, Id<Batch>> batches_;
};

/// Everything derived, as text: equal texts mean equal outlooks. For comparing and for messages.
[[nodiscard]] std::string describe(const Outlook& outlook);

}  // namespace tenthday::test
