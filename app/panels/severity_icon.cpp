#include "app/panels/severity_icon.h"

#include <QGuiApplication>
#include <QPainter>
#include <QPainterPath>
#include <QPalette>

#include "app/canvas/colours.h"

namespace lacewright::app {

namespace {

constexpr int kEdge = 16;  // device-independent pixels; drawings below are in these

template <class Draw>
QIcon drawn(Draw draw) {
    const double ratio = qGuiApp->devicePixelRatio();
    QPixmap pixmap(QSize(kEdge, kEdge) * ratio);
    pixmap.setDevicePixelRatio(ratio);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    draw(painter);
    return QIcon(pixmap);
}

void drawFault(QPainter& painter, const ChartColours& colours) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.fault);
    painter.drawEllipse(QRectF(1.5, 1.5, 13, 13));
    painter.setPen(QPen(colours.ground, 2.2, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(4.5, 8), QPointF(11.5, 8));
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
    const ChartColours colours = coloursFor(palette);
    return drawn([severity, &colours](QPainter& painter) {
        switch (severity) {
            case Severity::Fault:
                return drawFault(painter, colours);
            case Severity::Warning:
                return drawWarning(painter, colours);
            case Severity::Note:
                return drawNote(painter, colours);
        }
    });
}

QIcon provenIcon(const QPalette& palette) {
    const ChartColours colours = coloursFor(palette);
    return drawn([&colours](QPainter& painter) {
        painter.setPen(QPen(colours.size, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPolyline(QPolygonF({QPointF(3, 8.5), QPointF(6.6, 12), QPointF(13, 4.2)}));
    });
}

}  // namespace lacewright::app
