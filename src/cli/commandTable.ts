import type { OptionName } from './optionTable.js'

/** One command, for help and completions; its words are in `message/`. */
export interface CommandRow {
  /** The arguments after its name, one line for each form. */
  readonly usage: readonly string[]
  readonly example: string
  readonly options: readonly OptionName[]
  /** Values of `--format` besides text. */
  readonly formats: readonly string[]
  /** Values of options in help that differ from the option table. */
  readonly values?: { readonly [Name in OptionName]?: string }
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
export const COMMAND_TABLE = {
  new: {
    usage: ['sheet|toolbox|stock [options]', 'log [--sheet SHEET] [options]', '--from SHEET'],
    example: 'new --gearcases front,rear --unit lbf.ft --out sheet.yaml',
    options: ['gearcases', 'variants', 'unit', 'sheet', 'from', 'out', 'language', 'format'],
    formats: ['json', 'csv'],
    values: { out: 'FILE' },
  },
  check: {
    usage: ['[options] <file, folder, pattern or -> ...'],
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
  },
  due: {
    usage: [
      '--every "250 h, 12 months" --last "2022-11-20 at 301.4 h" --now "512.6 h"',
      '[options] <file or folder> ...',
      '[options] --sheet SHEET < logs.jsonl > due.jsonl',
      '[options] <file.jsonl or -> [sheet] ...',
    ],
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
  },
  plan: {
    usage: ['[options] <file or folder> ...'],
    example: 'plan examples/tind-4 --today 2023-10-06 --ambient 6degC',
    options: [...PLAN_OPTIONS, 'full', 'level', 'language', 'format'],
    formats: ['json', 'sarif'],
  },
  card: {
    usage: ['[options] --out FOLDER <file or folder> ...'],
    example: 'card examples/tind-4 --today 2023-10-06 --ambient 6degC --out out',
    options: ['out', 'paper', ...PLAN_OPTIONS, 'level', 'language', 'format'],
    formats: ['json', 'sarif'],
  },
  cues: {
    usage: ['[options] <file or folder> ...', '[options] --out FOLDER <file or folder> ...'],
    example: 'cues examples/tind-4 --today 2023-10-06 --ambient 6degC --out out',
    options: ['out', 'starts', ...PLAN_OPTIONS, 'level', 'language', 'format'],
    formats: ['json', 'markdown', 'html', 'vtt'],
  },
  kits: {
    usage: ['[options] <file or folder> ...'],
    example: 'kits examples/tind-4 --today 2023-10-06',
    options: [...VISIT_OPTIONS, 'language', 'format'],
    formats: ['json'],
  },
  procedure: {
    usage: [
      '[options] <file or folder> ...',
      '[options] --service ID <sheet>',
      '[options] --from OLD <sheet> ...',
    ],
    example: 'procedure examples/tind-4 --today 2023-10-06 --out own.yaml',
    options: ['out', 'from', ...VISIT_OPTIONS, 'level', 'language', 'format'],
    formats: ['json'],
    values: { out: 'FILE', from: 'OLD' },
  },
  repair: {
    usage: ['[options] [--out FILE] <file or folder> ...'],
    example: 'repair procedure.json sheet.json --out corrected.json',
    options: ['out', 'level', 'language', 'format'],
    formats: ['json'],
    values: { out: 'FILE' },
  },
  compare: {
    usage: ['[options] <file> <file>', '[options] <sheet>'],
    example: 'compare examples/tind-4/sheet.yaml',
    options: ['language', 'format'],
    formats: ['json'],
  },
  record: {
    usage: [
      '[options] --out LOG <record> <log> <sheet> [toolbox]',
      '--from-plan [options] --out RECORD <log> <sheet> [toolbox] [stock]',
      '--top-up "50 mL of NAME" --at GEARCASE [--on "DATE at 512.6 h"] --out LOG <log> <sheet> [stock]',
    ],
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
    values: { out: 'LOG', at: 'front' },
  },
  history: {
    usage: ['[options] <log> <sheet>'],
    example: 'history examples/tind-4',
    options: ['machine', 'today', 'language', 'format'],
    formats: ['csv'],
  },
  slip: {
    usage: ['[options] <log> <sheet> [toolbox]', '[options] <folder>'],
    example: 'slip examples/tind-4 --today 2023-10-06 --out slip.html',
    options: ['record', 'out', ...DUE_OPTIONS, 'language', 'format'],
    formats: ['markdown', 'html', 'json'],
    values: { out: 'FILE' },
  },
  'used-oil': {
    usage: ['[options] <log or folder> ...'],
    example: 'used-oil examples/tind-4 --since 2023-01-01 --until 2023-12-31',
    options: ['machine', 'since', 'until', 'language', 'format'],
    formats: ['json', 'csv'],
  },
  import: {
    usage: [
      '[options] --out LOG <telematics.json> <log>',
      '[options] --out FOLDER <telematics.json or table.csv> ... <log or folder> ...',
    ],
    example: 'import telematics.json examples/tind-4/log.yaml --out log.json',
    options: ['out', 'equipment', 'telematics', 'decimal', 'today', 'level', 'language', 'format'],
    formats: ['json', 'sarif'],
    values: { out: 'LOG' },
  },
  convert: {
    usage: ['"8.9 lbf·ft" --to N.m [--assume us|imperial]'],
    example: 'convert "1 qt" --to L --assume us',
    options: ['to', 'assume', 'language', 'format'],
    formats: ['json'],
  },
  torque: {
    usage: ['"9.3 lbf·ft" --wrench "40–200 lbf·in by 1" [options]'],
    example: 'torque "9.3 lbf·ft" --wrench "40–200 lbf·in by 1" --accuracy 4% --tolerance 5',
    options: ['wrench', 'accuracy', 'crowfoot', 'lever', 'tolerance', 'edition', 'language', 'format'],
    formats: ['json'],
  },
  fill: {
    usage: ['"340 cc" --vessel "700 mL by 10" [--tolerance 5]'],
    example: 'fill "340 cc" --vessel "700 mL by 10" --tolerance 5',
    options: ['vessel', 'tolerance', 'language', 'format'],
    formats: ['json'],
  },
  pour: {
    usage: ['"340 cc" --kv40 143 --kv100 15.1 --at "-5 °C" --hose "6 mm x 1 m" --funnel "120 mm x 100 mm"'],
    example:
      'pour "340 cc" --kv40 143 --kv100 15.1 --at "-5 °C" --hose "8 mm x 1 m" --funnel "120 mm x 100 mm"',
    options: ['kv40', 'kv100', 'at', 'hose', 'drop', 'funnel', 'language', 'format'],
    formats: ['json'],
  },
  meets: {
    usage: ['"80W-90 GL-5" --manual "80W-90 GL-4" [options]'],
    example: 'meets "80W-90 GL-5" --manual "80W-90 GL-4" --yellow-metal yes',
    options: ['manual', 'yellow-metal', 'additive', 'ambient', 'language', 'format'],
    formats: ['json'],
  },
  washer: {
    usage: ['"18 x 24 x 1.5 mm" --thread M18x1.5'],
    example: 'washer "18 x 22 x 1.5 mm" --thread M18x1.5',
    options: ['thread', 'language', 'format'],
    formats: ['json'],
  },
  schema: {
    usage: ['<kind>'],
    example: 'schema spec-sheet',
    options: ['language', 'format'],
    formats: ['json'],
  },
  completion: {
    usage: ['bash|zsh|fish'],
    example: 'completion bash',
    options: ['language'],
    formats: [],
  },
} as const satisfies { readonly [name: string]: CommandRow }

export type CommandName = keyof typeof COMMAND_TABLE

export const COMMAND_NAMES = Object.keys(COMMAND_TABLE) as readonly CommandName[]

export function isCommand(name: string): name is CommandName {
  return Object.hasOwn(COMMAND_TABLE, name)
}
