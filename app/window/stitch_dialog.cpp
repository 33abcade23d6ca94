#include "app/window/stitch_dialog.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QRegularExpression>
#include <QSpinBox>

#include "app/panels/stitch_icon.h"

namespace lacewright::app {

namespace {

QSpinBox* loops(QWidget* parent, const char* name, int low, int high, int value) {
    auto* box = new QSpinBox(parent);
    box->setObjectName(QLatin1String(name));
    box->setRange(low, high);
    box->setValue(value);
    return box;
}

// "left cable" becomes "left-cable": the name used in files.
std::string idFrom(const QString& name) {
    QString id = name.trimmed().toLower();
    id.replace(QRegularExpression(QStringLiteral("[\\s*\"]+")), QStringLiteral("-"));
    return id.toStdString();
}

StitchKind kindFor(int takes, int makes) {
    if (takes == 0 && makes == 0) return StitchKind::NoStitch;
    if (makes > takes) return StitchKind::Increase;
    if (makes < takes) return StitchKind::Decrease;
    return takes > 1 ? StitchKind::Gather : StitchKind::Texture;
}

}  // namespace

StitchDialog::StitchDialog(const Chart& chart, QWidget* parent)
    : FormDialog(tr("Define a stitch"),
                 tr("A stitch takes some loops off the left needle and makes some on the right "
                    "one. The program counts with exactly these numbers."),
                 tr("Add stitch"), parent),
      chart_(chart),
      name_(new QLineEdit(this)),
      rightSide_(new QLineEdit(this)),
      wrongSide_(new QLineEdit(this)),
      takes_(loops(this, "takes", 0, kMaxLoops, 1)),
      makes_(loops(this, "makes", 0, kMaxLoops, 1)),
      span_(loops(this, "span", 1, kMaxSpan, 1)),
      symbol_(new QComboBox(this)) {
    name_->setObjectName(QStringLiteral("name"));
    name_->setPlaceholderText(tr("for example nupp 5"));
    name_->setMaxLength(kMaxIdLength / 2);
    rightSide_->setObjectName(QStringLiteral("rightSide"));
    rightSide_->setPlaceholderText(tr("as written in a right-side row"));
    wrongSide_->setObjectName(QStringLiteral("wrongSide"));
    wrongSide_->setPlaceholderText(tr("as written in a wrong-side row, if it is worked there"));
    takes_->setSuffix(tr(" loops"));
    makes_->setSuffix(tr(" loops"));
    span_->setSuffix(tr(" cells"));
    symbol_->setObjectName(QStringLiteral("symbol"));
    form().addRow(tr("&Name"), name_);
    form().addRow(tr("&Takes"), takes_);
    form().addRow(tr("&Makes"), makes_);
    form().addRow(tr("&Covers"), span_);
    form().addRow(tr("&Symbol like"), symbol_);
    form().addRow(tr("&Right side"), rightSide_);
    form().addRow(tr("&Wrong side"), wrongSide_);
    connect(name_, &QLineEdit::textChanged, this, &StitchDialog::examine);
    connect(span_, &QSpinBox::valueChanged, this, &StitchDialog::offerSymbols);
    offerSymbols();
    examine();
}

void StitchDialog::offerSymbols() {
    symbol_->clear();
    const StitchCatalogue& stitches = *chart_.stitches;
    for (std::size_t i = 1; i <= stitches.size(); ++i) {
        const Stitch& known = stitches[static_cast<StitchIndex>(i)];
        if (known.span != span_->value() || known.glyph.empty()) continue;
        symbol_->addItem(stitchIcon(known, palette()), QString::fromStdString(known.name),
                         static_cast<int>(i));
    }
    if (symbol_->count() == 0) symbol_->addItem(tr("an empty cell"), 0);
}

void StitchDialog::examine() {
    const std::string id = idFrom(name_->text());
    if (id.empty()) {
        setProblem(tr("A stitch needs a name."));
    } else if (chart_.stitches->find(id)) {
        setProblem(tr("There is a stitch of this name already."));
    } else {
        setProblem({});
    }
}

Stitch StitchDialog::stitch() const {
    Stitch made;
    made.id = idFrom(name_->text());
    made.name = name_->text().trimmed().toStdString();
    made.takes = takes_->value();
    made.makes = makes_->value();
    made.span = span_->value();
    made.kind = kindFor(made.takes, made.makes);
    made.rightSide.abbreviation = rightSide_->text().trimmed().toStdString();
    made.wrongSide.abbreviation = wrongSide_->text().trimmed().toStdString();
    if (made.rightSide.abbreviation.empty()) made.rightSide.abbreviation = made.name;
    const int like = symbol_->currentData().toInt();
    if (like > 0) made.glyph = (*chart_.stitches)[static_cast<StitchIndex>(like)].glyph;
    return made;
}

}  // namespace lacewright::app
