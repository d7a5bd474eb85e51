<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Advice</name>
    <message>
        <source>Often: read at another time of the CO₂ day, or a probe due for its buffer.</source>
        <translation>Oft: zu einer anderen Zeit des CO₂-Tags gemessen, oder die Elektrode braucht ihren Puffer.</translation>
    </message>
    <message>
        <source>Often: a drop too many, or the bottles for KH and GH exchanged.</source>
        <translation>Oft: ein Tropfen zu viel, oder die Flaschen für KH und GH verwechselt.</translation>
    </message>
    <message>
        <source>Often: read just after a water change; else look at the heater.</source>
        <translation>Oft: kurz nach einem Wasserwechsel gemessen; sonst den Heizer ansehen.</translation>
    </message>
    <message>
        <source>Often: water lost to the air, a dose just given, or a probe due for its standard.</source>
        <translation>Oft: verdunstetes Wasser, eine frische Dosis, oder die Elektrode braucht ihren Standard.</translation>
    </message>
    <message>
        <source>Often: read before the colour was ready, or another kit&apos;s card held beside it.</source>
        <translation>Oft: abgelesen, bevor die Farbe fertig war, oder die Karte eines anderen Tests daneben gehalten.</translation>
    </message>
    <message>
        <source>Often: a bottle not shaken long enough, or another kit&apos;s card held beside it.</source>
        <translation>Oft: eine zu kurz geschüttelte Flasche, oder die Karte eines anderen Tests daneben gehalten.</translation>
    </message>
    <message>
        <source>Lower than expected: %1, forecast %2 to %3</source>
        <translation>Niedriger als erwartet: %1, Vorhersage %2 bis %3</translation>
    </message>
    <message>
        <source>Higher than expected: %1, forecast %2 to %3</source>
        <translation>Höher als erwartet: %1, Vorhersage %2 bis %3</translation>
    </message>
    <message>
        <source>The forecast range holds 19 in 20; it rests on the readings up to %1.</source>
        <translation>Der Bereich der Vorhersage gilt in 19 von 20 Fällen; er beruht auf den Messwerten bis %1.</translation>
    </message>
    <message>
        <source>About ten times off the last reading: %1, it was %2 on %3</source>
        <translation>Etwa zehnfach neben dem letzten Messwert: %1, am %3 waren es %2</translation>
    </message>
    <message>
        <source>Look at the place of the decimal mark and at the unit (%1).</source>
        <translation>Sieh auf die Stelle des Kommas und auf die Einheit (%1).</translation>
    </message>
    <message>
        <source>A large step from the last reading: %1, it was %2 on %3</source>
        <translation>Ein großer Schritt seit dem letzten Messwert: %1, am %3 waren es %2</translation>
    </message>
    <message>
        <source>More than is usual for %1 in that time.</source>
        <translation>Mehr als in dieser Zeit für %1 üblich.</translation>
    </message>
    <message>
        <source>Kit past its date: %1, good until %2</source>
        <translation>Test abgelaufen: %1, haltbar bis %2</translation>
    </message>
    <message>
        <source>The value is kept. Read it against a fresh kit before acting on it.</source>
        <translation>Der Wert bleibt. Prüfe ihn mit einem frischen Test, bevor du danach handelst.</translation>
    </message>
</context>
<context>
    <name>AgeChart</name>
    <message>
        <source>%1, %2: %3 %4</source>
        <translation>%1, %2: %3 %4</translation>
    </message>
</context>
<context>
    <name>BenchCurve</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>wanted band of this tank</source>
        <translation>gewünschter Bereich dieses Beckens</translation>
    </message>
    <message>
        <source>15–30 with animals, common practice</source>
        <translation>15–30 mit Tieren, gängige Praxis</translation>
    </message>
    <message>
        <source>0.02, common practice for animals</source>
        <translation>0,02, gängige Praxis für Tiere</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <translation>%1: %2 (%3)</translation>
    </message>
    <message>
        <source>pH and KH</source>
        <translation>pH und KH</translation>
    </message>
    <message>
        <source>pH drop</source>
        <translation>pH-Abfall</translation>
    </message>
    <message>
        <source>give the pH of a degassed sample</source>
        <translation>den pH einer entgasten Probe angeben</translation>
    </message>
    <message>
        <source>Indicator</source>
        <translation>Dauertest</translation>
    </message>
    <message>
        <source>give the pH its colour stands for</source>
        <translation>den pH angeben, für den seine Farbe steht</translation>
    </message>
    <message>
        <source>%1 (%2) %3</source>
        <translation>%1 (%2) %3</translation>
    </message>
    <message>
        <source>%1 against %2, as a table</source>
        <translation>%1 gegen %2, als Tabelle</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Untergrenze</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Obergrenze</translation>
    </message>
    <message>
        <source>The ways side by side, as a table</source>
        <translation>Die Wege nebeneinander, als Tabelle</translation>
    </message>
    <message>
        <source>Way</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
</context>
<context>
    <name>BenchOffers</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Worksheet</source>
        <translation>Rechenblatt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>BenchSheet</name>
    <message>
        <source>weighed %1</source>
        <translation>gewogen %1</translation>
    </message>
    <message>
        <source>between these weighings</source>
        <translation>zwischen diesen Wägungen</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>getippt</translation>
    </message>
    <message>
        <source>usual choice</source>
        <translation>übliche Wahl</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>darf leer bleiben</translation>
    </message>
    <message>
        <source>still needed</source>
        <translation>fehlt noch</translation>
    </message>
    <message>
        <source>Not reckoned: see %1.</source>
        <translation>Nicht gerechnet: siehe %1.</translation>
    </message>
    <message>
        <source>Still needed: %1.</source>
        <translation>Fehlt noch: %1.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>BulkEdit</name>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n Stunde</numerusform>
            <numerusform>%n Stunden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n Minute</numerusform>
            <numerusform>%n Minuten</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 earlier</source>
        <translation>%1 früher</translation>
    </message>
    <message>
        <source>%1 later</source>
        <translation>%1 später</translation>
    </message>
    <message numerus="yes">
        <source>remove %n record(s)</source>
        <translation>
            <numerusform>%n Eintrag entfernen</numerusform>
            <numerusform>%n Einträge entfernen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>move %n record(s) %1</source>
        <translation>
            <numerusform>%n Eintrag %1 ansetzen</numerusform>
            <numerusform>%n Einträge %1 ansetzen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>put %n record(s) into %1</source>
        <translation>
            <numerusform>%n Eintrag nach %1 verschieben</numerusform>
            <numerusform>%n Einträge nach %1 verschieben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>no kit for %n reading(s)</source>
        <translation>
            <numerusform>kein Test für %n Messwert</numerusform>
            <numerusform>kein Test für %n Messwerte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>kit %1 for %n reading(s)</source>
        <translation>
            <numerusform>Test %1 für %n Messwert</numerusform>
            <numerusform>Test %1 für %n Messwerte</numerusform>
        </translation>
    </message>
    <message>
        <source>That tank has no layout to put records into.</source>
        <translation>Dieses Becken hat keine Einrichtung, die Einträge aufnehmen könnte.</translation>
    </message>
    <message>
        <source>Add a layout to it first.</source>
        <translation>Zuerst eine Einrichtung für das Becken anlegen.</translation>
    </message>
    <message>
        <source>Some of these would be done after now.</source>
        <translation>Einige davon lägen dann in der Zukunft.</translation>
    </message>
    <message>
        <source>Move them by less.</source>
        <translation>Um weniger verschieben.</translation>
    </message>
</context>
<context>
    <name>CareSentences</name>
    <message>
        <source>met</source>
        <translation>erfüllt</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>nicht erfüllt</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>%1 %2 on %3: with animals the limit is %4.</source>
        <translation>%1 %2 am %3: Mit Tieren liegt die Grenze bei %4.</translation>
    </message>
    <message>
        <source>%1 %2 on %3: from %4 plants suffer.</source>
        <translation>%1 %2 am %3: Ab %4 leiden Pflanzen.</translation>
    </message>
    <message>
        <source>%1 %2 on %3: from %4 nitrite oxidisers are held back.</source>
        <translation>%1 %2 am %3: Ab %4 werden Nitritoxidierer gehemmt.</translation>
    </message>
    <message>
        <source>%1 %2 on %3: above %4 a dark start may stall.</source>
        <translation>%1 %2 am %3: Über %4 kann ein Dunkelstart stocken.</translation>
    </message>
    <message>
        <source>%1 %2 on %3: over %4, two degrees above its range.</source>
        <translation>%1 %2 am %3: über %4, zwei Grad über dem Bereich.</translation>
    </message>
    <message>
        <source>%1 %2 on %3: over %4.</source>
        <translation>%1 %2 am %3: über %4.</translation>
    </message>
    <message>
        <source>Melt on %1 of the plants on %2: a step tighter for a week.</source>
        <translation>Schmelze bei %1 der Pflanzen am %2: eine Woche lang eine Stufe enger.</translation>
    </message>
    <message>
        <source>%1 rose from %2 to %3 by %4: a step tighter for a week.</source>
        <translation>%1 stieg bis %4 von %2 auf %3: eine Woche lang eine Stufe enger.</translation>
    </message>
    <message>
        <source>The bed was disturbed on %1: a change that day and the next.</source>
        <translation>Der Bodengrund wurde am %1 aufgewühlt: ein Wechsel an diesem und am nächsten Tag.</translation>
    </message>
    <message>
        <source>An animal was lost on %1.</source>
        <translation>Am %1 ging ein Tier verloren.</translation>
    </message>
    <message>
        <source>Too much food went in on %1.</source>
        <translation>Am %1 kam zu viel Futter hinein.</translation>
    </message>
    <message>
        <source>White haze and animals at the surface on %1: aerate first.</source>
        <translation>Weiße Trübung und Tiere an der Oberfläche am %1: zuerst belüften.</translation>
    </message>
    <message>
        <source>Two readings of ammonia and nitrite in a row, taken before changes, are under the limits: %1.</source>
        <translation>Zwei Messungen von Ammonium und Nitrit in Folge, vor Wechseln genommen, liegen unter den Grenzen: %1.</translation>
    </message>
    <message>
        <source>Melt is not rising: %1.</source>
        <translation>Die Schmelze nimmt nicht zu: %1.</translation>
    </message>
    <message>
        <source>No algae rose in seven days: %1.</source>
        <translation>Keine Alge nahm in sieben Tagen zu: %1.</translation>
    </message>
    <message>
        <source>Two full intervals done at the present step, since %1: %2.</source>
        <translation>Zwei volle Abstände auf der jetzigen Stufe sind geschafft, seit %1: %2.</translation>
    </message>
    <message>
        <source>Nothing added, disturbed, serviced or dosed anew in three days: %1.</source>
        <translation>Drei Tage lang nichts eingesetzt, aufgewühlt, gereinigt oder neu dosiert: %1.</translation>
    </message>
    <message>
        <source>GH and KH stay within a degree between changes: %1.</source>
        <translation>GH und KH bleiben zwischen den Wechseln auf ein Grad gleich: %1.</translation>
    </message>
    <message>
        <source>%1 above %2 since %3</source>
        <translation>%1 über %2 seit %3</translation>
    </message>
    <message>
        <source>%1 below %2 since %3</source>
        <translation>%1 unter %2 seit %3</translation>
    </message>
    <message>
        <source>%1 above its range (%2) since %3</source>
        <translation>%1 über seinem Bereich (%2) seit %3</translation>
    </message>
    <message>
        <source>%1 below its range (%2) since %3</source>
        <translation>%1 unter seinem Bereich (%2) seit %3</translation>
    </message>
    <message>
        <source>%1, %2, since %3</source>
        <translation>%1, %2, seit %3</translation>
    </message>
    <message>
        <source>1 animal lost, %1</source>
        <translation>1 Tier verloren, %1</translation>
    </message>
    <message>
        <source>%1 animals lost since %2</source>
        <translation>%1 Tiere verloren seit %2</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>week 1</source>
        <translation>Woche 1</translation>
    </message>
    <message>
        <source>week 2</source>
        <translation>Woche 2</translation>
    </message>
    <message>
        <source>weeks 3–4</source>
        <translation>Wochen 3–4</translation>
    </message>
    <message>
        <source>weeks 5–6</source>
        <translation>Wochen 5–6</translation>
    </message>
    <message>
        <source>weeks 7–8</source>
        <translation>Wochen 7–8</translation>
    </message>
    <message>
        <source>mature</source>
        <translation>eingefahren</translation>
    </message>
    <message>
        <source>over a year old</source>
        <translation>über ein Jahr alt</translation>
    </message>
    <message>
        <source>Cycle not known</source>
        <translation>Einfahrphase unbekannt</translation>
    </message>
    <message>
        <source>Ammonia rising</source>
        <translation>Ammonium steigt</translation>
    </message>
    <message>
        <source>Ammonia falling</source>
        <translation>Ammonium fällt</translation>
    </message>
    <message>
        <source>Nitrite at its height</source>
        <translation>Nitrit auf dem Höchststand</translation>
    </message>
    <message>
        <source>Nitrite falling</source>
        <translation>Nitrit fällt</translation>
    </message>
    <message>
        <source>Ammonia and nitrite clear</source>
        <translation>Ammonium und Nitrit klar</translation>
    </message>
    <message>
        <source>Growing in</source>
        <translation>Wächst ein</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Stabil</translation>
    </message>
    <message>
        <source>Mature media settling</source>
        <translation>Reifes Filtermaterial stellt sich ein</translation>
    </message>
    <message>
        <source>Not flooded yet</source>
        <translation>Noch nicht geflutet</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Beendet</translation>
    </message>
    <message>
        <source>%1: no animals yet</source>
        <translation>%1: noch keine Tiere</translation>
    </message>
    <message>
        <source>Waiting for its flooding</source>
        <translation>Wartet auf das Fluten</translation>
    </message>
    <message>
        <source>The cycle is running with animals in</source>
        <translation>Die Einfahrphase läuft mit Tieren im Becken</translation>
    </message>
    <message>
        <source>The cycle is running; no animals yet</source>
        <translation>Die Einfahrphase läuft; noch keine Tiere</translation>
    </message>
    <message>
        <source>Dark start: waiting for its plants</source>
        <translation>Dunkelstart: wartet auf seine Pflanzen</translation>
    </message>
    <message>
        <source>Nothing read yet: ammonia and nitrite tests would tell</source>
        <translation>Noch nichts gemessen: Tests auf Ammonium und Nitrit gäben Auskunft</translation>
    </message>
    <message>
        <source>Not known: a test of %1 would tell</source>
        <translation>Unbekannt: Ein Test auf %1 gäbe Auskunft</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>Nothing out of range</source>
        <translation>Nichts außerhalb der Bereiche</translation>
    </message>
    <message>
        <source>ok</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>%1 low</source>
        <translation>%1 niedrig</translation>
    </message>
    <message>
        <source>%1 high</source>
        <translation>%1 hoch</translation>
    </message>
    <message>
        <source>act</source>
        <translation>handeln</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>beobachten</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation>%1 überfällig</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>wartet</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>beendet</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message numerus="yes">
        <source>%n task(s) overdue</source>
        <translation>
            <numerusform>%n Aufgabe überfällig</numerusform>
            <numerusform>%n Aufgaben überfällig</numerusform>
        </translation>
    </message>
    <message>
        <source>A treatment ended on %1. What it was for, and what comes after, is for a veterinarian or a fish-health professional.</source>
        <translation>Eine Behandlung endete am %1. Wofür sie war und was danach kommt, ist Sache einer tierärztlichen Praxis oder einer Fachperson für Fischgesundheit.</translation>
    </message>
    <message>
        <source>%1 %2 on %3, within a week of an addition and over %4: a step tighter for a week, and no more animals.</source>
        <translation>%1 %2 am %3, innerhalb einer Woche nach einem Neubesatz und über %4: eine Woche lang eine Stufe enger und keine weiteren Tiere.</translation>
    </message>
    <message>
        <source>At the looser cadence the forecast keeps the next peak under the limits %1; 8 in 10 are asked for: %2.</source>
        <translation>Beim lockereren Rhythmus hält die Vorhersage die nächste Spitze mit einer Wahrscheinlichkeit von %1 unter den Grenzen; verlangt sind 8 von 10: %2.</translation>
    </message>
    <message>
        <source>What the forecast gives for the looser cadence: %1.</source>
        <translation>Was die Vorhersage für den lockereren Rhythmus ergibt: %1.</translation>
    </message>
</context>
<context>
    <name>CaseFile</name>
    <message>
        <source>Cover of %1</source>
        <translation>Deckung von %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>On %1 %2 stood at %3; %4 stood at %5 at that age.</source>
        <translation>Am %1 stand %2 bei %3; in diesem Alter stand %4 bei %5.</translation>
    </message>
    <message>
        <source>%1 has nothing on record at %2, so only the earlier part compares.</source>
        <translation>%1 hat mit %2 nichts aufgezeichnet, also lässt sich nur der frühere Teil vergleichen.</translation>
    </message>
    <message>
        <source>The two stand on different beds.</source>
        <translation>Die beiden stehen auf verschiedenem Bodengrund.</translation>
    </message>
    <message>
        <source>This is one tank beside one other: a difference between them may be chance.</source>
        <translation>Das ist ein Becken neben einem anderen: Ein Unterschied kann Zufall sein.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 · %2 · flooded %3</source>
        <translation>%1 · %2 · geflutet %3</translation>
    </message>
    <message>
        <source>%1 · flooded %2</source>
        <translation>%1 · geflutet %2</translation>
    </message>
    <message>
        <source>The %1 days up to %2</source>
        <translation>Die %1 Tage bis %2</translation>
    </message>
    <message>
        <source>The %1 days before it was first written down, on %2</source>
        <translation>Die %1 Tage, bevor es am %2 zum ersten Mal notiert wurde</translation>
    </message>
    <message>
        <source>In the window: readings %1, entries %2, observations %3</source>
        <translation>Im Zeitfenster: Messwerte %1, Einträge %2, Beobachtungen %3</translation>
    </message>
    <message>
        <source>%1 %2.</source>
        <translation>%1 %2.</translation>
    </message>
    <message>
        <source>%1 above %2</source>
        <translation>%1 über %2</translation>
    </message>
    <message>
        <source>%1 below %2</source>
        <translation>%1 unter %2</translation>
    </message>
    <message>
        <source>What changed, %1 to %2</source>
        <translation>Was sich änderte, %1 bis %2</translation>
    </message>
    <message>
        <source>first seen %1</source>
        <translation>zuerst gesehen %1</translation>
    </message>
    <message>
        <source>Animals lost, from %1</source>
        <translation>Verlorene Tiere, ab %1</translation>
    </message>
    <message>
        <source>%1, from %2</source>
        <translation>%1, ab %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Nothing in particular, up to today</source>
        <translation>Nichts Besonderes, bis heute</translation>
    </message>
    <message>
        <source>%1: its last weeks</source>
        <translation>%1: seine letzten Wochen</translation>
    </message>
    <message>
        <source>yours: %1</source>
        <translation>eigene Angabe: %1</translation>
    </message>
</context>
<context>
    <name>CasePaper</name>
    <message>
        <source>Record of the window</source>
        <translation>Journal des Zeitfensters</translation>
    </message>
    <message>
        <source>%1 %2  %3</source>
        <translation>%1 %2  %3</translation>
    </message>
    <message>
        <source>Findings, most supported first</source>
        <translation>Befunde, der bestgestützte zuerst</translation>
    </message>
    <message>
        <source>Nothing that was seen points to a condition.</source>
        <translation>Nichts, was gesehen wurde, deutet auf einen Zustand hin.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>+ for</source>
        <translation>+ dafür</translation>
    </message>
    <message>
        <source>− against</source>
        <translation>− dagegen</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Zuerst</translation>
    </message>
    <message>
        <source>Avoid</source>
        <translation>Vermeiden</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Keep it, or start afresh: to talk over</source>
        <translation>Behalten oder neu anfangen: zum Durchsprechen</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>The points are judgement, common practice; they decide nothing.</source>
        <translation>Die Punkte sind Abwägung, gängige Praxis; sie entscheiden nichts.</translation>
    </message>
    <message>
        <source>What changed before it</source>
        <translation>Was sich davor änderte</translation>
    </message>
    <message>
        <source>Nothing in the window stands apart from this layout&apos;s own record.</source>
        <translation>Nichts im Zeitfenster hebt sich vom Journal dieses Layouts ab.</translation>
    </message>
    <message>
        <source>Step in the readings (Pettitt&apos;s test): %1</source>
        <translation>Sprung in den Messwerten (Pettitt-Test): %1</translation>
    </message>
    <message>
        <source>Coming before is not causing.</source>
        <translation>Vorausgehen ist nicht verursachen.</translation>
    </message>
    <message>
        <source>Exposure since the window opened</source>
        <translation>Einwirkung seit Beginn des Zeitfensters</translation>
    </message>
    <message>
        <source>No reading can be held against a limit.</source>
        <translation>Kein Messwert lässt sich an eine Grenze halten.</translation>
    </message>
    <message>
        <source>%1 at the same age</source>
        <translation>%1 im gleichen Alter</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Vorsichtshinweis: %1</translation>
    </message>
    <message>
        <source>Carry on, or start afresh: both forecast</source>
        <translation>Weitermachen oder neu anfangen: beides in der Vorhersage</translation>
    </message>
    <message>
        <source>%1: carrying on %2, changes until then %3; starting afresh %4, changes until then %5</source>
        <translation>%1: beim Weitermachen %2, Wechsel bis dahin %3; beim Neuanfang %4, Wechsel bis dahin %5</translation>
    </message>
</context>
<context>
    <name>CaseTalk</name>
    <message>
        <source>%1, on %2</source>
        <translation>%1, am %2</translation>
    </message>
    <message>
        <source>%1: %2 on %3</source>
        <translation>%1: %2 am %3</translation>
    </message>
    <message>
        <source>%1: %2. Whether it can be removed is yours to say.</source>
        <translation>%1: %2. Ob es sich beheben lässt, musst du sagen.</translation>
    </message>
    <message>
        <source>Rotten eggs smelt on %1</source>
        <translation>Geruch nach faulen Eiern am %1</translation>
    </message>
    <message>
        <source>Dark bed seen on %1</source>
        <translation>Dunkler Bodengrund gesehen am %1</translation>
    </message>
    <message>
        <source>%1 and %2, read on %3</source>
        <translation>%1 und %2, gemessen am %3</translation>
    </message>
    <message>
        <source>No loss and no sign of illness on record in two weeks</source>
        <translation>In zwei Wochen weder Verlust noch Krankheitszeichen aufgezeichnet</translation>
    </message>
    <message>
        <source>No animals on record</source>
        <translation>Keine Tiere aufgezeichnet</translation>
    </message>
    <message>
        <source>Signs of illness on record in two weeks</source>
        <translation>In zwei Wochen Krankheitszeichen aufgezeichnet</translation>
    </message>
    <message>
        <source>Lost in two weeks: %1</source>
        <translation>In zwei Wochen verloren: %1</translation>
    </message>
    <message>
        <source>Keep the layout</source>
        <translation>Das Layout behalten</translation>
    </message>
    <message>
        <source>Up to %1 points</source>
        <translation>Bis %1 Punkte</translation>
    </message>
    <message>
        <source>Mend one cause and leave everything else as it is.</source>
        <translation>Eine Ursache beheben und alles andere lassen, wie es ist.</translation>
    </message>
    <message>
        <source>Take out what is dead, a little at each water change.</source>
        <translation>Abgestorbenes herausnehmen, bei jedem Wasserwechsel ein wenig.</translation>
    </message>
    <message>
        <source>Write down today what you expect to see, and by when.</source>
        <translation>Heute aufschreiben, was du zu sehen erwartest und bis wann.</translation>
    </message>
    <message>
        <source>Reset a part</source>
        <translation>Einen Teil neu aufsetzen</translation>
    </message>
    <message>
        <source>%1 to %2 points</source>
        <translation>%1 bis %2 Punkte</translation>
    </message>
    <message>
        <source>Keep the filter running and half of the bed in place.</source>
        <translation>Den Filter laufen lassen und die Hälfte des Bodengrunds an Ort und Stelle lassen.</translation>
    </message>
    <message>
        <source>Lift what is sound, clean it, and plant it again densely.</source>
        <translation>Gesundes herausheben, reinigen und wieder dicht pflanzen.</translation>
    </message>
    <message>
        <source>Change water as in the first weeks until ammonia and nitrite are clear again.</source>
        <translation>Wasser wechseln wie in den ersten Wochen, bis Ammonium und Nitrit wieder klar sind.</translation>
    </message>
    <message>
        <source>Start afresh</source>
        <translation>Neu anfangen</translation>
    </message>
    <message>
        <source>%1 points and more</source>
        <translation>%1 Punkte und mehr</translation>
    </message>
    <message>
        <source>Find the animals a cycled place first; none is moved into a tank that still has ammonia or nitrite.</source>
        <translation>Zuerst für die Tiere ein eingefahrenes Becken finden; keines kommt in ein Becken, in dem noch Ammonium oder Nitrit ist.</translation>
    </message>
    <message>
        <source>Keep the filter alive, in another tank or on measured ammonia.</source>
        <translation>Den Filter am Leben halten, in einem anderen Becken oder mit abgemessenem Ammonium.</translation>
    </message>
    <message>
        <source>Save the clean plants, photograph the layout, and write three things to do otherwise.</source>
        <translation>Saubere Pflanzen aufheben, das Layout fotografieren und drei Dinge aufschreiben, die anders werden sollen.</translation>
    </message>
    <message>
        <source>Empty the tank before it is moved; stone and wet soil are heavy, so lift with two people.</source>
        <translation>Das Becken leeren, bevor es bewegt wird; Steine und nasser Soil sind schwer, also zu zweit heben.</translation>
    </message>
    <message>
        <source>%1 counts for more than points: whether to disinfect and start afresh is settled with a veterinarian or a fish-health laboratory.</source>
        <translation>%1 zählt mehr als Punkte: Ob desinfiziert und neu angefangen wird, klärt sich mit einer tierärztlichen Praxis oder einem Labor für Fischgesundheit.</translation>
    </message>
    <message>
        <source>A leak or a cracked pane counts for more than points: unplug, drain, and move the animals now.</source>
        <translation>Ein Leck oder eine gesprungene Scheibe zählt mehr als Punkte: Stecker ziehen, ablassen und die Tiere jetzt umsetzen.</translation>
    </message>
    <message>
        <source>The questions still open could turn it either way; answer them before anything is decided.</source>
        <translation>Die noch offenen Fragen könnten es in beide Richtungen wenden; beantworte sie, bevor etwas entschieden wird.</translation>
    </message>
    <message>
        <source>So few points usually go with keeping the layout and mending one cause.</source>
        <translation>So wenige Punkte gehen meist mit Behalten und dem Beheben einer Ursache einher.</translation>
    </message>
    <message>
        <source>Points between usually go with resetting a part of it.</source>
        <translation>Punkte dazwischen gehen meist mit dem Neuaufsetzen eines Teils einher.</translation>
    </message>
    <message>
        <source>So many points usually go with starting afresh.</source>
        <translation>So viele Punkte gehen meist mit einem Neuanfang einher.</translation>
    </message>
    <message>
        <source>%1, answered on %2</source>
        <translation>%1, beantwortet am %2</translation>
    </message>
    <message>
        <source>%1 of %2 points</source>
        <translation>%1 von %2 Punkten</translation>
    </message>
    <message>
        <source>%1 of %2 points so far, %3 questions open: %1 to %4</source>
        <translation>Bisher %1 von %2 Punkten, %3 Fragen offen: %1 bis %4</translation>
    </message>
    <message>
        <source>Give a mended cause 14 days for algae and growth, 21 for melt, before it is judged: %1 or %2.</source>
        <translation>Gib einer behobenen Ursache 14 Tage für Algen und Wachstum, 21 für Schmelze, bevor du urteilst: %1 oder %2.</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Before you begin. %1</source>
        <translation>Vor dem Beginn. %1</translation>
    </message>
</context>
<context>
    <name>Co2TrialsCard</name>
    <message>
        <source>blue</source>
        <translation>blau</translation>
    </message>
    <message>
        <source>green</source>
        <translation>grün</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>gelb</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>nicht angesehen</translation>
    </message>
</context>
<context>
    <name>Cycle</name>
    <message>
        <source>%1. At odds with the other readings.</source>
        <translation>%1. Im Widerspruch zu den anderen Messwerten.</translation>
    </message>
    <message>
        <source>clear ≤ %1</source>
        <translation>klar ≤ %1</translation>
    </message>
    <message>
        <source>Free ammonia</source>
        <translation>Freies Ammoniak</translation>
    </message>
    <message>
        <source>Free ammonia %1, reckoned for %2</source>
        <translation>Freies Ammoniak %1, gerechnet für %2</translation>
    </message>
    <message>
        <source>caution %1</source>
        <translation>Vorsicht %1</translation>
    </message>
    <message>
        <source>Filter capacity</source>
        <translation>Filterleistung</translation>
    </message>
    <message>
        <source>mg N an hour it could oxidise at the clear limit</source>
        <translation>mg N in der Stunde, die er an der Grenze zu klar oxidieren könnte</translation>
    </message>
    <message>
        <source>µg N an hour and litre it could oxidise at the clear limit</source>
        <translation>µg N in der Stunde und je Liter, die er an der Grenze zu klar oxidieren könnte</translation>
    </message>
    <message>
        <source>ammonia oxidisers</source>
        <translation>Ammoniumoxidierer</translation>
    </message>
    <message>
        <source>nitrite oxidisers</source>
        <translation>Nitritoxidierer</translation>
    </message>
    <message>
        <source>load of the planned stock %1</source>
        <translation>Belastung durch den geplanten Besatz %1</translation>
    </message>
    <message>
        <source>Water change %1 planned for %2</source>
        <translation>Wasserwechsel %1 geplant für %2</translation>
    </message>
    <message>
        <source>Water change %1 on %2</source>
        <translation>Wasserwechsel %1 am %2</translation>
    </message>
    <message>
        <source>%1 at the same age</source>
        <translation>%1 im gleichen Alter</translation>
    </message>
    <message>
        <source>Cycle day by day: middle value and 8-in-10 range, with what was read</source>
        <translation>Einfahrphase Tag für Tag: mittlerer Wert und 8-von-10-Bereich, mit den Messwerten</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>8 in 10</source>
        <translation>8 von 10</translation>
    </message>
    <message>
        <source>%1 read</source>
        <translation>%1 gemessen</translation>
    </message>
    <message>
        <source>Water change</source>
        <translation>Wasserwechsel</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>&lt;%1</source>
        <translation>&lt;%1</translation>
    </message>
    <message>
        <source>%1 planned</source>
        <translation>%1 geplant</translation>
    </message>
    <message>
        <source>Pick a tank in the rail: its cycle, its gates and its water-change plans will be here.</source>
        <translation>Wähle links ein Becken: Seine Einfahrphase, seine Freigaben und seine Wasserwechselpläne stehen dann hier.</translation>
    </message>
    <message>
        <source>%1 has no layout under water. Once it is flooded, its cycle will be here; edit the tank to say when that was.</source>
        <translation>%1 hat kein Layout unter Wasser. Sobald es geflutet ist, steht hier seine Einfahrphase; sag beim Bearbeiten des Beckens, wann das war.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 members · fitted to %2 readings · %3</source>
        <translation>%1 Mitglieder · angepasst an %2 Messwerte · %3</translation>
    </message>
    <message>
        <source>Cycle complete</source>
        <translation>Einfahrphase abgeschlossen</translation>
    </message>
    <message>
        <source>the layout&apos;s own water</source>
        <translation>das Wasser des Layouts</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>aus %1</translation>
    </message>
    <message>
        <source>not by %1</source>
        <translation>nicht bis %1</translation>
    </message>
    <message>
        <source>%1 ×</source>
        <translation>%1 ×</translation>
    </message>
    <message>
        <source>Plan %1: %2.</source>
        <translation>Plan %1: %2.</translation>
    </message>
    <message>
        <source>earliest gate</source>
        <translation>früheste Freigabe</translation>
    </message>
    <message>
        <source>least exposure</source>
        <translation>geringste Einwirkung</translation>
    </message>
    <message>
        <source>least water</source>
        <translation>wenigstes Wasser</translation>
    </message>
    <message>
        <source>looked at</source>
        <translation>angesehen</translation>
    </message>
    <message>
        <source>tank volumes of new water until the gate</source>
        <translation>Beckenfüllungen neues Wasser bis zur Freigabe</translation>
    </message>
    <message>
        <source>hours of nitrite above %1</source>
        <translation>Stunden mit Nitrit über %1</translation>
    </message>
    <message>
        <source>a plan</source>
        <translation>ein Plan</translation>
    </message>
    <message>
        <source>gate after %1: over 1 in 5</source>
        <translation>Freigabe nach %1: über 1 von 5</translation>
    </message>
    <message>
        <source>without a letter</source>
        <translation>ohne Buchstaben</translation>
    </message>
    <message>
        <source>Adopting puts %1 changes into the work that is due, in place of the cadence&apos;s. Undo restores it.</source>
        <translation>Das Übernehmen setzt %1 Wechsel in die fällige Arbeit, anstelle der Wechsel nach Takt. Rückgängig stellt es wieder her.</translation>
    </message>
    <message>
        <source>Adopting replaces %1 planned changes with %2, which show as due work. Undo restores them.</source>
        <translation>Das Übernehmen ersetzt %1 geplante Wechsel durch %2, die als fällige Arbeit erscheinen. Rückgängig stellt sie wieder her.</translation>
    </message>
    <message>
        <source>goes: %1 on %2</source>
        <translation>entfällt: %1 am %2</translation>
    </message>
    <message>
        <source>goes: %1 more</source>
        <translation>entfällt: %1 weitere</translation>
    </message>
    <message>
        <source>comes: %1 on %2</source>
        <translation>kommt: %1 am %2</translation>
    </message>
    <message>
        <source>comes: %1 more</source>
        <translation>kommt: %1 weitere</translation>
    </message>
    <message>
        <source>After
%1</source>
        <translation>Nach
%1</translation>
    </message>
    <message>
        <source>%1 has read the same since %2.</source>
        <translation>%1 ist seit %2 gleich geblieben.</translation>
    </message>
    <message>
        <source>%1 has been rising since %2.</source>
        <translation>%1 steigt seit %2.</translation>
    </message>
    <message>
        <source>%1 has been falling since %2.</source>
        <translation>%1 fällt seit %2.</translation>
    </message>
    <message>
        <source>Not known: whether nitrite oxidisers have begun to grow; there is no reading of nitrite.</source>
        <translation>Unbekannt: ob Nitritoxidierer schon wachsen; es gibt keinen Messwert für Nitrit.</translation>
    </message>
    <message>
        <source>Not known: what the ammonia oxidisers could take now, 8 in 10 between %1 and %2 mg N an hour.</source>
        <translation>Unbekannt: was die Ammoniumoxidierer jetzt schaffen, 8 von 10 zwischen %1 und %2 mg N in der Stunde.</translation>
    </message>
    <message>
        <source>Not known: what the nitrite oxidisers could take now, 8 in 10 between %1 and %2 mg N an hour.</source>
        <translation>Unbekannt: was die Nitritoxidierer jetzt schaffen, 8 von 10 zwischen %1 und %2 mg N in der Stunde.</translation>
    </message>
    <message>
        <source>not fitted</source>
        <translation>nicht angepasst</translation>
    </message>
    <message>
        <source>Not fitted: the readings contradict the model, so the bands are the wide ones without them. A change that was not entered, a wrong unit or an old kit can do that.</source>
        <translation>Nicht angepasst: Die Messwerte widersprechen dem Modell, also sind die Bänder die weiten ohne sie. Ein nicht eingetragener Wechsel, eine falsche Einheit oder ein alter Test kann das bewirken.</translation>
    </message>
    <message>
        <source>At odds with the other readings: %1 %2 on %3; a reading this far off has odds of %4.</source>
        <translation>Im Widerspruch zu den anderen Messwerten: %1 %2 am %3; ein so abweichender Messwert hat die Chance %4.</translation>
    </message>
    <message>
        <source>%1 of %2 readings needed for a fit; a nitrite test would do. Until then the bands rest on what is known of the layout alone.</source>
        <translation>%1 von %2 Messwerten, die für eine Anpassung nötig sind; ein Nitrittest würde reichen. Bis dahin beruhen die Bänder nur auf dem, was über das Layout bekannt ist.</translation>
    </message>
    <message>
        <source>forecast of %1; a new one is running</source>
        <translation>Vorhersage vom %1; eine neue läuft</translation>
    </message>
    <message>
        <source>forecast of %1, before the latest entries</source>
        <translation>Vorhersage vom %1, vor den letzten Einträgen</translation>
    </message>
    <message>
        <source>The forecast of %1 is shown: a newer one could not be made. %2</source>
        <translation>Gezeigt wird die Vorhersage vom %1: Eine neuere ließ sich nicht erstellen. %2</translation>
    </message>
    <message>
        <source>%1 &lt; first step</source>
        <translation>%1 &lt; erste Stufe</translation>
    </message>
    <message>
        <source>%1 ≤ %2</source>
        <translation>%1 ≤ %2</translation>
    </message>
    <message>
        <source>%1 tests over %2 days, from day %3</source>
        <translation>%1 Tests über %2 Tage, ab Tag %3</translation>
    </message>
    <message>
        <source>%1 tests, from day %2</source>
        <translation>%1 Tests, ab Tag %2</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>water clear now</source>
        <translation>Wasser jetzt klar</translation>
    </message>
    <message>
        <source>not by %1: %2</source>
        <translation>nicht bis %1: %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1 to %2 d</source>
        <translation>%1 bis %2 T</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>load carried by then: %1</source>
        <translation>Belastung bis dahin getragen: %1</translation>
    </message>
    <message>
        <source>%1, %2. Opens %3, %4. Still needed: %5.</source>
        <translation>%1, %2. Öffnet %3, %4. Noch nötig: %5.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>by the record</source>
        <translation>laut Journal</translation>
    </message>
    <message>
        <source>No feed or animals are entered or planned, so there is no load to hold the filter against. Plan an addition to see one.</source>
        <translation>Es sind weder Futter noch Tiere eingetragen oder geplant, also fehlt die Belastung, gegen die sich der Filter halten ließe. Plane einen Besatz, um eine zu sehen.</translation>
    </message>
    <message>
        <source>No earlier forecast has been held against later readings yet. Each one issued is kept, and how it held is shown here.</source>
        <translation>Noch keine frühere Vorhersage wurde an spätere Messwerte gehalten. Jede ausgegebene bleibt aufbewahrt, und wie sie sich hielt, steht dann hier.</translation>
    </message>
    <message>
        <source>Of this layout&apos;s %1, they held %2.</source>
        <translation>Von diesem Layout: %1; davon hielten sie %2.</translation>
    </message>
    <message>
        <source>%1, reckoned from pH and temperature</source>
        <translation>%1, gerechnet aus pH und Temperatur</translation>
    </message>
    <message>
        <source>new water until the gate, %1</source>
        <translation>neues Wasser bis zur Freigabe, %1</translation>
    </message>
    <message>
        <source>Hours
&gt; %1 %2</source>
        <translation>Stunden
&gt; %1 %2</translation>
    </message>
    <message numerus="yes">
        <source>%n clear test(s)</source>
        <translation>
            <numerusform>%n klarer Test</numerusform>
            <numerusform>%n klare Tests</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n other thing(s)</source>
        <translation>
            <numerusform>%n weitere Bedingung</numerusform>
            <numerusform>%n weitere Bedingungen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Day</name>
    <message>
        <source>%1 %2</source>
        <comment>day, time of day</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>%1 d</source>
        <comment>days ago</comment>
        <translation>%1 T</translation>
    </message>
</context>
<context>
    <name>DoseSentences</name>
    <message>
        <source>A quarter of the full %1 until %2: the soil feeds the plants in the first weeks.</source>
        <translation>Ein Viertel der vollen %1 bis %2: Der Nährboden versorgt die Pflanzen in den ersten Wochen.</translation>
    </message>
    <message>
        <source>Half of the full %1 until %2: the soil feeds the plants in the first weeks.</source>
        <translation>Die Hälfte der vollen %1 bis %2: Der Nährboden versorgt die Pflanzen in den ersten Wochen.</translation>
    </message>
    <message>
        <source>The full dose before week 5: nitrate was read below 5 mg/L NO₃.</source>
        <translation>Die volle Dosis vor Woche 5: Nitrat wurde unter 5 mg/L NO₃ gemessen.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Dose %1 of %2</source>
        <translation>%1 %2 düngen</translation>
    </message>
    <message>
        <source>The regimen asks for it %1; the last one was %2.</source>
        <translation>Der Düngeplan sieht sie so vor: %1; die letzte war %2.</translation>
    </message>
    <message>
        <source>The regimen asks for it %1; none is entered yet.</source>
        <translation>Der Düngeplan sieht sie so vor: %1; eingetragen ist noch keine.</translation>
    </message>
    <message>
        <source>Rounds without a dose since then: %1. They are not made up for: doses are not doubled (common practice).</source>
        <translation>Seitdem ohne Dosis vergangene Termine: %1. Sie werden nicht nachgeholt: Dosen werden nicht verdoppelt (gängige Praxis).</translation>
    </message>
    <message>
        <source>%1 mg/L %2</source>
        <translation>%1 mg/L %2</translation>
    </message>
    <message>
        <source>%1: %2 %3 from %4</source>
        <translation>%1: %2 %3 ab %4</translation>
    </message>
    <message>
        <source>%1 until %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1; each dose adds %2</source>
        <translation>%1; jede Dosis bringt %2</translation>
    </message>
</context>
<context>
    <name>DueCalendar</name>
    <message>
        <source>Water change</source>
        <translation>Wasserwechsel</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>Upkeep</source>
        <translation>Pflege</translation>
    </message>
    <message>
        <source>Dose</source>
        <translation>Düngung</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Own work</source>
        <translation>Eigene Aufgabe</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Due work of the tanks</source>
        <translation>Fällige Aufgaben der Becken</translation>
    </message>
</context>
<context>
    <name>DueSentences</name>
    <message>
        <source>Nothing has to be done: the readings would bear it.</source>
        <translation>Nichts muss getan werden: Die Messwerte ließen es zu.</translation>
    </message>
    <message>
        <source>Due %1, %2.</source>
        <translation>Fällig %1, %2.</translation>
    </message>
    <message>
        <source>Due today.</source>
        <translation>Heute fällig.</translation>
    </message>
    <message>
        <source>Due %1.</source>
        <translation>Fällig %1.</translation>
    </message>
    <message>
        <source>None entered yet; %1 until %2.</source>
        <translation>Noch keiner eingetragen; %1 bis %2.</translation>
    </message>
    <message>
        <source>None entered yet; %1.</source>
        <translation>Noch keiner eingetragen; %1.</translation>
    </message>
    <message>
        <source>The last one was %1; %2 until %3.</source>
        <translation>Der letzte war am %1; %2 bis %3.</translation>
    </message>
    <message>
        <source>The last one was %1; %2.</source>
        <translation>Der letzte war am %1; %2.</translation>
    </message>
    <message>
        <source>animals were added</source>
        <translation>Tiere eingesetzt wurden</translation>
    </message>
    <message>
        <source>the filter was serviced</source>
        <translation>der Filter gereinigt wurde</translation>
    </message>
    <message>
        <source>filter media were replaced</source>
        <translation>Filtermaterial ersetzt wurde</translation>
    </message>
    <message>
        <source>filter media were given away</source>
        <translation>Filtermaterial abgegeben wurde</translation>
    </message>
    <message>
        <source>the power was cut</source>
        <translation>der Strom ausfiel</translation>
    </message>
    <message>
        <source>the bed was disturbed</source>
        <translation>der Bodengrund aufgewühlt wurde</translation>
    </message>
    <message>
        <source>the CO₂ was changed</source>
        <translation>das CO₂ geändert wurde</translation>
    </message>
    <message>
        <source>the cylinder was changed</source>
        <translation>die Flasche gewechselt wurde</translation>
    </message>
    <message>
        <source>the source water changed</source>
        <translation>das Ausgangswasser sich änderte</translation>
    </message>
    <message>
        <source>Once at this age.</source>
        <translation>Einmal in diesem Alter.</translation>
    </message>
    <message>
        <source>The day %1, %2.</source>
        <translation>Der Tag, an dem %1, %2.</translation>
    </message>
    <message>
        <source>Day %1 after %2, %3.</source>
        <translation>Tag %1, nachdem %2, %3.</translation>
    </message>
    <message>
        <source>Set by hand.</source>
        <translation>Von Hand gesetzt.</translation>
    </message>
    <message>
        <source>Planned for that day.</source>
        <translation>Für diesen Tag geplant.</translation>
    </message>
    <message>
        <source>Put off from %1.</source>
        <translation>Verschoben vom %1.</translation>
    </message>
    <message>
        <source>Moved by hand from %1.</source>
        <translation>Von Hand verlegt vom %1.</translation>
    </message>
    <message>
        <source>Moved by hand from %1: %2.</source>
        <translation>Von Hand verlegt vom %1: %2.</translation>
    </message>
    <message>
        <source>One step looser than the table, as accepted.</source>
        <translation>Eine Stufe lockerer als die Tabelle, wie angenommen.</translation>
    </message>
    <message>
        <source>One step tighter than the table, as accepted.</source>
        <translation>Eine Stufe enger als die Tabelle, wie angenommen.</translation>
    </message>
    <message>
        <source>%1 steps looser than the table, as accepted.</source>
        <translation>%1 Stufen lockerer als die Tabelle, wie angenommen.</translation>
    </message>
    <message>
        <source>%1 steps tighter than the table, as accepted.</source>
        <translation>%1 Stufen enger als die Tabelle, wie angenommen.</translation>
    </message>
    <message>
        <source>In the tank: %1.</source>
        <translation>Im Becken: %1.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Test %1</source>
        <translation>%1 testen</translation>
    </message>
    <message>
        <source>Test %1 and %2</source>
        <translation>%1 und %2 testen</translation>
    </message>
    <message>
        <source>Water change %1</source>
        <translation>Wasserwechsel %1</translation>
    </message>
    <message>
        <source>Water change</source>
        <translation>Wasserwechsel</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>morgen</translation>
    </message>
    <message>
        <source>That is %1.</source>
        <translation>Das sind %1.</translation>
    </message>
    <message>
        <source>Left undone: %1</source>
        <translation>Wenn es unterbleibt: %1</translation>
    </message>
    <message>
        <source>Rule: %1.</source>
        <translation>Regel: %1.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Next change %1, %2</source>
        <translation>Nächster Wechsel %1, %2</translation>
    </message>
    <message>
        <source>Next: %1, %2</source>
        <translation>Als Nächstes: %1, %2</translation>
    </message>
    <message>
        <source>Change %1 instead of %2, %3 as before.</source>
        <translation>%1 statt %2 wechseln, %3 wie bisher.</translation>
    </message>
    <message>
        <source>an animal was lost</source>
        <translation>ein Tier verloren ging</translation>
    </message>
    <message>
        <source>animals were lost again</source>
        <translation>erneut Tiere verloren gingen</translation>
    </message>
    <message>
        <source>plants were moved</source>
        <translation>Pflanzen umgesetzt wurden</translation>
    </message>
    <message>
        <source>plants were trimmed</source>
        <translation>Pflanzen zurückgeschnitten wurden</translation>
    </message>
    <message>
        <source>too much food went in</source>
        <translation>zu viel Futter hineinkam</translation>
    </message>
    <message>
        <source>a medicine was given</source>
        <translation>ein Medikament gegeben wurde</translation>
    </message>
    <message>
        <source>a treatment ended</source>
        <translation>eine Behandlung endete</translation>
    </message>
    <message>
        <source>animals went in that were to wait</source>
        <translation>Tiere einzogen, die noch warten sollten</translation>
    </message>
    <message>
        <source>the light was changed</source>
        <translation>das Licht geändert wurde</translation>
    </message>
    <message>
        <source>something was dosed</source>
        <translation>etwas dosiert wurde</translation>
    </message>
    <message>
        <source>%1 %2 on %3, after %4, %5: read every day for a week.</source>
        <translation>%1 %2 am %3, nachdem %4, %5: eine Woche lang täglich messen.</translation>
    </message>
    <message>
        <source>The journey ends on %1.</source>
        <translation>Die Reise endet am %1.</translation>
    </message>
    <message>
        <source>A journey begins on %1.</source>
        <translation>Eine Reise beginnt am %1.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>That is %1: %2.</source>
        <translation>Das sind %1: %2.</translation>
    </message>
    <message>
        <source>Large changes meet: %1. Free of them: %2.</source>
        <translation>Große Wechsel treffen zusammen: %1. Frei davon: %2.</translation>
    </message>
    <message>
        <source>Large changes meet: %1.</source>
        <translation>Große Wechsel treffen zusammen: %1.</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>Today %1, %2; seven days %3, %4.</source>
        <translation>Heute %1, %2; sieben Tage %3, %4.</translation>
    </message>
</context>
<context>
    <name>Entry</name>
    <message>
        <source>Water change</source>
        <translation>Wasserwechsel</translation>
    </message>
    <message>
        <source>Top-up</source>
        <translation>Auffüllen</translation>
    </message>
    <message>
        <source>Dose</source>
        <translation>Dosis</translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation>Fütterung</translation>
    </message>
    <message>
        <source>Upkeep</source>
        <translation>Pflege</translation>
    </message>
    <message>
        <source>Observation</source>
        <translation>Beobachtung</translation>
    </message>
    <message>
        <source>Addition</source>
        <translation>Besatz</translation>
    </message>
    <message>
        <source>Loss</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>Media transfer</source>
        <translation>Umzug von Filtermaterial</translation>
    </message>
    <message>
        <source>Light change</source>
        <translation>Lichtänderung</translation>
    </message>
    <message>
        <source>CO₂ change</source>
        <translation>CO₂-Änderung</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>EntryForm</name>
    <message>
        <source>Fed from now on, a day</source>
        <translation>Ab jetzt gefüttert, am Tag</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>What went in</source>
        <translation>Was hineinkam</translation>
    </message>
    <message>
        <source>What was lost</source>
        <translation>Was verloren ging</translation>
    </message>
    <message>
        <source>What was set, and what the indicator shows</source>
        <translation>Was eingestellt wurde, und was der Dauertest zeigt</translation>
    </message>
    <message>
        <source>Hours a day</source>
        <translation>Stunden am Tag</translation>
    </message>
    <message>
        <source>What was dosed</source>
        <translation>Was dosiert wurde</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Was gesehen wurde</translation>
    </message>
    <message>
        <source>Media or squeezings</source>
        <translation>Filtermaterial oder Mulm</translation>
    </message>
    <message>
        <source>What was set</source>
        <translation>Was eingestellt wurde</translation>
    </message>
    <message>
        <source>Light, hours a day</source>
        <translation>Licht, Stunden am Tag</translation>
    </message>
    <message>
        <source>At the bed, µmol/m²/s</source>
        <translation>Am Bodengrund, µmol/m²/s</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>CO₂ held, %1</source>
        <translation>CO₂ gehalten, %1</translation>
    </message>
    <message>
        <source>Topped up, %1</source>
        <translation>Aufgefüllt, %1</translation>
    </message>
</context>
<context>
    <name>EntryWords</name>
    <message>
        <source>stems trimmed</source>
        <translation>Stängelpflanzen geschnitten</translation>
    </message>
    <message>
        <source>carpet trimmed</source>
        <translation>Teppich geschnitten</translation>
    </message>
    <message>
        <source>filter service</source>
        <translation>Filterreinigung</translation>
    </message>
    <message>
        <source>cylinder changed</source>
        <translation>Flasche gewechselt</translation>
    </message>
    <message>
        <source>mature media</source>
        <translation>reifes Filtermaterial</translation>
    </message>
    <message>
        <source>media given</source>
        <translation>Filtermaterial abgegeben</translation>
    </message>
    <message>
        <source>filter squeezings</source>
        <translation>Filtermulm</translation>
    </message>
    <message>
        <source>surface film</source>
        <translation>Kahmhaut</translation>
    </message>
    <message>
        <source>shrimp counted</source>
        <translation>Garnelen gezählt</translation>
    </message>
    <message>
        <source>CO₂ curve</source>
        <translation>CO₂-Kurve</translation>
    </message>
    <message>
        <source>looked over</source>
        <translation>durchgesehen</translation>
    </message>
    <message>
        <source>gates reviewed</source>
        <translation>Freigaben geprüft</translation>
    </message>
    <message>
        <source>algae scored</source>
        <translation>Algen bewertet</translation>
    </message>
    <message>
        <source>dead leaves out</source>
        <translation>tote Blätter heraus</translation>
    </message>
    <message>
        <source>watched after adding</source>
        <translation>nach dem Einsetzen beobachtet</translation>
    </message>
    <message>
        <source>residual-current device tested</source>
        <translation>Fehlerstromschutzschalter geprüft</translation>
    </message>
    <message>
        <source>gasping at the surface</source>
        <translation>Atemnot an der Oberfläche</translation>
    </message>
    <message>
        <source>white haze</source>
        <translation>weiße Trübung</translation>
    </message>
    <message>
        <source>diatom film</source>
        <translation>Kieselalgenbelag</translation>
    </message>
    <message>
        <source>tuft algae</source>
        <translation>Pinselalgen</translation>
    </message>
    <message>
        <source>green spot</source>
        <translation>grüne Punktalgen</translation>
    </message>
    <message>
        <source>green hair</source>
        <translation>grüne Fadenalgen</translation>
    </message>
    <message>
        <source>green dust</source>
        <translation>grüner Staubbelag</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 %2 %</source>
        <translation>%1 %2 %</translation>
    </message>
    <message>
        <source>%1: %2, %3 % of a filter</source>
        <translation>%1: %2, %3 % eines Filters</translation>
    </message>
    <message>
        <source>%1 to %2 h</source>
        <translation>%1 auf %2 h</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>weg</translation>
    </message>
    <message>
        <source>trace</source>
        <translation>Spur</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>deutlich</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>out of hand</source>
        <translation>außer Kontrolle</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Planned: %1</source>
        <translation>Geplant: %1</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>power cut</source>
        <translation>Stromausfall</translation>
    </message>
    <message>
        <source>filter rinsed after a power cut</source>
        <translation>Filter nach einem Stromausfall ausgespült</translation>
    </message>
    <message>
        <source>medicine</source>
        <translation>Medikament</translation>
    </message>
    <message>
        <source>end of a treatment</source>
        <translation>Ende einer Behandlung</translation>
    </message>
    <message>
        <source>watched during a treatment</source>
        <translation>während einer Behandlung beobachtet</translation>
    </message>
    <message>
        <source>in before their gate</source>
        <translation>vor ihrer Freigabe eingesetzt</translation>
    </message>
    <message>
        <source>veterinarian asked</source>
        <translation>tierärztlicher Rat eingeholt</translation>
    </message>
    <message>
        <source>made ready for a journey</source>
        <translation>für eine Reise vorbereitet</translation>
    </message>
    <message>
        <source>helper&apos;s sheets walked through</source>
        <translation>Blätter für den Helfer durchgegangen</translation>
    </message>
    <message>
        <source>full round after a journey</source>
        <translation>voller Rundgang nach einer Reise</translation>
    </message>
</context>
<context>
    <name>Exchange</name>
    <message>
        <source>%1, row 1</source>
        <translation>%1, Zeile 1</translation>
    </message>
    <message>
        <source>%1: column &quot;%2&quot; is left out.</source>
        <translation>%1: Spalte „%2“ wird ausgelassen.</translation>
    </message>
    <message>
        <source>There is no column &quot;%1&quot;. Did you mean &quot;%2&quot;?</source>
        <translation>Es gibt keine Spalte „%1“. War „%2“ gemeint?</translation>
    </message>
    <message>
        <source>There is no column &quot;%1&quot;. Put # before its name to leave it out.</source>
        <translation>Es gibt keine Spalte „%1“. Setz # vor ihren Namen, um sie auszulassen.</translation>
    </message>
    <message>
        <source>The column &quot;%1&quot; is there twice.</source>
        <translation>Die Spalte „%1“ ist zweimal da.</translation>
    </message>
    <message>
        <source>There is no column &quot;tank&quot;.</source>
        <translation>Es gibt keine Spalte „tank“.</translation>
    </message>
    <message>
        <source>There is no column &quot;date&quot;.</source>
        <translation>Es gibt keine Spalte „date“.</translation>
    </message>
    <message>
        <source>There is neither a column &quot;parameter&quot; for readings nor a column &quot;kind&quot; for entries.</source>
        <translation>Es gibt weder eine Spalte „parameter“ für Messwerte noch eine Spalte „kind“ für Einträge.</translation>
    </message>
    <message>
        <source>%1, row %2</source>
        <translation>%1, Zeile %2</translation>
    </message>
    <message>
        <source>There are %1 cells under %2 columns. Put cells that hold the separator in quotation marks.</source>
        <translation>%1 Zellen stehen unter %2 Spalten. Setz Zellen, die das Trennzeichen enthalten, in Anführungszeichen.</translation>
    </message>
    <message>
        <source>%1, row %2, column %3</source>
        <translation>%1, Zeile %2, Spalte %3</translation>
    </message>
    <message>
        <source>There is no kind &quot;%1&quot;.</source>
        <translation>Es gibt keine Art „%1“.</translation>
    </message>
    <message>
        <source>Give either at or date, not both.</source>
        <translation>Gib entweder at oder date an, nicht beides.</translation>
    </message>
    <message>
        <source>The time goes into the column at.</source>
        <translation>Die Uhrzeit gehört in die Spalte at.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a time. Write it as 07:40.</source>
        <translation>„%1“ ist keine Uhrzeit. Schreib sie als 07:40.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date. Write it as 2026-11-25 beside a time.</source>
        <translation>„%1“ ist kein Datum. Schreib es als 2026-11-25 neben einer Uhrzeit.</translation>
    </message>
    <message>
        <source>%1 has no layout %2.</source>
        <translation>%1 hat kein Layout %2.</translation>
    </message>
    <message>
        <source>%1 has no layout yet.</source>
        <translation>%1 hat noch kein Layout.</translation>
    </message>
    <message>
        <source>A quotation mark is opened and never closed.</source>
        <translation>Ein Anführungszeichen ist geöffnet und nie geschlossen.</translation>
    </message>
    <message>
        <source>Close it, or double it if it belongs to the text.</source>
        <translation>Schließ es, oder verdopple es, wenn es zum Text gehört.</translation>
    </message>
    <message>
        <source>There is text after a closing quotation mark.</source>
        <translation>Nach einem schließenden Anführungszeichen steht noch Text.</translation>
    </message>
    <message>
        <source>Put the whole cell in quotation marks and double those inside it.</source>
        <translation>Setz die ganze Zelle in Anführungszeichen und verdopple die darin.</translation>
    </message>
    <message>
        <source>This is not text in UTF-8.</source>
        <translation>Das ist kein Text in UTF-8.</translation>
    </message>
    <message>
        <source>Save it as CSV with the encoding UTF-8.</source>
        <translation>Speichere es als CSV in der Kodierung UTF-8.</translation>
    </message>
    <message>
        <source>There is no header in the first row.</source>
        <translation>In der ersten Zeile steht keine Kopfzeile.</translation>
    </message>
    <message>
        <source>Name the columns there: tank, date, parameter, value, unit.</source>
        <translation>Benenne dort die Spalten: tank, date, parameter, value, unit.</translation>
    </message>
    <message>
        <source>This is needed and is empty.</source>
        <translation>Das wird gebraucht und ist leer.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number.</source>
        <translation>„%1“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>%1 is outside %2 to %3.</source>
        <translation>%1 liegt außerhalb von %2 bis %3.</translation>
    </message>
    <message>
        <source>%1 is not a share from 0 to 1. Write 0.4, or 40 %.</source>
        <translation>%1 ist kein Anteil von 0 bis 1. Schreib 0.4 oder 40 %.</translation>
    </message>
    <message>
        <source>%1 is not a whole number.</source>
        <translation>%1 ist keine ganze Zahl.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is neither yes nor no.</source>
        <translation>„%1“ ist weder ja noch nein (yes, no).</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date. Write it as 2026-11-25 or 2026-11-25 07:40.</source>
        <translation>„%1“ ist kein Datum. Schreib es als 2026-11-25 oder 2026-11-25 07:40.</translation>
    </message>
    <message>
        <source>This does not belong to an entry of the kind &quot;%1&quot;.</source>
        <translation>Das gehört nicht zu einem Eintrag der Art „%1“.</translation>
    </message>
    <message>
        <source>Did you mean &quot;%1&quot;?</source>
        <translation>War „%1“ gemeint?</translation>
    </message>
    <message>
        <source>There are: %1.</source>
        <translation>Es gibt: %1.</translation>
    </message>
    <message>
        <source>There is no tank &quot;%1&quot;.</source>
        <translation>Es gibt kein Becken „%1“.</translation>
    </message>
    <message>
        <source>There is no source water &quot;%1&quot;.</source>
        <translation>Es gibt kein Ausgangswasser „%1“.</translation>
    </message>
    <message>
        <source>There is no kit &quot;%1&quot; for %2.</source>
        <translation>Es gibt keinen Test „%1“ für %2.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>This is needed and is missing.</source>
        <translation>Das wird gebraucht und fehlt.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of %2.</source>
        <translation>„%1“ ist keines von %2.</translation>
    </message>
    <message>
        <source>A text in quotation marks is expected here.</source>
        <translation>Hier wird ein Text in Anführungszeichen erwartet.</translation>
    </message>
    <message>
        <source>A number is expected here.</source>
        <translation>Hier wird eine Zahl erwartet.</translation>
    </message>
    <message>
        <source>This is either true or false.</source>
        <translation>Das ist entweder true oder false.</translation>
    </message>
    <message>
        <source>A list in square brackets is expected here.</source>
        <translation>Hier wird eine Liste in eckigen Klammern erwartet.</translation>
    </message>
    <message>
        <source>An object in braces is expected here.</source>
        <translation>Hier wird ein Objekt in geschweiften Klammern erwartet.</translation>
    </message>
    <message>
        <source>This is not known here. Did you mean &quot;%1&quot;?</source>
        <translation>Das ist hier unbekannt. War „%1“ gemeint?</translation>
    </message>
    <message>
        <source>This is not known here.</source>
        <translation>Das ist hier unbekannt.</translation>
    </message>
    <message>
        <source>Further problems, not listed: %1.</source>
        <translation>Weitere Mängel, nicht aufgeführt: %1.</translation>
    </message>
    <message>
        <source>%1 needs its unit: %2. It is not guessed.</source>
        <translation>%1 braucht seine Einheit: %2. Sie wird nicht geraten.</translation>
    </message>
    <message>
        <source>A water change needs one of fraction, percent and litres.</source>
        <translation>Ein Wasserwechsel braucht eines von fraction, percent und litres.</translation>
    </message>
    <message>
        <source>Give only one of fraction, percent and litres.</source>
        <translation>Gib nur eines von fraction, percent und litres an.</translation>
    </message>
    <message>
        <source>The tank&apos;s litres are not known. Give the fraction, or the tank&apos;s dimensions first.</source>
        <translation>Die Liter des Beckens sind nicht bekannt. Gib den Anteil an, oder zuerst die Maße des Beckens.</translation>
    </message>
    <message>
        <source>%1 L is more than the %2 L in the tank.</source>
        <translation>%1 L ist mehr als die %2 L im Becken.</translation>
    </message>
    <message>
        <source>A starter is counted in label doses: write &quot;doses&quot;.</source>
        <translation>Ein Starter zählt in Dosen des Etiketts: schreib „doses“.</translation>
    </message>
    <message>
        <source>An ammonia dose is the rise it makes, in one of %1.</source>
        <translation>Eine Ammoniumdosis ist der Anstieg, den sie macht, in einer von %1.</translation>
    </message>
    <message>
        <source>Feeding is given in &quot;g/d&quot; or in &quot;mg/L/d N&quot;.</source>
        <translation>Futter wird in „g/d“ oder in „mg/L/d N“ angegeben.</translation>
    </message>
    <message>
        <source>A media transfer moves &quot;media&quot; or &quot;squeezings&quot;, or is &quot;given&quot;.</source>
        <translation>Beim Umzug von Filtermaterial sind es „media“ oder „squeezings“, oder es ist „given“.</translation>
    </message>
    <message>
        <source>A top-up is given in litres.</source>
        <translation>Aufgefülltes Wasser wird in Litern angegeben.</translation>
    </message>
    <message>
        <source>There is no parameter &quot;%1&quot;.</source>
        <translation>Es gibt keinen Parameter „%1“.</translation>
    </message>
    <message>
        <source>A text, a number, true or false is expected here.</source>
        <translation>Hier wird ein Text, eine Zahl, true oder false erwartet.</translation>
    </message>
    <message>
        <source>There is no layout in it.</source>
        <translation>Es ist kein Layout darin.</translation>
    </message>
    <message>
        <source>Source water of %1</source>
        <translation>Ausgangswasser von %1</translation>
    </message>
    <message>
        <source>Give either alkalinity_meq_per_l or kh_dkh.</source>
        <translation>Gib entweder alkalinity_meq_per_l oder kh_dkh an.</translation>
    </message>
    <message>
        <source>Give either hardness_mmol_per_l or gh_dgh.</source>
        <translation>Gib entweder hardness_mmol_per_l oder gh_dgh an.</translation>
    </message>
    <message>
        <source>Say what the nitrate is counted as: &quot;NO3&quot; or &quot;N&quot;.</source>
        <translation>Sag, wie das Nitrat gezählt ist: „NO3“ oder „N“.</translation>
    </message>
    <message>
        <source>%1 has no unit &quot;%2&quot;.</source>
        <translation>%1 hat keine Einheit „%2“.</translation>
    </message>
    <message>
        <source>The steps are numbers from 0 up, each larger than the one before.</source>
        <translation>Die Stufen sind Zahlen ab 0, jede größer als die davor.</translation>
    </message>
    <message>
        <source>The steps begin with 0 and are at least two.</source>
        <translation>Die Stufen beginnen mit 0, und es sind mindestens zwei.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date. Write it as 2026-11-25.</source>
        <translation>„%1“ ist kein Datum. Schreib es als 2026-11-25.</translation>
    </message>
    <message>
        <source>Give the litres of water in it, or length_cm, depth_cm and height_cm.</source>
        <translation>Gib die Liter Wasser darin an, oder length_cm, depth_cm und height_cm.</translation>
    </message>
    <message>
        <source>The layout would have ended before it was flooded.</source>
        <translation>Das Layout hätte geendet, bevor es geflutet wurde.</translation>
    </message>
    <message>
        <source>The temperature is not given: %1 °C is taken.</source>
        <translation>Die Temperatur ist nicht angegeben: %1 °C werden angenommen.</translation>
    </message>
    <message>
        <source>&quot;on&quot; and &quot;mode&quot; contradict each other.</source>
        <translation>„on“ und „mode“ widersprechen sich.</translation>
    </message>
    <message>
        <source>The source water is not given: nothing is taken as measured.</source>
        <translation>Das Ausgangswasser ist nicht angegeben: Nichts gilt als gemessen.</translation>
    </message>
    <message>
        <source>This is not an instant. Write &quot;2026-11-25T07:40&quot;, or {&quot;day&quot;: 3.5} for days since flooding.</source>
        <translation>Das ist kein Zeitpunkt. Schreib „2026-11-25T07:40“, oder {&quot;day&quot;: 3.5} für Tage seit dem Fluten.</translation>
    </message>
    <message>
        <source>%1, line %2</source>
        <translation>%1, Zeile %2</translation>
    </message>
    <message>
        <source>This is not JSON: %1.</source>
        <translation>Das ist kein JSON: %1.</translation>
    </message>
    <message>
        <source>&quot;format&quot;: &quot;littoral-tank&quot; is expected here.</source>
        <translation>Hier wird &quot;format&quot;: &quot;littoral-tank&quot; erwartet.</translation>
    </message>
    <message>
        <source>This program reads version %1 of the format.</source>
        <translation>Dieses Programm liest Version %1 des Formats.</translation>
    </message>
    <message>
        <source>Parts belong to a blend, and there are two of them.</source>
        <translation>Anteile gehören zu einem Verschnitt, und davon gibt es zwei.</translation>
    </message>
    <message>
        <source>The two shares do not come to 1.</source>
        <translation>Die beiden Anteile ergeben zusammen nicht 1.</translation>
    </message>
    <message>
        <source>The blend &quot;%1&quot; would be made of itself.</source>
        <translation>Der Verschnitt „%1“ bestünde aus sich selbst.</translation>
    </message>
    <message>
        <source>There is no salt &quot;%1&quot;.</source>
        <translation>Ein Salz „%1“ gibt es nicht.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a weekday. Write mon, tue, wed, thu, fri, sat or sun.</source>
        <translation>„%1“ ist kein Wochentag. Möglich sind mon, tue, wed, thu, fri, sat oder sun.</translation>
    </message>
    <message>
        <source>Give either every_days or weekdays.</source>
        <translation>Entweder every_days oder weekdays angeben.</translation>
    </message>
</context>
<context>
    <name>Expected</name>
    <message>
        <source>It begins with the reading of %1.</source>
        <translation>Am Anfang steht der Messwert vom %1.</translation>
    </message>
    <message>
        <source>%1–%2 %3</source>
        <translation>%1–%2 %3</translation>
    </message>
    <message>
        <source>The plants take up %1 a week, as declared for this layout.</source>
        <translation>Die Pflanzen nehmen %1 je Woche auf, wie für diese Einrichtung angegeben.</translation>
    </message>
    <message>
        <source>The plants are taken to use %1 a week, by how densely it is planted (common practice; it can be set with the layout).</source>
        <translation>Angenommen wird, dass die Pflanzen %1 je Woche verbrauchen, je nach Dichte der Bepflanzung (gängige Praxis; bei der Einrichtung einstellbar).</translation>
    </message>
    <message>
        <source>The source water is taken to hold none: its figure is not stated.</source>
        <translation>Für das Ausgangswasser wird null angenommen: Sein Wert ist nicht angegeben.</translation>
    </message>
    <message>
        <source>Nitrate from feed is counted; what debris and soil give is not.</source>
        <translation>Nitrat aus dem Futter ist mitgerechnet; was Mulm und Nährboden abgeben, nicht.</translation>
    </message>
    <message>
        <source>No feeding is on record; what debris and soil give is not counted.</source>
        <translation>Keine Fütterung ist eingetragen; was Mulm und Nährboden abgeben, ist nicht mitgerechnet.</translation>
    </message>
    <message>
        <source>Left out, as their contents or unit are not stated: %1.</source>
        <translation>Weggelassen, weil Inhalt oder Einheit nicht angegeben sind: %1.</translation>
    </message>
    <message>
        <source>%1: the plants take up more, less was dosed than entered, or the kit reads low.</source>
        <translation>%1: Die Pflanzen nehmen mehr auf, es wurde weniger gedüngt als eingetragen, oder der Test zeigt zu wenig an.</translation>
    </message>
    <message>
        <source>%1: the plants take up less, more came in than entered, or the kit reads high.</source>
        <translation>%1: Die Pflanzen nehmen weniger auf, es kam mehr hinein als eingetragen, oder der Test zeigt zu viel an.</translation>
    </message>
    <message>
        <source>%1: they agree.</source>
        <translation>%1: Beides stimmt überein.</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1 measured %2, expected %3 %4 on %5</source>
        <translation>%1 gemessen %2, erwartet %3 %4 am %5</translation>
    </message>
</context>
<context>
    <name>Export</name>
    <message>
        <source>It cannot be written: %1.</source>
        <translation>Es kann nicht geschrieben werden: %1.</translation>
    </message>
    <message>
        <source>The directory cannot be made.</source>
        <translation>Der Ordner kann nicht angelegt werden.</translation>
    </message>
    <message>
        <source>There is such a file already.</source>
        <translation>Eine solche Datei gibt es schon.</translation>
    </message>
    <message>
        <source>Export to an empty directory.</source>
        <translation>Exportiere in einen leeren Ordner.</translation>
    </message>
    <message>
        <source>That tank is not in the store any more.</source>
        <translation>Dieses Becken ist nicht mehr in der Datei.</translation>
    </message>
</context>
<context>
    <name>FactForm</name>
    <message>
        <source>Where this comes from</source>
        <translation>Woher das stammt</translation>
    </message>
    <message>
        <source>a publication, or: own experience</source>
        <translation>eine Veröffentlichung, oder: eigene Erfahrung</translation>
    </message>
    <message>
        <source>algae</source>
        <translation>Algen</translation>
    </message>
    <message>
        <source>bacteria</source>
        <translation>Bakterien</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>fungus</source>
        <translation>Pilz</translation>
    </message>
    <message>
        <source>deposit</source>
        <translation>Belag</translation>
    </message>
    <message>
        <source>bed</source>
        <translation>Bodengrund</translation>
    </message>
    <message>
        <source>pest</source>
        <translation>Plagegeist</translation>
    </message>
    <message>
        <source>plant</source>
        <translation>Pflanze</translation>
    </message>
    <message>
        <source>animal</source>
        <translation>Tier</translation>
    </message>
    <message>
        <source>disease</source>
        <translation>Krankheit</translation>
    </message>
    <message>
        <source>shrimp</source>
        <translation>Garnele</translation>
    </message>
    <message>
        <source>snail</source>
        <translation>Schnecke</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>Technik</translation>
    </message>
    <message>
        <source>measurement</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>po4&lt;0.3 ::2
colour=brown ::3
ev:light_change&lt;14d ::1</source>
        <translation>po4&lt;0.3 ::2
colour=brown ::3
ev:light_change&lt;14d ::1</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>How it looks</source>
        <translation>Wie es aussieht</translation>
    </message>
    <message>
        <source>Where it is seen, one a line</source>
        <translation>Wo es zu sehen ist, eins je Zeile</translation>
    </message>
    <message>
        <source>glass</source>
        <translation>Scheibe</translation>
    </message>
    <message>
        <source>Usual tank age in days, from and to</source>
        <translation>Übliches Alter des Beckens in Tagen, von und bis</translation>
    </message>
    <message>
        <source>14 60</source>
        <translation>14 60</translation>
    </message>
    <message>
        <source>How often</source>
        <translation>Wie häufig</translation>
    </message>
    <message>
        <source>rare</source>
        <translation>selten</translation>
    </message>
    <message>
        <source>occasional</source>
        <translation>gelegentlich</translation>
    </message>
    <message>
        <source>common</source>
        <translation>häufig</translation>
    </message>
    <message>
        <source>How soon it has to be seen to</source>
        <translation>Wie bald etwas zu tun ist</translation>
    </message>
    <message>
        <source>at once</source>
        <translation>sofort</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>within the week</source>
        <translation>innerhalb der Woche</translation>
    </message>
    <message>
        <source>watch it</source>
        <translation>beobachten</translation>
    </message>
    <message>
        <source>What speaks for it, one a line, with its weight 1 to 3</source>
        <translation>Was dafür spricht, eins je Zeile, mit Gewicht 1 bis 3</translation>
    </message>
    <message>
        <source>What speaks against it, one a line</source>
        <translation>Was dagegen spricht, eins je Zeile</translation>
    </message>
    <message>
        <source>First actions, one a line</source>
        <translation>Erste Maßnahmen, eine je Zeile</translation>
    </message>
    <message>
        <source>Avoid, one a line</source>
        <translation>Zu vermeiden, eins je Zeile</translation>
    </message>
    <message>
        <source>What to look at next</source>
        <translation>Was als Nächstes anzusehen ist</translation>
    </message>
    <message>
        <source>Cautions, one a line; the program&apos;s own stay</source>
        <translation>Vorsichtshinweise, einer je Zeile; die des Programms bleiben</translation>
    </message>
    <message>
        <source>Easily taken for, one a line</source>
        <translation>Leicht verwechselt mit, eins je Zeile</translation>
    </message>
    <message>
        <source>Light it needs</source>
        <translation>Lichtbedarf</translation>
    </message>
    <message>
        <source>little</source>
        <translation>wenig</translation>
    </message>
    <message>
        <source>middling</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>much</source>
        <translation>viel</translation>
    </message>
    <message>
        <source>Carbon dioxide</source>
        <translation>Kohlendioxid</translation>
    </message>
    <message>
        <source>takes it from the air</source>
        <translation>holt es aus der Luft</translation>
    </message>
    <message>
        <source>does without</source>
        <translation>kommt ohne aus</translation>
    </message>
    <message>
        <source>helps much</source>
        <translation>hilft viel</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>Form, one a line</source>
        <translation>Wuchsform, eine je Zeile</translation>
    </message>
    <message>
        <source>rosette</source>
        <translation>Rosette</translation>
    </message>
    <message>
        <source>Growth</source>
        <translation>Wuchs</translation>
    </message>
    <message>
        <source>slow</source>
        <translation>langsam</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>fast</source>
        <translation>schnell</translation>
    </message>
    <message>
        <source>fish</source>
        <translation>Fisch</translation>
    </message>
    <message>
        <source>Scientific name</source>
        <translation>Wissenschaftlicher Name</translation>
    </message>
    <message>
        <source>Common name</source>
        <translation>Gebräuchlicher Name</translation>
    </message>
    <message>
        <source>Place in the tank, one a line</source>
        <translation>Platz im Becken, einer je Zeile</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Touchiness, 1 tough to 4 touchy</source>
        <translation>Empfindlichkeit, 1 robust bis 4 empfindlich</translation>
    </message>
    <message>
        <source>Temperature it bears, °C, from and to</source>
        <translation>Verträgliche Temperatur, °C, von und bis</translation>
    </message>
    <message>
        <source>20 26</source>
        <translation>20 26</translation>
    </message>
    <message>
        <source>pH it bears, from and to</source>
        <translation>Verträglicher pH-Wert, von und bis</translation>
    </message>
    <message>
        <source>6 7.5</source>
        <translation>6 7.5</translation>
    </message>
    <message>
        <source>General hardness it bears, dGH, from and to</source>
        <translation>Verträgliche Gesamthärte, dGH, von und bis</translation>
    </message>
    <message>
        <source>2 12</source>
        <translation>2 12</translation>
    </message>
    <message>
        <source>Carbonate hardness it bears, dKH, from and to</source>
        <translation>Verträgliche Karbonathärte, dKH, von und bis</translation>
    </message>
    <message>
        <source>1 8</source>
        <translation>1 8</translation>
    </message>
    <message>
        <source>Size when grown, cm</source>
        <translation>Größe ausgewachsen, cm</translation>
    </message>
    <message>
        <source>Mass when grown, g, for the load of feeding</source>
        <translation>Masse ausgewachsen, g, für die Belastung durch Futter</translation>
    </message>
    <message>
        <source>Least group</source>
        <translation>Mindestgruppe</translation>
    </message>
    <message>
        <source>Least water, litres net</source>
        <translation>Mindestwassermenge, Liter netto</translation>
    </message>
    <message>
        <source>from flood day</source>
        <translation>ab dem Tag der Flutung</translation>
    </message>
    <message>
        <source>once ammonia is low</source>
        <translation>sobald Ammoniak niedrig ist</translation>
    </message>
    <message>
        <source>G1, first grazers</source>
        <translation>G1, erste Algenfresser</translation>
    </message>
    <message>
        <source>G2, hardy fish and shrimp</source>
        <translation>G2, robuste Fische und Garnelen</translation>
    </message>
    <message>
        <source>G3, most community animals</source>
        <translation>G3, die meisten Gesellschaftstiere</translation>
    </message>
    <message>
        <source>G4, sensitive animals</source>
        <translation>G4, empfindliche Tiere</translation>
    </message>
    <message>
        <source>Goes in</source>
        <translation>Zieht ein</translation>
    </message>
    <message>
        <source>To know before buying, one a line</source>
        <translation>Vor dem Kauf zu wissen, eins je Zeile</translation>
    </message>
    <message>
        <source>eats_shrimp</source>
        <translation>eats_shrimp</translation>
    </message>
    <message>
        <source>In a sentence</source>
        <translation>In einem Satz</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>What it counts for</source>
        <translation>Wofür er gilt</translation>
    </message>
    <message>
        <source>Your points, one a line</source>
        <translation>Eigene Punkte, einer je Zeile</translation>
    </message>
    <message>
        <source>Where they come from</source>
        <translation>Woher sie stammen</translation>
    </message>
    <message>
        <source>a number, or: first step</source>
        <translation>eine Zahl, oder: erste Stufe</translation>
    </message>
    <message>
        <source>Least age with new media, days</source>
        <translation>Mindestalter mit neuen Filtermedien, Tage</translation>
    </message>
    <message>
        <source>Least age with mature media, days</source>
        <translation>Mindestalter mit reifen Filtermedien, Tage</translation>
    </message>
    <message>
        <source>Least age with a starter, days</source>
        <translation>Mindestalter mit Starterbakterien, Tage</translation>
    </message>
    <message>
        <source>Least age after a dry start, days</source>
        <translation>Mindestalter nach einem Trockenstart, Tage</translation>
    </message>
    <message>
        <source>Least age after a dark start, days</source>
        <translation>Mindestalter nach einem Dunkelstart, Tage</translation>
    </message>
    <message>
        <source>Total ammonia at most, mg/L N</source>
        <translation>Gesamtammonium höchstens, mg/L N</translation>
    </message>
    <message>
        <source>Free ammonia at most, mg/L N</source>
        <translation>Freies Ammoniak höchstens, mg/L N</translation>
    </message>
    <message>
        <source>Nitrite at most, mg/L N</source>
        <translation>Nitrit höchstens, mg/L N</translation>
    </message>
    <message>
        <source>Clear readings in a row</source>
        <translation>Unauffällige Messungen in Folge</translation>
    </message>
    <message>
        <source>Hours between two of them, at least</source>
        <translation>Stunden zwischen zweien davon, mindestens</translation>
    </message>
    <message>
        <source>All of them within days; empty for any</source>
        <translation>Alle innerhalb so vieler Tage; leer für beliebig</translation>
    </message>
    <message>
        <source>Days from the first to the last, at least; empty for any</source>
        <translation>Tage von der ersten bis zur letzten, mindestens; leer für beliebig</translation>
    </message>
    <message>
        <source>Besides, one key a line</source>
        <translation>Außerdem, ein Schlüssel je Zeile</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>%1 (from %2 to %3)</source>
        <translation>%1 (von %2 bis %3)</translation>
    </message>
    <message>
        <source>first step</source>
        <translation>erste Stufe</translation>
    </message>
</context>
<context>
    <name>FactReader</name>
    <message>
        <source>Write it as &quot;po4&lt;0.3 ::2&quot;, &quot;age_d in 5..45 ::3&quot;, &quot;colour=brown ::2&quot;, &quot;ev:light_change&lt;14d ::2&quot; or &quot;obs:alg_tuft&gt;=2 ::1&quot;.</source>
        <translation>Schreib es als &quot;po4&lt;0.3 ::2&quot;, &quot;age_d in 5..45 ::3&quot;, &quot;colour=brown ::2&quot;, &quot;ev:light_change&lt;14d ::2&quot; oder &quot;obs:alg_tuft&gt;=2 ::1&quot;.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an event with a time.</source>
        <translation>„%1“ ist kein Ereignis mit Zeitangabe.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an observation with a severity of 0 to 4.</source>
        <translation>„%1“ ist keine Beobachtung mit einer Schwere von 0 bis 4.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a range.</source>
        <translation>„%1“ ist kein Bereich.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not understood.</source>
        <translation>„%1“ ist nicht verständlich.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; lacks a weight of 1, 2 or 3.</source>
        <translation>„%1“ fehlt ein Gewicht von 1, 2 oder 3.</translation>
    </message>
    <message>
        <source>It is not one JSON object with the id &quot;%1&quot;.</source>
        <translation>Es ist nicht ein JSON-Objekt mit der id „%1“.</translation>
    </message>
    <message>
        <source>Write it as in the program&apos;s file, or remove the setting.</source>
        <translation>Schreib es wie in der Datei des Programms, oder nimm die Einstellung heraus.</translation>
    </message>
    <message>
        <source>%1, &quot;%2&quot;, field &quot;%3&quot;</source>
        <translation>%1, „%2“, Feld „%3“</translation>
    </message>
    <message>
        <source>There is no such field.</source>
        <translation>Ein solches Feld gibt es nicht.</translation>
    </message>
    <message>
        <source>Known are: %1.</source>
        <translation>Bekannt sind: %1.</translation>
    </message>
    <message>
        <source>A text is missing here.</source>
        <translation>Hier fehlt ein Text.</translation>
    </message>
    <message>
        <source>Write it in quotation marks.</source>
        <translation>Schreib ihn in Anführungszeichen.</translation>
    </message>
    <message>
        <source>Something in this list is not a text.</source>
        <translation>Etwas in dieser Liste ist kein Text.</translation>
    </message>
    <message>
        <source>Write each in quotation marks.</source>
        <translation>Schreib jeden in Anführungszeichen.</translation>
    </message>
    <message>
        <source>A list of texts is missing here.</source>
        <translation>Hier fehlt eine Liste von Texten.</translation>
    </message>
    <message>
        <source>Write it in square brackets.</source>
        <translation>Schreib sie in eckige Klammern.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not known here.</source>
        <translation>„%1“ ist hier unbekannt.</translation>
    </message>
    <message>
        <source>Take one of: %1.</source>
        <translation>Nimm eines von: %1.</translation>
    </message>
    <message>
        <source>A number from %1 to %2 is missing here.</source>
        <translation>Hier fehlt eine Zahl von %1 bis %2.</translation>
    </message>
    <message>
        <source>Write it without quotation marks, with a decimal point.</source>
        <translation>Schreib sie ohne Anführungszeichen, mit Dezimalpunkt.</translation>
    </message>
    <message>
        <source>%1 is not a whole number.</source>
        <translation>%1 ist keine ganze Zahl.</translation>
    </message>
    <message>
        <source>Leave out the decimals.</source>
        <translation>Lass die Nachkommastellen weg.</translation>
    </message>
    <message>
        <source>This is neither true nor false.</source>
        <translation>Das ist weder true noch false.</translation>
    </message>
    <message>
        <source>Write true or false, or leave it out.</source>
        <translation>Schreib true oder false, oder lass es weg.</translation>
    </message>
    <message>
        <source>Two numbers from %1 to %2 are missing here.</source>
        <translation>Hier fehlen zwei Zahlen von %1 bis %2.</translation>
    </message>
    <message>
        <source>Write them as [low, high].</source>
        <translation>Schreib sie als [low, high].</translation>
    </message>
    <message>
        <source>There is no parameter &quot;%1&quot;.</source>
        <translation>Es gibt keinen Parameter „%1“.</translation>
    </message>
    <message>
        <source>Take a key from the list of parameters.</source>
        <translation>Nimm einen Schlüssel aus der Liste der Parameter.</translation>
    </message>
    <message>
        <source>%1 has no unit &quot;%2&quot;.</source>
        <translation>%1 hat keine Einheit „%2“.</translation>
    </message>
    <message>
        <source>Take one of the parameter&apos;s units.</source>
        <translation>Nimm eine der Einheiten des Parameters.</translation>
    </message>
    <message>
        <source>There is no event &quot;%1&quot;.</source>
        <translation>Es gibt kein Ereignis „%1“.</translation>
    </message>
    <message>
        <source>Take a code of core/care/events.h, or name subjects.</source>
        <translation>Nimm einen Code aus core/care/events.h, oder nenne subjects.</translation>
    </message>
    <message>
        <source>There is no kind of entry &quot;%1&quot;.</source>
        <translation>Es gibt keine Art von Eintrag „%1“.</translation>
    </message>
    <message>
        <source>Take a code of core/record/entry.h.</source>
        <translation>Nimm einen Code aus core/record/entry.h.</translation>
    </message>
    <message>
        <source>There is no observation &quot;%1&quot;.</source>
        <translation>Es gibt keine Beobachtung „%1“.</translation>
    </message>
    <message>
        <source>There is no key &quot;%1&quot; in evidence.json.</source>
        <translation>Es gibt keinen Schlüssel „%1“ in evidence.json.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an event.</source>
        <translation>„%1“ ist kein Ereignis.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no values to tick.</source>
        <translation>„%1“ hat keine Werte zum Ankreuzen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no value of &quot;%2&quot;.</source>
        <translation>„%1“ ist kein Wert von „%2“.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number.</source>
        <translation>„%1“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>There is no caution &quot;%1&quot;.</source>
        <translation>Es gibt keinen Warnhinweis „%1“.</translation>
    </message>
    <message>
        <source>Take an id from cautions.json.</source>
        <translation>Nimm eine id aus cautions.json.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be judged. %2</source>
        <translation>„%1“ lässt sich nicht beurteilen. %2</translation>
    </message>
    <message>
        <source>Use a key of evidence.json, or add it there.</source>
        <translation>Nutze einen Schlüssel aus evidence.json, oder ergänze ihn dort.</translation>
    </message>
    <message>
        <source>There is no other condition &quot;%1&quot;.</source>
        <translation>Es gibt keinen anderen Zustand „%1“.</translation>
    </message>
    <message>
        <source>Take an id from conditions.json.</source>
        <translation>Nimm eine id aus conditions.json.</translation>
    </message>
    <message>
        <source>There is no gate &quot;%1&quot; for it.</source>
        <translation>Dafür gibt es keine Freigabe „%1“.</translation>
    </message>
    <message>
        <source>It is not JSON: %1 at character %2.</source>
        <translation>Das ist kein JSON: %1 bei Zeichen %2.</translation>
    </message>
    <message>
        <source>Check brackets, commas and quotation marks there.</source>
        <translation>Prüfe dort Klammern, Kommas und Anführungszeichen.</translation>
    </message>
    <message>
        <source>Its version is not 1.</source>
        <translation>Seine Version ist nicht 1.</translation>
    </message>
    <message>
        <source>Write &quot;version&quot;: 1 at the top.</source>
        <translation>Schreib &quot;version&quot;: 1 an den Anfang.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is there twice.</source>
        <translation>„%1“ ist zweimal da.</translation>
    </message>
    <message>
        <source>Take one of them out.</source>
        <translation>Nimm eines davon heraus.</translation>
    </message>
    <message>
        <source>There is nothing in &quot;%1&quot;.</source>
        <translation>In „%1“ steht nichts.</translation>
    </message>
    <message>
        <source>Put at least one record there.</source>
        <translation>Setz dort mindestens einen Datensatz ein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no words.</source>
        <translation>„%1“ hat keine Worte.</translation>
    </message>
    <message>
        <source>Write what it means.</source>
        <translation>Schreib, was es bedeutet.</translation>
    </message>
    <message>
        <source>A tick needs two values or more.</source>
        <translation>Zum Ankreuzen braucht es zwei Werte oder mehr.</translation>
    </message>
    <message>
        <source>Add the other answer.</source>
        <translation>Ergänze die andere Antwort.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no value of this key.</source>
        <translation>„%1“ ist kein Wert dieses Schlüssels.</translation>
    </message>
    <message>
        <source>Use a code from &quot;values&quot;.</source>
        <translation>Nutze einen Code aus &quot;values&quot;.</translation>
    </message>
    <message>
        <source>It must be clear which entries tell of it.</source>
        <translation>Es muss klar sein, welche Einträge davon zeugen.</translation>
    </message>
    <message>
        <source>Give one of &quot;event&quot;, &quot;subjects&quot; or &quot;entries&quot;.</source>
        <translation>Gib eines von &quot;event&quot;, &quot;subjects&quot; oder &quot;entries&quot; an.</translation>
    </message>
    <message>
        <source>It says nothing.</source>
        <translation>Es sagt nichts.</translation>
    </message>
    <message>
        <source>Write at least one point.</source>
        <translation>Schreib mindestens einen Punkt.</translation>
    </message>
    <message>
        <source>The usual tank age is missing here.</source>
        <translation>Hier fehlt das übliche Beckenalter.</translation>
    </message>
    <message>
        <source>Write [from] or [from, to] in days.</source>
        <translation>Schreib [from] oder [from, to] in Tagen.</translation>
    </message>
    <message>
        <source>Nothing speaks for it.</source>
        <translation>Nichts spricht dafür.</translation>
    </message>
    <message>
        <source>Write at least one item of evidence.</source>
        <translation>Schreib mindestens einen Hinweis.</translation>
    </message>
    <message>
        <source>&quot;above-all&quot; is missing.</source>
        <translation>&quot;above-all&quot; fehlt.</translation>
    </message>
    <message>
        <source>Say what outranks the cautions.</source>
        <translation>Sag, was über den Warnhinweisen steht.</translation>
    </message>
    <message>
        <source>A caution is not taken out.</source>
        <translation>Ein Vorsichtshinweis wird nicht herausgenommen.</translation>
    </message>
    <message>
        <source>Remove the setting.</source>
        <translation>Die Einstellung entfernen.</translation>
    </message>
    <message>
        <source>There is no work &quot;%1&quot;.</source>
        <translation>Es gibt keine Arbeit „%1“.</translation>
    </message>
    <message>
        <source>Take a key from task_templates.json.</source>
        <translation>Einen Schlüssel aus task_templates.json nehmen.</translation>
    </message>
    <message>
        <source>Its first point does not stand before the action.</source>
        <translation>Der erste Punkt steht nicht vor der Handlung.</translation>
    </message>
    <message>
        <source>Put the most telling point first and mark it &quot;before&quot;: true.</source>
        <translation>Den aussagekräftigsten Punkt an den Anfang stellen und mit &quot;before&quot;: true kennzeichnen.</translation>
    </message>
</context>
<context>
    <name>FanPainter</name>
    <message>
        <source>%1 (%2–%3)</source>
        <translation>%1 (%2–%3)</translation>
    </message>
    <message>
        <source>Water changes</source>
        <translation>Wasserwechsel</translation>
    </message>
    <message>
        <source>percent; hollow: planned</source>
        <translation>Prozent; hohl: geplant</translation>
    </message>
    <message>
        <source>flooded</source>
        <translation>geflutet</translation>
    </message>
    <message>
        <source>day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <source>bars: half a kit step either side</source>
        <translation>Balken: eine halbe Teststufe beiderseits</translation>
    </message>
    <message>
        <source>bands: 8 in 10, 5 in 10; dashes: middle</source>
        <translation>Bänder: 8 von 10, 5 von 10; Striche: Mitte</translation>
    </message>
    <message>
        <source>quick: %1</source>
        <translation>schnell: %1</translation>
    </message>
    <message>
        <source>looked at: %1</source>
        <translation>angesehen: %1</translation>
    </message>
    <message>
        <source>few members, the full answer follows</source>
        <translation>wenige Mitglieder, die volle Antwort folgt</translation>
    </message>
    <message>
        <source>paler: as planned now</source>
        <translation>blasser: wie jetzt geplant</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>FileAsk</name>
    <message>
        <source>Open a store</source>
        <translation>Eine Datei öffnen</translation>
    </message>
    <message>
        <source>Stores (*.littoral);;All files (*)</source>
        <translation>Datenbestände (*.littoral);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Make a new store</source>
        <translation>Eine neue Datei anlegen</translation>
    </message>
    <message>
        <source>Stores (*.littoral)</source>
        <translation>Datenbestände (*.littoral)</translation>
    </message>
    <message>
        <source>Bring in files</source>
        <translation>Dateien einlesen</translation>
    </message>
    <message>
        <source>CSV and tank files (*.csv *.json);;All files (*)</source>
        <translation>CSV- und Beckendateien (*.csv *.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Folder to export to</source>
        <translation>Ordner für den Export</translation>
    </message>
    <message>
        <source>Back up the store to</source>
        <translation>Die Datei sichern nach</translation>
    </message>
    <message>
        <source>Choose a photo</source>
        <translation>Ein Foto wählen</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png);;All files (*)</source>
        <translation>Bilder (*.jpg *.jpeg *.png);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 files (*.%2)</source>
        <translation>%1-Dateien (*.%2)</translation>
    </message>
</context>
<context>
    <name>FindingSentences</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>%1 %2: %3 is usual.</source>
        <translation>%1 %2: %3 ist üblich.</translation>
    </message>
    <message>
        <source>%1 %2 on %3: %4 counts.</source>
        <translation>%1 %2 am %3: Es zählt %4.</translation>
    </message>
    <message>
        <source>%1 %2: %3 counts.</source>
        <translation>%1 %2: Es zählt %3.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 Seen: %2; asked for: %3.</source>
        <translation>%1 Gesehen: %2; gefragt war: %3.</translation>
    </message>
    <message>
        <source>%1 Seen: %2.</source>
        <translation>%1 Gesehen: %2.</translation>
    </message>
    <message>
        <source>%1: last on %2, %3 days ago.</source>
        <translation>%1: zuletzt am %2, vor %3 Tagen.</translation>
    </message>
    <message>
        <source>%1: never on record, in %2 days.</source>
        <translation>%1: nie aufgezeichnet, in %2 Tagen.</translation>
    </message>
    <message>
        <source>%1 on %2.</source>
        <translation>%1 am %2.</translation>
    </message>
    <message>
        <source>%1 was seen to be gone on %2.</source>
        <translation>Am %2 war %1 nicht mehr da.</translation>
    </message>
    <message>
        <source>%1 was noted by name on %2.</source>
        <translation>%1 wurde am %2 beim Namen genannt.</translation>
    </message>
    <message>
        <source>%1 was noted on %2, for which it is often taken.</source>
        <translation>Am %2 wurde %1 notiert, womit es oft verwechselt wird.</translation>
    </message>
    <message>
        <source>%1: %2 on %3.</source>
        <translation>%1: %2 am %3.</translation>
    </message>
    <message>
        <source>anything else</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>Strong support</source>
        <translation>Gut gestützt</translation>
    </message>
    <message>
        <source>Fair support</source>
        <translation>Einigermaßen gestützt</translation>
    </message>
    <message>
        <source>More speaks against it</source>
        <translation>Es spricht mehr dagegen</translation>
    </message>
    <message>
        <source>Weak support</source>
        <translation>Schwach gestützt</translation>
    </message>
    <message>
        <source>%1 was not looked for.</source>
        <translation>Nach %1 wurde nicht gesehen.</translation>
    </message>
    <message>
        <source>%1 was not read.</source>
        <translation>%1 wurde nicht gemessen.</translation>
    </message>
    <message>
        <source>%1: not as lately as asked for.</source>
        <translation>%1: nicht so kürzlich wie gefragt.</translation>
    </message>
    <message>
        <source>%1: nothing on record.</source>
        <translation>%1: nichts aufgezeichnet.</translation>
    </message>
    <message>
        <source>What decides best: a reading of %1.</source>
        <translation>Was am besten entscheidet: ein Messwert für %1.</translation>
    </message>
    <message>
        <source>What decides best: %1</source>
        <translation>Was am besten entscheidet: %1</translation>
    </message>
    <message>
        <source>No answer would put another finding first; it makes the first one firmer or weaker.</source>
        <translation>Keine Antwort würde einen anderen Befund voranstellen; sie stärkt oder schwächt den ersten.</translation>
    </message>
    <message>
        <source>Answer &quot;%1&quot;: %2 would come first.</source>
        <translation>Antwort „%1“: %2 stünde voran.</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 µmol/m²/s</source>
        <translation>%1 µmol/m²/s</translation>
    </message>
    <message>
        <source>Hours of light</source>
        <translation>Lichtstunden</translation>
    </message>
    <message>
        <source>Light at the bed</source>
        <translation>Licht am Bodengrund</translation>
    </message>
    <message>
        <source>CO₂ target</source>
        <translation>CO₂-Ziel</translation>
    </message>
    <message>
        <source>Daily feed</source>
        <translation>Tägliches Futter</translation>
    </message>
    <message>
        <source>Water changed in a week</source>
        <translation>Gewechseltes Wasser je Woche</translation>
    </message>
    <message>
        <source>Largest water change</source>
        <translation>Größter Wasserwechsel</translation>
    </message>
    <message>
        <source>Dose of %1 in a week</source>
        <translation>Dosis von %1 je Woche</translation>
    </message>
    <message>
        <source>%1: %2 times, first on %3.</source>
        <translation>%1: %2 Mal, zuerst am %3.</translation>
    </message>
    <message>
        <source>%1: %2 before, %3 from %4.</source>
        <translation>%1: vorher %2, ab %4 %3.</translation>
    </message>
    <message>
        <source>%1 times the usual spread of this layout</source>
        <translation>%1-mal die übliche Streuung dieses Layouts</translation>
    </message>
    <message>
        <source>too few earlier values for a spread of its own</source>
        <translation>zu wenige frühere Werte für eine eigene Streuung</translation>
    </message>
    <message>
        <source>%1: %2 until %3, %4 from %5.</source>
        <translation>%1: %2 bis %3, %4 ab %5.</translation>
    </message>
    <message>
        <source>%1 never above %2 where it was read; highest %3 on %4; %5 days not read.</source>
        <translation>%1 nie über %2, wo gemessen wurde; höchster Wert %3 am %4; %5 Tage nicht gemessen.</translation>
    </message>
    <message>
        <source>%1 never below %2 where it was read; lowest %3 on %4; %5 days not read.</source>
        <translation>%1 nie unter %2, wo gemessen wurde; niedrigster Wert %3 am %4; %5 Tage nicht gemessen.</translation>
    </message>
    <message>
        <source>%1 above %2 for about %3 h, %4 to %5 h by the kit&apos;s error; worst %6 on %7; %8 days not read.</source>
        <translation>%1 über %2 für etwa %3 h, %4 bis %5 h nach dem Fehler des Tests; am schlimmsten %6 am %7; %8 Tage nicht gemessen.</translation>
    </message>
    <message>
        <source>%1 below %2 for about %3 h, %4 to %5 h by the kit&apos;s error; worst %6 on %7; %8 days not read.</source>
        <translation>%1 unter %2 für etwa %3 h, %4 bis %5 h nach dem Fehler des Tests; am schlimmsten %6 am %7; %8 Tage nicht gemessen.</translation>
    </message>
    <message>
        <source>An animal&apos;s health is for a veterinarian or a fish-health laboratory to judge. What is written here helps to describe it to them, and medicines follow local law.</source>
        <translation>Die Gesundheit eines Tieres zu beurteilen ist Sache einer Tierarztpraxis oder eines Labors für Fischgesundheit. Was hier steht, hilft, sie dort zu beschreiben, und für Arzneimittel gilt das örtliche Recht.</translation>
    </message>
</context>
<context>
    <name>FirstTank</name>
    <message>
        <source>All-new media, ammonia-rich soil</source>
        <translation>Ganz neues Filtermaterial, ammoniumreicher Soil</translation>
    </message>
    <message>
        <source>All-new media, sand or gravel</source>
        <translation>Ganz neues Filtermaterial, Sand oder Kies</translation>
    </message>
    <message>
        <source>Mature media from a running filter</source>
        <translation>Reifes Filtermaterial aus einem laufenden Filter</translation>
    </message>
    <message>
        <source>Bottled starter</source>
        <translation>Starterbakterien aus der Flasche</translation>
    </message>
    <message>
        <source>Dry start, flooded after rooting</source>
        <translation>Trockenstart, geflutet nach dem Anwurzeln</translation>
    </message>
    <message>
        <source>Dark start, planted later</source>
        <translation>Dunkelstart, später bepflanzt</translation>
    </message>
    <message>
        <source>Running already</source>
        <translation>Läuft schon</translation>
    </message>
    <message>
        <source>one water change of %1, on %2</source>
        <translation>ein Wasserwechsel von %1, am %2</translation>
    </message>
    <message>
        <source>%1 water changes of up to %2, the first on %3</source>
        <translation>%1 Wasserwechsel von bis zu %2, der erste am %3</translation>
    </message>
    <message>
        <source>tests of %1 on one day</source>
        <translation>Tests auf %1 an einem Tag</translation>
    </message>
    <message>
        <source>tests of %1 on %2 days</source>
        <translation>Tests auf %1 an %2 Tagen</translation>
    </message>
    <message>
        <source>Proposed for the first week: %1.</source>
        <translation>Vorschlag für die erste Woche: %1.</translation>
    </message>
    <message>
        <source>Proposed for the first week: %1; %2.</source>
        <translation>Vorschlag für die erste Woche: %1; %2.</translation>
    </message>
</context>
<context>
    <name>Forecast</name>
    <message>
        <source>More source waters are in use than the forecast can tell apart; the last ones count as the tank&apos;s own.</source>
        <translation>Es sind mehr Ausgangswässer in Gebrauch, als die Vorhersage unterscheiden kann; die letzten zählen wie das eigene des Beckens.</translation>
    </message>
    <message>
        <source>A dose of ammonia is given in %1, which does not tell its strength in the tank; it was left out.</source>
        <translation>Eine Ammoniumdosis ist in %1 angegeben, was ihre Stärke im Becken nicht verrät; sie wurde ausgelassen.</translation>
    </message>
    <message>
        <source>Feed is given in grams but the litres of the tank are not known; it was left out.</source>
        <translation>Futter ist in Gramm angegeben, aber die Liter des Beckens sind nicht bekannt; es wurde ausgelassen.</translation>
    </message>
    <message>
        <source>How much mature media was moved in was not entered; a third of a filter was taken.</source>
        <translation>Wie viel reifes Filtermaterial einzog, wurde nicht eingetragen; angenommen wurde ein Drittel eines Filters.</translation>
    </message>
    <message>
        <source>The bottled starter was not entered as a dose; one label dose on day 0 was taken.</source>
        <translation>Die Starterbakterien wurden nicht als Dosis eingetragen; angenommen wurde eine Etikettdosis am Tag 0.</translation>
    </message>
    <message>
        <source>Planned but past their date and not entered as done, so left out: %1.</source>
        <translation>Geplant, aber über das Datum hinaus und nicht als getan eingetragen, also ausgelassen: %1.</translation>
    </message>
    <message>
        <source>%1 was entered without a kit; a common colour card was taken.</source>
        <translation>%1 wurde ohne Test eingetragen; angenommen wurde eine übliche Farbkarte.</translation>
    </message>
    <message>
        <source>How much soil there is was not stated; a usual bed was taken.</source>
        <translation>Wie viel Soil darin ist, wurde nicht angegeben; angenommen wurde eine übliche Schicht.</translation>
    </message>
    <message>
        <source>Nitrate of the source water is not stated; a wide range was taken. A reading of it would help.</source>
        <translation>Das Nitrat des Ausgangswassers ist nicht angegeben; angenommen wurde ein weiter Bereich. Ein Messwert davon würde helfen.</translation>
    </message>
    <message>
        <source>Planned animals whose load is not stated count for nothing in what the filter has to carry. Additions of this kind: %1.</source>
        <translation>Geplante Tiere ohne angegebene Belastung zählen bei dem, was der Filter tragen muss, nicht mit. Einsätze dieser Art: %1.</translation>
    </message>
    <message>
        <source>That layout is not in the store.</source>
        <translation>Dieses Layout ist nicht in der Datei.</translation>
    </message>
    <message>
        <source>This layout had ended by then.</source>
        <translation>Dieses Layout war bis dahin beendet.</translation>
    </message>
    <message>
        <source>Ask for a day while it was running, with --as-of.</source>
        <translation>Frag mit --as-of nach einem Tag, an dem es lief.</translation>
    </message>
    <message>
        <source>%1 (layout %2)</source>
        <translation>%1 (Layout %2)</translation>
    </message>
    <message>
        <source>%1 already, %2</source>
        <translation>%1 schon jetzt, %2</translation>
    </message>
    <message>
        <source>%1 from %2 at the earliest; not by %3: %4</source>
        <translation>%1 frühestens ab %2; nicht bis %3: %4</translation>
    </message>
    <message>
        <source>%1 not by %2: %3</source>
        <translation>%1 nicht bis %2: %3</translation>
    </message>
    <message>
        <source>Cycle complete</source>
        <translation>Einfahrphase abgeschlossen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The readings would agree if %1 gave nitrogen where the ion is taken, or the other way round. See what its leaflet says and set it in the kit.</source>
        <translation>Die Messwerte passten zusammen, wenn %1 Stickstoff angäbe, wo das Ion angenommen ist, oder umgekehrt. Sieh im Beipackzettel nach und stell es beim Test ein.</translation>
    </message>
    <message>
        <source>The readings would agree if %1 read low whatever is in the water. Check its date, or test a sample of known strength.</source>
        <translation>Die Messwerte passten zusammen, wenn %1 niedrig läse, was auch immer im Wasser ist. Prüfe das Datum, oder teste eine Probe bekannter Stärke.</translation>
    </message>
    <message>
        <source>The readings would agree if about half the water had been changed about %1 without an entry. Enter it if it was.</source>
        <translation>Die Messwerte passten zusammen, wenn um %1 etwa die Hälfte des Wassers ohne Eintrag gewechselt worden wäre. Trag es ein, wenn es so war.</translation>
    </message>
    <message>
        <source>%1 %2, target %3–%4</source>
        <translation>%1 %2, Ziel %3–%4</translation>
    </message>
    <message>
        <source>%1 %2, target up to %3</source>
        <translation>%1 %2, Ziel bis %3</translation>
    </message>
    <message>
        <source>%1 %2, target from %3</source>
        <translation>%1 %2, Ziel ab %3</translation>
    </message>
    <message>
        <source>Alkalinity (KH) is not known; %1 was taken.</source>
        <translation>Die Karbonathärte (KH) ist nicht bekannt; angenommen wurden %1.</translation>
    </message>
</context>
<context>
    <name>FormBinder</name>
    <message>
        <source>%1: &quot;%2&quot; is not a number from %3 to %4.</source>
        <translation>%1: „%2“ ist keine Zahl von %3 bis %4.</translation>
    </message>
</context>
<context>
    <name>GateSentences</name>
    <message>
        <source>the kit&apos;s first step</source>
        <translation>die erste Stufe des Tests</translation>
    </message>
    <message>
        <source>%1 at most %2: unknown, a reading of ammonia with pH would tell.</source>
        <translation>%1 höchstens %2: unbekannt, ein Messwert für Ammonium mit pH gäbe Auskunft.</translation>
    </message>
    <message>
        <source>%1 at most %2: unknown, a test would tell.</source>
        <translation>%1 höchstens %2: unbekannt, ein Test gäbe Auskunft.</translation>
    </message>
    <message>
        <source>%1 below %2: %3 on %4.</source>
        <translation>%1 unter %2: %3 am %4.</translation>
    </message>
    <message>
        <source>%1 at most %2: %3 on %4.</source>
        <translation>%1 höchstens %2: %3 am %4.</translation>
    </message>
    <message>
        <source>Clear readings in a row, well after changes: %1 of %2, over %3 of %4 days.</source>
        <translation>Klare Messwerte in Folge, lange nach Wechseln: %1 von %2, über %3 von %4 Tagen.</translation>
    </message>
    <message>
        <source>Clear readings in a row, well after changes: %1 of %2.</source>
        <translation>Klare Messwerte in Folge, lange nach Wechseln: %1 von %2.</translation>
    </message>
    <message>
        <source>CO₂ is steady.</source>
        <translation>Das CO₂ ist stetig.</translation>
    </message>
    <message>
        <source>CO₂ was changed less than three days ago.</source>
        <translation>Das CO₂ wurde vor weniger als drei Tagen geändert.</translation>
    </message>
    <message>
        <source>Whether CO₂ is steady is unknown: a pH curve over one day would tell.</source>
        <translation>Ob das CO₂ stetig ist, ist unbekannt: Eine pH-Kurve über einen Tag gäbe Auskunft.</translation>
    </message>
    <message>
        <source>No copper was found.</source>
        <translation>Es wurde kein Kupfer gefunden.</translation>
    </message>
    <message>
        <source>Copper was found.</source>
        <translation>Es wurde Kupfer gefunden.</translation>
    </message>
    <message>
        <source>Copper is unknown: a test would tell.</source>
        <translation>Kupfer ist unbekannt: Ein Test gäbe Auskunft.</translation>
    </message>
    <message>
        <source>Melt is not rising.</source>
        <translation>Die Schmelze nimmt nicht zu.</translation>
    </message>
    <message>
        <source>Melt is rising.</source>
        <translation>Die Schmelze nimmt zu.</translation>
    </message>
    <message>
        <source>Whether melt is rising is unknown: two looks some days apart would tell.</source>
        <translation>Ob die Schmelze zunimmt, ist unbekannt: Zwei Blicke im Abstand einiger Tage gäben Auskunft.</translation>
    </message>
    <message>
        <source>There is some algae to eat.</source>
        <translation>Es gibt einige Algen zu fressen.</translation>
    </message>
    <message>
        <source>No algae was seen for grazers to eat.</source>
        <translation>Es wurden keine Algen für Algenfresser gesehen.</translation>
    </message>
    <message>
        <source>Whether there is algae to eat is unknown: an observation would tell.</source>
        <translation>Ob es Algen zu fressen gibt, ist unbekannt: Eine Beobachtung gäbe Auskunft.</translation>
    </message>
    <message>
        <source>The first animals have done well for a week.</source>
        <translation>Den ersten Tieren geht es seit einer Woche gut.</translation>
    </message>
    <message>
        <source>The first animals have not been in for a week, or one in ten was lost.</source>
        <translation>Die ersten Tiere sind noch keine Woche darin, oder eines von zehn ging verloren.</translation>
    </message>
    <message>
        <source>No first animals are on record to judge by.</source>
        <translation>Es sind keine ersten Tiere aufgezeichnet, nach denen sich urteilen ließe.</translation>
    </message>
    <message>
        <source>A week has passed since the last addition without ammonia or nitrite.</source>
        <translation>Seit dem letzten Einsetzen verging eine Woche ohne Ammonium oder Nitrit.</translation>
    </message>
    <message>
        <source>Less than a week since the last addition, or ammonia or nitrite rose after it.</source>
        <translation>Seit dem letzten Einsetzen ist es weniger als eine Woche, oder Ammonium oder Nitrit stieg danach.</translation>
    </message>
    <message>
        <source>Water changes are weekly or rarer.</source>
        <translation>Die Wasserwechsel sind wöchentlich oder seltener.</translation>
    </message>
    <message>
        <source>Water changes are still more often than weekly.</source>
        <translation>Die Wasserwechsel sind noch häufiger als wöchentlich.</translation>
    </message>
    <message>
        <source>There is no cadence of water changes to judge by.</source>
        <translation>Es gibt keinen Takt der Wasserwechsel, nach dem sich urteilen ließe.</translation>
    </message>
    <message>
        <source>There is a film on glass or rock to graze.</source>
        <translation>Auf Glas oder Stein gibt es Aufwuchs zu weiden.</translation>
    </message>
    <message>
        <source>No film was seen on glass or rock.</source>
        <translation>Auf Glas oder Stein wurde kein Aufwuchs gesehen.</translation>
    </message>
    <message>
        <source>Whether there is a film to graze is unknown: an observation would tell.</source>
        <translation>Ob es Aufwuchs zu weiden gibt, ist unbekannt: Eine Beobachtung gäbe Auskunft.</translation>
    </message>
    <message>
        <source>pH moves by 0.9 or less within a day.</source>
        <translation>Der pH bewegt sich am Tag um höchstens 0,9.</translation>
    </message>
    <message>
        <source>pH moves by more than 0.9 within a day.</source>
        <translation>Der pH bewegt sich am Tag um mehr als 0,9.</translation>
    </message>
    <message>
        <source>How far pH moves in a day is unknown: two readings on one day would tell.</source>
        <translation>Wie weit sich der pH am Tag bewegt, ist unbekannt: Zwei Messwerte an einem Tag gäben Auskunft.</translation>
    </message>
    <message>
        <source>Temperature stayed within a degree for a week.</source>
        <translation>Die Temperatur blieb eine Woche lang auf ein Grad gleich.</translation>
    </message>
    <message>
        <source>Temperature moved by more than a degree this week.</source>
        <translation>Die Temperatur bewegte sich diese Woche um mehr als ein Grad.</translation>
    </message>
    <message>
        <source>Whether temperature is steady is unknown: readings over a week would tell.</source>
        <translation>Ob die Temperatur stetig ist, ist unbekannt: Messwerte über eine Woche gäben Auskunft.</translation>
    </message>
    <message>
        <source>Temperature is unknown: a reading would tell.</source>
        <translation>Die Temperatur ist unbekannt: Ein Messwert gäbe Auskunft.</translation>
    </message>
    <message>
        <source>No animal was lost in two weeks.</source>
        <translation>In zwei Wochen ging kein Tier verloren.</translation>
    </message>
    <message>
        <source>An animal was lost in the last two weeks.</source>
        <translation>In den letzten zwei Wochen ging ein Tier verloren.</translation>
    </message>
    <message>
        <source>Quarantine was done.</source>
        <translation>Die Quarantäne ist erledigt.</translation>
    </message>
    <message>
        <source>Quarantine is not on record.</source>
        <translation>Eine Quarantäne ist nicht aufgezeichnet.</translation>
    </message>
    <message>
        <source>At least %1: reached %2.</source>
        <translation>Mindestens %1: erreicht %2.</translation>
    </message>
    <message>
        <source>At least %1: on %2.</source>
        <translation>Mindestens %1: am %2.</translation>
    </message>
    <message>
        <source>Open: all %1 conditions are met.</source>
        <translation>Offen: Alle %1 Bedingungen sind erfüllt.</translation>
    </message>
    <message>
        <source>Not yet: %1 of %2 conditions are not met.</source>
        <translation>Noch nicht: %1 von %2 Bedingungen sind nicht erfüllt.</translation>
    </message>
    <message>
        <source>Unknown: %1 of %2 conditions were not looked at.</source>
        <translation>Unbekannt: Nach %1 von %2 Bedingungen wurde nicht gesehen.</translation>
    </message>
    <message>
        <source>Temperature is between %1 and %2.</source>
        <translation>Die Temperatur liegt zwischen %1 und %2.</translation>
    </message>
    <message>
        <source>Temperature is outside %1 to %2.</source>
        <translation>Die Temperatur liegt außerhalb von %1 bis %2.</translation>
    </message>
    <message>
        <source>Ammonia and nitrite stayed down after the last addition.</source>
        <translation>Ammonium und Nitrit blieben nach dem letzten Besatz niedrig.</translation>
    </message>
    <message>
        <source>Ammonia or nitrite rose within a week of an addition.</source>
        <translation>Ammonium oder Nitrit stieg innerhalb einer Woche nach einem Besatz.</translation>
    </message>
    <message>
        <source>GH and KH were in range a week apart, or no rock hardens the water.</source>
        <translation>GH und KH lagen im Abstand einer Woche im Bereich, oder kein Gestein härtet das Wasser auf.</translation>
    </message>
    <message>
        <source>GH or KH is out of range, and rock hardens the water.</source>
        <translation>GH oder KH liegt außerhalb des Bereichs, und Gestein härtet das Wasser auf.</translation>
    </message>
    <message>
        <source>Whether GH and KH stay in range is unknown: a range, and readings a week apart, would tell.</source>
        <translation>Ob GH und KH im Bereich bleiben, ist unbekannt: Ein Bereich und Messwerte im Abstand einer Woche gäben Auskunft.</translation>
    </message>
    <message>
        <source>No journey stands before or around this day.</source>
        <translation>Keine Reise steht vor diesem Tag oder um ihn herum an.</translation>
    </message>
    <message>
        <source>A journey is near: no animals from three days before it until its end.</source>
        <translation>Eine Reise steht bevor: keine Tiere von drei Tagen davor bis zu ihrem Ende.</translation>
    </message>
</context>
<context>
    <name>Gates</name>
    <message>
        <source>gate &quot;%1&quot;</source>
        <translation>Freigabe „%1“</translation>
    </message>
    <message>
        <source>There is no condition &quot;%1&quot;.</source>
        <translation>Es gibt keine Bedingung „%1“.</translation>
    </message>
    <message>
        <source>It is not JSON: %1.</source>
        <translation>Das ist kein JSON: %1.</translation>
    </message>
    <message>
        <source>gates</source>
        <translation>Freigaben</translation>
    </message>
    <message>
        <source>%1, field &quot;%2&quot;</source>
        <translation>%1, Feld „%2“</translation>
    </message>
    <message>
        <source>A text is missing here.</source>
        <translation>Hier fehlt ein Text.</translation>
    </message>
    <message>
        <source>Write it in quotation marks.</source>
        <translation>In Anführungszeichen schreiben.</translation>
    </message>
    <message>
        <source>A number from %1 to %2 is missing here.</source>
        <translation>Hier fehlt eine Zahl von %1 bis %2.</translation>
    </message>
    <message>
        <source>Write it without quotation marks, with a decimal point.</source>
        <translation>Ohne Anführungszeichen schreiben, mit Dezimalpunkt.</translation>
    </message>
    <message>
        <source>The least age is missing for &quot;%1&quot;.</source>
        <translation>Für „%1“ fehlt das Mindestalter.</translation>
    </message>
    <message>
        <source>Write days as a whole number from 0 to %1.</source>
        <translation>Tage als ganze Zahl von 0 bis %1 schreiben.</translation>
    </message>
    <message>
        <source>Take one of: %1.</source>
        <translation>Eines davon nehmen: %1.</translation>
    </message>
    <message>
        <source>There is no such field.</source>
        <translation>Ein solches Feld gibt es nicht.</translation>
    </message>
    <message>
        <source>Known are: %1.</source>
        <translation>Bekannt sind: %1.</translation>
    </message>
    <message>
        <source>%1 is not a whole number.</source>
        <translation>%1 ist keine ganze Zahl.</translation>
    </message>
    <message>
        <source>Leave out the decimals.</source>
        <translation>Die Nachkommastellen weglassen.</translation>
    </message>
    <message>
        <source>A gate has no key.</source>
        <translation>Eine Freigabe hat keinen Schlüssel.</translation>
    </message>
    <message>
        <source>Write one, such as &quot;G1&quot;.</source>
        <translation>Einen schreiben, etwa „G1“.</translation>
    </message>
    <message>
        <source>There is no gate &quot;%1&quot;.</source>
        <translation>Es gibt keine Freigabe „%1“.</translation>
    </message>
    <message>
        <source>Take one of G1 to G4.</source>
        <translation>Eine von G1 bis G4 nehmen.</translation>
    </message>
</context>
<context>
    <name>Guide</name>
    <message>
        <source>at any age of the tank</source>
        <translation>in jedem Alter des Beckens</translation>
    </message>
    <message>
        <source>from day %1 on</source>
        <translation>ab Tag %1</translation>
    </message>
    <message>
        <source>day %1 to %2</source>
        <translation>Tag %1 bis %2</translation>
    </message>
    <message>
        <source>common</source>
        <translation>häufig</translation>
    </message>
    <message>
        <source>occasional</source>
        <translation>gelegentlich</translation>
    </message>
    <message>
        <source>rare</source>
        <translation>selten</translation>
    </message>
    <message>
        <source>Act now</source>
        <translation>Sofort handeln</translation>
    </message>
    <message>
        <source>Act today</source>
        <translation>Heute handeln</translation>
    </message>
    <message>
        <source>Within the week</source>
        <translation>Innerhalb der Woche</translation>
    </message>
    <message>
        <source>Watch</source>
        <translation>Beobachten</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1–%2 %3</source>
        <translation>%1–%2 %3</translation>
    </message>
    <message>
        <source>much</source>
        <translation>viel</translation>
    </message>
    <message>
        <source>middling</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>little</source>
        <translation>wenig</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>helps much</source>
        <translation>hilft sehr</translation>
    </message>
    <message>
        <source>does without</source>
        <translation>geht ohne</translation>
    </message>
    <message>
        <source>takes it from the air</source>
        <translation>nimmt es aus der Luft</translation>
    </message>
    <message>
        <source>Length when grown</source>
        <translation>Länge ausgewachsen</translation>
    </message>
    <message>
        <source>Least group</source>
        <translation>Kleinste Gruppe</translation>
    </message>
    <message>
        <source>%1 together</source>
        <translation>%1 zusammen</translation>
    </message>
    <message>
        <source>may live alone</source>
        <translation>darf allein leben</translation>
    </message>
    <message>
        <source>Least water</source>
        <translation>Wenigstes Wasser</translation>
    </message>
    <message>
        <source>Mass, for the load of feeding</source>
        <translation>Masse, für die Belastung durch Futter</translation>
    </message>
    <message>
        <source>about %1 g</source>
        <translation>etwa %1 g</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>CO₂</source>
        <translation>CO₂</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Wuchsform</translation>
    </message>
    <message>
        <source>Growth</source>
        <translation>Wachstum</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>once, on day %1</source>
        <translation>einmal, am Tag %1</translation>
    </message>
    <message>
        <source>%1 days after it happened</source>
        <translation>%1 Tage danach</translation>
    </message>
    <message>
        <source>%1, from day %2 to %3</source>
        <translation>%1, von Tag %2 bis %3</translation>
    </message>
    <message>
        <source>%1, from day %2 on</source>
        <translation>%1, ab Tag %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Vorsicht: %1</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>Woher das stammt</translation>
    </message>
    <message>
        <source>Condition: %1</source>
        <translation>Zustand: %1</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Üblich</translation>
    </message>
    <message>
        <source>How often</source>
        <translation>Wie oft</translation>
    </message>
    <message>
        <source>First actions</source>
        <translation>Erste Maßnahmen</translation>
    </message>
    <message>
        <source>Avoid</source>
        <translation>Vermeiden</translation>
    </message>
    <message>
        <source>Check next</source>
        <translation>Als Nächstes prüfen</translation>
    </message>
    <message>
        <source>What speaks for it</source>
        <translation>Was dafür spricht</translation>
    </message>
    <message>
        <source>What speaks against it</source>
        <translation>Was dagegen spricht</translation>
    </message>
    <message>
        <source>Easily taken for</source>
        <translation>Leicht verwechselt mit</translation>
    </message>
    <message>
        <source>plant</source>
        <translation>Pflanze</translation>
    </message>
    <message>
        <source>shrimp</source>
        <translation>Garnele</translation>
    </message>
    <message>
        <source>snail</source>
        <translation>Schnecke</translation>
    </message>
    <message>
        <source>fish</source>
        <translation>Fisch</translation>
    </message>
    <message>
        <source>It jumps: keep the lid on.</source>
        <translation>Es springt: Deckel zulassen.</translation>
    </message>
    <message>
        <source>It climbs out: close the gaps.</source>
        <translation>Es klettert heraus: Spalten schließen.</translation>
    </message>
    <message>
        <source>It breeds freely: have somewhere for the young to go.</source>
        <translation>Es vermehrt sich stark: einen Platz für die Jungen haben.</translation>
    </message>
    <message>
        <source>It is banned or listed in some places: look up the local rules first.</source>
        <translation>Mancherorts ist es verboten oder gelistet: zuerst die örtlichen Regeln nachsehen.</translation>
    </message>
    <message>
        <source>It overgrows its neighbours, and waters outdoors if it gets there.</source>
        <translation>Es überwuchert die Nachbarn, und Gewässer im Freien, wenn es dorthin gerät.</translation>
    </message>
    <message>
        <source>It is often caught in the wild: expect a weak start, and quarantine it.</source>
        <translation>Es ist oft ein Wildfang: mit einem schwachen Start rechnen und in Quarantäne setzen.</translation>
    </message>
    <message>
        <source>It bears no warm summers.</source>
        <translation>Es verträgt keine warmen Sommer.</translation>
    </message>
    <message>
        <source>It needs warm water.</source>
        <translation>Es braucht warmes Wasser.</translation>
    </message>
    <message>
        <source>Soft, acid water eats its shell.</source>
        <translation>Weiches, saures Wasser greift das Gehäuse an.</translation>
    </message>
    <message>
        <source>It starves in clean tanks: there must be a film to graze.</source>
        <translation>In sauberen Becken verhungert es: Es muss Aufwuchs zum Weiden geben.</translation>
    </message>
    <message>
        <source>It grazes: look at its belly every day in the first weeks.</source>
        <translation>Es weidet: in den ersten Wochen täglich nach dem Bauch sehen.</translation>
    </message>
    <message>
        <source>It is shy: give it cover and quiet company.</source>
        <translation>Es ist scheu: Deckung und ruhige Gesellschaft geben.</translation>
    </message>
    <message>
        <source>It nips fins, less in a full group.</source>
        <translation>Es zupft an Flossen, in voller Gruppe weniger.</translation>
    </message>
    <message>
        <source>Its mouth is tiny: feed dust or very small live food.</source>
        <translation>Das Maul ist winzig: Staubfutter oder sehr kleines Lebendfutter geben.</translation>
    </message>
    <message>
        <source>It sifts the bed: sharp gravel wears its barbels off.</source>
        <translation>Es gründelt: Scharfer Kies reibt die Barteln ab.</translation>
    </message>
    <message>
        <source>It needs fast water with much oxygen.</source>
        <translation>Es braucht starke Strömung mit viel Sauerstoff.</translation>
    </message>
    <message>
        <source>Males fight: keep one to a tank.</source>
        <translation>Männchen kämpfen: nur eines je Becken halten.</translation>
    </message>
    <message>
        <source>It eats young shrimp.</source>
        <translation>Es frisst junge Garnelen.</translation>
    </message>
    <message>
        <source>It eats shrimp.</source>
        <translation>Es frisst Garnelen.</translation>
    </message>
    <message>
        <source>It eats fish that fit its mouth.</source>
        <translation>Es frisst Fische, die ins Maul passen.</translation>
    </message>
    <message>
        <source>It eats snails.</source>
        <translation>Es frisst Schnecken.</translation>
    </message>
    <message>
        <source>It eats plants.</source>
        <translation>Es frisst Pflanzen.</translation>
    </message>
    <message>
        <source>It rasps soft leaves.</source>
        <translation>Es raspelt weiche Blätter an.</translation>
    </message>
    <message>
        <source>It holds a territory, most of all when it breeds.</source>
        <translation>Es hält ein Revier, am meisten bei der Brut.</translation>
    </message>
    <message>
        <source>It burrows in the bed.</source>
        <translation>Es gräbt im Bodengrund.</translation>
    </message>
    <message>
        <source>from flood day</source>
        <translation>ab dem Tag der Flutung</translation>
    </message>
    <message>
        <source>with the gate %1, %2</source>
        <translation>mit der Freigabe %1, %2</translation>
    </message>
    <message>
        <source>Species: %1</source>
        <translation>Art: %1</translation>
    </message>
    <message>
        <source>Bears (not: likes best)</source>
        <translation>Verträgt (nicht: mag am liebsten)</translation>
    </message>
    <message>
        <source>In short</source>
        <translation>In Kürze</translation>
    </message>
    <message>
        <source>Goes in</source>
        <translation>Zieht ein</translation>
    </message>
    <message>
        <source>Touchiness</source>
        <translation>Empfindlichkeit</translation>
    </message>
    <message>
        <source>%1 of 4</source>
        <translation>%1 von 4</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>To know before buying</source>
        <translation>Vor dem Kauf zu wissen</translation>
    </message>
    <message>
        <source>Task with a cadence</source>
        <translation>Aufgabe mit Takt</translation>
    </message>
    <message>
        <source>Left undone: %1</source>
        <translation>Wenn es unterbleibt: %1</translation>
    </message>
    <message>
        <source>Takes</source>
        <translation>Dauert</translation>
    </message>
    <message>
        <source>about %1 min</source>
        <translation>etwa %1 min</translation>
    </message>
    <message>
        <source>Overdue after</source>
        <translation>Überfällig nach</translation>
    </message>
    <message>
        <source>How often: %1</source>
        <translation>Wie oft: %1</translation>
    </message>
    <message>
        <source>Task without a cadence</source>
        <translation>Aufgabe ohne Takt</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Done when there is</source>
        <translation>Erledigt mit</translation>
    </message>
    <message>
        <source>Somebody else may do it</source>
        <translation>Jemand anderes darf es tun</translation>
    </message>
    <message>
        <source>yes, with a sheet</source>
        <translation>ja, mit einem Blatt</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>It counts for: %1</source>
        <translation>Gilt für: %1</translation>
    </message>
    <message>
        <source>Keep to this</source>
        <translation>Daran halten</translation>
    </message>
    <message>
        <source>Named by</source>
        <translation>Genannt von</translation>
    </message>
    <message>
        <source>Named point by point above.</source>
        <translation>Oben Punkt für Punkt genannt.</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation>%1 Stunden</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>%1 below %2</source>
        <translation>%1 unter %2</translation>
    </message>
    <message>
        <source>%1 at most %2</source>
        <translation>%1 höchstens %2</translation>
    </message>
    <message>
        <source>%1 above %2</source>
        <translation>%1 über %2</translation>
    </message>
    <message>
        <source>%1 at least %2</source>
        <translation>%1 mindestens %2</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 von %2 bis %3</translation>
    </message>
    <message>
        <source>%1 in the last %2</source>
        <translation>%1 in den letzten %2</translation>
    </message>
    <message>
        <source>%1: none for %2</source>
        <translation>%1: keine seit %2</translation>
    </message>
    <message>
        <source>%1 seen, severity %2 or more</source>
        <translation>%1 gesehen, Schwere %2 oder mehr</translation>
    </message>
    <message>
        <source>strong</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>moderate</source>
        <translation>mäßig</translation>
    </message>
    <message>
        <source>weak</source>
        <translation>schwach</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Zustände</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Arten</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Tasks</source>
        <translation>Aufgaben</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>%1 net</source>
        <translation>%1 netto</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>once total ammonia has been under %1 for three days</source>
        <translation>sobald das Gesamtammonium drei Tage lang unter %1 lag</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) of grace</source>
        <translation>
            <numerusform>%n Tag Frist</numerusform>
            <numerusform>%n Tage Frist</numerusform>
        </translation>
    </message>
    <message>
        <source>Who decides</source>
        <translation>Wer entscheidet</translation>
    </message>
    <message>
        <source>Yours: %1</source>
        <translation>Eigener Wert: %1</translation>
    </message>
    <message>
        <source>Gate %1: %2</source>
        <translation>Freigabe %1: %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>below the first step of the kit in use</source>
        <translation>unter der ersten Stufe des verwendeten Tests</translation>
    </message>
    <message>
        <source>new media</source>
        <translation>neue Filtermedien</translation>
    </message>
    <message>
        <source>mature media</source>
        <translation>reife Filtermedien</translation>
    </message>
    <message>
        <source>starter</source>
        <translation>Starterbakterien</translation>
    </message>
    <message>
        <source>dry start</source>
        <translation>Trockenstart</translation>
    </message>
    <message>
        <source>dark start</source>
        <translation>Dunkelstart</translation>
    </message>
    <message>
        <source>Clear readings in a row</source>
        <translation>Unauffällige Messungen in Folge</translation>
    </message>
    <message>
        <source>Between two of them</source>
        <translation>Zwischen zweien davon</translation>
    </message>
    <message>
        <source>at least %1 h</source>
        <translation>mindestens %1 h</translation>
    </message>
    <message>
        <source>All of them within</source>
        <translation>Alle innerhalb von</translation>
    </message>
    <message>
        <source>From the first to the last</source>
        <translation>Von der ersten bis zur letzten</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>Gate</source>
        <translation>Freigabe</translation>
    </message>
    <message>
        <source>For %1. All conditions must hold together; what nobody looked at keeps it unknown.</source>
        <translation>Für %1. Alle Bedingungen müssen zugleich gelten; was niemand angesehen hat, lässt die Freigabe unbekannt.</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Least age by start method</source>
        <translation>Mindestalter nach Startmethode</translation>
    </message>
    <message>
        <source>Besides</source>
        <translation>Außerdem</translation>
    </message>
    <message>
        <source>Limit, common practice or judgement</source>
        <translation>Grenze, gängige Praxis oder Einschätzung</translation>
    </message>
    <message>
        <source>Limit, published</source>
        <translation>Grenze, veröffentlicht</translation>
    </message>
    <message>
        <source>Stands at</source>
        <translation>Steht auf</translation>
    </message>
    <message>
        <source>Can be set</source>
        <translation>Einstellbar</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>no: it is published; a gate or a target band can be stricter</source>
        <translation>nein: Sie ist veröffentlicht; eine Freigabe oder ein Zielbereich kann strenger sein</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>%1 (yours)</source>
        <translation>%1 (eigene)</translation>
    </message>
    <message>
        <source>Terms</source>
        <translation>Begriffe</translation>
    </message>
    <message>
        <source>Term</source>
        <translation>Begriff</translation>
    </message>
    <message>
        <source>See</source>
        <translation>Siehe</translation>
    </message>
    <message>
        <source>%1, as the program ships it</source>
        <translation>%1, wie das Programm es mitbringt</translation>
    </message>
    <message>
        <source>Your version, which counts</source>
        <translation>Die eigene Fassung, die gilt</translation>
    </message>
    <message>
        <source>%1, yours</source>
        <translation>%1, eigene Fassung</translation>
    </message>
    <message>
        <source>As the program ships it</source>
        <translation>Wie das Programm es mitbringt</translation>
    </message>
    <message>
        <source>Its points stay; yours are added below them.</source>
        <translation>Die Punkte darin bleiben; eigene kommen darunter hinzu.</translation>
    </message>
    <message>
        <source>Findings, stock and gates go by your version.</source>
        <translation>Befunde, Besatz und Freigaben richten sich nach der eigenen Fassung.</translation>
    </message>
    <message>
        <source>Task: %1</source>
        <translation>Aufgabe: %1</translation>
    </message>
    <message>
        <source>Limit: %1</source>
        <translation>Grenze: %1</translation>
    </message>
</context>
<context>
    <name>GuideSheets</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>eines von %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1; %2 if nothing is given</source>
        <translation>%1; %2, wenn nichts angegeben ist</translation>
    </message>
    <message>
        <source>%1; may stay empty</source>
        <translation>%1; darf leer bleiben</translation>
    </message>
    <message>
        <source>Worksheet: %1</source>
        <translation>Rechenblatt: %1</translation>
    </message>
    <message>
        <source>What it is for: %1.</source>
        <translation>Wozu es dient: %1.</translation>
    </message>
    <message>
        <source>Formula</source>
        <translation>Formel</translation>
    </message>
    <message>
        <source>In words</source>
        <translation>In Worten</translation>
    </message>
    <message>
        <source>An example</source>
        <translation>Ein Beispiel</translation>
    </message>
    <message>
        <source>Typed into the find field</source>
        <translation>Ins Suchfeld getippt</translation>
    </message>
    <message>
        <source>What goes in, and within which bounds</source>
        <translation>Was hineingeht und in welchen Grenzen</translation>
    </message>
    <message>
        <source>Doubt and digits</source>
        <translation>Unsicherheit und Stellen</translation>
    </message>
    <message>
        <source>%1: %2 either way is taken where no doubt is given.</source>
        <translation>%1: Ohne angegebene Unsicherheit wird %2 nach beiden Seiten angenommen.</translation>
    </message>
    <message>
        <source>The result has as many digits as what went in deserves; a doubt that is known stands beside it as a range.</source>
        <translation>Das Ergebnis hat so viele Stellen, wie die Eingaben hergeben; eine bekannte Unsicherheit steht als Bereich daneben.</translation>
    </message>
    <message>
        <source>What to watch</source>
        <translation>Worauf zu achten ist</translation>
    </message>
    <message>
        <source>Worksheets</source>
        <translation>Rechenblätter</translation>
    </message>
</context>
<context>
    <name>HandOver</name>
    <message>
        <source>The journey needs a day of leaving and a later day of return.</source>
        <translation>Die Reise braucht einen Tag der Abreise und einen späteren Tag der Rückkehr.</translation>
    </message>
    <message>
        <source>Give both days.</source>
        <translation>Beide Tage angeben.</translation>
    </message>
    <message>
        <source>what the helper did, %1</source>
        <translation>was der Helfer getan hat, %1</translation>
    </message>
    <message>
        <source>%1 is not a day of the journey that has passed.</source>
        <translation>%1 ist kein bereits vergangener Tag der Reise.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>It was left out, and nothing says why.</source>
        <translation>Es wurde ausgelassen, und nichts sagt, warum.</translation>
    </message>
    <message>
        <source>A word is enough.</source>
        <translation>Ein Wort genügt.</translation>
    </message>
    <message>
        <source>A test without a number shows nothing.</source>
        <translation>Ein Test ohne Zahl zeigt nichts.</translation>
    </message>
    <message>
        <source>Type what was read, or mark it as left out.</source>
        <translation>Den abgelesenen Wert eintippen oder den Test als ausgelassen kennzeichnen.</translation>
    </message>
    <message>
        <source>journey, %1</source>
        <translation>Reise, %1</translation>
    </message>
    <message>
        <source>journey taken out</source>
        <translation>Reise herausgenommen</translation>
    </message>
    <message>
        <source>No new animals: what they bring shows in the days after, when nobody is there.</source>
        <translation>Keine neuen Tiere: Was sie mitbringen, zeigt sich in den Tagen danach, wenn niemand da ist.</translation>
    </message>
    <message>
        <source>CO₂ and light stay as they are, but for the small cut on the day of leaving.</source>
        <translation>CO₂ und Licht bleiben, wie sie sind, bis auf die kleine Kürzung am Tag der Abreise.</translation>
    </message>
    <message>
        <source>Filters that need it are serviced now and not later: the readings of the days after tell whether it went well.</source>
        <translation>Filter, die es nötig haben, werden jetzt gereinigt und nicht später: Die Messwerte der Tage danach zeigen, ob es gut ging.</translation>
    </message>
    <message>
        <source>Weigh the food out into packets with the date on them. Grown fish in good condition go without for two to five days.</source>
        <translation>Das Futter in Päckchen abwiegen und das Datum darauf schreiben. Ausgewachsene Fische in guter Verfassung kommen zwei bis fünf Tage ohne aus.</translation>
    </message>
    <message>
        <source>Walk through every sheet with the helper at the tanks, mark water lines, valves and switches, and let the air pump run once.</source>
        <translation>Jedes Blatt mit dem Helfer an den Becken durchgehen, Wasserlinien, Ventile und Schalter kennzeichnen und die Luftpumpe einmal laufen lassen.</translation>
    </message>
    <message>
        <source>Shorten the light by an hour.</source>
        <translation>Das Licht um eine Stunde kürzen.</translation>
    </message>
    <message>
        <source>Lower the CO₂ by a tenth, and see that the cylinder lasts well past the return.</source>
        <translation>Das CO₂ um ein Zehntel senken und nachsehen, ob die Flasche deutlich über die Rückkehr hinaus reicht.</translation>
    </message>
    <message>
        <source>Halve the fertiliser of the last dose; nobody doses while you are away.</source>
        <translation>Den Dünger der letzten Dosis halbieren; während der Abwesenheit düngt niemand.</translation>
    </message>
    <message>
        <source>Younger than four weeks: better not left. If it must be, one named person makes exactly the changes of the sheet.</source>
        <translation>Jünger als vier Wochen: besser nicht allein lassen. Wenn es sein muss, macht eine namentlich genannte Person genau die Wasserwechsel des Blatts.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>It is open now.</source>
        <translation>Ist jetzt offen.</translation>
    </message>
    <message>
        <source>It falls on the day of leaving.</source>
        <translation>Fällt auf den Tag der Abreise.</translation>
    </message>
    <message>
        <source>It falls on %1, is no work for a helper and cannot wait.</source>
        <translation>Fällt auf %1, ist keine Arbeit für einen Helfer und kann nicht warten.</translation>
    </message>
    <message>
        <source>It falls on %1. Done now there is time to see that the filter has taken it well.</source>
        <translation>Fällt auf %1. Jetzt erledigt, bleibt Zeit zu sehen, ob der Filter es gut verträgt.</translation>
    </message>
    <message>
        <source>It falls on %1; changed on the day of leaving the tank stands longest without one.</source>
        <translation>Fällt auf %1; am Tag der Abreise gewechselt, steht das Becken am längsten ohne Wasserwechsel.</translation>
    </message>
    <message>
        <source>It cannot wait: overdue from %1.</source>
        <translation>Kann nicht warten: überfällig ab %1.</translation>
    </message>
    <message>
        <source>It may wait until %1.</source>
        <translation>Kann bis %1 warten.</translation>
    </message>
    <message>
        <source>It was not entered for this tank so far; it can wait.</source>
        <translation>Wurde für dieses Becken bisher nicht eingetragen; kann warten.</translation>
    </message>
    <message>
        <source>A round left out gives way to the next one.</source>
        <translation>Eine ausgelassene Runde weicht der nächsten.</translation>
    </message>
    <message>
        <source>No work for a helper and not to be brought forward: %1 on the return.</source>
        <translation>Keine Arbeit für einen Helfer und nicht vorzuziehen: %1 bei der Rückkehr.</translation>
    </message>
    <message>
        <source>%1 out, %1 in.</source>
        <translation>%1 heraus, %1 hinein.</translation>
    </message>
    <message>
        <source>%1 out, %1 of &quot;%2&quot; in.</source>
        <translation>%1 heraus, %1 von „%2“ hinein.</translation>
    </message>
    <message>
        <source>%1 of the water; the litres of this tank are not known, so mark the line on the glass.</source>
        <translation>%1 des Wassers; die Liter dieses Beckens sind nicht bekannt, daher die Linie am Glas kennzeichnen.</translation>
    </message>
    <message>
        <source>To write down: %1.</source>
        <translation>Zu notieren: %1.</translation>
    </message>
    <message>
        <source>%1: in on %2.</source>
        <translation>%1: eingesetzt am %2.</translation>
    </message>
    <message>
        <source>Serviced on %1, too near the journey to see how the filter took it.</source>
        <translation>Gereinigt am %1, zu nah an der Reise, um zu sehen, wie der Filter es vertragen hat.</translation>
    </message>
    <message>
        <source>Changed on %1.</source>
        <translation>Geändert am %1.</translation>
    </message>
    <message>
        <source>Animals: %1.</source>
        <translation>Tiere: %1.</translation>
    </message>
    <message>
        <source>No animals are in it.</source>
        <translation>Es sind keine Tiere darin.</translation>
    </message>
    <message>
        <source>Water between %1 and %2 °C.</source>
        <translation>Wasser zwischen %1 und %2 °C.</translation>
    </message>
    <message>
        <source>Light %1 hours a day, by its timer.</source>
        <translation>Licht %1 Stunden am Tag, über die Zeitschaltuhr.</translation>
    </message>
    <message>
        <source>CO₂ %1 hours a day, by its timer; small bubbles rise while it is on.</source>
        <translation>CO₂ %1 Stunden am Tag, über die Zeitschaltuhr; solange es an ist, steigen kleine Blasen auf.</translation>
    </message>
    <message>
        <source>Look for a minute before anything is touched: the filter runs, the floor is dry, the water stands at its mark, the thermometer shows what it should.</source>
        <translation>Eine Minute hinsehen, bevor etwas angefasst wird: Der Filter läuft, der Boden ist trocken, das Wasser steht an der Marke, das Thermometer zeigt, was es soll.</translation>
    </message>
    <message>
        <source>Animals: are they there, do they breathe calmly, do they come to food?</source>
        <translation>Tiere: Sind sie da, atmen sie ruhig, kommen sie zum Futter?</translation>
    </message>
    <message>
        <source>Feed the packet of the day. No packet, no food.</source>
        <translation>Das Päckchen des Tages füttern. Kein Päckchen, kein Futter.</translation>
    </message>
    <message>
        <source>Feed the packet of the day (%1). No packet, no food.</source>
        <translation>Das Päckchen des Tages füttern (%1). Kein Päckchen, kein Futter.</translation>
    </message>
    <message>
        <source>No food beyond the packets, also when they beg.</source>
        <translation>Kein Futter über die Päckchen hinaus, auch wenn die Tiere betteln.</translation>
    </message>
    <message>
        <source>No fertiliser, no medicine, nothing out of a bottle that this sheet does not name.</source>
        <translation>Kein Dünger, kein Arzneimittel, nichts aus einer Flasche, die dieses Blatt nicht nennt.</translation>
    </message>
    <message>
        <source>Do not open or clean the filter.</source>
        <translation>Den Filter nicht öffnen und nicht reinigen.</translation>
    </message>
    <message>
        <source>No new animals or plants, and none from one tank into another.</source>
        <translation>Keine neuen Tiere oder Pflanzen, und keine aus einem Becken in ein anderes.</translation>
    </message>
    <message>
        <source>Do not turn heater, lamp or timers.</source>
        <translation>Heizer, Lampe und Zeitschaltuhren nicht verstellen.</translation>
    </message>
    <message>
        <source>Do not turn the CO₂ up. Close its valve only where this sheet says so.</source>
        <translation>Das CO₂ nicht aufdrehen. Das Ventil nur schließen, wo dieses Blatt es sagt.</translation>
    </message>
    <message>
        <source>No hand in the water while plugs are in their sockets.</source>
        <translation>Keine Hand ins Wasser, solange Stecker in den Steckdosen sind.</translation>
    </message>
    <message>
        <source>Net, bucket and pad stay with their tank.</source>
        <translation>Kescher, Eimer und Schwamm bleiben bei ihrem Becken.</translation>
    </message>
    <message>
        <source>Nothing out of a tank goes into drains, ponds or streams.</source>
        <translation>Nichts aus einem Becken gelangt in Abfluss, Teich oder Bach.</translation>
    </message>
    <message>
        <source>Count the animals and watch them feed.</source>
        <translation>Die Tiere zählen und ihnen beim Fressen zusehen.</translation>
    </message>
    <message>
        <source>Read ammonia, nitrite, pH and temperature in every tank before the first change.</source>
        <translation>Ammonium, Nitrit, pH und Temperatur in jedem Becken vor dem ersten Wasserwechsel messen.</translation>
    </message>
    <message>
        <source>Look at flow, gas, water lines, hoses and the floor under them.</source>
        <translation>Strömung, Gas, Wasserlinien, Schläuche und den Boden darunter ansehen.</translation>
    </message>
    <message>
        <source>Hold the readings against what was forecast for the days away.</source>
        <translation>Die Messwerte mit dem vergleichen, was für die Tage der Abwesenheit vorhergesagt war.</translation>
    </message>
    <message>
        <source>Type in what the helper did, on the days it was done.</source>
        <translation>Eintippen, was der Helfer getan hat, an den Tagen, an denen es getan wurde.</translation>
    </message>
    <message>
        <source>Bring light, CO₂ and dose back in steps, not on the first evening.</source>
        <translation>Licht, CO₂ und Dosis schrittweise zurückstellen, nicht am ersten Abend.</translation>
    </message>
    <message>
        <source>Call.</source>
        <translation>Anrufen.</translation>
    </message>
    <message>
        <source>Close the valve of the CO₂ cylinder.</source>
        <translation>Das Ventil der CO₂-Flasche schließen.</translation>
    </message>
    <message>
        <source>Switch on the air pump, or lift the outlet until the surface moves.</source>
        <translation>Luftpumpe einschalten oder den Auslauf anheben, bis sich die Oberfläche bewegt.</translation>
    </message>
    <message>
        <source>Fish hang at the surface or breathe fast, shrimp climb to the water line.</source>
        <translation>Fische hängen an der Oberfläche oder atmen schnell, Garnelen klettern zur Wasserlinie.</translation>
    </message>
    <message>
        <source>Water on the floor, or a water line that falls.</source>
        <translation>Wasser auf dem Boden oder ein sinkender Wasserstand.</translation>
    </message>
    <message>
        <source>Touch no wet plug or strip. Cut the power at the board, with dry hands on a dry floor.</source>
        <translation>Keinen nassen Stecker und keine nasse Steckdosenleiste anfassen. Den Strom am Sicherungskasten abschalten, mit trockenen Händen auf trockenem Boden.</translation>
    </message>
    <message>
        <source>Close the valves that are marked on the hoses.</source>
        <translation>Die an den Schläuchen markierten Hähne schließen.</translation>
    </message>
    <message>
        <source>Water or metal tingles.</source>
        <translation>Wasser oder Metall kribbelt.</translation>
    </message>
    <message>
        <source>Hand away, touch nothing more; cut the power at the board.</source>
        <translation>Hand weg, nichts mehr anfassen; den Strom am Sicherungskasten abschalten.</translation>
    </message>
    <message>
        <source>The filter is silent or its outlet stands still.</source>
        <translation>Der Filter ist still, oder sein Auslauf steht.</translation>
    </message>
    <message>
        <source>Switch on the air pump.</source>
        <translation>Luftpumpe einschalten.</translation>
    </message>
    <message>
        <source>After an hour or more do not start it again: what stands in it has gone foul.</source>
        <translation>Nach einer Stunde oder mehr nicht wieder einschalten: Was darin steht, ist faulig geworden.</translation>
    </message>
    <message>
        <source>Battery air pump into the tank with most animals first.</source>
        <translation>Batterie-Luftpumpe zuerst ins Becken mit den meisten Tieren.</translation>
    </message>
    <message>
        <source>No food.</source>
        <translation>Kein Futter.</translation>
    </message>
    <message>
        <source>After an hour: call.</source>
        <translation>Nach einer Stunde: anrufen.</translation>
    </message>
    <message>
        <source>The power is out.</source>
        <translation>Der Strom ist ausgefallen.</translation>
    </message>
    <message>
        <source>The water is over %1 or under %2 °C.</source>
        <translation>Das Wasser hat über %1 oder unter %2 °C.</translation>
    </message>
    <message>
        <source>Add neither ice nor hot water.</source>
        <translation>Weder Eis noch heißes Wasser zugeben.</translation>
    </message>
    <message>
        <source>An animal lies dead, or is missing for two days.</source>
        <translation>Ein Tier liegt tot da oder fehlt seit zwei Tagen.</translation>
    </message>
    <message>
        <source>Take it out with the net of this tank, gloves on; wrap it and keep it cold.</source>
        <translation>Mit dem Kescher dieses Beckens herausnehmen, mit Handschuhen; einwickeln und kühl lagern.</translation>
    </message>
    <message>
        <source>Count the others and take a picture of them.</source>
        <translation>Die anderen zählen und fotografieren.</translation>
    </message>
    <message>
        <source>The water is white, or smells of rot or of bad eggs.</source>
        <translation>Das Wasser ist weiß oder riecht nach Fäulnis oder faulen Eiern.</translation>
    </message>
    <message>
        <source>No food. Switch on the air pump.</source>
        <translation>Kein Futter. Luftpumpe einschalten.</translation>
    </message>
    <message>
        <source>Take a picture.</source>
        <translation>Ein Foto machen.</translation>
    </message>
    <message>
        <source>The gas alarm sounds, or you feel dizzy in the room.</source>
        <translation>Der Gasalarm ertönt, oder im Raum wird einem schwindelig.</translation>
    </message>
    <message>
        <source>Go out at once and leave the door open; nobody goes in after you without air.</source>
        <translation>Sofort hinausgehen und die Tür offen lassen; niemand geht ohne Atemluft hinterher.</translation>
    </message>
    <message>
        <source>Call the emergency number of the place, then the keeper.</source>
        <translation>Den örtlichen Notruf wählen, dann die Halterin oder den Halter anrufen.</translation>
    </message>
    <message>
        <source>Call %1.</source>
        <translation>%1 anrufen.</translation>
    </message>
    <message>
        <source>No number has been entered.</source>
        <translation>Es ist keine Nummer eingetragen.</translation>
    </message>
    <message>
        <source>Sick animals are for a veterinarian or a fish-health professional: no medicine before their word.</source>
        <translation>Kranke Tiere gehören in tierärztliche oder fischgesundheitlich fachkundige Hände: vorher keine Medikamente.</translation>
    </message>
    <message>
        <source>Common practice, to be judged by the keeper.</source>
        <translation>Gängige Praxis, von der Halterin oder dem Halter abzuwägen.</translation>
    </message>
    <message>
        <source>Where a label, a local rule or somebody licensed for the work says otherwise, that counts and not this sheet.</source>
        <translation>Wo ein Etikett, eine örtliche Vorschrift oder eine für die Arbeit zugelassene Person etwas anderes sagt, gilt das und nicht dieses Blatt.</translation>
    </message>
</context>
<context>
    <name>Import</name>
    <message>
        <source>There is no such file.</source>
        <translation>Eine solche Datei gibt es nicht.</translation>
    </message>
    <message>
        <source>It cannot be read: %1.</source>
        <translation>Sie kann nicht gelesen werden: %1.</translation>
    </message>
    <message>
        <source>It is too large to be a record of tanks.</source>
        <translation>Sie ist zu groß, um ein Beckenjournal zu sein.</translation>
    </message>
    <message>
        <source>import</source>
        <translation>einlesen</translation>
    </message>
    <message>
        <source>There is no tank &quot;%1&quot; here; the media transfer with it is kept without it.</source>
        <translation>Hier gibt es kein Becken „%1“; der Umzug von Filtermaterial bleibt ohne es.</translation>
    </message>
    <message>
        <source>%1, name</source>
        <translation>%1, Name</translation>
    </message>
    <message>
        <source>There is a tank &quot;%1&quot; already.</source>
        <translation>Ein Becken „%1“ gibt es schon.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>This is a tank file, not a table.</source>
        <translation>Das ist eine Beckendatei, keine Tabelle.</translation>
    </message>
    <message>
        <source>%1, row 1</source>
        <translation>%1, Zeile 1</translation>
    </message>
    <message>
        <source>There is no column &quot;%1&quot;.</source>
        <translation>Es gibt keine Spalte &quot;%1&quot;.</translation>
    </message>
    <message>
        <source>%1, row %2</source>
        <translation>%1, Zeile %2</translation>
    </message>
    <message>
        <source>A journey needs a day of leaving and a later day of return, as 2026-12-23.</source>
        <translation>Eine Reise braucht einen Abreisetag und einen späteren Rückkehrtag, etwa 2026-12-23.</translation>
    </message>
    <message>
        <source>Its version is not 1.</source>
        <translation>Die Version ist nicht 1.</translation>
    </message>
    <message>
        <source>There is no such key: &quot;%1&quot;.</source>
        <translation>Einen solchen Schlüssel gibt es nicht: &quot;%1&quot;.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is empty.</source>
        <translation>&quot;%1&quot; ist leer.</translation>
    </message>
    <message>
        <source>A template has no key.</source>
        <translation>Eine Vorlage hat keinen Schlüssel.</translation>
    </message>
</context>
<context>
    <name>Lane</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 %2 %3, %4</source>
        <translation>%1 %2 %3, %4</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Free ammonia</source>
        <translation>Freies Ammoniak</translation>
    </message>
    <message>
        <source>new media</source>
        <translation>neues Filtermaterial</translation>
    </message>
    <message>
        <source>mature media</source>
        <translation>reifes Filtermaterial</translation>
    </message>
    <message>
        <source>bottled starter</source>
        <translation>Starterbakterien</translation>
    </message>
    <message>
        <source>dry start</source>
        <translation>Trockenstart</translation>
    </message>
    <message>
        <source>dark start</source>
        <translation>Dunkelstart</translation>
    </message>
    <message>
        <source>ammonia-rich soil</source>
        <translation>ammoniumreicher Soil</translation>
    </message>
    <message>
        <source>mild soil</source>
        <translation>milder Soil</translation>
    </message>
    <message>
        <source>spent soil</source>
        <translation>verbrauchter Soil</translation>
    </message>
    <message>
        <source>inert bed</source>
        <translation>inerter Bodengrund</translation>
    </message>
    <message>
        <source>litres not known</source>
        <translation>Liter unbekannt</translation>
    </message>
    <message>
        <source>earlier layout</source>
        <translation>früheres Layout</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Flooded %1, %2</source>
        <translation>Geflutet %1, %2</translation>
    </message>
    <message>
        <source>Ran %1</source>
        <translation>Lief %1</translation>
    </message>
    <message>
        <source>%1, %2 d over</source>
        <translation>%1, %2 T über</translation>
    </message>
    <message>
        <source>%1, today</source>
        <translation>%1, heute</translation>
    </message>
    <message>
        <source>Cycle complete</source>
        <translation>Einfahrphase abgeschlossen</translation>
    </message>
    <message>
        <source>cycling, forecast</source>
        <translation>fährt ein, Vorhersage</translation>
    </message>
    <message>
        <source>complete, forecast</source>
        <translation>abgeschlossen, Vorhersage</translation>
    </message>
    <message>
        <source>Not fitted: the readings contradict the model, so the wide range without them is shown.</source>
        <translation>Nicht angepasst: Die Messwerte widersprechen dem Modell, also steht der weite Bereich ohne sie da.</translation>
    </message>
    <message>
        <source>Forecast of %1</source>
        <translation>Vorhersage vom %1</translation>
    </message>
    <message>
        <source>Forecast of %1, a new one is running</source>
        <translation>Vorhersage von %1, eine neue läuft</translation>
    </message>
    <message>
        <source>The first forecast is running</source>
        <translation>Die erste Vorhersage läuft</translation>
    </message>
</context>
<context>
    <name>LaneAccess</name>
    <message>
        <source>Work due</source>
        <translation>Fällige Arbeit</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Einträge</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Alerts and gates</source>
        <translation>Warnungen und Freigaben</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a row of a lane and the tank</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>tank; litres and age</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>tank; an entry, reading, alert or gate</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2, due today</source>
        <comment>tank, work</comment>
        <translation>%1, %2, heute fällig</translation>
    </message>
    <message>
        <source>%1, %2, due %3</source>
        <comment>tank, work, day</comment>
        <translation>%1, %2, fällig %3</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>form of a date</comment>
        <translation>d. MMMM</translation>
    </message>
    <message numerus="yes">
        <source>%1, %2, overdue %n day(s), due %3</source>
        <comment>tank, work, day</comment>
        <translation>
            <numerusform>%1, %2, seit %n Tag überfällig, fällig %3</numerusform>
            <numerusform>%1, %2, seit %n Tagen überfällig, fällig %3</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LaneChart</name>
    <message>
        <source>No readings yet</source>
        <translation>Noch keine Messwerte</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>tick value and unit</comment>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>LaneChips</name>
    <message>
        <source>×%1</source>
        <comment>several chips of one kind of work folded into one</comment>
        <translation>×%1</translation>
    </message>
    <message>
        <source>%1 due</source>
        <comment>several chips folded into one</comment>
        <translation>%1 fällig</translation>
    </message>
    <message>
        <source>%1 over</source>
        <comment>overdue chips folded into one</comment>
        <translation>%1 über</translation>
    </message>
    <message>
        <source>+%1</source>
        <comment>further overdue work, folded</comment>
        <translation>+%1</translation>
    </message>
    <message>
        <source>%1, today</source>
        <comment>work on a chip</comment>
        <translation>%1, heute</translation>
    </message>
</context>
<context>
    <name>LanePainter</name>
    <message>
        <source>day %1</source>
        <translation>Tag %1</translation>
    </message>
</context>
<context>
    <name>LaneRows</name>
    <message>
        <source>%1 (+%2 more)</source>
        <comment>an alert, and how many others</comment>
        <translation>%1 (+%2 weitere)</translation>
    </message>
</context>
<context>
    <name>Layout</name>
    <message>
        <source>layout %1</source>
        <translation>Layout %1</translation>
    </message>
</context>
<context>
    <name>Limits</name>
    <message>
        <source>%1, field &quot;%2&quot;</source>
        <translation>%1, Feld &quot;%2&quot;</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>gängige Praxis</translation>
    </message>
    <message>
        <source>Free ammonia with animals</source>
        <translation>Freies Ammoniak mit Tieren</translation>
    </message>
    <message>
        <source>From here on a water change is asked for at once.</source>
        <translation>Ab hier wird sofort ein Wasserwechsel verlangt.</translation>
    </message>
    <message>
        <source>trade limit; UF/IFAS FA16 puts harm above 0.05 mg/L</source>
        <translation>Grenze der Praxis; UF/IFAS FA16 sieht Schäden ab über 0,05 mg/L</translation>
    </message>
    <message>
        <source>Nitrite with animals</source>
        <translation>Nitrit mit Tieren</translation>
    </message>
    <message>
        <source>SRAC 462</source>
        <translation>SRAC 462</translation>
    </message>
    <message>
        <source>Nitrite with animals, water poor in chloride</source>
        <translation>Nitrit mit Tieren, chloridarmes Wasser</translation>
    </message>
    <message>
        <source>Takes the place of the other where chloride is low.</source>
        <translation>Tritt bei wenig Chlorid an die Stelle der anderen Grenze.</translation>
    </message>
    <message>
        <source>MSD/Merck Veterinary Manual, table of environmental diseases</source>
        <translation>MSD/Merck Veterinary Manual, Tabelle der umweltbedingten Krankheiten</translation>
    </message>
    <message>
        <source>Water poor in chloride</source>
        <translation>Chloridarmes Wasser</translation>
    </message>
    <message>
        <source>Below it the stricter limit for nitrite counts.</source>
        <translation>Darunter gilt die strengere Grenze für Nitrit.</translation>
    </message>
    <message>
        <source>highest band of the British Columbia guideline, from memory</source>
        <translation>höchste Stufe der Richtlinie von British Columbia, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Total ammonia without animals</source>
        <translation>Gesamtammonium ohne Tiere</translation>
    </message>
    <message>
        <source>From here on a large water change is asked for, for the plants&apos; sake.</source>
        <translation>Ab hier wird ein großer Wasserwechsel verlangt, den Pflanzen zuliebe.</translation>
    </message>
    <message>
        <source>judgement after Cao et al. 2007; stem plants bear more</source>
        <translation>Abwägung nach Cao et al. 2007; Stängelpflanzen vertragen mehr</translation>
    </message>
    <message>
        <source>Free ammonia that slows the filter</source>
        <translation>Freies Ammoniak, das den Filter bremst</translation>
    </message>
    <message>
        <source>From here on a change is asked for while a tank cycles.</source>
        <translation>Ab hier wird während der Einfahrphase ein Wechsel verlangt.</translation>
    </message>
    <message>
        <source>common practice; nitrite oxidisers are held back first</source>
        <translation>gängige Praxis; Nitritoxidierer werden zuerst gehemmt</translation>
    </message>
    <message>
        <source>Nitrite while a tank cycles without animals</source>
        <translation>Nitrit in der Einfahrphase ohne Tiere</translation>
    </message>
    <message>
        <source>Above it the lane says so.</source>
        <translation>Darüber meldet es die Bahn.</translation>
    </message>
    <message>
        <source>judgement</source>
        <translation>Abwägung</translation>
    </message>
    <message>
        <source>Nitrate with animals</source>
        <translation>Nitrat mit Tieren</translation>
    </message>
    <message>
        <source>Above it a water change is asked for.</source>
        <translation>Darüber wird ein Wasserwechsel verlangt.</translation>
    </message>
    <message>
        <source>trade limit over source water; common practice</source>
        <translation>Grenze der Praxis über dem Ausgangswasser; gängige Praxis</translation>
    </message>
    <message>
        <source>Nitrate in any tank</source>
        <translation>Nitrat in jedem Becken</translation>
    </message>
    <message>
        <source>Above it a water change is asked for, animals or not.</source>
        <translation>Darüber wird ein Wasserwechsel verlangt, mit oder ohne Tiere.</translation>
    </message>
    <message>
        <source>Where a change for nitrate aims</source>
        <translation>Zielwert eines Wechsels wegen Nitrat</translation>
    </message>
    <message>
        <source>Used where the tank has no target band of its own.</source>
        <translation>Gilt, wo das Becken keinen eigenen Zielbereich hat.</translation>
    </message>
    <message>
        <source>Hardness above the target band</source>
        <translation>Härte über dem Zielbereich</translation>
    </message>
    <message>
        <source>With hardening rock, more changes are asked for above it.</source>
        <translation>Bei aufhärtendem Gestein werden darüber mehr Wechsel verlangt.</translation>
    </message>
    <message>
        <source>Total ammonia that counts as clear</source>
        <translation>Gesamtammonium, das als klar gilt</translation>
    </message>
    <message>
        <source>Tells the phases of a cycle; with animals the lane says so above it.</source>
        <translation>Unterscheidet die Abschnitte der Einfahrphase; mit Tieren meldet es die Bahn darüber.</translation>
    </message>
    <message>
        <source>Nitrite that counts as clear</source>
        <translation>Nitrit, das als klar gilt</translation>
    </message>
    <message>
        <source>Tells the phases of a cycle.</source>
        <translation>Unterscheidet die Abschnitte der Einfahrphase.</translation>
    </message>
    <message>
        <source>Carbon dioxide with animals</source>
        <translation>Kohlendioxid mit Tieren</translation>
    </message>
    <message>
        <source>Above it the lane says so, and no animal goes in.</source>
        <translation>Darüber meldet es die Bahn, und kein Tier zieht ein.</translation>
    </message>
    <message>
        <source>common practice; fish medicine texts aim below 20, toxic above 40</source>
        <translation>gängige Praxis; Texte zur Fischmedizin zielen auf unter 20, giftig über 40</translation>
    </message>
    <message>
        <source>Warm</source>
        <translation>Warm</translation>
    </message>
    <message>
        <source>Above it gates stay shut and the lane says so.</source>
        <translation>Darüber bleiben Freigaben geschlossen, und die Bahn meldet es.</translation>
    </message>
    <message>
        <source>Cool</source>
        <translation>Kühl</translation>
    </message>
    <message>
        <source>Below it gates stay shut and the lane says so.</source>
        <translation>Darunter bleiben Freigaben geschlossen, und die Bahn meldet es.</translation>
    </message>
    <message>
        <source>Low carbonate hardness</source>
        <translation>Niedrige Karbonathärte</translation>
    </message>
    <message>
        <source>Below it the lane says so: pH may fall and nitrification stall.</source>
        <translation>Darunter meldet es die Bahn: Der pH-Wert kann fallen und die Nitrifikation stocken.</translation>
    </message>
    <message>
        <source>your own limit: %1</source>
        <translation>eigene Grenze: %1</translation>
    </message>
    <message>
        <source>There is no limit &quot;%1&quot;.</source>
        <translation>Es gibt keine Grenze &quot;%1&quot;.</translation>
    </message>
    <message>
        <source>Take one of those the guide lists.</source>
        <translation>Eine der im Leitfaden aufgeführten nehmen.</translation>
    </message>
    <message>
        <source>This limit is published and not the keeper&apos;s to set.</source>
        <translation>Diese Grenze ist veröffentlicht und nicht frei einstellbar.</translation>
    </message>
    <message>
        <source>Set a stricter gate or a target band instead.</source>
        <translation>Stattdessen eine strengere Freigabe oder einen Zielbereich festlegen.</translation>
    </message>
    <message>
        <source>There is no such field.</source>
        <translation>Ein solches Feld gibt es nicht.</translation>
    </message>
    <message>
        <source>Known are: id, value, source.</source>
        <translation>Bekannt sind: id, value, source.</translation>
    </message>
    <message>
        <source>A number from %1 to %2 %3 is missing here.</source>
        <translation>Hier fehlt eine Zahl von %1 bis %2 %3.</translation>
    </message>
    <message>
        <source>Write it without quotation marks, with a decimal point.</source>
        <translation>Ohne Anführungszeichen und mit Dezimalpunkt schreiben.</translation>
    </message>
    <message>
        <source>It is not said where the figure comes from.</source>
        <translation>Es fehlt die Angabe, woher die Zahl stammt.</translation>
    </message>
    <message>
        <source>Name a publication, or write that it is your own experience.</source>
        <translation>Eine Veröffentlichung nennen oder schreiben, dass es eigene Erfahrung ist.</translation>
    </message>
    <message>
        <source>It lies above the limit for warm water.</source>
        <translation>Sie liegt über der Grenze für warmes Wasser.</translation>
    </message>
    <message>
        <source>Set one of the two so that they leave a range between them.</source>
        <translation>Eine der beiden so setzen, dass ein Bereich dazwischen bleibt.</translation>
    </message>
</context>
<context>
    <name>Numbers</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Free ammonia</source>
        <translation>Freies Ammoniak</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <source>every day</source>
        <translation>jeden Tag</translation>
    </message>
    <message>
        <source>twice a week</source>
        <translation>zweimal die Woche</translation>
    </message>
    <message>
        <source>every %1 days</source>
        <translation>alle %1 Tage</translation>
    </message>
    <message>
        <source>less than 1 in 100</source>
        <translation>weniger als 1 von 100</translation>
    </message>
    <message>
        <source>more than 99 in 100</source>
        <translation>mehr als 99 von 100</translation>
    </message>
    <message>
        <source>1 in %1</source>
        <translation>1 von %1</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 in 10</source>
        <translation>%1 von 10</translation>
    </message>
    <message>
        <source>mg/L as ion</source>
        <translation>mg/L als Ion</translation>
    </message>
    <message>
        <source>mg/L as N</source>
        <translation>mg/L als N</translation>
    </message>
    <message>
        <source>ppm</source>
        <translation>ppm</translation>
    </message>
    <message>
        <source>dKH, dGH</source>
        <translation>dKH, dGH</translation>
    </message>
    <message>
        <source>meq/L, mmol/L</source>
        <translation>meq/L, mmol/L</translation>
    </message>
    <message>
        <source>ppm CaCO₃</source>
        <translation>ppm CaCO₃</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>Liter</translation>
    </message>
    <message>
        <source>US gallons</source>
        <translation>US-Gallonen</translation>
    </message>
    <message>
        <source>%1 · %2 · %3 · %4 · %5</source>
        <translation>%1 · %2 · %3 · %4 · %5</translation>
    </message>
    <message>
        <source>d MMM</source>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>ppm N</source>
        <translation>ppm N</translation>
    </message>
    <message>
        <source>mg/L N</source>
        <translation>mg/L N</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <translation>ddd d. MMM</translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <translation>ddd d. MMM yyyy</translation>
    </message>
    <message>
        <source>d</source>
        <translation>d.</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) over</source>
        <translation>
            <numerusform>%n Tag über</numerusform>
            <numerusform>%n Tage über</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Paper</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>• %1</source>
        <translation>• %1</translation>
    </message>
    <message>
        <source>The PDF could not be written.</source>
        <translation>Das PDF ließ sich nicht schreiben.</translation>
    </message>
    <message>
        <source>Choose a folder that may be written to.</source>
        <translation>Einen Ordner wählen, in den geschrieben werden darf.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>PaperOut</name>
    <message>
        <source>%1: sent to the printer.</source>
        <translation>%1: an den Drucker geschickt.</translation>
    </message>
    <message>
        <source>The printer did not take the pages.</source>
        <translation>Der Drucker hat die Seiten nicht angenommen.</translation>
    </message>
    <message>
        <source>Look at the printer, or print to a PDF file.</source>
        <translation>Den Drucker prüfen oder in eine PDF-Datei drucken.</translation>
    </message>
    <message>
        <source>Print to a PDF file</source>
        <translation>In eine PDF-Datei drucken</translation>
    </message>
    <message>
        <source>Printed to %1</source>
        <translation>Gedruckt nach %1</translation>
    </message>
</context>
<context>
    <name>Parameter</name>
    <message>
        <source>Total ammonia</source>
        <translation>Gesamtammonium</translation>
    </message>
    <message>
        <source>Nitrite</source>
        <translation>Nitrit</translation>
    </message>
    <message>
        <source>Nitrate</source>
        <translation>Nitrat</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>Carbonate hardness (alkalinity)</source>
        <translation>Karbonathärte (Säurebindung)</translation>
    </message>
    <message>
        <source>General hardness</source>
        <translation>Gesamthärte</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Conductivity at 25 °C</source>
        <translation>Leitwert bei 25 °C</translation>
    </message>
    <message>
        <source>Dissolved solids</source>
        <translation>Gelöste Stoffe</translation>
    </message>
    <message>
        <source>Phosphate</source>
        <translation>Phosphat</translation>
    </message>
    <message>
        <source>Potassium</source>
        <translation>Kalium</translation>
    </message>
    <message>
        <source>Calcium</source>
        <translation>Calcium</translation>
    </message>
    <message>
        <source>Magnesium</source>
        <translation>Magnesium</translation>
    </message>
    <message>
        <source>Iron</source>
        <translation>Eisen</translation>
    </message>
    <message>
        <source>Chloride</source>
        <translation>Chlorid</translation>
    </message>
    <message>
        <source>Copper</source>
        <translation>Kupfer</translation>
    </message>
    <message>
        <source>Carbon dioxide</source>
        <translation>Kohlendioxid</translation>
    </message>
    <message>
        <source>Dissolved oxygen</source>
        <translation>Gelöster Sauerstoff</translation>
    </message>
    <message>
        <source>Light at the bed</source>
        <translation>Licht am Bodengrund</translation>
    </message>
    <message>
        <source>Filter flow</source>
        <translation>Filterdurchfluss</translation>
    </message>
    <message>
        <source>CO₂ cylinder weight</source>
        <translation>Gewicht der CO₂-Flasche</translation>
    </message>
</context>
<context>
    <name>Photo</name>
    <message>
        <source>The picture could not be read: %1.</source>
        <translation>Das Bild konnte nicht gelesen werden: %1.</translation>
    </message>
    <message>
        <source>Choose a JPEG or PNG file.</source>
        <translation>Wähle eine JPEG- oder PNG-Datei.</translation>
    </message>
    <message>
        <source>it is too large</source>
        <translation>es ist zu groß</translation>
    </message>
    <message>
        <source>it could not be written as JPEG</source>
        <translation>es ließ sich nicht als JPEG schreiben</translation>
    </message>
</context>
<context>
    <name>Plans</name>
    <message>
        <source>That layout is not in the store any more.</source>
        <translation>Dieses Layout ist nicht mehr in der Datei.</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 am Tag</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>over %1 %2</source>
        <translation>über %1 %2</translation>
    </message>
    <message>
        <source>%1–%2 %3</source>
        <translation>%1–%2 %3</translation>
    </message>
    <message>
        <source>Soil of this kind releases %1 times the usual nitrogen, as seen in %2; 8 in 10 within a factor of %3, without them %4.</source>
        <translation>Soil dieser Art gibt das %1-Fache des üblichen Stickstoffs ab, wie in %2 gesehen; 8 von 10 innerhalb eines Faktors von %3, ohne sie %4.</translation>
    </message>
    <message>
        <source>Soil of this kind releases its nitrogen %1 times as fast as usual, as seen in %2; 8 in 10 within a factor of %3, without them %4.</source>
        <translation>Soil dieser Art gibt seinen Stickstoff %1-mal so schnell ab wie üblich, wie in %2 gesehen; 8 von 10 innerhalb eines Faktors von %3, ohne sie %4.</translation>
    </message>
    <message>
        <source>Soil of this kind takes up alkalinity %1 times as fast as usual, as seen in %2; 8 in 10 within a factor of %3, without them %4.</source>
        <translation>Soil dieser Art nimmt Karbonathärte %1-mal so schnell auf wie üblich, wie in %2 gesehen; 8 von 10 innerhalb eines Faktors von %3, ohne sie %4.</translation>
    </message>
    <message>
        <source>The source water holds %1 times the nitrate that was taken, as seen in %2; 8 in 10 within a factor of %3, without them %4.</source>
        <translation>Das Ausgangswasser enthält das %1-Fache des angenommenen Nitrats, wie in %2 gesehen; 8 von 10 innerhalb eines Faktors von %3, ohne sie %4.</translation>
    </message>
    <message>
        <source>The source water holds %1 times the ammonia that was taken, as seen in %2; 8 in 10 within a factor of %3, without them %4.</source>
        <translation>Das Ausgangswasser enthält das %1-Fache des angenommenen Ammoniums, wie in %2 gesehen; 8 von 10 innerhalb eines Faktors von %3, ohne sie %4.</translation>
    </message>
    <message>
        <source>Moved media brings %1 times the usual bacteria, as seen in %2; 8 in 10 within a factor of %3, without them %4.</source>
        <translation>Umgezogenes Filtermaterial bringt das %1-Fache der üblichen Bakterien mit, wie in %2 gesehen; 8 von 10 innerhalb eines Faktors von %3, ohne sie %4.</translation>
    </message>
    <message>
        <source>Water changes come out at %1 times their usual share of what is written down, as seen in %2; 8 in 10 within a factor of %3, without them %4.</source>
        <translation>Wasserwechsel erreichen das %1-Fache ihres üblichen Anteils am Aufgeschriebenen, wie in %2 gesehen; 8 von 10 innerhalb eines Faktors von %3, ohne sie %4.</translation>
    </message>
    <message>
        <source>An ammonia test on %1 would narrow the range from %2 to about %3.</source>
        <translation>Ein Ammoniumtest am %1 würde den Bereich von %2 auf etwa %3 einengen.</translation>
    </message>
    <message>
        <source>A nitrite test on %1 would narrow the range from %2 to about %3.</source>
        <translation>Ein Nitrittest am %1 würde den Bereich von %2 auf etwa %3 einengen.</translation>
    </message>
    <message>
        <source>A nitrate test on %1 would narrow the range from %2 to about %3.</source>
        <translation>Ein Nitrattest am %1 würde den Bereich von %2 auf etwa %3 einengen.</translation>
    </message>
    <message>
        <source>no change</source>
        <translation>kein Wechsel</translation>
    </message>
    <message>
        <source>%1 daily</source>
        <translation>%1 täglich</translation>
    </message>
    <message>
        <source>%1 every %2 hours</source>
        <translation>%1 alle %2 Stunden</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 aus %2</translation>
    </message>
    <message>
        <source>%1, half from %2</source>
        <translation>%1, halb ab %2</translation>
    </message>
    <message>
        <source>as planned now</source>
        <translation>wie jetzt geplant</translation>
    </message>
    <message>
        <source>Plan adopted: %1, %2</source>
        <translation>Plan übernommen: %1, %2</translation>
    </message>
    <message>
        <source>No water is changed until the gate opens.</source>
        <translation>Bis zur Freigabe wird kein Wasser gewechselt.</translation>
    </message>
    <message>
        <source>Nitrite above %1 for about %2 hours of %3, free ammonia above %4 for about %5.</source>
        <translation>Nitrit über %1 für etwa %2 Stunden von %3, freies Ammoniak über %4 für etwa %5.</translation>
    </message>
    <message>
        <source>Nitrite above %1 at some time in %2: %3.</source>
        <translation>Nitrit irgendwann über %1 in %2: %3.</translation>
    </message>
    <message>
        <source>None of these plans keeps the odds of nitrite above %1 under %2.</source>
        <translation>Keiner dieser Pläne hält die Chance auf Nitrit über %1 unter %2.</translation>
    </message>
    <message>
        <source>The least water that keeps the odds of nitrite above %1 under %2: %3.</source>
        <translation>Das wenigste Wasser, das die Chance auf Nitrit über %1 unter %2 hält: %3.</translation>
    </message>
    <message>
        <source>Heavy changes clear readings by dilution; whether the filter has grown is told apart.</source>
        <translation>Starke Wechsel klären die Messwerte durch Verdünnung; ob der Filter gewachsen ist, steht getrennt davon.</translation>
    </message>
    <message>
        <source>Readings clear for %1</source>
        <translation>Messwerte klar für %1</translation>
    </message>
    <message>
        <source>Filter carries %1</source>
        <translation>Filter trägt %1</translation>
    </message>
    <message>
        <source>No load is given or planned, so whether the filter would carry it cannot be told.</source>
        <translation>Eine Belastung ist weder angegeben noch geplant, also lässt sich nicht sagen, ob der Filter sie trüge.</translation>
    </message>
    <message>
        <source>On the day the readings are clear, the filter carries %1: %2.</source>
        <translation>An dem Tag, an dem die Messwerte klar sind, trägt der Filter %1: %2.</translation>
    </message>
    <message>
        <source>The filter could take %1 to %2 a day now, 8 in 10.</source>
        <translation>Der Filter schafft jetzt %1 bis %2 am Tag, 8 von 10.</translation>
    </message>
    <message>
        <source>The filter is held against the load that was given, %1.</source>
        <translation>Der Filter wird an die angegebene Belastung gehalten, %1.</translation>
    </message>
    <message>
        <source>The filter is held against %1: from feeding %2, from the animals %3, from those planned %4.</source>
        <translation>Der Filter wird an %1 gehalten: aus dem Futter %2, von den Tieren %3, von den geplanten %4.</translation>
    </message>
    <message>
        <source>If it reads %1 (%2), the date lies beyond the days reckoned.</source>
        <translation>Wenn er %1 zeigt (%2), liegt das Datum jenseits der gerechneten Tage.</translation>
    </message>
    <message>
        <source>If it reads %1 (%2), from %3 at the earliest.</source>
        <translation>Wenn er %1 zeigt (%2), frühestens ab %3.</translation>
    </message>
    <message>
        <source>If it reads %1 (%2): %3.</source>
        <translation>Wenn er %1 zeigt (%2): %3.</translation>
    </message>
    <message>
        <source>No test of the coming week is expected to narrow the range by half a day or more.</source>
        <translation>Von keinem Test der kommenden Woche ist zu erwarten, dass er den Bereich um einen halben Tag oder mehr einengt.</translation>
    </message>
    <message>
        <source>No reading has come in yet against a kept forecast.</source>
        <translation>Noch kein Messwert kam zu einer aufbewahrten Vorhersage herein.</translation>
    </message>
    <message>
        <source>Of 1 reading, the %1-in-10 band held it.</source>
        <translation>Von 1 Messwert: Das %1-von-10-Band enthielt ihn.</translation>
    </message>
    <message>
        <source>Of 1 reading, the %1-in-10 band did not hold it.</source>
        <translation>Von 1 Messwert: Das %1-von-10-Band enthielt ihn nicht.</translation>
    </message>
    <message>
        <source>Of %1 readings, the %2-in-10 bands held %3 (%4 in 100).</source>
        <translation>Von %1 Messwerten enthielten die %2-von-10-Bänder %3 (%4 von 100).</translation>
    </message>
    <message>
        <source>The middles of the bands were %1 times as far off as the last reading before each forecast.</source>
        <translation>Die Mitten der Bänder lagen %1-mal so weit daneben wie der letzte Messwert vor jeder Vorhersage.</translation>
    </message>
    <message>
        <source>No forecast date has come about yet.</source>
        <translation>Noch kein vorhergesagtes Datum ist eingetreten.</translation>
    </message>
    <message>
        <source>Of 1 date that has come about, the 8-in-10 range held it.</source>
        <translation>Von 1 eingetretenen Datum: Der 8-von-10-Bereich enthielt es.</translation>
    </message>
    <message>
        <source>Of 1 date that has come about, the 8-in-10 range did not hold it.</source>
        <translation>Von 1 eingetretenen Datum: Der 8-von-10-Bereich enthielt es nicht.</translation>
    </message>
    <message>
        <source>Of %1 dates that have come about, the 8-in-10 ranges held %2.</source>
        <translation>Von %1 eingetretenen Daten enthielten die 8-von-10-Bereiche %2.</translation>
    </message>
    <message>
        <source>Earlier bands were too narrow; to have held what they said they would have had to be %1 times as wide.</source>
        <translation>Frühere Bänder waren zu schmal; um zu halten, was sie sagten, hätten sie %1-mal so breit sein müssen.</translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) until the gate opens.</source>
        <translation>
            <numerusform>%n Wechsel bis zur Freigabe.</numerusform>
            <numerusform>%n Wechsel bis zur Freigabe.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n change(s), %1 of new water until the gate opens.</source>
        <translation>
            <numerusform>%n Wechsel, %1 neues Wasser bis zur Freigabe.</numerusform>
            <numerusform>%n Wechsel, %1 neues Wasser bis zur Freigabe.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tagen</numerusform>
        </translation>
    </message>
    <message>
        <source>Of 1 date of %1 that has come about, the 8-in-10 range held it.</source>
        <translation>1 eingetretener Termin für %1: Er lag im 8-von-10-Bereich.</translation>
    </message>
    <message>
        <source>Of 1 date of %1 that has come about, the 8-in-10 range did not hold it.</source>
        <translation>1 eingetretener Termin für %1: Er lag nicht im 8-von-10-Bereich.</translation>
    </message>
    <message>
        <source>Of %1 dates of %2 that have come about, the 8-in-10 ranges held %3.</source>
        <translation>Von %1 eingetretenen Terminen für %2 lagen %3 im 8-von-10-Bereich.</translation>
    </message>
</context>
<context>
    <name>Reading</name>
    <message>
        <source>&quot;%1&quot; is not a reading.</source>
        <translation>„%1“ ist kein Messwert.</translation>
    </message>
    <message>
        <source>Type a number such as 0.25, &lt;0.05 below the lowest step, &gt;8 above the highest, or 5-10 between two steps.</source>
        <translation>Tippe eine Zahl wie 0.25, &lt;0.05 unter der niedrigsten Stufe, &gt;8 über der höchsten, oder 5-10 zwischen zwei Stufen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in two ways.</source>
        <translation>„%1“ lässt sich auf zwei Arten lesen.</translation>
    </message>
    <message>
        <source>Write thousands without a mark, or the decimal mark as a point.</source>
        <translation>Schreib Tausender ohne Zeichen, oder das Dezimalzeichen als Punkt.</translation>
    </message>
    <message>
        <source>There is no parameter &quot;%1&quot;.</source>
        <translation>Es gibt keinen Parameter „%1“.</translation>
    </message>
    <message>
        <source>%1 cannot be given in &quot;%2&quot;.</source>
        <translation>%1 kann nicht in „%2“ angegeben werden.</translation>
    </message>
    <message>
        <source>Units it takes: %1.</source>
        <translation>Mögliche Einheiten: %1.</translation>
    </message>
    <message>
        <source>%1 %2 %3 is outside what this parameter can be.</source>
        <translation>%1 %2 %3 liegt außerhalb dessen, was dieser Parameter sein kann.</translation>
    </message>
    <message>
        <source>Look at the decimal mark and the unit; it goes from %1 to %2 %3.</source>
        <translation>Sieh auf das Dezimalzeichen und die Einheit; er geht von %1 bis %2 %3.</translation>
    </message>
</context>
<context>
    <name>Regimen</name>
    <message>
        <source>The dose has no name yet: what is dosed?</source>
        <translation>Die Dosis hat noch keinen Namen: Was wird dosiert?</translation>
    </message>
    <message>
        <source>The amount of one dose is not stated.</source>
        <translation>Die Menge einer Dosis ist nicht angegeben.</translation>
    </message>
    <message>
        <source>What is dosed holds nothing yet: choose a salt, say how strong the stock is, or type the label&apos;s mg in a mL.</source>
        <translation>Das Dosierte enthält noch nichts: ein Salz wählen, die Stärke der Stammlösung angeben oder die mg je mL vom Etikett eintippen.</translation>
    </message>
    <message>
        <source>No days are chosen: give days between doses, or weekdays.</source>
        <translation>Es sind keine Tage gewählt: Tage zwischen den Dosen oder Wochentage angeben.</translation>
    </message>
    <message>
        <source>The day from which it is dosed is not stated.</source>
        <translation>Der Tag, ab dem dosiert wird, ist nicht angegeben.</translation>
    </message>
    <message>
        <source>Its last day lies before its first.</source>
        <translation>Der letzte Tag liegt vor dem ersten.</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>There is no tank &quot;%1&quot;.</source>
        <translation>Es gibt kein Becken &quot;%1&quot;.</translation>
    </message>
    <message>
        <source>There are: %1.</source>
        <translation>Vorhanden sind: %1.</translation>
    </message>
    <message>
        <source>%1 has no layout to review.</source>
        <translation>%1 hat keine Einrichtung für einen Rückblick.</translation>
    </message>
    <message>
        <source>There is no report &quot;%1&quot;.</source>
        <translation>Es gibt keinen Bericht &quot;%1&quot;.</translation>
    </message>
</context>
<context>
    <name>Reset</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Carrying on and starting afresh are compared for a layout that is running, in a tank whose litres are known.</source>
        <translation>Weiterführen und Neuanfang werden für eine laufende Einrichtung verglichen, in einem Becken mit bekannten Litern.</translation>
    </message>
    <message>
        <source>Give the tank&apos;s dimensions, or the litres measured on flood day.</source>
        <translation>Die Maße des Beckens oder die am Tag der Flutung gemessenen Liter angeben.</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>einen Tag</translation>
    </message>
    <message>
        <source>Readings clear for</source>
        <translation>Messwerte klar für</translation>
    </message>
    <message>
        <source>Carry on</source>
        <translation>Weiterführen</translation>
    </message>
    <message>
        <source>changes</source>
        <translation>Wechsel</translation>
    </message>
    <message>
        <source>Start afresh</source>
        <translation>Neu anfangen</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>clear now</source>
        <translation>jetzt klar</translation>
    </message>
    <message>
        <source>%1, 8 in 10</source>
        <translation>%1, 8 von 10</translation>
    </message>
    <message>
        <source>from %1; not by %2: %3</source>
        <translation>ab %1; bis %2 nicht: %3</translation>
    </message>
    <message>
        <source>not by %1: %2</source>
        <translation>bis %1 nicht: %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>On neither way do the readings clear for the first animals within the forecast.</source>
        <translation>Auf keinem der beiden Wege werden die Messwerte innerhalb der Vorhersage klar für die ersten Tiere.</translation>
    </message>
    <message>
        <source>Carrying on clears for the first animals; a fresh start does not within the forecast.</source>
        <translation>Beim Weiterführen werden die Messwerte klar für die ersten Tiere; beim Neuanfang innerhalb der Vorhersage nicht.</translation>
    </message>
    <message>
        <source>A fresh start clears for the first animals; carrying on does not within the forecast.</source>
        <translation>Beim Neuanfang werden die Messwerte klar für die ersten Tiere; beim Weiterführen innerhalb der Vorhersage nicht.</translation>
    </message>
    <message>
        <source>Both ways clear for the first animals at about the same time.</source>
        <translation>Auf beiden Wegen werden die Messwerte etwa zur selben Zeit klar für die ersten Tiere.</translation>
    </message>
    <message>
        <source>A fresh start clears for the first animals about %1 later than carrying on, by the middle members.</source>
        <translation>Beim Neuanfang werden die Messwerte etwa %1 später klar für die ersten Tiere als beim Weiterführen, nach den mittleren Läufen.</translation>
    </message>
    <message>
        <source>A fresh start clears for the first animals about %1 earlier than carrying on, by the middle members.</source>
        <translation>Beim Neuanfang werden die Messwerte etwa %1 früher klar für die ersten Tiere als beim Weiterführen, nach den mittleren Läufen.</translation>
    </message>
    <message>
        <source>Carrying on as planned: in %1 days %2 water changes, %3.</source>
        <translation>Weiterführen wie geplant: in %1 Tagen %2 Wasserwechsel, %3.</translation>
    </message>
    <message>
        <source>A fresh start: in %1 days %2 water changes, %3, and filling the tank anew besides.</source>
        <translation>Ein Neuanfang: in %1 Tagen %2 Wasserwechsel, %3, dazu das neue Füllen des Beckens.</translation>
    </message>
    <message>
        <source>Carrying on is fitted to %1 readings of this layout.</source>
        <translation>Das Weiterführen ist an %1 Messwerte dieser Einrichtung angepasst.</translation>
    </message>
    <message>
        <source>The readings of this layout contradict the model, so carrying on is shown with the wide bands of no readings at all.</source>
        <translation>Die Messwerte dieser Einrichtung widersprechen dem Modell, daher erscheint das Weiterführen mit den breiten Bändern ganz ohne Messwerte.</translation>
    </message>
    <message>
        <source>The fresh start has no reading to rest on: it is the prior for %1, today, with the same bed new, the same planting, water and gas, no animals and no feed.</source>
        <translation>Der Neuanfang kann sich auf keinen Messwert stützen: Er ist die Vorannahme für %1, heute, mit demselben Bodengrund in neu, gleicher Bepflanzung, gleichem Wasser und CO2, ohne Tiere und ohne Futter.</translation>
    </message>
    <message>
        <source>Nothing was learned from earlier layouts for it: none of the row has enough readings and something in common, or learning is switched off.</source>
        <translation>Aus früheren Einrichtungen wurde dafür nichts gelernt: Keine der Reihe hat genug Messwerte und etwas gemeinsam, oder das Lernen ist ausgeschaltet.</translation>
    </message>
    <message>
        <source>Ammonia and nitrite alone are forecast. Plants, algae, animals, money and the evening it takes are yours to weigh.</source>
        <translation>Vorhergesagt werden nur Ammonium und Nitrit. Pflanzen, Algen, Tiere, Geld und der Abend, den es kostet, sind selbst abzuwägen.</translation>
    </message>
    <message>
        <source>new media</source>
        <translation>neue Filtermedien</translation>
    </message>
    <message>
        <source>mature media, a third of a filter</source>
        <translation>reife Filtermedien, ein Drittel eines Filters</translation>
    </message>
    <message>
        <source>new media and a bacteria starter</source>
        <translation>neue Filtermedien und Starterbakterien</translation>
    </message>
    <message>
        <source>a dry start</source>
        <translation>Trockenstart</translation>
    </message>
    <message>
        <source>a dark start</source>
        <translation>Dunkelstart</translation>
    </message>
    <message>
        <source>a fresh start</source>
        <translation>Neuanfang</translation>
    </message>
    <message>
        <source>carrying on</source>
        <translation>Weiterführen</translation>
    </message>
</context>
<context>
    <name>ReviewPoints</name>
    <message>
        <source>Living plants against those planted</source>
        <translation>Lebende Pflanzen gegenüber den gesetzten</translation>
    </message>
    <message>
        <source>over 60 %</source>
        <translation>über 60 %</translation>
    </message>
    <message>
        <source>30 to 60 %</source>
        <translation>30 bis 60 %</translation>
    </message>
    <message>
        <source>under 30 %</source>
        <translation>unter 30 %</translation>
    </message>
    <message>
        <source>New leaves in a week</source>
        <translation>Neue Blätter in einer Woche</translation>
    </message>
    <message>
        <source>many</source>
        <translation>viele</translation>
    </message>
    <message>
        <source>some</source>
        <translation>einige</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Algae in two weeks</source>
        <translation>Algen in zwei Wochen</translation>
    </message>
    <message>
        <source>fewer, or none</source>
        <translation>weniger, oder keine</translation>
    </message>
    <message>
        <source>as before</source>
        <translation>wie zuvor</translation>
    </message>
    <message>
        <source>more, or half covered</source>
        <translation>mehr, oder halb bedeckt</translation>
    </message>
    <message>
        <source>Cause found and removable</source>
        <translation>Ursache gefunden und behebbar</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>in part</source>
        <translation>zum Teil</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Smell and colour of the bed</source>
        <translation>Geruch und Farbe des Bodengrunds</translation>
    </message>
    <message>
        <source>sweet</source>
        <translation>frisch</translation>
    </message>
    <message>
        <source>dark patches</source>
        <translation>dunkle Stellen</translation>
    </message>
    <message>
        <source>black, rotten eggs</source>
        <translation>schwarz, faule Eier</translation>
    </message>
    <message>
        <source>Ammonia and nitrite</source>
        <translation>Ammonium und Nitrit</translation>
    </message>
    <message>
        <source>both clear</source>
        <translation>beide klar</translation>
    </message>
    <message>
        <source>one raised</source>
        <translation>eines erhöht</translation>
    </message>
    <message>
        <source>both raised or swinging</source>
        <translation>beide erhöht oder schwankend</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Tiere</translation>
    </message>
    <message>
        <source>well, or none</source>
        <translation>wohlauf, oder keine</translation>
    </message>
    <message>
        <source>signs, or one loss</source>
        <translation>Anzeichen, oder ein Verlust</translation>
    </message>
    <message>
        <source>lost every week</source>
        <translation>jede Woche Verluste</translation>
    </message>
    <message>
        <source>Hardscape and flow</source>
        <translation>Hardscape und Strömung</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>intakt</translation>
    </message>
    <message>
        <source>still corners</source>
        <translation>tote Ecken</translation>
    </message>
    <message>
        <source>slumped</source>
        <translation>verrutscht</translation>
    </message>
    <message>
        <source>Your time in the next three weeks</source>
        <translation>Deine Zeit in den nächsten drei Wochen</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>genug</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>knapp</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>RoundPaper</name>
    <message>
        <source>not read before</source>
        <translation>zuvor nicht gemessen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Before hands go in</source>
        <translation>Bevor Hände ins Becken gehen</translation>
    </message>
    <message>
        <source>Seen: animals, plants, algae, flow, leaks</source>
        <translation>Gesehen: Tiere, Pflanzen, Algen, Strömung, Lecks</translation>
    </message>
    <message>
        <source>Work, and what is seen</source>
        <translation>Arbeiten und was zu sehen ist</translation>
    </message>
    <message>
        <source>%1, seen:</source>
        <translation>%1, gesehen:</translation>
    </message>
    <message>
        <source>steps %1</source>
        <translation>Stufen %1</translation>
    </message>
    <message>
        <source>wait %1 min</source>
        <translation>%1 min warten</translation>
    </message>
    <message>
        <source>good until %1</source>
        <translation>haltbar bis %1</translation>
    </message>
    <message>
        <source>No reading is due.</source>
        <translation>Keine Messung ist fällig.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>☐ %1, %2</source>
        <translation>☐ %1, %2</translation>
    </message>
    <message>
        <source>The whole row</source>
        <translation>Die ganze Reihe</translation>
    </message>
    <message>
        <source>Round sheet, kit by kit</source>
        <translation>Rundgangsblatt, Test für Test</translation>
    </message>
    <message>
        <source>Round sheet, tank by tank</source>
        <translation>Rundgangsblatt, Becken für Becken</translation>
    </message>
    <message>
        <source>last %1 %2, %3</source>
        <translation>zuletzt %1 %2, %3</translation>
    </message>
</context>
<context>
    <name>RowPaper</name>
    <message>
        <source>%1 %2, %3</source>
        <comment>symbol, value, day</comment>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No tank of the row is running.</source>
        <translation>Kein Becken der Reihe ist in Betrieb.</translation>
    </message>
    <message>
        <source>Newest readings</source>
        <translation>Neueste Messwerte</translation>
    </message>
    <message>
        <source>Next work</source>
        <translation>Nächste Arbeiten</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Vorhersage</translation>
    </message>
    <message>
        <source>The whole row</source>
        <translation>Die ganze Reihe</translation>
    </message>
    <message>
        <source>Summary, tank by tank</source>
        <translation>Übersicht, Becken für Becken</translation>
    </message>
</context>
<context>
    <name>Sample</name>
    <message>
        <source>Invented, for looking around.</source>
        <translation>Erfunden, zum Umsehen.</translation>
    </message>
</context>
<context>
    <name>SheetPaper</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>The coming two weeks</source>
        <translation>Die kommenden zwei Wochen</translation>
    </message>
    <message>
        <source>large changes collide</source>
        <translation>große Wechsel treffen zusammen</translation>
    </message>
    <message>
        <source>Worksheets</source>
        <translation>Rechenblätter</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Vorsicht: %1</translation>
    </message>
    <message>
        <source>The whole row</source>
        <translation>Die ganze Reihe</translation>
    </message>
</context>
<context>
    <name>Sheets</name>
    <message>
        <source>Long under way: match the temperature, open the bag, and move the animals soon to clean water of like pH; no long drip in the bag&apos;s own water unless a conditioner binds its ammonia.</source>
        <translation>Lange unterwegs: Temperatur angleichen, Beutel öffnen und die Tiere bald in sauberes Wasser von gleichem pH setzen; kein langes Tröpfeln im Beutelwasser, wenn nicht ein Aufbereiter sein Ammoniak bindet.</translation>
    </message>
    <message>
        <source>Short trip, small difference: float the bag for 15 to 20 minutes, then net the animals across.</source>
        <translation>Kurzer Weg, kleiner Unterschied: den Beutel 15 bis 20 Minuten treiben lassen, dann die Tiere herüberkeschern.</translation>
    </message>
    <message>
        <source>Float for the temperature, then drip in a covered bucket, then net the animals across.</source>
        <translation>Für die Temperatur treiben lassen, dann in einem abgedeckten Eimer tröpfeln, dann die Tiere herüberkeschern.</translation>
    </message>
    <message>
        <source>With the bag&apos;s total ammonia (tan=) the sheet reckons what opening it frees.</source>
        <translation>Mit dem Gesamtammonium des Beutels (tan=) rechnet das Blatt, was beim Öffnen frei wird.</translation>
    </message>
    <message>
        <source>pH in the closed bag</source>
        <translation>pH im geschlossenen Beutel</translation>
    </message>
    <message>
        <source>pH minutes after opening</source>
        <translation>pH Minuten nach dem Öffnen</translation>
    </message>
    <message>
        <source>Free ammonia in the closed bag</source>
        <translation>Freies Ammoniak im geschlossenen Beutel</translation>
    </message>
    <message>
        <source>Free ammonia after opening</source>
        <translation>Freies Ammoniak nach dem Öffnen</translation>
    </message>
    <message>
        <source>Opening the bag frees enough ammonia to harm: out of the bag&apos;s water within minutes.</source>
        <translation>Beim Öffnen wird genug Ammoniak frei, um zu schaden: binnen Minuten heraus aus dem Beutelwasser.</translation>
    </message>
    <message>
        <source>drip = (times − 1) × bag / minutes</source>
        <translation>Tropfen = (Fache − 1) × Beutel / Minuten</translation>
    </message>
    <message>
        <source>drip = ({times} − 1) × {bag} L / {minutes} min = {drip} mL/min</source>
        <translation>Tropfen = ({times} − 1) × {bag} L / {minutes} min = {drip} mL/min</translation>
    </message>
    <message>
        <source>Drip</source>
        <translation>Tröpfelrate</translation>
    </message>
    <message>
        <source>In drops, 20 to the mL</source>
        <translation>In Tropfen, 20 auf den mL</translation>
    </message>
    <message>
        <source>Left of the bag&apos;s water</source>
        <translation>Rest des Beutelwassers</translation>
    </message>
    <message>
        <source>Dissolved solids at the end</source>
        <translation>Gelöste Stoffe am Ende</translation>
    </message>
    <message>
        <source>Change per hour</source>
        <translation>Änderung je Stunde</translation>
    </message>
    <message>
        <source>The way to go</source>
        <translation>Der Weg</translation>
    </message>
    <message>
        <source>Faster than 30 % an hour: slower for shrimp and soft-water animals (common practice).</source>
        <translation>Schneller als 30 % in der Stunde: für Garnelen und Weichwassertiere langsamer (gängige Praxis).</translation>
    </message>
    <message>
        <source>Not more than 2 °C an hour. Bag water never goes into the tank. Lights off for the evening, carbon dioxide lower by a fifth (common practice).</source>
        <translation>Nicht mehr als 2 °C in der Stunde. Beutelwasser kommt nie ins Becken. Licht für den Abend aus, Kohlendioxid um ein Fünftel niedriger (gängige Praxis).</translation>
    </message>
    <message>
        <source>ammonia per day = feed × protein × 0.092 / litres</source>
        <translation>Ammonium je Tag = Futter × Eiweiß × 0,092 / Liter</translation>
    </message>
    <message>
        <source>{feed} g × {protein} % × 0.092 × 1000 / {litres} L = {load} mg/L N a day</source>
        <translation>{feed} g × {protein} % × 0,092 × 1000 / {litres} L = {load} mg/L N am Tag</translation>
    </message>
    <message>
        <source>Total ammonia that the filter and plants must take</source>
        <translation>Gesamtammonium, das Filter und Pflanzen aufnehmen müssen</translation>
    </message>
    <message>
        <source>As nitrogen</source>
        <translation>Als Stickstoff</translation>
    </message>
    <message>
        <source>Nitrate per week if plants take none</source>
        <translation>Nitrat je Woche, wenn Pflanzen keines nehmen</translation>
    </message>
    <message>
        <source>KH used per week by nitrification</source>
        <translation>KH, die die Nitrifikation je Woche verbraucht</translation>
    </message>
    <message>
        <source>Nitrate just before a weekly change, once settled, without plants</source>
        <translation>Nitrat kurz vor dem wöchentlichen Wechsel, eingependelt, ohne Pflanzen</translation>
    </message>
    <message>
        <source>Growing fish excrete about 58 % of the nitrogen fed as ammonia; adults that no longer grow up to 72 %. Feed that nobody eats comes later and whole.</source>
        <translation>Wachsende Fische scheiden etwa 58 % des gefütterten Stickstoffs als Ammoniak aus; ausgewachsene bis 72 %. Futter, das niemand frisst, kommt später und ganz dazu.</translation>
    </message>
    <message>
        <source>Add at most a quarter of the planned stock a week, the first fish a tenth to a seventh; test total ammonia and nitrite on days 1, 3 and 7 (common practice). Centimetres of fish per litre say nothing.</source>
        <translation>Je Woche höchstens ein Viertel des geplanten Besatzes einsetzen, die ersten Fische ein Zehntel bis ein Siebtel; an den Tagen 1, 3 und 7 Gesamtammonium und Nitrit testen (gängige Praxis). Zentimeter Fisch je Liter sagen nichts.</translation>
    </message>
    <message>
        <source>Write this feeding to the record</source>
        <translation>Diese Fütterung ins Journal schreiben</translation>
    </message>
    <message>
        <source>Acclimation</source>
        <translation>Eingewöhnung</translation>
    </message>
    <message>
        <source>drip, differences, and the ammonia in a long-closed bag</source>
        <translation>Tröpfeln, Unterschiede und das Ammoniak in einem lange geschlossenen Beutel</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Tiere</translation>
    </message>
    <message>
        <source>Water in the bag</source>
        <translation>Wasser im Beutel</translation>
    </message>
    <message>
        <source>Dissolved solids in the bag</source>
        <translation>Gelöste Stoffe im Beutel</translation>
    </message>
    <message>
        <source>Dissolved solids in the tank</source>
        <translation>Gelöste Stoffe im Becken</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>End volume, times the bag</source>
        <translation>Endvolumen, Vielfaches des Beutels</translation>
    </message>
    <message>
        <source>Under way</source>
        <translation>Unterwegs</translation>
    </message>
    <message>
        <source>Total ammonia in the bag</source>
        <translation>Gesamtammonium im Beutel</translation>
    </message>
    <message>
        <source>KH of the bag&apos;s water</source>
        <translation>KH des Beutelwassers</translation>
    </message>
    <message>
        <source>Carbon dioxide in the closed bag</source>
        <translation>Kohlendioxid im geschlossenen Beutel</translation>
    </message>
    <message>
        <source>Carbon dioxide once open</source>
        <translation>Kohlendioxid nach dem Öffnen</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Dilution; carbonate system after Plummer and Busenberg 1982, free ammonia after Emerson et al. 1975. Rates and steps: common practice.</source>
        <translation>Verdünnung; Karbonatsystem nach Plummer und Busenberg 1982, freies Ammoniak nach Emerson et al. 1975. Raten und Schritte: gängige Praxis.</translation>
    </message>
    <message>
        <source>Stocking load</source>
        <translation>Belastung durch Besatz</translation>
    </message>
    <message>
        <source>what the feed puts into the water</source>
        <translation>was das Futter ins Wasser bringt</translation>
    </message>
    <message>
        <source>Feed per day</source>
        <translation>Futter am Tag</translation>
    </message>
    <message>
        <source>Water in the tank</source>
        <translation>Wasser im Becken</translation>
    </message>
    <message>
        <source>Protein in the feed</source>
        <translation>Eiweiß im Futter</translation>
    </message>
    <message>
        <source>Changed per week</source>
        <translation>Je Woche gewechselt</translation>
    </message>
    <message>
        <source>Nitrate in the new water</source>
        <translation>Nitrat im neuen Wasser</translation>
    </message>
    <message>
        <source>0.092 g of ammonia nitrogen per g of protein: Timmons and Ebeling 2013, as quoted in an aquaponics manual of 2021.</source>
        <translation>0,092 g Ammoniumstickstoff je g Eiweiß: Timmons und Ebeling 2013, zitiert in einem Aquaponik-Handbuch von 2021.</translation>
    </message>
    <message>
        <source>Parameter</source>
        <translation>Parameter</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>In the new water</source>
        <translation>Im neuen Wasser</translation>
    </message>
    <message>
        <source>GH now</source>
        <translation>GH jetzt</translation>
    </message>
    <message>
        <source>GH of the new water</source>
        <translation>GH des neuen Wassers</translation>
    </message>
    <message>
        <source>KH now</source>
        <translation>KH jetzt</translation>
    </message>
    <message>
        <source>KH of the new water</source>
        <translation>KH des neuen Wassers</translation>
    </message>
    <message>
        <source>Potassium now</source>
        <translation>Kalium jetzt</translation>
    </message>
    <message>
        <source>Potassium in the new water</source>
        <translation>Kalium im neuen Wasser</translation>
    </message>
    <message>
        <source>Temperature of the tank</source>
        <translation>Temperatur des Beckens</translation>
    </message>
    <message>
        <source>Temperature of the new water</source>
        <translation>Temperatur des neuen Wassers</translation>
    </message>
    <message>
        <source>Warm the new water first.</source>
        <translation>Erwärme zuerst das neue Wasser.</translation>
    </message>
    <message>
        <source>More than a degree at once: split it for sensitive animals.</source>
        <translation>Mehr als ein Grad auf einmal: für empfindliche Tiere aufteilen.</translation>
    </message>
    <message>
        <source>GH</source>
        <translation>GH</translation>
    </message>
    <message>
        <source>KH</source>
        <translation>KH</translation>
    </message>
    <message>
        <source>Potassium</source>
        <translation>Kalium</translation>
    </message>
    <message>
        <source>More than half at once is a large step for animals used to the water; two smaller changes some days apart do the same with half the step (common practice).</source>
        <translation>Mehr als die Hälfte auf einmal ist ein großer Schritt für Tiere, die das Wasser gewohnt sind; zwei kleinere Wechsel im Abstand einiger Tage tun dasselbe in halben Schritten (gängige Praxis).</translation>
    </message>
    <message>
        <source>pH is not mixed by its number: see the sheet &quot;ammonia&quot; when ammonia is present.</source>
        <translation>Der pH mischt sich nicht nach seiner Zahl: siehe das Blatt „ammonia“, wenn Ammoniak da ist.</translation>
    </message>
    <message>
        <source>after = source + (now − source) × (1 − share)</source>
        <translation>danach = Quelle + (jetzt − Quelle) × (1 − Anteil)</translation>
    </message>
    <message>
        <source>after = {source} + ({now} − {source}) × (1 − {share} %) = {after}</source>
        <translation>danach = {source} + ({now} − {source}) × (1 − {share} %) = {after}</translation>
    </message>
    <message>
        <source>After the change</source>
        <translation>Nach dem Wechsel</translation>
    </message>
    <message>
        <source>Water to change</source>
        <translation>Zu wechselndes Wasser</translation>
    </message>
    <message>
        <source>after = source + (now − source) × product of all (1 − share)</source>
        <translation>danach = Quelle + (jetzt − Quelle) × Produkt aller (1 − Anteil)</translation>
    </message>
    <message>
        <source>after = {source} + ({now} − {source}) × {left} % = {after}</source>
        <translation>danach = {source} + ({now} − {source}) × {left} % = {after}</translation>
    </message>
    <message>
        <source>After all of them</source>
        <translation>Nach allen</translation>
    </message>
    <message>
        <source>Left of the old water</source>
        <translation>Rest des alten Wassers</translation>
    </message>
    <message>
        <source>One change of the same effect</source>
        <translation>Ein Wechsel gleicher Wirkung</translation>
    </message>
    <message>
        <source>After each</source>
        <translation>Nach jedem</translation>
    </message>
    <message>
        <source>Water needed in all</source>
        <translation>Insgesamt nötiges Wasser</translation>
    </message>
    <message>
        <source>Their order does not matter. Two halves are three quarters, not the whole.</source>
        <translation>Ihre Reihenfolge ist gleich. Zwei Hälften sind drei Viertel, nicht das Ganze.</translation>
    </message>
    <message>
        <source>Or %1 changes of</source>
        <translation>Oder %1 Wechsel von</translation>
    </message>
    <message>
        <source>share = (now − target) / (now − source)</source>
        <translation>Anteil = (jetzt − Ziel) / (jetzt − Quelle)</translation>
    </message>
    <message>
        <source>share = ({now} − {target}) / ({now} − {source}) = {share} %</source>
        <translation>Anteil = ({now} − {target}) / ({now} − {source}) = {share} %</translation>
    </message>
    <message>
        <source>Change once</source>
        <translation>Einmal wechseln</translation>
    </message>
    <message>
        <source>Flowing through, the same takes</source>
        <translation>Im Durchlauf braucht dasselbe</translation>
    </message>
    <message>
        <source>Changes of that size until it is reached</source>
        <translation>Wechsel dieser Größe, bis es erreicht ist</translation>
    </message>
    <message>
        <source>Mass balance of a well-mixed tank. Steps that animals notice: common practice.</source>
        <translation>Massenbilanz eines gut durchmischten Beckens. Schritte, die Tiere merken: gängige Praxis.</translation>
    </message>
    <message>
        <source>Share changed, of the net volume</source>
        <translation>Gewechselter Anteil, vom Nettovolumen</translation>
    </message>
    <message>
        <source>One water change</source>
        <translation>Ein Wasserwechsel</translation>
    </message>
    <message>
        <source>what a change of this size leaves</source>
        <translation>was ein Wechsel dieser Größe übrig lässt</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>A sequence of changes</source>
        <translation>Eine Folge von Wechseln</translation>
    </message>
    <message>
        <source>what several changes in a row leave</source>
        <translation>was mehrere Wechsel nacheinander übrig lassen</translation>
    </message>
    <message>
        <source>Shares, one after another</source>
        <translation>Anteile, nacheinander</translation>
    </message>
    <message>
        <source>Water change to a target</source>
        <translation>Wasserwechsel auf ein Ziel</translation>
    </message>
    <message>
        <source>how much to change to bring one value where you want it</source>
        <translation>wie viel zu wechseln ist, um einen Wert dorthin zu bringen, wo du ihn willst</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>In changes of this size</source>
        <translation>In Wechseln dieser Größe</translation>
    </message>
    <message>
        <source>By pH and KH, activities reckoned</source>
        <translation>Aus pH und KH, mit Aktivitäten gerechnet</translation>
    </message>
    <message>
        <source>As the usual chart says</source>
        <translation>Wie die übliche Tabelle sagt</translation>
    </message>
    <message>
        <source>CO₂ = 15.696 × KH × 10^(pK1 − pH), less what activities take off</source>
        <translation>CO₂ = 15,696 × KH × 10^(pK1 − pH), abzüglich der Aktivitäten</translation>
    </message>
    <message>
        <source>15.696 × {kh} × 10^({pk1} − {ph}) = {chart} by the chart; {co2} mg/L with activities</source>
        <translation>15,696 × {kh} × 10^({pk1} − {ph}) = {chart} nach der Tabelle; {co2} mg/L mit Aktivitäten</translation>
    </message>
    <message>
        <source>pK1 at this temperature</source>
        <translation>pK1 bei dieser Temperatur</translation>
    </message>
    <message>
        <source>By the drop from the degassed sample</source>
        <translation>Aus dem Abfall gegenüber der entgasten Probe</translation>
    </message>
    <message>
        <source>The drop stands on what the degassed sample still held: 0.6 mg/L when it stood in fresh air for a day, 2 to 5 in an unaerated tank at dawn (common practice).</source>
        <translation>Der Abfall beruht auf dem, was die entgaste Probe noch enthielt: 0,6 mg/L, wenn sie einen Tag an frischer Luft stand, 2 bis 5 in einem unbelüfteten Becken am Morgen (gängige Praxis).</translation>
    </message>
    <message>
        <source>By the indicator in its reference solution</source>
        <translation>Aus dem Dauertest mit seiner Referenzlösung</translation>
    </message>
    <message>
        <source>An indicator lags by one to three hours and reports the past.</source>
        <translation>Ein Dauertest hinkt ein bis drei Stunden nach und berichtet die Vergangenheit.</translation>
    </message>
    <message>
        <source>Below 2 dKH one drop of the kit is a large part of the KH: take the range, not the figure, or use an indicator.</source>
        <translation>Unter 2 dKH ist ein Tropfen des Tests ein großer Teil der KH: Nimm den Bereich, nicht die Zahl, oder einen Dauertest.</translation>
    </message>
    <message>
        <source>Above 30 mg/L watch the animals; with animals aim at 15 to 30 (common practice).</source>
        <translation>Über 30 mg/L die Tiere beobachten; mit Tieren 15 bis 30 anstreben (gängige Praxis).</translation>
    </message>
    <message>
        <source>Phosphate buffers, tannins and soil acids make the first two read too high; the sample for pH and for KH must be of the same hour.</source>
        <translation>Phosphatpuffer, Gerbstoffe und Säuren aus dem Soil lassen die ersten beiden zu hoch lesen; die Proben für pH und KH müssen aus derselben Stunde sein.</translation>
    </message>
    <message>
        <source>The ways differ by more than a factor of two: something other than carbonate sets the pH, or one figure is wrong. Trust the animals first.</source>
        <translation>Die Wege weichen um mehr als das Doppelte ab: Etwas anderes als Karbonat bestimmt den pH, oder eine Zahl ist falsch. Trau zuerst den Tieren.</translation>
    </message>
    <message>
        <source>Without carbonate hardness the pH says nothing about carbon dioxide.</source>
        <translation>Ohne Karbonathärte sagt der pH nichts über Kohlendioxid.</translation>
    </message>
    <message>
        <source>Use an indicator in a reference solution, or weigh the cylinder.</source>
        <translation>Nimm einen Dauertest mit Referenzlösung, oder wieg die Flasche.</translation>
    </message>
    <message>
        <source>In balance with the air</source>
        <translation>Im Gleichgewicht mit der Luft</translation>
    </message>
    <message>
        <source>CO₂ three ways</source>
        <translation>CO₂ auf drei Wegen</translation>
    </message>
    <message>
        <source>pH and KH, pH drop and indicator side by side, each with its doubt</source>
        <translation>pH und KH, pH-Abfall und Dauertest nebeneinander, jeder mit seiner Unsicherheit</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>pH of the degassed sample</source>
        <translation>pH der entgasten Probe</translation>
    </message>
    <message>
        <source>Carbon dioxide left in that sample</source>
        <translation>In dieser Probe verbliebenes Kohlendioxid</translation>
    </message>
    <message>
        <source>pH by the indicator&apos;s colour</source>
        <translation>pH nach der Farbe des Dauertests</translation>
    </message>
    <message>
        <source>KH of the reference solution</source>
        <translation>KH der Referenzlösung</translation>
    </message>
    <message>
        <source>Conductivity at 25 °C</source>
        <translation>Leitwert bei 25 °C</translation>
    </message>
    <message>
        <source>Carbon dioxide in the air</source>
        <translation>Kohlendioxid in der Luft</translation>
    </message>
    <message>
        <source>Plummer and Busenberg 1982, Geochim. Cosmochim. Acta 46; activities after Davies; checked against PHREEQC 3. The chart agrees with Tucker 1984. Reading of a colour ±0.15 pH: common practice.</source>
        <translation>Plummer und Busenberg 1982, Geochim. Cosmochim. Acta 46; Aktivitäten nach Davies; geprüft mit PHREEQC 3. Die Tabelle stimmt mit Tucker 1984 überein. Ablesen einer Farbe ±0,15 pH: gängige Praxis.</translation>
    </message>
    <message>
        <source>The room is warmer than the tank is meant to be.</source>
        <translation>Der Raum ist wärmer, als das Becken sein soll.</translation>
    </message>
    <message>
        <source>A heater cannot cool.</source>
        <translation>Ein Heizer kann nicht kühlen.</translation>
    </message>
    <message>
        <source>power = U × surface × difference + evaporation × 28 W per litre a day</source>
        <translation>Leistung = U × Fläche × Differenz + Verdunstung × 28 W je Liter am Tag</translation>
    </message>
    <message>
        <source>power = {loss} × {surface} × ({tank} − {room}) + {vapour} = {power} W</source>
        <translation>Leistung = {loss} × {surface} × ({tank} − {room}) + {vapour} = {power} W</translation>
    </message>
    <message>
        <source>Power to hold the temperature</source>
        <translation>Leistung, um die Temperatur zu halten</translation>
    </message>
    <message>
        <source>Glass and top that lose heat</source>
        <translation>Glas und Oberseite, die Wärme verlieren</translation>
    </message>
    <message>
        <source>of it for evaporation</source>
        <translation>davon für Verdunstung</translation>
    </message>
    <message>
        <source>Heater to buy, at least</source>
        <translation>Heizer zu kaufen, mindestens</translation>
    </message>
    <message>
        <source>Heater to buy, at most</source>
        <translation>Heizer zu kaufen, höchstens</translation>
    </message>
    <message>
        <source>Energy in 30 days</source>
        <translation>Energie in 30 Tagen</translation>
    </message>
    <message>
        <source>Without heating, hours until 63 % of the difference is gone</source>
        <translation>Ohne Heizung, Stunden, bis 63 % der Differenz weg sind</translation>
    </message>
    <message>
        <source>Hours for one kelvin with this heater, losses apart</source>
        <translation>Stunden für ein Kelvin mit diesem Heizer, ohne Verluste</translation>
    </message>
    <message>
        <source>This heater cannot hold the temperature in so cool a room.</source>
        <translation>In einem so kühlen Raum kann dieser Heizer die Temperatur nicht halten.</translation>
    </message>
    <message>
        <source>Two heaters of half the size fail more kindly than one: one stuck on does not cook, one dead does not chill (common practice).</source>
        <translation>Zwei Heizer halber Größe fallen gnädiger aus als einer: Ein klemmender überhitzt nicht, ein toter lässt nicht auskühlen (gängige Praxis).</translation>
    </message>
    <message>
        <source>The cylinder weighs less than its empty weight.</source>
        <translation>Die Flasche wiegt weniger als ihr Leergewicht.</translation>
    </message>
    <message>
        <source>Read the empty weight (TW) stamped on it, and weigh the regulator with it or without it both times.</source>
        <translation>Lies das eingeschlagene Leergewicht (TW) ab, und wieg den Druckminderer beide Male mit oder beide Male ohne.</translation>
    </message>
    <message>
        <source>use = (earlier − later) / days; days left = (later − empty) / use</source>
        <translation>Verbrauch = (früher − später) / Tage; Resttage = (später − leer) / Verbrauch</translation>
    </message>
    <message>
        <source>use = ({earlier} − {later}) / {days} = {use} g/d; ({later} − {empty}) / {use} = {left} d</source>
        <translation>Verbrauch = ({earlier} − {later}) / {days} = {use} g/d; ({later} − {empty}) / {use} = {left} d</translation>
    </message>
    <message>
        <source>Days left</source>
        <translation>Resttage</translation>
    </message>
    <message>
        <source>Used per day</source>
        <translation>Verbrauch am Tag</translation>
    </message>
    <message>
        <source>Gas left</source>
        <translation>Restgas</translation>
    </message>
    <message>
        <source>Lifting the tank from 3 to 30 mg/L takes</source>
        <translation>Das Becken von 3 auf 30 mg/L zu heben braucht</translation>
    </message>
    <message>
        <source>In this room&apos;s air if all of it escaped</source>
        <translation>In der Luft dieses Raums, wenn alles entwiche</translation>
    </message>
    <message>
        <source>The limit for people over a working day is 0.5 % (OSHA, from a secondary page).</source>
        <translation>Die Grenze für Menschen über einen Arbeitstag ist 0,5 % (OSHA, von einer Sekundärseite).</translation>
    </message>
    <message>
        <source>The gauge stays flat while there is liquid; once it falls, only days are left. A jump in daily use means a leak or a drifting valve. Bubbles cannot be converted: their mass goes with the cube of their width.</source>
        <translation>Das Manometer bleibt stehen, solange Flüssigkeit da ist; fällt es, bleiben nur Tage. Ein Sprung im Tagesverbrauch bedeutet ein Leck oder ein wanderndes Ventil. Blasen lassen sich nicht umrechnen: Ihre Masse geht mit der dritten Potenz ihrer Breite.</translation>
    </message>
    <message>
        <source>sum = PAR × (hours − ramp) × 0.0036</source>
        <translation>Summe = PAR × (Stunden − Rampe) × 0,0036</translation>
    </message>
    <message>
        <source>sum = {par} × ({hours} − {ramp}) × 0.0036 = {sum}</source>
        <translation>Summe = {par} × ({hours} − {ramp}) × 0,0036 = {sum}</translation>
    </message>
    <message>
        <source>Light of a day</source>
        <translation>Licht eines Tages</translation>
    </message>
    <message>
        <source>Hours at full light for the sum wanted</source>
        <translation>Stunden bei vollem Licht für die gewünschte Summe</translation>
    </message>
    <message>
        <source>Common practice calls it</source>
        <translation>Gängige Praxis nennt es</translation>
    </message>
    <message>
        <source>very little</source>
        <translation>sehr wenig</translation>
    </message>
    <message>
        <source>low light</source>
        <translation>wenig Licht</translation>
    </message>
    <message>
        <source>medium light</source>
        <translation>mittleres Licht</translation>
    </message>
    <message>
        <source>high light: needs carbon dioxide and steady dosing</source>
        <translation>viel Licht: braucht Kohlendioxid und stetige Düngung</translation>
    </message>
    <message>
        <source>PAR at the bed, not at the surface: it falls with depth and away from the middle. Lux and watts do not convert without the lamp&apos;s spectrum. Change hours or intensity, one at a time and once a week.</source>
        <translation>PAR am Bodengrund, nicht an der Oberfläche: Es fällt mit der Tiefe und zum Rand hin. Lux und Watt lassen sich ohne das Spektrum der Leuchte nicht umrechnen. Ändere Stunden oder Stärke, immer nur eines und einmal die Woche.</translation>
    </message>
    <message>
        <source>Write this light to the record</source>
        <translation>Dieses Licht ins Journal schreiben</translation>
    </message>
    <message>
        <source>Light sum</source>
        <translation>Lichtsumme</translation>
    </message>
    <message>
        <source>what a day of this lamp comes to</source>
        <translation>was ein Tag dieser Leuchte ergibt</translation>
    </message>
    <message>
        <source>Light at the bed</source>
        <translation>Licht am Bodengrund</translation>
    </message>
    <message>
        <source>Hours of light</source>
        <translation>Lichtstunden</translation>
    </message>
    <message>
        <source>Ramp at each end, part of the hours</source>
        <translation>Rampe an jedem Ende, Teil der Stunden</translation>
    </message>
    <message>
        <source>Sum wanted</source>
        <translation>Gewünschte Summe</translation>
    </message>
    <message>
        <source>Arithmetic: µmol/m²/s × 3600 s/h. Classes: common practice.</source>
        <translation>Rechnung: µmol/m²/s × 3600 s/h. Klassen: gängige Praxis.</translation>
    </message>
    <message>
        <source>Cylinder: days left</source>
        <translation>Flasche: Resttage</translation>
    </message>
    <message>
        <source>from two weighings, the only honest measure</source>
        <translation>aus zwei Wägungen, das einzige ehrliche Maß</translation>
    </message>
    <message>
        <source>Weight then</source>
        <translation>Gewicht damals</translation>
    </message>
    <message>
        <source>Weight now</source>
        <translation>Gewicht jetzt</translation>
    </message>
    <message>
        <source>Days between</source>
        <translation>Tage dazwischen</translation>
    </message>
    <message>
        <source>Empty weight, with what is weighed along</source>
        <translation>Leergewicht, mit dem, was mitgewogen wird</translation>
    </message>
    <message>
        <source>Air in the room</source>
        <translation>Luft im Raum</translation>
    </message>
    <message>
        <source>Arithmetic; ideal gas for the room. Weighing to 5 g: common practice.</source>
        <translation>Rechnung; ideales Gas für den Raum. Wiegen auf 5 g: gängige Praxis.</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Heizer</translation>
    </message>
    <message>
        <source>power to hold a temperature, and what a power cut does</source>
        <translation>Leistung, um eine Temperatur zu halten, und was ein Stromausfall bewirkt</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Becken</translation>
    </message>
    <message>
        <source>Room at its coolest</source>
        <translation>Raum, wenn er am kühlsten ist</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Loss U: 5 covered, 7 lidded, 10 open</source>
        <translation>Verlust U: 5 abgedeckt, 7 mit Deckel, 10 offen</translation>
    </message>
    <message>
        <source>Evaporation</source>
        <translation>Verdunstung</translation>
    </message>
    <message>
        <source>Heater in hand</source>
        <translation>Vorhandener Heizer</translation>
    </message>
    <message>
        <source>P = U A ΔT; heat of evaporation 2440 kJ/kg (from memory); U and the margin of 1.5 to 2: common practice.</source>
        <translation>P = U A ΔT; Verdampfungswärme 2440 kJ/kg (aus dem Gedächtnis); U und die Reserve von 1,5 bis 2: gängige Praxis.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is missing.</source>
        <translation>„%1“ fehlt.</translation>
    </message>
    <message>
        <source>Give %1=%2.</source>
        <translation>Gib %1=%2 an.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must lie from %2 to %3, not %4.</source>
        <translation>„%1“ muss von %2 bis %3 liegen, nicht %4.</translation>
    </message>
    <message>
        <source>Check the decimal mark and the unit of %1.</source>
        <translation>Prüfe Dezimalzeichen und Einheit von %1.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be &quot;%2&quot;.</source>
        <translation>„%1“ kann nicht „%2“ sein.</translation>
    </message>
    <message>
        <source>assumed, as nothing was given</source>
        <translation>angenommen, da nichts angegeben war</translation>
    </message>
    <message>
        <source>These figures have no answer.</source>
        <translation>Diese Zahlen haben keine Antwort.</translation>
    </message>
    <message>
        <source>Check the inputs.</source>
        <translation>Prüfe die Eingaben.</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation>%1 %2: %3</translation>
    </message>
    <message>
        <source>reading of %1</source>
        <translation>Messwert vom %1</translation>
    </message>
    <message>
        <source>reckoned from the tank&apos;s measures, bed and rock</source>
        <translation>gerechnet aus Maßen, Bodengrund und Steinen des Beckens</translation>
    </message>
    <message>
        <source>measured when it was filled</source>
        <translation>beim Füllen gemessen</translation>
    </message>
    <message>
        <source>source water &quot;%1&quot;</source>
        <translation>Ausgangswasser „%1“</translation>
    </message>
    <message>
        <source>set for this layout</source>
        <translation>für dieses Layout eingestellt</translation>
    </message>
    <message>
        <source>measures of the tank</source>
        <translation>Maße des Beckens</translation>
    </message>
    <message>
        <source>thiosulfate = 7.00 × chlorine × litres / 1000</source>
        <translation>Thiosulfat = 7,00 × Chlor × Liter / 1000</translation>
    </message>
    <message>
        <source>7.00 × {chlorine} × {litres} / 1000 = {grams} g</source>
        <translation>7,00 × {chlorine} × {litres} / 1000 = {grams} g</translation>
    </message>
    <message>
        <source>Sodium thiosulfate pentahydrate</source>
        <translation>Natriumthiosulfat-Pentahydrat</translation>
    </message>
    <message>
        <source>If all went on to sulfate, as little as</source>
        <translation>Ginge alles bis zum Sulfat, nur</translation>
    </message>
    <message>
        <source>Ammonia left in the new water</source>
        <translation>Ammonium, das im neuen Wasser bleibt</translation>
    </message>
    <message>
        <source>Ammonia it brings to the tank</source>
        <translation>Ammonium, das es ins Becken bringt</translation>
    </message>
    <message>
        <source>Thiosulfate breaks chloramine and leaves its ammonia: use a conditioner that binds it, and count it in the sheet &quot;ammonia&quot;.</source>
        <translation>Thiosulfat spaltet Chloramin und lässt dessen Ammoniak zurück: Nimm einen Aufbereiter, der es bindet, und zähle es im Blatt „ammonia“ mit.</translation>
    </message>
    <message>
        <source>Dose by 7.0 mg per mg of chlorine; pages that say 1 or 3.5 reckon with reactions that do not happen at the pH of a tank. A conditioner from the shop is dosed by its label.</source>
        <translation>Dosiere 7,0 mg je mg Chlor; Seiten, die 1 oder 3,5 nennen, rechnen mit Reaktionen, die beim pH eines Beckens nicht ablaufen. Ein gekaufter Aufbereiter wird nach seinem Etikett dosiert.</translation>
    </message>
    <message>
        <source>sodium thiosulfate</source>
        <translation>Natriumthiosulfat</translation>
    </message>
    <message>
        <source>bleach = volume / (1 + parts of water); chlorine = strength / (1 + parts)</source>
        <translation>Bleiche = Volumen / (1 + Teile Wasser); Chlor = Stärke / (1 + Teile)</translation>
    </message>
    <message>
        <source>{litres} L / (1 + {parts}) = {bleach} mL; {strength} mg/L of chlorine</source>
        <translation>{litres} L / (1 + {parts}) = {bleach} mL; {strength} mg/L Chlor</translation>
    </message>
    <message>
        <source>Bleach</source>
        <translation>Bleiche</translation>
    </message>
    <message>
        <source>Cold water, into which the bleach goes</source>
        <translation>Kaltes Wasser, in das die Bleiche kommt</translation>
    </message>
    <message>
        <source>Available chlorine in the dip</source>
        <translation>Wirksames Chlor im Bad</translation>
    </message>
    <message>
        <source>Sodium thiosulfate pentahydrate to quench all of it</source>
        <translation>Natriumthiosulfat-Pentahydrat, um alles zu löschen</translation>
    </message>
    <message>
        <source>Tough leaves, wood, rock</source>
        <translation>Zähe Blätter, Holz, Stein</translation>
    </message>
    <message>
        <source>2 to 3 minutes for plants, 15 to 30 for bare rock</source>
        <translation>2 bis 3 Minuten für Pflanzen, 15 bis 30 für nackten Stein</translation>
    </message>
    <message>
        <source>Stems</source>
        <translation>Stängelpflanzen</translation>
    </message>
    <message>
        <source>about 1 minute, one stem first</source>
        <translation>etwa 1 Minute, zuerst ein Stängel</translation>
    </message>
    <message>
        <source>Mosses and thin leaves</source>
        <translation>Moose und dünne Blätter</translation>
    </message>
    <message>
        <source>do not dip; quarantine instead</source>
        <translation>nicht baden; stattdessen in Quarantäne</translation>
    </message>
    <message>
        <source>&quot;1:20&quot; may mean 19 or 20 parts of water: this sheet counts parts of water to one of bleach. Bleach loses half its strength in months. Times: common practice, no published source.</source>
        <translation>„1:20“ kann 19 oder 20 Teile Wasser heißen: Dieses Blatt zählt Teile Wasser auf einen Teil Bleiche. Bleiche verliert in Monaten die halbe Stärke. Zeiten: gängige Praxis, keine veröffentlichte Quelle.</translation>
    </message>
    <message>
        <source>disinfectant dip</source>
        <translation>Desinfektionsbad</translation>
    </message>
    <message>
        <source>Write this dip to the record</source>
        <translation>Dieses Bad ins Journal schreiben</translation>
    </message>
    <message>
        <source>Chlorine and conditioner</source>
        <translation>Chlor und Aufbereiter</translation>
    </message>
    <message>
        <source>what the new water needs, and the ammonia it brings</source>
        <translation>was das neue Wasser braucht, und das Ammonium, das es mitbringt</translation>
    </message>
    <message>
        <source>Hygiene</source>
        <translation>Hygiene</translation>
    </message>
    <message>
        <source>Chlorine, as Cl₂</source>
        <translation>Chlor, als Cl₂</translation>
    </message>
    <message>
        <source>New water</source>
        <translation>Neues Wasser</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>chlorine</source>
        <translation>Chlor</translation>
    </message>
    <message>
        <source>chloramine</source>
        <translation>Chloramin</translation>
    </message>
    <message>
        <source>Stoichiometry, two thiosulfate to one chlorine (tetrathionate); an instrument maker prints 7.0. Ammonia of chloramine: one NH2Cl counts as one Cl2.</source>
        <translation>Stöchiometrie, zwei Thiosulfat auf ein Chlor (Tetrathionat); ein Messgerätehersteller druckt 7,0. Ammoniak aus Chloramin: ein NH2Cl zählt wie ein Cl2.</translation>
    </message>
    <message>
        <source>Disinfectant dip</source>
        <translation>Desinfektionsbad</translation>
    </message>
    <message>
        <source>for plants and hardscape before they go in</source>
        <translation>für Pflanzen und Hardscape, bevor sie hineinkommen</translation>
    </message>
    <message>
        <source>Bleach, as the label says</source>
        <translation>Bleiche, wie das Etikett sagt</translation>
    </message>
    <message>
        <source>Parts of water to one of bleach</source>
        <translation>Teile Wasser auf einen Teil Bleiche</translation>
    </message>
    <message>
        <source>Dip</source>
        <translation>Bad</translation>
    </message>
    <message>
        <source>The label&apos;s per cent is</source>
        <translation>Die Prozente des Etiketts sind</translation>
    </message>
    <message>
        <source>g of hypochlorite in 100 mL</source>
        <translation>g Hypochlorit in 100 mL</translation>
    </message>
    <message>
        <source>g of hypochlorite in 100 g</source>
        <translation>g Hypochlorit in 100 g</translation>
    </message>
    <message>
        <source>g of available chlorine in 100 g</source>
        <translation>g wirksames Chlor in 100 g</translation>
    </message>
    <message>
        <source>Density of the bleach</source>
        <translation>Dichte der Bleiche</translation>
    </message>
    <message>
        <source>Stoichiometry: 0.9525 g of available chlorine per g of hypochlorite. Strength and times: common practice.</source>
        <translation>Stöchiometrie: 0,9525 g wirksames Chlor je g Hypochlorit. Stärke und Zeiten: gängige Praxis.</translation>
    </message>
    <message>
        <source>Calcium sulfate dihydrate</source>
        <translation>Calciumsulfat-Dihydrat</translation>
    </message>
    <message>
        <source>Calcium chloride dihydrate</source>
        <translation>Calciumchlorid-Dihydrat</translation>
    </message>
    <message>
        <source>Magnesium sulfate heptahydrate</source>
        <translation>Magnesiumsulfat-Heptahydrat</translation>
    </message>
    <message>
        <source>Potassium bicarbonate</source>
        <translation>Kaliumhydrogencarbonat</translation>
    </message>
    <message>
        <source>Sodium bicarbonate</source>
        <translation>Natriumhydrogencarbonat</translation>
    </message>
    <message>
        <source>At or above 0.05 mg/L N: harms fish (UF/IFAS FA16). Change water, feed nothing, aerate.</source>
        <translation>Ab 0,05 mg/L N: schadet Fischen (UF/IFAS FA16). Wasser wechseln, nicht füttern, belüften.</translation>
    </message>
    <message>
        <source>At or above 0.02 mg/L N: with animals, change half now and test again in two to four hours (common practice).</source>
        <translation>Ab 0,02 mg/L N: mit Tieren jetzt die Hälfte wechseln und in zwei bis vier Stunden wieder testen (gängige Praxis).</translation>
    </message>
    <message>
        <source>Below 0.02 mg/L N.</source>
        <translation>Unter 0,02 mg/L N.</translation>
    </message>
    <message>
        <source>The criteria of US EPA 2013 hold from pH 6.5 to 9 and 0 to 30 °C and are left out here.</source>
        <translation>Die Kriterien der US EPA 2013 gelten von pH 6,5 bis 9 und 0 bis 30 °C und sind hier weggelassen.</translation>
    </message>
    <message>
        <source>US EPA 2013 criterion, mean of 30 days, total ammonia</source>
        <translation>Kriterium der US EPA 2013, Mittel über 30 Tage, Gesamtammonium</translation>
    </message>
    <message>
        <source>US EPA 2013 criterion, mean of one hour, no trout</source>
        <translation>Kriterium der US EPA 2013, Mittel über eine Stunde, ohne Forellen</translation>
    </message>
    <message>
        <source>Total ammonia lies above the 30-day criterion, which mussels and snails set.</source>
        <translation>Das Gesamtammonium liegt über dem 30-Tage-Kriterium, das Muscheln und Schnecken setzen.</translation>
    </message>
    <message>
        <source>The change lowers total ammonia and still frees more of it, because the new water raises the pH: use softer or less alkaline water, smaller steps, or a conditioner that binds ammonia.</source>
        <translation>Der Wechsel senkt das Gesamtammonium und macht doch mehr davon frei, weil das neue Wasser den pH hebt: Nimm weicheres Wasser, kleinere Schritte oder einen Aufbereiter, der Ammoniak bindet.</translation>
    </message>
    <message>
        <source>More of it is free afterwards, because the new water raises the pH, but it stays below 0.02 mg/L N.</source>
        <translation>Danach ist mehr davon frei, weil das neue Wasser den pH hebt, aber es bleibt unter 0,02 mg/L N.</translation>
    </message>
    <message>
        <source>For the effect of a change give kh, sph and skh: acid mixes by alkalinity and carbon, not by pH.</source>
        <translation>Für die Wirkung eines Wechsels gib kh, sph und skh an: Säure mischt sich nach Säurebindung und Kohlenstoff, nicht nach pH.</translation>
    </message>
    <message>
        <source>Total ammonia after the change</source>
        <translation>Gesamtammonium nach dem Wechsel</translation>
    </message>
    <message>
        <source>pH right after it</source>
        <translation>pH gleich danach</translation>
    </message>
    <message>
        <source>Free ammonia right after it</source>
        <translation>Freies Ammoniak gleich danach</translation>
    </message>
    <message>
        <source>pH once carbon dioxide is back at its usual level</source>
        <translation>pH, wenn das Kohlendioxid wieder auf seinem üblichen Stand ist</translation>
    </message>
    <message>
        <source>Free ammonia then</source>
        <translation>Freies Ammoniak dann</translation>
    </message>
    <message>
        <source>Free ammonia is reckoned from 0 to 50 °C and pH 2 to 13.</source>
        <translation>Freies Ammoniak wird von 0 bis 50 °C und pH 2 bis 13 gerechnet.</translation>
    </message>
    <message>
        <source>pKa = 0.09018 + 2729.92 / (t + 273.15); free = total / (1 + 10^(pKa − pH))</source>
        <translation>pKa = 0,09018 + 2729,92 / (t + 273,15); frei = gesamt / (1 + 10^(pKa − pH))</translation>
    </message>
    <message>
        <source>pKa = 0.09018 + 2729.92 / ({temp} + 273.15) = {pka}; free = {tan} / (1 + 10^({pka} − {ph})) = {free}</source>
        <translation>pKa = 0,09018 + 2729,92 / ({temp} + 273,15) = {pka}; frei = {tan} / (1 + 10^({pka} − {ph})) = {free}</translation>
    </message>
    <message>
        <source>Free ammonia now</source>
        <translation>Freies Ammoniak jetzt</translation>
    </message>
    <message>
        <source>Share of the total that is free</source>
        <translation>Freier Anteil am Gesamten</translation>
    </message>
    <message>
        <source>pKa</source>
        <translation>pKa</translation>
    </message>
    <message>
        <source>What it means</source>
        <translation>Was das heißt</translation>
    </message>
    <message>
        <source>Dissolved salts lower the true share by 4 to 9 % in tap water: the figure errs on the cautious side. A conditioner that binds ammonia still shows in the kit.</source>
        <translation>Gelöste Salze senken den wahren Anteil in Leitungswasser um 4 bis 9 %: Die Zahl irrt zur vorsichtigen Seite. Ein Aufbereiter, der Ammoniak bindet, zeigt sich im Test trotzdem.</translation>
    </message>
    <message>
        <source>salt = (ratio × nitrite − chloride) × 1.6485 × litres / 1000, never below 0</source>
        <translation>Salz = (Verhältnis × Nitrit − Chlorid) × 1,6485 × Liter / 1000, nie unter 0</translation>
    </message>
    <message>
        <source>salt = ({ratio} × {no2} − {cl}) × 1.6485 × {litres} / 1000 = {salt} g</source>
        <translation>Salz = ({ratio} × {no2} − {cl}) × 1,6485 × {litres} / 1000 = {salt} g</translation>
    </message>
    <message>
        <source>Sodium chloride</source>
        <translation>Natriumchlorid</translation>
    </message>
    <message>
        <source>Chloride to add</source>
        <translation>Zuzusetzendes Chlorid</translation>
    </message>
    <message>
        <source>Nitrite as nitrogen</source>
        <translation>Nitrit als Stickstoff</translation>
    </message>
    <message>
        <source>Highest by the chloride of this water</source>
        <translation>Höchstens nach dem Chlorid dieses Wassers</translation>
    </message>
    <message>
        <source>Chloride</source>
        <translation>Chlorid</translation>
    </message>
    <message>
        <source>Sodium</source>
        <translation>Natrium</translation>
    </message>
    <message>
        <source>That much more than before.</source>
        <translation>So viel mehr als zuvor.</translation>
    </message>
    <message>
        <source>Kits print nitrite as the ion or as nitrogen: a factor of 3.28. Write &quot;no2=0.3 mg/L N&quot; for the second.</source>
        <translation>Tests drucken Nitrit als Ion oder als Stickstoff: ein Faktor von 3,28. Schreib für das Zweite „no2=0.3 mg/L N“.</translation>
    </message>
    <message>
        <source>Chloride does not protect every fish; water changes do. Salt stays until it is changed out, and some plants and snails suffer (common practice).</source>
        <translation>Chlorid schützt nicht jeden Fisch; Wasserwechsel schon. Salz bleibt, bis es herausgewechselt ist, und manche Pflanzen und Schnecken leiden (gängige Praxis).</translation>
    </message>
    <message>
        <source>sodium chloride</source>
        <translation>Natriumchlorid</translation>
    </message>
    <message>
        <source>Free ammonia, and what a change does to it</source>
        <translation>Freies Ammoniak, und was ein Wechsel daran ändert</translation>
    </message>
    <message>
        <source>how much of the total is poisonous, now and after refilling</source>
        <translation>wie viel vom Gesamten giftig ist, jetzt und nach dem Auffüllen</translation>
    </message>
    <message>
        <source>Nitrogen</source>
        <translation>Stickstoff</translation>
    </message>
    <message>
        <source>Total ammonia</source>
        <translation>Gesamtammonium</translation>
    </message>
    <message>
        <source>Share changed</source>
        <translation>Gewechselter Anteil</translation>
    </message>
    <message>
        <source>KH of the tank</source>
        <translation>KH des Beckens</translation>
    </message>
    <message>
        <source>pH of the new water</source>
        <translation>pH des neuen Wassers</translation>
    </message>
    <message>
        <source>Total ammonia in the new water</source>
        <translation>Gesamtammonium im neuen Wasser</translation>
    </message>
    <message>
        <source>GH of the tank</source>
        <translation>GH des Beckens</translation>
    </message>
    <message>
        <source>Carbon dioxide the tank returns to</source>
        <translation>Kohlendioxid, zu dem das Becken zurückkehrt</translation>
    </message>
    <message>
        <source>Emerson, Russo, Lund and Thurston 1975, J. Fish. Res. Board Can. 32; US EPA 822-R-13-001 (2013); 0.05 mg/L: UF/IFAS FA16; 0.02 mg/L: common practice. Mixing by alkalinity and total carbon.</source>
        <translation>Emerson, Russo, Lund und Thurston 1975, J. Fish. Res. Board Can. 32; US EPA 822-R-13-001 (2013); 0,05 mg/L: UF/IFAS FA16; 0,02 mg/L: gängige Praxis. Mischung nach Säurebindung und Gesamtkohlenstoff.</translation>
    </message>
    <message>
        <source>Salt against nitrite</source>
        <translation>Salz gegen Nitrit</translation>
    </message>
    <message>
        <source>chloride keeps nitrite out of the gills</source>
        <translation>Chlorid hält Nitrit aus den Kiemen</translation>
    </message>
    <message>
        <source>Nitrite</source>
        <translation>Nitrit</translation>
    </message>
    <message>
        <source>Chloride in the water</source>
        <translation>Chlorid im Wasser</translation>
    </message>
    <message>
        <source>Chloride to nitrite, by mass</source>
        <translation>Chlorid zu Nitrit, nach Masse</translation>
    </message>
    <message>
        <source>Durborow, Crosby and Brunson 1997, SRAC 462 (10 to 1, catfish); Tomasso 1986 (no protection in bass); limits by chloride: British Columbia, Nordin and Pommen, from memory.</source>
        <translation>Durborow, Crosby und Brunson 1997, SRAC 462 (10 zu 1, Welse); Tomasso 1986 (kein Schutz bei Barschen); Grenzen nach Chlorid: British Columbia, Nordin und Pommen, aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>At dusk</source>
        <translation>In der Abenddämmerung</translation>
    </message>
    <message>
        <source>At dawn, the lowest</source>
        <translation>In der Morgendämmerung, am niedrigsten</translation>
    </message>
    <message>
        <source>Above 120 % of saturation bubbles carry oxygen off, and the sum reads too high.</source>
        <translation>Über 120 % Sättigung tragen Blasen Sauerstoff fort, und die Summe liest zu hoch.</translation>
    </message>
    <message>
        <source>Dawn falls below 80 % of saturation: ripple or air at night, carbon dioxide off.</source>
        <translation>Der Morgen fällt unter 80 % Sättigung: nachts Oberflächenbewegung oder Luft, Kohlendioxid aus.</translation>
    </message>
    <message>
        <source>saturation in moist air, Benson and Krause, at the pressure of the height</source>
        <translation>Sättigung in feuchter Luft, Benson und Krause, beim Druck der Höhe</translation>
    </message>
    <message>
        <source>{temp} °C, {height} m ({pressure} atm): {saturation} mg/L</source>
        <translation>{temp} °C, {height} m ({pressure} atm): {saturation} mg/L</translation>
    </message>
    <message>
        <source>Water in balance with air holds</source>
        <translation>Wasser im Gleichgewicht mit Luft enthält</translation>
    </message>
    <message>
        <source>Pressure of the air</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>Measured, of saturation</source>
        <translation>Gemessen, von der Sättigung</translation>
    </message>
    <message>
        <source>Below 80 % of saturation: more ripple, less feed, and look for what uses it.</source>
        <translation>Unter 80 % Sättigung: mehr Oberflächenbewegung, weniger Futter, und suchen, was ihn verbraucht.</translation>
    </message>
    <message>
        <source>Together with carbon dioxide above 30 mg/L this is dangerous: gas off, air on.</source>
        <translation>Zusammen mit Kohlendioxid über 30 mg/L ist das gefährlich: Gas aus, Luft an.</translation>
    </message>
    <message>
        <source>Carbon dioxide does not push oxygen out; much of it makes the blood carry less. Gasping at lights-on points to carbon dioxide, gasping at dawn to oxygen (common practice).</source>
        <translation>Kohlendioxid verdrängt keinen Sauerstoff; viel davon lässt das Blut weniger tragen. Atemnot beim Ausschalten des Lichts deutet auf Kohlendioxid, Atemnot am Morgen auf Sauerstoff (gängige Praxis).</translation>
    </message>
    <message>
        <source>Oxygen</source>
        <translation>Sauerstoff</translation>
    </message>
    <message>
        <source>what the water can hold, and the dawn</source>
        <translation>was das Wasser halten kann, und der Morgen</translation>
    </message>
    <message>
        <source>Oxygen measured</source>
        <translation>Gemessener Sauerstoff</translation>
    </message>
    <message>
        <source>Height above the sea</source>
        <translation>Höhe über dem Meer</translation>
    </message>
    <message>
        <source>Carbon dioxide</source>
        <translation>Kohlendioxid</translation>
    </message>
    <message>
        <source>Used by all that breathes</source>
        <translation>Verbrauch durch alles, was atmet</translation>
    </message>
    <message>
        <source>Made in the light</source>
        <translation>Im Licht erzeugt</translation>
    </message>
    <message>
        <source>Exchange with the air</source>
        <translation>Austausch mit der Luft</translation>
    </message>
    <message>
        <source>Benson and Krause 1980 and 1984, the form of APHA 4500-O; agrees with EN 25814. Height: standard atmosphere (from memory). Day: Odum 1956.</source>
        <translation>Benson und Krause 1980 und 1984, die Form von APHA 4500-O; stimmt mit EN 25814 überein. Höhe: Standardatmosphäre (aus dem Gedächtnis). Tagesgang: Odum 1956.</translation>
    </message>
    <message>
        <source>Write this water change to the record</source>
        <translation>Diesen Wasserwechsel ins Journal schreiben</translation>
    </message>
    <message>
        <source>Water change %1</source>
        <translation>Wasserwechsel %1</translation>
    </message>
    <message>
        <source>Make it a task</source>
        <translation>Eine Aufgabe daraus machen</translation>
    </message>
    <message>
        <source>Write this dose to the record</source>
        <translation>Diese Dosis ins Journal schreiben</translation>
    </message>
    <message>
        <source>Write it as a reading</source>
        <translation>Als Messwert schreiben</translation>
    </message>
    <message>
        <source>Write a note to the record</source>
        <translation>Eine Notiz ins Journal schreiben</translation>
    </message>
    <message>
        <source>Limestone would stop at a GH of</source>
        <translation>Kalkstein käme zum Stillstand bei einer GH von</translation>
    </message>
    <message>
        <source>and a KH of</source>
        <translation>und einer KH von</translation>
    </message>
    <message>
        <source>That end takes weeks and much surface; what counts from day to day is the rise per interval.</source>
        <translation>Dieses Ende braucht Wochen und viel Oberfläche; von Tag zu Tag zählt der Anstieg je Abstand.</translation>
    </message>
    <message>
        <source>rise = second − (first + share × (source − first)); excess before a change = rise / share</source>
        <translation>Anstieg = zweite − (erste + Anteil × (Quelle − erste)); Überschuss vor einem Wechsel = Anstieg / Anteil</translation>
    </message>
    <message>
        <source>rise = {second} − ({first} + {share} % × ({source} − {first})) = {rise}; {rise} / {share} % = {excess}</source>
        <translation>Anstieg = {second} − ({first} + {share} % × ({source} − {first})) = {rise}; {rise} / {share} % = {excess}</translation>
    </message>
    <message>
        <source>Rise per interval</source>
        <translation>Anstieg je Abstand</translation>
    </message>
    <message>
        <source>rise = {second} − ({first} + {share} % × ({source} − {first})) = {rise}</source>
        <translation>Anstieg = {second} − ({first} + {share} % × ({source} − {first})) = {rise}</translation>
    </message>
    <message>
        <source>Nothing came on top of the mixture: the rock does not harden the water within what the kit can tell.</source>
        <translation>Zur Mischung kam nichts hinzu: Soweit der Test es erkennt, härtet das Gestein nicht auf.</translation>
    </message>
    <message>
        <source>Above the source just before a change, once settled</source>
        <translation>Über der Quelle kurz vor einem Wechsel, eingependelt</translation>
    </message>
    <message>
        <source>and just after it</source>
        <translation>und kurz danach</translation>
    </message>
    <message>
        <source>Change at least, to stay within %1 degrees</source>
        <translation>Mindestens wechseln, um innerhalb von %1 Grad zu bleiben</translation>
    </message>
    <message>
        <source>The rock adds more in one interval than that: change more often, take rock out, blend with softer water, or give less carbon dioxide.</source>
        <translation>In einem Abstand bringt das Gestein mehr als das: öfter wechseln, Steine herausnehmen, mit weicherem Wasser verschneiden oder weniger Kohlendioxid geben.</translation>
    </message>
    <message>
        <source>GH and KH from limestone rise together, degree for degree; GH alone points to gypsum or a dose.</source>
        <translation>GH und KH aus Kalkstein steigen gemeinsam, Grad um Grad; GH allein deutet auf Gips oder eine Dosis.</translation>
    </message>
    <message>
        <source>Hardening rock</source>
        <translation>Aufhärtendes Gestein</translation>
    </message>
    <message>
        <source>what rock adds between changes, and where that ends</source>
        <translation>was Gestein zwischen den Wechseln bringt, und wo das endet</translation>
    </message>
    <message>
        <source>GH just before one change</source>
        <translation>GH kurz vor einem Wechsel</translation>
    </message>
    <message>
        <source>GH just before the next</source>
        <translation>GH kurz vor dem nächsten</translation>
    </message>
    <message>
        <source>Excess allowed</source>
        <translation>Erlaubter Überschuss</translation>
    </message>
    <message>
        <source>Mass balance; end point from Plummer and Busenberg 1982 with calcium&apos;s ion pairs, checked against PHREEQC 3.</source>
        <translation>Massenbilanz; Endpunkt aus Plummer und Busenberg 1982 mit den Ionenpaaren des Calciums, geprüft mit PHREEQC 3.</translation>
    </message>
    <message>
        <source>Nitrate</source>
        <translation>Nitrat</translation>
    </message>
    <message>
        <source>Nitrogen, all forms</source>
        <translation>Stickstoff, alle Formen</translation>
    </message>
    <message>
        <source>Ammonium</source>
        <translation>Ammonium</translation>
    </message>
    <message>
        <source>Phosphate</source>
        <translation>Phosphat</translation>
    </message>
    <message>
        <source>Phosphorus</source>
        <translation>Phosphor</translation>
    </message>
    <message>
        <source>Calcium</source>
        <translation>Calcium</translation>
    </message>
    <message>
        <source>Magnesium</source>
        <translation>Magnesium</translation>
    </message>
    <message>
        <source>Sulfate</source>
        <translation>Sulfat</translation>
    </message>
    <message>
        <source>Bicarbonate</source>
        <translation>Hydrogencarbonat</translation>
    </message>
    <message>
        <source>GH of the blend</source>
        <translation>GH des Verschnitts</translation>
    </message>
    <message>
        <source>KH of the blend</source>
        <translation>KH des Verschnitts</translation>
    </message>
    <message>
        <source>Dissolved solids of the blend</source>
        <translation>Gelöste Stoffe des Verschnitts</translation>
    </message>
    <message>
        <source>Chloride of the blend</source>
        <translation>Chlorid des Verschnitts</translation>
    </message>
    <message>
        <source>A target for KH needs the KH of the hard water.</source>
        <translation>Ein Ziel für KH braucht die KH des harten Wassers.</translation>
    </message>
    <message>
        <source>Give kh= as well.</source>
        <translation>Gib auch kh= an.</translation>
    </message>
    <message>
        <source>the share that brings GH and KH nearest to their targets, each miss as a part of its target</source>
        <translation>der Anteil, der GH und KH ihren Zielen am nächsten bringt, jeder Fehlbetrag als Teil seines Ziels</translation>
    </message>
    <message>
        <source>soft {share} %, for GH {tgh} and KH {tkh}</source>
        <translation>weich {share} %, für GH {tgh} und KH {tkh}</translation>
    </message>
    <message>
        <source>One share cannot meet two targets in general: see what GH and KH become, and mend the rest with salts.</source>
        <translation>Ein Anteil kann im Allgemeinen nicht zwei Ziele treffen: Sieh, was aus GH und KH wird, und gleich den Rest mit Salzen aus.</translation>
    </message>
    <message>
        <source>soft share = 1 − (target − soft) / (hard − soft)</source>
        <translation>weicher Anteil = 1 − (Ziel − weich) / (hart − weich)</translation>
    </message>
    <message>
        <source>soft share = 1 − ({tgh} − {sgh}) / ({gh} − {sgh}) = {share} %</source>
        <translation>weicher Anteil = 1 − ({tgh} − {sgh}) / ({gh} − {sgh}) = {share} %</translation>
    </message>
    <message>
        <source>Soft water</source>
        <translation>Weiches Wasser</translation>
    </message>
    <message>
        <source>Soft water to measure out</source>
        <translation>Abzumessendes weiches Wasser</translation>
    </message>
    <message>
        <source>Hard water to measure out</source>
        <translation>Abzumessendes hartes Wasser</translation>
    </message>
    <message>
        <source>Conductivity mixes in proportion only roughly, pH not at all.</source>
        <translation>Der Leitwert mischt sich nur ungefähr im Verhältnis, der pH gar nicht.</translation>
    </message>
    <message>
        <source>Water with little chloride leaves fish open to nitrite.</source>
        <translation>Wasser mit wenig Chlorid lässt Fische gegen Nitrit ungeschützt.</translation>
    </message>
    <message>
        <source>GH after a week without topping up</source>
        <translation>GH nach einer Woche ohne Auffüllen</translation>
    </message>
    <message>
        <source>GH after ten weeks of topping up, no changes</source>
        <translation>GH nach zehn Wochen Auffüllen, ohne Wechsel</translation>
    </message>
    <message>
        <source>settles at source + top-up × evaporated / changed</source>
        <translation>pendelt sich ein bei Quelle + Auffüllwasser × verdunstet / gewechselt</translation>
    </message>
    <message>
        <source>{source} + {top} × {week} / {change} = {settled} dGH</source>
        <translation>{source} + {top} × {week} / {change} = {settled} dGH</translation>
    </message>
    <message>
        <source>Evaporated per week</source>
        <translation>Verdunstung je Woche</translation>
    </message>
    <message>
        <source>GH just before a change, once settled</source>
        <translation>GH kurz vor einem Wechsel, eingependelt</translation>
    </message>
    <message>
        <source>{creep} dGH after ten weeks, {gh} now</source>
        <translation>{creep} dGH nach zehn Wochen, jetzt {gh}</translation>
    </message>
    <message>
        <source>Without changes hard top-up piles up without end.</source>
        <translation>Ohne Wechsel häuft sich hartes Auffüllwasser ohne Ende an.</translation>
    </message>
    <message>
        <source>Topping up with demineralised water ends the creep. Write top-ups apart from changes: they do opposite things.</source>
        <translation>Auffüllen mit entsalztem Wasser beendet das Kriechen. Schreib Auffüllen getrennt von Wechseln auf: Sie tun das Gegenteil.</translation>
    </message>
    <message>
        <source>Write a day&apos;s top-up to the record</source>
        <translation>Das Auffüllen eines Tages ins Journal schreiben</translation>
    </message>
    <message>
        <source>Blend two source waters</source>
        <translation>Zwei Ausgangswässer verschneiden</translation>
    </message>
    <message>
        <source>hard and soft water for one or two targets</source>
        <translation>hartes und weiches Wasser für ein oder zwei Ziele</translation>
    </message>
    <message>
        <source>GH of the hard water</source>
        <translation>GH des harten Wassers</translation>
    </message>
    <message>
        <source>GH of the soft water</source>
        <translation>GH des weichen Wassers</translation>
    </message>
    <message>
        <source>GH wanted</source>
        <translation>Gewünschte GH</translation>
    </message>
    <message>
        <source>Litres to mix</source>
        <translation>Zu mischende Liter</translation>
    </message>
    <message>
        <source>KH of the hard water</source>
        <translation>KH des harten Wassers</translation>
    </message>
    <message>
        <source>KH of the soft water</source>
        <translation>KH des weichen Wassers</translation>
    </message>
    <message>
        <source>KH wanted</source>
        <translation>Gewünschte KH</translation>
    </message>
    <message>
        <source>Dissolved solids of the hard water</source>
        <translation>Gelöste Stoffe des harten Wassers</translation>
    </message>
    <message>
        <source>Dissolved solids of the soft water</source>
        <translation>Gelöste Stoffe des weichen Wassers</translation>
    </message>
    <message>
        <source>Chloride of the hard water</source>
        <translation>Chlorid des harten Wassers</translation>
    </message>
    <message>
        <source>Chloride of the soft water</source>
        <translation>Chlorid des weichen Wassers</translation>
    </message>
    <message>
        <source>Linear mixing by volume; two targets by least squares without negative shares (Lawson and Hanson 1974).</source>
        <translation>Lineare Mischung nach Volumen; zwei Ziele nach kleinsten Quadraten ohne negative Anteile (Lawson und Hanson 1974).</translation>
    </message>
    <message>
        <source>Evaporation and top-up</source>
        <translation>Verdunstung und Auffüllen</translation>
    </message>
    <message>
        <source>where hardness creeps to</source>
        <translation>wohin die Härte kriecht</translation>
    </message>
    <message>
        <source>Evaporated per day</source>
        <translation>Verdunstung am Tag</translation>
    </message>
    <message>
        <source>GH of the top-up</source>
        <translation>GH des Auffüllwassers</translation>
    </message>
    <message>
        <source>Mass balance: minerals stay, water leaves. Topped up to full first, then changed.</source>
        <translation>Massenbilanz: Minerale bleiben, Wasser geht. Erst ganz aufgefüllt, dann gewechselt.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number for &quot;%2&quot;.</source>
        <translation>„%1“ ist keine Zahl für „%2“.</translation>
    </message>
    <message>
        <source>Write %1=6.6, or %1=6.6±0.1 with its doubt.</source>
        <translation>Schreib %1=6.6, oder %1=6.6±0.1 mit seiner Unsicherheit.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in two ways.</source>
        <translation>„%1“ lässt sich auf zwei Arten lesen.</translation>
    </message>
    <message>
        <source>Write thousands without a mark, or the decimal mark as a point.</source>
        <translation>Schreib Tausender ohne Zeichen, oder das Dezimalzeichen als Punkt.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no unit &quot;%2&quot;.</source>
        <translation>„%1“ hat keine Einheit „%2“.</translation>
    </message>
    <message>
        <source>Leave the unit out.</source>
        <translation>Lass die Einheit weg.</translation>
    </message>
    <message>
        <source>It is reckoned in %1.</source>
        <translation>Gerechnet wird in %1.</translation>
    </message>
    <message>
        <source>Choose one of %1.</source>
        <translation>Wähle eines von %1.</translation>
    </message>
    <message>
        <source>The sheet &quot;%1&quot; has no &quot;%2&quot;.</source>
        <translation>Das Blatt „%1“ hat kein „%2“.</translation>
    </message>
    <message>
        <source>Did you mean &quot;%1&quot;?</source>
        <translation>War „%1“ gemeint?</translation>
    </message>
    <message>
        <source>It takes: %1.</source>
        <translation>Es nimmt: %1.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is one too many for the sheet &quot;%2&quot;.</source>
        <translation>„%1“ ist für das Blatt „%2“ eins zu viel.</translation>
    </message>
    <message>
        <source>Nothing was typed.</source>
        <translation>Es wurde nichts getippt.</translation>
    </message>
    <message>
        <source>Begin with the name of a sheet, such as co2.</source>
        <translation>Beginne mit dem Namen eines Blatts, etwa co2.</translation>
    </message>
    <message>
        <source>There is no sheet &quot;%1&quot;.</source>
        <translation>Es gibt kein Blatt „%1“.</translation>
    </message>
    <message>
        <source>There are: %1.</source>
        <translation>Es gibt: %1.</translation>
    </message>
    <message>
        <source>Weight on the floor</source>
        <translation>Gewicht auf dem Boden</translation>
    </message>
    <message>
        <source>Pressure on the base, averaged</source>
        <translation>Druck auf die Grundfläche, gemittelt</translation>
    </message>
    <message>
        <source>A bow is deeper than nothing and at most half as deep as the tank is long.</source>
        <translation>Ein Bogen ist tiefer als nichts und höchstens halb so tief, wie das Becken lang ist.</translation>
    </message>
    <message>
        <source>Give bow= in cm, measured from the straight line between the corners.</source>
        <translation>Gib bow= in cm an, gemessen von der geraden Linie zwischen den Ecken.</translation>
    </message>
    <message>
        <source>Nothing is left for water inside these measures.</source>
        <translation>In diesen Maßen bleibt nichts für Wasser.</translation>
    </message>
    <message>
        <source>Lengths are outside measures in cm, glass in mm; check bed and rock.</source>
        <translation>Längen sind Außenmaße in cm, Glas in mm; prüfe Bodengrund und Steine.</translation>
    </message>
    <message>
        <source>net = inside − bed × (1 − pores) − rock / density − wood / 1.1</source>
        <translation>netto = innen − Bodengrund × (1 − Poren) − Stein / Dichte − Holz / 1,1</translation>
    </message>
    <message>
        <source>net = {inside} − {bed} × (1 − {porosity} %) − {rock} / {density} − {wood} / 1.1 = {net} L</source>
        <translation>netto = {inside} − {bed} × (1 − {porosity} %) − {rock} / {density} − {wood} / 1,1 = {net} L</translation>
    </message>
    <message>
        <source>Inside of the glass up to the gap</source>
        <translation>Innenraum des Glases bis zum Wasserspiegel</translation>
    </message>
    <message>
        <source>As a label would say it, outside measures</source>
        <translation>Wie ein Etikett es sagen würde, Außenmaße</translation>
    </message>
    <message>
        <source>Overdose if dosed by the label</source>
        <translation>Überdosis, wenn nach dem Etikett dosiert wird</translation>
    </message>
    <message>
        <source>Water in the pores of the bed belongs to the tank. Buckets counted on the day of filling are better than any sum.</source>
        <translation>Wasser in den Poren des Bodengrunds gehört zum Becken. Am Tag des Füllens gezählte Eimer sind besser als jede Rechnung.</translation>
    </message>
    <message>
        <source>Net volume</source>
        <translation>Nettovolumen</translation>
    </message>
    <message>
        <source>litres of water, not of glass: every dose is reckoned on them</source>
        <translation>Liter Wasser, nicht Glas: Jede Dosis wird danach gerechnet</translation>
    </message>
    <message>
        <source>Length, outside</source>
        <translation>Länge, außen</translation>
    </message>
    <message>
        <source>Depth, front to back, outside</source>
        <translation>Tiefe, von vorn nach hinten, außen</translation>
    </message>
    <message>
        <source>Height, outside</source>
        <translation>Höhe, außen</translation>
    </message>
    <message>
        <source>Glass</source>
        <translation>Glas</translation>
    </message>
    <message>
        <source>Rim to water surface</source>
        <translation>Rand bis Wasserspiegel</translation>
    </message>
    <message>
        <source>Soil or sand, poured</source>
        <translation>Soil oder Sand, geschüttet</translation>
    </message>
    <message>
        <source>Pores of the bed</source>
        <translation>Poren des Bodengrunds</translation>
    </message>
    <message>
        <source>Rock</source>
        <translation>Gestein</translation>
    </message>
    <message>
        <source>Density of the rock</source>
        <translation>Dichte des Gesteins</translation>
    </message>
    <message>
        <source>Sunk wood</source>
        <translation>Gesunkenes Holz</translation>
    </message>
    <message>
        <source>Stand and furniture</source>
        <translation>Unterschrank und Möbel</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>rectangle</source>
        <translation>Rechteck</translation>
    </message>
    <message>
        <source>bow front</source>
        <translation>Bogenfront</translation>
    </message>
    <message>
        <source>cylinder, length is its width</source>
        <translation>Zylinder, Länge ist seine Breite</translation>
    </message>
    <message>
        <source>hexagon, length is one side</source>
        <translation>Sechseck, Länge ist eine Seite</translation>
    </message>
    <message>
        <source>Bow, from the corners&apos; line</source>
        <translation>Bogen, von der Linie der Ecken</translation>
    </message>
    <message>
        <source>Plane geometry. Pores of gravel 25–40 %, of sand 25–50 % (Freeze and Cherry 1979, from memory); density of quartz and granite 2.65 kg/L (from memory).</source>
        <translation>Ebene Geometrie. Poren von Kies 25–40 %, von Sand 25–50 % (Freeze und Cherry 1979, aus dem Gedächtnis); Dichte von Quarz und Granit 2,65 kg/L (aus dem Gedächtnis).</translation>
    </message>
    <message>
        <source>The formula and its figures are in %1.</source>
        <translation>Die Formel und ihre Zahlen sind in %1.</translation>
    </message>
    <message>
        <source>Write this acclimation to the record</source>
        <translation>Diese Eingewöhnung ins Journal schreiben</translation>
    </message>
    <message>
        <source>acclimation</source>
        <translation>Eingewöhnung</translation>
    </message>
    <message>
        <source>Dripped {drip} mL/min for {minutes} min.</source>
        <translation>{drip} mL/min über {minutes} min getröpfelt.</translation>
    </message>
    <message>
        <source>Dose {dose-k} mg/L to keep it.</source>
        <translation>{dose-k} mg/L dosieren, um es zu halten.</translation>
    </message>
    <message>
        <source>{power} W hold {tank} °C in a room of {room} °C; a heater of {least} to {most} W suits.</source>
        <translation>{power} W halten {tank} °C in einem Raum mit {room} °C; ein Heizer mit {least} bis {most} W passt.</translation>
    </message>
    <message>
        <source>Choose one of those listed.</source>
        <translation>Einen der aufgeführten Werte wählen.</translation>
    </message>
    <message>
        <source>source water &quot;%1&quot;, reckoned from its parts</source>
        <translation>Ausgangswasser „%1“, aus seinen Teilen gerechnet</translation>
    </message>
    <message>
        <source>source water &quot;%1&quot;, taken as free of salts</source>
        <translation>Ausgangswasser „%1“, als salzfrei angenommen</translation>
    </message>
    <message>
        <source>{bleach} mL of bleach in {litres} L.</source>
        <translation>{bleach} mL Bleiche in {litres} L.</translation>
    </message>
    <message>
        <source>Check the decimal mark of the pH.</source>
        <translation>Das Dezimalzeichen des pH prüfen.</translation>
    </message>
    <message>
        <source>Oxygen in balance with air at {temp} °C is {saturation} mg/L.</source>
        <translation>Sauerstoff im Gleichgewicht mit der Luft bei {temp} °C: {saturation} mg/L.</translation>
    </message>
    <message>
        <source>The rock adds no hardness that the kit can tell between two changes.</source>
        <translation>Das Gestein bringt zwischen zwei Wasserwechseln keine Härte, die der Test erkennen kann.</translation>
    </message>
    <message>
        <source>The rock adds {rise} degrees between two changes, {excess} above the source once settled.</source>
        <translation>Das Gestein bringt {rise} Grad zwischen zwei Wasserwechseln, eingependelt {excess} über dem Ausgangswasser.</translation>
    </message>
    <message>
        <source>Write this blend to the record</source>
        <translation>Diesen Verschnitt ins Journal schreiben</translation>
    </message>
    <message>
        <source>source water blended</source>
        <translation>Ausgangswasser verschnitten</translation>
    </message>
    <message>
        <source>{soft} L of soft and {hard} L of hard water.</source>
        <translation>{soft} L weiches und {hard} L hartes Wasser.</translation>
    </message>
    <message>
        <source>Name each as in %1=...</source>
        <translation>Jeden Wert benennen wie in %1=...</translation>
    </message>
    <message>
        <source>Water over the outside base is counted, which errs on the heavy side of {net} L.</source>
        <translation>Gezählt wird Wasser über der Außengrundfläche; das liegt auf der schweren Seite von {net} L.</translation>
    </message>
    <message>
        <source>Net volume reckoned as {net} L.</source>
        <translation>Nettovolumen gerechnet: {net} L.</translation>
    </message>
</context>
<context>
    <name>ShelfExchange</name>
    <message>
        <source>&quot;%1&quot; is not a date such as 2026-11-25.</source>
        <translation>„%1“ ist kein Datum wie 2026-11-25.</translation>
    </message>
    <message>
        <source>There is no source water &quot;%1&quot; here. Bring in its tank first.</source>
        <translation>Ein Ausgangswasser „%1“ gibt es hier nicht. Zuerst dessen Becken übernehmen.</translation>
    </message>
    <message>
        <source>There is no tank &quot;%1&quot; here. Bring it in first.</source>
        <translation>Ein Becken „%1“ gibt es hier nicht. Zuerst das Becken übernehmen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of %2.</source>
        <translation>„%1“ gehört nicht zu: %2.</translation>
    </message>
    <message>
        <source>There is a supply &quot;%1&quot; already, and it differs.</source>
        <translation>Einen Vorrat „%1“ gibt es schon, und er weicht ab.</translation>
    </message>
    <message>
        <source>This program reads version %1 of the format.</source>
        <translation>Dieses Programm liest Version %1 des Formats.</translation>
    </message>
</context>
<context>
    <name>SourceWater</name>
    <message>
        <source>Open the source water and name its two parts and their share.</source>
        <translation>Das Ausgangswasser öffnen und seine zwei Teile und ihren Anteil nennen.</translation>
    </message>
    <message>
        <source>The blend %1 is made of itself.</source>
        <translation>Der Verschnitt %1 besteht aus sich selbst.</translation>
    </message>
    <message>
        <source>The parts of the blend %1 are not both named.</source>
        <translation>Die Teile des Verschnitts %1 sind nicht beide genannt.</translation>
    </message>
    <message>
        <source>The share of the first part in the blend %1 is not stated.</source>
        <translation>Der Anteil des ersten Teils im Verschnitt %1 ist nicht angegeben.</translation>
    </message>
    <message>
        <source>%1 unknown</source>
        <translation>%1 unbekannt</translation>
    </message>
    <message>
        <source>%1 %2, reckoned</source>
        <translation>%1 %2, gerechnet</translation>
    </message>
    <message>
        <source>%1 %2, assumed</source>
        <translation>%1 %2, angenommen</translation>
    </message>
    <message>
        <source>%1 %2, measured</source>
        <translation>%1 %2, gemessen</translation>
    </message>
    <message>
        <source>chloramine in it</source>
        <translation>mit Chloramin</translation>
    </message>
    <message>
        <source>no chloramine</source>
        <translation>kein Chloramin</translation>
    </message>
    <message>
        <source>chloramine unknown</source>
        <translation>Chloramin unbekannt</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>It comes to: %1.</source>
        <translation>Es ergibt: %1.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>Stock</name>
    <message>
        <source>That layout is not in the store any more.</source>
        <translation>Dieses Layout ist nicht mehr in der Datei.</translation>
    </message>
    <message>
        <source>There must be at least one animal in each lot.</source>
        <translation>In jeder Gruppe muss mindestens ein Tier sein.</translation>
    </message>
    <message>
        <source>Take more animals or fewer lots.</source>
        <translation>Nimm mehr Tiere oder weniger Gruppen.</translation>
    </message>
    <message>
        <source>The litres of this tank are not known.</source>
        <translation>Die Liter dieses Beckens sind nicht bekannt.</translation>
    </message>
    <message>
        <source>Give its dimensions, or the litres measured on flood day.</source>
        <translation>Gib seine Maße an, oder die am Tag der Flutung gemessenen Liter.</translation>
    </message>
    <message>
        <source>The trial was stopped.</source>
        <translation>Der Versuch wurde abgebrochen.</translation>
    </message>
    <message>
        <source>%1 planned</source>
        <translation>%1 geplant</translation>
    </message>
    <message>
        <source>%1 added</source>
        <translation>%1 hinzugefügt</translation>
    </message>
</context>
<context>
    <name>StockWords</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2, under %3</source>
        <translation>%1 %2, unter %3</translation>
    </message>
    <message>
        <source>%1 %2, over %3</source>
        <translation>%1 %2, über %3</translation>
    </message>
    <message>
        <source>%1 out of range at times</source>
        <translation>%1 zeitweise außerhalb</translation>
    </message>
    <message>
        <source>%1 may leave the range</source>
        <translation>%1 könnte den Bereich verlassen</translation>
    </message>
    <message>
        <source>Group of %1, least %2</source>
        <translation>Gruppe von %1, mindestens %2</translation>
    </message>
    <message>
        <source>%1 lost in two weeks</source>
        <translation>%1 in zwei Wochen verloren</translation>
    </message>
    <message>
        <source>Eats the %1</source>
        <translation>Frisst %1</translation>
    </message>
    <message>
        <source>No %1 suits it and %2</source>
        <translation>Kein Wert für %1 passt ihm und %2</translation>
    </message>
    <message>
        <source>%1 stays under %2 (%3).</source>
        <translation>%1 bleibt unter %2 (%3).</translation>
    </message>
    <message>
        <source>%1 goes over %2 at some time: %3 with them, hardly ever without.</source>
        <translation>%1 geht irgendwann über %2: %3 mit ihnen, kaum je ohne.</translation>
    </message>
    <message>
        <source>%1 goes over %2 at some time: %3 with them, %4 without.</source>
        <translation>%1 geht irgendwann über %2: %3 mit ihnen, %4 ohne.</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1: what it bears is not known</source>
        <translation>%1: was es verträgt, ist nicht bekannt</translation>
    </message>
    <message>
        <source>%1: bears %2; no reading in the last two weeks</source>
        <translation>%1: verträgt %2; kein Messwert in den letzten zwei Wochen</translation>
    </message>
    <message>
        <source>%1: bears %2; this water %3</source>
        <translation>%1: verträgt %2; dieses Wasser %3</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>%1, planned for %2</source>
        <translation>%1, geplant für %2</translation>
    </message>
    <message>
        <source>%1, thought about</source>
        <translation>%1, erwogen</translation>
    </message>
    <message>
        <source>%1 since %2, %3 lost</source>
        <translation>%1 seit %2, %3 verloren</translation>
    </message>
    <message>
        <source>%1 since %2</source>
        <translation>%1 seit %2</translation>
    </message>
    <message>
        <source>Species not in the list</source>
        <translation>Art nicht in der Liste</translation>
    </message>
    <message>
        <source>Gate not open yet</source>
        <translation>Freigabe noch nicht offen</translation>
    </message>
    <message>
        <source>Gate: not all looked at</source>
        <translation>Freigabe: nicht alles angesehen</translation>
    </message>
    <message>
        <source>Unknown: no readings</source>
        <translation>Unbekannt: keine Messwerte</translation>
    </message>
    <message>
        <source>May go in now</source>
        <translation>Darf jetzt einziehen</translation>
    </message>
    <message>
        <source>In range</source>
        <translation>Im Bereich</translation>
    </message>
    <message>
        <source>In range; %1 not read</source>
        <translation>Im Bereich; %1 nicht gemessen</translation>
    </message>
    <message>
        <source>There are %1; it lives in groups of %2 or more.</source>
        <translation>Es sind %1; es lebt in Gruppen von %2 oder mehr.</translation>
    </message>
    <message>
        <source>It eats shrimp: %1 live or come here.</source>
        <translation>Es frisst Garnelen: %1 leben hier oder kommen.</translation>
    </message>
    <message>
        <source>It eats young shrimp (%1); moss gives cover.</source>
        <translation>Es frisst junge Garnelen (%1); Moos gibt Deckung.</translation>
    </message>
    <message>
        <source>It eats snails: %1.</source>
        <translation>Es frisst Schnecken: %1.</translation>
    </message>
    <message>
        <source>The %1 fits its mouth.</source>
        <translation>%1 passt in sein Maul.</translation>
    </message>
    <message>
        <source>It eats or rasps plants.</source>
        <translation>Es frisst oder raspelt Pflanzen.</translation>
    </message>
    <message>
        <source>It may nip the fins of %1.</source>
        <translation>Es zupft vielleicht an den Flossen von %1.</translation>
    </message>
    <message>
        <source>It holds a territory, most of all when it breeds.</source>
        <translation>Es hält ein Revier, am meisten bei der Brut.</translation>
    </message>
    <message>
        <source>Males fight: one male to a tank.</source>
        <translation>Männchen kämpfen: ein Männchen je Becken.</translation>
    </message>
    <message>
        <source>No value of %1 suits both it and %2.</source>
        <translation>Kein Wert für %1 passt zugleich ihm und %2.</translation>
    </message>
    <message>
        <source>Lost in the last two weeks: %1.</source>
        <translation>In den letzten zwei Wochen verloren: %1.</translation>
    </message>
    <message>
        <source>It needs a film to graze; look at its belly every day for three weeks.</source>
        <translation>Es braucht Aufwuchs zum Weiden; sieh drei Wochen lang täglich nach dem Bauch.</translation>
    </message>
    <message>
        <source>It gets out of open tanks: keep the lid on.</source>
        <translation>Es verlässt offene Becken: Deckel zulassen.</translation>
    </message>
    <message>
        <source>It is banned or listed in some places: look up the local rules.</source>
        <translation>Mancherorts ist es verboten oder gelistet: die örtlichen Regeln nachsehen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no species of the list, so its water, gate and company are not compared. Edit the entry and give a scientific or common name.</source>
        <translation>„%1“ nennt keine Art der Liste, also werden Wasser, Freigabe und Gesellschaft nicht verglichen. Bearbeite den Eintrag und gib einen wissenschaftlichen oder gängigen Namen an.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The water does not suit: %1.</source>
        <translation>Das Wasser passt nicht: %1.</translation>
    </message>
    <message>
        <source>little light</source>
        <translation>wenig Licht</translation>
    </message>
    <message>
        <source>middling light</source>
        <translation>mittleres Licht</translation>
    </message>
    <message>
        <source>much light</source>
        <translation>viel Licht</translation>
    </message>
    <message>
        <source>light need not known</source>
        <translation>Lichtbedarf unbekannt</translation>
    </message>
    <message>
        <source>takes CO₂ from the air</source>
        <translation>nimmt CO₂ aus der Luft</translation>
    </message>
    <message>
        <source>does without added CO₂</source>
        <translation>geht ohne CO₂-Zugabe</translation>
    </message>
    <message>
        <source>CO₂ helps much</source>
        <translation>CO₂ hilft sehr</translation>
    </message>
    <message>
        <source>CO₂ needed</source>
        <translation>CO₂ nötig</translation>
    </message>
    <message>
        <source>CO₂ need not known</source>
        <translation>CO₂-Bedarf unbekannt</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>Short of light and CO₂</source>
        <translation>Zu wenig Licht und CO₂</translation>
    </message>
    <message>
        <source>Short of light</source>
        <translation>Zu wenig Licht</translation>
    </message>
    <message>
        <source>Short of CO₂</source>
        <translation>Zu wenig CO₂</translation>
    </message>
    <message>
        <source>Spreading, now %1</source>
        <translation>Breitet sich aus, jetzt %1</translation>
    </message>
    <message>
        <source>Less than before, now %1</source>
        <translation>Weniger als zuvor, jetzt %1</translation>
    </message>
    <message>
        <source>Steady at %1</source>
        <translation>Stetig bei %1</translation>
    </message>
    <message>
        <source>Recovered</source>
        <translation>Erholt</translation>
    </message>
    <message>
        <source>Nothing seen against it</source>
        <translation>Nichts Gegenteiliges gesehen</translation>
    </message>
    <message>
        <source>light %1 PAR for %2 h</source>
        <translation>Licht %1 PAR für %2 h</translation>
    </message>
    <message>
        <source>light for %1 h, PAR not measured</source>
        <translation>Licht für %1 h, PAR nicht gemessen</translation>
    </message>
    <message>
        <source>light not recorded</source>
        <translation>Licht nicht eingetragen</translation>
    </message>
    <message>
        <source>%1; no CO₂ added</source>
        <translation>%1; ohne CO₂-Zugabe</translation>
    </message>
    <message>
        <source>%1: the water keeps to its limits %2, as without them.</source>
        <translation>%1: Das Wasser hält seine Grenzen %2, wie ohne sie.</translation>
    </message>
    <message>
        <source>%1: the water keeps to its limits %2; without them %3.</source>
        <translation>%1: Das Wasser hält seine Grenzen %2; ohne sie %3.</translation>
    </message>
    <message>
        <source>Short way, water alike: temperature only</source>
        <translation>Kurzer Weg, ähnliches Wasser: nur die Temperatur</translation>
    </message>
    <message>
        <source>Drip slowly into the bag&apos;s water</source>
        <translation>Langsam ins Beutelwasser tröpfeln</translation>
    </message>
    <message>
        <source>Long in the bag: open it and move on</source>
        <translation>Lange im Beutel: öffnen und zügig weiter</translation>
    </message>
    <message>
        <source>Hardness too far apart: over days, in quarantine</source>
        <translation>Härte zu verschieden: über Tage, in Quarantäne</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Lights out for the rest of the day</source>
        <translation>Licht für den Rest des Tages aus</translation>
    </message>
    <message>
        <source>less stress for both sides</source>
        <translation>weniger Stress für beide Seiten</translation>
    </message>
    <message>
        <source>Float the closed bag for %1 min</source>
        <translation>Den geschlossenen Beutel %1 min treiben lassen</translation>
    </message>
    <message>
        <source>Open it and go on at once</source>
        <translation>Öffnen und gleich weitermachen</translation>
    </message>
    <message>
        <source>as CO₂ leaves, pH climbs and ammonia in the bag turns free</source>
        <translation>während CO₂ entweicht, steigt der pH, und Ammoniak im Beutel wird frei</translation>
    </message>
    <message>
        <source>Drip %1 mL/min for %2 min, to three times the volume</source>
        <translation>%2 min lang %1 mL/min tröpfeln, bis zum Dreifachen des Volumens</translation>
    </message>
    <message>
        <source>in a covered bucket</source>
        <translation>in einem abgedeckten Eimer</translation>
    </message>
    <message>
        <source>Match the temperature</source>
        <translation>Die Temperatur angleichen</translation>
    </message>
    <message>
        <source>Net across; the bag&apos;s water goes down the drain</source>
        <translation>Herüberkeschern; das Beutelwasser kommt in den Abfluss</translation>
    </message>
    <message>
        <source>nothing from the bag into the tank</source>
        <translation>nichts aus dem Beutel ins Becken</translation>
    </message>
    <message>
        <source>CO₂ down by %1 for the day</source>
        <translation>CO₂ für den Tag um %1 senken</translation>
    </message>
    <message>
        <source>watch breathing; feed nothing today</source>
        <translation>auf die Atmung achten; heute nicht füttern</translation>
    </message>
    <message>
        <source>Day %1 since %2 came in on %3.</source>
        <translation>Tag %1, seit %2 am %3 einzog.</translation>
    </message>
    <message>
        <source>Day %1 since %2 was lost on %3.</source>
        <translation>Tag %1, seit %2 am %3 verloren ging.</translation>
    </message>
    <message>
        <source>Day %1 since %2 was seen on %3.</source>
        <translation>Tag %1, seit %2 am %3 gesehen wurde.</translation>
    </message>
    <message>
        <source>%1 Quarantine was entered as done on %2.</source>
        <translation>%1 Die Quarantäne wurde am %2 als erledigt eingetragen.</translation>
    </message>
    <message>
        <source>%1 More than four weeks without a new arrival or sign.</source>
        <translation>%1 Mehr als vier Wochen ohne neuen Zugang oder Anzeichen.</translation>
    </message>
    <message>
        <source>%1 Three weeks are over on %2, four on %3; each arrival, loss or sign starts anew.</source>
        <translation>%1 Drei Wochen sind am %2 um, vier am %3; jeder Zugang, Verlust oder jedes Anzeichen beginnt von vorn.</translation>
    </message>
    <message>
        <source>a tank that is gone</source>
        <translation>ein Becken, das es nicht mehr gibt</translation>
    </message>
    <message>
        <source>squeezings</source>
        <translation>Filtermulm</translation>
    </message>
    <message>
        <source>%1 of a filter</source>
        <translation>%1 eines Filters</translation>
    </message>
    <message>
        <source>media</source>
        <translation>Filtermaterial</translation>
    </message>
    <message>
        <source>%1 to %2, %3: %4</source>
        <translation>%1 nach %2, %3: %4</translation>
    </message>
    <message>
        <source>Needs %1, has %2</source>
        <translation>Braucht %1, hat %2</translation>
    </message>
    <message>
        <source>It wants %1 of water; this tank holds %2.</source>
        <translation>Es will %1 Wasser; dieses Becken hat %2.</translation>
    </message>
    <message>
        <source>%1; CO₂ %2</source>
        <translation>%1; CO₂ %2</translation>
    </message>
    <message>
        <source>less than %1 an hour</source>
        <translation>weniger als %1 in der Stunde</translation>
    </message>
    <message>
        <source>GH moves %1 an hour</source>
        <translation>GH ändert sich um %1 in der Stunde</translation>
    </message>
    <message>
        <source>Into quarantine with water like the bag&apos;s; %1 a day from there</source>
        <translation>In Quarantäne mit Wasser wie im Beutel; von da an %1 am Tag</translation>
    </message>
    <message>
        <source>GH differs by %1</source>
        <translation>GH weicht um %1 ab</translation>
    </message>
    <message>
        <source>%1: bears %2; this water %3; coming fortnight %4, 8 in 10</source>
        <translation>%1: verträgt %2; dieses Wasser %3; kommende zwei Wochen %4, 8 von 10</translation>
    </message>
    <message>
        <source>%1: bears %2; no reading in the last two weeks; coming fortnight %3, 8 in 10</source>
        <translation>%1: verträgt %2; kein Messwert in den letzten zwei Wochen; kommende zwei Wochen %3, 8 von 10</translation>
    </message>
    <message>
        <source>What comes is unknown: there is no forecast of this tank yet.</source>
        <translation>Was kommt, ist unbekannt: Für dieses Becken gibt es noch keine Vorhersage.</translation>
    </message>
    <message>
        <source>What comes is unknown for pH, hardness and temperature: they are not forecast.</source>
        <translation>Was kommt, ist für pH, Härte und Temperatur unbekannt: Dafür gibt es keine Vorhersage.</translation>
    </message>
</context>
<context>
    <name>Store</name>
    <message>
        <source>The backup could not be made (%1).</source>
        <translation>Die Sicherung konnte nicht gemacht werden (%1).</translation>
    </message>
    <message>
        <source>Choose a folder that exists, that you may write to and that has room, then try again.</source>
        <translation>Wähle einen Ordner, den es gibt, in den du schreiben darfst und der Platz hat, und versuch es erneut.</translation>
    </message>
    <message>
        <source>it could not be written to disk</source>
        <translation>sie konnte nicht auf den Datenträger geschrieben werden</translation>
    </message>
    <message>
        <source>it could not be given its name</source>
        <translation>sie konnte ihren Namen nicht bekommen</translation>
    </message>
    <message>
        <source>There is already a file of this name; it was left as it is.</source>
        <translation>Eine Datei dieses Namens gibt es schon; sie blieb, wie sie war.</translation>
    </message>
    <message>
        <source>Choose another name for the backup.</source>
        <translation>Wähle einen anderen Namen für die Sicherung.</translation>
    </message>
    <message>
        <source>It has no date and time.</source>
        <translation>Datum und Uhrzeit fehlen.</translation>
    </message>
    <message>
        <source>Give the day and time it belongs to.</source>
        <translation>Gib Tag und Uhrzeit an, zu denen es gehört.</translation>
    </message>
    <message>
        <source>It does not say which layout it belongs to.</source>
        <translation>Es sagt nicht, zu welchem Layout es gehört.</translation>
    </message>
    <message>
        <source>Choose a layout; a tank without one needs its layout added first.</source>
        <translation>Wähle ein Layout; ein Becken ohne eines braucht zuerst sein Layout.</translation>
    </message>
    <message>
        <source>It does not say which tank it belongs to.</source>
        <translation>Es sagt nicht, zu welchem Becken es gehört.</translation>
    </message>
    <message>
        <source>Choose a tank.</source>
        <translation>Wähle ein Becken.</translation>
    </message>
    <message>
        <source>There is no parameter &quot;%1&quot;.</source>
        <translation>Es gibt keinen Parameter „%1“.</translation>
    </message>
    <message>
        <source>Use one of the parameters the program lists.</source>
        <translation>Nimm einen der Parameter, die das Programm aufführt.</translation>
    </message>
    <message>
        <source>%1 cannot be given in &quot;%2&quot;.</source>
        <translation>%1 kann nicht in „%2“ angegeben werden.</translation>
    </message>
    <message>
        <source>Units it takes: %1.</source>
        <translation>Mögliche Einheiten: %1.</translation>
    </message>
    <message>
        <source>One of its numbers is not a number.</source>
        <translation>Eine seiner Zahlen ist keine Zahl.</translation>
    </message>
    <message>
        <source>Type the number again.</source>
        <translation>Tippe die Zahl noch einmal.</translation>
    </message>
    <message>
        <source>One of its measures is below zero.</source>
        <translation>Eines seiner Maße ist unter null.</translation>
    </message>
    <message>
        <source>Type the measure again; zero stands for not given.</source>
        <translation>Tippe das Maß noch einmal; null steht für nicht angegeben.</translation>
    </message>
    <message>
        <source>A share must lie between 0 and 100 %.</source>
        <translation>Ein Anteil muss zwischen 0 und 100 % liegen.</translation>
    </message>
    <message>
        <source>Type the percentage again.</source>
        <translation>Tippe die Prozente noch einmal.</translation>
    </message>
    <message>
        <source>Its contents are not valid JSON.</source>
        <translation>Sein Inhalt ist kein gültiges JSON.</translation>
    </message>
    <message>
        <source>Make it again from its page, or correct the file it came from.</source>
        <translation>Erstelle es von seiner Seite neu, oder berichtige die Datei, aus der es kam.</translation>
    </message>
    <message>
        <source>This folder&apos;s file system cannot hold a store safely.</source>
        <translation>Das Dateisystem dieses Ordners kann die Datei nicht sicher halten.</translation>
    </message>
    <message>
        <source>Move the store to a disk of this computer; network folders often lack what is needed.</source>
        <translation>Verschiebe die Datei auf einen Datenträger dieses Rechners; Netzwerkordnern fehlt oft, was nötig ist.</translation>
    </message>
    <message>
        <source>Severity goes from 0 (gone) to 4 (out of hand).</source>
        <translation>Die Schwere geht von 0 (weg) bis 4 (außer Kontrolle).</translation>
    </message>
    <message>
        <source>Choose one of the five steps.</source>
        <translation>Wähle eine der fünf Stufen.</translation>
    </message>
    <message>
        <source>Another program is writing to this store.</source>
        <translation>Ein anderes Programm schreibt in diese Datei.</translation>
    </message>
    <message>
        <source>Wait until it has finished, or close it, then try again.</source>
        <translation>Warte, bis es fertig ist, oder schließ es, und versuch es erneut.</translation>
    </message>
    <message>
        <source>This store cannot be written to.</source>
        <translation>In diese Datei kann nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>Check that you may write to the file and its folder, or copy it to a folder of your own.</source>
        <translation>Prüfe, ob du die Datei und ihren Ordner beschreiben darfst, oder kopiere sie in einen eigenen Ordner.</translation>
    </message>
    <message>
        <source>There is no room left on the disk; nothing was changed.</source>
        <translation>Auf dem Datenträger ist kein Platz mehr; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Free some space, then try again.</source>
        <translation>Schaff etwas Platz und versuch es erneut.</translation>
    </message>
    <message>
        <source>The disk could not be read or written (%1).</source>
        <translation>Der Datenträger konnte nicht gelesen oder beschrieben werden (%1).</translation>
    </message>
    <message>
        <source>Check that the disk is still connected, then try again; copy the file elsewhere if this goes on.</source>
        <translation>Prüfe, ob der Datenträger noch verbunden ist, und versuch es erneut; kopiere die Datei anderswohin, wenn es so weitergeht.</translation>
    </message>
    <message>
        <source>The file could not be opened.</source>
        <translation>Die Datei konnte nicht geöffnet werden.</translation>
    </message>
    <message>
        <source>Check that you may read the file and write to its folder, or copy it to a folder of your own.</source>
        <translation>Prüfe, ob du die Datei lesen und ihren Ordner beschreiben darfst, oder kopiere sie in einen eigenen Ordner.</translation>
    </message>
    <message>
        <source>This change would contradict what is in the store (%1).</source>
        <translation>Diese Änderung widerspräche dem, was in der Datei ist (%1).</translation>
    </message>
    <message>
        <source>Nothing was changed. Load the store again and look at what is there now.</source>
        <translation>Nichts wurde geändert. Lade die Datei neu und sieh nach, was jetzt darin ist.</translation>
    </message>
    <message>
        <source>The database refused: %1.</source>
        <translation>Die Datenbank weigerte sich: %1.</translation>
    </message>
    <message>
        <source>Nothing was changed. Try again; if it goes on, have the store verified.</source>
        <translation>Nichts wurde geändert. Versuch es erneut; wenn es so weitergeht, lass die Datei prüfen.</translation>
    </message>
    <message>
        <source>This store is damaged (%1).</source>
        <translation>Diese Datei ist beschädigt (%1).</translation>
    </message>
    <message>
        <source>Keep the file as it is, restore the newest backup, and export what can still be read from a copy (the sqlite3 shell&apos;s .recover does that).</source>
        <translation>Lass die Datei, wie sie ist, spiel die neueste Sicherung zurück und exportiere aus einer Kopie, was noch lesbar ist (das .recover der sqlite3-Shell tut das).</translation>
    </message>
    <message>
        <source>This file is not a Littoral store.</source>
        <translation>Diese Datei ist kein Littoral-Datenbestand.</translation>
    </message>
    <message>
        <source>Choose a file with the suffix .littoral; the file was left untouched.</source>
        <translation>Wähle eine Datei mit der Endung .littoral; die Datei blieb unberührt.</translation>
    </message>
    <message>
        <source>This store was written by a newer version of the program (store format %1, this program knows %2).</source>
        <translation>Diese Datei wurde von einer neueren Version des Programms geschrieben (Format %1, dieses Programm kennt %2).</translation>
    </message>
    <message>
        <source>Open it with a newer version of the program; the file was left untouched.</source>
        <translation>Öffne sie mit einer neueren Version des Programms; die Datei blieb unberührt.</translation>
    </message>
    <message>
        <source>Layout</source>
        <translation>Layout</translation>
    </message>
    <message>
        <source>A tank&apos;s layouts are numbered from 1.</source>
        <translation>Die Layouts eines Beckens werden ab 1 gezählt.</translation>
    </message>
    <message>
        <source>Number it 1 or higher.</source>
        <translation>Gib ihm die Nummer 1 oder höher.</translation>
    </message>
    <message>
        <source>The layout ends before it was flooded.</source>
        <translation>Das Layout endet, bevor es geflutet wurde.</translation>
    </message>
    <message>
        <source>Correct one of the two dates.</source>
        <translation>Berichtige eines der beiden Daten.</translation>
    </message>
    <message>
        <source>The store needs an upgrade, but no copy of it could be set aside first.</source>
        <translation>Die Datei braucht eine Umstellung, aber es ließ sich vorher keine Kopie beiseitelegen.</translation>
    </message>
    <message>
        <source>Nothing was changed. Free some space, or move the store to a folder you may write to, then open it again.</source>
        <translation>Nichts wurde geändert. Schaff Platz, oder verschiebe die Datei in einen Ordner, in den du schreiben darfst, und öffne sie wieder.</translation>
    </message>
    <message>
        <source>a row of table %1 refers to one that is missing</source>
        <translation>eine Zeile der Tabelle %1 verweist auf eine, die fehlt</translation>
    </message>
    <message>
        <source>Nothing was changed. Free some space, or choose another folder, then try again.</source>
        <translation>Nichts wurde geändert. Schaff Platz, oder wähle einen anderen Ordner, und versuch es erneut.</translation>
    </message>
    <message>
        <source>The step was taken back. A copy of the store as it was before lies at %1; keep it, and open the store with the version of the program that wrote it.</source>
        <translation>Der Schritt wurde zurückgenommen. Eine Kopie der Datei von vorher liegt unter %1; heb sie auf, und öffne die Datei mit der Programmversion, die sie schrieb.</translation>
    </message>
    <message>
        <source>The store could not be brought to format %1: %2</source>
        <translation>Die Datei konnte nicht auf Format %1 gebracht werden: %2</translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>The photograph is larger than the store keeps.</source>
        <translation>Das Foto ist größer, als die Datei es aufbewahrt.</translation>
    </message>
    <message>
        <source>Add it again from its file; the program makes a smaller copy.</source>
        <translation>Füge es aus seiner Datei neu hinzu; das Programm macht eine kleinere Kopie.</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Vorhersage</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Its lower bound lies above its upper bound.</source>
        <translation>Seine untere Grenze liegt über der oberen.</translation>
    </message>
    <message>
        <source>Type the reading again.</source>
        <translation>Tippe den Messwert noch einmal.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be taken back or repeated: what it changed has been changed since.</source>
        <translation>„%1“ kann nicht zurückgenommen oder wiederholt werden: Was es änderte, wurde seither geändert.</translation>
    </message>
    <message>
        <source>Nothing was changed. Load the store again and make the change by hand.</source>
        <translation>Nichts wurde geändert. Lade die Datei neu und mach die Änderung von Hand.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Es gibt nichts rückgängig zu machen.</translation>
    </message>
    <message>
        <source>There is nothing to redo.</source>
        <translation>Es gibt nichts zu wiederholen.</translation>
    </message>
    <message>
        <source>Changes older than the journal keeps can be taken back by hand.</source>
        <translation>Änderungen, die älter sind als das Protokoll, lassen sich von Hand zurücknehmen.</translation>
    </message>
    <message>
        <source>A new change after an undo ends what could be redone.</source>
        <translation>Eine neue Änderung nach einem Rückgängig beendet, was wiederholt werden konnte.</translation>
    </message>
    <message>
        <source>Source water</source>
        <translation>Ausgangswasser</translation>
    </message>
    <message>
        <source>This store is open for reading only.</source>
        <translation>Diese Datei ist nur zum Lesen offen.</translation>
    </message>
    <message>
        <source>Open it for writing; if it lies where you may not write, copy it to a folder of your own first.</source>
        <translation>Öffne sie zum Schreiben; liegt sie, wo du nicht schreiben darfst, kopiere sie zuerst in einen eigenen Ordner.</translation>
    </message>
    <message>
        <source>The photograph is no longer in the store.</source>
        <translation>Das Foto ist nicht mehr in der Datei.</translation>
    </message>
    <message>
        <source>Load the store again; another program may have removed it.</source>
        <translation>Lade die Datei neu; vielleicht hat ein anderes Programm es entfernt.</translation>
    </message>
    <message>
        <source>The file could not be read: %1.</source>
        <translation>Die Datei konnte nicht gelesen werden: %1.</translation>
    </message>
    <message>
        <source>Check that you may read it and that its disk is connected.</source>
        <translation>Prüfe, ob du sie lesen darfst und ihr Datenträger verbunden ist.</translation>
    </message>
    <message>
        <source>There is no such store.</source>
        <translation>Eine solche Datei gibt es nicht.</translation>
    </message>
    <message>
        <source>Check the path, or make a new store there.</source>
        <translation>Prüfe den Pfad, oder leg dort eine neue Datei an.</translation>
    </message>
    <message>
        <source>This is a folder, not a store.</source>
        <translation>Das ist ein Ordner, keine Datei.</translation>
    </message>
    <message>
        <source>Choose a file with the suffix .littoral.</source>
        <translation>Wähle eine Datei mit der Endung .littoral.</translation>
    </message>
    <message>
        <source>the file ends within its first page</source>
        <translation>die Datei endet in ihrer ersten Seite</translation>
    </message>
    <message>
        <source>the file ends within a page</source>
        <translation>die Datei endet in einer Seite</translation>
    </message>
    <message>
        <source>This store has an older format and must be upgraded before it can be read.</source>
        <translation>Diese Datei hat ein älteres Format und muss umgestellt werden, bevor sie gelesen werden kann.</translation>
    </message>
    <message>
        <source>Open it once for writing; copy it to a folder of your own first if it cannot be written where it is.</source>
        <translation>Öffne sie einmal zum Schreiben; kopiere sie zuerst in einen eigenen Ordner, wenn sie dort nicht beschrieben werden kann.</translation>
    </message>
    <message>
        <source>Open it, or choose another name for the new store.</source>
        <translation>Öffne sie, oder wähle einen anderen Namen für die neue Datei.</translation>
    </message>
    <message>
        <source>The store could not be made: %1.</source>
        <translation>Die Datei konnte nicht angelegt werden: %1.</translation>
    </message>
    <message>
        <source>Choose a folder that exists and that you may write to.</source>
        <translation>Wähle einen Ordner, den es gibt und in den du schreiben darfst.</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Becken</translation>
    </message>
    <message>
        <source>The tank has no name.</source>
        <translation>Das Becken hat keinen Namen.</translation>
    </message>
    <message>
        <source>Give it a name; it is how you find it again.</source>
        <translation>Gib ihm einen Namen; daran findest du es wieder.</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Its lower end lies above its upper end.</source>
        <translation>Sein unteres Ende liegt über dem oberen.</translation>
    </message>
    <message>
        <source>Swap or correct the two numbers.</source>
        <translation>Tausche oder berichtige die beiden Zahlen.</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>Task template</source>
        <translation>Aufgabenvorlage</translation>
    </message>
    <message>
        <source>The template has no key.</source>
        <translation>Die Vorlage hat keinen Schlüssel.</translation>
    </message>
    <message>
        <source>Give it a short key of its own, such as &quot;trim-stems&quot;.</source>
        <translation>Gib ihr einen kurzen eigenen Schlüssel, etwa „trim-stems“.</translation>
    </message>
    <message>
        <source>Test kit</source>
        <translation>Testset</translation>
    </message>
    <message>
        <source>The kit&apos;s steps do not rise.</source>
        <translation>Die Stufen des Tests steigen nicht.</translation>
    </message>
    <message>
        <source>Type them from the lowest to the highest, as its card prints them.</source>
        <translation>Tippe sie von der niedrigsten zur höchsten, wie die Karte sie druckt.</translation>
    </message>
    <message>
        <source>The waiting time is below zero.</source>
        <translation>Die Wartezeit ist unter null.</translation>
    </message>
    <message>
        <source>Type the minutes again.</source>
        <translation>Tippe die Minuten noch einmal.</translation>
    </message>
    <message>
        <source>SQLite reports: %1.</source>
        <translation>SQLite meldet: %1.</translation>
    </message>
    <message>
        <source>Row %2 of table %1 refers to a row of table %3 that is missing.</source>
        <translation>Zeile %2 der Tabelle %1 verweist auf eine fehlende Zeile der Tabelle %3.</translation>
    </message>
    <message>
        <source>Reading %1 names a layout that is not in its tank.</source>
        <translation>Messwert %1 nennt ein Layout, das nicht in seinem Becken ist.</translation>
    </message>
    <message>
        <source>Reading %1 lies outside its own bounds.</source>
        <translation>Messwert %1 liegt außerhalb seiner eigenen Grenzen.</translation>
    </message>
    <message>
        <source>There are readings of &quot;%1&quot;, a parameter this program does not know.</source>
        <translation>Es gibt Messwerte für „%1“, einen Parameter, den dieses Programm nicht kennt.</translation>
    </message>
    <message>
        <source>Two tanks are called &quot;%1&quot;.</source>
        <translation>Zwei Becken heißen „%1“.</translation>
    </message>
    <message>
        <source>The journal speaks of a table &quot;%1&quot; that does not exist.</source>
        <translation>Das Protokoll spricht von einer Tabelle „%1“, die es nicht gibt.</translation>
    </message>
    <message>
        <source>Change %1 of the journal is done although an earlier one is undone.</source>
        <translation>Änderung %1 des Protokolls ist getan, obwohl eine frühere rückgängig ist.</translation>
    </message>
    <message>
        <source>What is to be removed is no longer in the store.</source>
        <translation>Was entfernt werden soll, ist nicht mehr in der Datei.</translation>
    </message>
    <message>
        <source>A setting has no key.</source>
        <translation>Eine Einstellung hat keinen Schlüssel.</translation>
    </message>
    <message>
        <source>Name the setting that is to be kept.</source>
        <translation>Nenne die Einstellung, die aufbewahrt werden soll.</translation>
    </message>
    <message>
        <source>The tank it refers to is not in the store.</source>
        <translation>Das Becken, auf das es verweist, ist nicht in der Datei.</translation>
    </message>
    <message>
        <source>The layout it belongs to is not in the store.</source>
        <translation>Das Layout, zu dem es gehört, ist nicht in der Datei.</translation>
    </message>
    <message>
        <source>The test kit it names is not in the store.</source>
        <translation>Der genannte Test ist nicht in der Datei.</translation>
    </message>
    <message>
        <source>The source water it names is not in the store.</source>
        <translation>Das genannte Ausgangswasser ist nicht in der Datei.</translation>
    </message>
    <message>
        <source>The entry that closed it is not in the store.</source>
        <translation>Der Eintrag, der es abschloss, ist nicht in der Datei.</translation>
    </message>
    <message>
        <source>There is already a tank called &quot;%1&quot;.</source>
        <translation>Ein Becken namens „%1“ gibt es schon.</translation>
    </message>
    <message>
        <source>Choose another name.</source>
        <translation>Wähle einen anderen Namen.</translation>
    </message>
    <message>
        <source>There is already a task template with the key &quot;%1&quot;.</source>
        <translation>Eine Aufgabenvorlage mit dem Schlüssel „%1“ gibt es schon.</translation>
    </message>
    <message>
        <source>Change that template, or choose another key.</source>
        <translation>Ändere diese Vorlage, oder wähle einen anderen Schlüssel.</translation>
    </message>
    <message>
        <source>The tank already has a target for &quot;%1&quot;.</source>
        <translation>Das Becken hat für „%1“ schon ein Ziel.</translation>
    </message>
    <message>
        <source>Load the store again and change that target.</source>
        <translation>Lade die Datei neu und ändere dieses Ziel.</translation>
    </message>
    <message>
        <source>A layout cannot move to another tank; its readings belong to the water it stood in.</source>
        <translation>Ein Layout kann nicht in ein anderes Becken umziehen; seine Messwerte gehören zu dem Wasser, in dem es stand.</translation>
    </message>
    <message>
        <source>End it, and add a new layout to the other tank.</source>
        <translation>Beende es, und füge dem anderen Becken ein neues Layout hinzu.</translation>
    </message>
    <message>
        <source>The photograph has no picture in it.</source>
        <translation>In dem Foto ist kein Bild.</translation>
    </message>
    <message>
        <source>Add it again from its file.</source>
        <translation>Füge es aus seiner Datei neu hinzu.</translation>
    </message>
    <message>
        <source>Nothing was changed. Load the store again; another program may have removed it.</source>
        <translation>Nichts wurde geändert. Lade die Datei neu; vielleicht hat ein anderes Programm es entfernt.</translation>
    </message>
    <message>
        <source>The layout it names stands in another tank.</source>
        <translation>Das genannte Layout steht in einem anderen Becken.</translation>
    </message>
    <message>
        <source>Choose a layout of the tank it belongs to.</source>
        <translation>Wähle ein Layout des Beckens, zu dem es gehört.</translation>
    </message>
    <message>
        <source>Dosing</source>
        <translation>Düngung</translation>
    </message>
    <message>
        <source>Complete it where doses are set for the tank.</source>
        <translation>Dort ergänzen, wo die Dosen für das Becken festgelegt sind.</translation>
    </message>
    <message>
        <source>More than a year lies between two doses.</source>
        <translation>Zwischen zwei Dosen liegt mehr als ein Jahr.</translation>
    </message>
    <message>
        <source>Give days between doses from 1 to 365.</source>
        <translation>1 bis 365 Tage zwischen den Dosen angeben.</translation>
    </message>
    <message>
        <source>Journey</source>
        <translation>Reise</translation>
    </message>
    <message>
        <source>A day of it is missing.</source>
        <translation>Ein Tag davon fehlt.</translation>
    </message>
    <message>
        <source>Give the day of leaving and the day of return.</source>
        <translation>Den Tag der Abreise und den Tag der Rückkehr angeben.</translation>
    </message>
    <message>
        <source>It ends before it has begun.</source>
        <translation>Sie endet, bevor sie begonnen hat.</translation>
    </message>
    <message>
        <source>The day of return comes after the day of leaving.</source>
        <translation>Der Tag der Rückkehr kommt nach dem Tag der Abreise.</translation>
    </message>
    <message>
        <source>The lower end of what the plants take up lies above its upper end.</source>
        <translation>Die Untergrenze dessen, was die Pflanzen aufnehmen, liegt über der Obergrenze.</translation>
    </message>
    <message>
        <source>A blend cannot be made of itself.</source>
        <translation>Ein Verschnitt kann nicht aus sich selbst bestehen.</translation>
    </message>
    <message>
        <source>Choose two other waters as its parts.</source>
        <translation>Zwei andere Wässer als Teile wählen.</translation>
    </message>
    <message>
        <source>Both parts of the blend are the same water.</source>
        <translation>Beide Teile des Verschnitts sind dasselbe Wasser.</translation>
    </message>
    <message>
        <source>Choose two different waters.</source>
        <translation>Zwei verschiedene Wässer wählen.</translation>
    </message>
    <message>
        <source>The blend &quot;%1&quot; is made of itself.</source>
        <translation>Der Verschnitt „%1“ besteht aus sich selbst.</translation>
    </message>
    <message>
        <source>The blend &quot;%1&quot; would be made of itself.</source>
        <translation>Der Verschnitt „%1“ bestünde aus sich selbst.</translation>
    </message>
    <message>
        <source>Choose parts that do not lead back to it.</source>
        <translation>Teile wählen, die nicht zu ihm zurückführen.</translation>
    </message>
</context>
<context>
    <name>StripPainter</name>
    <message>
        <source>Readings of this layout are drawn here once there are some.</source>
        <translation>Messwerte dieses Layouts werden hier gezeichnet, sobald es welche gibt.</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>flooded</source>
        <translation>geflutet</translation>
    </message>
</context>
<context>
    <name>Subjects</name>
    <message>
        <source>conditioner</source>
        <translation>Aufbereiter</translation>
    </message>
    <message>
        <source>macro fertiliser</source>
        <translation>Makrodünger</translation>
    </message>
    <message>
        <source>micro fertiliser</source>
        <translation>Mikrodünger</translation>
    </message>
    <message>
        <source>potassium</source>
        <translation>Kalium</translation>
    </message>
    <message>
        <source>iron</source>
        <translation>Eisen</translation>
    </message>
    <message>
        <source>mineral salt</source>
        <translation>Mineralsalz</translation>
    </message>
    <message>
        <source>replanted</source>
        <translation>neu gepflanzt</translation>
    </message>
    <message>
        <source>lamps wiped</source>
        <translation>Leuchten abgewischt</translation>
    </message>
    <message>
        <source>heater looked at</source>
        <translation>Heizer angesehen</translation>
    </message>
    <message>
        <source>cyanobacteria</source>
        <translation>Cyanobakterien</translation>
    </message>
    <message>
        <source>green water</source>
        <translation>grünes Wasser</translation>
    </message>
    <message>
        <source>bacterial film on wood</source>
        <translation>Bakterienfilm auf Holz</translation>
    </message>
    <message>
        <source>cloudy water</source>
        <translation>trübes Wasser</translation>
    </message>
    <message>
        <source>pale new leaves</source>
        <translation>blasse neue Blätter</translation>
    </message>
    <message>
        <source>pinholes in old leaves</source>
        <translation>Löcher in alten Blättern</translation>
    </message>
    <message>
        <source>stunted tips</source>
        <translation>verkrüppelte Triebspitzen</translation>
    </message>
    <message>
        <source>uprooted plants</source>
        <translation>ausgerissene Pflanzen</translation>
    </message>
    <message>
        <source>gasping at the surface</source>
        <translation>Atemnot an der Oberfläche</translation>
    </message>
    <message>
        <source>clamped fins</source>
        <translation>geklemmte Flossen</translation>
    </message>
    <message>
        <source>white spots</source>
        <translation>weiße Punkte</translation>
    </message>
    <message>
        <source>hiding</source>
        <translation>versteckt sich</translation>
    </message>
    <message>
        <source>planaria</source>
        <translation>Planarien</translation>
    </message>
    <message>
        <source>hydra</source>
        <translation>Hydra</translation>
    </message>
    <message>
        <source>good new growth</source>
        <translation>guter neuer Wuchs</translation>
    </message>
    <message>
        <source>opened a little, indicator blue</source>
        <translation>etwas geöffnet, Dauertest blau</translation>
    </message>
    <message>
        <source>opened a little, indicator green</source>
        <translation>etwas geöffnet, Dauertest grün</translation>
    </message>
    <message>
        <source>closed a little, indicator yellow</source>
        <translation>etwas geschlossen, Dauertest gelb</translation>
    </message>
    <message>
        <source>left as it is, indicator green</source>
        <translation>gelassen, Dauertest grün</translation>
    </message>
    <message>
        <source>starts earlier</source>
        <translation>beginnt früher</translation>
    </message>
    <message>
        <source>animals at the surface, gas closed</source>
        <translation>Tiere an der Oberfläche, Gas zu</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>intensity</source>
        <translation>Stärke</translation>
    </message>
    <message>
        <source>height of the lamp</source>
        <translation>Höhe der Leuchte</translation>
    </message>
</context>
<context>
    <name>Supplies</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>How much is left is not known: no amount was stated.</source>
        <translation>Wie viel übrig ist, ist nicht bekannt: Eine Menge wurde nicht angegeben.</translation>
    </message>
    <message>
        <source>%1 as stated.</source>
        <translation>%1 laut Angabe.</translation>
    </message>
    <message>
        <source>%1 as stated on %2.</source>
        <translation>%1 laut Angabe vom %2.</translation>
    </message>
    <message numerus="yes">
        <source>About %1 left after %n dose(s) since %2.</source>
        <translation>
            <numerusform>Etwa %1 übrig nach %n Dosis seit %2.</numerusform>
            <numerusform>Etwa %1 übrig nach %n Dosen seit %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>About %1 left after %n water change(s) since %2.</source>
        <translation>
            <numerusform>Etwa %1 übrig nach %n Wasserwechsel seit %2.</numerusform>
            <numerusform>Etwa %1 übrig nach %n Wasserwechseln seit %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>About %1 left after doses and %n water change(s) since %2.</source>
        <translation>
            <numerusform>Etwa %1 übrig nach Dosen und %n Wasserwechsel seit %2.</numerusform>
            <numerusform>Etwa %1 übrig nach Dosen und %n Wasserwechseln seit %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>About %1 of gas left by %n weighing(s).</source>
        <translation>
            <numerusform>Etwa %1 Gas übrig nach %n Wägung.</numerusform>
            <numerusform>Etwa %1 Gas übrig nach %n Wägungen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Conditioner</source>
        <translation>Aufbereiter</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Salz</translation>
    </message>
    <message>
        <source>Starter</source>
        <translation>Starterbakterien</translation>
    </message>
    <message>
        <source>Fertiliser</source>
        <translation>Dünger</translation>
    </message>
    <message>
        <source>Test kit</source>
        <translation>Testbesteck</translation>
    </message>
    <message>
        <source>CO₂ cylinder</source>
        <translation>CO₂-Flasche</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>Order or change the cylinder %1</source>
        <translation>Flasche %1 bestellen oder wechseln</translation>
    </message>
    <message>
        <source>Renew %1, its date is near or past</source>
        <translation>%1 ersetzen, das Datum ist nahe oder überschritten</translation>
    </message>
    <message>
        <source>Get more %1</source>
        <translation>%1 nachkaufen</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>more than a year</source>
        <translation>mehr als ein Jahr</translation>
    </message>
    <message>
        <source>less than a day</source>
        <translation>weniger als einen Tag</translation>
    </message>
    <message numerus="yes">
        <source>about %n day(s)</source>
        <translation>
            <numerusform>etwa %n Tag</numerusform>
            <numerusform>etwa %n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>good until %1</source>
        <translation>haltbar bis %1</translation>
    </message>
    <message>
        <source>At the present use of %1 a day it lasts %2.</source>
        <translation>Beim jetzigen Verbrauch von %1 am Tag reicht es %2.</translation>
    </message>
    <message>
        <source>The present use is %1 a day.</source>
        <translation>Der jetzige Verbrauch ist %1 am Tag.</translation>
    </message>
    <message numerus="yes">
        <source>%n dose(s) could not be counted: their unit does not convert into %1.</source>
        <translation>
            <numerusform>%n Dosis ließ sich nicht zählen: Ihre Einheit lässt sich nicht in %1 umrechnen.</numerusform>
            <numerusform>%n Dosen ließen sich nicht zählen: Ihre Einheit lässt sich nicht in %1 umrechnen.</numerusform>
        </translation>
    </message>
    <message>
        <source>It is past its date, %1.</source>
        <translation>Das Datum ist überschritten, %1.</translation>
    </message>
    <message>
        <source>It is good until %1.</source>
        <translation>Haltbar bis %1.</translation>
    </message>
</context>
<context>
    <name>Templates</name>
    <message>
        <source>common practice</source>
        <translation>gängige Praxis</translation>
    </message>
    <message>
        <source>the range set for this tank</source>
        <translation>der für dieses Becken gesetzte Bereich</translation>
    </message>
    <message>
        <source>UF/IFAS FA16; SRAC 462</source>
        <translation>UF/IFAS FA16; SRAC 462</translation>
    </message>
    <message>
        <source>There is no field &quot;%1&quot;.</source>
        <translation>Es gibt kein Feld „%1“.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a text.</source>
        <translation>„%1“ muss ein Text sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is empty.</source>
        <translation>„%1“ ist leer.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a number from %2 to %3.</source>
        <translation>„%1“ muss eine Zahl von %2 bis %3 sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a whole number.</source>
        <translation>„%1“ muss eine ganze Zahl sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be true or false.</source>
        <translation>„%1“ muss true oder false sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a value of &quot;%2&quot;.</source>
        <translation>„%1“ ist kein Wert von „%2“.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a list.</source>
        <translation>„%1“ muss eine Liste sein.</translation>
    </message>
    <message>
        <source>There is no parameter &quot;%1&quot;.</source>
        <translation>Es gibt keinen Parameter „%1“.</translation>
    </message>
    <message>
        <source>There is no event &quot;%1&quot;.</source>
        <translation>Es gibt kein Ereignis „%1“.</translation>
    </message>
    <message>
        <source>A round ends on day %1, before it begins on day %2.</source>
        <translation>Eine Runde endet am Tag %1, bevor sie am Tag %2 beginnt.</translation>
    </message>
    <message>
        <source>&quot;every&quot; counts in days or half days.</source>
        <translation>&quot;every&quot; zählt in Tagen oder halben Tagen.</translation>
    </message>
    <message>
        <source>&quot;days&quot; must be whole days after the event, rising.</source>
        <translation>&quot;days&quot; müssen ganze Tage nach dem Ereignis sein, steigend.</translation>
    </message>
    <message>
        <source>&quot;after&quot; and &quot;days&quot; belong together.</source>
        <translation>&quot;after&quot; und &quot;days&quot; gehören zusammen.</translation>
    </message>
    <message>
        <source>&quot;range&quot; must be two fractions with &quot;fraction&quot; between them.</source>
        <translation>&quot;range&quot; müssen zwei Anteile sein, mit &quot;fraction&quot; dazwischen.</translation>
    </message>
    <message>
        <source>It has no rounds.</source>
        <translation>Sie hat keine Runden.</translation>
    </message>
    <message>
        <source>There is no kind of entry &quot;%1&quot;.</source>
        <translation>Es gibt keine Art von Eintrag „%1“.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not the id of a caution.</source>
        <translation>„%1“ ist keine id eines Warnhinweises.</translation>
    </message>
    <message>
        <source>A test is closed by readings; none are named.</source>
        <translation>Ein Test wird durch Messwerte abgeschlossen; es sind keine genannt.</translation>
    </message>
    <message>
        <source>A water change needs its fraction.</source>
        <translation>Ein Wasserwechsel braucht seinen Anteil.</translation>
    </message>
    <message>
        <source>It is not an object.</source>
        <translation>Es ist kein Objekt.</translation>
    </message>
    <message>
        <source>It is not JSON: %1 at character %2.</source>
        <translation>Das ist kein JSON: %1 bei Zeichen %2.</translation>
    </message>
    <message>
        <source>task templates</source>
        <translation>Aufgabenvorlagen</translation>
    </message>
    <message>
        <source>task template &quot;%1&quot;</source>
        <translation>Aufgabenvorlage „%1“</translation>
    </message>
    <message>
        <source>task template %1, &quot;%2&quot;</source>
        <translation>Aufgabenvorlage %1, „%2“</translation>
    </message>
    <message>
        <source>The key is there twice.</source>
        <translation>Der Schlüssel ist zweimal da.</translation>
    </message>
    <message>
        <source>There are no templates in it.</source>
        <translation>Es sind keine Vorlagen darin.</translation>
    </message>
    <message>
        <source>UF/IFAS FA16: harm above 0.05 mg/L; 0.02 is the trade&apos;s limit</source>
        <translation>UF/IFAS FA16: Schaden über 0,05 mg/L; 0,02 ist die Grenze der Praxis</translation>
    </message>
    <message>
        <source>SRAC 462, chloride to nitrite; MSD/Merck Veterinary Manual</source>
        <translation>SRAC 462, Chlorid zu Nitrit; MSD/Merck Veterinary Manual</translation>
    </message>
    <message>
        <source>Cao et al. 2007: rosette plants fail above 0.56 mg/L N; 2 is common practice</source>
        <translation>Cao et al. 2007: Rosettenpflanzen versagen über 0,56 mg/L N; 2 ist gängige Praxis</translation>
    </message>
    <message>
        <source>nitrite oxidisers are held back above 0.2 mg/L N of free ammonia</source>
        <translation>Nitritoxidierer werden über 0,2 mg/L N freien Ammoniaks gehemmt</translation>
    </message>
    <message>
        <source>Test again after the change</source>
        <translation>Nach dem Wechsel noch einmal testen</translation>
    </message>
    <message>
        <source>Nobody knows whether the change was enough.</source>
        <translation>Niemand weiß, ob der Wechsel gereicht hat.</translation>
    </message>
    <message>
        <source>Decide: ease the water changes?</source>
        <translation>Entscheiden: die Wasserwechsel lockern?</translation>
    </message>
    <message>
        <source>More water and work than the tank may need.</source>
        <translation>Mehr Wasser und Arbeit, als das Becken vielleicht braucht.</translation>
    </message>
    <message>
        <source>judgement from common practice</source>
        <translation>Abwägung aus gängiger Praxis</translation>
    </message>
    <message>
        <source>Correct that field; nothing was changed.</source>
        <translation>Dieses Feld berichtigen; geändert wurde nichts.</translation>
    </message>
    <message>
        <source>The fields there are: %1.</source>
        <translation>Die Felder dort sind: %1.</translation>
    </message>
    <message>
        <source>Fill it in.</source>
        <translation>Ausfüllen.</translation>
    </message>
    <message>
        <source>Type a number in that range.</source>
        <translation>Eine Zahl in diesem Bereich eingeben.</translation>
    </message>
    <message>
        <source>The values there are: %1.</source>
        <translation>Die Werte dort sind: %1.</translation>
    </message>
    <message>
        <source>The parameters there are: %1.</source>
        <translation>Die Parameter dort sind: %1.</translation>
    </message>
    <message>
        <source>Events are, for instance, addition, loss, filter-service, trim, co2-change.</source>
        <translation>Ereignisse sind zum Beispiel addition, loss, filter-service, trim, co2-change.</translation>
    </message>
    <message>
        <source>A round needs one of &quot;every&quot;, &quot;once&quot;, &quot;after&quot;, &quot;leaves&quot; or &quot;returns&quot;.</source>
        <translation>Eine Runde braucht eines von &quot;every&quot;, &quot;once&quot;, &quot;after&quot;, &quot;leaves&quot; oder &quot;returns&quot;.</translation>
    </message>
    <message>
        <source>Fill in exactly one of them.</source>
        <translation>Genau eines davon ausfüllen.</translation>
    </message>
    <message>
        <source>&quot;if-raised&quot; goes with &quot;after&quot;.</source>
        <translation>&quot;if-raised&quot; gehört zu &quot;after&quot;.</translation>
    </message>
    <message>
        <source>Give the event it follows, or leave it out.</source>
        <translation>Das Ereignis angeben, dem es folgt, oder weglassen.</translation>
    </message>
    <message>
        <source>Type 7, or 3.5 for twice a week.</source>
        <translation>7 eingeben, oder 3.5 für zweimal pro Woche.</translation>
    </message>
    <message>
        <source>Say on which days after the event, such as 1 3 7; 0 is the day itself.</source>
        <translation>Angeben, an welchen Tagen nach dem Ereignis, etwa 1 3 7; 0 ist der Tag selbst.</translation>
    </message>
    <message>
        <source>Widen the range, or leave it out.</source>
        <translation>Den Bereich erweitern oder weglassen.</translation>
    </message>
    <message>
        <source>Add one: how often, once at an age, or days after an event.</source>
        <translation>Eine hinzufügen: wie oft, einmal in einem Alter oder Tage nach einem Ereignis.</translation>
    </message>
    <message>
        <source>Leave it empty, or take an id of the guide&apos;s cautions, such as C-ELEC.</source>
        <translation>Leer lassen oder eine id aus den Vorsichtshinweisen des Leitfadens nehmen, etwa C-ELEC.</translation>
    </message>
    <message>
        <source>Name the parameters that are read, such as tan or no2.</source>
        <translation>Die Parameter nennen, die gemessen werden, etwa tan oder no2.</translation>
    </message>
    <message>
        <source>Say how much of the water is changed in each of its rounds.</source>
        <translation>Angeben, wie viel des Wassers in jeder seiner Runden gewechselt wird.</translation>
    </message>
    <message>
        <source>Applies when</source>
        <translation>Gilt, wenn</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>Grace</source>
        <translation>Frist</translation>
    </message>
    <message>
        <source>Priority</source>
        <translation>Vorrang</translation>
    </message>
    <message>
        <source>Lapse</source>
        <translation>Verfall</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number.</source>
        <translation>„%1“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>Type a number, or leave it empty.</source>
        <translation>Eine Zahl eingeben oder leer lassen.</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>Case &quot;%1&quot;</source>
        <translation>Fall „%1“</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>There is no case &quot;%1&quot;.</source>
        <translation>Einen Fall „%1“ gibt es nicht.</translation>
    </message>
    <message>
        <source>Give each round the name of one of the cases.</source>
        <translation>Jeder Runde den Namen eines der Fälle geben.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a condition.</source>
        <translation>„%1“ ist keine Bedingung.</translation>
    </message>
    <message>
        <source>Write animals, no shrimp, plants, bed rich|mild, start starter, co2 pressurised, net-below 60, recorded topup or tan &lt; 0.5, with commas between them.</source>
        <translation>animals, no shrimp, plants, bed rich|mild, start starter, co2 pressurised, net-below 60, recorded topup oder tan &lt; 0.5 schreiben, durch Kommas getrennt.</translation>
    </message>
</context>
<context>
    <name>TimeAxis</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>weekday and day of the month: Mon 23</comment>
        <translation>%1 %2.</translation>
    </message>
    <message>
        <source>day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <source>week %1</source>
        <translation>Woche %1</translation>
    </message>
</context>
<context>
    <name>TimeHeader</name>
    <message>
        <source>One axis for all tanks</source>
        <translation>Eine Achse für alle Becken</translation>
    </message>
    <message>
        <source>days since flooding</source>
        <translation>Tage seit dem Fluten</translation>
    </message>
    <message>
        <source>calendar dates</source>
        <translation>Kalenderdaten</translation>
    </message>
    <message>
        <source>← recorded</source>
        <translation>← aufgezeichnet</translation>
    </message>
    <message>
        <source>forecast →</source>
        <translation>Vorhersage →</translation>
    </message>
    <message>
        <source>ddd d MMM, HH:mm</source>
        <translation>ddd d. MMM, HH:mm</translation>
    </message>
</context>
<context>
    <name>Trend</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>TrendExport</name>
    <message>
        <source>The file was not written: %1.</source>
        <translation>Die Datei wurde nicht geschrieben: %1.</translation>
    </message>
    <message>
        <source>Choose another folder or make room, then export again.</source>
        <translation>Wähle einen anderen Ordner oder schaff Platz, und exportiere noch einmal.</translation>
    </message>
    <message>
        <source>The picture could not be drawn at this size.</source>
        <translation>Das Bild ließ sich in dieser Größe nicht zeichnen.</translation>
    </message>
    <message>
        <source>Make the window smaller, then export again.</source>
        <translation>Mach das Fenster kleiner, und exportiere noch einmal.</translation>
    </message>
</context>
<context>
    <name>TrendPainter</name>
    <message>
        <source>Events at the same age</source>
        <translation>Ereignisse im gleichen Alter</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>bar height: share of water changed; hollow: planned</source>
        <translation>Balkenhöhe: gewechselter Anteil; hohl: geplant</translation>
    </message>
    <message>
        <source>day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <source>no readings of this kind yet</source>
        <translation>noch keine Messwerte dieser Art</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>%1 now</source>
        <translation>%1 jetzt</translation>
    </message>
    <message>
        <source>flooded</source>
        <translation>geflutet</translation>
    </message>
    <message>
        <source>target %1–%2</source>
        <translation>Ziel %1–%2</translation>
    </message>
    <message>
        <source>target from %1</source>
        <translation>Ziel ab %1</translation>
    </message>
    <message>
        <source>target up to %1</source>
        <translation>Ziel bis %1</translation>
    </message>
    <message>
        <source>dashes: clear ≤ %1</source>
        <translation>Striche: klar ≤ %1</translation>
    </message>
    <message>
        <source>dash-dots: expected from doses</source>
        <translation>Strich-Punkt-Linie: aus Dosen erwartet</translation>
    </message>
</context>
<context>
    <name>TrendWords</name>
    <message>
        <source>&lt;%1</source>
        <translation>&lt;%1</translation>
    </message>
    <message>
        <source>&gt;%1</source>
        <translation>&gt;%1</translation>
    </message>
    <message>
        <source>%1–%2 (%3 readings)</source>
        <translation>%1–%2 (%3 Messwerte)</translation>
    </message>
    <message>
        <source>The values on show, day by day</source>
        <translation>Die gezeigten Werte, Tag für Tag</translation>
    </message>
    <message>
        <source>Day since flooding</source>
        <translation>Tag seit dem Fluten</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <source>forecast</source>
        <translation>Vorhersage</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>beendet</translation>
    </message>
    <message>
        <source>%1 d old</source>
        <translation>%1 T alt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: highest %2, the same day.</source>
        <translation>%1: höchster Wert %2, am selben Tag.</translation>
    </message>
    <message>
        <source>%1: highest %2, a day later in its life.</source>
        <translation>%1: höchster Wert %2, einen Tag später in seinem Leben.</translation>
    </message>
    <message>
        <source>%1: highest %2, a day sooner in its life.</source>
        <translation>%1: höchster Wert %2, einen Tag früher in seinem Leben.</translation>
    </message>
    <message>
        <source>%1: highest %2, %3 days later in its life.</source>
        <translation>%1: höchster Wert %2, %3 Tage später in seinem Leben.</translation>
    </message>
    <message>
        <source>%1: highest %2, %3 days sooner in its life.</source>
        <translation>%1: höchster Wert %2, %3 Tage früher in seinem Leben.</translation>
    </message>
    <message>
        <source>%1, %2 below %3 %4, %5, day %6</source>
        <translation>%1, %2 unter %3 %4, %5, Tag %6</translation>
    </message>
    <message>
        <source>%1, %2 above %3 %4, %5, day %6</source>
        <translation>%1, %2 über %3 %4, %5, Tag %6</translation>
    </message>
    <message>
        <source>%1, %2 %3 %4 reckoned from other readings, %5, day %6</source>
        <translation>%1, %2 %3 %4, aus anderen Messwerten gerechnet, %5, Tag %6</translation>
    </message>
    <message>
        <source>%1, %2 %3 %4, %5, day %6</source>
        <translation>%1, %2 %3 %4, %5, Tag %6</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>needs 3</source>
        <translation>braucht 3</translation>
    </message>
    <message>
        <source>+%1</source>
        <translation>+%1</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>needs 2</source>
        <translation>braucht 2</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>of %1 d</source>
        <translation>von %1 T</translation>
    </message>
    <message>
        <source>now %1</source>
        <translation>jetzt %1</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <translation>%1, %2 bis %3</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Off the scale</source>
        <translation>Außerhalb der Skala</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Letzter</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>Niedrigster</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Höchster</translation>
    </message>
    <message>
        <source>Slope, a week</source>
        <translation>Steigung, je Woche</translation>
    </message>
    <message>
        <source>In target</source>
        <translation>Im Ziel</translation>
    </message>
    <message>
        <source>Clear since</source>
        <translation>Klar seit</translation>
    </message>
    <message>
        <source>Mean before</source>
        <translation>Mittel davor</translation>
    </message>
    <message>
        <source>A comparison needs readings of two tanks in the span.</source>
        <translation>Ein Vergleich braucht Messwerte zweier Becken in der Spanne.</translation>
    </message>
    <message>
        <source>By date, tanks of different age stand side by side. A compares them at equal age.</source>
        <translation>Nach Datum stehen Becken verschiedenen Alters nebeneinander. A vergleicht sie im gleichen Alter.</translation>
    </message>
    <message>
        <source>%1: highest %2, day %3.</source>
        <translation>%1: höchster Wert %2, Tag %3.</translation>
    </message>
    <message>
        <source>About day %1: %2 here, %3 in the other tank.</source>
        <translation>Um Tag %1: hier %2, im anderen Becken %3.</translation>
    </message>
    <message>
        <source>About day %1: %2 here, %3 in %4 other tanks.</source>
        <translation>Um Tag %1: hier %2, in %4 anderen Becken %3.</translation>
    </message>
    <message>
        <source>This rests on %1 tanks: too few to call a difference a cause.</source>
        <translation>Das beruht auf %1 Becken: zu wenige, um einen Unterschied eine Ursache zu nennen.</translation>
    </message>
    <message>
        <source>This rests on %1 tanks.</source>
        <translation>Das beruht auf %1 Becken.</translation>
    </message>
    <message>
        <source>%1, %2 expected, %3</source>
        <translation>%1, %2 erwartet, %3</translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation>erwartet %1</translation>
    </message>
    <message>
        <source>Expected from doses and changes: %1</source>
        <translation>Aus Dosen und Wasserwechseln erwartet: %1</translation>
    </message>
</context>
<context>
    <name>TrendsPage</name>
    <message>
        <source>Nitrogen</source>
        <translation>Stickstoff</translation>
    </message>
    <message>
        <source>Carbonate</source>
        <translation>Karbonat</translation>
    </message>
    <message>
        <source>Nutrients</source>
        <translation>Nährstoffe</translation>
    </message>
    <message>
        <source>Physical</source>
        <translation>Physikalisch</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Sonstige</translation>
    </message>
</context>
<context>
    <name>littoral::facade::EaseDesk</name>
    <message>
        <source>There is no forecast to ask.</source>
        <translation>Es gibt keine Vorhersage zum Befragen.</translation>
    </message>
    <message>
        <source>It was stopped.</source>
        <translation>Es wurde abgebrochen.</translation>
    </message>
</context>
<context>
    <name>littoral::facade::Keeper</name>
    <message>
        <source>No store is open.</source>
        <translation>Es ist keine Datei offen.</translation>
    </message>
    <message>
        <source>Open one or make a new one first.</source>
        <translation>Öffne zuerst eine oder leg eine neue an.</translation>
    </message>
    <message>
        <source>The tank has no name.</source>
        <translation>Das Becken hat keinen Namen.</translation>
    </message>
    <message>
        <source>Give it one that you would say aloud.</source>
        <translation>Gib ihm einen, den du laut sagen würdest.</translation>
    </message>
    <message>
        <source>There is no day on which %1 was flooded.</source>
        <translation>Es fehlt der Tag, an dem %1 geflutet wurde.</translation>
    </message>
    <message>
        <source>A guess will do; it can be changed later.</source>
        <translation>Geschätzt reicht; er lässt sich später ändern.</translation>
    </message>
    <message>
        <source>add tank %1</source>
        <translation>Becken %1 hinzufügen</translation>
    </message>
    <message>
        <source>That tank or parameter is not in the store any more.</source>
        <translation>Dieses Becken oder dieser Parameter ist nicht mehr in der Datei.</translation>
    </message>
    <message>
        <source>%1 %2 %3, %4</source>
        <translation>%1 %2 %3, %4</translation>
    </message>
    <message>
        <source>This tank has no layout to write to.</source>
        <translation>Dieses Becken hat kein Layout, in das geschrieben werden kann.</translation>
    </message>
    <message>
        <source>Add a layout first.</source>
        <translation>Füge zuerst ein Layout hinzu.</translation>
    </message>
    <message>
        <source>That layout is not in the store any more.</source>
        <translation>Dieses Layout ist nicht mehr in der Datei.</translation>
    </message>
    <message>
        <source>The entry has no date.</source>
        <translation>Der Eintrag hat kein Datum.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Skipping needs a reason.</source>
        <translation>Auslassen braucht einen Grund.</translation>
    </message>
    <message>
        <source>A few words are enough; they stay with the round.</source>
        <translation>Ein paar Worte reichen; sie bleiben bei der Runde.</translation>
    </message>
    <message>
        <source>Snoozing needs a day after today.</source>
        <translation>Verschieben braucht einen Tag nach heute.</translation>
    </message>
    <message>
        <source>That is not a day.</source>
        <translation>Das ist kein Tag.</translation>
    </message>
    <message>
        <source>The sample row&apos;s scenario cannot be read: %1.</source>
        <translation>Das Szenario der Beispielreihe kann nicht gelesen werden: %1.</translation>
    </message>
    <message>
        <source>Install the program again.</source>
        <translation>Installiere das Programm neu.</translation>
    </message>
    <message>
        <source>sample row</source>
        <translation>Beispielreihe</translation>
    </message>
    <message>
        <source>units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>water changes eased</source>
        <translation>Wasserwechsel gelockert</translation>
    </message>
    <message>
        <source>done: %1</source>
        <translation>erledigt: %1</translation>
    </message>
    <message>
        <source>skipped: %1</source>
        <translation>ausgelassen: %1</translation>
    </message>
    <message>
        <source>snoozed: %1</source>
        <translation>verschoben: %1</translation>
    </message>
    <message>
        <source>moved: %1</source>
        <translation>verlegt: %1</translation>
    </message>
</context>
<context>
    <name>littoral::ui::AcclimationCard</name>
    <message>
        <source>From the bag into the tank</source>
        <translation>Aus dem Beutel ins Becken</translation>
    </message>
    <message>
        <source>Bag pH</source>
        <translation>Beutel pH</translation>
    </message>
    <message>
        <source>Hours on the way</source>
        <translation>Stunden unterwegs</translation>
    </message>
    <message>
        <source>From the bag into the tank: %1</source>
        <translation>Aus dem Beutel ins Becken: %1</translation>
    </message>
    <message>
        <source>Choose an animal above; the steps follow from its bag and this water.</source>
        <translation>Wähle oben ein Tier; die Schritte folgen aus seinem Beutel und diesem Wasser.</translation>
    </message>
    <message>
        <source>pH or GH of bag or tank is not known: the careful way is shown.</source>
        <translation>pH oder GH von Beutel oder Becken ist nicht bekannt: Gezeigt wird der vorsichtige Weg.</translation>
    </message>
    <message>
        <source>Bag GH, %1</source>
        <translation>Beutel GH, %1</translation>
    </message>
    <message>
        <source>Bag, %1</source>
        <translation>Beutel, %1</translation>
    </message>
</context>
<context>
    <name>littoral::ui::ActionRegistry</name>
    <message>
        <source>Store</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>Trends</source>
        <translation>Verläufe</translation>
    </message>
    <message>
        <source>Cycle</source>
        <translation>Einfahren</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Bearbeiten</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Command</source>
        <translation>Befehl</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Auf Papier</translation>
    </message>
</context>
<context>
    <name>littoral::ui::AdditionCard</name>
    <message>
        <source>Before buying: run the load through the forecast</source>
        <translation>Vor dem Kauf: die Belastung durch die Vorhersage laufen lassen</translation>
    </message>
    <message>
        <source>Plan this addition</source>
        <translation>Diesen Besatz planen</translation>
    </message>
    <message>
        <source>Record as added</source>
        <translation>Als eingesetzt eintragen</translation>
    </message>
    <message>
        <source>Why you do not wait for it</source>
        <translation>Warum du nicht darauf wartest</translation>
    </message>
    <message>
        <source>Reason for not waiting, kept in the entry</source>
        <translation>Grund, nicht zu warten; bleibt im Eintrag</translation>
    </message>
    <message>
        <source>Animal to consider</source>
        <translation>Tier, um das es geht</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>In how many lots, a week apart</source>
        <translation>In wie vielen Gruppen, je eine Woche auseinander</translation>
    </message>
    <message>
        <source>Day of the first lot</source>
        <translation>Tag der ersten Gruppe</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Tier</translation>
    </message>
    <message>
        <source>Lots, a week apart</source>
        <translation>Gruppen, je eine Woche auseinander</translation>
    </message>
    <message>
        <source>First on</source>
        <translation>Erste am</translation>
    </message>
    <message>
        <source>None considered</source>
        <translation>Keines gewählt</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>The forecast is running; the picture before it stays.</source>
        <translation>Die Vorhersage läuft; das vorige Bild bleibt stehen.</translation>
    </message>
    <message>
        <source>This tank has no forecast yet, so the load cannot be run through it.</source>
        <translation>Dieses Becken hat noch keine Vorhersage, also lässt sich die Belastung nicht durchrechnen.</translation>
    </message>
    <message>
        <source>300 members, with and without them.</source>
        <translation>300 Mitglieder, mit und ohne sie.</translation>
    </message>
    <message>
        <source>About %1 g of food a day at %2 of their mass; the mass is an estimate.</source>
        <translation>Etwa %1 g Futter am Tag bei %2 ihrer Masse; die Masse ist geschätzt.</translation>
    </message>
    <message>
        <source>Something speaks against it: write down why you do not wait.</source>
        <translation>Etwas spricht dagegen: Schreib auf, warum du nicht wartest.</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>%1 %2 planned for %3</source>
        <translation>%1 %2 geplant für %3</translation>
    </message>
    <message>
        <source>%1 %2 recorded in %3</source>
        <translation>%1 %2 eingetragen in %3</translation>
    </message>
    <message>
        <source>Test ammonia and nitrite on days 1, 3 and 7 after adding, and feed half in the first week (common practice).</source>
        <translation>Gesamtammonium und Nitrit an den Tagen 1, 3 und 7 nach dem Einsetzen testen und in der ersten Woche halb füttern (gängige Praxis).</translation>
    </message>
</context>
<context>
    <name>littoral::ui::AdvicePanel</name>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Advice on the value</source>
        <translation>Hinweis zum Wert</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Keep the value and go on</source>
        <translation>Den Wert behalten und weitergehen</translation>
    </message>
    <message>
        <source>Leave it as typed</source>
        <translation>Lassen, wie getippt</translation>
    </message>
    <message>
        <source>Keep %1</source>
        <translation>%1 behalten</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::AgeChartView</name>
    <message>
        <source>Comparison at equal age</source>
        <translation>Vergleich im gleichen Alter</translation>
    </message>
    <message>
        <source>%1 at the same age: %2</source>
        <translation>%1 im gleichen Alter: %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::AnimalsModel</name>
    <message>
        <source>Living here, day %1</source>
        <translation>Lebt hier, Tag %1</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Considered</source>
        <translation>Erwogen</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Arten</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::AnimalsTable</name>
    <message>
        <source>Animals: what each bears, and this water</source>
        <translation>Tiere: was jedes verträgt, und dieses Wasser</translation>
    </message>
</context>
<context>
    <name>littoral::ui::AnswerRow</name>
    <message>
        <source>%1 Answer: %2.</source>
        <translation>%1 Antwort: %2.</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Aufschreiben</translation>
    </message>
    <message>
        <source>A number from %1 to %2 is needed.</source>
        <translation>Gebraucht wird eine Zahl von %1 bis %2.</translation>
    </message>
    <message>
        <source>Type a reading of %1</source>
        <translation>Einen Messwert für %1 eintippen</translation>
    </message>
    <message>
        <source>Goes to Rounds</source>
        <translation>Führt zum Rundgang</translation>
    </message>
</context>
<context>
    <name>littoral::ui::AskLine</name>
    <message>
        <source>%1: %2</source>
        <comment>for or against, the evidence</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::AxisPreview</name>
    <message>
        <source>The time axis, empty</source>
        <translation>Die Zeitachse, leer</translation>
    </message>
    <message>
        <source>Left of today: readings as marks, what was done, work done. Right of today: the forecast as a band with its odds, changes planned, work due.</source>
        <translation>Links von heute: Messwerte als Marken, Eingriffe, erledigte Arbeit. Rechts von heute: die Vorhersage als Band mit ihren Chancen, geplante Wechsel, fällige Arbeit.</translation>
    </message>
    <message>
        <source>readings, as marks</source>
        <translation>Messwerte, als Marken</translation>
    </message>
    <message>
        <source>forecast, as a band with its odds</source>
        <translation>Vorhersage, als Band mit ihren Chancen</translation>
    </message>
    <message>
        <source>what was done: water changes, doses, trims</source>
        <translation>Eingriffe: Wasserwechsel, Dosen, Rückschnitte</translation>
    </message>
    <message>
        <source>changes planned</source>
        <translation>geplante Wechsel</translation>
    </message>
    <message>
        <source>work done</source>
        <translation>Arbeit erledigt</translation>
    </message>
    <message>
        <source>work due</source>
        <translation>fällige Arbeit</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, time</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::BenchCard</name>
    <message>
        <source>Pin this sheet</source>
        <translation>Dieses Blatt anheften</translation>
    </message>
    <message>
        <source>Unpin %1</source>
        <translation>%1 lösen</translation>
    </message>
    <message>
        <source>Pin %1 beside the others</source>
        <translation>%1 neben die anderen heften</translation>
    </message>
    <message>
        <source>Unpin</source>
        <translation>Lösen</translation>
    </message>
    <message>
        <source>P</source>
        <translation>P</translation>
    </message>
</context>
<context>
    <name>littoral::ui::BenchListModel</name>
    <message>
        <source>The coming two weeks</source>
        <translation>Die kommenden zwei Wochen</translation>
    </message>
    <message>
        <source>water, conditioner and demineralised water for the whole row</source>
        <translation>Wasser, Aufbereiter und entsalztes Wasser für die ganze Reihe</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>Group %1</source>
        <translation>Gruppe %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::BenchPage</name>
    <message>
        <source>Show working</source>
        <translation>Rechenweg zeigen</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>Bar of the Bench page</source>
        <translation>Leiste der Seite Werkbank</translation>
    </message>
    <message>
        <source>Values from</source>
        <translation>Werte von</translation>
    </message>
    <message>
        <source>Source water</source>
        <translation>Ausgangswasser</translation>
    </message>
    <message>
        <source>Ctrl P</source>
        <translation>Strg P</translation>
    </message>
    <message>
        <source>Print the sheets shown to a PDF file</source>
        <translation>Die gezeigten Blätter in eine PDF-Datei drucken</translation>
    </message>
    <message>
        <source>Worksheets</source>
        <translation>Rechenblätter</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>Filter</translation>
    </message>
    <message>
        <source>Filter the worksheets: beginnings of words</source>
        <translation>Die Rechenblätter filtern: Wortanfänge</translation>
    </message>
    <message>
        <source>Type a sheet with its values in the field above (Ctrl K), such as co2 6.6 4</source>
        <translation>Tippe ein Blatt mit seinen Werten ins Feld oben (Strg K), etwa co2 6,6 4</translation>
    </message>
    <message>
        <source>No sheet has these words. Try the beginning of one of them.</source>
        <translation>Kein Blatt enthält diese Wörter. Versuch den Anfang eines davon.</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>Pin this sheet</source>
        <translation>Dieses Blatt anheften</translation>
    </message>
    <message>
        <source>Write to the record</source>
        <translation>Ins Journal schreiben</translation>
    </message>
    <message>
        <source>Make it a task</source>
        <translation>Eine Aufgabe daraus machen</translation>
    </message>
    <message>
        <source>%1, newest readings</source>
        <translation>%1, neueste Messwerte</translation>
    </message>
    <message>
        <source>The layout&apos;s own</source>
        <translation>Das des Layouts</translation>
    </message>
    <message>
        <source>Water for the whole row, as it is due or planned</source>
        <translation>Wasser für die ganze Reihe, wie es fällig oder geplant ist</translation>
    </message>
    <message>
        <source>The coming two weeks: pinned already</source>
        <translation>Die kommenden zwei Wochen: schon angeheftet</translation>
    </message>
    <message>
        <source>%1 is pinned beside the others</source>
        <translation>%1 ist neben die anderen geheftet</translation>
    </message>
    <message>
        <source>Reckoned on the bench, %1: %2</source>
        <translation>Auf der Werkbank gerechnet, %1: %2</translation>
    </message>
    <message>
        <source>There is no layout to write to.</source>
        <translation>Es gibt kein Layout, in das geschrieben werden kann.</translation>
    </message>
    <message>
        <source>Choose a tank under &quot;Values from&quot;.</source>
        <translation>Wähle ein Becken unter „Werte von“.</translation>
    </message>
    <message>
        <source>What was typed is kept.</source>
        <translation>Was getippt wurde, bleibt.</translation>
    </message>
    <message>
        <source>Nothing was written; what was typed is kept.</source>
        <translation>Es wurde nichts geschrieben; was getippt wurde, bleibt.</translation>
    </message>
    <message>
        <source>%1 written as a reading of %2</source>
        <translation>%1 als Messwert für %2 geschrieben</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>note, working</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Written to %1: %2</source>
        <translation>In %1 geschrieben: %2</translation>
    </message>
    <message>
        <source>planned: %1, %2</source>
        <translation>geplant: %1, %2</translation>
    </message>
    <message>
        <source>%1 planned for %2: %3</source>
        <translation>%1 geplant für %2: %3</translation>
    </message>
    <message>
        <source>This sheet has no chart to show as a table</source>
        <translation>Dieses Blatt hat kein Diagramm, das sich als Tabelle zeigen ließe</translation>
    </message>
    <message>
        <source>Charts again</source>
        <translation>Wieder Diagramme</translation>
    </message>
    <message>
        <source>Charts as tables</source>
        <translation>Diagramme als Tabellen</translation>
    </message>
    <message>
        <source>worksheets</source>
        <translation>Rechenblätter</translation>
    </message>
</context>
<context>
    <name>littoral::ui::BulkBar</name>
    <message>
        <source>Change the selected records together</source>
        <translation>Die gewählten Einträge gemeinsam ändern</translation>
    </message>
    <message>
        <source>2 h, -1 d</source>
        <translation>2 h, -1 d</translation>
    </message>
    <message>
        <source>Later by; minus for earlier</source>
        <translation>Später um; Minus für früher</translation>
    </message>
    <message>
        <source>subject</source>
        <translation>Gegenstand</translation>
    </message>
    <message>
        <source>Subject for the selected entries</source>
        <translation>Gegenstand der gewählten Einträge</translation>
    </message>
    <message>
        <source>Tank for the selected records</source>
        <translation>Becken der gewählten Einträge</translation>
    </message>
    <message>
        <source>Kit for the selected readings</source>
        <translation>Test der gewählten Messwerte</translation>
    </message>
    <message>
        <source>Move in time</source>
        <translation>Zeitlich verschieben</translation>
    </message>
    <message>
        <source>Move the selected records in time</source>
        <translation>Die gewählten Einträge zeitlich verschieben</translation>
    </message>
    <message>
        <source>Put into tank</source>
        <translation>In Becken legen</translation>
    </message>
    <message>
        <source>Put the selected records into that tank</source>
        <translation>Die gewählten Einträge in dieses Becken legen</translation>
    </message>
    <message>
        <source>Set kit</source>
        <translation>Test setzen</translation>
    </message>
    <message>
        <source>Set the kit of the selected readings</source>
        <translation>Den Test der ausgewählten Messwerte setzen</translation>
    </message>
    <message>
        <source>Set subject</source>
        <translation>Gegenstand setzen</translation>
    </message>
    <message>
        <source>Set the subject of the selected entries</source>
        <translation>Den Gegenstand der ausgewählten Einträge setzen</translation>
    </message>
    <message numerus="yes">
        <source>%n selected</source>
        <translation>
            <numerusform>%n ausgewählt</numerusform>
            <numerusform>%n ausgewählt</numerusform>
        </translation>
    </message>
    <message>
        <source>no kit</source>
        <translation>kein Test</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>kit, what it reads</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a span of time. Type 2 h, 90 min, 1 d or 1 w, with a minus for earlier.</source>
        <translation>„%1“ ist keine Zeitspanne. Möglich sind 2 h, 90 min, 1 d oder 1 w, mit einem Minus für früher.</translation>
    </message>
    <message>
        <source>Type the subject the entries are to have.</source>
        <translation>Den Gegenstand eingeben, den die Einträge haben sollen.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::CameraTimeOffer</name>
    <message>
        <source>This tank has no layout to put a photograph to.</source>
        <translation>Dieses Becken hat keine Einrichtung, zu der ein Foto gehören könnte.</translation>
    </message>
    <message>
        <source>Add a layout first.</source>
        <translation>Zuerst eine Einrichtung hinzufügen.</translation>
    </message>
    <message>
        <source>photo, %1</source>
        <translation>Foto, %1</translation>
    </message>
    <message>
        <source>That is after now, and the photograph was taken.</source>
        <translation>Das liegt in der Zukunft, das Foto ist aber schon aufgenommen.</translation>
    </message>
    <message>
        <source>Type the time at which it was taken.</source>
        <translation>Die Zeit eingeben, zu der es aufgenommen wurde.</translation>
    </message>
    <message>
        <source>photograph of %1, %2</source>
        <translation>Foto von %1, %2</translation>
    </message>
    <message>
        <source>Take the camera&apos;s time</source>
        <translation>Die Zeit der Kamera übernehmen</translation>
    </message>
    <message>
        <source>Take the camera&apos;s time, %1</source>
        <translation>Die Zeit der Kamera übernehmen, %1</translation>
    </message>
    <message>
        <source>Take the time the camera wrote into the photo, %1</source>
        <translation>Die Zeit übernehmen, die die Kamera ins Foto geschrieben hat, %1</translation>
    </message>
    <message>
        <source>The photo is kept as of %1</source>
        <translation>Das Foto ist unter %1 abgelegt</translation>
    </message>
</context>
<context>
    <name>littoral::ui::CautionBox</name>
    <message>
        <source>Read before you begin</source>
        <translation>Vor dem Beginn lesen</translation>
    </message>
</context>
<context>
    <name>littoral::ui::CellPanel</name>
    <message>
        <source>colour card</source>
        <translation>Farbkarte</translation>
    </message>
    <message>
        <source>drops</source>
        <translation>Tropfen</translation>
    </message>
    <message>
        <source>strip</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>digital</source>
        <translation>digital</translation>
    </message>
    <message>
        <source>The cell the keyboard is on</source>
        <translation>Die Zelle, auf der die Tastatur steht</translation>
    </message>
    <message>
        <source>Steps of the kit</source>
        <translation>Stufen des Tests</translation>
    </message>
    <message>
        <source>%1 · no kit named; any value is taken</source>
        <translation>%1 · kein Test genannt; jeder Wert wird angenommen</translation>
    </message>
    <message>
        <source>%1 · %2, %3</source>
        <translation>%1 · %2, %3</translation>
    </message>
    <message>
        <source>%1 · %2, %3, past its date since %4</source>
        <translation>%1 · %2, %3, abgelaufen seit %4</translation>
    </message>
    <message>
        <source>%1 · %2, %3, good until %4</source>
        <translation>%1 · %2, %3, haltbar bis %4</translation>
    </message>
    <message>
        <source>Due today. Not read before in this layout.</source>
        <translation>Heute fällig. In diesem Layout noch nie gemessen.</translation>
    </message>
    <message>
        <source>Not due today. Not read before in this layout.</source>
        <translation>Heute nicht fällig. In diesem Layout noch nie gemessen.</translation>
    </message>
    <message>
        <source>Due today. Last: %1, %2.</source>
        <translation>Heute fällig. Zuletzt: %1, %2.</translation>
    </message>
    <message>
        <source>Not due today. Last: %1, %2.</source>
        <translation>Heute nicht fällig. Zuletzt: %1, %2.</translation>
    </message>
    <message>
        <source>Step %1</source>
        <translation>Stufe %1</translation>
    </message>
    <message>
        <source>No cell chosen</source>
        <translation>Keine Zelle gewählt</translation>
    </message>
    <message>
        <source>Move to a cell with the arrow keys, or press Enter for the next due one.</source>
        <translation>Geh mit den Pfeiltasten zu einer Zelle, oder drück Enter für die nächste fällige.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>due cell %1 of %2</source>
        <translation>fällige Zelle %1 von %2</translation>
    </message>
    <message>
        <source>No steps: type the number, with either decimal mark</source>
        <translation>Keine Stufen: Tippe die Zahl, mit Komma oder Punkt</translation>
    </message>
    <message>
        <source>Kit steps: ↑ ↓ moves, &lt; below the lowest, / marks between two</source>
        <translation>Teststufen: ↑ ↓ bewegt, &lt; unter der niedrigsten, / liegt zwischen zweien</translation>
    </message>
    <message>
        <source>Ctrl J</source>
        <translation>Strg J</translation>
    </message>
    <message>
        <source>Start the timer of this kit</source>
        <translation>Den Timer dieses Tests starten</translation>
    </message>
    <message>
        <source>Timer %1 min</source>
        <translation>Timer %1 min</translation>
    </message>
    <message>
        <source>Timer: %1</source>
        <translation>Timer: %1</translation>
    </message>
    <message>
        <source>Start the timer of this kit, %1 minutes</source>
        <translation>Den Timer dieses Tests starten, %1 Minuten</translation>
    </message>
    <message>
        <source>Start the timer of this kit anew; it stands at: %1</source>
        <translation>Den Timer dieses Tests neu starten; er steht bei: %1</translation>
    </message>
</context>
<context>
    <name>littoral::ui::ChangesCard</name>
    <message>
        <source>What changed before it</source>
        <translation>Was sich davor änderte</translation>
    </message>
    <message>
        <source>Largest first, against this layout&apos;s own 120 days before the window</source>
        <translation>Größtes zuerst, gegen die 120 Tage dieses Layouts vor dem Zeitfenster</translation>
    </message>
    <message>
        <source>What changed; Up and Down mark what a change rests on</source>
        <translation>Was sich änderte; Auf und Ab markieren, worauf eine Änderung beruht</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>Days before</source>
        <translation>Tage davor</translation>
    </message>
    <message>
        <source>Nothing in the window stands apart from this layout&apos;s own record.</source>
        <translation>Nichts im Zeitfenster hebt sich vom Journal dieses Layouts ab.</translation>
    </message>
    <message>
        <source>Statistic: distance from the earlier median over 1.4826 times the median absolute deviation; 1 and more is listed. Coming before is not causing.</source>
        <translation>Statistik: Abstand vom früheren Median durch das 1,4826-Fache der medianen absoluten Abweichung; ab 1 wird aufgeführt. Vorausgehen ist nicht verursachen.</translation>
    </message>
    <message>
        <source>In the window: %1</source>
        <translation>Im Zeitfenster: %1</translation>
    </message>
    <message>
        <source>Steps in the readings (Pettitt&apos;s test, p at most 0.05):
%1</source>
        <translation>Sprünge in den Messwerten (Pettitt-Test, p höchstens 0,05):
%1</translation>
    </message>
</context>
<context>
    <name>littoral::ui::Co2TrialsCard</name>
    <message>
        <source>%1, %2 h before</source>
        <translation>%1, %2 h davor</translation>
    </message>
    <message>
        <source>%1 after %2 h</source>
        <translation>%1 nach %2 h</translation>
    </message>
    <message>
        <source>unknown: no KH</source>
        <translation>unbekannt: keine KH</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 mg/L</source>
        <translation>%1 mg/L</translation>
    </message>
    <message>
        <source>%1 h a day</source>
        <translation>%1 h am Tag</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>nothing amiss</source>
        <translation>nichts Auffälliges</translation>
    </message>
    <message>
        <source>nothing noted</source>
        <translation>nichts notiert</translation>
    </message>
    <message>
        <source>lost: %1</source>
        <translation>verloren: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>CO₂ set %1. Indicator: %2. pH: %3. CO₂ in mg/L: %4. Animals: %5.</source>
        <translation>CO₂ eingestellt %1. Indikator: %2. pH: %3. CO₂ in mg/L: %4. Tiere: %5.</translation>
    </message>
    <message>
        <source>CO₂: what each change came to</source>
        <translation>CO₂: was jede Änderung ergeben hat</translation>
    </message>
    <message>
        <source>Animals gasping at the surface: gas off, air on, first. Then change some water and look for the cause.</source>
        <translation>Tiere mit Atemnot an der Oberfläche: zuerst Gas aus, Luft an. Dann etwas Wasser wechseln und nach der Ursache suchen.</translation>
    </message>
    <message>
        <source>One step at a time, with somebody there for the next hours. A cylinder stands upright and fixed, in a room with fresh air; leave valves and refills to licensed practice.</source>
        <translation>Ein Schritt nach dem anderen, und in den Stunden danach ist jemand dabei. Eine Flasche steht aufrecht und gesichert, in einem Raum mit frischer Luft; Ventile und Nachfüllen dem Fachbetrieb überlassen.</translation>
    </message>
    <message>
        <source>Changes of CO₂ and what came of them</source>
        <translation>Änderungen des CO₂ und was sie ergeben haben</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Eingestellt</translation>
    </message>
    <message>
        <source>Indicator</source>
        <translation>Indikator</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>CO₂, mg/L</source>
        <translation>CO₂, mg/L</translation>
    </message>
    <message>
        <source>Animals, 48 h</source>
        <translation>Tiere, 48 h</translation>
    </message>
    <message>
        <source>No change of the CO₂ is recorded. &quot;CO₂ set&quot; records one; pH read before and some hours after it, and the indicator&apos;s colour, tell what came of it.</source>
        <translation>Es ist keine Änderung des CO₂ eingetragen. „CO₂ eingestellt“ trägt eine ein; der pH davor und einige Stunden danach sowie die Farbe des Indikators zeigen, was sie ergeben hat.</translation>
    </message>
    <message>
        <source>CO₂ by pH and KH, in brackets what the steps of both leave open; other acids make it read too high. The indicator lags by one to three hours.</source>
        <translation>CO₂ aus pH und KH, in Klammern, was die Ablesestufen beider offen lassen; andere Säuren lassen den Wert zu hoch ausfallen. Der Indikator hinkt ein bis drei Stunden nach.</translation>
    </message>
    <message>
        <source>CO₂ set...</source>
        <translation>CO₂ eingestellt...</translation>
    </message>
    <message>
        <source>Record a change of the CO₂</source>
        <translation>Eine Änderung des CO₂ eintragen</translation>
    </message>
    <message>
        <source>Indicator blue</source>
        <translation>Indikator blau</translation>
    </message>
    <message>
        <source>Indicator green</source>
        <translation>Indikator grün</translation>
    </message>
    <message>
        <source>Indicator yellow</source>
        <translation>Indikator gelb</translation>
    </message>
    <message>
        <source>%1 now</source>
        <translation>%1 jetzt</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>Indicator noted as %1</source>
        <translation>Indikator als %1 notiert</translation>
    </message>
</context>
<context>
    <name>littoral::ui::CompareCard</name>
    <message>
        <source>Age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>number, unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>At the same age</source>
        <translation>Im gleichen Alter</translation>
    </message>
    <message>
        <source>What is compared</source>
        <translation>Was verglichen wird</translation>
    </message>
    <message>
        <source>Reference tank or layout</source>
        <translation>Vergleichsbecken oder -layout</translation>
    </message>
    <message>
        <source>Reference: %1</source>
        <translation>Vergleich: %1</translation>
    </message>
    <message>
        <source>%1 at the same age, as a table</source>
        <translation>%1 im gleichen Alter, als Tabelle</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Another tank or an earlier layout with two readings of the same kind can be compared here.</source>
        <translation>Ein anderes Becken oder ein früheres Layout mit zwei Messwerten derselben Art lässt sich hier vergleichen.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::CurveView</name>
    <message>
        <source>Chart of %1 against %2</source>
        <translation>Diagramm: %1 gegen %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The ways side by side</source>
        <translation>Die Wege nebeneinander</translation>
    </message>
</context>
<context>
    <name>littoral::ui::CycleBar</name>
    <message>
        <source>Time axis</source>
        <translation>Zeitachse</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>Days since flooding</source>
        <translation>Tage seit dem Fluten</translation>
    </message>
    <message>
        <source>Earlier layout at the same age</source>
        <translation>Früheres Layout im gleichen Alter</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Refit</source>
        <translation>Neu anpassen</translation>
    </message>
    <message>
        <source>Page bar of Cycle</source>
        <translation>Leiste der Seite Einfahren</translation>
    </message>
    <message>
        <source>Show the charts as a table</source>
        <translation>Die Diagramme als Tabelle zeigen</translation>
    </message>
    <message>
        <source>Fit the forecast to what is entered now</source>
        <translation>Die Vorhersage an alles anpassen, was jetzt eingetragen ist</translation>
    </message>
</context>
<context>
    <name>littoral::ui::CycleGatesCard</name>
    <message>
        <source>Gates: who may go in, and when</source>
        <translation>Freigaben: wer einziehen darf, und wann</translation>
    </message>
    <message>
        <source>limits as common practice</source>
        <translation>Grenzen nach gängiger Praxis</translation>
    </message>
    <message>
        <source>Gates</source>
        <translation>Freigaben</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>Must hold</source>
        <translation>Muss gelten</translation>
    </message>
    <message>
        <source>Readings open it</source>
        <translation>Messwerte öffnen sie</translation>
    </message>
    <message>
        <source>Still needed</source>
        <translation>Noch nötig</translation>
    </message>
    <message>
        <source>Every condition of %1</source>
        <translation>Jede Bedingung von %1</translation>
    </message>
</context>
<context>
    <name>littoral::ui::CyclePage</name>
    <message>
        <source>Cycle</source>
        <translation>Einfahren</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Diagramme</translation>
    </message>
    <message>
        <source>Verdict, gates and plans</source>
        <translation>Urteil, Freigaben und Pläne</translation>
    </message>
    <message>
        <source>Charts, scrolling</source>
        <translation>Diagramme, scrollbar</translation>
    </message>
    <message>
        <source>Cards, scrolling</source>
        <translation>Karten, scrollbar</translation>
    </message>
    <message>
        <source>The first forecast of %1 is running; readings are shown meanwhile.</source>
        <translation>Die erste Vorhersage für %1 läuft; inzwischen stehen die Messwerte da.</translation>
    </message>
    <message>
        <source>forecast running</source>
        <translation>Vorhersage läuft</translation>
    </message>
    <message>
        <source>no forecast</source>
        <translation>keine Vorhersage</translation>
    </message>
    <message>
        <source>The plan that was there is still in force.</source>
        <translation>Der bisherige Plan gilt weiter.</translation>
    </message>
    <message>
        <source>Plan adopted: %1. Ctrl+Z takes it back.</source>
        <translation>Plan übernommen: %1. Strg+Z nimmt ihn zurück.</translation>
    </message>
    <message>
        <source>Fitting the forecast to what is entered now.</source>
        <translation>Die Vorhersage wird an alles angepasst, was jetzt eingetragen ist.</translation>
    </message>
    <message>
        <source>The forecast already rests on everything that is entered.</source>
        <translation>Die Vorhersage beruht schon auf allem, was eingetragen ist.</translation>
    </message>
    <message>
        <source>Learn from other layouts</source>
        <translation>Von anderen Layouts lernen</translation>
    </message>
    <message>
        <source>Do not learn from other layouts</source>
        <translation>Nicht von anderen Layouts lernen</translation>
    </message>
    <message>
        <source>The setting is as it was.</source>
        <translation>Die Einstellung ist wie zuvor.</translation>
    </message>
    <message>
        <source>Forecasts use what other layouts of the row taught.</source>
        <translation>Vorhersagen nutzen, was andere Layouts der Reihe gelehrt haben.</translation>
    </message>
    <message>
        <source>Forecasts rest on the plain starting ranges.</source>
        <translation>Vorhersagen beruhen auf den einfachen Ausgangsbereichen.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::CycleRecordCard</name>
    <message>
        <source>How earlier forecasts held</source>
        <translation>Wie sich frühere Vorhersagen hielten</translation>
    </message>
    <message>
        <source>Learn from the row&apos;s other layouts</source>
        <translation>Von den anderen Layouts der Reihe lernen</translation>
    </message>
    <message>
        <source>Bars: readings by the tenth of the forecast they fell in. Dashes: all tenths alike, as honest bands would have it.</source>
        <translation>Balken: Messwerte nach dem Zehntel der Vorhersage, in das sie fielen. Striche: alle Zehntel gleich, wie es ehrliche Bänder hätten.</translation>
    </message>
    <message>
        <source>No other layout of the row has enough readings in common with this one to teach it anything.</source>
        <translation>Kein anderes Layout der Reihe hat genug Messwerte mit diesem gemeinsam, um ihm etwas zu lehren.</translation>
    </message>
    <message>
        <source>Switched off: this forecast rests on the plain starting ranges.</source>
        <translation>Ausgeschaltet: Diese Vorhersage beruht auf den einfachen Ausgangsbereichen.</translation>
    </message>
    <message>
        <source>All that was learned</source>
        <translation>Alles Gelernte</translation>
    </message>
    <message>
        <source>All that was learned from other layouts</source>
        <translation>Alles, was von anderen Layouts gelernt wurde</translation>
    </message>
</context>
<context>
    <name>littoral::ui::DisclosureLine</name>
    <message>
        <source>Details</source>
        <translation>Einzelheiten</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what it opens on, its figure</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::EntriesModel</name>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not understood here; nothing was changed.</source>
        <translation>„%1“ ist hier nicht verständlich; es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Type a time as 2026-11-25 07:30.</source>
        <translation>Eine Zeit in der Form 2026-11-25 07:30 eingeben.</translation>
    </message>
    <message>
        <source>That is after now, and it was done.</source>
        <translation>Das liegt in der Zukunft, es ist aber schon geschehen.</translation>
    </message>
    <message>
        <source>Type the time at which it was done.</source>
        <translation>Die Zeit eingeben, zu der es geschehen ist.</translation>
    </message>
    <message>
        <source>Type a number of 0 or more.</source>
        <translation>Eine Zahl ab 0 eingeben.</translation>
    </message>
    <message>
        <source>Type a share of 100 % at most.</source>
        <translation>Einen Anteil von höchstens 100 % eingeben.</translation>
    </message>
    <message>
        <source>Type a whole number.</source>
        <translation>Eine ganze Zahl eingeben.</translation>
    </message>
    <message>
        <source>Type a severity from 0 to 4.</source>
        <translation>Eine Schwere von 0 bis 4 eingeben.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>severity and its word</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>amount, unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Choose a tank of the row.</source>
        <translation>Ein Becken der Reihe wählen.</translation>
    </message>
    <message>
        <source>Choose a kit that reads this parameter.</source>
        <translation>Einen Test wählen, der diesen Parameter misst.</translation>
    </message>
    <message>
        <source>note of a photograph, %1</source>
        <translation>Notiz zu einem Foto, %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>value, unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>parameter, value with unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>planned: %1</source>
        <translation>geplant: %1</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <comment>pixels</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>Photograph: %1</source>
        <translation>Foto: %1</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <comment>time, tank, what</comment>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Becken</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Value or amount</source>
        <translation>Wert oder Menge</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>littoral::ui::EntriesPanel</name>
    <message>
        <source>Entries</source>
        <translation>Einträge</translation>
    </message>
    <message>
        <source>Narrow by text</source>
        <translation>Nach Text eingrenzen</translation>
    </message>
    <message>
        <source>Narrow the entries by text</source>
        <translation>Die Einträge nach Text eingrenzen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Nothing matches that text.</source>
        <translation>Nichts passt zu diesem Text.</translation>
    </message>
    <message>
        <source>Entries of %1</source>
        <translation>Einträge von %1</translation>
    </message>
    <message>
        <source>remove: %1</source>
        <translation>entfernen: %1</translation>
    </message>
    <message>
        <source>Removed: %1</source>
        <translation>Entfernt: %1</translation>
    </message>
    <message>
        <source>Tank whose entries are on show</source>
        <translation>Becken, dessen Einträge zu sehen sind</translation>
    </message>
    <message>
        <source>Kind of record on show</source>
        <translation>Art der Aufzeichnung, die zu sehen ist</translation>
    </message>
    <message>
        <source>Any words of the line: parameter, value, subject, tank, kit, note, 25 Nov or 2026-11-25</source>
        <translation>Beliebige Wörter der Zeile: Parameter, Wert, Gegenstand, Becken, Test, Notiz, 25. Nov oder 2026-11-25</translation>
    </message>
    <message>
        <source>Entries; Enter opens, F2 edits the cell, Delete removes</source>
        <translation>Einträge; Enter öffnet, F2 bearbeitet die Zelle, Entf entfernt</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>All tanks</source>
        <translation>Alle Becken</translation>
    </message>
    <message>
        <source>Everything</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>All readings</source>
        <translation>Alle Messwerte</translation>
    </message>
    <message>
        <source>All entries</source>
        <translation>Alle Einträge</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Entries of the whole row</source>
        <translation>Einträge der ganzen Reihe</translation>
    </message>
    <message>
        <source>Nothing of this is recorded yet. New entry (Ctrl+E) writes the first.</source>
        <translation>Davon ist noch nichts eingetragen. Neuer Eintrag (Strg+E) schreibt den ersten.</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>%1 Zeilen</translation>
    </message>
    <message>
        <source>%1 of %2 lines</source>
        <translation>%1 von %2 Zeilen</translation>
    </message>
    <message>
        <source>None of the selected records can be changed that way.</source>
        <translation>Keine der ausgewählten Aufzeichnungen lässt sich so ändern.</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Erledigt: %1</translation>
    </message>
    <message numerus="yes">
        <source>Done: %1; %n left as they were</source>
        <translation>
            <numerusform>Erledigt: %1; %n blieb unverändert</numerusform>
            <numerusform>Erledigt: %1; %n blieben unverändert</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::EntryEditor</name>
    <message>
        <source>New entry</source>
        <translation>Neuer Eintrag</translation>
    </message>
    <message>
        <source>Planned, not done yet</source>
        <translation>Geplant, noch nicht getan</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Becken</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Part changed, %</source>
        <translation>Gewechselter Teil, %</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Second</source>
        <translation>Zweite Zahl</translation>
    </message>
    <message>
        <source>Protein in the feed, %</source>
        <translation>Eiweiß im Futter, %</translation>
    </message>
    <message>
        <source>as on the tin</source>
        <translation>wie auf der Dose</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Their load, mg/L N a day</source>
        <translation>Ihre Belastung, mg/L N am Tag</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>severity number, word</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>Coverage, %</source>
        <translation>Deckung, %</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Source water</source>
        <translation>Ausgangswasser</translation>
    </message>
    <message>
        <source>From tank</source>
        <translation>Aus Becken</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Not one of the row</source>
        <translation>Keines aus der Reihe</translation>
    </message>
    <message>
        <source>The layout&apos;s own</source>
        <translation>Das des Layouts</translation>
    </message>
    <message>
        <source>Edit entry</source>
        <translation>Eintrag bearbeiten</translation>
    </message>
    <message>
        <source>Share of a whole filter, %</source>
        <translation>Anteil eines ganzen Filters, %</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a number from 0 to %3.</source>
        <translation>%1: „%2“ ist keine Zahl von 0 bis %3.</translation>
    </message>
    <message>
        <source>The time is not understood. Type it as 2026-11-25 07:30, 25 Nov or 07:30.</source>
        <translation>Die Zeit ist nicht verständlich. Tippe sie als 2026-11-25 07:30, 25 Nov oder 07:30.</translation>
    </message>
    <message>
        <source>There is no tank to write to yet.</source>
        <translation>Es gibt noch kein Becken, in das geschrieben werden kann.</translation>
    </message>
    <message>
        <source>How much of a whole filter was moved: type it in percent.</source>
        <translation>Wie viel eines ganzen Filters umzog: tippe es in Prozent.</translation>
    </message>
    <message>
        <source>%1: a number is needed.</source>
        <translation>%1: Eine Zahl fehlt.</translation>
    </message>
    <message>
        <source>%1: a word is needed.</source>
        <translation>%1: Ein Wort fehlt.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>remove entry: %1</source>
        <translation>Eintrag entfernen: %1</translation>
    </message>
    <message>
        <source>Removed: %1</source>
        <translation>Entfernt: %1</translation>
    </message>
    <message>
        <source>or %1</source>
        <comment>a unit of volume</comment>
        <translation>oder %1</translation>
    </message>
    <message>
        <source>How much water was changed: type a part in percent or the volume.</source>
        <translation>Wie viel Wasser gewechselt wurde: tippe den Anteil in Prozent oder die Menge.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::ExposureCard</name>
    <message>
        <source>Exposure</source>
        <translation>Einwirkung</translation>
    </message>
    <message>
        <source>Hours beyond each limit</source>
        <translation>Stunden jenseits jeder Grenze</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Furthest</source>
        <translation>Am weitesten</translation>
    </message>
    <message>
        <source>Exposure since %1</source>
        <translation>Einwirkung seit %1</translation>
    </message>
    <message>
        <source>%1–%2 by the kit</source>
        <translation>%1–%2 nach dem Test</translation>
    </message>
    <message>
        <source>%1 days not read</source>
        <translation>%1 Tage nicht gemessen</translation>
    </message>
    <message>
        <source>No reading since then can be held against a limit. Readings on Rounds fill this.</source>
        <translation>Kein Messwert seither lässt sich an eine Grenze halten. Messwerte im Rundgang füllen dies.</translation>
    </message>
    <message>
        <source>Straight between readings; stretches of over ten days count as not read.</source>
        <translation>Gerade zwischen den Messwerten; Strecken über zehn Tage gelten als nicht gemessen.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::FactEditor</name>
    <message>
        <source>Your version</source>
        <translation>Eigene Fassung</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Strg+Enter</translation>
    </message>
    <message>
        <source>Back to the built-in</source>
        <translation>Zurück zur mitgelieferten Fassung</translation>
    </message>
    <message>
        <source>New species</source>
        <translation>Neue Art</translation>
    </message>
    <message>
        <source>New caution</source>
        <translation>Neuer Vorsichtshinweis</translation>
    </message>
    <message>
        <source>New condition</source>
        <translation>Neuer Zustand</translation>
    </message>
    <message>
        <source>Your points: %1</source>
        <translation>Eigene Punkte: %1</translation>
    </message>
    <message>
        <source>Your version: %1</source>
        <translation>Eigene Fassung: %1</translation>
    </message>
    <message>
        <source>Only in this store. It counts at once where the program weighs findings, stock and gates.</source>
        <translation>Nur in dieser Datei. Es gilt sofort, wo das Programm Befunde, Besatz und Freigaben abwägt.</translation>
    </message>
    <message>
        <source>Your points are shown below the program&apos;s own, which stay.</source>
        <translation>Eigene Punkte stehen unter denen des Programms, die erhalten bleiben.</translation>
    </message>
    <message>
        <source>The program&apos;s own stays beneath it.</source>
        <translation>Die Fassung des Programms bleibt darunter bestehen.</translation>
    </message>
    <message>
        <source>The program&apos;s own stays beneath it; its source: %1.</source>
        <translation>Die Fassung des Programms bleibt darunter bestehen; ihre Quelle: %1.</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>your version of %1</source>
        <translation>eigene Fassung von %1</translation>
    </message>
    <message>
        <source>%1 is as the program ships it</source>
        <translation>%1 entspricht der mitgelieferten Fassung</translation>
    </message>
    <message>
        <source>%1 saved; it counts at once</source>
        <translation>%1 gespeichert; gilt sofort</translation>
    </message>
    <message>
        <source>built-in %1 again</source>
        <translation>wieder die mitgelieferte Fassung von %1</translation>
    </message>
    <message>
        <source>%1 removed</source>
        <translation>%1 entfernt</translation>
    </message>
    <message>
        <source>%1 is as the program ships it; Ctrl+Z brings yours back</source>
        <translation>%1 entspricht der mitgelieferten Fassung; Strg+Z bringt die eigene zurück</translation>
    </message>
    <message>
        <source>%1 removed; Ctrl+Z brings it back</source>
        <translation>%1 entfernt; Strg+Z stellt die Angabe wieder her</translation>
    </message>
</context>
<context>
    <name>littoral::ui::FanStack</name>
    <message>
        <source>Charts of the cycle</source>
        <translation>Diagramme der Einfahrphase</translation>
    </message>
    <message>
        <source>%1 %2, 8 in 10 between %3 and %4</source>
        <comment>quantity, middle value, range</comment>
        <translation>%1 %2, 8 von 10 zwischen %3 und %4</translation>
    </message>
    <message>
        <source>%1 %2, fitted</source>
        <comment>quantity, value</comment>
        <translation>%1 %2, angepasst</translation>
    </message>
    <message>
        <source>%1: no forecast for this day</source>
        <comment>quantity</comment>
        <translation>%1: keine Vorhersage für diesen Tag</translation>
    </message>
    <message>
        <source>%1, %2, %3: %4</source>
        <comment>panel, unit, day, values</comment>
        <translation>%1, %2, %3: %4</translation>
    </message>
    <message>
        <source>%1 %2, 8 in 10 between %3 and %4</source>
        <comment>way, middle value, range</comment>
        <translation>%1 %2, 8 von 10 zwischen %3 und %4</translation>
    </message>
</context>
<context>
    <name>littoral::ui::FieldGrid</name>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
</context>
<context>
    <name>littoral::ui::FindField</name>
    <message>
        <source>Find or do anything</source>
        <translation>Etwas finden oder tun</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Ctrl K</source>
        <translation>Strg K</translation>
    </message>
</context>
<context>
    <name>littoral::ui::FindModel</name>
    <message>
        <source>Tank</source>
        <translation>Becken</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
</context>
<context>
    <name>littoral::ui::FindingsCard</name>
    <message>
        <source>Findings, most supported first</source>
        <translation>Befunde, der bestgestützte zuerst</translation>
    </message>
    <message>
        <source>%1. The whole record is weighed.</source>
        <translation>%1. Das ganze Journal wird gewogen.</translation>
    </message>
    <message>
        <source>Nothing is recorded about this layout yet. What is seen is written down as an observation, and weighed here.</source>
        <translation>Über dieses Layout ist noch nichts aufgezeichnet. Was du siehst, schreibst du als Beobachtung auf; hier wird es gewogen.</translation>
    </message>
    <message>
        <source>Nothing that was seen points to a condition. Write down what you see as an observation; the questions below sharpen it.</source>
        <translation>Nichts, was gesehen wurde, deutet auf einen Zustand hin. Schreib auf, was du siehst, als Beobachtung; die Fragen unten schärfen sie.</translation>
    </message>
    <message>
        <source>+ for</source>
        <translation>+ dafür</translation>
    </message>
    <message>
        <source>− against</source>
        <translation>− dagegen</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>%1. %2, %3</source>
        <translation>%1. %2, %3</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>First actions, with their cautions</source>
        <translation>Erste Maßnahmen, mit ihren Warnhinweisen</translation>
    </message>
    <message>
        <source>First actions against %1, with their cautions</source>
        <translation>Erste Maßnahmen gegen %1, mit ihren Warnhinweisen</translation>
    </message>
    <message>
        <source>Before anything is done</source>
        <translation>Bevor etwas getan wird</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Zuerst</translation>
    </message>
    <message>
        <source>Avoid</source>
        <translation>Vermeiden</translation>
    </message>
    <message>
        <source>Next look: %1</source>
        <translation>Nächster Blick: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Make these %1 tasks</source>
        <translation>Daraus %1 Aufgaben machen</translation>
    </message>
    <message>
        <source>Read it in the guide</source>
        <translation>Im Leitfaden nachlesen</translation>
    </message>
    <message>
        <source>Read about %1 in the guide</source>
        <translation>Über %1 im Leitfaden nachlesen</translation>
    </message>
    <message>
        <source>decides</source>
        <translation>entscheidet</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Weighed, and resting on no sign or spoken against</source>
        <translation>Gewogen, ohne ein Zeichen oder mit Gegenrede</translation>
    </message>
    <message>
        <source>Weighed, and resting on no sign or spoken against: %1</source>
        <translation>Gewogen, ohne ein Zeichen oder mit Gegenrede: %1</translation>
    </message>
</context>
<context>
    <name>littoral::ui::FirstRunPage</name>
    <message>
        <source>An empty row</source>
        <translation>Eine leere Reihe</translation>
    </message>
    <message>
        <source>Every tank will be a lane on one time axis: what happened on the left, today in the middle, forecast and due work on the right.</source>
        <translation>Jedes Becken wird eine Bahn auf einer Zeitachse: links, was geschah, in der Mitte heute, rechts Vorhersage und fällige Arbeit.</translation>
    </message>
    <message>
        <source>Look around first</source>
        <translation>Erst umsehen</translation>
    </message>
    <message>
        <source>The sample row holds invented tanks and their entries: some just flooded, one with melt, some with work overdue.</source>
        <translation>Die Beispielreihe enthält erfundene Becken und ihre Einträge: manche gerade geflutet, eines mit Schmelze, manche mit überfälliger Arbeit.</translation>
    </message>
    <message>
        <source>It opens as a copy in its own file. Nothing in it touches yours.</source>
        <translation>Sie öffnet sich als Kopie in einer eigenen Datei. Nichts darin berührt deine.</translation>
    </message>
    <message>
        <source>Open the sample row</source>
        <translation>Die Beispielreihe öffnen</translation>
    </message>
    <message>
        <source>Alt S</source>
        <translation>Alt S</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Flooded on (its day 0; a guess will do)</source>
        <translation>Geflutet am (sein Tag 0; geschätzt reicht)</translation>
    </message>
    <message>
        <source>Flooded on</source>
        <translation>Geflutet am</translation>
    </message>
    <message>
        <source>today; or a date such as 2026-11-02</source>
        <translation>heute; oder ein Datum wie 2026-11-02</translation>
    </message>
    <message>
        <source>Started with</source>
        <translation>Begonnen mit</translation>
    </message>
    <message>
        <source>Add my first tank</source>
        <translation>Mein erstes Becken hinzufügen</translation>
    </message>
    <message>
        <source>Four fields are enough to begin. Everything else can wait, and all of it can be changed later.</source>
        <translation>Vier Felder reichen für den Anfang. Alles andere hat Zeit, und alles lässt sich später ändern.</translation>
    </message>
    <message>
        <source>Add this tank</source>
        <translation>Dieses Becken hinzufügen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Bring in a CSV file...</source>
        <translation>Eine CSV-Datei einlesen …</translation>
    </message>
    <message>
        <source>Bring in a CSV file</source>
        <translation>Eine CSV-Datei einlesen</translation>
    </message>
    <message>
        <source>Leave it empty if you have no rule at hand; volumes are then unknown.</source>
        <translation>Lass es leer, wenn kein Maßband zur Hand ist; Mengen sind dann unbekannt.</translation>
    </message>
    <message>
        <source>The day it was flooded is not understood; try 2026-11-25.</source>
        <translation>Der Tag der Flutung ist nicht verständlich; versuch 2026-11-25.</translation>
    </message>
    <message>
        <source>The tank has no name yet. Give it one that you would say aloud.</source>
        <translation>Das Becken hat noch keinen Namen. Gib ihm einen, den du laut sagen würdest.</translation>
    </message>
    <message>
        <source>The day it was flooded is not understood. Type it as 2026-11-25.</source>
        <translation>Der Tag der Flutung ist nicht verständlich. Tippe ihn als 2026-11-25.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a measure between 0 and 1000.</source>
        <translation>%1: „%2“ ist kein Maß zwischen 0 und 1000.</translation>
    </message>
    <message>
        <source>Saved on this computer only, in the store that is open.</source>
        <translation>Nur auf diesem Rechner gespeichert, in der offenen Datei.</translation>
    </message>
    <message>
        <source>Saved on this computer only, in one file: %1</source>
        <translation>Nur auf diesem Rechner gespeichert, in einer Datei: %1</translation>
    </message>
    <message>
        <source>Glass, outside, %1: length × depth × height</source>
        <translation>Glas, außen, %1: Länge × Tiefe × Höhe</translation>
    </message>
    <message>
        <source>Length, %1</source>
        <translation>Länge, %1</translation>
    </message>
    <message>
        <source>Depth, %1</source>
        <translation>Tiefe, %1</translation>
    </message>
    <message>
        <source>Height, %1</source>
        <translation>Höhe, %1</translation>
    </message>
    <message>
        <source>%1 glass, about %2 of water</source>
        <translation>%1 Glas, etwa %2 Wasser</translation>
    </message>
    <message>
        <source>less %1 of bed, %2 of air and %3 mm glass</source>
        <translation>abzüglich %1 Bodengrund, %2 Luft und %3 mm Glas</translation>
    </message>
    <message>
        <source>The volume follows from the glass</source>
        <translation>Die Menge folgt aus dem Glas</translation>
    </message>
</context>
<context>
    <name>littoral::ui::FormulaPane</name>
    <message>
        <source>Working</source>
        <translation>Rechenweg</translation>
    </message>
    <message>
        <source>%1. With the figures put in: %2</source>
        <translation>%1. Mit eingesetzten Zahlen: %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::GuideModel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::GuidePage</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Forward</source>
        <translation>Vor</translation>
    </message>
    <message>
        <source>Guide</source>
        <translation>Leitfaden</translation>
    </message>
    <message>
        <source>Bar of the Guide page</source>
        <translation>Leiste der Seite Leitfaden</translation>
    </message>
    <message>
        <source>Alt ←</source>
        <translation>Alt ←</translation>
    </message>
    <message>
        <source>Alt →</source>
        <translation>Alt →</translation>
    </message>
    <message>
        <source>Back to the topic read before</source>
        <translation>Zurück zum vorher gelesenen Thema</translation>
    </message>
    <message>
        <source>Forward again</source>
        <translation>Wieder vor</translation>
    </message>
    <message>
        <source>Kinds shown</source>
        <translation>Gezeigte Arten von Themen</translation>
    </message>
    <message>
        <source>Search the guide</source>
        <translation>Den Leitfaden durchsuchen</translation>
    </message>
    <message>
        <source>Search the guide: beginnings of words, all of them</source>
        <translation>Den Leitfaden durchsuchen: Wortanfänge, alle davon</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>What is known, and from where</source>
        <translation>Was bekannt ist, und woher</translation>
    </message>
    <message>
        <source>Conditions a tank can get into, plants and animals with what they bear, the work, and the cautions that go with it. Every article names its source; much of it is common practice, to be judged against your own tanks.</source>
        <translation>Zustände, in die ein Becken geraten kann, Pflanzen und Tiere mit dem, was sie vertragen, die Arbeit und die Warnhinweise dazu. Jeder Artikel nennt seine Quelle; vieles ist gängige Praxis, die du an deinen eigenen Becken prüfst.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Nothing has all of these words. Try the beginning of one of them.</source>
        <translation>Nichts enthält alle diese Wörter. Versuch den Anfang eines davon.</translation>
    </message>
    <message numerus="yes">
        <source>%n topic(s)</source>
        <translation>
            <numerusform>%n Thema</numerusform>
            <numerusform>%n Themen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n topic(s) with all of these words</source>
        <translation>
            <numerusform>%n Thema mit allen diesen Wörtern</numerusform>
            <numerusform>%n Themen mit allen diesen Wörtern</numerusform>
        </translation>
    </message>
    <message>
        <source>Edit your version of this topic</source>
        <translation>Eigene Fassung dieses Themas bearbeiten</translation>
    </message>
    <message>
        <source>Alt E</source>
        <translation>Alt E</translation>
    </message>
    <message>
        <source>Back to this topic as the program ships it</source>
        <translation>Zurück zur mitgelieferten Fassung dieses Themas</translation>
    </message>
    <message>
        <source>Add a condition, a species or a caution</source>
        <translation>Einen Zustand, eine Art oder einen Vorsichtshinweis hinzufügen</translation>
    </message>
    <message>
        <source>A &amp;condition</source>
        <translation>Ein &amp;Zustand</translation>
    </message>
    <message>
        <source>A &amp;species</source>
        <translation>Eine &amp;Art</translation>
    </message>
    <message>
        <source>A c&amp;aution</source>
        <translation>Ein &amp;Vorsichtshinweis</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Back to the built-in</source>
        <translation>Zurück zur mitgelieferten Fassung</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>your version of %1 taken back</source>
        <translation>eigene Fassung von %1 zurückgenommen</translation>
    </message>
    <message>
        <source>Your version still counts.</source>
        <translation>Die eigene Fassung gilt weiterhin.</translation>
    </message>
    <message>
        <source>%1 is as the program ships it; Ctrl+Z brings your version back</source>
        <translation>%1 entspricht der mitgelieferten Fassung; Strg+Z bringt die eigene Fassung zurück</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Bearbeiten</translation>
    </message>
    <message>
        <source>All kinds</source>
        <translation>Alle Rubriken</translation>
    </message>
    <message>
        <source>Records of yours that could not be used</source>
        <translation>Eigene Angaben, die sich nicht verwenden ließen</translation>
    </message>
</context>
<context>
    <name>littoral::ui::GuidePanel</name>
    <message>
        <source>Guide</source>
        <translation>Leitfaden</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Alt ←</source>
        <translation>Alt ←</translation>
    </message>
    <message>
        <source>On the Guide page</source>
        <translation>Auf der Seite Leitfaden</translation>
    </message>
    <message>
        <source>Ctrl 8</source>
        <translation>Strg 8</translation>
    </message>
    <message>
        <source>Read this on the Guide page</source>
        <translation>Dies auf der Seite Leitfaden lesen</translation>
    </message>
    <message>
        <source>Back to the topic read before</source>
        <translation>Zurück zum zuvor gelesenen Thema</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>What is focused</source>
        <translation>Was im Fokus ist</translation>
    </message>
    <message>
        <source>F1 opens the article on what the keyboard is at: a reading, a task, a finding, a species, a gate, a caution. Nothing of that kind is focused now.</source>
        <translation>F1 öffnet den Artikel zu dem, wo die Tastatur gerade steht: einem Messwert, einer Aufgabe, einem Befund, einer Art, einer Freigabe, einem Vorsichtshinweis. Im Moment ist nichts dergleichen im Fokus.</translation>
    </message>
    <message>
        <source>Words of the trade and of the program</source>
        <translation>Wörter des Fachs und des Programms</translation>
    </message>
    <message>
        <source>The guide has nothing under this name.</source>
        <translation>Der Leitfaden hat nichts unter diesem Namen.</translation>
    </message>
    <message>
        <source>The guide has no article of this name. These mention it:</source>
        <translation>Der Leitfaden hat keinen Artikel dieses Namens. Diese erwähnen ihn:</translation>
    </message>
</context>
<context>
    <name>littoral::ui::HelperForm</name>
    <message>
        <source>Nothing of the helper&apos;s sheets is open: all of it is written down, or its day is still to come.</source>
        <translation>Auf den Blättern des Helfers ist nichts offen: Alles ist aufgeschrieben, oder der Tag dafür kommt noch.</translation>
    </message>
    <message>
        <source>Write down what was done</source>
        <translation>Aufschreiben, was getan wurde</translation>
    </message>
    <message>
        <source>What the helper did</source>
        <translation>Was der Helfer getan hat</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>tank, day, work</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Getan</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Getan: %1</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Ausgelassen</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Ausgelassen: %1</translation>
    </message>
    <message>
        <source>Day it was done: %1</source>
        <translation>Tag, an dem es getan wurde: %1</translation>
    </message>
    <message>
        <source>Note, or why it was left out: %1</source>
        <translation>Notiz, oder warum es ausgelassen wurde: %1</translation>
    </message>
    <message>
        <source>note, or why it was left out</source>
        <translation>Notiz, oder warum es ausgelassen wurde</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>%1 as read: %2</source>
        <translation>%1, gemessen: %2</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a day. Type it as 27 Nov or 2026-11-27.</source>
        <translation>„%1“ ist kein Tag. Eingabe als 27 Nov oder 2026-11-27.</translation>
    </message>
    <message>
        <source>Tick what was done, or what was left out.</source>
        <translation>Ankreuzen, was getan oder was ausgelassen wurde.</translation>
    </message>
    <message>
        <source>Rounds written down from the journey: %1</source>
        <comment>count</comment>
        <translation>Aus der Reise aufgeschriebene Rundgänge: %1</translation>
    </message>
</context>
<context>
    <name>littoral::ui::HistoryPage</name>
    <message>
        <source>Export PDF</source>
        <translation>PDF exportieren</translation>
    </message>
    <message>
        <source>Column shown</source>
        <translation>Gezeigte Spalte</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Rückschau</translation>
    </message>
    <message>
        <source>Findings, scrolling</source>
        <translation>Befunde, scrollbar</translation>
    </message>
    <message>
        <source>Changes, scrolling</source>
        <translation>Änderungen, scrollbar</translation>
    </message>
    <message>
        <source>Bar of the History page</source>
        <translation>Leiste der Seite Rückschau</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Frage</translation>
    </message>
    <message>
        <source>Look back</source>
        <translation>Zurückblicken</translation>
    </message>
    <message>
        <source>1 week</source>
        <translation>1 Woche</translation>
    </message>
    <message>
        <source>2 weeks</source>
        <translation>2 Wochen</translation>
    </message>
    <message>
        <source>3 weeks</source>
        <translation>3 Wochen</translation>
    </message>
    <message>
        <source>6 weeks</source>
        <translation>6 Wochen</translation>
    </message>
    <message>
        <source>12 weeks</source>
        <translation>12 Wochen</translation>
    </message>
    <message>
        <source>Ctrl+P</source>
        <translation>Strg+P</translation>
    </message>
    <message>
        <source>Find in the record</source>
        <translation>Im Journal finden</translation>
    </message>
    <message>
        <source>Make tasks of the first finding</source>
        <translation>Aufgaben aus dem ersten Befund machen</translation>
    </message>
    <message>
        <source>The comparison as a table</source>
        <translation>Der Vergleich als Tabelle</translation>
    </message>
    <message>
        <source>Go to now</source>
        <translation>Zu jetzt gehen</translation>
    </message>
    <message>
        <source>Dates or days since flooding</source>
        <translation>Kalenderdaten oder Tage seit dem Fluten</translation>
    </message>
    <message>
        <source>Choose a tank at the left. What happened to it, and what points to what, stands here.</source>
        <translation>Wähle links ein Becken. Was mit ihm geschah und was worauf hindeutet, steht hier.</translation>
    </message>
    <message>
        <source>This tank has no layout yet. Once it has one, what happened to it stands here; Edit the tank (Ctrl+T) adds a layout.</source>
        <translation>Dieses Becken hat noch kein Layout. Sobald es eines hat, steht hier, was mit ihm geschah; Becken bearbeiten (Strg+T) fügt ein Layout hinzu.</translation>
    </message>
    <message>
        <source>The record is as it was.</source>
        <translation>Das Journal ist wie zuvor.</translation>
    </message>
    <message>
        <source>Written down as an observation; Ctrl+Z takes it back.</source>
        <translation>Als Beobachtung aufgeschrieben; Strg+Z nimmt sie zurück.</translation>
    </message>
    <message>
        <source>%1 tasks from a finding</source>
        <translation>%1 Aufgaben aus einem Befund</translation>
    </message>
    <message>
        <source>%1 tasks made, due today; Ctrl+Z takes them back.</source>
        <translation>%1 Aufgaben gemacht, heute fällig; Strg+Z nimmt sie zurück.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::HistoryRecord</name>
    <message>
        <source>Planned: %1</source>
        <translation>Geplant: %1</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1; the evidence pointed at rests on it</source>
        <translation>%1; der gezeigte Hinweis beruht darauf</translation>
    </message>
    <message>
        <source>%1; in the window looked back on</source>
        <translation>%1; im betrachteten Zeitfenster</translation>
    </message>
</context>
<context>
    <name>littoral::ui::JourneyPanel</name>
    <message>
        <source>whole row</source>
        <translation>ganze Reihe</translation>
    </message>
    <message>
        <source>%1, %2: %3. %4</source>
        <comment>day, tank, work, why</comment>
        <translation>%1, %2: %3. %4</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>days, what to prepare</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, lines: %2</source>
        <translation>%1, Zeilen: %2</translation>
    </message>
    <message>
        <source>Journey and helper</source>
        <translation>Reise und Helfer</translation>
    </message>
    <message>
        <source>What the helper did</source>
        <translation>Was der Helfer getan hat</translation>
    </message>
    <message>
        <source>Work of the day of leaving and of the day of return stays yours. The sheet for each tank is printed from these lists.</source>
        <translation>Die Arbeit am Tag der Abreise und am Tag der Rückkehr bleibt beim Pfleger selbst. Das Blatt für jedes Becken wird aus diesen Listen gedruckt.</translation>
    </message>
    <message>
        <source>Day of leaving</source>
        <translation>Tag der Abreise</translation>
    </message>
    <message>
        <source>23 Dec or 2026-12-23</source>
        <translation>23 Dec oder 2026-12-23</translation>
    </message>
    <message>
        <source>Day of return</source>
        <translation>Tag der Rückkehr</translation>
    </message>
    <message>
        <source>3 Jan 2027</source>
        <translation>3 Jan 2027</translation>
    </message>
    <message>
        <source>Who helps</source>
        <translation>Wer hilft</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>Wen anrufen</translation>
    </message>
    <message>
        <source>numbers in order, parted by ;</source>
        <translation>Nummern der Reihe nach, getrennt durch ;</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Save and split the work</source>
        <translation>Speichern und die Arbeit aufteilen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>Another</source>
        <translation>Weitere</translation>
    </message>
    <message>
        <source>Another journey</source>
        <translation>Weitere Reise</translation>
    </message>
    <message>
        <source>The helper&apos;s tasks take %1 minutes and %2 of water over the journey, daily looks not counted.</source>
        <translation>Die Aufgaben des Helfers brauchen über die Reise %1 Minuten und %2 Wasser, tägliche Kontrollblicke nicht mitgezählt.</translation>
    </message>
    <message>
        <source>To prepare</source>
        <translation>Vorzubereiten</translation>
    </message>
    <message>
        <source>Before leaving</source>
        <translation>Vor der Abreise</translation>
    </message>
    <message>
        <source>The helper does</source>
        <translation>Der Helfer erledigt</translation>
    </message>
    <message>
        <source>Waits for you</source>
        <translation>Wartet bis zur Rückkehr</translation>
    </message>
    <message>
        <source>On the day of return</source>
        <translation>Am Tag der Rückkehr</translation>
    </message>
    <message>
        <source>%1 is missing.</source>
        <translation>%1 fehlt.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a day. Type it as 27 Nov or 2026-11-27.</source>
        <translation>„%1“ ist kein Tag. Eingabe als 27 Nov oder 2026-11-27.</translation>
    </message>
    <message>
        <source>The day of return comes after the day of leaving.</source>
        <translation>Der Tag der Rückkehr kommt nach dem Tag der Abreise.</translation>
    </message>
    <message>
        <source>Journey kept: %1</source>
        <translation>Reise gespeichert: %1</translation>
    </message>
    <message>
        <source>Journey taken out: %1</source>
        <translation>Reise herausgenommen: %1</translation>
    </message>
</context>
<context>
    <name>littoral::ui::KeyPanel</name>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>Auf %1</translation>
    </message>
</context>
<context>
    <name>littoral::ui::KeyStrip</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Keys of this page</source>
        <translation>Tasten dieser Seite</translation>
    </message>
</context>
<context>
    <name>littoral::ui::KitsEditor</name>
    <message>
        <source>Steps: &quot;%1&quot; is not a number.</source>
        <translation>Stufen: „%1“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>Type them apart by spaces: 0 0.25 0.5 1 2.</source>
        <translation>Tippe sie mit Leerzeichen dazwischen: 0 0.25 0.5 1 2.</translation>
    </message>
    <message>
        <source>Steps: %1 does not follow %2.</source>
        <translation>Stufen: %1 folgt nicht auf %2.</translation>
    </message>
    <message>
        <source>Each step is higher than the one before.</source>
        <translation>Jede Stufe ist höher als die davor.</translation>
    </message>
    <message>
        <source>Test kits</source>
        <translation>Testsets</translation>
    </message>
    <message>
        <source>Save kit</source>
        <translation>Test speichern</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>New kit</source>
        <translation>Neuer Test</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Reads</source>
        <translation>Misst</translation>
    </message>
    <message>
        <source>In the unit printed on it</source>
        <translation>In der aufgedruckten Einheit</translation>
    </message>
    <message>
        <source>Colour card</source>
        <translation>Farbkarte</translation>
    </message>
    <message>
        <source>Drops</source>
        <translation>Tropfen</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Digital</source>
        <translation>Digital</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Steps, from 0 upwards</source>
        <translation>Stufen, ab 0 aufwärts</translation>
    </message>
    <message>
        <source>Its nitrate value takes in nitrite too</source>
        <translation>Sein Nitratwert enthält auch Nitrit</translation>
    </message>
    <message>
        <source>Minutes until the colour is read</source>
        <translation>Minuten, bis die Farbe abgelesen wird</translation>
    </message>
    <message>
        <source>Opened on</source>
        <translation>Geöffnet am</translation>
    </message>
    <message>
        <source>Good until</source>
        <translation>Haltbar bis</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>No longer in use</source>
        <translation>Nicht mehr in Gebrauch</translation>
    </message>
    <message>
        <source>%1, %2, no longer in use</source>
        <translation>%1, %2, nicht mehr in Gebrauch</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The kit has no name yet.</source>
        <translation>Der Test hat noch keinen Namen.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a date. Type it as 2027-04-30.</source>
        <translation>%1: „%2“ ist kein Datum. Tippe es als 2027-04-30.</translation>
    </message>
    <message>
        <source>test kit %1</source>
        <translation>Test %1</translation>
    </message>
    <message>
        <source>Test kit %1 saved</source>
        <translation>Test %1 gespeichert</translation>
    </message>
    <message>
        <source>Minutes to shake, before the waiting time</source>
        <translation>Minuten Schütteln, vor der Wartezeit</translation>
    </message>
</context>
<context>
    <name>littoral::ui::LaneView</name>
    <message>
        <source>Lanes</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>work being moved to another day</comment>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>work and why it is due</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <comment>form of a date</comment>
        <translation>ddd d. MMM</translation>
    </message>
</context>
<context>
    <name>littoral::ui::LanesBar</name>
    <message>
        <source>1 year back, 4 weeks</source>
        <translation>1 Jahr zurück, 4 Wochen</translation>
    </message>
    <message>
        <source>%1 weeks back, %2 ahead</source>
        <comment>how much of the time axis is shown</comment>
        <translation>%1 Wochen zurück, %2 voraus</translation>
    </message>
    <message>
        <source>Lanes, page bar</source>
        <translation>Leiste der Seite Bahnen</translation>
    </message>
    <message>
        <source>Time axis</source>
        <translation>Zeitachse</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>Days since flooding</source>
        <translation>Tage seit dem Fluten</translation>
    </message>
    <message>
        <source>Span</source>
        <translation>Spanne</translation>
    </message>
    <message>
        <source>Span of the time axis</source>
        <translation>Spanne der Zeitachse</translation>
    </message>
    <message>
        <source>as zoomed</source>
        <translation>wie gezoomt</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Vorhersage</translation>
    </message>
    <message>
        <source>Targets</source>
        <translation>Ziele</translation>
    </message>
    <message>
        <source>Done work</source>
        <translation>Erledigte Arbeit</translation>
    </message>
    <message>
        <source>Free ammonia</source>
        <translation>Freies Ammoniak</translation>
    </message>
    <message>
        <source>Phases</source>
        <translation>Phasen</translation>
    </message>
    <message>
        <source>Show only tanks whose name has</source>
        <translation>Nur Becken zeigen, deren Name enthält</translation>
    </message>
    <message>
        <source>tank name</source>
        <translation>Beckenname</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Day 0 to %1</source>
        <translation>Tag 0 bis %1</translation>
    </message>
    <message>
        <source>Everything</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Shows now in the selected lane</source>
        <translation>Zeigt jetzt in der gewählten Bahn</translation>
    </message>
    <message>
        <source>Shows now</source>
        <translation>Zeigt jetzt</translation>
    </message>
</context>
<context>
    <name>littoral::ui::LanesPage</name>
    <message>
        <source>Lanes</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>%1: done today.</source>
        <translation>%1: heute erledigt.</translation>
    </message>
    <message>
        <source>%1: moved by hand to %2.</source>
        <translation>%1: von Hand auf %2 verlegt.</translation>
    </message>
    <message>
        <source>%1: snoozed until %2.</source>
        <translation>%1: verschoben bis %2.</translation>
    </message>
    <message>
        <source>%1: skipped.</source>
        <translation>%1: ausgelassen.</translation>
    </message>
    <message>
        <source>Nothing was changed in the store.</source>
        <translation>In der Datei wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Tick a tank in the list on the left to give it a lane.</source>
        <translation>Hake links in der Liste ein Becken an, um ihm eine Bahn zu geben.</translation>
    </message>
    <message>
        <source>No tank on show has &quot;%1&quot; in its name.</source>
        <translation>Kein gezeigtes Becken hat „%1“ im Namen.</translation>
    </message>
    <message>
        <source>No lane on show</source>
        <translation>Keine Bahn zu sehen</translation>
    </message>
    <message>
        <source>Moving work to another day</source>
        <translation>Arbeit auf einen anderen Tag verlegen</translation>
    </message>
    <message>
        <source>Left and right go by a day, with Shift by a week. Enter moves it there, Esc leaves it where it is.</source>
        <translation>Links und Rechts gehen einen Tag weit, mit Umschalt eine Woche. Enter verlegt dorthin, Esc lässt alles, wie es ist.</translation>
    </message>
    <message>
        <source>No work is due in this lane.</source>
        <translation>In dieser Bahn ist keine Arbeit fällig.</translation>
    </message>
    <message>
        <source>Work of today and of seven days</source>
        <translation>Arbeit von heute und von sieben Tagen</translation>
    </message>
    <message>
        <source>Water changes eased: %1</source>
        <translation>Wasserwechsel gelockert: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>day, which large changes meet</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::LineageView</name>
    <message>
        <source>Filter media moved between tanks</source>
        <translation>Filtermaterial, das zwischen Becken umzog</translation>
    </message>
    <message>
        <source>Tank that is gone</source>
        <translation>Becken, das es nicht mehr gibt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::LoadChart</name>
    <message>
        <source>Load and water after adding</source>
        <translation>Belastung und Wasser nach dem Einsetzen</translation>
    </message>
    <message>
        <source>Load now %1 mg nitrogen an hour, with them %2 more; the filter can take %3 to %4 today, 8 in 10.</source>
        <translation>Belastung jetzt %1 mg Stickstoff in der Stunde, mit ihnen %2 mehr; der Filter schafft heute %3 bis %4, 8 von 10.</translation>
    </message>
    <message>
        <source>%1 after adding: upper end of the 8-in-10 range %2 at most, limit %3.</source>
        <translation>%1 nach dem Einsetzen: oberes Ende des 8-von-10-Bereichs höchstens %2, Grenze %3.</translation>
    </message>
    <message>
        <source>Choose an animal: its load is run through this tank&apos;s forecast.</source>
        <translation>Wähle ein Tier: Seine Belastung läuft durch die Vorhersage dieses Beckens.</translation>
    </message>
    <message>
        <source>Load, mg nitrogen an hour</source>
        <translation>Belastung, mg Stickstoff in der Stunde</translation>
    </message>
    <message>
        <source>now %1, with them +%2</source>
        <translation>jetzt %1, mit ihnen +%2</translation>
    </message>
    <message>
        <source>filter can take %1–%2</source>
        <translation>Filter schafft %1–%2</translation>
    </message>
    <message>
        <source>%1 after adding, %2</source>
        <translation>%1 nach dem Einsetzen, %2</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>Grenze %1</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>+%1 days</source>
        <translation>+%1 Tage</translation>
    </message>
</context>
<context>
    <name>littoral::ui::MainWindow</name>
    <message>
        <source>Littoral</source>
        <translation>Littoral</translation>
    </message>
    <message>
        <source>Lanes</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>Trends</source>
        <translation>Verläufe</translation>
    </message>
    <message>
        <source>Cycle</source>
        <translation>Einfahren</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Rückschau</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Besatz</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>Guide</source>
        <translation>Leitfaden</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>This store is open for reading only: another program holds it, or the file may not be written. Viewing works; nothing is changed.</source>
        <translation>Diese Datei ist nur zum Lesen offen: Ein anderes Programm hält sie, oder sie darf nicht geschrieben werden. Ansehen geht; nichts wird geändert.</translation>
    </message>
    <message>
        <source>%1 - Littoral</source>
        <translation>%1 - Littoral</translation>
    </message>
    <message>
        <source>The store is as it was.</source>
        <translation>Die Datei ist wie zuvor.</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Erneut getan: %1</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Lanes</source>
        <translation>&amp;Bahnen</translation>
    </message>
    <message>
        <source>&amp;Trends</source>
        <translation>&amp;Verläufe</translation>
    </message>
    <message>
        <source>&amp;Cycle</source>
        <translation>&amp;Einfahren</translation>
    </message>
    <message>
        <source>&amp;History</source>
        <translation>Rück&amp;schau</translation>
    </message>
    <message>
        <source>&amp;Rounds</source>
        <translation>R&amp;undgang</translation>
    </message>
    <message>
        <source>St&amp;ock</source>
        <translation>Bes&amp;atz</translation>
    </message>
    <message>
        <source>&amp;Bench</source>
        <translation>Wer&amp;kbank</translation>
    </message>
    <message>
        <source>&amp;Guide</source>
        <translation>&amp;Leitfaden</translation>
    </message>
    <message>
        <source>Guide at &amp;what is focused</source>
        <translation>Leitfaden zum F&amp;okus</translation>
    </message>
    <message>
        <source>Next region</source>
        <translation>Nächster Bereich</translation>
    </message>
    <message>
        <source>Previous region</source>
        <translation>Voriger Bereich</translation>
    </message>
    <message>
        <source>&amp;Find or do anything</source>
        <translation>Etwas &amp;finden oder tun</translation>
    </message>
    <message>
        <source>Menu</source>
        <translation>Menü</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>&amp;Adopt the plan looked at</source>
        <translation>Den angesehenen Plan &amp;übernehmen</translation>
    </message>
    <message>
        <source>Charts as a &amp;table</source>
        <translation>Diagramme als &amp;Tabelle</translation>
    </message>
    <message>
        <source>&amp;Refit the forecast</source>
        <translation>Die Vorhersage neu &amp;anpassen</translation>
    </message>
    <message>
        <source>&amp;Dates or days since flooding</source>
        <translation>&amp;Kalender oder Tage seit dem Fluten</translation>
    </message>
    <message>
        <source>Go to &amp;now</source>
        <translation>Zu &amp;jetzt gehen</translation>
    </message>
    <message>
        <source>↑ ↓</source>
        <translation>↑ ↓</translation>
    </message>
    <message>
        <source>worksheet in the list</source>
        <translation>Rechenblatt in der Liste</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>from the list into the sheet</source>
        <translation>aus der Liste ins Blatt</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation>Strg+F</translation>
    </message>
    <message>
        <source>filter the list</source>
        <translation>die Liste filtern</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>next blank</source>
        <translation>nächstes Feld</translation>
    </message>
    <message>
        <source>P</source>
        <translation>P</translation>
    </message>
    <message>
        <source>pin the sheet beside the others</source>
        <translation>das Blatt neben die anderen heften</translation>
    </message>
    <message>
        <source>W</source>
        <translation>W</translation>
    </message>
    <message>
        <source>write to the record</source>
        <translation>ins Journal schreiben</translation>
    </message>
    <message>
        <source>M</source>
        <translation>M</translation>
    </message>
    <message>
        <source>make it a task</source>
        <translation>eine Aufgabe daraus machen</translation>
    </message>
    <message>
        <source>Ctrl+P</source>
        <translation>Strg+P</translation>
    </message>
    <message>
        <source>print to a PDF file</source>
        <translation>in eine PDF-Datei drucken</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>back to the list; what was typed stays</source>
        <translation>zurück zur Liste; was getippt wurde, bleibt</translation>
    </message>
    <message>
        <source>&amp;New entry</source>
        <translation>&amp;Neuer Eintrag</translation>
    </message>
    <message>
        <source>&amp;Water change...</source>
        <translation>&amp;Wasserwechsel …</translation>
    </message>
    <message>
        <source>Entries of the tank...</source>
        <translation>Einträge des Beckens …</translation>
    </message>
    <message>
        <source>&amp;Add a tank...</source>
        <translation>Becken &amp;hinzufügen …</translation>
    </message>
    <message>
        <source>Edit the &amp;tank...</source>
        <translation>&amp;Becken bearbeiten …</translation>
    </message>
    <message>
        <source>Target &amp;bands...</source>
        <translation>&amp;Zielbereiche …</translation>
    </message>
    <message>
        <source>Test &amp;kits...</source>
        <translation>&amp;Testsets …</translation>
    </message>
    <message>
        <source>New &amp;source water...</source>
        <translation>Neues &amp;Ausgangswasser …</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>Re&amp;do</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;New store...</source>
        <translation>&amp;Neue Datei …</translation>
    </message>
    <message>
        <source>&amp;Open a store...</source>
        <translation>Datei ö&amp;ffnen …</translation>
    </message>
    <message>
        <source>Open the &amp;sample row</source>
        <translation>&amp;Beispielreihe öffnen</translation>
    </message>
    <message>
        <source>&amp;Import CSV...</source>
        <translation>CSV &amp;einlesen …</translation>
    </message>
    <message>
        <source>&amp;Export...</source>
        <translation>E&amp;xportieren …</translation>
    </message>
    <message>
        <source>&amp;Back up...</source>
        <translation>&amp;Sichern …</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>Been&amp;den</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>High &amp;contrast</source>
        <translation>Hoher &amp;Kontrast</translation>
    </message>
    <message>
        <source>Follow the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>Text size %1 %</source>
        <translation>Textgröße %1 %</translation>
    </message>
    <message>
        <source>&amp;Undo %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>Re&amp;do %1</source>
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <source>save the cell, go to the next due one</source>
        <translation>die Zelle speichern, zur nächsten fälligen</translation>
    </message>
    <message>
        <source>next column; Shift+Tab the one before</source>
        <translation>nächste Spalte; Umschalt+Tab die davor</translation>
    </message>
    <message>
        <source>kit step while a cell is open, else the row above or below</source>
        <translation>Teststufe, solange eine Zelle offen ist, sonst die Zeile darüber oder darunter</translation>
    </message>
    <message>
        <source>&lt;</source>
        <translation>&lt;</translation>
    </message>
    <message>
        <source>below the lowest step</source>
        <translation>unter der niedrigsten Stufe</translation>
    </message>
    <message>
        <source>/</source>
        <translation>/</translation>
    </message>
    <message>
        <source>between two steps</source>
        <translation>zwischen zwei Stufen</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>take the reading out of the cell</source>
        <translation>den Messwert aus der Zelle nehmen</translation>
    </message>
    <message>
        <source>leave the cell; what was typed stays</source>
        <translation>die Zelle verlassen; was getippt wurde, bleibt</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>tick a task of the work list</source>
        <translation>eine Aufgabe der Arbeitsliste abhaken</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Strg+Enter</translation>
    </message>
    <message>
        <source>finish the round</source>
        <translation>den Rundgang abschließen</translation>
    </message>
    <message>
        <source>row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>open the row&apos;s entry</source>
        <translation>den Eintrag der Zeile öffnen</translation>
    </message>
    <message>
        <source>F1</source>
        <translation>F1</translation>
    </message>
    <message>
        <source>the species in the guide</source>
        <translation>die Art im Leitfaden</translation>
    </message>
    <message>
        <source>filter</source>
        <translation>filtern</translation>
    </message>
    <message>
        <source>F6</source>
        <translation>F6</translation>
    </message>
    <message>
        <source>next part of the page</source>
        <translation>nächster Teil der Seite</translation>
    </message>
    <message>
        <source>search</source>
        <translation>suchen</translation>
    </message>
    <message>
        <source>↓ Enter</source>
        <translation>↓ Enter</translation>
    </message>
    <message>
        <source>from the search to the list</source>
        <translation>von der Suche zur Liste</translation>
    </message>
    <message>
        <source>topic</source>
        <translation>Thema</translation>
    </message>
    <message>
        <source>next link of the article</source>
        <translation>nächster Verweis im Artikel</translation>
    </message>
    <message>
        <source>follow the link</source>
        <translation>dem Verweis folgen</translation>
    </message>
    <message>
        <source>Alt+←</source>
        <translation>Alt+←</translation>
    </message>
    <message>
        <source>back</source>
        <translation>zurück</translation>
    </message>
    <message>
        <source>Alt+→</source>
        <translation>Alt+→</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>vor</translation>
    </message>
    <message>
        <source>empty the search, then the page before</source>
        <translation>die Suche leeren, dann die Seite davor</translation>
    </message>
    <message>
        <source>← →</source>
        <translation>← →</translation>
    </message>
    <message>
        <source>cursor by a day; Ctrl by a week; on the slider the share</source>
        <translation>Zeiger um einen Tag; mit Strg um eine Woche; auf dem Regler der Anteil</translation>
    </message>
    <message>
        <source>plan or gate in its table; panel in the charts</source>
        <translation>Plan oder Freigabe in ihrer Tabelle; Feld in den Diagrammen</translation>
    </message>
    <message>
        <source>, .</source>
        <translation>, .</translation>
    </message>
    <message>
        <source>previous or next reading</source>
        <translation>voriger oder nächster Messwert</translation>
    </message>
    <message>
        <source>Home End</source>
        <translation>Pos1 Ende</translation>
    </message>
    <message>
        <source>flooding, end of the axis</source>
        <translation>Flutung, Ende der Achse</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>adopt the plan looked at</source>
        <translation>den angesehenen Plan übernehmen</translation>
    </message>
    <message>
        <source>T</source>
        <translation>T</translation>
    </message>
    <message>
        <source>charts as a table</source>
        <translation>Diagramme als Tabelle</translation>
    </message>
    <message>
        <source>R</source>
        <translation>R</translation>
    </message>
    <message>
        <source>refit</source>
        <translation>neu anpassen</translation>
    </message>
    <message>
        <source>D</source>
        <translation>D</translation>
    </message>
    <message>
        <source>dates or days since flooding</source>
        <translation>Kalender oder Tage seit dem Fluten</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>go to now</source>
        <translation>zu jetzt gehen</translation>
    </message>
    <message>
        <source>+ −</source>
        <translation>+ −</translation>
    </message>
    <message>
        <source>zoom</source>
        <translation>zoomen</translation>
    </message>
    <message>
        <source>open or close a line; choose a ring of the chart</source>
        <translation>eine Zeile öffnen oder schließen; einen Ring im Diagramm wählen</translation>
    </message>
    <message>
        <source>take the cursor away</source>
        <translation>den Zeiger wegnehmen</translation>
    </message>
    <message>
        <source>lane</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>item in time</source>
        <translation>Eintrag in der Zeit</translation>
    </message>
    <message>
        <source>row within the lane</source>
        <translation>Zeile in der Bahn</translation>
    </message>
    <message>
        <source>mark done</source>
        <translation>als erledigt abhaken</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>snooze</source>
        <translation>verschieben</translation>
    </message>
    <message>
        <source>K</source>
        <translation>K</translation>
    </message>
    <message>
        <source>skip with a reason</source>
        <translation>mit Grund auslassen</translation>
    </message>
    <message>
        <source>move by days</source>
        <translation>um Tage verlegen</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>first or last entry</source>
        <translation>erster oder letzter Eintrag</translation>
    </message>
    <message>
        <source>Tab ↑ ↓</source>
        <translation>Tab ↑ ↓</translation>
    </message>
    <message>
        <source>next or previous line of evidence; it is marked where it rests</source>
        <translation>nächster oder voriger Hinweis; er wird dort markiert, worauf er beruht</translation>
    </message>
    <message>
        <source>→</source>
        <translation>→</translation>
    </message>
    <message>
        <source>bring what it rests on into view; open an unknown one</source>
        <translation>zeigen, worauf er beruht; einen unbekannten öffnen</translation>
    </message>
    <message>
        <source>answer what is unknown; open a line of the record</source>
        <translation>Unbekanntes beantworten; eine Zeile des Journals öffnen</translation>
    </message>
    <message>
        <source>on the strip: reading or event before, after</source>
        <translation>auf dem Streifen: Messwert oder Ereignis davor, danach</translation>
    </message>
    <message>
        <source>on the strip: zoom</source>
        <translation>auf dem Streifen: zoomen</translation>
    </message>
    <message>
        <source>remove a line of the record</source>
        <translation>eine Zeile des Journals entfernen</translation>
    </message>
    <message>
        <source>make tasks of the first finding&apos;s actions</source>
        <translation>aus den Maßnahmen des ersten Befunds Aufgaben machen</translation>
    </message>
    <message>
        <source>the comparison as a table; the strip&apos;s values stand in the record</source>
        <translation>der Vergleich als Tabelle; die Werte des Streifens stehen im Journal</translation>
    </message>
    <message>
        <source>find in the record</source>
        <translation>im Journal finden</translation>
    </message>
    <message>
        <source>the case as a PDF file</source>
        <translation>der Fall als PDF-Datei</translation>
    </message>
    <message>
        <source>take the marks away</source>
        <translation>die Markierungen wegnehmen</translation>
    </message>
    <message>
        <source>The same values as a &amp;table</source>
        <translation>Dieselben Werte als &amp;Tabelle</translation>
    </message>
    <message>
        <source>E&amp;xport what is on show</source>
        <translation>Das Gezeigte e&amp;xportieren</translation>
    </message>
    <message>
        <source>Calendar or equal &amp;age</source>
        <translation>Kalender oder gleiches &amp;Alter</translation>
    </message>
    <message>
        <source>Next &amp;reading</source>
        <translation>&amp;Nächster Messwert</translation>
    </message>
    <message>
        <source>&amp;Previous reading</source>
        <translation>&amp;Voriger Messwert</translation>
    </message>
    <message>
        <source>crosshair by a day; Ctrl by a week</source>
        <translation>Fadenkreuz um einen Tag; mit Strg um eine Woche</translation>
    </message>
    <message>
        <source>previous or next reading of the chart</source>
        <translation>voriger oder nächster Messwert des Diagramms</translation>
    </message>
    <message>
        <source>chart</source>
        <translation>Diagramm</translation>
    </message>
    <message>
        <source>first or last reading</source>
        <translation>erster oder letzter Messwert</translation>
    </message>
    <message>
        <source>[ ]</source>
        <translation>[ ]</translation>
    </message>
    <message>
        <source>statistics from or to the crosshair</source>
        <translation>Statistik ab oder bis zum Fadenkreuz</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Rücktaste</translation>
    </message>
    <message>
        <source>statistics of what is on show again</source>
        <translation>wieder die Statistik des Gezeigten</translation>
    </message>
    <message>
        <source>the same values as a table</source>
        <translation>dieselben Werte als Tabelle</translation>
    </message>
    <message>
        <source>X</source>
        <translation>X</translation>
    </message>
    <message>
        <source>export: picture, drawing, values</source>
        <translation>Export: Bild, Zeichnung, Werte</translation>
    </message>
    <message>
        <source>calendar or equal age</source>
        <translation>Kalender oder gleiches Alter</translation>
    </message>
    <message>
        <source>tick a tank or a parameter in its list</source>
        <translation>ein Becken oder einen Parameter in seiner Liste anhaken</translation>
    </message>
    <message>
        <source>Ctrl+↑ ↓</source>
        <translation>Strg+↑ ↓</translation>
    </message>
    <message>
        <source>reorder the list</source>
        <translation>die Liste umordnen</translation>
    </message>
    <message>
        <source>take the stretch, then the crosshair away</source>
        <translation>erst die Strecke, dann das Fadenkreuz wegnehmen</translation>
    </message>
    <message>
        <source>Values are shown as before.</source>
        <translation>Werte werden wie zuvor gezeigt.</translation>
    </message>
    <message>
        <source>Nitrogen in mg/L of the ion</source>
        <translation>Stickstoff in mg/L des Ions</translation>
    </message>
    <message>
        <source>Nitrogen in mg/L as N</source>
        <translation>Stickstoff in mg/L als N</translation>
    </message>
    <message>
        <source>All of mg/L as ppm</source>
        <translation>Alle mg/L als ppm</translation>
    </message>
    <message>
        <source>Hardness in dKH, dGH</source>
        <translation>Härte in °dKH, °dGH</translation>
    </message>
    <message>
        <source>Hardness in meq/L, mmol/L</source>
        <translation>Härte in meq/L, mmol/L</translation>
    </message>
    <message>
        <source>Hardness in ppm CaCO₃</source>
        <translation>Härte in ppm CaCO₃</translation>
    </message>
    <message>
        <source>Temperature in °C</source>
        <translation>Temperatur in °C</translation>
    </message>
    <message>
        <source>Temperature in °F</source>
        <translation>Temperatur in °F</translation>
    </message>
    <message>
        <source>Volume in litres</source>
        <translation>Volumen in Litern</translation>
    </message>
    <message>
        <source>Volume in US gallons</source>
        <translation>Volumen in US-Gallonen</translation>
    </message>
    <message>
        <source>Length in cm</source>
        <translation>Länge in cm</translation>
    </message>
    <message>
        <source>Length in inches</source>
        <translation>Länge in Zoll</translation>
    </message>
    <message>
        <source>&amp;Units of this store</source>
        <translation>&amp;Einheiten dieser Datei</translation>
    </message>
    <message>
        <source>Units of this store</source>
        <translation>Einheiten dieser Datei</translation>
    </message>
    <message>
        <source>Language of the desktop</source>
        <translation>Sprache des Desktops</translation>
    </message>
    <message>
        <source>Close the panel beside the page first, so that nothing typed in it is lost or changes its meaning.</source>
        <translation>Schließ zuerst das Feld neben der Seite, damit nichts darin Getipptes verloren geht oder seine Bedeutung ändert.</translation>
    </message>
    <message>
        <source>charts as tables</source>
        <translation>Diagramme als Tabellen</translation>
    </message>
    <message>
        <source>the sheet explained in the guide</source>
        <translation>das Rechenblatt, im Leitfaden erklärt</translation>
    </message>
    <message>
        <source>in a blank: to the one the sheet waits for</source>
        <translation>in einem Feld: zu dem, auf das das Rechenblatt wartet</translation>
    </message>
    <message>
        <source>Ctrl+Shift+P</source>
        <translation>Strg+Umschalt+P</translation>
    </message>
    <message>
        <source>print on a printer</source>
        <translation>auf einem Drucker ausgeben</translation>
    </message>
    <message>
        <source>&amp;Doses of the tank...</source>
        <translation>&amp;Düngung des Beckens...</translation>
    </message>
    <message>
        <source>&amp;Journey and helper...</source>
        <translation>&amp;Reise und Helfer...</translation>
    </message>
    <message>
        <source>Due work as a &amp;calendar...</source>
        <translation>Fällige Arbeit als &amp;Kalender...</translation>
    </message>
    <message>
        <source>&amp;Motion: charts ease to their place</source>
        <translation>&amp;Bewegung: Diagramme gleiten an ihren Platz</translation>
    </message>
    <message>
        <source>Motion as the system &amp;asks</source>
        <translation>Bewegung &amp;nach Systemvorgabe</translation>
    </message>
    <message>
        <source>&amp;Remind me of overdue work</source>
        <translation>An &amp;überfällige Arbeit erinnern</translation>
    </message>
    <message>
        <source>Overdue work is told of while the program runs, at most once a day for each tank</source>
        <translation>Überfällige Arbeit wird gemeldet, solange das Programm läuft, höchstens einmal am Tag je Becken</translation>
    </message>
    <message>
        <source>Overdue work is no longer told of outside the window</source>
        <translation>Überfällige Arbeit wird nicht mehr außerhalb des Fensters gemeldet</translation>
    </message>
    <message>
        <source>No reminders from 21 to 8 o&apos;clock</source>
        <translation>Keine Erinnerungen von 21 bis 8 Uhr</translation>
    </message>
    <message>
        <source>No reminders from 19 to 10 o&apos;clock</source>
        <translation>Keine Erinnerungen von 19 bis 10 Uhr</translation>
    </message>
    <message>
        <source>Reminders at any hour</source>
        <translation>Erinnerungen zu jeder Stunde</translation>
    </message>
    <message>
        <source>a round sheet to write on, as a PDF file</source>
        <translation>ein Rundgangsblatt zum Ausfüllen, als PDF-Datei</translation>
    </message>
    <message>
        <source>Ctrl+J</source>
        <translation>Strg+J</translation>
    </message>
    <message>
        <source>start the timer of the cell&apos;s kit</source>
        <translation>die Zeitmessung für den Test der Zelle starten</translation>
    </message>
    <message>
        <source>the whole row as a PDF file</source>
        <translation>die ganze Reihe als PDF-Datei</translation>
    </message>
    <message>
        <source>&amp;Print this page...</source>
        <translation>Diese Seite &amp;drucken...</translation>
    </message>
    <message>
        <source>Print this page on a prin&amp;ter...</source>
        <translation>Diese Seite auf einem D&amp;rucker ausgeben...</translation>
    </message>
    <message>
        <source>Report of the whole &amp;row...</source>
        <translation>&amp;Bericht über die ganze Reihe...</translation>
    </message>
    <message>
        <source>Report of this tank&apos;s &amp;case...</source>
        <translation>Bericht über den &amp;Fall dieses Beckens...</translation>
    </message>
    <message>
        <source>R&amp;ound sheet to write on...</source>
        <translation>R&amp;undgangsblatt zum Ausfüllen...</translation>
    </message>
    <message>
        <source>row %1</source>
        <comment>file name, date</comment>
        <translation>Reihe %1</translation>
    </message>
    <message>
        <source>The record is as it was.</source>
        <translation>Das Journal ist wie zuvor.</translation>
    </message>
    <message>
        <source>Ent&amp;ries of the whole row...</source>
        <translation>E&amp;inträge der ganzen Reihe...</translation>
    </message>
    <message>
        <source>&amp;Photographs of the tank...</source>
        <translation>&amp;Fotos des Beckens...</translation>
    </message>
    <message>
        <source>S&amp;upplies...</source>
        <translation>&amp;Vorräte...</translation>
    </message>
    <message>
        <source>Task te&amp;mplates...</source>
        <translation>Auf&amp;gabenvorlagen...</translation>
    </message>
    <message>
        <source>&amp;Filter tanks and parameters</source>
        <translation>Becken und Parameter &amp;filtern</translation>
    </message>
    <message>
        <source>&amp;Keep this view</source>
        <translation>Diese Ansicht &amp;behalten</translation>
    </message>
    <message>
        <source>V</source>
        <translation>V</translation>
    </message>
    <message>
        <source>views kept under a name</source>
        <translation>unter einem Namen behaltene Ansichten</translation>
    </message>
    <message>
        <source>Ctrl+S</source>
        <translation>Strg+S</translation>
    </message>
    <message>
        <source>keep this view</source>
        <translation>diese Ansicht behalten</translation>
    </message>
    <message>
        <source>filter tanks and parameters</source>
        <translation>Becken und Parameter filtern</translation>
    </message>
    <message>
        <source>Views</source>
        <translation>Ansichten</translation>
    </message>
    <message>
        <source>Start the timer of the kit</source>
        <translation>Uhr des Tests starten</translation>
    </message>
    <message>
        <source>Reduced motion</source>
        <translation>Bewegung verringern</translation>
    </message>
</context>
<context>
    <name>littoral::ui::MarkLegend</name>
    <message>
        <source>Parameters on show: %1</source>
        <translation>Gezeigte Parameter: %1</translation>
    </message>
    <message>
        <source>+%1</source>
        <comment>further entries of the legend</comment>
        <translation>+%1</translation>
    </message>
</context>
<context>
    <name>littoral::ui::MomentEdit</name>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>2026-11-25 07:30</source>
        <translation>2026-11-25 07:30</translation>
    </message>
    <message>
        <source>A date and time such as 2026-11-25 07:30, a date such as 25 Nov, or a time of today; up and down move by a day, with Shift by an hour</source>
        <translation>Datum und Uhrzeit wie 2026-11-25 07:30, ein Datum wie 25 Nov, oder eine Uhrzeit von heute; auf und ab um einen Tag, mit Umschalt um eine Stunde</translation>
    </message>
</context>
<context>
    <name>littoral::ui::NoticeStrip</name>
    <message>
        <source>Copy details</source>
        <translation>Einzelheiten kopieren</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Ausblenden</translation>
    </message>
    <message>
        <source>Notice</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Copy the details of this notice</source>
        <translation>Die Einzelheiten dieses Hinweises kopieren</translation>
    </message>
    <message>
        <source>Dismiss this notice</source>
        <translation>Diesen Hinweis ausblenden</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1
%2</source>
        <translation>%1
%2</translation>
    </message>
    <message>
        <source>%1 more; copy the details to read all.</source>
        <translation>%1 weitere; kopiere die Einzelheiten, um alles zu lesen.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::OutlineView</name>
    <message>
        <source>Outline of the tank</source>
        <translation>Umriss des Beckens</translation>
    </message>
    <message>
        <source>No dimensions yet</source>
        <translation>Noch keine Maße</translation>
    </message>
    <message>
        <source>The outline follows the glass you type</source>
        <translation>Der Umriss folgt dem Glas, das du eintippst</translation>
    </message>
    <message>
        <source>%1 long, %2 high</source>
        <translation>%1 lang, %2 hoch</translation>
    </message>
</context>
<context>
    <name>littoral::ui::OwnNote</name>
    <message>
        <source>Your own note</source>
        <translation>Deine eigene Notiz</translation>
    </message>
    <message>
        <source>What you have seen of it in your own tanks</source>
        <translation>Was du in deinen eigenen Becken davon gesehen hast</translation>
    </message>
    <message>
        <source>Your own note on %1</source>
        <translation>Deine eigene Notiz zu %1</translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation>Notiz zu %1</translation>
    </message>
    <message>
        <source>What you typed is still in the field.</source>
        <translation>Was du getippt hast, steht noch im Feld.</translation>
    </message>
    <message>
        <source>Note on %1 saved</source>
        <translation>Notiz zu %1 gespeichert</translation>
    </message>
    <message>
        <source>Saved in this store as you leave the field.</source>
        <translation>In dieser Datei gespeichert, sobald du das Feld verlässt.</translation>
    </message>
    <message>
        <source>A note needs a store that is open for writing.</source>
        <translation>Eine Notiz braucht eine zum Schreiben offene Datei.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::PageTab</name>
    <message>
        <source>Page %1</source>
        <translation>Seite %1</translation>
    </message>
    <message>
        <source>%1 (Ctrl+%2)</source>
        <translation>%1 (Strg+%2)</translation>
    </message>
</context>
<context>
    <name>littoral::ui::PanelHost</name>
    <message>
        <source>Panel beside the page</source>
        <translation>Feld neben der Seite</translation>
    </message>
    <message>
        <source>%1: what you typed is kept and is there when the panel is opened again</source>
        <translation>%1: Was du getippt hast, bleibt und ist beim nächsten Öffnen wieder da</translation>
    </message>
</context>
<context>
    <name>littoral::ui::ParameterHeader</name>
    <message>
        <source>Parameters</source>
        <translation>Parameter</translation>
    </message>
</context>
<context>
    <name>littoral::ui::PhotoButton</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Add a photo: choose a file or drop one here</source>
        <translation>Ein Foto hinzufügen: eine Datei wählen oder hier ablegen</translation>
    </message>
    <message>
        <source>Choose a picture or drop one here; a copy of at most 1600 pixels is kept</source>
        <translation>Wähle ein Bild oder leg es hier ab; bewahrt wird eine Kopie mit höchstens 1600 Pixeln</translation>
    </message>
</context>
<context>
    <name>littoral::ui::PhotoView</name>
    <message>
        <source>Photograph; left and right step</source>
        <translation>Foto; links und rechts blättern</translation>
    </message>
    <message>
        <source>; beside it </source>
        <translation>; daneben </translation>
    </message>
    <message>
        <source>This picture could not be read from the store.</source>
        <translation>Dieses Bild ließ sich nicht aus der Datei lesen.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::PhotosModel</name>
    <message>
        <source>%1 · %2 · %3</source>
        <comment>time, age, layout</comment>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>time, age</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>caption, note</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::PhotosPanel</name>
    <message>
        <source>Photographs</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Photographs by date; left and right step, C compares, Delete removes</source>
        <translation>Fotos nach Datum; links und rechts blättern, C vergleicht, Entf entfernt</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Tank whose photographs are on show</source>
        <translation>Becken, dessen Fotos gezeigt werden</translation>
    </message>
    <message>
        <source>Add a photo</source>
        <translation>Ein Foto hinzufügen</translation>
    </message>
    <message>
        <source>Taken at</source>
        <translation>Aufgenommen am</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Photographs of %1</source>
        <translation>Fotos von %1</translation>
    </message>
    <message numerus="yes">
        <source>%n photograph(s)</source>
        <translation>
            <numerusform>%n Foto</numerusform>
            <numerusform>%n Fotos</numerusform>
        </translation>
    </message>
    <message>
        <source>No photograph of this tank yet. Add one here, or on Rounds beside what was seen.</source>
        <translation>Noch kein Foto dieses Beckens. Hier eines hinzufügen, oder im Rundgang neben dem, was zu sehen war.</translation>
    </message>
    <message>
        <source>One only</source>
        <translation>Nur eines</translation>
    </message>
    <message>
        <source>Show one photograph only</source>
        <translation>Nur ein Foto zeigen</translation>
    </message>
    <message>
        <source>Put this photograph beside another one</source>
        <translation>Dieses Foto neben ein anderes stellen</translation>
    </message>
    <message>
        <source>Photo kept</source>
        <translation>Foto gespeichert</translation>
    </message>
    <message>
        <source>That is after now, and the photograph was taken.</source>
        <translation>Das liegt in der Zukunft, das Foto ist aber schon aufgenommen.</translation>
    </message>
    <message>
        <source>The time is not understood. Type it as 2026-11-25 07:30.</source>
        <translation>Die Zeit ist nicht verständlich. Eingabe als 2026-11-25 07:30.</translation>
    </message>
    <message>
        <source>Photograph saved</source>
        <translation>Foto gespeichert</translation>
    </message>
    <message>
        <source>remove photograph of %1, %2</source>
        <translation>Foto von %1, %2 entfernen</translation>
    </message>
    <message>
        <source>Removed: photograph of %1</source>
        <translation>Entfernt: Foto von %1</translation>
    </message>
</context>
<context>
    <name>littoral::ui::PlainTableModel</name>
    <message>
        <source>%1: %2</source>
        <comment>column, value</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
</context>
<context>
    <name>littoral::ui::PlanScatterView</name>
    <message>
        <source>Plans: litres against exposure</source>
        <translation>Pläne: Liter gegen Einwirkung</translation>
    </message>
</context>
<context>
    <name>littoral::ui::PlansCard</name>
    <message>
        <source>Water-change plans</source>
        <translation>Wasserwechselpläne</translation>
    </message>
    <message>
        <source>Adopt plan</source>
        <translation>Plan übernehmen</translation>
    </message>
    <message>
        <source>Keep plan A</source>
        <translation>Plan A behalten</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Finden</translation>
    </message>
    <message>
        <source>Plans</source>
        <translation>Pläne</translation>
    </message>
    <message>
        <source>Share of the water at each change, percent</source>
        <translation>Anteil des Wassers bei jedem Wechsel, Prozent</translation>
    </message>
    <message>
        <source>How often</source>
        <translation>Wie oft</translation>
    </message>
    <message>
        <source>not eased</source>
        <translation>nicht gelockert</translation>
    </message>
    <message>
        <source>half after a week</source>
        <translation>halb nach einer Woche</translation>
    </message>
    <message>
        <source>half after two weeks</source>
        <translation>halb nach zwei Wochen</translation>
    </message>
    <message>
        <source>When the changes are halved</source>
        <translation>Wann die Wechsel halbiert werden</translation>
    </message>
    <message>
        <source>Water used for the changes</source>
        <translation>Wasser für die Wechsel</translation>
    </message>
    <message>
        <source>Each change</source>
        <translation>Jeder Wechsel</translation>
    </message>
    <message>
        <source>Highest odds of passing it</source>
        <translation>Höchste Chance, es zu überschreiten</translation>
    </message>
    <message>
        <source>Least water with nitrite above</source>
        <translation>Wenigstes Wasser mit Nitrit über</translation>
    </message>
    <message>
        <source>under</source>
        <translation>unter</translation>
    </message>
    <message>
        <source>Find the plan with the least water</source>
        <translation>Den Plan mit dem wenigsten Wasser finden</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Litres</source>
        <translation>Liter</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>Readings open it
8 in 10</source>
        <translation>Messwerte öffnen sie
8 von 10</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>letter and name of a plan</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>changes: %1</source>
        <translation>Wechsel: %1</translation>
    </message>
    <message>
        <source>bands follow at once</source>
        <translation>Bänder folgen sofort</translation>
    </message>
    <message>
        <source>quick; the full answer follows</source>
        <translation>schnell; die volle Antwort folgt</translation>
    </message>
    <message>
        <source>looked at, not adopted</source>
        <translation>angesehen, nicht übernommen</translation>
    </message>
    <message>
        <source>%1 compared</source>
        <translation>%1 verglichen</translation>
    </message>
    <message>
        <source>comparing</source>
        <translation>vergleicht</translation>
    </message>
    <message>
        <source>Water-change plans until: %1</source>
        <translation>Wasserwechselpläne bis: %1</translation>
    </message>
    <message>
        <source>Adopt plan %1</source>
        <translation>Plan %1 übernehmen</translation>
    </message>
    <message>
        <source>Adopt</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Adopt: %1</source>
        <translation>Übernehmen: %1</translation>
    </message>
    <message>
        <source>Adopt: choose a plan other than A first</source>
        <translation>Übernehmen: wähle zuerst einen anderen Plan als A</translation>
    </message>
    <message>
        <source>The store is open for reading only: a plan can be looked at, not adopted.</source>
        <translation>Die Datei ist nur zum Lesen offen: Ein Plan lässt sich ansehen, nicht übernehmen.</translation>
    </message>
    <message>
        <source>Plan A is what is planned now. Choose another row, a ring, or move the slider.</source>
        <translation>Plan A ist das jetzt Geplante. Wähle eine andere Zeile, einen Ring, oder bewege den Regler.</translation>
    </message>
    <message>
        <source>What goes and what comes</source>
        <translation>Was entfällt und was kommt</translation>
    </message>
    <message>
        <source>What goes and what comes when the plan is adopted</source>
        <translation>Was entfällt und was kommt, wenn der Plan übernommen wird</translation>
    </message>
    <message>
        <source>Nitrite that is not to be passed, %1</source>
        <translation>Nitrit, das nicht überschritten werden soll, %1</translation>
    </message>
</context>
<context>
    <name>littoral::ui::PlantsModel</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: short of it</source>
        <translation>%1: zu wenig davon</translation>
    </message>
    <message>
        <source>no cover noted</source>
        <translation>keine Deckung notiert</translation>
    </message>
    <message>
        <source>cover %1 on %2</source>
        <translation>Deckung %1 am %2</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Arten</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>CO₂</source>
        <translation>CO₂</translation>
    </message>
    <message>
        <source>Cover, %</source>
        <translation>Deckung, %</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Zustand</translation>
    </message>
</context>
<context>
    <name>littoral::ui::PlantsTable</name>
    <message>
        <source>Plants: need, cover and condition</source>
        <translation>Pflanzen: Bedarf, Deckung und Zustand</translation>
    </message>
</context>
<context>
    <name>littoral::ui::Rail</name>
    <message>
        <source>Row of tanks</source>
        <translation>Reihe der Becken</translation>
    </message>
    <message>
        <source>Tanks; Space shows or hides a tank in Lanes, Enter opens it</source>
        <translation>Becken; Leertaste zeigt oder verbirgt ein Becken in den Bahnen, Enter öffnet es</translation>
    </message>
    <message>
        <source>Add a tank</source>
        <translation>Ein Becken hinzufügen</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Add a tank...</source>
        <translation>Ein Becken hinzufügen …</translation>
    </message>
    <message>
        <source>Today, %1</source>
        <translation>Heute, %1</translation>
    </message>
    <message>
        <source>%1 due</source>
        <translation>%1 fällig</translation>
    </message>
    <message>
        <source>%1 over</source>
        <translation>%1 über</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation>%1 überfällig</translation>
    </message>
    <message>
        <source>%1 snoozed</source>
        <translation>%1 verschoben</translation>
    </message>
</context>
<context>
    <name>littoral::ui::ReadingEditor</name>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>0.25, &lt;0.05 or 5-10</source>
        <translation>0.25, &lt;0.05 oder 5-10</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Read at</source>
        <translation>Gemessen um</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The time is not understood. Type it as 2026-11-25 07:30.</source>
        <translation>Die Zeit ist nicht verständlich. Tippe sie als 2026-11-25 07:30.</translation>
    </message>
    <message>
        <source>%1: %2 saved</source>
        <translation>%1: %2 gespeichert</translation>
    </message>
</context>
<context>
    <name>littoral::ui::ReadingPane</name>
    <message>
        <source>Article</source>
        <translation>Artikel</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::ReadingSparkline</name>
    <message>
        <source>Last three weeks of this parameter</source>
        <translation>Die letzten drei Wochen dieses Parameters</translation>
    </message>
    <message>
        <source>No reading in the last three weeks</source>
        <translation>Kein Messwert in den letzten drei Wochen</translation>
    </message>
    <message>
        <source>Readings: %1, newest %2</source>
        <translation>Messwerte: %1, neuester %2</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
</context>
<context>
    <name>littoral::ui::RecordCard</name>
    <message>
        <source>Record</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>All kinds</source>
        <translation>Alle Arten</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Getan</translation>
    </message>
    <message>
        <source>Kinds of lines shown</source>
        <translation>Gezeigte Arten von Zeilen</translation>
    </message>
    <message>
        <source>Newest first</source>
        <translation>Neueste zuerst</translation>
    </message>
    <message>
        <source>Oldest first</source>
        <translation>Älteste zuerst</translation>
    </message>
    <message>
        <source>Order of the lines</source>
        <translation>Reihenfolge der Zeilen</translation>
    </message>
    <message>
        <source>Find in the record</source>
        <translation>Im Journal finden</translation>
    </message>
    <message>
        <source>Show only lines with these words</source>
        <translation>Nur Zeilen mit diesen Wörtern zeigen</translation>
    </message>
    <message>
        <source>Record of the layout; Enter opens a line, Delete removes it</source>
        <translation>Journal des Layouts; Enter öffnet eine Zeile, Entf entfernt sie</translation>
    </message>
    <message>
        <source>Readings and entries of this layout stand here once there are some. New entry (Ctrl+E) writes the first.</source>
        <translation>Messwerte und Einträge dieses Layouts stehen hier, sobald es welche gibt. Neuer Eintrag (Strg+E) schreibt den ersten.</translation>
    </message>
    <message>
        <source>No line matches.</source>
        <translation>Keine Zeile passt.</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>%1 Zeilen</translation>
    </message>
    <message>
        <source>%1 of %2 lines</source>
        <translation>%1 von %2 Zeilen</translation>
    </message>
    <message>
        <source>Bar and tint: in the window looked back on. %1.</source>
        <translation>Balken und Tönung: im betrachteten Zeitfenster. %1.</translation>
    </message>
    <message>
        <source>remove: %1</source>
        <translation>entfernen: %1</translation>
    </message>
    <message>
        <source>The record is as it was.</source>
        <translation>Das Journal ist wie zuvor.</translation>
    </message>
    <message>
        <source>Removed: %1. Ctrl+Z brings it back.</source>
        <translation>Entfernt: %1. Strg+Z bringt es zurück.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::RegimensEditor</name>
    <message>
        <source>Doses</source>
        <translation>Düngung</translation>
    </message>
    <message>
        <source>What this layout is dosed with</source>
        <translation>Womit diese Einrichtung gedüngt wird</translation>
    </message>
    <message>
        <source>Keep supplies away from children and food. Never mix concentrates; dose phosphate and iron on different days. With shrimp, add up the copper on the labels.</source>
        <translation>Vorräte fern von Kindern und Lebensmitteln aufbewahren. Konzentrate nie mischen; Phosphat und Eisen an verschiedenen Tagen düngen. Bei Garnelen das Kupfer auf den Etiketten zusammenzählen.</translation>
    </message>
    <message>
        <source>Save dose</source>
        <translation>Dosis speichern</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>New dose</source>
        <translation>Neue Dosis</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>What is dosed</source>
        <translation>Was gedüngt wird</translation>
    </message>
    <message>
        <source>potassium nitrate</source>
        <translation>Kaliumnitrat</translation>
    </message>
    <message>
        <source>A salt, weighed dry</source>
        <translation>Ein Salz, trocken gewogen</translation>
    </message>
    <message>
        <source>A stock solution of a salt</source>
        <translation>Eine Stammlösung eines Salzes</translation>
    </message>
    <message>
        <source>A bought fertiliser</source>
        <translation>Ein gekaufter Dünger</translation>
    </message>
    <message>
        <source>As</source>
        <translation>Als</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Salz</translation>
    </message>
    <message>
        <source>Salt in the stock, g</source>
        <translation>Salz in der Stammlösung, g</translation>
    </message>
    <message>
        <source>Made up to, mL</source>
        <translation>Aufgefüllt auf, mL</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>Nitrate on the label, mg NO₃ in a mL</source>
        <translation>Nitrat laut Etikett, mg NO₃ je mL</translation>
    </message>
    <message>
        <source>Phosphate, mg PO₄ in a mL</source>
        <translation>Phosphat, mg PO₄ je mL</translation>
    </message>
    <message>
        <source>Potassium, mg K in a mL</source>
        <translation>Kalium, mg K je mL</translation>
    </message>
    <message>
        <source>Magnesium, mg Mg in a mL</source>
        <translation>Magnesium, mg Mg je mL</translation>
    </message>
    <message>
        <source>Iron, mg Fe in a mL</source>
        <translation>Eisen, mg Fe je mL</translation>
    </message>
    <message>
        <source>How much, and when</source>
        <translation>Wie viel, und wann</translation>
    </message>
    <message>
        <source>One full dose, g of salt or mL</source>
        <translation>Eine volle Dosis, g Salz oder mL</translation>
    </message>
    <message>
        <source>Days between doses</source>
        <translation>Tage zwischen den Dosen</translation>
    </message>
    <message>
        <source>leave empty for weekdays</source>
        <translation>für Wochentage leer lassen</translation>
    </message>
    <message>
        <source>Dose on %1</source>
        <translation>Dosis am %1</translation>
    </message>
    <message>
        <source>Or on these weekdays</source>
        <translation>Oder an diesen Wochentagen</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>Less in the first four weeks on ammonia-rich soil</source>
        <translation>Weniger in den ersten vier Wochen auf ammoniumreichem Nährboden</translation>
    </message>
    <message>
        <source>Common practice: no nitrogen or phosphorus and a quarter of the rest in weeks 1 and 2, a quarter in week 3, half in week 4; all of it once nitrate reads below 5 mg/L</source>
        <translation>Gängige Praxis: kein Stickstoff oder Phosphor und ein Viertel vom Rest in Woche 1 und 2, ein Viertel in Woche 3, die Hälfte in Woche 4; alles, sobald Nitrat unter 5 mg/L liegt</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Doses of %1</source>
        <translation>Düngung von %1</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a whole number of days from 1 to 365.</source>
        <translation>%1: „%2“ ist keine ganze Zahl von Tagen von 1 bis 365.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a date. Type it as 2026-11-25.</source>
        <translation>%1: „%2“ ist kein Datum. Schreibweise: 2026-11-25.</translation>
    </message>
    <message>
        <source>%1. What it adds is not known without the litres of the tank.</source>
        <translation>%1. Was sie zuführt, ist ohne die Liter des Beckens nicht bekannt.</translation>
    </message>
    <message>
        <source>dose %1</source>
        <translation>Dosis %1</translation>
    </message>
    <message>
        <source>Dose %1 saved; it falls due by its days</source>
        <translation>Dosis %1 gespeichert; fällig wird sie nach ihren Tagen</translation>
    </message>
    <message>
        <source>remove dose %1</source>
        <translation>Dosis %1 entfernen</translation>
    </message>
    <message>
        <source>Dose %1 removed; doses already entered stay, and undo brings it back</source>
        <translation>Dosis %1 entfernt; schon eingetragene Dosen bleiben, und Rückgängig bringt sie zurück</translation>
    </message>
</context>
<context>
    <name>littoral::ui::Reminder</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2, and %n more</source>
        <translation>
            <numerusform>%1: %2 und %n weitere</numerusform>
            <numerusform>%1: %2 und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>further tanks: %1</source>
        <translation>weitere Becken: %1</translation>
    </message>
    <message>
        <source>Overdue work</source>
        <translation>Überfällige Arbeit</translation>
    </message>
    <message numerus="yes">
        <source>Overdue work in %n tanks</source>
        <translation>
            <numerusform>Überfällige Arbeit in %n Becken</numerusform>
            <numerusform>Überfällige Arbeit in %n Becken</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::ResetCard</name>
    <message>
        <source>Carry on, or start afresh: both forecast</source>
        <translation>Weiterführen oder neu anfangen: Vorhersage für beides</translation>
    </message>
    <message>
        <source>From today on, by the same model. The fan before the other is the fresh start&apos;s; the paler one carries on as planned.</source>
        <translation>Ab heute, mit demselben Modell. Der vordere Fächer ist der Neuanfang; der blassere führt weiter wie geplant.</translation>
    </message>
    <message>
        <source>How the new layout would begin</source>
        <translation>Wie die neue Einrichtung beginnen würde</translation>
    </message>
    <message>
        <source>A fresh start with</source>
        <translation>Neuanfang mit</translation>
    </message>
    <message>
        <source>Total ammonia and nitrite on both ways</source>
        <translation>Gesamtammonium und Nitrit auf beiden Wegen</translation>
    </message>
    <message>
        <source>Gates on both ways: when readings clear, and the changes until then</source>
        <translation>Freigaben auf beiden Wegen: wann die Messwerte klar sind, und die Wechsel bis dahin</translation>
    </message>
    <message>
        <source>Readings
clear for</source>
        <translation>Messwerte
klar für</translation>
    </message>
    <message>
        <source>Carry on</source>
        <translation>Weiterführen</translation>
    </message>
    <message>
        <source>changes
until then</source>
        <translation>Wechsel
bis dahin</translation>
    </message>
    <message>
        <source>Start afresh</source>
        <translation>Neu anfangen</translation>
    </message>
    <message>
        <source>Both ways are being forecast.</source>
        <translation>Für beide Wege wird die Vorhersage gerechnet.</translation>
    </message>
    <message>
        <source>Being forecast again; what is shown is the one before.</source>
        <translation>Die Vorhersage wird neu gerechnet; gezeigt wird die vorige.</translation>
    </message>
    <message>
        <source>%1: carrying on %2, changes until then %3; starting afresh %4, changes until then %5</source>
        <translation>%1: weiterführen %2, Wechsel bis dahin %3; neu anfangen %4, Wechsel bis dahin %5</translation>
    </message>
</context>
<context>
    <name>littoral::ui::RoundTimers</name>
    <message>
        <source>%1, %2</source>
        <comment>parameter, tank</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Ready to read: %1</source>
        <translation>Bereit zum Ablesen: %1</translation>
    </message>
    <message>
        <source>read it now</source>
        <translation>jetzt ablesen</translation>
    </message>
    <message>
        <source>shake %1</source>
        <translation>schütteln %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what is timed, how it stands</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%1, and %n more</source>
        <translation>
            <numerusform>%1 und %n weiterer</numerusform>
            <numerusform>%1 und %n weitere</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::RoundsDelegate</name>
    <message>
        <source>%1 · %2</source>
        <comment>last value, how long ago</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>not a reading</source>
        <translation>kein Messwert</translation>
    </message>
    <message>
        <source>look again</source>
        <translation>noch einmal ansehen</translation>
    </message>
</context>
<context>
    <name>littoral::ui::RoundsGrid</name>
    <message>
        <source>Readings of this round</source>
        <translation>Messwerte dieses Rundgangs</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Becken</translation>
    </message>
</context>
<context>
    <name>littoral::ui::RoundsModel</name>
    <message>
        <source>take out %1 %2, %3</source>
        <translation>%1 %2 herausnehmen, %3</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>litres, age</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>not read before</source>
        <translation>noch nie gemessen</translation>
    </message>
    <message>
        <source>last %1, %2 ago</source>
        <translation>zuletzt %1, vor %2</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a reading yet</source>
        <translation>%1: „%2“ ist noch kein Messwert</translation>
    </message>
    <message>
        <source>%1: entered %2 %3, look again, %4</source>
        <translation>%1: eingetragen %2 %3, noch einmal ansehen, %4</translation>
    </message>
    <message>
        <source>%1: entered %2 %3, %4</source>
        <translation>%1: eingetragen %2 %3, %4</translation>
    </message>
    <message>
        <source>%1: due, %2</source>
        <translation>%1: fällig, %2</translation>
    </message>
    <message>
        <source>%1: not due, %2</source>
        <translation>%1: nicht fällig, %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>litres and age, time on the sheet</comment>
        <translation>%1 · %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::RoundsPage</name>
    <message>
        <source>No tank is running yet. Once one is flooded, its readings are typed here, one row a tank.</source>
        <translation>Noch läuft kein Becken. Sobald eines geflutet ist, werden seine Messwerte hier eingetippt, eine Zeile je Becken.</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Bar of the Rounds page</source>
        <translation>Leiste der Seite Rundgang</translation>
    </message>
    <message>
        <source>Parameters shown</source>
        <translation>Gezeigte Parameter</translation>
    </message>
    <message>
        <source>Usual and due</source>
        <translation>Übliche und fällige</translation>
    </message>
    <message>
        <source>All parameters</source>
        <translation>Alle Parameter</translation>
    </message>
    <message>
        <source>Along the row</source>
        <translation>Die Reihe entlang</translation>
    </message>
    <message>
        <source>By kit</source>
        <translation>Nach Test</translation>
    </message>
    <message>
        <source>Order of the due cells</source>
        <translation>Reihenfolge der fälligen Zellen</translation>
    </message>
    <message>
        <source>Along the row: one tank after another. By kit: one parameter through all tanks, so a bottle is opened once.</source>
        <translation>Die Reihe entlang: ein Becken nach dem anderen. Nach Test: ein Parameter durch alle Becken, so wird eine Flasche nur einmal geöffnet.</translation>
    </message>
    <message>
        <source>Read at: time of the whole round</source>
        <translation>Gemessen um: Zeit des ganzen Rundgangs</translation>
    </message>
    <message>
        <source>Progress of the round</source>
        <translation>Fortschritt des Rundgangs</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>Read at</source>
        <translation>Gemessen um</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>next due cell</source>
        <translation>nächste fällige Zelle</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>next column</source>
        <translation>nächste Spalte</translation>
    </message>
    <message>
        <source>↑ ↓</source>
        <translation>↑ ↓</translation>
    </message>
    <message>
        <source>kit step</source>
        <translation>Teststufe</translation>
    </message>
    <message>
        <source>&lt;</source>
        <translation>&lt;</translation>
    </message>
    <message>
        <source>below the lowest step</source>
        <translation>unter der niedrigsten Stufe</translation>
    </message>
    <message>
        <source>/</source>
        <translation>/</translation>
    </message>
    <message>
        <source>between two steps</source>
        <translation>zwischen zwei Stufen</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>tick a task</source>
        <translation>eine Aufgabe abhaken</translation>
    </message>
    <message>
        <source>Ctrl Z</source>
        <translation>Strg Z</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>rückgängig</translation>
    </message>
    <message>
        <source>Every cell is saved as you leave it</source>
        <translation>Jede Zelle wird gespeichert, sobald du sie verlässt</translation>
    </message>
    <message>
        <source>Finish round</source>
        <translation>Rundgang abschließen</translation>
    </message>
    <message>
        <source>Ctrl Enter</source>
        <translation>Strg Enter</translation>
    </message>
    <message>
        <source>Finish the round and go to Lanes</source>
        <translation>Den Rundgang abschließen und zu den Bahnen gehen</translation>
    </message>
    <message>
        <source>Every due cell of this round is filled</source>
        <translation>Jede fällige Zelle dieses Rundgangs ist gefüllt</translation>
    </message>
    <message>
        <source>What you typed is still in its cell; earlier cells are saved.</source>
        <translation>Was du getippt hast, steht noch in seiner Zelle; frühere Zellen sind gespeichert.</translation>
    </message>
    <message>
        <source>The task stays open.</source>
        <translation>Die Aufgabe bleibt offen.</translation>
    </message>
    <message>
        <source>What you typed is still in the fields.</source>
        <translation>Was du getippt hast, steht noch in den Feldern.</translation>
    </message>
    <message>
        <source>Round of %1</source>
        <translation>Rundgang vom %1</translation>
    </message>
    <message>
        <source>%1 of %2 readings, %3 of %4 tasks</source>
        <translation>%1 von %2 Messwerten, %3 von %4 Aufgaben</translation>
    </message>
    <message>
        <source>Not understood; now is taken</source>
        <translation>Nicht verständlich; es gilt jetzt</translation>
    </message>
    <message>
        <source>Round finished: %1</source>
        <translation>Rundgang abgeschlossen: %1</translation>
    </message>
    <message>
        <source>round sheet %1</source>
        <comment>file name</comment>
        <translation>Rundgangblatt %1</translation>
    </message>
    <message>
        <source>The round is as it was.</source>
        <translation>Der Rundgang ist wie zuvor.</translation>
    </message>
    <message>
        <source>Times on the &amp;sheet</source>
        <translation>Zeiten auf dem &amp;Blatt</translation>
    </message>
    <message>
        <source>Times on the sheet: type in a round that was walked earlier</source>
        <translation>Zeiten auf dem Blatt: einen früheren Rundgang eintippen</translation>
    </message>
    <message>
        <source>Type in a printed sheet afterwards: the day of the round, and for each tank the time that stands on it</source>
        <translation>Ein gedrucktes Blatt nachträglich eintippen: den Tag des Rundgangs und für jedes Becken die Zeit, die darauf steht</translation>
    </message>
    <message>
        <source>Day of the round on the sheet</source>
        <translation>Tag des Rundgangs auf dem Blatt</translation>
    </message>
    <message>
        <source>Walked on</source>
        <translation>Rundgang am</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a day on which a round was walked.</source>
        <translation>„%1“ ist kein Tag, an dem ein Rundgang stattfand.</translation>
    </message>
    <message>
        <source>Type it as 2026-11-24, today at the latest.</source>
        <translation>Schreibweise: 2026-11-24, spätestens heute.</translation>
    </message>
    <message>
        <source>The day of the sheet is as it was.</source>
        <translation>Der Tag des Blatts ist wie zuvor.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a time at which this tank was read.</source>
        <translation>„%1“ ist keine Zeit, zu der dieses Becken gemessen wurde.</translation>
    </message>
    <message>
        <source>Type it as 7:35, not later than now.</source>
        <translation>Schreibweise: 7:35, nicht später als jetzt.</translation>
    </message>
    <message>
        <source>The time of the tank is as it was.</source>
        <translation>Die Zeit des Beckens ist wie zuvor.</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Time for %1</source>
        <translation>Zeit für %1</translation>
    </message>
    <message>
        <source>This kit has no waiting time. Test kits (menu) is where it is set.</source>
        <translation>Dieser Test hat keine Wartezeit. Sie wird unter Testsets (Menü) eingestellt.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::RowPlanCard</name>
    <message>
        <source>%1 mL of conditioner</source>
        <translation>%1 mL Aufbereiter</translation>
    </message>
    <message>
        <source>%1 demineralised</source>
        <translation>%1 entsalzt</translation>
    </message>
    <message>
        <source>%1 to treat</source>
        <translation>%1 aufzubereiten</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Large changes collide; %1 has none</source>
        <translation>Große Wechsel treffen zusammen; %1 hat keinen</translation>
    </message>
    <message>
        <source>Large changes collide</source>
        <translation>Große Wechsel treffen zusammen</translation>
    </message>
    <message>
        <source>The coming two weeks</source>
        <translation>Die kommenden zwei Wochen</translation>
    </message>
    <message>
        <source>Water for the whole row, as it is due or planned</source>
        <translation>Wasser für die ganze Reihe, wie es fällig oder geplant ist</translation>
    </message>
    <message>
        <source>Conditioner, from its label</source>
        <translation>Aufbereiter, laut Etikett</translation>
    </message>
    <message>
        <source>Conditioner, mL for 100 L, from its label</source>
        <translation>Aufbereiter, mL auf 100 L, laut Etikett</translation>
    </message>
    <message>
        <source>mL for 100 L</source>
        <translation>mL auf 100 L</translation>
    </message>
    <message>
        <source>Water day by day</source>
        <translation>Wasser Tag für Tag</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Tanks</source>
        <translation>Becken</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no amount from 0 to 1000 mL. Type the figure of the label, such as 5.</source>
        <translation>„%1“ ist keine Menge von 0 bis 1000 mL. Tippe die Zahl vom Etikett, etwa 5.</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>No water changes are due in these days.</source>
        <translation>In diesen Tagen ist kein Wasserwechsel fällig.</translation>
    </message>
    <message>
        <source>%1 has no measures: its litres are missing from the sums.</source>
        <translation>%1 hat keine Maße: Seine Liter fehlen in den Summen.</translation>
    </message>
    <message>
        <source>What is overdue counts for today. Large: 40 % of the tank or 60 L and more, a measure of work, not a limit for animals.</source>
        <translation>Überfälliges zählt für heute. Groß: 40 % des Beckens oder 60 L und mehr, ein Maß der Arbeit, keine Grenze für Tiere.</translation>
    </message>
    <message numerus="yes">
        <source>Large changes collide on %n day(s).</source>
        <translation>
            <numerusform>Große Wechsel treffen an %n Tag zusammen.</numerusform>
            <numerusform>Große Wechsel treffen an %n Tagen zusammen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>The parts of &quot;%1&quot; are not stated: all of it is counted as water to treat. Name its two waters and their share.</source>
        <translation>Die Teile von „%1“ sind nicht angegeben: Alles zählt als aufzubereitendes Wasser. Bitte die zwei Wässer und ihren Anteil nennen.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::SamplePreview</name>
    <message>
        <source>Impression of the sample row</source>
        <translation>Eindruck der Beispielreihe</translation>
    </message>
</context>
<context>
    <name>littoral::ui::SeenRow</name>
    <message>
        <source>Severity</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>Note it</source>
        <translation>Notieren</translation>
    </message>
    <message>
        <source>what was seen</source>
        <translation>was gesehen wurde</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Was gesehen wurde</translation>
    </message>
    <message>
        <source>front left</source>
        <translation>vorn links</translation>
    </message>
    <message>
        <source>front right</source>
        <translation>vorn rechts</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>back left</source>
        <translation>hinten links</translation>
    </message>
    <message>
        <source>back right</source>
        <translation>hinten rechts</translation>
    </message>
    <message>
        <source>on the glass</source>
        <translation>auf dem Glas</translation>
    </message>
    <message>
        <source>on wood</source>
        <translation>auf Holz</translation>
    </message>
    <message>
        <source>everywhere</source>
        <translation>überall</translation>
    </message>
    <message>
        <source>where</source>
        <translation>wo</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>a few words</source>
        <translation>ein paar Worte</translation>
    </message>
    <message>
        <source>Note on what was seen</source>
        <translation>Notiz zum Gesehenen</translation>
    </message>
    <message>
        <source>Note what was seen</source>
        <translation>Das Gesehene notieren</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>F6 moves here</source>
        <translation>F6 führt hierher</translation>
    </message>
    <message>
        <source>severity %1: %2</source>
        <translation>Schwere %1: %2</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Seen on %1</source>
        <translation>Gesehen in %1</translation>
    </message>
    <message>
        <source>Nothing was named as seen.</source>
        <translation>Es wurde nichts als gesehen benannt.</translation>
    </message>
    <message>
        <source>Type or pick what it was, then note it.</source>
        <translation>Tippe oder wähle, was es war, und notiere es dann.</translation>
    </message>
    <message>
        <source>%1: %2 noted</source>
        <translation>%1: %2 notiert</translation>
    </message>
    <message>
        <source>%1: photo kept</source>
        <translation>%1: Foto aufbewahrt</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>See the photographs of this tank</source>
        <translation>Die Fotos dieses Beckens ansehen</translation>
    </message>
</context>
<context>
    <name>littoral::ui::SheetCard</name>
    <message>
        <source>What else moves</source>
        <translation>Was sich sonst bewegt</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Make it a task</source>
        <translation>Eine Aufgabe daraus machen</translation>
    </message>
    <message>
        <source>M</source>
        <translation>M</translation>
    </message>
    <message>
        <source>Day of the task</source>
        <translation>Tag der Aufgabe</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Copy the working and the result</source>
        <translation>Rechenweg und Ergebnis kopieren</translation>
    </message>
    <message>
        <source>Clear what was typed</source>
        <translation>Getipptes leeren</translation>
    </message>
    <message>
        <source>Pinned for %1: %2</source>
        <translation>Angeheftet für %1: %2</translation>
    </message>
    <message>
        <source>%1 filled</source>
        <translation>%1 gefüllt</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1; %2 with the doubt of what went in</source>
        <translation>%1; %2 mit der Unsicherheit der Eingaben</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>name, unit</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 goes from %2 to %3. %4</source>
        <translation>%1 geht von %2 auf %3. %4</translation>
    </message>
    <message>
        <source>Write to the record</source>
        <translation>Ins Journal schreiben</translation>
    </message>
    <message>
        <source>W</source>
        <translation>W</translation>
    </message>
    <message>
        <source>Make %1 tasks, %2 each</source>
        <translation>%1 Aufgaben machen, je %2</translation>
    </message>
    <message>
        <source>Make %1 tasks</source>
        <translation>%1 Aufgaben machen</translation>
    </message>
    <message>
        <source>for today</source>
        <translation>für heute</translation>
    </message>
    <message>
        <source>for tomorrow</source>
        <translation>für morgen</translation>
    </message>
    <message>
        <source>for %1</source>
        <translation>für %1</translation>
    </message>
    <message>
        <source>%1: working and result copied</source>
        <translation>%1: Rechenweg und Ergebnis kopiert</translation>
    </message>
    <message numerus="yes">
        <source>Assumptions and more: %n blank(s)</source>
        <translation>
            <numerusform>Annahmen und mehr: %n Feld</numerusform>
            <numerusform>Annahmen und mehr: %n Felder</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::SheetField</name>
    <message>
        <source>%1: back to the record</source>
        <translation>%1: zurück zum Journal</translation>
    </message>
    <message>
        <source>50/20/30</source>
        <translation>50/20/30</translation>
    </message>
    <message>
        <source>Back to %1</source>
        <translation>Zurück zu %1</translation>
    </message>
    <message>
        <source>%1: back to %2 from the record</source>
        <translation>%1: zurück zu %2 aus dem Journal</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>label, unit</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::SheetList</name>
    <message>
        <source>Worksheets</source>
        <translation>Rechenblätter</translation>
    </message>
</context>
<context>
    <name>littoral::ui::SidePanel</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Close this panel</source>
        <translation>Dieses Feld schließen</translation>
    </message>
</context>
<context>
    <name>littoral::ui::SourceEditor</name>
    <message>
        <source>Source water</source>
        <translation>Ausgangswasser</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>tap</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>Tap</source>
        <translation>Leitungswasser</translation>
    </message>
    <message>
        <source>Reverse osmosis</source>
        <translation>Umkehrosmose</translation>
    </message>
    <message>
        <source>Blend</source>
        <translation>Verschnitt</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>Regen</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Unknown</source>
        <translation>Unbekannt</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>Chloramine in it</source>
        <translation>Chloramin darin</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Source water %1</source>
        <translation>Ausgangswasser %1</translation>
    </message>
    <message>
        <source>New source water</source>
        <translation>Neues Ausgangswasser</translation>
    </message>
    <message>
        <source>The source water has no name yet.</source>
        <translation>Das Ausgangswasser hat noch keinen Namen.</translation>
    </message>
    <message>
        <source>source water %1</source>
        <translation>Ausgangswasser %1</translation>
    </message>
    <message>
        <source>Source water %1 saved</source>
        <translation>Ausgangswasser %1 gespeichert</translation>
    </message>
    <message>
        <source>Nitrate, %1</source>
        <translation>Nitrat, %1</translation>
    </message>
    <message>
        <source>KH, %1</source>
        <translation>KH, %1</translation>
    </message>
    <message>
        <source>GH, %1</source>
        <translation>GH, %1</translation>
    </message>
    <message>
        <source>Chloride, %1</source>
        <translation>Chlorid, %1</translation>
    </message>
    <message>
        <source>First part</source>
        <translation>Erster Teil</translation>
    </message>
    <message>
        <source>Share of the first part, %</source>
        <translation>Anteil des ersten Teils, %</translation>
    </message>
    <message>
        <source>30</source>
        <translation>30</translation>
    </message>
    <message>
        <source>Second part</source>
        <translation>Zweiter Teil</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Not stated</source>
        <translation>Nicht angegeben</translation>
    </message>
</context>
<context>
    <name>littoral::ui::StatusLine</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Status line</source>
        <translation>Statuszeile</translation>
    </message>
    <message>
        <source>Ctrl Z</source>
        <translation>Strg Z</translation>
    </message>
    <message>
        <source>Undo the last change</source>
        <translation>Die letzte Änderung rückgängig machen</translation>
    </message>
    <message>
        <source>No store open</source>
        <translation>Keine Datei offen</translation>
    </message>
    <message>
        <source>Reading only</source>
        <translation>Nur lesend</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>Gespeichert %1</translation>
    </message>
    <message>
        <source>Everything saved</source>
        <translation>Alles gespeichert</translation>
    </message>
    <message>
        <source>Last: %1</source>
        <translation>Zuletzt: %1</translation>
    </message>
    <message>
        <source>Backup %1 %2</source>
        <comment>day, time</comment>
        <translation>Sicherung %1 %2</translation>
    </message>
    <message>
        <source>No backup yet</source>
        <translation>Noch keine Sicherung</translation>
    </message>
    <message>
        <source>Nothing to undo</source>
        <translation>Nichts rückgängig zu machen</translation>
    </message>
    <message>
        <source>Units of this store; opens the choice</source>
        <translation>Einheiten dieser Datei; öffnet die Wahl</translation>
    </message>
    <message>
        <source>Units: %1</source>
        <translation>Einheiten: %1</translation>
    </message>
    <message numerus="yes">
        <source>%1 · %n entries</source>
        <translation>
            <numerusform>%1 · %n Eintrag</numerusform>
            <numerusform>%1 · %n Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>Timers</source>
        <translation>Timer</translation>
    </message>
    <message>
        <source>Timers: %1. Goes to the cell of the first.</source>
        <translation>Timer: %1. Führt zur Zelle des ersten.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::StockGatesCard</name>
    <message>
        <source>Gates on this tank</source>
        <translation>Freigaben an diesem Becken</translation>
    </message>
    <message>
        <source>Limits met by readings, not by age alone; common practice, to be judged by you.</source>
        <translation>Grenzen, die Messwerte erfüllen, nicht das Alter allein; gängige Praxis, die du selbst beurteilst.</translation>
    </message>
    <message>
        <source>Gates count from the flooding; this layout is not flooded.</source>
        <translation>Freigaben zählen ab dem Fluten; dieses Layout ist nicht geflutet.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::StockPage</name>
    <message>
        <source>No animals are recorded here. &quot;Animals in&quot; records some; a trial on the right shows what the filter would make of them.</source>
        <translation>Hier sind keine Tiere eingetragen. „Tiere hinein“ trägt welche ein; ein Versuch rechts zeigt, was der Filter aus ihnen machte.</translation>
    </message>
    <message>
        <source>No plants are recorded here. &quot;Plants in&quot; records some by species, so that their need can be held against light and CO₂.</source>
        <translation>Hier sind keine Pflanzen eingetragen. „Pflanzen hinein“ trägt welche nach Art ein, damit sich ihr Bedarf an Licht und CO₂ halten lässt.</translation>
    </message>
    <message>
        <source>Quarantine is done</source>
        <translation>Quarantäne ist erledigt</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Besatz</translation>
    </message>
    <message>
        <source>Bar of the Stock page</source>
        <translation>Leiste der Seite Besatz</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>Filter</translation>
    </message>
    <message>
        <source>Show only rows with these words</source>
        <translation>Nur Zeilen mit diesen Wörtern zeigen</translation>
    </message>
    <message>
        <source>As they came</source>
        <translation>Wie sie kamen</translation>
    </message>
    <message>
        <source>What asks for most</source>
        <translation>Was am meisten verlangt</translation>
    </message>
    <message>
        <source>By name</source>
        <translation>Nach Namen</translation>
    </message>
    <message>
        <source>Order of the rows</source>
        <translation>Reihenfolge der Zeilen</translation>
    </message>
    <message>
        <source>Animals in...</source>
        <translation>Tiere hinein …</translation>
    </message>
    <message>
        <source>Record animals put in</source>
        <translation>Eingesetzte Tiere eintragen</translation>
    </message>
    <message>
        <source>Plants in...</source>
        <translation>Pflanzen hinein …</translation>
    </message>
    <message>
        <source>Record plants put in</source>
        <translation>Eingesetzte Pflanzen eintragen</translation>
    </message>
    <message>
        <source>Lost or out...</source>
        <translation>Verlust oder heraus …</translation>
    </message>
    <message>
        <source>Record animals lost or taken out</source>
        <translation>Verlorene oder herausgenommene Tiere eintragen</translation>
    </message>
    <message>
        <source>Animals: what each bears, and this water</source>
        <translation>Tiere: was jedes verträgt, und dieses Wasser</translation>
    </message>
    <message>
        <source>Boxes: steps of need, little to very much. Line: what this tank gives. Cover is taken from observations that name the plant. Steps are common practice.</source>
        <translation>Kästchen: Stufen des Bedarfs, wenig bis sehr viel. Linie: was dieses Becken gibt. Deckung stammt aus Beobachtungen, die die Pflanze nennen. Stufen sind gängige Praxis.</translation>
    </message>
    <message>
        <source>Plants: need, cover and condition</source>
        <translation>Pflanzen: Bedarf, Deckung und Zustand</translation>
    </message>
    <message>
        <source>Quarantine clock, and where media went</source>
        <translation>Quarantäneuhr, und wohin Filtermaterial ging</translation>
    </message>
    <message>
        <source>No filter media has been moved between tanks of this row. A media transfer that is entered shows here, so that disease or snails can be traced.</source>
        <translation>Zwischen Becken dieser Reihe ist kein Filtermaterial umgezogen. Ein eingetragener Umzug erscheint hier, damit sich Krankheiten oder Schnecken verfolgen lassen.</translation>
    </message>
    <message>
        <source>Filter the stock</source>
        <translation>Den Besatz filtern</translation>
    </message>
    <message>
        <source>No tank selected</source>
        <translation>Kein Becken gewählt</translation>
    </message>
    <message>
        <source>No arrival, loss or sign of illness is recorded here: no clock runs.</source>
        <translation>Hier ist weder Zugang noch Verlust noch ein Krankheitszeichen aufgezeichnet: Es läuft keine Uhr.</translation>
    </message>
    <message>
        <source>Choose a row for all there is to say about it; Enter opens its entry, F1 its article.</source>
        <translation>Wähle eine Zeile für alles, was es dazu zu sagen gibt; Enter öffnet ihren Eintrag, F1 ihren Artikel.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>Quarantine entered as done for %1</source>
        <translation>Quarantäne als erledigt eingetragen für %1</translation>
    </message>
    <message numerus="yes">
        <source>%1 of water · %2 · %n animals</source>
        <translation>
            <numerusform>%1 Wasser · %2 · %n Tier</numerusform>
            <numerusform>%1 Wasser · %2 · %n Tiere</numerusform>
        </translation>
    </message>
    <message>
        <source>Tinted: what it bears. Solid: this water, last 14 days. Hatched: forecast of the coming 14 days, 8 in 10; pH, hardness and temperature are not forecast.</source>
        <translation>Getönt: was es verträgt. Voll: dieses Wasser, letzte 14 Tage. Schraffiert: Vorhersage der kommenden 14 Tage, 8 von 10; für pH, Härte und Temperatur gibt es keine Vorhersage.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::StoreDesk</name>
    <message>
        <source>%1 opened for reading</source>
        <translation>%1 zum Lesen geöffnet</translation>
    </message>
    <message>
        <source>The store that was open stays open.</source>
        <translation>Die offene Datei bleibt offen.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 opened</source>
        <translation>%1 geöffnet</translation>
    </message>
    <message>
        <source>The store was brought up to date; a copy of it as it was lies at %1</source>
        <translation>Die Datei wurde auf den neuen Stand gebracht; eine Kopie von vorher liegt unter %1</translation>
    </message>
    <message>
        <source>New store at %1</source>
        <translation>Neue Datei unter %1</translation>
    </message>
    <message>
        <source>Your own stores were not touched.</source>
        <translation>Deine eigenen Dateien blieben unberührt.</translation>
    </message>
    <message>
        <source>The sample row lies at %1; nothing in it touches your own stores</source>
        <translation>Die Beispielreihe liegt unter %1; nichts darin berührt deine eigenen Dateien</translation>
    </message>
    <message>
        <source>Reading the files</source>
        <translation>Liest die Dateien</translation>
    </message>
    <message>
        <source>Nothing was brought in.</source>
        <translation>Es wurde nichts eingelesen.</translation>
    </message>
    <message>
        <source>%1 readings and %2 entries brought in, %3 were there already</source>
        <translation>%1 Messwerte und %2 Einträge eingelesen, %3 waren schon da</translation>
    </message>
    <message>
        <source>The store is untouched.</source>
        <translation>Die Datei ist unberührt.</translation>
    </message>
    <message>
        <source>Files written to %2: %1</source>
        <translation>Nach %2 geschriebene Dateien: %1</translation>
    </message>
    <message>
        <source>Backed up to %1 and checked</source>
        <translation>Nach %1 gesichert und geprüft</translation>
    </message>
    <message>
        <source>What you typed is still in the fields.</source>
        <translation>Was du getippt hast, steht noch in den Feldern.</translation>
    </message>
    <message>
        <source>%1 added; the store lies at %2</source>
        <translation>%1 hinzugefügt; die Datei liegt unter %2</translation>
    </message>
    <message>
        <source>%1 added</source>
        <translation>%1 hinzugefügt</translation>
    </message>
    <message numerus="yes">
        <source>%n place(s) could not be read.</source>
        <translation>
            <numerusform>%n Stelle ließ sich nicht lesen.</numerusform>
            <numerusform>%n Stellen ließen sich nicht lesen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Supplies and task templates brought in: %1, there already: %2</source>
        <translation>Vorräte und Aufgabenvorlagen übernommen: %1, schon vorhanden: %2</translation>
    </message>
    <message>
        <source>Due work as a calendar</source>
        <translation>Fällige Arbeit als Kalender</translation>
    </message>
    <message>
        <source>It cannot be written: %1.</source>
        <translation>Es kann nicht geschrieben werden: %1.</translation>
    </message>
    <message>
        <source>Due work of four weeks written to %1</source>
        <translation>Fällige Arbeit von vier Wochen geschrieben nach %1</translation>
    </message>
</context>
<context>
    <name>littoral::ui::StripView</name>
    <message>
        <source>Strip: readings and events around the window; Left and Right walk through them</source>
        <translation>Streifen: Messwerte und Ereignisse um das Zeitfenster; Links und Rechts gehen hindurch</translation>
    </message>
</context>
<context>
    <name>littoral::ui::SuppliesEditor</name>
    <message>
        <source>%1: &quot;%2&quot; is not a number above 0 and up to %3.</source>
        <translation>%1: „%2“ ist keine Zahl über 0 und bis %3.</translation>
    </message>
    <message>
        <source>Supplies</source>
        <translation>Vorräte</translation>
    </message>
    <message>
        <source>Supplies and test kits with a date, soonest wanted first</source>
        <translation>Vorräte und Tests mit Datum, zuerst was am ehesten gebraucht wird</translation>
    </message>
    <message>
        <source>Save supply</source>
        <translation>Vorrat speichern</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>New supply</source>
        <translation>Neuer Vorrat</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Name, as doses of it are entered</source>
        <translation>Name, wie Dosen davon eingetragen werden</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Amount when opened or last counted</source>
        <translation>Menge beim Öffnen oder letzten Zählen</translation>
    </message>
    <message>
        <source>doses</source>
        <translation>Dosen</translation>
    </message>
    <message>
        <source>tests</source>
        <translation>Tests</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Opened or counted on</source>
        <translation>Geöffnet oder gezählt am</translation>
    </message>
    <message>
        <source>Good until</source>
        <translation>Haltbar bis</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Used at water changes, of that unit per litre of new water</source>
        <translation>Verbrauch bei Wasserwechseln, in dieser Einheit je Liter neues Wasser</translation>
    </message>
    <message>
        <source>At changes with</source>
        <translation>Bei Wechseln mit</translation>
    </message>
    <message>
        <source>The cylinder hangs at</source>
        <translation>Die Flasche hängt an</translation>
    </message>
    <message>
        <source>Weight when empty, with what is weighed with it, g</source>
        <translation>Leergewicht mit allem, was mitgewogen wird, g</translation>
    </message>
    <message>
        <source>Weight now, closed, g</source>
        <translation>Gewicht jetzt, geschlossen, g</translation>
    </message>
    <message>
        <source>Enter the weighing</source>
        <translation>Wägung eintragen</translation>
    </message>
    <message>
        <source>every water</source>
        <translation>jedes Wasser</translation>
    </message>
    <message>
        <source>no tank yet</source>
        <translation>noch kein Becken</translation>
    </message>
    <message>
        <source>%1, test kit</source>
        <translation>%1, Test</translation>
    </message>
    <message>
        <source>wanted now</source>
        <translation>jetzt gebraucht</translation>
    </message>
    <message>
        <source>State how much there is and when it was opened: doses entered under its name, water changes and weighings are taken off by themselves.</source>
        <translation>Angeben, wie viel da ist und wann es geöffnet wurde: Unter seinem Namen eingetragene Dosen, Wasserwechsel und Wägungen werden von selbst abgezogen.</translation>
    </message>
    <message>
        <source>A test kit: its date and steps stand in its own form. Enter opens it.</source>
        <translation>Ein Test: Datum und Stufen stehen in seinem eigenen Formular. Enter öffnet es.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a date. Type it as 2027-04-30.</source>
        <translation>%1: „%2“ ist kein Datum. Schreibweise: 2027-04-30.</translation>
    </message>
    <message>
        <source>The supply has no name yet.</source>
        <translation>Der Vorrat hat noch keinen Namen.</translation>
    </message>
    <message>
        <source>There is a supply of that name and lot already. Give this one its lot, or choose another name.</source>
        <translation>Einen Vorrat mit diesem Namen und dieser Charge gibt es schon. Diesem seine Charge geben oder einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>supply %1</source>
        <translation>Vorrat %1</translation>
    </message>
    <message>
        <source>Supply %1 saved</source>
        <translation>Vorrat %1 gespeichert</translation>
    </message>
    <message>
        <source>remove supply %1</source>
        <translation>Vorrat %1 entfernen</translation>
    </message>
    <message>
        <source>Removed: supply %1</source>
        <translation>Entfernt: Vorrat %1</translation>
    </message>
    <message>
        <source>Say first at which tank the cylinder hangs and what it weighs empty, and save that.</source>
        <translation>Zuerst angeben, an welchem Becken die Flasche hängt und was sie leer wiegt, und das speichern.</translation>
    </message>
    <message>
        <source>%1: weighing entered</source>
        <translation>%1: Wägung eingetragen</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TableTwin</name>
    <message>
        <source>The charts&apos; values as a table</source>
        <translation>Die Werte der Diagramme als Tabelle</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TalkCard</name>
    <message>
        <source>Keep it, or start afresh: to talk over</source>
        <translation>Behalten oder neu anfangen: zum Durchsprechen</translation>
    </message>
    <message>
        <source>Nine questions of 0 to 2 points. The points are judgement, common practice; they decide nothing.</source>
        <translation>Neun Fragen mit 0 bis 2 Punkten. Die Punkte sind Abwägung, gängige Praxis; sie entscheiden nichts.</translation>
    </message>
    <message>
        <source>0 good</source>
        <translation>0 gut</translation>
    </message>
    <message>
        <source>1 doubtful</source>
        <translation>1 zweifelhaft</translation>
    </message>
    <message>
        <source>2 bad</source>
        <translation>2 schlecht</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1, %2: what comes first</source>
        <translation>%1, %2: was zuerst kommt</translation>
    </message>
    <message>
        <source>Starting afresh costs three to six weeks of cycling again (common practice); the forecast of both ways stands below.</source>
        <translation>Neu anfangen kostet drei bis sechs Wochen erneutes Einfahren (gängige Praxis); die Vorhersage beider Wege steht unten.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TankEditor</name>
    <message>
        <source>Tank</source>
        <translation>Becken</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Glass, mm</source>
        <translation>Glas, mm</translation>
    </message>
    <message>
        <source>Note on the tank</source>
        <translation>Notiz zum Becken</translation>
    </message>
    <message>
        <source>Layout</source>
        <translation>Layout</translation>
    </message>
    <message>
        <source>Name of the layout</source>
        <translation>Name des Layouts</translation>
    </message>
    <message>
        <source>layout 1</source>
        <translation>Layout 1</translation>
    </message>
    <message>
        <source>Flooded on</source>
        <translation>Geflutet am</translation>
    </message>
    <message>
        <source>still running</source>
        <translation>läuft noch</translation>
    </message>
    <message>
        <source>Ended on</source>
        <translation>Beendet am</translation>
    </message>
    <message>
        <source>New media</source>
        <translation>Neues Filtermaterial</translation>
    </message>
    <message>
        <source>Mature media</source>
        <translation>Reifes Filtermaterial</translation>
    </message>
    <message>
        <source>Starter</source>
        <translation>Starterbakterien</translation>
    </message>
    <message>
        <source>Dry start</source>
        <translation>Trockenstart</translation>
    </message>
    <message>
        <source>Dark start</source>
        <translation>Dunkelstart</translation>
    </message>
    <message>
        <source>Start method</source>
        <translation>Startart</translation>
    </message>
    <message>
        <source>Ammonia-rich soil</source>
        <translation>Ammoniumreicher Soil</translation>
    </message>
    <message>
        <source>Mild soil</source>
        <translation>Milder Soil</translation>
    </message>
    <message>
        <source>Spent soil</source>
        <translation>Verbrauchter Soil</translation>
    </message>
    <message>
        <source>Sand or gravel, inert</source>
        <translation>Sand oder Kies, inert</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Bodengrund</translation>
    </message>
    <message>
        <source>Rock, kg</source>
        <translation>Gestein, kg</translation>
    </message>
    <message>
        <source>The rock hardens the water</source>
        <translation>Das Gestein härtet auf</translation>
    </message>
    <message>
        <source>reckoned when empty</source>
        <translation>leer: gerechnet</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Sparse</source>
        <translation>Spärlich</translation>
    </message>
    <message>
        <source>Medium</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>Dense</source>
        <translation>Dicht</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <source>Water, light and filter</source>
        <translation>Wasser, Licht und Filter</translation>
    </message>
    <message>
        <source>Source water</source>
        <translation>Ausgangswasser</translation>
    </message>
    <message>
        <source>Pressurised</source>
        <translation>Druckgas</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Sonstige</translation>
    </message>
    <message>
        <source>CO₂</source>
        <translation>CO₂</translation>
    </message>
    <message>
        <source>CO₂, hours a day</source>
        <translation>CO₂, Stunden am Tag</translation>
    </message>
    <message>
        <source>Light, hours a day</source>
        <translation>Licht, Stunden am Tag</translation>
    </message>
    <message>
        <source>Light at the bed, µmol/m²/s</source>
        <translation>Licht am Bodengrund, µmol/m²/s</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>Forecasts follow the proposed cadence</source>
        <translation>Vorhersagen folgen dem vorgeschlagenen Takt</translation>
    </message>
    <message>
        <source>Note on the layout</source>
        <translation>Notiz zum Layout</translation>
    </message>
    <message>
        <source>Test kits...</source>
        <translation>Testsets …</translation>
    </message>
    <message>
        <source>Target bands...</source>
        <translation>Zielbereiche …</translation>
    </message>
    <message>
        <source>Entries...</source>
        <translation>Einträge …</translation>
    </message>
    <message>
        <source>Source water...</source>
        <translation>Ausgangswasser …</translation>
    </message>
    <message>
        <source>New layout...</source>
        <translation>Neues Layout …</translation>
    </message>
    <message>
        <source>End this layout</source>
        <translation>Dieses Layout beenden</translation>
    </message>
    <message>
        <source>Remove the tank</source>
        <translation>Das Becken entfernen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Not stated</source>
        <translation>Nicht angegeben</translation>
    </message>
    <message>
        <source>No test kit is named yet; readings are then taken in the shown units.</source>
        <translation>Noch kein Test genannt; Messwerte gelten dann in den gezeigten Einheiten.</translation>
    </message>
    <message>
        <source>Kits in use: %1</source>
        <translation>Tests in Gebrauch: %1</translation>
    </message>
    <message>
        <source>Add a tank</source>
        <translation>Ein Becken hinzufügen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>New layout for %1</source>
        <translation>Neues Layout für %1</translation>
    </message>
    <message>
        <source>Add this tank</source>
        <translation>Dieses Becken hinzufügen</translation>
    </message>
    <message>
        <source>The tank has no name yet. Give it one that you would say aloud.</source>
        <translation>Das Becken hat noch keinen Namen. Gib ihm einen, den du laut sagen würdest.</translation>
    </message>
    <message>
        <source>There is already a tank named %1.</source>
        <translation>Ein Becken namens %1 gibt es schon.</translation>
    </message>
    <message>
        <source>The day it was flooded is not understood. Type it as 2026-11-25 or 2026-11-25 10:00.</source>
        <translation>Der Tag der Flutung ist nicht verständlich. Tippe ihn als 2026-11-25 oder 2026-11-25 10:00.</translation>
    </message>
    <message>
        <source>The day it ended is not understood. Type it as 2026-11-25, or leave it empty.</source>
        <translation>Der Tag des Endes ist nicht verständlich. Tippe ihn als 2026-11-25, oder lass das Feld leer.</translation>
    </message>
    <message>
        <source>The layout ends before it was flooded.</source>
        <translation>Das Layout endet, bevor es geflutet wurde.</translation>
    </message>
    <message>
        <source>%1 added</source>
        <translation>%1 hinzugefügt</translation>
    </message>
    <message>
        <source>edit %1</source>
        <translation>%1 bearbeiten</translation>
    </message>
    <message>
        <source>new layout, %1</source>
        <translation>neues Layout, %1</translation>
    </message>
    <message>
        <source>%1 saved</source>
        <translation>%1 gespeichert</translation>
    </message>
    <message>
        <source>end %1, %2</source>
        <translation>%1 beenden, %2</translation>
    </message>
    <message>
        <source>%1, %2 ended</source>
        <translation>%1, %2 beendet</translation>
    </message>
    <message>
        <source>remove tank %1</source>
        <translation>Becken %1 entfernen</translation>
    </message>
    <message>
        <source>%1 removed with everything recorded about it; undo brings it back</source>
        <translation>%1 mit allem darüber Aufgezeichneten entfernt; Rückgängig bringt es zurück</translation>
    </message>
    <message>
        <source>Length outside, %1</source>
        <translation>Länge außen, %1</translation>
    </message>
    <message>
        <source>Depth outside, %1</source>
        <translation>Tiefe außen, %1</translation>
    </message>
    <message>
        <source>Height outside, %1</source>
        <translation>Höhe außen, %1</translation>
    </message>
    <message>
        <source>Bed in bulk, %1</source>
        <translation>Bodengrund geschüttet, %1</translation>
    </message>
    <message>
        <source>Rim to water surface, %1</source>
        <translation>Rand bis Wasserspiegel, %1</translation>
    </message>
    <message>
        <source>Water measured on flood day, %1</source>
        <translation>Wasser, am Tag der Flutung gemessen, %1</translation>
    </message>
    <message>
        <source>CO₂ held, %1</source>
        <translation>CO₂ gehalten, %1</translation>
    </message>
    <message>
        <source>Filter flow, %1</source>
        <translation>Filterdurchfluss, %1</translation>
    </message>
    <message>
        <source>Temperature, %1</source>
        <translation>Temperatur, %1</translation>
    </message>
    <message>
        <source>How much water there is is unknown without the glass or a measured volume.</source>
        <translation>Wie viel Wasser es ist, ist ohne Glas oder gemessenes Volumen unbekannt.</translation>
    </message>
    <message>
        <source>%1 glass, about %2 of water</source>
        <translation>%1 Glas, etwa %2 Wasser</translation>
    </message>
    <message>
        <source>%1 of water, as measured</source>
        <translation>%1 Wasser, wie gemessen</translation>
    </message>
    <message>
        <source>Plants take up at least, mg/L NO₃ a week</source>
        <translation>Pflanzen nehmen mindestens auf, mg/L NO₃ je Woche</translation>
    </message>
    <message>
        <source>by density</source>
        <translation>nach Dichte</translation>
    </message>
    <message>
        <source>Plants take up at most, mg/L NO₃ a week</source>
        <translation>Pflanzen nehmen höchstens auf, mg/L NO₃ je Woche</translation>
    </message>
    <message>
        <source>Kits, targets, doses, entries</source>
        <translation>Tests, Zielwerte, Dosen, Einträge</translation>
    </message>
    <message>
        <source>Doses...</source>
        <translation>Düngung...</translation>
    </message>
    <message>
        <source>The least the plants take up lies above the most.</source>
        <translation>Die geringste Aufnahme der Pflanzen liegt über der höchsten.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TankHeader</name>
    <message>
        <source>Tanks</source>
        <translation>Becken</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TanksModel</name>
    <message>
        <source>%1 overdue</source>
        <translation>%1 überfällig</translation>
    </message>
    <message>
        <source>Earlier layouts</source>
        <translation>Frühere Layouts</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1
%2
%3</source>
        <translation>%1
%2
%3</translation>
    </message>
    <message numerus="yes">
        <source>Row: %n tank(s)</source>
        <translation>
            <numerusform>Reihe: %n Becken</numerusform>
            <numerusform>Reihe: %n Becken</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>littoral::ui::TargetsEditor</name>
    <message>
        <source>Target bands</source>
        <translation>Zielbereiche</translation>
    </message>
    <message>
        <source>The band is drawn in Lanes, and readings outside it are pointed out. An empty field leaves that end open.</source>
        <translation>Der Bereich wird in den Bahnen gezeichnet, und auf Messwerte außerhalb wird hingewiesen. Ein leeres Feld lässt das Ende offen.</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>%1
%2</source>
        <comment>parameter, unit</comment>
        <translation>%1
%2</translation>
    </message>
    <message>
        <source>%1, lowest wanted</source>
        <translation>%1, niedrigster gewünschter</translation>
    </message>
    <message>
        <source>%1, highest wanted</source>
        <translation>%1, höchster gewünschter</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Target bands of %1</source>
        <translation>Zielbereiche von %1</translation>
    </message>
    <message>
        <source>target bands, %1</source>
        <translation>Zielbereiche, %1</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a number.</source>
        <translation>%1: „%2“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>%1: the lower end is above the upper one.</source>
        <translation>%1: Das untere Ende liegt über dem oberen.</translation>
    </message>
    <message>
        <source>Target bands of %1 saved</source>
        <translation>Zielbereiche von %1 gespeichert</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TemplatesEditor</name>
    <message>
        <source>Task templates</source>
        <translation>Aufgabenvorlagen</translation>
    </message>
    <message>
        <source>What it asks for next</source>
        <translation>Was sie als Nächstes verlangt</translation>
    </message>
    <message>
        <source>Save template</source>
        <translation>Vorlage speichern</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>New template</source>
        <translation>Neue Vorlage</translation>
    </message>
    <message>
        <source>Back to the built-in</source>
        <translation>Zurück zur eingebauten</translation>
    </message>
    <message>
        <source>Switch off</source>
        <translation>Abschalten</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Key, its short name in the store</source>
        <translation>Schlüssel, ihr Kurzname in der Datei</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Water change</source>
        <translation>Wasserwechsel</translation>
    </message>
    <message>
        <source>Test, closed by readings</source>
        <translation>Test, durch Messwerte erledigt</translation>
    </message>
    <message>
        <source>Upkeep</source>
        <translation>Pflege</translation>
    </message>
    <message>
        <source>A look, closed by your word</source>
        <translation>Ein Blick, durch Bestätigen erledigt</translation>
    </message>
    <message>
        <source>A decision</source>
        <translation>Eine Entscheidung</translation>
    </message>
    <message>
        <source>Applies when (empty: always)</source>
        <translation>Gilt, wenn (leer: immer)</translation>
    </message>
    <message>
        <source>plants, no shrimp, bed rich|mild, tan &lt; 0.5</source>
        <translation>plants, no shrimp, bed rich|mild, tan &lt; 0.5</translation>
    </message>
    <message>
        <source>Asked once for the whole row</source>
        <translation>Einmal für die ganze Reihe gestellt</translation>
    </message>
    <message>
        <source>A missed round gives way to the next</source>
        <translation>Eine versäumte Runde weicht der nächsten</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>One way each: every so many days from one tank age to another, once at an age, or on days after an event. Cases are tried from above; the first that holds is taken.</source>
        <translation>Je ein Weg: alle so viele Tage von einem Beckenalter bis zu einem anderen, einmal in einem Alter, oder an Tagen nach einem Ereignis. Fälle werden von oben geprüft; der erste, der zutrifft, gilt.</translation>
    </message>
    <message>
        <source>Cases</source>
        <translation>Fälle</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Fall</translation>
    </message>
    <message>
        <source>Holds when</source>
        <translation>Trifft zu, wenn</translation>
    </message>
    <message>
        <source>Every, days</source>
        <translation>Alle, Tage</translation>
    </message>
    <message>
        <source>From day</source>
        <translation>Ab Tag</translation>
    </message>
    <message>
        <source>To day</source>
        <translation>Bis Tag</translation>
    </message>
    <message>
        <source>Once on day</source>
        <translation>Einmalig an Tag</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>Days after</source>
        <translation>Tage danach</translation>
    </message>
    <message>
        <source>Change %</source>
        <translation>Wechsel %</translation>
    </message>
    <message>
        <source>Range %</source>
        <translation>Spanne %</translation>
    </message>
    <message>
        <source>Only when</source>
        <translation>Nur wenn</translation>
    </message>
    <message>
        <source>Only if raised</source>
        <translation>Nur wenn erhöht</translation>
    </message>
    <message>
        <source>Days from leaving</source>
        <translation>Tage ab Abreise</translation>
    </message>
    <message>
        <source>Days from return</source>
        <translation>Tage ab Rückkehr</translation>
    </message>
    <message>
        <source>Add a case</source>
        <translation>Fall hinzufügen</translation>
    </message>
    <message>
        <source>Add a round</source>
        <translation>Runde hinzufügen</translation>
    </message>
    <message>
        <source>Take the case out</source>
        <translation>Fall herausnehmen</translation>
    </message>
    <message>
        <source>Take the round out</source>
        <translation>Runde herausnehmen</translation>
    </message>
    <message>
        <source>nothing but your tick</source>
        <translation>nur durch Abhaken</translation>
    </message>
    <message>
        <source>Closed by an entry</source>
        <translation>Erledigt durch einen Eintrag</translation>
    </message>
    <message>
        <source>with the subject</source>
        <translation>mit dem Gegenstand</translation>
    </message>
    <message>
        <source>or by readings of</source>
        <translation>oder durch Messwerte von</translation>
    </message>
    <message>
        <source>Minutes it takes</source>
        <translation>Dauer in Minuten</translation>
    </message>
    <message>
        <source>Days of grace before it is overdue</source>
        <translation>Tage Nachfrist, bevor sie überfällig ist</translation>
    </message>
    <message>
        <source>Days after which it is not asked for any more</source>
        <translation>Tage, nach denen nicht mehr danach gefragt wird</translation>
    </message>
    <message>
        <source>Priority</source>
        <translation>Vorrang</translation>
    </message>
    <message>
        <source>1, first</source>
        <translation>1, zuerst</translation>
    </message>
    <message>
        <source>2</source>
        <translation>2</translation>
    </message>
    <message>
        <source>3, last</source>
        <translation>3, zuletzt</translation>
    </message>
    <message>
        <source>Caution shown before the work</source>
        <translation>Vorsichtshinweis vor der Arbeit</translation>
    </message>
    <message>
        <source>What follows if it is left undone</source>
        <translation>Was folgt, wenn es unterbleibt</translation>
    </message>
    <message>
        <source>Where the rule comes from</source>
        <translation>Woher die Regel kommt</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>gängige Praxis</translation>
    </message>
    <message>
        <source>%1, switched off</source>
        <translation>%1, ausgeschaltet</translation>
    </message>
    <message>
        <source>%1, changed by you</source>
        <translation>%1, selbst geändert</translation>
    </message>
    <message>
        <source>%1, your own</source>
        <translation>%1, eigene</translation>
    </message>
    <message>
        <source>my own practice</source>
        <translation>meine eigene Praxis</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>A new template of your own.</source>
        <translation>Eine neue eigene Vorlage.</translation>
    </message>
    <message>
        <source>Built in. Saving a change puts your own in its place.</source>
        <translation>Eingebaut. Wird eine Änderung gespeichert, tritt die eigene Vorlage an ihre Stelle.</translation>
    </message>
    <message>
        <source>Switched off: it asks for nothing. Saving switches it on again.</source>
        <translation>Ausgeschaltet: Sie fragt nach nichts. Speichern schaltet sie wieder ein.</translation>
    </message>
    <message>
        <source>Changed by you; the built-in one is kept.</source>
        <translation>Selbst geändert; die eingebaute bleibt erhalten.</translation>
    </message>
    <message>
        <source>Your own.</source>
        <translation>Eigene Vorlage.</translation>
    </message>
    <message>
        <source>The whole row</source>
        <translation>Die ganze Reihe</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <comment>tank, day, why</comment>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>%1: nothing in the next 120 days.</source>
        <translation>%1: nichts in den nächsten 120 Tagen.</translation>
    </message>
    <message>
        <source>%1: does not apply to this layout.</source>
        <translation>%1: gilt für diese Einrichtung nicht.</translation>
    </message>
    <message>
        <source>No tank is running.</source>
        <translation>Kein Becken läuft.</translation>
    </message>
    <message>
        <source>There is a template with the key &quot;%1&quot; already. Choose another key.</source>
        <translation>Eine Vorlage mit dem Schlüssel „%1“ gibt es schon. Einen anderen Schlüssel wählen.</translation>
    </message>
    <message>
        <source>task template %1</source>
        <translation>Aufgabenvorlage %1</translation>
    </message>
    <message>
        <source>Task template saved: %1</source>
        <translation>Aufgabenvorlage gespeichert: %1</translation>
    </message>
    <message>
        <source>back to the built-in: %1</source>
        <translation>zurück zur eingebauten Vorlage: %1</translation>
    </message>
    <message>
        <source>remove task template %1</source>
        <translation>Aufgabenvorlage %1 entfernen</translation>
    </message>
    <message>
        <source>Back to the built-in: %1</source>
        <translation>Zurück zur eingebauten Vorlage: %1</translation>
    </message>
    <message>
        <source>Removed: %1</source>
        <translation>Entfernt: %1</translation>
    </message>
    <message>
        <source>switch off: %1</source>
        <translation>ausschalten: %1</translation>
    </message>
    <message>
        <source>Switched off: %1</source>
        <translation>Ausgeschaltet: %1</translation>
    </message>
    <message>
        <source>Rounds of the template</source>
        <translation>Termine der Vorlage</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TenthsStrip</name>
    <message>
        <source>Where readings fell in the forecast, in tenths</source>
        <translation>Wohin Messwerte in der Vorhersage fielen, in Zehnteln</translation>
    </message>
    <message>
        <source>%1 to %2 tenths: %3 of %4 readings</source>
        <translation>%1 bis %2 Zehntel: %3 von %4 Messwerten</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TickList</name>
    <message>
        <source>%1, %2</source>
        <comment>name, remark</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TimerStrip</name>
    <message>
        <source>Timers</source>
        <translation>Timer</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what is timed, how it stands</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Go to it</source>
        <translation>Hingehen</translation>
    </message>
    <message>
        <source>Go to the cell of %1</source>
        <translation>Zur Zelle von %1 gehen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Stop the timer of %1</source>
        <translation>Den Timer von %1 anhalten</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TopBar</name>
    <message>
        <source>Littoral</source>
        <translation>Littoral</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>New entry</source>
        <translation>Neuer Eintrag</translation>
    </message>
    <message>
        <source>Top bar</source>
        <translation>Obere Leiste</translation>
    </message>
    <message>
        <source>E</source>
        <translation>E</translation>
    </message>
    <message>
        <source>Menu</source>
        <translation>Menü</translation>
    </message>
    <message>
        <source>Menu (F10)</source>
        <translation>Menü (F10)</translation>
    </message>
    <message>
        <source>Further pages</source>
        <translation>Weitere Seiten</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TopicList</name>
    <message>
        <source>Topics found</source>
        <translation>Gefundene Themen</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TrayNotifier</name>
    <message>
        <source>Littoral</source>
        <translation>Littoral</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TrendBrush</name>
    <message>
        <source>Part of the record on show</source>
        <translation>Gezeigter Teil des Journals</translation>
    </message>
    <message>
        <source>The charts show %1 to %2, of %3 to %4.</source>
        <translation>Die Diagramme zeigen %1 bis %2, von %3 bis %4.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 auf %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TrendView</name>
    <message>
        <source>Charts of readings</source>
        <translation>Diagramme der Messwerte</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>tank, value</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <comment>tank, value, note</comment>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1, %2, %3: %4</source>
        <comment>parameter, unit, day, values</comment>
        <translation>%1, %2, %3: %4</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TrendsBar</name>
    <message>
        <source>Arrangement</source>
        <translation>Anordnung</translation>
    </message>
    <message>
        <source>Overlay</source>
        <translation>Überlagert</translation>
    </message>
    <message>
        <source>Stacked</source>
        <translation>Gestapelt</translation>
    </message>
    <message>
        <source>Grid</source>
        <translation>Raster</translation>
    </message>
    <message>
        <source>Time axis</source>
        <translation>Zeitachse</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>Days since flooding</source>
        <translation>Tage seit dem Fluten</translation>
    </message>
    <message>
        <source>Span</source>
        <translation>Spanne</translation>
    </message>
    <message>
        <source>Targets</source>
        <translation>Ziele</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Vorhersage</translation>
    </message>
    <message>
        <source>Kit steps</source>
        <translation>Teststufen</translation>
    </message>
    <message>
        <source>Log scale</source>
        <translation>Log-Skala</translation>
    </message>
    <message>
        <source>Beside the charts</source>
        <translation>Neben den Diagrammen</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Wählen</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Ablesen</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportieren</translation>
    </message>
    <message>
        <source>Span of the time axis</source>
        <translation>Spanne der Zeitachse</translation>
    </message>
    <message>
        <source>as zoomed</source>
        <translation>wie gezoomt</translation>
    </message>
    <message>
        <source>Half a kit step either side of each reading</source>
        <translation>Eine halbe Teststufe beiderseits jedes Messwerts</translation>
    </message>
    <message>
        <source>The same values as a table</source>
        <translation>Dieselben Werte als Tabelle</translation>
    </message>
    <message>
        <source>Export what is on show</source>
        <translation>Das Gezeigte exportieren</translation>
    </message>
    <message>
        <source>&amp;Picture (PNG)...</source>
        <translation>&amp;Bild (PNG) …</translation>
    </message>
    <message>
        <source>&amp;Drawing (SVG)...</source>
        <translation>&amp;Zeichnung (SVG) …</translation>
    </message>
    <message>
        <source>&amp;Values (CSV)...</source>
        <translation>&amp;Werte (CSV) …</translation>
    </message>
    <message>
        <source>1 year back, 4 weeks</source>
        <translation>1 Jahr zurück, 4 Wochen</translation>
    </message>
    <message>
        <source>%1 weeks back, %2 ahead</source>
        <comment>how much of the time axis is shown</comment>
        <translation>%1 Wochen zurück, %2 voraus</translation>
    </message>
    <message>
        <source>Day 0 to %1</source>
        <translation>Tag 0 bis %1</translation>
    </message>
    <message>
        <source>Everything</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>Views</source>
        <translation>Ansichten</translation>
    </message>
    <message>
        <source>Name of this view</source>
        <translation>Name dieser Ansicht</translation>
    </message>
    <message>
        <source>name of the view</source>
        <translation>Name der Ansicht</translation>
    </message>
    <message>
        <source>What doses and water changes should have come to, with the range that uptake leaves</source>
        <translation>Was Düngung und Wasserwechsel ergeben haben müssten, mit der Spanne, die der Verbrauch der Pflanzen lässt</translation>
    </message>
    <message>
        <source>Views that were kept under a name</source>
        <translation>Ansichten, die unter einem Namen behalten wurden</translation>
    </message>
    <message>
        <source>No view is kept yet</source>
        <translation>Noch keine Ansicht behalten</translation>
    </message>
    <message>
        <source>&amp;Keep this view...</source>
        <translation>Diese Ansicht &amp;behalten...</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Remove a view</source>
        <translation>Eine Ansicht entfernen</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TrendsPage</name>
    <message>
        <source>%1, %2</source>
        <comment>tank, layout</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Tanks</source>
        <translation>Becken</translation>
    </message>
    <message>
        <source>Earlier layouts</source>
        <translation>Frühere Layouts</translation>
    </message>
    <message>
        <source>calc.</source>
        <comment>worked out from other readings</comment>
        <translation>ger.</translation>
    </message>
    <message>
        <source>Hue and shape say which parameter; weight, dash and fill say which tank.</source>
        <translation>Farbton und Form sagen, welcher Parameter; Stärke, Strichart und Füllung sagen, welches Becken.</translation>
    </message>
    <message>
        <source>Trends</source>
        <translation>Verläufe</translation>
    </message>
    <message>
        <source>Tanks on show; Space ticks</source>
        <translation>Gezeigte Becken; Leertaste hakt an</translation>
    </message>
    <message>
        <source>Parameters on show; Space ticks, Ctrl+Up and Ctrl+Down reorder</source>
        <translation>Gezeigte Parameter; Leertaste hakt an, Strg+Auf und Strg+Ab ordnen um</translation>
    </message>
    <message>
        <source>Space ticks, Ctrl ↑ ↓ reorders</source>
        <translation>Leertaste hakt an, Strg ↑ ↓ ordnet um</translation>
    </message>
    <message>
        <source>What to show, scrolling</source>
        <translation>Was zu zeigen ist, scrollbar</translation>
    </message>
    <message>
        <source>Figures, scrolling</source>
        <translation>Zahlen, scrollbar</translation>
    </message>
    <message>
        <source>Charts, scrolling</source>
        <translation>Diagramme, scrollbar</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Diagramme</translation>
    </message>
    <message>
        <source>Type readings</source>
        <translation>Messwerte eintippen</translation>
    </message>
    <message>
        <source>Goes to Rounds</source>
        <translation>Führt zum Rundgang</translation>
    </message>
    <message>
        <source>Readings of the tanks ticked at the left are drawn here. Tick a tank.</source>
        <translation>Messwerte der links angehakten Becken werden hier gezeichnet. Hake ein Becken an.</translation>
    </message>
    <message>
        <source>Each parameter ticked at the left has a chart here. Tick a parameter.</source>
        <translation>Jeder links angehakte Parameter hat hier ein Diagramm. Hake einen Parameter an.</translation>
    </message>
    <message>
        <source>Readings of these tanks are drawn here as they are typed. There are none of these parameters yet.</source>
        <translation>Messwerte dieser Becken werden hier gezeichnet, wie sie eingetippt werden. Für diese Parameter gibt es noch keine.</translation>
    </message>
    <message>
        <source>Nothing is on show.</source>
        <translation>Es wird nichts gezeigt.</translation>
    </message>
    <message>
        <source>Export what is on show</source>
        <translation>Das Gezeigte exportieren</translation>
    </message>
    <message>
        <source>Exported to %1.</source>
        <translation>Nach %1 exportiert.</translation>
    </message>
    <message>
        <source>The record is as it was.</source>
        <translation>Das Journal ist wie zuvor.</translation>
    </message>
    <message>
        <source>View &quot;%1&quot; is on show.</source>
        <translation>Ansicht „%1“ wird gezeigt.</translation>
    </message>
    <message>
        <source>A view needs a name.</source>
        <translation>Eine Ansicht braucht einen Namen.</translation>
    </message>
    <message>
        <source>save view %1</source>
        <translation>Ansicht %1 speichern</translation>
    </message>
    <message>
        <source>View &quot;%1&quot; is kept.</source>
        <translation>Ansicht „%1“ ist behalten.</translation>
    </message>
    <message>
        <source>remove view %1</source>
        <translation>Ansicht %1 entfernen</translation>
    </message>
    <message>
        <source>View &quot;%1&quot; is gone.</source>
        <translation>Ansicht „%1“ ist entfernt.</translation>
    </message>
    <message>
        <source>The views are as they were.</source>
        <translation>Die Ansichten sind wieder wie zuvor.</translation>
    </message>
    <message>
        <source>Narrow the lists of tanks and parameters</source>
        <translation>Die Listen der Becken und Parameter eingrenzen</translation>
    </message>
    <message>
        <source>tank or parameter</source>
        <translation>Becken oder Parameter</translation>
    </message>
</context>
<context>
    <name>littoral::ui::TrendsSide</name>
    <message>
        <source>Next reading</source>
        <translation>Nächster Messwert</translation>
    </message>
    <message>
        <source>On that day</source>
        <translation>An diesem Tag</translation>
    </message>
    <message>
        <source>Values, statistics and comparison</source>
        <translation>Werte, Statistik und Vergleich</translation>
    </message>
    <message>
        <source>Values at the cursor</source>
        <translation>Werte am Zeiger</translation>
    </message>
    <message>
        <source>Statistics of the stretch</source>
        <translation>Statistik der Strecke</translation>
    </message>
    <message>
        <source>Values at the crosshair</source>
        <translation>Werte am Fadenkreuz</translation>
    </message>
    <message>
        <source>← → by a day, comma and full stop by a reading</source>
        <translation>← → um einen Tag, Komma und Punkt um einen Messwert</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>tank, figure, value</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Stretch set with [ and ]; Backspace takes it away</source>
        <translation>Strecke mit [ und ] gesetzt; die Rücktaste nimmt sie weg</translation>
    </message>
    <message>
        <source>What is on show; [ and ] set a stretch at the crosshair</source>
        <translation>Was gezeigt wird; [ und ] setzen am Fadenkreuz eine Strecke</translation>
    </message>
    <message>
        <source>Statistics, %1</source>
        <translation>Statistik, %1</translation>
    </message>
    <message>
        <source>Nothing was noted.</source>
        <translation>Es wurde nichts notiert.</translation>
    </message>
</context>
<context>
    <name>littoral::ui::VerdictCard</name>
    <message>
        <source>Open the reading at odds</source>
        <translation>Den widersprechenden Messwert öffnen</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
</context>
<context>
    <name>littoral::ui::WaterBars</name>
    <message>
        <source>Litres a day</source>
        <translation>Wasser am Tag</translation>
    </message>
    <message>
        <source>The table below says the same.</source>
        <translation>Die Tabelle darunter sagt dasselbe.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>amount and unit</comment>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>littoral::ui::WhyStrip</name>
    <message>
        <source>Key in the lanes: %1</source>
        <translation>Taste in den Bahnen: %1</translation>
    </message>
    <message>
        <source>Why it is due</source>
        <translation>Warum es fällig ist</translation>
    </message>
    <message>
        <source>Nothing has the focus</source>
        <translation>Nichts hat den Fokus</translation>
    </message>
    <message>
        <source>The arrow keys go to a lane and along its work.</source>
        <translation>Die Pfeiltasten gehen zu einer Bahn und an ihrer Arbeit entlang.</translation>
    </message>
    <message>
        <source>Done today</source>
        <translation>Heute erledigt</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Snooze</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>Skip, with reason</source>
        <translation>Auslassen, mit Grund</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <comment>tank, work: the bold beginning of the strip</comment>
        <translation>%1, %2.</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>bold beginning of the foot strip</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Snooze &quot;%1&quot; until</source>
        <translation>„%1“ verschieben bis</translation>
    </message>
    <message>
        <source>Skip &quot;%1&quot; because</source>
        <translation>„%1“ auslassen, weil</translation>
    </message>
    <message>
        <source>reason, kept in the record</source>
        <translation>Grund, bleibt im Journal</translation>
    </message>
    <message>
        <source>Skip</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>That is not a day. Type it as 27 Nov or 2026-11-27.</source>
        <translation>Das ist kein Tag. Tippe ihn als 27 Nov oder 2026-11-27.</translation>
    </message>
    <message>
        <source>Snoozing needs a day after today.</source>
        <translation>Verschieben braucht einen Tag nach heute.</translation>
    </message>
    <message>
        <source>A word is enough, so that the record says why.</source>
        <translation>Ein Wort reicht, damit das Journal sagt, warum.</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>See and change the rule this work follows</source>
        <translation>Die Regel ansehen und ändern, der diese Arbeit folgt</translation>
    </message>
    <message>
        <source>Ease them</source>
        <translation>Lockern</translation>
    </message>
    <message>
        <source>Leave as it is, with reason</source>
        <translation>So lassen, mit Begründung</translation>
    </message>
</context>
<context>
    <name>littoral::ui::WorkModel</name>
    <message>
        <source>skipped</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>%1 d over</source>
        <translation>%1 T über</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>Whole row</source>
        <translation>Ganze Reihe</translation>
    </message>
</context>
<context>
    <name>littoral::ui::WorkPanel</name>
    <message>
        <source>Nothing is due today. Work appears here on its day, tank by tank.</source>
        <translation>Heute ist nichts fällig. Arbeit erscheint hier an ihrem Tag, Becken für Becken.</translation>
    </message>
    <message>
        <source>Work on this round</source>
        <translation>Arbeit dieses Rundgangs</translation>
    </message>
    <message>
        <source>Work on this round; Space ticks a task</source>
        <translation>Arbeit dieses Rundgangs; Leertaste hakt eine Aufgabe ab</translation>
    </message>
    <message>
        <source>%1 of %2 open</source>
        <translation>%1 von %2 offen</translation>
    </message>
</context>
<context>
    <name>littoralctl</name>
    <message>
        <source>Show this help.</source>
        <translation>Diese Hilfe zeigen.</translation>
    </message>
    <message>
        <source>Print JSON instead of text.</source>
        <translation>JSON statt Text ausgeben.</translation>
    </message>
    <message>
        <source>Print CSV instead of text.</source>
        <translation>CSV statt Text ausgeben.</translation>
    </message>
    <message>
        <source>Usage: littoralctl %1</source>
        <translation>Aufruf: littoralctl %1</translation>
    </message>
    <message>
        <source>Examples:</source>
        <translation>Beispiele:</translation>
    </message>
    <message>
        <source>%1 See: littoralctl %2 --help</source>
        <translation>%1 Siehe: littoralctl %2 --help</translation>
    </message>
    <message>
        <source>Something is missing: littoralctl %1.</source>
        <translation>Es fehlt etwas: littoralctl %1.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is one too many.</source>
        <translation>„%1“ ist eins zu viel.</translation>
    </message>
    <message>
        <source>Choose either --json or --csv.</source>
        <translation>Wähle entweder --json oder --csv.</translation>
    </message>
    <message>
        <source>--%1 takes a number from %2 to %3, not &quot;%4&quot;.</source>
        <translation>--%1 nimmt eine Zahl von %2 bis %3, nicht „%4“.</translation>
    </message>
    <message>
        <source>--%1 takes a date such as 2026-11-25 or 2026-11-25T07:40, not &quot;%2&quot;.</source>
        <translation>--%1 nimmt ein Datum wie 2026-11-25 oder 2026-11-25T07:40, nicht „%2“.</translation>
    </message>
    <message>
        <source>Nothing is due within %1 days.</source>
        <translation>In den nächsten %1 Tagen ist nichts fällig.</translation>
    </message>
    <message>
        <source>There are no tanks in this store yet.</source>
        <translation>In dieser Datei sind noch keine Becken.</translation>
    </message>
    <message>
        <source>The store, a file ending in .littoral.</source>
        <translation>Die Datei, mit der Endung .littoral.</translation>
    </message>
    <message>
        <source>Only this tank.</source>
        <translation>Nur dieses Becken.</translation>
    </message>
    <message>
        <source>As it stands on that day; today if not given.</source>
        <translation>Wie es an diesem Tag steht; ohne Angabe heute.</translation>
    </message>
    <message>
        <source>%1 %2: as above.</source>
        <translation>%1 %2: wie oben.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, day %2</source>
        <translation>%1, Tag %2</translation>
    </message>
    <message>
        <source>Nothing on record points to any condition. What was seen is written down as an observation; looks such as wipes_off=easy count as well.</source>
        <translation>Nichts Aufgezeichnetes deutet auf einen Zustand hin. Was gesehen wurde, wird als Beobachtung aufgeschrieben; auch Blicke wie wipes_off=easy zählen.</translation>
    </message>
    <message>
        <source>Speaks for it</source>
        <translation>Spricht dafür</translation>
    </message>
    <message>
        <source>Speaks against it</source>
        <translation>Spricht dagegen</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Unbekannt</translation>
    </message>
    <message>
        <source>Before anything is done</source>
        <translation>Bevor etwas getan wird</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Zuerst</translation>
    </message>
    <message>
        <source>Avoid</source>
        <translation>Vermeiden</translation>
    </message>
    <message>
        <source>Next look</source>
        <translation>Nächster Blick</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Weighs what was seen, read and done for and against each condition, names the look that would decide best, and says what to do first. It is no diagnosis.</source>
        <translation>Wägt Gesehenes, Gemessenes und Getanes für und gegen jeden Zustand, nennt den Blick, der am besten entschiede, und sagt, was zuerst zu tun ist. Das ist keine Diagnose.</translation>
    </message>
    <message>
        <source>The tank.</source>
        <translation>Das Becken.</translation>
    </message>
    <message>
        <source>As it stood on that day; now if not given.</source>
        <translation>Wie es an diesem Tag stand; ohne Angabe jetzt.</translation>
    </message>
    <message>
        <source>Also what nothing seen points to, and what is refuted.</source>
        <translation>Auch das, worauf nichts Gesehenes deutet, und was widerlegt ist.</translation>
    </message>
    <message>
        <source>There is no layout in &quot;%1&quot; yet.</source>
        <translation>In „%1“ gibt es noch kein Layout.</translation>
    </message>
    <message>
        <source>Every tank, in row order.</source>
        <translation>Jedes Becken, in der Ordnung der Reihe.</translation>
    </message>
    <message>
        <source>Forecast as if it were then: nothing measured, seen or closed later is looked at; what was planned for later is the plan. Now if not given; a day alone is noon.</source>
        <translation>Vorhersagen, als wäre es damals: Was später gemessen, gesehen oder abgeschlossen wurde, bleibt außer Betracht; was für später geplant war, ist der Plan. Ohne Angabe jetzt; ein Tag allein ist Mittag.</translation>
    </message>
    <message>
        <source>How far ahead; 28, or to tank day 60 if that is later.</source>
        <translation>Wie weit voraus; 28, oder bis Beckentag 60, wenn das später ist.</translation>
    </message>
    <message>
        <source>Spacing of the rows; 24 if not given.</source>
        <translation>Abstand der Zeilen; ohne Angabe 24.</translation>
    </message>
    <message>
        <source>Further rows at these instants, in days since flooding.</source>
        <translation>Weitere Zeilen zu diesen Zeitpunkten, in Tagen seit dem Fluten.</translation>
    </message>
    <message>
        <source>How many tanks at a time; one per core if not given. The answer does not depend on it.</source>
        <translation>Wie viele Becken zugleich; ohne Angabe eines je Kern. Die Antwort hängt nicht davon ab.</translation>
    </message>
    <message>
        <source>What the filter is to carry, mg N per litre of tank and day; what feeding, animals and plans in the record come to if not given.</source>
        <translation>Was der Filter tragen soll, mg N je Liter Becken und Tag; ohne Angabe, was Futter, Tiere und Pläne des Journals ergeben.</translation>
    </message>
    <message>
        <source>Learn nothing from finished layouts of the row.</source>
        <translation>Nichts von abgeschlossenen Layouts der Reihe lernen.</translation>
    </message>
    <message>
        <source>Keep the forecast in the store for the track record. Not with --as-of.</source>
        <translation>Die Vorhersage für die Bewährung in der Datei behalten. Nicht mit --as-of.</translation>
    </message>
    <message>
        <source>--at takes days since flooding such as 10,14.5, not &quot;%1&quot;.</source>
        <translation>--at nimmt Tage seit dem Fluten wie 10,14.5, nicht „%1“.</translation>
    </message>
    <message>
        <source>Forecasts total ammonia, nitrite and nitrate as ranges, and the day on which the cycle is complete, with its odds. Not a promise: ask the kit before animals go in.</source>
        <translation>Sagt Gesamtammonium, Nitrit und Nitrat als Bereiche voraus, und den Tag, an dem die Einfahrphase abgeschlossen ist, mit seinen Chancen. Kein Versprechen: Frag den Test, bevor Tiere einziehen.</translation>
    </message>
    <message>
        <source>Name a tank with --tank, or ask for --all.</source>
        <translation>Nenne mit --tank ein Becken, oder verlange --all.</translation>
    </message>
    <message>
        <source>--keep is for the present: leave out --as-of.</source>
        <translation>--keep gilt für die Gegenwart: Lass --as-of weg.</translation>
    </message>
    <message>
        <source>It was not flooded until %1.</source>
        <translation>Es wurde erst am %1 geflutet.</translation>
    </message>
    <message>
        <source>Ask for a later day with --as-of.</source>
        <translation>Frag mit --as-of nach einem späteren Tag.</translation>
    </message>
    <message>
        <source>It has no layout yet.</source>
        <translation>Es hat noch kein Layout.</translation>
    </message>
    <message>
        <source>Readings clear for %1, %2:</source>
        <translation>Messwerte klar für %1, %2:</translation>
    </message>
    <message>
        <source>Readings clear for %1:</source>
        <translation>Messwerte klar für %1:</translation>
    </message>
    <message>
        <source>%1 by now, 9 in 10.</source>
        <translation>%1 bis jetzt, 9 von 10.</translation>
    </message>
    <message>
        <source>%1 by %2: %3; not by then: %4.</source>
        <translation>%1 bis %2: %3; bis dahin nicht: %4.</translation>
    </message>
    <message>
        <source>%1 by %2, 9 in 10; not by %3: %4.</source>
        <translation>%1 bis %2, 9 von 10; nicht bis %3: %4.</translation>
    </message>
    <message>
        <source>%1; not by %2: %3.</source>
        <translation>%1; nicht bis %2: %3.</translation>
    </message>
    <message>
        <source>Not complete within the horizon, by %1: %2.</source>
        <translation>Im Horizont nicht abgeschlossen, bis %1: %2.</translation>
    </message>
    <message>
        <source>Plan followed: what the record plans (water changes: %1).</source>
        <translation>Befolgter Plan: was im Journal geplant ist (Wasserwechsel: %1).</translation>
    </message>
    <message>
        <source>Plan followed: the cadence (water changes: %1).</source>
        <translation>Befolgter Plan: der Takt (Wasserwechsel: %1).</translation>
    </message>
    <message>
        <source>Plan followed: no water changes are planned.</source>
        <translation>Befolgter Plan: Es sind keine Wasserwechsel geplant.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Not fitted: the readings contradict the model, so the ranges are those of a tank without readings. Repeat the tests below.</source>
        <translation>Nicht angepasst: Die Messwerte widersprechen dem Modell, also sind die Bereiche die eines Beckens ohne Messwerte. Wiederhole die Tests unten.</translation>
    </message>
    <message>
        <source>Check this test: %1 %2 %3, %4, is hard to explain.</source>
        <translation>Prüfe diesen Test: %1 %2 %3, %4, ist schwer zu erklären.</translation>
    </message>
    <message>
        <source>%1, %2 as the kit would show</source>
        <translation>%1, %2, wie der Test es zeigen würde</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>5 in 10</source>
        <translation>5 von 10</translation>
    </message>
    <message>
        <source>8 in 10</source>
        <translation>8 von 10</translation>
    </message>
    <message>
        <source>%1, layout %2, day %3 (%4)</source>
        <translation>%1, Layout %2, Tag %3 (%4)</translation>
    </message>
    <message>
        <source>Cycle complete</source>
        <translation>Einfahrphase abgeschlossen</translation>
    </message>
    <message>
        <source>Assumed: %1</source>
        <translation>Angenommen: %1</translation>
    </message>
    <message>
        <source>Learned: %1</source>
        <translation>Gelernt: %1</translation>
    </message>
    <message>
        <source>Would write: tanks %1, readings %2, entries %3. There already: %4.</source>
        <translation>Würde schreiben: Becken %1, Messwerte %2, Einträge %3. Schon da: %4.</translation>
    </message>
    <message>
        <source>Written: tanks %1, readings %2, entries %3. There already: %4.</source>
        <translation>Geschrieben: Becken %1, Messwerte %2, Einträge %3. Schon da: %4.</translation>
    </message>
    <message>
        <source>Brings in readings and entries from CSV files and whole tanks from JSON files. All files are one change: if a single row is wrong, nothing is written. What is there already is skipped, so a file may be brought in again.</source>
        <translation>Liest Messwerte und Einträge aus CSV-Dateien ein und ganze Becken aus JSON-Dateien. Alle Dateien sind eine Änderung: Ist eine einzige Zeile falsch, wird nichts geschrieben. Was schon da ist, wird übergangen, also darf eine Datei noch einmal eingelesen werden.</translation>
    </message>
    <message>
        <source>Files to bring in, in this order.</source>
        <translation>Einzulesende Dateien, in dieser Reihenfolge.</translation>
    </message>
    <message>
        <source>Check and count; write nothing.</source>
        <translation>Prüfen und zählen; nichts schreiben.</translation>
    </message>
    <message>
        <source>Print the summary as JSON.</source>
        <translation>Die Zusammenfassung als JSON ausgeben.</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>Shows which tests of the coming week are expected to narrow the date of a gate, or of the end of the cycle, most, and what each answer would tell.</source>
        <translation>Zeigt, welche Tests der kommenden Woche das Datum einer Freigabe oder das Ende der Einfahrphase voraussichtlich am meisten einengen, und was jede Antwort sagen würde.</translation>
    </message>
    <message>
        <source>Write JSON.</source>
        <translation>JSON schreiben.</translation>
    </message>
    <message>
        <source>G1 to G4, or &quot;complete&quot; for the end of the cycle; the next gate that is not open yet if not given.</source>
        <translation>G1 bis G4, oder „complete“ für das Ende der Einfahrphase; ohne Angabe die nächste noch nicht offene Freigabe.</translation>
    </message>
    <message>
        <source>Name a tank with --tank.</source>
        <translation>Nenne mit --tank ein Becken.</translation>
    </message>
    <message>
        <source>There is no gate &quot;%1&quot;; they are G1 to G4.</source>
        <translation>Es gibt keine Freigabe „%1“; es sind G1 bis G4.</translation>
    </message>
    <message>
        <source>later</source>
        <translation>später</translation>
    </message>
    <message>
        <source>%1 or later</source>
        <translation>%1 oder später</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Litres</source>
        <translation>Liter</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>Hours NO2</source>
        <translation>Std. NO2</translation>
    </message>
    <message>
        <source>Hours NH3</source>
        <translation>Std. NH3</translation>
    </message>
    <message>
        <source>Readings clear</source>
        <translation>Messwerte klar</translation>
    </message>
    <message>
        <source>Filter carries</source>
        <translation>Filter trägt</translation>
    </message>
    <message>
        <source>%1: water-change plans until readings are clear for %2; exposure over %3 days.</source>
        <translation>%1: Wasserwechselpläne, bis die Messwerte für %2 klar sind; Einwirkung über %3 Tage.</translation>
    </message>
    <message>
        <source>Hours: nitrite above %1, free ammonia above %2.</source>
        <translation>Stunden: Nitrit über %1, freies Ammoniak über %2.</translation>
    </message>
    <message>
        <source>There is no plan of that number to adopt; they go from 1 to %1.</source>
        <translation>Einen Plan dieser Nummer gibt es nicht zu übernehmen; sie gehen von 1 bis %1.</translation>
    </message>
    <message>
        <source>Planned water changes put in: %1; taken out: %2.</source>
        <translation>Geplante Wasserwechsel eingesetzt: %1; herausgenommen: %2.</translation>
    </message>
    <message>
        <source>Compares schedules of water changes on the fitted odds of one tank: water, exposure, when readings clear, and apart from it whether the filter would carry the load. Not proof that animals are safe: ask the kit before they go in.</source>
        <translation>Vergleicht Takte von Wasserwechseln nach den angepassten Chancen eines Beckens: Wasser, Einwirkung, wann die Messwerte klar sind, und davon getrennt, ob der Filter die Belastung trüge. Kein Beweis, dass Tiere sicher sind: Frag den Test, bevor sie einziehen.</translation>
    </message>
    <message>
        <source>With --under: the plan with the least water that keeps the odds of nitrite above this, in mg/L NO2, under that.</source>
        <translation>Mit --under: der Plan mit dem wenigsten Wasser, der die Chance auf Nitrit über diesem Wert, in mg/L NO2, darunter hält.</translation>
    </message>
    <message>
        <source>See --max-nitrite; 10 means 1 in 10.</source>
        <translation>Siehe --max-nitrite; 10 heißt 1 von 10.</translation>
    </message>
    <message>
        <source>List every plan, not only the few that differ most.</source>
        <translation>Jeden Plan aufführen, nicht nur die wenigen, die sich am meisten unterscheiden.</translation>
    </message>
    <message>
        <source>Put the plan&apos;s changes into the record in place of those planned now. Undo takes it back.</source>
        <translation>Die Wechsel des Plans anstelle der jetzt geplanten ins Journal setzen. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>--max-nitrite and --under go together.</source>
        <translation>--max-nitrite und --under gehören zusammen.</translation>
    </message>
    <message>
        <source>no. %1, %2</source>
        <translation>Nr. %1, %2</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>What for</source>
        <translation>Wofür</translation>
    </message>
    <message>
        <source>littoralctl reckon SHEET shows what a sheet takes.</source>
        <translation>littoralctl reckon BLATT zeigt, was ein Blatt nimmt.</translation>
    </message>
    <message>
        <source>%1 if not given</source>
        <translation>%1, wenn nicht angegeben</translation>
    </message>
    <message>
        <source>may be left out</source>
        <translation>darf weggelassen werden</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Meaning</source>
        <translation>Bedeutung</translation>
    </message>
    <message>
        <source>When empty</source>
        <translation>Wenn leer</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>What else moves</source>
        <translation>Was sich sonst bewegt</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Dann</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Caution (%1): %2</source>
        <translation>Vorsicht (%1): %2</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>--tank and --store go together.</source>
        <translation>--tank und --store gehören zusammen.</translation>
    </message>
    <message>
        <source>Reckons one worksheet. Without a sheet it lists them all; a sheet alone shows what it takes. Bare numbers go to its inputs in order; a doubt may follow one, as in kh=4±0.5.</source>
        <translation>Rechnet ein Rechenblatt. Ohne Blatt führt es alle auf; ein Blatt allein zeigt, was es nimmt. Bloße Zahlen gehen der Reihe nach an seine Eingaben; eine Unsicherheit darf folgen, wie in kh=4±0.5.</translation>
    </message>
    <message>
        <source>The sheet, one word.</source>
        <translation>Das Blatt, ein Wort.</translation>
    </message>
    <message>
        <source>Its inputs.</source>
        <translation>Seine Eingaben.</translation>
    </message>
    <message>
        <source>Fill what is not given from this tank&apos;s newest readings.</source>
        <translation>Was nicht angegeben ist, aus den neuesten Messwerten dieses Beckens füllen.</translation>
    </message>
    <message>
        <source>The store the tank is in.</source>
        <translation>Die Datei, in der das Becken ist.</translation>
    </message>
    <message>
        <source>Kept forecasts: %1.</source>
        <translation>Aufbewahrte Vorhersagen: %1.</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>In 5 of 10</source>
        <translation>In 5 von 10</translation>
    </message>
    <message>
        <source>In 8 of 10</source>
        <translation>In 8 von 10</translation>
    </message>
    <message>
        <source>In 19 of 20</source>
        <translation>In 19 von 20</translation>
    </message>
    <message>
        <source>Against last reading</source>
        <translation>Gegen letzten Messwert</translation>
    </message>
    <message>
        <source>Shows how forecasts that were kept turned out: how many later readings their bands held, how far off their middles were, and how their dates held. The workbench keeps forecasts by itself, &quot;forecast&quot; with --keep.</source>
        <translation>Zeigt, wie sich aufbewahrte Vorhersagen bewährten: wie viele spätere Messwerte ihre Bänder enthielten, wie weit ihre Mitten daneben lagen, und wie ihre Daten hielten. Die Werkbank behält Vorhersagen von selbst, „forecast“ mit --keep.</translation>
    </message>
    <message>
        <source>Trouble began on %1.</source>
        <translation>Die Schwierigkeiten begannen am %1.</translation>
    </message>
    <message>
        <source>Nothing on record went wrong; the days before %1 are looked at.</source>
        <translation>Nichts Aufgezeichnetes ging schief; betrachtet werden die Tage vor dem %1.</translation>
    </message>
    <message>
        <source>What changed from %1 to %2, largest first</source>
        <translation>Was sich vom %1 bis %2 änderte, das Größte zuerst</translation>
    </message>
    <message>
        <source>Nothing that stands apart from this layout&apos;s own record.</source>
        <translation>Nichts, was sich vom eigenen Journal dieses Layouts abhebt.</translation>
    </message>
    <message>
        <source>In the readings:</source>
        <translation>In den Messwerten:</translation>
    </message>
    <message>
        <source>Coming before is not causing: it takes dose, order in time and a way in which it acts.</source>
        <translation>Vorausgehen ist nicht verursachen: Es braucht Dosis, zeitliche Folge und einen Weg, auf dem es wirkt.</translation>
    </message>
    <message>
        <source>Change points in the readings (Pettitt&apos;s test)</source>
        <translation>Sprungstellen in den Messwerten (Pettitt-Test)</translation>
    </message>
    <message>
        <source>None found, or too few readings.</source>
        <translation>Keine gefunden, oder zu wenige Messwerte.</translation>
    </message>
    <message>
        <source>Exposure since flooding, straight lines between readings</source>
        <translation>Einwirkung seit dem Fluten, gerade Linien zwischen den Messwerten</translation>
    </message>
    <message>
        <source>No readings to reckon it from.</source>
        <translation>Keine Messwerte, aus denen sie sich rechnen ließe.</translation>
    </message>
    <message>
        <source>Reviews a tank: what changed in the 21 days before trouble began, where its readings changed level, and the hours it spent beyond limits.</source>
        <translation>Blickt auf ein Becken zurück: was sich in den 21 Tagen vor dem Beginn der Schwierigkeiten änderte, wo seine Messwerte ihre Höhe wechselten, und wie viele Stunden es jenseits der Grenzen lag.</translation>
    </message>
    <message>
        <source>When trouble began; found in the record if not given.</source>
        <translation>Wann die Schwierigkeiten begannen; ohne Angabe aus dem Journal.</translation>
    </message>
    <message>
        <source>That is before the layout was flooded.</source>
        <translation>Das ist, bevor das Layout geflutet wurde.</translation>
    </message>
    <message>
        <source>Make a new, empty store.</source>
        <translation>Eine neue, leere Datei anlegen.</translation>
    </message>
    <message>
        <source>Make a store with the invented sample row.</source>
        <translation>Eine Datei mit der erfundenen Beispielreihe anlegen.</translation>
    </message>
    <message>
        <source>Add a tank, list the row, show one tank.</source>
        <translation>Ein Becken hinzufügen, die Reihe aufführen, ein Becken zeigen.</translation>
    </message>
    <message>
        <source>Bring in readings, entries and whole tanks.</source>
        <translation>Messwerte, Einträge und ganze Becken einlesen.</translation>
    </message>
    <message>
        <source>Show what is overdue, due and to come, and why.</source>
        <translation>Zeigen, was überfällig, fällig und zu erwarten ist, und warum.</translation>
    </message>
    <message>
        <source>Show the water the row needs day by day, and where large changes collide.</source>
        <translation>Tag für Tag zeigen, welches Wasser die Reihe braucht, und wo große Wechsel zusammentreffen.</translation>
    </message>
    <message>
        <source>Forecast ammonia, nitrite, nitrate and the end of the cycle.</source>
        <translation>Ammonium, Nitrit, Nitrat und das Ende der Einfahrphase vorhersagen.</translation>
    </message>
    <message>
        <source>Weigh what was seen and read, and name the look that decides best.</source>
        <translation>Gesehenes und Gemessenes wägen, und den Blick nennen, der am besten entscheidet.</translation>
    </message>
    <message>
        <source>Show what changed before trouble began, change points and exposure.</source>
        <translation>Zeigen, was sich vor den Schwierigkeiten änderte, Sprungstellen und Einwirkung.</translation>
    </message>
    <message>
        <source>Compare water-change plans, adopt one.</source>
        <translation>Wasserwechselpläne vergleichen, einen übernehmen.</translation>
    </message>
    <message>
        <source>Show which test would narrow the dates most.</source>
        <translation>Zeigen, welcher Test die Daten am meisten einengen würde.</translation>
    </message>
    <message>
        <source>Show how earlier forecasts turned out.</source>
        <translation>Zeigen, wie sich frühere Vorhersagen bewährten.</translation>
    </message>
    <message>
        <source>Reckon a worksheet: water changes, doses, CO2, ammonia and more.</source>
        <translation>Ein Rechenblatt rechnen: Wasserwechsel, Dosen, CO2, Ammoniak und mehr.</translation>
    </message>
    <message>
        <source>Write everything as CSV and JSON.</source>
        <translation>Alles als CSV und JSON schreiben.</translation>
    </message>
    <message>
        <source>Check a store from end to end.</source>
        <translation>Eine Datei von vorn bis hinten prüfen.</translation>
    </message>
    <message>
        <source>Copy a store, also one in use.</source>
        <translation>Eine Datei kopieren, auch eine in Gebrauch.</translation>
    </message>
    <message>
        <source>Usage: littoralctl VERB FILE [options]</source>
        <translation>Aufruf: littoralctl VERB DATEI [Optionen]</translation>
    </message>
    <message>
        <source>The record of a row of planted freshwater tanks, for scripts and for machines without a screen.</source>
        <translation>Das Journal einer Reihe bepflanzter Süßwasserbecken, für Skripte und für Rechner ohne Bildschirm.</translation>
    </message>
    <message>
        <source>Verb</source>
        <translation>Verb</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Was es tut</translation>
    </message>
    <message>
        <source>littoralctl VERB --help shows a verb&apos;s options and examples.</source>
        <translation>littoralctl VERB --help zeigt die Optionen und Beispiele eines Verbs.</translation>
    </message>
    <message>
        <source>Exit codes: 0 done; 1 a file or the store failed; 2 usage; 3 input refused; 4 verify found problems.</source>
        <translation>Rückgabewerte: 0 erledigt; 1 eine Datei versagte; 2 Aufruf; 3 Eingabe abgelehnt; 4 verify fand Mängel.</translation>
    </message>
    <message>
        <source>There is no verb &quot;%1&quot;. Did you mean &quot;%2&quot;?</source>
        <translation>Es gibt kein Verb „%1“. War „%2“ gemeint?</translation>
    </message>
    <message>
        <source>There is no verb &quot;%1&quot;. See: littoralctl --help</source>
        <translation>Es gibt kein Verb „%1“. Siehe: littoralctl --help</translation>
    </message>
    <message>
        <source>Makes a new, empty store. An existing file is left alone.</source>
        <translation>Legt eine neue, leere Datei an. Eine vorhandene Datei bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>Makes a store with the invented sample row, its dates moved so that today is today. An existing file is left alone.</source>
        <translation>Legt eine Datei mit der erfundenen Beispielreihe an, deren Daten so verschoben sind, dass heute heute ist. Eine vorhandene Datei bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>Writes readings.csv, entries.csv and one JSON file per tank into a directory. Photographs stay in the store.</source>
        <translation>Schreibt readings.csv, entries.csv und eine JSON-Datei je Becken in einen Ordner. Fotos bleiben in der Datei.</translation>
    </message>
    <message>
        <source>Where to write; made if it is not there.</source>
        <translation>Wohin geschrieben wird; wird angelegt, wenn es fehlt.</translation>
    </message>
    <message>
        <source>Replace files of an earlier export.</source>
        <translation>Dateien eines früheren Exports ersetzen.</translation>
    </message>
    <message>
        <source>Checks the whole store: the database, the links between records, and the record&apos;s own rules. Changes nothing. Exit code 4 when there are problems.</source>
        <translation>Prüft die ganze Datei: die Datenbank, die Verweise zwischen den Datensätzen und die eigenen Regeln des Journals. Ändert nichts. Rückgabewert 4, wenn es Mängel gibt.</translation>
    </message>
    <message>
        <source>Schema %1. Tanks %2, layouts %3, readings %4, entries %5, tasks %6, photographs %7.</source>
        <translation>Schema %1. Becken %2, Layouts %3, Messwerte %4, Einträge %5, Aufgaben %6, Fotos %7.</translation>
    </message>
    <message>
        <source>The store is sound.</source>
        <translation>Die Datei ist in Ordnung.</translation>
    </message>
    <message>
        <source>Copies a store, also one that is in use, and checks the copy. An existing file is left alone.</source>
        <translation>Kopiert eine Datei, auch eine in Gebrauch, und prüft die Kopie. Eine vorhandene Datei bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>The copy to make.</source>
        <translation>Die zu machende Kopie.</translation>
    </message>
    <message>
        <source>--%1 takes one of %2, not &quot;%3&quot;.</source>
        <translation>--%1 nimmt eines von %2, nicht „%3“.</translation>
    </message>
    <message>
        <source>Adds a tank with its first layout. Whole tanks with their record come in from a JSON file: littoralctl import --help.</source>
        <translation>Fügt ein Becken mit seinem ersten Layout hinzu. Ganze Becken mit ihrem Journal kommen aus einer JSON-Datei: littoralctl import --help.</translation>
    </message>
    <message>
        <source>What you call it.</source>
        <translation>Wie du es nennst.</translation>
    </message>
    <message>
        <source>Outside length.</source>
        <translation>Länge außen.</translation>
    </message>
    <message>
        <source>Outside depth, front to back.</source>
        <translation>Tiefe außen, von vorn nach hinten.</translation>
    </message>
    <message>
        <source>Outside height.</source>
        <translation>Höhe außen.</translation>
    </message>
    <message>
        <source>Thickness of the glass; 6 if not given.</source>
        <translation>Stärke des Glases; ohne Angabe 6.</translation>
    </message>
    <message>
        <source>Rim to water; 3 if not given.</source>
        <translation>Rand bis Wasser; ohne Angabe 3.</translation>
    </message>
    <message>
        <source>Water in it as measured on the day it was flooded.</source>
        <translation>Wasser darin, wie am Tag der Flutung gemessen.</translation>
    </message>
    <message>
        <source>When it was filled; now if not given.</source>
        <translation>Wann es gefüllt wurde; ohne Angabe jetzt.</translation>
    </message>
    <message>
        <source>One of %1.</source>
        <translation>Eines von %1.</translation>
    </message>
    <message>
        <source>Soil or sand in it.</source>
        <translation>Soil oder Sand darin.</translation>
    </message>
    <message>
        <source>Rock in it.</source>
        <translation>Gestein darin.</translation>
    </message>
    <message>
        <source>24 if not given.</source>
        <translation>Ohne Angabe 24.</translation>
    </message>
    <message>
        <source>A source water that is in the store.</source>
        <translation>Ein Ausgangswasser, das in der Datei ist.</translation>
    </message>
    <message>
        <source>--name is needed.</source>
        <translation>--name wird gebraucht.</translation>
    </message>
    <message>
        <source>Give --net-litres, or --length-cm, --depth-cm and --height-cm with room for water.</source>
        <translation>Gib --net-litres an, oder --length-cm, --depth-cm und --height-cm mit Platz für Wasser.</translation>
    </message>
    <message>
        <source>There is a tank &quot;%1&quot; already.</source>
        <translation>Ein Becken „%1“ gibt es schon.</translation>
    </message>
    <message>
        <source>Lists the tanks in row order.</source>
        <translation>Führt die Becken in der Ordnung der Reihe auf.</translation>
    </message>
    <message>
        <source>Shows one tank: its layout, newest readings and last entries. --json prints its whole record, as import takes it.</source>
        <translation>Zeigt ein Becken: sein Layout, die neuesten Messwerte und die letzten Einträge. --json gibt sein ganzes Journal aus, wie import es nimmt.</translation>
    </message>
    <message>
        <source>Usage: littoralctl tank add|list|show FILE [options]
Each has its own --help.</source>
        <translation>Aufruf: littoralctl tank add|list|show DATEI [Optionen]
Jedes hat sein eigenes --help.</translation>
    </message>
    <message>
        <source>Layout %1, flooded %2, day %3.</source>
        <translation>Layout %1, geflutet %2, Tag %3.</translation>
    </message>
    <message>
        <source>Start: %1. Bed: %2. Plants: %3. CO2: %4.</source>
        <translation>Start: %1. Bodengrund: %2. Pflanzen: %3. CO2: %4.</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Becken</translation>
    </message>
    <message>
        <source>Flooded</source>
        <translation>Geflutet</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Bodengrund</translation>
    </message>
    <message>
        <source>Newest reading</source>
        <translation>Neuester Messwert</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Last entries</source>
        <translation>Letzte Einträge</translation>
    </message>
    <message>
        <source>Large changes collide; %1 has none.</source>
        <translation>Große Wechsel treffen zusammen; %1 hat keinen.</translation>
    </message>
    <message>
        <source>Large changes collide.</source>
        <translation>Große Wechsel treffen zusammen.</translation>
    </message>
    <message>
        <source>No water changes are due in these days.</source>
        <translation>In diesen Tagen ist kein Wasserwechsel fällig.</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>Insgesamt</translation>
    </message>
    <message>
        <source>Conditioner, mL</source>
        <translation>Aufbereiter, mL</translation>
    </message>
    <message>
        <source>Tanks</source>
        <translation>Becken</translation>
    </message>
    <message>
        <source>%1 has no measures: its litres are missing from the sums.</source>
        <translation>%1 hat keine Maße: Seine Liter fehlen in den Summen.</translation>
    </message>
    <message>
        <source>Shows the water the whole row needs day by day: litres, tap water to treat, demineralised water, and the days on which large changes fall together.</source>
        <translation>Zeigt Tag für Tag das Wasser, das die ganze Reihe braucht: Liter, aufzubereitendes Leitungswasser, entsalztes Wasser, und die Tage, an denen große Wechsel zusammentreffen.</translation>
    </message>
    <message>
        <source>How many days, 1 to 92; 14 if not given.</source>
        <translation>Wie viele Tage, 1 bis 92; ohne Angabe 14.</translation>
    </message>
    <message>
        <source>Millilitres of conditioner for 100 L of new water, as its label says.</source>
        <translation>Milliliter Aufbereiter auf 100 L neues Wasser, wie sein Etikett sagt.</translation>
    </message>
    <message>
        <source>There is no language &quot;%1&quot;. There are: %2.</source>
        <translation>Es gibt keine Sprache „%1“. Es gibt: %2.</translation>
    </message>
    <message>
        <source>--language de makes it speak German; data (--csv, --json) keep their form in every language.</source>
        <translation>Mit --language de spricht es Deutsch; Daten (--csv, --json) behalten in jeder Sprache ihre Form.</translation>
    </message>
    <message>
        <source>Water, %1</source>
        <translation>Wasser, %1</translation>
    </message>
    <message>
        <source>Readings clear: 8 in 10. Water and changes: until then.</source>
        <translation>Messwerte klar: 8 von 10. Wasser und Wechsel: bis dahin.</translation>
    </message>
    <message>
        <source>Water: %1 %2, reckoned from the dimensions.</source>
        <translation>Wasser: %1 %2, aus den Maßen gerechnet.</translation>
    </message>
    <message>
        <source>Water: %1 %2, measured.</source>
        <translation>Wasser: %1 %2, gemessen.</translation>
    </message>
    <message>
        <source>To treat, %1</source>
        <translation>Aufzubereiten, %1</translation>
    </message>
    <message>
        <source>Demineralised, %1</source>
        <translation>Entsalzt, %1</translation>
    </message>
    <message>
        <source>Tasks</source>
        <translation>Aufgaben</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>The whole row</source>
        <translation>Die ganze Reihe</translation>
    </message>
    <message>
        <source>Day by day, all tanks</source>
        <translation>Tag für Tag, alle Becken</translation>
    </message>
    <message>
        <source>%1: it cannot be written: %2</source>
        <translation>%1: lässt sich nicht schreiben: %2</translation>
    </message>
    <message>
        <source>Shows for each tank what is overdue, due, and due in the next seven days, and why. With --days also the minutes and litres of each day over all tanks, and the days on which large water changes collide.</source>
        <translation>Zeigt für jedes Becken, was überfällig, fällig und in den nächsten sieben Tagen fällig ist, und warum. Mit --days auch die Minuten und Liter jedes Tages über alle Becken und die Tage, an denen große Wasserwechsel zusammentreffen.</translation>
    </message>
    <message>
        <source>So many days ahead, 1 to 92, with the load of each day.</source>
        <translation>So viele Tage voraus, 1 bis 92, mit der Last jedes Tages.</translation>
    </message>
    <message>
        <source>Write an iCalendar file; - for standard output.</source>
        <translation>Eine iCalendar-Datei schreiben; - für die Standardausgabe.</translation>
    </message>
    <message>
        <source>Choose one of --json, --csv and --ics.</source>
        <translation>Eines von --json, --csv und --ics wählen.</translation>
    </message>
    <message>
        <source>Who decides</source>
        <translation>Wer entscheidet</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Odds that its water stays clear from a day on: %1</source>
        <translation>Chance, dass das Wasser ab einem Tag unbelastet bleibt: %1</translation>
    </message>
    <message>
        <source>Rule: %1.</source>
        <translation>Regel: %1.</translation>
    </message>
    <message>
        <source>The layout is not flooded yet.</source>
        <translation>Die Einrichtung ist noch nicht geflutet.</translation>
    </message>
    <message>
        <source>No odds: %1</source>
        <translation>Keine Chancen: %1</translation>
    </message>
    <message>
        <source>Not waited for on %1 (%2): %3 Tests and looks follow every day for a week.</source>
        <translation>Nicht abgewartet am %1 (%2): %3 Eine Woche lang folgen jeden Tag Tests und Kontrollblicke.</translation>
    </message>
    <message>
        <source>Shows for each gate every condition, how it stands and the reading that decides it, the odds by date, and what was not waited for. A gate is judgement, not proof: ask the kit before animals go in.</source>
        <translation>Zeigt für jede Freigabe jede Bedingung, wie sie steht und welcher Messwert sie entscheidet, die Chancen nach Datum und was nicht abgewartet wurde. Eine Freigabe ist Abwägung, kein Beweis: Vor dem Einsetzen von Tieren den Test befragen.</translation>
    </message>
    <message>
        <source>Nothing.</source>
        <translation>Nichts.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsichtshinweise</translation>
    </message>
    <message>
        <source>Helper&apos;s sheet: %1</source>
        <translation>Blatt für den Helfer: %1</translation>
    </message>
    <message>
        <source>When all is well</source>
        <translation>Wenn alles in Ordnung ist</translation>
    </message>
    <message>
        <source>Every day</source>
        <translation>Jeden Tag</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>On its day</source>
        <translation>An seinem Tag</translation>
    </message>
    <message>
        <source>Do not</source>
        <translation>Nicht tun</translation>
    </message>
    <message>
        <source>Call when</source>
        <translation>Anrufen, wenn</translation>
    </message>
    <message>
        <source>Journey %1</source>
        <translation>Reise %1</translation>
    </message>
    <message>
        <source>To prepare</source>
        <translation>Vorzubereiten</translation>
    </message>
    <message>
        <source>Before leaving</source>
        <translation>Vor der Abreise</translation>
    </message>
    <message>
        <source>Waits until the return</source>
        <translation>Wartet bis zur Rückkehr</translation>
    </message>
    <message>
        <source>On the day of return</source>
        <translation>Am Tag der Rückkehr</translation>
    </message>
    <message>
        <source>The helper&apos;s tasks: %1 minutes and %2 over the journey, daily looks not counted.</source>
        <translation>Die Aufgaben des Helfers: %1 Minuten und %2 über die Reise, tägliche Kontrollblicke nicht mitgezählt.</translation>
    </message>
    <message>
        <source>No journey is in the store: give --from and --to.</source>
        <translation>In der Datei ist keine Reise: --from und --to angeben.</translation>
    </message>
    <message>
        <source>--from and --to go together.</source>
        <translation>--from und --to gehören zusammen.</translation>
    </message>
    <message>
        <source>Splits the work of a journey: what is to be done before leaving, what a helper does, what waits; with a helper&apos;s sheet for each tank. Without days the journey in the store is taken.</source>
        <translation>Teilt die Arbeit einer Reise auf: was vor der Abreise zu tun ist, was ein Helfer übernimmt, was wartet; mit einem Helferblatt für jedes Becken. Ohne Tage gilt die Reise in der Datei.</translation>
    </message>
    <message>
        <source>The day of leaving.</source>
        <translation>Der Tag der Abreise.</translation>
    </message>
    <message>
        <source>The day of return.</source>
        <translation>Der Tag der Rückkehr.</translation>
    </message>
    <message>
        <source>Who helps.</source>
        <translation>Wer hilft.</translation>
    </message>
    <message>
        <source>Whom to call; several are parted by a semicolon.</source>
        <translation>Wer anzurufen ist; mehrere werden durch ein Semikolon getrennt.</translation>
    </message>
    <message>
        <source>Keep the journey in the store.</source>
        <translation>Die Reise in der Datei behalten.</translation>
    </message>
    <message>
        <source>Print text, as without it.</source>
        <translation>Text ausgeben, wie ohne diese Option.</translation>
    </message>
    <message>
        <source>%1 Records of knowledge: %2.</source>
        <translation>%1 Wissenseinträge: %2.</translation>
    </message>
    <message>
        <source>%1 Journeys: %2.</source>
        <translation>%1 Reisen: %2.</translation>
    </message>
    <message>
        <source>%1 Supplies: %2.</source>
        <translation>%1 Vorräte: %2.</translation>
    </message>
    <message>
        <source>For example: littoralctl reckon %1 %2</source>
        <translation>Zum Beispiel: littoralctl reckon %1 %2</translation>
    </message>
    <message>
        <source>Carry on, or start afresh: both forecast</source>
        <translation>Weiterführen oder neu anfangen: Vorhersage für beides</translation>
    </message>
    <message>
        <source>%1: carrying on %2, changes until then %3; starting afresh %4, changes until then %5</source>
        <translation>%1: weiterführen %2, Wechsel bis dahin %3; neu anfangen %4, Wechsel bis dahin %5</translation>
    </message>
    <message>
        <source>How a fresh start would begin: new-media (if not given), mature-media or starter.</source>
        <translation>Wie ein Neuanfang beginnen würde: new-media (wenn nicht angegeben), mature-media oder starter.</translation>
    </message>
    <message>
        <source>Do not forecast carrying on against starting afresh.</source>
        <translation>Keine Vorhersage für Weiterführen gegen Neuanfang erstellen.</translation>
    </message>
    <message>
        <source>--start takes new-media, mature-media or starter.</source>
        <translation>--start nimmt new-media, mature-media oder starter.</translation>
    </message>
    <message>
        <source>Split the work of a journey: before, the helper, after.</source>
        <translation>Die Arbeit einer Reise aufteilen: vorher, der Helfer, nachher.</translation>
    </message>
    <message>
        <source>Show every gate&apos;s conditions, what decides them, and the odds by date.</source>
        <translation>Die Bedingungen jeder Freigabe zeigen, was sie entscheidet, und die Chancen nach Datum.</translation>
    </message>
    <message>
        <source>Show what is in stock, how long it lasts, and what is past its date.</source>
        <translation>Zeigen, was vorrätig ist, wie lange es reicht und was abgelaufen ist.</translation>
    </message>
    <message>
        <source>past its date</source>
        <translation>abgelaufen</translation>
    </message>
    <message>
        <source>get it now</source>
        <translation>jetzt besorgen</translation>
    </message>
    <message>
        <source>ok</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>Nothing is kept in stock in this store yet, and no test kit has a date.</source>
        <translation>In dieser Datei ist noch kein Vorrat erfasst, und kein Testbesteck hat ein Datum.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Rest</translation>
    </message>
    <message>
        <source>Lasts</source>
        <translation>Reicht</translation>
    </message>
    <message>
        <source>Shows what is in stock: what is left by the doses, water changes and weighings on record, how long it lasts at the present use, and what is past its date.</source>
        <translation>Zeigt, was vorrätig ist: was nach den eingetragenen Dosen, Wasserwechseln und Wägungen übrig ist, wie lange es beim jetzigen Verbrauch reicht und was abgelaufen ist.</translation>
    </message>
    <message>
        <source>Source water: %1. %2</source>
        <translation>Ausgangswasser: %1. %2</translation>
    </message>
    <message>
        <source>Dosed: %1.</source>
        <translation>Dosiert: %1.</translation>
    </message>
    <message>
        <source>%1 L of %2</source>
        <translation>%1 L %2</translation>
    </message>
    <message>
        <source>Waters in all: %1.</source>
        <translation>Wasser insgesamt: %1.</translation>
    </message>
    <message>
        <source>The parts of &quot;%1&quot; are not stated: all of it is counted as water to treat. Name its two waters and their share.</source>
        <translation>Die Anteile von „%1“ sind nicht angegeben: Alles zählt als aufzubereitendes Wasser. Die beiden Wässer und ihren Anteil nennen.</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>A workbench for keepers of several planted aquariums.</source>
        <translation>Eine Werkbank für alle, die mehrere bepflanzte Aquarien halten.</translation>
    </message>
    <message>
        <source>Open the invented sample row, as a copy in its own file.</source>
        <translation>Die erfundene Beispielreihe öffnen, als Kopie in einer eigenen Datei.</translation>
    </message>
    <message>
        <source>The store to open (*.littoral); the last one when not given.</source>
        <translation>Die zu öffnende Datei (*.littoral); ohne Angabe die letzte.</translation>
    </message>
    <message>
        <source>Give the file to write and the store: littoral --report row FILE.pdf row.littoral</source>
        <translation>Die zu schreibende Datei und den Datenbestand angeben: littoral --report row FILE.pdf row.littoral</translation>
    </message>
    <message>
        <source>Write a report as a PDF and end: %1. Then the file to write and the store.</source>
        <translation>Einen Bericht als PDF schreiben und beenden: %1. Danach die zu schreibende Datei und den Datenbestand.</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>The tank whose case is reported.</source>
        <translation>Das Becken, über dessen Fall berichtet wird.</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Order the round sheet kit by kit instead of tank by tank.</source>
        <translation>Das Rundenblatt nach Tests statt nach Becken ordnen.</translation>
    </message>
</context>
</TS>
