#include "app/window/plan_fields.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QSpinBox>

#include "app/window/gauge_fields.h"
#include "core/plan/body_sizes.h"
#include "core/plan/size_summary.h"

namespace lacewright::app {

namespace {

std::optional<WidthSource> ownSizes(const Chart& chart) {
    if (chart.sizes.empty() || chart.height() == 0 || chart.gauge.stitches <= 0) return {};
    WidthSource own{
        PlanFields::tr("This chart's sizes, as wide as now"),
        PlanFields::tr("The width of row 1 by the gauge of the chart, of all pieces together"),
        {}};
    for (const SizeSummary& size : summarizeSizes(chart)) {
        if (size.cm) own.widths.push_back({size.name, *size.cm * chart.grading.pieces, {}});
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
    : QWidget(parent),
      sources_(widthSources(chart)),
      gauge_(new GaugeFields(chart.gauge, this)),
      unit_(new LengthUnitField(this)) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(8);
    for (int pair = 0; pair < 4; ++pair) grid->setColumnStretch(2 * pair + 1, 1);
    buildGauge(*grid);
    buildWidths(*grid);
    buildLengths(*grid);
    buildMultiple(*grid);
    if (chart.repeats.size() > 1) buildHeld(*grid, chart);
    edge_->setValue(chart.grading.edgeStitches);
    if (part_->findData(chart.grading.pieces) < 0) {
        part_->addItem(tr("one of %1 pieces").arg(chart.grading.pieces), chart.grading.pieces);
    }
    part_->setCurrentIndex(part_->findData(chart.grading.pieces));
}

void PlanFields::buildGauge(QGridLayout& grid) {
    place(grid, 0, 0, tr("&Gauge"), gauge_->stitches(), "gaugeStitches");
    place(grid, 0, 1, tr("&Rows"), gauge_->rows(), "gaugeRows");
    place(grid, 0, 2, tr("&Over"), gauge_->countedOver(), "gaugeOver");
    place(grid, 0, 3, tr("Le&ngths in"), unit_, "unit");
    connect(gauge_, &GaugeFields::changed, this, &PlanFields::changed);
    connect(unit_, &LengthUnitField::unitChosen, this, [this] {
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
    for (const QString& part :
         {tr("the whole width"), tr("a half of it"), tr("a third of it"), tr("a quarter of it")}) {
        part_->addItem(part, part_->count() + 1);
    }
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
    for (LengthField* field : {ease_, tolerance_, length_}) {
        field->setUnit(unit());
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

// Of several repeats those that are not held are worked alike.
void PlanFields::buildHeld(QGridLayout& grid, const Chart& chart) {
    constexpr int kPairs = 4;
    constexpr int kFree = -1;
    const int row = grid.rowCount();
    for (const Repeat& repeat : chart.repeats) {
        auto* times = new QSpinBox(this);
        times->setRange(kFree, kMaxTimes);
        times->setSpecialValueText(tr("as planned"));
        times->setSuffix(tr(" times"));
        times->setValue(kFree);
        times->setToolTip(
            tr("A repeat that is worked alike in every size: how often, while others are planned"));
        const int at = static_cast<int>(held_.size());
        place(grid, row + at / kPairs, at % kPairs,
              tr("Repeat %1").arg(QString::fromStdString(repeat.name)), times,
              ("held-" + repeat.name).c_str());
        connect(times, &QSpinBox::valueChanged, this, &PlanFields::changed);
        held_.emplace_back(repeat.name, times);
    }
}

LengthUnit PlanFields::unit() const {
    return unit_->unit();
}

const WidthSource& PlanFields::source() const {
    return sources_[static_cast<std::size_t>(source_->currentIndex())];
}

double PlanFields::finishedCm(double bodyCm) const {
    return (bodyCm + ease_->cm()) / pieces();
}

int PlanFields::pieces() const {
    return part_->currentData().toInt();
}

double PlanFields::lengthCm() const {
    return length_->cm();
}

PlanRequest PlanFields::request() const {
    PlanRequest request;
    request.gauge = gauge_->gauge();
    request.edgeStitches = edge_->value();
    request.toleranceCm = tolerance_->cm();
    request.multiple = multiple_->value();
    request.remainder = remainder_->value();
    request.pieces = pieces();
    for (const auto& [repeat, times] : held_) {
        if (times->value() >= 0) request.held[repeat] = times->value();
    }
    return request;
}

}  // namespace lacewright::app
