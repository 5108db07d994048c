#include "facts/facts_model.h"

#include <QFont>
#include <cmath>

#include "screen_text/fact_text.h"

namespace tenthday {

void FactsModel::setFacts(const Facts& facts) {
    facts_ = facts;
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

int FactsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(kTokenCount<Fact>);
}

int FactsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString FactsModel::text(const FactEntry& entry, int column) const {
    const double inUse = facts_[entry.fact];
    switch (column) {
        case What:
            return fact_text::name(entry.fact);
        case InUse:
            return fact_text::value(entry, inUse);
        case Unit:
            return fact_text::unit(entry);
        case Default:
            return fact_text::value(entry, entry.value);
        case Range:
            return fact_text::range(entry, inUse);
        case Source:
            return QString::fromUtf8(entry.source.data(),
                                     static_cast<qsizetype>(entry.source.size()));
        default:
            return {};
    }
}

QVariant FactsModel::data(const QModelIndex& index, int role) const {
    const auto& entry = facts_.entry(factAt(index.row()));
    const int column = index.column();
    switch (role) {
        case Qt::DisplayRole:
        case Qt::EditRole:
            return text(entry, column);
        case Qt::ToolTipRole:
            return column == Source || column == Range                  ? fact_text::sources(entry)
                   : column == InUse && facts_.isOverridden(entry.fact) ? fact_text::own()
                                                                        : text(entry, column);
        case Qt::TextAlignmentRole:
            return QVariant::fromValue(Qt::Alignment(
                Qt::AlignVCenter |
                (column == InUse || column == Default ? Qt::AlignRight : Qt::AlignLeft)));
        case Qt::FontRole: {
            QFont font;
            font.setBold(column == InUse && facts_.isOverridden(entry.fact));
            return font;
        }
        case Qt::AccessibleDescriptionRole:
            return column == InUse && facts_.isOverridden(entry.fact) ? fact_text::own()
                                                                      : QString();
        default:
            return {};
    }
}

QVariant FactsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return fact_text::columnHead(section);
}

Qt::ItemFlags FactsModel::flags(const QModelIndex& index) const {
    auto flags = QAbstractTableModel::flags(index);
    if (index.column() == InUse && editable_) flags |= Qt::ItemIsEditable;
    return flags;
}

bool FactsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || index.column() != InUse) return false;
    const auto& entry = facts_.entry(factAt(index.row()));
    const auto typed = fact_text::fromTyped(entry, value.toString());
    if (!typed) {
        Q_EMIT refused(fact_text::notANumber(value.toString()));
        return false;
    }
    // The book keeps thousandths.
    if (auto probe = facts_; !probe.set(entry.fact, std::round(*typed * 1000) / 1000)) {
        Q_EMIT refused(fact_text::outOfBounds(entry));
        return false;
    }
    Q_EMIT wished(entry.fact, *typed);
    return true;
}

}  // namespace tenthday
