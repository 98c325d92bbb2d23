<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>'{text}' is no bearing: from north or south it turns at most 90 degrees</source>
   <translation>„{text}“ ist keine Richtung: von Norden oder Süden weicht sie höchstens 90 Grad ab</translation>
  </message>
  <message>
   <source>'{text}' is no direction: from north it is at most 360 degrees round</source>
   <translation>„{text}“ ist keine Richtung: von Norden rundum sind es höchstens 360 Grad</translation>
  </message>
  <message>
   <source>'{text}' is not a plant: write CROP:CULTIVAR, for example apple:Liberty</source>
   <translation>„{text}“ ist keine Pflanze: ART:SORTE schreiben, zum Beispiel apple:Liberty</translation>
  </message>
  <message>
   <source>'{text}' is not an angle: minutes and seconds stay below 60</source>
   <translation>„{text}“ ist kein Winkel: Minuten und Sekunden bleiben unter 60</translation>
  </message>
  <message>
   <source>'{text}' is not an angle: write 90, 45°30' or a bearing like N 45 E</source>
   <translation>„{text}“ ist kein Winkel: schreiben Sie 90, 45°30' oder eine Richtung wie N 45 O</translation>
  </message>
  <message>
   <source>A lot line needs three calls or more, one to a line, the last back to the beginning</source>
   <translation>Eine Grundstücksgrenze braucht drei Strecken oder mehr, eine je Zeile, die letzte zurück zum Anfang</translation>
  </message>
  <message>
   <source>A variant needs a name</source>
   <translation>Eine Variante braucht einen Namen</translation>
  </message>
  <message>
   <source>An edge must be longer than nothing</source>
   <translation>Eine Kante muss länger als nichts sein</translation>
  </message>
  <message>
   <source>Group {n}</source>
   <translation>Gruppe {n}</translation>
  </message>
  <message>
   <source>Line {number}: '{line}' is no bearing with a distance: write for example N 45°30' E 100.50 ft</source>
   <translation>Zeile {number}: „{line}“ ist keine Richtung mit Länge: schreiben Sie zum Beispiel N 45°30' O 30,63 m</translation>
  </message>
  <message>
   <source>Line {number}: {why}</source>
   <translation>Zeile {number}: {why}</translation>
  </message>
  <message>
   <source>Looked up by ZIP code; this program is not the official USDA Plant Hardiness Zone Map.</source>
   <translation>Nachgeschlagen nach Postleitzahl; dieses Programm ist nicht die amtliche USDA Plant Hardiness Zone Map.</translation>
  </message>
  <message>
   <source>N E S W</source>
   <translation>N O S W</translation>
  </message>
  <message>
   <source>NOAA normals</source>
   <translation>NOAA-Normalwerte</translation>
  </message>
  <message>
   <source>Nothing can lie alongside this: choose a fence, a building, a bed or the lot line</source>
   <translation>Daran lässt sich nichts entlang legen: einen Zaun, ein Gebäude, ein Beet oder die Grundstücksgrenze wählen</translation>
  </message>
  <message>
   <source>The distance must be more than nothing</source>
   <translation>Der Abstand muss mehr als nichts sein</translation>
  </message>
  <message>
   <source>The distance must lie between 0 and {most} m</source>
   <translation>Der Abstand muss zwischen 0 und {most} m liegen</translation>
  </message>
  <message>
   <source>The two places are one: click them farther apart</source>
   <translation>Die beiden Stellen sind eine: weiter auseinander klicken</translation>
  </message>
  <message>
   <source>The walk ends {error} from its beginning, too far to share out. A wrong length in line {lines}, or a call left out, would explain it</source>
   <translation>Der Linienzug endet {error} neben seinem Anfang, zu weit zum Verteilen. Eine falsche Länge in Zeile {lines} oder eine fehlende Strecke würde es erklären</translation>
  </message>
  <message>
   <source>The walk ends {error} from its beginning, too far to share out: look for a wrong figure or letter, or a call left out</source>
   <translation>Der Linienzug endet {error} neben seinem Anfang, zu weit zum Verteilen: suchen Sie eine falsche Zahl, einen falschen Buchstaben oder eine fehlende Strecke</translation>
  </message>
  <message>
   <source>The width must lie between 0.02 and {most} m</source>
   <translation>Die Breite muss zwischen 0,02 und {most} m liegen</translation>
  </message>
  <message>
   <source>There is a variant called {name} already: choose another name</source>
   <translation>Eine Variante namens {name} gibt es schon: einen anderen Namen wählen</translation>
  </message>
  <message>
   <source>There is no edge {number}</source>
   <translation>Es gibt keine Kante {number}</translation>
  </message>
  <message>
   <source>There is no room for it on this side: try less width, or the other side</source>
   <translation>Auf dieser Seite ist kein Platz dafür: weniger Breite oder die andere Seite versuchen</translation>
  </message>
  <message>
   <source>There is no variant called {name}</source>
   <translation>Es gibt keine Variante namens {name}</translation>
  </message>
  <message>
   <source>These calls make a line that crosses itself: look at their letters and their order</source>
   <translation>Diese Strecken ergeben eine Linie, die sich selbst kreuzt: prüfen Sie Buchstaben und Reihenfolge</translation>
  </message>
  <message>
   <source>This edge has no direction yet: drag one of its corners first</source>
   <translation>Diese Kante hat noch keine Richtung: zuerst eine ihrer Ecken ziehen</translation>
  </message>
  <message>
   <source>This is locked: unlock it to change its edges</source>
   <translation>Dies ist gesperrt: zum Ändern der Kanten entsperren</translation>
  </message>
  <message>
   <source>This length would make the outline cross itself: try another</source>
   <translation>Mit dieser Länge würde der Umriss sich selbst kreuzen: eine andere versuchen</translation>
  </message>
  <message>
   <source>Untitled yard</source>
   <translation>Neuer Garten</translation>
  </message>
  <message>
   <source>Variant {number}</source>
   <translation>Variante {number}</translation>
  </message>
  <message>
   <source>WMO normals</source>
   <translation>WMO-Normalwerte</translation>
  </message>
  <message>
   <source>With this distance the picture would be {width} wide: is the unit right?</source>
   <translation>Mit diesem Abstand wäre das Bild {width} breit: Stimmt die Einheit?</translation>
  </message>
  <message>
   <source>ZIP code {zip}, USDA 2023.</source>
   <translation>Postleitzahl {zip}, USDA 2023.</translation>
  </message>
  <message>
   <source>ZIP code {zip}, {km} km away, USDA 2023.</source>
   <translation>Postleitzahl {zip}, {km} km entfernt, USDA 2023.</translation>
  </message>
  <message>
   <source>ZIP code {zip}; US Census Bureau and GeoNames</source>
   <translation>Postleitzahl {zip}; US Census Bureau und GeoNames</translation>
  </message>
  <message>
   <source>a guide: cold hollows run two weeks later</source>
   <translation>ein Anhalt: Kältemulden liegen zwei Wochen später</translation>
  </message>
  <message>
   <source>about zone {zone}, give or take one: estimated from monthly temperatures (yearly minimum about {low} °C)</source>
   <translation>etwa Zone {zone}, auf eine genau: geschätzt aus Monatstemperaturen (Jahrestiefstwert etwa {low} °C)</translation>
  </message>
  <message>
   <source>climate model CHELSA</source>
   <translation>Klimamodell CHELSA</translation>
  </message>
  <message>
   <source>estimated from frost days by month</source>
   <translation>geschätzt aus Frosttagen je Monat</translation>
  </message>
  <message>
   <source>fair match</source>
   <translation>mäßige Übereinstimmung</translation>
  </message>
  <message>
   <source>freeze dates</source>
   <translation>Frosttermine</translation>
  </message>
  <message>
   <source>frost is possible in every month at {station}</source>
   <translation>Frost ist in jedem Monat möglich an {station}</translation>
  </message>
  <message>
   <source>frost is rare: under two days a year at {station}</source>
   <translation>Frost ist selten: weniger als zwei Tage im Jahr an {station}</translation>
  </message>
  <message>
   <source>good match</source>
   <translation>gute Übereinstimmung</translation>
  </message>
  <message>
   <source>height difference not known</source>
   <translation>Höhenunterschied nicht bekannt</translation>
  </message>
  <message>
   <source>lot line in {file}</source>
   <translation>Grundstücksgrenze in {file}</translation>
  </message>
  <message>
   <source>no match</source>
   <translation>keine Übereinstimmung</translation>
  </message>
  <message>
   <source>north east south west</source>
   <translation>Nord Ost Süd West</translation>
  </message>
  <message>
   <source>one-in-ten dates by the usual spread</source>
   <translation>Termine für eines von zehn Jahren nach der üblichen Streuung</translation>
  </message>
  <message>
   <source>place {metres} m above it</source>
   <translation>der Ort liegt {metres} m höher</translation>
  </message>
  <message>
   <source>place {metres} m below it</source>
   <translation>der Ort liegt {metres} m tiefer</translation>
  </message>
  <message>
   <source>poor match</source>
   <translation>schlechte Übereinstimmung</translation>
  </message>
  <message>
   <source>that of the nearest town; GeoNames</source>
   <translation>wie in der nächsten Stadt; GeoNames</translation>
  </message>
  <message>
   <source>that of {town}, {km} km away; GeoNames</source>
   <translation>die von {town}, {km} km entfernt; GeoNames</translation>
  </message>
  <message>
   <source>the ZIP code's; US Census Bureau</source>
   <translation>die der Postleitzahl; US Census Bureau</translation>
  </message>
  <message>
   <source>the key {key} is taken already</source>
   <translation>der Schlüssel {key} ist schon vergeben</translation>
  </message>
  <message>
   <source>the nearest place of 1,000 people; slopes differ</source>
   <translation>der nächste Ort mit 1.000 Einwohnern; am Hang anders</translation>
  </message>
  <message>
   <source>there is no corner {number} of {many}</source>
   <translation>es gibt keine Ecke {number} von {many}</translation>
  </message>
  <message>
   <source>typed in</source>
   <translation>eingegeben</translation>
  </message>
  <message>
   <source>{station}, {km} km away, {height}, {source}</source>
   <translation>{station}, {km} km entfernt, {height}, {source}</translation>
  </message>
  <message>
   <source>{text}. Near a coast, a large lake or in a narrow valley count it one grade worse</source>
   <translation>{text}. Nahe der Küste, an einem großen See oder in einem engen Tal eine Stufe schlechter rechnen</translation>
  </message>
 </context>
</TS>
