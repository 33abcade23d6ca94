#include "app/window/help_controller.h"

#include <QDialog>
#include <QDialogButtonBox>
#include <QKeySequence>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "app/canvas/mnemonics.h"
#include "app/window/action_set.h"
#include "core/stitch/catalogue.h"

namespace lacewright::app {

namespace {

constexpr QSize kWindow(560, 560);  // device-independent pixels

QString line(const QString& key, const QString& text) {
    return QStringLiteral(
               "<tr><td style='padding:2px 18px 2px 0'><b>%1</b></td>"
               "<td style='padding:2px 0'>%2</td></tr>")
        .arg(key.toHtmlEscaped(), text.toHtmlEscaped());
}

QString section(const QString& title, const QString& lines) {
    return QStringLiteral("<h3>%1</h3><table>%2</table>").arg(title.toHtmlEscaped(), lines);
}

QString withoutMarks(const char* text) {
    QString plain = QString::fromUtf8(text);
    return plain.remove(QLatin1Char('&'));
}

QString stitchKeys() {
    QString lines;
    for (const Mnemonic& mnemonic : mnemonics()) {
        const auto index = builtInStitches()->find(mnemonic.stitch);
        if (!index) continue;
        lines += line(QString(QLatin1Char(mnemonic.key)),
                      QString::fromStdString((*builtInStitches())[*index].name));
    }
    return lines;
}

}  // namespace

HelpController::HelpController(ActionSet& actions, QWidget& window)
    : QObject(&window), window_(window) {
    actions.on(CommandId::ShortcutList,
               [this] { show(QStringLiteral("keys"), tr("Keys"), keyList()); });
    actions.on(CommandId::About, [this] {
        show(QStringLiteral("about"), tr("About Lacewright"),
             tr("<h2>Lacewright %1</h2><p>Draw lace knitting charts for many sizes, and prove that "
                "every row takes exactly the loops the row below made, for every size and any "
                "number of repeats.</p><p>Free software; the licence is in the file LICENSE that "
                "comes with it. Made with Qt.</p>")
                 .arg(QStringLiteral(LACEWRIGHT_VERSION)));
    });
}

QString HelpController::keyList() {
    QString all;
    QString lines;
    Menu menu = Menu::File;
    const auto finish = [&] {
        const QString title =
            menu == Menu::None ? tr("Stitches by number") : withoutMarks(menuTitle(menu));
        if (!lines.isEmpty()) all += section(title, lines);
        lines.clear();
    };
    for (const Command& command : commandTable()) {
        if (command.menu != menu) finish();
        menu = command.menu;
        const QKeySequence key(QString::fromLatin1(command.shortcut));
        if (!key.isEmpty()) {
            lines += line(key.toString(QKeySequence::NativeText), withoutMarks(command.text));
        }
    }
    finish();
    return all + section(tr("Stitches by letter, in the chart"), stitchKeys());
}

void HelpController::show(const QString& name, const QString& title, const QString& richText) {
    auto* dialog = window_.findChild<QDialog*>(name);
    if (!dialog) {
        dialog = new QDialog(&window_);
        dialog->setObjectName(name);
        dialog->setWindowTitle(title);
        dialog->resize(kWindow);
        auto* text = new QTextBrowser(dialog);
        text->setHtml(richText);
        text->setFrameShape(QFrame::NoFrame);
        auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, dialog);
        connect(buttons, &QDialogButtonBox::rejected, dialog, &QWidget::close);
        auto* layout = new QVBoxLayout(dialog);
        layout->addWidget(text);
        layout->addWidget(buttons);
    }
    dialog->show();
    dialog->raise();
    dialog->activateWindow();
}

}  // namespace lacewright::app
