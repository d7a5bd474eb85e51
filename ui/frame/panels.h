// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/frame/key_panel.h"
#include "ui/frame/panel_host.h"
#include "ui/pages/editors/entries_panel.h"
#include "ui/pages/editors/entry_editor.h"
#include "ui/pages/editors/kits_editor.h"
#include "ui/pages/editors/photos_panel.h"
#include "ui/pages/editors/reading_editor.h"
#include "ui/pages/editors/regimens_editor.h"
#include "ui/pages/editors/source_editor.h"
#include "ui/pages/editors/supplies_editor.h"
#include "ui/pages/editors/tank_editor.h"
#include "ui/pages/editors/targets_editor.h"
#include "ui/pages/editors/templates_editor.h"
#include "ui/pages/guide/fact_editor.h"
#include "ui/pages/guide/guide_panel.h"
#include "ui/pages/journey/journey_panel.h"

namespace littoral::ui {

/// The panels that open beside a page, made once, so that what is half typed in them lasts; and the ways from one to
/// another.
class Panels final : public QObject
{
    Q_OBJECT

public:
    /// `ask` and the others outlive the panels.
    Panels(facade::Keeper& keeper, Theme& theme, GuidePage& guide, const ActionRegistry& registry, Ask& ask,
           QWidget* parent);

    [[nodiscard]] PanelHost* host() { return m_host; }
    void newEntry(record::TankId tank, record::EntryKind kind);
    void newEntry(const record::Entry& proposed);
    void editEntry(record::EntryId entry);
    void editReading(record::ReadingId reading);
    void addTank();
    void editTank(record::TankId tank);
    void editLayout(record::LayoutId layout);
    void showEntries(record::TankId tank); ///< none: the whole row
    void showPhotos(record::TankId tank, record::PhotoId photo = {});
    void showSupplies();
    void showTemplates(const QString& key = {});
    void showTargets(record::TankId tank);
    void showKits();
    void showDoses(record::LayoutId layout);
    void showJourney();
    void showSource(record::SourceWaterId source);
    void editFact(facts::FactKind kind, const QString& id);
    void addFact(facts::FactKind kind);
    /// The guide beside the page, at the first of these it has an article on.
    void showGuide(const QStringList& subjects);
    [[nodiscard]] FactEditor* facts() { return m_facts; }
    [[nodiscard]] GuidePanel* guide() { return m_guide; }
    void showKeys(const QString& page, const std::vector<KeyPanel::PageKey>& keys);

signals:
    void tankAdded(littoral::record::TankId tank);

private:
    PanelHost* m_host;
    EntryEditor* m_entry;
    ReadingEditor* m_reading;
    TankEditor* m_tank;
    SourceEditor* m_source;
    EntriesPanel* m_entries;
    TargetsEditor* m_targets;
    KitsEditor* m_kits;
    RegimensEditor* m_doses;
    FactEditor* m_facts;
    GuidePanel* m_guide;
    JourneyPanel* m_journey;
    PhotosPanel* m_photos;
    SuppliesEditor* m_supplies;
    TemplatesEditor* m_templates;
    KeyPanel* m_keys;
};

} // namespace littoral::ui
