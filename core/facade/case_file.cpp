// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/case_file.h"

#include "core/care/age.h"
#include "core/facade/case_parts.h"
#include "core/facade/lane_parts.h"
#include "core/findings/change_points.h"
#include "core/findings/changes.h"
#include "core/findings/exposure.h"
#include "core/wording/entry_words.h"
#include "core/wording/finding_sentences.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using facts::KeyKind;
using findings::ChangeKind;
using findings::Judged;
using record::Entry;
using record::EntryKind;
using record::Moment;

namespace {

constexpr std::size_t kShown = 5; ///< findings told in full
constexpr std::size_t kWeakShown = 12;
constexpr std::size_t kUnknownShown = 4;
constexpr std::size_t kStepsShown = 8;

QString words(const char* text)
{
    return QCoreApplication::translate("CaseFile", text);
}

QStringList factTexts(const QStringList& sources)
{
    QStringList said;
    for (const QString& source : sources) {
        said << wording::factText(source);
    }
    return said;
}

class Maker
{
public:
    Maker(const record::Row& row, const record::LayoutRecord& layout, const CaseRequest& request, const Moment& now)
        : m_row(row)
        , m_layout(layout)
        , m_set(facts::factsFor(row))
        , m_at(std::min(layout.layout.ended.value_or(now), now))
        , m_from(request.question.onset.plusDays(-request.lookBackDays))
    {
        m_file.request = request;
        m_file.today = now.localDate();
    }

    CaseFile make()
    {
        head();
        count();
        const findings::Report report = findings::findings(m_set.book, m_row, m_layout, m_at);
        findingsOf(report);
        changes();
        exposures();
        steps();
        m_file.talk = talkOf(m_layout, care::limitsOf(m_row), report, m_at);
        m_file.comparison = comparisonOf(m_row, m_layout, m_file.request, fallback(), m_at);
        strip();
        return std::move(m_file);
    }

private:
    [[nodiscard]] const Moment& onset() const { return m_file.request.question.onset; }
    [[nodiscard]] QString day(const Moment& at) const { return wording::dateText(at.localDate(), m_file.today); }
    [[nodiscard]] bool isInWindow(const Moment& at) const { return at >= m_from && at <= onset(); }

    void head()
    {
        const record::Layout& layout = m_layout.layout;
        m_file.tankName = layoutTitle(m_row, m_layout);
        const record::Tank* tank = m_row.tank(layout.tank);
        const auto net = tank == nullptr ? std::nullopt : record::netVolume(*tank, layout);
        const QString age = wording::ageText(care::ageDays(layout, m_at.localDate()));
        const QString flooded = wording::dateText(layout.flooded.localDate(), m_file.today);
        m_file.heading = net ? words("%1 · %2 · flooded %3").arg(wording::litresText(net->litres), age, flooded)
                             : words("%1 · flooded %2").arg(age, flooded);
        const bool open = m_file.request.question.subject.isEmpty();
        m_file.opening = open ? words("The %1 days up to %2").arg(m_file.request.lookBackDays).arg(day(onset()))
                              : words("The %1 days before it was first written down, on %2")
                                    .arg(m_file.request.lookBackDays)
                                    .arg(day(onset()));
    }

    void count()
    {
        int readings = 0;
        int seen = 0;
        int done = 0;
        for (const record::Reading& reading : m_layout.readings) {
            readings += isInWindow(reading.at) ? 1 : 0;
        }
        for (const Entry& entry : m_layout.entries) {
            if (!entry.planned && isInWindow(entry.at)) {
                (entry.kind == EntryKind::Observation ? seen : done) += 1;
            }
        }
        m_file.silent = m_layout.readings.empty() && m_layout.entries.empty();
        m_file.rests =
            words("In the window: readings %1, entries %2, observations %3").arg(readings).arg(done).arg(seen);
    }

    [[nodiscard]] CaseEvidence evidence(const Judged& judged, EvidenceSide side) const
    {
        CaseEvidence made;
        made.side = side;
        made.key = judged.item == nullptr ? judged.named : judged.item->key;
        if (side != EvidenceSide::Unknown) {
            made.text = wording::evidenceText(judged, m_set.book, m_file.today);
            made.rests = recordOf(judged, m_set.book, m_layout);
            return made;
        }
        made.text = wording::unknownText(judged, m_set.book);
        if (const facts::EvidenceKey* key = m_set.book.key(made.key)) {
            askFor(*key, made);
        }
        return made;
    }

    static void askFor(const facts::EvidenceKey& key, CaseEvidence& made)
    {
        made.key = key.key;
        switch (key.kind) {
        case KeyKind::Tick:
            for (const auto& [code, text] : key.values) {
                made.answers.push_back({u"%1=%2"_s.arg(key.key, code), wording::factText(text)});
            }
            break;
        case KeyKind::Number:
            made.number = true;
            made.low = key.low;
            made.high = key.high;
            made.unit = key.unit;
            break;
        case KeyKind::Reading:
            made.parameter = key.parameter;
            break;
        default:
            break;
        }
    }

    [[nodiscard]] CaseFinding finding(const findings::Finding& found) const
    {
        const facts::Condition& condition = *found.condition;
        CaseFinding made;
        made.id = condition.id;
        made.name = wording::factText(condition.name);
        made.look = wording::factText(condition.look);
        made.support = found.support;
        made.supportWord = wording::supportText(found.support);
        made.bar = found.bar;
        for (const Judged* judged : found.holding()) {
            made.evidence.push_back(evidence(*judged, EvidenceSide::For));
        }
        for (const Judged* judged : found.opposing()) {
            made.evidence.push_back(evidence(*judged, EvidenceSide::Against));
        }
        addUnknown(found, made);
        made.cautions = wording::wholeCautions(m_set.book, condition.cautions);
        made.deferral = wording::healthDeferral(condition);
        made.actions = factTexts(condition.actions);
        made.avoid = factTexts(condition.avoid);
        made.nextLook = wording::factText(condition.check);
        made.source = condition.own ? words("yours: %1").arg(condition.source) : wording::factText(condition.source);
        return made;
    }

    void addUnknown(const findings::Finding& found, CaseFinding& made) const
    {
        std::size_t shown = 0;
        for (const Judged* judged : found.unknown()) {
            CaseEvidence one = evidence(*judged, EvidenceSide::Unknown);
            const bool again = std::ranges::any_of(made.evidence, [&](const CaseEvidence& other) {
                return other.side == EvidenceSide::Unknown && other.text == one.text;
            });
            if (!again && !one.text.isEmpty() && shown < kUnknownShown) {
                made.evidence.push_back(std::move(one));
                ++shown;
            }
        }
    }

    void findingsOf(const findings::Report& report)
    {
        for (const findings::Finding& found : report.ranked) {
            const bool worth = found.seen && found.support != findings::Support::Against;
            if (worth && m_file.findings.size() < kShown) {
                m_file.findings.push_back(finding(found));
            } else if (m_file.weak.size() < kWeakShown) {
                m_file.weak.push_back(finding(found));
            }
        }
        m_file.aboveAll = wording::factText(m_set.book.aboveAll);
        if (report.check) {
            CaseCheck check;
            check.text = wording::checkText(*report.check);
            check.outcomes = wording::checkAnswers(*report.check);
            check.ask.side = EvidenceSide::Unknown;
            check.ask.text = check.text;
            askFor(*report.check->key, check.ask);
            m_file.check = std::move(check);
        }
    }

    [[nodiscard]] static Glyph glyphOf(const findings::Change& change)
    {
        switch (change.kind) {
        case ChangeKind::LightHours:
        case ChangeKind::LightPar:
            return Glyph::Light;
        case ChangeKind::Co2Target:
            return Glyph::Co2;
        case ChangeKind::Feeding:
            return Glyph::Feed;
        case ChangeKind::WaterChanged:
        case ChangeKind::LargestChange:
            return Glyph::WaterChange;
        case ChangeKind::Dose:
            return Glyph::Dose;
        case ChangeKind::Reading:
            return Glyph::Test;
        case ChangeKind::Event:
            break;
        }
        return change.key.startsWith(u"trim"_s)     ? Glyph::Trim
               : change.key == u"addition"_s        ? Glyph::In
               : change.key == u"loss"_s            ? Glyph::Loss
               : change.key.startsWith(u"media"_s)  ? Glyph::Media
               : change.key.startsWith(u"light"_s)  ? Glyph::Light
               : change.key.startsWith(u"co2"_s)    ? Glyph::Co2
               : change.key == u"cylinder-change"_s ? Glyph::Cylinder
                                                    : Glyph::Upkeep;
    }

    void changes()
    {
        const findings::ChangeReview review =
            findings::whatChanged(m_row, m_layout, onset(), m_file.request.lookBackDays);
        for (const findings::Change& change : review.changes) {
            CaseChange made;
            made.parameter = change.kind == ChangeKind::Reading ? change.key : QString();
            made.glyph = glyphOf(change);
            made.name = wording::changeName(change);
            made.before = wording::changeFigure(change, change.before);
            made.after = wording::changeFigure(change, change.after);
            made.size = wording::changeSize(change);
            made.daysBefore = std::max(0, static_cast<int>(std::floor(record::daysBetween(change.first, onset()))));
            made.sentence = words("%1 %2.").arg(wording::changeText(change, m_file.today), made.size);
            made.rests = recordsAt(change.first, made.parameter);
            m_file.changes.push_back(std::move(made));
        }
    }

    [[nodiscard]] std::vector<RecordRef> recordsAt(const Moment& at, const QString& parameter) const
    {
        std::vector<RecordRef> found;
        for (const record::Reading& reading : m_layout.readings) {
            if (!parameter.isEmpty() && reading.parameter == parameter && reading.at == at) {
                found.push_back({{}, reading.id, at.utcMs()});
            }
        }
        for (const Entry& entry : m_layout.entries) {
            if (parameter.isEmpty() && entry.at == at && !entry.planned) {
                found.push_back({entry.id, {}, at.utcMs()});
            }
        }
        return found;
    }

    void exposures()
    {
        for (const findings::Limit& limit : findings::limitsFor(m_row, m_layout, m_at)) {
            const findings::Exposure found = findings::exposure(m_row, m_layout, limit, m_from, m_at);
            if (found.readings == 0) {
                continue;
            }
            CaseExposure made;
            made.parameter = limit.parameter;
            const QString value = wording::valueWithUnit(limit.parameter, limit.value);
            const QString name = wording::parameterName(limit.parameter);
            made.limit = limit.above ? words("%1 above %2").arg(name, value) : words("%1 below %2").arg(name, value);
            made.furthest = wording::valueWithUnit(limit.parameter, found.worst);
            made.hours = found.hours;
            made.low = found.hoursLow;
            made.high = found.hoursHigh;
            made.notRead = found.gapHours;
            made.sentence = wording::exposureText(found, m_file.today);
            m_file.exposures.push_back(std::move(made));
        }
        std::ranges::stable_sort(m_file.exposures, std::greater<>{}, &CaseExposure::hours);
    }

    void steps()
    {
        for (const record::Parameter& parameter : record::parameters()) {
            for (const findings::ChangePoint& point : findings::changePoints(m_layout, parameter.key, m_at)) {
                m_file.steps.push_back({parameter.key, wording::changePointText(parameter.key, point, m_file.today),
                                        isInWindow(point.after), point.after.utcMs()});
            }
        }
        std::ranges::stable_sort(m_file.steps, [](const CaseStep& a, const CaseStep& b) {
            return a.inWindow != b.inWindow ? a.inWindow : a.at > b.at;
        });
        if (m_file.steps.size() > kStepsShown) {
            m_file.steps.resize(kStepsShown);
        }
    }

    /// The reading that moved most in the window, else the one read most in it.
    [[nodiscard]] QString fallback() const
    {
        for (const CaseChange& change : m_file.changes) {
            if (!change.parameter.isEmpty()) {
                return change.parameter;
            }
        }
        QString most;
        qsizetype best = 0;
        for (const record::Parameter& parameter : record::parameters()) {
            const auto all = m_layout.readingsOf(parameter.key);
            const auto inside =
                std::ranges::count_if(all, [this](const record::Reading* r) { return r->at >= m_from; });
            if (inside > best) {
                best = inside;
                most = parameter.key;
            }
        }
        return most;
    }

    void strip()
    {
        CaseStrip& strip = m_file.strip;
        strip.flooded = m_layout.layout.flooded.utcMs();
        if (m_layout.layout.ended) {
            strip.ended = m_layout.layout.ended->utcMs();
        }
        strip.from = std::max(m_from.utcMs(), std::min(strip.flooded, onset().utcMs()));
        strip.onset = onset().utcMs();
        const Moment from(strip.from, onset().offsetSeconds());
        strip.bracket = words("What changed, %1 to %2").arg(day(from), day(onset()));
        strip.onsetText =
            m_file.request.question.subject.isEmpty() ? QString() : words("first seen %1").arg(day(onset()));
        strip.events = eventsOf(m_layout);
        QStringList keys;
        for (const CaseChange& change : m_file.changes) {
            if (!change.parameter.isEmpty() && !keys.contains(change.parameter)) {
                keys << change.parameter;
            }
        }
        if (keys.isEmpty()) {
            keys << fallback();
        }
        StripSeries cover = coverSeries(m_layout, m_file.request.question.subject);
        const bool covered = !m_file.request.question.subject.isEmpty() && cover.series.marks.size() > 1;
        for (const QString& key : keys.mid(0, covered ? 1 : 2)) {
            StripSeries made{seriesOf(m_row, m_layout, key, nullptr), {}};
            for (const LaneMark& mark : made.series.marks) {
                made.refs.push_back({{}, mark.reading, mark.at});
            }
            if (!made.series.marks.empty()) {
                strip.series.push_back(std::move(made));
            }
        }
        if (covered) {
            strip.series.push_back(std::move(cover));
        }
    }

    const record::Row& m_row;
    const record::LayoutRecord& m_layout;
    const facts::FactSet m_set;
    const Moment m_at;
    const Moment m_from;
    CaseFile m_file;
};

} // namespace

CaseFile caseFile(const record::Row& row, const CaseRequest& request, const record::Moment& now)
{
    const record::LayoutRecord* layout = row.layout(request.question.layout);
    if (layout == nullptr) {
        CaseFile empty;
        empty.request = request;
        empty.today = now.localDate();
        return empty;
    }
    return Maker(row, *layout, request, now).make();
}

} // namespace littoral::facade
