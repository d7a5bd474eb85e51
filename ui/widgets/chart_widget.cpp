// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/chart_widget.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QPainter>
#include <QPointer>
#include <vector>

namespace littoral::ui {

namespace {

class PartNode final : public QAccessibleInterface
{
public:
    PartNode(ChartWidget* chart, QAccessibleInterface* parent, int part)
        : m_chart(chart)
        , m_parent(parent)
        , m_part(part)
        , m_id(QAccessible::registerAccessibleInterface(this))
    {
    }

    [[nodiscard]] bool isValid() const override { return m_chart != nullptr && m_part < m_chart->partCount(); }
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* parent() const override { return m_parent; }
    [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    [[nodiscard]] QString text(QAccessible::Text kind) const override
    {
        return kind == QAccessible::Name && isValid() ? m_chart->partSentence(m_part) : QString();
    }
    void setText(QAccessible::Text, const QString&) override {}
    [[nodiscard]] QRect rect() const override
    {
        if (!isValid()) {
            return {};
        }
        const QRect place = m_chart->partRect(m_part);
        return {m_chart->mapToGlobal(place.topLeft()), place.size()};
    }
    [[nodiscard]] QAccessible::Role role() const override { return QAccessible::ListItem; }
    [[nodiscard]] QAccessible::State state() const override
    {
        QAccessible::State state;
        state.focusable = true;
        state.readOnly = true;
        state.focused = isValid() && m_chart->currentPart() == m_part && m_chart->hasFocus();
        state.selected = isValid() && m_chart->currentPart() == m_part;
        return state;
    }
    [[nodiscard]] QAccessible::Id id() const { return m_id; }

private:
    QPointer<ChartWidget> m_chart;
    QAccessibleInterface* m_parent;
    int m_part;
    QAccessible::Id m_id;
};

class ChartNode final : public QAccessibleWidget
{
public:
    explicit ChartNode(ChartWidget* chart)
        : QAccessibleWidget(chart, QAccessible::Chart)
        , m_chart(chart)
    {
    }
    ~ChartNode() override { forget(); }

    [[nodiscard]] int childCount() const override
    {
        build();
        return static_cast<int>(m_parts.size());
    }
    [[nodiscard]] QAccessibleInterface* child(int index) const override
    {
        build();
        const bool inside = index >= 0 && index < static_cast<int>(m_parts.size());
        return inside ? m_parts[static_cast<std::size_t>(index)] : nullptr;
    }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* wanted) const override
    {
        for (std::size_t i = 0; i < m_parts.size(); ++i) {
            if (m_parts[i] == wanted) {
                return static_cast<int>(i);
            }
        }
        return -1;
    }
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override
    {
        for (int i = 0; i < childCount(); ++i) {
            if (child(i)->rect().contains(x, y)) {
                return child(i);
            }
        }
        return nullptr;
    }
    [[nodiscard]] QAccessibleInterface* focusChild() const override
    {
        return m_chart->hasFocus() ? child(m_chart->currentPart()) : nullptr;
    }

private:
    void forget() const
    {
        for (PartNode* part : m_parts) {
            QAccessible::deleteAccessibleInterface(part->id());
        }
        m_parts.clear();
    }
    void build() const
    {
        if (m_generation == m_chart->partGeneration() && static_cast<int>(m_parts.size()) == m_chart->partCount()) {
            return;
        }
        forget();
        m_generation = m_chart->partGeneration();
        for (int i = 0; i < m_chart->partCount(); ++i) {
            m_parts.push_back(new PartNode(m_chart, const_cast<ChartNode*>(this), i));
        }
    }

    ChartWidget* m_chart;
    mutable int m_generation = -1;
    mutable std::vector<PartNode*> m_parts;
};

QAccessibleInterface* makeNode(const QString&, QObject* object)
{
    auto* chart = qobject_cast<ChartWidget*>(object);
    return chart == nullptr ? nullptr : new ChartNode(chart);
}

} // namespace

ChartWidget::ChartWidget(QWidget* parent)
    : QWidget(parent)
{
    static const bool once = (QAccessible::installFactory(makeNode), true);
    Q_UNUSED(once);
}

void ChartWidget::announcePart()
{
    if (!QAccessible::isActive() || !hasFocus()) {
        return;
    }
    auto* node = dynamic_cast<ChartNode*>(QAccessible::queryAccessibleInterface(this));
    if (auto* focus = node == nullptr ? nullptr : node->focusChild()) {
        QAccessibleEvent event(focus, QAccessible::Focus);
        QAccessible::updateAccessibility(&event);
    }
}

void ChartWidget::paintFocusRing(QPainter& painter, const QColor& colour) const
{
    if (!hasFocus()) {
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colour, 2));
    painter.drawRoundedRect(QRectF(rect()).adjusted(2, 2, -2, -2), 4, 4);
    painter.restore();
}

} // namespace littoral::ui
