#include "look/contrast.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tenthday {
namespace {

using Pair = std::pair<Role, Role>;

constexpr auto kTextPairs = std::to_array<Pair>({
    {Role::Ink, Role::Ground},           {Role::Ink, Role::WeekendGround},
    {Role::Ink, Role::DayOffGround},     {Role::Ink, Role::LaneGround},
    {Role::Ink, Role::CardGround},       {Role::Ink, Role::ChosenGround},
    {Role::InkSoft, Role::Ground},       {Role::InkSoft, Role::WeekendGround},
    {Role::InkSoft, Role::DayOffGround}, {Role::InkSoft, Role::LaneGround},
    {Role::InkSoft, Role::CardGround},   {Role::Danger, Role::Ground},
    {Role::Danger, Role::WeekendGround}, {Role::Danger, Role::DayOffGround},
    {Role::Danger, Role::CardGround},    {Role::DangerInk, Role::DangerGround},
    {Role::Caution, Role::Ground},       {Role::Caution, Role::WeekendGround},
    {Role::Caution, Role::DayOffGround}, {Role::Caution, Role::CardGround},
    {Role::Good, Role::Ground},          {Role::Good, Role::CardGround},
    {Role::CellsInk, Role::OpenCells},   {Role::CellsInk, Role::SealedCells},
    {Role::VirginInk, Role::Virgin},     {Role::DueToFlyInk, Role::DueToFly},
    {Role::LayingInk, Role::Laying},     {Role::JudgedGoodInk, Role::JudgedGood},
    {Role::NoQueenInk, Role::NoQueen},   {Role::LikelyInk, Role::Likely},
    {Role::WaitingInk, Role::Waiting},   {Role::ReadyInk, Role::Ready},
    {Role::TodayInk, Role::Today},       {Role::DueToFlyInk, Role::Virgin},
    {Role::DueToFlyInk, Role::Laying},
});

constexpr auto kMarkPairs = std::to_array<Pair>({
    {Role::Today, Role::Ground},
    {Role::Today, Role::WeekendGround},
    {Role::Chosen, Role::Ground},
    {Role::Chosen, Role::WeekendGround},
    {Role::Selection, Role::Ground},
    {Role::Selection, Role::SealedCells},
    {Role::Selection, Role::WeekendGround},
    {Role::Ghost, Role::Ground},
    {Role::NoQueenHatch, Role::NoQueen},
    {Role::DroneLayerHatch, Role::DroneLayer},
    {Role::LikelyHatch, Role::Likely},
    {Role::DangerGround, Role::Ground},
    {Role::DangerGround, Role::WeekendGround},
    {Role::FlyingDay, Role::Ground},
    {Role::FlyingDay, Role::WeekendGround},
    {Role::MarkEdge, Role::CardGround},
    {Role::MarkEdge, Role::WeekendGround},
});

double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

}  // namespace

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrastRatio(const QColor& a, const QColor& b) {
    const double x = luminance(a);
    const double y = luminance(b);
    return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}

std::span<const Pair> textPairs() { return kTextPairs; }
std::span<const Pair> markPairs() { return kMarkPairs; }

}  // namespace tenthday
