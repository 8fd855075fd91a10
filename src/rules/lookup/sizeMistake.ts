import type { Seal } from '../../spec/index.js'

/** The size of a seal that is printed as nothing, such as a washer `0` mm thick. */
export function sizeMistake(seal: Seal): string | undefined {
  if (!('size' in seal) || seal.size === undefined) return undefined
  return Object.entries(seal.size).find(([, figure]) => Number(figure) === 0)?.[0]
}
