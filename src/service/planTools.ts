import { type JsonPointer, splitPointer } from '../base/index.js'
import type { MassUnit, Quantity } from '../quantity/index.js'
import { chooseSingleFigure, compareQuantities, findNearestQuantity, readBand } from '../quantity/index.js'
import type { Drive, Id, SpecValue, Stands, Toolbox } from '../spec/index.js'
import { serviceReason } from './codes.js'
import { findSocket, listDrives } from './drives.js'
import { describePart, type PartName } from './names.js'
import type { VisitContext } from './visitContext.js'
import type { PlannedTool } from './visitPlan.js'

/**
 * Lists the sockets, keys, stands and ramps that the steps of a visit need, each with a tool from the toolbox
 * or as missing.
 */
export function planTools(visit: VisitContext, toolbox: Toolbox): readonly PlannedTool[] {
  return [...planSockets(visit, toolbox), ...planStands(visit, toolbox), ...planRamps(visit, toolbox)]
}

const TURNING_ACTIONS: ReadonlySet<string> = new Set([
  'crack loose',
  'take out',
  'tighten',
  'take off cover',
  'tighten cover',
  'take off filter',
  'tighten filter',
  'remove shield',
  'refit shield',
])

function planSockets(
  { sheet, identity, procedure, partsWithoutSteps }: VisitContext,
  toolbox: Toolbox,
): readonly PlannedTool[] {
  const needed = new Map<string, { readonly drive?: Drive; readonly parts: Map<JsonPointer, PartName> }>()
  const turnedParts = procedure.steps.flatMap(({ do: action, on }) =>
    on && TURNING_ACTIONS.has(action) ? on : [],
  )
  for (const on of [...turnedParts, ...partsWithoutSteps]) {
    const drives = listDrives(sheet, identity, on)
    for (const drive of drives?.length === 0 ? [undefined] : (drives ?? [])) {
      const key = `${drive?.kind} ${drive?.size ?? ''}`
      const entry = needed.get(key) ?? { ...(drive && { drive }), parts: new Map<JsonPointer, PartName>() }
      entry.parts.set(on, describePart(sheet, on))
      needed.set(key, entry)
    }
  }
  return [...needed.values()].flatMap(({ drive, parts }): readonly PlannedTool[] => {
    const [part] = parts.values()
    if (part === undefined) return []
    const common = { kind: 'socket', for: [...parts.values()] } as const
    const { kind, size = '' } = drive ?? {}
    if (drive && (kind === 'hand' || kind === 'clip'))
      return [
        { ...common, drive, verdict: 'fits', reasons: [serviceReason('service/turned-by-hand', { part })] },
      ]
    if (drive === undefined || kind === undefined || (size === '' && kind !== 'slot')) {
      const reasons = [serviceReason('service/drive-not-stated', { part })]
      return [{ ...common, ...(drive && { drive }), verdict: 'cannot tell', reasons }]
    }
    const found = findSocket(drive, toolbox)
    if (found === undefined) {
      const reasons = [serviceReason('service/socket-missing', { part, drive: kind, size })]
      return [{ ...common, drive, verdict: 'missing', reasons }]
    }
    const { id, socket } = found
    const reasons = [serviceReason('service/socket-found', { tool: socket.name, size })]
    return [{ ...common, drive, have: { id, name: socket.name }, verdict: 'fits', reasons }]
  })
}

function planStands({ procedure, figures }: VisitContext, toolbox: Toolbox): readonly PlannedTool[] {
  const supports = procedure.steps.filter(({ do: action }) => action === 'set on stands')
  // Two stands for each support: a frame tube is held at both ends.
  const need = 2 * new Set(supports.map(({ on }) => on)).size
  return chooseSets('stands', toolbox.stands, need, findMaxMass(figures.stated('/machine/mass')))
}

/** One ramp for each wheel to be raised. */
function planRamps({ sheet, procedure, figures }: VisitContext, toolbox: Toolbox): readonly PlannedTool[] {
  const { axles } = sheet.machine
  const drivenAxles = procedure.steps.flatMap(({ do: action, on }) => {
    if (action !== 'drive onto ramps') return []
    const [axle] = splitPointer(on ?? '')?.slice(2) ?? []
    return axle === undefined ? Object.keys(axles) : [axle]
  })
  const need = [...new Set(drivenAxles)].reduce((sum, axle) => sum + (axles[axle]?.wheels ?? 0), 0)
  return chooseSets('ramps', toolbox.ramps ?? {}, need, findMaxMass(figures.stated('/machine/mass')))
}

/** The sets that together are enough, or the best set with its shortcoming. */
function chooseSets(
  kind: 'stands' | 'ramps',
  sets: Toolbox['stands'],
  need: number,
  mass: Quantity<MassUnit> | undefined,
): readonly PlannedTool[] {
  if (need === 0) return []
  const judged = Object.entries(sets).map(([id, set]) => judgeSet(kind, id, set, mass))
  const [firstSet] = judged
  if (firstSet === undefined)
    return [
      { kind, for: [], verdict: 'missing', reasons: [serviceReason(`service/${kind}-missing`, { need })] },
    ]
  const adequateSets = judged
    .filter(({ tool }) => tool.verdict !== 'does not fit')
    .sort(
      (first, second) =>
        USABLE_VERDICTS.indexOf(first.tool.verdict) - USABLE_VERDICTS.indexOf(second.tool.verdict),
    )
  const sufficientSet = adequateSets.find(({ count }) => count >= need)
  if (sufficientSet !== undefined) return [sufficientSet.tool]
  const combinedSets: PlannedTool[] = []
  let have = 0
  for (const { tool, count } of adequateSets.sort((first, second) => second.count - first.count)) {
    if (have >= need || count === 0) break
    combinedSets.push(tool)
    have += count
  }
  if (have >= need) return combinedSets
  const [best] = adequateSets
  if (best === undefined) return [{ ...firstSet.tool, verdict: 'does not fit' }]
  const reasons = [serviceReason(`service/${kind}-too-few`, { have, need })]
  return [{ ...best.tool, verdict: 'does not fit', reasons }]
}

const USABLE_VERDICTS: readonly PlannedTool['verdict'][] = ['fits', 'cannot tell']

/** One stand or ramp must bear the mass of the whole machine, since a load can shift. */
function judgeSet(
  kind: 'stands' | 'ramps',
  id: Id,
  { name, rating, count }: Stands,
  mass: Quantity<MassUnit> | undefined,
): { readonly tool: PlannedTool; readonly count: number } {
  const makeVerdict = (verdict: PlannedTool['verdict'], reason: PlannedTool['reasons'][number]) => ({
    tool: { kind, for: [], have: { id, name }, verdict, reasons: [reason] } as const,
    count,
  })
  if (mass === undefined) return makeVerdict('cannot tell', serviceReason('service/mass-not-stated', {}))
  const fits = compareQuantities(rating, mass) >= 0
  const [verdict, codeEnding] = fits
    ? (['fits', 'strong-enough'] as const)
    : (['does not fit', 'too-weak'] as const)
  const reason =
    kind === 'stands'
      ? serviceReason(`service/stands-${codeEnding}`, { stands: name, rating, mass })
      : serviceReason(`service/ramps-${codeEnding}`, { ramps: name, rating, mass })
  return makeVerdict(verdict, reason)
}

/** The maximum mass of the machine according to its sheet. */
function findMaxMass(value: SpecValue<MassUnit> | undefined): Quantity<MassUnit> | undefined {
  if (value === undefined || value.kind === 'not stated') return undefined
  if (value.kind === 'limits' && value.max === undefined) return undefined
  const { unit } = value
  const band = readBand(value, unit)
  return findNearestQuantity(band.high ?? chooseSingleFigure(band), unit, unit)
}
