#include <gtest/gtest.h>

#include <clocale>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <sstream>
#include <string>

#ifdef TENTHDAY_APP
#include <QApplication>
#include <string_view>

#include "app/book/child_writer.h"
#include "options/language.h"
#endif

namespace {

/// Where TENTHDAY_PLACE says "LOCALE ZONE", the suite runs there or not at all.
bool isInPlace() {
    const char* place = std::getenv("TENTHDAY_PLACE");
    if (place == nullptr) return true;
    std::istringstream words(place);
    std::string language;
    std::string zone;
    words >> language >> zone;
    const char* tz = std::getenv("TZ");
    const bool speaks = std::setlocale(LC_ALL, "") != nullptr &&
                        std::string(std::setlocale(LC_ALL, nullptr)) == language;
    const bool lives =
        tz != nullptr && tz == zone && std::filesystem::exists("/usr/share/zoneinfo/" + zone);
    if (!speaks || !lives) std::fprintf(stderr, "not in %s\n", place);
    return speaks && lives;
}

}  // namespace

int main(int argc, char** argv) {
#ifdef TENTHDAY_APP
    if (argc == 4 && std::string_view(argv[1]) == tenthday::test::kChildWriterFlag)
        return tenthday::test::runChildWriter(argc, argv);
#endif
    ::testing::InitGoogleTest(&argc, argv);
#ifdef TENTHDAY_APP
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication app(argc, argv);
    // The suite asks for English words, wherever it runs.
    tenthday::useTexts(tenthday::Language::English);
#endif
    if (!isInPlace()) return 1;
    return RUN_ALL_TESTS();
}
