import type { JsonPointer } from '../../base/index.js'
import type { WallPart } from '../../service/index.js'
import { writeQuantity } from '../cardContext.js'
import type { Line, PanelRow } from '../cardParts.js'
import { capitalise, dropEmptyLines, joinLines, quoteOptionalText, quoteText, writeWords } from '../spans.js'
import {
  formatSealSize,
  writeDrive,
  writeFigure,
  writePartNumber,
  writeSecondaryFigures,
} from '../writeFigure.js'
import { findFact, type WallContext, writeFigureAt, writeMark } from './wallContext.js'

/** The row of one part: mark, tool, the manual's figure, setting, seal and place. */
export function buildPanelRow(context: WallContext, part: WallPart, pointer: JsonPointer): PanelRow {
  const { wall } = context
  const { labels } = wall
  const planned = findFact(context, 'tightenings', part.tightening)
  const figure = planned ? writeFigureAt(context, planned.figure) : undefined
  const uses = (part.uses ?? []).filter(({ wheelMark }) => wheelMark !== undefined)
  const name = quoteOptionalText(part.part.part, `${pointer}/part/part`)
  const wheel = uses.map(({ role, wheelMark = 'mark up' }, index) => [
    ...writeWords(`${wall.roles[role]}: `),
    ...quoteText(wall.wheelMarks[wheelMark], `${pointer}/uses/${index}/wheelMark`),
  ])
  const sealLines = part.seals.map((seal) => writeShortSeal(context, seal))
  return {
    mark: writeMark(context, part.part.path),
    name: capitalise(name),
    ...writeTool(context, part, pointer),
    manual: figure?.main ?? [],
    manualNotes: figure === undefined ? [] : joinLines(writeSecondaryFigures(context, figure), ' · '),
    ...writeSetting(context, part),
    notes: dropEmptyLines([
      joinLines(
        [
          part.count === undefined ? [] : quoteText(`${part.count} ×`, `${pointer}/count`),
          part.magnet === undefined ? [] : writeWords(labels.magnet),
          joinLines(sealLines, ' + '),
          joinLines(wheel, ', '),
          writeFigureAt(context, part.place)?.main ?? [],
        ],
        ' · ',
      ),
    ]),
  }
}

/** The kind, size and number of a seal; its material is overleaf with the true size. */
function writeShortSeal(context: WallContext, pointer: JsonPointer): Line {
  const figure = findFact(context, 'figures', pointer)
  if (figure === undefined) return []
  const { resolved } = figure
  if (resolved.kind !== 'stated' || !('replace' in resolved.value))
    return writeFigure(context, figure, pointer).main
  const seal = resolved.value
  const at = `${pointer}/resolved/value`
  const { words } = context
  const size = 'size' in seal ? seal.size : undefined
  return joinLines(
    [
      quoteText(words.seals[seal.kind], `${at}/kind`),
      size === undefined ? [] : quoteText(formatSealSize(size, context.catalogue), `${at}/size`),
      'product' in seal ? quoteText(seal.product, `${at}/product`) : [],
      writePartNumber(seal, at, words.labels.supersedes),
      seal.replace === 'on condition' ? quoteText(words.replace[seal.replace], `${at}/replace`) : [],
    ],
    ', ',
  )
}

/** The size of the tool, and its form below. */
function writeTool(
  context: WallContext,
  { drives }: WallPart,
  pointer: JsonPointer,
): Pick<PanelRow, 'tool' | 'toolForm'> {
  const { words } = context
  if (drives === undefined) return { tool: [], toolForm: [] }
  const [drive] = drives
  if (drive === undefined)
    return { tool: quoteText(words.notStated, `${pointer}/drives`, 'gap'), toolForm: [] }
  if (drives.length > 1)
    return {
      tool: joinLines(
        drives.map((possibleDrive, index) =>
          writeDrive(context, possibleDrive, `${pointer}/drives/${index}`),
        ),
        ` ${words.labels.or} `,
      ),
      toolForm: [],
    }
  const form = quoteText(words.drives[drive.kind], `${pointer}/drives/0/kind`)
  return drive.size === undefined
    ? { tool: form, toolForm: [] }
    : { tool: quoteText(drive.size, `${pointer}/drives/0/size`), toolForm: form }
}

/** The setting and its wrench; empty without a toolbox. */
function writeSetting(context: WallContext, { tightening }: WallPart): Pick<PanelRow, 'setting' | 'wrench'> {
  const { words } = context
  const planned = findFact(context, 'tightenings', tightening)
  if (!planned || tightening === undefined) return { setting: [], wrench: [] }
  if (planned.setting === undefined) {
    const isVerdictShown = planned.verdict === 'does not fit' || planned.verdict === 'by turns'
    return {
      setting: [],
      wrench: isVerdictShown
        ? quoteText(
            words.tighteningVerdicts[planned.verdict],
            `${tightening}/verdict`,
            planned.verdict === 'does not fit' ? 'gap' : undefined,
          )
        : [],
    }
  }
  return {
    setting: writeQuantity(context, planned.setting, `${tightening}/setting`),
    wrench: quoteText(planned.wrench.name, `${tightening}/wrench/name`),
  }
}
