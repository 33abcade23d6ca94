#pragma once

#include <vector>

#include "app/canvas/tile_cache.h"
#include "app/canvas/view_scene.h"

namespace lacewright::app {

// The state of every cell of a row between two columns, right <= left: states[0] is column `right`.
// Beyond the chosen size nothing is marked, as it is not worked.
void fillStates(const ViewScene& scene, int row, int right, int left,
                std::vector<TileState>& states);

}  // namespace lacewright::app
