import type { Finding } from '../base/index.js'
import { chooseVessel } from '../fill/index.js'
import { compareFigures, type Quantity, type VolumeUnit } from '../quantity/index.js'
import type { Id, SpecSheet, SpecValue, Toolbox } from '../spec/index.js'
import { type ServiceCodes, serviceFinding, serviceReason } from './codes.js'
import type { CollectedFigures } from './collectFigures.js'
import { namePart } from './names.js'
import type { RefillAmount } from './refills.js'
import type { PlannedTool } from './visitPlan.js'

/**
 * Chooses a measuring vessel for each refill. Where the manual fills by quantity within a tolerance, a vessel that is
 * too coarse is a finding; where it states no tolerance, whether one is fine enough cannot be told. At a level the hole
 * or the mark decides, and only a refill more than a tenth off stops the work: the fewest pours that keep that are
 * taken, and a coarser vessel is no finding.
 */
export function planVessel(
  sheet: SpecSheet,
  figures: CollectedFigures,
  volumes: ReadonlyMap<Id, RefillAmount>,
  toolbox: Toolbox,
): { readonly tools: readonly PlannedTool[]; readonly findings: readonly Finding<ServiceCodes>[] } {
  const findings: Finding<ServiceCodes>[] = []
  const tools = [...volumes].map(([gearcase, { each }]): PlannedTool => {
    const part = namePart(sheet, `/gearcases/${gearcase}`)
    const about = { kind: 'vessel', for: [part] } as const
    const space = sheet.gearcases[gearcase]?.oilSpace
    const refill = figures.at(`/gearcases/${gearcase}/oilSpace/fill/drainAndRefill`)?.resolved
    const stated = refill?.kind === 'stated' ? (refill.value as SpecValue<VolumeUnit>) : undefined
    const byQuantity = space?.kind === 'own' && space.fill.method.kind === 'by quantity'
    const tolerance =
      byQuantity && stated?.kind === 'nominal with tolerance'
        ? {
            value: compareFigures(stated.minus, stated.plus) <= 0 ? stated.minus : stated.plus,
            unit: stated.unit,
          }
        : undefined
    const choice = chooseVessel(toolbox.vessels, each, byQuantity ? tolerance : tenthOf(each))
    const { verdict, vessel, reasons } =
      byQuantity || choice.verdict === 'fits' ? choice : chooseVessel(toolbox.vessels, each)
    const found = vessel === undefined ? undefined : toolbox.vessels[vessel]
    if (verdict === 'does not fit') {
      const because = reasons[0] ?? serviceReason('service/no-toolbox', {})
      const [coarse] = Object.entries(toolbox.vessels)
      const reason = { code: because.code, params: because.params }
      findings.push(
        coarse === undefined
          ? serviceFinding('service/no-vessel', 'warning', { kind: 'toolbox', id: toolbox.id }, '/vessels', {
              part,
              reason,
            })
          : serviceFinding(
              'service/vessel-too-coarse',
              'warning',
              { kind: 'toolbox', id: toolbox.id },
              `/vessels/${coarse[0]}`,
              { vessel: coarse[1].name, part, reason },
            ),
      )
      return { ...about, verdict: 'does not fit', reasons }
    }
    return {
      ...about,
      ...(vessel === undefined || found === undefined ? {} : { have: { id: vessel, name: found.name } }),
      verdict: byQuantity && verdict === 'tolerance not stated' ? 'cannot tell' : 'fits',
      reasons,
    }
  })
  return { tools, findings }
}

/** In short digits, since it is told to people. */
function tenthOf({ value, unit }: Quantity<VolumeUnit>): Quantity<VolumeUnit> {
  return { value: Number((value / 10).toPrecision(12)), unit }
}
