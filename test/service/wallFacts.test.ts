import { describe, expect, it } from 'vitest'
import { lubeChart, planVisit, wallFacts } from '../../src/v1/service.js'
import type { Identity, SpecSheet, Stock, Toolbox } from '../../src/v1/spec.js'
import { readExample } from '../support/readExample.js'
import { GOOD_MACHINES } from './goodMachines/index.js'
import { FOLDERS } from './support/usedMachines.js'

interface Machine {
  readonly sheet: SpecSheet
  readonly identity: Identity
  readonly toolbox: Toolbox
  readonly stock: Stock
}

const IDENTITIES: Readonly<Record<string, Identity>> = {
  'tind-4': { serial: 'TL00418' },
  'bud-3': { variant: 'locking' },
}
const example = (folder: (typeof FOLDERS)[number]): Machine => ({
  sheet: readExample(folder, 'sheet'),
  identity: IDENTITIES[folder] ?? {},
  toolbox: readExample(folder, 'toolbox'),
  stock: readExample(folder, 'stock'),
})
const MACHINES: readonly (readonly [string, Machine])[] = [
  ...FOLDERS.map((folder) => [folder, example(folder)] as const),
  ...Object.entries(GOOD_MACHINES).map(
    ([name, { sheet, log, toolbox, stock }]) =>
      [name, { sheet, identity: log.identity, toolbox, stock }] as const,
  ),
]

function factsOf(machine: Partial<Machine> & Pick<Machine, 'sheet' | 'identity'>) {
  const facts = wallFacts(machine, { iso6789: '2017' })
  if (!facts.ok) throw new Error(JSON.stringify(facts.findings))
  return facts.value
}

/** The plan of a visit for the same services, without a stock, on any day. */
function planOf({ sheet, identity, toolbox }: Machine, services: readonly string[]) {
  const log = {
    kind: 'machine-log',
    version: '1.0',
    id: 'any',
    name: 'Any',
    sheet: { id: sheet.id, revision: sheet.revision },
    identity,
    meters: {},
    records: [],
  } as const
  const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
  const planned = planVisit({ sheet, log, toolbox, today: '2031-10-06' }, { services, due, iso6789: '2017' })
  if (!planned.ok) throw new Error(JSON.stringify(planned.findings))
  return planned.value
}

/** The services of the job of a wall card. */
const servicesOf = (machine: Machine): readonly string[] => {
  const { intervals } = factsOf(machine)
  const changes = intervals.filter(({ task }) => task === 'change')
  return (changes.length > 0 ? changes : intervals).map(({ service }) => service)
}

/** Phrases whose order on the card is the order of work; seals and pans are prepared again for each plug. */
const ORDERED: ReadonlySet<string> = new Set([
  ...['stands', 'ramps', 'shields off', 'mark down', 'mark level', 'mark up', 'fill first', 'drain'],
  ...['cover off', 'suck out', 'let drain', 'drain tight', 'cover tight', 'pour', 'hose', 'settle', 'level'],
  ...[
    'fill tight',
    'dry behind shield',
    'shields on',
    'lower',
    'run',
    'recheck',
    'tight again',
    'leak check',
  ],
])

describe.each(MACHINES)('the wall facts of %s', (_name, machine) => {
  const facts = factsOf(machine)
  const plan = planOf(machine, servicesOf(machine))

  it('have the settings, figures and oils of a visit for the same services', () => {
    const settingsOf = (tightenings: typeof plan.tightenings) =>
      tightenings.map(({ part, verdict, wrench, setting, trueBand, count }) => ({
        path: part.path,
        verdict,
        wrench,
        setting,
        trueBand,
        count,
      }))
    expect(settingsOf(facts.tightenings)).toEqual(settingsOf(plan.tightenings))
    expect(facts.figures.filter(({ role }) => role !== 'interval')).toEqual(plan.figures)
    expect(facts.oil).toEqual(
      plan.oil.map(({ take: _take, buy: _buy, reasons: _reasons, ...entry }) => entry),
    )
  })

  it('give the steps of the procedure for each line of the job', () => {
    const steps = new Set(plan.steps.map(({ id }) => id))
    const phrases = facts.job.flatMap((line) => line.phrases)
    expect(facts.job.length).toBeLessThanOrEqual(10)
    for (const { phrase, steps: ids } of phrases) {
      expect(ids.length, phrase).toBeGreaterThan(0)
      for (const id of ids) expect(steps, phrase).toContain(id)
    }
  })

  it('name the work on each gearcase in the order of the procedure', () => {
    const places = new Map(plan.steps.map(({ id }, place) => [id, place]))
    const phrases = facts.job.flatMap((line) => line.phrases)
    const finished = phrases.find(({ phrase }) => phrase === 'finish first')?.only ?? []
    for (const { part } of facts.panels) {
      const isFinished = finished.some(({ path }) => path === part.path)
      const ordered = phrases.flatMap(({ phrase, steps }) => {
        const own = steps.filter((id) => {
          const on = plan.steps[places.get(id) ?? -1]?.part?.path ?? ''
          return on.startsWith('/gearcases/') ? `${on}/`.startsWith(`${part.path}/`) : !isFinished
        })
        const first = Math.min(...own.map((id) => places.get(id) ?? Number.NaN))
        return own.length > 0 && ORDERED.has(phrase) ? [`${String(first).padStart(3)} ${phrase}`] : []
      })
      expect(ordered.length, part.path).toBeGreaterThan(0)
      expect(ordered, part.path).toEqual(ordered.toSorted())
    }
  })

  it('show each part once, in the order in which it is loosened, with its tightening', () => {
    const paths = facts.panels.flatMap(({ parts }) => parts.map(({ part }) => part.path))
    expect(paths.length).toBe(new Set(paths).size)
    for (const { parts } of facts.panels)
      for (const { part, tightening } of parts) {
        const planned = facts.tightenings[Number(tightening?.slice('/tightenings/'.length))]
        if (tightening !== undefined) expect(planned?.part.path).toBe(part.path)
      }
    expect(facts.tightenings.map(({ part }) => part.path).filter((path) => !paths.includes(path))).toEqual([])
  })
})

describe('lines of the job that name their gearcases', () => {
  const phrasesOf = (folder: (typeof FOLDERS)[number]) =>
    factsOf(example(folder)).job.flatMap(({ line, phrases }) =>
      phrases.map(({ phrase, only = [] }) =>
        [line, phrase, only.map(({ path }) => path).join(' ')].join(': '),
      ),
    )

  it('a level on the wheels is read before the machine is raised, or after it is lowered', () => {
    expect(phrasesOf('tind-4')).toEqual(
      expect.arrayContaining([
        'raise: finish first: /gearcases/rear',
        'raise: stands: /gearcases/front',
        'fill: level: /gearcases/rear',
        'fill: no level: /gearcases/front',
      ]),
    )
    const acre = phrasesOf('acre-26')
    expect(acre.filter((text) => /level: \/|lower/.test(text))).toEqual([
      'fill: mark level: /gearcases/hub',
      'fill: level: /gearcases/hub',
      'shut: lower: ',
      'shut: level: /gearcases/axle',
    ])
  })

  it('a hub is turned to its mark before it is drained; no level is read where only the quantity counts', () => {
    expect(phrasesOf('acre-26').indexOf('open: mark down: /gearcases/hub')).toBeGreaterThan(0)
    const kvist = phrasesOf('kvist-2')
    expect(kvist).toContain('fill: no level: ')
    expect(kvist).not.toContain('fill: level: ')
  })

  it('a drain plug is named where another gearcase has none, and the drain of shared oil is tight first', () => {
    expect(phrasesOf('bud-3')).toEqual(
      expect.arrayContaining([
        'drain: drain: /gearcases/transfer/openings/drain',
        'close: drain tight: /gearcases/transfer/openings/drain',
        'close: cover tight: /gearcases/rear/covers/rear-cover',
      ]),
    )
    const tight = factsOf(example('reach-55')).job.flatMap(({ phrases }) =>
      phrases.flatMap(({ phrase, steps }) => (phrase === 'drain tight' ? steps : [])),
    )
    expect(tight).toEqual(['axle-tighten-drain', 'gearbox-tighten-drain'])
  })
})

describe('never off page one', () => {
  // Each must be in a line of the job; stands and chocks are also in the warning of the card.
  const SAFETY = ['chock', 'fill first', 'look at the oil', 'all clear', 'leak check'] as const

  it.each(FOLDERS)('%s', (folder) => {
    const facts = factsOf(example(folder))
    const phrases: readonly string[] = facts.job.flatMap((line) => line.phrases.map(({ phrase }) => phrase))
    expect(phrases).toEqual(expect.arrayContaining([...SAFETY]))
    expect(phrases.some((phrase) => phrase === 'drain tight' || phrase === 'cover tight')).toBe(true)
    const isRaised = facts.panels.some(({ access }) => access === 'raised')
    expect(phrases.includes('stands')).toBe(isRaised)
    const order: readonly string[] = [
      'fill first',
      'drain',
      'look at the oil',
      'drain tight',
      'pour',
      'all clear',
      'leak check',
    ]
    const places = order.map((phrase) => phrases.indexOf(phrase))
    expect(places.filter((place) => place >= 0)).toEqual(
      places.filter((place) => place >= 0).toSorted((place, other) => place - other),
    )
  })
})

describe('wallFacts', () => {
  const machine = example('tind-4')

  it('does not depend on the amounts in stock', () => {
    const containers = Object.entries(machine.stock.containers).map(
      ([id, { opened: _opened, ...container }]) => [id, { ...container, count: 0 }],
    )
    const emptyStock = { ...machine.stock, containers: Object.fromEntries(containers), seals: {} }
    expect(factsOf({ ...machine, stock: emptyStock })).toEqual(factsOf(machine))
    expect(JSON.stringify(factsOf(machine))).not.toContain('"today"')
  })

  it('has pouring times with a stock alone, the end of each part after the one before', () => {
    const { stock: _stock, ...others } = machine
    expect(factsOf(others).pours.flatMap(({ at }) => at.flatMap(({ ends }) => ends ?? []))).toEqual([])
    for (const { at } of factsOf(machine).pours) {
      expect(at.map(({ celsius }) => celsius)).toEqual([0, 10, 20])
      const totals = at.map(({ ends: [fills = 0, empties = 0, drips = 0] = [] }) => {
        expect(fills).toBeGreaterThan(0)
        expect(empties).toBeGreaterThan(fills)
        expect(drips).toBeGreaterThan(empties)
        return drips
      })
      // Warm oil pours faster.
      expect(totals).toEqual(totals.toSorted((total, other) => other - total))
    }
  })

  it('has the settings of each wrench on its own scale: inside its ends, on its marks', () => {
    for (const [, machine] of MACHINES)
      for (const { scales } of factsOf(machine).wrenches)
        for (const { scale, settings } of scales) {
          expect(settings.length).toBeGreaterThan(0)
          for (const { setting } of settings) {
            expect(setting.unit).toBe(scale.unit)
            expect(setting.value).toBeGreaterThanOrEqual(scale.lowest)
            expect(setting.value).toBeLessThanOrEqual(scale.highest)
            const marks = (setting.value - scale.lowest) / scale.graduation
            expect(Math.abs(marks - Math.round(marks))).toBeLessThan(1e-9)
          }
        }
  })

  it('leaves only the manual’s figures without a toolbox', () => {
    const facts = factsOf({ sheet: machine.sheet, identity: machine.identity })
    expect(facts.wrenches).toEqual([])
    expect(facts.jugs).toEqual([])
    expect(facts.missing).toEqual([])
    expect(facts.tightenings.map(({ setting }) => setting)).toEqual(facts.tightenings.map(() => undefined))
  })

  it('measures rings and hexagons, also in inches', () => {
    const sizes = factsOf(machine).sizes
    // 15.6 + 2 × 1.78 = 19.16
    expect(sizes).toContainEqual(expect.objectContaining({ kind: 'ring', inside: 15.6, outside: 19.16 }))
    const inches = structuredClone(machine.sheet) as {
      gearcases: Record<string, { openings: Record<string, object> }>
    }
    const fill = inches.gearcases['front']?.openings['fill']
    if (fill === undefined) throw new Error('no fill opening')
    inches.gearcases['front'] = {
      ...inches.gearcases['front'],
      openings: {
        ...inches.gearcases['front']?.openings,
        fill: { ...fill, drive: { kind: 'external hex', size: '7/8 in' } },
      },
    }
    const { sizes: changed } = factsOf({ ...machine, sheet: inches as unknown as SpecSheet })
    // 7/8 × 25.4 = 22.225
    expect(changed.flatMap((size) => (size.kind === 'hexagon' ? size.acrossFlats : []))).toContain(22.23)
  })

  it('says for an unknown variant what is open, and refuses misuse', () => {
    const facts = factsOf({ ...machine, identity: {} })
    expect(facts.machine.variant.verdict).toBe('cannot tell')
    expect(facts.missing.some(({ kind }) => kind === 'cannot tell')).toBe(true)
    expect(() => wallFacts({ ...machine, today: '2031-10-06' } as never, { iso6789: '2017' })).toThrow(
      /today/,
    )
    expect(() => wallFacts(machine, { iso6789: '1999' } as never)).toThrow(RangeError)
  })

  it('calculates the interval of severe use from the manual’s factor', () => {
    const { intervals } = factsOf(example('acre-26'))
    // 400 h × 0.5 and 24 months × 0.5, by hand.
    expect(intervals[0]?.severe).toMatchObject({
      factor: '0.5',
      scaled: { kind: 'interval', hours: '200', period: 'P12M' },
    })
    const chart = lubeChart({ sheet: readExample('acre-26', 'sheet'), identity: {} })
    expect(chart.services[0]?.severe?.scaled).toEqual(intervals[0]?.severe?.scaled)
    const odd = structuredClone(readExample('acre-26', 'sheet')) as unknown as {
      services: Record<string, { intervals: { repeat: { period: string } } }>
    }
    const [service] = Object.values(odd.services)
    if (service === undefined) throw new Error('no service')
    // Half of three months is not whole days.
    service.intervals.repeat.period = 'P3M'
    const sheet = odd as unknown as SpecSheet
    expect(factsOf({ sheet, identity: {} }).intervals[0]?.severe).not.toHaveProperty('scaled')
    service.intervals.repeat = {
      kind: 'interval',
      distance: { value: '5000', unit: 'km', printed: [{ value: '3000', unit: 'mi' }] },
    } as never
    expect(factsOf({ sheet, identity: {} }).intervals[0]?.severe?.scaled).toEqual({
      kind: 'interval',
      distance: { value: '2500', unit: 'km', printed: [{ value: '1500', unit: 'mi' }] },
    })
  })

  it('gives intervals of all services: first, severe, and after the machine was under water', () => {
    const { intervals, figures } = factsOf(machine)
    expect(intervals.map(({ service, afterSubmersion }) => [service, afterSubmersion])).toEqual([
      ['gear-oil-change', true],
      ['gear-oil-check', true],
    ])
    const [change] = intervals
    const hoursAt = (pointer = '') => {
      const resolved = figures[Number(pointer.slice('/figures/'.length))]?.resolved
      return resolved?.kind === 'stated' && resolved.value.kind === 'interval'
        ? resolved.value.hours
        : undefined
    }
    expect([change?.repeat, change?.first, change?.severe?.interval].map(hoursAt)).toEqual([
      '200',
      '50',
      '100',
    ])
  })
})
