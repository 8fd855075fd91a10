/** One option of the command line, as help, completions and the reader of words know it. */
export interface OptionRow {
  /** What follows it in help, such as `LEVEL`; absent: it takes no value. */
  readonly value?: string
  readonly help: string
  /** The only values, where there are few. */
  readonly words?: readonly string[]
  /** It may be repeated. */
  readonly isRepeatable?: true
  /** Its value is a file or a folder. */
  readonly isPath?: true
}

/** Every option of every command. A command may put its own value and help in place of these. */
export const OPTION_TABLE = {
  level: {
    value: 'LEVEL',
    help: 'error, warning or info: findings at or above it give exit code 1 (default warning)',
    words: ['error', 'warning', 'info'],
  },
  format: { value: 'FORMAT', help: 'how to print the answer' },
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
  'soon-hours': { value: '10', help: 'due soon: this many hours of use before (default 10)' },
  'soon-km': { value: '100', help: 'due soon: this many kilometres before (default 100)' },
  'soon-days': { value: '14', help: 'due soon: this many days before (default 14)' },
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
  'labour-rate': { value: '"65 EUR"', help: 'what an hour of work costs, for the cost of the labour' },
  'times-from': {
    value: 'LOG',
    help: 'log or folder of other machines of this sheet: their records of the same work say how long it takes; may be repeated',
    isRepeatable: true,
    isPath: true,
  },
  out: { value: 'FOLDER', help: 'folder for the cards (created if missing)', isPath: true },
  procedure: {
    value: 'FILE',
    help: 'your own steps in place of the built ones; its services are done',
    isPath: true,
  },
  to: { value: 'N.m', help: 'the unit, as in documents or as people write it' },
  assume: {
    value: 'SYSTEM',
    help: 'us or imperial gallons, quarts, pints and fluid ounces (default: refused)',
    words: ['us', 'imperial'],
  },
  sheet: { value: 'SHEET', help: 'the sheet of the logs; may be repeated', isRepeatable: true, isPath: true },
  gearcases: { value: 'front,rear', help: 'ids of the gearcases of the sheet (default rear)' },
  variants: { value: 'short,long', help: 'ids of the variants of the machine of the sheet' },
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
  'from-plan': { help: 'write the record of the visit that is due, to be filled in and changed' },
  'top-up': {
    value: '"50 mL of NAME"',
    help: 'append oil that was added between services: how much of which oil; needs --at',
  },
  on: {
    value: '"DATE at 512.6 h"',
    help: 'with --top-up: the day, and what the meters showed (default: today)',
  },
  'exit-code': {
    help: 'exit code 3 if a service is due or overdue, or the machine is not to be used; 4 if no service is, but one cannot be judged, or there are no services',
  },
  every: {
    value: '"250 h, 12 months"',
    help: "the manual's interval: hours, distance and period, or some of them",
  },
  last: {
    value: '"DATE at 301.4 h"',
    help: 'date and meters of the last service, such as "2022-11-20 at 301.4 h, 1200 mi"',
  },
  'from-new': { value: 'DATE', help: 'never serviced: the day of first use, in place of --last' },
  now: { value: '"DATE at 512.6 h"', help: 'date and meters now; without a date today' },
  first: { value: '"50 h"', help: 'the first interval, if the manual gives another one' },
  window: { value: '"25 h"', help: 'how late the service may be before it is overdue' },
  severe: { value: '"factor 0.5"', help: 'severe use: a factor, or an interval such as "100 h"' },
  wrench: { value: '"40–200 lbf·in by 1"', help: 'the scale of the wrench: range and step between marks' },
  accuracy: {
    value: '4%',
    help: 'error of the wrench, of reading, or "2% of full scale" (default: what ISO 6789 permits)',
  },
  crowfoot: {
    value: '"22 mm"',
    help: 'a crowfoot straight ahead: from square drive to centre of the fastener; needs --lever',
  },
  lever: { value: '"250 mm"', help: 'from the square drive of the wrench to the middle of the grip' },
  vessel: { value: '"700 mL by 10"', help: 'the jug: its highest mark and the step between marks' },
  kv40: { value: '143', help: 'viscosity of the oil at 40 °C in mm²/s (cSt), from its data sheet' },
  kv100: { value: '15.1', help: 'the same at 100 °C' },
  at: { value: '"-5 °C"', help: 'temperature of the oil' },
  hose: { value: '"6 mm x 1 m"', help: 'bore and length of the hose' },
  drop: {
    value: '"0.8 m"',
    help: "height of the funnel's bottom over the hose's lower end (default: the hose hangs straight)",
  },
  funnel: {
    value: '"120 mm x 100 mm"',
    help: 'diameter at the top and depth of the funnel; a cone unless it begins with cylinder',
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
