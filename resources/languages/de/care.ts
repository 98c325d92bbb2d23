<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>A gap, nothing to pick: {spans}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A glut, far more than in a usual week: {spans}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Acid mix for a raised bed, half peat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Again after petal fall of {plants}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Apr</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Aug</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bird netting, fine mesh</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Caution: {text}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Container, {litres} L ({gallons} gal)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Dec</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Done {date}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edging of beds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Elemental sulfur</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Far more than that: {spans}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Feb</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ground limestone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Jan</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>Mar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>May</source>
   <translation>Mai</translation>
  </message>
  <message>
   <source>Mulch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nov</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Oct</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Picking begins about {date}: the last spray lies at least as many days before it as the label says.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Plants: {keys}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Post, about 8 ft (2.4 m)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Potting mix</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sept</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Soil for raised beds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Source: {source}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stake with tie</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The household needs about {amount} a week.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Trunk guard against voles and rabbits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Why: {why}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wire</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wire strainer or turnbuckle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>about {amount} a bed in a dry midsummer week ({rule})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>about {amount} a plant in a dry midsummer week ({rule})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>about {amount} a pot in a dry midsummer week ({rule})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>about {amount} a row in a dry midsummer week ({rule})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bark, chip, straw or needles</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by month: no climate known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>calendars need the library icalendar; run: pip install icalendar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>crowns at full size</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dates of an average year, about {n} days either way</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drainage not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>every day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>every {low} to {high} days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>every {n} days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from evaporation here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from year {first} after planting</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in the planting year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in years {first} to {last} after planting</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>inch-a-week rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not known</source>
   <translation>nicht bekannt</translation>
  </message>
  <message>
   <source>on {area}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>on {area}, {depth} deep</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>on {rootstock}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>one a wire</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>one bud in ten dies at: {stages}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pH not known</source>
   <translation>pH nicht bekannt</translation>
  </message>
  <message>
   <source>pH {ph}, {crop} wants {low} to {high}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>picking of {plant}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rootstocks that do not stand alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rows on wires and flat-trained trees; less where a wall or fence carries them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the most that may be needed; test again before each further dressing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{first} to {last}</source>
   <translation>{first} bis {last}</translation>
  </message>
  <message>
   <source>{keys} {plant}: {amounts} a week</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{litres} of fill</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{low} to {high}</source>
   <translation>{low} bis {high}</translation>
  </message>
  <message>
   <source>{plant}, whose bloom here is not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{yard}: care {years}</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
