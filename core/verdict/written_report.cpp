#include "core/verdict/written_report.h"

#include <algorithm>
#include <utility>

#include "core/base/text.h"
#include "core/check/sentences.h"
#include "core/verdict/told_findings.h"

namespace lacewright {
namespace {

Finding finding(const char* rule, Severity severity, int row, std::string message) {
    Finding result;
    result.rule = rule;
    result.severity = severity;
    result.row = row;
    result.message = std::move(message);
    return result;
}

// One size's proof turned into findings.
class Account {
 public:
    Account(const WrittenPattern& pattern, const WrittenProof& proof, std::size_t size,
            ToldFindings& findings)
        : pattern_(pattern), proof_(proof), size_(size), findings_(findings) {}

    void tell() {
        const AffineForm* before = nullptr;
        for (std::size_t i = 0; i < proof_.rows.size(); ++i) {
            if (beginsPiece(proof_.rows[i].number)) before = nullptr;
            tellRow(i, before);
            before = &proof_.rows[i].after;
        }
        endFault();
        for (std::size_t i = 0; i < proof_.again.size(); ++i) tellAgain(i);
        tellClosing();
    }

 private:
    std::string label(int number) const {
        const WrittenRow* row = number < 1 ? pattern_.findRow(number) : nullptr;
        if (row != nullptr) return row->label;  // "Set-up row"
        return (pattern_.worked == Worked::InTheRound ? "Round " : "Row ") + std::to_string(number);
    }
    bool beginsPiece(int number) const {
        return std::any_of(pattern_.pieces.begin(), pattern_.pieces.end(),
                           [&](const WrittenPiece& piece) { return piece.first == number; });
    }
    std::string words(const AffineForm& form) const {
        return form.text([this](Variable v) { return proof_.nameOf(v); });
    }
    // The count in the sentence, and among the numbers where it is one.
    std::string told(const AffineForm& form, std::vector<std::int64_t>& numbers) const {
        if (!form.isConstant()) return words(form);
        numbers.push_back(form.constant());
        return std::string(1, kNumberPlace);
    }
    void add(Finding what, const std::vector<std::int64_t>& numbers = {}) {
        findings_.add(std::move(what), size_, numbers);
    }

    void tellRow(std::size_t index, const AffineForm* before) {
        const WrittenRowProof& row = proof_.rows[index];
        switch (row.verdict) {
            case RowVerdict::Misfits:
                tellMisfit(index, before);
                break;
            case RowVerdict::WrongRest:
                tellRest(row);
                break;
            case RowVerdict::Uncountable:
                add(finding(
                    "uncountable", Severity::Fault, row.number,
                    label(row.number) + " cannot be counted: " + row.counted.uncountable + "."));
                break;
            case RowVerdict::Fits:
                tellBalance(row);
                break;
        }
        if (row.stated) {
            std::vector<std::int64_t> numbers{row.stated->stated};
            const std::string leaves = told(row.stated->counted, numbers);
            add(finding("stated-count", Severity::Warning, row.number,
                        label(row.number) + " says that " + kNumberPlace +
                            (row.stated->stated == 1 ? " stitch remains" : " stitches remain") +
                            ", but it leaves " + leaves + "."),
                numbers);
        }
        for (const TakenReading& reading : row.counted.readings) {
            if (reading.usual) continue;
            add(finding("reading", Severity::Note, row.number,
                        label(row.number) + " is read as \"" + reading.meaning +
                            "\", since only so it uses up the stitches there are."));
        }
    }

    void tellMisfit(std::size_t index, const AffineForm* before) {
        const WrittenRowProof& row = proof_.rows[index];
        MisfitPlace place;
        place.row = pattern_.worked == Worked::InTheRound ? "Round" : "Row";
        place.number = row.number;
        place.castOn = before == nullptr;
        place.name = label(row.number);
        if (!place.castOn) {
            const int below = proof_.rows[index - 1].number;
            place.below = (below < 1 ? "the " : "") + lowerAscii(label(below));
        }
        place.repeatName = [this](Variable v) {
            return isNamedCount(v) ? proof_.nameOf(v) : std::string();
        };
        place.variableName = [this](Variable v) { return proof_.nameOf(v); };
        const std::int64_t behind =
            row.counted.behind.isConstant() ? row.counted.behind.constant() : 0;
        Fit within = row.fit;
        for (AffineForm* form : {&within.required, &within.available}) form->add(-behind);
        for (std::int64_t* loops : {&within.exampleRequired, &within.exampleAvailable})
            *loops -= behind;
        std::string sentence = misfitSentence(place, within.required, within.available, within);
        if (behind > 0) {
            sentence.back() = ';';
            sentence += " beyond the turn " + stitchCount(behind) + " wait.";
        }
        tellFault(finding(place.castOn ? "cast-on" : "continuity", Severity::Fault, row.number,
                          std::move(sentence)),
                  row.fit.required - row.fit.available);
    }

    // What one row takes too few, the next that does not fit takes too many: a stitch was left out
    // or written twice, and both are told as one.
    void tellFault(Finding fault, const AffineForm& excess) {
        if (fault_ && excess_ + excess == AffineForm()) {
            fault_->folded.push_back(std::move(fault));
            endFault();
            return;
        }
        endFault();
        fault_ = std::move(fault);
        excess_ = excess;
    }
    void endFault() {
        if (fault_) add(std::move(*fault_));
        fault_.reset();
    }

    void tellRest(const WrittenRowProof& row) {
        const WrongRest& rest = *row.counted.wrongRest;
        add(finding("continuity", Severity::Fault, row.number,
                    label(row.number) + " leaves " + stitchCount(rest.said) +
                        " after its repeat, but what follows takes " +
                        std::to_string(rest.follows) + "."));
    }

    void tellBalance(const WrittenRowProof& row) {
        // Behind a row that does not fit it follows that the markers are lost.
        const bool lost = !proof_.faulty.empty() && proof_.firstFault()->number < row.number;
        if (row.counted.toUnknownPlace && !lost) {
            add(finding("marker", Severity::Note, row.number,
                        label(row.number) +
                            " goes to a marker or the like, and nothing says where that is; only "
                            "the row as a whole is counted."));
        }
        if (row.after != row.before) endFault();
        if (row.counted.left != AffineForm()) {
            add(finding("short-row", Severity::Note, row.number,
                        label(row.number) + " turns before its end: " + words(row.counted.left) +
                            " wait on the needle."));
        }
        const AffineForm net = row.after - row.before;
        if (net == AffineForm()) return;
        std::vector<std::int64_t> numbers;
        const std::string before = told(row.before, numbers);
        const std::string after = told(row.after, numbers);
        add(finding("balance", Severity::Note, row.number,
                    label(row.number) + " changes the count: " + before + " become " + after + "."),
            numbers);
    }

    void tellAgain(std::size_t index) {
        const auto& stated = proof_.again[index].stated;
        if (!stated) return;
        const RowsAgain& again = pattern_.again[index];
        const std::string rows = again.first == again.last
                                     ? label(again.first)
                                     : label(again.first) + " to " + std::to_string(again.last);
        const std::string worked = rows + ", worked again " +
                                   counted(proof_.again[index].times, "time", "times") +
                                   ", leave " + words(stated->counted);
        add(finding("stated-count", Severity::Warning, again.last,
                    worked + ", not the " + stitchCount(stated->stated) +
                        (again.until ? " they are to be worked to." : " that are said.")));
    }

    void tellClosing() {
        const auto& closes = pattern_.repeatFrom ? proof_.closesFrom : proof_.closes;
        if (!proof_.knittable || closes.value_or(true)) return;
        const int first = pattern_.repeatFrom.value_or(pattern_.rows.front().number);
        std::vector<std::int64_t> numbers;
        const std::string after = told(proof_.rows.back().after, numbers);
        add(finding("closing", pattern_.repeatFrom ? Severity::Warning : Severity::Note,
                    pattern_.rows.back().number,
                    label(pattern_.rows.back().number) + " leaves " + after +
                        ", which is not what " + lowerAscii(label(first)) +
                        " takes, so the rows cannot be worked again as written."),
            numbers);
    }

    const WrittenPattern& pattern_;
    const WrittenProof& proof_;
    std::size_t size_;
    ToldFindings& findings_;
    std::optional<Finding> fault_;  // the last misfit, while the next one may follow from it
    AffineForm excess_;             // by how much it takes too many
};

}  // namespace

WrittenReport reportOnRows(const ReadRows& read, const std::vector<std::size_t>& sizes) {
    const WrittenPattern& pattern = read.pattern;
    WrittenReport result;
    Report& report = result.report;
    report.knittable = true;
    std::optional<bool> closes = true;
    ToldFindings findings(pattern);
    for (const std::size_t size : sizes) {
        WrittenProof proof = proveWritten(pattern, size);
        Account(pattern, proof, size, findings).tell();
        report.knittable = report.knittable && proof.knittable;
        const auto own = pattern.repeatFrom && proof.knittable ? proof.closesFrom : proof.closes;
        closes = closes && own ? std::optional(*closes && *own) : std::nullopt;
        if (size != sizes.front()) continue;
        for (const WrittenRowProof& row : proof.rows) {
            // What a row leaves open the needle settles, where the row fits.
            const bool fits = row.verdict == RowVerdict::Fits;
            report.rows.push_back(
                {row.number, fits ? RowForms{row.before, row.after} : row.counted.forms});
        }
        result.names = std::move(proof);
    }
    report.closes = closes;
    for (const ReadMessage& message : read.messages) {
        findings.add(finding(
            "text", Severity::Note, 0,
            "Line " + std::to_string(message.place.line) + ": " + message.sentence() + "."));
    }
    report.findings = findings.take(sizes.size());
    return result;
}

}  // namespace lacewright
