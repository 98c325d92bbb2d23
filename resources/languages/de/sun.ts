<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>about a class</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bright</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dark</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dim</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>full sun</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>full sun for fruit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hardly any</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>much</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nearly open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>part sun</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shade</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shade-tolerant plants only</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>some</source>
   <translation type="unfinished" />
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
   <source>the time zone '{time_zone}' is not known: write it like America/New_York, or leave it out</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
