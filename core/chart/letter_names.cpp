#include "core/chart/letter_names.h"

#include <algorithm>

namespace lacewright {

namespace {

constexpr int kLetters = 26;

}  // namespace

std::string letterName(int rank) {
    const std::string letter(1, static_cast<char>('A' + rank % kLetters));
    return rank < kLetters ? letter : letter + std::to_string(rank / kLetters + 1);
}

bool isLetterName(const std::string& name) {
    if (name.empty() || name[0] < 'A' || name[0] > 'Z') return false;
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    return name != std::string(1, name[0]) + "1" &&
           std::all_of(name.begin() + 1, name.end(), digit);
}

}  // namespace lacewright
