#include "sheets/page_painter.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPdfWriter>

#include "book/finished_file.h"
#include "look/palette.h"

namespace tenthday {
namespace {

void paintTick(QPainter& painter, const QRectF& box) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(printInk(), 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const auto at = [&](qreal x, qreal y) {
        return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
    };
    painter.drawPolyline(QPolygonF({at(0.2, 0.55), at(0.42, 0.78), at(0.82, 0.22)}));
}

}  // namespace

void paintPage(QPainter& painter, const Page& page, const PaperRuler& ruler) {
    painter.save();
    for (const auto& mark : page.marks) {
        const auto& rect = mark.rect;
        switch (mark.shape) {
            case Mark::Shape::Text:
            case Mark::Shape::WhiteText:
                painter.setFont(ruler.font(mark.type));
                painter.setPen(mark.shape == Mark::Shape::Text ? printInk() : printGround());
                painter.drawText(rect.bottomLeft(), mark.text);
                break;
            case Mark::Shape::Fill:
                painter.fillRect(rect, printInk());
                break;
            case Mark::Shape::Frame: {
                const qreal half = mark.pen / 2;
                painter.setBrush(Qt::NoBrush);
                painter.setPen(
                    QPen(printInk(), mark.pen, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
                painter.drawRect(rect.adjusted(half, half, -half, -half));
                break;
            }
            case Mark::Shape::Line:
                painter.setPen(QPen(printInk(), mark.pen, Qt::SolidLine, Qt::FlatCap));
                painter.drawLine(rect.bottomLeft(), rect.bottomRight());
                break;
            case Mark::Shape::Tick:
                paintTick(painter, rect);
                break;
        }
    }
    painter.restore();
}

bool printPages(QPagedPaintDevice& device, int dotsPerInch, const std::vector<Page>& pages,
                const PaperForm& form, const PaperRuler& ruler) {
    const qreal zoom = dotsPerInch / 72.0 * zoomOf(form);
    QPainter painter;
    if (!painter.begin(&device)) return false;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0 && !device.newPage()) return false;
        painter.save();
        painter.scale(zoom, zoom);
        paintPage(painter, pages[i], ruler);
        painter.restore();
    }
    return painter.end();
}

Result<void> writePdf(const QString& path, const std::vector<Page>& pages, const PaperForm& form,
                      const QString& title, const PaperRuler& ruler) {
    QByteArray bytes;
    {
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter writer(&buffer);
        writer.setTitle(title);
        writer.setCreator(QStringLiteral("Tenthday"));
        writer.setResolution(1200);
        writer.setPageLayout(QPageLayout(
            QPageSize(sheetSize({form.paper}), QPageSize::Point, {}, QPageSize::ExactMatch),
            form.landscape ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF()));
        if (!printPages(writer, writer.resolution(), pages, form, ruler))
            return Error{path.toStdString() + ": the pages cannot be painted"};
    }
    return writeWhole(path, bytes);
}

}  // namespace tenthday
