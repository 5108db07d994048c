/// @file text_ruler.h  How wide a text is. The layout asks only this, so tests need no font.
#pragma once
#include <QHash>
#include <QString>
#include <array>
#include <memory>
#include <mutex>

#include "look/type.h"

namespace tenthday {

class TextRuler {
public:
    virtual ~TextRuler() = default;
    [[nodiscard]] virtual qreal width(const QString& text, Type type) const = 0;
    /// From the baseline to the top of a digit or capital.
    [[nodiscard]] virtual qreal capHeight(Type type) const = 0;
    [[nodiscard]] virtual qreal line(Type type) const = 0;
    /// The text, its end replaced by an ellipsis where it is wider than `room`.
    [[nodiscard]] QString elided(const QString& text, Type type, qreal room) const;
};

/// Measures with a real typeface; remembers what it measured. May be asked from several threads.
class FontRuler : public TextRuler {
public:
    explicit FontRuler(const Typeface& face);
    [[nodiscard]] qreal width(const QString& text, Type type) const override;
    [[nodiscard]] qreal capHeight(Type type) const override;
    [[nodiscard]] qreal line(Type type) const override;

private:
    Typeface face_;
    std::array<qreal, kTypeCount> caps_{};
    mutable std::mutex knows_;
    mutable std::array<QHash<QString, qreal>, kTypeCount> widths_;
};

}  // namespace tenthday
