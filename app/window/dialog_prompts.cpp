#include "app/window/dialog_prompts.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPushButton>
#include <QRegularExpression>

#include "app/window/grading_dialog.h"
#include "app/window/new_chart_dialog.h"
#include "app/window/plan_dialog.h"
#include "app/window/point_dialog.h"
#include "app/window/properties_dialog.h"
#include "app/window/repeat_dialogs.h"
#include "app/window/rows_dialog.h"
#include "app/window/size_dialog.h"
#include "app/window/stitch_dialog.h"

namespace lacewright::app {

namespace {

QString say(const char* text) {
    return QObject::tr(text);
}

// The ending named first in a filter such as "Chart (*.lacewright)".
QString endingOf(const QString& filter) {
    static const QRegularExpression ending(QStringLiteral("\\*(\\.\\w+)"));
    return ending.match(filter).captured(1);
}

template <class Dialog, class Value>
std::optional<Value> asked(Dialog& dialog, Value (Dialog::*answer)() const) {
    if (dialog.exec() != QDialog::Accepted) return std::nullopt;
    return (dialog.*answer)();
}

}  // namespace

QString DialogPrompts::fileToOpen(QWidget* over, const QString& folder, const QString& filter) {
    return QFileDialog::getOpenFileName(over, say("Open"), folder, filter);
}

QString DialogPrompts::fileToSave(QWidget* over, const QString& suggestion, const QString& filter) {
    QString chosen = filter.section(QStringLiteral(";;"), 0, 0);
    QString path = QFileDialog::getSaveFileName(over, say("Save"), suggestion, filter, &chosen);
    if (!path.isEmpty() && QFileInfo(path).suffix().isEmpty()) path += endingOf(chosen);
    return path;
}

UserPrompts::Unsaved DialogPrompts::unsavedChanges(QWidget* over, const QString& name) {
    QMessageBox box(QMessageBox::Question, say("Unsaved changes"),
                    say("“%1” has changes that are not saved.").arg(name),
                    QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, over);
    box.setInformativeText(say("Save them before the chart closes?"));
    box.setDefaultButton(QMessageBox::Save);
    switch (box.exec()) {
        case QMessageBox::Save:
            return Unsaved::Save;
        case QMessageBox::Discard:
            return Unsaved::Discard;
        default:
            return Unsaved::Cancel;
    }
}

bool DialogPrompts::confirm(QWidget* over, const Question& question) {
    QMessageBox box(QMessageBox::Question, question.title, question.text, QMessageBox::NoButton,
                    over);
    const auto* yes = box.addButton(question.yes, QMessageBox::AcceptRole);
    box.setEscapeButton(box.addButton(question.no, QMessageBox::RejectRole));
    box.exec();
    return box.clickedButton() == yes;
}

void DialogPrompts::tell(QWidget* over, const QString& title, const QString& text) {
    QMessageBox box(QMessageBox::Warning, title, title, QMessageBox::Ok, over);
    box.setInformativeText(text);
    box.exec();
}

bool DialogPrompts::choosePrinter(QWidget* over, QPrinter& printer) {
    QPrintDialog dialog(&printer, over);
    return dialog.exec() == QDialog::Accepted;
}

std::optional<Chart> DialogPrompts::newChart(QWidget* over) {
    NewChartDialog dialog(over);
    return asked(dialog, &NewChartDialog::chart);
}

std::optional<Chart> DialogPrompts::chartFromRows(QWidget* over, const QString& text) {
    RowsDialog dialog(*this, text, over);
    return asked(dialog, &RowsDialog::chart);
}

std::optional<ChartProperties> DialogPrompts::chartProperties(QWidget* over,
                                                              const ChartProperties& now) {
    PropertiesDialog dialog(now, over);
    return asked(dialog, &PropertiesDialog::properties);
}

std::optional<RepeatPlan> DialogPrompts::repeat(QWidget* over, const Chart& chart,
                                                const RepeatPlan& plan) {
    RepeatDialog dialog(chart, plan, over);
    return asked(dialog, &RepeatDialog::plan);
}

std::optional<Jog> DialogPrompts::jog(QWidget* over, const QString& rows, const Jog& now) {
    JogDialog dialog(rows, now, over);
    return asked(dialog, &JogDialog::jog);
}

std::optional<RowRepeat> DialogPrompts::rowRepeat(QWidget* over, const Chart& chart,
                                                  const RowRepeat& now) {
    RowRepeatDialog dialog(chart, now, over);
    return asked(dialog, &RowRepeatDialog::rowRepeat);
}

std::optional<Size> DialogPrompts::size(QWidget* over, const Chart& chart, const Size& now) {
    SizeDialog dialog(chart, now, over);
    return asked(dialog, &SizeDialog::size);
}

std::optional<Grading> DialogPrompts::grading(QWidget* over, const Chart& chart,
                                              const CellArea& area) {
    GradingDialog dialog(chart, area, over);
    return asked(dialog, &GradingDialog::grading);
}

std::optional<QString> DialogPrompts::pointName(QWidget* over, const Chart& chart,
                                                const QString& point) {
    PointDialog dialog(chart, point, over);
    return asked(dialog, &PointDialog::name);
}

std::optional<Plan> DialogPrompts::plan(QWidget* over, const Chart& chart) {
    PlanDialog dialog(chart, over);
    return asked(dialog, &PlanDialog::plan);
}

std::optional<Stitch> DialogPrompts::stitch(QWidget* over, const Chart& chart) {
    StitchDialog dialog(chart, over);
    return asked(dialog, &StitchDialog::stitch);
}

}  // namespace lacewright::app
