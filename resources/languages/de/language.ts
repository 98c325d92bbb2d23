<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source> or </source>
   <translation> oder </translation>
  </message>
  <message>
   <source>April</source>
   <translation>April</translation>
  </message>
  <message>
   <source>August</source>
   <translation>August</translation>
  </message>
  <message>
   <source>December</source>
   <translation>Dezember</translation>
  </message>
  <message>
   <source>February</source>
   <translation>Februar</translation>
  </message>
  <message>
   <source>January</source>
   <translation>Januar</translation>
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
   <source>March</source>
   <translation>März</translation>
  </message>
  <message>
   <source>May</source>
   <translation>Mai</translation>
  </message>
  <message>
   <source>November</source>
   <translation>November</translation>
  </message>
  <message>
   <source>October</source>
   <translation>Oktober</translation>
  </message>
  <message>
   <source>September</source>
   <translation>September</translation>
  </message>
  <message>
   <source>{day} {month}</source>
   <translation>{day}. {month}</translation>
  </message>
  <message>
   <source>{day} {month} {year}</source>
   <translation>{day}. {month} {year}</translation>
  </message>
  <message>
   <source>{first} and {last}</source>
   <translation>{first} und {last}</translation>
  </message>
  <message>
   <source>{n}%</source>
   <translation>{n} %</translation>
  </message>
 </context>
</TS>
