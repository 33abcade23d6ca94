#include "core/words/written_lines.h"

namespace lacewright {

namespace {

bool round(const Chart& chart) {
    return chart.worked == Worked::InTheRound;
}

std::string familyName(const Chart& chart, Side side) {
    if (round(chart)) return " and all even rnds";
    return side == Side::Right ? " and all RS rows" : " and all WS rows";
}

bool alike(const WrittenLine& a, const WrittenLine& b) {
    return textOf(a.pieces) == textOf(b.pieces) && a.stated == b.stated;
}

}  // namespace

std::string rowWord(const Chart& chart, bool several) {
    if (round(chart)) return several ? "Rnds" : "Rnd";
    return several ? "Rows" : "Row";
}

std::string sideText(const Chart& chart, Side side) {
    if (round(chart)) return "";
    return side == Side::Right ? " (RS)" : " (WS)";
}

std::string rowLabel(const Chart& chart, int rowIndex) {
    return rowWord(chart, false) + " " + std::to_string(chart.rowNumber(rowIndex)) +
           sideText(chart, chart.sideOf(rowIndex));
}

void addUnchartedLine(const Chart& chart, std::vector<WrittenLine>& lines) {
    if (chart.uncharted == Uncharted::None) return;
    const Side side = !round(chart) && chart.firstSide == Side::Right ? Side::Wrong : Side::Right;
    WrittenLine line;
    line.label = rowWord(chart, false) + " 2" + familyName(chart, side);
    const char* text = chart.uncharted == Uncharted::Purl   ? "purl"
                       : chart.uncharted == Uncharted::Knit ? "knit"
                                                            : "knit the knits and purl the purls";
    line.pieces.push_back({text});
    lines.insert(lines.begin() + 1, std::move(line));
}

void joinLines(const Chart& chart, std::vector<WrittenLine>& lines) {
    if (chart.uncharted != Uncharted::None || !chart.rows.size()) return;
    const std::size_t n = lines.size();
    bool family = n >= 4 && n % 2 == 0;
    for (std::size_t i = 3; family && i < n; i += 2) family = alike(lines[i], lines[1]);
    if (family) {
        std::vector<WrittenLine> kept;
        for (std::size_t i = 0; i < n; ++i) {
            if (i % 2 == 1 && i > 1)
                kept[1].rowIndices.push_back(static_cast<int>(i));
            else
                kept.push_back(lines[i]);
        }
        kept[1].label = rowWord(chart, false) + " 2" + familyName(chart, chart.sideOf(1));
        lines = std::move(kept);
        return;
    }
    std::vector<WrittenLine> kept;
    for (WrittenLine& line : lines) {
        const bool sideTold = chart.firstSide == Side::Right || line.rowIndices[0] > 1;
        if (!kept.empty() && sideTold && alike(kept.back(), line)) {
            std::vector<int>& rows = kept.back().rowIndices;
            rows.push_back(line.rowIndices[0]);
            kept.back().label =
                rowWord(chart, true) + " " + std::to_string(chart.rowNumber(rows.front())) +
                (rows.size() == 2 ? " and " : "-") + std::to_string(chart.rowNumber(rows.back()));
        } else {
            kept.push_back(std::move(line));
        }
    }
    lines = std::move(kept);
}

}  // namespace lacewright
