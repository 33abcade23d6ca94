#include "app/cli/plan_report.h"

#include <cmath>

#include "core/base/text.h"
#include "core/plan/trade_offs.h"

namespace lacewright::cli {
namespace {

void tellSize(std::ostream& out, const PlannedSize& size) {
    const EdgeChoice& chosen = size.chosen;
    out << "Size " << size.wanted.name << ": wanted " << lengthText(size.wanted.cm) << ", reached "
        << lengthText(chosen.cm) << ", difference " << differenceText(chosen.differenceCm) << "; "
        << choiceWords(chosen) << ".\n";
    for (const std::string& given : tradeOffs(size)) out << "    " << given << "\n";
}

// Hundredths of a millimetre are more than any needle can tell.
double rounded(double length) {
    const double whole = std::round(length * 1e4);
    return whole == 0 ? 0 : whole / 1e4;
}

void addLength(ObjectWriter& out, const std::string& name, double cm) {
    out.decimal(name + "Cm", rounded(cm));
    out.decimal(name + "Inches", rounded(inchesOf(cm)));
}

std::string jsonOf(const EdgeChoice& choice) {
    ObjectWriter out;
    out.number("start", choice.reach.start);
    out.number("end", choice.reach.end);
    out.number("times", choice.times);
    out.number("stitches", choice.stitches);
    addLength(out, "reached", choice.cm);
    addLength(out, "difference", choice.differenceCm);
    out.raw("fits", choice.fits ? "true" : "false");
    out.number("parted", choice.parted);
    out.raw("mirrored", choice.mirrored ? "true" : "false");
    out.number("offCentre", choice.offCentre);
    return out.onOneLine();
}

}  // namespace

void tellPlan(std::ostream& out, const PlanReport& report) {
    out << "\n";
    for (const PlannedSize& size : report.plan.sizes) tellSize(out, size);
    if (report.length) {
        out << "Length: " << counted(report.length->rows, "row", "rows") << ", the row repeat "
            << counted(report.length->repeats, "time", "times") << ": "
            << lengthText(report.length->cm) << ", difference "
            << differenceText(report.length->differenceCm) << ".\n";
    }
    for (const std::string& sentence : report.lost) out << sentence << "\n";
}

void addPlan(ObjectWriter& out, const PlanReport& report) {
    std::vector<std::string> sizes;
    for (const PlannedSize& size : report.plan.sizes) {
        ObjectWriter one;
        one.text("size", size.wanted.name);
        addLength(one, "wanted", size.wanted.cm);
        one.raw("chosen", jsonOf(size.chosen));
        if (size.nearer) one.raw("nearer", jsonOf(*size.nearer));
        if (size.centred) one.raw("centred", jsonOf(*size.centred));
        sizes.push_back(one.onOneLine());
    }
    out.raw("plan", listOnOneLine(sizes));
    if (report.length) {
        ObjectWriter length;
        addLength(length, "wanted", report.wantedLengthCm);
        length.number("repeats", report.length->repeats);
        length.number("rows", report.length->rows);
        addLength(length, "reached", report.length->cm);
        addLength(length, "difference", report.length->differenceCm);
        out.raw("length", length.onOneLine());
    }
    if (!report.lost.empty()) {
        std::vector<std::string> lost;
        for (const std::string& sentence : report.lost) {
            ObjectWriter quoted;
            quoted.text("message", sentence);
            lost.push_back(quoted.onOneLine());
        }
        out.raw("lost", listOnOneLine(lost));
    }
}

void addPlanColumns(TextTable& table, const Plan& plan) {
    for (const char* heading : {"wanted_cm", "wanted_in", "difference_cm", "difference_in", "fits",
                                "mirrored", "off_centre"})
        table[0].emplace_back(heading);
    for (std::size_t i = 0; i < plan.sizes.size(); ++i) {
        const PlannedSize& size = plan.sizes[i];
        for (const double cm : {size.wanted.cm, size.chosen.differenceCm}) {
            table[i + 1].push_back(tenths(cm));
            table[i + 1].push_back(tenths(inchesOf(cm)));
        }
        table[i + 1].emplace_back(size.chosen.fits ? "yes" : "no");
        table[i + 1].emplace_back(size.chosen.mirrored ? "yes" : "no");
        table[i + 1].push_back(std::to_string(size.chosen.offCentre));
    }
}

}  // namespace lacewright::cli
