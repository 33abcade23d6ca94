#pragma once

#include <gtest/gtest.h>

#include <QString>
#include <QStringList>
#include <deque>
#include <functional>

#include "app/window/user_prompts.h"

namespace lacewright::app {

// Answers questions from a script and fails on a question that nobody expected.
class ScriptedPrompts : public UserPrompts {
 public:
    std::deque<QString> filesToOpen;
    std::deque<QString> filesToSave;
    std::deque<Unsaved> unsaved;
    std::deque<bool> confirmations;
    QStringList told;  // titles of what was told
    std::deque<Chart> newCharts;
    std::function<std::optional<ChartProperties>(ChartProperties)> properties;
    std::function<std::optional<RepeatPlan>(RepeatPlan)> repeats;
    std::function<std::optional<Jog>(Jog)> jogs;
    std::function<std::optional<RowRepeat>(RowRepeat)> rowRepeats;
    std::function<std::optional<Size>(Size)> sizes;
    std::function<std::optional<Chart>(QString)> rowsRead;
    std::function<std::optional<QString>(QString)> pointNames;
    std::function<std::optional<Grading>(Grading)> gradings;
    std::function<std::optional<Plan>(const Chart&)> plans;
    std::function<std::optional<Stitch>()> stitches;

    QString fileToOpen(QWidget*, const QString&, const QString&) override {
        return next(filesToOpen, "open");
    }
    QString fileToSave(QWidget*, const QString&, const QString&) override {
        return next(filesToSave, "save");
    }
    Unsaved unsavedChanges(QWidget*, const QString&) override { return next(unsaved, "unsaved"); }
    bool confirm(QWidget*, const Question&) override { return next(confirmations, "confirm"); }
    void tell(QWidget*, const QString& title, const QString&) override { told << title; }
    bool choosePrinter(QWidget*, QPrinter&) override {
        unexpected("printer");
        return false;
    }
    std::optional<Chart> newChart(QWidget*) override { return next(newCharts, "new chart"); }
    std::optional<Chart> chartFromRows(QWidget*, const QString& text) override {
        return answer(rowsRead, "rows", text);
    }
    std::optional<ChartProperties> chartProperties(QWidget*, const ChartProperties& now) override {
        return answer(properties, "properties", now);
    }
    std::optional<RepeatPlan> repeat(QWidget*, const Chart&, const RepeatPlan& plan) override {
        return answer(repeats, "repeat", plan);
    }
    std::optional<Jog> jog(QWidget*, const QString&, const Jog& now) override {
        return answer(jogs, "jog", now);
    }
    std::optional<RowRepeat> rowRepeat(QWidget*, const Chart&, const RowRepeat& now) override {
        return answer(rowRepeats, "row repeat", now);
    }
    std::optional<Size> size(QWidget*, const Chart&, const Size& now) override {
        return answer(sizes, "size", now);
    }
    std::optional<Grading> grading(QWidget*, const Chart& chart, const CellArea&) override {
        return answer(gradings, "grading", chart.grading);
    }
    std::optional<QString> pointName(QWidget*, const Chart&, const QString& point) override {
        return answer(pointNames, "point", point);
    }
    std::optional<Plan> plan(QWidget*, const Chart& chart) override {
        if (!plans) unexpected("plan");
        return plans ? plans(chart) : std::nullopt;
    }
    std::optional<Stitch> stitch(QWidget*, const Chart&) override {
        if (!stitches) unexpected("stitch");
        return stitches ? stitches() : std::nullopt;
    }

 private:
    static void unexpected(const char* what) { ADD_FAILURE() << "unexpected question: " << what; }

    template <class T>
    static T next(std::deque<T>& script, const char* what) {
        if (script.empty()) {
            unexpected(what);
            return T{};
        }
        T first = script.front();
        script.pop_front();
        return first;
    }
    template <class Answer, class T>
    static auto answer(const Answer& script, const char* what, const T& now)
        -> decltype(script(now)) {
        if (!script) unexpected(what);
        return script ? script(now) : std::nullopt;
    }
};

}  // namespace lacewright::app
