#pragma once

#include <functional>
#include <random>
#include <string>
#include <vector>

#include "core/chart/chart.h"

// The correct charts that slips are put into.
namespace lacewright::test {

struct CorpusChart {
    Chart chart;
    bool symmetric = false;  // falls on itself exactly, see hasExactSymmetry
};

struct MutationCorpus {
    std::string name;
    bool published = false;  // patterns from handbooks and samples; else made up at random
    std::function<CorpusChart(std::mt19937&)> draw;
};

// Which of the published patterns are taken: every second one, the others, or all.
enum class CorpusHalf { All, Tune, Held };

// Published patterns and samples, and random motifs of every kind of symmetry. A random motif
// counts as symmetric by its kind: mirrors and copies do.
std::vector<MutationCorpus> mutationCorpora(CorpusHalf half);

}  // namespace lacewright::test
