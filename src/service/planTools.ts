import type { JsonPointer } from '../base/index.js'
import {
  compareQuantities,
  type MassUnit,
  nearestQuantity,
  type Quantity,
  readBand,
  singleFigure,
} from '../quantity/index.js'
import type { Drive, Id, ProcedureDocument, SpecSheet, SpecValue, Stands, Toolbox } from '../spec/index.js'
import { serviceReason } from './codes.js'
import type { CollectedFigures } from './collectFigures.js'
import { findDrive, findSocket } from './drives.js'
import { namePart } from './names.js'
import type { PartName, PlannedTool } from './visitPlan.js'

/**
 * Lists the sockets, keys and stands that the steps of a visit need, each with the one at hand or what is lacking.
 * Torque wrenches, the vessel, the pan and the funnel have lists of their own.
 */
export function planTools(
  sheet: SpecSheet,
  procedure: ProcedureDocument,
  figures: CollectedFigures,
  toolbox: Toolbox,
): readonly PlannedTool[] {
  return [...planSockets(sheet, procedure, toolbox), ...planStands(procedure, figures, toolbox)]
}

const TURNS: ReadonlySet<string> = new Set([
  'crack loose',
  'take out',
  'tighten',
  'take off cover',
  'tighten cover',
  'remove shield',
  'refit shield',
])

function planSockets(
  sheet: SpecSheet,
  procedure: ProcedureDocument,
  toolbox: Toolbox,
): readonly PlannedTool[] {
  const needed = new Map<string, { readonly drive: Drive; readonly parts: Map<JsonPointer, PartName> }>()
  for (const { do: action, on } of procedure.steps) {
    const drive = on === undefined || !TURNS.has(action) ? undefined : findDrive(sheet, on)
    if (on === undefined || drive === undefined) continue
    const key = `${drive.kind} ${drive.size ?? ''}`
    const entry = needed.get(key) ?? { drive, parts: new Map<JsonPointer, PartName>() }
    entry.parts.set(on, namePart(sheet, on))
    needed.set(key, entry)
  }
  return [...needed.values()].map(({ drive, parts }): PlannedTool => {
    const [firstPath] = parts.keys()
    const [part] = parts.values()
    const about = { kind: 'socket', for: [...parts.values()], drive } as const
    if (firstPath === undefined || part === undefined || drive.kind === 'hand')
      return {
        ...about,
        verdict: 'fits',
        reasons: part === undefined ? [] : [serviceReason('service/hand-only', { part })],
      }
    if (drive.size === undefined && drive.kind !== 'slot')
      return {
        ...about,
        verdict: 'cannot tell',
        reasons: [serviceReason('service/drive-not-stated', { part })],
      }
    const found = findSocket(sheet, firstPath, toolbox)
    if (found === undefined)
      return {
        ...about,
        verdict: 'missing',
        reasons: [
          serviceReason('service/socket-missing', { part, drive: drive.kind, size: drive.size ?? '' }),
        ],
      }
    const { id, socket } = found
    return {
      ...about,
      have: { id, name: socket.name },
      verdict: 'fits',
      reasons: [serviceReason('service/socket-found', { tool: socket.name, size: drive.size ?? '' })],
    }
  })
}

function planStands(
  procedure: ProcedureDocument,
  figures: CollectedFigures,
  toolbox: Toolbox,
): readonly PlannedTool[] {
  const supports = procedure.steps.filter(({ do: action }) => action === 'set on stands')
  if (supports.length === 0) return []
  // Two stands a support: a frame tube is held at both ends.
  const need = 2 * new Set(supports.map(({ on }) => on)).size
  const mass = readMass(figures)
  const candidates = Object.entries(toolbox.stands)
  const about = { kind: 'stands', for: [] } as const
  if (candidates.length === 0)
    return [{ ...about, verdict: 'missing', reasons: [serviceReason('service/stands-missing', { need })] }]
  const judged = candidates.map(([id, stands]) => ({ ...judgeStands(id, stands, mass), count: stands.count }))
  const bearing = judged
    .filter(({ tool }) => tool.verdict !== 'does not fit')
    .sort((first, second) => VERDICTS.indexOf(first.tool.verdict) - VERDICTS.indexOf(second.tool.verdict))
  const alone = bearing.find(({ count }) => count >= need)
  if (alone !== undefined) return [alone.tool]
  const together: PlannedTool[] = []
  let have = 0
  for (const { tool, count } of bearing.sort((first, second) => second.count - first.count)) {
    if (have >= need || count === 0) break
    together.push(tool)
    have += count
  }
  if (have >= need) return together
  const [first] = bearing.length > 0 ? bearing : judged
  if (first === undefined) return []
  const reasons =
    bearing.length > 0 ? [serviceReason('service/stands-too-few', { have, need })] : first.tool.reasons
  return [{ ...first.tool, verdict: 'does not fit', reasons }]
}

const VERDICTS: readonly PlannedTool['verdict'][] = ['fits', 'cannot tell']

/** One stand must bear the whole machine; a rating equal to its mass does. */
function judgeStands(
  id: Id,
  { name, rating }: Stands,
  mass: Quantity<MassUnit> | undefined,
): { readonly tool: PlannedTool } {
  const about = { kind: 'stands', for: [], have: { id, name } } as const
  if (mass === undefined)
    return {
      tool: { ...about, verdict: 'cannot tell', reasons: [serviceReason('service/mass-not-stated', {})] },
    }
  const holds = compareQuantities(rating, mass) >= 0
  const code = holds ? 'service/stands-strong-enough' : 'service/stands-too-weak'
  return {
    tool: {
      ...about,
      verdict: holds ? 'fits' : 'does not fit',
      reasons: [serviceReason(code, { stands: name, rating, mass })],
    },
  }
}

/** The most that the machine may weigh by its sheet: one stand must bear all of it, since a load can shift. */
function readMass(figures: CollectedFigures): Quantity<MassUnit> | undefined {
  const resolved = figures.at('/machine/mass')?.resolved
  if (resolved?.kind !== 'stated') return undefined
  const value = resolved.value as Exclude<SpecValue<MassUnit>, { kind: 'not stated' }>
  if (value.kind === 'limits' && value.max === undefined) return undefined
  const { unit } = value
  const band = readBand(value, unit)
  return nearestQuantity(band.high ?? singleFigure(band), unit, unit)
}
