<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>Looked up by ZIP code; this program is not the official USDA Plant Hardiness Zone Map.</source>
   <translation>Nachgeschlagen nach Postleitzahl; dieses Programm ist nicht die amtliche USDA Plant Hardiness Zone Map.</translation>
  </message>
  <message>
   <source>NOAA normals</source>
   <translation>NOAA-Normalwerte</translation>
  </message>
  <message>
   <source>WMO normals</source>
   <translation>WMO-Normalwerte</translation>
  </message>
  <message>
   <source>ZIP code {zip}, USDA 2023.</source>
   <translation>Postleitzahl {zip}, USDA 2023.</translation>
  </message>
  <message>
   <source>ZIP code {zip}, {km} km away, USDA 2023.</source>
   <translation>Postleitzahl {zip}, {km} km entfernt, USDA 2023.</translation>
  </message>
  <message>
   <source>ZIP code {zip}; US Census Bureau and GeoNames</source>
   <translation>Postleitzahl {zip}; US Census Bureau und GeoNames</translation>
  </message>
  <message>
   <source>a guide: cold hollows run two weeks later</source>
   <translation>ein Anhalt: Kältemulden liegen zwei Wochen später</translation>
  </message>
  <message>
   <source>about zone {zone}, give or take one: estimated from monthly temperatures (yearly minimum about {low} °C)</source>
   <translation>etwa Zone {zone}, auf eine genau: geschätzt aus Monatstemperaturen (Jahrestiefstwert etwa {low} °C)</translation>
  </message>
  <message>
   <source>climate model CHELSA</source>
   <translation>Klimamodell CHELSA</translation>
  </message>
  <message>
   <source>estimated from frost days by month</source>
   <translation>geschätzt aus Frosttagen je Monat</translation>
  </message>
  <message>
   <source>fair match</source>
   <translation>mäßige Übereinstimmung</translation>
  </message>
  <message>
   <source>freeze dates</source>
   <translation>Frosttermine</translation>
  </message>
  <message>
   <source>frost is possible in every month at {station}</source>
   <translation>Frost ist in jedem Monat möglich an {station}</translation>
  </message>
  <message>
   <source>frost is rare: under two days a year at {station}</source>
   <translation>Frost ist selten: weniger als zwei Tage im Jahr an {station}</translation>
  </message>
  <message>
   <source>good match</source>
   <translation>gute Übereinstimmung</translation>
  </message>
  <message>
   <source>height difference not known</source>
   <translation>Höhenunterschied nicht bekannt</translation>
  </message>
  <message>
   <source>no ZIP code {code}: name the town instead</source>
   <translation>keine Postleitzahl {code}: stattdessen den Ort nennen</translation>
  </message>
  <message>
   <source>no match</source>
   <translation>keine Übereinstimmung</translation>
  </message>
  <message>
   <source>no place called '{words}': try a larger town, a US ZIP code or 42.44, -76.50</source>
   <translation>kein Ort namens „{words}“: einen größeren Ort, eine US-Postleitzahl oder 42.44, -76.50 versuchen</translation>
  </message>
  <message>
   <source>one-in-ten dates by the usual spread</source>
   <translation>Termine für eines von zehn Jahren nach der üblichen Streuung</translation>
  </message>
  <message>
   <source>place {metres} m above it</source>
   <translation>der Ort liegt {metres} m höher</translation>
  </message>
  <message>
   <source>place {metres} m below it</source>
   <translation>der Ort liegt {metres} m tiefer</translation>
  </message>
  <message>
   <source>poor match</source>
   <translation>schlechte Übereinstimmung</translation>
  </message>
  <message>
   <source>that of {town}, {km} km away; GeoNames</source>
   <translation>die von {town}, {km} km entfernt; GeoNames</translation>
  </message>
  <message>
   <source>the ZIP code's; US Census Bureau</source>
   <translation>die der Postleitzahl; US Census Bureau</translation>
  </message>
  <message>
   <source>the nearest place of 1,000 people; slopes differ</source>
   <translation>der nächste Ort mit 1.000 Einwohnern; am Hang anders</translation>
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
  <message>
   <source>{station}, {km} km away, {height}, {source}</source>
   <translation>{station}, {km} km entfernt, {height}, {source}</translation>
  </message>
  <message>
   <source>{text}. Near a coast, a large lake or in a narrow valley count it one grade worse</source>
   <translation>{text}. Nahe der Küste, an einem großen See oder in einem engen Tal eine Stufe schlechter rechnen</translation>
  </message>
 </context>
</TS>
