#include <QApplication>
#include <QFileInfo>
#include <QStyleFactory>
#include <cstdio>

#include "book/book_file.h"
#include "exchange/example.h"
#include "headless/headless.h"
#include "look/wheel_guard.h"
#include "options/language.h"
#include "window/main_window.h"

namespace tenthday {
namespace {

/// What the command line asks of the window.
struct WindowCall {
    QString book;
    std::optional<Day> today;
};

Result<WindowCall> readCall(const QStringList& arguments) {
    WindowCall call;
    for (int i = 0; i < arguments.size(); ++i) {
        const auto& argument = arguments[i];
        if (argument == QStringLiteral("--today")) {
            const auto text = arguments.value(++i).toStdString();
            call.today = dayFromText(text);
            if (!call.today) return Error{"--today: no day: " + text};
        } else if (argument.startsWith(u'-') || !call.book.isEmpty()) {
            return Error{"not understood: " + argument.toStdString()};
        } else if (!QFileInfo::exists(argument)) {
            return Error{argument.toStdString() + ": neither a command nor a file"};
        } else {
            call.book = argument;
        }
    }
    return call;
}

/// Qt would end the program with several lines of its own.
bool hasDisplay() {
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

int fail(const std::string& text, int code) {
    std::fprintf(stderr, "tenthday: %s\n", text.c_str());
    return code;
}

int runWindow(int argc, char** argv) {
    QStringList arguments;
    for (int i = 1; i < argc; ++i) arguments += QString::fromLocal8Bit(argv[i]);
    const auto call = readCall(arguments);
    if (!call) return fail(call.error().text, 2);
    if (!hasDisplay()) return fail("there is no display to open a window on", 1);
    QApplication app(argc, argv);
    QApplication::setApplicationName(QStringLiteral("tenthday"));
    QApplication::setApplicationDisplayName(QStringLiteral("Tenthday"));
    QApplication::setApplicationVersion(QStringLiteral(TENTHDAY_VERSION));
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    WheelGuard wheel;
    app.installEventFilter(&wheel);
    auto settings = Settings::ofUser();
    speak(settings.language());
    MainWindow window(std::move(settings), Clock(call.value().today),
                      [](const QString& path) { return createBook(path, exampleContent()); });
    window.show();
    window.start(call.value().book);
    return QApplication::exec();
}

}  // namespace
}  // namespace tenthday

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
    if (tenthday::isHeadless(words)) return tenthday::runHeadless(words);
    return tenthday::runWindow(argc, argv);
}
