#include "core/plan/trade_offs.h"

#include "core/base/length.h"
#include "core/base/text.h"

namespace lacewright {
namespace {

constexpr double kVisible = 0.05;  // cm, what shows as a tenth

std::string columnsOf(const EdgeChoice& choice) {
    return "columns " + std::to_string(choice.reach.start) + " to " +
           std::to_string(choice.reach.end) + ", " +
           counted(choice.stitches, "stitch", "stitches") + ", difference " +
           differenceText(choice.differenceCm);
}

}  // namespace

std::string differenceText(double cm) {
    return (cm >= kVisible ? "+" : "") + lengthText(cm);
}

std::string choiceWords(const EdgeChoice& choice) {
    std::vector<std::string> words;
    if (!choice.fits) words.emplace_back("its rows do not fit one another");
    if (choice.parted > 0)
        words.push_back("its edges part " + counted(choice.parted, "pair", "pairs"));
    words.push_back(choice.mirrored ? "mirrored"
                    : choice.offCentre == 0
                        ? "centred"
                        : "off centre by " + counted(choice.offCentre, "column", "columns"));
    return join(words, "; ");
}

std::vector<std::string> tradeOffs(const PlannedSize& planned) {
    std::vector<std::string> given;
    if (planned.nearer) {
        given.push_back("nearer, but with " +
                        (planned.nearer->fits
                             ? counted(planned.nearer->parted, "pair", "pairs") + " parted"
                             : std::string("rows that do not fit")) +
                        ": " + columnsOf(*planned.nearer));
    }
    if (planned.centred) given.push_back("better centred: " + columnsOf(*planned.centred));
    return given;
}

}  // namespace lacewright
