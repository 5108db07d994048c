#include "core/exchange/random_season.h"

#include <random>

#include "records/change_set.h"
#include "records/method_catalogue.h"
#include "records/validity.h"

namespace tenthday::test {
namespace {

constexpr Day kStart{date::local_days{date::year{2027} / 4 / 1}};

class Maker {
public:
    explicit Maker(std::uint32_t seed) : random_(seed) {}

    Snapshot make() {
        makeLasting();
        makeBoxes();
        makeBuilders();
        makeBreeders();
        const int batches = number(0, 6);
        for (int i = 0; i < batches; ++i) makeBatch();
        auto made = applied(Snapshot{}, changes_).value();
        made.setToday(kStart + Days{400});
        return made;
    }

private:
    /// An order for queens that can have earmarks.
    struct Open {
        Id<Order> id;
        int rest = 0;
    };

    int number(int low, int high) {
        return low + static_cast<int>(random_() % static_cast<std::uint32_t>(high - low + 1));
    }
    bool chance() { return number(0, 1) == 1; }
    template <class T>
    std::optional<T> maybe(T value) {
        return chance() ? std::optional<T>(value) : std::nullopt;
    }
    template <class T>
    const T& oneOf(const std::vector<T>& all) {
        return all[static_cast<std::size_t>(number(0, static_cast<int>(all.size()) - 1))];
    }
    template <class Enum>
    Enum token() {
        return static_cast<Enum>(number(0, static_cast<int>(kTokenCount<Enum>) - 1));
    }
    Day day(int low = 0, int high = 180) { return kStart + Days{number(low, high)}; }
    std::optional<Hour> hour() { return maybe(Hour{number(0, 23)}); }
    template <class Row>
    Id<Row> id() {
        return {Uuid{0x0190000000007000ULL | random_() % 0x1000, 0x8000000000000000ULL | ++count_}};
    }
    std::string label() {
        static const std::vector<std::string> kParts{
            "a", "Wide, Pond", "say \"no\"", "K\xC3\xB6g",   "x\ny",
            "7", "010",        " ",          "\xE8\x9C\x82", "-"};
        return oneOf(kParts) + std::to_string(++count_);
    }
    std::string note() { return chance() ? "" : label(); }
    template <class Row>
    void add(Row row) {
        changes_.add(std::move(row));
    }

    void makeLasting() {
        add(Book{id<Book>(), 1, "Random", 1, CatchRule::SealedBrood, {}});
        for (const auto& made : builtInMethods()) {
            add(made.method);
            for (const auto& step : made.steps) add(step);
            methods_.push_back({made.method.id, static_cast<int>(made.steps.size())});
        }
        makeMethods();
        seasonLasts_ = number(0, 400);
        add(Season{id<Season>(), 1, label(), kStart, kStart + Days{seasonLasts_}});
        for (const auto fact : {Fact::Accepted, Fact::Sealed, Fact::Mated})
            if (chance())
                add(FactOverride{id<FactOverride>(), 1, std::string(tenthday::token(fact)),
                                 number(1, 699)});
        for (int i = number(1, 4); i > 0; --i) {
            yards_.push_back(id<Yard>());
            add(Yard{yards_.back(), 1, label(), chance() ? "mating drone" : "", token<Hemisphere>(),
                     maybe(day()), maybe(day()), number(0, 9999), note()});
        }
        for (int i = number(0, 3); i > 0; --i) {
            const Day from = day();
            add(DayOff{id<DayOff>(), 1, from, from + Days{number(0, 5)}, note()});
        }
        for (int i = number(0, 3); i > 0; --i) {
            const Day due = day(0, std::min(180, seasonLasts_ + 60));
            const Order order{id<Order>(),
                              1,
                              label(),
                              token<OrderKind>(),
                              number(1, 99),
                              maybe(due - Days{number(0, 9)}),
                              due,
                              {},
                              chance(),
                              Tenths{number(1, 999)},
                              number(0, 999),
                              note()};
            add(order);
            makeOrder(order);
        }
        for (int i = number(0, 2); i > 0; --i)
            add(QueenLot{id<QueenLot>(), 1, day(), number(1, 50), {}, chance(), note()});
        Day date = kStart;
        for (int i = number(0, 9); i > 0; --i) {
            date += Days{number(1, 5)};
            const int low = number(-300, 200);
            add(WeatherDay{id<WeatherDay>(), 1, date, maybe(Tenths{low + number(0, 150)}),
                           maybe(Tenths{low}), maybe(Tenths{number(0, 500)}),
                           maybe(Tenths{number(0, 200)}), maybe(chance())});
        }
        for (int month = 1; month <= 12; ++month)
            if (chance())
                add(ClimateMonth{id<ClimateMonth>(), 1, month, Tenths{number(-100, 300)},
                                 maybe(Tenths{number(0, 280)})});
        for (int i = number(0, 3); i > 0; --i) {
            date += Days{1};
            add(DroneSighting{id<DroneSighting>(), 1, oneOf(yards_), date, token<DroneStage>(),
                              maybe(number(0, 30)), note()});
            add(YardNote{id<YardNote>(), 1, oneOf(yards_), token<YardNoteKind>(), date,
                         date + Days{number(0, 30)}, note()});
        }
        for (int i = number(0, 3); i > 0; --i)
            add(OwnTask{id<OwnTask>(), 1, day(), maybe(oneOf(yards_)), label(), chance()});
        for (int i = number(0, 3); i > 0; --i)
            add(TaskDone{id<TaskDone>(), 1, token<TaskRule>(), toText(id<Batch>().uuid),
                         chance() ? toText(oneOf(yards_).uuid) : "", number(0, 9), day()});
        makeWork();
    }

    void makeWork() {
        for (const auto rule : {TaskRule::Graft, TaskRule::CatchQueens, TaskRule::Own})
            if (chance())
                add(WorkTime{id<WorkTime>(), 1, rule, number(0, 90), Tenths{number(0, 300)}});
        for (std::size_t i = 0; i + 1 < yards_.size(); ++i)
            if (chance())
                add(DriveTime{id<DriveTime>(), 1, yards_[i], yards_[i + 1], number(0, 90)});
        if (chance()) add(DriveTime{id<DriveTime>(), 1, {}, yards_.front(), number(0, 90)});
        for (int i = number(0, 3); i > 0; --i)
            add(TaskGiven{id<TaskGiven>(), 1, token<TaskRule>(), toText(id<Batch>().uuid),
                          chance() ? toText(oneOf(yards_).uuid) : "", number(0, 9), "AK"});
    }

    void makeOrder(const Order& order) {
        static const std::vector<std::string> kDays{"", "1", "1234", "57"};
        auto standing = OrderStanding::Open;
        if (number(0, 3) > 0) {
            standing = token<OrderStanding>();
            const auto purpose =
                order.kind == OrderKind::Own ? token<OrderPurpose>() : OrderPurpose::None;
            add(OrderTerms{id<OrderTerms>(), 1, order.id, standing, purpose, oneOf(kDays)});
        }
        int rest = order.count;
        for (int i = number(0, 2); i > 0 && rest > 0; --i) {
            const int count = number(1, std::min(rest, 9));
            const int failed = number(0, std::min(count, 3));
            rest -= count - failed;
            add(Delivery{id<Delivery>(),
                         1,
                         order.id,
                         day(),
                         count,
                         {},
                         maybe(oneOf(yards_)),
                         failed,
                         failed > 0 ? DeliveryLoss::DroneLayer : DeliveryLoss::None,
                         note()});
        }
        if (standing == OrderStanding::Open && order.kind >= OrderKind::Mated)
            openOrders_.push_back({order.id, rest});
        if (number(0, 3) > 0)
            add(PromiseMove{id<PromiseMove>(), 1, order.id, day(), day(0, 90), day(91, 180),
                            note()});
    }

    /// Means some of a batch's grafts for an order that is still owed as many.
    void makeEarmark(Id<Batch> batch, int grafts) {
        if (openOrders_.empty() || grafts == 0) return;
        auto& order = openOrders_[static_cast<std::size_t>(
            number(0, static_cast<int>(openOrders_.size()) - 1))];
        if (order.rest == 0) return;
        const int count = number(1, std::min(order.rest, grafts));
        order.rest -= count;
        add(Earmark{id<Earmark>(), 1, order.id, batch, count});
    }

    void makeMethods() {
        for (int i = number(0, 2); i > 0; --i) {
            const Method method{id<Method>(), 1, label()};
            add(method);
            const int steps = number(1, 3);
            for (int s = 1; s <= steps; ++s)
                add(Step{id<Step>(), 1, method.id, s, token<BuilderKind>(), s * 30, s * 30 + 30,
                         number(0, 9)});
            methods_.push_back({method.id, steps});
        }
    }

    struct Side {
        Id<NucSide> id;
        Day from;
        Day until;  ///< last day of its layout
    };

    void makeBoxes() {
        for (int i = number(0, 8); i > 0; --i) {
            const Box box{id<Box>(), 1, label(), note()};
            add(box);
            makeStays(box.id);
            makeLayouts(box.id);
        }
        for (const auto& side : sides_)
            if (chance())
                add(Stocking{id<Stocking>(), 1, side.id, dayIn(side), hour(),
                             maybe(BeesMl{number(0, 20000)}), maybe(Frames{number(0, 20)}),
                             chance(), note(), note()});
        for (const auto& side : sides_) {
            if (number(0, 3) == 0)
                add(NucCare{id<NucCare>(), 1, side.id, dayIn(side), hour(), token<NucCareKind>(),
                            maybe(BeesMl{number(0, 20000)}), maybe(Frames{number(0, 20)}), chance(),
                            note(), note()});
            if (number(0, 3) == 0)
                add(MiteWork{id<MiteWork>(), 1, side.id, {}, dayIn(side), label(), note()});
        }
    }
    Day dayIn(const Side& side) {
        return side.from + Days{number(0, static_cast<int>((side.until - side.from).count()))};
    }

    void makeStays(Id<Box> box) {
        std::optional<Id<Yard>> last;
        bool first = true;
        for (Day from = day(0, 40); chance() && from < day(); from += Days{number(1, 50)}) {
            const auto yard = number(0, 4) == 0 ? std::nullopt : std::optional(oneOf(yards_));
            if (!first && yard == last) continue;
            add(BoxStay{id<BoxStay>(), 1, box, yard, from});
            last = yard;
            first = false;
        }
    }

    void makeLayouts(Id<Box> box) {
        static const std::vector<std::string> kLayouts{"7", "3+3", "10", "2+2+2", "4+5"};
        std::string last;
        for (Day from = day(0, 40); from < kStart + Days{170}; from += Days{number(20, 120)}) {
            const auto layout = oneOf(kLayouts);
            if (layout == last) continue;
            last = layout;
            closeSides(from);
            const BoxLayout row{id<BoxLayout>(), 1, box, layout, from};
            add(row);
            const auto frames = framesOfLayout(layout);
            for (std::size_t i = 0; i < frames.size(); ++i) {
                open_.push_back({id<NucSide>(), from, kStart + Days{200}});
                add(NucSide{open_.back().id, 1, row.id, sideName(i, frames.size()),
                            Frames{frames[i]}});
            }
        }
        closeSides(kStart + Days{201});
    }
    void closeSides(Day next) {
        for (auto& side : open_) {
            side.until = next - Days{1};
            sides_.push_back(side);
        }
        open_.clear();
    }

    void makeBuilders() {
        for (int i = number(1, 4); i > 0; --i) {
            const Day from = day();
            builders_.push_back(id<Builder>());
            add(Builder{builders_.back(), 1, label(), oneOf(yards_), token<BuilderKind>(),
                        maybe(Cells{number(0, 99)}), maybe(Cells{number(0, 99)}), from,
                        maybe(from + Days{number(0, 90)}), note()});
            if (chance())
                add(MakeUp{id<MakeUp>(), 1, builders_.back(), day(), hour(), chance(),
                           maybe(BeesMl{number(0, 9000)}), maybe(Frames{number(0, 9)}), note(),
                           chance()});
            if (chance())
                add(MiteWork{id<MiteWork>(), 1, {}, builders_.back(), day(), label(), note()});
            if (chance())
                add(BuilderNote{id<BuilderNote>(), 1, builders_.back(), token<BuilderNoteKind>(),
                                day(), hour(), chance(), token<BroodAge>(), note(), note()});
        }
    }

    void makeBreeders() {
        std::vector<Id<Line>> lines;
        for (int i = number(0, 2); i > 0; --i) {
            lines.push_back(id<Line>());
            add(Line{lines.back(), 1, label()});
        }
        for (int i = number(0, 5); i > 0; --i) {
            const auto mother = queens_.empty() ? std::nullopt : maybe(oneOf(queens_));
            const Day from = day();
            queens_.push_back(id<Queen>());
            add(Queen{queens_.back(), 1, label(), maybe(number(2020, 2027)), mother,
                      lines.empty() ? std::nullopt : maybe(oneOf(lines)), maybe(from),
                      maybe(from + Days{number(0, 99)}), note()});
            if (chance())
                add(QueenNote{id<QueenNote>(), 1, queens_.back(), day(), token<QueenNoteKind>(),
                              note()});
            if (chance())
                add(QueenStay{id<QueenStay>(), 1, queens_.back(), token<QueenPlace>(), day(),
                              note()});
        }
    }

    void makeBatch() {
        const auto [method, steps] = oneOf(methods_);
        const auto from = maybe(number(0, 36));
        const auto batch = id<Batch>();
        const int day0 = number(0, 130);
        add(Batch{batch, 1, label(), token<Start>(), kStart + Days{day0}, hour(), from,
                  from ? std::optional(number(36, 72)) : std::nullopt, method, token<Mating>(),
                  maybe(token<CatchRule>()), note()});
        if (chance()) add(LeftOut{id<LeftOut>(), 1, batch, label()});
        if (!queens_.empty()) {  // each was caught once
            if (number(0, 3) > 0)
                add(CaughtQueen{
                    id<CaughtQueen>(), 1, queens_.back(), batch, {}, kStart + Days{day0 + 30}});
            queens_.pop_back();
        }
        const int bars = number(0, 3);
        int grafts = 0;
        for (int bar = 1; bar <= bars; ++bar) {
            const int cells = number(1, 60);
            grafts += cells;
            add(BatchBar{id<BatchBar>(), 1, batch, bar,
                         queens_.empty() ? std::nullopt : maybe(oneOf(queens_)), Cells{cells}});
            for (int step = 1; step <= steps; ++step)
                if (chance())
                    add(BatchLoad{id<BatchLoad>(), 1, batch, bar, step, oneOf(builders_)});
            if (chance())
                add(Outcome{id<Outcome>(),
                            1,
                            batch,
                            bar,
                            {},
                            OutcomeKind::TakeCount,
                            kStart + Days{day0 + 1},
                            hour(),
                            Cells{number(0, 50)},
                            note()});
        }
        makeEarmark(batch, grafts);
        add(BatchShare{id<BatchShare>(), 1, batch, oneOf(yards_), Cells{number(0, 60)}});
        if (const Day there = day(); chance())
            add(MatingStay{id<MatingStay>(), 1, batch, maybe(oneOf(yards_)), there,
                           there + Days{number(0, 20)}});
        makePlacements(batch);
    }

    void makePlacements(Id<Batch> batch) {
        for (const auto& side : sides_) {
            if (number(0, 2) != 0) continue;
            const Day placed = dayIn(side);
            add(Placement{id<Placement>(), 1, batch, side.id, CellTarget::Nuc, placed, hour(),
                          chance()});
            if (chance())
                add(Outcome{id<Outcome>(),
                            1,
                            batch,
                            {},
                            side.id,
                            OutcomeKind::FirstEggs,
                            std::min(placed + Days{20}, side.until),
                            hour(),
                            {},
                            note()});
        }
        for (int i = number(0, 3); i > 0; --i)
            add(Placement{
                id<Placement>(), 1, batch, {}, CellTarget::Sold, day(), hour(), chance()});
    }

    std::mt19937 random_;
    std::uint64_t count_ = 0;
    ChangeSet changes_;
    std::vector<Id<Yard>> yards_;
    std::vector<Id<Builder>> builders_;
    int seasonLasts_ = 0;  ///< days
    std::vector<Open> openOrders_;
    std::vector<Id<Queen>> queens_;
    std::vector<std::pair<Id<Method>, int>> methods_;
    std::vector<Side> sides_;
    std::vector<Side> open_;
};

}  // namespace

Snapshot randomSeason(std::uint32_t seed) { return Maker(seed).make(); }

}  // namespace tenthday::test
