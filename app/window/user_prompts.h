#pragma once

#include <QString>
#include <optional>

#include "core/chart/edits.h"
#include "core/plan/planner.h"

class QPrinter;
class QWidget;

namespace lacewright::app {

// A repeat about to be made or changed, and how often the sizes work it.
struct RepeatPlan {
    Repeat repeat;
    std::optional<int> times;  // absent: the sizes are left alone
    bool operator==(const RepeatPlan&) const = default;
};

struct Question {
    QString title;
    QString text;
    QString yes;  // the word on the button that agrees
    QString no;
};

// Every question that holds the window up. Tests answer from a script; the program shows dialogs.
// An empty answer means that the person turned away, and nothing must change.
class UserPrompts {
 public:
    enum class Unsaved { Save, Discard, Cancel };

    virtual ~UserPrompts() = default;

    // `filter` as of QFileDialog.
    virtual QString fileToOpen(QWidget* over, const QString& folder, const QString& filter) = 0;
    // The answer has an ending.
    virtual QString fileToSave(QWidget* over, const QString& suggestion, const QString& filter) = 0;
    virtual Unsaved unsavedChanges(QWidget* over, const QString& name) = 0;
    virtual bool confirm(QWidget* over, const Question& question) = 0;
    virtual void tell(QWidget* over, const QString& title, const QString& text) = 0;

    // False when nothing is to be printed.
    virtual bool choosePrinter(QWidget* over, QPrinter& printer) = 0;

    virtual std::optional<Chart> newChart(QWidget* over) = 0;
    // A chart drawn from written rows, to begin with those of `text`.
    virtual std::optional<Chart> chartFromRows(QWidget* over, const QString& text) = 0;
    virtual std::optional<ChartProperties> chartProperties(QWidget* over,
                                                           const ChartProperties& now) = 0;
    virtual std::optional<RepeatPlan> repeat(QWidget* over, const Chart& chart,
                                             const RepeatPlan& plan) = 0;
    // `rows` names the rows for the heading.
    virtual std::optional<Jog> jog(QWidget* over, const QString& rows, const Jog& now) = 0;
    virtual std::optional<RowRepeat> rowRepeat(QWidget* over, const Chart& chart,
                                               const RowRepeat& now) = 0;
    virtual std::optional<Size> size(QWidget* over, const Chart& chart, const Size& now) = 0;
    // What holds of the sizes as a family. A shoulder that is added is that of `area`.
    virtual std::optional<Grading> grading(QWidget* over, const Chart& chart,
                                           const CellArea& area) = 0;
    // Another name for the point.
    virtual std::optional<QString> pointName(QWidget* over, const Chart& chart,
                                             const QString& point) = 0;
    virtual std::optional<Plan> plan(QWidget* over, const Chart& chart) = 0;
    virtual std::optional<Stitch> stitch(QWidget* over, const Chart& chart) = 0;
};

}  // namespace lacewright::app
