/** One option of the command line, for help, completions and parsing; its meaning is in `message/`. */
export interface OptionRow {
  /** The value in help, such as `LEVEL`; absent if the option has no value. */
  readonly value?: string
  /** All values, if there are few. */
  readonly words?: readonly string[]
  /** Whether it may be repeated. */
  readonly isRepeatable?: true
  /** Whether its value is a file or a folder. */
  readonly isPath?: true
}

/** Every option of every command. A command may have another value in its help. */
export const OPTION_TABLE = {
  level: {
    value: 'LEVEL',
    words: ['error', 'warning', 'info'],
  },
  format: { value: 'FORMAT' },
  language: { value: 'en', words: ['de', 'en', 'es', 'fr'] },
  today: { value: '2023-10-06' },
  since: { value: '2023-01-01' },
  until: { value: '2023-12-31' },
  ambient: { value: '6degC' },
  machine: { value: 'ID' },
  service: {
    value: 'ID',
    isRepeatable: true,
  },
  sample: {
    value: 'GEARCASE',
    isRepeatable: true,
  },
  severity: {
    value: 'USE',
    words: ['normal', 'severe'],
  },
  'soon-hours': { value: '10' },
  'soon-km': { value: '100' },
  'soon-days': { value: '14' },
  'stale-days': { value: '30' },
  edition: {
    value: 'YEAR',
    words: ['2017', '2003'],
  },
  tolerance: { value: 'PERCENT' },
  'raise-on': {
    value: 'WHAT',
    words: ['stands', 'ramps'],
  },
  'labour-rate': { value: '"65 EUR"' },
  'times-from': {
    value: 'LOG',
    isRepeatable: true,
    isPath: true,
  },
  out: { value: 'FOLDER', isPath: true },
  paper: {
    value: 'PAPER',
    words: ['visit', 'wall', 'label', 'chart', 'picks', 'differences', 'record'],
  },
  starts: { value: '"0:00, 0:27, 0:39"' },
  procedure: {
    value: 'FILE',
    isPath: true,
  },
  to: { value: 'N.m' },
  assume: {
    value: 'SYSTEM',
    words: ['us', 'imperial'],
  },
  sheet: { value: 'SHEET', isRepeatable: true, isPath: true },
  gearcases: { value: 'front,rear' },
  variants: { value: 'short,long' },
  unit: { value: 'lbf.ft' },
  from: { value: 'SHEET', isPath: true },
  equipment: { value: 'NUMBER' },
  telematics: {
    value: 'YEAR',
    words: ['2016', '2020'],
  },
  decimal: {
    value: 'MARK',
    words: ['point', 'comma'],
  },
  record: { value: 'ID' },
  'from-plan': {},
  'top-up': { value: '"50 mL of NAME"' },
  on: { value: '"DATE at 512.6 h"' },
  fix: {},
  'dry-run': {},
  baseline: {
    value: 'FILE',
    isPath: true,
  },
  'write-baseline': { value: 'FILE', isPath: true },
  quiet: {},
  full: {},
  brief: {},
  'exit-code': {},
  every: { value: '"250 h, 12 months"' },
  last: { value: '"DATE at 301.4 h"' },
  'from-new': { value: 'DATE' },
  now: { value: '"DATE at 512.6 h"' },
  first: { value: '"50 h"' },
  window: { value: '"25 h"' },
  severe: { value: '"factor 0.5"' },
  wrench: { value: '"40–200 lbf·in by 1"' },
  accuracy: { value: '4%' },
  crowfoot: { value: '"22 mm"' },
  lever: { value: '"250 mm"' },
  vessel: { value: '"700 mL by 10"' },
  kv40: { value: '143' },
  kv100: { value: '15.1' },
  at: { value: '"-5 °C"' },
  hose: { value: '"6 mm x 1 m"' },
  drop: { value: '"0.8 m"' },
  funnel: { value: '"120 mm x 100 mm"' },
  manual: { value: '"80W-90 GL-4"' },
  'yellow-metal': {
    value: 'yes|no',
    words: ['yes', 'no'],
  },
  additive: {
    value: 'yes|no',
    words: ['yes', 'no'],
  },
  thread: { value: 'M18x1.5' },
} as const satisfies { readonly [name: string]: OptionRow }

export type OptionName = keyof typeof OPTION_TABLE
