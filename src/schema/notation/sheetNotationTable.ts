import type { LeafKind, LeafPlace } from '../../spec/index.js'
import { buildOnce } from '../shapes/makeShape.js'
import { OPENING_ROLES } from '../shapes/wordLists.js'
import type { Holder, MakeDefault, PlaceNode, PlaceTable } from './placeTable.js'
import { asObject, each, nameFromId } from './placeTable.js'
import { readIds, readSection, readSet, readYesOrNo } from './readSection.js'
import { type SheetNotationName, sheetNotations } from './sheetNotations.js'

const NOT_STATED = 'not stated'
const notStated = { kind: NOT_STATED }
const torqueNotStated = { kind: NOT_STATED, threadCondition: NOT_STATED }
const noSeals = () => [{ ...notStated }]

/** The id and the type, without repeating words: a bevel box `bevel` is a `bevel box`. */
const gearcaseName: MakeDefault = ({ id, holder: { type } }) => {
  const words = id.replaceAll('-', ' ')
  if (typeof type !== 'string' || words.includes(type)) return words
  return type.startsWith(`${words} `) ? type : `${words} ${type}`
}

/** A default of objects of one kind. */
const ifKind =
  (kind: string, value: object): MakeDefault =>
  ({ holder }) =>
    holder['kind'] === kind ? { ...value } : undefined

/** The only opening of a gearcase with this role; undefined if there is none or more than one. */
function findOnlyOpening(gearcase: Holder | undefined, role: string): string | undefined {
  const found = Object.entries(asObject(gearcase?.['openings']) ?? {}).filter(([, opening]) => {
    const uses = asObject(opening)?.['uses']
    return Array.isArray(uses) && uses.some((use) => asObject(use)?.['role'] === role)
  })
  return found.length === 1 ? found[0]?.[0] : undefined
}

/** A leaf with a notation of its own. */
const leaf = <const Kind extends SheetNotationName & LeafKind>(text: Kind) => ({ text, leaf: text })
/** A value in the notation of its measure. */
const valueLeaf = <const Text extends SheetNotationName>(text: Text) => ({ text, leaf: 'value' }) as const

/** The short notation of a sheet, nested like the places of the sheet. A missing leaf does not compile. */
function makePlaces() {
  const named = (noun?: string) => ({ name: nameFromId(noun) })
  const appliesTo = { text: 'condition' } as const
  const volume = valueLeaf('volume')
  const temperature = valueLeaf('temperature')
  const place = leaf('place')
  const position = leaf('position')
  const drive = leaf('drive')
  const tightening = leaf('tightening')
  const seal = leaf('seal')
  const seals = { textKey: '[]', ...each(seal) } as const
  const interval = leaf('interval')
  const fasteners = { count: NOT_STATED, drive: notStated, tightening: torqueNotStated }
  const fill = {
    text: 'fill',
    defaults: { drainAndRefill: notStated, method: notStated },
    children: {
      drainAndRefill: volume,
      dryFill: volume,
      method: {
        text: 'method',
        laterDefaults: {
          opening: ({ gearcase, holder: { kind } }) =>
            kind === NOT_STATED
              ? undefined
              : findOnlyOpening(gearcase, kind === 'by quantity' ? 'fill' : 'level'),
        },
        children: { below: valueLeaf('length') },
      },
      level: {
        text: 'level',
        defaults: { attitude: NOT_STATED, engine: NOT_STATED, recheckAfterRun: false },
        children: { temperature, minutesAfterStop: valueLeaf('minutes') },
      },
    },
  } as const satisfies SheetNode
  const opening = {
    textKey: 'tightening',
    section: readSection,
    defaults: {
      ...named('plug'),
      uses: ({ id }) => (OPENING_ROLES.some((role) => role === id) ? [{ role: id }] : undefined),
      drive: notStated,
      tightening: torqueNotStated,
      seals: noSeals,
      place: notStated,
    },
    children: { appliesTo, uses: { text: 'uses' }, drive, tightening, seals, place, position },
  } as const satisfies SheetNode
  const cover = {
    section: readSection,
    defaults: { ...named(), bolts: {}, seal: notStated, place: notStated },
    children: {
      appliesTo,
      bolts: {
        text: 'bolts',
        defaults: { ...fasteners, pattern: NOT_STATED },
        children: { drive, tightening },
      },
      seal,
      place,
    },
  } as const satisfies SheetNode
  const filter = {
    section: readSection,
    defaults: { ...named('filter'), seals: noSeals, change: NOT_STATED, place: notStated },
    children: {
      appliesTo,
      held: {
        text: 'filterHold',
        defaults: { drive: ifKind('screwed', notStated), tightening: ifKind('screwed', torqueNotStated) },
        children: { drive, tightening },
      },
      seals,
      place,
    },
  } as const satisfies SheetNode
  const gearcase = {
    section: readSection,
    defaults: { name: gearcaseName, access: notStated, oilSpace: {}, openings: {} },
    laterDefaults: {
      emptying: ({ gearcase }) => {
        const opening = findOnlyOpening(gearcase, 'drain')
        return opening === undefined ? [] : [{ kind: 'drain plug', opening }]
      },
    },
    children: {
      appliesTo,
      instances: { read: readIds, ...each({ defaults: named() }) },
      access: { text: 'access' },
      oilSpace: {
        text: 'oilSpace',
        defaults: {
          kind: ({ holder }) => (holder['with'] === undefined ? 'own' : 'shared'),
          oils: ifKind('own', notStated),
          fill: ifKind('own', {}),
        },
        children: { oils: leaf('oils'), fill, portion: volume },
      },
      openings: each(opening),
      covers: each(cover),
      filters: each(filter),
      emptying: each({ text: 'emptying' }),
      breather: { textKey: 'place', defaults: { place: notStated }, children: { place, position } },
      drainTemperature: temperature,
      workingTemperature: temperature,
      yellowMetal: { read: readYesOrNo },
    },
  } as const satisfies SheetNode
  const service = {
    textKey: 'intervals',
    section: readSection,
    defaults: {
      ...named(),
      task: 'change',
      gearcases: ({ root }) => {
        const ids = Object.keys(asObject(root['gearcases']) ?? {})
        return ids.length === 1 ? ids : undefined
      },
      intervals: {},
    },
    children: {
      appliesTo,
      intervals: {
        textKey: 'repeat',
        defaults: { repeat: notStated, countFrom: 'completion' },
        children: {
          first: interval,
          repeat: interval,
          window: { text: 'window', leaf: 'interval' },
          severe: { text: 'severeUse', children: { interval } },
        },
      },
    },
  } as const satisfies SheetNode
  const sheet = {
    section: readSection,
    defaults: { sources: {}, gearcases: {}, services: {} },
    children: {
      machine: {
        defaults: {
          variants: ({ holder: { model } }) => ({
            standard: { name: typeof model === 'string' ? model : 'standard' },
          }),
          axles: {},
          supports: {},
        },
        children: {
          mass: valueLeaf('mass'),
          variants: each({ text: 'variant', defaults: named(), children: { when: appliesTo } }),
          axles: each({ text: 'axle', defaults: named('axle') }),
          supports: each({ text: 'support' }),
        },
      },
      sources: each({ text: 'documentSource', defaults: { document: 'other' } }),
      gearcases: each(gearcase),
      shields: each({
        section: readSection,
        defaults: { ...named(), fasteners: {}, place: notStated },
        children: {
          appliesTo,
          fasteners: { text: 'fasteners', defaults: fasteners, children: { drive, tightening } },
          place,
        },
      }),
      services: each(service),
      overrides: each({ section: readSection, set: readSet, children: { when: appliesTo } }),
    },
  } as const satisfies SheetNode
  return sheet satisfies Nested<LeafPlace>
}

type SheetNode = PlaceNode<SheetNotationName>
/** Nodes that lead to all these leaves. */
type Nested<Places extends string> = [Places] extends [never]
  ? { readonly leaf: LeafKind }
  : { readonly children: { readonly [Key in FirstKey<Places>]: Nested<Below<Places, Key>> } }
type FirstKey<Place> = Place extends `/${infer Key}/${string}`
  ? Key
  : Place extends `/${infer Key}`
    ? Key
    : never
type Below<Place, Key extends string> = Place extends `/${Key}/${infer Rest}` ? `/${Rest}` : never

/** The short notation of a sheet. */
export const sheetNotationTable = /* @__PURE__ */ buildOnce(
  (): PlaceTable<SheetNotationName> => ({ places: makePlaces(), notations: sheetNotations() }),
)
