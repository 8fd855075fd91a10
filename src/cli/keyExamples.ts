import { type DocumentKind, splitPointer } from '../base/index.js'

/** What an example shows; the words are in `message/`. */
export type KeyMeaning =
  | 'kind'
  | 'version'
  | 'reference'
  | 'revision'
  | 'yourName'
  | 'machine'
  | 'maker'
  | 'model'
  | 'machineType'
  | 'variants'
  | 'overrides'
  | 'page'
  | 'manuals'
  | 'gearcases'
  | 'gearcase'
  | 'gearcaseType'
  | 'access'
  | 'oilSpace'
  | 'oil'
  | 'fill'
  | 'levelPlug'
  | 'plugs'
  | 'plug'
  | 'uses'
  | 'tool'
  | 'torque'
  | 'seal'
  | 'services'
  | 'service'
  | 'ownGearcases'
  | 'interval'
  | 'sheet'
  | 'plate'
  | 'readings'
  | 'servicesDone'
  | 'wrenches'
  | 'sockets'
  | 'jugs'
  | 'containers'
  | 'seals'
  | 'steps'
  | 'work'
  | 'day'
  | 'meterReadings'
  | 'machineReference'
  | 'shortName'
  | 'ownServices'
  | 'logId'

/** A key of a document: its meaning, and examples in YAML to copy. */
export interface KeyExample {
  readonly meaning: KeyMeaning
  readonly examples: readonly string[]
}

type ExampleRow = readonly [meaning: KeyMeaning, ...examples: string[]]

/** Keys that a first document often lacks or has wrong; `*` is any id. */
const EXAMPLES: { readonly [pattern: string]: ExampleRow } = {
  '/kind': ['kind', 'kind: spec-sheet'],
  '/version': ['version', 'version: "1.0"'],
  '/id': ['reference', 'id: ferd-2'],
  '/revision': ['revision', 'revision: "1"'],
  '/name': ['yourName', 'name: Station 2'],
  '/machine': ['machine', 'machine: { make: Nordli, model: Ferd 2, type: utility machine }'],
  '/machine/make': ['maker', 'make: Nordli'],
  '/machine/model': ['model', 'model: Ferd 2'],
  '/machine/type': ['machineType', 'type: utility machine'],
  '/machine/variants': [
    'variants',
    'variants: { short: {}, long: {} }',
    'overrides:\n  - when: variant long\n    set: { /gearcases/rear/oilSpace/fill/drainAndRefill: 950 mL }',
  ],
  '/overrides': [
    'overrides',
    'overrides:\n  - when: variant long\n    set: { /gearcases/rear/oilSpace/fill/drainAndRefill: 950 mL }',
  ],
  '/source': ['page', 'source: p. 31', 'source: manual p. 31'],
  '/sources': ['manuals', "sources: { manual: Ferd 2 owner's manual }"],
  '/gearcases': ['gearcases', 'gearcases:\n  rear:\n    type: final drive'],
  '/gearcases/*': ['gearcase', 'rear:\n  type: final drive'],
  '/gearcases/*/type': ['gearcaseType', 'type: final drive'],
  '/gearcases/*/access': ['access', 'access: from the ground'],
  '/gearcases/*/oilSpace': ['oilSpace', 'oilSpace: { oils: SAE 80W-90 GL-5, fill: 450 mL }'],
  '/gearcases/*/oilSpace/oils': [
    'oil',
    'oils: SAE 80W-90 GL-5',
    'oils: SAE 90 GL-4, -10 to 45 °C; ISO VG 220',
  ],
  '/gearcases/*/oilSpace/fill': ['fill', 'fill: 450 mL', 'fill: 0.48 US qt (450 mL), by quantity'],
  '/gearcases/*/oilSpace/fill/opening': ['levelPlug', 'uses: fill, level'],
  '/gearcases/*/openings': ['plugs', 'openings:\n  drain: 25 N·m'],
  '/gearcases/*/openings/*': [
    'plug',
    'drain: 25 N·m',
    'drain: { tightening: 22 lbf·ft, drive: external hex 19 mm }',
  ],
  '/gearcases/*/openings/*/uses': ['uses', 'uses: fill, level'],
  '/gearcases/*/openings/*/drive': ['tool', 'drive: internal hex 8 mm'],
  '/gearcases/*/openings/*/tightening': [
    'torque',
    'tightening: 30 N·m',
    'tightening: 22 lbf·ft (30 N·m), dry',
  ],
  '/gearcases/*/openings/*/seals': [
    'seal',
    'seals: flat copper crush washer 14 x 18 x 1.5 mm, every opening',
    'seals: o-ring 15.6 x 1.78 mm, on condition',
  ],
  '/services': ['services', 'services:\n  rear-oil-change: 200 h, 12 months'],
  '/services/*': ['service', 'rear-oil-change: 200 h, 12 months'],
  '/services/*/gearcases': ['ownGearcases', 'gearcases: [front, rear]'],
  '/services/*/intervals': [
    'interval',
    'intervals: 200 h, 12 months',
    'intervals: { first: 50 h, repeat: "200 h, 12 months" }',
  ],
  '/sheet': ['sheet', 'sheet: ferd-2, revision 1'],
  '/identity': ['plate', 'identity: { serial: FS 00123 }'],
  '/meters': ['readings', 'meters:\n  - 512.6 h on 2023-10-06'],
  '/records': ['servicesDone', 'records: []'],
  '/wrenches': ['wrenches', 'wrenches:\n  small-click: 5–25 N·m by 0.5, click, 1/4 in'],
  '/sockets': ['sockets', 'sockets:\n  hex-8: internal hex 8 mm, 3/8 in'],
  '/vessels': ['jugs', 'vessels:\n  jug: 50–1000 mL by 10'],
  '/containers': ['containers', 'containers:\n  gear-oil: 2 x 1 L of SAE 80W-90 GL-5'],
  '/seals': ['seals', 'seals:\n  washer-14: 3 x flat copper crush washer 14 x 18 x 1.5 mm'],
  '/steps': ['steps', 'steps:\n  - { id: read, do: read the manual }'],
  '/entries': ['work', 'entries:\n  - gear-oil-change of rear'],
  '/date': ['day', 'date: 2023-10-06'],
  '/readings': ['meterReadings', 'readings: 512.6 h'],
}

/** Keys with another meaning in one kind of document. */
const EXAMPLES_BY_KIND: { readonly [Kind in DocumentKind]?: { readonly [pattern: string]: ExampleRow } } = {
  'machine-log': { '/id': ['machineReference', 'id: station-2'] },
  toolbox: {
    '/id': ['shortName', 'id: station-tools'],
    '/name': ['yourName', 'name: Station tools'],
  },
  stock: {
    '/id': ['shortName', 'id: station-shelf'],
    '/name': ['yourName', 'name: Station shelf'],
  },
  procedure: {
    '/id': ['shortName', 'id: ferd-2-oil-change'],
    '/name': ['yourName', 'name: Ferd 2 oil change'],
    '/sheet': ['sheet', 'sheet: { id: ferd-2, revision: "1" }'],
    '/services': ['ownServices', 'services: [rear-oil-change]'],
  },
  'service-record': {
    '/id': ['shortName', 'id: station-2-2023-10-06'],
    '/machine': ['logId', 'machine: station-2'],
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
  if (path === '/kind') return { meaning: 'kind', examples: [`kind: ${kind}`] }
  const kindExample = EXAMPLES_BY_KIND[kind]?.[path]
  if (kindExample !== undefined) return toExample(kindExample)
  const tokens = splitPointer(path) ?? []
  const isSource = tokens.at(-1) === 'source'
  const pattern = isSource
    ? '/source'
    : Object.keys(EXAMPLES).find((candidate) => {
        const parts = candidate.split('/').slice(1)
        return (
          parts.length === tokens.length && parts.every((part, at) => part === '*' || part === tokens[at])
        )
      })
  const row = pattern === undefined ? undefined : EXAMPLES[pattern]
  return row && toExample(row)
}

/** The key that an unknown key probably means, with its example. */
export function findKeyByWord(key: string): (KeyExample & { readonly place: string }) | undefined {
  const pattern = KEYS_BY_WORD.find(([word]) => word.test(key.toLowerCase()))?.[1]
  const row = pattern === undefined ? undefined : EXAMPLES[pattern]
  return pattern === undefined || row === undefined ? undefined : { ...toExample(row), place: pattern }
}

const toExample = ([meaning, ...examples]: ExampleRow): KeyExample => ({ meaning, examples })
