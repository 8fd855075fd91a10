/** Options that several commands share. */
const LEVEL_OPTION = `
  --level LEVEL          error, warning or info: findings at or above it give exit code 1 (default warning)`
const format = (...others: readonly string[]): string => `
  --format FORMAT        ${['text', ...others].join(', ').replace(/, ([a-z]+)$/, ' or $1')} (default text)`
const FINDING_OPTIONS = `${LEVEL_OPTION}${format('json', 'sarif')}

Exit code: 0 no finding at or above the level, 1 findings, 2 usage error or a file that cannot be read.`

const DUE_OPTIONS = `
  --today 2023-10-06     the day of the visit (default: this machine's clock)
  --machine ID           id of the log, if there are several
  --severity USE         which intervals apply, normal or severe (default: "use" of the log, else normal)
  --soon-hours 10        due soon: this many hours of use before (default 10)
  --soon-km 100          due soon: this many kilometres before (default 100)
  --soon-days 14         due soon: this many days before (default 14)
  --stale-days 30        days after which a reading is too old for "not due" (default 30)`

const VISIT_OPTIONS = `${DUE_OPTIONS}
  --ambient 6degC        ambient temperature, for the oil and the pouring times (default: not known)
  --service ID           do this service, due or not; may be repeated (default: all that are due or due soon)
  --edition YEAR         where a wrench's range starts: 2017 at its lowest mark, 2003 at 20 % of full scale (default 2017)
  --tolerance PERCENT    your tolerance for torques that the manual prints without one (default: the wrench's own error)`

/** The help texts, by command. */
export const HELP = {
  overview: `drivetrain-service: plans gear oil services from a spec sheet

Usage: drivetrain-service <command> [options] <file or folder> ...

  check     report errors in documents
  due       list the services that are due, and why
  plan      plan one visit: figures, steps, oil and seals to buy, wrench settings, waits, unknown facts
  card      write the plan as a card: HTML, Markdown, text and a short card, into --out
  cues      print a cue list for a presenter, as text or WebVTT
  kits      list oil, seals and tools for each due machine, and one order list for all
  repair    fix a procedure with the fewest changes
  compare   compare two sheets, two procedures, or one sheet's variants
  record    check a finished record and append it to its log
  import    add a maker's telematics readings (ISO/TS 15143-3) to a log
  convert   convert one quantity to another unit, exactly rounded
  schema    print the JSON Schema of a kind of document

Files are JSON or YAML; - is standard input. Several files are one set: a log finds its sheet among them by id and revision.
Each folder is a set of its own. Patterns (*, ? and **) work in quotes too; with ** the files of each folder are a set.
For details: drivetrain-service <command> --help. The machine's own manual always comes first.
`,
  commands: {
    check: `Usage: drivetrain-service check [options] <file, folder, pattern or -> ...

Reads documents and prints one finding for each error in them. In a folder, all folders below are read too, each as a set of
its own; hidden folders, links and node_modules are not searched. The last lines give the number of documents and folders that
were read and skipped (on standard error with --format json or sarif).

Options
  --today 2023-10-06     reports readings and records after this day (default: this machine's clock)${FINDING_OPTIONS}
`,
    due: `Usage: drivetrain-service due [options] <file or folder> ...
       drivetrain-service due [options] --sheet SHEET < logs.jsonl > due.jsonl
       drivetrain-service due [options] <file.jsonl or -> [sheet] ...

Prints every service of every machine with its verdict and the reasons.

For fleets: JSON Lines, from a file or standard input (-), one machine log on each line. Each line gives one line of JSON, in
constant memory. A line that cannot be read gives its findings, and reading continues; the exit code is then 1. Without a sheet
each line is a flat row instead, one service with its limits:
  {"id":"m-1","lastDate":"2023-04-06","lastHours":310,"hours":402,"hoursDate":"2023-10-01","everyHours":100,"everyMonths":6}
A misspelt field gives a finding, and its row is "cannot tell"; other columns are ignored and listed at the end.

Options
  --sheet SHEET          the sheet of the logs; may be repeated${DUE_OPTIONS}
  --exit-code            exit code 3 if a service is due or overdue; 4 if no service is, but one cannot be judged, or there are no services${format('json')}

Exit code: 0 every document and line could be read, 1 findings in them, 2 usage error or a file that cannot be read;
with --exit-code, 3 or 4 instead of 0.
`,
    plan: `Usage: drivetrain-service plan [options] <file or folder> ...

Plans one visit to one machine and prints it. Needs one log with its sheet; a toolbox and a stock are optional.

Options${VISIT_OPTIONS}${FINDING_OPTIONS}
`,
    card: `Usage: drivetrain-service card [options] --out FOLDER <file or folder> ...

Writes the visit as a card: <machine>.html, <machine>.md, <machine>.txt and <machine>-short.html.

Options
  --out FOLDER           folder for the cards (created if missing)${VISIT_OPTIONS}${FINDING_OPTIONS}
`,
    cues: `Usage: drivetrain-service cues [options] <file or folder> ...

Prints a presenter's pictures, words and screen texts, step by step.

Options${VISIT_OPTIONS}${LEVEL_OPTION}${format('json', 'vtt')}
`,
    kits: `Usage: drivetrain-service kits [options] <file or folder> ...

Prints oil, seals and tools to bring for each machine with a service due, and one order list for all. Needs logs and their sheets.

Options${VISIT_OPTIONS}${format('json')}
`,
    repair: `Usage: drivetrain-service repair [options] [--out FILE] <file or folder> ...

Finds the fewest changes that make a procedure valid and prints them; with --out also writes the corrected procedure.

Options
  --out FILE             file for the corrected procedure${LEVEL_OPTION}${format('json')}
`,
    compare: `Usage: drivetrain-service compare [options] <file> <file>
       drivetrain-service compare [options] <sheet>

Compares two sheets figure by figure, or two procedures by their effect; with one sheet, its variants.
Exit code 1 when they differ.

Options${format('json')}
`,
    record: `Usage: drivetrain-service record [options] --out LOG <record> <log> <sheet> [toolbox]

Checks a finished record against its sheet, log and toolbox. If it has no errors, appends it to the log and writes the log to
--out; without --out only checks.

Options
  --out LOG              file for the log with the record
  --today 2023-10-06     reports a record after this day (default: this machine's clock)${FINDING_OPTIONS}
`,
    import: `Usage: drivetrain-service import [options] --out LOG <telematics.json> <log.json>

Adds a maker's hours and distances (JSON in the shape of ISO/TS 15143-3) to a log, one reading for each day. Days that already
have a reading in the log are skipped. Without --out only prints the number of new readings.

Options
  --out LOG              file for the log with the readings
  --equipment NUMBER     which machine, by its id, serial number or PIN (default: the log's serial number)
  --telematics YEAR      edition of the file, 2016 or 2020 (default 2020)
  --today 2023-10-06     reports readings after this day (default: this machine's clock)${FINDING_OPTIONS}
`,
    convert: `Usage: drivetrain-service convert "8.9 lbf·ft" --to N.m [--assume us|imperial]

Reads one quantity, tolerance or range as people write it and prints it in another unit: the exactly rounded number, and
the second figure to print (limits rounded inward). Ambiguous text is refused, with its possible meanings.

Options
  --to N.m               the unit, as in documents or as people write it
  --assume SYSTEM        us or imperial gallons, quarts, pints and fluid ounces (default: refused)${format('json')}
`,
    schema: `Usage: drivetrain-service schema <kind>

Prints the JSON Schema of spec-sheet, machine-log, toolbox, stock, procedure or service-record.

Options${format('json')}
`,
  },
} as const
