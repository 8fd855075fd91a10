import type { PartName } from '../service/index.js'
import type { CardContext } from './cardContext.js'
import type { Line } from './cardParts.js'
import { joinLines, writeWords } from './spans.js'
import { writeDrive, writeFigure } from './writeFigure.js'

/** The path of the opening, cover, filter or shield to which a path belongs. */
function findOwner(path: string): string {
  return /^\/(?:gearcases\/[^/]+\/(?:openings|covers|filters)\/[^/]+|shields\/[^/]+)/.exec(path)?.[0] ?? path
}

/** The position and the drive of a part, shown with its torque. */
export function writePartNote(context: CardContext, part: PartName): Line {
  const { plan } = context
  const owner = findOwner(part.path)
  const notes: Line[] = []
  for (const [index, figure] of plan.figures.entries())
    if (figure.role === 'place' && findOwner(figure.path) === owner) {
      const { main } = writeFigure(context, figure, `/figures/${index}`)
      notes.push(
        figure.resolved.kind === 'stated' ? main : [...writeWords(`${context.words.roles.place} `), ...main],
      )
    }
  for (const [index, tool] of plan.tools.entries())
    if (tool.kind === 'socket' && tool.for.some(({ path }) => findOwner(path) === owner))
      notes.push(writeDrive(context, tool.drive, `/tools/${index}/drive`))
  return joinLines(notes, ' · ')
}
