#include "core/check/misfits.h"

#include <algorithm>
#include <cstdlib>
#include <tuple>

#include "core/count/needle.h"
#include "core/count/tally.h"

namespace lacewright {
namespace {

constexpr int kMostOff = 4;  // loops by which a row is thought to be wrong
constexpr std::size_t kMostWays = 8;

std::vector<int> repeatsOn(const Path& path) {
    std::vector<int> repeats;
    for (const Segment& segment : path) {
        if (segment.isBox()) repeats.push_back(segment.repeat);
    }
    std::sort(repeats.begin(), repeats.end());
    return repeats;
}

Link::Excess unknown(const Chart& chart) {
    return Link::Excess(chart.repeats.size() + 1);
}

Link::Excess allFit(const Chart& chart) {
    return Link::Excess(chart.repeats.size() + 1, 0);
}

// What `form` says for the edges and for each repeat.
Link::Excess byGroup(const Chart& chart, const AffineForm& form) {
    auto excess = unknown(chart);
    excess[0] = static_cast<int>(form.constant());
    for (std::size_t i = 0; i < chart.repeats.size(); ++i) {
        excess[i + 1] = static_cast<int>(form.coefficient(static_cast<Variable>(i)));
    }
    return excess;
}

// The repeat that a row has for itself: its loops are not counted by it yet. -1: there is none.
int ownRepeat(const std::vector<int>& repeats, const AffineForm& takes,
              const AffineForm& available) {
    const auto isOwn = [&](int repeat, bool taking) {
        const auto variable = static_cast<Variable>(repeat);
        return available.coefficient(variable) == 0 && (takes.coefficient(variable) > 0) == taking;
    };
    for (const bool taking : {true, false}) {
        for (const int repeat : repeats) {
            if (isOwn(repeat, taking)) return repeat;
        }
    }
    return -1;
}

// A row that works a repeat of its own on loops that hold no whole number of it: the changes of the
// repeat, of the edges or of both with which they do, the least first. A repeat of one stitch goes
// into any number: that comes after all others. `hasEdges`: the row works cells outside its
// repeats.
std::vector<Link::Excess> againstWhole(const Chart& chart, int repeat, const AffineForm& takes,
                                       const AffineForm& available, bool hasEdges) {
    const auto own = static_cast<Variable>(repeat);
    const std::int64_t each = takes.coefficient(own);
    const AffineForm inRepeats = available - takes + AffineForm::of(own, each);
    const auto divides = [](const AffineForm& all, std::int64_t part) {
        return part > 0 && all.constant() % part == 0 &&
               (!all.isConstant() || all.constant() >= part) &&
               std::all_of(all.terms().begin(), all.terms().end(),
                           [part](const auto& term) { return term.coefficient % part == 0; });
    };
    struct Way {
        bool trivial;
        int off;  // in all
        Link::Excess excess;
    };
    std::vector<Way> ways;
    for (int inBox = -kMostOff; inBox <= kMostOff; ++inBox) {
        for (int atEdges = -kMostOff; atEdges <= kMostOff; ++atEdges) {
            const int off = std::abs(inBox) + std::abs(atEdges);
            const std::int64_t part = each - inBox;
            if (off > kMostOff || (atEdges != 0 && !hasEdges) ||
                !divides(inRepeats + AffineForm(atEdges), part))
                continue;
            Way& way = ways.emplace_back(Way{part == 1, off, allFit(chart)});
            way.excess[0] = atEdges;
            way.excess[static_cast<std::size_t>(repeat) + 1] = inBox;
        }
    }
    std::stable_sort(ways.begin(), ways.end(), [](const Way& a, const Way& b) {
        return std::tie(a.trivial, a.off) < std::tie(b.trivial, b.off);
    });
    if (ways.size() > kMostWays) ways.resize(kMostWays);
    std::vector<Link::Excess> all;
    all.reserve(ways.size());
    for (Way& way : ways) all.push_back(std::move(way.excess));
    return all;
}

// The first row against a cast-on that it does not fit.
Link::Excess againstCastOn(const Chart& chart, const AffineForm& takes) {
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
            links.rows.push_back(linkOf(row, fit));
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
    bool hasEdges(int row) const {
        const auto groups = groupsOf(pathOn(chart_, row, nullptr), chart_.width);
        return std::count(groups.begin(), groups.end(), kOutsideRepeats) > 0;
    }
    Link linkOf(int row, const Fit& fit) const {
        std::vector<Link::Excess> ways;
        const bool takesNothing = row == 0 && chart_.castOn && form(0).takes.isConstant();
        if (fit.kind == FitKind::NotWhole || (takesNothing && !fit.fits())) {
            const int own =
                ownRepeat(repeats_[static_cast<std::size_t>(row)], fit.required, fit.available);
            if (own >= 0)
                ways = againstWhole(chart_, own, fit.required, fit.available, hasEdges(row));
        }
        if (ways.empty()) return {row - 1, excessOf(row, fit), {}};
        return {row - 1, ways.front(), {ways.begin() + 1, ways.end()}};
    }
    Link::Excess excessOf(int row, const Fit& fit) const {
        if (fit.fits()) return allFit(chart_);
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
        links.closing = Link{last, byGroup(chart_, form(first).takes - there), {}};
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
