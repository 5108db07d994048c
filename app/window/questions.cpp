#include "window/questions.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QInputDialog>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>

#include "exchange/kinds.h"
#include "screen_text/picture_text.h"
#include "screen_text/season_text.h"
#include "screen_text/window_text.h"
#include "window/backup_dialog.h"

namespace tenthday {
namespace {

/// Where people keep their own files; a bare system may have no folder for it.
QString documents() {
    const auto path = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QDir(path).exists() ? path : QDir::homePath();
}

/// The kind chosen, proposed from the file's name; empty when given up.
std::string askKind(QWidget* window, const QString& title, const QString& fileName) {
    QStringList names;
    int proposed = 0;
    for (const auto kind : exportKinds()) {
        const auto token = QString::fromUtf8(kind.data(), static_cast<qsizetype>(kind.size()));
        if (fileName.startsWith(token, Qt::CaseInsensitive))
            proposed = static_cast<int>(names.size());
        names += window_text::kindName(token);
    }
    bool chosen = false;
    const auto name = QInputDialog::getItem(window, title, window_text::whichKind(), names,
                                            proposed, false, &chosen);
    return chosen ? std::string(exportKinds()[static_cast<std::size_t>(names.indexOf(name))])
                  : std::string();
}

QString saveName(QWidget* window, const QString& title, const QString& suggestion) {
    QFileDialog dialog(window, title, QString(), window_text::bookFiles());
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("tenthday"));
    dialog.selectFile(suggestion);
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().value(0) : QString();
}

}  // namespace

QString DialogQuestions::bookToOpen() {
    return QFileDialog::getOpenFileName(window_, window_text::asTitle(window_text::openBook()),
                                        documents(), window_text::bookFiles());
}

std::optional<NewBookWish> DialogQuestions::newBook(Day today) {
    NewBookDialog dialog(today, documents(), window_);
    return dialog.exec() == QDialog::Accepted ? std::optional(dialog.wish()) : std::nullopt;
}

QString DialogQuestions::placeForCopy(const QString& suggestion) {
    return saveName(window_, window_text::asTitle(window_text::saveCopy()), suggestion);
}

std::optional<ListFile> DialogQuestions::listToImport() {
    const auto path =
        QFileDialog::getOpenFileName(window_, window_text::asTitle(window_text::importList()),
                                     documents(), window_text::listFiles());
    if (path.isEmpty()) return std::nullopt;
    const auto kind = askKind(window_, window_text::asTitle(window_text::importList()),
                              QFileInfo(path).completeBaseName());
    if (kind.empty()) return std::nullopt;
    return ListFile{path, kind};
}

std::optional<ListFile> DialogQuestions::placeForList() {
    const auto kind = askKind(window_, window_text::asTitle(window_text::exportList()), {});
    if (kind.empty()) return std::nullopt;
    QFileDialog dialog(window_, window_text::asTitle(window_text::exportList()), documents(),
                       window_text::listFiles());
    dialog.setNameFilters({window_text::listFiles(), season_text::spreadsheetFiles()});
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("csv"));
    dialog.selectFile(QString::fromStdString(kind) + QStringLiteral(".csv"));
    if (dialog.exec() != QDialog::Accepted) return std::nullopt;
    return ListFile{dialog.selectedFiles().value(0), kind,
                    dialog.selectedNameFilter() == season_text::spreadsheetFiles()};
}

std::optional<PictureFile> DialogQuestions::placeForPicture(const QString& suggestion) {
    struct Kind {
        QString name;
        QString suffix;
        std::optional<Poster> poster;
    };
    const Kind kinds[] = {{picture_text::posterA3(), QStringLiteral("pdf"), Poster::A3},
                          {picture_text::posterA4(), QStringLiteral("pdf"), Poster::A4},
                          {picture_text::pixels(), QStringLiteral("png"), {}},
                          {picture_text::drawing(), QStringLiteral("svg"), {}}};
    QStringList names;
    for (const auto& kind : kinds) names.append(kind.name);
    QFileDialog dialog(window_, window_text::asTitle(picture_text::entry()), documents());
    dialog.setNameFilters(names);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    // So that the dialog itself asks before a file gives way.
    const auto end = [&](const QString& name) {
        dialog.setDefaultSuffix(kinds[std::max<qsizetype>(0, names.indexOf(name))].suffix);
    };
    QObject::connect(&dialog, &QFileDialog::filterSelected, &dialog, end);
    end(names.front());
    dialog.selectFile(suggestion);
    if (dialog.exec() != QDialog::Accepted) return std::nullopt;
    auto path = dialog.selectedFiles().value(0);
    const auto& kind = kinds[std::max<qsizetype>(0, names.indexOf(dialog.selectedNameFilter()))];
    if (QFileInfo(path).suffix().toLower() != kind.suffix) path += u'.' + kind.suffix;
    return PictureFile{path, kind.poster};
}

QString DialogQuestions::backupToRestore(const QStringList& backups) {
    if (backups.isEmpty()) {
        QMessageBox::information(window_, window_text::asTitle(window_text::restoreBackup()),
                                 window_text::noBackups());
        return {};
    }
    BackupDialog dialog(backups, window_);
    return dialog.exec() == QDialog::Accepted ? dialog.chosen() : QString();
}

bool DialogQuestions::restoreInstead(const Error& why, const QString& backup) {
    QMessageBox box(QMessageBox::Warning, window_text::title({}), window_text::cannotOpen(),
                    QMessageBox::NoButton, window_);
    box.setInformativeText(QString::fromStdString(why.text) + QStringLiteral("\n\n") +
                           window_text::restoreDamaged(backup));
    const auto* restore = box.addButton(window_text::restoreNow(), QMessageBox::AcceptRole);
    box.addButton(window_text::doNotOpen(), QMessageBox::RejectRole);
    box.exec();
    return box.clickedButton() == restore;
}

bool DialogQuestions::readInstead(const Error& why) {
    QMessageBox box(QMessageBox::Question, window_text::title({}), window_text::cannotOpen(),
                    QMessageBox::NoButton, window_);
    box.setInformativeText(QString::fromStdString(why.text));
    const auto* read = box.addButton(window_text::openForReading(), QMessageBox::AcceptRole);
    box.addButton(window_text::doNotOpen(), QMessageBox::RejectRole);
    box.exec();
    return box.clickedButton() == read;
}

void DialogQuestions::tell(const QString& what, const Error& why, const QString& hint) {
    QMessageBox box(QMessageBox::Warning, window_text::title({}), what, QMessageBox::Ok, window_);
    const auto reason = QString::fromStdString(why.text);
    box.setInformativeText(hint.isEmpty() ? reason : reason + QStringLiteral("\n\n") + hint);
    box.exec();
}

}  // namespace tenthday
