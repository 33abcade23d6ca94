#pragma once

#include <QToolButton>

namespace lacewright::app {

// A button with words at the foot of a panel, reached by Tab.
inline QToolButton* panelButton(QWidget* parent, const QString& text, const char* name) {
    auto* made = new QToolButton(parent);
    made->setText(text);
    made->setObjectName(QLatin1String(name));
    made->setFocusPolicy(Qt::TabFocus);
    return made;
}

}  // namespace lacewright::app
