// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/rounds/rounds_delegate.h"

#include "ui/paint/glyphs.h"
#include "ui/theme/figures.h"

#include <QEvent>
#include <QFontMetrics>
#include <QPainter>
#include <algorithm>

namespace littoral::ui {

RoundsDelegate::RoundsDelegate(Theme& theme, RoundsModel& model, QObject* parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
    , m_model(model)
{
}

int RoundsDelegate::rowHeight() const
{
    return std::max(44, QFontMetrics(m_theme.font(14, 600)).height() + QFontMetrics(m_theme.font(11)).height() +
                            m_theme.px(14));
}

int RoundsDelegate::columnWidth() const
{
    return static_cast<int>(figuresWidth(m_theme.font(11), QStringLiteral("<0.05 · 30 d"))) + m_theme.px(26);
}

QSize RoundsDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const
{
    return {columnWidth(), rowHeight()};
}

void RoundsDelegate::paintGround(QPainter* painter, const QRect& rect, CellState state) const
{
    switch (state) {
    case CellState::Quiet:
        painter->fillRect(rect, m_theme[Token::Sunk]);
        return;
    case CellState::Due:
        painter->fillRect(rect, m_theme[Token::Panel]);
        painter->fillRect(QRect(rect.left(), rect.top(), 3, rect.height()), m_theme[Token::Accent]);
        return;
    case CellState::Entered:
        painter->fillRect(rect, m_theme[Token::OkTint]);
        return;
    case CellState::LookAgain:
        painter->fillRect(rect, m_theme[Token::WatchTint]);
        return;
    case CellState::NotUnderstood:
        painter->fillRect(rect, m_theme[Token::ActTint]);
        return;
    }
}

void RoundsDelegate::paintShape(QPainter* painter, const QRect& rect, CellState state) const
{
    const int side = m_theme.px(13);
    const QRectF box(rect.left() + m_theme.px(8), rect.top() + m_theme.px(9), side, side);
    switch (state) {
    case CellState::Entered:
        drawStatus(*painter, facade::Status::Ok, box, m_theme[Token::Ok], m_theme[Token::OkTint]);
        return;
    case CellState::LookAgain:
        drawStatus(*painter, facade::Status::Watch, box, m_theme[Token::Watch], m_theme[Token::WatchTint]);
        return;
    case CellState::NotUnderstood:
        drawStatus(*painter, facade::Status::Act, box, m_theme[Token::Act], m_theme[Token::ActTint]);
        return;
    case CellState::Quiet:
    case CellState::Due:
        return;
    }
}

void RoundsDelegate::paintTexts(QPainter* painter, const QRect& rect, const QModelIndex& index, CellState state) const
{
    const QFont small = m_theme.font(11);
    const QFont big = m_theme.font(14, 600);
    const QRect inside = rect.adjusted(m_theme.px(8), m_theme.px(5), -m_theme.px(10), -m_theme.px(5));
    const QString last = index.data(RoundsModel::LastTextRole).toString();
    const QString before =
        last.isEmpty()
            ? QString()
            : tr("%1 · %2", "last value, how long ago").arg(last, index.data(RoundsModel::LastAgoRole).toString());
    painter->setFont(small);
    if (state == CellState::Quiet) {
        painter->setPen(m_theme[Token::Ink3]);
        drawFigures(*painter, inside, Qt::AlignRight | Qt::AlignVCenter, elidedFigures(small, before, inside.width()));
        return;
    }
    const QRect lower(inside.left(), inside.bottom() - QFontMetrics(small).height(), inside.width(),
                      QFontMetrics(small).height());
    const QString foreign = index.data(RoundsModel::ForeignUnitRole).toString();
    QString under = foreign.isEmpty() || state == CellState::Due ? before : foreign;
    painter->setPen(m_theme[state == CellState::LookAgain       ? Token::Watch
                            : state == CellState::NotUnderstood ? Token::Act
                                                                : Token::Ink2]);
    if (state == CellState::NotUnderstood) {
        under = tr("not a reading");
    } else if (state == CellState::LookAgain) {
        under = tr("look again");
    }
    drawFigures(*painter, lower, Qt::AlignRight | Qt::AlignVCenter, elidedFigures(small, under, lower.width()));
    const QRect upper(inside.left(), inside.top(), inside.width(), inside.height() - lower.height());
    painter->setFont(big);
    painter->setPen(m_theme[state == CellState::Due ? Token::Ink3 : Token::Ink]);
    const QString typed = index.data(RoundsModel::TypedRole).toString();
    const QString shown = typed.isEmpty() ? QStringLiteral("–") : typed;
    drawFigures(*painter, upper, Qt::AlignRight | Qt::AlignVCenter,
                elidedFigures(big, shown, upper.width() - (state == CellState::Due ? 0 : m_theme.px(16))));
}

void RoundsDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const auto state = static_cast<CellState>(index.data(RoundsModel::StateRole).toInt());
    paintGround(painter, option.rect, state);
    paintShape(painter, option.rect, state);
    paintTexts(painter, option.rect, index, state);
    painter->setRenderHint(QPainter::Antialiasing, false);
    painter->setPen(m_theme[Token::Rule]);
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    painter->drawLine(option.rect.topRight(), option.rect.bottomRight());
    if (option.state.testFlag(QStyle::State_Selected)) {
        const bool active =
            option.state.testFlag(QStyle::State_Active) && option.widget != nullptr && option.widget->hasFocus();
        painter->setPen(QPen(m_theme[active ? Token::Accent : Token::Rule2], active ? 2 : 1));
        painter->drawRect(option.rect.adjusted(1, 1, -2, -2));
    }
    painter->restore();
}

QWidget* RoundsDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const
{
    auto* edit = new CellEdit(m_theme, parent);
    const QModelIndex cell = index;
    const record::Reading* last = m_model.lastReading(index);
    std::optional<double> from;
    if (const record::Parameter* parameter = m_model.parameter(index.column());
        last != nullptr && parameter != nullptr) {
        if (const record::TestKit* kit = m_model.kit(index); kit != nullptr && parameter->unit(kit->unit) != nullptr) {
            from = parameter->unit(kit->unit)->fromCanonical(last->value);
        }
    }
    edit->setSteps(m_model.steps(index), from);
    edit->setAccessibleName(index.data(Qt::AccessibleTextRole).toString());
    edit->setPlaceholderText(index.data(RoundsModel::LastTextRole).toString());
    connect(edit, &QLineEdit::textChanged, this,
            [this, cell = QPersistentModelIndex(cell)](const QString& text) { emit typing(cell, text); });
    connect(edit, &CellEdit::leaving, this, [this, edit](CellEdit::Leave where) { emit leaving(edit, where); });
    return edit;
}

void RoundsDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const
{
    // Only when the editor opens: a refresh of the model while someone types must not touch what is typed.
    auto* edit = static_cast<CellEdit*>(editor);
    if (!edit->isFilled()) {
        edit->fill(index.data(Qt::EditRole).toString());
    }
}

void RoundsDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const
{
    model->setData(index, static_cast<CellEdit*>(editor)->text(), Qt::EditRole);
}

void RoundsDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option, const QModelIndex&) const
{
    editor->setGeometry(option.rect);
}

bool RoundsDelegate::eventFilter(QObject* editor, QEvent* event)
{
    // The grid decides what Enter, Tab and Esc do; the stock delegate would throw typing away on Esc.
    if (event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride) {
        return false;
    }
    return QStyledItemDelegate::eventFilter(editor, event);
}

} // namespace littoral::ui
