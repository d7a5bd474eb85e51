// SPDX-License-Identifier: GPL-3.0-or-later
// What is remembered of the page: views by name in the store, the last choice beside the window's settings; and the
// filter of the lists.
#include "ui/models/kept_trends.h"
#include "ui/pages/trends/trends_page.h"
#include "ui/widgets/call_field.h"
#include "ui/widgets/trends/tick_list.h"
#include "ui/widgets/trends/trend_view.h"

#include <QScrollArea>

namespace littoral::ui {

namespace {

constexpr double kDay = static_cast<double>(kDayMs);

} // namespace

KeptTrend TrendsPage::onShow() const
{
    KeptTrend made;
    made.layouts = m_byHand ? m_layouts : std::vector<record::LayoutId>{};
    made.parameters = m_parametersByHand ? m_shown : QStringList{};
    made.options = m_bar->options();
    made.mode = m_axis.mode();
    const qint64 zero = made.mode == AxisMode::Age ? 0 : m_axis.now();
    made.from_d = static_cast<double>(m_axis.from() - zero) / kDay;
    made.to_d = static_cast<double>(m_axis.to() - zero) / kDay;
    return made;
}

void TrendsPage::remember()
{
    if (m_keeper.hasStore()) {
        keepLastTrend(m_keeper.path(), onShow());
    }
}

void TrendsPage::recall()
{
    const std::optional<KeptTrend> last = m_keeper.hasStore() ? lastTrend(m_keeper.path()) : std::nullopt;
    m_layouts = last ? last->layouts : std::vector<record::LayoutId>{};
    m_shown = last ? last->parameters : QStringList{};
    m_byHand = !m_layouts.empty();
    m_parametersByHand = !m_shown.isEmpty();
    if (last) {
        m_bar->setOptions(last->options);
    }
}

void TrendsPage::fillViews()
{
    QStringList names;
    for (const KeptTrend& one : keptTrends(m_keeper.row())) {
        names << one.name;
    }
    m_bar->setViews(names, m_keeper.hasStore() && !m_keeper.isReadOnly());
}

void TrendsPage::useView(const QString& name)
{
    for (const KeptTrend& one : keptTrends(m_keeper.row())) {
        if (one.name != name) {
            continue;
        }
        m_layouts = one.layouts;
        m_shown = one.parameters;
        m_byHand = !m_layouts.empty();
        m_parametersByHand = !m_shown.isEmpty();
        m_bar->setOptions(one.options);
        m_axis.setMode(one.mode);
        const qint64 zero = one.mode == AxisMode::Age ? 0 : m_axis.now();
        m_axis.setRange(zero + static_cast<qint64>(one.from_d * kDay), zero + static_cast<qint64>(one.to_d * kDay));
        refresh();
        remember();
        begin();
        emit told(tr("View \"%1\" is on show.").arg(name));
        return;
    }
}

void TrendsPage::saveView(const QString& name)
{
    const QString wanted = name.simplified();
    if (wanted.isEmpty()) {
        emit told(tr("A view needs a name."));
        return;
    }
    KeptTrend made = onShow();
    made.name = wanted;
    // A named view means what is seen now, also where the page chose it.
    made.layouts = m_layouts;
    made.parameters = m_shown;
    writeViews(tr("save view %1").arg(wanted), withTrend(m_keeper.row(), made), tr("View \"%1\" is kept.").arg(wanted));
    begin();
}

void TrendsPage::removeView(const QString& name)
{
    writeViews(tr("remove view %1").arg(name), withoutTrend(m_keeper.row(), name),
               tr("View \"%1\" is gone.").arg(name));
}

void TrendsPage::writeViews(const QString& label, const QString& text, const QString& sentence)
{
    store::Edit edit(label);
    edit.set(QString::fromUtf16(kTrendViewsSetting), text);
    const Result<void> done = m_keeper.commit(edit);
    if (done) {
        emit told(sentence);
    } else {
        emit failed(done.error(), tr("The views are as they were."));
    }
}

void TrendsPage::openFilter()
{
    if (m_left->isHidden()) {
        m_bar->setSide(0);
    }
    m_filter->call();
}

} // namespace littoral::ui
