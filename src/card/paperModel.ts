import { requireOneOf, requireShape, requireTree, type Shape } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type { Catalogue } from '../message/index.js'
import type {
  Kit,
  LubeChart,
  NextDue,
  PlannedMachine,
  VariantDifference,
  VisitPlan,
} from '../service/index.js'
import { buildRecordSection } from './buildRecordSection.js'
import type { TextContext } from './cardContext.js'
import type { CardModel } from './cardParts.js'
import type { Cue } from './cueParts.js'
import { buildCueSections } from './cues/buildCueSections.js'
import { makePaper, writeMachine } from './papers/makePaper.js'
import { writeChart } from './papers/writeChart.js'
import { writeDifferences } from './papers/writeDifferences.js'
import { writeLabel } from './papers/writeLabel.js'
import { writePicks } from './papers/writePicks.js'
import { requirePlan } from './requirePlan.js'
import { requireWords } from './requireWords.js'
import { joinLines, quoteText } from './spans.js'
import { writeAuthority } from './writeAuthority.js'

const KINDS = ['cues', 'record', 'next-due', 'lube-chart', 'picks', 'differences'] as const

const NAMED_SHAPE = [{ part: {} }] as const
const POINT_SHAPE = { services: NAMED_SHAPE } as const
const CUES_SHAPE: Shape = [
  {
    title: [{}],
    shots: [{ text: 'string' }],
    say: [{ text: 'string' }],
    hold: [{ line: [{}] }],
    screen: [[{}]],
  },
]
const LABEL_SHAPE: Shape = {
  machine: { variant: {} },
  dueNow: NAMED_SHAPE,
  'hours?': { at: {}, services: NAMED_SHAPE },
  'distance?': { at: {}, services: NAMED_SHAPE },
  'date?': POINT_SHAPE,
  notKnown: NAMED_SHAPE,
}
const CHART_SHAPE: Shape = {
  machine: { sheet: {}, variant: {} },
  gearcases: [{ part: {} }],
  services: [{ parts: [{}], repeat: { path: 'string', resolved: {} }, events: [] }],
  figures: [{ path: 'string', resolved: {} }],
  sources: { '*': {} },
}
const PICKS_SHAPE: Shape = {
  kits: [{ machine: {}, oil: [{ volume: {} }], seals: [{ seal: {} }], tools: [{}] }],
}
const DIFFERENCES_SHAPE: Shape = {
  machine: {},
  differences: [{ part: {}, path: 'string', variants: [{ name: 'string', resolved: {} }] }],
}

/** The facts of a paper, by its kind. */
export type PaperFacts =
  /** The script of {@link cueList}, for the presenter and the camera. */
  | { readonly kind: 'cues'; readonly plan: VisitPlan; readonly cues: readonly Cue[] }
  /** Only the blank service record of a visit. */
  | { readonly kind: 'record'; readonly plan: VisitPlan }
  /** The next-due label, 62 × 29 mm; upright 29 × 62 mm. From `nextDue`. */
  | (NextDue & { readonly upright?: boolean })
  /** The lubrication chart of a machine. From `lubeChart`. */
  | LubeChart
  /** The pick list for a day's machines, from their `kitContents`. Pointers to sums begin with `/sums`. */
  | { readonly kind: 'picks'; readonly kits: readonly Kit[]; readonly today: DateText }
  /** The figures in which variants in one workshop differ. From `listVariantDifferences`. */
  | {
      readonly kind: 'differences'
      readonly machine: Pick<PlannedMachine, 'make' | 'model' | 'type' | 'header'>
      readonly differences: readonly VariantDifference[]
    }

/**
 * Builds a cue sheet, a blank record, a next-due label, a lubrication chart, a pick list or a page of differences from
 * its facts. Write it with {@link renderHtml}, {@link renderMarkdown} or {@link renderText}. Its lines have pointers
 * into the facts.
 *
 * @param facts - the facts of one paper, by `kind`
 * @param catalogue - the language of the paper; import it from `/v1/message/en`
 * @returns plain JSON without a time stamp: the same facts give the same paper
 * @throws TypeError or RangeError if `facts` are not those of a paper, TypeError if `catalogue` is not a language
 *
 * @example
 * ```ts
 * import { cueList, paperModel, renderText } from 'drivetrain-service/v1/card'
 * import { en } from 'drivetrain-service/v1/message/en'
 * import { planVisit } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'Station 1', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * const planned = planVisit({ sheet, log, today: '2031-10-06' }, { services: 'due', due, iso6789: '2017' })
 * if (!planned.ok) throw new Error('no plan')
 * const plan = planned.value
 * // What is the first line of the cue sheet?
 * renderText(paperModel({ kind: 'cues', plan, cues: cueList(plan, en) }, en)).split('\n')[0] // => 'Cue sheet: Station 1'
 * ```
 */
export function paperModel(facts: PaperFacts, catalogue: Catalogue): CardModel {
  requireOneOf('facts.kind', facts?.kind, KINDS)
  requireWords(catalogue)
  const { cues: cueWords, papers } = catalogue
  const { titles } = papers
  const context: TextContext = { catalogue, words: catalogue.card, form: 'written' }
  switch (facts.kind) {
    case 'cues': {
      const { plan, cues } = facts
      requirePlan('facts.plan', plan)
      requireShape('facts.cues', cues, CUES_SHAPE, 'pass the result of cueList')
      return makePaper(catalogue, {
        extent: 'cues',
        title: cueWords.title,
        ...writeMachine(catalogue, plan.machine),
        authority: writeAuthority(cueWords.authority, catalogue),
        sections: buildCueSections({ ...context, plan }, cues),
      })
    }
    case 'record': {
      const { plan } = facts
      requirePlan('facts.plan', plan)
      return makePaper(catalogue, {
        extent: 'record',
        title: titles.record,
        ...writeMachine(catalogue, plan.machine),
        sections: [buildRecordSection({ ...context, plan })],
      })
    }
    case 'next-due':
      requireTree('facts', facts)
      requireShape('facts', facts, LABEL_SHAPE, 'pass the result of nextDue')
      return makePaper(catalogue, {
        extent: facts.upright ? 'label-upright' : 'label',
        title: titles.label,
        ...writeMachine(catalogue, facts.machine),
        authority: [],
        sections: writeLabel(context, facts),
      })
    case 'lube-chart':
      requireTree('facts', facts)
      requireShape('facts', facts, CHART_SHAPE, 'pass the result of lubeChart')
      return makePaper(catalogue, {
        extent: 'chart',
        title: titles.chart,
        ...writeMachine(catalogue, facts.machine),
        sections: writeChart(context, facts),
      })
    case 'picks': {
      requireTree('facts', facts)
      requireShape('facts', facts, PICKS_SHAPE, 'pass the results of kitContents')
      const machines = facts.kits.map(({ machine }, index) =>
        quoteText(machine.name, `/kits/${index}/machine/name`),
      )
      return makePaper(catalogue, {
        extent: 'picks',
        title: titles.picks,
        machine: quoteText(facts.today, '/today'),
        about: joinLines(machines, ' · '),
        authority: [],
        sections: writePicks(context, facts.kits),
      })
    }
    case 'differences':
      requireTree('facts', facts)
      requireShape('facts', facts, DIFFERENCES_SHAPE, 'pass the result of listVariantDifferences')
      return makePaper(catalogue, {
        extent: 'differences',
        title: titles.differences,
        ...writeMachine(catalogue, facts.machine),
        sections: writeDifferences(context, facts.differences),
      })
  }
}
