#include "plan/plan_steps.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "look/page_parts.h"
#include "records/order_days.h"
#include "supply/order_needs.h"

namespace tenthday {
namespace {

void countOrders(const Outlook& outlook, PlanGround& ground) {
    const auto& book = outlook.snapshot;
    for (const auto& order : book.all<Order>()) {
        if (!outlook.season.contains(order->due)) continue;
        if (termsOf(book, order->id).standing != OrderStanding::Open) continue;
        ++ground.orders;
        ground.wanted += order->count;
    }
}

void countNucs(const Outlook& outlook, PlanGround& ground) {
    for (const auto& yard : outlook.nucs.yards) {
        ground.nucs += yard.mostSides;
        ground.yards += yard.mostSides > 0 ? 1 : 0;
    }
}

}  // namespace

PlanGround planGround(const Outlook& outlook) {
    PlanGround ground;
    const auto& book = outlook.snapshot;
    const auto& season = outlook.season;
    ground.isOver = season.last < book.today();
    ground.season = season;
    if (const auto shown = book.find(book.seasonId()))
        ground.seasonLabel = QString::fromStdString(shown->label);
    ground.batches = static_cast<int>(outlook.batches.size());
    countOrders(outlook, ground);
    countNucs(outlook, ground);
    for (const auto& builder : outlook.builders)
        if (builder.builder->from <= season.last &&
            (!builder.builder->until || *builder.builder->until >= season.first))
            ++ground.builders;
    for (const auto& queen : book.all<Queen>())
        if (queen->breederFrom && *queen->breederFrom <= season.last &&
            (!queen->breederUntil || *queen->breederUntil >= season.first))
            ++ground.breeders;
    return ground;
}

PlanSteps::PlanSteps(QWidget* parent)
    : QWidget(parent), season_(new QLabel), seasons_(new QPushButton(plan_steps_text::seasons())) {
    auto* column = new QVBoxLayout;
    makeStrong(*season_);
    auto* top = new QHBoxLayout;
    top->addWidget(season_, 1);
    top->addWidget(seasons_);
    column->addLayout(top);
    column->addSpacing(8);
    for (int step = 0; step < 3; ++step) {
        parts_[std::size_t(step)] = makePart(step);
        const auto& part = parts_[std::size_t(step)];
        auto* row = new QHBoxLayout;
        auto* words = new QVBoxLayout;
        words->addWidget(part.name);
        words->addWidget(part.state);
        row->addLayout(words, 1);
        row->addWidget(part.go, 0, Qt::AlignVCenter);
        column->addLayout(row);
        if (step == 2) break;
        auto* line = new QFrame;
        line->setFrameShape(QFrame::HLine);
        line->setFrameShadow(QFrame::Sunken);
        column->addWidget(line);
    }
    column->addStretch(1);
    auto* middle = new QHBoxLayout(this);
    middle->addStretch(1);
    middle->addLayout(column, 6);
    middle->addStretch(1);
    connect(seasons_, &QPushButton::clicked, this, &PlanSteps::seasonsWanted);
    connect(parts_[0].go, &QPushButton::clicked, this, &PlanSteps::ordersWanted);
    connect(parts_[1].go, &QPushButton::clicked, this,
            [this] { Q_EMIT setupWanted(plan_steps_text::missing(ground_)); });
    connect(parts_[2].go, &QPushButton::clicked, this, &PlanSteps::planWanted);
}

PlanSteps::Part PlanSteps::makePart(int step) {
    Part part{new QLabel(plan_steps_text::name(step)), new QLabel,
              new QPushButton(plan_steps_text::go(step))};
    makeHead(*part.name, 1.15);
    part.state->setWordWrap(true);
    part.go->setMinimumWidth(190);
    return part;
}

void PlanSteps::show(const Outlook& outlook) {
    ground_ = planGround(outlook);
    season_->setText(plan_steps_text::season(ground_));
    for (int step = 0; step < 3; ++step)
        parts_[std::size_t(step)].state->setText(plan_steps_text::state(step, ground_));
    parts_[2].go->setEnabled(ground_.canPlan());
}

QString PlanSteps::state(int step) const { return parts_[std::size_t(step)].state->text(); }
QString PlanSteps::season() const { return season_->text(); }

}  // namespace tenthday
