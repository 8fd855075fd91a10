import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { LANGUAGE_NAMES, loadCatalogue } from '../../src/cli/loadCatalogue.js'
import { renderText } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import { type Catalogue, renderMessage } from '../../src/v1/message.js'
import { listPapers } from '../browser/listPapers.js'
import { planExamples } from '../card/planExamples.js'
import { readVectors } from '../rules/support/vectors.js'
import { ENGLISH_WORD, listKeys, listTexts } from '../support/catalogueTexts.js'
import { writeLanguageEntry } from '../support/languageEntry.js'
import { LANGUAGES, loadLanguage } from '../support/languages.js'
import { law } from '../support/law.js'

const FOLDERS = join(import.meta.dirname, '../../src/message')
const ENTRIES = join(import.meta.dirname, '../../src/v1/message')
const TRANSLATIONS = LANGUAGES.filter((language) => language !== 'en')

type Message = Parameters<typeof renderMessage>[0]

/** Every reason and finding inside a value. */
function collectMessages(value: unknown, found: Message[] = []): readonly Message[] {
  if (typeof value !== 'object' || value === null) return found
  if ('code' in value && 'params' in value && typeof value.code === 'string') found.push(value as Message)
  for (const item of Object.values(value)) collectMessages(item, found)
  return found
}

/** Messages with real params: of the rules' vectors and of the plans of all examples. */
const MESSAGES: readonly Message[] = [
  ...readVectors().flatMap(({ vector }) => [vector.expect, vector.also.map(({ expect }) => expect)].flat(2)),
  ...planExamples().flatMap(([, plan]) => collectMessages(plan)),
]

/** The numbers of a text in sorted order, without group marks and with a point for each decimal mark. */
function listNumbers(text: string, { marks }: Catalogue): readonly string[] {
  const numbers = text.replaceAll(marks.group, '').match(/[0-9]+(?:[.,][0-9]+)*/g) ?? []
  return numbers.map((number) => number.replaceAll(',', '.')).sort()
}

const listFolderTexts = (language: string) =>
  readdirSync(join(FOLDERS, language)).flatMap((file) => listTexts(join(FOLDERS, language, file)))

it('each language has a folder, an entry and a name for --language', async () => {
  for (const language of LANGUAGES)
    expect(readFileSync(join(ENTRIES, `${language}.ts`), 'utf8')).toBe(writeLanguageEntry(language))
  expect(readdirSync(ENTRIES).length).toBe(LANGUAGES.length)
  expect([...LANGUAGE_NAMES].sort()).toEqual(LANGUAGES)
  for (const language of LANGUAGES) expect((await loadCatalogue(language)).language).toBe(language)
})

it('English texts are found by the search for English', () => {
  const texts = listFolderTexts('en')
  expect(texts.filter((text) => ENGLISH_WORD.test(text)).length).toBeGreaterThan(500)
  expect(new Set(MESSAGES.map(({ code }) => code)).size).toBeGreaterThan(150)
})

describe.each(TRANSLATIONS)('%s', (language) => {
  let catalogue: Catalogue
  beforeAll(async () => {
    catalogue = await loadLanguage(language)
  })

  it('has every text that English has, and no others', () => {
    // Review is the state of a translation, not a text; a list may have another length.
    const keys = (words: Catalogue) => listKeys({ ...words, review: '' }).toSorted()
    expect(keys(catalogue)).toEqual(keys(en))
  })

  it('joins the same steps into one line as English', () => {
    const joined = ({ lines }: Catalogue) => lines.map(({ actions, anyOrder }) => ({ actions, anyOrder }))
    expect(joined(en).length).toBeGreaterThan(10)
    expect(joined(catalogue)).toEqual(joined(en))
  })

  it('has no English text left', () => {
    const english = new Set(listFolderTexts('en').filter((text) => /[a-z]{2,} +[a-z]{2,}/i.test(text)))
    // Words to type into a document stay English, in quotes or as the value of a missing leaf.
    const texts = listFolderTexts(language).filter((text) => text !== 'not stated')
    expect(texts.length).toBeGreaterThan(1000)
    const sentences = texts.map((text) => text.replaceAll(/"[^"]*"/g, '')).filter((text) => / /.test(text))
    expect(sentences.filter((text) => english.has(text) || ENGLISH_WORD.test(text))).toEqual([])
  })

  it('says the same figures as English in every message', () => {
    const different = MESSAGES.map((message) => [
      renderMessage(message, en),
      renderMessage(message, catalogue),
    ])
      .filter(([inEnglish = '', text = '']) => {
        return listNumbers(inEnglish, en).join(' ') !== listNumbers(text, catalogue).join(' ')
      })
      .map(([inEnglish, text]) => `${inEnglish} | ${text}`)
    expect([...new Set(different)]).toEqual([])
  })

  it('writes no number with a decimal point on any paper', () => {
    const texts = listPapers(catalogue).map(({ card }) => renderText(card, { width: 1000 }))
    const numbers = texts.flatMap((text) => text.match(/(?<![0-9A-Za-z./-])[0-9]+\.[0-9]+(?![0-9.])/g) ?? [])
    expect(numbers).toEqual([])
  })

  it('has the decimal mark of Unicode CLDR, as Intl gives it', () => {
    const parts = new Intl.NumberFormat(language).formatToParts(1.5)
    expect(catalogue.marks.decimal).toBe(parts.find(({ type }) => type === 'decimal')?.value)
    expect(Intl.getCanonicalLocales(language)).toEqual([language])
  })

  it('has the plural forms of Unicode CLDR, as Intl gives them', () => {
    const rules = new Intl.PluralRules(language)
    law(2000, fc.integer({ min: 0, max: 999_999_000 }), (thousandths) => {
      const value = thousandths / 1000
      // `many` is only for millions, which no text counts.
      const form = rules.select(value)
      return catalogue.plural(value) === (form === 'many' ? 'other' : form)
    })
    for (const value of [0, 1, 1.5, 1.0004, 2, 21, 100]) {
      const form = rules.select(Number(value.toFixed(3)))
      expect([value, catalogue.plural(value)]).toEqual([value, form])
    }
  })

  it('prints on every card with safety sentences that the translation is not reviewed', () => {
    const { review } = catalogue
    if (review.kind !== 'not reviewed') {
      expect(review).toMatchObject({ kind: 'reviewed', by: expect.stringMatching(/\S/) })
      return
    }
    const papers = listPapers(catalogue)
    const withAuthority = papers.filter(({ card }) => card.authority.length > 0)
    expect(withAuthority.length).toBeGreaterThan(30)
    const note = review.note.replaceAll(/\s+/g, ' ')
    const without = withAuthority.filter(
      ({ card }) => !renderText(card, { width: 1000 }).replaceAll(/\s+/g, ' ').includes(note),
    )
    expect(without.map(({ name }) => name)).toEqual([])
    // A paper without these sentences has no caution either.
    expect(
      papers.filter(({ card }) => card.authority.length === 0 && card.cautions.cautions.length > 0),
    ).toEqual([])
  })
})
