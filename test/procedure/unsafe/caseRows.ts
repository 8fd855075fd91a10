import type { Step } from '../../../src/v1/spec.js'
import { again, drop, move, placeOf, type Row } from './edits.js'

// On its wheels, filled to a level hole, checked again after a run.
export const REAR: readonly Row[] = [
  [
    'never run: the second look sees nothing new',
    drop('clear', 'run', 'park-2', 'stop-2', 'chock-2'),
    'no-short-run',
  ],
  [
    'closed, run and only then filled',
    (steps) => {
      const close = steps.slice(placeOf(steps, 'rear-old-seal-fill'), placeOf(steps, 'settle'))
      const fill = steps.slice(placeOf(steps, 'rear-measure'), placeOf(steps, 'rear-old-seal-fill'))
      const head = steps.slice(0, placeOf(steps, 'rear-measure'))
      const openSteps = steps.slice(placeOf(steps, 'settle'), placeOf(steps, 'rear-level-fill-2'))
      return [...head, ...close, ...openSteps, ...fill, ...steps.slice(placeOf(steps, 'rear-level-fill-2'))]
    },
    'run-without-oil',
    'no-short-run',
  ],
  [
    'driven with the plugs loose',
    (steps) => {
      const runSteps = ['clear', 'run', 'park-2', 'stop-2', 'chock-2'].map(
        (id): Step => ({ ...(steps[placeOf(steps, id)] as Step), id: `${id}-early` }),
      )
      return steps.toSpliced(placeOf(steps, 'rear-pan-drain'), 0, ...runSteps)
    },
    'part-not-tightened',
  ],
  ['the level is never looked at', drop('rear-level-fill', 'rear-level-fill-2'), 'level-not-checked'],
  ['the second look is left out', drop('rear-level-fill-2'), 'level-not-rechecked'],
  ['left low after the run', drop('rear-top-up-fill-2'), 'oil-not-topped-up'],
  [
    'the level hole is read while the hose still drips',
    move('rear-hose-fill', 'rear-top-up-fill'),
    'hose-not-empty',
  ],
  ['the oil has not settled after the run', drop('settle'), 'oil-not-settled'],
  ['the level is read with the engine running', drop('stop-2'), 'engine-running'],
  ['no pan at the second opening', drop('clear', 'rear-pan-fill'), 'chocks-or-pan-in-place'],
  ['no pan when the level plug is opened again', drop('rear-pan-fill'), 'no-pan'],
  ['dirt falls in at the second opening', drop('rear-clean-fill-2'), 'area-not-cleaned'],
  ['the washer of the first opening serves a second time', drop('rear-new-seal-fill-2'), 'seal-not-renewed'],
  [
    'the washer of the first opening is not even taken off',
    drop('rear-old-seal-fill-2', 'rear-new-seal-fill-2'),
    'seal-not-renewed',
  ],
  ['the face is not wiped a second time', drop('rear-wipe-face-fill-2'), 'face-not-wiped'],
  ['the plug stays loose after the second look', drop('rear-tighten-fill-2'), 'part-not-tightened'],
  ['driven with the fill plug out', move('run', 'rear-old-seal-fill'), 'part-not-tightened'],
]

// Hubs with one opening that turns with its wheel.
export const HUB: readonly Row[] = [
  ['the wheel turns on the ground', drop('raise-front-beam', 'stands-front-beam'), 'wheel-not-clear'],
  ['drained with the hole above the oil', drop('hub-left-turn-fill'), 'wrong-wheel-mark'],
  ['filled with the hole at the bottom', drop('hub-left-turn-fill-2'), 'wrong-wheel-mark'],
  ['the wheel turns with the plug out', drop('hub-left-nip-fill'), 'wheel-turned-with-plug-out'],
  [
    'the second hub is forgotten after its drain',
    drop(
      'hub-right-measure',
      'hub-right-pour-fill',
      'hub-right-hose-fill',
      'hub-right-level-fill',
      'hub-right-top-up-fill',
    ),
    'run-without-oil',
  ],
  ['one hub is never looked at for leaks', drop('hub-right-leaks'), 'leaks-not-checked'],
  ['the pan stays under the other hub', drop('hub-right-pan-fill'), 'no-pan'],
  ['a wheel turns below the jack alone', drop('stands-front-beam'), 'jack-as-support'],
]

// A cover with liquid gasket; the machine is raised for the cover, and level on its wheels for the oil.
export const TAIL: readonly Row[] = [
  [
    'the cover comes off before the fill plug is known to open',
    drop('tail-crack-fill', 'tail-nip-fill'),
    'fill-not-cracked',
  ],
  ['no pan below the cover', drop('tail-pan-lid'), 'no-pan'],
  ['dirt falls in with the cover', drop('tail-clean-lid'), 'area-not-cleaned'],
  ['old gasket under the new', drop('tail-old-seal-lid'), 'old-seal-not-removed'],
  ['oil on the face: the gasket does not hold', drop('tail-wipe-face-lid'), 'face-not-wiped'],
  ['the cover goes on dry', drop('tail-sealant-lid'), 'seal-not-renewed'],
  ['gasket on after the cover', move('tail-sealant-lid', 'tail-tighten-cover-lid'), 'seal-not-renewed'],
  [
    'the cover is filled behind with loose bolts',
    move('tail-tighten-cover-lid', 'tail-old-seal-fill'),
    'cover-not-tightened',
  ],
  ['oil on a gasket that has not cured', drop('tail-cure-lid'), 'cover-not-cured'],
  [
    'the cure is counted from before the bolts are tight',
    move('tail-cure-lid', 'tail-tighten-cover-lid'),
    'cover-not-tightened',
  ],
  ['the level is read on the stands', move('lower', 'tail-wipe'), 'wrong-attitude'],
  ['the taper plug goes back dry', drop('tail-sealant-fill'), 'seal-not-renewed'],
  [
    'the cover is never refitted',
    drop('tail-fit-cover-lid', 'tail-tighten-cover-lid'),
    'cover-not-tightened',
  ],
]

// A separate level plug, and oil that is sucked out.
export const TRANSFER: readonly Row[] = [
  ['the level plug stays in: the level cannot show', drop('transfer-take-out-level'), 'opening-closed'],
  ['the level plug is left loose', drop('transfer-tighten-level'), 'part-not-tightened'],
  ['the level plug is stuck when the case is empty', drop('transfer-crack-level'), 'plug-not-cracked'],
]
export const BEVEL: readonly Row[] = [
  ['the new oil is sucked out again', again('bevel-suck-fill', 'bevel-old-seal-level'), 'run-without-oil'],
  ['sucked out at a closed plug', drop('bevel-take-out-fill'), 'opening-closed'],
  ['new oil onto the old', drop('bevel-suck-fill'), 'oil-not-drained'],
  ['the dipstick is read before the oil has settled', drop('bevel-settle'), 'oil-not-settled'],
  ['the additive is forgotten', drop('bevel-additive'), 'additive-missing'],
]

export const FILTERED: readonly Row[] = [
  [
    'the filter comes off a full sump',
    move('sump-filter-off-spin-on', 'sump-pan-drain'),
    'filter-before-drain',
  ],
  ['no pan below the filter', drop('sump-pan-drain', 'sump-pan-spin-on', 'sump-pan-sump'), 'no-pan'],
  ['dirt falls in with the filter', drop('sump-clean-spin-on'), 'area-not-cleaned'],
  ['nobody looks into the old filter', drop('sump-look-at-filter-spin-on'), 'filter-not-inspected'],
  ['the old ring stays on the face', drop('sump-wipe-face-spin-on'), 'face-not-wiped'],
  [
    'the filter hangs loose as the oil goes in',
    move('sump-tighten-filter-spin-on', 'sump-wipe'),
    'drain-not-tightened',
  ],
  ['filled with the strainer on the bench', drop('sump-fit-filter-suction'), 'filter-left-out'],
  ['the strainer goes back dirty', drop('sump-clean-filter-suction'), 'filter-not-cleaned'],
  ['the strainer cannot be reached through the cover', drop('sump-take-off-sump'), 'filter-not-reached'],
  [
    'the filter is not changed at all',
    drop(
      'sump-pan-spin-on',
      'sump-clean-spin-on',
      'sump-filter-off-spin-on',
      'sump-look-at-filter-spin-on',
      'sump-wipe-face-spin-on',
      'sump-fit-filter-spin-on',
      'sump-tighten-filter-spin-on',
    ),
    'filter-not-changed',
  ],
]

export const SHARED: readonly Row[] = [
  [
    'the gearbox oil is put in while the axle still drains',
    move('axle-tighten-drain', 'axle-wipe'),
    'drain-not-tightened',
  ],
  [
    'the axle that shares the oil is never drained',
    (steps) => steps.filter((step) => !/^axle-.*-drain$/.test(step.id)),
    'oil-not-drained',
  ],
  ['one of two cases is never looked at for leaks', drop('axle-leaks'), 'leaks-not-checked'],
]
