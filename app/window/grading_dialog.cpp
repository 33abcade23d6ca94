#include "app/window/grading_dialog.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QSpinBox>
#include <QTableWidget>
#include <QVBoxLayout>

#include "app/panels/panel_button.h"
#include "app/window/length_field.h"
#include "app/window/optional_field.h"

namespace lacewright::app {

namespace {

constexpr double kUsualLeast = 0;  // cm, to begin with
constexpr double kUsualMost = 10;
constexpr int kShownShoulders = 3;  // lines of the table without scrolling

enum ShoulderColumn { kRow, kRight, kLeft, kShoulderColumns };

}  // namespace

GradingDialog::GradingDialog(const Chart& chart, const CellArea& selected, QWidget* parent)
    : FormDialog(tr("Rules for the sizes"),
                 tr("What must hold from size to size. The checks tell where it does not."),
                 tr("Use these rules"), parent),
      chart_(chart),
      selected_(selected),
      rising_(new QCheckBox(tr("&Rise from the first in the list to the last"), this)),
      halved_(new QCheckBox(tr("Are divided into two &halves alike"), this)),
      pieces_(new QSpinBox(this)),
      edge_(new QSpinBox(this)),
      unit_(new LengthUnitField(this)),
      leastEase_(new LengthField(chart.grading.leastEase.value_or(kUsualLeast),
                                 {-kMaxEase, kMaxEase}, this)),
      mostEase_(new LengthField(chart.grading.mostEase.value_or(kUsualMost), {-kMaxEase, kMaxEase},
                                this)),
      table_(new QTableWidget(0, kShoulderColumns, this)),
      remove_(panelButton(this, tr("Remove"), "removeShoulder")) {
    addFamily();
    addEase();
    addShoulders();
    for (const Shoulder& shoulder : chart.grading.shoulders) addLine(shoulder);
    connect(table_, &QTableWidget::itemChanged, this, &GradingDialog::examine);
    for (const LengthField* field : {leastEase_, mostEase_}) {
        connect(field, &LengthField::lengthChanged, this, &GradingDialog::examine);
    }
    for (const QCheckBox* box : {hasLeast_, hasMost_}) {
        connect(box, &QCheckBox::toggled, this, &GradingDialog::examine);
    }
    examine();
}

void GradingDialog::addFamily() {
    const Grading& now = chart_.grading;
    rising_->setObjectName(QStringLiteral("rising"));
    halved_->setObjectName(QStringLiteral("halved"));
    pieces_->setObjectName(QStringLiteral("pieces"));
    edge_->setObjectName(QStringLiteral("edgeStitches"));
    rising_->setChecked(now.rising);
    halved_->setChecked(now.halved);
    pieces_->setRange(1, kMaxPieces);
    pieces_->setValue(now.pieces);
    pieces_->setToolTip(tr("A back and a front of this width: 2"));
    edge_->setRange(0, kMaxWidth);
    edge_->setSuffix(tr(" each side"));
    edge_->setValue(now.edgeStitches);
    edge_->setToolTip(tr("Plain stitches beside the charted ones; part of the width"));
    auto* family = new QVBoxLayout;
    family->setSpacing(4);
    family->addWidget(rising_);
    family->addWidget(halved_);
    form().addRow(tr("The sizes"), family);
    form().addRow(tr("&Pieces around the body"), pieces_);
    form().addRow(tr("&Edge stitches"), edge_);
}

void GradingDialog::addEase() {
    const Grading& now = chart_.grading;
    unit_->setObjectName(QStringLiteral("unit"));
    leastEase_->setObjectName(QStringLiteral("leastEase"));
    mostEase_->setObjectName(QStringLiteral("mostEase"));
    leastEase_->setAccessibleName(tr("Least ease"));
    mostEase_->setAccessibleName(tr("Most ease"));
    for (LengthField* field : {leastEase_, mostEase_}) {
        field->setUnit(unit_->unit());
        field->setToolTip(
            tr("Width of all pieces less the body of the size; below 0 it stretches"));
    }
    connect(unit_, &LengthUnitField::unitChosen, this, [this] {
        for (LengthField* field : {leastEase_, mostEase_}) field->setUnit(unit_->unit());
    });
    hasLeast_ =
        optionalField(form(), tr("Ease"), tr("at &least"), leastEase_, now.leastEase.has_value());
    hasMost_ = optionalField(form(), {}, tr("at &most"), mostEase_, now.mostEase.has_value());
    form().addRow(tr("Lengths &in"), unit_);
}

void GradingDialog::addShoulders() {
    table_->setObjectName(QStringLiteral("shoulders"));
    table_->setAccessibleName(tr("Shoulders"));
    table_->setHorizontalHeaderLabels({tr("Row"), tr("From column"), tr("To column")});
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(table_->fontMetrics().height() + 10);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);
    table_->setMinimumHeight((kShownShoulders + 1) * (table_->fontMetrics().height() + 12));
    table_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    auto* add = panelButton(this, tr("Add"), "addShoulder");
    add->setToolTip(tr("A shoulder of the selected columns; its numbers can be changed"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(add);
    buttons->addWidget(remove_);
    buttons->addStretch(1);
    auto* all = new QVBoxLayout;
    all->setSpacing(6);
    all->addWidget(table_);
    all->addLayout(buttons);
    auto* label = new QLabel(tr("&Shoulders, joined\nstitch by stitch"), this);
    label->setBuddy(table_);
    form().addRow(label, all);
    connect(add, &QToolButton::clicked, this, [this] {
        addLine({selected_.lastRow, selected_.right, selected_.left, {}});
        table_->setCurrentCell(table_->rowCount() - 1, kRow);
        table_->setFocus();
    });
    connect(remove_, &QToolButton::clicked, this, [this] {
        table_->removeRow(table_->currentRow());
        examine();
    });
}

void GradingDialog::addLine(const Shoulder& shoulder) {
    const int line = table_->rowCount();
    table_->insertRow(line);
    const int figures[] = {chart_.rowNumber(shoulder.row), shoulder.right, shoulder.left};
    for (int column = 0; column < kShoulderColumns; ++column) {
        auto* item = new QTableWidgetItem(QString::number(figures[column]));
        item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
        table_->setItem(line, column, item);
    }
    examine();
}

Result<std::vector<Shoulder>> GradingDialog::shoulders() const {
    std::vector<Shoulder> all;
    for (int line = 0; line < table_->rowCount(); ++line) {
        int figures[kShoulderColumns] = {};
        for (int column = 0; column < kShoulderColumns; ++column) {
            const QTableWidgetItem* item = table_->item(line, column);
            bool whole = item != nullptr;
            if (whole) figures[column] = item->text().trimmed().toInt(&whole);
            if (!whole) {
                return Error{ErrorCode::Refused,
                             "A shoulder needs the number of its row and of its columns.",
                             {}};
            }
        }
        const auto row = chart_.indexOfRowNumber(figures[kRow]);
        if (!row) {
            return Error{
                ErrorCode::Refused,
                "Row " + std::to_string(figures[kRow]) + " of a shoulder is not in the chart.",
                {}};
        }
        all.push_back({*row, figures[kRight], figures[kLeft], {}});
    }
    return all;
}

Grading GradingDialog::grading() const {
    Grading after = chart_.grading;
    after.rising = rising_->isChecked();
    after.halved = halved_->isChecked();
    after.pieces = pieces_->value();
    after.edgeStitches = edge_->value();
    after.leastEase.reset();
    after.mostEase.reset();
    if (hasLeast_->isChecked()) after.leastEase = leastEase_->cm();
    if (hasMost_->isChecked()) after.mostEase = mostEase_->cm();
    if (const auto typed = shoulders()) {
        // One that is named as before keeps what this version does not know of it.
        after.shoulders = *typed;
        for (Shoulder& shoulder : after.shoulders) {
            for (const Shoulder& before : chart_.grading.shoulders) {
                if (before.row == shoulder.row && before.right == shoulder.right &&
                    before.left == shoulder.left)
                    shoulder.extras = before.extras;
            }
        }
    }
    return after;
}

void GradingDialog::examine() {
    remove_->setEnabled(table_->rowCount() > 0);
    const auto typed = shoulders();
    if (!typed) return setProblem(QString::fromStdString(typed.error().message));
    const Result<Chart> ruled = setGrading(chart_, grading());
    setProblem(ruled ? QString() : QString::fromStdString(ruled.error().message));
}

}  // namespace lacewright::app
