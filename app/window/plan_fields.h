#pragma once

#include <QWidget>
#include <vector>

#include "app/window/length_field.h"
#include "core/plan/planner.h"

class QComboBox;
class QGridLayout;
class QSpinBox;

namespace lacewright::app {

class GaugeFields;

// Sizes that may be planned, with a width each before ease: a body measurement, or the sizes that
// the chart has already.
struct WidthSource {
    QString title;
    QString origin;  // where the figures are from
    std::vector<WantedWidth> widths;
};
// Never empty. The chart's own sizes come first, where its gauge tells their widths.
std::vector<WidthSource> widthSources(const Chart& chart);

// What is asked of a plan, apart from which sizes it is for.
class PlanFields : public QWidget {
    Q_OBJECT

 public:
    PlanFields(const Chart& chart, QWidget* parent);

    LengthUnit unit() const;
    const WidthSource& source() const;
    // The finished width of the chart for a body of that width: with the ease, and divided when
    // the chart is a part of the whole.
    double finishedCm(double bodyCm) const;
    int pieces() const;       // of this width that go round the body
    double lengthCm() const;  // 0: no length is planned
    // Without sizes. The gauge is 0 where it is not known.
    PlanRequest request() const;

 Q_SIGNALS:
    void changed();
    void sourceChanged();  // before `changed`

 private:
    void buildGauge(QGridLayout& grid);
    void buildWidths(QGridLayout& grid);
    void buildLengths(QGridLayout& grid);
    void buildMultiple(QGridLayout& grid);
    void buildHeld(QGridLayout& grid, const Chart& chart);

    std::vector<WidthSource> sources_;
    GaugeFields* gauge_;
    LengthUnitField* unit_;
    QComboBox* source_;
    QComboBox* part_;
    LengthField* ease_;
    LengthField* tolerance_;
    LengthField* length_;
    QSpinBox* edge_;
    QSpinBox* multiple_;
    QSpinBox* remainder_;
    std::vector<std::pair<std::string, QSpinBox*>> held_;  // by repeat; -1: not held
};

}  // namespace lacewright::app
