// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/verbs.h"
#include "core/exchange/instant.h"
#include "core/wording/language.h"

#include <QCoreApplication>
#include <QIODevice>
#include <QLocale>
#include <cstdio>

namespace {

using namespace littoral;
using namespace Qt::StringLiterals;

/// The system's clock, or in tests the instant in LITTORAL_NOW.
std::unique_ptr<record::Clock> makeClock()
{
    if (const auto fixed = exchange::parseInstant(qEnvironmentVariable("LITTORAL_NOW"))) {
        return std::make_unique<record::FixedClock>(*fixed);
    }
    return std::make_unique<record::SystemClock>();
}

} // namespace

int main(int argc, char** argv)
{
    QCoreApplication app(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("littoralctl"));
    // What scripts read must not change with the machine's language: only the line itself may ask for another.
    QLocale::setDefault(QLocale::c());
    wording::Translation translation;
    translation.use(u"en"_s);
    const auto clock = makeClock();
    ctl::Context context{*clock, QTextStream(stdout, QIODevice::WriteOnly), QTextStream(stderr, QIODevice::WriteOnly)};
    QStringList line = QCoreApplication::arguments().mid(1);
    int code = ctl::kUsage;
    if (ctl::takeLanguage(context, line, translation)) {
        code = ctl::run(context, line);
    }
    context.out.flush();
    context.err.flush();
    if (context.out.status() == QTextStream::WriteFailed || std::ferror(stdout) != 0) {
        return code == ctl::kDone ? ctl::kFailed : code;
    }
    return code;
}
