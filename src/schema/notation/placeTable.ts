import type { LeafKind } from '../../spec/index.js'
import type { Notation } from './notation.js'

export type Holder = Record<string, unknown>

/** Where a key was left out. */
export interface LeftOutAt {
  /** The key or list place of the object in its own holder. */
  readonly id: string
  readonly holder: Holder
  /** The whole document. */
  readonly root: Holder
  /** The gearcase of a sheet that the object is in. */
  readonly gearcase: Holder | undefined
}

/** What a key that was left out becomes; undefined where it must be written. */
export type LeftOut = (at: LeftOutAt) => unknown

/** What a writer may do at a place of a document. */
export interface PlaceRow<Name extends string = string> {
  /** The notation of a text there. */
  readonly text?: Name
  /** A text that is the full form already. */
  readonly word?: string
  /** A text there is the value of this key, or with `[]` the one entry of the list. */
  readonly under?: string
  /** The keys that may be left out. */
  readonly leftOut?: { readonly [key: string]: LeftOut }
  /** More of them, which depend on what the openings are for. */
  readonly leftOutLast?: { readonly [key: string]: LeftOut }
  /** The object may have a `source` for the texts in it. */
  readonly isSection?: true
  /** An override may replace it. */
  readonly isLeaf?: boolean
  /** It holds leaves of other places. */
  readonly isOverride?: true
  /** True and false as these words. */
  readonly isYesOrNo?: true
  /** A list of parts is also a map from their pointers to texts in this notation. */
  readonly byPointer?: Name
  /** A list of ids is a record of things with no more than a name. */
  readonly isListOfIds?: true
}

/** A place of the table and the places below it. */
export interface PlaceNode {
  readonly row: Omit<PlaceRow, 'text' | 'byPointer'>
  readonly text?: Notation
  readonly byPointer?: Notation
  readonly below: { readonly [key: string]: PlaceNode }
}

/** Where a writer of one kind of document may be short, and the notations there. */
export interface PlaceTable<Name extends string = string> {
  readonly places: PlaceNode
  readonly notations: { readonly [Each in Name]: Notation }
}

/** The rows as one tree, in which `*` is any key. */
export function makeTable<Name extends string>(
  rows: { readonly [place: string]: PlaceRow<Name> },
  notations: PlaceTable<Name>['notations'],
): PlaceTable<Name> {
  const places: PlaceNode = { row: {}, below: {} }
  for (const [place, { text, byPointer, ...row }] of Object.entries(rows)) {
    let node = places
    for (const key of place.split('/').slice(1)) {
      const below = node.below as Record<string, PlaceNode>
      below[key] ??= { row: {}, below: {} }
      node = below[key]
    }
    Object.assign(node, {
      row,
      text: text && notations[text],
      byPointer: byPointer && notations[byPointer],
    })
  }
  return { places, notations }
}

/** The node of a key: its own, or the one of any key. Keys of foreign data may be names of built-ins. */
export const nodeBelow = ({ below }: PlaceNode, key: string): PlaceNode | undefined =>
  Object.hasOwn(below, key) ? below[key] : below['*']

/** The notation of a leaf by its place, and its kind; undefined where the document has no leaf. */
export function findLeafNotation(
  { places }: PlaceTable,
  tokens: readonly string[],
): { readonly notation: Notation; readonly kind: LeafKind } | undefined {
  let node: PlaceNode | undefined = places
  for (const token of tokens) node = node && nodeBelow(node, token)
  const notation = node?.row.isLeaf && node.text
  if (!notation) return undefined
  const { name } = notation
  const kind = name === 'window' ? 'interval' : KINDS.includes(name) ? name : 'value'
  return { notation, kind: kind as LeafKind }
}
const KINDS: readonly string[] = ['oils', 'place', 'tightening', 'drive', 'seal', 'interval']

export function asHolder(value: unknown): Holder | undefined {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Holder) : undefined
}
