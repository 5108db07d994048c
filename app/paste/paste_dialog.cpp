#include "paste/paste_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QTextDocument>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "book/new_id.h"
#include "look/page_parts.h"
#include "look/palette.h"
#include "look/table_keys.h"
#include "screen_text/derived_text.h"
#include "screen_text/paste_text.h"

namespace tenthday {
namespace {

constexpr int kMostShown = 500;
constexpr int kRest = 250;  ///< ms
constexpr int kTextLines = 5;

QString plain(const std::string& text) { return QString::fromStdString(text); }

bool says(const std::vector<bool>& lines, std::size_t at) { return at < lines.size() && lines[at]; }

paste_text::Brings bringsOf(const PastedEdit& edit, std::size_t line) {
    using paste_text::Brings;
    if (says(edit.isSame, line)) return Brings::Same;
    if (says(edit.takesBack, line)) return Brings::TakesBack;
    return says(edit.isNew, line) ? Brings::New : Brings::Change;
}

/// What is wrong with a line or what it brings; nothing where lines are not told apart.
QString stateOf(const PastedEdit& edit, std::size_t line) {
    if (line >= edit.troubles.size()) return {};
    if (!edit.troubles[line].empty()) return paste_text::wrong(plain(edit.troubles[line]));
    return edit.counts ? QString() : paste_text::brings(bringsOf(edit, line));
}

paste_text::Sums sumsOf(const PastedEdit& edit) {
    paste_text::Sums sums;
    if (edit.counts) {
        sums.fresh = static_cast<int>(edit.counts->fresh);
        sums.changed = static_cast<int>(edit.counts->changed);
        return sums;
    }
    const auto bring = [&](paste_text::Brings what) {
        int count = 0;
        for (std::size_t i = 0; i < edit.troubles.size(); ++i) count += bringsOf(edit, i) == what;
        return count;
    };
    sums.fresh = bring(paste_text::Brings::New);
    sums.changed = bring(paste_text::Brings::Change);
    sums.same = bring(paste_text::Brings::Same);
    sums.takenBack = bring(paste_text::Brings::TakesBack);
    return sums;
}

}  // namespace

PasteDialog::PasteDialog(const Desk& desk, PasteKind kind, const QString& text, Save save,
                         QWidget* parent)
    : QDialog(parent),
      desk_(desk),
      kind_(std::move(kind)),
      save_(std::move(save)),
      came_(text),
      text_(new QPlainTextEdit),
      preview_(new QTableWidget),
      summary_(new QLabel),
      shownOf_(new QLabel),
      told_(new QLabel),
      take_(new QPushButton),
      rest_(new QTimer(this)) {
    setWindowTitle(kind_.head);
    text_->setPlaceholderText(paste_text::pasteHere());
    text_->setAccessibleName(paste_text::pasted());
    text_->setTabChangesFocus(true);
    text_->setLineWrapMode(QPlainTextEdit::NoWrap);
    text_->setMaximumHeight(kTextLines * text_->fontMetrics().lineSpacing() + 16);
    summary_->setWordWrap(true);
    makeStrong(*summary_);
    shownOf_->hide();
    told_->setWordWrap(true);
    told_->hide();
    preview_->setAccessibleName(paste_text::preview());
    preview_->verticalHeader()->hide();
    preview_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    preview_->setSelectionBehavior(QAbstractItemView::SelectRows);
    preview_->setTabKeyNavigation(false);
    makeCompact(*preview_);
    sayNoPaste(*preview_, derived_text::pastedLines);
    auto* look = new QVBoxLayout;
    look->addWidget(new QLabel(paste_text::pasted()));
    look->addWidget(text_);
    look->addWidget(summary_);
    look->addWidget(preview_, 1);
    look->addWidget(shownOf_);
    auto* parts = new QHBoxLayout;
    parts->addWidget(makeColumns());
    parts->addLayout(look, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    buttons->addButton(take_, QDialogButtonBox::AcceptRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &PasteDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addLayout(parts, 1);
    column->addWidget(told_);
    column->addWidget(buttons);
    resize(1040, 600);
    rest_->setSingleShot(true);
    rest_->setInterval(kRest);
    connect(rest_, &QTimer::timeout, this, &PasteDialog::readText);
    text_->setPlainText(came_);
    connect(text_, &QPlainTextEdit::textChanged, rest_, qOverload<>(&QTimer::start));
    readText();
}

QString PasteDialog::summary() const { return summary_->text(); }
QString PasteDialog::shownOf() const { return shownOf_->text(); }
QString PasteDialog::told() const { return told_->text(); }

QWidget* PasteDialog::makeColumns() {
    auto* group = new QGroupBox(paste_text::columns());
    auto* form = new QFormLayout(group);
    for (const auto& column : kind_.columns) {
        auto* box = new QComboBox;
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(12);
        box->setAccessibleName(column.name);
        columns_.push_back(box);
        form->addRow(column.needed ? paste_text::needed(column.name) : column.name, box);
        byHand_.push_back(false);
        connect(box, &QComboBox::currentIndexChanged, this, [this, at = columns_.size() - 1] {
            if (filling_) return;
            byHand_[at] = true;
            judge();
        });
    }
    return group;
}

/// Not toPlainText(): that makes plain spaces of those that do not break.
std::string PasteDialog::textGiven() const {
    const auto withPlainEnds = [](QString text) {
        text.replace(QStringLiteral("\r\n"), QStringLiteral("\n"));
        for (const QChar end : {QChar(QChar::ParagraphSeparator), QChar(QChar::LineSeparator),
                                QChar(QChar::CarriageReturn)})
            text.replace(end, QChar(QChar::LineFeed));
        return text;
    };
    const auto typed = withPlainEnds(text_->document()->toRawText());
    return (typed == withPlainEnds(came_) ? came_ : typed).toStdString();
}

void PasteDialog::readText() {
    rest_->stop();
    auto read = readPasted(textGiven());
    const auto unreadable = read ? QString() : paste_text::unreadable(plain(read.error().text));
    cells_ = read ? std::move(read).value() : PastedCells{};
    offerColumns();
    judge();
    if (!unreadable.isEmpty()) summary_->setText(unreadable);
}

/// Names what can be chosen for each column, and chooses what is found. What was chosen by hand
/// stays while the same columns are there: whoever edits a cell does not choose anew.
void PasteDialog::offerColumns() {
    const auto places = placesOf(kind_, cells_);
    std::vector<std::string> offered(cells_.columns);
    if (places.hasHeader) offered = cells_.lines.front();
    if (offered != offered_ || places.hasHeader != hasHeader_)
        byHand_.assign(columns_.size(), false);
    hasHeader_ = places.hasHeader;
    offered_ = std::move(offered);
    filling_ = true;
    for (std::size_t i = 0; i < columns_.size(); ++i) offerColumn(i, places.at[i]);
    filling_ = false;
}

void PasteDialog::offerColumn(std::size_t column, std::optional<std::size_t> found) {
    if (byHand_[column]) return;
    auto* box = columns_[column];
    box->clear();
    box->addItem(paste_text::nowhere());
    for (std::size_t at = 0; at < offered_.size(); ++at)
        box->addItem(paste_text::cellColumn(static_cast<int>(at) + 1, plain(offered_[at])));
    box->setCurrentIndex(found ? static_cast<int>(*found) + 1 : 0);
}

std::vector<PasteDialog::UsedColumn> PasteDialog::usedColumns() const {
    std::vector<UsedColumn> used;
    for (std::size_t i = 0; i < columns_.size(); ++i)
        if (columns_[i]->currentIndex() > 0)
            used.push_back(
                {&kind_.columns[i], static_cast<std::size_t>(columns_[i]->currentIndex() - 1)});
    return used;
}

/// The lines as import takes them.
std::vector<std::vector<std::string>> PasteDialog::linesRead(
    const std::vector<UsedColumn>& used) const {
    std::vector<std::vector<std::string>> lines;
    for (std::size_t line = firstLine(); line < cells_.lines.size(); ++line) {
        auto& read = lines.emplace_back();
        for (const auto& [column, at] : used)
            read.push_back(column->read(plain(cells_.lines[line][at])).toStdString());
    }
    return lines;
}

void PasteDialog::tellInWords(const std::vector<UsedColumn>& used, PastedEdit& edit) const {
    for (auto& trouble : edit.troubles)
        for (const auto& [column, at] : used) {
            const auto token = "column " + column->token + ": ";
            const bool hasOwnName = column->name != plain(column->token);
            if (!hasOwnName || trouble.rfind(token, 0) != 0) continue;
            trouble = paste_text::inColumn(column->name, plain(trouble.substr(token.size())))
                          .toStdString();
            break;
        }
    for (std::size_t i = 0; i < edit.troubles.size(); ++i)
        for (const auto& [column, at] : used) {
            const auto wrong =
                column->wrong ? column->wrong(plain(cells_.lines[firstLine() + i][at])) : QString();
            if (wrong.isEmpty()) continue;
            edit.troubles[i] = paste_text::inColumn(column->name, wrong).toStdString();
            edit.changes = {};
            break;
        }
}

PastedEdit PasteDialog::editFor(const std::vector<std::string>& tokens,
                                const std::vector<std::vector<std::string>>& lines) const {
    if (kind_.edit) return kind_.edit(tokens, lines);
    return editOf(kind_.book ? *kind_.book : desk_.snapshot(), kind_.kind, tokens, lines,
                  [] { return idMaker().next(); });
}

/// What the lines would bring, and what is wrong with them.
void PasteDialog::judge() {
    told_->hide();
    const auto used = usedColumns();
    std::vector<std::string> tokens;
    for (const auto& each : used) tokens.push_back(each.column->token);
    const auto lines = linesRead(used);
    QStringList missing;
    for (std::size_t i = 0; i < columns_.size(); ++i)
        if (kind_.columns[i].needed && columns_[i]->currentIndex() <= 0)
            missing += kind_.columns[i].name;
    edit_ = {};
    if (missing.isEmpty() && !lines.empty()) edit_ = editFor(tokens, lines);
    tellInWords(used, edit_);
    const int all = static_cast<int>(lines.size());
    show(edit_, all);
    summary_->setText(summaryOf(missing, all));
    take_->setText(kind_.takeIn(all));
    take_->setEnabled(all > 0 && missing.isEmpty() && edit_.isGood());
}

QString PasteDialog::summaryOf(const QStringList& missing, int lines) const {
    if (lines == 0) return paste_text::nothing();
    if (!missing.isEmpty()) return paste_text::missing(missing);
    const auto bad = std::count_if(edit_.troubles.begin(), edit_.troubles.end(),
                                   [](const auto& trouble) { return !trouble.empty(); });
    if (bad > 0) return paste_text::troubled(static_cast<int>(bad), lines, firstTrouble());
    return paste_text::goodBut(paste_text::good(sumsOf(edit_)), unreadHeads());
}

QStringList PasteDialog::unreadHeads() const {
    QStringList heads;
    for (std::size_t at = 0; hasHeader_ && at < offered_.size(); ++at) {
        const bool isRead = std::any_of(
            columns_.begin(), columns_.end(),
            [&](const QComboBox* box) { return box->currentIndex() == static_cast<int>(at) + 1; });
        if (!isRead && !offered_[at].empty()) heads += plain(offered_[at]);
    }
    return heads;
}

QString PasteDialog::firstTrouble() const {
    const auto found = std::find_if(edit_.troubles.begin(), edit_.troubles.end(),
                                    [](const auto& trouble) { return !trouble.empty(); });
    if (found == edit_.troubles.end()) return {};
    const int line = static_cast<int>(found - edit_.troubles.begin()) + (hasHeader_ ? 2 : 1);
    return paste_text::lineAnd(line, plain(*found));
}

/// Line by line: its number, what is wrong or what it brings, then its cells as they were read.
void PasteDialog::show(const PastedEdit& edit, int lines) {
    const auto used = usedColumns();
    QStringList heads{paste_text::line(), paste_text::state()};
    for (const auto& each : used) heads += each.column->name;
    preview_->setColumnCount(static_cast<int>(heads.size()));
    for (auto& head : heads) head.remove(u'&');
    preview_->setHorizontalHeaderLabels(heads);
    const int rows = std::min(kMostShown, lines);
    preview_->setRowCount(rows);
    shownOf_->setText(rows < lines ? paste_text::shownOf(rows, lines) : QString());
    shownOf_->setVisible(rows < lines);
    const auto danger = paletteOf(lookOf(palette()))[Role::Danger];
    int firstBad = -1;
    for (int row = 0; row < rows; ++row) {
        const auto at = static_cast<std::size_t>(row);
        const auto trouble = at < edit.troubles.size() ? plain(edit.troubles[at]) : QString();
        preview_->setItem(row, 0,
                          new QTableWidgetItem(QString::number(row + (hasHeader_ ? 2 : 1))));
        auto* state = new QTableWidgetItem(stateOf(edit, at));
        state->setToolTip(trouble);
        if (!trouble.isEmpty()) state->setForeground(danger);
        preview_->setItem(row, 1, state);
        if (!trouble.isEmpty() && firstBad < 0) firstBad = row;
        for (std::size_t i = 0; i < used.size(); ++i) {
            const auto typed = plain(cells_.lines[firstLine() + at][used[i].at]);
            const auto& column = *used[i].column;
            const auto shown = column.shown ? column.shown(typed) : column.read(typed);
            preview_->setItem(row, static_cast<int>(i) + 2, new QTableWidgetItem(shown));
        }
    }
    preview_->resizeColumnsToContents();
    // Once the lines have their place on the screen.
    QTimer::singleShot(0, preview_, [this, firstBad] {
        const auto where = preview_->model()->index(firstBad, 0);
        if (where.isValid()) preview_->scrollTo(where, QAbstractItemView::PositionAtCenter);
    });
}

void PasteDialog::accept() {
    if (rest_->isActive()) {  // what nobody has seen yet is not taken
        readText();
        if (!take_->isEnabled()) return;
        told_->setText(paste_text::lookAgain());
        return told_->show();
    }
    if (!take_->isEnabled()) return;
    auto changes = edit_.changes;
    if (changes.isEmpty() && !kind_.isPart) {
        told_->setText(paste_text::nothingNew());
        return told_->show();
    }
    changes.verb = Verb::Import;
    changes.subject = kind_.named;
    const auto why = save_(changes);
    if (why.isEmpty()) return QDialog::accept();
    told_->setText(why);
    told_->show();
}

}  // namespace tenthday
