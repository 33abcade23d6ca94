#include "core/check/misfits.h"

#include <algorithm>

#include "core/count/needle.h"
#include "core/count/tally.h"

namespace lacewright {
namespace {

constexpr int kMostOff = 4;  // loops by which a repeat is thought to be wrong

std::vector<int> repeatsOn(const Path& path) {
    std::vector<int> repeats;
    for (const Segment& segment : path) {
        if (segment.isBox()) repeats.push_back(segment.repeat);
    }
    std::sort(repeats.begin(), repeats.end());
    return repeats;
}

std::vector<std::optional<int>> unknown(const Chart& chart) {
    return std::vector<std::optional<int>>(chart.repeats.size() + 1);
}

std::vector<std::optional<int>> allFit(const Chart& chart) {
    return std::vector<std::optional<int>>(chart.repeats.size() + 1, 0);
}

// What `form` says for the edges and for each repeat.
std::vector<std::optional<int>> byGroup(const Chart& chart, const AffineForm& form) {
    auto excess = unknown(chart);
    excess[0] = static_cast<int>(form.constant());
    for (std::size_t i = 0; i < chart.repeats.size(); ++i) {
        excess[i + 1] = static_cast<int>(form.coefficient(static_cast<Variable>(i)));
    }
    return excess;
}

// A row that works a repeat of its own on loops that hold no whole number of it: the least change
// of the repeat, or else of the edges, with which they do.
std::vector<std::optional<int>> againstWhole(const Chart& chart, const AffineForm& takes,
                                             const AffineForm& available) {
    auto excess = unknown(chart);
    const auto own =
        std::find_if(takes.terms().begin(), takes.terms().end(), [&](const AffineForm::Term& term) {
            return static_cast<std::size_t>(term.variable) < chart.repeats.size() &&
                   available.coefficient(term.variable) == 0;
        });
    if (own == takes.terms().end()) return excess;
    const AffineForm inRepeats =
        available - takes + AffineForm::of(own->variable, own->coefficient);
    const auto divides = [](const AffineForm& all, std::int64_t part) {
        return part > 1 && all.constant() % part == 0 &&
               (!all.isConstant() || all.constant() >= part) &&
               std::all_of(all.terms().begin(), all.terms().end(),
                           [part](const auto& term) { return term.coefficient % part == 0; });
    };
    for (int by = 1; by <= kMostOff; ++by) {
        for (const int off : {by, -by}) {
            const bool inBox = divides(inRepeats, own->coefficient - off);
            if (!inBox && !divides(inRepeats + AffineForm(off), own->coefficient)) continue;
            excess = allFit(chart);
            excess[inBox ? static_cast<std::size_t>(own->variable) + 1 : 0] = off;
            return excess;
        }
    }
    return excess;
}

// The first row against a cast-on that it does not fit.
std::vector<std::optional<int>> againstCastOn(const Chart& chart, const AffineForm& takes) {
    const CastOn& castOn = *chart.castOn;
    auto excess = unknown(chart);
    const auto off = static_cast<int>(takes.constant()) - castOn.plus;
    if (castOn.multiple == 0) {
        if (takes.isConstant()) excess = byGroup(chart, takes - AffineForm(castOn.plus));
        return excess;
    }
    if (takes.terms().size() != 1) return excess;
    const auto [repeat, each] = takes.terms().front();
    excess = allFit(chart);
    excess[static_cast<std::size_t>(repeat) + 1] = static_cast<int>(each) - castOn.multiple;
    excess[0] = off;
    return excess;
}

class LinkBuilder {
 public:
    explicit LinkBuilder(const Chart& chart) : chart_(chart), bands_(pathBands(chart, nullptr)) {
        for (const PathBand& band : bands_) {
            const auto repeats = repeatsOn(band.path);
            for (int row = band.firstRow; row <= band.lastRow; ++row) {
                forms_.push_back(formsOf(chart.row(row), band.path));
                repeats_.push_back(repeats);
            }
        }
    }

    Links build() const {
        Links links;
        const auto r = static_cast<Variable>(chart_.repeats.size());
        Needle needle = chart_.castOn ? Needle(*chart_.castOn, r) : Needle();
        for (int row = 0; row < chart_.height(); ++row) {
            const Fit fit = needle.fit(form(row).takes);
            links.rows.push_back({row - 1, excessOf(row, fit)});
            needle.work(form(row), fit);
        }
        if (chart_.rowRepeat) close(links);
        return links;
    }

 private:
    const RowForms& form(int row) const { return forms_[static_cast<std::size_t>(row)]; }
    bool sameRepeats(int a, int b) const {
        return repeats_[static_cast<std::size_t>(a)] == repeats_[static_cast<std::size_t>(b)];
    }
    std::vector<std::optional<int>> excessOf(int row, const Fit& fit) const {
        if (fit.fits()) return allFit(chart_);
        if (fit.kind == FitKind::NotWhole) {
            auto excess = againstWhole(chart_, fit.required, fit.available);
            if (excess[0]) return excess;
        }
        if (row == 0) return chart_.castOn ? againstCastOn(chart_, form(0).takes) : allFit(chart_);
        if (sameRepeats(row, row - 1))
            return byGroup(chart_, form(row).takes - form(row - 1).makes);
        return byGroup(chart_, fit.required - fit.available);
    }
    void close(Links& links) const {
        const int first = chart_.rowRepeat->firstRow;
        const int last = chart_.rowRepeat->lastRow;
        if (!sameRepeats(first, last)) return;
        links.closingRow = first;
        const AffineForm there = form(last).makes - AffineForm(chart_.rowRepeat->grows);
        links.closing = Link{last, byGroup(chart_, form(first).takes - there)};
        // A growing repeat may close with more repeats across: a matter of its own.
        if (chart_.rowRepeat->grows != 0 && !links.closing->fits()) links.closing.reset();
    }

    const Chart& chart_;
    std::vector<PathBand> bands_;
    std::vector<RowForms> forms_;
    std::vector<std::vector<int>> repeats_;
};

}  // namespace

bool Link::fits() const {
    return std::all_of(excess.begin(), excess.end(), [](const auto& e) { return e && *e == 0; });
}

bool Links::fit() const {
    const auto faulty = faults();
    return std::none_of(faulty.begin(), faulty.end(), [](bool fault) { return fault; });
}

std::vector<bool> Links::faults() const {
    std::vector<bool> faulty;
    for (const Link& link : rows) faulty.push_back(!link.fits());
    faulty.push_back(closing && !closing->fits());
    return faulty;
}

Links linksOf(const Chart& chart) {
    return LinkBuilder(chart).build();
}

std::vector<int> groupsOf(const Path& path, int width) {
    std::vector<int> groups(static_cast<std::size_t>(width), kOutsideRepeats);
    for (const Segment& segment : path) {
        if (!segment.isBox()) continue;
        for (int column = segment.first; column <= segment.last; ++column) {
            groups[static_cast<std::size_t>(column - 1)] = segment.repeat;
        }
    }
    return groups;
}

}  // namespace lacewright
