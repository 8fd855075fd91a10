import { dropUndefined, type Finding, type JsonPointer } from '../base/index.js'
import type { AnyRule } from './rule.js'
import type { Subject } from './setSubjects.js'

/** Runs every rule that is about this kind of document, in the order of the list. */
export function runRules(
  { input, prefix, inside, places }: Subject,
  rules: readonly AnyRule[],
): readonly Finding[] {
  const { kind, id } = inside.document
  const document = { kind, id, ...(inside.name === undefined ? {} : { name: inside.name }) }
  return rules.flatMap((rule) => {
    if (rule.about !== input.document.kind && !rule.about.includes(input.document.kind)) return []
    return rule.check(input as never).map((found): Finding => {
      const cures = found.cures?.map((cure) =>
        cure.op === 'move'
          ? { ...cure, from: prefix + cure.from, path: prefix + cure.path }
          : { ...cure, path: prefix + cure.path },
      )
      return {
        code: rule.code,
        severity: found.severity ?? rule.severity,
        document,
        path: placeInLog(found.path, prefix, places),
        params: dropUndefined(found.params),
        ...(found.related === undefined ? {} : { related: found.related }),
        ...(cures === undefined || cures.length === 0 ? {} : { cures }),
      }
    })
  })
}

/** The place of a finding in the document as written; what a correction states is in the correction. */
function placeInLog(
  path: JsonPointer,
  prefix: JsonPointer,
  places: Subject['places'] = new Map(),
): JsonPointer {
  for (let end = path.length; end > 0; end = path.lastIndexOf('/', end - 1)) {
    const written = places.get(path.slice(0, end))
    if (written !== undefined) return `/records${written}${path.slice(end)}`
  }
  return prefix + path
}
