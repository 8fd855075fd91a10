import type { Finding, JsonPointer } from '../../base/index.js'
import type { LeafKind, SourceRef, SpecCodes, WrittenPlace } from '../../spec/index.js'
import type { ReportMistake } from '../reportMistake.js'
import type { Notation } from './notation.js'

export type Holder = Record<string, unknown>

/** The surroundings of an omitted key. */
export interface DefaultContext {
  /** The key or list index of the object in its own holder. */
  readonly id: string
  readonly holder: Holder
  /** The whole document. */
  readonly root: Holder
  /** The gearcase that contains the object, in a sheet. */
  readonly gearcase: Holder | undefined
}

/** Returns the default of an omitted key; undefined if it must be written. */
export type MakeDefault = (at: DefaultContext) => unknown

/** Makes `gear oil change` of `gear-oil-change`, and `drain plug` of `drain`. */
export const nameFromId =
  (noun = '') =>
  ({ id }: Pick<DefaultContext, 'id'>): string => {
    const words = id.replaceAll('-', ' ')
    return noun === '' || words.endsWith(noun) ? words : `${words} ${noun}`
  }

/** The default name of a document, from its id. */
export const nameFromDocumentId: MakeDefault = ({ holder: { id } }) =>
  typeof id === 'string' && id !== '' ? nameFromId()({ id }) : undefined

/** The short notation allowed at a place of a document. */
export interface PlaceRow<Name extends string = string> {
  /** The notation of a string there. */
  readonly text?: Name
  /** A text that is already the full form. */
  readonly fullText?: string
  /** A text instead of the object is the value of this key; with `[]`, the only entry of the list. */
  readonly textKey?: string
  /** The keys that may be omitted, with their defaults. */
  readonly defaults?: { readonly [key: string]: MakeDefault }
  /** Defaults that depend on the uses of the openings. */
  readonly lateDefaults?: { readonly [key: string]: MakeDefault }
  /** The object may have a `source` for the texts in it. */
  readonly isSection?: true
  /** An override may replace it. */
  readonly isLeaf?: boolean
  /** It contains leaves of other places. */
  readonly isOverride?: true
  /** `true` and `false` stand for `yes` and `no`. */
  readonly isYesOrNo?: true
  /** A list of parts may be a map from their pointers to texts in this notation. */
  readonly byPointer?: Name
  /** An object may be a list of texts, all in one of these notations; `collect` makes the object. */
  readonly lists?: readonly Name[]
  readonly collect?: (values: readonly Holder[]) => CollectedObject
  /** A list of ids may replace a record of objects with only a name. */
  readonly isListOfIds?: true
}

/**
 * The object made of a list of texts. For each pointer in it: the index of its text, and the part of that
 * text.
 */
export interface CollectedObject {
  readonly value: Holder
  readonly places: readonly { readonly full: JsonPointer; readonly of: number; readonly part: string }[]
}

/** A place of the table with the places below it. */
export interface PlaceNode {
  readonly row: Omit<PlaceRow, 'text' | 'byPointer' | 'lists'>
  readonly text?: Notation
  readonly byPointer?: Notation
  readonly lists?: readonly Notation[]
  readonly children: { readonly [key: string]: PlaceNode }
}

/** The short notation of one kind of document: its places and their notations. */
export interface PlaceTable<Name extends string = string> {
  readonly places: PlaceNode
  readonly notations: { readonly [NotationName in Name]: Notation }
  readonly readers: Readers
}

/** A place of the document while it is expanded. */
export interface Place {
  readonly full: JsonPointer
  /** The pointer as written. */
  readonly path: JsonPointer
  /** True if all values below it share its written pointer, because they come from a text or were omitted. */
  readonly sharesPath: boolean
  /** The key of the place in its own holder. */
  readonly id: string
  /** The source of the section that contains the place. */
  readonly section: Partial<SourceRef> | undefined
  readonly gearcase: Holder | undefined
}

/** A document during expansion, with the results so far. */
export interface Expander {
  readonly table: PlaceTable
  readonly document: Holder
  readonly report: ReportMistake
  readonly findings: Finding<SpecCodes>[]
  readonly places: WrittenPlace[]
  /** Pointers in the full form whose text could not be read; the value there is null. */
  readonly unreadPointers: JsonPointer[]
  /** Reads a text, or reports the reason if it cannot be read. */
  readonly readText: (text: string, notation: Notation, place: Place) => unknown
}

/** Readers that only some kinds of document need: a bundle includes those of its tables. */
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

/** The node of a key: its own, or the node for any key. Keys of foreign data may be names of built-ins. */
export const findChildNode = ({ children }: PlaceNode, key: string): PlaceNode | undefined =>
  Object.hasOwn(children, key) ? children[key] : children['*']

/** The notation and kind of the leaf at a pointer; undefined if there is no leaf. */
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
