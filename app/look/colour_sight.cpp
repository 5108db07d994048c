#include "look/colour_sight.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tenthday {
namespace {

using Triple = std::array<double, 3>;
using Matrix = std::array<Triple, 3>;
using Pair = std::pair<Role, Role>;

constexpr Matrix kUsual{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
constexpr Matrix kNoRed{{{0.152286, 1.052583, -0.204868},
                         {0.114503, 0.786281, 0.099216},
                         {-0.003882, -0.048116, 1.051998}}};
constexpr Matrix kNoGreen{{{0.367322, 0.860646, -0.227968},
                           {0.280085, 0.672501, 0.047413},
                           {-0.011820, 0.042940, 0.968881}}};
constexpr Matrix kNoBlue{{{1.255528, -0.076749, -0.178779},
                          {-0.078411, 0.930809, 0.147602},
                          {0.004733, 0.691367, 0.303900}}};
/// Luminance as of ITU-R BT.709, which sRGB shares.
constexpr Triple kLuminance{0.2126, 0.7152, 0.0722};
constexpr Matrix kGrey{kLuminance, kLuminance, kLuminance};

constexpr auto kNeighbours = std::to_array<Pair>({
    {Role::OpenCells, Role::SealedCells},  {Role::SealedCells, Role::Virgin},
    {Role::SealedCells, Role::DueToFly},   {Role::SealedCells, Role::Laying},
    {Role::SealedCells, Role::JudgedGood}, {Role::Virgin, Role::DueToFly},
    {Role::Virgin, Role::Laying},          {Role::DueToFly, Role::Laying},
    {Role::DueToFly, Role::JudgedGood},    {Role::Laying, Role::JudgedGood},
    {Role::Ready, Role::SealedCells},      {Role::Ready, Role::Virgin},
    {Role::Ready, Role::DueToFly},         {Role::Ready, Role::Laying},
    {Role::Ready, Role::JudgedGood},       {Role::Ready, Role::Waiting},
    {Role::Likely, Role::SealedCells},     {Role::Likely, Role::Virgin},
    {Role::Likely, Role::DueToFly},        {Role::Likely, Role::Laying},
    {Role::Likely, Role::JudgedGood},      {Role::Likely, Role::Waiting},
    {Role::Waiting, Role::Virgin},         {Role::Waiting, Role::Laying},
});

const Matrix& matrixOf(Sight sight) {
    switch (sight) {
        case Sight::NoRed:
            return kNoRed;
        case Sight::NoGreen:
            return kNoGreen;
        case Sight::NoBlue:
            return kNoBlue;
        case Sight::Grey:
            return kGrey;
        case Sight::Usual:
            break;
    }
    return kUsual;
}

double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}
double gamma(double light) {
    return light <= 0.0031308 ? 12.92 * light : 1.055 * std::pow(light, 1 / 2.4) - 0.055;
}

Triple linearOf(const QColor& colour) {
    return {linear(colour.redF()), linear(colour.greenF()), linear(colour.blueF())};
}

Triple times(const Matrix& matrix, const Triple& light) {
    Triple result{};
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t k = 0; k < 3; ++k) result[i] += matrix[i][k] * light[k];
    return result;
}

/// L*, a*, b* (CIE 15) under D65.
Triple labOf(const QColor& colour) {
    constexpr Matrix kToXyz{{{0.4124564, 0.3575761, 0.1804375},
                             {0.2126729, 0.7151522, 0.0721750},
                             {0.0193339, 0.1191920, 0.9503041}}};
    constexpr Triple kWhite{0.95047, 1, 1.08883};
    const auto xyz = times(kToXyz, linearOf(colour));
    const auto root = [&](std::size_t i) {
        const double t = xyz[i] / kWhite[i];
        return t > 216.0 / 24389 ? std::cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    };
    return {116 * root(1) - 16, 500 * (root(0) - root(1)), 200 * (root(1) - root(2))};
}

}  // namespace

QColor seenBy(Sight sight, const QColor& colour) {
    const auto seen = times(matrixOf(sight), linearOf(colour));
    const auto channel = [&](std::size_t i) {
        return static_cast<float>(gamma(std::clamp(seen[i], 0.0, 1.0)));
    };
    return QColor::fromRgbF(channel(0), channel(1), channel(2));
}

double colourDifference(const QColor& a, const QColor& b) {
    const auto x = labOf(a);
    const auto y = labOf(b);
    return std::hypot(x[0] - y[0], x[1] - y[1], x[2] - y[2]);
}

std::span<const Pair> neighbours() { return kNeighbours; }

}  // namespace tenthday
