import type { JsonPointer } from '../../base/index.js'
import { measureOf } from '../../quantity/index.js'
import type { WallPanel } from '../../service/index.js'
import { formatOilName } from '../../spec/index.js'
import { writeQuantity } from '../cardContext.js'
import type { CardPanel, Line } from '../cardParts.js'
import {
  addLabel,
  capitalise,
  dropEmptyLines,
  joinLines,
  quoteOptionalText,
  quoteText,
  writeWords,
} from '../spans.js'
import { writeFigure, writeSecondaryFigures, writeValue } from '../writeFigure.js'
import { buildDrawings } from './buildDrawings.js'
import { buildPanelRow } from './buildPanelRow.js'
import { findFact, type WallContext, writeFigureAt, writeMark } from './wallContext.js'

/** The panel of one gearcase. */
export function buildPanel(context: WallContext, panel: WallPanel, place: number): CardPanel {
  const { wall } = context
  const { labels, columns } = wall
  const pointer = `/panels/${place}`
  const instances = joinLines(
    (panel.instances ?? []).map((name, index) => quoteText(name, `${pointer}/instances/${index}`)),
    ` ${labels.and} `,
  )
  const name = joinLines(
    [
      quoteText(`${place + 1}`, pointer),
      capitalise(quoteOptionalText(panel.part.gearcase, `${pointer}/part/gearcase`)),
      instances.length === 0 ? [] : [...writeWords('('), ...instances, ...writeWords(')')],
    ],
    ' ',
  )
  const refill = writeFigureAt(context, panel.refill)
  const oil = writeOil(context, panel, pointer)
  const { parts } = panel
  return {
    kind: 'panel',
    name,
    access: quoteText(
      wall.access[panel.access],
      `${pointer}/access`,
      panel.access === 'not stated' ? 'gap' : undefined,
    ),
    quantity: [
      ...(refill?.main ?? []),
      ...(panel.instances === undefined || refill === undefined ? [] : writeWords(` ${labels.each}`)),
    ],
    oil: oil.main,
    notes: dropEmptyLines([
      joinLines(
        [...(refill === undefined ? [] : writeSecondaryFigures(context, refill)), ...oil.notes],
        ' · ',
      ),
      ...writeFill(context, panel, pointer),
      joinLines(
        [
          addLabel(labels.drainAt, writeFigureAt(context, panel.drainTemperature)?.main ?? []),
          addLabel(labels.breather, writeFigureAt(context, panel.breather)?.main ?? []),
          addLabel(
            labels.stands,
            joinLines(
              panel.supports.map((support, index) => quoteText(support, `${pointer}/supports/${index}`)),
              ', ',
            ),
          ),
        ],
        ' · ',
      ),
      writeOrder(context, panel),
    ]),
    // The same columns in all panels, so that each is always in the same place.
    columns: {
      tool: columns.tool,
      manual: columns.manual,
      setting: hasSettings(context) ? columns.wrench : '',
    },
    rows: parts.map((part, index) => buildPanelRow(context, part, `${pointer}/parts/${index}`)),
    drawings: buildDrawings(context, panel, pointer),
  }
}

/** Whether a plug of the card has a wrench setting, or turns instead. */
const hasSettings = ({ facts }: WallContext): boolean =>
  facts.tightenings.some(
    ({ setting, verdict }) => setting !== undefined || verdict === 'by turns' || verdict === 'does not fit',
  )

/** Loosen F1, D1. Tighten D1, F1. With the plugs of a gearcase that shares the oil. */
function writeOrder(context: WallContext, { loosen, tighten }: WallPanel): Line {
  const { labels } = context.wall
  const writeOne = (label: string, paths: readonly JsonPointer[]) =>
    paths.length < 2
      ? []
      : [
          { text: label, tone: 'strong' as const },
          ...writeWords(' '),
          ...joinLines(
            paths.map((path) => writeMark(context, path)),
            ', ',
          ),
        ]
  return joinLines([writeOne(labels.loosen, loosen), writeOne(labels.tighten, tighten)], '. ')
}

/** The permitted oils: the first one large, its conditions and the others below. */
function writeOil(
  context: WallContext,
  panel: WallPanel,
  pointer: JsonPointer,
): { main: Line; notes: readonly Line[] } {
  const { words, wall } = context
  const { oils, oilOf } = panel
  if (oilOf !== undefined)
    return {
      main: [
        ...writeWords(`${wall.labels.sharedOil} `),
        ...quoteOptionalText(oilOf.gearcase, `${pointer}/oilOf/gearcase`),
      ],
      notes: [],
    }
  const figure = findFact(context, 'figures', oils)
  if (figure === undefined || oils === undefined) return { main: [], notes: [] }
  const { resolved } = figure
  if (resolved.kind !== 'stated' || resolved.value.kind !== 'oils') {
    const { main, notes } = writeFigure(context, figure, oils)
    return { main, notes }
  }
  const lines = resolved.value.choices.map((choice, index) => {
    const pointer = `${oils}/resolved/value/choices/${index}`
    const { limitedSlip, ambient } = choice
    const condition = joinLines(
      [
        ambient === undefined ? [] : writeValue(context, ambient, `${pointer}/ambient`),
        limitedSlip === 'not stated'
          ? []
          : quoteText(words.limitedSlip[limitedSlip], `${pointer}/limitedSlip`),
      ],
      ', ',
    )
    return { name: quoteText(formatOilName(choice), pointer, 'printed'), condition }
  })
  const [first, ...others] = lines
  const planned = findFact(context, 'oil', panel.oil)
  const additive = planned?.additive
  const additiveLine =
    additive === undefined
      ? []
      : joinLines(
          [
            writeWords(words.labels.additive),
            writeQuantity(context, additive.perInstance, `${panel.oil}/additive/perInstance`),
            quoteText(additive.name, `${panel.oil}/additive/name`),
          ],
          ' ',
        )
  return {
    main: first?.name ?? [],
    notes: dropEmptyLines([
      first?.condition ?? [],
      additiveLine,
      ...others.map(({ name, condition }) => [
        ...writeWords(`${words.labels.or} `),
        ...joinLines([name, condition], ', '),
      ]),
    ]),
  }
}

/** The filling of the oil and the reading of the level. */
function writeFill(context: WallContext, panel: WallPanel, pointer: JsonPointer): readonly Line[] {
  const { wall, words } = context
  const { fill } = panel
  if (fill === undefined) return []
  const { labels } = wall
  const at = fill.at === undefined ? undefined : panel.parts[fill.at]
  const fillPointer = `${pointer}/fill`
  const method = joinLines(
    [
      quoteText(
        wall.fill[fill.method],
        `${fillPointer}/method`,
        fill.method === 'not stated' ? 'gap' : 'strong',
      ),
      at === undefined || fill.method === 'by quantity' ? [] : writeMark(context, at.part.path),
    ],
    ' ',
  )
  const level = fill.level.flatMap((item): Line[] => {
    const figure = findFact(context, 'figures', item)
    if (figure === undefined) return []
    const { main } = writeFigure(context, figure, item)
    const unit =
      figure.resolved.kind === 'stated' && 'unit' in figure.resolved.value
        ? measureOf(figure.resolved.value.unit)
        : undefined
    const label =
      unit === 'duration' || unit === 'length' || unit === 'temperature'
        ? words.levels[unit]
        : words.roles.level
    return [addLabel(label, main)]
  })
  const planned = findFact(context, 'oil', panel.oil)
  return dropEmptyLines([
    joinLines(
      [
        method,
        fill.reading === undefined ? [] : quoteText(wall.reading[fill.reading], `${fillPointer}/reading`),
        fill.attitude === 'not stated'
          ? []
          : quoteText(wall.attitude[fill.attitude], `${fillPointer}/attitude`),
        fill.engine === 'not stated' ? [] : quoteText(wall.engine[fill.engine], `${fillPointer}/engine`),
        fill.recheckAfterRun ? writeWords(labels.recheck) : [],
      ],
      ', ',
    ),
    ...level,
    joinLines(
      [
        writeQuantity(context, planned?.stopAt, `${panel.oil}/stopAt`, 'computed'),
        planned?.stopAt === undefined ? [] : writeWords(labels.stopAt),
      ],
      ': ',
    ),
  ])
}
