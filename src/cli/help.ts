/** The options that several commands have. */
const LEVEL = `
  --level LEVEL          error, warning or info: findings at or above it make exit code 1 (default warning)`
const format = (...others: readonly string[]): string => `
  --format FORMAT        ${['text', ...others].join(', ').replace(/, ([a-z]+)$/, ' or $1')} (default text)`
const FINDINGS = `${LEVEL}${format('json', 'sarif')}

Exit code: 0 nothing at or above the level, 1 findings, 2 usage or a file that cannot be read.`

const DUE = `
  --today 2023-10-06     the day of the visit (default: this machine's clock)
  --machine ID           which log, where the files hold several
  --severity USE         which intervals hold, normal or severe (default: what the log's "use" says, else normal)
  --soon-hours 10        what counts as due soon: so many hours of use before (default 10),
  --soon-km 100          so many kilometres before (default 100),
  --soon-days 14         so many days before (default 14)
  --stale-days 30        a reading older than this never supports "not due" (default 30)`

const VISIT = `${DUE}
  --ambient 6degC        the day's temperature, for the oil and for the time it takes to run (default: not known)
  --service ID           take up this service, due or not; may be repeated (default: whatever is due or due soon)
  --edition YEAR         where a wrench's range starts: 2017 at its lowest mark, 2003 at 20 % of full scale (default 2017)`

/** What `help` prints, by command. */
export const HELP = {
  overview: `drivetrain-service: gear-oil service from a typed spec sheet

Usage: drivetrain-service <command> [options] <file or folder> ...

  check     what is wrong in documents as written
  due       which services are due, and by what
  plan      one visit: figures, steps, oil and seals to buy, wrench settings, waits, what is missing
  card      the same as a card to print: HTML, Markdown and a short card, into --out
  cues      a cue list for a presenter, as text or WebVTT
  kits      what to put in the van: oil, seals and tools of each due machine, and the order list of all
  repair    a writer's procedure with its smallest mend
  compare   two sheets, two procedures, or one sheet's variants
  record    check a finished record and append it to its log
  import    readings that a machine's maker sends (ISO/TS 15143-3), into its log
  convert   one quantity in another unit, exactly rounded
  schema    the JSON Schema of a kind of document

Files are JSON or YAML. Several files are one closed set: a log finds its sheet among them by id and revision.
Each folder is a closed set of its own.
"drivetrain-service <command> --help" says more. The machine's own manual comes first, always.
`,
  commands: {
    check: `Usage: drivetrain-service check [options] <file or folder> ...

Reads documents and prints everything that is wrong in them as written, one finding a mistake.

Options
  --today 2023-10-06     also finds readings and records after this day (default: this machine's clock)${FINDINGS}
`,
    due: `Usage: drivetrain-service due [options] <file or folder> ...
       drivetrain-service due [options] --sheet SHEET < logs.jsonl > due.jsonl
       drivetrain-service due [options] <file.jsonl> [sheet] ...

Prints every service of every machine with its state, and why.

Fleets come as JSON Lines, one machine log a line: each is answered with one line of JSON, in constant memory. A line
that cannot be read is answered with its findings and stops nothing; the exit code is then 1. A .jsonl file without a
sheet holds flat rows instead, one service a line, with their own limits.

Options
  --sheet SHEET          the sheet of the logs; may be repeated${DUE}${format('json')}
`,
    plan: `Usage: drivetrain-service plan [options] <file or folder> ...

Plans one visit to one machine and prints it. Needs one log with its sheet; a toolbox and a stock if there are any.

Options${VISIT}${FINDINGS}
`,
    card: `Usage: drivetrain-service card [options] --out FOLDER <file or folder> ...

Writes the visit as a card: <machine>.html, <machine>.md, <machine>.txt and <machine>-short.html.

Options
  --out FOLDER           where the cards go (made if missing)${VISIT}${FINDINGS}
`,
    cues: `Usage: drivetrain-service cues [options] <file or folder> ...

Prints what a presenter shows, says and puts on screen, step by step.

Options${VISIT}${LEVEL}${format('json', 'vtt')}
`,
    kits: `Usage: drivetrain-service kits [options] <file or folder> ...

Prints for each machine with something due what to take along, and one order list for all. Needs logs and their sheets.

Options${VISIT}${format('json')}
`,
    repair: `Usage: drivetrain-service repair [options] [--out FILE] <file or folder> ...

Finds the smallest mend of a writer's procedure, and prints the changes, or writes the mended procedure to --out.

Options
  --out FILE             where the mended procedure goes${LEVEL}${format('json')}
`,
    compare: `Usage: drivetrain-service compare [options] <file> <file>
       drivetrain-service compare [options] <sheet>

Compares two sheets leaf by leaf, or two procedures by what they bring about; one sheet alone: its variants.
Exit code 1 when they differ.

Options${format('json')}
`,
    record: `Usage: drivetrain-service record [options] --out LOG <record> <log> <sheet> [toolbox]

Checks a finished record against its sheet, log and toolbox. Without an error, appends it to the log and writes that to
--out; without --out only checks.

Options
  --out LOG              where the log goes with the record in it
  --today 2023-10-06     a record after this day is found (default: this machine's clock)${FINDINGS}
`,
    import: `Usage: drivetrain-service import [options] --out LOG <telematics.json> <log.json>

Adds the hours and distances that a machine's maker sends (JSON in the shape of ISO/TS 15143-3) to its log, one reading
a day; a day that the log has already stays as it is. Without --out only says what would be added.

Options
  --out LOG              where the log goes with the readings in it
  --equipment NUMBER     which machine of the answer, by its id, serial number or PIN (default: the log's serial number)
  --telematics YEAR      the edition that the sender follows, 2016 or 2020 (default 2020)
  --today 2023-10-06     readings after this day are found (default: this machine's clock)${FINDINGS}
`,
    convert: `Usage: drivetrain-service convert "8.9 lbf·ft" --to N.m [--assume us|imperial]

Reads one quantity, tolerance or range as people write it and prints it in another unit: the exactly rounded number, and
what to print beside the first figure (limits inward). Ambiguous texts are refused and the readings named.

Options
  --to N.m               the unit, by its name here or as people write it
  --assume WHOSE         whose gallons, quarts, pints and fluid ounces: us or imperial (default: neither; they are refused)${format('json')}
`,
    schema: `Usage: drivetrain-service schema <kind>

Prints the JSON Schema of spec-sheet, machine-log, toolbox, stock, procedure or service-record.

Options${format('json')}
`,
  },
} as const
