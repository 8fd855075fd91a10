import type { VisitPlan } from '../service/index.js'
import { type CardContext, writeCautions } from './cardContext.js'
import type { CardSection, CardStep, Line } from './cardParts.js'
import { capitalise, joinLines, joinSpans, quoteOptionalText, quoteText, writeWords } from './spans.js'
import { type WrittenLine, writeLine } from './writeLine.js'

/** The lines in order, with a heading for each group of lines on one gearcase. */
export function buildStepsSection(context: CardContext): CardSection {
  const { plan, words } = context
  const groups: { readonly gearcase: string; readonly heading: Line; readonly steps: CardStep[] }[] = []
  for (const [index, line] of plan.lines.entries()) {
    const writtenLine = writeLine(context, line, false)
    const gearcase = findGearcase(writtenLine)
    if (groups.at(-1)?.gearcase !== gearcase)
      groups.push({ gearcase, heading: writeHeading(context, writtenLine, gearcase, index), steps: [] })
    groups.at(-1)?.steps.push(buildStep(context, line, writtenLine, index))
  }
  const printedGroups = groups.map(({ heading, steps }) => ({ heading, steps }))
  const parts = groups.length === 0 ? [] : [{ kind: 'steps' as const, groups: printedGroups }]
  return { id: 'steps', heading: words.sections.steps, parts }
}

/** The gearcase of the steps; empty if they are for the whole machine or several gearcases. */
function findGearcase({ steps }: WrittenLine): string {
  const [gearcase = '', ...others] = new Set(steps.map(({ step }) => step.part?.gearcase ?? ''))
  return others.length > 0 ? '' : gearcase
}

function writeHeading({ words }: CardContext, { steps }: WrittenLine, gearcase: string, index: number): Line {
  if (gearcase !== '') return capitalise(quoteText(gearcase, `/steps/${steps[0]?.index}/part/gearcase`))
  return writeWords(index === 0 ? words.labels.before : words.labels.machine)
}

function buildStep(
  context: CardContext,
  { steps: ids }: VisitPlan['lines'][number],
  written: WrittenLine,
  index: number,
): CardStep {
  const { steps, writeText: write } = written
  const note = joinLines(
    steps.map(({ step, index: stepIndex }) => quoteOptionalText(step.note, `/steps/${stepIndex}/note`)),
    ' ',
  )
  return {
    number: index + 1,
    steps: ids,
    cautions: steps.flatMap(({ step, index: stepIndex }) =>
      writeCautions(context, step.cautions, `/steps/${stepIndex}/cautions`),
    ),
    full: write('full'),
    short: write('short'),
    figures: listFigures(context, written),
    ...(note.length > 0 && { note }),
  }
}

/** The actions whose waiting time is in the margin. */
const WAITS: ReadonlySet<string> = new Set(['wait for the hose', 'wait for the cure', 'let settle'])
const POURS: ReadonlySet<string> = new Set(['measure the oil', 'pour the oil', 'add the additive'])

/** The figures of a line for its margin, each once: quantity, torque and setting, maximum, waiting time. */
function listFigures({ words: { labels } }: CardContext, { steps, pieces }: WrittenLine): Line[] {
  const lines = new Map<string, Line>()
  for (const [index, piece] of pieces.entries()) {
    const action = steps[index]?.step.do ?? ''
    const turnsWord = action === 'tighten filter' ? labels.turnsFromContact : labels.turnsPast
    for (const line of [
      POURS.has(action) ? piece.volume : [],
      piece.torque,
      addBefore(labels.set, piece.setting),
      joinLines([piece.turns ?? [], piece.turns === undefined ? [] : writeWords(turnsWord)], ' '),
      piece.temperature,
      action === 'top up' ? addBefore(labels.maximum, piece.stopAt) : [],
      WAITS.has(action) ? addBefore(action === 'let settle' ? '' : labels.about, piece.wait) : [],
    ])
      if (line !== undefined && line.length > 0) lines.set(joinSpans(line), line)
  }
  return [...lines.values()]
}

/** A word in front of a figure; empty without the figure. */
const addBefore = (word: string, line: Line = []): Line =>
  line.length === 0 ? [] : joinLines([writeWords(word), line], ' ')
