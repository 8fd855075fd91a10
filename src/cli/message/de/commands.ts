import type { CliWords } from '../cliWords.js'

const FINDINGS_EXIT_CODES =
  '0 kein Befund der Stufe oder darüber, 1 Befunde, 2 falscher Aufruf oder eine Datei ist nicht lesbar.'
const ANSWER_EXIT_CODES = '0 ja, 1 nein oder nicht bekannt, 2 falscher Aufruf.'
const TODAY = '(Standard: die Uhr dieses Rechners)'

/** The help of each command in German. */
export const commands: CliWords['commands'] = {
  new: {
    summary: 'ein leeres Datenblatt, Betriebsbuch, einen Werkzeugkasten oder Bestand zum Ausfüllen schreiben',
    help: `Schreibt ein Dokument zum Ausfüllen, als YAML mit einem Beispiel für jeden Wert. Auch leer hat es keine Fehler und lässt sich planen:
fehlende Werte sind "not stated". Das Datenblatt eines Betriebsbuchs mit --sheet nennen. Mit --from wird ein volles Datenblatt in der
Kurzschreibweise neu geschrieben. Ein Datenblatt kann eine Tabelle sein, eine Zeile je Getriebe und Öffnung: --format csv oder
--out sheet.csv schreibt sie, --from sheet.csv liest sie.`,
    options: {
      sheet: 'das Datenblatt des Betriebsbuchs',
      out: 'Zieldatei, .yaml, .json oder .csv; eine vorhandene Datei wird nicht ersetzt (Standard: Standardausgabe)',
    },
    exitCodes: '0 geschrieben, 1 das Datenblatt hat Fehler, 2 falscher Aufruf, oder die Datei gibt es schon.',
  },
  check: {
    summary: 'Fehler in Dokumenten melden',
    help: `Liest Dokumente und nennt jeden Fehler darin. Unterordner werden auch gelesen, jeder als eigener Satz; versteckte Ordner, Verknüpfungen
und node_modules nicht. Die letzten Zeilen nennen die Zahl der gelesenen und übersprungenen Dokumente und Ordner (mit --format json
oder sarif auf der Fehlerausgabe). Ein Fehler in drei oder mehr Dateien wird einmal genannt, mit seinen Dateien.
--fix berichtigt die Schreibweise von Schlüsseln, Namen und Werten und die Reihenfolge zweier Werte, wo nur eine Änderung wahrscheinlich
ist und kein neuer Befund entsteht. Betriebsbücher, Nachweise und Arbeitsabläufe werden nie geändert. Jede Änderung mit der Anleitung
vergleichen. --write-baseline nimmt alle heutigen Befunde hin; --baseline meldet danach nur neue.`,
    options: { today: `meldet Zählerstände und Nachweise nach diesem Tag ${TODAY}` },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  due: {
    summary: 'die fälligen Wartungen mit Gründen auflisten',
    help: `Nennt jede Wartung jeder Maschine mit Urteil und Gründen. Mit --every ist kein Dokument nötig: aus dem Intervall der Anleitung und den
Zählerständen bei der letzten Wartung und jetzt folgt, ob eine Wartung fällig ist.

Für einen Fuhrpark: JSON Lines aus einer Datei oder von der Standardeingabe (-), ein Betriebsbuch je Zeile. Gibt eine Zeile JSON je Zeile
aus, bei gleichbleibendem Speicher. Eine nicht lesbare Zeile gibt Befunde, und es geht weiter; der Rückgabewert ist dann 1. Mit --brief
oder --format csv eine kurze Zeile je Wartung, mit --format summary nur die Zahl der Maschinen je Tag und Ort.
Ohne Datenblatt ist jede Zeile ein flacher Satz, eine Wartung mit ihren Grenzen:
  {"id":"m-1","lastDate":"2023-04-06","lastHours":310,"hours":402,"hoursDate":"2023-10-01","everyHours":100,"everyMonths":6}
Ein falsch geschriebenes Feld gibt einen Befund und das Urteil "cannot tell"; andere Spalten werden übergangen und am Ende genannt.`,
    exitCodes: `0 jedes Dokument und jede Zeile gelesen, 1 Befunde darin, 2 falscher Aufruf oder eine Datei ist nicht lesbar;
mit --exit-code 3 oder 4 statt 0. Mit --every: 0 nicht fällig, 1 fällig oder nicht bekannt; mit --exit-code 3 oder 4 statt 1.`,
  },
  plan: {
    summary:
      'eine Wartung planen: was fällig ist, Öl, zu kaufende Dichtungen, Einstellwerte, was fehlt; mit --full alle Werte und Schritte',
    help: `Plant die Wartung einer Maschine und gibt die Antwort: was fällig ist, Öl, Einstellwerte, was fehlt. Mit --full der ganze Plan. Braucht
ein Betriebsbuch mit seinem Datenblatt; Werkzeugkasten und Bestand sind freiwillig.`,
    exitCodes: FINDINGS_EXIT_CODES,
  },
  card: {
    summary: 'den Plan als Karte nach --out schreiben: HTML, Markdown, Text und eine kurze Karte',
    help: `Schreibt die Wartung als Karte: <machine>.html, <machine>.md, <machine>.txt und <machine>-short.html.
--paper wall schreibt eine Karte ohne Datum für die Wand, <sheet>-<variant>-wall.html und .md, für jede Variante jedes Datenblatts unter
den Dateien, oder mit --machine für die Maschine dieses Betriebsbuchs. Ein Werkzeugkasten gibt die Einstellwerte, ein Bestand die
Viskosität seiner Öle. Die anderen Blätter haben eine Seite, als HTML, Markdown und Text: das Schild der nächsten Wartung (62 x 29 mm,
hoch und quer) und der Schmierplan jeder Maschine, der leere Nachweis ihrer Wartung, die Sammelliste aller Maschinen des Tages, und die
Unterschiede zwischen den Varianten jedes Datenblatts.`,
    exitCodes: FINDINGS_EXIT_CODES,
  },
  cues: {
    summary: 'den Drehplan einer Wartung ausgeben, oder mit Untertiteln schreiben',
    help: `Gibt ein Drehbuch aus, Szene für Szene: was zu zeigen, zu sagen und einzublenden ist. Dann folgen die Einstellungen in der Reihenfolge
des Drehs. --out schreibt <machine>-cues.html, .md und .txt, und Untertitel als WebVTT: eine Datei mit --starts, sonst eine je Szene.`,
    options: { out: 'Ordner für Drehplan und Untertitel (wird angelegt)' },
  },
  kits: {
    summary:
      'Öl, Dichtungen und Werkzeug je Maschine mit fälliger Wartung auflisten, und eine Bestellliste für alle',
    help: `Nennt Öl, Dichtungen und Werkzeug für jede Maschine mit einer fälligen Wartung, und die Bestellliste: Öl in den Gebinden des Bestands
(Anzahl 0 nennt eine käufliche Größe), mit dem Rest; keine Reserve. Bei mehreren Tagen oder Fahrzeugen beides auch nach Tag (an dem die
erste Wartung fällig ist) und Fahrzeug (Werkzeugkasten, sonst Bestand oder Ordner). Braucht Betriebsbücher und ihre Datenblätter.`,
  },
  procedure: {
    summary:
      'die Schritte einer Wartung schreiben, zum Bearbeiten und für plan, card und cues mit --procedure',
    help: `Schreibt die gebauten Schritte als YAML, mit jeder Zeile der Karte als Kommentar darüber. Braucht ein Betriebsbuch mit Datenblatt, oder
ein Datenblatt und --service. --from bringt einen älteren Arbeitsablauf auf den Stand des Datenblatts: Reihenfolge, Kennungen und
Bemerkungen bleiben, nur Fehler werden berichtigt. Nennt entfernte, ergänzte und verschobene Schritte, Bemerkungen ohne Schritt und,
wenn die ältere Ausgabe des Datenblatts unter den Dateien ist, geänderte Werte.`,
    options: {
      out: 'Zieldatei, .yaml oder .json; eine vorhandene Datei wird nicht ersetzt (Standard: Standardausgabe)',
      from: 'älterer Arbeitsablauf, der auf den Stand des Datenblatts kommt',
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  repair: {
    summary: 'einen Arbeitsablauf berichtigen, gefährliche Fehler zuerst',
    help: `Berichtigt einen Arbeitsablauf mit den wenigsten Änderungen, oder baut ihn bei zu vielen Fehlern in der üblichen Reihenfolge neu auf;
Bemerkungen und weitere Schritte bleiben. Nennt gefährliche Fehler zuerst, dann die anderen, jede Änderung mit den Schritten daneben,
und die übrigen Fehler. Mit --out wird der berichtigte Arbeitsablauf auch geschrieben.`,
    options: { out: 'Datei für den berichtigten Arbeitsablauf' },
  },
  compare: {
    summary: 'zwei Datenblätter, zwei Arbeitsabläufe oder die Varianten eines Datenblatts vergleichen',
    help: `Vergleicht zwei Datenblätter Wert für Wert, zwei Arbeitsabläufe nach ihrer Wirkung, oder die Varianten eines Datenblatts.
Der Rückgabewert ist 1, wenn sie abweichen.`,
  },
  record: {
    summary: 'einen Nachweis an sein Betriebsbuch anfügen',
    help: `Fügt einen Nachweis der ausgeführten Arbeit, auch mit Fehlern, an das Betriebsbuch seiner Maschine an und schreibt es nach --out; ohne
--out wird nur geprüft. Meldet Fehler, Arbeit, die nicht als ausgeführt zählt, und offene Mängel: die Maschine nicht benutzen, bis ein
Nachweis mit "corrects" sie schließt. Abgelehnt wird nur ein Nachweis, der nicht lesbar ist oder zu einer anderen Maschine gehört.
--from-plan schreibt einen Nachweis der geplanten Wartung: jedes ? ersetzen und Einträge berichtigen, die von der Arbeit abweichen.
--top-up fügt zwischen Wartungen nachgefülltes Öl an und nennt, wie viel Öl das Getriebe verliert.`,
    options: {
      out: 'Datei für das Betriebsbuch mit dem neuen Nachweis oder Nachfüllen, oder für den Nachweis eines Plans',
      at: 'mit --top-up: Kennung des Getriebes, zum Beispiel front oder "hub left"',
      service: 'mit --from-plan: auch diese Wartung, fällig oder nicht; wiederholbar',
      ambient: 'mit --from-plan: Umgebungstemperatur, für die Wahl des Öls',
      today: `meldet einen Nachweis nach diesem Tag ${TODAY}`,
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  history: {
    summary:
      'Nachweise und Nachfüllungen einer Maschine ausgeben, mit Berichtigungen, offenen Mängeln und Ölverlust',
    help: `Nennt die offenen Mängel und die Getriebe, die Öl verlieren, dann jeden Nachweis mit seiner Arbeit, Arbeit, die nicht zählt (und warum),
und Berichtigungen, dann das Nachgefüllte. --format csv gibt die Zählerstände als Tabelle, die import liest.`,
    options: { today: `meldet einen Nachweis nach diesem Tag ${TODAY}` },
  },
  slip: {
    summary: 'den Wartungsbeleg für den Eigentümer schreiben: Mängel, Arbeit, Befunde und nächste Wartungen',
    help: `Gibt eine Seite für den Eigentümer aus: offene Mängel, dann ausgeführte Arbeit, Befunde, nicht ausgeführte Arbeit, den nächsten Termin
jeder Wartung, und Ölproben ohne Ergebnis. Berichtigungen sind angewendet. Ein Nachweis unter den Dateien, der noch nicht im
Betriebsbuch ist, zählt mit.`,
    options: {
      out: 'Zieldatei, .txt, .md, .html oder .json (Standard: Standardausgabe)',
      today: `der Tag, an dem die nächsten Wartungen beurteilt werden ${TODAY}`,
    },
    exitCodes:
      '0 ausgegeben, auch mit offenen Mängeln, 1 ein Dokument hat Fehler, 2 falscher Aufruf oder eine Datei ist nicht lesbar.',
  },
  'used-oil': {
    summary: 'das abgegebene Altöl zusammenzählen, nach Empfänger',
    help: `Nennt das Altöl aller Nachweise in Litern: die Summe, nach Empfänger, und Zeile für Zeile. Getrennt gehaltenes Öl, Öl ohne Beleg und
Zeilen ohne Volumen sind gekennzeichnet; bei Zeilen ohne Volumen steht das abgelassene Öl da, zählt aber nicht mit.`,
  },
  import: {
    summary: 'Zählerstände aus Telematik (ISO/TS 15143-3) oder Tabellen (CSV) in Betriebsbücher übernehmen',
    help: `Übernimmt Betriebsstunden und Strecken eines Herstellers (JSON nach ISO/TS 15143-3) in ein Betriebsbuch, einen Stand je Tag. Tage, die
schon einen Stand haben, werden übersprungen; ein fehlender Zähler wird ergänzt. Ohne --out wird nur die Zahl der neuen Stände genannt.
Für einen Fuhrpark kommen mehrere Dateien (Seiten) und Tabellen in viele Betriebsbücher, gefunden nach Kennung, Seriennummer oder PIN,
und in den Ordner --out. Eine Tabelle hat je Zeile eine Maschine und einen Tag, in den Spalten machine, date, hours und distance [km];
die Einheit steht im Namen der Spalte oder in einer zweiten Kopfzeile. Eine Maschine ohne Betriebsbuch bekommt eines, wenn die Tabelle
eine Spalte sheet hat (auch revision, name, variant, serial, commissioned). Eine Spalte entry, in Kurzschreibweise, ergänzt Nachweise.
Mit einer falschen Zelle wird nichts geschrieben.`,
    options: {
      out: 'Datei für das Betriebsbuch mit den Zählerständen; für einen Fuhrpark Ordner für die Betriebsbücher',
      today: `meldet Zählerstände nach diesem Tag ${TODAY}`,
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  convert: {
    summary: 'eine Größe in eine andere Einheit umrechnen, richtig gerundet',
    help: `Liest eine Größe, eine Toleranz oder einen Bereich, wie man sie schreibt, und gibt sie in einer anderen Einheit aus: die richtig
gerundete Zahl, und den Wert zum Drucken neben dem ursprünglichen (Grenzen nach innen gerundet). Mehrdeutiger Text ist ein Fehler,
der die möglichen Bedeutungen nennt.`,
  },
  torque: {
    summary: 'den Einstellwert eines Drehmomentschlüssels und das tatsächliche Drehmoment finden',
    help: 'Nennt den Skalenstrich für diesen Schlüssel, das tatsächliche Drehmoment mit dem Fehler des Schlüssels, und die Gründe.',
    exitCodes: ANSWER_EXIT_CODES,
  },
  fill: {
    summary: 'die Teilstriche eines Messbechers für eine Füllmenge finden',
    help: 'Nennt, wie oft eingegossen wird, den Teilstrich für jedes Mal, und den Fehler.',
    options: {
      tolerance:
        'zulässiger Fehler der Füllmenge in Prozent (Standard: die Toleranz der Größe, wenn sie eine hat)',
    },
    exitCodes: ANSWER_EXIT_CODES,
  },
  pour: {
    summary: 'finden, wie lange Öl durch Trichter und Schlauch läuft',
    help: `Nennt, wie lange die Füllmenge läuft. Die Sorte eines Öls nennt seine Viskosität in der Kälte nicht: beide Viskositäten aus seinem
Produktdatenblatt nehmen.`,
    exitCodes: ANSWER_EXIT_CODES,
  },
  meets: {
    summary: 'finden, ob ein Öl die Anforderungen der Anleitung erfüllt',
    help: 'Nennt, ob die Anleitung ein Öl zulässt, nach seinem Etikett. Ein Öl mit zwei Klassen als "80W-90 GL-4/GL-5" schreiben.',
    options: {
      ambient:
        'Umgebungstemperatur, wenn die Anleitung das Öl auf einen Bereich begrenzt (Standard: nicht bekannt)',
    },
    exitCodes: '0 ja, 1 nein, nicht bekannt, oder Hersteller fragen, 2 falscher Aufruf.',
  },
  washer: {
    summary: 'finden, ob ein Dichtring auf das Gewinde einer Schraube passt',
    help: 'Vergleicht Innendurchmesser, Außendurchmesser und Dicke eines Dichtrings mit dem Gewinde.',
    exitCodes: ANSWER_EXIT_CODES,
  },
  schema: {
    summary: 'das JSON Schema einer Art von Dokument oder Ergebnis ausgeben',
    help: `Gibt das JSON Schema eines Dokuments aus: spec-sheet, machine-log, toolbox, stock, procedure oder service-record; oder eines
Ergebnisses: visit-plan, due-line, service-card oder finding.`,
  },
  completion: {
    summary: 'ein Vervollständigungsskript für bash, zsh oder fish ausgeben',
    help: `Gibt ein Skript aus, das Befehle, Optionen und Dateien vervollständigt. In der Startdatei der Shell laden:
  bash: source <(drivetrain-service completion bash)
  zsh:  source <(drivetrain-service completion zsh)
  fish: drivetrain-service completion fish | source`,
  },
}
