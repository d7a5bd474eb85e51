// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/work_template.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <algorithm>
#include <array>
#include <iterator>
#include <set>

namespace littoral::care {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Templates", text);
}

template <typename T> struct Code
{
    const char* code;
    T value;
};

constexpr std::array kStarts{
    Code{"new-media", record::StartMethod::NewMedia}, Code{"mature-media", record::StartMethod::MatureMedia},
    Code{"starter", record::StartMethod::Starter}, Code{"dry-start", record::StartMethod::DryStart},
    Code{"dark-start", record::StartMethod::DarkStart}};
constexpr std::array kBeds{Code{"rich", record::Bed::RichSoil}, Code{"mild", record::Bed::MildSoil},
                           Code{"spent", record::Bed::SpentSoil}, Code{"inert", record::Bed::Inert}};
constexpr std::array kCo2{Code{"none", record::Co2Mode::None}, Code{"pressurised", record::Co2Mode::Pressurised},
                          Code{"other", record::Co2Mode::Other}};
constexpr std::array kKinds{Code{"water-change", WorkKind::WaterChange}, Code{"test", WorkKind::Test},
                            Code{"upkeep", WorkKind::Upkeep}, Code{"look", WorkKind::Look},
                            Code{"decide", WorkKind::Decide}};

/// Reads one template, remembering the first thing that is wrong with it.
class Reader
{
public:
    explicit Reader(QString where)
        : m_where(std::move(where))
    {
    }

    [[nodiscard]] bool failed() const { return m_failed; }
    [[nodiscard]] Error error() const
    {
        const QString mend = m_mend.isEmpty() ? words("Correct that field; nothing was changed.") : m_mend;
        return {Fault::BadInput, m_what.toStdString(), m_where.toStdString(), mend.toStdString()};
    }

    void complain(const QString& what, const QString& mend = {})
    {
        if (!m_failed) {
            m_failed = true;
            m_what = what;
            m_mend = mend;
        }
    }

    void allow(const QJsonObject& object, const std::set<QString>& known)
    {
        for (const QString& key : object.keys()) {
            if (!known.contains(key)) {
                complain(words("There is no field \"%1\".").arg(key),
                         words("The fields there are: %1.").arg(QStringList(known.begin(), known.end()).join(u", "_s)));
            }
        }
    }

    QString text(const QJsonObject& object, const QString& key, bool required = false)
    {
        const QJsonValue value = object[key];
        if (!value.isString() && (required || !value.isUndefined())) {
            complain(words("\"%1\" must be a text.").arg(key));
        } else if (required && value.toString().trimmed().isEmpty()) {
            complain(words("\"%1\" is empty.").arg(key), words("Fill it in."));
        }
        return value.toString();
    }

    std::optional<double> number(const QJsonObject& object, const QString& key, double low, double high)
    {
        const QJsonValue value = object[key];
        if (value.isUndefined()) {
            return std::nullopt;
        }
        if (!value.isDouble() || value.toDouble() < low || value.toDouble() > high) {
            complain(words("\"%1\" must be a number from %2 to %3.").arg(key).arg(low).arg(high),
                     words("Type a number in that range."));
            return std::nullopt;
        }
        return value.toDouble();
    }

    std::optional<int> whole(const QJsonObject& object, const QString& key, int low, int high)
    {
        const auto value = number(object, key, low, high);
        if (value && *value != static_cast<int>(*value)) {
            complain(words("\"%1\" must be a whole number.").arg(key));
        }
        return value ? std::optional(static_cast<int>(*value)) : std::nullopt;
    }

    std::optional<bool> flag(const QJsonObject& object, const QString& key)
    {
        const QJsonValue value = object[key];
        if (value.isUndefined()) {
            return std::nullopt;
        }
        if (!value.isBool()) {
            complain(words("\"%1\" must be true or false.").arg(key));
        }
        return value.toBool();
    }

    template <typename T, std::size_t N>
    std::optional<T> code(const QString& text, const QString& key, const std::array<Code<T>, N>& codes)
    {
        for (const Code<T>& known : codes) {
            if (text == QLatin1String(known.code)) {
                return known.value;
            }
        }
        QStringList all;
        std::ranges::transform(codes, std::back_inserter(all),
                               [](const Code<T>& known) { return QString::fromLatin1(known.code); });
        complain(words("\"%1\" is not a value of \"%2\".").arg(text, key),
                 words("The values there are: %1.").arg(all.join(u", "_s)));
        return std::nullopt;
    }

    template <typename T, std::size_t N>
    std::vector<T> codes(const QJsonObject& object, const QString& key, const std::array<Code<T>, N>& all)
    {
        std::vector<T> found;
        for (const QJsonValue& value : list(object, key)) {
            if (const auto known = code(value.toString(), key, all)) {
                found.push_back(*known);
            }
        }
        return found;
    }

    QJsonArray list(const QJsonObject& object, const QString& key)
    {
        const QJsonValue value = object[key];
        if (!value.isUndefined() && !value.isArray()) {
            complain(words("\"%1\" must be a list.").arg(key));
        }
        return value.toArray();
    }

    QString parameter(const QString& key)
    {
        const record::Parameter* known = record::findParameter(key);
        if (known == nullptr || known->key != key) {
            QStringList all;
            for (const record::Parameter& parameter : record::parameters()) {
                all << parameter.key;
            }
            complain(words("There is no parameter \"%1\".").arg(key),
                     words("The parameters there are: %1.").arg(all.join(u", "_s)));
        }
        return key;
    }

    Condition condition(const QJsonObject& o)
    {
        allow(o, {u"start"_s, u"bed"_s, u"co2"_s, u"rock-hardens"_s, u"net-below"_s, u"net-from"_s, u"animals"_s,
                  u"shrimp"_s, u"plants"_s, u"pure-water"_s, u"recorded"_s, u"reading-below"_s});
        Condition c;
        c.start = codes(o, u"start"_s, kStarts);
        c.bed = codes(o, u"bed"_s, kBeds);
        c.co2 = codes(o, u"co2"_s, kCo2);
        c.rockHardens = flag(o, u"rock-hardens"_s);
        c.netBelow_L = number(o, u"net-below"_s, 0, 1e6);
        c.netFrom_L = number(o, u"net-from"_s, 0, 1e6);
        c.animals = flag(o, u"animals"_s);
        c.shrimp = flag(o, u"shrimp"_s);
        c.plants = flag(o, u"plants"_s);
        c.pureWater = flag(o, u"pure-water"_s);
        c.recorded = text(o, u"recorded"_s);
        const QJsonObject below = o[u"reading-below"_s].toObject();
        for (const QString& key : below.keys()) {
            c.readingBelow[parameter(key)] = number(below, key, 0, 1e6).value_or(0);
        }
        return c;
    }

    Round round(const QJsonObject& o)
    {
        allow(o, {u"every"_s, u"from"_s, u"to"_s, u"once"_s, u"after"_s, u"days"_s, u"if-raised"_s, u"leaves"_s,
                  u"returns"_s, u"fraction"_s, u"range"_s, u"when"_s});
        Round r;
        r.every = number(o, u"every"_s, 1, 4000).value_or(0);
        r.once = whole(o, u"once"_s, -60, 4000);
        r.to = whole(o, u"to"_s, 0, 40000);
        r.from = whole(o, u"from"_s, 0, 4000).value_or(static_cast<int>(r.every + 0.5));
        for (const QJsonValue& value : list(o, u"after"_s)) {
            const auto event = eventFromCode(value.toString());
            if (!event) {
                complain(words("There is no event \"%1\".").arg(value.toString()),
                         words("Events are, for instance, addition, loss, filter-service, trim, co2-change."));
                continue;
            }
            r.after.push_back(*event);
        }
        days(o, r);
        r.ifRaised = flag(o, u"if-raised"_s).value_or(false);
        r.leaves = whole(o, u"leaves"_s, -60, 60);
        r.returns = whole(o, u"returns"_s, -60, 60);
        fractions(o, r);
        r.when = condition(o[u"when"_s].toObject());
        const int ways = (r.every > 0 ? 1 : 0) + (r.once ? 1 : 0) + (r.after.empty() ? 0 : 1) + (r.leaves ? 1 : 0) +
                         (r.returns ? 1 : 0);
        if (ways != 1) {
            complain(words("A round needs one of \"every\", \"once\", \"after\", \"leaves\" or \"returns\"."),
                     words("Fill in exactly one of them."));
        }
        if (r.ifRaised && r.after.empty()) {
            complain(words("\"if-raised\" goes with \"after\"."), words("Give the event it follows, or leave it out."));
        }
        if (r.to && *r.to < r.from) {
            complain(words("A round ends on day %1, before it begins on day %2.").arg(*r.to).arg(r.from));
        }
        if (r.every > 0 && r.every * 2.0 != static_cast<int>(r.every * 2.0)) {
            complain(words("\"every\" counts in days or half days."), words("Type 7, or 3.5 for twice a week."));
        }
        return r;
    }

    void days(const QJsonObject& o, Round& r)
    {
        for (const QJsonValue& value : list(o, u"days"_s)) {
            if (!value.isDouble() || value.toInt(-1) < 0 || (!r.days.empty() && value.toInt() <= r.days.back())) {
                complain(words("\"days\" must be whole days after the event, rising."));
                continue;
            }
            r.days.push_back(value.toInt());
        }
        if (r.after.empty() != r.days.empty()) {
            complain(words("\"after\" and \"days\" belong together."),
                     words("Say on which days after the event, such as 1 3 7; 0 is the day itself."));
        }
    }

    void fractions(const QJsonObject& o, Round& r)
    {
        r.fraction = number(o, u"fraction"_s, 0.01, 1.0);
        const QJsonArray range = list(o, u"range"_s);
        if (range.isEmpty()) {
            return;
        }
        r.fractionLow = range.at(0).toDouble(-1);
        r.fractionHigh = range.at(1).toDouble(-1);
        if (range.size() != 2 || !r.fraction || *r.fractionLow > *r.fraction || *r.fractionHigh < *r.fraction) {
            complain(words("\"range\" must be two fractions with \"fraction\" between them."),
                     words("Widen the range, or leave it out."));
        }
    }

    std::vector<Variant> variants(const QJsonObject& o)
    {
        std::vector<Variant> found;
        if (o.contains(u"rounds"_s)) {
            found.push_back(variant(QJsonObject{{u"key"_s, u"plain"_s}, {u"rounds"_s, o[u"rounds"_s]}}));
        }
        for (const QJsonValue& value : list(o, u"variants"_s)) {
            found.push_back(variant(value.toObject()));
        }
        if (found.empty()) {
            complain(words("It has no rounds."), words("Add one: how often, once at an age, or days after an event."));
        }
        return found;
    }

    Variant variant(const QJsonObject& o)
    {
        allow(o, {u"key"_s, u"when"_s, u"rounds"_s});
        Variant v;
        v.key = text(o, u"key"_s, true);
        v.when = condition(o[u"when"_s].toObject());
        for (const QJsonValue& value : list(o, u"rounds"_s)) {
            v.rounds.push_back(round(value.toObject()));
        }
        if (v.rounds.empty()) {
            complain(words("It has no rounds."));
        }
        return v;
    }

    Closing closing(const QJsonObject& o)
    {
        allow(o, {u"entry"_s, u"subject"_s, u"readings"_s});
        Closing c;
        if (o.contains(u"entry"_s)) {
            c.kind = record::entryKindFromCode(o[u"entry"_s].toString());
            if (!c.kind) {
                complain(words("There is no kind of entry \"%1\".").arg(o[u"entry"_s].toString()));
            }
        }
        c.subject = text(o, u"subject"_s);
        for (const QJsonValue& value : list(o, u"readings"_s)) {
            QStringList choices = value.toString().split(u'|');
            for (const QString& key : choices) {
                (void)parameter(key);
            }
            c.readings.push_back(std::move(choices));
        }
        return c;
    }

    WorkTemplate work(const QJsonObject& o)
    {
        allow(o, {u"key"_s, u"title"_s, u"kind"_s, u"scope"_s, u"applies"_s, u"rounds"_s, u"variants"_s, u"closes"_s,
                  u"minutes"_s, u"grace"_s, u"priority"_s, u"lapse"_s, u"rolls"_s, u"consequence"_s, u"caution"_s,
                  u"source"_s, u"helper"_s});
        WorkTemplate w;
        w.key = text(o, u"key"_s, true);
        w.title = text(o, u"title"_s, true);
        w.kind = code(text(o, u"kind"_s, true), u"kind"_s, kKinds).value_or(WorkKind::Upkeep);
        const QString scope = text(o, u"scope"_s);
        w.wholeRow = scope == u"row"_s;
        if (!scope.isEmpty() && !w.wholeRow && scope != u"tank"_s) {
            complain(words("\"%1\" is not a value of \"%2\".").arg(scope, u"scope"_s));
        }
        w.applies = condition(o[u"applies"_s].toObject());
        w.variants = variants(o);
        w.closes = closing(o[u"closes"_s].toObject());
        w.minutes = whole(o, u"minutes"_s, 1, 600).value_or(5);
        w.grace = whole(o, u"grace"_s, 0, 400).value_or(0);
        w.priority = whole(o, u"priority"_s, 1, 3).value_or(3);
        w.lapse = whole(o, u"lapse"_s, 0, 400);
        w.rolls = flag(o, u"rolls"_s).value_or(false);
        w.consequence = text(o, u"consequence"_s, true);
        w.source = text(o, u"source"_s, true);
        w.caution = text(o, u"caution"_s);
        w.helper = text(o, u"helper"_s);
        static const QRegularExpression cautionId(u"^(C-[A-Z0-9]+)?$"_s);
        if (!cautionId.match(w.caution).hasMatch()) {
            complain(words("\"%1\" is not the id of a caution.").arg(w.caution),
                     words("Leave it empty, or take an id of the guide's cautions, such as C-ELEC."));
        }
        checkKind(w);
        return w;
    }

    void checkKind(const WorkTemplate& w)
    {
        if (w.kind == WorkKind::Test && !w.closes.byReadings()) {
            complain(words("A test is closed by readings; none are named."),
                     words("Name the parameters that are read, such as tan or no2."));
        }
        if (w.kind != WorkKind::WaterChange) {
            return;
        }
        for (const Variant& v : w.variants) {
            for (const Round& r : v.rounds) {
                if (!r.fraction) {
                    complain(words("A water change needs its fraction."),
                             words("Say how much of the water is changed in each of its rounds."));
                }
            }
        }
    }

private:
    QString m_where;
    QString m_what;
    QString m_mend;
    bool m_failed = false;
};

Result<WorkTemplate> readObject(const QJsonValue& value, const QString& where)
{
    Reader reader(where);
    if (!value.isObject()) {
        reader.complain(words("It is not an object."));
        return reader.error();
    }
    WorkTemplate work = reader.work(value.toObject());
    if (reader.failed()) {
        return reader.error();
    }
    return work;
}

Result<QJsonDocument> document(const QByteArray& json)
{
    QJsonParseError problem;
    QJsonDocument parsed = QJsonDocument::fromJson(json, &problem);
    if (problem.error != QJsonParseError::NoError) {
        return Error{
            Fault::BadInput,
            words("It is not JSON: %1 at character %2.").arg(problem.errorString()).arg(problem.offset).toStdString(),
            words("task templates").toStdString(),
            {}};
    }
    return parsed;
}

} // namespace

Result<WorkTemplate> parseTemplate(const QByteArray& json)
{
    const auto parsed = document(json);
    if (!parsed) {
        return parsed.error();
    }
    const QJsonObject object = parsed->object();
    return readObject(object, words("task template \"%1\"").arg(object[u"key"_s].toString()));
}

Result<std::vector<WorkTemplate>> parseTemplates(const QByteArray& json)
{
    const auto parsed = document(json);
    if (!parsed) {
        return parsed.error();
    }
    std::vector<WorkTemplate> all;
    std::set<QString> keys;
    int place = 0;
    for (const QJsonValue& value : parsed->object()[u"templates"_s].toArray()) {
        const QString where = words("task template %1, \"%2\"").arg(++place).arg(value[u"key"_s].toString());
        auto work = readObject(value, where);
        if (!work) {
            return work.error();
        }
        if (!keys.insert(work->key).second) {
            return Error{Fault::BadInput, words("The key is there twice.").toStdString(), where.toStdString(), {}};
        }
        all.push_back(std::move(work).value());
    }
    if (all.empty()) {
        return Error{Fault::BadInput,
                     words("There are no templates in it.").toStdString(),
                     words("task templates").toStdString(),
                     {}};
    }
    return all;
}

} // namespace littoral::care
