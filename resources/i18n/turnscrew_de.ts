<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en_GB">
<context>
    <name>BringNotes</name>
    <message>
        <source>There are no notes on this unit's maker and model.</source>
        <translation>Zu Hersteller und Modell dieses Geräts gibt es keine Notizen.</translation>
    </message>
</context>
<context>
    <name>FieldWords</name>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Soll</translation>
    </message>
    <message>
        <source>± 95 %</source>
        <translation>± 95 %</translation>
    </message>
    <message>
        <source>Phase</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Bedingungen</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Ursache</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Time to fix</source>
        <translation>Reparaturzeit</translation>
    </message>
    <message>
        <source>Cost to fix</source>
        <translation>Reparaturkosten</translation>
    </message>
    <message>
        <source>Odds of the fix</source>
        <translation>Aussicht der Reparatur</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Price each</source>
        <translation>Stückpreis</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>In place of</source>
        <translation>Statt</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Seit</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>Came out</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Left out because</source>
        <translation>Weggelassen, weil</translation>
    </message>
    <message>
        <source>What came off</source>
        <translation>Was abgenommen wurde</translation>
    </message>
    <message>
        <source>Fasteners</source>
        <translation>Befestigung</translation>
    </message>
    <message>
        <source>Kept in</source>
        <translation>Liegt in</translation>
    </message>
    <message>
        <source>Connectors</source>
        <translation>Steckverbinder</translation>
    </message>
    <message>
        <source>Springs, washers</source>
        <translation>Federn, Scheiben</translation>
    </message>
    <message>
        <source>Marks made</source>
        <translation>Gesetzte Marken</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Warnhinweis</translation>
    </message>
    <message>
        <source>Claim</source>
        <translation>Angabe</translation>
    </message>
    <message>
        <source>Looks</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>Function</source>
        <translation>Funktion</translation>
    </message>
    <message>
        <source>Earlier work</source>
        <translation>Frühere Arbeiten</translation>
    </message>
    <message>
        <source>With it</source>
        <translation>Dabei</translation>
    </message>
    <message>
        <source>For what</source>
        <translation>Wofür</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Betrag</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>In the bench's money</source>
        <translation>In der Währung der Werkstatt</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
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
        <source>Soak</source>
        <translation>Dauerlauf</translation>
    </message>
    <message>
        <source>Interrupted</source>
        <translation>Unterbrochen</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Beendet</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Abnahme</translation>
    </message>
    <message>
        <source>By which rules</source>
        <translation>Nach welchen Regeln</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Prüfgerät</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Counts as</source>
        <translation>Zählt als</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Als Nächstes</translation>
    </message>
    <message>
        <source>Loose</source>
        <translation>Lose</translation>
    </message>
    <message>
        <source>Do not power</source>
        <translation>Nicht einschalten</translation>
    </message>
    <message>
        <source>Symptom</source>
        <translation>Symptom</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Bildunterschrift</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Way out</source>
        <translation>Ausweg</translation>
    </message>
</context>
<context>
    <name>LaneWords</name>
    <message>
        <source>Stages</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>Faults</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Teardown</source>
        <translation>Zerlegung</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>Geld</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Proofs and papers</source>
        <translation>Abnahmen und Papiere</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
</context>
<context>
    <name>PhotoTile</name>
    <message>
        <source>sheet</source>
        <translation>Blatt</translation>
    </message>
</context>
<context>
    <name>ValueWords</name>
    <message>
        <source>%1 is no uncertainty</source>
        <translation>%1 ist keine Unsicherheit</translation>
    </message>
    <message>
        <source>%1 was not changed</source>
        <translation>%1 wurde nicht geändert</translation>
    </message>
    <message>
        <source>number of pieces</source>
        <translation>Stückzahl</translation>
    </message>
    <message>
        <source>share</source>
        <translation>Anteil</translation>
    </message>
</context>
<context>
    <name>ts</name>
    <message>
        <source>“%1” is no time</source>
        <translation>„%1“ ist keine Zeit</translation>
    </message>
    <message>
        <source>write it as 4 h 30 m, 4:30 or 270</source>
        <translation>schreiben wie 4 h 30 m, 4:30 oder 270</translation>
    </message>
    <message>
        <source>“%1” is below zero</source>
        <translation>„%1“ ist unter null</translation>
    </message>
    <message>
        <source>This line is not planned</source>
        <translation>Diese Zeile wird nicht geplant</translation>
    </message>
    <message>
        <source>Plan: %1</source>
        <translation>Plan: %1</translation>
    </message>
    <message>
        <source>a figure taken out</source>
        <translation>ein Betrag herausgenommen</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Symptoms, causes and checks</source>
        <translation>Symptome, Ursachen und Prüfungen</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>In the log</source>
        <translation>Im Protokoll</translation>
    </message>
    <message>
        <source>Teardown</source>
        <translation>Zerlegung</translation>
    </message>
    <message>
        <source>Proofs</source>
        <translation>Abnahmen</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>Geld</translation>
    </message>
    <message>
        <source>Papers</source>
        <translation>Papiere</translation>
    </message>
    <message>
        <source>Of the bench</source>
        <translation>Der Werkstatt</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Gebraucht</translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation>Bestellt</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Da</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Eingebaut</translation>
    </message>
    <message>
        <source>A part has no price below nothing</source>
        <translation>Ein Teil hat keinen Preis unter null</translation>
    </message>
    <message>
        <source>leave the price empty where it is not known</source>
        <translation>Preis leer lassen, wo er nicht bekannt ist</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Price each</source>
        <translation>Stückpreis</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>Old value</source>
        <translation>Alter Wert</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Add a part: belt 78x4x0.6 2.50</source>
        <translation>Teil hinzufügen: belt 78x4x0.6 2.50</translation>
    </message>
    <message>
        <source>Add a part</source>
        <translation>Teil hinzufügen</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>gebraucht</translation>
    </message>
    <message>
        <source>ordered</source>
        <translation>bestellt</translation>
    </message>
    <message>
        <source>here</source>
        <translation>da</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>eingebaut</translation>
    </message>
    <message>
        <source>1 line</source>
        <translation>1 Zeile</translation>
    </message>
    <message>
        <source>%n lines</source>
        <translation>%n Zeilen</translation>
    </message>
    <message>
        <source>%n without a price</source>
        <translation>%n ohne Preis</translation>
    </message>
    <message>
        <source>The text</source>
        <translation>Der Text</translation>
    </message>
    <message>
        <source>A part needs a name</source>
        <translation>Ein Teil braucht einen Namen</translation>
    </message>
    <message>
        <source>take the line off the list instead</source>
        <translation>stattdessen die Zeile von der Liste nehmen</translation>
    </message>
    <message>
        <source>number of pieces</source>
        <translation>Stückzahl</translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation>%1 und noch %2</translation>
    </message>
    <message>
        <source>Soak runs for %1</source>
        <translation>Dauerlauf seit %1</translation>
    </message>
    <message>
        <source>Soak %1, %2</source>
        <translation>Dauerlauf %1, %2</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
    <message>
        <source>Waiting: %1</source>
        <translation>Wartet: %1</translation>
    </message>
    <message>
        <source>Sheet made; photos %1</source>
        <translation>Blatt erstellt; Fotos: %1</translation>
    </message>
    <message>
        <source>No sheet yet; photos %1</source>
        <translation>Noch kein Blatt; Fotos: %1</translation>
    </message>
    <message>
        <source>Asked %1</source>
        <translation>Angeboten für %1</translation>
    </message>
    <message>
        <source>Asked %1 on %2</source>
        <translation>Angeboten für %1 bei %2</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>Angeboten bei %1</translation>
    </message>
    <message>
        <source>Sold for %1</source>
        <translation>Verkauft für %1</translation>
    </message>
    <message>
        <source>was due %1</source>
        <translation>war fällig %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <source>do not power</source>
        <translation>nicht einschalten</translation>
    </message>
    <message>
        <source>mains caution</source>
        <translation>Vorsicht: Netz</translation>
    </message>
    <message>
        <source>%1 loose</source>
        <translation>%1 lose</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>It stands right on the limit: no meter settles that.</source>
        <translation>Der Wert liegt genau auf der Grenze: Das klärt kein Messgerät.</translation>
    </message>
    <message>
        <source>A meter good to %1 would settle it; none of the bench's is.</source>
        <translation>Ein auf %1 genaues Messgerät würde es klären; in der Werkstatt ist keines so genau.</translation>
    </message>
    <message>
        <source>A meter good to %1 would settle it; %2 is.</source>
        <translation>Ein auf %1 genaues Messgerät würde es klären; %2 ist so genau.</translation>
    </message>
    <message>
        <source>Not read yet, and nothing is wanted of it.</source>
        <translation>Noch nicht gemessen, und es gibt kein Soll.</translation>
    </message>
    <message>
        <source>Not read yet.</source>
        <translation>Noch nicht gemessen.</translation>
    </message>
    <message>
        <source>What was read and what is wanted are of different measures: they cannot be compared.</source>
        <translation>Messwert und Soll sind verschiedene Größen und lassen sich nicht vergleichen.</translation>
    </message>
    <message>
        <source>Type what is wanted in its row, and it is held against that.</source>
        <translation>Das Soll in der Zeile eingeben, dann wird damit verglichen.</translation>
    </message>
    <message>
        <source>No tolerance is given, so there is no verdict.</source>
        <translation>Es ist keine Toleranz angegeben, also gibt es kein Urteil.</translation>
    </message>
    <message>
        <source>Over range of the meter, and so above what is wanted at least.</source>
        <translation>Über dem Bereich des Messgeräts, also über der verlangten Untergrenze.</translation>
    </message>
    <message>
        <source>Over range of the meter, and so above what is wanted at the most.</source>
        <translation>Über dem Bereich des Messgeräts, also über der verlangten Obergrenze.</translation>
    </message>
    <message>
        <source>How sure the value is was not said: name the meter, or type ± behind the value.</source>
        <translation>Wie sicher der Wert ist, wurde nicht angegeben: Messgerät nennen oder ± hinter den Wert setzen.</translation>
    </message>
    <message>
        <source>Chance that it is really within: %1.</source>
        <translation>Wahrscheinlichkeit, dass der Wert wirklich innerhalb liegt: %1.</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>no value</source>
        <translation>kein Wert</translation>
    </message>
    <message>
        <source>%n readings</source>
        <translation>%n Messwerte</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Test point</source>
        <translation>Messpunkt</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Soll</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Wie vorgefunden</translation>
    </message>
    <message>
        <source>After work</source>
        <translation>Nach der Arbeit</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Meter, range, 95 % uncertainty</source>
        <translation>Messgerät, Bereich, Unsicherheit 95 %</translation>
    </message>
    <message>
        <source>Add a test point</source>
        <translation>Messpunkt hinzufügen</translation>
    </message>
    <message>
        <source>was due for calibration on %1</source>
        <translation>Kalibrierung war fällig am %1</translation>
    </message>
    <message>
        <source>steady</source>
        <translation>stabil</translation>
    </message>
    <message>
        <source>drifting</source>
        <translation>driftet</translation>
    </message>
    <message>
        <source>out</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>every %1 min for %2</source>
        <translation>alle %1 min, %2 lang</translation>
    </message>
    <message>
        <source>ran %1</source>
        <translation>lief %1</translation>
    </message>
    <message>
        <source>still running</source>
        <translation>läuft noch</translation>
    </message>
    <message>
        <source>an hour</source>
        <translation>je Stunde</translation>
    </message>
    <message>
        <source>/h</source>
        <translation>/h</translation>
    </message>
    <message>
        <source>drift %1 %2 (95 %: %3 to %4)</source>
        <translation>Drift %1 %2 (95 %: %3 bis %4)</translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation>Soll %1</translation>
    </message>
    <message>
        <source>interrupted: %1</source>
        <translation>unterbrochen: %1</translation>
    </message>
    <message>
        <source>Disc player</source>
        <translation>Disc-Player</translation>
    </message>
    <message>
        <source>Cassette deck</source>
        <translation>Kassettendeck</translation>
    </message>
    <message>
        <source>Turntable</source>
        <translation>Plattenspieler</translation>
    </message>
    <message>
        <source>Amplifier or receiver</source>
        <translation>Verstärker oder Receiver</translation>
    </message>
    <message>
        <source>Tuner</source>
        <translation>Tuner</translation>
    </message>
    <message>
        <source>Reel recorder</source>
        <translation>Tonbandgerät</translation>
    </message>
    <message>
        <source>Loudspeaker</source>
        <translation>Lautsprecher</translation>
    </message>
    <message>
        <source>Radio</source>
        <translation>Radio</translation>
    </message>
    <message>
        <source>Game console</source>
        <translation>Spielkonsole</translation>
    </message>
    <message>
        <source>Old computer</source>
        <translation>Alter Computer</translation>
    </message>
    <message>
        <source>Test gear</source>
        <translation>Messtechnik</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
    <message>
        <source>To sell</source>
        <translation>Zum Verkauf</translation>
    </message>
    <message>
        <source>An owner’s</source>
        <translation>Kundengerät</translation>
    </message>
    <message>
        <source>To keep</source>
        <translation>Zum Behalten</translation>
    </message>
    <message>
        <source>During work</source>
        <translation>Während der Arbeit</translation>
    </message>
    <message>
        <source>As it leaves</source>
        <translation>Wie übergeben</translation>
    </message>
    <message>
        <source>before %1, now %2</source>
        <translation>vorher %1, jetzt %2</translation>
    </message>
    <message>
        <source>not typed: its share of what the typed weights leave</source>
        <translation>nicht eingegeben: ihr Anteil an dem, was die eingegebenen Gewichte übrig lassen</translation>
    </message>
    <message>
        <source>ruled out</source>
        <translation>ausgeschlossen</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>bestätigt</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>abnormal</source>
        <translation>abnormal</translation>
    </message>
    <message>
        <source>unclear</source>
        <translation>unklar</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>nicht gemacht</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>chance that it can be had</source>
        <translation>Wahrscheinlichkeit, dass es zu haben ist</translation>
    </message>
    <message>
        <source>"%1" is no time, no price and no chance</source>
        <translation>„%1“ ist keine Zeit, kein Preis und keine Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>type it like 55m 28 80%</source>
        <translation>eingeben wie 55m 28 80%</translation>
    </message>
    <message>
        <source>Possible cause</source>
        <translation>Mögliche Ursache</translation>
    </message>
    <message>
        <source>Before, now</source>
        <translation>Vorher, jetzt</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>To put right</source>
        <translation>Zum Beheben</translation>
    </message>
    <message>
        <source>Add a possible cause</source>
        <translation>Mögliche Ursache hinzufügen</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Min</source>
        <translation>Min</translation>
    </message>
    <message>
        <source>Else</source>
        <translation>Sonst</translation>
    </message>
    <message>
        <source>Came out</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>bears on %1</source>
        <translation>mit Bezug zu %1</translation>
    </message>
    <message>
        <source>no bearing on %1</source>
        <translation>ohne Bezug zu %1</translation>
    </message>
    <message>
        <source>If this were the cause it would come out abnormal with %1</source>
        <translation>Wäre dies die Ursache, fiele sie mit %1 abnormal aus</translation>
    </message>
    <message>
        <source>Add a check: swap head leads 5m</source>
        <translation>Prüfung hinzufügen: swap head leads 5m</translation>
    </message>
    <message>
        <source>Add a check</source>
        <translation>Prüfung hinzufügen</translation>
    </message>
    <message>
        <source>Add a proof of its looks</source>
        <translation>Abnahme des Aussehens hinzufügen</translation>
    </message>
    <message>
        <source>Add a proof of electrical safety</source>
        <translation>Abnahme der elektrischen Sicherheit hinzufügen</translation>
    </message>
    <message>
        <source>Add a proof of function</source>
        <translation>Abnahme der Funktion hinzufügen</translation>
    </message>
    <message>
        <source>To be proved</source>
        <translation>Abzunehmen</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Prüfgerät</translation>
    </message>
    <message>
        <source>Rule set</source>
        <translation>Regelwerk</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>%1 of %2 passed</source>
        <translation>%1 von %2 bestanden</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation>nicht zutreffend</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>Looks</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>Electrical safety</source>
        <translation>Elektrische Sicherheit</translation>
    </message>
    <message>
        <source>Function</source>
        <translation>Funktion</translation>
    </message>
    <message>
        <source>%1 failed</source>
        <translation>%1 nicht bestanden</translation>
    </message>
    <message>
        <source>%1 not tested</source>
        <translation>%1 nicht geprüft</translation>
    </message>
    <message>
        <source>A proof needs a text</source>
        <translation>Eine Abnahme braucht einen Text</translation>
    </message>
    <message>
        <source>Delete takes it off the list</source>
        <translation>Entf nimmt sie von der Liste</translation>
    </message>
    <message>
        <source>%1, came off</source>
        <translation>%1, abgenommen</translation>
    </message>
    <message>
        <source>%1, still on</source>
        <translation>%1, noch dran</translation>
    </message>
    <message>
        <source>%1, back</source>
        <translation>%1, wieder dran</translation>
    </message>
    <message>
        <source>%1, still off</source>
        <translation>%1, noch ab</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>weggelassen</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>weggelassen: %1</translation>
    </message>
    <message>
        <source>still on</source>
        <translation>noch dran</translation>
    </message>
    <message>
        <source>back again</source>
        <translation>wieder dran</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Wieder dran</translation>
    </message>
    <message>
        <source>What came off</source>
        <translation>Was abgenommen wurde</translation>
    </message>
    <message>
        <source>Fasteners</source>
        <translation>Befestigung</translation>
    </message>
    <message>
        <source>Kept in</source>
        <translation>Liegt in</translation>
    </message>
    <message>
        <source>Came off: lid 5 screws M3x8 tray A1</source>
        <translation>Abgenommen: lid 5 screws M3x8 tray A1</translation>
    </message>
    <message>
        <source>Add what came off</source>
        <translation>Abgenommenes hinzufügen</translation>
    </message>
    <message>
        <source>More of it</source>
        <translation>Mehr dazu</translation>
    </message>
    <message>
        <source>As noted</source>
        <translation>Wie notiert</translation>
    </message>
    <message>
        <source>Number of fasteners</source>
        <translation>Anzahl der Befestigungsteile</translation>
    </message>
    <message>
        <source>Connectors: ways, key side, colours</source>
        <translation>Steckverbinder: Polzahl, Kodierseite, Farben</translation>
    </message>
    <message>
        <source>Springs and washers</source>
        <translation>Federn und Scheiben</translation>
    </message>
    <message>
        <source>Marked before it was moved</source>
        <translation>Vor dem Verstellen markiert</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Warnhinweis</translation>
    </message>
    <message>
        <source>What came off needs a name</source>
        <translation>Was abgenommen wurde, braucht einen Namen</translation>
    </message>
    <message>
        <source>number of fasteners</source>
        <translation>Anzahl der Befestigungsteile</translation>
    </message>
    <message>
        <source>The plan was left as it is</source>
        <translation>Der Plan bleibt, wie er ist</translation>
    </message>
    <message>
        <source>the least, the likely and the most are not in that order</source>
        <translation>der kleinste, der wahrscheinliche und der größte Wert stehen nicht in dieser Reihenfolge</translation>
    </message>
    <message>
        <source>chance of repair</source>
        <translation>Wahrscheinlichkeit der Reparatur</translation>
    </message>
    <message>
        <source>number of days</source>
        <translation>Anzahl der Tage</translation>
    </message>
    <message>
        <source>%1 needs a word</source>
        <translation>%1 braucht ein Wort</translation>
    </message>
    <message>
        <source>Delete takes the row off the list</source>
        <translation>Entf nimmt die Zeile von der Liste</translation>
    </message>
    <message>
        <source>Model notes, new: %1</source>
        <translation>Modellnotizen, neu: %1</translation>
    </message>
    <message>
        <source>This row is gone</source>
        <translation>Diese Zeile gibt es nicht mehr</translation>
    </message>
    <message>
        <source>somebody took it off</source>
        <translation>jemand hat sie herausgenommen</translation>
    </message>
    <message>
        <source>Model notes: %1</source>
        <translation>Modellnotizen: %1</translation>
    </message>
    <message>
        <source>Model notes, taken off: %1</source>
        <translation>Modellnotizen, von der Liste genommen: %1</translation>
    </message>
    <message>
        <source>Model notes, order: %1</source>
        <translation>Modellnotizen, Reihenfolge: %1</translation>
    </message>
    <message>
        <source>minutes, cost, and the chance that it can be had</source>
        <translation>Minuten, Kosten und die Wahrscheinlichkeit, dass es zu haben ist</translation>
    </message>
    <message>
        <source>"%1" is none of the causes of this symptom</source>
        <translation>„%1“ ist keine der Ursachen dieses Symptoms</translation>
    </message>
    <message>
        <source>write a cause as it stands in the list above, several parted by semicolons</source>
        <translation>eine Ursache so schreiben, wie sie in der Liste oben steht, mehrere durch Semikolon getrennt</translation>
    </message>
    <message>
        <source>chance of abnormal if it is the cause</source>
        <translation>Wahrscheinlichkeit für abnormal, wenn dies die Ursache ist</translation>
    </message>
    <message>
        <source>chance of abnormal if it is not</source>
        <translation>Wahrscheinlichkeit für abnormal, wenn nicht</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>on how many of your own closed units it was this</source>
        <translation>bei wie vielen eigenen abgeschlossenen Geräten es das war</translation>
    </message>
    <message>
        <source>Add a cause</source>
        <translation>Ursache hinzufügen</translation>
    </message>
    <message>
        <source>Symptom</source>
        <translation>Symptom</translation>
    </message>
    <message>
        <source>Usual cause</source>
        <translation>Übliche Ursache</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>against the others of its symptom</source>
        <translation>im Vergleich zu den anderen des Symptoms</translation>
    </message>
    <message>
        <source>Put right how</source>
        <translation>Wie behoben</translation>
    </message>
    <message>
        <source>Abnormal points to</source>
        <translation>Abnormal weist auf</translation>
    </message>
    <message>
        <source>causes as they stand above, parted by semicolons; 90/5 after one gives its odds in percent</source>
        <translation>Ursachen, wie sie oben stehen, durch Semikolon getrennt; 90/5 hinter einer gibt ihre Wahrscheinlichkeiten in Prozent an</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>Under which conditions</source>
        <translation>Unter welchen Bedingungen</translation>
    </message>
    <message>
        <source>Who says so</source>
        <translation>Wer das sagt</translation>
    </message>
    <message>
        <source>Add what comes off next</source>
        <translation>Hinzufügen, was als Nächstes abkommt</translation>
    </message>
    <message>
        <source>What comes off</source>
        <translation>Was abgenommen wird</translation>
    </message>
    <message>
        <source>Connectors</source>
        <translation>Steckverbinder</translation>
    </message>
    <message>
        <source>Mark first</source>
        <translation>Zuerst markieren</translation>
    </message>
    <message>
        <source>Rating</source>
        <translation>Nennwert</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Add a proof that this model asks for</source>
        <translation>Abnahmepunkt hinzufügen, den dieses Modell verlangt</translation>
    </message>
    <message>
        <source>What is to be proved</source>
        <translation>Was abzunehmen ist</translation>
    </message>
    <message>
        <source>Kept in the workbook</source>
        <translation>Im Werkbuch aufgehoben</translation>
    </message>
    <message>
        <source>%1 file</source>
        <translation>%1-Datei</translation>
    </message>
    <message>
        <source>Add a service paper: its title</source>
        <translation>Serviceunterlage hinzufügen: ihr Titel</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Where it is</source>
        <translation>Wo sie liegt</translation>
    </message>
    <message>
        <source>over %1 days</source>
        <translation>über %1 Tage</translation>
    </message>
    <message>
        <source>%1 to %2 days</source>
        <translation>%1 bis %2 Tage</translation>
    </message>
    <message>
        <source>Tied up</source>
        <translation>Gebunden</translation>
    </message>
    <message>
        <source>Money spent on units that are not closed, by stage.</source>
        <translation>Geld, das für nicht abgeschlossene Geräte ausgegeben ist, nach Stufe.</translation>
    </message>
    <message>
        <source>Spent</source>
        <translation>Ausgegeben</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Longest there</source>
        <translation>Am längsten dort</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>Money spent on units that are not closed, by how long ago they were taken in.</source>
        <translation>Geld, das für nicht abgeschlossene Geräte ausgegeben ist, danach, wie lange die Aufnahme her ist.</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Aufgenommen</translation>
    </message>
    <message>
        <source>Nothing was sold yet: this begins with the first unit that is closed as sold.</source>
        <translation>Noch ist nichts verkauft: Dies beginnt mit dem ersten Gerät, das als verkauft abgeschlossen wird.</translation>
    </message>
    <message>
        <source>Earned per hour</source>
        <translation>Verdienst je Stunde</translation>
    </message>
    <message>
        <source>What sold units left, less everything spent on them, for each hour taken.</source>
        <translation>Was verkaufte Geräte einbrachten, abzüglich aller Ausgaben dafür, je aufgewendete Stunde.</translation>
    </message>
    <message>
        <source>Per hour</source>
        <translation>Je Stunde</translation>
    </message>
    <message>
        <source>Category</source>
        <translation>Kategorie</translation>
    </message>
    <message>
        <source>Sold</source>
        <translation>Verkauft</translation>
    </message>
    <message>
        <source>Earned</source>
        <translation>Verdient</translation>
    </message>
    <message>
        <source>Hours planned against hours taken, on sold units that had a plan.</source>
        <translation>Geplante gegen aufgewendete Stunden, bei verkauften Geräten mit Plan.</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Aufgewendet</translation>
    </message>
    <message>
        <source>Taken for each planned</source>
        <translation>Aufgewendet je geplante Stunde</translation>
    </message>
    <message>
        <source>No sold unit had hours planned yet.</source>
        <translation>Für noch kein verkauftes Gerät waren Stunden geplant.</translation>
    </message>
    <message>
        <source>Causes</source>
        <translation>Ursachen</translation>
    </message>
    <message>
        <source>Causes that were confirmed, by on how many units.</source>
        <translation>Bestätigte Ursachen, danach, bei wie vielen Geräten.</translation>
    </message>
    <message>
        <source>units</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Ursache</translation>
    </message>
    <message>
        <source>No cause was confirmed yet.</source>
        <translation>Noch ist keine Ursache bestätigt.</translation>
    </message>
    <message>
        <source>Days to sale</source>
        <translation>Tage bis zum Verkauf</translation>
    </message>
    <message>
        <source>Days from purchase to sale, the middle one of each category.</source>
        <translation>Tage vom Kauf bis zum Verkauf, der mittlere Wert jeder Kategorie.</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Profit by month</source>
        <translation>Gewinn nach Monat</translation>
    </message>
    <message>
        <source>What sold units left, less everything spent on them, in the month of their sale. Your hours are not in it.</source>
        <translation>Was verkaufte Geräte einbrachten, abzüglich aller Ausgaben dafür, im Monat des Verkaufs. Die eigenen Stunden sind nicht darin.</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>Write capacitance and voltage, such as 100 µF 450 V</source>
        <translation>Kapazität und Spannung angeben, etwa 100 µF 450 V</translation>
    </message>
    <message>
        <source>Below %1 already; measure all the same</source>
        <translation>Schon unter %1; trotzdem messen</translation>
    </message>
    <message>
        <source>%1 that stands %2 and takes %3 at first: wait %4 to fall to %5 (%6 in it), then measure, and again after minutes</source>
        <translation>%1, hält %2 aus und nimmt anfangs %3 auf: %4 warten bis zum Abfall auf %5 (%6 darin), dann messen, und nach Minuten noch einmal</translation>
    </message>
    <message>
        <source>The bench’s own mains is not set</source>
        <translation>Das Netz der Werkstatt ist nicht festgelegt</translation>
    </message>
    <message>
        <source>Write what it draws when it idles, such as 30 W</source>
        <translation>Leistungsaufnahme im Leerlauf angeben, etwa 30 W</translation>
    </message>
    <message>
        <source>a filament lamp of %1 W; a dead short draws no more than %2 through it</source>
        <translation>eine Glühlampe mit %1 W; ein satter Kurzschluss zieht durch sie höchstens %2</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>zu knapp</translation>
    </message>
    <message>
        <source>Owner’s words: “%1”</source>
        <translation>Worte des Eigentümers: „%1“</translation>
    </message>
    <message>
        <source>Seller’s words: “%1”</source>
        <translation>Worte des Verkäufers: „%1“</translation>
    </message>
    <message>
        <source>Parts are here: %1</source>
        <translation>Teile sind da: %1</translation>
    </message>
    <message>
        <source>A meter good to %1 would settle it; %2 on its %3 is.</source>
        <translation>Ein auf %1 genaues Messgerät würde es klären; %2 ist im Bereich %3 so genau.</translation>
    </message>
    <message>
        <source>But its calibration is overdue.</source>
        <translation>Dessen Kalibrierung ist aber überfällig.</translation>
    </message>
    <message>
        <source>%1 was overdue for calibration since %2 when this was read.</source>
        <translation>Die Kalibrierung von %1 war seit %2 überfällig, als dies gemessen wurde.</translation>
    </message>
    <message>
        <source>How it leaves: this is what the restoration sheet shows. Put “during” behind a value that was only read on the way.</source>
        <translation>Wie übergeben: Das zeigt das Restaurierungsblatt. „during“ hinter einen Wert setzen, der nur unterwegs gemessen wurde.</translation>
    </message>
    <message>
        <source>“%1” is no tag</source>
        <translation>„%1“ ist kein Anhänger</translation>
    </message>
    <message>
        <source>a donor is named by its tag, such as 0022</source>
        <translation>ein Spender wird mit seinem Anhänger genannt, etwa 0022</translation>
    </message>
    <message>
        <source>A part has no cost below nothing</source>
        <translation>Ein Teil hat keine Kosten unter null</translation>
    </message>
    <message>
        <source>leave it empty where it is not known</source>
        <translation>leer lassen, wo nicht bekannt</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>Each</source>
        <translation>Stückpreis</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>Gekauft</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>From donor</source>
        <translation>Von Spender</translation>
    </message>
    <message>
        <source>Tested</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>Add a batch: 10 at 0.12 from a supplier, or from 0022</source>
        <translation>Posten hinzufügen: 10 at 0.12 from a supplier, oder from 0022</translation>
    </message>
    <message>
        <source>Add a batch</source>
        <translation>Posten hinzufügen</translation>
    </message>
    <message>
        <source>The line</source>
        <translation>Die Zeile</translation>
    </message>
    <message>
        <source>“%1” is no batch</source>
        <translation>„%1“ ist kein Posten</translation>
    </message>
    <message>
        <source>write it as in “10 at 0.12”, “2 at 4.00 from 0022” or “10 from a supplier”</source>
        <translation>schreiben wie „10 at 0.12“, „2 at 4.00 from 0022“ oder „10 from a supplier“</translation>
    </message>
    <message>
        <source>not recorded: %1</source>
        <translation>nicht eingetragen: %1</translation>
    </message>
    <message>
        <source>Below what you keep at least</source>
        <translation>Unter dem Mindestbestand</translation>
    </message>
    <message>
        <source>%1, below what you keep at least</source>
        <translation>%1, unter dem Mindestbestand</translation>
    </message>
    <message>
        <source>“%1” is no rating of a %2</source>
        <translation>„%1“ ist kein Nennwert für %2</translation>
    </message>
    <message>
        <source>write it as in “voltage 63 V, diameter 10 mm”</source>
        <translation>schreiben wie „voltage 63 V, diameter 10 mm“</translation>
    </message>
    <message>
        <source>Keep at least</source>
        <translation>Mindestbestand</translation>
    </message>
    <message>
        <source>Write a part down: 10 × capacitor 100 µF 63 V at 0.12 in drawer C3</source>
        <translation>Teil aufschreiben: 10 × capacitor 100 µF 63 V at 0.12 in drawer C3</translation>
    </message>
    <message>
        <source>Write a part down</source>
        <translation>Teil aufschreiben</translation>
    </message>
    <message>
        <source>take it off the shelf instead</source>
        <translation>stattdessen aus dem Lager nehmen</translation>
    </message>
    <message>
        <source>Into the parts store: %1 × %2</source>
        <translation>Ins Teilelager: %1 × %2</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>from the part's name</source>
        <translation>aus dem Namen des Teils</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;Web page (*.html)</source>
        <translation>PDF (*.pdf);;Webseite (*.html)</translation>
    </message>
    <message>
        <source>%1 order list</source>
        <translation>%1 Bestellliste</translation>
    </message>
    <message>
        <source>Order list of all units</source>
        <translation>Bestellliste aller Geräte</translation>
    </message>
    <message>
        <source>Write the order list</source>
        <translation>Bestellliste schreiben</translation>
    </message>
    <message>
        <source>Wrote %1: order list %2, edition %3.</source>
        <translation>%1 geschrieben: Bestellliste %2, Fassung %3.</translation>
    </message>
    <message>
        <source>Write the bag labels</source>
        <translation>Beuteletiketten schreiben</translation>
    </message>
    <message>
        <source>Write the tag label</source>
        <translation>Anhängeretikett schreiben</translation>
    </message>
    <message>
        <source>%1 bag labels</source>
        <translation>%1 Beuteletiketten</translation>
    </message>
    <message>
        <source>%1 label</source>
        <translation>%1 Etikett</translation>
    </message>
    <message>
        <source>Wrote %1.</source>
        <translation>%1 geschrieben.</translation>
    </message>
    <message>
        <source>Print the label</source>
        <translation>Etikett drucken</translation>
    </message>
    <message>
        <source>The printer could not be reached; the label is kept as edition %1.</source>
        <translation>Der Drucker war nicht zu erreichen; das Etikett ist als Fassung %1 aufgehoben.</translation>
    </message>
    <message>
        <source>Printed the label of %1.</source>
        <translation>Etikett von %1 gedruckt.</translation>
    </message>
    <message>
        <source>Markings and values</source>
        <translation>Kennzeichnungen und Werte</translation>
    </message>
    <message>
        <source>Fuses and supply</source>
        <translation>Sicherungen und Stromversorgung</translation>
    </message>
    <message>
        <source>Currents and loads</source>
        <translation>Ströme und Lasten</translation>
    </message>
    <message>
        <source>Levels and curves</source>
        <translation>Pegel und Kurven</translation>
    </message>
    <message>
        <source>Speed and belts</source>
        <translation>Drehzahl und Riemen</translation>
    </message>
    <message>
        <source>Fault-finding</source>
        <translation>Fehlersuche</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Weitere</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
</context>
<context>
    <name>ts::AskLine</name>
    <message>
        <source>Leave it</source>
        <translation>So lassen</translation>
    </message>
</context>
<context>
    <name>ts::BenchTodayPlace</name>
    <message>
        <source>Units in the order to work on them</source>
        <translation>Geräte in der Reihenfolge, in der an ihnen zu arbeiten ist</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>Per hour</source>
        <translation>Je Stunde</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Tied up</source>
        <translation>Gebunden</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Nothing is shelved, on the bench, held, proving or ready: there is nothing to choose between.</source>
        <translation>Nichts ist eingelagert, auf der Werkbank, wartend, in der Abnahme oder fertig: Es gibt nichts zu wählen.</translation>
    </message>
    <message>
        <source>Work it out again</source>
        <translation>Neu berechnen</translation>
    </message>
    <message>
        <source>Bench today</source>
        <translation>Werkbank heute</translation>
    </message>
    <message>
        <source>What to work on next, across all units: what has a date near, then what an hour brings most; what waits for parts and what is better not finished comes last. Enter or a double click opens the unit.</source>
        <translation>Woran als Nächstes zu arbeiten ist, über alle Geräte: zuerst, was bald einen Termin hat, dann, was je Stunde am meisten bringt; was auf Teile wartet und was besser nicht fertig wird, kommt zuletzt. Eingabe oder ein Doppelklick öffnet das Gerät.</translation>
    </message>
    <message>
        <source>Something was recorded since; work it out again to have it counted.</source>
        <translation>Inzwischen wurde etwas eingetragen; neu berechnen, damit es mitzählt.</translation>
    </message>
    <message>
        <source>Being worked out…</source>
        <translation>Wird berechnet…</translation>
    </message>
    <message>
        <source>Looking through the bench</source>
        <translation>Werkbank wird durchgesehen</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
</context>
<context>
    <name>ts::BidCard</name>
    <message>
        <source>Highest bid</source>
        <translation>Höchstes Gebot</translation>
    </message>
    <message>
        <source>Your hours paid</source>
        <translation>Eigene Stunden bezahlt</translation>
    </message>
    <message>
        <source>Your hours for nothing</source>
        <translation>Eigene Stunden umsonst</translation>
    </message>
    <message>
        <source>Back of the envelope</source>
        <translation>Überschlag</translation>
    </message>
    <message>
        <source>hardly less</source>
        <translation>kaum weniger</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <source>hardly more</source>
        <translation>kaum mehr</translation>
    </message>
    <message>
        <source>It fetches, working</source>
        <translation>Bringt, wenn es funktioniert</translation>
    </message>
    <message>
        <source>Your hours</source>
        <translation>Eigene Stunden</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Chance of repair</source>
        <translation>Wahrscheinlichkeit der Reparatur</translation>
    </message>
    <message>
        <source>by your record and the category</source>
        <translation>nach eigenen Aufzeichnungen und der Kategorie</translation>
    </message>
    <message>
        <source>Carriage in</source>
        <translation>Fracht herein</translation>
    </message>
    <message>
        <source>Carriage out</source>
        <translation>Fracht hinaus</translation>
    </message>
    <message>
        <source>Likely faults</source>
        <translation>Wahrscheinliche Fehler</translation>
    </message>
    <message>
        <source>Likely fault</source>
        <translation>Wahrscheinlicher Fehler</translation>
    </message>
    <message>
        <source>Chance</source>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>What the bid rests on</source>
        <translation>Woran das Gebot hängt</translation>
    </message>
    <message>
        <source>It rests on</source>
        <translation>Es hängt an</translation>
    </message>
    <message>
        <source>Worse</source>
        <translation>Schlechter</translation>
    </message>
    <message>
        <source>Bid</source>
        <translation>Gebot</translation>
    </message>
    <message>
        <source>Better</source>
        <translation>Besser</translation>
    </message>
    <message>
        <source>as you type, not recorded</source>
        <translation>während der Eingabe, nicht eingetragen</translation>
    </message>
    <message>
        <source>Being worked out…</source>
        <translation>Wird berechnet…</translation>
    </message>
    <message>
        <source>The tax in the margin is in it, %1 of what the margin comes to.</source>
        <translation>Die Steuer in der Marge ist eingerechnet, %1 der erwarteten Marge.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Its usual causes:</source>
        <translation>Die üblichen Ursachen dazu:</translation>
    </message>
    <message>
        <source>What is it said to do? One press brings the usual causes:</source>
        <translation>Welches Symptom wird angegeben? Ein Druck übernimmt die üblichen Ursachen:</translation>
    </message>
    <message>
        <source>Bring in the usual causes of: %1</source>
        <translation>Übliche Ursachen übernehmen von: %1</translation>
    </message>
    <message>
        <source>Symptom: %1</source>
        <translation>Symptom: %1</translation>
    </message>
</context>
<context>
    <name>ts::ChannelList</name>
    <message>
        <source>Channels, the places where you sell</source>
        <translation>Verkaufswege, die Orte, an denen verkauft wird</translation>
    </message>
    <message>
        <source>Add a channel</source>
        <translation>Verkaufsweg hinzufügen</translation>
    </message>
    <message>
        <source>Name of the channel</source>
        <translation>Name des Verkaufswegs</translation>
    </message>
    <message>
        <source>A channel needs a name; the old one stays.</source>
        <translation>Ein Verkaufsweg braucht einen Namen; der alte bleibt.</translation>
    </message>
    <message>
        <source>Channel: %1</source>
        <translation>Verkaufsweg: %1</translation>
    </message>
    <message>
        <source>Add a fee</source>
        <translation>Gebühr hinzufügen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove the channel %1</source>
        <translation>Verkaufsweg %1 entfernen</translation>
    </message>
    <message>
        <source>Channel removed: %1</source>
        <translation>Verkaufsweg entfernt: %1</translation>
    </message>
    <message>
        <source>Today: %1</source>
        <translation>Heute: %1</translation>
    </message>
    <message>
        <source>A new channel</source>
        <translation>Neuer Verkaufsweg</translation>
    </message>
    <message>
        <source>Selling fee</source>
        <translation>Verkaufsgebühr</translation>
    </message>
    <message>
        <source>Fee of %1</source>
        <translation>Gebühr von %1</translation>
    </message>
</context>
<context>
    <name>ts::ChecksList</name>
    <message>
        <source>Model notes: %1</source>
        <translation>Modellnotizen: %1</translation>
    </message>
</context>
<context>
    <name>ts::ClockBox</name>
    <message>
        <source>Stop clock</source>
        <translation>Stoppuhr anhalten</translation>
    </message>
    <message>
        <source>Start clock</source>
        <translation>Stoppuhr starten</translation>
    </message>
    <message>
        <source>F9 stops it while its unit is in hand; with another in hand it starts there instead</source>
        <translation>F9 hält sie an, solange ihr Gerät gewählt ist; ist ein anderes gewählt, startet sie dort</translation>
    </message>
    <message>
        <source>F9 starts it for the unit in hand</source>
        <translation>F9 startet sie für das gewählte Gerät</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>The clock runs for %1; go there</source>
        <translation>Die Stoppuhr läuft für %1; dorthin gehen</translation>
    </message>
    <message>
        <source>The clock of %1 ran on while nobody was seen here, for %2 since %3. What counts?</source>
        <translation>Die Stoppuhr von %1 lief weiter, während niemand hier war, %2 lang seit %3. Was zählt?</translation>
    </message>
    <message>
        <source>Until %1: %2</source>
        <translation>Bis %1: %2</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nichts</translation>
    </message>
    <message>
        <source>All of it: %1, and it runs on</source>
        <translation>Alles: %1, und sie läuft weiter</translation>
    </message>
</context>
<context>
    <name>ts::ClosedAsk</name>
    <message>
        <source>Sold on</source>
        <translation>Verkauft bei</translation>
    </message>
    <message>
        <source>Price got</source>
        <translation>Erzielter Preis</translation>
    </message>
    <message>
        <source>Selling fees</source>
        <translation>Verkaufsgebühren</translation>
    </message>
    <message>
        <source>Carriage you paid</source>
        <translation>Selbst bezahlte Fracht</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>How it ended</source>
        <translation>Wie es ausging</translation>
    </message>
    <message>
        <source>By its rules %1 takes %2.</source>
        <translation>Nach seinen Regeln nimmt %1 %2.</translation>
    </message>
    <message>
        <source> for %1</source>
        <translation> für %1</translation>
    </message>
</context>
<context>
    <name>ts::ComparablesCard</name>
    <message>
        <source>The line</source>
        <translation>Die Zeile</translation>
    </message>
    <message>
        <source>asking</source>
        <translation>Angebot</translation>
    </message>
    <message>
        <source>carriage included</source>
        <translation>Fracht inbegriffen</translation>
    </message>
    <message>
        <source>No sale was recorded</source>
        <translation>Es wurde kein Verkauf eingetragen</translation>
    </message>
    <message>
        <source>“%1” is no price</source>
        <translation>„%1“ ist kein Preis</translation>
    </message>
    <message>
        <source>begin with the price: 118.00 27 Sep working</source>
        <translation>mit dem Preis beginnen: 118.00 27 Sep working</translation>
    </message>
    <message>
        <source>not working</source>
        <translation>funktioniert nicht</translation>
    </message>
    <message>
        <source>working</source>
        <translation>funktioniert</translation>
    </message>
    <message>
        <source>What it should fetch</source>
        <translation>Was es bringen sollte</translation>
    </message>
    <message>
        <source>Sales of the same or a like unit</source>
        <translation>Verkäufe des gleichen oder eines ähnlichen Geräts</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Sold</source>
        <translation>Verkauft</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Zählt</translation>
    </message>
    <message>
        <source>Write a sale down</source>
        <translation>Verkauf aufschreiben</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove the marked sale</source>
        <translation>Markierten Verkauf entfernen</translation>
    </message>
    <message>
        <source>No sale of the same or a like unit is written down yet. With five or more this says what the unit should fetch; asking prices are kept apart.</source>
        <translation>Noch ist kein Verkauf des gleichen oder eines ähnlichen Geräts aufgeschrieben. Ab fünf steht hier, was das Gerät bringen sollte; Angebotspreise werden getrennt gehalten.</translation>
    </message>
    <message>
        <source>no day</source>
        <translation>ohne Datum</translation>
    </message>
    <message>
        <source>of another unit</source>
        <translation>von einem anderen Gerät</translation>
    </message>
    <message>
        <source>Comparable sale: %1</source>
        <translation>Vergleichsverkauf: %1</translation>
    </message>
    <message>
        <source>Comparable sale removed: %1</source>
        <translation>Vergleichsverkauf entfernt: %1</translation>
    </message>
    <message>
        <source>That sale belongs to another unit; remove it there.</source>
        <translation>Dieser Verkauf gehört zu einem anderen Gerät; dort entfernen.</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>these are more than 10,000 lines</source>
        <translation>das sind mehr als 10.000 Zeilen</translation>
    </message>
    <message numerus="yes">
        <source>%n comparable sale(s) pasted</source>
        <translation>
            <numerusform>%n Vergleichsverkauf eingefügt</numerusform><numerusform>%n Vergleichsverkäufe eingefügt</numerusform></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Write one down: 118.00 27 Sep working, measured · asking 95</source>
        <translation>Verkauf aufschreiben: 118.00 27 Sep working, measured · asking 95</translation>
    </message>
    <message>
        <source>Paste sales</source>
        <translation>Verkäufe einfügen</translation>
    </message>
    <message>
        <source>Paste several sales, one a line</source>
        <translation>Mehrere Verkäufe einfügen, einen je Zeile</translation>
    </message>
    <message>
        <source>From a file…</source>
        <translation>Aus Datei…</translation>
    </message>
    <message>
        <source>Take sales in from a list as CSV</source>
        <translation>Verkäufe aus einer Liste als CSV einlesen</translation>
    </message>
    <message>
        <source>Sales from a list</source>
        <translation>Verkäufe aus einer Liste</translation>
    </message>
    <message>
        <source>Lists (*.csv *.txt);;All files (*)</source>
        <translation>Listen (*.csv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation>%1 lässt sich nicht lesen: %2.</translation>
    </message>
    <message>
        <source>%1 is larger than 8 MB; take it in by Workbook, Lists in and out.</source>
        <translation>%1 ist größer als 8 MB; einlesen über Werkbuch, Listen ein und aus.</translation>
    </message>
    <message>
        <source>Nothing to paste: copy the sales first, one a line, like 118.00 27 Sep working.</source>
        <translation>Nichts einzufügen: erst die Verkäufe kopieren, einen je Zeile, wie 118.00 27 Sep working.</translation>
    </message>
    <message>
        <source>All of these sales are written down already.</source>
        <translation>Alle diese Verkäufe sind schon aufgeschrieben.</translation>
    </message>
    <message>
        <source>1 in 10 fetches under %1, half fetch over %2, 1 in 10 over %3.</source>
        <translation>1 von 10 bringt unter %1, die Hälfte über %2, 1 von 10 über %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n asking price(s) drawn as rings, never counted.</source>
        <translation>
            <numerusform>%n Angebotspreis als Ring gezeichnet, nie gezählt.</numerusform><numerusform>%n Angebotspreise als Ringe gezeichnet, nie gezählt.</numerusform></translation>
    </message>
    <message>
        <source>That is what sellers hope for, not what was paid.</source>
        <translation>Das erhoffen sich Verkäufer; bezahlt wurde es nicht.</translation>
    </message>
</context>
<context>
    <name>ts::ComputerCard</name>
    <message>
        <source>This computer</source>
        <translation>Dieser Rechner</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>Those of the system</source>
        <translation>Die des Systems</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Size of the text</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>Language, from the next start on</source>
        <translation>Sprache, ab dem nächsten Start</translation>
    </message>
    <message>
        <source>That of the system</source>
        <translation>Die des Systems</translation>
    </message>
    <message>
        <source>Folder for backups</source>
        <translation>Ordner für Sicherungen</translation>
    </message>
    <message>
        <source>Beside the workbook</source>
        <translation>Neben dem Werkbuch</translation>
    </message>
    <message>
        <source>Folder that is watched for photos</source>
        <translation>Ordner, der auf Fotos überwacht wird</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keiner</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Choose: %1</source>
        <translation>Wählen: %1</translation>
    </message>
</context>
<context>
    <name>ts::CostModel</name>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Press Enter or F2 to change the plan</source>
        <translation>Eingabe oder F2 ändert den Plan</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Cost against resale</source>
        <translation>Kosten gegen Wiederverkauf</translation>
    </message>
    <message>
        <source>Planned at purchase</source>
        <translation>Beim Kauf geplant</translation>
    </message>
    <message>
        <source>To date</source>
        <translation>Bisher</translation>
    </message>
    <message>
        <source>At completion</source>
        <translation>Am Ende</translation>
    </message>
</context>
<context>
    <name>ts::CurveChart</name>
    <message>
        <source>Replay curve</source>
        <translation>Wiedergabekurve</translation>
    </message>
</context>
<context>
    <name>ts::DetailsPage</name>
    <message>
        <source>Bought from</source>
        <translation>Gekauft bei</translation>
    </message>
    <message>
        <source>Bought on</source>
        <translation>Gekauft am</translation>
    </message>
    <message>
        <source>Name: a unit has one; call it what it is: maker, model, what kind of thing.</source>
        <translation>Name: Ein Gerät hat einen; benennen, was es ist: Hersteller, Modell, was für ein Gerät.</translation>
    </message>
    <message>
        <source>Year made: %1 is no year that a unit can be made in</source>
        <translation>Baujahr: %1 ist kein Jahr, in dem ein Gerät gebaut sein kann</translation>
    </message>
    <message>
        <source>type it like 1979</source>
        <translation>eingeben wie 1979</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>Category</source>
        <translation>Kategorie</translation>
    </message>
    <message>
        <source>Protection class</source>
        <translation>Schutzklasse</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Owner’s name</source>
        <translation>Name des Eigentümers</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Eigentümer</translation>
    </message>
    <message>
        <source>%1 of unit %2 taken out</source>
        <translation>%1 von Gerät %2 herausgenommen</translation>
    </message>
    <message>
        <source>%1 of unit %2: %3</source>
        <translation>%1 von Gerät %2: %3</translation>
    </message>
    <message>
        <source>Back to the page</source>
        <translation>Zurück zur Seite</translation>
    </message>
    <message>
        <source>Enter, or leaving a field, keeps what is in it; Undo takes it back.</source>
        <translation>Eingabe oder Verlassen eines Feldes übernimmt, was darin steht; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Details</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Netz</translation>
    </message>
    <message>
        <source>Whose it is, and where it stands</source>
        <translation>Wem es gehört und wo es steht</translation>
    </message>
    <message>
        <source>How it came in</source>
        <translation>Wie es ankam</translation>
    </message>
    <message>
        <source>How it was bought</source>
        <translation>Wie es gekauft wurde</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Year made, or about</source>
        <translation>Baujahr, auch ungefähr</translation>
    </message>
    <message>
        <source>1979</source>
        <translation>1979</translation>
    </message>
    <message>
        <source>How the year is known</source>
        <translation>Woher das Jahr bekannt ist</translation>
    </message>
    <message>
        <source>date code on the board</source>
        <translation>Datumscode auf der Platine</translation>
    </message>
    <message>
        <source>Mains voltage and frequency, as on the plate</source>
        <translation>Netzspannung und Frequenz, laut Typenschild</translation>
    </message>
    <message>
        <source>230 V 50 Hz</source>
        <translation>230 V 50 Hz</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Wo es steht</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>shelf B2</source>
        <translation>Fach B2</translation>
    </message>
    <message>
        <source>What the seller or owner says is wrong</source>
        <translation>Was laut Verkäufer oder Eigentümer nicht stimmt</translation>
    </message>
    <message>
        <source>Claim</source>
        <translation>Angabe</translation>
    </message>
    <message>
        <source>What came with it, and what is missing</source>
        <translation>Was dabei war und was fehlt</translation>
    </message>
    <message>
        <source>Accessories</source>
        <translation>Zubehör</translation>
    </message>
    <message>
        <source>Looks on arrival</source>
        <translation>Aussehen bei Ankunft</translation>
    </message>
    <message>
        <source>Looks</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>Function on arrival</source>
        <translation>Funktion bei Ankunft</translation>
    </message>
    <message>
        <source>Function</source>
        <translation>Funktion</translation>
    </message>
    <message>
        <source>Signs of earlier work</source>
        <translation>Spuren früherer Arbeiten</translation>
    </message>
    <message>
        <source>Earlier work</source>
        <translation>Frühere Arbeiten</translation>
    </message>
    <message>
        <source>Price paid</source>
        <translation>Bezahlter Preis</translation>
    </message>
    <message>
        <source>Carriage to you</source>
        <translation>Fracht hierher</translation>
    </message>
    <message>
        <source>Carriage in</source>
        <translation>Fracht herein</translation>
    </message>
    <message>
        <source>Seller</source>
        <translation>Verkäufer</translation>
    </message>
    <message>
        <source>Day of purchase</source>
        <translation>Tag des Kaufs</translation>
    </message>
    <message>
        <source>a person, a sale room</source>
        <translation>eine Person, ein Auktionshaus</translation>
    </message>
    <message>
        <source>What is known of the unit itself: what it is, its mains, whose it is and where it stands, how it came in and what was paid. Each field is kept when Enter is pressed or it is left; Esc puts back what was there, and Esc again goes back to the page. What is refused stays in its field, marked red, until it is mended.</source>
        <translation>Was vom Gerät selbst bekannt ist: was es ist, sein Netz, wem es gehört und wo es steht, wie es ankam und was bezahlt wurde. Jedes Feld wird mit Eingabe oder beim Verlassen übernommen; Esc stellt wieder her, was dort stand, und noch einmal Esc geht zurück zur Seite. Was nicht angenommen wird, bleibt rot gekennzeichnet im Feld, bis es berichtigt ist.</translation>
    </message>
    <message>
        <source>No voltage can be read from this, so nothing can be said of the bench’s own mains. Write it like 230 V 50 Hz.</source>
        <translation>Daraus lässt sich keine Spannung lesen, also lässt sich zum Netz der Werkstatt nichts sagen. Schreiben wie 230 V 50 Hz.</translation>
    </message>
    <message>
        <source>Bought in the lot “%1”; its share was fixed at purchase.</source>
        <translation>Im Konvolut „%1“ gekauft; der Anteil wurde beim Kauf festgelegt.</translation>
    </message>
    <message>
        <source>Taken in %1</source>
        <translation>Aufgenommen: %1</translation>
    </message>
    <message>
        <source>%1 since %2</source>
        <translation>%1 seit %2</translation>
    </message>
    <message>
        <source>Imported as %1</source>
        <translation>Eingelesen als %1</translation>
    </message>
</context>
<context>
    <name>ts::DueLine</name>
    <message>
        <source>Worth a look: %1</source>
        <translation>Einen Blick wert: %1</translation>
    </message>
    <message>
        <source>%1; %2 brings %3 from here</source>
        <translation>%1; %2 bringt ab jetzt %3</translation>
    </message>
    <message>
        <source>Shows the ways out on the Money page</source>
        <translation>Zeigt die Auswege auf der Seite „Geld“</translation>
    </message>
</context>
<context>
    <name>ts::EarlierSheets</name>
    <message>
        <source>Handed over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keines</translation>
    </message>
    <message>
        <source>No. %1 · edition %2 · %3 · %4</source>
        <translation>Nr. %1 · Fassung %2 · %3 · %4</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open edition %1</source>
        <translation>Fassung %1 öffnen</translation>
    </message>
    <message>
        <source>%1 restoration sheet %2</source>
        <translation>%1 Restaurierungsblatt %2</translation>
    </message>
    <message>
        <source>Nothing on this computer opens %1 files; write the sheet again and take it to one that does.</source>
        <translation>Auf diesem Rechner öffnet nichts %1-Dateien; das Blatt noch einmal schreiben und zu einem bringen, der es kann.</translation>
    </message>
</context>
<context>
    <name>ts::EditLine</name>
    <message>
        <source>%1: nothing yet. Enter to write it</source>
        <translation>%1: noch nichts. Eingabe, um es zu schreiben</translation>
    </message>
    <message>
        <source>%1: %2. Enter to change it</source>
        <translation>%1: %2. Eingabe, um es zu ändern</translation>
    </message>
</context>
<context>
    <name>ts::EntryForm</name>
    <message>
        <source>no symptom, by itself</source>
        <translation>kein Symptom, für sich</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Leave as it was</source>
        <translation>Lassen, wie es war</translation>
    </message>
</context>
<context>
    <name>ts::ExchangePlace</name>
    <message>
        <source>Units, a table as CSV</source>
        <translation>Geräte, eine Tabelle als CSV</translation>
    </message>
    <message>
        <source>Comparable sales, a table as CSV</source>
        <translation>Vergleichsverkäufe, eine Tabelle als CSV</translation>
    </message>
    <message>
        <source>Parts, a table as CSV</source>
        <translation>Teile, eine Tabelle als CSV</translation>
    </message>
    <message>
        <source>Repair records in the Open Repair Data Standard, CSV</source>
        <translation>Reparaturdaten im Open Repair Data Standard, CSV</translation>
    </message>
    <message>
        <source>The whole workbook without its photos, JSON</source>
        <translation>Das ganze Werkbuch ohne seine Fotos, JSON</translation>
    </message>
    <message>
        <source>The year's books and the cost sheets, for a spreadsheet (xlsx)</source>
        <translation>Die Bücher des Jahres und die Kostenblätter, für eine Tabellenkalkulation (xlsx)</translation>
    </message>
    <message>
        <source>Take a list in</source>
        <translation>Liste einlesen</translation>
    </message>
    <message>
        <source>What the file holds</source>
        <translation>Was die Datei enthält</translation>
    </message>
    <message>
        <source>File to take in</source>
        <translation>Datei zum Einlesen</translation>
    </message>
    <message>
        <source>Choose a file, or drop it here</source>
        <translation>Datei wählen oder hier ablegen</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Only look</source>
        <translation>Nur ansehen</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <source>It &amp;holds</source>
        <translation>Sie &amp;enthält</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>A list goes in whole or not at all, and one Undo takes it back.</source>
        <translation>Eine Liste geht ganz hinein oder gar nicht, und einmal Rückgängig nimmt sie zurück.</translation>
    </message>
    <message>
        <source>Write a list out</source>
        <translation>Liste ausgeben</translation>
    </message>
    <message>
        <source>What is written</source>
        <translation>Was geschrieben wird</translation>
    </message>
    <message>
        <source>Write…</source>
        <translation>Schreiben…</translation>
    </message>
    <message>
        <source>What came of it, by line</source>
        <translation>Was daraus wurde, nach Zeilen</translation>
    </message>
    <message>
        <source>Lists in and out</source>
        <translation>Listen ein und aus</translation>
    </message>
    <message>
        <source>Take in a table of units or of comparable sales, repair records in the Open Repair Data Standard, or a workbook written out as JSON. “Only look” reads the file and says by line what it would do; nothing is changed.</source>
        <translation>Eine Tabelle von Geräten oder Vergleichsverkäufen einlesen, Reparaturdaten im Open Repair Data Standard oder ein als JSON ausgegebenes Werkbuch. „Nur ansehen“ liest die Datei und sagt nach Zeilen, was geschehen würde; geändert wird nichts.</translation>
    </message>
    <message>
        <source>Lists (*.csv *.json);;All files (*)</source>
        <translation>Listen (*.csv *.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>%1 wird gelesen</translation>
    </message>
    <message>
        <source>Taking in %1</source>
        <translation>%1 wird eingelesen</translation>
    </message>
    <message>
        <source>turnscrew</source>
        <translation>turnscrew</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>%1 wird geschrieben</translation>
    </message>
</context>
<context>
    <name>ts::FaultPage</name>
    <message>
        <source>Why is it ruled out: %1?</source>
        <translation>Warum ist sie ausgeschlossen: %1?</translation>
    </message>
    <message>
        <source>What confirmed it: %1?</source>
        <translation>Was hat sie bestätigt: %1?</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>darf leer bleiben</translation>
    </message>
    <message>
        <source>The reason</source>
        <translation>Der Grund</translation>
    </message>
    <message>
        <source>What was seen: %1?</source>
        <translation>Was zeigte sich: %1?</translation>
    </message>
    <message>
        <source>3.3 µF, 0.4 Ω</source>
        <translation>3,3 µF, 0,4 Ω</translation>
    </message>
    <message>
        <source>The result</source>
        <translation>Der Befund</translation>
    </message>
    <message>
        <source>Check %1: %2</source>
        <translation>Prüfung %1: %2</translation>
    </message>
    <message>
        <source>Abnormal in % if it is %1, and if it is not:</source>
        <translation>Abnormal in %, wenn es %1 ist und wenn nicht:</translation>
    </message>
    <message>
        <source>95 5</source>
        <translation>95 5</translation>
    </message>
    <message>
        <source>chance</source>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Type two percentages, like 95 5: how often it comes out abnormal if this is the cause, and if it is not.</source>
        <translation>Zwei Prozentzahlen eingeben wie 95 5: wie oft sie abnormal ausfällt, wenn dies die Ursache ist und wenn nicht.</translation>
    </message>
    <message>
        <source>What was seen?</source>
        <translation>Was war zu sehen?</translation>
    </message>
    <message>
        <source>left channel weak, when warm</source>
        <translation>linker Kanal schwach, wenn warm</translation>
    </message>
    <message>
        <source>The symptom</source>
        <translation>Das Symptom</translation>
    </message>
    <message>
        <source>Symptom: %1</source>
        <translation>Symptom: %1</translation>
    </message>
    <message>
        <source>What did it show?</source>
        <translation>Was zeigte sich?</translation>
    </message>
    <message>
        <source>What is not in order?</source>
        <translation>Was ist nicht in Ordnung?</translation>
    </message>
    <message>
        <source>What it showed</source>
        <translation>Was sich zeigte</translation>
    </message>
    <message>
        <source>Say what it showed, in figures where there are any: a step of first power is not ticked blind.</source>
        <translation>Angeben, was sich zeigte, in Zahlen, wo es welche gibt: Ein Arbeitsschritt vor dem ersten Einschalten wird nicht blind abgehakt.</translation>
    </message>
    <message>
        <source>Before first power: %1, %2</source>
        <translation>Vor dem ersten Einschalten: %1, %2</translation>
    </message>
    <message>
        <source>The cause</source>
        <translation>Die Ursache</translation>
    </message>
    <message>
        <source>A cause needs a text</source>
        <translation>Eine Ursache braucht einen Text</translation>
    </message>
    <message>
        <source>Delete takes it out</source>
        <translation>Entf nimmt sie heraus</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>The text</source>
        <translation>Der Text</translation>
    </message>
    <message>
        <source>A check needs a text</source>
        <translation>Eine Prüfung braucht einen Text</translation>
    </message>
    <message>
        <source>Symptom cleared: %1</source>
        <translation>Symptom behoben: %1</translation>
    </message>
    <message>
        <source>Symptom open again: %1</source>
        <translation>Symptom wieder offen: %1</translation>
    </message>
    <message>
        <source>Neither the notes nor a table know symptoms of such a unit.</source>
        <translation>Weder die Notizen noch eine Tabelle kennen Symptome eines solchen Geräts.</translation>
    </message>
    <message>
        <source>Cause taken out: %1</source>
        <translation>Ursache herausgenommen: %1</translation>
    </message>
    <message>
        <source>Check taken out: %1</source>
        <translation>Prüfung herausgenommen: %1</translation>
    </message>
    <message>
        <source>No symptom is recorded. What was really seen, and under which conditions, is what causes are looked for.</source>
        <translation>Kein Symptom ist eingetragen. Zu dem, was wirklich zu sehen war und unter welchen Bedingungen, werden Ursachen gesucht.</translation>
    </message>
    <message>
        <source>Say what was seen</source>
        <translation>Eintragen, was zu sehen war</translation>
    </message>
    <message>
        <source>Symptom</source>
        <translation>Symptom</translation>
    </message>
    <message>
        <source>Another symptom</source>
        <translation>Weiteres Symptom</translation>
    </message>
    <message>
        <source>Bring in usual causes</source>
        <translation>Übliche Ursachen übernehmen</translation>
    </message>
    <message>
        <source>What the notes on this model, else its category, know of such a symptom, with your own closed units in the weights</source>
        <translation>Was die Notizen zu diesem Modell, sonst zur Kategorie, über ein solches Symptom wissen; eigene abgeschlossene Geräte zählen in den Gewichten mit</translation>
    </message>
    <message>
        <source>From the list…</source>
        <translation>Aus der Liste…</translation>
    </message>
    <message>
        <source>Choose the symptom whose causes are brought in</source>
        <translation>Das Symptom wählen, dessen Ursachen übernommen werden</translation>
    </message>
    <message>
        <source>Possible causes</source>
        <translation>Mögliche Ursachen</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>● would come out abnormal if this were the cause   · no bearing on it</source>
        <translation>● fiele abnormal aus, wenn dies die Ursache wäre   · ohne Bezug dazu</translation>
    </message>
    <message>
        <source>Take the cause out</source>
        <translation>Ursache herausnehmen</translation>
    </message>
    <message>
        <source>Take the check out</source>
        <translation>Prüfung herausnehmen</translation>
    </message>
    <message>
        <source>Say more: how sure the mark is, what was seen</source>
        <translation>Genauer angeben: wie sicher die Marke ist, was zu sehen war</translation>
    </message>
    <message>
        <source>What stands by itself</source>
        <translation>Was für sich steht</translation>
    </message>
    <message>
        <source>%1 (cleared)</source>
        <translation>%1 (behoben)</translation>
    </message>
    <message>
        <source>cleared</source>
        <translation>behoben</translation>
    </message>
    <message>
        <source>seen %1</source>
        <translation>gesehen %1</translation>
    </message>
    <message>
        <source>It is back</source>
        <translation>Es ist wieder da</translation>
    </message>
    <message>
        <source>It is cleared</source>
        <translation>Es ist behoben</translation>
    </message>
    <message>
        <source>Add a cause or bring in the usual ones, and what to check next is worked out.</source>
        <translation>Eine Ursache hinzufügen oder die üblichen übernehmen, dann wird berechnet, was als Nächstes zu prüfen ist.</translation>
    </message>
    <message>
        <source>Nothing is left to find out here.</source>
        <translation>Hier ist nichts mehr herauszufinden.</translation>
    </message>
    <message>
        <source>Cause %1, %2: %3</source>
        <translation>Ursache %1, %2: %3</translation>
    </message>
    <message>
        <source>No causes are known for “%1”. Choose the symptom that comes nearest:</source>
        <translation>Zu „%1“ sind keine Ursachen bekannt. Das nächstliegende Symptom wählen:</translation>
    </message>
    <message>
        <source>The causes of which of these are to be brought in?</source>
        <translation>Die Ursachen welches dieser Symptome sollen übernommen werden?</translation>
    </message>
    <message>
        <source>Where the fault may lie. Type possible causes and checks in the last rows. Space on a mark says that the check would come out abnormal if that were the cause; Ctrl+E says how surely, and on “Came out” what was seen. On “Came out”, n, a and u say normal, abnormal and unclear, d not done. On “State”, r rules a cause out and c confirms it, with the reason. The bars show how likely each cause was before and is now; “Check next” says what saves most minutes. “Bring in usual causes” asks the notes and the category's table; where they know no such symptom, you choose from theirs. Just one cause a symptom is taken to be at work. Unplug and discharge before you touch what can hurt: local codes and licensed practice come first.</source>
        <translation>Wo der Fehler liegen kann. Mögliche Ursachen und Prüfungen in die letzten Zeilen eingeben. Leertaste auf einer Marke sagt, dass die Prüfung abnormal ausfiele, wenn dies die Ursache wäre; Strg+E sagt, wie sicher, und auf „Ergebnis“, was zu sehen war. Auf „Ergebnis“ sagen n, a und u normal, abnormal und unklar, d nicht gemacht. Auf „Zustand“ schließt r eine Ursache aus und c bestätigt sie, mit dem Grund. Die Balken zeigen, wie wahrscheinlich jede Ursache vorher war und jetzt ist; „Als Nächstes prüfen“ sagt, was die meisten Minuten spart. „Übliche Ursachen übernehmen“ sieht in den Notizen und der Tabelle der Kategorie nach; kennen sie kein solches Symptom, wird aus den dort genannten gewählt. Angenommen wird, dass je Symptom nur eine Ursache wirkt. Netzstecker ziehen und entladen, bevor etwas angefasst wird, das verletzen kann: Örtliche Vorschriften und zugelassene Fachkräfte gehen vor.</translation>
    </message>
</context>
<context>
    <name>ts::FeeRow</name>
    <message>
        <source>the item</source>
        <translation>Ware</translation>
    </message>
    <message>
        <source>item and carriage</source>
        <translation>Ware und Fracht</translation>
    </message>
    <message>
        <source>item, carriage and tax</source>
        <translation>Ware, Fracht und Steuer</translation>
    </message>
    <message>
        <source>Fee</source>
        <translation>Gebühr</translation>
    </message>
    <message>
        <source>Percent</source>
        <translation>Prozent</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Fixed</source>
        <translation>Fest</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Über</translation>
    </message>
    <message>
        <source>Up to</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Höchstens</translation>
    </message>
    <message>
        <source>Holds from</source>
        <translation>Gilt ab</translation>
    </message>
    <message>
        <source>until</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>What the fee is for</source>
        <translation>Wofür die Gebühr ist</translation>
    </message>
    <message>
        <source>Percent of what</source>
        <translation>Prozent wovon</translation>
    </message>
    <message>
        <source>Fixed part</source>
        <translation>Fester Teil</translation>
    </message>
    <message>
        <source>For the part above</source>
        <translation>Für den Teil über</translation>
    </message>
    <message>
        <source>For the part up to</source>
        <translation>Für den Teil bis</translation>
    </message>
    <message>
        <source>Holds from this day</source>
        <translation>Gilt ab diesem Tag</translation>
    </message>
    <message>
        <source>Holds until this day</source>
        <translation>Gilt bis zu diesem Tag</translation>
    </message>
    <message>
        <source>always</source>
        <translation>immer</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove the fee %1</source>
        <translation>Gebühr %1 entfernen</translation>
    </message>
    <message>
        <source>Fee removed: %1</source>
        <translation>Gebühr entfernt: %1</translation>
    </message>
    <message>
        <source>The fee was not changed</source>
        <translation>Die Gebühr wurde nicht geändert</translation>
    </message>
    <message>
        <source>it needs a name</source>
        <translation>sie braucht einen Namen</translation>
    </message>
    <message>
        <source>say what it is for</source>
        <translation>angeben, wofür sie ist</translation>
    </message>
    <message>
        <source>“%1” is no day</source>
        <translation>„%1“ ist kein Datum</translation>
    </message>
    <message>
        <source>write it as 2026-11-28</source>
        <translation>schreiben wie 2026-11-28</translation>
    </message>
    <message>
        <source>Fee: %1</source>
        <translation>Gebühr: %1</translation>
    </message>
</context>
<context>
    <name>ts::FindField</name>
    <message>
        <source>Find anything: tag, part, reading, words…</source>
        <translation>Alles durchsuchen: Anhänger, Teil, Messwert, Wörter…</translation>
    </message>
    <message>
        <source>Find anything</source>
        <translation>Alles durchsuchen</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>Nothing in this workbook has “%1”.</source>
        <translation>Nichts in diesem Werkbuch enthält „%1“.</translation>
    </message>
</context>
<context>
    <name>ts::FirstPowerView</name>
    <message>
        <source>pass</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>aufhören</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation>nicht zutreffend</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Arbeitsschritt</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>The value, or what was seen; a step is not ticked without it</source>
        <translation>Der Wert, oder was zu sehen war; ohne das wird kein Arbeitsschritt abgehakt</translation>
    </message>
    <message>
        <source>Came out</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>Stop: %1</source>
        <translation>Aufhören: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>First power, step by step</source>
        <translation>Erstes Einschalten, Schritt für Schritt</translation>
    </message>
    <message>
        <source>This unit takes no mains: there is no first power to go through step by step.</source>
        <translation>Dieses Gerät läuft nicht am Netz: Es gibt kein erstes Einschalten Schritt für Schritt.</translation>
    </message>
    <message>
        <source>Do not power</source>
        <translation>Nicht einschalten</translation>
    </message>
    <message>
        <source>Safe to power</source>
        <translation>Darf eingeschaltet werden</translation>
    </message>
    <message>
        <source>Takes the flag away; a ladder that is passed does not do so by itself</source>
        <translation>Nimmt den Vermerk weg; eine bestandene Schrittfolge tut das nicht von selbst</translation>
    </message>
    <message>
        <source>Enter what was found · S stop · N not applicable</source>
        <translation>Eintragen, was sich zeigte · S aufhören · N nicht zutreffend</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>%1 of %2 steps passed</source>
        <translation>%1 von %2 Arbeitsschritten bestanden</translation>
    </message>
    <message>
        <source>
Every step is passed now. The flag stays until you take it away.</source>
        <translation>
Jetzt ist jeder Arbeitsschritt bestanden. Der Vermerk bleibt, bis Sie ihn wegnehmen.</translation>
    </message>
</context>
<context>
    <name>ts::FirstStart</name>
    <message>
        <source>Turnscrew</source>
        <translation>Turnscrew</translation>
    </message>
    <message>
        <source>The workbook of a restorer: from taking a unit in to the buyer’s sheet.</source>
        <translation>Das Werkbuch für die Restaurierung: von der Aufnahme eines Geräts bis zum Blatt für den Käufer.</translation>
    </message>
    <message>
        <source>A new workbook</source>
        <translation>Ein neues Werkbuch</translation>
    </message>
    <message>
        <source>One file, wherever you put it. Everything you record goes into it, and nowhere else.</source>
        <translation>Eine Datei an beliebigem Ort. Alles, was eingetragen wird, kommt dort hinein und nirgends sonst hin.</translation>
    </message>
    <message>
        <source>New workbook…</source>
        <translation>Neues Werkbuch…</translation>
    </message>
    <message>
        <source>One that is there</source>
        <translation>Ein vorhandenes</translation>
    </message>
    <message>
        <source>A workbook that you made before, or one that a colleague gave you.</source>
        <translation>Ein Werkbuch, das schon angelegt ist oder von jemand anderem kommt.</translation>
    </message>
    <message>
        <source>Open workbook…</source>
        <translation>Werkbuch öffnen…</translation>
    </message>
    <message>
        <source>The demo</source>
        <translation>Die Demo</translation>
    </message>
    <message>
        <source>An invented bench with units over every stage, to look around in and to spoil.</source>
        <translation>Eine erfundene Werkbank mit Geräten in allen Stufen, zum Umsehen und zum Verderben.</translation>
    </message>
    <message>
        <source>Look at the demo</source>
        <translation>Demo ansehen</translation>
    </message>
    <message>
        <source>Opened before</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
</context>
<context>
    <name>ts::ForecastCard</name>
    <message>
        <source>Forecast</source>
        <translation>Vorhersage</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>Insgesamt</translation>
    </message>
    <message>
        <source>1 in 10</source>
        <translation>1 von 10</translation>
    </message>
    <message>
        <source>Middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>9 in 10</source>
        <translation>9 von 10</translation>
    </message>
    <message>
        <source>Causes still open</source>
        <translation>Noch offene Ursachen</translation>
    </message>
    <message>
        <source>Cause still open</source>
        <translation>Noch offene Ursache</translation>
    </message>
    <message>
        <source>Chance</source>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>From here</source>
        <translation>Ab jetzt</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Being worked out…</source>
        <translation>Wird berechnet…</translation>
    </message>
    <message>
        <source>Nothing says yet what it fetches. Write sales down at the right, or type a planned resale in the table: then this says what could come of it.</source>
        <translation>Noch sagt nichts, was es bringt. Rechts Verkäufe aufschreiben oder in der Tabelle einen geplanten Wiederverkauf eingeben: Dann steht hier, was daraus werden könnte.</translation>
    </message>
    <message>
        <source>as you type, not recorded</source>
        <translation>während der Eingabe, nicht eingetragen</translation>
    </message>
    <message>
        <source>%1 draws</source>
        <translation>%1 Ziehungen</translation>
    </message>
    <message>
        <source>With your hours to come paid it comes to %1 on average.</source>
        <translation>Sind die ausstehenden eigenen Stunden bezahlt, bleibt im Mittel %1.</translation>
    </message>
    <message>
        <source>Profit before your hours</source>
        <translation>Gewinn vor eigenen Stunden</translation>
    </message>
    <message>
        <source>Earned per hour</source>
        <translation>Verdienst je Stunde</translation>
    </message>
    <message>
        <source>Hours to come</source>
        <translation>Ausstehende Stunden</translation>
    </message>
    <message>
        <source>Parts to come</source>
        <translation>Ausstehende Teile</translation>
    </message>
    <message>
        <source>Days that money is tied up</source>
        <translation>Tage, die das Geld gebunden ist</translation>
    </message>
    <message>
        <source>Chance of a loss: %1. Chance that it is put right: %2.</source>
        <translation>Wahrscheinlichkeit eines Verlusts: %1. Wahrscheinlichkeit, dass es repariert wird: %2.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>ts::FoundModel</name>
    <message>
        <source>%1 %2: %3</source>
        <translation>%1 %2: %3</translation>
    </message>
</context>
<context>
    <name>ts::GridDelegate</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>ts::HandoverPage</name>
    <message>
        <source>Write PDF…</source>
        <translation>PDF schreiben…</translation>
    </message>
    <message>
        <source>Write web page…</source>
        <translation>Webseite schreiben…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>The sheet warns of this first</source>
        <translation>Davor warnt das Blatt zuerst</translation>
    </message>
    <message>
        <source>Flaws a buyer should know</source>
        <translation>Mängel, von denen ein Käufer wissen soll</translation>
    </message>
    <message>
        <source>another flaw: scratch on the lid, 40 mm</source>
        <translation>weiterer Mangel: Kratzer auf dem Deckel, 40 mm</translation>
    </message>
    <message>
        <source>Remarks on its use</source>
        <translation>Hinweise zum Gebrauch</translation>
    </message>
    <message>
        <source>another remark: let it warm up before recording</source>
        <translation>weiterer Hinweis: vor der Aufnahme warmlaufen lassen</translation>
    </message>
    <message>
        <source>What was not done</source>
        <translation>Was nicht gemacht wurde</translation>
    </message>
    <message>
        <source>worked out, always printed</source>
        <translation>wird ermittelt, immer gedruckt</translation>
    </message>
    <message>
        <source>Bench, terms and paper</source>
        <translation>Werkstatt, Bedingungen und Papier</translation>
    </message>
    <message>
        <source>Name of the bench</source>
        <translation>Name der Werkstatt</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Anschrift</translation>
    </message>
    <message>
        <source>Who does the work</source>
        <translation>Wer die Arbeit macht</translation>
    </message>
    <message>
        <source>Terms</source>
        <translation>Bedingungen</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>A4, unless chosen otherwise</source>
        <translation>A4, wenn nichts anderes gewählt ist</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>The sheet as the buyer gets it, from what was recorded; what was not done is worked out and always printed. Ctrl and the wheel come closer. Each sheet that is written or printed is numbered and kept in the workbook as it was, whatever happens to the unit afterwards.</source>
        <translation>Das Blatt, wie der Käufer es bekommt, aus dem, was eingetragen wurde; was nicht gemacht wurde, wird ermittelt und immer gedruckt. Strg und Mausrad holen es näher heran. Jedes geschriebene oder gedruckte Blatt bekommt eine Nummer und bleibt im Werkbuch, wie es war, was danach auch mit dem Gerät geschieht.</translation>
    </message>
    <message>
        <source>Nothing is missing from the record.</source>
        <translation>Im Werkbuch fehlt nichts.</translation>
    </message>
    <message>
        <source>Write the sheet as PDF</source>
        <translation>Blatt als PDF schreiben</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Write the sheet as a web page</source>
        <translation>Blatt als Webseite schreiben</translation>
    </message>
    <message>
        <source>Web page (*.html)</source>
        <translation>Webseite (*.html)</translation>
    </message>
    <message>
        <source>%1 restoration sheet</source>
        <translation>%1 Restaurierungsblatt</translation>
    </message>
    <message>
        <source>Wrote %1: restoration sheet %2, edition %3.</source>
        <translation>%1 geschrieben: Restaurierungsblatt %2, Fassung %3.</translation>
    </message>
    <message>
        <source>Print the sheet</source>
        <translation>Blatt drucken</translation>
    </message>
    <message>
        <source>Printed restoration sheet %1, edition %2.</source>
        <translation>Restaurierungsblatt %1 gedruckt, Fassung %2.</translation>
    </message>
    <message>
        <source>The printer did not begin; the workbook kept the sheet, and it can be opened and printed from there.</source>
        <translation>Der Drucker fing nicht an; das Werkbuch hat das Blatt behalten, es lässt sich dort öffnen und drucken.</translation>
    </message>
    <message>
        <source>The printer stopped at page %1; the workbook kept the sheet.</source>
        <translation>Der Drucker hörte bei Seite %1 auf; das Werkbuch hat das Blatt behalten.</translation>
    </message>
</context>
<context>
    <name>ts::HeldAsk</name>
    <message>
        <source>belt 78 × 4 × 0.6</source>
        <translation>Riemen 78 × 4 × 0,6</translation>
    </message>
    <message>
        <source>28 Nov, Friday</source>
        <translation>28 Nov, Friday</translation>
    </message>
    <message>
        <source>Waiting for</source>
        <translation>Wartet auf</translation>
    </message>
    <message>
        <source>Until (if you know)</source>
        <translation>Bis (wenn bekannt)</translation>
    </message>
</context>
<context>
    <name>ts::HelpCard</name>
    <message>
        <source>Put away</source>
        <translation>Ausblenden</translation>
    </message>
    <message>
        <source>What this page is for</source>
        <translation>Wozu diese Seite da ist</translation>
    </message>
    <message>
        <source>Ctrl+K finds anything. Ctrl+1 to Ctrl+8 are the unit’s pages, Ctrl+D its details, Alt+1 to Alt+9 move it to a stage from Scouted to Closed. Alt+Up and Alt+Down go along the rack, F9 starts and stops the clock, Ctrl+Z undoes.</source>
        <translation>Strg+K durchsucht alles. Strg+1 bis Strg+8 sind die Seiten des Geräts, Strg+D seine Details, Alt+1 bis Alt+9 setzen es auf eine Stufe von Gesichtet bis Abgeschlossen. Alt+Auf und Alt+Ab gehen durch das Regal, F9 startet die Stoppuhr und hält sie an, Strg+Z macht rückgängig.</translation>
    </message>
    <message>
        <source>Every action is in the menu with its key.</source>
        <translation>Jede Aktion steht mit ihrer Taste im Menü.</translation>
    </message>
</context>
<context>
    <name>ts::HistoryPlace</name>
    <message>
        <source>This unit</source>
        <translation>Dieses Gerät</translation>
    </message>
    <message>
        <source>The whole workbook</source>
        <translation>Das ganze Werkbuch</translation>
    </message>
    <message>
        <source>Undo the last</source>
        <translation>Letztes rückgängig machen</translation>
    </message>
    <message>
        <source>Do it again</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>What was done, newest first</source>
        <translation>Was getan wurde, Neuestes zuerst</translation>
    </message>
    <message>
        <source>Show more</source>
        <translation>Mehr zeigen</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Everything that was recorded, newest first, with who did it and when. Undo takes back the last change of the workbook; it also works after a restart. A line struck through was taken back.</source>
        <translation>Alles, was eingetragen wurde, Neuestes zuerst, mit wem und wann. Rückgängig nimmt die letzte Änderung des Werkbuchs zurück, auch nach einem Neustart. Eine durchgestrichene Zeile wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>Unit %1</source>
        <translation>Gerät %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>%1, taken back</source>
        <translation>%1, zurückgenommen</translation>
    </message>
</context>
<context>
    <name>ts::JotBar</name>
    <message>
        <source>CN2.4 = 11.92 V want 12 V 5% · saw reel stops · did cleaned the switch 20m · F1 has more</source>
        <translation>CN2.4 = 11.92 V want 12 V 5% · saw reel stops · did cleaned the switch 20m · F1 zeigt mehr</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>nicht eingetragen</translation>
    </message>
    <message>
        <source>is it so?</source>
        <translation>stimmt das?</translation>
    </message>
    <message>
        <source>%1 Enter again records it, Esc goes back to the line.</source>
        <translation>%1 Noch einmal Eingabe trägt es ein, Esc geht zurück zur Zeile.</translation>
    </message>
</context>
<context>
    <name>ts::JotLine</name>
    <message>
        <source>Jot a line</source>
        <translation>Zeile notieren</translation>
    </message>
    <message>
        <source>Jot what you saw, read, did, paid…</source>
        <translation>Notieren, was zu sehen war, gemessen, getan, bezahlt wurde…</translation>
    </message>
    <message>
        <source>Enter to record</source>
        <translation>Eingabe zum Eintragen</translation>
    </message>
    <message>
        <source>Tab completes</source>
        <translation>Tab ergänzt</translation>
    </message>
</context>
<context>
    <name>ts::LaneChips</name>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Show all kinds of entries</source>
        <translation>Alle Arten von Einträgen zeigen</translation>
    </message>
    <message>
        <source>Show only: %1</source>
        <translation>Nur zeigen: %1</translation>
    </message>
</context>
<context>
    <name>ts::LeavingBar</name>
    <message>
        <source>What comes next?</source>
        <translation>Was kommt als Nächstes?</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Was als Nächstes kommt</translation>
    </message>
    <message>
        <source>loose: %1</source>
        <translation>lose: %1</translation>
    </message>
    <message>
        <source>its clock runs</source>
        <translation>seine Stoppuhr läuft</translation>
    </message>
    <message>
        <source>; its clock runs</source>
        <translation>; seine Stoppuhr läuft</translation>
    </message>
    <message>
        <source>Note it and close</source>
        <translation>Notieren und schließen</translation>
    </message>
    <message>
        <source>Note it</source>
        <translation>Notieren</translation>
    </message>
    <message>
        <source>Stop the clock and close</source>
        <translation>Stoppuhr anhalten und schließen</translation>
    </message>
    <message>
        <source>Note it and stop the clock</source>
        <translation>Notieren und Stoppuhr anhalten</translation>
    </message>
    <message>
        <source>Close as it is</source>
        <translation>Schließen, wie es ist</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>%1 is put down, %2.</source>
        <translation>%1 wird weggelegt, %2.</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
    <message>
        <source>The clock of %1 runs.</source>
        <translation>Die Stoppuhr von %1 läuft.</translation>
    </message>
    <message>
        <source>Stop it and close</source>
        <translation>Anhalten und schließen</translation>
    </message>
    <message>
        <source>Let it run and close</source>
        <translation>Laufen lassen und schließen</translation>
    </message>
</context>
<context>
    <name>ts::LedgerModel</name>
    <message>
        <source>purchase</source>
        <translation>Kauf</translation>
    </message>
    <message>
        <source>carriage in</source>
        <translation>Fracht herein</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>consumable</source>
        <translation>Verbrauchsmaterial</translation>
    </message>
    <message>
        <source>outside work</source>
        <translation>Fremdarbeit</translation>
    </message>
    <message>
        <source>overhead</source>
        <translation>Gemeinkosten</translation>
    </message>
    <message>
        <source>packing</source>
        <translation>Verpackung</translation>
    </message>
    <message>
        <source>carriage out</source>
        <translation>Fracht hinaus</translation>
    </message>
    <message>
        <source>selling fee</source>
        <translation>Verkaufsgebühr</translation>
    </message>
    <message>
        <source>sale</source>
        <translation>Verkauf</translation>
    </message>
    <message>
        <source>refund</source>
        <translation>Erstattung</translation>
    </message>
    <message>
        <source>deposit</source>
        <translation>Anzahlung</translation>
    </message>
    <message>
        <source>other</source>
        <translation>Sonstiges</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>the bench</source>
        <translation>die Werkstatt</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>What for</source>
        <translation>Wofür</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Ausgabe</translation>
    </message>
    <message>
        <source>In</source>
        <translation>Einnahme</translation>
    </message>
</context>
<context>
    <name>ts::LedgerPlace</name>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>Narrow: a tag, a word…</source>
        <translation>Eingrenzen: ein Anhänger, ein Wort…</translation>
    </message>
    <message>
        <source>Narrow the ledger</source>
        <translation>Kassenbuch eingrenzen</translation>
    </message>
    <message>
        <source>Money out and in</source>
        <translation>Geld hinaus und herein</translation>
    </message>
    <message>
        <source>Ledger</source>
        <translation>Kassenbuch</translation>
    </message>
    <message>
        <source>Enter on a line opens its unit. No tax advice; rates and rules are yours to set.</source>
        <translation>Eingabe auf einer Zeile öffnet ihr Gerät. Keine Steuerberatung; Sätze und Regeln legen Sie selbst fest.</translation>
    </message>
    <message>
        <source>Reading the ledger</source>
        <translation>Kassenbuch wird gelesen</translation>
    </message>
    <message>
        <source>All years</source>
        <translation>Alle Jahre</translation>
    </message>
    <message>
        <source>out %1 · in %2 · left %3</source>
        <translation>hinaus %1 · herein %2 · bleibt %3</translation>
    </message>
    <message numerus="yes">
        <source>%n sum(s) without a rate left out</source>
        <translation>
            <numerusform>%n Betrag ohne Kurs weggelassen</numerusform><numerusform>%n Beträge ohne Kurs weggelassen</numerusform></translation>
    </message>
    <message>
        <source>Stock book</source>
        <translation>Bestandsbuch</translation>
    </message>
    <message>
        <source>Books</source>
        <translation>Bücher</translation>
    </message>
    <message>
        <source>Write a spreadsheet…</source>
        <translation>Tabellenkalkulation schreiben…</translation>
    </message>
    <message>
        <source>The year's money, the stock book and all cost sheets, with live formulas (xlsx)</source>
        <translation>Das Geld des Jahres, das Bestandsbuch und alle Kostenblätter, mit rechnenden Formeln (xlsx)</translation>
    </message>
    <message>
        <source>Write as CSV…</source>
        <translation>Als CSV schreiben…</translation>
    </message>
    <message>
        <source>The year's money, a line a movement</source>
        <translation>Das Geld des Jahres, eine Zeile je Bewegung</translation>
    </message>
    <message>
        <source>Every sum that went out or came in, on units and on the bench as a whole, and the stock book: each unit with what it was bought and sold for. Sums are jotted in the Log of their unit: paid carriage 8.40, got sale 120. The totals are in the bench's currency; a sum in another one counts where its worth was entered. Margin and the tax in it appear where Settings name a rate.</source>
        <translation>Jeder Betrag, der hinausging oder hereinkam, für Geräte und für die Werkstatt als Ganzes, und das Bestandsbuch: jedes Gerät mit dem, wofür es gekauft und verkauft wurde. Beträge werden im Protokoll ihres Geräts notiert: paid carriage 8.40, got sale 120. Die Summen stehen in der Währung der Werkstatt; ein Betrag in einer anderen zählt, wo sein Wert eingetragen ist. Marge und Steuer darin erscheinen, wo die Einstellungen einen Satz nennen.</translation>
    </message>
    <message>
        <source>in stock at the end of the year, at cost: %1</source>
        <translation>im Bestand am Jahresende, zu Kosten: %1</translation>
    </message>
    <message>
        <source>in stock, at cost: %1</source>
        <translation>im Bestand, zu Kosten: %1</translation>
    </message>
    <message>
        <source>margin %1, tax in it %2</source>
        <translation>Marge %1, Steuer darin %2</translation>
    </message>
    <message>
        <source>books %1</source>
        <translation>Bücher %1</translation>
    </message>
    <message>
        <source>books</source>
        <translation>Bücher</translation>
    </message>
    <message>
        <source>Write the year's books</source>
        <translation>Bücher des Jahres schreiben</translation>
    </message>
    <message>
        <source>Write the year's money</source>
        <translation>Geld des Jahres schreiben</translation>
    </message>
    <message>
        <source>Spreadsheet (*.xlsx)</source>
        <translation>Tabellenkalkulation (*.xlsx)</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabelle (*.csv)</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>%1 wird geschrieben</translation>
    </message>
</context>
<context>
    <name>ts::LeftOffBox</name>
    <message>
        <source>Where you were</source>
        <translation>Letzter Stand</translation>
    </message>
    <message>
        <source>Where were you?</source>
        <translation>Wo stand die Arbeit?</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Was als Nächstes kommt</translation>
    </message>
    <message>
        <source>What comes next?</source>
        <translation>Was kommt als Nächstes?</translation>
    </message>
    <message>
        <source>What else lies loose</source>
        <translation>Was sonst lose liegt</translation>
    </message>
    <message>
        <source>Nothing lies loose</source>
        <translation>Nichts liegt lose</translation>
    </message>
    <message>
        <source>Why it must not be powered</source>
        <translation>Warum es nicht eingeschaltet werden darf</translation>
    </message>
    <message>
        <source>May be powered, as far as is known</source>
        <translation>Darf eingeschaltet werden, soweit bekannt</translation>
    </message>
    <message>
        <source>Left off: %1</source>
        <translation>Stand: %1</translation>
    </message>
    <message>
        <source>Nothing is next</source>
        <translation>Nichts steht als Nächstes an</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
    <message>
        <source>Loose: %1</source>
        <translation>Lose: %1</translation>
    </message>
    <message>
        <source>Safe to power</source>
        <translation>Darf eingeschaltet werden</translation>
    </message>
    <message>
        <source>Do not power: %1</source>
        <translation>Nicht einschalten: %1</translation>
    </message>
    <message>
        <source>Where you left off</source>
        <translation>Letzter Stand</translation>
    </message>
    <message>
        <source>Left off %1 %2</source>
        <translation>Stand %1 %2</translation>
    </message>
    <message>
        <source>Left off %1</source>
        <translation>Stand %1</translation>
    </message>
</context>
<context>
    <name>ts::LikeUnits</name>
    <message>
        <source>Alt+L  like</source>
        <translation>Alt+L  wie</translation>
    </message>
    <message>
        <source>Copy from %1 %2</source>
        <translation>Übernehmen von %1 %2</translation>
    </message>
    <message>
        <source>Copies its name, maker, model, category, mains, protection class and test points</source>
        <translation>Übernimmt Name, Hersteller, Modell, Kategorie, Netz, Schutzklasse und Messpunkte</translation>
    </message>
</context>
<context>
    <name>ts::LimitCard</name>
    <message>
        <source>No test point is chosen</source>
        <translation>Kein Messpunkt ist gewählt</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <translation>%1 %2 %3</translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation>Soll %1</translation>
    </message>
    <message>
        <source>, wanted %1</source>
        <translation>, Soll %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht gemessen</translation>
    </message>
</context>
<context>
    <name>ts::LogChart</name>
    <message>
        <source>Hours and money</source>
        <translation>Stunden und Geld</translation>
    </message>
    <message>
        <source>Show the chart of hours and money</source>
        <translation>Diagramm von Stunden und Geld zeigen</translation>
    </message>
    <message>
        <source>Fold the chart of hours and money away</source>
        <translation>Diagramm von Stunden und Geld einklappen</translation>
    </message>
    <message>
        <source>Chart of hours and money over time</source>
        <translation>Diagramm von Stunden und Geld im Lauf der Zeit</translation>
    </message>
</context>
<context>
    <name>ts::LogPage</name>
    <message>
        <source>Choose entries of the log first; they can then be moved to another unit.</source>
        <translation>Erst Einträge des Protokolls wählen; dann lassen sie sich zu einem anderen Gerät verschieben.</translation>
    </message>
    <message>
        <source>&amp;Look at the photo</source>
        <translation>Foto an&amp;sehen</translation>
    </message>
    <message>
        <source>&amp;Edit	Enter</source>
        <translation>&amp;Bearbeiten	Eingabe</translation>
    </message>
    <message>
        <source>&amp;Move to another unit…</source>
        <translation>Zu anderem Gerät &amp;verschieben…</translation>
    </message>
    <message>
        <source>&amp;Take out	Del</source>
        <translation>&amp;Herausnehmen	Entf</translation>
    </message>
    <message>
        <source>Everything that happened to this unit, day by day. What you type goes into the line at the foot; under it stands what will be recorded, and Enter records it. Tab completes test points, parts and causes of this unit, Up brings back what you recorded before.
Readings: CN2.4 = 11.92 V want 12 V 5% · insulation = 200 MΩ want &gt;= 2 MΩ with insulation tester · add found, during or after for the phase.
Faults: saw …, cleared …, think … 40%, ruled out …, was …, check … 5m normal.
Work: did … 20m. Parts: need … 2.50, ordered …, here …, fitted …. Money: paid … 8.40, got … 5.00.
Taking apart: off lid 5 screws M3x8 tray A1, back lid. Proofs: proved …, failed …; what is still to be proved stands under Proving. Where you are: next …, do not power …, safe to power, waiting … until 28 Nov. Anything else is a note.
In the list: Enter edits an entry in its place, Delete takes it out, Ctrl+M moves the chosen ones to another unit; Shift and the arrow keys choose several. Ctrl+Z takes anything back.</source>
        <translation>Alles, was mit diesem Gerät geschah, Tag für Tag. Eingaben kommen in die Zeile ganz unten; darunter steht, was eingetragen wird, und die Eingabetaste trägt es ein. Tab ergänzt Messpunkte, Teile und Ursachen dieses Geräts, Auf holt frühere Eingaben zurück.
Messwerte: CN2.4 = 11.92 V want 12 V 5% · insulation = 200 MΩ want &gt;= 2 MΩ with insulation tester · found, during oder after für die Phase anfügen.
Fehler: saw …, cleared …, think … 40%, ruled out …, was …, check … 5m normal.
Arbeit: did … 20m. Teile: need … 2.50, ordered …, here …, fitted …. Geld: paid … 8.40, got … 5.00.
Zerlegung: off lid 5 screws M3x8 tray A1, back lid. Abnahmen: proved …, failed …; was noch abzunehmen ist, steht unter „Abnahme“. Stand: next …, do not power …, safe to power, waiting … until 28 Nov. Alles andere ist eine Notiz.
In der Liste: Eingabe bearbeitet einen Eintrag an seinem Platz, Entf nimmt ihn heraus, Strg+M verschiebt die gewählten zu einem anderen Gerät; Umschalt und die Pfeiltasten wählen mehrere. Strg+Z nimmt alles zurück.</translation>
    </message>
</context>
<context>
    <name>ts::LogView</name>
    <message>
        <source>Log of the unit</source>
        <translation>Protokoll des Geräts</translation>
    </message>
</context>
<context>
    <name>ts::LogWords</name>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation>Gestern</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message numerus="yes">
        <source>%n photos</source>
        <translation>
            <numerusform>%n Foto</numerusform><numerusform>%n Fotos</numerusform></translation>
    </message>
    <message>
        <source>Symptom cleared: %1</source>
        <translation>Symptom behoben: %1</translation>
    </message>
    <message>
        <source>Symptom: %1</source>
        <translation>Symptom: %1</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Aufgenommen</translation>
    </message>
    <message>
        <source>claim “%1”</source>
        <translation>Angabe „%1“</translation>
    </message>
    <message>
        <source>looks: %1</source>
        <translation>Aussehen: %1</translation>
    </message>
    <message>
        <source>function: %1</source>
        <translation>Funktion: %1</translation>
    </message>
    <message>
        <source>earlier work: %1</source>
        <translation>frühere Arbeiten: %1</translation>
    </message>
    <message>
        <source>with it: %1</source>
        <translation>dabei: %1</translation>
    </message>
    <message>
        <source>Bought for %1</source>
        <translation>Gekauft für %1</translation>
    </message>
    <message>
        <source>Paid %1: %2</source>
        <translation>%1 bezahlt: %2</translation>
    </message>
    <message>
        <source>Got %1: %2</source>
        <translation>%1 erhalten: %2</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>an %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>Possible cause: %1</source>
        <translation>Mögliche Ursache: %1</translation>
    </message>
    <message>
        <source>of: %1</source>
        <translation>zu: %1</translation>
    </message>
    <message>
        <source>Cause confirmed: %1</source>
        <translation>Ursache bestätigt: %1</translation>
    </message>
    <message>
        <source>Ruled out: %1</source>
        <translation>Ausgeschlossen: %1</translation>
    </message>
    <message>
        <source>Check came out %1: %2</source>
        <translation>Prüfung ergab %1: %2</translation>
    </message>
    <message>
        <source>Check to do: %1</source>
        <translation>Anstehende Prüfung: %1</translation>
    </message>
    <message>
        <source>no value</source>
        <translation>kein Wert</translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation>Soll %1</translation>
    </message>
    <message>
        <source>was %1</source>
        <translation>vorher %1</translation>
    </message>
    <message>
        <source>Soak ended: %1</source>
        <translation>Dauerlauf beendet: %1</translation>
    </message>
    <message>
        <source>Soak begun: %1</source>
        <translation>Dauerlauf begonnen: %1</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>nach %1</translation>
    </message>
    <message>
        <source>interrupted: %1</source>
        <translation>unterbrochen: %1</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>Needed: %1</source>
        <translation>Gebraucht: %1</translation>
    </message>
    <message>
        <source>Ordered: %1</source>
        <translation>Bestellt: %1</translation>
    </message>
    <message>
        <source>Here: %1</source>
        <translation>Da: %1</translation>
    </message>
    <message>
        <source>Fitted: %1</source>
        <translation>Eingebaut: %1</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>in place of %1</source>
        <translation>statt %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Weggelassen: %1</translation>
    </message>
    <message>
        <source>Back: %1</source>
        <translation>Wieder dran: %1</translation>
    </message>
    <message>
        <source>Off: %1</source>
        <translation>Ab: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n fastener(s)</source>
        <translation>
            <numerusform>%n Befestigungsteil</numerusform><numerusform>%n Befestigungsteile</numerusform></translation>
    </message>
    <message>
        <source>kept in %1</source>
        <translation>liegt in %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>Proof %1: %2</source>
        <translation>Abnahme %1: %2</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>nach %1</translation>
    </message>
    <message>
        <source>%1 no. %2</source>
        <translation>%1 Nr. %2</translation>
    </message>
    <message>
        <source>edition %1</source>
        <translation>Fassung %1</translation>
    </message>
    <message>
        <source>Left off</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Left off: %1</source>
        <translation>Stand: %1</translation>
    </message>
    <message>
        <source>next: %1</source>
        <translation>als Nächstes: %1</translation>
    </message>
    <message>
        <source>loose: %1</source>
        <translation>lose: %1</translation>
    </message>
    <message>
        <source>do not power: %1</source>
        <translation>nicht einschalten: %1</translation>
    </message>
    <message>
        <source>Clock ran until %1</source>
        <translation>Stoppuhr lief bis %1</translation>
    </message>
    <message>
        <source>Clock runs</source>
        <translation>Stoppuhr läuft</translation>
    </message>
    <message>
        <source>takes %1</source>
        <translation>dauert %1</translation>
    </message>
    <message>
        <source>to come %1</source>
        <translation>steht aus: %1</translation>
    </message>
    <message>
        <source>got %1</source>
        <translation>erhalten %1</translation>
    </message>
    <message>
        <source>spent %1</source>
        <translation>ausgegeben %1</translation>
    </message>
    <message>
        <source>its minutes are in the clock's time, not counted again</source>
        <translation>seine Minuten stecken in der Zeit der Stoppuhr und zählen nicht noch einmal</translation>
    </message>
    <message>
        <source>First power, stop: %1</source>
        <translation>Erstes Einschalten, aufhören: %1</translation>
    </message>
    <message>
        <source>First power, %1: %2</source>
        <translation>Erstes Einschalten, %1: %2</translation>
    </message>
    <message>
        <source>Decided: %1</source>
        <translation>Entschieden: %1</translation>
    </message>
</context>
<context>
    <name>ts::MainWindow</name>
    <message>
        <source>Turnscrew</source>
        <translation>Turnscrew</translation>
    </message>
    <message>
        <source>%1 · Turnscrew</source>
        <translation>%1 · Turnscrew</translation>
    </message>
    <message>
        <source>A new workbook</source>
        <translation>Neues Werkbuch</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>werkbank</translation>
    </message>
    <message>
        <source>Workbooks (*.turnscrew)</source>
        <translation>Werkbücher (*.turnscrew)</translation>
    </message>
    <message>
        <source>Open a workbook</source>
        <translation>Werkbuch öffnen</translation>
    </message>
    <message>
        <source>Workbooks (*.turnscrew);;All files (*)</source>
        <translation>Werkbücher (*.turnscrew);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The demo workbook was not made</source>
        <translation>Das Demo-Werkbuch wurde nicht angelegt</translation>
    </message>
    <message>
        <source>the folder %1 cannot be made</source>
        <translation>der Ordner %1 lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>Making a backup</source>
        <translation>Sicherung wird angelegt</translation>
    </message>
    <message>
        <source>A backup was made and checked: %1</source>
        <translation>Sicherung angelegt und geprüft: %1</translation>
    </message>
</context>
<context>
    <name>ts::Menus</name>
    <message>
        <source>&amp;Workbook</source>
        <translation>&amp;Werkbuch</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>&amp;Gerät</translation>
    </message>
    <message>
        <source>&amp;Bench</source>
        <translation>Werk&amp;bank</translation>
    </message>
    <message>
        <source>&amp;Money</source>
        <translation>Ge&amp;ld</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation>&amp;Neu…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Opened &amp;before</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Look at the &amp;demo</source>
        <translation>&amp;Demo ansehen</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;History</source>
        <translation>&amp;Verlauf</translation>
    </message>
    <message>
        <source>Lists &amp;in and out</source>
        <translation>&amp;Listen ein und aus</translation>
    </message>
    <message>
        <source>Make a &amp;backup now</source>
        <translation>Jetzt &amp;Sicherung anlegen</translation>
    </message>
    <message>
        <source>Look whether it is &amp;sound</source>
        <translation>Auf Schäden &amp;prüfen</translation>
    </message>
    <message>
        <source>Looking through the workbook</source>
        <translation>Werkbuch wird durchgesehen</translation>
    </message>
    <message>
        <source>%1 is sound.</source>
        <translation>%1 ist unbeschädigt.</translation>
    </message>
    <message>
        <source>%1 is not sound</source>
        <translation>%1 ist beschädigt</translation>
    </message>
    <message>
        <source>keep it and open the newest backup</source>
        <translation>aufheben und die neueste Sicherung öffnen</translation>
    </message>
    <message>
        <source>Se&amp;ttings</source>
        <translation>&amp;Einstellungen</translation>
    </message>
    <message>
        <source>&amp;Close workbook</source>
        <translation>Werkbuch s&amp;chließen</translation>
    </message>
    <message>
        <source>&amp;Leave Turnscrew</source>
        <translation>Turnscrew &amp;beenden</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>&amp;Take in a unit…</source>
        <translation>Gerät &amp;aufnehmen…</translation>
    </message>
    <message>
        <source>&amp;Find anything</source>
        <translation>Alles &amp;durchsuchen</translation>
    </message>
    <message>
        <source>&amp;Narrow the rack</source>
        <translation>&amp;Regal eingrenzen</translation>
    </message>
    <message>
        <source>N&amp;ext tag</source>
        <translation>&amp;Nächster Anhänger</translation>
    </message>
    <message>
        <source>&amp;Previous tag</source>
        <translation>Vori&amp;ger Anhänger</translation>
    </message>
    <message>
        <source>Start or stop the &amp;clock</source>
        <translation>&amp;Stoppuhr starten oder anhalten</translation>
    </message>
    <message>
        <source>&amp;Cost against resale</source>
        <translation>&amp;Kosten gegen Wiederverkauf</translation>
    </message>
    <message>
        <source>&amp;Ledger</source>
        <translation>Kassen&amp;buch</translation>
    </message>
    <message>
        <source>&amp;Restoration sheet</source>
        <translation>&amp;Restaurierungsblatt</translation>
    </message>
    <message>
        <source>Colours of the &amp;system</source>
        <translation>Farben des &amp;Systems</translation>
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
        <source>L&amp;arger text</source>
        <translation>&amp;Größere Schrift</translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation>&amp;Kleinere Schrift</translation>
    </message>
    <message>
        <source>Large type for the &amp;bench</source>
        <translation>Große Schrift für die &amp;Werkbank</translation>
    </message>
    <message>
        <source>&amp;Usual text size</source>
        <translation>Üb&amp;liche Schriftgröße</translation>
    </message>
    <message>
        <source>&amp;What is this page for?</source>
        <translation>&amp;Wozu ist diese Seite da?</translation>
    </message>
    <message>
        <source>&amp;About Turnscrew</source>
        <translation>Ü&amp;ber Turnscrew</translation>
    </message>
    <message>
        <source>About Turnscrew</source>
        <translation>Über Turnscrew</translation>
    </message>
    <message>
        <source>&lt;b&gt;Turnscrew %1&lt;/b&gt;&lt;p&gt;The workbook of a restorer of used electronics.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later. It comes without any warranty. What it says about safety reminds you; your local codes and licensed practice come first.&lt;/p&gt;</source>
        <translation>&lt;b&gt;Turnscrew %1&lt;/b&gt;&lt;p&gt;Das Werkbuch für die Restaurierung gebrauchter Elektronik.&lt;/p&gt;&lt;p&gt;Freie Software unter der GNU General Public License, Version 3 oder später. Sie kommt ohne jede Gewährleistung. Was hier zur Sicherheit steht, ist eine Erinnerung; örtliche Vorschriften und zugelassene Fachkräfte gehen vor.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>&amp;Photos</source>
        <translation>&amp;Fotos</translation>
    </message>
    <message>
        <source>&amp;Add photos…</source>
        <translation>Fotos &amp;hinzufügen…</translation>
    </message>
    <message>
        <source>&amp;Watched folder…</source>
        <translation>Überwachter &amp;Ordner…</translation>
    </message>
    <message>
        <source>&amp;Move log entries to another unit…</source>
        <translation>Protokolleinträge zu anderem Gerät &amp;verschieben…</translation>
    </message>
    <message>
        <source>The unit’s &amp;details</source>
        <translation>D&amp;etails des Geräts</translation>
    </message>
    <message>
        <source>Move to &amp;stage</source>
        <translation>Auf &amp;Stufe setzen</translation>
    </message>
    <message>
        <source>Tag &amp;label…</source>
        <translation>Anhänger&amp;etikett…</translation>
    </message>
    <message>
        <source>P&amp;rint the tag label…</source>
        <translation>Anhängeretikett &amp;drucken…</translation>
    </message>
    <message>
        <source>Labels of several &amp;boxes</source>
        <translation>Etiketten für mehrere &amp;Kartons</translation>
    </message>
    <message>
        <source>%1 boxes…</source>
        <translation>%1 Kartons…</translation>
    </message>
    <message>
        <source>Bag labels of what is &amp;off…</source>
        <translation>&amp;Beuteletiketten für Abgenommenes…</translation>
    </message>
    <message>
        <source>What to &amp;order</source>
        <translation>&amp;Zu bestellen</translation>
    </message>
    <message>
        <source>Bench &amp;sums</source>
        <translation>&amp;Berechnungen</translation>
    </message>
    <message>
        <source>Bench &amp;today: what to work on next</source>
        <translation>Werkbank &amp;heute: woran als Nächstes zu arbeiten ist</translation>
    </message>
    <message>
        <source>&amp;Order list of this unit…</source>
        <translation>Bestell&amp;liste dieses Geräts…</translation>
    </message>
    <message>
        <source>Order list of &amp;all units…</source>
        <translation>Bestellliste &amp;aller Geräte…</translation>
    </message>
</context>
<context>
    <name>ts::MeterList</name>
    <message>
        <source>Meter</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Seriennr.</translation>
    </message>
    <message>
        <source>Calibration due</source>
        <translation>Kalibrierung fällig</translation>
    </message>
    <message>
        <source>What to mind</source>
        <translation>Was zu beachten ist</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>Full scale</source>
        <translation>Endwert</translation>
    </message>
    <message>
        <source>the largest value of the range, in its unit</source>
        <translation>der größte Wert des Bereichs, in seiner Einheit</translation>
    </message>
    <message>
        <source>One count</source>
        <translation>Ein Digit</translation>
    </message>
    <message>
        <source>the step of the last digit</source>
        <translation>der Schritt der letzten Stelle</translation>
    </message>
    <message>
        <source>% of reading</source>
        <translation>% vom Messwert</translation>
    </message>
    <message>
        <source>as the data sheet says it</source>
        <translation>wie das Datenblatt es angibt</translation>
    </message>
    <message>
        <source>% of range</source>
        <translation>% vom Bereich</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Zählt</translation>
    </message>
    <message>
        <source>last digits that may be wrong</source>
        <translation>letzte Stellen, die falsch sein können</translation>
    </message>
    <message>
        <source>% per °C</source>
        <translation>% je °C</translation>
    </message>
    <message>
        <source>outside 18 to 28 °C</source>
        <translation>außerhalb von 18 bis 28 °C</translation>
    </message>
    <message>
        <source>± at half</source>
        <translation>± bei halb</translation>
    </message>
    <message>
        <source>95 %, at half of full scale, worked out from what stands before it</source>
        <translation>95 %, bei halbem Endwert, berechnet aus dem, was davor steht</translation>
    </message>
    <message>
        <source>"%1" is no %2</source>
        <translation>„%1“ passt nicht als %2</translation>
    </message>
    <message>
        <source>type a figure such as 0.5</source>
        <translation>eine Zahl wie 0.5 eingeben</translation>
    </message>
    <message>
        <source>%1 cannot be below zero</source>
        <translation>%1 kann nicht unter null sein</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Messgeräte</translation>
    </message>
    <message>
        <source>how sure a reading is comes from here</source>
        <translation>wie sicher ein Messwert ist, kommt von hier</translation>
    </message>
    <message>
        <source>Meters of the bench</source>
        <translation>Messgeräte der Werkstatt</translation>
    </message>
    <message>
        <source>Take this meter off the list</source>
        <translation>Dieses Messgerät von der Liste nehmen</translation>
    </message>
    <message>
        <source>Ranges of the meter at hand</source>
        <translation>Bereiche des gewählten Messgeräts</translation>
    </message>
    <message>
        <source>Take this range off</source>
        <translation>Diesen Bereich herausnehmen</translation>
    </message>
    <message>
        <source>overdue: it says so beside every reading of this meter and on the sheet</source>
        <translation>überfällig: das steht bei jedem Messwert dieses Messgeräts und auf dem Blatt</translation>
    </message>
    <message>
        <source>Add a meter</source>
        <translation>Messgerät hinzufügen</translation>
    </message>
    <message>
        <source>Ranges of %1</source>
        <translation>Bereiche von %1</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>Add a range: V</source>
        <translation>Bereich hinzufügen: V</translation>
    </message>
    <message>
        <source>The text</source>
        <translation>Der Text</translation>
    </message>
    <message>
        <source>Meter: %1</source>
        <translation>Messgerät: %1</translation>
    </message>
    <message>
        <source>A meter needs a name; Delete takes it off the list.</source>
        <translation>Ein Messgerät braucht einen Namen; Entf nimmt es von der Liste.</translation>
    </message>
    <message>
        <source>Range of %1</source>
        <translation>Bereich von %1</translation>
    </message>
    <message>
        <source>Meter taken off: %1</source>
        <translation>Messgerät von der Liste genommen: %1</translation>
    </message>
    <message>
        <source>Range of a meter taken off</source>
        <translation>Bereich eines Messgeräts herausgenommen</translation>
    </message>
</context>
<context>
    <name>ts::ModelNotesPlace</name>
    <message>
        <source>Models</source>
        <translation>Modelle</translation>
    </message>
    <message>
        <source>New notes</source>
        <translation>Neue Notizen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove the notes of this model</source>
        <translation>Notizen zu diesem Modell entfernen</translation>
    </message>
    <message>
        <source>Model notes</source>
        <translation>Modellnotizen</translation>
    </message>
    <message>
        <source>Model notes: %1</source>
        <translation>Modellnotizen: %1</translation>
    </message>
    <message>
        <source>New maker</source>
        <translation>Neuer Hersteller</translation>
    </message>
    <message>
        <source>Model notes removed: %1</source>
        <translation>Modellnotizen entfernt: %1</translation>
    </message>
    <message>
        <source>What is known of a model across units belongs here: how to tell its versions, what to measure where, its usual faults and what cured them, how it comes apart, where the service papers are.</source>
        <translation>Hierher gehört, was über ein Modell an mehreren Geräten bekannt ist: woran die Ausführungen zu erkennen sind, was wo zu messen ist, übliche Fehler und was geholfen hat, wie es zerlegt wird, wo die Serviceunterlagen liegen.</translation>
    </message>
    <message>
        <source>Learn from this unit</source>
        <translation>Von diesem Gerät lernen</translation>
    </message>
    <message>
        <source>Copies what was found on the unit in hand into the notes of its model</source>
        <translation>Übernimmt, was am gewählten Gerät gefunden wurde, in die Notizen seines Modells</translation>
    </message>
    <message>
        <source>Bring onto it</source>
        <translation>Auf Gerät übertragen</translation>
    </message>
    <message>
        <source>Gives the unit in hand the test points, teardown and proofs of its model</source>
        <translation>Gibt dem gewählten Gerät die Messpunkte, die Zerlegung und die Abnahmepunkte seines Modells</translation>
    </message>
    <message>
        <source>Read from a file…</source>
        <translation>Aus Datei lesen…</translation>
    </message>
    <message>
        <source>Notes that somebody shared: adds what is not known yet</source>
        <translation>Notizen, die jemand weitergegeben hat: ergänzt, was noch nicht bekannt ist</translation>
    </message>
    <message>
        <source>Write to a file…</source>
        <translation>In Datei schreiben…</translation>
    </message>
    <message>
        <source>These notes as one file to share, without prices and persons</source>
        <translation>Diese Notizen als eine Datei zum Weitergeben, ohne Preise und Personen</translation>
    </message>
    <message>
        <source>What is known</source>
        <translation>Was bekannt ist</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>Test points</source>
        <translation>Messpunkte</translation>
    </message>
    <message>
        <source>What to measure where, what is wanted there, and who says so. A new unit of the model gets them.</source>
        <translation>Was wo zu messen ist, welches Soll gilt und wer das sagt. Ein neues Gerät des Modells bekommt diese Messpunkte.</translation>
    </message>
    <message>
        <source>Causes</source>
        <translation>Ursachen</translation>
    </message>
    <message>
        <source>What its symptoms usually come from, and the checks that tell the causes apart. The weights of causes that you found yourself grow with your own closed units.</source>
        <translation>Woher seine Symptome meist kommen, und die Prüfungen, die die Ursachen unterscheiden. Die Gewichte selbst gefundener Ursachen wachsen mit den eigenen abgeschlossenen Geräten.</translation>
    </message>
    <message>
        <source>Usual causes</source>
        <translation>Übliche Ursachen</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Teardown</source>
        <translation>Zerlegung</translation>
    </message>
    <message>
        <source>In the order in which it comes off. Unplug first, and let the capacitors discharge; local codes and licensed practice come first.</source>
        <translation>In der Reihenfolge des Abnehmens. Erst Netzstecker ziehen und die Kondensatoren entladen lassen; örtliche Vorschriften und zugelassene Fachkräfte gehen vor.</translation>
    </message>
    <message>
        <source>What comes off</source>
        <translation>Was abgenommen wird</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Where each part sits and what it has to be.</source>
        <translation>Wo jedes Teil sitzt und was es sein muss.</translation>
    </message>
    <message>
        <source>Parts of the model</source>
        <translation>Teile des Modells</translation>
    </message>
    <message>
        <source>Proofs</source>
        <translation>Abnahmen</translation>
    </message>
    <message>
        <source>What a unit of this model has to show before it is handed over, beside the list of its category.</source>
        <translation>Was ein Gerät dieses Modells vor der Übergabe zeigen muss, neben der Liste seiner Kategorie.</translation>
    </message>
    <message>
        <source>Proofs of the model</source>
        <translation>Abnahmepunkte des Modells</translation>
    </message>
    <message>
        <source>Papers</source>
        <translation>Papiere</translation>
    </message>
    <message>
        <source>Service papers: where each one is, or kept in the workbook itself. Enter opens one.</source>
        <translation>Serviceunterlagen: wo jede liegt, oder im Werkbuch selbst aufgehoben. Eingabe öffnet eine.</translation>
    </message>
    <message>
        <source>Service papers</source>
        <translation>Serviceunterlagen</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Keep a file in the workbook…</source>
        <translation>Datei im Werkbuch aufheben…</translation>
    </message>
    <message>
        <source>What is found out once is written down here, so that the next unit of the model is quicker. Cautions written here stand on every unit of the model and on its sheet. Notes without a maker and model are about a whole category. In the lists Enter or typing begins a field, Delete takes a row off, Ctrl+Up and Ctrl+Down move it.</source>
        <translation>Was einmal herausgefunden ist, wird hier aufgeschrieben, damit das nächste Gerät des Modells schneller geht. Warnhinweise von hier stehen bei jedem Gerät des Modells und auf seinem Blatt. Notizen ohne Hersteller und Modell gelten für eine ganze Kategorie. In den Listen beginnt Eingabe oder Tippen ein Feld, Entf nimmt eine Zeile heraus, Strg+Auf und Strg+Ab verschieben sie.</translation>
    </message>
    <message>
        <source>new model</source>
        <translation>neues Modell</translation>
    </message>
    <message>
        <source>Notes on a whole category stay here: only a model's notes are shared.</source>
        <translation>Notizen zu einer ganzen Kategorie bleiben hier: Nur die zu einem Modell werden weitergegeben.</translation>
    </message>
    <message>
        <source>Write the notes to share</source>
        <translation>Notizen zum Weitergeben schreiben</translation>
    </message>
    <message>
        <source>Notes (*.json)</source>
        <translation>Notizen (*.json)</translation>
    </message>
    <message>
        <source>Wrote %1</source>
        <translation>%1 geschrieben</translation>
    </message>
    <message>
        <source>Notes that somebody shared</source>
        <translation>Notizen, die jemand weitergegeben hat</translation>
    </message>
    <message>
        <source>Cannot read %1</source>
        <translation>%1 lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>Model notes from %1</source>
        <translation>Modellnotizen aus %1</translation>
    </message>
    <message>
        <source>Nothing was taken in from %1</source>
        <translation>Aus %1 wurde nichts übernommen</translation>
    </message>
    <message>
        <source>All of it was known already.</source>
        <translation>Alles war schon bekannt.</translation>
    </message>
    <message>
        <source>A service paper to keep</source>
        <translation>Serviceunterlage zum Aufheben</translation>
    </message>
    <message>
        <source>Papers (*.pdf *.djvu *.png *.jpg *.jpeg *.tif *.tiff *.txt)</source>
        <translation>Unterlagen (*.pdf *.djvu *.png *.jpg *.jpeg *.tif *.tiff *.txt)</translation>
    </message>
    <message>
        <source>%1 is no paper that can be kept: PDF, DjVu, a picture or plain text can.</source>
        <translation>%1 ist keine Unterlage, die sich aufheben lässt: PDF, DjVu, ein Bild oder reiner Text schon.</translation>
    </message>
    <message>
        <source>%1 is larger than 100 MB: write down where it is instead.</source>
        <translation>%1 ist größer als 100 MB: stattdessen aufschreiben, wo die Datei liegt.</translation>
    </message>
    <message>
        <source>Service paper kept: %1</source>
        <translation>Serviceunterlage aufgehoben: %1</translation>
    </message>
    <message>
        <source>Nothing on this computer opens %1 files.</source>
        <translation>Auf diesem Rechner öffnet nichts %1-Dateien.</translation>
    </message>
    <message>
        <source>It does not say yet where this paper is: write it down beside it.</source>
        <translation>Es steht noch nicht da, wo diese Unterlage liegt: daneben aufschreiben.</translation>
    </message>
    <message>
        <source>"%1" is neither a web address nor a document on this computer.</source>
        <translation>„%1“ ist weder eine Webadresse noch ein Dokument auf diesem Rechner.</translation>
    </message>
</context>
<context>
    <name>ts::MoneyPage</name>
    <message>
        <source>Cost against resale</source>
        <translation>Kosten gegen Wiederverkauf</translation>
    </message>
    <message>
        <source>Where the resale price goes</source>
        <translation>Wohin der Verkaufspreis geht</translation>
    </message>
    <message>
        <source>Resale: %1.</source>
        <translation>Wiederverkauf: %1.</translation>
    </message>
    <message>
        <source>What is expected</source>
        <translation>Was erwartet wird</translation>
    </message>
    <message>
        <source>hardly less</source>
        <translation>kaum weniger</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <source>hardly more</source>
        <translation>kaum mehr</translation>
    </message>
    <message>
        <source>It fetches, working</source>
        <translation>Bringt, wenn es funktioniert</translation>
    </message>
    <message>
        <source>Your hours, all of them</source>
        <translation>Eigene Stunden, alle</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Chance of repair</source>
        <translation>Wahrscheinlichkeit der Reparatur</translation>
    </message>
    <message>
        <source>by your record and the category</source>
        <translation>nach eigenen Aufzeichnungen und der Kategorie</translation>
    </message>
    <message>
        <source>The buyer pays for carriage</source>
        <translation>Der Käufer zahlt die Fracht</translation>
    </message>
    <message>
        <source>Days until it is sold</source>
        <translation>Tage bis zum Verkauf</translation>
    </message>
    <message>
        <source>Its parts fetch or save</source>
        <translation>Seine Teile bringen oder sparen</translation>
    </message>
    <message>
        <source>Time to break it up</source>
        <translation>Zeit zum Ausschlachten</translation>
    </message>
    <message>
        <source>The seller takes it back until</source>
        <translation>Der Verkäufer nimmt es zurück bis</translation>
    </message>
    <message>
        <source>28 Nov</source>
        <translation>28 Nov</translation>
    </message>
    <message>
        <source>The seller gives back</source>
        <translation>Der Verkäufer erstattet</translation>
    </message>
    <message>
        <source>Sending it back costs</source>
        <translation>Die Rücksendung kostet</translation>
    </message>
    <message>
        <source>What was planned at purchase, what it cost to date, and how it will stand when the unit is finished and sold. Enter or F2 on a planned figure changes the plan; forecast and ways out follow while you type. Sales of the same or a like unit are written down or pasted at the right; the newest and the likest count most, one that is only asked (asking 95) does not. “From here” leaves out what is spent already; what you decide is kept in the log with its figures. Money out and in is jotted in the Log: paid carriage 8.40.</source>
        <translation>Was beim Kauf geplant war, was es bisher gekostet hat und wie es steht, wenn das Gerät fertig und verkauft ist. Eingabe oder F2 auf einem geplanten Betrag ändert den Plan; Vorhersage und Auswege folgen während der Eingabe. Verkäufe des gleichen oder eines ähnlichen Geräts werden rechts aufgeschrieben oder eingefügt; die neuesten und ähnlichsten zählen am meisten, ein nur verlangter Preis (asking 95) zählt nicht. „Ab jetzt“ lässt weg, was schon ausgegeben ist; was Sie entscheiden, wird mit seinen Zahlen im Protokoll festgehalten. Geld hinaus und herein wird im Protokoll notiert: paid carriage 8.40.</translation>
    </message>
</context>
<context>
    <name>ts::MoveBar</name>
    <message>
        <source>Unit to move the entries to</source>
        <translation>Gerät, zu dem die Einträge verschoben werden</translation>
    </message>
    <message>
        <source>Leave them here</source>
        <translation>Hier lassen</translation>
    </message>
    <message numerus="yes">
        <source>Move %n entries to</source>
        <translation>
            <numerusform>%n Eintrag verschieben zu</numerusform><numerusform>%n Einträge verschieben zu</numerusform></translation>
    </message>
</context>
<context>
    <name>ts::NextCard</name>
    <message>
        <source>Check next</source>
        <translation>Als Nächstes prüfen</translation>
    </message>
    <message>
        <source>Ranked by minutes saved on the way to the repair</source>
        <translation>Geordnet nach gesparten Minuten bis zur Reparatur</translation>
    </message>
    <message>
        <source>Being worked out…</source>
        <translation>Wird berechnet…</translation>
    </message>
    <message>
        <source>Going by this: %1 to a working unit on average; straight repairs: %2.</source>
        <translation>Auf diesem Weg: im Mittel %1 bis zum laufenden Gerät; gleich reparieren: %2.</translation>
    </message>
    <message>
        <source>No way takes less than %1 on average.</source>
        <translation>Kein Weg dauert im Mittel weniger als %1.</translation>
    </message>
    <message>
        <source>saves %1 min</source>
        <translation>spart %1 min</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Say how it came out</source>
        <translation>Ergebnis eintragen</translation>
    </message>
    <message>
        <source>Go to the cause</source>
        <translation>Zur Ursache</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>Before anything is measured under power, %n steps:</source>
        <translation>
            <numerusform>Vor jeder Messung unter Spannung, %n Arbeitsschritt:</numerusform><numerusform>Vor jeder Messung unter Spannung, %n Arbeitsschritte:</numerusform></translation>
    </message>
    <message>
        <source>Before anything is measured under power:</source>
        <translation>Vor jeder Messung unter Spannung:</translation>
    </message>
    <message>
        <source>Unplugged, discharged, and never alone. Local codes and licensed practice come first.</source>
        <translation>Netzstecker gezogen, entladen und nie allein. Örtliche Vorschriften und zugelassene Fachkräfte gehen vor.</translation>
    </message>
    <message>
        <source>In order</source>
        <translation>In Ordnung</translation>
    </message>
    <message>
        <source>Not in order: stop</source>
        <translation>Nicht in Ordnung: aufhören</translation>
    </message>
</context>
<context>
    <name>ts::NoteLines</name>
    <message>
        <source>Flaw</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Gebrauch</translation>
    </message>
    <message>
        <source>%1 removed: %2</source>
        <translation>%1 entfernt: %2</translation>
    </message>
</context>
<context>
    <name>ts::NotesTable</name>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Take off the list</source>
        <translation>Von der Liste nehmen</translation>
    </message>
</context>
<context>
    <name>ts::NotesWords</name>
    <message>
        <source>Maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>none: these are notes on the whole category</source>
        <translation>keiner: dies sind Notizen zur ganzen Kategorie</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>Category</source>
        <translation>Kategorie</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>Variants, and how to tell them</source>
        <translation>Varianten und woran sie zu erkennen sind</translation>
    </message>
    <message>
        <source>Mains versions</source>
        <translation>Netzausführungen</translation>
    </message>
    <message>
        <source>Usual faults and what cured them</source>
        <translation>Übliche Fehler und was geholfen hat</translation>
    </message>
    <message>
        <source>Adjustments</source>
        <translation>Abgleich</translation>
    </message>
    <message>
        <source>Parts, with position and rating</source>
        <translation>Teile mit Position und Nennwert</translation>
    </message>
    <message>
        <source>Taking it apart</source>
        <translation>Zerlegung</translation>
    </message>
    <message>
        <source>Service papers and other sources</source>
        <translation>Serviceunterlagen und andere Quellen</translation>
    </message>
    <message>
        <source>Ideas to come back to</source>
        <translation>Ideen für später</translation>
    </message>
    <message>
        <source>All of: %1</source>
        <translation>Alle: %1</translation>
    </message>
    <message>
        <source>Model notes: %1</source>
        <translation>Modellnotizen: %1</translation>
    </message>
</context>
<context>
    <name>ts::NoticeBar</name>
    <message>
        <source>What went wrong</source>
        <translation>Was schiefging</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Ausblenden</translation>
    </message>
</context>
<context>
    <name>ts::OfferedAsk</name>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Price asked</source>
        <translation>Angebotspreis</translation>
    </message>
    <message>
        <source>for example %1</source>
        <translation>zum Beispiel %1</translation>
    </message>
</context>
<context>
    <name>ts::OrderPane</name>
    <message>
        <source>%1 at %2</source>
        <translation>%1 zu %2</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Write the order list…</source>
        <translation>Bestellliste schreiben…</translation>
    </message>
    <message>
        <source>One list of all waiting units, as a PDF or a web page</source>
        <translation>Eine Liste aller wartenden Geräte, als PDF oder Webseite</translation>
    </message>
    <message>
        <source>No unit waits for a part. What a unit needs is written on its Parts page; here it comes together, by supplier.</source>
        <translation>Kein Gerät wartet auf ein Teil. Was ein Gerät braucht, wird auf seiner Seite „Teile“ eingetragen; hier kommt es zusammen, nach Lieferant.</translation>
    </message>
    <message>
        <source>From the shelf and from donors</source>
        <translation>Aus dem Lager und von Spendern</translation>
    </message>
    <message>
        <source>frees %1 without any order</source>
        <translation>macht %1 ohne Bestellung frei</translation>
    </message>
    <message>
        <source>Take them</source>
        <translation>Nehmen</translation>
    </message>
    <message>
        <source>The parts are here for their units, and the shelf has so many less</source>
        <translation>Die Teile sind für ihre Geräte da, und das Lager hat entsprechend weniger</translation>
    </message>
    <message>
        <source>From the shelf</source>
        <translation>Aus dem Lager</translation>
    </message>
    <message>
        <source>Lies in</source>
        <translation>Liegt in</translation>
    </message>
    <message>
        <source>from donor %1</source>
        <translation>von Spender %1</translation>
    </message>
    <message>
        <source>To order, no supplier named</source>
        <translation>Zu bestellen, kein Lieferant genannt</translation>
    </message>
    <message>
        <source>To order: %1</source>
        <translation>Zu bestellen: %1</translation>
    </message>
    <message>
        <source>frees no unit by itself</source>
        <translation>macht allein kein Gerät frei</translation>
    </message>
    <message>
        <source>frees %1</source>
        <translation>macht %1 frei</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>Supplier of this order</source>
        <translation>Lieferant dieser Bestellung</translation>
    </message>
    <message>
        <source>due, such as 28 Nov</source>
        <translation>fällig, etwa 28 Nov</translation>
    </message>
    <message>
        <source>Due from %1</source>
        <translation>Fällig von %1</translation>
    </message>
    <message>
        <source>the supplier</source>
        <translation>dem Lieferanten</translation>
    </message>
    <message>
        <source>Mark as ordered</source>
        <translation>Als bestellt kennzeichnen</translation>
    </message>
    <message>
        <source>%1 also waits for %2</source>
        <translation>%1 wartet auch auf %2</translation>
    </message>
    <message>
        <source>Each</source>
        <translation>Stückpreis</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>Lines of the order</source>
        <translation>Zeilen der Bestellung</translation>
    </message>
    <message>
        <source>on the shelf, look first: %1</source>
        <translation>im Lager, erst ansehen: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n without a price</source>
        <translation>
            <numerusform>%n ohne Preis</numerusform><numerusform>%n ohne Preis</numerusform></translation>
    </message>
    <message>
        <source>Under way, no supplier named</source>
        <translation>Unterwegs, kein Lieferant genannt</translation>
    </message>
    <message>
        <source>Under way from %1</source>
        <translation>Unterwegs von %1</translation>
    </message>
    <message>
        <source>It has arrived</source>
        <translation>Ist angekommen</translation>
    </message>
    <message>
        <source>All of it is here; its units come up on the rack</source>
        <translation>Alles davon ist da; die Geräte dazu rücken im Regal nach oben</translation>
    </message>
    <message>
        <source>Under way</source>
        <translation>Unterwegs</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überfällig</translation>
    </message>
</context>
<context>
    <name>ts::OverviewPlace</name>
    <message>
        <source>The same as a table</source>
        <translation>Dasselbe als Tabelle</translation>
    </message>
    <message>
        <source>Overview</source>
        <translation>Überblick</translation>
    </message>
    <message numerus="yes">
        <source>%n unit(s) not closed</source>
        <translation>
            <numerusform>%n Gerät nicht abgeschlossen</numerusform><numerusform>%n Geräte nicht abgeschlossen</numerusform></translation>
    </message>
    <message>
        <source>%1 tied up</source>
        <translation>%1 gebunden</translation>
    </message>
    <message>
        <source>Overviews</source>
        <translation>Überblicke</translation>
    </message>
    <message>
        <source>The overview as a table</source>
        <translation>Der Überblick als Tabelle</translation>
    </message>
    <message>
        <source>How the bench does: the money tied up by stage and by age, what an hour brought in each category, hours planned and taken, which causes come up most, how long a unit takes from purchase to sale, and what each month left. The arrow keys go from one to the next; each has its table below.</source>
        <translation>Wie die Werkstatt steht: das gebundene Geld nach Stufe und nach Alter, was eine Stunde in jeder Kategorie brachte, geplante und aufgewendete Stunden, welche Ursachen am häufigsten vorkommen, wie lange ein Gerät vom Kauf bis zum Verkauf braucht und was jeder Monat übrig ließ. Die Pfeiltasten gehen von einem zum nächsten; unter jedem steht seine Tabelle.</translation>
    </message>
    <message>
        <source>Looking over the workbook</source>
        <translation>Werkbuch wird durchgesehen</translation>
    </message>
</context>
<context>
    <name>ts::PageTabs</name>
    <message>
        <source>Pages of the unit</source>
        <translation>Seiten des Geräts</translation>
    </message>
    <message>
        <source>%1: %2 open</source>
        <translation>%1: %2 offen</translation>
    </message>
</context>
<context>
    <name>ts::PartsPage</name>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>On to the next state</source>
        <translation>Weiter zum nächsten Zustand</translation>
    </message>
    <message>
        <source>Back one state</source>
        <translation>Einen Zustand zurück</translation>
    </message>
    <message>
        <source>Take off the list</source>
        <translation>Von der Liste nehmen</translation>
    </message>
    <message>
        <source>Add a part</source>
        <translation>Teil hinzufügen</translation>
    </message>
    <message>
        <source>Type it as in the log: 2 x C214 47 µF 63 V 0.35</source>
        <translation>Eingeben wie im Protokoll: 2 x C214 47 µF 63 V 0.35</translation>
    </message>
    <message>
        <source>No part is needed so far.</source>
        <translation>Bisher wird kein Teil gebraucht.</translation>
    </message>
    <message>
        <source>All: %1</source>
        <translation>Gesamt: %1</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Gebraucht</translation>
    </message>
    <message>
        <source>Mark as ordered</source>
        <translation>Als bestellt kennzeichnen</translation>
    </message>
    <message>
        <source>Mark as here</source>
        <translation>Als da kennzeichnen</translation>
    </message>
    <message>
        <source>Mark as fitted</source>
        <translation>Als eingebaut kennzeichnen</translation>
    </message>
    <message>
        <source>Part %1: %2</source>
        <translation>Teil %1: %2</translation>
    </message>
    <message>
        <source>Part needed: %1</source>
        <translation>Teil gebraucht: %1</translation>
    </message>
    <message>
        <source>Part taken off the list: %1</source>
        <translation>Teil von der Liste genommen: %1</translation>
    </message>
    <message>
        <source>Parts from model notes</source>
        <translation>Teile aus Modellnotizen</translation>
    </message>
    <message>
        <source>What this unit needs, what is ordered, what is here and what is fitted. Type in the last row to add a part, in the words of the log: 2 x C214 47 µF 63 V 0.35. Ctrl+Right moves a part to its next state, Ctrl+Left back; on the state itself n, o, h and f set it. Delete takes a line off the list, and Ctrl+Z brings it back. Below it stands what of the shelf would fit.</source>
        <translation>Was dieses Gerät braucht, was bestellt, was da und was eingebaut ist. Eingabe in der letzten Zeile fügt ein Teil hinzu, in den Worten des Protokolls: 2 x C214 47 µF 63 V 0.35. Strg+Rechts bringt ein Teil in den nächsten Zustand, Strg+Links zurück; auf dem Zustand selbst setzen ihn g, b, d und e. Entf nimmt eine Zeile von der Liste, Strg+Z holt sie wieder. Darunter steht, was aus dem Lager passen würde.</translation>
    </message>
    <message>
        <source>Part %1, %2: nothing</source>
        <translation>Teil %1, %2: nichts</translation>
    </message>
    <message>
        <source>Part %1, %2: %3</source>
        <translation>Teil %1, %2: %3</translation>
    </message>
</context>
<context>
    <name>ts::PartsStorePlace</name>
    <message>
        <source>Parts store</source>
        <translation>Teilelager</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>Im Lager</translation>
    </message>
    <message>
        <source>What to order</source>
        <translation>Zu bestellen</translation>
    </message>
    <message>
        <source>What lies on the shelf, with what it is rated for, what it cost and where it is. Find by attribute: capacitor 1000u &gt;=63V d&lt;=10mm, belt 78 ± 2 mm. A part that falls below what you keep at least is marked. “What to order” brings together what all waiting units need: the shelf and donors first, then one order a supplier with the units it frees. What a unit needs stands on its own page, Parts.</source>
        <translation>Was im Lager liegt, mit seinen Nennwerten, was es gekostet hat und wo es ist. Suche nach Eigenschaft: capacitor 1000u &gt;=63V d&lt;=10mm, belt 78 ± 2 mm. Ein Teil unter dem Mindestbestand ist gekennzeichnet. „Zu bestellen“ führt zusammen, was alle wartenden Geräte brauchen: erst Lager und Spender, dann je Lieferant eine Bestellung mit den Geräten, die sie frei macht. Was ein Gerät braucht, steht auf seiner eigenen Seite „Teile“.</translation>
    </message>
</context>
<context>
    <name>ts::PhotoCanvas</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
</context>
<context>
    <name>ts::PhotoDesk</name>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.gif *.bmp);;All files (*)</source>
        <translation>Bilder (*.jpg *.jpeg *.png *.webp *.gif *.bmp);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>No unit is in hand; choose the tag that the photos belong to first.</source>
        <translation>Kein Gerät ist gewählt; erst den Anhänger wählen, zu dem die Fotos gehören.</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Fotos hinzufügen</translation>
    </message>
    <message>
        <source>Folder that a telephone puts its photos into</source>
        <translation>Ordner, in den ein Telefon seine Fotos legt</translation>
    </message>
    <message>
        <source>Photos that come into %1 are offered for the unit in hand.</source>
        <translation>Fotos, die in %1 ankommen, werden für das gewählte Gerät angeboten.</translation>
    </message>
    <message numerus="yes">
        <source>Drop: %n photo(s) for %1 %2</source>
        <translation>
            <numerusform>Ablegen: %n Foto für %1 %2</numerusform><numerusform>Ablegen: %n Fotos für %1 %2</numerusform></translation>
    </message>
    <message>
        <source>Choose a tag first, then drop its photos</source>
        <translation>Erst einen Anhänger wählen, dann seine Fotos ablegen</translation>
    </message>
</context>
<context>
    <name>ts::PhotoIntake</name>
    <message numerus="yes">
        <source>%n photo(s) for %1</source>
        <translation>
            <numerusform>%n Foto für %1</numerusform><numerusform>%n Fotos für %1</numerusform></translation>
    </message>
    <message>
        <source>pasted picture</source>
        <translation>eingefügtes Bild</translation>
    </message>
    <message>
        <source>%1 was not taken again</source>
        <translation>%1 wurde nicht noch einmal übernommen</translation>
    </message>
    <message>
        <source>%1 has this photo already</source>
        <translation>%1 hat dieses Foto schon</translation>
    </message>
    <message>
        <source>%1 photos</source>
        <translation>%1 Fotos</translation>
    </message>
    <message numerus="yes">
        <source>So it went with %n more.</source>
        <translation>
            <numerusform>So ging es mit %n weiteren.</numerusform><numerusform>So ging es mit %n weiteren.</numerusform></translation>
    </message>
</context>
<context>
    <name>ts::PhotoListModel</name>
    <message>
        <source>on the sheet</source>
        <translation>auf dem Blatt</translation>
    </message>
</context>
<context>
    <name>ts::PhotoSide</name>
    <message>
        <source>Caption</source>
        <translation>Bildunterschrift</translation>
    </message>
    <message>
        <source>What it shows</source>
        <translation>Was es zeigt</translation>
    </message>
    <message>
        <source>F</source>
        <translation>F</translation>
    </message>
    <message>
        <source>D</source>
        <translation>D</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
    <message>
        <source>On the restoration sheet  ·  S</source>
        <translation>Auf dem Restaurierungsblatt  ·  S</translation>
    </message>
    <message>
        <source>On the restoration sheet</source>
        <translation>Auf dem Restaurierungsblatt</translation>
    </message>
    <message>
        <source>Move the photo to another unit</source>
        <translation>Foto zu anderem Gerät verschieben</translation>
    </message>
    <message>
        <source>Remove  ·  Del</source>
        <translation>Entfernen  ·  Entf</translation>
    </message>
    <message>
        <source>Remove the photo</source>
        <translation>Foto entfernen</translation>
    </message>
    <message>
        <source>Caption  ·  C</source>
        <translation>Bildunterschrift  ·  C</translation>
    </message>
    <message>
        <source>Phase</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>Belongs to another unit  ·  M</source>
        <translation>Gehört zu anderem Gerät  ·  M</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation>aufgenommen %1</translation>
    </message>
    <message>
        <source>%1 × %2 pixels</source>
        <translation>%1 × %2 Pixel</translation>
    </message>
    <message>
        <source>The caption</source>
        <translation>Die Bildunterschrift</translation>
    </message>
    <message>
        <source>Photo caption: %1</source>
        <translation>Bildunterschrift: %1</translation>
    </message>
    <message>
        <source>Photo %1: %2</source>
        <translation>Foto %1: %2</translation>
    </message>
    <message>
        <source>Photo onto the sheet: %1</source>
        <translation>Foto aufs Blatt: %1</translation>
    </message>
    <message>
        <source>Photo off the sheet: %1</source>
        <translation>Foto vom Blatt: %1</translation>
    </message>
    <message>
        <source>Photo removed: %1</source>
        <translation>Foto entfernt: %1</translation>
    </message>
</context>
<context>
    <name>ts::PhotoTray</name>
    <message>
        <source>Yes  ·  F8</source>
        <translation>Ja  ·  F8</translation>
    </message>
    <message>
        <source>Give the photos to the unit in hand</source>
        <translation>Fotos dem gewählten Gerät geben</translation>
    </message>
    <message>
        <source>or for</source>
        <translation>oder für</translation>
    </message>
    <message>
        <source>Give the photos to another unit</source>
        <translation>Fotos einem anderen Gerät geben</translation>
    </message>
    <message>
        <source>Leave them</source>
        <translation>Dort lassen</translation>
    </message>
    <message>
        <source>They stay in the folder and are not offered again</source>
        <translation>Sie bleiben im Ordner und werden nicht wieder angeboten</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) for %1 %2?</source>
        <translation>
            <numerusform>%n Foto für %1 %2?</numerusform><numerusform>%n Fotos für %1 %2?</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) came in.</source>
        <translation>
            <numerusform>%n Foto ist angekommen.</numerusform><numerusform>%n Fotos sind angekommen.</numerusform></translation>
    </message>
</context>
<context>
    <name>ts::PhotosPlace</name>
    <message>
        <source>Add photos…</source>
        <translation>Fotos hinzufügen…</translation>
    </message>
    <message>
        <source>Back to the unit</source>
        <translation>Zurück zum Gerät</translation>
    </message>
    <message>
        <source>Photos of this unit</source>
        <translation>Fotos dieses Geräts</translation>
    </message>
    <message>
        <source>No photos of this unit yet. Drop them anywhere on the window, paste a copied one, choose files, or have a folder watched that your telephone puts them into.</source>
        <translation>Noch keine Fotos dieses Geräts. Irgendwo auf dem Fenster ablegen, ein kopiertes einfügen, Dateien wählen oder einen Ordner überwachen lassen, in den das Telefon sie legt.</translation>
    </message>
    <message>
        <source>Left and right go through the photos. The wheel, + and − zoom; 0 shows the whole photo, 1 its own pixels; drag to move it. F, D and L say whether it shows the unit as found, during work or as it leaves; S puts it on the sheet; C goes to its caption, M to the field that moves it to another unit; Del removes it. Undo takes each of these back.</source>
        <translation>Links und Rechts gehen durch die Fotos. Mausrad, + und − zoomen; 0 zeigt das ganze Foto, 1 seine eigenen Pixel; Ziehen verschiebt es. F, D und L sagen, ob es das Gerät wie vorgefunden, während der Arbeit oder wie übergeben zeigt; S bringt es auf das Blatt; C geht zur Bildunterschrift, M zu dem Feld, das es zu einem anderen Gerät verschiebt; Entf entfernt es. Rückgängig nimmt alles davon zurück.</translation>
    </message>
    <message>
        <source>Photos of %1 %2</source>
        <translation>Fotos von %1 %2</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Whole photo</source>
        <translation>Ganzes Foto</translation>
    </message>
</context>
<context>
    <name>ts::PlanFields</name>
    <message>
        <source>hardly less</source>
        <translation>kaum weniger</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <source>hardly more</source>
        <translation>kaum mehr</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>ts::PointRun</name>
    <message>
        <source>Enter takes the value and goes on · Space, Enter on nothing, or any key of a foot switch goes on without one · Shift+Enter keeps it for a mean of several · Up goes back · OL is over range · Esc ends the run</source>
        <translation>Eingabe nimmt den Wert und geht weiter · Leertaste, Eingabe ohne Wert oder jede Taste eines Fußschalters geht ohne Wert weiter · Umschalt+Eingabe behält ihn für einen Mittelwert aus mehreren · Auf geht zurück · OL ist über dem Messbereich · Esc beendet den Durchgang</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Wieder dran</translation>
    </message>
    <message>
        <source>Next without a value</source>
        <translation>Weiter ohne Wert</translation>
    </message>
    <message>
        <source>Over range</source>
        <translation>Über dem Messbereich</translation>
    </message>
    <message>
        <source>End the run</source>
        <translation>Durchgang beenden</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source>%1: not read yet</source>
        <translation>%1: noch nicht gemessen</translation>
    </message>
    <message>
        <source>%1 of %2 · %3</source>
        <translation>%1 von %2 · %3</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>wie vorgefunden</translation>
    </message>
    <message>
        <source>after work</source>
        <translation>nach der Arbeit</translation>
    </message>
    <message>
        <source>Read after work instead</source>
        <translation>Stattdessen nach der Arbeit messen</translation>
    </message>
    <message>
        <source>Read as found instead</source>
        <translation>Stattdessen wie vorgefunden messen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>nothing is wanted of it</source>
        <translation>kein Soll</translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation>Soll %1</translation>
    </message>
    <message>
        <source>Value at %1</source>
        <translation>Wert an %1</translation>
    </message>
    <message>
        <source>value and unit</source>
        <translation>Wert und Einheit</translation>
    </message>
    <message>
        <source>Kept for the mean: %1</source>
        <translation>Für den Mittelwert behalten: %1</translation>
    </message>
    <message>
        <source>That was the last test point.</source>
        <translation>Das war der letzte Messpunkt.</translation>
    </message>
</context>
<context>
    <name>ts::PowerAids</name>
    <message>
        <source>Mains, and charge that stays</source>
        <translation>Netz, und Ladung, die bleibt</translation>
    </message>
    <message>
        <source>Mains can kill, and large capacitors hold their charge with the plug out: drain through a resistor, measure, and measure again. One hand, nobody alone, a residual-current device upstream. A series lamp limits the current and isolates nothing. No speakers, good tapes or discs until the last step is passed. Your local codes and licensed practice come first.</source>
        <translation>Netzspannung kann töten, und große Kondensatoren halten ihre Ladung auch bei gezogenem Stecker: über einen Widerstand entladen, messen und noch einmal messen. Nur eine Hand, niemand allein, ein Fehlerstromschutzschalter davor. Eine Vorschaltlampe begrenzt den Strom und trennt nichts vom Netz. Keine Lautsprecher, guten Bänder oder Platten, bis der letzte Arbeitsschritt bestanden ist. Örtliche Vorschriften und zugelassene Fachkräfte gehen vor.</translation>
    </message>
    <message>
        <source>Draining, and the lamp in line</source>
        <translation>Entladen, und die Vorschaltlampe</translation>
    </message>
    <message>
        <source>Capacitor</source>
        <translation>Kondensator</translation>
    </message>
    <message>
        <source>100 µF 450 V</source>
        <translation>100 µF 450 V</translation>
    </message>
    <message>
        <source>It idles at</source>
        <translation>Im Leerlauf</translation>
    </message>
    <message>
        <source>30 W</source>
        <translation>30 W</translation>
    </message>
</context>
<context>
    <name>ts::ProgressLine</name>
    <message>
        <source>How far it is</source>
        <translation>Wie weit es ist</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
</context>
<context>
    <name>ts::ProvingPage</name>
    <message>
        <source>Nothing is to be proved yet. The list of its category says what is tried before such a unit is handed over: what it does, how it looks, and that it is safe to plug in. Lines can be changed, added and taken off.</source>
        <translation>Noch ist nichts abzunehmen. Die Liste der Kategorie sagt, was vor der Übergabe eines solchen Geräts ausprobiert wird: was es tut, wie es aussieht und dass es gefahrlos ans Netz kann. Zeilen lassen sich ändern, hinzufügen und von der Liste nehmen.</translation>
    </message>
    <message>
        <source>Bring in the list</source>
        <translation>Liste übernehmen</translation>
    </message>
    <message>
        <source>Proofs</source>
        <translation>Abnahmen</translation>
    </message>
    <message>
        <source>Take off the list</source>
        <translation>Von der Liste nehmen</translation>
    </message>
    <message>
        <source>What its category, and electrical safety where it runs from the mains, ask for and is not here yet</source>
        <translation>Was die Kategorie und, bei Netzbetrieb, die elektrische Sicherheit verlangen und hier noch fehlt</translation>
    </message>
    <message>
        <source>Add a proof</source>
        <translation>Abnahme hinzufügen</translation>
    </message>
    <message>
        <source>Not ready yet</source>
        <translation>Noch nicht fertig</translation>
    </message>
    <message>
        <source>Before any of the electrical tests</source>
        <translation>Vor jeder elektrischen Prüfung</translation>
    </message>
    <message>
        <source>A unit from the mains can kill, and insulation testers put hundreds of volts on it: unplug and discharge before leads are touched, keep the cover on for whatever is tested live, and never be alone with it. Which tests, limits and intervals hold is said by your local codes; where they ask for licensed practice, that comes first. What is recorded here is your own check with its instrument, date and initials. It is no certificate.</source>
        <translation>Ein netzbetriebenes Gerät kann töten, und Isolationsprüfer legen Hunderte Volt daran: Netzstecker ziehen und entladen, bevor Leitungen angefasst werden; die Abdeckung bleibt drauf bei allem, was unter Spannung geprüft wird; nie damit allein sein. Welche Prüfungen, Grenzen und Fristen gelten, sagen die örtlichen Vorschriften; wo sie eine zugelassene Fachkraft verlangen, geht das vor. Festgehalten wird hier die eigene Prüfung mit Prüfgerät, Datum und Kürzel. Sie ist keine Bescheinigung.</translation>
    </message>
    <message>
        <source>From the model notes</source>
        <translation>Aus den Modellnotizen</translation>
    </message>
    <message>
        <source>
It can be called ready all the same, with a reason that stays on record.</source>
        <translation>
Es kann trotzdem als fertig gelten, mit einem Grund, der festgehalten bleibt.</translation>
    </message>
    <message>
        <source>
This is put right first: no reason overrules it.</source>
        <translation>
Das wird erst in Ordnung gebracht: Kein Grund setzt sich darüber hinweg.</translation>
    </message>
    <message>
        <source>To be proved: %1</source>
        <translation>Abzunehmen: %1</translation>
    </message>
    <message>
        <source>Proof %1: %2</source>
        <translation>Abnahme %1: %2</translation>
    </message>
    <message>
        <source>Proof taken off the list: %1</source>
        <translation>Abnahme von der Liste genommen: %1</translation>
    </message>
    <message>
        <source>Parts of proving</source>
        <translation>Bereiche der Abnahme</translation>
    </message>
    <message>
        <source>Acceptance</source>
        <translation>Abnahmepunkte</translation>
    </message>
    <message>
        <source>First power</source>
        <translation>Erstes Einschalten</translation>
    </message>
    <message>
        <source>Electrical safety</source>
        <translation>Elektrische Sicherheit</translation>
    </message>
    <message>
        <source>P passed · F failed · N not applicable · T not tested. Each sets the row at hand and goes on to the next; F goes to what was found.</source>
        <translation>P bestanden · F nicht bestanden · N nicht zutreffend · T nicht geprüft. Jede Taste setzt die gewählte Zeile und geht zur nächsten weiter; F geht zu dem, was sich zeigte.</translation>
    </message>
    <message>
        <source>What is tried before the unit is handed over. P, F, N and T say of the row at hand that it passed, failed, is not applicable or is not tested, and go on to the next row; F goes to what was found. The line under the table says where the place is now; date and initials fill themselves. A failed proof keeps the unit from being called ready unless you say why it goes all the same; a failed electrical safety proof is put right first. Under First power each step is passed or stopped by what was found, and a stop flags the unit; under Electrical safety the verdict follows from the value and the rule set. Your local codes and licensed practice come before anything that this list says.</source>
        <translation>Was vor der Übergabe des Geräts ausprobiert wird. P, F, N und T sagen von der gewählten Zeile: bestanden, nicht bestanden, nicht zutreffend oder nicht geprüft, und gehen zur nächsten Zeile weiter; F geht zu dem, was sich zeigte. Die Zeile unter der Tabelle sagt, wo es gerade weitergeht; Datum und Kürzel füllen sich selbst. Bei einer nicht bestandenen Abnahme gilt das Gerät nicht als fertig, außer mit einem Grund, warum es trotzdem geht; eine nicht bestandene Abnahme der elektrischen Sicherheit wird erst in Ordnung gebracht. Unter „Erstes Einschalten“ wird jeder Arbeitsschritt nach dem, was sich zeigte, bestanden oder abgebrochen, und ein Abbruch versieht das Gerät mit einem Vermerk; unter „Elektrische Sicherheit“ folgt das Urteil aus dem Wert und dem Regelwerk. Örtliche Vorschriften und zugelassene Fachkräfte gehen allem vor, was diese Liste sagt.</translation>
    </message>
    <message>
        <source>Proof %1, %2: nothing</source>
        <translation>Abnahme %1, %2: nichts</translation>
    </message>
    <message>
        <source>Proof %1, %2: %3</source>
        <translation>Abnahme %1, %2: %3</translation>
    </message>
    <message>
        <source>Its verdict follows from its value</source>
        <translation>Das Urteil folgt aus dem Wert</translation>
    </message>
    <message>
        <source>measure again under Electrical safety</source>
        <translation>unter „Elektrische Sicherheit“ neu messen</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Say what was found.</source>
        <translation>Eintragen, was sich zeigte.</translation>
    </message>
    <message>
        <source>That was the last row.</source>
        <translation>Das war die letzte Zeile.</translation>
    </message>
    <message>
        <source>Now at: %1</source>
        <translation>Jetzt bei: %1</translation>
    </message>
</context>
<context>
    <name>ts::QuestionLine</name>
    <message>
        <source>Leave it</source>
        <translation>So lassen</translation>
    </message>
</context>
<context>
    <name>ts::RackModel</name>
    <message>
        <source>%1, %2 folded away</source>
        <translation>%1, %2 eingeklappt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>ts::RackPane</name>
    <message>
        <source>Narrow this list…</source>
        <translation>Liste eingrenzen…</translation>
    </message>
    <message>
        <source>Narrow the rack</source>
        <translation>Regal eingrenzen</translation>
    </message>
    <message>
        <source>&amp;Moved last on top</source>
        <translation>&amp;Zuletzt bewegt oben</translation>
    </message>
    <message>
        <source>&amp;Waiting longest on top</source>
        <translation>Am &amp;längsten wartend oben</translation>
    </message>
    <message>
        <source>&amp;Due first on top</source>
        <translation>Zuerst &amp;fällig oben</translation>
    </message>
    <message>
        <source>By &amp;tag, newest on top</source>
        <translation>Nach &amp;Anhänger, neueste oben</translation>
    </message>
    <message>
        <source>By &amp;name</source>
        <translation>Nach &amp;Namen</translation>
    </message>
    <message>
        <source>Order within a stage</source>
        <translation>Reihenfolge innerhalb einer Stufe</translation>
    </message>
    <message>
        <source>No unit has “%1” in its tag, its name or an open symptom.</source>
        <translation>Kein Gerät hat „%1“ im Anhänger, im Namen oder in einem offenen Symptom.</translation>
    </message>
    <message>
        <source>The rack is empty. Each unit that you take in hangs here as a tag.</source>
        <translation>Das Regal ist leer. Jedes aufgenommene Gerät hängt hier als Anhänger.</translation>
    </message>
    <message>
        <source>%1 found</source>
        <translation>%1 gefunden</translation>
    </message>
</context>
<context>
    <name>ts::RackView</name>
    <message>
        <source>Rack of units</source>
        <translation>Regal der Geräte</translation>
    </message>
</context>
<context>
    <name>ts::ReadingsPage</name>
    <message>
        <source>Test point %1</source>
        <translation>Messpunkt %1</translation>
    </message>
    <message>
        <source>The name</source>
        <translation>Der Name</translation>
    </message>
    <message>
        <source>A test point needs a name</source>
        <translation>Ein Messpunkt braucht einen Namen</translation>
    </message>
    <message>
        <source>Delete takes it out</source>
        <translation>Entf nimmt ihn heraus</translation>
    </message>
    <message>
        <source>Test point %1 is now %2</source>
        <translation>Messpunkt %1 heißt jetzt %2</translation>
    </message>
    <message>
        <source>Test point %1: nothing is wanted</source>
        <translation>Messpunkt %1: kein Soll</translation>
    </message>
    <message>
        <source>Test point %1: wanted %2</source>
        <translation>Messpunkt %1: Soll %2</translation>
    </message>
    <message>
        <source>Record it</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>No reading stands there to be set right: go to one under “As found” or “After work”.</source>
        <translation>Dort steht kein Messwert zum Berichtigen: zu einem unter „Wie vorgefunden“ oder „Nach der Arbeit“ gehen.</translation>
    </message>
    <message>
        <source>Reading taken out: %1 %2</source>
        <translation>Messwert herausgenommen: %1 %2</translation>
    </message>
    <message>
        <source>Test point taken out: %1</source>
        <translation>Messpunkt herausgenommen: %1</translation>
    </message>
    <message>
        <source>Test point taken out with its readings: %1</source>
        <translation>Messpunkt mit seinen Messwerten herausgenommen: %1</translation>
    </message>
    <message>
        <source>Test point moved: %1</source>
        <translation>Messpunkt verschoben: %1</translation>
    </message>
    <message>
        <source>Test points</source>
        <translation>Messpunkte</translation>
    </message>
    <message>
        <source>Meter of what is typed next</source>
        <translation>Messgerät für die nächsten Eingaben</translation>
    </message>
    <message>
        <source>What is typed into the table is taken with this meter, unless the value is followed by “with” and another</source>
        <translation>Was in die Tabelle eingegeben wird, gilt als mit diesem Messgerät gemessen, außer wenn „with“ und ein anderes auf den Wert folgen</translation>
    </message>
    <message>
        <source>Add a test point</source>
        <translation>Messpunkt hinzufügen</translation>
    </message>
    <message>
        <source>Take out the reading or the test point</source>
        <translation>Messwert oder Messpunkt herausnehmen</translation>
    </message>
    <message>
        <source>Set the last reading right</source>
        <translation>Letzten Messwert berichtigen</translation>
    </message>
    <message>
        <source>Take out the test point with its readings</source>
        <translation>Messpunkt mit seinen Messwerten herausnehmen</translation>
    </message>
    <message>
        <source>Move up</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>Move down</source>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>All points</source>
        <translation>Alle Messpunkte</translation>
    </message>
    <message>
        <source>Out of spec (%1)</source>
        <translation>Außerhalb (%1)</translation>
    </message>
    <message>
        <source>Not yet read (%1)</source>
        <translation>Noch nicht gemessen (%1)</translation>
    </message>
    <message>
        <source>Not read after work (%1)</source>
        <translation>Nach der Arbeit nicht gemessen (%1)</translation>
    </message>
    <message>
        <source>%1 was not changed</source>
        <translation>%1 wurde nicht geändert</translation>
    </message>
    <message>
        <source>it was read in %1, and %2 cannot be held against that</source>
        <translation>gemessen wurde in %1, und %2 lässt sich damit nicht vergleichen</translation>
    </message>
    <message>
        <source>Points from model notes</source>
        <translation>Messpunkte aus Modellnotizen</translation>
    </message>
    <message>
        <source>Taken with no meter named</source>
        <translation>Gemessen ohne genanntes Messgerät</translation>
    </message>
    <message>
        <source>Taken with %1</source>
        <translation>Gemessen mit %1</translation>
    </message>
    <message>
        <source>Run through the points  ·  F7</source>
        <translation>Durchgang durch die Messpunkte  ·  F7</translation>
    </message>
    <message>
        <source>Run through the test points</source>
        <translation>Durchgang durch die Messpunkte</translation>
    </message>
    <message>
        <source>One point after the other, large, for hands that hold probes</source>
        <translation>Ein Messpunkt nach dem anderen, groß, für Hände, die Prüfspitzen halten</translation>
    </message>
    <message>
        <source>There is no test point yet: add one, or bring them from the model notes.</source>
        <translation>Noch gibt es keinen Messpunkt: einen hinzufügen oder aus den Modellnotizen übernehmen.</translation>
    </message>
    <message>
        <source>What is measured on this unit. Stand on “As found” or “After work” and type a value: Enter records it and goes on in the row below. What is typed under “After work” is how the unit leaves, as the sheet shows it; “during” behind the value makes it one of the work. A bare number has the unit of what is wanted; OL, &lt;, &gt; and about are kept; ± and an uncertainty, “with” and a meter may follow. A value typed where there is one is a reading of its own, and the earlier ones are kept. Ctrl+E sets the last one right, Delete takes it out. Below, the row at hand is held against what is wanted, with the chance that it is really within.</source>
        <translation>Was an diesem Gerät gemessen wird. Auf „Wie vorgefunden“ oder „Nach der Arbeit“ gehen und einen Wert tippen: Die Eingabetaste trägt ihn ein und geht in die Zeile darunter. Was unter „Nach der Arbeit“ eingegeben wird, gilt als wie übergeben, so wie das Blatt es zeigt; „during“ hinter dem Wert ordnet ihn der Arbeit zu. Eine bloße Zahl hat die Einheit des Solls; OL, &lt;, &gt; und „about“ bleiben erhalten; ± und eine Unsicherheit, „with“ und ein Messgerät können folgen. Ein Wert, wo schon einer steht, ist ein eigener Messwert, und die früheren bleiben. Strg+E berichtigt den letzten, Entf nimmt ihn heraus. Darunter wird die gewählte Zeile mit dem Soll verglichen, mit der Wahrscheinlichkeit, dass sie wirklich innerhalb liegt.</translation>
    </message>
</context>
<context>
    <name>ts::ResalePicture</name>
    <message>
        <source>middle %1</source>
        <translation>Mitte %1</translation>
    </message>
    <message>
        <source>break-even %1</source>
        <translation>kostendeckend %1</translation>
    </message>
    <message>
        <source>What it should fetch</source>
        <translation>Was es bringen sollte</translation>
    </message>
</context>
<context>
    <name>ts::RunningClock</name>
    <message>
        <source>The clock runs for a unit: take one in hand first.</source>
        <translation>Die Stoppuhr läuft für ein Gerät: erst eines wählen.</translation>
    </message>
</context>
<context>
    <name>ts::SafetyView</name>
    <message>
        <source>passed</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation>nicht zutreffend</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Soll</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>The value, with ± where it is known; a stricter limit of the set itself behind it: want &lt;= 0.15 V</source>
        <translation>Der Wert, mit ±, wo bekannt; eine strengere Grenze des Geräts selbst dahinter: want &lt;= 0.15 V</translation>
    </message>
    <message>
        <source>Came out</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Prüfgerät</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>protection class?</source>
        <translation>Schutzklasse?</translation>
    </message>
    <message>
        <source>in order</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>what was seen</source>
        <translation>was zu sehen war</translation>
    </message>
    <message>
        <source>value, ± if known</source>
        <translation>Wert, ± falls bekannt</translation>
    </message>
    <message>
        <source>another test stands in</source>
        <translation>eine andere Prüfung tritt an ihre Stelle</translation>
    </message>
    <message>
        <source>Electrical safety test</source>
        <translation>Prüfung der elektrischen Sicherheit</translation>
    </message>
    <message>
        <source>This unit takes no mains: there is no electrical safety test to make.</source>
        <translation>Dieses Gerät läuft nicht am Netz: Eine Prüfung der elektrischen Sicherheit entfällt.</translation>
    </message>
    <message>
        <source>Before any of the electrical tests</source>
        <translation>Vor jeder elektrischen Prüfung</translation>
    </message>
    <message>
        <source>Insulation testers put 500 V on the unit and charge it; currents are taken with mains on it, hands off, both plug ways, without an isolating transformer. Unplug and discharge before leads are touched, and never be alone. Which tests, limits and intervals hold is said by your local codes; where they ask for licensed practice, that comes first. This is your own check with its rule set, instrument, date and initials, and no certificate.</source>
        <translation>Isolationsprüfer legen 500 V an das Gerät und laden es auf; Ströme werden mit Netz gemessen, Hände weg, in beiden Steckerlagen, ohne Trenntransformator. Netzstecker ziehen und entladen, bevor Leitungen angefasst werden, und nie allein sein. Welche Prüfungen, Grenzen und Fristen gelten, sagen die örtlichen Vorschriften; wo sie eine zugelassene Fachkraft verlangen, geht das vor. Dies ist die eigene Prüfung mit Regelwerk, Prüfgerät, Datum und Kürzel, und keine Bescheinigung.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Schutzklasse</translation>
    </message>
    <message>
        <source>Rule set</source>
        <translation>Regelwerk</translation>
    </message>
    <message>
        <source>its name</source>
        <translation>sein Name</translation>
    </message>
    <message>
        <source>2 m or 0.05 Ω</source>
        <translation>2 m oder 0.05 Ω</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Netzleitung</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>A value that lies within its uncertainty of the limit is too close to call, and not passed. A stricter limit of the set's own manual counts: type it behind the value.</source>
        <translation>Ein Wert, der um weniger als seine Unsicherheit von der Grenze entfernt liegt, ist zu knapp und nicht bestanden. Eine strengere Grenze aus dem Handbuch des Geräts zählt: hinter den Wert schreiben.</translation>
    </message>
    <message>
        <source>Limits depend on the protection class: choose it first.</source>
        <translation>Die Grenzen hängen von der Schutzklasse ab: erst diese wählen.</translation>
    </message>
    <message>
        <source>Protection class %1</source>
        <translation>Schutzklasse %1</translation>
    </message>
    <message>
        <source>Protection class not known</source>
        <translation>Schutzklasse nicht bekannt</translation>
    </message>
</context>
<context>
    <name>ts::SaidLine</name>
    <message>
        <source>What was done last</source>
        <translation>Was zuletzt getan wurde</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
</context>
<context>
    <name>ts::SettingsPlace</name>
    <message>
        <source>On papers</source>
        <translation>Auf Papieren</translation>
    </message>
    <message>
        <source>The bench</source>
        <translation>Die Werkstatt</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>Geld</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Name of the bench</source>
        <translation>Name der Werkstatt</translation>
    </message>
    <message>
        <source>Harbour Lane Audio Bench</source>
        <translation>Harbour Lane Audio Bench</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Anschrift</translation>
    </message>
    <message>
        <source>Who does the work</source>
        <translation>Wer die Arbeit macht</translation>
    </message>
    <message>
        <source>R. M.</source>
        <translation>R. M.</translation>
    </message>
    <message>
        <source>Terms, printed at the foot of the restoration sheet</source>
        <translation>Bedingungen, unten auf dem Restaurierungsblatt gedruckt</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>A4, unless chosen otherwise</source>
        <translation>A4, wenn nichts anderes gewählt ist</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>The bench’s own mains</source>
        <translation>Das Netz der Werkstatt</translation>
    </message>
    <message>
        <source>230 V 50 Hz</source>
        <translation>230 V 50 Hz</translation>
    </message>
    <message>
        <source>Country, three letters; goes into open repair data</source>
        <translation>Land, drei Buchstaben; geht in die offenen Reparaturdaten ein</translation>
    </message>
    <message>
        <source>Hours a week at the bench</source>
        <translation>Stunden je Woche an der Werkbank</translation>
    </message>
    <message>
        <source>Currency, three letters; stays once money is recorded</source>
        <translation>Währung, drei Buchstaben; steht fest, sobald Geld eingetragen ist</translation>
    </message>
    <message>
        <source>What an hour of yours is worth</source>
        <translation>Was eine eigene Stunde wert ist</translation>
    </message>
    <message>
        <source>What the bench costs an hour</source>
        <translation>Was die Werkstatt je Stunde kostet</translation>
    </message>
    <message>
        <source>Channel that break-even is worked out for</source>
        <translation>Verkaufsweg, für den der kostendeckende Preis berechnet wird</translation>
    </message>
    <message>
        <source>What a unit should leave beside your hours</source>
        <translation>Was ein Gerät außer den eigenen Stunden übrig lassen soll</translation>
    </message>
    <message>
        <source>Tax on the margin, percent; leave empty if you sell outside such a scheme</source>
        <translation>Steuer auf die Marge, Prozent; leer lassen, wenn ohne Differenzbesteuerung verkauft wird</translation>
    </message>
    <message>
        <source>Sales that come back, percent</source>
        <translation>Verkäufe, die zurückkommen, Prozent</translation>
    </message>
    <message>
        <source>Days from offered to sold</source>
        <translation>Tage vom Angebot bis zum Verkauf</translation>
    </message>
    <message>
        <source>Rates and rules are yours to set; this is no tax advice.</source>
        <translation>Sätze und Regeln legen Sie selbst fest; dies ist keine Steuerberatung.</translation>
    </message>
    <message>
        <source>Settings of the workbook go with it wherever it goes, and Undo takes them back. What stands under “This computer” stays here.</source>
        <translation>Einstellungen des Werkbuchs gehen mit ihm überallhin, und Rückgängig nimmt sie zurück. Was unter „Dieser Rechner“ steht, bleibt hier.</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keiner</translation>
    </message>
    <message>
        <source>Tag labels, width by height in millimetres</source>
        <translation>Anhängeretiketten, Breite mal Höhe in Millimetern</translation>
    </message>
    <message>
        <source>Labels for small bags</source>
        <translation>Etiketten für kleine Beutel</translation>
    </message>
</context>
<context>
    <name>ts::SharesBar</name>
    <message>
        <source>Where the resale price goes</source>
        <translation>Wohin der Verkaufspreis geht</translation>
    </message>
    <message>
        <source>bought</source>
        <translation>Kauf</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>fees</source>
        <translation>Gebühren</translation>
    </message>
    <message>
        <source>carriage</source>
        <translation>Fracht</translation>
    </message>
    <message>
        <source>yours</source>
        <translation>bleibt</translation>
    </message>
    <message>
        <source>short</source>
        <translation>fehlt</translation>
    </message>
</context>
<context>
    <name>ts::SheetPhotos</name>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Photos for the sheet</source>
        <translation>Fotos für das Blatt</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>See large</source>
        <translation>Groß ansehen</translation>
    </message>
    <message>
        <source>Take off the sheet</source>
        <translation>Vom Blatt nehmen</translation>
    </message>
    <message>
        <source>Put on the sheet</source>
        <translation>Aufs Blatt nehmen</translation>
    </message>
    <message>
        <source>No photos of this unit yet; drop or paste them anywhere on the window.</source>
        <translation>Noch keine Fotos dieses Geräts; irgendwo auf dem Fenster ablegen oder einfügen.</translation>
    </message>
    <message>
        <source>None is chosen, so the first as found and the last as it leaves go on.</source>
        <translation>Keines ist gewählt, darum kommen das erste „wie vorgefunden“ und das letzte „wie übergeben“ darauf.</translation>
    </message>
    <message>
        <source>At most eight go on, from arrival to leaving.</source>
        <translation>Höchstens acht kommen darauf, von der Ankunft bis zur Übergabe.</translation>
    </message>
    <message>
        <source>Photo off the sheet: %1</source>
        <translation>Foto vom Blatt: %1</translation>
    </message>
    <message>
        <source>Photo onto the sheet: %1</source>
        <translation>Foto aufs Blatt: %1</translation>
    </message>
    <message>
        <source>Photo moved on the sheet: %1</source>
        <translation>Foto auf dem Blatt verschoben: %1</translation>
    </message>
</context>
<context>
    <name>ts::SheetPreview</name>
    <message>
        <source>The sheet as it will be</source>
        <translation>Das Blatt, wie es wird</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n Seite</numerusform><numerusform>%n Seiten</numerusform></translation>
    </message>
</context>
<context>
    <name>ts::ShelfOffer</name>
    <message>
        <source>What of the shelf would fit</source>
        <translation>Was aus dem Lager passen würde</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Passt</translation>
    </message>
    <message>
        <source>Take it for this unit</source>
        <translation>Für dieses Gerät nehmen</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Nehmen</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>passt</translation>
    </message>
    <message>
        <source>look first</source>
        <translation>erst ansehen</translation>
    </message>
    <message>
        <source>for %1</source>
        <translation>für %1</translation>
    </message>
</context>
<context>
    <name>ts::ShelfPane</name>
    <message>
        <source>Find: capacitor 1000u &gt;=63V d&lt;=10mm, belt 78 ± 2 mm, drawer C3…</source>
        <translation>Suchen: capacitor 1000u &gt;=63V d&lt;=10mm, belt 78 ± 2 mm, drawer C3…</translation>
    </message>
    <message>
        <source>Find parts by what they are rated for</source>
        <translation>Teile nach ihren Nennwerten suchen</translation>
    </message>
    <message>
        <source>Below what is kept</source>
        <translation>Unter dem Mindestbestand</translation>
    </message>
    <message>
        <source>Parts on the shelf</source>
        <translation>Teile im Lager</translation>
    </message>
    <message>
        <source>Take off the shelf</source>
        <translation>Aus dem Lager nehmen</translation>
    </message>
    <message>
        <source>Rating</source>
        <translation>Nennwert</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Posten</translation>
    </message>
    <message>
        <source>Take the batch off</source>
        <translation>Posten herausnehmen</translation>
    </message>
    <message>
        <source>Below what is kept: %1</source>
        <translation>Unter dem Mindestbestand: %1</translation>
    </message>
    <message>
        <source>%1 · found: %2</source>
        <translation>%1 · gefunden: %2</translation>
    </message>
    <message>
        <source>Part %1: %2 %3</source>
        <translation>Teil %1: %2 %3</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation>herausgenommen</translation>
    </message>
    <message>
        <source>Into the parts store: %1 × %2</source>
        <translation>Ins Teilelager: %1 × %2</translation>
    </message>
    <message>
        <source>Batch of %1: %2 %3</source>
        <translation>Posten von %1: %2 %3</translation>
    </message>
    <message>
        <source>Off the shelf: %1</source>
        <translation>Aus dem Lager: %1</translation>
    </message>
    <message>
        <source>Batch of %1 taken off</source>
        <translation>Posten von %1 herausgenommen</translation>
    </message>
</context>
<context>
    <name>ts::SoakCard</name>
    <message>
        <source>Which soak</source>
        <translation>Welcher Dauerlauf</translation>
    </message>
    <message>
        <source>Soak</source>
        <translation>Dauerlauf</translation>
    </message>
    <message>
        <source>Soak: %1</source>
        <translation>Dauerlauf: %1</translation>
    </message>
    <message>
        <source>Chart of the soak %1: %2</source>
        <translation>Diagramm des Dauerlaufs %1: %2</translation>
    </message>
</context>
<context>
    <name>ts::StagePanel</name>
    <message>
        <source>It goes there all the same, because</source>
        <translation>Es geht trotzdem dorthin, weil</translation>
    </message>
    <message>
        <source>Look at the proofs</source>
        <translation>Abnahmen ansehen</translation>
    </message>
    <message>
        <source>Look at what is off</source>
        <translation>Ansehen, was ab ist</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
    </message>
    <message>
        <source>To %1</source>
        <translation>Auf „%1“ setzen</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Move to %1</source>
        <translation>Auf „%1“ setzen</translation>
    </message>
    <message>
        <source>That is put right first: a ready unit can be plugged in by anybody.</source>
        <translation>Das wird erst in Ordnung gebracht: Ein fertiges Gerät kann jeder ans Netz stecken.</translation>
    </message>
    <message>
        <source>Electrical safety is not tested: no proof of it is on record.</source>
        <translation>Die elektrische Sicherheit ist nicht geprüft: Keine Abnahme dafür ist eingetragen.</translation>
    </message>
    <message>
        <source>Electrical safety is not tested: %1.</source>
        <translation>Die elektrische Sicherheit ist nicht geprüft: %1.</translation>
    </message>
    <message>
        <source>Whoever plugs it in relies on it: local codes and licensed practice come first.</source>
        <translation>Wer es ans Netz steckt, verlässt sich darauf: Örtliche Vorschriften und zugelassene Fachkräfte gehen vor.</translation>
    </message>
    <message>
        <source>It can be moved all the same; the journal then says that it was not tested.</source>
        <translation>Die Stufe lässt sich trotzdem wechseln; im Verlauf steht dann, dass nicht geprüft wurde.</translation>
    </message>
</context>
<context>
    <name>ts::StageRibbon</name>
    <message>
        <source>Move to %1</source>
        <translation>Auf „%1“ setzen</translation>
    </message>
    <message>
        <source>Stage: %1</source>
        <translation>Stufe: %1</translation>
    </message>
    <message>
        <source>%1. Change it</source>
        <translation>%1. Ändern</translation>
    </message>
    <message>
        <source>Waiting for %1</source>
        <translation>Wartet auf %1</translation>
    </message>
    <message>
        <source>Waiting for %1, was due %2</source>
        <translation>Wartet auf %1, war fällig %2</translation>
    </message>
    <message>
        <source>Waiting for %1 until %2</source>
        <translation>Wartet auf %1 bis %2</translation>
    </message>
    <message>
        <source>On %1; say for how much</source>
        <translation>Bei %1; Preis angeben</translation>
    </message>
    <message>
        <source>Say where and for how much</source>
        <translation>Verkaufsweg und Preis angeben</translation>
    </message>
    <message>
        <source>%1 asked on %2</source>
        <translation>Angeboten für %1 bei %2</translation>
    </message>
    <message>
        <source>%1 asked; say where</source>
        <translation>Angeboten für %1; Verkaufsweg angeben</translation>
    </message>
    <message>
        <source>Say how it ended</source>
        <translation>Angeben, wie es ausging</translation>
    </message>
    <message>
        <source>Sold for %1 on %2</source>
        <translation>Verkauft für %1 am %2</translation>
    </message>
    <message>
        <source>Sold for %1</source>
        <translation>Verkauft für %1</translation>
    </message>
    <message>
        <source>Alt+%1</source>
        <translation>Alt+%1</translation>
    </message>
</context>
<context>
    <name>ts::StandLine</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ts::StandingPane</name>
    <message>
        <source>As it stands</source>
        <translation>Stand der Dinge</translation>
    </message>
    <message>
        <source>Symptoms open</source>
        <translation>Offene Symptome</translation>
    </message>
    <message>
        <source>Readings out of spec</source>
        <translation>Messwerte außerhalb</translation>
    </message>
    <message>
        <source>Too close to call</source>
        <translation>Zu knapp</translation>
    </message>
    <message>
        <source>Parts awaited</source>
        <translation>Erwartete Teile</translation>
    </message>
    <message>
        <source>Proofs passed</source>
        <translation>Bestandene Abnahmen</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Likeliest cause left</source>
        <translation>Wahrscheinlichste offene Ursache</translation>
    </message>
    <message>
        <source>If finished and sold</source>
        <translation>Wenn fertig und verkauft</translation>
    </message>
    <message>
        <source>Spent so far</source>
        <translation>Bisher ausgegeben</translation>
    </message>
    <message>
        <source>Per hour of yours</source>
        <translation>Je eigene Stunde</translation>
    </message>
    <message>
        <source>Break-even price</source>
        <translation>Kostendeckender Preis</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>none seen</source>
        <translation>keines gesehen</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>none taken</source>
        <translation>keiner gemessen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>%1, was due %2</source>
        <translation>%1, war fällig %2</translation>
    </message>
    <message>
        <source>%1, due %2</source>
        <translation>%1, fällig %2</translation>
    </message>
    <message>
        <source>%1, %2 failed</source>
        <translation>%1, %2 nicht bestanden</translation>
    </message>
    <message>
        <source>Next: %1, %2 min</source>
        <translation>Als Nächstes: %1, %2 min</translation>
    </message>
    <message>
        <source>As it was sold</source>
        <translation>Wie es verkauft wurde</translation>
    </message>
    <message>
        <source>Loss, your hours aside</source>
        <translation>Verlust, ohne eigene Stunden</translation>
    </message>
    <message>
        <source>Profit, your hours aside</source>
        <translation>Gewinn, ohne eigene Stunden</translation>
    </message>
    <message>
        <source>, saves %1 min</source>
        <translation>, spart %1 min</translation>
    </message>
</context>
<context>
    <name>ts::StockModel</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>in stock</source>
        <translation>im Bestand</translation>
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
        <source>Unit</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>Bought from</source>
        <translation>Gekauft bei</translation>
    </message>
    <message>
        <source>Bought on</source>
        <translation>Gekauft am</translation>
    </message>
    <message>
        <source>Bought for</source>
        <translation>Gekauft für</translation>
    </message>
    <message>
        <source>Gone</source>
        <translation>Abgang</translation>
    </message>
    <message>
        <source>Sold for</source>
        <translation>Verkauft für</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Marge</translation>
    </message>
    <message>
        <source>Tax in it</source>
        <translation>Steuer darin</translation>
    </message>
    <message>
        <source>Other costs</source>
        <translation>Andere Kosten</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Bestand</translation>
    </message>
</context>
<context>
    <name>ts::Strip</name>
    <message>
        <source>Units</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Model notes</source>
        <translation>Modellnotizen</translation>
    </message>
    <message>
        <source>Parts store</source>
        <translation>Teilelager</translation>
    </message>
    <message>
        <source>Ledger</source>
        <translation>Kassenbuch</translation>
    </message>
    <message>
        <source>Overview</source>
        <translation>Überblick</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Lists in and out</source>
        <translation>Listen ein und aus</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Take in a unit</source>
        <translation>Gerät aufnehmen</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Bench today</source>
        <translation>Werkbank heute</translation>
    </message>
    <message>
        <source>Bench sums</source>
        <translation>Berechnungen</translation>
    </message>
</context>
<context>
    <name>ts::SumForm</name>
    <message>
        <source>Note it in the log</source>
        <translation>Im Protokoll notieren</translation>
    </message>
    <message>
        <source>Take it as a reading…</source>
        <translation>Als Messwert nehmen…</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Formula: %1
Source: %2</source>
        <translation>Formel: %1
Quelle: %2</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>usually %1</source>
        <translation>meist %1</translation>
    </message>
    <message>
        <source>may be left out</source>
        <translation>darf fehlen</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1, in %2</translation>
    </message>
    <message>
        <source>Still to be said: %1.</source>
        <translation>Noch anzugeben: %1.</translation>
    </message>
    <message>
        <source>Note it in the log of %1</source>
        <translation>Im Protokoll von %1 notieren</translation>
    </message>
    <message>
        <source>The note</source>
        <translation>Die Notiz</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Notiz: %1</translation>
    </message>
    <message>
        <source>At which test point is %1?</source>
        <translation>An welchem Messpunkt liegt %1?</translation>
    </message>
    <message>
        <source>idle current L</source>
        <translation>Ruhestrom L</translation>
    </message>
    <message>
        <source>Name the test point that the reading is of.</source>
        <translation>Den Messpunkt nennen, zu dem der Messwert gehört.</translation>
    </message>
</context>
<context>
    <name>ts::SumsPlace</name>
    <message>
        <source>Narrow the sums</source>
        <translation>Berechnungen eingrenzen</translation>
    </message>
    <message>
        <source>Which sum?</source>
        <translation>Welche Berechnung?</translation>
    </message>
    <message>
        <source>Bench sums</source>
        <translation>Berechnungen</translation>
    </message>
    <message>
        <source>Sums of the bench: markings, fuses, discharge, levels, speeds, statistics, money. Type a few letters of what is wanted, Enter, fill the fields; what comes out stands below at once, with its formula and where it comes from. It can be put into the log of the unit in hand, as a note or as a reading.</source>
        <translation>Berechnungen der Werkbank: Kennzeichnungen, Sicherungen, Entladung, Pegel, Drehzahlen, Statistik, Geld. Einige Buchstaben des Gesuchten eingeben, Eingabe, Felder füllen; das Ergebnis steht gleich darunter, mit Formel und Herkunft. Es kann ins Protokoll des gewählten Geräts, als Notiz oder als Messwert.</translation>
    </message>
</context>
<context>
    <name>ts::SymptomChoice</name>
    <message>
        <source>None of these</source>
        <translation>Keines davon</translation>
    </message>
</context>
<context>
    <name>ts::TagGiven</name>
    <message>
        <source>Taken in. Its tag is</source>
        <translation>Aufgenommen. Der Anhänger ist</translation>
    </message>
    <message>
        <source>Open it  ·  Enter</source>
        <translation>Öffnen  ·  Eingabe</translation>
    </message>
    <message>
        <source>Open the unit</source>
        <translation>Gerät öffnen</translation>
    </message>
    <message>
        <source>Take in another  ·  Ctrl+T</source>
        <translation>Weiteres aufnehmen  ·  Strg+T</translation>
    </message>
    <message>
        <source>Take in another unit</source>
        <translation>Weiteres Gerät aufnehmen</translation>
    </message>
    <message>
        <source>Tie tag %1 to it</source>
        <translation>Anhänger %1 daran binden</translation>
    </message>
    <message>
        <source>&amp;Bring it all onto this unit</source>
        <translation>Alles auf dieses Gerät ü&amp;bertragen</translation>
    </message>
    <message>
        <source>Bring what is known of the model onto this unit</source>
        <translation>Was vom Modell bekannt ist, auf dieses Gerät übertragen</translation>
    </message>
    <message numerus="yes">
        <source>%n test point(s)</source>
        <translation>
            <numerusform>%n Messpunkt</numerusform><numerusform>%n Messpunkte</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) of teardown</source>
        <translation>
            <numerusform>%n Arbeitsschritt der Zerlegung</numerusform><numerusform>%n Arbeitsschritte der Zerlegung</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n proof(s)</source>
        <translation>
            <numerusform>%n Abnahmepunkt</numerusform><numerusform>%n Abnahmepunkte</numerusform></translation>
    </message>
    <message>
        <source>The notes know this model: %1.</source>
        <translation>Die Notizen kennen dieses Modell: %1.</translation>
    </message>
    <message>
        <source>Brought onto it. What the model needs in parts stands in its notes.</source>
        <translation>Übertragen. Was das Modell an Teilen braucht, steht in seinen Notizen.</translation>
    </message>
</context>
<context>
    <name>ts::TakeInBrings</name>
    <message>
        <source>Before it is plugged in</source>
        <translation>Vor dem Einstecken</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>To be proved before handover</source>
        <translation>Vor der Übergabe abzunehmen</translation>
    </message>
    <message numerus="yes">
        <source>%n test point(s) are copied over.</source>
        <translation>
            <numerusform>%n Messpunkt wird übernommen.</numerusform><numerusform>%n Messpunkte werden übernommen.</numerusform></translation>
    </message>
</context>
<context>
    <name>ts::TakeInFields</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>as you call it: Pellworth KD-7 cassette deck</source>
        <translation>wie es heißen soll: Pellworth KD-7 Kassettendeck</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Mains, as on the plate</source>
        <translation>Netz, laut Typenschild</translation>
    </message>
    <message>
        <source>230 V 50 Hz</source>
        <translation>230 V 50 Hz</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>Owner’s name</source>
        <translation>Name des Eigentümers</translation>
    </message>
    <message>
        <source>What the seller or owner says is wrong</source>
        <translation>Was laut Verkäufer oder Eigentümer nicht stimmt</translation>
    </message>
    <message>
        <source>Price paid</source>
        <translation>Bezahlter Preis</translation>
    </message>
    <message>
        <source>Carriage</source>
        <translation>Fracht</translation>
    </message>
    <message>
        <source>Planned resale</source>
        <translation>Geplanter Wiederverkauf</translation>
    </message>
    <message>
        <source>Planned hours</source>
        <translation>Geplante Stunden</translation>
    </message>
    <message>
        <source>4 h 30 m</source>
        <translation>4 h 30 m</translation>
    </message>
    <message>
        <source>Category</source>
        <translation>Kategorie</translation>
    </message>
    <message>
        <source>The rest can wait; Tab goes through it</source>
        <translation>Der Rest kann warten; Tab geht durch die Felder</translation>
    </message>
    <message>
        <source>Protection class</source>
        <translation>Schutzklasse</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
</context>
<context>
    <name>ts::TakeInPage</name>
    <message>
        <source>A name and a category are enough. Enter takes it in; Esc leaves, and what is typed waits here.</source>
        <translation>Name und Kategorie genügen. Eingabe nimmt es auf; Esc geht hinaus, und was eingegeben ist, wartet hier.</translation>
    </message>
    <message>
        <source>Choose photos…</source>
        <translation>Fotos wählen…</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Aufnehmen</translation>
    </message>
    <message>
        <source>Empty the page</source>
        <translation>Seite leeren</translation>
    </message>
    <message>
        <source>Take in a unit</source>
        <translation>Gerät aufnehmen</translation>
    </message>
    <message>
        <source>or drop or paste them anywhere on the window</source>
        <translation>oder irgendwo auf dem Fenster ablegen oder einfügen</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) go with it</source>
        <translation>
            <numerusform>%n Foto kommt mit</numerusform><numerusform>%n Fotos kommen mit</numerusform></translation>
    </message>
    <message>
        <source>The unit has no name; call it what it is: maker, model, what kind of thing.</source>
        <translation>Das Gerät hat keinen Namen; benennen, was es ist: Hersteller, Modell, was für ein Gerät.</translation>
    </message>
    <message>
        <source>Choose what kind of thing it is; it brings the cautions and the proofs.</source>
        <translation>Wählen, was für ein Gerät es ist; daraus ergeben sich Warnhinweise und Abnahmen.</translation>
    </message>
</context>
<context>
    <name>ts::TeardownPage</name>
    <message>
        <source>Back: %1</source>
        <translation>Wieder dran: %1</translation>
    </message>
    <message>
        <source>Off: %1</source>
        <translation>Ab: %1</translation>
    </message>
    <message>
        <source>Still on: %1</source>
        <translation>Noch dran: %1</translation>
    </message>
    <message>
        <source>Taken off the teardown list: %1</source>
        <translation>Von der Zerlegungsliste genommen: %1</translation>
    </message>
    <message>
        <source>Teardown order: %1</source>
        <translation>Reihenfolge der Zerlegung: %1</translation>
    </message>
    <message>
        <source>Why does it stay out: %1?</source>
        <translation>Warum bleibt es weg: %1?</translation>
    </message>
    <message>
        <source>thread stripped, two others hold it</source>
        <translation>Gewinde ausgerissen, zwei andere halten es</translation>
    </message>
    <message>
        <source>The reason</source>
        <translation>Der Grund</translation>
    </message>
    <message>
        <source>Say why it stays out: whoever opens the unit next wants to know.</source>
        <translation>Angeben, warum es wegbleibt: Wer das Gerät als Nächstes öffnet, will es wissen.</translation>
    </message>
    <message>
        <source>Left out: %1, %2</source>
        <translation>Weggelassen: %1, %2</translation>
    </message>
    <message>
        <source>Tag of the unit whose teardown is copied:</source>
        <translation>Anhänger des Geräts, dessen Zerlegung übernommen wird:</translation>
    </message>
    <message>
        <source>0022</source>
        <translation>0022</translation>
    </message>
    <message>
        <source>"%1" is no tag</source>
        <translation>„%1“ ist kein Anhänger</translation>
    </message>
    <message>
        <source>type its four digits</source>
        <translation>seine vier Ziffern eingeben</translation>
    </message>
    <message>
        <source>Choose what is pinned first: the row in the list.</source>
        <translation>Erst wählen, wofür die Nadel ist: die Zeile in der Liste.</translation>
    </message>
    <message>
        <source>Pinned on a photo: %1</source>
        <translation>Nadel auf Foto gesetzt: %1</translation>
    </message>
    <message>
        <source>Pin moved: %1</source>
        <translation>Nadel verschoben: %1</translation>
    </message>
    <message>
        <source>Pin taken off: %1</source>
        <translation>Nadel entfernt: %1</translation>
    </message>
    <message>
        <source>putting-back %1.pdf</source>
        <translation>zusammenbau %1.pdf</translation>
    </message>
    <message>
        <source>Write the putting-back sheet</source>
        <translation>Zusammenbaublatt schreiben</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;Web page (*.html)</source>
        <translation>PDF (*.pdf);;Webseite (*.html)</translation>
    </message>
    <message>
        <source>Wrote %1</source>
        <translation>%1 geschrieben</translation>
    </message>
    <message>
        <source>Taking apart</source>
        <translation>Zerlegen</translation>
    </message>
    <message>
        <source>Putting back (reverse)</source>
        <translation>Zusammenbauen (rückwärts)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>The putting-back sheet, as a file</source>
        <translation>Das Zusammenbaublatt, als Datei</translation>
    </message>
    <message>
        <source>From the model notes</source>
        <translation>Aus den Modellnotizen</translation>
    </message>
    <message>
        <source>From another unit</source>
        <translation>Von einem anderen Gerät</translation>
    </message>
    <message>
        <source>What came off</source>
        <translation>Was abgenommen wurde</translation>
    </message>
    <message>
        <source>More of the item at hand</source>
        <translation>Mehr zur gewählten Zeile</translation>
    </message>
    <message>
        <source>Loose on the bench</source>
        <translation>Lose auf der Werkbank</translation>
    </message>
    <message>
        <source>Photo with numbered pins</source>
        <translation>Foto mit nummerierten Nadeln</translation>
    </message>
    <message>
        <source>No photo of this unit yet. Photos come in by dragging, pasting or as files, and then the place of each screw can be pinned on them.</source>
        <translation>Noch kein Foto dieses Geräts. Fotos kommen durch Ziehen, Einfügen oder als Dateien herein; dann lässt sich der Ort jeder Schraube darauf mit einer Nadel zeigen.</translation>
    </message>
    <message>
        <source>Photos of this unit</source>
        <translation>Fotos dieses Geräts</translation>
    </message>
    <message>
        <source>Left out, with the reason</source>
        <translation>Weggelassen, mit dem Grund</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Take off the list</source>
        <translation>Von der Liste nehmen</translation>
    </message>
    <message>
        <source>What came off, in the order in which it came off. Type it in the last row in the words of the log: lid 5 screws M3x8 tray A1. Space ticks; Ctrl+Up and Ctrl+Down move a row; Ctrl+L says that something stays out, and why. “Putting back” reads the list backwards and counts what is still loose. On the photo a click, or Enter, pins the item at hand; drag the pin, or move it by the arrow keys (with Shift a little at a time). Before the cover comes off: unplug, and let the capacitors discharge. Local codes and licensed practice come first.</source>
        <translation>Was abgenommen wurde, in der Reihenfolge des Abnehmens. In die letzte Zeile eingeben, in den Worten des Protokolls: lid 5 screws M3x8 tray A1. Leertaste hakt ab; Strg+Auf und Strg+Ab verschieben eine Zeile; Strg+L sagt, dass etwas wegbleibt, und warum. „Zusammenbauen“ liest die Liste rückwärts und zählt, was noch lose ist. Auf dem Foto setzt ein Klick oder Eingabe die Nadel für die gewählte Zeile; die Nadel ziehen oder mit den Pfeiltasten bewegen (mit Umschalt jeweils ein wenig). Bevor die Abdeckung abkommt: Netzstecker ziehen und die Kondensatoren entladen lassen. Örtliche Vorschriften und zugelassene Fachkräfte gehen vor.</translation>
    </message>
    <message>
        <source>Nothing is off.</source>
        <translation>Nichts ist ab.</translation>
    </message>
    <message numerus="yes">
        <source>%n items</source>
        <translation>
            <numerusform>%n Stück</numerusform><numerusform>%n Stück</numerusform></translation>
    </message>
    <message>
        <source>Put back so far: %1 of %2</source>
        <translation>Bisher wieder dran: %1 von %2</translation>
    </message>
    <message>
        <source>Put back so far: %1 of %2 items</source>
        <translation>Bisher wieder dran: %1 von %2 Stück</translation>
    </message>
    <message>
        <source>Mark it before it moves: %1</source>
        <translation>Vor dem Verstellen markieren: %1</translation>
    </message>
    <message>
        <source>Back to its marks: %1</source>
        <translation>Zurück auf die Marken: %1</translation>
    </message>
    <message>
        <source>Before step %1</source>
        <translation>Vor Schritt %1</translation>
    </message>
    <message>
        <source>%1 · click to pin the item at hand</source>
        <translation>%1 · Klick setzt die Nadel für die gewählte Zeile</translation>
    </message>
    <message>
        <source>Teardown %1, %2: %3</source>
        <translation>Zerlegung %1, %2: %3</translation>
    </message>
</context>
<context>
    <name>ts::UnitField</name>
    <message>
        <source>tag or name</source>
        <translation>Anhänger oder Name</translation>
    </message>
    <message>
        <source>No unit is called “%1”.</source>
        <translation>Kein Gerät heißt „%1“.</translation>
    </message>
    <message>
        <source>“%1” names several units; choose one of them, or type its tag.</source>
        <translation>„%1“ nennt mehrere Geräte; eines davon wählen oder seinen Anhänger eingeben.</translation>
    </message>
</context>
<context>
    <name>ts::UnitHead</name>
    <message>
        <source>serial %1</source>
        <translation>Seriennr. %1</translation>
    </message>
    <message>
        <source>class %1</source>
        <translation>Schutzklasse %1</translation>
    </message>
    <message>
        <source>bought %1</source>
        <translation>gekauft %1</translation>
    </message>
    <message>
        <source>Details  Ctrl+D</source>
        <translation>Details  Strg+D</translation>
    </message>
    <message>
        <source>Details…</source>
        <translation>Details…</translation>
    </message>
    <message>
        <source>The unit’s details</source>
        <translation>Die Details des Geräts</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Strg+D</translation>
    </message>
    <message>
        <source>owner’s words: “%1”</source>
        <translation>Worte des Eigentümers: „%1“</translation>
    </message>
    <message>
        <source>seller’s words: “%1”</source>
        <translation>Worte des Verkäufers: „%1“</translation>
    </message>
</context>
<context>
    <name>ts::UnitPane</name>
    <message>
        <source>Log</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <source>Fault-finding</source>
        <translation>Fehlersuche</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Teardown</source>
        <translation>Zerlegung</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Proving</source>
        <translation>Abnahme</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>Geld</translation>
    </message>
    <message>
        <source>Handover</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>No unit is in hand. Choose a tag on the left, or take in the first one: a name and a category are enough.</source>
        <translation>Kein Gerät ist gewählt. Links einen Anhänger wählen oder das erste Gerät aufnehmen: Name und Kategorie genügen.</translation>
    </message>
    <message>
        <source>Take in a unit</source>
        <translation>Gerät aufnehmen</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Details</translation>
    </message>
</context>
<context>
    <name>ts::WaysCard</name>
    <message>
        <source>From here, not counting what is already spent</source>
        <translation>Ab jetzt, ohne das schon Ausgegebene</translation>
    </message>
    <message>
        <source>Ways out from here</source>
        <translation>Auswege ab jetzt</translation>
    </message>
    <message>
        <source>Way out</source>
        <translation>Ausweg</translation>
    </message>
    <message>
        <source>1 in 10</source>
        <translation>1 von 10</translation>
    </message>
    <message>
        <source>Middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>9 in 10</source>
        <translation>9 von 10</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Per hour</source>
        <translation>Je Stunde</translation>
    </message>
    <message>
        <source>Why it was decided so</source>
        <translation>Warum so entschieden wurde</translation>
    </message>
    <message>
        <source>Because… (left empty: the sentence above)</source>
        <translation>Weil… (leer gelassen: der Satz oben)</translation>
    </message>
    <message>
        <source>Decide</source>
        <translation>Entscheiden</translation>
    </message>
    <message>
        <source>as you type, not recorded</source>
        <translation>während der Eingabe, nicht eingetragen</translation>
    </message>
    <message>
        <source>Worth a look: %1.</source>
        <translation>Einen Blick wert: %1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>%1, leads</source>
        <translation>%1, liegt vorn</translation>
    </message>
    <message>
        <source>Decide: %1</source>
        <translation>Entscheiden: %1</translation>
    </message>
    <message>
        <source>Kept in the log with these figures</source>
        <translation>Mit diesen Zahlen im Protokoll festgehalten</translation>
    </message>
    <message>
        <source>Decided %1: %2. %3</source>
        <translation>Entschieden %1: %2. %3</translation>
    </message>
    <message>
        <source>The figures are being worked out anew; decide when they stand.</source>
        <translation>Die Zahlen werden neu berechnet; entscheiden, wenn sie stehen.</translation>
    </message>
</context>
<context>
    <name>ts::Workplace</name>
    <message>
        <source>Undone: %1</source>
        <translation>Rückgängig gemacht: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Wiederholt: %1</translation>
    </message>
</context>
<context>
    <name>ts::Workspace</name>
    <message>
        <source>Nothing was done</source>
        <translation>Nichts wurde getan</translation>
    </message>
    <message>
        <source>this window cannot open the workbook a second time</source>
        <translation>dieses Fenster kann das Werkbuch nicht ein zweites Mal öffnen</translation>
    </message>
    <message>
        <source>Something else is being done; wait for it, or stop it first.</source>
        <translation>Etwas anderes läuft gerade; abwarten oder erst anhalten.</translation>
    </message>
</context>
<context>
    <name>ts::shown</name>
    <message>
        <source>%1 h %2 m</source>
        <translation>%1 h %2 m</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>over range</source>
        <translation>über dem Messbereich</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>zu knapp</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>keine Grenze</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>wie vorgefunden</translation>
    </message>
    <message>
        <source>during work</source>
        <translation>während der Arbeit</translation>
    </message>
    <message>
        <source>as it leaves</source>
        <translation>wie übergeben</translation>
    </message>
    <message>
        <source>Scouted</source>
        <translation>Gesichtet</translation>
    </message>
    <message>
        <source>Inbound</source>
        <translation>Unterwegs</translation>
    </message>
    <message>
        <source>Shelved</source>
        <translation>Eingelagert</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Wartet</translation>
    </message>
    <message>
        <source>Proving</source>
        <translation>Abnahme</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Offered</source>
        <translation>Angeboten</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Abgeschlossen</translation>
    </message>
    <message>
        <source>On the bench</source>
        <translation>Auf der Werkbank</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>verkauft</translation>
    </message>
    <message>
        <source>returned to owner</source>
        <translation>an Eigentümer zurückgegeben</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>behalten</translation>
    </message>
    <message>
        <source>broken for parts</source>
        <translation>ausgeschlachtet</translation>
    </message>
    <message>
        <source>scrapped</source>
        <translation>verschrottet</translation>
    </message>
    <message>
        <source>what to do with it</source>
        <translation>was damit geschehen soll</translation>
    </message>
    <message>
        <source>another full hour</source>
        <translation>eine weitere volle Stunde</translation>
    </message>
    <message>
        <source>a new part</source>
        <translation>ein neues Teil</translation>
    </message>
    <message>
        <source>a new symptom or cause</source>
        <translation>ein neues Symptom oder eine neue Ursache</translation>
    </message>
    <message>
        <source>asked by hand</source>
        <translation>von Hand gefragt</translation>
    </message>
    <message>
        <source>It rests on the price: %1 to %2 moves it from %3 to %4.</source>
        <translation>Es hängt am Preis: %1 bis %2 verschiebt es von %3 auf %4.</translation>
    </message>
    <message>
        <source>It rests on your hours: %1 to %2 moves it from %3 to %4.</source>
        <translation>Es hängt an den eigenen Stunden: %1 bis %2 verschiebt es von %3 auf %4.</translation>
    </message>
    <message>
        <source>It rests on the parts: %1 to %2 moves it from %3 to %4.</source>
        <translation>Es hängt an den Teilen: %1 bis %2 verschiebt es von %3 auf %4.</translation>
    </message>
    <message>
        <source>It rests on the cause: “%1” or “%2” moves it from %3 to %4.</source>
        <translation>Es hängt an der Ursache: „%1“ oder „%2“ verschiebt es von %3 auf %4.</translation>
    </message>
    <message>
        <source>It rests on the chance of repair: %1 to %2 moves it from %3 to %4.</source>
        <translation>Es hängt an der Wahrscheinlichkeit der Reparatur: %1 bis %2 verschiebt es von %3 auf %4.</translation>
    </message>
</context>
<context>
    <name>ts::typed</name>
    <message>
        <source>%1 is no %2</source>
        <translation>%1 passt nicht als %2</translation>
    </message>
    <message>
        <source>type a whole number from %1 to %2</source>
        <translation>eine ganze Zahl von %1 bis %2 eingeben</translation>
    </message>
    <message>
        <source>type a percentage from 0 to 100</source>
        <translation>eine Prozentzahl von 0 bis 100 eingeben</translation>
    </message>
    <message>
        <source>%1 is no day</source>
        <translation>%1 ist kein Datum</translation>
    </message>
    <message>
        <source>type it like 28 Nov, Friday or 2026-11-28</source>
        <translation>eingeben wie 28 Nov, Friday oder 2026-11-28</translation>
    </message>
    <message>
        <source>%1 is no time</source>
        <translation>%1 ist keine Zeit</translation>
    </message>
    <message>
        <source>type minutes, like 20, 20m or 1h20</source>
        <translation>Minuten eingeben wie 20, 20m oder 1h20</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>cleared</source>
        <translation>behoben</translation>
    </message>
    <message>
        <source>ruled out</source>
        <translation>ausgeschlossen</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>bestätigt</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>nicht gemacht</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>abnormal</source>
        <translation>abnormal</translation>
    </message>
    <message>
        <source>unclear</source>
        <translation>unklar</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>wie vorgefunden</translation>
    </message>
    <message>
        <source>during work</source>
        <translation>während der Arbeit</translation>
    </message>
    <message>
        <source>as it leaves</source>
        <translation>wie übergeben</translation>
    </message>
    <message>
        <source>clean</source>
        <translation>reinigen</translation>
    </message>
    <message>
        <source>lubricate</source>
        <translation>schmieren</translation>
    </message>
    <message>
        <source>adjust</source>
        <translation>einstellen</translation>
    </message>
    <message>
        <source>solder</source>
        <translation>löten</translation>
    </message>
    <message>
        <source>renew</source>
        <translation>erneuern</translation>
    </message>
    <message>
        <source>align</source>
        <translation>abgleichen</translation>
    </message>
    <message>
        <source>investigate</source>
        <translation>untersuchen</translation>
    </message>
    <message>
        <source>other</source>
        <translation>sonstiges</translation>
    </message>
    <message>
        <source>off</source>
        <translation>ab</translation>
    </message>
    <message>
        <source>back</source>
        <translation>wieder dran</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>weggelassen</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>gebraucht</translation>
    </message>
    <message>
        <source>ordered</source>
        <translation>bestellt</translation>
    </message>
    <message>
        <source>here</source>
        <translation>da</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>eingebaut</translation>
    </message>
    <message>
        <source>purchase</source>
        <translation>Kauf</translation>
    </message>
    <message>
        <source>carriage in</source>
        <translation>Fracht herein</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>consumable</source>
        <translation>Verbrauchsmaterial</translation>
    </message>
    <message>
        <source>outside work</source>
        <translation>Fremdarbeit</translation>
    </message>
    <message>
        <source>overhead</source>
        <translation>Gemeinkosten</translation>
    </message>
    <message>
        <source>packing</source>
        <translation>Verpackung</translation>
    </message>
    <message>
        <source>carriage out</source>
        <translation>Fracht hinaus</translation>
    </message>
    <message>
        <source>selling fee</source>
        <translation>Verkaufsgebühr</translation>
    </message>
    <message>
        <source>sale</source>
        <translation>Verkauf</translation>
    </message>
    <message>
        <source>refund</source>
        <translation>Erstattung</translation>
    </message>
    <message>
        <source>deposit</source>
        <translation>Anzahlung</translation>
    </message>
    <message>
        <source>out</source>
        <translation>hinaus</translation>
    </message>
    <message>
        <source>in</source>
        <translation>herein</translation>
    </message>
    <message>
        <source>function</source>
        <translation>Funktion</translation>
    </message>
    <message>
        <source>cosmetic</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>electrical safety</source>
        <translation>elektrische Sicherheit</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation>nicht zutreffend</translation>
    </message>
    <message>
        <source>restoration sheet</source>
        <translation>Restaurierungsblatt</translation>
    </message>
    <message>
        <source>quote</source>
        <translation>Kostenvoranschlag</translation>
    </message>
    <message>
        <source>bill</source>
        <translation>Rechnung</translation>
    </message>
    <message>
        <source>tag label</source>
        <translation>Anhängeretikett</translation>
    </message>
    <message>
        <source>putting-back sheet</source>
        <translation>Zusammenbaublatt</translation>
    </message>
    <message>
        <source>order list</source>
        <translation>Bestellliste</translation>
    </message>
    <message>
        <source>year's ledger</source>
        <translation>Kassenbuch des Jahres</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>flaw</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>use</source>
        <translation>Gebrauch</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>verkauft</translation>
    </message>
    <message>
        <source>returned to owner</source>
        <translation>an Eigentümer zurückgegeben</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>behalten</translation>
    </message>
    <message>
        <source>broken for parts</source>
        <translation>ausgeschlachtet</translation>
    </message>
    <message>
        <source>scrapped</source>
        <translation>verschrottet</translation>
    </message>
    <message>
        <source>Scouted</source>
        <translation>Gesichtet</translation>
    </message>
    <message>
        <source>Inbound</source>
        <translation>Unterwegs</translation>
    </message>
    <message>
        <source>Shelved</source>
        <translation>Eingelagert</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Wartet</translation>
    </message>
    <message>
        <source>Proving</source>
        <translation>Abnahme</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Offered</source>
        <translation>Angeboten</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Abgeschlossen</translation>
    </message>
    <message>
        <source>finish and sell</source>
        <translation>fertigstellen und verkaufen</translation>
    </message>
    <message>
        <source>sell as it stands</source>
        <translation>verkaufen, wie es ist</translation>
    </message>
    <message>
        <source>break for parts</source>
        <translation>ausschlachten</translation>
    </message>
    <message>
        <source>return to seller</source>
        <translation>zurückgeben</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>aufhören</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>bestanden</translation>
    </message>
</context>
</TS>
