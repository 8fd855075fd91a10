import { type JsonPointer, readPointer } from '../base/index.js'
import {
  type Id,
  type Identity,
  type Leaf,
  type LeafKind,
  type ProcedureDocument,
  type Resolved,
  resolveLeaf,
  type SpecSheet,
} from '../spec/index.js'
import { computeOtherUnits } from './computeOtherUnits.js'
import { findOilOwner } from './findOilOwner.js'
import { namePart } from './namePart.js'
import type { FigureRole, PlannedFigure } from './visitPlan.js'

interface Asked {
  readonly role: FigureRole
  readonly leaf: LeafKind
  readonly path: JsonPointer
}

/** The figures of a visit, and where each stands in the plan. */
export interface CollectedFigures {
  readonly figures: readonly PlannedFigure[]
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
  const places = new Map(figures.map(({ path }, place) => [path, place]))
  return {
    figures,
    pointerTo: (path) => (places.has(path) ? `/figures/${places.get(path)}` : undefined),
    at: (path) => figures[places.get(path) ?? -1],
  }
}

function listGearcaseLeaves(sheet: SpecSheet, gearcase: Id): readonly JsonPointer[] {
  const space = `/gearcases/${findOilOwner(sheet, gearcase)}/oilSpace`
  return [
    `${space}/oils`,
    `${space}/fill/drainAndRefill`,
    `/gearcases/${gearcase}/drainTemperature`,
    `${space}/fill/method/below`,
    `${space}/fill/level/temperature`,
    `${space}/fill/level/minutesAfterStop`,
  ]
}

function listPartLeaves(sheet: SpecSheet, part: JsonPointer): readonly JsonPointer[] {
  const seals = readPointer(sheet, `${part}/seals`)
  const listed = Array.isArray(seals) ? seals.map((_seal, place) => `${part}/seals/${place}`) : []
  return [
    part,
    `${part}/place`,
    `${part}/tightening`,
    `${part}/bolts/tightening`,
    `${part}/fasteners/tightening`,
    `${part}/seal`,
    ...listed,
  ]
}

const ROLES: readonly (readonly [RegExp, FigureRole, LeafKind])[] = [
  [/\/oilSpace\/oils$/, 'oils', 'oils'],
  [/\/oilSpace\/(fill\/drainAndRefill|portion)$/, 'refill', 'value'],
  [/\/oilSpace\/fill\/dryFill$/, 'dry fill', 'value'],
  [/\/fill\/(method\/below|level\/(temperature|minutesAfterStop))$/, 'level', 'value'],
  [/\/drainTemperature$/, 'drain temperature', 'value'],
  [/\/tightening$/, 'tightening', 'tightening'],
  [/\/(seals\/[0-9]+|seal)$/, 'seal', 'seal'],
  [/\/place$/, 'place', 'place'],
  [/^\/machine\/mass$/, 'mass', 'value'],
]

function recognise(path: JsonPointer): Asked | undefined {
  const row = ROLES.find(([pattern]) => pattern.test(path))
  return row === undefined ? undefined : { role: row[1], leaf: row[2], path }
}
