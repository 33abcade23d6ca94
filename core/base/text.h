#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

// Small helpers for text and numbers; bytes are UTF-8 throughout.
namespace lacewright {

std::string_view trim(std::string_view text);
std::vector<std::string_view> splitWords(std::string_view text);  // at runs of blanks
std::vector<std::string_view> splitLines(std::string_view text);  // at \n, a \r before it removed
std::string join(const std::vector<std::string>& parts, std::string_view between);
// "a", "a and b", "a, b and c".
std::string listing(const std::vector<std::string>& parts);
std::string lowerAscii(std::string_view text);
// "1 stitch", "2 stitches": adds the plural ending when count is not 1.
std::string counted(long long count, std::string_view one, std::string_view many);
// Replaces & < > " ' for XML and HTML, and drops control characters that XML does not allow.
std::string escapeXml(std::string_view text);
// Code points. Requires: well-formed UTF-8.
std::size_t characterCount(std::string_view text);
// Bytes form well-formed UTF-8.
bool isUtf8(std::string_view text);

}  // namespace lacewright
