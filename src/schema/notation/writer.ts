import type { SourceRef } from '../../spec/index.js'

/** A value in full form; keys that have a default may be left out. */
// biome-ignore lint/suspicious/noExplicitAny: every notation has a value of its own, and what is written is read back
export type Value = any
/** The brackets of a source that its section does not give. */
export type WriteSource = (source: SourceRef | undefined) => string

export type Writer = (value: Value, source: WriteSource) => string | undefined
