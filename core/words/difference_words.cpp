#include "core/words/difference_words.h"

#include "core/base/text.h"

namespace lacewright {
namespace {

using Kind = AlignedStep::Kind;

std::string columnOf(const ContrastedStitch& stitch) {
    return stitch.column > 0 ? "column " + std::to_string(stitch.column) : "the end of the row";
}

std::string placeOf(const ContrastedStitch& stitch) {
    return "line " + std::to_string(stitch.place.line) + ", character " +
           std::to_string(stitch.place.column);
}

// "the chart has yo (column 4), the text k (line 6, character 12)"
std::string sentence(const ContrastedStitch& stitch) {
    if (stitch.kind == Kind::OnlyInChart)
        return "the chart has " + stitch.charted + " (" + columnOf(stitch) +
               "), which the text leaves out (" + placeOf(stitch) + ")";
    if (stitch.kind == Kind::OnlyInText)
        return "the text has " + stitch.written + " (" + placeOf(stitch) +
               "), which the chart leaves out (" + columnOf(stitch) + ")";
    return "the chart has " + stitch.charted + " (" + columnOf(stitch) + "), the text " +
           stitch.written + " (" + placeOf(stitch) + ")";
}

std::string heading(const RowDifference& difference, const std::string& row) {
    std::string text = row + " " + std::to_string(difference.number);
    if (!difference.sizes.empty()) text += " (" + listing(difference.sizes) + ")";
    if (!difference.repeatsWorked.empty())
        text += " (repeats worked " + difference.repeatsWorked + ")";
    return text;
}

}  // namespace

std::string differenceSentence(const RowDifference& difference, const std::string& row) {
    std::string text = heading(difference, row) + ": ";
    switch (difference.contrast) {
        case RowContrast::NotInText:
            return text + "the text does not have this row";
        case RowContrast::NotInChart:
            return text + "the chart does not have this row";
        case RowContrast::Side:
            return text + "chart and text work it from different sides";
        case RowContrast::NotCountable:
            text += "the text cannot use up exactly the stitches that the chart uses here";
            break;
        case RowContrast::Stitches:
            break;
    }
    const std::size_t at = difference.firstDifference();
    if (at == difference.stitches.size()) return text;
    if (difference.contrast == RowContrast::NotCountable) text += "; ";
    return text + "stitch " + std::to_string(at + 1) + ": " + sentence(difference.stitches[at]);
}

bool areAligned(const RowDifference& difference) {
    return (difference.contrast == RowContrast::Stitches ||
            difference.contrast == RowContrast::NotCountable) &&
           difference.firstDifference() < difference.stitches.size();
}

std::string changeSentence(const ContrastedStitch& stitch) {
    switch (stitch.kind) {
        case Kind::Replaced:
            return "in the text write " + stitch.charted + " for " + stitch.written + " (" +
                   placeOf(stitch) + "), or draw " + stitch.written + " in " + columnOf(stitch);
        case Kind::OnlyInChart:
            return "in the text put in " + stitch.charted + " (before " + placeOf(stitch) +
                   "), or take " + columnOf(stitch) + " out of the chart";
        case Kind::OnlyInText:
            return "in the text leave out " + stitch.written + " (" + placeOf(stitch) +
                   "), or draw it before " + columnOf(stitch);
        case Kind::Same:
            break;
    }
    return {};
}

std::string provenFor(const Chart& chart, const std::string& size) {
    if (!size.empty()) return "size " + size;
    if (!chart.sizes.empty()) return "every size";
    return chart.repeats.empty() ? "every row" : "any number of repeats";
}

}  // namespace lacewright
