<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>no ZIP code {code}: name the town instead</source>
   <translation>keine Postleitzahl {code}: stattdessen den Ort nennen</translation>
  </message>
  <message>
   <source>no place called '{words}': try a larger town, a US ZIP code or 42.44, -76.50</source>
   <translation>kein Ort namens „{words}“: einen größeren Ort, eine US-Postleitzahl oder 42.44, -76.50 versuchen</translation>
  </message>
  <message>
   <source>the position of ZIP code {code} is not known: name the town instead</source>
   <translation>die Lage der Postleitzahl {code} ist nicht bekannt: stattdessen den Ort nennen</translation>
  </message>
  <message>
   <source>typed in</source>
   <translation>eingegeben</translation>
  </message>
  <message>
   <source>{latitude}, {longitude}: latitude goes to 90, longitude to 180 degrees</source>
   <translation>{latitude}, {longitude}: Breite geht bis 90, Länge bis 180 Grad</translation>
  </message>
 </context>
</TS>
