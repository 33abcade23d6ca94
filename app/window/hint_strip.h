#pragma once

#include <QFrame>

namespace lacewright::app {

// A few words of help above the chart for someone who is here for the first time. Goes away for
// good when it is closed.
class HintStrip : public QFrame {
    Q_OBJECT

 public:
    explicit HintStrip(QWidget* parent = nullptr);

    static bool isWanted();

 private:
    void dismiss();
};

}  // namespace lacewright::app
