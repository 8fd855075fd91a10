import type { CardPicture } from '../cardParts.js'
import { joinSpans } from '../spans.js'
import { createTag, type Html } from './createElement.js'
import { drawBolts } from './drawBolts.js'
import { drawCase } from './drawCase.js'
import { drawJug } from './drawJug.js'
import { drawPour } from './drawPour.js'
import { drawScale } from './drawScale.js'
import { drawTrueSizes } from './drawTrueSizes.js'
import { drawWheel } from './drawWheel.js'
import { renderLine, renderLines } from './renderLine.js'

/** A drawing with its name; its text alternative has all values. Parts that cannot be drawn are written. */
export function renderDrawing({ name, drawing, text }: CardPicture): Html {
  const meaning = [joinSpans(name), ...text.map(joinSpans)].join('. ')
  const drawn = draw(drawing, meaning)
  return createTag(
    `figure.${drawing.kind.replace(' ', '-')}`,
    createTag('figcaption', renderLine(name)),
    drawn ?? renderLines(text, 'div.note'),
  )
}

function draw(drawing: CardPicture['drawing'], meaning: string): Html | undefined {
  switch (drawing.kind) {
    case 'case':
      return drawCase(drawing, meaning)
    case 'scale':
      return drawScale(drawing, meaning)
    case 'wheel':
      return drawWheel(drawing, meaning)
    case 'bolts':
      return drawBolts(drawing, meaning)
    case 'pour':
      return drawPour(drawing, meaning)
    case 'jug':
      return drawJug(drawing, meaning)
    case 'true sizes':
      return drawTrueSizes(drawing, meaning)
  }
}
