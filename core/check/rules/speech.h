#pragma once

#include <string>
#include <vector>

#include "core/check/finding.h"
#include "core/check/sentences.h"
#include "core/check/survey.h"

// What several rules say alike.
namespace lacewright {

// "Row 7", "Round 7".
std::string rowName(const Chart& chart, int row);
std::string variableName(const Chart& chart, Variable variable);
MisfitPlace placeOf(const Chart& chart, int row);
// "column 3", "columns 3 and 4".
std::string columnWords(const std::vector<int>& columns);

Finding note(const std::string& rule, int rowNumber, std::string message);

// The columns a misfit speaks of: the box whose coefficient differs, and the edges when the
// constant does; empty for the whole row.
std::vector<int> columnsOfDifference(const Survey& survey, int row, const Fit& fit);

}  // namespace lacewright
