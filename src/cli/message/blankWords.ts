import type { Text } from './text.js'

/** Comments of documents to fill in. Each line stays below 120 characters; what is to be copied stays English. */
export interface BlankWords {
  readonly fillIn: string
  readonly log: string
  readonly firstDay: string
  readonly plate: string
  readonly plateOrVariant: Text<'variants'>
  readonly readings: string
  readonly services: string
  readonly sheet: string
  readonly leaveNotStated: string
  readonly brackets: string
  readonly levelHole: Text<'fill'>
  readonly severalVariants: string
  readonly or: string
  readonly differing: string
  readonly stock: string
  readonly containers: string
  readonly containerData: string
  readonly seals: string
  readonly toolbox: string
  readonly wrenches: string
  readonly wrenchAccuracy: string
  readonly sockets: string
  readonly vessels: string
  readonly pans: string
  readonly fillers: string
  readonly stands: string
  readonly ramps: string
}
