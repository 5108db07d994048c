/// @file reasons_view.h  Shows a chain of reasons: rule, inputs and published sources, to read and
/// to copy.
#pragma once
#include <QTextBrowser>

#include "screen_text/why_text.h"

namespace tenthday {

class ReasonsView : public QTextBrowser {
    Q_OBJECT

public:
    explicit ReasonsView(QWidget* parent = nullptr);

    /// Keeps its place when the text is the same. None: the hint, or nothing.
    void showChain(const std::vector<why_text::Link>& chain, const QString& hint = {});

private:
    QString shown_;
};

}  // namespace tenthday
