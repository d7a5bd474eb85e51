// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/stock_model.h"
#include "ui/theme/theme.h"
#include "ui/widgets/chart_widget.h"

#include <QStringList>

namespace littoral::ui {

/// Where filter media came from and went: tanks in columns by how many moves lie before them, an arrow for each move.
class LineageView final : public ChartWidget
{
    Q_OBJECT

public:
    struct Node
    {
        record::TankId tank;
        QString name;
        int column = 0;
        int row = 0;
        bool own = false; ///< the page's tank
    };
    struct Edge
    {
        std::size_t from = 0, to = 0;
        QString label; ///< "35 %, 13 Nov"
        QString sentence;
        record::EntryId entry;
    };

    explicit LineageView(Theme& theme, QWidget* parent = nullptr);

    void setMoves(const facade::StockModel& model, const record::Row& row, const QDate& today);
    [[nodiscard]] const std::vector<Node>& nodes() const { return m_nodes; }
    [[nodiscard]] const std::vector<Edge>& edges() const { return m_edges; }

    [[nodiscard]] int partCount() const override { return static_cast<int>(m_edges.size()); }
    [[nodiscard]] QString partSentence(int part) const override;
    [[nodiscard]] QRect partRect(int part) const override;
    [[nodiscard]] int currentPart() const override { return m_part; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void entryOpenWanted(littoral::record::EntryId entry);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    std::size_t node(record::TankId tank, const record::Row& row, record::TankId own);
    void place();
    [[nodiscard]] QRectF box(const Node& node) const;
    [[nodiscard]] int rows() const;

    Theme& m_theme;
    std::vector<Node> m_nodes;
    std::vector<Edge> m_edges;
    int m_part = 0;
};

} // namespace littoral::ui
