// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/find_model.h"
#include "ui/widgets/text.h"

#include <QAbstractButton>
#include <QWidget>

class QHBoxLayout;
class QPushButton;

namespace littoral::ui {

class FindField;

/// The name of a page in the top bar, underlined when it is the one shown.
class PageTab final : public QAbstractButton
{
    Q_OBJECT

public:
    PageTab(Theme& theme, const QString& name, const QString& key, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    /// Without its key and with less air, where the bar is short.
    void setCompact(bool compact);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] int side() const;

    Theme& m_theme;
    QString m_key;
    bool m_compact = false;
};

/// The bar across the top: name, pages, find-or-do, new entry, menu. Pages whose names do not fit are behind a button
/// that lists them.
class TopBar final : public QWidget
{
    Q_OBJECT

public:
    TopBar(Theme& theme, FindModel& find, QWidget* parent = nullptr);

    void addPage(const QString& name, const QString& key);
    void setPage(int page);
    [[nodiscard]] const QList<PageTab*>& tabs() const { return m_tabs; }
    /// Lists the pages that do not fit; hidden while all do.
    [[nodiscard]] QPushButton* moreButton() { return m_more; }
    [[nodiscard]] FindField* find() { return m_find; }
    [[nodiscard]] QPushButton* menuButton() { return m_menu; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void pageChosen(int page);
    void newEntry();
    void menuWanted();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange();
    void arrangeTabs();
    void showMore();

    Theme& m_theme;
    Text* m_name;
    QWidget* m_nameBox;
    QHBoxLayout* m_pages;
    QList<PageTab*> m_tabs;
    QPushButton* m_more;
    FindField* m_find;
    QPushButton* m_entry;
    QPushButton* m_menu;
    int m_page = 0;
};

} // namespace littoral::ui
