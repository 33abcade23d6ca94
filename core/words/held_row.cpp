#include "core/words/held_row.h"

#include <algorithm>

namespace lacewright {
namespace {

// The wording of a key on that side.
std::string worded(const std::string& key, Side side) {
    const auto index = builtInStitches()->find(key);
    if (!index) return key;
    const Stitch& stitch = (*builtInStitches())[*index];
    const SideWording& wording = side == Side::Right ? stitch.rightSide : stitch.wrongSide;
    return wording.abbreviation.empty() ? key : wording.abbreviation;
}

// The row with its repeats worked about as often as there are loops for.
std::optional<std::vector<UnrolledStitch>> nearest(const HeldText& text, const WrittenRow& row,
                                                   const CountedRow& counted, std::int64_t loops,
                                                   const OpenCounts& named) {
    std::int64_t each = 0;
    std::int64_t rest = loops - counted.forms.takes.constant();
    OpenCounts counts = named;
    for (const OwnCount& own : counted.own) {
        const auto known = named.find(own.variable);
        if (known == named.end())
            each += own.takes;
        else
            rest -= own.takes * known->second;
    }
    for (const OwnCount& own : counted.own)
        counts.emplace(own.variable, each > 0 ? std::max<std::int64_t>(0, rest / each) : 0);
    return unrolledRow(text.pattern, row, text.size, counted, counts);
}

}  // namespace

HeldRow heldAgainst(const HeldText& text, const WrittenRow& row, std::vector<ChartedStitch> charted,
                    const std::vector<LoopLook>& below, const OpenCounts& named) {
    HeldRow held;
    held.charted = std::move(charted);
    std::int64_t loops = 0;
    for (const ChartedStitch& stitch : held.charted) loops += stitch.takes;
    const auto index = static_cast<std::size_t>(&row - text.pattern.rows.data());
    std::vector<CountedRow> readings = countedReadings(row, text.size, 1);
    readings.insert(readings.begin(), text.proof.rows[index].counted);
    std::optional<std::vector<UnrolledStitch>> shown;
    for (const CountedRow& reading : readings) {
        auto written = unrolledOver(text.pattern, row, text.size, reading, loops, named);
        if (!written) continue;
        settlePresented(*written, row.side, below);
        if (sameWork(held.charted, *written)) return held;
        if (!shown) shown = std::move(written);
    }
    held.same = false;
    if (!shown) {
        held.contrast = RowContrast::NotCountable;
        shown = nearest(text, row, readings.front(), loops, named);
        if (shown) settlePresented(*shown, row.side, below);
    }
    if (shown) held.written = std::move(*shown);
    return held;
}

std::vector<ContrastedStitch> contrasted(const HeldRow& held, Side side) {
    std::vector<ContrastedStitch> stitches;
    for (const AlignedStep& step : aligned(held.charted, held.written)) {
        ContrastedStitch stitch;
        stitch.kind = step.kind;
        if (step.charted < held.charted.size()) stitch.column = held.charted[step.charted].column;
        if (step.written < held.written.size())
            stitch.place = held.written[step.written].place;
        else if (!held.written.empty())
            stitch.place = held.written.back().place;
        if (step.kind != AlignedStep::Kind::OnlyInText)
            stitch.charted = worded(held.charted[step.charted].key, side);
        if (step.kind != AlignedStep::Kind::OnlyInChart)
            stitch.written = worded(held.written[step.written].key, side);
        stitches.push_back(std::move(stitch));
    }
    return stitches;
}

}  // namespace lacewright
