import type { Condition, Gearcase, ProcedureDocument, Step } from '../../../src/v1/spec.js'
import { build, makeCase, makeSheet, threeAxleSheet, varietySheet } from '../sheets.js'
import { CHOCK_FRONT, shortLists, type UnsafeSequence } from './edits.js'

// Short lists on less common machines.

/** Under water: `warm`, `park` and `run` would turn water and sand through the gears. */
const submergedProcedure: ProcedureDocument = {
  ...build(varietySheet, ['rear-change']),
  events: ['submersion'],
}

/** One opening that turns with its wheel, reached from the ground: the machine is rolled. */
const rolledSheet = makeSheet({
  hub: makeCase('hub', {
    ...{ out: 'sole opening by wheel', method: 'to level hole', attitude: 'level on its wheels' },
    minutesAfterStop: true,
  }),
})
const rolled = build(rolledSheet, ['change'])

/** The plate under the raised case is refitted before the run. */
const boxSheet = makeSheet({ box: makeCase('box', { access: 'front', shield: true }) })
const platedSheet = {
  ...boxSheet,
  shields: Object.fromEntries(
    Object.entries(boxSheet.shields ?? {}).map(([id, shield]) => [
      id,
      { ...shield, guards: 'the underside' as const },
    ]),
  ),
}

/** The manual adds the additive after the oil. */
const oilFirst = ((): Gearcase => {
  const box = makeCase('box', { additive: 'always' })
  const { oilSpace } = box
  if (oilSpace.kind !== 'own' || oilSpace.oils.kind !== 'oils') throw new Error('no oils')
  const choices = oilSpace.oils.choices.map((choice) =>
    choice.additive === undefined
      ? choice
      : { ...choice, additive: { ...choice.additive, order: 'oil first' as const } },
  )
  return { ...box, oilSpace: { ...oilSpace, oils: { kind: 'oils', choices } } }
})()
const oilFirstSheet = makeSheet({ box: oilFirst })

/** A machine whose variant is not known, with parts that only some variants have. */
export const DOUBTFUL_SHEET = (() => {
  const appliesTo: Condition = { variants: ['plain'] }
  const box = makeCase('box', { out: 'cover', shield: true, filters: ['spin-on'] })
  const oddParts = <T extends object>(parts: Readonly<Record<string, T>> = {}) =>
    Object.fromEntries(Object.entries(parts).map(([id, part]) => [id, { ...part, appliesTo }]))
  const sheet = makeSheet({
    box: {
      ...box,
      covers: oddParts(box.covers),
      filters: oddParts(box.filters ?? {}),
      openings: oddParts(box.openings),
    },
  })
  return { ...sheet, shields: oddParts(sheet.shields) }
})()

const CHOCK_REAR: Step = { ...CHOCK_FRONT, id: 'chock-rear', on: '/machine/axles/rear' }
const RAISE: Step = { id: 'raise', do: 'raise the machine', on: '/machine/supports/front-beam' }
const STANDS: Step = { id: 'stands', do: 'set on stands', on: '/machine/supports/front-beam' }
const CARRY: Step = { id: 'carry', do: 'carry to level ground' }

const more = (source: ProcedureDocument, ...steps: readonly Step[]): ProcedureDocument => ({
  ...source,
  steps: [...source.steps, ...steps],
})

export const ODD_MACHINES: readonly UnsafeSequence[] = [
  ...shortLists(varietySheet, more(submergedProcedure, RAISE, STANDS, CARRY), [
    ['warm', 'machine-must-not-run'],
    ['park', 'machine-must-not-run'],
    ['run', 'machine-must-not-run'],
    ['raise+stands+carry', 'run-on-stands'],
  ]),
  ...shortLists(rolledSheet, more(rolled, RAISE, STANDS), [
    [
      'hub-roll-fill',
      'manual-not-read',
      'protection-not-worn',
      'machine-not-on-level-ground',
      'engine-running',
    ],
    ['raise+stands+hub-roll-fill', 'run-on-stands'],
    ['chock+hub-roll-fill', 'chocks-or-pan-in-place'],
    ['hub-pan-fill+hub-roll-fill', 'chocks-or-pan-in-place'],
    ['hub-take-out-fill+hub-roll-fill', 'wheel-turned-with-plug-out'],
    ['chock+hub-roll-fill+hub-crack-fill', 'wheels-not-chocked'],
    ['stop+hub-settle+hub-roll-fill-2+hub-level-fill', 'oil-not-settled'],
  ]),
  ...shortLists(platedSheet, build(platedSheet, ['change']), [
    ['box-take-out-drain+box-seep', 'part-not-tightened', 'gearcase-not-wiped'],
  ]),
  ...shortLists(threeAxleSheet, more(build(threeAxleSheet, ['change']), CHOCK_REAR, RAISE), [
    ['chock-rear+raise', 'axle-not-chocked'],
  ]),
  ...shortLists(oilFirstSheet, build(oilFirstSheet, ['change']), [
    ['box-pour-fill+box-fit-fill', 'additive-missing'],
  ]),
  ...shortLists(DOUBTFUL_SHEET, build(DOUBTFUL_SHEET, ['change'], {}), [
    ...['remove-pan-guard', 'box-crack-fill', 'box-take-off-lid', 'box-filter-off-spin-on'].map(
      (id): readonly [string, string] => [id, 'variant-not-found'],
    ),
  ]),
]
