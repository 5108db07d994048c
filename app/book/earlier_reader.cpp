#include "book/earlier_reader.h"

#include <algorithm>

#include "outlook/supply_of.h"

namespace tenthday {

std::vector<Ptr<Season>> earlierSeasons(const Snapshot& shown) {
    std::vector<Ptr<Season>> seasons;
    if (shown.seasonId().isNone()) return seasons;
    for (const auto& season : shown.all<Season>())
        if (season->until < shown.season().first) seasons.push_back(season);
    std::sort(seasons.begin(), seasons.end(),
              [](const auto& a, const auto& b) { return a->from < b->from; });
    return seasons;
}

Result<std::shared_ptr<const EarlierOutcomes>> readEarlier(
    BookFile& book, const Snapshot& shown, const std::function<bool()>& isCancelled) {
    std::shared_ptr<EarlierOutcomes> earlier;
    for (const auto& season : earlierSeasons(shown)) {
        if (isCancelled && isCancelled()) return std::shared_ptr<const EarlierOutcomes>();
        const auto snapshot = book.read({season->id, false});
        if (!snapshot) return snapshot.error();
        if (!earlier) earlier = std::make_shared<EarlierOutcomes>();
        OutlookMemo memo;
        addOutcomes(*outlookOf(snapshot.value(), memo), *earlier);
    }
    return std::shared_ptr<const EarlierOutcomes>(earlier);
}

}  // namespace tenthday
