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
#include "look/space.h"

namespace tenthday {
namespace {

constexpr int kLeastSide = 200;
constexpr int kMostSide = 20000;
constexpr qreal kHeadGap = 8;       ///< px between head and chart
constexpr qreal kDotsPerInch = 96;  ///< of a logical px

Error error(const QString& text) { return Error{text.toStdString()}; }

constexpr qreal kPosterMargin = 38;  ///< px, 10 mm: what printers leave

QSizeF sizeOf(Poster poster) {
    constexpr qreal kPxPerMm = kDotsPerInch / 25.4;
    return (poster == Poster::A3 ? QSizeF(420, 297) : QSizeF(297, 210)) * kPxPerMm;
}

/// A chart of the wished days and size, ready to paint.
struct Picture {
    Layout layout;
    QRectF page;
    QRectF chart;  ///< where on the page the layout stands
    QString head;  ///< above it; empty: none
    Typeface face;
    Look look;

    void paint(QPainter& painter) const {
        const auto& colours = paletteOf(look);
        const ChartPainter chartPainter(colours, face);
        if (head.isEmpty()) return chartPainter.paint(painter, layout, page);
        painter.fillRect(page, colours[Role::Ground]);
        painter.save();
        painter.translate(chart.topLeft());
        chartPainter.paint(painter, layout, QRectF(QPointF(), chart.size()));
        painter.restore();
        painter.setPen(colours[Role::Ink]);
        painter.setFont(face.font(Type::Title));
        painter.drawText(QPointF(chart.left() + space::kPage, chart.top() - kHeadGap), head);
    }
};

/// "Three Oaks · 2027".
QString headOf(const Snapshot& snapshot) {
    QStringList parts;
    for (const auto& book : snapshot.all<Book>()) parts.append(QString::fromStdString(book->label));
    if (const auto season = snapshot.find(snapshot.seasonId()))
        parts.append(QString::fromStdString(season->label));
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" · "));
}

Picture pictureOf(const Outlook& outlook, const PictureOptions& options) {
    // Sizes do not follow the desktop: the same call gives the same picture everywhere.
    Typeface face = systemTypeface();
    face.basePx = 12;
    const FontRuler ruler(face);
    ChartOptions chart;
    chart.size = options.size;
    chart.isPicture = true;
    QRectF page(QPointF(), QSizeF(options.size));
    QRectF area = page;
    QString head;
    if (options.poster) {
        page.setSize(sizeOf(*options.poster));
        head = headOf(outlook.snapshot);
        area = page.adjusted(kPosterMargin, kPosterMargin, -kPosterMargin, -kPosterMargin);
        area.setTop(area.top() + ruler.line(Type::Title) + kHeadGap);
        chart.size = area.size();
    }
    chart.chosenDay = options.chosenDay;
    chart.selected = options.selected;
    if (outlook.mating) chart.orders = seasonOrdersOf(outlook);
    const auto span = plotSpan(outlook, chart, ruler);
    const DayAxis axis(options.days.value_or(activeDays(outlook)), span.left, span.width);
    return {layOut(outlook, axis, chart, ruler),        page, area, head, face,
            options.poster ? Look::Paper : options.look};
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
    if (!options.poster && (!side(options.size.width()) || !side(options.size.height())))
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
