import type { ErrorTexts } from '../errorTexts.js'
import { joinOr } from './count.js'

const WRITE_ERRORS: Readonly<Record<string, string>> = {
  EACCES: 'keine Berechtigung',
  EPERM: 'keine Berechtigung',
  EROFS: 'der Datenträger ist schreibgeschützt',
  ENOSPC: 'der Datenträger ist voll',
  EDQUOT: 'der zugeteilte Speicherplatz ist belegt',
  EFBIG: 'die Datei würde zu groß',
  EIO: 'Fehler des Datenträgers',
  EISDIR: 'es ist ein Ordner',
  ENOTDIR: 'Ordner erwartet, Datei gefunden',
  EEXIST: 'Ordner erwartet, Datei gefunden',
  ELOOP: 'seine Verknüpfungen bilden einen Kreis',
  ENAMETOOLONG: 'der Name ist zu lang',
}
const KINDS = { folder: 'ein Ordner', pipe: 'eine Pipe', socket: 'ein Socket', device: 'ein Gerät' } as const
const METERS = { hours: 'Betriebsstunden', distance: 'Strecke' } as const

const suggest = (suggestion: string): string => (suggestion === '' ? '' : `; gemeint: ${suggestion}?`)

/** The errors of the command line in German. */
export const errors: ErrorTexts = {
  asWritten: ({ text }) => text,
  programError: ({ problem }) =>
    `Fehler im Programm, nicht in den Dateien: ${problem}\nBitte mit dem Befehl und den Dateien melden.`,

  unknownCommand: ({ name, suggestion }) =>
    `unbekannter Befehl ${name}${suggestion === '' ? '; siehe drivetrain-service help' : suggest(suggestion)}`,
  unknownOption: ({ option, suggestion, options }) =>
    `${option} ist unbekannt${suggest(suggestion)} (Optionen: ${options})`,
  otherCommandsOption: ({ option, suggestion, options }) =>
    `${option} gehört nicht zu diesem Befehl${suggest(suggestion)} (Optionen: ${options})`,
  optionNeedsValue: ({ option }) => `${option}: Wert erwartet`,
  optionTakesNoValue: ({ option }) => `${option}: kein Wert erwartet`,
  notOneOf: ({ given, expected }) => `${given}: erwartet wird eines von ${expected}`,
  notADate: ({ given }) => `${given}: Datum wie 2023-10-06 erwartet`,
  notANumber: ({ given }) => `${given}: Zahl erwartet`,
  untilBeforeSince: ({ given, since }) => `${given}: ${since} oder später erwartet`,
  badTime: ({ given }) => `${given}: Zeit wie 0:14 oder 1:02:03.5 erwartet`,
  badPercentage: ({ given }) => `${given}: Prozentsatz über 0 und unter 100 erwartet`,
  badRate: ({ given }) => `${given}: Betrag und Währung erwartet, zum Beispiel "65.50 EUR"`,
  badTemperature: ({ given }) => `${given}: Temperatur wie 6degC oder 43degF erwartet`,
  temperatureOutOfRange: ({ given }) => `${given}: -100 degC bis 100 degC erwartet`,
  badEnding: ({ given, endings }) => `${given}: Name mit der Endung ${joinOr(endings)} erwartet`,
  otherFormat: ({ given, format }) => `${given}: nicht zusammen mit --format ${format} möglich`,
  missingOption: ({ command, option, example }) =>
    `${command}: ${option} angeben, zum Beispiel ${option} ${example}`,
  missingValue: ({ command, example }) => `${command}: Wert erwartet, zum Beispiel ${command} ${example}`,

  noSuchFile: ({ path }) => `${path}: keine solche Datei und kein solcher Ordner`,
  folderNotFile: ({ path }) => `${path}: Datei erwartet, Ordner gefunden`,
  mayNotRead: ({ path }) => `${path}: keine Berechtigung zum Lesen`,
  cannotRead: ({ path, problem }) => `${path}: nicht lesbar (${problem})`,
  noDocumentFile: () => 'keine Datei .json oder .yaml gefunden',
  pipe: ({ path }) => `${path} ist eine Pipe oder ein Gerät; zum Lesen: - < ${path}`,
  noMatch: ({ pattern }) => `${pattern}: passt auf keine Datei und keinen Ordner`,
  notJson: ({ path }) => `${path}: kein JSON`,
  notABaseline: ({ path }) =>
    `${path} ist keine Liste hingenommener Befunde: mit check --write-baseline schreiben`,
  fileExists: ({ path }) => `${path} gibt es schon; anderen Namen wählen oder zuerst löschen`,
  cannotWrite: ({ path, code }) => `${path}: nicht geschrieben (${WRITE_ERRORS[code] ?? code})`,
  otherDocument: ({ path, found, expected }) =>
    `${path} ist ${found === '' ? 'eine andere Datei' : found}, nicht ${expected === '' ? 'eine frühere Ausgabe' : expected}: anderen Namen wählen; nichts wurde geschrieben`,
  beingWritten: ({ path, holder }) =>
    `${path}: ${holder === '' ? 'ein anderer Prozess' : `Prozess ${holder}`} schreibt gerade; noch einmal versuchen`,
  diskTooSlow: ({ path }) => `${path}: der Datenträger ist zu langsam; nichts wurde geschrieben`,
  notAFile: ({ path, kind }) => `${path}: ist ${KINDS[kind]}, keine Datei; nichts wurde geschrieben`,
  notConfirmed: ({ path, code }) => `${path}: geschrieben, aber vom Datenträger nicht bestätigt (${code})`,
  changedMeanwhile: ({ path }) =>
    `${path} wurde inzwischen von einem anderen Programm geändert; noch einmal versuchen`,
  notThisLog: ({ path, id }) =>
    `${path} ist nicht das Betriebsbuch ${id} oder nicht lesbar: anderen Namen wählen; nichts wurde geschrieben`,
  copyWithoutRecord: ({ path, id }) =>
    `${path} ist eine andere Kopie des Betriebsbuchs, ohne den Nachweis ${id}; nichts wurde geschrieben`,
  copyWithoutTopUp: ({ path, date }) =>
    `${path} ist eine andere Kopie des Betriebsbuchs, ohne das Nachfüllen vom ${date}; nichts wurde geschrieben`,
  copyWithoutReading: ({ path, date }) =>
    `${path} ist eine andere Kopie des Betriebsbuchs, ohne den Zählerstand vom ${date}; nichts wurde geschrieben`,

  noLog: () => 'kein Betriebsbuch unter den Dateien',
  noLogWithId: ({ id }) => `kein Betriebsbuch mit der Kennung ${id} unter den Dateien`,
  severalLogs: ({ ids, count: logs }) =>
    `${logs} Betriebsbücher gefunden: eines mit --machine ${ids.replaceAll(', ', ' oder ')} wählen`,
  sheetNotFound: ({ name, id, revision, found }) =>
    `${name}: Datenblatt ${id} revision ${revision} ist nicht unter den Dateien (${found === '' ? 'kein Datenblatt' : found})`,
  severalToolboxes: () => 'mehr als ein Werkzeugkasten unter den Dateien',
  severalStocks: () => 'mehr als ein Bestand unter den Dateien',
  oneProcedure: ({ given, count: found }) => `${given}: ein Arbeitsablauf erwartet, ${found} gefunden`,
  oneSheet: ({ given, count: found }) => `${given}: ein Datenblatt erwartet, ${found} gefunden`,
  oneLog: ({ given, count: found }) => `${given}: ein Betriebsbuch erwartet, ${found} gefunden`,
  oneRecord: ({ given, count: found }) => `${given}: ein Nachweis erwartet, ${found} gefunden`,
  noOilChange: ({ given }) => `${given}: das Datenblatt hat keinen Ölwechsel an diesem Getriebe`,

  nameMachine: ({ command }) => `${command}: die Dateien oder den Ordner einer Maschine nennen`,
  nameLogAndSheet: ({ command }) =>
    `${command}: das Betriebsbuch und sein Datenblatt nennen, oder ihren Ordner`,
  nameLogsAndSheets: ({ command }) =>
    `${command}: Betriebsbücher und ihre Datenblätter nennen, oder Ordner damit`,
  nameFilesToCheck: () => 'check: die zu prüfenden Dateien oder Ordner nennen',
  dryRunNeedsFix: () => 'check: --dry-run braucht --fix',
  nameLogsOrRows: () =>
    'due: Betriebsbücher und ihre Datenblätter nennen, einen Ordner damit, oder - für Zeilen von der Standardeingabe',
  oneLinesFile: ({ count: files }) => `due: eine Datei .jsonl oder - erwartet, ${files} gefunden`,
  inputTwice: () => 'due: Zeilen und Datenblatt können nicht beide von der Standardeingabe kommen',
  noSheet: ({ command }) => `${command}: kein Datenblatt unter den Dateien`,
  rowsAreShort: () =>
    'due: --brief, --format csv und --format summary brauchen Betriebsbücher und ein Datenblatt; Zeilen haben schon kurze Antworten',
  nameLogs: () => 'used-oil: Betriebsbücher nennen, oder Ordner damit',
  nameCardFolder: () => 'card: den Ordner für die Karten mit --out ORDNER nennen',
  namePaperFolder: () => 'card: den Ordner für die Blätter mit --out ORDNER nennen',
  nameSheets: () => 'card: Datenblätter nennen, oder Ordner damit',
  paperNeedsFiles: ({ paper }) => `card: --paper ${paper} braucht Dateien oder Ordner`,
  differencesNeedSheet: () => 'card: --paper differences braucht ein Datenblatt',
  twoSheetsOneFile: ({ name }) => `card: zwei Datenblätter würden in ${name} geschrieben`,
  notARecord: ({ name, id }) => `${name} ist kein Nachweis von ${id}`,
  noVisit: ({ id }) => `das Betriebsbuch von ${id} hat keinen Nachweis einer Wartung`,
  noSuchRecord: ({ record, id, latest }) =>
    `--record ${record}: das Betriebsbuch von ${id} hat keinen solchen Nachweis; seine letzten sind ${latest}`,
  noServiceDue: () => 'procedure: keine Wartung ist fällig; eine mit --service wählen',
  logOrSheet: () =>
    'procedure: ein Betriebsbuch und sein Datenblatt erwartet, oder ein Datenblatt und --service',
  noNewRevision: ({ id }) => `procedure: die neue Ausgabe des Datenblatts ${id} unter den Dateien erwartet`,
  captionsNeedTimes: () =>
    'cues: Untertitel brauchen --starts ZEITEN für eine Datei, oder --out ORDNER für eine Datei je Szene',
  startsCount: ({ scenes, starts }) =>
    `--starts: für jede der ${scenes} Szenen eine Zeit erwartet, ${starts} gefunden`,
  startsTooEarly: ({ start }) =>
    `--starts ${start}: zu früh; die Untertitel der Szene davor brauchen mehr Zeit`,
  noSharedSheet: () => 'compare: das Datenblatt beider Arbeitsabläufe unter den Dateien erwartet',
  nothingToCompare: () =>
    'compare: zwei Datenblätter erwartet, zwei Arbeitsabläufe mit ihrem Datenblatt, oder ein Datenblatt',
  onlyWithFromPlan: () => 'record: --service und --ambient gehen nur zusammen mit --from-plan',
  nameRecord: () =>
    'record: den Nachweis, sein Betriebsbuch, das Datenblatt und den Werkzeugkasten nennen, oder ihren Ordner',
  logOfRecordMissing: ({ id }) => `record: das Betriebsbuch der Maschine ${id} ist nicht unter den Dateien`,
  fromPlanFormat: ({ format }) =>
    `record --from-plan --format ${format}: der Nachweis ist YAML zum Ausfüllen`,
  onlyWithTopUp: () => 'record: --at und --on gehen nur zusammen mit --top-up',
  notWithTopUp: () => 'record: --from-plan, --service und --ambient gehen nicht zusammen mit --top-up',
  noMeter: ({ given, meter }) => `${given}: das Betriebsbuch hat keinen Zähler für ${METERS[meter]}`,
  badTopUp: ({ given }) => `${given}: Volumen und Öl erwartet, zum Beispiel "50 mL of gear oil 80W-90"`,
  zeroTopUp: ({ given }) => `${given}: Volumen über null erwartet`,
  sheetOfProcedureMissing: ({ id, revision }) =>
    `repair: das Datenblatt ${id} revision ${revision} ist nicht unter den Dateien`,
  onlySheetIsTable: () => 'new: nur ein Datenblatt kann eine Tabelle sein',
  onlyForSheet: () => 'new: --gearcases, --variants und --from gehen nur für ein Datenblatt',
  onlyForLog: () => 'new: --sheet geht nur für ein Betriebsbuch',
  notWithFrom: () =>
    'new: --gearcases, --variants und --unit gehen nicht zusammen mit --from: sie kommen aus dem Datenblatt',
  badIds: ({ given }) =>
    `${given}: verschiedene Kennungen aus Kleinbuchstaben, Ziffern und Bindestrichen erwartet, zum Beispiel front,rear`,
  badExampleUnit: ({ given }) =>
    `${given}: Einheit für Drehmoment, Volumen, Strecke oder Temperatur erwartet, zum Beispiel lbf.ft oder qt_us`,
  nameTelematics: () =>
    'import: die Telematik-Datei und das Betriebsbuch nennen, in dieser Reihenfolge; oder Seiten und Tabellen und einen Ordner mit Betriebsbüchern',
  notALog: ({ path }) => `import: Betriebsbuch erwartet, ${path} gefunden`,
  severalMachines: ({ number, count: machines }) =>
    `import: ${machines} Maschinen haben die Nummer ${number}`,
  noMachine: ({ number, known }) =>
    `import: keine Maschine hat die Nummer ${number} (${known}); eine mit --equipment wählen`,
  noSerial: ({ known }) =>
    `import: das Betriebsbuch hat keine Seriennummer (${known}); eine mit --equipment wählen`,

  unreadable: ({ given, message }) => `${given}: ${message}`,
  oneFigure: ({ given }) => `${given}: ein Zahlenwert mit seiner Einheit erwartet`,
  marksAndStep: ({ given }) => `${given}: Skala und Schritt erwartet, zum Beispiel "700 mL by 10"`,
  stepNotAboveZero: ({ given }) => `${given}: der Schritt muss über 0 liegen`,
  otherUnit: ({ given, measure, units }) =>
    `${given}: Einheit für ${measure} erwartet, zum Beispiel ${units}`,
  everyNeedsNoDocument: ({ found }) => `due: --every braucht kein Dokument; gefunden: ${found}`,
  everyGivesOneAnswer: () => 'due: --every gibt eine Antwort, ohne --brief und --format csv',
  lastOrFirstUse: () =>
    'due: --last "2022-11-20 at 301.4 h" angeben, oder --from-new mit dem Tag der ersten Nutzung, wenn nie gewartet wurde',
  lastAfterNow: ({ given, last, now }) => `${given}: ${last} liegt nach ${now}, dem Tag von --now`,
  badDay: ({ given }) =>
    `${given}: Datum und Zählerstände erwartet, zum Beispiel "2022-11-20 at 301.4 h, 1200 mi"`,
  oneVolume: ({ given }) => `${given}: ein einzelnes Volumen erwartet, kein Bereich`,
  highestMarkAndStep: ({ given }) =>
    `${given}: oberster Teilstrich und Schritt erwartet, zum Beispiel "700 mL by 10"`,
  twoLengths: ({ given }) => `${given}: zwei Längen erwartet, zum Beispiel "6 mm x 1 m"`,
  crowfootNeedsLever: () =>
    '--crowfoot: auch die Länge des Schlüssels angeben, zum Beispiel --lever "250 mm"',
  wrenchRange: ({ given }) => `${given}: Bereich erwartet, zum Beispiel "40–200 lbf·in by 1"`,
  badAccuracy: ({ given }) => `${given}: Prozentsatz erwartet, zum Beispiel 4% oder "2% of full scale"`,
  oneOil: ({ given }) => `${given}: ein Öl erwartet, zum Beispiel "80W-90 GL-4"`,
}
