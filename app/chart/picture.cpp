#include "chart/picture.h"

#include <QBuffer>
#include <QFileInfo>
#include <QImage>
#include <QPdfWriter>
#include <QSvgGenerator>

#include "book/finished_file.h"
#include "chart/active_days.h"
#include "chart/chart_layout.h"
#include "chart/chart_painter.h"

namespace tenthday {
namespace {

constexpr int kLeastSide = 200;
constexpr int kMostSide = 20000;
constexpr qreal kDotsPerInch = 96;  ///< of a logical px

Error error(const QString& text) { return Error{text.toStdString()}; }

/// A chart of the wished days and size, ready to paint.
struct Picture {
    Layout layout;
    QRectF page;
    Typeface face;
    Look look;

    void paint(QPainter& painter) const {
        ChartPainter(paletteOf(look), face).paint(painter, layout, page);
    }
};

Picture pictureOf(const Outlook& outlook, const PictureOptions& options) {
    // Sizes do not follow the desktop: the same call gives the same picture everywhere.
    Typeface face = systemTypeface();
    face.basePx = 12;
    const FontRuler ruler(face);
    ChartOptions chart;
    chart.size = options.size;
    chart.chosenDay = options.chosenDay;
    chart.selected = options.selected;
    if (outlook.mating) chart.orders = seasonOrdersOf(outlook);
    const auto span = plotSpan(outlook, chart, ruler);
    const DayAxis axis(options.days.value_or(activeDays(outlook)), span.left, span.width);
    return {layOut(outlook, axis, chart, ruler), QRectF(QPointF(), QSizeF(options.size)), face,
            options.look};
}

QByteArray pngOf(const Picture& picture) {
    QImage image(picture.page.size().toSize(), QImage::Format_RGB32);
    QPainter painter(&image);
    picture.paint(painter);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    return image.save(&buffer, "PNG") ? bytes : QByteArray();
}

QByteArray svgOf(const Picture& picture) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize(picture.page.size().toSize());
    generator.setViewBox(picture.page);
    generator.setResolution(static_cast<int>(kDotsPerInch));
    generator.setTitle(QStringLiteral("Tenthday"));
    QPainter painter(&generator);
    picture.paint(painter);
    painter.end();
    return bytes;
}

QByteArray pdfOf(const Picture& picture) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly)) return {};
    QPdfWriter writer(&buffer);
    writer.setTitle(QStringLiteral("Tenthday"));
    const QSizeF inches = picture.page.size() / kDotsPerInch;
    writer.setPageSize(QPageSize(inches, QPageSize::Inch));
    writer.setPageMargins(QMarginsF());
    QPainter painter(&writer);
    painter.scale(writer.logicalDpiX() / kDotsPerInch, writer.logicalDpiY() / kDotsPerInch);
    picture.paint(painter);
    painter.end();
    return bytes;
}

}  // namespace

Result<void> renderPicture(const Outlook& outlook, const PictureOptions& options,
                           const QString& path) {
    const auto suffix = QFileInfo(path).suffix().toLower();
    const auto side = [](int px) { return kLeastSide <= px && px <= kMostSide; };
    if (!side(options.size.width()) || !side(options.size.height()))
        return error(QStringLiteral("size %1x%2: each side must be %3 to %4")
                         .arg(options.size.width())
                         .arg(options.size.height())
                         .arg(kLeastSide)
                         .arg(kMostSide));
    if (options.days.value_or(outlook.season).isEmpty())
        return error(QStringLiteral("no day to show: the last lies before the first"));
    if (suffix != QStringLiteral("png") && suffix != QStringLiteral("svg") &&
        suffix != QStringLiteral("pdf"))
        return error(QStringLiteral("%1: a picture is .png, .svg or .pdf").arg(path));

    const auto picture = pictureOf(outlook, options);
    const auto bytes = suffix == QStringLiteral("png")   ? pngOf(picture)
                       : suffix == QStringLiteral("svg") ? svgOf(picture)
                                                         : pdfOf(picture);
    if (bytes.isEmpty()) return error(QStringLiteral("%1: nothing was drawn").arg(path));
    return writeWhole(path, bytes);
}

}  // namespace tenthday
