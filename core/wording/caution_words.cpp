// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/caution_words.h"

#include "core/wording/finding_sentences.h"

#include <QCoreApplication>

namespace littoral::wording {

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Cautions", text);
}

std::vector<CautionText> texts(const facts::FactBook& book, const QStringList& ids, bool whole)
{
    std::vector<CautionText> all;
    QStringList seen;
    for (const QString& id : ids) {
        const facts::Caution* caution = book.caution(id);
        if (caution == nullptr || seen.contains(id)) {
            continue;
        }
        seen << id;
        CautionText text{id, factText(caution->title), {}};
        for (const facts::CautionPoint& point : caution->points) {
            if (whole || point.before) {
                text.points << factText(point.text);
            }
        }
        all.push_back(std::move(text));
    }
    return all;
}

} // namespace

std::vector<CautionText> cautionsBefore(const facts::FactBook& book, const QStringList& ids)
{
    return texts(book, ids, false);
}

std::vector<CautionText> wholeCautions(const facts::FactBook& book, const QStringList& ids)
{
    return texts(book, ids, true);
}

QString cautionText(const CautionText& caution)
{
    return words("%1. %2").arg(caution.title, caution.points.join(u' '));
}

QString cautionLine(const facts::FactBook& book, const QStringList& ids)
{
    QStringList lines;
    for (const CautionText& caution : cautionsBefore(book, ids)) {
        lines << words("%1: %2").arg(caution.title, caution.points.front());
    }
    return lines.isEmpty() ? QString() : words("Before you begin. %1").arg(lines.join(u' '));
}

} // namespace littoral::wording
