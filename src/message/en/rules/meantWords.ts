import type { Say } from '../../catalogue.js'

/** What was probably meant, or what there is to choose from; begins with a space, empty where nothing is known. */
export function meantWords(meant: string | undefined, known: readonly string[], say: Say): string {
  if (meant !== undefined) return ` Did you mean “${meant}”?`
  if (known.length === 0) return ''
  const shown = known.slice(0, 8).map((one) => `“${one}”`)
  const rest = known.length > shown.length ? [`${say.number(known.length - shown.length)} more`] : []
  return ` There ${known.length === 1 ? 'is' : 'are'} ${say.list([...shown, ...rest])}.`
}
