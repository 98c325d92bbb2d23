<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>'{date}' is not a day of the year: write MM-DD, for example 04-24</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>'{name}' is not a fact of a cultivar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>'{text}' is not a hardiness zone such as 4 or 3b</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>'{text}' is not a row of S-alleles such as S3S9</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>'{text}' is not one of: {words}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>'{text}' is not yes, partly, no or n/a</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>'{zone}' is not a hardiness zone such as 5 or 5b</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a male plant serves the females of its kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>about {shown} days in bloom together ({by}): long enough in some years only</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>about {shown} days in bloom together ({by}): rarely long enough</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>about {shown} days in bloom together ({by}): usual</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>all</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>alleles of {donor} and {receiver} cannot be compared: not proved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>alleles of {donor} and {receiver} unknown: not proved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>alleles of {name} unknown: not proved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>an unknown seedling</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>any other {family} serves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bears no fruit, gives pollen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bloom of one of them is not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>both are of the {family} family</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by bloom class</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by order of bloom</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>chill needs differ by about {hours:.0f} h: in mild winters they open apart</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>crop '{crop}' is not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>crop and name are needed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dates at this place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>different cultivars</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from memory</source>
   <translation>aus dem Gedächtnis</translation>
  </message>
  <message>
   <source>half</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it is not known whether the pollen of {name} is good</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>kinship of {donor} and {receiver} is not known: not proved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>light set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>light set by itself</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a number or a pair [low, high]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a whole number of chromosome sets, such as 2 or 3</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be more than nothing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be true or false</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must run from low to high and not be negative</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no pollination rule is known for {crop}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no trial of {donor} on {receiver} was found: not proved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not known</source>
   <translation>nicht bekannt</translation>
  </message>
  <message>
   <source>not measured: best within {best}, not counted beyond {outer}, trunk to trunk</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not near of kin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nothing is known of {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>observed bloom of {name}: '{date}' is no date; write MM-DD, for example 04-24</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>observed bloom of {name}: bloom of {crop} is not known, so it decides nothing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>observed bloom: {late} on {late_day} before {early} on {early_day}, though it blooms after it: check both dates</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own cultivar {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sets by itself</source>
   <translation>selbstfruchtbar</translation>
  </message>
  <message>
   <source>should set, not proved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>site: twelve monthly mean temperatures are needed to date bloom</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the pollen of {name} is good</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>two plants of {name} are one clone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>which allele the pollen of {donor} shows is not known: not proved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>will not set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>will set well</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{apart} apart, beyond {outer}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{apart} apart, within {best}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{apart} apart: beyond {best} set falls off</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{child} is a sport of {root}: one clone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{donor} and {receiver} are both sports of {root}: one clone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{donor} and {receiver} are of one family and cross</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{donor} and {receiver} are too near of kin (group {group})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{donor} has the alleles of {receiver} but sets itself by another locus: not proved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{donor} pollen sets no fruit on {receiver}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} has no pollen that works or is a proven poor donor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is a low-chill kind: it opens weeks before the others</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is female and has no pollen that works</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is male and bears no fruit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is triploid: its pollen does not work</source>
   <translation type="unfinished" />
  </message>
  <message numerus="yes">
   <source>{n} days, {often}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{receiver} ({own}) refuses all pollen of {donor} ({given})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{receiver} ({own}) takes about {share:.0%} of the pollen of {donor} ({given})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{receiver} ({own}) takes all pollen of {donor} ({given})</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
