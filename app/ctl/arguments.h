// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/ctl/context.h"

#include <QCommandLineParser>
#include <optional>

namespace littoral::ctl {

/// The command line of one verb: its options and operands, its help with examples. Unlike the bare parser it never ends
/// the process.
class Arguments final
{
public:
    /// synopsis: "forecast FILE (--tank NAME | --all) [options]". examples: one command line each.
    Arguments(QString synopsis, const QString& description, QStringList examples);

    void flag(const QString& name, const QString& help);
    void option(const QString& name, const QString& valueName, const QString& help);
    void operand(const QString& name, const QString& help);
    /// Adds --json and --csv; parse() refuses both at once.
    void dataFormats();

    /// Nothing when the verb is to go on; else the exit code (help was asked for, or the line was not understood).
    [[nodiscard]] std::optional<int> parse(Context& context, const QStringList& words, int fewest, int most);

    [[nodiscard]] QStringList operands() const { return m_parser.positionalArguments(); }
    [[nodiscard]] bool isSet(const QString& name) const { return m_parser.isSet(name); }
    [[nodiscard]] QString value(const QString& name) const { return m_parser.value(name); }
    [[nodiscard]] bool json() const { return m_parser.isSet(QStringLiteral("json")); }
    [[nodiscard]] bool csv() const { return m_parser.isSet(QStringLiteral("csv")); }

    /// Writes what is wrong with the line, and where help is; returns kUsage.
    int misused(Context& context, const QString& sentence) const;

    /// The option as a number in range; nothing when it is not set. `bad` becomes true, and the sentence has been
    /// written, when it does not parse.
    [[nodiscard]] std::optional<double> number(Context& context, const QString& name, double lowest, double highest,
                                               bool& bad) const;
    /// The option as an instant; a day alone is noon.
    [[nodiscard]] std::optional<record::Moment> instant(Context& context, const QString& name, bool& bad) const;

private:
    [[nodiscard]] QString help() const;

    QString m_synopsis;
    QStringList m_examples;
    QCommandLineParser m_parser;
};

} // namespace littoral::ctl
