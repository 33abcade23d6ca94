#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>

#include "core/base/disk.h"
#include "core/file/chart_file.h"
#include "core/words/writer.h"
#include "tests/support/source_tree.h"
#include "tests/support/temp_dir.h"

// The page of written rows, judged by the parser of the Python library.
namespace lacewright {
namespace {

TEST(WriterPage, ReadsWellToAGeneralParser) {
    const test::TempDir folder;
    std::string command = "python3 " + test::inSourceTree("tests/support/check_page.py");
    int pages = 0;
    for (const auto& entry : std::filesystem::directory_iterator(test::inSourceTree("samples"))) {
        if (entry.path().extension() != ".lacewright") continue;
        for (const Terms terms : {Terms::Us, Terms::Uk}) {
            WriteOptions options;
            options.style.terms = terms;
            const auto written = writeRows(loadChart(entry.path().string()).value(), options);
            ASSERT_TRUE(written) << written.error().message;
            const std::string file = folder / (std::to_string(++pages) + ".html");
            ASSERT_TRUE(writeFile(file, written->html()));
            command += " " + file;
        }
    }
    EXPECT_GE(pages, 16);
    EXPECT_EQ(std::system(command.c_str()), 0) << command;
    // The judge does find fault.
    const std::string broken = folder / "broken.html";
    ASSERT_TRUE(writeFile(broken, "<html lang=\"en-US\"><h1>A</h1><ol><li>Row 1: k1</ol></html>"));
    EXPECT_NE(std::system(("python3 " + test::inSourceTree("tests/support/check_page.py") + " " +
                           broken + " > " + (folder / "faults.txt"))
                              .c_str()),
              0);
}

}  // namespace
}  // namespace lacewright
