#include "app/window/rows_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/window/written_source.h"
#include "core/base/text.h"
#include "core/words/chart_from_rows.h"

namespace lacewright::app {

namespace {

constexpr QSize kUsualSize(760, 540);  // device-independent pixels

QString sizeOf(const Chart& chart) {
    return RowsDialog::tr("Reads as a chart of %1 and %2.")
        .arg(QString::fromStdString(counted(chart.width, "column", "columns")),
             QString::fromStdString(counted(chart.height(), "row", "rows")));
}

}  // namespace

RowsDialog::RowsDialog(UserPrompts& prompts, const QString& text, QWidget* parent)
    : QDialog(parent),
      source_(new WrittenSource(prompts, this)),
      sizeLabel_(new QLabel(tr("&Size"), this)),
      size_(new QComboBox(this)),
      outcome_(new QLabel(this)) {
    setWindowTitle(tr("Chart from written rows"));
    resize(kUsualSize);
    auto* sentence = new QLabel(
        tr("Paste or type the rows, each with its number. They are read as you type."), this);
    sentence->setWordWrap(true);
    outcome_->setObjectName(QStringLiteral("problem"));
    outcome_->setWordWrap(true);
    outcome_->setTextFormat(Qt::PlainText);
    size_->setObjectName(QStringLiteral("rowsSize"));
    sizeLabel_->setBuddy(size_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    open_ = buttons->addButton(tr("Open as &chart"), QDialogButtonBox::AcceptRole);
    open_->setObjectName(QStringLiteral("accept"));
    open_->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* sizes = new QHBoxLayout;
    sizes->addWidget(sizeLabel_);
    sizes->addWidget(size_);
    sizes->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 18, 20, 16);
    layout->setSpacing(12);
    layout->addWidget(sentence);
    layout->addWidget(source_, 1);
    layout->addLayout(sizes);
    layout->addWidget(outcome_);
    layout->addWidget(buttons);

    connect(source_, &WrittenSource::textRead, this, &RowsDialog::drawNow);
    connect(size_, &QComboBox::currentIndexChanged, this, &RowsDialog::drawNow);
    source_->setText(text);
    source_->setFocus();
    drawNow();
}

void RowsDialog::offerSizes(const std::vector<std::string>& sizes) {
    QStringList names;
    for (const std::string& size : sizes) names << QString::fromStdString(size);
    sizeLabel_->setVisible(names.size() > 1);
    size_->setVisible(names.size() > 1);
    QStringList now;
    for (int i = 1; i < size_->count(); ++i) now << size_->itemText(i);
    if (now == names) return;
    const QSignalBlocker quiet(size_);
    size_->clear();
    size_->addItem(tr("all in one chart"));
    size_->addItems(names);
}

void RowsDialog::tell(const QString& sentence, bool usable) {
    outcome_->setText(sentence);
    open_->setEnabled(usable);
}

void RowsDialog::drawNow() {
    const ReadRows& read = source_->readNow();
    chart_.reset();
    offerSizes(read.pattern.sizes);
    if (source_->isEmpty()) return tell({}, false);
    if (read.hasErrors()) {
        return tell(tr("The rows cannot be drawn before they read without errors."), false);
    }
    std::optional<std::size_t> size;
    if (size_->currentIndex() > 0) size = static_cast<std::size_t>(size_->currentIndex() - 1);
    const Result<ChartFromRows> drawn = chartFromRows(read.pattern, size);
    if (!drawn) return tell(QString::fromStdString(drawn.error().message), false);
    chart_ = drawn->chart;
    QString sentence = sizeOf(*chart_);
    for (const std::string& remark : drawn->remarks) {
        sentence += QLatin1Char(' ') + QString::fromStdString(remark);
    }
    if (!drawn->knittable) {
        sentence += tr(" As written it cannot be knitted; the checks of the chart say where.");
    }
    tell(sentence, true);
}

void RowsDialog::accept() {
    drawNow();
    if (chart_) QDialog::accept();
}

}  // namespace lacewright::app
