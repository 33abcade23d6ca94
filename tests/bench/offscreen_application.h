#pragma once

#include <QApplication>

namespace lacewright::test {

// The one application of this process, without a display.
inline QApplication& offscreenApplication() {
    static QApplication& theOne = []() -> QApplication& {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        static char name[] = "benchmarks";
        static char* arguments[] = {name, nullptr};
        static int count = 1;
        static QApplication application(count, arguments);
        return application;
    }();
    return theOne;
}

}  // namespace lacewright::test
