#pragma once

#include <QPushButton>

namespace lacewright::app {

// A push button whose label breaks into as many lines as its width asks for.
class WrappedButton : public QPushButton {
    Q_OBJECT

 public:
    explicit WrappedButton(const QString& label, QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    int heightForWidth(int width) const override;

 protected:
    void paintEvent(QPaintEvent* event) override;
};

}  // namespace lacewright::app
