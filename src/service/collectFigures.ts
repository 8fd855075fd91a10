import { type JsonPointer, joinPointer, readPointer, splitPointer } from '../base/index.js'
import { type Measure, measureOf, secondUnit, type Unit } from '../quantity/index.js'
import {
  findLeafRow,
  type Id,
  type Identity,
  type Leaf,
  type LeafKind,
  type LeafRole,
  listLeafRows,
  type PrintedValue,
  type ProcedureDocument,
  type Resolved,
  resolveLeaf,
  type Source,
  type SpecSheet,
  type StatedValue,
} from '../spec/index.js'
import { findOilOwner } from './gearcases.js'
import { namePart } from './names.js'
import type { PlannedFigure } from './visitPlan.js'

interface Asked {
  readonly role: LeafRole
  readonly leaf: LeafKind
  readonly path: JsonPointer
}

/** The figures of a visit, and where each is in the plan. */
export interface CollectedFigures {
  readonly figures: readonly PlannedFigure[]
  /** The sources that the figures were read in, in the order of the sheet. */
  readonly sources: Readonly<Record<Id, Source>>
  /** Pointer into the plan for a path of the sheet; undefined: the visit does not need that leaf. */
  readonly pointerTo: (path: JsonPointer) => JsonPointer | undefined
  readonly at: (path: JsonPointer) => PlannedFigure | undefined
}

/**
 * Collects every leaf that a procedure's steps and gearcases need, each resolved for exactly one machine, once, in the
 * order of the steps.
 */
export function collectFigures(
  sheet: SpecSheet,
  identity: Identity,
  gearcases: readonly Id[],
  procedure: ProcedureDocument,
): CollectedFigures {
  const asked = new Map<JsonPointer, Asked>()
  const ask = (path: JsonPointer): void => {
    const found = recognise(path)
    if (found !== undefined && !asked.has(path) && readPointer(sheet, path) !== undefined)
      asked.set(path, found)
  }
  for (const gearcase of gearcases) for (const path of listGearcaseLeaves(sheet, gearcase)) ask(path)
  for (const step of procedure.steps) {
    if (step.on !== undefined) for (const path of listPartLeaves(sheet, step.on)) ask(path)
    for (const path of Object.values(step.values ?? {})) ask(path)
  }
  ask('/machine/mass')

  const figures = [...asked.values()].map(({ role, leaf, path }): PlannedFigure => {
    const resolved: Resolved<Leaf> = resolveLeaf(sheet, identity, leaf, path)
    const computed = computeOtherUnits(resolved)
    return {
      role,
      leaf,
      part: namePart(sheet, path),
      path,
      resolved,
      ...(computed.length === 0 ? {} : { computed }),
    }
  })
  const read = new Set(figures.flatMap(({ resolved }) => sourcesOf(resolved)))
  const places = new Map(figures.map(({ path }, place) => [path, place]))
  return {
    figures,
    sources: Object.fromEntries(Object.entries(sheet.sources).filter(([id]) => read.has(id))),
    pointerTo: (path) => (places.has(path) ? `/figures/${places.get(path)}` : undefined),
    at: (path) => figures[places.get(path) ?? -1],
  }
}

function sourcesOf(resolved: Resolved<Leaf>): readonly Id[] {
  const traces =
    resolved.kind === 'cannot tell' ? resolved.candidates.map(({ trace }) => trace) : [resolved.trace]
  return traces.flatMap(({ source }) => (source === undefined ? [] : [source.ref]))
}

/** The leaves that a visit reads with every gearcase; those of its oil are the owner's. */
function listGearcaseLeaves(sheet: SpecSheet, gearcase: Id): readonly JsonPointer[] {
  const owner = findOilOwner(sheet, gearcase)
  return listLeafRows()
    .filter(({ read }) => read === 'gearcase')
    .map(({ place: [, , ...rest] }) =>
      joinPointer(['gearcases', rest[0] === 'oilSpace' ? owner : gearcase, ...rest]),
    )
}

/** The part itself, where it is a seal, and the leaves right below it. */
function listPartLeaves(sheet: SpecSheet, part: JsonPointer): readonly JsonPointer[] {
  const below = new Set(listLeafRows().flatMap((row) => row.below ?? []))
  const leaves = [...below].flatMap((rest) => {
    if (!rest.endsWith('/*')) return `${part}${rest}`
    const list = readPointer(sheet, `${part}${rest.slice(0, -2)}`)
    return Array.isArray(list) ? list.map((_leaf, at) => `${part}${rest.slice(0, -1)}${at}`) : []
  })
  return [part, ...leaves]
}

function recognise(path: JsonPointer): Asked | undefined {
  const row = findLeafRow(splitPointer(path) ?? [])
  return row === undefined || row.read === 'due' ? undefined : { role: row.role, leaf: row.kind, path }
}

/** The units in which a reader may work, by measure; what the manual does not print is computed from its first figure. */
const UNITS_SHOWN: { readonly [M in Measure]?: readonly Unit[] } = {
  torque: ['N.m', 'lbf.ft'],
  volume: ['mL', 'qt_us'],
  temperature: ['degC', 'degF'],
  mass: ['kg', 'lb'],
}

/** Units that say the same to a reader, so that a second of them is not needed. */
const SAME_SYSTEM: { readonly [U in Unit]?: Unit } = {
  L: 'mL',
  cm3: 'mL',
  fl_oz_us: 'qt_us',
  pt_us: 'qt_us',
  gal_us: 'qt_us',
  'lbf.in': 'lbf.ft',
}

/** A leaf's first printed figure in the units that the manual leaves out, limits inward, so that every reader finds a unit to work in. */
function computeOtherUnits(resolved: Resolved<Leaf>): readonly PrintedValue[] {
  if (resolved.kind !== 'stated') return []
  const leaf: Leaf = resolved.value
  const value: StatedValue | undefined =
    leaf.kind === 'torque'
      ? leaf.torque
      : leaf.kind === 'nominal' || leaf.kind === 'nominal with tolerance' || leaf.kind === 'limits'
        ? leaf
        : undefined
  if (value === undefined) return []
  const printed = [value, ...(value.printed ?? [])].map(({ unit }) => SAME_SYSTEM[unit] ?? unit)
  const shown = UNITS_SHOWN[measureOf(value.unit)] ?? []
  return shown.filter((unit) => !printed.includes(unit)).flatMap((unit) => secondUnit(value, unit) ?? [])
}
