import type { LeafPlace } from '../../spec/index.js'
import { buildOnce } from '../shapes/makeShape.js'
import type { Holder, MakeDefault, PlaceRow } from './placeTable.js'
import { asHolder, makeTable, nameFromId } from './placeTable.js'
import { readIds, readSection, readSet } from './readSection.js'
import { type SheetNotation, sheetNotations } from './sheetNotations.js'

const emptyObject = () => ({})
const notStated = () => ({ kind: 'not stated' })
const torqueNotStated = () => ({ kind: 'not stated', threadCondition: 'not stated' })
const returnAlways = (value: unknown) => () => value

/** The id and the type, without repeating words: a bevel box `bevel` is a `bevel box`. */
const gearcaseName: MakeDefault = ({ id, holder: { type } }) => {
  const words = id.replaceAll('-', ' ')
  if (typeof type !== 'string' || words.includes(type)) return words
  return type.startsWith(`${words} `) ? type : `${words} ${type}`
}

const ifOwnOil =
  (make: () => unknown): MakeDefault =>
  ({ holder }) =>
    holder['kind'] === 'own' ? make() : undefined

const ifScrewed =
  (make: () => unknown): MakeDefault =>
  ({ holder }) =>
    holder['kind'] === 'screwed' ? make() : undefined

const OPENING_ROLES: readonly string[] = ['fill', 'drain', 'level']

/** The only opening of a gearcase with this role; undefined if there is none or more than one. */
function findOnlyOpening(gearcase: Holder | undefined, role: string): string | undefined {
  const found = Object.entries(asHolder(gearcase?.['openings']) ?? {}).filter(([, opening]) => {
    const uses = asHolder(opening)?.['uses']
    return Array.isArray(uses) && uses.some((use) => asHolder(use)?.['role'] === role)
  })
  return found.length === 1 ? found[0]?.[0] : undefined
}

const fastenerDefaults = () => ({
  count: returnAlways('not stated'),
  drive: notStated,
  tightening: torqueNotStated,
})

/** The short notation of a sheet, except its leaves, which have their own table. */
const makeRows = (): { readonly [place: string]: PlaceRow<SheetNotation> } => ({
  '': { isSection: true, defaults: { sources: emptyObject, gearcases: emptyObject, services: emptyObject } },
  '/machine': {
    defaults: {
      variants: ({ holder: { model } }) => ({
        standard: { name: typeof model === 'string' ? model : 'standard' },
      }),
      axles: emptyObject,
      supports: emptyObject,
    },
  },
  '/machine/variants/*': { text: 'variant', defaults: { name: nameFromId() } },
  '/machine/variants/*/when': { text: 'condition' },
  '/machine/axles/*': { text: 'axle', defaults: { name: nameFromId('axle') } },
  '/machine/supports/*': { text: 'support' },
  '/sources/*': { text: 'documentSource', defaults: { document: returnAlways('other') } },
  '/gearcases/*': {
    isSection: true,
    defaults: { name: gearcaseName, access: notStated, oilSpace: emptyObject, openings: emptyObject },
    lateDefaults: {
      emptying: ({ gearcase }) => {
        const opening = findOnlyOpening(gearcase, 'drain')
        return opening === undefined ? [] : [{ kind: 'drain plug', opening }]
      },
    },
  },
  '/gearcases/*/appliesTo': { text: 'condition' },
  '/gearcases/*/instances': { isListOfIds: true },
  '/gearcases/*/instances/*': { defaults: { name: nameFromId() } },
  '/gearcases/*/access': { text: 'access' },
  '/gearcases/*/yellowMetal': { isYesOrNo: true },
  '/gearcases/*/oilSpace': {
    text: 'oilSpace',
    defaults: {
      kind: ({ holder }) => (holder['with'] === undefined ? 'own' : 'shared'),
      oils: ifOwnOil(notStated),
      fill: ifOwnOil(emptyObject),
    },
  },
  '/gearcases/*/oilSpace/fill': { text: 'fill', defaults: { drainAndRefill: notStated, method: notStated } },
  '/gearcases/*/oilSpace/fill/method': {
    text: 'method',
    lateDefaults: {
      opening: ({ gearcase, holder: { kind } }) =>
        kind === 'not stated'
          ? undefined
          : findOnlyOpening(gearcase, kind === 'by quantity' ? 'fill' : 'level'),
    },
  },
  '/gearcases/*/oilSpace/fill/level': {
    text: 'level',
    defaults: {
      attitude: returnAlways('not stated'),
      engine: returnAlways('not stated'),
      recheckAfterRun: returnAlways(false),
    },
  },
  '/gearcases/*/openings/*': {
    textKey: 'tightening',
    isSection: true,
    defaults: {
      name: nameFromId('plug'),
      uses: ({ id }) => (OPENING_ROLES.includes(id) ? [{ role: id }] : undefined),
      drive: notStated,
      tightening: torqueNotStated,
      seals: () => [notStated()],
      place: notStated,
    },
  },
  '/gearcases/*/openings/*/appliesTo': { text: 'condition' },
  '/gearcases/*/openings/*/uses': { text: 'uses' },
  '/gearcases/*/openings/*/seals': { textKey: '[]' },
  '/gearcases/*/covers/*': {
    isSection: true,
    defaults: { name: nameFromId(), bolts: emptyObject, seal: notStated, place: notStated },
  },
  '/gearcases/*/covers/*/appliesTo': { text: 'condition' },
  '/gearcases/*/covers/*/bolts': {
    text: 'bolts',
    defaults: { ...fastenerDefaults(), pattern: returnAlways('not stated') },
  },
  '/gearcases/*/filters/*': {
    isSection: true,
    defaults: {
      name: nameFromId('filter'),
      seals: () => [notStated()],
      change: returnAlways('not stated'),
      place: notStated,
    },
  },
  '/gearcases/*/filters/*/appliesTo': { text: 'condition' },
  '/gearcases/*/filters/*/held': {
    text: 'filterHold',
    defaults: { drive: ifScrewed(notStated), tightening: ifScrewed(torqueNotStated) },
  },
  '/gearcases/*/filters/*/seals': { textKey: '[]' },
  '/gearcases/*/emptying/*': { text: 'emptying' },
  '/gearcases/*/breather': { textKey: 'place', defaults: { place: notStated } },
  '/shields/*': {
    isSection: true,
    defaults: { name: nameFromId(), fasteners: emptyObject, place: notStated },
  },
  '/shields/*/appliesTo': { text: 'condition' },
  '/shields/*/fasteners': { text: 'fasteners', defaults: fastenerDefaults() },
  '/services/*': {
    textKey: 'intervals',
    isSection: true,
    defaults: {
      name: nameFromId(),
      task: returnAlways('change'),
      gearcases: ({ root }) => {
        const ids = Object.keys(asHolder(root['gearcases']) ?? {})
        return ids.length === 1 ? ids : undefined
      },
      intervals: emptyObject,
    },
  },
  '/services/*/appliesTo': { text: 'condition' },
  '/services/*/intervals': {
    textKey: 'repeat',
    defaults: { repeat: notStated, countFrom: returnAlways('completion') },
  },
  '/services/*/intervals/severe': { text: 'severeUse' },
  '/overrides/*': { isOverride: true },
  '/overrides/*/when': { text: 'condition' },
})

/** The notation of every leaf. A leaf missing from this table does not compile. */
const LEAF_NOTATIONS: { readonly [Place in LeafPlace]: SheetNotation } = {
  '/gearcases/*/oilSpace/oils': 'oils',
  '/gearcases/*/oilSpace/fill/drainAndRefill': 'volume',
  '/gearcases/*/drainTemperature': 'temperature',
  '/gearcases/*/workingTemperature': 'temperature',
  '/gearcases/*/oilSpace/fill/method/below': 'length',
  '/gearcases/*/oilSpace/fill/level/temperature': 'temperature',
  '/gearcases/*/oilSpace/fill/level/minutesAfterStop': 'minutes',
  '/gearcases/*/oilSpace/fill/dryFill': 'volume',
  '/gearcases/*/oilSpace/portion': 'volume',
  '/gearcases/*/openings/*/place': 'place',
  '/gearcases/*/covers/*/place': 'place',
  '/gearcases/*/filters/*/place': 'place',
  '/gearcases/*/breather/place': 'place',
  '/shields/*/place': 'place',
  '/gearcases/*/openings/*/tightening': 'tightening',
  '/gearcases/*/covers/*/bolts/tightening': 'tightening',
  '/gearcases/*/filters/*/held/tightening': 'tightening',
  '/shields/*/fasteners/tightening': 'tightening',
  '/gearcases/*/openings/*/drive': 'drive',
  '/gearcases/*/covers/*/bolts/drive': 'drive',
  '/gearcases/*/filters/*/held/drive': 'drive',
  '/shields/*/fasteners/drive': 'drive',
  '/gearcases/*/covers/*/seal': 'seal',
  '/gearcases/*/openings/*/seals/*': 'seal',
  '/gearcases/*/filters/*/seals/*': 'seal',
  '/services/*/intervals/first': 'interval',
  '/services/*/intervals/repeat': 'interval',
  '/services/*/intervals/window': 'window',
  '/services/*/intervals/severe/interval': 'interval',
  '/machine/mass': 'mass',
}

/** The short notation of a sheet: the rows and the leaves. */
export const sheetNotationTable = /* @__PURE__ */ buildOnce(() => {
  const leaves = Object.entries(LEAF_NOTATIONS).map(
    ([place, text]) => [place, { text, isLeaf: true }] as const,
  )
  return makeTable({ ...makeRows(), ...Object.fromEntries(leaves) }, sheetNotations(), {
    section: readSection,
    set: readSet,
    ids: readIds,
  })
})
