#pragma once

#include <string_view>
#include <vector>

#include "core/stitch/catalogue.h"

namespace lacewright {

// A decrease of purl stitches, by its id.
bool isPurled(std::string_view id);

// The mirror image of a stitch as a chart draws it: that of the catalogue or, of a leaning stitch,
// the one that the chart draws most often of those that count the same and lean the other way, as
// "skp" is for "k2tog" in books that know no "ssk". The stitch itself if it has none. `cells`: how
// often each stitch is drawn, by index.
StitchIndex mirrorPartner(const StitchCatalogue& stitches, StitchIndex index,
                          const std::vector<int>& cells);

}  // namespace lacewright
