import type { Catalogue } from '../message/index.js'

/** What comes before a paper, and the note of a translation that nobody has reviewed. */
export const writeAuthority = (authority: readonly string[], { review }: Catalogue): readonly string[] =>
  review.kind === 'not reviewed' ? [...authority, review.note] : authority
