#include "app/window/starters.h"

#include <QFile>

#include "core/file/chart_text.h"

namespace lacewright::app {

namespace {

constexpr int kBlankWidth = 13;
constexpr int kBlankHeight = 12;

}  // namespace

const std::vector<Starter>& starters() {
    static const std::vector<Starter> list = {
        {"", QT_TR_NOOP("Blank chart"), QT_TR_NOOP("13 stitches, 12 rows of plain knitting")},
        {"leaf-scarf", QT_TR_NOOP("Leaf scarf"),
         QT_TR_NOOP("Flat lace with one repeat and three widths")},
        {"arrow-sock", QT_TR_NOOP("Arrow sock"), QT_TR_NOOP("A small panel in the round")},
        {"leaf-scarf-with-a-slip", QT_TR_NOOP("Find the slip"),
         QT_TR_NOOP("The leaf scarf with one stitch drawn wrong: see how the check finds it")},
    };
    return list;
}

const Starter& firstStarter() {
    return starters()[1];
}

Result<Chart> chartOf(const Starter& starter) {
    if (*starter.file == '\0') return blankChart(kBlankWidth, kBlankHeight);
    QFile file(QStringLiteral(":/starters/%1.lacewright").arg(QLatin1String(starter.file)));
    if (!file.open(QIODevice::ReadOnly)) {
        return Error{ErrorCode::NotFound, "The chart is not built in.", starter.file};
    }
    return readChart(file.readAll().toStdString(), starter.file);
}

}  // namespace lacewright::app
