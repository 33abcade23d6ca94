#include "tests/support/published_charts.h"

#include <algorithm>
#include <filesystem>

#include "core/base/disk.h"
#include "core/check/check.h"
#include "core/file/chart_file.h"
#include "core/words/chart_from_rows.h"
#include "core/words/reader.h"
#include "tests/support/source_tree.h"

namespace lacewright::test {
namespace {

namespace fs = std::filesystem;

std::vector<fs::path> filesIn(const std::string& folder) {
    std::vector<fs::path> files;
    for (const auto& entry : fs::directory_iterator(inSourceTree(folder)))
        files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

bool isShaped(const Chart& chart) {
    for (int row = 0; row < chart.height(); ++row) {
        if (chart.row(row).traits().hasShaping) return true;
    }
    return false;
}

// The columns and rows that a symmetry is looked for in, and whether its edges meet.
struct Field {
    int right = 1;  // column
    int bottom = 0;
    int width = 0;
    int height = 0;
    bool ring = false;
};

StitchIndex mirrored(const Chart& chart, StitchIndex index) {
    if (index == kCovered) return index;
    return chart.stitches->find((*chart.stitches)[index].mirror).value_or(index);
}

// And some shaping falls on other shaping; what stays where it is says nothing.
bool fallsOnItself(const Chart& chart, const Field& field, bool mirror, int dx, int dy) {
    const auto wrapped = [](int value, int period) { return ((value % period) + period) % period; };
    bool moves = false;
    for (int y = 0; y < field.height; ++y) {
        for (int x = 0; x < field.width; ++x) {
            int there = mirror ? dx - x : x + dx;
            if (field.ring) there = wrapped(there, field.width);
            if (there < 0 || there >= field.width) return false;
            const int up = wrapped(y + dy, field.height);
            if (up == y && there == x) continue;
            const StitchIndex here = chart.row(field.bottom + y).at(field.right + x);
            const StitchIndex like = mirror ? mirrored(chart, here) : here;
            if (chart.row(field.bottom + up).at(field.right + there) != like) return false;
            moves = moves || (here != kCovered && (*chart.stitches)[here].net() != 0);
        }
    }
    return moves;
}

bool hasSymmetry(const Chart& chart, const Field& field) {
    for (const bool mirror : {true, false}) {
        for (int dy = 0; dy < field.height; ++dy) {
            for (int dx = 0; dx < (mirror ? 2 : 1) * field.width; ++dx) {
                const bool identity = !mirror && dx == 0 && dy == 0;
                if (!identity && fallsOnItself(chart, field, mirror, dx, dy)) return true;
            }
        }
    }
    return false;
}

}  // namespace

std::vector<PublishedText> publishedTexts() {
    std::vector<PublishedText> texts;
    for (const fs::path& file : filesIn("tests/data/handbook")) {
        auto text = readFile(file.string());
        if (text && text->find("knittable=yes") != std::string::npos &&
            text->find("sturdy=yes") != std::string::npos)
            texts.push_back({file.stem().string(), std::move(*text)});
    }
    return texts;
}

std::vector<Chart> publishedCharts() {
    std::vector<Chart> charts;
    const auto add = [&](const std::string& name, Chart chart) {
        if (chart.height() < 2 || !isShaped(chart) || check(chart).hasFault()) return;
        chart.name = name;
        charts.push_back(std::move(chart));
    };
    for (const auto& [name, text] : publishedTexts()) {
        auto drawn = chartFromRows(readWritten(text).pattern);
        if (drawn && drawn->knittable) add(name, std::move(drawn->chart));
    }
    for (const fs::path& file : filesIn("samples")) {
        auto chart = loadChart(file.string());
        if (chart) add(file.stem().string(), std::move(*chart));
    }
    return charts;
}

bool hasExactSymmetry(const Chart& chart) {
    std::vector<Field> fields{{1, 0, chart.width, chart.height(), false}};
    for (const Repeat& repeat : chart.repeats) {
        if (!repeat.jogs.empty()) continue;
        fields.push_back({repeat.right, repeat.firstRow, repeat.left - repeat.right + 1,
                          repeat.lastRow - repeat.firstRow + 1, true});
    }
    return std::any_of(fields.begin(), fields.end(),
                       [&](const Field& field) { return hasSymmetry(chart, field); });
}

}  // namespace lacewright::test
