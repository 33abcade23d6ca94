#pragma once

#include <QAction>
#include <QObject>
#include <functional>
#include <map>
#include <set>

#include "app/window/command.h"

namespace lacewright::app {

// One QAction for each row of the command table. Menus, toolbars and panels only place these.
class ActionSet : public QObject {
 public:
    explicit ActionSet(QObject* parent = nullptr);

    QAction& operator[](CommandId id) const { return *actions_.at(id); }
    // What the command does. Requires: the command has no handler yet.
    void on(CommandId id, const std::function<void()>& handler);
    bool hasHandler(CommandId id) const { return handled_.contains(id); }
    void setEnabled(std::initializer_list<CommandId> ids, bool enabled);

 private:
    std::map<CommandId, QAction*> actions_;
    std::set<CommandId> handled_;
};

// "Undo (Ctrl+Z)" and the tip below it, for tooltips.
QString toolTipOf(const Command& command);

}  // namespace lacewright::app
