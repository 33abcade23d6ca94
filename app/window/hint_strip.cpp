#include "app/window/hint_strip.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QSettings>
#include <QToolButton>

namespace lacewright::app {

namespace {

const QString kKey = QStringLiteral("hintsDismissed");

}  // namespace

bool HintStrip::isWanted() {
    return !QSettings().value(kKey).toBool();
}

HintStrip::HintStrip(QWidget* parent) : QFrame(parent) {
    setObjectName(QStringLiteral("hintStrip"));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::AlternateBase);
    auto* text = new QLabel(
        tr("<b>Welcome.</b> Choose a stitch and click in the chart, or move with the arrow "
           "keys and press Space. Every change is checked at once, for every size: put a "
           "mistake in, and take it back with Ctrl+Z."),
        this);
    text->setWordWrap(true);
    auto* close = new QToolButton(this);
    close->setText(tr("Got it"));
    close->setObjectName(QStringLiteral("closeHint"));
    close->setFocusPolicy(Qt::TabFocus);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(14, 8, 10, 8);
    layout->addWidget(text, 1);
    layout->addWidget(close, 0, Qt::AlignTop);
    connect(close, &QToolButton::clicked, this, &HintStrip::dismiss);
}

void HintStrip::dismiss() {
    QSettings().setValue(kKey, true);
    hide();
}

}  // namespace lacewright::app
