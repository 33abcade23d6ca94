#include "app/print/write_sheet.h"

#include <QBuffer>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QLoggingCategory>
#include <QPageSize>
#include <QPdfWriter>
#include <QPrinter>
#include <algorithm>
#include <cmath>

#include "app/print/paint_sheet.h"
#include "core/base/disk.h"

namespace lacewright::app {
namespace {

constexpr int kPdfDotsPerInch = 1200;
constexpr double kMmPerInch = 25.4;
constexpr double kMostSide = 30'000;  // dots
constexpr double kMostDots = 200e6;

Outcome fontsExist() {
    if (!QFontDatabase::families().isEmpty()) return Done{};
    return Error{
        ErrorCode::Unsupported, "No font is installed, so the letters would be missing.", {}};
}

QPageSize sizeOf(const Sheet& sheet, const Page& page) {
    const QSizeF mm(page.width * sheet.unitMm, page.height * sheet.unitMm);
    return QPageSize(mm, QPageSize::Millimeter, {}, QPageSize::FuzzyOrientationMatch);
}

void setPage(QPagedPaintDevice& device, const Sheet& sheet, const Page& page) {
    const bool across = page.width > page.height;
    const QPageSize size = sizeOf(sheet, page);
    QPageLayout layout(size, QPageLayout::Portrait, QMarginsF(), QPageLayout::Millimeter);
    // A page size that Qt knows by name is always upright.
    const bool turned =
        size.size(QPageSize::Millimeter).width() < size.size(QPageSize::Millimeter).height();
    if (across && turned) layout.setOrientation(QPageLayout::Landscape);
    layout.setMode(QPageLayout::FullPageMode);
    device.setPageLayout(layout);
}

Outcome paintPages(const Sheet& sheet, QPagedPaintDevice& device, int dotsPerInch) {
    QPainter painter;
    for (std::size_t i = 0; i < sheet.pages.size(); ++i) {
        setPage(device, sheet, sheet.pages[i]);
        const bool ready = i == 0 ? painter.begin(&device) : device.newPage();
        if (!ready) return Error{ErrorCode::Unwritable, "The pages could not be begun.", {}};
        const double dots = sheet.unitMm / kMmPerInch * dotsPerInch;
        painter.resetTransform();
        painter.scale(dots, dots);
        paintSheet(painter, sheet, i);
    }
    return Done{};
}

Outcome writeBytes(const std::string& path, const QByteArray& bytes) {
    return writeFile(path, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

template <class Write>
Outcome withApplication(Write write) {
    if (QCoreApplication::instance() != nullptr) return write();
    qputenv("QT_QPA_PLATFORM", "offscreen");
    // What matters comes back as an Outcome; Qt's remarks on the machine would only disturb.
    QLoggingCategory::setFilterRules(QStringLiteral("*.warning=false"));
    char name[] = "lacewright";
    char* arguments[] = {name, nullptr};
    int count = 1;
    const QGuiApplication application(count, arguments);
    return write();
}

}  // namespace

Outcome writePdf(const Sheet& sheet, const std::string& path) {
    if (Outcome fonts = fontsExist(); !fonts) return fonts;
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(kPdfDotsPerInch);
    writer.setTitle(QString::fromStdString(sheet.title));
    writer.setCreator(QStringLiteral("Lacewright"));
    if (Outcome painted = paintPages(sheet, writer, kPdfDotsPerInch); !painted) return painted;
    return writeBytes(path, bytes);
}

QImage imageOf(const Sheet& sheet, std::size_t page, int dotsPerInch) {
    const Page& paper = sheet.pages[page];
    double dots = sheet.unitMm / kMmPerInch * dotsPerInch;
    dots = std::min(dots, kMostSide / std::max(paper.width, paper.height));
    dots = std::min(dots, std::sqrt(kMostDots / paper.width / paper.height));
    QImage image(std::max(1, qRound(paper.width * dots)), std::max(1, qRound(paper.height * dots)),
                 QImage::Format_RGB32);
    if (image.isNull()) return image;
    image.fill(Qt::white);
    const int perMeter = qRound(dots / sheet.unitMm * 1000);
    image.setDotsPerMeterX(perMeter);
    image.setDotsPerMeterY(perMeter);
    QPainter painter(&image);
    painter.scale(dots, dots);
    paintSheet(painter, sheet, page);
    return image;
}

Outcome writePng(const Sheet& sheet, const std::string& path, int dotsPerInch) {
    if (Outcome fonts = fontsExist(); !fonts) return fonts;
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    const QImage image = imageOf(sheet, 0, dotsPerInch);
    if (image.isNull() || !image.save(&buffer, "PNG")) {
        return Error{ErrorCode::Unwritable, "There is not enough memory for the picture.", path};
    }
    return writeBytes(path, bytes);
}

Outcome printSheet(const Sheet& sheet, QPrinter& printer) {
    if (Outcome fonts = fontsExist(); !fonts) return fonts;
    return paintPages(sheet, printer, printer.resolution());
}

cli::SheetPainters sheetPainters() {
    const auto pdf = [](const Sheet& sheet, const std::string& path) {
        return withApplication([&] { return writePdf(sheet, path); });
    };
    const auto png = [](const Sheet& sheet, const std::string& path) {
        return withApplication([&] { return writePng(sheet, path); });
    };
    return {pdf, png};
}

}  // namespace lacewright::app
