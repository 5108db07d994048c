/// @file page_painter.h  Pages onto a device: a printer, a PDF file, a preview. Black on white,
/// whatever the screen looks like.
#pragma once
#include <QPagedPaintDevice>
#include <QPainter>

#include "base/result.h"
#include "sheets/page.h"

namespace tenthday {

/// Paints one page; the painter's unit must be a point.
void paintPage(QPainter& painter, const Page& page, const PaperRuler& ruler);

/// All pages on a device whose page size and margins fit `form`; margins are in the pages.
/// False when the device cannot be painted on.
bool printPages(QPagedPaintDevice& device, int dotsPerInch, const std::vector<Page>& pages,
                const PaperForm& form, const PaperRuler& ruler);

/// A PDF file, complete or not at all.
[[nodiscard]] Result<void> writePdf(const QString& path, const std::vector<Page>& pages,
                                    const PaperForm& form, const QString& title,
                                    const PaperRuler& ruler);

}  // namespace tenthday
