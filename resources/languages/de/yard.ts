<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>'{text}' is not a plant: write CROP:CULTIVAR, for example apple:Liberty</source>
   <translation>„{text}“ ist keine Pflanze: ART:SORTE schreiben, zum Beispiel apple:Liberty</translation>
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
   <source>With this distance the picture would be {width} wide: is the unit right?</source>
   <translation>Mit diesem Abstand wäre das Bild {width} breit: Stimmt die Einheit?</translation>
  </message>
  <message>
   <source>the key {key} is taken already</source>
   <translation>der Schlüssel {key} ist schon vergeben</translation>
  </message>
  <message>
   <source>there is no corner {number} of {many}</source>
   <translation>es gibt keine Ecke {number} von {many}</translation>
  </message>
  <message>
   <source>typed in</source>
   <translation>eingegeben</translation>
  </message>
 </context>
</TS>
