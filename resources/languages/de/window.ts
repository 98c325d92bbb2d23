<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>&amp;Language</source>
   <translation>&amp;Sprache</translation>
  </message>
  <message>
   <source>As the system</source>
   <translation>Wie das System</translation>
  </message>
  <message>
   <source>Language of the window: {name}, from the next start on</source>
   <translation>Sprache des Fensters: {name}, ab dem nächsten Start</translation>
  </message>
  <message>
   <source>The language changes when yardplan is started again.</source>
   <translation>Die Sprache wechselt, wenn yardplan neu gestartet wird.</translation>
  </message>
 </context>
</TS>
