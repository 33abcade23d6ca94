#pragma once

#include "app/window/form_dialog.h"
#include "app/window/user_prompts.h"

class QLineEdit;
class QSpinBox;

namespace lacewright::app {

// Name, edges and rows of a repeat, and how often the sizes work it. Rows are asked for as the
// numbers a knitter reads.
class RepeatDialog : public FormDialog {
    Q_OBJECT

 public:
    RepeatDialog(const Chart& chart, const RepeatPlan& plan, QWidget* parent);
    RepeatPlan plan() const;

 private:
    void examine();

    const Chart& chart_;
    RepeatPlan before_;
    QLineEdit* name_;
    QSpinBox* right_;
    QSpinBox* left_;
    QSpinBox* firstRow_;
    QSpinBox* lastRow_;
    QSpinBox* times_ = nullptr;  // absent when no size would use it
};

// How far the edges of a repeat are shifted on some rows. Positive is to the left.
class JogDialog : public FormDialog {
    Q_OBJECT

 public:
    JogDialog(const QString& rows, const Jog& now, QWidget* parent);
    Jog jog() const;

 private:
    Jog before_;
    QSpinBox* right_;
    QSpinBox* left_;
};

// The rows that are worked again and again, and by how much they grow each time.
class RowRepeatDialog : public FormDialog {
    Q_OBJECT

 public:
    RowRepeatDialog(const Chart& chart, const RowRepeat& now, QWidget* parent);
    RowRepeat rowRepeat() const;

 private:
    RowRepeat before_;
    QSpinBox* grows_;
};

}  // namespace lacewright::app
