#include <algorithm>

#include "app/cli/check_chart.h"
#include "app/cli/check_rows.h"
#include "core/base/text.h"

namespace lacewright::cli {
namespace {

int checkFile(const Call& call, const std::string& file) {
    return lowerAscii(file).ends_with(".txt") ? checkRows(call, file) : checkChart(call, file);
}

}  // namespace

int runCheck(const Call& call) {
    int worst = kDone;
    for (const std::string& file : call.files) worst = std::max(worst, checkFile(call, file));
    return worst;
}

}  // namespace lacewright::cli
