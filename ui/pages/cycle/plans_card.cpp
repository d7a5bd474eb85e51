// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/cycle/plans_card.h"

#include "core/record/parameter.h"
#include "core/record/shown.h"
#include "core/wording/numbers.h"
#include "core/wording/plan_sentences.h"
#include "ui/widgets/card_table.h"
#include "ui/widgets/disclosure.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/plan_scatter_view.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QResizeEvent>
#include <QSignalBlocker>
#include <QSlider>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr int kMargin = 14;
constexpr std::array kIntervals_d{1.0, 2.0, 3.0, 4.0, 5.0, 7.0, 10.0, 14.0};
constexpr double kNever = std::numeric_limits<double>::infinity();
constexpr std::array kEase_d{kNever, 7.0, 14.0};
constexpr std::array kOdds{0.05, 0.1, 0.2, 0.5};
constexpr int kMostPercent = 80;
constexpr int kPercentStep = 5;

int nearest(const QComboBox& box, double value)
{
    int best = 0;
    for (int i = 0; i < box.count(); ++i) {
        const double off = std::abs(box.itemData(i).toDouble() - value);
        best = off < std::abs(box.itemData(best).toDouble() - value) ? i : best;
    }
    return best;
}

const record::Parameter& nitrite()
{
    return *record::findParameter(u"no2"_s);
}

} // namespace

PlansCard::PlansCard(Theme& theme, QWidget* parent)
    : CycleCard(theme, tr("Water-change plans"), parent)
    , m_table(new CardTable(theme))
    , m_scatter(new PlanScatterView(theme))
    , m_slider(new QSlider(Qt::Horizontal))
    , m_percent(new Text(theme, TextStyle::Strong))
    , m_quick(new Text(theme, TextStyle::Secondary))
    , m_interval(new QComboBox)
    , m_ease(new QComboBox)
    , m_source(new QComboBox)
    , m_adopt(new QPushButton(tr("Adopt plan")))
    , m_keep(new QPushButton(tr("Keep plan A")))
    , m_list(new Disclosure(theme))
    , m_level(new QDoubleSpinBox)
    , m_most(new QComboBox)
    , m_find(new QPushButton(tr("Find")))
{
    m_table->setAccessibleName(tr("Plans"));
    column()->addWidget(m_table);
    auto* chart = new QHBoxLayout;
    chart->setContentsMargins(8, 0, 8, 0);
    chart->addWidget(m_scatter);
    column()->addLayout(chart);
    column()->addWidget(makeControls());
    m_adoption = addText(TextStyle::Secondary, Token::Ink2);
    m_list->setContentsMargins(kMargin - 4, 0, kMargin, 0);
    column()->addWidget(m_list);
    column()->addWidget(makeFinder());
    m_answer = addText(TextStyle::Body, Token::Ink);
    m_answer->hide();
    m_caution = addText(TextStyle::Secondary, Token::Ink3);
    m_caution->setText(wording::dilutionCaution());
    // Queued: the answer fills the table anew, which a view does not bear inside its own signal.
    connect(
        m_table, &CardTable::chosen, this,
        [this](int row) {
            if (row >= 0 && row < static_cast<int>(m_rows.size())) {
                emit planChosen(m_rows[static_cast<std::size_t>(row)]);
            }
        },
        Qt::QueuedConnection);
    connect(m_scatter, &PlanScatterView::chosen, this, [this](int point) {
        if (point >= 0 && point < static_cast<int>(m_points.size())) {
            emit planChosen(m_points[static_cast<std::size_t>(point)]);
        }
    });
    connect(m_adopt, &QPushButton::clicked, this, &PlansCard::adoptWanted);
    connect(m_keep, &QPushButton::clicked, this, [this] { emit planChosen(std::nullopt); });
}

QWidget* PlansCard::makeControls()
{
    m_slider->setRange(0, kMostPercent);
    m_slider->setSingleStep(kPercentStep);
    m_slider->setPageStep(2 * kPercentStep);
    m_slider->setValue(30);
    m_slider->setAccessibleName(tr("Share of the water at each change, percent"));
    m_slider->setMinimumWidth(theme().px(110));
    for (const double days : kIntervals_d) {
        m_interval->addItem(wording::intervalText(days), days);
    }
    m_interval->setAccessibleName(tr("How often"));
    m_interval->setCurrentIndex(2);
    m_ease->addItem(tr("not eased"), kEase_d[0]);
    m_ease->addItem(tr("half after a week"), kEase_d[1]);
    m_ease->addItem(tr("half after two weeks"), kEase_d[2]);
    m_ease->setAccessibleName(tr("When the changes are halved"));
    m_source->setAccessibleName(tr("Water used for the changes"));
    m_percent->setMinimumWidth(theme().px(38));
    m_adopt->setProperty("primary", true);
    m_adopt->setProperty("keyHint", QStringLiteral("A"));
    auto* box = new QWidget;
    auto* flow = new FlowLayout(box, theme().px(8));
    flow->setContentsMargins(kMargin, 0, kMargin, 0);
    for (QWidget* each :
         std::initializer_list<QWidget*>{new Text(theme(), TextStyle::Body, tr("Each change")), m_slider, m_percent,
                                         m_interval, m_ease, m_source, m_quick, m_adopt, m_keep}) {
        flow->addWidget(each);
    }
    connect(m_slider, &QSlider::valueChanged, this, [this](int value) {
        const int whole = (value + kPercentStep / 2) / kPercentStep * kPercentStep;
        if (whole != value) {
            m_slider->setValue(whole);
            return;
        }
        controlsMoved();
    });
    for (QComboBox* each : {m_interval, m_ease, m_source}) {
        connect(each, qOverload<int>(&QComboBox::currentIndexChanged), this, &PlansCard::controlsMoved);
    }
    return box;
}

QWidget* PlansCard::makeFinder()
{
    // Steps and start are mg/L of the ion, put into the unit on show.
    const auto shown = [](double ion) {
        return nitrite().shown().fromCanonical(record::inUsualUnits(nitrite()).shown().toCanonical(ion));
    };
    m_level->setDecimals(nitrite().decimals);
    m_level->setRange(shown(0.05), shown(20.0));
    m_level->setSingleStep(shown(0.25));
    m_level->setValue(shown(1.0));
    m_level->setSuffix(u' ' + nitrite().shown().label);
    m_level->setAccessibleName(tr("Nitrite that is not to be passed, %1").arg(nitrite().shown().label));
    for (const double odds : kOdds) {
        m_most->addItem(wording::oddsText(odds), odds);
    }
    m_most->setCurrentIndex(1);
    m_most->setAccessibleName(tr("Highest odds of passing it"));
    auto* box = new QWidget;
    auto* flow = new FlowLayout(box, theme().px(8));
    flow->setContentsMargins(kMargin, 0, kMargin, 0);
    for (QWidget* each :
         std::initializer_list<QWidget*>{new Text(theme(), TextStyle::Body, tr("Least water with nitrite above")),
                                         m_level, new Text(theme(), TextStyle::Body, tr("under")), m_most, m_find}) {
        flow->addWidget(each);
    }
    m_find->setAccessibleName(tr("Find the plan with the least water"));
    connect(m_find, &QPushButton::clicked, this, &PlansCard::findCheapest);
    return box;
}

void PlansCard::findCheapest()
{
    const double level = nitrite().shown().toCanonical(m_level->value());
    const double most = m_most->currentData().toDouble();
    bool any = false;
    const Plan plan = m_finder ? m_finder(level, most, any) : Plan();
    QString name;
    if (any && !m_model.plans.empty()) {
        emit planChosen(plan); // the model is made anew: the plan has its row and letter now
        name = tr("%1 (%2)").arg(m_model.plans[m_model.selected].letter, m_model.plans[m_model.selected].name);
    }
    m_answer->setText(wording::cheapestPlanText(any ? std::optional(name) : std::nullopt, level, most));
    m_answer->show();
    m_answer->setAccessibleName(m_answer->text());
}

void PlansCard::controlsMoved()
{
    forecast::ChangePlan plan;
    plan.fraction = m_slider->value() / 100.0;
    plan.everyDays = m_interval->currentData().toDouble();
    plan.easeAfterDays = m_ease->currentData().toDouble();
    plan.source = std::max(0, m_source->currentIndex());
    if (plan.fraction <= 0.0) {
        plan = {0.0, 7.0, kNever, 0}; // no change is one plan, whatever the other fields say
    }
    m_percent->setText(wording::percentText(plan.fraction));
    m_slider->setAccessibleDescription(m_percent->text());
    emit planChosen(plan);
}

void PlansCard::setColumns()
{
    std::vector<CardColumn> columns{{tr("Plan"), false, 1.0}, {tr("Litres"), true, 0.0}};
    if (!m_narrow) {
        columns.push_back({tr("Changes"), true, 0.0});
    }
    columns.push_back({m_hours, true, 0.0});
    columns.push_back({tr("Readings open it\n8 in 10"), true, 0.0});
    columns.push_back({m_late, true, 0.0});
    m_table->setColumns(std::move(columns));
}

void PlansCard::fillTable(const CycleModel& model)
{
    m_rows.clear();
    std::vector<CardRow> rows;
    for (const CyclePlan& plan : model.plans) {
        m_rows.push_back(plan.plan);
        CardRow row;
        row.sentence = plan.sentence;
        CardCell name{tr("%1 · %2", "letter and name of a plan").arg(plan.letter, plan.name), {}, {}, true, false};
        if (!plan.detail.isEmpty()) {
            name.details << plan.detail;
        }
        row.cells.push_back(std::move(name));
        row.cells.push_back({plan.litres, {}, {}, false, false});
        if (!m_narrow) {
            row.cells.push_back({plan.changes, {}, {}, false, false});
        }
        for (const QString& text : {plan.hours, plan.gate, plan.late}) {
            row.cells.push_back({text, {}, {}, false, false});
        }
        if (m_narrow && !plan.changes.isEmpty()) {
            row.cells.front().details << tr("changes: %1").arg(plan.changes);
        }
        rows.push_back(std::move(row));
    }
    setColumns();
    m_table->setRows(std::move(rows));
    m_table->setChosenRow(model.plans.empty() ? -1 : static_cast<int>(model.selected));
}

void PlansCard::fillControls(const CycleModel& model)
{
    const QSignalBlocker quiet1(m_slider), quiet2(m_interval), quiet3(m_ease), quiet4(m_source);
    QStringList now;
    for (int i = 0; i < m_source->count(); ++i) {
        now << m_source->itemText(i);
    }
    if (now != model.sources) {
        m_source->clear();
        m_source->addItems(model.sources);
    }
    m_source->setVisible(model.sources.size() > 1);
    const Plan plan = model.plans.empty() ? Plan() : model.plans[model.selected].plan;
    if (plan) {
        m_slider->setValue(static_cast<int>(std::lround(plan->fraction * 100.0)));
        if (plan->fraction > 0.0) {
            m_interval->setCurrentIndex(nearest(*m_interval, plan->everyDays));
            m_ease->setCurrentIndex(std::isfinite(plan->easeAfterDays) ? (plan->easeAfterDays > 10.0 ? 2 : 1) : 0);
            m_source->setCurrentIndex(plan->source);
        }
    }
    m_percent->setText(wording::percentText(m_slider->value() / 100.0));
    m_quick->setText(!plan                  ? tr("bands follow at once")
                     : model.previewPending ? tr("quick; the full answer follows")
                                            : tr("looked at, not adopted"));
}

void PlansCard::setModel(const CycleModel& model, bool writable)
{
    m_model = model;
    m_hours = model.hoursHeader;
    m_late = model.lateHeader;
    const QString count = model.compared > 0 ? tr("%1 compared").arg(model.compared) : tr("comparing");
    setHeading(tr("Water-change plans until: %1").arg(model.gateTitle), count);
    fillTable(model);
    m_points = model.pointPlans;
    m_scatter->setModel(model.scatter);
    m_scatter->setVisible(!model.scatter.points.empty());
    fillControls(model);
    const bool other = !model.plans.empty() && model.plans[model.selected].plan.has_value();
    m_adopt->setText(other ? tr("Adopt plan %1").arg(model.plans[model.selected].letter) : tr("Adopt"));
    m_adopt->setAccessibleName(other ? tr("Adopt: %1").arg(model.plans[model.selected].sentence)
                                     : tr("Adopt: choose a plan other than A first"));
    m_adopt->setEnabled(other && writable);
    m_keep->setEnabled(other);
    m_adoption->setText(!writable ? tr("The store is open for reading only: a plan can be looked at, not adopted.")
                        : other   ? model.adoption
                                : tr("Plan A is what is planned now. Choose another row, a ring, or move the slider."));
    m_list->setWords(tr("What goes and what comes"), {}, tr("What goes and what comes when the plan is adopted"),
                     model.adoptionList);
    m_list->setVisible(other && !model.adoptionList.isEmpty());
    m_find->setEnabled(model.compared > 0);
    m_adopt->updateGeometry();
    setVisible(model.state == CycleModel::State::Ready);
}

QString PlansCard::adoptionText() const
{
    return m_adoption->text();
}

QString PlansCard::answerText() const
{
    return m_answer->isHidden() ? QString() : m_answer->text();
}

void PlansCard::resizeEvent(QResizeEvent* event)
{
    CycleCard::resizeEvent(event);
    const bool narrow = event->size().width() < theme().px(500);
    if (narrow != m_narrow) {
        m_narrow = narrow;
        fillTable(m_model);
    }
}

} // namespace littoral::ui
