#include "app/book/child_writer.h"

#include <QCoreApplication>
#include <cstdio>

#include "app/book/book_fixture.h"
#include "book/new_id.h"

namespace tenthday::test {

int runChildWriter(int argc, char** argv) {
    const QCoreApplication app(argc, argv);
    const auto arguments = QCoreApplication::arguments();
    auto book = BookFile::open(arguments.at(2), fixedOptions());
    if (!book) return std::fprintf(stderr, "%s\n", book.error().text.c_str()), 1;
    for (int edit = arguments.at(3).toInt();; ++edit) {
        ChangeSet changes;
        for (int row = 0; row < kRowsOfAChildEdit; ++row)
            changes.add(DayOff{newId<DayOff>(), 1, day("2027-06-01"), day("2027-06-02"),
                               std::to_string(edit)});
        if (auto written = book.value()->write(changes); !written)
            return std::fprintf(stderr, "%s\n", written.error().text.c_str()), 1;
        std::printf("%d\n", edit);
        std::fflush(stdout);
    }
}

}  // namespace tenthday::test
