import type { JsonPointer } from '../../base/index.js'
import type { WallWords } from '../../message/index.js'
import type { WallFacts, WallPart } from '../../service/index.js'
import type { TextContext } from '../cardContext.js'
import type { Line } from '../cardParts.js'
import { quoteText } from '../spans.js'
import { type FigureLines, writeFigure } from '../writeFigure.js'

/** The facts of a wall card and its language. */
export interface WallContext extends TextContext {
  readonly facts: WallFacts
  readonly wall: WallWords
  /** The letter and number of each part, such as `F1`, by its path. */
  readonly marks: ReadonlyMap<JsonPointer, { readonly text: string; readonly pointer: JsonPointer }>
}

/** Marks that are unique on the card: the letter of the part and the number of its panel. */
export function listMarks({ panels }: WallFacts, wall: WallWords): WallContext['marks'] {
  const marks = new Map<JsonPointer, { text: string; pointer: JsonPointer }>()
  const used = new Set<string>()
  for (const [place, { parts }] of panels.entries())
    for (const [index, { role, part }] of parts.entries()) {
      if (marks.has(part.path)) continue
      const text = makeMark(wall, role, place + 1, used)
      marks.set(part.path, { text, pointer: `/panels/${place}/parts/${index}/part` })
    }
  return marks
}

function makeMark(wall: WallWords, role: WallPart['role'], number: number, used: Set<string>): string {
  const start = `${wall.letters[role]}${number}`
  const endings = ['', ...'bcdefghijklmnopqrstuvwxyz']
  const mark = endings.map((ending) => `${start}${ending}`).find((candidate) => !used.has(candidate)) ?? start
  used.add(mark)
  return mark
}

/** The mark of the part at a path, or of the part that a seal belongs to; empty if the card does not show it. */
export function writeMark({ marks }: WallContext, path: JsonPointer): Line {
  const mark = marks.get(path) ?? marks.get(path.replace(/\/seals?(?:\/\d+)?$/, ''))
  return mark === undefined ? [] : quoteText(mark.text, mark.pointer)
}

/** The entry of a list of the facts at a pointer such as `/figures/3`. */
export function findFact<Name extends 'figures' | 'tightenings' | 'oil'>(
  { facts }: WallContext,
  listName: Name,
  pointer: JsonPointer | undefined,
): WallFacts[Name][number] | undefined {
  return pointer === undefined ? undefined : facts[listName][Number(pointer.slice(listName.length + 2))]
}

/** The lines of the figure at a pointer; undefined without one. */
export function writeFigureAt(
  context: WallContext,
  pointer: JsonPointer | undefined,
): FigureLines | undefined {
  const figure = findFact(context, 'figures', pointer)
  return figure && pointer !== undefined ? writeFigure(context, figure, pointer) : undefined
}
