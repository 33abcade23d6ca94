#include "app/window/plan_dialog.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "app/panels/wording.h"
#include "app/window/plan_fields.h"
#include "core/base/text.h"
#include "core/plan/gauge.h"
#include "core/plan/trade_offs.h"

namespace lacewright::app {

namespace {

constexpr QSize kUsualSize(860, 560);  // device-independent pixels
constexpr int kLeastColumn = 64;
constexpr int kPause = 120;  // milliseconds without a change

QLabel* sentenceLabel(QWidget* parent, const char* name) {
    auto* label = new QLabel(parent);
    label->setObjectName(QLatin1String(name));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

}  // namespace

PlanDialog::PlanDialog(const Chart& chart, QWidget* parent)
    : QDialog(parent),
      chart_(chart),
      fields_(new PlanFields(chart, this)),
      model_(new PlanModel(this)),
      table_(new QTableView(this)),
      about_(sentenceLabel(this, "about")),
      problem_(sentenceLabel(this, "problem")) {
    setWindowTitle(tr("Plan sizes"));
    fields_->setObjectName(QStringLiteral("fields"));
    resize(kUsualSize);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    use_ = buttons->addButton(tr("&Use these sizes"), QDialogButtonBox::AcceptRole);
    use_->setObjectName(QStringLiteral("accept"));
    use_->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    buildTable();
    problem_->setVisible(false);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 18, 20, 16);
    layout->setSpacing(12);
    layout->addWidget(fields_);
    layout->addWidget(table_, 1);
    layout->addWidget(about_);
    layout->addWidget(problem_);
    layout->addWidget(buttons);

    soon_.setSingleShot(true);
    soon_.setInterval(kPause);
    connect(&soon_, &QTimer::timeout, this, &PlanDialog::planNow);
    connect(fields_, &PlanFields::sourceChanged, this, &PlanDialog::takeSource);
    connect(fields_, &PlanFields::changed, &soon_, qOverload<>(&QTimer::start));
    takeSource();
    planNow();
}

void PlanDialog::buildTable() {
    table_->setObjectName(QStringLiteral("planTable"));
    table_->setAccessibleName(tr("Planned sizes"));
    table_->setModel(model_);
    table_->setShowGrid(false);
    table_->setAlternatingRowColors(true);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);
    table_->setWordWrap(false);
    table_->setMinimumHeight(120);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(table_->fontMetrics().height() + 10);
    QHeaderView* header = table_->horizontalHeader();
    header->setHighlightSections(false);
    header->setSectionResizeMode(QHeaderView::ResizeToContents);
    header->setSectionResizeMode(PlanModel::kLies, QHeaderView::Stretch);
    header->setMinimumSectionSize(kLeastColumn);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &PlanDialog::explain);
    connect(model_, &PlanModel::ticked, this, [this](int line, bool included) {
        included_[static_cast<std::size_t>(line)] = included;
        planNow();
    });
    connect(model_, &PlanModel::widthTyped, this, [this](int line, double cm) {
        typed_[static_cast<std::size_t>(line)] = cm;
        planNow();
    });
}

void PlanDialog::takeSource() {
    const std::size_t sizes = fields_->source().widths.size();
    included_.assign(sizes, true);
    typed_.assign(sizes, std::nullopt);
}

void PlanDialog::planNow() {
    soon_.stop();
    PlanRequest request = fields_->request();
    std::vector<PlanLine> lines;
    const auto& widths = fields_->source().widths;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        PlanLine line;
        line.wanted.name = widths[i].name;
        line.wanted.body = widths[i].body;
        line.wanted.cm = typed_[i].value_or(fields_->finishedCm(widths[i].cm));
        line.included = included_[i];
        if (line.included) request.sizes.push_back(line.wanted);
        lines.push_back(std::move(line));
    }
    plan_.reset();
    if (request.gauge.stitches <= 0 || request.gauge.rows <= 0) {
        showProblem(tr("Enter the gauge, stitches and rows, to see the plan."));
    } else if (request.sizes.empty()) {
        showProblem(tr("Tick the sizes to plan."));
    } else if (const Result<Plan> plan = planSizes(chart_, request); !plan) {
        showProblem(QString::fromStdString(plan.error().message));
    } else if (const Result<Chart> used = usePlan(chart_, *plan); !used) {
        showProblem(QString::fromStdString(used.error().message));
    } else {
        plan_ = *plan;
        showPlan(*used, lines);
        const bool anyFits = std::any_of(plan->sizes.begin(), plan->sizes.end(),
                                         [](const PlannedSize& size) { return size.chosen.fits; });
        showProblem(anyFits ? QString()
                            : tr("In no size do the rows of this chart fit one another; mend the "
                                 "chart first."));
    }
    model_->show(std::move(lines), fields_->unit());
    table_->setColumnHidden(PlanModel::kRows, fields_->lengthCm() <= 0);
    if (!table_->currentIndex().isValid()) table_->setCurrentIndex(model_->index(0, 0));
    explain();
}

void PlanDialog::showPlan(const Chart& used, std::vector<PlanLine>& lines) const {
    std::size_t next = 0;
    for (PlanLine& line : lines) {
        if (!line.included) continue;
        line.planned = plan_->sizes[next++];
        line.start = placeText(used, line.planned->chosen.reach.start);
        line.end = placeText(used, line.planned->chosen.reach.end);
        if (fields_->lengthCm() > 0) {
            line.rows = planLength(used, plan_->gauge.rows, fields_->lengthCm()).rows;
        }
    }
}

void PlanDialog::showProblem(const QString& sentence) {
    problem_->setText(sentence);
    problem_->setVisible(!sentence.isEmpty());
    use_->setEnabled(sentence.isEmpty());
}

void PlanDialog::explain() {
    QStringList told;
    const int row = table_->currentIndex().row();
    const auto& lines = model_->lines();
    if (row >= 0 && row < static_cast<int>(lines.size())) {
        const PlanLine& line = lines[static_cast<std::size_t>(row)];
        if (line.planned) {
            const PlannedSize& size = *line.planned;
            QString text = tr("Size %1: wanted %2, comes out at %3; %4.")
                               .arg(QString::fromStdString(size.wanted.name),
                                    QString::fromStdString(lengthText(size.wanted.cm)),
                                    QString::fromStdString(lengthText(size.chosen.cm)),
                                    QString::fromStdString(choiceWords(size.chosen)));
            for (const std::string& given : tradeOffs(size)) {
                text += tr(" Left aside: %1.").arg(QString::fromStdString(given));
            }
            told << text;
        }
    }
    if (plan_ && fields_->lengthCm() > 0) {
        const LengthPlan length = planLength(chart_, plan_->gauge.rows, fields_->lengthCm());
        told << tr("Length: %1, the row repeat worked %2: %3, difference %4.")
                    .arg(QString::fromStdString(counted(length.rows, "row", "rows")),
                         QString::fromStdString(counted(length.repeats, "time", "times")),
                         QString::fromStdString(lengthText(length.cm)),
                         QString::fromStdString(differenceText(length.differenceCm)));
    }
    if (plan_) {
        for (const std::string& lost : lostByPlan(chart_, *plan_)) {
            told << QString::fromStdString(lost);
        }
    }
    about_->setText(told.join(QLatin1Char('\n')));
    about_->setVisible(!told.isEmpty());
}

void PlanDialog::accept() {
    if (soon_.isActive()) planNow();
    if (use_->isEnabled()) QDialog::accept();
}

}  // namespace lacewright::app
