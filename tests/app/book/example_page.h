/// @file example_page.h  A page of the window on a book of the example.
#pragma once
#include <QFile>
#include <QTableView>
#include <QTest>
#include <memory>

#include "app/book/book_fixture.h"
#include "desk/desk.h"
#include "exchange/example.h"

namespace tenthday::test {

/// Puts a book of the example at the path; false where that fails. It is written once and copied
/// from then on: to write it takes longer than most of what is tried on it.
inline bool makeExampleBook(const QString& path) {
    static const QTemporaryDir folder;
    static const QString first = folder.filePath(QStringLiteral("example.tenthday"));
    static const bool made = createBook(first, exampleContent(), fixedOptions()).ok();
    return made && QFile::copy(first, path);
}

/// Shown, with the keys in its table. @tparam Page  made of a desk; has a table()
template <class Page>
class ExamplePageTest : public BookTest {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        path_ = at(QStringLiteral("example.tenthday"));
        ASSERT_TRUE(makeExampleBook(path_));
        openPage({});
    }
    void openPage(const OpenOptions& options) {
        page_.reset();
        desk_.reset();
        desk_ = Desk::open(path_, options).value();
        page_ = std::make_unique<Page>(*desk_);
        page_->resize(1300, 680);
        page_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page_.get()));
        page_->table().setFocus();
    }
    /// On a day of one's own.
    void openPage(Access access, std::string_view today) {
        OpenOptions options;
        options.access = access;
        options.clock = Clock(day(today));
        openPage(options);
    }
    void TearDown() override {
        page_.reset();
        QLocale::setDefault(QLocale::c());
    }
    QTableView& table() { return page_->table(); }

    QString path_;
    std::unique_ptr<Desk> desk_;
    std::unique_ptr<Page> page_;
};

}  // namespace tenthday::test
