import type { OptionName, OptionRow } from './optionTable.js'

/** One command, for help and completions. */
export interface CommandRow {
  /** Its line in the list of commands. */
  readonly summary: string
  /** The arguments after its name, one line for each form. */
  readonly usage: readonly string[]
  /** A description. */
  readonly help: string
  readonly example: string
  readonly options: readonly OptionName[]
  /** Values of `--format` besides text. */
  readonly formats: readonly string[]
  /** Differences from the option table for this command. */
  readonly overrides?: { readonly [Name in OptionName]?: Partial<OptionRow> }
  /** The meaning of its exit codes. */
  readonly exitCodes?: string
}

const DUE_SOON_OPTIONS = ['soon-hours', 'soon-km', 'soon-days'] as const
const DUE_OPTIONS = ['today', 'machine', 'severity', ...DUE_SOON_OPTIONS, 'stale-days'] as const
const VISIT_OPTIONS = [
  ...DUE_OPTIONS,
  'ambient',
  'service',
  'sample',
  'raise-on',
  'edition',
  'tolerance',
] as const
const PLAN_OPTIONS = [...VISIT_OPTIONS, 'procedure', 'labour-rate', 'times-from'] as const

const QUESTION_OPTIONS = ['every', 'last', 'from-new', 'now', 'first', 'window', 'severe'] as const
const ANSWER_EXIT_CODES = '0 yes, 1 no or cannot tell, 2 usage error.'

const FINDINGS_EXIT_CODES =
  '0 no finding at or above the level, 1 findings, 2 usage error or a file that cannot be read.'

export const COMMAND_TABLE = {
  new: {
    summary: 'write a blank sheet, log, toolbox or stock to fill in',
    usage: ['[sheet] [options]', 'log [--sheet SHEET] [options]', 'toolbox|stock [options]', '--from SHEET'],
    help: `Writes a document to fill in, as YAML with an example for each value. Even unfilled it has no errors and can be planned: missing
values are "not stated". Name the sheet of a log with --sheet. With --from, rewrites a full sheet in short notation. A sheet can be a table
for a spreadsheet, one row for each gearcase and opening: --format csv or --out sheet.csv writes it, --from sheet.csv reads it.`,
    example: 'new --gearcases front,rear --unit lbf.ft --out sheet.yaml',
    options: ['gearcases', 'variants', 'unit', 'sheet', 'from', 'out', 'language', 'format'],
    formats: ['json', 'csv'],
    overrides: {
      sheet: { help: 'the sheet of the log' },
      out: {
        value: 'FILE',
        help: 'file to write, .yaml, .json or .csv; an existing file is not replaced (default: standard output)',
      },
    },
    exitCodes: '0 written, 1 the given sheet has errors, 2 usage error, or the file exists.',
  },
  check: {
    summary: 'report errors in documents',
    usage: ['[options] <file, folder, pattern or -> ...'],
    help: `Reads documents and prints one finding for each error in them. Subfolders are read too, each as a separate set; hidden folders,
links and node_modules are not searched. The last lines give the numbers of documents and folders read and skipped (on standard
error with --format json or sarif). A mistake in three files or more is printed once, with its files.
With --fix it corrects the spelling of keys, names and figures and the order of two figures, where only one change is likely and no
new finding results. Logs, records and procedures are never changed. Compare each change with the manual.
With --write-baseline it accepts all findings of today; with --baseline it then reports only new ones.`,
    example: 'check examples/tind-4',
    options: [
      'today',
      'level',
      'quiet',
      'fix',
      'dry-run',
      'baseline',
      'write-baseline',
      'language',
      'format',
    ],
    formats: ['json', 'sarif'],
    overrides: {
      today: { help: "report readings and records after this day (default: this machine's clock)" },
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  due: {
    summary: 'list the due services, with reasons',
    usage: [
      '--every "250 h, 12 months" --last "2022-11-20 at 301.4 h" --now "512.6 h"',
      '[options] <file or folder> ...',
      '[options] --sheet SHEET < logs.jsonl > due.jsonl',
      '[options] <file.jsonl or -> [sheet] ...',
    ],
    help: `Prints every service of every machine with its verdict and reasons. With --every no document is needed: it prints whether one
service is due, from the manual's interval and the meter readings at the last service and now.

For fleets: JSON Lines from a file or standard input (-), with one machine log on each line. Prints one line of JSON for each line, in constant memory. For a line that cannot be read it prints findings and continues; the exit code is then 1. With --brief or --format csv it prints a short line for each service, with --format summary only the number of machines for each day and place.
Without a sheet each line is a flat row instead, one service with its limits:
  {"id":"m-1","lastDate":"2023-04-06","lastHours":310,"hours":402,"hoursDate":"2023-10-01","everyHours":100,"everyMonths":6}
A misspelt field gives a finding and the verdict "cannot tell"; other columns are ignored and listed at the end.`,
    example: 'due --every "250 h, 12 months" --last "2022-11-20 at 301.4 h" --now "2023-10-06 at 512.6 h"',
    options: [
      ...QUESTION_OPTIONS,
      'sheet',
      ...DUE_OPTIONS,
      'full',
      'brief',
      'exit-code',
      'language',
      'format',
    ],
    formats: ['json', 'csv', 'summary'],
    exitCodes: `0 every document and line was read, 1 findings in them, 2 usage error or a file that cannot be read;
with --exit-code, 3 or 4 instead of 0. With --every: 0 not due, 1 due or cannot tell; with --exit-code, 3 or 4 instead of 1.`,
  },
  plan: {
    summary:
      'plan one visit: what is due, oil, seals to buy, wrench settings, what is missing; with --full all figures and steps',
    usage: ['[options] <file or folder> ...'],
    help: 'Plans one visit to one machine and prints the answer: what is due, oil, settings, what is missing. With --full, prints the whole plan. Needs one log with its sheet; a toolbox and a stock are optional.',
    example: 'plan examples/tind-4 --today 2023-10-06 --ambient 6degC',
    options: [...PLAN_OPTIONS, 'full', 'level', 'language', 'format'],
    formats: ['json', 'sarif'],
    exitCodes: FINDINGS_EXIT_CODES,
  },
  card: {
    summary: 'write the plan as a card to --out: HTML, Markdown, text and a short card',
    usage: ['[options] --out FOLDER <file or folder> ...'],
    help: `Writes the visit as a card: <machine>.html, <machine>.md, <machine>.txt and <machine>-short.html.
With --paper wall it writes an undated card for the wall, <sheet>-<variant>-wall.html and .md, for each variant of each sheet among
the files, or with --machine for the machine of that log. A toolbox gives the wrench settings, a stock the viscosity of its oils.
The other papers are one page each, as HTML, Markdown and text: the next-due label (62 x 29 mm, both orientations) and the
lubrication chart of each machine, the blank record of its visit, the pick list for all machines of the day, and the differences
between the variants of each sheet.`,
    example: 'card examples/tind-4 --today 2023-10-06 --ambient 6degC --out out',
    options: ['out', 'paper', ...PLAN_OPTIONS, 'level', 'language', 'format'],
    formats: ['json', 'sarif'],
    exitCodes: FINDINGS_EXIT_CODES,
  },
  cues: {
    summary: 'print the cue sheet of a visit for a presenter, or write it with captions',
    usage: ['[options] <file or folder> ...', '[options] --out FOLDER <file or folder> ...'],
    help: `Prints a script, scene by scene: what to show, what to say and what to have on the screen. Then it lists the shots in the order of filming. With --out it writes <machine>-cues.html, .md and .txt, and WebVTT captions: one file with --starts, else one file per scene.`,
    example: 'cues examples/tind-4 --today 2023-10-06 --ambient 6degC --out out',
    options: ['out', 'starts', ...PLAN_OPTIONS, 'level', 'language', 'format'],
    formats: ['json', 'markdown', 'html', 'vtt'],
    overrides: { out: { help: 'folder for the cue sheet and the captions (created if missing)' } },
  },
  kits: {
    summary: 'list oil, seals and tools for each machine with a due service, and one order list for all',
    usage: ['[options] <file or folder> ...'],
    help: `Prints the oil, seals and tools to bring for each machine with a due service, and the order list: oil in the containers in which the
stock has it (a count of 0 states a size that is sold), with what is left over; no spares. With several days or vans, both are also by
day (when the first service is due) and van (the toolbox, else the stock or folder). Needs logs and their sheets.`,
    example: 'kits examples/tind-4 --today 2023-10-06',
    options: [...VISIT_OPTIONS, 'language', 'format'],
    formats: ['json'],
  },
  procedure: {
    summary: 'write out the steps of a visit, to edit and to use in plan, card and cues with --procedure',
    usage: [
      '[options] <file or folder> ...',
      '[options] --service ID <sheet>',
      '[options] --from OLD <sheet> ...',
    ],
    help: `Writes the built steps as YAML, with each line of the card as a comment above its steps. Needs a log with its sheet, or a sheet and
--service. With --from, updates an older procedure to the revision of the sheet: its order, ids and notes are kept, and only mistakes
are corrected. Lists removed, added and moved steps, notes without a step and, if the older revision of the sheet is among the
files, figures that changed.`,
    example: 'procedure examples/tind-4 --today 2023-10-06 --out own.yaml',
    options: ['out', 'from', ...VISIT_OPTIONS, 'level', 'language', 'format'],
    formats: ['json'],
    overrides: {
      out: {
        value: 'FILE',
        help: 'file to write, .yaml or .json; an existing file is not replaced (default: standard output)',
      },
      from: { value: 'OLD', help: 'older procedure to update to the revision of the sheet' },
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  repair: {
    summary: 'fix a procedure, dangerous mistakes first',
    usage: ['[options] [--out FILE] <file or folder> ...'],
    help: `Corrects a procedure with the fewest changes, or rebuilds it in the usual order if there are too many mistakes; notes and further
steps are kept. Prints dangerous mistakes first, then the others, each change with its neighbouring steps, and the remaining
mistakes. With --out, also writes the corrected procedure.`,
    example: 'repair procedure.json sheet.json --out corrected.json',
    options: ['out', 'level', 'language', 'format'],
    formats: ['json'],
    overrides: { out: { value: 'FILE', help: 'file for the corrected procedure' } },
  },
  compare: {
    summary: "compare two sheets, two procedures, or one sheet's variants",
    usage: ['[options] <file> <file>', '[options] <sheet>'],
    help: `Compares two sheets figure by figure, two procedures by their effect, or the variants of one sheet.
The exit code is 1 if they differ.`,
    example: 'compare examples/tind-4/sheet.yaml',
    options: ['format'],
    formats: ['json'],
  },
  record: {
    summary: 'append a service record to its log',
    usage: [
      '[options] --out LOG <record> <log> <sheet> [toolbox]',
      '--from-plan [options] --out RECORD <log> <sheet> [toolbox] [stock]',
      '--top-up "50 mL of NAME" --at GEARCASE [--on "DATE at 512.6 h"] --out LOG <log> <sheet> [stock]',
    ],
    help: `Appends a record of the work done, mistakes included, to the log of its machine, and writes the log to --out; without --out it
only checks. Reports mistakes, work that does not count as done, and open faults: the machine must not be used until a record
with "corrects" closes them. Refuses only a record that cannot be read or belongs to another machine. --from-plan writes a record
of the planned visit: replace each ?, and correct the entries that differ from the work. --top-up appends oil added between
services, and prints how much oil the gearcase loses.`,
    example: 'record record.json log.json sheet.json --out log.json',
    options: [
      'from-plan',
      'service',
      'sample',
      'ambient',
      'top-up',
      'at',
      'on',
      'out',
      'today',
      'level',
      'language',
      'format',
    ],
    formats: ['json', 'sarif'],
    overrides: {
      out: {
        value: 'LOG',
        help: 'file for the log with the new record or top-up, or for the record of a plan',
      },
      at: { value: 'front', help: 'with --top-up: id of the gearcase, such as front or "hub left"' },
      service: { help: 'with --from-plan: include this service, due or not; may be repeated' },
      ambient: { help: 'with --from-plan: ambient temperature, for the choice of oil' },
      today: { help: "report a record after this day (default: this machine's clock)" },
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  history: {
    summary: 'print the records and top-ups of a machine, with corrections, open faults and lost oil',
    usage: ['[options] <log> <sheet>'],
    help: `Prints the open faults and the gearcases that lose oil, then every record of the log with its work, work that does not count (and
why) and corrections, then the top-ups. With --format csv it prints the meter readings as a table, which import reads.`,
    example: 'history examples/tind-4',
    options: ['machine', 'today', 'language', 'format'],
    formats: ['csv'],
    overrides: { today: { help: "report a record after this day (default: this machine's clock)" } },
  },
  slip: {
    summary: "write the owner's slip after a visit: faults, work, findings and next services",
    usage: ['[options] <log> <sheet> [toolbox]', '[options] <folder>'],
    help: `Prints one page for the owner: open faults, then work done, findings, work not done, the next due date of each service, and oil
samples without a result. Corrections are applied. A record among the files that is not yet in the log is included.`,
    example: 'slip examples/tind-4 --today 2023-10-06 --out slip.html',
    options: ['record', 'out', ...DUE_OPTIONS, 'language', 'format'],
    formats: ['markdown', 'html', 'json'],
    overrides: {
      out: {
        value: 'FILE',
        help: 'file to write, .txt, .md, .html or .json (default: standard output)',
      },
      today: { help: "the day on which the next services are judged (default: this machine's clock)" },
    },
    exitCodes:
      '0 printed, even with open faults, 1 a document has errors, 2 usage error or a file that cannot be read.',
  },
  'used-oil': {
    summary: 'add up the used oil handed over, by recipient',
    usage: ['[options] <log or folder> ...'],
    help: `Prints the used oil of all records in litres: the total, by recipient, and line by line. Oil kept apart, oil without a receipt
and lines without a volume are marked; for lines without a volume the drained oil is shown, but not added.`,
    example: 'used-oil examples/tind-4 --since 2023-01-01 --until 2023-12-31',
    options: ['machine', 'since', 'until', 'language', 'format'],
    formats: ['json', 'csv'],
  },
  import: {
    summary: 'add meter readings from telematics (ISO/TS 15143-3) or tables (CSV) to logs',
    usage: [
      '[options] --out LOG <telematics.json> <log>',
      '[options] --out FOLDER <telematics.json or table.csv> ... <log or folder> ...',
    ],
    help: `Adds a maker's hours and distances (JSON as in ISO/TS 15143-3) to a log, one reading for each day. Days that already have a
reading in the log are skipped; a meter that the log does not have is added. Without --out, only prints the number of new readings.
For a fleet, several files (pages) and tables are added to many logs, found by id, serial number or PIN, and written to the folder
--out. A table has a machine and a day on each row, in columns machine, date, hours and distance [km]; the unit is in the name of the
column or in a second header row. A machine without a log gets one if the table has a column sheet (also revision, name, variant,
serial, commissioned). A column entry, in short notation, adds records. With a bad cell, nothing is written.`,
    example: 'import telematics.json examples/tind-4/log.yaml --out log.json',
    options: ['out', 'equipment', 'telematics', 'decimal', 'today', 'level', 'language', 'format'],
    formats: ['json', 'sarif'],
    overrides: {
      out: { value: 'LOG', help: 'file for the log with the readings; for a fleet, folder for the logs' },
      today: { help: "report readings after this day (default: this machine's clock)" },
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  convert: {
    summary: 'convert one quantity to another unit, correctly rounded',
    usage: ['"8.9 lbf·ft" --to N.m [--assume us|imperial]'],
    help: `Reads one quantity, tolerance or range as people write it, and prints it in another unit: the correctly rounded number, and the figure to print beside the original (limits are rounded inward). Ambiguous text is an error that lists its possible meanings.`,
    example: 'convert "1 qt" --to L --assume us',
    options: ['to', 'assume', 'format'],
    formats: ['json'],
  },
  torque: {
    summary: 'find the setting of a torque wrench and the actual torque',
    usage: ['"9.3 lbf·ft" --wrench "40–200 lbf·in by 1" [options]'],
    help: 'Prints the mark to set on this wrench, the actual torque with the wrench error, and the reasons.',
    example: 'torque "9.3 lbf·ft" --wrench "40–200 lbf·in by 1" --accuracy 4% --tolerance 5',
    options: ['wrench', 'accuracy', 'crowfoot', 'lever', 'tolerance', 'edition', 'format'],
    formats: ['json'],
    exitCodes: ANSWER_EXIT_CODES,
  },
  fill: {
    summary: 'find the marks on a jug for a refill',
    usage: ['"340 cc" --vessel "700 mL by 10" [--tolerance 5]'],
    help: 'Prints the number of pours, the mark for each, and the error.',
    example: 'fill "340 cc" --vessel "700 mL by 10" --tolerance 5',
    options: ['vessel', 'tolerance', 'format'],
    formats: ['json'],
    overrides: {
      tolerance: {
        help: 'permitted error of the refill in per cent (default: the tolerance of the quantity, if any)',
      },
    },
    exitCodes: ANSWER_EXIT_CODES,
  },
  pour: {
    summary: 'find how long oil takes to pour through a funnel and a hose',
    usage: ['"340 cc" --kv40 143 --kv100 15.1 --at "-5 °C" --hose "6 mm x 1 m" --funnel "120 mm x 100 mm"'],
    help: `Prints how long the refill takes to pour. The grade of an oil does not give its viscosity in the cold: take the two viscosities
from its data sheet.`,
    example:
      'pour "340 cc" --kv40 143 --kv100 15.1 --at "-5 °C" --hose "8 mm x 1 m" --funnel "120 mm x 100 mm"',
    options: ['kv40', 'kv100', 'at', 'hose', 'drop', 'funnel', 'format'],
    formats: ['json'],
    exitCodes: ANSWER_EXIT_CODES,
  },
  meets: {
    summary: "find whether an oil meets the manual's requirements",
    usage: ['"80W-90 GL-5" --manual "80W-90 GL-4" [options]'],
    help: 'Prints whether the manual permits an oil, judged by its label. Write an oil with two ratings as "80W-90 GL-4/GL-5".',
    example: 'meets "80W-90 GL-5" --manual "80W-90 GL-4" --yellow-metal yes',
    options: ['manual', 'yellow-metal', 'additive', 'ambient', 'format'],
    formats: ['json'],
    overrides: {
      ambient: { help: 'ambient temperature, if the manual limits the oil to a range (default: not known)' },
    },
    exitCodes: '0 yes, 1 no, cannot tell, or ask the maker, 2 usage error.',
  },
  washer: {
    summary: 'find whether a washer fits the thread of a plug',
    usage: ['"18 x 24 x 1.5 mm" --thread M18x1.5'],
    help: 'Compares the inside diameter, outside diameter and thickness of a sealing washer with the thread.',
    example: 'washer "18 x 22 x 1.5 mm" --thread M18x1.5',
    options: ['thread', 'format'],
    formats: ['json'],
    exitCodes: ANSWER_EXIT_CODES,
  },
  schema: {
    summary: 'print the JSON Schema of a kind of document or result',
    usage: ['<kind>'],
    help: `Prints the JSON Schema of a document: spec-sheet, machine-log, toolbox, stock, procedure or service-record; or of a result: visit-plan,
due-line, service-card or finding.`,
    example: 'schema spec-sheet',
    options: ['format'],
    formats: ['json'],
  },
  completion: {
    summary: 'print a completion script for bash, zsh or fish',
    usage: ['bash|zsh|fish'],
    help: `Prints a script that completes commands, options and files. Load it from your shell's start file:
  bash: source <(drivetrain-service completion bash)
  zsh:  source <(drivetrain-service completion zsh)
  fish: drivetrain-service completion fish | source`,
    example: 'completion bash',
    options: [],
    formats: [],
  },
} as const satisfies { readonly [name: string]: CommandRow }

export type CommandName = keyof typeof COMMAND_TABLE

export const COMMAND_NAMES = Object.keys(COMMAND_TABLE) as readonly CommandName[]

export function isCommand(name: string): name is CommandName {
  return Object.hasOwn(COMMAND_TABLE, name)
}
