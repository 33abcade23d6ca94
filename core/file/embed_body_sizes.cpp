// Build tool: resources/body_sizes.json as C++.

#include <sstream>

#include "core/file/embed.h"

namespace {

using lacewright::embed::quoted;
using nlohmann::json;

std::string spans(const json& list, std::size_t sizes) {
    if (list.size() != sizes) throw std::runtime_error("a measurement lacks a size");
    std::ostringstream out;
    double before = 0;
    for (const json& span : list) {
        const double low = span.at(0).get<double>();
        const double high = span.at(1).get<double>();
        if (low > high || low < before) throw std::runtime_error("sizes do not rise");
        before = low;
        out << "{" << low << "," << high << "},";
    }
    return "{" + out.str() + "}";
}

void write(const json& data, std::ostream& out) {
    out << "const std::vector<BodySizeTable>& bodySizeTables() {\n"
           "    static const std::vector<BodySizeTable> tables = {\n";
    for (const json& table : data.at("tables")) {
        out << "    {" << quoted(table.at("id")) << "," << quoted(table.at("title")) << ","
            << quoted(table.at("source")) << ",{";
        for (const json& size : table.at("sizes")) out << quoted(size) << ",";
        out << "},{\n";
        const std::size_t sizes = table.at("sizes").size();
        for (const json& m : table.at("measurements")) {
            out << "        {" << quoted(m.at("id")) << "," << quoted(m.at("name")) << ","
                << (m.contains("inches") ? spans(m.at("inches"), sizes) : "{}") << ","
                << spans(m.at("cm"), sizes) << "},\n";
        }
        out << "    }},\n";
    }
    out << "    };\n    return tables;\n}\n";
}

}  // namespace

int main(int argc, char** argv) {
    return lacewright::embed::run(argc, argv, "core/plan/body_sizes.h", write);
}
