<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>Looked up by ZIP code; this program is not the official USDA Plant Hardiness Zone Map.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NOAA normals</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>WMO normals</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ZIP code {zip}, USDA 2023.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ZIP code {zip}, {km} km away, USDA 2023.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ZIP code {zip}; US Census Bureau and GeoNames</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a guide: cold hollows run two weeks later</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>about zone {zone}, give or take one: estimated from monthly temperatures (yearly minimum about {low} °C)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>climate model CHELSA</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>estimated from frost days by month</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fair match</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>freeze dates</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>frost is possible in every month at {station}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>frost is rare: under two days a year at {station}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>good match</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height difference not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no ZIP code {code}: name the town instead</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no match</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no place called '{words}': try a larger town, a US ZIP code or 42.44, -76.50</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>one-in-ten dates by the usual spread</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>place {metres} m above it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>place {metres} m below it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>poor match</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>that of {town}, {km} km away; GeoNames</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the ZIP code's; US Census Bureau</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the nearest place of 1,000 people; slopes differ</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the position of ZIP code {code} is not known: name the town instead</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>typed in</source>
   <translation>eingegeben</translation>
  </message>
  <message>
   <source>{latitude}, {longitude}: latitude goes to 90, longitude to 180 degrees</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{station}, {km} km away, {height}, {source}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{text}. Near a coast, a large lake or in a narrow valley count it one grade worse</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
