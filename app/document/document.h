#pragma once

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <vector>

#include "core/chart/chart.h"
#include "core/chart/edits.h"
#include "core/check/check.h"

namespace lacewright::app {

// What an edit changed, for views that repaint only that.
struct ChartChange {
    bool frame = false;           // anything but cells: repeats, sizes, width, number of rows ...
    std::vector<CellArea> cells;  // the changed cells of one row each; empty when `frame` says all
};

// The open chart. The only one who changes it: every edit arrives as a finished chart and becomes
// one undo step; everyone else sees const references and is told by `changed`.
class Document : public QObject {
    Q_OBJECT

 public:
    explicit Document(QObject* parent = nullptr);
    ~Document() override;

    const Chart& chart() const { return chart_; }
    const Report& report() const { return checker_.report(); }
    QUndoStack& undoStack() { return undo_; }
    bool isModified() const { return !undo_.isClean(); }

    // Path of the file, empty while the chart has none.
    const QString& path() const { return path_; }
    // File name, or the chart's name, for titles.
    QString displayName() const;

    // Takes the outcome of an edit. A refusal is told by `refused` and changes nothing; an edit
    // that changes nothing is dropped. Edits with the same stroke number (> 0) become one undo
    // step.
    bool apply(const QString& label, Result<Chart> edited, int stroke = 0);
    // A number for the next stroke.
    int newStroke() { return ++lastStroke_; }

    // Another chart takes the place of this one: undo history and modified mark start afresh.
    void replaceWith(Chart chart, const QString& path);
    // The chart was written to `path` just now.
    void markSaved(const QString& path);

 Q_SIGNALS:
    void changed(const lacewright::app::ChartChange& change);
    void replaced();  // another chart altogether
    void refused(const QString& sentence);
    void fileStateChanged();  // path or modified mark

 private:
    friend class EditCommand;
    void show(const Chart& chart);

    Chart chart_;
    Checker checker_;
    QUndoStack undo_;
    QString path_;
    int lastStroke_ = 0;
};

}  // namespace lacewright::app
