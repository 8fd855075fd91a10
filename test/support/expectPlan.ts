import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { DueLine } from '../../src/v1/interval.js'
import { convert } from '../../src/v1/quantity.js'
import type { PartName, PlannedDue } from '../../src/v1/service.js'
import type { Seal } from '../../src/v1/spec.js'
import type { ExpectedTable, ExpectedVisit } from './expectedVisit.js'
import type { JudgedPlan } from './planExample.js'
import { planExample } from './planExample.js'

/** A table of `test/expected/`, made by hand; no value comes from a run. */
export function readExpected(folder: string): ExpectedTable {
  return JSON.parse(readFileSync(new URL(`../expected/${folder}.json`, import.meta.url), 'utf8'))
}

/** Compares the plan of each visit with the table of one example machine, cell by cell. */
export function expectPlan(folder: string): void {
  for (const visit of readExpected(folder).visits) {
    const plan = planExample(folder, { logFile: visit.log })
    describe(`${folder}, ${visit.what}`, () => {
      expectDue(plan, visit)
      expectFigures(plan, visit)
      expectTightenings(plan, visit)
      expectOil(plan, visit)
      expectSeals(plan, visit)
      expectTools(plan, visit)
      expectWaits(plan, visit)
      expectMissing(plan, visit)
    })
  }
}

function expectDue(plan: JudgedPlan, visit: ExpectedVisit): void {
  it('is the variant that the log says', () => {
    expect(plan.machine.variant).toMatchObject({ verdict: 'one', id: visit.variant.expected })
  })

  for (const row of visit.due) {
    it.each(row.gearcases)(`${row.service} on %s: state and every limit`, (gearcase) => {
      const due = dueOf(plan, row.service, gearcase)
      expect(due.verdict).toBe(row.state)
      if (row.dueBy !== undefined) expect(due.dueBy).toBe(row.dueBy)
      if (row.dueOn !== undefined) expect(due.dueOn).toBe(row.dueOn)
      const { hours, distance, period, event } = row
      const stated = { hours, distance, period, event }
      expect(due.lines.map(({ by }) => by).sort()).toEqual(
        Object.entries(stated)
          .flatMap(([by, line]) => (line === undefined ? [] : [by]))
          .sort(),
      )
      for (const [by, line] of Object.entries(stated))
        if (line?.state !== undefined) expect(lineOf(due, by).verdict).toBe(line.state)
      if (hours !== undefined) expectMeter(lineOf(due, 'hours'), 'h', hours)
      if (distance !== undefined) {
        const { limitKm, duePointKm, usedKm, leftKm, overdueAfterKm, ...rest } = distance
        const inKm = { limit: limitKm, duePoint: duePointKm, used: usedKm, left: leftKm }
        expectMeter(lineOf(due, 'distance'), 'km', { ...rest, ...inKm, overdueAfter: overdueAfterKm })
      }
      if (period !== undefined) {
        const line = lineOf(due, 'period')
        expect(line.duePoint?.date).toBe(period.duePoint)
        expect(line.left).toEqual({ value: period.leftDays, unit: 'd' })
        expect(line.overdueAfter?.date).toBe(period.overdueAfter)
        if (period.from !== undefined) expect(line.from?.date).toBe(period.from)
        if (period.limit !== undefined) expect(line.limit).toMatchObject({ period: period.limit })
      }
      if (event !== undefined) expect(lineOf(due, 'event').dueOn).toBe(event.date)
    })
  }

  it('lists only the services of the table', () => {
    const listed = plan.due.map(({ service, part }) => `${service} ${nameOf(part)}`)
    const expected = visit.due.flatMap(({ service, gearcases }) =>
      gearcases.map((gearcase) => `${service} ${gearcase}`),
    )
    expect(listed.sort()).toEqual(expected.sort())
  })

  it('takes up what the table takes up', () => {
    expect(plan.work.map(({ service, part }) => [service, nameOf(part)])).toEqual(visit.work.expected)
  })
}

interface MeterCells {
  readonly from?: number | undefined
  readonly limit: number
  readonly duePoint: number
  readonly used: number
  readonly left: number
  readonly overdueAfter?: number | undefined
}

function expectMeter(line: DueLine, unit: 'h' | 'km', cells: MeterCells): void {
  const { limit } = line
  const value = limit !== undefined && 'value' in limit ? limit : undefined
  expect(value && (unit === 'h' ? value.value : convert(value, 'km').value)).toBe(cells.limit)
  if (cells.from !== undefined) expect(line.from?.meter).toEqual({ value: cells.from, unit })
  expect(line.duePoint?.meter).toEqual({ value: cells.duePoint, unit })
  expect(line.used).toEqual({ value: cells.used, unit })
  expect(line.left).toEqual({ value: cells.left, unit })
  expect(line.overdueAfter?.meter?.value).toBe(cells.overdueAfter)
}

function expectFigures(plan: JudgedPlan, visit: ExpectedVisit): void {
  for (const row of visit.refills)
    it(`refill of the ${row.gearcase} gearcase, for exactly this variant`, () => {
      const path = `/gearcases/${row.gearcase}/oilSpace/fill/drainAndRefill`
      const [printed, unit] = row.printed
      expect(plan.figures.find((figure) => figure.path === path)?.resolved).toMatchObject({
        kind: 'stated',
        value: { value: row.value, unit: row.unit, printed: [{ value: printed, unit }] },
        trace: { path: row.path },
      })
    })

  for (const row of visit.places ?? [])
    it(`finds ${row.on} where this variant has it`, () => {
      const figure = plan.figures.find(({ path }) => path === row.on)
      expect(figure?.resolved).toMatchObject({ kind: 'stated', trace: { path: row.path } })
    })

  it('lists only the refills of the table', () => {
    expect(plan.figures.filter(({ role }) => role === 'refill')).toHaveLength(visit.refills.length)
  })

  it('adds the additive that the table adds', () => {
    const added = plan.oil.flatMap(({ part, additive }) =>
      additive === undefined ? [] : [{ part, additive }],
    )
    expect(added).toHaveLength(visit.additive === undefined ? 0 : 1)
    if (visit.additive === undefined) return
    const { gearcase, oilsFrom, name, volume, unit, includedInRefill } = visit.additive
    expect(added[0]).toMatchObject({
      part: { path: `/gearcases/${gearcase}` },
      additive: { name, includedInRefill },
    })
    const oils = plan.figures.find(({ path }) => path === `/gearcases/${gearcase}/oilSpace/oils`)
    expect(oils?.resolved).toMatchObject({
      kind: 'stated',
      trace: { path: oilsFrom },
      value: { choices: [{ additive: { name, includedInRefill, volume: { value: volume, unit } } }] },
    })
    expect(plan.consumables).toContainEqual({ code: 'service/supply', params: { supply: 'additive' } })
  })
}

function expectTightenings(plan: JudgedPlan, visit: ExpectedVisit): void {
  for (const row of visit.tightenings)
    it(`wrench, setting and true band at ${row.on}`, () => {
      const found = plan.tightenings.find(({ part }) => part.path === row.on)
      expect(found).toMatchObject({ count: row.count, verdict: row.verdict })
      expect(found?.wrench?.id).toBe(row.wrench)
      expect(found?.setting).toEqual(
        row.setting === undefined ? undefined : { value: row.setting, unit: row.unit },
      )
      if (row.turns !== undefined) {
        const [min, max] = row.turns
        const figure = plan.figures.find(({ path }) => path === `${row.on}/tightening`)
        expect(figure?.resolved).toMatchObject({ kind: 'stated', value: { kind: 'turns', min, max } })
      }
      if (row.trueBand === undefined) {
        expect(found?.trueBand).toBeUndefined()
        return
      }
      expect(found?.trueBand?.min).toBeCloseTo(row.trueBand[0], 12)
      expect(found?.trueBand?.max).toBeCloseTo(row.trueBand[1], 12)
      expect(found?.trueBand?.unit).toBe(row.bandUnit ?? row.unit)
    })

  it('lists only the tightenings of the table', () => {
    expect(plan.tightenings.map(({ part }) => part.path).sort()).toEqual(
      visit.tightenings.map(({ on }) => on).sort(),
    )
  })

  it('takes no more wrenches than needed', () => {
    expect([...plan.wrenches.use].sort()).toEqual([...visit.wrenches.expected].sort())
  })
}

function expectOil(plan: JudgedPlan, visit: ExpectedVisit): void {
  for (const row of visit.oil)
    it(`takes ${row.choice} from the shelf and buys the rest`, () => {
      const lines = plan.oil.filter(({ choice }) => choice === row.choice)
      const ml = (value: number): unknown => expect.closeTo(value, 6)
      expect(sum(lines.map(({ needed }) => millilitres(needed)))).toEqual(ml(row.neededMl))
      const takenMl = new Map<string, number>()
      for (const { container, opened, volume } of lines.flatMap(({ take }) => take)) {
        const key = `${container} ${opened}`
        takenMl.set(key, (takenMl.get(key) ?? 0) + millilitres(volume))
      }
      expect([...takenMl].sort()).toEqual(
        row.take.map(({ container, opened, ml: volume }) => [`${container} ${opened}`, ml(volume)]).sort(),
      )
      const purchases = lines.flatMap(({ buy }) => (buy === undefined ? [] : [buy]))
      expect(sum(purchases.map(({ volume }) => millilitres(volume)))).toEqual(ml(row.shortMl))
      expect(purchases.flatMap(({ containers }) => containers ?? [])).toEqual(
        row.buy.map(({ value, unit, count }) => ({ size: { value, unit }, count })),
      )
    })

  it('takes only the oils of the table', () => {
    expect(new Set(plan.oil.map(({ choice }) => choice))).toEqual(
      new Set(visit.oil.map(({ choice }) => choice)),
    )
  })

  it('has a pan for all of the used oil', () => {
    const { pan } = visit
    expect(millilitres(plan.pan?.volume)).toBe(pan?.volumeMl ?? 0)
    expect(millilitres(plan.usedOil.volume)).toBe(pan?.volumeMl ?? 0)
    if (pan === undefined) return
    expect(plan.pan).toMatchObject({ have: { id: pan.have }, verdict: pan.verdict })
  })
}

function expectSeals(plan: JudgedPlan, visit: ExpectedVisit): void {
  for (const row of visit.seals)
    it(`seal ${row.part}`, () => {
      const lines = plan.seals.filter(({ seal }) => sealName(seal) === row.part)
      expect(Object.fromEntries(lines.map(({ part, count }) => [part.path, count]))).toEqual(row.on)
      expect(sum(lines.map(({ count }) => count))).toBe(row.count)
      expect(sum(lines.map(({ buy }) => buy))).toBe(row.buy)
      expect(Math.max(...lines.map(({ stock }) => stock?.have ?? 0))).toBe(row.have)
    })

  it('lists only the seals of the table', () => {
    expect(new Set(plan.seals.map(({ seal }) => sealName(seal)))).toEqual(
      new Set(visit.seals.map(({ part }) => part)),
    )
  })
}

const LISTED_TOOLS: ReadonlySet<string> = new Set(['socket', 'adaptor', 'stands'])

function expectTools(plan: JudgedPlan, visit: ExpectedVisit): void {
  it('lists the sockets, adaptors and stands of the table and no others', () => {
    const found = plan.tools.flatMap(({ kind, have, verdict }) =>
      LISTED_TOOLS.has(kind) ? [`${kind} ${have?.id ?? 'none'} ${verdict}`] : [],
    )
    expect(found.sort()).toEqual(
      visit.tools.map(({ kind, have, verdict }) => `${kind} ${have ?? 'none'} ${verdict}`).sort(),
    )
  })

  it('measures each refill with the vessel of the table', () => {
    const found = plan.tools.flatMap((tool) =>
      tool.kind === 'vessel' ? [`${tool.for[0]?.path} ${tool.have?.id} ${tool.verdict}`] : [],
    )
    expect(found.sort()).toEqual(
      visit.vessels.map(({ gearcase, have, verdict }) => `/gearcases/${gearcase} ${have} ${verdict}`).sort(),
    )
  })

  it('raises the machine as often as the table says', () => {
    const lifts = plan.steps.filter((step) => step.do === 'raise the machine')
    expect(lifts).toHaveLength(visit.lifts.expected)
  })
}

function expectWaits(plan: JudgedPlan, visit: ExpectedVisit): void {
  for (const row of visit.pour?.rows ?? [])
    it(`time of the oil through the hose: ${row.gearcase}`, () => {
      const wait = plan.waits.find(
        ({ kind, part }) => kind === 'pour' && part.path === `/gearcases/${row.gearcase}`,
      )
      expect(wait?.parts?.map(({ seconds }) => seconds)).toEqual([
        expect.closeTo(row.hoseFills, 1),
        expect.closeTo(row.funnelEmpties, 1),
        expect.closeTo(row.hoseEmpties, 1),
      ])
      expect(wait?.seconds).toBe(row.totalWhole)
    })

  it('has the waits of the table, in whole seconds or until an event', () => {
    const found = plan.waits.map(
      ({ kind, part, seconds }) => `${kind} ${part.path} ${seconds ?? 'no number'}`,
    )
    const expected = visit.waits.map(({ kind, on, seconds }) => `${kind} ${on} ${seconds ?? 'no number'}`)
    expect(found.sort()).toEqual(expected.sort())
  })
}

function expectMissing(plan: JudgedPlan, visit: ExpectedVisit): void {
  it('misses what the table says is missing, and nothing else', () => {
    const found = plan.missing.flatMap(({ kind, path, part, reason }) => {
      const { reason: inner, parts = [part] } = reason.params as {
        readonly reason?: { readonly code?: string }
        readonly parts?: readonly PartName[]
      }
      return parts.map((otherPart) =>
        [kind, reason.code, inner?.code, path, otherPart && nameOf(otherPart)].join(' '),
      )
    })
    const expected = visit.missing.flatMap(({ kind, code, reason, path, on, times }) =>
      on.flatMap((part) => new Array<string>(times).fill([kind, code, reason, path, part].join(' '))),
    )
    expect(found.sort()).toEqual(expected.sort())
  })

  it('finds wrong what the table says is wrong, and nothing else', () => {
    expect(plan.findings.map(({ code, path }) => ({ code, path }))).toEqual(
      visit.findings.map(({ code, path }) => ({ code, path })),
    )
  })
}

function dueOf(plan: JudgedPlan, service: string, gearcase: string): PlannedDue {
  const found = plan.due.find((due) => due.service === service && nameOf(due.part) === gearcase)
  if (found === undefined) throw new Error(`no due line for ${service} on ${gearcase}`)
  return found
}

function lineOf(due: PlannedDue, by: string): DueLine {
  const found = due.lines.find((line) => line.by === by)
  if (found === undefined) throw new Error(`no line by ${by} for ${due.service}`)
  return found
}

/** Gearcase and instance as in the tables, such as `hub left`. */
function nameOf({ path, instance }: PartName): string {
  const gearcase = path.split('/')[2] ?? path
  return instance === undefined ? gearcase : `${gearcase} ${instance.id}`
}

function sealName(seal: Seal): string | undefined {
  if ('partNumber' in seal && seal.partNumber !== undefined) return seal.partNumber
  return 'product' in seal ? seal.product : seal.kind
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

type Volume = NonNullable<NonNullable<JudgedPlan['pan']>['volume']>
const millilitres = (volume: Volume | undefined): number =>
  volume === undefined ? 0 : convert(volume, 'mL').value
