#include "app/document/journal.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>
#include <QUuid>

#include "app/document/document.h"
#include "core/base/disk.h"
#include "core/file/chart_file.h"

namespace lacewright::app {

namespace {

const QString kChartEnding = QStringLiteral(".lacewright");
const QString kPathEnding = QStringLiteral(".path");
const QString kLockEnding = QStringLiteral(".lock");

void removeEntry(const QString& entry) {
    QFile::remove(entry + kChartEnding);
    QFile::remove(entry + kPathEnding);
}

// Entries (paths without ending) whose lock nobody holds; visits each while holding it.
template <class Visit>
void forEachLeftBehind(const QString& folder, Visit visit) {
    const QDir dir(folder);
    for (const QString& file : dir.entryList({QLatin1Char('*') + kChartEnding}, QDir::Files)) {
        const QString entry = dir.filePath(file.chopped(kChartEnding.size()));
        QLockFile lock(entry + kLockEnding);
        lock.setStaleLockTime(0);  // only a dead process makes a lock stale, not its age
        if (lock.tryLock(0)) visit(entry);
    }
}

}  // namespace

Journal::Journal(Document& document, const QString& folder, int delay)
    : QObject(&document), document_(document) {
    QDir().mkpath(folder);
    entry_ = QDir(folder).filePath(QUuid::createUuid().toString(QUuid::WithoutBraces));
    lock_ = std::make_unique<QLockFile>(entry_ + kLockEnding);
    lock_->setStaleLockTime(0);
    lock_->tryLock(0);
    timer_.setSingleShot(true);
    timer_.setInterval(delay);
    connect(&timer_, &QTimer::timeout, this, &Journal::write);
    // Not restarted by later changes, so that steady work is written too.
    connect(&document, &Document::changed, this, [this] {
        if (!timer_.isActive()) timer_.start();
    });
    connect(&document, &Document::replaced, this, &Journal::forget);
    connect(&document, &Document::fileStateChanged, this, [this] {
        if (!document_.isModified()) forget();
    });
}

Journal::~Journal() = default;

QString Journal::usualFolder() {
    const QDir data(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
    return data.filePath(QStringLiteral("unsaved"));
}

void Journal::forget() {
    timer_.stop();
    removeEntry(entry_);
}

void Journal::write() {
    if (!document_.isModified()) return;
    // A failure here must not disturb the work; the next change tries again.
    const Outcome path =
        writeFile((entry_ + kPathEnding).toStdString(), document_.path().toStdString());
    if (path)
        static_cast<void>(saveChart(document_.chart(), (entry_ + kChartEnding).toStdString()));
}

std::vector<Recovered> takeLeftBehind(const QString& folder) {
    std::vector<Recovered> found;
    forEachLeftBehind(folder, [&found](const QString& entry) {
        Result<Chart> chart = loadChart((entry + kChartEnding).toStdString());
        if (!chart) return;
        const Result<std::string> path = readFile((entry + kPathEnding).toStdString());
        found.push_back({*std::move(chart), path ? QString::fromStdString(*path) : QString()});
        removeEntry(entry);
    });
    return found;
}

bool hasLeftBehind(const QString& folder) {
    bool any = false;
    forEachLeftBehind(folder, [&any](const QString&) { any = true; });
    return any;
}

}  // namespace lacewright::app
