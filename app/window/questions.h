/// @file questions.h  What the window asks and tells its user; tests answer in their stead.
#pragma once
#include <QString>
#include <QStringList>
#include <optional>
#include <string>

#include "base/result.h"
#include "chart/picture.h"
#include "window/new_book_dialog.h"

class QWidget;

namespace tenthday {

/// A list as a file: which, and of what kind (one of exportKinds()).
struct ListFile {
    QString path;
    std::string kind;
    bool forSpreadsheet = false;  ///< with the separators of the locale
};

/// The season as a picture: where, and on which paper where it is for the wall.
struct PictureFile {
    QString path;
    std::optional<Poster> poster;
};

class Questions {
public:
    virtual ~Questions() = default;
    /// Each gives a path, empty when the user thought better of it.
    virtual QString bookToOpen() = 0;
    /// An existing file is given only when the user agreed to replace it.
    virtual QString placeForCopy(const QString& suggestion) = 0;
    /// Each gives nothing when the user thought better of it.
    virtual std::optional<NewBookWish> newBook(Day today) = 0;
    virtual std::optional<ListFile> listToImport() = 0;
    virtual std::optional<ListFile> placeForList() = 0;
    /// @param suggestion  name without its ending
    virtual std::optional<PictureFile> placeForPicture(const QString& suggestion) = 0;
    /// @param backups  full paths, newest first; may be empty, then it is told
    virtual QString backupToRestore(const QStringList& backups) = 0;
    /// The book is damaged: shall this backup take its place?
    virtual bool restoreInstead(const Error& why, const QString& backup) = 0;
    /// The book cannot be written, but read: shall it be?
    virtual bool readInstead(const Error& why) = 0;
    /// @param hint  a further line, may be empty
    virtual void tell(const QString& what, const Error& why, const QString& hint) = 0;
};

/// Asks with the desktop's dialogs.
class DialogQuestions : public Questions {
public:
    explicit DialogQuestions(QWidget* window) : window_(window) {}
    QString bookToOpen() override;
    std::optional<NewBookWish> newBook(Day today) override;
    QString placeForCopy(const QString& suggestion) override;
    std::optional<ListFile> listToImport() override;
    std::optional<ListFile> placeForList() override;
    std::optional<PictureFile> placeForPicture(const QString& suggestion) override;
    QString backupToRestore(const QStringList& backups) override;
    bool restoreInstead(const Error& why, const QString& backup) override;
    bool readInstead(const Error& why) override;
    void tell(const QString& what, const Error& why, const QString& hint) override;

private:
    QWidget* window_;
};

}  // namespace tenthday
