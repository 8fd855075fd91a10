import { dropUndefined, type Finding, type Reason } from '../base/index.js'
import { type ContainerChoice, chooseContainers } from '../fill/index.js'
import { isGrease, judgeOilChoices, oilMeets } from '../oil/index.js'
import type { Exact, Quantity, VolumeUnit } from '../quantity/index.js'
import {
  add,
  divide,
  exactIn,
  exactOf,
  findNearestQuantity,
  minExact,
  multiply,
  subtract,
} from '../quantity/index.js'
import type { Gearcase, Id, OilChoice, OilContainer, Oils, Step } from '../spec/index.js'
import { formatOilName } from '../spec/index.js'
import { type ServiceCodes, serviceFinding, serviceReason } from './codes.js'
import { findOilOwner, listInstances } from './gearcases.js'
import { describePart } from './names.js'
import { type RefillAmount, readRefill, type SplitRefill, splitRefill } from './refills.js'
import type { GearcaseInVisit, VisitContext } from './visitContext.js'
import type { PlannedOil } from './visitPlan.js'

export interface OilPlan {
  readonly oil: readonly PlannedOil[]
  /** The container for each gearcase, for the pouring time. */
  readonly containerByGearcase: ReadonlyMap<Id, OilContainer>
  /** Known volumes to be drained and refilled, by gearcase. */
  readonly volumes: ReadonlyMap<Id, RefillAmount>
  readonly findings: readonly Finding<ServiceCodes>[]
}

/**
 * Chooses, for every gearcase, the permitted oil for the ambient temperature, the containers from the stock, and the
 * oil to buy. Oil from the stock for one gearcase is not available for the next. Two oils never go into one gearcase.
 */
export function planOil(
  { sheet, figures, ambient, stock, procedure }: VisitContext,
  changes: readonly GearcaseInVisit[],
): OilPlan {
  const findings: Finding<ServiceCodes>[] = []
  const containerByGearcase = new Map<Id, OilContainer>()
  const volumes = new Map<Id, RefillAmount>()
  let shelf: OilStock = stock?.containers ?? {}
  const oil = changes.flatMap(({ gearcase, instances }): PlannedOil | readonly [] => {
    const { oilSpace, yellowMetal = 'not stated' } = sheet.gearcases[gearcase] as Gearcase
    if (findOilOwner(sheet, gearcase) !== gearcase || oilSpace.kind !== 'own') return []
    const path = `/gearcases/${gearcase}`
    const part = describePart(sheet, path)
    const oilsPath = `${path}/oilSpace/oils`
    const refillPath = `${path}/oilSpace/fill/drainAndRefill`
    const refill = readRefill(figures.stated(refillPath), oilSpace.fill.per, {
      worked: instances.length,
      all: listInstances(sheet, gearcase).length,
    })
    if (refill !== undefined) volumes.set(gearcase, refill)
    const figure = figures.pointerTo(oilsPath) ?? ''
    const base = dropUndefined({
      part,
      figure,
      instances: instances.length,
      refill: figures.pointerTo(refillPath) ?? '',
      perInstance: refill?.each,
      needed: refill?.all,
    })
    const oils = figures.stated<Oils>(oilsPath)
    if (oils === undefined) return { ...base, take: [], reasons: [] }
    const judgedOils = judgeOilChoices(oils, ambient)
    const oilReasons: readonly Reason[] = judgedOils.reasons
    const oilChoices = judgedOils.choices
      .filter(({ verdict }) => verdict !== 'no')
      .map(({ choice }) => ({ choice, ...judgeOilStock(choice, shelf, yellowMetal) }))
    const [usable] = oilChoices.filter(({ suitableContainers }) => Object.keys(suitableContainers).length > 0)
    const oilChoice = usable ?? oilChoices[0]
    if (oilChoice === undefined) {
      const params = { part, ambient: ambient ?? { value: 0, unit: 'degC' } }
      const document = { kind: 'spec-sheet', id: sheet.id } as const
      findings.push(serviceFinding('service/no-oil-for-ambient', 'warning', document, oilsPath, params))
      return {
        ...base,
        take: [],
        reasons: [serviceReason('service/no-oil-for-ambient', params), ...oilReasons],
      }
    }
    const { choice, suitableContainers } = oilChoice
    const splitVolumes = refill && splitRefill(refill, choice.additive, instances.length)
    if (splitVolumes !== undefined) volumes.set(gearcase, splitVolumes.all)
    const name = formatOilName(choice)
    const isPartOfRefill = choice.additive?.includedInRefill === true && splitVolumes?.additive !== undefined
    const isShareOfRefill = oilSpace.fill.per === 'all instances' && listInstances(sheet, gearcase).length > 1
    const common = {
      ...base,
      ...(splitVolumes && { perInstance: splitVolumes.oil.each, needed: splitVolumes.oil.all }),
      ...(splitVolumes && (isPartOfRefill || isShareOfRefill) && { measure: splitVolumes.oil.each }),
      ...(splitVolumes &&
        oilSpace.fill.method.kind !== 'by quantity' && { stopAt: calculateStopVolume(splitVolumes.oil) }),
      choice: name,
      ...describeAdditive(choice, figure, oilsPath, splitVolumes, procedure.steps),
    }
    const isOnlyChoice = oils.kind === 'oils' && oils.choices.length === 1
    const reasons: Reason[] = [
      ...oilReasons,
      ambient === undefined || oils.kind !== 'oils'
        ? serviceReason('service/ambient-not-given', { part })
        : serviceReason(isOnlyChoice ? 'service/oil-only-choice' : 'service/oil-for-ambient', {
            oil: name,
            ambient,
          }),
      ...oilChoice.reasons,
    ]
    if (stock === undefined) {
      const buy = splitVolumes && { buy: { volume: splitVolumes.oil.all } }
      return { ...common, take: [], ...buy, reasons: [...reasons, serviceReason('service/no-stock', {})] }
    }
    const offered = Object.values(stock.containers).map((container) => container.name)
    if (usable === undefined && offered.length > 0) {
      const params = { part, oil: name, offered, reasons: oilChoice.reasons }
      const document = { kind: 'stock', id: stock.id } as const
      findings.push(serviceFinding('service/no-suitable-oil', 'warning', document, '/containers', params))
    }
    if (splitVolumes === undefined) return { ...common, take: [], reasons }
    const chosen = chooseContainers(suitableContainers, splitVolumes.oil.all)
    const taken = takeFromStock(shelf, chosen)
    shelf = taken.shelf
    const container = stock.containers[chosen.use[0]?.id ?? '']
    if (container !== undefined) containerByGearcase.set(gearcase, container)
    const containers = chosen.buy.flatMap(({ id, count }) => {
      const size = stock.containers[id]?.size
      return size === undefined ? [] : [{ size, count }]
    })
    const sold = Object.values(suitableContainers)
      .filter((one) => one.oil.name === chosen.oil)
      .map(({ name, oil, size }) => ({ name, oil: oil.name, size }))
    const meetingOils = new Set(
      oilChoices.flatMap((oilChoice) =>
        Object.values(oilChoice.suitableContainers).map((container) => container.oil.name),
      ),
    )
    if (meetingOils.size > 1 && chosen.oil !== undefined)
      reasons.push(
        serviceReason('service/several-suitable-oils', { part, oils: [...meetingOils], chosen: chosen.oil }),
      )
    return {
      ...common,
      take: taken.take,
      ...(chosen.short && { buy: { volume: chosen.short, containers, sold } }),
      reasons: [...reasons, ...chosen.reasons],
    }
  })
  return { oil, containerByGearcase, volumes, findings }
}

/** Whether the oil chosen for a gearcase is a grease, which is pressed in and not poured. */
export const hasGrease = (oil: readonly PlannedOil[], gearcase: Id | undefined): boolean =>
  oil.some(({ part, choice = '' }) => part.path === `/gearcases/${gearcase}` && isGrease(choice))

/** The containers in stock that meet one permitted oil, and the reasons why the others do not. */
function judgeOilStock(
  choice: OilChoice,
  shelf: OilStock,
  yellowMetal: 'yes' | 'no' | 'not stated',
): { readonly suitableContainers: OilStock; readonly reasons: readonly Reason[] } {
  const suitableContainers: Record<Id, OilContainer> = {}
  const reasons: Reason[] = []
  for (const [id, container] of Object.entries(shelf)) {
    // The ambient band is judged in `judgeOilChoices`.
    const verdict = oilMeets(choice, container.oil, { yellowMetal })
    const verdicts = [verdict.viscosity, verdict.category, verdict.limitedSlip]
    if (verdicts.every((partVerdict) => partVerdict === 'yes' || partVerdict === 'not judged')) {
      Object.defineProperty(suitableContainers, id, { value: container, enumerable: true })
      continue
    }
    const code = verdicts.includes('no') ? 'service/oil-does-not-meet' : 'service/ask-oil-maker'
    const [firstReason] = verdict.reasons.filter(({ code: why }) => !why.startsWith('oil/ambient'))
    if (firstReason !== undefined)
      reasons.push(
        serviceReason(code, {
          container: container.name,
          oil: formatOilName(choice),
          reason: { ...firstReason },
        }),
      )
  }
  return { suitableContainers, reasons }
}

function describeAdditive(
  { additive }: OilChoice,
  figure: string,
  oilsPath: string,
  splitVolumes: SplitRefill | undefined,
  steps: readonly Step[],
): Pick<PlannedOil, 'additive'> {
  if (additive === undefined) return {}
  const { name, includedInRefill } = additive
  const { each: perInstance, all: needed } = splitVolumes?.additive ?? {}
  const hasOilFigure = (candidate: Step, action: Step['do']) =>
    candidate.do === action && Object.values(candidate.values ?? {}).includes(oilsPath)
  const added = steps.findIndex((step) => hasOilFigure(step, 'add the additive'))
  const order =
    added > steps.findIndex((step) => hasOilFigure(step, 'pour the oil')) ? 'oil first' : 'additive first'
  return { additive: dropUndefined({ name, figure, includedInRefill, order, perInstance, needed }) }
}

/** The volume at which to stop: more means that old oil stayed in, or that the machine is not level. */
function calculateStopVolume({ each, exactEach }: RefillAmount): Quantity<VolumeUnit> {
  return findNearestQuantity(multiply(exactEach, divide(exactOf(11), exactOf(10))), 'mL', each.unit)
}

const ZERO_VOLUME = { value: 0, unit: 'mL' } as const

/** Oil containers by id. */
type OilStock = Readonly<Record<Id, OilContainer>>

/** Takes the chosen oil from the stock: opened containers first, then full ones, which may stay opened. */
function takeFromStock(
  shelf: OilStock,
  chosen: ContainerChoice,
): { readonly shelf: OilStock; readonly take: PlannedOil['take'] } {
  let volumeLeft = exactIn(chosen.needed, 'mL')
  const next: Record<Id, OilContainer> = { ...shelf }
  const take: PlannedOil['take'][number][] = []
  for (const { id, opened, full } of chosen.use) {
    const container = next[id]
    if (container === undefined) continue
    const { opened: openedBefore, ...containerFields } = container
    const takeVolume = (availableVolume: Exact, opened: boolean): Exact => {
      const taken = minExact(availableVolume, volumeLeft)
      if (taken.n > 0n) {
        take.push({
          container: id,
          name: container.name,
          volume: findNearestQuantity(taken, 'mL', 'mL'),
          opened,
        })
        volumeLeft = subtract(volumeLeft, taken)
      }
      return subtract(availableVolume, taken)
    }
    const openedVolume = exactIn(openedBefore ?? ZERO_VOLUME, 'mL')
    const usedOpenedVolume = exactIn(opened ?? ZERO_VOLUME, 'mL')
    const openedLeft = add(subtract(openedVolume, usedOpenedVolume), takeVolume(usedOpenedVolume, true))
    const fullLeft = takeVolume(multiply(exactIn(container.size, 'mL'), exactOf(full)), false)
    const openedAfter = add(openedLeft, fullLeft)
    next[id] = {
      ...containerFields,
      count: container.count - full,
      ...(openedAfter.n > 0n ? { opened: findNearestQuantity(openedAfter, 'mL', 'mL') } : {}),
    }
  }
  return { shelf: next, take }
}
