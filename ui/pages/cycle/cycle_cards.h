// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/cycle_model.h"
#include "ui/widgets/chart_widget.h"
#include "ui/widgets/text.h"

#include <QFrame>

class QCheckBox;
class QPushButton;
class QVBoxLayout;

namespace littoral::ui {

class CardTable;
class Disclosure;

/// A card with a heading, a note at its right, and a column under them.
class CycleCard : public QFrame
{
    Q_OBJECT

public:
    CycleCard(Theme& theme, const QString& heading, QWidget* parent = nullptr);
    void setHeading(const QString& heading, const QString& note);

protected:
    [[nodiscard]] QVBoxLayout* column() const { return m_column; }
    [[nodiscard]] Theme& theme() const { return m_theme; }
    /// A paragraph with the card's own margins at its sides.
    Text* addText(TextStyle style, Token token);

private:
    Theme& m_theme;
    Text* m_heading;
    Text* m_note;
    QVBoxLayout* m_column;
};

/// The answer first: what is happening, what is not known, and the test that would settle most of it.
class VerdictCard final : public QFrame
{
    Q_OBJECT

public:
    explicit VerdictCard(Theme& theme, QWidget* parent = nullptr);
    void setModel(const CycleModel& model);
    [[nodiscard]] QString text() const;
    [[nodiscard]] const std::vector<Disclosure*>& tests() const { return m_tests; }

signals:
    void readingOpenWanted(littoral::record::ReadingId reading);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Theme& m_theme;
    facade::Status m_status = facade::Status::Unknown;
    record::ReadingId m_atOdds;
    Text *m_headline, *m_warnings, *m_known, *m_next, *m_remarks;
    QPushButton* m_open;
    std::vector<Disclosure*> m_tests;
};

/// Who may go in, and when: the record's conditions and the forecast's odds, readings and filter apart.
class CycleGatesCard final : public CycleCard
{
    Q_OBJECT

public:
    explicit CycleGatesCard(Theme& theme, QWidget* parent = nullptr);
    void setModel(const CycleModel& model);
    [[nodiscard]] CardTable& table() { return *m_table; }
    [[nodiscard]] QString chosenGate() const;

signals:
    void gateChosen(const QString& key);

private:
    QStringList m_keys;
    CardTable* m_table;
    Text* m_capacity;
    Disclosure* m_conditions;
};

/// Tenths of the predictive probability under each reading: even bars where bands say what they mean.
class TenthsStrip final : public ChartWidget
{
    Q_OBJECT

public:
    explicit TenthsStrip(const Theme& theme, QWidget* parent = nullptr);
    void setRecord(const CycleRecord& record);
    [[nodiscard]] int partCount() const override { return static_cast<int>(m_record.tenths.size()); }
    [[nodiscard]] QString partSentence(int part) const override;
    [[nodiscard]] QRect partRect(int part) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    CycleRecord m_record;
};

/// What the row taught this layout, with its switch, and how earlier bands held.
class CycleRecordCard final : public CycleCard
{
    Q_OBJECT

public:
    explicit CycleRecordCard(Theme& theme, QWidget* parent = nullptr);
    void setModel(const CycleModel& model, bool writable);
    [[nodiscard]] QCheckBox* learnSwitch() { return m_learn; }

signals:
    void learnChosen(bool on);

private:
    Text* m_held;
    TenthsStrip* m_strip;
    Text* m_stripNote;
    QCheckBox* m_learn;
    Text* m_learned;
    Disclosure* m_facts;
};

} // namespace littoral::ui
