#include "app/window/file_controller.h"

#include <QWidget>

#include <QDir>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>

#include "app/document/document.h"
#include "app/window/action_set.h"
#include "app/window/starters.h"
#include "app/window/user_prompts.h"
#include "app/window/written_source.h"
#include "core/file/chart_file.h"

namespace lacewright::app {

namespace {

constexpr int kRecentFiles = 10;
const QString kRecentKey = QStringLiteral("recentFiles");

QString chartFilter() {
    return FileController::tr("Charts (*.lacewright)");
}

}  // namespace

FileController::FileController(Document& document, ActionSet& actions, UserPrompts& prompts,
                               QWidget& window)
    : QObject(&window), document_(document), actions_(actions), prompts_(prompts), window_(window) {
    actions.on(CommandId::NewChart, [this] { newChart(); });
    actions.on(CommandId::OpenChart, [this] {
        const QString path =
            prompts_.fileToOpen(&window_, QFileInfo(document_.path()).absolutePath(),
                                tr("Charts (*.lacewright);;All files (*)"));
        if (!path.isEmpty()) open(path);
    });
    actions.on(CommandId::ChartFromRows, [this] {
        if (auto chart = prompts_.chartFromRows(&window_, rowsOnClipboard()))
            place(*std::move(chart), {});
    });
    actions.on(CommandId::Save, [this] { save(); });
    actions.on(CommandId::SaveAs, [this] { saveAs(); });
    actions.on(CommandId::Revert, [this] { revert(); });
    actions.on(CommandId::CloseWindow, [this] { window_.close(); });
    connect(&document, &Document::fileStateChanged, this, &FileController::refresh);
    refresh();
}

void FileController::refresh() {
    actions_.setEnabled({CommandId::Revert}, document_.isModified() && !document_.path().isEmpty());
}

void FileController::newChart() {
    if (auto chart = prompts_.newChart(&window_)) place(*std::move(chart), {});
}

void FileController::open(const QString& path) {
    const QString absolute = QFileInfo(path).absoluteFilePath();
    Result<Chart> chart = loadChart(absolute.toStdString());
    if (!chart) {
        prompts_.tell(&window_, tr("“%1” cannot be opened").arg(QFileInfo(path).fileName()),
                      QString::fromStdString(chart.error().text()));
        return;
    }
    remember(absolute);
    place(*std::move(chart), absolute);
}

void FileController::begin(const Starter& starter) {
    Result<Chart> chart = chartOf(starter);
    if (!chart) {
        prompts_.tell(&window_, tr("The chart cannot be shown"),
                      QString::fromStdString(chart.error().text()));
        return;
    }
    place(*std::move(chart), {});
}

void FileController::place(Chart chart, const QString& path) {
    const bool nothingOfWorth = document_.path().isEmpty() && !document_.isModified();
    if (nothingOfWorth) {
        document_.replaceWith(std::move(chart), path);
    } else {
        Q_EMIT elsewhere(chart, path);
    }
}

bool FileController::save() {
    return document_.path().isEmpty() ? saveAs() : writeTo(document_.path());
}

bool FileController::saveAs() {
    QString suggestion = document_.path();
    if (suggestion.isEmpty()) {
        const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
        QString name = document_.displayName();
        name.replace(QLatin1Char('/'), QLatin1Char('-'));
        suggestion = QDir(folder).filePath(name + QStringLiteral(".lacewright"));
    }
    const QString path = prompts_.fileToSave(&window_, suggestion, chartFilter());
    return !path.isEmpty() && writeTo(path);
}

bool FileController::writeTo(const QString& path) {
    const Outcome outcome = saveChart(document_.chart(), path.toStdString());
    if (!outcome) {
        prompts_.tell(&window_, tr("The chart is not saved"),
                      QString::fromStdString(outcome.error().text()));
        return false;
    }
    document_.markSaved(path);
    remember(path);
    return true;
}

void FileController::revert() {
    const Question question{
        tr("Revert to saved"),
        tr("Every change since “%1” was saved will be lost.").arg(document_.displayName()),
        tr("Revert"), tr("Keep changes")};
    if (!prompts_.confirm(&window_, question)) return;
    Result<Chart> chart = loadChart(document_.path().toStdString());
    if (!chart) {
        prompts_.tell(&window_, tr("The saved chart cannot be read"),
                      QString::fromStdString(chart.error().text()));
        return;
    }
    document_.replaceWith(*std::move(chart), document_.path());
}

bool FileController::mayClose() {
    if (!document_.isModified()) return true;
    switch (prompts_.unsavedChanges(&window_, document_.displayName())) {
        case UserPrompts::Unsaved::Save:
            return save();
        case UserPrompts::Unsaved::Discard:
            return true;
        case UserPrompts::Unsaved::Cancel:
            break;
    }
    return false;
}

QStringList FileController::recentFiles() {
    QStringList files = QSettings().value(kRecentKey).toStringList();
    files.removeIf([](const QString& file) { return !QFileInfo::exists(file); });
    return files;
}

void FileController::remember(const QString& path) {
    QStringList files = recentFiles();
    files.removeAll(path);
    files.prepend(path);
    QSettings().setValue(kRecentKey, files.mid(0, kRecentFiles));
    Q_EMIT recentFilesChanged();
}

}  // namespace lacewright::app
