// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/text_table.h"

#include "core/exchange/csv_table.h"

#include <algorithm>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

bool isNumeric(const QString& cell)
{
    return cell.isEmpty() || std::ranges::all_of(cell, [](QChar c) {
               return c.isDigit() || c == u'.' || c == u'–' || c == u'-' || c == u'<';
           });
}

} // namespace

QString textTable(const QStringList& head, const std::vector<QStringList>& rows, int indent)
{
    const qsizetype columns = head.size();
    std::vector<qsizetype> widths;
    std::vector<bool> right;
    for (qsizetype c = 0; c < columns; ++c) {
        qsizetype width = head[c].size();
        bool numeric = !rows.empty();
        for (const QStringList& row : rows) {
            width = std::max(width, row.value(c).size());
            numeric = numeric && isNumeric(row.value(c));
        }
        widths.push_back(width);
        right.push_back(numeric);
    }
    QString text;
    const auto line = [&](const QStringList& cells) {
        QString out(indent, u' ');
        for (qsizetype c = 0; c < columns; ++c) {
            const auto i = static_cast<std::size_t>(c);
            const QString cell = cells.value(c);
            out += right[i] ? cell.rightJustified(widths[i]) : cell.leftJustified(widths[i]);
            out += u"  "_s;
        }
        while (out.endsWith(u' ')) {
            out.chop(1);
        }
        text += out + u'\n';
    };
    line(head);
    for (const QStringList& row : rows) {
        line(row);
    }
    return text;
}

QString csvTable(const QStringList& head, const std::vector<QStringList>& rows)
{
    QString text = exchange::csvLine(head);
    for (const QStringList& row : rows) {
        text += exchange::csvLine(row);
    }
    return text;
}

} // namespace littoral::ctl
