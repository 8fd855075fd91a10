import { dropUndefined } from '../../src/base/dropUndefined.js'
import { shortenCard } from '../../src/card/shortenCard.js'
import { type CardModel, cueList, paperModel, slipModel, wallModel } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import type { Catalogue } from '../../src/v1/message.js'
import {
  kitContents,
  listVariantDifferences,
  lubeChart,
  nextDue,
  ownerSlip,
  wallFacts,
} from '../../src/v1/service.js'
import { planExamples } from '../card/planExamples.js'
import { PLAN_WITHOUT_VARIANT } from '../card/skarnfellPlan.js'
import { cardOf, requestExample } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'

/** A paper with the most pages that it may print at the default margins. */
export interface ListedPaper {
  readonly name: string
  readonly card: CardModel
  readonly most: number
}

/** Most pages of a visit sheet. */
const MOST_PAGES = 2
/** Visits that need more, and why. */
const LONGER: Readonly<Record<string, { readonly pages: number; readonly why: string }>> = {
  'acre-26/log': { pages: 3, why: 'an axle and two hubs, 104 steps' },
  'acre-26/log-stale': { pages: 3, why: 'an axle and two hubs, 104 steps' },
  'acre-26/log-rebuilt': {
    pages: 3,
    why: 'an axle and two hubs after a rebuild, and the caution of lost oil',
  },
  'plan with every feature': { pages: 3, why: 'a made-up plan of three gearcases with every kind of gap' },
}
/** Pages of a cue sheet: large type, and the list in filming order on a page of its own. */
const CUE_PAGES = 14

/** Wall cards; the second page has what does not fit, such as the true sizes. */
const WALL_CARDS = [
  ['tind-4', { variant: 'short' }],
  ['tind-4', { variant: 'long' }],
  ['tind-4', {}],
  ['acre-26', {}],
  ['bud-3', { variant: 'locking' }],
  ['bud-3', { variant: 'open' }],
  ['reach-55', {}],
  ['kvist-2', {}],
] as const

/** Every paper of every example in one language. */
export function listPapers(catalogue: Catalogue = en): readonly ListedPaper[] {
  const { sheet, log, today, due } = requestExample('acre-26')
  const slip = slipModel(ownerSlip({ sheet, log, today, faults: [] }, { due }), catalogue)
  return [
    ...listVisitPapers(catalogue),
    { name: 'the slip of an owner', card: slip, most: 1 },
    ...WALL_CARDS.map(([folder, identity]) => {
      const { sheet, toolbox, stock } = requestExample(folder)
      const facts = wallFacts(dropUndefined({ sheet, identity, toolbox, stock }), { iso6789: '2017' })
      if (!facts.ok) throw new Error(JSON.stringify(facts.findings))
      const name = `wall card of ${folder} ${Object.values(identity).join('')}`.trim()
      return { name, card: wallModel(facts.value, catalogue), most: 2 }
    }),
  ]
}

function listVisitPapers(catalogue: Catalogue): readonly ListedPaper[] {
  const plans = [...planExamples(), ['plan with every feature', PLAN_WITHOUT_VARIANT] as const]
  return plans.flatMap(([name, plan]) => {
    const card = cardOf(plan, catalogue)
    const most = LONGER[name]?.pages ?? MOST_PAGES
    const visit = [
      { name, card, most },
      { name: `${name} short`, card: shortenCard(card), most },
    ]
    const [folder = '', file] = name.split('/')
    if (file === undefined) return visit
    const sheet = readExample(folder, 'sheet')
    const log = readExample(folder, 'log', file)
    const { make, model, type } = sheet.machine
    const differences = listVariantDifferences(sheet)
    const label = nextDue({ sheet, log, today: plan.today }, requestExample('tind-4').due)
    const kit = kitContents(plan)
    const makePaper = (paper: string, facts: Parameters<typeof paperModel>[0], most = 1) => ({
      name: `${paper} of ${name}`,
      card: paperModel(facts, catalogue),
      most,
    })
    return [
      ...visit,
      makePaper('label', label),
      makePaper('upright label', { ...label, upright: true }),
      // The other papers of a second log of a machine look the same.
      ...(file === 'log'
        ? [
            makePaper(
              'cue sheet',
              { kind: 'cues', plan, cues: cueList(plan, catalogue, differences) },
              CUE_PAGES,
            ),
            makePaper('record', { kind: 'record', plan }),
            makePaper('pick list', { kind: 'picks', kits: [kit, kit], today: plan.today }),
            makePaper('chart', lubeChart({ sheet, identity: log.identity })),
            makePaper('differences', { kind: 'differences', machine: { make, model, type }, differences }),
          ]
        : []),
    ]
  })
}
