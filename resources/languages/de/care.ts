<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>A gap, nothing to pick: {spans}.</source>
   <translation>Eine Lücke, nichts zu pflücken: {spans}.</translation>
  </message>
  <message>
   <source>A glut, far more than in a usual week: {spans}.</source>
   <translation>Ein Überfluss, weit mehr als in einer üblichen Woche: {spans}.</translation>
  </message>
  <message>
   <source>Acid mix for a raised bed, half peat</source>
   <translation>Saures Substrat für ein Hochbeet, zur Hälfte Torf</translation>
  </message>
  <message>
   <source>Again after petal fall of {plants}.</source>
   <translation>Wieder nach dem Blütenende von {plants}.</translation>
  </message>
  <message>
   <source>Apr</source>
   <translation>Apr.</translation>
  </message>
  <message>
   <source>Aug</source>
   <translation>Aug.</translation>
  </message>
  <message>
   <source>Bird netting, fine mesh</source>
   <translation>Vogelschutznetz, feinmaschig</translation>
  </message>
  <message>
   <source>Caution: {text}</source>
   <translation>Achtung: {text}</translation>
  </message>
  <message>
   <source>Container, {litres} L ({gallons} gal)</source>
   <translation>Kübel, {litres} L ({gallons} gal)</translation>
  </message>
  <message>
   <source>Dec</source>
   <translation>Dez.</translation>
  </message>
  <message>
   <source>Done {date}</source>
   <translation>Erledigt am {date}</translation>
  </message>
  <message>
   <source>Edging of beds</source>
   <translation>Beeteinfassung</translation>
  </message>
  <message>
   <source>Elemental sulfur</source>
   <translation>Elementarschwefel</translation>
  </message>
  <message>
   <source>Far more than that: {spans}.</source>
   <translation>Weit mehr als das: {spans}.</translation>
  </message>
  <message>
   <source>Feb</source>
   <translation>Feb.</translation>
  </message>
  <message>
   <source>Ground limestone</source>
   <translation>Gemahlener Kalk</translation>
  </message>
  <message>
   <source>Hard frost ends the picking, about {date}: have everything in by then.</source>
   <translation>Starker Frost beendet die Ernte etwa am {date}: bis dahin alles hereinholen.</translation>
  </message>
  <message>
   <source>Jan</source>
   <translation>Jan.</translation>
  </message>
  <message>
   <source>July</source>
   <translation>Juli</translation>
  </message>
  <message>
   <source>June</source>
   <translation>Juni</translation>
  </message>
  <message>
   <source>Less than that: {spans}.</source>
   <translation>Weniger als das: {spans}.</translation>
  </message>
  <message>
   <source>Mar</source>
   <translation>März</translation>
  </message>
  <message>
   <source>May</source>
   <translation>Mai</translation>
  </message>
  <message>
   <source>Mulch</source>
   <translation>Mulch</translation>
  </message>
  <message>
   <source>Nov</source>
   <translation>Nov.</translation>
  </message>
  <message>
   <source>Oct</source>
   <translation>Okt.</translation>
  </message>
  <message>
   <source>Picking begins about {date}: the last spray lies at least as many days before it as the label says.</source>
   <translation>Die Ernte beginnt etwa am {date}: Die letzte Spritzung liegt mindestens so viele Tage davor, wie die Gebrauchsanleitung verlangt.</translation>
  </message>
  <message>
   <source>Plants: {keys}</source>
   <translation>Pflanzen: {keys}</translation>
  </message>
  <message>
   <source>Post, about 8 ft (2.4 m)</source>
   <translation>Pfosten, etwa 2,4 m (8 ft)</translation>
  </message>
  <message>
   <source>Potting mix</source>
   <translation>Kübelerde</translation>
  </message>
  <message>
   <source>Ripe from about {first} to {last}, in late years after the mean first frost of {frost}.</source>
   <translation>Reif etwa vom {first} bis {last}, in späten Jahren nach dem mittleren ersten Frost am {frost}.</translation>
  </message>
  <message>
   <source>Ripe only from about {first}, well after the mean first frost of {frost}: it seldom ripens here.</source>
   <translation>Erst ab etwa {first} reif, weit nach dem mittleren ersten Frost am {frost}: wird hier selten reif.</translation>
  </message>
  <message>
   <source>Sept</source>
   <translation>Sept.</translation>
  </message>
  <message>
   <source>Soil for raised beds</source>
   <translation>Erde für Hochbeete</translation>
  </message>
  <message>
   <source>Source: {source}</source>
   <translation>Quelle: {source}</translation>
  </message>
  <message>
   <source>Stake with tie</source>
   <translation>Pfahl mit Bindung</translation>
  </message>
  <message>
   <source>The household needs about {amount} a week.</source>
   <translation>Der Haushalt braucht etwa {amount} in der Woche.</translation>
  </message>
  <message>
   <source>Trunk guard against voles and rabbits</source>
   <translation>Stammschutz gegen Wühlmäuse und Kaninchen</translation>
  </message>
  <message>
   <source>Why: {why}</source>
   <translation>Warum: {why}</translation>
  </message>
  <message>
   <source>Wire</source>
   <translation>Draht</translation>
  </message>
  <message>
   <source>Wire strainer or turnbuckle</source>
   <translation>Drahtspanner</translation>
  </message>
  <message>
   <source>about {amount} a bed in a dry midsummer week ({rule})</source>
   <translation>etwa {amount} je Beet in einer trockenen Hochsommerwoche ({rule})</translation>
  </message>
  <message>
   <source>about {amount} a plant in a dry midsummer week ({rule})</source>
   <translation>etwa {amount} je Pflanze in einer trockenen Hochsommerwoche ({rule})</translation>
  </message>
  <message>
   <source>about {amount} a pot in a dry midsummer week ({rule})</source>
   <translation>etwa {amount} je Kübel in einer trockenen Hochsommerwoche ({rule})</translation>
  </message>
  <message>
   <source>about {amount} a row in a dry midsummer week ({rule})</source>
   <translation>etwa {amount} je Reihe in einer trockenen Hochsommerwoche ({rule})</translation>
  </message>
  <message>
   <source>bark, chip, straw or needles</source>
   <translation>Rinde, Häcksel, Stroh oder Nadeln</translation>
  </message>
  <message>
   <source>by month: no climate known</source>
   <translation>nach Monaten: kein Klima bekannt</translation>
  </message>
  <message>
   <source>calendars need the library icalendar; run: pip install icalendar</source>
   <translation>Kalender brauchen die Bibliothek icalendar; ausführen: pip install icalendar</translation>
  </message>
  <message>
   <source>crowns at full size</source>
   <translation>Kronen in voller Größe</translation>
  </message>
  <message>
   <source>dates of an average year, about {n} days either way</source>
   <translation>Termine eines mittleren Jahres, auf etwa {n} Tage genau</translation>
  </message>
  <message>
   <source>drainage not known</source>
   <translation>Wasserabzug nicht bekannt</translation>
  </message>
  <message>
   <source>every day</source>
   <translation>täglich</translation>
  </message>
  <message>
   <source>every {low} to {high} days</source>
   <translation>alle {low} bis {high} Tage</translation>
  </message>
  <message>
   <source>every {n} days</source>
   <translation>alle {n} Tage</translation>
  </message>
  <message>
   <source>from evaporation here</source>
   <translation>aus der Verdunstung hier</translation>
  </message>
  <message>
   <source>from year {first}</source>
   <translation>ab Jahr {first}</translation>
  </message>
  <message>
   <source>inch-a-week rule</source>
   <translation>Faustregel 25 mm die Woche</translation>
  </message>
  <message>
   <source>not known</source>
   <translation>nicht bekannt</translation>
  </message>
  <message>
   <source>not known is the bloom here of {plants}</source>
   <translation>nicht bekannt ist hier die Blüte von: {plants}</translation>
  </message>
  <message>
   <source>on {area}</source>
   <translation>auf {area}</translation>
  </message>
  <message>
   <source>on {area}, {depth} deep</source>
   <translation>auf {area}, {depth} tief</translation>
  </message>
  <message>
   <source>on {rootstock}</source>
   <translation>auf {rootstock}</translation>
  </message>
  <message>
   <source>one a wire</source>
   <translation>einer je Draht</translation>
  </message>
  <message>
   <source>one bud in ten dies at: {stages}</source>
   <translation>eine von zehn Knospen stirbt bei: {stages}</translation>
  </message>
  <message>
   <source>pH not known</source>
   <translation>pH nicht bekannt</translation>
  </message>
  <message>
   <source>pH {ph}, {crop} wants {low} to {high}</source>
   <translation>pH {ph}, {crop} braucht {low} bis {high}</translation>
  </message>
  <message>
   <source>picking of {plant}</source>
   <translation>Ernte: {plant}</translation>
  </message>
  <message>
   <source>planned as {form}</source>
   <translation>geplant als {form}</translation>
  </message>
  <message>
   <source>planting year</source>
   <translation>Pflanzjahr</translation>
  </message>
  <message>
   <source>rootstocks that do not stand alone</source>
   <translation>Unterlagen, die nicht allein stehen</translation>
  </message>
  <message>
   <source>rows on wires and flat-trained trees; less where a wall or fence carries them</source>
   <translation>Reihen an Drähten und flach gezogene Bäume; weniger, wo eine Mauer oder ein Zaun sie trägt</translation>
  </message>
  <message>
   <source>the most that may be needed; test again before each further dressing</source>
   <translation>das Meiste, was nötig sein kann; vor jeder weiteren Gabe neu prüfen</translation>
  </message>
  <message>
   <source>year {first} only</source>
   <translation>nur Jahr {first}</translation>
  </message>
  <message>
   <source>years {first} to {last}</source>
   <translation>Jahre {first} bis {last}</translation>
  </message>
  <message>
   <source>{first} to {last}</source>
   <translation>{first} bis {last}</translation>
  </message>
  <message>
   <source>{keys} {plant}: {amounts} a week</source>
   <translation>{keys} {plant}: {amounts} in der Woche</translation>
  </message>
  <message>
   <source>{litres} of fill</source>
   <translation>{litres} Füllung</translation>
  </message>
  <message>
   <source>{low} to {high}</source>
   <translation>{low} bis {high}</translation>
  </message>
  <message>
   <source>{plants}: {years}</source>
   <translation>{plants}: {years}</translation>
  </message>
  <message>
   <source>{plant}, whose bloom here is not known</source>
   <translation>{plant}, deren Blüte hier nicht bekannt ist</translation>
  </message>
  <message>
   <source>{yard}: care {years}</source>
   <translation>{yard}: Pflege {years}</translation>
  </message>
  <message>
   <source>{years} where no planting year is given</source>
   <translation>{years}, wo kein Pflanzjahr angegeben ist</translation>
  </message>
 </context>
</TS>
