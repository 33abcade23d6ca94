#include "app/canvas/margin_pictures.h"

#include <QFontMetrics>
#include <QPainter>
#include <utility>

#include "app/canvas/finding_marks.h"

namespace lacewright::app {
namespace {

constexpr int kSpare = 1;                  // pixels around a sign that its ink spills into
constexpr std::size_t kMostNumbers = 512;  // kept; more than any screen shows

QImage blank(QSize size, const QColor& ground) {
    QImage image(size, QImage::Format_RGB32);
    image.fill(ground);
    return image;
}

}  // namespace

void MarginPictures::setStyle(const ViewScene& scene, int height) {
    const bool same = font_ == scene.font && colours_ == scene.colours && scale_ == scene.scale &&
                      height_ == height;
    if (same && numbers_[0].size() + numbers_[1].size() <= kMostNumbers) return;
    font_ = scene.font;
    colours_ = scene.colours;
    scale_ = scene.scale;
    height_ = height;
    for (auto& numbers : numbers_) numbers.clear();
    signs_.clear();
}

// An even number of pixels wide, so that its middle falls on a pixel's edge as that of its place.
QImage MarginPictures::numberPicture(Qt::AlignmentFlag across, int number, bool strong) const {
    QFont font = font_;
    font.setBold(strong);
    const QString text = QString::number(number);
    const int width = (QFontMetrics(font).horizontalAdvance(text) + 2) / 2 * 2;
    QImage image = blank({width, height_}, colours_.margin);
    QPainter painter(&image);
    painter.setFont(font);
    painter.setPen(strong ? colours_.text : colours_.textQuiet);
    painter.drawText(image.rect(), static_cast<int>(across | Qt::AlignVCenter), text);
    return image;
}

void MarginPictures::paintNumber(QPainter& painter, const QRect& place, Qt::AlignmentFlag across,
                                 int number, bool strong) {
    QImage& picture = numbers_[strong ? 1 : 0][number];
    if (picture.isNull()) picture = numberPicture(across, number, strong);
    const int room = place.width() - picture.width();
    painter.drawImage(place.topLeft() + QPoint(across == Qt::AlignRight ? room : room / 2, 0),
                      picture);
}

void MarginPictures::paintSign(QPainter& painter, const ViewScene& scene, Severity severity,
                               const QRect& square) {
    const QSize size = square.size() + QSize(2 * kSpare, 2 * kSpare);
    QImage& picture = signs_[static_cast<int>(severity)];
    if (picture.size() != size) {
        picture = blank(size, colours_.margin);
        QPainter drawing(&picture);
        app::paintSign(drawing, scene, severity, QRect({kSpare, kSpare}, square.size()));
    }
    painter.drawImage(square.topLeft() - QPoint(kSpare, kSpare), picture);
}

}  // namespace lacewright::app
