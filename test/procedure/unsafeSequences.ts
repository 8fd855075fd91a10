import type { SpecSheet } from '../../src/v1/spec.js'
import { filterSheet, makeCase, makeOpening, makeSheet, sharedSheet, varietySheet } from './sheets.js'
import { BEVEL, FILTERED, HUB, REAR, SHARED, TAIL, TRANSFER } from './unsafe/caseRows.js'
import { drop, type Edit, on, type Row, type UnsafeSequence } from './unsafe/edits.js'
import { FRONT } from './unsafe/frontRows.js'
import { ODD_MACHINES } from './unsafe/oddMachines.js'
import { ON_RAMPS } from './unsafe/rampRows.js'
import { SHORT_LISTS } from './unsafe/shortLists.js'

// Orders of work that can hurt a person, the machine or the ground. They are based on trade practice, not on the table
// of actions. Each is a good procedure with a short edit, the unsafe fact, and the codes that it must get.

/** A machine with a loader to lower, a PTO to disengage and a guard over moving parts; an O-ring that is inspected. */
const secured = ((): SpecSheet => {
  const box = makeCase('box', { shield: true })
  const sheet = makeSheet({
    box: {
      ...box,
      openings: {
        ...box.openings,
        drain: makeOpening('drain plug', [{ role: 'drain' }], {
          seals: [{ kind: 'o-ring', material: 'NBR', replace: 'on condition' }],
        }),
      },
    },
  })
  const shields = Object.entries(sheet.shields ?? {}).map(([id, shield]) => [
    id,
    { ...shield, guards: 'moving parts' as const },
  ])
  const secure = [
    { item: 'loader', how: 'lower it to the ground', when: 'before work' },
    { item: 'PTO', how: 'disengage it', when: 'before a run' },
  ] as const
  return { ...sheet, machine: { ...sheet.machine, secure }, shields: Object.fromEntries(shields) }
})()

const itemStep =
  (item: number): Edit =>
  (steps) => {
    const place = steps.findIndex((step) => step.on === `/machine/secure/${item}`)
    if (place === -1) throw new Error('nothing is secured')
    return steps.toSpliced(place, 1)
  }

const SECURED: readonly Row[] = [
  ['the raised loader hangs over the work', itemStep(0), 'machine-not-secured'],
  ['the PTO turns during the run', itemStep(1), 'machine-not-secured-for-run'],
  ['the run turns a shaft without its guard', drop('refit-pan-guard'), 'guard-not-refitted'],
  ['a cut O-ring goes back unseen', drop('box-look-at-seal-drain'), 'seal-not-renewed'],
]

export const UNSAFE_SEQUENCES: readonly UnsafeSequence[] = [
  ...SHORT_LISTS,
  ...ON_RAMPS,
  ...ODD_MACHINES,
  ...on(varietySheet, 'front-change', FRONT),
  ...on(varietySheet, 'rear-change', REAR),
  ...on(varietySheet, 'hub-change', HUB),
  ...on(varietySheet, 'tail-change', TAIL),
  ...on(varietySheet, 'transfer-change', TRANSFER),
  ...on(varietySheet, 'bevel-change', BEVEL),
  ...on(filterSheet, 'sump-change', FILTERED),
  ...on(sharedSheet, 'change', SHARED),
  ...on(secured, 'change', SECURED),
  ...on(
    varietySheet,
    'rear-change',
    [
      ['a machine that was under water is started to warm its oil', (steps) => steps, 'machine-must-not-run'],
      ['a machine that was under water is driven to level ground', drop('warm'), 'machine-must-not-run'],
    ],
    { events: ['submersion'] },
  ),
]
