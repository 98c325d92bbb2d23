<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>'{name}' is not a paper size: choose {papers}</source>
   <translation>„{name}“ ist kein Papierformat: zur Wahl stehen {papers}</translation>
  </message>
  <message>
   <source>'{text}' is not a scale: write for example 1:100, 1/8 in (to the foot) or fit</source>
   <translation>„{text}“ ist kein Maßstab: zum Beispiel 1:100 schreiben, 1/8 in (je Fuß) oder fit</translation>
  </message>
  <message>
   <source>4 inches</source>
   <translation>4 Zoll</translation>
  </message>
  <message>
   <source>A minus along the baseline: measure from {point} the other way.</source>
   <translation>Ein Minus entlang der Grundlinie: von {point} in die andere Richtung messen.</translation>
  </message>
  <message>
   <source>A price is of one piece, or of one of the unit in which the quantity is counted.</source>
   <translation>Ein Preis gilt je Stück oder je Einheit, in der die Menge gezählt wird.</translation>
  </message>
  <message>
   <source>A soil test comes first: amounts follow from what is known of the soil and are estimates.</source>
   <translation>Zuerst kommt eine Bodenprobe: Die Mengen folgen aus dem, was vom Boden bekannt ist, und sind Schätzungen.</translation>
  </message>
  <message>
   <source>Advice</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <source>Along the baseline</source>
   <translation>Entlang der Grundlinie</translation>
  </message>
  <message>
   <source>Amount, about</source>
   <translation>Menge, etwa</translation>
  </message>
  <message>
   <source>Amounts are estimates from published yields; weather and care move them far.</source>
   <translation>Mengen sind Schätzungen aus veröffentlichten Erträgen; Wetter und Pflege verschieben sie weit.</translation>
  </message>
  <message>
   <source>Amounts are of one week without rain, for one plant, one whole row or one bed.</source>
   <translation>Mengen für eine Woche ohne Regen, für eine Pflanze, eine ganze Reihe oder ein Beet.</translation>
  </message>
  <message>
   <source>An estimate, for want of a table of their kind: {kinds}.</source>
   <translation>Geschätzt, weil für die Art keine Tabelle vorliegt: {kinds}.</translation>
  </message>
  <message>
   <source>At planting, about</source>
   <translation>Beim Pflanzen, etwa</translation>
  </message>
  <message>
   <source>At stake</source>
   <translation>Es geht um</translation>
  </message>
  <message>
   <source>Baseline from {start} to {end}; left and right looking that way. A square corner: {along} along it, {off} off it, {across} across.</source>
   <translation>Grundlinie von {start} nach {end}; links und rechts in dieser Blickrichtung. Ein rechter Winkel: {along} entlang, {off} seitlich, {across} quer.</translation>
  </message>
  <message>
   <source>Because of</source>
   <translation>Wegen</translation>
  </message>
  <message>
   <source>Before mid-morning</source>
   <translation>Früh am Tag</translation>
  </message>
  <message>
   <source>Before you dig and plant</source>
   <translation>Bevor Sie graben und pflanzen</translation>
  </message>
  <message>
   <source>Best partner</source>
   <translation>Bester Befruchter</translation>
  </message>
  <message>
   <source>Bloom follows from the monthly mean temperatures of the site</source>
   <translation>Die Blüte folgt aus den Monatsmitteln der Temperatur am Standort</translation>
  </message>
  <message>
   <source>Bloom is moved here from {place}</source>
   <translation>Die Blüte ist von {place} hierher übertragen</translation>
  </message>
  <message>
   <source>Bloom is not dated here: give twelve monthly means or one date of bloom seen here.</source>
   <translation>Die Blüte ist hier nicht datiert: zwölf Monatsmittel oder einen hier beobachteten Blühtermin angeben.</translation>
  </message>
  <message>
   <source>Bloom is set right by what was seen on the spot</source>
   <translation>Die Blüte ist nach Beobachtungen vor Ort berichtigt</translation>
  </message>
  <message>
   <source>Botanical name</source>
   <translation>Botanischer Name</translation>
  </message>
  <message>
   <source>By the inch-a-week rule: this place's lowest and highest temperatures are not known.</source>
   <translation>Nach der Faustregel 25 mm die Woche: Tiefst- und Höchsttemperaturen des Orts sind nicht bekannt.</translation>
  </message>
  <message>
   <source>By which rule</source>
   <translation>Nach welcher Regel</translation>
  </message>
  <message>
   <source>Care calendar</source>
   <translation>Pflegekalender</translation>
  </message>
  <message>
   <source>Care in {year}</source>
   <translation>Pflege {year}</translation>
  </message>
  <message>
   <source>Caution</source>
   <translation>Warnung</translation>
  </message>
  <message>
   <source>Check</source>
   <translation>Kontrolle</translation>
  </message>
  <message>
   <source>Clear sky is assumed; clouds take their share from every place alike.</source>
   <translation>Angenommen ist klarer Himmel; Wolken nehmen überall gleich viel.</translation>
  </message>
  <message>
   <source>Conflict</source>
   <translation>Konflikt</translation>
  </message>
  <message>
   <source>Conflicts and cautions</source>
   <translation>Konflikte und Warnungen</translation>
  </message>
  <message>
   <source>Conflicts, cautions and advice</source>
   <translation>Konflikte, Warnungen und Hinweise</translation>
  </message>
  <message>
   <source>Cost</source>
   <translation>Kosten</translation>
  </message>
  <message>
   <source>Darkest month</source>
   <translation>Dunkelster Monat</translation>
  </message>
  <message>
   <source>Dates marked 'by month' rest on usual months: temperatures or frosts are not known.</source>
   <translation>Termine „nach Monaten“ beruhen auf den üblichen Monaten: Temperaturen oder Fröste sind nicht bekannt.</translation>
  </message>
  <message>
   <source>Days in bloom together are those of an average year; how often: in usual, some or few years.</source>
   <translation>Gemeinsame Blühtage sind die eines mittleren Jahres; wie oft: in üblichen, manchen oder wenigen Jahren.</translation>
  </message>
  <message>
   <source>Distance</source>
   <translation>Abstand</translation>
  </message>
  <message>
   <source>Distance from trunk to trunk. Pollen taken: the share that the plant's own alleles let pass.</source>
   <translation>Abstand von Stamm zu Stamm. Pollen wirkt: der Anteil, den die eigenen Allele der Pflanze durchlassen.</translation>
  </message>
  <message>
   <source>Feel the soil a hand deep before watering; sand dries sooner, clay later.</source>
   <translation>Vor dem Gießen eine Handbreit tief in die Erde fühlen; Sand trocknet früher, Ton später.</translation>
  </message>
  <message>
   <source>Filled: from the earliest to the latest first picking. Outlined: picking goes on.</source>
   <translation>Gefüllt: vom frühesten bis zum spätesten Erntebeginn. Umriss: Die Ernte geht weiter.</translation>
  </message>
  <message>
   <source>First picking, about</source>
   <translation>Erntebeginn, etwa</translation>
  </message>
  <message>
   <source>Fixed points: {points}.</source>
   <translation>Festpunkte: {points}.</translation>
  </message>
  <message>
   <source>Follow the label of every material.</source>
   <translation>Die Gebrauchsanleitung jedes Mittels beachten.</translation>
  </message>
  <message>
   <source>For</source>
   <translation>Für</translation>
  </message>
  <message>
   <source>From</source>
   <translation>Von</translation>
  </message>
  <message>
   <source>From evaporation at this place by its lowest and highest temperatures (FAO paper 56).</source>
   <translation>Aus der Verdunstung am Ort nach seinen Tiefst- und Höchsttemperaturen (FAO-Schrift 56).</translation>
  </message>
  <message>
   <source>Full size, about</source>
   <translation>Ausgewachsen, etwa</translation>
  </message>
  <message>
   <source>Ground</source>
   <translation>Fläche</translation>
  </message>
  <message>
   <source>Harvest</source>
   <translation>Ernte</translation>
  </message>
  <message>
   <source>Harvest by week and year</source>
   <translation>Ernte nach Woche und Jahr</translation>
  </message>
  <message>
   <source>Harvest from spring {year}</source>
   <translation>Ernte ab Frühjahr {year}</translation>
  </message>
  <message>
   <source>Have services located before the first peg is driven; pegs and stakes pierce shallow lines.</source>
   <translation>Vor dem ersten Pflock Leitungen orten lassen; Pflöcke und Pfähle durchstechen flach liegende Leitungen.</translation>
  </message>
  <message>
   <source>Hours of direct sun a day on the crown, mean of the season {first} to {last}.</source>
   <translation>Stunden direkter Sonne am Tag auf der Krone, Mittel der Saison {first} bis {last}.</translation>
  </message>
  <message>
   <source>How</source>
   <translation>Wie</translation>
  </message>
  <message>
   <source>How much</source>
   <translation>Wie viel</translation>
  </message>
  <message>
   <source>How much, why</source>
   <translation>Wie viel, warum</translation>
  </message>
  <message>
   <source>In bloom together</source>
   <translation>Gemeinsam in Blüte</translation>
  </message>
  <message>
   <source>In short</source>
   <translation>Kurz</translation>
  </message>
  <message>
   <source>Item</source>
   <translation>Posten</translation>
  </message>
  <message>
   <source>Key</source>
   <translation>Kürzel</translation>
  </message>
  <message>
   <source>Key to the plan</source>
   <translation>Legende zum Plan</translation>
  </message>
  <message>
   <source>Kind and variety</source>
   <translation>Art und Sorte</translation>
  </message>
  <message>
   <source>Label, law and local extension service come before this list. Take care:</source>
   <translation>Gebrauchsanleitung, Recht und örtliche Fachberatung gehen dieser Liste vor. Achtung:</translation>
  </message>
  <message>
   <source>Last, about</source>
   <translation>Ende, etwa</translation>
  </message>
  <message>
   <source>Light</source>
   <translation>Licht</translation>
  </message>
  <message>
   <source>Light plan</source>
   <translation>Lichtplan</translation>
  </message>
  <message>
   <source>Likewise: {things}</source>
   <translation>Ebenso: {things}</translation>
  </message>
  <message>
   <source>Measure this bar: {length}. If it is not, print again at 100 %.</source>
   <translation>Diesen Balken nachmessen: {length}. Stimmt er nicht, mit 100 % neu drucken.</translation>
  </message>
  <message>
   <source>Midsummer</source>
   <translation>Hochsommer</translation>
  </message>
  <message>
   <source>Needs</source>
   <translation>Bedarf</translation>
  </message>
  <message>
   <source>Not dated, for want of bloom or harvest dates here: {plants}.</source>
   <translation>Ohne Datum, weil Blüte oder Ernte hier nicht datiert sind: {plants}.</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>Nothing is planted yet.</source>
   <translation>Noch ist nichts gepflanzt.</translation>
  </message>
  <message>
   <source>Nothing that can harm bees is sprayed from {days} days before a flower in or beside the yard opens until its petals are down, nor on fruit that is being picked. The label, the law and the local extension service come first.</source>
   <translation>Nichts, was Bienen schaden kann, wird gespritzt von {days} Tagen vor dem Öffnen einer Blüte im oder neben dem Garten bis zum Fall ihrer Blütenblätter, und nicht auf Früchte, die gerade geerntet werden. Gebrauchsanleitung, Recht und örtliche Fachberatung gehen vor.</translation>
  </message>
  <message>
   <source>Nothing was found.</source>
   <translation>Es wurde nichts gefunden.</translation>
  </message>
  <message>
   <source>Offsets over {length} are not kept square by eye: lay out the corner.</source>
   <translation>Seitliche Maße über {length} lassen sich nicht nach Augenmaß rechtwinklig halten: den Winkel abstecken.</translation>
  </message>
  <message>
   <source>Open ground</source>
   <translation>Freie Lage</translation>
  </message>
  <message>
   <source>Pale ends: all of it may lie so much earlier or later in the average year. Dashed line: frost dates.</source>
   <translation>Blasse Enden: Im mittleren Jahr kann alles so viel früher oder später liegen. Gestrichelte Linie: Frosttermine.</translation>
  </message>
  <message>
   <source>Partner</source>
   <translation>Befruchter</translation>
  </message>
  <message>
   <source>Partner: the plant here whose pollen sets most fruit on it.</source>
   <translation>Befruchter: die Pflanze hier, deren Pollen die meisten Früchte ansetzen lässt.</translation>
  </message>
  <message>
   <source>Peg</source>
   <translation>Pflock</translation>
  </message>
  <message>
   <source>Peg stands</source>
   <translation>Pflock steht</translation>
  </message>
  <message>
   <source>Pegs stand in the order of work. Pull both tapes tight and level; the peg stands where they cross.</source>
   <translation>Die Pflöcke stehen in der Reihenfolge der Arbeit. Beide Maßbänder straff und waagerecht ziehen; der Pflock steht, wo sie sich kreuzen.</translation>
  </message>
  <message>
   <source>Petal: from first flower over full bloom (dot) to petal fall; dashed where the dates come from another place or the bloom class is not known. Hatched bar: ripe.</source>
   <translation>Blütenblatt: von der ersten Blüte über die Vollblüte (Punkt) bis zum Blütenende; gestrichelt, wo die Termine von einem anderen Ort stammen oder die Blütezeitgruppe nicht bekannt ist. Schraffierter Balken: reif.</translation>
  </message>
  <message>
   <source>Picking through the season</source>
   <translation>Ernte durch die Saison</translation>
  </message>
  <message>
   <source>Plant</source>
   <translation>Pflanze</translation>
  </message>
  <message>
   <source>Plant schedule</source>
   <translation>Pflanzliste</translation>
  </message>
  <message>
   <source>Planting plan</source>
   <translation>Pflanzplan</translation>
  </message>
  <message>
   <source>Plants</source>
   <translation>Pflanzen</translation>
  </message>
  <message>
   <source>Pollen taken</source>
   <translation>Pollen wirkt</translation>
  </message>
  <message>
   <source>Pollination</source>
   <translation>Befruchtung</translation>
  </message>
  <message>
   <source>Price</source>
   <translation>Preis</translation>
  </message>
  <message>
   <source>Qty</source>
   <translation>Anz.</translation>
  </message>
  <message>
   <source>Quantity</source>
   <translation>Menge</translation>
  </message>
  <message>
   <source>Rain counts: 1 mm on 1 m² is 1 L; 1 in on 1 sq ft is 0.62 gal (2.4 L).</source>
   <translation>Regen zählt: 1 mm auf 1 m² ist 1 L; 1 in auf 1 sq ft sind 0,62 gal (2,4 L).</translation>
  </message>
  <message>
   <source>Ripening here is not known of {plants}.</source>
   <translation>Reifezeit hier nicht bekannt: {plants}.</translation>
  </message>
  <message>
   <source>Rootstock or form</source>
   <translation>Unterlage oder Form</translation>
  </message>
  <message>
   <source>Season</source>
   <translation>Saison</translation>
  </message>
  <message>
   <source>Season of bloom and harvest</source>
   <translation>Blüte und Ernte im Jahr</translation>
  </message>
  <message>
   <source>Setting out</source>
   <translation>Abstecken</translation>
  </message>
  <message>
   <source>Setting-out plan</source>
   <translation>Absteckplan</translation>
  </message>
  <message>
   <source>Setting-out sheet</source>
   <translation>Absteckplan</translation>
  </message>
  <message>
   <source>Shopping list</source>
   <translation>Einkaufsliste</translation>
  </message>
  <message>
   <source>Sizes are spread × height of crown and are estimates; measure what the nursery delivers.</source>
   <translation>Größen sind Breite × Höhe der Krone und geschätzt; messen, was die Baumschule liefert.</translation>
  </message>
  <message>
   <source>Soil work</source>
   <translation>Bodenarbeiten</translation>
  </message>
  <message>
   <source>Source</source>
   <translation>Quelle</translation>
  </message>
  <message>
   <source>Spacing</source>
   <translation>Pflanzabstand</translation>
  </message>
  <message>
   <source>Spray</source>
   <translation>Spritzung</translation>
  </message>
  <message>
   <source>Sprays not placed in {year}</source>
   <translation>Nicht eingeplante Spritzungen {year}</translation>
  </message>
  <message>
   <source>Sprays that were not placed stand in a list of their own.</source>
   <translation>Nicht eingeplante Spritzungen stehen in einer eigenen Liste.</translation>
  </message>
  <message>
   <source>Square off it</source>
   <translation>Rechtwinklig davon</translation>
  </message>
  <message>
   <source>Step</source>
   <translation>Schritt</translation>
  </message>
  <message>
   <source>Sun at the crown</source>
   <translation>Sonne an der Krone</translation>
  </message>
  <message>
   <source>Sure to</source>
   <translation>Genau auf</translation>
  </message>
  <message>
   <source>Take care</source>
   <translation>Achtung</translation>
  </message>
  <message>
   <source>Taken by</source>
   <translation>Genommen von</translation>
  </message>
  <message>
   <source>Tape</source>
   <translation>Maßband</translation>
  </message>
  <message>
   <source>The ground is limy, and no work changes that, for: {kinds}. The conflicts and cautions say what helps.</source>
   <translation>Der Boden ist kalkhaltig, und keine Arbeit ändert das, für: {kinds}. Was hilft, steht bei den Konflikten und Warnungen.</translation>
  </message>
  <message>
   <source>There is nothing to water.</source>
   <translation>Es gibt nichts zu gießen.</translation>
  </message>
  <message>
   <source>To</source>
   <translation>Bis</translation>
  </message>
  <message>
   <source>To expect</source>
   <translation>Zu erwarten</translation>
  </message>
  <message>
   <source>Total {total}.</source>
   <translation>Summe {total}.</translation>
  </message>
  <message>
   <source>Total {total}; {n} lines have no price.</source>
   <translation>Summe {total}; {n} Zeilen ohne Preis.</translation>
  </message>
  <message>
   <source>Water, season from spring {year}</source>
   <translation>Wasser, Saison ab Frühjahr {year}</translation>
  </message>
  <message>
   <source>Weight</source>
   <translation>Stufe</translation>
  </message>
  <message>
   <source>What</source>
   <translation>Was</translation>
  </message>
  <message>
   <source>What clears it</source>
   <translation>Abhilfe</translation>
  </message>
  <message>
   <source>What is known of the soil suits everything planted.</source>
   <translation>Was vom Boden bekannt ist, passt zu allem Gepflanzten.</translation>
  </message>
  <message>
   <source>When</source>
   <translation>Wann</translation>
  </message>
  <message>
   <source>Where the start of a tape is no F point, it is a peg set before; the errors add up.</source>
   <translation>Wo ein Maßband an keinem F-Punkt beginnt, ist es ein zuvor gesetzter Pflock; die Fehler addieren sich.</translation>
  </message>
  <message>
   <source>Why; what crossing adds; why not others</source>
   <translation>Warum; was Fremdbefruchtung bringt; warum andere nicht</translation>
  </message>
  <message>
   <source>Winters are too mild here to reckon bloom: give one date of bloom seen here.</source>
   <translation>Die Winter hier sind zu mild, um die Blüte zu berechnen: einen hier beobachteten Blühtermin angeben.</translation>
  </message>
  <message>
   <source>Work</source>
   <translation>Arbeit</translation>
  </message>
  <message>
   <source>Years stand beside work where no planting year is given: year 1 is the planting year.</source>
   <translation>Jahre stehen bei der Arbeit, wo kein Pflanzjahr angegeben ist: Jahr 1 ist das Pflanzjahr.</translation>
  </message>
  <message>
   <source>a usual week</source>
   <translation>einer üblichen Woche</translation>
  </message>
  <message>
   <source>a yard of {wide} m by {high} m does not fit on one sheet: choose a scale</source>
   <translation>ein Garten von {wide} m mal {high} m passt nicht auf ein Blatt: einen Maßstab wählen</translation>
  </message>
  <message>
   <source>about {day}</source>
   <translation>etwa {day}</translation>
  </message>
  <message>
   <source>amounts: see Water</source>
   <translation>Mengen: siehe Wasser</translation>
  </message>
  <message>
   <source>and from</source>
   <translation>und von</translation>
  </message>
  <message>
   <source>another place</source>
   <translation>einem anderen Ort</translation>
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
   <source>bed, {pattern} pattern</source>
   <translation>Beet, Muster: {pattern}</translation>
  </message>
  <message>
   <source>building; lines run the way water does</source>
   <translation>Gebäude; Linien verlaufen, wie das Wasser abläuft</translation>
  </message>
  <message>
   <source>bush</source>
   <translation>Busch</translation>
  </message>
  <message>
   <source>by month</source>
   <translation>nach Monaten</translation>
  </message>
  <message>
   <source>canes</source>
   <translation>Ruten</translation>
  </message>
  <message>
   <source>clump of large leaves</source>
   <translation>Horst mit großen Blättern</translation>
  </message>
  <message>
   <source>column</source>
   <translation>Säule</translation>
  </message>
  <message>
   <source>conifer</source>
   <translation>Nadelbaum</translation>
  </message>
  <message>
   <source>dashed: {need} {unit} a week for the household</source>
   <translation>gestrichelt: {need} {unit} in der Woche für den Haushalt</translation>
  </message>
  <message>
   <source>days of an average year; single years differ by a week or more</source>
   <translation>Tage eines mittleren Jahres; einzelne Jahre weichen eine Woche oder mehr ab</translation>
  </message>
  <message>
   <source>filled: the low estimate; outlined: up to the high one</source>
   <translation>gefüllt: die niedrige Schätzung; Umriss: bis zur hohen</translation>
  </message>
  <message>
   <source>full crop: no planting year</source>
   <translation>volle Ernte: kein Pflanzjahr</translation>
  </message>
  <message>
   <source>full size</source>
   <translation>volle Größe</translation>
  </message>
  <message>
   <source>gate</source>
   <translation>Tor</translation>
  </message>
  <message>
   <source>glut</source>
   <translation>Überfluss</translation>
  </message>
  <message>
   <source>glut: more than {times} times {usual}</source>
   <translation>Überfluss: mehr als das {times}-Fache {usual}</translation>
  </message>
  <message>
   <source>in a pot</source>
   <translation>im Kübel</translation>
  </message>
  <message>
   <source>joins sheet {name}</source>
   <translation>schließt an Blatt {name} an</translation>
  </message>
  <message>
   <source>large tree</source>
   <translation>großer Baum</translation>
  </message>
  <message>
   <source>left of {first} to {second}</source>
   <translation>links von {first} nach {second}</translation>
  </message>
  <message>
   <source>lot line</source>
   <translation>Grundstücksgrenze</translation>
  </message>
  <message>
   <source>no sheet was asked for</source>
   <translation>es wurde kein Blatt verlangt</translation>
  </message>
  <message>
   <source>no two points in reach</source>
   <translation>keine zwei Punkte in Reichweite</translation>
  </message>
  <message>
   <source>none here</source>
   <translation>keiner hier</translation>
  </message>
  <message>
   <source>not known</source>
   <translation>nicht bekannt</translation>
  </message>
  <message>
   <source>nothing yet</source>
   <translation>noch nichts</translation>
  </message>
  <message>
   <source>open-centre tree</source>
   <translation>Baum mit Hohlkrone</translation>
  </message>
  <message>
   <source>page {n} of {count}</source>
   <translation>Seite {n} von {count}</translation>
  </message>
  <message>
   <source>partly from memory</source>
   <translation>teils aus dem Gedächtnis</translation>
  </message>
  <message>
   <source>raised bed</source>
   <translation>Hochbeet</translation>
  </message>
  <message>
   <source>right of {first} to {second}</source>
   <translation>rechts von {first} nach {second}</translation>
  </message>
  <message>
   <source>row of canes</source>
   <translation>Reihe von Ruten</translation>
  </message>
  <message>
   <source>row of flat-trained plants</source>
   <translation>Reihe flach gezogener Pflanzen</translation>
  </message>
  <message>
   <source>row of plants</source>
   <translation>Pflanzenreihe</translation>
  </message>
  <message>
   <source>row of vines</source>
   <translation>Rebenreihe</translation>
  </message>
  <message>
   <source>sets by itself</source>
   <translation>selbstfruchtbar</translation>
  </message>
  <message>
   <source>sheet {name} of {count}</source>
   <translation>Blatt {name} von {count}</translation>
  </message>
  <message>
   <source>size now, and at maturity</source>
   <translation>Größe jetzt und ausgewachsen</translation>
  </message>
  <message>
   <source>strawberries and other mats</source>
   <translation>Erdbeeren und andere Bodendecker</translation>
  </message>
  <message>
   <source>the printer did not start: save a PDF instead</source>
   <translation>der Drucker ist nicht angelaufen: stattdessen eine PDF sichern</translation>
  </message>
  <message>
   <source>there is no sheet called '{word}': choose among {names}</source>
   <translation>ein Blatt „{word}“ gibt es nicht: zur Wahl stehen {names}</translation>
  </message>
  <message>
   <source>trained flat along its wall</source>
   <translation>flach an der Wand gezogen</translation>
  </message>
  <message>
   <source>tree that stands there already</source>
   <translation>Baum, der schon da steht</translation>
  </message>
  <message>
   <source>tree with a central leader</source>
   <translation>Baum mit Mittelachse (Spindel)</translation>
  </message>
  <message>
   <source>vine on its wire</source>
   <translation>Rebe an ihrem Draht</translation>
  </message>
  <message>
   <source>what the household needs</source>
   <translation>dessen, was der Haushalt braucht</translation>
  </message>
  <message>
   <source>year {n}</source>
   <translation>Jahr {n}</translation>
  </message>
  <message>
   <source>{day} {month}</source>
   <translation>{day}. {month}</translation>
  </message>
  <message>
   <source>{fact}: about {n} days either way.</source>
   <translation>{fact}: auf etwa {n} Tage genau.</translation>
  </message>
  <message numerus="yes">
   <source>{first} and {n} more sheets</source>
   <translation>
    <numerusform>{first} und {n} weiteres Blatt</numerusform>
    <numerusform>{first} und {n} weitere Blätter</numerusform>
   </translation>
  </message>
  <message>
   <source>{hours} h</source>
   <translation>{hours} h</translation>
  </message>
  <message>
   <source>{length} left</source>
   <translation>{length} links</translation>
  </message>
  <message>
   <source>{length} right</source>
   <translation>{length} rechts</translation>
  </message>
  <message>
   <source>{length} to {peg}</source>
   <translation>{length} bis {peg}</translation>
  </message>
  <message>
   <source>{low} to {high}</source>
   <translation>{low} bis {high}</translation>
  </message>
  <message>
   <source>{name} could not be made into a picture</source>
   <translation>{name} ließ sich nicht als Bild schreiben</translation>
  </message>
  <message>
   <source>{name} could not be written: {reason}</source>
   <translation>{name} ließ sich nicht schreiben: {reason}</translation>
  </message>
  <message>
   <source>{n} months before planting</source>
   <translation>{n} Monate vor dem Pflanzen</translation>
  </message>
  <message numerus="yes">
   <source>{n} plants.</source>
   <translation>
    <numerusform>{n} Pflanze.</numerusform>
    <numerusform>{n} Pflanzen.</numerusform>
   </translation>
  </message>
  <message>
   <source>{scale} on {paper}</source>
   <translation>{scale} auf {paper}</translation>
  </message>
  <message>
   <source>{stands}, flat crossing</source>
   <translation>{stands}, flacher Schnitt</translation>
  </message>
  <message>
   <source>{title}, page {n}</source>
   <translation>{title}, Seite {n}</translation>
  </message>
  <message>
   <source>{title}, sheet {name}</source>
   <translation>{title}, Blatt {name}</translation>
  </message>
  <message>
   <source>{unit} a week, {year}</source>
   <translation>{unit} in der Woche, {year}</translation>
  </message>
  <message>
   <source>{unit} a year</source>
   <translation>{unit} im Jahr</translation>
  </message>
 </context>
</TS>
