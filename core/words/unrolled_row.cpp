#include "core/words/unrolled_row.h"

#include <algorithm>
#include <map>

#include "core/count/needle.h"
#include "core/stitch/catalogue.h"
#include "core/words/worked_row.h"

namespace lacewright {
namespace {

using Keys = std::map<std::string, std::string, std::less<>>;

Keys keysOf(Side side) {
    Keys keys;
    std::map<std::string, std::string> firstWith;  // by abbreviation
    const StitchCatalogue& stitches = *builtInStitches();
    for (std::size_t i = 1; i <= stitches.size(); ++i) {
        const Stitch& stitch = stitches[static_cast<StitchIndex>(i)];
        const SideWording& wording = side == Side::Right ? stitch.rightSide : stitch.wrongSide;
        keys[stitch.id] = wording.abbreviation.empty()
                              ? stitch.id
                              : firstWith.emplace(wording.abbreviation, stitch.id).first->second;
    }
    return keys;
}

}  // namespace

std::string workKey(const std::string& id, Side side) {
    static const Keys right = keysOf(Side::Right);
    static const Keys wrong = keysOf(Side::Wrong);
    const Keys& keys = side == Side::Right ? right : wrong;
    const auto found = keys.find(id);
    return found == keys.end() ? id : found->second;
}

std::optional<std::vector<UnrolledStitch>> unrolledRow(const WrittenPattern& pattern,
                                                       const WrittenRow& row, std::size_t size,
                                                       const CountedRow& counted,
                                                       const OpenCounts& counts) {
    WrittenRowProof proof;
    proof.counted = counted;
    const auto most = static_cast<std::int64_t>(kMostUnrolled);
    std::int64_t loops = 0;
    for (const OwnCount& own : counted.own) {
        const auto found = counts.find(own.variable);
        if (found == counts.end() || found->second < 0 || found->second > most) return {};
        loops += found->second * std::max<std::int64_t>(1, own.takes + own.makes);
        if (loops > most) return {};
        proof.fit.solved[own.variable] = AffineForm(found->second);
    }
    const Result<WorkedRow> worked = workedRow(pattern, row, proof, size);
    if (!worked) return {};
    std::vector<UnrolledStitch> stitches;
    for (const RowStitch& stitch : unrolled(*worked, [](Variable) { return 0; })) {
        const int yarnOvers = stitch.id == "yo2" ? 2 : stitch.id == "yo3" ? 3 : 0;
        for (int i = 0; i < yarnOvers; ++i)
            stitches.push_back({workKey("yo", row.side), 0, 1, stitch.place, false});
        if (yarnOvers > 0) continue;
        stitches.push_back({workKey(stitch.id, row.side), stitch.takes, stitch.makes, stitch.place,
                            stitch.presents});
    }
    return stitches;
}

std::optional<std::vector<UnrolledStitch>> unrolledOver(const WrittenPattern& pattern,
                                                        const WrittenRow& row, std::size_t size,
                                                        const CountedRow& counted,
                                                        std::int64_t loops,
                                                        const OpenCounts& named) {
    if (counted.wrongRest || !counted.uncountable.empty() || loops < 0 ||
        loops > static_cast<std::int64_t>(kMostUnrolled))
        return {};
    const Needle needle(CastOn{0, static_cast<int>(loops), {}}, 0);
    const auto known = [&named](const AffineForm& form) {
        AffineForm rest(form.constant());
        for (const AffineForm::Term& term : form.terms()) {
            const auto found = named.find(term.variable);
            if (found == named.end())
                rest.add(term.variable, term.coefficient);
            else
                rest.add(term.coefficient * found->second);
        }
        return rest;
    };
    std::vector<Demand> demands = counted.demands;
    for (Demand& demand : demands) demand.form = known(demand.form);
    const Fit fit = needle.fit(known(counted.forms.takes), demands);
    if (!fit.fits() || !fit.freed.empty()) return {};
    OpenCounts counts = named;
    for (const auto& [variable, times] : fit.solved) counts[variable] = times.constant();
    return unrolledRow(pattern, row, size, counted, counts);
}

}  // namespace lacewright
