#include "tests/bench/mutation_corpora.h"

#include <memory>
#include <utility>

#include "tests/support/motifs.h"
#include "tests/support/published_charts.h"

namespace lacewright::test {

CorpusHalf halfNamed(const std::string& name) {
    return name == "tune" ? CorpusHalf::Tune : name == "held" ? CorpusHalf::Held : CorpusHalf::All;
}

std::vector<MutationCorpus> mutationCorpora(CorpusHalf half) {
    std::vector<MutationCorpus> all;
    const auto published = std::make_shared<std::vector<CorpusChart>>();
    for (Chart& chart : halfOf(publishedCharts(), half)) {
        const bool symmetric = hasExactSymmetry(chart);
        published->push_back({std::move(chart), symmetric});
    }
    all.push_back({"published", true, [published](std::mt19937& random) {
                       return (*published)[random() % published->size()];
                   }});
    for (const Symmetry symmetry : {Symmetry::Mirror, Symmetry::MirrorAndDiagonals,
                                    Symmetry::Translation, Symmetry::Diagonals, Symmetry::None}) {
        const bool symmetric = symmetry != Symmetry::Diagonals && symmetry != Symmetry::None;
        all.push_back({nameOf(symmetry), false, [symmetry, symmetric](std::mt19937& random) {
                           return CorpusChart{randomMotif(symmetry, random), symmetric};
                       }});
    }
    return all;
}

}  // namespace lacewright::test
