#pragma once

#include <cstdlib>
#include <filesystem>
#include <string>
#include <system_error>

namespace lacewright::test {

// A new folder that is removed with everything in it when the test ends.
class TempDir {
 public:
    TempDir() {
        std::string pattern = std::filesystem::temp_directory_path() / "lacewright-test-XXXXXX";
        if (::mkdtemp(pattern.data()) != nullptr) path_ = pattern;
    }
    TempDir(const TempDir&) = delete;
    TempDir& operator=(const TempDir&) = delete;
    ~TempDir() {
        std::error_code ignored;
        if (!path_.empty()) std::filesystem::remove_all(path_, ignored);
    }

    std::string operator/(const std::string& name) const { return path_ + "/" + name; }
    const std::string& path() const { return path_; }

 private:
    std::string path_;
};

}  // namespace lacewright::test
