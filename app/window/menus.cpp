#include "app/window/menus.h"

#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QToolBar>
#include <array>
#include <optional>

#include "app/window/action_set.h"
#include "app/window/themed_icon.h"

namespace lacewright::app {

namespace {

using enum CommandId;

// Nothing stands for a separator.
using Place = std::optional<CommandId>;

constexpr std::array kToolBar = {
    Place(NewChart),
    Place(OpenChart),
    Place(Save),
    Place(),
    Place(Undo),
    Place(Redo),
    Place(),
    Place(DrawTool),
    Place(SelectTool),
    Place(Mirror),
    Place(),
    Place(MarkRepeat),
    Place(RepeatRows),
    Place(AddSize),
    Place(),
    Place(ShowCompanions),
    Place(),
    Place(PreviousFinding),
    Place(NextFinding),
};

constexpr std::array kChartMenu = {
    Place(Cut),
    Place(Copy),
    Place(Paste),
    Place(Clear),
    Place(Mirror),
    Place(),
    Place(MarkRepeat),
    Place(ChangeRepeat),
    Place(ShiftRepeat),
    Place(RemoveRepeat),
    Place(),
    Place(RepeatRows),
    Place(AddSize),
    Place(),
    Place(InsertRowsAbove),
    Place(InsertRowsBelow),
    Place(RemoveRows),
    Place(),
    Place(InsertColumnsRight),
    Place(InsertColumnsLeft),
    Place(RemoveColumns),
};

template <class Bar, class Places>
void fill(Bar& bar, const Places& places, const ActionSet& actions) {
    for (const Place& place : places) {
        if (place) {
            bar.addAction(&actions[*place]);
        } else {
            bar.addSeparator();
        }
    }
}

}  // namespace

std::map<Menu, QMenu*> buildMenus(QMainWindow& window, const ActionSet& actions) {
    std::map<Menu, QMenu*> menus;
    for (const Command& command : commandTable()) {
        QAction& action = actions[command.id];
        window.addAction(&action);
        if (command.menu == Menu::None) continue;
        QMenu*& menu = menus[command.menu];
        if (!menu) menu = window.menuBar()->addMenu(QString::fromUtf8(menuTitle(command.menu)));
        if (command.separatorBefore) menu->addSeparator();
        menu->addAction(&action);
    }
    return menus;
}

QToolBar* buildToolBar(QMainWindow& window, const ActionSet& actions) {
    QToolBar* bar = window.addToolBar(QMainWindow::tr("Tools"));
    bar->setObjectName(QStringLiteral("toolBar"));
    bar->setMovable(false);
    bar->setIconSize({20, 20});
    bar->setContextMenuPolicy(Qt::PreventContextMenu);
    fill(*bar, kToolBar, actions);
    return bar;
}

QMenu* buildChartMenu(QMainWindow& window, const ActionSet& actions) {
    auto* menu = new QMenu(&window);
    menu->setObjectName(QStringLiteral("chartMenu"));
    fill(*menu, kChartMenu, actions);
    return menu;
}

void colourIcons(const ActionSet& actions, const QPalette& palette) {
    for (const Command& command : commandTable()) {
        if (*command.icon == '\0') continue;
        QAction& action = actions[command.id];
        action.setIcon(themedIcon(QString::fromLatin1(command.icon), palette));
        action.setIconVisibleInMenu(false);
    }
}

}  // namespace lacewright::app
