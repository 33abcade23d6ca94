#include "app/panels/severity_icon.h"

#include <QGuiApplication>
#include <QPainter>
#include <QPalette>
#include <QPolygonF>

#include "app/canvas/colours.h"

namespace lacewright::app {

namespace {

constexpr int kEdge = 16;  // device-independent pixels; drawings below are in these

template <class Draw>
QPixmap drawn(const ChartColours& colours, Draw draw) {
    const double ratio = qGuiApp->devicePixelRatio();
    QPixmap pixmap(QSize(kEdge, kEdge) * ratio);
    pixmap.setDevicePixelRatio(ratio);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    draw(painter, colours);
    return pixmap;
}

// In its own colours, and in those of a selected line, on which its own would be lost.
template <class Draw>
QIcon iconOf(const QPalette& palette, Draw draw) {
    const ChartColours colours = coloursFor(palette);
    ChartColours selected = colours;
    selected.ground = palette.color(QPalette::Highlight);
    for (QColor* ink :
         {&selected.fault, &selected.warning, &selected.note, &selected.size, &selected.text}) {
        *ink = palette.color(QPalette::HighlightedText);
    }
    QIcon icon(drawn(colours, draw));
    icon.addPixmap(drawn(selected, draw), QIcon::Selected);
    return icon;
}

void drawFault(QPainter& painter, const ChartColours& colours) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.fault);
    painter.drawPolygon(QPolygonF({QPointF(5.2, 1.2), QPointF(10.8, 1.2), QPointF(14.8, 5.2),
                                   QPointF(14.8, 10.8), QPointF(10.8, 14.8), QPointF(5.2, 14.8),
                                   QPointF(1.2, 10.8), QPointF(1.2, 5.2)}));
    painter.setPen(QPen(colours.ground, 1.9, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(8, 4.4), QPointF(8, 8.6));
    painter.drawPoint(QPointF(8, 11.5));
}

void drawWarning(QPainter& painter, const ChartColours& colours) {
    painter.setPen(QPen(colours.text, 1.2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(colours.warning);
    painter.drawPolygon(QPolygonF({QPointF(8, 2), QPointF(14.5, 13.5), QPointF(1.5, 13.5)}));
    painter.setPen(QPen(Qt::black, 1.6, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(8, 6.2), QPointF(8, 9.2));
    painter.drawPoint(QPointF(8, 11.6));
}

void drawNote(QPainter& painter, const ChartColours& colours) {
    painter.setPen(QPen(colours.note, 1.6));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(QRectF(2, 2, 12, 12));
    painter.setPen(QPen(colours.note, 1.8, Qt::SolidLine, Qt::RoundCap));
    painter.drawPoint(QPointF(8, 5));
    painter.drawLine(QPointF(8, 7.8), QPointF(8, 11));
}

}  // namespace

QIcon severityIcon(Severity severity, const QPalette& palette) {
    switch (severity) {
        case Severity::Fault:
            return iconOf(palette, drawFault);
        case Severity::Warning:
            return iconOf(palette, drawWarning);
        case Severity::Note:
            break;
    }
    return iconOf(palette, drawNote);
}

QIcon provenIcon(const QPalette& palette) {
    return iconOf(palette, [](QPainter& painter, const ChartColours& colours) {
        painter.setPen(QPen(colours.size, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPolyline(QPolygonF({QPointF(3, 8.5), QPointF(6.6, 12), QPointF(13, 4.2)}));
    });
}

}  // namespace lacewright::app
