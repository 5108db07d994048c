#include "chart/chart_access.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <map>

#include "chart/chart_parts.h"
#include "chart/hit_test.h"
#include "chart/season_chart.h"
#include "screen_text/chart_hand_text.h"

namespace tenthday {
namespace {

class ChartAccess;

/// One part. Holds its place in the list: after an edit the same place may be another thing.
class PartAccess : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    PartAccess(SeasonChart& chart, int place) : chart_(&chart), place_(place) {}

    [[nodiscard]] bool isValid() const override { return chart_ && part() != nullptr; }
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QWindow* window() const override {
        return chart_ ? chart_->window()->windowHandle() : nullptr;
    }
    [[nodiscard]] QAccessibleInterface* parent() const override {
        return chart_ ? QAccessible::queryAccessibleInterface(chart_.data()) : nullptr;
    }
    [[nodiscard]] QAccessibleInterface* child(int /*index*/) const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* childAt(int /*x*/, int /*y*/) const override {
        return nullptr;
    }
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* /*child*/) const override {
        return -1;
    }
    [[nodiscard]] QAccessible::Role role() const override;
    [[nodiscard]] QAccessible::State state() const override;
    [[nodiscard]] QRect rect() const override;
    [[nodiscard]] QString text(QAccessible::Text kind) const override;
    void setText(QAccessible::Text /*kind*/, const QString& /*text*/) override {}
    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this)
                                                    : nullptr;
    }

    [[nodiscard]] QStringList actionNames() const override;
    void doAction(const QString& name) override;
    [[nodiscard]] QString localizedActionName(const QString& name) const override { return name; }
    [[nodiscard]] QString localizedActionDescription(const QString& /*name*/) const override {
        return {};
    }
    [[nodiscard]] QStringList keyBindingsForAction(const QString& name) const override;

private:
    [[nodiscard]] const ChartPart* part() const;

    QPointer<SeasonChart> chart_;
    int place_;
};

class ChartAccess : public QAccessibleWidget {
public:
    explicit ChartAccess(SeasonChart& chart) : QAccessibleWidget(&chart, QAccessible::List) {}
    ~ChartAccess() override {
        for (const auto& [place, id] : made_) QAccessible::deleteAccessibleInterface(id);
    }

    [[nodiscard]] int childCount() const override { return static_cast<int>(parts().size()); }
    [[nodiscard]] QAccessibleInterface* child(int place) const override {
        if (place < 0 || place >= childCount()) return nullptr;
        const auto known = made_.find(place);
        if (known != made_.end()) return QAccessible::accessibleInterface(known->second);
        auto* part = new PartAccess(chart(), place);
        made_[place] = QAccessible::registerAccessibleInterface(part);
        return part;
    }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override {
        for (const auto& [place, id] : made_)
            if (QAccessible::accessibleInterface(id) == child) return place;
        return -1;
    }
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override {
        for (int place = 0; place < childCount(); ++place)
            if (auto* part = child(place); part->rect().contains(x, y)) return part;
        return nullptr;
    }

    /// Made anew where the chart shows something else.
    [[nodiscard]] const std::vector<ChartPart>& parts() const {
        const auto& outlook = chart().outlook();
        const auto& options = chart().options();
        const auto& hidden = chart().layoutNow().hidden;
        if (!outlook) {
            parts_.clear();
        } else if (outlook != of_ || options.chosenDay != day_ || options.orders != orders_ ||
                   hidden != hidden_) {
            parts_ = chartParts(*outlook, options, hidden);
            hidden_ = hidden;
            of_ = outlook;
            day_ = options.chosenDay;
            orders_ = options.orders;
        }
        return parts_;
    }

private:
    [[nodiscard]] SeasonChart& chart() const { return *static_cast<SeasonChart*>(widget()); }

    mutable std::vector<ChartPart> parts_;
    mutable OutlookPtr of_;
    mutable std::optional<Day> day_;
    mutable SeasonOrdersPtr orders_;
    mutable HiddenLanes hidden_;
    mutable std::map<int, QAccessible::Id> made_;
};

/// That of the whole chart which does what the part is for; empty: none.
QString keyOf(ChartPart::Kind kind) {
    return kind == ChartPart::Kind::LanesBelow   ? chart_hand_text::lanesBelowKey()
           : kind == ChartPart::Kind::LanesAbove ? chart_hand_text::lanesAboveKey()
                                                 : QString();
}

const ChartPart* PartAccess::part() const {
    if (!chart_) return nullptr;
    const auto* all =
        static_cast<ChartAccess*>(QAccessible::queryAccessibleInterface(chart_.data()));
    const auto& parts = all->parts();
    return place_ < static_cast<int>(parts.size()) ? &parts[static_cast<std::size_t>(place_)]
                                                   : nullptr;
}

QAccessible::State PartAccess::state() const {
    QAccessible::State state;
    const auto* is = part();
    if (is == nullptr) {
        state.invalid = true;
        return state;
    }
    state.selectable = !is->key.batch.isNone();
    state.selected = state.selectable && chart_->options().isSelected(is->key.batch);
    state.offscreen = rect().isEmpty();
    return state;
}

QRect PartAccess::rect() const {
    const auto* is = part();
    if (is == nullptr) return {};
    const auto* target = findTarget(chart_->layoutNow(), is->key);
    if (target == nullptr) return {};
    const auto place =
        seenPart(chart_->layoutNow(), *target).intersected(chart_->rect()).toAlignedRect();
    return {chart_->mapToGlobal(place.topLeft()), place.size()};
}

QString PartAccess::text(QAccessible::Text kind) const {
    const auto* is = part();
    if (is == nullptr) return {};
    if (kind == QAccessible::Name) return is->name;
    if (kind == QAccessible::Value || kind == QAccessible::Description) return is->value;
    if (kind == QAccessible::Accelerator) return keyOf(is->kind);
    return {};
}

QAccessible::Role PartAccess::role() const {
    const auto* is = part();
    return is != nullptr && !keyOf(is->kind).isEmpty() ? QAccessible::Button
                                                       : QAccessible::ListItem;
}

QStringList PartAccess::keyBindingsForAction(const QString& name) const {
    const auto* is = part();
    if (is == nullptr || name != chart_hand_text::scrollThere()) return {};
    return {keyOf(is->kind)};
}

QStringList PartAccess::actionNames() const {
    using namespace chart_hand_text;
    const auto* is = part();
    if (is == nullptr) return {};
    switch (is->kind) {
        case ChartPart::Kind::Batch:
        case ChartPart::Kind::Load:
            return {choose(), change(), earlier(), later()};
        case ChartPart::Kind::Order:
            return {change()};
        case ChartPart::Kind::YardDay:
            return {choose()};
        case ChartPart::Kind::LanesBelow:
        case ChartPart::Kind::LanesAbove:
            return {scrollThere()};
    }
    return {};
}

void PartAccess::doAction(const QString& name) {
    const auto* is = part();
    if (is == nullptr) return;
    const auto batch = is->key.batch;
    if (is->kind == ChartPart::Kind::LanesBelow) return chart_->scrollLanes(1);
    if (is->kind == ChartPart::Kind::LanesAbove) return chart_->scrollLanes(-1);
    if (is->order) return Q_EMIT chart_->orderRequested(*is->order);
    if (batch.isNone()) return chart_->standOn(is->key);
    chart_->setSelectedBatch(batch);
    if (name == chart_hand_text::change()) Q_EMIT chart_->editRequested(batch);
    if (name == chart_hand_text::earlier()) chart_->moveSelected(-1);
    if (name == chart_hand_text::later()) chart_->moveSelected(1);
}

QAccessibleInterface* makeAccess(const QString& /*name*/, QObject* object) {
    auto* chart = qobject_cast<SeasonChart*>(object);
    return chart != nullptr ? new ChartAccess(*chart) : nullptr;
}

}  // namespace

void installChartAccess() {
    static const bool installed = (QAccessible::installFactory(makeAccess), true);
    Q_UNUSED(installed);
}

}  // namespace tenthday
