import type { Catalogue } from './catalogue.js'

/** Throws TypeError for what is no catalogue. Its single words are not looked at: a bad one gives a plain line. */
export function requireCatalogue(catalogue: Catalogue): void {
  const texts: unknown = catalogue?.texts
  if (typeof texts !== 'object' || texts === null)
    throw new TypeError('catalogue must be a language of the library, such as `en` of /v1/message/en')
}
