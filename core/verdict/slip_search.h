#pragma once

#include <vector>

#include "core/verdict/explanation.h"
#include "core/verdict/slip_evidence.h"
#include "core/verdict/slip_trial.h"
#include "core/verdict/wording_odds.h"

namespace lacewright {

// Which single slip in written rows makes them fail: each stitch of the rows in question is worked
// otherwise, left out or joined by another, the whole text is proven again, and what makes it whole
// is weighed by how usual such a slip is and how well the row then agrees with the others.
class SlipSearch {
 public:
    // Requires: the pattern outlives the search.
    SlipSearch(const WrittenPattern& pattern, std::size_t size);

    enum class Explained : std::uint8_t {
        Not,    // by no single slip; the finding is as it was
        Alone,  // and others remain
        Size,   // the first mend is for the size alone, and leaves nothing wrong with that
        Whole   // the first mend leaves nothing wrong with the text
    };
    // Gives suspects and mends, the likeliest first, to a finding about counts or about a row that
    // cannot be counted; the weights of a mere note add up to the chance that there is a slip at
    // all.
    Explained adviseOn(Finding& finding);
    // What the searches so far could not do, as a sentence; empty when there is nothing to tell.
    std::string limits() const;

 private:
    // slip_search.cpp
    std::vector<Explanation> search(const Finding& finding);
    std::vector<std::size_t> rowsToTry(const Finding& finding) const;
    void tryRow(std::size_t row, const Finding& finding, std::vector<Explanation>& found);
    int costOfFollowing() const;
    std::size_t statedWronglyBy(const WrittenProof& proof, const Finding& finding) const;
    std::optional<std::size_t> rowOf(const Finding& finding) const;
    bool explains(const WrittenProof& proof, const WrittenProof& written,
                  const Finding& finding) const;
    std::optional<Explanation> explanation(std::size_t row, const SlipUndone& slip,
                                           const WrittenProof& proof);
    bool isPlain(std::size_t row) const;

    // slip_search_counts.cpp
    std::optional<std::size_t> pieceOf(int row) const;
    const std::optional<WrittenCastOn>& castOnOf(std::optional<std::size_t> piece) const;
    void tryCastOn(const Finding& finding, std::vector<Explanation>& found);
    void tryStated(const Finding& finding, std::vector<Explanation>& found);
    void tryAgain(std::size_t again, const Finding& finding, std::vector<Explanation>& found);
    // What the trial now says, if that explains the finding; the trial is then reset.
    void addIfExplains(Explanation one, double odds, const Finding& finding,
                       std::vector<Explanation>& found);

    // slip_search_mends.cpp
    std::vector<Suspect> suspectsIn(const std::vector<Explanation>& found, double chance) const;
    std::vector<std::size_t> offered(std::vector<Explanation>& found, const Finding& finding,
                                     bool everySize);
    bool mendsEverySize(Explanation& explanation, const Finding& finding);
    Mend mendFor(const Explanation& explanation) const;

    const WrittenPattern& pattern_;
    std::size_t size_;
    WrittenProof proof_;
    std::vector<Working> letters_;
    SlipTrial trial_;
    SlipEvidence evidence_;
    WordingOdds wording_;
    int costLeft_ = 0;  // rows that may still be proven for a finding
    bool cutShort_ = false;
};

}  // namespace lacewright
