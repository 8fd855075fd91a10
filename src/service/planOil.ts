import type { Finding, Reason } from '../base/index.js'
import { type ContainerChoice, chooseContainers } from '../fill/index.js'
import { chooseOilChoice, oilMeets } from '../oil/index.js'
import {
  type Exact,
  exactIn,
  exactOf,
  lowerExact,
  minus,
  nearestQuantity,
  plus,
  type Quantity,
  type TemperatureUnit,
  times,
} from '../quantity/index.js'
import {
  type Gearcase,
  type Id,
  nameOil,
  type OilChoice,
  type OilContainer,
  type Oils,
  type SpecSheet,
  type Stock,
} from '../spec/index.js'
import { type ServiceCodes, serviceFinding, serviceReason } from './codes.js'
import type { CollectedFigures } from './collectFigures.js'
import { findOilOwner, listInstances } from './gearcases.js'
import { namePart } from './names.js'
import { type RefillAmount, readRefill, type SplitRefill, splitRefill } from './refills.js'
import type { PlannedOil } from './visitPlan.js'

/** What {@link planOil} is asked: gearcases to be changed, each with the instances that are worked on. */
export interface OilRequest {
  readonly sheet: SpecSheet
  readonly figures: CollectedFigures
  readonly changes: readonly { readonly gearcase: Id; readonly instances: readonly (Id | undefined)[] }[]
  readonly ambient?: Quantity<TemperatureUnit>
  readonly stock?: Stock
}

export interface OilPlan {
  readonly oil: readonly PlannedOil[]
  /** The container that each gearcase's oil is poured from, for the pouring time. */
  readonly pouredFrom: ReadonlyMap<Id, OilContainer>
  /** Volumes to be drained and refilled, by gearcase; absent: not known. */
  readonly volumes: ReadonlyMap<Id, RefillAmount>
  readonly findings: readonly Finding<ServiceCodes>[]
}

/**
 * Chooses for every gearcase to be changed which of the permitted oils holds at this ambient temperature, what of it
 * stands on the shelf, and what is to be bought. Gearcases follow each other on one shelf: what the first takes, the
 * next no longer finds. One gearcase never gets two oils.
 */
export function planOil(request: OilRequest): OilPlan {
  const { sheet, figures, ambient, stock, changes } = request
  const findings: Finding<ServiceCodes>[] = []
  const pouredFrom = new Map<Id, OilContainer>()
  const volumes = new Map<Id, RefillAmount>()
  let shelf: Shelf = stock?.containers ?? {}
  const oil = changes.flatMap(({ gearcase, instances }): readonly PlannedOil[] => {
    const owner = findOilOwner(sheet, gearcase)
    if (owner !== gearcase) return []
    const { oilSpace, yellowMetal = 'not stated' } = sheet.gearcases[gearcase] as Gearcase
    if (oilSpace.kind !== 'own') return []
    const path = `/gearcases/${gearcase}`
    const part = namePart(sheet, path)
    const oilsPath = `${path}/oilSpace/oils`
    const refillPath = `${path}/oilSpace/fill/drainAndRefill`
    const refill = readRefill(figures.at(refillPath)?.resolved, oilSpace.fill.per, {
      worked: instances.length,
      all: listInstances(sheet, gearcase).length,
    })
    if (refill !== undefined) volumes.set(gearcase, refill)
    const base = {
      part,
      figure: figures.pointerTo(oilsPath) ?? '',
      instances: instances.length,
      refill: figures.pointerTo(refillPath) ?? '',
      ...(refill === undefined ? {} : { perInstance: refill.each, needed: refill.all }),
    }
    const resolved = figures.at(oilsPath)?.resolved
    if (resolved?.kind !== 'stated') return [{ ...base, take: [], reasons: [] }]
    const oils = resolved.value as Oils
    const judged = chooseOilChoice(oils, ambient)
    const holding = judged.choices.filter(({ verdict }) => verdict !== 'no')
    const open = judged.reasons.map((reason) => reason as Reason)
    if (holding.length === 0) {
      const params = { part, ambient: ambient ?? { value: 0, unit: 'degC' } }
      const document = { kind: 'spec-sheet', id: sheet.id } as const
      findings.push(serviceFinding('service/no-oil-for-ambient', 'warning', document, oilsPath, params))
      return [{ ...base, take: [], reasons: [serviceReason('service/no-oil-for-ambient', params), ...open] }]
    }
    const offers = holding.map(({ choice }) => judgeShelf(choice, shelf, yellowMetal))
    const usable = offers.findIndex(({ fit }) => Object.keys(fit).length > 0)
    const at = Math.max(usable, 0)
    const choice = holding[at]?.choice
    const offer = offers[at]
    if (choice === undefined || offer === undefined) return [{ ...base, take: [], reasons: open }]
    const split = refill === undefined ? undefined : splitRefill(refill, choice.additive, instances.length)
    if (split !== undefined) volumes.set(gearcase, split.all)
    const about = {
      ...base,
      ...(split === undefined ? {} : { perInstance: split.oil.each, needed: split.oil.all }),
      choice: nameOil(choice),
      ...describeAdditive(choice, base.figure, split),
    }
    const reasons: Reason[] = [
      ...open,
      ambient === undefined || oils.kind !== 'oils'
        ? serviceReason('service/ambient-not-given', { part })
        : serviceReason(oils.choices.length === 1 ? 'service/oil-only-choice' : 'service/oil-for-ambient', {
            oil: nameOil(choice),
            ambient,
          }),
      ...offer.reasons,
    ]
    if (stock === undefined) {
      const buy = split === undefined ? {} : { buy: { volume: split.oil.all } }
      return [{ ...about, take: [], ...buy, reasons: [...reasons, serviceReason('service/no-stock', {})] }]
    }
    if (usable < 0 && Object.keys(stock.containers).length > 0)
      findings.push(
        serviceFinding('service/no-suitable-oil', 'warning', { kind: 'stock', id: stock.id }, '/containers', {
          part,
          oil: nameOil(choice),
          offered: Object.values(stock.containers).map(({ name }) => name),
          reasons: offer.reasons,
        }),
      )
    if (split === undefined) return [{ ...about, take: [], reasons }]
    const chosen = chooseContainers(offer.fit, split.oil.all)
    const taken = takeFromShelf(shelf, chosen)
    shelf = taken.shelf
    const [first] = chosen.use
    const container = first === undefined ? undefined : stock.containers[first.id]
    if (container !== undefined) pouredFrom.set(gearcase, container)
    return [
      {
        ...about,
        take: taken.take,
        ...(chosen.short === undefined
          ? {}
          : {
              buy: {
                volume: chosen.short,
                containers: chosen.buy.flatMap(({ id, count }) => {
                  const size = stock.containers[id]?.size
                  return size === undefined ? [] : [{ size, count }]
                }),
              },
            }),
        reasons: [...reasons, ...chosen.reasons],
      },
    ]
  })
  return { oil, pouredFrom, volumes, findings }
}

/** The containers of the shelf that meet one permitted oil, and why the others do not. */
function judgeShelf(
  choice: OilChoice,
  shelf: Shelf,
  yellowMetal: 'yes' | 'no' | 'not stated',
): { readonly fit: Shelf; readonly reasons: readonly Reason[] } {
  const fit: Record<Id, OilContainer> = {}
  const reasons: Reason[] = []
  for (const [id, container] of Object.entries(shelf)) {
    // The ambient band was judged when the choice was made.
    const verdict = oilMeets(choice, container.oil, { yellowMetal })
    const asked = [verdict.viscosity, verdict.category, verdict.limitedSlip]
    if (asked.every((one) => one === 'yes' || one === 'not judged')) {
      Object.defineProperty(fit, id, { value: container, enumerable: true })
      continue
    }
    const code = asked.includes('no') ? 'service/oil-does-not-meet' : 'service/oil-ask-maker'
    const [because] = verdict.reasons.filter(({ code: why }) => !why.startsWith('oil/ambient'))
    if (because !== undefined)
      reasons.push(
        serviceReason(code, { container: container.name, oil: nameOil(choice), reason: { ...because } }),
      )
  }
  return { fit, reasons }
}

function describeAdditive(
  { additive }: OilChoice,
  figure: string,
  split: SplitRefill | undefined,
): Pick<PlannedOil, 'additive'> {
  if (additive === undefined) return {}
  const { name, includedInRefill } = additive
  const needed = split?.additive === undefined ? {} : { needed: split.additive.all }
  return { additive: { name, figure, includedInRefill, ...needed } }
}

const NOTHING: Exact = { n: 0n, d: 1n }

/** Oil containers by id, as they stand at one moment of the visit. */
type Shelf = Readonly<Record<Id, OilContainer>>

/** Takes what was chosen off the shelf: opened containers first, then full ones, whose rest stays as an opened one. */
function takeFromShelf(
  shelf: Shelf,
  chosen: ContainerChoice,
): { readonly shelf: Shelf; readonly take: PlannedOil['take'] } {
  let left = exactIn(chosen.needed, 'mL')
  const next: Record<Id, OilContainer> = { ...shelf }
  const take: PlannedOil['take'][number][] = []
  for (const { id, opened, full } of chosen.use) {
    const container = next[id]
    if (container === undefined) continue
    const { opened: before, ...rest } = container
    const pour = (available: Exact, opened: boolean): Exact => {
      const taken = lowerExact(available, left)
      if (taken.n > 0n) {
        take.push({ container: id, name: container.name, volume: nearestQuantity(taken, 'mL', 'mL'), opened })
        left = minus(left, taken)
      }
      return minus(available, taken)
    }
    const open = before === undefined ? NOTHING : exactIn(before, 'mL')
    const fromOpened = opened === undefined ? NOTHING : exactIn(opened, 'mL')
    const keptOpen = plus(minus(open, fromOpened), pour(fromOpened, true))
    const keptFull = pour(times(exactIn(container.size, 'mL'), exactOf(full)), false)
    const remains = plus(keptOpen, keptFull)
    next[id] = {
      ...rest,
      count: container.count - full,
      ...(remains.n > 0n ? { opened: nearestQuantity(remains, 'mL', 'mL') } : {}),
    }
  }
  return { shelf: next, take }
}
