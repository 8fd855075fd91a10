import type { CliWords } from '../cliWords.js'
import { answers } from './answers.js'
import { blanks } from './blanks.js'
import { commands } from './commands.js'
import { joinOr } from './count.js'
import { errors } from './errors.js'
import { keys } from './keys.js'
import { options } from './options.js'
import { reports } from './reports.js'

/** The words of the command line in English. */
export const en: CliWords = {
  language: 'en',
  help: {
    title: 'drivetrain-service: plans gear oil services from a spec sheet',
    usage: 'Usage:',
    options: 'Options',
    example: 'Example:',
    exitCode: 'Exit code:',
    footer: `Files are JSON or YAML; - is standard input. Several files are one set: a log finds its sheet among them by id and revision.
Each folder is a separate set. Patterns (*, ? and **) also work in quotes; with ** the files of each folder form a set.
For details: drivetrain-service help <command>. The machine's own manual always comes first.`,
    printHelp: 'print help',
    formats: ({ names }) => `${joinOr(names)} (default text)`,
  },
  placeholders: {
    options: 'options',
    command: 'command',
    'file or folder': 'file or folder',
    'file, folder, pattern or -': 'file, folder, pattern or -',
    'file.jsonl or -': 'file.jsonl or -',
    'telematics.json or table.csv': 'telematics.json or table.csv',
    'log or folder': 'log or folder',
    file: 'file',
    folder: 'folder',
    sheet: 'sheet',
    log: 'log',
    record: 'record',
    toolbox: 'toolbox',
    stock: 'stock',
    kind: 'kind',
    FILE: 'FILE',
    FOLDER: 'FOLDER',
    SHEET: 'SHEET',
    LOG: 'LOG',
    RECORD: 'RECORD',
    GEARCASE: 'GEARCASE',
    NAME: 'NAME',
    DATE: 'DATE',
    LEVEL: 'LEVEL',
    FORMAT: 'FORMAT',
    ID: 'ID',
    USE: 'USE',
    YEAR: 'YEAR',
    PERCENT: 'PERCENT',
    WHAT: 'WHAT',
    PAPER: 'PAPER',
    SYSTEM: 'SYSTEM',
    NUMBER: 'NUMBER',
    MARK: 'MARK',
    OLD: 'OLD',
  },
  commands,
  options,
  errors,
  reports,
  answers,
  keys,
  blanks,
  yamlProblems: 'as written',
  standardInput: 'standard input',
  severities: { error: 'error', warning: 'warning', info: 'info' },
  dueStates: {
    overdue: 'overdue',
    due: 'due',
    'cannot tell': 'cannot tell',
    'due soon': 'due soon',
    'not due': 'not due',
  },
  oilLosses: { 'no loss': 'no loss', 'loses oil': 'loses oil', 'cannot tell': 'cannot tell' },
  oilVerdicts: { yes: 'Yes.', no: 'No.', 'cannot tell': 'Cannot tell.', ask: 'Ask the maker.' },
  washerVerdicts: {
    'in the table': 'It fits.',
    plausible: 'It fits, by its size.',
    doubtful: 'Doubtful.',
    'does not fit': 'Does not fit.',
    'cannot tell': 'Cannot tell.',
  },
  changes: { added: 'added', removed: 'removed', changed: 'changed', 'source only': 'source only' },
  repairEnds: {
    done: 'No finding about the steps is left.',
    rebuilt: 'No finding about the steps is left. Read all steps before work.',
    'no fix':
      'No further change helps. Correct the rest by hand, or start again with the command `procedure`.',
    effort: 'The search reached its limit. Correct some of the rest by hand, then repair again.',
  },
  measures: {
    torque: 'torque',
    volume: 'volume',
    length: 'length',
    distance: 'distance',
    force: 'force',
    pressure: 'pressure',
    temperature: 'temperature',
    temperatureDifference: 'temperature difference',
    mass: 'mass',
    duration: 'duration',
    angle: 'angle',
    speed: 'speed',
    kinematicViscosity: 'kinematic viscosity',
    dynamicViscosity: 'dynamic viscosity',
    density: 'density',
  },
}
