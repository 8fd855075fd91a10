import { dropUndefined, type Finding } from '../base/index.js'
import type { AnyRule } from './rule.js'
import type { Subject } from './setSubjects.js'

/** Runs every rule that is about this kind of document, in the order of the list. */
export function runRules({ input, prefix, inside }: Subject, rules: readonly AnyRule[]): readonly Finding[] {
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
        path: prefix + found.path,
        params: dropUndefined(found.params),
        ...(found.related === undefined ? {} : { related: found.related }),
        ...(cures === undefined || cures.length === 0 ? {} : { cures }),
      }
    })
  })
}
