#pragma once

#include "app/window/user_prompts.h"

namespace lacewright::app {

// Asks with dialogs. The only place that opens a modal window.
class DialogPrompts : public UserPrompts {
 public:
    QString fileToOpen(QWidget* over, const QString& folder, const QString& filter) override;
    QString fileToSave(QWidget* over, const QString& suggestion, const QString& filter) override;
    Unsaved unsavedChanges(QWidget* over, const QString& name) override;
    bool confirm(QWidget* over, const Question& question) override;
    void tell(QWidget* over, const QString& title, const QString& text) override;
    bool choosePrinter(QWidget* over, QPrinter& printer) override;

    std::optional<Chart> newChart(QWidget* over) override;
    std::optional<Chart> chartFromRows(QWidget* over, const QString& text) override;
    std::optional<ChartProperties> chartProperties(QWidget* over,
                                                   const ChartProperties& now) override;
    std::optional<RepeatPlan> repeat(QWidget* over, const Chart& chart,
                                     const RepeatPlan& plan) override;
    std::optional<Jog> jog(QWidget* over, const QString& rows, const Jog& now) override;
    std::optional<RowRepeat> rowRepeat(QWidget* over, const Chart& chart,
                                       const RowRepeat& now) override;
    std::optional<Size> size(QWidget* over, const Chart& chart, const Size& now) override;
    std::optional<Grading> grading(QWidget* over, const Chart& chart,
                                   const CellArea& area) override;
    std::optional<QString> pointName(QWidget* over, const Chart& chart,
                                     const QString& point) override;
    std::optional<Plan> plan(QWidget* over, const Chart& chart) override;
    std::optional<Stitch> stitch(QWidget* over, const Chart& chart) override;
};

}  // namespace lacewright::app
