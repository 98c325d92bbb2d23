<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>about a class</source>
   <translation>etwa eine Stufe</translation>
  </message>
  <message>
   <source>bright</source>
   <translation>hell</translation>
  </message>
  <message>
   <source>dark</source>
   <translation>dunkel</translation>
  </message>
  <message>
   <source>dim</source>
   <translation>dämmrig</translation>
  </message>
  <message>
   <source>full sun</source>
   <translation>volle Sonne</translation>
  </message>
  <message>
   <source>full sun for fruit</source>
   <translation>volle Sonne für Obst</translation>
  </message>
  <message>
   <source>hardly any</source>
   <translation>kaum etwas</translation>
  </message>
  <message>
   <source>much</source>
   <translation>viel</translation>
  </message>
  <message>
   <source>nearly open</source>
   <translation>fast frei</translation>
  </message>
  <message>
   <source>part sun</source>
   <translation>Teilsonne</translation>
  </message>
  <message>
   <source>shade</source>
   <translation>Schatten</translation>
  </message>
  <message>
   <source>shade-tolerant plants only</source>
   <translation>nur für Schattenverträgliche</translation>
  </message>
  <message>
   <source>some</source>
   <translation>etwas</translation>
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
   <translation>die Zeitzone „{time_zone}“ ist nicht bekannt: wie Europe/Berlin schreiben oder weglassen</translation>
  </message>
 </context>
</TS>
