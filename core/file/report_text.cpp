#include "core/file/report_text.h"

#include <vector>

#include "core/file/json_value.h"
#include "core/file/object_writer.h"

namespace lacewright {
namespace {

using NameOf = std::function<std::string(Variable)>;

template <class Item, class Write>
std::string listOf(const std::vector<Item>& items, Write write) {
    std::vector<std::string> texts;
    texts.reserve(items.size());
    for (const Item& item : items) texts.push_back(write(item));
    return listOnOneLine(texts);
}

std::string redrawnText(const RedrawnCell& cell) {
    ObjectWriter out;
    out.number("row", cell.row);
    out.number("column", cell.column);
    out.text("stitch", cell.stitch);
    return out.onOneLine();
}

std::string reworkedText(const ReworkedRow& row) {
    ObjectWriter out;
    out.number("row", row.row);
    out.raw("stitches", listOf(row.stitches, quoteJson));
    return out.onOneLine();
}

std::string mendText(const Mend& mend) {
    ObjectWriter out;
    out.text("label", mend.label);
    out.textUnlessEmpty("reason", mend.reason);
    if (!mend.redrawn.empty()) out.raw("cells", listOf(mend.redrawn, redrawnText));
    if (!mend.reworked.empty()) out.raw("rows", listOf(mend.reworked, reworkedText));
    return out.onOneLine();
}

std::string suspectText(const Suspect& suspect) {
    ObjectWriter out;
    out.number("row", suspect.row);
    out.number("column", suspect.column);
    out.decimal("weight", suspect.weight);
    out.textUnlessEmpty("rather", suspect.rather);
    return out.onOneLine();
}

std::string findingText(const Finding& finding) {
    ObjectWriter out;
    out.text("rule", finding.rule);
    out.text("severity", severityName(finding.severity));
    out.number("row", finding.row);
    out.raw("columns", listOf(finding.columns, [](int column) { return std::to_string(column); }));
    out.raw("sizes", listOf(finding.sizes, quoteJson));
    out.text("message", finding.message);
    out.raw("mends", listOf(finding.mends, mendText));
    if (!finding.suspects.empty()) {
        out.raw("suspects", listOf(finding.suspects, suspectText));
    }
    if (!finding.folded.empty()) out.raw("folded", listOf(finding.folded, findingText));
    return out.onOneLine();
}

std::string formText(const AffineForm& form, const NameOf& nameOf) {
    ObjectWriter repeats;
    for (const AffineForm::Term& term : form.terms()) {
        repeats.raw(nameOf(term.variable), std::to_string(term.coefficient));
    }
    ObjectWriter out;
    out.raw("const", std::to_string(form.constant()));
    out.raw("repeats", repeats.onOneLine());
    return out.onOneLine();
}

std::string_view truth(bool value) {
    return value ? "true" : "false";
}

}  // namespace

std::string_view severityName(Severity severity) {
    switch (severity) {
        case Severity::Note:
            return "note";
        case Severity::Warning:
            return "warning";
        case Severity::Fault:
            return "fault";
    }
    return {};
}

std::string reportText(std::string_view file, const Report& report, const NameOf& nameOf) {
    ObjectWriter out;
    out.text("file", file);
    out.raw("knittable", std::string(truth(report.knittable)));
    out.raw("closes", std::string(report.closes ? truth(*report.closes) : "null"));
    out.raw("findings", listOf(report.findings, findingText));
    if (!report.suspects.empty()) out.raw("suspects", listOf(report.suspects, suspectText));
    out.raw("rows", listOf(report.rows, [&](const RowCount& row) {
                ObjectWriter one;
                one.number("row", row.number);
                one.raw("takes", formText(row.forms.takes, nameOf));
                one.raw("makes", formText(row.forms.makes, nameOf));
                return one.onOneLine();
            }));
    return out.onOneLine();
}

}  // namespace lacewright
