#include "support/season_maker.h"

#include <sstream>

#include "records/validity.h"

namespace tenthday::test {

SeasonMaker::SeasonMaker(std::string_view today) : today_(day(today)) {
    Book book;
    book.id = next<Book>();
    book.label = "Test operation";
    rows_.add(book);
    Season season{next<Season>(), 1, "2027", day("2027-01-01"), day("2027-12-31")};
    season_ = season.id;
    rows_.add(season);
    for (const auto& built : builtInMethods()) {
        rows_.add(built.method);
        for (const auto& step : built.steps) rows_.add(step);
    }
}

SeasonMaker& SeasonMaker::yard(const std::string& label, std::int32_t driveOrder) {
    Yard row;
    row.id = yards_[label] = next<Yard>();
    row.label = label;
    row.roles = "mating builder";
    row.driveOrder = driveOrder;
    rows_.add(row);
    return *this;
}

void SeasonMaker::sidesOf(const std::string& box, Id<BoxLayout> layout, const std::string& text) {
    const auto frames = framesOfLayout(text);
    for (std::size_t i = 0; i < frames.size(); ++i) {
        const auto name = sideName(i, frames.size());
        const auto side = sides_[box + "/" + name] = next<NucSide>();
        rows_.add(NucSide{side, 1, layout, name, Frames{frames[i]}});
    }
}

SeasonMaker& SeasonMaker::box(const std::string& label, const std::string& yard,
                              const std::string& layout, std::string_view from) {
    const auto box = boxes_[label] = next<Box>();
    rows_.add(Box{box, 1, label, {}});
    rows_.add(BoxStay{next<BoxStay>(), 1, box, yards_.at(yard), day(from)});
    return layOut(label, layout, from);
}

SeasonMaker& SeasonMaker::layOut(const std::string& box, const std::string& layout,
                                 std::string_view from) {
    const auto row = next<BoxLayout>();
    rows_.add(BoxLayout{row, 1, boxes_.at(box), layout, day(from)});
    sidesOf(box, row, layout);
    return *this;
}

SeasonMaker& SeasonMaker::stock(const std::string& side, std::string_view on, bool openBrood) {
    Stocking row;
    row.id = next<Stocking>();
    row.side = sides_.at(side);
    row.day = day(on);
    row.openBrood = openBrood;
    rows_.add(row);
    return *this;
}

SeasonMaker& SeasonMaker::builder(const std::string& label, const std::string& yard,
                                  BuilderKind kind) {
    Builder row;
    row.id = builders_[label] = next<Builder>();
    row.label = label;
    row.yard = yards_.at(yard);
    row.kind = kind;
    row.from = day("2027-01-01");
    rows_.add(row);
    return *this;
}

SeasonMaker& SeasonMaker::makeUp(const std::string& builder, std::string_view on, int hour,
                                 bool openBrood) {
    MakeUp row;
    row.id = next<MakeUp>();
    row.builder = builders_.at(builder);
    row.day = day(on);
    row.hour = Hour{hour};
    row.openBrood = openBrood;
    rows_.add(row);
    return *this;
}

SeasonMaker& SeasonMaker::look(const std::string& builder, std::string_view on) {
    BuilderNote row;
    row.id = next<BuilderNote>();
    row.builder = builders_.at(builder);
    row.kind = BuilderNoteKind::Look;
    row.day = day(on);
    rows_.add(row);
    return *this;
}

SeasonMaker& SeasonMaker::dayOff(std::string_view from, std::string_view until) {
    rows_.add(DayOff{next<DayOff>(), 1, day(from), day(until), {}});
    return *this;
}

SeasonMaker& SeasonMaker::weather(std::string_view from, std::string_view until, int tmaxC) {
    for (Day on = day(from); on <= day(until); on += Days{1}) {
        WeatherDay row;
        row.id = next<WeatherDay>();
        row.date = on;
        row.tmaxC = Tenths{tmaxC * 10};
        rows_.add(row);
    }
    return *this;
}

SeasonMaker& SeasonMaker::batch(const std::string& label, std::string_view on, int hour, int grafts,
                                const std::string& builder, const std::string& method) {
    const MethodSteps* steps = nullptr;
    for (const auto& built : builtInMethods())
        if (built.method.label == method) steps = &built;
    if (steps == nullptr) throw std::invalid_argument("no method: " + method);
    Batch row;
    row.id = batches_[label] = next<Batch>();
    row.label = label;
    row.day = day(on);
    row.hour = Hour{hour};
    row.method = steps->method.id;
    rows_.add(row);
    rows_.add(BatchBar{next<BatchBar>(), 1, row.id, 1, {}, Cells{grafts}});
    for (const auto& step : steps->steps)
        rows_.add(BatchLoad{next<BatchLoad>(), 1, row.id, 1, step.step, builders_.at(builder)});
    return *this;
}

SeasonMaker& SeasonMaker::bar(const std::string& batch, int bar, int grafts,
                              const std::string& builder) {
    const auto id = batches_.at(batch);
    rows_.add(BatchBar{next<BatchBar>(), 1, id, bar, {}, Cells{grafts}});
    std::vector<std::int32_t> steps;
    for (const auto& change : rows_.rows)
        if (const auto load = change.as<BatchLoad>();
            load && load->after->batch == id && load->after->bar == 1)
            steps.push_back(load->after->step);
    for (const auto step : steps)
        rows_.add(BatchLoad{next<BatchLoad>(), 1, id, bar, step, builders_.at(builder)});
    return *this;
}

SeasonMaker& SeasonMaker::load(const std::string& batch, int bar, int step,
                               const std::string& builder) {
    for (auto& change : rows_.rows) {
        const auto load = change.as<BatchLoad>();
        if (!load || load->after->batch != batches_.at(batch) || load->after->bar != bar ||
            load->after->step != step)
            continue;
        auto row = *load->after;
        row.builder = builders_.at(builder);
        change = RowChangeOf<BatchLoad>{load->before, std::make_shared<const BatchLoad>(row)};
        return *this;
    }
    throw std::invalid_argument("no such bar or step in batch " + batch);
}

SeasonMaker& SeasonMaker::share(const std::string& batch, const std::string& yard, int cells) {
    rows_.add(BatchShare{next<BatchShare>(), 1, batches_.at(batch), yards_.at(yard), Cells{cells}});
    return *this;
}

SeasonMaker& SeasonMaker::outcome(const std::string& batch, OutcomeKind kind, std::string_view on,
                                  std::optional<int> count, const std::string& side,
                                  std::optional<int> bar) {
    Outcome row;
    row.bar = bar;
    row.id = next<Outcome>();
    row.batch = batches_.at(batch);
    row.kind = kind;
    row.day = day(on);
    if (count) row.count = Cells{*count};
    if (!side.empty()) row.side = sides_.at(side);
    rows_.add(row);
    return *this;
}

SeasonMaker& SeasonMaker::place(const std::string& batch, const std::string& side,
                                std::string_view on, bool done) {
    Placement row;
    row.id = next<Placement>();
    row.batch = batches_.at(batch);
    row.side = sides_.at(side);
    row.day = day(on);
    row.done = done;
    rows_.add(row);
    return *this;
}

Snapshot SeasonMaker::snapshot() const {
    auto made = applied(Snapshot{}, rows_);
    if (!made) throw std::invalid_argument(made.error().text);
    auto snapshot = std::move(made).value();
    snapshot.setSeason(season_);
    snapshot.setToday(today_);
    return snapshot;
}

OutlookPtr SeasonMaker::outlook() const {
    OutlookMemo memo;
    return outlookOf(snapshot(), memo);
}

namespace {

void describeBatch(std::ostream& out, const BatchOutlook& batch) {
    const auto& t = batch.timeline;
    out << "batch " << batch.batch->label << " grafted " << t.grafted << " latest move "
        << t.latestMove.time_since_epoch().count() << '\n';
    for (const auto& e : t.events)
        out << "  " << token(e.event) << ' ' << toText(e.earliest) << ' ' << toText(e.likely) << ' '
            << toText(e.latest) << ' ' << static_cast<int>(e.note) << '\n';
    out << "  counts " << t.counts.grafted << ' ' << t.counts.accepted << ' ' << t.counts.ripe
        << ' ' << t.counts.good << '\n';
    for (const auto& load : t.loads) {
        out << "  load " << load.step << ' ' << toText(load.span.from) << ' '
            << toText(load.span.until) << ' ' << toText(load.restUntil);
        if (load.builder) out << ' ' << toText(load.builder->uuid);
        for (const auto& piece : load.thickness) out << ' ' << piece.cells;
        out << '\n';
    }
    out << "  hold " << toText(t.hold.transfer) << ' ' << toText(t.hold.lookDay) << ' '
        << toText(t.hold.catchDay) << '\n';
}

void describeNumbers(std::ostream& out, const ReadyNumbers& n) {
    out << n.ready << '/' << std::llround(n.likely * 100) << '/' << n.canStock << '/'
        << n.needsBrood;
}

void describeSide(std::ostream& out, const SideOutlook& side) {
    out << "nuc " << side.box->label << '/' << side.side->side;
    for (const auto& round : side.rounds)
        out << ' ' << toText(round.batch.uuid) << ' ' << toText(round.transferDay) << ' '
            << toText(round.lookDay) << ' ' << toText(round.catchDay) << (round.done ? "!" : "")
            << (round.named ? "*" : "") << (round.seen ? token(*round.seen) : "");
    for (const auto& segment : side.segments)
        out << " | " << static_cast<int>(segment.kind) << ' ' << toText(segment.days.first) << ' '
            << toText(segment.days.last) << ' ' << segment.round << ' ' << segment.certain << ' '
            << toText(segment.readyFrom) << ' ' << toText(segment.needsBroodFrom);
    out << '\n';
}

}  // namespace

std::string describe(const Outlook& outlook) {
    std::ostringstream out;
    for (const auto& batch : outlook.batches) describeBatch(out, *batch);
    for (const auto& builder : outlook.builders) {
        out << "builder " << builder.builder->label;
        for (const auto& load : builder.loads) out << ' ' << toText(load.span->span.from);
        for (const auto& makeUp : builder.makeUps) out << " made up " << toText(makeUp->day);
        for (const auto& clock : builder.clocks) out << " clock " << toText(clock.oldest);
        for (const auto& idle : builder.idle)
            out << " idle " << toText(idle.first) << ".." << toText(idle.last);
        for (const auto& full : builder.overfull) out << " overfull " << full.cells;
        for (const auto& soon : builder.tooSoon) out << " too soon " << toText(soon.from);
        out << '\n';
    }
    for (const auto& side : outlook.nucs.sides) describeSide(out, side);
    for (const auto& yard : outlook.nucs.yards) {
        out << "yard " << yard.yard->label;
        for (const auto& day : yard.days) {
            out << ' ' << day.sides << ':';
            for (const auto n : day.stack) out << n << ',';
            describeNumbers(out, day.numbers);
        }
        for (const auto& block : yard.blocks)
            out << " block " << toText(block.batch.uuid) << ' ' << toText(block.days.first) << ".."
                << toText(block.days.last) << ' ' << block.cells;
        out << '\n';
    }
    for (const auto& day : outlook.nucs.cellsDays) {
        out << "cells " << toText(day.day) << ' ' << day.ripe << ' ' << day.toNucs << ' '
            << day.placed << ' ';
        for (const auto batch : day.batches) out << toText(batch.uuid) << ' ';
        describeNumbers(out, day.numbers);
        out << '\n';
    }
    for (const auto& finding : outlook.findings)
        out << toText(finding.day) << ' ' << token(finding.severity) << ' ' << token(finding.kind)
            << ' ' << finding.subjectLabel << ": " << englishText(finding) << '\n';
    return out.str();
}

}  // namespace tenthday::test
