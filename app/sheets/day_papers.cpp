#include "sheets/day_papers.h"

#include "screen_text/paper_text.h"
#include "screen_text/sheet_text.h"
#include "sheets/cards.h"
#include "sheets/clip_layout.h"
#include "sheets/day_lists.h"
#include "sheets/week_layout.h"

namespace tenthday {
namespace {

using LayOutWeek = std::vector<Page> (*)(const WeekContent&, const PaperForm&, const PaperRuler&);

/// One week or two, a stack each: the second begins on a page of its own.
PagesFor weeksOf(const OutlookPtr& outlook, const PaperWish& wish, LayOutWeek layOut) {
    std::vector<WeekContent> weeks{weekContent(*outlook, isoWeekOf(wish.day), wish.choice.who)};
    if (wish.choice.nextWeekToo)
        weeks.push_back(weekContent(*outlook, isoWeekOf(wish.day + Days{7}), wish.choice.who));
    return [weeks, layOut](const PaperForm& form, const PaperRuler& ruler) {
        std::vector<Page> pages;
        for (const auto& week : weeks)
            for (auto& page : layOut(week, form, ruler)) pages.push_back(std::move(page));
        return pages;
    };
}

PagesFor listOf(ListPaper list) {
    return [list = std::move(list)](const PaperForm& form, const PaperRuler& ruler) {
        return layOutList(list, form, ruler);
    };
}

Result<DayPaper> cardsOf(const OutlookPtr& outlook, const PaperWish& wish) {
    const PaperForm form{wish.choice.form.paper, wish.choice.form.landscape};
    if (const auto good = checkLabels(wish.choice.labels, form); !good) return good.error();
    auto cards = nucCards(*outlook, wish.day);
    if (cards.empty()) cards.push_back({{}, {}, {paper_text::none(PaperKind::NucCards)}, {}});
    return DayPaper{
        paper_text::title(PaperKind::NucCards, wish.day), form,
        [cards, grid = wish.choice.labels](const PaperForm& on, const PaperRuler& ruler) {
            return layOutLabels(cards, grid, on, ruler);
        }};
}

}  // namespace

Result<DayPaper> dayPaper(const OutlookPtr& outlook, const PaperWish& wish) {
    const auto& form = wish.choice.form;
    const auto kind = wish.choice.kind;
    const auto list = [&](ListPaper paper) {
        auto title = paper.title;
        return DayPaper{title, form, listOf(std::move(paper))};
    };
    switch (kind) {
        case PaperKind::Week:
            return DayPaper{sheet_text::week(isoWeekOf(wish.day)), form,
                            weeksOf(outlook, wish, layOutWeek)};
        case PaperKind::Clips:
            return DayPaper{sheet_text::week(isoWeekOf(wish.day)), clipForm(form.large),
                            weeksOf(outlook, wish, layOutClips)};
        case PaperKind::Placements:
            return list(wish.placements ? *wish.placements
                                        : placementPaper(*outlook, wish.day, wish.ways));
        case PaperKind::Catches:
            return list(catchPaper(*outlook, wish.day));
        case PaperKind::Recells:
            return list(recellPaper(*outlook, wish.day, wish.ways));
        case PaperKind::Stocking:
            return list(stockingPaper(*outlook, wish.day));
        case PaperKind::Loading:
            return list(loadingPaper(*outlook, wish.day));
        case PaperKind::NucCards:
            return cardsOf(outlook, wish);
        case PaperKind::BatchCard: {
            const auto* batch = wish.batch ? outlook->find(*wish.batch) : nullptr;
            if (batch == nullptr) return Error{"a batch card needs a batch"};
            return list(batchCard(*outlook, *batch));
        }
        case PaperKind::Order: {
            const auto order = wish.order ? outlook->snapshot.find(*wish.order) : nullptr;
            if (!order) return Error{"a confirmation needs an order"};
            return list(orderPaper(*outlook, *order));
        }
        case PaperKind::Year:
            return list(yearPaper(*outlook));
    }
    return Error{"there is no such paper"};
}

}  // namespace tenthday
