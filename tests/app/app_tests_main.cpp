#include <gtest/gtest.h>

#include <QApplication>
#include <QLocale>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>

// One program for all tests of the window. Settings go to a folder of the run; nothing of the
// person at the machine is read or written.
int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    testing::InitGoogleTest(&argc, argv);
    // Discovery runs the program while building, where there may be no display at all.
    if (GTEST_FLAG_GET(list_tests)) return RUN_ALL_TESTS();

    QStandardPaths::setTestModeEnabled(true);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const QTemporaryDir settings;
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    QApplication app(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("Lacewright tests"));
    QApplication::setApplicationName(QStringLiteral("app_tests"));
    return RUN_ALL_TESTS();
}
