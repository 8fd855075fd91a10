import { type JsonPointer, joinPointer, readPointer, splitPointer } from '../base/index.js'
import { type Measure, measureOf, secondUnit, type Unit } from '../quantity/index.js'
import type {
  Id,
  Identity,
  Leaf,
  PrintedValue,
  ProcedureDocument,
  Resolved,
  Source,
  SpecSheet,
} from '../spec/index.js'
import { findLeafRow, listLeafTypes, resolveLeaf } from '../spec/index.js'
import { isHeldByClips } from './drives.js'
import { findOilOwner } from './gearcases.js'
import { describePart } from './names.js'
import type { PlannedFigure } from './visitPlan.js'

/** The figures of a visit, and their places in the plan. */
export interface CollectedFigures {
  readonly figures: readonly PlannedFigure[]
  /** The sources of the figures, in the order of the sheet. */
  readonly sources: Readonly<Record<Id, Source>>
  /** Pointer into the plan for a path of the sheet, if the visit needs that leaf. */
  readonly pointerTo: (path: JsonPointer) => JsonPointer | undefined
  readonly at: (path: JsonPointer) => PlannedFigure | undefined
  /** The leaf, if it is stated for this machine; the caller knows its kind. */
  readonly stated: <L extends Leaf>(path: JsonPointer) => L | undefined
}

/**
 * Collects every leaf that the steps and gearcases of a procedure need, resolved for one machine, in the
 * order of the steps.
 */
export function collectFigures(
  sheet: SpecSheet,
  identity: Identity,
  gearcases: readonly Id[],
  procedure: Pick<ProcedureDocument, 'steps'>,
  partsWithoutSteps: readonly JsonPointer[],
): CollectedFigures {
  const neededLeaves = new Map<JsonPointer, Omit<PlannedFigure, 'resolved' | 'part'>>()
  // Most steps name the parts and leaves of earlier steps again.
  const seen = new Set<JsonPointer>()
  const addLeaf = (path: JsonPointer): void => {
    if (seen.has(path)) return
    seen.add(path)
    const row = findLeafRow(splitPointer(path) ?? [])
    const leaf = readPointer(sheet, path)
    if (row === undefined || row.read === 'due' || leaf === undefined) return
    if (
      row.kind === 'tightening' &&
      isHeldByClips(sheet, identity, path) &&
      (leaf as Leaf).kind === 'not stated'
    )
      return
    neededLeaves.set(path, { role: row.role, leaf: row.kind, path })
  }
  for (const gearcase of gearcases) {
    for (const path of listGearcaseLeaves(sheet, gearcase)) addLeaf(path)
    const fill = `/gearcases/${findOilOwner(sheet, gearcase)}/oilSpace/fill`
    const refill = `${fill}/drainAndRefill`
    const kind = findLeafRow(splitPointer(refill) ?? [])?.kind
    // If the refill is not stated, the dry fill is the maximum that can run out.
    if (kind && resolveLeaf(sheet, identity, kind, refill).kind !== 'stated') addLeaf(`${fill}/dryFill`)
  }
  const seenParts = new Set<JsonPointer>()
  const addPart = (part: JsonPointer): void => {
    if (seenParts.has(part)) return
    seenParts.add(part)
    for (const path of listPartLeaves(sheet, part)) addLeaf(path)
  }
  for (const part of partsWithoutSteps) addPart(part)
  for (const step of procedure.steps) {
    if (step.on !== undefined) addPart(step.on)
    for (const path of Object.values(step.values ?? {})) addLeaf(path)
  }
  addLeaf('/machine/mass')

  const figures = [...neededLeaves.values()].map(({ role, leaf, path }): PlannedFigure => {
    const resolved: Resolved<Leaf> = resolveLeaf(sheet, identity, leaf, path)
    const computed = computeOtherUnits(resolved)
    const common = { role, leaf, part: describePart(sheet, path), path, resolved }
    return computed.length === 0 ? common : { ...common, computed }
  })
  const read = new Set(figures.flatMap(({ resolved }) => listSources(resolved)))
  const placeByPath = new Map(figures.map(({ path }, place) => [path, place]))
  const at = (path: JsonPointer) => figures[placeByPath.get(path) ?? -1]
  return {
    figures,
    sources: Object.fromEntries(Object.entries(sheet.sources).filter(([id]) => read.has(id))),
    pointerTo: (path) => (placeByPath.has(path) ? `/figures/${placeByPath.get(path)}` : undefined),
    at,
    stated: <L extends Leaf>(path: JsonPointer) => {
      const resolved = at(path)?.resolved
      return resolved?.kind === 'stated' ? (resolved.value as L) : undefined
    },
  }
}

function listSources(resolved: Resolved<Leaf>): readonly Id[] {
  const withTrace = resolved.kind === 'cannot tell' ? resolved.candidates : [resolved]
  return withTrace.flatMap(({ trace }) => trace.source?.ref ?? [])
}

/** The leaves that a visit reads for each gearcase; those of the oil are from its owner. */
function listGearcaseLeaves(sheet: SpecSheet, gearcase: Id): readonly JsonPointer[] {
  const owner = findOilOwner(sheet, gearcase)
  return listLeafTypes()
    .filter(({ read }) => read === 'gearcase')
    .map(({ place: [, , ...rest] }) =>
      joinPointer(['gearcases', rest[0] === 'oilSpace' ? owner : gearcase, ...rest]),
    )
}

/** The part, which may be a leaf, and the leaves directly below it. */
function listPartLeaves(sheet: SpecSheet, part: JsonPointer): readonly JsonPointer[] {
  const leafPaths = new Set(listLeafTypes().flatMap((row) => row.below ?? []))
  const leaves = [...leafPaths].flatMap((rest) => {
    if (!rest.endsWith('/*')) return `${part}${rest}`
    const list = readPointer(sheet, `${part}${rest.slice(0, -2)}`)
    return Array.isArray(list) ? list.map((_leaf, at) => `${part}${rest.slice(0, -1)}${at}`) : []
  })
  return [part, ...leaves]
}

/** The units that readers use, by measure; units that the manual does not print are calculated. */
const USUAL_UNITS: { readonly [M in Measure]?: readonly Unit[] } = {
  torque: ['N.m', 'lbf.ft'],
  volume: ['mL', 'qt_us'],
  temperature: ['degC', 'degF'],
  mass: ['kg', 'lb'],
}

/** The usual unit of the same system for each unit: a reader needs only one of them. */
const USUAL_UNIT_OF_SYSTEM: { readonly [U in Unit]?: Unit } = {
  L: 'mL',
  cm3: 'mL',
  fl_oz_us: 'qt_us',
  pt_us: 'qt_us',
  gal_us: 'qt_us',
  'lbf.in': 'lbf.ft',
}

/**
 * The first printed figure of a leaf in the usual units that the manual does not print; limits are rounded
 * inward.
 */
function computeOtherUnits(resolved: Resolved<Leaf>): readonly PrintedValue[] {
  if (resolved.kind !== 'stated') return []
  const leaf: Leaf = resolved.value
  const value = leaf.kind === 'torque' ? leaf.torque : leaf
  if (value.kind !== 'nominal' && value.kind !== 'nominal with tolerance' && value.kind !== 'limits')
    return []
  const printed = [value, ...(value.printed ?? [])].map(({ unit }) => USUAL_UNIT_OF_SYSTEM[unit] ?? unit)
  const usualUnits = USUAL_UNITS[measureOf(value.unit)] ?? []
  return usualUnits.filter((unit) => !printed.includes(unit)).flatMap((unit) => secondUnit(value, unit) ?? [])
}
