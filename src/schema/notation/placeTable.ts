import type { Finding, JsonPointer } from '../../base/index.js'
import type { LeafKind, SourceRef, SpecCodes, WrittenPlace } from '../../spec/index.js'
import type { ReportMistake } from '../reportMistake.js'
import type { Notation } from './notation.js'

export type Holder = Record<string, unknown>

/** Where a key was left out. */
export interface DefaultContext {
  /** The key or list place of the object in its own holder. */
  readonly id: string
  readonly holder: Holder
  /** The whole document. */
  readonly root: Holder
  /** The gearcase of a sheet that the object is in. */
  readonly gearcase: Holder | undefined
}

/** What a key that was left out becomes; undefined where it must be written. */
export type MakeDefault = (at: DefaultContext) => unknown

/** `gear-oil-change` is the gear oil change, and `drain` the drain plug. */
export const nameFromId =
  (noun = '') =>
  ({ id }: Pick<DefaultContext, 'id'>): string => {
    const words = id.replaceAll('-', ' ')
    return noun === '' || words.endsWith(noun) ? words : `${words} ${noun}`
  }

/** The name of a document that gives none. */
export const nameFromDocumentId: MakeDefault = ({ holder: { id } }) =>
  typeof id === 'string' && id !== '' ? nameFromId()({ id }) : undefined

/** What a writer may do at a place of a document. */
export interface PlaceRow<Name extends string = string> {
  /** The notation of a text there. */
  readonly text?: Name
  /** A text that is the full form already. */
  readonly fullText?: string
  /** A text there is the value of this key, or with `[]` the one entry of the list. */
  readonly textKey?: string
  /** The keys that may be left out. */
  readonly defaults?: { readonly [key: string]: MakeDefault }
  /** More of them, which depend on what the openings are for. */
  readonly lateDefaults?: { readonly [key: string]: MakeDefault }
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
  /** A list of texts, all in one of these notations, and the object that it is. */
  readonly lists?: readonly Name[]
  readonly collect?: (values: readonly Holder[]) => Collected
  /** A list of ids is a record of things with no more than a name. */
  readonly isListOfIds?: true
}

/** What a list of texts is, and for each place below it the text that it is from and the part there. */
export interface Collected {
  readonly value: Holder
  readonly places: readonly { readonly full: JsonPointer; readonly of: number; readonly part: string }[]
}

/** A place of the table and the places below it. */
export interface PlaceNode {
  readonly row: Omit<PlaceRow, 'text' | 'byPointer' | 'lists'>
  readonly text?: Notation
  readonly byPointer?: Notation
  readonly lists?: readonly Notation[]
  readonly children: { readonly [key: string]: PlaceNode }
}

/** Where a writer of one kind of document may be short, and the notations there. */
export interface PlaceTable<Name extends string = string> {
  readonly places: PlaceNode
  readonly notations: { readonly [NotationName in Name]: Notation }
  readonly readers: Readers
}

/** A place of the document while it is expanded. */
export interface Place {
  readonly full: JsonPointer
  /** Where it is written. */
  readonly path: JsonPointer
  /** What is below it in the full form was written at the same place: in a text, or not at all. */
  readonly sharesPath: boolean
  /** Its key in its own holder. */
  readonly id: string
  /** The source of the section that it is in. */
  readonly section: Partial<SourceRef> | undefined
  readonly gearcase: Holder | undefined
}

/** A document that is being expanded, and what was found so far. */
export interface Expander {
  readonly table: PlaceTable
  readonly document: Holder
  readonly report: ReportMistake
  readonly findings: Finding<SpecCodes>[]
  readonly places: WrittenPlace[]
  /** Places of the full form whose text could not be read; null is there. */
  readonly unread: JsonPointer[]
  /** Reads a text, or reports why it cannot be read. */
  readonly readText: (text: string, notation: Notation, place: Place) => unknown
}

/** The readers of forms that not every kind of document has: a bundle has those of its tables. */
interface Readers {
  readonly section?: (
    holder: Holder,
    node: PlaceNode,
    place: Place,
    expander: Expander,
  ) => Partial<SourceRef> | undefined
  readonly set?: (holder: Holder, place: Place, expander: Expander) => void
  readonly ids?: (value: unknown, place: Place, expander: Expander) => unknown
  readonly byPointer?: (map: Holder, notation: Notation, place: Place, expander: Expander) => unknown
  readonly list?: (list: readonly unknown[], node: PlaceNode, place: Place, expander: Expander) => unknown
}

/** The rows as one tree, in which `*` is any key. */
export function makeTable<Name extends string>(
  rows: { readonly [place: string]: PlaceRow<Name> },
  notations: PlaceTable<Name>['notations'],
  readers: Readers = {},
): PlaceTable<Name> {
  const places: PlaceNode = { row: {}, children: {} }
  for (const [place, { text, byPointer, lists, ...row }] of Object.entries(rows)) {
    let node = places
    for (const key of place.split('/').slice(1)) {
      const children = node.children as Record<string, PlaceNode>
      children[key] ??= { row: {}, children: {} }
      node = children[key]
    }
    Object.assign(node, {
      row,
      text: text && notations[text],
      byPointer: byPointer && notations[byPointer],
      lists: lists?.map((name) => notations[name]),
    })
  }
  return { places, notations, readers }
}

/** The node of a key: its own, or the one of any key. Keys of foreign data may be names of built-ins. */
export const findChildNode = ({ children }: PlaceNode, key: string): PlaceNode | undefined =>
  Object.hasOwn(children, key) ? children[key] : children['*']

/** The notation of a leaf by its place, and its kind; undefined where the document has no leaf. */
export function findLeafNotation(
  { places }: PlaceTable,
  tokens: readonly string[],
): { readonly notation: Notation; readonly kind: LeafKind } | undefined {
  let node: PlaceNode | undefined = places
  for (const token of tokens) node = node && findChildNode(node, token)
  const notation = node?.row.isLeaf && node.text
  if (!notation) return undefined
  const { name } = notation
  const kind = name === 'window' ? 'interval' : LEAF_NOTATION_KINDS.includes(name) ? name : 'value'
  return { notation, kind: kind as LeafKind }
}
const LEAF_NOTATION_KINDS: readonly string[] = ['oils', 'place', 'tightening', 'drive', 'seal', 'interval']

export function asHolder(value: unknown): Holder | undefined {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Holder) : undefined
}
