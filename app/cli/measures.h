#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/plan/gauge.h"

// Numbers and measures as they are typed after a verb. The whole text must be one.
namespace lacewright::cli {

std::optional<double> numberIn(std::string_view text);
std::optional<int> wholeIn(std::string_view text);

// "42", "42cm" or "16.5in", as centimetres.
std::optional<double> lengthIn(std::string_view text);

// "22x30" over 10 cm, "22x30/4in" over four inches; the error speaks of --gauge.
Result<Gauge> gaugeFrom(std::string text);

// "a,b" at ',': never empty.
std::vector<std::string> split(const std::string& text, char at);

}  // namespace lacewright::cli
