#pragma once

#include <QProxyStyle>

namespace lacewright::app {

// Fusion with outlines that are seen on dark windows as well: it darkens the window's colour for
// them, which leaves unticked boxes and empty fields without an edge. The outline is the palette's
// text colour, thinned.
class OutlineStyle : public QProxyStyle {
 public:
    OutlineStyle();

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                            QPainter* painter, const QWidget* widget) const override;
};

}  // namespace lacewright::app
