#include <algorithm>
#include <cmath>
#include <set>

#include "core/base/text.h"
#include "core/chart/edit_steps.h"
#include "core/chart/edits.h"

namespace lacewright {
namespace {

using Problem = std::optional<Error>;

bool within(std::int64_t value, std::int64_t low, std::int64_t high) {
    return value >= low && value <= high;
}
bool isSpan(int first, int last, int low, int high) {
    return first >= low && first <= last && last <= high;
}

Problem textProblem(const std::string& text, const std::string& what) {
    if (!isUtf8(text)) return Error{ErrorCode::Malformed, what + " is not valid UTF-8.", {}};
    if (characterCount(text) <= static_cast<std::size_t>(kMaxTextLength)) return {};
    return outOfRange(what + " is longer than " + std::to_string(kMaxTextLength) + " characters.");
}

// `what` is "repeat", "size" or "point".
template <class T>
Problem namesProblem(const std::vector<T>& items, int most, const std::string& what) {
    if (items.size() > static_cast<std::size_t>(most)) {
        return outOfRange("A chart holds at most " + std::to_string(most) + " " + what + "s.");
    }
    std::set<std::string> seen;
    for (const T& item : items) {
        if (item.name.empty()) return refusal("Every " + what + " needs a name.");
        if (auto problem = textProblem(item.name, "The name of a " + what)) return problem;
        if (!seen.insert(item.name).second) {
            return refusal("Two " + what + "s are named " + item.name + ".");
        }
    }
    return {};
}

std::string spanText(int first, int last, const char* what) {
    return std::string(what) + " " + std::to_string(first) + " to " + std::to_string(last);
}

Problem repeatProblem(const Repeat& repeat, const Chart& chart) {
    const std::string name = "Repeat " + repeat.name;
    if (!isSpan(repeat.firstRow, repeat.lastRow, 0, chart.height() - 1)) {
        return outOfRange(name + " must cover rows of the chart, from its first upward.");
    }
    if (!isSpan(repeat.right, repeat.left, 1, chart.width)) {
        return outOfRange(name + " has " + spanText(repeat.right, repeat.left, "columns") +
                          ", which is no box in a chart of " + std::to_string(chart.width) + ".");
    }
    for (const auto& [row, jog] : repeat.jogs) {
        if (!repeat.covers(row)) return outOfRange(name + " jogs on a row it does not cover.");
        const std::int64_t right = std::int64_t{repeat.right} + jog.right;
        const std::int64_t left = std::int64_t{repeat.left} + jog.left;
        if (right < 1 || right > left || left > chart.width) {
            return outOfRange(name + " jogs out of the chart or to nothing on row " +
                              std::to_string(chart.rowNumber(row)) + ".");
        }
    }
    return {};
}

Problem reachProblem(const Reach& reach, const std::string& name, int width) {
    if (isSpan(reach.start, reach.end, 1, width)) return {};
    return outOfRange(name + " works " + spanText(reach.start, reach.end, "columns") +
                      ", which do not lie in a chart of " + std::to_string(width) + ".");
}

Problem substitutionProblem(const Substitution& substitution, const std::string& name,
                            const Chart& chart) {
    if (!within(substitution.row, 0, chart.height() - 1) ||
        !within(substitution.column, 1, chart.width)) {
        return outOfRange(name + " replaces a stitch outside the chart.");
    }
    if (!chart.stitches->find(substitution.stitch)) {
        return notFound(name + " replaces a stitch by " + substitution.stitch +
                        ", which the chart does not have.");
    }
    if (fits(substitution, chart)) return {};
    return refusal(name + " replaces the stitch in row " +
                   std::to_string(chart.rowNumber(substitution.row)) + ", column " +
                   std::to_string(substitution.column) + ", by one of another width.");
}

Problem timesProblem(int times, const std::string& size, const std::string& repeat) {
    if (within(times, 0, kMaxTimes)) return {};
    return outOfRange(size + " must work repeat " + repeat + " 0 to " + std::to_string(kMaxTimes) +
                      " times.");
}

Problem sizeProblem(const Size& size, const Chart& chart) {
    const std::string name = "Size " + size.name;
    if (auto problem = reachProblem(size.reach, name, chart.width)) return problem;
    int nextRow = 0;
    for (const ReachChange& change : size.changes) {
        if (!isSpan(change.firstRow, change.lastRow, nextRow, chart.height() - 1)) {
            return outOfRange(name + " has rows of its own that are out of order or outside.");
        }
        nextRow = change.lastRow + 1;
        if (auto problem = reachProblem(change.reach, name, chart.width)) return problem;
    }
    for (const auto& [repeat, times] : size.times) {
        if (auto problem = timesProblem(times, name, repeat)) return problem;
    }
    if (size.stitches && !within(*size.stitches, 0, kMaxNeedle)) {
        return outOfRange(name + " cannot have " + std::to_string(*size.stitches) + " stitches.");
    }
    if (size.substitutions.size() > static_cast<std::size_t>(kMaxSubstitutions)) {
        return outOfRange(name + " replaces more than " + std::to_string(kMaxSubstitutions) +
                          " stitches.");
    }
    for (const Substitution& substitution : size.substitutions) {
        if (auto problem = substitutionProblem(substitution, name, chart)) return problem;
    }
    if (size.body && !(*size.body > 0 && *size.body <= kMaxBody)) {
        return outOfRange(name + " must be for a body of more than 0 and at most 100 m.");
    }
    if (size.shoulder && !within(*size.shoulder, 0, kMaxNeedle)) {
        return outOfRange(name + " cannot be joined to a shoulder of " +
                          std::to_string(*size.shoulder) + " stitches.");
    }
    return {};
}

Problem gradingProblem(const Chart& chart) {
    const Grading& grading = chart.grading;
    if (!within(grading.pieces, 1, kMaxPieces)) {
        return outOfRange("From 1 to " + std::to_string(kMaxPieces) +
                          " pieces can go round a body.");
    }
    if (!within(grading.edgeStitches, 0, kMaxWidth)) {
        return outOfRange("There can be 0 to " + std::to_string(kMaxWidth) + " edge stitches.");
    }
    for (const auto& ease : {grading.leastEase, grading.mostEase}) {
        if (!ease || std::abs(*ease) <= kMaxEase) continue;
        return outOfRange("The ease cannot be more than 10 m.");
    }
    if (grading.leastEase && grading.mostEase && *grading.leastEase > *grading.mostEase)
        return refusal("The least ease is more than the most.");
    if (grading.shoulders.size() > static_cast<std::size_t>(kMaxShoulders)) {
        return outOfRange("A chart holds at most " + std::to_string(kMaxShoulders) + " shoulders.");
    }
    for (const Shoulder& shoulder : grading.shoulders) {
        if (within(shoulder.row, 0, chart.height() - 1) &&
            isSpan(shoulder.right, shoulder.left, 1, chart.width))
            continue;
        return outOfRange("A shoulder lies outside the chart.");
    }
    return {};
}

Problem propertyProblem(const Chart& chart) {
    if (auto problem = textProblem(chart.name, "The name of the chart")) return problem;
    if (auto problem = textProblem(chart.notes, "The text of the notes")) return problem;
    if (auto problem = textProblem(chart.source, "The source of the chart")) return problem;
    if (chart.castOn) {
        const auto& [multiple, plus, extras] = *chart.castOn;
        // "A multiple of 6 minus 1" is a multiple of 6 plus -1.
        const int least = multiple == 0 ? 0 : -kMaxNeedle;
        if (!within(multiple, 0, kMaxNeedle) || !within(plus, least, kMaxNeedle)) {
            return outOfRange("The cast-on cannot be a multiple of " + std::to_string(multiple) +
                              " plus " + std::to_string(plus) + ".");
        }
    }
    for (const double perTen : {chart.gauge.stitches, chart.gauge.rows}) {
        if (std::isfinite(perTen) && perTen >= 0 && perTen <= kMaxGauge) continue;
        return outOfRange("The gauge must lie between 0 and " + std::to_string(kMaxGauge) +
                          " over 10 cm.");
    }
    return {};
}

Problem rowRepeatProblem(const Chart& chart) {
    const auto& repeat = chart.rowRepeat;
    if (!repeat) return {};
    if (!isSpan(repeat->firstRow, repeat->lastRow, 0, chart.height() - 1)) {
        return outOfRange("The row repeat must cover rows of the chart, from its first upward.");
    }
    if (within(repeat->grows, -kMaxNeedle, kMaxNeedle)) return {};
    return outOfRange("The row repeat cannot grow by " + std::to_string(repeat->grows) + ".");
}

Problem pointProblem(const Point& point, const Chart& chart) {
    if (within(point.column, 1, chart.width)) return {};
    return outOfRange("Point " + point.name + " stands outside the chart.");
}

template <class T, class Check>
Problem firstProblem(const std::vector<T>& items, const Chart& chart, Check check) {
    for (const T& item : items) {
        if (auto problem = check(item, chart)) return problem;
    }
    return {};
}

}  // namespace

std::optional<Error> extentProblem(std::int64_t width, std::int64_t height) {
    if (width < 1 || height < 1) return outOfRange("A chart has at least one row and one column.");
    if (width > kMaxWidth || height > kMaxRows || width * height > kMaxCells) {
        return outOfRange("A chart has at most " + std::to_string(kMaxWidth) + " columns, " +
                          std::to_string(kMaxRows) + " rows and " + std::to_string(kMaxCells) +
                          " cells.");
    }
    return {};
}

std::optional<Error> frameProblem(const Chart& chart) {
    if (auto problem = extentProblem(chart.width, chart.height())) return problem;
    if (auto problem = propertyProblem(chart)) return problem;
    if (auto problem = namesProblem(chart.repeats, kMaxRepeats, "repeat")) return problem;
    if (auto problem = namesProblem(chart.sizes, kMaxSizes, "size")) return problem;
    if (auto problem = namesProblem(chart.points, kMaxPoints, "point")) return problem;
    if (auto problem = firstProblem(chart.repeats, chart, repeatProblem)) return problem;
    if (auto problem = firstProblem(chart.sizes, chart, sizeProblem)) return problem;
    if (auto problem = firstProblem(chart.points, chart, pointProblem)) return problem;
    if (auto problem = gradingProblem(chart)) return problem;
    return rowRepeatProblem(chart);
}

}  // namespace lacewright
