#include "virgins/virgins_model.h"

#include "base/natural_order.h"
#include "look/glyph.h"
#include "look/glyph_delegate.h"
#include "look/role.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/virgin_text.h"
#include "screen_text/why_virgin.h"

namespace tenthday {
namespace {

QString labelOf(const Outlook& outlook, Id<Batch> id) {
    const auto* batch = outlook.find(id);
    return batch ? QString::fromStdString(batch->batch->label) : QString();
}

QString labelOf(const Outlook& outlook, Id<Yard> id) {
    const auto yard = outlook.snapshot.find(id);
    return yard ? QString::fromStdString(yard->label) : QString();
}

QString keyOf(const std::string& label) { return QString::fromStdString(naturalKey(label)); }

qlonglong keyOf(Day day) { return day.time_since_epoch().count(); }

Glyph glyphOf(VirginAdvice advice) {
    switch (advice) {
        case VirginAdvice::Wait:
            return Glyph::Wait;
        case VirginAdvice::Look:
            return Glyph::Look;
        case VirginAdvice::Recell:
            return Glyph::Recell;
        default:
            return Glyph::Combine;
    }
}

/// What has to be given up stands out.
Role roleOf(VirginAdvice advice) {
    switch (advice) {
        case VirginAdvice::Wait:
            return Role::InkSoft;
        case VirginAdvice::Look:
            return Role::Ink;
        case VirginAdvice::Recell:
            return Role::Caution;
        default:
            return Role::Danger;
    }
}

QVariant onTheRight() { return QVariant(Qt::AlignRight | Qt::AlignVCenter); }

}  // namespace

void VirginsModel::show(OutlookPtr outlook, Day day) {
    beginResetModel();
    outlook_ = std::move(outlook);
    virgins_ = waitingVirgins(outlook_->snapshot, outlook_->nucs, *outlook_->mating, day);
    endResetModel();
}

int VirginsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(virgins_.nucs.size());
}

int VirginsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString VirginsModel::text(const WaitingVirgin& virgin, int column) const {
    switch (column) {
        case Yard:
            return labelOf(*outlook_, virgin.yard);
        case Nuc:
            return chart_text::nuc(QString::fromStdString(virgin.side->box->label),
                                   QString::fromStdString(virgin.side->side->side));
        case Batch:
            return labelOf(*outlook_, virgin.round->batch);
        case Age:
            return virgin_text::age(virgin.age);
        case Flown:
            return virgin_text::flown(virgin);
        case LastDay:
            return weekdayAndDay(virgin.lastDay);
        case Mated:
            return virgin_text::chance(virgin.mated);
        case Still:
            return virgin_text::chance(virgin.still);
        case NextLook:
            return virgin_text::nextLook(virgin);
        default:
            return virgin_text::advice(virgin);
    }
}

QVariant VirginsModel::sortKey(const WaitingVirgin& virgin, int column) const {
    switch (column) {
        case Nuc:
            return QString(keyOf(virgin.side->box->label) + u' ' +
                           QString::fromStdString(virgin.side->side->side));
        case Batch: {
            const auto* batch = outlook_->find(virgin.round->batch);
            return batch ? keyOf(batch->batch->label) : QString();
        }
        case Age:
            return virgin.age;
        case Flown:
            return virgin.flown().value_or(-1);
        case LastDay:
            return keyOf(virgin.lastDay);
        case Mated:
            return virgin.mated.value_or(-1);
        case Still:
            return virgin.still.value_or(-1);
        case NextLook:
            return keyOf(virgin.look.value_or(kLastDay));
        case Advice:
            return static_cast<int>(virgin.advice);
        default:
            return text(virgin, column);
    }
}

/// The figure's own rule, inputs and sources.
QString VirginsModel::because(const WaitingVirgin& virgin, int column) const {
    const auto& outlook = *outlook_;
    const auto link = column == Age       ? why_text::virginAge(outlook, virgin)
                      : column == Flown   ? why_text::virginFlights(outlook, virgin)
                      : column == LastDay ? why_text::virginLastDay(outlook, virgin)
                      : column == Mated || column == Still
                          ? why_text::virginChances(outlook, virgin)
                      : column == NextLook ? why_text::virginLook(outlook, virgin)
                                           : why_text::virginAdvice(outlook, virgin);
    return why_text::asRichText({link});
}

QVariant VirginsModel::data(const QModelIndex& index, int role) const {
    const auto& virgin = at(index.row());
    switch (role) {
        case Qt::DisplayRole:
            return text(virgin, index.column());
        case kSortRole:
            return sortKey(virgin, index.column());
        case GlyphDelegate::kGlyphRole:
            return static_cast<int>(glyphOf(virgin.advice));
        case GlyphDelegate::kInkRole:
            return static_cast<int>(roleOf(virgin.advice));
        case Qt::ToolTipRole:
            return because(virgin, index.column());
        case Qt::TextAlignmentRole:
            if (index.column() == Age || index.column() == Mated || index.column() == Still)
                return onTheRight();
            return {};
        default:
            return {};
    }
}

QVariant VirginsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return virgin_text::columnHead(section);
}

void VirginGroupsModel::show(OutlookPtr outlook, std::vector<VirginGroup> groups) {
    beginResetModel();
    outlook_ = std::move(outlook);
    groups_ = std::move(groups);
    endResetModel();
}

int VirginGroupsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(groups_.size());
}

int VirginGroupsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString VirginGroupsModel::text(const VirginGroup& group, int column) const {
    switch (column) {
        case Batch:
            return labelOf(*outlook_, group.batch);
        case Yard:
            return labelOf(*outlook_, group.yard);
        case Nucs:
            return chart_text::number(group.nucs);
        case Age:
            return virgin_text::ages(group.youngest, group.oldest);
        case Flown:
            return virgin_text::meanFlown(group.flown);
        case Mated:
            return virgin_text::chance(group.mated);
        case Still:
            return virgin_text::chance(group.still);
        default:
            return virgin_text::advised(group.advised);
    }
}

QVariant VirginGroupsModel::data(const QModelIndex& index, int role) const {
    if (role == Qt::DisplayRole) return text(at(index.row()), index.column());
    if (role == Qt::ToolTipRole) return virgin_text::groupMeans();
    const int column = index.column();
    if (role == Qt::TextAlignmentRole &&
        (column == Nucs || column == Age || column == Flown || column == Mated || column == Still))
        return onTheRight();
    return {};
}

QVariant VirginGroupsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return virgin_text::groupColumnHead(section);
}

}  // namespace tenthday
