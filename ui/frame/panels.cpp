// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/panels.h"

namespace littoral::ui {

Panels::Panels(facade::Keeper& keeper, Theme& theme, GuidePage& guide, const ActionRegistry& registry, Ask& ask,
               QWidget* parent)
    : QObject(parent)
    , m_host(new PanelHost(theme, parent))
    , m_entry(new EntryEditor(keeper, theme))
    , m_reading(new ReadingEditor(keeper, theme))
    , m_tank(new TankEditor(keeper, theme))
    , m_source(new SourceEditor(keeper, theme))
    , m_entries(new EntriesPanel(keeper, theme))
    , m_targets(new TargetsEditor(keeper, theme))
    , m_kits(new KitsEditor(keeper, theme))
    , m_doses(new RegimensEditor(keeper, theme))
    , m_facts(new FactEditor(keeper, theme))
    , m_guide(new GuidePanel(guide, theme))
    , m_journey(new JourneyPanel(keeper, theme))
    , m_photos(new PhotosPanel(keeper, theme, ask))
    , m_supplies(new SuppliesEditor(keeper, theme))
    , m_templates(new TemplatesEditor(keeper, theme))
    , m_keys(new KeyPanel(registry, theme))
{
    for (SidePanel* panel :
         std::initializer_list<SidePanel*>{m_entry, m_reading, m_tank, m_source, m_entries, m_targets, m_kits, m_doses,
                                           m_facts, m_guide, m_journey, m_photos, m_supplies, m_templates, m_keys}) {
        m_host->add(panel);
    }
    connect(m_tank, &TankEditor::kitsWanted, this, &Panels::showKits);
    connect(m_tank, &TankEditor::targetsWanted, this, &Panels::showTargets);
    connect(m_tank, &TankEditor::sourceWanted, this, &Panels::showSource);
    connect(m_tank, &TankEditor::dosesWanted, this, &Panels::showDoses);
    connect(m_tank, &TankEditor::entriesWanted, this, &Panels::showEntries);
    connect(m_tank, &TankEditor::tankAdded, this, &Panels::tankAdded);
    // From a line of the list to its form and, when that closes, back to the list.
    connect(m_entries, &EntriesPanel::entryWanted, this, [this](record::EntryId entry) {
        m_entry->edit(entry);
        m_host->open(m_entry, m_entries);
    });
    connect(m_entries, &EntriesPanel::readingWanted, this, [this](record::ReadingId reading) {
        m_reading->edit(reading);
        m_host->open(m_reading, m_entries);
    });
    connect(m_entries, &EntriesPanel::photoWanted, this, [this](record::TankId tank, record::PhotoId photo) {
        m_photos->setTank(tank, photo);
        m_host->open(m_photos, m_entries);
    });
    connect(m_supplies, &SuppliesEditor::kitsWanted, this, [this] {
        m_kits->open();
        m_host->open(m_kits, m_supplies);
    });
}

void Panels::newEntry(record::TankId tank, record::EntryKind kind)
{
    m_entry->begin(tank, kind);
    m_host->open(m_entry);
}

void Panels::newEntry(const record::Entry& proposed)
{
    m_entry->begin(proposed);
    m_host->open(m_entry);
}

void Panels::editEntry(record::EntryId entry)
{
    m_entry->edit(entry);
    m_host->open(m_entry);
}

void Panels::editReading(record::ReadingId reading)
{
    m_reading->edit(reading);
    m_host->open(m_reading);
}

void Panels::addTank()
{
    m_tank->addTank();
    m_host->open(m_tank);
}

void Panels::editTank(record::TankId tank)
{
    m_tank->editTank(tank);
    m_host->open(m_tank);
}

void Panels::editLayout(record::LayoutId layout)
{
    m_tank->editLayout(layout);
    m_host->open(m_tank);
}

void Panels::showEntries(record::TankId tank)
{
    m_entries->setTank(tank);
    m_host->open(m_entries);
}

void Panels::showPhotos(record::TankId tank, record::PhotoId photo)
{
    m_photos->setTank(tank, photo);
    m_host->open(m_photos);
}

void Panels::showSupplies()
{
    m_supplies->open();
    m_host->open(m_supplies);
}

void Panels::showTemplates(const QString& key)
{
    m_templates->open(key);
    m_host->open(m_templates);
}

void Panels::showTargets(record::TankId tank)
{
    m_targets->setTank(tank);
    m_host->open(m_targets);
}

void Panels::showKits()
{
    m_kits->open();
    m_host->open(m_kits);
}

void Panels::showDoses(record::LayoutId layout)
{
    m_doses->setLayout(layout);
    m_host->open(m_doses);
}

void Panels::showJourney()
{
    m_journey->open();
    m_host->open(m_journey);
}

void Panels::showSource(record::SourceWaterId source)
{
    m_source->edit(source);
    m_host->open(m_source);
}

void Panels::editFact(facts::FactKind kind, const QString& id)
{
    m_facts->edit(kind, id);
    m_host->open(m_facts);
}

void Panels::addFact(facts::FactKind kind)
{
    m_facts->add(kind);
    m_host->open(m_facts);
}

void Panels::showGuide(const QStringList& subjects)
{
    m_guide->openAbout(subjects);
    m_host->open(m_guide);
}

void Panels::showKeys(const QString& page, const std::vector<KeyPanel::PageKey>& keys)
{
    m_keys->show(page, keys);
    m_host->open(m_keys);
}

} // namespace littoral::ui
