/** One option of the command line, for help, completions and parsing. */
export interface OptionRow {
  /** The value in help, such as `LEVEL`; absent if the option has no value. */
  readonly value?: string
  readonly help: string
  /** All values, if there are few. */
  readonly words?: readonly string[]
  /** Whether it may be repeated. */
  readonly isRepeatable?: true
  /** Whether its value is a file or a folder. */
  readonly isPath?: true
}

/** Every option of every command. A command may override its value and help. */
export const OPTION_TABLE = {
  level: {
    value: 'LEVEL',
    help: 'error, warning or info: findings at or above it give exit code 1 (default warning)',
    words: ['error', 'warning', 'info'],
  },
  format: { value: 'FORMAT', help: 'output format' },
  language: { value: 'en', help: 'language of cards, findings and reasons (default en)' },
  today: { value: '2023-10-06', help: "the day of the visit (default: this machine's clock)" },
  since: { value: '2023-01-01', help: 'the first day (default: all records)' },
  until: { value: '2023-12-31', help: 'the last day (default: all records)' },
  ambient: {
    value: '6degC',
    help: 'ambient temperature, for the oil and the pouring times (default: not known)',
  },
  machine: { value: 'ID', help: 'id of the log, if there are several' },
  service: {
    value: 'ID',
    help: 'do this service, due or not; may be repeated (default: all that are due or due soon)',
    isRepeatable: true,
  },
  sample: {
    value: 'GEARCASE',
    help: 'take an oil sample of this gearcase at its oil change; may be repeated',
    isRepeatable: true,
  },
  severity: {
    value: 'USE',
    help: 'which intervals apply, normal or severe (default: "use" of the log, else normal)',
    words: ['normal', 'severe'],
  },
  'soon-hours': { value: '10', help: 'a service is due soon from this many hours before (default 10)' },
  'soon-km': { value: '100', help: 'a service is due soon from this many kilometres before (default 100)' },
  'soon-days': { value: '14', help: 'a service is due soon from this many days before (default 14)' },
  'stale-days': { value: '30', help: 'days after which a reading is too old for "not due" (default 30)' },
  edition: {
    value: 'YEAR',
    help: "where a wrench's range starts: 2017 at its lowest mark, 2003 at 20 % of full scale (default 2017)",
    words: ['2017', '2003'],
  },
  tolerance: {
    value: 'PERCENT',
    help: "your tolerance for torques that the manual prints without one (default: the wrench's own error)",
  },
  'raise-on': {
    value: 'WHAT',
    help: 'stands or ramps (default: ramps only if the toolbox has no stands and the manual permits ramps)',
    words: ['stands', 'ramps'],
  },
  'labour-rate': { value: '"65 EUR"', help: 'labour rate per hour, for the labour cost' },
  'times-from': {
    value: 'LOG',
    help: 'log or folder of other machines of this sheet, whose records show how long the same work takes; may be repeated',
    isRepeatable: true,
    isPath: true,
  },
  out: { value: 'FOLDER', help: 'folder for the cards (created if missing)', isPath: true },
  paper: {
    value: 'PAPER',
    help: 'visit, wall, label, chart, picks, differences or record (default visit)',
    words: ['visit', 'wall', 'label', 'chart', 'picks', 'differences', 'record'],
  },
  starts: {
    value: '"0:00, 0:27, 0:39"',
    help: 'start of each scene in the film, for captions in one file (default: one file per scene)',
  },
  procedure: {
    value: 'FILE',
    help: 'your own procedure instead of the built steps; its services are planned',
    isPath: true,
  },
  to: { value: 'N.m', help: 'the unit, as in documents or as people write it' },
  assume: {
    value: 'SYSTEM',
    help: 'us or imperial gallons, quarts, pints and fluid ounces (default: an error)',
    words: ['us', 'imperial'],
  },
  sheet: { value: 'SHEET', help: 'the sheet of the logs; may be repeated', isRepeatable: true, isPath: true },
  gearcases: { value: 'front,rear', help: 'ids of the gearcases of the sheet (default rear)' },
  variants: { value: 'short,long', help: 'ids of the variants of the machine' },
  unit: {
    value: 'lbf.ft',
    help: 'units of the examples, one or several: lbf.ft,qt_us,mi,degF (default N.m,mL,km,degC)',
  },
  from: { value: 'SHEET', help: 'a sheet to rewrite in short notation', isPath: true },
  equipment: {
    value: 'NUMBER',
    help: "which machine, by its id, serial number or PIN (default: the log's serial number)",
  },
  telematics: {
    value: 'YEAR',
    help: 'edition of the file, 2016 or 2020 (default 2020)',
    words: ['2016', '2020'],
  },
  decimal: {
    value: 'MARK',
    help: 'decimal mark of the numbers in a table, point or comma (default point)',
    words: ['point', 'comma'],
  },
  record: { value: 'ID', help: 'id of the record of the visit (default: the last visit)' },
  'from-plan': { help: 'write a record of the due visit, to be completed and corrected' },
  'top-up': {
    value: '"50 mL of NAME"',
    help: 'append oil added between services: volume and oil; needs --at',
  },
  on: {
    value: '"DATE at 512.6 h"',
    help: 'with --top-up: date and meter readings (default: today)',
  },
  fix: {
    help: 'correct spelling and order in sheets, toolboxes and stocks, and print each change',
  },
  'dry-run': { help: 'with --fix: print the changes, write nothing' },
  baseline: {
    value: 'FILE',
    help: 'findings in this file are accepted: neither printed nor counted',
    isPath: true,
  },
  'write-baseline': { value: 'FILE', help: 'write all findings to this file, to accept them', isPath: true },
  quiet: { help: 'print only findings at or above the level, and no summary' },
  full: { help: 'print everything, not only the answer' },
  brief: {
    help: 'print one line of JSON per service: what governs, how much is left, due date; --format csv has the same columns',
  },
  'exit-code': {
    help: 'exit code 3 if a service is due or overdue, or a machine must not be used; 4 if none is due, but one cannot be judged or there are no services',
  },
  every: {
    value: '"250 h, 12 months"',
    help: "the manual's interval: hours, distance, period, or several of these",
  },
  last: {
    value: '"DATE at 301.4 h"',
    help: 'date and meter readings of the last service, such as "2022-11-20 at 301.4 h, 1200 mi"',
  },
  'from-new': { value: 'DATE', help: 'date of first use if never serviced, instead of --last' },
  now: { value: '"DATE at 512.6 h"', help: 'current date and meter readings (default date: today)' },
  first: { value: '"50 h"', help: 'the first interval, if it differs' },
  window: { value: '"25 h"', help: 'how late a service may be before it is overdue' },
  severe: { value: '"factor 0.5"', help: 'severe use: a factor, or an interval such as "100 h"' },
  wrench: { value: '"40–200 lbf·in by 1"', help: 'the scale of the wrench: range and step between marks' },
  accuracy: {
    value: '4%',
    help: 'error of the wrench, in per cent of reading, or "2% of full scale" (default: the permissible error of ISO 6789)',
  },
  crowfoot: {
    value: '"22 mm"',
    help: 'for a crowfoot in line with the wrench: distance from its square drive to the centre of the fastener; needs --lever',
  },
  lever: {
    value: '"250 mm"',
    help: 'distance from the square drive of the wrench to the middle of the grip',
  },
  vessel: { value: '"700 mL by 10"', help: 'the jug: highest mark and step between marks' },
  kv40: { value: '143', help: 'viscosity of the oil at 40 °C in mm²/s (cSt), from its data sheet' },
  kv100: { value: '15.1', help: 'the same at 100 °C' },
  at: { value: '"-5 °C"', help: 'temperature of the oil' },
  hose: { value: '"6 mm x 1 m"', help: 'bore and length of the hose' },
  drop: {
    value: '"0.8 m"',
    help: "height of the funnel's bottom above the hose's lower end (default: the hose hangs straight)",
  },
  funnel: {
    value: '"120 mm x 100 mm"',
    help: 'top diameter and depth of the funnel; a cone unless the text starts with "cylinder"',
  },
  manual: { value: '"80W-90 GL-4"', help: 'the oil that the manual permits' },
  'yellow-metal': {
    value: 'yes|no',
    help: 'whether the oil touches bronze or brass (default: not known)',
    words: ['yes', 'no'],
  },
  additive: {
    value: 'yes|no',
    help: 'whether the label names a limited-slip additive (default: not known)',
    words: ['yes', 'no'],
  },
  thread: { value: 'M18x1.5', help: 'the thread of the plug' },
} as const satisfies { readonly [name: string]: OptionRow }

export type OptionName = keyof typeof OPTION_TABLE
