#include "app/window/start_page.h"

#include <QCommandLinkButton>
#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/window/starter_picture.h"
#include "app/window/themed_icon.h"

namespace lacewright::app {

namespace {

constexpr int kColumnWidth = 380;  // device-independent pixels
constexpr QSize kPicture(72, 56);

QLabel* heading(const QString& text, double scale, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    QFont font = label->font();
    font.setPointSizeF(font.pointSizeF() * scale);
    font.setBold(true);
    label->setFont(font);
    return label;
}

QVBoxLayout* columnOf(QWidget* parent) {
    auto* column = new QVBoxLayout;
    column->setSpacing(6);
    auto* width = new QWidget(parent);
    width->setFixedSize(kColumnWidth, 0);
    column->addWidget(width);
    return column;
}

}  // namespace

StartPage::StartPage(QWidget* parent)
    : QWidget(parent), recent_(columnOf(this)), none_(new QLabel(this)) {
    setObjectName(QStringLiteral("startPage"));
    auto* title = new QHBoxLayout;
    auto* icon = new QLabel(this);
    icon->setPixmap(programIcon().pixmap(48, 48));
    title->addWidget(icon);
    title->addSpacing(10);
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(heading(tr("Lacewright"), 1.8, this));
    words->addWidget(new QLabel(tr("Draw a lace chart once; prove it for every size."), this));
    title->addLayout(words);
    title->addStretch(1);

    auto* starters = columnOf(this);
    starters->addWidget(heading(tr("Begin with"), 1.1, this));
    buildStarters(*starters);
    starters->addStretch(1);

    recent_->addWidget(heading(tr("Go on with"), 1.1, this));
    none_->setText(tr("Charts you open or save will be listed here."));
    none_->setWordWrap(true);
    recent_->addWidget(none_);
    auto* open = new QPushButton(tr("Open a chart…"), this);
    open->setObjectName(QStringLiteral("startOpen"));
    open->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    connect(open, &QPushButton::clicked, this, &StartPage::openWanted);
    recent_->addSpacing(8);
    recent_->addWidget(open);
    recent_->addStretch(1);

    auto* columns = new QHBoxLayout;
    columns->addLayout(starters);
    columns->addSpacing(40);
    columns->addLayout(recent_);
    auto* middle = new QVBoxLayout;
    middle->addStretch(1);
    middle->addLayout(title);
    middle->addSpacing(28);
    middle->addLayout(columns);
    middle->addStretch(2);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(24, 24, 24, 24);
    layout->addStretch(1);
    layout->addLayout(middle);
    layout->addStretch(1);
}

void StartPage::buildStarters(QVBoxLayout& column) {
    for (const Starter& starter : starters()) {
        auto* button = new QCommandLinkButton(tr(starter.title), tr(starter.about), this);
        button->setObjectName(QStringLiteral("starter-") + QLatin1String(starter.file));
        button->setIcon(starterPicture(starter, palette(), kPicture));
        button->setIconSize(kPicture);
        connect(button, &QCommandLinkButton::clicked, this,
                [this, &starter] { Q_EMIT starterChosen(starter); });
        column.addWidget(button);
    }
    auto* fresh = new QPushButton(tr("New chart of another size…"), this);
    fresh->setObjectName(QStringLiteral("startNew"));
    fresh->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    connect(fresh, &QPushButton::clicked, this, &StartPage::newWanted);
    column.addSpacing(8);
    column.addWidget(fresh);
}

void StartPage::showRecent(const QStringList& files) {
    for (QCommandLinkButton* old : findChildren<QCommandLinkButton*>(QStringLiteral("recent"))) {
        old->setObjectName({});
        old->hide();
        old->deleteLater();
    }
    none_->setVisible(files.isEmpty());
    constexpr int kListed = 6;
    constexpr int kAboveList = 2;  // the column's width holder and its heading
    int place = kAboveList;
    for (const QString& file : files.mid(0, kListed)) {
        const QFileInfo info(file);
        QString folder = info.absolutePath();
        if (folder.startsWith(QDir::homePath())) {
            folder.replace(0, QDir::homePath().size(), QStringLiteral("~"));
        }
        auto* button = new QCommandLinkButton(info.completeBaseName(), folder, this);
        button->setObjectName(QStringLiteral("recent"));
        button->setToolTip(QDir::toNativeSeparators(file));
        button->setIcon(themedIcon(QStringLiteral("open"), palette()));
        connect(button, &QCommandLinkButton::clicked, this,
                [this, file] { Q_EMIT fileChosen(file); });
        recent_->insertWidget(place++, button);
    }
}

}  // namespace lacewright::app
