#include "look/palette.h"

namespace tenthday {
namespace {

struct RoleColours {
    Role role;
    QRgb light;
    QRgb dark;
    QRgb paper;
};

constexpr RoleColours kColours[] = {
    // clang-format off
    {Role::Ground,          0xFFF9F6EF, 0xFF1B1F1D, 0xFFFFFFFF},
    {Role::WeekendGround,   0xFFF2EDE1, 0xFF212624, 0xFFF5F3EE},
    {Role::DayOffGround,    0xFFEAE3D1, 0xFF2B312C, 0xFFEAE6DA},
    {Role::LaneGround,      0xFFF5F2E9, 0xFF1F2422, 0xFFFBFAF7},
    {Role::Grid,            0xFFE6E1D4, 0xFF2F3633, 0xFFDDD9CF},
    {Role::GridStrong,      0xFFC9C2B1, 0xFF515A55, 0xFFB5AF9F},
    {Role::Ink,             0xFF232B27, 0xFFECE9E0, 0xFF161A18},
    {Role::InkSoft,         0xFF5A635D, 0xFFA9B0AA, 0xFF4C544F},
    {Role::Danger,          0xFFA92C20, 0xFFFFAB9A, 0xFF9A2318},
    {Role::DangerGround,    0xFFB4372B, 0xFFFFAB9A, 0xFFA92C20},
    {Role::DangerInk,       0xFFFFFFFF, 0xFF25100C, 0xFFFFFFFF},
    {Role::Caution,         0xFF865204, 0xFFF0BE62, 0xFF754600},
    {Role::Good,            0xFF22694A, 0xFF86CBA6, 0xFF1C5C40},
    {Role::OpenCells,       0xFFEBCB7A, 0xFFDDBB66, 0xFFEBCB7A},
    {Role::OpenDots,        0xFFFBF3DC, 0xFFF3E3B4, 0xFFFFFFFF},
    {Role::SealedCells,     0xFFCB8C2C, 0xFFBD8029, 0xFFCB8C2C},
    {Role::CellsInk,        0xFF2A1D06, 0xFF1C1203, 0xFF2A1D06},
    {Role::Ribbon,          0xD0D09636, 0xC8C88A30, 0xD0D09636},
    {Role::Virgin,          0xFFBFD0DC, 0xFF9CB0BD, 0xFFBFD0DC},
    {Role::VirginInk,       0xFF17242D, 0xFF0E1920, 0xFF17242D},
    {Role::DueToFly,        0xFF518BB5, 0xFF4882AC, 0xFF518BB5},
    {Role::DueToFlyInk,     0xFF07141D, 0xFF040D13, 0xFF07141D},
    {Role::Laying,          0xFF94C3A7, 0xFF73A888, 0xFF94C3A7},
    {Role::LayingInk,       0xFF0D2418, 0xFF081B11, 0xFF0D2418},
    {Role::JudgedGood,      0xFF2B7C57, 0xFF2A7B56, 0xFF2B7C57},
    {Role::JudgedGoodInk,   0xFFFFFFFF, 0xFFFFFFFF, 0xFFFFFFFF},
    {Role::NoQueen,         0xFFF1EADB, 0xFF2F322D, 0xFFF6F2E8},
    {Role::NoQueenHatch,    0xFF8A8272, 0xFF9C9685, 0xFF857D6D},
    {Role::NoQueenInk,      0xFF3A352B, 0xFFECE6D6, 0xFF322D24},
    {Role::DroneLayer,      0xFFE6CFC6, 0xFF4A332D, 0xFFEEDBD4},
    {Role::DroneLayerHatch, 0xFF8E4A3C, 0xFFD49484, 0xFF8E4A3C},
    {Role::Waiting,         0xFFE6E1D4, 0xFF3B423E, 0xFFE4E0D6},
    {Role::WaitingInk,      0xFF4A4F49, 0xFFDAD9CF, 0xFF444943},
    {Role::Ready,           0xFFFFFFFF, 0xFFC3BFB2, 0xFFFFFFFF},
    {Role::ReadyEdge,       0xFF7F7968, 0xFFC3BFB2, 0xFF7F796A},
    {Role::ReadyInk,        0xFF1B231F, 0xFF1B231F, 0xFF101412},
    {Role::Likely,          0xFFFFFFFF, 0xFF555D57, 0xFFFFFFFF},
    {Role::LikelyHatch,     0xFF979384, 0xFFB2B1A6, 0xFF949081},
    {Role::LikelyInk,       0xFF3F4843, 0xFFECE9E0, 0xFF2E3531},
    {Role::NotStockedHatch, 0xFFD9D2C1, 0xFF3E4641, 0xFFD3CCBB},
    {Role::OutsideHatch,    0xFFDED8C9, 0xFF394039, 0xFFD8D2C4},
    {Role::FlyingDay,       0xFF9C8200, 0xFFCDBB52, 0xFF9C8200},
    {Role::SpentGround,     0xFFDCD6C8, 0xFF343B37, 0xFFDCD6C8},
    {Role::Separator,       0xFFF9F6EF, 0xFF1B1F1D, 0xFFFFFFFF},
    {Role::Today,           0xFF232B27, 0xFFECE9E0, 0xFF232B27},
    {Role::TodayInk,        0xFFFFFFFF, 0xFF1B1F1D, 0xFFFFFFFF},
    {Role::Chosen,          0xFF3A443F, 0xFFC9CCC4, 0xFF3A443F},
    {Role::ChosenGround,    0xFFFFFFFF, 0xFF2A302D, 0xFFFFFFFF},
    {Role::Selection,       0xFF1B231F, 0xFFF7F4EA, 0xFF1B231F},
    {Role::Ghost,           0xFF6B746E, 0xFF99A19B, 0xFF6B746E},
    {Role::CardGround,      0xFFFFFFFF, 0xFF2A302D, 0xFFFFFFFF},
    {Role::CardEdge,        0xFFBDB6A5, 0xFF565F5A, 0xFFBDB6A5},
    {Role::MarkBlue,        0xFF2D6CC0, 0xFF4C8BDC, 0xFF2D6CC0},
    {Role::MarkWhite,       0xFFFFFFFF, 0xFFFFFFFF, 0xFFFFFFFF},
    {Role::MarkYellow,      0xFFF2C21B, 0xFFF2C832, 0xFFF2C21B},
    {Role::MarkRed,         0xFFC8352B, 0xFFDF4F44, 0xFFC8352B},
    {Role::MarkGreen,       0xFF2E8B4A, 0xFF45A863, 0xFF2E8B4A},
    {Role::MarkEdge,        0xFF5A635D, 0xFFA9B0AA, 0xFF4C544F},
    // clang-format on
};
static_assert(std::size(kColours) == kRoleCount, "each role has its three colours");

Palette makePalette(QRgb RoleColours::*set) {
    std::array<QRgb, kRoleCount> colours{};
    for (const auto& entry : kColours) colours[static_cast<std::size_t>(entry.role)] = entry.*set;
    return Palette(colours);
}

}  // namespace

Palette::Palette(const std::array<QRgb, kRoleCount>& colours) {
    for (std::size_t i = 0; i < kRoleCount; ++i) colours_[i] = QColor::fromRgba(colours[i]);
}

const Palette& paletteOf(Look look) {
    static const Palette light = makePalette(&RoleColours::light);
    static const Palette dark = makePalette(&RoleColours::dark);
    static const Palette paper = makePalette(&RoleColours::paper);
    return look == Look::Light ? light : look == Look::Dark ? dark : paper;
}

Look lookOf(const QPalette& desktop) {
    const auto ground = desktop.color(QPalette::Window).lightnessF();
    return desktop.color(QPalette::WindowText).lightnessF() > ground ? Look::Dark : Look::Light;
}

QPalette widgetPalette(Look look) {
    const auto& colours = paletteOf(look);
    QPalette palette;
    palette.setColor(QPalette::Window, colours[Role::Ground]);
    palette.setColor(QPalette::WindowText, colours[Role::Ink]);
    palette.setColor(QPalette::Base, colours[Role::CardGround]);
    palette.setColor(QPalette::AlternateBase, colours[Role::WeekendGround]);
    palette.setColor(QPalette::Text, colours[Role::Ink]);
    palette.setColor(QPalette::PlaceholderText, colours[Role::InkSoft]);
    palette.setColor(QPalette::Button, colours[Role::WeekendGround]);
    palette.setColor(QPalette::ButtonText, colours[Role::Ink]);
    palette.setColor(QPalette::ToolTipBase, colours[Role::CardGround]);
    palette.setColor(QPalette::ToolTipText, colours[Role::Ink]);
    palette.setColor(QPalette::Highlight, colours[Role::Today]);
    palette.setColor(QPalette::HighlightedText, colours[Role::TodayInk]);
    palette.setColor(QPalette::Link, colours[Role::Good]);
    palette.setColor(QPalette::Disabled, QPalette::WindowText, colours[Role::InkSoft]);
    palette.setColor(QPalette::Disabled, QPalette::ButtonText, colours[Role::InkSoft]);
    palette.setColor(QPalette::Disabled, QPalette::Text, colours[Role::InkSoft]);
    return palette;
}

QColor printInk() { return Qt::black; }
QColor printGround() { return Qt::white; }

}  // namespace tenthday
