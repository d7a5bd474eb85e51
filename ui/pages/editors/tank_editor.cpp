// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/tank_editor.h"

#include "core/wording/numbers.h"
#include "ui/models/day_words.h"
#include "ui/widgets/caution_box.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/moment_edit.h"
#include "ui/widgets/outline_view.h"

#include <QFormLayout>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QString unitLabel(const QString& parameter)
{
    return record::findParameter(parameter)->shown().label;
}

} // namespace

TankEditor::TankEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("Tank"), parent)
    , m_keeper(keeper)
{
    makeTankForm();
    makeLayoutForm();
    makeWaterForm();
    makeLinks();
    makeFoot();
    bind();
    setFirstField(m_name);
    m_caution = new CautionBox(theme);
    m_caution->setCautions({u"C-LOAD"_s, u"C-HOME"_s}, CautionBox::Extent::Line);
    body()->insertWidget(0, m_caution);
}

void TankEditor::makeTankForm()
{
    QFormLayout* form = addForm();
    m_name = addField(form, tr("Name"));
    m_length = addField(form, tr("Length outside, %1").arg(m_lengthUnit.label));
    m_depth = addField(form, tr("Depth outside, %1").arg(m_lengthUnit.label));
    m_height = addField(form, tr("Height outside, %1").arg(m_lengthUnit.label));
    m_glass = addField(form, tr("Glass, mm"));
    m_note = addField(form, tr("Note on the tank"));
    m_outline = new OutlineView(theme());
    m_outline->setMinimumHeight(theme().px(130));
    m_litres = new Text(theme(), TextStyle::Strong);
    m_litres->setWordWrap(true);
    body()->addWidget(m_outline);
    body()->addWidget(m_litres);
}

void TankEditor::makeLayoutForm()
{
    QFormLayout* form = addForm(tr("Layout"));
    m_layoutName = addField(form, tr("Name of the layout"), tr("layout 1"));
    m_flooded = new MomentEdit(m_keeper.clock(), true);
    addRow(form, tr("Flooded on"), m_flooded);
    m_ended = new MomentEdit(m_keeper.clock(), false);
    m_ended->setPlaceholderText(tr("still running"));
    addRow(form, tr("Ended on"), m_ended);
    m_start = new QComboBox;
    m_start->addItems({tr("New media"), tr("Mature media"), tr("Starter"), tr("Dry start"), tr("Dark start")});
    addRow(form, tr("Start method"), m_start);
    m_bed = new QComboBox;
    m_bed->addItems({tr("Ammonia-rich soil"), tr("Mild soil"), tr("Spent soil"), tr("Sand or gravel, inert")});
    addRow(form, tr("Bed"), m_bed);
    m_bedLitres = addField(form, tr("Bed in bulk, %1").arg(m_volume.label));
    m_rock = addField(form, tr("Rock, kg"));
    m_hardens = new QCheckBox(tr("The rock hardens the water"));
    m_hardens->setAccessibleName(m_hardens->text());
    form->addRow(m_hardens);
    m_gap = addField(form, tr("Rim to water surface, %1").arg(m_lengthUnit.label));
    m_net = addField(form, tr("Water measured on flood day, %1").arg(m_volume.label), tr("reckoned when empty"));
    m_plants = new QComboBox;
    m_plants->addItems({tr("None"), tr("Sparse"), tr("Medium"), tr("Dense")});
    addRow(form, tr("Plants"), m_plants);
}

void TankEditor::makeWaterForm()
{
    QFormLayout* form = addForm(tr("Water, light and filter"));
    m_source = new QComboBox;
    m_source->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    addRow(form, tr("Source water"), m_source);
    m_co2 = new QComboBox;
    m_co2->addItems({tr("None"), tr("Pressurised"), tr("Other")});
    addRow(form, tr("CO₂"), m_co2);
    m_co2Target = addField(form, tr("CO₂ held, %1").arg(unitLabel(u"co2"_s)));
    m_co2Hours = addField(form, tr("CO₂, hours a day"));
    m_lightHours = addField(form, tr("Light, hours a day"));
    m_par = addField(form, tr("Light at the bed, µmol/m²/s"), tr("not measured"));
    m_flow = addField(form, tr("Filter flow, %1").arg(unitLabel(u"flow"_s)));
    m_temperature = addField(form, tr("Temperature, %1").arg(m_temperatureUnit.label));
    m_uptakeLow = addField(form, tr("Plants take up at least, mg/L NO₃ a week"), tr("by density"));
    m_uptakeHigh = addField(form, tr("Plants take up at most, mg/L NO₃ a week"), tr("by density"));
    m_cadence = new QCheckBox(tr("Forecasts follow the proposed cadence"));
    m_cadence->setAccessibleName(m_cadence->text());
    form->addRow(m_cadence);
    m_layoutNote = addField(form, tr("Note on the layout"));
    connect(m_co2, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_co2Target->setEnabled(index > 0);
        m_co2Hours->setEnabled(index > 0);
    });
}

void TankEditor::makeLinks()
{
    m_kits = new Text(theme(), TextStyle::Secondary);
    m_kits->setWordWrap(true);
    body()->addWidget(new Text(theme(), TextStyle::Strong, tr("Kits, targets, doses, entries")));
    body()->addWidget(m_kits);
    m_links = new QWidget;
    auto* flow = new FlowLayout(m_links, 8);
    const auto link = [&](const QString& text, auto&& run) {
        auto* button = new QPushButton(text);
        button->setAccessibleName(text);
        connect(button, &QPushButton::clicked, this, run);
        flow->addWidget(button);
        return button;
    };
    link(tr("Test kits..."), [this] { emit kitsWanted(); });
    link(tr("Target bands..."), [this] { emit targetsWanted(m_tank.id); });
    link(tr("Doses..."), [this] { emit dosesWanted(m_layout.id); });
    link(tr("Entries..."), [this] { emit entriesWanted(m_tank.id); });
    link(tr("Source water..."),
         [this] { emit sourceWanted(record::SourceWaterId{m_source->currentData().toLongLong()}); });
    m_newLayout = link(tr("New layout..."), [this] { addLayout(m_tank.id); });
    m_end = link(tr("End this layout"), [this] { endLayout(); });
    m_remove = link(tr("Remove the tank"), [this] { removeTank(); });
    body()->addWidget(m_links);
    body()->addStretch(1);
}

void TankEditor::makeFoot()
{
    m_save = addFootButton(tr("Save"), tr("Enter"), true);
    connect(m_save, &QPushButton::clicked, this, &TankEditor::save);
    for (QLineEdit* field : {m_length, m_depth, m_height, m_glass, m_bedLitres, m_rock, m_gap, m_net}) {
        connect(field, &QLineEdit::textChanged, this, &TankEditor::refreshOutcome);
    }
}

void TankEditor::bind()
{
    m_tankFields.text(m_name, &record::Tank::name);
    m_tankFields.number(m_length, &record::Tank::length_cm, 0, 1000, m_lengthUnit);
    m_tankFields.number(m_depth, &record::Tank::depth_cm, 0, 1000, m_lengthUnit);
    m_tankFields.number(m_height, &record::Tank::height_cm, 0, 1000, m_lengthUnit);
    m_tankFields.number(m_glass, &record::Tank::glass_mm, 0, 60);
    m_tankFields.text(m_note, &record::Tank::note);
    m_layoutFields.text(m_layoutName, &record::Layout::name);
    m_layoutFields.choice(m_start, &record::Layout::start);
    m_layoutFields.choice(m_bed, &record::Layout::bed);
    m_layoutFields.number(m_bedLitres, &record::Layout::bed_L, 0, 5000, m_volume);
    m_layoutFields.number(m_rock, &record::Layout::rock_kg, 0, 5000);
    m_layoutFields.flag(m_hardens, &record::Layout::rockHardens);
    m_layoutFields.number(m_gap, &record::Layout::gap_cm, 0, 200, m_lengthUnit);
    m_layoutFields.optional(m_net, &record::Layout::measuredNet_L, m_volume.shown(0.1), m_volume.shown(20000),
                            1.0 / m_volume.factor);
    m_layoutFields.choice(m_plants, &record::Layout::plants);
    m_layoutFields.choice(m_co2, &record::Layout::co2);
    m_layoutFields.number(m_co2Target, &record::Layout::co2Target_mg_per_L, 0, 100);
    m_layoutFields.number(m_co2Hours, &record::Layout::co2Hours, 0, 24);
    m_layoutFields.number(m_lightHours, &record::Layout::lightHours, 0, 24);
    m_layoutFields.number(m_par, &record::Layout::lightPar, 0, 2500);
    m_layoutFields.number(m_flow, &record::Layout::filterFlow_L_per_h, 0, 20000, {{}, m_volume.factor});
    m_layoutFields.number(m_temperature, &record::Layout::temperature_C, 0, 45, m_temperatureUnit);
    m_layoutFields.optional(m_uptakeLow, &record::Layout::uptakeLow_mg_per_L_wk, 0, 1000);
    m_layoutFields.optional(m_uptakeHigh, &record::Layout::uptakeHigh_mg_per_L_wk, 0, 1000);
    m_layoutFields.flag(m_cadence, &record::Layout::followsCadence);
    m_layoutFields.text(m_layoutNote, &record::Layout::note);
}

void TankEditor::fillSources()
{
    m_source->clear();
    m_source->addItem(tr("Not stated"), QVariant::fromValue<qint64>(0));
    for (const record::SourceWater& source : m_keeper.row().sources) {
        m_source->addItem(source.name, source.id.value);
    }
}

void TankEditor::show(const record::Tank& tank, const record::Layout& layout)
{
    m_caution->setVisible(!tank.id); // before glass is filled for the first time
    m_tank = tank;
    m_layout = layout;
    clearProblem();
    fillSources();
    m_tankFields.fill(tank);
    m_layoutFields.fill(layout);
    m_flooded->setMoment(layout.flooded);
    m_ended->setMoment(layout.ended.value_or(record::Moment{}));
    m_source->setCurrentIndex(std::max(0, m_source->findData(layout.source.value)));
    m_co2Target->setEnabled(layout.co2 != record::Co2Mode::None);
    m_co2Hours->setEnabled(layout.co2 != record::Co2Mode::None);
    QStringList kits;
    for (const record::TestKit& kit : m_keeper.row().kits) {
        if (!kit.retired) {
            kits << kit.name;
        }
    }
    m_kits->setText(kits.isEmpty() ? tr("No test kit is named yet; readings are then taken in the shown units.")
                                   : tr("Kits in use: %1").arg(QLocale().createSeparatedList(kits)));
    const bool known = static_cast<bool>(tank.id);
    m_links->setVisible(known);
    m_end->setEnabled(layout.id && !layout.ended);
    m_newLayout->setEnabled(static_cast<bool>(layout.id));
    m_save->setEnabled(!m_keeper.isReadOnly());
    setTitle(!known      ? tr("Add a tank")
             : layout.id ? tr("%1, %2").arg(tank.name, record::layoutName(layout))
                         : tr("New layout for %1").arg(tank.name));
    m_save->setText(!known ? tr("Add this tank") : tr("Save"));
    m_save->setAccessibleName(m_save->text());
    refreshOutcome();
}

void TankEditor::addTank()
{
    if (!m_tank.id && hasDraft()) {
        return; // half-typed before: it is still there
    }
    record::Layout layout;
    layout.flooded = m_keeper.clock().now();
    if (!m_keeper.row().sources.empty()) {
        layout.source = m_keeper.row().sources.front().id;
    }
    show({}, layout);
}

void TankEditor::editTank(record::TankId tank)
{
    const record::LayoutRecord* layout = m_keeper.row().currentLayout(tank, m_keeper.clock().now());
    if (layout != nullptr) {
        editLayout(layout->layout.id);
    }
}

void TankEditor::editLayout(record::LayoutId layout)
{
    const record::LayoutRecord* found = m_keeper.row().layout(layout);
    const record::Tank* tank = found == nullptr ? nullptr : m_keeper.row().tank(found->layout.tank);
    if (tank != nullptr && !(m_layout.id == layout && hasDraft())) {
        show(*tank, found->layout);
    }
}

void TankEditor::addLayout(record::TankId tank)
{
    const record::Tank* found = m_keeper.row().tank(tank);
    const auto layouts = m_keeper.row().layoutsOf(tank);
    if (found == nullptr || layouts.empty()) {
        return;
    }
    record::Layout layout;
    const record::Layout& last = layouts.back()->layout;
    layout.tank = tank;
    layout.number = last.number + 1;
    layout.flooded = m_keeper.clock().now();
    layout.source = last.source;
    layout.co2 = last.co2;
    layout.temperature_C = last.temperature_C;
    layout.filterFlow_L_per_h = last.filterFlow_L_per_h;
    show(*found, layout);
    m_layoutName->setFocus();
}

QString TankEditor::read(record::Tank& tank, record::Layout& layout) const
{
    QString problem = m_tankFields.read(tank);
    const QString second = m_layoutFields.read(layout);
    problem = problem.isEmpty() ? second : problem;
    const bool floodedKept = m_flooded->text() == momentEditText(layout.flooded);
    if (!floodedKept || !layout.flooded.isValid()) {
        layout.flooded = m_flooded->moment();
    }
    if (m_ended->text().trimmed().isEmpty()) {
        layout.ended.reset();
    } else if (!layout.ended || m_ended->text() != momentEditText(*layout.ended)) {
        layout.ended = m_ended->moment();
    }
    layout.source = record::SourceWaterId{m_source->currentData().toLongLong()};
    if (!problem.isEmpty()) {
        return problem;
    }
    if (tank.name.isEmpty()) {
        return tr("The tank has no name yet. Give it one that you would say aloud.");
    }
    if (const record::Tank* same = m_keeper.row().tankNamed(tank.name); same != nullptr && same->id != tank.id) {
        return tr("There is already a tank named %1.").arg(same->name);
    }
    if (!layout.flooded.isValid()) {
        return tr("The day it was flooded is not understood. Type it as 2026-11-25 or 2026-11-25 10:00.");
    }
    if (layout.ended && !layout.ended->isValid()) {
        return tr("The day it ended is not understood. Type it as 2026-11-25, or leave it empty.");
    }
    if (layout.uptakeLow_mg_per_L_wk && layout.uptakeHigh_mg_per_L_wk &&
        *layout.uptakeLow_mg_per_L_wk > *layout.uptakeHigh_mg_per_L_wk) {
        return tr("The least the plants take up lies above the most.");
    }
    if (layout.ended && *layout.ended < layout.flooded) {
        return tr("The layout ends before it was flooded.");
    }
    return {};
}

bool TankEditor::hasDraft() const
{
    record::Tank tank = m_tank;
    record::Layout layout = m_layout;
    const QString problem = read(tank, layout);
    if (!m_tank.id && m_name->text().trimmed().isEmpty()) {
        return false;
    }
    return !problem.isEmpty() || tank != m_tank || layout != m_layout;
}

void TankEditor::refreshOutcome()
{
    record::Tank tank = m_tank;
    record::Layout layout = m_layout;
    (void)m_tankFields.read(tank);
    (void)m_layoutFields.read(layout);
    const double floor = tank.length_cm * tank.depth_cm;
    const double bed_cm = floor > 0 ? layout.bed_L * 1000.0 / floor : 0.0;
    m_outline->setBox(tank.length_cm, tank.height_cm, layout.gap_cm,
                      tank.height_cm > 0 ? bed_cm / tank.height_cm : 0.15);
    const auto net = record::netVolume(tank, layout);
    if (!net) {
        m_litres->setText(tr("How much water there is is unknown without the glass or a measured volume."));
    } else if (net->reckoned) {
        m_litres->setText(tr("%1 glass, about %2 of water")
                              .arg(wording::litresText(record::glassVolume_L(tank)), wording::litresText(net->litres)));
    } else {
        m_litres->setText(tr("%1 of water, as measured").arg(wording::litresText(net->litres)));
    }
}

void TankEditor::save()
{
    record::Tank tank = m_tank;
    record::Layout layout = m_layout;
    if (const QString problem = read(tank, layout); !problem.isEmpty()) {
        showProblem(problem);
        return;
    }
    if (!tank.id) {
        const auto added = m_keeper.addTank(tank, layout);
        if (!added) {
            showProblem(QString::fromStdString(added.error().sentence()));
            return;
        }
        show({}, {});
        emit saved(tr("%1 added").arg(tank.name));
        emit tankAdded(*added);
        emit closeRequested();
        return;
    }
    store::Edit edit(layout.id ? tr("edit %1").arg(tank.name) : tr("new layout, %1").arg(tank.name));
    if (tank != m_tank) {
        edit.put(tank);
    }
    layout.tank = tank.id;
    if (!layout.id) {
        // A tank holds one scene at a time: the one before ends where this one is flooded.
        for (const record::LayoutRecord* other : m_keeper.row().layoutsOf(tank.id)) {
            if (!other->layout.ended) {
                record::Layout ended = other->layout;
                ended.ended = layout.flooded;
                edit.put(ended);
            }
        }
    }
    if (layout != m_layout || !layout.id) {
        layout.id = edit.put(layout);
    }
    if (const auto done = m_keeper.commit(edit); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    show(tank, layout);
    emit saved(tr("%1 saved").arg(tank.name));
    emit closeRequested();
}

void TankEditor::endLayout()
{
    record::Layout layout = m_layout;
    layout.ended = m_keeper.clock().now();
    store::Edit edit(tr("end %1, %2").arg(record::layoutName(layout), m_tank.name));
    edit.put(layout);
    if (const auto done = m_keeper.commit(edit); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    show(m_tank, layout);
    emit saved(tr("%1, %2 ended").arg(m_tank.name, record::layoutName(layout)));
}

void TankEditor::removeTank()
{
    store::Edit edit(tr("remove tank %1").arg(m_tank.name));
    edit.remove(m_tank.id);
    const QString name = m_tank.name;
    if (const auto done = m_keeper.commit(edit); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    show({}, {});
    emit saved(tr("%1 removed with everything recorded about it; undo brings it back").arg(name));
    emit closeRequested();
}

} // namespace littoral::ui
