#include <gtest/gtest.h>

#ifdef TENTHDAY_APP
#include <QApplication>
#endif

int main(int argc, char** argv) {
    ::testing::InitGoogleTest(&argc, argv);
#ifdef TENTHDAY_APP
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication app(argc, argv);
#endif
    return RUN_ALL_TESTS();
}
