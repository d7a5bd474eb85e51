// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv_table.h"

#include <QCoreApplication>
#include <QStringDecoder>
#include <algorithm>
#include <array>
#include <optional>

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Exchange", text);
}

Error badFile(const QString& where, const QString& what, const QString& mend)
{
    return {Fault::BadInput, what.toStdString(), where.toStdString(), mend.toStdString()};
}

Error badRow(const QString& fileName, int row, const QString& what, const QString& mend)
{
    return badFile(words("%1, row %2").arg(fileName, QString::number(row)), what, mend);
}

std::optional<QString> decoded(const QByteArray& bytes)
{
    const auto encoding = QStringConverter::encodingForData(bytes).value_or(QStringConverter::Utf8);
    QStringDecoder decoder(encoding);
    QString text = decoder(bytes);
    if (decoder.hasError()) {
        return std::nullopt;
    }
    if (text.startsWith(QChar::ByteOrderMark)) {
        text.remove(0, 1);
    }
    return text;
}

/// The candidate that occurs most often in the first line outside quotes; the comma when there is none.
QChar separatorOf(const QString& text)
{
    constexpr std::array<char16_t, 3> kCandidates{u',', u';', u'\t'};
    std::array<int, 3> counts{};
    bool quoted = false;
    for (const QChar c : text) {
        if (c == u'"') {
            quoted = !quoted;
        } else if (!quoted && (c == u'\n' || c == u'\r')) {
            break;
        } else if (!quoted) {
            const auto found = std::ranges::find(kCandidates, c.unicode());
            if (found != kCandidates.end()) {
                ++counts[static_cast<std::size_t>(found - kCandidates.begin())];
            }
        }
    }
    const auto most = std::ranges::max_element(counts);
    return *most == 0 ? QChar(u',') : QChar(kCandidates[static_cast<std::size_t>(most - counts.begin())]);
}

/// The state machine: one call of next() per record.
class Scanner final
{
public:
    Scanner(const QString& text, QChar separator)
        : m_text(text)
        , m_separator(separator)
    {
    }

    enum class Trouble { None, OpenQuote, TextAfterQuote };

    [[nodiscard]] bool atEnd() const { return m_at >= m_text.size(); }

    Trouble next(QStringList& cells)
    {
        cells.clear();
        while (true) {
            QString cell;
            const Trouble trouble = atEnd() || m_text[m_at] != u'"' ? readBare(cell) : readQuoted(cell);
            cells << cell;
            if (trouble != Trouble::None) {
                return trouble;
            }
            if (atEnd()) {
                return Trouble::None;
            }
            const QChar end = m_text[m_at++];
            if (end == m_separator) {
                continue;
            }
            if (end == u'\r' && !atEnd() && m_text[m_at] == u'\n') {
                ++m_at;
            }
            return Trouble::None;
        }
    }

private:
    [[nodiscard]] bool endsField(QChar c) const { return c == m_separator || c == u'\n' || c == u'\r'; }

    /// A quote inside a bare field stands for itself: a note such as 3" of sand.
    Trouble readBare(QString& cell)
    {
        const qsizetype start = m_at;
        while (!atEnd() && !endsField(m_text[m_at])) {
            ++m_at;
        }
        cell = m_text.mid(start, m_at - start);
        return Trouble::None;
    }

    Trouble readQuoted(QString& cell)
    {
        ++m_at;
        while (true) {
            const qsizetype quote = m_text.indexOf(u'"', m_at);
            if (quote < 0) {
                m_at = m_text.size();
                return Trouble::OpenQuote;
            }
            cell += QStringView(m_text).mid(m_at, quote - m_at);
            m_at = quote + 1;
            if (!atEnd() && m_text[m_at] == u'"') {
                cell += u'"';
                ++m_at;
                continue;
            }
            return atEnd() || endsField(m_text[m_at]) ? Trouble::None : Trouble::TextAfterQuote;
        }
    }

    const QString& m_text;
    QChar m_separator;
    qsizetype m_at = 0;
};

bool isBlank(const QStringList& cells)
{
    return std::ranges::all_of(cells, [](const QString& cell) { return cell.trimmed().isEmpty(); });
}

Result<CsvTable> scan(const QString& text, const QString& fileName)
{
    CsvTable table;
    table.separator = separatorOf(text);
    Scanner scanner(text, table.separator);
    QStringList cells;
    for (int row = 1; !scanner.atEnd(); ++row) {
        switch (scanner.next(cells)) {
        case Scanner::Trouble::OpenQuote:
            return badRow(fileName, row, words("A quotation mark is opened and never closed."),
                          words("Close it, or double it if it belongs to the text."));
        case Scanner::Trouble::TextAfterQuote:
            return badRow(fileName, row, words("There is text after a closing quotation mark."),
                          words("Put the whole cell in quotation marks and double those inside it."));
        case Scanner::Trouble::None:
            break;
        }
        if (row == 1) {
            for (const QString& cell : std::as_const(cells)) {
                table.columns << cell.trimmed();
            }
        } else if (!isBlank(cells)) {
            table.records.push_back({row, cells});
        }
    }
    return table;
}

} // namespace

Result<CsvTable> readCsv(const QByteArray& bytes, const QString& fileName)
{
    const std::optional<QString> text = decoded(bytes);
    if (!text) {
        return badFile(fileName, words("This is not text in UTF-8."), words("Save it as CSV with the encoding UTF-8."));
    }
    Result<CsvTable> table = scan(*text, fileName);
    if (table && isBlank(table->columns)) {
        return badFile(fileName, words("There is no header in the first row."),
                       words("Name the columns there: tank, date, parameter, value, unit."));
    }
    return table;
}

QString csvLine(const QStringList& cells)
{
    QString line;
    for (qsizetype i = 0; i < cells.size(); ++i) {
        if (i > 0) {
            line += u',';
        }
        const QString& cell = cells[i];
        const bool needsQuotes =
            std::ranges::any_of(cell, [](QChar c) { return c == u',' || c == u'"' || c == u'\n' || c == u'\r'; });
        line += needsQuotes ? u'"' + QString(cell).replace(u'"', u"\"\""_s) + u'"' : cell;
    }
    return line + u"\r\n"_s;
}

} // namespace littoral::exchange
