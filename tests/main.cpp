#include <gtest/gtest.h>

#ifdef TENTHDAY_APP
#include <QApplication>
#include <string_view>

#include "app/book/child_writer.h"
#endif

int main(int argc, char** argv) {
#ifdef TENTHDAY_APP
    if (argc == 4 && std::string_view(argv[1]) == tenthday::test::kChildWriterFlag)
        return tenthday::test::runChildWriter(argc, argv);
#endif
    ::testing::InitGoogleTest(&argc, argv);
#ifdef TENTHDAY_APP
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication app(argc, argv);
#endif
    return RUN_ALL_TESTS();
}
