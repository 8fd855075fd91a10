import { dropUndefined, requireShape, type Shape } from '../base/index.js'
import { ACTIONS } from '../procedure/index.js'
import type { Id } from '../spec/index.js'
import { type KitFilter, type KitOil, type KitSeal, sumFilters, sumOils, sumSeals } from './kitSums.js'
import { describeSeal, formatPartNumber } from './names.js'
import type { PlannedSeal, VisitPlan } from './visitPlan.js'

/** Oil, seals, filters and tools for the visit to one machine. */
export interface Kit {
  readonly machine: { readonly id: Id; readonly name: string }
  /** By name, including additives. A stock has no additives, so all are bought. */
  readonly oil: readonly KitOil[]
  /** New seals to fit. */
  readonly seals: readonly KitSeal[]
  /** Seals to have ready, for those that are inspected; not bought; absent if there are none. */
  readonly spares?: readonly KitSeal[]
  /** New filters; absent if there are none. A stock has no filters, so all are bought. */
  readonly filters?: readonly KitFilter[]
  readonly tools: readonly { readonly id: Id; readonly name: string }[]
  /** Clean bottles with a label, one for each oil sample; absent if there are none. */
  readonly sampleBottles?: number
  /** Other supplies that the sheet lists, such as brake cleaner; absent if there are none. */
  readonly supplies?: readonly string[]
  /** Parts whose number of fasteners the manual does not state: count them; absent if there are none. */
  readonly toCount?: readonly string[]
  /** Items that were not in stock when the visit was planned. */
  readonly buy: {
    readonly oil: readonly KitOil[]
    readonly seals: readonly KitSeal[]
    readonly filters?: readonly KitFilter[]
  }
}

const PLAN_SHAPE: Shape = {
  machine: {},
  'pan?': {},
  oil: [{}],
  seals: [{ seal: {}, reasons: [{}] }],
  'filters?': [{}],
  tightenings: [{}],
  tools: [{}],
}

/**
 * Lists the oil, seals, filters and tools to bring for one planned visit, each only once. To order for
 * several visits, use {@link orderList}.
 *
 * @param plan - the result of `planVisit`
 * @returns oils and additives in millilitres by name, seals by part number or description (a sealant as one
 * package), spares for seals that are inspected, tools by id
 * @throws TypeError if `plan` is not a plan
 *
 * Source: house rule.
 * @example
 * ```ts
 * import { kitContents, type VisitPlan } from 'drivetrain-service/v1/service'
 * const part = { path: '/gearcases/front', gearcase: 'front differential' }
 * const oil = { part, figure: '', refill: '', instances: 1, choice: 'SAE 80W-90, API GL-5', needed: { value: 450, unit: 'mL' }, take: [], reasons: [] } as const
 * // The parts of a plan that a kit needs
 * const plan = { machine: { log: 'one', name: 'One' }, oil: [oil, oil], seals: [], tightenings: [], tools: [] } as unknown as VisitPlan
 * // How much oil do two gearcases of 450 mL need?
 * kitContents(plan).oil[0]?.volume.value // => 900
 * ```
 */
export function kitContents(plan: VisitPlan): Kit {
  requireShape('plan', plan, PLAN_SHAPE, 'pass the result of planVisit')
  const { log, name } = plan.machine
  const needed = plan.oil.flatMap(({ choice, needed: volume }) =>
    choice === undefined || volume === undefined ? [] : [{ oil: choice, volume }],
  )
  const oilsToBuy = plan.oil.flatMap(({ choice, buy }) =>
    choice === undefined || buy === undefined
      ? []
      : [dropUndefined({ oil: choice, volume: buy.volume, sold: buy.sold })],
  )
  const additives = plan.oil.flatMap(({ additive }) =>
    additive?.needed === undefined ? [] : [{ oil: additive.name, volume: additive.needed }],
  )
  const packages = new Set<string>()
  const isSpare = ({ reasons }: PlannedSeal) =>
    reasons.some(({ code }) => code === 'service/seal-on-condition')
  const seals = plan.seals
    .filter((line) => !isSpare(line))
    .map(({ seal, count }) => {
      const name = describeSeal(seal)
      // One package of sealant is enough for all places.
      const isPackageCounted =
        (seal.kind === 'thread sealant' || seal.kind === 'liquid gasket') && packages.has(name)
      packages.add(name)
      return { seal, name, count: isPackageCounted ? 0 : count }
    })
  const spares = sumSeals(
    plan.seals.filter(isSpare).map(({ seal, count }) => ({ seal, name: describeSeal(seal), count })),
  )
  const sealsToBuy = plan.seals.map(({ seal, buy }) => ({ seal, name: describeSeal(seal), count: buy }))
  const filters = sumFilters(
    (plan.filters ?? []).map(({ kind, part: { part: partName = '' }, count, ...numbers }) => {
      const part = formatPartNumber(numbers) ?? partName
      return { name: `${part} ${kind}`.trim(), kind, part, count }
    }),
  )
  const tools = new Map<Id, string>()
  for (const { wrench } of plan.tightenings) if (wrench !== undefined) tools.set(wrench.id, wrench.name)
  for (const { have } of plan.tools) if (have !== undefined) tools.set(have.id, have.name)
  const pan = plan.pan?.have
  if (pan !== undefined) tools.set(pan.id, pan.name)
  const bottles = (plan.consumables ?? []).filter(({ code }) => code === 'service/sample-label').length
  const consumables = (plan.consumables ?? []).flatMap(({ params: { supply } }) => supply ?? [])
  const supplies = consumables.map(String).filter((supply) => !isUsual(supply))
  const toCount = (plan.missing ?? [])
    .filter(({ reason }) => reason.params['role'] === 'fasteners')
    .map(({ part }) => part?.part ?? '')
  return dropUndefined({
    machine: { id: log, name },
    oil: sumOils([...needed, ...additives]),
    seals: sumSeals(seals),
    spares: spares.length === 0 ? undefined : spares,
    filters,
    sampleBottles: bottles === 0 ? undefined : bottles,
    supplies: supplies.length === 0 ? undefined : supplies,
    toCount: toCount.length === 0 ? undefined : toCount,
    tools: [...tools].map(([id, toolName]) => ({ id, name: toolName })),
    buy: dropUndefined({ oil: sumOils([...oilsToBuy, ...additives]), seals: sumSeals(sealsToBuy), filters }),
  })
}

/** Whether the table of actions has this supply, so that any service may need it. */
const isUsual = (supply: string): boolean =>
  supply === 'suction pump' ||
  Object.values(ACTIONS).some(({ supplies }) => supplies.some((usualSupply) => usualSupply === supply))
