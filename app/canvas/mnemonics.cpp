#include "app/canvas/mnemonics.h"

#include <algorithm>

namespace lacewright::app {
namespace {

// Strokes look like the slant of the decrease; the capital or the doubled stroke is the bigger
// relative of the same stitch.
constexpr Mnemonic kMnemonics[] = {
    {'k', "k"},     {'p', "p"},      {'b', "ktbl"},      {'B', "ptbl"},  {'o', "yo"},
    {'O', "yo2"},   {'/', "k2tog"},  {'\\', "ssk"},      {'?', "k3tog"}, {'|', "sk2p"},
    {'^', "s2kp"},  {'<', "ssp"},    {'>', "p2tog"},     {'m', "m1"},    {'l', "m1l"},
    {'r', "m1r"},   {'f', "kfb"},    {'y', "kyok"},      {'i', "inc5"},  {'s', "slwyb"},
    {'S', "slwyf"}, {'*', "bobble"}, {'x', "no-stitch"}, {'c', "co"},    {'-', "bo"},
    {'t', "rt"},    {'T', "lt"},
};

}  // namespace

std::span<const Mnemonic> mnemonics() {
    return kMnemonics;
}

QString stitchOfKey(QChar key) {
    const auto found = std::ranges::find(kMnemonics, key.toLatin1(), &Mnemonic::key);
    if (found == std::end(kMnemonics) || key.unicode() > 0x7F) return {};
    return QString::fromLatin1(found->stitch);
}

QString keyOfStitch(const QString& stitch) {
    for (const Mnemonic& mnemonic : kMnemonics) {
        if (stitch == QLatin1String(mnemonic.stitch)) return QChar::fromLatin1(mnemonic.key);
    }
    return {};
}

}  // namespace lacewright::app
