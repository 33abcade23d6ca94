#include "app/window/size_line.h"

#include <algorithm>

#include "app/document/document.h"
#include "app/document/view_state.h"
#include "core/base/text.h"
#include "core/words/size_words.h"

namespace lacewright::app {

namespace {

constexpr int kMargin = 6;  // device-independent pixels

bool holds(const SizeInstruction& instruction, int row) {
    return std::any_of(
        instruction.rows.begin(), instruction.rows.end(),
        [row](const InstructedRows& rows) { return row >= rows.firstRow && row <= rows.lastRow; });
}

}  // namespace

SizeLine::SizeLine(const Document& document, const ViewState& view, QWidget* parent)
    : QLabel(parent), document_(document), view_(view) {
    setObjectName(QStringLiteral("sizeLine"));
    setAccessibleName(tr("How the size is worked"));
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    setAlignment(Qt::AlignHCenter | Qt::AlignTop);
    setMargin(kMargin);
    // Room for two lines, so that the chart keeps its place from size to size.
    setMinimumHeight(2 * fontMetrics().lineSpacing() + 2 * kMargin);
    setTextInteractionFlags(Qt::TextSelectableByMouse);
    connect(&document, &Document::changed, this, &SizeLine::refresh);
    connect(&document, &Document::replaced, this, &SizeLine::refresh);
    connect(&view, &ViewState::sizeChosen, this, &SizeLine::refresh);
    connect(&view, &ViewState::cursorMoved, this, &SizeLine::refresh);
    refresh();
}

void SizeLine::refresh() {
    const Chart& chart = document_.chart();
    setVisible(!chart.sizes.empty());
    const Size* size = chart.findSize(view_.size().toStdString());
    if (!size || chart.height() == 0) {
        setText(tr("This is the whole chart. F8 looks at it as one size works it."));
        setToolTip({});
        return;
    }
    const auto instructions = sizeInstructions(chart, *size);
    const auto sentences = sizeInstructionSentences(chart, *size);
    const auto here =
        std::find_if(instructions.begin(), instructions.end(),
                     [this](const SizeInstruction& one) { return holds(one, view_.cursor().row); });
    const auto place = static_cast<std::size_t>(here - instructions.begin());
    if (place >= sentences.size()) return;
    QString text = QString::fromStdString(sentences[place]);
    if (place > 0) text = tr("Size %1. %2").arg(QString::fromStdString(size->name), text);
    setText(text);
    setToolTip(QString::fromStdString(join(sentences, "\n")));
}

}  // namespace lacewright::app
