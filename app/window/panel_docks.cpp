#include "app/window/panel_docks.h"

#include <QDockWidget>
#include <QMainWindow>
#include <QMenu>

#include "app/panels/checks_panel.h"
#include "app/panels/counts_panel.h"
#include "app/panels/sizes_panel.h"
#include "app/panels/stitches_panel.h"
#include "app/panels/worked_row_panel.h"
#include "app/panels/written_panel.h"
#include "app/window/action_set.h"

namespace lacewright::app {

namespace {

constexpr int kStitchesWidth = 264;  // device-independent pixels
constexpr int kChecksWidth = 330;

QDockWidget* dockOf(const QWidget& panel) {
    return qobject_cast<QDockWidget*>(panel.parentWidget());
}

}  // namespace

PanelDocks::PanelDocks(QMainWindow& window, QMenu& menu, Document& document, ViewState& view,
                       const ActionSet& actions)
    : window_(window),
      menu_(menu),
      stitches_(new StitchesPanel(document, view, &window)),
      checks_(new ChecksPanel(document, view, &window)) {
    auto* sizes = new SizesPanel(document, view,
                                 {actions[CommandId::AddSize], actions[CommandId::ChangeSize],
                                  actions[CommandId::RemoveSize], actions[CommandId::PlanSizes],
                                  actions[CommandId::GradeSizes]},
                                 &window);
    auto* counts = new CountsPanel(document, view, &window);
    auto* written = new WrittenPanel(document, view, &window);
    workedRow_ = new WorkedRowPanel(document, view, &window);
    add(Qt::LeftDockWidgetArea, stitches_, "stitchesDock", tr("Stitches"));
    add(Qt::RightDockWidgetArea, checks_, "checksDock", tr("Checks"));
    QDockWidget* below = add(Qt::RightDockWidgetArea, sizes, "sizesDock", tr("Sizes"));
    QDockWidget* next = add(Qt::RightDockWidgetArea, counts, "countsDock", tr("Counts"));
    QDockWidget* last = add(Qt::RightDockWidgetArea, written, "writtenDock", tr("Written rows"));
    window.tabifyDockWidget(below, next);
    window.tabifyDockWidget(next, last);
    below->raise();
    add(Qt::BottomDockWidgetArea, workedRow_, "workedRowDock", tr("Row worked out"))->hide();
}

QDockWidget* PanelDocks::add(Qt::DockWidgetArea area, QWidget* panel, const char* name,
                             const QString& title) {
    auto* dock = new QDockWidget(title, &window_);
    dock->setObjectName(QLatin1String(name));
    dock->setWidget(panel);
    window_.addDockWidget(area, dock);
    menu_.addAction(dock->toggleViewAction());
    return dock;
}

void PanelDocks::raise(const QWidget& panel) const {
    QDockWidget* dock = dockOf(panel);
    dock->show();
    dock->raise();
}

bool PanelDocks::showsWorkedRow() const {
    return workedRow_->isVisible();
}

void PanelDocks::showWorkedRow(bool on) const {
    if (on) {
        raise(*workedRow_);
    } else {
        dockOf(*workedRow_)->hide();
    }
}

void PanelDocks::setFirstWidths() const {
    window_.resizeDocks({dockOf(*stitches_), dockOf(*checks_)}, {kStitchesWidth, kChecksWidth},
                        Qt::Horizontal);
}

}  // namespace lacewright::app
