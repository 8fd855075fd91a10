import type { Action } from '../spec/index.js'
import {
  type ActionRow,
  DRIVE_OFF_NEEDS,
  FITTING_NEEDS,
  HAZARDS,
  LOOSENING_NEEDS,
  MASS_FIGURE,
  OILS_FIGURE,
  PLACE_FIGURE,
  REFILL_FIGURE,
  ROLL_NEEDS,
  RUN_NEEDS,
  SAFETY_NEEDS,
  SEAL_FIGURE,
  SETTLING_FIGURE,
} from './actionRow.js'

const EMPTY_LISTS = { needs: [], figures: [], hazards: [], tools: [], supplies: [] }

function defineAction(
  on: ActionRow['on'],
  short: string,
  minutes: ActionRow['minutes'],
  changes: ActionRow['changes'],
  lists: Partial<ActionRow> = {},
): ActionRow {
  return { ...EMPTY_LISTS, on, short, minutes, changes, ...lists }
}

const MACHINE = ['machine'] as const
const GEARCASE = ['gearcase'] as const
const OPENING = ['opening'] as const
const COVER = ['cover'] as const
const OPENING_OR_COVER = ['opening', 'cover'] as const
const FILTER = ['filter'] as const
const SEALS = ['seal', 'cover seal', 'filter seal'] as const

/**
 * The table of actions. Each action has its parts, preconditions, effects, figures, hazards, tools, supplies
 * and minutes. The minutes are a house estimate for one person with the tools at hand; `planned` minutes
 * depend on the oil, the hose or the sealant, and are calculated for the visit.
 *
 * Source: common practice, no source. Signal words in the sense of ANSI Z535.6.
 * @example
 * import { ACTIONS } from 'drivetrain-service/v1/procedure'
 * // Must the fill plug be out before the oil drains?
 * ACTIONS['let drain'].needs.includes('fill-not-vented') // => true
 */
export const ACTIONS: Readonly<Record<Action, ActionRow>> = {
  // Preparing, lifting and lowering the machine.
  'find the variant': defineAction(MACHINE, 'variant', 2, ['variant found']),
  'read the manual': defineAction(MACHINE, 'read', 5, ['manual read']),
  'wear protection': defineAction(MACHINE, 'protect', 1, ['protection worn'], {
    supplies: ['gloves and goggles'],
  }),
  'warm the oil': defineAction(MACHINE, 'warm', 10, ['engine runs and the machine may move', 'oil warm'], {
    needs: RUN_NEEDS,
    figures: [{ name: 'drainTemperature', of: 'each changed gearcase', leaf: '/drainTemperature' }],
    hazards: [HAZARDS.exhaust, HAZARDS.hotOil],
  }),
  'park on level ground': defineAction(
    MACHINE,
    'park',
    2,
    ['engine runs and the machine may move', 'on level ground'],
    { needs: ['part-not-tightened', 'run-without-oil', 'run-on-stands', 'machine-must-not-run'] },
  ),
  'carry to level ground': defineAction(MACHINE, 'carry', 15, ['engine stopped', 'on level ground'], {
    needs: ['run-on-stands'],
    hazards: [HAZARDS.mustNotRun, HAZARDS.mayMove],
  }),
  'stop the engine': defineAction(MACHINE, 'stop', 1, ['engine stopped'], { hazards: [HAZARDS.mayMove] }),
  'chock the wheels': defineAction(['machine', 'axle'], 'chock', 1, ['wheels chocked'], {
    tools: ['chocks'],
  }),
  'secure the machine': defineAction(['secured item'], 'secure', 2, ['item secured']),
  'raise the machine': defineAction(['support', 'machine'], 'raise', 3, ['raised on the jack'], {
    needs: [
      ...SAFETY_NEEDS.filter((name) => name !== 'jack-as-support'),
      'ramps-and-jack',
      'chocks-on-lifted-wheels',
      'axle-not-chocked',
    ],
    figures: [MASS_FIGURE],
    hazards: [HAZARDS.lifting, HAZARDS.parkingBrake],
    tools: ['jack'],
  }),
  'set on stands': defineAction(['support', 'machine'], 'stands', 2, ['resting on stands'], {
    needs: ['machine-not-raised'],
    figures: [MASS_FIGURE],
    hazards: [HAZARDS.stands],
    tools: ['stands'],
  }),
  'lower the machine': defineAction(MACHINE, 'lower', 3, ['on its wheels'], {
    needs: ['lowered-with-drain-open'],
    hazards: [HAZARDS.lifting],
    tools: ['jack'],
  }),
  'drive onto ramps': defineAction(
    ['axle', 'machine'],
    'ramps',
    5,
    ['engine runs and the machine may move', 'on ramps'],
    {
      needs: ['manual-not-read', 'machine-not-on-level-ground', ...RUN_NEEDS, 'ramps-not-permitted'],
      figures: [MASS_FIGURE],
      hazards: [HAZARDS.ramps],
      tools: ['ramps'],
    },
  ),
  'drive off ramps': defineAction(
    MACHINE,
    'off-ramps',
    3,
    ['engine runs and the machine may move', 'off the ramps'],
    { needs: DRIVE_OFF_NEEDS, hazards: [HAZARDS.mayMove], tools: ['ramps'] },
  ),
  'turn the wheel': defineAction(['opening', 'gearcase'], 'turn', 1, ['wheel at its mark'], {
    needs: [...SAFETY_NEEDS, 'wheel-not-clear', 'wheel-turned-with-plug-out'],
    hazards: [HAZARDS.wheelTurns],
  }),
  'roll the machine': defineAction(['opening', 'gearcase'], 'roll', 3, ['rolled to the mark'], {
    needs: [...ROLL_NEEDS, 'wheel-turned-with-plug-out'],
    hazards: [HAZARDS.rolling],
  }),
  'remove shield': defineAction(['shield'], 'remove', 5, ['shield off'], {
    needs: ['variant-not-found', ...SAFETY_NEEDS],
    figures: [PLACE_FIGURE],
    tools: ['socket or key'],
  }),
  'refit shield': defineAction(['shield'], 'refit', 6, ['shield on'], {
    needs: [...SAFETY_NEEDS, 'part-not-tightened', 'leaks-not-checked'],
    figures: [{ name: 'tightening', of: 'part', leaf: '/fasteners/tightening' }],
    tools: ['torque wrench', 'socket or key'],
  }),

  // Opening plugs and draining the old oil.
  'clean around': defineAction([...OPENING_OR_COVER, 'filter'], 'clean', 2, ['area clean'], {
    needs: [...SAFETY_NEEDS, 'shield-in-the-way'],
    figures: [PLACE_FIGURE],
    tools: ['brush'],
    supplies: ['rags'],
  }),
  'crack loose': defineAction(OPENING, 'crack', 1, ['plug loose in its seat'], {
    needs: [...LOOSENING_NEEDS, 'no-pan'],
    tools: ['breaker bar', 'socket or key'],
  }),
  'nip by hand': defineAction(OPENING, 'nip', 1, ['plug in by hand'], { needs: SAFETY_NEEDS }),
  'place the pan': defineAction(['opening', 'cover', 'filter', 'gearcase'], 'pan', 1, ['pan in place'], {
    needs: SAFETY_NEEDS,
    tools: ['drain pan'],
  }),
  'take out': defineAction(OPENING, 'take-out', 1, ['plug out'], {
    needs: [...SAFETY_NEEDS, 'plug-not-cracked', 'no-pan', 'drain-not-raised'],
    figures: [PLACE_FIGURE],
    hazards: [HAZARDS.hotOil, HAZARDS.oilOnSkin],
    tools: ['socket or key'],
    supplies: ['rags'],
  }),
  'take off cover': defineAction(COVER, 'take-off', 8, ['cover off'], {
    needs: [...LOOSENING_NEEDS, 'no-pan', 'machine-not-raised'],
    figures: [PLACE_FIGURE],
    hazards: [HAZARDS.hotOil, HAZARDS.oilOnSkin],
    tools: ['socket or key', 'scraper'],
    supplies: ['rags'],
  }),
  // Sample in mid-stream: the sediment at the plug runs out first. Method: US Navy training manual 14008,
  // "Drain sampling".
  'take an oil sample': defineAction(OPENING, 'sample', 2, ['oil sampled'], {
    needs: [...SAFETY_NEEDS, 'no-pan', 'drain-not-out', 'oil-not-warm', 'sample-too-late'],
    hazards: [HAZARDS.hotOil, HAZARDS.oilOnSkin],
    supplies: ['sample bottle'],
  }),
  'let drain': defineAction(OPENING_OR_COVER, 'drain', 'planned', ['old oil out'], {
    needs: [
      'drain-not-out',
      'fill-not-vented',
      'oil-not-warm',
      'breather-not-cleared',
      'wrong-wheel-mark',
      'machine-not-raised',
      'sample-not-taken',
    ],
    hazards: [HAZARDS.hotOil],
  }),
  'suck out the oil': defineAction(OPENING, 'suck', 10, ['old oil out'], {
    needs: [
      ...SAFETY_NEEDS,
      'opening-closed',
      'no-pan',
      'oil-not-warm',
      'breather-not-cleared',
      'machine-not-raised',
    ],
    hazards: [HAZARDS.hotOil, HAZARDS.oilOnSkin],
    tools: ['suction pump'],
    supplies: ['rags'],
  }),
  'clear the breather': defineAction(GEARCASE, 'breather', 2, ['breather clear'], {
    needs: SAFETY_NEEDS,
    figures: [{ name: 'place', of: 'part', leaf: '/breather/place' }],
    supplies: ['rags'],
  }),
  'inspect the oil': defineAction(GEARCASE, 'look-at-oil', 1, ['old oil inspected'], {
    hazards: [HAZARDS.chips],
  }),
  'inspect the magnet': defineAction(OPENING_OR_COVER, 'look-at-magnet', 1, ['magnet inspected'], {
    needs: ['part-not-removed'],
    hazards: [HAZARDS.chips],
  }),
  'clean the magnet': defineAction(OPENING_OR_COVER, 'wipe-magnet', 1, ['magnet clean'], {
    needs: ['part-not-removed', 'magnet-not-inspected'],
    supplies: ['rags'],
  }),

  // Changing filters and strainers while the drain is still open.
  'take off filter': defineAction(FILTER, 'filter-off', 3, ['filter off'], {
    needs: [
      'variant-not-found',
      ...SAFETY_NEEDS,
      'shield-in-the-way',
      'machine-not-raised',
      'area-not-cleaned',
      'filter-before-drain',
      'filter-not-reached',
      'no-pan',
    ],
    figures: [PLACE_FIGURE],
    hazards: [HAZARDS.hotOil, HAZARDS.oilOnSkin],
    tools: ['socket or key'],
    supplies: ['rags'],
  }),
  'inspect the filter': defineAction(FILTER, 'look-at-filter', 2, ['filter inspected'], {
    needs: ['part-not-removed'],
    hazards: [HAZARDS.chips],
  }),
  'clean the filter': defineAction(FILTER, 'clean-filter', 5, ['filter clean'], {
    needs: ['part-not-removed', 'filter-not-inspected'],
    supplies: ['rags', 'solvent'],
  }),
  'fit filter': defineAction(FILTER, 'fit-filter', 2, ['filter on'], {
    needs: [
      ...SAFETY_NEEDS,
      'part-not-removed',
      'filter-not-inspected',
      'filter-not-cleaned',
      'face-not-wiped',
      'seal-not-renewed',
    ],
  }),
  'tighten filter': defineAction(FILTER, 'tighten-filter', 1, ['filter tight'], {
    needs: [...SAFETY_NEEDS, 'part-not-fitted'],
    figures: [{ name: 'tightening', of: 'part', leaf: '/held/tightening' }],
    tools: ['torque wrench', 'socket or key'],
  }),

  // Renewing the seals, and closing and tightening everything.
  'take off old seal': defineAction(SEALS, 'old-seal', 1, ['old seal off'], {
    needs: ['part-not-removed'],
    figures: [SEAL_FIGURE],
    hazards: [HAZARDS.sharpScraper],
    tools: ['scraper'],
  }),
  'wipe the seal face': defineAction([...OPENING_OR_COVER, 'filter'], 'wipe-face', 1, ['face wiped'], {
    needs: ['part-not-removed', 'old-seal-not-removed'],
    supplies: ['rags'],
  }),
  'fit new seal': defineAction(SEALS, 'new-seal', 1, ['new seal on'], {
    needs: ['part-not-removed', 'old-seal-not-removed', 'face-not-wiped'],
    figures: [SEAL_FIGURE],
    supplies: ['seal'],
  }),
  'inspect the seal': defineAction(SEALS, 'look-at-seal', 1, ['seal inspected'], {
    needs: ['part-not-removed'],
    figures: [SEAL_FIGURE],
  }),
  'apply sealant': defineAction(SEALS, 'sealant', 2, ['new seal on'], {
    needs: ['part-not-removed', 'old-seal-not-removed', 'face-not-wiped'],
    figures: [SEAL_FIGURE],
    supplies: ['sealant'],
  }),
  fit: defineAction(OPENING, 'fit', 1, ['plug in with its seal'], {
    needs: [
      ...FITTING_NEEDS,
      'hose-not-empty',
      'additive-missing',
      'level-not-checked',
      'level-not-rechecked',
      'oil-not-topped-up',
    ],
  }),
  tighten: defineAction(OPENING, 'tighten', 2, ['plug tight'], {
    needs: [...SAFETY_NEEDS, 'part-not-fitted'],
    figures: [{ name: 'tightening', of: 'part', leaf: '/tightening' }],
    hazards: [HAZARDS.weepingWasher, HAZARDS.weepingTaper],
    tools: ['torque wrench', 'socket or key'],
  }),
  'fit cover': defineAction(COVER, 'fit-cover', 3, ['cover on'], { needs: FITTING_NEEDS }),
  'tighten cover': defineAction(COVER, 'tighten-cover', 5, ['cover tight'], {
    needs: [...SAFETY_NEEDS, 'part-not-fitted'],
    figures: [{ name: 'tightening', of: 'part', leaf: '/bolts/tightening' }],
    tools: ['torque wrench', 'socket or key'],
  }),
  'wait for the cure': defineAction(COVER, 'cure', 'planned', ['sealant cured'], {
    needs: ['cover-not-tightened'],
    figures: [{ name: 'seal', of: 'part', leaf: '/seal' }],
  }),

  // Filling the new oil and checking its level; a second check follows a run if the manual requires it.
  'measure the oil': defineAction(GEARCASE, 'measure', 3, ['refill measured'], {
    figures: [REFILL_FIGURE, OILS_FIGURE],
    tools: ['measuring vessel'],
    supplies: ['oil'],
  }),
  'add the additive': defineAction(GEARCASE, 'additive', 2, ['additive in'], {
    figures: [OILS_FIGURE],
    tools: ['measuring vessel'],
    supplies: ['additive'],
  }),
  'pour the oil': defineAction(OPENING, 'pour', 2, ['new oil in'], {
    needs: [
      ...SAFETY_NEEDS,
      'opening-closed',
      'oil-not-drained',
      'oil-not-inspected',
      'oil-not-measured',
      'oil-poured-twice',
      'additive-missing',
      'drain-not-tightened',
      'cover-not-cured',
      'wrong-wheel-mark',
      'wrong-attitude',
    ],
    figures: [REFILL_FIGURE, OILS_FIGURE],
    tools: ['funnel and hose'],
    supplies: ['oil'],
  }),
  'wait for the hose': defineAction(OPENING, 'hose', 'planned', ['hose empty'], {
    tools: ['funnel and hose'],
  }),
  'check the level': defineAction(OPENING, 'level', 2, ['level checked'], {
    needs: [
      ...SAFETY_NEEDS,
      'opening-closed',
      'hose-not-empty',
      'wrong-wheel-mark',
      'wrong-attitude',
      'oil-not-settled',
    ],
    figures: [
      { name: 'below', of: 'oil space', leaf: '/fill/method/below' },
      { name: 'temperature', of: 'oil space', leaf: '/fill/level/temperature' },
      SETTLING_FIGURE,
    ],
    hazards: [HAZARDS.hotOil],
  }),
  'top up': defineAction(OPENING, 'top-up', 3, ['level topped up'], {
    needs: [...SAFETY_NEEDS, 'opening-closed', 'wrong-wheel-mark'],
    figures: [OILS_FIGURE],
    tools: ['funnel and hose'],
    supplies: ['oil'],
  }),

  // Running the machine, the last checks, the used oil and the record.
  'clear away': defineAction(MACHINE, 'clear', 2, ['chocks and pan away']),
  'short run': defineAction(MACHINE, 'run', 5, ['engine runs and the machine may move', 'oil runs through'], {
    needs: RUN_NEEDS,
    hazards: [HAZARDS.exhaust, HAZARDS.hotOil],
  }),
  'let settle': defineAction(['machine', 'gearcase'], 'settle', 'planned', ['oil settled'], {
    needs: ['engine-running'],
    figures: [SETTLING_FIGURE, { ...SETTLING_FIGURE, of: 'each oil space' }],
  }),
  'wipe down': defineAction(['gearcase', 'machine'], 'wipe', 2, ['wiped down'], { supplies: ['rags'] }),
  'let a leak show': defineAction(['gearcase', 'machine'], 'seep', 10, ['waited for leaks'], {
    needs: ['part-not-tightened', 'gearcase-not-wiped'],
  }),
  'check for leaks': defineAction(['gearcase', 'machine'], 'leaks', 2, ['leaks checked'], {
    needs: [...SAFETY_NEEDS, 'part-not-tightened', 'gearcase-not-wiped'],
    hazards: [HAZARDS.weepingWasher, HAZARDS.weepingTaper],
  }),
  'take used oil away': defineAction(MACHINE, 'used-oil', 5, ['used oil taken away'], {
    hazards: [HAZARDS.usedOil],
    supplies: ['used-oil container'],
  }),
  record: defineAction(MACHINE, 'record', 5, ['work recorded']),
}
