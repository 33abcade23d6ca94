#include "app/window/difference_page.h"

#include <QCoreApplication>
#include <QUrl>
#include <algorithm>

#include "core/base/text.h"
#include "core/words/difference_words.h"

namespace lacewright::app {

namespace {

constexpr std::size_t kContext = 5;      // stitches shown on either side of a difference
constexpr std::size_t kMostChanges = 8;  // spelled out for one row
constexpr std::size_t kMostShown = 200;  // rows; more have one cause, not hundreds

QString say(const char* text) {
    return QCoreApplication::translate("DifferencePage", text);
}

QString escaped(const std::string& text) {
    return QString::fromStdString(text).toHtmlEscaped();
}

QString linked(std::size_t difference, std::size_t stitch, const QString& text,
               const QPalette& palette) {
    return QStringLiteral("<a href=\"stitch:%1:%2\" style=\"color: %3;\">%4</a>")
        .arg(difference)
        .arg(stitch)
        .arg(palette.color(QPalette::Text).name(), text);
}

// The stitches around the first difference in two lines of a table.
QString alignedHtml(std::size_t index, const RowDifference& difference, const QPalette& palette) {
    const std::size_t at = difference.firstDifference();
    const std::size_t first = at > kContext ? at - kContext : 0;
    const std::size_t last = std::min(difference.stitches.size(), at + kContext + 1);
    QColor ground = palette.color(QPalette::Highlight);
    ground = QColor((ground.red() + 2 * palette.color(QPalette::Base).red()) / 3,
                    (ground.green() + 2 * palette.color(QPalette::Base).green()) / 3,
                    (ground.blue() + 2 * palette.color(QPalette::Base).blue()) / 3);
    const auto line = [&](const QString& title, std::string ContrastedStitch::*words) {
        QString html = QStringLiteral("<tr><td style=\"padding-right: 10px;\">%1</td>").arg(title);
        if (first > 0) html += QStringLiteral("<td>…</td>");
        for (std::size_t i = first; i < last; ++i) {
            const std::string& word = difference.stitches[i].*words;
            const QString text = word.empty() ? QStringLiteral("–") : escaped(word);
            html +=
                QStringLiteral("<td align=\"center\"%1>&nbsp;%2&nbsp;</td>")
                    .arg(i == at ? QStringLiteral(" bgcolor=\"%1\"").arg(ground.name()) : QString(),
                         linked(index, i, i == at ? QStringLiteral("<b>%1</b>").arg(text) : text,
                                palette));
        }
        if (last < difference.stitches.size()) html += QStringLiteral("<td>…</td>");
        return html + QStringLiteral("</tr>");
    };
    return QStringLiteral("<table cellspacing=\"0\" cellpadding=\"2\">%1%2</table>")
        .arg(line(say("chart"), &ContrastedStitch::charted),
             line(say("text"), &ContrastedStitch::written));
}

QString changesHtml(std::size_t index, const RowDifference& difference, const QPalette& palette) {
    const std::vector<ContrastedStitch> changes = difference.changes();
    QString html =
        QStringLiteral("<p style=\"margin: 4px 0 0 0;\">%1</p><ul style=\"margin: 0;\">")
            .arg(say("Smallest change of either: %1")
                     .arg(QString::fromStdString(
                         counted(static_cast<long long>(changes.size()), "stitch", "stitches"))));
    for (std::size_t i = 0; i < std::min(changes.size(), kMostChanges); ++i) {
        const auto found =
            std::find(difference.stitches.begin(), difference.stitches.end(), changes[i]);
        const auto stitch = static_cast<std::size_t>(found - difference.stitches.begin());
        html += QStringLiteral("<li>%1</li>")
                    .arg(linked(index, stitch, escaped(changeSentence(changes[i])), palette));
    }
    if (changes.size() > kMostChanges) {
        html += QStringLiteral("<li>%1</li>")
                    .arg(say("and %1 more").arg(changes.size() - kMostChanges));
    }
    return html + QStringLiteral("</ul>");
}

}  // namespace

QString differencesHtml(const std::vector<RowDifference>& differences, const std::string& row,
                        const QPalette& palette) {
    QString html;
    for (std::size_t i = 0; i < std::min(differences.size(), kMostShown); ++i) {
        const RowDifference& difference = differences[i];
        html += QStringLiteral("<p style=\"margin: 10px 0 4px 0;\">%1</p>")
                    .arg(linked(i, difference.firstDifference(),
                                escaped(differenceSentence(difference, row)), palette));
        if (!areAligned(difference)) continue;
        html += alignedHtml(i, difference, palette) + changesHtml(i, difference, palette);
    }
    if (differences.size() > kMostShown) {
        html += QStringLiteral("<p>%1</p>")
                    .arg(say("and %1 rows more").arg(differences.size() - kMostShown));
    }
    return html;
}

std::optional<LinkedStitch> stitchOfLink(const QUrl& link,
                                         const std::vector<RowDifference>& differences) {
    const QStringList parts = link.toString().split(QLatin1Char(':'));
    if (parts.size() != 3 || parts[0] != QLatin1String("stitch")) return std::nullopt;
    if (parts[1].toUInt() >= differences.size()) return std::nullopt;
    const RowDifference& difference = differences[parts[1].toUInt()];
    LinkedStitch linked{difference.number, {}};
    if (parts[2].toUInt() < difference.stitches.size()) {
        linked.stitch = difference.stitches[parts[2].toUInt()];
    }
    return linked;
}

}  // namespace lacewright::app
