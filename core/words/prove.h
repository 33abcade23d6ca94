#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/count/needle.h"
#include "core/words/row_forms.h"
#include "core/words/written.h"

namespace lacewright {

// "(41 sts)" where the row leaves another number.
struct StatedMismatch {
    Place place;
    std::int64_t stated = 0;
    AffineForm counted;
};

enum class RowVerdict {
    Fits,
    Misfits,    // uses more or fewer loops than there are
    WrongRest,  // "to last 2 sts" before something that takes another number
    Uncountable
};

struct WrittenRowProof {
    int number = 1;
    RowVerdict verdict = RowVerdict::Fits;
    CountedRow counted;  // the reading taken
    Fit fit;             // against the loops on the needle
    AffineForm before;   // loops on the needle before and after the row, in free counts
    AffineForm after;
    std::optional<StatedMismatch> stated;
};

// Rows that a sentence repeats, as often as they were worked.
struct RowsAgainProof {
    int times = 0;
    std::optional<StatedMismatch> stated;  // another count than the sentence says or asks for
};

// What is true of the written rows for every number of repeats the cast-on allows.
// n, the free count, is the r of "multiple * r + plus"; where no cast-on is given it is how often
// the first starred repeat is worked. After a fault counting starts afresh from that row as
// written.
struct WrittenProof {
    bool knittable = true;
    // The last row leaves what the first one found; nothing when the rows are not knittable or are
    // those of several pieces.
    std::optional<bool> closes;
    // The same against the row that the pattern is repeated from, if there is one; a fault above
    // that row makes it false.
    std::optional<bool> closesFrom;
    AffineForm growth;                    // of one repeat of all the rows, where it is knittable
    std::vector<std::size_t> faulty;      // indices into rows, in working order
    std::vector<WrittenRowProof> rows;    // in the order of WrittenPattern::rows
    std::vector<RowsAgainProof> again;    // in the order of WrittenPattern::again
    std::optional<CastOn> castOn;         // as given, or as the first starred row demands it
    std::vector<std::string> countNames;  // WrittenPattern::counts

    // "n" for the free count of the cast-on, "m", "m1".. for a row's own; the pattern's own names.
    std::string nameOf(Variable variable) const;
    const WrittenRowProof* firstFault() const {
        return faulty.empty() ? nullptr : &rows[faulty.front()];
    }
};

// `size` counts from 0. Requires: size < pattern.sizeCount().
WrittenProof proveWritten(const WrittenPattern& pattern, std::size_t size = 0);

}  // namespace lacewright
