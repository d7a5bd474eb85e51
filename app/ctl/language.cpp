// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/language.h"

#include "app/ctl/verbs.h"

#include <QCoreApplication>
#include <algorithm>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

/// The tag asked for on the line, which is taken out of it; null when none is.
QString askedOnLine(QStringList& line)
{
    for (qsizetype at = 0; at < line.size(); ++at) {
        if (line[at] == u"--language"_s) {
            const QString tag = line.value(at + 1, u""_s);
            line.remove(at, std::min<qsizetype>(2, line.size() - at));
            return tag;
        }
        if (line[at].startsWith(u"--language="_s)) {
            return line.takeAt(at).section(u'=', 1);
        }
    }
    return {};
}

} // namespace

bool takeLanguage(Context& context, QStringList& line, wording::Translation& translation)
{
    QString tag = askedOnLine(line);
    if (tag.isNull()) {
        tag = qEnvironmentVariable("LITTORAL_LANGUAGE");
        if (tag.isEmpty()) {
            return true;
        }
    }
    const auto& known = wording::languages();
    if (std::ranges::find(known, tag, &wording::Language::tag) == known.end()) {
        QStringList tags;
        std::ranges::transform(known, std::back_inserter(tags), &wording::Language::tag);
        context.fail(words("There is no language \"%1\". There are: %2.").arg(tag, tags.join(u", "_s)), kUsage);
        context.err.flush();
        return false;
    }
    translation.use(tag);
    if (tag != u"en"_s) {
        QLocale::setDefault(wording::localeFor(tag));
    }
    return true;
}

} // namespace littoral::ctl
