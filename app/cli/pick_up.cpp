#include "core/plan/pick_up.h"

#include <ostream>

#include "app/cli/measures.h"
#include "app/cli/verb.h"

// Stitches picked up along the side of a piece.
namespace lacewright::cli {
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
    call.out << pickUpSentence(*plan) << ".\n"
             << "By heart: " << ratioWords(plan->simple) << ".\n";
    return kDone;
}

}  // namespace lacewright::cli
