#include "app/window/outline_style.h"

#include <QPainter>
#include <QStyleFactory>
#include <QStyleOption>

namespace lacewright::app {

namespace {

// How much of the text's colour an outline has; 3 : 1 against the field in both appearances, as
// WCAG 2.2, 1.4.11 asks of the edge of a control.
constexpr double kOutline = 0.5;
constexpr double kDisabledOutline = 0.25;

QColor mixed(const QColor& a, const QColor& b, double share) {
    const auto part = [share](int x, int y) { return qRound(x * share + y * (1 - share)); };
    return QColor(part(a.red(), b.red()), part(a.green(), b.green()), part(a.blue(), b.blue()));
}

QColor outlineOf(const QStyleOption& option) {
    const QPalette& palette = option.palette;
    if (option.state & QStyle::State_HasFocus && option.state & QStyle::State_Enabled)
        return palette.color(QPalette::Highlight);
    const double share = option.state & QStyle::State_Enabled ? kOutline : kDisabledOutline;
    return mixed(palette.color(QPalette::Active, QPalette::Text), palette.color(QPalette::Base),
                 share);
}

void drawOutline(const QStyleOption& option, QPainter& painter, bool round) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setPen(outlineOf(option));
    painter.setBrush(Qt::NoBrush);
    const QRectF edge = QRectF(option.rect).adjusted(0.5, 0.5, -0.5, -0.5);
    if (round) {
        painter.drawEllipse(edge);
    } else {
        painter.drawRoundedRect(edge, 2, 2);
    }
    painter.restore();
}

}  // namespace

OutlineStyle::OutlineStyle() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

void OutlineStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                                 QPainter* painter, const QWidget* widget) const {
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    const bool box = element == PE_IndicatorCheckBox || element == PE_IndicatorRadioButton ||
                     element == PE_IndicatorItemViewItemCheck;
    if (!box && element != PE_FrameLineEdit) return;
    drawOutline(*option, *painter, element == PE_IndicatorRadioButton);
}

void OutlineStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                      QPainter* painter, const QWidget* widget) const {
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    if (control == CC_SpinBox) drawOutline(*option, *painter, false);
}

}  // namespace lacewright::app
