#pragma once

#include <QChar>
#include <QString>
#include <span>

namespace lacewright::app {

// A key that draws a stitch at the cursor.
struct Mnemonic {
    char key = ' ';
    const char* stitch = "";  // id
};

// All of them, each key and each stitch once.
std::span<const Mnemonic> mnemonics();

// Id of the stitch that a typed character draws; empty for none.
QString stitchOfKey(QChar key);
// The character that draws a stitch; empty for none.
QString keyOfStitch(const QString& stitch);

}  // namespace lacewright::app
