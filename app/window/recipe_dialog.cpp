#include "app/window/recipe_dialog.h"

#include <QClipboard>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QGuiApplication>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/window/dialog_layout.h"

namespace lacewright::app {

namespace {

constexpr int kTextWidth = 420;  // device-independent pixels, about 65 letters
constexpr int kRecipeLines = 5;

}  // namespace

RecipeDialog::RecipeDialog(const QString& title, const QString& sentence, QWidget* parent)
    : QDialog(parent), form_(newForm()), layout_(newDialogLayout(this)) {
    setWindowTitle(title);
    layout_->addWidget(wrappedLabel(sentence, kTextWidth, this));
    layout_->addLayout(form_);
}

void RecipeDialog::addRecipe() {
    recipe_ = new QPlainTextEdit(this);
    recipe_->setObjectName(QStringLiteral("recipe"));
    recipe_->setAccessibleName(tr("Recipe"));
    recipe_->setReadOnly(true);
    recipe_->setTabChangesFocus(true);
    recipe_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    recipe_->setMinimumHeight(kRecipeLines * recipe_->fontMetrics().lineSpacing());
    recipe_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    auto* label = new QLabel(tr("Reci&pe"), this);
    label->setBuddy(recipe_);
    problem_ = wrappedLabel({}, kTextWidth, this);
    problem_->setObjectName(QStringLiteral("problem"));
    problem_->setVisible(false);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    copy_ = buttons->addButton(tr("&Copy recipe"), QDialogButtonBox::ActionRole);
    copy_->setObjectName(QStringLiteral("copy"));
    copy_->setDefault(true);
    connect(copy_, &QPushButton::clicked, this, &RecipeDialog::copy);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    layout_->addWidget(label);
    layout_->addWidget(recipe_, 1);
    layout_->addWidget(problem_);
    layout_->addWidget(buttons);
}

void RecipeDialog::showRecipe(const Result<std::string>& recipe) {
    recipe_->setPlainText(recipe ? QString::fromStdString(*recipe) : QString());
    problem_->setText(recipe ? QString() : QString::fromStdString(recipe.error().message));
    problem_->setVisible(!recipe);
    copy_->setEnabled(bool(recipe));
    copy_->setText(tr("&Copy recipe"));
}

void RecipeDialog::copy() {
    QGuiApplication::clipboard()->setText(recipe_->toPlainText());
    copy_->setText(tr("Copied"));
}

}  // namespace lacewright::app
