#include "app/window/evenly_controller.h"

#include <algorithm>

#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/panels/wording.h"
#include "app/window/action_set.h"
#include "app/window/pick_up_dialog.h"
#include "app/window/spread_dialog.h"

namespace lacewright::app {

namespace {

void present(QDialog& dialog) {
    dialog.setAttribute(Qt::WA_DeleteOnClose);
    dialog.show();
    dialog.raise();
    dialog.activateWindow();
}

}  // namespace

EvenlyController::EvenlyController(const Document& document, const ViewState& view,
                                   ActionSet& actions, QWidget& window)
    : QObject(&window), document_(document), view_(view), window_(window) {
    actions.on(CommandId::SpreadEvenly, [this] { spread(); });
    actions.on(CommandId::PickUpStitches, [this] { pickUp(); });
}

// From what the cursor's row leaves, where that is one number.
void EvenlyController::spread() {
    const Chart& chart = document_.chart();
    const Size* size = chart.findSize(view_.size().toStdString());
    const AffineForm left = countsOf(chart, view_.cursor().row, size).makes;
    const std::int64_t stitches = left.isConstant() ? left.constant() : 0;
    delete window_.findChild<SpreadDialog*>();
    present(*new SpreadDialog(static_cast<int>(std::min<std::int64_t>(stitches, kMaxNeedle)),
                              chart.worked == Worked::InTheRound, &window_));
}

// Along the selected rows, or all, with the uncharted ones between them.
void EvenlyController::pickUp() {
    const Chart& chart = document_.chart();
    const CellArea area = view_.selection();
    const bool some = area.lastRow > area.firstRow;
    const int first = some ? area.firstRow : 0;
    const int last = some ? area.lastRow : chart.height() - 1;
    const int between = chart.uncharted == Uncharted::None ? 0 : 1;
    const int rows = chart.rowNumber(last) - chart.rowNumber(first) + 1 + between;
    delete window_.findChild<PickUpDialog*>();
    present(*new PickUpDialog(chart.gauge, rows, &window_));
}

}  // namespace lacewright::app
