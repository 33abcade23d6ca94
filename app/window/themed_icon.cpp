#include "app/window/themed_icon.h"

#include <QFile>
#include <QGuiApplication>
#include <QPainter>
#include <QPalette>
#include <QSvgRenderer>

// Must stand outside every namespace: the macro declares a global function.
static void initResourceFile() {
    Q_INIT_RESOURCE(lacewright);
}

namespace lacewright::app {

namespace {

constexpr int kEdge = 20;  // device-independent pixels

QPixmap painted(const QByteArray& svg, const QColor& ink) {
    QByteArray coloured = svg;
    coloured.replace("#000", ink.name().toLatin1());
    QSvgRenderer renderer(coloured);
    const double ratio = qGuiApp->devicePixelRatio();
    QPixmap pixmap(QSize(kEdge, kEdge) * ratio);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    renderer.render(&painter, QRectF(QPointF(0, 0), QSizeF(pixmap.size())));
    painter.end();
    pixmap.setDevicePixelRatio(ratio);
    return pixmap;
}

}  // namespace

void initResources() {
    initResourceFile();
}

QIcon themedIcon(const QString& name, const QPalette& palette) {
    QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
    if (!file.open(QIODevice::ReadOnly)) return {};
    const QByteArray svg = file.readAll();
    QIcon icon;
    icon.addPixmap(painted(svg, palette.color(QPalette::Active, QPalette::ButtonText)));
    icon.addPixmap(painted(svg, palette.color(QPalette::Disabled, QPalette::ButtonText)),
                   QIcon::Disabled);
    return icon;
}

QIcon programIcon() {
    return QIcon(QStringLiteral(":/icons/lacewright.svg"));
}

}  // namespace lacewright::app
