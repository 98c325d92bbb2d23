<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>'{typed}' is longer than 10 km</source>
   <translation>„{typed}“ ist länger als 10 km</translation>
  </message>
  <message>
   <source>'{typed}' is not a length: write for example 12' 6" or 3.8 m</source>
   <translation>„{typed}“ ist keine Länge: zum Beispiel 3,8 m oder 12' 6" schreiben</translation>
  </message>
  <message>
   <source>'{typed}' may be {many} or {few}: write one of these</source>
   <translation>„{typed}“ kann {many} oder {few} heißen: schreiben Sie eins davon</translation>
  </message>
  <message>
   <source>unknown</source>
   <translation>unbekannt</translation>
  </message>
 </context>
</TS>
