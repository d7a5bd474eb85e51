// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/arguments.h"

#include "core/exchange/field_reader.h"
#include "core/exchange/instant.h"

#include <QCoreApplication>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

} // namespace

Arguments::Arguments(QString synopsis, const QString& description, QStringList examples)
    : m_synopsis(std::move(synopsis))
    , m_examples(std::move(examples))
{
    m_parser.setApplicationDescription(description);
    m_parser.addOption({{u"h"_s, u"help"_s}, words("Show this help.")});
}

void Arguments::flag(const QString& name, const QString& help)
{
    m_parser.addOption({name, help});
}

void Arguments::option(const QString& name, const QString& valueName, const QString& help)
{
    m_parser.addOption({name, help, valueName});
}

void Arguments::operand(const QString& name, const QString& help)
{
    m_parser.addPositionalArgument(name, help);
}

void Arguments::dataFormats()
{
    flag(u"json"_s, words("Print JSON instead of text."));
    flag(u"csv"_s, words("Print CSV instead of text."));
}

QString Arguments::help() const
{
    // The parser's own first line would name the program without the verb.
    QString text = words("Usage: littoralctl %1").arg(m_synopsis) + u'\n' + m_parser.helpText().section(u'\n', 1);
    if (!m_examples.isEmpty()) {
        text += u'\n' + words("Examples:") + u'\n';
        for (const QString& example : m_examples) {
            text += u"  "_s + example + u'\n';
        }
    }
    return text;
}

int Arguments::misused(Context& context, const QString& sentence) const
{
    const QString verb = m_synopsis.section(u' ', 0, m_synopsis.startsWith(u"tank "_s) ? 1 : 0);
    return context.fail(words("%1 See: littoralctl %2 --help").arg(sentence, verb), kUsage);
}

std::optional<int> Arguments::parse(Context& context, const QStringList& line, int fewest, int most)
{
    if (!m_parser.parse(QStringList{u"littoralctl"_s} + line)) {
        return misused(context, m_parser.errorText());
    }
    if (m_parser.isSet(u"help"_s)) {
        context.out << help();
        return kDone;
    }
    const auto count = m_parser.positionalArguments().size();
    if (count < fewest) {
        return misused(context, words("Something is missing: littoralctl %1.").arg(m_synopsis));
    }
    if (count > most) {
        return misused(context, words("\"%1\" is one too many.").arg(m_parser.positionalArguments().at(most)));
    }
    const QStringList known = m_parser.optionNames();
    if (known.contains(u"json"_s) && known.contains(u"csv"_s)) {
        return misused(context, words("Choose either --json or --csv."));
    }
    return std::nullopt;
}

std::optional<double> Arguments::number(Context& context, const QString& name, double lowest, double highest,
                                        bool& bad) const
{
    if (!isSet(name)) {
        return std::nullopt;
    }
    const std::optional<double> value = exchange::parseNumber(this->value(name));
    if (!value || *value < lowest || *value > highest) {
        misused(context,
                words("--%1 takes a number from %2 to %3, not \"%4\".")
                    .arg(name, exchange::numberText(lowest), exchange::numberText(highest), this->value(name)));
        bad = true;
        return std::nullopt;
    }
    return value;
}

std::optional<record::Moment> Arguments::instant(Context& context, const QString& name, bool& bad) const
{
    if (!isSet(name)) {
        return std::nullopt;
    }
    const std::optional<record::Moment> moment = exchange::parseInstant(value(name));
    if (!moment) {
        misused(context,
                words("--%1 takes a date such as 2026-11-25 or 2026-11-25T07:40, not \"%2\".").arg(name, value(name)));
        bad = true;
    }
    return moment;
}

} // namespace littoral::ctl
