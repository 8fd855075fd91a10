import type { JsonPointer } from '../../base/index.js'
import type { NamedService, NextDue } from '../../service/index.js'
import { type TextContext, writeQuantity } from '../cardContext.js'
import type { CardSection, FigurePanelRow, Line } from '../cardParts.js'
import { capitalise, joinLines, quoteText, writeWords } from '../spans.js'

/** The next-due label: the earliest meter readings and date, and the services that are due there. */
export function writeLabel(context: TextContext, facts: NextDue): readonly CardSection[] {
  const { catalogue, words } = context
  const { papers } = catalogue
  const { hours, distance, date, dueNow, notKnown } = facts
  const points = [
    {
      point: hours,
      label: words.labels.hours,
      value: writeQuantity(context, hours?.at, '/hours/at'),
      from: '/hours',
    },
    {
      point: distance,
      label: words.labels.distance,
      value: writeQuantity(context, distance?.at, '/distance/at'),
      from: '/distance',
    },
    {
      point: date,
      label: words.labels.today,
      value: date === undefined ? [] : quoteText(date.at, '/date/at'),
      from: '/date',
    },
  ]
  const rows = points.flatMap(({ point, label, value }): FigurePanelRow[] =>
    point === undefined ? [] : [{ label: writeWords(label), value, size: 'large', notes: [] }],
  )
  const due = writeServices([{ services: dueNow, from: '/dueNow' }])
  const next = writeServices(
    points.map(({ point, from }) => ({ services: point?.services ?? [], from: `${from}/services` })),
  )
  const dueNames = new Set(dueNow.map(({ serviceName }) => serviceName))
  const isNew = points.some(({ point }) =>
    point?.services.some(({ serviceName }) => !dueNames.has(serviceName)),
  )
  const unknown = writeServices([{ services: notKnown, from: '/notKnown' }])
  const writeRow = (label: string, value: Line): FigurePanelRow[] =>
    value.length === 0 ? [] : [{ label: writeWords(label), value, size: 'small', notes: [] }]
  const first = rows.length < 2 ? [] : writeWords(papers.labels.whicheverFirst)
  const allRows = [
    ...writeRow(papers.labels.dueNow, due),
    ...rows,
    ...(isNew ? writeRow(papers.columns.service, next) : []),
    ...writeRow(papers.labels.notKnown, unknown),
  ]
  if (allRows.length === 0) return []
  return [
    {
      id: 'next',
      heading: papers.titles.label,
      parts: [
        { kind: 'plate', name: joinLines([writeWords(papers.titles.label), first], ', '), rows: allRows },
      ],
    },
  ]
}

/** The names of services, each once. */
function writeServices(
  groups: readonly { readonly services: readonly NamedService[]; readonly from: JsonPointer }[],
): Line {
  const names = new Map(
    groups.flatMap(({ services, from }) =>
      services.map(
        ({ serviceName }, index) =>
          [serviceName, quoteText(serviceName, `${from}/${index}/serviceName`)] as const,
      ),
    ),
  )
  return capitalise(joinLines([...names.values()], ', '))
}
