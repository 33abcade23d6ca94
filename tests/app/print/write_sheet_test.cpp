#include "app/print/write_sheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QImage>
#include <QPrinter>
#include <QProcess>
#include <QStandardPaths>

#include "core/base/disk.h"
#include "tests/core/sheet/sheet_probe.h"
#include "tests/support/temp_dir.h"

namespace lacewright::app {
namespace {

using testing::HasSubstr;

// What one of the poppler tools says about a PDF.
std::string said(const QString& tool, const QStringList& arguments) {
    QProcess process;
    process.start(tool, arguments);
    EXPECT_TRUE(process.waitForFinished());
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput().toStdString();
}

bool missing(const char* tool) {
    return QStandardPaths::findExecutable(QString::fromLatin1(tool)).isEmpty();
}

Sheet onPaper(const Chart& chart, const Paper& paper) {
    SheetOptions options;
    options.paper = paper;
    return layOut(chart, options);
}

TEST(WritePdf, EveryLabelIsTextAndThePageIsAsLargeAsThePaper) {
    if (missing("pdftotext") || missing("pdfinfo"))
        GTEST_SKIP() << "poppler-utils are not installed";
    const test::TempDir folder;
    const std::string path = folder / "a.pdf";
    const Sheet sheet = onPaper(test::panel(), kA4);
    ASSERT_TRUE(writePdf(sheet, path));
    const QString file = QString::fromStdString(path);
    // A turned label comes back a word a line, so all white space is alike; fi is one character.
    const auto oneLine = [](std::string words) {
        return QString::fromStdString(words)
            .simplified()
            .replace(QChar(0xFB01), QStringLiteral("fi"))
            .toStdString();
    };
    const std::string text = oneLine(
        said(QStringLiteral("pdftotext"), {QStringLiteral("-raw"), file, QStringLiteral("-")}));
    for (const Page& page : sheet.pages) {
        for (const ItemGroup& group : page.groups) {
            for (const Item& item : group.items) {
                const auto* label = std::get_if<Text>(&item);
                if (label != nullptr) {
                    EXPECT_THAT(text, HasSubstr(oneLine(label->text)));
                }
            }
        }
    }
    const std::string info = said(QStringLiteral("pdfinfo"), {file});
    EXPECT_THAT(info, HasSubstr("Title:           Tide <panel>"));
    EXPECT_THAT(info, testing::ContainsRegex("Page size: +59[45].* x 84[12].* pts"));
    EXPECT_THAT(info, testing::ContainsRegex("Pages: +1\n"));
}

TEST(WritePdf, WideChartsTakeSeveralSheetsAcross) {
    if (missing("pdfinfo")) GTEST_SKIP() << "poppler-utils are not installed";
    const test::TempDir folder;
    const std::string path = folder / "a.pdf";
    const Sheet sheet = onPaper(blankChart(90, 20), kLetter);
    ASSERT_GT(sheet.pages.size(), 1U);
    ASSERT_GT(sheet.pages[0].width, sheet.pages[0].height);
    ASSERT_TRUE(writePdf(sheet, path));
    const std::string info = said(QStringLiteral("pdfinfo"), {QString::fromStdString(path)});
    EXPECT_THAT(info,
                testing::ContainsRegex("Pages: +" + std::to_string(sheet.pages.size()) + "\n"));
    EXPECT_THAT(info, testing::ContainsRegex("Page size: +79[12].* x 61[12].* pts"));
}

TEST(WritePng, IsTheFirstPageAtTheDotsAskedFor) {
    const test::TempDir folder;
    const Sheet sheet = layOut(test::panel(), {});
    ASSERT_TRUE(writePng(sheet, folder / "a.png", 100));
    const QImage image(QString::fromStdString(folder / "a.png"));
    EXPECT_NEAR(image.width(), sheet.pages[0].width * sheet.unitMm / 25.4 * 100, 1);
    EXPECT_NEAR(image.dotsPerMeterX(), 100 / 0.0254, 1);
}

TEST(WritePng, LargeChartsGetFewerDots) {
    const Sheet sheet = layOut(blankChart(4000, 3), {});
    const QImage image = imageOf(sheet, 0, 300);
    EXPECT_LE(image.width(), 30'000);
    EXPECT_GT(image.width(), 29'000);
}

TEST(WriteSheet, AFileThatCannotBeWrittenIsAnErrorInWords) {
    const Sheet sheet = onPaper(test::panel(), kA4);
    EXPECT_FALSE(writePdf(sheet, "/no/such/folder/a.pdf"));
    EXPECT_FALSE(writePng(sheet, "/no/such/folder/a.png"));
}

TEST(PrintSheet, PrintsAllPages) {
    const test::TempDir folder;
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(QString::fromStdString(folder / "p.pdf"));
    ASSERT_TRUE(printSheet(onPaper(test::panel(), kA4), printer));
    const Result<std::string> bytes = readFile(folder / "p.pdf");
    ASSERT_TRUE(bytes);
    EXPECT_THAT(*bytes, testing::StartsWith("%PDF"));
}

TEST(SheetPainters, UseTheApplicationThatIsThere) {
    const test::TempDir folder;
    EXPECT_TRUE(sheetPainters().pdf(onPaper(test::panel(), kA4), folder / "a.pdf"));
    EXPECT_TRUE(sheetPainters().png(layOut(test::panel(), {}), folder / "a.png"));
}

}  // namespace
}  // namespace lacewright::app
