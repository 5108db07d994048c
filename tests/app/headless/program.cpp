#include "app/headless/program.h"

#include <charconv>
#include <cmath>

#include <QDir>
#include <QFile>
#include <QProcess>

#include "exchange/csv.h"

namespace tenthday::test {

ProgramRun run(const std::vector<std::string>& words,
               const std::map<std::string, std::string>& environment, const std::string& folder) {
    const auto own = QProcessEnvironment::systemEnvironment();
    QProcessEnvironment bare;
    for (const auto* name : {"PATH", "HOME", "ASAN_OPTIONS", "LSAN_OPTIONS", "UBSAN_OPTIONS"})
        if (own.contains(QString::fromLatin1(name)))
            bare.insert(QString::fromLatin1(name), own.value(QString::fromLatin1(name)));
    for (const auto& [name, value] : environment)
        bare.insert(QString::fromStdString(name), QString::fromStdString(value));
    QStringList arguments;
    for (const auto& word : words) arguments += QString::fromStdString(word);
    QProcess process;
    process.setProcessEnvironment(bare);
    if (!folder.empty()) process.setWorkingDirectory(QString::fromStdString(folder));
    process.start(QStringLiteral(TENTHDAY_PROGRAM), arguments);
    EXPECT_TRUE(process.waitForFinished(240000)) << TENTHDAY_PROGRAM;
    EXPECT_EQ(process.exitStatus(), QProcess::NormalExit);
    return {process.exitCode(), process.readAllStandardOutput().toStdString(),
            process.readAllStandardError().toStdString()};
}

std::string ProgramTest::at(const std::string& name) const {
    return folder_.filePath(QString::fromStdString(name)).toStdString();
}

std::string ProgramTest::write(const std::string& name, const std::string& text) const {
    QFile file(QString::fromStdString(at(name)));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(text));
    return at(name);
}

std::string ProgramTest::bytesOf(const std::string& path) const {
    QFile file(QString::fromStdString(path));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path;
    return file.readAll().toStdString();
}

std::vector<std::string> ProgramTest::files() const {
    std::vector<std::string> names;
    for (const auto& name :
         QDir(folder_.path()).entryList(QDir::AllEntries | QDir::NoDotAndDotDot | QDir::Hidden))
        names.push_back(name.toStdString());
    return names;
}

std::string ProgramTest::makeExample(const std::string& name) const {
    // Made by the program once; the others are copies of that file.
    static const std::string made = [this, &name] {
        EXPECT_EQ(runHere({"example", at(name)}).exit, 0);
        return bytesOf(at(name));
    }();
    return write(name, made);
}

std::string ProgramTest::makeNew(const std::string& name) const {
    EXPECT_EQ(runHere({"new", at(name), "--today", "2027-04-01"}).exit, 0);
    return at(name);
}

void ProgramTest::import(const std::string& book, const std::string& kind,
                         const std::string& text) const {
    const auto done = runHere({"import", book, kind, write(kind + ".csv", text)});
    EXPECT_EQ(done.exit, 0) << kind;
    EXPECT_EQ(done.err, "") << kind;
}

std::string ProgramTest::answer(const std::vector<std::string>& words) const {
    const auto done = runHere(words);
    EXPECT_EQ(done.exit, 0) << words.front();
    EXPECT_EQ(done.err, "");
    return done.out;
}

ProgramRun ProgramTest::runHere(const std::vector<std::string>& words) const {
    return run(words, {}, folder_.path().toStdString());
}

double numberIn(const std::string& field) {
    double value = std::nan("");
    std::from_chars(field.data(), field.data() + field.size(), value);
    return value;
}

std::vector<std::map<std::string, std::string>> rowsOf(const std::string& csv) {
    const auto records = readCsv(csv);
    EXPECT_TRUE(records.ok() && !records.value().empty()) << csv;
    std::vector<std::map<std::string, std::string>> rows;
    if (!records || records.value().empty()) return rows;
    const auto& names = records.value().front().fields;
    for (std::size_t i = 1; i < records.value().size(); ++i) {
        const auto& fields = records.value()[i].fields;
        EXPECT_EQ(fields.size(), names.size()) << csv;
        auto& row = rows.emplace_back();
        for (std::size_t c = 0; c < names.size() && c < fields.size(); ++c)
            row[names[c]] = fields[c];
    }
    return rows;
}

}  // namespace tenthday::test
