import type { Finding } from '../base/index.js'
import type { SpecCodes } from '../spec/index.js'
import type { TextPosition } from './makeLocator.js'

/** A finding with its message and its position, if known. */
export interface LocatedFinding extends Finding {
  readonly message: string
  readonly position?: Omit<TextPosition, 'text'>
  /** The text in short notation that the finding is about. */
  readonly text?: string
}

/** The characters of a text in short notation that a finding is about. */
export function findTextRange({ code, params, range }: Finding): readonly [number, number] | undefined {
  return code === 'spec/bad-notation' ? (params as SpecCodes[typeof code]).range : range
}
