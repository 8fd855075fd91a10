import type { TranslatedWords } from '../cliWords.js'
import { answers } from './answers.js'
import { blanks } from './blanks.js'
import { commands } from './commands.js'
import { joinOr } from './count.js'
import { errors } from './errors.js'
import { keys } from './keys.js'
import { options } from './options.js'
import { reports } from './reports.js'
import { yamlProblems } from './yamlProblems.js'

/** The words of the command line in German; not reviewed by a speaker who knows the trade. */
export const de: TranslatedWords = {
  language: 'de',
  help: {
    title: 'drivetrain-service: plant Getriebeölwartungen nach einem Datenblatt',
    usage: 'Aufruf:',
    options: 'Optionen',
    example: 'Beispiel:',
    exitCode: 'Rückgabewert:',
    footer: `Dateien sind JSON oder YAML; - ist die Standardeingabe. Mehrere Dateien sind ein Satz: ein Betriebsbuch findet sein Datenblatt darin
nach Kennung und Ausgabe. Jeder Ordner ist ein eigener Satz. Muster (*, ? und **) gehen auch in Anführungszeichen; mit ** bilden die
Dateien jedes Ordners einen Satz.
Einzelheiten: drivetrain-service help <Befehl> --language de. Die Betriebsanleitung der Maschine geht immer vor.`,
    printHelp: 'Hilfe ausgeben',
    formats: ({ names }) => `${joinOr(names)} (Standard text)`,
  },
  placeholders: {
    options: 'Optionen',
    command: 'Befehl',
    'file or folder': 'Datei oder Ordner',
    'file, folder, pattern or -': 'Datei, Ordner, Muster oder -',
    'file.jsonl or -': 'Datei.jsonl oder -',
    'telematics.json or table.csv': 'Telematik.json oder Tabelle.csv',
    'log or folder': 'Betriebsbuch oder Ordner',
    file: 'Datei',
    folder: 'Ordner',
    sheet: 'Datenblatt',
    log: 'Betriebsbuch',
    record: 'Nachweis',
    toolbox: 'Werkzeugkasten',
    stock: 'Bestand',
    kind: 'Art',
    FILE: 'DATEI',
    FOLDER: 'ORDNER',
    SHEET: 'BLATT',
    LOG: 'BUCH',
    RECORD: 'NACHWEIS',
    GEARCASE: 'GETRIEBE',
    NAME: 'NAME',
    DATE: 'DATUM',
    LEVEL: 'STUFE',
    FORMAT: 'FORMAT',
    ID: 'KENNUNG',
    USE: 'EINSATZ',
    YEAR: 'JAHR',
    PERCENT: 'PROZENT',
    WHAT: 'WORAUF',
    PAPER: 'BLATT',
    SYSTEM: 'SYSTEM',
    NUMBER: 'NUMMER',
    MARK: 'ZEICHEN',
    OLD: 'ALT',
  },
  commands,
  options,
  errors,
  reports,
  answers,
  keys,
  blanks,
  yamlProblems,
  standardInput: 'Standardeingabe',
  severities: { error: 'Fehler', warning: 'Warnung', info: 'Hinweis' },
  dueStates: {
    overdue: 'überfällig',
    due: 'fällig',
    'cannot tell': 'nicht bekannt',
    'due soon': 'bald fällig',
    'not due': 'nicht fällig',
  },
  oilLosses: { 'no loss': 'kein Verlust', 'loses oil': 'verliert Öl', 'cannot tell': 'nicht bekannt' },
  oilVerdicts: { yes: 'Ja.', no: 'Nein.', 'cannot tell': 'Nicht bekannt.', ask: 'Den Hersteller fragen.' },
  washerVerdicts: {
    'in the table': 'Er passt.',
    plausible: 'Er passt, nach seiner Größe.',
    doubtful: 'Zweifelhaft.',
    'does not fit': 'Passt nicht.',
    'cannot tell': 'Nicht bekannt.',
  },
  changes: { added: 'ergänzt', removed: 'entfernt', changed: 'geändert', 'source only': 'nur die Quelle' },
  repairEnds: {
    done: 'Kein Befund zu den Schritten bleibt.',
    rebuilt: 'Kein Befund zu den Schritten bleibt. Vor der Arbeit alle Schritte lesen.',
    'no fix':
      'Keine weitere Änderung hilft. Den Rest von Hand berichtigen, oder mit dem Befehl `procedure` neu beginnen.',
    effort: 'Die Suche erreichte ihre Grenze. Einiges von Hand berichtigen, dann noch einmal repair.',
  },
  measures: {
    torque: 'Drehmoment',
    volume: 'Volumen',
    length: 'Länge',
    distance: 'Strecke',
    force: 'Kraft',
    pressure: 'Druck',
    temperature: 'Temperatur',
    temperatureDifference: 'Temperaturdifferenz',
    mass: 'Masse',
    duration: 'Zeit',
    angle: 'Winkel',
    speed: 'Geschwindigkeit',
    kinematicViscosity: 'kinematische Viskosität',
    dynamicViscosity: 'dynamische Viskosität',
    density: 'Dichte',
  },
}
