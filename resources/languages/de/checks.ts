<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>1 zone</source>
   <translation>1 Zone</translation>
  </message>
  <message>
   <source>A partner that shares no allele with it would make the crop surer.</source>
   <translation>Ein Befruchter ohne gemeinsames Allel machte die Ernte sicherer.</translation>
  </message>
  <message>
   <source>A place with {good} of sun would ripen more and better fruit.</source>
   <translation>Ein Platz mit {good} Sonne würde mehr und bessere Früchte reifen lassen.</translation>
  </message>
  <message>
   <source>A variety of your own is not used: {fault}.</source>
   <translation>Eine eigene Sorte wird nicht verwendet: {fault}.</translation>
  </message>
  <message>
   <source>Add another {crop} in bloom with it within {best}.</source>
   <translation>Innerhalb von {best} eine weitere Pflanze dazusetzen, die mit ihr blüht ({crop}).</translation>
  </message>
  <message>
   <source>Add another {crop} that suits it within {best}[, for example {examples}].</source>
   <translation>Innerhalb von {best} eine weitere passende Pflanze dazusetzen ({crop})[, zum Beispiel {examples}].</translation>
  </message>
  <message>
   <source>Ask a nursery near you, and enter the zone with the variety.</source>
   <translation>Eine Baumschule in Ihrer Nähe fragen und die Zone bei der Sorte eintragen.</translation>
  </message>
  <message>
   <source>Ask the state's forest service before you buy plants.</source>
   <translation>Vor dem Kauf bei der Forstbehörde des Bundesstaats nachfragen.</translation>
  </message>
  <message>
   <source>At full size {a} covers {share} of the bed {b}.</source>
   <translation>Ausgewachsen bedeckt {a} {share} des Beets {b}.</translation>
  </message>
  <message>
   <source>At full size {a} hangs {over} over {b}: fruit drops there and branches need {headroom} of headroom.</source>
   <translation>Ausgewachsen hängt {a} {over} über {b}: Dort fallen Früchte, und Äste brauchen {headroom} Durchgangshöhe.</translation>
  </message>
  <message>
   <source>Beds and rows</source>
   <translation>Beete und Reihen</translation>
  </message>
  <message>
   <source>Before hard frost move them to a dark, unheated shed or garage, or sink and mulch them; keep the soil just moist (about monthly while it is not frozen). In summer water up to once a day. Re-pot every {years} years or so.</source>
   <translation>Vor starkem Frost in einen dunklen, unbeheizten Schuppen oder eine Garage stellen oder eingraben und mulchen; die Erde nur eben feucht halten (etwa monatlich gießen, solange sie nicht gefroren ist). Im Sommer bis zu einmal täglich gießen. Etwa alle {years} Jahre umtopfen.</translation>
  </message>
  <message>
   <source>Better with a partner: {variety}</source>
   <translation>Mit Befruchter besser: {variety}</translation>
  </message>
  <message>
   <source>Bloom class missing: {variety}</source>
   <translation>Blütezeitgruppe fehlt: {variety}</translation>
  </message>
  <message>
   <source>Bloom dated from afar</source>
   <translation>Blüte von fern datiert</translation>
  </message>
  <message>
   <source>Bloom dates</source>
   <translation>Blühtermine</translation>
  </message>
  <message>
   <source>Bloom not dated</source>
   <translation>Blüte ohne Datum</translation>
  </message>
  <message>
   <source>Bloom not dated: mild winters</source>
   <translation>Blüte ohne Datum: milde Winter</translation>
  </message>
  <message>
   <source>Bring them within {best} of each other, trunk to trunk.</source>
   <translation>Auf {best} zusammenrücken, von Stamm zu Stamm.</translation>
  </message>
  <message>
   <source>Build a raised bed of {area}, {depth} deep ({fill} of fill, half of it peat), lined off from the ground, or use a container from {pot} up, and water with rain.</source>
   <translation>Ein Hochbeet von {area}, {depth} tief, anlegen ({fill} Füllung, zur Hälfte Torf), vom Boden abgetrennt, oder einen Kübel ab {pot} nehmen, und mit Regenwasser gießen.</translation>
  </message>
  <message>
   <source>Build a raised bed of {area}, {depth} deep ({fill} of fill, half of it peat, half composted pine bark or acid potting mix), or use a container from {pot} up, and water with rain.</source>
   <translation>Ein Hochbeet von {area}, {depth} tief, anlegen ({fill} Füllung, zur Hälfte Torf, zur Hälfte kompostierte Kiefernrinde oder saures Substrat) oder einen Kübel ab {pot} nehmen, und mit Regenwasser gießen.</translation>
  </message>
  <message>
   <source>Buried lines may cross any yard, and their depth and place shift with time. {ask}.</source>
   <translation>Erdverlegte Leitungen können jedes Grundstück queren, und Tiefe und Lage ändern sich mit der Zeit. {ask}.</translation>
  </message>
  <message>
   <source>C</source>
   <translation>°C</translation>
  </message>
  <message>
   <source>C difference</source>
   <translation>°C Unterschied</translation>
  </message>
  <message>
   <source>Check the state rule before you buy plants.</source>
   <translation>Vor dem Kauf die Regel des Bundesstaats prüfen.</translation>
  </message>
  <message>
   <source>Chill may fall short: {variety}</source>
   <translation>Kälte kann zu knapp sein: {variety}</translation>
  </message>
  <message>
   <source>Choose a form of the list, or enter the size by hand.</source>
   <translation>Eine Erziehungsform der Liste wählen oder die Größe von Hand eingeben.</translation>
  </message>
  <message>
   <source>Choose a form that stays under {tallest}, or move {a} {short} to the {direction}. Pruning near a line is work for the utility.</source>
   <translation>Eine Erziehungsform wählen, die unter {tallest} bleibt, oder {a} um {short} nach {direction} versetzen. Schnitt nahe einer Leitung ist Sache des Netzbetreibers.</translation>
  </message>
  <message>
   <source>Choose a later-blooming variety or higher ground, or cover them on clear nights.</source>
   <translation>Eine später blühende Sorte oder höheres Gelände wählen oder in klaren Nächten abdecken.</translation>
  </message>
  <message>
   <source>Choose a low-chill variety: one that needs about {here} hours or fewer.</source>
   <translation>Eine Sorte mit geringem Kältebedarf wählen: höchstens etwa {here} Stunden.</translation>
  </message>
  <message>
   <source>Choose a rootstock hardy to zone {site_zone}, and mulch the roots before winter.</source>
   <translation>Eine Unterlage wählen, die bis Zone {site_zone} winterhart ist, und die Wurzeln vor dem Winter mulchen.</translation>
  </message>
  <message>
   <source>Choose a rootstock of the list, or enter the size by hand.</source>
   <translation>Eine Unterlage der Liste wählen oder die Größe von Hand eingeben.</translation>
  </message>
  <message>
   <source>Choose a rootstock or kind that bears lime, or a raised bed; treat yellow leaves with chelated iron by its label.</source>
   <translation>Eine Unterlage oder Art wählen, die Kalk verträgt, oder ein Hochbeet; gelbe Blätter mit Eisenchelat nach Gebrauchsanleitung behandeln.</translation>
  </message>
  <message>
   <source>Choose a smaller variety or rootstock, or plant it in the ground.</source>
   <translation>Eine kleinere Sorte oder Unterlage wählen oder in den Boden pflanzen.</translation>
  </message>
  <message>
   <source>Choose a variety hardy to zone {site_zone} or colder, or grow it where it can be sheltered.</source>
   <translation>Eine Sorte wählen, die bis Zone {site_zone} oder kälter winterhart ist, oder geschützt ziehen.</translation>
  </message>
  <message>
   <source>Choose a variety of the catalogue, or add this one with its facts as your own.</source>
   <translation>Eine Sorte des Katalogs wählen oder diese mit ihren Angaben als eigene anlegen.</translation>
  </message>
  <message>
   <source>Choose a variety that needs less chill.</source>
   <translation>Eine Sorte mit geringerem Kältebedarf wählen.</translation>
  </message>
  <message>
   <source>Choose a variety that needs more chill.</source>
   <translation>Eine Sorte mit höherem Kältebedarf wählen.</translation>
  </message>
  <message>
   <source>Choose an earlier variety, or pick before hard frost and ripen indoors where the kind allows it.</source>
   <translation>Eine frühere Sorte wählen oder vor starkem Frost pflücken und im Haus nachreifen lassen, wo die Art es erlaubt.</translation>
  </message>
  <message>
   <source>Choose an earlier variety, or the warmest wall there is.</source>
   <translation>Eine frühere Sorte oder die wärmste Wand wählen.</translation>
  </message>
  <message>
   <source>Choose another fruit, and check the state rule.</source>
   <translation>Eine andere Obstart wählen und die Regel des Bundesstaats prüfen.</translation>
  </message>
  <message>
   <source>Choose another plant, or add this one with its facts as a variety of your own.</source>
   <translation>Eine andere Pflanze wählen oder diese mit ihren Angaben als eigene Sorte anlegen.</translation>
  </message>
  <message>
   <source>Choose kinds that resist rust, or take the juniper out where it is yours.</source>
   <translation>Arten wählen, die Rost widerstehen, oder den Wacholder entfernen, wenn er Ihnen gehört.</translation>
  </message>
  <message>
   <source>Choose other ground, or a raised bed with clean soil.</source>
   <translation>Eine andere Fläche oder ein Hochbeet mit sauberer Erde wählen.</translation>
  </message>
  <message>
   <source>Choose rust-resistant kinds and ask your state's forest service: some states bar currants.</source>
   <translation>Rostfeste Arten wählen und die Forstbehörde Ihres Bundesstaats fragen: Manche verbieten Johannisbeeren.</translation>
  </message>
  <message>
   <source>Choose varieties for warmer places; see also whether their winter chill is met.</source>
   <translation>Sorten für wärmere Lagen wählen; auch prüfen, ob ihr Kältebedarf gedeckt wird.</translation>
  </message>
  <message>
   <source>Clear of buildings, lines and neighbours</source>
   <translation>Abstand zu Gebäuden, Leitungen und Nachbarn</translation>
  </message>
  <message>
   <source>Clear wild brambles within {wanted} before you plant.</source>
   <translation>Wilde Brombeeren im Umkreis von {wanted} vor dem Pflanzen roden.</translation>
  </message>
  <message>
   <source>Containers</source>
   <translation>Kübel</translation>
  </message>
  <message>
   <source>Containers dry out fast: {things}.</source>
   <translation>Kübel trocknen schnell aus: {things}.</translation>
  </message>
  <message>
   <source>Correct or remove them in the list of local rules.</source>
   <translation>In der Liste der örtlichen Regeln berichtigen oder entfernen.</translation>
  </message>
  <message>
   <source>Correct that fact under Own varieties, or leave it out where it is not known.</source>
   <translation>Die Angabe unter „Eigene Sorten“ berichtigen oder weglassen, wenn sie nicht bekannt ist.</translation>
  </message>
  <message>
   <source>Correct the date in the site's facts.</source>
   <translation>Das Datum in den Angaben zum Standort berichtigen.</translation>
  </message>
  <message>
   <source>Currants and gooseberries can give blister rust to {a}; the nearest, {nearest}, stands {distance} from it ({count} within {wanted}).</source>
   <translation>Johannis- und Stachelbeeren können {a} mit Blasenrost anstecken; die nächste, {nearest}, steht {distance} entfernt ({count} innerhalb von {wanted}).</translation>
  </message>
  <message>
   <source>Currants and the law</source>
   <translation>Johannisbeeren und das Recht</translation>
  </message>
  <message>
   <source>Dig holes 18 inches (45 cm) deep and fill them: gone within an hour is good, standing over a day is poor. Enter it in the site card. Have buried lines marked first.</source>
   <translation>Löcher von 45 cm Tiefe graben und füllen: In einer Stunde leer ist gut, nach über einem Tag noch voll ist schlecht. In der Standortkarte eintragen. Vorher erdverlegte Leitungen markieren lassen.</translation>
  </message>
  <message>
   <source>Do not mix or store sprays or manure within {wanted} of it; the label and the local code decide.</source>
   <translation>Im Umkreis von {wanted} keine Spritzmittel oder Mist anmischen oder lagern; maßgeblich sind Gebrauchsanleitung und örtliche Vorschrift.</translation>
  </message>
  <message>
   <source>Draw it inside the line, or tick 'Next door, outside the lot' where it is not yours. If it does stand there, ask a licensed surveyor where the line runs; local code says what may stand by it.</source>
   <translation>Innerhalb der Grenze zeichnen oder „Nebenan, außerhalb des Grundstücks“ ankreuzen, wo es nicht Ihres ist. Steht es wirklich dort: wo die Grenze verläuft, sagt ein zugelassener Vermesser, was an ihr stehen darf, das örtliche Recht.</translation>
  </message>
  <message>
   <source>Draw the container, or set the plant in the ground.</source>
   <translation>Den Kübel einzeichnen oder die Pflanze in den Boden setzen.</translation>
  </message>
  <message>
   <source>Draw the gate you come in by.</source>
   <translation>Das Tor einzeichnen, durch das man hereinkommt.</translation>
  </message>
  <message>
   <source>Draw them apart, or make one bed of them.</source>
   <translation>Getrennt zeichnen oder ein Beet daraus machen.</translation>
  </message>
  <message>
   <source>Enlarge the bed, or plant something smaller.</source>
   <translation>Das Beet vergrößern oder etwas Kleineres pflanzen.</translation>
  </message>
  <message>
   <source>Enter early, mid or late: it decides which plants can be its partners.</source>
   <translation>Früh, mittel oder spät eintragen: Das entscheidet, welche Pflanzen ihre Befruchter sein können.</translation>
  </message>
  <message>
   <source>Enter one bloom date seen on the spot.</source>
   <translation>Einen vor Ort beobachteten Blühtermin eintragen.</translation>
  </message>
  <message>
   <source>Enter the texture in the site card: rub moist soil between the fingers.</source>
   <translation>Die Bodenart in der Standortkarte eintragen: feuchte Erde zwischen den Fingern reiben.</translation>
  </message>
  <message>
   <source>Enter whether it is self-fruitful, or add another {crop} within {best}.</source>
   <translation>Eintragen, ob die Sorte selbstfruchtbar ist, oder innerhalb von {best} eine weitere dazusetzen ({crop}).</translation>
  </message>
  <message>
   <source>Few partners: {group}</source>
   <translation>Wenige Befruchter: {group}</translation>
  </message>
  <message>
   <source>Fill the container with a mix of pH {low} to {high}, and test it every year.</source>
   <translation>Den Kübel mit Substrat von pH {low} bis {high} füllen und jedes Jahr prüfen.</translation>
  </message>
  <message>
   <source>Find out its variety and its bloom, or add a partner of your own within {best}.</source>
   <translation>Seine Sorte und Blüte herausfinden oder innerhalb von {best} einen eigenen Befruchter dazusetzen.</translation>
  </message>
  <message>
   <source>Frost at bloom</source>
   <translation>Frost zur Blüte</translation>
  </message>
  <message>
   <source>Frost at bloom: {crop}</source>
   <translation>Frost zur Blüte: {crop}</translation>
  </message>
  <message>
   <source>Give them the warmest, best drained places, or choose hardier ones.</source>
   <translation>Die wärmsten Plätze mit bestem Wasserabzug geben oder härtere wählen.</translation>
  </message>
  <message>
   <source>Grow {a} {short} farther out, or ask a surveyor about the foundation.</source>
   <translation>{a} um {short} weiter außen ziehen oder das Fundament begutachten lassen.</translation>
  </message>
  <message>
   <source>Half the pollen: {variety}</source>
   <translation>Halber Pollen: {variety}</translation>
  </message>
  <message>
   <source>Hardy to zone {plant_zone}, just what zone {site_zone} has: {things}. A zone is a mean: about every second winter is colder than {site_low}.</source>
   <translation>Winterhart bis Zone {plant_zone}, gerade was Zone {site_zone} hat: {things}. Eine Zone ist ein Mittel: Etwa jeder zweite Winter ist kälter als {site_low}.</translation>
  </message>
  <message>
   <source>Have the lines marked, find private ones (lights, watering, pet fence) yourself, and dig by hand within {dig} of the marks.[ Enter the {missing} in the site card: lot-line and digging rules hang on it.]</source>
   <translation>Die Leitungen markieren lassen, private (Beleuchtung, Bewässerung, Hundezaun) selbst suchen und im Umkreis von {dig} um die Markierung von Hand graben.[ Tragen Sie {missing} in der Standortkarte ein: Davon hängen die Regeln für Grenzabstand und Graben ab.]</translation>
  </message>
  <message>
   <source>How the ground drains is not entered: it decides which plants need a mound or raised bed.</source>
   <translation>Der Wasserabzug des Bodens ist nicht eingetragen: Er entscheidet, welche Pflanzen einen Hügel oder ein Hochbeet brauchen.</translation>
  </message>
  <message>
   <source>Keep its posts and plants under {tallest}, or shift it {short} away.</source>
   <translation>Pfosten und Pflanzen unter {tallest} halten oder um {short} wegrücken.</translation>
  </message>
  <message>
   <source>Keep people, ladders and pole tools {keep} from the line, or move {a} {short} to the {direction}.</source>
   <translation>Menschen, Leitern und Stangenwerkzeug {keep} von der Leitung fernhalten oder {a} um {short} nach {direction} versetzen.</translation>
  </message>
  <message>
   <source>Keep them out of hollows; a cover at hand saves the crop in such years.</source>
   <translation>Aus Mulden fernhalten; eine Abdeckung zur Hand rettet in solchen Jahren die Ernte.</translation>
  </message>
  <message>
   <source>Lay a drip line or keep a hose within reach and say so in the site card; mulch keeps the ground moist.</source>
   <translation>Eine Tropfleitung legen oder einen Schlauch in Reichweite halten und in der Standortkarte angeben; Mulch hält den Boden feucht.</translation>
  </message>
  <message>
   <source>Leave a way of {width} beside it, or keep what stands in it smaller.</source>
   <translation>Daneben einen Weg von {width} freihalten oder kleiner halten, was darin steht.</translation>
  </message>
  <message>
   <source>Leave {room} free on two sides, or choose a form that is picked from the ground. Set ladders on level ground, away from power lines.</source>
   <translation>Auf zwei Seiten {room} freihalten oder eine Erziehungsform wählen, die vom Boden aus geerntet wird. Leitern auf ebenen Boden stellen, fern von Freileitungen.</translation>
  </message>
  <message>
   <source>Lengthen the row to {wanted}, or plant {fit}.</source>
   <translation>Die Reihe auf {wanted} verlängern oder {fit} pflanzen.</translation>
  </message>
  <message>
   <source>Light crop alone: {variety}</source>
   <translation>Allein geringe Ernte: {variety}</translation>
  </message>
  <message>
   <source>Local figure of this yard for {rule} (ours: {value} {unit}). {source}</source>
   <translation>Örtlicher Wert dieses Gartens für {rule} (unserer: {value} {unit}). {source}</translation>
  </message>
  <message>
   <source>Local figures that are not used, because no such rule exists or they lie outside its range: {rules}.</source>
   <translation>Örtliche Werte, die nicht verwendet werden, weil es die Regel nicht gibt oder der Wert außerhalb ihres Bereichs liegt: {rules}.</translation>
  </message>
  <message>
   <source>Long enough to ripen</source>
   <translation>Zeit genug zum Reifen</translation>
  </message>
  <message>
   <source>Look your place up in the site card (town, US ZIP code or position), which fills in zone, frosts, months and the height of the sun, or enter the zone there, for example 6b.</source>
   <translation>Den Ort in der Standortkarte suchen (Stadt, US-Postleitzahl oder Lage), das trägt Zone, Fröste, Monate und Sonnenhöhe ein, oder dort die Zone eintragen, zum Beispiel 6b.</translation>
  </message>
  <message>
   <source>Look your place up in the site card, or enter its twelve monthly mean temperatures or one bloom date seen there.</source>
   <translation>Den Ort in der Standortkarte suchen oder seine zwölf Monatsmittel der Temperatur oder einen dort beobachteten Blühtermin eintragen.</translation>
  </message>
  <message>
   <source>Make it at most {across} wide between two ways, or put a way or stepping stones through it.</source>
   <translation>Zwischen zwei Wegen höchstens {across} breit machen oder einen Weg oder Trittsteine hindurchlegen.</translation>
  </message>
  <message>
   <source>Most unlike varieties suit each other: rely on it, or add a proved one[, as {examples}].</source>
   <translation>Die meisten ungleichen Sorten passen zueinander: darauf vertrauen oder eine belegte dazusetzen[, etwa {examples}].</translation>
  </message>
  <message>
   <source>Move it more than {reach} away, or leave a gap of {gap} at the foot of {b} for the air to drain.</source>
   <translation>Mehr als {reach} weit wegsetzen oder unten an {b} einen Spalt von {gap} lassen, damit die Luft abfließt.</translation>
  </message>
  <message>
   <source>Move it off the field and leave grass there.</source>
   <translation>Von der Fläche wegrücken und dort Gras lassen.</translation>
  </message>
  <message>
   <source>Move it out of the triangle, keep it under {low}, or trim it clear up to {high}; your street code decides.</source>
   <translation>Aus dem Dreieck versetzen, unter {low} halten oder bis {high} aufasten; maßgeblich ist das örtliche Straßenrecht.</translation>
  </message>
  <message>
   <source>Move it out to {wanted}, or cut the hedge's roots with a trench every three to four years.</source>
   <translation>Auf {wanted} hinausrücken oder alle drei bis vier Jahre die Heckenwurzeln mit einem Graben abstechen.</translation>
  </message>
  <message>
   <source>Move it to where the sun reaches for at least {needed}[, or clear or lower {by_1}].</source>
   <translation>Dorthin versetzen, wo die Sonne mindestens {needed} scheint[, oder {by_1} entfernen oder niedriger halten].</translation>
  </message>
  <message>
   <source>Move it {short} farther off to be safe.</source>
   <translation>Zur Sicherheit um {short} weiter wegsetzen.</translation>
  </message>
  <message>
   <source>Move it {short} or more to the {direction}, or set it in a container.</source>
   <translation>Um {short} oder mehr nach {direction} versetzen oder in einen Kübel setzen.</translation>
  </message>
  <message>
   <source>Move it {short} or more to the {direction}. What lies beyond the line is not yours to plant without leave; only a survey tells where it runs.</source>
   <translation>Um {short} oder mehr nach {direction} versetzen. Jenseits der Grenze darf nur mit Erlaubnis gepflanzt werden; wo sie verläuft, sagt nur eine Vermessung.</translation>
  </message>
  <message>
   <source>Move the bed off {b}, lift the paving there, or build the bed up by {deep} or more, with a way out for its water.</source>
   <translation>Das Beet von {b} wegrücken, die befestigte Fläche dort aufnehmen oder das Beet um {deep} oder mehr aufsetzen, mit Abfluss für sein Wasser.</translation>
  </message>
  <message>
   <source>Move the bed off {b}, or draw it smaller.</source>
   <translation>Das Beet von {b} wegrücken oder kleiner zeichnen.</translation>
  </message>
  <message>
   <source>Move the bed or the tree apart, or plant something there that bears shade.</source>
   <translation>Beet und Baum auseinanderrücken oder dort etwas Schattenverträgliches pflanzen.</translation>
  </message>
  <message>
   <source>Move {a} at least {short} farther off, or grow it in a container or lined bed above the ground. Roots go on leaking after the tree is gone.</source>
   <translation>{a} mindestens {short} weiter wegsetzen oder in einem Kübel oder ausgekleideten Beet über dem Boden ziehen. Die Wurzeln geben auch nach dem Fällen noch Juglon ab.</translation>
  </message>
  <message>
   <source>Move {a} to the {direction}, clear of the drip line.</source>
   <translation>{a} nach {direction} versetzen, weg von der Traufe.</translation>
  </message>
  <message>
   <source>Move {a} {short} to the {direction}, or ask a surveyor about the foundation.</source>
   <translation>{a} um {short} nach {direction} versetzen oder das Fundament begutachten lassen.</translation>
  </message>
  <message>
   <source>Move {a} {short} to the {direction}, or ask your neighbour and the council.</source>
   <translation>{a} um {short} nach {direction} versetzen oder Nachbarn und Gemeinde fragen.</translation>
  </message>
  <message>
   <source>Move {a} {short} to the {direction}, or choose a form that stays smaller.</source>
   <translation>{a} um {short} nach {direction} versetzen oder eine kleinere Erziehungsform wählen.</translation>
  </message>
  <message>
   <source>Move {a} {short} to the {direction}, or train it along the fence.</source>
   <translation>{a} um {short} nach {direction} versetzen oder am Zaun entlang ziehen.</translation>
  </message>
  <message>
   <source>Move {a} {short} to the {direction}, or train it flat on the wall.</source>
   <translation>{a} um {short} nach {direction} versetzen oder flach an der Wand ziehen.</translation>
  </message>
  <message>
   <source>Move {a} {short} to the {direction}, or trim it up to {headroom}.</source>
   <translation>{a} um {short} nach {direction} versetzen oder bis {headroom} aufasten.</translation>
  </message>
  <message>
   <source>Move {a} {short} to the {direction}, out of the bed, or plant the bed with something else.</source>
   <translation>{a} um {short} nach {direction} aus dem Beet versetzen oder das Beet anders bepflanzen.</translation>
  </message>
  <message>
   <source>Move {a} {short} to the {direction}.</source>
   <translation>{a} um {short} nach {direction} versetzen.</translation>
  </message>
  <message>
   <source>Move {a} {short} to the {direction}. A neighbour may cut what hangs over: check locally.</source>
   <translation>{a} um {short} nach {direction} versetzen. Nachbarn dürfen Überhängendes unter Umständen abschneiden: örtlich nachfragen.</translation>
  </message>
  <message>
   <source>Move {a} {short} to the {direction}. Have the line marked before you dig, and dig only by hand within {dig} of the marks.</source>
   <translation>{a} um {short} nach {direction} versetzen. Die Leitung vor dem Graben markieren lassen und im Umkreis von {dig} um die Markierung nur von Hand graben.</translation>
  </message>
  <message>
   <source>Move {a} {short} to the {direction}. This is a summary, not advice: check locally.</source>
   <translation>{a} um {short} nach {direction} versetzen. Dies ist eine Übersicht, keine Rechtsberatung: örtlich nachfragen.</translation>
  </message>
  <message>
   <source>Move {a} {short} to the {direction}; ask the health department for the local distance.</source>
   <translation>{a} um {short} nach {direction} versetzen; den örtlichen Abstand beim Gesundheitsamt erfragen.</translation>
  </message>
  <message>
   <source>Move {b} {short} to the {direction}, or shift the row.</source>
   <translation>{b} um {short} nach {direction} versetzen oder die Reihe verschieben.</translation>
  </message>
  <message>
   <source>Move {b} {short} to the {direction}.</source>
   <translation>{b} um {short} nach {direction} versetzen.</translation>
  </message>
  <message>
   <source>Move {mover} {short} to the {direction}, or choose a smaller rootstock or form.</source>
   <translation>{mover} um {short} nach {direction} versetzen oder eine kleinere Unterlage oder Erziehungsform wählen.</translation>
  </message>
  <message>
   <source>Move {mover} {short} to the {direction}.</source>
   <translation>{mover} um {short} nach {direction} versetzen.</translation>
  </message>
  <message>
   <source>Names not known</source>
   <translation>Unbekannte Namen</translation>
  </message>
  <message>
   <source>Neighbours</source>
   <translation>Nachbarschaft</translation>
  </message>
  <message>
   <source>No free way of {width} leads to {a} once everything is full grown.</source>
   <translation>Sobald alles ausgewachsen ist, führt kein freier Weg von {width} zu {a}.</translation>
  </message>
  <message>
   <source>No gate is drawn, so ways are counted from the {start}.</source>
   <translation>Es ist kein Tor eingezeichnet; die Wege beginnen deshalb hier: {start}.</translation>
  </message>
  <message>
   <source>No hardiness zone is known: {things}.</source>
   <translation>Keine Winterhärtezone bekannt: {things}.</translation>
  </message>
  <message>
   <source>Nobody knows if {a} sets fruit alone, and no plant here surely sets it[. {others}].</source>
   <translation>Niemand weiß, ob {a} allein ansetzt, und keine Pflanze hier befruchtet sie sicher[. {others}].</translation>
  </message>
  <message>
   <source>Nothing sets {variety}</source>
   <translation>Nichts befruchtet {variety}</translation>
  </message>
  <message>
   <source>Nothing shelters these from wind, which tears their shoots: {things}.</source>
   <translation>Nichts schützt diese vor Wind, der die Triebe zerreißt: {things}.</translation>
  </message>
  <message>
   <source>Observed bloom date</source>
   <translation>Beobachteter Blühtermin</translation>
  </message>
  <message>
   <source>On clay that shrinks in drought, {a} (about {height} tall, {demand} thirst) should stand {wanted} from {b}; it stands {distance} away.</source>
   <translation>Auf Tonboden, der bei Dürre schrumpft, sollte {a} (etwa {height} hoch, Wasserbedarf {demand}) {wanted} von {b} stehen; der Abstand ist {distance}.</translation>
  </message>
  <message>
   <source>On clay that shrinks in drought, {a} on the wall of {b} can dry the ground under it: {wanted} is asked for, it stands {distance} away.</source>
   <translation>Auf Tonboden, der bei Dürre schrumpft, kann {a} an der Wand von {b} den Boden darunter austrocknen: {wanted} sind verlangt, der Abstand ist {distance}.</translation>
  </message>
  <message>
   <source>On the lowest {reach} of the lot, where cold air gathers if the ground levels out below: {things}.</source>
   <translation>Auf den untersten {reach} des Grundstücks, wo sich Kaltluft sammelt, wenn das Gelände darunter flach wird: {things}.</translation>
  </message>
  <message>
   <source>One side of the row gets less sun than the other, for it runs far[ ({off} degrees)] off north and south: {things}.</source>
   <translation>Eine Seite der Reihe bekommt weniger Sonne als die andere, denn sie weicht weit[ ({off} Grad)] von Nord–Süd ab: {things}.</translation>
  </message>
  <message>
   <source>Only an unknown partner: {variety}</source>
   <translation>Nur ein unbekannter Partner: {variety}</translation>
  </message>
  <message>
   <source>Only triploids near {variety}</source>
   <translation>Nur Triploide nahe {variety}</translation>
  </message>
  <message>
   <source>Only {donor}, {distance} away, may help {a}: {why}; its bloom is not known.</source>
   <translation>Nur {donor}, {distance} entfernt, kann {a} helfen: {why}; seine Blüte ist nicht bekannt.</translation>
  </message>
  <message>
   <source>Partner far off: {variety}</source>
   <translation>Befruchter weit weg: {variety}</translation>
  </message>
  <message>
   <source>Partner not proved: {variety}</source>
   <translation>Befruchter nicht belegt: {variety}</translation>
  </message>
  <message>
   <source>Picked from a ladder, but with {room} of free ground beyond the crown on fewer than two sides: {things}.</source>
   <translation>Wird von der Leiter geerntet, hat aber auf weniger als zwei Seiten {room} freie Fläche neben der Krone: {things}.</translation>
  </message>
  <message>
   <source>Plan winter quarters (an unheated shed, or the pot sunk and mulched), or plant in the ground.</source>
   <translation>Ein Winterquartier vorsehen (unbeheizter Schuppen, oder den Kübel eingraben und mulchen) oder in den Boden pflanzen.</translation>
  </message>
  <message>
   <source>Plant more of the giving kind, one for every {ratio}: {layout}.</source>
   <translation>Mehr Befruchter pflanzen, einen auf je {ratio}: {layout}.</translation>
  </message>
  <message>
   <source>Plant on a mound or in a bed raised {mound} or more, drain the ground, or choose a rootstock that bears wet soil.</source>
   <translation>Auf einen Hügel oder in ein um mindestens {mound} erhöhtes Beet pflanzen, den Boden entwässern oder eine Unterlage wählen, die Nässe verträgt.</translation>
  </message>
  <message>
   <source>Plant the giving kind into the row itself, so that none is farther than {best} from one: bees work along rows.</source>
   <translation>Befruchter in die Reihe selbst pflanzen, sodass keine Pflanze weiter als {best} davon steht: Bienen arbeiten die Reihen entlang.</translation>
  </message>
  <message>
   <source>Plant two other varieties that also suit each other within {best}: each then sets all.</source>
   <translation>Innerhalb von {best} zwei andere Sorten pflanzen, die auch zueinander passen: Dann setzt jede an.</translation>
  </message>
  <message>
   <source>Plants stand within {wanted} of {a} ({count} in all).</source>
   <translation>Im Umkreis von {wanted} um {a} stehen Pflanzen ({count} insgesamt).</translation>
  </message>
  <message>
   <source>Pollination</source>
   <translation>Befruchtung</translation>
  </message>
  <message>
   <source>Pollination not known: {variety}</source>
   <translation>Befruchtung nicht bekannt: {variety}</translation>
  </message>
  <message>
   <source>Put early bloomers higher up the slope, and keep the lower edge open.</source>
   <translation>Frühblüher höher am Hang pflanzen und die untere Kante offen halten.</translation>
  </message>
  <message>
   <source>Put them as far apart as the lot allows (best {advised}), the black ones upwind, and buy plants certified free of virus.</source>
   <translation>So weit auseinander setzen, wie das Grundstück erlaubt (am besten {advised}), die schwarzen auf der Windseite, und virusfrei zertifizierte Pflanzen kaufen.</translation>
  </message>
  <message>
   <source>Ripe from about {first} to {last}, in late years after the mean first frost of {frost}: {things}.</source>
   <translation>Reif etwa {first} bis {last}, in späten Jahren nach dem mittleren ersten Frost am {frost}: {things}.</translation>
  </message>
  <message>
   <source>Ripe only from about {first}, well after the mean first frost of {frost}: {things}.</source>
   <translation>Reif erst ab etwa {first}, deutlich nach dem mittleren ersten Frost am {frost}: {things}.</translation>
  </message>
  <message>
   <source>Room between plants</source>
   <translation>Raum zwischen Pflanzen</translation>
  </message>
  <message>
   <source>Roots in a pot freeze through from all sides and count {colder} zones colder. Hardy to zone {plant_zone}, with only {spare} to spare in zone {site_zone}: {things}.</source>
   <translation>Wurzeln im Kübel durchfrieren von allen Seiten und gelten als {colder} Zonen kälter. Winterhart bis Zone {plant_zone}, in Zone {site_zone} nur mit diesem Spielraum ({spare}): {things}.</translation>
  </message>
  <message>
   <source>Roots in containers die from about {limit} of soil temperature: {things}.</source>
   <translation>Wurzeln in Kübeln sterben ab etwa {limit} Bodentemperatur: {things}.</translation>
  </message>
  <message>
   <source>Row reaches too far: {variety}</source>
   <translation>Reihe reicht zu weit: {variety}</translation>
  </message>
  <message>
   <source>Set it within {wanted} of the wall, or give it posts and wires of its own.</source>
   <translation>Innerhalb von {wanted} an die Wand setzen oder eigene Pfosten und Drähte geben.</translation>
  </message>
  <message>
   <source>Set the plants {wanted} apart, with fewer plants or a longer row.</source>
   <translation>Die Pflanzen im Abstand von {wanted} setzen, weniger Pflanzen oder eine längere Reihe.</translation>
  </message>
  <message>
   <source>Set the stem {short} farther out and lead it back to the wall.</source>
   <translation>Den Stamm um {short} weiter hinaussetzen und zur Wand zurückleiten.</translation>
  </message>
  <message>
   <source>Set them within about {times} heights of a hedge, fence or building, or plant a windbreak that lets half the wind through.</source>
   <translation>Näher als etwa das {times}-Fache der Höhe an eine Hecke, einen Zaun oder ein Gebäude setzen oder einen Windschutz pflanzen, der die Hälfte des Windes durchlässt.</translation>
  </message>
  <message>
   <source>Shift or shorten it by {short}. What lies beyond the line is not yours to plant without leave; only a survey tells where it runs.</source>
   <translation>Um {short} verschieben oder kürzen. Jenseits der Grenze darf nur mit Erlaubnis gepflanzt werden; wo sie verläuft, sagt nur eine Vermessung.</translation>
  </message>
  <message>
   <source>Shift the hole out of the old roots, or change the soil in it.</source>
   <translation>Das Pflanzloch aus den alten Wurzeln rücken oder die Erde darin austauschen.</translation>
  </message>
  <message>
   <source>Shift the row out of the bed, or plant the bed with something else.</source>
   <translation>Die Reihe aus dem Beet rücken oder das Beet mit etwas anderem bepflanzen.</translation>
  </message>
  <message>
   <source>Shift the row {short} away from {b}.</source>
   <translation>Die Reihe um {short} von {b} wegrücken.</translation>
  </message>
  <message>
   <source>Shift the row {short} away. Have the line marked before you dig, and dig only by hand within {dig} of the marks.</source>
   <translation>Die Reihe um {short} wegrücken. Die Leitung vor dem Graben markieren lassen und im Umkreis von {dig} um die Markierung nur von Hand graben.</translation>
  </message>
  <message>
   <source>Shift the row {short} inward.</source>
   <translation>Die Reihe um {short} nach innen rücken.</translation>
  </message>
  <message>
   <source>Shorten or shift the row so that it keeps to open ground.</source>
   <translation>Die Reihe kürzen oder verschieben, bis sie auf offenem Boden steht.</translation>
  </message>
  <message>
   <source>Soil</source>
   <translation>Boden</translation>
  </message>
  <message>
   <source>Some frost at bloom: {crop}</source>
   <translation>Etwas Frost zur Blüte: {crop}</translation>
  </message>
  <message>
   <source>Some states limit currants and gooseberries for the sake of white pines: {things}.</source>
   <translation>Manche Bundesstaaten beschränken Johannis- und Stachelbeeren wegen der Weymouthskiefern: {things}.</translation>
  </message>
  <message>
   <source>Spread {least}[ to {most}] of ground limestone on {area} in all, worked {depth} deep, the first {months} months before planting, in {dressings}[, {between} months apart]. Use more in proportion where its calcium carbonate equivalent is under 100.</source>
   <translation>{least}[ bis {most}] gemahlenen Kalk auf insgesamt {area} streuen, {depth} tief eingearbeitet, das erste Mal {months} Monate vor dem Pflanzen, in {dressings}[, im Abstand von {between} Monaten]. Liegt sein Calciumcarbonat-Äquivalent unter 100, im Verhältnis mehr nehmen.</translation>
  </message>
  <message>
   <source>Suited to zones up to {plant_zone}, while this yard is zone {site_zone}, {over} warmer: {things}.</source>
   <translation>Geeignet bis Zone {plant_zone}, dieser Garten liegt aber in Zone {site_zone}, {over} wärmer: {things}.</translation>
  </message>
  <message>
   <source>Sun</source>
   <translation>Sonne</translation>
  </message>
  <message>
   <source>Take a container of {wanted} or more, or fewer plants.</source>
   <translation>Einen Kübel von {wanted} oder mehr nehmen oder weniger Pflanzen.</translation>
  </message>
  <message>
   <source>Take a container of {wanted} or more, or plant it in the ground.</source>
   <translation>Einen Kübel von {wanted} oder mehr nehmen oder in den Boden pflanzen.</translation>
  </message>
  <message>
   <source>Terrace it, or keep the ground covered and work along the contour.</source>
   <translation>Terrassieren oder den Boden bedeckt halten und entlang der Höhenlinien arbeiten.</translation>
  </message>
  <message>
   <source>Test the soil (a home kit tells to about half a unit) and enter the pH in the site card or the bed.</source>
   <translation>Den Boden prüfen (ein einfaches Testset ist auf etwa eine halbe Stufe genau) und den pH in der Standortkarte oder am Beet eintragen.</translation>
  </message>
  <message>
   <source>Test the soil and see whether it fizzes with vinegar; enter both in the site card.</source>
   <translation>Den Boden prüfen und sehen, ob er mit Essig schäumt; beides in der Standortkarte eintragen.</translation>
  </message>
  <message>
   <source>The best partner of {a} is {donor}, {distance} away, and it is weak: {why}[. {others}].</source>
   <translation>Der beste Befruchter für {a} ist {donor}, {distance} entfernt, und er ist schwach: {why}[. {others}].</translation>
  </message>
  <message>
   <source>The bloom class of your {variety} is not entered: what blooms with it is not known.</source>
   <translation>Für Ihre Sorte {variety} ist keine Blütezeitgruppe eingetragen: Was mit ihr blüht, ist nicht bekannt.</translation>
  </message>
  <message>
   <source>The crown of {a} ends nearer to {b} than a hand's room: {distance} from its stem, {wanted} wanted.</source>
   <translation>Die Krone von {a} endet näher an {b} als eine Handbreit Arbeitsraum: {distance} vom Stamm, erwünscht {wanted}.</translation>
  </message>
  <message>
   <source>The ground is of {drainage} drainage, and roots that stand in water suffer: {things}.</source>
   <translation>Wasserabzug des Bodens: {drainage}. Wurzeln, die im Wasser stehen, leiden: {things}.</translation>
  </message>
  <message>
   <source>The ground rises {slope}; above {limit} work is hard and bare soil washes away.</source>
   <translation>Das Gelände steigt um {slope}; über {limit} ist die Arbeit mühsam, und nackter Boden wird abgeschwemmt.</translation>
  </message>
  <message>
   <source>The hardiness zone of this yard is not entered[ ('{typed}' is not a zone)], so nothing is said of winter cold (plants: {count}).</source>
   <translation>Die Winterhärtezone dieses Gartens ist nicht eingetragen[ („{typed}“ ist keine Zone)]; über Winterkälte wird deshalb nichts gesagt (Pflanzen: {count}).</translation>
  </message>
  <message>
   <source>The mix in the container does not suit[ (pH {ph})], where pH {low} to {high} is wanted: {things}.</source>
   <translation>Das Substrat im Kübel passt nicht[ (pH {ph})], erwünscht ist pH {low} bis {high}: {things}.</translation>
  </message>
  <message>
   <source>The pH of the soil is not entered. It decides whether {things} can grow in this ground at all.</source>
   <translation>Der pH-Wert des Bodens ist nicht eingetragen. Er entscheidet, ob {things} in diesem Boden überhaupt wachsen kann.</translation>
  </message>
  <message>
   <source>The pH of the soil is not entered: it would decide what to add for your plants ({count}).</source>
   <translation>Der pH-Wert des Bodens ist nicht eingetragen: Er würde entscheiden, was Ihre Pflanzen brauchen ({count}).</translation>
  </message>
  <message>
   <source>The roots of {b} likely reach {wanted} from its trunk; {a} stands {distance} from it and must share water and food.</source>
   <translation>Die Wurzeln von {b} reichen wohl {wanted} vom Stamm; {a} steht {distance} entfernt und muss Wasser und Nährstoffe teilen.</translation>
  </message>
  <message>
   <source>The rootstock {rootstock} of {things} is hardy to zone {plant_zone}; this yard is zone {site_zone}.</source>
   <translation>Die Unterlage {rootstock} von {things} ist winterhart bis Zone {plant_zone}; dieser Garten liegt in Zone {site_zone}.</translation>
  </message>
  <message>
   <source>The row {a} grows to about {height} and runs {distance} from {b}; nothing taller than {tallest} belongs there.</source>
   <translation>Die Reihe {a} wird etwa {height} hoch und verläuft {distance} von {b}; dorthin gehört nichts, was höher wird als {tallest}.</translation>
  </message>
  <message>
   <source>The row {a} runs across the slope and can hold cold air like a hedge.</source>
   <translation>Die Reihe {a} verläuft quer zum Hang und kann Kaltluft stauen wie eine Hecke.</translation>
  </message>
  <message>
   <source>The row {a} runs across {b}.</source>
   <translation>Die Reihe {a} verläuft quer über {b}.</translation>
  </message>
  <message>
   <source>The row {a} runs through the bed {b}, which is planted with {crop}.</source>
   <translation>Die Reihe {a} läuft durch das Beet {b}, das mit {crop} bepflanzt ist.</translation>
  </message>
  <message>
   <source>The row {a} runs {distance} from {b}, a buried line ({line}); {wanted} keeps roots, posts and spades off it.</source>
   <translation>Die Reihe {a} verläuft {distance} von {b}, einer erdverlegten Leitung ({line}); {wanted} halten Wurzeln, Pfosten und Spaten fern.</translation>
  </message>
  <message>
   <source>The row {a} runs {distance} inside the lot line; {wanted} lets you reach both sides from your own.</source>
   <translation>Die Reihe {a} verläuft {distance} innerhalb der Grundstücksgrenze; mit {wanted} erreichen Sie beide Seiten von Ihrer aus.</translation>
  </message>
  <message>
   <source>The row {a} stands {distance} from {b}; its plants reach {wanted} to each side.</source>
   <translation>Die Reihe {a} steht {distance} von {b}; ihre Pflanzen reichen nach jeder Seite {wanted}.</translation>
  </message>
  <message>
   <source>The rows {a} and {b} are {distance} apart; {wanted} is needed between them.</source>
   <translation>Die Reihen {a} und {b} liegen {distance} auseinander; dazwischen sind {wanted} nötig.</translation>
  </message>
  <message>
   <source>The site card says that nothing is watered here, and shallow roots want {week} of water a week while they grow and fruit: {things}.</source>
   <translation>Laut Standortkarte wird hier nicht gegossen; flache Wurzeln brauchen in Wachstum und Fruchtzeit {week} Wasser in der Woche: {things}.</translation>
  </message>
  <message>
   <source>The site has no monthly temperatures: bloom dates are moved here from {text} and may be wrong by ten days; partners are judged by bloom class.</source>
   <translation>Dem Standort fehlen Monatstemperaturen: Die Blühtermine werden von {text} hierher übertragen und können zehn Tage danebenliegen; Befruchter werden nach der Blütezeitgruppe beurteilt.</translation>
  </message>
  <message>
   <source>The site has no monthly temperatures: bloom has no dates, partners are judged by bloom class and frost at bloom not at all.</source>
   <translation>Dem Standort fehlen Monatstemperaturen: Die Blüte hat keine Termine, Befruchter werden nach der Blütezeitgruppe beurteilt, Frost zur Blüte gar nicht.</translation>
  </message>
  <message>
   <source>The stems of {a} and {b} stand {distance} apart; in a group kept small they need {wanted}.</source>
   <translation>Die Stämme von {a} und {b} stehen {distance} auseinander; in einer klein gehaltenen Gruppe brauchen sie {wanted}.</translation>
  </message>
  <message>
   <source>The texture of the soil is not entered, so the amounts shown run from sand to clay.</source>
   <translation>Die Bodenart ist nicht eingetragen; die Mengen reichen deshalb von Sand bis Ton.</translation>
  </message>
  <message>
   <source>The {home} has pH {ph} where {low} to {high} is wanted: {things}.</source>
   <translation>{home}: pH {ph}, erwünscht sind {low} bis {high}: {things}.</translation>
  </message>
  <message>
   <source>The {home} has pH {ph} where {low} to {high} is wanted: {things}. Above pH 6 sulfur alone will hardly do: much peat or bark is needed besides, and it must be kept up every year.</source>
   <translation>{home}: pH {ph}, erwünscht sind {low} bis {high}: {things}. Über pH 6 reicht Schwefel allein kaum: Es braucht dazu viel Torf oder Rinde, und das jedes Jahr aufs Neue.</translation>
  </message>
  <message>
   <source>The {home} holds free lime[ (pH {ph})] and sulfur cannot change that, where pH {low} to {high} is wanted: {things}. Leaves may turn yellow for want of iron.</source>
   <translation>{home} mit freiem Kalk[ (pH {ph})], den Schwefel nicht ändern kann; erwünscht ist pH {low} bis {high}: {things}. Blätter können aus Eisenmangel vergilben.</translation>
  </message>
  <message>
   <source>Turn it down the slope, or leave {gap} free under the lowest wire and gaps in the row.</source>
   <translation>In Fallrichtung drehen oder unter dem untersten Draht {gap} und in der Reihe Lücken freilassen.</translation>
  </message>
  <message>
   <source>Turn it nearer to north and south where there is room.</source>
   <translation>Wo Platz ist, näher an die Nord–Süd-Richtung drehen.</translation>
  </message>
  <message>
   <source>US gal</source>
   <translation>US-gal</translation>
  </message>
  <message>
   <source>Wakes early: {variety}</source>
   <translation>Treibt zu früh: {variety}</translation>
  </message>
  <message>
   <source>Water and feed {a} more, or move it beyond {wanted}.</source>
   <translation>{a} mehr gießen und düngen oder weiter als {wanted} wegsetzen.</translation>
  </message>
  <message>
   <source>Water it by hand or drip line, or move it {short} to the {direction}.</source>
   <translation>Von Hand oder mit Tropfleitung gießen oder um {short} nach {direction} versetzen.</translation>
  </message>
  <message>
   <source>Water up to once a day in hot weather, feed twice a month, and re-pot every {years} years or so.</source>
   <translation>Bei Hitze bis zu einmal täglich gießen, zweimal im Monat düngen und etwa alle {years} Jahre umtopfen.</translation>
  </message>
  <message>
   <source>Ways and reach</source>
   <translation>Wege und Reichweite</translation>
  </message>
  <message>
   <source>Weak partner: {variety}</source>
   <translation>Schwacher Befruchter: {variety}</translation>
  </message>
  <message>
   <source>Wet and dry ground</source>
   <translation>Nasser und trockener Boden</translation>
  </message>
  <message>
   <source>What grew before</source>
   <translation>Was vorher wuchs</translation>
  </message>
  <message>
   <source>Widen the gate by {short}, or choose a narrower way among the fields of the yard.</source>
   <translation>Das Tor um {short} verbreitern oder bei den Angaben zum Garten einen schmaleren Weg wählen.</translation>
  </message>
  <message>
   <source>Wind, cold air and slope</source>
   <translation>Wind, Kaltluft und Hang</translation>
  </message>
  <message>
   <source>Winter chill</source>
   <translation>Winterkälte</translation>
  </message>
  <message>
   <source>Winter cold</source>
   <translation>Winterkälte</translation>
  </message>
  <message>
   <source>Winters here are too mild to date bloom from temperatures: bloom classes must do.</source>
   <translation>Die Winter hier sind zu mild, um die Blüte aus Temperaturen zu datieren: Es bleiben die Blütezeitgruppen.</translation>
  </message>
  <message>
   <source>Winters too warm: {variety}</source>
   <translation>Winter zu warm: {variety}</translation>
  </message>
  <message>
   <source>Work {least}[ to {most}] of elemental sulfur into {area}, {depth} deep, {months} months before planting, in {dressings}; test again after {retest} months and before each further one.</source>
   <translation>{least}[ bis {most}] Elementarschwefel auf {area} einarbeiten, {depth} tief, {months} Monate vor dem Pflanzen, in {dressings}; nach {retest} Monaten und vor jeder weiteren Gabe neu prüfen.</translation>
  </message>
  <message>
   <source>Work {least}[ to {most}] of elemental sulfur into {area}, {depth} deep, {months} months before planting, in {dressings}; test again after {retest} months and before each further one. A raised bed or a container with acid mix is surer.</source>
   <translation>{least}[ bis {most}] Elementarschwefel auf {area} einarbeiten, {depth} tief, {months} Monate vor dem Pflanzen, in {dressings}; nach {retest} Monaten und vor jeder weiteren Gabe neu prüfen. Sicherer ist ein Hochbeet oder ein Kübel mit saurem Substrat.</translation>
  </message>
  <message>
   <source>a barrow or push mower</source>
   <translation>eine Schubkarre oder ein Handmäher</translation>
  </message>
  <message>
   <source>a garden cart</source>
   <translation>ein Gartenkarren</translation>
  </message>
  <message>
   <source>a ride-on mower</source>
   <translation>ein Aufsitzmäher</translation>
  </message>
  <message>
   <source>among a big tree's roots</source>
   <translation>zwischen Wurzeln eines großen Baums</translation>
  </message>
  <message>
   <source>an orchard ladder</source>
   <translation>eine Obstleiter</translation>
  </message>
  <message>
   <source>any side</source>
   <translation>irgendeiner Seite</translation>
  </message>
  <message>
   <source>ask before you dig</source>
   <translation>vor dem Graben nachfragen</translation>
  </message>
  <message>
   <source>at the foot of the slope</source>
   <translation>am Fuß des Hangs</translation>
  </message>
  <message>
   <source>barred by the state</source>
   <translation>im Bundesstaat verboten</translation>
  </message>
  <message>
   <source>bed</source>
   <translation>Beet</translation>
  </message>
  <message>
   <source>bed on {b}</source>
   <translation>Beet auf {b}</translation>
  </message>
  <message>
   <source>bed over {b}</source>
   <translation>Beet über {b}</translation>
  </message>
  <message>
   <source>bed too small</source>
   <translation>Beet zu klein</translation>
  </message>
  <message>
   <source>beds over each other</source>
   <translation>Beete übereinander</translation>
  </message>
  <message>
   <source>blister rust of white pine</source>
   <translation>Blasenrost der Weymouthskiefer</translation>
  </message>
  <message>
   <source>blocks the view of the street</source>
   <translation>verdeckt die Sicht zur Straße</translation>
  </message>
  <message>
   <source>care</source>
   <translation>Pflege</translation>
  </message>
  <message>
   <source>check the state rule</source>
   <translation>Regel des Bundesstaats prüfen</translation>
  </message>
  <message>
   <source>close to a windbreak</source>
   <translation>nah am Windschutz</translation>
  </message>
  <message>
   <source>close to the paving</source>
   <translation>nah am Weg</translation>
  </message>
  <message>
   <source>container</source>
   <translation>Kübel</translation>
  </message>
  <message>
   <source>container not found</source>
   <translation>Kübel nicht gefunden</translation>
  </message>
  <message>
   <source>count</source>
   <translation>Anzahl</translation>
  </message>
  <message>
   <source>country</source>
   <translation>das Land</translation>
  </message>
  <message>
   <source>damage</source>
   <translation>Schaden</translation>
  </message>
  <message>
   <source>days</source>
   <translation>Tage</translation>
  </message>
  <message>
   <source>draw a gate</source>
   <translation>Tor einzeichnen</translation>
  </message>
  <message>
   <source>drawn beyond the lot line</source>
   <translation>über die Grenze gezeichnet</translation>
  </message>
  <message>
   <source>dry under the eaves</source>
   <translation>trocken unter dem Dach</translation>
  </message>
  <message>
   <source>east</source>
   <translation>Osten</translation>
  </message>
  <message>
   <source>enter the soil pH</source>
   <translation>Boden-pH eintragen</translation>
  </message>
  <message>
   <source>enter the soil texture</source>
   <translation>Bodenart eintragen</translation>
  </message>
  <message>
   <source>enter the zone</source>
   <translation>Zone eintragen</translation>
  </message>
  <message>
   <source>far from its wall</source>
   <translation>weit von seiner Wand</translation>
  </message>
  <message>
   <source>form not known</source>
   <translation>Erziehungsform nicht bekannt</translation>
  </message>
  <message>
   <source>free lime: needs acid soil</source>
   <translation>freier Kalk: braucht saure Erde</translation>
  </message>
  <message>
   <source>from memory, not confirmed by a source</source>
   <translation>aus dem Gedächtnis, durch keine Quelle bestätigt</translation>
  </message>
  <message>
   <source>ft</source>
   <translation>ft</translation>
  </message>
  <message>
   <source>gate {short} too narrow</source>
   <translation>Tor {short} zu schmal</translation>
  </message>
  <message>
   <source>ground</source>
   <translation>Boden</translation>
  </message>
  <message>
   <source>group {short} too tight</source>
   <translation>Gruppe {short} zu eng</translation>
  </message>
  <message>
   <source>growth</source>
   <translation>Wachstum</translation>
  </message>
  <message>
   <source>half a zone</source>
   <translation>eine halbe Zone</translation>
  </message>
  <message>
   <source>high</source>
   <translation>hoch</translation>
  </message>
  <message>
   <source>hours</source>
   <translation>Stunden</translation>
  </message>
  <message>
   <source>in</source>
   <translation>in</translation>
  </message>
  <message>
   <source>in a bed of {crop}</source>
   <translation>im Beet mit {crop}</translation>
  </message>
  <message>
   <source>in a frost pocket</source>
   <translation>in einem Frostloch</translation>
  </message>
  <message>
   <source>inside {b}</source>
   <translation>innerhalb von {b}</translation>
  </message>
  <message>
   <source>kind not known</source>
   <translation>Art nicht bekannt</translation>
  </message>
  <message>
   <source>ladder near the line</source>
   <translation>Leiter nahe der Leitung</translation>
  </message>
  <message>
   <source>largest part</source>
   <translation>größter Teil</translation>
  </message>
  <message>
   <source>late in some years</source>
   <translation>in manchen Jahren spät</translation>
  </message>
  <message>
   <source>law</source>
   <translation>Recht</translation>
  </message>
  <message>
   <source>lb/100 sq ft</source>
   <translation>lb/100 sq ft</translation>
  </message>
  <message>
   <source>limy soil</source>
   <translation>kalkhaltiger Boden</translation>
  </message>
  <message>
   <source>litres</source>
   <translation>Liter</translation>
  </message>
  <message>
   <source>local figure not used</source>
   <translation>örtlicher Wert nicht verwendet</translation>
  </message>
  <message>
   <source>lot line</source>
   <translation>Grundstücksgrenze</translation>
  </message>
  <message>
   <source>low</source>
   <translation>gering</translation>
  </message>
  <message>
   <source>mind the well</source>
   <translation>auf den Brunnen achten</translation>
  </message>
  <message>
   <source>mix does not suit</source>
   <translation>Substrat passt nicht</translation>
  </message>
  <message>
   <source>moderate</source>
   <translation>mittel</translation>
  </message>
  <message>
   <source>months</source>
   <translation>Monate</translation>
  </message>
  <message>
   <source>needs a bed of acid soil</source>
   <translation>braucht ein Beet mit saurer Erde</translation>
  </message>
  <message>
   <source>no room for a ladder</source>
   <translation>kein Platz für eine Leiter</translation>
  </message>
  <message>
   <source>no shelter from wind</source>
   <translation>kein Windschutz</translation>
  </message>
  <message>
   <source>no way in at full size</source>
   <translation>ausgewachsen kein Zugang</translation>
  </message>
  <message>
   <source>no zone to spare</source>
   <translation>kein Spielraum bei der Zone</translation>
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
   <source>not for a pot</source>
   <translation>nicht für Kübel</translation>
  </message>
  <message>
   <source>on foot</source>
   <translation>zu Fuß</translation>
  </message>
  <message>
   <source>on the septic field</source>
   <translation>auf der Sickerfläche</translation>
  </message>
  <message>
   <source>one dressing</source>
   <translation>einer Gabe</translation>
  </message>
  <message>
   <source>only {hours} of sun</source>
   <translation>nur {hours} Sonne</translation>
  </message>
  <message>
   <source>outside the lot line</source>
   <translation>außerhalb der Grenze</translation>
  </message>
  <message>
   <source>own variety not used</source>
   <translation>eigene Sorte nicht verwendet</translation>
  </message>
  <message>
   <source>paving</source>
   <translation>befestigte Fläche</translation>
  </message>
  <message>
   <source>pot roots may freeze</source>
   <translation>Kübelwurzeln können erfrieren</translation>
  </message>
  <message>
   <source>pot too small</source>
   <translation>Kübel zu klein</translation>
  </message>
  <message>
   <source>pot too small for {count}</source>
   <translation>Kübel zu klein für {count}</translation>
  </message>
  <message>
   <source>pots in winter</source>
   <translation>Kübel im Winter</translation>
  </message>
  <message>
   <source>pots want water</source>
   <translation>Kübel brauchen Wasser</translation>
  </message>
  <message>
   <source>rootstock not known</source>
   <translation>Unterlage nicht bekannt</translation>
  </message>
  <message>
   <source>rootstock {lack} too tender</source>
   <translation>Unterlage zu frostempfindlich ({lack})</translation>
  </message>
  <message>
   <source>row across the slope</source>
   <translation>Reihe quer zum Hang</translation>
  </message>
  <message>
   <source>row across the sun</source>
   <translation>Reihe quer zur Sonne</translation>
  </message>
  <message>
   <source>row across {b}</source>
   <translation>Reihe quer über {b}</translation>
  </message>
  <message>
   <source>row in a bed of {crop}</source>
   <translation>Reihe in einem Beet mit {crop}</translation>
  </message>
  <message>
   <source>row near the lot line</source>
   <translation>Reihe nah an der Grenze</translation>
  </message>
  <message>
   <source>row too dense</source>
   <translation>Reihe zu dicht</translation>
  </message>
  <message>
   <source>row too tall under the line</source>
   <translation>Reihe zu hoch unter der Leitung</translation>
  </message>
  <message>
   <source>row {short} into the wall</source>
   <translation>Reihe {short} in die Wand</translation>
  </message>
  <message>
   <source>row {short} too near the {line} line</source>
   <translation>Reihe {short} zu nah an der Leitung: {line}</translation>
  </message>
  <message>
   <source>rows {short} too close</source>
   <translation>Reihen {short} zu eng</translation>
  </message>
  <message>
   <source>rust from a juniper</source>
   <translation>Rost vom Wacholder</translation>
  </message>
  <message>
   <source>safety</source>
   <translation>Sicherheit</translation>
  </message>
  <message>
   <source>same fruit as before</source>
   <translation>gleiches Obst wie zuvor</translation>
  </message>
  <message>
   <source>seldom ripens here</source>
   <translation>reift hier selten</translation>
  </message>
  <message>
   <source>share</source>
   <translation>Anteil</translation>
  </message>
  <message>
   <source>soil pH {ph} too high</source>
   <translation>Boden-pH {ph} zu hoch</translation>
  </message>
  <message>
   <source>soil pH {ph} too low</source>
   <translation>Boden-pH {ph} zu niedrig</translation>
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
   <source>sq ft</source>
   <translation>sq ft</translation>
  </message>
  <message>
   <source>state rule on currants</source>
   <translation>Regel des Bundesstaats zu Johannisbeeren</translation>
  </message>
  <message>
   <source>steep ground</source>
   <translation>steiles Gelände</translation>
  </message>
  <message>
   <source>stem too near the wall</source>
   <translation>Stamm zu nah an der Wand</translation>
  </message>
  <message>
   <source>test the drainage</source>
   <translation>Wasserabzug prüfen</translation>
  </message>
  <message>
   <source>the east</source>
   <translation>Osten</translation>
  </message>
  <message>
   <source>the north</source>
   <translation>Norden</translation>
  </message>
  <message>
   <source>the north-east</source>
   <translation>Nordosten</translation>
  </message>
  <message>
   <source>the north-west</source>
   <translation>Nordwesten</translation>
  </message>
  <message>
   <source>the south</source>
   <translation>Süden</translation>
  </message>
  <message>
   <source>the south-east</source>
   <translation>Südosten</translation>
  </message>
  <message>
   <source>the south-west</source>
   <translation>Südwesten</translation>
  </message>
  <message>
   <source>the west</source>
   <translation>Westen</translation>
  </message>
  <message>
   <source>three dressings</source>
   <translation>drei Gaben</translation>
  </message>
  <message>
   <source>times height</source>
   <translation>mal Höhe</translation>
  </message>
  <message>
   <source>too tall under the line</source>
   <translation>zu hoch unter der Leitung</translation>
  </message>
  <message>
   <source>two dressings</source>
   <translation>zwei Gaben</translation>
  </message>
  <message>
   <source>under the roof's edge</source>
   <translation>unter der Dachkante</translation>
  </message>
  <message>
   <source>variety not known</source>
   <translation>Sorte nicht bekannt</translation>
  </message>
  <message>
   <source>wall plant on clay</source>
   <translation>Wandpflanze auf Ton</translation>
  </message>
  <message>
   <source>wants water every week</source>
   <translation>braucht jede Woche Wasser</translation>
  </message>
  <message>
   <source>west</source>
   <translation>Westen</translation>
  </message>
  <message>
   <source>wild brambles near</source>
   <translation>wilde Brombeeren in der Nähe</translation>
  </message>
  <message>
   <source>wilt from {before}</source>
   <translation>Welke nach {before}</translation>
  </message>
  <message>
   <source>years</source>
   <translation>Jahre</translation>
  </message>
  <message>
   <source>zone not known</source>
   <translation>Zone nicht bekannt</translation>
  </message>
  <message>
   <source>zones</source>
   <translation>Zonen</translation>
  </message>
  <message>
   <source>{a} (about {height} tall) reaches {short} into the view triangle of {b} ({legs} legs): nothing may stand there between {low} and {high}.</source>
   <translation>{a} (etwa {height} hoch) ragt {short} in das Sichtdreieck von {b} (Schenkel {legs}): Zwischen {low} und {high} darf dort nichts stehen.</translation>
  </message>
  <message>
   <source>{a} (about {height} tall) stands {distance} from {b}; {wanted} keeps leaves and fruit out and roots off its pipes.</source>
   <translation>{a} (etwa {height} hoch) steht {distance} von {b}; {wanted} halten Laub und Früchte heraus und Wurzeln von den Rohren fern.</translation>
  </message>
  <message>
   <source>{a} (about {height} tall) stands {distance} inside the lot line. The usual figure there ({country}) is {wanted}. {law}.</source>
   <translation>{a} (etwa {height} hoch) steht {distance} innerhalb der Grundstücksgrenze. Üblich sind dort ({country}) {wanted}. {law}.</translation>
  </message>
  <message>
   <source>{a} (about {height} tall) stands {distance} inside the lot line; your local figure is {wanted}.</source>
   <translation>{a} (etwa {height} hoch) steht {distance} innerhalb der Grundstücksgrenze; Ihr örtlicher Wert ist {wanted}.</translation>
  </message>
  <message>
   <source>{a} and {b} lie over each other, up to {wide} wide.</source>
   <translation>{a} und {b} liegen bis zu {wide} breit übereinander.</translation>
  </message>
  <message>
   <source>{a} and {b} may touch in this form, but stand {distance} apart where {wanted} is usual.</source>
   <translation>{a} und {b} dürfen sich in dieser Erziehungsform berühren, stehen aber {distance} auseinander; üblich sind {wanted}.</translation>
  </message>
  <message>
   <source>{a} and {b} stand {distance} apart and need {wanted} at full size: {overlap} of it is missing.</source>
   <translation>{a} und {b} stehen {distance} auseinander und brauchen ausgewachsen {wanted}: {overlap} davon fehlen.</translation>
  </message>
  <message>
   <source>{a} and {b} stand {distance} apart: even under an open tree {wanted} is needed.</source>
   <translation>{a} und {b} stehen {distance} auseinander: Auch unter einem lichten Baum sind {wanted} nötig.</translation>
  </message>
  <message>
   <source>{a} can give rust to {count} of your plants; the nearest, {nearest}, stands {distance} from it.</source>
   <translation>{a} kann {count} Ihrer Pflanzen mit Rost anstecken; die nächste, {nearest}, steht {distance} entfernt.</translation>
  </message>
  <message>
   <source>{a} comes after {before}[ by {years} years], which can leave wilt (Verticillium) in the ground for many years; {wait} years are wanted between.</source>
   <translation>{a} folgt auf {before}[ nach {years} Jahren]; das kann auf Jahre Welke (Verticillium) im Boden hinterlassen; erwünscht sind {wait} Jahre dazwischen.</translation>
  </message>
  <message>
   <source>{a} crops alone; {gain}.</source>
   <translation>{a} trägt allein; {gain}.</translation>
  </message>
  <message>
   <source>{a} gets {hours} of direct sun a day over the season, somewhat under the {needed} that {crop} needs[: shade of {hours_1} from {by_1}][ to {side_1}][, {hours_2} from {by_2}][ to {side_2}][, {hours_3} from {by_3}][ to {side_3}].</source>
   <translation>{a} bekommt über die Saison {hours} direkte Sonne am Tag, etwas weniger als die {needed}, die {crop} braucht[: Schatten {hours_1} von {by_1}][ im {side_1}][, {hours_2} von {by_2}][ im {side_2}][, {hours_3} von {by_3}][ im {side_3}].</translation>
  </message>
  <message>
   <source>{a} gets {hours} of direct sun a day over the season: enough, but {crop} does best with {good}[: shade of {hours_1} from {by_1}][ to {side_1}][, {hours_2} from {by_2}][ to {side_2}][, {hours_3} from {by_3}][ to {side_3}].</source>
   <translation>{a} bekommt über die Saison {hours} direkte Sonne am Tag: genug, doch {crop} gedeiht am besten mit {good}[: Schatten {hours_1} von {by_1}][ im {side_1}][, {hours_2} von {by_2}][ im {side_2}][, {hours_3} von {by_3}][ im {side_3}].</translation>
  </message>
  <message>
   <source>{a} gets {hours} of direct sun a day over the season; that is shade, and {crop} needs {needed}[: shade of {hours_1} from {by_1}][ to {side_1}][, {hours_2} from {by_2}][ to {side_2}][, {hours_3} from {by_3}][ to {side_3}].</source>
   <translation>{a} bekommt über die Saison {hours} direkte Sonne am Tag; das ist Schatten, {crop} braucht {needed}[: Schatten {hours_1} von {by_1}][ im {side_1}][, {hours_2} von {by_2}][ im {side_2}][, {hours_3} von {by_3}][ im {side_3}].</translation>
  </message>
  <message>
   <source>{a} gets {hours} of direct sun a day over the season; {crop} needs {needed}[: shade of {hours_1} from {by_1}][ to {side_1}][, {hours_2} from {by_2}][ to {side_2}][, {hours_3} from {by_3}][ to {side_3}].</source>
   <translation>{a} bekommt über die Saison {hours} direkte Sonne am Tag; {crop} braucht {needed}[: Schatten {hours_1} von {by_1}][ im {side_1}][, {hours_2} von {by_2}][ im {side_2}][, {hours_3} von {by_3}][ im {side_3}].</translation>
  </message>
  <message>
   <source>{a} grows to about {height} and stands {distance} from {b}; nothing taller than {tallest} belongs there.</source>
   <translation>{a} wird etwa {height} hoch und steht {distance} von {b}; dorthin gehört nichts, was höher wird als {tallest}.</translation>
  </message>
  <message>
   <source>{a} grows to about {height} and stands {distance} from {b}; {wanted} keeps roots off the foundation.</source>
   <translation>{a} wird etwa {height} hoch und steht {distance} von {b}; {wanted} halten die Wurzeln vom Fundament fern.</translation>
  </message>
  <message>
   <source>{a} has {count} plants {distance} apart; {wanted} is the closest that is usual.</source>
   <translation>{a} hat {count} Pflanzen im Abstand von {distance}; enger als {wanted} ist nicht üblich.</translation>
  </message>
  <message>
   <source>{a} is drawn {short} beyond the lot line.</source>
   <translation>{a} ist {short} über die Grundstücksgrenze hinaus gezeichnet.</translation>
  </message>
  <message>
   <source>{a} is hardy to zone {plant_zone} (about {plant_low}); this yard is zone {site_zone}, where the coldest night of a mean year is about {site_low}. It is {lack} short.</source>
   <translation>{a} ist winterhart bis Zone {plant_zone} (etwa {plant_low}); dieser Garten liegt in Zone {site_zone}, wo die kälteste Nacht eines mittleren Jahres etwa {site_low} erreicht. Es fehlt {lack}.</translation>
  </message>
  <message>
   <source>{a} is not a variety for pots: it grows to about {height} in the ground.</source>
   <translation>{a} ist keine Kübelsorte: Im Boden wird sie etwa {height} hoch.</translation>
  </message>
  <message>
   <source>{a} is trained along {b} with its stem {distance} off it; {wanted} is as far as the wall can carry it.</source>
   <translation>{a} ist entlang {b} gezogen, der Stamm {distance} davor; weiter als {wanted} kann die Wand ihn nicht tragen.</translation>
  </message>
  <message>
   <source>{a} is trained on {b} with its stem {distance} off it; {wanted} lets the stem thicken.</source>
   <translation>{a} ist an {b} gezogen, der Stamm {distance} davor; {wanted} lassen ihn dicker werden.</translation>
  </message>
  <message>
   <source>{a} is worked from a ladder {distance} from {b}.</source>
   <translation>{a} wird von der Leiter aus gepflegt, {distance} von {b}.</translation>
  </message>
  <message>
   <source>{a} is {gate} wide; the way you chose needs {width}.</source>
   <translation>{a} ist {gate} breit; der gewählte Weg braucht {width}.</translation>
  </message>
  <message>
   <source>{a} is {length} long and takes {fit} plants {spacing} apart, not {count}.</source>
   <translation>{a} ist {length} lang und fasst {fit} Pflanzen im Abstand von {spacing}, nicht {count}.</translation>
  </message>
  <message>
   <source>{a} lies on {b}, up to {wide} wide: under paving roots find no soil.</source>
   <translation>{a} liegt bis zu {wide} breit auf {b}: unter befestigter Fläche finden Wurzeln keinen Boden.</translation>
  </message>
  <message>
   <source>{a} lies on {b}: no tilling, no watering and no food crops there, its lines may lie 6 in down.</source>
   <translation>{a} liegt auf {b}: dort nicht graben, nicht gießen und kein Gemüse oder Obst ziehen; die Rohre können 15 cm tief liegen.</translation>
  </message>
  <message>
   <source>{a} lies over the water of {b}, up to {wide} wide.</source>
   <translation>{a} liegt bis zu {wide} breit über dem Wasser von {b}.</translation>
  </message>
  <message>
   <source>{a} lies over {b}, up to {wide} wide: nothing grows there.</source>
   <translation>{a} liegt bis zu {wide} breit über {b}: dort wächst nichts.</translation>
  </message>
  <message>
   <source>{a} may carry virus to {count} of your brambles; the nearest, {nearest}, stands {distance} from it.</source>
   <translation>{a} kann Viren auf {count} Ihrer Brombeeren und Himbeeren übertragen; die nächste, {nearest}, steht {distance} entfernt.</translation>
  </message>
  <message>
   <source>{a} names the container {pot}, which is not there; it is taken to stand in the ground.</source>
   <translation>{a} nennt den Kübel {pot}, den es nicht gibt; die Pflanze gilt als im Boden stehend.</translation>
  </message>
  <message>
   <source>{a} needs pollen, and the kin it has are triploid and give none[. {others}].</source>
   <translation>{a} braucht Pollen, doch die Verwandten hier sind triploid und geben keinen[. {others}].</translation>
  </message>
  <message>
   <source>{a} reaches {short} outside the lot line.</source>
   <translation>{a} reicht {short} über die Grundstücksgrenze hinaus.</translation>
  </message>
  <message>
   <source>{a} sets no fruit alone and no plant here sets it[. {others}].</source>
   <translation>{a} setzt allein keine Früchte an, und keine Pflanze hier befruchtet sie[. {others}].</translation>
  </message>
  <message>
   <source>{a} sets only a light crop alone and no plant here helps it[. {others}].</source>
   <translation>{a} trägt allein nur wenig, und keine Pflanze hier hilft[. {others}].</translation>
  </message>
  <message>
   <source>{a} stands in the bed {b}, which is planted with {crop}.</source>
   <translation>{a} steht im Beet {b}, das mit {crop} bepflanzt ist.</translation>
  </message>
  <message>
   <source>{a} stands inside {b}.</source>
   <translation>{a} steht innerhalb von {b}.</translation>
  </message>
  <message>
   <source>{a} stands {distance} from {b}, a buried line ({line}); {wanted} keeps roots and spades off it.</source>
   <translation>{a} steht {distance} von {b}, einer erdverlegten Leitung ({line}); {wanted} halten Wurzeln und Spaten fern.</translation>
  </message>
  <message>
   <source>{a} stands {distance} from {b}, a tall hedge; one plant's width, {wanted}, keeps it clear of the hedge's roots and shade.</source>
   <translation>{a} steht {distance} von {b}, einer hohen Hecke; eine Pflanzenbreite, {wanted}, hält sie von Wurzeln und Schatten der Hecke frei.</translation>
  </message>
  <message>
   <source>{a} stands {distance} from {b}, right under the roof's edge ({overhang} out), where water and snow come down.</source>
   <translation>{a} steht {distance} von {b}, genau unter der Dachkante (Überstand {overhang}), wo Wasser und Schnee herabkommen.</translation>
  </message>
  <message>
   <source>{a} stands {distance} from {b}, where the roof keeps the rain off for about {wanted}.</source>
   <translation>{a} steht {distance} von {b}; dort hält das Dach auf etwa {wanted} den Regen ab.</translation>
  </message>
  <message>
   <source>{a} stands {distance} from {b}, which can carry virus without showing it; {wanted} is wanted between them.</source>
   <translation>{a} steht {distance} von {b}; diese kann Viren tragen, ohne es zu zeigen. Zwischen beiden sind {wanted} erwünscht.</translation>
  </message>
  <message>
   <source>{a} stands {distance} from {b}, which leaks juglone from its roots; {a} is of a kind it harms, up to {wanted} from the trunk.</source>
   <translation>{a} steht {distance} von {b}, dessen Wurzeln Juglon abgeben; {a} gehört zu den Arten, die es bis {wanted} vom Stamm schädigt.</translation>
  </message>
  <message>
   <source>{a} stands {distance} from {b}, whose roots leak juglone up to {wanted}; how this kind bears it is not known.</source>
   <translation>{a} steht {distance} von {b}, dessen Wurzeln bis {wanted} weit Juglon abgeben; wie diese Art es verträgt, ist nicht bekannt.</translation>
  </message>
  <message>
   <source>{a} stands {distance} from {b}; a service rig needs {wanted}.</source>
   <translation>{a} steht {distance} von {b}; ein Wartungsfahrzeug braucht {wanted}.</translation>
  </message>
  <message>
   <source>{a} stands {distance} from {b}; at full size its crown reaches {wanted}.</source>
   <translation>{a} steht {distance} von {b}; ausgewachsen reicht die Krone {wanted}.</translation>
  </message>
  <message>
   <source>{a} stands {distance} from {b}; at least {wanted} is asked for.</source>
   <translation>{a} steht {distance} von {b}; verlangt sind mindestens {wanted}.</translation>
  </message>
  <message>
   <source>{a} stands {distance} from {b}; its crown and a gap to work in need {wanted}.</source>
   <translation>{a} steht {distance} von {b}; Krone und Arbeitsgang brauchen {wanted}.</translation>
  </message>
  <message>
   <source>{a} stands {distance} from {b}; its roots need {wanted} ({height} tall at full size).</source>
   <translation>{a} steht {distance} von {b}; die Wurzeln brauchen {wanted} (ausgewachsen {height} hoch).</translation>
  </message>
  <message>
   <source>{a} stands {distance} from {b}; {wanted} keeps its roots from lifting the paving.</source>
   <translation>{a} steht {distance} von {b}; {wanted} verhindern, dass die Wurzeln den Belag anheben.</translation>
  </message>
  <message>
   <source>{a} stands {distance} inside the lot line; at full size its crown reaches {wanted}.</source>
   <translation>{a} steht {distance} innerhalb der Grundstücksgrenze; ausgewachsen reicht die Krone {wanted}.</translation>
  </message>
  <message>
   <source>{a} stands {distance} uphill of {b}, which dams the cold air that runs down on clear nights.</source>
   <translation>{a} steht {distance} oberhalb von {b}; dort staut sich die Kaltluft, die in klaren Nächten abfließt.</translation>
  </message>
  <message>
   <source>{a} stands {short} outside the lot line.</source>
   <translation>{a} steht {short} außerhalb der Grundstücksgrenze.</translation>
  </message>
  <message>
   <source>{a} takes no plant at a spacing of {spacing}.</source>
   <translation>{a} fasst beim Abstand von {spacing} keine Pflanze.</translation>
  </message>
  <message>
   <source>{a} takes only about {share} of the pollen of {donor}, {distance} away[ ({overlap} in bloom together, {often})]: enough in most years, thin in poor ones.</source>
   <translation>{a} nimmt nur etwa {share} des Pollens von {donor} an, {distance} entfernt[ (gemeinsame Blüte {overlap}, {often})]: in den meisten Jahren genug, in schlechten knapp.</translation>
  </message>
  <message>
   <source>{a} would stand where {before} stood: the same fruit in the same hole often starts poorly.</source>
   <translation>{a} stünde dort, wo {before} stand: Gleiches Obst im selben Loch wächst oft schlecht an (Nachbaumüdigkeit).</translation>
  </message>
  <message>
   <source>{a}: no form '{form}' is known for it, so the usual size of the kind is used.</source>
   <translation>{a}: Dafür ist keine Erziehungsform „{form}“ bekannt; es gilt die übliche Größe der Art.</translation>
  </message>
  <message>
   <source>{a}: no rootstock '{rootstock}' is known for it, so the usual size of the kind is used.</source>
   <translation>{a}: Dafür ist keine Unterlage „{rootstock}“ bekannt; es gilt die übliche Größe der Art.</translation>
  </message>
  <message>
   <source>{a}: the catalogue has no kind '{kind}', so its size and needs are guessed.</source>
   <translation>{a}: Der Katalog hat keine Art „{kind}“; Größe und Ansprüche sind geschätzt.</translation>
  </message>
  <message>
   <source>{a}: the catalogue has no {kind} named '{variety}'; its pollen, bloom and hardiness are not known.</source>
   <translation>{a}: Der Katalog hat unter {kind} keine Sorte „{variety}“; Pollen, Blüte und Winterhärte sind nicht bekannt.</translation>
  </message>
  <message>
   <source>{a}: the {home} has pH {ph}; {crop} wants {low} to {high}. Ground this alkaline is not worth making acid.</source>
   <translation>{a}: {home} mit pH {ph}; {crop} braucht {low} bis {high}. So alkalischen Boden anzusäuern lohnt nicht.</translation>
  </message>
  <message>
   <source>{a}: the {home} holds free lime[ (pH {ph})] and cannot be made acid; {crop} wants pH {low} to {high}.</source>
   <translation>{a}: {home} mit freiem Kalk[ (pH {ph})], nicht anzusäuern; {crop} braucht pH {low} bis {high}.</translation>
  </message>
  <message>
   <source>{b} stands in {a} of {volume}; it needs at least {wanted} at full size.</source>
   <translation>{b} steht in {a} mit {volume}; ausgewachsen braucht die Pflanze mindestens {wanted}.</translation>
  </message>
  <message>
   <source>{b} stands {distance} from the row {a}; at full size they need {wanted}.</source>
   <translation>{b} steht {distance} von der Reihe {a}; ausgewachsen brauchen sie {wanted}.</translation>
  </message>
  <message>
   <source>{count} plants share {a} of {volume}; together they need at least {wanted}.</source>
   <translation>{count} Pflanzen teilen sich {a} mit {volume}; zusammen brauchen sie mindestens {wanted}.</translation>
  </message>
  <message>
   <source>{distance} from a walnut</source>
   <translation>{distance} von einer Walnuss</translation>
  </message>
  <message>
   <source>{distance} from red raspberries</source>
   <translation>{distance} von Himbeeren</translation>
  </message>
  <message>
   <source>{donor} suits {a} but stands {distance} away: beyond {best} set falls off[ ({overlap} in bloom together, {often})].</source>
   <translation>{donor} passt zu {a}, steht aber {distance} entfernt: Jenseits von {best} lässt der Ansatz nach[ (gemeinsame Blüte {overlap}, {often})].</translation>
  </message>
  <message>
   <source>{donor}, {distance} away, probably sets {a}[ ({overlap} in bloom together, {often})], but: {why}.</source>
   <translation>{donor}, {distance} entfernt, befruchtet {a} wahrscheinlich[ (gemeinsame Blüte {overlap}, {often})], aber: {why}.</translation>
  </message>
  <message>
   <source>{drainage} drainage</source>
   <translation>Wasserabzug: {drainage}</translation>
  </message>
  <message>
   <source>{fit} plants fit, not {count}</source>
   <translation>{fit} Pflanzen passen, nicht {count}</translation>
  </message>
  <message>
   <source>{hours} h</source>
   <translation>{hours} h</translation>
  </message>
  <message>
   <source>{hours} of sun, best with {good}</source>
   <translation>{hours} Sonne, am besten {good}</translation>
  </message>
  <message>
   <source>{hours} of sun, needs {needed}</source>
   <translation>{hours} Sonne, braucht {needed}</translation>
  </message>
  <message>
   <source>{lack} too tender</source>
   <translation>zu frostempfindlich ({lack})</translation>
  </message>
  <message>
   <source>{law}. They host the blister rust of white pines: {things}.</source>
   <translation>{law}. Sie sind Wirte des Blasenrosts der Weymouthskiefer: {things}.</translation>
  </message>
  <message>
   <source>{law}: {things}.</source>
   <translation>{law}: {things}.</translation>
  </message>
  <message>
   <source>{low_in} to {high_in} in ({low} to {high} mm)</source>
   <translation>{low} bis {high} mm ({low_in} bis {high_in} in)</translation>
  </message>
  <message>
   <source>{near} of the {count} plants of {a} stand within {best} of {donor}; farther along the row set falls off.</source>
   <translation>{near} der {count} Pflanzen von {a} stehen innerhalb von {best} von {donor}; weiter die Reihe entlang lässt der Ansatz nach.</translation>
  </message>
  <message numerus="yes">
   <source>{n} days</source>
   <translation>
    <numerusform>{n} Tag</numerusform>
    <numerusform>{n} Tage</numerusform>
   </translation>
  </message>
  <message>
   <source>{n} zones</source>
   <translation>{n} Zonen</translation>
  </message>
  <message>
   <source>{over} over the paving</source>
   <translation>{over} über dem Weg</translation>
  </message>
  <message>
   <source>{over} too warm</source>
   <translation>zu warm ({over})</translation>
  </message>
  <message>
   <source>{rule}: {value} is outside {low} to {high} {unit}</source>
   <translation>{rule}: {value} liegt außerhalb von {low} bis {high} {unit}</translation>
  </message>
  <message>
   <source>{share} of the bed under the crown</source>
   <translation>{share} des Beets unter der Krone</translation>
  </message>
  <message>
   <source>{share} of {a} is farther than {reach} from any side you can stand at.</source>
   <translation>{share} von {a} liegt weiter als {reach} von jeder Seite, an der man stehen kann.</translation>
  </message>
  <message>
   <source>{share} out of reach</source>
   <translation>{share} außer Reichweite</translation>
  </message>
  <message>
   <source>{short} into the fence</source>
   <translation>{short} in den Zaun</translation>
  </message>
  <message>
   <source>{short} over the lot line</source>
   <translation>{short} über die Grenze</translation>
  </message>
  <message>
   <source>{short} short of the legal distance</source>
   <translation>{short} unter dem gesetzlichen Abstand</translation>
  </message>
  <message>
   <source>{short} short of the local distance</source>
   <translation>{short} unter dem örtlichen Abstand</translation>
  </message>
  <message>
   <source>{short} too close</source>
   <translation>{short} zu eng</translation>
  </message>
  <message>
   <source>{short} too close in the row</source>
   <translation>in der Reihe {short} zu eng</translation>
  </message>
  <message>
   <source>{short} too close to the row</source>
   <translation>{short} zu nah an der Reihe</translation>
  </message>
  <message>
   <source>{short} too close to the stem</source>
   <translation>{short} zu nah am Stamm</translation>
  </message>
  <message>
   <source>{short} too close to the wall</source>
   <translation>{short} zu nah an der Wand</translation>
  </message>
  <message>
   <source>{short} too near on clay</source>
   <translation>auf Ton {short} zu nah</translation>
  </message>
  <message>
   <source>{short} too near the building</source>
   <translation>{short} zu nah am Gebäude</translation>
  </message>
  <message>
   <source>{short} too near the paving</source>
   <translation>{short} zu nah am Belag</translation>
  </message>
  <message>
   <source>{short} too near the septic field</source>
   <translation>{short} zu nah an der Sickerfläche</translation>
  </message>
  <message>
   <source>{short} too near the septic tank</source>
   <translation>{short} zu nah an der Sickergrube</translation>
  </message>
  <message>
   <source>{short} too near the water</source>
   <translation>{short} zu nah am Wasser</translation>
  </message>
  <message>
   <source>{short} too near the well</source>
   <translation>{short} zu nah am Brunnen</translation>
  </message>
  <message>
   <source>{short} too near the {line} line</source>
   <translation>{short} zu nah an der Leitung: {line}</translation>
  </message>
  <message>
   <source>{takers} plants of {group} depend on {givers}: {rule}.</source>
   <translation>{takers} Pflanzen ({group}) hängen an Befruchtern ({givers}): {rule}.</translation>
  </message>
  <message>
   <source>{text}.</source>
   <translation>{text}.</translation>
  </message>
  <message>
   <source>{varieties}: full bloom from about {bloom} (give or take {error}); {kills} kills one open flower in ten, and such a night comes after that date in about {share} of years. Hollows are colder.</source>
   <translation>{varieties}: Vollblüte ab etwa {bloom} (auf {error} genau); {kills} tötet eine von zehn offenen Blüten, und eine solche Nacht kommt nach diesem Datum in etwa {share} der Jahre. Mulden sind kälter.</translation>
  </message>
  <message>
   <source>{variety} needs about {need} hours at or under 7 °C (45 °F); an average winter here gives about {here} (coldest month {coldest}). After warm winters bloom is late, long and thin.</source>
   <translation>{variety} braucht etwa {need} Stunden bei höchstens 7 °C; ein mittlerer Winter hier bringt etwa {here} (kältester Monat {coldest}). Nach warmen Wintern blüht sie spät, lang und spärlich.</translation>
  </message>
  <message>
   <source>{variety} needs about {need} hours at or under 7 °C (45 °F); an average winter here gives about {here} (coldest month {coldest}). It would leaf out and flower poorly.</source>
   <translation>{variety} braucht etwa {need} Stunden bei höchstens 7 °C; ein mittlerer Winter hier bringt etwa {here} (kältester Monat {coldest}). Austrieb und Blüte wären schlecht.</translation>
  </message>
  <message>
   <source>{variety} needs at most about {most} hours of chill; winters here give about {here}, so it opens in the first warm spell and frost takes the flowers.</source>
   <translation>{variety} braucht höchstens etwa {most} Kältestunden; die Winter hier bringen etwa {here}. Sie öffnet in der ersten Wärme, und der Frost nimmt die Blüten.</translation>
  </message>
  <message>
   <source>{zone} (estimated)</source>
   <translation>{zone} (geschätzt)</translation>
  </message>
 </context>
</TS>
