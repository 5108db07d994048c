/// @file glance.h  The sample season's chart as it is read: what its texts say and where they
/// stand.
#pragma once
#include <gtest/gtest.h>

#include <QLocale>
#include <set>

#include "app/chart/layout_text.h"
#include "chart/chart_layout.h"
#include "chart/trouble_line.h"
#include "support/days.h"
#include "support/large_season.h"
#include "support/sample_orders.h"
#include "support/sample_outlook.h"

namespace tenthday::test {

/// A layout's texts as they are read.
inline std::set<std::string> textsOf(const Layout& layout) {
    std::set<std::string> texts;
    for (const auto& run : layout.texts) texts.insert(run.text.toStdString());
    return texts;
}

inline bool anyStarts(const std::set<std::string>& texts, const std::string& with) {
    return std::any_of(texts.begin(), texts.end(),
                       [&](const std::string& text) { return text.starts_with(with); });
}

class Glance : public ::testing::Test {
protected:
    Glance() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        options.size = {1366, 768};
        options.orders = sampleOrders();
    }
    ~Glance() override { QLocale::setDefault(QLocale::c()); }

    Layout lay(const Outlook& of, DayWindow days) const {
        const auto span = plotSpan(of, options, ruler);
        return layOut(of, DayAxis(days, span.left, span.width), options, ruler);
    }
    Layout lay(DayWindow days = {day("2027-05-24"), day("2027-07-31")}) const {
        return lay(*outlook, days);
    }

    /// A made-up season with so much in it.
    static OutlookPtr large(int batches, int nucs) {
        LargeSeason size;
        size.batches = batches;
        size.nucs = nucs;
        size.weatherYears = 2;
        OutlookMemo memo;
        return outlookOf(largeSeason(size), memo);
    }
    /// A line of troubles with so much room, px.
    Layout troubleLine(qreal width, std::vector<Trouble> of) const {
        const DayAxis axis(outlook->season, 100, 900);
        Ribbon ribbon;
        YardStacks stacks;
        stacks.show(outlook);
        const LaneInput input{*outlook, axis, options, axis.visible(), 90, 0, ribbon, stacks};
        Sheet sheet(ruler, Snap{1});
        layTroubles(input, std::move(of), {100, 0, width, 14}, {}, sheet);
        return std::move(sheet).finish(axis, {100, 0, width, 14}, 14);
    }

    OutlookPtr outlook = sampleOutlook();
    ChartOptions options;
    FixedRuler ruler;
};

/// The texts of a layer with where they stand, in painting order.
inline std::vector<std::pair<QRectF, std::string>> textsIn(const Layout& layout, Layer layer) {
    std::vector<std::pair<QRectF, std::string>> texts;
    for (const auto& item : layout.items)
        if (item.shape == Shape::Text && item.layer == layer)
            texts.push_back(
                {item.rect,
                 layout.texts[static_cast<std::size_t>(item.detail)].text.toStdString()});
    return texts;
}

}  // namespace tenthday::test
