<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>'{date}' is not a day of the year: write MM-DD, for example 04-24</source>
   <translation>„{date}“ ist kein Tag des Jahres: MM-TT schreiben, zum Beispiel 04-24</translation>
  </message>
  <message>
   <source>'{name}' is not a fact of a cultivar</source>
   <translation>„{name}“ ist keine Angabe einer Sorte</translation>
  </message>
  <message>
   <source>'{text}' is not a hardiness zone such as 4 or 3b</source>
   <translation>„{text}“ ist keine Winterhärtezone wie 4 oder 3b</translation>
  </message>
  <message>
   <source>'{text}' is not a row of S-alleles such as S3S9</source>
   <translation>„{text}“ ist keine Reihe von S-Allelen wie S3S9</translation>
  </message>
  <message>
   <source>'{text}' is not one of: {words}</source>
   <translation>„{text}“ ist keines von: {words}</translation>
  </message>
  <message>
   <source>'{text}' is not yes, partly, no or n/a</source>
   <translation>„{text}“ ist nicht yes, partly, no oder n/a</translation>
  </message>
  <message>
   <source>'{zone}' is not a hardiness zone such as 5 or 5b</source>
   <translation>„{zone}“ ist keine Winterhärtezone wie 5 oder 5b</translation>
  </message>
  <message>
   <source>Common practice of the trade, no single source</source>
   <translation>Übliche Praxis des Obstbaus, keine einzelne Quelle</translation>
  </message>
  <message>
   <source>Own computation on published bloom records: error given with it</source>
   <translation>Eigene Berechnung aus veröffentlichten Blühdaten: Fehler angegeben</translation>
  </message>
  <message>
   <source>a male plant serves the females of its kind</source>
   <translation>eine männliche Pflanze dient den weiblichen ihrer Art</translation>
  </message>
  <message>
   <source>about {shown} days in bloom together ({by}): long enough in some years only</source>
   <translation>etwa {shown} Tage gemeinsam in Blüte ({by}): nur in manchen Jahren lang genug</translation>
  </message>
  <message>
   <source>about {shown} days in bloom together ({by}): rarely long enough</source>
   <translation>etwa {shown} Tage gemeinsam in Blüte ({by}): selten lang genug</translation>
  </message>
  <message>
   <source>about {shown} days in bloom together ({by}): usual</source>
   <translation>etwa {shown} Tage gemeinsam in Blüte ({by}): in üblichen Jahren genug</translation>
  </message>
  <message>
   <source>all</source>
   <translation>alles</translation>
  </message>
  <message>
   <source>alleles of {donor} and {receiver} cannot be compared: not proved</source>
   <translation>Allele sind nicht vergleichbar ({donor} und {receiver}): nicht belegt</translation>
  </message>
  <message>
   <source>alleles of {donor} and {receiver} unknown: not proved</source>
   <translation>Allele von {donor} und {receiver} unbekannt: nicht belegt</translation>
  </message>
  <message>
   <source>alleles of {name} unknown: not proved</source>
   <translation>Allele von {name} unbekannt: nicht belegt</translation>
  </message>
  <message>
   <source>an unknown seedling</source>
   <translation>ein unbekannter Sämling</translation>
  </message>
  <message>
   <source>any other {family} serves</source>
   <translation>jede andere taugt ({family})</translation>
  </message>
  <message>
   <source>bears no fruit, gives pollen</source>
   <translation>trägt keine Früchte, gibt Pollen</translation>
  </message>
  <message>
   <source>bloom of one of them is not known</source>
   <translation>die Blüte einer von beiden ist nicht bekannt</translation>
  </message>
  <message>
   <source>both are of the {family} family</source>
   <translation>beide gehören zu einer Familie ({family})</translation>
  </message>
  <message>
   <source>by bloom class</source>
   <translation>nach der Blütezeitgruppe</translation>
  </message>
  <message>
   <source>by order of bloom</source>
   <translation>nach der Blühfolge</translation>
  </message>
  <message>
   <source>chill needs differ by about {hours:.0f} h: in mild winters they open apart</source>
   <translation>der Kältebedarf weicht um etwa {hours:.0f} h ab: In milden Wintern öffnen sie zu verschiedener Zeit</translation>
  </message>
  <message>
   <source>crop '{crop}' is not known</source>
   <translation>die Art „{crop}“ ist nicht bekannt</translation>
  </message>
  <message>
   <source>crop and name are needed</source>
   <translation>Art und Name sind nötig</translation>
  </message>
  <message>
   <source>dates at this place</source>
   <translation>Termine am Ort</translation>
  </message>
  <message>
   <source>different cultivars</source>
   <translation>verschiedene Sorten</translation>
  </message>
  <message>
   <source>from memory</source>
   <translation>aus dem Gedächtnis</translation>
  </message>
  <message>
   <source>half</source>
   <translation>die Hälfte</translation>
  </message>
  <message>
   <source>it is not known whether the pollen of {name} is good</source>
   <translation>ob der Pollen von {name} gut ist, ist nicht bekannt</translation>
  </message>
  <message>
   <source>kinship of {donor} and {receiver} is not known: not proved</source>
   <translation>die Verwandtschaft von {donor} und {receiver} ist nicht bekannt: nicht belegt</translation>
  </message>
  <message>
   <source>light set</source>
   <translation>geringer Ansatz</translation>
  </message>
  <message>
   <source>light set by itself</source>
   <translation>allein geringer Ansatz</translation>
  </message>
  <message>
   <source>must be a number</source>
   <translation>muss eine Zahl sein</translation>
  </message>
  <message>
   <source>must be a number or a pair [low, high]</source>
   <translation>muss eine Zahl oder ein Paar [kleinste, größte] sein</translation>
  </message>
  <message>
   <source>must be a whole number of chromosome sets, such as 2 or 3</source>
   <translation>muss eine ganze Zahl von Chromosomensätzen sein, etwa 2 oder 3</translation>
  </message>
  <message>
   <source>must be more than nothing</source>
   <translation>muss mehr als nichts sein</translation>
  </message>
  <message>
   <source>must be text</source>
   <translation>muss Text sein</translation>
  </message>
  <message>
   <source>must be true or false</source>
   <translation>muss wahr oder falsch sein</translation>
  </message>
  <message>
   <source>must run from low to high and not be negative</source>
   <translation>muss von klein nach groß laufen und darf nicht negativ sein</translation>
  </message>
  <message>
   <source>no pollination rule is known for {crop}</source>
   <translation>für {crop} ist keine Befruchtungsregel bekannt</translation>
  </message>
  <message>
   <source>no trial of {donor} on {receiver} was found: not proved</source>
   <translation>kein Versuch von {donor} auf {receiver} gefunden: nicht belegt</translation>
  </message>
  <message>
   <source>not known</source>
   <translation>nicht bekannt</translation>
  </message>
  <message>
   <source>not measured: best within {best}, not counted beyond {outer}, trunk to trunk</source>
   <translation>nicht gemessen: am besten innerhalb von {best}, über {outer} nicht gezählt, von Stamm zu Stamm</translation>
  </message>
  <message>
   <source>not near of kin</source>
   <translation>nicht nah verwandt</translation>
  </message>
  <message>
   <source>nothing is known of {name}</source>
   <translation>über {name} ist nichts bekannt</translation>
  </message>
  <message>
   <source>observed bloom of {name}: '{date}' is no date; write MM-DD, for example 04-24</source>
   <translation>beobachtete Blüte von {name}: „{date}“ ist kein Datum; MM-TT schreiben, zum Beispiel 04-24</translation>
  </message>
  <message>
   <source>observed bloom of {name}: bloom of {crop} is not known, so it decides nothing</source>
   <translation>beobachtete Blüte von {name}: Die Blüte von {crop} ist nicht bekannt, daher entscheidet sie nichts</translation>
  </message>
  <message>
   <source>observed bloom: {late} on {late_day} before {early} on {early_day}, though it blooms after it: check both dates</source>
   <translation>beobachtete Blüte: {late} am {late_day} vor {early} am {early_day}, obwohl sie danach blüht: beide Daten prüfen</translation>
  </message>
  <message>
   <source>own cultivar {number}</source>
   <translation>eigene Sorte {number}</translation>
  </message>
  <message>
   <source>rarely</source>
   <translation>selten</translation>
  </message>
  <message>
   <source>sets by itself</source>
   <translation>selbstfruchtbar</translation>
  </message>
  <message>
   <source>should set, not proved</source>
   <translation>sollte ansetzen, nicht belegt</translation>
  </message>
  <message>
   <source>site: twelve monthly mean temperatures are needed to date bloom</source>
   <translation>Standort: Um die Blüte zu datieren, sind zwölf Monatsmittel der Temperatur nötig</translation>
  </message>
  <message>
   <source>some years</source>
   <translation>manche Jahre</translation>
  </message>
  <message>
   <source>the pollen of {name} is good</source>
   <translation>der Pollen von {name} ist gut</translation>
  </message>
  <message>
   <source>the user</source>
   <translation>eigene Angabe</translation>
  </message>
  <message>
   <source>two plants of {name} are one clone</source>
   <translation>zwei Pflanzen von {name} sind ein Klon</translation>
  </message>
  <message>
   <source>usual</source>
   <translation>üblich</translation>
  </message>
  <message>
   <source>which allele the pollen of {donor} shows is not known: not proved</source>
   <translation>welches Allel der Pollen von {donor} zeigt, ist nicht bekannt: nicht belegt</translation>
  </message>
  <message>
   <source>will not set</source>
   <translation>wird nicht ansetzen</translation>
  </message>
  <message>
   <source>will set well</source>
   <translation>wird gut ansetzen</translation>
  </message>
  <message>
   <source>{apart} apart, beyond {outer}</source>
   <translation>{apart} auseinander, jenseits von {outer}</translation>
  </message>
  <message>
   <source>{apart} apart, within {best}</source>
   <translation>{apart} auseinander, innerhalb von {best}</translation>
  </message>
  <message>
   <source>{apart} apart: beyond {best} set falls off</source>
   <translation>{apart} auseinander: jenseits von {best} lässt der Ansatz nach</translation>
  </message>
  <message>
   <source>{child} is a sport of {root}: one clone</source>
   <translation>{child} ist eine Mutante von {root}: ein Klon</translation>
  </message>
  <message>
   <source>{donor} and {receiver} are both sports of {root}: one clone</source>
   <translation>{donor} und {receiver} sind beide Mutanten von {root}: ein Klon</translation>
  </message>
  <message>
   <source>{donor} and {receiver} are of one family and cross</source>
   <translation>{donor} und {receiver} gehören zu einer Familie und kreuzen sich</translation>
  </message>
  <message>
   <source>{donor} and {receiver} are too near of kin (group {group})</source>
   <translation>{donor} und {receiver} sind zu nah verwandt (Gruppe {group})</translation>
  </message>
  <message>
   <source>{donor} has the alleles of {receiver} but sets itself by another locus: not proved</source>
   <translation>{donor} hat die Allele von {receiver}, ist aber durch einen anderen Genort selbstfruchtbar: nicht belegt</translation>
  </message>
  <message>
   <source>{donor} pollen sets no fruit on {receiver}</source>
   <translation>Pollen von {donor} befruchtet {receiver} nicht</translation>
  </message>
  <message>
   <source>{name} has no pollen that works or is a proven poor donor</source>
   <translation>{name} hat keinen wirksamen Pollen oder ist nachweislich ein schlechter Befruchter</translation>
  </message>
  <message>
   <source>{name} is a low-chill kind: it opens weeks before the others</source>
   <translation>{name} hat geringen Kältebedarf: Sie öffnet Wochen vor den anderen</translation>
  </message>
  <message>
   <source>{name} is female and has no pollen that works</source>
   <translation>{name} ist weiblich und hat keinen wirksamen Pollen</translation>
  </message>
  <message>
   <source>{name} is male and bears no fruit</source>
   <translation>{name} ist männlich und trägt keine Früchte</translation>
  </message>
  <message>
   <source>{name} is triploid: its pollen does not work</source>
   <translation>{name} ist triploid: Der Pollen wirkt nicht</translation>
  </message>
  <message numerus="yes">
   <source>{n} days, {often}</source>
   <translation>
    <numerusform>{n} Tag, {often}</numerusform>
    <numerusform>{n} Tage, {often}</numerusform>
   </translation>
  </message>
  <message>
   <source>{receiver} ({own}) refuses all pollen of {donor} ({given})</source>
   <translation>{receiver} ({own}) weist allen Pollen von {donor} ({given}) ab</translation>
  </message>
  <message>
   <source>{receiver} ({own}) takes about {share:.0%} of the pollen of {donor} ({given})</source>
   <translation>{receiver} ({own}) nimmt etwa {share:.0%} des Pollens von {donor} ({given}) an</translation>
  </message>
  <message>
   <source>{receiver} ({own}) takes all pollen of {donor} ({given})</source>
   <translation>{receiver} ({own}) nimmt allen Pollen von {donor} ({given}) an</translation>
  </message>
 </context>
</TS>
