#include <iostream>
#include <string>
#include <vector>

#include "app/cli/cli.h"
#include "app/print/write_sheet.h"

int main(int argc, char** argv) {
    const std::vector<std::string> args(argv + 1, argv + argc);
    if (lacewright::cli::isForCli(args)) {
        return lacewright::cli::runCli(args, std::cout, std::cerr,
                                       lacewright::app::sheetPainters());
    }
    std::cerr << "lacewright: the window is not built yet; \"lacewright --help\" lists the verbs.\n";
    return lacewright::cli::kMisuse;
}
