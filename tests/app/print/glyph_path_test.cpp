#include "app/print/glyph_path.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <QSvgRenderer>

#include "core/stitch/catalogue.h"

namespace lacewright::app {
namespace {

constexpr int kDots = 80;  // a cell

QImage blank(int cells) {
    QImage image(kDots * cells, kDots, QImage::Format_RGB32);
    image.fill(Qt::white);
    return image;
}

QImage byPainter(const Stitch& stitch) {
    QImage image = blank(stitch.span);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(kDots / 20.0, kDots / 20.0);
    const QPen pen(Qt::black, 1.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    for (const GlyphStroke& stroke : stitch.glyph) {
        painter.setPen(stroke.filled ? QPen(Qt::NoPen) : pen);
        painter.setBrush(stroke.filled ? QBrush(Qt::black) : QBrush(Qt::NoBrush));
        painter.drawPath(glyphPath(stroke));
    }
    return image;
}

QImage bySvg(const Stitch& stitch) {
    QString svg = QStringLiteral("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 %1 20'>")
                      .arg(stitch.span * 20);
    for (const GlyphStroke& stroke : stitch.glyph) {
        const QString paint = stroke.filled ? QStringLiteral("fill='#000'")
                                            : QStringLiteral(
                                                  "fill='none' stroke='#000' stroke-width='1.4' "
                                                  "stroke-linecap='round' stroke-linejoin='round'");
        svg += QStringLiteral("<path %1 d='M%2 %3%4'/>")
                   .arg(paint)
                   .arg(stroke.x)
                   .arg(stroke.y)
                   .arg(QString::fromStdString(stroke.tail));
    }
    QSvgRenderer renderer((svg + QStringLiteral("</svg>")).toUtf8());
    QImage image = blank(stitch.span);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    renderer.render(&painter);
    return image;
}

// Mean difference of two pictures, 0 to 1.
double difference(const QImage& a, const QImage& b) {
    double sum = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            sum += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y)));
        }
    }
    return sum / 255 / a.width() / a.height();
}

TEST(GlyphPath, DrawsEveryBuiltInGlyphLikeAnSvgRenderer) {
    const StitchCatalogue& stitches = *builtInStitches();
    for (std::size_t i = 1; i <= stitches.size(); ++i) {
        const Stitch& stitch = stitches[static_cast<StitchIndex>(i)];
        EXPECT_LT(difference(byPainter(stitch), bySvg(stitch)), 0.002) << stitch.id;
    }
}

TEST(GlyphPath, ArcsOfEveryDirectionAgreeToo) {
    for (const char* tail :
         {"a4 7 30 0 0 6 3", "a4 7 30 1 0 6 3", "a4 7 30 0 1 6 3", "a4 7 30 1 1 6 3",
          "a1 1 0 0 1 8 2", "q4-6 8 0t4 3", "c1-4 5-4 6 0s3 5 4 1"}) {
        Stitch stitch;
        stitch.glyph = {{6, 9, tail, false, {}}};
        EXPECT_LT(difference(byPainter(stitch), bySvg(stitch)), 0.004) << tail;
    }
}

TEST(GlyphPath, ATailThatIsNoPathDrawsNothing) {
    EXPECT_TRUE(glyphPath({5, 5, "nonsense", false, {}}).isEmpty());
}

}  // namespace
}  // namespace lacewright::app
