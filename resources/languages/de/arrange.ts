<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>Closed here: {reasons}</source>
   <translation>Hier geschlossen: {reasons}</translation>
  </message>
  <message>
   <source>Closed here: {reasons}; and {more} more</source>
   <translation>Hier geschlossen: {reasons}; und {more} weitere</translation>
  </message>
  <message>
   <source>bears no fruit itself</source>
   <translation>trägt selbst keine Früchte</translation>
  </message>
  <message>
   <source>grows too tall beside the overhead line {thing}</source>
   <translation>wird neben der Freileitung {thing} zu hoch</translation>
  </message>
  <message>
   <source>it would lie on the septic field {thing}</source>
   <translation>läge auf der Sickerfläche {thing}</translation>
  </message>
  <message>
   <source>it would lie over {thing}</source>
   <translation>es läge über {thing}</translation>
  </message>
  <message>
   <source>it would run across {thing}</source>
   <translation>verliefe quer über {thing}</translation>
  </message>
  <message>
   <source>it would run through the bed {thing}, which is planted with {crop}</source>
   <translation>sie liefe durch das Beet {thing}, das mit {crop} bepflanzt ist</translation>
  </message>
  <message>
   <source>it would run through {thing}</source>
   <translation>verliefe durch {thing}</translation>
  </message>
  <message>
   <source>its crown would grow into {thing}</source>
   <translation>die Krone wüchse in {thing}</translation>
  </message>
  <message>
   <source>its roots come too near {thing}</source>
   <translation>die Wurzeln kommen {thing} zu nah</translation>
  </message>
  <message>
   <source>lot line</source>
   <translation>Grundstücksgrenze</translation>
  </message>
  <message>
   <source>nearer to the lot line than the usual law asks: check locally</source>
   <translation>näher an der Grundstücksgrenze, als das übliche Recht verlangt: örtlich nachfragen</translation>
  </message>
  <message>
   <source>nearer to the lot line than your local figure</source>
   <translation>näher an der Grundstücksgrenze als Ihr örtlicher Wert</translation>
  </message>
  <message>
   <source>nothing here sets {name}: it would need a partner of its own</source>
   <translation>nichts hier befruchtet {name}: Sie bräuchte einen eigenen Befruchter</translation>
  </message>
  <message>
   <source>on the buried line {thing}: have it marked before you dig</source>
   <translation>auf der erdverlegten Leitung {thing}: vor dem Graben markieren lassen</translation>
  </message>
  <message>
   <source>outside the lot line</source>
   <translation>außerhalb der Grenze</translation>
  </message>
  <message>
   <source>ripens {first} to {last}</source>
   <translation>reift vom {first} bis {last}</translation>
  </message>
  <message>
   <source>ripens {first} to {last}, after {plant}</source>
   <translation>reift vom {first} bis {last}, nach {plant}</translation>
  </message>
  <message>
   <source>ripens {first} to {last}, before {plant}</source>
   <translation>reift vom {first} bis {last}, vor {plant}</translation>
  </message>
  <message>
   <source>ripens {first} to {last}, with {plant}</source>
   <translation>reift vom {first} bis {last}, zugleich mit {plant}</translation>
  </message>
  <message>
   <source>roots of {thing} would poison it, or it would poison them</source>
   <translation>Wurzeln von {thing} würden sie vergiften oder umgekehrt</translation>
  </message>
  <message>
   <source>the bed {thing} is planted with {crop}</source>
   <translation>das Beet {thing} ist mit {crop} bepflanzt</translation>
  </message>
  <message>
   <source>the ground cannot be made acid for {crop}</source>
   <translation>der Boden lässt sich für {crop} nicht sauer machen</translation>
  </message>
  <message>
   <source>the ground drains too poorly for {crop}</source>
   <translation>der Boden zieht für {crop} zu schlecht ab</translation>
  </message>
  <message>
   <source>the row would run too close to {thing}</source>
   <translation>die Reihe verliefe zu nah an {thing}</translation>
  </message>
  <message>
   <source>the row {thing} would run through it</source>
   <translation>die Reihe {thing} liefe hindurch</translation>
  </message>
  <message>
   <source>the tapes from {first} and {second} do not meet: measure again</source>
   <translation>die Maßbänder von {first} und {second} treffen sich nicht: neu messen</translation>
  </message>
  <message>
   <source>too close to the row {thing}</source>
   <translation>zu nah an der Reihe {thing}</translation>
  </message>
  <message>
   <source>too close to the stem of {thing}</source>
   <translation>zu nah am Stamm von {thing}</translation>
  </message>
  <message>
   <source>too close to {thing}</source>
   <translation>zu nah an {thing}</translation>
  </message>
  <message>
   <source>too close to {thing} in the row</source>
   <translation>zu nah an {thing} in der Reihe</translation>
  </message>
  <message>
   <source>too close to {thing}, even in a group</source>
   <translation>zu nah an {thing}, selbst in einer Gruppe</translation>
  </message>
  <message>
   <source>too dark: it needs {needed} of sun a day</source>
   <translation>zu dunkel: braucht {needed} Sonne am Tag</translation>
  </message>
  <message>
   <source>too far from every plant that sets it</source>
   <translation>zu weit von allen Pflanzen, die sie befruchten</translation>
  </message>
  <message>
   <source>too near the septic field {thing}</source>
   <translation>zu nah an der Sickerfläche {thing}</translation>
  </message>
  <message>
   <source>too near the septic tank {thing}</source>
   <translation>zu nah an der Sickergrube {thing}</translation>
  </message>
  <message>
   <source>too near {thing} on clay that shrinks</source>
   <translation>zu nah an {thing} auf schrumpfendem Ton</translation>
  </message>
  <message>
   <source>when it ripens is not known here</source>
   <translation>wann sie hier reift, ist nicht bekannt</translation>
  </message>
  <message>
   <source>would block the view of the street at {thing}</source>
   <translation>würde bei {thing} die Sicht zur Straße verdecken</translation>
  </message>
  <message>
   <source>would leave {thing} under {needed} of sun a day</source>
   <translation>ließe {thing} weniger als {needed} Sonne am Tag</translation>
  </message>
  <message>
   <source>{gate} ({key}) middle</source>
   <translation>{gate} ({key}), Mitte</translation>
  </message>
  <message>
   <source>{key} corner {n}</source>
   <translation>{key} Ecke {n}</translation>
  </message>
  <message>
   <source>{key} end {n}</source>
   <translation>{key} Ende {n}</translation>
  </message>
  <message>
   <source>{name} crops alone</source>
   <translation>{name} trägt allein</translation>
  </message>
  <message>
   <source>{name} is male and bears no fruit itself</source>
   <translation>{name} ist männlich und trägt selbst keine Früchte</translation>
  </message>
  <message>
   <source>{name} is partly set by {giver}</source>
   <translation>{name} wird von {giver} teilweise befruchtet</translation>
  </message>
  <message>
   <source>{name} is probably set by {giver}</source>
   <translation>{name} wird wahrscheinlich von {giver} befruchtet</translation>
  </message>
  <message>
   <source>{name} is set by {giver}</source>
   <translation>{name} wird von {giver} befruchtet</translation>
  </message>
  <message>
   <source>{name} is sold as a male and a female</source>
   <translation>{name} wird als männliche und weibliche Pflanze verkauft</translation>
  </message>
  <message>
   <source>{reason} ({length} more would do)</source>
   <translation>{reason} ({length} weiter würde reichen)</translation>
  </message>
  <message>
   <source>{thing} is there</source>
   <translation>dort ist {thing}</translation>
  </message>
  <message>
   <source>{thing} would lose its only partner</source>
   <translation>{thing} verlöre den einzigen Befruchter</translation>
  </message>
  <message>
   <source>{thing} would reach outside the lot line</source>
   <translation>{thing} würde über die Grundstücksgrenze reichen</translation>
  </message>
  <message>
   <source>{thing} would stand in ground that cannot be made acid for {crop}</source>
   <translation>{thing} stünde in Boden, der sich für {crop} nicht sauer machen lässt</translation>
  </message>
  <message>
   <source>{thing} would stand in ground that drains too poorly for {crop}</source>
   <translation>{thing} stünde in Boden, der für {crop} zu schlecht abzieht</translation>
  </message>
  <message>
   <source>{thing}, corner {number}</source>
   <translation>{thing}, Ecke {number}</translation>
  </message>
 </context>
</TS>
