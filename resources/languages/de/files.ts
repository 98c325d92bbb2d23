<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>'{key}' is in a group already</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>'{name}' is missing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>DXF needs the package ezdxf: install it with 'pip install ezdxf'</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The yard cannot be written</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a colon is missing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a comma or a closing bracket is missing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a date like 04-01</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a date like 04-24</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a date like 10-12</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a device</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a field name is missing or a comma is left over</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a folder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a key like A1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a picture of at most 6 MB as base64</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a place goes with one plant only: give each plant a line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a place needs both x and y</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a text holds a line break or another control character</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a text is not closed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a value is missing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a whole number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a zone like 6b</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a {kind} is not read from a table: draw it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a {name} cannot be written</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>an object</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>count {count}: from 1 to {most}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>crop or cultivar is missing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>facing '{text}' is not a number of degrees</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has {count}, needs none or at least three</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has {had}, needs {needed}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>holds a broken character</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is '{text}', needs {needed}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is missing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is not a finite number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is too large a number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is {found}, needs a list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is {found}, needs a text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is {found}, needs an object</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is {found}, needs true or false</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is {found}, needs {needed}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is {number}, must lie between {low} and {high}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is {shown}, must be one of: {words}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is {value}, needs a whole number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it has {n} corners, more than {most}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it is less than {n} m across: is the unit right?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it reaches beyond {n} km: is the unit right?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lists or objects are nested too deep</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lot line in {file}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nothing (null)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>part of the folder name is a file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>something else</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>that is a folder, not a file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the disk can only be read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the disk is full</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the disk reported a fault</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the file holds no closed outline: a Polygon is needed for the lot line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the file is damaged: a position holds something that is no number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the file is damaged: a position needs a longitude and a latitude</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the file is damaged: an outline without positions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the file is not GeoJSON: its text cannot be understood</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the file or its folder is not there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the file would be larger than this system allows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the key '{key}' is kept for the lot line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the key is taken already by {thing}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the key {wanted} is taken: called {key}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the link leads back to itself</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the name '{name}' is taken already</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the name is too long</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the name of a crop</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the name of a cultivar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the positions are not longitude and latitude: save the file again in WGS 84 degrees</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the system gave no reason</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the table has no column '{name}': the first line must name the columns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the table is damaged: {error}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the table is empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the text cannot be understood</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there is no container '{container}'</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there is nothing with the key '{key}'</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there is something after the end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>three</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>true or false</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>twelve</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>two</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>you have no permission there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>your share of the disk is used up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{crop}:{cultivar} is not in the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{message}: {fault} (and {more} more)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} '{text}' is not a whole number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} cannot be opened: {reason} ({path})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} cannot be read: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} has file version {version}, which this program cannot read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} holds no closed line: draw the lot as a closed polyline</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is damaged</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is damaged or not a yard file: line {line}, column {column}: {fault}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is damaged: it holds a number with too many digits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is damaged: it holds {error}, which is not a number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is damaged: its version is missing or not a whole number from 1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is damaged: the field '{field}' stands twice in one object</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is damaged: {fault}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is not UTF-8 text: line {line} holds broken letters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is not a DXF file or cannot be opened</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is not a recovery copy</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is not a text that can be read: save it as UTF-8</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is not a yard file: it does not say that its format is '{format}'</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is not a yard file: lists are nested too deep</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is too large</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is too large for a yard file: {size} MiB, at most {most}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is too large: at most {most} MiB are read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is {what}, not a yard file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} was not opened</source>
   <translation>{name} wurde nicht geöffnet</translation>
  </message>
  <message>
   <source>{name} was not saved, it could not be opened again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} was not saved: another program has changed it since it was opened. Save under another name, or save again to replace it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} was not saved: read back, the yard was not the same</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} was not saved: {reason} ({parent}). Nothing was overwritten</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} was written by a newer yardplan (file version {version}; this one reads up to {current}). Open it with a newer program; it was left as it is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} {value}: from {low} to {high}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}: the ending must be one of {endings}</source>
   <translation type="unfinished" />
  </message>
  <message numerus="yes">
   <source>{number} entries</source>
   <translation type="unfinished" />
  </message>
  <message numerus="yes">
   <source>{number} numbers</source>
   <translation type="unfinished" />
  </message>
  <message numerus="yes">
   <source>{number} texts</source>
   <translation type="unfinished" />
  </message>
  <message numerus="yes">
   <source>{n} entries</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
