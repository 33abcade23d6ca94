#pragma once

#include <QApplication>

namespace lacewright::test {

// The one application of this process, without a display. It is never destroyed: when the process
// ends, what Qt keeps for it may be gone before.
inline QApplication& offscreenApplication() {
    static QApplication& theOne = []() -> QApplication& {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        static char name[] = "benchmarks";
        static char* arguments[] = {name, nullptr};
        static int count = 1;
        return *new QApplication(count, arguments);
    }();
    return theOne;
}

}  // namespace lacewright::test
