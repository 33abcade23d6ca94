#include "core/base/disk.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <utility>
#include <vector>

namespace lacewright {
namespace {

std::string reason() {
    return std::strerror(errno);
}

// Closes a file descriptor when it goes out of scope.
class Descriptor {
 public:
    explicit Descriptor(int fd) : fd_(fd) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor() {
        if (fd_ >= 0) ::close(fd_);
    }
    int get() const { return fd_; }
    int release() { return std::exchange(fd_, -1); }

 private:
    int fd_;
};

bool writeAll(int fd, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t written = ::write(fd, bytes.data(), bytes.size());
        if (written < 0) {
            if (errno == EINTR) continue;
            return false;
        }
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

// The file a symbolic link leads to, so that saving replaces the target and keeps the link.
std::string throughLinks(const std::string& path) {
    std::error_code failed;
    const auto target = std::filesystem::canonical(path, failed);
    return failed ? path : target.string();
}

}  // namespace

Result<std::string> readFile(const std::string& path, std::size_t limit) {
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (file.get() < 0) {
        const ErrorCode code = errno == ENOENT ? ErrorCode::NotFound : ErrorCode::Unreadable;
        return Error{code, "The file cannot be opened: " + reason() + ".", path};
    }
    struct stat info = {};
    if (::fstat(file.get(), &info) == 0 && S_ISDIR(info.st_mode)) {
        return Error{ErrorCode::Unreadable, "This is a folder; a file was expected.", path};
    }
    const auto tooLarge = [&] {
        return Error{ErrorCode::OutOfRange,
                     "The file is larger than the " + std::to_string(limit >> 20U) +
                         " MiB that are read at most.",
                     path};
    };
    std::string bytes;
    if (info.st_size > 0 && static_cast<std::size_t>(info.st_size) > limit) return tooLarge();
    if (info.st_size > 0) bytes.reserve(static_cast<std::size_t>(info.st_size) + 1);
    std::vector<char> buffer(1U << 16U);
    for (;;) {
        const ssize_t got = ::read(file.get(), buffer.data(), buffer.size());
        if (got < 0) {
            if (errno == EINTR) continue;
            return Error{ErrorCode::Unreadable, "The file cannot be read: " + reason() + ".", path};
        }
        if (got == 0) return bytes;
        bytes.append(buffer.data(), static_cast<std::size_t>(got));
        if (bytes.size() > limit) return tooLarge();
    }
}

Outcome writeFile(const std::string& path, std::string_view bytes) {
    const auto complain = [&path](const std::string& what) {
        return Error{ErrorCode::Unwritable, "The file cannot be " + what + ": " + reason() + ".",
                     path};
    };
    const std::string target = throughLinks(path);
    std::string temporary = target + ".XXXXXX";
    Descriptor file(::mkostemp(temporary.data(), O_CLOEXEC));
    if (file.get() < 0) return complain("written");
    struct stat old = {};
    const mode_t mask = ::umask(0);
    ::umask(mask);
    const mode_t mode = ::stat(target.c_str(), &old) == 0 ? old.st_mode & 07777U : 0666U & ~mask;
    const bool written = ::fchmod(file.get(), mode) == 0 && writeAll(file.get(), bytes) &&
                         ::fsync(file.get()) == 0 && ::close(file.release()) == 0;
    if (!written) {
        const Error error = complain("written");
        ::unlink(temporary.c_str());
        return error;
    }
    if (::rename(temporary.c_str(), target.c_str()) != 0) {
        const Error error = complain("replaced");
        ::unlink(temporary.c_str());
        return error;
    }
    return Done{};
}

}  // namespace lacewright
