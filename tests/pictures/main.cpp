// tenthday_pictures OUT_DIR [BEGINNING_OF_NAMES]: a picture of every panel, light and dark, and of
// the season chart in every state. Needs no display.
#include <QApplication>
#include <QDir>
#include <QStyleFactory>
#include <QTemporaryDir>
#include <cstdio>

#include "options/language.h"
#include "pictures/chart_states.h"
#include "pictures/panels.h"

namespace {

/// The offscreen platform says of every window what it cannot do.
void keepQuiet(QtMsgType, const QMessageLogContext&, const QString&) {}

}  // namespace

int main(int argc, char** argv) {
    using namespace tenthday;
    qInstallMessageHandler(keepQuiet);
    if (argc != 2 && argc != 3) {
        std::fprintf(stderr, "tenthday_pictures OUT_DIR [BEGINNING_OF_NAMES]\n");
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication app(argc, argv);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    useTexts(Language::English);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const QDir out(QString::fromLocal8Bit(argv[1]));
    const QTemporaryDir scratch;
    if (!out.mkpath(QStringLiteral(".")) || !scratch.isValid()) {
        std::fprintf(stderr, "%s: cannot be written to\n", argv[1]);
        return 1;
    }
    int failed = 0;
    const auto beginning = QString::fromLocal8Bit(argc == 3 ? argv[2] : "");
    const auto wanted = [&](const QString& name) { return name.startsWith(beginning); };
    const auto save = [&](const QImage& picture, const QString& name) {
        const auto path = out.filePath(name);
        const bool saved = picture.save(path);
        std::printf("%s%s\n", path.toLocal8Bit().constData(), saved ? "" : ": failed");
        failed += saved ? 0 : 1;
    };
    for (const auto& panel : test::panels()) {
        if (!wanted(panel.name)) continue;
        auto pictures = test::picturesOf(panel, scratch.path());
        pictures.resize(test::kLooks.size());
        for (std::size_t i = 0; i < pictures.size(); ++i)
            save(pictures[i], test::fileName(panel, test::kLooks[i]));
    }
    for (const auto& state : test::chartStates())
        if (wanted(state.name)) save(state.picture(), state.name + QStringLiteral(".png"));
    return failed == 0 ? 0 : 1;
}
