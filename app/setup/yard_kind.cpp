#include "records/relations.h"
#include "records/yard_roles.h"
#include "setup/row_kind.h"

namespace tenthday {
namespace {

using setup_text::Name;

enum YardField { Label, Roles, Order, Frost, DronesOut, Half, Note };

QStringList rolesOf(const Yard& yard) {
    return QString::fromStdString(yard.roles).split(u' ', Qt::SkipEmptyParts);
}

QString roleWords(const Yard& yard) {
    QStringList words;
    const auto roles = rolesOf(yard);
    for (std::size_t i = 0; i < kYardRoles.size(); ++i)
        if (roles.contains(QLatin1String(kYardRoles[i].data())))
            words += setup_text::role(static_cast<int>(i));
    return words.join(QStringLiteral(", "));
}

class YardKind : public RowKind<Yard> {
public:
    [[nodiscard]] setup_text::Kind kind() const override { return setup_text::Kind::Yards; }
    [[nodiscard]] QStringList columns() const override {
        return {setup_text::name(Name::DriveOrder), setup_text::name(Name::Label),
                setup_text::name(Name::Roles), setup_text::name(Name::Boxes),
                setup_text::name(Name::Note)};
    }
    [[nodiscard]] std::vector<ListRow> rows(const Snapshot& book) const override {
        std::map<Uuid, int> boxes;
        for (const auto& box : book.all<Box>())
            if (const auto yard = yardOn(book, box->id, book.today())) ++boxes[yard->uuid];
        auto yards = ordered(book);
        std::stable_sort(yards.begin(), yards.end(), [](const auto& a, const auto& b) {
            return a->driveOrder < b->driveOrder;
        });
        std::vector<ListRow> rows;
        for (const auto& yard : yards)
            rows.push_back(
                {yard->id.uuid,
                 {QString::number(yard->driveOrder), nameOf(*yard), roleWords(*yard),
                  QString::number(boxes[yard->id.uuid]), QString::fromStdString(yard->note)}});
        return rows;
    }
    [[nodiscard]] std::vector<Field> fields(const Snapshot&,
                                            const std::vector<Uuid>&) const override {
        std::vector<FieldChoice> roles;
        for (std::size_t i = 0; i < kYardRoles.size(); ++i)
            roles.push_back({setup_text::role(static_cast<int>(i)),
                             QString(QLatin1String(kYardRoles[i].data()))});
        const std::vector<FieldChoice> halves{
            {setup_text::north(), static_cast<int>(Hemisphere::North)},
            {setup_text::south(), static_cast<int>(Hemisphere::South)}};
        return {{FieldKind::Text, setup_text::name(Name::Label), true},
                {FieldKind::Checks, setup_text::name(Name::Roles), false, roles},
                {FieldKind::Number, setup_text::name(Name::DriveOrder), true},
                {FieldKind::Date, setup_text::name(Name::FrostDay)},
                {FieldKind::Date, setup_text::name(Name::DronesOutDay)},
                {FieldKind::Choice, setup_text::name(Name::Hemisphere), true, halves},
                {FieldKind::Note, setup_text::name(Name::Note)}};
    }
    [[nodiscard]] FieldValues values(const Snapshot& book,
                                     const std::vector<Uuid>& ids) const override {
        const auto row = find(book, ids);
        const Yard yard = row ? *row : likely(book);
        return {fromText(yard.label),
                rolesOf(yard),
                yard.driveOrder,
                fromDay(yard.frostDay),
                fromDay(yard.dronesOutDay),
                static_cast<int>(yard.hemisphere),
                fromText(yard.note)};
    }
    [[nodiscard]] Hint hint(const Snapshot&, const Draft&, std::size_t field) const override {
        if (field == Order) return {setup_text::orderHint()};
        if (field == Frost || field == DronesOut) return {setup_text::frostHint()};
        return {};
    }
    [[nodiscard]] std::optional<FieldFault> fault(const Snapshot& book,
                                                  const Draft& draft) const override {
        return takenLabel(book, draft, Label);
    }
    [[nodiscard]] Result<ChangeSet> save(const Snapshot& book, const Draft& draft) const override {
        const auto& values = draft.values;
        Yard yard = rowOf(book, draft);
        yard.label = toStdText(values[Label]);
        yard.roles = values[Roles].toStringList().join(u' ').toStdString();
        yard.driveOrder = values[Order].toInt();
        yard.frostDay = toDay(values[Frost]);
        yard.dronesOutDay = toDay(values[DronesOut]);
        yard.hemisphere = static_cast<Hemisphere>(values[Half].toInt());
        yard.note = toStdText(values[Note]);
        return saveRow(book, yard);
    }

private:
    /// The next on the round, on the same half of the earth.
    static Yard likely(const Snapshot& book) {
        Yard yard;
        yard.roles = "mating";
        for (const auto& other : book.all<Yard>()) {
            yard.driveOrder = std::max(yard.driveOrder, other->driveOrder + 1);
            yard.hemisphere = other->hemisphere;
        }
        return yard;
    }
};

}  // namespace

std::unique_ptr<SetupKind> yardKind() { return std::make_unique<YardKind>(); }

}  // namespace tenthday
