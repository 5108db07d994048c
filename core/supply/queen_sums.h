/// @file queen_sums.h  How many queens of several batches are in hand by a day, over all possible
/// seasons. Inner to the room.
#pragma once
#include <map>
#include <memory>
#include <utility>
#include <vector>

#include "supply/claims.h"
#include "supply/queen_stock.h"

namespace tenthday {

/// Which queens will do.
struct QueenWant {
    std::optional<Id<Line>> line;  ///< none: any
    bool proven = false;

    [[nodiscard]] bool isAny() const { return !line && !proven; }
    [[nodiscard]] bool takes(const QueenPart& part) const {
        return (!line || line == part.line) && (!proven || part.isProven);
    }
    /// Whatever does for the other does for this.
    [[nodiscard]] bool includes(const QueenWant& other) const {
        return (!line || line == other.line) && (!proven || other.proven);
    }
    friend auto operator<=>(const QueenWant&, const QueenWant&) = default;
};

/// First three cumulants of a count: mean, variance, third central moment. They add where counts
/// do not hang on each other.
struct Cumulants {
    double mean = 0;
    double variance = 0;
    double third = 0;

    Cumulants& operator+=(const Cumulants& other) {
        mean += other.mean;
        variance += other.variance;
        third += other.third;
        return *this;
    }
};

/// A count that is the sum of many: normal with the skewness put right (Edgeworth's series to the
/// third cumulant). Over more than kMostExact batches it differs from the exact sum by less than
/// 0.002 in any chance.
[[nodiscard]] CountSpread spreadOf(const Cumulants& sum);

/// Of a part: how its cumulants follow from the share of a season.
class PartMoments {
public:
    explicit PartMoments(const QueenPart& part);
    /// @param seen  what is known of the part by the day
    [[nodiscard]] Cumulants at(double share, const KnownQueens& seen) const;

private:
    double mated_[3];   ///< factorial moments
    double judged_[3];  ///< moments of the share judged good
};

/// Given the season, batches do not hang on each other, so their queens add. Up to kMostExact
/// batches that hang on luck are summed exactly (convolution), more by their cumulants. Seasons
/// that are alike for those batches are reckoned once.
class QueenSums {
public:
    static constexpr std::size_t kMostExact = 7;

    /// @param stock  must outlive this
    explicit QueenSums(const QueenStock& stock);

    /// Queens in hand by a day, over all seasons.
    [[nodiscard]] const CountSpread& overall(const QueenWant& want, Day day);

    /// The queens that will do, and the others beside them, in one season.
    struct Apart {
        double weight = 0;  ///< 0..1
        CountSpread fit{0};
        CountSpread other{0};
        CountSpread own{0};       ///< of those that fit: meant for the order
        CountSpread fitIfOwn{0};  ///< those that fit, should all be there that are meant for it
    };
    /// Their chances sum over these, whose weights sum to 1. Of claimed batches only what serves
    /// the order counts. Where a batch has queens that fit and others, what is claimed later is
    /// taken of both: so much less can be there, never more.
    [[nodiscard]] std::vector<Apart> apart(const QueenWant& want, Day day,
                                           std::span<const BatchClaim> claims = {}) const;

private:
    using Parts = std::vector<std::size_t>;
    struct Sum {
        CountSpread certain{0};
        Parts open;
    };
    /// Sums of parts that are over, by season; more join as days go on.
    struct Bulk {
        Parts byEnd;
        std::size_t joined = 0;
        Day day = kFirstDay;
        std::vector<Cumulants> seasons;
    };
    /// @param claims  batches that are left out
    [[nodiscard]] Sum sumOf(const QueenWant& want, bool fits, Day day,
                            std::span<const BatchClaim> claims = {}) const;
    [[nodiscard]] std::vector<double> sharesOf(const Parts& parts, Day day,
                                               std::size_t season) const;
    [[nodiscard]] CountSpread exact(const Sum& sum, std::span<const double> shares, Day day) const;
    [[nodiscard]] CountSpread exactOverall(const Sum& sum, Day day) const;
    [[nodiscard]] CountSpread bulkOverall(const QueenWant& want, const Sum& sum, Day day);
    [[nodiscard]] CountSpread in(const Sum& sum, Day day, std::size_t season) const;
    void addClaimed(const QueenWant& want, Day day, std::size_t season, const BatchClaim& claim,
                    Apart& apart) const;

    const QueenStock* stock_;
    std::vector<PartMoments> moments_;
    std::map<std::pair<QueenWant, Day>, CountSpread> known_;
    std::map<QueenWant, Bulk> bulks_;
    Day end_ = kFirstDay;  ///< nothing comes after it
};

}  // namespace tenthday
