#include <algorithm>
#include <utility>

#include "core/base/text.h"
#include "core/chart/cast_on_words.h"
#include "core/count/tally.h"
#include "core/sheet/row_words.h"
#include "core/sheet/text_blocks.h"
#include "core/words/size_words.h"

// What the sheet says in sentences about sizes, counts and the way to read the chart.
namespace lacewright {
namespace {

constexpr std::size_t kMostCounts = 16;  // changes of the count that are told one by one

std::string place(const Chart& chart, int column) {
    const Point* point = chart.pointAt(column);
    return point != nullptr ? point->name : "column " + std::to_string(column);
}

std::string formText(const Chart& chart, const AffineForm& form) {
    return form.text([&](Variable v) { return chart.repeats[static_cast<std::size_t>(v)].name; });
}

RowForms formsFor(const Drawing& drawing, int row) {
    const Chart& chart = drawing.chart;
    const Path path = pathOn(chart, row, drawing.size);
    if (drawing.size == nullptr) return formsOf(chart.row(row), path);
    return formsOf(chart, row, *drawing.size, path, timesOf(chart, *drawing.size));
}

std::string ruleOfUncharted(const Chart& chart) {
    const bool flat = chart.worked == Worked::Flat;
    std::string which = "Even-numbered rounds";
    if (flat) which = chart.firstSide == Side::Right ? "Wrong-side rows" : "Right-side rows";
    switch (chart.uncharted) {
        case Uncharted::None:
            return {};
        case Uncharted::AsTheyPresent:
            return which + " are not charted: work every stitch as it presents itself.";
        case Uncharted::Purl:
            return which + " are not charted: purl every stitch.";
        case Uncharted::Knit:
            return which + " are not charted: knit every stitch.";
    }
    return {};
}

std::string directions(const Chart& chart) {
    if (chart.worked == Worked::InTheRound) return "Every round is read from right to left.";
    if (chart.uncharted != Uncharted::None) {
        return chart.firstSide == Side::Right
                   ? "Charted rows are right-side rows, read from right to left."
                   : "Charted rows are wrong-side rows, read from left to right.";
    }
    return "Right-side rows are read from right to left, wrong-side rows from left to right; the "
           "number "
           "of a row stands where it begins.";
}

std::string castOnSentence(const CastOn& castOn) {
    return "Cast on " + castOnText(castOn) + (castOn.multiple == 0 ? "." : " stitches.");
}

std::string swapSentence(const Chart& chart, const Substitution& swap, bool outlined) {
    const auto stitch = chart.stitches->find(swap.stitch);
    const Side side = chart.sideOf(swap.row);
    const StitchIndex drawn = chart.row(swap.row).at(swap.column);
    const std::string word = chart.worked == Worked::Flat ? "Row " : "Round ";
    return word + std::to_string(chart.rowNumber(swap.row)) + ", " + place(chart, swap.column) +
           (outlined ? " (outlined)" : "") + ", nearest the " +
           (swap.edge == Edge::Start ? "start" : "end") + ": " +
           (stitch ? stitchInWords(*chart.stitches, *stitch, side) : swap.stitch) +
           (drawn == kCovered ? "" : " instead of " + stitchInWords(*chart.stitches, drawn, side)) +
           ".";
}

}  // namespace

std::vector<std::string> sizeSentences(const Drawing& drawing, const Size& size) {
    const Chart& chart = drawing.chart;
    std::vector<std::string> sentences = sizeInstructionSentences(chart, size);
    // The name of the size stands beside its sentences already.
    std::string& first = sentences.front();
    first.erase(0, ("Size " + size.name + ": ").size());
    first[0] = first[0] == 'b' ? 'B' : 'O';
    if (&size == drawing.size) sentences.front() += " Highlighted in the chart.";
    const Path path = pathOn(chart, 0, &size);
    const AffineForm taken = formsOf(chart, 0, size, path, timesOf(chart, size)).takes;
    if (size.stitches && taken != AffineForm(*size.stitches)) {
        sentences.push_back("Its designer expects " +
                            counted(*size.stitches, "stitch", "stitches") + ".");
    }
    for (const Substitution& swap : size.substitutions)
        sentences.push_back(swapSentence(chart, swap, &size == drawing.size));
    return sentences;
}

std::vector<std::string> countSentences(const Drawing& drawing) {
    const Chart& chart = drawing.chart;
    AffineForm last = formsFor(drawing, 0).takes;
    const std::string row = drawing.rowWord() + " ";
    std::string words =
        (drawing.size != nullptr ? "Stitches of size " + drawing.size->name + ": " : "Stitches: ") +
        formText(chart, last) + " before " + row + std::to_string(chart.rowNumber(0));
    bool free = !last.isConstant();
    std::vector<std::string> changes;
    for (int r = 0; r < chart.height(); ++r) {
        const AffineForm made = formsFor(drawing, r).makes;
        if (made == last) continue;
        last = made;
        free = free || !made.isConstant();
        changes.push_back(formText(chart, made) + " after " + row +
                          std::to_string(chart.rowNumber(r)));
    }
    if (changes.empty()) words += " and after every " + drawing.rowWord();
    if (changes.size() > kMostCounts) {
        const std::string end = changes.back();
        changes.resize(kMostCounts - 1);
        changes.push_back("... " + end);
    }
    for (const std::string& change : changes) words += ", " + change;
    std::vector<std::string> sentences = {words + "."};
    if (free) sentences.push_back("A letter stands for the number of times that repeat is worked.");
    return sentences;
}

std::vector<std::string> readingSentences(const Chart& chart) {
    std::vector<std::string> sentences;
    if (chart.castOn) sentences.push_back(castOnSentence(*chart.castOn));
    sentences.push_back(directions(chart));
    if (chart.worked == Worked::Flat && chart.uncharted == Uncharted::None &&
        !chart.sizes.empty()) {
        sentences.push_back(
            "What is said of a size holds for right-side rows; wrong-side rows begin where it ends "
            "and run back to where it begins.");
    }
    if (std::string rule = ruleOfUncharted(chart); !rule.empty())
        sentences.push_back(std::move(rule));
    if (!chart.repeats.empty()) {
        sentences.push_back(
            "Stitches inside the heavy outline of a repeat are worked as often as it says, those "
            "outside once.");
    }
    if (chart.rowRepeat) {
        sentences.push_back(
            "Work " + rowsInWords(chart, chart.rowRepeat->firstRow, chart.rowRepeat->lastRow) +
            " again and again.");
    }
    if (chart.gauge.stitches > 0 && chart.gauge.rows > 0) {
        const auto whole = [](double value) {
            std::string text = std::to_string(value);
            text.erase(text.find_last_not_of('0') + 1);
            return text.back() == '.' ? text.substr(0, text.size() - 1) : text;
        };
        sentences.push_back("Gauge: " + whole(chart.gauge.stitches) + " stitches and " +
                            whole(chart.gauge.rows) + " rows over 10 cm.");
    }
    return sentences;
}

}  // namespace lacewright
