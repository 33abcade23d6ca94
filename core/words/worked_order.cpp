#include "core/words/worked_order.h"

#include "core/words/marker_places.h"

namespace lacewright {

namespace {

void append(WrittenPattern& to, const WrittenPattern& pattern, int first, int last) {
    for (const WrittenRow& row : pattern.rows) {
        if (row.number < first || row.number > last) continue;
        if (to.rows.size() >= kMostWorkedRows) return;
        to.rows.push_back(row);
    }
}

}  // namespace

WrittenPattern inWorkingOrder(const WrittenPattern& pattern, const WrittenProof& proof) {
    WrittenPattern out = pattern;
    if (pattern.again.empty()) {
        settleMarkers(out);
        return out;
    }
    out.rows.clear();
    out.again.clear();
    std::size_t again = 0;
    for (const WrittenRow& row : pattern.rows) {
        append(out, pattern, row.number, row.number);
        for (; again < pattern.again.size() && pattern.again[again].after <= row.number; ++again) {
            for (int pass = 0; pass < proof.again[again].times; ++pass)
                append(out, pattern, pattern.again[again].first, pattern.again[again].last);
        }
    }
    bool found = false;  // the first row with the number that is repeated from
    for (std::size_t i = 0; i < out.rows.size(); ++i) {
        WrittenRow& row = out.rows[i];
        if (!found && pattern.repeatFrom == row.number) {
            out.repeatFrom = static_cast<int>(i) + 1;
            found = true;
        }
        row.number = static_cast<int>(i) + 1;
        const bool flat = pattern.worked == Worked::Flat;
        if (flat && i > 0)
            row.side = out.rows[i - 1].side == Side::Right ? Side::Wrong : Side::Right;
    }
    settleMarkers(out);
    return out;
}

}  // namespace lacewright
