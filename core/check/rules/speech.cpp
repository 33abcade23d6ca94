#include "core/check/rules/speech.h"

#include <cstddef>
#include <numeric>
#include <utility>

#include "core/base/text.h"

namespace lacewright {

std::string rowName(const Chart& chart, int row) {
    return (chart.worked == Worked::InTheRound ? "Round " : "Row ") +
           std::to_string(chart.rowNumber(row));
}

std::string variableName(const Chart& chart, Variable variable) {
    if (variable == kCastOnVariable) return "r";
    if (chart.repeats.size() == 1) return "n";
    const auto index = static_cast<std::size_t>(variable);
    return index < chart.repeats.size() ? "n(" + chart.repeats[index].name + ")" : "n";
}

MisfitPlace placeOf(const Chart& chart, int row) {
    MisfitPlace place;
    place.row = chart.worked == Worked::InTheRound ? "Round" : "Row";
    place.number = chart.rowNumber(row);
    place.repeatName = [&chart](Variable v) {
        const auto index = static_cast<std::size_t>(v);
        return index < chart.repeats.size() ? chart.repeats[index].name : std::string();
    };
    place.variableName = [&chart](Variable v) { return variableName(chart, v); };
    return place;
}

std::string columnWords(const std::vector<int>& columns) {
    std::vector<std::string> numbers;
    numbers.reserve(columns.size());
    for (const int column : columns) numbers.push_back(std::to_string(column));
    return (columns.size() == 1 ? "column " : "columns ") + listing(numbers);
}

Finding note(const std::string& rule, int rowNumber, std::string message) {
    Finding finding;
    finding.rule = rule;
    finding.severity = Severity::Note;
    finding.row = rowNumber;
    finding.message = std::move(message);
    return finding;
}

std::vector<int> columnsOfDifference(const Survey& survey, int row, const Fit& fit) {
    const AffineForm rest = fit.required - fit.available;
    std::vector<int> columns;
    for (const Segment& segment : survey.whole().path(row)) {
        const bool guilty =
            segment.isBox() ? rest.coefficient(segment.repeat) != 0 : rest.constant() != 0;
        if (!guilty) continue;
        const auto had = static_cast<std::ptrdiff_t>(columns.size());
        columns.resize(columns.size() + static_cast<std::size_t>(segment.last - segment.first + 1));
        std::iota(columns.begin() + had, columns.end(), segment.first);
    }
    return columns;
}

}  // namespace lacewright
