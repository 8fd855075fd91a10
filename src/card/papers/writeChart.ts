import type { JsonPointer } from '../../base/index.js'
import type { ChartGearcase, ChartService, LubeChart } from '../../service/index.js'
import { type TextContext, writeFactor, writePart } from '../cardContext.js'
import type { CardCell, CardSection, Line } from '../cardParts.js'
import { addLabel, capitalise, joinLines, makeCell, makeListPart, quoteText, writeWords } from '../spans.js'
import { writeFigure, writeSecondaryFigures } from '../writeFigure.js'
import { writeScaledInterval } from '../writeInterval.js'

/** The lubrication chart: one row per gearcase, one row per service, and the sources. */
export function writeChart(context: TextContext, facts: LubeChart): readonly CardSection[] {
  const { papers, card: words } = context.catalogue
  const { columns, sections } = papers
  const gearcases = facts.gearcases.map((gearcase, index) => writeGearcase(context, facts, gearcase, index))
  const services = facts.services.map((service, index) =>
    writeService(context, service, `/services/${index}`),
  )
  const sources = Object.entries(facts.sources).map(([id, { title, edition }]) =>
    joinLines(
      [
        quoteText(title, `/sources/${id}/title`),
        edition === undefined
          ? []
          : [...writeWords(`${words.labels.edition} `), ...quoteText(edition, `/sources/${id}/edition`)],
      ],
      ', ',
    ),
  )
  const { id, revision } = facts.machine.sheet
  const sheet = addLabel(words.labels.sheet, [
    ...quoteText(id, '/machine/sheet/id'),
    ...writeWords(`, ${words.labels.revision} `),
    ...quoteText(revision, '/machine/sheet/revision'),
  ])
  const makeTable = (
    heading: string,
    names: readonly (keyof typeof columns)[],
    rows: readonly (readonly CardCell[])[],
  ) =>
    rows.length === 0
      ? []
      : [
          {
            kind: 'table' as const,
            caption: writeWords(heading),
            columns: names.map((name) => columns[name]),
            rows,
          },
        ]
  return [
    {
      id: 'chart',
      heading: sections.chart,
      parts: makeTable(columns.gearcase, ['gearcase', 'oil', 'quantity', 'level'], gearcases),
    },
    {
      id: 'intervals',
      heading: sections.intervals,
      parts: makeTable(columns.service, ['service', 'every', 'first', 'severe'], services),
    },
    { id: 'sources', heading: words.sections.sources, parts: makeListPart([...sources, sheet]) },
  ]
}

function writeGearcase(
  context: TextContext,
  { figures }: LubeChart,
  { part, count, sharesWith, oils, refill, per, method, opening }: ChartGearcase,
  index: number,
): readonly CardCell[] {
  const { papers } = context.catalogue
  const pointer = `/gearcases/${index}`
  const countText =
    count > 1 ? [...quoteText(String(count), `${pointer}/count`), ...writeWords('\u00a0× ')] : []
  const name = [...countText, ...capitalise(writePart(part, `${pointer}/part`))]
  if (sharesWith !== undefined) {
    const shared = [
      ...writeWords(`${papers.labels.shared} `),
      ...writePart(sharesWith, `${pointer}/sharesWith`),
    ]
    return [makeCell(name), makeCell(shared), makeCell(), makeCell()]
  }
  const writeCell = (figurePointer: JsonPointer | undefined, note: Line = []): CardCell => {
    const figure = figures[Number(figurePointer?.split('/')[2])]
    if (figure === undefined || figurePointer === undefined) return makeCell()
    const lines = writeFigure(context, figure, figurePointer)
    return makeCell(lines.main, ...writeSecondaryFigures(context, lines), ...lines.notes, note)
  }
  const each = count > 1 && per === 'instance' ? writeWords(context.words.labels.each) : []
  const level =
    method === undefined
      ? []
      : quoteText(papers.methods[method], `${pointer}/method`, method === 'not stated' ? 'gap' : undefined)
  const at = opening === undefined ? [] : writePart(opening, `${pointer}/opening`, false)
  return [makeCell(name), writeCell(oils), writeCell(refill, each), makeCell(joinLines([level, at], ' '))]
}

function writeService(
  context: TextContext,
  service: ChartService,
  pointer: JsonPointer,
): readonly CardCell[] {
  const { papers } = context.catalogue
  const { serviceName, parts, repeat, first, severe, events } = service
  const writeInterval = (interval: ChartService['repeat'], from: JsonPointer): Line =>
    writeFigure(context, interval, from).main
  const places = joinLines(
    parts.map((part, index) => writePart(part, `${pointer}/parts/${index}`)),
    ', ',
  )
  const eventNames = events.map((event, index) =>
    quoteText(papers.events[event], `${pointer}/events/${index}`),
  )
  const eventLine = joinLines(eventNames, ', ')
  const severeLines =
    severe === undefined
      ? []
      : [
          ...(severe.scaled === undefined
            ? []
            : [writeScaledInterval(context, severe.scaled, `${pointer}/severe/scaled`)]),
          severe.interval === undefined
            ? [...writeWords('× '), ...writeFactor(context, severe.factor, `${pointer}/severe/factor`)]
            : writeInterval(severe.interval, `${pointer}/severe/interval`),
          quoteText(severe.criteria, `${pointer}/severe/criteria`),
        ]
  return [
    makeCell(capitalise(quoteText(serviceName, `${pointer}/serviceName`)), places),
    makeCell(
      writeInterval(repeat, `${pointer}/repeat`),
      eventLine.length === 0 ? [] : capitalise([...writeWords(`${papers.labels.afterEvent} `), ...eventLine]),
    ),
    makeCell(first === undefined ? [] : writeInterval(first, `${pointer}/first`)),
    makeCell(...severeLines),
  ]
}
