#pragma once

#include <QLockFile>
#include <QObject>
#include <QString>
#include <QTimer>
#include <memory>
#include <vector>

#include "core/chart/chart.h"

namespace lacewright::app {

class Document;

// Unsaved work, kept in the program's data folder in case the program or the machine stops. Each
// open chart has an entry of its own while it has unsaved changes; a lock file tells the entries of
// running windows from those that were left behind.
class Journal : public QObject {
    Q_OBJECT

 public:
    static constexpr int kDelay = 3000;  // milliseconds from the first unwritten change to the disk

    // `folder` is made when it is missing. Entries are written `delay` milliseconds after a change.
    Journal(Document& document, const QString& folder, int delay = kDelay);
    ~Journal() override;

    // Drops the entry: the work is saved, or given up on purpose.
    void forget();

    static QString usualFolder();

 private:
    void write();

    Document& document_;
    QString entry_;  // path without ending
    std::unique_ptr<QLockFile> lock_;
    QTimer timer_;
};

// Work that was left behind.
struct Recovered {
    Chart chart;
    QString path;  // the file it belongs to; empty when it was never saved
};

// Takes every entry whose window runs no more out of the folder. Entries that cannot be read are
// left where they are.
std::vector<Recovered> takeLeftBehind(const QString& folder);
// Whether there are such entries.
bool hasLeftBehind(const QString& folder);

}  // namespace lacewright::app
