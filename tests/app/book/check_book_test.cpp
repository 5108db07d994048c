#include "book/check_book.h"

#include <QFile>

#include "app/book/book_fixture.h"

namespace tenthday {
namespace {

class CheckBook : public test::BookTest {
protected:
    /// The faults as "subject: detail", sorted as they come.
    std::string faultsOf(const QString& path) {
        const auto before = state();
        const auto lines = checkBook(path);
        if (!lines) return "error: " + lines.error().text;
        std::string faults;
        for (const auto& line : lines.value())
            if (!line.good) faults += line.subject + ": " + line.detail + "\n";
        EXPECT_EQ(state(), before);
        return faults;
    }
};

TEST_F(CheckBook, FindsASoundBookSound) {
    const auto path = makeSmallBook();
    EXPECT_EQ(faultsOf(path), "");
    const auto lines = checkBook(path).value();
    const auto has = [&](std::string_view subject, std::string_view detail) {
        return std::any_of(lines.begin(), lines.end(), [&](const CheckLine& line) {
            return line.subject == subject && line.detail == detail;
        });
    };
    EXPECT_TRUE(has("file", "sound"));
    EXPECT_TRUE(has("schema", "schema 7"));
    EXPECT_TRUE(has("nuc_side", "2 rows"));
    EXPECT_TRUE(has("yard", "1 row"));
    EXPECT_TRUE(has("references", "all lead to a row"));
}

TEST_F(CheckBook, NamesEachFault) {
    const auto path = makeSmallBook();
    tamper(path,
           QStringLiteral("UPDATE batch SET method = '01900000-0000-7000-8000-0000000000ff'"));
    tamper(path, QStringLiteral("UPDATE yard SET id = 'somewhere-else-36-characters-long-xx'"));
    const auto faults = faultsOf(path);
    EXPECT_NE(faults.find("yard: yard somewhere-else"), std::string::npos) << faults;
    EXPECT_NE(faults.find("references: batch "), std::string::npos) << faults;
}

TEST_F(CheckBook, AnswersAboutADamagedFile) {
    const auto path = makeSmallBook();
    QFile file(path);
    ASSERT_TRUE(file.resize(QFileInfo(file).size() / 2));
    EXPECT_NE(faultsOf(path).find("file: "), std::string::npos);
}

TEST_F(CheckBook, RefusesWhatIsNoBook) {
    const auto path = at(QStringLiteral("none.tenthday"));
    EXPECT_EQ(faultsOf(path), "error: " + path.toStdString() + ": there is no such file");
}

}  // namespace
}  // namespace tenthday
