// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/find_field.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QListView>
#include <QPainter>
#include <QStyledItemDelegate>
#include <algorithm>

namespace littoral::ui {

namespace {

class FoundDelegate final : public QStyledItemDelegate
{
public:
    FoundDelegate(Theme& theme, QObject* parent)
        : QStyledItemDelegate(parent)
        , m_theme(theme)
    {
    }

    QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override
    {
        return {m_theme.px(200), std::max(28, QFontMetrics(m_theme.font(13)).height() + m_theme.px(10))};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const bool taken = option.state.testFlag(QStyle::State_Selected);
        painter->fillRect(option.rect, m_theme[taken ? Token::Selection : Token::Panel]);
        if (taken) {
            painter->fillRect(QRect(option.rect.topLeft(), QSize(3, option.rect.height())), m_theme[Token::Accent]);
        }
        const QFont small = m_theme.font(11);
        const QFontMetrics smallMetrics(small);
        QRect line = option.rect.adjusted(m_theme.px(10), 0, -m_theme.px(10), 0);
        const QRect group(line.left(), line.top(), m_theme.px(72), line.height());
        painter->setFont(small);
        painter->setPen(m_theme[Token::Ink3]);
        painter->drawText(
            group, Qt::AlignLeft | Qt::AlignVCenter,
            smallMetrics.elidedText(index.data(FindModel::GroupRole).toString(), Qt::ElideRight, group.width() - 4));
        const QString hint = index.data(FindModel::HintRole).toString();
        const int hintWidth = hint.isEmpty() ? 0 : smallMetrics.horizontalAdvance(hint) + m_theme.px(8);
        painter->drawText(line, Qt::AlignRight | Qt::AlignVCenter, hint);
        const QFont body = m_theme.font(13);
        line.setLeft(group.right());
        line.setRight(line.right() - hintWidth);
        painter->setFont(body);
        painter->setPen(m_theme[Token::Ink]);
        painter->drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                          QFontMetrics(body).elidedText(index.data().toString(), Qt::ElideRight, line.width()));
    }

private:
    Theme& m_theme;
};

} // namespace

FindField::FindField(Theme& theme, FindModel& model, QWidget* parent)
    : QLineEdit(parent)
    , m_theme(theme)
    , m_model(model)
    , m_list(new QListView)
{
    setPlaceholderText(tr("Find or do anything"));
    setAccessibleName(tr("Find or do anything"));
    m_list->setModel(&model);
    m_list->setItemDelegate(new FoundDelegate(theme, m_list));
    m_list->setFocusPolicy(Qt::NoFocus);
    m_list->setAccessibleName(tr("Found"));
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->hide();
    connect(this, &QLineEdit::textEdited, this, [this](const QString& text) {
        m_model.search(text);
        showList();
    });
    connect(m_list, &QListView::clicked, this, [this](const QModelIndex&) { choose(); });
}

FindField::~FindField()
{
    if (m_list->parent() == nullptr) {
        delete m_list;
    }
}

void FindField::open()
{
    setFocus(Qt::ShortcutFocusReason);
    selectAll();
    m_model.search(text());
    showList();
}

void FindField::showList()
{
    QWidget* top = window();
    if (m_list->parentWidget() != top) {
        m_list->setParent(top);
        top->installEventFilter(this);
    }
    const int rows = std::min(m_model.rowCount(), 12);
    if (rows == 0) {
        m_list->hide();
        return;
    }
    const int width = std::max(this->width(), m_theme.px(420));
    const QPoint below = mapTo(top, QPoint(this->width() - width, height() + 4));
    const int height = rows * m_list->sizeHintForRow(0) + 2 * m_list->frameWidth();
    m_list->setGeometry(std::max(8, below.x()), below.y(), std::min(width, top->width() - 16),
                        std::min(height, top->height() - below.y() - 8));
    m_list->setCurrentIndex(m_model.index(0));
    m_list->show();
    m_list->raise();
}

void FindField::choose()
{
    const int row = m_list->currentIndex().row();
    m_list->hide();
    clear();
    clearFocus();
    m_model.choose(row);
}

bool FindField::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == window() && event->type() == QEvent::Resize && m_list->isVisible()) {
        showList();
    }
    return QLineEdit::eventFilter(watched, event);
}

void FindField::keyPressEvent(QKeyEvent* event)
{
    const int rows = m_model.rowCount();
    const int row = m_list->currentIndex().row();
    switch (event->key()) {
    case Qt::Key_Down:
    case Qt::Key_Up:
        if (!m_list->isVisible()) {
            m_model.search(text());
            showList();
        } else if (rows > 0) {
            m_list->setCurrentIndex(m_model.index((row + (event->key() == Qt::Key_Down ? 1 : rows - 1)) % rows));
        }
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_list->isVisible()) {
            choose();
        }
        break;
    case Qt::Key_Escape:
        // One step back: the list first, the typing stays; then the keyboard goes back to the page.
        if (m_list->isVisible()) {
            m_list->hide();
        } else {
            clearFocus();
            event->ignore();
            return;
        }
        break;
    default:
        QLineEdit::keyPressEvent(event);
        return;
    }
    event->accept();
}

void FindField::focusOutEvent(QFocusEvent* event)
{
    QLineEdit::focusOutEvent(event);
    m_list->hide();
}

void FindField::paintEvent(QPaintEvent* event)
{
    QLineEdit::paintEvent(event);
    if (hasFocus() || !text().isEmpty()) {
        return;
    }
    QPainter painter(this);
    painter.setFont(m_theme.font(11));
    const int words = fontMetrics().horizontalAdvance(placeholderText());
    if (words + painter.fontMetrics().horizontalAdvance(tr("Ctrl K")) + m_theme.px(30) > width()) {
        return;
    }
    painter.setPen(m_theme[Token::Ink3]);
    painter.drawText(rect().adjusted(0, 0, -m_theme.px(10), 0), Qt::AlignRight | Qt::AlignVCenter, tr("Ctrl K"));
}

} // namespace littoral::ui
