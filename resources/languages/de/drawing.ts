<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source> and </source>
   <translation> und </translation>
  </message>
  <message>
   <source>Direct sun, hours a day</source>
   <translation>Direkte Sonne, Stunden am Tag</translation>
  </message>
  <message>
   <source>Hours a day through the year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>N</source>
   <translation>N</translation>
  </message>
  <message>
   <source>PDF pages need the package pypdfium2: install it with 'pip install pypdfium2'</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>S</source>
   <translation>S</translation>
  </message>
  <message>
   <source>This picture is damaged and cannot be shown</source>
   <translation type="unfinished" />
  </message>
  <message numerus="yes">
   <source>about {n} days together</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>all of {n} plants</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at planting</source>
   <translation>bei der Pflanzung</translation>
  </message>
  <message>
   <source>before 10 by the sun {hours} h; midsummer {midsummer} h</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>beyond {distance}: too far</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clear ground</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clear sky assumed</source>
   <translation>klarer Himmel angenommen</translation>
  </message>
  <message>
   <source>drain</source>
   <translation>Entwässerung</translation>
  </message>
  <message>
   <source>eaves {eaves}  ridge {ridge}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>electricity, buried</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>first frost, 5 years of 10</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ft</source>
   <translation>ft</translation>
  </message>
  <message>
   <source>full size</source>
   <translation>volle Größe</translation>
  </message>
  <message>
   <source>gas</source>
   <translation>Gas</translation>
  </message>
  <message>
   <source>h</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height {height}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in bloom together</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>irrigation</source>
   <translation>Bewässerung</translation>
  </message>
  <message>
   <source>last frost, 5 years of 10</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>local time</source>
   <translation>Ortszeit</translation>
  </message>
  <message>
   <source>mean, {first} to {last}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>of {hours} h in the open; {share} of open light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>on {day}</source>
   <translation>am {day}</translation>
  </message>
  <message>
   <source>one of {n} plants</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>open ground {hours} h</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>other service</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>overhead line</source>
   <translation>Freileitung</translation>
  </message>
  <message>
   <source>septic field</source>
   <translation>Sickerfläche</translation>
  </message>
  <message>
   <source>septic tank</source>
   <translation>Sickergrube</translation>
  </message>
  <message>
   <source>sewer</source>
   <translation>Abwasser</translation>
  </message>
  <message>
   <source>sun time</source>
   <translation>Sonnenzeit</translation>
  </message>
  <message>
   <source>telephone and data</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the sun does not rise high enough</source>
   <translation>die Sonne steigt nicht hoch genug</translation>
  </message>
  <message>
   <source>under {high} {unit}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>water</source>
   <translation>Wasser</translation>
  </message>
  <message>
   <source>well</source>
   <translation>Brunnen</translation>
  </message>
  <message>
   <source>within {distance} of {plants}: near enough</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>year {n}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>zone {zone}</source>
   <translation>Zone {zone}</translation>
  </message>
  <message>
   <source>{cultivar} × {count}  {spacing} apart</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{days} with {thing} {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{day}, {clock}: {hours} of {open} h</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{file} cannot be made small enough to be kept in the yard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{file} cannot be opened</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{file} cannot be read: choose a PNG, JPEG or PDF file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{file} has no page {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{file} has {wide} x {high} pixels, more than can be read: make it smaller first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{file} is damaged or not a picture</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{file} is locked by a password</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{file} is too large: at most {most} MB are read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{hours} h</source>
   <translation>{hours} h</translation>
  </message>
  <message>
   <source>{hours} h of direct sun a day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{low} to {high}</source>
   <translation>{low} bis {high}</translation>
  </message>
  <message>
   <source>{low} to {high} {unit}</source>
   <translation>{low} bis {high} {unit}</translation>
  </message>
  <message>
   <source>{low} {unit} and more</source>
   <translation type="unfinished" />
  </message>
  <message numerus="yes">
   <source>{n} days together</source>
   <translation>
    <numerusform>{n} gemeinsamer Blühtag</numerusform>
    <numerusform>{n} gemeinsame Blühtage</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} days with {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{n} with {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{start} to {end} {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{start} to {end} {thing}, {share} through</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
