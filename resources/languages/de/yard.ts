<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>'{text}' is not a plant: write CROP:CULTIVAR, for example apple:Liberty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A variant needs a name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>An edge must be longer than nothing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Group {n}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing can lie alongside this: choose a fence, a building, a bed or the lot line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The distance must be more than nothing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The distance must lie between 0 and {most} m</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The two places are one: click them farther apart</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The width must lie between 0.02 and {most} m</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is a variant called {name} already: choose another name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no edge {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no room for it on this side: try less width, or the other side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no variant called {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This edge has no direction yet: drag one of its corners first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This is locked: unlock it to change its edges</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This length would make the outline cross itself: try another</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Variant {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>With this distance the picture would be {width} wide: is the unit right?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the key {key} is taken already</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there is no corner {number} of {many}</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
