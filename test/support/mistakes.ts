import type { PatchOperation } from '../../src/base/applyPatch.js'

/** One mistake that people make, in an otherwise good closed set. */
export interface Mistake {
  readonly name: string
  /** Folder of the good example, and its files in the set. */
  readonly base: string
  readonly files: readonly string[]
  readonly edit:
    | { readonly file: string; readonly patch: readonly PatchOperation[] }
    /** For mistakes in the text itself, such as a key written twice. */
    | { readonly file: string; readonly text: readonly [from: string, to: string] }
  readonly command: 'check' | 'plan'
  readonly findings: readonly {
    readonly code: string
    readonly severity: 'error' | 'warning' | 'info'
    readonly path: string
  }[]
}

const ALL = ['sheet.json', 'log.json', 'toolbox.json', 'stock.json'] as const
const SHEET = ['sheet.json', 'log.json'] as const
const PROCEDURE = ['sheet.json', 'procedure.json'] as const
const RECORD = ['sheet.json', 'log.json', 'toolbox.json', 'stock.json', 'record.json'] as const

const FRONT = '/gearcases/front/openings'
const REAR = '/gearcases/rear/openings'

function sheetMistake(
  name: string,
  patch: readonly PatchOperation[],
  ...findings: Mistake['findings']
): Mistake {
  return {
    name,
    base: 'tind-4',
    files: SHEET,
    edit: { file: 'sheet.json', patch },
    command: 'check',
    findings,
  }
}

function textMistake(
  name: string,
  text: readonly [string, string],
  ...findings: Mistake['findings']
): Mistake {
  return {
    name,
    base: 'tind-4',
    files: ['sheet.json'],
    edit: { file: 'sheet.json', text },
    command: 'check',
    findings,
  }
}

function procedureMistake(
  name: string,
  base: string,
  patch: readonly PatchOperation[],
  ...findings: Mistake['findings']
): Mistake {
  return {
    name,
    base,
    files: PROCEDURE,
    edit: { file: 'procedure.json', patch },
    command: 'check',
    findings,
  }
}

function recordMistake(
  name: string,
  patch: readonly PatchOperation[],
  ...findings: Mistake['findings']
): Mistake {
  return {
    name,
    base: 'tind-4',
    files: RECORD,
    edit: { file: 'record.json', patch },
    command: 'check',
    findings,
  }
}

function logMistake(
  name: string,
  patch: readonly PatchOperation[],
  ...findings: Mistake['findings']
): Mistake {
  return {
    name,
    base: 'tind-4',
    files: SHEET,
    edit: { file: 'log.json', patch },
    command: 'check',
    findings,
  }
}

function planMistake(
  name: string,
  base: string,
  file: string,
  patch: readonly PatchOperation[],
  ...findings: Mistake['findings']
): Mistake {
  return { name, base, files: ALL, edit: { file, patch }, command: 'plan', findings }
}

const error = (code: string, path: string) => ({ code, severity: 'error', path }) as const
const warning = (code: string, path: string) => ({ code, severity: 'warning', path }) as const

/**
 * Mistakes in good examples, as JSON Patches on their full form, with the exact findings that each must give. Written
 * by hand for each mistake; `npm run generate` writes them to `examples/mistakes.json`.
 */
export const MISTAKES: readonly Mistake[] = [
  sheetMistake(
    'pound-inches-for-pound-feet',
    [{ op: 'replace', path: `${FRONT}/drain/tightening/torque/printed/1/unit`, value: 'lbf.in' }],
    error('quantity/second-unit-slip', `${FRONT}/drain/tightening/torque/printed/1`),
  ),
  sheetMistake(
    'kilogram-metres-read-as-newton-metres',
    [
      {
        op: 'replace',
        path: `${REAR}/drain/tightening/torque`,
        value: { kind: 'limits', min: '2.9', max: '3.5', unit: 'N.m' },
      },
    ],
    warning('torque/slip-at-plug', `${REAR}/drain/tightening/torque`),
  ),
  sheetMistake(
    'misprinted-second-unit',
    [{ op: 'replace', path: `${FRONT}/fill/tightening/torque/printed/1/value`, value: '23' }],
    warning('quantity/second-unit-disagrees', `${FRONT}/fill/tightening/torque/printed/1`),
  ),
  sheetMistake(
    'imperial-quart-for-us-quart',
    [
      {
        op: 'replace',
        path: '/gearcases/rear/oilSpace/fill/drainAndRefill/printed/0/value',
        value: '0.62',
      },
    ],
    error('quantity/second-unit-slip', '/gearcases/rear/oilSpace/fill/drainAndRefill/printed/0'),
  ),
  sheetMistake(
    'fill-and-drain-torques-swapped',
    [
      {
        op: 'replace',
        path: `${REAR}/fill/tightening/torque`,
        value: { kind: 'limits', min: '20', max: '25', unit: 'N.m' },
      },
      {
        op: 'replace',
        path: `${REAR}/drain/tightening/torque`,
        value: { kind: 'limits', min: '44', max: '48', unit: 'N.m' },
      },
    ],
    warning('torque/fill-and-drain-swapped', `${REAR}/fill/tightening/torque`),
  ),
  sheetMistake(
    'overrides-of-one-path',
    [
      {
        op: 'add',
        path: '/overrides/-',
        value: {
          when: { variants: ['long'] },
          set: [
            {
              kind: 'value',
              path: '/gearcases/rear/oilSpace/fill/drainAndRefill',
              to: { kind: 'nominal', value: '900', unit: 'mL' },
            },
          ],
        },
      },
    ],
    error('spec/overlapping-overrides', '/overrides/1/set/0'),
  ),
  sheetMistake(
    'serial-range-wrong-way-round',
    [
      {
        op: 'replace',
        path: '/machine/variants/short/when/serials',
        value: { prefix: 'TS', from: '09999', to: '00001' },
      },
    ],
    error('spec/serial-range-wrong', '/machine/variants/short/when/serials'),
  ),
  textMistake(
    'key-written-twice',
    ['"model": "Tind 4",', '"model": "Tind 4",\n    "model": "Tind 5",'],
    error('spec/duplicate-key', '/machine/model'),
  ),
  textMistake(
    'unknown-key-with-a-near-name',
    ['"drainTemperature"', '"drainTemprature"'],
    error('spec/unknown-key', '/gearcases/front/drainTemprature'),
  ),
  textMistake(
    'comma-for-a-decimal-point',
    ['"value": "8.9"', '"value": "8,9"'],
    error('spec/comma-decimal', '/shields/skid-plate/fasteners/tightening/torque/printed/1/value'),
  ),
  sheetMistake(
    'washer-of-another-thread',
    [
      {
        op: 'replace',
        path: `${FRONT}/drain/seals/0/size`,
        value: { inside: '16', outside: '20', thickness: '1.5', unit: 'mm' },
      },
    ],
    error('seal/washer-does-not-fit', `${FRONT}/drain/seals/0/size`),
  ),
  sheetMistake(
    'months-written-as-hours',
    [
      {
        op: 'replace',
        path: '/services/gear-oil-change/intervals/repeat',
        value: { kind: 'interval', hours: '4380' },
      },
    ],
    warning('spec/period-as-hours', '/services/gear-oil-change/intervals/repeat/hours'),
  ),
  sheetMistake(
    'first-longer-than-repeat',
    [{ op: 'replace', path: '/services/gear-oil-change/intervals/first/hours', value: '250' }],
    warning('interval/first-longer-than-repeat', '/services/gear-oil-change/intervals/first'),
  ),
  sheetMistake(
    'source-that-is-not-there',
    [{ op: 'replace', path: `${FRONT}/fill/tightening/source/ref`, value: 'manuel' }],
    error('spec/dangling-reference', `${FRONT}/fill/tightening/source/ref`),
  ),
  sheetMistake(
    'limits-wrong-way-round',
    [
      {
        op: 'replace',
        path: '/gearcases/front/drainTemperature',
        value: { kind: 'limits', min: '50', max: '30', unit: 'degC' },
      },
    ],
    error('spec/limits-reversed', '/gearcases/front/drainTemperature'),
  ),
  sheetMistake(
    'rubber-that-gear-oil-dissolves',
    [{ op: 'replace', path: `${FRONT}/fill/seals/0/material`, value: 'EPDM' }],
    error('seal/material-not-for-oil', `${FRONT}/fill/seals/0/material`),
  ),
  procedureMistake(
    'drain-before-the-fill-plug-is-cracked',
    'tind-4',
    [
      { op: 'move', from: '/steps/8', path: '/steps/13' },
      { op: 'move', from: '/steps/8', path: '/steps/13' },
    ],
    error('procedure/fill-not-cracked', '/steps/10'),
  ),
  procedureMistake(
    'forgotten-tightening',
    'tind-4',
    [{ op: 'remove', path: '/steps/54' }],
    error('procedure/drain-not-tightened', '/steps/55'),
  ),
  procedureMistake(
    'jack-as-support',
    'tind-4',
    [{ op: 'remove', path: '/steps/35' }],
    error('procedure/jack-as-support', '/steps/35'),
  ),
  procedureMistake(
    'oil-before-the-sealant-has-cured',
    'bud-3',
    [{ op: 'remove', path: '/steps/23' }],
    error('procedure/cover-not-cured', '/steps/24'),
  ),
  procedureMistake(
    'level-checked-on-a-slope',
    'tind-4',
    [{ op: 'remove', path: '/steps/68' }],
    error('procedure/machine-not-on-level-ground', '/steps/70'),
  ),
  procedureMistake(
    'hose-pulled-out-too-soon',
    'tind-4',
    [{ op: 'remove', path: '/steps/57' }],
    error('procedure/hose-not-empty', '/steps/59'),
  ),
  logMistake(
    'impossible-meter-reading',
    [{ op: 'replace', path: '/meters/hours/readings/5/value', value: 5126 }],
    error('interval/meter-jumps', '/meters/hours/readings/5'),
  ),
  logMistake(
    'reading-in-the-future',
    [{ op: 'add', path: '/meters/hours/readings/-', value: { date: '2099-11-06', value: 530 } }],
    error('log/date-in-the-future', '/meters/hours/readings/6/date'),
  ),
  logMistake(
    'variant-that-the-sheet-does-not-know',
    [{ op: 'replace', path: '/identity', value: { variant: 'medium' } }],
    error('spec/unknown-variant', '/identity/variant'),
  ),
  logMistake(
    'sheet-of-another-revision',
    [{ op: 'replace', path: '/sheet/revision', value: '2021-01' }],
    warning('spec/sheet-of-other-revision', '/sheet/revision'),
  ),
  recordMistake(
    'record-without-a-seal',
    [{ op: 'remove', path: '/entries/0/seals/0' }],
    error('record/seal-not-new', '/entries/0/seals'),
  ),
  recordMistake(
    'record-with-a-forgotten-plug',
    [{ op: 'remove', path: '/entries/1/tightened/1' }],
    error('record/plug-not-tightened', '/entries/1/opened/0'),
  ),
  recordMistake(
    'record-with-a-wrench-that-could-not',
    [{ op: 'replace', path: '/entries/0/tightened/1/tool', value: 'small-click' }],
    error('record/wrench-cannot-reach', '/entries/0/tightened/1'),
  ),
  recordMistake(
    'record-with-too-much-oil',
    [{ op: 'replace', path: '/entries/1/refilled/value', value: 520 }],
    error('record/refill-outside-tolerance', '/entries/1/refilled'),
  ),
  planMistake(
    'gl-5-for-gl-4-with-yellow-metal',
    'acre-26',
    'stock.json',
    [{ op: 'replace', path: '/containers/can-80w-90/oil/categories', value: ['GL-5'] }],
    warning('service/no-suitable-oil', '/containers'),
    warning('service/no-suitable-oil', '/containers'),
  ),
  planMistake(
    'wrench-out-of-range',
    'tind-4',
    'toolbox.json',
    [{ op: 'remove', path: '/wrenches/small-click' }],
    warning('service/no-wrench-fits', `${FRONT}/drain`),
    warning('service/no-wrench-fits', '/shields/skid-plate'),
  ),
  planMistake(
    'vessel-too-coarse',
    'tind-4',
    'toolbox.json',
    [{ op: 'replace', path: '/vessels/litre-jug/graduation/value', value: 100 }],
    warning('service/vessel-too-coarse', '/vessels/litre-jug'),
  ),
  planMistake(
    'pan-too-small',
    'tind-4',
    'toolbox.json',
    [{ op: 'replace', path: '/pans/drain-pan/size/value', value: 1.3 }],
    warning('service/pan-too-small', '/pans/drain-pan'),
  ),
  planMistake(
    'calibration-run-out',
    'tind-4',
    'toolbox.json',
    [{ op: 'replace', path: '/wrenches/half-inch-click/calibration/date', value: '2022-09-30' }],
    warning('service/calibration-expired', '/wrenches/half-inch-click/calibration/date'),
  ),
  planMistake(
    'stale-reading',
    'kvist-2',
    'log.json',
    [{ op: 'replace', path: '/meters/hours/readings/2/date', value: '2023-08-20' }],
    warning('service/reading-stale', '/meters/hours/readings'),
  ),
  planMistake(
    'stands-too-weak',
    'tind-4',
    'toolbox.json',
    [{ op: 'replace', path: '/stands/two-tonne/rating/value', value: 600 }],
    warning('service/stands-too-weak', '/stands/two-tonne'),
  ),
  planMistake(
    'no-socket-for-a-plug',
    'tind-4',
    'toolbox.json',
    [{ op: 'replace', path: '/sockets/socket-22/size', value: '21 mm' }],
    warning('service/socket-missing', '/sockets'),
  ),
]
