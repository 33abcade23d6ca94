#include "app/window/repeat_controller.h"

#include <QWidget>

#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/window/action_set.h"
#include "app/window/user_prompts.h"

namespace lacewright::app {

namespace {

QString named(const std::string& name) {
    return QString::fromStdString(name);
}

// Every size works the repeat so often.
Result<Chart> withTimes(Result<Chart> chart, const std::string& repeat, int times) {
    if (!chart) return chart;
    const std::vector<Size> sizes = chart->sizes;
    for (const Size& size : sizes) {
        Size changed = size;
        changed.times[repeat] = times;
        chart = changeSize(*chart, size.name, changed);
        if (!chart) break;
    }
    return chart;
}

}  // namespace

RepeatController::RepeatController(Document& document, ViewState& view, ActionSet& actions,
                                   UserPrompts& prompts, QWidget& window)
    : QObject(&window),
      document_(document),
      view_(view),
      actions_(actions),
      prompts_(prompts),
      window_(window) {
    connectRepeats();
    connectRowRepeat();
    connectSizes();
    connect(&document, &Document::changed, this, &RepeatController::refresh);
    connect(&document, &Document::replaced, this, &RepeatController::refresh);
    connect(&view, &ViewState::cursorMoved, this, &RepeatController::refresh);
    connect(&view, &ViewState::sizeChosen, this, &RepeatController::refresh);
    refresh();
}

const Repeat* RepeatController::repeatAtCursor() const {
    const Cell cursor = view_.cursor();
    for (const Repeat& repeat : document_.chart().repeats) {
        if (!repeat.covers(cursor.row)) continue;
        const Box box = repeat.on(cursor.row);
        if (cursor.column >= box.right && cursor.column <= box.left) return &repeat;
    }
    return nullptr;
}

const Size* RepeatController::sizeLookedAt() const {
    return document_.chart().findSize(view_.size().toStdString());
}

void RepeatController::refresh() {
    const bool onRepeat = repeatAtCursor() != nullptr;
    actions_.setEnabled({CommandId::ChangeRepeat, CommandId::ShiftRepeat, CommandId::RemoveRepeat},
                        onRepeat);
    actions_.setEnabled({CommandId::EndRowRepeat}, document_.chart().rowRepeat.has_value());
    actions_.setEnabled({CommandId::ChangeSize, CommandId::RemoveSize}, sizeLookedAt() != nullptr);
}

void RepeatController::connectRepeats() {
    actions_.on(CommandId::MarkRepeat, [this] { markRepeat(); });
    actions_.on(CommandId::ChangeRepeat, [this] { changeRepeat(); });
    actions_.on(CommandId::ShiftRepeat, [this] { shiftRepeat(); });
    actions_.on(CommandId::RemoveRepeat, [this] {
        if (const Repeat* repeat = repeatAtCursor()) {
            document_.apply(tr("Remove repeat %1").arg(named(repeat->name)),
                            removeRepeat(document_.chart(), repeat->name));
        }
    });
}

void RepeatController::markRepeat() {
    const Chart& chart = document_.chart();
    const CellArea area = view_.selection();
    RepeatPlan plan;
    plan.repeat.right = area.right;
    plan.repeat.left = area.left;
    // One selected row means the columns are meant, on all rows.
    const bool oneRow = area.firstRow == area.lastRow;
    plan.repeat.firstRow = oneRow ? 0 : area.firstRow;
    plan.repeat.lastRow = oneRow ? chart.height() - 1 : area.lastRow;
    if (!chart.sizes.empty()) plan.times = 1;
    const auto answer = prompts_.repeat(&window_, chart, plan);
    if (!answer) return;
    Result<Chart> marked = addRepeat(chart, answer->repeat);
    if (marked && answer->times) {
        const std::string name = marked->repeats.back().name;
        marked = withTimes(std::move(marked), name, *answer->times);
    }
    document_.apply(tr("Mark repeat"), std::move(marked));
}

void RepeatController::changeRepeat() {
    const Repeat* repeat = repeatAtCursor();
    if (!repeat) return;
    const std::string name = repeat->name;
    const auto answer = prompts_.repeat(&window_, document_.chart(), {*repeat, std::nullopt});
    if (!answer) return;
    document_.apply(tr("Change repeat %1").arg(named(name)),
                    lacewright::changeRepeat(document_.chart(), name, answer->repeat));
}

void RepeatController::shiftRepeat() {
    const Repeat* repeat = repeatAtCursor();
    if (!repeat) return;
    const Chart& chart = document_.chart();
    const CellArea area = view_.selection();
    const int first = chart.rowNumber(area.firstRow);
    const int last = chart.rowNumber(area.lastRow);
    const QString rows =
        first == last ? tr("row %1").arg(first) : tr("rows %1 to %2").arg(first).arg(last);
    const auto now = repeat->jogs.find(view_.cursor().row);
    const auto jog = prompts_.jog(&window_, rows, now == repeat->jogs.end() ? Jog{} : now->second);
    if (!jog) return;
    Repeat changed = *repeat;
    for (int row = area.firstRow; row <= area.lastRow; ++row) {
        if (!changed.covers(row)) continue;
        if (jog->right == 0 && jog->left == 0) {
            changed.jogs.erase(row);
        } else {
            changed.jogs[row] = *jog;
        }
    }
    document_.apply(tr("Shift repeat %1").arg(named(changed.name)),
                    lacewright::changeRepeat(chart, changed.name, changed));
}

void RepeatController::connectRowRepeat() {
    actions_.on(CommandId::RepeatRows, [this] {
        const CellArea area = view_.selection();
        const RowRepeat old = document_.chart().rowRepeat.value_or(RowRepeat{});
        RowRepeat now = old;
        now.firstRow = area.firstRow;
        now.lastRow = area.lastRow;
        const auto answer = prompts_.rowRepeat(&window_, document_.chart(), now);
        if (answer) {
            document_.apply(tr("Repeat rows"), setRowRepeat(document_.chart(), *answer));
        }
    });
    actions_.on(CommandId::EndRowRepeat, [this] {
        document_.apply(tr("End row repeat"), setRowRepeat(document_.chart(), std::nullopt));
    });
}

void RepeatController::connectSizes() {
    actions_.on(CommandId::AddSize, [this] { addSize(); });
    actions_.on(CommandId::ChangeSize, [this] {
        const Size* size = sizeLookedAt();
        if (!size) return;
        const std::string name = size->name;
        const auto answer = prompts_.size(&window_, document_.chart(), *size);
        if (answer && document_.apply(tr("Change size %1").arg(named(name)),
                                      changeSize(document_.chart(), name, *answer))) {
            view_.chooseSize(named(answer->name));
        }
    });
    actions_.on(CommandId::RemoveSize, [this] {
        const QString name = view_.size();
        document_.apply(tr("Remove size %1").arg(name),
                        removeSize(document_.chart(), name.toStdString()));
    });
    actions_.on(CommandId::GradeSizes, [this] {
        const auto grading = prompts_.grading(&window_, document_.chart(), view_.selection());
        if (grading) {
            document_.apply(tr("Change rules for the sizes"),
                            setGrading(document_.chart(), *grading));
        }
    });
    actions_.on(CommandId::PlanSizes, [this] {
        const auto plan = prompts_.plan(&window_, document_.chart());
        if (plan) document_.apply(tr("Plan sizes"), usePlan(document_.chart(), *plan));
    });
}

void RepeatController::addSize() {
    const Chart& chart = document_.chart();
    const CellArea area = view_.selection();
    Size size;
    // A single cell is no reach one would choose: then the whole width is meant.
    size.reach = view_.hasSelection() ? Reach{area.right, area.left} : Reach{1, chart.width};
    const auto answer = prompts_.size(&window_, chart, size);
    if (!answer) return;
    if (document_.apply(tr("Add size %1").arg(named(answer->name)),
                        lacewright::addSize(chart, *answer))) {
        view_.chooseSize(named(answer->name));
    }
}

}  // namespace lacewright::app
