#include "evening/evening_paste.h"

#include <QRegularExpression>
#include <algorithm>

#include "book/new_id.h"
#include "evening/entry_typed.h"
#include "evening/evening_lines.h"
#include "paste/named_rows.h"
#include "paste/table_lines.h"
#include "screen_text/evening_text.h"
#include "screen_text/paste_text.h"

namespace tenthday {
namespace {

/// The page as it was when the dialog opened: the window's own may be made anew meanwhile.
struct Shown {
    OutlookPtr outlook;
    EveningPage page;
    NamedRows rows;
    std::string queenNumbers;
};

/// A row by its task, and by its bar or nuc where it stands under the task; without numbers, which
/// change while one counts.
QStringList nameOf(const EveningModel& model, int row) {
    int head = row;
    while (head > 0 && !model.at(head).isHead) --head;
    const auto& outlook = *model.outlook();
    return {evening_text::name(outlook, model.at(head)),
            model.at(row).isHead ? QString() : evening_text::what(outlook, model.at(row))};
}

QString cell(const EveningModel& model, int row, EveningModel::Column column) {
    return model.index(row, column).data().toString();
}

/// What is wrong with a line that is good by itself.
QString whyNot(const EveningTrouble& trouble) {
    return trouble.refusal ? evening_text::refusal(*trouble.refusal)
                           : QString::fromStdString(trouble.text);
}

PastedEdit judged(const Shown& shown, const std::vector<std::string>& columns,
                  const std::vector<std::vector<std::string>>& lines) {
    std::vector<EveningLine> entries;
    const auto judge = [&](int row, const PastedLine& line, ChangeSet&) {
        const auto index = static_cast<std::size_t>(row);
        const auto& shownRow = shown.page.rows[index];
        auto typed = entryTyped(shownRow, line, shown.page.day, shown.queenNumbers);
        if (typed.says != EntryTyped::Says::Something) return LineJudged{typed.trouble};
        const bool takesBack = !typed.input;
        entries.push_back({index, std::move(typed.input)});
        return LineJudged{{}, true, !shownRow.isFilled(), takesBack};
    };
    auto edit = editNamedLines(columns, lines, shown.rows, {"what", "part"}, judge);
    std::vector<std::size_t> places;  // of the entries among the lines
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (edit.troubles[i].empty() && !edit.isSame[i]) places.push_back(i);
    const bool isGood = edit.isGood();
    auto entered = enterLines(shown.outlook, shown.page, entries, [] { return idMaker().next(); });
    for (std::size_t i = 0; i < places.size(); ++i)
        if (entered.troubles[i])
            edit.troubles[places[i]] = whyNot(*entered.troubles[i]).toStdString();
    if (isGood && edit.isGood()) edit.changes = std::move(entered.changes);
    return edit;
}

}  // namespace

QString copiedEvening(const EveningModel& model) {
    std::string text;
    const auto head = [](EveningModel::Column column) { return evening_text::columnHead(column); };
    appendCells(text, {head(EveningModel::What), evening_text::part(), head(EveningModel::Expected),
                       head(EveningModel::Entered), head(EveningModel::HourColumn),
                       head(EveningModel::Note)});
    for (int row = 0; row < model.rowCount(); ++row) {
        if (model.at(row).entry == EveningEntry::None) continue;
        appendCells(text, nameOf(model, row) << cell(model, row, EveningModel::Expected)
                                             << cell(model, row, EveningModel::Entered)
                                             << cell(model, row, EveningModel::HourColumn)
                                             << cell(model, row, EveningModel::Note));
    }
    return QString::fromStdString(text);
}

PasteKind eveningToPaste(const EveningModel& model, const QString& queenNumbers) {
    Shown shown{model.outlook(), model.page(), {}, queenNumbers.toStdString()};
    for (int row = 0; row < model.rowCount(); ++row)
        if (model.at(row).entry != EveningEntry::None) shown.rows.add(nameOf(model, row), row);
    auto entered = plainColumn("entered", evening_text::columnHead(EveningModel::Entered));
    entered.shown = lookInWords;
    PasteKind kind;
    kind.head = evening_text::head(model.day());
    kind.named = evening_text::pastedName(model.day()).toStdString();
    kind.takeIn = paste_text::takeInLines;
    kind.columns = {plainColumn("what", evening_text::columnHead(EveningModel::What), true),
                    plainColumn("part", evening_text::part()),
                    std::move(entered),
                    plainColumn("hour", evening_text::columnHead(EveningModel::HourColumn)),
                    plainColumn("note", evening_text::columnHead(EveningModel::Note)),
                    rowColumn()};
    kind.edit = [shown = std::move(shown)](const auto& columns, const auto& lines) {
        return judged(shown, columns, lines);
    };
    return kind;
}

QString eveningPasteText(const EveningModel& model, int fromRow, const QString& pasted) {
    static const QRegularExpression kNumbers(QStringLiteral("^\\d+$"));
    auto values = columnAlone(pasted);
    const auto entered = evening_text::columnHead(EveningModel::Entered);
    if (!values.isEmpty() && values.front().compare(entered, Qt::CaseInsensitive) == 0)
        values.removeFirst();
    values.removeAll(QString());
    const bool areCounts = std::all_of(values.begin(), values.end(), [](const QString& value) {
        return kNumbers.match(value).hasMatch();
    });
    std::vector<QStringList> names;
    int number = 0;
    for (int row = 0; row < model.rowCount(); ++row) {
        const auto entry = model.at(row).entry;
        if (entry != EveningEntry::None) ++number;
        if (row < fromRow) continue;
        if (areCounts ? entry == EveningEntry::Count : entry != EveningEntry::None)
            names.push_back(QStringList(QString::number(number)) + nameOf(model, row));
    }
    return besideNames(pasted,
                       {paste_text::row(), evening_text::columnHead(EveningModel::What),
                        evening_text::part(), entered},
                       names);
}

}  // namespace tenthday
