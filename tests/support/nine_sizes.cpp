#include "tests/support/nine_sizes.h"

namespace lacewright::test {
namespace {

// Every start and end from the middle of the chart outward, with different times.
constexpr std::array<Cut, 9> outward(int right, int left) {
    return {{{right + 4, left - 4, 1},
             {right + 3, left - 4, 2},
             {right + 3, left - 3, 0},
             {right + 2, left - 3, 3},
             {right + 2, left - 2, 4},
             {right + 1, left - 2, 5},
             {right + 1, left - 1, 6},
             {right, left - 1, 7},
             {right, left, 8}}};
}

Chart repeatOf(std::initializer_list<std::string> rows, int right, int left) {
    Chart chart = chartOf(rows);
    return withRepeat(chart, "A", right, left);
}

Chart inRounds(Chart chart) {
    chart.worked = Worked::InTheRound;
    return chart;
}

// Double decreases between two yarn overs, five columns wide.
Chart arches() {
    return repeatOf(
        {"k k k yo s2kp yo k k yo s2kp yo k k", "k*13", "k*5 yo k s2kp k yo k*3", "k*13"}, 4, 8);
}

// Yarn overs and decreases that stand far apart.
Chart wide() {
    return repeatOf({"k yo k k k k2tog yo k k k k2tog k k k", "k*14",
                     "k k ssk k k k yo ssk k k k yo k k", "k*14"},
                    4, 8);
}

Chart cables() {
    return repeatOf({"k c22r k c22r k k", "k*12", "k c22r k c11l c11r k k", "k*12"}, 3, 7);
}

Chart jogged() {
    Chart chart = repeatOf(
        {"k k k yo ssk k k yo ssk k k k", "k*12", "k k yo ssk k k yo ssk k k k k", "k*12"}, 4, 7);
    chart.repeats[0].jogs[2] = {1, 1, {}};
    return chart;
}

// A panel: ground, motif, ground.
Chart panel() {
    Chart chart = chartOf({"k k yo k2tog k yo s2kp yo k ssk yo k k", "k*13"});
    withRepeat(chart, "A", 3, 4);
    withRepeat(chart, "M", 5, 9);
    withRepeat(chart, "B", 10, 11);
    return chart;
}

// Rows of one repeat under rows of another.
Chart stacked() {
    Chart chart = chartOf({"k k yo k2tog yo k2tog k k", "k*8", "k k yo s2kp yo k k k", "k*8"});
    chart.repeats = {{"A", 3, 4, 0, 1, {}, {}}, {"B", 3, 6, 2, 3, {}, {}}};
    return chart;
}

// Yarn overs on one row, their decreases two rows above: the rows between have more stitches.
Chart rowsApart() {
    return repeatOf({"k k yo k k yo k k yo k k no-stitch*3", "k*14", "k*14",
                     "k k ssk k k ssk k k no-stitch ssk k k no-stitch*2"},
                    5, 7);
}

// Only right-side rows are drawn.
Chart everySecondRow(Chart chart, Uncharted rule) {
    Chart thin = chart;
    std::vector<RowPtr> rows;
    for (int row = 0; row < chart.height(); row += 2) rows.push_back(chart.rows[row]);
    thin.rows = RowList(rows);
    thin.uncharted = rule;
    for (Repeat& repeat : thin.repeats) repeat.lastRow /= 2;
    return thin;
}

// Columns that exist on upper rows only, at both edges.
Chart growingEdges() {
    return repeatOf({"no-stitch no-stitch k yo s2kp yo k k no-stitch no-stitch",
                     "no-stitch no-stitch k*6 no-stitch no-stitch",
                     "no-stitch yo k yo s2kp yo k k yo no-stitch", "no-stitch k*8 no-stitch",
                     "yo k k yo s2kp yo k k k yo", "k*10"},
                    4, 7);
}

// Every size begins and ends two columns further in on every second row.
Chart byTwo(Chart chart) {
    for (Size& size : chart.sizes) {
        for (int row = 2; row < chart.height(); row += 2) {
            const Reach below = size.changes.empty() ? size.reach : size.changes.back().reach;
            if (below.end - below.start < 4) break;
            const int last = std::min(row + 1, chart.height() - 1);
            size.changes.push_back({row, last, {below.start + 2, below.end - 2}, {}});
        }
    }
    return chart;
}

// Every repeat has its own number of times in every size.
Chart ownTimes(Chart chart) {
    int next = 0;
    for (Size& size : chart.sizes) {
        for (auto& [name, times] : size.times) times = next++ * 5 % 7;
    }
    return chart;
}

Chart steps(Chart chart) {
    int row = 0;
    for (Size& size : chart.sizes) {
        const int first = row++ % chart.height();
        const Reach inner{std::min(size.reach.start + 1, size.reach.end), size.reach.end};
        size.changes = {{first, first, inner, {}}};
        if (first + 1 < chart.height())
            size.changes.push_back({first + 1, chart.height() - 1, {inner.start, inner.end}, {}});
    }
    return chart;
}

}  // namespace

std::vector<HardChart> hardNineSizes() {
    std::vector<HardChart> charts;
    const auto add = [&charts](std::string name, Chart chart) {
        charts.push_back({std::move(name), std::move(chart)});
    };
    const std::array<Cut, 9> inside = {{{4, 4, 1},
                                        {4, 5, 2},
                                        {5, 5, 3},
                                        {5, 6, 1},
                                        {6, 6, 0},
                                        {6, 7, 4},
                                        {7, 7, 2},
                                        {4, 7, 5},
                                        {5, 7, 0}}};
    const std::array<Cut, 9> atTheEdge = {{{4, 8, 1},
                                           {4, 9, 2},
                                           {3, 8, 3},
                                           {4, 7, 4},
                                           {5, 8, 5},
                                           {8, 8, 6},
                                           {4, 4, 7},
                                           {9, 9, 8},
                                           {3, 3, 9}}};
    add("through the companions of a double decrease", withNineSizes(arches(), outward(1, 13)));
    add("double decreases in rounds", withNineSizes(inRounds(arches()), outward(1, 13)));
    add("whole sizes inside one repeat", withNineSizes(arches(), inside));
    add("beginning and ending at the edges of the repeat", withNineSizes(arches(), atTheEdge));
    add("left out altogether", withNineSizes(arches(), {{{1, 13, 0},
                                                         {2, 12, 0},
                                                         {3, 11, 0},
                                                         {4, 10, 0},
                                                         {5, 9, 0},
                                                         {1, 8, 0},
                                                         {4, 13, 0},
                                                         {6, 6, 0},
                                                         {4, 8, 0}}}));
    add("companions far apart", withNineSizes(wide(), outward(1, 14)));
    add("companions far apart in rounds", withNineSizes(inRounds(wide()), outward(1, 14)));
    add("companions far apart, inside the repeat", withNineSizes(wide(), inside));
    add("companions far apart, at the edges", withNineSizes(wide(), atTheEdge));
    add("through wide stitches", withNineSizes(cables(), outward(1, 12)));
    add("through wide stitches in rounds", withNineSizes(inRounds(cables()), outward(1, 12)));
    add("wide stitches inside the repeat", withNineSizes(cables(), inside));
    add("wide stitches at the edges", withNineSizes(cables(), atTheEdge));
    add("a jogged repeat", withNineSizes(jogged(), outward(1, 12)));
    add("a jogged repeat, at its edges", withNineSizes(jogged(), atTheEdge));
    add("a jogged repeat, inside", withNineSizes(jogged(), inside));
    add("a jogged repeat in rounds", withNineSizes(inRounds(jogged()), outward(1, 12)));
    add("a panel of three repeats", withNineSizes(panel(), outward(1, 13)));
    add("a panel cut inside its outer repeats", withNineSizes(panel(), {{{2, 12, 1},
                                                                         {3, 12, 2},
                                                                         {2, 11, 3},
                                                                         {3, 11, 4},
                                                                         {6, 8, 2},
                                                                         {1, 9, 5},
                                                                         {5, 13, 6},
                                                                         {7, 7, 1},
                                                                         {4, 10, 7}}}));
    add("one repeat above another", withNineSizes(stacked(), {{{1, 8, 1},
                                                               {2, 8, 2},
                                                               {3, 6, 3},
                                                               {4, 5, 1},
                                                               {3, 4, 2},
                                                               {5, 6, 2},
                                                               {1, 3, 4},
                                                               {6, 8, 0},
                                                               {2, 7, 5}}}));
    add("stepped edges", steps(withNineSizes(arches(), outward(1, 13))));
    add("stepped edges in rounds", steps(inRounds(withNineSizes(wide(), outward(1, 14)))));
    add("stepped edges over wide stitches", steps(withNineSizes(cables(), outward(1, 12))));
    add("stepped edges over a jogged repeat", steps(withNineSizes(jogged(), outward(1, 12))));
    add("all edges at the right", withNineSizes(wide(), {{{1, 1, 1},
                                                          {1, 2, 1},
                                                          {1, 3, 2},
                                                          {1, 4, 2},
                                                          {1, 5, 3},
                                                          {1, 6, 3},
                                                          {1, 7, 4},
                                                          {1, 8, 4},
                                                          {1, 9, 5}}}));
    add("all edges at the left", withNineSizes(wide(), {{{14, 14, 1},
                                                         {13, 14, 1},
                                                         {12, 14, 2},
                                                         {11, 14, 2},
                                                         {9, 14, 3},
                                                         {8, 14, 3},
                                                         {7, 14, 4},
                                                         {5, 14, 4},
                                                         {3, 14, 5}}}));
    {
        Chart chart = withNineSizes(arches(), outward(1, 13));
        for (Size& size : chart.sizes) {
            size.substitutions = {{0, size.reach.start, Edge::Start, "k", {}},
                                  {2, size.reach.end, Edge::End, "k", {}}};
        }
        add("stitches of their own at both edges", chart);
    }
    {
        Chart chart = withNineSizes(wide(), outward(1, 14));
        for (Size& size : chart.sizes) size.stitches = 20;
        add("counts that few sizes reach", chart);
    }
    {
        Chart chart = withNineSizes(
            chartOf({"k*4 bo*4 k*4", "k*4 no-stitch*4 k*4", "yo k2tog k k no-stitch*4 k k ssk yo"}),
            outward(1, 12));
        add("bound off in the middle", chart);
    }
    {
        Chart chart = repeatOf(
            {"k*3 no-stitch yo2 k2tog ssk k*2 yo ssk no-stitch k", "k*11 no-stitch k"}, 2, 4);
        add("double yarn overs and no stitch", withNineSizes(chart, outward(1, 13)));
    }
    add("increases and decreases on rows of their own", withNineSizes(rowsApart(), outward(1, 14)));
    add("increases and decreases on rows of their own, inside", withNineSizes(rowsApart(), inside));
    add("right-side rows only, purled between",
        withNineSizes(everySecondRow(arches(), Uncharted::Purl), outward(1, 13)));
    add("right-side rows only, worked as they present",
        withNineSizes(everySecondRow(wide(), Uncharted::AsTheyPresent), atTheEdge));
    add("every second round only",
        withNineSizes(everySecondRow(inRounds(cables()), Uncharted::Knit), outward(1, 12)));
    add("columns that begin further up", withNineSizes(growingEdges(), outward(1, 10)));
    add("columns that begin further up, inside", withNineSizes(growingEdges(), inside));
    add("shaped by two columns", byTwo(withNineSizes(arches(), outward(1, 13))));
    add("shaped by two columns in rounds", byTwo(withNineSizes(inRounds(wide()), outward(1, 14))));
    add("repeats with times of their own", ownTimes(withNineSizes(panel(), outward(1, 13))));
    add("repeats above one another with times of their own",
        ownTimes(withNineSizes(stacked(), {{{1, 8, 1},
                                            {2, 7, 1},
                                            {3, 8, 1},
                                            {1, 2, 1},
                                            {7, 8, 1},
                                            {4, 6, 1},
                                            {1, 5, 1},
                                            {6, 7, 1},
                                            {3, 3, 1}}})));
    // Those on the left begin beyond the end of those on the right.
    add("sizes beside one another", withNineSizes(wide(), {{{1, 3, 1},
                                                            {2, 3, 2},
                                                            {4, 6, 3},
                                                            {5, 7, 1},
                                                            {7, 8, 2},
                                                            {9, 10, 1},
                                                            {10, 12, 1},
                                                            {9, 14, 4},
                                                            {13, 14, 5}}}));
    return charts;
}

}  // namespace lacewright::test
