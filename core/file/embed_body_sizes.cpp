// Build tool: reads resources/body_sizes.json and writes it out as C++; a slip in the file stops
// the build.
// usage: embed_body_sizes body_sizes.json out.cpp

#include <fstream>
#include <iostream>
#include <nlohmann/json.hpp>
#include <sstream>

namespace {

using nlohmann::json;

std::string quoted(const json& text) {
    return "R\"~(" + text.get<std::string>() + ")~\"";
}

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

}  // namespace

int main(int argc, char** argv) try {
    if (argc != 3) {
        std::cerr << "usage: embed_body_sizes body_sizes.json out.cpp\n";
        return 2;
    }
    std::ifstream in(argv[1]);
    const json data = json::parse(in);
    std::ofstream out(argv[2]);
    out << "#include \"core/plan/body_sizes.h\"\n\nnamespace lacewright {\n\n"
           "const std::vector<BodySizeTable>& bodySizeTables() {\n"
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
    out << "    };\n    return tables;\n}\n\n}  // namespace lacewright\n";
    return out.flush() ? 0 : 2;
} catch (const std::exception& error) {
    std::cerr << argv[1] << ": " << error.what() << "\n";
    return 2;
}
