#include "app/window/plan_fields.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QSettings>
#include <QSignalBlocker>
#include <QSpinBox>

#include "core/plan/body_sizes.h"
#include "core/plan/gauge.h"
#include "core/plan/size_summary.h"

namespace lacewright::app {

namespace {

const QString kUnitKey = QStringLiteral("plan/inches");
constexpr int kOverFourInches = 1;  // place in its list

std::optional<WidthSource> ownSizes(const Chart& chart) {
    if (chart.sizes.empty() || chart.height() == 0 || chart.gauge.stitches <= 0) return {};
    WidthSource own{PlanFields::tr("This chart's sizes, as wide as now"),
                    PlanFields::tr("The width of row 1 by the gauge of the chart"),
                    {}};
    for (const SizeSummary& size : summarizeSizes(chart)) {
        if (size.cm) own.widths.push_back({size.name, *size.cm, {}});
    }
    return own.widths.empty() ? std::nullopt : std::optional(own);
}

// A labelled field in one of the four pairs of grid columns.
void place(QGridLayout& grid, int row, int pair, const QString& label, QWidget* field,
           const char* name, int columns = 1) {
    auto* text = new QLabel(label, field->parentWidget());
    text->setBuddy(field);
    field->setObjectName(QLatin1String(name));
    grid.addWidget(text, row, 2 * pair, Qt::AlignRight | Qt::AlignVCenter);
    grid.addWidget(field, row, 2 * pair + 1, 1, columns);
}

QDoubleSpinBox* gaugeField(QWidget* parent, const QString& suffix) {
    auto* box = new ShortNumberField(parent);
    box->setRange(0, kMaxGauge);
    box->setDecimals(2);
    box->setSingleStep(0.5);
    box->setSuffix(suffix);
    box->setSpecialValueText(PlanFields::tr("not known"));
    return box;
}

}  // namespace

std::vector<WidthSource> widthSources(const Chart& chart) {
    std::vector<WidthSource> sources;
    if (auto own = ownSizes(chart)) sources.push_back(*std::move(own));
    for (const BodySizeTable& table : bodySizeTables()) {
        for (const BodyMeasurement& measurement : table.measurements) {
            WidthSource source{
                QStringLiteral("%1: %2").arg(QString::fromStdString(table.title),
                                             QString::fromStdString(measurement.name)),
                QString::fromStdString(table.source),
                {}};
            for (std::size_t i = 0; i < table.sizes.size(); ++i) {
                const double middle = measurement.cm[i].middle();
                source.widths.push_back({table.sizes[i], middle, {}});
                if (isGirth(measurement)) source.widths.back().body = middle;
            }
            sources.push_back(std::move(source));
        }
    }
    return sources;
}

PlanFields::PlanFields(const Chart& chart, QWidget* parent)
    : QWidget(parent), sources_(widthSources(chart)), gauge_(chart.gauge) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(8);
    for (int pair = 0; pair < 4; ++pair) grid->setColumnStretch(2 * pair + 1, 1);
    buildGauge(*grid);
    buildWidths(*grid);
    buildLengths(*grid);
    buildMultiple(*grid);
    if (QSettings().value(kUnitKey).toBool()) unit_->setCurrentIndex(1);
}

void PlanFields::buildGauge(QGridLayout& grid) {
    stitches_ = gaugeField(this, tr(" sts"));
    rows_ = gaugeField(this, tr(" rows"));
    over_ = new QComboBox(this);
    over_->addItems({tr("10 cm"), tr("4 in")});
    unit_ = new QComboBox(this);
    unit_->addItems({tr("cm"), tr("inches")});
    place(grid, 0, 0, tr("&Gauge"), stitches_, "gaugeStitches");
    place(grid, 0, 1, tr("&Rows"), rows_, "gaugeRows");
    place(grid, 0, 2, tr("&Over"), over_, "gaugeOver");
    place(grid, 0, 3, tr("Le&ngths in"), unit_, "unit");
    stitches_->setAccessibleName(tr("Gauge, stitches"));
    rows_->setAccessibleName(tr("Gauge, rows"));
    over_->setAccessibleName(tr("Gauge is counted over"));
    showGauge();
    connect(stitches_, &QDoubleSpinBox::valueChanged, this, &PlanFields::readGauge);
    connect(rows_, &QDoubleSpinBox::valueChanged, this, &PlanFields::readGauge);
    connect(over_, &QComboBox::currentIndexChanged, this, &PlanFields::showGauge);
    connect(unit_, &QComboBox::currentIndexChanged, this, [this](int index) {
        QSettings().setValue(kUnitKey, index == 1);
        for (LengthField* field : {ease_, tolerance_, length_}) field->setUnit(unit());
        Q_EMIT changed();
    });
}

void PlanFields::buildWidths(QGridLayout& grid) {
    source_ = new QComboBox(this);
    for (const WidthSource& source : sources_) {
        source_->addItem(source.title);
        source_->setItemData(source_->count() - 1, source.origin, Qt::ToolTipRole);
    }
    source_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    source_->setMinimumContentsLength(20);
    source_->setToolTip(source().origin);
    part_ = new QComboBox(this);
    part_->addItems(
        {tr("the whole width"), tr("a half of it"), tr("a third of it"), tr("a quarter of it")});
    place(grid, 1, 0, tr("&Widths from"), source_, "widthsFrom", 5);
    place(grid, 1, 3, tr("&Chart is"), part_, "part");
    part_->setAccessibleName(tr("The chart is worked over"));
    connect(source_, &QComboBox::currentIndexChanged, this, [this] {
        source_->setToolTip(source().origin);
        Q_EMIT sourceChanged();
        Q_EMIT changed();
    });
    connect(part_, &QComboBox::currentIndexChanged, this, &PlanFields::changed);
}

void PlanFields::buildLengths(QGridLayout& grid) {
    ease_ = new LengthField(0, {-60, 200}, this);
    tolerance_ = new LengthField(0, {0, 50}, this);
    length_ = new LengthField(0, {0, 1000}, this);
    edge_ = new QSpinBox(this);
    edge_->setRange(0, 500);
    edge_->setSuffix(tr(" each side"));
    length_->setSpecialValueText(tr("not planned"));
    tolerance_->setToolTip(tr("Widths this near to the wanted one are as good as it"));
    ease_->setToolTip(tr("What the finished piece is wider than the body, all around"));
    edge_->setToolTip(tr("Plain stitches beside the charted ones"));
    length_->setToolTip(tr("Rows are planned in whole row repeats"));
    place(grid, 2, 0, tr("&Ease"), ease_, "ease");
    place(grid, 2, 1, tr("&Tolerance"), tolerance_, "tolerance");
    place(grid, 2, 2, tr("E&dge stitches"), edge_, "edgeStitches");
    place(grid, 2, 3, tr("&Length"), length_, "length");
    for (const LengthField* field : {ease_, tolerance_, length_}) {
        connect(field, &LengthField::lengthChanged, this, &PlanFields::changed);
    }
    connect(edge_, &QSpinBox::valueChanged, this, &PlanFields::changed);
}

void PlanFields::buildMultiple(QGridLayout& grid) {
    multiple_ = new QSpinBox(this);
    multiple_->setRange(1, 500);
    remainder_ = new QSpinBox(this);
    remainder_->setRange(0, 499);
    multiple_->setToolTip(
        tr("All stitches of a size are a multiple of this; 2 for a front that "
           "is halved"));
    place(grid, 3, 0, tr("&Multiple of"), multiple_, "multiple");
    place(grid, 3, 1, tr("&plus"), remainder_, "remainder");
    connect(multiple_, &QSpinBox::valueChanged, this, &PlanFields::changed);
    connect(remainder_, &QSpinBox::valueChanged, this, &PlanFields::changed);
}

void PlanFields::showGauge() {
    const QSignalBlocker quietStitches(stitches_);
    const QSignalBlocker quietRows(rows_);
    const double part = over_->currentIndex() == kOverFourInches ? 4 * kCmPerInch / 10 : 1;
    stitches_->setValue(gauge_.stitches * part);
    rows_->setValue(gauge_.rows * part);
}

// The figure that was not typed stays exact.
void PlanFields::readGauge() {
    const double stitches = stitches_->value();
    const double rows = rows_->value();
    const Gauge typed = over_->currentIndex() == kOverFourInches
                            ? gaugeOverFourInches(stitches, rows)
                            : Gauge{stitches, rows, {}};
    if (sender() == stitches_) gauge_.stitches = typed.stitches;
    if (sender() == rows_) gauge_.rows = typed.rows;
    Q_EMIT changed();
}

LengthUnit PlanFields::unit() const {
    return unit_->currentIndex() == 1 ? LengthUnit::Inches : LengthUnit::Centimetres;
}

const WidthSource& PlanFields::source() const {
    return sources_[static_cast<std::size_t>(source_->currentIndex())];
}

double PlanFields::finishedCm(double bodyCm) const {
    return (bodyCm + ease_->cm()) / pieces();
}

int PlanFields::pieces() const {
    return part_->currentIndex() + 1;
}

double PlanFields::lengthCm() const {
    return length_->cm();
}

PlanRequest PlanFields::request() const {
    PlanRequest request;
    request.gauge = gauge_;
    request.edgeStitches = edge_->value();
    request.toleranceCm = tolerance_->cm();
    request.multiple = multiple_->value();
    request.remainder = remainder_->value();
    request.pieces = pieces();
    return request;
}

}  // namespace lacewright::app
