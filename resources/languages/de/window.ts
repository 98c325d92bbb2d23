<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source> and </source>
   <translation> und </translation>
  </message>
  <message>
   <source> to </source>
   <translation> bis </translation>
  </message>
  <message>
   <source>&amp;About yardplan</source>
   <translation>&amp;Über yardplan</translation>
  </message>
  <message>
   <source>&amp;Before planting</source>
   <translation>&amp;Vor der Pflanzung</translation>
  </message>
  <message>
   <source>&amp;Buildings, walls and paving</source>
   <translation>&amp;Gebäude, Mauern und befestigte Flächen</translation>
  </message>
  <message>
   <source>&amp;Care calendar (iCalendar)…</source>
   <translation>Pf&amp;legekalender (iCalendar)…</translation>
  </message>
  <message>
   <source>&amp;Care of the year…</source>
   <translation>&amp;Pflege des Jahres…</translation>
  </message>
  <message>
   <source>&amp;Choose a plant…</source>
   <translation>Pflanze &amp;wählen…</translation>
  </message>
  <message>
   <source>&amp;Close</source>
   <translation>S&amp;chließen</translation>
  </message>
  <message>
   <source>&amp;Copy</source>
   <translation>&amp;Kopieren</translation>
  </message>
  <message>
   <source>&amp;DXF…</source>
   <translation>&amp;DXF…</translation>
  </message>
  <message>
   <source>&amp;Dark</source>
   <translation>&amp;Dunkel</translation>
  </message>
  <message>
   <source>&amp;Darkest month of the season</source>
   <translation>&amp;Dunkelster Monat der Saison</translation>
  </message>
  <message>
   <source>&amp;Delete</source>
   <translation>&amp;Löschen</translation>
  </message>
  <message>
   <source>&amp;Dimension lines</source>
   <translation>&amp;Maßlinien</translation>
  </message>
  <message>
   <source>&amp;Draw</source>
   <translation>&amp;Zeichnen</translation>
  </message>
  <message>
   <source>&amp;Edit</source>
   <translation>&amp;Bearbeiten</translation>
  </message>
  <message>
   <source>&amp;Everything on the plan</source>
   <translation>&amp;Alles auf dem Plan</translation>
  </message>
  <message>
   <source>&amp;Export</source>
   <translation>E&amp;xportieren</translation>
  </message>
  <message>
   <source>&amp;Fields</source>
   <translation>&amp;Felder</translation>
  </message>
  <message>
   <source>&amp;File</source>
   <translation>&amp;Datei</translation>
  </message>
  <message>
   <source>&amp;Find a command…</source>
   <translation>&amp;Befehl suchen…</translation>
  </message>
  <message>
   <source>&amp;Fit the yard</source>
   <translation>Ganzer Gar&amp;ten</translation>
  </message>
  <message>
   <source>&amp;Full size</source>
   <translation>&amp;Volle Größe</translation>
  </message>
  <message>
   <source>&amp;GeoJSON…</source>
   <translation>&amp;GeoJSON…</translation>
  </message>
  <message>
   <source>&amp;Grid</source>
   <translation>&amp;Raster</translation>
  </message>
  <message>
   <source>&amp;Group</source>
   <translation>&amp;Gruppieren</translation>
  </message>
  <message>
   <source>&amp;Handbook</source>
   <translation>&amp;Handbuch</translation>
  </message>
  <message>
   <source>&amp;Harvest…</source>
   <translation>&amp;Ernte…</translation>
  </message>
  <message>
   <source>&amp;Help</source>
   <translation>&amp;Hilfe</translation>
  </message>
  <message>
   <source>&amp;Hours of sun on the ground</source>
   <translation>Sonnenst&amp;unden am Boden</translation>
  </message>
  <message>
   <source>&amp;Import</source>
   <translation>&amp;Importieren</translation>
  </message>
  <message>
   <source>&amp;Light</source>
   <translation>&amp;Licht</translation>
  </message>
  <message>
   <source>&amp;Local time</source>
   <translation>&amp;Ortszeit</translation>
  </message>
  <message>
   <source>&amp;Lock</source>
   <translation>S&amp;perren</translation>
  </message>
  <message>
   <source>&amp;Lot line from GeoJSON or DXF…</source>
   <translation>&amp;Grundstücksgrenze aus GeoJSON oder DXF…</translation>
  </message>
  <message>
   <source>&amp;Move by clicks…</source>
   <translation>Durch Klicken &amp;verschieben…</translation>
  </message>
  <message>
   <source>&amp;Move to the nearest clear place</source>
   <translation>Zum nächsten freien Platz &amp;verschieben</translation>
  </message>
  <message>
   <source>&amp;Name the group…</source>
   <translation>Gruppe be&amp;nennen…</translation>
  </message>
  <message>
   <source>&amp;New…</source>
   <translation>&amp;Neu…</translation>
  </message>
  <message>
   <source>&amp;Next form: corners, curve, circle</source>
   <translation>&amp;Nächste Form: Ecken, Kurve, Kreis</translation>
  </message>
  <message>
   <source>&amp;Notes</source>
   <translation>&amp;Notizen</translation>
  </message>
  <message>
   <source>&amp;Open…</source>
   <translation>Ö&amp;ffnen…</translation>
  </message>
  <message>
   <source>&amp;Own varieties…</source>
   <translation>&amp;Eigene Sorten…</translation>
  </message>
  <message>
   <source>&amp;Paste</source>
   <translation>&amp;Einfügen</translation>
  </message>
  <message>
   <source>&amp;Picture under the plan…</source>
   <translation>&amp;Bild unter dem Plan…</translation>
  </message>
  <message>
   <source>&amp;Planting</source>
   <translation>&amp;Pflanzung</translation>
  </message>
  <message>
   <source>&amp;Plants</source>
   <translation>&amp;Pflanzen</translation>
  </message>
  <message>
   <source>&amp;Plants as CSV…</source>
   <translation>&amp;Pflanzen als CSV…</translation>
  </message>
  <message>
   <source>&amp;Plants from a table (CSV)…</source>
   <translation>&amp;Pflanzen aus einer Tabelle (CSV)…</translation>
  </message>
  <message>
   <source>&amp;Play the day</source>
   <translation>Den Tag absp&amp;ielen</translation>
  </message>
  <message>
   <source>&amp;Print or save sheets…</source>
   <translation>Blätter &amp;drucken oder speichern…</translation>
  </message>
  <message>
   <source>&amp;Quit</source>
   <translation>&amp;Beenden</translation>
  </message>
  <message>
   <source>&amp;Redo</source>
   <translation>&amp;Wiederholen</translation>
  </message>
  <message>
   <source>&amp;Redo {step}</source>
   <translation>&amp;Wiederholen: {step}</translation>
  </message>
  <message>
   <source>&amp;Save</source>
   <translation>&amp;Speichern</translation>
  </message>
  <message>
   <source>&amp;Season</source>
   <translation>&amp;Saison</translation>
  </message>
  <message>
   <source>&amp;Services</source>
   <translation>&amp;Leitungen</translation>
  </message>
  <message>
   <source>&amp;Settle the plants</source>
   <translation>Pflanzen &amp;zurechtrücken</translation>
  </message>
  <message>
   <source>&amp;Shadows</source>
   <translation>&amp;Schatten</translation>
  </message>
  <message>
   <source>&amp;Sheets…</source>
   <translation>&amp;Blätter…</translation>
  </message>
  <message>
   <source>&amp;Snap</source>
   <translation>&amp;Einrasten</translation>
  </message>
  <message>
   <source>&amp;Steps…</source>
   <translation>Sc&amp;hritte…</translation>
  </message>
  <message>
   <source>&amp;Undo</source>
   <translation>&amp;Rückgängig</translation>
  </message>
  <message>
   <source>&amp;Undo {step}</source>
   <translation>&amp;Rückgängig: {step}</translation>
  </message>
  <message>
   <source>&amp;Ungroup</source>
   <translation>Gruppierung &amp;aufheben</translation>
  </message>
  <message>
   <source>&amp;Variants…</source>
   <translation>Var&amp;ianten…</translation>
  </message>
  <message>
   <source>&amp;View</source>
   <translation>&amp;Ansicht</translation>
  </message>
  <message>
   <source>&amp;Wheel zooms</source>
   <translation>Mausrad &amp;zoomt</translation>
  </message>
  <message>
   <source>&amp;Who takes its light</source>
   <translation>Wer i&amp;hr Licht nimmt</translation>
  </message>
  <message>
   <source>'{part}' is not a direction and a height: write for example 90 12</source>
   <translation>„{part}“ ist keine Richtung mit Höhe: Schreiben Sie zum Beispiel 90 12</translation>
  </message>
  <message>
   <source>'{part}': directions run 0 to 360, heights 0 to {highest}</source>
   <translation>„{part}“: Richtungen gehen von 0 bis 360, Höhen von 0 bis {highest}</translation>
  </message>
  <message>
   <source>'{text}' is not a place: write right and up like 4; 2.5</source>
   <translation>„{text}“ ist kein Ort: Schreiben Sie rechts und oben, etwa 4; 2,5</translation>
  </message>
  <message>
   <source>'{text}' is not one distance: type for example 12.5 m</source>
   <translation>„{text}“ ist kein einzelner Abstand: Geben Sie zum Beispiel 12,5 m ein</translation>
  </message>
  <message>
   <source>'{text}' must be more than nothing</source>
   <translation>„{text}“ muss mehr als nichts sein</translation>
  </message>
  <message>
   <source>'{typed}' is no number of degrees</source>
   <translation>„{typed}“ ist keine Gradzahl</translation>
  </message>
  <message>
   <source>'{typed}' is no time zone: write for example America/New_York</source>
   <translation>„{typed}“ ist keine Zeitzone: Schreiben Sie zum Beispiel Europe/Berlin</translation>
  </message>
  <message>
   <source>'{typed}' is not a day: write for example 24 April or 4-24</source>
   <translation>„{typed}“ ist kein Tag: Schreiben Sie zum Beispiel 24. April oder 4-24</translation>
  </message>
  <message>
   <source>'{typed}' is not a number</source>
   <translation>„{typed}“ ist keine Zahl</translation>
  </message>
  <message>
   <source>'{typed}' is not a price: write for example 12.50</source>
   <translation>„{typed}“ ist kein Preis: Schreiben Sie zum Beispiel 12,50</translation>
  </message>
  <message>
   <source>'{typed}' is not a span: write for example 3 to 4</source>
   <translation>„{typed}“ ist keine Spanne: Schreiben Sie zum Beispiel 3 bis 4</translation>
  </message>
  <message>
   <source>'{typed}' is not a temperature</source>
   <translation>„{typed}“ ist keine Temperatur</translation>
  </message>
  <message>
   <source>'{typed}' is not a whole number</source>
   <translation>„{typed}“ ist keine ganze Zahl</translation>
  </message>
  <message>
   <source>'{typed}' is not a zone: write 1a to 13b, for example 6b</source>
   <translation>„{typed}“ ist keine Zone: Schreiben Sie 1a bis 13b, zum Beispiel 6b</translation>
  </message>
  <message>
   <source>'{typed}' is not one distance</source>
   <translation>„{typed}“ ist kein einzelner Abstand</translation>
  </message>
  <message>
   <source>'{typed}' names no kind: write for example tomato 2024; apple</source>
   <translation>„{typed}“ nennt keine Art: Schreiben Sie zum Beispiel Tomate 2024; Apfel</translation>
  </message>
  <message>
   <source>'{typed}': the smaller figure comes first</source>
   <translation>„{typed}“: Der kleinere Wert steht vorn</translation>
  </message>
  <message>
   <source>'{typed}': there is no such day</source>
   <translation>„{typed}“: Diesen Tag gibt es nicht</translation>
  </message>
  <message>
   <source>'{typed}': write how many and how far apart, for example 5 x 2.5 m or 5 x 8' &lt; 90</source>
   <translation>„{typed}“: Schreiben Sie, wie viele und wie weit auseinander, zum Beispiel 5 x 2,5 m oder 5 x 8' &lt; 90</translation>
  </message>
  <message>
   <source>1 day after its kind's reference variety</source>
   <translation>1 Tag nach der Vergleichssorte dieser Art</translation>
  </message>
  <message>
   <source>1 day before its kind's reference variety</source>
   <translation>1 Tag vor der Vergleichssorte dieser Art</translation>
  </message>
  <message>
   <source>1 in to 10 ft</source>
   <translation>1 Zoll auf 10 Fuß</translation>
  </message>
  <message>
   <source>1 in to 20 ft</source>
   <translation>1 Zoll auf 20 Fuß</translation>
  </message>
  <message>
   <source>1/4 in to the foot</source>
   <translation>1/4 Zoll je Fuß</translation>
  </message>
  <message>
   <source>1/8 in to the foot</source>
   <translation>1/8 Zoll je Fuß</translation>
  </message>
  <message>
   <source>12:00 is when the sun stands highest</source>
   <translation>Um 12:00 steht die Sonne am höchsten</translation>
  </message>
  <message>
   <source>A circle has one radius: type for example 1.5 m</source>
   <translation>Ein Kreis hat einen Radius: Geben Sie zum Beispiel 1,5 m ein</translation>
  </message>
  <message>
   <source>A circle needs a radius of at least {least}</source>
   <translation>Ein Kreis braucht einen Radius von mindestens {least}</translation>
  </message>
  <message>
   <source>A closed line of a map or drawing becomes the lot line</source>
   <translation>Eine geschlossene Linie aus einer Karte oder Zeichnung wird zur Grundstücksgrenze</translation>
  </message>
  <message>
   <source>A curve goes from point to point: type a length, or a place like 4; 2.5</source>
   <translation>Eine Kurve geht von Punkt zu Punkt: Geben Sie eine Länge oder einen Ort wie 4; 2,5 ein</translation>
  </message>
  <message>
   <source>A day on which you saw most flowers open corrects all other bloom dates.</source>
   <translation>Ein Tag, an dem Sie die meisten Blüten offen sahen, berichtigt alle anderen Blühtermine.</translation>
  </message>
  <message>
   <source>A dimension line needs one length: type for example 3.8 m</source>
   <translation>Eine Maßlinie braucht eine Länge: Geben Sie zum Beispiel 3,8 m ein</translation>
  </message>
  <message>
   <source>A line needs one length: type for example 3.8 m</source>
   <translation>Eine Linie braucht eine Länge: Geben Sie zum Beispiel 3,8 m ein</translation>
  </message>
  <message>
   <source>A list with columns for kind and variety; lines not understood are shown</source>
   <translation>Eine Liste mit Spalten für Art und Sorte; nicht verstandene Zeilen werden gezeigt</translation>
  </message>
  <message>
   <source>A locked thing is not moved by dragging or by arranging</source>
   <translation>Gesperrtes wird weder durch Ziehen noch durch Anordnen verschoben</translation>
  </message>
  <message>
   <source>A new yard</source>
   <translation>Ein neuer Garten</translation>
  </message>
  <message>
   <source>A pinch of dry soil fizzes under vinegar where there is free lime</source>
   <translation>Eine Prise trockener Boden schäumt unter Essig, wo freier Kalk ist</translation>
  </message>
  <message>
   <source>A place as x; y from the plan's origin, for example 4; 2.5</source>
   <translation>Ein Ort als x; y vom Nullpunkt des Plans, zum Beispiel 4; 2,5</translation>
  </message>
  <message>
   <source>A scan, survey or aerial photograph to draw over: PNG, JPEG or a PDF page</source>
   <translation>Ein Scan, Vermessungsplan oder Luftbild zum Überzeichnen: PNG, JPEG oder eine PDF-Seite</translation>
  </message>
  <message>
   <source>A table for a spreadsheet</source>
   <translation>Eine Tabelle für die Tabellenkalkulation</translation>
  </message>
  <message>
   <source>A table to mend and read in again</source>
   <translation>Eine Tabelle zum Berichtigen und Wiedereinlesen</translation>
  </message>
  <message>
   <source>A thin line at the size of the grown plant</source>
   <translation>Eine dünne Linie in der Größe der ausgewachsenen Pflanze</translation>
  </message>
  <message>
   <source>A thin line from every plant to its best partner</source>
   <translation>Eine dünne Linie von jeder Pflanze zu ihrem besten Befruchter</translation>
  </message>
  <message>
   <source>A town, a US ZIP code, or latitude and longitude such as 42.44, -76.50</source>
   <translation>Eine Stadt, eine US-Postleitzahl oder Breite und Länge wie 42.44, -76.50</translation>
  </message>
  <message>
   <source>A way this wide is to lead from the gate to every plant and bed; what it does not reach is listed below</source>
   <translation>Ein so breiter Weg soll vom Tor zu jeder Pflanze und jedem Beet führen; was er nicht erreicht, steht unten</translation>
  </message>
  <message>
   <source>A year &amp;earlier</source>
   <translation>Ein Jahr &amp;früher</translation>
  </message>
  <message>
   <source>A year &amp;later</source>
   <translation>Ein Jahr &amp;später</translation>
  </message>
  <message>
   <source>A year earlier</source>
   <translation>Ein Jahr früher</translation>
  </message>
  <message>
   <source>A year later</source>
   <translation>Ein Jahr später</translation>
  </message>
  <message>
   <source>A zone is the mean of each winter's coldest night: single winters go lower.</source>
   <translation>Eine Zone ist das Mittel der kältesten Nächte aller Winter: Einzelne Winter sind kälter.</translation>
  </message>
  <message>
   <source>A&amp;fter planting</source>
   <translation>&amp;Nach der Pflanzung</translation>
  </message>
  <message>
   <source>A&amp;ppearance</source>
   <translation>Ers&amp;cheinungsbild</translation>
  </message>
  <message>
   <source>AHS heat zone</source>
   <translation>AHS-Hitzezone</translation>
  </message>
  <message>
   <source>About its middle, counter-clockwise</source>
   <translation>Um seine Mitte, gegen den Uhrzeigersinn</translation>
  </message>
  <message>
   <source>About yardplan</source>
   <translation>Über yardplan</translation>
  </message>
  <message>
   <source>Across</source>
   <translation>Durchmesser</translation>
  </message>
  <message>
   <source>Add</source>
   <translation>Hinzufügen</translation>
  </message>
  <message>
   <source>Add a variety that the catalogue does not hold</source>
   <translation>Eine Sorte hinzufügen, die der Katalog nicht enthält</translation>
  </message>
  <message>
   <source>Add bloom day of {variety}</source>
   <translation>Blühtag von {variety} hinzufügen</translation>
  </message>
  <message>
   <source>Add corner to {thing}</source>
   <translation>Ecke zu {thing} hinzufügen</translation>
  </message>
  <message>
   <source>Add the bloom day</source>
   <translation>Den Blühtag hinzufügen</translation>
  </message>
  <message numerus="yes">
   <source>Add {n} plantings</source>
   <translation>
    <numerusform>{n} Pflanzung hinzufügen</numerusform>
    <numerusform>{n} Pflanzungen hinzufügen</numerusform>
   </translation>
  </message>
  <message>
   <source>Advice</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <source>All</source>
   <translation>Alle</translation>
  </message>
  <message>
   <source>All &amp;facts of the variety…</source>
   <translation>Alle An&amp;gaben zur Sorte…</translation>
  </message>
  <message>
   <source>All facts…</source>
   <translation>Angaben…</translation>
  </message>
  <message>
   <source>All kinds</source>
   <translation>Alle Arten</translation>
  </message>
  <message>
   <source>All of the yard in view</source>
   <translation>Der ganze Garten im Blick</translation>
  </message>
  <message>
   <source>Along</source>
   <translation>Entlang</translation>
  </message>
  <message>
   <source>Along the selected fence, building, bed or lot line, at a typed distance and width</source>
   <translation>Entlang von Zaun, Gebäude, Beet oder Grundstücksgrenze, mit eingegebenem Abstand und Breite</translation>
  </message>
  <message>
   <source>Alongside {name}</source>
   <translation>Entlang {name}</translation>
  </message>
  <message>
   <source>Also</source>
   <translation>Außerdem</translation>
  </message>
  <message>
   <source>Also one that is locked: turn, fade, lock and unlock it in its fields</source>
   <translation>Auch ein gesperrtes: in seinen Feldern drehen, abblenden, sperren und entsperren</translation>
  </message>
  <message>
   <source>Amounts are estimates.</source>
   <translation>Die Mengen sind Schätzungen.</translation>
  </message>
  <message>
   <source>An iCalendar file for any calendar program</source>
   <translation>Eine iCalendar-Datei für jedes Kalenderprogramm</translation>
  </message>
  <message>
   <source>Appearance: {scheme}; the sheet stays light</source>
   <translation>Erscheinungsbild: {scheme}; das Blatt bleibt hell</translation>
  </message>
  <message>
   <source>Apr</source>
   <translation>Apr.</translation>
  </message>
  <message>
   <source>April</source>
   <translation>April</translation>
  </message>
  <message>
   <source>Arran&amp;ge</source>
   <translation>&amp;Anordnen</translation>
  </message>
  <message>
   <source>As dragging its edge does, one step a press</source>
   <translation>Wie Ziehen an der Kante, bei jedem Drücken ein Stück</translation>
  </message>
  <message>
   <source>As it stands in the table</source>
   <translation>Wie es in der Tabelle steht</translation>
  </message>
  <message>
   <source>As it was before the last save, it lies beside it as {copy}: copy that under a name that ends in .yard, and open the copy.</source>
   <translation>Wie sie vor dem letzten Speichern war, liegt sie daneben als {copy}: unter einem Namen kopieren, der auf .yard endet, und die Kopie öffnen.</translation>
  </message>
  <message>
   <source>As it was opened</source>
   <translation>Wie geöffnet</translation>
  </message>
  <message>
   <source>As the &amp;system</source>
   <translation>Wie das &amp;System</translation>
  </message>
  <message>
   <source>As the system</source>
   <translation>Wie das System</translation>
  </message>
  <message>
   <source>At each place its darkest month of the growing season</source>
   <translation>An jeder Stelle ihr dunkelster Monat der Wachstumszeit</translation>
  </message>
  <message>
   <source>Aug</source>
   <translation>Aug.</translation>
  </message>
  <message>
   <source>August</source>
   <translation>August</translation>
  </message>
  <message>
   <source>Autumn colour</source>
   <translation>Herbstfärbung</translation>
  </message>
  <message>
   <source>Back</source>
   <translation>Zurück</translation>
  </message>
  <message>
   <source>Back to ours</source>
   <translation>Zurück zur Vorgabe</translation>
  </message>
  <message>
   <source>Bed</source>
   <translation>Beet</translation>
  </message>
  <message>
   <source>Bed alongside {name}</source>
   <translation>Beet entlang {name}</translation>
  </message>
  <message>
   <source>Before or after planting</source>
   <translation>Vor oder nach der Pflanzung</translation>
  </message>
  <message>
   <source>Begin</source>
   <translation>Beginnen</translation>
  </message>
  <message>
   <source>Begin another yard</source>
   <translation>Einen weiteren Garten beginnen</translation>
  </message>
  <message>
   <source>Begin the new yard</source>
   <translation>Den neuen Garten beginnen</translation>
  </message>
  <message>
   <source>Begin: a new yard, a sample, or a file</source>
   <translation>Beginnen: ein neuer Garten, ein Beispiel oder eine Datei</translation>
  </message>
  <message>
   <source>Begun in {year}</source>
   <translation>Begonnen {year}</translation>
  </message>
  <message>
   <source>Beside the sheet</source>
   <translation>Neben dem Blatt</translation>
  </message>
  <message>
   <source>Bloom</source>
   <translation>Blüte</translation>
  </message>
  <message>
   <source>Bloom dates are not known here: give the place or its monthly means (site card).</source>
   <translation>Blütezeiten sind hier nicht bekannt: Geben Sie den Ort oder seine Monatsmittel an (Standortkarte).</translation>
  </message>
  <message>
   <source>Bloom here is not known of {kinds}: no spray is placed.</source>
   <translation>Die Blüte von {kinds} ist hier nicht bekannt: Es wird keine Spritzung eingeplant.</translation>
  </message>
  <message>
   <source>Bloom seen here</source>
   <translation>Hier gesehene Blüte</translation>
  </message>
  <message>
   <source>Bring {things} into line</source>
   <translation>{things} ausrichten</translation>
  </message>
  <message>
   <source>Building</source>
   <translation>Gebäude</translation>
  </message>
  <message>
   <source>By its bearings and distances; the closing error is told and shared out</source>
   <translation>Nach Richtungen und Längen; der Schlussfehler wird genannt und verteilt</translation>
  </message>
  <message>
   <source>By month</source>
   <translation>Nach Monat</translation>
  </message>
  <message>
   <source>By typed degrees, about a typed point</source>
   <translation>Um getippte Grad, um einen getippten Punkt</translation>
  </message>
  <message>
   <source>C draws a circle</source>
   <translation>C zeichnet einen Kreis</translation>
  </message>
  <message>
   <source>C draws a curve</source>
   <translation>C zeichnet eine Kurve</translation>
  </message>
  <message>
   <source>C draws corners</source>
   <translation>C zeichnet Ecken</translation>
  </message>
  <message>
   <source>Calendar</source>
   <translation>Kalender</translation>
  </message>
  <message>
   <source>Calendar (*.ics)</source>
   <translation>Kalender (*.ics)</translation>
  </message>
  <message>
   <source>Calls of the deed</source>
   <translation>Strecken der Urkunde</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Abbrechen</translation>
  </message>
  <message>
   <source>Canes without thorns</source>
   <translation>Ruten ohne Dornen</translation>
  </message>
  <message>
   <source>Care and harvest of</source>
   <translation>Pflege und Ernte für</translation>
  </message>
  <message>
   <source>Care of the year</source>
   <translation>Pflege des Jahres</translation>
  </message>
  <message>
   <source>Carry</source>
   <translation>Tragen</translation>
  </message>
  <message>
   <source>Caution</source>
   <translation>Warnung</translation>
  </message>
  <message>
   <source>Cautions</source>
   <translation>Warnungen</translation>
  </message>
  <message>
   <source>Change a local rule</source>
   <translation>Örtliche Regel ändern</translation>
  </message>
  <message>
   <source>Change edge of {name}</source>
   <translation>Kante von {name} ändern</translation>
  </message>
  <message>
   <source>Change monthly means</source>
   <translation>Monatsmittel ändern</translation>
  </message>
  <message>
   <source>Change {fact} of {thing}</source>
   <translation>{fact} von {thing} ändern</translation>
  </message>
  <message>
   <source>Changed: {message}</source>
   <translation>Geändert: {message}</translation>
  </message>
  <message>
   <source>Charts of the harvest</source>
   <translation>Diagramme der Ernte</translation>
  </message>
  <message>
   <source>Chill and heat are estimated from the monthly temperatures.</source>
   <translation>Kälte und Wärme sind aus den Monatstemperaturen geschätzt.</translation>
  </message>
  <message>
   <source>Chill is met here</source>
   <translation>Genug Winterkälte</translation>
  </message>
  <message>
   <source>Choose</source>
   <translation>Auswahl</translation>
  </message>
  <message>
   <source>Choose a line to read how and why it is done.</source>
   <translation>Wählen Sie eine Zeile, um zu lesen, wie und warum es getan wird.</translation>
  </message>
  <message>
   <source>Choose a line to see its place on the plan and the rule behind it.</source>
   <translation>Eine Zeile wählen zeigt ihre Stelle auf dem Plan und die Regel dahinter.</translation>
  </message>
  <message>
   <source>Choose the width of ways…</source>
   <translation>Breite der Wege wählen…</translation>
  </message>
  <message>
   <source>Chromosomes</source>
   <translation>Chromosomen</translation>
  </message>
  <message>
   <source>Classes, days and state of the light in the corner that hides least</source>
   <translation>Klassen, Tage und Stand des Lichts in der Ecke, die am wenigsten verdeckt</translation>
  </message>
  <message>
   <source>Clear the warnings</source>
   <translation>Den Warnungen abhelfen</translation>
  </message>
  <message>
   <source>Clear what is typed</source>
   <translation>Eingabe löschen</translation>
  </message>
  <message>
   <source>Cleared: {message}</source>
   <translation>Behoben: {message}</translation>
  </message>
  <message>
   <source>Click a thing to select it, drag to move it; drag over empty ground to select several</source>
   <translation>Ein Ding anklicken wählt es, Ziehen verschiebt es; über leeren Boden ziehen wählt mehrere</translation>
  </message>
  <message>
   <source>Click how far aside the line shall stand, or type it; Enter: where it is measured</source>
   <translation>Anklicken, wie weit die Linie abrückt, oder eingeben; Eingabetaste: wo gemessen wird</translation>
  </message>
  <message>
   <source>Click its other end</source>
   <translation>Sein anderes Ende anklicken</translation>
  </message>
  <message>
   <source>Click on the fence, wall or lot line where one enters the yard</source>
   <translation>Auf den Zaun, die Mauer oder die Grundstücksgrenze klicken, wo man den Garten betritt</translation>
  </message>
  <message>
   <source>Click one corner of the area, or type its place (4; 2.5); Shift adds to what is selected</source>
   <translation>Eine Ecke der Fläche anklicken oder ihren Ort tippen (4; 2,5); mit Umschalt kommt es zum Ausgewählten dazu</translation>
  </message>
  <message>
   <source>Click one corner of the area, then the opposite one</source>
   <translation>Eine Ecke der Fläche anklicken, dann die gegenüberliegende</translation>
  </message>
  <message>
   <source>Click one end of something in the picture whose length you know</source>
   <translation>Ein Ende von etwas im Bild anklicken, dessen Länge Sie kennen</translation>
  </message>
  <message>
   <source>Click the first corner of the {what}, or drag a rectangle</source>
   <translation>Erste Ecke anklicken oder ein Rechteck ziehen: {what}</translation>
  </message>
  <message>
   <source>Click the first corner, or type its place like 0; 0</source>
   <translation>Erste Ecke anklicken oder ihren Ort eingeben, etwa 0; 0</translation>
  </message>
  <message>
   <source>Click the first point of the curve</source>
   <translation>Den ersten Punkt der Kurve anklicken</translation>
  </message>
  <message>
   <source>Click the middle of the circle, or drag from it</source>
   <translation>Die Mitte des Kreises anklicken oder von ihr aus ziehen</translation>
  </message>
  <message>
   <source>Click the middle of the circle, or type its place like 4; 2.5</source>
   <translation>Die Mitte des Kreises anklicken oder ihren Ort eingeben, etwa 4; 2,5</translation>
  </message>
  <message>
   <source>Click the next corner, or type a length ({typed})</source>
   <translation>Nächste Ecke anklicken oder eine Länge eingeben ({typed})</translation>
  </message>
  <message>
   <source>Click the next corner, or type a length ({typed}), or width x depth</source>
   <translation>Nächste Ecke anklicken oder eine Länge ({typed}) oder Breite x Tiefe eingeben</translation>
  </message>
  <message>
   <source>Click the next corner, or type a length ({typed}); click the first corner or press Enter to close</source>
   <translation>Nächste Ecke anklicken oder eine Länge eingeben ({typed}); die erste Ecke oder die Eingabetaste schließt</translation>
  </message>
  <message>
   <source>Click the next corner, or type a length ({typed}); press Enter to end</source>
   <translation>Nächste Ecke anklicken oder eine Länge eingeben ({typed}); die Eingabetaste beendet</translation>
  </message>
  <message>
   <source>Click the next point of the curve; click the first or press Enter to close</source>
   <translation>Nächsten Punkt der Kurve anklicken; der erste Punkt oder die Eingabetaste schließt</translation>
  </message>
  <message>
   <source>Click the next point of the curve; it runs smoothly through all of them</source>
   <translation>Nächsten Punkt der Kurve anklicken; sie läuft glatt durch alle</translation>
  </message>
  <message>
   <source>Click the opposite corner, or type its place (12; 8) or width and depth (8 m x 5 m); what lies wholly inside is selected</source>
   <translation>Die gegenüberliegende Ecke anklicken, oder ihren Ort (12; 8) oder Breite und Tiefe (8 m x 5 m) tippen; ausgewählt wird, was ganz darin liegt</translation>
  </message>
  <message>
   <source>Click to leave it so, or type degrees to the left, such as 45; Esc turns it back</source>
   <translation>Klicken lässt es so, oder Grad nach links eingeben, etwa 45; Esc dreht zurück</translation>
  </message>
  <message>
   <source>Click to plant {cultivar}; or type a place like 4; 2.5</source>
   <translation>Klicken pflanzt {cultivar}; oder einen Ort eingeben, etwa 4; 2,5</translation>
  </message>
  <message>
   <source>Click to type this length over: the far end of the edge moves</source>
   <translation>Klicken, um diese Länge zu überschreiben: Das ferne Ende der Kante bewegt sich</translation>
  </message>
  <message>
   <source>Click two places in it and type how far apart they are</source>
   <translation>Zwei Stellen darin anklicken und eingeben, wie weit sie auseinanderliegen</translation>
  </message>
  <message>
   <source>Click two places in the picture whose distance you know, then type it</source>
   <translation>Zwei Stellen im Bild anklicken, deren Abstand Sie kennen, dann eingeben</translation>
  </message>
  <message>
   <source>Click where it ends, or type a length (3.8 m, 3.8 m &lt; 90)</source>
   <translation>Anklicken, wo sie endet, oder eine Länge eingeben (3,8 m, 3,8 m &lt; 90)</translation>
  </message>
  <message>
   <source>Click where it shall go</source>
   <translation>Anklicken, wohin es soll</translation>
  </message>
  <message>
   <source>Click where it shall go (with Ctrl a copy), or type a length (12' 6", 3.8 m &lt; 90) or a place (4; 2.5); Esc leaves it</source>
   <translation>Anklicken, wohin es soll (mit Strg eine Kopie), oder eine Länge (3,8 m &lt; 90) oder einen Ort (4; 2,5) eingeben; Esc lässt es</translation>
  </message>
  <message>
   <source>Click where the circle shall run, or type its radius</source>
   <translation>Anklicken, wo der Kreis verlaufen soll, oder den Radius eingeben</translation>
  </message>
  <message>
   <source>Click where the corner shall be, or type a length (3.8 m &lt; 90) or a place (4; 2.5); Esc puts it back</source>
   <translation>Anklicken, wohin die Ecke soll, oder eine Länge (3,8 m &lt; 90) oder einen Ort (4; 2,5) eingeben; Esc legt sie zurück</translation>
  </message>
  <message>
   <source>Click where the length begins, or type a place like 4; 2.5</source>
   <translation>Anklicken, wo die Länge beginnt, oder einen Ort eingeben, etwa 4; 2,5</translation>
  </message>
  <message>
   <source>Click where the length begins, or type its place like 0; 0</source>
   <translation>Anklicken, wo die Länge beginnt, oder ihren Ort eingeben, etwa 0; 0</translation>
  </message>
  <message>
   <source>Click where the note shall stand, then write it</source>
   <translation>Anklicken, wo die Notiz stehen soll, dann schreiben</translation>
  </message>
  <message>
   <source>Click where the plant shall stand</source>
   <translation>Anklicken, wo die Pflanze stehen soll</translation>
  </message>
  <message>
   <source>Click where the pot shall stand</source>
   <translation>Anklicken, wo der Kübel stehen soll</translation>
  </message>
  <message>
   <source>Click where the tree stands, in the yard or next door</source>
   <translation>Anklicken, wo der Baum steht, im Garten oder nebenan</translation>
  </message>
  <message>
   <source>Click where the {what} begins</source>
   <translation>Anfang anklicken: {what}</translation>
  </message>
  <message>
   <source>Click where to begin measuring</source>
   <translation>Anklicken, wo die Messung beginnt</translation>
  </message>
  <message>
   <source>Clock of the hour</source>
   <translation>Uhr der Stunde</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <source>Close it (Esc); Help has it again</source>
   <translation>Schließen (Esc); unter Hilfe ist sie wieder da</translation>
  </message>
  <message>
   <source>Close the guide</source>
   <translation>Die Führung schließen</translation>
  </message>
  <message>
   <source>Close this panel (Esc)</source>
   <translation>Dieses Feld schließen (Esc)</translation>
  </message>
  <message>
   <source>Close this yard</source>
   <translation>Diesen Garten schließen</translation>
  </message>
  <message>
   <source>Closed lines of the file</source>
   <translation>Geschlossene Linien der Datei</translation>
  </message>
  <message>
   <source>Coldest zone</source>
   <translation>Kälteste Zone</translation>
  </message>
  <message>
   <source>Command</source>
   <translation>Befehl</translation>
  </message>
  <message>
   <source>Commands</source>
   <translation>Befehle</translation>
  </message>
  <message>
   <source>Compare with</source>
   <translation>Vergleichen mit</translation>
  </message>
  <message>
   <source>Comparison</source>
   <translation>Vergleich</translation>
  </message>
  <message>
   <source>Compass direction: 90 east, 180 south, 270 west</source>
   <translation>Himmelsrichtung: 90 Ost, 180 Süd, 270 West</translation>
  </message>
  <message>
   <source>Computing again: {message}</source>
   <translation>Wird neu berechnet: {message}</translation>
  </message>
  <message>
   <source>Conflict</source>
   <translation>Konflikt</translation>
  </message>
  <message>
   <source>Conflicts</source>
   <translation>Konflikte</translation>
  </message>
  <message>
   <source>Conflicts and cautions on the plan</source>
   <translation>Konflikte und Warnungen auf dem Plan</translation>
  </message>
  <message>
   <source>Conflicts, cautions and advice</source>
   <translation>Konflikte, Warnungen und Hinweise</translation>
  </message>
  <message>
   <source>Contents</source>
   <translation>Inhalt</translation>
  </message>
  <message>
   <source>Copy {things}</source>
   <translation>{things} kopieren</translation>
  </message>
  <message>
   <source>Corner {number}, {axis}</source>
   <translation>Ecke {number}, {axis}</translation>
  </message>
  <message>
   <source>Cost</source>
   <translation>Kosten</translation>
  </message>
  <message>
   <source>Counter-clockwise from the right; left empty, along the longer side</source>
   <translation>Gegen den Uhrzeigersinn von rechts; bleibt es leer, entlang der längeren Seite</translation>
  </message>
  <message>
   <source>Country and state</source>
   <translation>Land und Bundesland</translation>
  </message>
  <message>
   <source>Crown starts</source>
   <translation>Kronenansatz</translation>
  </message>
  <message>
   <source>Cu&amp;t</source>
   <translation>A&amp;usschneiden</translation>
  </message>
  <message>
   <source>Currency</source>
   <translation>Währung</translation>
  </message>
  <message>
   <source>DXF</source>
   <translation>DXF</translation>
  </message>
  <message>
   <source>Da&amp;y of the shadows</source>
   <translation>&amp;Tag der Schatten</translation>
  </message>
  <message>
   <source>Data of places</source>
   <translation>Daten der Orte</translation>
  </message>
  <message>
   <source>Day of full bloom</source>
   <translation>Tag der Vollblüte</translation>
  </message>
  <message>
   <source>Day of the year</source>
   <translation>Tag des Jahres</translation>
  </message>
  <message>
   <source>Dec</source>
   <translation>Dez.</translation>
  </message>
  <message>
   <source>December</source>
   <translation>Dezember</translation>
  </message>
  <message>
   <source>Delete</source>
   <translation>Löschen</translation>
  </message>
  <message>
   <source>Delete variant {name}</source>
   <translation>Variante {name} löschen</translation>
  </message>
  <message>
   <source>Delete {name}</source>
   <translation>{name} löschen</translation>
  </message>
  <message>
   <source>Depth</source>
   <translation>Tiefe</translation>
  </message>
  <message>
   <source>Depth, front to back</source>
   <translation>Tiefe, von vorn nach hinten</translation>
  </message>
  <message>
   <source>Details of the task</source>
   <translation>Einzelheiten der Arbeit</translation>
  </message>
  <message>
   <source>Dimension</source>
   <translation>Maßlinie</translation>
  </message>
  <message>
   <source>Dimension line of {length}</source>
   <translation>Maßlinie von {length}</translation>
  </message>
  <message>
   <source>Direct sun, hours a day</source>
   <translation>Direkte Sonne, Stunden am Tag</translation>
  </message>
  <message>
   <source>Distance from it</source>
   <translation>Abstand davon</translation>
  </message>
  <message>
   <source>Do it</source>
   <translation>Ausführen</translation>
  </message>
  <message>
   <source>Done on {day}.</source>
   <translation>Erledigt am {day}.</translation>
  </message>
  <message>
   <source>Drag to choose the day; click a name to select the plant</source>
   <translation>Ziehen wählt den Tag; ein Klick auf einen Namen wählt die Pflanze</translation>
  </message>
  <message>
   <source>Drag to make the panel larger or smaller</source>
   <translation>Ziehen macht das Feld größer oder kleiner</translation>
  </message>
  <message>
   <source>Drag to share the height</source>
   <translation>Ziehen teilt die Höhe auf</translation>
  </message>
  <message>
   <source>Drainage</source>
   <translation>Wasserabzug</translation>
  </message>
  <message>
   <source>Drainage would tell where roots would drown.</source>
   <translation>Der Wasserabzug würde sagen, wo Wurzeln ersticken.</translation>
  </message>
  <message>
   <source>Draw a bed with soil of its own</source>
   <translation>Ein Beet mit eigenem Boden zeichnen</translation>
  </message>
  <message>
   <source>Draw a ci&amp;rcle</source>
   <translation>Einen K&amp;reis zeichnen</translation>
  </message>
  <message>
   <source>Draw a house, garage or shed</source>
   <translation>Haus, Garage oder Schuppen zeichnen</translation>
  </message>
  <message>
   <source>Draw a length that stays on the plan</source>
   <translation>Eine Länge zeichnen, die auf dem Plan bleibt</translation>
  </message>
  <message>
   <source>Draw a path, drive, terrace or pond</source>
   <translation>Weg, Zufahrt, Terrasse oder Teich zeichnen</translation>
  </message>
  <message>
   <source>Draw a pipe or cable; call to have lines marked before you dig</source>
   <translation>Rohr oder Kabel zeichnen; vor dem Graben die Leitungsauskunft einholen</translation>
  </message>
  <message>
   <source>Draw a pipe or cable; have lines marked before you dig</source>
   <translation>Rohr oder Kabel zeichnen; vor dem Graben Leitungen kennzeichnen lassen</translation>
  </message>
  <message>
   <source>Draw a smooth c&amp;urve</source>
   <translation>Eine glatte K&amp;urve zeichnen</translation>
  </message>
  <message>
   <source>Draw a wall, fence or hedge</source>
   <translation>Mauer, Zaun oder Hecke zeichnen</translation>
  </message>
  <message>
   <source>Draw bed</source>
   <translation>Beet zeichnen</translation>
  </message>
  <message>
   <source>Draw dimension line</source>
   <translation>Maßlinie zeichnen</translation>
  </message>
  <message>
   <source>Draw fence</source>
   <translation>Zaun zeichnen</translation>
  </message>
  <message>
   <source>Draw from &amp;corner to corner</source>
   <translation>Von &amp;Ecke zu Ecke zeichnen</translation>
  </message>
  <message>
   <source>Draw on the empty sheet</source>
   <translation>Auf dem leeren Blatt zeichnen</translation>
  </message>
  <message>
   <source>Draw paving</source>
   <translation>Befestigte Fläche zeichnen</translation>
  </message>
  <message>
   <source>Draw places to corners, edges, centres and the grid; Alt suspends it</source>
   <translation>Orte an Ecken, Kanten, Mitten und Raster ziehen; Alt setzt es aus</translation>
  </message>
  <message>
   <source>Draw service line</source>
   <translation>Leitung zeichnen</translation>
  </message>
  <message>
   <source>Draw the line round the ground that may be planted</source>
   <translation>Die Linie um die Fläche zeichnen, die bepflanzt werden darf</translation>
  </message>
  <message>
   <source>Draw the lot</source>
   <translation>Das Grundstück zeichnen</translation>
  </message>
  <message>
   <source>Draw the lot line</source>
   <translation>Grundstücksgrenze zeichnen</translation>
  </message>
  <message>
   <source>Draw the lot line from a deed</source>
   <translation>Grundstücksgrenze aus einer Urkunde zeichnen</translation>
  </message>
  <message>
   <source>Draw {what}</source>
   <translation>{what} zeichnen</translation>
  </message>
  <message>
   <source>Drawing of {name}</source>
   <translation>Zeichnung von {name}</translation>
  </message>
  <message>
   <source>Dupl&amp;icate</source>
   <translation>&amp;Duplizieren</translation>
  </message>
  <message>
   <source>E</source>
   <translation>O</translation>
  </message>
  <message>
   <source>Each card says what is wrong and what would clear it; a click shows the place. Drag plants apart, change a variety, or let the program find a clear place. What you can live with may stay: Next step goes on.</source>
   <translation>Jede Karte sagt, was nicht stimmt und was abhilft; ein Klick zeigt die Stelle. Ziehen Sie Pflanzen auseinander, wechseln Sie eine Sorte oder lassen Sie das Programm einen freien Platz suchen. Was Ihnen recht ist, darf bleiben: Nächster Schritt geht weiter.</translation>
  </message>
  <message>
   <source>Eaves</source>
   <translation>Traufe</translation>
  </message>
  <message>
   <source>Edge of {panel}</source>
   <translation>Kante: {panel}</translation>
  </message>
  <message>
   <source>Edge {number}</source>
   <translation>Kante {number}</translation>
  </message>
  <message>
   <source>Edge {number} of {name} is {length}</source>
   <translation>Kante {number} von {name} ist {length}</translation>
  </message>
  <message>
   <source>Edges and corners</source>
   <translation>Kanten und Ecken</translation>
  </message>
  <message>
   <source>Enter takes it, Esc leaves it.</source>
   <translation>Eingabetaste übernimmt, Esc lässt es.</translation>
  </message>
  <message>
   <source>Evergreen</source>
   <translation>Immergrün</translation>
  </message>
  <message>
   <source>Every fact of this variety with its source</source>
   <translation>Jede Angabe zu dieser Sorte mit ihrer Quelle</translation>
  </message>
  <message>
   <source>Every fact with its source, beside another variety if you like</source>
   <translation>Jede Angabe mit ihrer Quelle, auf Wunsch neben einer anderen Sorte</translation>
  </message>
  <message>
   <source>Every plant on the plan has what it needs to set fruit.</source>
   <translation>Jede Pflanze auf dem Plan hat, was sie zum Fruchtansatz braucht.</translation>
  </message>
  <message>
   <source>Every step so far, to go back to</source>
   <translation>Alle bisherigen Schritte, um dorthin zurückzugehen</translation>
  </message>
  <message>
   <source>Everything on the plan</source>
   <translation>Alles auf dem Plan</translation>
  </message>
  <message>
   <source>Export as {kind}</source>
   <translation>Exportieren als {kind}</translation>
  </message>
  <message>
   <source>F&amp;ull screen</source>
   <translation>&amp;Vollbild</translation>
  </message>
  <message>
   <source>F1 explains whatever has the keyboard or the tool you chose. The guide is in the Help menu.</source>
   <translation>F1 erklärt, was die Tastatur hat oder das gewählte Werkzeug. Die Führung steht im Menü Hilfe.</translation>
  </message>
  <message>
   <source>Faces</source>
   <translation>Ausrichtung</translation>
  </message>
  <message>
   <source>Fact</source>
   <translation>Angabe</translation>
  </message>
  <message>
   <source>Facts of the variety</source>
   <translation>Angaben zur Sorte</translation>
  </message>
  <message>
   <source>Falls towards</source>
   <translation>Fällt nach</translation>
  </message>
  <message>
   <source>Feb</source>
   <translation>Feb.</translation>
  </message>
  <message>
   <source>February</source>
   <translation>Februar</translation>
  </message>
  <message>
   <source>Feet and inches</source>
   <translation>Fuß und Zoll</translation>
  </message>
  <message>
   <source>Fence</source>
   <translation>Zaun</translation>
  </message>
  <message>
   <source>Fewest plants to add so that every plant crops</source>
   <translation>So wenige Pflanzen wie möglich, damit jede trägt</translation>
  </message>
  <message>
   <source>Fields</source>
   <translation>Felder</translation>
  </message>
  <message>
   <source>Figures of your adviser or the law in place of ours</source>
   <translation>Werte Ihrer Beratung oder des Gesetzes anstelle der Vorgaben</translation>
  </message>
  <message>
   <source>Fill in zone, frost dates and temperatures; works offline</source>
   <translation>Zone, Frosttage und Temperaturen eintragen; geht ohne Internet</translation>
  </message>
  <message>
   <source>Fill zone, frost days and monthly means in from this place</source>
   <translation>Zone, Frosttage und Monatsmittel von diesem Ort eintragen</translation>
  </message>
  <message>
   <source>Filter</source>
   <translation>Filter</translation>
  </message>
  <message>
   <source>Filter: {number}</source>
   <translation>Filter: {number}</translation>
  </message>
  <message>
   <source>Filters, {number} in force</source>
   <translation>Filter, {number} in Kraft</translation>
  </message>
  <message>
   <source>Find a &amp;partner…</source>
   <translation>&amp;Befruchter suchen…</translation>
  </message>
  <message>
   <source>Find a command</source>
   <translation>Befehl suchen</translation>
  </message>
  <message>
   <source>Find a partner…</source>
   <translation>Befruchter suchen…</translation>
  </message>
  <message>
   <source>Find a rule</source>
   <translation>Regel suchen</translation>
  </message>
  <message>
   <source>Find a rule: spacing, septic, sun, pollen…</source>
   <translation>Regel suchen: Abstand, Sickerfläche, Sonne, Pollen…</translation>
  </message>
  <message>
   <source>Find a variety or kind</source>
   <translation>Sorte oder Art suchen</translation>
  </message>
  <message>
   <source>Find in the handbook</source>
   <translation>Im Handbuch suchen</translation>
  </message>
  <message>
   <source>Findings</source>
   <translation>Befunde</translation>
  </message>
  <message>
   <source>First click the two places in the picture, or type them like 4; 2.5</source>
   <translation>Zuerst die zwei Stellen im Bild anklicken oder eingeben, etwa 4; 2,5</translation>
  </message>
  <message>
   <source>First corner, x</source>
   <translation>Erste Ecke, x</translation>
  </message>
  <message>
   <source>First corner, y</source>
   <translation>Erste Ecke, y</translation>
  </message>
  <message>
   <source>First frost</source>
   <translation>Erster Frost</translation>
  </message>
  <message>
   <source>First frost, 1 year of 10</source>
   <translation>Erster Frost in 1 von 10 Jahren</translation>
  </message>
  <message>
   <source>First frost, 5 years of 10</source>
   <translation>Erster Frost in 5 von 10 Jahren</translation>
  </message>
  <message>
   <source>Flowers</source>
   <translation>Blüten</translation>
  </message>
  <message>
   <source>For drawing programs, a layer for each kind of thing</source>
   <translation>Für Zeichenprogramme, eine Ebene je Art von Dingen</translation>
  </message>
  <message>
   <source>For maps, by longitude and latitude</source>
   <translation>Für Karten, nach Länge und Breite</translation>
  </message>
  <message>
   <source>For pots</source>
   <translation>Für Kübel</translation>
  </message>
  <message>
   <source>For the lot line, paving and beds: the tool in use, or a bed</source>
   <translation>Für Grundstücksgrenze, befestigte Flächen und Beete: das gewählte Werkzeug, sonst ein Beet</translation>
  </message>
  <message>
   <source>For {hours} h of sun</source>
   <translation>Für {hours} h Sonne</translation>
  </message>
  <message>
   <source>Forget this yard's figure for the chosen rule</source>
   <translation>Den Wert dieses Gartens für die gewählte Regel vergessen</translation>
  </message>
  <message>
   <source>Form</source>
   <translation>Erziehungsform</translation>
  </message>
  <message>
   <source>Form of the plant in hand</source>
   <translation>Erziehungsform der Pflanze in der Hand</translation>
  </message>
  <message>
   <source>Forward</source>
   <translation>Vor</translation>
  </message>
  <message>
   <source>Free lime</source>
   <translation>Freier Kalk</translation>
  </message>
  <message>
   <source>Free lime would tell whether sulfur can make the ground acid at all: see whether dry soil fizzes under vinegar.</source>
   <translation>Freier Kalk würde sagen, ob Schwefel den Boden überhaupt sauer machen kann: Sehen Sie nach, ob trockener Boden unter Essig schäumt.</translation>
  </message>
  <message>
   <source>From</source>
   <translation>Von</translation>
  </message>
  <message>
   <source>From below, y</source>
   <translation>Von unten, y</translation>
  </message>
  <message>
   <source>From corners to a curve to a circle, also in the middle of drawing</source>
   <translation>Von Ecken zu Kurve zu Kreis, auch mitten im Zeichnen</translation>
  </message>
  <message>
   <source>From memory, not confirmed by a source.</source>
   <translation>Aus dem Gedächtnis, durch keine Quelle bestätigt.</translation>
  </message>
  <message>
   <source>From the left, x</source>
   <translation>Von links, x</translation>
  </message>
  <message>
   <source>Frost days</source>
   <translation>Frosttage</translation>
  </message>
  <message>
   <source>Fruit</source>
   <translation>Frucht</translation>
  </message>
  <message>
   <source>Fruit set</source>
   <translation>Fruchtansatz</translation>
  </message>
  <message>
   <source>Full-size outli&amp;ne</source>
   <translation>&amp;Umriss in voller Größe</translation>
  </message>
  <message>
   <source>Gain from crossing</source>
   <translation>Gewinn durch Fremdbefruchtung</translation>
  </message>
  <message>
   <source>Gate</source>
   <translation>Tor</translation>
  </message>
  <message>
   <source>GeoJSON</source>
   <translation>GeoJSON</translation>
  </message>
  <message>
   <source>Give the plan as it is now a name and keep it</source>
   <translation>Dem Plan, wie er jetzt ist, einen Namen geben und ihn behalten</translation>
  </message>
  <message>
   <source>Go there</source>
   <translation>Dorthin</translation>
  </message>
  <message>
   <source>Go to its fields…</source>
   <translation>Zu den Feldern…</translation>
  </message>
  <message>
   <source>Go to the fields of what is selected</source>
   <translation>Zu den Feldern des Ausgewählten gehen</translation>
  </message>
  <message>
   <source>Gone: {findings}.</source>
   <translation>Weg: {findings}.</translation>
  </message>
  <message>
   <source>Grew here before</source>
   <translation>Vorher hier gewachsen</translation>
  </message>
  <message numerus="yes">
   <source>Group {n} things</source>
   <translation>
    <numerusform>{n} Ding gruppieren</numerusform>
    <numerusform>{n} Dinge gruppieren</numerusform>
   </translation>
  </message>
  <message>
   <source>Growing season, &amp;mean</source>
   <translation>&amp;Mittel der Wachstumszeit</translation>
  </message>
  <message>
   <source>Growth: {words}</source>
   <translation>Wuchs: {words}</translation>
  </message>
  <message>
   <source>Guided &amp;start</source>
   <translation>&amp;Führung für den Anfang</translation>
  </message>
  <message>
   <source>Guided start</source>
   <translation>Führung für den Anfang</translation>
  </message>
  <message>
   <source>Habit</source>
   <translation>Wuchs</translation>
  </message>
  <message>
   <source>Half the years have a frost after {day}.</source>
   <translation>In der Hälfte der Jahre gibt es nach dem {day} noch Frost.</translation>
  </message>
  <message>
   <source>Handbook</source>
   <translation>Handbuch</translation>
  </message>
  <message>
   <source>Handbook: {page}</source>
   <translation>Handbuch: {page}</translation>
  </message>
  <message>
   <source>Hardiness zone</source>
   <translation>Winterhärtezone</translation>
  </message>
  <message>
   <source>Hardy here</source>
   <translation>Hier winterhart</translation>
  </message>
  <message>
   <source>Hardy here, needs no partner, ripening, width and more</source>
   <translation>Hier winterhart, ohne Befruchter, Reife, Breite und mehr</translation>
  </message>
  <message>
   <source>Harvest</source>
   <translation>Ernte</translation>
  </message>
  <message>
   <source>Height</source>
   <translation>Höhe</translation>
  </message>
  <message>
   <source>Height above the sea</source>
   <translation>Höhe über dem Meer</translation>
  </message>
  <message>
   <source>Here</source>
   <translation>Hier</translation>
  </message>
  <message>
   <source>Hills or a forest edge: compass direction and height above level, such as 90 12; 135 20; 180 8</source>
   <translation>Hügel oder Waldrand: Himmelsrichtung und Höhe über der Waagerechten, etwa 90 12; 135 20; 180 8</translation>
  </message>
  <message>
   <source>Hour by {clock}</source>
   <translation>Stunde nach: {clock}</translation>
  </message>
  <message>
   <source>Hour of the day: {hour}</source>
   <translation>Stunde des Tages: {hour}</translation>
  </message>
  <message>
   <source>Hours a day that planting takes</source>
   <translation>Stunden am Tag, die die Pflanzung nimmt</translation>
  </message>
  <message>
   <source>Hours at or under 7 °C (45 °F) in the average winter, if you know them</source>
   <translation>Stunden bis 7 °C (45 °F) im mittleren Winter, wenn Sie sie kennen</translation>
  </message>
  <message>
   <source>Hours before ten by the sun, mean of the season: they dry the leaves</source>
   <translation>Stunden vor zehn Uhr Sonnenzeit, Mittel der Saison: Sie trocknen das Laub</translation>
  </message>
  <message>
   <source>Hours of direct sun a day, mean of the growing season</source>
   <translation>Stunden direkter Sonne am Tag, Mittel der Wachstumszeit</translation>
  </message>
  <message>
   <source>Hours of direct sun on the day chosen for the shadows</source>
   <translation>Stunden direkter Sonne an dem Tag, der für die Schatten gewählt ist</translation>
  </message>
  <message>
   <source>Hours of direct sun on the longest day</source>
   <translation>Stunden direkter Sonne am längsten Tag</translation>
  </message>
  <message>
   <source>Hours of sun on the ground</source>
   <translation>Sonnenstunden am Boden</translation>
  </message>
  <message>
   <source>House</source>
   <translation>Haus</translation>
  </message>
  <message>
   <source>How far the comparison is</source>
   <translation>Wie weit der Vergleich ist</translation>
  </message>
  <message>
   <source>How far the line stands to the left of what it measures</source>
   <translation>Wie weit links von dem Gemessenen die Linie steht</translation>
  </message>
  <message>
   <source>How far the sheets are</source>
   <translation>Wie weit die Blätter sind</translation>
  </message>
  <message>
   <source>How far true north is turned clockwise from straight up the drawing</source>
   <translation>Wie weit das wahre Norden im Uhrzeigersinn von der Senkrechten der Zeichnung abweicht</translation>
  </message>
  <message>
   <source>How many in all, and how far apart?</source>
   <translation>Wie viele insgesamt, und wie weit auseinander?</translation>
  </message>
  <message>
   <source>How much of the light the planting takes from the ground</source>
   <translation>Wie viel Licht die Pflanzung dem Boden nimmt</translation>
  </message>
  <message>
   <source>How wide the picture is on the ground; its height follows</source>
   <translation>Wie breit das Bild am Boden ist; die Höhe folgt</translation>
  </message>
  <message>
   <source>In a pot</source>
   <translation>Im Kübel</translation>
  </message>
  <message>
   <source>In autumn half the years have had one by {day}.</source>
   <translation>Im Herbst gab es in der Hälfte der Jahre bis zum {day} Frost.</translation>
  </message>
  <message>
   <source>In line a&amp;cross</source>
   <translation>&amp;Waagerecht mitteln</translation>
  </message>
  <message>
   <source>In line at the &amp;bottom</source>
   <translation>&amp;Unten ausrichten</translation>
  </message>
  <message>
   <source>In line at the &amp;left</source>
   <translation>An &amp;linker Kante ausrichten</translation>
  </message>
  <message>
   <source>In line at the &amp;right</source>
   <translation>An &amp;rechter Kante ausrichten</translation>
  </message>
  <message>
   <source>In line at the &amp;top</source>
   <translation>&amp;Oben ausrichten</translation>
  </message>
  <message>
   <source>In line up and &amp;down</source>
   <translation>&amp;Senkrecht mitteln</translation>
  </message>
  <message>
   <source>In winter</source>
   <translation>Im Winter</translation>
  </message>
  <message>
   <source>Incompatible group</source>
   <translation>Unverträglichkeitsgruppe</translation>
  </message>
  <message>
   <source>It takes the place of the lot line there is; what stands on the lot stays.</source>
   <translation>Sie tritt an die Stelle der vorhandenen Grundstücksgrenze; was auf dem Grundstück steht, bleibt.</translation>
  </message>
  <message>
   <source>Item</source>
   <translation>Posten</translation>
  </message>
  <message>
   <source>Its pollen</source>
   <translation>Sein Pollen</translation>
  </message>
  <message>
   <source>Its roots die from about {limit}: an unheated shed in winter, and a little water once a month.</source>
   <translation>Die Wurzeln sterben ab etwa {limit}: im Winter in einen ungeheizten Schuppen stellen und einmal im Monat etwas gießen.</translation>
  </message>
  <message>
   <source>Jan</source>
   <translation>Jan.</translation>
  </message>
  <message>
   <source>January</source>
   <translation>Januar</translation>
  </message>
  <message>
   <source>Jul</source>
   <translation>Juli</translation>
  </message>
  <message>
   <source>July</source>
   <translation>Juli</translation>
  </message>
  <message>
   <source>Jun</source>
   <translation>Juni</translation>
  </message>
  <message>
   <source>June</source>
   <translation>Juni</translation>
  </message>
  <message>
   <source>Keep</source>
   <translation>Behalten</translation>
  </message>
  <message>
   <source>Keep t&amp;his plan as a variant…</source>
   <translation>Diesen Plan als Variante &amp;behalten…</translation>
  </message>
  <message>
   <source>Keep this plan under which name?</source>
   <translation>Unter welchem Namen diesen Plan behalten?</translation>
  </message>
  <message>
   <source>Keep this plan…</source>
   <translation>Diesen Plan behalten…</translation>
  </message>
  <message>
   <source>Keep this variety</source>
   <translation>Diese Sorte behalten</translation>
  </message>
  <message>
   <source>Keep variant {name}</source>
   <translation>Variante {name} behalten</translation>
  </message>
  <message>
   <source>Keep variety {name}</source>
   <translation>Sorte {name} behalten</translation>
  </message>
  <message>
   <source>Key</source>
   <translation>Kürzel</translation>
  </message>
  <message>
   <source>Keys</source>
   <translation>Tasten</translation>
  </message>
  <message>
   <source>Kind</source>
   <translation>Art</translation>
  </message>
  <message>
   <source>Kind of fruit</source>
   <translation>Obstart</translation>
  </message>
  <message>
   <source>Kind of work</source>
   <translation>Art der Arbeit</translation>
  </message>
  <message>
   <source>Kinds content with the sun at the selected plant</source>
   <translation>Arten, denen die Sonne an der ausgewählten Pflanze genügt</translation>
  </message>
  <message>
   <source>L&amp;ight</source>
   <translation>&amp;Hell</translation>
  </message>
  <message>
   <source>La&amp;yers</source>
   <translation>Ebe&amp;nen</translation>
  </message>
  <message>
   <source>Languag&amp;e</source>
   <translation>&amp;Sprache</translation>
  </message>
  <message>
   <source>Language of the window: {name}, from the next start on</source>
   <translation>Sprache des Fensters: {name}, ab dem nächsten Start</translation>
  </message>
  <message>
   <source>Last frost</source>
   <translation>Letzter Frost</translation>
  </message>
  <message>
   <source>Last frost, 1 year of 10</source>
   <translation>Letzter Frost in 1 von 10 Jahren</translation>
  </message>
  <message>
   <source>Last frost, 5 years of 10</source>
   <translation>Letzter Frost in 5 von 10 Jahren</translation>
  </message>
  <message>
   <source>Lately open</source>
   <translation>Zuletzt geöffnet</translation>
  </message>
  <message>
   <source>Latitude</source>
   <translation>Breitengrad</translation>
  </message>
  <message>
   <source>Le&amp;gend on the sheet</source>
   <translation>&amp;Legende auf dem Blatt</translation>
  </message>
  <message>
   <source>Leave it for now</source>
   <translation>Vorerst lassen</translation>
  </message>
  <message>
   <source>Leave this step out</source>
   <translation>Diesen Schritt auslassen</translation>
  </message>
  <message>
   <source>Leaves in spring</source>
   <translation>Laub im Frühling</translation>
  </message>
  <message>
   <source>Leaves in summer</source>
   <translation>Laub im Sommer</translation>
  </message>
  <message>
   <source>Length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <source>Length of edge {number} of {name}</source>
   <translation>Länge der Kante {number} von {name}</translation>
  </message>
  <message>
   <source>Length, angle or place</source>
   <translation>Länge, Winkel oder Ort</translation>
  </message>
  <message>
   <source>Less lets the plan stand out over the picture</source>
   <translation>Weniger lässt den Plan über dem Bild hervortreten</translation>
  </message>
  <message>
   <source>Let go to leave it so; Alt turns freely, Esc turns it back</source>
   <translation>Loslassen lässt es so; Alt dreht frei, Esc dreht zurück</translation>
  </message>
  <message>
   <source>Let go to leave the corner here; Alt suspends snapping, Esc puts it back</source>
   <translation>Loslassen lässt die Ecke hier; Alt setzt das Einrasten aus, Esc legt sie zurück</translation>
  </message>
  <message>
   <source>Let go to put it down; Ctrl copies, Alt suspends snapping, Esc puts it back</source>
   <translation>Loslassen legt es ab; Strg kopiert, Alt setzt das Einrasten aus, Esc legt es zurück</translation>
  </message>
  <message>
   <source>Let go to put it down; Esc puts it back</source>
   <translation>Loslassen legt es ab; Esc legt es zurück</translation>
  </message>
  <message>
   <source>Let go to select what lies wholly inside</source>
   <translation>Loslassen wählt, was ganz innerhalb liegt</translation>
  </message>
  <message>
   <source>Lets through</source>
   <translation>Lichtdurchlass</translation>
  </message>
  <message>
   <source>Licence</source>
   <translation>Lizenz</translation>
  </message>
  <message>
   <source>Licence, parts used, sources of the figures</source>
   <translation>Lizenz, verwendete Teile, Quellen der Zahlen</translation>
  </message>
  <message>
   <source>Licences of the parts used</source>
   <translation>Lizenzen der verwendeten Teile</translation>
  </message>
  <message>
   <source>Light</source>
   <translation>Licht</translation>
  </message>
  <message>
   <source>Light at the spot</source>
   <translation>Licht an der Stelle</translation>
  </message>
  <message>
   <source>Light being worked out</source>
   <translation>Das Licht wird berechnet</translation>
  </message>
  <message>
   <source>Light over the ground</source>
   <translation>Licht über dem Boden</translation>
  </message>
  <message>
   <source>Likewise: {things}</source>
   <translation>Ebenso: {things}</translation>
  </message>
  <message>
   <source>Line</source>
   <translation>Zeile</translation>
  </message>
  <message>
   <source>Line aside by</source>
   <translation>Linie versetzt um</translation>
  </message>
  <message>
   <source>Lines left out or changed</source>
   <translation>Ausgelassene oder geänderte Zeilen</translation>
  </message>
  <message>
   <source>Lines to buy</source>
   <translation>Posten zu kaufen</translation>
  </message>
  <message>
   <source>Local ru&amp;les…</source>
   <translation>Örtliche &amp;Regeln…</translation>
  </message>
  <message>
   <source>Local rules</source>
   <translation>Örtliche Regeln</translation>
  </message>
  <message>
   <source>Lock {things}</source>
   <translation>{things} sperren</translation>
  </message>
  <message>
   <source>Locked in place</source>
   <translation>An Ort und Stelle gesperrt</translation>
  </message>
  <message>
   <source>Locked things are not deleted</source>
   <translation>Gesperrtes wird nicht gelöscht</translation>
  </message>
  <message>
   <source>Locked things are not moved</source>
   <translation>Gesperrtes wird nicht verschoben</translation>
  </message>
  <message>
   <source>Locked things are not moved or deleted</source>
   <translation>Gesperrtes wird nicht verschoben und nicht gelöscht</translation>
  </message>
  <message>
   <source>Longitude</source>
   <translation>Längengrad</translation>
  </message>
  <message>
   <source>Look the place up</source>
   <translation>Den Ort nachschlagen</translation>
  </message>
  <message>
   <source>Look up</source>
   <translation>Nachschlagen</translation>
  </message>
  <message>
   <source>Look up the place</source>
   <translation>Den Ort nachschlagen</translation>
  </message>
  <message>
   <source>Look up {place}</source>
   <translation>{place} nachschlagen</translation>
  </message>
  <message>
   <source>Looking for a clear place for {plant}…</source>
   <translation>Ein freier Platz für {plant} wird gesucht…</translation>
  </message>
  <message>
   <source>Lot line</source>
   <translation>Grundstücksgrenze</translation>
  </message>
  <message>
   <source>Lot line from a &amp;deed…</source>
   <translation>Grundstücks&amp;grenze aus einer Urkunde…</translation>
  </message>
  <message>
   <source>Lot line from a deed</source>
   <translation>Grundstücksgrenze aus einer Urkunde</translation>
  </message>
  <message>
   <source>Lot line from a file</source>
   <translation>Grundstücksgrenze aus einer Datei</translation>
  </message>
  <message>
   <source>Lot line from {file}</source>
   <translation>Grundstücksgrenze aus {file}</translation>
  </message>
  <message>
   <source>Lower season strip</source>
   <translation>Jahresstreifen niedriger</translation>
  </message>
  <message>
   <source>Maps and drawings ({endings})</source>
   <translation>Karten und Zeichnungen ({endings})</translation>
  </message>
  <message>
   <source>Mar</source>
   <translation>März</translation>
  </message>
  <message>
   <source>Mar&amp;ks of findings</source>
   <translation>&amp;Marken der Befunde</translation>
  </message>
  <message>
   <source>March</source>
   <translation>März</translation>
  </message>
  <message>
   <source>Mark a tree that is there, in the yard or next door</source>
   <translation>Einen vorhandenen Baum setzen, im Garten oder nebenan</translation>
  </message>
  <message>
   <source>Mark done: {task}</source>
   <translation>Als erledigt markieren: {task}</translation>
  </message>
  <message>
   <source>Mark gate</source>
   <translation>Tor setzen</translation>
  </message>
  <message>
   <source>Mark standing tree</source>
   <translation>Altbaum setzen</translation>
  </message>
  <message>
   <source>Mark them on the sheet</source>
   <translation>Auf dem Blatt markieren</translation>
  </message>
  <message>
   <source>Mark to do: {task}</source>
   <translation>Als offen markieren: {task}</translation>
  </message>
  <message>
   <source>Mark where one enters the yard</source>
   <translation>Setzen, wo man den Garten betritt</translation>
  </message>
  <message>
   <source>May</source>
   <translation>Mai</translation>
  </message>
  <message>
   <source>Mean of {month}</source>
   <translation>Mittel im {month}</translation>
  </message>
  <message>
   <source>Measure from place to place</source>
   <translation>Von Stelle zu Stelle messen</translation>
  </message>
  <message>
   <source>Measure in</source>
   <translation>Maßeinheit</translation>
  </message>
  <message>
   <source>Measure: click from place to place</source>
   <translation>Messen: von Stelle zu Stelle klicken</translation>
  </message>
  <message>
   <source>Measured in water; a soil test tells it</source>
   <translation>In Wasser gemessen; eine Bodenprobe sagt ihn</translation>
  </message>
  <message>
   <source>Measured on the drawing</source>
   <translation>Auf der Zeichnung gemessen</translation>
  </message>
  <message>
   <source>Metres</source>
   <translation>Meter</translation>
  </message>
  <message>
   <source>Middle, x</source>
   <translation>Mitte, x</translation>
  </message>
  <message>
   <source>Middle, y</source>
   <translation>Mitte, y</translation>
  </message>
  <message>
   <source>Mids&amp;ummer day</source>
   <translation>Län&amp;gster Tag</translation>
  </message>
  <message>
   <source>Midsummer {hours} h</source>
   <translation>Mittsommer {hours} h</translation>
  </message>
  <message>
   <source>Mirror at a line…</source>
   <translation>An einer Linie spiegeln…</translation>
  </message>
  <message>
   <source>Mirror at the line through which point, in which direction?</source>
   <translation>An der Linie durch welchen Punkt und in welcher Richtung spiegeln?</translation>
  </message>
  <message>
   <source>Mo&amp;rning sun of the season</source>
   <translation>Mo&amp;rgensonne der Saison</translation>
  </message>
  <message>
   <source>Month</source>
   <translation>Monat</translation>
  </message>
  <message>
   <source>Monthly mean temperatures</source>
   <translation>Monatsmittel der Temperatur</translation>
  </message>
  <message>
   <source>Monthly means would tell when things bloom, and whether the winter is cold enough for fruit to set.</source>
   <translation>Monatsmittel würden sagen, wann etwas blüht und ob der Winter für den Fruchtansatz kalt genug ist.</translation>
  </message>
  <message>
   <source>Monthly temperatures</source>
   <translation>Monatstemperaturen</translation>
  </message>
  <message>
   <source>Move corner of {name}</source>
   <translation>Ecke von {name} verschieben</translation>
  </message>
  <message>
   <source>Move plants by little until no conflict is left that moving can cure; locked ones stay</source>
   <translation>Pflanzen ein wenig verschieben, bis kein Konflikt bleibt, dem Verschieben abhilft; gesperrte bleiben stehen</translation>
  </message>
  <message>
   <source>Move to the nearest clear place</source>
   <translation>Zum nächsten freien Platz verschieben</translation>
  </message>
  <message>
   <source>Move {name} to the nearest clear place</source>
   <translation>{name} zum nächsten freien Platz verschieben</translation>
  </message>
  <message>
   <source>Move {things}</source>
   <translation>{things} verschieben</translation>
  </message>
  <message>
   <source>Moved {length} {way}; {outcome}</source>
   <translation>{length} nach {way} verschoben; {outcome}</translation>
  </message>
  <message>
   <source>My yard</source>
   <translation>Mein Garten</translation>
  </message>
  <message>
   <source>N</source>
   <translation>N</translation>
  </message>
  <message>
   <source>N 45°30'15" E 100.50 ft
S 44°29'45" E 60.25 ft
123°15' 36.58 m</source>
   <translation>N 45°30'15" O 30,63 m
S 44°29'45" O 18,36 m
123°15' 36,58 m</translation>
  </message>
  <message>
   <source>N&amp;ext conflict or caution</source>
   <translation>Nä&amp;chster Konflikt oder Warnung</translation>
  </message>
  <message>
   <source>Name</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>Name and place</source>
   <translation>Name und Ort</translation>
  </message>
  <message>
   <source>Name of the yard</source>
   <translation>Name des Gartens</translation>
  </message>
  <message>
   <source>Names and si&amp;zes</source>
   <translation>N&amp;amen und Größen</translation>
  </message>
  <message>
   <source>Narrower panels beside the sheet</source>
   <translation>Felder neben dem Blatt schmaler</translation>
  </message>
  <message>
   <source>Needs no partner</source>
   <translation>Ohne Befruchter</translation>
  </message>
  <message>
   <source>New: {findings}.</source>
   <translation>Neu: {findings}.</translation>
  </message>
  <message>
   <source>Next door, outside the lot</source>
   <translation>Nebenan, außerhalb des Grundstücks</translation>
  </message>
  <message>
   <source>Next step</source>
   <translation>Nächster Schritt</translation>
  </message>
  <message>
   <source>No clear ground is left there: make room, or graft a branch onto it.</source>
   <translation>Dort ist keine freie Fläche mehr: Schaffen Sie Platz oder veredeln Sie einen Ast.</translation>
  </message>
  <message>
   <source>No command has these words. Try another word, such as plant, print or undo.</source>
   <translation>Kein Befehl enthält diese Wörter. Versuchen Sie ein anderes, etwa Pflanze, drucken oder rückgängig.</translation>
  </message>
  <message>
   <source>No conflict or caution more or less.</source>
   <translation>Kein Konflikt und keine Warnung mehr oder weniger.</translation>
  </message>
  <message>
   <source>No corner was rounded</source>
   <translation>Keine Ecke wurde gerundet</translation>
  </message>
  <message>
   <source>No lot line was read</source>
   <translation>Keine Grundstücksgrenze wurde gelesen</translation>
  </message>
  <message>
   <source>No overlay</source>
   <translation>Keine Überlagerung</translation>
  </message>
  <message>
   <source>No plants were read</source>
   <translation>Keine Pflanzen wurden gelesen</translation>
  </message>
  <message>
   <source>No recovery copy: {fault}</source>
   <translation>Keine Sicherungskopie: {fault}</translation>
  </message>
  <message>
   <source>No sheets were made: {fault}</source>
   <translation>Keine Blätter erstellt: {fault}</translation>
  </message>
  <message>
   <source>No spray had to be left out.</source>
   <translation>Keine Spritzung musste ausgelassen werden.</translation>
  </message>
  <message>
   <source>No spray on these days, in bloom or being picked: {plants}.</source>
   <translation>An diesen Tagen nicht spritzen, in Blüte oder Ernte: {plants}.</translation>
  </message>
  <message>
   <source>No variety of the catalogue that lives here is known to set fruit on it.</source>
   <translation>Keine Sorte des Katalogs, die hier lebt, befruchtet sie nachweislich.</translation>
  </message>
  <message>
   <source>No wider than</source>
   <translation>Höchstens so breit</translation>
  </message>
  <message>
   <source>No work in this month.</source>
   <translation>Keine Arbeit in diesem Monat.</translation>
  </message>
  <message>
   <source>None</source>
   <translation>Keine</translation>
  </message>
  <message>
   <source>North</source>
   <translation>Norden</translation>
  </message>
  <message>
   <source>Not dated for want of bloom dates here: {kinds}.</source>
   <translation>Ohne Termin, weil die Blütezeit hier fehlt: {kinds}.</translation>
  </message>
  <message>
   <source>Not finished yet: Enter ends it, Backspace takes back the last corner, Esc gives it up</source>
   <translation>Noch nicht fertig: Eingabe schließt ab, Rücktaste nimmt die letzte Ecke zurück, Esc verwirft</translation>
  </message>
  <message>
   <source>Not moved</source>
   <translation>Nicht verschoben</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>Nothing fits. Take away a filter, or ask for all kinds.</source>
   <translation>Nichts passt. Nehmen Sie einen Filter weg, oder fragen Sie nach allen Arten.</translation>
  </message>
  <message>
   <source>Nothing found. Try one word, or a part of it.</source>
   <translation>Nichts gefunden. Versuchen Sie ein einzelnes Wort oder einen Teil davon.</translation>
  </message>
  <message>
   <source>Nothing in hand (Esc)</source>
   <translation>Nichts in der Hand (Esc)</translation>
  </message>
  <message>
   <source>Nothing is being moved</source>
   <translation>Es wird nichts verschoben</translation>
  </message>
  <message>
   <source>Nothing is called '{words}'. Names like it:</source>
   <translation>Nichts heißt „{words}“. Ähnliche Namen:</translation>
  </message>
  <message>
   <source>Nothing is called '{words}'. Try fewer letters, or a kind such as apple.</source>
   <translation>Nichts heißt „{words}“. Versuchen Sie weniger Buchstaben oder eine Art wie Apfel.</translation>
  </message>
  <message>
   <source>Nothing is drawn yet. What does not fit, shades or lacks a partner will be listed here.</source>
   <translation>Noch ist nichts gezeichnet. Was nicht passt, beschattet oder keinen Befruchter hat, steht dann hier.</translation>
  </message>
  <message>
   <source>Nothing is on the plan yet.</source>
   <translation>Auf dem Plan ist noch nichts.</translation>
  </message>
  <message>
   <source>Nothing is planted yet, so there is no work.</source>
   <translation>Noch ist nichts gepflanzt, also gibt es keine Arbeit.</translation>
  </message>
  <message>
   <source>Nothing is sprayed from some days before any flower in or beside the yard opens until its petals are down, nor on fruit that is being picked. The label, the law and your local extension service come first.</source>
   <translation>Von einigen Tagen vor dem Öffnen der ersten Blüte im Garten oder daneben bis zum Fall der Blütenblätter wird nichts gespritzt, auch nicht auf Früchte, die gepflückt werden. Gebrauchsanleitung, Gesetz und Ihre örtliche Beratung gehen vor.</translation>
  </message>
  <message>
   <source>Nothing known here helps {plants}.</source>
   <translation>Nichts Bekanntes hilft {plants}.</translation>
  </message>
  <message>
   <source>Nothing lies wholly inside</source>
   <translation>Nichts liegt ganz darin</translation>
  </message>
  <message>
   <source>Nothing moves; {left}</source>
   <translation>Nichts bewegt sich; {left}</translation>
  </message>
  <message>
   <source>Nothing stands against this plan.</source>
   <translation>Gegen diesen Plan spricht nichts.</translation>
  </message>
  <message>
   <source>Nothing that is planted has a harvest that is known here.</source>
   <translation>Von nichts Gepflanztem ist hier eine Ernte bekannt.</translation>
  </message>
  <message>
   <source>Nothing that is selected is in a group</source>
   <translation>Nichts vom Ausgewählten gehört zu einer Gruppe</translation>
  </message>
  <message>
   <source>Nothing was exported</source>
   <translation>Nichts wurde exportiert</translation>
  </message>
  <message>
   <source>Nothing was kept</source>
   <translation>Nichts wurde behalten</translation>
  </message>
  <message>
   <source>Nothing was looked up yet.</source>
   <translation>Noch wurde nichts nachgeschlagen.</translation>
  </message>
  <message>
   <source>Nothing was mirrored</source>
   <translation>Es wurde nichts gespiegelt</translation>
  </message>
  <message>
   <source>Nothing was pasted</source>
   <translation>Nichts wurde eingefügt</translation>
  </message>
  <message>
   <source>Nothing was repeated</source>
   <translation>Nichts wurde wiederholt</translation>
  </message>
  <message>
   <source>Nothing was turned</source>
   <translation>Nichts wurde gedreht</translation>
  </message>
  <message>
   <source>Nov</source>
   <translation>Nov.</translation>
  </message>
  <message>
   <source>November</source>
   <translation>November</translation>
  </message>
  <message>
   <source>NumPy (BSD), Shapely (BSD, with GEOS under LGPL 2.1) and attrs (MIT).</source>
   <translation>NumPy (BSD), Shapely (BSD, mit GEOS unter LGPL 2.1) und attrs (MIT).</translation>
  </message>
  <message>
   <source>Oct</source>
   <translation>Okt.</translation>
  </message>
  <message>
   <source>October</source>
   <translation>Oktober</translation>
  </message>
  <message>
   <source>Of before, being worked out.</source>
   <translation>Von vorher, wird berechnet.</translation>
  </message>
  <message>
   <source>Of the selected bed, paving or lot line, by a typed radius</source>
   <translation>Des ausgewählten Beets, der befestigten Fläche oder Grundstücksgrenze, mit eingegebenem Radius</translation>
  </message>
  <message>
   <source>Off: a plain mouse wheel moves the sheet; Ctrl with the wheel always zooms</source>
   <translation>Aus: Das Mausrad verschiebt das Blatt; mit Strg zoomt es immer</translation>
  </message>
  <message>
   <source>Off: a quiet plan without marks</source>
   <translation>Aus: ein ruhiger Plan ohne Marken</translation>
  </message>
  <message>
   <source>On paper too</source>
   <translation>Auch auf Papier</translation>
  </message>
  <message>
   <source>On the plan</source>
   <translation>Plan</translation>
  </message>
  <message>
   <source>On wires or posts</source>
   <translation>An Drähten oder Pfählen</translation>
  </message>
  <message>
   <source>One call to a line, a bearing and a distance, the last back to the first corner. An angle without letters counts clockwise from north. North is true north as set in the yard's fields.</source>
   <translation>Eine Strecke je Zeile, Richtung und Länge, die letzte zurück zur ersten Ecke. Ein Winkel ohne Buchstaben zählt von Norden im Uhrzeigersinn. Norden ist der wahre Norden, wie er in den Feldern des Gartens steht.</translation>
  </message>
  <message>
   <source>One metre is one centimetre on this screen</source>
   <translation>Ein Meter ist auf diesem Bildschirm ein Zentimeter</translation>
  </message>
  <message>
   <source>One week earlier</source>
   <translation>Eine Woche früher</translation>
  </message>
  <message>
   <source>One week later</source>
   <translation>Eine Woche später</translation>
  </message>
  <message>
   <source>One year in ten has had one by {day}.</source>
   <translation>In einem von zehn Jahren gab es bis zum {day} Frost.</translation>
  </message>
  <message>
   <source>One year in ten has one after {day}.</source>
   <translation>In einem von zehn Jahren gibt es nach dem {day} noch Frost.</translation>
  </message>
  <message>
   <source>Only this yard's own</source>
   <translation>Nur eigene Werte dieses Gartens</translation>
  </message>
  <message>
   <source>Only what differs</source>
   <translation>Nur Unterschiede</translation>
  </message>
  <message>
   <source>Open</source>
   <translation>Öffnen</translation>
  </message>
  <message>
   <source>Open &amp;recent</source>
   <translation>&amp;Zuletzt verwendete</translation>
  </message>
  <message>
   <source>Open Sheets in the menu, choose what you want on paper, and save or print it. The plan is true to scale.</source>
   <translation>Öffnen Sie im Menü Blätter, wählen Sie, was aufs Papier soll, und speichern oder drucken Sie es. Der Plan ist maßstäblich.</translation>
  </message>
  <message>
   <source>Open a file…</source>
   <translation>Datei öffnen…</translation>
  </message>
  <message>
   <source>Open a sa&amp;mple</source>
   <translation>Beis&amp;piel öffnen</translation>
  </message>
  <message>
   <source>Open a yard</source>
   <translation>Garten öffnen</translation>
  </message>
  <message>
   <source>Open a yard file</source>
   <translation>Eine Gartendatei öffnen</translation>
  </message>
  <message>
   <source>Open light that planting takes</source>
   <translation>Freies Licht, das die Pflanzung nimmt</translation>
  </message>
  <message>
   <source>Open the site card…</source>
   <translation>Standortkarte öffnen…</translation>
  </message>
  <message>
   <source>Open variant {name}</source>
   <translation>Variante {name} öffnen</translation>
  </message>
  <message>
   <source>Open {name}</source>
   <translation>{name} öffnen</translation>
  </message>
  <message>
   <source>Open {name}, {words}</source>
   <translation>{name} öffnen, {words}</translation>
  </message>
  <message>
   <source>Open, name and delete variants; two or more side by side with what comes of them</source>
   <translation>Varianten öffnen, benennen und löschen; zwei oder mehr nebeneinander mit dem, was sie ergeben</translation>
  </message>
  <message>
   <source>Ours</source>
   <translation>Vorgabe</translation>
  </message>
  <message>
   <source>Outline</source>
   <translation>Umriss</translation>
  </message>
  <message>
   <source>Overhang</source>
   <translation>Dachüberstand</translation>
  </message>
  <message>
   <source>Own varieties</source>
   <translation>Eigene Sorten</translation>
  </message>
  <message>
   <source>P&amp;ictures under the plan</source>
   <translation>B&amp;ilder unter dem Plan</translation>
  </message>
  <message>
   <source>PDF (*.pdf);;SVG, one file a page (*.svg);;PNG, one file a page (*.png)</source>
   <translation>PDF (*.pdf);;SVG, eine Datei je Seite (*.svg);;PNG, eine Datei je Seite (*.png)</translation>
  </message>
  <message>
   <source>PDF, SVG or PNG, true to scale</source>
   <translation>PDF, SVG oder PNG, maßstäblich</translation>
  </message>
  <message>
   <source>Page of the handbook</source>
   <translation>Seite des Handbuchs</translation>
  </message>
  <message>
   <source>Pages</source>
   <translation>Seiten</translation>
  </message>
  <message>
   <source>Panels &amp;beside the sheet</source>
   <translation>Bereiche neben dem B&amp;latt</translation>
  </message>
  <message>
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <source>Partly written down from memory: the card says which facts</source>
   <translation>Teils aus dem Gedächtnis aufgeschrieben: Die Karte sagt, welche Angaben</translation>
  </message>
  <message>
   <source>Partner</source>
   <translation>Befruchter</translation>
  </message>
  <message>
   <source>Partner &amp;lines</source>
   <translation>&amp;Befruchterlinien</translation>
  </message>
  <message>
   <source>Partner lines of &amp;all plants</source>
   <translation>Befruchterlinien &amp;aller Pflanzen</translation>
  </message>
  <message>
   <source>Partners</source>
   <translation>Befruchter</translation>
  </message>
  <message>
   <source>Partners for {variety}</source>
   <translation>Befruchter für {variety}</translation>
  </message>
  <message>
   <source>Parts used</source>
   <translation>Verwendete Teile</translation>
  </message>
  <message>
   <source>Paste {things}</source>
   <translation>{things} einfügen</translation>
  </message>
  <message>
   <source>Path</source>
   <translation>Weg</translation>
  </message>
  <message>
   <source>Path alongside {name}</source>
   <translation>Weg entlang {name}</translation>
  </message>
  <message>
   <source>Path or bed &amp;alongside…</source>
   <translation>&amp;Weg oder Beet entlang…</translation>
  </message>
  <message>
   <source>Pattern</source>
   <translation>Muster</translation>
  </message>
  <message>
   <source>Paving</source>
   <translation>Befestigt</translation>
  </message>
  <message>
   <source>People fed from the yard</source>
   <translation>Aus dem Garten versorgte Personen</translation>
  </message>
  <message>
   <source>Pick a plant from the list, then click where it shall stand</source>
   <translation>Eine Pflanze aus der Liste wählen, dann anklicken, wo sie stehen soll</translation>
  </message>
  <message>
   <source>Pick a plant from the list, then click where its row begins</source>
   <translation>Eine Pflanze aus der Liste wählen, dann anklicken, wo ihre Reihe beginnt</translation>
  </message>
  <message>
   <source>Pick plants</source>
   <translation>Pflanzen wählen</translation>
  </message>
  <message>
   <source>Picture to scale</source>
   <translation>Bildmaßstab</translation>
  </message>
  <message>
   <source>Picture under the plan</source>
   <translation>Bild unter dem Plan</translation>
  </message>
  <message>
   <source>Pictures</source>
   <translation>Bilder</translation>
  </message>
  <message>
   <source>Place</source>
   <translation>Ort</translation>
  </message>
  <message>
   <source>Place of the first corner</source>
   <translation>Ort der ersten Ecke</translation>
  </message>
  <message>
   <source>Place of the spot: distance from the left, distance from the bottom</source>
   <translation>Ort der Stelle: Abstand von links, Abstand von unten</translation>
  </message>
  <message>
   <source>Place, climate and soil of the yard, with the source of each fact</source>
   <translation>Ort, Klima und Boden des Gartens, mit der Quelle jeder Angabe</translation>
  </message>
  <message>
   <source>Place: town, US ZIP code, or latitude and longitude</source>
   <translation>Ort: Stadt, US-Postleitzahl oder Breite und Länge</translation>
  </message>
  <message>
   <source>Places</source>
   <translation>Orte</translation>
  </message>
  <message>
   <source>Places found</source>
   <translation>Gefundene Orte</translation>
  </message>
  <message>
   <source>Plan</source>
   <translation>Plan</translation>
  </message>
  <message>
   <source>Plan of the yard</source>
   <translation>Plan des Gartens</translation>
  </message>
  <message>
   <source>Plan your yard</source>
   <translation>Planen Sie Ihren Garten</translation>
  </message>
  <message>
   <source>Plans a fruit yard to scale. While you draw it checks room, sun, pollen and access, and says what would clear what it finds.</source>
   <translation>Plant einen Obstgarten maßstäblich. Während Sie zeichnen, prüft das Programm Platz, Sonne, Befruchtung und Zugang und sagt, was einem Befund abhilft.</translation>
  </message>
  <message>
   <source>Plans to compare: tick two or more</source>
   <translation>Pläne zum Vergleichen: zwei oder mehr ankreuzen</translation>
  </message>
  <message>
   <source>Plant</source>
   <translation>Pflanze</translation>
  </message>
  <message>
   <source>Plant a row of the plant in hand</source>
   <translation>Eine Reihe der Pflanze in der Hand pflanzen</translation>
  </message>
  <message>
   <source>Plant it within {distance} of it, trunk to trunk.</source>
   <translation>Pflanzen Sie ihn höchstens {distance} entfernt, von Stamm zu Stamm.</translation>
  </message>
  <message>
   <source>Plant row of {cultivar}</source>
   <translation>Reihe {cultivar} pflanzen</translation>
  </message>
  <message>
   <source>Plant something, and its bloom and harvest show here.</source>
   <translation>Pflanzen Sie etwas, dann zeigen sich hier Blüte und Ernte.</translation>
  </message>
  <message>
   <source>Plant {cultivar}</source>
   <translation>{cultivar} pflanzen</translation>
  </message>
  <message>
   <source>Planted in</source>
   <translation>Gepflanzt</translation>
  </message>
  <message>
   <source>Planting plan, lists and calendar: save as PDF, SVG or PNG, or print, true to scale</source>
   <translation>Pflanzplan, Listen und Kalender: als PDF, SVG oder PNG speichern oder maßstäblich drucken</translation>
  </message>
  <message>
   <source>Plants</source>
   <translation>Pflanzen</translation>
  </message>
  <message>
   <source>Plants from a table</source>
   <translation>Pflanzen aus einer Tabelle</translation>
  </message>
  <message>
   <source>Plants from {file}</source>
   <translation>Pflanzen aus {file}</translation>
  </message>
  <message>
   <source>Plants, posts, wire, mulch and soil work, with your own prices</source>
   <translation>Pflanzen, Pfähle, Draht, Mulch und Bodenarbeiten, mit Ihren eigenen Preisen</translation>
  </message>
  <message>
   <source>Play</source>
   <translation>Start</translation>
  </message>
  <message>
   <source>Play the day</source>
   <translation>Den Tag abspielen</translation>
  </message>
  <message>
   <source>Point anywhere to read its sun</source>
   <translation>Irgendwohin zeigen, um die Sonne dort zu lesen</translation>
  </message>
  <message>
   <source>Point anywhere to read its sun; click to keep the spot, or type a place as x; y</source>
   <translation>Irgendwohin zeigen, um die Sonne dort zu lesen; klicken behält die Stelle, oder einen Ort als x; y eingeben</translation>
  </message>
  <message>
   <source>Point at it</source>
   <translation>Darauf zeigen</translation>
  </message>
  <message>
   <source>Pollen</source>
   <translation>Pollen</translation>
  </message>
  <message>
   <source>Pollen alleles</source>
   <translation>S-Allele</translation>
  </message>
  <message>
   <source>Pollen of {kind}: {rule}</source>
   <translation>Pollen von {kind}: {rule}</translation>
  </message>
  <message>
   <source>Pollination group</source>
   <translation>Befruchtungsgruppe</translation>
  </message>
  <message>
   <source>Pot</source>
   <translation>Kübel</translation>
  </message>
  <message>
   <source>Previ&amp;ous conflict or caution</source>
   <translation>V&amp;origer Konflikt oder Warnung</translation>
  </message>
  <message>
   <source>Price of one</source>
   <translation>Einzelpreis</translation>
  </message>
  <message>
   <source>Price of {item}</source>
   <translation>Preis von {item}</translation>
  </message>
  <message>
   <source>Prices in</source>
   <translation>Preise in</translation>
  </message>
  <message>
   <source>Print at 100 percent: the bar on the plan must measure 100 mm</source>
   <translation>Mit 100 Prozent drucken: Der Balken auf dem Plan muss 100 mm messen</translation>
  </message>
  <message>
   <source>Print the plan</source>
   <translation>Den Plan drucken</translation>
  </message>
  <message>
   <source>Print…</source>
   <translation>Drucken…</translation>
  </message>
  <message>
   <source>Program</source>
   <translation>Programm</translation>
  </message>
  <message>
   <source>Put away</source>
   <translation>Weglegen</translation>
  </message>
  <message>
   <source>Put copies beside what is selected</source>
   <translation>Kopien neben das Ausgewählte setzen</translation>
  </message>
  <message>
   <source>Put down pot</source>
   <translation>Kübel aufstellen</translation>
  </message>
  <message>
   <source>Put the chosen variant on the sheet; undo goes back</source>
   <translation>Die gewählte Variante auf das Blatt bringen; Rückgängig geht zurück</translation>
  </message>
  <message>
   <source>Put the keyboard on the control</source>
   <translation>Die Tastatur auf das Bedienfeld setzen</translation>
  </message>
  <message>
   <source>Put what is selected where it raises no conflict, as near as can be</source>
   <translation>Das Ausgewählte dorthin setzen, wo es keinen Konflikt macht, so nah wie möglich</translation>
  </message>
  <message>
   <source>Put {name} under the plan</source>
   <translation>{name} unter den Plan legen</translation>
  </message>
  <message>
   <source>Quantities are estimates to buy by. Prices are your own: click a price and type.</source>
   <translation>Die Mengen sind Schätzungen für den Einkauf. Die Preise sind Ihre eigenen: einen Preis anklicken und eingeben.</translation>
  </message>
  <message>
   <source>Quantity</source>
   <translation>Menge</translation>
  </message>
  <message>
   <source>R&amp;ound the corners…</source>
   <translation>Ecken run&amp;den…</translation>
  </message>
  <message>
   <source>RHS rating</source>
   <translation>RHS-Stufe</translation>
  </message>
  <message>
   <source>Radius</source>
   <translation>Radius</translation>
  </message>
  <message>
   <source>Raised by</source>
   <translation>Erhöht um</translation>
  </message>
  <message>
   <source>Re&amp;peat in a row…</source>
   <translation>In einer Re&amp;ihe wiederholen…</translation>
  </message>
  <message>
   <source>Re-pot or trim the roots every {years} years or so.</source>
   <translation>Etwa alle {years} Jahre umtopfen oder die Wurzeln schneiden.</translation>
  </message>
  <message>
   <source>Redo</source>
   <translation>Wiederholen</translation>
  </message>
  <message>
   <source>Redone: {step}</source>
   <translation>Wiederhergestellt: {step}</translation>
  </message>
  <message>
   <source>Remove</source>
   <translation>Entfernen</translation>
  </message>
  <message>
   <source>Remove a bloom day</source>
   <translation>Einen Blühtag entfernen</translation>
  </message>
  <message>
   <source>Remove corner of {thing}</source>
   <translation>Ecke von {thing} entfernen</translation>
  </message>
  <message>
   <source>Remove the bloom day of {variety}</source>
   <translation>Den Blühtag von {variety} entfernen</translation>
  </message>
  <message>
   <source>Remove this variety from the yard's file</source>
   <translation>Diese Sorte aus der Gartendatei entfernen</translation>
  </message>
  <message>
   <source>Remove variety {name}</source>
   <translation>Sorte {name} entfernen</translation>
  </message>
  <message>
   <source>Rename variant {name}</source>
   <translation>Variante {name} umbenennen</translation>
  </message>
  <message>
   <source>Rename {group}</source>
   <translation>{group} umbenennen</translation>
  </message>
  <message>
   <source>Rename…</source>
   <translation>Umbenennen…</translation>
  </message>
  <message>
   <source>Repeat {things}</source>
   <translation>{things} wiederholen</translation>
  </message>
  <message>
   <source>Ridge</source>
   <translation>First</translation>
  </message>
  <message>
   <source>Ridge runs</source>
   <translation>Firstrichtung</translation>
  </message>
  <message>
   <source>Ripens</source>
   <translation>Reife</translation>
  </message>
  <message>
   <source>Rise over distance</source>
   <translation>Anstieg auf die Strecke</translation>
  </message>
  <message>
   <source>Roof</source>
   <translation>Dach</translation>
  </message>
  <message>
   <source>Room</source>
   <translation>Platz</translation>
  </message>
  <message numerus="yes">
   <source>Room for {n} plants, {spacing} apart.</source>
   <translation>
    <numerusform>Platz für {n} Pflanze, Abstand {spacing}.</numerusform>
    <numerusform>Platz für {n} Pflanzen, Abstand {spacing}.</numerusform>
   </translation>
  </message>
  <message>
   <source>Rootstock</source>
   <translation>Unterlage</translation>
  </message>
  <message>
   <source>Rootstock of the plant in hand</source>
   <translation>Unterlage der Pflanze in der Hand</translation>
  </message>
  <message>
   <source>Round corners of {name}</source>
   <translation>Ecken von {name} runden</translation>
  </message>
  <message>
   <source>Round the corners by which radius? 0 makes them sharp.</source>
   <translation>Mit welchem Radius die Ecken runden? 0 macht sie scharf.</translation>
  </message>
  <message>
   <source>Rounded as far as the edges allow, by at most {most}</source>
   <translation>Gerundet, soweit es die Kanten zulassen, höchstens um {most}</translation>
  </message>
  <message>
   <source>Row</source>
   <translation>Reihe</translation>
  </message>
  <message>
   <source>Rule</source>
   <translation>Regel</translation>
  </message>
  <message>
   <source>Rule: {rule}</source>
   <translation>Regel: {rule}</translation>
  </message>
  <message>
   <source>Rules and this yard's own figures</source>
   <translation>Regeln und die eigenen Werte dieses Gartens</translation>
  </message>
  <message>
   <source>Runs north and south.</source>
   <translation>Verläuft von Nord nach Süd.</translation>
  </message>
  <message>
   <source>Runs {degrees}° off north and south.</source>
   <translation>Verläuft {degrees}° abweichend von Nord–Süd.</translation>
  </message>
  <message>
   <source>S</source>
   <translation>S</translation>
  </message>
  <message>
   <source>Samples to look at</source>
   <translation>Beispiele zum Ansehen</translation>
  </message>
  <message>
   <source>Save &amp;as…</source>
   <translation>Speichern &amp;unter…</translation>
  </message>
  <message>
   <source>Save as CSV</source>
   <translation>Als CSV speichern</translation>
  </message>
  <message>
   <source>Save as CSV…</source>
   <translation>Als CSV speichern…</translation>
  </message>
  <message>
   <source>Save as calendar</source>
   <translation>Als Kalender speichern</translation>
  </message>
  <message>
   <source>Save as calendar…</source>
   <translation>Als Kalender speichern…</translation>
  </message>
  <message>
   <source>Save sheets</source>
   <translation>Blätter speichern</translation>
  </message>
  <message>
   <source>Save the changes to {name}?</source>
   <translation>Die Änderungen an {name} speichern?</translation>
  </message>
  <message>
   <source>Save the lines left out</source>
   <translation>Ausgelassene Zeilen speichern</translation>
  </message>
  <message>
   <source>Save the lines left out…</source>
   <translation>Ausgelassene Zeilen speichern…</translation>
  </message>
  <message>
   <source>Save the yard as</source>
   <translation>Garten speichern unter</translation>
  </message>
  <message>
   <source>Save…</source>
   <translation>Speichern…</translation>
  </message>
  <message>
   <source>Scale</source>
   <translation>Maßstab</translation>
  </message>
  <message>
   <source>Scale 1:&amp;100</source>
   <translation>Maßstab 1:&amp;100</translation>
  </message>
  <message>
   <source>Scale of the plan</source>
   <translation>Maßstab des Plans</translation>
  </message>
  <message>
   <source>Scent</source>
   <translation>Duft</translation>
  </message>
  <message>
   <source>Search the catalogue; what you pick is in hand</source>
   <translation>Den Katalog durchsuchen; was Sie wählen, ist in der Hand</translation>
  </message>
  <message>
   <source>Season</source>
   <translation>Saison</translation>
  </message>
  <message>
   <source>Season chart, {day}</source>
   <translation>Jahresübersicht, {day}</translation>
  </message>
  <message>
   <source>Season s&amp;trip</source>
   <translation>&amp;Jahresstreifen</translation>
  </message>
  <message>
   <source>Select</source>
   <translation>Auswählen</translation>
  </message>
  <message>
   <source>Select &amp;all</source>
   <translation>Alles au&amp;swählen</translation>
  </message>
  <message>
   <source>Select &amp;nothing</source>
   <translation>&amp;Nichts auswählen</translation>
  </message>
  <message>
   <source>Select &amp;within…</source>
   <translation>&amp;Zwischen zwei Ecken auswählen…</translation>
  </message>
  <message>
   <source>Select a bed, paving or the lot line first</source>
   <translation>Wählen Sie zuerst ein Beet, eine befestigte Fläche oder die Grundstücksgrenze</translation>
  </message>
  <message>
   <source>Select a fence, a building, a bed or the lot line first</source>
   <translation>Wählen Sie zuerst einen Zaun, ein Gebäude, ein Beet oder die Grundstücksgrenze</translation>
  </message>
  <message>
   <source>Select a plant to see what would set fruit on it, or see what the whole yard lacks.</source>
   <translation>Wählen Sie eine Pflanze, um zu sehen, was sie bestäuben würde, oder sehen Sie, was dem ganzen Garten fehlt.</translation>
  </message>
  <message>
   <source>Select ne&amp;xt thing</source>
   <translation>N&amp;ächstes auswählen</translation>
  </message>
  <message>
   <source>Select one plant, row or bed to see who takes its light.</source>
   <translation>Wählen Sie eine Pflanze, Reihe oder ein Beet, um zu sehen, wer ihr Licht nimmt.</translation>
  </message>
  <message>
   <source>Select plants, rows or beds that are not locked</source>
   <translation>Wählen Sie Pflanzen, Reihen oder Beete, die nicht gesperrt sind</translation>
  </message>
  <message>
   <source>Select the p&amp;icture</source>
   <translation>B&amp;ild auswählen</translation>
  </message>
  <message>
   <source>Select two or more things to group them</source>
   <translation>Wählen Sie zwei oder mehr Dinge, um sie zu gruppieren</translation>
  </message>
  <message>
   <source>Select within</source>
   <translation>Zwischen zwei Ecken auswählen</translation>
  </message>
  <message>
   <source>Select, move, turn and copy things</source>
   <translation>Dinge auswählen, verschieben, drehen und kopieren</translation>
  </message>
  <message numerus="yes">
   <source>Sent to the printer: {n} pages. Print at 100 percent, not to fit.</source>
   <translation>
    <numerusform>An den Drucker geschickt: {n} Seite. Mit 100 Prozent drucken, nicht angepasst.</numerusform>
    <numerusform>An den Drucker geschickt: {n} Seiten. Mit 100 Prozent drucken, nicht angepasst.</numerusform>
   </translation>
  </message>
  <message>
   <source>Sep</source>
   <translation>Sept.</translation>
  </message>
  <message>
   <source>September</source>
   <translation>September</translation>
  </message>
  <message>
   <source>Service</source>
   <translation>Leitung</translation>
  </message>
  <message>
   <source>Set the picture to &amp;scale</source>
   <translation>Bild auf Maß&amp;stab bringen</translation>
  </message>
  <message>
   <source>Set {name} to scale</source>
   <translation>{name} auf Maßstab bringen</translation>
  </message>
  <message>
   <source>Sets of chromosomes</source>
   <translation>Chromosomensätze</translation>
  </message>
  <message>
   <source>Settle the plants</source>
   <translation>Pflanzen zurechtrücken</translation>
  </message>
  <message numerus="yes">
   <source>Settled: {n} plants moved, none farther than {far}; {left}</source>
   <translation>
    <numerusform>Zurechtgerückt: {n} Pflanze verschoben, nicht weiter als {far}; {left}</numerusform>
    <numerusform>Zurechtgerückt: {n} Pflanzen verschoben, keine weiter als {far}; {left}</numerusform>
   </translation>
  </message>
  <message>
   <source>Settling…</source>
   <translation>Wird verteilt…</translation>
  </message>
  <message>
   <source>Sh&amp;opping list…</source>
   <translation>&amp;Einkaufsliste…</translation>
  </message>
  <message>
   <source>Shadows</source>
   <translation>Schatten</translation>
  </message>
  <message>
   <source>Shadows at the day and hour set below</source>
   <translation>Schatten am unten eingestellten Tag und zur Stunde</translation>
  </message>
  <message>
   <source>Shadows from sunrise to sunset</source>
   <translation>Schatten von Sonnenaufgang bis Sonnenuntergang</translation>
  </message>
  <message>
   <source>Shadows from sunrise to sunset; again stops it and goes back to the hour set</source>
   <translation>Schatten von Sonnenaufgang bis -untergang; nochmals hält an und geht zur eingestellten Stunde zurück</translation>
  </message>
  <message>
   <source>Shadows on {day} at {hour}</source>
   <translation>Schatten am {day} um {hour}</translation>
  </message>
  <message>
   <source>Share of &amp;open light</source>
   <translation>&amp;Anteil des freien Lichts</translation>
  </message>
  <message>
   <source>Share of open light</source>
   <translation>Anteil des freien Lichts</translation>
  </message>
  <message>
   <source>Shed</source>
   <translation>Schuppen</translation>
  </message>
  <message>
   <source>Shee&amp;ts</source>
   <translation>Bl&amp;ätter</translation>
  </message>
  <message>
   <source>Sheets</source>
   <translation>Blätter</translation>
  </message>
  <message>
   <source>Shopping list</source>
   <translation>Einkaufsliste</translation>
  </message>
  <message>
   <source>Show feet and inches</source>
   <translation>Fuß und Zoll zeigen</translation>
  </message>
  <message>
   <source>Show metres</source>
   <translation>Meter zeigen</translation>
  </message>
  <message>
   <source>Show on the plan</source>
   <translation>Auf dem Plan zeigen</translation>
  </message>
  <message>
   <source>Show the place of the finding before</source>
   <translation>Die Stelle des Befunds davor zeigen</translation>
  </message>
  <message>
   <source>Show the place of the next finding of the list</source>
   <translation>Die Stelle des nächsten Befunds der Liste zeigen</translation>
  </message>
  <message>
   <source>Show the shade</source>
   <translation>Den Schatten zeigen</translation>
  </message>
  <message>
   <source>Si&amp;te card…</source>
   <translation>S&amp;tandortkarte…</translation>
  </message>
  <message>
   <source>Side</source>
   <translation>Seite</translation>
  </message>
  <message>
   <source>Site card</source>
   <translation>Standortkarte</translation>
  </message>
  <message>
   <source>Site card: climate, soil, place…</source>
   <translation>Standortkarte: Klima, Boden, Ort…</translation>
  </message>
  <message>
   <source>Size of all text, from the next start on</source>
   <translation>Größe aller Schrift, ab dem nächsten Start</translation>
  </message>
  <message>
   <source>Skip the guide</source>
   <translation>Führung überspringen</translation>
  </message>
  <message>
   <source>Skyline</source>
   <translation>Horizont</translation>
  </message>
  <message>
   <source>Slope</source>
   <translation>Hangneigung</translation>
  </message>
  <message>
   <source>So many, so far apart: 5 x 2.5 m &lt; 90</source>
   <translation>So viele, so weit auseinander: 5 x 2,5 m &lt; 90</translation>
  </message>
  <message>
   <source>Soil</source>
   <translation>Boden</translation>
  </message>
  <message>
   <source>Soil and lie of the land</source>
   <translation>Boden und Lage</translation>
  </message>
  <message>
   <source>Soil pH</source>
   <translation>Boden-pH</translation>
  </message>
  <message>
   <source>Some dates rest on usual months: the site's temperatures or frosts are not known.</source>
   <translation>Einige Termine beruhen auf üblichen Monaten: Temperaturen oder Fröste des Standorts sind nicht bekannt.</translation>
  </message>
  <message>
   <source>Source: {sources}</source>
   <translation>Quelle: {sources}</translation>
  </message>
  <message>
   <source>Sources</source>
   <translation>Quellen</translation>
  </message>
  <message>
   <source>Sources of the figures</source>
   <translation>Quellen der Zahlen</translation>
  </message>
  <message>
   <source>South is negative. Between the polar circles: beyond them the sun rule does not hold</source>
   <translation>Süden ist negativ. Zwischen den Polarkreisen: jenseits davon gilt die Sonnenregel nicht</translation>
  </message>
  <message>
   <source>Space evenl&amp;y up</source>
   <translation>Senkrecht gleichmäßig &amp;verteilen</translation>
  </message>
  <message>
   <source>Space evenly &amp;across</source>
   <translation>Waagerecht gleich&amp;mäßig verteilen</translation>
  </message>
  <message>
   <source>Space {things}</source>
   <translation>{things} verteilen</translation>
  </message>
  <message>
   <source>Spacing</source>
   <translation>Pflanzabstand</translation>
  </message>
  <message>
   <source>Species</source>
   <translation>Botanische Art</translation>
  </message>
  <message>
   <source>Sport of</source>
   <translation>Mutante von</translation>
  </message>
  <message>
   <source>Spot</source>
   <translation>Stelle</translation>
  </message>
  <message>
   <source>Sprays not placed</source>
   <translation>Nicht eingeplante Spritzungen</translation>
  </message>
  <message>
   <source>Spread</source>
   <translation>Kronenbreite</translation>
  </message>
  <message>
   <source>Standing tree</source>
   <translation>Altbaum</translation>
  </message>
  <message>
   <source>Stands in</source>
   <translation>Steht in</translation>
  </message>
  <message>
   <source>Starts at, x</source>
   <translation>Beginnt bei, x</translation>
  </message>
  <message>
   <source>Starts at, y</source>
   <translation>Beginnt bei, y</translation>
  </message>
  <message>
   <source>Steps</source>
   <translation>Schritte</translation>
  </message>
  <message>
   <source>Steps so far</source>
   <translation>Bisherige Schritte</translation>
  </message>
  <message>
   <source>Still too few corners. {next}</source>
   <translation>Noch zu wenige Ecken. {next}</translation>
  </message>
  <message>
   <source>Stop</source>
   <translation>Stopp</translation>
  </message>
  <message>
   <source>Stop making sheets</source>
   <translation>Das Erstellen der Blätter anhalten</translation>
  </message>
  <message>
   <source>Stop playing the day</source>
   <translation>Das Abspielen des Tages anhalten</translation>
  </message>
  <message>
   <source>Stop working out; what shows stays, pale</source>
   <translation>Die Berechnung anhalten; was zu sehen ist, bleibt blass</translation>
  </message>
  <message>
   <source>Stopped. Tick a plan to go on.</source>
   <translation>Angehalten. Zum Fortsetzen einen Plan ankreuzen.</translation>
  </message>
  <message>
   <source>Stopped: nothing more was written.</source>
   <translation>Angehalten: Mehr wurde nicht geschrieben.</translation>
  </message>
  <message>
   <source>Straight from corner to corner, with corners rounded off, or curved through its points</source>
   <translation>Gerade von Ecke zu Ecke, mit gerundeten Ecken oder als Kurve durch seine Punkte</translation>
  </message>
  <message>
   <source>Strength</source>
   <translation>Deckkraft</translation>
  </message>
  <message>
   <source>Su&amp;n time</source>
   <translation>Sonnen&amp;zeit</translation>
  </message>
  <message>
   <source>Such as America/New_York: the clock by which shadows can be shown</source>
   <translation>Etwa Europe/Berlin: die Uhr, nach der Schatten gezeigt werden können</translation>
  </message>
  <message>
   <source>Such as US-NY, DE or FR: tells which lot-line law and which dig-safe call are named</source>
   <translation>Etwa US-NY, DE oder FR: sagt, welches Grenzabstandsrecht und welche Leitungsauskunft genannt werden</translation>
  </message>
  <message>
   <source>Summer heat</source>
   <translation>Sommerwärme</translation>
  </message>
  <message>
   <source>Sun</source>
   <translation>Sonne</translation>
  </message>
  <message>
   <source>Sun and sky together, as a share of what an open place gets over the season</source>
   <translation>Sonne und Himmel zusammen, als Anteil dessen, was eine freie Stelle in der Saison bekommt</translation>
  </message>
  <message>
   <source>Sun at a plant</source>
   <translation>Sonne an einer Pflanze</translation>
  </message>
  <message>
   <source>Sun at a spot</source>
   <translation>Sonne an einer Stelle</translation>
  </message>
  <message>
   <source>Sun counted from</source>
   <translation>Sonne gezählt ab</translation>
  </message>
  <message>
   <source>Sun counted to</source>
   <translation>Sonne gezählt bis</translation>
  </message>
  <message>
   <source>Sun on plants, rows and beds</source>
   <translation>Sonne auf Pflanzen, Reihen und Beete</translation>
  </message>
  <message>
   <source>Sun time: 12:00 is when the sun stands highest</source>
   <translation>Sonnenzeit: Um 12:00 steht die Sonne am höchsten</translation>
  </message>
  <message>
   <source>Sunrise and sunset by {clock}</source>
   <translation>Sonnenauf- und -untergang nach: {clock}</translation>
  </message>
  <message>
   <source>Swap left and right</source>
   <translation>Links und rechts vertauschen</translation>
  </message>
  <message>
   <source>Swap top and bottom</source>
   <translation>Oben und unten vertauschen</translation>
  </message>
  <message>
   <source>Swap {things}</source>
   <translation>{things} vertauschen</translation>
  </message>
  <message>
   <source>T&amp;ype edge lengths</source>
   <translation>Kantenlän&amp;gen eingeben</translation>
  </message>
  <message>
   <source>Tab goes from thing to thing, arrow keys move, Enter or F2 opens the fields, Escape backs out</source>
   <translation>Tab geht von Ding zu Ding, Pfeiltasten verschieben, Eingabe oder F2 öffnet die Felder, Esc bricht ab</translation>
  </message>
  <message>
   <source>Tab on the sheet does the same</source>
   <translation>Tab auf dem Blatt tut dasselbe</translation>
  </message>
  <message>
   <source>Table of plants</source>
   <translation>Pflanzentabelle</translation>
  </message>
  <message>
   <source>Tables ({endings})</source>
   <translation>Tabellen ({endings})</translation>
  </message>
  <message>
   <source>Take in hand</source>
   <translation>In die Hand nehmen</translation>
  </message>
  <message>
   <source>Take it up</source>
   <translation>Wieder aufnehmen</translation>
  </message>
  <message>
   <source>Take the place on the map from the file too</source>
   <translation>Auch den Ort auf der Karte aus der Datei übernehmen</translation>
  </message>
  <message>
   <source>Take the tool Lot line and click the corners on the sheet, or type each length and press Enter. A click on the first corner closes the lot.</source>
   <translation>Nehmen Sie das Werkzeug Grundstücksgrenze und klicken Sie die Ecken auf dem Blatt an, oder tippen Sie jede Länge und drücken Sie die Eingabetaste. Ein Klick auf die erste Ecke schließt das Grundstück.</translation>
  </message>
  <message>
   <source>Take the tool Sun at a spot (H)</source>
   <translation>Das Werkzeug Sonne an einer Stelle (H) nehmen</translation>
  </message>
  <message>
   <source>Take the tool Sun at a spot (H) and point anywhere on the sheet, or type a place above: its hours, when in the day the sun reaches it, what blocks it, and its year.</source>
   <translation>Nehmen Sie das Werkzeug Sonne an einer Stelle (H) und zeigen Sie irgendwo auf das Blatt, oder geben Sie oben einen Ort ein: seine Stunden, wann am Tag ihn die Sonne erreicht, was sie verdeckt, und sein Jahr.</translation>
  </message>
  <message>
   <source>Take up the unsaved work on {name} of {when}?</source>
   <translation>Die nicht gespeicherte Arbeit an {name} vom {when} wieder aufnehmen?</translation>
  </message>
  <message>
   <source>Taken by</source>
   <translation>Genommen von</translation>
  </message>
  <message>
   <source>Taken for {place}</source>
   <translation>Verstanden als {place}</translation>
  </message>
  <message>
   <source>Taller season strip</source>
   <translation>Jahresstreifen höher</translation>
  </message>
  <message>
   <source>Tape</source>
   <translation>Maßband</translation>
  </message>
  <message>
   <source>Te&amp;xt size</source>
   <translation>Sc&amp;hriftgröße</translation>
  </message>
  <message>
   <source>Terrace</source>
   <translation>Terrasse</translation>
  </message>
  <message>
   <source>Text changes its size when yardplan is started again.</source>
   <translation>Die Schrift ändert ihre Größe beim nächsten Start von yardplan.</translation>
  </message>
  <message>
   <source>Texture</source>
   <translation>Bodenart</translation>
  </message>
  <message>
   <source>That was the whole round</source>
   <translation>Das war die ganze Runde</translation>
  </message>
  <message>
   <source>The autumn day before which only one year in ten has a frost</source>
   <translation>Der Herbsttag, vor dem nur ein Jahr von zehn Frost hat</translation>
  </message>
  <message>
   <source>The autumn day by which half the years have had a frost</source>
   <translation>Der Herbsttag, bis zu dem die Hälfte der Jahre Frost hatte</translation>
  </message>
  <message>
   <source>The calendar was not written: {fault}</source>
   <translation>Der Kalender wurde nicht geschrieben: {fault}</translation>
  </message>
  <message>
   <source>The calls close. {area}, {way} round.</source>
   <translation>Der Linienzug schließt. {area}, Umfang {way}.</translation>
  </message>
  <message>
   <source>The calls miss their beginning by {error}, 1 part in {parts}: this is shared out over the corners by the way walked. {area}, {way} round.</source>
   <translation>Der Linienzug verfehlt seinen Anfang um {error}, 1 Teil auf {parts}: das wird nach der Weglänge auf die Ecken verteilt. {area}, Umfang {way}.</translation>
  </message>
  <message>
   <source>The clock of the yard's time zone, with summer time where it is kept</source>
   <translation>Die Uhr der Zeitzone des Gartens, mit Sommerzeit, wo es sie gibt</translation>
  </message>
  <message>
   <source>The command chosen in the list</source>
   <translation>Der in der Liste gewählte Befehl</translation>
  </message>
  <message>
   <source>The country (in the US with its state) would tell which lot-line law, dig-safe call and rules on currants hold.</source>
   <translation>Das Land (in den USA mit dem Bundesstaat) würde sagen, welches Grenzabstandsrecht, welche Leitungsauskunft und welche Regeln zu Johannisbeeren gelten.</translation>
  </message>
  <message>
   <source>The dots of the grid</source>
   <translation>Die Punkte des Rasters</translation>
  </message>
  <message>
   <source>The drawing is in</source>
   <translation>Die Zeichnung ist in</translation>
  </message>
  <message>
   <source>The drawing that was not finished was given up</source>
   <translation>Die unfertige Zeichnung wurde verworfen</translation>
  </message>
  <message>
   <source>The far end of the edge moves; what is squared stays square</source>
   <translation>Das ferne Ende der Kante bewegt sich; Rechtwinkliges bleibt rechtwinklig</translation>
  </message>
  <message>
   <source>The fewest plants to add so that every plant crops</source>
   <translation>So wenige Pflanzen wie möglich hinzufügen, damit jede trägt</translation>
  </message>
  <message>
   <source>The figures are averages from published tables. They do not know your ground. Before you dig, have buried services marked; for boundaries, heights and sprays the local code and the label decide; near power lines and with big trees, ask a licensed practice.</source>
   <translation>Die Zahlen sind Mittelwerte aus veröffentlichten Tabellen. Sie kennen Ihren Boden nicht. Lassen Sie vor dem Graben erdverlegte Leitungen kennzeichnen; für Grenzen, Höhen und Pflanzenschutz entscheiden die örtlichen Vorschriften und die Gebrauchsanleitung; nahe Stromleitungen und bei großen Bäumen fragen Sie einen Fachbetrieb.</translation>
  </message>
  <message>
   <source>The file does not say its unit: choose the one that gives the right size.</source>
   <translation>Die Datei nennt ihre Einheit nicht: Wählen Sie die, mit der die Größe stimmt.</translation>
  </message>
  <message>
   <source>The first day of the months over which sun hours are averaged</source>
   <translation>Der erste Tag der Monate, über die Sonnenstunden gemittelt werden</translation>
  </message>
  <message>
   <source>The first frost day would tell whether late fruit ripens.</source>
   <translation>Der erste Frosttag würde sagen, ob späte Früchte reif werden.</translation>
  </message>
  <message>
   <source>The first yard step by step, each at its real control</source>
   <translation>Der erste Garten Schritt für Schritt, jeder am richtigen Bedienfeld</translation>
  </message>
  <message>
   <source>The hardiness zone would tell which plants live through the winter.</source>
   <translation>Die Winterhärtezone würde sagen, welche Pflanzen den Winter überstehen.</translation>
  </message>
  <message>
   <source>The height above the sea would tell how far bloom lies behind or before the station it is counted from.</source>
   <translation>Die Höhe über dem Meer würde sagen, wie weit die Blüte der Station nachläuft oder vorausgeht.</translation>
  </message>
  <message>
   <source>The hours that each thing takes from the plant selected, marked on the sheet</source>
   <translation>Die Stunden, die jedes Ding der ausgewählten Pflanze nimmt, auf dem Blatt markiert</translation>
  </message>
  <message>
   <source>The language changes when yardplan is started again.</source>
   <translation>Die Sprache wechselt, wenn yardplan neu gestartet wird.</translation>
  </message>
  <message>
   <source>The last day of the months over which sun hours are averaged</source>
   <translation>Der letzte Tag der Monate, über die Sonnenstunden gemittelt werden</translation>
  </message>
  <message>
   <source>The last frost day would tell whether bloom is in danger.</source>
   <translation>Der letzte Frosttag würde sagen, ob die Blüte in Gefahr ist.</translation>
  </message>
  <message>
   <source>The line along which a flat-trained plant spreads, counter-clockwise from the right</source>
   <translation>Die Linie, an der sich eine flach erzogene Pflanze ausbreitet, gegen den Uhrzeigersinn von rechts</translation>
  </message>
  <message>
   <source>The line lies at {latitude} degrees north, {longitude} degrees east, far from this yard's place. Zone, frosts and temperatures stay as they are: check them on the site card.</source>
   <translation>Die Linie liegt bei {latitude} Grad Nord, {longitude} Grad Ost, weit weg vom Ort dieses Gartens. Zone, Frost und Temperaturen bleiben, wie sie sind: Prüfen Sie sie auf der Standortkarte.</translation>
  </message>
  <message>
   <source>The list of all pages</source>
   <translation>Die Liste aller Seiten</translation>
  </message>
  <message>
   <source>The list of all things, in step with the sheet</source>
   <translation>Die Liste aller Dinge, im Gleichschritt mit dem Blatt</translation>
  </message>
  <message>
   <source>The list was not written: {fault}</source>
   <translation>Die Liste wurde nicht geschrieben: {fault}</translation>
  </message>
  <message>
   <source>The lot is drawn. The tool Select moves its corners and lengths; a click here begins it anew</source>
   <translation>Das Grundstück ist gezeichnet. Das Werkzeug Auswählen ändert seine Ecken und Längen; ein Klick hier beginnt es neu</translation>
  </message>
  <message>
   <source>The lot line is that of {file}</source>
   <translation>Die Grundstücksgrenze ist die aus {file}</translation>
  </message>
  <message>
   <source>The lot line stays: drag its corners, or draw it anew with the tool Lot line</source>
   <translation>Die Grundstücksgrenze bleibt: ziehen Sie ihre Ecken, oder zeichnen Sie sie neu mit dem Werkzeug Grundstücksgrenze</translation>
  </message>
  <message>
   <source>The name it has in the list</source>
   <translation>Der Name, den sie in der Liste hat</translation>
  </message>
  <message>
   <source>The page after (Alt+Right)</source>
   <translation>Die nächste Seite (Alt+Rechts)</translation>
  </message>
  <message>
   <source>The page before (Alt+Left)</source>
   <translation>Die vorige Seite (Alt+Links)</translation>
  </message>
  <message>
   <source>The page for what has the focus or for the chosen tool</source>
   <translation>Die Seite zu dem, was den Fokus hat, oder zum gewählten Werkzeug</translation>
  </message>
  <message>
   <source>The picture is {width} wide; lock it before you draw over it</source>
   <translation>Das Bild ist {width} breit; sperren Sie es, bevor Sie darüber zeichnen</translation>
  </message>
  <message>
   <source>The picture was not put under the plan</source>
   <translation>Das Bild wurde nicht unter den Plan gelegt</translation>
  </message>
  <message>
   <source>The plan gets a name and stays in the yard's file, to go back to or to compare</source>
   <translation>Der Plan bekommt einen Namen und bleibt in der Gartendatei, zum Zurückgehen oder Vergleichen</translation>
  </message>
  <message>
   <source>The plan now</source>
   <translation>Der Plan jetzt</translation>
  </message>
  <message>
   <source>The plan to scale and its lists, on paper or as a file</source>
   <translation>Der Plan im Maßstab und seine Listen, auf Papier oder als Datei</translation>
  </message>
  <message>
   <source>The program ended before it was saved. The file itself is unchanged.</source>
   <translation>Das Programm endete, bevor sie gespeichert war. Die Datei selbst ist unverändert.</translation>
  </message>
  <message>
   <source>The share of light that passes its crown</source>
   <translation>Der Anteil des Lichts, der durch die Krone geht</translation>
  </message>
  <message>
   <source>The share of light that passes: 0 % a wall, about half a slatted fence</source>
   <translation>Der Anteil des Lichts, der durchgeht: 0 % eine Mauer, etwa die Hälfte ein Lattenzaun</translation>
  </message>
  <message>
   <source>The slope (0 where it is level) would tell where cold air gathers and how much sun the ground gets.</source>
   <translation>Die Hangneigung (0, wo es eben ist) würde sagen, wo sich Kaltluft sammelt und wie viel Sonne der Boden bekommt.</translation>
  </message>
  <message>
   <source>The soil's pH would tell which fruits grow well, and what to add for the rest.</source>
   <translation>Der pH-Wert des Bodens würde sagen, welche Früchte gut wachsen und was für die übrigen zu tun ist.</translation>
  </message>
  <message>
   <source>The soil's texture would tell how much sulfur or lime it takes.</source>
   <translation>Die Bodenart würde sagen, wie viel Schwefel oder Kalk es braucht.</translation>
  </message>
  <message>
   <source>The spring day after which half the years have no frost</source>
   <translation>Der Frühlingstag, nach dem die Hälfte der Jahre keinen Frost mehr hat</translation>
  </message>
  <message>
   <source>The spring day after which only one year in ten has a frost</source>
   <translation>Der Frühlingstag, nach dem nur ein Jahr von zehn noch Frost hat</translation>
  </message>
  <message>
   <source>The tape reads lengths; to draw by typed lengths take a drawing tool</source>
   <translation>Das Maßband liest Längen; um nach eingegebenen Längen zu zeichnen, nehmen Sie ein Zeichenwerkzeug</translation>
  </message>
  <message>
   <source>The things of the group are picked one by one again</source>
   <translation>Die Dinge der Gruppe werden wieder einzeln gewählt</translation>
  </message>
  <message>
   <source>The work of this year and the next for any calendar program</source>
   <translation>Die Arbeiten dieses und des nächsten Jahres für jedes Kalenderprogramm</translation>
  </message>
  <message>
   <source>The yard</source>
   <translation>Der Garten</translation>
  </message>
  <message>
   <source>The yard is not saved; Save as puts it in another place</source>
   <translation>Der Garten ist nicht gespeichert; Speichern unter legt ihn an einen anderen Ort</translation>
  </message>
  <message>
   <source>The year of planting; left empty, the plant counts as planted now</source>
   <translation>Das Pflanzjahr; bleibt es leer, gilt die Pflanze als jetzt gepflanzt</translation>
  </message>
  <message numerus="yes">
   <source>The {n} plants in it need {volume} or more.</source>
   <translation>
    <numerusform>Die {n} Pflanze darin braucht {volume} oder mehr.</numerusform>
    <numerusform>Die {n} Pflanzen darin brauchen {volume} oder mehr.</numerusform>
   </translation>
  </message>
  <message>
   <source>There is a group called {name} already</source>
   <translation>Eine Gruppe namens {name} gibt es schon</translation>
  </message>
  <message>
   <source>There is no clear place for {name} on this lot</source>
   <translation>Für {name} gibt es auf diesem Grundstück keinen freien Platz</translation>
  </message>
  <message>
   <source>There is no picture under the plan yet</source>
   <translation>Unter dem Plan liegt noch kein Bild</translation>
  </message>
  <message>
   <source>They decide bloom, winter chill and whether fruit ripens.</source>
   <translation>Sie entscheiden über Blüte, Winterkälte und ob Früchte reif werden.</translation>
  </message>
  <message>
   <source>They travel inside this yard's file.</source>
   <translation>Sie werden in der Gartendatei mitgeführt.</translation>
  </message>
  <message>
   <source>Thickness</source>
   <translation>Stärke</translation>
  </message>
  <message>
   <source>This gate stands in no fence, wall or lot line: drag it there</source>
   <translation>Dieses Tor steht in keinem Zaun, keiner Mauer und keiner Grundstücksgrenze: ziehen Sie es dorthin</translation>
  </message>
  <message>
   <source>This is locked: unlock it in its fields to move it</source>
   <translation>Dies ist gesperrt: in den Feldern entsperren, um es zu verschieben</translation>
  </message>
  <message>
   <source>This line cannot be a lot line: {why}</source>
   <translation>Diese Linie kann keine Grundstücksgrenze sein: {why}</translation>
  </message>
  <message>
   <source>This picture is locked: unlock it in its fields to set it to scale</source>
   <translation>Dieses Bild ist gesperrt: Entsperren Sie es in seinen Feldern, um es auf Maßstab zu bringen</translation>
  </message>
  <message>
   <source>This plan is kept as {name}</source>
   <translation>Dieser Plan ist als {name} behalten</translation>
  </message>
  <message>
   <source>This position</source>
   <translation>Diese Stelle</translation>
  </message>
  <message>
   <source>This program uses Qt {version} through PySide6, under the GNU Lesser General Public License, version 3. Qt is a library of its own that you may replace: it is installed beside this program as the package PySide6-Essentials, whose folder holds the licence texts; its source code is at https://code.qt.io.</source>
   <translation>Dieses Programm verwendet Qt {version} über PySide6 unter der GNU Lesser General Public License, Version 3. Qt ist eine eigene Bibliothek, die Sie austauschen können: Sie ist neben diesem Programm als Paket PySide6-Essentials installiert, dessen Ordner die Lizenztexte enthält; ihr Quelltext steht unter https://code.qt.io.</translation>
  </message>
  <message>
   <source>This zone is estimated from monthly temperatures and may be one off.</source>
   <translation>Diese Zone ist aus Monatstemperaturen geschätzt und kann um eine danebenliegen.</translation>
  </message>
  <message>
   <source>Thornless</source>
   <translation>Dornenlos</translation>
  </message>
  <message>
   <source>Through a typed point, in a typed direction</source>
   <translation>Durch einen getippten Punkt in einer getippten Richtung</translation>
  </message>
  <message>
   <source>Tick the plans to compare.</source>
   <translation>Kreuzen Sie die Pläne an, die verglichen werden sollen.</translation>
  </message>
  <message>
   <source>Tick two or more plans to see what differs; keep this plan to have one to compare.</source>
   <translation>Kreuzen Sie zwei oder mehr Pläne an, um Unterschiede zu sehen; behalten Sie diesen Plan, um einen zum Vergleichen zu haben.</translation>
  </message>
  <message>
   <source>Time zone</source>
   <translation>Zeitzone</translation>
  </message>
  <message>
   <source>To be put right first: {fields}.</source>
   <translation>Zuerst zu berichtigen: {fields}.</translation>
  </message>
  <message>
   <source>Tones and lines of equal hours over the whole lot, with a legend</source>
   <translation>Töne und Linien gleicher Stunden über dem ganzen Grundstück, mit Legende</translation>
  </message>
  <message>
   <source>Tools</source>
   <translation>Werkzeuge</translation>
  </message>
  <message>
   <source>Total {total}</source>
   <translation>Summe {total}</translation>
  </message>
  <message numerus="yes">
   <source>Total {total}, {n} lines without a price</source>
   <translation>
    <numerusform>Summe {total}, {n} Zeile ohne Preis</numerusform>
    <numerusform>Summe {total}, {n} Zeilen ohne Preis</numerusform>
   </translation>
  </message>
  <message>
   <source>Turn a quarter left</source>
   <translation>Vierteldrehung nach links</translation>
  </message>
  <message>
   <source>Turn a quarter right</source>
   <translation>Vierteldrehung nach rechts</translation>
  </message>
  <message>
   <source>Turn by how many degrees, to the left? About a point: 45 @ 4; 2.5</source>
   <translation>Um wie viele Grad nach links drehen? Um einen Punkt: 45 @ 4; 2,5</translation>
  </message>
  <message>
   <source>Turn by…</source>
   <translation>Drehen um…</translation>
  </message>
  <message>
   <source>Turn {things}</source>
   <translation>{things} drehen</translation>
  </message>
  <message>
   <source>Turned</source>
   <translation>Gedreht</translation>
  </message>
  <message>
   <source>Turned by {degrees} degrees; {outcome}</source>
   <translation>Um {degrees} Grad gedreht; {outcome}</translation>
  </message>
  <message>
   <source>Type</source>
   <translation>Typ</translation>
  </message>
  <message>
   <source>Type a kind or a variety and press Enter: it is in hand. Click on the sheet where it shall stand; green hatch is clear ground. Plant two or more.</source>
   <translation>Geben Sie eine Art oder Sorte ein und drücken Sie die Eingabetaste: Sie ist in der Hand. Klicken Sie auf das Blatt, wo sie stehen soll; grüne Schraffur ist freie Fläche. Pflanzen Sie zwei oder mehr.</translation>
  </message>
  <message>
   <source>Type how far apart the two places are, for example 12.5 m; click to begin anew</source>
   <translation>Eingeben, wie weit die zwei Stellen auseinanderliegen, zum Beispiel 12,5 m; ein Klick beginnt neu</translation>
  </message>
  <message>
   <source>Type its width and depth and press Begin. Another outline can be drawn later with the tool Lot line: click the corners, or type each length.</source>
   <translation>Geben Sie Breite und Tiefe ein und drücken Sie Beginnen. Ein anderer Umriss lässt sich später mit dem Werkzeug Grundstücksgrenze zeichnen: Ecken anklicken oder jede Länge eingeben.</translation>
  </message>
  <message>
   <source>Type one length, a length with an angle, or a place</source>
   <translation>Geben Sie eine Länge, eine Länge mit Winkel oder einen Ort ein</translation>
  </message>
  <message>
   <source>Type over the lengths of what is selected; a click on a length does it too</source>
   <translation>Die Längen des Ausgewählten überschreiben; ein Klick auf eine Länge tut es auch</translation>
  </message>
  <message>
   <source>Type the place of a corner, such as 4; 2.5, or width and depth from the first</source>
   <translation>Tippen Sie den Ort einer Ecke, etwa 4; 2,5, oder Breite und Tiefe ab der ersten</translation>
  </message>
  <message>
   <source>Type the spot as x; y, for example 4; 2.5</source>
   <translation>Geben Sie die Stelle als x; y ein, zum Beispiel 4; 2,5</translation>
  </message>
  <message>
   <source>Type the town, a US ZIP code, or latitude and longitude, then press Enter. Winter cold, frost days and the height of the sun follow from it.</source>
   <translation>Geben Sie die Stadt, eine US-Postleitzahl oder Breite und Länge ein und drücken Sie die Eingabetaste. Winterkälte, Frosttage und Sonnenstand ergeben sich daraus.</translation>
  </message>
  <message>
   <source>Type what you want to do</source>
   <translation>Eingeben, was Sie tun möchten</translation>
  </message>
  <message>
   <source>Type: Yardplan Sans, a modified Inter, under the SIL Open Font License 1.1 (text in the program's resources, fonts/OFL.txt).</source>
   <translation>Schrift: Yardplan Sans, eine veränderte Inter, unter der SIL Open Font License 1.1 (Text in den Dateien des Programms, fonts/OFL.txt).</translation>
  </message>
  <message>
   <source>Typed in: {facts}</source>
   <translation>Eingegeben: {facts}</translation>
  </message>
  <message>
   <source>USDA zone</source>
   <translation>USDA-Zone</translation>
  </message>
  <message>
   <source>USDA zone: tells the mean of each winter's lowest temperature, and so which plants live</source>
   <translation>USDA-Zone: sagt das Mittel der tiefsten Temperaturen der Winter, und damit, welche Pflanzen überleben</translation>
  </message>
  <message>
   <source>Undo</source>
   <translation>Rückgängig</translation>
  </message>
  <message>
   <source>Undo brings it back</source>
   <translation>Rückgängig holt sie zurück</translation>
  </message>
  <message>
   <source>Undone: {step}</source>
   <translation>Rückgängig gemacht: {step}</translation>
  </message>
  <message>
   <source>Ungroup {things}</source>
   <translation>Gruppierung von {things} aufheben</translation>
  </message>
  <message>
   <source>Unit</source>
   <translation>Einheit</translation>
  </message>
  <message>
   <source>Unit of the drawing</source>
   <translation>Einheit der Zeichnung</translation>
  </message>
  <message>
   <source>Unloc&amp;k</source>
   <translation>En&amp;tsperren</translation>
  </message>
  <message>
   <source>Unlock {things}</source>
   <translation>{things} entsperren</translation>
  </message>
  <message>
   <source>Use as lot line</source>
   <translation>Als Grundstücksgrenze verwenden</translation>
  </message>
  <message>
   <source>Use these facts</source>
   <translation>Diese Angaben verwenden</translation>
  </message>
  <message>
   <source>Usual form</source>
   <translation>Übliche Form</translation>
  </message>
  <message>
   <source>Variants of the plan</source>
   <translation>Varianten des Plans</translation>
  </message>
  <message>
   <source>Varieties of the catalogue</source>
   <translation>Sorten des Katalogs</translation>
  </message>
  <message>
   <source>Varieties that can live in a container</source>
   <translation>Sorten, die im Kübel leben können</translation>
  </message>
  <message>
   <source>Varieties that live through the site's winters; needs the site's zone</source>
   <translation>Sorten, die die Winter des Standorts überstehen; braucht die Zone des Standorts</translation>
  </message>
  <message>
   <source>Varieties that set fruit by themselves</source>
   <translation>Sorten, die selbstfruchtbar sind</translation>
  </message>
  <message>
   <source>Varieties that would set fruit</source>
   <translation>Sorten, die befruchten würden</translation>
  </message>
  <message>
   <source>Varieties that would set fruit on it</source>
   <translation>Sorten, die sie befruchten würden</translation>
  </message>
  <message>
   <source>Varieties that would set fruit on the plant selected or in hand</source>
   <translation>Sorten, die die ausgewählte Pflanze oder die in der Hand befruchten würden</translation>
  </message>
  <message>
   <source>Varieties whose winter chill the site gives; needs its monthly means</source>
   <translation>Sorten, deren Kältebedarf der Standort deckt; braucht seine Monatsmittel</translation>
  </message>
  <message>
   <source>Variety</source>
   <translation>Sorte</translation>
  </message>
  <message>
   <source>Variety seen in bloom</source>
   <translation>Blühend gesehene Sorte</translation>
  </message>
  <message>
   <source>Variety to edit</source>
   <translation>Sorte bearbeiten</translation>
  </message>
  <message>
   <source>View</source>
   <translation>Ansicht</translation>
  </message>
  <message>
   <source>Volume</source>
   <translation>Volumen</translation>
  </message>
  <message>
   <source>W</source>
   <translation>W</translation>
  </message>
  <message>
   <source>Wall, fence</source>
   <translation>Mauer, Zaun</translation>
  </message>
  <message>
   <source>Warmest zone</source>
   <translation>Wärmste Zone</translation>
  </message>
  <message>
   <source>Watered</source>
   <translation>Bewässert</translation>
  </message>
  <message>
   <source>Way width</source>
   <translation>Wegbreite</translation>
  </message>
  <message>
   <source>West is negative</source>
   <translation>Westen ist negativ</translation>
  </message>
  <message>
   <source>What</source>
   <translation>Was</translation>
  </message>
  <message>
   <source>What clears it: {clears}</source>
   <translation>Abhilfe: {clears}</translation>
  </message>
  <message>
   <source>What differs is set in bold. All plans are judged at the year shown.</source>
   <translation>Unterschiede sind fett. Alle Pläne werden im gezeigten Jahr beurteilt.</translation>
  </message>
  <message>
   <source>What do you want to do?</source>
   <translation>Was möchten Sie tun?</translation>
  </message>
  <message>
   <source>What is known of the task</source>
   <translation>Was von der Arbeit bekannt ist</translation>
  </message>
  <message>
   <source>What is picked when and how much, gluts and gaps, the first ten years</source>
   <translation>Was wann und wie viel gepflückt wird, Fülle und Lücken, die ersten zehn Jahre</translation>
  </message>
  <message>
   <source>What is selected follows the pointer until you click or type a place</source>
   <translation>Das Ausgewählte folgt dem Zeiger, bis Sie klicken oder einen Ort eingeben</translation>
  </message>
  <message>
   <source>What is selected is picked, moved, turned, copied and deleted together; a double click picks one member</source>
   <translation>Das Ausgewählte wird zusammen gewählt, verschoben, gedreht, kopiert und gelöscht; ein Doppelklick wählt ein einzelnes Mitglied</translation>
  </message>
  <message>
   <source>What is this group called?</source>
   <translation>Wie heißt diese Gruppe?</translation>
  </message>
  <message>
   <source>What is this variant called?</source>
   <translation>Wie heißt diese Variante?</translation>
  </message>
  <message>
   <source>What it does</source>
   <translation>Was er tut</translation>
  </message>
  <message>
   <source>What lies in an area, by two clicks or typed corners</source>
   <translation>Was in einer Fläche liegt, mit zwei Klicks oder getippten Ecken</translation>
  </message>
  <message>
   <source>What planting &amp;takes</source>
   <translation>&amp;Was die Pflanzung nimmt</translation>
  </message>
  <message>
   <source>What stood on this spot, with its last year: tomato 2024; apple. It tells of wilt left in the ground and of the same fruit in the same hole</source>
   <translation>Was an dieser Stelle stand, mit dem letzten Jahr: Tomate 2024; Apfel. Daraus folgen Welke im Boden und dieselbe Frucht im selben Loch</translation>
  </message>
  <message>
   <source>What the &amp;whole yard lacks</source>
   <translation>Was dem ganzen Garten &amp;fehlt</translation>
  </message>
  <message>
   <source>What the whole yard lacks</source>
   <translation>Was dem ganzen Garten fehlt</translation>
  </message>
  <message>
   <source>What to buy</source>
   <translation>Was zu kaufen ist</translation>
  </message>
  <message>
   <source>What you do not save is lost.</source>
   <translation>Was Sie nicht speichern, geht verloren.</translation>
  </message>
  <message>
   <source>When it ripens</source>
   <translation>Wann sie reift</translation>
  </message>
  <message>
   <source>Where is the yard?</source>
   <translation>Wo liegt der Garten?</translation>
  </message>
  <message>
   <source>Where no planting year is given, work of all ages is listed and says for which years it is; year 1 is the planting year.</source>
   <translation>Wo kein Pflanzjahr angegeben ist, steht die Arbeit jeden Alters in der Liste und sagt, für welche Jahre sie gilt; Jahr 1 ist das Pflanzjahr.</translation>
  </message>
  <message>
   <source>Where the facts come from</source>
   <translation>Woher die Angaben stammen</translation>
  </message>
  <message>
   <source>Where the slope falls to would tell how much sun it gets, and on which side of a fence cold air stands.</source>
   <translation>Wohin der Hang fällt, würde sagen, wie viel Sonne er bekommt und auf welcher Seite eines Zauns Kaltluft steht.</translation>
  </message>
  <message>
   <source>Where the yard lies would tell how high the sun stands and when things bloom: until then both are reckoned for 45° north.</source>
   <translation>Wo der Garten liegt, würde zeigen, wie hoch die Sonne steht und wann etwas blüht: Bis dahin wird beides für 45° Nord gerechnet.</translation>
  </message>
  <message>
   <source>Where your adviser or the law gives another figure, type it under Here: it wins.</source>
   <translation>Gibt Ihre Beratung oder das Gesetz einen anderen Wert vor, geben Sie ihn unter „Hier“ ein: Er gilt dann.</translation>
  </message>
  <message>
   <source>Whether it is watered would tell if berries with shallow roots last through dry weeks.</source>
   <translation>Ob bewässert wird, würde sagen, ob flach wurzelnde Beeren trockene Wochen überstehen.</translation>
  </message>
  <message>
   <source>Which page of {pages} holds the picture?</source>
   <translation>Welche der {pages} Seiten enthält das Bild?</translation>
  </message>
  <message>
   <source>Who sets fruit on the plant selected or dragged. Whole: sets; dashed: not proved; dotted: weak or far; arrow: one way only</source>
   <translation>Wer die ausgewählte oder gezogene Pflanze befruchtet. Durchgezogen: befruchtet; gestrichelt: nicht belegt; gepunktet: schwach oder weit weg; Pfeil: nur in eine Richtung</translation>
  </message>
  <message>
   <source>Who takes its light</source>
   <translation>Wer ihr Licht nimmt</translation>
  </message>
  <message>
   <source>Who takes its light, hours a day</source>
   <translation>Wer ihr Licht nimmt, Stunden am Tag</translation>
  </message>
  <message>
   <source>Whole year</source>
   <translation>Ganzes Jahr</translation>
  </message>
  <message>
   <source>Why</source>
   <translation>Warum</translation>
  </message>
  <message>
   <source>Wider panels beside the sheet</source>
   <translation>Felder neben dem Blatt breiter</translation>
  </message>
  <message>
   <source>Width</source>
   <translation>Breite</translation>
  </message>
  <message>
   <source>Width, left to right</source>
   <translation>Breite, von links nach rechts</translation>
  </message>
  <message>
   <source>Wildlife</source>
   <translation>Tierwelt</translation>
  </message>
  <message>
   <source>Winter</source>
   <translation>Winter</translation>
  </message>
  <message>
   <source>Winter and frost</source>
   <translation>Winter und Frost</translation>
  </message>
  <message>
   <source>Winter chill</source>
   <translation>Winterkälte</translation>
  </message>
  <message>
   <source>Winter chill, h</source>
   <translation>Winterkälte, h</translation>
  </message>
  <message>
   <source>Winters are too mild here to reckon bloom: enter a bloom day you have seen (site card).</source>
   <translation>Die Winter sind hier zu mild, um die Blüte zu berechnen: Geben Sie einen gesehenen Blühtag ein (Standortkarte).</translation>
  </message>
  <message>
   <source>With everything on the plan, at the growth year chosen</source>
   <translation>Mit allem auf dem Plan, im gewählten Wachstumsjahr</translation>
  </message>
  <message>
   <source>With only what stands there already: houses, fences, trees that were there</source>
   <translation>Nur mit dem, was schon da ist: Häuser, Zäune, alte Bäume</translation>
  </message>
  <message>
   <source>Within {distance} of {plants}</source>
   <translation>Höchstens {distance} von {plants}</translation>
  </message>
  <message>
   <source>Words</source>
   <translation>Text</translation>
  </message>
  <message>
   <source>Words on the plan</source>
   <translation>Text auf dem Plan</translation>
  </message>
  <message>
   <source>Work by date for every plant, with marks for what is done</source>
   <translation>Arbeiten nach Datum für jede Pflanze, mit Häkchen für Erledigtes</translation>
  </message>
  <message>
   <source>Work of the year</source>
   <translation>Arbeiten des Jahres</translation>
  </message>
  <message>
   <source>Worked depth</source>
   <translation>Bearbeitete Tiefe</translation>
  </message>
  <message>
   <source>Working out light, partners and findings…</source>
   <translation>Licht, Befruchter und Befunde werden berechnet…</translation>
  </message>
  <message>
   <source>Write note</source>
   <translation>Notiz schreiben</translation>
  </message>
  <message>
   <source>Write on the plan</source>
   <translation>Auf den Plan schreiben</translation>
  </message>
  <message>
   <source>Write the yard to another file</source>
   <translation>Den Garten in eine andere Datei schreiben</translation>
  </message>
  <message>
   <source>Write the yard to its file</source>
   <translation>Den Garten in seine Datei schreiben</translation>
  </message>
  <message>
   <source>Written: {file}</source>
   <translation>Geschrieben: {file}</translation>
  </message>
  <message>
   <source>Written: {file}. The yard has no place yet, so the map shows it at 45 degrees north, 0 degrees east: give its place on the site card.</source>
   <translation>Geschrieben: {file}. Der Garten hat noch keinen Ort, die Karte zeigt ihn deshalb bei 45 Grad Nord, 0 Grad Ost: Geben Sie seinen Ort auf der Standortkarte an.</translation>
  </message>
  <message>
   <source>Written: {name}</source>
   <translation>Geschrieben: {name}</translation>
  </message>
  <message numerus="yes">
   <source>Written: {name} and {n} more</source>
   <translation>
    <numerusform>Geschrieben: {name} und {n} weitere</numerusform>
    <numerusform>Geschrieben: {name} und {n} weitere</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>Written: {name}, {n} tasks.</source>
   <translation>
    <numerusform>Geschrieben: {name}, {n} Arbeit.</numerusform>
    <numerusform>Geschrieben: {name}, {n} Arbeiten.</numerusform>
   </translation>
  </message>
  <message>
   <source>Yards (*.yard);;All files (*)</source>
   <translation>Gärten (*.yard);;Alle Dateien (*)</translation>
  </message>
  <message>
   <source>Year of care and harvest</source>
   <translation>Jahr für Pflege und Ernte</translation>
  </message>
  <message>
   <source>Years since planting; at the right end everything is at full size</source>
   <translation>Jahre seit der Pflanzung; ganz rechts hat alles die volle Größe</translation>
  </message>
  <message>
   <source>You know it from</source>
   <translation>Woher Sie es wissen</translation>
  </message>
  <message>
   <source>Your own figure for full size; left empty, the catalogue's is used</source>
   <translation>Ihr eigener Wert für die volle Größe; bleibt er leer, gilt der des Katalogs</translation>
  </message>
  <message>
   <source>Zoom &amp;in</source>
   <translation>Ver&amp;größern</translation>
  </message>
  <message>
   <source>Zoom &amp;out</source>
   <translation>Ver&amp;kleinern</translation>
  </message>
  <message>
   <source>a day is needed</source>
   <translation>ein Tag wird gebraucht</translation>
  </message>
  <message>
   <source>a kind has {most} letters at most</source>
   <translation>eine Art hat höchstens {most} Buchstaben</translation>
  </message>
  <message>
   <source>a kind is needed here</source>
   <translation>hier wird eine Art gebraucht</translation>
  </message>
  <message>
   <source>a name is needed here</source>
   <translation>hier wird ein Name gebraucht</translation>
  </message>
  <message>
   <source>a named variety</source>
   <translation>eine benannte Sorte</translation>
  </message>
  <message>
   <source>a new one</source>
   <translation>eine neue</translation>
  </message>
  <message>
   <source>a seedling</source>
   <translation>ein Sämling</translation>
  </message>
  <message>
   <source>a sport of {parent}, whose facts are shown</source>
   <translation>eine Mutante von {parent}, deren Angaben gezeigt werden</translation>
  </message>
  <message>
   <source>a value is needed here</source>
   <translation>hier wird ein Wert gebraucht</translation>
  </message>
  <message>
   <source>a variety is needed</source>
   <translation>eine Sorte wird gebraucht</translation>
  </message>
  <message>
   <source>a wild thicket</source>
   <translation>ein wildes Dickicht</translation>
  </message>
  <message>
   <source>about zone {zone}</source>
   <translation>etwa Zone {zone}</translation>
  </message>
  <message>
   <source>about {days}</source>
   <translation>etwa {days}</translation>
  </message>
  <message>
   <source>about {hours} hours</source>
   <translation>etwa {hours} Stunden</translation>
  </message>
  <message>
   <source>about {wide} wide, {tall} tall</source>
   <translation>etwa {wide} breit, {tall} hoch</translation>
  </message>
  <message>
   <source>about {wide} wide, {tall} tall in year {year}; {full_wide} wide, {full_tall} tall at full size</source>
   <translation>etwa {wide} breit, {tall} hoch im Jahr {year}; {full_wide} breit, {full_tall} hoch in voller Größe</translation>
  </message>
  <message>
   <source>about {zone}, estimated</source>
   <translation>etwa {zone}, geschätzt</translation>
  </message>
  <message>
   <source>acidifying</source>
   <translation>Ansäuern</translation>
  </message>
  <message>
   <source>advice</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <source>all of it</source>
   <translation>ganz</translation>
  </message>
  <message>
   <source>all round it</source>
   <translation>ringsum</translation>
  </message>
  <message>
   <source>all work</source>
   <translation>alle Arbeiten</translation>
  </message>
  <message numerus="yes">
   <source>and {n} more in the list</source>
   <translation>
    <numerusform>und {n} weiterer in der Liste</numerusform>
    <numerusform>und {n} weitere in der Liste</numerusform>
   </translation>
  </message>
  <message>
   <source>another variety</source>
   <translation>eine andere Sorte</translation>
  </message>
  <message>
   <source>any ripening</source>
   <translation>Reife beliebig</translation>
  </message>
  <message>
   <source>as the file says</source>
   <translation>wie in der Datei angegeben</translation>
  </message>
  <message>
   <source>as they do best</source>
   <translation>wie sie am besten gedeihen</translation>
  </message>
  <message>
   <source>at</source>
   <translation>um</translation>
  </message>
  <message>
   <source>at or under 45 °F</source>
   <translation>bis 45 °F</translation>
  </message>
  <message>
   <source>at or under 7 °C</source>
   <translation>bis 7 °C</translation>
  </message>
  <message>
   <source>at planting</source>
   <translation>bei der Pflanzung</translation>
  </message>
  <message>
   <source>bed</source>
   <translation>Beet</translation>
  </message>
  <message>
   <source>before 10 by the sun {hours} h</source>
   <translation>vor 10 Uhr Sonnenzeit {hours} h</translation>
  </message>
  <message>
   <source>before 10 by the sun, {season}</source>
   <translation>vor 10 Uhr Sonnenzeit, {season}</translation>
  </message>
  <message>
   <source>before planting</source>
   <translation>vor der Pflanzung</translation>
  </message>
  <message>
   <source>being computed</source>
   <translation>wird berechnet</translation>
  </message>
  <message>
   <source>being computed again</source>
   <translation>wird neu berechnet</translation>
  </message>
  <message>
   <source>being refined, {share}</source>
   <translation>wird verfeinert, {share}</translation>
  </message>
  <message>
   <source>being worked out, {share}</source>
   <translation>wird berechnet, {share}</translation>
  </message>
  <message>
   <source>best fit</source>
   <translation>passend</translation>
  </message>
  <message>
   <source>better with a partner</source>
   <translation>mit Befruchter besser</translation>
  </message>
  <message>
   <source>building</source>
   <translation>Gebäude</translation>
  </message>
  <message>
   <source>by its kind</source>
   <translation>nach seiner Art</translation>
  </message>
  <message>
   <source>by longitude</source>
   <translation>nach Längengrad</translation>
  </message>
  <message>
   <source>by the catalogue</source>
   <translation>laut Katalog</translation>
  </message>
  <message>
   <source>caution</source>
   <translation>Warnung</translation>
  </message>
  <message>
   <source>centimetres</source>
   <translation>Zentimeter</translation>
  </message>
  <message>
   <source>centre</source>
   <translation>Mitte</translation>
  </message>
  <message>
   <source>changed</source>
   <translation>geändert</translation>
  </message>
  <message>
   <source>circle</source>
   <translation>Kreis</translation>
  </message>
  <message>
   <source>clay</source>
   <translation>Ton</translation>
  </message>
  <message>
   <source>clay loam</source>
   <translation>toniger Lehm</translation>
  </message>
  <message>
   <source>clear of {things}</source>
   <translation>frei von {things}</translation>
  </message>
  <message>
   <source>clear sky assumed</source>
   <translation>klarer Himmel angenommen</translation>
  </message>
  <message>
   <source>cleared</source>
   <translation>behoben</translation>
  </message>
  <message>
   <source>colder than {limit}</source>
   <translation>kälter als {limit}</translation>
  </message>
  <message>
   <source>communications</source>
   <translation>Telekommunikation</translation>
  </message>
  <message>
   <source>conflict</source>
   <translation>Konflikt</translation>
  </message>
  <message>
   <source>corner</source>
   <translation>Ecke</translation>
  </message>
  <message>
   <source>cost of those with a price</source>
   <translation>Kosten derer mit Preis</translation>
  </message>
  <message>
   <source>crops alone</source>
   <translation>trägt allein</translation>
  </message>
  <message>
   <source>currency</source>
   <translation>Währung</translation>
  </message>
  <message>
   <source>dates of an average year, about {days} days either way</source>
   <translation>Termine eines mittleren Jahres, etwa {days} Tage früher oder später</translation>
  </message>
  <message>
   <source>dates {basis}</source>
   <translation>Termine {basis}</translation>
  </message>
  <message>
   <source>degree days, about</source>
   <translation>Gradtage, etwa</translation>
  </message>
  <message>
   <source>dimension</source>
   <translation>Maßlinie</translation>
  </message>
  <message>
   <source>does not count</source>
   <translation>zählt nicht</translation>
  </message>
  <message>
   <source>does not set it</source>
   <translation>befruchtet nicht</translation>
  </message>
  <message>
   <source>done</source>
   <translation>erledigt</translation>
  </message>
  <message>
   <source>drain</source>
   <translation>Entwässerung</translation>
  </message>
  <message>
   <source>drive</source>
   <translation>Zufahrt</translation>
  </message>
  <message>
   <source>early</source>
   <translation>früh</translation>
  </message>
  <message>
   <source>early ripening</source>
   <translation>frühe Reife</translation>
  </message>
  <message>
   <source>early-mid</source>
   <translation>mittelfrüh</translation>
  </message>
  <message>
   <source>east</source>
   <translation>Osten</translation>
  </message>
  <message>
   <source>edge</source>
   <translation>Kante</translation>
  </message>
  <message>
   <source>enough</source>
   <translation>genug</translation>
  </message>
  <message>
   <source>equal steps</source>
   <translation>gleiche Abstände</translation>
  </message>
  <message>
   <source>estimated from the months</source>
   <translation>aus den Monaten geschätzt</translation>
  </message>
  <message>
   <source>fair</source>
   <translation>mittel</translation>
  </message>
  <message>
   <source>far too little</source>
   <translation>viel zu wenig</translation>
  </message>
  <message>
   <source>feeding</source>
   <translation>Düngung</translation>
  </message>
  <message>
   <source>feet</source>
   <translation>Fuß</translation>
  </message>
  <message>
   <source>feet and inches</source>
   <translation>Fuß und Zoll</translation>
  </message>
  <message>
   <source>fence</source>
   <translation>Zaun</translation>
  </message>
  <message>
   <source>flat</source>
   <translation>Flachdach</translation>
  </message>
  <message>
   <source>for {plants}</source>
   <translation>für {plants}</translation>
  </message>
  <message>
   <source>four sets (tetraploid)</source>
   <translation>vier Sätze (tetraploid)</translation>
  </message>
  <message>
   <source>from memory</source>
   <translation>aus dem Gedächtnis</translation>
  </message>
  <message>
   <source>from zone {zone}</source>
   <translation>ab Zone {zone}</translation>
  </message>
  <message>
   <source>frost is rare</source>
   <translation>Frost ist selten</translation>
  </message>
  <message>
   <source>frost nights</source>
   <translation>Frostnächte</translation>
  </message>
  <message>
   <source>full bloom, e.g. 2 May</source>
   <translation>Vollblüte, z. B. 2. Mai</translation>
  </message>
  <message>
   <source>full size</source>
   <translation>volle Größe</translation>
  </message>
  <message>
   <source>gable</source>
   <translation>Satteldach</translation>
  </message>
  <message>
   <source>gas</source>
   <translation>Gas</translation>
  </message>
  <message>
   <source>gate</source>
   <translation>Tor</translation>
  </message>
  <message>
   <source>good</source>
   <translation>gut</translation>
  </message>
  <message>
   <source>grid</source>
   <translation>Raster</translation>
  </message>
  <message>
   <source>group</source>
   <translation>Gruppe</translation>
  </message>
  <message>
   <source>h a day</source>
   <translation>h am Tag</translation>
  </message>
  <message>
   <source>h at or under 7 °C (45 °F)</source>
   <translation>h bis 7 °C</translation>
  </message>
  <message>
   <source>hardy</source>
   <translation>winterhart</translation>
  </message>
  <message>
   <source>harvest</source>
   <translation>Ernte</translation>
  </message>
  <message>
   <source>hedge</source>
   <translation>Hecke</translation>
  </message>
  <message>
   <source>hip</source>
   <translation>Walmdach</translation>
  </message>
  <message>
   <source>how far?</source>
   <translation>wie weit?</translation>
  </message>
  <message>
   <source>in all</source>
   <translation>zusammen</translation>
  </message>
  <message>
   <source>in bloom {shared}</source>
   <translation>in Blüte {shared}</translation>
  </message>
  <message>
   <source>in hand</source>
   <translation>in der Hand</translation>
  </message>
  <message>
   <source>in line</source>
   <translation>in einer Flucht</translation>
  </message>
  <message>
   <source>in the darkest month at each place</source>
   <translation>im dunkelsten Monat jeder Stelle</translation>
  </message>
  <message>
   <source>inches</source>
   <translation>Zoll</translation>
  </message>
  <message>
   <source>inside</source>
   <translation>innen</translation>
  </message>
  <message>
   <source>irrigation</source>
   <translation>Bewässerung</translation>
  </message>
  <message>
   <source>is partly set in turn</source>
   <translation>gegenseitig teilweise</translation>
  </message>
  <message>
   <source>is probably set in turn</source>
   <translation>wohl gegenseitig</translation>
  </message>
  <message>
   <source>is set in turn</source>
   <translation>gegenseitig</translation>
  </message>
  <message>
   <source>its zone not known</source>
   <translation>ihre Zone nicht bekannt</translation>
  </message>
  <message>
   <source>its {way} side</source>
   <translation>Seite nach {way}</translation>
  </message>
  <message>
   <source>kept {day}</source>
   <translation>behalten am {day}</translation>
  </message>
  <message>
   <source>kg per m²</source>
   <translation>kg je m²</translation>
  </message>
  <message>
   <source>known once it has a place</source>
   <translation>erst am Platz bekannt</translation>
  </message>
  <message>
   <source>last frost about {last}, first about {first}</source>
   <translation>letzter Frost etwa {last}, erster etwa {first}</translation>
  </message>
  <message>
   <source>late</source>
   <translation>spät</translation>
  </message>
  <message>
   <source>late ripening</source>
   <translation>späte Reife</translation>
  </message>
  <message>
   <source>latitude not on Earth</source>
   <translation>Breitengrad nicht auf der Erde</translation>
  </message>
  <message>
   <source>lean-to</source>
   <translation>Pultdach</translation>
  </message>
  <message>
   <source>loam</source>
   <translation>Lehm</translation>
  </message>
  <message>
   <source>loamy sand</source>
   <translation>lehmiger Sand</translation>
  </message>
  <message>
   <source>local time</source>
   <translation>Ortszeit</translation>
  </message>
  <message>
   <source>local, {name}</source>
   <translation>Ortszeit, {name}</translation>
  </message>
  <message>
   <source>looking</source>
   <translation>Kontrolle</translation>
  </message>
  <message>
   <source>lot</source>
   <translation>Grundstück</translation>
  </message>
  <message>
   <source>lot line</source>
   <translation>Grundstücksgrenze</translation>
  </message>
  <message>
   <source>mean, {season}</source>
   <translation>Mittel, {season}</translation>
  </message>
  <message>
   <source>metres</source>
   <translation>Meter</translation>
  </message>
  <message>
   <source>mid</source>
   <translation>mittel</translation>
  </message>
  <message>
   <source>mid ripening</source>
   <translation>mittlere Reife</translation>
  </message>
  <message>
   <source>mid-late</source>
   <translation>mittelspät</translation>
  </message>
  <message>
   <source>middle of the edge</source>
   <translation>Kantenmitte</translation>
  </message>
  <message>
   <source>millimetres</source>
   <translation>Millimeter</translation>
  </message>
  <message>
   <source>monthly temperatures found</source>
   <translation>Monatstemperaturen gefunden</translation>
  </message>
  <message>
   <source>mulching</source>
   <translation>Mulchen</translation>
  </message>
  <message>
   <source>nearest {name}, {distance}</source>
   <translation>am nächsten {name}, {distance}</translation>
  </message>
  <message>
   <source>needs a partner</source>
   <translation>braucht Befruchter</translation>
  </message>
  <message>
   <source>needs a partner of its own</source>
   <translation>braucht selbst einen Befruchter</translation>
  </message>
  <message>
   <source>needs {needed} h a day, likes {liked}</source>
   <translation>braucht {needed} h am Tag, mag {liked}</translation>
  </message>
  <message>
   <source>needs {needed}, likes {liked}</source>
   <translation>braucht {needed}, mag {liked}</translation>
  </message>
  <message>
   <source>netting</source>
   <translation>Netze</translation>
  </message>
  <message>
   <source>no</source>
   <translation>nein</translation>
  </message>
  <message>
   <source>no climate station near: type what you know</source>
   <translation>keine Klimastation in der Nähe: geben Sie ein, was Sie wissen</translation>
  </message>
  <message>
   <source>no conflict</source>
   <translation>kein Konflikt</translation>
  </message>
  <message>
   <source>no conflict is left</source>
   <translation>kein Konflikt bleibt</translation>
  </message>
  <message>
   <source>no figure for its pH</source>
   <translation>kein Wert für ihren pH</translation>
  </message>
  <message>
   <source>no name</source>
   <translation>ohne Namen</translation>
  </message>
  <message>
   <source>no pollen needed</source>
   <translation>kein Pollen nötig</translation>
  </message>
  <message>
   <source>no prices yet</source>
   <translation>noch keine Preise</translation>
  </message>
  <message>
   <source>no wider than…</source>
   <translation>höchstens so breit…</translation>
  </message>
  <message>
   <source>north</source>
   <translation>Norden</translation>
  </message>
  <message>
   <source>north-east</source>
   <translation>Nordosten</translation>
  </message>
  <message>
   <source>north-west</source>
   <translation>Nordwesten</translation>
  </message>
  <message>
   <source>not given</source>
   <translation>nicht angegeben</translation>
  </message>
  <message>
   <source>not known</source>
   <translation>nicht bekannt</translation>
  </message>
  <message>
   <source>not now</source>
   <translation>jetzt nicht</translation>
  </message>
  <message>
   <source>not placed</source>
   <translation>nicht eingeplant</translation>
  </message>
  <message>
   <source>not said</source>
   <translation>nicht angegeben</translation>
  </message>
  <message>
   <source>not saved yet</source>
   <translation>noch nicht gespeichert</translation>
  </message>
  <message>
   <source>not told</source>
   <translation>nicht angegeben</translation>
  </message>
  <message>
   <source>note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>nothing against it</source>
   <translation>nichts spricht dagegen</translation>
  </message>
  <message>
   <source>nothing takes any</source>
   <translation>niemand nimmt etwas</translation>
  </message>
  <message>
   <source>nothing to buy</source>
   <translation>nichts zu kaufen</translation>
  </message>
  <message>
   <source>of no use to others</source>
   <translation>für andere nutzlos</translation>
  </message>
  <message>
   <source>on the day of its kind's reference variety</source>
   <translation>am Tag der Vergleichssorte dieser Art</translation>
  </message>
  <message>
   <source>on the longest day</source>
   <translation>am längsten Tag</translation>
  </message>
  <message>
   <source>on {day}</source>
   <translation>am {day}</translation>
  </message>
  <message>
   <source>only what is to do</source>
   <translation>nur was zu tun ist</translation>
  </message>
  <message>
   <source>open all round</source>
   <translation>rundum offen</translation>
  </message>
  <message>
   <source>organic</source>
   <translation>organisch</translation>
  </message>
  <message>
   <source>other</source>
   <translation>sonstige</translation>
  </message>
  <message>
   <source>other kinds</source>
   <translation>andere Arten</translation>
  </message>
  <message>
   <source>others together</source>
   <translation>andere zusammen</translation>
  </message>
  <message>
   <source>outline</source>
   <translation>Umriss</translation>
  </message>
  <message>
   <source>outside</source>
   <translation>außen</translation>
  </message>
  <message>
   <source>outside its zones</source>
   <translation>außerhalb ihrer Zonen</translation>
  </message>
  <message>
   <source>overhead line</source>
   <translation>Freileitung</translation>
  </message>
  <message>
   <source>pH not known</source>
   <translation>pH nicht bekannt</translation>
  </message>
  <message>
   <source>pale: of before</source>
   <translation>blass: von vorher</translation>
  </message>
  <message>
   <source>pale: of before, being worked out</source>
   <translation>blass: von vorher, wird berechnet</translation>
  </message>
  <message>
   <source>partly</source>
   <translation>teilweise</translation>
  </message>
  <message>
   <source>partly from memory</source>
   <translation>teils aus dem Gedächtnis</translation>
  </message>
  <message>
   <source>partner need not known</source>
   <translation>Bedarf an Befruchtern nicht bekannt</translation>
  </message>
  <message>
   <source>path</source>
   <translation>Weg</translation>
  </message>
  <message>
   <source>paving</source>
   <translation>befestigte Fläche</translation>
  </message>
  <message>
   <source>picture</source>
   <translation>Bild</translation>
  </message>
  <message>
   <source>pipe or cable</source>
   <translation>Rohr oder Kabel</translation>
  </message>
  <message>
   <source>plant</source>
   <translation>Pflanze</translation>
  </message>
  <message>
   <source>planting</source>
   <translation>Pflanzung</translation>
  </message>
  <message>
   <source>pollination not known</source>
   <translation>Befruchtung nicht bekannt</translation>
  </message>
  <message>
   <source>pond</source>
   <translation>Teich</translation>
  </message>
  <message>
   <source>pool</source>
   <translation>Becken</translation>
  </message>
  <message>
   <source>poor</source>
   <translation>schlecht</translation>
  </message>
  <message>
   <source>pot</source>
   <translation>Kübel</translation>
  </message>
  <message>
   <source>power</source>
   <translation>Strom</translation>
  </message>
  <message>
   <source>probably sets it</source>
   <translation>befruchtet wahrscheinlich</translation>
  </message>
  <message>
   <source>protecting</source>
   <translation>Schützen</translation>
  </message>
  <message>
   <source>pruning</source>
   <translation>Schnitt</translation>
  </message>
  <message>
   <source>radius {radius}</source>
   <translation>Radius {radius}</translation>
  </message>
  <message>
   <source>ripens {season}</source>
   <translation>Reife {season}</translation>
  </message>
  <message>
   <source>rounded</source>
   <translation>gerundet</translation>
  </message>
  <message>
   <source>rounded corners</source>
   <translation>gerundete Ecken</translation>
  </message>
  <message>
   <source>row</source>
   <translation>Reihe</translation>
  </message>
  <message>
   <source>rows</source>
   <translation>Reihen</translation>
  </message>
  <message>
   <source>sand</source>
   <translation>Sand</translation>
  </message>
  <message>
   <source>sandy loam</source>
   <translation>sandiger Lehm</translation>
  </message>
  <message>
   <source>septic field</source>
   <translation>Sickerfläche</translation>
  </message>
  <message>
   <source>septic tank</source>
   <translation>Sickergrube</translation>
  </message>
  <message>
   <source>service</source>
   <translation>Leitung</translation>
  </message>
  <message>
   <source>sets fruit by itself</source>
   <translation>selbstfruchtbar</translation>
  </message>
  <message>
   <source>sets it fully</source>
   <translation>befruchtet</translation>
  </message>
  <message>
   <source>sets it partly</source>
   <translation>befruchtet teilweise</translation>
  </message>
  <message>
   <source>several kinds have a {name}: write for example '{example}'</source>
   <translation>mehrere Arten haben eine Sorte {name}: Schreiben Sie zum Beispiel „{example}“</translation>
  </message>
  <message>
   <source>several values</source>
   <translation>mehrere Werte</translation>
  </message>
  <message>
   <source>sewer</source>
   <translation>Abwasser</translation>
  </message>
  <message>
   <source>shade tree, small</source>
   <translation>Laubbaum, klein</translation>
  </message>
  <message>
   <source>share taken {share}</source>
   <translation>angenommener Anteil {share}</translation>
  </message>
  <message>
   <source>side {number}: {length}, facing {way}</source>
   <translation>Seite {number}: {length}, nach {way}</translation>
  </message>
  <message>
   <source>silt loam</source>
   <translation>schluffiger Lehm</translation>
  </message>
  <message>
   <source>six sets (hexaploid)</source>
   <translation>sechs Sätze (hexaploid)</translation>
  </message>
  <message>
   <source>smooth</source>
   <translation>glatt</translation>
  </message>
  <message>
   <source>smooth curve</source>
   <translation>glatte Kurve</translation>
  </message>
  <message>
   <source>south</source>
   <translation>Süden</translation>
  </message>
  <message>
   <source>south-east</source>
   <translation>Südosten</translation>
  </message>
  <message>
   <source>south-west</source>
   <translation>Südwesten</translation>
  </message>
  <message>
   <source>sprays</source>
   <translation>Spritzungen</translation>
  </message>
  <message>
   <source>square</source>
   <translation>Quadrat</translation>
  </message>
  <message>
   <source>square corner</source>
   <translation>rechter Winkel</translation>
  </message>
  <message>
   <source>standing tree</source>
   <translation>Altbaum</translation>
  </message>
  <message>
   <source>step {n} of {all}</source>
   <translation>Schritt {n} von {all}</translation>
  </message>
  <message>
   <source>storing</source>
   <translation>Lagern</translation>
  </message>
  <message>
   <source>straight, with corners</source>
   <translation>gerade, mit Ecken</translation>
  </message>
  <message>
   <source>street</source>
   <translation>Straße</translation>
  </message>
  <message>
   <source>stretch {number}, {length}</source>
   <translation>Abschnitt {number}, {length}</translation>
  </message>
  <message>
   <source>suits {low} to {high}</source>
   <translation>passend {low} bis {high}</translation>
  </message>
  <message>
   <source>sun and sky, {season}</source>
   <translation>Sonne und Himmel, {season}</translation>
  </message>
  <message>
   <source>sun never rises</source>
   <translation>Sonne geht nicht auf</translation>
  </message>
  <message>
   <source>sun never sets</source>
   <translation>Sonne geht nicht unter</translation>
  </message>
  <message>
   <source>sun time</source>
   <translation>Sonnenzeit</translation>
  </message>
  <message>
   <source>sun {rise} to {set}</source>
   <translation>Sonne {rise} bis {set}</translation>
  </message>
  <message>
   <source>sun {share}</source>
   <translation>Sonne {share}</translation>
  </message>
  <message>
   <source>takes {share} of its pollen</source>
   <translation>nimmt {share} von dessen Pollen</translation>
  </message>
  <message>
   <source>terrace</source>
   <translation>Terrasse</translation>
  </message>
  <message>
   <source>the catalogue does not hold it; its facts are not known</source>
   <translation>nicht im Katalog; die Angaben sind nicht bekannt</translation>
  </message>
  <message>
   <source>the catalogue has no '{name}'</source>
   <translation>der Katalog enthält „{name}“ nicht</translation>
  </message>
  <message>
   <source>the clipboard holds damaged text</source>
   <translation>die Zwischenablage enthält beschädigten Text</translation>
  </message>
  <message>
   <source>the crown starts below the top ({height})</source>
   <translation>die Krone beginnt unterhalb der Spitze ({height})</translation>
  </message>
  <message>
   <source>the eaves are not higher than the ridge ({height})</source>
   <translation>die Traufe liegt nicht höher als der First ({height})</translation>
  </message>
  <message>
   <source>the ground</source>
   <translation>der Boden</translation>
  </message>
  <message>
   <source>the longer side</source>
   <translation>die längere Seite</translation>
  </message>
  <message>
   <source>the lot line</source>
   <translation>die Grundstücksgrenze</translation>
  </message>
  <message>
   <source>the ridge is not lower than the eaves ({height})</source>
   <translation>der First liegt nicht tiefer als die Traufe ({height})</translation>
  </message>
  <message>
   <source>the sky line</source>
   <translation>der Horizont</translation>
  </message>
  <message>
   <source>the slope of the ground</source>
   <translation>die Neigung des Bodens</translation>
  </message>
  <message>
   <source>the sun does not rise high enough</source>
   <translation>die Sonne steigt nicht hoch genug</translation>
  </message>
  <message>
   <source>thinning</source>
   <translation>Ausdünnen</translation>
  </message>
  <message>
   <source>three sets (triploid): its pollen is poor</source>
   <translation>drei Sätze (triploid): Der Pollen taugt wenig</translation>
  </message>
  <message>
   <source>tick at least one sheet</source>
   <translation>wählen Sie mindestens ein Blatt</translation>
  </message>
  <message>
   <source>to do</source>
   <translation>zu tun</translation>
  </message>
  <message>
   <source>to zone {zone}</source>
   <translation>bis Zone {zone}</translation>
  </message>
  <message>
   <source>town or ZIP code</source>
   <translation>Ort oder ZIP</translation>
  </message>
  <message>
   <source>tree next door</source>
   <translation>Baum nebenan</translation>
  </message>
  <message>
   <source>triangular</source>
   <translation>Dreieck</translation>
  </message>
  <message>
   <source>trunk guards</source>
   <translation>Stammschutz</translation>
  </message>
  <message>
   <source>two sets of chromosomes (diploid)</source>
   <translation>zwei Chromosomensätze (diploid)</translation>
  </message>
  <message>
   <source>typed in</source>
   <translation>eingegeben</translation>
  </message>
  <message>
   <source>typed in by you</source>
   <translation>von Ihnen eingegeben</translation>
  </message>
  <message>
   <source>under their need</source>
   <translation>unter ihrem Bedarf</translation>
  </message>
  <message>
   <source>usual</source>
   <translation>üblich</translation>
  </message>
  <message>
   <source>usual form</source>
   <translation>übliche Form</translation>
  </message>
  <message>
   <source>usual form: {form}</source>
   <translation>übliche Form: {form}</translation>
  </message>
  <message>
   <source>usual rootstock</source>
   <translation>übliche Unterlage</translation>
  </message>
  <message>
   <source>usual: {form}</source>
   <translation>üblich: {form}</translation>
  </message>
  <message>
   <source>variety</source>
   <translation>Sorte</translation>
  </message>
  <message>
   <source>variety not known</source>
   <translation>Sorte nicht bekannt</translation>
  </message>
  <message>
   <source>very early</source>
   <translation>sehr früh</translation>
  </message>
  <message>
   <source>very late</source>
   <translation>sehr spät</translation>
  </message>
  <message>
   <source>wall</source>
   <translation>Mauer</translation>
  </message>
  <message>
   <source>water</source>
   <translation>Wasser</translation>
  </message>
  <message>
   <source>watering</source>
   <translation>Gießen</translation>
  </message>
  <message>
   <source>well</source>
   <translation>Brunnen</translation>
  </message>
  <message>
   <source>west</source>
   <translation>Westen</translation>
  </message>
  <message>
   <source>yard's zone not known</source>
   <translation>Zone des Gartens nicht bekannt</translation>
  </message>
  <message>
   <source>year {year}</source>
   <translation>Jahr {year}</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>ja</translation>
  </message>
  <message>
   <source>yes, fizzes</source>
   <translation>ja, schäumt</translation>
  </message>
  <message>
   <source>your own figure, {width}</source>
   <translation>Ihr eigener Wert, {width}</translation>
  </message>
  <message>
   <source>your own records in this yard's file</source>
   <translation>Ihre eigenen Angaben in dieser Gartendatei</translation>
  </message>
  <message>
   <source>zone {zone}</source>
   <translation>Zone {zone}</translation>
  </message>
  <message>
   <source>zones {low}–{high}</source>
   <translation>Zonen {low}–{high}</translation>
  </message>
  <message>
   <source>{about}; or type a place like 4; 2.5</source>
   <translation>{about}; oder einen Ort eingeben, etwa 4; 2,5</translation>
  </message>
  <message numerus="yes">
   <source>{area}, {n} corners</source>
   <translation>
    <numerusform>{area}, {n} Ecke</numerusform>
    <numerusform>{area}, {n} Ecken</numerusform>
   </translation>
  </message>
  <message>
   <source>{choice}: {value}</source>
   <translation>{choice}: {value}</translation>
  </message>
  <message>
   <source>{count} of them: from 2 to {most} can be made at once</source>
   <translation>{count} davon: 2 bis {most} lassen sich auf einmal machen</translation>
  </message>
  <message>
   <source>{days} days after its kind's reference variety</source>
   <translation>{days} Tage nach der Vergleichssorte dieser Art</translation>
  </message>
  <message>
   <source>{days} days before its kind's reference variety</source>
   <translation>{days} Tage vor der Vergleichssorte dieser Art</translation>
  </message>
  <message>
   <source>{days} over {base} °C</source>
   <translation>{days} über {base} °C</translation>
  </message>
  <message>
   <source>{days} over {base} °F</source>
   <translation>{days} über {base} °F</translation>
  </message>
  <message>
   <source>{day} {month}</source>
   <translation>{day}. {month}</translation>
  </message>
  <message>
   <source>{edge}. Any unit; Enter sets it, Tab goes to the next edge</source>
   <translation>{edge}. Jede Einheit; Eingabe setzt sie, Tab geht zur nächsten Kante</translation>
  </message>
  <message>
   <source>{figure} is outside {range}</source>
   <translation>{figure} liegt außerhalb von {range}</translation>
  </message>
  <message>
   <source>{file} was not written: {why}</source>
   <translation>{file} wurde nicht geschrieben: {why}</translation>
  </message>
  <message>
   <source>{finding}: {things}</source>
   <translation>{finding}: {things}</translation>
  </message>
  <message>
   <source>{first} to {last}</source>
   <translation>{first} bis {last}</translation>
  </message>
  <message numerus="yes">
   <source>{group} made of {n} things</source>
   <translation>
    <numerusform>{group} aus {n} Ding gebildet</numerusform>
    <numerusform>{group} aus {n} Dingen gebildet</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{group} of {n} things</source>
   <translation>
    <numerusform>{group} aus {n} Ding</numerusform>
    <numerusform>{group} aus {n} Dingen</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{group}, a group of {n} things: {members}</source>
   <translation>
    <numerusform>{group}, eine Gruppe aus {n} Ding: {members}</numerusform>
    <numerusform>{group}, eine Gruppe aus {n} Dingen: {members}</numerusform>
   </translation>
  </message>
  <message>
   <source>{group}: {members}</source>
   <translation>{group}: {members}</translation>
  </message>
  <message>
   <source>{grown}; open ground {hours} h</source>
   <translation>{grown}; freie Fläche {hours} h</translation>
  </message>
  <message>
   <source>{hours} h a day</source>
   <translation>{hours} h am Tag</translation>
  </message>
  <message>
   <source>{hours} h a day before</source>
   <translation>{hours} h am Tag vorher</translation>
  </message>
  <message>
   <source>{hours} h in {month}</source>
   <translation>{hours} h im {month}</translation>
  </message>
  <message>
   <source>{hours} h of direct sun a day, of {open} h in the open</source>
   <translation>{hours} h direkte Sonne am Tag, von {open} h im Freien</translation>
  </message>
  <message>
   <source>{hours} h of sun a day</source>
   <translation>{hours} h Sonne am Tag</translation>
  </message>
  <message>
   <source>{hours} h of sun a day.</source>
   <translation>{hours} h Sonne am Tag.</translation>
  </message>
  <message>
   <source>{hours} hours</source>
   <translation>{hours} Stunden</translation>
  </message>
  <message>
   <source>{kind} line</source>
   <translation>Leitung ({kind})</translation>
  </message>
  <message>
   <source>{kind} on {rootstock}</source>
   <translation>{kind} auf {rootstock}</translation>
  </message>
  <message>
   <source>{kind} until {year}</source>
   <translation>{kind} bis {year}</translation>
  </message>
  <message>
   <source>{kind}, year not known</source>
   <translation>{kind}, Jahr nicht bekannt</translation>
  </message>
  <message>
   <source>{length} at {degrees}°</source>
   <translation>{length} bei {degrees}°</translation>
  </message>
  <message>
   <source>{length} in all</source>
   <translation>{length} insgesamt</translation>
  </message>
  <message>
   <source>{length} in all, {area} enclosed</source>
   <translation>{length} insgesamt, {area} umschlossen</translation>
  </message>
  <message numerus="yes">
   <source>{length} long, {n} corners</source>
   <translation>
    <numerusform>{length} lang, {n} Ecke</numerusform>
    <numerusform>{length} lang, {n} Ecken</numerusform>
   </translation>
  </message>
  <message>
   <source>{limit} and warmer</source>
   <translation>{limit} und wärmer</translation>
  </message>
  <message>
   <source>{low} to {high}</source>
   <translation>{low} bis {high}</translation>
  </message>
  <message>
   <source>{low} to {high} {unit}</source>
   <translation>{low} bis {high} {unit}</translation>
  </message>
  <message>
   <source>{name} deleted</source>
   <translation>{name} gelöscht</translation>
  </message>
  <message>
   <source>{name} is gone: take it off the list</source>
   <translation>{name} ist nicht mehr da: von der Liste nehmen</translation>
  </message>
  <message>
   <source>{name} is on the sheet; undo brings the plan before back</source>
   <translation>{name} ist auf dem Blatt; Rückgängig bringt den vorigen Plan zurück</translation>
  </message>
  <message>
   <source>{name} left out.csv</source>
   <translation>{name} ausgelassen.csv</translation>
  </message>
  <message>
   <source>{name} ripens {first} to {last}</source>
   <translation>{name} reift {first} bis {last}</translation>
  </message>
  <message>
   <source>{name} selected: drag or arrow keys move it, Ctrl+drag copies, F2 goes to its fields</source>
   <translation>{name} ausgewählt: Ziehen oder Pfeiltasten verschieben, Strg+Ziehen kopiert, F2 geht zu den Feldern</translation>
  </message>
  <message>
   <source>{name} stands on clear ground already</source>
   <translation>{name} steht schon auf freier Fläche</translation>
  </message>
  <message>
   <source>{name} was not opened</source>
   <translation>{name} wurde nicht geöffnet</translation>
  </message>
  <message>
   <source>{name}: the name must end in .pdf, .svg or .png</source>
   <translation>{name}: Der Name muss auf .pdf, .svg oder .png enden</translation>
  </message>
  <message>
   <source>{name}: {width} by {depth}, {area}, {corners}</source>
   <translation>{name}: {width} mal {depth}, {area}, {corners}</translation>
  </message>
  <message>
   <source>{need} h a day</source>
   <translation>{need} h am Tag</translation>
  </message>
  <message numerus="yes">
   <source>{n} beds</source>
   <translation>
    <numerusform>{n} Beet</numerusform>
    <numerusform>{n} Beete</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} buildings</source>
   <translation>
    <numerusform>{n} Gebäude</numerusform>
    <numerusform>{n} Gebäude</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} cautions</source>
   <translation>
    <numerusform>{n} Warnung</numerusform>
    <numerusform>{n} Warnungen</numerusform>
   </translation>
  </message>
  <message>
   <source>{n} characters are too many: {most} at most</source>
   <translation>{n} Zeichen sind zu viele: höchstens {most}</translation>
  </message>
  <message numerus="yes">
   <source>{n} conflicts</source>
   <translation>
    <numerusform>{n} Konflikt</numerusform>
    <numerusform>{n} Konflikte</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} conflicts left</source>
   <translation>
    <numerusform>{n} Konflikt bleibt</numerusform>
    <numerusform>{n} Konflikte bleiben</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} corners</source>
   <translation>
    <numerusform>{n} Ecke</numerusform>
    <numerusform>{n} Ecken</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} days over 30 °C</source>
   <translation>
    <numerusform>{n} Tag über 30 °C</numerusform>
    <numerusform>{n} Tage über 30 °C</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} days over 86 °F</source>
   <translation>
    <numerusform>{n} Tag über 86 °F</numerusform>
    <numerusform>{n} Tage über 86 °F</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} days together</source>
   <translation>
    <numerusform>{n} Tag gemeinsam</numerusform>
    <numerusform>{n} Tage gemeinsam</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} days together, {often}</source>
   <translation>
    <numerusform>{n} Tag gemeinsam, {often}</numerusform>
    <numerusform>{n} Tage gemeinsam, {often}</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} dimensions</source>
   <translation>
    <numerusform>{n} Maßlinie</numerusform>
    <numerusform>{n} Maßlinien</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} drives</source>
   <translation>
    <numerusform>{n} Zufahrt</numerusform>
    <numerusform>{n} Zufahrten</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} fences</source>
   <translation>
    <numerusform>{n} Zaun</numerusform>
    <numerusform>{n} Zäune</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} gates</source>
   <translation>
    <numerusform>{n} Tor</numerusform>
    <numerusform>{n} Tore</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} hedges</source>
   <translation>
    <numerusform>{n} Hecke</numerusform>
    <numerusform>{n} Hecken</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} lines were left out.</source>
   <translation>
    <numerusform>{n} Zeile wurde ausgelassen.</numerusform>
    <numerusform>{n} Zeilen wurden ausgelassen.</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} more</source>
   <translation>
    <numerusform>{n} weiterer</numerusform>
    <numerusform>{n} weitere</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} more to go: they count once all twelve are there.</source>
   <translation>
    <numerusform>Noch {n} fehlt: Sie zählen, sobald alle zwölf da sind.</numerusform>
    <numerusform>Noch {n} fehlen: Sie zählen, sobald alle zwölf da sind.</numerusform>
   </translation>
  </message>
  <message>
   <source>{n} more: scroll</source>
   <translation>{n} weitere: scrollen</translation>
  </message>
  <message numerus="yes">
   <source>{n} notes</source>
   <translation>
    <numerusform>{n} Notiz</numerusform>
    <numerusform>{n} Notizen</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} overhead lines</source>
   <translation>
    <numerusform>{n} Freileitung</numerusform>
    <numerusform>{n} Freileitungen</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} paths</source>
   <translation>
    <numerusform>{n} Weg</numerusform>
    <numerusform>{n} Wege</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} pictures</source>
   <translation>
    <numerusform>{n} Bild</numerusform>
    <numerusform>{n} Bilder</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} pieces of advice</source>
   <translation>
    <numerusform>{n} Hinweis</numerusform>
    <numerusform>{n} Hinweise</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} places</source>
   <translation>
    <numerusform>{n} Stelle</numerusform>
    <numerusform>{n} Stellen</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} plantings added</source>
   <translation>
    <numerusform>{n} Pflanzung hinzugefügt</numerusform>
    <numerusform>{n} Pflanzungen hinzugefügt</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} plants</source>
   <translation>
    <numerusform>{n} Pflanze</numerusform>
    <numerusform>{n} Pflanzen</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} plants have no place: they wait in a line below the lot.</source>
   <translation>
    <numerusform>{n} Pflanze hat keinen Ort: Sie wartet unterhalb des Grundstücks.</numerusform>
    <numerusform>{n} Pflanzen haben keinen Ort: Sie warten in einer Reihe unterhalb des Grundstücks.</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} plants were understood.</source>
   <translation>
    <numerusform>{n} Pflanze wurde verstanden.</numerusform>
    <numerusform>{n} Pflanzen wurden verstanden.</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} plants, {step} apart</source>
   <translation>
    <numerusform>{n} Pflanze, Abstand {step}</numerusform>
    <numerusform>{n} Pflanzen, Abstand {step}</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} ponds</source>
   <translation>
    <numerusform>{n} Teich</numerusform>
    <numerusform>{n} Teiche</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} pools</source>
   <translation>
    <numerusform>{n} Becken</numerusform>
    <numerusform>{n} Becken</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} posts for its wires, at most {apart} apart.</source>
   <translation>
    <numerusform>{n} Pfahl für die Drähte, höchstens {apart} auseinander.</numerusform>
    <numerusform>{n} Pfähle für die Drähte, höchstens {apart} auseinander.</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} pots</source>
   <translation>
    <numerusform>{n} Kübel</numerusform>
    <numerusform>{n} Kübel</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} rows</source>
   <translation>
    <numerusform>{n} Reihe</numerusform>
    <numerusform>{n} Reihen</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} rows were understood.</source>
   <translation>
    <numerusform>{n} Zeile wurde verstanden.</numerusform>
    <numerusform>{n} Zeilen wurden verstanden.</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} septic fields</source>
   <translation>
    <numerusform>{n} Sickerfläche</numerusform>
    <numerusform>{n} Sickerflächen</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} septic tanks</source>
   <translation>
    <numerusform>{n} Sickergrube</numerusform>
    <numerusform>{n} Sickergruben</numerusform>
   </translation>
  </message>
  <message>
   <source>{n} sets</source>
   <translation>{n} Sätze</translation>
  </message>
  <message numerus="yes">
   <source>{n} standing trees</source>
   <translation>
    <numerusform>{n} Altbaum</numerusform>
    <numerusform>{n} Altbäume</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} streets</source>
   <translation>
    <numerusform>{n} Straße</numerusform>
    <numerusform>{n} Straßen</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} terraces</source>
   <translation>
    <numerusform>{n} Terrasse</numerusform>
    <numerusform>{n} Terrassen</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} things</source>
   <translation>
    <numerusform>{n} Ding</numerusform>
    <numerusform>{n} Dinge</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} trees next door</source>
   <translation>
    <numerusform>{n} Baum nebenan</numerusform>
    <numerusform>{n} Bäume nebenan</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} varieties, {mark} partly from memory</source>
   <translation>
    <numerusform>{n} Sorte, {mark} teils aus dem Gedächtnis</numerusform>
    <numerusform>{n} Sorten, {mark} teils aus dem Gedächtnis</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} walls</source>
   <translation>
    <numerusform>{n} Mauer</numerusform>
    <numerusform>{n} Mauern</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} wells</source>
   <translation>
    <numerusform>{n} Brunnen</numerusform>
    <numerusform>{n} Brunnen</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} {kind} lines</source>
   <translation>
    <numerusform>{n} Leitung ({kind})</numerusform>
    <numerusform>{n} Leitungen ({kind})</numerusform>
   </translation>
  </message>
  <message>
   <source>{old} is called {name} now</source>
   <translation>{old} heißt jetzt {name}</translation>
  </message>
  <message>
   <source>{panel}: {share} of the window</source>
   <translation>{panel}: {share} des Fensters</translation>
  </message>
  <message>
   <source>{percent} %</source>
   <translation>{percent} %</translation>
  </message>
  <message>
   <source>{plant} blooms {first} to {last}</source>
   <translation>{plant} blüht {first} bis {last}</translation>
  </message>
  <message>
   <source>{plant} blooms {first} to {last}, {days} days either way</source>
   <translation>{plant} blüht {first} bis {last}, {days} Tage früher oder später</translation>
  </message>
  <message>
   <source>{question} (Enter begins a new line, Ctrl+Enter takes it)</source>
   <translation>{question} (Eingabe beginnt eine neue Zeile, Strg+Eingabe übernimmt)</translation>
  </message>
  <message>
   <source>{rating} or hardier</source>
   <translation>{rating} oder härter</translation>
  </message>
  <message>
   <source>{rule}. Allowed here: {range}. Source of ours: {source}</source>
   <translation>{rule}. Hier erlaubt: {range}. Quelle der Vorgabe: {source}</translation>
  </message>
  <message>
   <source>{season} bloom</source>
   <translation>Blüte {season}</translation>
  </message>
  <message>
   <source>{share} of open light</source>
   <translation>{share} des freien Lichts</translation>
  </message>
  <message>
   <source>{size} at full size</source>
   <translation>{size} in voller Größe</translation>
  </message>
  <message>
   <source>{size} by the catalogue</source>
   <translation>{size} laut Katalog</translation>
  </message>
  <message>
   <source>{suits}, yard {zone}</source>
   <translation>{suits}, Garten {zone}</translation>
  </message>
  <message>
   <source>{summary}. Click the next place; Enter ends</source>
   <translation>{summary}. Nächste Stelle anklicken; die Eingabetaste beendet</translation>
  </message>
  <message>
   <source>{things} added</source>
   <translation>{things} hinzugefügt</translation>
  </message>
  <message numerus="yes">
   <source>{things} and {n} more</source>
   <translation>
    <numerusform>{things} und {n} weitere</numerusform>
    <numerusform>{things} und {n} weitere</numerusform>
   </translation>
  </message>
  <message>
   <source>{things} copied</source>
   <translation>{things} kopiert</translation>
  </message>
  <message>
   <source>{things} pasted</source>
   <translation>{things} eingefügt</translation>
  </message>
  <message>
   <source>{things} selected</source>
   <translation>{things} ausgewählt</translation>
  </message>
  <message>
   <source>{thing} · {group}</source>
   <translation>{thing} · {group}</translation>
  </message>
  <message numerus="yes">
   <source>{title} (and {n} more)</source>
   <translation>
    <numerusform>{title} (und {n} weiterer)</numerusform>
    <numerusform>{title} (und {n} weitere)</numerusform>
   </translation>
  </message>
  <message>
   <source>{title}, folded</source>
   <translation>{title}, zugeklappt</translation>
  </message>
  <message>
   <source>{title}, shown</source>
   <translation>{title}, aufgeklappt</translation>
  </message>
  <message>
   <source>{value} is outside 0 to 5000</source>
   <translation>{value} liegt außerhalb von 0 bis 5000</translation>
  </message>
  <message>
   <source>{value} is outside the lot: {low} to {high} here</source>
   <translation>{value} liegt außerhalb des Grundstücks: hier {low} bis {high}</translation>
  </message>
  <message>
   <source>{value} is outside {low} to {high}</source>
   <translation>{value} liegt außerhalb von {low} bis {high}</translation>
  </message>
  <message>
   <source>{value} leaves the lot: {most} at most</source>
   <translation>{value} verlässt das Grundstück: höchstens {most}</translation>
  </message>
  <message>
   <source>{weight}, {stake}</source>
   <translation>{weight}, {stake}</translation>
  </message>
  <message>
   <source>{what}, {width}</source>
   <translation>{what}, {width}</translation>
  </message>
  <message>
   <source>{wide} wide, {tall} tall</source>
   <translation>{wide} breit, {tall} hoch</translation>
  </message>
  <message>
   <source>{words}; year {year}: about {now} wide</source>
   <translation>{words}; Jahr {year}: etwa {now} breit</translation>
  </message>
  <message>
   <source>{yard} shopping.csv</source>
   <translation>{yard} Einkauf.csv</translation>
  </message>
  <message>
   <source>{year} is outside {low} to {high}</source>
   <translation>{year} liegt außerhalb von {low} bis {high}</translation>
  </message>
  <message>
   <source>°C apart</source>
   <translation>°C auseinander</translation>
  </message>
  <message>
   <source>× height</source>
   <translation>× Höhe</translation>
  </message>
  <message>
   <source>† from memory, not confirmed by a look-up. Choose a line to see its source.</source>
   <translation>† aus dem Gedächtnis, nicht durch Nachschlagen bestätigt. Eine Zeile wählen zeigt ihre Quelle.</translation>
  </message>
 </context>
</TS>
