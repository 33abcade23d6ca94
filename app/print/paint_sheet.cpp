#include "app/print/paint_sheet.h"

#include <QFontMetricsF>
#include <QPainterPath>
#include <array>
#include <vector>

#include "app/print/glyph_path.h"

namespace lacewright::app {
namespace {

constexpr double kMmPerPoint = 25.4 / 72;

QColor colour(std::uint32_t rgb, double opacity = 1) {
    QColor result = QColor::fromRgb(rgb);
    result.setAlphaF(static_cast<float>(opacity));
    return result;
}

class SheetPainter {
 public:
    SheetPainter(QPainter& painter, const Sheet& sheet) : painter_(painter), sheet_(sheet) {
        for (const GlyphShape& glyph : sheet.glyphs) {
            Glyph paths;
            for (const GlyphStroke& stroke : glyph.strokes) {
                (stroke.filled ? paths.filled : paths.outline).addPath(glyphPath(stroke));
            }
            glyphs_.push_back(std::move(paths));
        }
    }

    void paint(const Page& page) {
        for (const ItemGroup& group : page.groups) {
            for (const Item& item : group.items) {
                std::visit([this](const auto& it) { draw(it); }, item);
            }
        }
    }

 private:
    struct Glyph {
        QPainterPath outline;
        QPainterPath filled;
    };

    void use(Role role) {
        const Look& look = lookOf(role);
        painter_.setBrush(look.filled ? QBrush(colour(look.filling, look.opacity))
                                      : QBrush(Qt::NoBrush));
        if (look.pen <= 0) {
            painter_.setPen(Qt::NoPen);
            return;
        }
        QPen pen(colour(look.ink), look.pen);
        const bool stitch = role == Role::Stitch;
        pen.setCapStyle(stitch ? Qt::RoundCap : look.dash > 0 ? Qt::FlatCap : Qt::SquareCap);
        pen.setJoinStyle(stitch ? Qt::RoundJoin : Qt::MiterJoin);
        if (look.dash > 0) pen.setDashPattern({look.dash / look.pen, look.dash / look.pen});
        painter_.setPen(pen);
    }

    void draw(const Shape& shape) {
        use(shape.role);
        QPainterPath path;
        for (const std::vector<Spot>& run : shape.runs) {
            path.moveTo(run.front().x, run.front().y);
            for (std::size_t i = 1; i < run.size(); ++i) path.lineTo(run[i].x, run[i].y);
            if (shape.closed) path.closeSubpath();
        }
        painter_.drawPath(path);
    }

    void draw(const GlyphRun& run) {
        const Glyph& glyph = glyphs_[static_cast<std::size_t>(run.glyph)];
        if (!glyph.filled.isEmpty()) {
            use(Role::SolidStitch);
            for (const int x : run.xs) painter_.drawPath(glyph.filled.translated(x, run.y));
        }
        if (glyph.outline.isEmpty()) return;
        use(Role::Stitch);
        for (const int x : run.xs) painter_.drawPath(glyph.outline.translated(x, run.y));
    }

    // Text is set in the dots of the device, where fonts are made for, not scaled up from units.
    void draw(const Text& text) {
        const QTransform toDevice = painter_.transform();
        const double scale = std::hypot(toDevice.m11(), toDevice.m12());
        QFont font;
        QStringList families;
        for (const char* family : kFontFamilies) families << QString::fromLatin1(family);
        font.setFamilies(families);
        font.setBold(lookOf(text.role).bold);
        const double dots = text.points * kMmPerPoint / sheet_.unitMm * scale;
        font.setPointSizeF(std::max(0.1, dots * 72 / painter_.device()->logicalDpiY()));
        const QString words = QString::fromStdString(text.text);
        const double length = QFontMetricsF(font, painter_.device()).horizontalAdvance(words);
        constexpr std::array<double, 3> kBefore = {0, 0.5, 1};
        painter_.save();
        painter_.resetTransform();
        painter_.translate(toDevice.map(QPointF(text.at.x, text.at.y)));
        if (text.upward) painter_.rotate(-90);
        painter_.setFont(font);
        painter_.setPen(colour(lookOf(text.role).ink));
        painter_.drawText(QPointF(-length * kBefore[static_cast<std::size_t>(text.anchor)], 0),
                          words);
        painter_.restore();
    }

    QPainter& painter_;
    const Sheet& sheet_;
    std::vector<Glyph> glyphs_;
};

}  // namespace

void paintSheet(QPainter& painter, const Sheet& sheet, std::size_t page) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::TextAntialiasing);
    SheetPainter(painter, sheet).paint(sheet.pages[page]);
    painter.restore();
}

}  // namespace lacewright::app
