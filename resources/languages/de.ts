<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>Actions</name>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>&amp;Check</source>
   <translation>&amp;Prüfen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>&amp;Draw</source>
   <translation>&amp;Zeichnen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>&amp;Edit</source>
   <translation>&amp;Bearbeiten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>&amp;File</source>
   <translation>&amp;Datei</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>&amp;Help</source>
   <translation>&amp;Hilfe</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>&amp;View</source>
   <translation>&amp;Ansicht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>A plan: no gravity</source>
   <translation>Ein Grundriss: keine Schwerkraft</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>A scan, a photograph or a page of a PDF, to be brought to scale and traced</source>
   <translation>Ein Scan, ein Foto oder eine PDF-Seite, zum Einpassen in den Maßstab und zum Nachziehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>About this program, and its limits</source>
   <translation>Über dieses Programm und seine Grenzen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Accept it as it is, and type why</source>
   <translation>So annehmen, wie es ist, und den Grund eingeben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Air alone</source>
   <translation>Nur Luft</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>All keys on one page</source>
   <translation>Alle Tasten auf einer Seite</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>All layers</source>
   <translation>Alle Schichten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Answer what a revision left open…</source>
   <translation>Offen Gelassenes beantworten …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>As the system</source>
   <translation>Wie das System</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Beside</source>
   <translation>Daneben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Board</source>
   <translation>Platte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Catch ends, middles and crossings</source>
   <translation>Enden, Mitten und Schnittpunkte fangen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Chan&amp;ge</source>
   <translation>&amp;Ändern</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Check now</source>
   <translation>Jetzt prüfen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Check the drawing as it is now, where checking was stopped</source>
   <translation>Die Zeichnung prüfen, wie sie jetzt ist, wenn das Prüfen angehalten wurde</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Click a place inside the building</source>
   <translation>Eine Stelle im Gebäude anklicken</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Click a place outside the building</source>
   <translation>Eine Stelle außerhalb des Gebäudes anklicken</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Click two places on the picture under the drawing, and type how far apart they are</source>
   <translation>Zwei Stellen auf dem Bild unter der Zeichnung anklicken und eingeben, wie weit sie auseinander sind</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Closer</source>
   <translation>Näher heran</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Copy</source>
   <translation>Kopieren</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Copy what is picked</source>
   <translation>Ausgewähltes kopieren</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Copy what is picked to one place after another</source>
   <translation>Das Ausgewählte an eine Stelle nach der anderen kopieren</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Correct the drawing's units…</source>
   <translation>Einheiten der Zeichnung berichtigen …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Cut a sheet in two</source>
   <translation>Eine Bahn in zwei teilen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Cut back</source>
   <translation>Stutzen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Cut in two</source>
   <translation>In zwei teilen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Cut out what is picked</source>
   <translation>Ausgewähltes ausschneiden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Cut short</source>
   <translation>Kürzen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Dark</source>
   <translation>Dunkel</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Delete what is picked</source>
   <translation>Ausgewähltes löschen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Draw a board, insulation or concrete as a closed outline</source>
   <translation>Platte, Dämmung oder Beton als geschlossenen Umriss zeichnen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Draw a sheet at a distance beside a board, a sheet or a line</source>
   <translation>Eine Bahn in einem Abstand neben Platte, Bahn oder Linie zeichnen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Draw a sheet, a tape or a bead from point to point</source>
   <translation>Bahn, Klebeband oder Dichtstoffraupe von Punkt zu Punkt zeichnen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Draw the box or outline inside which the section is judged</source>
   <translation>Den Kasten oder Umriss zeichnen, in dem der Schnitt beurteilt wird</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Find a product</source>
   <translation>Produkt suchen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Finding before</source>
   <translation>Voriger Befund</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Findings of which something was said, and nobody could tell yet which ones they are now</source>
   <translation>Befunde, zu denen etwas gesagt wurde und von denen noch niemand sagen konnte, welche sie jetzt sind</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Findings, verdicts and the site list, as a workbook or as CSV</source>
   <translation>Befunde, Entscheidungen und Baustellenliste, als Arbeitsmappe oder als CSV</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Flip</source>
   <translation>Spiegeln</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Flip what is picked over a line, as in a mirror</source>
   <translation>Das Ausgewählte an einer Linie spiegeln</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Follow drawn lines from one click to another, and make them a sheet</source>
   <translation>Gezeichneten Linien von einem Klick zum anderen folgen und eine Bahn daraus machen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Follow each note's arrow to its line, and take what the note says it is made of</source>
   <translation>Dem Pfeil jedes Hinweistextes zu seiner Linie folgen und übernehmen, woraus sie laut Text besteht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Frame</source>
   <translation>Rahmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>From a place on the picture under the drawing to where it belongs</source>
   <translation>Von einer Stelle auf dem Bild unter der Zeichnung dorthin, wohin sie gehört</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Full screen</source>
   <translation>Ganzer Bildschirm</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Give what is picked the product</source>
   <translation>Ausgewähltem das Produkt geben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Gravity acts down the sheet</source>
   <translation>Die Schwerkraft wirkt auf dem Blatt nach unten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Grid, angles and distances…</source>
   <translation>Raster, Winkel und Abstände …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Heat alone</source>
   <translation>Nur Wärme</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>How loud each rule is, required figures, units, your name, motion, light and dark</source>
   <translation>Wie laut jede Regel ist, geforderte Werte, Einheiten, Ihr Name, Bewegung, hell und dunkel</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Inside</source>
   <translation>Innen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Into the section in view, at the same place; beside the originals where they stand</source>
   <translation>In den gezeigten Schnitt, an dieselbe Stelle; neben die Vorlagen, wo diese stehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Issues with pictures and verdicts that programs for building models take in</source>
   <translation>Themen mit Bildern und Entscheidungen, die Programme für Gebäudemodelle einlesen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>It is mended</source>
   <translation>Es ist behoben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>It is not a fault, because…</source>
   <translation>Es ist kein Mangel, weil …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>It is to be mended</source>
   <translation>Es ist zu beheben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>It may stand, because…</source>
   <translation>Es darf bleiben, weil …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Join</source>
   <translation>Verbinden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Keep to angles</source>
   <translation>Winkel einhalten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Keep what you said of the layers, and your own products, for the next drawing</source>
   <translation>Behalten, was über die Layer gesagt wurde, und die eigenen Produkte, für die nächste Zeichnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Lay a revised drawing over this one…</source>
   <translation>Überarbeitete Zeichnung darüberlegen …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Let a sheet run straight on to what is in its way, or by a typed length</source>
   <translation>Eine Bahn gerade weiterlaufen lassen bis zu dem, was im Weg ist, oder um eine eingegebene Länge</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Light</source>
   <translation>Hell</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Lines keep to every 15 degrees and square to the last stretch; Shift does the opposite</source>
   <translation>Linien halten alle 15 Grad und den rechten Winkel zur letzten Strecke ein; Umschalt tut das Gegenteil</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Make one of two sheets that meet end to end</source>
   <translation>Aus zwei Bahnen, die Ende an Ende liegen, eine machen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Mark the office's drawing (DXF)…</source>
   <translation>Die Zeichnung des Büros kennzeichnen (DXF) …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Measure</source>
   <translation>Messen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Measure from place to place</source>
   <translation>Von Stelle zu Stelle messen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Merge another copy of this project…</source>
   <translation>Weitere Kopie dieses Projekts einarbeiten …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Move</source>
   <translation>Verschieben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Move or turn the picture</source>
   <translation>Bild verschieben oder drehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Move what is picked from place to place; with Ctrl a copy</source>
   <translation>Das Ausgewählte von Stelle zu Stelle verschieben; mit Strg eine Kopie</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Move, add and remove the points of a sheet</source>
   <translation>Punkte einer Bahn verschieben, einfügen und entfernen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Name this section…</source>
   <translation>Diesen Schnitt benennen …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>New empty sheet</source>
   <translation>Neues leeres Blatt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Next finding</source>
   <translation>Nächster Befund</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Next part of the window</source>
   <translation>Nächster Teil des Fensters</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Next section</source>
   <translation>Nächster Schnitt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>One place at a time, large, as on a scaffold: what is wrong, what to look at, a name under it</source>
   <translation>Eine Stelle nach der anderen, groß, wie auf dem Gerüst: was nicht stimmt, was anzusehen ist, darunter ein Name</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Open a DXF drawing or a project</source>
   <translation>Eine DXF-Zeichnung oder ein Projekt öffnen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Open…</source>
   <translation>Öffnen …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Outside</source>
   <translation>Außen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Part of the window before</source>
   <translation>Voriger Teil des Fensters</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Pick</source>
   <translation>Auswählen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Pick all of the product chosen</source>
   <translation>Alles vom gewählten Produkt auswählen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Pick all of the same product</source>
   <translation>Alles vom selben Produkt auswählen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Pick everything</source>
   <translation>Alles auswählen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Pick nothing</source>
   <translation>Nichts auswählen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Pick sheets and lines, move and delete them</source>
   <translation>Bahnen und Linien auswählen, verschieben und löschen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Pick the next piece</source>
   <translation>Nächstes Stück auswählen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Pick the piece before</source>
   <translation>Voriges Stück auswählen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Points</source>
   <translation>Punkte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Preferences…</source>
   <translation>Einstellungen …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Print preview</source>
   <translation>Druckvorschau</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Print…</source>
   <translation>Drucken …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Put a picture or PDF page under the drawing…</source>
   <translation>Bild oder PDF-Seite unter die Zeichnung legen …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Put down about the finding that is chosen that somebody is to mend it</source>
   <translation>Zum gewählten Befund festhalten, dass jemand ihn beheben soll</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Put down that it was mended</source>
   <translation>Festhalten, dass es behoben wurde</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Put in what was copied</source>
   <translation>Kopiertes einsetzen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Read the answers in a marked-up PDF…</source>
   <translation>Antworten in einem markierten PDF lesen …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Read the notes…</source>
   <translation>Hinweistexte lesen …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Remove this section</source>
   <translation>Diesen Schnitt entfernen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Run on</source>
   <translation>Weiterlaufen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Save</source>
   <translation>Speichern</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Save as…</source>
   <translation>Speichern unter …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Save the layer map…</source>
   <translation>Layerzuordnung speichern …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Say how the drawing or the check misleads</source>
   <translation>Angeben, wie die Zeichnung oder die Prüfung in die Irre führt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Say of a joint that it is sealed on site, or take that back</source>
   <translation>Von einem Anschluss sagen, dass er auf der Baustelle abgedichtet ist, oder das zurücknehmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Say which way is down…</source>
   <translation>Angeben, wo unten ist …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Scale of the picture</source>
   <translation>Maßstab des Bildes</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Seal a joint</source>
   <translation>Anschluss abdichten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Section before</source>
   <translation>Voriger Schnitt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Set two break lines with a blank strip between: the drawing is cut short there</source>
   <translation>Zwei Bruchlinien mit leerem Streifen dazwischen setzen: Dort ist die Zeichnung gekürzt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Set up the sheets…</source>
   <translation>Blätter einrichten…</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Sheet</source>
   <translation>Bahn</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Show all</source>
   <translation>Alles zeigen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Show and catch the grid</source>
   <translation>Raster zeigen und fangen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Take away the part of a sheet up to where another crosses it</source>
   <translation>Den Teil einer Bahn wegnehmen, bis dorthin, wo eine andere sie kreuzt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Take what the layers are from a file of the office; what you did by hand stays</source>
   <translation>Aus einer Datei des Büros übernehmen, was die Layer sind; was von Hand getan wurde, bleibt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>The drawing as it is, with what was found marked on layers of its own</source>
   <translation>Die Zeichnung, wie sie ist; was gefunden wurde, ist auf eigenen Layern gekennzeichnet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>The drawing was read in the wrong units: everything becomes larger or smaller by one factor</source>
   <translation>Die Zeichnung wurde in den falschen Einheiten gelesen: Alles wird um einen Faktor größer oder kleiner</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>The keys go from the drawing to the panels, to the tools, and round again</source>
   <translation>Die Tasten gehen von der Zeichnung zu den Leisten, zu den Werkzeugen und wieder von vorn</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>The section in its frame with what is round it; once more: all that is drawn</source>
   <translation>Der Schnitt in seinem Rahmen mit dem, was ringsum ist; noch einmal: alles Gezeichnete</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Trace</source>
   <translation>Nachziehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Turn</source>
   <translation>Drehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Turn what is picked about a centre, by a typed angle or by the mouse</source>
   <translation>Das Ausgewählte um eine Mitte drehen, um einen eingegebenen Winkel oder mit der Maus</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Two clicks along a plumb line, where the section does not hang straight</source>
   <translation>Zwei Klicks auf einer Lotrechten, wo der Schnitt nicht gerade hängt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Type some letters of what is drawn or traced next; Enter goes back to the drawing</source>
   <translation>Einige Buchstaben dessen eingeben, was als Nächstes gezeichnet oder nachgezogen wird; Eingabe führt zurück zur Zeichnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Use a layer map…</source>
   <translation>Layerzuordnung anwenden …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Vapour alone</source>
   <translation>Nur Dampf</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Walk the section</source>
   <translation>Den Schnitt abgehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Water alone</source>
   <translation>Nur Wasser</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>What another person said and drew in a copy, made one with this one</source>
   <translation>Was jemand anderes in einer Kopie sagte und zeichnete, mit dieser vereint</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>What is picked is made of the product chosen in the list</source>
   <translation>Das Ausgewählte besteht aus dem Produkt, das in der Liste gewählt ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>What reviewers replied in any PDF reader, to be taken over as verdicts</source>
   <translation>Was Prüfende in einem beliebigen PDF-Betrachter geantwortet haben, zum Übernehmen als Entscheidungen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>What was said stays with its findings; what changed is shown side by side</source>
   <translation>Was gesagt wurde, bleibt bei seinen Befunden; was sich änderte, steht nebeneinander</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Who issues them, which revision, on which paper, at which scale, with or without a cover</source>
   <translation>Wer sie herausgibt, welcher Index, auf welchem Papier, in welchem Maßstab, mit oder ohne Deckblatt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Why is this a fault?</source>
   <translation>Warum ist das ein Mangel?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Wider</source>
   <translation>Weiter weg</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Write the findings as a table…</source>
   <translation>Befunde als Tabelle schreiben …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Write the findings for a coordinator (BCF)…</source>
   <translation>Befunde für die Koordination schreiben (BCF) …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/action_table.py" />
   <source>Write the marked-up sheet as PDF…</source>
   <translation>Prüfblatt als PDF schreiben …</translation>
  </message>
 </context>
 <context>
  <name>AdviceBox</name>
  <message>
   <location filename="../../enclosure_app/window/findings/advice_box.py" />
   <source>Show the rule's page: why it matters and where it is from</source>
   <translation>Die Seite der Regel zeigen: warum es wichtig ist und woher es kommt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/advice_box.py" />
   <source>Why?</source>
   <translation>Warum?</translation>
  </message>
 </context>
 <context>
  <name>AnswerCommands</name>
  <message>
   <location filename="../../enclosure_app/window/commands/answering.py" />
   <source>Another project was opened meanwhile: read the answers again for it.</source>
   <translation>Inzwischen wurde ein anderes Projekt geöffnet: die Antworten dafür noch einmal lesen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/answering.py" />
   <source>Nothing was answered in it that is not here already.</source>
   <translation>Darin wurde nichts geantwortet, was nicht schon hier ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/answering.py" />
   <source>Read the answers in a marked-up PDF</source>
   <translation>Antworten in einem markierten PDF lesen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/answering.py" />
   <source>Reading {}</source>
   <translation>{} wird gelesen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/answering.py" />
   <source>Take over answers</source>
   <translation>Antworten übernehmen</translation>
  </message>
 </context>
 <context>
  <name>AnswerRow</name>
  <message>
   <location filename="../../enclosure_app/window/answers/answer_row.py" />
   <source>Not sure: {}</source>
   <translation>Nicht sicher: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/answers/answer_row.py" />
   <source>Remark</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/answers/answer_row.py" />
   <source>Why it may stand</source>
   <translation>Warum es bleiben darf</translation>
  </message>
 </context>
 <context>
  <name>Answers</name>
  <message>
   <location filename="../../enclosure_app/window/answers/answers.py" />
   <source>A verdict that is ticked lacks its reason.</source>
   <translation>Einer angehakten Entscheidung fehlt der Grund.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/answers/answers.py" />
   <source>Answers in the PDF</source>
   <translation>Antworten im PDF</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/answers/answers.py" />
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/answers/answers.py" />
   <source>Go to {} · {}</source>
   <translation>Zu {} · {} gehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/answers/answers.py" />
   <source>Notes are not in the file any more: look at the rows that say so.</source>
   <translation>Notizen sind nicht mehr in der Datei: auf die Zeilen schauen, die das sagen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/answers/answers.py" />
   <source>Page {} of the PDF</source>
   <translation>Seite {} des PDF</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/answers/answers.py" />
   <source>Take over what is ticked</source>
   <translation>Angehaktes übernehmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/answers/answers.py" />
   <source>{} answers, {} of them not sure: look at these, and tick what is right.</source>
   <translation>{} Antworten, davon {} nicht sicher: diese ansehen und anhaken, was stimmt.</translation>
  </message>
 </context>
 <context>
  <name>Application</name>
  <message>
   <location filename="../../enclosure_app/window/application.py" />
   <source>Enclosure continuity</source>
   <translation>Durchgängigkeit der Hülle</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/application.py" />
   <source>The program itself failed ({}: {}); that is its fault and not yours. Save your work, and please send its developers this sentence and the drawing.</source>
   <translation>Das Programm selbst hat versagt ({}: {}); das ist sein Fehler und nicht Ihrer. Bitte die Arbeit speichern und seinen Entwicklern diesen Satz und die Zeichnung schicken.</translation>
  </message>
 </context>
 <context>
  <name>Asking</name>
  <message>
   <location filename="../../enclosure_app/window/revising/asking.py" />
   <source>It is gone</source>
   <translation>Er ist weg</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/asking.py" />
   <source>It is number {} now</source>
   <translation>Er ist jetzt Nummer {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/asking.py" />
   <source>It is “{}” now</source>
   <translation>Es ist jetzt „{}“</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/asking.py" />
   <source>Leave it open</source>
   <translation>Offen lassen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/asking.py" />
   <source>Which one is it now?</source>
   <translation>Welcher ist er jetzt?</translation>
  </message>
 </context>
 <context>
  <name>Canvas</name>
  <message>
   <location filename="../../enclosure_app/window/canvas/canvas.py" />
   <source>Drawing</source>
   <translation>Zeichnung</translation>
  </message>
 </context>
 <context>
  <name>Catches</name>
  <message>
   <location filename="../../enclosure_app/window/canvas/ink/catch_marks.py" />
   <source>crossing</source>
   <translation>Kreuzung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/ink/catch_marks.py" />
   <source>end</source>
   <translation>Ende</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/ink/catch_marks.py" />
   <source>grid</source>
   <translation>Raster</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/ink/catch_marks.py" />
   <source>meets the line</source>
   <translation>trifft die Linie</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/ink/catch_marks.py" />
   <source>meets the line {} beside</source>
   <translation>trifft die Linie {} daneben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/ink/catch_marks.py" />
   <source>middle</source>
   <translation>Mitte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/ink/catch_marks.py" />
   <source>on the line</source>
   <translation>auf der Linie</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/ink/catch_marks.py" />
   <source>square to the line</source>
   <translation>rechtwinklig zur Linie</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/ink/catch_marks.py" />
   <source>{} beside the end</source>
   <translation>{} neben dem Ende</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/ink/catch_marks.py" />
   <source>{} beside the line</source>
   <translation>{} neben der Linie</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/ink/catch_marks.py" />
   <source>{} beside, where lines cross</source>
   <translation>{} daneben, wo sich Linien kreuzen</translation>
  </message>
 </context>
 <context>
  <name>Comparison</name>
  <message>
   <location filename="../../enclosure_app/window/revising/comparison.py" />
   <source>Before · {}</source>
   <translation>Vorher · {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/comparison.py" />
   <source>It is not found in the revised drawing any more.</source>
   <translation>In der überarbeiteten Zeichnung wird er nicht mehr gefunden.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/comparison.py" />
   <source>It is to be looked at again</source>
   <translation>Noch einmal ansehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/comparison.py" />
   <source>It was not found in the earlier drawing.</source>
   <translation>In der früheren Zeichnung wurde er nicht gefunden.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/comparison.py" />
   <source>Revised · {}</source>
   <translation>Überarbeitet · {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/comparison.py" />
   <source>The section was not surely found again.</source>
   <translation>Der Schnitt wurde nicht sicher wiedergefunden.</translation>
  </message>
 </context>
 <context>
  <name>ContestCard</name>
  <message>
   <location filename="../../enclosure_app/window/merging/cards.py" />
   <source>Leave them side by side</source>
   <translation>Nebeneinander stehen lassen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/cards.py" />
   <source>Let this hold</source>
   <translation>Dies soll gelten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/cards.py" />
   <source>The more cautious one counts until somebody decides again.</source>
   <translation>Das vorsichtigere gilt, bis wieder jemand entscheidet.</translation>
  </message>
 </context>
 <context>
  <name>DifferenceCard</name>
  <message>
   <location filename="../../enclosure_app/window/merging/cards.py" />
   <source>Keep both</source>
   <translation>Beide behalten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/cards.py" />
   <source>Keep what is here</source>
   <translation>Behalten, was hier steht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/cards.py" />
   <source>Take the other copy's</source>
   <translation>Aus der anderen Kopie nehmen</translation>
  </message>
 </context>
 <context>
  <name>Docks</name>
  <message>
   <location filename="../../enclosure_app/window/surround/docks.py" />
   <source>Hide</source>
   <translation>Ausblenden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/docks.py" />
   <source>Hide this panel; View, Panels shows it again</source>
   <translation>Diese Leiste ausblenden; Ansicht, Leisten zeigt sie wieder</translation>
  </message>
 </context>
 <context>
  <name>EditCommands</name>
  <message>
   <location filename="../../enclosure_app/window/commands/editing.py" />
   <source>Make it {}</source>
   <translation>Zu „{}“ machen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/editing.py" />
   <source>Nothing is copied yet: pick something and copy it first.</source>
   <translation>Noch ist nichts kopiert: zuerst etwas wählen und kopieren.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/editing.py" />
   <source>Pick the lines first that are made of this product.</source>
   <translation>Zuerst die Linien auswählen, die aus diesem Produkt sind.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/editing.py" />
   <source>Put in what was copied</source>
   <translation>Kopiertes einsetzen</translation>
  </message>
 </context>
 <context>
  <name>FiguresPage</name>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>Back to the book's figure</source>
   <translation>Zurück zum Wert des Regelwerks</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>Choose a figure to read more; click it twice to type another.</source>
   <translation>Einen Wert wählen, um mehr zu lesen; zweimal anklicken, um einen anderen einzugeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>Find a figure</source>
   <translation>Wert suchen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>Find a figure: lap, upturn, drip…</source>
   <translation>Wert suchen: Überlappung, Aufkantung, Tropfen …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>Lengths are shown in</source>
   <translation>Längen werden gezeigt in</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>Required</source>
   <translation>Gefordert</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>Required figures</source>
   <translation>Geforderte Werte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>Rule book</source>
   <translation>Regelwerk</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>What</source>
   <translation>Was</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>Where it is from</source>
   <translation>Woher es ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>centimetres</source>
   <translation>Zentimeter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>feet and inches (drawn in feet)</source>
   <translation>Fuß und Zoll (in Fuß gezeichnet)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>feet and inches (drawn in inches)</source>
   <translation>Fuß und Zoll (in Zoll gezeichnet)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>metres</source>
   <translation>Meter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_figures.py" />
   <source>millimetres</source>
   <translation>Millimeter</translation>
  </message>
 </context>
 <context>
  <name>FileCommands</name>
  <message>
   <location filename="../../enclosure_app/window/commands/files.py" />
   <source>Go on without saving</source>
   <translation>Ohne Speichern weiter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/files.py" />
   <source>Making the sheets ready</source>
   <translation>Blätter werden vorbereitet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/files.py" />
   <source>Open it</source>
   <translation>Öffnen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/files.py" />
   <source>Save</source>
   <translation>Speichern</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/files.py" />
   <source>The sheet is written: {}</source>
   <translation>Das Prüfblatt ist geschrieben: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/files.py" />
   <source>What you changed since the last save is not kept yet.</source>
   <translation>Was seit dem letzten Speichern geändert wurde, ist noch nicht gesichert.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/files.py" />
   <source>Write the marked-up sheet</source>
   <translation>Prüfblatt schreiben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/files.py" />
   <source>Writing {}</source>
   <translation>{} wird geschrieben</translation>
  </message>
 </context>
 <context>
  <name>Filing</name>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>A flush eave with three faults</source>
   <translation>Eine bündige Traufe mit drei Mängeln</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>A parapet</source>
   <translation>Eine Attika</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>A project opens alone: only {} is opened.</source>
   <translation>Ein Projekt wird allein geöffnet: Nur {} ist geöffnet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>A window, in feet and inches</source>
   <translation>Ein Fenster, in Fuß und Zoll</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>Add a ready-made part</source>
   <translation>Fertiges Detail einfügen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>Drawings and projects</source>
   <translation>Zeichnungen und Projekte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Eave</source>
   <translation>Traufe</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Flush eave</source>
   <translation>Bündige Traufe</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>Four sections on one drawing</source>
   <translation>Vier Schnitte auf einer Zeichnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>New section</source>
   <translation>Neuer Schnitt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>Nothing yet</source>
   <translation>Noch nichts</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>Only DXF drawings, projects and layer maps can be opened.</source>
   <translation>Nur DXF-Zeichnungen, Projekte und Layerzuordnungen lassen sich öffnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>Open</source>
   <translation>Offen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>Open lately</source>
   <translation>Zuletzt geöffnet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Parapet</source>
   <translation>Attika</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>Projects</source>
   <translation>Projekte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Rake</source>
   <translation>Ortgang</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>Reading {}</source>
   <translation>{} wird gelesen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Ridge</source>
   <translation>First</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Roof to higher wall</source>
   <translation>Dach an höherer Wand</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>Samples</source>
   <translation>Beispiele</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>Save as</source>
   <translation>Speichern unter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>Saving {}</source>
   <translation>{} wird gespeichert</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Wall base</source>
   <translation>Wandfuß</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Window head</source>
   <translation>Fenstersturz</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Window sill</source>
   <translation>Fensterbank</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>{}  (not there any more)</source>
   <translation>{}  (nicht mehr da)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/filing.py" />
   <source>{} is not in {} any more: it was moved, renamed or deleted, or its disk is off.</source>
   <translation>{} ist nicht mehr in {}: verschoben, umbenannt oder gelöscht, oder das Laufwerk ist aus.</translation>
  </message>
 </context>
 <context>
  <name>FindingCard</name>
  <message>
   <location filename="../../enclosure_app/window/walk/finding_card.py" />
   <source>Why is this a fault?</source>
   <translation>Warum ist das ein Mangel?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/finding_card.py" />
   <source>measured</source>
   <translation>gemessen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/finding_card.py" />
   <source>required</source>
   <translation>gefordert</translation>
  </message>
 </context>
 <context>
  <name>FindingCommands</name>
  <message>
   <location filename="../../enclosure_app/window/commands/finding.py" />
   <source>About</source>
   <translation>Über</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/finding.py" />
   <source>All keys</source>
   <translation>Alle Tasten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/finding.py" />
   <source>Verdict: {}</source>
   <translation>Entscheidung: {}</translation>
  </message>
 </context>
 <context>
  <name>FindingsDelegate</name>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_delegate.py" />
   <source>none allowed</source>
   <translation>nichts zulässig</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_delegate.py" />
   <source>of {}</source>
   <translation>von {}</translation>
  </message>
 </context>
 <context>
  <name>FindingsFilter</name>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_filter.py" />
   <source>By what was decided</source>
   <translation>Nach der Entscheidung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_filter.py" />
   <source>By which rule</source>
   <translation>Nach der Regel</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_filter.py" />
   <source>Every rule</source>
   <translation>Alle Regeln</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_filter.py" />
   <source>Every verdict</source>
   <translation>Alle Entscheidungen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_filter.py" />
   <source>No longer found ({})</source>
   <translation>Nicht mehr gefunden ({})</translation>
  </message>
 </context>
 <context>
  <name>FindingsModel</name>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_model.py" />
   <source>No longer found</source>
   <translation>Nicht mehr gefunden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_model.py" />
   <source>This was decided about something that is no longer found. Take the verdict back to leave it out of this list; it stays in the project's history.</source>
   <translation>Das wurde zu etwas entschieden, das nicht mehr gefunden wird. Die Entscheidung zurücknehmen, um es aus dieser Liste zu lassen; es bleibt in der Geschichte des Projekts.</translation>
  </message>
 </context>
 <context>
  <name>FindingsPanel</name>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_panel.py" />
   <source>Nothing else was found.</source>
   <translation>Sonst wurde nichts gefunden.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_panel.py" />
   <source>Nothing is judged yet. Say what the lines are, or draw a sheet.</source>
   <translation>Noch ist nichts beurteilt. Angeben, was die Linien sind, oder eine Bahn zeichnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_panel.py" />
   <source>Nothing is judged yet. Say which side is inside and which is outside.</source>
   <translation>Noch ist nichts beurteilt. Angeben, welche Seite innen und welche außen ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_panel.py" />
   <source>Nothing is wrong here: every layer can be followed from end to end.</source>
   <translation>Hier ist alles in Ordnung: Jede Schicht lässt sich von einem Ende zum anderen verfolgen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_panel.py" />
   <source>Nothing of what is shown is wrong; other findings are filtered out.</source>
   <translation>Von dem, was gezeigt wird, ist nichts falsch; andere Befunde sind ausgefiltert.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_panel.py" />
   <source>The {} layer could not be judged. {}</source>
   <translation>Die Schicht für {} ließ sich nicht beurteilen. {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_panel.py" />
   <source>What is drawn is being judged.</source>
   <translation>Das Gezeichnete wird beurteilt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_panel.py" />
   <source>What is drawn is not judged.</source>
   <translation>Was gezeichnet ist, ist nicht beurteilt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/findings_panel.py" />
   <source>What is wrong, in walking order</source>
   <translation>Was nicht stimmt, der Reihe nach</translation>
  </message>
 </context>
 <context>
  <name>Foot</name>
  <message>
   <location filename="../../enclosure_app/window/walk/foot.py" />
   <source>All</source>
   <translation>Ganz</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/foot.py" />
   <source>Closer</source>
   <translation>Näher heran</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/foot.py" />
   <source>Look closer (+)</source>
   <translation>Näher heran (+)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/foot.py" />
   <source>Look wider (−)</source>
   <translation>Weiter weg (−)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/foot.py" />
   <source>Next ›</source>
   <translation>Weiter ›</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/foot.py" />
   <source>The next stop (→)</source>
   <translation>Die nächste Stelle (→)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/foot.py" />
   <source>The stop before (←)</source>
   <translation>Die Stelle davor (←)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/foot.py" />
   <source>The whole section (0)</source>
   <translation>Der ganze Schnitt (0)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/foot.py" />
   <source>Wider</source>
   <translation>Weiter weg</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/foot.py" />
   <source>‹ Before</source>
   <translation>‹ Davor</translation>
  </message>
 </context>
 <context>
  <name>HandOverCommands</name>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>Drawings</source>
   <translation>Zeichnungen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>Folder for the drawings with what was found marked in them</source>
   <translation>Ordner für die Zeichnungen mit den gekennzeichneten Befunden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>Its photographs are in {}.</source>
   <translation>Die Fotos dazu liegen in {}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>Not drawn in it, so left out: {}.</source>
   <translation>Nicht darin gezeichnet und daher ausgelassen: {}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>The findings alone</source>
   <translation>Nur die Befunde</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>The findings are written: {}</source>
   <translation>Die Befunde sind geschrieben: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>The marked drawing is written: {}</source>
   <translation>Die gekennzeichnete Zeichnung ist geschrieben: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>The marked drawings are written to {}: {}.</source>
   <translation>Die gekennzeichneten Zeichnungen sind in {} geschrieben: {}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>The table is written: {}</source>
   <translation>Die Tabelle ist geschrieben: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>Where is {}, which is to be marked?</source>
   <translation>Wo liegt die Zeichnung {}, die gekennzeichnet werden soll?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>Which drawing is to be marked?</source>
   <translation>Welche Zeichnung soll gekennzeichnet werden?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>Workbook with the site list</source>
   <translation>Arbeitsmappe mit der Baustellenliste</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>Write the drawing with what was found marked in it</source>
   <translation>Die Zeichnung mit den gekennzeichneten Befunden schreiben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>Write the findings as a table</source>
   <translation>Befunde als Tabelle schreiben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>Write the findings for a coordinator</source>
   <translation>Befunde für die Koordination schreiben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/handing_over.py" />
   <source>Writing {}</source>
   <translation>{} wird geschrieben</translation>
  </message>
 </context>
 <context>
  <name>Head</name>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>Check now</source>
   <translation>Jetzt prüfen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>Checking was stopped: check what is drawn now (F5)</source>
   <translation>Das Prüfen wurde angehalten: prüfen, was jetzt gezeichnet ist (F5)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>Everything</source>
   <translation>Alles</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/head.py" />
   <source>It takes the place of</source>
   <translation>Sie tritt an die Stelle von</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>Leave the walk (Esc); what was put down stays</source>
   <translation>Den Rundgang verlassen (Esc); was festgehalten ist, bleibt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/head.py" />
   <source>Not sure, please choose: it takes the place of</source>
   <translation>Nicht sicher, bitte wählen: Sie tritt an die Stelle von</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/head.py" />
   <source>Not surely found again: {}. They go with the earlier drawing; what was said there stays in the history.</source>
   <translation>Nicht sicher wiedergefunden: {}. Sie gehen mit der früheren Zeichnung; was dort gesagt wurde, bleibt im Verlauf.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/head.py" />
   <source>Nothing is changed before you lay it over.</source>
   <translation>Bevor Sie sie darüberlegen, ändert sich nichts.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>Sign</source>
   <translation>Unterschreiben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/head.py" />
   <source>Stays as it is, with all that was said of it: {}.</source>
   <translation>Bleibt, wie es ist, mit allem, was dazu gesagt wurde: {}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/head.py" />
   <source>They are of other drawings: let them stay</source>
   <translation>Aus anderen Zeichnungen: stehen lassen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>What is left</source>
   <translation>Was noch offen ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>What is wrong</source>
   <translation>Was nicht stimmt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>all done</source>
   <translation>alles erledigt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>being checked</source>
   <translation>wird geprüft</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>changed since it was signed</source>
   <translation>seit der Unterschrift geändert</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/head.py" />
   <source>none of them: it stands beside the others</source>
   <translation>keiner: Sie steht neben den anderen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>not checked</source>
   <translation>nicht geprüft</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>section {} of {}</source>
   <translation>Schnitt {} von {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>signed by {}</source>
   <translation>unterschrieben von {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>{} left</source>
   <translation>{} noch offen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>{} of {}</source>
   <translation>{} von {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/head.py" />
   <source>{} over {}.</source>
   <translation>{} über {}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/head.py" />
   <source>‹ Back to the drawing</source>
   <translation>‹ Zurück zur Zeichnung</translation>
  </message>
 </context>
 <context>
  <name>History</name>
  <message>
   <location filename="../../enclosure_app/window/walk/history.py" />
   <source>Decided differently: {}. Decide again to settle it.</source>
   <translation>Verschieden entschieden: {}. Zur Klärung noch einmal entscheiden.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/history.py" />
   <source>Seen differently: {}. {} Look again to settle it.</source>
   <translation>Verschieden gesehen: {}. {} Zur Klärung noch einmal hinsehen.</translation>
  </message>
 </context>
 <context>
  <name>JointTold</name>
  <message>
   <location filename="../../enclosure_app/window/words/laps.py" />
   <source>Lap of {}: {} and {}</source>
   <translation>Überlappung von {}: {} und {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/laps.py" />
   <source>Lap of {}: {} over {}</source>
   <translation>Überlappung von {}: {} über {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/laps.py" />
   <source>sealed</source>
   <translation>abgedichtet</translation>
  </message>
 </context>
 <context>
  <name>Keeping</name>
  <message>
   <location filename="../../enclosure_app/window/filing/keeping.py" />
   <source>No copy of your work can be kept ({}).</source>
   <translation>Von Ihrer Arbeit lässt sich keine Kopie sichern ({}).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/keeping.py" />
   <source>Take it up again</source>
   <translation>Wieder aufnehmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/keeping.py" />
   <source>Take up unsaved work</source>
   <translation>Ungesicherte Arbeit aufnehmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/keeping.py" />
   <source>Taking up unsaved work</source>
   <translation>Ungesicherte Arbeit wird aufgenommen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/keeping.py" />
   <source>The program ended before the work of {} was saved.</source>
   <translation>Das Programm endete, bevor die Arbeit vom {} gespeichert war.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/keeping.py" />
   <source>Throw it away</source>
   <translation>Wegwerfen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/keeping.py" />
   <source>Work on a copy</source>
   <translation>An einer Kopie arbeiten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/keeping.py" />
   <source>Work on it all the same</source>
   <translation>Trotzdem daran arbeiten</translation>
  </message>
 </context>
 <context>
  <name>KeysPage</name>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>All that is left at a place is in order</source>
   <translation>Alles Übrige an einer Stelle ist in Ordnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Answer a question: in order, not in order, cannot be seen</source>
   <translation>Eine Frage beantworten: in Ordnung, nicht in Ordnung, nicht zu sehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Ask what can be done here</source>
   <translation>Fragen, was sich hier tun lässt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Back by one, and back to the drawing</source>
   <translation>Einen Schritt zurück, und zurück zur Zeichnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Choose a photograph</source>
   <translation>Ein Foto wählen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Click with the cross, once or twice</source>
   <translation>Mit dem Kreuz klicken, einmal oder zweimal</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Closer, wider, the whole section</source>
   <translation>Näher, weiter, der ganze Schnitt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Ctrl and an arrow; with Shift dot by dot</source>
   <translation>Strg und ein Pfeil; mit Umschalt Punkt für Punkt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Decide about a finding, as its buttons stand</source>
   <translation>Über einen Befund entscheiden, in der Reihenfolge der Tasten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Drag over the empty paper</source>
   <translation>Über das leere Papier ziehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Give up what was begun, then the tool, then the full screen</source>
   <translation>Begonnenes aufgeben, dann das Werkzeug, dann den ganzen Bildschirm</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Hold the button down with the cross, and let it go</source>
   <translation>Den Knopf mit dem Kreuz gedrückt halten und loslassen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Look closer or wider, about the mouse</source>
   <translation>Näher heran oder weiter weg, um die Maus herum</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Middle button, or Space and drag, or the arrow keys</source>
   <translation>Mittlere Taste, oder Leertaste und Ziehen, oder die Pfeiltasten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Move a cross over the drawing</source>
   <translation>Ein Kreuz über die Zeichnung bewegen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Move the paper</source>
   <translation>Das Papier verschieben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>On the drawing</source>
   <translation>Auf der Zeichnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>On the walk</source>
   <translation>Auf dem Rundgang</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Pick more, or let go of one</source>
   <translation>Mehr auswählen oder eines loslassen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Pick what lies in a box</source>
   <translation>Auswählen, was in einem Kasten liegt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Redo</source>
   <translation>Wiederholen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Right button, or the menu key</source>
   <translation>Rechte Taste oder die Menütaste</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Shift and click</source>
   <translation>Umschalt und Klick</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>The next question that a remark or a photograph is about</source>
   <translation>Die nächste Frage, zu der eine Bemerkung oder ein Foto gehört</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>The next stop, the stop before</source>
   <translation>Die nächste Stelle, die Stelle davor</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>The right and the left arrow, or a swipe</source>
   <translation>Pfeil nach rechts und nach links, oder wischen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Type a remark, or the name on the last page</source>
   <translation>Eine Bemerkung eingeben, oder auf der letzten Seite den Namen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Undo</source>
   <translation>Rückgängig</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Wheel</source>
   <translation>Mausrad</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/keys_page.py" />
   <source>Why is this a fault?</source>
   <translation>Warum ist das ein Mangel?</translation>
  </message>
 </context>
 <context>
  <name>LanguageMenu</name>
  <message>
   <location filename="../../enclosure_app/window/menus/language_menu.py" />
   <source>As the system</source>
   <translation>Wie das System</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/language_menu.py" />
   <source>Language</source>
   <translation>Sprache</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/language_menu.py" />
   <source>Start again now</source>
   <translation>Jetzt neu starten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/language_menu.py" />
   <source>The language changes when the program is started again.</source>
   <translation>Die Sprache wechselt beim nächsten Start des Programms.</translation>
  </message>
 </context>
 <context>
  <name>LayerMenu</name>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_menu.py" />
   <source>Pick all that is on it</source>
   <translation>Alles darauf auswählen</translation>
  </message>
 </context>
 <context>
  <name>LayerRow</name>
  <message>
   <location filename="../../enclosure_app/window/findings/layer_strip.py" />
   <source>All layers</source>
   <translation>Alle Schichten</translation>
  </message>
 </context>
 <context>
  <name>LayerStrip</name>
  <message>
   <location filename="../../enclosure_app/window/findings/layer_strip.py" />
   <source>Control layers</source>
   <translation>Funktionsschichten</translation>
  </message>
 </context>
 <context>
  <name>LayerTable</name>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_table.py" />
   <source>A frame, break lines, notes, linework, or ignored</source>
   <translation>Ein Rahmen, Bruchlinien, Hinweistexte, Linienwerk oder übergangen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_table.py" />
   <source>Find a layer</source>
   <translation>Layer suchen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_table.py" />
   <source>Layers of the drawing</source>
   <translation>Layer der Zeichnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_table.py" />
   <source>Other</source>
   <translation>Anderes</translation>
  </message>
 </context>
 <context>
  <name>LeftOpen</name>
  <message>
   <location filename="../../enclosure_app/window/revising/left_open.py" />
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/left_open.py" />
   <source>Left open: {}. File, “Answer what a revision left open”, asks again.</source>
   <translation>Offen gelassen: {}. Datei, „Offen Gelassenes beantworten“ fragt wieder danach.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/left_open.py" />
   <source>Put down what you said</source>
   <translation>Festhalten, was Sie sagten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/left_open.py" />
   <source>Something was said of these in an earlier drawing, and nobody could tell yet which ones they are now: {}.</source>
   <translation>Dazu wurde in einer früheren Zeichnung etwas gesagt, und noch konnte niemand sagen, was es jetzt ist: {}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/left_open.py" />
   <source>What a revision left open</source>
   <translation>Was eine Überarbeitung offen ließ</translation>
  </message>
 </context>
 <context>
  <name>LinesPanel</name>
  <message>
   <location filename="../../enclosure_app/window/lines/lines_panel.py" />
   <source>Nothing is drawn yet: choose a product below, then Sheet or Board.</source>
   <translation>Noch ist nichts gezeichnet: unten ein Produkt wählen, dann Bahn oder Platte.</translation>
  </message>
 </context>
 <context>
  <name>Looks</name>
  <message>
   <location filename="../../enclosure_app/window/walk/looks.py" />
   <source>1 photograph</source>
   <translation>1 Foto</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/looks.py" />
   <source>A remark or a photograph about this question (Q goes from one to the next)</source>
   <translation>Bemerkung oder Foto zu dieser Frage (Q geht von einer zur nächsten)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/looks.py" />
   <source>All of it is in order</source>
   <translation>Alles davon ist in Ordnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/looks.py" />
   <source>Cannot be seen</source>
   <translation>Nicht zu sehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/looks.py" />
   <source>Drawn: {}</source>
   <translation>Gezeichnet: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/looks.py" />
   <source>In order</source>
   <translation>In Ordnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/looks.py" />
   <source>Not in order</source>
   <translation>Nicht in Ordnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/looks.py" />
   <source>Not looked at</source>
   <translation>Nicht angesehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/looks.py" />
   <source>Note…</source>
   <translation>Notiz…</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/looks.py" />
   <source>at least {}</source>
   <translation>mindestens {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/looks.py" />
   <source>{} by {}</source>
   <translation>{} von {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/looks.py" />
   <source>{} photographs</source>
   <translation>{} Fotos</translation>
  </message>
 </context>
 <context>
  <name>MainWindow</name>
  <message>
   <location filename="../../enclosure_app/window/main_window.py" />
   <source>Enclosure continuity</source>
   <translation>Durchgängigkeit der Hülle</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/main_window.py" />
   <source>Redo</source>
   <translation>Wiederholen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/main_window.py" />
   <source>Undo</source>
   <translation>Rückgängig</translation>
  </message>
 </context>
 <context>
  <name>MergeCommands</name>
  <message>
   <location filename="../../enclosure_app/window/commands/merging.py" />
   <source>Merge another copy</source>
   <translation>Weitere Kopie einarbeiten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/merging.py" />
   <source>Merge another copy of this project</source>
   <translation>Weitere Kopie dieses Projekts einarbeiten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/merging.py" />
   <source>Open one copy of the project first.</source>
   <translation>Öffnen Sie zuerst eine Kopie des Projekts.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/merging.py" />
   <source>Projects</source>
   <translation>Projekte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/merging.py" />
   <source>Reading {}</source>
   <translation>{} wird gelesen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/merging.py" />
   <source>The project was changed meanwhile: it is compared again. Look once more.</source>
   <translation>Das Projekt wurde inzwischen geändert: Es wird neu verglichen. Sehen Sie noch einmal hin.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/merging.py" />
   <source>{} holds nothing that is not here already.</source>
   <translation>{} enthält nichts, was nicht schon hier ist.</translation>
  </message>
 </context>
 <context>
  <name>MergeWindow</name>
  <message>
   <location filename="../../enclosure_app/window/merging/merge_window.py" />
   <source>Another copy of this project</source>
   <translation>Weitere Kopie dieses Projekts</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merge_window.py" />
   <source>Leave the project as it was</source>
   <translation>Projekt lassen, wie es war</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merge_window.py" />
   <source>Make them one</source>
   <translation>Vereinen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merge_window.py" />
   <source>Still to be chosen: {}.</source>
   <translation>Noch zu wählen: {}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merge_window.py" />
   <source>The two differ in nothing else.</source>
   <translation>Sonst unterscheiden sich die beiden nicht.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merge_window.py" />
   <source>To be chosen: {}. Decided differently: {}.</source>
   <translation>Zu wählen: {}. Verschieden entschieden: {}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merge_window.py" />
   <source>{} adds without a question: {}.</source>
   <translation>Aus {} kommt ohne Rückfrage hinzu: {}.</translation>
  </message>
 </context>
 <context>
  <name>MergingWords</name>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>1 answer about a revision</source>
   <translation>1 Antwort zu einer Überarbeitung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>1 look on site</source>
   <translation>1 Blick vor Ort</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>1 photograph</source>
   <translation>1 Foto</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>1 picture</source>
   <translation>1 Bild</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>1 remark</source>
   <translation>1 Bemerkung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>1 section</source>
   <translation>1 Schnitt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>1 section goes, which was taken away there</source>
   <translation>1 Schnitt geht, der dort entfernt wurde</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>1 section that was drawn on in there</source>
   <translation>1 Schnitt, in dem dort weitergezeichnet wurde</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>1 setting</source>
   <translation>1 Einstellung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>1 signature</source>
   <translation>1 Unterschrift</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>1 verdict</source>
   <translation>1 Entscheidung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>How loud the rule is: {}</source>
   <translation>Wie laut die Regel ist: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>Picture under the drawing: {}</source>
   <translation>Bild unter der Zeichnung: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>Required figure: {}</source>
   <translation>Geforderter Wert: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>The rule book</source>
   <translation>Das Regelwerk</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>The title</source>
   <translation>Der Titel</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>The two copies are of different revisions of the drawing</source>
   <translation>Die beiden Kopien gehören zu verschiedenen Ständen der Zeichnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>The units</source>
   <translation>Die Einheiten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>What the layers are</source>
   <translation>Was die Ebenen sind</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>not in this copy</source>
   <translation>nicht in dieser Kopie</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>nothing that is new here</source>
   <translation>nichts, was hier neu ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>the usual one</source>
   <translation>das übliche</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} answers about a revision</source>
   <translation>{} Antworten zu einer Überarbeitung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} is drawn differently</source>
   <translation>{} ist verschieden gezeichnet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} looks on site</source>
   <translation>{} Blicke vor Ort</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} photographs</source>
   <translation>{} Fotos</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} pictures</source>
   <translation>{} Bilder</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} remarks</source>
   <translation>{} Bemerkungen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} rows</source>
   <translation>{} Zeilen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} sections</source>
   <translation>{} Schnitte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} sections go, which were taken away there</source>
   <translation>{} Schnitte gehen, die dort entfernt wurden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} sections that were drawn on in there</source>
   <translation>{} Schnitte, in denen dort weitergezeichnet wurde</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} settings</source>
   <translation>{} Einstellungen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} signatures</source>
   <translation>{} Unterschriften</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} verdicts</source>
   <translation>{} Entscheidungen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} was taken away here, and drawn on in the other copy</source>
   <translation>{} wurde hier entfernt und in der anderen Kopie weitergezeichnet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/merging/merging_words.py" />
   <source>{} was taken away in the other copy, and drawn on here</source>
   <translation>{} wurde in der anderen Kopie entfernt und hier weitergezeichnet</translation>
  </message>
 </context>
 <context>
  <name>MessageBar</name>
  <message>
   <location filename="../../enclosure_app/window/surround/bars.py" />
   <source>Message</source>
   <translation>Meldung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/bars.py" />
   <source>Understood</source>
   <translation>Verstanden</translation>
  </message>
 </context>
 <context>
  <name>NoteBox</name>
  <message>
   <location filename="../../enclosure_app/window/walk/note_box.py" />
   <source>1 photograph waits: touch “Note…” at the question that it is about (or press Q).</source>
   <translation>1 Foto wartet: bei der Frage, zu der es gehört, „Notiz…“ antippen (oder Q drücken).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/note_box.py" />
   <source>About: {}</source>
   <translation>Zu: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/note_box.py" />
   <source>Choose photographs from files, or drop them here. The program cannot use the tablet's camera: take the photograph with the tablet itself, then choose it.</source>
   <translation>Fotos aus Dateien wählen oder hierher ziehen. Das Programm kann die Kamera des Tablets nicht benutzen: das Foto mit dem Tablet selbst aufnehmen, dann wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/note_box.py" />
   <source>Photographs</source>
   <translation>Fotos</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/note_box.py" />
   <source>Photographs ({})</source>
   <translation>Fotos ({})</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/note_box.py" />
   <source>Photograph…</source>
   <translation>Foto …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/note_box.py" />
   <source>Put the remark down</source>
   <translation>Bemerkung festhalten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/note_box.py" />
   <source>Remark</source>
   <translation>Bemerkung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/note_box.py" />
   <source>Which question is it about? Touch “Note…” beside it (or press Q).</source>
   <translation>Zu welcher Frage gehört es? „Notiz…“ daneben antippen (oder Q drücken).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/note_box.py" />
   <source>{} photographs wait: touch “Note…” at the question that they are about (or press Q).</source>
   <translation>{} Fotos warten: bei der Frage, zu der sie gehören, „Notiz…“ antippen (oder Q drücken).</translation>
  </message>
 </context>
 <context>
  <name>Noting</name>
  <message>
   <location filename="../../enclosure_app/window/lines/noting.py" />
   <source>No</source>
   <translation>Nein</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/noting.py" />
   <source>No note here says more than is known of the lines already.</source>
   <translation>Kein Hinweistext hier sagt mehr, als von den Linien schon bekannt ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/noting.py" />
   <source>One by one</source>
   <translation>Einzeln</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/noting.py" />
   <source>Take all</source>
   <translation>Alle übernehmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/noting.py" />
   <source>Take what the notes say</source>
   <translation>Übernehmen, was die Hinweistexte sagen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/noting.py" />
   <source>These were all the notes.</source>
   <translation>Das waren alle Hinweistexte.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/noting.py" />
   <source>Yes</source>
   <translation>Ja</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/noting.py" />
   <source>{} notes say what a line is made of.</source>
   <translation>{} Hinweistexte sagen, woraus eine Linie besteht.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/noting.py" />
   <source>“{}”: is this line {}?</source>
   <translation>„{}“: Ist diese Linie „{}“?</translation>
  </message>
 </context>
 <context>
  <name>OpenCard</name>
  <message>
   <location filename="../../enclosure_app/window/revising/open_card.py" />
   <source>It is to be looked at again</source>
   <translation>Noch einmal ansehen</translation>
  </message>
 </context>
 <context>
  <name>OpenQuestionCommands</name>
  <message>
   <location filename="../../enclosure_app/window/commands/open_questions.py" />
   <source>Answer what was left open</source>
   <translation>Offen Gelassenes beantworten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/open_questions.py" />
   <source>Looking for the places</source>
   <translation>Die Stellen werden gesucht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/open_questions.py" />
   <source>Nothing is open: it is known where all that was said belongs.</source>
   <translation>Nichts ist offen: Von allem Gesagten ist bekannt, wohin es gehört.</translation>
  </message>
 </context>
 <context>
  <name>Overview</name>
  <message>
   <location filename="../../enclosure_app/window/walk/overview.py" />
   <source>Triangles are findings, discs are places to look at; filled ones are done</source>
   <translation>Dreiecke sind Befunde, Scheiben sind Stellen zum Ansehen; ausgefüllte sind erledigt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/overview.py" />
   <source>Where you are on the walk</source>
   <translation>Wo Sie auf dem Rundgang sind</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/overview.py" />
   <source>{} of {} are done</source>
   <translation>{} von {} sind erledigt</translation>
  </message>
 </context>
 <context>
  <name>OwnPage</name>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_own.py" />
   <source>A copy of unsaved work after</source>
   <translation>Eine Kopie ungesicherter Arbeit nach</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_own.py" />
   <source>Drops run</source>
   <translation>Tropfen laufen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_own.py" />
   <source>The window is</source>
   <translation>Das Fenster ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_own.py" />
   <source>These are yours: they go with you to every project on this computer.</source>
   <translation>Diese gehören Ihnen: Sie gehen auf diesem Rechner mit Ihnen in jedes Projekt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_own.py" />
   <source>Your name</source>
   <translation>Ihr Name</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_own.py" />
   <source>as the system wants it</source>
   <translation>wie das System es will</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_own.py" />
   <source>dark</source>
   <translation>dunkel</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_own.py" />
   <source>for some seconds</source>
   <translation>einige Sekunden lang</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_own.py" />
   <source>is put beside every verdict</source>
   <translation>steht neben jeder Entscheidung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_own.py" />
   <source>light</source>
   <translation>hell</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_own.py" />
   <source>never: still pictures</source>
   <translation>nie: stehende Bilder</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_own.py" />
   <source>{} min</source>
   <translation>{} min</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_own.py" />
   <source>{} seconds</source>
   <translation>{} Sekunden</translation>
  </message>
 </context>
 <context>
  <name>PageChooser</name>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_pages.py" />
   <source>Leave it</source>
   <translation>Lassen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_pages.py" />
   <source>Page {}</source>
   <translation>Seite {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_pages.py" />
   <source>Pages</source>
   <translation>Seiten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_pages.py" />
   <source>Put it under the drawing</source>
   <translation>Unter die Zeichnung legen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_pages.py" />
   <source>Which page</source>
   <translation>Welche Seite</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_pages.py" />
   <source>{} has {} pages. Which one goes under the drawing?</source>
   <translation>{} hat {} Seiten. Welche kommt unter die Zeichnung?</translation>
  </message>
 </context>
 <context>
  <name>Pages</name>
  <message>
   <location filename="../../enclosure_app/reports/text_report.py" />
   <source>Caution: this check is an aid. Local codes, the makers' instructions and licensed practice decide. Figures marked (unconfirmed) have not been compared with their source by anyone here. Look at work at height only with protection against falls.</source>
   <translation>Vorsicht: Diese Prüfung ist eine Hilfe. Es entscheiden örtliche Vorschriften, die Angaben der Hersteller und zugelassene Fachleute. Als (unbestätigt) bezeichnete Werte hat hier niemand mit ihrer Quelle verglichen. Arbeiten in der Höhe nur mit Absturzsicherung ansehen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/about_page.py" />
   <source>Checks section drawings of buildings: whether each control layer can be followed with a pen from one end to the other, whether every sheet laps over the one below it, and whether rain finds a way in.</source>
   <translation>Prüft Schnittzeichnungen von Gebäuden: ob sich jede Funktionsschicht mit einem Stift von einem Ende zum anderen verfolgen lässt, ob jede Bahn über die darunter greift und ob Regen einen Weg hinein findet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/about_page.py" />
   <source>Enclosure continuity</source>
   <translation>Durchgängigkeit der Hülle</translation>
  </message>
 </context>
 <context>
  <name>Parts</name>
  <message>
   <location filename="../../enclosure_app/window/parts/parts_placing.py" />
   <source>Add {}</source>
   <translation>„{}“ einfügen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/parts/parts_placing.py" />
   <source>Outside on the other side</source>
   <translation>Außen auf der anderen Seite</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/parts/parts_placing.py" />
   <source>Put it into “{}” instead</source>
   <translation>Stattdessen in „{}“ einsetzen</translation>
  </message>
 </context>
 <context>
  <name>PhotoPage</name>
  <message>
   <location filename="../../enclosure_app/window/walk/photo_page.py" />
   <source>Back to the drawing</source>
   <translation>Zurück zur Zeichnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/photo_page.py" />
   <source>Photograph {}</source>
   <translation>Foto {}</translation>
  </message>
 </context>
 <context>
  <name>PhotoStrip</name>
  <message>
   <location filename="../../enclosure_app/window/walk/photo_strip.py" />
   <source>Photograph {}</source>
   <translation>Foto {}</translation>
  </message>
 </context>
 <context>
  <name>PlaceCard</name>
  <message>
   <location filename="../../enclosure_app/window/walk/place_card.py" />
   <source>Look here · {}</source>
   <translation>Hier ansehen · {}</translation>
  </message>
 </context>
 <context>
  <name>PlaceView</name>
  <message>
   <location filename="../../enclosure_app/window/walk/place_view.py" />
   <source>The place in the drawing</source>
   <translation>Die Stelle in der Zeichnung</translation>
  </message>
 </context>
 <context>
  <name>Preferences</name>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences.py" />
   <source>Another rule book</source>
   <translation>Anderes Regelwerk</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences.py" />
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences.py" />
   <source>Figure: {}</source>
   <translation>Wert: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences.py" />
   <source>Figures and units</source>
   <translation>Werte und Einheiten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences.py" />
   <source>Other units</source>
   <translation>Andere Einheiten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences.py" />
   <source>Preferences</source>
   <translation>Einstellungen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences.py" />
   <source>Rule {}: {}</source>
   <translation>Regel {}: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences.py" />
   <source>Rules</source>
   <translation>Regeln</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences.py" />
   <source>Your own</source>
   <translation>Persönlich</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences.py" />
   <source>as usual</source>
   <translation>wie üblich</translation>
  </message>
 </context>
 <context>
  <name>ProductForm</name>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>A product of your own</source>
   <translation>Ein eigenes Produkt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>Conductivity</source>
   <translation>Wärmeleitfähigkeit</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>Family</source>
   <translation>Art</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>How it is drawn</source>
   <translation>Wie es gezeichnet wird</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>How it is held</source>
   <translation>Wie es gehalten wird</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>How open to vapour</source>
   <translation>Wie dampfdurchlässig</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>I have read these figures there</source>
   <translation>Ich habe diese Werte dort gelesen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>Keep it</source>
   <translation>Behalten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>Least lap</source>
   <translation>Mindestüberlappung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>Leave it</source>
   <translation>Lassen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>Name</source>
   <translation>Name</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>Thickness</source>
   <translation>Dicke</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>What it keeps apart</source>
   <translation>Was es trennt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>Where the figures are from</source>
   <translation>Woher die Werte sind</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>as usual for it</source>
   <translation>wie dafür üblich</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>inches</source>
   <translation>Zoll</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>the maker's sheet, a test, a standard</source>
   <translation>das Herstellerblatt, eine Prüfung, eine Norm</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>{}, or as the rule book says</source>
   <translation>{}, oder wie das Regelwerk sagt</translation>
  </message>
 </context>
 <context>
  <name>ProductList</name>
  <message>
   <location filename="../../enclosure_app/window/products/product_list.py" />
   <source>Add a product of the office</source>
   <translation>Ein Produkt des Büros hinzufügen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_list.py" />
   <source>Add your own</source>
   <translation>Eigenes hinzufügen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_list.py" />
   <source>Change</source>
   <translation>Ändern</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_list.py" />
   <source>Change the product that is chosen</source>
   <translation>Das gewählte Produkt ändern</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_list.py" />
   <source>Find a product</source>
   <translation>Produkt suchen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_list.py" />
   <source>Find a product: sheet, tape, water…</source>
   <translation>Produkt suchen: Bahn, Band, Wasser …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_list.py" />
   <source>Give it to what is picked</source>
   <translation>Ausgewähltem geben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_list.py" />
   <source>No product has all these words: take one away.</source>
   <translation>Kein Produkt hat alle diese Wörter: eines wegnehmen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_list.py" />
   <source>Only products of the office's own can be removed</source>
   <translation>Nur Produkte des Büros lassen sich entfernen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_list.py" />
   <source>Remove</source>
   <translation>Entfernen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_list.py" />
   <source>Remove this product of the office</source>
   <translation>Dieses Produkt des Büros entfernen</translation>
  </message>
 </context>
 <context>
  <name>PuttingDown</name>
  <message>
   <location filename="../../enclosure_app/window/walk/putting_down.py" />
   <source>Signed by {}</source>
   <translation>Unterschrieben von {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/putting_down.py" />
   <source>The name of {} taken back</source>
   <translation>Der Name von {} zurückgenommen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/putting_down.py" />
   <source>Verdict: {}</source>
   <translation>Entscheidung: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/putting_down.py" />
   <source>What was seen on site</source>
   <translation>Was auf der Baustelle gesehen wurde</translation>
  </message>
 </context>
 <context>
  <name>Revised</name>
  <message>
   <location filename="../../enclosure_app/window/revising/revised.py" />
   <source>A revised drawing</source>
   <translation>Eine überarbeitete Zeichnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/revised.py" />
   <source>Choose above which drawing it takes the place of.</source>
   <translation>Oben wählen, an die Stelle welcher Zeichnung sie tritt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/revised.py" />
   <source>Lay the revised drawing over it</source>
   <translation>Überarbeitete Zeichnung darüberlegen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/revised.py" />
   <source>Leave the drawing as it was</source>
   <translation>Zeichnung lassen, wie sie war</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/revised.py" />
   <source>Left open: {}. What was said of them stays, and waits.</source>
   <translation>Offen gelassen: {}. Was dazu gesagt wurde, bleibt und wartet.</translation>
  </message>
 </context>
 <context>
  <name>RevisedRows</name>
  <message>
   <location filename="../../enclosure_app/window/revising/rows.py" />
   <source>Gone</source>
   <translation>Weg</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/rows.py" />
   <source>Moved</source>
   <translation>Verschoben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/rows.py" />
   <source>New</source>
   <translation>Neu</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/rows.py" />
   <source>Not sure, please look</source>
   <translation>Nicht sicher, bitte ansehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/said_words.py" />
   <source>Remark</source>
   <translation>Bemerkung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/rows.py" />
   <source>Still there</source>
   <translation>Noch da</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/rows.py" />
   <source>{} gone</source>
   <translation>{} weg</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/rows.py" />
   <source>{} moved</source>
   <translation>{} verschoben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/rows.py" />
   <source>{} new</source>
   <translation>{} neu</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/rows.py" />
   <source>{} not sure</source>
   <translation>{} nicht sicher</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/rows.py" />
   <source>{} still there</source>
   <translation>{} noch da</translation>
  </message>
 </context>
 <context>
  <name>RevisionCommands</name>
  <message>
   <location filename="../../enclosure_app/window/commands/revising.py" />
   <source>Comparing {}</source>
   <translation>{} wird verglichen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/revising.py" />
   <source>Drawings (*.dxf *.DXF)</source>
   <translation>Zeichnungen (*.dxf *.DXF)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/revising.py" />
   <source>Lay a revised drawing over</source>
   <translation>Überarbeitete Zeichnung darüberlegen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/revising.py" />
   <source>Lay a revised drawing over this one</source>
   <translation>Überarbeitete Zeichnung darüberlegen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/revising.py" />
   <source>Lay it over</source>
   <translation>Darüberlegen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/revising.py" />
   <source>Most of what is open is drawn in {}, too: it looks like a revision. Laid over it, what was said stays with its findings.</source>
   <translation>Das meiste des Offenen ist auch in {} gezeichnet: Es sieht nach einer Überarbeitung aus. Wird sie darübergelegt, bleibt das Gesagte bei seinen Befunden.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/revising.py" />
   <source>Open it by itself</source>
   <translation>Für sich öffnen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/revising.py" />
   <source>Open the earlier drawing or its project first.</source>
   <translation>Öffnen Sie zuerst die frühere Zeichnung oder ihr Projekt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/revising.py" />
   <source>Some of what is open is drawn in {}, too. Is it a revision? Laid over it, what was said stays with its findings; before that you see what becomes of each.</source>
   <translation>Manches des Offenen ist auch in {} gezeichnet. Ist es eine Überarbeitung? Wird sie darübergelegt, bleibt das Gesagte bei seinen Befunden; vorher sehen Sie, was aus jedem wird.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/revising.py" />
   <source>The project was changed meanwhile: it is compared again. Look once more.</source>
   <translation>Das Projekt wurde inzwischen geändert: Es wird neu verglichen. Sehen Sie noch einmal hin.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/revising.py" />
   <source>{} looks like a revision of the drawing that is open. Laid over it, what was said stays with its findings.</source>
   <translation>{} sieht nach einer Überarbeitung der offenen Zeichnung aus. Wird sie darübergelegt, bleibt das Gesagte bei seinen Befunden.</translation>
  </message>
 </context>
 <context>
  <name>RevisionHead</name>
  <message>
   <location filename="../../enclosure_app/window/revising/head.py" />
   <source>Nothing was said of what it takes the place of.</source>
   <translation>Zu dem, an dessen Stelle sie tritt, wurde nichts gesagt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/head.py" />
   <source>Only you can say</source>
   <translation>Nur Sie können es sagen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/head.py" />
   <source>Places that people spoke of: {}.</source>
   <translation>Stellen, zu denen etwas gesagt wurde: {}.</translation>
  </message>
 </context>
 <context>
  <name>RibbonTold</name>
  <message>
   <location filename="../../enclosure_app/window/ribbon/ribbon_told.py" />
   <source>Lift: {} wide</source>
   <translation>Absetzen: {} breit</translation>
  </message>
 </context>
 <context>
  <name>RibbonView</name>
  <message>
   <location filename="../../enclosure_app/window/ribbon/ribbon_view.py" />
   <source>A layer is unrolled here once it runs from one edge to the other.</source>
   <translation>Hier wird eine Schicht abgewickelt, sobald sie von einem Rand zum anderen läuft.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/ribbon/ribbon_view.py" />
   <source>Click, turn the wheel or use the arrows to walk along a layer; Page Down leaps to the next lap or gap, Shift and the wheel turn to the other layers.</source>
   <translation>Klick, Mausrad oder Pfeile gehen an einer Schicht entlang; Bild ab springt zur nächsten Überlappung oder Lücke, Umschalt und Rad wechseln zu den anderen Schichten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/ribbon/ribbon_view.py" />
   <source>The layers unrolled</source>
   <translation>Die Schichten abgewickelt</translation>
  </message>
 </context>
 <context>
  <name>RowFilters</name>
  <message>
   <location filename="../../enclosure_app/window/revising/row_list.py" />
   <source>Only what something was said of</source>
   <translation>Nur wozu etwas gesagt wurde</translation>
  </message>
 </context>
 <context>
  <name>RowList</name>
  <message>
   <location filename="../../enclosure_app/window/revising/row_list.py" />
   <source>What became of each finding</source>
   <translation>Was aus jedem Befund wurde</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/row_list.py" />
   <source>You say: it is found again</source>
   <translation>Sie sagen: wiedergefunden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/row_list.py" />
   <source>You say: it is gone</source>
   <translation>Sie sagen: weg</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/row_list.py" />
   <source>You say: it is to be looked at again</source>
   <translation>Sie sagen: noch einmal ansehen</translation>
  </message>
 </context>
 <context>
  <name>RulePage</name>
  <message>
   <location filename="../../enclosure_app/window/findings/rule_page.py" />
   <source>The fault as it is drawn, and the same place as it should be</source>
   <translation>Der Mangel, wie er gezeichnet ist, und dieselbe Stelle, wie sie sein soll</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/rule_page.py" />
   <source>The rule's page</source>
   <translation>Die Seite der Regel</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/rule_page.py" />
   <source>‹ Back to the list</source>
   <translation>‹ Zurück zur Liste</translation>
  </message>
 </context>
 <context>
  <name>RulesPage</name>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_rules.py" />
   <source>How loud: {}</source>
   <translation>Wie laut: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_rules.py" />
   <source>What is found by a rule is a fault, a doubt to look at by eye, or a remark; a rule that is off finds nothing. This is kept in the project and can be undone.</source>
   <translation>Was eine Regel findet, ist ein Mangel, ein Zweifel zum Ansehen oder ein Hinweis; eine Regel, die aus ist, findet nichts. Das wird im Projekt behalten und lässt sich rückgängig machen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/preferences/preferences_rules.py" />
   <source>as usual ({})</source>
   <translation>wie üblich ({})</translation>
  </message>
 </context>
 <context>
  <name>SayingBar</name>
  <message>
   <location filename="../../enclosure_app/window/revising/saying_bar.py" />
   <source>Type your name: it is put beside what you say.</source>
   <translation>Ihren Namen eingeben: Er steht neben dem, was Sie sagen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/saying_bar.py" />
   <source>Your name</source>
   <translation>Ihr Name</translation>
  </message>
 </context>
 <context>
  <name>SectionCommands</name>
  <message>
   <location filename="../../enclosure_app/window/commands/sections.py" />
   <source>Name of the section</source>
   <translation>Name des Schnitts</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/sections.py" />
   <source>Name the section</source>
   <translation>Den Schnitt benennen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/sections.py" />
   <source>Remove {}</source>
   <translation>{} entfernen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/sections.py" />
   <source>This is the only section: delete what is in it, or begin a new sheet.</source>
   <translation>Das ist der einzige Schnitt: löschen, was darin ist, oder ein neues Blatt beginnen.</translation>
  </message>
 </context>
 <context>
  <name>SectionRow</name>
  <message>
   <location filename="../../enclosure_app/window/surround/section_row.py" />
   <source>Before</source>
   <translation>Davor</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/section_row.py" />
   <source>Next</source>
   <translation>Weiter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/section_row.py" />
   <source>Sections</source>
   <translation>Schnitte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/section_row.py" />
   <source>The next section</source>
   <translation>Der nächste Schnitt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/section_row.py" />
   <source>The section before</source>
   <translation>Der vorige Schnitt</translation>
  </message>
 </context>
 <context>
  <name>SheetForm</name>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>A cover</source>
   <translation>Ein Deckblatt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>Issued by</source>
   <translation>Herausgegeben von</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>Print preview</source>
   <translation>Druckvorschau</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>Revision</source>
   <translation>Index</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>Scale</source>
   <translation>Maßstab</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>Set up the sheets</source>
   <translation>Blätter einrichten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>This holds for the PDF, the print preview and the print.</source>
   <translation>Das gilt für das PDF, die Druckvorschau und den Druck.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>Write the PDF…</source>
   <translation>PDF schreiben…</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>always</source>
   <translation>immer</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>before several sections</source>
   <translation>vor mehreren Schnitten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>never</source>
   <translation>nie</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>such as B</source>
   <translation>zum Beispiel B</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>the largest that fits</source>
   <translation>der größte, der passt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>who issues the sheets</source>
   <translation>wer die Blätter herausgibt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/sheet_form.py" />
   <source>{} (as usual)</source>
   <translation>{} (wie üblich)</translation>
  </message>
 </context>
 <context>
  <name>Showing</name>
  <message>
   <location filename="../../enclosure_app/window/stage/showing.py" />
   <source>Checking the section</source>
   <translation>Der Schnitt wird geprüft</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/stage/showing.py" />
   <source>Checking {} sections</source>
   <translation>{} Schnitte werden geprüft</translation>
  </message>
 </context>
 <context>
  <name>Side</name>
  <message>
   <location filename="../../enclosure_app/window/revising/side.py" />
   <source>Measured {}</source>
   <translation>Gemessen {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/side.py" />
   <source>Measured {}, required {}</source>
   <translation>Gemessen {}, gefordert {}</translation>
  </message>
 </context>
 <context>
  <name>SignPage</name>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Check now</source>
   <translation>Jetzt prüfen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Checking was stopped: have the section checked, then sign it</source>
   <translation>Das Prüfen wurde angehalten: den Schnitt prüfen lassen, dann unterschreiben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Date: {}</source>
   <translation>Datum: {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Everything was looked at</source>
   <translation>Alles wurde angesehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Everything was looked at; not all of it is in order</source>
   <translation>Alles wurde angesehen; nicht alles ist in Ordnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Go to the first one that is left</source>
   <translation>Zum ersten gehen, das noch offen ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Remark</source>
   <translation>Bemerkung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Sign again</source>
   <translation>Noch einmal unterschreiben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Sign this section</source>
   <translation>Diesen Schnitt unterschreiben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Sign, with this left open</source>
   <translation>Unterschreiben, mit dem hier offen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Signed by {}, {}</source>
   <translation>Unterschrieben von {}, {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Take the name of {} back</source>
   <translation>Den Namen von {} zurücknehmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>The section is still being checked: sign it after that</source>
   <translation>Der Schnitt wird noch geprüft: erst danach unterschreiben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>The section was changed since: walk it again and sign anew.</source>
   <translation>Der Schnitt wurde seitdem geändert: noch einmal abgehen und neu unterschreiben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>There is nothing to look at here yet</source>
   <translation>Hier gibt es noch nichts anzusehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Typed, but not put down yet: {}.</source>
   <translation>Getippt, aber noch nicht festgehalten: {}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Walk the next section</source>
   <translation>Den nächsten Schnitt abgehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>Your name</source>
   <translation>Ihr Name</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/signing.py" />
   <source>{} of {} places are done</source>
   <translation>{} von {} Stellen sind erledigt</translation>
  </message>
 </context>
 <context>
  <name>Sizes</name>
  <message>
   <location filename="../../enclosure_app/window/parts/sizes_form.py" />
   <location filename="../../enclosure_app/window/surround/name_strip.py" />
   <source>Done</source>
   <translation>Fertig</translation>
  </message>
 </context>
 <context>
  <name>SketchCommands</name>
  <message>
   <location filename="../../enclosure_app/window/commands/sketching.py" />
   <source>Angles that lines keep to</source>
   <translation>Winkel, die Linien einhalten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/sketching.py" />
   <source>Gravity acts down the sheet</source>
   <translation>Die Schwerkraft wirkt auf dem Blatt nach unten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/sketching.py" />
   <source>Grid, angles and distances</source>
   <translation>Raster, Winkel und Abstände</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/sketching.py" />
   <source>Make it a plan</source>
   <translation>Zum Grundriss machen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/sketching.py" />
   <source>Sheets off boards</source>
   <translation>Bahnen neben Platten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/sketching.py" />
   <source>Spacing of the grid</source>
   <translation>Abstand des Rasters</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/sketching.py" />
   <source>Width of a bead</source>
   <translation>Breite einer Dichtstoffraupe</translation>
  </message>
 </context>
 <context>
  <name>StartPage</name>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>A flush eave with three faults</source>
   <translation>Eine bündige Traufe mit drei Mängeln</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>A parapet</source>
   <translation>Eine Attika</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>A window, in feet and inches</source>
   <translation>Ein Fenster, in Fuß und Zoll</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>Begin</source>
   <translation>Anfangen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>Follow every layer with one pen</source>
   <translation>Jede Schicht mit einem Stift verfolgen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>Four sections on one drawing</source>
   <translation>Vier Schnitte auf einer Zeichnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>Open a drawing or project…</source>
   <translation>Zeichnung oder Projekt öffnen …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>Open a section drawing, say what its lines are, and see every gap and every lap that runs the wrong way, from the footing to the ridge.</source>
   <translation>Eine Schnittzeichnung öffnen, angeben, was ihre Linien sind, und jede Lücke und jede verkehrte Überlappung sehen, vom Fundament bis zum First.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>Open lately</source>
   <translation>Zuletzt geöffnet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>Or look at a sample</source>
   <translation>Oder ein Beispiel ansehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>Sketch on an empty sheet</source>
   <translation>Auf leerem Blatt skizzieren</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>Start from a ready-made part</source>
   <translation>Mit einem fertigen Detail anfangen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>This check is an aid. Local codes, the makers' instructions and licensed practice decide. Look at work at height only with protection against falls.</source>
   <translation>Diese Prüfung ist eine Hilfe. Es entscheiden örtliche Vorschriften, die Angaben der Hersteller und zugelassene Fachleute. Arbeiten in der Höhe nur mit Absturzsicherung ansehen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>Trace a scan or a page of a PDF…</source>
   <translation>Scan oder PDF-Seite nachziehen …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/start_page.py" />
   <source>or drop a DXF file, a picture or a PDF anywhere here.</source>
   <translation>oder eine DXF-Datei, ein Bild oder ein PDF irgendwo hierher ziehen.</translation>
  </message>
 </context>
 <context>
  <name>Step</name>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>A layer is broken. Look where it opens.</source>
   <translation>Eine Schicht ist unterbrochen. Ansehen, wo sie offen ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Check now</source>
   <translation>Jetzt prüfen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Checking was stopped. What is listed is of the drawing before its last change.</source>
   <translation>Das Prüfen wurde angehalten. Was aufgelistet ist, gilt der Zeichnung vor ihrer letzten Änderung.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Checking was stopped: nothing is known of this drawing yet.</source>
   <translation>Das Prüfen wurde angehalten: Von dieser Zeichnung ist noch nichts bekannt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Draw a sheet</source>
   <translation>Bahn zeichnen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Draw the frame</source>
   <translation>Rahmen zeichnen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Every fault and doubt has its verdict. Write the marked-up sheet.</source>
   <translation>Über jeden Mangel und jeden Zweifel ist entschieden. Das Prüfblatt schreiben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Mark inside</source>
   <translation>Innen markieren</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Mark outside</source>
   <translation>Außen markieren</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Next</source>
   <translation>Weiter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Next finding</source>
   <translation>Nächster Befund</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>No faults, but {} to look at by eye.</source>
   <translation>Keine Mängel, aber {} zum Ansehen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Nothing is wrong here. Write the marked-up sheet.</source>
   <translation>Hier ist alles in Ordnung. Das Prüfblatt schreiben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Nothing says where the section is judged. Draw a frame around it.</source>
   <translation>Nichts sagt, wo der Schnitt beurteilt wird. Einen Rahmen darum zeichnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Nothing says which side is inside. Click a place inside the building.</source>
   <translation>Nichts sagt, welche Seite innen ist. Eine Stelle im Gebäude anklicken.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Nothing says which side is outside. Click a place outside the building.</source>
   <translation>Nichts sagt, welche Seite außen ist. Eine Stelle außerhalb des Gebäudes anklicken.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Nothing says yet what the lines are. Let the notes say it, use a layer map, or pick a line and give it a product.</source>
   <translation>Noch sagt nichts, was die Linien sind. Die Hinweistexte sprechen lassen, eine Layerzuordnung anwenden oder eine Linie auswählen und ihr ein Produkt geben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Nothing was found, but a layer could not be judged: {}. Look at it by eye.</source>
   <translation>Nichts gefunden, aber eine Schicht ließ sich nicht beurteilen: {}. Mit eigenen Augen ansehen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>One fault. Go and see it.</source>
   <translation>Ein Mangel. Hingehen und ansehen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Read the notes</source>
   <translation>Hinweistexte lesen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlaying.py" />
   <source>Set the scale</source>
   <translation>Maßstab setzen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Show it</source>
   <translation>Zeigen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlaying.py" />
   <source>The picture is not to scale. Click two places on it and type how far apart they are.</source>
   <translation>Das Bild ist nicht im Maßstab. Zwei Stellen darauf anklicken und eingeben, wie weit sie auseinander sind.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>The sheet is empty. Choose a product at the left and draw the first sheet.</source>
   <translation>Das Blatt ist leer. Links ein Produkt wählen und die erste Bahn zeichnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>What is drawn is being judged.</source>
   <translation>Das Gezeichnete wird beurteilt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>Write PDF…</source>
   <translation>PDF schreiben …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/surround/next_step.py" />
   <source>{} faults. Walk through them in order, from one end to the other.</source>
   <translation>{} Mängel. Der Reihe nach durchgehen, von einem Ende zum anderen.</translation>
  </message>
 </context>
 <context>
  <name>StepBar</name>
  <message>
   <location filename="../../enclosure_app/window/surround/bars.py" />
   <source>Next step</source>
   <translation>Nächster Schritt</translation>
  </message>
 </context>
 <context>
  <name>TakingIn</name>
  <message>
   <location filename="../../enclosure_app/window/walk/taking_in.py" />
   <source>A photograph is about one place: go to it, and give it there again.</source>
   <translation>Ein Foto gehört zu einer Stelle: dorthin gehen und es dort noch einmal geben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/taking_in.py" />
   <source>Nothing was taken in: the photographs are where they were. Take them again.</source>
   <translation>Nichts wurde übernommen: Die Fotos sind, wo sie waren. Bitte noch einmal aufnehmen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/taking_in.py" />
   <source>Remark</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/taking_in.py" />
   <source>Taking in {}</source>
   <translation>{} wird übernommen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/taking_in.py" />
   <source>Taking in {} photographs</source>
   <translation>{} Fotos werden übernommen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/taking_in.py" />
   <source>{} (as {} saw it)</source>
   <translation>{} (wie von {} gesehen)</translation>
  </message>
 </context>
 <context>
  <name>ToolBar</name>
  <message>
   <location filename="../../enclosure_app/window/menus/tool_bar.py" />
   <source>Change</source>
   <translation>Ändern</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/tool_bar.py" />
   <source>Mark</source>
   <translation>Markieren</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/tool_bar.py" />
   <source>More tools</source>
   <translation>Weitere Werkzeuge</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/tool_bar.py" />
   <source>Redo</source>
   <translation>Wiederholen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/tool_bar.py" />
   <source>Show all</source>
   <translation>Alles zeigen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/tool_bar.py" />
   <source>Tools</source>
   <translation>Werkzeuge</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/tool_bar.py" />
   <source>Undo</source>
   <translation>Rückgängig</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/tool_bar.py" />
   <source>Walk</source>
   <translation>Abgehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/menus/tool_bar.py" />
   <source>Write PDF</source>
   <translation>PDF schreiben</translation>
  </message>
 </context>
 <context>
  <name>Tools</name>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_run.py" />
   <source>A sheet needs two points that are apart: click another one.</source>
   <translation>Eine Bahn braucht zwei Punkte, die auseinander liegen: einen anderen anklicken.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/edit_points.py" />
   <source>Add a point</source>
   <translation>Punkt einfügen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/set_scale.py" />
   <source>Bring it to scale as well</source>
   <translation>Auch in den Maßstab bringen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/set_scale.py" />
   <source>Bring what is drawn to scale</source>
   <translation>Das Gezeichnete in den Maßstab bringen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/place_part.py" />
   <source>Choose a part in the File menu.</source>
   <translation>Im Menü Datei ein Detail wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/beside.py" />
   <location filename="../../enclosure_app/window/canvas/tools/draw_run.py" />
   <source>Choose a product in the list first: what is to be drawn?</source>
   <translation>Zuerst in der Liste ein Produkt wählen: Was wird gezeichnet?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/trace.py" />
   <source>Choose a product in the list first: what is traced?</source>
   <translation>Zuerst in der Liste ein Produkt wählen: Was wird nachgezogen?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/seal.py" />
   <source>Click a joint: it is sealed on site. Rings are joints that nothing seals.</source>
   <translation>Einen Anschluss anklicken: Er ist auf der Baustelle abgedichtet. Ringe sind Anschlüsse, die nichts abdichtet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/say_down.py" />
   <source>Click a place high up on a plumb line of the section.</source>
   <translation>Eine Stelle hoch oben auf einer Lotrechten des Schnitts anklicken.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/mark_side.py" />
   <source>Click a place inside the building; drag its mark, or click it away.</source>
   <translation>Eine Stelle im Gebäude anklicken; die Marke ziehen oder wegklicken.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/turning.py" />
   <source>Click a place on the line to flip over.</source>
   <translation>Eine Stelle auf der Linie anklicken, an der gespiegelt wird.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/lay_underlay.py" />
   <source>Click a place on the picture, then where it belongs; or drag it there.</source>
   <translation>Eine Stelle auf dem Bild anklicken, dann, wohin sie gehört; oder dorthin ziehen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/mark_side.py" />
   <source>Click a place outside the building; drag its mark, or click it away.</source>
   <translation>Eine Stelle außerhalb des Gebäudes anklicken; die Marke ziehen oder wegklicken.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/turning.py" />
   <source>Click a second place on the line, or type its angle; Shift keeps to 15 degrees, Ctrl leaves the original.</source>
   <translation>Eine zweite Stelle auf der Linie anklicken oder ihren Winkel eingeben; Umschalt hält 15 Grad ein, Strg lässt das Original stehen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/lay_underlay.py" />
   <source>Click a second place on the picture to turn it, or Escape: it lies well.</source>
   <translation>Eine zweite Stelle auf dem Bild anklicken, um es zu drehen, oder Esc: Es liegt gut.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/select.py" />
   <source>Click a sheet or a line to pick it, or drag a box around several; with Ctrl it picks all it touches.</source>
   <translation>Eine Bahn oder Linie anklicken, um sie zu wählen, oder ein Feld um mehrere ziehen; mit Strg wählt es alles, was es berührt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/lay_underlay.py" />
   <source>Click on a picture that lies under the drawing and is not locked.</source>
   <translation>Ein Bild anklicken, das unter der Zeichnung liegt und nicht gesperrt ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/set_scale.py" />
   <source>Click on the picture that is to be brought to scale.</source>
   <translation>Das Bild anklicken, das in den Maßstab gebracht werden soll.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/set_scale.py" />
   <source>Click one end of a length that you know: a dimension, a door, a stud wall.</source>
   <translation>Ein Ende einer bekannten Länge anklicken: eine Bemaßung, eine Tür, ein Ständerwerk.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/say_down.py" />
   <source>Click straight below it, or type the angle: at -90 is down the sheet.</source>
   <translation>Senkrecht darunter anklicken oder den Winkel eingeben: bei -90 ist unten auf dem Blatt unten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/turning.py" />
   <source>Click the centre to turn about.</source>
   <translation>Die Mitte anklicken, um die gedreht wird.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_board.py" />
   <source>Click the first corner of the board.</source>
   <translation>Die erste Ecke der Platte anklicken.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cutting.py" />
   <source>Click the first of two sheets of one product that meet end to end.</source>
   <translation>Die erste von zwei Bahnen eines Produkts anklicken, die Ende an Ende liegen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_frame.py" />
   <source>Click the next corner of the outline. Two corners and Enter make a box.</source>
   <translation>Die nächste Ecke des Umrisses anklicken. Zwei Ecken und Eingabe machen einen Kasten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_board.py" />
   <source>Click the next corner, or type a length, such as 1200 or 1200 at 45. Enter closes the outline; Shift keeps to 15 degrees.</source>
   <translation>Die nächste Ecke anklicken oder eine Länge eingeben, etwa 1200 oder 1200 at 45. Eingabe schließt den Umriss; Umschalt hält 15 Grad ein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_board.py" />
   <source>Click the next corner, or type a length. Enter makes the board {} thick, on the side of the mouse.</source>
   <translation>Die nächste Ecke anklicken oder eine Länge eingeben. Eingabe macht die Platte {} dick, auf der Seite der Maus.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_frame.py" />
   <source>Click the next corner. Enter, or a click on the first corner, closes it.</source>
   <translation>Die nächste Ecke anklicken. Eingabe oder ein Klick auf die erste Ecke schließt ihn.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_run.py" />
   <source>Click the next point, or type a length, such as 1200 or 1200 at 45. Enter ends the run; Shift keeps to 15 degrees.</source>
   <translation>Den nächsten Punkt anklicken oder eine Länge eingeben, etwa 1200 oder 1200 at 45. Eingabe beendet den Zug; Umschalt hält 15 Grad ein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/set_scale.py" />
   <source>Click the other end of that length; the longer it is, the better.</source>
   <translation>Das andere Ende dieser Länge anklicken; je länger sie ist, desto besser.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cutting.py" />
   <source>Click the part of a sheet to take away, up to where another crosses it.</source>
   <translation>Den Teil einer Bahn anklicken, der wegfällt, bis dorthin, wo eine andere sie kreuzt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/measure.py" />
   <source>Click the place to measure from.</source>
   <translation>Die Stelle anklicken, von der aus gemessen wird.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/measure.py" />
   <source>Click the place to measure to.</source>
   <translation>Die Stelle anklicken, bis zu der gemessen wird.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/transform.py" />
   <source>Click the place to move from, best an end or a corner.</source>
   <translation>Die Stelle anklicken, von der aus verschoben wird, am besten ein Ende oder eine Ecke.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/transform.py" />
   <source>Click the place to move to, or type how far: 600 at 90. Ctrl leaves a copy.</source>
   <translation>Die Stelle anklicken, zu der verschoben wird, oder eingeben, wie weit: 600 at 90. Strg lässt eine Kopie stehen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/transform.py" />
   <source>Click the sheet or board that is meant.</source>
   <translation>Die gemeinte Bahn oder Platte anklicken.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cutting.py" />
   <source>Click the sheet that goes on from it; the same one again closes it.</source>
   <translation>Die Bahn anklicken, die sie fortsetzt; dieselbe noch einmal schließt sie.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/edit_points.py" />
   <source>Click the sheet whose points are to be changed.</source>
   <translation>Die Bahn anklicken, deren Punkte geändert werden sollen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/trace.py" />
   <source>Click to go on, Enter ends the sheet; Tab takes another way.</source>
   <translation>Klicken führt weiter, Eingabe beendet die Bahn; Tab nimmt einen anderen Weg.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cut_short.py" />
   <source>Click where a break line starts; a click on one that is there takes it away.</source>
   <translation>Anklicken, wo eine Bruchlinie anfängt; ein Klick auf eine vorhandene nimmt sie weg.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cutting.py" />
   <source>Click where a sheet is to be cut in two.</source>
   <translation>Anklicken, wo eine Bahn geteilt werden soll.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/turning.py" />
   <source>Click where that place goes, or type the angle; Shift keeps to 15 degrees.</source>
   <translation>Anklicken, wohin diese Stelle kommt, oder den Winkel eingeben; Umschalt hält 15 Grad ein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cut_short.py" />
   <source>Click where the break line ends, right across all that is cut short.</source>
   <translation>Anklicken, wo die Bruchlinie endet, quer über alles, was gekürzt ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/transform.py" />
   <source>Click where the copy goes, or type how far: 600 at 90. Escape ends.</source>
   <translation>Anklicken, wohin die Kopie kommt, oder eingeben, wie weit: 600 at 90. Esc beendet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/place_part.py" />
   <source>Click where the outer face of the wall board goes, at the part's level 0.</source>
   <translation>Anklicken, wohin die Außenseite der Wandplatte kommt, auf der Höhe 0 des Details.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cut_short.py" />
   <source>Click where the second line lies, or type how wide the blank strip is.</source>
   <translation>Anklicken, wo die zweite Linie liegt, oder eingeben, wie breit der leere Streifen ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/trace.py" />
   <source>Click where the sheet ends: the lines between are followed.</source>
   <translation>Anklicken, wo die Bahn endet: Den Linien dazwischen wird gefolgt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/trace.py" />
   <source>Click where the sheet starts, on a line that is drawn.</source>
   <translation>Anklicken, wo die Bahn anfängt, auf einer gezeichneten Linie.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_run.py" />
   <source>Click where the sheet starts; places {} off a board are caught. Type another distance.</source>
   <translation>Anklicken, wo die Bahn anfängt; Stellen {} neben einer Platte werden gefangen. Einen anderen Abstand eingeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/lay_underlay.py" />
   <source>Click where this place of the picture belongs.</source>
   <translation>Anklicken, wohin diese Stelle des Bildes gehört.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/lay_underlay.py" />
   <source>Click where this second place belongs: the picture is turned; Shift scales it too.</source>
   <translation>Anklicken, wohin diese zweite Stelle gehört: Das Bild wird gedreht; Umschalt passt auch den Maßstab an.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cutting.py" />
   <source>Click: it runs on to what is in its way. Or type how far; below 0 is back.</source>
   <translation>Klick: Sie läuft weiter bis zu dem, was im Weg ist. Oder eingeben, wie weit; unter 0 geht es zurück.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/select.py" />
   <location filename="../../enclosure_app/window/canvas/tools/transform.py" />
   <source>Copy</source>
   <translation>Kopieren</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cutting.py" />
   <source>Cut</source>
   <translation>Teilen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cutting.py" />
   <source>Cut back</source>
   <translation>Stutzen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cut_short.py" />
   <source>Cut the drawing short</source>
   <translation>Zeichnung kürzen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/trace_marks.py" />
   <source>D lays it beside the line.</source>
   <translation>D legt sie neben die Linie.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/select.py" />
   <source>Delete the piece</source>
   <translation>Stück löschen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/select.py" />
   <source>Delete {} pieces</source>
   <translation>{} Stücke löschen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_frame.py" />
   <source>Drag a box, or click the corners of an outline: the section is judged inside it.</source>
   <translation>Einen Kasten ziehen oder die Ecken eines Umrisses anklicken: Darin wird der Schnitt beurteilt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/edit_points.py" />
   <source>Drag a point; double-click the line to add one.</source>
   <translation>Einen Punkt ziehen; Doppelklick auf die Linie fügt einen ein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/edit_points.py" />
   <source>Drag it, move it by arrows, or type how far it is from the point before: 600 at 90. Delete takes it out.</source>
   <translation>Ziehen, mit den Pfeilen verschieben oder eingeben, wie weit er vom vorigen Punkt liegt: 600 at 90. Entf nimmt ihn heraus.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/select.py" />
   <source>Drag it, with Ctrl a copy; arrows move it a little; a double click shows its points; Shift picks more.</source>
   <translation>Ziehen verschiebt, mit Strg als Kopie; Pfeile schieben ein wenig; ein Doppelklick zeigt die Punkte; Umschalt wählt dazu.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_run.py" />
   <source>Draw {}</source>
   <translation>„{}“ zeichnen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/beside.py" />
   <source>Draw {} beside</source>
   <translation>„{}“ daneben zeichnen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/turning.py" />
   <source>Flip</source>
   <translation>Spiegeln</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/trace_marks.py" />
   <source>It lies {} inside of the line (D, or type a length).</source>
   <translation>Sie liegt {} innerhalb der Linie (D, oder eine Länge eingeben).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/trace_marks.py" />
   <source>It lies {} outside of the line (D, or type a length).</source>
   <translation>Sie liegt {} außerhalb der Linie (D, oder eine Länge eingeben).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/trace_marks.py" />
   <source>It lies {} to the left of the line (D, or type a length).</source>
   <translation>Sie liegt {} links der Linie (D, oder eine Länge eingeben).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/trace_marks.py" />
   <source>It lies {} to the right of the line (D, or type a length).</source>
   <translation>Sie liegt {} rechts der Linie (D, oder eine Länge eingeben).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cutting.py" />
   <source>Join</source>
   <translation>Verbinden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_frame.py" />
   <source>Let go at the opposite corner: the section is judged inside the box.</source>
   <translation>An der gegenüberliegenden Ecke loslassen: In diesem Kasten wird der Schnitt beurteilt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/mark_side.py" />
   <source>Mark inside</source>
   <translation>Innen markieren</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/mark_side.py" />
   <source>Mark outside</source>
   <translation>Außen markieren</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/select.py" />
   <location filename="../../enclosure_app/window/canvas/tools/transform.py" />
   <source>Move</source>
   <translation>Verschieben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/edit_points.py" />
   <source>Move a point</source>
   <translation>Punkt verschieben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/mark_side.py" />
   <source>Move the mark</source>
   <translation>Marke verschieben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/lay_underlay.py" />
   <source>Move the picture</source>
   <translation>Bild verschieben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/seal.py" />
   <source>No joints are found yet: draw sheets that meet, and mark inside and outside.</source>
   <translation>Noch sind keine Anschlüsse gefunden: Bahnen zeichnen, die sich treffen, und innen und außen markieren.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/set_scale.py" />
   <source>No picture here can be brought to scale: put one under the drawing, or unlock it.</source>
   <translation>Kein Bild hier lässt sich in den Maßstab bringen: eines unter die Zeichnung legen oder eines entsperren.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_board.py" />
   <source>No thickness is known of this product: click a third corner.</source>
   <translation>Von diesem Produkt ist keine Dicke bekannt: eine dritte Ecke anklicken.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cutting.py" />
   <source>Point at a sheet near the end that is to run on.</source>
   <translation>Auf eine Bahn zeigen, nahe dem Ende, das weiterlaufen soll.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/beside.py" />
   <source>Point beside a board, a sheet or a line, and click: the sheet is drawn {} off it. Type another distance; Shift goes all round a board.</source>
   <translation>Neben Platte, Bahn oder Linie zeigen und klicken: Die Bahn wird {} daneben gezeichnet. Einen anderen Abstand eingeben; Umschalt geht ganz um eine Platte.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/place_part.py" />
   <source>Put in {}</source>
   <translation>„{}“ einsetzen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cutting.py" />
   <source>Run on</source>
   <translation>Weiterlaufen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/say_down.py" />
   <source>Say which way is down</source>
   <translation>Angeben, wo unten ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/seal.py" />
   <source>Seal a joint</source>
   <translation>Anschluss abdichten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_frame.py" />
   <source>Set the frame</source>
   <translation>Rahmen setzen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/set_scale.py" />
   <source>Set the scale of the picture</source>
   <translation>Maßstab des Bildes setzen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/edit_points.py" />
   <source>Take a point out</source>
   <translation>Punkt herausnehmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/seal.py" />
   <source>Take a seal back</source>
   <translation>Abdichtung zurücknehmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/cut_short.py" />
   <source>Take the break away</source>
   <translation>Bruch wegnehmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/mark_side.py" />
   <source>Take the mark away</source>
   <translation>Marke wegnehmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/trace.py" />
   <source>The drawn lines are being gathered; your click is not forgotten…</source>
   <translation>Die gezeichneten Linien werden gesammelt; Ihr Klick ist nicht vergessen …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/set_scale.py" />
   <source>The sheet that you drew over the picture has kept its size.</source>
   <translation>Die Bahn, die Sie über das Bild gezeichnet haben, hat ihre Größe behalten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/set_scale.py" />
   <source>The {} pieces that you drew over the picture have kept their size.</source>
   <translation>Die {} Stücke, die Sie über das Bild gezeichnet haben, haben ihre Größe behalten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/set_scale.py" />
   <source>There is no picture under the drawing that could be brought to scale.</source>
   <translation>Unter der Zeichnung liegt kein Bild, das sich in den Maßstab bringen ließe.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/lay_underlay.py" />
   <source>There is no picture under the drawing that could be moved.</source>
   <translation>Unter der Zeichnung liegt kein Bild, das sich verschieben ließe.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/trace.py" />
   <source>Trace {}</source>
   <translation>„{}“ nachziehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/turning.py" />
   <source>Turn</source>
   <translation>Drehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/set_scale.py" />
   <source>Type a length first, as in 1200 at 0.</source>
   <translation>Zuerst eine Länge eingeben, etwa 1200 at 0.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/set_scale.py" />
   <source>Type how far apart these two places truly are, such as 1200 or 4' 6"; with “at 0” after it the line is laid level as well.</source>
   <translation>Eingeben, wie weit diese beiden Stellen wirklich auseinander sind, etwa 1200 oder 4' 6"; mit „at 0“ dahinter wird die Linie auch waagerecht gelegt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/turning.py" />
   <source>Type the angle, such as 22.5, or click a place that is to be turned.</source>
   <translation>Den Winkel eingeben, etwa 22.5, oder eine Stelle anklicken, die gedreht werden soll.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/seal.py" />
   <source>What is drawn there seals that joint already.</source>
   <translation>Was dort gezeichnet ist, dichtet diesen Anschluss schon ab.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/select.py" />
   <source>all it touches</source>
   <translation>alles, was es berührt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_run.py" />
   <source>kept to {:.1f}°</source>
   <translation>auf {:.1f}° gehalten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/seal.py" />
   <source>not sealed</source>
   <translation>nicht abgedichtet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/seal.py" />
   <source>sealed</source>
   <translation>abgedichtet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/seal.py" />
   <source>sealed, says a person</source>
   <translation>abgedichtet, sagt eine Person</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/select.py" />
   <source>what lies in it as a whole</source>
   <translation>was ganz darin liegt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/measure.py" />
   <source>{}   across {}   up {}   ∠ {:.1f}°</source>
   <translation>{}   waagerecht {}   senkrecht {}   ∠ {:.1f}°</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/seal.py" />
   <source>{} and {}: nothing seals them. A click says that they are sealed.</source>
   <translation>{} und {}: Nichts dichtet sie ab. Ein Klick sagt, dass sie abgedichtet sind.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/seal.py" />
   <source>{} and {}: sealed by what is drawn.</source>
   <translation>{} und {}: durch das Gezeichnete abgedichtet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/seal.py" />
   <source>{} and {}: sealed, says a person. A click takes that back.</source>
   <translation>{} und {}: abgedichtet, sagt eine Person. Ein Klick nimmt das zurück.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/trace.py" />
   <source>{} beside the line — Enter takes it.</source>
   <translation>{} neben der Linie – Eingabe übernimmt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/trace_marks.py" />
   <source>{} not drawn</source>
   <translation>{} nicht gezeichnet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/set_scale.py" />
   <source>{} now. How long is it truly?</source>
   <translation>{} zurzeit. Wie lang ist es wirklich?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/set_scale.py" />
   <source>{} — Enter brings the picture to this scale.</source>
   <translation>{} – Eingabe bringt das Bild in diesen Maßstab.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/canvas/tools/draw_run.py" />
   <source>{} — Enter sets the point.</source>
   <translation>{} – Eingabe setzt den Punkt.</translation>
  </message>
 </context>
 <context>
  <name>TypedFigure</name>
  <message>
   <location filename="../../enclosure_app/window/typed/typed_figure.py" />
   <source>no</source>
   <translation>nein</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/typed/typed_figure.py" />
   <source>yes</source>
   <translation>ja</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/typed/typed_figure.py" />
   <source>“{}” is neither yes nor no: type one of them.</source>
   <translation>„{}“ ist weder ja noch nein: eines davon eingeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/typed/typed_figure.py" />
   <source>“{}” is no slope: type it as in 3:12, 2 % or 18.5°.</source>
   <translation>„{}“ ist keine Neigung: eingeben wie in 3:12, 2 % oder 18.5°.</translation>
  </message>
 </context>
 <context>
  <name>UnderlayStrip</name>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Click two places, and type how far apart they truly are</source>
   <translation>Zwei Stellen anklicken und eingeben, wie weit sie wirklich auseinander sind</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Faint</source>
   <translation>Schwach</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Hidden</source>
   <translation>Ausgeblendet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Hide</source>
   <translation>Ausblenden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Hide the picture</source>
   <translation>Bild ausblenden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Hides the picture; the lines of its page stay</source>
   <translation>Blendet das Bild aus; die Linien seiner Seite bleiben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Lock the picture</source>
   <translation>Bild sperren</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Locked where it lies</source>
   <translation>An seinem Platz gesperrt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>More</source>
   <translation>Mehr</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Move or turn it</source>
   <translation>Verschieben oder drehen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Not to scale: its size is not known</source>
   <translation>Nicht im Maßstab: Die Größe ist nicht bekannt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Not to scale: lengths are the paper's</source>
   <translation>Nicht im Maßstab: Längen sind die des Papiers</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Paint the picture paler or stronger</source>
   <translation>Das Bild blasser oder kräftiger malen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Pale</source>
   <translation>Blass</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Paler</source>
   <translation>Blasser</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Paper scale</source>
   <translation>Papiermaßstab</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Put another one under the drawing…</source>
   <translation>Noch eines unter die Zeichnung legen …</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Remove it, and its lines</source>
   <translation>Entfernen, mit den Linien</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Remove the picture</source>
   <translation>Bild entfernen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Set the scale</source>
   <translation>Maßstab setzen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Set the scale of the paper</source>
   <translation>Maßstab des Papiers setzen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Show</source>
   <translation>Zeigen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Show the picture</source>
   <translation>Bild zeigen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Strong</source>
   <translation>Kräftig</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>The scale that is written on the sheet of paper</source>
   <translation>Der Maßstab, der auf dem Blatt Papier steht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>To scale, 1:{:.4g} on paper</source>
   <translation>Im Maßstab, 1:{:.4g} auf Papier</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>To scale, {} wide</source>
   <translation>Im Maßstab, {} breit</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Under the drawing</source>
   <translation>Unter der Zeichnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Unlock the picture</source>
   <translation>Bild entsperren</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>Which picture under the drawing</source>
   <translation>Welches Bild unter der Zeichnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlay_strip.py" />
   <source>locked</source>
   <translation>gesperrt</translation>
  </message>
 </context>
 <context>
  <name>Underlaying</name>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlaying.py" />
   <source>Pictures and PDF files</source>
   <translation>Bilder und PDF-Dateien</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlaying.py" />
   <source>Put a picture or PDF page under the drawing</source>
   <translation>Bild oder PDF-Seite unter die Zeichnung legen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlaying.py" />
   <source>Put {} under the drawing</source>
   <translation>{} unter die Zeichnung legen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/underlay/underlaying.py" />
   <source>Reading {}</source>
   <translation>{} wird gelesen</translation>
  </message>
 </context>
 <context>
  <name>VerdictBox</name>
  <message>
   <location filename="../../enclosure_app/window/findings/verdict_box.py" />
   <source>It is a fault, and somebody is to mend it</source>
   <translation>Es ist ein Mangel, und jemand soll ihn beheben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/verdict_box.py" />
   <source>It is as found and may stand: say why</source>
   <translation>Es ist wie gefunden und darf bleiben: den Grund angeben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/verdict_box.py" />
   <source>It was mended; it is listed until the drawing shows it</source>
   <translation>Es wurde behoben; es bleibt in der Liste, bis die Zeichnung es zeigt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/verdict_box.py" />
   <source>Leave it</source>
   <translation>Lassen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/verdict_box.py" />
   <source>Put it down</source>
   <translation>Festhalten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/verdict_box.py" />
   <source>Take the verdict back</source>
   <translation>Entscheidung zurücknehmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/verdict_box.py" />
   <source>The drawing or the check misleads: say how</source>
   <translation>Die Zeichnung oder die Prüfung führt in die Irre: angeben, wie</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/verdict_box.py" />
   <source>Why may it stand?</source>
   <translation>Warum darf es bleiben?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/findings/verdict_box.py" />
   <source>Your name, to be put beside it</source>
   <translation>Ihr Name, der daneben stehen soll</translation>
  </message>
 </context>
 <context>
  <name>Views</name>
  <message>
   <location filename="../../enclosure_app/window/stage/views.py" />
   <source>Panels</source>
   <translation>Leisten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/stage/views.py" />
   <source>The layers unrolled</source>
   <translation>Die Schichten abgewickelt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/stage/views.py" />
   <source>What is wrong</source>
   <translation>Was nicht stimmt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/stage/views.py" />
   <source>What the lines are</source>
   <translation>Was die Linien sind</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/stage/views.py" />
   <source>Where the mouse is, in the drawing's units</source>
   <translation>Wo die Maus ist, in den Einheiten der Zeichnung</translation>
  </message>
 </context>
 <context>
  <name>WalkPage</name>
  <message>
   <location filename="../../enclosure_app/window/walk/page.py" />
   <source>The walk</source>
   <translation>Der Rundgang</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/page.py" />
   <source>‹ Back to the drawing</source>
   <translation>‹ Zurück zur Zeichnung</translation>
  </message>
 </context>
 <context>
  <name>Walking</name>
  <message>
   <location filename="../../enclosure_app/window/stage/walking.py" />
   <source>There is nothing to walk yet: open a drawing, or draw a sheet.</source>
   <translation>Noch gibt es nichts abzugehen: eine Zeichnung öffnen oder eine Bahn zeichnen.</translation>
  </message>
 </context>
 <context>
  <name>Words</name>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <location filename="../../enclosure_app/files/units/judging.py" />
   <source> and </source>
   <translation> und </translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source> and one product of your own</source>
   <translation> und ein eigenes Produkt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/ponding.py" />
   <source> and the </source>
   <translation> und </translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source> and {count} products of your own</source>
   <translation> und {count} eigene Produkte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/sealing.py" />
   <source>"{a}" has no joint with itself: pick two pieces.</source>
   <translation>„{a}“ hat keinen Anschluss mit sich selbst: zwei Stücke wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/lines.py" />
   <source>"{first}" and "{second}" are not of one product: make them so before joining them.</source>
   <translation>„{first}“ und „{second}“ sind nicht aus einem Produkt: erst gleich machen, dann verbinden.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/lines.py" />
   <source>"{name}" does not meet {what} when it goes straight on from its {end}: turn its last stretch, or choose another line.</source>
   <translation>„{name}“ trifft „{what}“ nicht, wenn es vom {end} aus gerade weitergeht: die letzte Strecke drehen oder eine andere Linie wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/lines.py" />
   <source>"{name}" ends there: click where it is to be cut, between its ends.</source>
   <translation>„{name}“ endet dort: zwischen den Enden anklicken, wo geschnitten werden soll.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/pieces.py" />
   <source>"{name}" has no such point: pick one of its points.</source>
   <translation>„{name}“ hat keinen solchen Punkt: einen seiner Punkte wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/looking_up.py" />
   <source>"{name}" is an area; only a line can be changed in this way.</source>
   <translation>„{name}“ ist eine Fläche; nur eine Linie lässt sich so ändern.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/lines.py" />
   <source>"{name}" is closed and has no end to join: split it first.</source>
   <translation>„{name}“ ist geschlossen und hat kein Ende zum Verbinden: erst auftrennen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/ends.py" />
   <location filename="../../enclosure_app/model/edits/lines.py" />
   <source>"{name}" is closed and has no end: split it first.</source>
   <translation>„{name}“ ist geschlossen und hat kein Ende: erst auftrennen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/underlays.py" />
   <source>"{name}" is locked where it lies: unlock it first.</source>
   <translation>„{name}“ ist an seinem Platz gesperrt: erst entsperren.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/ends.py" />
   <source>"{name}" meets nothing when it runs straight on from there: turn its last stretch, or type how far it is to go.</source>
   <translation>„{name}“ trifft auf nichts, wenn es von dort gerade weiterläuft: die letzte Strecke drehen oder eingeben, wie weit es gehen soll.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/merging/merging.py" />
   <source>"{ours}" and "{theirs}" are not copies of one project: they have nothing in common. Open the other one by itself.</source>
   <translation>„{ours}“ und „{theirs}“ sind keine Kopien eines Projekts: Sie haben nichts gemeinsam. Das andere für sich öffnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>'{key}' in {title} {wrong}</source>
   <translation>'{key}' in {title} {wrong}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/sections.py" />
   <source>--{word} {point} (mm) lies in no frame of the drawing: give a point inside one.</source>
   <translation>--{word} {point} (mm) liegt in keinem Rahmen der Zeichnung: einen Punkt in einem Rahmen angeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/labels.py" />
   <source>1 gap, {}</source>
   <translation>1 Lücke, {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/sections.py" />
   <source>1 piece lies outside every frame and is left out (on {layers}).</source>
   <translation>1 Stück liegt außerhalb aller Rahmen und ist ausgelassen (auf {layers}).</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>1/8 in to the outside; the page names no run.</source>
   <translation>1/8 in nach außen; die Seite nennt keine Länge.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>2017, from memory</source>
   <translation>2017, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>24 in past the wall line, where ice dams form.</source>
   <translation>24 in über die Wandflucht hinaus, wo sich Eiswälle bilden.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>2:12 up to but not at 4:12: 19-in laps after a 19-in strip at the eave.</source>
   <translation>2:12 bis unter 4:12: Überlappungen von 19 in nach einem Streifen von 19 in an der Traufe.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>36 in from the eave edge.</source>
   <translation>36 in ab der Traufkante.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>4:12 and steeper. Where the wind speed column of the table applies, 4 in (from memory).</source>
   <translation>4:12 und steiler. Wo die Spalte der Tabelle für Windgeschwindigkeit gilt, 4 in (aus dem Gedächtnis).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/rule_book.py" />
   <source>: use one of {names}.</source>
   <translation>: möglich sind {names}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/rule_book.py" />
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>; did you mean '{name}'?</source>
   <translation>; war '{name}' gemeint?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/ribbon.py" />
   <source>; open from outside to inside by {width}</source>
   <translation>; von außen nach innen {width} offen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>; use one of {names}.</source>
   <translation>; möglich sind {names}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>; use {words}.</source>
   <translation>; möglich sind {words}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A bare staple makes a hole that grows.</source>
   <translation>Eine blanke Klammer macht ein Loch, das wächst.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A bead that is only laid on does not stick to both sides.</source>
   <translation>Eine nur aufgelegte Raupe haftet nicht an beiden Seiten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A bead that sticks to the back as well tears when the joint moves.</source>
   <translation>Eine Raupe, die auch hinten haftet, reißt, wenn sich die Fuge bewegt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>A bent strip, mostly metal, that leads water out over an edge.</source>
   <translation>Ein abgekanteter Streifen, meist aus Metall, der Wasser über eine Kante hinausleitet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/sections.py" />
   <source>A break line needs two places that are apart: draw it again.</source>
   <translation>Eine Bruchlinie braucht zwei Stellen, die auseinander liegen: noch einmal zeichnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A coat alone cracks over a joint that moves.</source>
   <translation>Eine Beschichtung allein reißt über einer Fuge, die sich bewegt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/open_penetration.py" />
   <source>A collar sealed to the pipe and to the sheet, lapped under the sheet above; or a bead and tape all round.</source>
   <translation>Eine Manschette, die an Rohr und Bahn abgedichtet ist und unter die Bahn darüber greift; oder ringsum Dichtstoffraupe und Klebeband.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/looking_up.py" />
   <source>A coordinate is not a finite number: give the place again.</source>
   <translation>Eine Koordinate ist keine endliche Zahl: die Stelle noch einmal angeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A cut that reaches the fold is a hole the size of a finger.</source>
   <translation>Ein Schnitt bis in den Knick ist ein fingergroßes Loch.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/verdicts.py" />
   <source>A decision is about a finding: pick one.</source>
   <translation>Eine Entscheidung gilt einem Befund: einen wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <source>A drop clings to the underside of a flat edge and runs back along it to the wall. It then runs down the wall, into the joint under the flashing or behind the cladding.</source>
   <translation>Ein Tropfen haftet an der Unterseite einer ebenen Kante und läuft daran zurück zur Wand. Dann läuft er die Wand hinab, in die Fuge unter dem Blech oder hinter die Bekleidung.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>A flashing where a roof meets a wall above it.</source>
   <translation>Ein Blech, wo ein Dach an eine höhere Wand stößt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A fold at the edge is a funnel for water and air. Cut it open, press it down, patch it.</source>
   <translation>Eine Falte am Rand ist ein Trichter für Wasser und Luft. Aufschneiden, andrücken, überkleben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/sections.py" />
   <source>A frame needs three corners or more and must not cross itself: draw it again.</source>
   <translation>Ein Rahmen braucht drei oder mehr Ecken und darf sich nicht kreuzen: noch einmal zeichnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A frame that moves breaks its seals; a block right across keeps the water in.</source>
   <translation>Ein Rahmen, der sich bewegt, reißt seine Dichtungen auf; ein Klotz quer über die Tiefe hält das Wasser zurück.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A gap of a finger's width lets out more warmth than it looks.</source>
   <translation>Eine fingerbreite Lücke lässt mehr Wärme hinaus, als man meint.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A gap round it is cold; the damp of the room settles there.</source>
   <translation>Ein Spalt ringsum ist kalt; dort schlägt sich die Feuchte des Raums nieder.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>A glued strip over a joint.</source>
   <translation>Ein geklebter Streifen über einem Stoß.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/upturn_short.py" />
   <source>A higher leg, with the wall's sheet lapped over it, and the cladding kept clear of the roof.</source>
   <translation>Ein höherer Schenkel, darüber die Bahn der Wand, und Abstand der Bekleidung vom Dach.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/open_penetration.py" />
   <source>A hole cut for a pipe is always larger than the pipe. Air leaks round it the whole winter, and water that runs down the sheet follows the pipe in.</source>
   <translation>Ein Loch für ein Rohr ist immer größer als das Rohr. Den ganzen Winter strömt Luft daran vorbei, und Wasser, das die Bahn hinabläuft, folgt dem Rohr nach innen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A hole in the top lies where the water does, and metal that cannot move tears it wide.</source>
   <translation>Ein Loch in der Oberseite liegt dort, wo das Wasser liegt, und Blech, das sich nicht bewegen kann, reißt es auf.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <source>A joint on the trace of the air layer that is not sealed: no adhered sheet over the lap, no fluid-applied coat, and no tape or bead that touches both sides.</source>
   <translation>Ein Anschluss im Verlauf der Luftdichtheitsschicht, der nicht abgedichtet ist: keine verklebte Bahn über der Überlappung, keine flüssig aufgetragene Schicht und weder Klebeband noch Dichtstoffraupe, die beide Seiten berührt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/short_lap.py" />
   <source>A lap in the right order, or on the level, that is shorter than required: the product's own least lap, else the rule book's figure for the place and the slope. The report names the figure that was applied and whether anyone has confirmed it. Half a millimetre is taken for drafting. What follows between the two for a while, as the leg of a flashing does, does not shorten their lap.</source>
   <translation>Eine Überlappung in richtiger Reihenfolge oder in der Waagerechten, die kürzer ist als gefordert: nach der eigenen Mindestüberlappung des Produkts, sonst nach dem Wert des Regelwerks für Ort und Neigung. Der Bericht nennt den angewandten Wert und ob ihn jemand bestätigt hat. Ein halber Millimeter gilt als Zeichenungenauigkeit. Was ein Stück weit zwischen den beiden mitläuft, etwa der Schenkel eines Blechs, verkürzt ihre Überlappung nicht.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <source>A lap in the water layer at which the sheet that goes on uphill is the inner one, so that water running down it goes in behind the lower sheet. Along a level edge with an edge metal (a rake): the metal lies under the sheet. Where two sheets are drawn on top of each other and the order matters, a doubt. A reverse lap that is also short is reported once, with its length.</source>
   <translation>Eine Überlappung der Wasserschutzschicht, bei der die bergauf weitergehende Bahn die innere ist, sodass das daran herablaufende Wasser hinter die untere Bahn gelangt. An einer waagerechten Kante mit Randblech (Ortgang): Das Blech liegt unter der Bahn. Sind zwei Bahnen aufeinander gezeichnet und kommt es auf die Reihenfolge an: ein Zweifel. Eine verkehrte Überlappung, die auch zu kurz ist, wird einmal gemeldet, mit ihrer Länge.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/level_lap.py" />
   <source>A lap in the water layer on a surface flatter than the level limit (1:48 unless the project says otherwise) with the outside above, that is not sealed. An edge metal over the underlayment of a steep roof is passed over: along a rake the roof falls out of the drawing.</source>
   <translation>Eine nicht abgedichtete Überlappung der Wasserschutzschicht auf einer Fläche, die flacher ist als die Grenze für waagerecht (1:48, wenn das Projekt nichts anderes sagt), mit der Außenseite oben. Ein Randblech über der Unterdeckung eines steilen Daches wird übergangen: Am Ortgang fällt das Dach aus der Zeichnung heraus.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A lap that runs out of its mark is short somewhere.</source>
   <translation>Eine Überlappung, die aus ihrer Markierung läuft, ist irgendwo zu kurz.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>A layer map is for a drawing with layers: open one first.</source>
   <translation>Eine Layerzuordnung gehört zu einer Zeichnung mit Layern: zuerst eine öffnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/stops_short.py" />
   <source>A layer that stops keeps nothing apart: air, vapour or water goes round its end. Often the sheet was meant to go on and was forgotten at the edge of the detail, and then it is missing from the next detail too, since each drawing trusts the other.</source>
   <translation>Eine Schicht, die aufhört, trennt nichts: Luft, Dampf oder Wasser geht um ihr Ende herum. Oft sollte die Bahn weitergehen und wurde am Rand des Details vergessen; dann fehlt sie auch im nächsten Detail, weil sich jede Zeichnung auf die andere verlässt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/stops_short.py" />
   <source>A layer whose last piece ends inside the frame, with nothing of that layer between it and the edge where the next drawing takes over. It is measured by the distance that is missing.</source>
   <translation>Eine Schicht, deren letztes Stück im Rahmen endet, ohne dass zwischen ihm und dem Rand, an dem die nächste Zeichnung übernimmt, etwas von dieser Schicht liegt. Gemessen wird die Strecke, die fehlt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/underlays.py" />
   <source>A length cannot be {length:g} mm: type one that is more than 0.</source>
   <translation>Eine Länge kann nicht {length:g} mm sein: mehr als 0 eingeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/lines.py" />
   <source>A line cannot be {distance:g} mm beside another: give more than 0.</source>
   <translation>Eine Linie kann nicht {distance:g} mm neben einer anderen liegen: mehr als 0 angeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/pieces.py" />
   <source>A line cannot be {width:g} mm thick: give 0 or more.</source>
   <translation>Eine Linie kann nicht {width:g} mm dick sein: 0 oder mehr angeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/pieces.py" />
   <source>A line needs at least three points that are apart: give another place.</source>
   <translation>Eine Linie braucht mindestens drei Punkte, die auseinander liegen: eine andere Stelle angeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/pieces.py" />
   <source>A line needs at least two points that are apart: give another place.</source>
   <translation>Eine Linie braucht mindestens zwei Punkte, die auseinander liegen: eine andere Stelle angeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>A line of sealant or foam that closes a joint.</source>
   <translation>Eine Raupe aus Dichtstoff oder Schaum, die einen Anschluss schließt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/edge_cover_short.py" />
   <source>A longer membrane, or a second one lapped over its upper end.</source>
   <translation>Eine längere Bahn oder eine zweite, die über ihr oberes Ende greift.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/site.py" />
   <source>A look is at an item of the site list: pick one.</source>
   <translation>Ein Rundgang gilt einer Stelle der Baustellenliste: eine wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/ponding.py" />
   <source>A low point of the outer face of the water layer with no drain, and how deep water stands in it before it runs over on its lower side. Less than the drafting slop is passed over.</source>
   <translation>Ein Tiefpunkt der Außenseite der Wasserschutzschicht ohne Ablauf, und wie tief das Wasser darin steht, bevor es auf der niedrigeren Seite überläuft. Weniger als die Zeichenungenauigkeit wird übergangen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>A membrane, underlayment or housewrap: comes in rolls, is laid in courses.</source>
   <translation>Eine Membran, Unterdeckung oder Fassadenbahn: kommt in Rollen und wird in Lagen verlegt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/said/photograph.py" />
   <source>A photograph is not in the project: take it in again.</source>
   <translation>Ein Foto ist nicht im Projekt: noch einmal aufnehmen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/bcf/topics.py" />
   <source>A photograph.</source>
   <translation>Ein Foto.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A pipe that moves tears its collar.</source>
   <translation>Ein Rohr, das sich bewegt, reißt seine Manschette ab.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/open_penetration.py" />
   <source>A pipe, duct or beam that meets a sheet or board of the air or water layer where no collar, tape, bead or gasket touches both.</source>
   <translation>Ein Rohr, Kanal oder Balken, der auf eine Bahn oder Platte der Luftdichtheits- oder Wasserschutzschicht trifft, ohne dass Manschette, Klebeband, Dichtstoffraupe oder Dichtung beide berührt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/gap.py" />
   <source>A place on the trace where the pen has to leave the layer: two pieces that neither touch nor lap. It is measured by the shortest distance between them.</source>
   <translation>Eine Stelle im Verlauf, an der der Stift die Schicht verlassen muss: zwei Stücke, die sich weder berühren noch überlappen. Gemessen wird ihr kürzester Abstand.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>A place where a pen that follows the layer has to leave it; its length is the gap.</source>
   <translation>Eine Stelle, an der ein Stift, der der Schicht folgt, sie verlassen muss; ihre Länge ist die Lücke.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/verdicts.py" />
   <source>A remark is about a finding: pick one.</source>
   <translation>Eine Bemerkung gilt einem Befund: einen wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/upturn_short.py" />
   <source>A roof sheet or flashing that turns up a wall and ends lower than required. The height is measured plumb, from the fold to the top of the highest leg at that joint.</source>
   <translation>Eine Dachbahn oder ein Blech, das an einer Wand aufkantet und niedriger endet als gefordert. Die Höhe wird lotrecht gemessen, vom Knick bis zur Oberkante des höchsten Schenkels an diesem Anschluss.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/ponding.py" />
   <source>A rough-opening pan is sealed or sloped to the outside: IRC R703.4.1, second-hand. That a roof must drain is common practice, no source.</source>
   <translation>Eine Wanne in der Rohbauöffnung ist abgedichtet oder nach außen geneigt: IRC R703.4.1, aus zweiter Hand. Dass ein Dach entwässern muss, ist übliche Praxis, ohne Quelle.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/level_lap.py" />
   <source>A sealed lap: an adhered sheet, a tape over the edge, a bead in the lap. Better, give the surface a fall.</source>
   <translation>Eine abgedichtete Überlappung: verklebte Bahn, Klebeband über der Kante, Dichtstoffraupe dazwischen. Besser noch: der Fläche Gefälle geben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A seam that only looks closed opens with the first frost.</source>
   <translation>Eine Naht, die nur geschlossen aussieht, öffnet sich beim ersten Frost.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/sections.py" />
   <source>A section needs a name: type one.</source>
   <translation>Ein Schnitt braucht einen Namen: bitte eingeben.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>A setting: drafting slop. Pieces no further apart than this touch.</source>
   <translation>Eine Einstellung: Zeichenungenauigkeit. Stücke, die nicht weiter auseinander sind, berühren sich.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>A setting: sheets that lap are drawn up to so far apart, so that they can be told apart.</source>
   <translation>Eine Einstellung: Überlappte Bahnen werden bis zu so weit auseinander gezeichnet, damit man sie unterscheiden kann.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>A setting: the angle from the vertical at which rain still arrives.</source>
   <translation>Eine Einstellung: der Winkel gegen die Lotrechte, in dem Regen noch ankommt.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>A setting: the flattest slope that the IBC allows a low-slope membrane.</source>
   <translation>Eine Einstellung: die flachste Neigung, die der IBC für eine Dachbahn auf flacher Neigung erlaubt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A sheet that spans a corner tears when somebody leans on it.</source>
   <translation>Eine Bahn, die eine Ecke überspannt, reißt, wenn sich jemand dagegen lehnt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>A sleeve that seals a pipe to the sheet it passes through.</source>
   <translation>Eine Hülse, die ein Rohr an der Bahn abdichtet, durch die es geht.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>A strip along a roof's edge from which drops fall clear.</source>
   <translation>Ein Streifen am Dachrand, von dem Tropfen frei abfallen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <source>A tape over the joint, a bead or gasket between the two, or an adhered sheet across both. If the joint is sealed in a way that the drawing cannot show, say so on that joint.</source>
   <translation>Klebeband über dem Stoß, eine Dichtstoffraupe oder Dichtung dazwischen oder eine verklebte Bahn über beide. Ist der Anschluss auf eine Weise abgedichtet, die die Zeichnung nicht zeigen kann, das an diesem Anschluss angeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>A tape that grips one side by a few millimetres lets go there first.</source>
   <translation>Ein Klebeband, das eine Seite nur um wenige Millimeter fasst, löst sich dort zuerst.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>A tray under a window that leads water out.</source>
   <translation>Eine Wanne unter einem Fenster, die Wasser hinausleitet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>A wall that stands up past the roof's edge.</source>
   <translation>Eine Wand, die über den Dachrand aufragt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/wet_route.py" />
   <source>A way for a drop that lands on the outer face of the water layer, runs downhill on it, falls from its edges, and ends up on the inner side: behind a sheet that is lapped the wrong way round, through a gap, over the back of a pan that slopes inwards. With several outside marks it rains in the open air round each, and what comes through the layer that keeps it there is behind it.</source>
   <translation>Ein Weg für einen Tropfen, der auf der Außenseite der Wasserschutzschicht landet, daran hinabläuft, von ihren Kanten fällt und auf der Innenseite endet: hinter einer verkehrt überlappten Bahn, durch eine Lücke, über die Rückseite einer nach innen geneigten Wanne. Bei mehreren Außenmarken regnet es in der Außenluft um jede; was durch die Schicht dringt, die es dort hält, ist dahinter.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ASHRAE Fundamentals vapour table, from memory</source>
   <translation>ASHRAE Fundamentals Dampftabelle, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ASHRAE Fundamentals vapour table, from memory (15-lb felt, dry cup; 5.6 perm wet cup)</source>
   <translation>ASHRAE Fundamentals Dampftabelle, aus dem Gedächtnis (Bitumenbahn 15 lb, Trockenverfahren; 5.6 perm Feuchtverfahren)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ASHRAE Fundamentals vapour table, from memory (polyethylene, 6 mil); conductivity ISO 10456:2007, from memory</source>
   <translation>ASHRAE Fundamentals Dampftabelle, aus dem Gedächtnis (Polyethylen, 6 mil); Wärmeleitfähigkeit ISO 10456:2007, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/xlsx_file.py" />
   <source>About this table</source>
   <translation>Über diese Tabelle</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Above the finished surface: paving, ballast and planting count. At level thresholds 75 mm, with conditions. DIN 18531-1 (from memory) agrees.</source>
   <translation>Über der fertigen Oberfläche: Pflaster, Kies und Bepflanzung zählen mit. An niveaugleichen Schwellen 75 mm, mit Bedingungen. DIN 18531-1 (aus dem Gedächtnis) stimmt überein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/verdict_words.py" />
   <source>Accepted</source>
   <translation>Angenommen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/layers.py" />
   <source>Add {product}</source>
   <translation>{product} hinzufügen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <location filename="../../enclosure_app/reports/pdf/layers.py" />
   <source>Air</source>
   <translation>Luft</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/gap.py" />
   <source>Air and water find the gap. No published rule allows a width that is harmless: a slit one millimetre wide lets some seven litres of air through each metre and second at 75 pascal (sharp-edged orifice, coefficient 0.6, computed). In the water layer a gap that rain reaches is a leak; one that no rain reaches is a doubt. A gap in the vapour or heat layer is a doubt too.</source>
   <translation>Luft und Wasser finden die Lücke. Keine veröffentlichte Regel erlaubt eine harmlose Breite: Ein Schlitz von einem Millimeter lässt bei 75 Pascal je Meter und Sekunde rund sieben Liter Luft durch (scharfkantige Öffnung, Beiwert 0,6, berechnet). In der Wasserschutzschicht ist eine Lücke, die der Regen erreicht, ein Leck; eine, die er nicht erreicht, ein Zweifel. Auch eine Lücke in der Dampfbrems- oder Wärmedämmschicht ist ein Zweifel.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Air space</source>
   <translation>Luftraum</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Air, vapour and water take the way that is left open, however narrow it is.</source>
   <translation>Luft, Dampf und Wasser nehmen den Weg, der offen bleibt, und sei er noch so schmal.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/pdf/layers.py" />
   <source>All layers</source>
   <translation>Alle Schichten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <source>Along this level edge {upper} lies under {lower}: water runs in over the metal.</source>
   <translation>An dieser waagerechten Kante liegt {upper} unter {lower}: Wasser läuft über dem Blech hinein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <source>Also said</source>
   <translation>Außerdem gesagt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/pieces.py" />
   <source>An area needs three corners or more, and its outline must not cross itself: move or add a point.</source>
   <translation>Eine Fläche braucht drei oder mehr Ecken, und ihr Umriss darf sich nicht kreuzen: einen Punkt verschieben oder einfügen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/edge_cover_short.py" />
   <source>An eave membrane (ice barrier) that ends too near the eave: its length along the slope, from the roof's edge, against the length needed to pass the wall line by the required distance. From which face of the wall that is counted is a setting; the report's figure says which book was applied.</source>
   <translation>Eine Traufbahn (Schutz gegen Eisrückstau), die zu nah an der Traufe endet: ihre Länge in der Dachschräge ab dem Dachrand, verglichen mit der Länge, die nötig ist, um die Wandflucht um das geforderte Maß zu überschreiten. Ab welcher Seite der Wand das zählt, ist eine Einstellung; der Wert im Bericht nennt das angewandte Regelwerk.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>An end on the frame: the layer goes on in the next drawing.</source>
   <translation>Ein Ende am Rahmen: Die Schicht geht in der nächsten Zeichnung weiter.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>An end that faces up catches the water that runs down the wall.</source>
   <translation>Ein nach oben offenes Ende fängt das Wasser, das an der Wand herabläuft.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Approved Document C, BS 8215, from memory</source>
   <translation>Approved Document C, BS 8215, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Apron flashing</source>
   <translation>Brustblech</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Are its drain holes open, and does what gets in at the sill find its way out?</source>
   <translation>Sind seine Entwässerungsöffnungen frei, und läuft ab, was an der Brüstung eindringt?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Are its ends turned up or dammed, so that nothing runs off sideways into the wall?</source>
   <translation>Sind seine Enden aufgekantet oder geschlossen, so dass nichts seitlich in die Wand läuft?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/rule_pictures.py" />
   <location filename="../../enclosure_app/reports/tables/site.py" />
   <source>As drawn</source>
   <translation>Wie gezeichnet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/rule_pictures.py" />
   <source>As it should be</source>
   <translation>Wie es sein soll</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_menu.py" />
   <source>As named</source>
   <translation>Wie benannt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_menu.py" />
   <source>As named: {guess}</source>
   <translation>Wie benannt: {guess}</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Asphalt felt on the roof</source>
   <translation>Bitumenbahn auf dem Dach</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Asphalt felt on the wall</source>
   <translation>Bitumenbahn an der Wand</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Asphalt shingles</source>
   <translation>Bitumenschindeln</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Asphalt shingles.</source>
   <translation>Bitumenschindeln.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/site.py" />
   <source>At least</source>
   <translation>Mindestens</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>At least 24 in inside the exterior wall line, where there is a history of ice dams. Not for detached structures without conditioned floor area.</source>
   <translation>Mindestens 24 in innerhalb der Außenwandflucht, wo Eiswälle bekannt sind. Nicht für freistehende Bauten ohne beheizte Fläche.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>At least 36 in along the slope from the eave edge; the longer of the two holds.</source>
   <translation>Mindestens 36 in in der Schräge ab der Traufkante; das Längere von beiden gilt.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>At least 4 in high and 4 in wide; the leg continuous under the siding. Read in the editions 2015 and 2018.</source>
   <translation>Mindestens 4 in hoch und 4 in breit; der Schenkel durchgehend unter der Bekleidung. In den Ausgaben 2015 und 2018 gelesen.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>At least 4 in up the wall and 4 in onto the deck; the sheet on the wall laps over it.</source>
   <translation>Mindestens 4 in die Wand hinauf und 4 in auf die Schalung; die Bahn der Wand greift darüber.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>BS 5534, from memory, low confidence</source>
   <translation>BS 5534, aus dem Gedächtnis, wenig sicher</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>BS 6229 cl. 4.5, second-hand</source>
   <translation>BS 6229 Abs. 4.5, aus zweiter Hand</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Base flashing</source>
   <translation>Wandanschlussblech</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Battens and furring</source>
   <translation>Lattung und Konterlattung</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Beam through the layer</source>
   <translation>Balken durch die Schicht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Below ground: go into no trench, and stand at no bank, that is not shored or sloped back as local rules say.</source>
   <translation>Unter Gelände: keinen Graben betreten und an keiner Böschung stehen, die nicht nach den örtlichen Regeln verbaut oder abgeböscht ist.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Below this a roof cannot carry shingles.</source>
   <translation>Darunter kann ein Dach keine Schindeln tragen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/typed/typed_size.py" />
   <source>Between {low} and {high}</source>
   <translation>Zwischen {low} und {high}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/site.py" />
   <source>Beware</source>
   <translation>Vorsicht</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Bituminous roof membrane</source>
   <translation>Bituminöse Dachabdichtung</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Bituminous vapour control layer</source>
   <translation>Bituminöse Dampfsperrbahn</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>Blocks repeat too often in this drawing; the repeats after the first {most} were left out (first: {first}).</source>
   <translation>In dieser Zeichnung wiederholen sich Blöcke zu oft; die Wiederholungen nach den ersten {most} wurden ausgelassen (zuerst: {first}).</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Blockwork</source>
   <translation>Mauerwerk aus Blocksteinen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/tracing/guiding.py" />
   <location filename="../../enclosure_app/planning/tracing/tracing.py" />
   <source>Both clicks lie on one place: click where the sheet starts and where it ends.</source>
   <translation>Beide Klicks liegen auf einer Stelle: anklicken, wo die Bahn anfängt und wo sie endet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>Break lines</source>
   <translation>Bruchlinien</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Brick veneer</source>
   <translation>Verblendmauerwerk</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Brickwork</source>
   <translation>Ziegelmauerwerk</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Building paper</source>
   <translation>Bitumenpapier</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Built-up roof: membrane and plies up the wall, behind the sheathing paper.</source>
   <translation>Mehrlagiges Dach: Bahn und Lagen die Wand hinauf, hinter dem Bitumenpapier.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Butyl tape</source>
   <translation>Butylband</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <source>By</source>
   <translation>Von</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>By hand, other products were given: {count}.</source>
   <translation>Von Hand wurden andere Produkte gegeben: {count}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/sayings.py" />
   <source>By whom</source>
   <translation>Von wem</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Cant strip</source>
   <translation>Keilleiste</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Capillary break (damp-proof course)</source>
   <translation>Kapillarsperre (Mauersperrbahn)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/edge_cover_short.py" />
   <source>Carry it further up the roof, past the wall line, or lap a second sheet over its end.</source>
   <translation>Weiter am Dach hinaufführen, über die Wandflucht hinaus, oder eine zweite Bahn über das Ende greifen lassen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/upturn_short.py" />
   <source>Carry it higher up the wall and lap the wall's sheet over it.</source>
   <translation>An der Wand höher hinaufführen und die Bahn der Wand darüber greifen lassen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/stops_short.py" />
   <source>Carry it on to the edge of the drawing, or draw the piece that takes over from it.</source>
   <translation>Bis zum Rand der Zeichnung weiterführen oder das Stück zeichnen, das übernimmt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/gap.py" />
   <source>Carry one on to lap the other, or add the tape, bead or flashing that joins them.</source>
   <translation>Eines von beiden weiterführen und überlappen lassen, oder Klebeband, Dichtstoffraupe oder Blech ergänzen, das sie verbindet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <source>Carry the edge further out, so that the drop falls clear of the wall.</source>
   <translation>Die Kante weiter hinausführen, sodass der Tropfen frei vor der Wand fällt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/stops_short.py" />
   <source>Carry the layer on to the edge of the drawing, or to the piece of another product that takes over from it. If the detail ends where the layer ends, move the frame to that place.</source>
   <translation>Die Schicht bis zum Rand der Zeichnung weiterführen oder bis zu dem Stück eines anderen Produkts, das übernimmt. Endet das Detail dort, wo die Schicht endet, den Rahmen dorthin setzen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/gap.py" />
   <source>Carry the sheet on to the next one and lap it, or draw the piece that joins the two: a tape, a bead of sealant, a flashing. If the two do meet on site, draw them meeting.</source>
   <translation>Die Bahn bis zur nächsten weiterführen und überlappen lassen, oder das Stück zeichnen, das beide verbindet: Klebeband, Dichtstoffraupe, Blech. Treffen sich die beiden auf der Baustelle, dann auch so zeichnen.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Cellular glass</source>
   <translation>Schaumglas</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Cellulose fibre</source>
   <translation>Zellulosedämmung</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Cement board</source>
   <translation>Zementplatte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/layers.py" />
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>Change {product}</source>
   <translation>{product} ändern</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Check: how slanting rain arrives</source>
   <translation>Prüfung: wie schräg der Regen ankommt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Check: lapped sheets are drawn this near</source>
   <translation>Prüfung: überlappte Bahnen sind so nah gezeichnet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Check: pieces this near touch</source>
   <translation>Prüfung: so nahe Stücke berühren sich</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Check: what is flatter is level</source>
   <translation>Prüfung: was flacher ist, ist waagerecht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>Choose a row to see it lit up, and say what it is.</source>
   <translation>Eine Zeile wählen, um sie hervorgehoben zu sehen, und angeben, was sie ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Cladding above a roof</source>
   <translation>Bekleidung über einem Dach</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Cladding above paving</source>
   <translation>Bekleidung über Pflaster</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Cladding above the ground</source>
   <translation>Bekleidung über dem Gelände</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Class II by IRC R702.7, second-hand; the upper bound of the class is taken</source>
   <translation>Klasse II nach IRC R702.7, aus zweiter Hand; die obere Grenze der Klasse ist genommen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Closed by glue, coat, tape or bead, so that no air passes.</source>
   <translation>Mit Kleber, Beschichtung, Klebeband oder Dichtstoff geschlossen, sodass keine Luft hindurchgeht.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>Closed outlines: each is a section, judged inside it</source>
   <translation>Geschlossene Umrisse: Jeder ist ein Schnitt und wird innen beurteilt</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Closed-cell foam, sprayed</source>
   <translation>Geschlossenzelliger Spritzschaum</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/gap.py" />
   <source>Codes ask for a continuous, sealed air barrier and name no harmless gap (International Energy Conservation Code, air barrier table, second-hand). Following each layer round the section without lifting the pen is common practice, no source.</source>
   <translation>Vorschriften verlangen eine durchgehende, abgedichtete Luftdichtheitsschicht und nennen keine harmlose Lücke (International Energy Conservation Code, Tabelle zur Luftdichtheit, aus zweiter Hand). Jede Schicht ohne Absetzen des Stiftes rings um den Schnitt zu verfolgen ist übliche Praxis, ohne Quelle.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Collar round a pipe</source>
   <translation>Manschette um ein Rohr</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Common practice</source>
   <translation>Übliche Praxis</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Compression gasket</source>
   <translation>Kompressionsdichtung</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Concrete, cast</source>
   <translation>Ortbeton</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_fields.py" />
   <source>Conductivity: it cannot be 0; leave it empty if unknown.</source>
   <translation>Wärmeleitfähigkeit: Sie kann nicht 0 sein; leer lassen, wenn unbekannt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_figures.py" />
   <source>Conductivity: “{text}” is none; type it in W/(m·K), as in 0.035, or as in 0.24 Btu.</source>
   <translation>Wärmeleitfähigkeit: „{text}“ ist keine; in W/(m·K) eingeben, etwa 0.035, oder etwa 0.24 Btu.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <location filename="../../enclosure_app/reports/tables/site.py" />
   <source>Control</source>
   <translation>Schicht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>Control layer</source>
   <translation>Schicht</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Coping</source>
   <translation>Mauerabdeckung</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Cork board</source>
   <translation>Korkplatte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/notes.py" />
   <source>Could not be repaired: {what}.</source>
   <translation>Ließ sich nicht reparieren: {what}.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Counter-flashing</source>
   <translation>Überhangblech</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Counter-flashing over the lower flashing at masonry.</source>
   <translation>Überhangblech über dem unteren Blech an Mauerwerk.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/pdf/notes.py" />
   <source>Cover</source>
   <translation>Deckblatt</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>DIN 18531-1</source>
   <translation>DIN 18531-1</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>DIN 18533-1, from memory</source>
   <translation>DIN 18533-1, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>Damaged beyond repair and left out: {count} part.</source>
   <translation>Unrettbar beschädigt und ausgelassen: {count} Teil.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>Damaged beyond repair and left out: {count} parts.</source>
   <translation>Unrettbar beschädigt und ausgelassen: {count} Teile.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Damp-proof course above the ground</source>
   <translation>Mauersperrbahn über dem Gelände</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Damp-proofing coat</source>
   <translation>Feuchteschutzanstrich</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <source>Date</source>
   <translation>Datum</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/summary.py" />
   <source>Decided about, and no longer found: {findings}</source>
   <translation>Entschieden und nicht mehr gefunden: {findings}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Depth of the rafters</source>
   <translation>Höhe der Sparren</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Depth of the studs</source>
   <translation>Tiefe der Ständer</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Depth of the window frame</source>
   <translation>Tiefe des Fensterrahmens</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Did the foam leave the frame straight, and does what opens in it still open freely?</source>
   <translation>Ist der Rahmen trotz des Schaums gerade, und lässt sich noch leicht öffnen, was sich darin öffnen soll?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Do both its edges reach below what they cover, stand clear of it and bend to a drip?</source>
   <translation>Reichen beide Ränder tiefer als das, was sie decken, stehen sie davon ab und sind sie zu einer Tropfkante gebogen?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Do its lengths lap each other, and is the lap sealed where it is to be?</source>
   <translation>Überlappen sich die einzelnen Längen, und ist die Überlappung abgedichtet, wo sie es sein soll?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Do the fasteners have caps or washers, flush and none torn through?</source>
   <translation>Haben die Befestigungen Kappen oder Scheiben, bündig und keine durchgerissen?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Do the fasteners hold in the deck, in the rows and as close as the maker says?</source>
   <translation>Halten die Befestiger in der Schalung, in den Reihen und so dicht, wie der Hersteller es sagt?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Do the fasteners sit in studs or battens, as close as the maker says?</source>
   <translation>Sitzen die Befestigungen in Ständern oder Latten, so dicht, wie der Hersteller es verlangt?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Do the two lie tight against each other, with every gap filled?</source>
   <translation>Liegen beide dicht aneinander, und ist jede Lücke gefüllt?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Do the two meet with no gap, and is the joint closed with what the drawing has for it?</source>
   <translation>Treffen die beiden ohne Spalt aufeinander, und ist die Fuge mit dem geschlossen, was die Zeichnung dafür vorsieht?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Does it fall to the outside all along, with no place where water stands?</source>
   <translation>Hat es durchgehend Gefälle nach außen, ohne eine Stelle, an der Wasser steht?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Does it sit in the middle, with about the same width on each side of the joint?</source>
   <translation>Sitzt es mittig, mit etwa gleicher Breite auf beiden Seiten der Fuge?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Does it stand plumb and firm, on blocks that do not dam the water at the sill?</source>
   <translation>Steht er lotrecht und fest, auf Klötzen, die das Wasser an der Brüstung nicht stauen?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Does its back stand up behind the frame, and is the front edge left open?</source>
   <translation>Steht die Rückseite hinter dem Rahmen hoch, und ist die Vorderkante offen geblieben?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Does its lower edge stand clear of the face below and bend to a drip?</source>
   <translation>Steht die Unterkante frei von der Fläche darunter, mit einer Tropfkante?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Does its top fall to the side that the drawing shows, with no place where water stands?</source>
   <translation>Fällt die Oberseite zu der Seite, die die Zeichnung zeigt, ohne eine Stelle, an der Wasser steht?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Does the edge lie flat, with no wrinkle and no fishmouth that leads in?</source>
   <translation>Liegt der Rand flach, ohne Falte und ohne Fischmaul, das nach innen führt?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Does the foam fill the gap all round, with no hollow and no crack along its edges?</source>
   <translation>Füllt der Schaum die Fuge ringsum, ohne Hohlraum und ohne Riss an den Rändern?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Does the insulation lie tight all round it, with nothing left out below and behind?</source>
   <translation>Liegt die Dämmung ringsum dicht an, auch unten und hinten ohne Lücke?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Does the sheet above lap over the collar's upper edge, or is that edge sealed?</source>
   <translation>Überlappt die Bahn darüber den oberen Rand der Manschette, oder ist dieser Rand abgedichtet?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Does the sheet lie tight in the fold, with no hollow behind it?</source>
   <translation>Liegt die Bahn satt im Knick, ohne Hohlraum dahinter?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Does what seals it go on unbroken round all its corners: sill, both sides and head?</source>
   <translation>Läuft die Abdichtung ohne Unterbrechung um alle Ecken: Brüstung, beide Seiten und Sturz?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Does {over} lie over {under}, as drawn?</source>
   <translation>Liegt {over} über {under}, wie gezeichnet?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Does {over} lie over {under}, so that water runs off over the joint?</source>
   <translation>Liegt {over} über {under}, so dass Wasser über die Fuge abläuft?</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Door frame</source>
   <translation>Türrahmen</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Double coverage: 19-in head laps, 17-in exposure, two layers at the eave.</source>
   <translation>Doppelte Deckung: Höhenüberlappung 19 in, sichtbar 17 in, zwei Lagen an der Traufe.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>Doubt</source>
   <translation>Zweifel</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Drainage mat</source>
   <translation>Drainagematte</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Drained render on insulation.</source>
   <translation>Entwässerter Putz auf Dämmung.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <source>Draw them 3 mm apart, with the sheet that comes from above on the outside.</source>
   <translation>Mit 3 mm Abstand zeichnen, die von oben kommende Bahn außen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <location filename="../../enclosure_app/reports/tables/site.py" />
   <source>Drawing</source>
   <translation>Zeichnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/sheet.py" />
   <source>Drawing of the section “{name}” at {scale}: {tally}.</source>
   <translation>Zeichnung des Schnitts „{name}“ im Maßstab {scale}: {tally}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/handed_over.py" />
   <source>Drawings: {files}</source>
   <translation>Zeichnungen: {files}</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Drip edge</source>
   <translation>Tropfblech</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Drip edge at least 2 in onto the deck; no figure is known for other flashings.</source>
   <translation>Tropfblech mindestens 2 in auf die Schalung; für andere Bleche ist kein Wert bekannt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Drip edge: how far below the deck</source>
   <translation>Tropfblech: wie weit unter die Schalung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Drip edge: how far onto the deck</source>
   <translation>Tropfblech: wie weit auf die Schalung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Drip edge: lap of its lengths</source>
   <translation>Tropfblech: Überlappung der Längen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Drip: how far clear of the wall</source>
   <translation>Abtropfen: wie weit frei vor der Wand</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Duct</source>
   <translation>Kanal</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Dust, frost and damp keep it from sticking, and nobody sees it later.</source>
   <translation>Staub, Frost und Feuchte verhindern das Haften, und später sieht es niemand.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>EN 1745 typical facing brick, from memory</source>
   <translation>EN 1745 übliche Verblendziegel, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Each is a hole; look across it against the light.</source>
   <translation>Jede ist ein Loch; gegen das Licht darüber hinwegsehen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Eave</source>
   <translation>Traufe</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Eave membrane: how far past the wall line</source>
   <translation>Traufbahn: wie weit über die Wandflucht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Eave membrane: least length on a steep slope</source>
   <translation>Traufbahn: Mindestlänge auf steiler Neigung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Eave membrane: least length up the slope</source>
   <translation>Traufbahn: Mindestlänge die Schräge hinauf</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Eave membrane: slope that counts as steep</source>
   <translation>Traufbahn: Neigung, die als steil gilt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Eave membrane: wall line at the inner face</source>
   <translation>Traufbahn: Wandflucht an der Innenseite</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Eave: underlayment over the drip edge</source>
   <translation>Traufe: Unterdeckung über dem Tropfblech</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/edge_cover_short.py" />
   <source>Edge cover short</source>
   <translation>Traufbahn zu kurz</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>End lap of self-adhered underlayment</source>
   <translation>Stoßüberlappung selbstklebender Unterdeckung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>End lap of underlayment</source>
   <translation>Stoßüberlappung von Unterdeckung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>End lap of wall sheets, side by side</source>
   <translation>Stoßüberlappung von Wandbahnen nebeneinander</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Engineered timber</source>
   <translation>Ingenieurholz</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>European practice (British and German standards)</source>
   <translation>Europäische Praxis (britische und deutsche Normen)</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Exactly 4:12 is a single layer.</source>
   <translation>Genau 4:12 ist eine einfache Lage.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Expanded polystyrene</source>
   <translation>Expandiertes Polystyrol</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Extruded polystyrene</source>
   <translation>Extrudiertes Polystyrol</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Fall of the roof away from the parapet</source>
   <translation>Gefälle des Daches von der Attika weg</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Fascia board</source>
   <translation>Traufbrett</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>Fault</source>
   <translation>Mangel</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Feel it with a finger or use a mirror; the far side is the one left out.</source>
   <translation>Mit dem Finger fühlen oder einen Spiegel nehmen; vergessen wird die abgewandte Seite.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Fibreboard</source>
   <translation>Holzfaserplatte, hart</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <source>Figure from</source>
   <translation>Wert aus</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/finding_words.py" />
   <source>Figure from: {basis}</source>
   <translation>Wert aus: {basis}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/pdf/layers.py" />
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <source>Findings</source>
   <translation>Befunde</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Finished state of the splash zone; 300 mm are to be planned.</source>
   <translation>Fertiger Zustand des Spritzwasserbereichs; 300 mm sind zu planen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <source>Flashing is applied shingle-fashion (International Residential Code R703.4, second-hand); felt is applied with the upper layer over the lower (R703.2, second-hand); drip edge order at eaves and rakes (R905.2.8.5, from memory).</source>
   <translation>Bleche werden schuppenartig angebracht (International Residential Code R703.4, aus zweiter Hand); bei Bitumenbahnen liegt die obere Lage über der unteren (R703.2, aus zweiter Hand); Reihenfolge am Tropfblech von Traufe und Ortgang (R905.2.8.5, aus dem Gedächtnis).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/wet_route.py" />
   <source>Flashing is applied shingle-fashion and drains to the outside: IRC R703.4, second-hand. That water runs downhill and behind whatever is lapped against it is common practice, no source.</source>
   <translation>Bleche werden schuppenartig angebracht und entwässern nach außen: IRC R703.4, aus zweiter Hand. Dass Wasser bergab und hinter alles läuft, was dagegen überlappt ist, ist übliche Praxis, ohne Quelle.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Flashing tape, self-adhered</source>
   <translation>Anschlussklebeband, selbstklebend</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Flattest low-slope roof</source>
   <translation>Flachstes flach geneigtes Dach</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Flattest roof for covering on underlayment</source>
   <translation>Flachstes Dach für Deckung auf Unterdeckung</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Fluid-applied flashing at openings</source>
   <translation>Flüssige Abdichtung an Öffnungen</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Fluid-applied membrane, vapour-open</source>
   <translation>Flüssige Membran, diffusionsoffen</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Fluid-applied membrane, vapour-tight</source>
   <translation>Flüssige Membran, dampfdicht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Flush eave</source>
   <translation>Bündige Traufe</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Foam bead round an opening</source>
   <translation>Schaumfuge um eine Öffnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Foam goes on swelling and pushes a frame out of true.</source>
   <translation>Schaum quillt nach und drückt einen Rahmen aus dem Lot.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Foam that did not stick leaves a crack one can see against the light.</source>
   <translation>Schaum, der nicht haftet, hinterlässt einen Riss, den man gegen das Licht sieht.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Foil tape</source>
   <translation>Aluminiumklebeband</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Foil-faced insulating sheathing, joints taped</source>
   <translation>Kaschierte Dämmplatte, Stöße verklebt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/folds.py" />
   <source>Fold of {sheet}</source>
   <translation>Knick: {sheet}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/folds.py" />
   <source>Fold {number} of {sheet}, from below</source>
   <translation>Knick {number} von unten: {sheet}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/stops_short.py" />
   <source>Following each layer from one end of the drawing to the other without lifting the pen is common practice, no source.</source>
   <translation>Jede Schicht von einem Ende der Zeichnung zum anderen ohne Absetzen des Stiftes zu verfolgen ist übliche Praxis, ohne Quelle.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Foundation above the ground</source>
   <translation>Fundament über dem Gelände</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Foundation above the ground, behind veneer</source>
   <translation>Fundament über dem Gelände, hinter Verblendung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>Frame of a section</source>
   <translation>Rahmen eines Schnitts</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Framing above the ground</source>
   <translation>Tragwerk über dem Gelände</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>From the inner face of the wall.</source>
   <translation>Ab der Innenseite der Wand.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/gap.py" />
   <source>Gap</source>
   <translation>Lücke</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Gasket under the sill plate</source>
   <translation>Dichtung unter der Schwelle</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Glass fibre</source>
   <translation>Glaswolle</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Glazing</source>
   <translation>Verglasung</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Gravel</source>
   <translation>Kies</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Gutter</source>
   <translation>Dachrinne</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Gypsum board</source>
   <translation>Gipsplatte</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Gypsum board, joints and edges sealed</source>
   <translation>Gipsplatte, Stöße und Ränder abgedichtet</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Gypsum sheathing</source>
   <translation>Gipsplatte für außen</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Head flashing</source>
   <translation>Sturzblech</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <location filename="../../enclosure_app/reports/pdf/layers.py" />
   <source>Heat</source>
   <translation>Wärme</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Height of the flashing up the wall</source>
   <translation>Höhe des Blechs an der Wand</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Height of the parapet above the roof</source>
   <translation>Höhe der Attika über dem Dach</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Horizontal lap, upper over lower, at least 2 in. Some pages swap this with the 6 in of vertical joints.</source>
   <translation>Waagerechte Überlappung, obere über untere, mindestens 2 in. Manche Seiten vertauschen das mit den 6 in senkrechter Stöße.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Horizontal seams, 4 in.</source>
   <translation>Waagerechte Nähte, 4 in.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Housewrap, fastened</source>
   <translation>Fassadenbahn, befestigt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>How far the roof boards stand past the cladding</source>
   <translation>Überstand der Dachplatten über die Bekleidung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>How far the slopes are drawn on either side</source>
   <translation>Wie weit die Dachflächen beiderseits gezeichnet sind</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/underlays.py" />
   <source>How large the paper of "{name}" is stands nowhere: click two places on it and type how far apart they are.</source>
   <translation>Wie groß das Papier von „{name}“ ist, steht nirgends: zwei Stellen darauf anklicken und eingeben, wie weit sie auseinander sind.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/underlays.py" />
   <source>How strong a picture is painted goes from 0 to 1.</source>
   <translation>Wie kräftig ein Bild gemalt wird, geht von 0 bis 1.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IBC 1507.10.1 to 1507.15.1</source>
   <translation>IBC 1507.10.1 bis 1507.15.1</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/section/side_words.py" />
   <source>INSIDE</source>
   <translation>INNEN</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC R317.1 (2), from memory</source>
   <translation>IRC R317.1 (2), aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC R317.1 (5), from memory</source>
   <translation>IRC R317.1 (5), aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC R404.1.6, second-hand</source>
   <translation>IRC R404.1.6, aus zweiter Hand</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC R506.2.3, second-hand</source>
   <translation>IRC R506.2.3, aus zweiter Hand</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC R703.2, second-hand</source>
   <translation>IRC R703.2, aus zweiter Hand</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC R703.4.1, second-hand</source>
   <translation>IRC R703.4.1, aus zweiter Hand</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC R703.7.2.1, from memory</source>
   <translation>IRC R703.7.2.1, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC R703.9.2 item 8</source>
   <translation>IRC R703.9.2 Punkt 8</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC R905.1.2, from memory</source>
   <translation>IRC R905.1.2, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC R905.1.2, second-hand</source>
   <translation>IRC R905.1.2, aus zweiter Hand</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC R905.2.2, Table R905.1.1(2), second-hand</source>
   <translation>IRC R905.2.2, Tabelle R905.1.1(2), aus zweiter Hand</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC R905.2.2, second-hand</source>
   <translation>IRC R905.2.2, aus zweiter Hand</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC R905.2.8.3</source>
   <translation>IRC R905.2.8.3</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC R905.2.8.5, from memory</source>
   <translation>IRC R905.2.8.5, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC Table R905.1.1(2), from memory</source>
   <translation>IRC Tabelle R905.1.1(2), aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>IRC Table R905.1.1(2), second-hand</source>
   <translation>IRC Tabelle R905.1.1(2), aus zweiter Hand</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (400 kg/m³, dry cup)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (400 kg/m³, Trockenverfahren)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (500 kg/m³, dry cup)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (500 kg/m³, Trockenverfahren)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (600 kg/m³, dry cup)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (600 kg/m³, Trockenverfahren)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (700 kg/m³, dry cup)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (700 kg/m³, Trockenverfahren)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (900 kg/m³, dry cup)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (900 kg/m³, Trockenverfahren)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (aluminium alloy)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Aluminiumlegierung)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (aluminium foil, 0.05 mm)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Aluminiumfolie, 0,05 mm)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (bitumen sheet)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Bitumenbahn)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (bitumen sheet, resistance factor 50 000)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Bitumenbahn, Widerstandszahl 50 000)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (bitumen, resistance factor 50 000)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Bitumen, Widerstandszahl 50 000)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (bituminous paper)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Bitumenpapier)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (breather membrane)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (diffusionsoffene Bahn)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (cement-bonded particleboard, dry cup)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (zementgebundene Spanplatte, Trockenverfahren)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (cement-sand render, 1800 kg/m³)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Zementputz, 1800 kg/m³)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (clay or silt)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Ton oder Schluff)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (concrete, 1800 kg/m³, dry cup)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Beton, 1800 kg/m³, Trockenverfahren)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (concrete, 2200 kg/m³)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Beton, 2200 kg/m³)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (dry cup)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Trockenverfahren)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (gypsum plaster, 1300 kg/m³)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Gipsputz, 1300 kg/m³)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (mineral wool)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Mineralwolle)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (oriented strand board, dry cup)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (OSB-Platte, Trockenverfahren)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (plywood, 500 kg/m³, dry cup)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Sperrholz, 500 kg/m³, Trockenverfahren)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (polyisocyanurate; aluminium foil, 0.05 mm)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Polyisocyanurat; Aluminiumfolie, 0,05 mm)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (polyurethane)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Polyurethan)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (reinforced, 1 % steel, dry cup)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (bewehrt, 1 % Stahl, Trockenverfahren)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (sand or gravel)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Sand oder Kies)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (softwood)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Nadelholz)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (steel)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Stahl)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (synthetic rubber, resistance factor 6000)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Synthesekautschuk, Widerstandszahl 6000)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (timber, 500 kg/m³)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Holz, 500 kg/m³)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory (timber, 500 kg/m³, dry cup)</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis (Holz, 500 kg/m³, Trockenverfahren)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>ISO 10456:2007, from memory; vapour-tight, so the figure of aluminium foil stands in</source>
   <translation>ISO 10456:2007, aus dem Gedächtnis; dampfdicht, daher der Wert von Aluminiumfolie</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>Ignored</source>
   <translation>Übergangen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/bcf/topics.py" />
   <source>In the drawing at {x}, {y}.</source>
   <translation>In der Zeichnung bei {x}, {y}.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Inner face: the longer reading.</source>
   <translation>Innenseite: die längere Lesart.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Insulation above the roof deck</source>
   <translation>Dämmung über der Dachschalung</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Insulation and finish system with drainage.</source>
   <translation>Dämmung und Putzsystem mit Entwässerung.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Insulation outside the wall</source>
   <translation>Dämmung außen vor der Wand</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Interior plaster, wet-applied</source>
   <translation>Innenputz</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>International Residential Code 2021 (US)</source>
   <translation>International Residential Code 2021 (US)</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>International Residential Code 2024 (US)</source>
   <translation>International Residential Code 2024 (US)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/edge_cover_short.py" />
   <source>International Residential Code R905.1.2: 24 in inside the wall line, and on steep roofs 36 in along the slope (from memory); National Building Code of Canada 9.26.5.1: 900 mm up the slope to a line 300 mm inside the wall's inner face (read).</source>
   <translation>International Residential Code R905.1.2: 24 in innerhalb der Wandflucht, auf steilen Dächern 36 in in der Schräge (aus dem Gedächtnis); National Building Code of Canada 9.26.5.1: 900 mm die Schräge hinauf bis zu einer Linie 300 mm innerhalb der Innenseite der Wand (gelesen).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is it held from its sides or by clips, with no screw through its top?</source>
   <translation>Ist sie von den Seiten oder mit Haltern befestigt, ohne eine Schraube durch die Oberseite?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is it pressed down with a roller over its whole width?</source>
   <translation>Ist es mit der Rolle auf ganzer Breite angedrückt?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is it sealed all round, also below and behind, where one cannot see?</source>
   <translation>Ist es rundum abgedichtet, auch unten und hinten, wo man es nicht sieht?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is it straight, and fixed as close as the maker says?</source>
   <translation>Ist es gerade und so dicht befestigt, wie der Hersteller es sagt?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is no cut left open at the corner, and is each patched with a piece of its own?</source>
   <translation>Ist an der Ecke kein Schnitt offen, und ist jeder mit einem eigenen Stück überklebt?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is the bead as wide as drawn, and about half as deep as it is wide?</source>
   <translation>Ist die Raupe so breit wie gezeichnet und etwa halb so tief wie breit?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is the bead tooled against both sides, with no break, bubble or skin?</source>
   <translation>Ist die Raupe an beide Seiten angedrückt und geglättet, ohne Lücke, Blase oder Haut?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is the coat free of pinholes, thin spots and bare edges?</source>
   <translation>Ist die Beschichtung frei von Poren, dünnen Stellen und bloßen Kanten?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is the gasket squeezed all along, and whole at corners and ends?</source>
   <translation>Ist das Dichtband durchgehend zusammengedrückt und an Ecken und Enden ganz?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is the joint filled or reinforced first, and the coat carried on over both sides?</source>
   <translation>Ist die Fuge zuerst gefüllt oder verstärkt und die Beschichtung über beide Seiten geführt?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is the joint sealed all along, as the drawing says?</source>
   <translation>Ist die Fuge durchgehend abgedichtet, wie es die Zeichnung sagt?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is the lap wide enough all along? Look for the line marked on the sheet.</source>
   <translation>Ist die Überlappung durchgehend breit genug? Auf die Markierung auf der Bahn achten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is the lap wide enough all along? Measure at both ends and in the middle.</source>
   <translation>Ist die Überlappung durchgehend breit genug? An beiden Enden und in der Mitte messen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is the seam welded or stuck over its whole width, and was its edge tried all along?</source>
   <translation>Ist die Naht auf ganzer Breite verschweißt oder verklebt, und wurde ihr Rand durchgehend geprüft?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is the sheet whole, and is every tear or spare hole taped over?</source>
   <translation>Ist die Bahn ganz und jeder Riss, jedes überzählige Loch überklebt?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is there a backing rod or bond breaker behind the bead where the joint needs one?</source>
   <translation>Liegt hinter der Raupe eine Hinterfüllschnur oder ein Trennstreifen, wo die Fuge es braucht?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is what goes through held firm, so that it does not work loose?</source>
   <translation>Ist befestigt, was hindurchgeht, so dass es sich nicht lockert?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Is what is about to be covered dry?</source>
   <translation>Ist trocken, was nun verdeckt wird?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/answers.py" />
   <source>It answers another revision of the drawing.</source>
   <translation>Sie antwortet auf einen anderen Stand der Zeichnung.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>It catches what gets past the frame and has to let it out.</source>
   <translation>Sie fängt auf, was am Rahmen vorbeikommt, und muss es hinauslassen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/words.py" />
   <source>It has no words ({kind}).</source>
   <translation>Sie hat keine Worte ({kind}).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/replies.py" />
   <source>It lets the finding stand and gives no reason.</source>
   <translation>Sie lässt den Befund stehen und nennt keinen Grund.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/ponding.py" />
   <source>It may stand deeper: the drawing ends before it runs over.</source>
   <translation>Es kann tiefer stehen: Die Zeichnung endet, bevor es überläuft.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>It says nothing of one layer: {names}.</source>
   <translation>Über einen Layer sagt sie nichts: {names}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>It says nothing of {count} layers: {names}.</source>
   <translation>Über {count} Layer sagt sie nichts: {names}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>It seals only where it is pressed together.</source>
   <translation>Es dichtet nur, wo es zusammengedrückt ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>It sticks by pressure; a hand alone leaves channels of air and water.</source>
   <translation>Es haftet durch Druck; die Hand allein lässt Kanäle für Luft und Wasser.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/answers.py" />
   <source>It was measured otherwise then: look whether the answer still holds.</source>
   <translation>Damals wurde anders gemessen: nachsehen, ob die Antwort noch gilt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/words.py" />
   <source>It was set in the note itself, which does not tell by whom.</source>
   <translation>Das wurde in der Notiz selbst gesetzt, und so ist nicht zu sehen, von wem.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/words.py" />
   <source>It was set to “{word}”, which is no verdict.</source>
   <translation>Sie wurde auf „{word}“ gesetzt, und das ist keine Entscheidung.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/answers.py" />
   <source>It was written about the drawing {drawing}.</source>
   <translation>Sie wurde zur Zeichnung {drawing} geschrieben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/words.py" />
   <source>It was written into the note itself, which does not tell by whom.</source>
   <translation>Sie wurde in die Notiz selbst geschrieben, und die sagt nicht, von wem.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>It will be offered for the next drawing.</source>
   <translation>Für die nächste Zeichnung wird sie angeboten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>Its name says nothing of what is drawn on it.</source>
   <translation>Sein Name sagt nichts darüber, was darauf gezeichnet ist.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Joint sealant</source>
   <translation>Fugendichtstoff</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <source>Joints of the air barrier are sealed (International Energy Conservation Code, air barrier table, second-hand); sheets are sealed, or lapped at least 100 mm and clamped (National Building Code of Canada 2020, 9.25.3.3, read).</source>
   <translation>Anschlüsse der Luftdichtheitsschicht werden abgedichtet (International Energy Conservation Code, Tabelle zur Luftdichtheit, aus zweiter Hand); Bahnen werden abgedichtet oder mindestens 100 mm überlappt und geklemmt (National Building Code of Canada 2020, 9.25.3.3, gelesen).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/labels.py" />
   <source>Keeps air from blowing through: every joint is sealed.</source>
   <translation>Lässt keine Luft durchströmen: Jeder Anschluss ist abgedichtet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/labels.py" />
   <source>Keeps damp air off cold timber, and lets the wall dry.</source>
   <translation>Hält feuchte Luft von kaltem Holz fern und lässt die Wand trocknen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/labels.py" />
   <source>Keeps rain out: every sheet laps over the one below it.</source>
   <translation>Hält Regen draußen: Jede Bahn greift über die darunter.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/labels.py" />
   <source>Keeps the warmth in: insulation without a cold bridge.</source>
   <translation>Hält die Wärme drinnen: Dämmung ohne Wärmebrücke.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <location filename="../../enclosure_app/reports/tables/site.py" />
   <source>Key</source>
   <translation>Schlüssel</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Kick-out flashing</source>
   <translation>Ableitblech</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Kraft facing of a batt</source>
   <translation>Kraftpapierkaschierung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Lap below ground and under slabs</source>
   <translation>Überlappung im Erdreich und unter Bodenplatten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/lap_cycle.py" />
   <source>Lap cycle</source>
   <translation>Überlappung im Kreis</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/wet_route.py" />
   <source>Lap every sheet over the one below it, on the outside, all the way down. Slope pans and flashings to the outside, and end each of them in front of the layer that goes on below.</source>
   <translation>Jede Bahn außen über die darunter greifen lassen, bis ganz hinunter. Wannen und Bleche nach außen neigen und jedes vor der Schicht enden lassen, die darunter weitergeht.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Lap of a low-slope roof membrane</source>
   <translation>Überlappung einer Dachbahn auf flacher Neigung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Lap of air-barrier sheets that are clamped</source>
   <translation>Überlappung geklemmter Luftdichtheitsbahnen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Lap of self-adhered underlayment</source>
   <translation>Überlappung selbstklebender Unterdeckung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Lap of underlayment on a flatter roof</source>
   <translation>Überlappung von Unterdeckung auf flacherem Dach</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Lap of underlayment on a steep roof</source>
   <translation>Überlappung von Unterdeckung auf steilem Dach</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Lap of wall sheets</source>
   <translation>Überlappung von Wandbahnen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Lap over the leg of a flashing</source>
   <translation>Überlappung über dem Schenkel eines Blechs</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Lap siding</source>
   <translation>Stülpschalung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/wet_route.py" />
   <source>Lap the upper sheet over the outside of the lower one, or close the gap, so that the water stays in front.</source>
   <translation>Die obere Bahn außen über die untere greifen lassen oder die Lücke schließen, sodass das Wasser davor bleibt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Lapped against the run of water: it gets in behind the lower sheet.</source>
   <translation>Gegen den Lauf des Wassers überlappt: Es gelangt hinter die untere Bahn.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Lapped and clamped; else sealed. The same as NBC 2020.</source>
   <translation>Überlappt und geklemmt; sonst abgedichtet. Wie NBC 2020.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Lapped at least 100 mm and clamped, or sealed. 50 mm is recalled from earlier editions and is not this one.</source>
   <translation>Mindestens 100 mm überlappt und geklemmt oder abgedichtet. 50 mm sind aus früheren Ausgaben erinnert und gelten hier nicht.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>Layer maps</source>
   <translation>Layerzuordnungen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/products.py" />
   <source>Layer “{layer}” is said to be “{name}”: say something else of it before you remove this product.</source>
   <translation>Der Layer „{layer}“ gilt als „{name}“: etwas anderes über ihn sagen, bevor dieses Produkt entfernt wird.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Lead flashing</source>
   <translation>Bleianschluss</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_fields.py" />
   <source>Least lap</source>
   <translation>Mindestüberlappung</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Ledger</source>
   <translation>Streichbalken</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/summary.py" />
   <source>Left open: {places}.</source>
   <translation>Offen gelassen: {places}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>Left out: {count} invisible entities (first: {first}). To read them as well, add --all-layers.</source>
   <translation>Ausgelassen: {count} unsichtbare Elemente (zuerst: {first}). Mit --all-layers werden auch sie gelesen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>Left out: {count} invisible entity (first: {first}). To read them as well, add --all-layers.</source>
   <translation>Ausgelassen: {count} unsichtbares Element (zuerst: {first}). Mit --all-layers wird auch es gelesen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>Left out: {entities} on a layer that is frozen or switched off: {names}. To read them as well, add --all-layers.</source>
   <translation>Ausgelassen: {entities} auf einem gefrorenen oder ausgeschalteten Layer: {names}. Mit --all-layers werden auch sie gelesen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>Left out: {entities} on layers that are frozen or switched off: {names}. To read them as well, add --all-layers.</source>
   <translation>Ausgelassen: {entities} auf gefrorenen oder ausgeschalteten Layern: {names}. Mit --all-layers werden auch sie gelesen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>Left out: {entities} on the layers of this program's own marks (first: {first}): draw on other layers what is to be checked.</source>
   <translation>Ausgelassen: {entities} auf den Layern der eigenen Marken dieses Programms (zuerst: {first}): Was geprüft werden soll, auf andere Layer zeichnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>Left out: {entities} with damaged data (first: {first}).</source>
   <translation>Ausgelassen: {entities} mit beschädigten Daten (zuerst: {first}).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>Left out: {entities} with impossible coordinates (first: {first}).</source>
   <translation>Ausgelassen: {entities} mit unmöglichen Koordinaten (zuerst: {first}).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>Left out: {entities} without length or area (first: {first}).</source>
   <translation>Ausgelassen: {entities} ohne Länge oder Fläche (zuerst: {first}).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>Left out: {things} (first: {first}).</source>
   <translation>Ausgelassen: {things} (zuerst: {first}).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/short_lap.py" />
   <source>Lengthen one of the sheets, or move the joint to where both reach.</source>
   <translation>Eine der Bahnen verlängern oder den Stoß dorthin verlegen, wohin beide reichen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/short_lap.py" />
   <source>Lengthen one of the two sheets, or move the joint to where both reach.</source>
   <translation>Eine der beiden Bahnen verlängern oder den Stoß dorthin verlegen, wohin beide reichen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/short_lap.py" />
   <source>Lengths by place and slope with their clauses stand in the rule book (resources/limits.toml); horizontal seams of self-adhered roof underlayment lap at least 4 in (common practice, no source).</source>
   <translation>Längen nach Ort und Neigung stehen mit ihren Fundstellen im Regelwerk (resources/limits.toml); waagerechte Nähte selbstklebender Unterdeckung überlappen mindestens 4 in (übliche Praxis, ohne Quelle).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/level_lap.py" />
   <source>Level lap</source>
   <translation>Waagerechte Überlappung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/chains.py" />
   <source>Lines across areas of their own product are taken for drafting symbols: {names}.</source>
   <translation>Linien quer über Flächen ihres eigenen Produkts gelten als Zeichensymbole: {names}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/revising/laying.py" />
   <source>Lines that were said by themselves to be something, and that are not surely found again: {count}. Say again what they are.</source>
   <translation>Einzelne Linien, von denen gesagt war, was sie sind, und die nicht sicher wiedergefunden wurden: {count}. Sagen Sie noch einmal, was sie sind.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/pdf/layers.py" />
   <source>Linework</source>
   <translation>Linienwerk</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>Linework to snap to</source>
   <translation>Linienwerk zum Fangen</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Liquid-applied roof membrane</source>
   <translation>Flüssige Dachabdichtung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/findings_table.py" />
   <source>Look at this layer yourself.</source>
   <translation>Diese Schicht bitte selbst ansehen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Look only from where you stand safely: guard rails, boards and a harness where one is needed. Local rules on working at height go before this list.</source>
   <translation>Nur von dort nachsehen, wo man sicher steht: Geländer, Beläge und, wo nötig, ein Gurt. Örtliche Regeln für Arbeiten in der Höhe gehen dieser Liste vor.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/level_lap.py" />
   <source>Low-slope roofs need at least a quarter inch in twelve (International Building Code 1507, Minnesota Rules 1305.1507, read); that laps flatter than this are sealed is common practice, no source.</source>
   <translation>Flache Dächer brauchen mindestens einen Viertelzoll auf zwölf (International Building Code 1507, Minnesota Rules 1305.1507, gelesen); dass flachere Überlappungen abgedichtet werden, ist übliche Praxis, ohne Quelle.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Lowest pitch of the table.</source>
   <translation>Geringste Neigung der Tabelle.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_table.py" />
   <source>Make all of them {product}</source>
   <translation>Alle zu „{product}“ machen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_table.py" />
   <source>Make it {product}</source>
   <translation>Zu „{product}“ machen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/layers.py" />
   <source>Make {before} {after}</source>
   <translation>{before} zu {after} machen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/layers.py" />
   <source>Make {count} layers {meant}</source>
   <translation>{count} Layer zu „{meant}“ machen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_table.py" />
   <source>Make {count} layers {product}</source>
   <translation>{count} Layer zu „{product}“ machen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/layers.py" />
   <source>Make {layer} {meant}</source>
   <translation>{layer} zu „{meant}“ machen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>Marked-up sections of the enclosure</source>
   <translation>Markierte Schnitte der Gebäudehülle</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/extents.py" />
   <source>Marks far away from every piece are left out: {places}.</source>
   <translation>Marken weit weg von allen Stücken sind ausgelassen: {places}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <source>Measured</source>
   <translation>Gemessen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/finding_words.py" />
   <source>Measured {measured}, required {required}.</source>
   <translation>Gemessen {measured}, gefordert {required}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/finding_words.py" />
   <source>Measured {measured}.</source>
   <translation>Gemessen {measured}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/verdict_words.py" />
   <source>Mended</source>
   <translation>Behoben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Metal has no line to go by, and a bowed length is short in its middle.</source>
   <translation>Blech hat keine Markierung, und eine verbogene Länge ist in der Mitte zu kurz.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Metal panel</source>
   <translation>Metallpaneel</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Metal roofing</source>
   <translation>Metalldeckung</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Mineral wool</source>
   <translation>Mineralwolle</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Minnesota Rules 1305.1507</source>
   <translation>Minnesota Rules 1305.1507</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>NAVEDTRA 14044 vol. 2, fig. 3-14</source>
   <translation>NAVEDTRA 14044 Bd. 2, Bild 3-14</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>NBC 9.25.3.3</source>
   <translation>NBC 9.25.3.3</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>NBC 9.27.3.3, from memory</source>
   <translation>NBC 9.27.3.3, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>NRCA manual practice, from memory</source>
   <translation>NRCA Handbuchpraxis, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>National Building Code of Canada 2020</source>
   <translation>National Building Code of Canada 2020</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <source>No drip</source>
   <translation>Tropft nicht ab</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/extents.py" />
   <source>No frame is drawn: the extent of the pieces is the frame.</source>
   <translation>Es ist kein Rahmen gezeichnet: Die Ausdehnung der Stücke ist der Rahmen.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>No least length along the slope.</source>
   <translation>Keine Mindestlänge in der Schräge.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/tracing/guiding.py" />
   <source>No line is drawn here: click on the line that the sheet follows.</source>
   <translation>Hier ist keine Linie gezeichnet: auf die Linie klicken, der die Bahn folgt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/findings_table.py" />
   <location filename="../../enclosure_app/reports/bcf/topics.py" />
   <source>No longer found: {about}</source>
   <translation>Nicht mehr gefunden: {about}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/reframing.py" />
   <source>No outline on layer “{layer}” closes, so nothing can be judged inside of it: draw the frame by hand, or say another layer.</source>
   <translation>Auf dem Layer „{layer}“ schließt sich kein Umriss, also lässt sich darin nichts beurteilen: den Rahmen von Hand ziehen oder einen anderen Layer nennen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/network/layer.py" />
   <source>No piece of this layer comes between the inside and the outside mark: look at what the lines are, or move the marks to the two sides of the layer.</source>
   <translation>Kein Stück dieser Schicht liegt zwischen der Innen- und der Außenmarke: nachsehen, was die Linien sind, oder die Marken auf die beiden Seiten der Schicht setzen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/ribbon.py" />
   <source>No sheet or board of this layer is drawn.</source>
   <translation>Von dieser Schicht ist keine Bahn oder Platte gezeichnet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <location filename="../../enclosure_app/reports/tables/site.py" />
   <source>No.</source>
   <translation>Nr.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/lock.py" />
   <source>Nobody is warned that {file} is open here, because its folder cannot be written to ({reason}): save it elsewhere.</source>
   <translation>Niemand wird gewarnt, dass {file} hier offen ist, denn in ihren Ordner lässt sich nicht schreiben ({reason}): anderswo speichern.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/missing.py" />
   <source>None of the notes of findings {first} to {last} is in the file any more: it may have been printed anew or its notes painted into the page, and answers with them.</source>
   <translation>Keine der Notizen zu den Befunden {first} bis {last} ist noch in der Datei: Vielleicht wurde sie neu gedruckt, oder die Notizen und mit ihnen die Antworten wurden in die Seite gemalt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/verdict_words.py" />
   <source>Not a fault</source>
   <translation>Kein Mangel</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>Not shown and not judged; nothing of it is lost</source>
   <translation>Nicht gezeigt und nicht beurteilt; nichts davon geht verloren</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Not to be seen in a vertical section.</source>
   <translation>In einem senkrechten Schnitt nicht zu sehen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>Notes</source>
   <translation>Hinweistexte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/lines.py" />
   <source>Nothing cuts "{name}" there: draw the line to trim it at, or split it.</source>
   <translation>Dort schneidet nichts „{name}“: die Linie zeichnen, an der gestutzt werden soll, oder auftrennen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/findings_table.py" />
   <source>Nothing else was found by the checks that were run.</source>
   <translation>Sonst haben die ausgeführten Prüfungen nichts gefunden.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/meaning.py" />
   <source>Nothing is said of {layers}: linework only.</source>
   <translation>Über {layers} ist nichts gesagt: nur Linienwerk.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Nothing shows afterwards which of the two went on first.</source>
   <translation>Hinterher zeigt nichts mehr, was von beiden zuerst kam.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/findings_table.py" />
   <source>Nothing was found by the checks that were run.</source>
   <translation>Die ausgeführten Prüfungen haben nichts gefunden.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>OBC 9.26.4.4</source>
   <translation>OBC 9.26.4.4</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>OBC 9.26.4.6, 9.26.4.7</source>
   <translation>OBC 9.26.4.6, 9.26.4.7</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>OBC 9.26.5.1 (1)</source>
   <translation>OBC 9.26.5.1 (1)</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>OBC 9.27.2.4</source>
   <translation>OBC 9.27.2.4</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/section/side_words.py" />
   <source>OUTSIDE</source>
   <translation>AUSSEN</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>Off</source>
   <translation>Aus</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Offset 6 ft.</source>
   <translation>Um 6 ft versetzt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/level_lap.py" />
   <source>On the level no order of the sheets drains: water lies on the lap and finds its way in.</source>
   <translation>In der Waagerechten entwässert keine Reihenfolge der Bahnen: Wasser steht auf der Überlappung und findet hinein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/chains.py" />
   <source>One outline of {product} does not close and is read as a line: {names}.</source>
   <translation>Ein Umriss aus „{product}“ schließt sich nicht und wird als Linie gelesen: {names}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/chains.py" />
   <source>One outline of {product} is of no even thickness and is read as an area: {names}.</source>
   <translation>Ein Umriss aus „{product}“ ist nicht gleichmäßig dick und wird als Fläche gelesen: {names}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/products.py" />
   <source>One piece is made of “{name}”: give it another product before you remove this one.</source>
   <translation>Ein Stück ist aus „{name}“: ihm ein anderes Produkt geben, bevor dieses entfernt wird.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/layers.py" />
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>One piece stays what it is, because it was given its product by hand.</source>
   <translation>Ein Stück bleibt, was es ist, weil es sein Produkt von Hand bekommen hat.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Ontario</source>
   <translation>Ontario</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/verdict_words.py" />
   <source>Open</source>
   <translation>Offen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/open_penetration.py" />
   <source>Open penetration</source>
   <translation>Offene Durchdringung</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Open-cell foam, sprayed</source>
   <translation>Offenzelliger Spritzschaum</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Oriented strand board</source>
   <translation>OSB-Platte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>Other words suggest {others}.</source>
   <translation>Andere Wörter deuten auf {others}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/frames.py" />
   <source>Outlines of frames that do not close: left out ({names}).</source>
   <translation>Umrisse von Rahmen, die sich nicht schließen: ausgelassen ({names}).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/frames.py" />
   <source>Outlines of frames that hold other frames: taken for the border of the sheet ({names}).</source>
   <translation>Umrisse von Rahmen, die andere Rahmen enthalten: als Blattrand genommen ({names}).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Overhang past the cladding</source>
   <translation>Überstand über die Bekleidung</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>PVC, ISO 10456 draft, second-hand</source>
   <translation>PVC, ISO 10456 Entwurf, aus zweiter Hand</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Pan sealed or sloped to the exterior; the clause names no amount.</source>
   <translation>Wanne abgedichtet oder nach außen geneigt; die Stelle nennt kein Maß.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Parapet</source>
   <translation>Attika</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Particleboard</source>
   <translation>Spanplatte</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Paving</source>
   <translation>Pflaster</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/open_penetration.py" />
   <source>Penetrations of the air barrier are sealed (International Energy Conservation Code, air barrier table, from memory); the water-resistive barrier is flashed at penetrations (International Residential Code R703.4, second-hand).</source>
   <translation>Durchdringungen der Luftdichtheitsschicht werden abgedichtet (International Energy Conservation Code, Tabelle zur Luftdichtheit, aus dem Gedächtnis); die wasserabweisende Schicht wird an Durchdringungen angeschlossen (International Residential Code R703.4, aus zweiter Hand).</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Phenolic board</source>
   <translation>Phenolharzplatte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/sayings.py" />
   <source>Photographs</source>
   <translation>Fotos</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Pipe</source>
   <translation>Rohr</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Pitch of the roof</source>
   <translation>Neigung des Daches</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Pitch over 5 degrees, above the finished surface.</source>
   <translation>Neigung über 5 Grad, über der fertigen Oberfläche.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/site.py" />
   <source>Place</source>
   <translation>Stelle</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Plywood</source>
   <translation>Sperrholz</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Polyethylene vapour retarder, 0.15 mm</source>
   <translation>Dampfbremse aus Polyethylen, 0,15 mm</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Polyisocyanurate board</source>
   <translation>Polyisocyanurat-Platte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/ponding.py" />
   <source>Ponding</source>
   <translation>Stehendes Wasser</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Practice of a trade association, not code.</source>
   <translation>Praxis eines Fachverbands, keine Vorschrift.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Pre-compressed foam tape</source>
   <translation>Vorkomprimiertes Dichtband</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_list.py" />
   <source>Products</source>
   <translation>Produkte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <source>Project</source>
   <translation>Projekt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <source>Put {upper} over {lower} here; only at an eave does the sheet go over the metal.</source>
   <translation>Hier {upper} über {lower} legen; nur an der Traufe liegt die Bahn über dem Blech.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <source>Put {upper} over {lower}; where that cannot be, cover the upper edge of {lower} with a strip that laps over it.</source>
   <translation>{upper} über {lower} legen; wo das nicht geht, die Oberkante von „{lower}“ mit einem Streifen abdecken, der darüber greift.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/wet_route.py" />
   <source>Rain that runs down the {left} gets in behind the {into} here.</source>
   <translation>Regen, der an „{left}“ hinabläuft, gelangt hier hinter „{into}“.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/wet_route.py" />
   <source>Rain that runs down the {left} gets in to the inside here.</source>
   <translation>Regen, der an „{left}“ hinabläuft, gelangt hier nach innen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Rake</source>
   <translation>Ortgang</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Rake: underlayment over the drip edge</source>
   <translation>Ortgang: Unterdeckung über dem Tropfblech</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/notes.py" />
   <source>Read all the same: {what}.</source>
   <translation>Trotzdem gelesen: {what}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/units_asking.py" />
   <source>Read the drawing in {units}</source>
   <translation>Zeichnung in {units} lesen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <location filename="../../enclosure_app/reports/tables/sayings.py" />
   <source>Remark</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/layers.py" />
   <source>Remove {product}</source>
   <translation>{product} entfernen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Render above the ground</source>
   <translation>Putz über dem Gelände</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/notes.py" />
   <source>Repaired: {what}.</source>
   <translation>Repariert: {what}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <source>Required</source>
   <translation>Gefordert</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <source>Reverse lap</source>
   <translation>Verkehrte Überlappung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <source>Revision</source>
   <translation>Index</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>Revision {revision}</source>
   <translation>Index {revision}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Ridge</source>
   <translation>First</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Rise over run, 1:48. The printed 2 per cent is rounded: a roof of 2.0 % is flatter. Coal tar: 1/8:12.</source>
   <translation>Höhe durch Länge, 1:48. Die gedruckten 2 Prozent sind gerundet: Ein Dach mit 2,0 % ist flacher. Steinkohlenteer: 1/8:12.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Roof deck</source>
   <translation>Dachschalung</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Roof drain</source>
   <translation>Dachablauf</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Roof tiles</source>
   <translation>Dachziegel</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Roof to higher wall</source>
   <translation>Dach an höherer Wand</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Roof underlayment, fastened</source>
   <translation>Unterdeckbahn, befestigt</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Roof underlayment, self-adhered</source>
   <translation>Unterdeckbahn, selbstklebend</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Roof underlayment, vapour-open</source>
   <translation>Unterdeckbahn, diffusionsoffen</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Rooflight</source>
   <translation>Dachfenster</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <source>Rule</source>
   <translation>Regel</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Same as the national code. Not required in the cases of 9.26.5.1 (2).</source>
   <translation>Wie die nationale Vorschrift. In den Fällen von 9.26.5.1 (2) nicht verlangt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>Save the layer map</source>
   <translation>Layerzuordnung speichern</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_fields.py" />
   <source>Say in which document the figures were read, or take the tick away.</source>
   <translation>Angeben, in welchem Dokument die Werte gelesen wurden, oder das Häkchen wegnehmen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <source>Scale</source>
   <translation>Maßstab</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Screed</source>
   <translation>Estrich</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/open_penetration.py" />
   <source>Seal it with a collar, or with bead and tape, to both {through} and {sheet}.</source>
   <translation>Mit einer Manschette oder mit Dichtstoffraupe und Klebeband an beiden abdichten: {through} und {sheet}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/level_lap.py" />
   <source>Seal the lap with a tape, a bead or an adhered sheet, or give the surface a fall.</source>
   <translation>Die Überlappung mit Klebeband, Dichtstoffraupe oder verklebter Bahn abdichten oder der Fläche Gefälle geben.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Sealant that stays soft, for vapour retarders</source>
   <translation>Bleibend weicher Dichtstoff für Dampfbremsen</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Sealed or sloped to the outside; no amount is known.</source>
   <translation>Abgedichtet oder nach außen geneigt; kein Maß bekannt.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Seam tape for sheets and boards</source>
   <translation>Nahtklebeband für Bahnen und Platten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <location filename="../../enclosure_app/reports/tables/site.py" />
   <source>Section</source>
   <translation>Schnitt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/sections.py" />
   <source>Section "{name}" has no such break: pick one of its own.</source>
   <translation>Der Schnitt „{name}“ hat keinen solchen Bruch: einen seiner eigenen wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/sections.py" />
   <source>Section "{name}" has no such {side} mark: pick one that is drawn.</source>
   <translation>Der Schnitt „{name}“ hat keine solche Marke „{side}“: eine wählen, die gezeichnet ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>Sections and findings, by layer</source>
   <translation>Schnitte und Befunde, nach Schicht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/site.py" />
   <source>Seen</source>
   <translation>Gesehen</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Segments end to end.</source>
   <translation>Stücke Ende an Ende.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Self-adhered membrane along the eave</source>
   <translation>Selbstklebende Traufbahn</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Self-adhered sheet, vapour-open</source>
   <translation>Selbstklebende Bahn, diffusionsoffen</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Self-adhered sheet, vapour-tight</source>
   <translation>Selbstklebende Bahn, dampfdicht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <source>Severity</source>
   <translation>Schwere</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Sheathing membrane at joints, upper over lower.</source>
   <translation>Wandbahn an Stößen, obere über untere.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Sheathing with taped joints</source>
   <translation>Beplankung mit verklebten Stößen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <source>Sheet</source>
   <translation>Blatt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/pdf/report.py" />
   <source>Sheet {sheet}: {section}</source>
   <translation>Blatt {sheet}: {section}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>Sheets</source>
   <translation>Blätter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/lap_cycle.py" />
   <source>Sheets of which each is lapped by the next, and the last by the first. A sheet that lies over another goes on after it, so none of them can be the first to go on.</source>
   <translation>Bahnen, von denen jede von der nächsten überlappt wird und die letzte von der ersten. Eine Bahn, die über einer anderen liegt, kommt nach ihr, also kann keine die erste sein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>Sheets, continued</source>
   <translation>Blätter, Fortsetzung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/short_lap.py" />
   <source>Short lap</source>
   <translation>Überlappung zu kurz</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>Shown and snapped to, never judged</source>
   <translation>Gezeigt und gefangen, nie beurteilt</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Side lap 4 in at end joints.</source>
   <translation>Seitenüberlappung 4 in an Stößen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>Sign-off</source>
   <translation>Unterschrift</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <source>Signed off</source>
   <translation>Unterschrieben</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Sill flashing</source>
   <translation>Fensterbankblech</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Sill pan</source>
   <translation>Fensterbankwanne</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Sill pan: fall to the outside</source>
   <translation>Fensterbankwanne: Gefälle nach außen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Sill pan: height of the back</source>
   <translation>Fensterbankwanne: Höhe der Rückseite</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Sill pan: slope to the outside</source>
   <translation>Fensterbankwanne: Neigung nach außen</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Single coverage: top lap at least 2 in.</source>
   <translation>Einfache Deckung: obere Überlappung mindestens 2 in.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Single-ply roof membrane</source>
   <translation>Einlagige Dachbahn</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Single-ply roof membrane, fastened, seams welded</source>
   <translation>Einlagige Dachbahn, befestigt, Nähte verschweißt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/site.py" />
   <source>Site list</source>
   <translation>Baustellenliste</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Slope from which a roof is steep for laps</source>
   <translation>Neigung, ab der ein Dach für Überlappungen steil ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Slope from which a roof is steep for upturns</source>
   <translation>Neigung, ab der ein Dach für Aufkantungen steil ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/ponding.py" />
   <source>Slope the face to an edge or a drain, or lower the edge that holds the water back.</source>
   <translation>Die Fläche zu einer Kante oder einem Ablauf neigen oder die Kante senken, die das Wasser zurückhält.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/ponding.py" />
   <source>Slope the face to an edge or to a drain, put a tapered board or a saddle under the low point, or lower the edge that holds the water back. Turn a pan so that it falls to the outside.</source>
   <translation>Die Fläche zu einer Kante oder einem Ablauf neigen, Gefälledämmung oder einen Sattel unter den Tiefpunkt legen oder die Kante senken, die das Wasser zurückhält. Eine Wanne so drehen, dass sie nach außen fällt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/upturn_short.py" />
   <source>Snow lies against the wall, water splashes and is driven up, and ice dams it. What stands higher than the flashing runs in behind it.</source>
   <translation>Schnee liegt an der Wand, Wasser spritzt und wird hochgetrieben, Eis staut es auf. Was höher steht als das Blech, läuft dahinter.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/edge_cover_short.py" />
   <source>Snow melts over the warm house and freezes over the cold eave. Behind the dam of ice water stands on the roof and goes under the shingles; the membrane has to reach to where the roof is warm.</source>
   <translation>Über dem warmen Haus schmilzt der Schnee, an der kalten Traufe gefriert er. Hinter dem Eiswall staut sich Wasser auf dem Dach und läuft unter die Deckung; die Bahn muss bis dorthin reichen, wo das Dach warm ist.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Soffit</source>
   <translation>Untersicht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Soft or stained wood, or mould? Leave it open, keep others away from it, and have it judged by a qualified person before anything is covered.</source>
   <translation>Weiches oder verfärbtes Holz, oder Schimmel? Offen lassen, andere fernhalten und von einer Fachperson beurteilen lassen, bevor etwas verdeckt wird.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Soil</source>
   <translation>Erdreich</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Some checklists say the reverse.</source>
   <translation>Manche Prüflisten sagen das Gegenteil.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/lock.py" />
   <source>Somebody</source>
   <translation>Jemand</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/site.py" />
   <location filename="../../enclosure_app/rules/edge_cover_short.py" />
   <location filename="../../enclosure_app/rules/gap.py" />
   <location filename="../../enclosure_app/rules/lap_cycle.py" />
   <location filename="../../enclosure_app/rules/level_lap.py" />
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <location filename="../../enclosure_app/rules/open_penetration.py" />
   <location filename="../../enclosure_app/rules/ponding.py" />
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <location filename="../../enclosure_app/rules/short_lap.py" />
   <location filename="../../enclosure_app/rules/stops_short.py" />
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <location filename="../../enclosure_app/rules/upturn_short.py" />
   <location filename="../../enclosure_app/rules/wet_route.py" />
   <source>Source</source>
   <translation>Quelle</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/ponding.py" />
   <source>Standing water finds every pinhole and every lap that only sheds water, loads the roof, and freezes. Laps that drain in a flow do not hold against a head of water.</source>
   <translation>Stehendes Wasser findet jedes Nadelloch und jede Überlappung, die Wasser nur ableitet, belastet das Dach und gefriert. Überlappungen, die im Abfluss dicht sind, halten stehendem Wasser nicht stand.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Steel deck</source>
   <translation>Trapezblech</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Steel framing</source>
   <translation>Stahltragwerk</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/upturn_short.py" />
   <source>Steep roofs: at least 4 in (International Residential Code R905.2.8.3, read). Low slopes: 8 in by the practice of a trade association (from memory); 150 mm above the finished surface (BS 6229:2018, second-hand). The figure in force stands in the rule book.</source>
   <translation>Steile Dächer: mindestens 4 in (International Residential Code R905.2.8.3, gelesen). Flache Neigungen: 8 in nach der Praxis eines Fachverbands (aus dem Gedächtnis); 150 mm über der fertigen Oberfläche (BS 6229:2018, aus zweiter Hand). Der geltende Wert steht im Regelwerk.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Step flashing</source>
   <translation>Stufenblech</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Stone cladding</source>
   <translation>Natursteinbekleidung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/stops_short.py" />
   <source>Stops short</source>
   <translation>Hört zu früh auf</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Stucco</source>
   <translation>Außenputz</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/meaning.py" />
   <source>Taken for {product}: {layers}.</source>
   <translation>Als „{product}“ genommen: {layers}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <source>Tape over the joint, lay a bead or gasket between them, or seal them with a coat.</source>
   <translation>Den Stoß mit Klebeband überkleben, eine Dichtstoffraupe oder Dichtung dazwischenlegen oder mit einer Beschichtung abdichten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <source>Tape the lap, lay a bead in it, or use an adhered sheet on the outside.</source>
   <translation>Die Überlappung verkleben, eine Dichtstoffraupe hineinlegen oder außen eine verklebte Bahn verwenden.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>Texts, leaders and dimensions: shown, and read by Read the notes</source>
   <translation>Texte, Hinweislinien und Bemaßungen: gezeigt, und von „Hinweistexte lesen“ gelesen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/lap_cycle.py" />
   <source>That the outer sheet of a lap goes on after the inner one is common practice, no source.</source>
   <translation>Dass die äußere Bahn einer Überlappung nach der inneren kommt, ist übliche Praxis, ohne Quelle.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>The block “{name}” contains itself; the inner one was left out ({first}).</source>
   <translation>Der Block „{name}“ enthält sich selbst; der innere wurde ausgelassen ({first}).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>The block “{name}” is clipped at {places} (first: {first}); its content was read whole.</source>
   <translation>Der Block „{name}“ ist an {places} beschnitten (zuerst: {first}); sein Inhalt wurde ganz gelesen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>The block “{name}” is missing from the file and was left out ({places}; first: {first}).</source>
   <translation>Der Block „{name}“ fehlt in der Datei und wurde ausgelassen ({places}; zuerst: {first}).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>The board along the ends of the rafters at the eave.</source>
   <translation>Das Brett vor den Sparrenenden an der Traufe.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/breaks.py" />
   <source>The break line at {x:.0f},{y:.0f} has no second one; material goes on beyond it.</source>
   <translation>Die Bruchlinie bei {x:.0f},{y:.0f} hat keine zweite; dahinter geht Material weiter.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>The clause says "exterior wall line"; a published worked example counts from the inner face, others read the outer face.</source>
   <translation>Die Stelle sagt „Außenwandflucht“; ein veröffentlichtes Beispiel zählt ab der Innenseite, andere lesen die Außenseite.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/lap_cycle.py" />
   <source>The crew cannot build it as drawn. They will tuck, slit or turn one of the laps round on the scaffold, and nobody decides which.</source>
   <translation>So, wie es gezeichnet ist, lässt es sich nicht bauen. Auf dem Gerüst wird dann eine der Überlappungen untergeschoben, geschlitzt oder umgedreht, und niemand entscheidet, welche.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>The drawing counts on it, and the products alone do not do it.</source>
   <translation>Die Zeichnung rechnet damit, und die Produkte allein leisten es nicht.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/content.py" />
   <source>The drawing has no layout “{name}”: choose one of {names}.</source>
   <translation>Die Zeichnung hat kein Layout „{name}“: eines von {names} wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>The drawing has {over} over {under}, against the run of the water. How is it built, and does a third sheet cover the edge that faces up?</source>
   <translation>Die Zeichnung hat {over} über {under}, gegen den Lauf des Wassers. Wie ist es gebaut, und deckt eine dritte Bahn die nach oben offene Kante?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/units_asking.py" />
   <source>The drawing is read in {units}. It is really drawn in:</source>
   <translation>Die Zeichnung ist in {units} gelesen. Wirklich gezeichnet ist sie in:</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>The drawing shows one cut; the corners are beside it, and the lower ones hold the water.</source>
   <translation>Die Zeichnung zeigt einen Schnitt; die Ecken liegen daneben, und in den unteren steht das Wasser.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>The drawing shows one cut; the joints of its lengths are beside it.</source>
   <translation>Die Zeichnung zeigt einen Schnitt; die Stöße der Längen liegen daneben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/records.py" />
   <source>The drawing stops before the end of what it draws: get the whole file again.</source>
   <translation>Die Zeichnung hört vor dem Ende des Gezeichneten auf: die ganze Datei noch einmal holen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>The drawing “{name}” is attached from outside and was not read ({places}): bind it into this drawing to have it checked.</source>
   <translation>Die Zeichnung „{name}“ ist von außen angehängt und wurde nicht gelesen ({places}): in diese Zeichnung einbinden, damit sie geprüft wird.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>The edge of a roof that runs up the slope.</source>
   <translation>Der Rand eines Daches, der die Schräge hinaufläuft.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/lines.py" />
   <source>The ends of "{first}" and "{second}" are more than {reach:g} mm apart: move them together, or extend one.</source>
   <translation>Die Enden von „{first}“ und „{second}“ sind mehr als {reach:g} mm auseinander: zusammenrücken oder eines verlängern.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/settings.py" />
   <source>The figure "{name}" cannot be {value:g}: give 0 or more.</source>
   <translation>Der Wert „{name}“ kann nicht {value:g} sein: 0 oder mehr angeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <source>The figure `drip-clear` of the rule book in force, shown with each finding. That an edge turns down is common practice, no source.</source>
   <translation>Der Wert `drip-clear` des geltenden Regelwerks, bei jedem Befund angegeben. Dass eine Kante nach unten abgekantet wird, ist übliche Praxis, ohne Quelle.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>The file does not follow the DXF format and was repaired: look whether all is there.</source>
   <translation>Die Datei folgt nicht dem DXF-Format und wurde repariert: nachsehen, ob alles da ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>The file has no end mark: what is there was read, but more may be missing.</source>
   <translation>Die Datei hat keine Endmarke: Was da ist, wurde gelesen, doch kann mehr fehlen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/units/judging.py" />
   <source>The file names no units; read in {units}: {shown}.</source>
   <translation>Die Datei nennt keine Einheiten; gelesen in {units}: {shown}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/units/judging.py" />
   <source>The file says {header}, but is read in {units}: {shown}, and {odd}.</source>
   <translation>Die Datei sagt {header}, wird aber in {units} gelesen: {shown}, und {odd}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/units/judging.py" />
   <source>The file says {header}; it is read in {units}, as told.</source>
   <translation>Die Datei sagt {header}; sie wird in {units} gelesen, wie angegeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/atomic.py" />
   <source>The folder {folder} cannot be made ({reason}): name another one.</source>
   <translation>Der Ordner {folder} lässt sich nicht anlegen ({reason}): Nennen Sie einen anderen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>The inner sheet of a lap lies under the other one; it goes on first.</source>
   <translation>Die innere Bahn einer Überlappung liegt unter der anderen; sie kommt zuerst.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/ends.py" />
   <source>The last stretch of "{name}" is no longer than that: type less.</source>
   <translation>Die letzte Strecke von „{name}“ ist nicht länger als das: weniger eingeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/dxf/splice.py" />
   <source>The layout that was checked is not written in the drawing where the format asks for it: open it in a CAD program and save it again as DXF.</source>
   <translation>Das geprüfte Layout steht in der Zeichnung nicht dort, wo das Format es verlangt: in einem CAD-Programm öffnen und noch einmal als DXF speichern.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>The leg of a roof's sheet that turns up a wall.</source>
   <translation>Der Schenkel der Dachbahn, der an einer Wand aufkantet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <source>The lower edge of a flashing, drip edge or sill pan that does not turn down, or whose drop falls nearer to the wall beneath than the rule book asks. An edge that lies on the sheet below it is a lap, and passed over.</source>
   <translation>Die Unterkante von Anschlussblech, Tropfblech oder Fensterbankwanne, die nicht nach unten abgekantet ist oder deren Tropfen näher an der Wand darunter fällt, als das Regelwerk verlangt. Eine Kante, die auf der Bahn darunter aufliegt, ist eine Überlappung und wird übergangen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>The lower edge of a roof.</source>
   <translation>Der untere Rand eines Daches.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>The lower edge of a window's or door's opening; or the timber on a footing.</source>
   <translation>Der untere Rand einer Fenster- oder Türöffnung; oder die Schwelle auf einem Fundament.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <source>The lower edge of the {sheet} does not turn down: the drop runs back under it.</source>
   <translation>Die Unterkante von „{sheet}“ ist nicht nach unten abgekantet: Der Tropfen läuft darunter zurück.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <source>The lower edge of the {sheet} drips too near to the wall beneath it.</source>
   <translation>Die Unterkante von „{sheet}“ tropft zu nah an der Wand darunter ab.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>The map says otherwise of some of its lines, by how these are drawn.</source>
   <translation>Von einigen seiner Linien sagt die Zuordnung anderes, je nachdem, wie sie gezeichnet sind.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/missing.py" />
   <source>The note of finding {number} is no longer in the file: ask whether that was meant.</source>
   <translation>Die Notiz zu Befund {number} ist nicht mehr in der Datei: nachfragen, ob das gewollt war.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/words.py" />
   <source>The note's own words were changed.</source>
   <translation>Die eigenen Worte der Notiz wurden geändert.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>The outer sheet of a lap lies over the other one; it goes on later.</source>
   <translation>Die äußere Bahn einer Überlappung liegt über der anderen; sie kommt später.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>The outline inside which one section is judged.</source>
   <translation>Der Umriss, in dem ein Schnitt beurteilt wird.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>The paper layout “{name}” was not read; it holds {entities}.</source>
   <translation>Das Papierlayout „{name}“ wurde nicht gelesen; es enthält {entities}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/job.py" />
   <source>The paper “{paper}” is not known; use one of {papers}.</source>
   <translation>Das Papier „{paper}“ ist nicht bekannt; möglich sind {papers}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/pdf/pictures.py" />
   <source>The picture “{name}” in this project is damaged: remove it, and lay it in again.</source>
   <translation>Das Bild „{name}“ in diesem Projekt ist beschädigt: entfernen und noch einmal einlegen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/network/opening.py" />
   <source>The pieces of this layer lie over one another so closely that the opening cannot be worked out: draw each piece once, and only what belongs to the layer.</source>
   <translation>Die Stücke dieser Schicht liegen so dicht übereinander, dass sich die Öffnung nicht berechnen lässt: jedes Stück nur einmal zeichnen, und nur, was zur Schicht gehört.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_fields.py" />
   <source>The product needs a name: type how the office calls it.</source>
   <translation>Das Produkt braucht einen Namen: eingeben, wie das Büro es nennt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/verdicts.py" />
   <source>The remark is empty: type some words or add a photograph.</source>
   <translation>Die Bemerkung ist leer: einige Wörter eingeben oder ein Foto hinzufügen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/underlays.py" />
   <source>The scale of "{name}" must be more than 0: set it again.</source>
   <translation>Der Maßstab von „{name}“ muss mehr als 0 sein: noch einmal setzen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/scales.py" />
   <source>The scale “{text}” is not a standard one; use one of {known}.</source>
   <translation>Der Maßstab „{text}“ ist keiner der üblichen; möglich sind {known}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/scales.py" />
   <source>The section is {width:.0f} m by {height:.0f} m, too large for this paper at any standard scale; draw a frame around the part to be shown, or use larger paper.</source>
   <translation>Der Schnitt ist {width:.0f} m mal {height:.0f} m groß, zu groß für dieses Papier bei jedem üblichen Maßstab; einen Rahmen um den Teil ziehen, der gezeigt werden soll, oder größeres Papier nehmen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/sheet.py" />
   <source>The section “{name}” does not fit on {paper} at {scale}; {advice}.</source>
   <translation>Der Schnitt „{name}“ passt im Maßstab {scale} nicht auf {paper}; {advice}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>The sheet on the deck below the roof's covering.</source>
   <translation>Die Bahn auf der Schalung unter der Dachdeckung.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>The sheet that goes on uphill goes on later, and over the one below.</source>
   <translation>Die Bahn, die bergauf weitergeht, kommt später und über die untere.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/pdf/report.py" />
   <source>The sheet {path} cannot be written ({why}); choose another place.</source>
   <translation>Das Prüfblatt {path} lässt sich nicht schreiben ({why}); einen anderen Ort wählen.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>The standards read name no ice barrier: put in the project's own figure.</source>
   <translation>Die gelesenen Normen nennen keinen Schutz gegen Eisrückstau: den eigenen Wert des Projekts einsetzen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/unsure_words.py" />
   <source>The trace says that the widest gap is {widest}, the opening that it is {apart} narrower: one of them is wrong, so look at this layer yourself.</source>
   <translation>Nach dem Verlauf ist die breiteste Lücke {widest} breit, nach der Öffnung {apart} schmaler: Eines von beiden stimmt nicht, also diese Schicht bitte selbst ansehen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/unsure_words.py" />
   <source>The trace says that the widest gap is {widest}, the opening that it is {apart} wider: one of them is wrong, so look at this layer yourself.</source>
   <translation>Nach dem Verlauf ist die breiteste Lücke {widest} breit, nach der Öffnung {apart} breiter: Eines von beiden stimmt nicht, also diese Schicht bitte selbst ansehen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/tracing/tracing.py" />
   <source>The traced line turns too tightly for a sheet {distance} off it on that side: choose the other side, or a smaller distance.</source>
   <translation>Die nachgezogene Linie biegt für eine Bahn {distance} daneben auf dieser Seite zu eng ab: die andere Seite wählen oder einen kleineren Abstand.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/lines.py" />
   <source>The two ends of "{name}" are more than {reach:g} mm apart: move them together to close it.</source>
   <translation>Die beiden Enden von „{name}“ sind mehr als {reach:g} mm auseinander: zum Schließen zusammenrücken.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/underlays.py" />
   <source>The two places are the same: click two that are far apart.</source>
   <translation>Die beiden Stellen sind gleich: zwei anklicken, die weit auseinander liegen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/pieces.py" />
   <source>The two points of the mirror line are the same: give two places.</source>
   <translation>Die beiden Punkte der Spiegelachse sind gleich: zwei Stellen angeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>The underside of a roof that overhangs.</source>
   <translation>Die Unterseite eines überstehenden Daches.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>The upper edge where two slopes meet.</source>
   <translation>Der obere Rand, an dem sich zwei Dachflächen treffen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <source>The upper sheet over the lower one, as shingles lie. At an eave the underlayment goes over the drip edge; along a rake the drip edge goes over the underlayment. A flashing's upper leg goes under the wall sheet. Where a leg must go on the face of the sheet, cover its upper edge with a strip that laps over it.</source>
   <translation>Die obere Bahn über die untere, wie Schindeln liegen. An der Traufe liegt die Unterdeckung über dem Tropfblech, am Ortgang das Tropfblech über der Unterdeckung. Der obere Schenkel eines Blechs liegt unter der Wandbahn. Muss ein Schenkel vor der Bahn liegen, seine Oberkante mit einem Streifen abdecken, der darüber greift.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <source>The water that every cladding lets through runs down the sheet, meets the edge, and is led inside. Nobody sees it for years; the framing rots behind a sound cladding.</source>
   <translation>Das Wasser, das jede Bekleidung durchlässt, läuft die Bahn hinab, trifft auf die Kante und wird nach innen geleitet. Jahrelang sieht es niemand; hinter einer heilen Bekleidung fault das Tragwerk.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>The way of a drop from where it lands to where it leaves.</source>
   <translation>Der Weg eines Tropfens von da, wo er landet, bis dahin, wo er weggeht.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>The way of a pen along a layer from one cut end to the other.</source>
   <translation>Der Weg eines Stiftes in einer Schicht von einem Schnittende zum anderen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>The widest way from outside to inside that crosses no piece of the layer.</source>
   <translation>Der breiteste Weg von außen nach innen, der kein Stück der Schicht kreuzt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/findings_table.py" />
   <source>The {layer} could not be judged.</source>
   <translation>Die {layer} ließ sich nicht beurteilen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/summary.py" />
   <source>The {layer} could not be judged: {why}</source>
   <translation>Nicht zu beurteilen: {layer}. {why}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/gap.py" />
   <source>The {layer} has a gap between {both}: they neither touch nor lap.</source>
   <translation>{both}: Zwischen ihnen hat die {layer} eine Lücke; sie berühren sich nicht und überlappen sich nicht.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/sheet.py" />
   <source>The {layer} laid out straight: {continuity}.</source>
   <translation>Gestreckt: {layer}, {continuity}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/stops_short.py" />
   <source>The {layer} stops short: {name} ends here and nothing goes on to the edge of the drawing.</source>
   <translation>Die {layer} hört zu früh auf: {name} endet hier, und nichts geht bis zum Rand der Zeichnung weiter.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/network/opening.py" />
   <source>The {side} mark at {x:.0f}, {y:.0f} lies on a piece or beyond the frame: move it into the open.</source>
   <translation>Die Marke „{side}“ bei {x:.0f}, {y:.0f} liegt auf einem Stück oder jenseits des Rahmens: ins Freie rücken.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/extents.py" />
   <source>The {word} mark stands beyond the cut ends; it counts at {x:.0f},{y:.0f}.</source>
   <translation>Die Marke „{word}“ steht jenseits der Schnittenden; sie zählt bei {x:.0f},{y:.0f}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/tracing/tracing.py" />
   <source>There are no drawn lines to follow here: import a drawing, or sketch the sheet.</source>
   <translation>Hier sind keine gezeichneten Linien, denen man folgen könnte: eine Zeichnung laden oder die Bahn skizzieren.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/sections.py" />
   <source>There is a section "{name}" already: give it another name.</source>
   <translation>Einen Schnitt „{name}“ gibt es schon: einen anderen Namen geben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>There is no file {name}: check its name and its folder.</source>
   <translation>Es gibt keine Datei {name}: Name und Ordner prüfen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/looking_up.py" />
   <source>There is no piece "{name}" in section "{section}"; pick one that is drawn.</source>
   <translation>Im Schnitt „{section}“ gibt es kein Stück „{name}“; eines wählen, das gezeichnet ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/pieces.py" />
   <source>There is no product "{product}" in section "{section}": choose one of the list, or add it there first.</source>
   <translation>Im Schnitt „{section}“ gibt es kein Produkt „{product}“: eines aus der Liste wählen oder es dort erst hinzufügen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts/__init__.py" />
   <source>There is no ready-made part {name!r}: choose one of {names}.</source>
   <translation>Es gibt kein fertiges Detail {name!r}: eines von {names} wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/lines.py" />
   <source>There is no room for one line {distance:g} mm beside that one on this side: give a smaller distance.</source>
   <translation>Auf dieser Seite ist {distance:g} mm daneben kein Platz für eine durchgehende Linie: einen kleineren Abstand angeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/rule_book.py" />
   <source>There is no rule book '{book}'{hint}</source>
   <translation>Es gibt kein Regelwerk '{book}'{hint}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/looking_up.py" />
   <source>There is no section "{which}"; the sections are: {known}.</source>
   <translation>Es gibt keinen Schnitt „{which}“; die Schnitte sind: {known}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/sheet_set.py" />
   <source>There is no section to draw; map a layer of the drawing first.</source>
   <translation>Es gibt keinen Schnitt zu zeichnen; zuerst einem Layer der Zeichnung ein Produkt geben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/underlays.py" />
   <source>There is no such underlay: pick one that lies under the drawing.</source>
   <translation>Eine solche Unterlage gibt es nicht: eine wählen, die unter der Zeichnung liegt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/network/opening.py" />
   <source>There is no {side} mark in the frame: place one.</source>
   <translation>Im Rahmen fehlt die Marke „{side}“: eine setzen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/lap_cycle.py" />
   <source>These sheets cannot go on in any order: {chain}.</source>
   <translation>Diese Bahnen lassen sich in keiner Reihenfolge anbringen: {chain}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/tracing/tracing.py" />
   <source>These two places are not joined by drawn lines: the lines at the first place come no nearer to those at the second than {gap}. Trace up to there and begin again on the other side, or draw the missing line.</source>
   <translation>Diese beiden Stellen sind nicht durch gezeichnete Linien verbunden: Die Linien an der ersten kommen denen an der zweiten nicht näher als {gap}. Bis dorthin nachziehen und auf der anderen Seite neu anfangen, oder die fehlende Linie zeichnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_fields.py" />
   <source>Thickness</source>
   <translation>Dicke</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Thickness of the wall board</source>
   <translation>Dicke der Wandplatte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_fields.py" />
   <source>Thickness: a product cannot be 0 thick; leave it empty if unknown.</source>
   <translation>Dicke: Ein Produkt kann nicht 0 dick sein; leer lassen, wenn unbekannt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/replies.py" />
   <source>This is a note of its own that stands at no finding.</source>
   <translation>Das ist eine eigene Notiz, die an keinem Befund steht.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/replies.py" />
   <source>This is a note of its own that stands near a finding, and answers none.</source>
   <translation>Das ist eine eigene Notiz, die bei einem Befund steht und auf keinen antwortet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>This list reminds; it replaces neither the makers' instructions nor local codes nor the judgement of licensed people.</source>
   <translation>Diese Liste erinnert; sie ersetzt weder die Angaben der Hersteller noch örtliche Vorschriften noch das Urteil zugelassener Fachleute.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <source>This sheet is an aid to judgement. It shows what a program found in a drawing, not what is built. Local codes, the makers' instructions and the decision of licensed professionals come first. Work at height needs fall protection. Where rot or mould may be hidden, have the structure looked at and protect yourself before anything is opened.</source>
   <translation>Dieses Blatt ist eine Hilfe zur Beurteilung. Es zeigt, was ein Programm in einer Zeichnung gefunden hat, nicht, was gebaut ist. Örtliche Vorschriften, die Angaben der Hersteller und die Entscheidung zugelassener Fachleute gehen vor. Arbeiten in der Höhe verlangen Absturzsicherung. Wo Fäulnis oder Schimmel verborgen sein können, das Tragwerk untersuchen lassen und sich schützen, bevor etwas geöffnet wird.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Three sheets meet there; one in the wrong order leads water in.</source>
   <translation>Dort treffen drei Bahnen zusammen; eine in falscher Reihenfolge führt Wasser hinein.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Through-wall flashing</source>
   <translation>Durchgehende Mauersperre</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Timber framing</source>
   <translation>Holztragwerk</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/verdict_words.py" />
   <source>To be mended</source>
   <translation>Zu beheben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/summary.py" />
   <source>To be mended: {places}.</source>
   <translation>Zu beheben: {places}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/finding_words.py" />
   <source>To do: {advice}</source>
   <translation>Zu tun: {advice}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Too thin a coat has holes when it dries; afterwards it can hardly be measured.</source>
   <translation>Eine zu dünne Beschichtung hat nach dem Trocknen Löcher; danach lässt sie sich kaum noch messen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Too thin it tears, too deep it cannot stretch.</source>
   <translation>Zu dünn reißt sie, zu tief kann sie sich nicht dehnen.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Trim</source>
   <translation>Zierleiste</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/lap_cycle.py" />
   <source>Turn one of the laps round so that the sheets go on one after the other, from the bottom up; or split a sheet in two and lap the second part later.</source>
   <translation>Eine der Überlappungen umdrehen, sodass die Bahnen nacheinander von unten nach oben kommen; oder eine Bahn teilen und den zweiten Teil später überlappen lassen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/lap_cycle.py" />
   <source>Turn one of these laps round, so that each sheet goes on after the one it covers.</source>
   <translation>Eine dieser Überlappungen umdrehen, sodass jede Bahn nach der kommt, die sie überdeckt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <source>Turn the edge down and away from the wall, and carry it out until the drop falls clear.</source>
   <translation>Die Kante nach unten und von der Wand weg abkanten und so weit hinausführen, dass der Tropfen frei fällt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <source>Turn the edge down and out, so that the drop lets go.</source>
   <translation>Die Kante nach unten und außen abkanten, sodass der Tropfen abreißt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <source>Two boards pushed together, or two sheets stapled one over the other, leave a slit. Air that leaks out in winter carries more moisture into the wall than vapour diffusing through it, and wets what is cold.</source>
   <translation>Zwei aneinandergestoßene Platten oder zwei übereinander geklammerte Bahnen lassen einen Schlitz. Luft, die im Winter hinausströmt, trägt mehr Feuchte in die Wand, als Dampf hindurch diffundiert, und nässt, was kalt ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/sections.py" />
   <source>Two different places are needed to say which way is down.</source>
   <translation>Zwei verschiedene Stellen sind nötig, um zu sagen, wo unten ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>Two lines with a blank strip between: the drawing is cut short there</source>
   <translation>Zwei Linien mit leerem Streifen dazwischen: Dort ist die Zeichnung gekürzt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Two pieces that neither touch nor lap: the layer stops and starts again.</source>
   <translation>Zwei Stücke, die sich weder berühren noch überlappen: Die Schicht hört auf und fängt wieder an.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/site.py" />
   <source>Type your name: a section is signed by a person.</source>
   <translation>Ihren Namen eingeben: Ein Schnitt wird von einer Person unterschrieben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/verdicts.py" />
   <location filename="../../enclosure_app/window/walk/saying.py" />
   <source>Type your name: it is put beside what you say.</source>
   <translation>Ihren Namen eingeben: Er steht neben dem, was Sie sagen.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>US DOE Building America Solution Center, pan-flashing guide, second-hand</source>
   <translation>US DOE Building America Solution Center, Anleitung zur Wannenabdichtung, aus zweiter Hand</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>US DOE Building America Solution Center, step and kick-out flashing guide</source>
   <translation>US DOE Building America Solution Center, Anleitung zu Stufen- und Ableitblechen</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Underlay not fully supported, 12.5 to 14 degrees; fully supported 150 mm.</source>
   <translation>Unterdeckung nicht vollflächig unterstützt, 12,5 bis 14 Grad; vollflächig unterstützt 150 mm.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Underlay not fully supported, 15 to 34 degrees; from 35 degrees 100 mm, fully supported 100 and 75 mm.</source>
   <translation>Unterdeckung nicht vollflächig unterstützt, 15 bis 34 Grad; ab 35 Grad 100 mm, vollflächig unterstützt 100 und 75 mm.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <source>Units</source>
   <translation>Einheiten</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Unresolved: said to be changed or removed in 2024. The 2021 figure is kept until somebody with the document confirms it.</source>
   <translation>Ungeklärt: 2024 angeblich geändert oder gestrichen. Der Wert von 2021 bleibt, bis jemand mit dem Dokument ihn bestätigt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <source>Unsealed joint</source>
   <translation>Anschluss nicht abgedichtet</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Untreated timber on a foundation wall, from exposed ground.</source>
   <translation>Unbehandeltes Holz auf einer Fundamentwand, über freiem Erdreich.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Untreated timber.</source>
   <translation>Unbehandeltes Holz.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Upper over lower.</source>
   <translation>Obere über untere.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Upturn at a wall above a low-slope roof</source>
   <translation>Aufkantung an einer Wand über flach geneigtem Dach</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Upturn at a wall above a steep roof</source>
   <translation>Aufkantung an einer Wand über steilem Dach</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/upturn_short.py" />
   <source>Upturn short</source>
   <translation>Aufkantung zu niedrig</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>Use a layer map</source>
   <translation>Layerzuordnung anwenden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>Use it</source>
   <translation>Anwenden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>Use {file}</source>
   <translation>{file} anwenden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>Using {file}</source>
   <translation>{file} wird angewandt</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Valley flashing</source>
   <translation>Kehlblech</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <location filename="../../enclosure_app/reports/pdf/layers.py" />
   <source>Vapour</source>
   <translation>Dampf</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Vapour retarder of variable permeance</source>
   <translation>Feuchtevariable Dampfbremse</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Vapour retarder under a slab, lapped at least 6 in.</source>
   <translation>Dampfbremse unter einer Bodenplatte, mindestens 6 in überlappt.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Vapour retarder under the slab</source>
   <translation>Dampfbremse unter der Bodenplatte</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Vapour-retarder paint</source>
   <translation>Dampfbremsender Anstrich</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_figures.py" />
   <source>Vapour: “{text}” has no unit that is known; type “2 perm”, “57 ng” or “sd 0.2 m”.</source>
   <translation>Dampf: „{text}“ hat keine bekannte Einheit; „2 perm“, „57 ng“ oder „sd 0.2 m“ eingeben.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Vented air space</source>
   <translation>Belüfteter Luftraum</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Vented space behind the cladding</source>
   <translation>Belüfteter Raum hinter der Bekleidung</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Ventilation mat</source>
   <translation>Lüftungsmatte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <source>Verdict</source>
   <translation>Entscheidung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/pdf/notes.py" />
   <source>Verdict: {verdict}</source>
   <translation>Entscheidung: {verdict}</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Vertical (end) seams, 6 in.</source>
   <translation>Senkrechte Nähte (Stöße), 6 in.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Wall base</source>
   <translation>Wandfuß</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Was the ground dry, clean, warm enough and, where the maker asks for it, primed?</source>
   <translation>War der Untergrund trocken, sauber, warm genug und, wo der Hersteller es verlangt, grundiert?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Was the thickness measured wet, and written down?</source>
   <translation>Wurde die Dicke nass gemessen und aufgeschrieben?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <location filename="../../enclosure_app/reports/pdf/layers.py" />
   <source>Water</source>
   <translation>Wasser</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/ponding.py" />
   <source>Water stands on the {sheets} here and cannot run off.</source>
   <translation>Auf {sheets} steht hier Wasser und kann nicht abfließen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Water that is built in stays in.</source>
   <translation>Eingebautes Wasser bleibt drin.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Water that runs down gets in behind an edge that faces up.</source>
   <translation>Herablaufendes Wasser gelangt hinter eine nach oben offene Kante.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Water that runs down the sheet goes in behind an edge that lies on top.</source>
   <translation>Wasser, das an der Bahn herabläuft, gelangt hinter einen Rand, der obenauf liegt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Water that stands finds the next screw hole or joint.</source>
   <translation>Stehendes Wasser findet das nächste Schraubenloch oder die nächste Fuge.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Waterproofing sheet below ground</source>
   <translation>Abdichtungsbahn im Erdreich</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Weep screed</source>
   <translation>Putzabschlussprofil</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Weep screed above paving</source>
   <translation>Putzabschlussprofil über Pflaster</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Weep screed above the ground</source>
   <translation>Putzabschlussprofil über dem Gelände</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Welded or bonded seams; the maker's figure goes before.</source>
   <translation>Verschweißte oder verklebte Nähte; der Wert des Herstellers geht vor.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/wet_route.py" />
   <source>Wet route</source>
   <translation>Weg des Regens nach innen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>What gets in and cannot leave goes into the wall.</source>
   <translation>Was eindringt und nicht ablaufen kann, geht in die Wand.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/wet_route.py" />
   <source>What gets in behind the water layer wets sheathing and framing where nothing dries it soon. Rot and mould follow long before a stain shows indoors.</source>
   <translation>Was hinter die Wasserschutzschicht gelangt, nässt Beplankung und Tragwerk, wo nichts es bald trocknet. Fäulnis und Schimmel kommen lange, bevor innen ein Fleck zu sehen ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>What is fixed to boards alone flaps in the wind and tears.</source>
   <translation>Was nur an Platten befestigt ist, flattert im Wind und reißt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>What is picked is on {layers}.</source>
   <translation>Das Ausgewählte ist auf {layers}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>What it collects leaves at its ends.</source>
   <translation>Was es sammelt, läuft an seinen Enden ab.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/edge_cover_short.py" />
   <location filename="../../enclosure_app/rules/gap.py" />
   <location filename="../../enclosure_app/rules/lap_cycle.py" />
   <location filename="../../enclosure_app/rules/level_lap.py" />
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <location filename="../../enclosure_app/rules/open_penetration.py" />
   <location filename="../../enclosure_app/rules/ponding.py" />
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <location filename="../../enclosure_app/rules/short_lap.py" />
   <location filename="../../enclosure_app/rules/stops_short.py" />
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <location filename="../../enclosure_app/rules/upturn_short.py" />
   <location filename="../../enclosure_app/rules/wet_route.py" />
   <source>What it finds</source>
   <translation>Was gefunden wird</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/answers.py" />
   <source>What it is about is no longer found.</source>
   <translation>Worum es geht, wird nicht mehr gefunden.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_menu.py" />
   <source>What its name suggests</source>
   <translation>Was sein Name nahelegt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <source>What to do</source>
   <translation>Was zu tun ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/edge_cover_short.py" />
   <location filename="../../enclosure_app/rules/gap.py" />
   <location filename="../../enclosure_app/rules/lap_cycle.py" />
   <location filename="../../enclosure_app/rules/level_lap.py" />
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <location filename="../../enclosure_app/rules/open_penetration.py" />
   <location filename="../../enclosure_app/rules/ponding.py" />
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <location filename="../../enclosure_app/rules/short_lap.py" />
   <location filename="../../enclosure_app/rules/stops_short.py" />
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <location filename="../../enclosure_app/rules/upturn_short.py" />
   <location filename="../../enclosure_app/rules/wet_route.py" />
   <source>What to draw instead</source>
   <translation>Was stattdessen zu zeichnen ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/site.py" />
   <source>What to look at</source>
   <translation>Was anzusehen ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>What was decided</source>
   <translation>Was entschieden wurde</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/findings_table.py" />
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <source>What was found</source>
   <translation>Was gefunden wurde</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/verdicts.py" />
   <source>What was found may stand only for a reason: type why, so that others can follow.</source>
   <translation>Was gefunden wurde, darf nur mit Grund bleiben: den Grund eingeben, damit andere folgen können.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/saying.py" />
   <source>What was noted at “{}” was not put down: another drawing is open, or the section bears another name. Go there and note it again.</source>
   <translation>Die Notiz zu „{}“ wurde nicht festgehalten: Eine andere Zeichnung ist offen, oder der Schnitt heißt anders. Bitte dorthin gehen und sie noch einmal notieren.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>What was signed</source>
   <translation>Was unterschrieben wurde</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/sayings.py" />
   <source>When (UTC)</source>
   <translation>Wann (UTC)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Where a sheet changes its direction round an edge or into a corner.</source>
   <translation>Wo eine Bahn um eine Kante oder in eine Ecke die Richtung wechselt.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Where joints occur, at least 6 in.</source>
   <translation>Wo Stöße vorkommen, mindestens 6 in.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Where the fold comes to a corner, was it folded in the right order, the piece that sheds the water last?</source>
   <translation>Wo der Knick auf eine Ecke trifft: Ist in der richtigen Reihenfolge gefaltet, das wasserführende Stück zuletzt?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Where two lengths meet, do they lap, the upper one over the lower one?</source>
   <translation>Wo zwei Längen zusammentreffen: Überlappen sie sich, die obere über der unteren?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Where two pieces of one layer meet: lapped, end to end, or end to face.</source>
   <translation>Wo sich zwei Stücke einer Schicht treffen: überlappt, Ende an Ende oder Ende an Fläche.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>Where two sheets run side by side, one over the other.</source>
   <translation>Wo zwei Bahnen nebeneinander laufen, eine über der anderen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/units_asking.py" />
   <source>Which units is {file} drawn in?</source>
   <translation>In welchen Einheiten ist {file} gezeichnet?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/site.py" />
   <source>Why</source>
   <translation>Warum</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/edge_cover_short.py" />
   <location filename="../../enclosure_app/rules/gap.py" />
   <location filename="../../enclosure_app/rules/lap_cycle.py" />
   <location filename="../../enclosure_app/rules/level_lap.py" />
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <location filename="../../enclosure_app/rules/open_penetration.py" />
   <location filename="../../enclosure_app/rules/ponding.py" />
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <location filename="../../enclosure_app/rules/short_lap.py" />
   <location filename="../../enclosure_app/rules/stops_short.py" />
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <location filename="../../enclosure_app/rules/upturn_short.py" />
   <location filename="../../enclosure_app/rules/wet_route.py" />
   <source>Why it matters</source>
   <translation>Warum das wichtig ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Wind drives water up under a short edge, on either side.</source>
   <translation>Wind treibt Wasser unter einen kurzen Rand, auf beiden Seiten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/short_lap.py" />
   <source>Wind drives water uphill under a lap, capillarity draws it in, and a sheet put up in a gale is never quite where it was drawn. The lap's length is the margin for all three.</source>
   <translation>Wind treibt Wasser unter einer Überlappung bergauf, Kapillarität zieht es hinein, und eine bei Sturm verlegte Bahn liegt nie ganz so, wie sie gezeichnet war. Die Länge der Überlappung ist die Reserve für alle drei.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Wind lifts a roof at its edges and corners first.</source>
   <translation>Wind hebt ein Dach zuerst an Rändern und Ecken ab.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Wind takes a roof from its edge; a bowed edge lets the drops run where they like.</source>
   <translation>Wind packt ein Dach am Rand; an einem verbogenen Rand laufen die Tropfen, wohin sie wollen.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Window frame</source>
   <translation>Fensterrahmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Window head</source>
   <translation>Fenstersturz</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts" />
   <source>Window sill</source>
   <translation>Fensterbank</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Without one the drop runs back under the edge and down the wall.</source>
   <translation>Ohne sie läuft der Tropfen unter der Kante zurück und an der Wand herab.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Wood shingles</source>
   <translation>Holzschindeln</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Wood siding above slabs, steps and porches.</source>
   <translation>Holzschalung über Platten, Stufen und Veranden.</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>Wood siding.</source>
   <translation>Holzschalung.</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>Wood-fibre board</source>
   <translation>Holzfaserplatte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <source>Work that follows makes holes, and the next trade covers them.</source>
   <translation>Die folgenden Arbeiten machen Löcher, und das nächste Gewerk verdeckt sie.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/handed_over.py" />
   <source>Written: {when} UTC</source>
   <translation>Geschrieben: {when} UTC</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/layer_map.py" />
   <source>[[layers]] has both 'product' and 'role'; keep one of them.</source>
   <translation>[[layers]] hat sowohl 'product' als auch 'role'; eines davon behalten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/layer_map.py" />
   <source>[[layers]] has neither 'product' nor 'role'; say what the layer is.</source>
   <translation>[[layers]] hat weder 'product' noch 'role'; angeben, was der Layer ist.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/layer_map.py" />
   <source>[[layers]] needs 'match', a pattern for the names of layers.</source>
   <translation>[[layers]] braucht 'match', ein Muster für die Namen der Layer.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>a PDF</source>
   <translation>ein PDF</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>a ZIP archive</source>
   <translation>ein ZIP-Archiv</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/level_lap.py" />
   <source>a lap on the level that nothing seals.</source>
   <translation>eine waagerechte Überlappung, die nichts abdichtet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>a list of {count}</source>
   <translation>eine Liste mit {count} Einträgen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <source>a lower edge lets the drop run back instead of dripping clear.</source>
   <translation>eine Unterkante lässt den Tropfen zurücklaufen, statt ihn frei abtropfen zu lassen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>a picture</source>
   <translation>ein Bild</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>absent</source>
   <translation>nicht vorhanden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>adhered</source>
   <translation>verklebt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>air</source>
   <translation>Luft</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/product.py" />
   <source>air layer</source>
   <translation>Luftdichtheitsschicht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>air space</source>
   <translation>Luftraum</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>an object</source>
   <translation>ein Objekt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/unrolled.py" />
   <source>and meets itself</source>
   <translation>und trifft sich selbst</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>apron</source>
   <translation>Brustblech</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>as a line</source>
   <translation>als Linie</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>as an outline</source>
   <translation>als Umriss</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/layers.py" />
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>as named</source>
   <translation>wie benannt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>as named, {sure}</source>
   <translation>wie benannt, {sure}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>attribute that belongs to no insert</source>
   <translation>Attribut ohne zugehörige Einfügung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/junctions.py" />
   <source>balcony</source>
   <translation>Balkon</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>bead</source>
   <translation>Dichtstoffraupe</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>block that contains itself</source>
   <translation>Block, der sich selbst enthält</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>block without a name</source>
   <translation>Block ohne Namen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>board</source>
   <translation>Platte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>broken</source>
   <translation>unterbrochen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/ribbon.py" />
   <source>broken at 1 place, {width} wide</source>
   <translation>an 1 Stelle unterbrochen, {width} breit</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/ribbon.py" />
   <source>broken at {count} places, at most {width} wide</source>
   <translation>an {count} Stellen unterbrochen, höchstens {width} breit</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>by definition of sd; thermal resistance ISO 6946, not a conductivity</source>
   <translation>nach Definition von sd; Wärmedurchlasswiderstand ISO 6946, keine Wärmeleitfähigkeit</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/lock.py" />
   <source>by somebody else</source>
   <translation>bei jemand anderem</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/lock.py" />
   <source>by {holder}</source>
   <translation>bei {holder}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>cannot be {shown}{hint}</source>
   <translation>kann nicht {shown} sein{hint}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>centimetres</source>
   <translation>Zentimeter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>cladding</source>
   <translation>Bekleidung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>collar</source>
   <translation>Manschette</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/questions.py" />
   <location filename="../../resources/limits.toml" />
   <location filename="../../resources/products.toml" />
   <source>common practice, no source</source>
   <translation>übliche Praxis, ohne Quelle</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>common practice, no source (dry cup; far more open when damp)</source>
   <translation>übliche Praxis, ohne Quelle (Trockenverfahren; feucht weit offener)</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>common practice, no source; vapour not less than 0.25 mm polyethylene, ISO 10456:2007, from memory</source>
   <translation>übliche Praxis, ohne Quelle; Dampf nicht unter 0,25 mm Polyethylen, ISO 10456:2007, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>concrete</source>
   <translation>Beton</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>conductivity of the pane, ISO 10456 draft, second-hand; vapour-tight, so the figure of aluminium foil stands in</source>
   <translation>Wärmeleitfähigkeit der Scheibe, Entwurf ISO 10456, aus zweiter Hand; dampfdicht, daher der Wert von Aluminiumfolie</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>continuous</source>
   <translation>durchgehend</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/ribbon.py" />
   <source>continuous: can be followed from end to end without lifting the pen</source>
   <translation>durchgehend: lässt sich von einem Ende zum anderen verfolgen, ohne den Stift abzusetzen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_words.py" />
   <source>controls nothing</source>
   <translation>trennt nichts</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>cut end</source>
   <translation>Schnittende</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>doubt</source>
   <translation>Zweifel</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>doubtful</source>
   <translation>zweifelhaft</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <location filename="../../enclosure_app/model/finding.py" />
   <source>doubts</source>
   <translation>Zweifel</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>drain</source>
   <translation>Ablauf</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layers_model.py" />
   <source>drawn here</source>
   <translation>hier gezeichnet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>drip edge</source>
   <translation>Tropfblech</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/junctions.py" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>eave</source>
   <translation>Traufe</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>eave membrane</source>
   <translation>Traufbahn</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/edge_cover_short.py" />
   <source>edge cover short</source>
   <translation>Traufbahn zu kurz</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/network/network.py" />
   <source>edge of the drawing</source>
   <translation>Rand der Zeichnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_form.py" />
   <source>either way</source>
   <translation>auf beide Arten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>ellipse with an invalid ratio of its axes</source>
   <translation>Ellipse mit ungültigem Achsverhältnis</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>ellipse without a valid axis</source>
   <translation>Ellipse ohne gültige Achse</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>end</source>
   <translation>Ende</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/unrolled.py" />
   <source>ends here</source>
   <translation>endet hier</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>entity that belongs to no layout</source>
   <translation>Element, das zu keinem Layout gehört</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>entity whose layout is missing</source>
   <translation>Element, dessen Layout fehlt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>entity with an invalid handle</source>
   <translation>Element mit ungültiger Kennung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>entity with an invalid owner</source>
   <translation>Element mit ungültigem Besitzer</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>entity with invalid data</source>
   <translation>Element mit ungültigen Daten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/junctions.py" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>fascia</source>
   <translation>Traufbrett</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>fastened</source>
   <translation>befestigt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>fault</source>
   <translation>Mangel</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/notes.py" />
   <source>fault of an unknown kind ({code})</source>
   <translation>Fehler unbekannter Art ({code})</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <location filename="../../enclosure_app/model/finding.py" />
   <source>faults</source>
   <translation>Mängel</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>feet</source>
   <translation>Fuß</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/sheet.py" />
   <source>feet and inches</source>
   <translation>Fuß und Zoll</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/summary.py" />
   <source>finding {number} ({what})</source>
   <translation>Befund {number} ({what})</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>findings</source>
   <translation>Befunde</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>flashing</source>
   <translation>Anschlussblech</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/junctions.py" />
   <source>floor</source>
   <translation>Boden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>fluid</source>
   <translation>flüssig aufgetragen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>fold</source>
   <translation>Knick</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/junctions.py" />
   <source>footing</source>
   <translation>Fundament</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>frame</source>
   <translation>Rahmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>framing</source>
   <translation>Tragwerk</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/gap.py" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>gap</source>
   <translation>Lücke</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>gasket</source>
   <translation>Dichtung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/products.py" />
   <source>gives '{key}' and calls it unknown; keep one of them.</source>
   <translation>gibt '{key}' an und nennt es unbekannt; eines davon behalten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>glass</source>
   <translation>Glas</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/unrolled.py" />
   <source>goes all the way round</source>
   <translation>geht ringsum</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/unrolled.py" />
   <source>goes on above</source>
   <translation>geht oben weiter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/unrolled.py" />
   <source>goes on below</source>
   <translation>geht unten weiter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/unrolled.py" />
   <source>goes on to the left</source>
   <translation>geht links weiter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/unrolled.py" />
   <source>goes on to the right</source>
   <translation>geht rechts weiter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>ground</source>
   <translation>Boden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/junctions.py" />
   <source>gutter</source>
   <translation>Dachrinne</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>handle given to several entities</source>
   <translation>Kennung, die mehrere Elemente tragen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/products.py" />
   <source>has both 'permeance_ng' and 'sd_m'; keep one of them.</source>
   <translation>hat sowohl 'permeance_ng' als auch 'sd_m'; eines davon behalten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>hatch with an invalid boundary</source>
   <translation>Schraffur mit ungültigem Rand</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/junctions.py" />
   <source>head</source>
   <translation>Sturz</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>heat</source>
   <translation>Wärme</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/product.py" />
   <source>heat layer</source>
   <translation>Wärmedämmschicht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>inches</source>
   <translation>Zoll</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/rule_pictures.py" />
   <location filename="../../enclosure_app/files" />
   <source>inside</source>
   <translation>innen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>insulation</source>
   <translation>Dämmung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>invalid colour number</source>
   <translation>ungültige Farbnummer</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>invalid extrusion direction</source>
   <translation>ungültige Extrusionsrichtung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>invalid layer name</source>
   <translation>ungültiger Layername</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>invalid line weight</source>
   <translation>ungültige Linienstärke</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>invalid number</source>
   <translation>ungültige Zahl</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>invalid whole number</source>
   <translation>ungültige ganze Zahl</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/as_json.py" />
   <source>is "{name}", as that of a piece before it: give it another.</source>
   <translation>ist „{name}“, wie bei einem Stück davor: einen anderen geben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/as_json.py" />
   <source>is "{product}", which is no product of this file or the program</source>
   <translation>ist „{product}“, und das ist kein Produkt dieser Datei oder des Programms</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>is 0; it must be more than that.</source>
   <translation>ist 0; es muss mehr sein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/as_json.py" />
   <source>is no figure of the rule books{hint}</source>
   <translation>ist kein Wert der Regelwerke{hint}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/products.py" />
   <source>is not in the catalogue, so it needs {keys} as well.</source>
   <translation>steht nicht im Katalog und braucht deshalb auch {keys}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/as_json.py" />
   <source>is not known here: the name before the product is its key.</source>
   <translation>ist hier nicht bekannt: Der Name vor dem Produkt ist sein Schlüssel.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>is not known here{hint}</source>
   <translation>ist hier nicht bekannt{hint}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>is not sound base64: the picture is damaged; take it from an older copy of the file.</source>
   <translation>ist kein einwandfreies Base64: Das Bild ist beschädigt; aus einer älteren Kopie der Datei nehmen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>is too large: write a finite number.</source>
   <translation>ist zu groß: eine endliche Zahl schreiben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>is {number}: write a finite number.</source>
   <translation>ist {number}: eine endliche Zahl schreiben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>is {value}; it cannot be negative.</source>
   <translation>ist {value}; es kann nicht negativ sein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>is {value}; write 1 or 0.</source>
   <translation>ist {value}; 1 oder 0 schreiben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>is {value}; write a finite number.</source>
   <translation>ist {value}; eine endliche Zahl schreiben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>is {value}; write a slope as rise over run (4:12 is 0.3333).</source>
   <translation>ist {value}; die Neigung als Höhe durch Länge schreiben (4:12 ist 0.3333).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>issued by {who}</source>
   <translation>herausgegeben von {who}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/units/shown.py" />
   <source>its dimensions read as millimetres ({says})</source>
   <translation>ihre Bemaßungen lesen sich als Millimeter ({says})</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/units/shown.py" />
   <source>its dimensions read as {units} ({measured:g} is dimensioned {says})</source>
   <translation>ihre Bemaßungen lesen sich als {units} ({measured:g} ist mit {says} bemaßt)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>its name is not valid</source>
   <translation>ihr Name ist ungültig</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/units/judging.py" />
   <source>its texts would be {high} mm high</source>
   <translation>ihre Texte wären {high} mm hoch</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>joint</source>
   <translation>Anschluss</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/legend.py" />
   <source>joint declared sealed</source>
   <translation>Anschluss für abgedichtet erklärt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>lacks {keys}: add it.</source>
   <translation>fehlt {keys}: ergänzen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>lap</source>
   <translation>Überlappung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/lap_cycle.py" />
   <source>lap cycle</source>
   <translation>Überlappung im Kreis</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_words.py" />
   <source>laps {lap} at least</source>
   <translation>überlappt mindestens {lap}</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>laps: IRC R506.2.3, second-hand; vapour: ISO 10456:2007, from memory (polyethylene, 0.25 mm)</source>
   <translation>Überlappungen: IRC R506.2.3, aus zweiter Hand; Dampf: ISO 10456:2007, aus dem Gedächtnis (Polyethylen, 0,25 mm)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/meaning.py" />
   <source>layer {names}</source>
   <translation>Layer {names}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/meaning.py" />
   <source>layers {names}</source>
   <translation>Layer {names}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/network/details/drainage.py" />
   <source>least lap of {product}: {source}</source>
   <translation>Mindestüberlappung von „{product}“: {source}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/unrolled.py" />
   <source>level</source>
   <translation>waagerecht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/level_lap.py" />
   <source>level lap</source>
   <translation>waagerechte Überlappung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>lift</source>
   <translation>Absetzen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>likely</source>
   <translation>wahrscheinlich</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>loose</source>
   <translation>lose</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>masonry</source>
   <translation>Mauerwerk</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>mat</source>
   <translation>Matte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/findings_table.py" />
   <source>measured</source>
   <translation>gemessen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>metres</source>
   <translation>Meter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>millimetres</source>
   <translation>Millimeter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>missing directory entry</source>
   <translation>fehlender Verzeichniseintrag</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>missing object</source>
   <translation>fehlendes Objekt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>missing table</source>
   <translation>fehlende Tabelle</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>multi-line without a style</source>
   <translation>Multilinie ohne Stil</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>must be a colour index from 1 to 255, not {shown}.</source>
   <translation>muss eine Farbnummer von 1 bis 255 sein, nicht {shown}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>must be a list of points [[x, y], ...], not {shown}.</source>
   <translation>muss eine Liste von Punkten [[x, y], ...] sein, nicht {shown}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>must be a list of texts in quotes.</source>
   <translation>muss eine Liste von Texten in Anführungszeichen sein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>must be a list, not {shown}.</source>
   <translation>muss eine Liste sein, nicht {shown}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>must be a list, such as ["{one}"], not {shown}.</source>
   <translation>muss eine Liste sein, etwa ["{one}"], nicht {shown}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>must be a number without quotes, not {shown}.</source>
   <translation>muss eine Zahl ohne Anführungszeichen sein, nicht {shown}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>must be a number, not {shown}.</source>
   <translation>muss eine Zahl sein, nicht {shown}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>must be a point [x, y], not {shown}.</source>
   <translation>muss ein Punkt [x, y] sein, nicht {shown}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/layer_map.py" />
   <source>must be a table in brackets of its own.</source>
   <translation>muss eine eigene Tabelle in Klammern sein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>must be a text in quotes, not {shown}.</source>
   <translation>muss ein Text in Anführungszeichen sein, nicht {shown}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>must be a text in quotes.</source>
   <translation>muss ein Text in Anführungszeichen sein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>must be a whole number, not {shown}.</source>
   <translation>muss eine ganze Zahl sein, nicht {shown}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/sayings.py" />
   <source>must be a width and a height in dots.</source>
   <translation>muss eine Breite und eine Höhe in Bildpunkten sein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>must be an object {{...}}, not {shown}.</source>
   <translation>muss ein Objekt {{...}} sein, nicht {shown}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/as_json.py" />
   <source>must be one long, such as [0, -1], or null for a plan.</source>
   <translation>muss die Länge eins haben, etwa [0, -1], oder null für einen Grundriss.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>must be true or false, not {shown}.</source>
   <translation>muss true oder false sein, nicht {shown}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/layer_map.py" />
   <source>must be written as [[layers]], once for each row.</source>
   <translation>muss als [[layers]] geschrieben sein, einmal für jede Zeile.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/sayings.py" />
   <source>must hold a revision, a section and a key.</source>
   <translation>muss einen Stand, einen Schnitt und einen Schlüssel enthalten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>must hold {count} points or more, not {held}.</source>
   <translation>muss {count} oder mehr Punkte enthalten, nicht {held}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/forms.py" />
   <source>must hold {count} points, not {held}.</source>
   <translation>muss {count} Punkte enthalten, nicht {held}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/as_json.py" />
   <source>must name two pieces.</source>
   <translation>muss zwei Stücke nennen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>named as {guess}?</source>
   <translation>benannt als {guess}?</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/sayings.py" />
   <source>names a photograph that is not in the file: remove it here.</source>
   <translation>nennt ein Foto, das nicht in der Datei ist: hier entfernen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/as_json.py" />
   <source>names a rule book that is not there. {text}</source>
   <translation>nennt ein Regelwerk, das es nicht gibt. {text}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/no_drip.py" />
   <source>no drip</source>
   <translation>tropft nicht ab</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>no figure known</source>
   <translation>kein Wert bekannt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>no layer</source>
   <translation>keine Schicht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/tables/findings.py" />
   <source>no longer found</source>
   <translation>nicht mehr gefunden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/pdf/pages.py" />
   <source>no page could be started</source>
   <translation>keine Seite ließ sich beginnen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_words.py" />
   <source>no source</source>
   <translation>ohne Quelle</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>no such clause in OBC 9.26.5.1</source>
   <translation>keine solche Stelle in OBC 9.26.5.1</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/looking_up.py" />
   <source>none yet</source>
   <translation>noch keine</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>not as named</source>
   <translation>nicht wie benannt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/labels.py" />
   <source>not drawn</source>
   <translation>nicht gezeichnet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <location filename="../../enclosure_app/drawing/sheet/signatures.py" />
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <source>not signed</source>
   <translation>nicht unterschrieben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <source>nothing found</source>
   <translation>nichts gefunden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>object with invalid data</source>
   <translation>Objekt mit ungültigen Daten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/section/glyphs.py" />
   <source>of {length}</source>
   <translation>von {length}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>off</source>
   <translation>aus</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/finding.py" />
   <source>offs</source>
   <translation>aus</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/units/shown.py" />
   <source>only so are its texts ({tall:.0f} mm high) and its extent usual</source>
   <translation>nur so sind ihre Texte ({tall:.0f} mm hoch) und ihre Ausdehnung üblich</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>open</source>
   <translation>offen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/open_penetration.py" />
   <source>open penetration</source>
   <translation>offene Durchdringung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/junctions.py" />
   <location filename="../../enclosure_app/model" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>opening</source>
   <translation>Öffnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/rule_pictures.py" />
   <location filename="../../enclosure_app/files" />
   <source>outside</source>
   <translation>außen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>over</source>
   <translation>darüber</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_delegate.py" />
   <source>own</source>
   <translation>eigene</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>pan</source>
   <translation>Wanne</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>paper layout without a page setup</source>
   <translation>Papierlayout ohne Seiteneinrichtung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/junctions.py" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>parapet</source>
   <translation>Attika</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>penetration</source>
   <translation>Durchdringung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>polyline with too few vertices</source>
   <translation>Polylinie mit zu wenigen Punkten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/ponding.py" />
   <source>ponding</source>
   <translation>stehendes Wasser</translation>
  </message>
  <message>
   <location filename="../../resources/limits.toml" />
   <source>practice for lead sheet, from memory</source>
   <translation>Praxis für Bleibahnen, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/wet_route.py" />
   <source>rain gets behind the water layer.</source>
   <translation>Regen gelangt hinter die Wasserschutzschicht.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>rain route</source>
   <translation>Regenweg</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/junctions.py" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>rake</source>
   <translation>Ortgang</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>reference to something that is not in the file</source>
   <translation>Verweis auf etwas, das nicht in der Datei ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>remark</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <location filename="../../enclosure_app/model/finding.py" />
   <source>remarks</source>
   <translation>Hinweise</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/findings_table.py" />
   <source>required</source>
   <translation>gefordert</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>resistance factor ISO 10456:2007, from memory; conductivity common practice, no source</source>
   <translation>Diffusionswiderstand ISO 10456:2007, aus dem Gedächtnis; Wärmeleitfähigkeit übliche Praxis, ohne Quelle</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>reverse</source>
   <translation>verkehrt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <source>reverse lap</source>
   <translation>verkehrte Überlappung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/junctions.py" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>ridge</source>
   <translation>First</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>rigid</source>
   <translation>starr</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/junctions.py" />
   <source>roof-wall</source>
   <translation>Dach-Wand</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>roofing</source>
   <translation>Deckung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>sealant</source>
   <translation>Dichtstoff</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>sealed</source>
   <translation>abgedichtet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>section that this version of the format lacks</source>
   <translation>Abschnitt, den diese Version des Formats nicht kennt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>section without a beginning</source>
   <translation>Abschnitt ohne Anfang</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>section without a name</source>
   <translation>Abschnitt ohne Namen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>section without an end (the file may have been cut short)</source>
   <translation>Abschnitt ohne Ende (die Datei wurde vielleicht abgeschnitten)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>sections</source>
   <translation>Schnitte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>sheet</source>
   <translation>Bahn</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/short_lap.py" />
   <source>short lap</source>
   <translation>Überlappung zu kurz</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>signed off</source>
   <translation>unterschrieben</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>signed, then changed</source>
   <translation>unterschrieben, dann geändert</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/junctions.py" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>sill</source>
   <translation>Fensterbank</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>sill pan</source>
   <translation>Fensterbankwanne</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/unrolled.py" />
   <source>slope {angle:.0f}°</source>
   <translation>Neigung {angle:.0f}°</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/junctions.py" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>soffit</source>
   <translation>Untersicht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/answers.py" />
   <location filename="../../enclosure_app/files/replies/replies.py" />
   <source>somebody</source>
   <translation>jemand</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/open_penetration.py" />
   <source>something passes through the layer and nothing seals it there.</source>
   <translation>etwas geht durch die Schicht, und nichts dichtet es dort ab.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>spline with invalid data</source>
   <translation>Spline mit ungültigen Daten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>start</source>
   <translation>Anfang</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/stops_short.py" />
   <source>stops short</source>
   <translation>hört zu früh auf</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/unrolled.py" />
   <source>straight</source>
   <translation>gerade</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>sure</source>
   <translation>sicher</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>table entry named twice</source>
   <translation>zweimal benannter Tabelleneintrag</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>table that this version of the format lacks</source>
   <translation>Tabelle, die diese Version des Formats nicht kennt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>table with an invalid handle</source>
   <translation>Tabelle mit ungültiger Kennung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>tape</source>
   <translation>Klebeband</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>text that does not fit the file's code page</source>
   <translation>Text, der nicht zur Codepage der Datei passt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/lines.py" />
   <source>that line</source>
   <translation>diese Linie</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/pdf/pages.py" />
   <source>the disk may be full</source>
   <translation>vielleicht ist der Datenträger voll</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/edge_cover_short.py" />
   <source>the eave membrane does not reach far enough up the roof.</source>
   <translation>die Traufbahn reicht am Dach nicht weit genug hinauf.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/file.py" />
   <source>the key "{key}" stands twice in one object; keep one of them.</source>
   <translation>der Schlüssel "{key}" steht zweimal in einem Objekt; einen davon behalten.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/stops_short.py" />
   <source>the layer ends before it reaches the edge of the drawing.</source>
   <translation>die Schicht endet, bevor sie den Rand der Zeichnung erreicht.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>the layer map</source>
   <translation>der Layerzuordnung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/gap.py" />
   <source>the layer stops and starts again.</source>
   <translation>die Schicht hört auf und fängt wieder an.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/network/network.py" />
   <source>the lower one</source>
   <translation>die untere Lage</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_fields.py" />
   <source>the office's own</source>
   <translation>aus dem Büro</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/file.py" />
   <source>the project</source>
   <translation>das Projekt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/upturn_short.py" />
   <source>the roof's water layer does not go far enough up the wall.</source>
   <translation>die Wasserschutzschicht des Daches reicht an der Wand nicht hoch genug hinauf.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/units/judging.py" />
   <source>the section would be {across:.4g} m across</source>
   <translation>der Schnitt wäre {across:.4g} m groß</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/lap_cycle.py" />
   <source>the sheets cannot be put on in any order that makes these laps.</source>
   <translation>in keiner Reihenfolge der Bahnen entstehen diese Überlappungen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <source>the upper sheet is tucked under the lower one.</source>
   <translation>die obere Bahn steckt unter der unteren.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/network/network.py" />
   <source>the upper {sheet}</source>
   <translation>die obere Lage {sheet}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/lap_cycle.py" />
   <source>the {over} over the {under}</source>
   <translation>{over} über {under}</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>thickness: IRC R903.2.1 (0.019 in); conductivity of steel ISO 10456:2007, from memory</source>
   <translation>Dicke: IRC R903.2.1 (0.019 in); Wärmeleitfähigkeit von Stahl ISO 10456:2007, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../resources/products.toml" />
   <source>thickness: common practice, no source; conductivity ISO 10456:2007, from memory</source>
   <translation>Dicke: übliche Praxis, ohne Quelle; Wärmeleitfähigkeit ISO 10456:2007, aus dem Gedächtnis</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/projects.py" />
   <source>this project's own figure</source>
   <translation>eigener Wert dieses Projekts</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>trace</source>
   <translation>Verlauf</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <source>two pieces of the air layer meet and nothing seals them.</source>
   <translation>zwei Stücke der Luftdichtheitsschicht treffen sich, und nichts dichtet sie ab.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/network/network.py" />
   <source>two pieces of {sheet}</source>
   <translation>zwei Stücke „{sheet}“</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/short_lap.py" />
   <source>two sheets lap by less than is required.</source>
   <translation>zwei Bahnen überlappen sich weniger als gefordert.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>under</source>
   <translation>darunter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>underlayment</source>
   <translation>Unterdeckung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>unknown key '{key}' in {title}{hint}</source>
   <translation>unbekannter Schlüssel '{key}' in {title}{hint}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/layer_map.py" />
   <source>unknown product '{key}'{hint}</source>
   <translation>unbekanntes Produkt '{key}'{hint}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <source>unsealed joint</source>
   <translation>Anschluss nicht abgedichtet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>unsure</source>
   <translation>unsicher</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/ribbon.py" />
   <source>unsure: judge this layer by eye</source>
   <translation>unsicher: diese Schicht mit eigenen Augen beurteilen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/ribbon.py" />
   <source>unsure: {why}</source>
   <translation>unsicher: {why}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/ribbon/unrolled.py" />
   <source>upright</source>
   <translation>senkrecht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/trade.py" />
   <source>upturn</source>
   <translation>Aufkantung</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/upturn_short.py" />
   <source>upturn short</source>
   <translation>Aufkantung zu niedrig</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/sheet.py" />
   <source>use larger paper</source>
   <translation>größeres Papier nehmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>use of a block that is not defined</source>
   <translation>Verwendung eines Blocks, der nicht definiert ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>use of a dimension style that is not defined</source>
   <translation>Verwendung eines Bemaßungsstils, der nicht definiert ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>use of a linetype that is not defined</source>
   <translation>Verwendung eines Linientyps, der nicht definiert ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>use of a text style that is not defined</source>
   <translation>Verwendung eines Textstils, der nicht definiert ist</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/sheet.py" />
   <source>use {scale}</source>
   <translation>{scale} nehmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>value outside every section</source>
   <translation>Wert außerhalb aller Abschnitte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>vapour</source>
   <translation>Dampf</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/product.py" />
   <source>vapour layer</source>
   <translation>Dampfbremsschicht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model" />
   <source>water</source>
   <translation>Wasser</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/product.py" />
   <source>water layer</source>
   <translation>Wasserschutzschicht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/ponding.py" />
   <source>water stands in a low point and cannot run off.</source>
   <translation>in einem Tiefpunkt steht Wasser und kann nicht abfließen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/legend.py" />
   <source>way in, {control}</source>
   <translation>Weg hinein, {control}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/legend.py" />
   <source>way of a drop</source>
   <translation>Weg eines Tropfens</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/wet_route.py" />
   <source>wet route</source>
   <translation>Weg des Regens nach innen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/units/shown.py" />
   <source>what it draws is as thick as its products are in {units}</source>
   <translation>was sie zeichnet, ist in {units} so dick wie seine Produkte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/units/judging.py" />
   <source>what it draws with furniture (layer {layer}) would be {high:.3g} m high</source>
   <translation>was mit Möbeln gezeichnet ist (Layer {layer}), wäre {high:.3g} m hoch</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/joints.py" />
   <source>{bead} at {others}</source>
   <translation>{bead} an {others}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <source>{both} are drawn on top of each other: the drawing does not show the order.</source>
   <translation>{both} sind aufeinander gezeichnet: Die Zeichnung zeigt die Reihenfolge nicht.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <source>{both} lap and nothing seals them: air gets through.</source>
   <translation>{both} überlappen sich, und nichts dichtet sie ab: Luft geht hindurch.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/short_lap.py" />
   <source>{both} lap by less than is required.</source>
   <translation>{both} überlappen sich weniger als gefordert.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/level_lap.py" />
   <source>{both} lap on the level and nothing seals the lap.</source>
   <translation>{both} überlappen sich in der Waagerechten, und nichts dichtet die Überlappung ab.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/joints.py" />
   <source>{both} meet</source>
   <translation>{both} stoßen aneinander</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/unsealed_joint.py" />
   <source>{both} meet and nothing seals them: air gets through.</source>
   <translation>{both} treffen sich, und nichts dichtet sie ab: Luft geht hindurch.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} attached page</source>
   <translation>{count} angehängte Seite</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} attached pages</source>
   <translation>{count} angehängte Seiten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <source>{count} decided</source>
   <translation>{count} entschieden</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/pdf/report.py" />
   <source>{count} drawings</source>
   <translation>{count} Zeichnungen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} embedded object</source>
   <translation>{count} eingebettetes Objekt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} embedded objects</source>
   <translation>{count} eingebettete Objekte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} endless construction line</source>
   <translation>{count} endlose Konstruktionslinie</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} endless construction lines</source>
   <translation>{count} endlose Konstruktionslinien</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>{count} entities</source>
   <translation>{count} Elemente</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>{count} entity</source>
   <translation>{count} Element</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>{count} layers: {amount}.</source>
   <translation>{count} Layer: {amount}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>{count} line</source>
   <translation>{count} Linie</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>{count} lines</source>
   <translation>{count} Linien</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} masking area</source>
   <translation>{count} Abdeckfläche</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} masking areas</source>
   <translation>{count} Abdeckflächen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/findings_table.py" />
   <source>{count} more on the next sheet</source>
   <translation>{count} weitere auf dem nächsten Blatt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} object of an add-on program</source>
   <translation>{count} Objekt eines Zusatzprogramms</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} objects of an add-on program</source>
   <translation>{count} Objekte eines Zusatzprogramms</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/chains.py" />
   <source>{count} outlines of {product} are of no even thickness and are read as areas: {names}.</source>
   <translation>{count} Umrisse aus „{product}“ sind nicht gleichmäßig dick und werden als Flächen gelesen: {names}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/chains.py" />
   <source>{count} outlines of {product} do not close and are read as lines: {names}.</source>
   <translation>{count} Umrisse aus „{product}“ schließen sich nicht und werden als Linien gelesen: {names}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/said/photograph.py" />
   <source>{count} photographs are not in the project: take them in again.</source>
   <translation>{count} Fotos sind nicht im Projekt: noch einmal aufnehmen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} picture</source>
   <translation>{count} Bild</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} pictures</source>
   <translation>{count} Bilder</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>{count} piece drawn here</source>
   <translation>{count} Stück hier gezeichnet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/products.py" />
   <source>{count} pieces are made of “{name}”: give them another product before you remove this one.</source>
   <translation>{count} Stücke sind aus „{name}“: ihnen ein anderes Produkt geben, bevor dieses entfernt wird.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>{count} pieces drawn here</source>
   <translation>{count} Stücke hier gezeichnet</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/sections.py" />
   <source>{count} pieces lie outside every frame and are left out (on {layers}).</source>
   <translation>{count} Stücke liegen außerhalb aller Rahmen und sind ausgelassen (auf {layers}).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/commands/layers.py" />
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>{count} pieces stay what they are, because they were given their product by hand.</source>
   <translation>{count} Stücke bleiben, was sie sind, weil sie ihr Produkt von Hand bekommen haben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>{count} place</source>
   <translation>{count} Stelle</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>{count} places</source>
   <translation>{count} Stellen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} point</source>
   <translation>{count} Punkt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} points</source>
   <translation>{count} Punkte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} shape symbol</source>
   <translation>{count} Formsymbol</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} shape symbols</source>
   <translation>{count} Formsymbole</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>{count} sheet</source>
   <translation>{count} Blatt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/cover.py" />
   <source>{count} sheets</source>
   <translation>{count} Blätter</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} solid</source>
   <translation>{count} Volumenkörper</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} solid region</source>
   <translation>{count} Volumenregion</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} solid regions</source>
   <translation>{count} Volumenregionen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} solids</source>
   <translation>{count} Volumenkörper</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} surface</source>
   <translation>{count} Oberfläche</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} surface mesh</source>
   <translation>{count} Flächennetz</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} surface meshes</source>
   <translation>{count} Flächennetze</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} surfaces</source>
   <translation>{count} Oberflächen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} table</source>
   <translation>{count} Tabelle</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} tables</source>
   <translation>{count} Tabellen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>{count} text</source>
   <translation>{count} Text</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>{count} texts</source>
   <translation>{count} Texte</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} tolerance frame</source>
   <translation>{count} Toleranzrahmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files" />
   <source>{count} tolerance frames</source>
   <translation>{count} Toleranzrahmen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>{count} {kind} entities</source>
   <translation>{count} Elemente „{kind}“</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/tally.py" />
   <source>{count} {kind} entity</source>
   <translation>{count} Element „{kind}“</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/units/judging.py" />
   <source>{file} does not say in which units it is drawn ({shown}, but {across}): say so with --units mm, cm, m, in or ft.</source>
   <translation>{file} sagt nicht, in welchen Einheiten sie gezeichnet ist ({shown}, aber {across}): bitte angeben mit --units mm, cm, m, in oder ft.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/units/judging.py" />
   <source>{file} does not say in which units it is drawn: say so with --units mm, cm, m, in or ft.</source>
   <translation>{file} sagt nicht, in welchen Einheiten sie gezeichnet ist: bitte angeben mit --units mm, cm, m, in oder ft.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/image.py" />
   <source>{file} had {bytes}; it is kept with {kept_bytes}.</source>
   <translation>{file} hatte {bytes}; aufgehoben wird sie mit {kept_bytes}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/image.py" />
   <source>{file} had {dots} dots and {bytes}; it is kept with {kept_dots} dots and {kept_bytes}.</source>
   <translation>{file} hatte {dots} Punkte und {bytes}; aufgehoben werden {kept_dots} Punkte und {kept_bytes}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/reading.py" />
   <source>{file} has {bytes}, too much for one picture; cut out the page or part that is needed.</source>
   <translation>{file} hat {bytes}, zu viel für ein Bild; die nötige Seite oder den nötigen Teil ausschneiden.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/pdf.py" />
   <source>{file} has {bytes}; only this page is kept, with {kept_bytes}.</source>
   <translation>{file} hat {bytes}; nur diese Seite wird aufgehoben, mit {kept_bytes}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/reading.py" />
   <source>{file} holds nothing that is drawn: choose another layout or file.</source>
   <translation>{file} enthält nichts Gezeichnetes: ein anderes Layout oder eine andere Datei wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/reading.py" />
   <source>{file} is cut short in the middle of what it draws, so pieces are missing and nothing can be judged: get the whole file again.</source>
   <translation>{file} ist mitten im Gezeichneten abgeschnitten, also fehlen Stücke und nichts lässt sich beurteilen: die ganze Datei noch einmal holen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/dxf/marks.py" />
   <source>{file} is not the drawing that was checked: none of its lines stand where they stood. Name the right one.</source>
   <translation>{file} ist nicht die Zeichnung, die geprüft wurde: Keine ihrer Linien steht, wo sie stand. Die richtige nennen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/lock.py" />
   <source>{file} is open {who}: ask them to close it, or open it to read only; whoever saves last overwrites the other's work.</source>
   <translation>{file} ist {who} offen: um Schließen bitten oder nur zum Lesen öffnen; wer zuletzt speichert, überschreibt die Arbeit des anderen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/reports/dxf/marks.py" />
   <source>{file} is the drawing itself: write the marked one under another name.</source>
   <translation>{file} ist die Zeichnung selbst: die markierte unter einem anderen Namen schreiben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/units/judging.py" />
   <source>{file} says {header}, but {why}: say which it is with --units mm, cm, m, in or ft.</source>
   <translation>{file} sagt {header}, aber {why}: bitte angeben, was gilt, mit --units mm, cm, m, in oder ft.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/units/judging.py" />
   <source>{file} says {header}, but {why}: say which with --units {other} or --units {units}.</source>
   <translation>{file} sagt {header}, aber {why}: bitte angeben, was gilt, mit --units {other} oder --units {units}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/lock.py" />
   <source>{file} was not closed properly by {held}: what was not saved then may be in the autosave.</source>
   <translation>{file} wurde von {held} nicht ordentlich geschlossen: Was damals nicht gespeichert war, ist vielleicht in der automatischen Sicherung.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/file.py" />
   <source>{file} was saved by a newer version (format {version}); this program reads up to {newest}: update it.</source>
   <translation>{file} wurde von einer neueren Version gespeichert (Format {version}); dieses Programm liest bis {newest}: bitte aktualisieren.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/lock.py" />
   <source>{file} was taken over; it is still open by {held}: tell them before you save.</source>
   <translation>{file} wurde übernommen; sie ist noch bei {held} offen: Bescheid geben, bevor Sie speichern.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/file.py" />
   <source>{file}, line {lineno}, column {colno}: this is not sound JSON ({msg}); mend it there, or open a copy.</source>
   <translation>{file}, Zeile {lineno}, Spalte {colno}: Das ist kein einwandfreies JSON ({msg}); dort berichtigen oder eine Kopie öffnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/file.py" />
   <source>{file}, line {lineno}: the file was cut short there; open the autosave or a copy.</source>
   <translation>{file}, Zeile {lineno}: Die Datei wurde dort abgeschnitten; die automatische Sicherung oder eine Kopie öffnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/toml_lines.py" />
   <source>{file}, line {line}: the file is not UTF-8 text; save it as UTF-8.</source>
   <translation>{file}, Zeile {line}: Die Datei ist kein UTF-8-Text; als UTF-8 speichern.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/file.py" />
   <source>{file}, line {line}: this is not UTF-8 text; open the project file itself, or a copy of it.</source>
   <translation>{file}, Zeile {line}: Das ist kein UTF-8-Text; die Projektdatei selbst öffnen oder eine Kopie davon.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>{file}, line {line}: {text}</source>
   <translation>{file}, Zeile {line}: {text}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/reading.py" />
   <source>{file}, page {page}</source>
   <translation>{file}, Seite {page}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/file.py" />
   <source>{file}: "format" must be a whole number from 1 to {newest}.</source>
   <translation>{file}: "format" muss eine ganze Zahl von 1 bis {newest} sein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/file.py" />
   <source>{file}: a number in it is too long; open a copy.</source>
   <translation>{file}: Eine Zahl darin ist zu lang; eine Kopie öffnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/marks.py" />
   <source>{file}: no inside mark in section {section}: give --inside X,Y or write the word INSIDE in the room.</source>
   <translation>{file}: keine Innenmarke im Schnitt {section}: --inside X,Y angeben oder das Wort INNEN in den Raum schreiben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/marks.py" />
   <source>{file}: no outside mark in section {section}: give --outside X,Y or write the word OUTSIDE in the open.</source>
   <translation>{file}: keine Außenmarke im Schnitt {section}: --outside X,Y angeben oder das Wort AUSSEN ins Freie schreiben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/reading.py" />
   <source>{file}: nothing says which lines are which product (it has {layers}): say so with --layers MAP.toml.</source>
   <translation>{file}: Nichts sagt, welche Linien welches Produkt sind (es gibt {layers}): bitte angeben mit --layers MAP.toml.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/pdfium.py" />
   <source>{file}: page {page} is damaged and cannot be shown; export it again.</source>
   <translation>{file}: Seite {page} ist beschädigt und lässt sich nicht zeigen; noch einmal ausgeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/pdfium.py" />
   <source>{file}: page {page} is {wide:.3g} m by {high:.3g} m, which is no size of a drawing; export it on paper of a usual size.</source>
   <translation>{file}: Seite {page} ist {wide:.3g} m mal {high:.3g} m groß, und so groß ist keine Zeichnung; auf üblichem Papier ausgeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/photographs.py" />
   <source>{file}: photographs of this kind (HEIC) cannot be read; save it as JPEG (telephones ask for it as the most compatible kind).</source>
   <translation>{file}: Fotos dieser Art (HEIC) können nicht gelesen werden; als JPEG speichern (auf Telefonen heißt das „maximal kompatibel“).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/file.py" />
   <source>{file}: the brackets are nested too deeply for a project.</source>
   <translation>{file}: Die Klammern sind für ein Projekt zu tief verschachtelt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/toml_lines.py" />
   <source>{file}: the brackets are nested too deeply.</source>
   <translation>{file}: Die Klammern sind zu tief verschachtelt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/content.py" />
   <source>{file}: the file cannot be read: {reason}.</source>
   <translation>{file}: Die Datei lässt sich nicht lesen: {reason}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/atomic.py" />
   <source>{file}: the file cannot be written in {folder} ({reason}); the old one is as it was: make room or save elsewhere.</source>
   <translation>{file}: Die Datei lässt sich in {folder} nicht schreiben ({reason}); die alte ist, wie sie war: Platz schaffen oder anderswo speichern.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/pdfium.py" />
   <source>{file}: the file is empty; export or scan the page again.</source>
   <translation>{file}: Die Datei ist leer; die Seite noch einmal ausgeben oder scannen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/file.py" />
   <source>{file}: the file is empty; open the autosave or a copy.</source>
   <translation>{file}: Die Datei ist leer; die automatische Sicherung oder eine Kopie öffnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/reading.py" />
   <source>{file}: the file is empty; scan or export it again.</source>
   <translation>{file}: Die Datei ist leer; noch einmal scannen oder ausgeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/image.py" />
   <source>{file}: the file is empty; scan or export the picture again.</source>
   <translation>{file}: Die Datei ist leer; das Bild noch einmal scannen oder ausgeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/pdf.py" />
   <source>{file}: the page holds more than {most} lines; it is laid under the drawing as a picture, and there is nothing on it to snap to.</source>
   <translation>{file}: Die Seite enthält mehr als {most} Linien; sie wird als Bild unter die Zeichnung gelegt, und daran lässt sich nichts fangen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/photographs.py" />
   <source>{file}: the photograph has too many dots to be read; make it smaller.</source>
   <translation>{file}: Das Foto hat zu viele Bildpunkte, um gelesen zu werden; verkleinern.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/photographs.py" />
   <source>{file}: the photograph was cut short or is damaged; copy it again.</source>
   <translation>{file}: Das Foto wurde abgeschnitten oder ist beschädigt; noch einmal kopieren.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/image.py" />
   <source>{file}: the picture has too many dots to be read; scan it at 300 to the inch, or cut out the part that is needed.</source>
   <translation>{file}: Das Bild hat zu viele Punkte, um gelesen zu werden; mit 300 Punkten je Zoll scannen oder den nötigen Teil ausschneiden.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/image.py" />
   <source>{file}: the picture was cut short or is damaged; scan or export it again.</source>
   <translation>{file}: Das Bild wurde abgeschnitten oder ist beschädigt; noch einmal scannen oder ausgeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/file.py" />
   <source>{file}: the project is not saved, because a number in it is not finite: undo the last change.</source>
   <translation>{file}: Das Projekt ist nicht gespeichert, weil eine Zahl darin nicht endlich ist: die letzte Änderung rückgängig machen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/image.py" />
   <location filename="../../enclosure_app/files/underlay/pdfium.py" />
   <source>{file}: there is no page {page}; it has {pages}, choose one of them.</source>
   <translation>{file}: Es gibt keine Seite {page}; die Datei hat {pages}, eine davon wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/content.py" />
   <source>{file}: there is no such file in {folder}.</source>
   <translation>{file}: In {folder} gibt es keine solche Datei.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/pdfium.py" />
   <source>{file}: this PDF is protected by a password; save a copy without one and open that.</source>
   <translation>{file}: Dieses PDF ist mit einem Kennwort geschützt; eine Kopie ohne Kennwort speichern und diese öffnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/file.py" />
   <source>{file}: this is JSON but no project (it has no "format"); open a file whose name ends in {ending}.</source>
   <translation>{file}: Das ist JSON, aber kein Projekt (es hat kein "format"); eine Datei öffnen, deren Name auf {ending} endet.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/photographs.py" />
   <source>{file}: this is no photograph that can be read; save it as JPEG (telephones ask for it as the most compatible kind).</source>
   <translation>{file}: Das ist kein lesbares Foto; als JPEG speichern (Telefone nennen das die kompatibelste Art).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/image.py" />
   <source>{file}: this is no picture that can be read, or it is damaged; save it as PNG or JPEG.</source>
   <translation>{file}: Das ist kein lesbares Bild, oder es ist beschädigt; als PNG oder JPEG speichern.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/pdfium.py" />
   <source>{file}: this is no sound PDF, it was cut short or has no pages; export or download it again.</source>
   <translation>{file}: Das ist kein einwandfreies PDF, es wurde abgeschnitten oder hat keine Seiten; noch einmal ausgeben oder laden.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/toml_lines.py" />
   <source>{file}: this is not a file; name a file in TOML.</source>
   <translation>{file}: Das ist keine Datei; eine Datei in TOML nennen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/file.py" />
   <source>{file}: this is not a file; name a project file.</source>
   <translation>{file}: Das ist keine Datei; eine Projektdatei nennen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/toml_lines.py" />
   <source>{file}: this is not sound TOML: {error}.</source>
   <translation>{file}: Das ist kein einwandfreies TOML: {error}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/pdf.py" />
   <source>{file}: this page is heavy; it is kept as a picture of {dots} dots and {bytes}. Its lines are kept as lines.</source>
   <translation>{file}: Diese Seite ist schwer; sie wird als Bild mit {dots} Punkten und {bytes} aufgehoben. Ihre Linien bleiben Linien.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/file.py" />
   <source>{file}: {left} more places are wrong; mend these first.</source>
   <translation>{file}: {left} weitere Stellen sind falsch; zuerst diese berichtigen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/products.py" />
   <source>{file}; other figures: {source}</source>
   <translation>{file}; übrige Werte: {source}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/network/network.py" />
   <location filename="../../enclosure_app/planning/site_list/places.py" />
   <source>{first} and {second}</source>
   <translation>{first} und {second}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <source>{layers} could not be judged</source>
   <translation>{layers} ließ sich nicht beurteilen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <location filename="../../enclosure_app/window/walk/summary.py" />
   <source>{names} and {count} more</source>
   <translation>{names} und {count} weitere</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/apart/reading.py" />
   <source>{names}: reading it was ended from outside, or the computer has too little memory for it: close other programs and open it again, or export less of the drawing.</source>
   <translation>{names}: Das Lesen wurde von außen beendet, oder der Rechner hat zu wenig Speicher dafür: andere Programme schließen und noch einmal öffnen, oder weniger von der Zeichnung ausgeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>{name} cannot be opened ({reason}): check its name.</source>
   <translation>{name} lässt sich nicht öffnen ({reason}): den Namen prüfen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>{name} is a DWG drawing: save it as DXF and open that.</source>
   <translation>{name} ist eine DWG-Zeichnung: als DXF speichern und diese Datei öffnen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>{name} is a folder: name a DXF file in it.</source>
   <translation>{name} ist ein Ordner: eine DXF-Datei darin nennen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>{name} is damaged so badly that nothing in it can be read: export the drawing as DXF again.</source>
   <translation>{name} ist so schwer beschädigt, dass sich nichts lesen lässt: die Zeichnung noch einmal als DXF ausgeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>{name} is empty: export the drawing as DXF again.</source>
   <translation>{name} ist leer: die Zeichnung noch einmal als DXF ausgeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>{name} is not a DXF drawing: export the drawing as DXF, ASCII or binary.</source>
   <translation>{name} ist keine DXF-Zeichnung: die Zeichnung als DXF ausgeben, ASCII oder binär.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>{name} is not a regular file: name a DXF file.</source>
   <translation>{name} ist keine gewöhnliche Datei: eine DXF-Datei nennen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>{name} is {what}, not a DXF drawing: export the drawing as DXF.</source>
   <translation>{name} ist {what}, keine DXF-Zeichnung: die Zeichnung als DXF ausgeben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/document.py" />
   <source>{name} may not be read: ask for the right to read it, or take a copy of your own.</source>
   <translation>{name} darf nicht gelesen werden: um das Leserecht bitten oder eine eigene Kopie nehmen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/autosave.py" />
   <source>{name}: the autosave cannot be read ({reason}); look at the permissions of {folder}.</source>
   <translation>{name}: Die automatische Sicherung lässt sich nicht lesen ({reason}); die Rechte von {folder} nachsehen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/autosave.py" />
   <source>{name}: the autosave cannot be removed ({reason}); remove it by hand.</source>
   <translation>{name}: Die automatische Sicherung lässt sich nicht entfernen ({reason}); von Hand entfernen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/apart/reading.py" />
   <source>{name}: writing it was ended from outside, or the computer has too little memory for it: close other programs and write it again.</source>
   <translation>{name}: Das Schreiben wurde von außen beendet, oder der Rechner hat zu wenig Speicher dafür: andere Programme schließen und noch einmal schreiben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/replies.py" />
   <source>{others} decided otherwise.</source>
   <translation>{others} haben anders entschieden.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/joints.py" />
   <source>{over} over {under}</source>
   <translation>{over} über {under}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts/__init__.py" />
   <source>{part} has no size {size!r}: it has {sizes}.</source>
   <translation>„{part}“ hat kein Maß {size!r}: es hat {sizes}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/comments.py" />
   <source>{path} cannot be read ({why}); choose another file.</source>
   <translation>{path} lässt sich nicht lesen ({why}); eine andere Datei wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/replies.py" />
   <source>{path} holds no notes of this program: take the PDF that it wrote, saved with its notes (printing a PDF anew leaves them out).</source>
   <translation>{path} enthält keine Notizen dieses Programms: das PDF nehmen, das es geschrieben hat, mit seinen Notizen gespeichert (ein neu gedrucktes PDF lässt sie weg).</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/comments.py" />
   <source>{path} is locked with a password: save it without one first.</source>
   <translation>{path} ist mit einem Kennwort gesperrt: zuerst ohne Kennwort speichern.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/comments.py" />
   <source>{path} is not a PDF that can be read: save it anew and try again.</source>
   <translation>{path} ist kein lesbares PDF: neu speichern und noch einmal versuchen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/passing.py" />
   <source>{pipe} through {sheet}</source>
   <translation>{pipe} durch {sheet}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/framing/sections.py" />
   <source>{section} is read as a plan: nothing runs down in it.</source>
   <translation>{section} wird als Grundriss gelesen: Nichts läuft darin hinab.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/upturn_short.py" />
   <source>{sheet} does not turn up far enough where the roof meets the wall.</source>
   <translation>{sheet} reicht nicht hoch genug hinauf, wo das Dach an die Wand stößt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/edge_cover_short.py" />
   <source>{sheet} ends too near the eave, measured along the slope.</source>
   <translation>{sheet} endet, in der Schräge gemessen, zu nah an der Traufe.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/title_block.py" />
   <source>{sheet} of {sheets}</source>
   <translation>{sheet} von {sheets}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/words.py" />
   <source>{shown} and {count} more</source>
   <translation>{shown} und {count} weitere</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/sheet/signatures.py" />
   <source>{signed} (changed since)</source>
   <translation>{signed} (seitdem geändert)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/image.py" />
   <source>{size:.0f} kB</source>
   <translation>{size:.0f} kB</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/underlay/image.py" />
   <source>{size:.1f} MB</source>
   <translation>{size:.1f} MB</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts/parameters.py" />
   <source>{size} is {value:g} in 1: choose between {low:g} and {high:g} in 1.</source>
   <translation>„{size}“ ist {value:g} zu 1: zwischen {low:g} und {high:g} zu 1 wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/parts/parameters.py" />
   <source>{size} is {value:g} mm: choose between {low:g} and {high:g} mm.</source>
   <translation>„{size}“ ist {value:g} mm: zwischen {low:g} und {high:g} mm wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/limits.py" />
   <location filename="../../enclosure_app/window/products/product_words.py" />
   <source>{source} (unconfirmed)</source>
   <translation>{source} (unbestätigt)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/drawing/verdict_words.py" />
   <source>{state} by {who}</source>
   <translation>{state} von {who}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/joints.py" />
   <source>{tape} on {others}</source>
   <translation>{tape} auf {others}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/open_penetration.py" />
   <source>{through} goes through {sheet} and nothing seals the hole.</source>
   <translation>{through} geht durch {sheet}, und nichts dichtet das Loch ab.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/maps/tables.py" />
   <source>{title} must be a table of its own.</source>
   <translation>{title} muss eine eigene Tabelle sein.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/units_asking.py" />
   <source>{units}: {size} high</source>
   <translation>{units}: {size} hoch</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/units_asking.py" />
   <source>{units}: {size} wide</source>
   <translation>{units}: {size} breit</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/rules/reverse_lap.py" />
   <source>{upper} laps under {lower}: water running down goes in behind {lower}.</source>
   <translation>{upper} greift unter {lower}: Herablaufendes Wasser gelangt dahinter.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/units_asking.py" />
   <source>{what_the_file_says}. It is drawn in:</source>
   <translation>{what_the_file_says}. Gezeichnet ist sie in:</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/notes.py" />
   <source>{what} ({count} time)</source>
   <translation>{what} ({count}-mal)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/dxf/notes.py" />
   <source>{what} ({count} times)</source>
   <translation>{what} ({count}-mal)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/typed/typed_size.py" />
   <source>{what} is {value}: choose between {low} and {high}.</source>
   <translation>{what} ist {value}: zwischen {low} und {high} wählen.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/products/product_figures.py" />
   <source>{what}: “{text}” is no length; type it as in {example}.</source>
   <translation>{what}: „{text}“ ist keine Länge; eingeben wie in {example}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/replies/answers.py" />
   <source>{who} decided since: {verdict}.</source>
   <translation>{who} hat seither entschieden: {verdict}.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/model/edits/site.py" />
   <source>{who} has not signed "{section}".</source>
   <translation>{who} hat „{section}“ nicht unterschrieben.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/files/project/lock.py" />
   <source>{who} on {host} since {since} UTC</source>
   <translation>{who} an {host} seit {since} UTC</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/planning/site_list/passing.py" />
   <source>{window}: its corners</source>
   <translation>{window}: die Ecken</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/words/labels.py" />
   <source>{} gaps, up to {}</source>
   <translation>{} Lücken, bis {}</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>“{file}” is saved, with {count} row</source>
   <translation>„{file}“ ist gespeichert, mit {count} Zeile</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>“{file}” is saved, with {count} rows</source>
   <translation>„{file}“ ist gespeichert, mit {count} Zeilen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>“{file}” is used.</source>
   <translation>„{file}“ ist angewandt.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_maps.py" />
   <source>“{file}” was the last layer map. It says what {known} of the {every} layers of this drawing are.</source>
   <translation>„{file}“ war die letzte Layerzuordnung. Sie sagt, was {known} der {every} Layer dieser Zeichnung sind.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/typed/typed_length.py" />
   <source>“{text}” has no angle after “at”: type degrees, as in 1200 at 45.</source>
   <translation>„{text}“ hat keinen Winkel nach „at“: Grad eingeben, wie in 1200 at 45.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/typed/typed_length.py" />
   <source>“{text}” is no angle: type degrees, as in 22.5.</source>
   <translation>„{text}“ ist kein Winkel: Grad eingeben, etwa 22.5.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/typed/typed_length.py" />
   <source>“{text}” is no length: type it as in {example} or {example} at 45.</source>
   <translation>„{text}“ ist keine Länge: eingeben wie in {example} oder {example} at 45.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/typed/typed_length.py" />
   <source>“{text}” is no pitch: type it as in 6 in 12, or 26.6°.</source>
   <translation>„{text}“ ist keine Neigung: eingeben wie in 6 in 12 oder 26.6°.</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/lines/layer_words.py" />
   <source>“{words}” in its name suggests {guess}: {sure}.</source>
   <translation>„{words}“ in seinem Namen deutet auf {guess}: {sure}.</translation>
  </message>
 </context>
 <context>
  <name>WordsColumn</name>
  <message>
   <location filename="../../enclosure_app/window/walk/words_column.py" />
   <source>Caution</source>
   <translation>Vorsicht</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/words_column.py" />
   <source>What was said until now</source>
   <translation>Was bisher gesagt wurde</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/words_column.py" />
   <source>Your name is asked for</source>
   <translation>Nach Ihrem Namen wird gefragt</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/walk/words_column.py" />
   <source>Your name, to be put beside what you say</source>
   <translation>Ihr Name, der neben dem steht, was Sie sagen</translation>
  </message>
 </context>
 <context>
  <name>WorkingBar</name>
  <message>
   <location filename="../../enclosure_app/window/filing/working_bar.py" />
   <source>Cancel</source>
   <translation>Abbrechen</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/working_bar.py" />
   <source>Stop</source>
   <translation>Anhalten</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/working_bar.py" />
   <source>Stop checking; what was found before stays (Esc)</source>
   <translation>Prüfen anhalten; was vorher gefunden wurde, bleibt (Esc)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/working_bar.py" />
   <source>Stop this and leave everything as it was (Esc)</source>
   <translation>Abbrechen und alles lassen, wie es war (Esc)</translation>
  </message>
  <message>
   <location filename="../../enclosure_app/window/filing/working_bar.py" />
   <source>What takes long</source>
   <translation>Was lange dauert</translation>
  </message>
 </context>
</TS>
