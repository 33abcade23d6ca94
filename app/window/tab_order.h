#pragma once

#include <QWidget>
#include <initializer_list>

namespace lacewright::app {

// Tab reaches these after everything else in the window, in this order.
inline void reachLast(QWidget& window, std::initializer_list<QWidget*> widgets) {
    for (QWidget* widget : widgets) {
        QWidget* last = window.previousInFocusChain();
        if (last != widget) QWidget::setTabOrder(last, widget);
    }
}

}  // namespace lacewright::app
