/// @file glyph.h  Small marks, our own, drawn as paths.
#pragma once
#include <QPainterPath>

namespace tenthday {

enum class Glyph : std::uint8_t {
    MakeUp,    ///< a builder is made up: an open box
    BroodIn,   ///< brood put in: a diamond
    LookDue,   ///< look for wild cells: a roof
    LookDone,  ///< looked: a tick
    Opened,    ///< what belongs to it is shown below: an angle downwards
    Closed,    ///< an angle to the right
    Wait,      ///< two bars
    Look,      ///< an eye
    Recell,    ///< a hanging cell
    Combine,   ///< two ways that become one
    Warning,   ///< a triangle with a stroke in it
    Doubt,     ///< sure neither way: a ring
    Crossed,   ///< a cross
};

/// The glyph in a square of `size` px about `centre`; strokes are to be drawn `size`/7 px wide.
[[nodiscard]] QPainterPath glyphPath(Glyph glyph, QPointF centre, qreal size);
/// Filled, or stroked along its path.
[[nodiscard]] bool isFilled(Glyph glyph);

}  // namespace tenthday
