#include "app/window/edge_controller.h"

#include <QWidget>

#include "app/canvas/drag_edits.h"
#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/window/action_set.h"
#include "app/window/user_prompts.h"
#include "core/check/clean_edges.h"

namespace lacewright::app {

namespace {

// The line of an edge on a row, as lines are named in drag_edits.h.
int lineOf(const Size& size, Edge edge, int row) {
    const Reach reach = size.on(row);
    return edge == Edge::Start ? reach.start - 1 : reach.end;
}

}  // namespace

EdgeController::EdgeController(Document& document, ViewState& view, ActionSet& actions,
                               UserPrompts& prompts, QWidget& window)
    : QObject(&window),
      document_(document),
      view_(view),
      actions_(actions),
      prompts_(prompts),
      window_(window) {
    actions_.on(CommandId::StartLeft, [this] { step(Edge::Start, 1); });
    actions_.on(CommandId::StartRight, [this] { step(Edge::Start, -1); });
    actions_.on(CommandId::EndLeft, [this] { step(Edge::End, 1); });
    actions_.on(CommandId::EndRight, [this] { step(Edge::End, -1); });
    actions_.on(CommandId::StartHere, [this] { moveTo(Edge::Start, view_.cursor().column - 1); });
    actions_.on(CommandId::EndHere, [this] { moveTo(Edge::End, view_.cursor().column); });
    actions_.on(CommandId::RenamePoint, [this] {
        const Point* point = document_.chart().pointAt(view_.cursor().column);
        if (point) renamePoint(QString::fromStdString(point->name));
    });
    actions_.on(CommandId::NextSize, [this] { lookAtNext(1); });
    actions_.on(CommandId::PreviousSize, [this] { lookAtNext(-1); });
    connect(&document, &Document::changed, this, &EdgeController::refresh);
    connect(&document, &Document::replaced, this, &EdgeController::refresh);
    connect(&view, &ViewState::cursorMoved, this, &EdgeController::refresh);
    connect(&view, &ViewState::sizeChosen, this, &EdgeController::refresh);
    refresh();
}

void EdgeController::refresh() {
    const Chart& chart = document_.chart();
    actions_.setEnabled({CommandId::StartLeft, CommandId::StartRight, CommandId::StartHere,
                         CommandId::EndLeft, CommandId::EndRight, CommandId::EndHere},
                        chart.findSize(view_.size().toStdString()) != nullptr);
    actions_.setEnabled({CommandId::RenamePoint}, chart.pointAt(view_.cursor().column) != nullptr);
    actions_.setEnabled({CommandId::NextSize, CommandId::PreviousSize}, !chart.sizes.empty());
}

void EdgeController::step(Edge edge, int direction) {
    const Chart& chart = document_.chart();
    const Size* size = chart.findSize(view_.size().toStdString());
    if (!size) return;
    const int line = lineOf(*size, edge, view_.cursor().row);
    const int next = nextClean(cleanLines(chart, *size, edge), line, direction);
    if (next != line) return moveTo(edge, next);
    const char* refusal =
        edge == Edge::Start
            ? "No column further that way begins the size without parting stitches that belong "
              "together; Begin size at the cursor takes any column."
            : "No column further that way ends the size without parting stitches that belong "
              "together; End size at the cursor takes any column.";
    document_.apply({}, Error{ErrorCode::Refused, refusal, {}});
}

void EdgeController::moveTo(Edge edge, int line) {
    const Chart& chart = document_.chart();
    const std::string size = view_.size().toStdString();
    if (const auto rows = view_.selectedRows()) {
        document_.apply(edge == Edge::Start ? tr("Shape start of size") : tr("Shape end of size"),
                        shapeSizeMark(chart, size, edge, line, *rows));
        return;
    }
    document_.apply(edge == Edge::Start ? tr("Move start of size") : tr("Move end of size"),
                    moveSizeMark(chart, size, edge, line, view_.cursor().row));
}

void EdgeController::renamePoint(const QString& point) {
    const auto name = prompts_.pointName(&window_, document_.chart(), point);
    if (!name) return;
    document_.apply(
        tr("Rename point %1").arg(point),
        lacewright::renamePoint(document_.chart(), point.toStdString(), name->toStdString()));
}

// The whole chart stands before the first size and after the last.
void EdgeController::lookAtNext(int direction) {
    const auto& sizes = document_.chart().sizes;
    const int count = static_cast<int>(sizes.size()) + 1;
    int now = 0;
    for (int i = 1; i < count; ++i) {
        if (sizes[static_cast<std::size_t>(i - 1)].name == view_.size().toStdString()) now = i;
    }
    const int next = (now + direction + count) % count;
    view_.chooseSize(next == 0
                         ? QString()
                         : QString::fromStdString(sizes[static_cast<std::size_t>(next - 1)].name));
}

}  // namespace lacewright::app
