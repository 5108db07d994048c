/// @file yard_lane.h  One yard: its nucs day by day as a stack, the ready number in the white.
#pragma once
#include "chart/yard_picture.h"

namespace tenthday {

class YardLane : public Lane {
public:
    /// @param yard  place in `outlook.nucs.yards`
    explicit YardLane(std::size_t yard) : yard_(yard) {}
    [[nodiscard]] LaneHeight height(const LaneInput& input, const TextRuler& ruler) const override;
    void lay(const LaneInput& input, const QRectF& area, Sheet& sheet) override;
    [[nodiscard]] std::optional<qreal> stillLies(const LaneInput& input,
                                                 const QRectF& area) override;
    [[nodiscard]] bool staysUnseen(const LaneInput& input, const QRectF& area) const override;
    void write(const LaneInput& input, Sheet& sheet) override;
    [[nodiscard]] std::optional<qreal> stillWritten(const LaneInput& input) override;
    [[nodiscard]] std::size_t yard() const { return yard_; }

private:
    /// What laying leans on, beside what LaneInput::isAsBefore tells of.
    struct Laid {
        QRectF area;
        Ptr<Yard> yard;
        int state = 0;  ///< as the stacks give it
        bool namesDays = true;
        friend bool operator==(const Laid&, const Laid&) = default;
    };
    /// Likewise writing, where it lies as it did.
    struct Written {
        std::vector<Day> cellsDays;
        std::vector<Ribbon::Asked> asked;  ///< of the ribbon
        qreal down;                        ///< px that the lane lies lower since
    };
    [[nodiscard]] Laid leaning(const LaneInput& input, const QRectF& area) const;

    std::size_t yard_;
    YardPicture picture_;
    std::optional<Laid> laid_;
    std::optional<Written> written_;  ///< none: it lies elsewise since
};

}  // namespace tenthday
