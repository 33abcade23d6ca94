#include "core/count/tally.h"

namespace lacewright {

void addTo(RowForms& forms, const Row& row, const Segment& segment) {
    const Tally tally = row.tally(segment.first, segment.last);
    if (segment.isBox()) {
        forms.takes.add(segment.repeat, tally.takes);
        forms.makes.add(segment.repeat, tally.makes);
    } else {
        forms.takes.add(tally.takes);
        forms.makes.add(tally.makes);
    }
}

RowForms formsOf(const Row& row, const Path& path) {
    RowForms forms;
    for (const Segment& segment : path) addTo(forms, row, segment);
    return forms;
}

Times timesOf(const Chart& chart, const Size& size) {
    Times times(chart.repeats.size());
    for (std::size_t i = 0; i < times.size(); ++i) {
        const auto found = size.times.find(chart.repeats[i].name);
        if (found != size.times.end()) times[i] = found->second;
    }
    return times;
}

std::optional<Tally> substitutionEffect(const Chart& chart, const Substitution& substitution,
                                        const Path& path, const Times& times) {
    const auto stitch = chart.stitches->find(substitution.stitch);
    if (!stitch) return std::nullopt;
    const StitchIndex drawn = chart.row(substitution.row).at(substitution.column);
    const StitchCatalogue& stitches = *chart.stitches;
    if (drawn == kCovered || stitches.spans()[drawn] != stitches.spans()[*stitch])
        return std::nullopt;
    for (const Segment& segment : path) {
        if (substitution.column < segment.first || substitution.column > segment.last) continue;
        if (segment.isBox() && times[static_cast<std::size_t>(segment.repeat)] == 0) continue;
        const StitchIndex both[] = {*stitch, drawn};
        return tallyOf({both, 1}, stitches) - tallyOf({both + 1, 1}, stitches);
    }
    return std::nullopt;
}

RowForms formsOf(const Chart& chart, int rowIndex, const Size& size, const Path& path,
                 const Times& times) {
    RowForms forms;
    Tally known;
    const Row& row = chart.row(rowIndex);
    for (const Segment& segment : path) {
        const Tally tally = row.tally(segment.first, segment.last);
        const auto n = segment.isBox() ? times[static_cast<std::size_t>(segment.repeat)] : 1;
        if (n) {
            known += {tally.takes * *n, tally.makes * *n};
        } else {
            forms.takes.add(segment.repeat, tally.takes);
            forms.makes.add(segment.repeat, tally.makes);
        }
    }
    for (const Substitution& substitution : size.substitutions) {
        if (substitution.row != rowIndex) continue;
        if (const auto effect = substitutionEffect(chart, substitution, path, times))
            known += *effect;
    }
    forms.takes.add(known.takes);
    forms.makes.add(known.makes);
    return forms;
}

}  // namespace lacewright
