#include <iostream>
#include <string>
#include <vector>

#include "app/cli/cli.h"
#include "app/print/write_sheet.h"
#include "app/window/run_window.h"

int main(int argc, char** argv) {
    const std::vector<std::string> args(argv + 1, argv + argc);
    if (lacewright::cli::isForCli(args)) {
        return lacewright::cli::runCli(args, std::cout, std::cerr,
                                       lacewright::app::sheetPainters());
    }
    QStringList files;
    for (const std::string& file : args) files << QString::fromLocal8Bit(file.c_str());
    return lacewright::app::runWindow(argc, argv, files);
}
