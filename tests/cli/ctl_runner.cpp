// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/ctl_runner.h"

#include <QFile>
#include <QProcess>
#include <QProcessEnvironment>

namespace littoral::test {

using namespace Qt::StringLiterals;

void Ctl::SetUp()
{
    ASSERT_TRUE(m_directory.isValid());
}

Outcome Ctl::run(const QStringList& arguments, const QString& now) const
{
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(u"LITTORAL_NOW"_s, now);
    environment.insert(u"TZ"_s, u"UTC"_s);
    process.setProcessEnvironment(environment);
    process.setWorkingDirectory(m_directory.path());
    process.start(QStringLiteral(LITTORALCTL), arguments);
    Outcome outcome;
    if (!process.waitForFinished(110'000) || process.exitStatus() != QProcess::NormalExit) {
        ADD_FAILURE() << "littoralctl " << arguments.join(u' ').toStdString() << " did not end";
        return outcome;
    }
    outcome.code = process.exitCode();
    outcome.out = process.readAllStandardOutput();
    outcome.err = process.readAllStandardError();
    return outcome;
}

QByteArray Ctl::expect(int code, const QStringList& arguments) const
{
    const Outcome outcome = run(arguments);
    EXPECT_EQ(outcome.code, code) << arguments.join(u' ').toStdString() << "\n" << outcome.err.toStdString();
    return code == 0 ? outcome.out : outcome.err;
}

QString Ctl::write(const QString& name, const QByteArray& bytes) const
{
    QFile file(path(name));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    return path(name);
}

QByteArray Ctl::read(const QString& name) const
{
    QFile file(path(name));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
    return file.readAll();
}

QString Ctl::storeWithTank(const QString& name, const QString& tank) const
{
    const QString store = path(name);
    expect(0, {u"init"_s, store});
    expect(0, {u"import"_s, store, write(tank + u".json"_s, tankFile(tank))});
    return store;
}

QByteArray tankFile(const QString& name)
{
    QByteArray text = R"({
  "format": "littoral-tank", "version": 1, "name": "NAME", "net_litres": 80,
  "flooded": "2026-11-09T10:00:00Z", "start": "new-media", "bed": {"kind": "rich-soil", "litres": 12},
  "source": {"name": "tap", "alkalinity_meq_per_l": 1.4, "nitrate_mg_per_l": 8, "nitrate_as": "NO3", "chloramine": "no"},
  "co2": {"on": true, "target_mg_per_l": 22, "hours": 7}, "temperature_c": 24, "plants": "dense",
  "kits": [
    {"name": "card", "parameter": "tan", "unit": "mg/L NH4", "kind": "card", "steps": [0, 0.25, 0.5, 1, 2, 4, 8]},
    {"name": "card", "parameter": "no2", "unit": "mg/L NO2", "kind": "card", "steps": [0, 0.25, 0.5, 1, 2, 5]}
  ],
  "entries": [
    {"kind": "water-change", "at": {"day": 2}, "fraction": 0.5},
    {"kind": "water-change", "at": {"day": 6}, "fraction": 0.5},
    {"kind": "water-change", "at": {"day": 20}, "planned": true, "fraction": 0.4}
  ],
  "readings": [
    {"at": {"day": 3}, "parameter": "tan", "value": 2, "kit": "card"},
    {"at": {"day": 7}, "parameter": "tan", "value": 1, "kit": "card"},
    {"at": {"day": 7}, "parameter": "no2", "value": 0.5, "kit": "card"},
    {"at": {"day": 12}, "parameter": "tan", "value": 0.25, "kit": "card"},
    {"at": {"day": 12}, "parameter": "no2", "value": 2, "kit": "card"}
  ]
})";
    return text.replace("NAME", name.toUtf8());
}

std::vector<QStringList> cells(const QByteArray& csv)
{
    std::vector<QStringList> rows;
    const QStringList lines = QString::fromUtf8(csv).split(u"\r\n"_s, Qt::SkipEmptyParts);
    for (const QString& line : lines) {
        rows.push_back(line.split(u','));
    }
    return rows;
}

} // namespace littoral::test
