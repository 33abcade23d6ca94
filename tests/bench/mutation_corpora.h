#pragma once

#include <functional>
#include <random>
#include <string>
#include <utility>
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
CorpusHalf halfNamed(const std::string& name);  // "tune", "held"; any other: all

template <class Item>
std::vector<Item> halfOf(std::vector<Item> items, CorpusHalf half) {
    std::vector<Item> kept;
    for (std::size_t i = 0; i < items.size(); ++i) {
        const bool tune = i % 2 == 0;
        if (half == CorpusHalf::All || tune == (half == CorpusHalf::Tune))
            kept.push_back(std::move(items[i]));
    }
    return kept;
}

// Published patterns and samples, and random motifs of every kind of symmetry. A random motif
// counts as symmetric by its kind: mirrors and copies do.
std::vector<MutationCorpus> mutationCorpora(CorpusHalf half);

}  // namespace lacewright::test
