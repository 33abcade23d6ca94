#include "app/window/run_window.h"

#include <QApplication>

#include "app/document/journal.h"
#include "app/window/appearance.h"
#include "app/window/dialog_prompts.h"
#include "app/window/themed_icon.h"
#include "app/window/window_set.h"

namespace lacewright::app {

int runWindow(int argc, char** argv, const QStringList& files) {
    QApplication app(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("Lacewright"));
    QApplication::setApplicationName(QStringLiteral("Lacewright"));
    QApplication::setApplicationVersion(QStringLiteral(LACEWRIGHT_VERSION));
    QGuiApplication::setDesktopFileName(QStringLiteral("lacewright"));
    initResources();
    QApplication::setWindowIcon(programIcon());
    useAppearance(rememberedAppearance());
    DialogPrompts prompts;
    WindowSet windows(prompts, Journal::usualFolder());
    windows.start(files);
    return QApplication::exec();
}

}  // namespace lacewright::app
