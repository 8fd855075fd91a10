import { type DocumentKind, splitPointer } from '../base/index.js'

/** A key of a document: its meaning, and examples in YAML to copy. */
export interface KeyExample {
  readonly meaning: string
  readonly examples: readonly string[]
}

type ExampleRow = readonly [meaning: string, ...examples: string[]]

/** Keys that a first document often lacks or has wrong; `*` is any id. */
const EXAMPLES: { readonly [pattern: string]: ExampleRow } = {
  '/kind': ['the kind of this document', 'kind: spec-sheet'],
  '/version': ['the version of this format', 'version: "1.0"'],
  '/id': ['the name by which other documents refer to it', 'id: ferd-2'],
  '/revision': ['the revision of this sheet', 'revision: "1"'],
  '/name': ['your name for it', 'name: Station 2'],
  '/machine': ['the machine of the sheet', 'machine: { make: Nordli, model: Ferd 2, type: utility machine }'],
  '/machine/make': ['the maker', 'make: Nordli'],
  '/machine/model': ['the model', 'model: Ferd 2'],
  '/machine/type': ['the type of machine', 'type: utility machine'],
  '/machine/variants': [
    'a map of variants by id, and the values that differ',
    'variants: { short: {}, long: {} }',
    'overrides:\n  - when: variant long\n    set: { /gearcases/rear/oilSpace/fill/drainAndRefill: 950 mL }',
  ],
  '/overrides': [
    'a list of values that differ by variant, serial number, model year or market',
    'overrides:\n  - when: variant long\n    set: { /gearcases/rear/oilSpace/fill/drainAndRefill: 950 mL }',
  ],
  '/source': ['the page of all figures below it', 'source: p. 31', 'source: manual p. 31'],
  '/sources': ['the manuals of the figures', "sources: { manual: Ferd 2 owner's manual }"],
  '/gearcases': ['a map of gearcases by id', 'gearcases:\n  rear:\n    type: final drive'],
  '/gearcases/*': ['one gearcase', 'rear:\n  type: final drive'],
  '/gearcases/*/type': ['the type of gearcase', 'type: final drive'],
  '/gearcases/*/access': ['how to reach it', 'access: from the ground'],
  '/gearcases/*/oilSpace': ['the oil in it', 'oilSpace: { oils: SAE 80W-90 GL-5, fill: 450 mL }'],
  '/gearcases/*/oilSpace/oils': [
    'its oil',
    'oils: SAE 80W-90 GL-5',
    'oils: SAE 90 GL-4, -10 to 45 °C; ISO VG 220',
  ],
  '/gearcases/*/oilSpace/fill': [
    'its refill quantity with the unit',
    'fill: 450 mL',
    'fill: 0.48 US qt (450 mL), by quantity',
  ],
  '/gearcases/*/oilSpace/fill/opening': ['for the plug whose hole sets the level', 'uses: fill, level'],
  '/gearcases/*/openings': ['a map of plugs by id', 'openings:\n  drain: 25 N·m'],
  '/gearcases/*/openings/*': [
    'a plug and its torque',
    'drain: 25 N·m',
    'drain: { tightening: 22 lbf·ft, drive: external hex 19 mm }',
  ],
  '/gearcases/*/openings/*/uses': ['the uses of an opening', 'uses: fill, level'],
  '/gearcases/*/openings/*/drive': ['the tool that fits it', 'drive: internal hex 8 mm'],
  '/gearcases/*/openings/*/tightening': [
    'its torque with the unit',
    'tightening: 30 N·m',
    'tightening: 22 lbf·ft (30 N·m), dry',
  ],
  '/gearcases/*/openings/*/seals': [
    'its seal',
    'seals: flat copper crush washer 14 x 18 x 1.5 mm, every opening',
    'seals: o-ring 15.6 x 1.78 mm, on condition',
  ],
  '/services': ['a map of services by id', 'services:\n  rear-oil-change: 200 h, 12 months'],
  '/services/*': ['a service and its interval', 'rear-oil-change: 200 h, 12 months'],
  '/services/*/gearcases': ['its gearcases', 'gearcases: [front, rear]'],
  '/services/*/intervals': [
    'its interval',
    'intervals: 200 h, 12 months',
    'intervals: { first: 50 h, repeat: "200 h, 12 months" }',
  ],
  '/sheet': ['the sheet of the machine', 'sheet: ferd-2, revision 1'],
  '/identity': ['the data on the plate', 'identity: { serial: FS 00123 }'],
  '/meters': ['the readings', 'meters:\n  - 512.6 h on 2023-10-06'],
  '/records': ['the services done', 'records: []'],
  '/wrenches': ['a map of torque wrenches by id', 'wrenches:\n  small-click: 5–25 N·m by 0.5, click, 1/4 in'],
  '/sockets': ['a map of sockets by id', 'sockets:\n  hex-8: internal hex 8 mm, 3/8 in'],
  '/vessels': ['a map of measuring jugs by id', 'vessels:\n  jug: 50–1000 mL by 10'],
  '/containers': ['a map of oil containers by id', 'containers:\n  gear-oil: 2 x 1 L of SAE 80W-90 GL-5'],
  '/seals': ['a map of seals by id', 'seals:\n  washer-14: 3 x flat copper crush washer 14 x 18 x 1.5 mm'],
  '/steps': ['a list of steps', 'steps:\n  - { id: read, do: read the manual }'],
  '/entries': ['a list of the work done', 'entries:\n  - gear-oil-change of rear'],
  '/date': ['the day of the work', 'date: 2023-10-06'],
  '/readings': ['the meter readings', 'readings: 512.6 h'],
}

/** Keys with another meaning in one kind of document. */
const EXAMPLES_BY_KIND: { readonly [Kind in DocumentKind]?: { readonly [pattern: string]: ExampleRow } } = {
  'machine-log': { '/id': ['the name by which records refer to the machine', 'id: station-2'] },
  toolbox: {
    '/id': ['your short name for it', 'id: station-tools'],
    '/name': ['your name for it', 'name: Station tools'],
  },
  stock: {
    '/id': ['your short name for it', 'id: station-shelf'],
    '/name': ['your name for it', 'name: Station shelf'],
  },
  procedure: {
    '/id': ['your short name for it', 'id: ferd-2-oil-change'],
    '/name': ['your name for it', 'name: Ferd 2 oil change'],
    '/sheet': ['the sheet of the machine', 'sheet: { id: ferd-2, revision: "1" }'],
    '/services': ['its services', 'services: [rear-oil-change]'],
  },
  'service-record': {
    '/id': ['your short name for it', 'id: station-2-2023-10-06'],
    '/machine': ['the id of its log', 'machine: station-2'],
  },
}

/** Usual words for things that a sheet has under other keys. */
const KEYS_BY_WORD: readonly (readonly [RegExp, string])[] = [
  [/variant/, '/machine/variants'],
  [/override|exception/, '/overrides'],
  [/torque|tighten/, '/gearcases/*/openings/*/tightening'],
  [/interval|period|every|schedule/, '/services'],
  [/seal|washer|gasket|ring/, '/gearcases/*/openings/*/seals'],
  [/capacity|volume|amount|quantity|fill|refill/, '/gearcases/*/oilSpace/fill'],
  [/oil|lubricant|grade|viscosity/, '/gearcases/*/oilSpace/oils'],
  [/plug|drain/, '/gearcases/*/openings'],
  [/^(make|maker|manufacturer|brand|model|type)$/, '/machine'],
  [/^(axle|differential|diff|front|rear|gearbox|case)/, '/gearcases'],
]

/** The example for a pointer in a document of this kind; undefined if there is none. */
export function findKeyExample(path: string, kind: DocumentKind): KeyExample | undefined {
  if (path === '/kind') return { meaning: findExample(path).meaning, examples: [`kind: ${kind}`] }
  const kindExample = EXAMPLES_BY_KIND[kind]?.[path]
  if (kindExample !== undefined) return toExample(kindExample)
  const tokens = splitPointer(path) ?? []
  if (tokens.at(-1) === 'source') return findExample('/source')
  const pattern = Object.keys(EXAMPLES).find((candidate) => {
    const parts = candidate.split('/').slice(1)
    return parts.length === tokens.length && parts.every((part, at) => part === '*' || part === tokens[at])
  })
  return pattern === undefined ? undefined : findExample(pattern)
}

/** The key that an unknown key probably means, with its example. */
export function findKeyByWord(key: string): (KeyExample & { readonly place: string }) | undefined {
  const pattern = KEYS_BY_WORD.find(([word]) => word.test(key.toLowerCase()))?.[1]
  return pattern === undefined ? undefined : { ...findExample(pattern), place: pattern }
}

const findExample = (pattern: string): KeyExample => toExample(EXAMPLES[pattern] ?? [''])

const toExample = ([meaning, ...examples]: ExampleRow): KeyExample => ({ meaning, examples })
