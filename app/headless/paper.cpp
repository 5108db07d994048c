#include "headless/paper.h"

#include "exchange/field_text.h"
#include "sheets/day_papers.h"
#include "sheets/page_painter.h"

namespace tenthday {
namespace {

struct Wish {
    PaperWish paper;
    std::string path;
};

/// "3x8", columns and rows.
bool readGrid(const std::string& text, LabelGrid& grid) {
    const auto parts = QString::fromStdString(text).split(u'x');
    if (parts.size() != 2) return false;
    bool columns = false;
    bool rows = false;
    grid.columns = parts[0].toInt(&columns);
    grid.rows = parts[1].toInt(&rows);
    return columns && rows;
}

/// "8,8,8,8": mm, as many as there are places.
bool readMillimetres(const std::string& text, std::initializer_list<double*> places) {
    const auto parts = QString::fromStdString(text).split(u',');
    if (static_cast<std::size_t>(parts.size()) != places.size()) return false;
    qsizetype i = 0;
    for (auto* place : places) {
        bool good = false;
        *place = parts[i++].toDouble(&good);
        if (!good) return false;
    }
    return true;
}

Result<void> readLabels(const Arguments& arguments, LabelGrid& grid) {
    if (const auto text = arguments.value("--labels"); text && !readGrid(*text, grid))
        return optionError("--labels", "columns x rows are needed, such as 3x8");
    if (const auto text = arguments.value("--margins");
        text && !readMillimetres(*text, {&grid.left, &grid.top, &grid.right, &grid.bottom}))
        return optionError("--margins", "four are needed, in mm: left,top,right,bottom");
    if (const auto text = arguments.value("--gaps");
        text && !readMillimetres(*text, {&grid.gapAcross, &grid.gapDown}))
        return optionError("--gaps", "two are needed, in mm: across,down");
    if (const auto text = arguments.value("--first"))
        if (const auto complaint = readField(*text, grid.first))
            return optionError("--first", *complaint);
    grid.cutLines = !arguments.has("--no-cut-lines");
    return {};
}

Result<Wish> readWish(const Arguments& arguments) {
    Wish wish;
    auto& choice = wish.paper.choice;
    if (const auto complaint = readField(arguments.operand(1), choice.kind))
        return optionError("KIND", *complaint);
    const auto day = dayOption(arguments, "--on");
    if (!day) return day.error();
    wish.paper.day = day.value();
    const auto path = arguments.value("--out");
    if (!path) return optionError("--out", "is missing");
    if (!QString::fromStdString(*path).endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive))
        return optionError("--out", "a name that ends in .pdf is needed, not " + inQuotes(*path));
    wish.path = *path;
    if (const auto text = arguments.value("--paper"))
        if (const auto complaint = readField(*text, choice.form.paper))
            return optionError("--paper", *complaint);
    choice.form.landscape = arguments.has("--landscape");
    choice.form.large = arguments.has("--large");
    choice.nextWeekToo = arguments.has("--next-too");
    choice.who = QString::fromStdString(arguments.value("--who").value_or(""));
    if (const auto good = readLabels(arguments, choice.labels); !good) return good.error();
    return wish;
}

/// The batch or order that is named, by its label.
Result<void> findSubject(const Call& call, const Snapshot& snapshot, PaperWish& wish) {
    if (const auto label = call.arguments.value("--batch")) {
        const auto batch = findByLabel<Batch>(snapshot, *label);
        if (!batch) return Error{"there is no batch " + inQuotes(*label) + " in this season"};
        wish.batch = batch->id;
    }
    if (const auto label = call.arguments.value("--order")) {
        const auto order = findByLabel<Order>(snapshot, *label);
        if (!order) return Error{"there is no order " + inQuotes(*label)};
        wish.order = order->id;
    }
    return {};
}

Answer run(const Call& call) {
    auto wish = readWish(call.arguments);
    if (!wish) return Answer::wrongUse(wish.error());
    const auto outlook = readOutlook(call, wish.value().paper.day);
    if (!outlook) return Answer::failed(outlook.error());
    auto& paper = wish.value().paper;
    if (const auto found = findSubject(call, outlook.value()->snapshot, paper); !found)
        return Answer::failed(found.error());
    const auto made = dayPaper(outlook.value(), paper);
    if (!made) return Answer::failed(made.error());
    const PaperRuler ruler;
    const auto& [title, form, pages] = made.value();
    const auto written =
        writePdf(QString::fromStdString(wish.value().path), pages(form, ruler), form, title, ruler);
    return written ? Answer{} : Answer::failed(written.error());
}

}  // namespace

const HeadlessVerb& paperVerb() {
    static const HeadlessVerb verb{
        "paper",
        {{"BOOK", "KIND"},
         {{"--on"},
          {"--out"},
          {"--paper"},
          {"--who"},
          {"--batch"},
          {"--order"},
          {"--labels"},
          {"--margins"},
          {"--gaps"},
          {"--first"},
          {"--landscape", false},
          {"--large", false},
          {"--next-too", false},
          {"--no-cut-lines", false}}},
        "BOOK KIND --on DAY --out FILE.pdf [--paper a4|letter|a5] [--landscape] [--large] "
        "[--who INITIALS] [--next-too] [--batch NAME] [--order NAME] [--labels COLUMNSxROWS] "
        "[--margins L,T,R,B] [--gaps ACROSS,DOWN] [--first N] [--no-cut-lines]",
        "a list or card on paper: week, clips, placements, catches, recells, stocking, loading, "
        "nuc_cards, batch_card, order, year",
        false,
        run};
    return verb;
}

}  // namespace tenthday
