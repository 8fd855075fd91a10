import { requireShape, type Shape } from '../base/index.js'
import type { CardWords, Catalogue } from '../message/index.js'

const repeatShape = (shape: Shape, names: readonly (keyof CardWords)[]): Record<string, Shape> =>
  Object.fromEntries(names.map((name) => [name, shape]))

/** The shape of the catalogue for a card or a script. Missing texts are found later. */
const buildWordsShape = (): Shape => ({
  language: 'string',
  review: { kind: 'string' },
  marks: { decimal: 'string', group: 'string' },
  texts: {},
  steps: { '*': { full: 'function', short: 'function', show: 'function' } },
  lines: [{ actions: ['string'], full: 'function', short: 'function' }],
  speech: { '*': 'function' },
  card: {
    ...repeatShape(['string'], ['authority', 'wrenchHabits']),
    ...repeatShape('function', ['cannotTell', 'period', 'duration', 'past', 'remaining', 'coveredBy']),
    ...repeatShape({}, [
      'sections',
      'captions',
      'columns',
      'labels',
      'blanks',
      'choices',
      'pictures',
      'legend',
      'signs',
    ]),
    ...repeatShape({}, [
      'identityFacts',
      'tasks',
      'dueStates',
      'dueBy',
      'severities',
      'roles',
      'caseFaces',
      'casePoints',
      'caseViews',
      'levels',
      'replace',
    ]),
    ...repeatShape({}, [
      'seals',
      'sealForms',
      'sealMaterials',
      'threadConditions',
      'limitedSlip',
      'drives',
      'tools',
    ]),
    ...repeatShape({}, ['toolVerdicts', 'tighteningVerdicts', 'waits', 'missingKinds', 'documents']),
    ...repeatShape({}, ['confidences']),
  },
  wall: {
    authority: ['string'],
    cautions: [{ word: 'string', text: 'string' }],
    ...Object.fromEntries(
      [
        ...['sections', 'letters', 'access', 'columns', 'fill', 'reading', 'attitude', 'engine'],
        ...['wheelMarks', 'clockPositions', 'boltOrders', 'roles', 'job', 'pour', 'labels'],
      ].map((name) => [name, { '*': 'string' }]),
    ),
    clock: 'function',
  },
  cues: {
    authority: ['string'],
    closing: ['string'],
    ...Object.fromEntries(
      ['scenes', 'shots', 'once', 'labels', 'headings'].map((name) => [name, { '*': 'string' }]),
    ),
    ...Object.fromEntries(
      ['opening', 'place', 'interval', 'tools', 'oil', 'seals', 'figure', 'otherVariant', 'later'].map(
        (name) => [name, 'function'],
      ),
    ),
  },
  papers: { titles: { '*': 'string' }, sections: {}, columns: { '*': 'string' }, labels: { '*': 'string' } },
  slip: {
    authority: ['string'],
    ...Object.fromEntries(
      ['sections', 'labels', 'oil', 'magnet', 'filter', 'leaks', 'level', 'tightened'].map((name) => [
        name,
        {},
      ]),
    ),
  },
})

/** Throws a TypeError that names the wrong field if `catalogue` is not a language of the library. */
export function requireWords(catalogue: Catalogue): void {
  requireShape('catalogue', catalogue, buildWordsShape(), 'import it, such as en of /v1/message/en')
}
