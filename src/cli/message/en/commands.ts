import type { CliWords } from '../cliWords.js'

const FINDINGS_EXIT_CODES =
  '0 no finding at or above the level, 1 findings, 2 usage error or a file that cannot be read.'
const ANSWER_EXIT_CODES = '0 yes, 1 no or cannot tell, 2 usage error.'

/** The help of each command in English. */
export const commands: CliWords['commands'] = {
  new: {
    summary: 'write a blank sheet, log, toolbox or stock to fill in',
    help: `Writes a document to fill in, as YAML with an example for each value. Even unfilled it has no errors and can be planned: missing
values are "not stated". Name the sheet of a log with --sheet. With --from, rewrites a full sheet in short notation. A sheet can be a table
for a spreadsheet, one row for each gearcase and opening: --format csv or --out sheet.csv writes it, --from sheet.csv reads it.`,
    options: {
      sheet: 'the sheet of the log',
      out: 'file to write, .yaml, .json or .csv; an existing file is not replaced (default: standard output)',
    },
    exitCodes: '0 written, 1 the given sheet has errors, 2 usage error, or the file exists.',
  },
  check: {
    summary: 'report errors in documents',
    help: `Reads documents and prints one finding for each error in them. Subfolders are read too, each as a separate set; hidden folders,
links and node_modules are not searched. The last lines give the numbers of documents and folders read and skipped (on standard
error with --format json or sarif). A mistake in three files or more is printed once, with its files.
With --fix it corrects the spelling of keys, names and figures and the order of two figures, where only one change is likely and no
new finding results. Logs, records and procedures are never changed. Compare each change with the manual.
With --write-baseline it accepts all findings of today; with --baseline it then reports only new ones.`,
    options: {
      today: "report readings and records after this day (default: this machine's clock)",
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  due: {
    summary: 'list the due services, with reasons',
    help: `Prints every service of every machine with its verdict and reasons. With --every no document is needed: it prints whether one
service is due, from the manual's interval and the meter readings at the last service and now.

For fleets: JSON Lines from a file or standard input (-), with one machine log on each line. Prints one line of JSON for each line, in constant memory. For a line that cannot be read it prints findings and continues; the exit code is then 1. With --brief or --format csv it prints a short line for each service, with --format summary only the number of machines for each day and place.
Without a sheet each line is a flat row instead, one service with its limits:
  {"id":"m-1","lastDate":"2023-04-06","lastHours":310,"hours":402,"hoursDate":"2023-10-01","everyHours":100,"everyMonths":6}
A misspelt field gives a finding and the verdict "cannot tell"; other columns are ignored and listed at the end.`,
    exitCodes: `0 every document and line was read, 1 findings in them, 2 usage error or a file that cannot be read;
with --exit-code, 3 or 4 instead of 0. With --every: 0 not due, 1 due or cannot tell; with --exit-code, 3 or 4 instead of 1.`,
  },
  plan: {
    summary:
      'plan one visit: what is due, oil, seals to buy, wrench settings, what is missing; with --full all figures and steps',
    help: 'Plans one visit to one machine and prints the answer: what is due, oil, settings, what is missing. With --full, prints the whole plan. Needs one log with its sheet; a toolbox and a stock are optional.',
    exitCodes: FINDINGS_EXIT_CODES,
  },
  card: {
    summary: 'write the plan as a card to --out: HTML, Markdown, text and a short card',
    help: `Writes the visit as a card: <machine>.html, <machine>.md, <machine>.txt and <machine>-short.html.
With --paper wall it writes an undated card for the wall, <sheet>-<variant>-wall.html and .md, for each variant of each sheet among
the files, or with --machine for the machine of that log. A toolbox gives the wrench settings, a stock the viscosity of its oils.
The other papers are one page each, as HTML, Markdown and text: the next-due label (62 x 29 mm, both orientations) and the
lubrication chart of each machine, the blank record of its visit, the pick list for all machines of the day, and the differences
between the variants of each sheet.`,
    exitCodes: FINDINGS_EXIT_CODES,
  },
  cues: {
    summary: 'print the cue sheet of a visit for a presenter, or write it with captions',
    help: 'Prints a script, scene by scene: what to show, what to say and what to have on the screen. Then it lists the shots in the order of filming. With --out it writes <machine>-cues.html, .md and .txt, and WebVTT captions: one file with --starts, else one file per scene.',
    options: {
      out: 'folder for the cue sheet and the captions (created if missing)',
    },
  },
  kits: {
    summary: 'list oil, seals and tools for each machine with a due service, and one order list for all',
    help: `Prints the oil, seals and tools to bring for each machine with a due service, and the order list: oil in the containers in which the
stock has it (a count of 0 states a size that is sold), with what is left over; no spares. With several days or vans, both are also by
day (when the first service is due) and van (the toolbox, else the stock or folder). Needs logs and their sheets.`,
  },
  procedure: {
    summary: 'write out the steps of a visit, to edit and to use in plan, card and cues with --procedure',
    help: `Writes the built steps as YAML, with each line of the card as a comment above its steps. Needs a log with its sheet, or a sheet and
--service. With --from, updates an older procedure to the revision of the sheet: its order, ids and notes are kept, and only mistakes
are corrected. Lists removed, added and moved steps, notes without a step and, if the older revision of the sheet is among the
files, figures that changed.`,
    options: {
      out: 'file to write, .yaml or .json; an existing file is not replaced (default: standard output)',
      from: 'older procedure to update to the revision of the sheet',
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  repair: {
    summary: 'fix a procedure, dangerous mistakes first',
    help: `Corrects a procedure with the fewest changes, or rebuilds it in the usual order if there are too many mistakes; notes and further
steps are kept. Prints dangerous mistakes first, then the others, each change with its neighbouring steps, and the remaining
mistakes. With --out, also writes the corrected procedure.`,
    options: {
      out: 'file for the corrected procedure',
    },
  },
  compare: {
    summary: "compare two sheets, two procedures, or one sheet's variants",
    help: `Compares two sheets figure by figure, two procedures by their effect, or the variants of one sheet.
The exit code is 1 if they differ.`,
  },
  record: {
    summary: 'append a service record to its log',
    help: `Appends a record of the work done, mistakes included, to the log of its machine, and writes the log to --out; without --out it
only checks. Reports mistakes, work that does not count as done, and open faults: the machine must not be used until a record
with "corrects" closes them. Refuses only a record that cannot be read or belongs to another machine. --from-plan writes a record
of the planned visit: replace each ?, and correct the entries that differ from the work. --top-up appends oil added between
services, and prints how much oil the gearcase loses.`,
    options: {
      out: 'file for the log with the new record or top-up, or for the record of a plan',
      at: 'with --top-up: id of the gearcase, such as front or "hub left"',
      service: 'with --from-plan: include this service, due or not; may be repeated',
      ambient: 'with --from-plan: ambient temperature, for the choice of oil',
      today: "report a record after this day (default: this machine's clock)",
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  history: {
    summary: 'print the records and top-ups of a machine, with corrections, open faults and lost oil',
    help: `Prints the open faults and the gearcases that lose oil, then every record of the log with its work, work that does not count (and
why) and corrections, then the top-ups. With --format csv it prints the meter readings as a table, which import reads.`,
    options: {
      today: "report a record after this day (default: this machine's clock)",
    },
  },
  slip: {
    summary: "write the owner's slip after a visit: faults, work, findings and next services",
    help: `Prints one page for the owner: open faults, then work done, findings, work not done, the next due date of each service, and oil
samples without a result. Corrections are applied. A record among the files that is not yet in the log is included.`,
    options: {
      out: 'file to write, .txt, .md, .html or .json (default: standard output)',
      today: "the day on which the next services are judged (default: this machine's clock)",
    },
    exitCodes:
      '0 printed, even with open faults, 1 a document has errors, 2 usage error or a file that cannot be read.',
  },
  'used-oil': {
    summary: 'add up the used oil handed over, by recipient',
    help: `Prints the used oil of all records in litres: the total, by recipient, and line by line. Oil kept apart, oil without a receipt
and lines without a volume are marked; for lines without a volume the drained oil is shown, but not added.`,
  },
  import: {
    summary: 'add meter readings from telematics (ISO/TS 15143-3) or tables (CSV) to logs',
    help: `Adds a maker's hours and distances (JSON as in ISO/TS 15143-3) to a log, one reading for each day. Days that already have a
reading in the log are skipped; a meter that the log does not have is added. Without --out, only prints the number of new readings.
For a fleet, several files (pages) and tables are added to many logs, found by id, serial number or PIN, and written to the folder
--out. A table has a machine and a day on each row, in columns machine, date, hours and distance [km]; the unit is in the name of the
column or in a second header row. A machine without a log gets one if the table has a column sheet (also revision, name, variant,
serial, commissioned). A column entry, in short notation, adds records. With a bad cell, nothing is written.`,
    options: {
      out: 'file for the log with the readings; for a fleet, folder for the logs',
      today: "report readings after this day (default: this machine's clock)",
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  convert: {
    summary: 'convert one quantity to another unit, correctly rounded',
    help: 'Reads one quantity, tolerance or range as people write it, and prints it in another unit: the correctly rounded number, and the figure to print beside the original (limits are rounded inward). Ambiguous text is an error that lists its possible meanings.',
  },
  torque: {
    summary: 'find the setting of a torque wrench and the actual torque',
    help: 'Prints the mark to set on this wrench, the actual torque with the wrench error, and the reasons.',
    exitCodes: ANSWER_EXIT_CODES,
  },
  fill: {
    summary: 'find the marks on a jug for a refill',
    help: 'Prints the number of pours, the mark for each, and the error.',
    options: {
      tolerance: 'permitted error of the refill in per cent (default: the tolerance of the quantity, if any)',
    },
    exitCodes: ANSWER_EXIT_CODES,
  },
  pour: {
    summary: 'find how long oil takes to pour through a funnel and a hose',
    help: `Prints how long the refill takes to pour. The grade of an oil does not give its viscosity in the cold: take the two viscosities
from its data sheet.`,
    exitCodes: ANSWER_EXIT_CODES,
  },
  meets: {
    summary: "find whether an oil meets the manual's requirements",
    help: 'Prints whether the manual permits an oil, judged by its label. Write an oil with two ratings as "80W-90 GL-4/GL-5".',
    options: {
      ambient: 'ambient temperature, if the manual limits the oil to a range (default: not known)',
    },
    exitCodes: '0 yes, 1 no, cannot tell, or ask the maker, 2 usage error.',
  },
  washer: {
    summary: 'find whether a washer fits the thread of a plug',
    help: 'Compares the inside diameter, outside diameter and thickness of a sealing washer with the thread.',
    exitCodes: ANSWER_EXIT_CODES,
  },
  schema: {
    summary: 'print the JSON Schema of a kind of document or result',
    help: `Prints the JSON Schema of a document: spec-sheet, machine-log, toolbox, stock, procedure or service-record; or of a result: visit-plan,
due-line, service-card or finding.`,
  },
  completion: {
    summary: 'print a completion script for bash, zsh or fish',
    help: `Prints a script that completes commands, options and files. Load it from your shell's start file:
  bash: source <(drivetrain-service completion bash)
  zsh:  source <(drivetrain-service completion zsh)
  fish: drivetrain-service completion fish | source`,
  },
}
