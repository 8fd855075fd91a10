import { isObject, isSame, type Json, type JsonObject, join } from './jsonChanges.js'

/**
 * The intended differences from 0.1; each entry says why. All entries are applied to a result in their order, outer
 * objects first. So `at` (the object that contains the key; absent: everywhere) and `path` use today's names. In them
 * `*` is any one step and `**` any number of steps; in `set`, `*` is any text.
 */
export type Rename = { readonly why: string } & (
  | { readonly code: string; readonly to: string }
  | { readonly key: string; readonly to: string; readonly at?: string }
  | { readonly key: string; readonly dropped: true; readonly at?: string }
  | { readonly key: string; readonly added: true; readonly at?: string }
  /** A number that is now rounded to so many decimals, or digits. */
  | { readonly key: string; readonly decimals: number; readonly at?: string }
  | { readonly key: string; readonly digits: number; readonly at?: string }
  /** A word under a key; `prefix`: the beginning of pointers and other texts. */
  | {
      readonly value: Json
      readonly to: Json
      readonly key?: string
      readonly prefix?: true
      readonly at?: string
    }
  /** From one place to another in each object at `at`: `"moved": "torque/verdict", "to": "verdict"`. */
  | { readonly moved: string; readonly to: string; readonly at: string }
  /** A set with a file that its shape now refuses; before, a rule found an error with this code. */
  | { readonly set: string; readonly refused: string; readonly by: string }
  /** A finding that 0.1 did not have: it is removed from today's lists. */
  | { readonly newCode: string }
  /** A set for which planVisit threw an error and that is planned now; other tests check the plan. */
  | { readonly set: string; readonly threw: string }
  /** One accepted difference; without `from` it is new, without `to` it is gone. */
  | { readonly set: string; readonly path: string; readonly from?: Json; readonly to?: Json }
)

const memory = new Map<string, RegExp>()

/** Whether a pattern matches a place or the name of a set. */
export function matchesPattern(pattern: string, text: string, step = '[^/]*'): boolean {
  const key = `${step} ${pattern}`
  const known =
    memory.get(key) ??
    new RegExp(
      `^${pattern
        .split(/(\/\*\*|\*)/)
        .map((part) =>
          part === '/**' ? '(?:/.*)?' : part === '*' ? step : part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'),
        )
        .join('')}$`,
    )
  memory.set(key, known)
  return known.test(text)
}

/** The value of a document has the document's own words, which are never renamed. */
const isDocument = (path: string): boolean => matchesPattern('/read/*/value', path)

type Visit = (holder: JsonObject, path: string) => JsonObject

/** Every object, from the outside in, replaced by the result of `visit`. */
function mapObjects(value: Json, visit: Visit, path = ''): Json {
  if (isDocument(path)) return value
  if (Array.isArray(value)) return value.map((item, place) => mapObjects(item, visit, join(path, place)))
  if (!isObject(value)) return value
  return Object.fromEntries(
    Object.entries(visit(value, path)).map(([key, item]) => [key, mapObjects(item, visit, join(path, key))]),
  )
}

/** The frozen result with today's names; `used` collects the entries that changed something. */
export function renameFrozen(frozen: Json, table: readonly Rename[], used: Set<Rename>): Json {
  const visits = table.flatMap((entry) => {
    const visit = visitOf(entry)
    return visit === undefined ? [] : [{ entry, visit }]
  })
  if (visits.length === 0) return frozen
  return mapObjects(frozen, (holder, path) =>
    visits.reduce((before, { entry, visit }) => {
      const after = visit(before, path)
      if (after !== before) used.add(entry)
      return after
    }, holder),
  )
}

/**
 * The frozen result of a set that is now refused: reading gives the same finding that the rule gave, and there is no
 * plan.
 */
export function refuseFrozen(set: string, frozen: Json, table: readonly Rename[], used: Set<Rename>): Json {
  const entry = table.find((candidate) => 'refused' in candidate && candidate.set === set)
  if (entry === undefined || !('refused' in entry) || !isObject(frozen)) return frozen
  const { read, check, records } = frozen
  if (!isObject(read) || !Array.isArray(check) || records === undefined) return frozen
  const isAcceptedBy = (finding: Json) => isObject(finding) && finding['code'] === entry.by
  const findings = check.filter(isAcceptedBy)
  if (findings.length > 0) used.add(entry)
  return {
    read: { ...read, [entry.refused]: { ok: false, findings } },
    check: check.filter((finding) => !isAcceptedBy(finding)),
    records,
  }
}

/** Today's result without the keys in the table that 0.1 did not have. */
export function omitAddedKeys(present: Json, table: readonly Rename[], used: Set<Rename>): Json {
  const added = table.filter((entry) => 'added' in entry)
  const known = leaveOutNew(present, table, used)
  if (added.length === 0) return known
  return mapObjects(known, (holder, path) =>
    added.reduce((before, entry) => {
      if (!Object.hasOwn(before, entry.key) || !matchesPattern(entry.at ?? '/**', path)) return before
      used.add(entry)
      return withoutKey(before, entry.key)
    }, holder),
  )
}

/** Today's result without the findings in the table whose codes 0.1 did not have. */
function leaveOutNew(present: Json, table: readonly Rename[], used: Set<Rename>): Json {
  const isNew = (item: Json): boolean => {
    const entry = table.find(
      (candidate) => 'newCode' in candidate && isObject(item) && item['code'] === candidate.newCode,
    )
    if (entry !== undefined) used.add(entry)
    return entry !== undefined
  }
  const inLists = (value: Json): Json => {
    if (Array.isArray(value)) return value.filter((item) => !isNew(item)).map(inLists)
    if (!isObject(value)) return value
    return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, inLists(item)]))
  }
  return inLists(present)
}

const withoutKey = (holder: JsonObject, key: string): JsonObject =>
  Object.fromEntries(Object.entries(holder).filter(([name]) => name !== key))

function visitOf(entry: Rename): Visit | undefined {
  if ('set' in entry || 'added' in entry || 'newCode' in entry) return undefined
  if ('code' in entry)
    return (holder) =>
      holder['code'] === entry.code && Object.hasOwn(holder, 'params')
        ? { ...holder, code: entry.to }
        : holder
  const appliesAt = (path: string) => matchesPattern(entry.at ?? '/**', path)
  if ('moved' in entry)
    return (holder, path) => (appliesAt(path) ? move(holder, entry.moved, entry.to) : holder)
  if ('value' in entry)
    return (holder, path) => {
      if (entry.key !== undefined && !Object.hasOwn(holder, entry.key)) return holder
      return appliesAt(path) ? replaceWord(holder, entry) : holder
    }
  return (holder, path) => {
    if (!Object.hasOwn(holder, entry.key) || !appliesAt(path)) return holder
    if ('decimals' in entry || 'digits' in entry) {
      const value = holder[entry.key]
      const round = (long: number) =>
        Number('digits' in entry ? long.toPrecision(entry.digits) : long.toFixed(entry.decimals))
      const rounded = typeof value === 'number' ? round(value) : value
      return rounded === value || rounded === undefined ? holder : { ...holder, [entry.key]: rounded }
    }
    const rest = withoutKey(holder, entry.key)
    return 'to' in entry ? { ...rest, [entry.to]: holder[entry.key] as Json } : rest
  }
}

function replaceWord(holder: JsonObject, entry: Extract<Rename, { value: Json }>): JsonObject {
  const { value, to, key, prefix } = entry
  const replaced = (item: Json): Json => {
    if (Array.isArray(item))
      return item.some((candidate) => replaced(candidate) !== candidate) ? item.map(replaced) : item
    if (prefix && typeof item === 'string' && typeof value === 'string' && item.startsWith(value))
      return `${String(to)}${item.slice(value.length)}`
    return !isObject(item) && isSame(item, value) ? to : item
  }
  const changed = Object.entries(holder).filter(
    ([name, item]) => (key === undefined || key === name) && replaced(item) !== item,
  )
  if (changed.length === 0) return holder
  return { ...holder, ...Object.fromEntries(changed.map(([name, item]) => [name, replaced(item)])) }
}

function move(holder: JsonObject, from: string, to: string): JsonObject {
  const moved = from.split('/').reduce<Json | undefined>((node, token) => {
    return isObject(node) && Object.hasOwn(node, token) ? node[token] : undefined
  }, holder)
  return moved === undefined ? holder : place(take(holder, from.split('/')), to.split('/'), moved)
}

/** An object that becomes empty is removed too. */
function take(holder: JsonObject, [key = '', ...rest]: readonly string[]): JsonObject {
  const inner = holder[key]
  if (rest.length === 0 || !isObject(inner)) return withoutKey(holder, key)
  const left = take(inner, rest)
  return Object.keys(left).length === 0 ? withoutKey(holder, key) : { ...holder, [key]: left }
}

function place(holder: JsonObject, [key = '', ...rest]: readonly string[], value: Json): JsonObject {
  if (rest.length === 0) return { ...holder, [key]: value }
  const inner = holder[key]
  return { ...holder, [key]: place(isObject(inner) ? inner : {}, rest, value) }
}
