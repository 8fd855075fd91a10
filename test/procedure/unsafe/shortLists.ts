import type { SpecSheet } from '../../../src/v1/spec.js'
import { build, makeCase, makeSheet, SEALANT } from '../sheets.js'
import { CHOCK_FRONT, type ListRow, shortLists } from './edits.js'

// Complete short lists: a person comes to the machine and starts with the last step of the list. The codes are those
// that this step must get.

/** Steps that are missing when the machine has just arrived. */
const UNSAFE = [
  ...['manual-not-read', 'protection-not-worn', 'machine-not-on-level-ground', 'engine-running'],
  ...['wheels-not-chocked', 'machine-not-secured'],
]

const cases = makeSheet({
  front: makeCase('front', {
    access: 'front',
    magnet: true,
    breather: true,
    shield: true,
    method: 'dipstick',
  }),
  tail: makeCase('tail', {
    ...{ access: 'rear', out: 'cover', magnet: true, breather: true, shield: true, seal: SEALANT },
    ...{ method: 'to level hole', attitude: 'level on its wheels', recheck: true, minutesAfterStop: true },
  }),
  hub: makeCase('hub', {
    ...{ access: 'front', out: 'sole opening by wheel', method: 'to level hole', instances: true },
    attitude: 'level on stands',
  }),
  bevel: makeCase('bevel', {
    ...{ access: 'front', out: 'suction', method: 'dipstick', ownLevel: true, breather: true },
    ...{ additive: 'always' },
  }),
  sump: makeCase('sump', { access: 'front', shield: true, filters: ['spin-on', 'suction', 'neck'] }),
})

const sheet: SpecSheet = {
  ...cases,
  machine: {
    ...cases.machine,
    secure: [
      { item: 'loader', how: 'lower it to the ground', when: 'before work' },
      { item: 'PTO', how: 'disengage it', when: 'before a run' },
    ],
  },
  shields: Object.fromEntries(
    Object.entries(cases.shields ?? {}).map(([id, shield]) => [id, { ...shield, guards: 'moving parts' }]),
  ),
  services: Object.fromEntries(
    Object.entries(cases.services).map(([id, service]) => [
      id,
      id === 'change' ? { ...service, samples: ['front'] } : service,
    ]),
  ),
}
const validProcedure = build(sheet, ['change'])

const LISTS: readonly ListRow[] = [
  // Work at a machine that may roll, start or drop.
  ...[
    ...['raise-front-beam', 'remove-pan-guard', 'refit-pan-guard', 'front-clean-fill', 'front-crack-fill'],
    ...['front-nip-fill', 'front-pan-drain', 'front-take-out-fill', 'front-breather', 'front-fit-drain'],
    ...['front-tighten-drain', 'front-pour-fill', 'front-level-fill', 'front-top-up-fill', 'front-leaks'],
    ...['tail-take-off-lid', 'tail-fit-cover-lid', 'tail-tighten-cover-lid', 'hub-left-turn-fill'],
    ...['bevel-suck-fill', 'sump-filter-off-spin-on', 'sump-fit-filter-spin-on'],
    ...['sump-tighten-filter-spin-on', 'front-sample-drain'],
  ].map((id): readonly [string, ...string[]] => [id, ...UNSAFE]),
  // The same, below a jack.
  ...[
    ...['remove-pan-guard', 'refit-pan-guard', 'front-clean-fill', 'front-crack-fill', 'front-nip-fill'],
    ...['front-pan-drain', 'front-take-out-fill', 'front-breather', 'front-fit-drain', 'front-tighten-drain'],
    ...['front-pour-fill', 'front-level-fill', 'front-top-up-fill', 'front-leaks', 'tail-take-off-lid'],
    ...['tail-fit-cover-lid', 'tail-tighten-cover-lid', 'hub-left-turn-fill', 'bevel-suck-fill'],
    ...['sump-filter-off-spin-on', 'sump-fit-filter-spin-on', 'sump-tighten-filter-spin-on'],
    'front-sample-drain',
  ].map((id): readonly [string, string] => [`raise-front-beam+${id}`, 'jack-as-support']),
  // Oil samples that are useless: cold, or taken after the stream has ended; and no sample at all.
  ['front-sample-drain', 'no-pan', 'drain-not-out', 'oil-not-warm'],
  ['front-take-out-drain+front-drain-drain+front-sample-drain', 'sample-too-late'],
  ['front-take-out-drain+front-drain-drain', 'sample-not-taken'],
  // Lifting.
  ['chock-front+raise-front-beam', 'chocks-on-lifted-wheels'],
  ['stands-front-beam', 'machine-not-raised'],
  ['hub-left-turn-fill', 'wheel-not-clear'],
  ['hub-left-take-out-fill+hub-left-turn-fill', 'wheel-turned-with-plug-out'],
  // Driving and running: on stands, over chocks, without a guard, with the PTO on, with a plug open, without oil.
  ...['warm', 'run'].flatMap((id): readonly (readonly [string, string])[] => [
    [`raise-front-beam+stands-front-beam+${id}`, 'run-on-stands'],
    [`chock-front+${id}`, 'chocks-or-pan-in-place'],
    [`remove-pan-guard+${id}`, 'guard-not-refitted'],
    [id, 'machine-not-secured-for-run'],
    [`front-take-out-fill+${id}`, 'part-not-tightened'],
    [`front-drain-drain+${id}`, 'run-without-oil'],
  ]),
  ['raise-front-beam+stands-front-beam+park', 'run-on-stands'],
  ['front-take-out-fill+park', 'part-not-tightened'],
  ['front-drain-drain+park', 'run-without-oil'],
  ['raise-front-beam+front-take-out-drain+lower', 'lowered-with-drain-open'],
  ['raise-rear-beam+tail-take-off-lid+lower', 'lowered-with-drain-open'],
  // Opening.
  ['front-clean-fill', 'shield-in-the-way'],
  ['front-crack-drain', 'shield-in-the-way', 'area-not-cleaned', 'fill-not-cracked', 'no-pan'],
  ['front-crack-fill+front-crack-drain', 'fill-plug-loose'],
  ['front-take-out-drain', 'plug-not-cracked', 'no-pan', 'drain-not-raised'],
  [
    'tail-take-off-lid',
    'shield-in-the-way',
    'area-not-cleaned',
    'fill-not-cracked',
    'no-pan',
    'machine-not-raised',
  ],
  ['tail-crack-fill+tail-take-off-lid', 'fill-plug-loose'],
  [
    'front-drain-drain',
    'drain-not-out',
    'fill-not-vented',
    'oil-not-warm',
    'breather-not-cleared',
    'machine-not-raised',
  ],
  ['hub-left-drain-fill', 'wrong-wheel-mark'],
  [
    'bevel-suck-fill',
    'opening-closed',
    'no-pan',
    'oil-not-warm',
    'breather-not-cleared',
    'machine-not-raised',
  ],
  ['front-look-at-magnet-drain', 'part-not-removed'],
  ['front-wipe-magnet-drain', 'part-not-removed', 'magnet-not-inspected'],
  // Filters.
  [
    ...(['sump-filter-off-spin-on', 'shield-in-the-way', 'machine-not-raised', 'area-not-cleaned'] as const),
    ...['filter-before-drain', 'no-pan'],
  ],
  ['sump-filter-off-suction', 'filter-not-reached'],
  ['sump-look-at-filter-spin-on', 'part-not-removed'],
  ['sump-clean-filter-suction', 'part-not-removed', 'filter-not-inspected'],
  [
    'sump-fit-filter-neck',
    'part-not-removed',
    'filter-not-inspected',
    'filter-not-cleaned',
    'face-not-wiped',
    'seal-not-renewed',
  ],
  ['sump-filter-off-spin-on+sump-tighten-filter-spin-on', 'part-not-fitted'],
  ['sump-filter-off-suction+sump-fit-cover-sump', 'filter-left-out'],
  ['sump-filter-off-neck+sump-fit-fill', 'filter-left-out'],
  // Seals and closing.
  ['front-old-seal-drain', 'part-not-removed'],
  ['front-wipe-face-drain', 'part-not-removed', 'old-seal-not-removed'],
  ['front-new-seal-drain', 'part-not-removed', 'old-seal-not-removed', 'face-not-wiped'],
  ['tail-sealant-lid', 'part-not-removed', 'old-seal-not-removed', 'face-not-wiped'],
  ['sump-look-at-seal-neck', 'part-not-removed'],
  [
    'front-fit-drain',
    'part-not-removed',
    'magnet-not-inspected',
    'magnet-not-cleaned',
    'face-not-wiped',
    'seal-not-renewed',
  ],
  [
    'tail-fit-cover-lid',
    'part-not-removed',
    'magnet-not-inspected',
    'magnet-not-cleaned',
    'face-not-wiped',
    'seal-not-renewed',
  ],
  ['front-take-out-drain+front-tighten-drain', 'part-not-fitted'],
  ['tail-take-off-lid+tail-tighten-cover-lid', 'part-not-fitted'],
  ['tail-take-off-lid+tail-cure-lid', 'cover-not-tightened'],
  // Filling and closing the top.
  ['front-pour-fill', 'opening-closed', 'oil-not-drained', 'oil-not-inspected', 'oil-not-measured'],
  ['bevel-pour-fill', 'additive-missing'],
  ['front-take-out-drain+front-pour-fill', 'drain-not-tightened'],
  ['tail-take-off-lid+tail-pour-fill', 'cover-not-cured'],
  ['hub-left-pour-fill', 'wrong-wheel-mark', 'wrong-attitude'],
  ['front-pour-fill+front-measure+front-pour-fill', 'oil-poured-twice'],
  ['front-pour-fill+front-fit-fill', 'hose-not-empty', 'level-not-checked'],
  ['front-pour-fill+front-level-fill', 'hose-not-empty'],
  ['tail-level-fill', 'opening-closed', 'oil-not-settled'],
  ['raise-rear-beam+tail-level-fill', 'wrong-attitude'],
  ['hub-left-level-fill', 'wrong-wheel-mark'],
  ['hub-left-top-up-fill', 'opening-closed', 'wrong-wheel-mark'],
  ['tail-pour-fill+tail-level-fill+run+tail-fit-fill', 'level-not-rechecked'],
  ['tail-pour-fill+run+tail-level-fill+tail-fit-fill', 'oil-not-topped-up'],
  ['settle', 'engine-running'],
  // States that driving changes back.
  ['park+warm+front-crack-fill', 'machine-not-on-level-ground'],
  ['secure-0+warm+front-crack-fill', 'machine-not-secured'],
  ['hub-left-turn-fill+warm+hub-left-drain-fill', 'wrong-wheel-mark'],
  ['stop+settle+warm+tail-level-fill', 'oil-not-settled'],
  ['tail-clean-lid+run+tail-take-off-lid', 'area-not-cleaned'],
  ['sump-clean-spin-on+run+sump-filter-off-spin-on', 'area-not-cleaned'],
  // States that a second opening or a second lift changes back.
  ['raise-front-beam+stands-front-beam+lower+raise-front-beam+front-crack-fill', 'jack-as-support'],
  [
    'tail-take-off-lid+tail-old-seal-lid+tail-wipe-face-lid+tail-sealant-lid+tail-take-off-lid+tail-fit-cover-lid',
    ...['face-not-wiped', 'seal-not-renewed'],
  ],
  [
    'sump-filter-off-neck+sump-look-at-filter-neck+sump-clean-filter-neck+sump-wipe-face-neck+sump-look-at-seal-neck+sump-fit-filter-neck+sump-filter-off-neck+sump-fit-filter-neck',
    ...['filter-not-inspected', 'filter-not-cleaned', 'face-not-wiped', 'seal-not-renewed'],
  ],
  // Last checks.
  ['front-wipe+front-crack-fill+front-leaks', 'gearcase-not-wiped'],
  ['front-crack-fill+front-wipe+front-tighten-fill+front-leaks', 'gearcase-not-wiped'],
  ['front-take-out-drain+front-leaks', 'part-not-tightened', 'gearcase-not-wiped'],
  ['front-take-out-drain+refit-pan-guard', 'part-not-tightened', 'leaks-not-checked'],
]

export const SHORT_LISTS = shortLists(
  sheet,
  { ...validProcedure, steps: [...validProcedure.steps, CHOCK_FRONT] },
  LISTS,
)
