import { requireShape, type Shape } from '../base/index.js'
import type { CardWords, Catalogue } from '../message/index.js'

const each = (shape: Shape, names: readonly (keyof CardWords)[]): Record<string, Shape> =>
  Object.fromEntries(names.map((name) => [name, shape]))

/** The words of a language that a card or a script reads; a text that is missing is found where it is set. */
const words = (): Shape => ({
  language: 'string',
  marks: { decimal: 'string', group: 'string' },
  texts: {},
  steps: { '*': { full: 'function', short: 'function', show: 'function' } },
  speech: { '*': 'function' },
  card: {
    ...each(['string'], ['authority', 'wrenchHabits', 'leakAdvice']),
    ...each('function', ['cannotTell', 'period', 'duration', 'past', 'remaining', 'coveredBy']),
    ...each({}, [
      'sections',
      'captions',
      'columns',
      'labels',
      'blanks',
      'choices',
      'cues',
      'pictures',
      'legend',
    ]),
    ...each({}, ['identityFacts', 'tasks', 'dueStates', 'dueBy', 'severities', 'roles', 'levels', 'replace']),
    ...each({}, [
      'seals',
      'sealForms',
      'sealMaterials',
      'threadConditions',
      'limitedSlip',
      'drives',
      'tools',
    ]),
    ...each({}, ['toolVerdicts', 'tighteningVerdicts', 'waits', 'missingKinds', 'documents']),
    ...each({}, ['confidences']),
  },
})

/** Throws TypeError, naming the place, for anything that is not a language of the library. */
export function requireWords(catalogue: Catalogue): void {
  requireShape('catalogue', catalogue, words(), 'import it, such as en of /v1/message/en')
}
