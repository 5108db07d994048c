/// @file trouble_line.h  Batches in trouble, told along the head of a lane: a sign and words each,
/// so that none has to be searched.
#pragma once
#include "chart/lane.h"

namespace tenthday {

struct Trouble {
    TargetKey key;
    QString batch;  ///< its number; empty where it is of none
    QString words;
    Role role = Role::Caution;
    qreal x = 0;     ///< where its batch stands: the words stand as near as they can
    int weight = 0;  ///< the weightiest get their room first
    const Finding* finding = nullptr;  ///< its kind; null: weather makes the batch late

    struct Joined {
        TargetKey key;
        QString batch;  ///< empty where its batch is named already
    };
    std::vector<Joined> others{};  ///< that share the words; its place is the first's

    void join(const Trouble& other);
    /// Of its batches, each once; one empty name where it is of none.
    [[nodiscard]] QStringList names() const;
};

/// Lays them side by side. Batches alike share their words; as many are named as have room. Where
/// not all have it, the worst few are told, then of the rest how many batches there are of each
/// kind: such a count is a place of all it counts, the worst in front. Each stands near its batch;
/// where one is in danger or room is short, all stand from the left edge on, the urgent first, then
/// by day; words that stand away from their batch name the day it is about. None stands on the
/// lines of today and the chosen day.
/// @param taken  what stands there already
void layTroubles(const LaneInput& input, std::vector<Trouble> troubles, const QRectF& line,
                 const std::vector<QRectF>& taken, Sheet& sheet);

/// Of how many batches places of trouble are; what is of none counts by itself.
[[nodiscard]] int countBatches(const std::vector<TargetKey>& keys);

/// Batches in sight that weather makes late; first those whose queens are not caught yet, the
/// latest of them before others.
[[nodiscard]] std::vector<Trouble> lateBatches(const LaneInput& input);

}  // namespace tenthday
