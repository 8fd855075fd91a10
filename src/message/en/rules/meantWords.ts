import type { Say } from '../../catalogue.js'

interface Names {
  readonly known: readonly string[]
  readonly more: number
  readonly meant: string | undefined
}

/** What was probably meant, or what there is to choose from; begins with a space, empty where nothing is known. */
export function meantWords({ meant, known, more }: Names, say: Say): string {
  if (meant !== undefined) return ` Did you mean “${meant}”?`
  if (known.length === 0) return ''
  const shown = known.map((one) => `“${one}”`)
  const rest = more > 0 ? [`${say.number(more)} more`] : []
  return ` There ${known.length === 1 ? 'is' : 'are'} ${say.list([...shown, ...rest])}.`
}
