#pragma once

#include <vector>

#include "app/canvas/view_scene.h"

namespace lacewright::app {

// What the findings mark in the rows that are in sight, to learn which of those rows an edit
// somewhere else changed. Costs as much as rows are seen, however many findings there are.
class VisibleMarks {
 public:
    // Remembers the marks as the scene has them now, and gives the rows (indices) whose marks are
    // others than remembered. Rows not remembered before are not given.
    std::vector<int> refresh(const ViewScene& scene);

 private:
    int firstRow_ = 0;
    std::vector<std::size_t> prints_;  // a hash of each row's marks, from firstRow_ upward
};

}  // namespace lacewright::app
