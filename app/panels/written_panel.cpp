#include "app/panels/written_panel.h"

#include <QClipboard>
#include <QEvent>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QMimeData>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextBrowser>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>

#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/panels/panel_button.h"

namespace lacewright::app {

namespace {

constexpr int kPause = 250;                  // milliseconds without an edit
constexpr std::int64_t kMostCells = 20'000;  // of a chart that is written as it is drawn
const QString kWriteNow = QStringLiteral("write:now");

QString escaped(const std::string& text) {
    return QString::fromStdString(text).toHtmlEscaped();
}

bool isOneOf(const std::vector<int>& rows, int row) {
    return std::find(rows.begin(), rows.end(), row) != rows.end();
}

}  // namespace

WrittenPanel::WrittenPanel(Document& document, ViewState& view, QWidget* parent)
    : QWidget(parent),
      document_(document),
      view_(view),
      page_(new QTextBrowser(this)),
      copyText_(panelButton(this, tr("Copy as text"), "copyRows")),
      copyHtml_(panelButton(this, tr("Copy as HTML"), "copyRowsHtml")),
      written_(WrittenChart()) {
    page_->setObjectName(QStringLiteral("writtenRows"));
    page_->setAccessibleName(tr("Written rows"));
    page_->setFrameShape(QFrame::NoFrame);
    page_->setOpenLinks(false);
    page_->document()->setDocumentMargin(8);

    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(4);
    buttons->addWidget(copyText_);
    buttons->addWidget(copyHtml_);
    buttons->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(6, 6, 6, 6);
    layout->setSpacing(6);
    layout->addWidget(page_);
    layout->addLayout(buttons);

    timer_.setSingleShot(true);
    timer_.setInterval(kPause);
    connect(&timer_, &QTimer::timeout, this, &WrittenPanel::writeOrOffer);
    connect(&document, &Document::changed, this, &WrittenPanel::writeSoon);
    connect(&document, &Document::replaced, this, &WrittenPanel::writeSoon);
    connect(&view, &ViewState::sizeChosen, this, &WrittenPanel::writeSoon);
    connect(&view, &ViewState::cursorMoved, this, [this] {
        if (isVisible()) markRow();
    });
    connect(page_, &QTextBrowser::anchorClicked, this, &WrittenPanel::follow);
    connect(copyText_, &QToolButton::clicked, this, [this] { copy(false); });
    connect(copyHtml_, &QToolButton::clicked, this, [this] { copy(true); });
}

void WrittenPanel::writeSoon() {
    stale_ = true;
    if (isVisible()) timer_.start();
}

void WrittenPanel::writeOrOffer() {
    const Chart& chart = document_.chart();
    if (std::int64_t{chart.width} * chart.height() <= kMostCells) return writeNow();
    page_->setHtml(tr("<p>A chart of this size takes a while to write out. "
                      "<a href=\"%1\">Write it now</a></p>")
                       .arg(kWriteNow));
    copyText_->setEnabled(false);
    copyHtml_->setEnabled(false);
}

void WrittenPanel::writeNow() {
    WriteOptions options;
    if (!view_.size().isEmpty()) options.sizes = {view_.size().toStdString()};
    written_ = writeRows(document_.chart(), options);
    stale_ = false;
    copyText_->setEnabled(written_.has_value());
    copyHtml_->setEnabled(written_.has_value());
    display();
}

// Every word is a link to its cells: "cells:LINE:PIECE".
QString WrittenPanel::lineHtml(int line) const {
    const WrittenLine& row = written_->lines[static_cast<std::size_t>(line)];
    const QString ink = palette().color(QPalette::Text).name();
    QString html =
        QStringLiteral("<p style=\"margin: 3px 0;\"><b>%1:</b> ").arg(escaped(row.label));
    for (std::size_t i = 0; i < row.pieces.size(); ++i) {
        const TextPiece& piece = row.pieces[i];
        if (piece.length == 0 || row.rowIndices.empty()) {
            html += escaped(piece.text);
            continue;
        }
        html += QStringLiteral(
                    "<a href=\"cells:%1:%2\" style=\"color: %3; text-decoration: none;\">%4</a>")
                    .arg(line)
                    .arg(i)
                    .arg(ink, escaped(piece.text));
    }
    html += QLatin1Char('.');
    if (!row.stated.empty()) html += QLatin1Char(' ') + escaped(row.stated);
    return html + QStringLiteral("</p>");
}

void WrittenPanel::display() {
    if (!written_) {
        page_->setHtml(QStringLiteral("<p>%1</p>").arg(escaped(written_.error().message)));
        return;
    }
    const int scrolled = page_->verticalScrollBar()->value();
    QString html;
    for (const std::string& line : written_->heading) {
        html += QStringLiteral("<p style=\"margin: 0;\">%1</p>").arg(escaped(line));
    }
    for (int line = 0; line < static_cast<int>(written_->lines.size()); ++line) {
        html += lineHtml(line);
    }
    page_->setHtml(html);
    page_->verticalScrollBar()->setValue(scrolled);
    markRow();
}

// Every line of the heading and of the rows is one block of the page.
void WrittenPanel::markRow() {
    if (!written_ || stale_) return;
    const auto& lines = written_->lines;
    const int row = view_.cursor().row;
    const auto here = std::find_if(lines.begin(), lines.end(), [row](const WrittenLine& line) {
        return isOneOf(line.rowIndices, row);
    });
    page_->setExtraSelections({});
    if (here == lines.end()) return;
    const auto block = static_cast<int>(written_->heading.size()) +
                       static_cast<int>(std::distance(lines.begin(), here));
    QTextEdit::ExtraSelection mark;
    mark.cursor = QTextCursor(page_->document()->findBlockByNumber(block));
    const QTextCursor start = mark.cursor;
    mark.cursor.movePosition(QTextCursor::EndOfBlock, QTextCursor::KeepAnchor);
    QColor ground = palette().color(QPalette::Highlight);
    ground.setAlphaF(0.2F);
    mark.format.setBackground(ground);
    mark.format.setProperty(QTextFormat::FullWidthSelection, true);
    page_->setExtraSelections({mark});
    if (page_->hasFocus()) return;  // the person reads: the page stays where it is
    QTextCursor end = start;
    end.movePosition(QTextCursor::EndOfBlock);
    page_->setTextCursor(end);
    page_->setTextCursor(start);
    page_->ensureCursorVisible();
}

void WrittenPanel::follow(const QUrl& link) {
    if (link.toString() == kWriteNow) return writeNow();
    const QStringList place = link.toString().split(QLatin1Char(':'));
    if (stale_ || !written_ || place.size() != 3) return;
    const WrittenLine& line = written_->lines[place[1].toUInt()];
    const TextPiece& piece = line.pieces[place[2].toUInt()];
    const auto first = line.columns.begin() + static_cast<std::ptrdiff_t>(piece.first);
    const auto [right, left] =
        std::minmax_element(first, first + static_cast<std::ptrdiff_t>(piece.length));
    const int cursor = view_.cursor().row;
    const int row = isOneOf(line.rowIndices, cursor) ? cursor : line.rowIndices.front();
    view_.select({row, row, *right, *left});
    view_.reveal({row, *right});
}

void WrittenPanel::copy(bool asHtml) {
    if (stale_) writeNow();
    if (!written_) return;
    auto* copied = new QMimeData;
    copied->setText(QString::fromStdString(asHtml ? written_->html() : written_->text()));
    if (asHtml) copied->setHtml(copied->text());
    QGuiApplication::clipboard()->setMimeData(copied);
}

void WrittenPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) timer_.start();
}

void WrittenPanel::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange && !stale_) display();
    QWidget::changeEvent(event);
}

}  // namespace lacewright::app
