#include "core/verdict/told_findings.h"

#include <algorithm>
#include <cctype>
#include <utility>

#include "core/base/text.h"
#include "core/words/stitch_words.h"

namespace lacewright {
namespace {

void fillIn(std::string& message, const std::vector<std::vector<std::int64_t>>& bySize) {
    for (std::size_t i = 0; i < bySize.front().size(); ++i) {
        std::vector<int> figures;
        for (const auto& numbers : bySize) figures.push_back(static_cast<int>(numbers[i]));
        message.replace(message.find(kNumberPlace), 1, figureText(figures));
    }
}

void nameSizes(Finding& finding) {
    std::string& message = finding.message;
    message[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(message[0])));
    message =
        (finding.sizes.size() == 1 ? "Size " : "Sizes ") + listing(finding.sizes) + ": " + message;
}

std::vector<Finding> folded(std::vector<Finding> findings) {
    std::vector<Finding> all;
    for (Finding& finding : findings) {
        const bool again = !all.empty() && finding.severity == Severity::Fault &&
                           all.back().severity == Severity::Fault &&
                           all.back().row == finding.row && all.back().rule == finding.rule &&
                           !finding.sizes.empty();
        (again ? all.back().folded : all).push_back(std::move(finding));
    }
    return all;
}

}  // namespace

void ToldFindings::add(Finding finding, std::optional<std::size_t> size,
                       const std::vector<std::int64_t>& numbers) {
    const auto same = std::find_if(all_.begin(), all_.end(), [&](const Told& told) {
        return told.finding.row == finding.row && told.finding.rule == finding.rule &&
               told.finding.message == finding.message;
    });
    Told& kept = same == all_.end() ? all_.emplace_back(Told{std::move(finding), {}}) : *same;
    kept.numbers.push_back(numbers);
    if (size && !pattern_.sizes.empty()) kept.finding.sizes.push_back(pattern_.sizes[*size]);
}

std::vector<Finding> ToldFindings::take(std::size_t asked) {
    std::vector<Finding> findings;
    for (Told& told : all_) {
        Finding& finding = told.finding;
        fillIn(finding.message, told.numbers);
        if (finding.sizes.size() == asked && asked == pattern_.sizes.size()) finding.sizes.clear();
        if (!finding.sizes.empty() && asked > 1) nameSizes(finding);
        findings.push_back(std::move(finding));
    }
    std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
        return std::pair(a.row, b.severity) < std::pair(b.row, a.severity);
    });
    return folded(std::move(findings));
}

}  // namespace lacewright
