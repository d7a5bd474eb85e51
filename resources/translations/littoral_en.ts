<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>CareSentences</name>
    <message numerus="yes">
        <source>%n task(s) overdue</source>
        <translation>
            <numerusform>%n task overdue</numerusform>
            <numerusform>%n tasks overdue</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Cycle</name>
    <message numerus="yes">
        <source>%n clear test(s)</source>
        <translation>
            <numerusform>%n clear test</numerusform>
            <numerusform>%n clear tests</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n other thing(s)</source>
        <translation>
            <numerusform>%n other thing</numerusform>
            <numerusform>%n other things</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Guide</name>
    <message numerus="yes">
        <source>%n day(s) of grace</source>
        <translation>
            <numerusform>%n day of grace</numerusform>
            <numerusform>%n days of grace</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LaneAccess</name>
    <message numerus="yes">
        <source>%1, %2, overdue %n day(s), due %3</source>
        <comment>tank, work, day</comment>
        <translation>
            <numerusform>%1, %2, overdue %n day, due %3</numerusform>
            <numerusform>%1, %2, overdue %n days, due %3</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Numbers</name>
    <message numerus="yes">
        <source>%n day(s) over</source>
        <translation>
            <numerusform>%n day over</numerusform>
            <numerusform>%n days over</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Plans</name>
    <message numerus="yes">
        <source>%n change(s) until the gate opens.</source>
        <translation>
            <numerusform>%n change until the gate opens.</numerusform>
            <numerusform>%n changes until the gate opens.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n change(s), %1 of new water until the gate opens.</source>
        <translation>
            <numerusform>%n change, %1 of new water until the gate opens.</numerusform>
            <numerusform>%n changes, %1 of new water until the gate opens.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::GuidePage</name>
    <message numerus="yes">
        <source>%n topic(s)</source>
        <translation>
            <numerusform>%n topic</numerusform>
            <numerusform>%n topics</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n topic(s) with all of these words</source>
        <translation>
            <numerusform>%n topic with all of these words</numerusform>
            <numerusform>%n topics with all of these words</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::RowPlanCard</name>
    <message numerus="yes">
        <source>Large changes collide on %n day(s).</source>
        <translation>
            <numerusform>Large changes collide on %n day.</numerusform>
            <numerusform>Large changes collide on %n days.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::SheetCard</name>
    <message numerus="yes">
        <source>Assumptions and more: %n blank(s)</source>
        <translation>
            <numerusform>Assumptions and more: %n blank</numerusform>
            <numerusform>Assumptions and more: %n blanks</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::StatusLine</name>
    <message numerus="yes">
        <source>%1 · %n entries</source>
        <translation>
            <numerusform>%1 · %n entry</numerusform>
            <numerusform>%1 · %n entries</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::StockPage</name>
    <message numerus="yes">
        <source>%1 of water · %2 · %n animals</source>
        <translation>
            <numerusform>%1 of water · %2 · %n animal</numerusform>
            <numerusform>%1 of water · %2 · %n animals</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::StoreDesk</name>
    <message numerus="yes">
        <source>%n place(s) could not be read.</source>
        <translation>
            <numerusform>%n place could not be read.</numerusform>
            <numerusform>%n places could not be read.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::TanksModel</name>
    <message numerus="yes">
        <source>Row: %n tank(s)</source>
        <translation>
            <numerusform>Row: %n tank</numerusform>
            <numerusform>Row: %n tanks</numerusform>
        </translation>
    </message>
</context>
</TS>
