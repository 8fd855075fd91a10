import type { SpecSheet } from '../../../src/v1/spec.js'
import { build, type CaseOptions, makeCase, makeSheet } from '../sheets.js'
import {
  applyBoth,
  CHOCK_FRONT,
  change,
  drop,
  insert,
  move,
  on,
  type Row,
  shortLists,
  type UnsafeSequence,
} from './edits.js'

// A machine whose front wheels are driven onto ramps: it is tilted there, and its wheels carry it.

function rampSheet(cases: Readonly<Record<string, CaseOptions>>, ramps = true): SpecSheet {
  const sheet = makeSheet(
    Object.fromEntries(Object.entries(cases).map(([id, options]) => [id, makeCase(id, options)])),
  )
  const secure = [
    { item: 'loader', how: 'lower it to the ground', when: 'before work' },
    { item: 'PTO', how: 'disengage it', when: 'before a run' },
  ] as const
  const axles = Object.entries(sheet.machine.axles).map(([id, axle]) => [id, { ...axle, ramps }])
  const shields = Object.entries(sheet.shields ?? {}).map(([id, shield]) => [
    id,
    { ...shield, guards: 'moving parts' as const },
  ])
  return {
    ...sheet,
    machine: { ...sheet.machine, secure, axles: Object.fromEntries(axles) },
    shields: Object.fromEntries(shields),
  }
}

const TILTED: CaseOptions = { access: 'front', method: 'dipstick', attitude: 'level on its wheels' }
const RAISE = { do: 'raise the machine', on: '/machine/supports/rear-beam' } as const
const STANDS = { do: 'set on stands', on: '/machine/supports/front-beam', id: 'stands' } as const

/** A gearcase on the ground, then one on ramps whose dipstick is read on flat ground. */
export const rampsSheet = rampSheet({ yard: { shield: true }, front: TILTED })
const ROWS: readonly Row[] = [
  ['driven onto ramps with a plug loose', move('front-crack-fill', 'ramps-front'), 'part-not-tightened'],
  ['driven onto ramps on dry gears', move('yard-pour-fill', 'stop-2'), 'run-without-oil'],
  [
    'driven onto ramps while the front is on its stands',
    applyBoth(insert(STANDS, 'ramps-front'), insert({ ...RAISE, on: STANDS.on }, 'stands')),
    'run-on-stands',
  ],
  ['driven onto ramps with chocks behind the wheels', drop('clear'), 'chocks-or-pan-in-place'],
  ['driven onto ramps with the PTO turning', drop('secure-1-2'), 'machine-not-secured-for-run'],
  ['driven onto ramps without the guard', move('refit-pan-guard', 'stop-2'), 'guard-not-refitted'],
  ['the rear is jacked up while the front is on ramps', insert(RAISE, 'front-clean-fill'), 'ramps-and-jack'],
  ['only the wheels on the ramps are chocked', change('chock-rear', CHOCK_FRONT), 'wheels-not-chocked'],
  ['the engine runs on the ramps', drop('stop-2'), 'engine-running'],
  ['the loader hangs over the ramps', drop('secure-0-2'), 'machine-not-secured'],
  ['drained on flat ground', move('ramps-front', 'off-ramps'), 'drain-not-raised'],
  ['the level is read on the ramps', move('off-ramps', 'front-old-seal-fill'), 'wrong-attitude'],
  [
    'driven off with the drain plug loose',
    insert({ do: 'crack loose', on: '/gearcases/front/openings/drain' }, 'off-ramps'),
    'driven-with-plug-loose',
  ],
  ['driven off with the fill plug out', drop('front-nip-fill-2'), 'driven-with-plug-loose'],
  ['driven off on dry gears', move('front-pour-fill', 'front-take-out-fill-2'), 'run-without-oil'],
  ['the level is read with the engine running after the ramps', drop('stop-3'), 'engine-running'],
  ['driven off over the pan', drop('clear-2'), 'chocks-or-pan-in-place'],
  ['driven off with the PTO turning', drop('secure-1-3'), 'machine-not-secured-for-run'],
]

const guardedSheet = rampSheet({ front: { access: 'front', shield: true } })

export const ON_RAMPS: readonly UnsafeSequence[] = [
  ...shortLists(guardedSheet, build(guardedSheet, ['change'], undefined, 'ramps'), [
    ['park+stop+ramps-front', 'manual-not-read'],
  ]),
  ...on(rampsSheet, 'change', ROWS, {}, 'ramps'),
  ...on(
    guardedSheet,
    'change',
    [
      [
        'ramps on sloping ground',
        applyBoth(drop('park'), move('warm', 'stop')),
        'machine-not-on-level-ground',
      ],
      ['driven off without the guard', move('refit-pan-guard', 'run'), 'guard-not-refitted'],
      ['run with the front wheels on ramps', drop('off-ramps'), 'run-on-stands'],
      ['left on its ramps', drop('off-ramps', 'run', 'park-2'), 'machine-not-lowered'],
    ],
    {},
    'ramps',
  ),
  ...on(
    rampSheet({ front: { access: 'front' } }),
    'change',
    [
      [
        'a machine that was under water is driven onto ramps',
        applyBoth(drop('warm'), change('park', { do: 'carry to level ground' })),
        'machine-must-not-run',
      ],
    ],
    { events: ['submersion'] },
    'ramps',
  ),
  ...on(rampSheet({ front: { access: 'front' } }, false), 'change', [
    [
      'driven onto ramps that its wheels do not fit',
      insert({ do: 'drive onto ramps', on: '/machine/axles/front' }, 'stop'),
      'ramps-not-permitted',
    ],
  ]),
]
