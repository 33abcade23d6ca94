#pragma once

#include <QImage>
#include <string>

#include "app/cli/verb.h"
#include "core/base/result.h"
#include "core/sheet/sheet.h"

class QPrinter;

// Sheets to files and paper. All need a QGuiApplication and refuse to write when there is no font,
// for the letters would be missing without a word.
namespace lacewright::app {

inline constexpr int kPngDotsPerInch = 200;

// All pages, each as large as its paper.
Outcome writePdf(const Sheet& sheet, const std::string& path);

// The first page. Large charts get fewer dots, so that the picture stays below 30,000 dots a side
// and 200 million altogether.
Outcome writePng(const Sheet& sheet, const std::string& path, int dotsPerInch = kPngDotsPerInch);
QImage imageOf(const Sheet& sheet, std::size_t page, int dotsPerInch);

// All pages on the printer's paper, each scaled to its true size.
Outcome printSheet(const Sheet& sheet, QPrinter& printer);

// For the command line, which has no application: each makes one without a display while it writes.
cli::SheetPainters sheetPainters();

}  // namespace lacewright::app
