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
   <translation>Stunden am Tag durch das Jahr</translation>
  </message>
  <message>
   <source>N</source>
   <translation>N</translation>
  </message>
  <message>
   <source>PDF pages need the package pypdfium2: install it with 'pip install pypdfium2'</source>
   <translation>PDF-Seiten brauchen das Paket pypdfium2: mit „pip install pypdfium2“ installieren</translation>
  </message>
  <message>
   <source>S</source>
   <translation>S</translation>
  </message>
  <message>
   <source>This picture is damaged and cannot be shown</source>
   <translation>Dieses Bild ist beschädigt und lässt sich nicht zeigen</translation>
  </message>
  <message>
   <source>about zone {zone}</source>
   <translation>etwa Zone {zone}</translation>
  </message>
  <message numerus="yes">
   <source>about {n} days together</source>
   <translation>
    <numerusform>etwa {n} gemeinsamer Tag</numerusform>
    <numerusform>etwa {n} gemeinsame Tage</numerusform>
   </translation>
  </message>
  <message>
   <source>all of {n} plants</source>
   <translation>alle {n} Pflanzen</translation>
  </message>
  <message>
   <source>at planting</source>
   <translation>bei der Pflanzung</translation>
  </message>
  <message>
   <source>before 10 by the sun {hours} h; midsummer {midsummer} h</source>
   <translation>vor 10 Uhr Sonnenzeit {hours} h; Hochsommer {midsummer} h</translation>
  </message>
  <message>
   <source>beyond {distance}: too far</source>
   <translation>weiter als {distance}: zu weit</translation>
  </message>
  <message>
   <source>clear ground</source>
   <translation>freie Fläche</translation>
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
   <translation>Traufe {eaves}  First {ridge}</translation>
  </message>
  <message>
   <source>electricity, buried</source>
   <translation>Strom, erdverlegt</translation>
  </message>
  <message>
   <source>first frost, 5 years of 10</source>
   <translation>erster Frost, 5 von 10 Jahren</translation>
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
   <translation>h</translation>
  </message>
  <message>
   <source>height {height}</source>
   <translation>Höhe {height}</translation>
  </message>
  <message>
   <source>in bloom together</source>
   <translation>gemeinsam in Blüte</translation>
  </message>
  <message>
   <source>irrigation</source>
   <translation>Bewässerung</translation>
  </message>
  <message>
   <source>last frost, 5 years of 10</source>
   <translation>letzter Frost, 5 von 10 Jahren</translation>
  </message>
  <message>
   <source>local time</source>
   <translation>Ortszeit</translation>
  </message>
  <message>
   <source>mean, {first} to {last}</source>
   <translation>Mittel, {first} bis {last}</translation>
  </message>
  <message>
   <source>not proved</source>
   <translation>nicht belegt</translation>
  </message>
  <message>
   <source>of {hours} h in the open; {share} of open light</source>
   <translation>von {hours} h in freier Lage; {share} des freien Lichts</translation>
  </message>
  <message>
   <source>on {day}</source>
   <translation>am {day}</translation>
  </message>
  <message>
   <source>one of {n} plants</source>
   <translation>eine von {n} Pflanzen</translation>
  </message>
  <message>
   <source>open ground {hours} h</source>
   <translation>freie Lage {hours} h</translation>
  </message>
  <message>
   <source>other service</source>
   <translation>andere Leitung</translation>
  </message>
  <message>
   <source>overhead line</source>
   <translation>Freileitung</translation>
  </message>
  <message>
   <source>place not entered: sun as at {latitude}</source>
   <translation>Ort nicht eingetragen: Sonne wie bei {latitude}</translation>
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
   <translation>Telefon und Daten</translation>
  </message>
  <message>
   <source>the sun does not rise high enough</source>
   <translation>die Sonne steigt nicht hoch genug</translation>
  </message>
  <message>
   <source>under {high} {unit}</source>
   <translation>unter {high} {unit}</translation>
  </message>
  <message>
   <source>water</source>
   <translation>Wasser</translation>
  </message>
  <message>
   <source>weak</source>
   <translation>schwach</translation>
  </message>
  <message>
   <source>well</source>
   <translation>Brunnen</translation>
  </message>
  <message>
   <source>within {distance} of {plants}: near enough</source>
   <translation>innerhalb von {distance} um {plants}: nah genug</translation>
  </message>
  <message>
   <source>year {n}</source>
   <translation>Jahr {n}</translation>
  </message>
  <message>
   <source>zone {zone}</source>
   <translation>Zone {zone}</translation>
  </message>
  <message>
   <source>{cultivar} × {count}  {spacing} apart</source>
   <translation>{cultivar} × {count}  Abstand {spacing}</translation>
  </message>
  <message>
   <source>{days} with {thing} {name}</source>
   <translation>{days} mit {thing} {name}</translation>
  </message>
  <message>
   <source>{day}, {clock}: {hours} of {open} h</source>
   <translation>{day}, {clock}: {hours} von {open} h</translation>
  </message>
  <message>
   <source>{file} cannot be made small enough to be kept in the yard</source>
   <translation>{file} lässt sich nicht klein genug machen, um im Garten aufbewahrt zu werden</translation>
  </message>
  <message>
   <source>{file} cannot be opened</source>
   <translation>{file} lässt sich nicht öffnen</translation>
  </message>
  <message>
   <source>{file} cannot be read: choose a PNG, JPEG or PDF file</source>
   <translation>{file} lässt sich nicht lesen: eine PNG-, JPEG- oder PDF-Datei wählen</translation>
  </message>
  <message>
   <source>{file} has no page {number}</source>
   <translation>{file} hat keine Seite {number}</translation>
  </message>
  <message>
   <source>{file} has {wide} x {high} pixels, more than can be read: make it smaller first</source>
   <translation>{file} hat {wide} x {high} Bildpunkte, mehr als gelesen werden können: vorher verkleinern</translation>
  </message>
  <message>
   <source>{file} is damaged or not a picture</source>
   <translation>{file} ist beschädigt oder kein Bild</translation>
  </message>
  <message>
   <source>{file} is locked by a password</source>
   <translation>{file} ist mit einem Passwort gesperrt</translation>
  </message>
  <message>
   <source>{file} is too large: at most {most} MB are read</source>
   <translation>{file} ist zu groß: höchstens {most} MB werden gelesen</translation>
  </message>
  <message>
   <source>{hours} h</source>
   <translation>{hours} h</translation>
  </message>
  <message>
   <source>{hours} h of direct sun a day</source>
   <translation>{hours} h direkte Sonne am Tag</translation>
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
   <translation>{low} {unit} und mehr</translation>
  </message>
  <message numerus="yes">
   <source>{n} days together</source>
   <translation>
    <numerusform>{n} Tag gemeinsam</numerusform>
    <numerusform>{n} Tage gemeinsam</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} days with {thing}</source>
   <translation>
    <numerusform>{n} Tag mit {thing}</numerusform>
    <numerusform>{n} Tage mit {thing}</numerusform>
   </translation>
  </message>
  <message>
   <source>{n} with {thing}</source>
   <translation>{n} mit {thing}</translation>
  </message>
  <message>
   <source>{start} to {end} {thing}</source>
   <translation>{start} bis {end} {thing}</translation>
  </message>
  <message>
   <source>{start} to {end} {thing}, {share} through</source>
   <translation>{start} bis {end} {thing}, {share} kommt durch</translation>
  </message>
 </context>
</TS>
