#include "core/base/disk.h"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>

#include <csignal>
#include <filesystem>
#include <fstream>

#include "tests/support/temp_dir.h"

namespace lacewright {
namespace {

namespace fs = std::filesystem;

void put(const std::string& path, const std::string& bytes) {
    std::ofstream(path) << bytes;
}

std::ptrdiff_t filesIn(const test::TempDir& folder) {
    return std::distance(fs::directory_iterator(folder.path()), fs::directory_iterator());
}

// For its lifetime no file of this process may grow beyond so many bytes, as on a full disk.
class FileSizeLimit {
 public:
    explicit FileSizeLimit(rlim_t bytes) : oldHandler_(std::signal(SIGXFSZ, SIG_IGN)) {
        ::getrlimit(RLIMIT_FSIZE, &old_);
        const rlimit limit{bytes, old_.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &limit);
    }
    FileSizeLimit(const FileSizeLimit&) = delete;
    FileSizeLimit& operator=(const FileSizeLimit&) = delete;
    ~FileSizeLimit() {
        ::setrlimit(RLIMIT_FSIZE, &old_);
        std::signal(SIGXFSZ, oldHandler_);
    }

 private:
    rlimit old_ = {};
    void (*oldHandler_)(int);
};

TEST(ReadFile, GivesBackEveryByteWritten) {
    const test::TempDir folder;
    std::string bytes(200'000, '\0');
    for (std::size_t i = 0; i < bytes.size(); ++i) bytes[i] = static_cast<char>(i * 7);
    ASSERT_TRUE(writeFile(folder / "a", bytes));
    const auto read = readFile(folder / "a");
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, bytes);
    ASSERT_TRUE(writeFile(folder / "empty", ""));
    EXPECT_EQ(*readFile(folder / "empty"), "");
}

TEST(ReadFile, TellsAMissingFileFromOneThatCannotBeRead) {
    const test::TempDir folder;
    const auto missing = readFile(folder / "none");
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().code, ErrorCode::NotFound);
    EXPECT_EQ(missing.error().place, folder / "none");
    const auto directory = readFile(folder.path());
    ASSERT_FALSE(directory);
    EXPECT_EQ(directory.error().code, ErrorCode::Unreadable);
    EXPECT_EQ(directory.error().message, "This is a folder; a file was expected.");
}

TEST(ReadFile, RefusesAFileLargerThanTheLimit) {
    const test::TempDir folder;
    put(folder / "a", std::string(1U << 20U, 'x'));
    EXPECT_TRUE(readFile(folder / "a", 1U << 20U));
    put(folder / "a", std::string((1U << 20U) + 1, 'x'));
    const auto read = readFile(folder / "a", 1U << 20U);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(read.error().message, "The file is larger than the 1 MiB that are read at most.");
}

TEST(ReadFile, RefusesAHugeFileBeforeReadingIt) {
    const test::TempDir folder;
    put(folder / "a", "");
    fs::resize_file(folder / "a", std::uintmax_t{1} << 40U);  // sparse: takes no room on the disk
    const auto read = readFile(folder / "a");
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::OutOfRange);
}

TEST(WriteFile, ReplacesTheFileAndKeepsItsMode) {
    const test::TempDir folder;
    put(folder / "a", "old");
    ASSERT_EQ(::chmod((folder / "a").c_str(), 0640), 0);
    ASSERT_TRUE(writeFile(folder / "a", "new"));
    EXPECT_EQ(*readFile(folder / "a"), "new");
    EXPECT_EQ(fs::status(folder / "a").permissions(), fs::perms(0640));
    EXPECT_EQ(filesIn(folder), 1);
}

TEST(WriteFile, GivesANewFileTheUsualMode) {
    const test::TempDir folder;
    const mode_t mask = ::umask(0027);
    const auto written = writeFile(folder / "a", "new");
    ::umask(mask);
    ASSERT_TRUE(written);
    EXPECT_EQ(fs::status(folder / "a").permissions(), fs::perms(0640));
}

TEST(WriteFile, KeepsTheOldFileWhenTheDiskIsFull) {
    const test::TempDir folder;
    put(folder / "a", "old");
    const auto written = [&] {
        const FileSizeLimit limit(1000);
        return writeFile(folder / "a", std::string(5000, 'x'));
    }();
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::Unwritable);
    EXPECT_EQ(written.error().place, folder / "a");
    EXPECT_EQ(*readFile(folder / "a"), "old");
    EXPECT_EQ(filesIn(folder), 1);
}

TEST(WriteFile, KeepsASymbolicLinkAndWritesItsTarget) {
    const test::TempDir folder;
    fs::create_directory(folder / "charts");
    put(folder / "charts/fern", "old");
    fs::create_symlink("charts/fern", folder / "link");
    ASSERT_TRUE(writeFile(folder / "link", "new"));
    EXPECT_TRUE(fs::is_symlink(folder / "link"));
    EXPECT_EQ(*readFile(folder / "charts/fern"), "new");
}

TEST(WriteFile, RefusesAFolder) {
    const test::TempDir folder;
    fs::create_directory(folder / "charts");
    put(folder / "charts/fern", "old");
    const auto written = writeFile(folder / "charts", "new");
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::Unwritable);
    EXPECT_EQ(*readFile(folder / "charts/fern"), "old");
    EXPECT_EQ(filesIn(folder), 1);
}

TEST(WriteFile, RefusesAFolderThatDoesNotExist) {
    const test::TempDir folder;
    const auto written = writeFile(folder / "none/a", "new");
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::Unwritable);
    EXPECT_EQ(filesIn(folder), 0);
}

}  // namespace
}  // namespace lacewright
