#include "core/words/written_heading.h"

#include <cstdlib>

#include "core/base/text.h"
#include "core/words/named_repeats.h"

namespace lacewright {

namespace {

// A name that a list of names can hold.
std::string nameOf(const Size& size) {
    std::string name;
    for (const char c : oneLine(size.name)) {
        const bool mark = std::string_view(",()[]:/").find(c) != std::string_view::npos;
        name += mark ? ' ' : c;
    }
    name = oneLine(name);
    return name.empty() ? "size" : name;
}

// "8 for each A plus 12 for each B plus 5"
std::string forEachRepeat(const Chart& chart) {
    const std::vector<std::string> names = repeatNames(chart);
    std::vector<std::string> parts;
    std::int64_t fixed = 0;
    for (const WorkedStretch& stretch : workedStretches(chart, 0, nullptr)) {
        std::int64_t takes = 0;
        for (const StitchIndex stitch : stretch.stitches) takes += (*chart.stitches)[stitch].takes;
        if (!stretch.open) {
            fixed += takes;
        } else if (takes > 0) {
            parts.push_back(std::to_string(takes) + " for each " +
                            names[static_cast<std::size_t>(stretch.repeat)]);
        }
    }
    parts.push_back(std::to_string(fixed));
    return join(parts, " plus ");
}

std::string castOn(const Chart& chart, const std::vector<const Size*>& sizes) {
    if (!sizes.empty()) {
        std::vector<int> counts;
        for (const Size* size : sizes) {
            std::int64_t takes = 0;
            for (const WorkedStretch& stretch : workedStretches(chart, 0, size)) {
                for (const StitchIndex stitch : stretch.stitches)
                    takes += std::int64_t{stretch.times} * (*chart.stitches)[stitch].takes;
            }
            counts.push_back(size->stitches ? *size->stitches : static_cast<int>(takes));
        }
        return "Cast on: " + figureText(counts);
    }
    if (namesRepeats(chart, 0) && (!chart.castOn || chart.castOn->multiple != 0))
        return "Cast on: " + forEachRepeat(chart);
    CastOn castOn;
    if (chart.castOn) {
        castOn = *chart.castOn;
    } else {
        for (const WorkedStretch& stretch : workedStretches(chart, 0, nullptr)) {
            for (const StitchIndex stitch : stretch.stitches)
                (stretch.open ? castOn.multiple : castOn.plus) += (*chart.stitches)[stitch].takes;
        }
    }
    if (castOn.multiple == 0) return "Cast on: " + std::to_string(castOn.plus);
    return "Cast on: multiple of " + std::to_string(castOn.multiple) +
           (castOn.plus < 0 ? " minus " : " plus ") + std::to_string(std::abs(castOn.plus));
}

}  // namespace

std::vector<std::string> headingLines(const Chart& chart, const std::vector<const Size*>& sizes,
                                      const StitchWords& words) {
    std::vector<std::string> lines;
    lines.push_back(castOn(chart, sizes));
    lines.push_back(chart.worked == Worked::InTheRound ? "Worked: round" : "Worked: flat");
    if (!sizes.empty()) {
        std::string names = "Sizes: " + nameOf(*sizes.front());
        for (std::size_t i = 1; i < sizes.size(); ++i)
            names += (i == 1 ? " (" : ", ") + nameOf(*sizes[i]);
        lines.push_back(names + (sizes.size() > 1 ? ")" : ""));
    }
    if (sizes.empty()) {
        if (std::string repeats = repeatsLine(chart); !repeats.empty())
            lines.push_back(std::move(repeats));
    }
    for (const std::string& line : words.definitions()) lines.push_back(line);
    if (const auto& repeat = chart.rowRepeat) {
        const std::string first = std::to_string(chart.rowNumber(repeat->firstRow));
        if (repeat->lastRow == chart.height() - 1) {
            lines.push_back("Repeat from row: " + first);
        } else {
            lines.push_back("Note: rows " + first + " to " +
                            std::to_string(chart.rowNumber(repeat->lastRow)) +
                            " are worked again and again before going on");
        }
    }
    return lines;
}

std::string oneLine(std::string_view text) {
    return join(
        [&] {
            std::vector<std::string> words;
            for (const std::string_view word : splitWords(text)) words.emplace_back(word);
            return words;
        }(),
        " ");
}

}  // namespace lacewright
