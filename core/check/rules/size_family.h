#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/check/rules/rules.h"

// What the rules that compare sizes with one another share.
namespace lacewright {

// Stitches on the needle of a size before row 1. Requires: a chart with rows.
std::int64_t firstCount(const SizeSurvey& size);
// Stitches the last row leaves. Requires: a chart with rows.
std::int64_t lastCount(const SizeSurvey& size);

// The width of so many charted stitches with the edge stitches beside them, in centimetres; nothing
// without a gauge.
std::optional<double> finishedWidth(const Chart& chart, std::int64_t stitches);

// The place of a letter code among others: XS, S, M, L, XL, 2XL or XXL or 2X, 3X ...; nothing for
// other names. Order and spellings: EN 13402-3 and the women's sizes of the Craft Yarn Council.
std::optional<int> rankOfLetterCode(const std::string& name);

// A warning about the sizes on a row; its columns are where they begin and end there.
Finding familyFinding(const Survey& survey, const char* rule, int row,
                      const std::vector<const SizeSurvey*>& sizes, std::string message);

}  // namespace lacewright
