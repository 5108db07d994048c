#include "chart/picture.h"

#include <QFileInfo>

#include "exchange/field_text.h"
#include "headless/optional_day.h"

namespace tenthday {
namespace {

constexpr std::int32_t kLeastSide = 200;
constexpr std::int32_t kMostSide = 20000;

struct Wish {
    std::string path;
    PictureOptions options;
    std::optional<Day> from;
    std::optional<Day> to;
};

/// "1920x1080".
std::optional<QSize> sizeOf(std::string_view text) {
    const auto cross = text.find('x');
    if (cross == std::string_view::npos) return std::nullopt;
    std::int32_t width = 0;
    std::int32_t height = 0;
    if (readField(text.substr(0, cross), width) || readField(text.substr(cross + 1), height))
        return std::nullopt;
    const auto fits = [](auto side) { return side >= kLeastSide && side <= kMostSide; };
    return fits(width) && fits(height) ? std::optional(QSize(width, height)) : std::nullopt;
}

Result<void> readSizeAndLook(const Arguments& arguments, PictureOptions& options) {
    if (const auto text = arguments.value("--size")) {
        const auto size = sizeOf(*text);
        if (!size)
            return optionError("--size",
                               "a size such as 1920x1080, each side from 200 to 20000, "
                               "is needed, not " +
                                   inQuotes(*text));
        options.size = *size;
    }
    if (const auto text = arguments.value("--poster")) {
        Poster poster{};
        if (const auto complaint = readField(*text, poster))
            return optionError("--poster", *complaint);
        options.poster = poster;
    }
    if (const auto text = arguments.value("--look"))
        if (const auto complaint = readField(*text, options.look))
            return optionError("--look", *complaint);
    return {};
}

Result<Wish> readWish(const Arguments& arguments) {
    Wish wish;
    const auto path = arguments.value("--out");
    if (!path) return optionError("--out", "is missing");
    const auto suffix = QFileInfo(QString::fromStdString(*path)).suffix().toLower();
    if (!QStringList{QStringLiteral("png"), QStringLiteral("svg"), QStringLiteral("pdf")}.contains(
            suffix))
        return optionError(
            "--out", "a name that ends in .png, .svg or .pdf is needed, not " + inQuotes(*path));
    wish.path = *path;
    const auto from = optionalDay(arguments, "--from");
    if (!from) return from.error();
    const auto to = optionalDay(arguments, "--to");
    if (!to) return to.error();
    const auto on = optionalDay(arguments, "--on");
    if (!on) return on.error();
    wish.options.chosenDay = on.value();
    wish.from = from.value();
    wish.to = to.value();
    if (const auto read = readSizeAndLook(arguments, wish.options); !read) return read.error();
    return wish;
}

Answer run(const Call& call) {
    auto wish = readWish(call.arguments);
    if (!wish) return Answer::wrongUse(wish.error());
    auto& [path, options, from, to] = wish.value();
    const auto outlook = readOutlook(call, from ? from : to);
    if (!outlook) return Answer::failed(outlook.error());
    const auto& season = outlook.value()->season;
    options.days = DayWindow{from.value_or(season.first), to.value_or(season.last)};
    if (options.days->isEmpty())
        return Answer::wrongUse(
            optionError(to ? "--to" : "--from",
                        toText(options.days->last) + " is before " + toText(options.days->first)));
    const auto drawn = renderPicture(*outlook.value(), options, QString::fromStdString(path));
    return drawn ? Answer{} : Answer::failed(drawn.error());
}

}  // namespace

const HeadlessVerb& pictureVerb() {
    static const HeadlessVerb verb{
        "picture",
        {{"BOOK"},
         {{"--from"}, {"--to"}, {"--on"}, {"--size"}, {"--look"}, {"--poster"}, {"--out"}}},
        "BOOK [--from DAY] [--to DAY] [--on DAY] [--size WxH] [--look light|dark|paper] "
        "[--poster a3|a4] --out FILE.png|.svg|.pdf",
        "the season chart",
        false,
        run};
    return verb;
}

}  // namespace tenthday
