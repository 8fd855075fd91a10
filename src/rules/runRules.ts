import type { Finding, JsonPointer, Params, Severity } from '../base/index.js'
import type { Complaint, DocumentSet, Named, RuleFacts, RuleSubjects, SubjectKind } from './rule.js'

/** A rule of any kind and code, as the lists hold it. */
export interface AnyRule {
  readonly code: string
  readonly severity: Severity
  readonly about: SubjectKind | readonly SubjectKind[]
  check(document: never, set: DocumentSet, facts: RuleFacts): readonly Complaint[]
}

/** A document, or the part of one that stands for a document of its own: a record inside its log. */
export interface Subject {
  readonly kind: SubjectKind
  readonly named: Named<RuleSubjects[SubjectKind]>
  /** Where the subject stands, in the document that the reader has before him. */
  readonly prefix: JsonPointer
  readonly inside: Named<RuleSubjects[SubjectKind]>
}

/** Asks every rule that is about this kind of document, in the order of the list. */
export function runRules(
  subject: Subject,
  rules: readonly AnyRule[],
  set: DocumentSet,
  facts: RuleFacts,
): readonly Finding[] {
  const { kind, named, prefix, inside } = subject
  const document = {
    kind: inside.document.kind,
    id: inside.document.id,
    ...(inside.name === undefined ? {} : { name: inside.name }),
  }
  return rules.flatMap((rule) => {
    const about: readonly string[] = typeof rule.about === 'string' ? [rule.about] : rule.about
    if (!about.includes(kind)) return []
    return rule.check(named.document as never, set, facts).map((complaint): Finding => {
      const cures = complaint.cures?.map((cure) =>
        cure.op === 'move'
          ? { ...cure, from: prefix + cure.from, path: prefix + cure.path }
          : { ...cure, path: prefix + cure.path },
      )
      return {
        code: rule.code,
        severity: complaint.severity ?? rule.severity,
        document,
        path: prefix + complaint.path,
        params: withoutUndefined(complaint.params),
        ...(complaint.related === undefined ? {} : { related: complaint.related }),
        ...(cures === undefined || cures.length === 0 ? {} : { cures }),
      }
    })
  })
}

function withoutUndefined(params: Params): Params {
  return Object.fromEntries(Object.entries(params).filter(([, value]) => value !== undefined))
}
