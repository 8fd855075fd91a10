import type { Finding } from '../base/index.js'
import { chooseVessel } from '../fill/index.js'
import type { PrintedQuantity, Quantity, VolumeUnit } from '../quantity/index.js'
import { compareExact, readBand, subtract } from '../quantity/index.js'
import type { Id, SpecValue, Toolbox } from '../spec/index.js'
import { type ServiceCodes, serviceFinding, serviceReason } from './codes.js'
import { describePart } from './names.js'
import type { RefillAmount } from './refills.js'
import type { VisitContext } from './visitContext.js'
import type { PlannedTool } from './visitPlan.js'

interface VesselMarks {
  readonly vessel: Id
  /** The mark for each pour. */
  readonly marks: readonly Quantity<VolumeUnit>[]
}

/**
 * Chooses a measuring vessel for each refill. If the gearcase is filled by quantity, a vessel that is too
 * coarse for the tolerance is a finding; without a tolerance it cannot be judged. If a level decides, only a
 * refill more than a tenth off stops the work, so the vessel with the fewest pours within a tenth is chosen;
 * a coarser one is not a finding.
 */
export function planVessel(
  { sheet, figures }: VisitContext,
  volumes: ReadonlyMap<Id, RefillAmount>,
  { id: toolboxId, vessels }: Toolbox,
): {
  readonly tools: readonly PlannedTool[]
  readonly findings: readonly Finding<ServiceCodes>[]
  /** The vessel and its marks, by gearcase. */
  readonly marks: ReadonlyMap<Id, VesselMarks>
} {
  const marks = new Map<Id, VesselMarks>()
  const findings: Finding<ServiceCodes>[] = []
  const document = { kind: 'toolbox', id: toolboxId } as const
  const tools = [...volumes].map(([gearcase, { each }]): PlannedTool => {
    const path = `/gearcases/${gearcase}`
    const part = describePart(sheet, path)
    const common = { kind: 'vessel', for: [part] } as const
    const space = sheet.gearcases[gearcase]?.oilSpace
    const isByQuantity = space?.kind === 'own' && space.fill.method.kind === 'by quantity'
    const stated = figures.stated<SpecValue<VolumeUnit>>(`${path}/oilSpace/fill/drainAndRefill`)
    const choice = chooseVessel(
      vessels,
      each,
      isByQuantity ? chooseNarrowerSide(stated) : calculateTenth(each),
    )
    const {
      verdict,
      vessel,
      marks: chosenMarks,
      reasons,
    } = isByQuantity || choice.verdict === 'fits' ? choice : chooseVessel(vessels, each)
    if (verdict === 'does not fit') {
      const { code, params } = reasons[0] ?? serviceReason('service/no-toolbox', {})
      const reason = { code, params }
      const [firstVessel] = Object.entries(vessels)
      findings.push(
        firstVessel === undefined
          ? serviceFinding('service/no-vessel', 'warning', document, '/vessels', { part, reason })
          : serviceFinding('service/vessel-too-coarse', 'warning', document, `/vessels/${firstVessel[0]}`, {
              vessel: firstVessel[1].name,
              part,
              reason,
            }),
      )
      return { ...common, verdict, reasons }
    }
    const name = vessels[vessel]?.name ?? vessel
    marks.set(gearcase, { vessel, marks: chosenMarks })
    const isToleranceUnknown = isByQuantity && verdict === 'tolerance not stated'
    return {
      ...common,
      have: { id: vessel, name },
      verdict: isToleranceUnknown ? 'cannot tell' : 'fits',
      reasons,
    }
  })
  return { tools, findings, marks }
}

/** The printed tolerance; the narrower side if they differ. */
function chooseNarrowerSide(
  stated: SpecValue<VolumeUnit> | undefined,
): PrintedQuantity<VolumeUnit> | undefined {
  if (stated?.kind !== 'nominal with tolerance') return undefined
  const { low, aim, high } = readBand(stated, stated.unit)
  if (low === undefined || aim === undefined || high === undefined) return undefined
  const isMinusNarrower = compareExact(subtract(aim, low), subtract(high, aim)) <= 0
  return { value: isMinusNarrower ? stated.minus : stated.plus, unit: stated.unit }
}

function calculateTenth({ value, unit }: Quantity<VolumeUnit>): Quantity<VolumeUnit> {
  return { value: Number((value / 10).toPrecision(12)), unit }
}
