<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>BulkEdit</name>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n hour</numerusform>
            <numerusform>%n hours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>remove %n record(s)</source>
        <translation>
            <numerusform>remove %n record</numerusform>
            <numerusform>remove %n records</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>move %n record(s) %1</source>
        <translation>
            <numerusform>move %n record %1</numerusform>
            <numerusform>move %n records %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>put %n record(s) into %1</source>
        <translation>
            <numerusform>put %n record into %1</numerusform>
            <numerusform>put %n records into %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>no kit for %n reading(s)</source>
        <translation>
            <numerusform>no kit for %n reading</numerusform>
            <numerusform>no kit for %n readings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>kit %1 for %n reading(s)</source>
        <translation>
            <numerusform>kit %1 for %n reading</numerusform>
            <numerusform>kit %1 for %n readings</numerusform>
        </translation>
    </message>
</context>
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
    <name>Supplies</name>
    <message numerus="yes">
        <source>About %1 left after %n dose(s) since %2.</source>
        <translation>
            <numerusform>About %1 left after %n dose since %2.</numerusform>
            <numerusform>About %1 left after %n doses since %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>About %1 left after %n water change(s) since %2.</source>
        <translation>
            <numerusform>About %1 left after %n water change since %2.</numerusform>
            <numerusform>About %1 left after %n water changes since %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>About %1 left after doses and %n water change(s) since %2.</source>
        <translation>
            <numerusform>About %1 left after doses and %n water change since %2.</numerusform>
            <numerusform>About %1 left after doses and %n water changes since %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>About %1 of gas left by %n weighing(s).</source>
        <translation>
            <numerusform>About %1 of gas left by %n weighing.</numerusform>
            <numerusform>About %1 of gas left by %n weighings.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n day(s)</source>
        <translation>
            <numerusform>about %n day</numerusform>
            <numerusform>about %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dose(s) could not be counted: their unit does not convert into %1.</source>
        <translation>
            <numerusform>%n dose could not be counted: its unit does not convert into %1.</numerusform>
            <numerusform>%n doses could not be counted: their units do not convert into %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::BulkBar</name>
    <message numerus="yes">
        <source>%n selected</source>
        <translation>
            <numerusform>%n line selected</numerusform>
            <numerusform>%n lines selected</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::EntriesPanel</name>
    <message numerus="yes">
        <source>Done: %1; %n left as they were</source>
        <translation>
            <numerusform>Done: %1; %n left as it was</numerusform>
            <numerusform>Done: %1; %n left as they were</numerusform>
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
    <name>littoral::ui::PhotosPanel</name>
    <message numerus="yes">
        <source>%n photograph(s)</source>
        <translation>
            <numerusform>%n photograph</numerusform>
            <numerusform>%n photographs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::Reminder</name>
    <message numerus="yes">
        <source>%1: %2, and %n more</source>
        <translation>
            <numerusform>%1: %2, and %n other</numerusform>
            <numerusform>%1: %2, and %n others</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Overdue work in %n tanks</source>
        <translation>
            <numerusform>Overdue work in %n tank</numerusform>
            <numerusform>Overdue work in %n tanks</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::RoundTimers</name>
    <message numerus="yes">
        <source>%1, and %n more</source>
        <translation>
            <numerusform>%1, and %n other</numerusform>
            <numerusform>%1, and %n others</numerusform>
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
