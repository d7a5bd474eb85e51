// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/lanes/lane_access.h"

#include "ui/widgets/lanes/lane_view.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QCoreApplication>
#include <QLocale>
#include <memory>
#include <vector>

namespace littoral::ui {

namespace {

QString tr(const char* text, const char* note = nullptr, int n = -1)
{
    return QCoreApplication::translate("LaneAccess", text, note, n);
}

QString rowName(LaneRow row)
{
    switch (row) {
    case LaneRow::Due:
        return tr("Work due");
    case LaneRow::Events:
        return tr("Entries");
    case LaneRow::Readings:
        return tr("Readings");
    case LaneRow::Notices:
        break;
    }
    return tr("Alerts and gates");
}

class Node;
using NodePtr = std::unique_ptr<Node>;

/// A lane, a row or an item: plain geometry and a sentence over the view that draws it.
class Node : public QAccessibleInterface
{
public:
    Node(LaneView* view, QAccessibleInterface* parent, std::size_t lane)
        : m_view(view)
        , m_parent(parent)
        , m_lane(lane)
        , m_id(QAccessible::registerAccessibleInterface(this))
    {
    }

    [[nodiscard]] bool isValid() const override { return m_view != nullptr && m_lane < m_view->lanes().size(); }
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* parent() const override { return m_parent; }
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override
    {
        for (int i = 0; i < childCount(); ++i) {
            if (child(i)->rect().contains(x, y)) {
                return child(i);
            }
        }
        return nullptr;
    }
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* wanted) const override
    {
        for (int i = 0; i < childCount(); ++i) {
            if (child(i) == wanted) {
                return i;
            }
        }
        return -1;
    }
    void setText(QAccessible::Text, const QString&) override {}
    [[nodiscard]] QAccessible::Id id() const { return m_id; }

protected:
    [[nodiscard]] const facade::LaneModel& model() const { return *m_view->lanes()[m_lane]; }
    [[nodiscard]] QRect onScreen(const QRect& rect) const
    {
        return rect.isEmpty() ? QRect() : QRect(m_view->viewport()->mapToGlobal(rect.topLeft()), rect.size());
    }

    QPointer<LaneView> m_view;
    QAccessibleInterface* m_parent;
    std::size_t m_lane;
    QAccessible::Id m_id;
};

class ItemNode final : public Node
{
public:
    ItemNode(LaneView* view, QAccessibleInterface* parent, std::size_t lane, LaneItem item)
        : Node(view, parent, lane)
        , m_item(std::move(item))
    {
    }
    [[nodiscard]] QString text(QAccessible::Text kind) const override
    {
        return kind == QAccessible::Name && isValid() ? itemSentence(model(), m_item) : QString();
    }
    [[nodiscard]] QRect rect() const override { return onScreen(m_view->itemViewRect(m_lane, m_item)); }
    [[nodiscard]] QAccessible::Role role() const override
    {
        return m_item.row == LaneRow::Due ? QAccessible::Button : QAccessible::ListItem;
    }
    [[nodiscard]] QAccessible::State state() const override
    {
        QAccessible::State state;
        state.focusable = true;
        state.selectable = true;
        const auto& cursor = m_view->cursor();
        if (cursor.lane() == m_lane && cursor.item() && cursor.item()->same(m_item)) {
            state.selected = true;
            state.focused = m_view->hasFocus();
        }
        state.offscreen = m_view->itemViewRect(m_lane, m_item).isEmpty();
        return state;
    }
    [[nodiscard]] const LaneItem& item() const { return m_item; }

private:
    LaneItem m_item;
};

/// A node that owns its children and makes them when first asked.
class Branch : public Node
{
public:
    using Node::Node;
    [[nodiscard]] int childCount() const override
    {
        build();
        return static_cast<int>(m_children.size());
    }
    [[nodiscard]] QAccessibleInterface* child(int index) const override
    {
        build();
        const bool inside = index >= 0 && index < static_cast<int>(m_children.size());
        return inside ? m_children[static_cast<std::size_t>(index)] : nullptr;
    }
    /// Hands the children back to the accessibility cache, which owns every registered interface.
    ~Branch() override
    {
        for (Node* child : m_children) {
            QAccessible::deleteAccessibleInterface(child->id());
        }
    }

protected:
    virtual std::vector<Node*> make() const = 0;

private:
    void build() const
    {
        if (!m_built) {
            m_built = true;
            m_children = make();
        }
    }
    mutable bool m_built = false;
    mutable std::vector<Node*> m_children;
};

class RowNode final : public Branch
{
public:
    RowNode(LaneView* view, QAccessibleInterface* parent, std::size_t lane, LaneRow row)
        : Branch(view, parent, lane)
        , m_row(row)
    {
    }
    [[nodiscard]] QString text(QAccessible::Text kind) const override
    {
        return kind == QAccessible::Name
                   ? tr("%1, %2", "a row of a lane and the tank").arg(rowName(m_row), model().name)
                   : QString();
    }
    [[nodiscard]] QRect rect() const override
    {
        QRect whole;
        for (int i = 0; i < childCount(); ++i) {
            whole = whole.united(child(i)->rect());
        }
        return whole;
    }
    [[nodiscard]] QAccessible::Role role() const override { return QAccessible::List; }
    [[nodiscard]] QAccessible::State state() const override { return {}; }
    [[nodiscard]] LaneRow row() const { return m_row; }

protected:
    std::vector<Node*> make() const override
    {
        std::vector<Node*> nodes;
        auto* self = const_cast<RowNode*>(this);
        for (const LaneItem& item : itemsOf(model(), m_row, m_view->options())) {
            nodes.push_back(new ItemNode(m_view, self, m_lane, item));
        }
        return nodes;
    }

private:
    LaneRow m_row;
};

class LaneNode final : public Branch
{
public:
    using Branch::Branch;
    [[nodiscard]] QString text(QAccessible::Text kind) const override
    {
        return kind == QAccessible::Name && isValid() ? laneSentence(model()) : QString();
    }
    [[nodiscard]] QRect rect() const override { return onScreen(m_view->laneRect(m_lane)); }
    [[nodiscard]] QAccessible::Role role() const override { return QAccessible::Grouping; }
    [[nodiscard]] QAccessible::State state() const override
    {
        QAccessible::State state;
        state.selectable = true;
        state.selected = m_view->cursor().lane() == m_lane;
        return state;
    }

protected:
    std::vector<Node*> make() const override
    {
        std::vector<Node*> nodes;
        auto* self = const_cast<LaneNode*>(this);
        for (const LaneRow row : kLaneRows) {
            if (!itemsOf(model(), row, m_view->options()).empty()) {
                nodes.push_back(new RowNode(m_view, self, m_lane, row));
            }
        }
        return nodes;
    }
};

class ViewNode final : public QAccessibleWidget
{
public:
    explicit ViewNode(LaneView* view)
        : QAccessibleWidget(view, QAccessible::List)
        , m_view(view)
    {
    }
    ~ViewNode() override { forget(); }

    [[nodiscard]] int childCount() const override
    {
        build();
        return static_cast<int>(m_lanes.size());
    }
    [[nodiscard]] QAccessibleInterface* child(int index) const override
    {
        build();
        const bool inside = index >= 0 && index < static_cast<int>(m_lanes.size());
        return inside ? m_lanes[static_cast<std::size_t>(index)] : nullptr;
    }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* wanted) const override
    {
        const auto found = std::ranges::find(m_lanes, wanted);
        return found == m_lanes.end() ? -1 : static_cast<int>(found - m_lanes.begin());
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
        if (!m_view->hasFocus()) {
            return nullptr;
        }
        const auto& cursor = m_view->cursor();
        auto* lane = child(static_cast<int>(cursor.lane()));
        for (int r = 0; cursor.item() && lane != nullptr && r < lane->childCount(); ++r) {
            auto* row = static_cast<RowNode*>(lane->child(r));
            for (int i = 0; row->row() == cursor.row() && i < row->childCount(); ++i) {
                if (static_cast<ItemNode*>(row->child(i))->item().same(*cursor.item())) {
                    return row->child(i);
                }
            }
        }
        return lane;
    }

private:
    void forget() const
    {
        for (Node* lane : m_lanes) {
            QAccessible::deleteAccessibleInterface(lane->id());
        }
        m_lanes.clear();
    }
    void build() const
    {
        if (m_built && m_generation == m_view->generation()) {
            return;
        }
        forget();
        m_built = true;
        m_generation = m_view->generation();
        for (std::size_t i = 0; i < m_view->lanes().size(); ++i) {
            m_lanes.push_back(new LaneNode(m_view, const_cast<ViewNode*>(this), i));
        }
    }

    LaneView* m_view;
    mutable quint64 m_generation = 0;
    mutable bool m_built = false;
    mutable std::vector<Node*> m_lanes;
};

QAccessibleInterface* makeNode(const QString&, QObject* object)
{
    auto* view = qobject_cast<LaneView*>(object);
    return view == nullptr ? nullptr : new ViewNode(view);
}

} // namespace

void installLaneAccess()
{
    static const bool once = (QAccessible::installFactory(makeNode), true);
    Q_UNUSED(once);
}

void announceLaneFocus(LaneView* view)
{
    if (!QAccessible::isActive() || !view->hasFocus()) {
        return;
    }
    auto* node = dynamic_cast<ViewNode*>(QAccessible::queryAccessibleInterface(view));
    if (auto* focus = node == nullptr ? nullptr : node->focusChild()) {
        QAccessibleEvent event(focus, QAccessible::Focus);
        QAccessible::updateAccessibility(&event);
    }
}

QString laneSentence(const facade::LaneModel& lane)
{
    QStringList sentences{tr("%1, %2", "tank; litres and age").arg(lane.name, lane.litresAndAge)};
    for (const QString& line : {lane.phaseLine, lane.verdict, lane.statusLine, lane.nextLine, lane.forecastNote}) {
        if (!line.isEmpty()) {
            sentences << line;
        }
    }
    return sentences.join(QStringLiteral(". "));
}

QString itemSentence(const facade::LaneModel& lane, const LaneItem& item)
{
    if (item.row != LaneRow::Due || item.index >= lane.chips.size()) {
        return tr("%1, %2", "tank; an entry, reading, alert or gate").arg(lane.name, item.sentence);
    }
    const facade::LaneChip& chip = lane.chips[item.index];
    const QString day = QLocale().toString(chip.item.due, tr("d MMMM", "form of a date"));
    if (chip.overdue) {
        const int days = static_cast<int>(chip.daysOver);
        return tr("%1, %2, overdue %n day(s), due %3", "tank, work, day", days).arg(lane.name, chip.title, day);
    }
    return chip.today ? tr("%1, %2, due today", "tank, work").arg(lane.name, chip.title)
                      : tr("%1, %2, due %3", "tank, work, day").arg(lane.name, chip.title, day);
}

} // namespace littoral::ui
