#pragma once

#include <QPalette>

#include <map>

#include "app/window/command.h"

class QComboBox;
class QMainWindow;
class QMenu;
class QToolBar;

namespace lacewright::app {

class ActionSet;

// Places the actions of the command table in the window. Menus that grow while the program runs
// (recent files, panels) are filled by those who know.
std::map<Menu, QMenu*> buildMenus(QMainWindow& window, const ActionSet& actions);
QToolBar* buildToolBar(QMainWindow& window, const ActionSet& actions);
// The menu over the chart; the window owns it.
QMenu* buildChartMenu(QMainWindow& window, const ActionSet& actions);
// Gives every action its icon in the colours of the palette.
void colourIcons(const ActionSet& actions, const QPalette& palette);

}  // namespace lacewright::app
