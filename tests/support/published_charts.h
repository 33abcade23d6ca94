#pragma once

#include <string>
#include <vector>

#include "core/chart/chart.h"

namespace lacewright::test {

struct PublishedText {
    std::string name;  // of its file
    std::string text;
};

// The handbook texts in tests/data/handbook whose verdict, reached outside this project, is sturdy
// and knittable.
std::vector<PublishedText> publishedTexts();

// Charts of published patterns and of samples that can be knitted: those texts drawn as charts,
// then the charts in samples/. Each is named after its file. Left out are texts of one
// row, charts in which nothing is shaped, and charts that do not check without a fault.
std::vector<Chart> publishedCharts();

// The knitting of the chart falls on itself when it is shifted, or held to an upright mirror, or
// both (a glide): within one of its repeats, whose edges meet, or in the whole chart. Every stitch
// but those of edges outside the repeat must do so.
bool hasExactSymmetry(const Chart& chart);

}  // namespace lacewright::test
