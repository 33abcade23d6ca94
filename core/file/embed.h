#pragma once

#include <fstream>
#include <iostream>
#include <nlohmann/json.hpp>
#include <ostream>
#include <stdexcept>
#include <string>

// What the build tools have in common that turn a file of resources/ into C++, so that the program
// carries its data and a slip in the file stops the build.
namespace lacewright::embed {

// A C++ literal of the text.
inline std::string quoted(const nlohmann::json& text) {
    return "R\"~(" + text.get<std::string>() + ")~\"";
}

// The main function of such a tool, used as "TOOL data.json out.cpp": writes a C++ source that
// includes `header` and what `body` says in the namespace of the project. `body` throws with a
// sentence where the data are wrong.
inline int run(int argc, char** argv, const std::string& header,
               void (*body)(const nlohmann::json& data, std::ostream& out)) try {
    if (argc != 3) {
        std::cerr << "usage: " << argv[0] << " data.json out.cpp\n";
        return 2;
    }
    std::ifstream in(argv[1]);
    if (!in) throw std::runtime_error("cannot be read");
    const nlohmann::json data = nlohmann::json::parse(in);
    std::ofstream out(argv[2]);
    out << "#include \"" << header << "\"\n\nnamespace lacewright {\n\n";
    body(data, out);
    out << "\n}  // namespace lacewright\n";
    return out.flush() ? 0 : 2;
} catch (const std::exception& error) {
    std::cerr << argv[1] << ": " << error.what() << "\n";
    return 2;
}

}  // namespace lacewright::embed
