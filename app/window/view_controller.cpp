#include "app/window/view_controller.h"

#include <QActionGroup>

#include "app/canvas/chart_view.h"
#include "app/document/view_state.h"
#include "app/panels/checks_panel.h"
#include "app/panels/stitch_list_model.h"
#include "app/panels/stitches_panel.h"
#include "app/window/action_set.h"
#include "app/window/appearance.h"

namespace lacewright::app {

namespace {

constexpr int kUsualCell = 24;  // device-independent pixels

// A fifth more or less, at least one pixel.
int larger(int cell) {
    return cell + qMax(1, cell / 5);
}
int smaller(int cell) {
    return cell - qMax(1, cell / 6);
}

}  // namespace

ViewController::ViewController(ViewState& view, const Parts& parts, ActionSet& actions,
                               QObject* parent)
    : QObject(parent), view_(view), parts_(parts), actions_(actions) {
    connectZoom();
    connectTools();
    connectPanels();
    connectAppearance();
}

void ViewController::connectZoom() {
    actions_.on(CommandId::ZoomIn, [this] { view_.zoomTo(larger(view_.cellSize())); });
    actions_.on(CommandId::ZoomOut, [this] { view_.zoomTo(smaller(view_.cellSize())); });
    actions_.on(CommandId::ZoomUsual, [this] { view_.zoomTo(kUsualCell); });
    actions_.on(CommandId::ZoomToFit, [this] { parts_.chart.zoomToFit(); });
    QAction& companions = actions_[CommandId::ShowCompanions];
    actions_.on(CommandId::ShowCompanions,
                [this, &companions] { view_.showCompanions(companions.isChecked()); });
    connect(&view_, &ViewState::companionsToggled, this,
            [this, &companions] { companions.setChecked(view_.showsCompanions()); });
}

void ViewController::connectTools() {
    auto* group = new QActionGroup(this);
    group->addAction(&actions_[CommandId::DrawTool]);
    group->addAction(&actions_[CommandId::SelectTool]);
    actions_.on(CommandId::DrawTool, [this] { parts_.chart.setTool(ChartView::Tool::Draw); });
    actions_.on(CommandId::SelectTool, [this] { parts_.chart.setTool(ChartView::Tool::Select); });
    const auto follow = [this](ChartView::Tool tool) {
        const bool draws = tool == ChartView::Tool::Draw;
        actions_[draws ? CommandId::DrawTool : CommandId::SelectTool].setChecked(true);
    };
    connect(&parts_.chart, &ChartView::toolChanged, this, follow);
    follow(parts_.chart.tool());
}

void ViewController::connectPanels() {
    actions_.on(CommandId::GoToChart, [this] { parts_.chart.setFocus(Qt::ShortcutFocusReason); });
    actions_.on(CommandId::FindStitch, [this] {
        Q_EMIT panelWanted(&parts_.stitches);
        parts_.stitches.focusSearch();
    });
    connect(&parts_.stitches, &StitchesPanel::done, &parts_.chart,
            [this] { parts_.chart.setFocus(Qt::OtherFocusReason); });
    for (int key = 1; key <= StitchListModel::kKeys; ++key) {
        const auto id = static_cast<CommandId>(static_cast<int>(CommandId::Stitch1) + key - 1);
        actions_.on(id, [this, key] { parts_.stitches.chooseByKey(key); });
    }
    const auto step = [this](int direction) {
        Q_EMIT panelWanted(&parts_.checks);
        parts_.checks.step(direction);
    };
    actions_.on(CommandId::NextFinding, [step] { step(1); });
    actions_.on(CommandId::PreviousFinding, [step] { step(-1); });
    actions_.on(CommandId::TryFirstMend, [this] { parts_.checks.doFirstMend(); });
}

void ViewController::connectAppearance() {
    auto* group = new QActionGroup(this);
    const auto offer = [this, group](CommandId id, Appearance appearance) {
        group->addAction(&actions_[id]);
        actions_.on(id, [appearance] { useAppearance(appearance); });
        if (rememberedAppearance() == appearance) actions_[id].setChecked(true);
    };
    offer(CommandId::AppearanceSystem, Appearance::System);
    offer(CommandId::AppearanceLight, Appearance::Light);
    offer(CommandId::AppearanceDark, Appearance::Dark);
}

}  // namespace lacewright::app
