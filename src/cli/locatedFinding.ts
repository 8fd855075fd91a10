import type { Finding } from '../base/index.js'
import type { SpecCodes } from '../spec/index.js'
import type { TextPosition } from './makeLocator.js'

/** A finding with its message and its position, if known. */
export interface LocatedFinding extends Finding {
  readonly message: string
  readonly position?: Omit<TextPosition, 'text'>
  /** The text in short notation with the mistake. */
  readonly text?: string
}

/** The range of the mistake in a text in short notation. */
export function findTextRange({ code, params, range }: Finding): readonly [number, number] | undefined {
  return code === 'spec/bad-notation' ? (params as SpecCodes[typeof code]).range : range
}
