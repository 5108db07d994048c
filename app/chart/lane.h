/// @file lane.h  What a lane is asked. A chart is a list of lanes; each stands in a file of its
/// own.
#pragma once
#include <memory>

#include "chart/chart_options.h"
#include "chart/sheet.h"
#include "chart/yard_stacks.h"
#include "outlook/outlook.h"

namespace tenthday {

/// Heights a lane can live with, logical px.
struct LaneHeight {
    qreal least = 0;
    qreal wished = 0;
    qreal most = 0;
    qreal pull = 1;                   ///< its share of room above what all wish
    std::optional<qreal> scrolled{};  ///< where lanes are scrolled anyway; none: the least
};

/// The selected batch's ribbon: where it leaves builders and enters yards, then its course.
struct Ribbon {
    struct Out {
        QPointF right;  ///< lower right corner of the bar
        qreal cells;
        qreal thickness;  ///< of the bar there, px
    };
    struct In {
        qreal left;  ///< of the batch's first column
        qreal top;
        qreal bottom;
        qreal cells;
    };
    std::vector<Out> outs;
    std::vector<In> ins;
    QPainterPath course;  ///< over the yards; empty until they are laid
    /// What was asked of the course, and the answer.
    struct Asked {
        QRectF rect;
        bool met;
    };
    std::vector<Asked> asked;

    void moveEndsDown(qreal by) {
        for (auto& out : outs) out.right.ry() += by;
        for (auto& in : ins) in.top += by, in.bottom += by;
    }
    /// Those of another come after those that are here.
    void takeEnds(const Ribbon& other) {
        outs.insert(outs.end(), other.outs.begin(), other.outs.end());
        ins.insert(ins.end(), other.ins.begin(), other.ins.end());
    }
    [[nodiscard]] bool meets(const QRectF& rect) {
        asked.push_back({rect, course.intersects(rect)});
        return asked.back().met;
    }
    /// Whether what was asked of another gets the same answers here, so much lower.
    [[nodiscard]] bool answersAlike(const std::vector<Asked>& before, qreal down) const {
        return std::all_of(before.begin(), before.end(), [&](const Asked& one) {
            return course.intersects(one.rect.translated(0, down)) == one.met;
        });
    }
};

/// What all lanes read, and the ribbon whose ends they give.
struct LaneInput {
    const Outlook& outlook;
    const DayAxis& axis;
    const ChartOptions& options;
    DayWindow visible;
    qreal titleRight = 0;  ///< right end of row names
    qreal titleLeft = 0;
    Ribbon& ribbon;
    YardStacks& stacks;  ///< shows the outlook
    /// All that lanes lean on beside the season's batches, builders, nucs and findings is as it was
    /// when they were laid last: days and their places, options, type, today, facts, weather. What
    /// is shown instead of (ChartOptions::before) is not: a lane that reads it compares by itself.
    bool isAsBefore = false;

    /// The batch, or null when it is not of this season.
    [[nodiscard]] const BatchOutlook* find(Id<Batch> id) const { return stacks.batch(id); }
    [[nodiscard]] bool isSelected(Id<Batch> batch) const {
        return options.selected && *options.selected == batch;
    }
    /// Whether days of yards are to be places to hit. A frame of a drag is short of time, and they
    /// are thousands: in a drag nobody asks for them.
    [[nodiscard]] bool namesYardDays() const { return !options.before; }
    /// Selected alone or with others.
    [[nodiscard]] bool isMarked(Id<Batch> batch) const { return options.isSelected(batch); }
    /// Today's line or the chosen day's run through: words there want a ground of their own.
    [[nodiscard]] bool isCrossed(const QRectF& rect) const {
        const auto crosses = [&](Day day) {
            const qreal x = axis.xOf(day);
            return rect.left() - 2 < x && x < rect.right() + 2;
        };
        const auto chosen = options.chosenDay;
        return crosses(outlook.snapshot.today()) ||
               (chosen && (crosses(*chosen) || crosses(*chosen + Days{1})));
    }
};

/// Lanes are laid side by side: one changes nothing but itself, its sheet and its ribbon's ends.
/// A lane stays from layout to layout, and its sheets with it. It may keep in itself what it laid
/// and all that hung on, and say that it still lies: what comes of that must be exactly what it
/// would lay afresh. Where it cannot know, it does not.
class Lane {
public:
    virtual ~Lane() = default;
    [[nodiscard]] virtual LaneHeight height(const LaneInput& input,
                                            const TextRuler& ruler) const = 0;
    /// @param area x as the axis, y as given to this lane
    virtual void lay(const LaneInput& input, const QRectF& area, Sheet& sheet) = 0;
    /// By how much lower (see movedDown()) lay() would give again what it gave last, to the sheet
    /// and to the ribbon's ends: those are moved then, and it is not called. None where it would
    /// give something else.
    [[nodiscard]] virtual std::optional<qreal> stillLies(const LaneInput& /*input*/,
                                                         const QRectF& /*area*/) {
        return std::nullopt;
    }
    /// Out of sight: gives the ribbon's ends as lay() would, and no more. Changes nothing of what
    /// is kept. @return false: it is laid all the same
    [[nodiscard]] virtual bool staysUnseen(const LaneInput& /*input*/,
                                           const QRectF& /*area*/) const {
        return false;
    }
    /// y of the middle of its name.
    [[nodiscard]] virtual qreal nameMiddle(const QRectF& area, const TextRuler& ruler) const {
        return area.top() + 2 + ruler.line(Type::Label) / 2;
    }
    /// Numbers and words that keep clear of the ribbon: called once its course is known.
    virtual void write(const LaneInput& /*input*/, Sheet& /*sheet*/) {}
    /// The same of write(). Asked after stillLies() or lay().
    [[nodiscard]] virtual std::optional<qreal> stillWritten(const LaneInput& /*input*/) {
        return std::nullopt;
    }
};

}  // namespace tenthday
