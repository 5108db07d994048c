#include "screen_text/ready_total.h"

#include "screen_text/because.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/words.h"

namespace tenthday::ready_total {
namespace {

/// "22", or "22 +4.6" with the expected number more.
QString numbersText(const ReadyNumbers& numbers) {
    const auto ready = chart_text::number(numbers.ready);
    if (numbers.likely < 0.05) return ready;
    return Words::tr("%1 +%2").arg(ready, chart_text::expected(numbers.likely));
}

}  // namespace

CardText card(const Outlook& outlook, Day day) {
    CardText card;
    card.title = Words::tr("Ready nucs, %1").arg(weekdayAndDay(day));
    const auto index = (day - outlook.season.first).count();
    ReadyNumbers all;
    for (const auto& yard : outlook.nucs.yards) {
        if (index < 0 || index >= static_cast<int>(yard.days.size())) continue;
        const auto& numbers = yard.days[static_cast<std::size_t>(index)].numbers;
        all += numbers;
        card.lines.push_back({QString::fromStdString(yard.yard->label), numbersText(numbers), {}});
    }
    card.lines.insert(card.lines.begin(),
                      {Words::tr("all yards"), numbersText(all),
                       because::hours(outlook.snapshot.facts(), Fact::NucQueenlessH,
                                      Words::tr("queenless at least"))});
    if (all.likely >= 0.05)
        card.lines.push_back(
            {Words::tr("after the plus sign: more, if caught or looked at by the day before"),
             {},
             {}});
    return card;
}

}  // namespace tenthday::ready_total
