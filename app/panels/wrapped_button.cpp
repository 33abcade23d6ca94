#include "app/panels/wrapped_button.h"

#include <QStyleOptionButton>
#include <QStylePainter>
#include <utility>

namespace lacewright::app {

namespace {

// Device-independent pixels between the label and the edges of the button.
constexpr int kBeside = 10;
constexpr int kAbove = 5;
constexpr int kUsualWidth = 220;
constexpr int kLeastWidth = 120;
constexpr int kFlags = Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap;

}  // namespace

WrappedButton::WrappedButton(const QString& label, QWidget* parent) : QPushButton(label, parent) {
    QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

QSize WrappedButton::sizeHint() const {
    return {kUsualWidth, heightForWidth(kUsualWidth)};
}

QSize WrappedButton::minimumSizeHint() const {
    return {kLeastWidth, fontMetrics().height() + 2 * kAbove};
}

int WrappedButton::heightForWidth(int width) const {
    const QRect room(0, 0, width - 2 * kBeside, 10'000);
    return fontMetrics().boundingRect(room, kFlags, text()).height() + 2 * kAbove;
}

void WrappedButton::paintEvent(QPaintEvent* /*event*/) {
    QStylePainter painter(this);
    QStyleOptionButton option;
    initStyleOption(&option);
    const QString label = std::exchange(option.text, QString());
    painter.drawControl(QStyle::CE_PushButton, option);
    painter.setPen(option.palette.color(QPalette::ButtonText));
    painter.drawText(rect().adjusted(kBeside, kAbove, -kBeside, -kAbove), kFlags, label);
}

}  // namespace lacewright::app
