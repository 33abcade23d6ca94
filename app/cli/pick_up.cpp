#include "core/plan/pick_up.h"

#include <ostream>

#include "app/cli/measures.h"
#include "app/cli/verb.h"
#include "core/base/text.h"

// Stitches picked up along the side of a piece.
namespace lacewright::cli {
namespace {

std::string words(const Ratio& ratio) {
    return counted(ratio.stitches, "stitch", "stitches") + " for every " +
           (ratio.rows == 1 ? "row" : std::to_string(ratio.rows) + " rows");
}

}  // namespace

int runPickUp(const Call& call) {
    if (call.files.size() != 1) return call.refuse("pick-up takes one number of rows.");
    const auto rows = wholeIn(call.files[0]);
    if (!rows) {
        return call.refuse("pick-up takes the number of rows along the edge, not \"" +
                           call.files[0] + "\".");
    }
    if (!call.has("--gauge")) return call.refuse("pick-up needs --gauge, such as 24x32.");
    const auto gauge = gaugeFrom(call.get("--gauge"));
    if (!gauge) return call.refuse(gauge.error().text());
    const auto plan = planPickUp(gauge->stitches, gauge->rows, *rows);
    if (!plan) return call.refuse(plan.error().text());
    call.out << counted(plan->stitches, "stitch", "stitches") << " along "
             << counted(plan->rows, "row", "rows") << ": " << plan->recipe << ".\n"
             << "By heart: " << words(plan->simple) << ".\n";
    return kDone;
}

}  // namespace lacewright::cli
