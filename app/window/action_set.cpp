#include "app/window/action_set.h"

#include <QKeySequence>
#include <cassert>

namespace lacewright::app {

namespace {

QString plainText(const Command& command) {
    QString text = QString::fromUtf8(command.text);
    text.remove(QLatin1Char('&')).remove(QChar(0x2026));
    return text;
}

}  // namespace

QString toolTipOf(const Command& command) {
    QString title = plainText(command);
    const QKeySequence key(QString::fromLatin1(command.shortcut));
    if (!key.isEmpty()) {
        title += QStringLiteral(" (%1)").arg(key.toString(QKeySequence::NativeText));
    }
    return QStringLiteral("<b>%1</b><br>%2").arg(title, QString::fromUtf8(command.tip));
}

ActionSet::ActionSet(QObject* parent) : QObject(parent) {
    for (const Command& command : commandTable()) {
        auto* action = new QAction(QString::fromUtf8(command.text), this);
        action->setObjectName(QString::fromLatin1(command.name));
        action->setStatusTip(QString::fromUtf8(command.tip));
        action->setToolTip(toolTipOf(command));
        action->setShortcut(QKeySequence(QString::fromLatin1(command.shortcut)));
        action->setCheckable(command.checkable);
        actions_.emplace(command.id, action);
    }
}

void ActionSet::on(CommandId id, const std::function<void()>& handler) {
    assert(!hasHandler(id));
    handled_.insert(id);
    connect(actions_.at(id), &QAction::triggered, this, [handler] { handler(); });
}

void ActionSet::setEnabled(std::initializer_list<CommandId> ids, bool enabled) {
    for (const CommandId id : ids) actions_.at(id)->setEnabled(enabled);
}

}  // namespace lacewright::app
