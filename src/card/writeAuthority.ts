import type { Catalogue } from '../message/index.js'

/** The sentences at the head of a paper, and the note of a translation that is not reviewed. */
export const writeAuthority = (authority: readonly string[], { review }: Catalogue): readonly string[] =>
  review.kind === 'not reviewed' ? [...authority, review.note] : authority
