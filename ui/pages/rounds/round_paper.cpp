// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/rounds/round_paper.h"

#include "core/facts/entry_cautions.h"
#include "core/wording/caution_words.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"
#include "ui/models/number_text.h"
#include "ui/theme/figures.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr double kBoxWidth = 172.0;
constexpr double kBoxGap = 12.0;
constexpr double kWriting = 34.0;   // 8 mm: room for handwriting
constexpr double kTimeShare = 0.36; // of a box, for the time of reading
constexpr int kSeenLines = 2;

QString words(const char* text)
{
    return QCoreApplication::translate("RoundPaper", text);
}

/// One reading to take.
struct Asked
{
    QString label; ///< what is read, or whose water
    QString unit;
    QString below; ///< "last 0.4, 3 d · Drops B"
};

class RoundPaper
{
public:
    RoundPaper(Paper& paper, const RoundsModel& readings, const WorkModel& work)
        : m_paper(paper)
        , m_readings(readings)
        , m_work(work)
        , m_name(paper.theme().font(12, 600))
        , m_small(paper.theme().font(10.5))
    {
    }

    void print(RoundsModel::Order order)
    {
        cautions();
        if (order == RoundsModel::Order::ByKit) {
            byKit();
        } else {
            byTank();
        }
    }

private:
    [[nodiscard]] bool isDue(int row, int column) const
    {
        return m_readings.index(row, column).data(RoundsModel::DueRole).toBool();
    }
    [[nodiscard]] QString tankName(int row) const
    {
        return m_readings.headerData(row, Qt::Vertical, RoundsModel::TankNameRole).toString();
    }

    /// "last 0.4, 3 d · Drops B"; the kit is left out where its heading names it.
    [[nodiscard]] QString below(const QModelIndex& cell, bool withKit) const
    {
        QStringList parts;
        const QString last = cell.data(RoundsModel::LastTextRole).toString();
        parts << (last.isEmpty()
                      ? words("not read before")
                      : words("last %1 %2, %3")
                            .arg(last,
                                 m_readings.headerData(cell.column(), Qt::Horizontal, RoundsModel::UnitLabelRole)
                                     .toString(),
                                 cell.data(RoundsModel::LastAgoRole).toString()));
        if (const record::TestKit* kit = m_readings.kit(cell); kit != nullptr && withKit) {
            parts << kit->name;
        }
        return parts.join(u" · "_s);
    }

    /// What must have been read before any work of this round.
    void cautions()
    {
        QStringList ids;
        for (int i = 0; i < m_work.rowCount(); ++i) {
            if (const care::DueItem* item = m_work.item(m_work.index(i))) {
                ids << facts::cautionsFor(facts::builtInFacts(), *item);
            }
        }
        QStringList lines;
        for (const wording::CautionText& caution : wording::cautionsBefore(facts::builtInFacts(), ids)) {
            lines << words("%1: %2").arg(caution.title, caution.points.front());
        }
        if (!lines.isEmpty()) {
            m_paper.caution(words("Before hands go in"), lines);
        }
    }

    void byTank()
    {
        for (int row = 0; row < m_readings.rowCount(); ++row) {
            std::vector<Asked> asked;
            for (int column = 0; column < m_readings.columnCount(); ++column) {
                const QModelIndex cell = m_readings.index(row, column);
                if (isDue(row, column)) {
                    const record::Parameter* parameter = m_readings.parameter(column);
                    asked.push_back(
                        {parameter->name, cell.data(RoundsModel::UnitLabelRole).toString(), below(cell, true)});
                }
            }
            m_paper.keep(150);
            band(tankName(row), m_readings.headerData(row, Qt::Vertical, RoundsModel::TankLineRole).toString());
            boxes(asked);
            workOf(tankName(row));
            seen(words("Seen: animals, plants, algae, flow, leaks"), kSeenLines);
            m_paper.gap(12);
        }
    }

    void byKit()
    {
        for (int column = 0; column < m_readings.columnCount(); ++column) {
            std::vector<Asked> asked;
            const record::TestKit* kit = nullptr;
            for (int row = 0; row < m_readings.rowCount(); ++row) {
                const QModelIndex cell = m_readings.index(row, column);
                if (isDue(row, column)) {
                    kit = kit == nullptr ? m_readings.kit(cell) : kit;
                    const bool other = kit != nullptr && m_readings.kit(cell) != kit;
                    asked.push_back(
                        {tankName(row), cell.data(RoundsModel::UnitLabelRole).toString(), below(cell, other)});
                }
            }
            if (!asked.empty()) {
                m_paper.keep(150);
                band(m_readings.parameter(column)->name, kitLine(kit));
                boxes(asked);
                m_paper.gap(12);
            }
        }
        m_paper.heading(words("Work, and what is seen"));
        for (int row = 0; row < m_readings.rowCount(); ++row) {
            m_paper.keep(80);
            workOf(tankName(row));
            seen(words("%1, seen:").arg(tankName(row)), 1);
            m_paper.gap(6);
        }
    }

    [[nodiscard]] static QString kitLine(const record::TestKit* kit)
    {
        if (kit == nullptr) {
            return {};
        }
        QStringList steps;
        for (const double step : kit->steps) {
            steps << numberText(step, 4);
        }
        QStringList parts{kit->name};
        if (!steps.isEmpty()) {
            parts << words("steps %1").arg(steps.join(u' '));
        }
        if (kit->waitMinutes > 0) {
            parts << words("wait %1 min").arg(kit->waitMinutes);
        }
        if (kit->expires.isValid()) {
            parts << words("good until %1").arg(wording::dateText(kit->expires, QDate()));
        }
        return parts.join(u" · "_s);
    }

    /// The heading of a tank or a kit, on a tinted ground.
    void band(const QString& name, const QString& rest)
    {
        const Theme& theme = m_paper.theme();
        const QFont title = theme.font(14, 650);
        const double nameWidth = figuresWidth(title, name) + 24;
        const double room = std::max(120.0, m_paper.width() - nameWidth - 8);
        const double restHeight =
            QFontMetricsF(m_small).boundingRect(QRectF(0, 0, room, 1e5), Qt::TextWordWrap, rest).height();
        m_paper.picture(std::max(24.0, std::ceil(restHeight) + 6), [&](QPainter& painter, const QRectF& at) {
            painter.fillRect(at, theme[Token::Sunk]);
            painter.setFont(title);
            painter.setPen(theme[Token::Ink]);
            drawFigures(painter, QRectF(8, at.top(), nameWidth, 24), Qt::AlignLeft | Qt::AlignVCenter, name);
            painter.setFont(m_small);
            painter.setPen(theme[Token::Ink2]);
            painter.drawText(QRectF(nameWidth, at.top() + 3, room, at.height()), Qt::TextWordWrap, rest);
        });
    }

    [[nodiscard]] double lines(const QFont& font, const QString& text) const
    {
        return std::ceil(
            QFontMetricsF(font).boundingRect(QRectF(0, 0, kBoxWidth, 1e5), Qt::TextWordWrap, text).height());
    }

    void boxes(const std::vector<Asked>& all)
    {
        if (all.empty()) {
            m_paper.text(words("No reading is due."), m_paper.theme().font(12), Token::Ink2, 8);
            return;
        }
        const auto columns =
            static_cast<std::size_t>(std::max(1.0, std::floor((m_paper.width() + kBoxGap) / (kBoxWidth + kBoxGap))));
        for (std::size_t first = 0; first < all.size(); first += columns) {
            const std::size_t last = std::min(all.size(), first + columns);
            double above = 0.0;
            double below = 0.0;
            for (std::size_t i = first; i < last; ++i) {
                above = std::max(above, lines(m_name, titleOf(all[i])));
                below = std::max(below, lines(m_small, all[i].below));
            }
            m_paper.picture(above + kWriting + below + 8, [&](QPainter& painter, const QRectF& at) {
                for (std::size_t i = first; i < last; ++i) {
                    const double left = static_cast<double>(i - first) * (kBoxWidth + kBoxGap);
                    box(painter, QRectF(left, at.top() + 2, kBoxWidth, at.height()), above, below, all[i]);
                }
            });
        }
    }

    [[nodiscard]] static QString titleOf(const Asked& slot)
    {
        return slot.unit.isEmpty() ? slot.label : words("%1, %2").arg(slot.label, slot.unit);
    }

    void box(QPainter& painter, const QRectF& at, double above, double below, const Asked& slot) const
    {
        const Theme& theme = m_paper.theme();
        painter.setFont(m_name);
        painter.setPen(theme[Token::Ink]);
        painter.drawText(QRectF(at.left(), at.top(), at.width(), above), Qt::TextWordWrap | Qt::AlignBottom,
                         titleOf(slot));
        const QRectF writing(at.left() + 0.5, std::round(at.top() + above) + 2.5, at.width() - 1, kWriting - 4);
        const double time = writing.right() - writing.width() * kTimeShare;
        painter.setPen(QPen(theme[Token::Ink2], 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(writing);
        painter.setPen(QPen(theme[Token::Rule2], 1));
        painter.drawLine(QPointF(time, writing.top()), QPointF(time, writing.bottom()));
        painter.setFont(theme.font(9));
        painter.setPen(theme[Token::Ink3]);
        painter.drawText(QRectF(time + 4, writing.top() + 1, 60, 14), Qt::AlignLeft | Qt::AlignTop, words("time"));
        painter.setFont(m_small);
        painter.setPen(theme[Token::Ink2]);
        painter.drawText(QRectF(at.left(), writing.bottom() + 3, at.width(), below + 2), Qt::TextWordWrap, slot.below);
    }

    void workOf(const QString& tank)
    {
        for (int i = 0; i < m_work.rowCount(); ++i) {
            const QModelIndex index = m_work.index(i);
            const care::DueItem* item = m_work.item(index);
            if (item == nullptr || index.data(WorkModel::TankNameRole).toString() != tank) {
                continue;
            }
            const QString side = index.data(WorkModel::SideTextRole).toString();
            m_paper.text(words("☐ %1, %2").arg(wording::dueTitle(*item), side), m_paper.theme().font(13), Token::Ink,
                         8);
        }
    }

    void seen(const QString& label, int rows)
    {
        m_paper.text(label, m_small, Token::Ink2);
        m_paper.ruled(rows);
    }

    Paper& m_paper;
    const RoundsModel& m_readings;
    const WorkModel& m_work;
    QFont m_name, m_small;
};

} // namespace

PaperJob roundPaper(const RoundsModel& readings, const WorkModel& work, RoundsModel::Order order)
{
    QStringList tanks;
    for (int row = 0; row < readings.rowCount(); ++row) {
        tanks << readings.headerData(row, Qt::Vertical, RoundsModel::TankNameRole).toString();
    }
    PaperJob job;
    job.head = {words("The whole row"),
                order == RoundsModel::Order::ByKit ? words("Round sheet, kit by kit")
                                                   : words("Round sheet, tank by tank"),
                wording::dateText(readings.day(), QDate())};
    if (tanks.size() == 1) {
        job.head.subject = tanks.front();
    }
    job.body = [&readings, &work, order](Paper& paper) { RoundPaper(paper, readings, work).print(order); };
    return job;
}

} // namespace littoral::ui
