import type { JsonPointer } from '../finding.js'
import { convert, figureToNumber, type MassUnit, type Quantity } from '../quantity/index.js'
import type { Drive, ProcedureDocument, SpecSheet, SpecValue, Toolbox } from '../spec/index.js'
import type { CollectedFigures } from './collectFigures.js'
import { findDrive } from './findDrive.js'
import { findSocket } from './findSocket.js'
import { namePart } from './namePart.js'
import { serviceReason } from './serviceReason.js'
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
  const wanted = new Map<string, { readonly drive: Drive; readonly parts: Map<JsonPointer, PartName> }>()
  for (const { do: action, on } of procedure.steps) {
    const drive = on === undefined || !TURNS.has(action) ? undefined : findDrive(sheet, on)
    if (on === undefined || drive === undefined) continue
    const key = `${drive.kind} ${drive.size ?? ''}`
    const entry = wanted.get(key) ?? { drive, parts: new Map<JsonPointer, PartName>() }
    entry.parts.set(on, namePart(sheet, on))
    wanted.set(key, entry)
  }
  return [...wanted.values()].map(({ drive, parts }): PlannedTool => {
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
  const judged = candidates.map(([id, stands]): PlannedTool => {
    const have = { id, name: stands.name }
    if (stands.count < need)
      return {
        ...about,
        have,
        verdict: 'does not fit',
        reasons: [serviceReason('service/stands-too-few', { have: stands.count, need })],
      }
    if (mass === undefined)
      return {
        ...about,
        have,
        verdict: 'cannot tell',
        reasons: [serviceReason('service/mass-not-stated', {})],
      }
    const { rating } = stands
    const holds = convert(rating, mass.unit).value >= mass.value
    return {
      ...about,
      have,
      verdict: holds ? 'fits' : 'does not fit',
      reasons: [
        serviceReason(holds ? 'service/stands-hold' : 'service/stands-too-weak', {
          stands: stands.name,
          rating,
          mass,
        }),
      ],
    }
  })
  const best =
    judged.find(({ verdict }) => verdict === 'fits') ??
    judged.find(({ verdict }) => verdict === 'cannot tell') ??
    judged[0]
  return best === undefined ? [] : [best]
}

/** The most that the machine may weigh by its sheet: one stand must bear all of it, since a load can shift. */
function readMass(figures: CollectedFigures): Quantity<MassUnit> | undefined {
  const resolved = figures.at('/machine/mass')?.resolved
  if (resolved?.kind !== 'stated') return undefined
  const value = resolved.value as Exclude<SpecValue<MassUnit>, { kind: 'not stated' }>
  const digits = value.kind === 'limits' ? value.max : value.kind === 'nominal' ? value.value : undefined
  if (digits !== undefined) return { value: figureToNumber(digits), unit: value.unit }
  if (value.kind !== 'nominal with tolerance') return undefined
  return { value: figureToNumber(value.value) + figureToNumber(value.plus), unit: value.unit }
}
