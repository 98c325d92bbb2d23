<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>'{name}' is not a paper size: choose {papers}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>'{text}' is not a scale: write for example 1:100, 1/8 in (to the foot) or fit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>4 inches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A minus along the baseline: measure from {point} the other way.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A price is of one piece, or of one of the unit in which the quantity is counted.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A soil test comes first: amounts follow from what is known of the soil and are estimates.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Advice</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <source>Along the baseline</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Amount, about</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Amounts are estimates from published yields; weather and care move them far.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Amounts are of one week without rain, for one plant, one whole row or one bed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>An estimate, for want of a table of their kind: {kinds}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>At planting, about</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Baseline from {start} to {end}; left and right looking that way. A square corner: {along} along it, {off} off it, {across} across.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Because of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Before mid-morning</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Best partner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bloom follows from the monthly mean temperatures of the site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bloom is moved here from {place}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bloom is not dated here: give twelve monthly means or one date of bloom seen here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bloom is set right by what was seen on the spot</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Botanical name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>By the inch-a-week rule: this place's lowest and highest temperatures are not known.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>By which rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Care calendar</source>
   <translation>Pflegekalender</translation>
  </message>
  <message>
   <source>Care in {year}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Caution</source>
   <translation>Warnung</translation>
  </message>
  <message>
   <source>Check</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clear sky is assumed; clouds take their share from every place alike.</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>Dates marked 'by month' rest on usual months: temperatures or frosts are not known.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days in bloom together are those of an average year; how often: in usual, some or few years.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Distance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Distance from trunk to trunk. Pollen taken: the share that the plant's own alleles let pass.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Feel the soil a hand deep before watering; sand dries sooner, clay later.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Filled: from the earliest to the latest first picking. Outlined: picking goes on.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>First picking, about</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fixed points: {points}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Follow the label of every material.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>For</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From</source>
   <translation>Aus</translation>
  </message>
  <message>
   <source>From evaporation at this place by its lowest and highest temperatures (FAO paper 56).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Full size, about</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ground</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Harvest</source>
   <translation>Ernte</translation>
  </message>
  <message>
   <source>Harvest by week and year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Harvest from spring {year}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Have services located before the first peg is driven; pegs and stakes pierce shallow lines.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hours of direct sun a day on the crown, mean of the season {first} to {last}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How much</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How much, why</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In bloom together</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In short</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>Label, law and local extension service come before this list. Take care:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Last, about</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Light</source>
   <translation>Licht</translation>
  </message>
  <message>
   <source>Light plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Measure this bar: {length}. If it is not, print again at 100 %.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Midsummer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Needs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not dated, for want of bloom or harvest dates here: {plants}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>Nothing is planted yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing that can harm bees is sprayed from {days} days before a flower in or beside the yard opens until its petals are down, nor on fruit that is being picked. The label, the law and the local extension service come first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing was found.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Offsets over {length} are not kept square by eye: lay out the corner.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Open ground</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pale ends: all of it may lie so much earlier or later in the average year. Dashed line: frost dates.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Partner</source>
   <translation>Befruchter</translation>
  </message>
  <message>
   <source>Partner: the plant here whose pollen sets most fruit on it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Peg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Peg stands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pegs stand in the order of work. Pull both tapes tight and level; the peg stands where they cross.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Petal: from first flower over full bloom (dot) to petal fall; dashed where the dates come from another place or the bloom class is not known. Hatched bar: ripe.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Picking through the season</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pollination</source>
   <translation>Befruchtung</translation>
  </message>
  <message>
   <source>Price</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Qty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Quantity</source>
   <translation>Menge</translation>
  </message>
  <message>
   <source>Rain counts: 1 mm on 1 m² is 1 L; 1 in on 1 sq ft is 0.62 gal (2.4 L).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ripening here is not known of {plants}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rootstock or form</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>Setting-out plan</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>Soil work</source>
   <translation>Bodenarbeiten</translation>
  </message>
  <message>
   <source>Source</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Spacing</source>
   <translation>Pflanzabstand</translation>
  </message>
  <message>
   <source>Spray</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sprays not placed in {year}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sprays that were not placed stand in a list of their own.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Square off it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Step</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sun at the crown</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sure to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Take care</source>
   <translation type="unfinished" />
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
   <source>There is nothing to water.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To expect</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Total {total}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Total {total}; {n} lines have no price.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Water, season from spring {year}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What</source>
   <translation>Was</translation>
  </message>
  <message>
   <source>What clears it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is known of the soil suits everything planted.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>When</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the start of a tape is no F point, it is a peg set before; the errors add up.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Why; what crossing adds; why not others</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Winters are too mild here to reckon bloom: give one date of bloom seen here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Work</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a usual week</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a yard of {wide} m by {high} m does not fit on one sheet: choose a scale</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>about {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>amounts: see Water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>and from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>another place</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>building; lines run the way water does</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bush</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by month</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>canes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clump of large leaves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>column</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>conifer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dashed: {need} {unit} a week for the household</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>days of an average year; single years differ by a week or more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>filled: the low estimate; outlined: up to the high one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>full crop: no planting year</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>glut: more than {times} times {usual}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in a pot</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>joins sheet {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>large tree</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left of {first} to {second}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lot line</source>
   <translation>Grundstücksgrenze</translation>
  </message>
  <message>
   <source>no sheet was asked for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no two points in reach</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>none here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not known</source>
   <translation>nicht bekannt</translation>
  </message>
  <message>
   <source>nothing yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>open-centre tree</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>page {n} of {count}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>partly from memory</source>
   <translation>teils aus dem Gedächtnis</translation>
  </message>
  <message>
   <source>raised bed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>right of {first} to {second}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>row of canes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>row of flat-trained plants</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>row of plants</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>row of vines</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sets by itself</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sheet {name} of {count}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>size now, and at maturity</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>strawberries and other mats</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the printer did not start: save a PDF instead</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there is no sheet called '{word}': choose among {names}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>trained flat along its wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tree that stands there already</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tree with a central leader</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>vine on its wire</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what the household needs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>year {n}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{day} {month}</source>
   <translation>{day}. {month}</translation>
  </message>
  <message>
   <source>{fact}: about {n} days either way.</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>{length} right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{length} to {peg}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{low} to {high}</source>
   <translation>{low} bis {high}</translation>
  </message>
  <message>
   <source>{name} could not be made into a picture</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} could not be written: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{n} months before planting</source>
   <translation type="unfinished" />
  </message>
  <message numerus="yes">
   <source>{n} plants.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{scale} on {paper}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{stands}, flat crossing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{title}, page {n}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{title}, sheet {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{unit} a week, {year}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{unit} a year</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
