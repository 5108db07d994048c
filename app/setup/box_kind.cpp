#include "records/box_verbs.h"
#include "records/relations.h"
#include "records/validity.h"
#include "setup/row_kind.h"

namespace tenthday {
namespace {

using setup_text::Name;

/// Of one box. A new one is asked for the first label and how many; several for places alone.
enum BoxField { Label, InYard, YardFrom, Layout, LayoutFrom, Note };
enum NewField { FirstLabel, HowMany, NewYard, NewLayout, NewFrom, NewNote };
enum ManyField { MoveTo, MoveFrom, DivideSo, DivideFrom };

const QString kAsItIs = QStringLiteral("=");

/// In force today, else the next to come.
Ptr<BoxStay> stayShown(const Snapshot& book, Id<Box> box) {
    if (const auto now = stayOn(book, box, book.today())) return now;
    Ptr<BoxStay> next;
    for (const auto& stay : book.all<BoxStay>().of(box.uuid))
        if (!next || stay->from < next->from) next = stay;
    return next;
}

Ptr<BoxLayout> layoutShown(const Snapshot& book, Id<Box> box) {
    if (const auto now = layoutOn(book, box, book.today())) return now;
    Ptr<BoxLayout> next;
    for (const auto& layout : book.all<BoxLayout>())
        if (layout->box == box && (!next || layout->from < next->from)) next = layout;
    return next;
}

std::vector<Id<Box>> boxIds(const std::vector<Uuid>& ids) {
    std::vector<Id<Box>> boxes;
    for (const auto& id : ids) boxes.push_back({id});
    return boxes;
}

Uuid nextId() { return idMaker().next(); }

class BoxKind : public RowKind<Box> {
public:
    [[nodiscard]] setup_text::Kind kind() const override { return setup_text::Kind::Boxes; }
    [[nodiscard]] bool takesMany() const override { return true; }
    [[nodiscard]] bool canRetire() const override { return true; }

    [[nodiscard]] QStringList columns() const override {
        return {setup_text::name(Name::Label), setup_text::name(Name::Yard),
                setup_text::name(Name::YardFrom), setup_text::name(Name::Layout),
                setup_text::name(Name::Note)};
    }
    [[nodiscard]] std::vector<ListRow> rows(const Snapshot& book) const override {
        std::map<Uuid, Ptr<BoxLayout>> layouts;  // once for all: a book has many boxes
        for (const auto& layout : book.all<BoxLayout>()) {
            auto& best = layouts[layout->box.uuid];
            const bool isNow = layout->from <= book.today();
            const bool bestIsNow = best && best->from <= book.today();
            if (!best || (isNow && (!bestIsNow || layout->from > best->from)) ||
                (!isNow && !bestIsNow && layout->from < best->from))
                best = layout;
        }
        std::vector<ListRow> rows;
        for (const auto& box : ordered(book)) {
            const auto stay = stayShown(book, box->id);
            const auto layout = layouts[box->id.uuid];
            rows.push_back({box->id.uuid,
                            {nameOf(*box), placeWords(book, stay),
                             stay && stay->yard ? setup_text::day(stay->from) : QString(),
                             layout ? QString::fromStdString(layout->layout) : QString(),
                             QString::fromStdString(box->note)}});
        }
        return rows;
    }

    [[nodiscard]] std::vector<Field> fields(const Snapshot& book,
                                            const std::vector<Uuid>& ids) const override {
        auto yards = choicesOf<Yard>(book);
        yards.push_back({setup_text::nowhere(), QString()});
        const Field yard{FieldKind::Choice, setup_text::name(Name::Yard), false, yards};
        const Field yardFrom{FieldKind::Date, setup_text::name(Name::YardFrom)};
        const Field layout{FieldKind::Text, setup_text::name(Name::Layout), false, layouts(book)};
        const Field layoutFrom{FieldKind::Date, setup_text::name(Name::LayoutFrom)};
        const Field note{FieldKind::Note, setup_text::name(Name::Note)};
        if (ids.empty())
            return {{FieldKind::Text, setup_text::name(Name::FirstLabel), true},
                    {FieldKind::Number, setup_text::name(Name::HowMany), true, {}, 1, 999},
                    yard,
                    layout,
                    {FieldKind::Date, setup_text::name(Name::From), true},
                    note};
        if (ids.size() == 1)
            return {{FieldKind::Text, setup_text::name(Name::Label), true},
                    yard,
                    yardFrom,
                    layout,
                    layoutFrom,
                    note};
        auto choice = yard;
        choice.choices.insert(choice.choices.begin(), {setup_text::unchanged(), kAsItIs});
        return {choice, yardFrom, layout, layoutFrom};
    }

    [[nodiscard]] FieldValues values(const Snapshot& book,
                                     const std::vector<Uuid>& ids) const override {
        const auto today = fromDay(book.today());
        if (ids.size() > 1) return {kAsItIs, today, QString(), today};
        const auto box = find(book, ids);
        if (!box) {
            const auto& yards = book.all<Yard>();
            return {
                QString(),
                1,
                yards.empty() ? QVariant(QString()) : fromId(std::optional((*yards.begin())->id)),
                QStringLiteral("3+3"),
                today,
                QString()};
        }
        const auto stay = stayShown(book, box->id);
        const auto layout = layoutShown(book, box->id);
        return {fromText(box->label),
                fromId(stay ? stay->yard : std::nullopt),
                stay ? fromDay(stay->from) : QVariant(),
                layout ? fromText(layout->layout) : QString(),
                layout ? fromDay(layout->from) : QVariant(),
                fromText(box->note)};
    }

    /// A move or a new layout is meant from today on, unless a day is given.
    void follow(const Snapshot& book, Draft& draft, std::size_t field) const override {
        if (draft.ids.size() != 1) return;
        const auto day = field == InYard ? YardFrom : LayoutFrom;
        if ((field != InYard && field != Layout) || draft.changed(day)) return;
        if (draft.changed(field)) draft.values[day] = fromDay(book.today());
    }

    [[nodiscard]] Hint hint(const Snapshot&, const Draft& draft, std::size_t field) const override {
        const auto layoutField = draft.isNew()    ? int{NewLayout}
                                 : draft.isMany() ? int{DivideSo}
                                                  : int{Layout};
        if (static_cast<int>(field) == layoutField) return {setup_text::layoutHint()};
        if (draft.ids.size() == 1 && field == YardFrom) return {setup_text::moveHint()};
        if (!draft.isNew() || field != HowMany) return {};
        const auto labels =
            countedLabels(toStdText(draft.values[FirstLabel]), draft.values[HowMany].toInt());
        if (!labels || labels.value().size() < 2) return {};
        return {setup_text::labelsHint(QString::fromStdString(labels.value().front()),
                                       QString::fromStdString(labels.value().back()))};
    }

    [[nodiscard]] std::optional<FieldFault> fault(const Snapshot& book,
                                                  const Draft& draft) const override {
        if (draft.isNew()) return faultOfNew(book, draft);
        const bool many = draft.isMany();
        if (!many)
            if (auto taken = takenLabel(book, draft, Label)) return taken;
        const std::size_t yard = many ? std::size_t{MoveTo} : std::size_t{InYard};
        const std::size_t layout = many ? std::size_t{DivideSo} : std::size_t{Layout};
        for (const auto field : {yard, layout})
            if (draft.changed(field) && !toDay(draft.values[field + 1]))
                return FieldFault{field + 1,
                                  setup_text::needed(setup_text::name(
                                      field == yard ? Name::YardFrom : Name::LayoutFrom))};
        return draft.changed(layout) ? faultOfLayout(draft, layout) : std::nullopt;
    }

    [[nodiscard]] Result<ChangeSet> save(const Snapshot& book, const Draft& draft) const override {
        const auto& values = draft.values;
        if (draft.isNew())
            return addBoxes(book, toStdText(values[FirstLabel]), values[HowMany].toInt(),
                            {toId<Yard>(values[NewYard]), toStdText(values[NewLayout]),
                             *toDay(values[NewFrom]), toStdText(values[NewNote])},
                            nextId);
        return changeBoxes(book, boxIds(draft.ids),
                           draft.isMany() ? changeOfMany(draft) : changeOfOne(book, draft), nextId);
    }

    [[nodiscard]] Result<ChangeSet> retire(const Snapshot& book, const std::vector<Uuid>& ids,
                                           Day from) const override {
        return retireBoxes(book, boxIds(ids), from, nextId);
    }

private:
    static QString placeWords(const Snapshot& book, const Ptr<BoxStay>& stay) {
        if (!stay) return setup_text::nowhere();
        if (!stay->yard) return setup_text::retiredFrom(stay->from);
        const auto yard = book.find(*stay->yard);
        const auto label = yard ? QString::fromStdString(yard->label) : QString();
        return stay->from > book.today() ? setup_text::comesOn(label, stay->from) : label;
    }
    /// Layouts in use in the book, to complete what is typed.
    static std::vector<FieldChoice> layouts(const Snapshot& book) {
        std::map<std::string, int> known{{"7", 0}, {"3+3", 0}};
        for (const auto& layout : book.all<BoxLayout>()) ++known[layout->layout];
        std::vector<FieldChoice> choices;
        for (const auto& [text, count] : known)
            choices.push_back({QString::fromStdString(text), {}});
        return choices;
    }
    static std::optional<FieldFault> faultOfLayout(const Draft& draft, std::size_t field) {
        const auto text = draft.values[field].toString();
        if (!framesOfLayout(text.toStdString()).empty()) return std::nullopt;
        return FieldFault{field, setup_text::noLayout(text)};
    }
    static std::optional<FieldFault> faultOfNew(const Snapshot& book, const Draft& draft) {
        const auto labels =
            countedLabels(toStdText(draft.values[FirstLabel]), draft.values[HowMany].toInt());
        if (!labels) return FieldFault{FirstLabel, setup_text::noNumberAtTheEnd()};
        for (const auto& label : labels.value())
            if (findByLabel<Box>(book, label))
                return FieldFault{FirstLabel, setup_text::taken(QString::fromStdString(label))};
        if (draft.values[NewLayout].toString().isEmpty()) return std::nullopt;
        return faultOfLayout(draft, NewLayout);
    }
    static BoxChange changeOfMany(const Draft& draft) {
        BoxChange change;
        const auto& values = draft.values;
        if (draft.changed(MoveTo))
            change.move = BoxChange::Move{toId<Yard>(values[MoveTo]), *toDay(values[MoveFrom])};
        if (draft.changed(DivideSo))
            change.layout =
                BoxChange::Layout{toStdText(values[DivideSo]), *toDay(values[DivideFrom])};
        return change;
    }
    static BoxChange changeOfOne(const Snapshot& book, const Draft& draft) {
        BoxChange change;
        const auto& values = draft.values;
        change.label = toStdText(values[Label]);
        change.note = toStdText(values[Note]);
        const Id<Box> box{draft.ids.front()};
        const auto stay = stayShown(book, box);
        const auto layout = layoutShown(book, box);
        const auto yardFrom = toDay(values[YardFrom]);
        const auto layoutFrom = toDay(values[LayoutFrom]);
        if (draft.changed(InYard))
            change.move = BoxChange::Move{toId<Yard>(values[InYard]), *yardFrom};
        else if (stay && yardFrom && draft.changed(YardFrom))
            change.stayDay = {stay->id, *yardFrom};
        if (draft.changed(Layout))
            change.layout = BoxChange::Layout{toStdText(values[Layout]), *layoutFrom};
        else if (layout && layoutFrom && draft.changed(LayoutFrom))
            change.layoutDay = {layout->id, *layoutFrom};
        return change;
    }
};

}  // namespace

std::unique_ptr<SetupKind> boxKind() { return std::make_unique<BoxKind>(); }

}  // namespace tenthday
