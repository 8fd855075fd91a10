import { readFileSync } from 'node:fs'
import type { NotationName } from './byName.js'

interface NotationVectors {
  readonly good: readonly {
    readonly notation: NotationName
    readonly text: string
    readonly value: unknown
  }[]
  readonly bad: readonly { readonly notation: NotationName; readonly text: string }[]
}

/** The list of texts for tests in this and other languages. */
export const readNotationVectors = (): NotationVectors =>
  JSON.parse(readFileSync('schemas/v1/vectors/notation.json', 'utf8'))
