#include "reasons/reasons_view.h"

namespace tenthday {

ReasonsView::ReasonsView(QWidget* parent) : QTextBrowser(parent) {
    setOpenLinks(false);
    setTabChangesFocus(true);
    setAccessibleName(why_text::reasons());
    document()->setDocumentMargin(10);
}

void ReasonsView::showChain(const std::vector<why_text::Link>& chain, const QString& hint) {
    const auto text = chain.empty() ? hint.toHtmlEscaped() : why_text::asRichText(chain);
    if (text == shown_) return;
    shown_ = text;
    setHtml(text);
}

}  // namespace tenthday
