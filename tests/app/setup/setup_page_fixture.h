/// @file setup_page_fixture.h  The set-up page over a book, driven by keys and clicks.
#pragma once
#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QTableView>
#include <QTest>
#include <QTimer>

#include "app/book/book_fixture.h"
#include "book/new_book.h"
#include "exchange/example.h"
#include "setup/setup_page.h"

namespace tenthday::test {

/// A book, new or the example, and the set-up page over it, driven by keys and clicks.
class SetupPageTest : public BookTest {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    }
    void TearDown() override {
        page_.reset();
        QLocale::setDefault(QLocale::c());
    }
    void open(const ChangeSet& content, Access access = Access::ReadWrite) {
        const auto path = at(QStringLiteral("book.tenthday"));
        ASSERT_TRUE(createBook(path, content, test::fixedOptions()).ok());
        desk_ = Desk::open(path, test::fixedOptions(access)).value();
        page_ = std::make_unique<SetupPage>(*desk_);
        page_->resize(1300, 700);
        page_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page_.get()));
    }
    void openEmpty() { open(newBookContent(planFor("Mill", test::day("2027-05-01")))); }
    void openExample(Access access = Access::ReadWrite) { open(exampleContent(), access); }

    /// Goes to a kind by keys.
    void goTo(setup_text::Kind kind) {
        page_->kinds().setFocus();
        QTest::keyClick(&page_->kinds(), Qt::Key_Home);
        for (int i = 0; i < static_cast<int>(kind); ++i)
            QTest::keyClick(&page_->kinds(), Qt::Key_Down);
        ASSERT_EQ(page_->kinds().currentRow(), static_cast<int>(kind));
    }
    template <class Widget>
    Widget& field(const QString& name) {
        for (auto* widget : page_->form().findChildren<Widget*>())
            if (widget->accessibleName() == name) return *widget;
        ADD_FAILURE() << "no field " << name.toStdString();
        throw std::out_of_range(name.toStdString());
    }
    void type(const QString& name, const QString& text) {
        auto& line = field<QLineEdit>(name);
        line.setFocus();
        line.selectAll();
        QTest::keyClicks(&line, text);
    }
    void choose(const QString& name, const QString& text) {
        auto& box = field<QComboBox>(name);
        box.setFocus();
        QTest::keyClick(&box, Qt::Key_Home);
        for (int i = 1; i < box.count() && box.currentText() != text; ++i)
            QTest::keyClick(&box, Qt::Key_Down);
        ASSERT_EQ(box.currentText().toStdString(), text.toStdString());
    }
    void choose(setup_text::Name name, const QString& text) {
        choose(setup_text::name(name), text);
    }
    void typeDay(setup_text::Name name, std::string_view text) {
        type(setup_text::name(name), setup_text::day(test::day(text)));
    }
    void chooseRow(const QString& text) {
        const auto& model = *page_->table().model();
        for (int row = 0; row < model.rowCount(); ++row)
            for (int column = 0; column < model.columnCount(); ++column)
                if (model.index(row, column).data().toString() == text) {
                    const auto where = page_->table().visualRect(model.index(row, column));
                    QTest::mouseClick(page_->table().viewport(), Qt::LeftButton, {},
                                      where.center());
                    return;
                }
        FAIL() << "no line " << text.toStdString();
    }
    QString cell(int row, int column, int role = Qt::DisplayRole) {
        return page_->table().model()->index(row, column).data(role).toString();
    }
    QString under(std::size_t field) { return page_->form().under(field); }
    /// Answers the next dialog with what `answer` does to it.
    template <class Dialog>
    void answerNext(std::function<void(Dialog&)> answer) {
        QTimer::singleShot(0, page_.get(), [this, answer] {
            auto* dialog = qobject_cast<Dialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            answered_ = true;
            answer(*dialog);
        });
    }

    bool answered_ = false;
    std::unique_ptr<Desk> desk_;
    std::unique_ptr<SetupPage> page_;
};

}  // namespace tenthday::test
