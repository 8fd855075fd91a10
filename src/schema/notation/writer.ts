import type { SourceRef } from '../../spec/index.js'

/** A value in full form; keys with a default may be omitted. */
// biome-ignore lint/suspicious/noExplicitAny: each notation has its own value type, and each text is read back
export type Value = any
/** Writes the brackets of a source, unless its section has the same source. */
export type WriteSource = (source: SourceRef | undefined) => string

export type Writer = (value: Value, source: WriteSource) => string | undefined
