import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import { readPointer } from '../../src/base/pointers.js'
import { remainingStock } from '../../src/service/remainingStock.js'
import { convert } from '../../src/v1/quantity.js'
import {
  kitContents,
  listDue,
  listVariantDifferences,
  lubeChart,
  nextDue,
  wallFacts,
} from '../../src/v1/service.js'
import {
  type Id,
  type Identity,
  parseDocument,
  resolveLeaf,
  type SpecSheet,
  type Stock,
} from '../../src/v1/spec.js'
import { cases, law } from '../support/law.js'
import {
  type JudgedPlan,
  planExample,
  planRequest,
  requestExample,
  TODAY,
  type VisitRequest,
} from '../support/planExample.js'

const FOLDERS = ['tind-4', 'acre-26', 'bud-3', 'kvist-2', 'reach-55'] as const
const REQUESTS = new Map(FOLDERS.map((folder) => [folder, requestExample(folder)]))
const requestOf = (folder: (typeof FOLDERS)[number]): VisitRequest => REQUESTS.get(folder) as VisitRequest

/** The visits of the examples without some facts, on other days, at other temperatures, with other stocks. */
const requests: fc.Arbitrary<VisitRequest> = fc
  .record({
    folder: fc.constantFrom(...FOLDERS),
    without: fc.subarray(['toolbox', 'stock', 'ambient'] as const),
    identity: fc.subarray(['variant', 'modelYear', 'serial', 'market'] as const),
    ambient: fc.integer({ min: -45, max: 50 }),
    day: fc.integer({ min: 1, max: 28 }),
    month: fc.integer({ min: 1, max: 12 }),
    year: fc.integer({ min: 2021, max: 2026 }),
    severity: fc.constantFrom('normal' as const, 'severe' as const),
    iso6789: fc.constantFrom('2017' as const, '2003' as const),
    tolerance: fc.option(fc.integer({ min: 1, max: 30 }), { nil: undefined }),
    all: fc.boolean(),
    counts: fc.array(fc.nat({ max: 3 }), { minLength: 1, maxLength: 6 }),
  })
  .map((drawn) => {
    const { toolbox, stock, ambient: _ambient, ...base } = requestOf(drawn.folder)
    const twoDigits = (value: number) => String(value).padStart(2, '0')
    const identity = Object.fromEntries(
      Object.entries(base.log.identity).filter(
        ([fact]) => !drawn.identity.some((candidate) => candidate === fact),
      ),
    )
    const isDrawn = (fact: 'toolbox' | 'stock' | 'ambient') => !drawn.without.includes(fact)
    return {
      ...base,
      log: { ...base.log, identity },
      services: drawn.all ? Object.keys(base.sheet.services) : 'due',
      today: `${drawn.year}-${twoDigits(drawn.month)}-${twoDigits(drawn.day)}`,
      due: { ...base.due, severity: drawn.severity },
      iso6789: drawn.iso6789,
      ...(drawn.tolerance === undefined ? {} : { tolerancePercent: drawn.tolerance }),
      ...(toolbox === undefined || !isDrawn('toolbox') ? {} : { toolbox }),
      ...(stock === undefined || !isDrawn('stock') ? {} : { stock: withCounts(stock, drawn.counts) }),
      ...(isDrawn('ambient') ? { ambient: { value: drawn.ambient, unit: 'degC' as const } } : {}),
    }
  })

function withCounts(stock: Stock, counts: readonly number[]): Stock {
  const containers = Object.entries(stock.containers).map(([id, container], place) => [
    id,
    { ...container, count: counts[place % counts.length] ?? 0 },
  ])
  const seals = Object.entries(stock.seals).map(([id, seal], place) => [
    id,
    { ...seal, count: counts[(place + 1) % counts.length] ?? 0 },
  ])
  return { ...stock, containers: Object.fromEntries(containers), seals: Object.fromEntries(seals) }
}

function freeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value)
    for (const part of Object.values(value)) freeze(part)
  }
  return value
}

function planFor(request: VisitRequest): JudgedPlan {
  const result = planRequest(request)
  if (!result.ok) throw new Error(JSON.stringify(result.findings))
  return { ...result.value, findings: result.findings }
}

/** Every pointer of a plan into the plan, with the list that it must point into. */
function listPointers(plan: JudgedPlan): readonly (readonly [list: string, pointer: string])[] {
  const figures = [
    ...plan.oil.flatMap(({ figure, refill, additive }) => [figure, refill, additive?.figure]),
    ...plan.seals.map(({ figure }) => figure),
    ...plan.tightenings.map(({ figure }) => figure),
    ...plan.steps.flatMap((step) => Object.values(step.figures)),
  ]
  const pointers: readonly (readonly [string, string | undefined])[] = [
    ...figures.map((pointer) => ['figures', pointer] as const),
    ...plan.steps.map(({ tightening }) => ['tightenings', tightening] as const),
    ...plan.steps.map(({ wait }) => ['waits', wait] as const),
    ...plan.steps.map(({ oil }) => ['oil', oil] as const),
    ...plan.work.map(({ due }) => ['due', due] as const),
  ]
  return pointers.flatMap(([list, pointer]) => (pointer === undefined ? [] : [[list, pointer]]))
}

describe('planVisit, over the five machines with facts, days and shelves varied', () => {
  it('gives the same plan twice, changes nothing that it is given, and is plain JSON', () => {
    law(50, requests, (request) => {
      const first = planRequest(freeze(request))
      expect(planRequest(structuredClone(request))).toEqual(first)
      expect(JSON.parse(JSON.stringify(first))).toEqual(first)
    })
  })

  it('has no dangling pointer', () => {
    law(50, requests, (request) => {
      const plan = planFor(request)
      for (const [list, pointer] of listPointers(plan)) {
        expect(pointer).toMatch(new RegExp(`^/${list}/[0-9]+$`))
        expect(readPointer(plan, pointer), pointer).toBeDefined()
      }
      for (const { service, part, due } of plan.work)
        expect(readPointer(plan, due)).toMatchObject({ service, part, taken: true })
      for (const { path, resolved } of plan.figures) {
        expect(readPointer(request.sheet, path), path).toBeDefined()
        if (resolved.kind !== 'cannot tell')
          expect(readPointer(request.sheet, resolved.trace.path), path).toBeDefined()
      }
      for (const { do: action, tightening } of plan.steps)
        if (action === 'tighten') expect(tightening).toBeDefined()
    })
  })

  it('takes and buys just what is needed, and takes no more than there is', () => {
    law(50, requests, (request) => {
      const plan = planFor(request)
      const takenById = new Map<Id, number>()
      for (const { choice, needed, take, buy } of plan.oil) {
        const volumes = take.map(({ volume }) => convert(volume, 'mL').value)
        const sum = volumes.reduce((before, next) => before + next, 0)
        take.forEach(({ container }, place) => {
          takenById.set(container, (takenById.get(container) ?? 0) + (volumes[place] ?? 0))
        })
        if (needed === undefined || choice === undefined) continue
        const boughtMl = buy === undefined ? 0 : convert(buy.volume, 'mL').value
        expect(sum + boughtMl).toBeCloseTo(convert(needed, 'mL').value, 6)
      }
      for (const [id, volume] of takenById) {
        const container = request.stock?.containers[id]
        if (container === undefined) throw new Error(`${id} is not on the shelf`)
        const openedMl = container.opened === undefined ? 0 : convert(container.opened, 'mL').value
        const heldMl = container.count * convert(container.size, 'mL').value + openedMl
        expect(volume).toBeLessThanOrEqual(heldMl + 1e-6)
      }
      for (const { count, buy } of plan.seals) {
        expect(buy).toBeGreaterThanOrEqual(0)
        expect(buy).toBeLessThanOrEqual(count)
      }
    })
  })

  it('needs the same in whatever order toolbox and stock are written', () => {
    const reversed = <T extends object>(value: T): T =>
      Object.fromEntries(
        Object.entries(value)
          .map(([key, part]: [string, unknown]) => [
            key,
            typeof part === 'object' && part !== null && !Array.isArray(part)
              ? Object.fromEntries(Object.entries(part).reverse())
              : part,
          ])
          .reverse(),
      ) as T
    const needs = ({ oil, seals, tightenings, waits, tools, pan, missing }: JudgedPlan) => ({
      oil: oil.map(({ choice, needed }) => [choice, needed]),
      seals: seals.map(({ seal, count }) => [seal, count]),
      bought: seals.reduce((sum, { buy }) => sum + buy, 0),
      tightenings: tightenings.map(({ part, verdict }) => [part.path, verdict]),
      waits: waits.map(({ seconds }) => seconds),
      tools: tools.map(({ kind, verdict }) => [kind, verdict]),
      pan: pan?.verdict,
      missing: missing.map(({ reason }) => reason.code),
    })
    law(40, requests, (request) => {
      const { toolbox, stock } = request
      const otherRequest = {
        ...request,
        ...(toolbox === undefined ? {} : { toolbox: reversed(toolbox) }),
        ...(stock === undefined ? {} : { stock: reversed(stock) }),
      }
      expect(needs(planFor(otherRequest))).toEqual(needs(planFor(request)))
    })
  })

  it('never takes the oil and parts of the previous visit', () => {
    law(40, requests, fc.nat({ max: 3 }), (request, more) => {
      if (request.stock === undefined) return
      let stock = request.stock
      const takenById = new Map<Id, number>()
      const used = new Map<Id, number>()
      for (let visit = 0; visit <= more; visit++) {
        const plan = planFor({ ...request, stock })
        for (const { container, volume } of plan.oil.flatMap(({ take }) => take))
          takenById.set(container, (takenById.get(container) ?? 0) + convert(volume, 'mL').value)
        for (const { seal, stock: piece, take, count, buy } of plan.seals) {
          if (seal.kind === 'thread sealant' || seal.kind === 'liquid gasket') continue
          const pieces = take ?? (piece === undefined ? [] : [{ id: piece.id, count: count - buy }])
          for (const { id, count: gone } of pieces) used.set(id, (used.get(id) ?? 0) + gone)
        }
        const left = remainingStock(stock, plan)
        for (const container of Object.values(left.containers)) {
          expect(Number.isInteger(container.count)).toBe(true)
          expect(container.count).toBeGreaterThanOrEqual(0)
        }
        stock = left
      }
      for (const [id, volume] of takenById) {
        const container = request.stock.containers[id]
        if (container === undefined) throw new Error(id)
        const opened = container.opened === undefined ? 0 : convert(container.opened, 'mL').value
        expect(volume).toBeLessThanOrEqual(
          container.count * convert(container.size, 'mL').value + opened + 1e-6,
        )
      }
      for (const [id, count] of used)
        expect(count, id).toBeLessThanOrEqual(request.stock.seals[id]?.count ?? 0)
      expect(parseDocument('any', stock)).toMatchObject({ ok: true })
    })
  })
})

/** Pointers to every value that can be removed while the document stays valid. */
function listRemovable(document: object, most: number): readonly string[] {
  const found: string[] = []
  const walk = (value: unknown, path: string): void => {
    if (typeof value !== 'object' || value === null) return
    for (const [key, part] of Object.entries(value)) {
      const at = `${path}/${key}`
      found.push(at)
      walk(part, at)
    }
  }
  walk(document, '')
  return found.length <= most
    ? found
    : found.filter((_path, place) => place % Math.ceil(found.length / most) === 0)
}

describe('a fact taken away', () => {
  it.each(FOLDERS)('%s: no fault stops the plan', (folder) => {
    const request = requestOf(folder)
    let triedCount = 0
    for (const part of ['sheet', 'log', 'toolbox', 'stock'] as const) {
      const document = request[part]
      if (document === undefined) continue
      for (const path of listRemovable(document, cases(60))) {
        const read = parseDocument('any', applyPatch(document, [{ op: 'remove', path }]))
        if (!read.ok) continue
        triedCount += 1
        const withoutPart = { ...request, [part]: read.value } as VisitRequest
        expect(() => planRequest(withoutPart), `${part}${path}`).not.toThrow()
      }
    }
    expect(triedCount).toBeGreaterThan(40)
  })

  it.each(FOLDERS)('%s: a figure that the manual leaves out is named as missing', (folder) => {
    const request = requestOf(folder)
    const { figures } = planFor(request)
    let triedCount = 0
    for (const { path, leaf, role, resolved } of figures) {
      if (resolved.kind !== 'stated') continue
      const value = { kind: 'not stated', ...(leaf === 'tightening' ? { threadCondition: 'dry' } : {}) }
      const sheet = applyPatch(request.sheet, [
        { op: 'replace', path: resolved.trace.path, value },
      ]) as SpecSheet
      const plan = planFor({ ...request, sheet })
      const named = [...plan.missing.map(({ path: at }) => at), ...plan.findings.map(({ path: at }) => at)]
      expect(named, `${role} ${path}`).toContain(path)
      triedCount += 1
    }
    expect(triedCount).toBeGreaterThan(5)
  })

  it('a fact of the caller taken away is missing: toolbox, stock, temperature', () => {
    const reasons = (fact: 'toolbox' | 'stock' | 'ambient') => {
      const { [fact]: _gone, ...request } = requestOf('tind-4')
      const plan = planFor(request as VisitRequest)
      return plan.missing.map(({ reason }) => reason.code)
    }
    expect(reasons('toolbox')).toContain('service/no-toolbox')
    expect(reasons('stock')).toContain('service/no-stock')
    expect(reasons('ambient')).toContain('service/ambient-not-given')
    expect(planExample('tind-4').today).toBe(TODAY)
  })
})

describe('facts for papers, over the same machines', () => {
  it('a kit has the oil that the plan needs, each tool and seal once, and is the same twice', () => {
    law(50, requests, (request) => {
      const plan = planFor(request)
      const kit = kitContents(plan)
      expect(kitContents(structuredClone(plan))).toEqual(kit)
      const ids = kit.tools.map(({ id }) => id)
      expect(new Set(ids).size).toBe(ids.length)
      const names = kit.seals.map((seal) => JSON.stringify(seal))
      expect(new Set(names).size).toBe(names.length)
      const needed = new Map<string, number>()
      for (const { choice, needed: volume } of plan.oil)
        if (choice !== undefined && volume !== undefined)
          needed.set(choice, (needed.get(choice) ?? 0) + convert(volume, 'mL').value)
      for (const [oil, volume] of needed)
        expect(kit.oil.find((one) => one.oil === oil)?.volume.value, oil).toBeCloseTo(volume, 2)
    })
  })

  it('nextDue has the earliest due points of listDue, and every service in one of its lists or none', () => {
    law(50, requests, ({ sheet, log, today, due: options }) => {
      const label = nextDue({ sheet, log, today }, options)
      const due = listDue({ sheet, log, today }, options)
      const points = (by: 'hours' | 'period') =>
        due.flatMap(({ lines }) =>
          lines.flatMap((line) => {
            const point = line.by === by ? line.duePoint : undefined
            const at = by === 'period' ? point?.date : point?.meter?.value
            return at === undefined ? [] : [at]
          }),
        )
      const earliest = (all: readonly (string | number)[]) =>
        all.reduce<string | number | undefined>(
          (first, at) => (first === undefined || at < first ? at : first),
          undefined,
        )
      expect(label.date?.at).toBe(earliest(points('period')))
      expect(label.hours?.at.value).toBe(earliest(points('hours')))
      const count = (...verdicts: readonly string[]) =>
        due.filter(({ verdict }) => verdicts.includes(verdict)).length
      expect([label.dueNow.length, label.notKnown.length]).toEqual([
        count('due', 'overdue'),
        count('cannot tell'),
      ])
    })
  })

  it('a chart or wall card of a machine with fewer known facts never states another figure', () => {
    law(40, requests, fc.subarray(['variant', 'modelYear', 'serial', 'market'] as const), (request, kept) => {
      const { sheet, log } = request
      const whole: Identity =
        requestOf('tind-4').sheet === sheet ? requestOf('tind-4').log.identity : log.identity
      const less = Object.fromEntries(
        kept.flatMap((fact) => (whole[fact] === undefined ? [] : [[fact, whole[fact]]])),
      )
      const stated = (figures: ReturnType<typeof lubeChart>['figures']) =>
        new Map(
          figures.flatMap(({ path, resolved }) =>
            resolved.kind === 'stated' ? [[path, resolved.value]] : [],
          ),
        )
      const chartOf = (identity: Identity) => stated(lubeChart({ sheet, identity }).figures)
      const wallOf = (identity: Identity) => {
        const facts = wallFacts({ sheet, identity }, { iso6789: '2017' })
        return facts.ok ? stated(facts.value.figures) : new Map()
      }
      for (const figuresOf of [chartOf, wallOf]) {
        const all = figuresOf(whole)
        for (const [path, value] of figuresOf(less))
          if (all.has(path)) expect(value, path).toEqual(all.get(path))
      }
    })
  })

  it('listVariantDifferences lists a figure exactly if two variants have different ones, whatever overrides are left', () => {
    let listed = 0
    law(
      40,
      fc.constantFrom(...FOLDERS),
      fc.array(fc.boolean(), { minLength: 8, maxLength: 8 }),
      (folder, keep) => {
        const { sheet } = requestOf(folder)
        const overrides = sheet.overrides?.filter((_override, place) => keep[place % keep.length])
        const changed = { ...sheet, ...(overrides && { overrides }) }
        const differences = listVariantDifferences(changed)
        listed += differences.length
        for (const { kind, path, variants } of differences) {
          expect(variants.map(({ variant }) => variant)).toEqual(Object.keys(sheet.machine.variants))
          const shown = variants.map(({ variant, resolved }) => {
            expect(resolved).toEqual(resolveLeaf(changed, { variant }, kind, path))
            return resolved.kind === 'stated'
              ? JSON.stringify({ ...resolved.value, source: 0 })
              : resolved.kind
          })
          expect(new Set(shown).size).toBeGreaterThan(1)
        }
        if (Object.keys(sheet.machine.variants).length < 2) expect(differences).toEqual([])
      },
    )
    expect(listed).toBeGreaterThan(3)
  })
})
