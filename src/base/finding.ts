/** A JSON Pointer (RFC 6901) into a document as written; `''` is the whole document. */
export type JsonPointer = string

/** The kinds of documents that a finding can name; `text` is input that is not a document yet. */
export type DocumentKind =
  | 'spec-sheet'
  | 'machine-log'
  | 'toolbox'
  | 'stock'
  | 'procedure'
  | 'service-record'
  | 'text'

export type Severity = 'error' | 'warning' | 'info'

/** Values that a message can name. Plain JSON; a quantity is `{ value, unit }` with a number or a printed figure. */
export type Param =
  | string
  | number
  | boolean
  | null
  | readonly Param[]
  | { readonly [key: string]: Param | undefined }

export type Params = { readonly [key: string]: Param | undefined }

/** A document and a place in it. */
export interface Place {
  readonly document: DocumentReference
  readonly path: JsonPointer
}

export interface DocumentReference {
  readonly kind: DocumentKind
  readonly id?: string
  /** The caller's name for it, such as a file name. */
  readonly name?: string
}

/** One RFC 6902 operation that corrects the cause of a finding. */
export type Fix =
  | { readonly op: 'add' | 'replace'; readonly path: JsonPointer; readonly value: unknown }
  | { readonly op: 'remove'; readonly path: JsonPointer }
  | { readonly op: 'move'; readonly from: JsonPointer; readonly path: JsonPointer }

/** Any code with any params, for code that reads findings of every kind. */
type AnyCodes = { readonly [code: string]: Params }

export interface FindingOf<Code extends string = string, CodeParams = Params> {
  readonly code: Code
  readonly severity: Severity
  readonly document: DocumentReference
  readonly path: JsonPointer
  /** The characters that the finding is about, if the text is in short notation. */
  readonly range?: readonly [from: number, to: number]
  readonly related?: readonly Place[]
  readonly params: CodeParams
  readonly cures?: readonly Fix[]
  readonly waived?: { readonly path: JsonPointer; readonly reason: string }
}

/**
 * A mistake in foreign data, or a note about it. `renderMessage` writes its message in the language of a
 * catalogue. The union has one member for each code, so that `code` narrows `params`.
 */
export type Finding<Codes extends object = AnyCodes> = {
  readonly [Code in keyof Codes & string]: FindingOf<Code, Codes[Code]>
}[keyof Codes & string]

/** One reason for a verdict or a figure. */
export interface Reason<Code extends string = string> {
  readonly code: Code
  readonly params: Params
}

/** The result of reading foreign data: the value if there is no error, and all findings in either case. */
export type Result<T, Codes extends object = AnyCodes> =
  | { readonly ok: true; readonly value: T; readonly findings: readonly Finding<Codes>[] }
  | { readonly ok: false; readonly findings: readonly Finding<Codes>[] }
