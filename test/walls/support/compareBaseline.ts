import { commonEnds, isObject, isSame, type Json, join } from './jsonChanges.js'
import { matchesPattern, type Rename } from './renames.js'

/** One difference between today's result and the frozen one (with the renames applied). */
export interface Difference {
  readonly set: string
  readonly path: string
  readonly frozen?: Json
  readonly present?: Json
}

/** All differences between two results, down to single words and numbers. */
export function findDifferences(set: string, frozen: Json, present: Json, path = ''): readonly Difference[] {
  if (isSame(frozen, present)) return []
  if (Array.isArray(frozen) && Array.isArray(present)) return compareLists(set, frozen, present, path)
  if (!isObject(frozen) || !isObject(present)) return [{ set, path, frozen, present }]
  return [...new Set([...Object.keys(frozen), ...Object.keys(present)])].flatMap((key) => {
    const [before, after] = [frozen, present].map((holder) =>
      Object.hasOwn(holder, key) ? holder[key] : undefined,
    )
    return compareItems(set, before, after, join(path, key))
  })
}

const compareItems = (
  set: string,
  frozen: Json | undefined,
  present: Json | undefined,
  path: string,
): readonly Difference[] => {
  if (frozen !== undefined && present !== undefined) return findDifferences(set, frozen, present, path)
  return [{ set, path, ...(frozen !== undefined && { frozen }), ...(present !== undefined && { present }) }]
}

/** For lists of different lengths, only the part between their equal ends. */
function compareLists(set: string, frozen: readonly Json[], present: readonly Json[], path: string) {
  const isSameLength = frozen.length === present.length
  const [front, back] = isSameLength ? [0, 0] : commonEnds(frozen, present)
  const length = Math.max(frozen.length, present.length) - front - back
  return Array.from({ length }, (_none, step) => front + step).flatMap((place) =>
    compareItems(
      set,
      place < frozen.length - back ? frozen[place] : undefined,
      place < present.length - back ? present[place] : undefined,
      join(path, place),
    ),
  )
}

/** The documents of a set that is planned. */
const PLANNED = /^\/(plans\/[a-z]+\/(ok|value|findings)|kits\/[a-z]+)$/

/** Whether the table accepts it; the accepting entry counts as used. */
export function isAccepted(
  { set, path, frozen, present }: Difference,
  table: readonly Rename[],
  used: Set<Rename>,
): boolean {
  const entry = table.find((candidate) => {
    if (!('set' in candidate) || !matchesPattern(candidate.set, set, '.*')) return false
    if ('threw' in candidate)
      return matchesPattern('/plans/*/threw', path)
        ? frozen === candidate.threw && present === undefined
        : frozen === undefined && PLANNED.test(path)
    return (
      'path' in candidate &&
      matchesPattern(candidate.path, path) &&
      isSame(candidate.from, frozen) &&
      isSame(candidate.to, present)
    )
  })
  if (entry !== undefined) used.add(entry)
  return entry !== undefined
}

const SHOWN = 40

/**
 * At most 40 kinds of differences, each with its first place and the line for the table, if the difference is intended.
 */
export function reportDifferences(differences: readonly Difference[]): string {
  const groups = new Map<string, Difference[]>()
  for (const difference of differences) {
    const line = suggestLine(difference)
    groups.set(line, [...(groups.get(line) ?? []), difference])
  }
  const texts = [...groups].slice(0, SHOWN).map(([line, [first, ...others]]) => {
    const { set = '', path = '', frozen, present } = first ?? {}
    const more = others.length === 0 ? '' : ` (and ${others.length} more like it)`
    return `${set} ${path}${more}\n  frozen  ${shorten(frozen)}\n  present ${shorten(present)}\n  ${line}`
  })
  const left = groups.size > SHOWN ? [`and ${groups.size - SHOWN} more kinds`] : []
  return [...texts, ...left].join('\n\n')
}

function shorten(value: Json | undefined): string {
  const text = value === undefined ? 'not there' : JSON.stringify(value)
  return text.length > 300 ? `${text.slice(0, 300)} …` : text
}

/** The entry that would accept all such differences; the writer adds `why`. */
function suggestLine({ set, path, frozen, present }: Difference): string {
  const key = path.slice(path.lastIndexOf('/') + 1)
  const isItem = /^\d+$/.test(key)
  const at = path.slice(0, -key.length - 1).replaceAll(/\/\d+(?=\/|$)/g, '/*')
  const why = ''
  if (key === 'code' && frozen !== undefined && present !== undefined)
    return JSON.stringify({ code: frozen, to: present, why })
  if (!isItem && frozen === undefined) return JSON.stringify({ key, added: true, at, why })
  if (!isItem && present === undefined) return JSON.stringify({ key, dropped: true, at, why })
  const sets = `${set.split('/')[0]}*`
  return JSON.stringify({ set: sets, path, from: frozen, to: present, why })
}
