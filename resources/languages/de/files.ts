<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>'{key}' is in a group already</source>
   <translation>„{key}“ ist schon in einer Gruppe</translation>
  </message>
  <message>
   <source>'{name}' is missing</source>
   <translation>„{name}“ fehlt</translation>
  </message>
  <message>
   <source>DXF needs the package ezdxf: install it with 'pip install ezdxf'</source>
   <translation>DXF braucht das Paket ezdxf: mit „pip install ezdxf“ installieren</translation>
  </message>
  <message>
   <source>The yard cannot be written</source>
   <translation>Der Garten lässt sich nicht schreiben</translation>
  </message>
  <message>
   <source>a colon is missing</source>
   <translation>ein Doppelpunkt fehlt</translation>
  </message>
  <message>
   <source>a comma or a closing bracket is missing</source>
   <translation>ein Komma oder eine schließende Klammer fehlt</translation>
  </message>
  <message>
   <source>a date like 04-01</source>
   <translation>ein Datum wie 04-01</translation>
  </message>
  <message>
   <source>a date like 04-24</source>
   <translation>ein Datum wie 04-24</translation>
  </message>
  <message>
   <source>a date like 10-12</source>
   <translation>ein Datum wie 10-12</translation>
  </message>
  <message>
   <source>a device</source>
   <translation>ein Gerät</translation>
  </message>
  <message>
   <source>a field name is missing or a comma is left over</source>
   <translation>ein Feldname fehlt oder ein Komma ist übrig</translation>
  </message>
  <message>
   <source>a folder</source>
   <translation>ein Ordner</translation>
  </message>
  <message>
   <source>a key like A1</source>
   <translation>ein Schlüssel wie A1</translation>
  </message>
  <message>
   <source>a list</source>
   <translation>eine Liste</translation>
  </message>
  <message>
   <source>a number</source>
   <translation>eine Zahl</translation>
  </message>
  <message>
   <source>a picture of at most 6 MB as base64</source>
   <translation>ein Bild von höchstens 6 MB als base64</translation>
  </message>
  <message>
   <source>a place goes with one plant only: give each plant a line</source>
   <translation>ein Ort gehört zu nur einer Pflanze: jeder Pflanze eine Zeile geben</translation>
  </message>
  <message>
   <source>a place needs both x and y</source>
   <translation>ein Ort braucht x und y</translation>
  </message>
  <message>
   <source>a row needs x, y, spacing and count</source>
   <translation>eine Reihe braucht x, y, Abstand und Anzahl</translation>
  </message>
  <message>
   <source>a text</source>
   <translation>ein Text</translation>
  </message>
  <message>
   <source>a text holds a line break or another control character</source>
   <translation>ein Text enthält einen Zeilenumbruch oder ein anderes Steuerzeichen</translation>
  </message>
  <message>
   <source>a text is not closed</source>
   <translation>ein Text ist nicht geschlossen</translation>
  </message>
  <message>
   <source>a value is missing</source>
   <translation>ein Wert fehlt</translation>
  </message>
  <message>
   <source>a whole number</source>
   <translation>eine ganze Zahl</translation>
  </message>
  <message>
   <source>a zone like 6b</source>
   <translation>eine Zone wie 6b</translation>
  </message>
  <message>
   <source>a {kind} is not read from a table: draw it</source>
   <translation>{kind} wird nicht aus einer Tabelle gelesen: zeichnen</translation>
  </message>
  <message>
   <source>a {name} cannot be written</source>
   <translation>{name} lässt sich nicht schreiben</translation>
  </message>
  <message>
   <source>an object</source>
   <translation>ein Objekt</translation>
  </message>
  <message>
   <source>count {count}: from 1 to {most}</source>
   <translation>Anzahl {count}: von 1 bis {most}</translation>
  </message>
  <message>
   <source>crop or cultivar is missing</source>
   <translation>Art oder Sorte fehlt</translation>
  </message>
  <message>
   <source>facing '{text}' is not a number of degrees</source>
   <translation>Ausrichtung „{text}“ ist keine Zahl von Grad</translation>
  </message>
  <message>
   <source>has {count}, needs none or at least three</source>
   <translation>hat {count}, erwartet: keine oder mindestens drei</translation>
  </message>
  <message>
   <source>has {had}, needs {needed}</source>
   <translation>hat {had}, erwartet: {needed}</translation>
  </message>
  <message>
   <source>holds a broken character</source>
   <translation>enthält ein kaputtes Zeichen</translation>
  </message>
  <message>
   <source>is '{text}', needs {needed}</source>
   <translation>ist „{text}“, erwartet: {needed}</translation>
  </message>
  <message>
   <source>is missing</source>
   <translation>fehlt</translation>
  </message>
  <message>
   <source>is not a finite number</source>
   <translation>ist keine endliche Zahl</translation>
  </message>
  <message>
   <source>is too large a number</source>
   <translation>ist eine zu große Zahl</translation>
  </message>
  <message>
   <source>is {found}, needs a list</source>
   <translation>ist {found}, erwartet: eine Liste</translation>
  </message>
  <message>
   <source>is {found}, needs a text</source>
   <translation>ist {found}, erwartet: ein Text</translation>
  </message>
  <message>
   <source>is {found}, needs an object</source>
   <translation>ist {found}, erwartet: ein Objekt</translation>
  </message>
  <message>
   <source>is {found}, needs true or false</source>
   <translation>ist {found}, erwartet: wahr oder falsch</translation>
  </message>
  <message>
   <source>is {found}, needs {needed}</source>
   <translation>ist {found}, erwartet: {needed}</translation>
  </message>
  <message>
   <source>is {number}, must lie between {low} and {high}</source>
   <translation>ist {number}, muss zwischen {low} und {high} liegen</translation>
  </message>
  <message>
   <source>is {shown}, must be one of: {words}</source>
   <translation>ist {shown}, muss eines sein von: {words}</translation>
  </message>
  <message>
   <source>is {value}, needs a whole number</source>
   <translation>ist {value}, erwartet: eine ganze Zahl</translation>
  </message>
  <message>
   <source>it has {n} corners, more than {most}</source>
   <translation>hat {n} Ecken, mehr als {most}</translation>
  </message>
  <message>
   <source>it is less than {n} m across: is the unit right?</source>
   <translation>misst weniger als {n} m: Stimmt die Einheit?</translation>
  </message>
  <message>
   <source>it reaches beyond {n} km: is the unit right?</source>
   <translation>reicht weiter als {n} km: Stimmt die Einheit?</translation>
  </message>
  <message>
   <source>lists or objects are nested too deep</source>
   <translation>Listen oder Objekte sind zu tief geschachtelt</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keine</translation>
  </message>
  <message>
   <source>nothing (null)</source>
   <translation>nichts (null)</translation>
  </message>
  <message>
   <source>one</source>
   <translation>ein</translation>
  </message>
  <message>
   <source>part of the folder name is a file</source>
   <translation>ein Teil des Ordnernamens ist eine Datei</translation>
  </message>
  <message>
   <source>something else</source>
   <translation>etwas anderes</translation>
  </message>
  <message>
   <source>that is a folder, not a file</source>
   <translation>das ist ein Ordner, keine Datei</translation>
  </message>
  <message>
   <source>the disk can only be read</source>
   <translation>der Datenträger lässt sich nur lesen</translation>
  </message>
  <message>
   <source>the disk is full</source>
   <translation>der Datenträger ist voll</translation>
  </message>
  <message>
   <source>the disk reported a fault</source>
   <translation>der Datenträger meldet einen Fehler</translation>
  </message>
  <message>
   <source>the file holds no closed outline: a Polygon is needed for the lot line</source>
   <translation>die Datei enthält keinen geschlossenen Umriss: Für die Grundstücksgrenze ist ein Polygon nötig</translation>
  </message>
  <message>
   <source>the file is damaged: a position holds something that is no number</source>
   <translation>die Datei ist beschädigt: Eine Position enthält etwas, das keine Zahl ist</translation>
  </message>
  <message>
   <source>the file is damaged: a position needs a longitude and a latitude</source>
   <translation>die Datei ist beschädigt: Eine Position braucht Länge und Breite</translation>
  </message>
  <message>
   <source>the file is damaged: an outline without positions</source>
   <translation>die Datei ist beschädigt: ein Umriss ohne Positionen</translation>
  </message>
  <message>
   <source>the file is not GeoJSON: its text cannot be understood</source>
   <translation>die Datei ist kein GeoJSON: Ihr Text ist nicht zu verstehen</translation>
  </message>
  <message>
   <source>the file or its folder is not there</source>
   <translation>die Datei oder ihr Ordner ist nicht da</translation>
  </message>
  <message>
   <source>the file would be larger than this system allows</source>
   <translation>die Datei würde größer, als dieses System erlaubt</translation>
  </message>
  <message>
   <source>the key '{key}' is kept for the lot line</source>
   <translation>der Schlüssel „{key}“ ist der Grundstücksgrenze vorbehalten</translation>
  </message>
  <message>
   <source>the key is taken already by {thing}</source>
   <translation>der Schlüssel ist schon vergeben: {thing}</translation>
  </message>
  <message>
   <source>the key {wanted} is taken: called {key}</source>
   <translation>der Schlüssel {wanted} ist vergeben: heißt jetzt {key}</translation>
  </message>
  <message>
   <source>the link leads back to itself</source>
   <translation>die Verknüpfung führt zu sich selbst zurück</translation>
  </message>
  <message>
   <source>the name '{name}' is taken already</source>
   <translation>der Name „{name}“ ist schon vergeben</translation>
  </message>
  <message>
   <source>the name is too long</source>
   <translation>der Name ist zu lang</translation>
  </message>
  <message>
   <source>the name of a crop</source>
   <translation>der Name einer Art</translation>
  </message>
  <message>
   <source>the name of a cultivar</source>
   <translation>der Name einer Sorte</translation>
  </message>
  <message>
   <source>the positions are not longitude and latitude: save the file again in WGS 84 degrees</source>
   <translation>die Positionen sind nicht Länge und Breite: die Datei neu in Grad WGS 84 speichern</translation>
  </message>
  <message>
   <source>the system gave no reason</source>
   <translation>das System nannte keinen Grund</translation>
  </message>
  <message>
   <source>the table has no column '{name}': the first line must name the columns</source>
   <translation>die Tabelle hat keine Spalte „{name}“: Die erste Zeile muss die Spalten nennen</translation>
  </message>
  <message>
   <source>the table is damaged: {error}</source>
   <translation>die Tabelle ist beschädigt: {error}</translation>
  </message>
  <message>
   <source>the table is empty</source>
   <translation>die Tabelle ist leer</translation>
  </message>
  <message>
   <source>the text cannot be understood</source>
   <translation>der Text ist nicht zu verstehen</translation>
  </message>
  <message>
   <source>there is no container '{container}'</source>
   <translation>es gibt keinen Kübel „{container}“</translation>
  </message>
  <message>
   <source>there is nothing with the key '{key}'</source>
   <translation>es gibt nichts mit dem Schlüssel „{key}“</translation>
  </message>
  <message>
   <source>there is something after the end</source>
   <translation>nach dem Ende steht noch etwas</translation>
  </message>
  <message>
   <source>three</source>
   <translation>drei</translation>
  </message>
  <message>
   <source>true or false</source>
   <translation>wahr oder falsch</translation>
  </message>
  <message>
   <source>twelve</source>
   <translation>zwölf</translation>
  </message>
  <message>
   <source>two</source>
   <translation>zwei</translation>
  </message>
  <message>
   <source>you have no permission there</source>
   <translation>dort fehlt die Berechtigung</translation>
  </message>
  <message>
   <source>your share of the disk is used up</source>
   <translation>Ihr Anteil am Datenträger ist aufgebraucht</translation>
  </message>
  <message>
   <source>{cultivar} ({crop}) is not in the plant list</source>
   <translation>{cultivar} ({crop}) steht nicht in der Pflanzenliste</translation>
  </message>
  <message>
   <source>{message}: {fault} (and {more} more)</source>
   <translation>{message}: {fault} (und {more} weitere)</translation>
  </message>
  <message>
   <source>{name} '{text}' is not a whole number</source>
   <translation>{name} „{text}“ ist keine ganze Zahl</translation>
  </message>
  <message>
   <source>{name} cannot be opened: {reason} ({path})</source>
   <translation>{name} lässt sich nicht öffnen: {reason} ({path})</translation>
  </message>
  <message>
   <source>{name} cannot be read: {reason}</source>
   <translation>{name} lässt sich nicht lesen: {reason}</translation>
  </message>
  <message>
   <source>{name} has file version {version}, which this program cannot read</source>
   <translation>{name} hat Dateiversion {version}, die dieses Programm nicht lesen kann</translation>
  </message>
  <message>
   <source>{name} holds no closed line: draw the lot as a closed polyline</source>
   <translation>{name} enthält keine geschlossene Linie: das Grundstück als geschlossene Polylinie zeichnen</translation>
  </message>
  <message>
   <source>{name} is damaged</source>
   <translation>{name} ist beschädigt</translation>
  </message>
  <message>
   <source>{name} is damaged or not a yard file: line {line}, column {column}: {fault}</source>
   <translation>{name} ist beschädigt oder keine Gartendatei: Zeile {line}, Spalte {column}: {fault}</translation>
  </message>
  <message>
   <source>{name} is damaged: it holds a number with too many digits</source>
   <translation>{name} ist beschädigt: enthält eine Zahl mit zu vielen Stellen</translation>
  </message>
  <message>
   <source>{name} is damaged: it holds {error}, which is not a number</source>
   <translation>{name} ist beschädigt: enthält {error}, das ist keine Zahl</translation>
  </message>
  <message>
   <source>{name} is damaged: its version is missing or not a whole number from 1</source>
   <translation>{name} ist beschädigt: Die Version fehlt oder ist keine ganze Zahl ab 1</translation>
  </message>
  <message>
   <source>{name} is damaged: the field '{field}' stands twice in one object</source>
   <translation>{name} ist beschädigt: Das Feld „{field}“ steht zweimal in einem Objekt</translation>
  </message>
  <message>
   <source>{name} is damaged: {fault}</source>
   <translation>{name} ist beschädigt: {fault}</translation>
  </message>
  <message>
   <source>{name} is empty</source>
   <translation>{name} ist leer</translation>
  </message>
  <message>
   <source>{name} is not UTF-8 text: line {line} holds broken letters</source>
   <translation>{name} ist kein UTF-8-Text: Zeile {line} enthält kaputte Buchstaben</translation>
  </message>
  <message>
   <source>{name} is not a DXF file or cannot be opened</source>
   <translation>{name} ist keine DXF-Datei oder lässt sich nicht öffnen</translation>
  </message>
  <message>
   <source>{name} is not a recovery copy</source>
   <translation>{name} ist keine Sicherungskopie</translation>
  </message>
  <message>
   <source>{name} is not a text that can be read: save it as UTF-8</source>
   <translation>{name} ist kein lesbarer Text: als UTF-8 speichern</translation>
  </message>
  <message>
   <source>{name} is not a yard file: it does not say that its format is '{format}'</source>
   <translation>{name} ist keine Gartendatei: Sie sagt nicht, dass ihr Format „{format}“ ist</translation>
  </message>
  <message>
   <source>{name} is not a yard file: lists are nested too deep</source>
   <translation>{name} ist keine Gartendatei: Listen sind zu tief geschachtelt</translation>
  </message>
  <message>
   <source>{name} is too large</source>
   <translation>{name} ist zu groß</translation>
  </message>
  <message>
   <source>{name} is too large for a yard file: {size} MiB, at most {most}</source>
   <translation>{name} ist für eine Gartendatei zu groß: {size} MiB, höchstens {most}</translation>
  </message>
  <message>
   <source>{name} is too large: at most {most} MiB are read</source>
   <translation>{name} ist zu groß: höchstens {most} MiB werden gelesen</translation>
  </message>
  <message>
   <source>{name} is {what}, not a yard file</source>
   <translation>{name} ist {what}, keine Gartendatei</translation>
  </message>
  <message>
   <source>{name} was not opened</source>
   <translation>{name} wurde nicht geöffnet</translation>
  </message>
  <message>
   <source>{name} was not saved, it could not be opened again</source>
   <translation>{name} wurde nicht gespeichert, die Datei ließe sich nicht wieder öffnen</translation>
  </message>
  <message>
   <source>{name} was not saved: another program has changed it since it was opened. Save under another name, or save again to replace it</source>
   <translation>{name} wurde nicht gespeichert: Ein anderes Programm hat die Datei seit dem Öffnen geändert. Unter anderem Namen speichern oder noch einmal speichern, um sie zu ersetzen</translation>
  </message>
  <message>
   <source>{name} was not saved: read back, the yard was not the same</source>
   <translation>{name} wurde nicht gespeichert: Beim Zurücklesen war der Garten nicht derselbe</translation>
  </message>
  <message>
   <source>{name} was not saved: {reason} ({parent}). Nothing was overwritten</source>
   <translation>{name} wurde nicht gespeichert: {reason} ({parent}). Es wurde nichts überschrieben</translation>
  </message>
  <message>
   <source>{name} was written by a newer yardplan (file version {version}; this one reads up to {current}). Open it with a newer program; it was left as it is</source>
   <translation>{name} wurde mit einem neueren yardplan geschrieben (Dateiversion {version}; dieses liest bis {current}). Mit einem neueren Programm öffnen; die Datei blieb, wie sie war</translation>
  </message>
  <message>
   <source>{name} {value}: from {low} to {high}</source>
   <translation>{name} {value}: von {low} bis {high}</translation>
  </message>
  <message>
   <source>{name}: the ending must be one of {endings}</source>
   <translation>{name}: die Endung muss eine sein von {endings}</translation>
  </message>
  <message numerus="yes">
   <source>{number} entries</source>
   <translation>
    <numerusform>{number} Eintrag</numerusform>
    <numerusform>{number} Einträge</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{number} numbers</source>
   <translation>
    <numerusform>{number} Zahl</numerusform>
    <numerusform>{number} Zahlen</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{number} texts</source>
   <translation>
    <numerusform>{number} Text</numerusform>
    <numerusform>{number} Texte</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>{n} entries</source>
   <translation>
    <numerusform>{n} Eintrag</numerusform>
    <numerusform>{n} Einträge</numerusform>
   </translation>
  </message>
 </context>
</TS>
