import type { JsonPointer } from '../../base/index.js'
import type { OwnerSlip, SlipWork } from '../../service/index.js'
import { type TextContext, writePart } from '../cardContext.js'
import type { CardList, Line } from '../cardParts.js'
import { capitalise, joinLines, quoteText } from '../spans.js'

/** The slip and its language. */
export interface SlipContext extends TextContext {
  readonly slip: OwnerSlip
}

export type ListItem = CardList['items'][number]

/** `Front differential: gear oil change` */
export function writeWork({ serviceName, part }: SlipWork, pointer: JsonPointer): Line {
  return joinLines(
    [capitalise(writePart(part, `${pointer}/part`)), quoteText(serviceName, `${pointer}/serviceName`)],
    ': ',
  )
}
