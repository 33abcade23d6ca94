#include "tests/core/file/random_chart.h"

#include <algorithm>
#include <tuple>

#include "core/chart/edits.h"

namespace lacewright {
namespace {

class Maker {
 public:
    explicit Maker(std::mt19937& random) : random_(random) {}

    Chart chart() {
        Chart chart = blankChart(number(1, 30), number(1, 12));
        chart.name = text();
        chart.notes = text();
        chart.source = text();
        if (chance()) chart.worked = Worked::InTheRound;
        if (chart.worked == Worked::Flat && chance()) chart.firstSide = Side::Wrong;
        chart.uncharted = static_cast<Uncharted>(number(0, 3));
        if (chance()) chart.castOn = CastOn{chance() ? number(1, 30) : 0, number(0, 400), extras()};
        if (chance()) chart.gauge = Gauge{number(1, 400) / 10.0, number(0, 3) / 7.0, extras()};
        chart.stitches = catalogue(chart.width);
        rows(chart);
        for (int i = number(0, 6); i > 0; --i) addIfSound(chart, chart.repeats, repeat(chart));
        if (chance()) {
            const auto [first, last] = ordered(0, chart.height() - 1);
            chart.rowRepeat = RowRepeat{first, last, number(-9, 9), extras()};
        }
        for (int i = number(0, 4); i > 0; --i) {
            chart.points.push_back({name(), number(1, chart.width), extras()});
        }
        for (int i = number(0, 3); i > 0; --i) addIfSound(chart, chart.sizes, size(chart));
        if (chance()) chart.grading = grading(chart);
        chart.extras = extras();
        return chart;
    }

 private:
    int number(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
    bool chance() { return number(0, 1) == 1; }
    std::pair<int, int> ordered(int low, int high) {
        return std::minmax({number(low, high), number(low, high)});
    }
    template <class Item>
    static void addIfSound(Chart& chart, std::vector<Item>& items, Item item) {
        items.push_back(std::move(item));
        if (frameProblem(chart)) items.pop_back();
    }
    std::string text() {
        static const std::string parts[] = {"a",  "Z", " ",  "\"",   "\\",   "/",   "\n",
                                            "\t", "é", "雪", "🧶", "\x01", "\x7f"};
        std::string made;
        for (int i = number(0, 8); i > 0; --i) made += parts[number(0, 12)];
        return made;
    }
    // Differs from every name before.
    std::string name() { return std::to_string(++names_) + text(); }
    Extras extras() {
        static const std::string values[] = {"1",     "-0.50",  "1e7", "null",          "true",
                                             "\"x\"", "[1, 2]", "{}",  "{\"a\": [[]]}", "[]"};
        Extras made;
        if (number(0, 3) > 0) return made;
        for (int i = number(1, 3); i > 0; --i)
            made.emplace_back("x-" + name(), values[number(0, 9)]);
        return made;
    }

    StitchCataloguePtr catalogue(int width) {
        StitchCataloguePtr stitches = builtInStitches();
        for (int i = number(0, 3); i > 0; --i) stitches = stitches->with(stitch()).value();
        for (int i = number(0, std::min(width, 2)); i > 0; --i) {
            Stitch unknown;
            unknown.id = "unknown" + std::to_string(++names_);
            unknown.kind = StitchKind::Unknown;
            unknown_.push_back(unknown.id);
            stitches = stitches->with(std::move(unknown)).value();
        }
        return stitches;
    }
    Stitch stitch() {
        Stitch stitch;
        stitch.id = "own" + std::to_string(++names_) + (chance() ? "é!" : "");
        stitch.name = text();
        stitch.takes = number(0, kMaxLoops);
        stitch.makes = number(0, kMaxLoops);
        stitch.span = number(1, 5);
        stitch.lean = static_cast<Lean>(number(0, 3));
        stitch.kind = static_cast<StitchKind>(number(0, static_cast<int>(StitchKind::NoStitch)));
        stitch.mirror = text();
        stitch.rightSide = {text(), text(), extras()};
        stitch.wrongSide = {text(), text(), extras()};
        for (int i = number(0, 3); i > 0; --i) {
            stitch.glyph.push_back(
                {number(-20, 40), number(-20, 40), "l3.5 -2h7z", chance(), extras()});
        }
        stitch.shaded = chance();
        stitch.source = text();
        stitch.extras = extras();
        return stitch;
    }

    void rows(Chart& chart) {
        for (int row = 0; row < chart.height(); ++row) {
            std::vector<StitchIndex> cells;
            while (static_cast<int>(cells.size()) < chart.width) {
                const int any = number(0, static_cast<int>(chart.stitches->size()));
                const auto stitch = static_cast<StitchIndex>(chance() ? 1 : any);
                cells.push_back(stitch);
                for (int i = chart.stitches->spans()[stitch]; i > 1 && chance(); --i)
                    cells.push_back(kCovered);
            }
            cells.resize(static_cast<std::size_t>(chart.width));
            if (row == 0) nameTheUnknown(cells, *chart.stitches);
            chart.rows.replace(static_cast<std::size_t>(row),
                               makeRow(std::move(cells), *chart.stitches));
        }
    }

    // A file defines no unknown stitch: it has those that its rows name, in that order. So the
    // first row names each, from the left, and no other.
    void nameTheUnknown(std::vector<StitchIndex>& cells, const StitchCatalogue& stitches) {
        for (StitchIndex& cell : cells) {
            if (cell != kCovered && stitches[cell].kind == StitchKind::Unknown) cell = 1;
        }
        for (std::size_t i = 0; i < unknown_.size(); ++i) {
            cells[cells.size() - 1 - i] = stitches.find(unknown_[i]).value();
        }
    }

    Repeat repeat(const Chart& chart) {
        Repeat repeat;
        repeat.name = name();
        std::tie(repeat.right, repeat.left) = ordered(1, chart.width);
        std::tie(repeat.firstRow, repeat.lastRow) = ordered(0, chart.height() - 1);
        repeat.extras = extras();
        for (int i = number(0, 3); i > 0; --i) {
            const auto [right, left] = ordered(1, chart.width);
            repeat.jogs[number(repeat.firstRow, repeat.lastRow)] =
                Jog{right - repeat.right, left - repeat.left, extras()};
        }
        return repeat;
    }

    Size size(const Chart& chart) {
        Size size;
        size.name = name();
        std::tie(size.reach.start, size.reach.end) = ordered(1, chart.width);
        if (chance()) size.stitches = number(0, 1000);
        for (const Repeat& repeat : chart.repeats) {
            if (chance()) size.times[repeat.name] = number(0, kMaxTimes);
        }
        for (int row = number(0, 2); row < chart.height(); row += number(1, 4)) {
            const auto [start, end] = ordered(1, chart.width);
            const int last = std::min(row + number(0, 2), chart.height() - 1);
            size.changes.push_back({row, last, {start, end}, extras()});
            row = last;
        }
        for (int i = number(0, 3); i > 0; --i) {
            const Edge edge = chance() ? Edge::Start : Edge::End;
            size.substitutions.push_back(
                {number(0, chart.height() - 1), number(1, chart.width), edge, "k", extras()});
        }
        if (chance()) size.body = number(1, 20000) / 7.0;
        if (chance()) size.shoulder = number(0, 90);
        size.extras = extras();
        return size;
    }

    Grading grading(const Chart& chart) {
        Grading grading;
        grading.rising = chance();
        grading.halved = chance();
        grading.pieces = number(1, 4);
        grading.edgeStitches = number(0, 3);
        if (chance()) grading.leastEase = number(-100, 0) / 3.0;
        if (chance()) grading.mostEase = number(0, 100) / 3.0;
        for (int i = number(0, 2); i > 0; --i) {
            const auto [right, left] = ordered(1, chart.width);
            grading.shoulders.push_back({number(0, chart.height() - 1), right, left, extras()});
        }
        grading.extras = extras();
        return grading;
    }

    std::mt19937& random_;
    int names_ = 0;
    std::vector<std::string> unknown_;
};

}  // namespace

Chart randomChart(std::mt19937& random) {
    return Maker(random).chart();
}

}  // namespace lacewright
