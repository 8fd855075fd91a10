import type { ReportTexts } from '../reportTexts.js'
import { count } from './count.js'

const METERS = { hours: 'Betriebsstunden', distance: 'Strecke' } as const
const MARKS = { point: 'Dezimalpunkt', comma: 'Dezimalkomma' } as const

const countFindings = (value: number): string => count(value, 'Befund', 'Befunde')
const countReadings = (value: number): string => count(value, 'Zählerstand', 'Zählerstände')

/** What commands on documents print, in German. */
export const reports: ReportTexts = {
  labelled: ({ label, value }) => `${label}: ${value}`,
  written: ({ path }) => `Geschrieben: ${path}`,
  nothingWritten: 'Nichts wurde geschrieben.',
  nameLogFile: 'Nichts wurde geschrieben: die Datei für das Betriebsbuch mit --out BUCH nennen.',
  nameLogFolder: 'Nichts wurde geschrieben: den Ordner für die Betriebsbücher mit --out ORDNER nennen.',
  emptyFolder: ({ path }) => `${path}: keine Datei .json oder .yaml in diesem Ordner`,
  emptyFolderBelow: ({ path }) => `${path}: keine Datei .json oder .yaml in diesem Ordner oder darunter`,
  skippedNotice: ({ notice }) => `${notice}; übersprungen`,
  skippedPipe: ({ path }) => `${path} ist eine Pipe oder ein Gerät: übersprungen`,

  findings: 'Befunde',
  entry: ({ position, severity, message }) => `${position}: ${severity}: ${message}`,
  inFiles: ({ message, count: files }) => `${message} (${files} Dateien)`,
  alsoIn: ({ places, more }) =>
    `; auch in ${places}${more === 0 ? '' : ` und ${count(more, 'weiteren Datei', 'weiteren Dateien')}`}`,
  alsoAtLines: ({ lines }) => `; auch in Zeile ${lines}`,
  at: ({ code, path }) => `${code} bei ${path}`,
  waived: ({ reason }) => `(Ausnahme: ${reason})`,
  more: ({ count: findings }) =>
    `... und ${findings} weitere: zuerst diese berichtigen, oder alle mit --format json auflisten.`,
  missingKeys: ({ keys, last }) => `Fehlende Schlüssel ${keys} und ${last}.`,
  write: ({ text }) => `schreiben: ${text}`,
  writeMeaning: ({ meaning }) => `erwartet: ${meaning}, zum Beispiel`,
  belongsAt: ({ meaning, place }) => `${meaning}: gehört nach ${place}, zum Beispiel`,
  indentWithSpaces: 'mit Leerzeichen einrücken',
  overrideSetsOne: 'eine Überschreibung setzt einen einzelnen Wert, zum Beispiel',

  column: ({ column, message }) => `Spalte ${column}: ${message}`,
  notATable: ({ problem }) => `keine Tabelle: ${problem}`,
  repeatedColumn: 'die Spalte kommt mehr als einmal vor',
  cellWithoutColumn: ({ cell }) => `„${cell}“ steht in keiner benannten Spalte`,
  whichMachine: 'welche Maschine ist das?',
  whichGearcase: 'welches Getriebe hat diese Öffnung?',
  rowRepeated: 'für dieses Teil gibt es schon eine Zeile',
  cellContradictsRow: 'eine andere Zelle dieser Zeile hat einen Wert für dasselbe Teil',
  unknownColumn: 'gearcase, opening oder ein Pfad wie /oilSpace/oils erwartet',
  severalUnits: ({ machine, units }) => `${machine} hat Strecken in ${units.replace(', ', ' und ')}`,
  machineColumnMissing: 'Spalte machine mit der Kennung oder Seriennummer erwartet',
  dateColumnMissing: 'Spalte date erwartet',
  dataColumnMissing: 'Spalte hours, distance [km], entry oder sheet erwartet',
  unitMissing: 'Einheit erwartet, zum Beispiel distance [km] oder hours [h]',
  columnIgnored: 'die Spalte wird nicht verwendet',
  contradictsEarlier: ({ cell, earlier }) => `„${cell}“ widerspricht „${earlier}“ in einer früheren Zeile`,
  contradictsLine: ({ cell, earlier, line }) => `„${cell}“ widerspricht „${earlier}“ in Zeile ${line}`,
  badDate: ({ cell }) => `Datum wie 2023-10-06 erwartet, „${cell}“ gefunden`,
  badNumber: ({ cell, mark }) => `Zahl mit ${MARKS[mark]} erwartet, „${cell}“ gefunden`,
  noEntry: 'diese Zeile hat keinen Eintrag und keinen Zählerstand',

  checked: ({ documents, folders, findings, level }) =>
    `${count(documents, 'Dokument', 'Dokumente')} gelesen${folders === 0 ? '' : ` aus ${count(folders, 'Ordner', 'Ordnern')}`}, ${countFindings(findings)} der Stufe ${level} oder darüber.`,
  skipped: ({ parts }) => `Übersprungen: ${parts}.`,
  otherFiles: ({ count: files }) => `${count(files, 'Datei', 'Dateien')} weder .json noch .yaml`,
  pipes: ({ count: pipes }) => count(pipes, 'Pipe', 'Pipes'),
  emptyFolders: ({ count: folders }) => `${folders} Ordner ohne Dokumente`,
  unsearchedFolders: ({ count: folders }) =>
    `${folders} Ordner: versteckt, verknüpft oder mit dem Namen node_modules`,
  baselineUsed: ({ accepted, unused }) =>
    `Liste hingenommener Befunde: ${accepted} hingenommen, ${unused} nicht mehr gefunden.`,
  baselineWritten: ({ path }) => `Liste hingenommener Befunde geschrieben: ${path}.`,
  noSafeFix: 'Kein Befund mit sicherer Berichtigung.',
  fixed: ({ findings, files }) =>
    `${countFindings(findings)} in ${count(files, 'Datei', 'Dateien')} berichtigt. Jede Änderung mit der Anleitung der Maschine vergleichen.`,
  canFix: ({ findings, files }) =>
    `${countFindings(findings)} in ${count(files, 'Datei', 'Dateien')} berichtigbar; nichts wurde geschrieben. Jede Änderung mit der Anleitung der Maschine vergleichen.`,

  notToBeUsed: 'nicht benutzen',
  noService: 'keine Wartung',
  moreDue: ({ count: services }) => `(+${services} fällig)`,
  faultOpen: ({ date, record, message }) =>
    `NICHT BENUTZEN: Mangel offen seit ${date} (${record}). ${message}`,
  sampleOpen: ({ bottle, gearcase, date, record, laboratory }) =>
    `Ölprobe ${bottle} von ${gearcase}, ${date} (${record})${laboratory === '' ? '' : `, Labor: ${laboratory}`}: noch kein Ergebnis.`,
  linesRead: ({ lines, errors }) => `${count(lines, 'Zeile', 'Zeilen')}, ${errors} mit Fehlern.`,
  progress: ({ lines, share }) => `${lines} Zeilen${share === '' ? '' : `, ${share}`}`,
  line: ({ line, message }) => `Zeile ${line}: ${message}`,
  columnsNotRead: ({ columns }) => `Nicht gelesene Spalten: ${columns}.`,
  by: ({ name }) => `von ${name}`,
  corrects: ({ record }) => `berichtigt ${record}`,
  correctedBy: ({ record }) => `berichtigt durch ${record}`,
  sample: ({ bottle, result }) => `; Probe ${bottle}: ${result === '' ? 'kein Ergebnis' : result}`,
  doesNotCount: ({ reason }) => `Zählt nicht. ${reason}`,
  entryDoesNotCount: ({ entry, reason }) => `${entry}: zählt nicht. ${reason}`,
  topUp: ({ date, volume, oil, gearcase }) => `${date}  nachgefüllt: ${volume} ${oil}, ${gearcase}`,

  steps: ({ name, path }) => `Schritte: ${name}, aus ${path}`,
  seeFull: 'Werte, Werkzeuge, Schritte und Nachweis: --full',
  cardWritten: ({ paths }) => `Karte geschrieben: ${paths}`,
  papersWritten: ({ paths }) => `Blätter geschrieben: ${paths}`,
  cuesWritten: ({ paths }) => `Drehplan und Untertitel geschrieben: ${paths}`,
  wallProgress: ({ written, all }) => `${written} von ${all} Wandkarten`,
  wallWritten: ({ written, all, folder }) => `${written} von ${all} Wandkarten geschrieben nach ${folder}`,
  slipWritten: ({ path }) => `Wartungsbeleg geschrieben: ${path}`,
  notYetInLog: ({ record }) => `Auf dem Wartungsbeleg, aber noch nicht im Betriebsbuch: ${record}`,

  notKnownFor: ({ machine }) => `Nicht bekannt bei ${machine}`,
  load: ({ day, van, machines }) => `${day}, ${van}: ${machines}`,
  kitFor: ({ machines }) => `Teilesatz für ${machines}`,
  spare: ({ name }) => `${name}, Reserve: nur wenn das alte Teil die Prüfung nicht besteht`,
  sampleBottle: 'saubere Probenflasche mit Etikett',
  countFasteners: ({ part }) => `Befestigungen zählen (${part}): die Anleitung nennt die Anzahl nicht.`,
  toOrder: 'Zu bestellen, für alle Teilesätze',
  toOrderFor: ({ day, van }) => `Zu bestellen für ${day}, ${van}`,
  nothing: ({ heading }) => `${heading}: nichts`,
  leftOver: ({ volume }) => `${volume} bleiben übrig`,
  noContainer: 'Gebinde nicht bekannt',
  packages: ({ oil, packages }) => `${oil}: ${packages}`,
  nothingDue: 'Nichts ist fällig.',

  noUsedOil: 'Kein Altöl eingetragen.',
  usedOil: ({ sum }) => `Altöl: ${sum}`,
  noRecipient: 'Empfänger nicht eingetragen',
  keptApartCaution:
    'Getrennt gehaltenes Öl niemals in den Altöltank geben. Die Sammelstelle fragen und die örtlichen Vorschriften befolgen.',
  keptApart: ({ volume }) => `${volume} getrennt gehalten`,
  withoutReceipt: ({ volume }) => `${volume} ohne Beleg`,
  withoutVolume: ({ count: lines }) => `${count(lines, 'Zeile', 'Zeilen')} ohne Volumen`,
  drainedNotCounted: ({ volume }) => `dort abgelassen, nicht gezählt: ${volume}`,
  noVolume: 'Volumen nicht eingetragen',
  drained: ({ volume }) => `abgelassen ${volume}`,
  to: ({ name }) => `an ${name}`,
  receipt: ({ number }) => `Beleg ${number}`,
  keptApartBecause: ({ reason }) => `GETRENNT GEHALTEN: ${reason}`,

  stepRemoved: ({ id, action }) => `Schritt entfernt: ${id}: ${action}`,
  stepWithoutPart: ({ id, part }) => `Schritt entfernt: ${id}: diese Maschine hat kein ${part}`,
  stepAdded: ({ id, action }) => `Schritt ergänzt: ${id}: ${action}`,
  stepMoved: ({ id }) => `Schritt verschoben: ${id}`,
  stepsRebuilt: 'Schritte in der üblichen Reihenfolge neu aufgebaut: einzelne Änderungen genügten nicht',
  lostNote: ({ id, note }) => `Bemerkung ohne Schritt: ${id}: ${note}`,
  figureChanged: ({ steps, figure, from, to }) => `Geändert bei ${steps}: ${figure}: ${from} -> ${to}`,
  nothingThere: 'nichts',
  sameEffect: 'Beide Arbeitsabläufe haben dieselbe Wirkung.',
  sameFigures: 'Die Varianten haben dieselben Werte.',
  noDifference: 'Kein Unterschied.',
  step: ({ change, id }) => `${change}: Schritt ${id}`,
  finalState: ({ path, first, second }) => `geänderter Endzustand ${path}: ${first} -> ${second}`,
  finding: ({ change, code }) => `${change}: Befund ${code}`,
  notStated: 'nicht angegeben',
  cannotTell: 'nicht bekannt',
  nothingToFix: 'Nichts zu berichtigen.',
  noChangeHelps: 'Keine Änderung hilft.',
  dangerousFixed: 'Gefährlich, berichtigt:',
  alsoFixed: 'Außerdem berichtigt:',
  filledIn: 'Eingesetzt:',
  filledCount: ({ count: filled }) =>
    `${filled} Werte und Kennungen eingesetzt, jeweils mit dem einzig möglichen Wert.`,
  rebuilt:
    'Zu viele Fehler für einzelne Änderungen: die Schritte stehen jetzt in der üblichen Reihenfolge, mit den eigenen Kennungen, Bemerkungen und weiteren Schritten.',
  changes: 'Änderungen:',
  signs: '+ ergänzt, - entfernt oder verschoben, * andere Werte oder andere Kennung',

  recordExists: ({ id }) => `Nicht angefügt: das Betriebsbuch hat schon einen Nachweis ${id}.`,
  otherSheet: 'Nicht angefügt: der Nachweis gehört zu einem anderen Datenblatt.',
  otherMachine: 'Nicht angefügt: der Nachweis gehört zu einer anderen Maschine.',
  recordAppended: ({ path, id, count: records }) =>
    `Angefügt an ${path}: ${id}, ${count(records, 'Nachweis', 'Nachweise')}.`,
  fillInRecord:
    'Jedes ? ersetzen, Einträge berichtigen, die von der Arbeit abweichen, und nicht ausgeführte Arbeit löschen. Dann anfügen: record <Nachweis> <Betriebsbuch> <Datenblatt> --out BUCH',
  topUpExists: 'Nicht angefügt: das Betriebsbuch hat dieses Nachfüllen schon.',
  topUpAppended: ({ path, volume, date, count: topUps }) =>
    `Angefügt an ${path}: ${volume} am ${date}, ${topUps}-mal nachgefüllt.`,
  readingsAdded: ({ hours, distance, kept }) =>
    `${countReadings(hours)} der Betriebsstunden und ${countReadings(distance)} der Strecke ergänzt; ${kept} übersprungen, schon im Betriebsbuch.`,
  meterAdded: ({ meter }) => `Das Betriebsbuch hatte keinen Zähler für ${METERS[meter]}: er ist ergänzt.`,
  logChanged:
    'Nichts wurde geschrieben: das Betriebsbuch wurde inzwischen geändert, und die Zählerstände passen nicht mehr dazu.',
  logChangedAt: ({ path }) =>
    `${path}: inzwischen geändert, und die Zählerstände passen nicht mehr dazu; nicht geschrieben.`,
  fleetAdded: ({ logs, hours, distance, kept, records }) =>
    `${count(logs, 'Betriebsbuch', 'Betriebsbücher')}: ${countReadings(hours)} der Betriebsstunden und ${countReadings(distance)} der Strecke ergänzt; ${kept} übersprungen, schon in den Betriebsbüchern; ${count(records, 'Nachweis', 'Nachweise')} ergänzt.`,
  logsWritten: ({ folder, count: logs }) =>
    `Geschrieben: ${count(logs, 'Betriebsbuch', 'Betriebsbücher')} in ${folder}`,
  noNumber: 'keine Nummer',
  numbered: ({ number, message }) => `${number}: ${message}`,
  noLogHasNumber: ({ count: readings }) =>
    `kein Betriebsbuch hat diese Nummer; ${countReadings(readings)} nicht ergänzt`,
  severalLogsHaveNumber: ({ ids }) => `mehrere Betriebsbücher haben diese Nummer: ${ids}`,
  recordOf: ({ date, message }) => `Nachweis vom ${date}: ${message}`,
}
