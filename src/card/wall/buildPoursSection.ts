import { showAmount, showQuantity } from '../../message/index.js'
import type { WallJug, WallPour } from '../../service/index.js'
import { writeQuantity } from '../cardContext.js'
import type { CardPicture, CardSection, Line } from '../cardParts.js'
import {
  addLabel,
  capitalise,
  dropEmptyLines,
  joinLines,
  joinSpans,
  makeListPart,
  quoteOptionalText,
  quoteText,
  writeWords,
} from '../spans.js'
import type { WallContext } from './wallContext.js'

/** For each gearcase, a bar for each temperature and the jug with its mark. */
export function buildPoursSection(context: WallContext): CardSection {
  const { facts, wall } = context
  const parts = facts.pours.flatMap((pour, place) => {
    const jugPlace = facts.jugs.findIndex(({ part }) => part.path === pour.part.path)
    const jug = facts.jugs[jugPlace]
    return [
      buildPour(context, pour, `/pours/${place}`),
      ...(jug === undefined ? [] : [buildJug(context, jug, `/jugs/${jugPlace}`)]),
    ]
  })
  return {
    id: 'pours',
    heading: wall.sections.pours,
    parts: parts.length === 0 ? [] : [...parts, ...makeListPart(listConditions(context))],
  }
}

/** The ends of a bar's parts; when the times do not count; the funnel, oil and jug that they are for, each once. */
function listConditions({ facts, wall }: WallContext): readonly Line[] {
  const conditions = new Map<string, Line>()
  const add = (text: string | undefined, pointer: string) => {
    if (text !== undefined && !conditions.has(text)) conditions.set(text, quoteText(text, pointer))
  }
  for (const [place, { filler, at }] of facts.pours.entries()) {
    add(filler, `/pours/${place}/filler`)
    for (const [index, { oil }] of at.entries()) add(oil, `/pours/${place}/at/${index}/oil`)
  }
  for (const [place, { name }] of facts.jugs.entries()) add(name, `/jugs/${place}/name`)
  const hasTimes = facts.pours.some(({ at }) => at.some(({ ends }) => ends !== undefined))
  return dropEmptyLines([
    hasTimes ? addLabel(wall.labels.clock, writeWords(Object.values(wall.pour).join(' · '))) : [],
    hasTimes ? writeWords(wall.labels.otherOil) : [],
    hasTimes ? addLabel(wall.labels.timesFor, joinLines([...conditions.values()], ', ')) : [],
  ])
}

function buildPour(context: WallContext, { part, at }: WallPour, pointer: string): CardPicture {
  const { wall, catalogue } = context
  const writeTemperature = (celsius: number, place: number): Line =>
    quoteText(
      showQuantity({ value: celsius, unit: 'degC' }, catalogue.marks) ?? String(celsius),
      `${pointer}/at/${place}/celsius`,
    )
  const names = Object.values(wall.pour)
  const panel = context.facts.panels.findIndex((candidate) => candidate.part.path === part.path)
  const name = joinLines(
    [
      quoteText(`${panel + 1}`, `/panels/${panel}`),
      capitalise(quoteOptionalText(part.gearcase, `${pointer}/part/gearcase`)),
    ],
    ' ',
  )
  return {
    kind: 'picture',
    name,
    drawing: {
      kind: 'pour',
      start: wall.clock(0),
      // If no time is known, one line is enough.
      bars: at.every(({ ends }) => ends === undefined)
        ? [{ label: '', end: wall.labels.untilDry }]
        : at.map(({ celsius, ends }, place) => ({
            label: joinSpans(writeTemperature(celsius, place)),
            ...(ends && { ends: ends.map((seconds) => ({ seconds, clock: wall.clock(seconds) })) }),
            end: ends === undefined ? wall.labels.untilDry : wall.clock(ends[2]),
          })),
    },
    text: at.map(({ celsius, ends }, place) =>
      addLabelLine(
        writeTemperature(celsius, place),
        ends === undefined
          ? writeWords(wall.labels.untilDry)
          : joinLines(
              ends.map((seconds, index) => [
                ...writeWords(`${names[index]} `),
                ...quoteText(wall.clock(seconds), `${pointer}/at/${place}/ends/${index}`, 'computed'),
              ]),
              ', ',
            ),
      ),
    ),
  }
}

const addLabelLine = (label: Line, line: Line): Line => [...label, ...writeWords(': '), ...line]

function buildJug(
  context: WallContext,
  { name, size, graduation, marks }: WallJug,
  pointer: string,
): CardPicture {
  const { wall, catalogue } = context
  const lines = marks.map((mark, place) =>
    writeQuantity(context, mark, `${pointer}/marks/${place}`, 'computed'),
  )
  return {
    kind: 'picture',
    name: capitalise(quoteText(name, `${pointer}/name`)),
    drawing: {
      kind: 'jug',
      size: size.value,
      graduation: graduation.value,
      // Equal pours share one mark, with their number.
      marks: [...new Set(marks.map(({ value }) => value))].map((value) => {
        const count = marks.filter((mark) => mark.value === value).length
        const label = showAmount({ value, unit: size.unit }, catalogue.marks) ?? String(value)
        return { value, label: count === 1 ? label : `${count} × ${label}` }
      }),
    },
    text: [addLabel(wall.labels.jug, joinLines(lines, `, ${wall.labels.pours} `))],
  }
}
