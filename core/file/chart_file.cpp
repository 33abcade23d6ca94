#include "core/file/chart_file.h"

#include "core/base/disk.h"
#include "core/file/chart_text.h"
#include "core/file/file_limits.h"

namespace lacewright {

Result<Chart> loadChart(const std::string& path) {
    const Result<std::string> text = readFile(path, kMaxFileBytes);
    if (!text) return text.error();
    return readChart(*text, path);
}

Outcome saveChart(const Chart& chart, const std::string& path) {
    return writeFile(path, writeChart(chart));
}

}  // namespace lacewright
