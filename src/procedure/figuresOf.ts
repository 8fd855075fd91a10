import { type JsonPointer, readPointer } from '../base/index.js'
import { readOverrides, type SpecSheet } from '../spec/index.js'
import type { Applies, GearcaseLayout } from './layout.js'
import { ownerOf, type ProcedureContext, placeStep, type StepDraft, type StepPlace } from './stepContext.js'

export type Figures = Readonly<Record<string, JsonPointer>>

/**
 * The figures that a step must show, by name, as pointers to whole leaves of the sheet's base; what an override puts
 * in their place is found when they are resolved. `onlyIf` points to the condition of a part that cannot be told to be
 * on this machine.
 */
export function figuresOf(sheet: SpecSheet, context: ProcedureContext, step: StepDraft): Figures {
  const place = placeStep(context, step)
  const figures: Record<string, JsonPointer> = {}
  const put = (name: string, path: JsonPointer | undefined): void => {
    if (path !== undefined && hasLeaf(sheet, path)) figures[name] = path
  }
  listFigures(place, put)
  const onlyIf = findCondition(sheet, place)
  if (onlyIf !== undefined) figures['onlyIf'] = onlyIf
  return figures
}

function listFigures(place: StepPlace, put: (name: string, path: JsonPointer | undefined) => void): void {
  const { step, opening, cover, seal, shield, gearcase } = place
  const owner = ownerOf(place)?.gearcase
  const fill = owner === undefined ? undefined : `${owner.path}/oilSpace/fill`
  switch (step.do) {
    case 'warm the oil':
      for (const one of listChanged(place)) put(one.id, `${one.path}/drainTemperature`)
      break
    case 'raise the machine':
    case 'set on stands':
      put('mass', '/machine/mass')
      break
    case 'clean around':
    case 'take out':
    case 'take off cover':
    case 'remove shield':
      put('place', step.on === undefined ? undefined : `${step.on}/place`)
      break
    case 'clear the breather':
      put('place', gearcase === undefined ? undefined : `${gearcase.path}/breather/place`)
      break
    case 'take off old seal':
    case 'fit new seal':
    case 'inspect the seal':
    case 'apply sealant':
      put('seal', seal?.path)
      break
    case 'wait for the cure':
      put('seal', cover?.seal.path)
      break
    case 'tighten':
      put('tightening', opening === undefined ? undefined : `${opening.path}/tightening`)
      break
    case 'tighten cover':
      put('tightening', cover === undefined ? undefined : `${cover.path}/bolts/tightening`)
      break
    case 'refit shield':
      put('tightening', shield === undefined ? undefined : `${shield.path}/fasteners/tightening`)
      break
    case 'measure the oil':
    case 'pour the oil':
      put('refill', fill === undefined ? undefined : `${fill}/drainAndRefill`)
      put('oils', owner === undefined ? undefined : `${owner.path}/oilSpace/oils`)
      break
    case 'add the additive':
    case 'top up':
      put('oils', owner === undefined ? undefined : `${owner.path}/oilSpace/oils`)
      break
    case 'check the level':
      put('below', fill === undefined ? undefined : `${fill}/method/below`)
      put('temperature', fill === undefined ? undefined : `${fill}/level/temperature`)
      put('minutesAfterStop', fill === undefined ? undefined : `${fill}/level/minutesAfterStop`)
      break
    case 'let settle':
      if (fill !== undefined) put('minutesAfterStop', `${fill}/level/minutesAfterStop`)
      else
        for (const one of listOwners(place)) put(one.id, `${one.path}/oilSpace/fill/level/minutesAfterStop`)
      break
    default:
      break
  }
}

function listOwners(place: StepPlace): readonly GearcaseLayout[] {
  return [...new Set(place.jobs.map((job) => job.owner.gearcase))]
}

function listChanged(place: StepPlace): readonly GearcaseLayout[] {
  const changed = place.jobs.filter((job) => job.task === 'change')
  return [...new Set(changed.flatMap((job) => job.units.map((unit) => unit.gearcase)))]
}

/** A leaf of the base, or one that only an override states. */
function hasLeaf(sheet: SpecSheet, path: JsonPointer): boolean {
  if (readPointer(sheet, path) !== undefined) return true
  return readOverrides(sheet).some((override) => override.set.some((leaf) => leaf.path === path))
}

function findCondition(sheet: SpecSheet, place: StepPlace): JsonPointer | undefined {
  const parts: readonly ({ readonly path: JsonPointer; readonly applies: Applies } | undefined)[] = [
    place.opening ?? place.cover ?? place.shield,
    place.gearcase,
  ]
  for (const part of parts) {
    if (part?.applies !== 'cannot tell') continue
    const path = `${part.path}/appliesTo`
    if (readPointer(sheet, path) !== undefined) return path
  }
  return undefined
}
