#include "records/donor_gifts.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "base/natural_order.h"
#include "records/yard_roles.h"

namespace tenthday {
namespace {

class Counter {
public:
    Counter(const Snapshot& snapshot, Day day)
        : snapshot_(snapshot),
          cycle_{day - Days{static_cast<int>(snapshot.facts()[Fact::WorkerD])}, day} {}

    std::vector<DonorGifts> run() {
        for (const auto& yard : snapshot_.all<Yard>()) {
            yards_.insert(yard->label);
            if (hasRole(yard->roles, "donor")) of(yard->label);
        }
        for (const auto& row : snapshot_.all<Stocking>())
            take(row->donor, row->day, row->beesMl, row->broodFrames);
        for (const auto& row : snapshot_.all<NucCare>())
            if (row->kind == NucCareKind::Boost || row->kind == NucCareKind::BroodIn)
                take(row->donor, row->day, row->beesMl, row->broodFrames);
        for (const auto& row : snapshot_.all<MakeUp>())
            take(row->donors, row->day, row->beesMl, row->broodFrames);
        for (const auto& row : snapshot_.all<BuilderNote>())
            if (row->kind == BuilderNoteKind::BroodIn)
                take(row->donor, row->day, {}, Frames{1});
            else if (row->kind == BuilderNoteKind::BeesIn)
                take(row->donor, row->day, {}, {});
        return sorted();
    }

private:
    DonorGifts& of(const std::string& donor) {
        auto& gifts = all_[naturalKey(donor) + '\0' + donor];  // N1 and N01 are two
        if (gifts.donor.empty()) gifts.donor = donor;
        return gifts;
    }
    void take(const std::string& field, Day day, std::optional<BeesMl> bees,
              std::optional<Frames> brood) {
        if (!snapshot_.season().contains(day)) return;
        for (const auto& donor : donorsIn(field)) {
            auto& gifts = of(donor);
            gifts.last = std::max(gifts.last.value_or(day), day);
            if (day < cycle_.first || day > cycle_.last) continue;
            gifts.beesMl += bees.value_or(BeesMl{0}).value;
            gifts.broodFrames += brood.value_or(Frames{0}).value;
        }
    }
    std::vector<DonorGifts> sorted() {
        std::vector<DonorGifts> gifts;
        for (auto& [key, one] : all_) {
            const auto holds = donorHolds(snapshot_, one.donor, cycle_.last);
            if (!holds.empty()) one.hold = holds.front().note;
            one.isYard = yards_.contains(one.donor);
            gifts.push_back(std::move(one));
        }
        std::stable_sort(gifts.begin(), gifts.end(), [](const auto& a, const auto& b) {
            const auto key = [](const DonorGifts& g) {
                return std::tuple(!g.mayGive(), g.broodFrames, g.beesMl,
                                  g.last.value_or(kFirstDay));
            };
            return key(a) < key(b);
        });
        return gifts;
    }

    const Snapshot& snapshot_;
    DayWindow cycle_;
    std::set<std::string> yards_;
    std::map<std::string, DonorGifts> all_;  ///< by label, as people order them
};

}  // namespace

std::vector<std::string> donorsIn(std::string_view field) {
    std::vector<std::string> donors;
    while (!field.empty()) {
        const auto end = field.find_first_of(",;");
        auto donor = field.substr(0, end);
        const auto first = donor.find_first_not_of(' ');
        if (first != std::string_view::npos)
            donors.emplace_back(donor.substr(first, donor.find_last_not_of(' ') - first + 1));
        field.remove_prefix(end == std::string_view::npos ? field.size() : end + 1);
    }
    return donors;
}

MayGive mayStillGive(const DonorGifts& donor, const Facts& facts) {
    if (!donor.mayGive()) return {};
    const auto left = [&](Fact fact, std::int32_t given) {
        const auto most = static_cast<std::int32_t>(facts[fact]);
        return donor.isYard ? most : std::max(most - given, 0);
    };
    return {BeesMl{left(Fact::DonorBeesMl, donor.beesMl)},
            Frames{left(Fact::DonorFrames, donor.broodFrames)}};
}

std::vector<DonorGifts> donorGifts(const Snapshot& snapshot, Day day) {
    return Counter(snapshot, day).run();
}

}  // namespace tenthday
