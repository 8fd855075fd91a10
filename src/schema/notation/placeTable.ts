import { appendKey, type Finding, type JsonPointer } from '../../base/index.js'
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

/** The keys that may be omitted, with their defaults: a value, or a function that makes it. */
export interface Defaults {
  readonly [key: string]: MakeDefault | object | string | boolean
}

/** The default value of a key. A default object is copied, since a document can be changed. */
export function makeDefault(defaultValue: Defaults[string] | undefined, context: DefaultContext): unknown {
  if (typeof defaultValue === 'function') return defaultValue(context)
  return typeof defaultValue === 'object' ? { ...defaultValue } : defaultValue
}

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

/** The short notation at a place of a document, and at the places below it. */
export interface PlaceNode<Name extends string = string> {
  /** The notation of a string there. */
  readonly text?: Name
  /** A text that is already the full form. */
  readonly fullText?: string
  /** A text instead of the object is the value of this key; with `[]`, the only entry of the list. */
  readonly textKey?: string
  readonly defaults?: Defaults
  /** Defaults that depend on the uses of the openings. */
  readonly laterDefaults?: Defaults
  /** The object may have a `source` for the texts in it. */
  readonly section?: ReadSection
  /** Reads the leaves of an override, which are of other places. */
  readonly set?: (holder: Holder, place: Place, expander: Expander) => void
  /** The kind of the leaf: an override may replace it. */
  readonly leaf?: LeafKind
  /** Reads a short form that is not a string; `texts` are the notations of the strings in it. */
  readonly read?: ReadShort
  readonly texts?: readonly Name[]
  /** Makes the object of a list of texts. */
  readonly collect?: (values: readonly Holder[]) => CollectedObject
  /** The places of its keys; `*` is any key or index. */
  readonly children?: { readonly [key: string]: PlaceNode<Name> }
}

/** Returns the full form of a value, or the value itself if it has none of these short forms. */
export type ReadShort = (value: unknown, node: PlaceNode, place: Place, expander: Expander) => unknown

/** Reads the source of all texts in a section, and returns that of the values in it. */
export type ReadSection = (
  holder: Holder,
  node: PlaceNode,
  place: Place,
  expander: Expander,
) => Partial<SourceRef> | undefined

/** A record or list: the same node for each entry. */
export const each = <const Node extends PlaceNode>(node: Node) => ({ children: { '*': node } })

/**
 * The object made of a list of texts. For each pointer in it: the index of its text, and the part of that
 * text.
 */
export interface CollectedObject {
  readonly value: Holder
  readonly places: readonly { readonly full: JsonPointer; readonly of: number; readonly part: string }[]
}

/** The short notation of one kind of document: its places and their notations. */
export interface PlaceTable<Name extends string = string> {
  readonly places: PlaceNode<Name>
  readonly notations: { readonly [NotationName in Name]: Notation }
}

/** A place of the document while it is expanded. */
export interface Place {
  readonly full: JsonPointer
  /** The pointer as written. */
  readonly path: JsonPointer
  /** True if all values below it share its written pointer, because they come from a text or were omitted. */
  readonly sharesPath?: boolean | undefined
  /** The key of the place in its own holder. */
  readonly id: string
  /** The source of the section that contains the place. */
  readonly section?: Partial<SourceRef> | undefined
  readonly gearcase?: Holder | undefined
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
  /** Reads a text in the notation of this name, or reports the reason if it cannot be read. */
  readonly readText: (text: string, notation: string, place: Place) => unknown
}

/** The node of a key: its own, or the node for any key. Keys of foreign data may be names of built-ins. */
export const findChildNode = ({ children = {} }: PlaceNode, key: string): PlaceNode | undefined =>
  Object.hasOwn(children, key) ? children[key] : children['*']

/** The leaf at a pointer; undefined if there is no leaf. */
export function findLeafNode({ places }: PlaceTable, tokens: readonly string[]): PlaceNode | undefined {
  let node: PlaceNode | undefined = places
  for (const token of tokens) node = node && findChildNode(node, token)
  return node?.leaf && node
}

export function asObject(value: unknown): Holder | undefined {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Holder) : undefined
}

/** The place of a key or a list entry. */
export function makeChildPlace(place: Place, id: string): Place {
  const full = appendKey(place.full, id)
  const path = place.sharesPath ? place.path : place.path === place.full ? full : appendKey(place.path, id)
  return { ...place, full, path, id }
}
