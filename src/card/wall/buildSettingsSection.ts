import { showAmount } from '../../message/index.js'
import { unitSymbol } from '../../quantity/index.js'
import { writeQuantity } from '../cardContext.js'
import type { CardPicture, CardSection, Line } from '../cardParts.js'
import { capitalise, joinLines, joinSpans, makeListPart, quoteText, writeWords } from '../spans.js'
import { findFact, type WallContext, writeMark } from './wallContext.js'

/** The scale of each wrench, once, with all its settings. */
export function buildSettingsSection(context: WallContext): CardSection {
  const { facts, wall, catalogue } = context
  const { marks } = catalogue
  const pictures = facts.wrenches.flatMap(({ name, scales }, place) =>
    scales.map(({ scale, settings }, index): CardPicture => {
      const pointer = `/wrenches/${place}/scales/${index}`
      const show = (value: number) => showAmount({ value, unit: scale.unit }, marks) ?? String(value)
      const lines = settings.map(({ setting, tightening }, at): Line => {
        const path = findFact(context, 'tightenings', tightening)?.part.path ?? ''
        return joinLines(
          [writeMark(context, path), writeQuantity(context, setting, `${pointer}/settings/${at}/setting`)],
          ' ',
        )
      })
      const ends = joinLines(
        [
          quoteText(show(scale.lowest), `${pointer}/scale/lowest`),
          quoteText(show(scale.highest), `${pointer}/scale/highest`),
        ],
        '–',
      )
      return {
        kind: 'picture',
        name: joinLines(
          [
            capitalise(quoteText(name, `/wrenches/${place}/name`)),
            [...ends, ...writeWords(` ${unitSymbol(scale.unit)}`)],
          ],
          ', ',
        ),
        drawing: {
          kind: 'scale',
          scale: { lowest: scale.lowest, highest: scale.highest, graduation: scale.graduation },
          settings: settings.map(({ setting, tightening }) => ({
            label: joinSpans(
              joinLines(
                [
                  writeMark(context, findFact(context, 'tightenings', tightening)?.part.path ?? ''),
                  writeWords(show(setting.value)),
                ],
                ' ',
              ),
            ),
            value: setting.value,
          })),
        },
        text: lines,
      }
    }),
  )
  const notes = [
    writeOrder(context),
    writeWords(wall.labels.wrenchHabits),
    writeWords(wall.labels.otherWrench),
  ]
  return {
    id: 'settings',
    heading: wall.sections.settings,
    parts: pictures.length === 0 ? [] : [...pictures, ...makeListPart(notes)],
  }
}

/** `D1 31 N·m, F1 40 N·m`: the settings in the order of use. */
function writeOrder(context: WallContext): Line {
  return joinLines(
    context.facts.tightenings.flatMap(({ part, setting }, place) =>
      setting === undefined
        ? []
        : [
            joinLines(
              [
                writeMark(context, part.path),
                writeQuantity(context, setting, `/tightenings/${place}/setting`),
              ],
              ' ',
            ),
          ],
    ),
    ' → ',
  )
}
