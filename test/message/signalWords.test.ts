import { describe, expect, it } from 'vitest'
import { SIGNAL_WORDS as german } from '../../src/message/de/words.js'
import { SIGNAL_WORDS as spanish } from '../../src/message/es/words.js'
import { SIGNAL_WORDS as french } from '../../src/message/fr/words.js'
import { FRENCH_WORDS, GERMAN_WORDS, SPANISH_WORDS } from '../published/signalWords.js'

describe('signal words as manuals print them', () => {
  it.each(GERMAN_WORDS)('$word in German is $printed', ({ word, printed }) => {
    expect(german[word]).toBe(printed)
  })

  it.each(SPANISH_WORDS)('$word in Spanish is $printed', ({ word, printed }) => {
    expect(spanish[word]).toBe(printed)
  })

  it.each(FRENCH_WORDS)('$word in French is $printed', ({ word, printed }) => {
    expect(french[word]).toBe(printed)
  })
})
