<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>Closed here: {reasons}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Closed here: {reasons}; and {more} more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>grows too tall beside the overhead line {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it would lie on the septic field {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it would run across {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it would run through {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its crown would grow into {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its roots come too near {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lot line</source>
   <translation>Grundstücksgrenze</translation>
  </message>
  <message>
   <source>nearer to the lot line than the usual law asks: check locally</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nearer to the lot line than your local figure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nothing here sets {name}: it would need a partner of its own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>on the buried line {thing}: have it marked before you dig</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>outside the lot line</source>
   <translation>außerhalb der Grenze</translation>
  </message>
  <message>
   <source>roots of {thing} would poison it, or it would poison them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the bed {thing} is planted with {crop}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the ground cannot be made acid for {crop}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the ground drains too poorly for {crop}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the tapes from {first} and {second} do not meet: measure again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too close to the row {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too close to the stem of {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too close to {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too close to {thing} in the row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too close to {thing}, even in a group</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too dark: it needs {needed} of sun a day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too far from every plant that sets it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too near the septic field {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too near the septic tank {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too near {thing} on clay that shrinks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>would block the view of the street at {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>would leave {thing} under {needed} of sun a day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{gate} ({key}) middle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{key} corner {n}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{key} end {n}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} crops alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is male and bears no fruit itself</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is partly set by {giver}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is probably set by {giver}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is set by {giver}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is sold as a male and a female</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{reason} ({length} more would do)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{thing} is there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{thing} would lose its only partner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{thing} would reach outside the lot line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{thing} would stand in ground that cannot be made acid for {crop}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{thing} would stand in ground that drains too poorly for {crop}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{thing}, corner {number}</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
