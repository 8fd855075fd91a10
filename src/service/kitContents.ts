import type { Quantity, VolumeUnit } from '../quantity/index.js'
import type { Id, Seal } from '../spec/index.js'
import { addOils } from './addOils.js'
import { addSeals } from './addSeals.js'
import type { VisitPlan } from './visitPlan.js'

/** What goes into the van for one machine. */
export interface Kit {
  readonly machine: { readonly id: Id; readonly name: string }
  /** Needed for the visit, by oil. */
  readonly oil: readonly KitOil[]
  readonly seals: readonly KitSeal[]
  readonly tools: readonly { readonly id: Id; readonly name: string }[]
  /** Of that, what the shelf lacked when the visit was planned. */
  readonly buy: { readonly oil: readonly KitOil[]; readonly seals: readonly KitSeal[] }
}

export interface KitOil {
  readonly oil: string
  readonly volume: Quantity<VolumeUnit>
}

export interface KitSeal {
  readonly seal: Seal
  /** Part number, else what it is. */
  readonly name: string
  readonly count: number
}

/**
 * Lists what to take along for one planned visit: oil, seals and tools, each once however many parts need it.
 * For kits that are alike use {@link groupKits}; for what to order over a fleet use {@link orderList}.
 *
 * @param plan - as `planVisit` gives it
 * @returns oil in millilitres by name, seals by part number or description, tools by id
 *
 * Source: house rule.
 * @example
 * ```ts
 * import { kitContents } from 'drivetrain-service/v1/service'
 * const part = { path: '/gearcases/front', gearcase: 'front differential' }
 * const oil = { part, figure: '', refill: '', instances: 1, choice: '80W-90 GL-5', needed: { value: 450, unit: 'mL' }, take: [], reasons: [] } as const
 * const plan = { machine: { log: 'one', name: 'One' }, oil: [oil, oil], seals: [], tightenings: [], tools: [], pan: {} }
 * // How much oil for two gearcases of 450 mL?
 * kitContents(plan).oil[0].volume.value // => 900
 * ```
 */
export function kitContents(plan: VisitPlan): Kit {
  const { log, name } = plan.machine
  const needed = plan.oil.flatMap(({ choice, needed: volume }) =>
    choice === undefined || volume === undefined ? [] : [{ oil: choice, volume }],
  )
  const short = plan.oil.flatMap(({ choice, buy }) =>
    choice === undefined || buy === undefined ? [] : [{ oil: choice, volume: buy.volume }],
  )
  const seals = plan.seals.map(({ seal, count }) => ({ seal, name: nameSeal(seal), count }))
  const lacking = plan.seals.map(({ seal, buy }) => ({ seal, name: nameSeal(seal), count: buy }))
  const tools = new Map<Id, string>()
  for (const { wrench } of plan.tightenings) if (wrench !== undefined) tools.set(wrench.id, wrench.name)
  for (const { have } of plan.tools) if (have !== undefined) tools.set(have.id, have.name)
  if (plan.pan.have !== undefined) tools.set(plan.pan.have.id, plan.pan.have.name)
  return {
    machine: { id: log, name },
    oil: addOils(needed),
    seals: addSeals(seals),
    tools: [...tools].map(([id, toolName]) => ({ id, name: toolName })),
    buy: { oil: addOils(short), seals: addSeals(lacking) },
  }
}

function nameSeal(seal: Seal): string {
  if (seal.kind === 'none' || seal.kind === 'not stated') return seal.kind
  const number = seal.partNumber === undefined ? [] : [seal.partNumber]
  const what: readonly string[] =
    seal.kind === 'thread sealant' || seal.kind === 'liquid gasket'
      ? [seal.product]
      : 'size' in seal && seal.size !== undefined
        ? [Object.values(seal.size).slice(0, -1).join(' × '), seal.size.unit]
        : []
  return [...number, seal.kind, ...what].join(' ')
}
