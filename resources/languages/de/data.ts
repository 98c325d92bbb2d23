<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>yardplan</name>
  <message>
   <source>10-14 days after turning blue</source>
   <translation>10–14 Tage nach der Blaufärbung</translation>
  </message>
  <message>
   <source>2,4-D and dicamba drift far and cripple vines</source>
   <translation>2,4-D und Dicamba driften weit und verkrüppeln Reben</translation>
  </message>
  <message>
   <source>28 F comes about 14 days before 32 F in spring: days per degree C</source>
   <translation>−2 °C kommen im Frühjahr etwa 14 Tage vor 0 °C: Tage je Grad</translation>
  </message>
  <message>
   <source>3-5 shoots a foot of arm, none from the trunk</source>
   <translation>10–16 Triebe je Meter Arm, keine vom Stamm</translation>
  </message>
  <message>
   <source>5 days before Northblue</source>
   <translation>5 Tage vor Northblue</translation>
  </message>
  <message>
   <source>5-7 days after turning black</source>
   <translation>5–7 Tage nach der Schwarzfärbung</translation>
  </message>
  <message>
   <source>7 days before Northblue</source>
   <translation>7 Tage vor Northblue</translation>
  </message>
  <message>
   <source>7-10 days after Adams 2</source>
   <translation>7–10 Tage nach Adams 2</translation>
  </message>
  <message>
   <source>A barrier that lets through less light than this counts as solid to cold air</source>
   <translation>Eine Sperre, die weniger Licht durchlässt, gilt für Kaltluft als dicht</translation>
  </message>
  <message>
   <source>A cable-and-pipe request is compulsory before any machine digging, for householders too</source>
   <translation>Vor maschinellem Graben ist eine Leitungsanfrage Pflicht, auch für Privatleute</translation>
  </message>
  <message>
   <source>A crown that begins this high can be walked under</source>
   <translation>Unter einer Krone, die so hoch beginnt, kann man gehen</translation>
  </message>
  <message>
   <source>A gap or raised skirt of 1 to 2 ft lets cold air drain</source>
   <translation>Ein Spalt von 30 bis 60 cm am Boden lässt Kaltluft abfließen</translation>
  </message>
  <message>
   <source>A gate this near to the lot line leads into the yard from outside</source>
   <translation>Ein Tor so nah an der Grundstücksgrenze führt von außen in den Garten</translation>
  </message>
  <message>
   <source>A hard freeze comes about two weeks after the first frost of autumn; fruit hangs on until then</source>
   <translation>Starker Frost kommt etwa zwei Wochen nach dem ersten Herbstfrost; so lange hängen Früchte</translation>
  </message>
  <message>
   <source>A hedge or espalier stands this far inside the lot line so that both faces are reached from your own side</source>
   <translation>Eine Hecke oder ein Spalier steht so weit innerhalb der Grundstücksgrenze, dass beide Seiten von der eigenen aus erreichbar sind</translation>
  </message>
  <message>
   <source>A hedge this tall or taller counts as a windbreak</source>
   <translation>Eine Hecke ab dieser Höhe zählt als Windschutz</translation>
  </message>
  <message>
   <source>A mix that does not suit is replaced, not mended</source>
   <translation>Ein unpassendes Substrat wird ersetzt, nicht verbessert</translation>
  </message>
  <message>
   <source>A pH this far outside a crop's range is within what a home test can tell</source>
   <translation>So weit außerhalb des pH-Bereichs einer Art liegt innerhalb dessen, was ein einfaches Testset unterscheidet</translation>
  </message>
  <message>
   <source>A stem trained on a wall stands at least this far off it</source>
   <translation>Ein an der Wand gezogener Stamm steht mindestens so weit davor</translation>
  </message>
  <message>
   <source>A stem trained on a wall stands at most this far off it</source>
   <translation>Ein an der Wand gezogener Stamm steht höchstens so weit davor</translation>
  </message>
  <message>
   <source>A tree in a view triangle is trimmed clear up to this height</source>
   <translation>Ein Baum im Sichtdreieck wird bis zu dieser Höhe aufgeastet</translation>
  </message>
  <message>
   <source>A walnut of this height counts as mature</source>
   <translation>Eine Walnuss dieser Höhe gilt als ausgewachsen</translation>
  </message>
  <message>
   <source>A windbreak shelters about ten times its height downwind</source>
   <translation>Ein Windschutz schützt windabwärts etwa das Zehnfache seiner Höhe</translation>
  </message>
  <message>
   <source>A zone estimated from monthly temperatures may be one off: a plant too tender by no more than this is a caution, not a conflict</source>
   <translation>Eine aus Monatstemperaturen geschätzte Zone kann um eine danebenliegen: Ist eine Pflanze höchstens um so viel zu empfindlich, so ist das eine Warnung, kein Konflikt</translation>
  </message>
  <message>
   <source>Above this pH, making soil acid for blueberries needs much peat or bark besides sulfur</source>
   <translation>Über diesem pH braucht das Ansäuern für Heidelbeeren neben Schwefel viel Torf oder Rinde</translation>
  </message>
  <message>
   <source>Above this slope work is hard and soil washes</source>
   <translation>Über dieser Neigung ist die Arbeit mühsam, und Boden wird abgeschwemmt</translation>
  </message>
  <message>
   <source>Acts at once but aluminum can injure roots: not for fruit</source>
   <translation>Wirkt sofort, aber Aluminium kann Wurzeln schädigen: nicht für Obst</translation>
  </message>
  <message>
   <source>Afghanistan</source>
   <translation>Afghanistan</translation>
  </message>
  <message>
   <source>After heavy rain pick at once</source>
   <translation>Nach starkem Regen sofort pflücken</translation>
  </message>
  <message>
   <source>Albania</source>
   <translation>Albanien</translation>
  </message>
  <message>
   <source>Algeria</source>
   <translation>Algerien</translation>
  </message>
  <message>
   <source>American Samoa</source>
   <translation>Amerikanisch-Samoa</translation>
  </message>
  <message>
   <source>An arm's reach from the way to a plant's crown</source>
   <translation>Armlänge vom Weg bis zur Krone einer Pflanze</translation>
  </message>
  <message>
   <source>Andorra</source>
   <translation>Andorra</translation>
  </message>
  <message>
   <source>Angola</source>
   <translation>Angola</translation>
  </message>
  <message>
   <source>Antigua &amp; Barbuda</source>
   <translation>Antigua und Barbuda</translation>
  </message>
  <message>
   <source>Argentina</source>
   <translation>Argentinien</translation>
  </message>
  <message>
   <source>Armenia</source>
   <translation>Armenien</translation>
  </message>
  <message>
   <source>Aruba</source>
   <translation>Aruba</translation>
  </message>
  <message>
   <source>Asian pear</source>
   <translation>Nashi</translation>
  </message>
  <message>
   <source>Ask about white pine blister rust rules</source>
   <translation>Nach Regeln zum Blasenrost der Weymouthskiefer fragen</translation>
  </message>
  <message>
   <source>Ask every utility where its lines run before you dig</source>
   <translation>Vor dem Graben jeden Versorger fragen, wo seine Leitungen liegen</translation>
  </message>
  <message>
   <source>Ask the free national plan service before every dig; in New South Wales this is compulsory</source>
   <translation>Vor jedem Graben den kostenlosen landesweiten Plandienst fragen; in New South Wales ist das Pflicht</translation>
  </message>
  <message>
   <source>Ask the one-call service of your province (free, about a week ahead) before every dig</source>
   <translation>Vor jedem Graben die Leitungsauskunft Ihrer Provinz fragen (kostenlos, etwa eine Woche vorher)</translation>
  </message>
  <message>
   <source>At about this pH free lime is present and the soil cannot be made acid</source>
   <translation>Etwa ab diesem pH liegt freier Kalk vor, und der Boden lässt sich nicht ansäuern</translation>
  </message>
  <message>
   <source>At or above this pH acidifying the ground is not advised: a raised bed or container is</source>
   <translation>Ab diesem pH wird vom Ansäuern des Bodens abgeraten: besser Hochbeet oder Kübel</translation>
  </message>
  <message>
   <source>Aug and Oct</source>
   <translation>Aug. und Okt.</translation>
  </message>
  <message>
   <source>Aug-Oct</source>
   <translation>Aug.–Okt.</translation>
  </message>
  <message>
   <source>Aug-Sep</source>
   <translation>Aug.–Sept.</translation>
  </message>
  <message>
   <source>Australia</source>
   <translation>Australien</translation>
  </message>
  <message>
   <source>Austria</source>
   <translation>Österreich</translation>
  </message>
  <message>
   <source>Avoid chloride forms of potash.</source>
   <translation>Chloridhaltige Kalidünger meiden.</translation>
  </message>
  <message>
   <source>Azerbaijan</source>
   <translation>Aserbaidschan</translation>
  </message>
  <message>
   <source>Bag fruit or hang a codling moth trap</source>
   <translation>Früchte eintüten oder eine Apfelwicklerfalle hängen</translation>
  </message>
  <message>
   <source>Bahamas</source>
   <translation>Bahamas</translation>
  </message>
  <message>
   <source>Bahrain</source>
   <translation>Bahrain</translation>
  </message>
  <message>
   <source>Bangladesh</source>
   <translation>Bangladesch</translation>
  </message>
  <message>
   <source>Barbados</source>
   <translation>Barbados</translation>
  </message>
  <message>
   <source>Bare legal minimum of one county from a tank or leach line to a tree: ask your own county</source>
   <translation>Gesetzliches Mindestmaß eines Countys von Sickergrube oder Sickerstrang zum Baum: bei der eigenen Behörde nachfragen</translation>
  </message>
  <message>
   <source>Beds that lie over something by no more than this only touch it</source>
   <translation>Beete, die um nicht mehr als dies über etwas liegen, berühren es nur</translation>
  </message>
  <message>
   <source>Belarus</source>
   <translation>Belarus</translation>
  </message>
  <message>
   <source>Belgium</source>
   <translation>Belgien</translation>
  </message>
  <message>
   <source>Belize</source>
   <translation>Belize</translation>
  </message>
  <message>
   <source>Below this share of the hours needed no crop worth the room can be expected</source>
   <translation>Unter diesem Anteil der nötigen Stunden ist keine lohnende Ernte zu erwarten</translation>
  </message>
  <message>
   <source>Benin</source>
   <translation>Benin</translation>
  </message>
  <message>
   <source>Bermuda</source>
   <translation>Bermuda</translation>
  </message>
  <message>
   <source>Beyond this overlap only a trained form (hedge, cordon, espalier, spindle, group) can be kept fruitful</source>
   <translation>Bei mehr Überlappung lässt sich nur eine Erziehungsform (Hecke, Schnurbaum, Spalier, Spindel, Gruppe) fruchtbar halten</translation>
  </message>
  <message>
   <source>Bhutan</source>
   <translation>Bhutan</translation>
  </message>
  <message>
   <source>Black and purple raspberries as far as the lot allows from red ones</source>
   <translation>Schwarze und violette Himbeeren so weit von roten, wie das Grundstück erlaubt</translation>
  </message>
  <message>
   <source>Black and purple raspberries at least this far from red ones, which can carry virus unseen</source>
   <translation>Schwarze und violette Himbeeren mindestens so weit von roten, die unbemerkt Viren tragen können</translation>
  </message>
  <message>
   <source>Black knot: cut [3-6 in] below the knots</source>
   <translation>Schwarzer Krebs: [3-6 in] unter den Knoten schneiden</translation>
  </message>
  <message>
   <source>Black rot and mildew cover</source>
   <translation>Belag gegen Schwarzfäule und Mehltau</translation>
  </message>
  <message>
   <source>Blossom rot cover</source>
   <translation>Belag gegen Blütenfäule</translation>
  </message>
  <message>
   <source>Bolivia</source>
   <translation>Bolivien</translation>
  </message>
  <message>
   <source>Bosnia &amp; Herzegovina</source>
   <translation>Bosnien und Herzegowina</translation>
  </message>
  <message>
   <source>Botswana</source>
   <translation>Botsuana</translation>
  </message>
  <message>
   <source>Brazil</source>
   <translation>Brasilien</translation>
  </message>
  <message>
   <source>Bring pots in</source>
   <translation>Kübel hereinholen</translation>
  </message>
  <message>
   <source>Bring pots out</source>
   <translation>Kübel hinausstellen</translation>
  </message>
  <message>
   <source>British Virgin Islands</source>
   <translation>Britische Jungferninseln</translation>
  </message>
  <message>
   <source>Brown rot and black knot cover</source>
   <translation>Belag gegen Fruchtfäule und Schwarzen Krebs</translation>
  </message>
  <message>
   <source>Brown rot covers before harvest</source>
   <translation>Beläge gegen Fruchtfäule vor der Ernte</translation>
  </message>
  <message>
   <source>Brunei</source>
   <translation>Brunei Darussalam</translation>
  </message>
  <message>
   <source>Build a raised bed or use a container</source>
   <translation>Ein Hochbeet anlegen oder einen Kübel nehmen</translation>
  </message>
  <message>
   <source>Bulgaria</source>
   <translation>Bulgarien</translation>
  </message>
  <message>
   <source>Burkina Faso</source>
   <translation>Burkina Faso</translation>
  </message>
  <message>
   <source>Burn or bin the cut wood; ask whether burning is allowed.</source>
   <translation>Das Schnittholz verbrennen oder in den Müll; fragen, ob Verbrennen erlaubt ist.</translation>
  </message>
  <message>
   <source>Burundi</source>
   <translation>Burundi</translation>
  </message>
  <message>
   <source>Call 811 two to three working days before every dig, even for one tree; the marking is free. Mark your dig area in white</source>
   <translation>Vor jedem Graben, auch für einen einzigen Baum, zwei bis drei Arbeitstage vorher 811 anrufen; das Markieren ist kostenlos. Den Grabbereich weiß markieren</translation>
  </message>
  <message>
   <source>Call the utility locating service (811 in the United States) some days before you dig, and do not dig inside the marked strips.</source>
   <translation>Einige Tage vor dem Graben die Leitungsauskunft anrufen (in den USA 811) und innerhalb der markierten Streifen nicht graben.</translation>
  </message>
  <message>
   <source>Cambodia</source>
   <translation>Kambodscha</translation>
  </message>
  <message>
   <source>Cameroon</source>
   <translation>Kamerun</translation>
  </message>
  <message>
   <source>Canada</source>
   <translation>Kanada</translation>
  </message>
  <message>
   <source>Cape Verde</source>
   <translation>Cabo Verde</translation>
  </message>
  <message>
   <source>Caribbean Netherlands</source>
   <translation>Karibische Niederlande</translation>
  </message>
  <message>
   <source>Cayman Islands</source>
   <translation>Kaimaninseln</translation>
  </message>
  <message>
   <source>Cedar-apple rust passes between junipers and apples or pears this near most years; spores fly farther</source>
   <translation>Birnengitter- und Apfelrost wechselt in dieser Nähe in den meisten Jahren zwischen Wacholder und Apfel oder Birne; Sporen fliegen weiter</translation>
  </message>
  <message>
   <source>Central African Republic</source>
   <translation>Zentralafrikanische Republik</translation>
  </message>
  <message>
   <source>Chad</source>
   <translation>Tschad</translation>
  </message>
  <message>
   <source>Check ties, stakes and labels</source>
   <translation>Bindungen, Pfähle und Etiketten prüfen</translation>
  </message>
  <message>
   <source>Chile</source>
   <translation>Chile</translation>
  </message>
  <message>
   <source>Chill berries at once.</source>
   <translation>Beeren sofort kühlen.</translation>
  </message>
  <message>
   <source>Chill, then ripen indoors</source>
   <translation>Kühlen, dann im Haus nachreifen lassen</translation>
  </message>
  <message>
   <source>China</source>
   <translation>China</translation>
  </message>
  <message>
   <source>Clean the tools between cuts in season.</source>
   <translation>In der Saison das Werkzeug zwischen den Schnitten reinigen.</translation>
  </message>
  <message>
   <source>Clear ring outside the crown for a three-leg ladder, on at least two sides</source>
   <translation>Freier Ring außerhalb der Krone für eine Dreibeinleiter, auf mindestens zwei Seiten</translation>
  </message>
  <message>
   <source>Clearances count as met within what a tape and a stake can tell (about 0.25 ft)</source>
   <translation>Abstände gelten innerhalb dessen, was Maßband und Pflock unterscheiden, als eingehalten (etwa 8 cm)</translation>
  </message>
  <message>
   <source>Colombia</source>
   <translation>Kolumbien</translation>
  </message>
  <message>
   <source>Comoros</source>
   <translation>Komoren</translation>
  </message>
  <message>
   <source>Congo-Brazzaville</source>
   <translation>Kongo-Brazzaville</translation>
  </message>
  <message>
   <source>Congo-Kinshasa</source>
   <translation>Kongo-Kinshasa</translation>
  </message>
  <message>
   <source>Container for raspberries, blackberries and currants</source>
   <translation>Kübel für Himbeeren, Brombeeren und Johannisbeeren</translation>
  </message>
  <message>
   <source>Container volume for each strawberry plant</source>
   <translation>Kübelvolumen je Erdbeerpflanze</translation>
  </message>
  <message>
   <source>Cook Islands</source>
   <translation>Cookinseln</translation>
  </message>
  <message>
   <source>Cook before eating: raw berries, leaves and stems are poisonous; keep children and pets away.</source>
   <translation>Vor dem Essen kochen: Rohe Beeren, Blätter und Stängel sind giftig; Kinder und Haustiere fernhalten.</translation>
  </message>
  <message>
   <source>Costa Rica</source>
   <translation>Costa Rica</translation>
  </message>
  <message>
   <source>Counts as nitrogen fertiliser: dissolve in water, do not overdose</source>
   <translation>Zählt als Stickstoffdünger: in Wasser lösen, nicht überdosieren</translation>
  </message>
  <message>
   <source>Cover at shuck split</source>
   <translation>Belag beim Abwurf der Blütenhülle</translation>
  </message>
  <message>
   <source>Croatia</source>
   <translation>Kroatien</translation>
  </message>
  <message>
   <source>Crown edge off the edge of a path, drive or terrace</source>
   <translation>Kronenrand vom Rand eines Wegs, einer Zufahrt oder Terrasse</translation>
  </message>
  <message>
   <source>Crowns that overlap more than this need summer pruning every year to keep light on the inner wood</source>
   <translation>Kronen, die sich mehr überlappen, brauchen jedes Jahr Sommerschnitt, damit Licht ans innere Holz kommt</translation>
  </message>
  <message>
   <source>Cuba</source>
   <translation>Kuba</translation>
  </message>
  <message>
   <source>Curaçao</source>
   <translation>Curaçao</translation>
  </message>
  <message>
   <source>Curculio cover</source>
   <translation>Belag gegen Rüsselkäfer</translation>
  </message>
  <message>
   <source>Customary distance of black currants from five-needle pines</source>
   <translation>Üblicher Abstand schwarzer Johannisbeeren von fünfnadligen Kiefern</translation>
  </message>
  <message>
   <source>Customary distance of red and white currants and gooseberries from five-needle pines</source>
   <translation>Üblicher Abstand roter und weißer Johannisbeeren und Stachelbeeren von fünfnadligen Kiefern</translation>
  </message>
  <message>
   <source>Cut all canes to the ground</source>
   <translation>Alle Ruten bodeneben abschneiden</translation>
  </message>
  <message>
   <source>Cut cankers out.</source>
   <translation>Krebsstellen ausschneiden.</translation>
  </message>
  <message>
   <source>Cut flower stalks off</source>
   <translation>Blütenstängel abschneiden</translation>
  </message>
  <message>
   <source>Cut fruited canes out at the crown</source>
   <translation>Abgetragene Ruten am Wurzelstock herausschneiden</translation>
  </message>
  <message>
   <source>Cut fruited canes to the ground</source>
   <translation>Abgetragene Ruten bodeneben abschneiden</translation>
  </message>
  <message>
   <source>Cut or twist, do not tear the spur.</source>
   <translation>Schneiden oder drehen, das Fruchtholz nicht abreißen.</translation>
  </message>
  <message>
   <source>Cut out fruited canes</source>
   <translation>Abgetragene Ruten herausschneiden</translation>
  </message>
  <message>
   <source>Cut spears</source>
   <translation>Stangen stechen</translation>
  </message>
  <message>
   <source>Cut the bines down</source>
   <translation>Die Ranken abschneiden</translation>
  </message>
  <message>
   <source>Cut whole heads</source>
   <translation>Ganze Dolden schneiden</translation>
  </message>
  <message>
   <source>Cyprus</source>
   <translation>Zypern</translation>
  </message>
  <message>
   <source>Czechia</source>
   <translation>Tschechien</translation>
  </message>
  <message>
   <source>Côte d’Ivoire</source>
   <translation>Côte d’Ivoire</translation>
  </message>
  <message>
   <source>Deep and seldom, not a little each day.</source>
   <translation>Tief und selten, nicht täglich ein wenig.</translation>
  </message>
  <message>
   <source>Degrees by which a row may leave north-south before its two sides get unlike light</source>
   <translation>Grad, um die eine Reihe von Nord–Süd abweichen darf, bevor ihre Seiten ungleiches Licht bekommen</translation>
  </message>
  <message>
   <source>Delaware has a permit or a ban on some or all of them</source>
   <translation>Delaware verlangt für manche oder alle eine Genehmigung oder verbietet sie</translation>
  </message>
  <message>
   <source>Denmark</source>
   <translation>Dänemark</translation>
  </message>
  <message>
   <source>Depth of a raised bed filled with acid mix where the ground cannot be made acid</source>
   <translation>Tiefe eines Hochbeets mit saurem Substrat, wo sich der Boden nicht ansäuern lässt</translation>
  </message>
  <message>
   <source>Dig only by hand this near to a marked line; have the lines marked before every dig</source>
   <translation>So nah an einer markierten Leitung nur von Hand graben; vor jedem Graben die Leitungen markieren lassen</translation>
  </message>
  <message>
   <source>Dig several holes [18 in] deep and fill them once with water: gone within an hour is good, hours to a day is fair, water that stands over a day is poor</source>
   <translation>Mehrere Löcher [18 in] tief graben und einmal mit Wasser füllen: In einer Stunde leer ist gut, Stunden bis ein Tag ist mäßig, Wasser, das über einen Tag steht, ist schlecht</translation>
  </message>
  <message>
   <source>Distance from which tall trees may stand beside an overhead line</source>
   <translation>Abstand, ab dem hohe Bäume neben einer Freileitung stehen dürfen</translation>
  </message>
  <message>
   <source>Distance of a low tree (up to 30 ft) from a building</source>
   <translation>Abstand eines niedrigen Baums (bis 9 m) zum Gebäude</translation>
  </message>
  <message>
   <source>Distance of a medium tree (30 to 50 ft) from a building</source>
   <translation>Abstand eines mittleren Baums (9 bis 15 m) zum Gebäude</translation>
  </message>
  <message>
   <source>Distance of a tall tree (over 50 ft) from a building</source>
   <translation>Abstand eines hohen Baums (über 15 m) zum Gebäude</translation>
  </message>
  <message>
   <source>Distance of low plants from the lot line by your local law; 0: the figures of the country set in the site card</source>
   <translation>Grenzabstand niedriger Pflanzen nach Ihrem örtlichen Recht; 0: die Werte des Landes aus der Standortkarte</translation>
  </message>
  <message>
   <source>Distance of tall plants from the lot line by your local law; 0: the figures of the country set in the site card</source>
   <translation>Grenzabstand hoher Pflanzen nach Ihrem örtlichen Recht; 0: die Werte des Landes aus der Standortkarte</translation>
  </message>
  <message>
   <source>Djibouti</source>
   <translation>Dschibuti</translation>
  </message>
  <message>
   <source>Dominica</source>
   <translation>Dominica</translation>
  </message>
  <message>
   <source>Dominican Republic</source>
   <translation>Dominikanische Republik</translation>
  </message>
  <message>
   <source>Dormant oil</source>
   <translation>Austriebsöl</translation>
  </message>
  <message>
   <source>Draw it tight over a frame and close the edges: loose nets trap birds, snakes and pets. Take it off after harvest.</source>
   <translation>Straff über ein Gestell spannen und die Ränder schließen: In losen Netzen verfangen sich Vögel, Schlangen und Haustiere. Nach der Ernte abnehmen.</translation>
  </message>
  <message>
   <source>Ecuador</source>
   <translation>Ecuador</translation>
  </message>
  <message>
   <source>Egypt</source>
   <translation>Ägypten</translation>
  </message>
  <message>
   <source>El Salvador</source>
   <translation>El Salvador</translation>
  </message>
  <message>
   <source>English walnut</source>
   <translation>Walnuss</translation>
  </message>
  <message>
   <source>Equatorial Guinea</source>
   <translation>Äquatorialguinea</translation>
  </message>
  <message>
   <source>Eritrea</source>
   <translation>Eritrea</translation>
  </message>
  <message>
   <source>Estonia</source>
   <translation>Estland</translation>
  </message>
  <message>
   <source>Eswatini</source>
   <translation>Eswatini</translation>
  </message>
  <message>
   <source>Ethiopia</source>
   <translation>Äthiopien</translation>
  </message>
  <message>
   <source>European pear</source>
   <translation>Birne</translation>
  </message>
  <message>
   <source>European plum</source>
   <translation>Europäische Pflaume</translation>
  </message>
  <message>
   <source>Every tree stays this far from a pool wall</source>
   <translation>Jeder Baum bleibt so weit von einer Beckenwand</translation>
  </message>
  <message>
   <source>Eye and dust protection; split the dose.</source>
   <translation>Augen- und Staubschutz; die Menge aufteilen.</translation>
  </message>
  <message>
   <source>Eye protection: canes spring back.</source>
   <translation>Augenschutz: Ruten schnellen zurück.</translation>
  </message>
  <message>
   <source>Faroe Islands</source>
   <translation>Färöer</translation>
  </message>
  <message>
   <source>Farthest that the toxic zone of a walnut has been found</source>
   <translation>Am weitesten gefundene Giftzone einer Walnuss</translation>
  </message>
  <message>
   <source>Feed</source>
   <translation>Düngen</translation>
  </message>
  <message>
   <source>Feed and mulch</source>
   <translation>Düngen und mulchen</translation>
  </message>
  <message>
   <source>Feed lightly each month</source>
   <translation>Jeden Monat leicht düngen</translation>
  </message>
  <message>
   <source>Feed only if growth was short</source>
   <translation>Nur bei schwachem Wuchs düngen</translation>
  </message>
  <message>
   <source>Feed pots</source>
   <translation>Kübel düngen</translation>
  </message>
  <message>
   <source>Feed the young tree if it grows slowly</source>
   <translation>Den jungen Baum düngen, wenn er langsam wächst</translation>
  </message>
  <message>
   <source>Feed with an ammonium fertilizer</source>
   <translation>Mit Ammoniumdünger düngen</translation>
  </message>
  <message>
   <source>Fiji</source>
   <translation>Fidschi</translation>
  </message>
  <message>
   <source>Fill it with acid mix, half of it peat, line it off from the ground, and water with rain</source>
   <translation>Mit saurem Substrat füllen, zur Hälfte Torf, vom Boden abtrennen und mit Regenwasser gießen</translation>
  </message>
  <message>
   <source>Fill the container anew</source>
   <translation>Den Kübel neu füllen</translation>
  </message>
  <message>
   <source>Fine net of [0.04 in] mesh and clean picking</source>
   <translation>Feines Netz mit [0.04 in] Maschen und sauberes Abernten</translation>
  </message>
  <message>
   <source>Fine netting against fruit flies</source>
   <translation>Feines Netz gegen Fruchtfliegen</translation>
  </message>
  <message>
   <source>Finland</source>
   <translation>Finnland</translation>
  </message>
  <message>
   <source>Fire blight: cut out strikes</source>
   <translation>Feuerbrand: befallene Triebe ausschneiden</translation>
  </message>
  <message>
   <source>France</source>
   <translation>Frankreich</translation>
  </message>
  <message>
   <source>Free alley between rows for work by hand</source>
   <translation>Freie Gasse zwischen Reihen für Handarbeit</translation>
  </message>
  <message>
   <source>Free way to every plant: 18 in is tight, 24 in comfortable on foot, 36 in takes a barrow or mower</source>
   <translation>Freier Weg zu jeder Pflanze: 45 cm sind eng, 60 cm zu Fuß bequem, 90 cm reichen für Schubkarre oder Mäher</translation>
  </message>
  <message>
   <source>French Guiana</source>
   <translation>Französisch-Guayana</translation>
  </message>
  <message>
   <source>French Polynesia</source>
   <translation>Französisch-Polynesien</translation>
  </message>
  <message>
   <source>From this far outside its range a crop suffers plainly, not just a little</source>
   <translation>So weit außerhalb ihres Bereichs leidet eine Art deutlich, nicht nur ein wenig</translation>
  </message>
  <message>
   <source>Frost nights: cover blossom</source>
   <translation>Frostnächte: die Blüte abdecken</translation>
  </message>
  <message>
   <source>Frost nights: cover new shoots</source>
   <translation>Frostnächte: neue Triebe abdecken</translation>
  </message>
  <message>
   <source>Frost nights: cover the bed</source>
   <translation>Frostnächte: das Beet abdecken</translation>
  </message>
  <message>
   <source>Frost nights: cover the flowers</source>
   <translation>Frostnächte: die Blüten abdecken</translation>
  </message>
  <message>
   <source>Fruit on a shared fence stands 12 to 18 inches off it</source>
   <translation>Obst an einem gemeinsamen Zaun steht 30 bis 45 cm davor</translation>
  </message>
  <message>
   <source>Gabon</source>
   <translation>Gabun</translation>
  </message>
  <message>
   <source>Gambia</source>
   <translation>Gambia</translation>
  </message>
  <message>
   <source>Gap between bushes and a wall, for painting and against damp</source>
   <translation>Raum zwischen Büschen und einer Wand, zum Streichen und gegen Feuchte</translation>
  </message>
  <message>
   <source>Gather nuts as they drop</source>
   <translation>Nüsse auflesen, wenn sie fallen</translation>
  </message>
  <message>
   <source>Georgia</source>
   <translation>Georgien</translation>
  </message>
  <message>
   <source>Germany</source>
   <translation>Deutschland</translation>
  </message>
  <message>
   <source>Ghana</source>
   <translation>Ghana</translation>
  </message>
  <message>
   <source>Gibraltar</source>
   <translation>Gibraltar</translation>
  </message>
  <message>
   <source>Give no more than the new test asks for</source>
   <translation>Nicht mehr geben, als die neue Probe verlangt</translation>
  </message>
  <message>
   <source>Give the bed up and plant a new one elsewhere</source>
   <translation>Das Beet aufgeben und anderswo ein neues pflanzen</translation>
  </message>
  <message>
   <source>Gloves against thorns.</source>
   <translation>Handschuhe gegen Dornen.</translation>
  </message>
  <message>
   <source>Greece</source>
   <translation>Griechenland</translation>
  </message>
  <message>
   <source>Greenland</source>
   <translation>Grönland</translation>
  </message>
  <message>
   <source>Grenada</source>
   <translation>Grenada</translation>
  </message>
  <message>
   <source>Ground to treat for one plant as a share of the area under its crown at full size</source>
   <translation>Zu behandelnde Fläche je Pflanze als Anteil der Fläche unter der ausgewachsenen Krone</translation>
  </message>
  <message>
   <source>Ground with less direct sun than this is shade whatever grows there</source>
   <translation>Fläche mit weniger direkter Sonne ist Schatten, gleich was dort wächst</translation>
  </message>
  <message>
   <source>Guadeloupe</source>
   <translation>Guadeloupe</translation>
  </message>
  <message>
   <source>Guam</source>
   <translation>Guam</translation>
  </message>
  <message>
   <source>Guatemala</source>
   <translation>Guatemala</translation>
  </message>
  <message>
   <source>Guernsey</source>
   <translation>Guernsey</translation>
  </message>
  <message>
   <source>Guinea</source>
   <translation>Guinea</translation>
  </message>
  <message>
   <source>Guinea-Bissau</source>
   <translation>Guinea-Bissau</translation>
  </message>
  <message>
   <source>Guyana</source>
   <translation>Guyana</translation>
  </message>
  <message>
   <source>Haiti</source>
   <translation>Haiti</translation>
  </message>
  <message>
   <source>Hard and sharp when raw.</source>
   <translation>Roh hart und herb.</translation>
  </message>
  <message>
   <source>Hard tap water raises the pH.</source>
   <translation>Hartes Leitungswasser hebt den pH.</translation>
  </message>
  <message>
   <source>Headroom under branches over a drive used by trucks</source>
   <translation>Durchfahrtshöhe unter Ästen über einer Zufahrt für Lastwagen</translation>
  </message>
  <message>
   <source>Headroom under branches over a path</source>
   <translation>Durchgangshöhe unter Ästen über einem Weg</translation>
  </message>
  <message>
   <source>Heavy pots: lift with help or a hand truck.</source>
   <translation>Schwere Kübel: zu zweit oder mit der Sackkarre heben.</translation>
  </message>
  <message>
   <source>Height from which a standing tree counts as big</source>
   <translation>Höhe, ab der ein stehender Baum als groß gilt</translation>
  </message>
  <message>
   <source>Height of a mound or raised bed where the ground drains poorly (12 to 18 inches)</source>
   <translation>Höhe von Hügel oder Hochbeet bei schlechtem Wasserabzug (30 bis 45 cm)</translation>
  </message>
  <message>
   <source>Honduras</source>
   <translation>Honduras</translation>
  </message>
  <message>
   <source>Hong Kong</source>
   <translation>Hongkong</translation>
  </message>
  <message>
   <source>How far one reaches into a bed from one side (2 to 2.5 ft)</source>
   <translation>Wie weit man von einer Seite in ein Beet reicht (60 bis 75 cm)</translation>
  </message>
  <message>
   <source>How far uphill of a solid barrier cold air stands</source>
   <translation>So weit oberhalb einer dichten Sperre steht Kaltluft</translation>
  </message>
  <message>
   <source>Hungary</source>
   <translation>Ungarn</translation>
  </message>
  <message>
   <source>Iceland</source>
   <translation>Island</translation>
  </message>
  <message>
   <source>In Australia</source>
   <translation>In Australien</translation>
  </message>
  <message>
   <source>In Canada</source>
   <translation>In Kanada</translation>
  </message>
  <message>
   <source>In Great Britain</source>
   <translation>In Großbritannien</translation>
  </message>
  <message>
   <source>In the Netherlands</source>
   <translation>In den Niederlanden</translation>
  </message>
  <message>
   <source>In the USA</source>
   <translation>In den USA</translation>
  </message>
  <message>
   <source>India</source>
   <translation>Indien</translation>
  </message>
  <message>
   <source>Indonesia</source>
   <translation>Indonesien</translation>
  </message>
  <message>
   <source>Insect cover after petal fall</source>
   <translation>Belag gegen Insekten nach dem Blütenende</translation>
  </message>
  <message>
   <source>Interior latex only; wraps come off in spring.</source>
   <translation>Nur Innenlatexfarbe; Wickel kommen im Frühjahr ab.</translation>
  </message>
  <message>
   <source>Iran</source>
   <translation>Iran</translation>
  </message>
  <message>
   <source>Iraq</source>
   <translation>Irak</translation>
  </message>
  <message>
   <source>Ireland</source>
   <translation>Irland</translation>
  </message>
  <message>
   <source>Isle of Man</source>
   <translation>Isle of Man</translation>
  </message>
  <message>
   <source>Israel</source>
   <translation>Israel</translation>
  </message>
  <message>
   <source>Italy</source>
   <translation>Italien</translation>
  </message>
  <message>
   <source>Jamaica</source>
   <translation>Jamaika</translation>
  </message>
  <message>
   <source>Japan</source>
   <translation>Japan</translation>
  </message>
  <message>
   <source>Japanese plum</source>
   <translation>Japanische Pflaume</translation>
  </message>
  <message>
   <source>Jersey</source>
   <translation>Jersey</translation>
  </message>
  <message>
   <source>Jordan</source>
   <translation>Jordanien</translation>
  </message>
  <message>
   <source>Jul-Oct</source>
   <translation>Juli–Okt.</translation>
  </message>
  <message>
   <source>Jul-frost</source>
   <translation>Juli–Frost</translation>
  </message>
  <message>
   <source>Jun-frost</source>
   <translation>Juni–Frost</translation>
  </message>
  <message>
   <source>June and fall</source>
   <translation>Juni und Herbst</translation>
  </message>
  <message>
   <source>June-bearing</source>
   <translation>einmaltragend</translation>
  </message>
  <message>
   <source>Kazakhstan</source>
   <translation>Kasachstan</translation>
  </message>
  <message>
   <source>Keep cold</source>
   <translation>Kalt lagern</translation>
  </message>
  <message>
   <source>Keep cold, not cool</source>
   <translation>Kalt lagern, nicht kühl</translation>
  </message>
  <message>
   <source>Keep fruit apart from vegetables; take the door off an old refrigerator used as a store, children can be shut in.</source>
   <translation>Obst von Gemüse getrennt lagern; an einem alten Kühlschrank als Lager die Tür abnehmen, Kinder können darin eingeschlossen werden.</translation>
  </message>
  <message>
   <source>Keep grass and weeds off [2-3 ft] round the trunk</source>
   <translation>Gras und Unkraut [2-3 ft] um den Stamm fernhalten</translation>
  </message>
  <message>
   <source>Keep lawn weed killers away</source>
   <translation>Rasen-Unkrautmittel fernhalten</translation>
  </message>
  <message>
   <source>Keep people, ladders and pole tools this far from any line</source>
   <translation>Menschen, Leitern und Stangenwerkzeug so weit von jeder Freileitung fernhalten</translation>
  </message>
  <message>
   <source>Keep the row [12-18 in] wide, hoe out suckers</source>
   <translation>Die Reihe [12-18 in] breit halten, Ausläufer weghacken</translation>
  </message>
  <message>
   <source>Keep yourself, ladder and tools well clear of power lines; chainsaw work off the ground is for a certified arborist.</source>
   <translation>Sich selbst, Leiter und Werkzeug weit von Freileitungen fernhalten; Motorsägenarbeit über dem Boden ist Sache geprüfter Baumpfleger.</translation>
  </message>
  <message>
   <source>Kenya</source>
   <translation>Kenia</translation>
  </message>
  <message>
   <source>Kiribati</source>
   <translation>Kiribati</translation>
  </message>
  <message>
   <source>Kosovo</source>
   <translation>Kosovo</translation>
  </message>
  <message>
   <source>Kuwait</source>
   <translation>Kuwait</translation>
  </message>
  <message>
   <source>Kyrgyzstan</source>
   <translation>Kirgisistan</translation>
  </message>
  <message>
   <source>Laos</source>
   <translation>Laos</translation>
  </message>
  <message>
   <source>Large trees stay this far from a pool wall</source>
   <translation>Große Bäume bleiben so weit von einer Beckenwand</translation>
  </message>
  <message>
   <source>Latvia</source>
   <translation>Lettland</translation>
  </message>
  <message>
   <source>Lay the canes down and mulch them</source>
   <translation>Die Ruten niederlegen und mulchen</translation>
  </message>
  <message>
   <source>Leaf curl cover</source>
   <translation>Belag gegen Kräuselkrankheit</translation>
  </message>
  <message>
   <source>Leaf spot and brown rot cover</source>
   <translation>Belag gegen Sprühflecken und Fruchtfäule</translation>
  </message>
  <message>
   <source>Leaf spot cover</source>
   <translation>Belag gegen Sprühflecken</translation>
  </message>
  <message>
   <source>Least ground to treat for one plant</source>
   <translation>Kleinste zu behandelnde Fläche je Pflanze</translation>
  </message>
  <message>
   <source>Least water a week, by rain or hose, that shallow-rooted berries want while they grow and fruit</source>
   <translation>Geringste Wassermenge in der Woche, aus Regen oder Schlauch, die flachwurzelnde Beeren in Wachstum und Fruchtzeit brauchen</translation>
  </message>
  <message>
   <source>Leave the saw alone</source>
   <translation>Die Säge ruhen lassen</translation>
  </message>
  <message>
   <source>Lebanon</source>
   <translation>Libanon</translation>
  </message>
  <message>
   <source>Legs of the clear view triangle at a street corner until your code is entered</source>
   <translation>Schenkel des Sichtdreiecks an einer Straßenecke, bis Ihre Vorschrift eingetragen ist</translation>
  </message>
  <message>
   <source>Legs of the clear view triangle where a drive meets a street</source>
   <translation>Schenkel des Sichtdreiecks, wo eine Zufahrt auf die Straße trifft</translation>
  </message>
  <message>
   <source>Lesotho</source>
   <translation>Lesotho</translation>
  </message>
  <message>
   <source>Level ground, a three-legged orchard ladder, three points of contact, never on the top steps.</source>
   <translation>Ebener Boden, eine Dreibeinleiter, drei Kontaktpunkte, nie auf die obersten Stufen.</translation>
  </message>
  <message>
   <source>Liberia</source>
   <translation>Liberia</translation>
  </message>
  <message>
   <source>Libya</source>
   <translation>Libyen</translation>
  </message>
  <message>
   <source>Liechtenstein</source>
   <translation>Liechtenstein</translation>
  </message>
  <message>
   <source>Limestone goes in about half a year before planting</source>
   <translation>Kalk kommt etwa ein halbes Jahr vor dem Pflanzen</translation>
  </message>
  <message>
   <source>Lithuania</source>
   <translation>Litauen</translation>
  </message>
  <message>
   <source>Local by-laws and covenants only; in most places the neighbour may trim at the line</source>
   <translation>Nur örtliche Satzungen und Auflagen; meist dürfen Nachbarn an der Grenze zurückschneiden</translation>
  </message>
  <message>
   <source>Loosen it as the trunk grows.</source>
   <translation>Lockern, wenn der Stamm dicker wird.</translation>
  </message>
  <message>
   <source>Lower trees, branching below 3 m</source>
   <translation>Niedrigere Bäume, die sich unter 3 m verzweigen</translation>
  </message>
  <message>
   <source>Luxembourg</source>
   <translation>Luxemburg</translation>
  </message>
  <message>
   <source>Macao</source>
   <translation>Macau</translation>
  </message>
  <message>
   <source>Madagascar</source>
   <translation>Madagaskar</translation>
  </message>
  <message>
   <source>Maine bars European black currant everywhere, and all currants and gooseberries in listed southern and central counties</source>
   <translation>Maine verbietet die europäische Schwarze Johannisbeere überall und alle Johannis- und Stachelbeeren in genannten südlichen und mittleren Countys</translation>
  </message>
  <message>
   <source>Maine bars all currants and gooseberries in listed southern and central counties</source>
   <translation>Maine verbietet alle Johannis- und Stachelbeeren in genannten südlichen und mittleren Countys</translation>
  </message>
  <message>
   <source>Make a free search for buried services before every dig and follow HSE guidance HSG47 (number from memory)</source>
   <translation>Vor jedem Graben kostenlos nach erdverlegten Leitungen suchen und die HSE-Anleitung HSG47 befolgen (Nummer aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>Malawi</source>
   <translation>Malawi</translation>
  </message>
  <message>
   <source>Malaysia</source>
   <translation>Malaysia</translation>
  </message>
  <message>
   <source>Maldives</source>
   <translation>Malediven</translation>
  </message>
  <message>
   <source>Mali</source>
   <translation>Mali</translation>
  </message>
  <message>
   <source>Malta</source>
   <translation>Malta</translation>
  </message>
  <message>
   <source>Marshall Islands</source>
   <translation>Marshallinseln</translation>
  </message>
  <message>
   <source>Martinique</source>
   <translation>Martinique</translation>
  </message>
  <message>
   <source>Massachusetts asks for a permit, and bars them in listed municipalities</source>
   <translation>Massachusetts verlangt eine Genehmigung und verbietet sie in genannten Gemeinden</translation>
  </message>
  <message>
   <source>Massachusetts bars black currant and jostaberry</source>
   <translation>Massachusetts verbietet Schwarze Johannisbeere und Jostabeere</translation>
  </message>
  <message>
   <source>Mature height from which a tree counts as large beside a buried line</source>
   <translation>Endhöhe, ab der ein Baum neben einer erdverlegten Leitung als groß gilt</translation>
  </message>
  <message>
   <source>Mature height from which a tree counts as large beside a pool</source>
   <translation>Endhöhe, ab der ein Baum am Becken als groß gilt</translation>
  </message>
  <message>
   <source>Mature height from which a tree counts as medium beside a pool</source>
   <translation>Endhöhe, ab der ein Baum am Becken als mittel gilt</translation>
  </message>
  <message>
   <source>Mature height that divides low from tall plants for your local figures of the lot line</source>
   <translation>Endhöhe, die für Ihren örtlichen Grenzabstand niedrige von hohen Pflanzen trennt</translation>
  </message>
  <message>
   <source>Mature height up to which the middle distance from a building holds</source>
   <translation>Endhöhe, bis zu der der mittlere Abstand zum Gebäude gilt</translation>
  </message>
  <message>
   <source>Mature height up to which the nearest distance from a building holds</source>
   <translation>Endhöhe, bis zu der der kleinste Abstand zum Gebäude gilt</translation>
  </message>
  <message>
   <source>Mauritania</source>
   <translation>Mauretanien</translation>
  </message>
  <message>
   <source>Mauritius</source>
   <translation>Mauritius</translation>
  </message>
  <message>
   <source>May-frost</source>
   <translation>Mai–Frost</translation>
  </message>
  <message>
   <source>Mayotte</source>
   <translation>Mayotte</translation>
  </message>
  <message>
   <source>Medium trees stay this far from a pool wall</source>
   <translation>Mittlere Bäume bleiben so weit von einer Beckenwand</translation>
  </message>
  <message>
   <source>Mexico</source>
   <translation>Mexiko</translation>
  </message>
  <message>
   <source>Michigan has a permit or a ban on some or all of them</source>
   <translation>Michigan verlangt für manche oder alle eine Genehmigung oder verbietet sie</translation>
  </message>
  <message>
   <source>Micronesia</source>
   <translation>Mikronesien</translation>
  </message>
  <message>
   <source>Moldova</source>
   <translation>Republik Moldau</translation>
  </message>
  <message>
   <source>Monaco</source>
   <translation>Monaco</translation>
  </message>
  <message>
   <source>Mongolia</source>
   <translation>Mongolei</translation>
  </message>
  <message>
   <source>Montenegro</source>
   <translation>Montenegro</translation>
  </message>
  <message>
   <source>Months after a sulfur dressing until the soil is tested again</source>
   <translation>Monate nach einer Schwefelgabe, bis der Boden neu geprüft wird</translation>
  </message>
  <message>
   <source>Months between two dressings of limestone</source>
   <translation>Monate zwischen zwei Kalkgaben</translation>
  </message>
  <message>
   <source>Morocco</source>
   <translation>Marokko</translation>
  </message>
  <message>
   <source>Most sulfur on the surface around standing plants in a year, not mixed in</source>
   <translation>Höchste Schwefelmenge im Jahr auf der Oberfläche um stehende Pflanzen, nicht eingearbeitet</translation>
  </message>
  <message>
   <source>Most water a week that shallow-rooted berries usually want</source>
   <translation>Höchste Wassermenge in der Woche, die flachwurzelnde Beeren üblicherweise brauchen</translation>
  </message>
  <message>
   <source>Move in or cover containers below about 20 F</source>
   <translation>Kübel unter etwa −7 °C hereinholen oder abdecken</translation>
  </message>
  <message>
   <source>Mow flowering weeds first.</source>
   <translation>Zuerst blühendes Unkraut mähen.</translation>
  </message>
  <message>
   <source>Mow or cut to the ground, half the bed each second year</source>
   <translation>Mähen oder bodeneben schneiden, jedes zweite Jahr das halbe Beet</translation>
  </message>
  <message>
   <source>Mozambique</source>
   <translation>Mosambik</translation>
  </message>
  <message>
   <source>Mulch [2-4 in] deep</source>
   <translation>[2-4 in] hoch mulchen</translation>
  </message>
  <message>
   <source>Mulch [3-4 in] of sawdust, bark or pine needles</source>
   <translation>Mit [3-4 in] Sägemehl, Rinde oder Kiefernnadeln mulchen</translation>
  </message>
  <message>
   <source>Mulch a ring [2-4 in] deep</source>
   <translation>Einen Ring [2-4 in] hoch mulchen</translation>
  </message>
  <message>
   <source>Mulch with wood chip or straw</source>
   <translation>Mit Holzhäcksel oder Stroh mulchen</translation>
  </message>
  <message>
   <source>Myanmar</source>
   <translation>Myanmar</translation>
  </message>
  <message>
   <source>Namibia</source>
   <translation>Namibia</translation>
  </message>
  <message>
   <source>Nanking cherry</source>
   <translation>Filzkirsche</translation>
  </message>
  <message>
   <source>Needs warm moist soil and months: soil life turns it to acid</source>
   <translation>Braucht warmen, feuchten Boden und Monate: Bodenleben macht daraus Säure</translation>
  </message>
  <message>
   <source>Nepal</source>
   <translation>Nepal</translation>
  </message>
  <message>
   <source>Net against birds</source>
   <translation>Gegen Vögel einnetzen</translation>
  </message>
  <message>
   <source>Net at colour change</source>
   <translation>Beim Farbumschlag einnetzen</translation>
  </message>
  <message>
   <source>Net before the fruit colours</source>
   <translation>Einnetzen, bevor sich die Früchte färben</translation>
  </message>
  <message>
   <source>Net or bag the fruit</source>
   <translation>Die Früchte einnetzen oder eintüten</translation>
  </message>
  <message>
   <source>Netherlands</source>
   <translation>Niederlande</translation>
  </message>
  <message>
   <source>Never a heated room: the buds need the cold. Do not run engines where people are.</source>
   <translation>Nie ein beheizter Raum: Die Knospen brauchen die Kälte. Keine Motoren laufen lassen, wo Menschen sind.</translation>
  </message>
  <message>
   <source>Never manure, wood ash or lime.</source>
   <translation>Nie Mist, Holzasche oder Kalk.</translation>
  </message>
  <message>
   <source>Never with or close to sulfur or captan.</source>
   <translation>Nie zusammen mit oder kurz vor oder nach Schwefel oder Captan.</translation>
  </message>
  <message>
   <source>New Caledonia</source>
   <translation>Neukaledonien</translation>
  </message>
  <message>
   <source>New Hampshire has a permit or a ban on some or all of them</source>
   <translation>New Hampshire verlangt für manche oder alle eine Genehmigung oder verbietet sie</translation>
  </message>
  <message>
   <source>New Jersey has a permit or a ban on some or all of them</source>
   <translation>New Jersey verlangt für manche oder alle eine Genehmigung oder verbietet sie</translation>
  </message>
  <message>
   <source>New York allows only rust-immune or resistant black currants, outside fruiting districts</source>
   <translation>New York erlaubt nur rostfeste oder widerstandsfähige Schwarze Johannisbeeren, außerhalb der Obstbaugebiete</translation>
  </message>
  <message>
   <source>New Zealand</source>
   <translation>Neuseeland</translation>
  </message>
  <message>
   <source>Nicaragua</source>
   <translation>Nicaragua</translation>
  </message>
  <message>
   <source>Niger</source>
   <translation>Niger</translation>
  </message>
  <message>
   <source>Nigeria</source>
   <translation>Nigeria</translation>
  </message>
  <message>
   <source>No general planting distance; evergreen hedges over 2 m can be complained of</source>
   <translation>Kein allgemeiner Pflanzabstand; über immergrüne Hecken über 2 m kann Beschwerde geführt werden</translation>
  </message>
  <message>
   <source>No mulch against the bark: rot and voles.</source>
   <translation>Kein Mulch an der Rinde: Fäulnis und Wühlmäuse.</translation>
  </message>
  <message>
   <source>No mushroom compost, wood ash or fresh walnut sawdust.</source>
   <translation>Kein Champignonkompost, keine Holzasche, kein frisches Walnuss-Sägemehl.</translation>
  </message>
  <message>
   <source>No open flame under covers, no fire near a house; keep heaters away from children and pets. Covers come off in the morning for the bees.</source>
   <translation>Keine offene Flamme unter Abdeckungen, kein Feuer nahe einem Haus; Heizgeräte von Kindern und Haustieren fernhalten. Abdeckungen kommen morgens für die Bienen ab.</translation>
  </message>
  <message>
   <source>No statutory distance; the neighbour may properly cut overhanging branches</source>
   <translation>Kein gesetzlicher Abstand; Nachbarn dürfen überhängende Äste abschneiden</translation>
  </message>
  <message>
   <source>No stem under the edge of a roof that sheds snow and water</source>
   <translation>Kein Stamm unter der Kante eines Dachs, das Schnee und Wasser abwirft</translation>
  </message>
  <message>
   <source>No tree nearer than this to a septic field, whatever its kind</source>
   <translation>Kein Baum steht näher an einer Sickerfläche, gleich welcher Art</translation>
  </message>
  <message>
   <source>Nobody near the mower, children least.</source>
   <translation>Niemand in der Nähe des Mähers, am wenigsten Kinder.</translation>
  </message>
  <message>
   <source>None after midsummer: late growth dies in winter.</source>
   <translation>Nach Mittsommer keiner: Später Wuchs stirbt im Winter.</translation>
  </message>
  <message>
   <source>None after midsummer; lawn fertilizer counts too.</source>
   <translation>Nach Mittsommer keiner; Rasendünger zählt mit.</translation>
  </message>
  <message>
   <source>North Carolina has a permit or a ban on some or all of them</source>
   <translation>North Carolina verlangt für manche oder alle eine Genehmigung oder verbietet sie</translation>
  </message>
  <message>
   <source>North Korea</source>
   <translation>Nordkorea</translation>
  </message>
  <message>
   <source>North Macedonia</source>
   <translation>Nordmazedonien</translation>
  </message>
  <message>
   <source>Northern Mariana Islands</source>
   <translation>Nördliche Marianen</translation>
  </message>
  <message>
   <source>Norway</source>
   <translation>Norwegen</translation>
  </message>
  <message>
   <source>Not into the planting hole; keep it off the trunk.</source>
   <translation>Nicht ins Pflanzloch; vom Stamm fernhalten.</translation>
  </message>
  <message>
   <source>Not when the soil is frozen.</source>
   <translation>Nicht, wenn die Erde gefroren ist.</translation>
  </message>
  <message>
   <source>Not where tomato, potato, pepper or brambles grew.</source>
   <translation>Nicht, wo Tomaten, Kartoffeln, Paprika oder Brombeeren und Himbeeren wuchsen.</translation>
  </message>
  <message>
   <source>Nothing in a view triangle stands higher than this, unless its crown is trimmed up</source>
   <translation>Im Sichtdreieck steht nichts höher, außer die Krone ist aufgeastet</translation>
  </message>
  <message>
   <source>Nothing that harms bees while any flower is open, on the crop or under it; then only late in the evening. Dates are those of an average year: look at the flowers, not at the calendar.</source>
   <translation>Nichts, was Bienen schadet, solange eine Blüte offen ist, an der Kultur oder darunter; danach nur spät am Abend. Die Termine sind die eines mittleren Jahres: auf die Blüten schauen, nicht auf den Kalender.</translation>
  </message>
  <message>
   <source>Oct</source>
   <translation>Okt.</translation>
  </message>
  <message>
   <source>Offset of larger trees from a buried line that has been located</source>
   <translation>Abstand größerer Bäume von einer georteten erdverlegten Leitung</translation>
  </message>
  <message>
   <source>Offset of small trees and bushes from a buried line that has been located</source>
   <translation>Abstand kleiner Bäume und Büsche von einer georteten erdverlegten Leitung</translation>
  </message>
  <message>
   <source>Ohio has a permit or a ban on some or all of them</source>
   <translation>Ohio verlangt für manche oder alle eine Genehmigung oder verbietet sie</translation>
  </message>
  <message>
   <source>Oman</source>
   <translation>Oman</translation>
  </message>
  <message>
   <source>On clay that shrinks, climbers and wall shrubs stay this far from the house</source>
   <translation>Auf schrumpfendem Ton bleiben Kletterpflanzen und Wandsträucher so weit vom Haus</translation>
  </message>
  <message>
   <source>On clay that shrinks, trees of high water demand stay this many mature heights from a foundation</source>
   <translation>Auf schrumpfendem Ton bleiben Bäume mit hohem Wasserbedarf so viele Endhöhen vom Fundament</translation>
  </message>
  <message>
   <source>On clay that shrinks, trees of low water demand stay this many mature heights from a foundation</source>
   <translation>Auf schrumpfendem Ton bleiben Bäume mit geringem Wasserbedarf so viele Endhöhen vom Fundament</translation>
  </message>
  <message>
   <source>On clay that shrinks, trees of moderate water demand stay this many mature heights from a foundation</source>
   <translation>Auf schrumpfendem Ton bleiben Bäume mit mittlerem Wasserbedarf so viele Endhöhen vom Fundament</translation>
  </message>
  <message>
   <source>Or prune in late winter</source>
   <translation>Oder im Spätwinter schneiden</translation>
  </message>
  <message>
   <source>Overhead lines: no tall trees, ladders or long tools near them; leave any work there to the line's owner.</source>
   <translation>Freileitungen: keine hohen Bäume, Leitern oder langen Werkzeuge in der Nähe; Arbeiten dort dem Netzbetreiber überlassen.</translation>
  </message>
  <message>
   <source>Paint the trunk white or wrap it</source>
   <translation>Den Stamm weißeln oder umwickeln</translation>
  </message>
  <message>
   <source>Pakistan</source>
   <translation>Pakistan</translation>
  </message>
  <message>
   <source>Palau</source>
   <translation>Palau</translation>
  </message>
  <message>
   <source>Palestinian Territories</source>
   <translation>Palästinensische Autonomiegebiete</translation>
  </message>
  <message>
   <source>Panama</source>
   <translation>Panama</translation>
  </message>
  <message>
   <source>Papua New Guinea</source>
   <translation>Papua-Neuguinea</translation>
  </message>
  <message>
   <source>Paraguay</source>
   <translation>Paraguay</translation>
  </message>
  <message>
   <source>Pear scab cover</source>
   <translation>Belag gegen Birnenschorf</translation>
  </message>
  <message>
   <source>Peru</source>
   <translation>Peru</translation>
  </message>
  <message>
   <source>Philippines</source>
   <translation>Philippinen</translation>
  </message>
  <message>
   <source>Pick</source>
   <translation>Pflücken</translation>
  </message>
  <message>
   <source>Pick a little early, ripen indoors</source>
   <translation>Etwas früh pflücken, im Haus nachreifen lassen</translation>
  </message>
  <message>
   <source>Pick after the first frosts and let them soften indoors</source>
   <translation>Nach den ersten Frösten pflücken und im Haus weich werden lassen</translation>
  </message>
  <message>
   <source>Pick before they are ripe</source>
   <translation>Vor der Reife pflücken</translation>
  </message>
  <message>
   <source>Pick by taste</source>
   <translation>Nach Geschmack pflücken</translation>
  </message>
  <message>
   <source>Pick every 2-3 days</source>
   <translation>Alle 2–3 Tage pflücken</translation>
  </message>
  <message>
   <source>Pick every day or two</source>
   <translation>Alle ein bis zwei Tage pflücken</translation>
  </message>
  <message>
   <source>Pick every few days</source>
   <translation>Alle paar Tage pflücken</translation>
  </message>
  <message>
   <source>Pick firm when seeds are black, ripen indoors</source>
   <translation>Fest pflücken, wenn die Kerne schwarz sind, im Haus nachreifen lassen</translation>
  </message>
  <message>
   <source>Pick or shake onto a sheet</source>
   <translation>Pflücken oder auf ein Tuch schütteln</translation>
  </message>
  <message>
   <source>Pick purple-red</source>
   <translation>Purpurrot pflücken</translation>
  </message>
  <message>
   <source>Pick ripe from the tree</source>
   <translation>Reif vom Baum pflücken</translation>
  </message>
  <message>
   <source>Pick soft, drooping fruit</source>
   <translation>Weiche, hängende Früchte pflücken</translation>
  </message>
  <message>
   <source>Pick the autumn crop every 2-3 days</source>
   <translation>Die Herbsternte alle 2–3 Tage pflücken</translation>
  </message>
  <message>
   <source>Pick the cones</source>
   <translation>Die Dolden pflücken</translation>
  </message>
  <message>
   <source>Pick up fallen fruit</source>
   <translation>Fallobst aufsammeln</translation>
  </message>
  <message>
   <source>Pick when it gives and smells</source>
   <translation>Pflücken, wenn sie nachgibt und duftet</translation>
  </message>
  <message>
   <source>Pick when purple to the middle</source>
   <translation>Pflücken, wenn sie bis zur Mitte purpurn sind</translation>
  </message>
  <message>
   <source>Pick with stems</source>
   <translation>Mit Stiel pflücken</translation>
  </message>
  <message>
   <source>Pick, from early summer to frost</source>
   <translation>Pflücken, vom Frühsommer bis zum Frost</translation>
  </message>
  <message>
   <source>Pinch flowers for six weeks, take all runners</source>
   <translation>Sechs Wochen Blüten auskneifen, alle Ausläufer entfernen</translation>
  </message>
  <message>
   <source>Pinch off the flowers of the first year</source>
   <translation>Die Blüten des ersten Jahres auskneifen</translation>
  </message>
  <message>
   <source>Pinch shoots at 5-6 leaves</source>
   <translation>Triebe bei 5–6 Blättern entspitzen</translation>
  </message>
  <message>
   <source>Place runners, keep rows [12-18 in] wide</source>
   <translation>Ausläufer einordnen, Reihen [12-18 in] breit halten</translation>
  </message>
  <message>
   <source>Plant bare-root plants</source>
   <translation>Wurzelnackte Pflanzen setzen</translation>
  </message>
  <message>
   <source>Plant crowns with the bud level with the soil</source>
   <translation>Pflanzen so setzen, dass die Herzknospe auf Bodenhöhe liegt</translation>
  </message>
  <message>
   <source>Plant or sow</source>
   <translation>Pflanzen oder säen</translation>
  </message>
  <message>
   <source>Plants over 2 m tall: stem 2 m from the line</source>
   <translation>Pflanzen über 2 m Höhe: Stamm 2 m von der Grenze</translation>
  </message>
  <message>
   <source>Plants that stay lower than this count as bushes near buildings and services, not as trees</source>
   <translation>Was niedriger bleibt, zählt bei Gebäuden und Leitungen als Busch, nicht als Baum</translation>
  </message>
  <message>
   <source>Plants up to 2 m tall: half a metre, unless local usage says otherwise</source>
   <translation>Pflanzen bis 2 m Höhe: ein halber Meter, sofern örtlicher Brauch nichts anderes sagt</translation>
  </message>
  <message>
   <source>Poland</source>
   <translation>Polen</translation>
  </message>
  <message>
   <source>Pollinate by hand</source>
   <translation>Von Hand bestäuben</translation>
  </message>
  <message>
   <source>Portugal</source>
   <translation>Portugal</translation>
  </message>
  <message>
   <source>Prop loaded branches</source>
   <translation>Beladene Äste stützen</translation>
  </message>
  <message>
   <source>Prune after harvest in dry weather</source>
   <translation>Nach der Ernte bei trockenem Wetter schneiden</translation>
  </message>
  <message>
   <source>Prune hard to an open crown</source>
   <translation>Stark auf eine offene Krone schneiden</translation>
  </message>
  <message>
   <source>Prune in early summer, in dry weather</source>
   <translation>Im Frühsommer bei trockenem Wetter schneiden</translation>
  </message>
  <message>
   <source>Prune in full dormancy only</source>
   <translation>Nur in voller Ruhe schneiden</translation>
  </message>
  <message>
   <source>Prune in late winter</source>
   <translation>Im Spätwinter schneiden</translation>
  </message>
  <message>
   <source>Prune lightly</source>
   <translation>Leicht schneiden</translation>
  </message>
  <message>
   <source>Prune lightly in dormancy</source>
   <translation>In der Ruhezeit leicht schneiden</translation>
  </message>
  <message>
   <source>Prune lightly to an open bush</source>
   <translation>Leicht zu einem offenen Busch schneiden</translation>
  </message>
  <message>
   <source>Prune the open crown</source>
   <translation>Die offene Krone schneiden</translation>
  </message>
  <message>
   <source>Prune to a central leader</source>
   <translation>Auf eine Mittelachse schneiden</translation>
  </message>
  <message>
   <source>Prune to an open crown</source>
   <translation>Auf eine offene Krone schneiden</translation>
  </message>
  <message>
   <source>Prune to canes or spurs</source>
   <translation>Auf Ruten oder Zapfen schneiden</translation>
  </message>
  <message>
   <source>Published distances in a row count as met within what a tape can tell</source>
   <translation>Veröffentlichte Abstände in der Reihe gelten innerhalb der Messgenauigkeit als eingehalten</translation>
  </message>
  <message>
   <source>Published distances in a row differ by about a quarter: this share of the closest one is still usual</source>
   <translation>Veröffentlichte Abstände in der Reihe unterscheiden sich um etwa ein Viertel: Dieser Anteil des engsten ist noch üblich</translation>
  </message>
  <message>
   <source>Published doses imply up to 8; more than 7 lb per 100 sq ft in dressings one to two months apart</source>
   <translation>Veröffentlichte Mengen deuten auf bis zu 8; mehr als 3,4 kg je 10 m² in Gaben mit ein bis zwei Monaten Abstand</translation>
  </message>
  <message>
   <source>Puerto Rico</source>
   <translation>Puerto Rico</translation>
  </message>
  <message>
   <source>Pull leaves round the clusters</source>
   <translation>Blätter um die Trauben auszupfen</translation>
  </message>
  <message>
   <source>Pull stalks, a third of them at most</source>
   <translation>Stangen ziehen, höchstens ein Drittel</translation>
  </message>
  <message>
   <source>Pull suckers and water shoots</source>
   <translation>Wurzelausläufer und Wasserschosse ausreißen</translation>
  </message>
  <message>
   <source>Put guards round the trunks</source>
   <translation>Stammschutz anlegen</translation>
  </message>
  <message>
   <source>Qatar</source>
   <translation>Katar</translation>
  </message>
  <message>
   <source>Rain is missing this far out from a wall under eaves</source>
   <translation>So weit vor einer Wand unter dem Dachüberstand fehlt der Regen</translation>
  </message>
  <message>
   <source>Rake out mummied berries and mulch anew</source>
   <translation>Mumifizierte Beeren ausrechen und neu mulchen</translation>
  </message>
  <message>
   <source>Rake the winter straw off, keep it at hand</source>
   <translation>Das Winterstroh abrechen, in Reichweite behalten</translation>
  </message>
  <message>
   <source>Rake up or shred fallen leaves</source>
   <translation>Gefallenes Laub zusammenrechen oder häckseln</translation>
  </message>
  <message>
   <source>Re-pot or root-prune every two to three years</source>
   <translation>Alle zwei bis drei Jahre umtopfen oder Wurzeln schneiden</translation>
  </message>
  <message>
   <source>Re-pot or trim the roots</source>
   <translation>Umtopfen oder die Wurzeln stutzen</translation>
  </message>
  <message>
   <source>Read the whole label first: it is the law. Use only a product labelled for this crop and for home use, and wear what it names. Keep children and pets out until the re-entry time is over. Count the days before harvest that it names. No spraying in wind or near ponds, wells, hives and neighbours. Your local extension service knows what is legal.</source>
   <translation>Zuerst die ganze Gebrauchsanleitung lesen: Sie ist verbindlich. Nur ein Mittel verwenden, das für diese Kultur und den Hausgarten zugelassen ist, und tragen, was es nennt. Kinder und Haustiere fernhalten, bis die Wartezeit zum Betreten vorbei ist. Die genannten Tage vor der Ernte zählen. Nicht bei Wind und nicht nahe Teichen, Brunnen, Bienenstöcken und Nachbarn spritzen. Die örtliche Fachberatung weiß, was erlaubt ist.</translation>
  </message>
  <message>
   <source>Renew the bed: mow above the crowns, narrow the rows to [8-12 in], feed</source>
   <translation>Das Beet erneuern: über den Herzen mähen, Reihen auf [8-12 in] verschmälern, düngen</translation>
  </message>
  <message>
   <source>Renew the bush: oldest canes out</source>
   <translation>Den Busch verjüngen: älteste Triebe heraus</translation>
  </message>
  <message>
   <source>Replace fruited shoots of the fan</source>
   <translation>Abgetragene Triebe des Fächers ersetzen</translation>
  </message>
  <message>
   <source>Romania</source>
   <translation>Rumänien</translation>
  </message>
  <message>
   <source>Room for a service rig at a well</source>
   <translation>Platz für ein Wartungsfahrzeug am Brunnen</translation>
  </message>
  <message>
   <source>Roots in a container are about two zones less hardy than in the ground</source>
   <translation>Wurzeln im Kübel sind um etwa zwei Zonen weniger winterhart als im Boden</translation>
  </message>
  <message>
   <source>Roots of a big tree run two to three crown radii out</source>
   <translation>Die Wurzeln eines großen Baums reichen zwei bis drei Kronenradien weit</translation>
  </message>
  <message>
   <source>Roots of a young walnut span twice its height, so reach once its height to each side</source>
   <translation>Die Wurzeln einer jungen Walnuss spannen das Doppelte ihrer Höhe, reichen also auf jeder Seite einmal die Höhe</translation>
  </message>
  <message>
   <source>Rub off the flowers</source>
   <translation>Die Blüten abstreifen</translation>
  </message>
  <message>
   <source>Russia</source>
   <translation>Russland</translation>
  </message>
  <message>
   <source>Rwanda</source>
   <translation>Ruanda</translation>
  </message>
  <message>
   <source>Réunion</source>
   <translation>Réunion</translation>
  </message>
  <message>
   <source>Samoa</source>
   <translation>Samoa</translation>
  </message>
  <message>
   <source>San Marino</source>
   <translation>San Marino</translation>
  </message>
  <message>
   <source>Sap from late cuts does no harm.</source>
   <translation>Saft aus späten Schnitten schadet nicht.</translation>
  </message>
  <message>
   <source>Saudi Arabia</source>
   <translation>Saudi-Arabien</translation>
  </message>
  <message>
   <source>Scab and rust cover</source>
   <translation>Belag gegen Schorf und Rost</translation>
  </message>
  <message>
   <source>Second half of the nitrogen</source>
   <translation>Zweite Hälfte des Stickstoffs</translation>
  </message>
  <message>
   <source>Senegal</source>
   <translation>Senegal</translation>
  </message>
  <message>
   <source>Sep</source>
   <translation>Sept.</translation>
  </message>
  <message>
   <source>Sep-Oct</source>
   <translation>Sept.–Okt.</translation>
  </message>
  <message>
   <source>Serbia</source>
   <translation>Serbien</translation>
  </message>
  <message>
   <source>Services are shown as drawn, not as found in the ground: uncover them by hand and keep machines away.</source>
   <translation>Leitungen sind wie gezeichnet dargestellt, nicht wie im Boden gefunden: von Hand freilegen und Maschinen fernhalten.</translation>
  </message>
  <message>
   <source>Seychelles</source>
   <translation>Seychellen</translation>
  </message>
  <message>
   <source>Shade young plants</source>
   <translation>Junge Pflanzen beschatten</translation>
  </message>
  <message>
   <source>Share of a bed that may lie under a crown before its crop is shaded out</source>
   <translation>Anteil eines Beets, der unter einer Krone liegen darf, bevor die Kultur ausgeschattet wird</translation>
  </message>
  <message>
   <source>Share of a large sulfur dose that goes in first</source>
   <translation>Anteil einer großen Schwefelmenge, der zuerst hineinkommt</translation>
  </message>
  <message>
   <source>Share of the hours at which a crop does best below which more sun would be better</source>
   <translation>Anteil der Stunden, bei denen eine Art am besten gedeiht; darunter wäre mehr Sonne besser</translation>
  </message>
  <message>
   <source>Share of the hours of direct sun that a crop needs below which it stands too dark</source>
   <translation>Anteil der nötigen Sonnenstunden, unter dem eine Art zu dunkel steht</translation>
  </message>
  <message>
   <source>Sharp tools, gloves and eye protection.</source>
   <translation>Scharfes Werkzeug, Handschuhe und Augenschutz.</translation>
  </message>
  <message>
   <source>Shoes and gloves: wasps sit in fallen fruit.</source>
   <translation>Schuhe und Handschuhe: Wespen sitzen im Fallobst.</translation>
  </message>
  <message>
   <source>Shorten side branches to [12-18 in]</source>
   <translation>Seitentriebe auf [12-18 in] einkürzen</translation>
  </message>
  <message>
   <source>Shorten side branches to [8-10 in]</source>
   <translation>Seitentriebe auf [8-10 in] einkürzen</translation>
  </message>
  <message>
   <source>Shorten side shoots to 1-3 buds</source>
   <translation>Seitentriebe auf 1–3 Knospen einkürzen</translation>
  </message>
  <message>
   <source>Sierra Leone</source>
   <translation>Sierra Leone</translation>
  </message>
  <message>
   <source>Singapore</source>
   <translation>Singapur</translation>
  </message>
  <message>
   <source>Sint Maarten</source>
   <translation>Sint Maarten</translation>
  </message>
  <message>
   <source>Sizes at maturity are estimates. Local advice, labels and codes come before this plan.</source>
   <translation>Endgrößen sind Schätzungen. Örtlicher Rat, Gebrauchsanleitungen und Vorschriften gehen diesem Plan vor.</translation>
  </message>
  <message>
   <source>Slope from which cold air drains and dams behind solid fences across it</source>
   <translation>Hangneigung, ab der Kaltluft abfließt und sich hinter dichten Zäunen quer dazu staut</translation>
  </message>
  <message>
   <source>Slovakia</source>
   <translation>Slowakei</translation>
  </message>
  <message>
   <source>Slovenia</source>
   <translation>Slowenien</translation>
  </message>
  <message>
   <source>Smallest container for a fruit tree about 5 ft tall</source>
   <translation>Kleinster Kübel für einen Obstbaum von etwa 1,5 m Höhe</translation>
  </message>
  <message>
   <source>Smallest container for goji and other small bushes</source>
   <translation>Kleinster Kübel für Goji und andere kleine Büsche</translation>
  </message>
  <message>
   <source>Smallest start for a blueberry in a container</source>
   <translation>Kleinster Anfang für eine Heidelbeere im Kübel</translation>
  </message>
  <message>
   <source>Soak the ground before it freezes</source>
   <translation>Den Boden durchtränken, bevor er gefriert</translation>
  </message>
  <message>
   <source>Soil of its own that a raised bed on paving needs, for roots find none below</source>
   <translation>Eigener Boden, den ein Hochbeet auf befestigter Fläche braucht, denn darunter finden Wurzeln keinen</translation>
  </message>
  <message>
   <source>Solomon Islands</source>
   <translation>Salomonen</translation>
  </message>
  <message>
   <source>Somalia</source>
   <translation>Somalia</translation>
  </message>
  <message>
   <source>Some people react to the fruit; skin and seeds are not eaten.</source>
   <translation>Manche reagieren auf die Frucht; Schale und Kerne werden nicht gegessen.</translation>
  </message>
  <message>
   <source>Some sulfur products injure apricot.</source>
   <translation>Manche Schwefelmittel schädigen Aprikosen.</translation>
  </message>
  <message>
   <source>Sources differ: ask the local extension service.</source>
   <translation>Die Quellen sind uneins: die örtliche Fachberatung fragen.</translation>
  </message>
  <message>
   <source>South Africa</source>
   <translation>Südafrika</translation>
  </message>
  <message>
   <source>South Korea</source>
   <translation>Südkorea</translation>
  </message>
  <message>
   <source>South Sudan</source>
   <translation>Südsudan</translation>
  </message>
  <message>
   <source>Spain</source>
   <translation>Spanien</translation>
  </message>
  <message>
   <source>Sprays and manure are not mixed or stored within this distance of a well: label and local code decide</source>
   <translation>Spritzmittel und Mist werden in diesem Umkreis um einen Brunnen weder angemischt noch gelagert: maßgeblich sind Gebrauchsanleitung und örtliche Vorschrift</translation>
  </message>
  <message>
   <source>Spread ground limestone</source>
   <translation>Gemahlenen Kalk streuen</translation>
  </message>
  <message>
   <source>Spread it evenly and mix it into the worked depth; it needs warm moist soil and months of time</source>
   <translation>Gleichmäßig streuen und in die bearbeitete Tiefe mischen; er braucht warmen, feuchten Boden und Monate Zeit</translation>
  </message>
  <message>
   <source>Spread it evenly and work it in</source>
   <translation>Gleichmäßig streuen und einarbeiten</translation>
  </message>
  <message>
   <source>Spread young branches to 45-60 degrees</source>
   <translation>Junge Äste auf 45–60 Grad spreizen</translation>
  </message>
  <message>
   <source>Sprinkle without a break until the ice has melted; stopping early does more harm than frost.</source>
   <translation>Ohne Pause beregnen, bis das Eis geschmolzen ist; zu frühes Aufhören schadet mehr als der Frost.</translation>
  </message>
  <message>
   <source>Sri Lanka</source>
   <translation>Sri Lanka</translation>
  </message>
  <message>
   <source>St. Barthélemy</source>
   <translation>St. Barthélemy</translation>
  </message>
  <message>
   <source>St. Helena</source>
   <translation>St. Helena</translation>
  </message>
  <message>
   <source>St. Kitts &amp; Nevis</source>
   <translation>St. Kitts und Nevis</translation>
  </message>
  <message>
   <source>St. Lucia</source>
   <translation>St. Lucia</translation>
  </message>
  <message>
   <source>St. Martin</source>
   <translation>St. Martin</translation>
  </message>
  <message>
   <source>St. Pierre &amp; Miquelon</source>
   <translation>St. Pierre und Miquelon</translation>
  </message>
  <message>
   <source>St. Vincent &amp; Grenadines</source>
   <translation>St. Vincent und die Grenadinen</translation>
  </message>
  <message>
   <source>Stake weak-rooted stocks on the windward side</source>
   <translation>Schwach wurzelnde Unterlagen auf der Windseite anpfählen</translation>
  </message>
  <message>
   <source>State and local rules come first.</source>
   <translation>Staatliche und örtliche Vorschriften gehen vor.</translation>
  </message>
  <message>
   <source>Stem of a small fruit tree off the edge of a path, drive or terrace</source>
   <translation>Stamm eines kleinen Obstbaums vom Rand eines Wegs, einer Zufahrt oder Terrasse</translation>
  </message>
  <message>
   <source>Stems of one group that is held small by summer pruning</source>
   <translation>Stämme einer Gruppe, die durch Sommerschnitt klein gehalten wird</translation>
  </message>
  <message>
   <source>Stones and leaves of stone fruit are poisonous.</source>
   <translation>Steine und Blätter von Steinobst sind giftig.</translation>
  </message>
  <message>
   <source>Stop heavy watering when leaves colour.</source>
   <translation>Mit starkem Gießen aufhören, wenn sich das Laub färbt.</translation>
  </message>
  <message>
   <source>Store sound fruit cold and damp</source>
   <translation>Gesunde Früchte kalt und feucht lagern</translation>
  </message>
  <message>
   <source>Sudan</source>
   <translation>Sudan</translation>
  </message>
  <message>
   <source>Sulfur goes in several months to a year before planting</source>
   <translation>Schwefel kommt mehrere Monate bis ein Jahr vor dem Pflanzen hinein</translation>
  </message>
  <message>
   <source>Sulfur, first dressing</source>
   <translation>Schwefel, erste Gabe</translation>
  </message>
  <message>
   <source>Sulfur, second dressing</source>
   <translation>Schwefel, zweite Gabe</translation>
  </message>
  <message>
   <source>Summer pruning</source>
   <translation>Sommerschnitt</translation>
  </message>
  <message>
   <source>Summer-prune cordon, espalier or fan</source>
   <translation>Schnurbaum, Spalier oder Fächer im Sommer schneiden</translation>
  </message>
  <message>
   <source>Summer-prune new shoots to five leaves</source>
   <translation>Neue Triebe im Sommer auf fünf Blätter schneiden</translation>
  </message>
  <message>
   <source>Suriname</source>
   <translation>Suriname</translation>
  </message>
  <message>
   <source>Sweden</source>
   <translation>Schweden</translation>
  </message>
  <message>
   <source>Switzerland</source>
   <translation>Schweiz</translation>
  </message>
  <message>
   <source>Syria</source>
   <translation>Syrien</translation>
  </message>
  <message>
   <source>São Tomé &amp; Príncipe</source>
   <translation>São Tomé und Príncipe</translation>
  </message>
  <message>
   <source>T-bar or pergola</source>
   <translation>T-Träger oder Pergola</translation>
  </message>
  <message>
   <source>Taiwan</source>
   <translation>Taiwan</translation>
  </message>
  <message>
   <source>Tajikistan</source>
   <translation>Tadschikistan</translation>
  </message>
  <message>
   <source>Take a dozen thin cores over the place, mix them, and have pH and lime told by a laboratory or a fresh test kit</source>
   <translation>Über die Fläche ein Dutzend dünne Bohrkerne nehmen, mischen und pH und Kalk von einem Labor oder mit einem frischen Testset bestimmen lassen</translation>
  </message>
  <message>
   <source>Take a soil test</source>
   <translation>Eine Bodenprobe nehmen</translation>
  </message>
  <message>
   <source>Take a third of the oldest wood at the ground</source>
   <translation>Ein Drittel des ältesten Holzes am Boden herausnehmen</translation>
  </message>
  <message>
   <source>Take all young fruit off</source>
   <translation>Alle jungen Früchte abnehmen</translation>
  </message>
  <message>
   <source>Take canes over three years old out</source>
   <translation>Triebe über drei Jahre herausnehmen</translation>
  </message>
  <message>
   <source>Take clusters off young or overloaded vines</source>
   <translation>Bei jungen oder überladenen Reben Trauben abnehmen</translation>
  </message>
  <message>
   <source>Take out mummied fruit, dead and cankered wood</source>
   <translation>Fruchtmumien, totes und krebsiges Holz entfernen</translation>
  </message>
  <message>
   <source>Take out the oldest canes</source>
   <translation>Die ältesten Triebe herausnehmen</translation>
  </message>
  <message>
   <source>Take out the oldest stems</source>
   <translation>Die ältesten Triebe herausnehmen</translation>
  </message>
  <message>
   <source>Take trunk wraps off</source>
   <translation>Stammwickel abnehmen</translation>
  </message>
  <message>
   <source>Tall trees (height from memory); none needed behind a wall if kept below its top</source>
   <translation>Hohe Bäume (Höhe aus dem Gedächtnis); hinter einer Mauer keiner nötig, wenn sie niedriger bleiben</translation>
  </message>
  <message>
   <source>Tallest plant under an overhead line and in the near zone beside it</source>
   <translation>Höchste Pflanze unter einer Freileitung und in der nahen Zone daneben</translation>
  </message>
  <message>
   <source>Tallest tree in the middle zone beside an overhead line</source>
   <translation>Höchster Baum in der mittleren Zone neben einer Freileitung</translation>
  </message>
  <message>
   <source>Tanzania</source>
   <translation>Tansania</translation>
  </message>
  <message>
   <source>Tell the neighbours.</source>
   <translation>Den Nachbarn Bescheid sagen.</translation>
  </message>
  <message>
   <source>Test again after three months before you give more.</source>
   <translation>Nach drei Monaten neu prüfen, bevor Sie mehr geben.</translation>
  </message>
  <message>
   <source>Test again before the next dressing</source>
   <translation>Vor der nächsten Gabe neu prüfen</translation>
  </message>
  <message>
   <source>Test the drainage</source>
   <translation>Den Wasserabzug prüfen</translation>
  </message>
  <message>
   <source>Test the soil</source>
   <translation>Den Boden prüfen</translation>
  </message>
  <message>
   <source>Test the soil's pH</source>
   <translation>Den pH des Bodens prüfen</translation>
  </message>
  <message>
   <source>Thailand</source>
   <translation>Thailand</translation>
  </message>
  <message>
   <source>The first fruit row stands at least one fruit-tree spacing from a windbreak hedge</source>
   <translation>Die erste Obstreihe steht mindestens einen Pflanzabstand von einer Windschutzhecke</translation>
  </message>
  <message>
   <source>The leaves are poisonous.</source>
   <translation>Die Blätter sind giftig.</translation>
  </message>
  <message>
   <source>The lot line is as drawn by its owner and is no survey; local law may ask for a distance from it.</source>
   <translation>Die Grundstücksgrenze ist von den Besitzern gezeichnet und keine Vermessung; örtliches Recht kann einen Abstand verlangen.</translation>
  </message>
  <message>
   <source>The same kind of fruit is not set in the same hole again: shift it or change the soil</source>
   <translation>Dieselbe Obstart kommt nicht ins selbe Loch: verschieben oder die Erde wechseln</translation>
  </message>
  <message>
   <source>The sap irritates skin: gloves and sleeves.</source>
   <translation>Der Saft reizt die Haut: Handschuhe und lange Ärmel.</translation>
  </message>
  <message>
   <source>The warm end of a zone range comes from hot continental summers: from this far beyond it the finding weighs more</source>
   <translation>Das warme Ende eines Zonenbereichs stammt aus heißen kontinentalen Sommern: Ab so weit darüber wiegt der Befund schwerer</translation>
  </message>
  <message>
   <source>The zone is a mean of yearly lows, about every second winter is colder: a margin of half a zone is safer</source>
   <translation>Die Zone ist ein Mittel der Jahrestiefstwerte, etwa jeder zweite Winter ist kälter: Eine halbe Zone Spielraum ist sicherer</translation>
  </message>
  <message>
   <source>Thin and place shoots</source>
   <translation>Triebe auslichten und ordnen</translation>
  </message>
  <message>
   <source>Thin shoots to a row [6-12 in] wide</source>
   <translation>Triebe auf eine [6-12 in] breite Reihe auslichten</translation>
  </message>
  <message>
   <source>Thin the oldest stems</source>
   <translation>Die ältesten Triebe auslichten</translation>
  </message>
  <message>
   <source>Thin to 4-6 canes a foot of row, tip at [5 ft]</source>
   <translation>Auf 13–20 Ruten je Meter Reihe auslichten, bei [5 ft] einkürzen</translation>
  </message>
  <message>
   <source>Thin to [2-4 in] apart</source>
   <translation>Auf [2-4 in] Abstand ausdünnen</translation>
  </message>
  <message>
   <source>Thin to [4-6 in] apart</source>
   <translation>Auf [4-6 in] Abstand ausdünnen</translation>
  </message>
  <message>
   <source>Thin to [6-8 in] apart</source>
   <translation>Auf [6-8 in] Abstand ausdünnen</translation>
  </message>
  <message>
   <source>Thin to about [4 in] apart</source>
   <translation>Auf etwa [4 in] Abstand ausdünnen</translation>
  </message>
  <message>
   <source>Thin to one a cluster, [6-8 in] apart</source>
   <translation>Auf eine je Büschel ausdünnen, Abstand [6-8 in]</translation>
  </message>
  <message>
   <source>Thin to one a cluster, about [6 in] apart</source>
   <translation>Auf eine je Büschel ausdünnen, Abstand etwa [6 in]</translation>
  </message>
  <message>
   <source>Thin to one fruit a cluster, [6-8 in] apart</source>
   <translation>Auf eine Frucht je Büschel ausdünnen, Abstand [6-8 in]</translation>
  </message>
  <message>
   <source>Tie canes to the wires</source>
   <translation>Ruten an die Drähte binden</translation>
  </message>
  <message>
   <source>Tie in espalier arms</source>
   <translation>Spalierarme anbinden</translation>
  </message>
  <message>
   <source>Tie the new canes in</source>
   <translation>Die neuen Ruten anbinden</translation>
  </message>
  <message>
   <source>Timor-Leste</source>
   <translation>Timor-Leste</translation>
  </message>
  <message>
   <source>Tip new canes at [24-30 in]</source>
   <translation>Neue Ruten bei [24-30 in] einkürzen</translation>
  </message>
  <message>
   <source>Tip new canes at [36-48 in]</source>
   <translation>Neue Ruten bei [36-48 in] einkürzen</translation>
  </message>
  <message>
   <source>Togo</source>
   <translation>Togo</translation>
  </message>
  <message>
   <source>Tonga</source>
   <translation>Tonga</translation>
  </message>
  <message>
   <source>Too much fertilizer burns the roots.</source>
   <translation>Zu viel Dünger verbrennt die Wurzeln.</translation>
  </message>
  <message>
   <source>Toxic zone of a mature walnut, from the trunk</source>
   <translation>Giftzone einer ausgewachsenen Walnuss, vom Stamm</translation>
  </message>
  <message>
   <source>Train the young tree and spread its branches</source>
   <translation>Den jungen Baum erziehen und seine Äste spreizen</translation>
  </message>
  <message>
   <source>Train two or three bines a string</source>
   <translation>Zwei oder drei Ranken je Schnur ziehen</translation>
  </message>
  <message>
   <source>Trees stay their mature height from the edge of a septic field</source>
   <translation>Bäume bleiben um ihre Endhöhe vom Rand einer Sickerfläche entfernt</translation>
  </message>
  <message>
   <source>Trees taller than this are picked from a ladder</source>
   <translation>Höhere Bäume werden von der Leiter geerntet</translation>
  </message>
  <message>
   <source>Trees with aggressive roots stay this far from pavement</source>
   <translation>Bäume mit aggressiven Wurzeln bleiben so weit von befestigten Flächen</translation>
  </message>
  <message>
   <source>Trinidad &amp; Tobago</source>
   <translation>Trinidad und Tobago</translation>
  </message>
  <message>
   <source>Trunk treatment or screen against borers</source>
   <translation>Stammbehandlung oder Schutzgitter gegen Bohrer</translation>
  </message>
  <message>
   <source>Tunisia</source>
   <translation>Tunesien</translation>
  </message>
  <message>
   <source>Turkmenistan</source>
   <translation>Turkmenistan</translation>
  </message>
  <message>
   <source>Turks &amp; Caicos Islands</source>
   <translation>Turks- und Caicosinseln</translation>
  </message>
  <message>
   <source>Tuvalu</source>
   <translation>Tuvalu</translation>
  </message>
  <message>
   <source>Two crops instead: cut off only the fruited tips</source>
   <translation>Stattdessen zwei Ernten: nur die abgetragenen Spitzen abschneiden</translation>
  </message>
  <message>
   <source>Two crowns just touch where the stems stand half the sum of both spreads apart; a small overlap is within what tapes and tables can tell</source>
   <translation>Zwei Kronen berühren sich gerade, wenn die Stämme um die halbe Summe beider Breiten auseinanderstehen; eine kleine Überlappung liegt innerhalb dessen, was Maßband und Tabelle unterscheiden</translation>
  </message>
  <message>
   <source>Türkiye</source>
   <translation>Türkei</translation>
  </message>
  <message>
   <source>U.S. Virgin Islands</source>
   <translation>Amerikanische Jungferninseln</translation>
  </message>
  <message>
   <source>Uganda</source>
   <translation>Uganda</translation>
  </message>
  <message>
   <source>Ukraine</source>
   <translation>Ukraine</translation>
  </message>
  <message>
   <source>United Arab Emirates</source>
   <translation>Vereinigte Arabische Emirate</translation>
  </message>
  <message>
   <source>United Kingdom</source>
   <translation>Vereinigtes Königreich</translation>
  </message>
  <message>
   <source>United States</source>
   <translation>Vereinigte Staaten</translation>
  </message>
  <message>
   <source>Unwrap in steps</source>
   <translation>Schrittweise auswickeln</translation>
  </message>
  <message>
   <source>Up to this much limestone goes on at once; 11 to 20 in two dressings, more in three</source>
   <translation>Bis zu so viel Kalk auf einmal; 11 bis 20 in zwei Gaben, mehr in drei</translation>
  </message>
  <message>
   <source>Up to this much limestone goes on in two dressings; more in three</source>
   <translation>Bis zu so viel Kalk in zwei Gaben; mehr in drei</translation>
  </message>
  <message>
   <source>Up to this much sulfur goes in at once before planting; of more, two thirds first, then a new test, then the rest</source>
   <translation>Bis zu so viel Schwefel kommt vor dem Pflanzen auf einmal hinein; sonst zwei Drittel zuerst, dann neu prüfen, dann der Rest</translation>
  </message>
  <message>
   <source>Uruguay</source>
   <translation>Uruguay</translation>
  </message>
  <message>
   <source>Usual pattern over 2 m tall, up to 8 m for large species in some Laender: look up your Land</source>
   <translation>Übliches Muster über 2 m Höhe, in manchen Bundesländern bis 8 m für große Arten: im eigenen Landesrecht nachsehen</translation>
  </message>
  <message>
   <source>Usual pattern up to 2 m tall; every Land sets its own figures</source>
   <translation>Übliches Muster bis 2 m Höhe; jedes Bundesland hat eigene Werte</translation>
  </message>
  <message>
   <source>Uzbekistan</source>
   <translation>Usbekistan</translation>
  </message>
  <message>
   <source>V row</source>
   <translation>V-Reihe</translation>
  </message>
  <message>
   <source>Vanuatu</source>
   <translation>Vanuatu</translation>
  </message>
  <message>
   <source>Venezuela</source>
   <translation>Venezuela</translation>
  </message>
  <message>
   <source>Vietnam</source>
   <translation>Vietnam</translation>
  </message>
  <message>
   <source>Vines, shrubs, hedges and fruit trees up to 2.5 m tall</source>
   <translation>Reben, Sträucher, Hecken und Obstbäume bis 2,5 m Höhe</translation>
  </message>
  <message>
   <source>Walk round and look at buds, leaves and fruit</source>
   <translation>Rundgang: Knospen, Blätter und Früchte ansehen</translation>
  </message>
  <message>
   <source>Water [1-1.5 in] a week</source>
   <translation>[1-1.5 in] in der Woche gießen</translation>
  </message>
  <message>
   <source>Water [1-2 in] a week</source>
   <translation>[1-2 in] in der Woche gießen</translation>
  </message>
  <message>
   <source>Water deeply</source>
   <translation>Tief gießen</translation>
  </message>
  <message>
   <source>Water in and keep moist after planting</source>
   <translation>Nach dem Pflanzen angießen und feucht halten</translation>
  </message>
  <message>
   <source>Water in dry weeks</source>
   <translation>In trockenen Wochen gießen</translation>
  </message>
  <message>
   <source>Water in store once a month</source>
   <translation>Im Quartier einmal im Monat gießen</translation>
  </message>
  <message>
   <source>Water pots daily in heat</source>
   <translation>Bei Hitze Kübel täglich gießen</translation>
  </message>
  <message>
   <source>Water young trees</source>
   <translation>Junge Bäume gießen</translation>
  </message>
  <message>
   <source>Water-seeking trees stay this far from a septic field</source>
   <translation>Wassersuchende Bäume bleiben so weit von einer Sickerfläche</translation>
  </message>
  <message>
   <source>Way for a garden cart</source>
   <translation>Weg für einen Gartenkarren</translation>
  </message>
  <message>
   <source>Way for a ride-on mower: deck plus a foot</source>
   <translation>Weg für einen Aufsitzmäher: Schnittbreite plus 30 cm</translation>
  </message>
  <message>
   <source>Way for a wheelbarrow or push mower</source>
   <translation>Weg für Schubkarre oder Handmäher</translation>
  </message>
  <message>
   <source>Way on foot</source>
   <translation>Weg zu Fuß</translation>
  </message>
  <message>
   <source>Western Sahara</source>
   <translation>Westsahara</translation>
  </message>
  <message>
   <source>What is drawn across the lot line by no more than this counts as inside; only a survey tells where the line runs</source>
   <translation>Was um nicht mehr als dies über die Grundstücksgrenze gezeichnet ist, zählt als innerhalb; wo sie verläuft, sagt nur eine Vermessung</translation>
  </message>
  <message>
   <source>Where frost is feared leave canes long, shorten after it</source>
   <translation>Wo Frost droht, Ruten lang lassen und danach einkürzen</translation>
  </message>
  <message>
   <source>Where no law is entered, a stem stands half its mature spread inside the line (share of that distance)</source>
   <translation>Wo kein Recht eingetragen ist, steht ein Stamm um die halbe Endbreite innerhalb der Grenze (Anteil dieses Abstands)</translation>
  </message>
  <message>
   <source>Width of a raised bed for one bush or a row of bushes</source>
   <translation>Breite eines Hochbeets für einen Busch oder eine Reihe von Büschen</translation>
  </message>
  <message>
   <source>Width of the near zone to each side of an overhead line</source>
   <translation>Breite der nahen Zone beiderseits einer Freileitung</translation>
  </message>
  <message>
   <source>Wild brambles harbour virus: none this near to planted ones</source>
   <translation>Wilde Brombeeren bergen Viren: keine so nah an gepflanzten</translation>
  </message>
  <message>
   <source>Winter mulch of [3-4 in] of straw</source>
   <translation>Wintermulch aus [3-4 in] Stroh</translation>
  </message>
  <message>
   <source>Winter pruning before the sap rises</source>
   <translation>Winterschnitt, bevor der Saft steigt</translation>
  </message>
  <message>
   <source>Winter quarters for pots</source>
   <translation>Winterquartier für Kübel</translation>
  </message>
  <message>
   <source>Work in elemental sulfur</source>
   <translation>Elementarschwefel einarbeiten</translation>
  </message>
  <message>
   <source>Working gap between a crown at full size and a wall or roof</source>
   <translation>Arbeitsraum zwischen einer ausgewachsenen Krone und Wand oder Dach</translation>
  </message>
  <message>
   <source>Wrap the trunks</source>
   <translation>Die Stämme einwickeln</translation>
  </message>
  <message>
   <source>Wrap, bend down or bring in</source>
   <translation>Einwickeln, niederbiegen oder hereinholen</translation>
  </message>
  <message>
   <source>Write down bloom, petal fall and first ripe fruit</source>
   <translation>Blüte, Blütenende und erste reife Frucht notieren</translation>
  </message>
  <message>
   <source>Years between nightshades or strawberries and brambles on the same ground</source>
   <translation>Jahre zwischen Nachtschattengewächsen oder Erdbeeren und Brombeeren/Himbeeren auf derselben Fläche</translation>
  </message>
  <message>
   <source>Years between nightshades, brambles or stone fruit and strawberries on the same ground</source>
   <translation>Jahre zwischen Nachtschattengewächsen, Brombeeren/Himbeeren oder Steinobst und Erdbeeren auf derselben Fläche</translation>
  </message>
  <message>
   <source>Yemen</source>
   <translation>Jemen</translation>
  </message>
  <message>
   <source>Zambia</source>
   <translation>Sambia</translation>
  </message>
  <message>
   <source>Zimbabwe</source>
   <translation>Simbabwe</translation>
  </message>
  <message>
   <source>[0.25-0.5 lb] of 10-10-10 a bush, or compost</source>
   <translation>[0.25-0.5 lb] Dünger 10-10-10 je Busch, oder Kompost</translation>
  </message>
  <message>
   <source>[30-31 F] at 90 % humidity; winter pears 2-6 weeks cold, then [65-70 F]</source>
   <translation>[30-31 F] bei 90 % Feuchte; Winterbirnen 2–6 Wochen kalt, dann [65-70 F]</translation>
  </message>
  <message>
   <source>[31-32 F] at 90-95 % humidity; 2-3 weeks</source>
   <translation>[31-32 F] bei 90–95 % Feuchte; 2–3 Wochen</translation>
  </message>
  <message>
   <source>[31-32 F]; 2-4 weeks; between [36-46 F] they turn mealy</source>
   <translation>[31-32 F]; 2–4 Wochen; zwischen [36-46 F] werden sie mehlig</translation>
  </message>
  <message>
   <source>[32 F] at 90-95 % humidity, McIntosh kinds [35-38 F]; summer apples keep 2-6 weeks, late ones 3-6 months</source>
   <translation>[32 F] bei 90–95 % Feuchte, McIntosh-Sorten [35-38 F]; Sommeräpfel halten 2–6 Wochen, späte 3–6 Monate</translation>
  </message>
  <message>
   <source>a crabapple and an apple are unlike in their alleles</source>
   <translation>Zierapfel und Apfel haben ungleiche Allele</translation>
  </message>
  <message>
   <source>a crabapple and an apple are unlike in their alleles: extension lists take any crabapple in bloom</source>
   <translation>Zierapfel und Apfel haben ungleiche Allele: Listen der Fachberatung nehmen jeden Zierapfel in Blüte</translation>
  </message>
  <message>
   <source>a dry spell of several days</source>
   <translation>mehrere trockene Tage hintereinander</translation>
  </message>
  <message>
   <source>a good donor for it in a Polish trial</source>
   <translation>in einem polnischen Versuch ein guter Spender dafür</translation>
  </message>
  <message>
   <source>a heavy set</source>
   <translation>starker Ansatz</translation>
  </message>
  <message>
   <source>a heavy set; small gages [2-3 in]</source>
   <translation>starker Ansatz; kleine Renekloden [2-3 in]</translation>
  </message>
  <message>
   <source>a light dose of nitrogen</source>
   <translation>eine leichte Gabe Stickstoff</translation>
  </message>
  <message>
   <source>a male vine raises set and size of fruit</source>
   <translation>eine männliche Pflanze erhöht Ansatz und Fruchtgröße</translation>
  </message>
  <message>
   <source>a matted row</source>
   <translation>eine Mattenreihe</translation>
  </message>
  <message>
   <source>a mix of Opal and Victoria pollen set 31 to 33 % within three days</source>
   <translation>eine Mischung aus Pollen von Opal und Victoria setzte binnen drei Tagen 31 bis 33 % an</translation>
  </message>
  <message>
   <source>a night forecast below what the buds stand</source>
   <translation>eine vorhergesagte Nacht unter dem, was die Knospen vertragen</translation>
  </message>
  <message>
   <source>a partner raised berry weight though not fruit set in its trial</source>
   <translation>ein Befruchter erhöhte im Versuch das Beerengewicht, nicht aber den Ansatz</translation>
  </message>
  <message>
   <source>a partner raises set in poor weather</source>
   <translation>ein Befruchter erhöht den Ansatz bei schlechtem Wetter</translation>
  </message>
  <message>
   <source>a quarter of the plants show yellow new leaves</source>
   <translation>ein Viertel der Pflanzen zeigt gelbe neue Blätter</translation>
  </message>
  <message>
   <source>a rust of white pines lives on them</source>
   <translation>ein Rost der Weymouthskiefern lebt auf ihnen</translation>
  </message>
  <message>
   <source>a second clone raises set</source>
   <translation>ein zweiter Klon erhöht den Ansatz</translation>
  </message>
  <message>
   <source>a second cultivar is optional; bees are needed</source>
   <translation>eine zweite Sorte ist nicht nötig; Bienen schon</translation>
  </message>
  <message>
   <source>a second cultivar raises set</source>
   <translation>eine zweite Sorte erhöht den Ansatz</translation>
  </message>
  <message>
   <source>a second cultivar raises set and berry size</source>
   <translation>eine zweite Sorte erhöht Ansatz und Beerengröße</translation>
  </message>
  <message>
   <source>a second cultivar within 60 ft (18 m) raises set</source>
   <translation>eine zweite Sorte innerhalb von 18 m erhöht den Ansatz</translation>
  </message>
  <message>
   <source>a seedling of the wild sweet cherry can serve when in bloom</source>
   <translation>ein Sämling der Vogelkirsche kann dienen, wenn er in Blüte ist</translation>
  </message>
  <message>
   <source>a small crop in early summer besides</source>
   <translation>dazu eine kleine Ernte im Frühsommer</translation>
  </message>
  <message>
   <source>a town crabapple this near is accepted by extension replies as probable help</source>
   <translation>einen Zierapfel im Ort in dieser Nähe nimmt die Fachberatung als wahrscheinliche Hilfe an</translation>
  </message>
  <message>
   <source>a weak donor for it in a Polish trial</source>
   <translation>in einem polnischen Versuch ein schwacher Spender dafür</translation>
  </message>
  <message>
   <source>a wet spring</source>
   <translation>ein nasses Frühjahr</translation>
  </message>
  <message>
   <source>a wet spring and a variety that takes scab or rust; stop at second cover if no scab shows</source>
   <translation>ein nasses Frühjahr und eine anfällige Sorte; nach dem zweiten Belag aufhören, wenn kein Schorf zu sehen ist</translation>
  </message>
  <message>
   <source>a wet spring and scab the year before</source>
   <translation>ein nasses Frühjahr und Schorf im Vorjahr</translation>
  </message>
  <message>
   <source>a wild American plum thicket sets hybrid plums but no European plum</source>
   <translation>ein Dickicht der Amerikanischen Wildpflaume befruchtet Hybridpflaumen, aber keine Europäische Pflaume</translation>
  </message>
  <message>
   <source>a wild Canada plum thicket sets hybrid plums but no European plum</source>
   <translation>ein Dickicht der Kanadischen Wildpflaume befruchtet Hybridpflaumen, aber keine Europäische Pflaume</translation>
  </message>
  <message>
   <source>about [0.5 oz] of ammonium sulfate in year 2, rising to [4 oz] from year 8</source>
   <translation>im 2. Jahr etwa [0.5 oz] Ammoniumsulfat, steigend auf [4 oz] ab dem 8. Jahr</translation>
  </message>
  <message>
   <source>about [28 F]</source>
   <translation>etwa [28 F]</translation>
  </message>
  <message>
   <source>about [4-5 lb] of 10-10-10 for each [100 ft] of row, or compost</source>
   <translation>etwa [4-5 lb] Dünger 10-10-10 je [100 ft] Reihe, oder Kompost</translation>
  </message>
  <message>
   <source>above [40 F] and no freeze for two days; only if psylla, scale or mites were seen</source>
   <translation>über [40 F] und zwei Tage kein Frost; nur wenn Blattsauger, Schildläuse oder Milben gesehen wurden</translation>
  </message>
  <message>
   <source>above [40 F] and no freeze for two days; only if scale or aphid eggs were seen</source>
   <translation>über [40 F] und zwei Tage kein Frost; nur wenn Schildläuse oder Blattlauseier gesehen wurden</translation>
  </message>
  <message>
   <source>above [40 F] for a day and no freeze for two; only if scale, mites or aphid eggs were seen</source>
   <translation>einen Tag über [40 F] und zwei Tage kein Frost; nur wenn Schildläuse, Milben oder Blattlauseier gesehen wurden</translation>
  </message>
  <message>
   <source>above all from bloom to harvest</source>
   <translation>vor allem von der Blüte bis zur Ernte</translation>
  </message>
  <message>
   <source>accepted as a donor for pears</source>
   <translation>als Spender für Birnen anerkannt</translation>
  </message>
  <message>
   <source>advised against except in very good weather</source>
   <translation>außer bei sehr gutem Wetter abgeraten</translation>
  </message>
  <message>
   <source>after a dry autumn</source>
   <translation>nach einem trockenen Herbst</translation>
  </message>
  <message>
   <source>after harvest and frost</source>
   <translation>nach Ernte und Frost</translation>
  </message>
  <message>
   <source>after light frosts, leaves down</source>
   <translation>nach leichten Frösten, Laub gefallen</translation>
  </message>
  <message>
   <source>after several nights at [20-25 F]</source>
   <translation>nach mehreren Nächten mit [20-25 F]</translation>
  </message>
  <message>
   <source>after the worst cold, before buds open</source>
   <translation>nach der ärgsten Kälte, vor dem Knospenaufbruch</translation>
  </message>
  <message>
   <source>after thinning</source>
   <translation>nach dem Ausdünnen</translation>
  </message>
  <message>
   <source>after three or four crops</source>
   <translation>nach drei oder vier Ernten</translation>
  </message>
  <message>
   <source>after year 5, the dormant season serves too</source>
   <translation>nach dem 5. Jahr, auch in der Ruhezeit</translation>
  </message>
  <message>
   <source>again in late summer when flower buds form</source>
   <translation>noch einmal im Spätsommer, wenn sich Blütenknospen bilden</translation>
  </message>
  <message>
   <source>air</source>
   <translation>Luft</translation>
  </message>
  <message>
   <source>all berries dark</source>
   <translation>alle Beeren dunkel</translation>
  </message>
  <message>
   <source>all canes that bore</source>
   <translation>alle Ruten, die getragen haben</translation>
  </message>
  <message>
   <source>almond</source>
   <translation>Mandel</translation>
  </message>
  <message>
   <source>alpine</source>
   <translation>Monatserdbeere</translation>
  </message>
  <message>
   <source>aluminum sulfate</source>
   <translation>Aluminiumsulfat</translation>
  </message>
  <message>
   <source>american persimmon</source>
   <translation>Amerikanische Persimone</translation>
  </message>
  <message>
   <source>ammonium sulfate</source>
   <translation>Ammoniumsulfat</translation>
  </message>
  <message>
   <source>an unknown crabapple is most likely a diploid with alleles unlike those of the apple</source>
   <translation>ein unbekannter Zierapfel ist höchstwahrscheinlich diploid mit anderen Allelen als der Apfel</translation>
  </message>
  <message>
   <source>an unknown seedling apple is most likely a diploid with alleles unlike those of the cultivar</source>
   <translation>ein unbekannter Apfelsämling ist höchstwahrscheinlich diploid mit anderen Allelen als die Sorte</translation>
  </message>
  <message>
   <source>annual vegetables</source>
   <translation>Einjähriges Gemüse</translation>
  </message>
  <message>
   <source>anthracnose</source>
   <translation>Anthraknose</translation>
  </message>
  <message>
   <source>anthracnose fruit rot</source>
   <translation>Anthraknose-Fruchtfäule</translation>
  </message>
  <message>
   <source>apple</source>
   <translation>Apfel</translation>
  </message>
  <message>
   <source>apple scab</source>
   <translation>Apfelschorf</translation>
  </message>
  <message>
   <source>apple tree, unpruned</source>
   <translation>Apfelbaum, ungeschnitten</translation>
  </message>
  <message>
   <source>apricot</source>
   <translation>Aprikose</translation>
  </message>
  <message>
   <source>arborvitae</source>
   <translation>Lebensbaum</translation>
  </message>
  <message>
   <source>arborvitae hedge</source>
   <translation>Lebensbaumhecke</translation>
  </message>
  <message>
   <source>arborvitae, large</source>
   <translation>Lebensbaum, groß</translation>
  </message>
  <message>
   <source>arbour</source>
   <translation>Laube</translation>
  </message>
  <message>
   <source>arbour or pergola</source>
   <translation>Laube oder Pergola</translation>
  </message>
  <message>
   <source>arching canes</source>
   <translation>überhängende Ruten</translation>
  </message>
  <message>
   <source>arching clump</source>
   <translation>überhängender Horst</translation>
  </message>
  <message>
   <source>arching clump, no suckers</source>
   <translation>überhängender Horst, keine Ausläufer</translation>
  </message>
  <message>
   <source>arching pale stems</source>
   <translation>überhängende helle Stängel</translation>
  </message>
  <message>
   <source>arching suckering shrub, 3-7 ft</source>
   <translation>überhängender, Ausläufer treibender Strauch, 1–2 m</translation>
  </message>
  <message>
   <source>arching, on wire or fence</source>
   <translation>überhängend, an Draht oder Zaun</translation>
  </message>
  <message>
   <source>arctic kiwi</source>
   <translation>Amur-Kiwi</translation>
  </message>
  <message>
   <source>arctic kiwi blooms earlier than hardy kiwi and is a poor match</source>
   <translation>Amur-Kiwi blüht früher als Minikiwi und passt schlecht</translation>
  </message>
  <message>
   <source>aronia</source>
   <translation>Aronia</translation>
  </message>
  <message>
   <source>as little as needed; where winters are wet and mild</source>
   <translation>so wenig wie nötig; wo Winter nass und mild sind</translation>
  </message>
  <message>
   <source>ash</source>
   <translation>Esche</translation>
  </message>
  <message>
   <source>ash, green</source>
   <translation>Rotesche</translation>
  </message>
  <message>
   <source>ash, white</source>
   <translation>Weißesche</translation>
  </message>
  <message>
   <source>asian pear</source>
   <translation>Nashi</translation>
  </message>
  <message>
   <source>asparagus</source>
   <translation>Spargel</translation>
  </message>
  <message>
   <source>astringent kinds fully soft, others firm and coloured</source>
   <translation>herbe Sorten ganz weich, andere fest und gefärbt</translation>
  </message>
  <message>
   <source>at once after the last picking</source>
   <translation>gleich nach der letzten Ernte</translation>
  </message>
  <message>
   <source>at the first blue berries</source>
   <translation>bei den ersten blauen Beeren</translation>
  </message>
  <message>
   <source>avocado</source>
   <translation>Avocado</translation>
  </message>
  <message>
   <source>bacterial canker</source>
   <translation>Bakterienbrand</translation>
  </message>
  <message>
   <source>bacterial spot</source>
   <translation>Bakterienflecken</translation>
  </message>
  <message>
   <source>bare pyramidal outline, velvety flower buds</source>
   <translation>kahler kegelförmiger Umriss, samtige Blütenknospen</translation>
  </message>
  <message>
   <source>bare trees go weak into winter</source>
   <translation>kahle Bäume gehen geschwächt in den Winter</translation>
  </message>
  <message>
   <source>bark burns in sudden sun</source>
   <translation>Rinde verbrennt in plötzlicher Sonne</translation>
  </message>
  <message>
   <source>bearing shoots under [8-10 in]</source>
   <translation>tragende Triebe unter [8-10 in]</translation>
  </message>
  <message>
   <source>beech</source>
   <translation>Buche</translation>
  </message>
  <message>
   <source>bees</source>
   <translation>Bienen</translation>
  </message>
  <message>
   <source>bees and a second kind raise set</source>
   <translation>Bienen und eine zweite Sorte erhöhen den Ansatz</translation>
  </message>
  <message>
   <source>bees; bird cover</source>
   <translation>Bienen; Deckung für Vögel</translation>
  </message>
  <message>
   <source>bees; birds</source>
   <translation>Bienen; Vögel</translation>
  </message>
  <message>
   <source>bees; birds and butterflies</source>
   <translation>Bienen; Vögel und Schmetterlinge</translation>
  </message>
  <message>
   <source>bees; birds and mammals</source>
   <translation>Bienen; Vögel und Säugetiere</translation>
  </message>
  <message>
   <source>bees; birds and thrushes on fallen fruit</source>
   <translation>Bienen; Vögel und Drosseln am Fallobst</translation>
  </message>
  <message>
   <source>bees; birds in winter</source>
   <translation>Bienen; Vögel im Winter</translation>
  </message>
  <message>
   <source>bees; birds on winter fruit</source>
   <translation>Bienen; Vögel an Winterfrüchten</translation>
  </message>
  <message>
   <source>bees; birds take the fruit</source>
   <translation>Bienen; Vögel fressen die Früchte</translation>
  </message>
  <message>
   <source>bees; blackbirds</source>
   <translation>Bienen; Amseln</translation>
  </message>
  <message>
   <source>bees; butterflies</source>
   <translation>Bienen; Schmetterlinge</translation>
  </message>
  <message>
   <source>bees; butterflies; birds and mammals</source>
   <translation>Bienen; Schmetterlinge; Vögel und Säugetiere</translation>
  </message>
  <message>
   <source>bees; cats</source>
   <translation>Bienen; Katzen</translation>
  </message>
  <message>
   <source>bees; cats chew shoots</source>
   <translation>Bienen; Katzen fressen die Triebe an</translation>
  </message>
  <message>
   <source>bees; mammals and birds on fruit</source>
   <translation>Bienen; Säugetiere und Vögel an den Früchten</translation>
  </message>
  <message>
   <source>bees; over 100 bird species on fruit</source>
   <translation>Bienen; über 100 Vogelarten an den Früchten</translation>
  </message>
  <message>
   <source>bees; slugs, birds</source>
   <translation>Bienen; Schnecken, Vögel</translation>
  </message>
  <message>
   <source>bees; waxwings and thrushes on winter fruit</source>
   <translation>Bienen; Seidenschwänze und Drosseln an Winterfrüchten</translation>
  </message>
  <message>
   <source>bees; wildlife</source>
   <translation>Bienen; wilde Tiere</translation>
  </message>
  <message>
   <source>bees; winter birds</source>
   <translation>Bienen; Wintervögel</translation>
  </message>
  <message>
   <source>before buds move</source>
   <translation>bevor die Knospen treiben</translation>
  </message>
  <message>
   <source>before buds move; for one autumn crop</source>
   <translation>bevor die Knospen treiben; für eine einzige Herbsternte</translation>
  </message>
  <message>
   <source>before colour</source>
   <translation>vor der Färbung</translation>
  </message>
  <message>
   <source>before planting; some states and towns bar currants and gooseberries</source>
   <translation>vor dem Pflanzen; manche Staaten und Gemeinden verbieten Johannis- und Stachelbeeren</translation>
  </message>
  <message>
   <source>before the stone hardens, about one fruit to 35 leaves</source>
   <translation>bevor der Stein hart wird, etwa eine Frucht auf 35 Blätter</translation>
  </message>
  <message>
   <source>below [30 F] at plant level; popcorn stage [26 F], tight bud [22 F]</source>
   <translation>unter [30 F] in Pflanzenhöhe; Ballonstadium [26 F], geschlossene Knospe [22 F]</translation>
  </message>
  <message>
   <source>best on one- and two-year canes</source>
   <translation>am besten an ein- und zweijährigen Trieben</translation>
  </message>
  <message>
   <source>best on one-year wood</source>
   <translation>am besten an einjährigem Holz</translation>
  </message>
  <message>
   <source>best spurs sit on two- and three-year wood</source>
   <translation>das beste Fruchtholz sitzt an zwei- und dreijährigem Holz</translation>
  </message>
  <message>
   <source>big crowns</source>
   <translation>kräftige Herzen</translation>
  </message>
  <message>
   <source>birch</source>
   <translation>Birke</translation>
  </message>
  <message>
   <source>birch, river</source>
   <translation>Schwarzbirke</translation>
  </message>
  <message>
   <source>birch, silver</source>
   <translation>Hängebirke</translation>
  </message>
  <message>
   <source>birds</source>
   <translation>Vögel</translation>
  </message>
  <message>
   <source>birds and wasps</source>
   <translation>Vögel und Wespen</translation>
  </message>
  <message>
   <source>birds and wasps on ripe fruit</source>
   <translation>Vögel und Wespen an reifen Früchten</translation>
  </message>
  <message>
   <source>birds in crowds</source>
   <translation>Vögel in Scharen</translation>
  </message>
  <message>
   <source>birds take all</source>
   <translation>Vögel nehmen alles</translation>
  </message>
  <message>
   <source>birds; wasps on fruit</source>
   <translation>Vögel; Wespen an den Früchten</translation>
  </message>
  <message>
   <source>black currant</source>
   <translation>Schwarze Johannisbeere</translation>
  </message>
  <message>
   <source>black fruit held to winter</source>
   <translation>schwarze Früchte bis in den Winter</translation>
  </message>
  <message>
   <source>black knot</source>
   <translation>Schwarzer Krebs</translation>
  </message>
  <message>
   <source>black raspberry</source>
   <translation>Schwarze Himbeere</translation>
  </message>
  <message>
   <source>black rot</source>
   <translation>Schwarzfäule</translation>
  </message>
  <message>
   <source>black walnut</source>
   <translation>Schwarznuss</translation>
  </message>
  <message>
   <source>blackberry</source>
   <translation>Brombeere</translation>
  </message>
  <message>
   <source>blackberry (erect)</source>
   <translation>Brombeere (aufrecht)</translation>
  </message>
  <message>
   <source>blackberry (semi-erect)</source>
   <translation>Brombeere (halbaufrecht)</translation>
  </message>
  <message>
   <source>blackberry (trailing)</source>
   <translation>Brombeere (rankend)</translation>
  </message>
  <message>
   <source>blocky dark bark</source>
   <translation>dunkle, gefelderte Rinde</translation>
  </message>
  <message>
   <source>blossom blight</source>
   <translation>Blütenwelke</translation>
  </message>
  <message>
   <source>blossom buds exposed</source>
   <translation>Blütenknospen sichtbar</translation>
  </message>
  <message>
   <source>blue for 3-5 days, they drop into the hand</source>
   <translation>3–5 Tage blau, sie fallen in die Hand</translation>
  </message>
  <message>
   <source>blue-green</source>
   <translation>blaugrün</translation>
  </message>
  <message>
   <source>blue-green, fades or browns by late summer</source>
   <translation>blaugrün, verblasst oder bräunt im Spätsommer</translation>
  </message>
  <message>
   <source>blue-green, glossy</source>
   <translation>blaugrün, glänzend</translation>
  </message>
  <message>
   <source>blue-green, lobed</source>
   <translation>blaugrün, gelappt</translation>
  </message>
  <message>
   <source>blue-grey tint</source>
   <translation>blaugrauer Ton</translation>
  </message>
  <message>
   <source>blueberry</source>
   <translation>Heidelbeere</translation>
  </message>
  <message>
   <source>blueberry shock virus</source>
   <translation>Heidelbeer-Schockvirus</translation>
  </message>
  <message>
   <source>bold bush or wall-trained</source>
   <translation>kräftiger Busch oder an der Wand gezogen</translation>
  </message>
  <message>
   <source>bold clump, 3-4 ft</source>
   <translation>kräftiger Horst, 0,9–1,2 m</translation>
  </message>
  <message>
   <source>bold lobed leaves</source>
   <translation>große gelappte Blätter</translation>
  </message>
  <message>
   <source>bold pinnate</source>
   <translation>große gefiederte Blätter</translation>
  </message>
  <message>
   <source>bold pinnate green</source>
   <translation>große gefiederte Blätter, grün</translation>
  </message>
  <message>
   <source>borers girdle the base</source>
   <translation>Bohrer ringeln die Stammbasis</translation>
  </message>
  <message>
   <source>bramble</source>
   <translation>Brombeergewächs</translation>
  </message>
  <message>
   <source>bramble thicket</source>
   <translation>Brombeerdickicht</translation>
  </message>
  <message>
   <source>bright green</source>
   <translation>hellgrün leuchtend</translation>
  </message>
  <message>
   <source>bright orange fruit on females into winter</source>
   <translation>leuchtend orange Früchte an weiblichen Pflanzen bis in den Winter</translation>
  </message>
  <message>
   <source>bright pink fading to white</source>
   <translation>leuchtend rosa, zu Weiß verblassend</translation>
  </message>
  <message>
   <source>bright pink, large, showy</source>
   <translation>leuchtend rosa, groß, auffällig</translation>
  </message>
  <message>
   <source>bright red winter wood</source>
   <translation>leuchtend rotes Winterholz</translation>
  </message>
  <message>
   <source>bright yellow winter wood</source>
   <translation>leuchtend gelbes Winterholz</translation>
  </message>
  <message>
   <source>brilliant red</source>
   <translation>leuchtend rot</translation>
  </message>
  <message>
   <source>brilliant red to orange-red</source>
   <translation>leuchtend rot bis orangerot</translation>
  </message>
  <message>
   <source>broad rounded, needs space</source>
   <translation>breit rund, braucht Platz</translation>
  </message>
  <message>
   <source>broad spreading frame</source>
   <translation>breites, ausladendes Gerüst</translation>
  </message>
  <message>
   <source>broad upright</source>
   <translation>breit aufrecht</translation>
  </message>
  <message>
   <source>bronze</source>
   <translation>bronzefarben</translation>
  </message>
  <message>
   <source>bronze or silvery</source>
   <translation>bronzefarben oder silbrig</translation>
  </message>
  <message>
   <source>bronze then green</source>
   <translation>erst bronzefarben, dann grün</translation>
  </message>
  <message>
   <source>bronze tinted</source>
   <translation>bronzefarben überhaucht</translation>
  </message>
  <message>
   <source>bronze tints</source>
   <translation>bronzefarbene Töne</translation>
  </message>
  <message>
   <source>bronze to burgundy</source>
   <translation>bronzefarben bis weinrot</translation>
  </message>
  <message>
   <source>bronze-green</source>
   <translation>bronzegrün</translation>
  </message>
  <message>
   <source>bronze-red</source>
   <translation>bronzerot</translation>
  </message>
  <message>
   <source>brown rot</source>
   <translation>Fruchtfäule</translation>
  </message>
  <message>
   <source>brown rot, scab and rots sit in them through the winter</source>
   <translation>Fruchtfäule, Schorf und andere Pilze überwintern darin</translation>
  </message>
  <message>
   <source>bud burst</source>
   <translation>Austrieb</translation>
  </message>
  <message>
   <source>bud swell</source>
   <translation>Knospenschwellen</translation>
  </message>
  <message>
   <source>buds are swelling; cover on frost nights</source>
   <translation>die Knospen schwellen; in Frostnächten abdecken</translation>
  </message>
  <message>
   <source>bumble bees</source>
   <translation>Hummeln</translation>
  </message>
  <message>
   <source>bumble bees; birds on fruit</source>
   <translation>Hummeln; Vögel an den Früchten</translation>
  </message>
  <message>
   <source>burgundy leaves, red fruit</source>
   <translation>weinrote Blätter, rote Früchte</translation>
  </message>
  <message>
   <source>buried crowns rot, high ones dry out</source>
   <translation>zu tief gesetzte faulen, zu hohe vertrocknen</translation>
  </message>
  <message>
   <source>burn before buds break</source>
   <translation>vor dem Knospenaufbruch verbrennen</translation>
  </message>
  <message>
   <source>bush</source>
   <translation>Busch</translation>
  </message>
  <message>
   <source>bush hybrid</source>
   <translation>Buschhybride</translation>
  </message>
  <message>
   <source>bush or small tree</source>
   <translation>Busch oder kleiner Baum</translation>
  </message>
  <message>
   <source>bush or trellis</source>
   <translation>Busch oder Drahtgerüst</translation>
  </message>
  <message>
   <source>bush tree</source>
   <translation>Buschbaum</translation>
  </message>
  <message>
   <source>butterfly larvae</source>
   <translation>Raupen von Schmetterlingen</translation>
  </message>
  <message>
   <source>butternut</source>
   <translation>Butternuss</translation>
  </message>
  <message>
   <source>by taste, cut with a stub of stem</source>
   <translation>nach Geschmack, mit Stielansatz geschnitten</translation>
  </message>
  <message>
   <source>calyx green</source>
   <translation>Kelch grün</translation>
  </message>
  <message>
   <source>calyx red</source>
   <translation>Kelch rot</translation>
  </message>
  <message>
   <source>cane</source>
   <translation>Rute</translation>
  </message>
  <message>
   <source>cane hill</source>
   <translation>Rutenhorst</translation>
  </message>
  <message>
   <source>cane outline only</source>
   <translation>nur die Ruten als Umriss</translation>
  </message>
  <message>
   <source>cane row</source>
   <translation>Rutenreihe</translation>
  </message>
  <message>
   <source>canker</source>
   <translation>Obstbaumkrebs</translation>
  </message>
  <message>
   <source>canker and silver leaf enter winter cuts</source>
   <translation>Krebs und Bleiglanz dringen in Winterschnitte ein</translation>
  </message>
  <message>
   <source>canker and winter injury</source>
   <translation>Krebs und Winterschäden</translation>
  </message>
  <message>
   <source>canker fungi enter wet cuts</source>
   <translation>Krebspilze dringen in nasse Schnitte ein</translation>
  </message>
  <message>
   <source>catkins through winter</source>
   <translation>Kätzchen den Winter über</translation>
  </message>
  <message>
   <source>cedar-apple rust</source>
   <translation>Wacholderrost</translation>
  </message>
  <message>
   <source>central leader</source>
   <translation>Spindel (Mittelachse)</translation>
  </message>
  <message>
   <source>cherry</source>
   <translation>Kirsche</translation>
  </message>
  <message>
   <source>cherry leaf spot</source>
   <translation>Sprühfleckenkrankheit</translation>
  </message>
  <message>
   <source>cherry, flowering</source>
   <translation>Zierkirsche</translation>
  </message>
  <message>
   <source>chestnut</source>
   <translation>Esskastanie</translation>
  </message>
  <message>
   <source>chill of the site under which winters count as mild</source>
   <translation>Kälte am Standort, unter der Winter als mild gelten</translation>
  </message>
  <message>
   <source>chrysanthemum</source>
   <translation>Chrysantheme</translation>
  </message>
  <message>
   <source>citrus</source>
   <translation>Zitrus</translation>
  </message>
  <message>
   <source>class gaps shrink in short seasons: zone 4 and colder</source>
   <translation>Abstände der Gruppen schrumpfen in kurzen Saisons: Zone 4 und kälter</translation>
  </message>
  <message>
   <source>class gaps widen in mild winters: under 500 h of chill</source>
   <translation>Abstände der Gruppen wachsen in milden Wintern: unter 500 Kältestunden</translation>
  </message>
  <message>
   <source>clean dark green, keeps its leaves without spraying</source>
   <translation>reines Dunkelgrün, behält die Blätter ohne Spritzen</translation>
  </message>
  <message>
   <source>clean foliage</source>
   <translation>gesundes Laub</translation>
  </message>
  <message>
   <source>clear yellow</source>
   <translation>klares Gelb</translation>
  </message>
  <message>
   <source>climber</source>
   <translation>Kletterpflanze</translation>
  </message>
  <message>
   <source>clipped hedge</source>
   <translation>geschnittene Hecke</translation>
  </message>
  <message>
   <source>clump</source>
   <translation>Horst</translation>
  </message>
  <message>
   <source>clump, no runners</source>
   <translation>Horst, keine Ausläufer</translation>
  </message>
  <message>
   <source>cold-hardy Japanese plums are set by wild plum</source>
   <translation>winterharte japanische Pflaumen werden von Wildpflaumen befruchtet</translation>
  </message>
  <message>
   <source>colour turns, taste sweet and crisp</source>
   <translation>Farbumschlag, Geschmack süß und knackig</translation>
  </message>
  <message>
   <source>colour, and a slight give at the tip</source>
   <translation>Farbe, und die Spitze gibt leicht nach</translation>
  </message>
  <message>
   <source>coloured, tasted</source>
   <translation>gefärbt, gekostet</translation>
  </message>
  <message>
   <source>column</source>
   <translation>Säule</translation>
  </message>
  <message>
   <source>column tree</source>
   <translation>Säulenbaum</translation>
  </message>
  <message>
   <source>columnar</source>
   <translation>säulenförmig</translation>
  </message>
  <message>
   <source>columnar windbreak tree</source>
   <translation>säulenförmiger Windschutzbaum</translation>
  </message>
  <message>
   <source>comfrey</source>
   <translation>Beinwell</translation>
  </message>
  <message>
   <source>compact 2 ft</source>
   <translation>gedrungen, 60 cm</translation>
  </message>
  <message>
   <source>compact 2-3 ft</source>
   <translation>gedrungen, 60–90 cm</translation>
  </message>
  <message>
   <source>compact rounded</source>
   <translation>gedrungen rund</translation>
  </message>
  <message>
   <source>compact tree</source>
   <translation>gedrungener Baum</translation>
  </message>
  <message>
   <source>compact upright</source>
   <translation>gedrungen aufrecht</translation>
  </message>
  <message>
   <source>compact upright, 3-4 ft</source>
   <translation>gedrungen aufrecht, 0,9–1,2 m</translation>
  </message>
  <message>
   <source>compact, 1.5-4 ft</source>
   <translation>gedrungen, 0,5–1,2 m</translation>
  </message>
  <message>
   <source>compact, 3-4 ft</source>
   <translation>gedrungen, 0,9–1,2 m</translation>
  </message>
  <message>
   <source>compact, 4-6 ft</source>
   <translation>gedrungen, 1,2–1,8 m</translation>
  </message>
  <message>
   <source>cones strong</source>
   <translation>Zapfen duften stark</translation>
  </message>
  <message>
   <source>conical then rounded</source>
   <translation>erst kegelförmig, dann rund</translation>
  </message>
  <message>
   <source>conifer</source>
   <translation>Nadelbaum</translation>
  </message>
  <message>
   <source>container or tower</source>
   <translation>Kübel oder Turm</translation>
  </message>
  <message>
   <source>cordon</source>
   <translation>Schnurbaum</translation>
  </message>
  <message>
   <source>cordon (oblique, 45 degrees)</source>
   <translation>Schnurbaum (schräg, 45 Grad)</translation>
  </message>
  <message>
   <source>cordon (vertical)</source>
   <translation>Schnurbaum (senkrecht)</translation>
  </message>
  <message>
   <source>cordon, Quince C</source>
   <translation>Schnurbaum, Quince C</translation>
  </message>
  <message>
   <source>cornelian cherry</source>
   <translation>Kornelkirsche</translation>
  </message>
  <message>
   <source>crabapple</source>
   <translation>Zierapfel</translation>
  </message>
  <message>
   <source>cracked fruit rots</source>
   <translation>geplatzte Früchte faulen</translation>
  </message>
  <message>
   <source>cranberry</source>
   <translation>Moosbeere (Cranberry)</translation>
  </message>
  <message>
   <source>cream</source>
   <translation>cremefarben</translation>
  </message>
  <message>
   <source>cream flat heads</source>
   <translation>flache, cremefarbene Dolden</translation>
  </message>
  <message>
   <source>cream plume if allowed</source>
   <translation>cremefarbene Rispe, wenn man sie lässt</translation>
  </message>
  <message>
   <source>cream to greenish, hidden</source>
   <translation>cremefarben bis grünlich, verdeckt</translation>
  </message>
  <message>
   <source>cream, cup-shaped</source>
   <translation>cremefarben, schalenförmig</translation>
  </message>
  <message>
   <source>cream, hidden</source>
   <translation>cremefarben, verdeckt</translation>
  </message>
  <message>
   <source>cream-white</source>
   <translation>cremeweiß</translation>
  </message>
  <message>
   <source>creamy white flat heads, to 10 in</source>
   <translation>flache, cremeweiße Dolden, bis 25 cm</translation>
  </message>
  <message>
   <source>creeping mat</source>
   <translation>kriechende Matte</translation>
  </message>
  <message>
   <source>creeping, 6-24 in</source>
   <translation>kriechend, 15–60 cm</translation>
  </message>
  <message>
   <source>crimson</source>
   <translation>karminrot</translation>
  </message>
  <message>
   <source>crinkled red buds</source>
   <translation>krause rote Knospen</translation>
  </message>
  <message>
   <source>crooked</source>
   <translation>krumm</translation>
  </message>
  <message>
   <source>crooked frame</source>
   <translation>krummes Gerüst</translation>
  </message>
  <message>
   <source>crooked picturesque branches; downy twigs</source>
   <translation>malerisch krumme Äste; filzige Zweige</translation>
  </message>
  <message>
   <source>crossing and crowded wood</source>
   <translation>kreuzendes und dichtes Holz</translation>
  </message>
  <message>
   <source>crossing and dead wood</source>
   <translation>kreuzendes und totes Holz</translation>
  </message>
  <message>
   <source>crown</source>
   <translation>Wurzelstock</translation>
  </message>
  <message>
   <source>crown row</source>
   <translation>Kronenreihe</translation>
  </message>
  <message>
   <source>crowns die near [10-12 F] and frost lifts them</source>
   <translation>die Herzen sterben bei [10-12 F], und Frost hebt sie heraus</translation>
  </message>
  <message>
   <source>curculio or scab the year before</source>
   <translation>Rüsselkäfer oder Schorf im Vorjahr</translation>
  </message>
  <message>
   <source>curculio, codling moth</source>
   <translation>Rüsselkäfer, Apfelwickler</translation>
  </message>
  <message>
   <source>curculio, codling moth, apple maggot</source>
   <translation>Rüsselkäfer, Apfelwickler, Apfelfruchtfliege</translation>
  </message>
  <message>
   <source>currants by the whole strig at full colour; gooseberries green for cooking, soft for dessert</source>
   <translation>Johannisbeeren als ganze Traube bei voller Farbe; Stachelbeeren grün zum Kochen, weich zum Essen</translation>
  </message>
  <message>
   <source>cut new side shoots longer than [8 in] back to three leaves above the basal cluster</source>
   <translation>neue Seitentriebe über [8 in] auf drei Blätter über der Basisrosette zurückschneiden</translation>
  </message>
  <message>
   <source>cypress</source>
   <translation>Zypresse</translation>
  </message>
  <message>
   <source>cypress, Leyland</source>
   <translation>Leyland-Zypresse</translation>
  </message>
  <message>
   <source>damp and borers under the wrap</source>
   <translation>Feuchte und Bohrer unter dem Wickel</translation>
  </message>
  <message>
   <source>dark blue-green</source>
   <translation>dunkel blaugrün</translation>
  </message>
  <message>
   <source>dark green</source>
   <translation>dunkelgrün</translation>
  </message>
  <message>
   <source>dark green, aromatic</source>
   <translation>dunkelgrün, aromatisch</translation>
  </message>
  <message>
   <source>dark green, reddish veins</source>
   <translation>dunkelgrün, rötliche Adern</translation>
  </message>
  <message>
   <source>dark thorny twigs</source>
   <translation>dunkle, dornige Zweige</translation>
  </message>
  <message>
   <source>dark twigs with spurs</source>
   <translation>dunkle Zweige mit Fruchtspießen</translation>
  </message>
  <message>
   <source>day-neutral</source>
   <translation>tagneutral</translation>
  </message>
  <message>
   <source>dead and crossing wood</source>
   <translation>totes und kreuzendes Holz</translation>
  </message>
  <message>
   <source>dead bines</source>
   <translation>abgestorbene Ranken</translation>
  </message>
  <message>
   <source>deep green</source>
   <translation>tiefgrün</translation>
  </message>
  <message>
   <source>deep pink and white, large</source>
   <translation>tiefrosa und weiß, groß</translation>
  </message>
  <message>
   <source>deep pinkish red</source>
   <translation>tiefes Rosarot</translation>
  </message>
  <message>
   <source>dense dark green</source>
   <translation>dicht, dunkelgrün</translation>
  </message>
  <message>
   <source>dense green</source>
   <translation>dicht, grün</translation>
  </message>
  <message>
   <source>dense rounded</source>
   <translation>dicht rund</translation>
  </message>
  <message>
   <source>disease</source>
   <translation>Krankheiten</translation>
  </message>
  <message>
   <source>dogwood, flowering</source>
   <translation>Blüten-Hartriegel</translation>
  </message>
  <message>
   <source>dormant / inactive bud</source>
   <translation>ruhende Knospe</translation>
  </message>
  <message>
   <source>downy</source>
   <translation>filzig</translation>
  </message>
  <message>
   <source>downy mildew</source>
   <translation>Falscher Mehltau</translation>
  </message>
  <message>
   <source>drooping small tree</source>
   <translation>überhängender kleiner Baum</translation>
  </message>
  <message>
   <source>dry and papery, yellow powder inside</source>
   <translation>trocken und papierartig, innen gelbes Mehl</translation>
  </message>
  <message>
   <source>dry them in an airy place</source>
   <translation>luftig trocknen</translation>
  </message>
  <message>
   <source>drying kills</source>
   <translation>Austrocknen tötet</translation>
  </message>
  <message>
   <source>dull green-pink bells</source>
   <translation>mattgrün-rosa Glocken</translation>
  </message>
  <message>
   <source>dwarf</source>
   <translation>schwach</translation>
  </message>
  <message>
   <source>dwarf (quince)</source>
   <translation>schwach (Quitte)</translation>
  </message>
  <message>
   <source>dwarf globe, 2 ft</source>
   <translation>Zwergkugel, 60 cm</translation>
  </message>
  <message>
   <source>dwarf or bush</source>
   <translation>schwach oder Busch</translation>
  </message>
  <message>
   <source>dwarf slender spindle in a supported row</source>
   <translation>schwach, schlanke Spindel in gestützter Reihe</translation>
  </message>
  <message>
   <source>dwarf to semi-dwarf</source>
   <translation>schwach bis mittelstark</translation>
  </message>
  <message>
   <source>dwarf, 8-10 ft</source>
   <translation>Zwerg, 2,4–3 m</translation>
  </message>
  <message>
   <source>earlier fruit</source>
   <translation>frühere Früchte</translation>
  </message>
  <message>
   <source>earliest bees</source>
   <translation>früheste Bienen</translation>
  </message>
  <message>
   <source>early</source>
   <translation>früh</translation>
  </message>
  <message>
   <source>early (Aug)</source>
   <translation>früh (Aug.)</translation>
  </message>
  <message>
   <source>early (June)</source>
   <translation>früh (Juni)</translation>
  </message>
  <message>
   <source>early (early Sep)</source>
   <translation>früh (Anfang Sept.)</translation>
  </message>
  <message>
   <source>early (late Aug)</source>
   <translation>früh (Ende Aug.)</translation>
  </message>
  <message>
   <source>early (late Aug-early Sep)</source>
   <translation>früh (Ende Aug.–Anfang Sept.)</translation>
  </message>
  <message>
   <source>early (late May-Jun in N Florida)</source>
   <translation>früh (Ende Mai–Juni in Nordflorida)</translation>
  </message>
  <message>
   <source>early bees</source>
   <translation>frühe Bienen</translation>
  </message>
  <message>
   <source>early bees, butterflies, hummingbirds; birds</source>
   <translation>frühe Bienen, Schmetterlinge, Kolibris; Vögel</translation>
  </message>
  <message>
   <source>early bees; 40 or more birds on June fruit</source>
   <translation>frühe Bienen; 40 und mehr Vogelarten an den Junifrüchten</translation>
  </message>
  <message>
   <source>early bees; birds on red strings</source>
   <translation>frühe Bienen; Vögel an den roten Fruchtschnüren</translation>
  </message>
  <message>
   <source>early bees; butterflies</source>
   <translation>frühe Bienen; Schmetterlinge</translation>
  </message>
  <message>
   <source>early bees; nesting cover</source>
   <translation>frühe Bienen; Deckung für Nester</translation>
  </message>
  <message>
   <source>early fall</source>
   <translation>Frühherbst</translation>
  </message>
  <message>
   <source>early fall (mid-Aug)</source>
   <translation>Frühherbst (Mitte Aug.)</translation>
  </message>
  <message>
   <source>early fresh green</source>
   <translation>früh frisches Grün</translation>
  </message>
  <message>
   <source>early partner for the earliest kinds</source>
   <translation>früher Befruchter für die frühesten Sorten</translation>
  </message>
  <message>
   <source>early pink bud</source>
   <translation>frühe Rotknospe</translation>
  </message>
  <message>
   <source>early pollen; jays and squirrels</source>
   <translation>früher Pollen; Häher und Eichhörnchen</translation>
  </message>
  <message>
   <source>early summer</source>
   <translation>Frühsommer</translation>
  </message>
  <message>
   <source>early years</source>
   <translation>anfangs</translation>
  </message>
  <message>
   <source>early, large fruit</source>
   <translation>früh, große Früchte</translation>
  </message>
  <message>
   <source>early-mid</source>
   <translation>mittelfrüh</translation>
  </message>
  <message>
   <source>early-mid summer</source>
   <translation>Früh- bis Hochsommer</translation>
  </message>
  <message>
   <source>eastern filbert blight</source>
   <translation>Östlicher Haselkrebs</translation>
  </message>
  <message>
   <source>eastern red cedar</source>
   <translation>Virginischer Wacholder</translation>
  </message>
  <message>
   <source>eastern white pine</source>
   <translation>Weymouth-Kiefer</translation>
  </message>
  <message>
   <source>eaten only when soft</source>
   <translation>nur weich genießbar</translation>
  </message>
  <message>
   <source>edible hawthorn or rowan</source>
   <translation>Essbarer Weißdorn oder Eberesche</translation>
  </message>
  <message>
   <source>eggplant</source>
   <translation>Aubergine</translation>
  </message>
  <message>
   <source>eight or nine tenths of last year's wood comes off; American kinds 30 buds for the first pound cut off and 10 for each further, 60 at most</source>
   <translation>acht oder neun Zehntel des letztjährigen Holzes kommen weg; amerikanische Sorten: 30 Augen für das erste abgeschnittene Pfund und 10 für jedes weitere, höchstens 60</translation>
  </message>
  <message>
   <source>elder</source>
   <translation>Holunder</translation>
  </message>
  <message>
   <source>elderberry</source>
   <translation>Holunder</translation>
  </message>
  <message>
   <source>elemental sulfur</source>
   <translation>Elementarschwefel</translation>
  </message>
  <message>
   <source>elm</source>
   <translation>Ulme</translation>
  </message>
  <message>
   <source>elm, American</source>
   <translation>Amerikanische Ulme</translation>
  </message>
  <message>
   <source>english walnut</source>
   <translation>Walnuss</translation>
  </message>
  <message>
   <source>erect blackberry</source>
   <translation>Aufrechte Brombeere</translation>
  </message>
  <message>
   <source>erect canes</source>
   <translation>aufrechte Ruten</translation>
  </message>
  <message>
   <source>error of chill hours estimated from monthly temperatures: in the plant's favour</source>
   <translation>Fehler der aus Monatstemperaturen geschätzten Kältestunden: zugunsten der Pflanze</translation>
  </message>
  <message>
   <source>espalier</source>
   <translation>Spalier</translation>
  </message>
  <message>
   <source>espalier, 2-3 tiers, M26</source>
   <translation>Spalier, 2–3 Etagen, M26</translation>
  </message>
  <message>
   <source>espalier, 3+ tiers, MM106</source>
   <translation>Spalier, ab 3 Etagen, MM106</translation>
  </message>
  <message>
   <source>espalier, Quince A</source>
   <translation>Spalier, Quince A</translation>
  </message>
  <message>
   <source>european pear</source>
   <translation>Birne</translation>
  </message>
  <message>
   <source>european plum</source>
   <translation>Europäische Pflaume</translation>
  </message>
  <message>
   <source>even kinds called self-fruitful need a partner for steady crops</source>
   <translation>auch als selbstfruchtbar geltende Sorten brauchen für sichere Ernten einen Befruchter</translation>
  </message>
  <message>
   <source>everbearing</source>
   <translation>mehrmals tragend</translation>
  </message>
  <message>
   <source>evergreen ground cover</source>
   <translation>immergrüner Bodendecker</translation>
  </message>
  <message>
   <source>evergreen runner</source>
   <translation>immergrün, kriechend</translation>
  </message>
  <message>
   <source>evergreen screen</source>
   <translation>immergrüner Sichtschutz</translation>
  </message>
  <message>
   <source>evergreen shrub</source>
   <translation>immergrüner Strauch</translation>
  </message>
  <message>
   <source>evergreen shrub or tree</source>
   <translation>immergrüner Strauch oder Baum</translation>
  </message>
  <message>
   <source>evergreen tree</source>
   <translation>immergrüner Baum</translation>
  </message>
  <message>
   <source>every third year, and a season before planting</source>
   <translation>jedes dritte Jahr und eine Saison vor dem Pflanzen</translation>
  </message>
  <message>
   <source>every two to three years</source>
   <translation>alle zwei bis drei Jahre</translation>
  </message>
  <message>
   <source>every year where sulfur was given</source>
   <translation>jedes Jahr, wo Schwefel gegeben wurde</translation>
  </message>
  <message>
   <source>faint</source>
   <translation>schwach</translation>
  </message>
  <message>
   <source>faint, not pleasant close by</source>
   <translation>schwach, aus der Nähe unangenehm</translation>
  </message>
  <message>
   <source>fall</source>
   <translation>Herbst</translation>
  </message>
  <message>
   <source>fall (Sep to frost)</source>
   <translation>Herbst (Sept. bis Frost)</translation>
  </message>
  <message>
   <source>falls silver</source>
   <translation>fällt silbrig</translation>
  </message>
  <message>
   <source>fan</source>
   <translation>Fächer</translation>
  </message>
  <message>
   <source>fan on a shaded wall</source>
   <translation>Fächer an schattiger Wand</translation>
  </message>
  <message>
   <source>fan on a wall</source>
   <translation>Fächer an einer Wand</translation>
  </message>
  <message>
   <source>feijoa</source>
   <translation>Feijoa</translation>
  </message>
  <message>
   <source>female</source>
   <translation>weiblich</translation>
  </message>
  <message>
   <source>female (parthenocarpic)</source>
   <translation>weiblich (fruchtet ohne Bestäubung)</translation>
  </message>
  <message>
   <source>female and male pair sold</source>
   <translation>als weiblich-männliches Paar verkauft</translation>
  </message>
  <message>
   <source>female aroma</source>
   <translation>weiblich, Aromahopfen</translation>
  </message>
  <message>
   <source>female bittering</source>
   <translation>weiblich, Bitterhopfen</translation>
  </message>
  <message>
   <source>female dual dwarf</source>
   <translation>weiblich, Zweifachnutzung, Zwerg</translation>
  </message>
  <message>
   <source>few</source>
   <translation>wenige</translation>
  </message>
  <message>
   <source>few insects visit it</source>
   <translation>wenige Insekten besuchen sie</translation>
  </message>
  <message>
   <source>fiery orange</source>
   <translation>feuriges Orange</translation>
  </message>
  <message>
   <source>fig</source>
   <translation>Feige</translation>
  </message>
  <message>
   <source>fine evergreen</source>
   <translation>schönes Immergrün</translation>
  </message>
  <message>
   <source>fine-cut or broad green</source>
   <translation>fein geschlitzt oder breit, grün</translation>
  </message>
  <message>
   <source>fire blight</source>
   <translation>Feuerbrand</translation>
  </message>
  <message>
   <source>fire blight (raspberry)</source>
   <translation>Feuerbrand (Himbeere)</translation>
  </message>
  <message>
   <source>first bloom</source>
   <translation>Blühbeginn</translation>
  </message>
  <message>
   <source>first infections come with the first green</source>
   <translation>die ersten Infektionen kommen mit dem ersten Grün</translation>
  </message>
  <message>
   <source>first leaf</source>
   <translation>erstes Blatt</translation>
  </message>
  <message>
   <source>first pink</source>
   <translation>erste Rotknospe</translation>
  </message>
  <message>
   <source>first swell</source>
   <translation>erstes Anschwellen</translation>
  </message>
  <message>
   <source>first swelling</source>
   <translation>erstes Schwellen</translation>
  </message>
  <message>
   <source>first white</source>
   <translation>erstes Weiß</translation>
  </message>
  <message>
   <source>flies and beetles; zebra swallowtail larvae; mammals</source>
   <translation>Fliegen und Käfer; Raupen des Zebra-Schwalbenschwanzes; Säugetiere</translation>
  </message>
  <message>
   <source>floricane</source>
   <translation>sommertragend</translation>
  </message>
  <message>
   <source>floricane (small fall crop)</source>
   <translation>sommertragend (kleine Herbsternte)</translation>
  </message>
  <message>
   <source>floricane erect</source>
   <translation>sommertragend, aufrecht</translation>
  </message>
  <message>
   <source>floricane semi-erect</source>
   <translation>sommertragend, halbaufrecht</translation>
  </message>
  <message>
   <source>floricane trailing</source>
   <translation>sommertragend, rankend</translation>
  </message>
  <message>
   <source>fourth leaf</source>
   <translation>viertes Blatt</translation>
  </message>
  <message>
   <source>fragrant</source>
   <translation>duftend</translation>
  </message>
  <message>
   <source>fresh green</source>
   <translation>frisches Grün</translation>
  </message>
  <message>
   <source>from just before bloom; a third to half of last year's wood; keep pencil-thick shoots</source>
   <translation>ab kurz vor der Blüte; ein Drittel bis die Hälfte des letztjährigen Holzes; bleistiftstarke Triebe behalten</translation>
  </message>
  <message>
   <source>from shoots of [3-5 in] to four weeks after bloom, in wet weather</source>
   <translation>von [3-5 in] langen Trieben bis vier Wochen nach der Blüte, bei nassem Wetter</translation>
  </message>
  <message>
   <source>fruit about [1 in] wide; done within 40 days of bloom</source>
   <translation>Früchte etwa [1 in] dick; fertig binnen 40 Tagen nach der Blüte</translation>
  </message>
  <message>
   <source>fruit comes at the tips of new shoots</source>
   <translation>Früchte kommen an den Spitzen neuer Triebe</translation>
  </message>
  <message>
   <source>fruit comes on last year's shoots of young canes</source>
   <translation>Früchte kommen an letztjährigen Trieben junger Ruten</translation>
  </message>
  <message>
   <source>fruit comes on new shoots</source>
   <translation>Früchte kommen an neuen Trieben</translation>
  </message>
  <message>
   <source>fruit comes on new shoots from last year's canes</source>
   <translation>Früchte kommen an neuen Trieben aus letztjährigen Ruten</translation>
  </message>
  <message>
   <source>fruit comes on one-year wood and spurs</source>
   <translation>Früchte kommen an einjährigem Holz und Kurztrieben</translation>
  </message>
  <message>
   <source>fruit comes only on last year's shoots, and a late cut shows winter kill</source>
   <translation>Früchte kommen nur an letztjährigen Trieben, und später Schnitt zeigt Winterschäden</translation>
  </message>
  <message>
   <source>fruit for store is picked before it is ready to eat</source>
   <translation>Lagerobst wird vor der Genussreife gepflückt</translation>
  </message>
  <message>
   <source>fruit size and next year's flower buds</source>
   <translation>Fruchtgröße und Blütenknospen des nächsten Jahres</translation>
  </message>
  <message>
   <source>fruit strong</source>
   <translation>Früchte stark</translation>
  </message>
  <message>
   <source>full bloom</source>
   <translation>Vollblüte</translation>
  </message>
  <message>
   <source>full colour and sweet; leave the spurs</source>
   <translation>volle Farbe und süß; das Fruchtholz schonen</translation>
  </message>
  <message>
   <source>full colour with its bloom, a slight give</source>
   <translation>volle Farbe mit Reif, gibt leicht nach</translation>
  </message>
  <message>
   <source>full colour, soft, parts easily; two or three pickings</source>
   <translation>volle Farbe, weich, löst sich leicht; zwei oder drei Durchgänge</translation>
  </message>
  <message>
   <source>full flower and new fruit</source>
   <translation>volle Blüte und junge Frucht</translation>
  </message>
  <message>
   <source>full pink</source>
   <translation>volle Rotknospe</translation>
  </message>
  <message>
   <source>full swell</source>
   <translation>volles Anschwellen</translation>
  </message>
  <message>
   <source>full white</source>
   <translation>volles Weiß</translation>
  </message>
  <message>
   <source>fully black and dull, parts with its core</source>
   <translation>ganz schwarz und matt, löst sich mit dem Zapfen</translation>
  </message>
  <message>
   <source>fully coloured</source>
   <translation>voll gefärbt</translation>
  </message>
  <message>
   <source>fully coloured and tasted</source>
   <translation>voll gefärbt und gekostet</translation>
  </message>
  <message>
   <source>fully red</source>
   <translation>ganz rot</translation>
  </message>
  <message>
   <source>fully red, parts from the stem</source>
   <translation>ganz rot, löst sich vom Stiel</translation>
  </message>
  <message>
   <source>fuzzy kiwi</source>
   <translation>Kiwi</translation>
  </message>
  <message>
   <source>generic flowering perennials</source>
   <translation>Blühende Stauden allgemein</translation>
  </message>
  <message>
   <source>generic raised bed</source>
   <translation>Hochbeet allgemein</translation>
  </message>
  <message>
   <source>genetic dwarf</source>
   <translation>genetischer Zwerg</translation>
  </message>
  <message>
   <source>genetic-dwarf</source>
   <translation>genetischer Zwerg</translation>
  </message>
  <message>
   <source>genetic-dwarf or columnar</source>
   <translation>genetischer Zwerg oder Säule</translation>
  </message>
  <message>
   <source>globe artichoke</source>
   <translation>Artischocke</translation>
  </message>
  <message>
   <source>glossy</source>
   <translation>glänzend</translation>
  </message>
  <message>
   <source>glossy bark</source>
   <translation>glänzende Rinde</translation>
  </message>
  <message>
   <source>glossy dark green</source>
   <translation>glänzend dunkelgrün</translation>
  </message>
  <message>
   <source>glossy dark green, red stalks</source>
   <translation>glänzend dunkelgrün, rote Stiele</translation>
  </message>
  <message>
   <source>glossy evergreen</source>
   <translation>glänzend immergrün</translation>
  </message>
  <message>
   <source>glossy green</source>
   <translation>glänzend grün</translation>
  </message>
  <message>
   <source>glossy heart-shaped green</source>
   <translation>glänzend grün, herzförmig</translation>
  </message>
  <message>
   <source>glossy light green</source>
   <translation>glänzend hellgrün</translation>
  </message>
  <message>
   <source>gnarled outline with age</source>
   <translation>im Alter knorriger Umriss</translation>
  </message>
  <message>
   <source>goji</source>
   <translation>Goji</translation>
  </message>
  <message>
   <source>gold to red</source>
   <translation>gold bis rot</translation>
  </message>
  <message>
   <source>gold, orange and red</source>
   <translation>gold, orange und rot</translation>
  </message>
  <message>
   <source>golden fruit to New Year</source>
   <translation>goldene Früchte bis Neujahr</translation>
  </message>
  <message>
   <source>golden yellow trumpets, red centre</source>
   <translation>goldgelbe Trompeten, Mitte rot</translation>
  </message>
  <message>
   <source>gooseberry</source>
   <translation>Stachelbeere</translation>
  </message>
  <message>
   <source>grape</source>
   <translation>Weinrebe</translation>
  </message>
  <message>
   <source>grape (muscadine)</source>
   <translation>Muskadinrebe</translation>
  </message>
  <message>
   <source>grass takes water and nitrogen first</source>
   <translation>Gras nimmt Wasser und Stickstoff zuerst</translation>
  </message>
  <message>
   <source>greatest difference of chill need between partners at a mild site</source>
   <translation>größter Unterschied im Kältebedarf zwischen Befruchtern an einem milden Standort</translation>
  </message>
  <message>
   <source>green</source>
   <translation>grün</translation>
  </message>
  <message>
   <source>green cones</source>
   <translation>grüne Zapfen</translation>
  </message>
  <message>
   <source>green fruit</source>
   <translation>grüne Frucht</translation>
  </message>
  <message>
   <source>green or bronze</source>
   <translation>grün oder bronzefarben</translation>
  </message>
  <message>
   <source>green or bronze-red</source>
   <translation>grün oder bronzerot</translation>
  </message>
  <message>
   <source>green tip</source>
   <translation>grüne Spitze</translation>
  </message>
  <message>
   <source>green, aromatic</source>
   <translation>grün, aromatisch</translation>
  </message>
  <message>
   <source>green, early</source>
   <translation>grün, früh</translation>
  </message>
  <message>
   <source>green, white beneath</source>
   <translation>grün, unterseits weiß</translation>
  </message>
  <message>
   <source>greenish-cream</source>
   <translation>grünlich cremefarben</translation>
  </message>
  <message>
   <source>greenish-white to pinkish</source>
   <translation>grünlich weiß bis rosa überhaucht</translation>
  </message>
  <message>
   <source>greenish-yellow tassels</source>
   <translation>grünlich gelbe Quasten</translation>
  </message>
  <message>
   <source>grey bark</source>
   <translation>graue Rinde</translation>
  </message>
  <message>
   <source>grey stems</source>
   <translation>graue Stämme</translation>
  </message>
  <message>
   <source>grey-green</source>
   <translation>graugrün</translation>
  </message>
  <message>
   <source>grey-green, downy</source>
   <translation>graugrün, filzig</translation>
  </message>
  <message>
   <source>grey-green, downy beneath</source>
   <translation>graugrün, unterseits filzig</translation>
  </message>
  <message>
   <source>ground colour from green to yellow, brown seeds, a twist upward and it comes off</source>
   <translation>Grundfarbe von Grün zu Gelb, braune Kerne, beim Drehen nach oben löst sie sich</translation>
  </message>
  <message>
   <source>ground colour yellow (white kinds cream), a slight give</source>
   <translation>Grundfarbe gelb (weiße Sorten cremefarben), gibt leicht nach</translation>
  </message>
  <message>
   <source>ground cover</source>
   <translation>Bodendecker</translation>
  </message>
  <message>
   <source>ground-covering rosettes</source>
   <translation>bodendeckende Rosetten</translation>
  </message>
  <message>
   <source>half the pollen is refused and a garden list calls the pair unreliable</source>
   <translation>die Hälfte des Pollens wird abgewiesen, und eine Gartenliste nennt das Paar unzuverlässig</translation>
  </message>
  <message>
   <source>half the pollen works and some areas report a poor match of bloom</source>
   <translation>die Hälfte des Pollens wirkt, und manche Gegenden melden schlecht passende Blüte</translation>
  </message>
  <message>
   <source>half-high</source>
   <translation>halbhoch</translation>
  </message>
  <message>
   <source>half-high blueberry</source>
   <translation>Halbhohe Heidelbeere</translation>
  </message>
  <message>
   <source>half-inch green</source>
   <translation>Grün 1 cm</translation>
  </message>
  <message>
   <source>half-standard</source>
   <translation>Halbstamm</translation>
  </message>
  <message>
   <source>hand pollination set 53 % in a trial</source>
   <translation>Handbestäubung setzte in einem Versuch 53 % an</translation>
  </message>
  <message>
   <source>hand pollination set 57 to 71 % in two years</source>
   <translation>Handbestäubung setzte in zwei Jahren 57 bis 71 % an</translation>
  </message>
  <message>
   <source>hand pollination set 63 % in a trial</source>
   <translation>Handbestäubung setzte in einem Versuch 63 % an</translation>
  </message>
  <message>
   <source>hand pollination set 83 % in a trial</source>
   <translation>Handbestäubung setzte in einem Versuch 83 % an</translation>
  </message>
  <message>
   <source>hard cuts give soft shoots and fire blight</source>
   <translation>starker Schnitt gibt weiche Triebe und Feuerbrand</translation>
  </message>
  <message>
   <source>hardy kiwi</source>
   <translation>Minikiwi</translation>
  </message>
  <message>
   <source>hardy kiwi blooms later than arctic kiwi and is a poor match</source>
   <translation>Minikiwi blüht später als Amur-Kiwi und passt schlecht</translation>
  </message>
  <message>
   <source>hawthorn</source>
   <translation>Weißdorn</translation>
  </message>
  <message>
   <source>hawthorn or rowan</source>
   <translation>Weißdorn oder Eberesche</translation>
  </message>
  <message>
   <source>hazel</source>
   <translation>Hasel</translation>
  </message>
  <message>
   <source>hazelnut</source>
   <translation>Haselnuss</translation>
  </message>
  <message>
   <source>hedgerow</source>
   <translation>Hecke</translation>
  </message>
  <message>
   <source>hedgerow plums serve European plums when in bloom</source>
   <translation>Heckenpflaumen dienen Europäischen Pflaumen, wenn sie in Blüte sind</translation>
  </message>
  <message>
   <source>herb bed</source>
   <translation>Kräuterbeet</translation>
  </message>
  <message>
   <source>hickory</source>
   <translation>Hickory</translation>
  </message>
  <message>
   <source>highbush and lowbush blueberry</source>
   <translation>Kultur- und Waldheidelbeere</translation>
  </message>
  <message>
   <source>hill bed, 2-3 rows</source>
   <translation>Hügelbeet, 2–3 Reihen</translation>
  </message>
  <message>
   <source>hills</source>
   <translation>Horste</translation>
  </message>
  <message>
   <source>holly</source>
   <translation>Stechpalme</translation>
  </message>
  <message>
   <source>honeyberry</source>
   <translation>Honigbeere</translation>
  </message>
  <message>
   <source>honeyberry/haskap</source>
   <translation>Honigbeere</translation>
  </message>
  <message>
   <source>honeylocust</source>
   <translation>Gleditschie</translation>
  </message>
  <message>
   <source>hops</source>
   <translation>Hopfen</translation>
  </message>
  <message>
   <source>hornbeam</source>
   <translation>Hainbuche</translation>
  </message>
  <message>
   <source>hornbeam or beech hedge</source>
   <translation>Hainbuchen- oder Buchenhecke</translation>
  </message>
  <message>
   <source>horse chestnut</source>
   <translation>Rosskastanie</translation>
  </message>
  <message>
   <source>horseradish</source>
   <translation>Meerrettich</translation>
  </message>
  <message>
   <source>huge leaves, red stalks</source>
   <translation>riesige Blätter, rote Stiele</translation>
  </message>
  <message>
   <source>hybrid persimmon</source>
   <translation>Hybrid-Persimone</translation>
  </message>
  <message>
   <source>hybrid plum</source>
   <translation>Hybridpflaume</translation>
  </message>
  <message>
   <source>hybrids with good pollen are named for Japanese plums</source>
   <translation>Hybriden mit gutem Pollen werden für japanische Pflaumen genannt</translation>
  </message>
  <message>
   <source>if the soil is still above pH 5.5 three months after the first</source>
   <translation>wenn der Boden drei Monate nach der ersten noch über pH 5,5 liegt</translation>
  </message>
  <message>
   <source>if the soil is still too sweet three months after the first</source>
   <translation>wenn der Boden drei Monate nach der ersten noch zu basisch ist</translation>
  </message>
  <message>
   <source>if you wrapped in autumn</source>
   <translation>wenn im Herbst gewickelt wurde</translation>
  </message>
  <message>
   <source>immune</source>
   <translation>immun</translation>
  </message>
  <message>
   <source>in cool springs a partner is needed</source>
   <translation>in kühlen Frühjahren ist ein Befruchter nötig</translation>
  </message>
  <message>
   <source>in dry weather, [8-12 in] below what you can see</source>
   <translation>bei trockenem Wetter, [8-12 in] unter dem sichtbaren Befall</translation>
  </message>
  <message>
   <source>in pots and short summers</source>
   <translation>in Kübeln und kurzen Sommern</translation>
  </message>
  <message>
   <source>in the shuck</source>
   <translation>in der Blütenhülle</translation>
  </message>
  <message>
   <source>inconspicuous</source>
   <translation>unscheinbar</translation>
  </message>
  <message>
   <source>inconspicuous catkins</source>
   <translation>unscheinbare Kätzchen</translation>
  </message>
  <message>
   <source>inconspicuous, brownish</source>
   <translation>unscheinbar, bräunlich</translation>
  </message>
  <message>
   <source>iron sulfate</source>
   <translation>Eisensulfat</translation>
  </message>
  <message>
   <source>it always sets heavily</source>
   <translation>setzt immer stark an</translation>
  </message>
  <message>
   <source>it always sets too many</source>
   <translation>setzt immer zu viel an</translation>
  </message>
  <message>
   <source>it bleeds</source>
   <translation>blutet</translation>
  </message>
  <message>
   <source>it crops all summer</source>
   <translation>trägt den ganzen Sommer</translation>
  </message>
  <message>
   <source>it does not ripen later</source>
   <translation>reift nicht nach</translation>
  </message>
  <message>
   <source>it fills its place sooner</source>
   <translation>er füllt seinen Platz früher</translation>
  </message>
  <message>
   <source>it is the frost cover of bloom time</source>
   <translation>es ist der Frostschutz der Blütezeit</translation>
  </message>
  <message>
   <source>it keeps few days</source>
   <translation>hält wenige Tage</translation>
  </message>
  <message>
   <source>it looks ripe about ten days too soon</source>
   <translation>sie sieht etwa zehn Tage zu früh reif aus</translation>
  </message>
  <message>
   <source>it spreads down the wood</source>
   <translation>er breitet sich im Holz nach unten aus</translation>
  </message>
  <message>
   <source>its roots lie shallow</source>
   <translation>die Wurzeln liegen flach</translation>
  </message>
  <message>
   <source>japanese plum</source>
   <translation>Japanische Pflaume</translation>
  </message>
  <message>
   <source>jostaberry</source>
   <translation>Jostabeere</translation>
  </message>
  <message>
   <source>juglone tree</source>
   <translation>Baum mit Juglon</translation>
  </message>
  <message>
   <source>jujube</source>
   <translation>Jujube</translation>
  </message>
  <message>
   <source>juniper</source>
   <translation>Wacholder</translation>
  </message>
  <message>
   <source>just before bloom, or after harvest</source>
   <translation>kurz vor der Blüte oder nach der Ernte</translation>
  </message>
  <message>
   <source>just moist</source>
   <translation>nur eben feucht</translation>
  </message>
  <message>
   <source>kaki</source>
   <translation>Kaki</translation>
  </message>
  <message>
   <source>keep it [3-6 in] off the trunk, pull it back in autumn</source>
   <translation>[3-6 in] vom Stamm fernhalten, im Herbst zurückziehen</translation>
  </message>
  <message>
   <source>keep it a hand's breadth off the stems</source>
   <translation>eine Handbreit von den Trieben fernhalten</translation>
  </message>
  <message>
   <source>keep the lower two thirds; then do not cut to the ground in late winter</source>
   <translation>die unteren zwei Drittel behalten; dann im Spätwinter nicht bodeneben schneiden</translation>
  </message>
  <message>
   <source>keep three or four canes each of one, two and three years</source>
   <translation>je drei oder vier ein-, zwei- und dreijährige Triebe behalten</translation>
  </message>
  <message>
   <source>keeps moisture in, weeds and mowers out</source>
   <translation>hält Feuchte drin, Unkraut und Mäher fern</translation>
  </message>
  <message>
   <source>keeps trained forms small and fruitful</source>
   <translation>hält Formobst klein und fruchtbar</translation>
  </message>
  <message>
   <source>kept buds open later</source>
   <translation>die behaltenen Augen öffnen später</translation>
  </message>
  <message>
   <source>kiwi</source>
   <translation>Kiwi</translation>
  </message>
  <message>
   <source>large arching thicket, 5-12 ft</source>
   <translation>großes überhängendes Dickicht, 1,5–3,7 m</translation>
  </message>
  <message>
   <source>large black fruit persist</source>
   <translation>große schwarze Früchte bleiben hängen</translation>
  </message>
  <message>
   <source>large glossy</source>
   <translation>groß, glänzend</translation>
  </message>
  <message>
   <source>large glossy green</source>
   <translation>groß, glänzend grün</translation>
  </message>
  <message>
   <source>large glossy leaves</source>
   <translation>große glänzende Blätter</translation>
  </message>
  <message>
   <source>large leaves</source>
   <translation>große Blätter</translation>
  </message>
  <message>
   <source>large leaves, dark green, downy</source>
   <translation>große Blätter, dunkelgrün, filzig</translation>
  </message>
  <message>
   <source>large orange fruit</source>
   <translation>große orange Früchte</translation>
  </message>
  <message>
   <source>large spreading tree unless dwarfed</source>
   <translation>großer ausladender Baum, wenn die Unterlage ihn nicht bremst</translation>
  </message>
  <message>
   <source>large tree</source>
   <translation>großer Baum</translation>
  </message>
  <message>
   <source>large upright, 6-12 ft</source>
   <translation>groß aufrecht, 1,8–3,7 m</translation>
  </message>
  <message>
   <source>large vase</source>
   <translation>große Vase</translation>
  </message>
  <message>
   <source>large white, very profuse</source>
   <translation>groß, weiß, sehr reich</translation>
  </message>
  <message>
   <source>last year's shoots under [12 in]: [0.1 lb] of nitrogen for each [1 in] of trunk</source>
   <translation>Triebe des Vorjahres unter [12 in]: [0.1 lb] Stickstoff je [1 in] Stammdicke</translation>
  </message>
  <message>
   <source>last year's shoots under [24 in]</source>
   <translation>Triebe des Vorjahres unter [24 in]</translation>
  </message>
  <message>
   <source>late</source>
   <translation>spät</translation>
  </message>
  <message>
   <source>late (20 Jun-30 Jul in Alabama)</source>
   <translation>spät (20. Juni–30. Juli in Alabama)</translation>
  </message>
  <message>
   <source>late (Jul-Aug)</source>
   <translation>spät (Juli–Aug.)</translation>
  </message>
  <message>
   <source>late (early Sep)</source>
   <translation>spät (Anfang Sept.)</translation>
  </message>
  <message>
   <source>late (late Sep)</source>
   <translation>spät (Ende Sept.)</translation>
  </message>
  <message>
   <source>late (mid-Aug to mid-Sep)</source>
   <translation>spät (Mitte Aug. bis Mitte Sept.)</translation>
  </message>
  <message>
   <source>late June and July in Ohio</source>
   <translation>in Ohio Ende Juni und Juli</translation>
  </message>
  <message>
   <source>late Sep-Oct</source>
   <translation>Ende Sept.–Okt.</translation>
  </message>
  <message>
   <source>late against early bloom</source>
   <translation>späte gegen frühe Blüte</translation>
  </message>
  <message>
   <source>late pink bud</source>
   <translation>späte Rotknospe</translation>
  </message>
  <message>
   <source>late summer</source>
   <translation>Spätsommer</translation>
  </message>
  <message>
   <source>late; before Adams 2 in Missouri</source>
   <translation>spät; in Missouri vor Adams 2</translation>
  </message>
  <message>
   <source>lax arching shrub</source>
   <translation>locker überhängender Strauch</translation>
  </message>
  <message>
   <source>leader up to the next wire, side shoots level</source>
   <translation>Mitteltrieb zum nächsten Draht, Seitentriebe waagerecht</translation>
  </message>
  <message>
   <source>leaf curl</source>
   <translation>Kräuselkrankheit</translation>
  </message>
  <message>
   <source>leaf scent in heat</source>
   <translation>Blattduft bei Hitze</translation>
  </message>
  <message>
   <source>leaf scent strong</source>
   <translation>starker Blattduft</translation>
  </message>
  <message>
   <source>leaf scorch</source>
   <translation>Blattbräune</translation>
  </message>
  <message>
   <source>leaf spot strips the tree</source>
   <translation>Sprühflecken entlauben den Baum</translation>
  </message>
  <message>
   <source>leaves burn</source>
   <translation>Blätter verbrennen</translation>
  </message>
  <message>
   <source>leaves splashed white and pink, strongest on males</source>
   <translation>Blätter weiß und rosa gefleckt, am stärksten an männlichen Pflanzen</translation>
  </message>
  <message>
   <source>leaves turn mahogany-red in cold</source>
   <translation>Blätter werden in der Kälte mahagonirot</translation>
  </message>
  <message>
   <source>lemon</source>
   <translation>Zitrone</translation>
  </message>
  <message>
   <source>lemon, lime or kumquat</source>
   <translation>Zitrone, Limette oder Kumquat</translation>
  </message>
  <message>
   <source>less drying in winter</source>
   <translation>weniger Trockenschaden im Winter</translation>
  </message>
  <message>
   <source>less need to spray</source>
   <translation>weniger Spritzen nötig</translation>
  </message>
  <message>
   <source>less rot, more colour</source>
   <translation>weniger Fäulnis, mehr Farbe</translation>
  </message>
  <message>
   <source>less than [1 in] of rain in the week</source>
   <translation>weniger als [1 in] Regen in der Woche</translation>
  </message>
  <message>
   <source>less than [1 in] of rain in the week; as a rule of thumb [5-10 gal] a tree</source>
   <translation>weniger als [1 in] Regen in der Woche; Faustregel [5-10 gal] je Baum</translation>
  </message>
  <message>
   <source>let light in, keep one-year shoots</source>
   <translation>Licht hereinlassen, einjährige Triebe behalten</translation>
  </message>
  <message>
   <source>light</source>
   <translation>Licht</translation>
  </message>
  <message>
   <source>light and young wood</source>
   <translation>Licht und junges Holz</translation>
  </message>
  <message>
   <source>light green</source>
   <translation>hellgrün</translation>
  </message>
  <message>
   <source>light honey</source>
   <translation>leichter Honigduft</translation>
  </message>
  <message>
   <source>light in the middle</source>
   <translation>Licht in der Mitte</translation>
  </message>
  <message>
   <source>light scent</source>
   <translation>schwacher Duft</translation>
  </message>
  <message>
   <source>light to strong</source>
   <translation>schwach bis stark</translation>
  </message>
  <message>
   <source>light, fruit size and health</source>
   <translation>Licht, Fruchtgröße und Gesundheit</translation>
  </message>
  <message>
   <source>light, less mildew</source>
   <translation>Licht, weniger Mehltau</translation>
  </message>
  <message>
   <source>light, sweet</source>
   <translation>schwach, süß</translation>
  </message>
  <message>
   <source>light; fruit strongly fragrant</source>
   <translation>schwach; Früchte duften stark</translation>
  </message>
  <message>
   <source>lilac</source>
   <translation>Flieder</translation>
  </message>
  <message>
   <source>lily-of-the-valley scent</source>
   <translation>Duft nach Maiglöckchen</translation>
  </message>
  <message>
   <source>lime</source>
   <translation>Linde</translation>
  </message>
  <message>
   <source>lime and sulfur act slowly</source>
   <translation>Kalk und Schwefel wirken langsam</translation>
  </message>
  <message>
   <source>linden</source>
   <translation>Linde</translation>
  </message>
  <message>
   <source>linden, American</source>
   <translation>Amerikanische Linde</translation>
  </message>
  <message>
   <source>linden, littleleaf</source>
   <translation>Winterlinde</translation>
  </message>
  <message>
   <source>lingonberry</source>
   <translation>Preiselbeere</translation>
  </message>
  <message>
   <source>liquid feed at half strength, or slow release once</source>
   <translation>Flüssigdünger in halber Stärke oder einmal Langzeitdünger</translation>
  </message>
  <message>
   <source>listed as partner</source>
   <translation>als Befruchter gelistet</translation>
  </message>
  <message>
   <source>listed donor</source>
   <translation>gelisteter Spender</translation>
  </message>
  <message>
   <source>listed donor: late pollen for late flowers</source>
   <translation>gelisteter Spender: später Pollen für späte Blüten</translation>
  </message>
  <message>
   <source>listed partner</source>
   <translation>gelisteter Befruchter</translation>
  </message>
  <message>
   <source>listed partners</source>
   <translation>gelistete Befruchter</translation>
  </message>
  <message>
   <source>listed partners: the species cross freely when in bloom together</source>
   <translation>gelistete Befruchter: In gemeinsamer Blüte kreuzen sich die Arten leicht</translation>
  </message>
  <message>
   <source>little is needed on good soil</source>
   <translation>auf gutem Boden ist wenig nötig</translation>
  </message>
  <message>
   <source>little wood, many thinning cuts</source>
   <translation>wenig Holz, viele auslichtende Schnitte</translation>
  </message>
  <message>
   <source>lobed green</source>
   <translation>gelappt, grün</translation>
  </message>
  <message>
   <source>long glossy green</source>
   <translation>lang, glänzend grün</translation>
  </message>
  <message>
   <source>loquat</source>
   <translation>Wollmispel</translation>
  </message>
  <message>
   <source>low crooked spreading frame</source>
   <translation>niedriges, krummes, ausladendes Gerüst</translation>
  </message>
  <message>
   <source>low mound, 2 ft</source>
   <translation>niedrige Kuppel, 60 cm</translation>
  </message>
  <message>
   <source>low spreading</source>
   <translation>niedrig ausladend</translation>
  </message>
  <message>
   <source>low spreading small tree, wider than tall</source>
   <translation>niedriger, ausladender kleiner Baum, breiter als hoch</translation>
  </message>
  <message>
   <source>low, spreading, 3-4 ft</source>
   <translation>niedrig, ausladend, 0,9–1,2 m</translation>
  </message>
  <message>
   <source>low-chill partners in bloom together</source>
   <translation>Befruchter mit geringem Kältebedarf, gemeinsam in Blüte</translation>
  </message>
  <message>
   <source>low-chill partners that meet best with 400 to 500 h of chill</source>
   <translation>Befruchter mit geringem Kältebedarf, die sich bei 400 bis 500 Kältestunden am besten treffen</translation>
  </message>
  <message>
   <source>lowbush</source>
   <translation>niedrig</translation>
  </message>
  <message>
   <source>lowbush blueberry</source>
   <translation>Niedrige Heidelbeere</translation>
  </message>
  <message>
   <source>maggots of cherry fruit fly and spotted wing drosophila</source>
   <translation>Maden von Kirschfruchtfliege und Kirschessigfliege</translation>
  </message>
  <message>
   <source>maggots of spotted wing drosophila</source>
   <translation>Maden der Kirschessigfliege</translation>
  </message>
  <message>
   <source>male</source>
   <translation>männlich</translation>
  </message>
  <message>
   <source>maple</source>
   <translation>Ahorn</translation>
  </message>
  <message>
   <source>maple, Norway</source>
   <translation>Spitzahorn</translation>
  </message>
  <message>
   <source>maple, red</source>
   <translation>Rotahorn</translation>
  </message>
  <message>
   <source>maple, silver</source>
   <translation>Silberahorn</translation>
  </message>
  <message>
   <source>maple, sugar</source>
   <translation>Zuckerahorn</translation>
  </message>
  <message>
   <source>maroon, scarlet to orange</source>
   <translation>kastanienbraun, scharlachrot bis orange</translation>
  </message>
  <message>
   <source>maroon-purple to red</source>
   <translation>purpurbraun bis rot</translation>
  </message>
  <message>
   <source>maroon-purple, nodding, 1-2 in</source>
   <translation>purpurbraun, nickend, 2,5–5 cm</translation>
  </message>
  <message>
   <source>mason bees; late winter birds</source>
   <translation>Mauerbienen; Vögel im Spätwinter</translation>
  </message>
  <message>
   <source>mat</source>
   <translation>Matte</translation>
  </message>
  <message>
   <source>mat, 6-18 in</source>
   <translation>Matte, 15–45 cm</translation>
  </message>
  <message>
   <source>matted row</source>
   <translation>Mattenreihe</translation>
  </message>
  <message>
   <source>mean of the coldest month above which chill may fail</source>
   <translation>Mittel des kältesten Monats, über dem die Kälte ausbleiben kann</translation>
  </message>
  <message>
   <source>medlar</source>
   <translation>Mispel</translation>
  </message>
  <message>
   <source>melon</source>
   <translation>Melone</translation>
  </message>
  <message>
   <source>mesh of [0.25 in], a hand's breadth into the soil and above the snow</source>
   <translation>Gitter mit [0.25 in] Maschen, eine Handbreit in den Boden und über den Schnee</translation>
  </message>
  <message>
   <source>mid</source>
   <translation>mittel</translation>
  </message>
  <message>
   <source>mid (July)</source>
   <translation>mittel (Juli)</translation>
  </message>
  <message>
   <source>mid (June in N Florida)</source>
   <translation>mittel (Juni in Nordflorida)</translation>
  </message>
  <message>
   <source>mid (mid Aug)</source>
   <translation>mittel (Mitte Aug.)</translation>
  </message>
  <message>
   <source>mid (mid Aug-mid Sep)</source>
   <translation>mittel (Mitte Aug.–Mitte Sept.)</translation>
  </message>
  <message>
   <source>mid (reference)</source>
   <translation>mittel (Bezug)</translation>
  </message>
  <message>
   <source>mid green</source>
   <translation>mittelgrün</translation>
  </message>
  <message>
   <source>mid green, rounded</source>
   <translation>mittelgrün, rundlich</translation>
  </message>
  <message>
   <source>mid summer</source>
   <translation>Hochsommer</translation>
  </message>
  <message>
   <source>mid, 6 weeks</source>
   <translation>mittel, 6 Wochen</translation>
  </message>
  <message>
   <source>mid-early</source>
   <translation>mittelfrüh</translation>
  </message>
  <message>
   <source>mid-late</source>
   <translation>mittelspät</translation>
  </message>
  <message>
   <source>mid-late (late Jun-late Jul)</source>
   <translation>mittelspät (Ende Juni–Ende Juli)</translation>
  </message>
  <message>
   <source>mid-late (mid-late Sep)</source>
   <translation>mittelspät (Mitte–Ende Sept.)</translation>
  </message>
  <message>
   <source>mid-late summer</source>
   <translation>Hoch- bis Spätsommer</translation>
  </message>
  <message>
   <source>mid-late, long</source>
   <translation>mittelspät, lang</translation>
  </message>
  <message>
   <source>midsummer</source>
   <translation>Hochsommer</translation>
  </message>
  <message>
   <source>mint</source>
   <translation>Minze</translation>
  </message>
  <message>
   <source>moderate</source>
   <translation>mittel</translation>
  </message>
  <message>
   <source>moisture and weeds</source>
   <translation>Feuchte und Unkraut</translation>
  </message>
  <message>
   <source>more upright when young</source>
   <translation>in der Jugend aufrechter</translation>
  </message>
  <message>
   <source>most hybrid plums set other hybrids poorly</source>
   <translation>die meisten Hybridpflaumen befruchten andere Hybriden schlecht</translation>
  </message>
  <message>
   <source>most infections come then</source>
   <translation>dann kommen die meisten Infektionen</translation>
  </message>
  <message>
   <source>mountain ash</source>
   <translation>Eberesche</translation>
  </message>
  <message>
   <source>mulberry</source>
   <translation>Maulbeere</translation>
  </message>
  <message>
   <source>mulberry, white</source>
   <translation>Weiße Maulbeere</translation>
  </message>
  <message>
   <source>multi-stem bush</source>
   <translation>mehrtriebiger Busch</translation>
  </message>
  <message>
   <source>multi-stem small tree</source>
   <translation>mehrstämmiger kleiner Baum</translation>
  </message>
  <message>
   <source>mummy berry (fruit)</source>
   <translation>Fruchtmumien (Frucht)</translation>
  </message>
  <message>
   <source>mummy berry (shoot blight)</source>
   <translation>Fruchtmumien (Triebwelke)</translation>
  </message>
  <message>
   <source>mummy berry comes from them</source>
   <translation>von ihnen geht die Fruchtmumien-Krankheit aus</translation>
  </message>
  <message>
   <source>muscadine</source>
   <translation>Muskadinrebe</translation>
  </message>
  <message>
   <source>muscadine grape</source>
   <translation>Muskadinrebe</translation>
  </message>
  <message>
   <source>musky</source>
   <translation>moschusartig</translation>
  </message>
  <message>
   <source>n/a</source>
   <translation>entfällt</translation>
  </message>
  <message>
   <source>named as a good partner</source>
   <translation>als guter Befruchter genannt</translation>
  </message>
  <message>
   <source>named as donor for late Asian pears</source>
   <translation>als Spender für späte Nashi genannt</translation>
  </message>
  <message>
   <source>named as donor for late Asian pears in most years</source>
   <translation>in den meisten Jahren als Spender für späte Nashi genannt</translation>
  </message>
  <message>
   <source>named as pollen donor for Gala clones</source>
   <translation>als Pollenspender für Gala-Klone genannt</translation>
  </message>
  <message>
   <source>named exception: every allele of Golden Delicious is in Jonagold</source>
   <translation>benannte Ausnahme: Jedes Allel von Golden Delicious ist in Jonagold</translation>
  </message>
  <message>
   <source>named exception: every allele of Golden Delicious is in Mutsu</source>
   <translation>benannte Ausnahme: Jedes Allel von Golden Delicious ist in Mutsu</translation>
  </message>
  <message>
   <source>named incompatible pair</source>
   <translation>als unverträglich genanntes Paar</translation>
  </message>
  <message>
   <source>named only as perhaps a partner</source>
   <translation>nur als möglicher Befruchter genannt</translation>
  </message>
  <message>
   <source>nanking cherry</source>
   <translation>Filzkirsche</translation>
  </message>
  <message>
   <source>narrow forks split</source>
   <translation>enge Astwinkel reißen</translation>
  </message>
  <message>
   <source>narrow grey-green</source>
   <translation>schmal, graugrün</translation>
  </message>
  <message>
   <source>narrow upright</source>
   <translation>schmal aufrecht</translation>
  </message>
  <message>
   <source>narrow upright, ideal espalier</source>
   <translation>schmal aufrecht, ideal fürs Spalier</translation>
  </message>
  <message>
   <source>native bees; wildlife</source>
   <translation>heimische Bienen; wilde Tiere</translation>
  </message>
  <message>
   <source>natural dwarf, 6-12 ft</source>
   <translation>von Natur zwergig, 1,8–3,7 m</translation>
  </message>
  <message>
   <source>nearly</source>
   <translation>fast</translation>
  </message>
  <message>
   <source>neat spreading</source>
   <translation>zierlich ausladend</translation>
  </message>
  <message>
   <source>neat tufts</source>
   <translation>zierliche Büschel</translation>
  </message>
  <message>
   <source>nectarine</source>
   <translation>Nektarine</translation>
  </message>
  <message>
   <source>net only after the flowers are set</source>
   <translation>erst nach dem Ansatz einnetzen</translation>
  </message>
  <message>
   <source>never let the root ball dry; rain water where tap water is hard</source>
   <translation>den Ballen nie austrocknen lassen; Regenwasser, wo Leitungswasser hart ist</translation>
  </message>
  <message>
   <source>new crowns bear next year</source>
   <translation>neue Herzen tragen im nächsten Jahr</translation>
  </message>
  <message>
   <source>next year's crop hangs on them</source>
   <translation>an ihnen hängt die nächste Ernte</translation>
  </message>
  <message>
   <source>nights below [45 F]</source>
   <translation>Nächte unter [45 F]</translation>
  </message>
  <message>
   <source>nitrate and lime do harm</source>
   <translation>Nitrat und Kalk schaden</translation>
  </message>
  <message>
   <source>no</source>
   <translation>nein</translation>
  </message>
  <message>
   <source>no cuts from late summer to winter</source>
   <translation>keine Schnitte vom Spätsommer bis zum Winter</translation>
  </message>
  <message>
   <source>no remark up to here, trunk to trunk; pollen goes by bees</source>
   <translation>bis hierher ohne Bemerkung, von Stamm zu Stamm; Bienen tragen den Pollen</translation>
  </message>
  <message>
   <source>no remark up to here, trunk to trunk; pollen goes by flies and beetles</source>
   <translation>bis hierher ohne Bemerkung, von Stamm zu Stamm; Fliegen und Käfer tragen den Pollen</translation>
  </message>
  <message>
   <source>no remark up to here, trunk to trunk; pollen goes by wind</source>
   <translation>bis hierher ohne Bemerkung, von Stamm zu Stamm; der Wind trägt den Pollen</translation>
  </message>
  <message>
   <source>no soaking rain in the week</source>
   <translation>kein durchdringender Regen in der Woche</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keine</translation>
  </message>
  <message>
   <source>none (fruit drops)</source>
   <translation>keine (Früchte fallen)</translation>
  </message>
  <message>
   <source>none in the first two years</source>
   <translation>in den ersten zwei Jahren keine</translation>
  </message>
  <message>
   <source>none of note</source>
   <translation>keine nennenswerte</translation>
  </message>
  <message>
   <source>none visible (inside the fruit)</source>
   <translation>keine sichtbaren (im Inneren der Frucht)</translation>
  </message>
  <message>
   <source>none, cane-like</source>
   <translation>keine, rutenartig</translation>
  </message>
  <message>
   <source>northern highbush</source>
   <translation>nördliche Kulturheidelbeere</translation>
  </message>
  <message>
   <source>northern highbush blueberry</source>
   <translation>Nördliche Kulturheidelbeere</translation>
  </message>
  <message>
   <source>not counted beyond, trunk to trunk; pollen goes by bees</source>
   <translation>darüber nicht gezählt, von Stamm zu Stamm; Bienen tragen den Pollen</translation>
  </message>
  <message>
   <source>not counted beyond, trunk to trunk; pollen goes by flies and beetles</source>
   <translation>darüber nicht gezählt, von Stamm zu Stamm; Fliegen und Käfer tragen den Pollen</translation>
  </message>
  <message>
   <source>not counted beyond, trunk to trunk; pollen goes by wind</source>
   <translation>darüber nicht gezählt, von Stamm zu Stamm; der Wind trägt den Pollen</translation>
  </message>
  <message>
   <source>not deep on heavy wet soil, where root rot lives</source>
   <translation>nicht tief auf schwerem, nassem Boden, wo Wurzelfäule lebt</translation>
  </message>
  <message>
   <source>nothing older than three years stays</source>
   <translation>nichts bleibt älter als drei Jahre</translation>
  </message>
  <message>
   <source>nurseries differ on whether it sets alone: a wild plum or a proven donor makes sure</source>
   <translation>Baumschulen sind uneins, ob sie allein ansetzt: Eine Wildpflaume oder ein belegter Spender macht es sicher</translation>
  </message>
  <message>
   <source>oak</source>
   <translation>Eiche</translation>
  </message>
  <message>
   <source>oak, English</source>
   <translation>Stieleiche</translation>
  </message>
  <message>
   <source>oak, bur</source>
   <translation>Großfrüchtige Eiche</translation>
  </message>
  <message>
   <source>oak, northern red</source>
   <translation>Roteiche</translation>
  </message>
  <message>
   <source>oak, pin</source>
   <translation>Sumpfeiche</translation>
  </message>
  <message>
   <source>oak, white</source>
   <translation>Weißeiche</translation>
  </message>
  <message>
   <source>often semi-evergreen</source>
   <translation>oft halbimmergrün</translation>
  </message>
  <message>
   <source>okra</source>
   <translation>Okra</translation>
  </message>
  <message>
   <source>old lists name the pair as incompatible</source>
   <translation>alte Listen nennen das Paar unverträglich</translation>
  </message>
  <message>
   <source>older than 6-8 years</source>
   <translation>älter als 6–8 Jahre</translation>
  </message>
  <message>
   <source>olive</source>
   <translation>Olive</translation>
  </message>
  <message>
   <source>on a cloudy day</source>
   <translation>an einem trüben Tag</translation>
  </message>
  <message>
   <source>on a frame, edges closed, mesh under [0.2 in]</source>
   <translation>über ein Gestell, Ränder geschlossen, Maschen unter [0.2 in]</translation>
  </message>
  <message>
   <source>on the day you see it</source>
   <translation>an dem Tag, an dem Sie es sehen</translation>
  </message>
  <message>
   <source>on the morning-sun side</source>
   <translation>auf der Seite der Morgensonne</translation>
  </message>
  <message>
   <source>once nine leaves in ten are down, or before buds swell</source>
   <translation>wenn neun von zehn Blättern gefallen sind oder vor dem Knospenschwellen</translation>
  </message>
  <message>
   <source>one donor serves nine others; one in four where donors flower poorly, bloom differs or the site is exposed</source>
   <translation>ein Spender dient neun anderen; einer auf vier, wo Spender schlecht oder zu anderer Zeit blühen oder die Lage offen ist</translation>
  </message>
  <message>
   <source>one in every row, since bees work along rows</source>
   <translation>einer in jeder Reihe, denn Bienen arbeiten die Reihen entlang</translation>
  </message>
  <message>
   <source>one male serves 5 to 8 females; it stands upwind</source>
   <translation>eine männliche dient 5 bis 8 weiblichen; sie steht auf der Windseite</translation>
  </message>
  <message>
   <source>one male vine serves 6 to 8 females</source>
   <translation>eine männliche Pflanze dient 6 bis 8 weiblichen</translation>
  </message>
  <message>
   <source>one or two canes over six years old and weak twigs; keep 10-15 of mixed age</source>
   <translation>ein oder zwei Triebe über sechs Jahre und schwache Zweige; 10–15 gemischten Alters behalten</translation>
  </message>
  <message>
   <source>one partner serves 8 others</source>
   <translation>ein Befruchter dient 8 anderen</translation>
  </message>
  <message>
   <source>only a heavy set</source>
   <translation>nur bei starkem Ansatz</translation>
  </message>
  <message>
   <source>only when crescent scars were seen</source>
   <translation>nur wenn sichelförmige Narben gesehen wurden</translation>
  </message>
  <message>
   <source>only when the pest was seen</source>
   <translation>nur wenn der Schädling gesehen wurde</translation>
  </message>
  <message>
   <source>only when the pest was seen or trapped</source>
   <translation>nur wenn der Schädling gesehen oder gefangen wurde</translation>
  </message>
  <message>
   <source>open blossom</source>
   <translation>offene Blüte</translation>
  </message>
  <message>
   <source>open centre</source>
   <translation>Hohlkrone</translation>
  </message>
  <message>
   <source>open cluster</source>
   <translation>offenes Büschel</translation>
  </message>
  <message>
   <source>open flowers bear [28 F], young fruit [32 F]</source>
   <translation>offene Blüten vertragen [28 F], junge Früchte [32 F]</translation>
  </message>
  <message>
   <source>open flowers die first</source>
   <translation>offene Blüten sterben zuerst</translation>
  </message>
  <message>
   <source>open frame</source>
   <translation>offenes Gerüst</translation>
  </message>
  <message>
   <source>open rounded frame; late fruit may hang</source>
   <translation>offenes, rundes Gerüst; späte Früchte bleiben manchmal hängen</translation>
  </message>
  <message>
   <source>open spreading</source>
   <translation>offen ausladend</translation>
  </message>
  <message>
   <source>open vase</source>
   <translation>offene Vase</translation>
  </message>
  <message>
   <source>open vase, 8-15 ft</source>
   <translation>offene Vase, 2,4–4,6 m</translation>
  </message>
  <message>
   <source>or it becomes a thicket</source>
   <translation>sonst wird sie ein Dickicht</translation>
  </message>
  <message>
   <source>orange</source>
   <translation>orange</translation>
  </message>
  <message>
   <source>orange fruit after leaf fall; chequered bark (American)</source>
   <translation>orange Früchte nach dem Laubfall; gefelderte Rinde (Amerikanische)</translation>
  </message>
  <message>
   <source>orange fruit on bare wood</source>
   <translation>orange Früchte am kahlen Holz</translation>
  </message>
  <message>
   <source>orange rust</source>
   <translation>Orangerost</translation>
  </message>
  <message>
   <source>orange to crimson</source>
   <translation>orange bis karminrot</translation>
  </message>
  <message>
   <source>orange to deep red</source>
   <translation>orange bis tiefrot</translation>
  </message>
  <message>
   <source>orange to red</source>
   <translation>orange bis rot</translation>
  </message>
  <message>
   <source>orange to scarlet</source>
   <translation>orange bis scharlachrot</translation>
  </message>
  <message>
   <source>orange, mandarin or grapefruit</source>
   <translation>Orange, Mandarine oder Grapefruit</translation>
  </message>
  <message>
   <source>orange-red</source>
   <translation>orangerot</translation>
  </message>
  <message>
   <source>orange-red fruit into winter</source>
   <translation>orangerote Früchte bis in den Winter</translation>
  </message>
  <message>
   <source>orange-red fruit to midwinter</source>
   <translation>orangerote Früchte bis zur Wintermitte</translation>
  </message>
  <message>
   <source>orange-yellow</source>
   <translation>orangegelb</translation>
  </message>
  <message>
   <source>own-root</source>
   <translation>wurzelecht</translation>
  </message>
  <message>
   <source>own-root bush</source>
   <translation>wurzelechter Busch</translation>
  </message>
  <message>
   <source>pair named by the extension service</source>
   <translation>Paar von der Fachberatung genannt</translation>
  </message>
  <message>
   <source>pale canes</source>
   <translation>helle Ruten</translation>
  </message>
  <message>
   <source>pale pink</source>
   <translation>hellrosa</translation>
  </message>
  <message>
   <source>pale pink to white</source>
   <translation>hellrosa bis weiß</translation>
  </message>
  <message>
   <source>pale pink to white, large single</source>
   <translation>hellrosa bis weiß, groß, einfach</translation>
  </message>
  <message>
   <source>pale pink, 1.5 in</source>
   <translation>hellrosa, 4 cm</translation>
  </message>
  <message>
   <source>pale pink, swept-back petals</source>
   <translation>hellrosa, zurückgeschlagene Blütenblätter</translation>
  </message>
  <message>
   <source>pale yellow</source>
   <translation>hellgelb</translation>
  </message>
  <message>
   <source>pale yellow funnels in pairs</source>
   <translation>hellgelbe Trichter, zu zweit</translation>
  </message>
  <message>
   <source>passion fruit</source>
   <translation>Passionsfrucht</translation>
  </message>
  <message>
   <source>pawpaw</source>
   <translation>Pawpaw</translation>
  </message>
  <message>
   <source>peach</source>
   <translation>Pfirsich</translation>
  </message>
  <message>
   <source>pear</source>
   <translation>Birne</translation>
  </message>
  <message>
   <source>pear tree, old</source>
   <translation>Birnbaum, alt</translation>
  </message>
  <message>
   <source>pear, callery</source>
   <translation>Chinesische Wildbirne</translation>
  </message>
  <message>
   <source>pears die of it fastest</source>
   <translation>Birnen sterben daran am schnellsten</translation>
  </message>
  <message>
   <source>pecan</source>
   <translation>Pekannuss</translation>
  </message>
  <message>
   <source>peeling bark</source>
   <translation>abblätternde Rinde</translation>
  </message>
  <message>
   <source>peeling bark on trunk</source>
   <translation>abblätternde Rinde am Stamm</translation>
  </message>
  <message>
   <source>peeling tan bark</source>
   <translation>abblätternde gelbbraune Rinde</translation>
  </message>
  <message>
   <source>pepper</source>
   <translation>Paprika</translation>
  </message>
  <message>
   <source>perennial bed</source>
   <translation>Staudenbeet</translation>
  </message>
  <message>
   <source>perennial canker</source>
   <translation>Rindenkrebs (Valsa)</translation>
  </message>
  <message>
   <source>perennial flowers</source>
   <translation>Stauden</translation>
  </message>
  <message>
   <source>perfect-flowered</source>
   <translation>zwittrig</translation>
  </message>
  <message>
   <source>perfect-flowered vines make up at least an eighth of the planting</source>
   <translation>zwittrige Reben machen mindestens ein Achtel der Pflanzung aus</translation>
  </message>
  <message>
   <source>perpendicular V in a row</source>
   <translation>senkrechtes V in einer Reihe</translation>
  </message>
  <message>
   <source>persimmon</source>
   <translation>Persimone</translation>
  </message>
  <message>
   <source>persistent fruit into winter on many</source>
   <translation>bei vielen bleiben die Früchte bis in den Winter</translation>
  </message>
  <message>
   <source>petal fall / green fruit</source>
   <translation>Blütenende / grüne Frucht</translation>
  </message>
  <message>
   <source>phytophthora crown rot</source>
   <translation>Rhizomfäule (Phytophthora)</translation>
  </message>
  <message>
   <source>phytophthora root rot</source>
   <translation>Wurzelfäule (Phytophthora)</translation>
  </message>
  <message>
   <source>pine</source>
   <translation>Kiefer</translation>
  </message>
  <message>
   <source>pine, Austrian</source>
   <translation>Schwarzkiefer</translation>
  </message>
  <message>
   <source>pine, Scots</source>
   <translation>Waldkiefer</translation>
  </message>
  <message>
   <source>pine, eastern white</source>
   <translation>Weymouthskiefer</translation>
  </message>
  <message>
   <source>pine, ponderosa</source>
   <translation>Gelbkiefer</translation>
  </message>
  <message>
   <source>pink</source>
   <translation>rosa</translation>
  </message>
  <message>
   <source>pink (large showy or small)</source>
   <translation>rosa (groß und auffällig oder klein)</translation>
  </message>
  <message>
   <source>pink and white variegation</source>
   <translation>rosa und weiß gescheckt</translation>
  </message>
  <message>
   <source>pink buds opening pale pink to white</source>
   <translation>rosa Knospen, öffnen hellrosa bis weiß</translation>
  </message>
  <message>
   <source>pink, showy</source>
   <translation>rosa, auffällig</translation>
  </message>
  <message>
   <source>pinkish</source>
   <translation>rosa überhaucht</translation>
  </message>
  <message>
   <source>pinkish or downy shoots</source>
   <translation>rosa überhauchte oder filzige Triebe</translation>
  </message>
  <message>
   <source>planted together at four to one</source>
   <translation>vier zu eins zusammen gepflanzt</translation>
  </message>
  <message>
   <source>plum</source>
   <translation>Pflaume</translation>
  </message>
  <message>
   <source>plum wood splits</source>
   <translation>Pflaumenholz bricht leicht</translation>
  </message>
  <message>
   <source>plum, cherry plum</source>
   <translation>Kirschpflaume</translation>
  </message>
  <message>
   <source>plum, wild</source>
   <translation>Wildpflaume</translation>
  </message>
  <message>
   <source>pollen of another variety, with a soft brush</source>
   <translation>Pollen einer anderen Sorte, mit einem weichen Pinsel</translation>
  </message>
  <message>
   <source>pomegranate</source>
   <translation>Granatapfel</translation>
  </message>
  <message>
   <source>popcorn</source>
   <translation>Ballonstadium</translation>
  </message>
  <message>
   <source>poplar</source>
   <translation>Pappel</translation>
  </message>
  <message>
   <source>poplar, Lombardy</source>
   <translation>Pyramidenpappel</translation>
  </message>
  <message>
   <source>post bloom</source>
   <translation>nach der Blüte</translation>
  </message>
  <message>
   <source>potato</source>
   <translation>Kartoffel</translation>
  </message>
  <message>
   <source>powdery mildew</source>
   <translation>Echter Mehltau</translation>
  </message>
  <message>
   <source>primocane</source>
   <translation>herbsttragend</translation>
  </message>
  <message>
   <source>primocane erect</source>
   <translation>herbsttragend, aufrecht</translation>
  </message>
  <message>
   <source>pruned standard</source>
   <translation>Hochstamm, geschnitten</translation>
  </message>
  <message>
   <source>pure white from pink buds</source>
   <translation>reinweiß aus rosa Knospen</translation>
  </message>
  <message>
   <source>purple bloomed canes</source>
   <translation>purpurne, bereifte Ruten</translation>
  </message>
  <message>
   <source>purple raspberry</source>
   <translation>Violette Himbeere</translation>
  </message>
  <message>
   <source>purple-bronze to red</source>
   <translation>purpurbronze bis rot</translation>
  </message>
  <message>
   <source>purple-green shoots</source>
   <translation>purpurgrüne Triebe</translation>
  </message>
  <message>
   <source>purple-red tints</source>
   <translation>purpurrote Töne</translation>
  </message>
  <message>
   <source>purple-red, some leaves held</source>
   <translation>purpurrot, einige Blätter bleiben</translation>
  </message>
  <message>
   <source>pyramidal to rounded, suckering grove</source>
   <translation>kegelförmig bis rund, bildet durch Ausläufer Haine</translation>
  </message>
  <message>
   <source>quince</source>
   <translation>Quitte</translation>
  </message>
  <message>
   <source>quince rust</source>
   <translation>Quittenrost</translation>
  </message>
  <message>
   <source>rabbiteye</source>
   <translation>Rabbiteye</translation>
  </message>
  <message>
   <source>rabbiteye blueberry</source>
   <translation>Rabbiteye-Heidelbeere</translation>
  </message>
  <message>
   <source>rabbiteye pollen sets fruit on southern highbush but with fewer seeds</source>
   <translation>Rabbiteye-Pollen befruchtet südliche Kulturheidelbeeren, aber mit weniger Samen</translation>
  </message>
  <message>
   <source>rarely</source>
   <translation>selten</translation>
  </message>
  <message>
   <source>raspberry</source>
   <translation>Himbeere</translation>
  </message>
  <message>
   <source>raspberry bushy dwarf virus</source>
   <translation>Himbeerverzwergungsvirus</translation>
  </message>
  <message>
   <source>raspberry mosaic</source>
   <translation>Himbeermosaik</translation>
  </message>
  <message>
   <source>rated fair on 24 kinds in a trial</source>
   <translation>in einem Versuch an 24 Sorten mäßig bewertet</translation>
  </message>
  <message>
   <source>rated good on 12 kinds in a trial</source>
   <translation>in einem Versuch an 12 Sorten gut bewertet</translation>
  </message>
  <message>
   <source>rated good on 22 kinds in a trial; prairie advice doubts hybrids as donors for hybrids</source>
   <translation>in einem Versuch an 22 Sorten gut bewertet; Rat aus der Prärie zweifelt an Hybriden als Spender für Hybriden</translation>
  </message>
  <message>
   <source>rated good on 27 kinds in a trial</source>
   <translation>in einem Versuch an 27 Sorten gut bewertet</translation>
  </message>
  <message>
   <source>recommended</source>
   <translation>empfohlen</translation>
  </message>
  <message>
   <source>red</source>
   <translation>rot</translation>
  </message>
  <message>
   <source>red (orange in places)</source>
   <translation>rot (stellenweise orange)</translation>
  </message>
  <message>
   <source>red berries against green</source>
   <translation>rote Beeren vor Grün</translation>
  </message>
  <message>
   <source>red cedar</source>
   <translation>Rotzeder</translation>
  </message>
  <message>
   <source>red currant</source>
   <translation>Rote Johannisbeere</translation>
  </message>
  <message>
   <source>red fruit persists</source>
   <translation>rote Früchte bleiben hängen</translation>
  </message>
  <message>
   <source>red maple</source>
   <translation>Rot-Ahorn</translation>
  </message>
  <message>
   <source>red or yellow young stems</source>
   <translation>junge Stängel rot oder gelb</translation>
  </message>
  <message>
   <source>red raspberry</source>
   <translation>Himbeere</translation>
  </message>
  <message>
   <source>red sport refused by its parent</source>
   <translation>rote Mutante, von der Muttersorte abgewiesen</translation>
  </message>
  <message>
   <source>red stele</source>
   <translation>Rote Wurzelfäule</translation>
  </message>
  <message>
   <source>red tints</source>
   <translation>rote Töne</translation>
  </message>
  <message>
   <source>red tints on old leaves</source>
   <translation>rote Töne an alten Blättern</translation>
  </message>
  <message>
   <source>red to burgundy</source>
   <translation>rot bis weinrot</translation>
  </message>
  <message>
   <source>red to orange, late</source>
   <translation>rot bis orange, spät</translation>
  </message>
  <message>
   <source>red twigs</source>
   <translation>rote Zweige</translation>
  </message>
  <message>
   <source>red-burgundy</source>
   <translation>weinrot, rötlich</translation>
  </message>
  <message>
   <source>red-green</source>
   <translation>rotgrün</translation>
  </message>
  <message>
   <source>red-green canes</source>
   <translation>rotgrüne Ruten</translation>
  </message>
  <message>
   <source>red-maroon</source>
   <translation>rötlich kastanienbraun</translation>
  </message>
  <message>
   <source>red-orange to yellow</source>
   <translation>rotorange bis gelb</translation>
  </message>
  <message>
   <source>red-purple</source>
   <translation>rotpurpurn</translation>
  </message>
  <message>
   <source>redbud</source>
   <translation>Judasbaum</translation>
  </message>
  <message>
   <source>reddish stems</source>
   <translation>rötliche Stängel</translation>
  </message>
  <message>
   <source>reddish twigs</source>
   <translation>rötliche Zweige</translation>
  </message>
  <message>
   <source>reddish winter twigs</source>
   <translation>rötliches Winterholz</translation>
  </message>
  <message>
   <source>reddish-orange fruit after leaf fall</source>
   <translation>rötlich orange Früchte nach dem Laubfall</translation>
  </message>
  <message>
   <source>required</source>
   <translation>nötig</translation>
  </message>
  <message>
   <source>resistant</source>
   <translation>widerstandsfähig</translation>
  </message>
  <message>
   <source>rhododendron</source>
   <translation>Rhododendron</translation>
  </message>
  <message>
   <source>rhubarb</source>
   <translation>Rhabarber</translation>
  </message>
  <message>
   <source>ripe ones drop</source>
   <translation>reife fallen ab</translation>
  </message>
  <message>
   <source>ripened on the tree they rot from the core</source>
   <translation>am Baum gereift faulen sie vom Kernhaus her</translation>
  </message>
  <message>
   <source>roots and frame come first</source>
   <translation>erst kommen Wurzeln und Gerüst</translation>
  </message>
  <message>
   <source>roots are about two zones tenderer than tops</source>
   <translation>Wurzeln sind etwa zwei Zonen empfindlicher als die Triebe</translation>
  </message>
  <message>
   <source>roots are still small</source>
   <translation>die Wurzeln sind noch klein</translation>
  </message>
  <message>
   <source>roots first: cropping in the first two years costs a fifth to nearly half of the third crop</source>
   <translation>erst die Wurzeln: Ernten in den ersten zwei Jahren kosten ein Fünftel bis fast die Hälfte der dritten</translation>
  </message>
  <message>
   <source>rose</source>
   <translation>Rose</translation>
  </message>
  <message>
   <source>rose red</source>
   <translation>rosenrot</translation>
  </message>
  <message>
   <source>rosette (double blossom)</source>
   <translation>Rosettenkrankheit (Doppelblüte)</translation>
  </message>
  <message>
   <source>rot and spotted wing drosophila</source>
   <translation>Fäulnis und Kirschessigfliege</translation>
  </message>
  <message>
   <source>rough lobed green</source>
   <translation>rau, gelappt, grün</translation>
  </message>
  <message>
   <source>rounded</source>
   <translation>gerundet</translation>
  </message>
  <message>
   <source>rounded blue-green</source>
   <translation>rundlich, blaugrün</translation>
  </message>
  <message>
   <source>rounded bush</source>
   <translation>runder Busch</translation>
  </message>
  <message>
   <source>rounded bush, 4-6 ft</source>
   <translation>runder Busch, 1,2–1,8 m</translation>
  </message>
  <message>
   <source>rounded bush, about 6 ft</source>
   <translation>runder Busch, etwa 1,8 m</translation>
  </message>
  <message>
   <source>rounded small tree</source>
   <translation>runder kleiner Baum</translation>
  </message>
  <message>
   <source>rounded small tree, easily trained as espalier or cordon</source>
   <translation>runder kleiner Baum, leicht als Spalier oder Schnurbaum zu ziehen</translation>
  </message>
  <message>
   <source>rounded, 12-20 ft</source>
   <translation>rund, 3,7–6 m</translation>
  </message>
  <message>
   <source>rounded, 15-20 ft</source>
   <translation>rund, 4,6–6 m</translation>
  </message>
  <message>
   <source>rounded, upright or weeping</source>
   <translation>rund, aufrecht oder hängend</translation>
  </message>
  <message>
   <source>rowan</source>
   <translation>Vogelbeere</translation>
  </message>
  <message>
   <source>runners and roots first</source>
   <translation>erst Ausläufer und Wurzeln</translation>
  </message>
  <message>
   <source>same as Northblue</source>
   <translation>wie Northblue</translation>
  </message>
  <message>
   <source>same early bloom</source>
   <translation>gleich frühe Blüte</translation>
  </message>
  <message>
   <source>same flowering group and listed as partners</source>
   <translation>gleiche Blütezeitgruppe und als Befruchter gelistet</translation>
  </message>
  <message>
   <source>saskatoon</source>
   <translation>Erlenblättrige Felsenbirne</translation>
  </message>
  <message>
   <source>scab and leaf spot spend the winter in them</source>
   <translation>Schorf und Blattflecken überwintern darin</translation>
  </message>
  <message>
   <source>scales separating</source>
   <translation>Schuppen öffnen sich</translation>
  </message>
  <message>
   <source>scarlet</source>
   <translation>scharlachrot</translation>
  </message>
  <message>
   <source>scatter of the last frost date where only the even-odds date is known</source>
   <translation>Streuung des letzten Frosts, wo nur das Datum für jedes zweite Jahr bekannt ist</translation>
  </message>
  <message>
   <source>scatter of the shared days from year to year; gives Lapins and Regina under 3 days in 3 years of 10 as recorded</source>
   <translation>Streuung der gemeinsamen Tage von Jahr zu Jahr; ergibt für Lapins und Regina unter 3 Tagen in 3 von 10 Jahren wie aufgezeichnet</translation>
  </message>
  <message>
   <source>sea buckthorn</source>
   <translation>Sanddorn</translation>
  </message>
  <message>
   <source>second leaf</source>
   <translation>zweites Blatt</translation>
  </message>
  <message>
   <source>semi-dwarf</source>
   <translation>mittelstark</translation>
  </message>
  <message>
   <source>semi-dwarf (small)</source>
   <translation>mittelstark (klein)</translation>
  </message>
  <message>
   <source>semi-dwarf to standard</source>
   <translation>mittelstark bis stark</translation>
  </message>
  <message>
   <source>semi-erect blackberry</source>
   <translation>Halbaufrechte Brombeere</translation>
  </message>
  <message>
   <source>semi-evergreen</source>
   <translation>halbimmergrün</translation>
  </message>
  <message>
   <source>semi-evergreen in mild winters</source>
   <translation>in milden Wintern halbimmergrün</translation>
  </message>
  <message>
   <source>semi-evergreen mat</source>
   <translation>halbimmergrüne Matte</translation>
  </message>
  <message>
   <source>semi-standard</source>
   <translation>mittelstark bis stark</translation>
  </message>
  <message>
   <source>semi-vigorous (UK); vigorous (irrigated US)</source>
   <translation>mittelstark (UK); stark (USA, bewässert)</translation>
  </message>
  <message>
   <source>serviceberry</source>
   <translation>Felsenbirne</translation>
  </message>
  <message>
   <source>serviceberry (shrub form)</source>
   <translation>Felsenbirne (Strauch)</translation>
  </message>
  <message>
   <source>several pickings</source>
   <translation>mehrere Durchgänge</translation>
  </message>
  <message>
   <source>shade first</source>
   <translation>zuerst in den Schatten</translation>
  </message>
  <message>
   <source>shade tree</source>
   <translation>Schattenbaum</translation>
  </message>
  <message>
   <source>shade tree, large</source>
   <translation>Laubbaum, groß</translation>
  </message>
  <message>
   <source>shade tree, medium</source>
   <translation>Laubbaum, mittel</translation>
  </message>
  <message>
   <source>shade tree, small</source>
   <translation>Laubbaum, klein</translation>
  </message>
  <message>
   <source>shaggy twining stems</source>
   <translation>zottige, windende Stämme</translation>
  </message>
  <message>
   <source>shallow roots</source>
   <translation>flache Wurzeln</translation>
  </message>
  <message>
   <source>share of its chill need that a plant should get</source>
   <translation>Anteil ihres Kältebedarfs, den eine Pflanze bekommen sollte</translation>
  </message>
  <message>
   <source>share of years with killing frost at full bloom that earns a caution</source>
   <translation>Anteil der Jahre mit Frostschaden zur Vollblüte, der eine Warnung verdient</translation>
  </message>
  <message>
   <source>share of years with killing frost at full bloom that is mentioned</source>
   <translation>Anteil der Jahre mit Frostschaden zur Vollblüte, der erwähnt wird</translation>
  </message>
  <message>
   <source>shared bloom in at least this share of years is called usual</source>
   <translation>gemeinsame Blüte in mindestens diesem Anteil der Jahre heißt üblich</translation>
  </message>
  <message>
   <source>shared bloom in fewer years is called rare and not counted</source>
   <translation>gemeinsame Blüte in weniger Jahren heißt selten und zählt nicht</translation>
  </message>
  <message>
   <source>shared bloom that a good set asks for: pollination works for a few days only</source>
   <translation>gemeinsame Blüte für guten Ansatz: Bestäubung gelingt nur wenige Tage lang</translation>
  </message>
  <message>
   <source>shiny ringed bark</source>
   <translation>glänzende, geringelte Rinde</translation>
  </message>
  <message>
   <source>shoots die near [30 F]</source>
   <translation>Triebe sterben bei etwa [30 F]</translation>
  </message>
  <message>
   <source>shoots under [10 in] on a bearing tree, [16 in] on a young one: [0.125 lb] of nitrogen for each [1 in] of trunk</source>
   <translation>Triebe unter [10 in] am tragenden, [16 in] am jungen Baum: [0.125 lb] Stickstoff je [1 in] Stammdicke</translation>
  </message>
  <message>
   <source>shoots under [6 in] on a bearing tree, [12 in] on a young one: [0.1 lb] of nitrogen for each [1 in] of trunk; skip it where fire blight was seen</source>
   <translation>Triebe unter [6 in] am tragenden, [12 in] am jungen Baum: [0.1 lb] Stickstoff je [1 in] Stammdicke; weglassen, wo Feuerbrand gesehen wurde</translation>
  </message>
  <message>
   <source>shorten beyond the last fruit to 3-6 leaves; males after bloom</source>
   <translation>hinter der letzten Frucht auf 3–6 Blätter einkürzen; männliche nach der Blüte</translation>
  </message>
  <message>
   <source>shorten leaders at bud swell</source>
   <translation>Leittriebe beim Knospenschwellen einkürzen</translation>
  </message>
  <message>
   <source>shrub</source>
   <translation>Strauch</translation>
  </message>
  <message>
   <source>shrub/vine</source>
   <translation>Strauch/Rebe</translation>
  </message>
  <message>
   <source>side branches bear the fruit</source>
   <translation>Seitentriebe tragen die Früchte</translation>
  </message>
  <message>
   <source>side green</source>
   <translation>Seite grün</translation>
  </message>
  <message>
   <source>side white</source>
   <translation>Seite weiß</translation>
  </message>
  <message>
   <source>silver leaf and canker enter winter cuts</source>
   <translation>Bleiglanz und Krebs dringen in Winterschnitte ein</translation>
  </message>
  <message>
   <source>silver maple</source>
   <translation>Silber-Ahorn</translation>
  </message>
  <message>
   <source>silver tip</source>
   <translation>silberne Spitze</translation>
  </message>
  <message>
   <source>silver-grey willow leaves</source>
   <translation>silbergraue Weidenblätter</translation>
  </message>
  <message>
   <source>silvery</source>
   <translation>silbrig</translation>
  </message>
  <message>
   <source>silvery, downy</source>
   <translation>silbrig, filzig</translation>
  </message>
  <message>
   <source>silvery-green</source>
   <translation>silbriggrün</translation>
  </message>
  <message>
   <source>simple and clean</source>
   <translation>einfach und sauber</translation>
  </message>
  <message>
   <source>single-wire trellis</source>
   <translation>Drahtgerüst mit einem Draht</translation>
  </message>
  <message>
   <source>sites with this much chill wake low-chill plants far too early</source>
   <translation>Standorte mit so viel Kälte wecken Pflanzen mit geringem Bedarf viel zu früh</translation>
  </message>
  <message>
   <source>six weeks after the first</source>
   <translation>sechs Wochen nach der ersten</translation>
  </message>
  <message>
   <source>six weeks before autumn rain; 15 September at the latest in the north</source>
   <translation>sechs Wochen vor dem Herbstregen; im Norden spätestens am 15. September</translation>
  </message>
  <message>
   <source>size</source>
   <translation>Größe</translation>
  </message>
  <message>
   <source>size and light</source>
   <translation>Größe und Licht</translation>
  </message>
  <message>
   <source>size, colour, bloom next year, no broken branches</source>
   <translation>Größe, Farbe, Blüte im nächsten Jahr, keine Astbrüche</translation>
  </message>
  <message>
   <source>size, whole branches</source>
   <translation>Größe, keine Astbrüche</translation>
  </message>
  <message>
   <source>size, whole branches, a crop next year</source>
   <translation>Größe, keine Astbrüche, Ernte im nächsten Jahr</translation>
  </message>
  <message>
   <source>slight</source>
   <translation>leicht</translation>
  </message>
  <message>
   <source>slips from its core</source>
   <translation>löst sich vom Zapfen</translation>
  </message>
  <message>
   <source>slips from its core; until frost</source>
   <translation>löst sich vom Zapfen; bis zum Frost</translation>
  </message>
  <message>
   <source>small crooked rounded tree, 10-15 ft</source>
   <translation>kleiner, krummer, runder Baum, 3–4,6 m</translation>
  </message>
  <message>
   <source>small deep pink (non-showy type)</source>
   <translation>klein, tiefrosa (unauffälliger Typ)</translation>
  </message>
  <message>
   <source>small glossy rounded leaves</source>
   <translation>kleine, glänzende, runde Blätter</translation>
  </message>
  <message>
   <source>small green</source>
   <translation>klein, grün</translation>
  </message>
  <message>
   <source>small leaves</source>
   <translation>kleine Blätter</translation>
  </message>
  <message>
   <source>small lobed green</source>
   <translation>klein, gelappt, grün</translation>
  </message>
  <message>
   <source>small maroon fruit persistent to winter</source>
   <translation>kleine, kastanienbraune Früchte bis in den Winter</translation>
  </message>
  <message>
   <source>small purple</source>
   <translation>klein, purpurn</translation>
  </message>
  <message>
   <source>small rounded tree</source>
   <translation>kleiner runder Baum</translation>
  </message>
  <message>
   <source>small rounded tree or bush</source>
   <translation>kleiner runder Baum oder Busch</translation>
  </message>
  <message>
   <source>small spreading tree</source>
   <translation>kleiner ausladender Baum</translation>
  </message>
  <message>
   <source>small tree</source>
   <translation>kleiner Baum</translation>
  </message>
  <message>
   <source>small white</source>
   <translation>klein, weiß</translation>
  </message>
  <message>
   <source>smooth bark, up to about ten years old; interior latex thinned one to one</source>
   <translation>glatte Rinde, bis etwa zehn Jahre; Innenlatexfarbe eins zu eins verdünnt</translation>
  </message>
  <message>
   <source>smooth grey bark, showy trunk</source>
   <translation>glatte graue Rinde, schöner Stamm</translation>
  </message>
  <message>
   <source>smooth grey stout branches</source>
   <translation>glatte, graue, kräftige Äste</translation>
  </message>
  <message>
   <source>smooth grey striped bark</source>
   <translation>glatte, graue, gestreifte Rinde</translation>
  </message>
  <message>
   <source>smothers eggs</source>
   <translation>erstickt Eier</translation>
  </message>
  <message>
   <source>smothers overwintering eggs and scale</source>
   <translation>erstickt überwinternde Eier und Schildläuse</translation>
  </message>
  <message>
   <source>snowy white bells</source>
   <translation>schneeweiße Glocken</translation>
  </message>
  <message>
   <source>so that every female has a male within reach</source>
   <translation>so, dass jede weibliche eine männliche in Reichweite hat</translation>
  </message>
  <message>
   <source>soft growth takes fire blight</source>
   <translation>weicher Wuchs ist anfällig für Feuerbrand</translation>
  </message>
  <message>
   <source>soft herbs</source>
   <translation>weiche Kräuter</translation>
  </message>
  <message>
   <source>soft herbs (basil, parsley, chives)</source>
   <translation>Weiche Kräuter (Basilikum, Petersilie, Schnittlauch)</translation>
  </message>
  <message>
   <source>soft pink to white</source>
   <translation>zartrosa bis weiß</translation>
  </message>
  <message>
   <source>soil above its range; amount in the soil sheet</source>
   <translation>Boden über seinem Bereich; Menge auf dem Bodenblatt</translation>
  </message>
  <message>
   <source>soil above pH 5.5; amount in the soil sheet, never more than the figure there at once</source>
   <translation>Boden über pH 5,5; Menge auf dem Bodenblatt, nie mehr als der Wert dort auf einmal</translation>
  </message>
  <message>
   <source>soil is warm enough for the kind</source>
   <translation>der Boden ist für die Art warm genug</translation>
  </message>
  <message>
   <source>soil is workable</source>
   <translation>der Boden ist bearbeitbar</translation>
  </message>
  <message>
   <source>soil is workable and roots are still asleep</source>
   <translation>der Boden ist bearbeitbar, und die Wurzeln ruhen noch</translation>
  </message>
  <message>
   <source>soil life turns sulfur acid only in warm moist soil</source>
   <translation>Bodenleben macht Schwefel nur in warmem, feuchtem Boden sauer</translation>
  </message>
  <message>
   <source>soil life turns sulfur acid only in warm moist soil, above [55 F]</source>
   <translation>Bodenleben macht Schwefel nur in warmem, feuchtem Boden sauer, über [55 F]</translation>
  </message>
  <message>
   <source>sometimes</source>
   <translation>manchmal</translation>
  </message>
  <message>
   <source>sour cherry</source>
   <translation>Sauerkirsche</translation>
  </message>
  <message>
   <source>southeastern blueberry bee; birds</source>
   <translation>Blaubeer-Pelzbiene; Vögel</translation>
  </message>
  <message>
   <source>southern highbush</source>
   <translation>südliche Kulturheidelbeere</translation>
  </message>
  <message>
   <source>southern highbush blueberry</source>
   <translation>Südliche Kulturheidelbeere</translation>
  </message>
  <message>
   <source>southern highbush pollen on rabbiteye lowers set, seed number and berry weight</source>
   <translation>Pollen südlicher Kulturheidelbeeren auf Rabbiteye senkt Ansatz, Samenzahl und Beerengewicht</translation>
  </message>
  <message>
   <source>spindle</source>
   <translation>Spindel</translation>
  </message>
  <message>
   <source>spiny mound, or standard</source>
   <translation>stachelige Kuppel oder Hochstamm</translation>
  </message>
  <message>
   <source>spores ripen in spring</source>
   <translation>Sporen reifen im Frühjahr</translation>
  </message>
  <message>
   <source>spread among the others</source>
   <translation>unter den anderen verteilt</translation>
  </message>
  <message>
   <source>spreading</source>
   <translation>ausladend</translation>
  </message>
  <message>
   <source>spreading small tree</source>
   <translation>ausladender kleiner Baum</translation>
  </message>
  <message>
   <source>spreading, suckers</source>
   <translation>ausladend, treibt Ausläufer</translation>
  </message>
  <message>
   <source>spring</source>
   <translation>Frühling</translation>
  </message>
  <message>
   <source>spring-fall</source>
   <translation>Frühling–Herbst</translation>
  </message>
  <message>
   <source>spruce</source>
   <translation>Fichte</translation>
  </message>
  <message>
   <source>spruce, Colorado blue</source>
   <translation>Blaufichte</translation>
  </message>
  <message>
   <source>spruce, Norway</source>
   <translation>Gemeine Fichte</translation>
  </message>
  <message>
   <source>standard</source>
   <translation>stark</translation>
  </message>
  <message>
   <source>standard (open vase)</source>
   <translation>stark (Hohlkrone)</translation>
  </message>
  <message>
   <source>standard (pruned)</source>
   <translation>stark (geschnitten)</translation>
  </message>
  <message>
   <source>standard (unpruned)</source>
   <translation>stark (ungeschnitten)</translation>
  </message>
  <message>
   <source>standard to semi-standard</source>
   <translation>stark bis mittelstark</translation>
  </message>
  <message>
   <source>stepover</source>
   <translation>Bodenkordon</translation>
  </message>
  <message>
   <source>stocks that never stand alone keep their stake for life</source>
   <translation>Unterlagen, die nie allein stehen, behalten ihren Pfahl zeitlebens</translation>
  </message>
  <message>
   <source>stop after six weeks, two in the third year</source>
   <translation>nach sechs Wochen aufhören, im dritten Jahr nach zwei</translation>
  </message>
  <message>
   <source>stop in early summer</source>
   <translation>im Frühsommer aufhören</translation>
  </message>
  <message>
   <source>strawberry</source>
   <translation>Erdbeere</translation>
  </message>
  <message>
   <source>street Callery pears are accepted as donors for pears</source>
   <translation>Chinesische Wildbirnen an der Straße gelten als Spender für Birnen</translation>
  </message>
  <message>
   <source>strip the rest and the lowest leaves</source>
   <translation>die übrigen und die untersten Blätter entfernen</translation>
  </message>
  <message>
   <source>strong clove scent</source>
   <translation>starker Nelkenduft</translation>
  </message>
  <message>
   <source>strong growth</source>
   <translation>starker Wuchs</translation>
  </message>
  <message>
   <source>strong growth, fruit on one-year wood and spurs</source>
   <translation>starker Wuchs, Früchte an einjährigem Holz und Kurztrieben</translation>
  </message>
  <message>
   <source>strong, honey-musk</source>
   <translation>stark, nach Honig und Moschus</translation>
  </message>
  <message>
   <source>strong, sweet</source>
   <translation>stark, süß</translation>
  </message>
  <message>
   <source>suckering shrub</source>
   <translation>Strauch mit Ausläufern</translation>
  </message>
  <message>
   <source>suckering small tree or thicket</source>
   <translation>kleiner Baum mit Ausläufern oder Dickicht</translation>
  </message>
  <message>
   <source>suckering vase-shaped shrub</source>
   <translation>vasenförmiger Strauch mit Ausläufern</translation>
  </message>
  <message>
   <source>summer</source>
   <translation>Sommer</translation>
  </message>
  <message>
   <source>summer and fall</source>
   <translation>Sommer und Herbst</translation>
  </message>
  <message>
   <source>summer-pruned fruit bush</source>
   <translation>Obstbusch mit Sommerschnitt</translation>
  </message>
  <message>
   <source>sun on frozen bark splits it</source>
   <translation>Sonne auf gefrorener Rinde reißt sie auf</translation>
  </message>
  <message>
   <source>sunflower or corn</source>
   <translation>Sonnenblume oder Mais</translation>
  </message>
  <message>
   <source>susceptible</source>
   <translation>anfällig</translation>
  </message>
  <message>
   <source>sweet</source>
   <translation>süß</translation>
  </message>
  <message>
   <source>sweet cherry</source>
   <translation>Süßkirsche</translation>
  </message>
  <message>
   <source>sweet honey</source>
   <translation>süßer Honigduft</translation>
  </message>
  <message>
   <source>sweet mignonette at bloom</source>
   <translation>zur Blüte süß, nach Reseda</translation>
  </message>
  <message>
   <source>sweet, seeds brown; it does not ripen later</source>
   <translation>süß, Kerne braun; reift nicht nach</translation>
  </message>
  <message>
   <source>sweetgum</source>
   <translation>Amberbaum</translation>
  </message>
  <message>
   <source>sycamore</source>
   <translation>Platane</translation>
  </message>
  <message>
   <source>table</source>
   <translation>Tafeltraube</translation>
  </message>
  <message>
   <source>table American</source>
   <translation>Tafeltraube, amerikanisch</translation>
  </message>
  <message>
   <source>table seedless</source>
   <translation>Tafeltraube, kernlos</translation>
  </message>
  <message>
   <source>table vinifera</source>
   <translation>Tafeltraube, Vinifera</translation>
  </message>
  <message>
   <source>table/juice</source>
   <translation>Tafel-/Safttraube</translation>
  </message>
  <message>
   <source>table/juice American</source>
   <translation>Tafel-/Safttraube, amerikanisch</translation>
  </message>
  <message>
   <source>table/wine American</source>
   <translation>Tafel-/Weintraube, amerikanisch</translation>
  </message>
  <message>
   <source>table/wine white</source>
   <translation>Tafel-/Weintraube, weiß</translation>
  </message>
  <message>
   <source>take [2-3 in]</source>
   <translation>[2-3 in] abnehmen</translation>
  </message>
  <message>
   <source>tall annual crop</source>
   <translation>Hohe Einjährige</translation>
  </message>
  <message>
   <source>tall string trellis</source>
   <translation>hohes Schnurgerüst</translation>
  </message>
  <message>
   <source>tall strings</source>
   <translation>hohe Schnüre</translation>
  </message>
  <message>
   <source>tall upright to spreading; needs dwarf stock in a front garden</source>
   <translation>hoch aufrecht bis ausladend; im Vorgarten nur auf schwacher Unterlage</translation>
  </message>
  <message>
   <source>tangle</source>
   <translation>Gewirr</translation>
  </message>
  <message>
   <source>the Ujfehertoi group does not set Pandy</source>
   <translation>die Ujfehertoi-Gruppe befruchtet Pandy nicht</translation>
  </message>
  <message>
   <source>the breeder reports the pair as compatible</source>
   <translation>der Züchter nennt das Paar verträglich</translation>
  </message>
  <message>
   <source>the breeder reports the pair as incompatible</source>
   <translation>der Züchter nennt das Paar unverträglich</translation>
  </message>
  <message>
   <source>the canes are tender</source>
   <translation>die Ruten sind frostempfindlich</translation>
  </message>
  <message>
   <source>the crop is decided at bloom</source>
   <translation>über die Ernte entscheidet die Blüte</translation>
  </message>
  <message>
   <source>the crown needs its fern</source>
   <translation>der Wurzelstock braucht sein Kraut</translation>
  </message>
  <message>
   <source>the crown needs its leaves</source>
   <translation>der Wurzelstock braucht sein Laub</translation>
  </message>
  <message>
   <source>the first soft fruit is found</source>
   <translation>die erste weiche Frucht ist gefunden</translation>
  </message>
  <message>
   <source>the kinds cross but pairs are little tried</source>
   <translation>die Arten kreuzen sich, aber Paare sind wenig erprobt</translation>
  </message>
  <message>
   <source>the local extension service decides</source>
   <translation>es entscheidet die örtliche Fachberatung</translation>
  </message>
  <message>
   <source>the new shoots bear the year after</source>
   <translation>die neuen Triebe tragen im Jahr darauf</translation>
  </message>
  <message>
   <source>the pH creeps back</source>
   <translation>der pH steigt langsam wieder</translation>
  </message>
  <message>
   <source>the pair advised in Minnesota</source>
   <translation>das in Minnesota empfohlene Paar</translation>
  </message>
  <message>
   <source>the rot runs in the last three weeks</source>
   <translation>die Fäule greift in den letzten drei Wochen um sich</translation>
  </message>
  <message>
   <source>the same two alleles</source>
   <translation>dieselben zwei Allele</translation>
  </message>
  <message>
   <source>the shoots tell the need</source>
   <translation>die Triebe zeigen den Bedarf</translation>
  </message>
  <message>
   <source>the species cross in principle, but no trial of the pair was found</source>
   <translation>die Arten kreuzen sich im Grundsatz, aber es wurde kein Versuch mit dem Paar gefunden</translation>
  </message>
  <message>
   <source>the species cross, but sour cherry pollen is slow and blooms late</source>
   <translation>die Arten kreuzen sich, aber Sauerkirschpollen ist langsam und blüht spät</translation>
  </message>
  <message>
   <source>the stalk parts easily</source>
   <translation>der Stiel löst sich leicht</translation>
  </message>
  <message>
   <source>the usual pair: neither sets alone</source>
   <translation>das übliche Paar: Keine setzt allein an</translation>
  </message>
  <message>
   <source>the wild parent sets hybrid plums</source>
   <translation>der wilde Elter befruchtet Hybridpflaumen</translation>
  </message>
  <message>
   <source>they die anyway and carry disease</source>
   <translation>sie sterben ohnehin und tragen Krankheiten</translation>
  </message>
  <message>
   <source>they part when lifted level, the skin pales</source>
   <translation>sie lösen sich, waagerecht angehoben; die Schale hellt auf</translation>
  </message>
  <message>
   <source>they ripen off the tree</source>
   <translation>sie reifen abseits des Baums</translation>
  </message>
  <message>
   <source>they root before the leaves pull water</source>
   <translation>sie wurzeln, bevor das Laub Wasser zieht</translation>
  </message>
  <message>
   <source>they shade and starve the tree</source>
   <translation>sie beschatten den Baum und zehren an ihm</translation>
  </message>
  <message>
   <source>thicket</source>
   <translation>Dickicht</translation>
  </message>
  <message>
   <source>thicket of arching canes</source>
   <translation>Dickicht überhängender Ruten</translation>
  </message>
  <message>
   <source>third leaf</source>
   <translation>drittes Blatt</translation>
  </message>
  <message>
   <source>thorny outline</source>
   <translation>dorniger Umriss</translation>
  </message>
  <message>
   <source>thorny suckering shrub, 6-12 ft</source>
   <translation>dorniger Strauch mit Ausläufern, 1,8–3,7 m</translation>
  </message>
  <message>
   <source>thorny thicket</source>
   <translation>dorniges Dickicht</translation>
  </message>
  <message>
   <source>tie a new shoot in the place of each that fruited</source>
   <translation>an die Stelle jedes abgetragenen einen neuen Trieb binden</translation>
  </message>
  <message>
   <source>ties strangle, stakes rot</source>
   <translation>Bindungen schnüren ein, Pfähle faulen</translation>
  </message>
  <message>
   <source>tight bark</source>
   <translation>feste Rinde</translation>
  </message>
  <message>
   <source>tight bud</source>
   <translation>geschlossene Knospe</translation>
  </message>
  <message>
   <source>tight cluster</source>
   <translation>Grünknospe</translation>
  </message>
  <message>
   <source>tiny green</source>
   <translation>winzig, grün</translation>
  </message>
  <message>
   <source>tiny green, fragrant</source>
   <translation>winzig, grün, duftend</translation>
  </message>
  <message>
   <source>tip green</source>
   <translation>Spitze grün</translation>
  </message>
  <message>
   <source>tip separates</source>
   <translation>Spitze trennt sich</translation>
  </message>
  <message>
   <source>tips by a quarter</source>
   <translation>Spitzen um ein Viertel</translation>
  </message>
  <message>
   <source>tomato</source>
   <translation>Tomate</translation>
  </message>
  <message>
   <source>too late once buds are open</source>
   <translation>nach dem Knospenaufbruch zu spät</translation>
  </message>
  <message>
   <source>top up each year</source>
   <translation>jedes Jahr auffüllen</translation>
  </message>
  <message>
   <source>trailing blackberry</source>
   <translation>Rankende Brombeere</translation>
  </message>
  <message>
   <source>trailing canes</source>
   <translation>rankende Ruten</translation>
  </message>
  <message>
   <source>trailing, on wire</source>
   <translation>rankend, am Draht</translation>
  </message>
  <message>
   <source>tree</source>
   <translation>Baum</translation>
  </message>
  <message>
   <source>tree-like, 10-15 ft</source>
   <translation>baumartig, 3–4,6 m</translation>
  </message>
  <message>
   <source>trees up to this height are dwarf for pollen range</source>
   <translation>Bäume bis zu dieser Höhe gelten für die Pollenreichweite als schwach</translation>
  </message>
  <message>
   <source>trees up to this height are semi-dwarf for pollen range</source>
   <translation>Bäume bis zu dieser Höhe gelten für die Pollenreichweite als mittelstark</translation>
  </message>
  <message>
   <source>trellis</source>
   <translation>Drahtgerüst</translation>
  </message>
  <message>
   <source>trellis, cordon</source>
   <translation>Drahtgerüst, Kordon</translation>
  </message>
  <message>
   <source>trellis, vertical shoots</source>
   <translation>Drahtgerüst, senkrechte Triebe</translation>
  </message>
  <message>
   <source>trellised vine</source>
   <translation>Rebe am Drahtgerüst</translation>
  </message>
  <message>
   <source>trifoliate green</source>
   <translation>dreizählig, grün</translation>
  </message>
  <message>
   <source>trouble is caught while it is small</source>
   <translation>Schäden fallen auf, solange sie klein sind</translation>
  </message>
  <message>
   <source>trunk only; where borers were found</source>
   <translation>nur der Stamm; wo Bohrer gefunden wurden</translation>
  </message>
  <message>
   <source>twiggy</source>
   <translation>feinzweigig</translation>
  </message>
  <message>
   <source>twiggy mound</source>
   <translation>feinzweigige Kuppel</translation>
  </message>
  <message>
   <source>twiggy outline</source>
   <translation>feinzweigiger Umriss</translation>
  </message>
  <message>
   <source>twiner</source>
   <translation>Schlingpflanze</translation>
  </message>
  <message>
   <source>twiner, 10-15 ft</source>
   <translation>Schlingpflanze, 3–4,6 m</translation>
  </message>
  <message>
   <source>twining perennial, 15-25 ft</source>
   <translation>schlingende Staude, 4,6–7,6 m</translation>
  </message>
  <message>
   <source>twining stems</source>
   <translation>windende Stämme</translation>
  </message>
  <message>
   <source>two crabapples set 27 % by hand against 77 to 83 % from apples</source>
   <translation>zwei Zieräpfel setzten von Hand 27 % an, Äpfel dagegen 77 bis 83 %</translation>
  </message>
  <message>
   <source>two crabapples set only 7 to 17 % by hand against 53 to 71 % from apples</source>
   <translation>zwei Zieräpfel setzten von Hand nur 7 bis 17 % an, Äpfel dagegen 53 bis 71 %</translation>
  </message>
  <message>
   <source>two small doses are safer than a large one, and winter sulfur does nothing</source>
   <translation>zwei kleine Gaben sind sicherer als eine große, und Schwefel im Winter bewirkt nichts</translation>
  </message>
  <message>
   <source>under this chill of the site partners should need like chill</source>
   <translation>unter dieser Kälte am Standort sollten Befruchter ähnlichen Kältebedarf haben</translation>
  </message>
  <message>
   <source>under this share of its chill need a plant hardly leafs out or flowers</source>
   <translation>unter diesem Anteil ihres Kältebedarfs treibt und blüht eine Pflanze kaum</translation>
  </message>
  <message>
   <source>unheated shed at a steady [15-25 F], or sink the pot in the ground</source>
   <translation>unbeheizter Schuppen bei stetigen [15-25 F], oder den Kübel in den Boden einsenken</translation>
  </message>
  <message>
   <source>unpleasant close by, not noticed at a distance</source>
   <translation>aus der Nähe unangenehm, von weitem nicht zu merken</translation>
  </message>
  <message>
   <source>unpruned standard</source>
   <translation>Hochstamm, ungeschnitten</translation>
  </message>
  <message>
   <source>up to a quarter of the wood; keep 3-5 main branches</source>
   <translation>bis zu einem Viertel des Holzes; 3–5 Leitäste behalten</translation>
  </message>
  <message>
   <source>upright</source>
   <translation>aufrecht</translation>
  </message>
  <message>
   <source>upright conical</source>
   <translation>aufrecht kegelförmig</translation>
  </message>
  <message>
   <source>upright multi-stem bush or small tree</source>
   <translation>aufrechter, mehrstämmiger Busch oder kleiner Baum</translation>
  </message>
  <message>
   <source>upright narrow</source>
   <translation>aufrecht schmal</translation>
  </message>
  <message>
   <source>upright open</source>
   <translation>aufrecht offen</translation>
  </message>
  <message>
   <source>upright outline, blocky bark with age</source>
   <translation>aufrechter Umriss, im Alter gefelderte Rinde</translation>
  </message>
  <message>
   <source>upright oval</source>
   <translation>aufrecht oval</translation>
  </message>
  <message>
   <source>upright oval (American) or rounded (Asian)</source>
   <translation>aufrecht oval (Amerikanische) oder rund (Asiatische)</translation>
  </message>
  <message>
   <source>upright rounded</source>
   <translation>aufrecht rund</translation>
  </message>
  <message>
   <source>upright rounded shrub</source>
   <translation>aufrecht runder Strauch</translation>
  </message>
  <message>
   <source>upright rounded, or cordon</source>
   <translation>aufrecht rund oder als Schnurbaum</translation>
  </message>
  <message>
   <source>upright spreading</source>
   <translation>aufrecht ausladend</translation>
  </message>
  <message>
   <source>upright suckering</source>
   <translation>aufrecht, treibt Ausläufer</translation>
  </message>
  <message>
   <source>upright tall</source>
   <translation>aufrecht, hoch</translation>
  </message>
  <message>
   <source>upright then arching</source>
   <translation>erst aufrecht, dann überhängend</translation>
  </message>
  <message>
   <source>upright then spreading</source>
   <translation>erst aufrecht, dann ausladend</translation>
  </message>
  <message>
   <source>upright then vase shaped</source>
   <translation>erst aufrecht, dann vasenförmig</translation>
  </message>
  <message>
   <source>upright vase</source>
   <translation>aufrechte Vase</translation>
  </message>
  <message>
   <source>upright, 15-25 ft</source>
   <translation>aufrecht, 4,6–7,6 m</translation>
  </message>
  <message>
   <source>upright, 4-6 ft</source>
   <translation>aufrecht, 1,2–1,8 m</translation>
  </message>
  <message>
   <source>upright, 6-8 x 5-6 ft</source>
   <translation>aufrecht, 1,8–2,4 x 1,5–1,8 m</translation>
  </message>
  <message>
   <source>upright, hedge use</source>
   <translation>aufrecht, für Hecken</translation>
  </message>
  <message>
   <source>upwind of the others</source>
   <translation>auf der Windseite der anderen</translation>
  </message>
  <message>
   <source>used as donor for Luscious</source>
   <translation>als Spender für Luscious verwendet</translation>
  </message>
  <message>
   <source>usually</source>
   <translation>meist</translation>
  </message>
  <message>
   <source>usually not</source>
   <translation>meist nicht</translation>
  </message>
  <message>
   <source>usually not (stake 3-5 years)</source>
   <translation>meist nicht (3–5 Jahre anpfählen)</translation>
  </message>
  <message>
   <source>vase</source>
   <translation>Vase</translation>
  </message>
  <message>
   <source>vegetables</source>
   <translation>Gemüse</translation>
  </message>
  <message>
   <source>verticillium wilt</source>
   <translation>Verticillium-Welke</translation>
  </message>
  <message>
   <source>very dwarf</source>
   <translation>sehr schwach</translation>
  </message>
  <message>
   <source>very dwarf (M27)</source>
   <translation>sehr schwach (M27)</translation>
  </message>
  <message>
   <source>very early</source>
   <translation>sehr früh</translation>
  </message>
  <message>
   <source>very early bumble bees; birds</source>
   <translation>sehr frühe Hummeln; Vögel</translation>
  </message>
  <message>
   <source>very early fall</source>
   <translation>sehr früher Herbst</translation>
  </message>
  <message>
   <source>very early partners</source>
   <translation>sehr frühe Befruchter</translation>
  </message>
  <message>
   <source>very early summer</source>
   <translation>sehr früher Sommer</translation>
  </message>
  <message>
   <source>very early, blue-green</source>
   <translation>sehr früh, blaugrün</translation>
  </message>
  <message>
   <source>very large drooping leaves, tropical look</source>
   <translation>sehr große, hängende Blätter, tropisches Aussehen</translation>
  </message>
  <message>
   <source>very late</source>
   <translation>sehr spät</translation>
  </message>
  <message>
   <source>very susceptible</source>
   <translation>sehr anfällig</translation>
  </message>
  <message>
   <source>very vigorous twiner</source>
   <translation>sehr wüchsige Schlingpflanze</translation>
  </message>
  <message>
   <source>vigorous vine, arbour</source>
   <translation>wüchsige Kletterpflanze, Laube</translation>
  </message>
  <message>
   <source>vine</source>
   <translation>Rebe</translation>
  </message>
  <message>
   <source>vine for arch, arbour or fence</source>
   <translation>Kletterpflanze für Bogen, Laube oder Zaun</translation>
  </message>
  <message>
   <source>virus and root rot</source>
   <translation>Viren und Wurzelfäule</translation>
  </message>
  <message>
   <source>viruses (general)</source>
   <translation>Viren (allgemein)</translation>
  </message>
  <message>
   <source>vivid red to orange</source>
   <translation>lebhaft rot bis orange</translation>
  </message>
  <message>
   <source>voles and rabbits gnaw bark under snow</source>
   <translation>Wühlmäuse und Kaninchen nagen unter dem Schnee an der Rinde</translation>
  </message>
  <message>
   <source>walnut</source>
   <translation>Walnuss</translation>
  </message>
  <message>
   <source>walnut, English</source>
   <translation>Walnuss</translation>
  </message>
  <message>
   <source>walnut, black</source>
   <translation>Schwarznuss</translation>
  </message>
  <message>
   <source>wasps, rot and rats live on it</source>
   <translation>Wespen, Fäulnis und Ratten leben davon</translation>
  </message>
  <message>
   <source>water washes food out</source>
   <translation>Wasser schwemmt Nährstoffe aus</translation>
  </message>
  <message>
   <source>water-seeking tree</source>
   <translation>wassersuchender Baum</translation>
  </message>
  <message>
   <source>weekly until harvest</source>
   <translation>wöchentlich bis zur Ernte</translation>
  </message>
  <message>
   <source>wet weather</source>
   <translation>nasses Wetter</translation>
  </message>
  <message>
   <source>wet weather at bloom</source>
   <translation>nasses Wetter zur Blüte</translation>
  </message>
  <message>
   <source>wet weather near ripening</source>
   <translation>nasses Wetter nahe der Reife</translation>
  </message>
  <message>
   <source>wet weather, and rot or knots the year before</source>
   <translation>nasses Wetter und Fäule oder Knoten im Vorjahr</translation>
  </message>
  <message>
   <source>when fruit turns straw yellow</source>
   <translation>wenn die Früchte strohgelb werden</translation>
  </message>
  <message>
   <source>when the top [1 in] is dry</source>
   <translation>wenn die obersten [1 in] trocken sind</translation>
  </message>
  <message>
   <source>where winter goes below about [10 F]</source>
   <translation>wo der Winter unter etwa [10 F] sinkt</translation>
  </message>
  <message>
   <source>where winters are dry and cold and silver leaf is no trouble; not both</source>
   <translation>wo Winter trocken und kalt sind und Bleiglanz keine Sorge ist; nicht beides</translation>
  </message>
  <message>
   <source>while they are small</source>
   <translation>solange sie klein sind</translation>
  </message>
  <message>
   <source>white</source>
   <translation>weiß</translation>
  </message>
  <message>
   <source>white clusters with pink anthers</source>
   <translation>weiße Büschel mit rosa Staubbeuteln</translation>
  </message>
  <message>
   <source>white currant</source>
   <translation>Weiße Johannisbeere</translation>
  </message>
  <message>
   <source>white flushed pink</source>
   <translation>weiß, rosa überlaufen</translation>
  </message>
  <message>
   <source>white from pink buds</source>
   <translation>weiß aus rosa Knospen</translation>
  </message>
  <message>
   <source>white from red buds</source>
   <translation>weiß aus roten Knospen</translation>
  </message>
  <message>
   <source>white pine</source>
   <translation>Weiß-Kiefer</translation>
  </message>
  <message>
   <source>white pine blister rust</source>
   <translation>Blasenrost der Weymouthskiefer</translation>
  </message>
  <message>
   <source>white tinged pink</source>
   <translation>weiß mit rosa Hauch</translation>
  </message>
  <message>
   <source>white to pale pink, 1 in</source>
   <translation>weiß bis hellrosa, 2,5 cm</translation>
  </message>
  <message>
   <source>white to pink</source>
   <translation>weiß bis rosa</translation>
  </message>
  <message>
   <source>white to pink bells from pink buds</source>
   <translation>weiße bis rosa Glocken aus rosa Knospen</translation>
  </message>
  <message>
   <source>white to pink urn-shaped</source>
   <translation>weiß bis rosa, krugförmig</translation>
  </message>
  <message>
   <source>white to pinkish bells</source>
   <translation>weiße bis rosa überhauchte Glocken</translation>
  </message>
  <message>
   <source>white, 2 in across, single</source>
   <translation>weiß, 5 cm breit, einfach</translation>
  </message>
  <message>
   <source>white, airy</source>
   <translation>weiß, luftig</translation>
  </message>
  <message>
   <source>white, dense</source>
   <translation>weiß, dicht</translation>
  </message>
  <message>
   <source>white, dense before leaves</source>
   <translation>weiß, dicht, vor den Blättern</translation>
  </message>
  <message>
   <source>white, fragrant</source>
   <translation>weiß, duftend</translation>
  </message>
  <message>
   <source>white, hanging clusters</source>
   <translation>weiß, in hängenden Büscheln</translation>
  </message>
  <message>
   <source>white, in clusters, dark anthers</source>
   <translation>weiß, in Büscheln, dunkle Staubbeutel</translation>
  </message>
  <message>
   <source>white, large</source>
   <translation>weiß, groß</translation>
  </message>
  <message>
   <source>white, large clusters</source>
   <translation>weiß, in großen Büscheln</translation>
  </message>
  <message>
   <source>white, large, abundant</source>
   <translation>weiß, groß, reichlich</translation>
  </message>
  <message>
   <source>white, pink or red</source>
   <translation>weiß, rosa oder rot</translation>
  </message>
  <message>
   <source>white, showy</source>
   <translation>weiß, auffällig</translation>
  </message>
  <message>
   <source>white, showy, fragrant</source>
   <translation>weiß, auffällig, duftend</translation>
  </message>
  <message>
   <source>white, small, dense</source>
   <translation>weiß, klein, dicht</translation>
  </message>
  <message>
   <source>white, very early and dense</source>
   <translation>weiß, sehr früh und dicht</translation>
  </message>
  <message>
   <source>white, very showy</source>
   <translation>weiß, sehr auffällig</translation>
  </message>
  <message>
   <source>white-bloomed purple canes, strong winter feature</source>
   <translation>weiß bereifte, purpurne Ruten, starker Winterschmuck</translation>
  </message>
  <message>
   <source>wide forks bear sooner and split less</source>
   <translation>weite Astwinkel tragen früher und brechen seltener</translation>
  </message>
  <message>
   <source>wild blackberry</source>
   <translation>wilde Brombeere</translation>
  </message>
  <message>
   <source>wild bramble</source>
   <translation>wilde Brombeerart</translation>
  </message>
  <message>
   <source>wild raspberry</source>
   <translation>wilde Himbeere</translation>
  </message>
  <message>
   <source>willow</source>
   <translation>Weide</translation>
  </message>
  <message>
   <source>willow, weeping</source>
   <translation>Trauerweide</translation>
  </message>
  <message>
   <source>wind breaks loose canes</source>
   <translation>Wind bricht lose Ruten</translation>
  </message>
  <message>
   <source>wind rocks the roots loose</source>
   <translation>der Wind rüttelt die Wurzeln los</translation>
  </message>
  <message>
   <source>wine red hybrid</source>
   <translation>Rotwein-Hybride</translation>
  </message>
  <message>
   <source>wine red to scarlet</source>
   <translation>weinrot bis scharlachrot</translation>
  </message>
  <message>
   <source>wine vinifera</source>
   <translation>Weintraube, Vinifera</translation>
  </message>
  <message>
   <source>wine white hybrid</source>
   <translation>Weißwein-Hybride</translation>
  </message>
  <message>
   <source>wine/table white</source>
   <translation>Wein-/Tafeltraube, weiß</translation>
  </message>
  <message>
   <source>wine/table white hybrid</source>
   <translation>Wein-/Tafeltraube, weiße Hybride</translation>
  </message>
  <message>
   <source>winter thrushes; wind pollinated</source>
   <translation>Drosseln im Winter; windbestäubt</translation>
  </message>
  <message>
   <source>with Adams 2; Jul-Aug to Sep</source>
   <translation>mit Adams 2; Juli–Aug. bis Sept.</translation>
  </message>
  <message>
   <source>with Northblue</source>
   <translation>mit Northblue</translation>
  </message>
  <message>
   <source>with a partner berries are larger and earlier</source>
   <translation>mit Befruchter sind die Beeren größer und früher</translation>
  </message>
  <message>
   <source>with a partner berries weighed 14 % more with 27 % more seeds and 66 % fewer small fruit</source>
   <translation>mit Befruchter wogen die Beeren 14 % mehr, mit 27 % mehr Samen und 66 % weniger kleinen Früchten</translation>
  </message>
  <message>
   <source>with a partner fruit set rose by 43 % and berry weight by 27 % on average</source>
   <translation>mit Befruchter stieg der Ansatz im Mittel um 43 % und das Beerengewicht um 27 %</translation>
  </message>
  <message>
   <source>with a partner more and larger berries set</source>
   <translation>mit Befruchter setzen mehr und größere Beeren an</translation>
  </message>
  <message>
   <source>with a partner set is steadier and fruit has seeds</source>
   <translation>mit Befruchter ist der Ansatz sicherer, und Früchte haben Samen</translation>
  </message>
  <message>
   <source>with a partner set is sure in cool springs too</source>
   <translation>mit Befruchter ist der Ansatz auch in kühlen Frühjahren sicher</translation>
  </message>
  <message>
   <source>wood dies near [15-20 F]</source>
   <translation>Holz stirbt bei etwa [15-20 F]</translation>
  </message>
  <message>
   <source>wood that fruited two years; keep canes of 8-10 buds; later cuts bleed</source>
   <translation>Holz, das zwei Jahre getragen hat; Ruten mit 8–10 Augen behalten; spätere Schnitte bluten</translation>
  </message>
  <message>
   <source>woody herbs</source>
   <translation>verholzende Kräuter</translation>
  </message>
  <message>
   <source>woody herbs (rosemary, sage, lavender)</source>
   <translation>Verholzende Kräuter (Rosmarin, Salbei, Lavendel)</translation>
  </message>
  <message>
   <source>yellow</source>
   <translation>gelb</translation>
  </message>
  <message>
   <source>yellow (American) to crimson (some hybrids)</source>
   <translation>gelb (Amerikanische) bis karminrot (manche Hybriden)</translation>
  </message>
  <message>
   <source>yellow and fragrant, before a hard frost</source>
   <translation>gelb und duftend, vor starkem Frost</translation>
  </message>
  <message>
   <source>yellow branches</source>
   <translation>gelbe Äste</translation>
  </message>
  <message>
   <source>yellow collapse</source>
   <translation>gelb, dann zusammenfallend</translation>
  </message>
  <message>
   <source>yellow male catkins, tiny red female</source>
   <translation>gelbe männliche Kätzchen, winzige rote weibliche Blüten</translation>
  </message>
  <message>
   <source>yellow raspberry</source>
   <translation>Gelbe Himbeere</translation>
  </message>
  <message>
   <source>yellow to orange</source>
   <translation>gelb bis orange</translation>
  </message>
  <message>
   <source>yellow to orange-red</source>
   <translation>gelb bis orangerot</translation>
  </message>
  <message>
   <source>yellow to purple-red</source>
   <translation>gelb bis purpurrot</translation>
  </message>
  <message>
   <source>yellow to red</source>
   <translation>gelb bis rot</translation>
  </message>
  <message>
   <source>yellow to red-bronze, cultivar dependent</source>
   <translation>gelb bis rotbronze, je nach Sorte</translation>
  </message>
  <message>
   <source>yellow to red-purple</source>
   <translation>gelb bis rotpurpurn</translation>
  </message>
  <message>
   <source>yellow winter wood</source>
   <translation>gelbes Winterholz</translation>
  </message>
  <message>
   <source>yellow with red to red-purple</source>
   <translation>gelb mit Rot bis Rotpurpur</translation>
  </message>
  <message>
   <source>yellow wood</source>
   <translation>gelbes Holz</translation>
  </message>
  <message>
   <source>yellow, orange to red-purple</source>
   <translation>gelb, orange bis rotpurpurn</translation>
  </message>
  <message>
   <source>yellow, short</source>
   <translation>gelb, kurz</translation>
  </message>
  <message>
   <source>yellow, unremarkable</source>
   <translation>gelb, unauffällig</translation>
  </message>
  <message>
   <source>yellow-orange</source>
   <translation>gelborange</translation>
  </message>
  <message>
   <source>yellow-red</source>
   <translation>gelbrot</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>ja</translation>
  </message>
  <message>
   <source>yes, 10+ gal</source>
   <translation>ja, ab 38 L</translation>
  </message>
  <message>
   <source>yes, 15+ gal</source>
   <translation>ja, ab 57 L</translation>
  </message>
  <message>
   <source>yes, 5+ gal</source>
   <translation>ja, ab 19 L</translation>
  </message>
  <message>
   <source>yes, early years</source>
   <translation>ja, anfangs</translation>
  </message>
  <message>
   <source>yes, full</source>
   <translation>ja, ganz</translation>
  </message>
  <message>
   <source>yes, large pot</source>
   <translation>ja, großer Kübel</translation>
  </message>
  <message>
   <source>yes, permanent</source>
   <translation>ja, dauerhaft</translation>
  </message>
  <message>
   <source>yes, trellis</source>
   <translation>ja, Drahtgerüst</translation>
  </message>
  <message>
   <source>yew</source>
   <translation>Eibe</translation>
  </message>
  <message>
   <source>young leaves burn</source>
   <translation>junge Blätter verbrennen</translation>
  </message>
  <message>
   <source>young roots reach little soil</source>
   <translation>junge Wurzeln erreichen wenig Boden</translation>
  </message>
  <message>
   <source>your own dates are better than any estimate for your place</source>
   <translation>eigene Termine sind für Ihren Ort besser als jede Schätzung</translation>
  </message>
  <message>
   <source>Åland Islands</source>
   <translation>Ålandinseln</translation>
  </message>
 </context>
</TS>
