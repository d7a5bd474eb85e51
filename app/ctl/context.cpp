// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/context.h"

#include "core/exchange/name_book.h"

namespace littoral::ctl {

using namespace Qt::StringLiterals;

int Context::fail(const Error& error)
{
    const bool refused = error.fault == Fault::BadInput;
    return fail(QString::fromStdString(error.sentence()), refused ? kRefused : kFailed);
}

int Context::fail(const QString& sentence, ExitCode code)
{
    out.flush();
    err << "littoralctl: " << sentence << Qt::endl;
    return code;
}

OpenStore openStore(Context& context, const QString& path, store::Access access)
{
    OpenStore opened;
    auto keeper = std::make_unique<facade::Keeper>(context.clock);
    if (const auto done = keeper->open(path, access); !done) {
        opened.code = context.fail(done.error());
        return opened;
    }
    opened.keeper = std::move(keeper);
    return opened;
}

const record::Tank* findTank(Context& context, const record::Row& row, const QString& name)
{
    const record::Tank* tank = row.tankNamed(name);
    if (tank == nullptr) {
        context.fail(exchange::NameBook(row).noTank(name), kRefused);
    }
    return tank;
}

} // namespace littoral::ctl
