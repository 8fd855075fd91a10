import fc from 'fast-check'
import { buildProcedure } from '../../src/v1/procedure.js'
import type {
  Condition,
  Cover,
  FillMethod,
  Filter,
  Gearcase,
  Identity,
  Level,
  Opening,
  OpeningUse,
  ProcedureDocument,
  Seal,
  Service,
  SpecSheet,
  Tightening,
} from '../../src/v1/spec.js'

// Invented machines of the Skarnfell rescue station: every name and figure is invented, only for these tests.

export const WASHER: Seal = {
  kind: 'crush washer',
  form: 'flat',
  material: 'copper',
  replace: 'every opening',
}
export const O_RING: Seal = { kind: 'o-ring', material: 'NBR', replace: 'on condition' }
export const SEALANT: Seal = { kind: 'thread sealant', product: 'Tettmasse R', replace: 'every opening' }
const LIQUID_GASKET: Seal = {
  kind: 'liquid gasket',
  product: 'Flatpakning 5',
  bead: { kind: 'nominal', value: '3', unit: 'mm' },
  cureBeforeOil: { kind: 'nominal', value: '2', unit: 'h' },
  replace: 'every opening',
}
const PAPER_GASKET: Seal = { kind: 'gasket', material: 'paper', replace: 'every opening' }

const TORQUE: Tightening = {
  kind: 'torque',
  torque: { kind: 'nominal', value: '35', unit: 'N.m' },
  threadCondition: 'dry',
}
export const TURNS: Tightening = { kind: 'turns', min: '2', max: '3', threadCondition: 'sealant' }

export function makeOpening(name: string, uses: readonly OpeningUse[], more: Partial<Opening> = {}): Opening {
  return {
    name,
    uses,
    drive: { kind: 'internal hex', size: '10 mm' },
    tightening: TORQUE,
    seals: [WASHER],
    place: { kind: 'not stated' },
    ...more,
  }
}

/** A spin-on filter, a suction strainer under its own cover, a strainer in the fill opening. */
const FILTERS = {
  'spin-on': {
    kind: 'spin-on filter',
    held: {
      kind: 'screwed',
      thread: '3/4-16 UNF',
      drive: { kind: 'hand' },
      tightening: { kind: 'turns', min: '0.75', threadCondition: 'oiled' },
    },
    change: 'every change',
  },
  suction: { kind: 'strainer', held: { kind: 'behind cover', cover: 'sump' }, change: 'clean every change' },
  neck: { kind: 'strainer', held: { kind: 'behind opening', opening: 'fill' }, change: 'not stated' },
} as const

export interface CaseOptions {
  readonly access?: 'from the ground' | 'front' | 'rear'
  /** The way to empty the gearcase. */
  readonly out?: 'drain plug' | 'cover' | 'suction' | 'sole opening' | 'sole opening by wheel'
  readonly method?: FillMethod['kind']
  /** A separate level opening beside the fill plug. */
  readonly ownLevel?: boolean
  readonly attitude?: Level['attitude']
  readonly minutesAfterStop?: boolean
  readonly recheck?: boolean
  readonly seal?: Seal
  readonly coverSeal?: Seal
  readonly magnet?: boolean
  readonly breather?: boolean
  readonly shield?: boolean
  readonly additive?: 'always' | 'for some oils' | 'never'
  readonly instances?: boolean
  readonly makerFluid?: boolean
  readonly drainOnSome?: Condition
  readonly filters?: readonly (keyof typeof FILTERS)[]
}

export function makeCase(name: string, options: CaseOptions): Gearcase {
  const out = options.out ?? 'drain plug'
  const method = options.method ?? 'by quantity'
  const wheel = out === 'sole opening by wheel'
  const seals = [options.seal ?? WASHER]
  const openings: Record<string, Opening> = {}
  const hasOneOpening = wheel || out === 'sole opening'
  const hasLevelCheck = method !== 'by quantity'
  const levelInFill = hasLevelCheck && options.ownLevel !== true
  const fillUses: OpeningUse[] = wheel
    ? [
        { role: 'fill', wheelMark: 'mark level' },
        { role: 'drain', wheelMark: 'mark down' },
        ...(levelInFill ? [{ role: 'level', wheelMark: 'mark level' } as const] : []),
      ]
    : [
        { role: 'fill' },
        ...(levelInFill && method !== 'sight glass' ? [{ role: 'level' } as const] : []),
        ...(out === 'sole opening' ? [{ role: 'drain' } as const] : []),
      ]
  openings['fill'] = makeOpening('fill plug', fillUses, {
    seals,
    ...(hasOneOpening && options.magnet ? { magnet: true } : {}),
  })
  if (out === 'drain plug')
    openings['drain'] = makeOpening('drain plug', [{ role: 'drain' }], {
      seals,
      ...(options.magnet ? { magnet: true } : {}),
      ...(options.drainOnSome === undefined ? {} : { appliesTo: options.drainOnSome }),
    })
  const levelId = levelInFill && method !== 'sight glass' ? 'fill' : 'level'
  if (hasLevelCheck && levelId === 'level')
    openings['level'] = makeOpening(
      method === 'sight glass' ? 'sight glass' : 'level plug',
      [{ role: 'level' }],
      {
        seals: method === 'sight glass' ? [] : seals,
      },
    )
  const cover: Cover = {
    name: 'cover',
    bolts: {
      count: 10,
      pattern: 'crosswise',
      drive: { kind: 'external hex', size: '13 mm' },
      tightening: TORQUE,
    },
    seal: options.coverSeal ?? LIQUID_GASKET,
    ...(options.magnet ? { magnet: true } : {}),
    place: { kind: 'not stated' },
  }
  const fillMethod: FillMethod =
    method === 'by quantity'
      ? { kind: method, opening: 'fill' }
      : method === 'dipstick'
        ? { kind: method, opening: levelId, reading: 'resting' }
        : { kind: method, opening: levelId }
  const additive = {
    name: 'Glidetilsats',
    volume: { kind: 'nominal', value: '120', unit: 'mL' },
    includedInRefill: false,
  } as const
  const makerFluid = options.makerFluid
    ? ({ kind: 'maker fluid', name: 'Bremseolje V', limitedSlip: 'not stated' } as const)
    : ({
        kind: 'grade',
        grade: '80W-90',
        system: 'SAE J306',
        category: 'GL-5',
        limitedSlip: 'either',
      } as const)
  const covers = {
    ...(out === 'cover' ? { lid: cover } : {}),
    ...(options.filters?.includes('suction')
      ? { sump: { ...cover, name: 'sump cover', seal: PAPER_GASKET } }
      : {}),
  }
  const filters = (options.filters ?? []).map((id): [string, Filter] => [
    id,
    {
      name: `${id} filter`,
      seals: id === 'neck' ? [O_RING] : [],
      place: { kind: 'not stated' },
      ...FILTERS[id],
    },
  ])
  return {
    name,
    type: 'differential',
    access:
      options.access === undefined || options.access === 'from the ground'
        ? { kind: 'from the ground' }
        : { kind: 'raised', supports: [`${options.access}-beam`] },
    oilSpace: {
      kind: 'own',
      oils: {
        kind: 'oils',
        choices: [
          options.additive === 'always' || options.additive === 'for some oils'
            ? { ...makerFluid, additive }
            : makerFluid,
          ...(options.additive === 'for some oils' ? [makerFluid] : []),
        ],
      },
      fill: {
        drainAndRefill: { kind: 'nominal', value: '900', unit: 'mL' },
        ...(options.instances ? { per: 'instance' as const } : {}),
        method: fillMethod,
        level: {
          attitude: options.attitude ?? 'not stated',
          ...(options.minutesAfterStop
            ? { minutesAfterStop: { kind: 'nominal' as const, value: '10', unit: 'min' as const } }
            : {}),
          engine: 'stopped',
          recheckAfterRun: options.recheck ?? false,
        },
      },
    },
    openings,
    ...(Object.keys(covers).length > 0 ? { covers } : {}),
    ...(filters.length > 0 ? { filters: Object.fromEntries(filters) } : {}),
    emptying: [
      out === 'cover'
        ? { kind: 'cover', cover: 'lid' }
        : out === 'suction'
          ? { kind: 'suction', opening: 'fill' }
          : { kind: 'drain plug', opening: out === 'drain plug' ? 'drain' : 'fill' },
    ],
    ...(options.breather ? { breather: { place: { kind: 'not stated' } } } : {}),
    ...(options.shield ? { shields: ['pan-guard'] } : {}),
    ...(options.instances ? { instances: { left: { name: 'left' }, right: { name: 'right' } } } : {}),
  }
}

export function makeSheet(
  gearcases: Readonly<Record<string, Gearcase>>,
  more: Partial<SpecSheet> = {},
): SpecSheet {
  const service = (name: string, task: Service['task'], gearcases: readonly string[]): Service => ({
    name,
    task,
    gearcases,
    intervals: { repeat: { kind: 'interval', hours: '200' }, countFrom: 'completion' },
  })
  const all = Object.keys(gearcases)
  return {
    kind: 'spec-sheet',
    version: '1.0',
    id: 'storvik-berg-2',
    revision: '2031-01',
    header: 'Invented for tests.',
    machine: {
      make: 'Storvik',
      model: 'Berg 2',
      type: 'invented four-wheel-drive carrier',
      mass: { kind: 'nominal', value: '700', unit: 'kg' },
      variants: { plain: { name: 'Plain' }, winch: { name: 'With winch' } },
      axles: { front: { name: 'front axle', wheels: 2 }, rear: { name: 'rear axle', wheels: 2 } },
      supports: {
        'front-beam': { at: 'front beam', axle: 'front' },
        'rear-beam': { at: 'rear beam', axle: 'rear' },
      },
    },
    sources: {},
    gearcases,
    shields: {
      'pan-guard': {
        name: 'pan guard',
        fasteners: { count: 4, drive: { kind: 'external hex', size: '13 mm' }, tightening: TORQUE },
        place: { kind: 'not stated' },
      },
    },
    services: {
      change: service('oil change', 'change', all),
      check: service('level check', 'check', all),
      ...Object.fromEntries(
        all.flatMap((id) => [
          [`${id}-change`, service(`oil change of ${id}`, 'change', [id])],
          [`${id}-check`, service(`level check of ${id}`, 'check', [id])],
        ]),
      ),
    },
    ...more,
  }
}

/** Kinds of machines in the trade, each as one gearcase on one sheet. */
export const VARIETY: Readonly<Record<string, CaseOptions>> = {
  front: { access: 'front', magnet: true, breather: true, shield: true },
  rear: { method: 'to level hole', attitude: 'level on its wheels', recheck: true, magnet: true },
  hub: {
    access: 'front',
    out: 'sole opening by wheel',
    method: 'to level hole',
    attitude: 'level on stands',
    instances: true,
  },
  tail: {
    access: 'rear',
    out: 'cover',
    method: 'to level hole',
    attitude: 'level on its wheels',
    magnet: true,
    additive: 'for some oils',
    seal: SEALANT,
  },
  transfer: { method: 'to level hole', ownLevel: true, seal: SEALANT, attitude: 'level on its wheels' },
  bevel: { out: 'suction', method: 'dipstick', ownLevel: true, minutesAfterStop: true, additive: 'always' },
  glass: { method: 'sight glass', ownLevel: true, recheck: true, seal: O_RING },
  brake: { makerFluid: true, method: 'dipstick', attitude: 'level on its wheels', breather: true },
}

export const varietySheet: SpecSheet = makeSheet(
  Object.fromEntries(
    Object.entries(VARIETY).map(([id, options]) => [id, makeCase(`${id} gearcase`, options)]),
  ),
)

/** A service that requires an oil sample. */
export const sampledSheet: SpecSheet = (() => {
  const sheet = makeSheet({ box: makeCase('box', { access: 'front', breather: true }) })
  const { change } = sheet.services
  return change === undefined ? sheet : { ...sheet, services: { change: { ...change, samples: ['box'] } } }
})()

/** A gearbox that shares its oil with an axle, and the axle's own drain plug. */
export const sharedSheet: SpecSheet = makeSheet({
  gearbox: makeCase('gearbox', {
    makerFluid: true,
    method: 'dipstick',
    ownLevel: true,
    attitude: 'level on its wheels',
  }),
  axle: {
    name: 'rear axle',
    type: 'final drive',
    access: { kind: 'raised', supports: ['rear-beam'] },
    oilSpace: { kind: 'shared', with: 'gearbox' },
    openings: { drain: makeOpening('drain plug', [{ role: 'drain' }], { magnet: true }) },
    emptying: [{ kind: 'drain plug', opening: 'drain' }],
  },
})

/** A hydraulic sump with a spin-on filter and a suction strainer. */
export const filterSheet: SpecSheet = makeSheet({
  sump: makeCase('sump', { filters: ['spin-on', 'suction'] }),
})

const optionsArbitrary: fc.Arbitrary<CaseOptions> = fc
  .record({
    access: fc.constantFrom('from the ground', 'front', 'rear'),
    out: fc.constantFrom('drain plug', 'cover', 'suction', 'sole opening', 'sole opening by wheel'),
    method: fc.constantFrom('by quantity', 'to level hole', 'dipstick', 'sight glass'),
    ownLevel: fc.boolean(),
    attitude: fc.constantFrom('level on its wheels', 'level on stands', 'not stated'),
    minutesAfterStop: fc.boolean(),
    recheck: fc.boolean(),
    seal: fc.constantFrom<Seal>(WASHER, O_RING, SEALANT, { kind: 'none' }, { kind: 'not stated' }),
    coverSeal: fc.constantFrom<Seal>(LIQUID_GASKET, PAPER_GASKET, { kind: 'not stated' }),
    magnet: fc.boolean(),
    breather: fc.boolean(),
    shield: fc.boolean(),
    additive: fc.constantFrom('always', 'for some oils', 'never'),
    instances: fc.boolean(),
    makerFluid: fc.boolean(),
    filters: fc.subarray(['spin-on', 'suction', 'neck'] as const),
    drainOnSome: fc.constantFrom<Condition | undefined>(undefined, { variants: ['plain'] }),
  } as const)
  .map(({ drainOnSome, ...options }): CaseOptions => {
    const isRaised = options.access !== 'from the ground'
    return {
      ...options,
      ...(drainOnSome === undefined ? {} : { drainOnSome }),
      // Only a raised machine can be level on stands.
      ...(options.attitude === 'level on stands' && !isRaised
        ? { attitude: 'level on its wheels' as const }
        : {}),
      // The level of a gearcase with a turning opening is checked at that opening.
      ...(options.out === 'sole opening by wheel' && options.method === 'sight glass'
        ? { method: 'dipstick' as const }
        : {}),
      ...(options.out === 'sole opening by wheel' ? { ownLevel: false } : {}),
    }
  })

export interface Visit {
  readonly sheet: SpecSheet
  readonly services: readonly string[]
}

/** Any sheet of one to three gearcases for which a procedure can be built, and a choice of its services. */
export const visitArbitrary: fc.Arbitrary<Visit> = fc
  .array(optionsArbitrary, { minLength: 1, maxLength: 3 })
  .chain((list) => {
    const sheet = makeSheet(
      Object.fromEntries(list.map((options, place) => [`case-${place}`, makeCase(`case ${place}`, options)])),
    )
    return fc
      .subarray(Object.keys(sheet.services), { minLength: 1 })
      .map((services): Visit => ({ sheet, services }))
  })

export function build(
  sheet: SpecSheet,
  services: readonly string[],
  identity: Identity = { variant: 'plain' },
  raiseOn: 'stands' | 'ramps' = 'stands',
): ProcedureDocument {
  const built = buildProcedure({ sheet, identity, services, raiseOn })
  if (!built.ok) throw new Error(JSON.stringify(built.findings))
  return built.value
}

/** Three axles, the front one lifted. */
export const threeAxleSheet = makeSheet(
  { front: makeCase('front gearcase', { access: 'front' }) },
  {
    machine: {
      ...varietySheet.machine,
      axles: {
        front: { name: 'front', wheels: 2 },
        middle: { name: 'middle', wheels: 2 },
        rear: { name: 'rear', wheels: 2 },
      },
      supports: { 'front-beam': { at: 'front beam', axle: 'front' } },
    },
  },
)
