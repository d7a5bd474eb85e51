// SPDX-License-Identifier: GPL-3.0-or-later
// The layers of the code, proved from its includes: who may know whom.
#include <QDirIterator>
#include <QFile>
#include <QMap>
#include <QRegularExpression>
#include <QStringList>
#include <gtest/gtest.h>

namespace {

using namespace Qt::StringLiterals;

struct Include
{
    QString file; ///< below the source tree
    int line = 0;
    QString what;
};

std::vector<Include> includesBelow(const QString& folder)
{
    static const QRegularExpression pattern(u"^\\s*#\\s*include\\s*[<\"]([^>\"]+)[>\"]"_s);
    const QString root = QStringLiteral(LITTORAL_SOURCE_DIR);
    std::vector<Include> found;
    QDirIterator files(root + u'/' + folder, {u"*.h"_s, u"*.cpp"_s}, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        QFile file(files.next());
        EXPECT_TRUE(file.open(QIODevice::ReadOnly | QIODevice::Text));
        int number = 0;
        while (!file.atEnd()) {
            ++number;
            if (const auto match = pattern.match(QString::fromUtf8(file.readLine())); match.hasMatch()) {
                found.push_back({file.fileName().mid(root.size() + 1), number, match.captured(1)});
            }
        }
    }
    return found;
}

QStringList offenders(const QString& folder, const QRegularExpression& forbidden)
{
    QStringList list;
    for (const Include& include : includesBelow(folder)) {
        if (forbidden.match(include.what).hasMatch()) {
            list << u"%1:%2 includes %3"_s.arg(include.file).arg(include.line).arg(include.what);
        }
    }
    return list;
}

const QRegularExpression
    kWidgets(u"^(QtWidgets|QtCharts|QWidget|QApplication|QMainWindow|QDialog|QMessageBox|QChart|QLabel|QPushButton|"
             u"QAbstractScrollArea|QTableView|QLineEdit|QComboBox|QMenu|QStyle|QProxyStyle|QGraphics)"_s);
const QRegularExpression kSql(u"^(QtSql|QSql)"_s);
const QRegularExpression kQt(u"^(Qt|Q[A-Z])"_s);

std::string listed(const QStringList& lines)
{
    return lines.join(u'\n').toStdString();
}

} // namespace

TEST(Layers, TheTreeIsFound)
{
    EXPECT_GT(includesBelow(u"core"_s).size(), 100u);
}

TEST(Layers, CoreKnowsNoWidgetsAndNoCharts)
{
    const QStringList found = offenders(u"core"_s, kWidgets);
    EXPECT_TRUE(found.isEmpty()) << listed(found);
}

TEST(Layers, WaterSimulationAndForecastKnowNoQtAtAll)
{
    for (const QString& folder : {u"core/base"_s, u"core/water"_s, u"core/sim"_s, u"core/forecast"_s}) {
        const QStringList found = offenders(folder, kQt);
        EXPECT_TRUE(found.isEmpty()) << listed(found);
    }
}

TEST(Layers, OnlyTheStoreKnowsSql)
{
    for (const QString& folder : {u"core/record"_s, u"core/care"_s, u"core/facts"_s, u"core/findings"_s,
                                  u"core/wording"_s, u"core/exchange"_s, u"core/facade"_s, u"ui"_s, u"app"_s}) {
        const QStringList found = offenders(folder, kSql);
        EXPECT_TRUE(found.isEmpty()) << listed(found);
    }
}

TEST(Layers, ArrowsOnlyGoDown)
{
    const QMap<QString, QStringList> below{
        {u"core/base"_s, {}},
        {u"core/water"_s, {u"core/base"_s}},
        {u"core/sim"_s, {u"core/base"_s, u"core/water"_s}},
        {u"core/forecast"_s, {u"core/base"_s, u"core/water"_s, u"core/sim"_s}},
        {u"core/record"_s, {u"core/base"_s, u"core/water"_s}},
        {u"core/care"_s, {u"core/base"_s, u"core/water"_s, u"core/record"_s, u"core/forecast"_s}},
        {u"core/facts"_s, {u"core/base"_s, u"core/water"_s, u"core/record"_s, u"core/care"_s}},
        {u"core/findings"_s, {u"core/base"_s, u"core/water"_s, u"core/record"_s, u"core/care"_s, u"core/facts"_s}},
        {u"core/wording"_s,
         {u"core/base"_s, u"core/water"_s, u"core/record"_s, u"core/forecast"_s, u"core/care"_s, u"core/facts"_s,
          u"core/findings"_s}},
        {u"core/sheets"_s, {u"core/base"_s, u"core/water"_s, u"core/record"_s, u"core/wording"_s}},
        {u"core/store"_s, {u"core/base"_s, u"core/water"_s, u"core/record"_s}},
        {u"core/exchange"_s, {u"core/base"_s, u"core/water"_s, u"core/record"_s}},
    };
    QStringList found;
    for (auto it = below.begin(); it != below.end(); ++it) {
        for (const Include& include : includesBelow(it.key())) {
            if (!include.what.startsWith(u"core/"_s) && !include.what.startsWith(u"ui/"_s)) {
                continue;
            }
            const QString folder = include.what.section(u'/', 0, 1);
            if (folder != it.key() && !it->contains(folder)) {
                found << u"%1:%2 includes %3"_s.arg(include.file).arg(include.line).arg(include.what);
            }
        }
    }
    for (const Include& include : includesBelow(u"core"_s)) {
        if (include.what.startsWith(u"ui/"_s)) {
            found << u"%1:%2 includes %3"_s.arg(include.file).arg(include.line).arg(include.what);
        }
    }
    EXPECT_TRUE(found.isEmpty()) << listed(found);
}

TEST(Layers, NoUmbrellaIncludes)
{
    static const QRegularExpression umbrella(
        u"^(QtCore|QtGui|QtWidgets|QtCharts|QtSql)(/QtCore|/QtGui|/QtWidgets|/QtCharts|/QtSql)?$"_s);
    for (const QString& folder : {u"core"_s, u"ui"_s, u"app"_s}) {
        const QStringList found = offenders(folder, umbrella);
        EXPECT_TRUE(found.isEmpty()) << listed(found);
    }
}
