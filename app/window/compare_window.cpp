#include "app/window/compare_window.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QSignalBlocker>
#include <QSplitter>
#include <QTextBlock>
#include <QTextBrowser>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>

#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/panels/severity_icon.h"
#include "app/window/difference_page.h"
#include "app/window/written_source.h"
#include "core/base/text.h"
#include "core/words/difference_words.h"

namespace lacewright::app {

namespace {

constexpr QSize kUsualSize(900, 580);  // device-independent pixels
constexpr int kLeastPage = 120;
constexpr int kPause = 250;                  // milliseconds without an edit of the chart
constexpr std::int64_t kMostCells = 20'000;  // of a chart that is compared while it is drawn

QLabel* headed(QWidget* over, const QString& text, QVBoxLayout& layout) {
    auto* label = new QLabel(text, over);
    label->setBuddy(over);
    layout.addWidget(label);
    layout.addWidget(over, 1);
    return label;
}

}  // namespace

CompareWindow::CompareWindow(Document& document, ViewState& view, UserPrompts& prompts,
                             QWidget* parent)
    : QDialog(parent), document_(document), view_(view) {
    setObjectName(QStringLiteral("compareWindow"));
    setWindowTitle(tr("Compare with written rows"));
    resize(kUsualSize);
    auto* sides = new QSplitter(Qt::Horizontal, this);
    sides->addWidget(builtChartSide());
    sides->addWidget(builtTextSide(prompts));
    sides->setSizes({kUsualSize.width(), kUsualSize.width()});
    sides->setChildrenCollapsible(false);
    auto* whole = new QSplitter(Qt::Vertical, this);
    whole->addWidget(sides);
    whole->addWidget(builtOutcome());
    whole->setChildrenCollapsible(false);
    whole->setStretchFactor(0, 3);
    whole->setStretchFactor(1, 2);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 14, 16, 14);
    layout->addWidget(whole);

    soon_.setSingleShot(true);
    soon_.setInterval(kPause);
    connect(&soon_, &QTimer::timeout, this, &CompareWindow::compareNow);
    connect(source_, &WrittenSource::textRead, this, &CompareWindow::compareNow);
    connect(size_, &QComboBox::currentIndexChanged, this, &CompareWindow::compareNow);
    connect(&document, &Document::changed, this, &CompareWindow::chartChanged);
    connect(&document, &Document::replaced, this, &CompareWindow::chartChanged);
    connect(page_, &QTextBrowser::anchorClicked, this, &CompareWindow::follow);
}

QWidget* CompareWindow::builtChartSide() {
    auto* side = new QWidget(this);
    chartRows_ = new QPlainTextEdit(side);
    chartRows_->setObjectName(QStringLiteral("chartRows"));
    chartRows_->setAccessibleName(tr("Rows of the chart"));
    chartRows_->setReadOnly(true);
    chartRows_->setTabChangesFocus(true);
    size_ = new QComboBox(side);
    size_->setObjectName(QStringLiteral("compareSize"));
    size_->setAccessibleName(tr("Size to compare"));
    size_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* layout = new QVBoxLayout(side);
    layout->setContentsMargins(0, 0, 6, 0);
    layout->setSpacing(6);
    headed(chartRows_, tr("The &chart"), *layout);
    layout->addWidget(size_, 0, Qt::AlignLeft);
    return side;
}

QWidget* CompareWindow::builtTextSide(UserPrompts& prompts) {
    auto* side = new QWidget(this);
    source_ = new WrittenSource(prompts, side);
    auto* layout = new QVBoxLayout(side);
    layout->setContentsMargins(6, 0, 0, 0);
    layout->setSpacing(6);
    headed(source_, tr("The &text"), *layout);
    return side;
}

QWidget* CompareWindow::builtOutcome() {
    outcome_ = new QWidget(this);
    auto* part = outcome_;
    verdictIcon_ = new QLabel(part);
    verdict_ = new QLabel(part);
    verdict_->setObjectName(QStringLiteral("comparison"));
    verdict_->setWordWrap(true);
    verdict_->setTextFormat(Qt::PlainText);
    QFont bold = verdict_->font();
    bold.setBold(true);
    verdict_->setFont(bold);
    page_ = new QTextBrowser(part);
    page_->setObjectName(QStringLiteral("differences"));
    page_->setAccessibleName(tr("Differences"));
    page_->setMinimumHeight(kLeastPage);
    page_->setOpenLinks(false);
    auto* line = new QHBoxLayout;
    line->setSpacing(8);
    line->addWidget(verdictIcon_, 0, Qt::AlignTop);
    line->addWidget(verdict_, 1);
    auto* layout = new QVBoxLayout(part);
    layout->setContentsMargins(0, 8, 0, 0);
    layout->setSpacing(6);
    layout->addLayout(line);
    layout->addWidget(page_, 1);
    return part;
}

void CompareWindow::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    source_->setFocus();
    if (source_->isEmpty()) source_->setText(rowsOnClipboard());
    compareNow();
}

void CompareWindow::chartChanged() {
    if (!isVisible()) return;
    const Chart& chart = document_.chart();
    if (std::int64_t{chart.width} * chart.height() <= kMostCells) return soon_.start();
    tell(tr("The chart has changed."),
         QStringLiteral("<p><a href=\"%1\">%2</a></p>").arg(kCompareNow, tr("Compare again")));
}

void CompareWindow::offerSizes() {
    const QSignalBlocker quiet(size_);
    const QString before = size_->currentData().toString();
    size_->clear();
    size_->addItem(tr("every size"), QString());
    for (const Size& size : document_.chart().sizes) {
        const QString name = QString::fromStdString(size.name);
        size_->addItem(tr("size %1").arg(name), name);
    }
    size_->setCurrentIndex(std::max(0, size_->findData(before)));
    size_->setVisible(size_->count() > 1);
}

void CompareWindow::writeChart() {
    WriteOptions options;
    const std::string size = size_->currentData().toString().toStdString();
    if (!size.empty()) options.sizes = {size};
    const Result<WrittenChart> written = writeRows(document_.chart(), options);
    rowOfBlock_.clear();
    if (!written) {
        chartRows_->setPlainText(QString::fromStdString(written.error().message));
        return;
    }
    QStringList lines;
    for (const std::string& line : written->heading) {
        lines << QString::fromStdString(line);
        rowOfBlock_.emplace_back();
    }
    for (const WrittenLine& line : written->lines) {
        lines << QString::fromStdString(line.text());
        rowOfBlock_.push_back(line.rowIndices);
    }
    const QString text = lines.join(QLatin1Char('\n'));
    if (chartRows_->toPlainText() != text) chartRows_->setPlainText(text);
}

void CompareWindow::tell(const QString& sentence, const QString& html) {
    verdict_->setText(sentence);
    page_->setHtml(html);
    page_->setVisible(!html.isEmpty());
    // Without differences the rows have the room.
    outcome_->setMaximumHeight(html.isEmpty() ? outcome_->minimumSizeHint().height()
                                              : QWIDGETSIZE_MAX);
    verdictIcon_->setVisible(false);
    differences_.clear();
    markRows();
}

void CompareWindow::compareNow() {
    if (!isVisible()) return;
    soon_.stop();
    const Chart& chart = document_.chart();
    const ReadRows& read = source_->readNow();
    offerSizes();
    writeChart();
    if (source_->isEmpty()) {
        return tell(tr("Paste or open the text to compare; it is held against the chart as you "
                       "type."),
                    {});
    }
    if (read.hasErrors()) {
        return tell(tr("The text cannot be compared before it reads without errors."), {});
    }
    const std::string size = size_->currentData().toString().toStdString();
    const Result<Comparison> comparison = compareRows(chart, read.pattern, size);
    if (!comparison) return tell(QString::fromStdString(comparison.error().message), {});
    const auto count = static_cast<long long>(comparison->differences.size());
    if (comparison->same()) {
        tell(tr("The same knitting, proven for %1.")
                 .arg(QString::fromStdString(provenFor(chart, size))),
             {});
        verdictIcon_->setPixmap(provenIcon(palette()).pixmap(16));
        verdictIcon_->setVisible(true);
        return;
    }
    const std::string row = chart.worked == Worked::InTheRound ? "Round" : "Row";
    tell(QString::fromStdString(counted(count, "row differs.", "rows differ.")),
         differencesHtml(comparison->differences, row, palette()));
    differences_ = comparison->differences;
    verdictIcon_->setPixmap(severityIcon(Severity::Warning, palette()).pixmap(16));
    verdictIcon_->setVisible(true);
    markRows();
}

// The lines of the chart whose rows differ.
void CompareWindow::markRows() {
    QList<QTextEdit::ExtraSelection> marks;
    QColor ground = palette().color(QPalette::Highlight);
    ground.setAlphaF(0.2F);
    for (std::size_t block = 0; block < rowOfBlock_.size(); ++block) {
        const auto differs = [this](int row) {
            const int number = document_.chart().rowNumber(row);
            return std::any_of(
                differences_.begin(), differences_.end(),
                [number](const RowDifference& difference) { return difference.number == number; });
        };
        const auto& rows = rowOfBlock_[block];
        if (std::none_of(rows.begin(), rows.end(), differs)) continue;
        QTextEdit::ExtraSelection mark;
        mark.cursor =
            QTextCursor(chartRows_->document()->findBlockByNumber(static_cast<int>(block)));
        mark.cursor.movePosition(QTextCursor::EndOfBlock, QTextCursor::KeepAnchor);
        mark.format.setBackground(ground);
        marks << mark;
    }
    chartRows_->setExtraSelections(marks);
}

void CompareWindow::follow(const QUrl& link) {
    if (link.toString() == kCompareNow) return compareNow();
    const auto place = stitchOfLink(link, differences_);
    if (!place) return;
    const auto row = document_.chart().indexOfRowNumber(place->row);
    if (row) {
        const bool whole = place->stitch.column < 1;
        const int right = whole ? 1 : place->stitch.column;
        view_.select({*row, *row, right, whole ? document_.chart().width : right});
        view_.reveal({*row, right});
    }
    if (place->stitch.place.length > 0) source_->goTo(place->stitch.place);
}

}  // namespace lacewright::app
