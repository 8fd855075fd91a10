import type { Reason } from '../../src/base/finding.js'
import type { PartName, PlannedFigure, PlannedStep, PlannedTightening } from '../../src/service/index.js'
import { planLines } from '../../src/service/planLines.js'
import type { Action, Leaf, Oils, SourceRef } from '../../src/v1/spec.js'
import type { JudgedPlan } from '../support/planExample.js'

/**
 * A visit plan written by hand, with every kind of thing that a card can show. Maker, model and every figure are
 * invented; the computed figures were calculated by hand (the calculation is next to them).
 */

const read = (page: string): SourceRef => ({ ref: 'manual', page, confidence: 'read' })
const noted = (text: string): Reason => ({ code: 'calendar/not-a-date', params: { text } })

const FRONT = 'front differential'
const HUB = 'hub reduction'
const at = (path: string, part?: string, gearcase?: string): PartName => ({
  path,
  ...(gearcase !== undefined && { gearcase }),
  ...(part !== undefined && { part }),
})
const FRONT_CASE = at('/gearcases/front', undefined, FRONT)
const FRONT_FILL = at('/gearcases/front/openings/fill', 'fill plug', FRONT)
const FRONT_DRAIN = at('/gearcases/front/openings/drain', 'drain plug', FRONT)
const SKID = at('/shields/skid', 'skid plate')
const COVER = at('/gearcases/rear/covers/back', 'rear cover', 'rear axle case')
const REAR_CASE = at('/gearcases/rear', undefined, 'rear axle case')
const HUB_LEFT: PartName = {
  ...at('/gearcases/hub/openings/plug', 'hub plug', HUB),
  instance: { id: 'left', name: 'left' },
  wheelMark: 'mark down',
}
const HUB_RIGHT: PartName = { ...HUB_LEFT, instance: { id: 'right', name: 'right' }, wheelMark: 'mark level' }

function stated(
  role: PlannedFigure['role'],
  leaf: PlannedFigure['leaf'],
  part: PartName,
  path: string,
  value: Leaf,
  page = '58',
) {
  const resolved = { kind: 'stated', value, trace: { path, source: read(page), reasons: [] } }
  return { role, leaf, part, path, resolved } as PlannedFigure
}

const OILS: Oils = {
  kind: 'oils',
  choices: [
    {
      kind: 'grade',
      grade: '80W-90',
      system: 'SAE J306',
      category: 'GL-5',
      ambient: { kind: 'limits', min: '-10', max: '45', unit: 'degC' },
      limitedSlip: 'not permitted',
    },
    { kind: 'maker fluid', name: 'Hallbrekka Winter Fluid 2', limitedSlip: 'either' },
  ],
}

const FIGURES: readonly PlannedFigure[] = [
  /* 0 */ {
    ...stated('refill', 'value', FRONT_CASE, '/gearcases/front/oilSpace/fill/drainAndRefill', {
      kind: 'nominal with tolerance',
      value: '450',
      minus: '20',
      plus: '20',
      unit: 'mL',
      printed: [{ kind: 'nominal', value: '0.5', unit: 'qt_us', asPrinted: '½' }],
    }),
    // 450 mL ÷ 28.4130625 mL = 15.8378 imperial fluid ounces
    computed: [{ kind: 'nominal', value: '15.8', unit: 'fl_oz_imp' }],
  },
  /* 1 */ stated('oils', 'oils', FRONT_CASE, '/gearcases/front/oilSpace/oils', OILS),
  /* 2 */ stated(
    'tightening',
    'tightening',
    at('/gearcases/front/openings/drain/tightening', 'drain plug', FRONT),
    '/gearcases/front/openings/drain/tightening',
    {
      kind: 'torque',
      torque: {
        kind: 'limits',
        min: '20',
        max: '25',
        unit: 'N.m',
        printed: [
          { kind: 'limits', min: '2.0', max: '2.5', unit: 'kgf.m' },
          { kind: 'limits', min: '15', max: '18', unit: 'lbf.ft' },
        ],
      },
      threadCondition: 'dry',
    },
    '60',
  ),
  /* 3 */ {
    role: 'tightening',
    leaf: 'tightening',
    part: at('/gearcases/front/openings/fill/tightening', 'fill plug', FRONT),
    path: '/gearcases/front/openings/fill/tightening',
    resolved: {
      kind: 'not stated',
      trace: { path: '/gearcases/front/openings/fill/tightening', reasons: [] },
    },
  },
  /* 4 */ stated(
    'seal',
    'seal',
    at('/gearcases/front/openings/drain/seals/0', 'drain plug', FRONT),
    '/gearcases/front/openings/drain/seals/0',
    {
      kind: 'crush washer',
      form: 'flat',
      material: 'aluminium',
      size: { inside: '14', outside: '18', thickness: '1.5', unit: 'mm' },
      replace: 'every opening',
      partNumber: 'HB-1418',
    },
    '60',
  ),
  /* 5 */ stated(
    'place',
    'place',
    at('/gearcases/front/openings/drain/place', 'drain plug', FRONT),
    '/gearcases/front/openings/drain/place',
    { kind: 'place', text: 'lowest point of the housing' },
    '59',
  ),
  /* 6 */ stated('drain temperature', 'value', FRONT_CASE, '/gearcases/front/drainTemperature', {
    kind: 'limits',
    min: '30',
    max: '50',
    unit: 'degC',
    printed: [{ kind: 'limits', min: '86', max: '122', unit: 'degF' }],
  }),
  /* 7 */ {
    role: 'refill',
    leaf: 'value',
    part: at('/gearcases/hub', undefined, HUB),
    path: '/gearcases/hub/oilSpace/fill/drainAndRefill',
    resolved: {
      kind: 'cannot tell',
      missing: ['serial', 'variant'],
      candidates: [
        {
          value: { kind: 'nominal', value: '300', unit: 'mL' },
          trace: { path: '/gearcases/hub/oilSpace/fill/drainAndRefill', source: read('71'), reasons: [] },
        },
        {
          value: { kind: 'nominal', value: '340', unit: 'mL' },
          trace: { path: '/overrides/0/set/0/to', reasons: [] },
        },
      ],
    },
  },
  /* 8 */ stated(
    'tightening',
    'tightening',
    at('/gearcases/hub/openings/plug/tightening', 'hub plug', HUB),
    '/gearcases/hub/openings/plug/tightening',
    {
      kind: 'turns',
      min: '2',
      max: '3',
      maxTorque: { kind: 'nominal', value: '45', unit: 'N.m' },
      threadCondition: 'sealant',
    },
    '72',
  ),
  /* 9 */ stated(
    'tightening',
    'tightening',
    at('/gearcases/rear/covers/back/bolts/tightening', 'rear cover', 'rear axle case'),
    '/gearcases/rear/covers/back/bolts/tightening',
    {
      kind: 'torque',
      stages: [{ kind: 'nominal', value: '15', unit: 'N.m' }],
      torque: { kind: 'nominal with tolerance', value: '30', minus: '2', plus: '3', unit: 'N.m' },
      thenAngle: { kind: 'nominal', value: '45', unit: 'deg' },
      threadCondition: 'oiled',
    },
    '80',
  ),
  /* 10 */ stated(
    'seal',
    'seal',
    at('/gearcases/rear/covers/back/seal', 'rear cover', 'rear axle case'),
    '/gearcases/rear/covers/back/seal',
    {
      kind: 'liquid gasket',
      product: 'station sealant 5',
      bead: { kind: 'nominal', value: '3', unit: 'mm' },
      cureBeforeOil: { kind: 'nominal', value: '1', unit: 'h' },
      replace: 'every opening',
    },
    '81',
  ),
  /* 11 */ stated(
    'interval',
    'interval',
    FRONT_CASE,
    '/services/change/intervals/repeat',
    {
      kind: 'interval',
      hours: '200',
      distance: { value: '2000', unit: 'km', printed: [{ value: '1200', unit: 'mi' }] },
      period: 'P12M',
    },
    '41',
  ),
  /* 12 */ stated(
    'mass',
    'value',
    at('/machine'),
    '/machine/mass',
    { kind: 'nominal', value: '640', unit: 'kg' },
    '9',
  ),
  /* 13 */ stated(
    'tightening',
    'tightening',
    at('/shields/skid/fasteners/tightening', 'skid plate'),
    '/shields/skid/fasteners/tightening',
    { kind: 'torque', torque: { kind: 'nominal', value: '12', unit: 'N.m' }, threadCondition: 'dry' },
    '57',
  ),
  /* 14 */ {
    role: 'tightening',
    leaf: 'tightening',
    part: at('/gearcases/rear/openings/fill/tightening', 'fill plug', 'rear axle case'),
    path: '/gearcases/rear/openings/fill/tightening',
    resolved: {
      kind: 'cannot tell',
      missing: ['modelYear'],
      candidates: [
        {
          value: {
            kind: 'torque',
            torque: { kind: 'limits', min: '34', unit: 'N.m' },
            threadCondition: 'dry',
          },
          trace: { path: '/a', reasons: [] },
        },
        { value: { kind: 'not stated', threadCondition: 'not stated' }, trace: { path: '/b', reasons: [] } },
      ],
    },
  },
  /* 15 */ stated('additive', 'value', REAR_CASE, '/gearcases/rear/oilSpace/oils/choices/0/additive/volume', {
    kind: 'nominal',
    value: '60',
    unit: 'mL',
  }),
  /* 16 */ stated(
    'place',
    'place',
    FRONT_CASE,
    '/gearcases/front/breather/place',
    { kind: 'place', text: 'hose end behind the headlamp' },
    '59',
  ),
  /* 17 */ stated(
    'seal',
    'seal',
    at('/gearcases/front/openings/fill/seals/0', 'fill plug', FRONT),
    '/gearcases/front/openings/fill/seals/0',
    {
      kind: 'o-ring',
      material: 'NBR',
      designation: '-214',
      size: { inside: '15.6', section: '1.78', unit: 'mm' },
      replace: 'on condition',
      partNumber: 'HB-1801',
    },
    '60',
  ),
]

const TIGHTENINGS: readonly PlannedTightening[] = [
  {
    part: FRONT_DRAIN,
    figure: '/figures/2',
    count: 1,
    verdict: 'fits',
    wrench: { id: 'small', name: 'small click wrench' },
    setting: { value: 22.5, unit: 'N.m' },
    // 22.5 ÷ 1.04 = 21.6346…, 22.5 ÷ 0.96 = 23.4375
    trueBand: { min: 21.634615384615383, max: 23.4375, unit: 'N.m' },
    drawing: {
      unit: 'N.m',
      stated: { low: 20, high: 25 },
      trueBand: { low: 21.634615384615383, high: 23.4375 },
      setting: 22.5,
    },
    reasons: [],
  },
  { part: FRONT_FILL, figure: '/figures/3', count: 1, verdict: 'cannot tell', reasons: [noted('no torque')] },
  { part: HUB_LEFT, figure: '/figures/8', count: 2, verdict: 'by turns', reasons: [] },
  {
    part: COVER,
    figure: '/figures/9',
    count: 10,
    verdict: 'fits with care',
    wrench: { id: 'half', name: 'half-inch click wrench' },
    // 22 lbf·ft = 29.8280947… N·m
    setting: { value: 22, unit: 'lbf.ft' },
    trueBand: { min: 28.6808, max: 31.0709, unit: 'N.m' },
    drawing: {
      unit: 'N.m',
      stated: { low: 28, aim: 30, high: 33 },
      trueBand: { low: 28.6808, high: 31.0709 },
      setting: 29.8280947,
    },
    reasons: [noted('near the lower mark')],
  },
  {
    part: SKID,
    figure: '/figures/13',
    count: 4,
    verdict: 'does not fit',
    reasons: [noted('below the lowest mark')],
  },
]

interface StepExtra extends Partial<Omit<PlannedStep, 'id' | 'do'>> {}

const step = (id: string, action: Action, extraFields: StepExtra = {}): PlannedStep => ({
  id,
  do: action,
  figures: {},
  cautions: [],
  minutes: 1,
  ...extraFields,
})

/** Each action at least once. */
const STEPS: readonly PlannedStep[] = [
  step('read', 'read the manual'),
  step('protect', 'wear protection'),
  step('warm', 'warm the oil', { figures: { front: '/figures/6' } }),
  step('park', 'park on level ground'),
  step('stop', 'stop the engine'),
  step('chock', 'chock the wheels', { part: at('/machine/axles/rear', 'rear axle') }),
  step('raise', 'raise the machine', {
    part: at('/machine/supports/front', 'both ends of the front cross tube'),
    figures: { mass: '/figures/12' },
    cautions: [{ code: 'procedure/caution-lifting', params: { signal: 'warning' } }],
  }),
  step('stands', 'set on stands', {
    part: at('/machine/supports/front', 'both ends of the front cross tube'),
  }),
  step('skid-off', 'remove shield', { part: SKID }),
  step('breather', 'clear the breather', { part: FRONT_CASE, figures: { place: '/figures/16' } }),
  step('clean-fill', 'clean around', { part: FRONT_FILL }),
  step('crack-fill', 'crack loose', {
    part: FRONT_FILL,
    note: 'The plug sits deep: use the long extension.',
  }),
  step('nip-fill', 'nip by hand', { part: FRONT_FILL }),
  step('pan', 'place the pan', { part: FRONT_DRAIN }),
  step('out-drain', 'take out', {
    part: FRONT_DRAIN,
    cautions: [{ code: 'procedure/caution-hot-oil', params: { signal: 'caution' } }],
  }),
  step('drain', 'let drain', { part: FRONT_DRAIN, wait: '/waits/1' }),
  step('oil-look', 'inspect the oil', { part: FRONT_CASE }),
  step('magnet', 'inspect the magnet', { part: FRONT_DRAIN }),
  step('magnet-wipe', 'clean the magnet', { part: FRONT_DRAIN }),
  step('old-seal', 'take off old seal', { part: FRONT_DRAIN, figures: { seal: '/figures/4' } }),
  step('face', 'wipe the seal face', { part: FRONT_DRAIN }),
  step('new-seal', 'fit new seal', { part: FRONT_DRAIN, figures: { seal: '/figures/4' } }),
  step('fit-drain', 'fit', { part: FRONT_DRAIN }),
  step('tight-drain', 'tighten', { part: FRONT_DRAIN, tightening: '/tightenings/0' }),
  step('measure', 'measure the oil', { part: FRONT_CASE, oil: '/oil/0', figures: { refill: '/figures/0' } }),
  step('pour', 'pour the oil', { part: FRONT_FILL, oil: '/oil/0' }),
  step('hose', 'wait for the hose', { part: FRONT_FILL, wait: '/waits/0' }),
  step('ring', 'inspect the seal', { part: FRONT_FILL, figures: { seal: '/figures/17' } }),
  step('tight-fill', 'tighten', { part: FRONT_FILL, tightening: '/tightenings/1' }),
  step('skid-on', 'refit shield', { part: SKID, tightening: '/tightenings/4' }),
  step('turn', 'turn the wheel', { part: HUB_LEFT }),
  step('measure-hub', 'measure the oil', { part: at('/gearcases/hub', undefined, HUB), oil: '/oil/1' }),
  step('level-hub', 'check the level', { part: HUB_RIGHT }),
  step('top-hub', 'top up', { part: HUB_RIGHT }),
  step('seal-hub', 'apply sealant', { part: HUB_LEFT }),
  step('tight-hub', 'tighten', { part: HUB_LEFT, tightening: '/tightenings/2' }),
  step('suck', 'suck out the oil', {
    part: at('/gearcases/rear/openings/fill', 'fill plug', 'rear axle case'),
  }),
  step('cover-off', 'take off cover', { part: COVER }),
  step('cover-bead', 'apply sealant', { part: COVER, figures: { seal: '/figures/10' } }),
  step('cover-on', 'fit cover', { part: COVER }),
  step('cover-tight', 'tighten cover', { part: COVER, tightening: '/tightenings/3' }),
  step('cover-cure', 'wait for the cure', { part: COVER, wait: '/waits/2' }),
  step('rear-add', 'add the additive', {
    part: REAR_CASE,
    oil: '/oil/2',
    figures: { additive: '/figures/15' },
  }),
  step('rear-tight', 'tighten', {
    part: at('/gearcases/rear/openings/fill', 'fill plug', 'rear axle case'),
    figures: { tightening: '/figures/14' },
  }),
  step('lower', 'lower the machine'),
  step('run', 'short run'),
  step('settle', 'let settle', { wait: '/waits/3' }),
  step('leaks', 'check for leaks'),
  step('wipe', 'wipe down'),
  step('used', 'take used oil away'),
  step('record', 'record'),
]

/**
 * The visit with all its features: a known variant, a torque that is not stated, a refill that cannot be determined.
 */
export const SKARNFELL_PLAN: JudgedPlan = {
  kind: 'visit-plan',
  version: '1.0',
  machine: {
    log: 'station-2',
    name: 'Station 2',
    make: 'Hallbrekka',
    model: 'Tind 4',
    type: 'small four-wheel-drive utility machine',
    sheet: { id: 'hallbrekka-tind-4', revision: '2023-03' },
    header: 'Invented demo data of the Skarnfell rescue station.',
    identity: { serial: 'TL00418', modelYear: 2021, market: 'north' },
    variant: { verdict: 'one', id: 'long', name: 'Tind 4 L, long bed', reasons: [] },
  },
  today: '2023-10-06',
  ambient: { value: 8, unit: 'degC' },
  severity: 'normal',
  readings: {
    hours: { value: 512.6, unit: 'h', date: '2023-10-04' },
    distance: { value: 14021, unit: 'km', date: '2023-10-04' },
  },
  due: [
    {
      service: 'change',
      serviceName: 'gear oil change',
      task: 'change',
      part: FRONT_CASE,
      verdict: 'overdue',
      dueBy: 'hours',
      taken: true,
      missing: [],
      reasons: [],
      lines: [
        {
          by: 'hours',
          verdict: 'overdue',
          from: { date: '2022-11-20', meter: { value: 301.4, unit: 'h' } },
          limit: { value: 200, unit: 'h' },
          // 512.6 − 301.4 = 211.2; 200 − 211.2 = −11.2
          used: { value: 211.2, unit: 'h' },
          left: { value: -11.2, unit: 'h' },
          duePoint: { meter: { value: 501.4, unit: 'h' } },
        },
        { by: 'distance', verdict: 'not tracked' },
        {
          by: 'period',
          verdict: 'due soon',
          from: { date: '2022-11-20' },
          limit: { period: 'P12M' },
          used: { value: 320, unit: 'd' },
          left: { value: 45, unit: 'd' },
          duePoint: { date: '2023-11-20' },
        },
      ],
    },
    {
      service: 'change',
      serviceName: 'gear oil change',
      task: 'change',
      part: REAR_CASE,
      verdict: 'due soon',
      dueBy: 'period',
      taken: true,
      missing: [],
      reasons: [],
      lines: [
        { by: 'period', verdict: 'due soon', limit: { period: 'P1Y6M2W1D' }, left: { value: 1, unit: 'd' } },
      ],
    },
    {
      service: 'check',
      serviceName: 'level check',
      task: 'check',
      part: { ...at('/gearcases/hub', undefined, HUB), instance: { id: 'left', name: 'left' } },
      verdict: 'cannot tell',
      taken: false,
      missing: [],
      reasons: [noted('no reading for 300 days')],
      lines: [],
    },
    {
      service: 'check',
      serviceName: 'level check',
      task: 'check',
      part: FRONT_CASE,
      verdict: 'not due',
      taken: false,
      missing: [],
      reasons: [],
      lines: [],
    },
  ],
  work: [
    { service: 'change', serviceName: 'gear oil change', task: 'change', part: FRONT_CASE, due: '/due/0' },
    { service: 'change', serviceName: 'gear oil change', task: 'change', part: REAR_CASE, due: '/due/1' },
    { service: 'check', serviceName: 'level check', task: 'check', part: HUB_LEFT, due: '/due/2' },
  ],
  figures: FIGURES,
  steps: STEPS,
  lines: planLines(STEPS),
  oil: [
    {
      part: FRONT_CASE,
      figure: '/figures/1',
      choice: 'SAE 80W-90, API GL-5',
      instances: 1,
      refill: '/figures/0',
      perInstance: { value: 450, unit: 'mL' },
      needed: { value: 450, unit: 'mL' },
      take: [
        {
          container: 'opened',
          name: 'US quart of gear oil 80W-90',
          volume: { value: 300, unit: 'mL' },
          opened: true,
        },
        {
          container: 'full',
          name: 'US quart of gear oil 80W-90',
          volume: { value: 150, unit: 'mL' },
          opened: false,
        },
      ],
      reasons: [],
    },
    {
      part: at('/gearcases/hub', undefined, HUB),
      figure: '/figures/1',
      instances: 2,
      refill: '/figures/7',
      take: [],
      reasons: [noted('which hub')],
    },
    {
      part: REAR_CASE,
      figure: '/figures/1',
      choice: 'SAE 80W-90, API GL-5',
      instances: 2,
      refill: '/figures/7',
      perInstance: { value: 1.1, unit: 'L' },
      needed: { value: 2.2, unit: 'L' },
      take: [],
      buy: {
        volume: { value: 2.2, unit: 'L' },
        // 3 × 0.946352946 L = 2.839… L
        containers: [{ size: { value: 1, unit: 'qt_us' }, count: 3 }],
      },
      additive: {
        name: 'friction additive',
        figure: '/figures/15',
        includedInRefill: false,
        order: 'additive first',
      },
      reasons: [noted('buy')],
    },
  ],
  seals: [
    {
      part: FRONT_DRAIN,
      figure: '/figures/4',
      seal: {
        kind: 'crush washer',
        form: 'flat',
        material: 'aluminium',
        size: { inside: '14', outside: '18', thickness: '1.5', unit: 'mm' },
        replace: 'every opening',
        partNumber: 'HB-1418',
      },
      replace: 'every opening',
      count: 1,
      stock: { id: 'washer-14', name: 'washer for M14', have: 3 },
      buy: 0,
      reasons: [],
    },
    {
      part: FRONT_FILL,
      figure: '/figures/17',
      seal: { kind: 'not stated' },
      replace: 'cannot tell',
      count: 1,
      buy: 1,
      reasons: [],
    },
    {
      part: COVER,
      figure: '/figures/10',
      seal: { kind: 'gasket', material: 'fibre sheet', replace: 'every opening' },
      replace: 'every opening',
      count: 1,
      buy: 1,
      reasons: [],
    },
  ],
  tightenings: TIGHTENINGS,
  tools: [
    {
      kind: 'socket',
      for: [FRONT_DRAIN],
      drive: { kind: 'internal hex', size: '8 mm' },
      have: { id: 'hex-8', name: '8 mm hex bit socket' },
      verdict: 'fits',
      reasons: [],
    },
    {
      kind: 'socket',
      for: [FRONT_FILL],
      drive: { kind: 'external hex', size: '22 mm' },
      verdict: 'missing',
      reasons: [noted('no such socket')],
    },
    {
      kind: 'vessel',
      for: [FRONT_CASE],
      have: { id: 'jug', name: '1 litre measuring jug' },
      verdict: 'fits',
      reasons: [],
    },
    { kind: 'pan', for: [], have: { id: 'pan', name: '6 litre drain pan' }, verdict: 'fits', reasons: [] },
  ],
  wrenches: { use: ['small', 'half', 'unknown'], reasons: [noted('get a small one')] },
  pan: {
    volume: { value: 2.65, unit: 'L' },
    have: { id: 'pan', name: '6 litre drain pan', size: { value: 6, unit: 'L' } },
    verdict: 'fits',
    reasons: [],
  },
  waits: [
    {
      kind: 'pour',
      part: FRONT_FILL,
      seconds: 372,
      parts: [
        { name: 'hose fills', seconds: 12 },
        { name: 'funnel empties', seconds: 300 },
        { name: 'hose empties', seconds: 60 },
      ],
      reasons: [],
    },
    { kind: 'drain', part: FRONT_DRAIN, reasons: [noted('no viscosity')] },
    { kind: 'cure', part: COVER, seconds: 3600, reasons: [] },
    { kind: 'settle', part: FRONT_CASE, seconds: 600, reasons: [] },
  ],
  consumables: [noted('rags')],
  cautions: [noted('the whole visit')],
  time: { minutes: 95, basis: 'house estimate', reasons: [] },
  usedOil: { volume: { value: 2.65, unit: 'L' }, reasons: [noted('used')] },
  missing: [
    {
      kind: 'not stated',
      part: FRONT_FILL,
      path: '/gearcases/front/openings/fill/tightening',
      reason: noted('torque of the fill plug'),
    },
    { kind: 'not kept', reason: noted('distance') },
  ],
  findings: [
    {
      code: 'calendar/not-a-date',
      severity: 'warning',
      document: { kind: 'machine-log' },
      path: '',
      params: { text: '2023-02-30' },
    },
    {
      code: 'calendar/not-a-date',
      severity: 'info',
      document: { kind: 'machine-log' },
      path: '',
      params: { text: 'x' },
    },
  ],
  sources: {
    manual: {
      title: 'Tind 4 workshop manual',
      document: 'workshop manual',
      edition: '3',
      date: '2021-02-01',
    },
    bulletin: { title: 'Bulletin 31-04', document: 'service bulletin' },
  },
}

/** The same visit to a machine whose serial number is not known. */
export const PLAN_WITHOUT_VARIANT: JudgedPlan = {
  ...SKARNFELL_PLAN,
  machine: {
    ...SKARNFELL_PLAN.machine,
    identity: {},
    variant: {
      verdict: 'cannot tell',
      missing: ['serial', 'variant'],
      candidates: [
        { id: 'short', name: 'Tind 4 S, short bed' },
        { id: 'long', name: 'Tind 4 L, long bed' },
      ],
      reasons: [noted('serial')],
    },
  },
}
