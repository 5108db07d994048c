#include "exchange/field_text.h"
#include "headless/verb.h"
#include "screen_text/sheet_text.h"
#include "sheets/page_painter.h"
#include "sheets/week_layout.h"

namespace tenthday {
namespace {

struct Wish {
    IsoWeek week;
    std::string path;
    Paper paper = Paper::A4;
};

Result<Wish> readWish(const Arguments& arguments) {
    Wish wish;
    const auto week = weekOption(arguments);
    if (!week) return week.error();
    wish.week = week.value();
    const auto path = arguments.value("--out");
    if (!path) return optionError("--out", "is missing");
    if (!QString::fromStdString(*path).endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive))
        return optionError("--out", "a name that ends in .pdf is needed, not " + inQuotes(*path));
    wish.path = *path;
    if (const auto text = arguments.value("--paper"))
        if (const auto complaint = readField(*text, wish.paper))
            return optionError("--paper", *complaint);
    return wish;
}

Answer run(const Call& call) {
    const auto wish = readWish(call.arguments);
    if (!wish) return Answer::wrongUse(wish.error());
    const auto& [week, path, paper] = wish.value();
    const auto outlook = readOutlook(call, daysOf(week).last);
    if (!outlook) return Answer::failed(outlook.error());
    const PaperRuler ruler;
    const auto pages = layOutWeek(weekContent(*outlook.value(), week), paper, ruler);
    const auto written =
        writePdf(QString::fromStdString(path), pages, paper, sheet_text::week(week), ruler);
    return written ? Answer{} : Answer::failed(written.error());
}

}  // namespace

const HeadlessVerb& sheetVerb() {
    static const HeadlessVerb verb{"sheet",
                                   {{"BOOK"}, {{"--week"}, {"--out"}, {"--paper"}}},
                                   "BOOK --week YYYY-Www --out FILE.pdf [--paper a4|letter|a5]",
                                   "the week's sheet, to take along",
                                   false,
                                   run};
    return verb;
}

}  // namespace tenthday
