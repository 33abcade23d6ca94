#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "core/base/result.h"

// The one place that touches the disk. Paths are UTF-8.
namespace lacewright {

// The whole file as bytes. Refuses files larger than `limit` bytes before reading them.
Result<std::string> readFile(const std::string& path, std::size_t limit = 256U << 20U);

// Replaces the file in one step: writes a temporary file beside it, flushes it to the disk and
// renames it. On failure the old file is untouched and the temporary one is removed.
Outcome writeFile(const std::string& path, std::string_view bytes);

}  // namespace lacewright
