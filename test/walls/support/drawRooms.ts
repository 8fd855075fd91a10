import { imports, LEVELS, moduleOf, target } from './imports.js'

const BOX = { width: 112, height: 28 }
const STEP = { x: 136, y: 62 }
const MARGIN = 16
/** Rooms beside the middle, in steps, so that hardly any line runs behind a room. */
const ASIDE: Readonly<Record<string, number>> = {
  v1: -1,
  cli: 1,
  exchange: 1,
  procedure: -1,
  schema: 1.5,
  thread: 1,
}

interface Room {
  readonly name: string
  readonly x: number
  readonly y: number
}

/**
 * Draws `docs/rooms.svg`: the modules of `src/` by level, and a line for each import between them that does not already
 * follow from others. `v1` has no lines: it is the public entry of every module.
 */
export function drawRooms(): string {
  const levels = LEVELS.map((level) => level.filter((module) => !module.endsWith('.ts')))
    .filter((level) => level.length > 0)
    .reverse()
  const width = Math.max(...levels.map((level) => level.length)) * STEP.x - (STEP.x - BOX.width) + 2 * MARGIN
  const height = levels.length * STEP.y - (STEP.y - BOX.height) + 2 * MARGIN
  const rooms = levels.flatMap((level, row) =>
    level.map(
      (name, column): Room => ({
        name,
        x:
          (width - level.length * STEP.x + (STEP.x - BOX.width)) / 2 + (column + (ASIDE[name] ?? 0)) * STEP.x,
        y: MARGIN + row * STEP.y,
      }),
    ),
  )
  const lines = listRoomImports().map(([from, to]) => {
    const [upper, lower] = [from, to].map((name) => rooms.find((room) => room.name === name))
    if (upper === undefined || lower === undefined) throw new Error(`${from} -> ${to}: no such room`)
    const [x1, y1, x2, y2] = [upper.x + BOX.width / 2, upper.y + BOX.height, lower.x + BOX.width / 2, lower.y]
    return `<path d="M${x1} ${y1}C${x1} ${y1 + 20} ${x2} ${y2 - 20} ${x2} ${y2}"/>`
  })
  const boxes = rooms.map(
    ({ name, x, y }) =>
      `<rect x="${x}" y="${y}" width="${BOX.width}" height="${BOX.height}" rx="4"/>` +
      `<text x="${x + BOX.width / 2}" y="${y + 19}">${name}</text>`,
  )
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" font-family="system-ui, sans-serif" font-size="14" text-anchor="middle" role="img" aria-label="The modules of src/ by level; a line leads from a module to one that it imports">
<rect width="${width}" height="${height}" fill="#fff"/>
<g fill="none" stroke="#8a7fa0">
${lines.join('\n')}
</g>
<g fill="#efe9f7" stroke="#5b3a8c">
${boxes.join('\n').replaceAll('<text ', '<text stroke="none" fill="#1d1b20" ')}
</g>
</svg>
`
}

/** The imports between modules, without those that other imports imply. */
export function listRoomImports(): readonly (readonly [string, string])[] {
  const next = new Map<string, Set<string>>()
  for (const link of imports) {
    const to = target(link)
    const [from, room] = [moduleOf(link.from), to === undefined ? undefined : moduleOf(to)]
    if (room === undefined || room === from || from === 'v1' || from.endsWith('.ts')) continue
    next.set(from, (next.get(from) ?? new Set()).add(room))
  }
  const reaches = (from: string, to: string): boolean =>
    [...(next.get(from) ?? [])].some((room) => room === to || reaches(room, to))
  return [...next].flatMap(([from, rooms]) =>
    [...rooms]
      .filter((to) => ![...rooms].some((other) => other !== to && reaches(other, to)))
      .map((to) => [from, to] as const),
  )
}
