// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/findings/invented_case.h"

#include "core/care/events.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <gtest/gtest.h>

using namespace littoral;
using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;

namespace {

class Builder
{
public:
    Builder(InventedCase& made, const QJsonObject& object)
        : m_case(made)
        , m_object(object)
    {
    }

    void build()
    {
        m_case.id = m_object[u"id"_s].toString();
        m_case.intended = m_object[u"intended"_s].toString();
        m_case.story = m_object[u"story"_s].toString();
        m_case.now = record::Moment::fromIso(u"2026-06-01T12:00:00Z"_s);
        record::Tank tank;
        tank.id = record::TankId{1};
        tank.name = u"Case"_s;
        m_case.row.tanks.push_back(tank);
        layout();
        record().layout = m_layout;
        readings();
        sights();
        events();
        record::sortRow(m_case.row);
    }

private:
    record::LayoutRecord& record() { return m_case.row.layouts[m_case.layout]; }

    [[nodiscard]] record::Moment ago(double days) const
    {
        return m_case.now.plusMs(static_cast<qint64>(-days * 86'400'000.0));
    }

    void layout()
    {
        static const std::map<QString, record::StartMethod> starts{
            {u"new_media"_s, record::StartMethod::NewMedia}, {u"mature_media"_s, record::StartMethod::MatureMedia}};
        static const std::map<QString, record::Bed> beds{
            {u"rich"_s, record::Bed::RichSoil}, {u"spent"_s, record::Bed::SpentSoil}, {u"inert"_s, record::Bed::Inert}};
        static const std::map<QString, record::Co2Mode> modes{{u"none"_s, record::Co2Mode::None},
                                                              {u"pressurised"_s, record::Co2Mode::Pressurised}};
        m_layout.id = m_case.layout;
        m_layout.tank = record::TankId{1};
        m_layout.flooded = ago(m_object[u"age"_s].toDouble());
        m_layout.start = starts.at(m_object[u"start"_s].toString());
        m_layout.bed = beds.at(m_object[u"bed"_s].toString());
        m_layout.co2 = modes.at(m_object[u"co2"_s].toString());
    }

    Entry& enter(EntryKind kind, const QString& subject, double daysAgo)
    {
        Entry entry;
        entry.id = record::EntryId{++m_next};
        entry.tank = record::TankId{1};
        entry.layout = m_case.layout;
        entry.kind = kind;
        entry.subject = subject;
        entry.at = ago(daysAgo);
        record().entries.push_back(entry);
        return record().entries.back();
    }

    void readings()
    {
        const QJsonObject given = m_object[u"readings"_s].toObject();
        for (const QString& name : given.keys()) {
            const facts::EvidenceKey* key = facts::builtInFacts().key(name);
            ASSERT_TRUE(key != nullptr && key->kind == facts::KeyKind::Reading) << name.toStdString();
            record::Reading reading;
            reading.id = record::ReadingId{++m_next};
            reading.tank = record::TankId{1};
            reading.layout = m_case.layout;
            reading.parameter = key->parameter;
            reading.at = ago(0.1);
            const auto typed = record::setTypedValue(reading, QString::number(given[name].toDouble()), key->unit);
            ASSERT_TRUE(typed.has_value()) << typed.error().sentence();
            record().readings.push_back(reading);
        }
    }

    void sights()
    {
        for (const QJsonValue& tick : m_object[u"seen"_s].toArray()) {
            const QString name = tick.toString().section(u'=', 0, 0);
            ASSERT_TRUE(facts::builtInFacts().key(name) != nullptr) << name.toStdString();
            enter(EntryKind::Observation, tick.toString(), 0.1);
        }
        const QJsonObject seen = m_object[u"observed"_s].toObject();
        for (const QString& subject : seen.keys()) {
            enter(EntryKind::Observation, subject, 0.1).severity = seen[subject].toInt();
        }
        if (m_object.contains(u"animals"_s)) {
            const double longAgo = std::min(40.0, m_object[u"age"_s].toDouble() * 0.6);
            if (!m_object[u"events"_s].toObject().contains(u"addition"_s)) {
                enter(EntryKind::Addition, m_object[u"animals"_s].toString(), longAgo).count = 10;
            }
        }
    }

    void events()
    {
        const QJsonObject given = m_object[u"events"_s].toObject();
        for (const QString& name : given.keys()) {
            const facts::EvidenceKey* key = facts::builtInFacts().key(name);
            ASSERT_TRUE(key != nullptr && key->kind == facts::KeyKind::Event) << name.toStdString();
            happened(*key, given[name].toDouble());
        }
        for (const QJsonValue& change : m_object[u"changes"_s].toArray()) {
            enter(EntryKind::WaterChange, {}, change[0].toDouble()).fraction = change[1].toDouble();
        }
    }

    void happened(const facts::EvidenceKey& key, double daysAgo)
    {
        if (!key.subjects.isEmpty()) {
            enter(EntryKind::Dose, key.subjects.front(), daysAgo);
        } else if (key.event == u"addition"_s) {
            const QString animals = m_object[u"animals"_s].toString(u"animals"_s);
            enter(EntryKind::Addition, animals, daysAgo).count = 6;
        } else if (key.event == u"light-change"_s) {
            enter(EntryKind::LightChange, {}, daysAgo);
        } else if (key.event == u"co2-change"_s) {
            enter(EntryKind::Co2Change, {}, daysAgo);
        } else {
            enter(EntryKind::Upkeep, key.event, daysAgo);
        }
    }

    InventedCase& m_case;
    QJsonObject m_object;
    record::Layout m_layout;
    qint64 m_next = 100;
};

} // namespace

InventedCase inventedCase(const QJsonObject& object)
{
    InventedCase made;
    Builder(made, object).build();
    return made;
}

std::vector<InventedCase> inventedCases()
{
    QFile file(QStringLiteral(LITTORAL_SOURCE_DIR "/tests/data/findings/cases.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    std::vector<InventedCase> all;
    for (const QJsonValue& value : QJsonDocument::fromJson(file.readAll())[u"cases"_s].toArray()) {
        all.push_back(inventedCase(value.toObject()));
    }
    return all;
}
