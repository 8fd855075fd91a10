import { readdirSync, readFileSync } from 'node:fs'
import { fromHtml } from 'hast-util-from-html'
import { describe, expect, it } from 'vitest'
import * as de from '../../docs/page/labels/de.js'
import * as english from '../../docs/page/labels/en.js'
import * as es from '../../docs/page/labels/es.js'
import * as fr from '../../docs/page/labels/fr.js'
import { LANGUAGES } from '../support/languages.js'

const PAGE = new URL('../../docs/page/', import.meta.url)
const TRANSLATIONS = { de, es, fr }

interface HtmlNode {
  readonly type: string
  readonly tagName?: string
  readonly value?: string
  readonly properties?: { readonly [name: string]: unknown }
  readonly children?: readonly HtmlNode[]
}

const readHtml = (file: string): HtmlNode =>
  fromHtml(readFileSync(new URL(file, PAGE), 'utf8')) as unknown as HtmlNode
const textOf = ({ value = '', children = [] }: HtmlNode): string => value + children.map(textOf).join('')
const squeeze = (text: string): string => text.replaceAll(/\s+/g, ' ').trim()

/** The words of a page by name, as its HTML has them. */
function listMarked(node: HtmlNode): readonly (readonly [string, string])[] {
  const { dataText, dataLabel, ariaLabel } = node.properties ?? {}
  return [
    ...(typeof dataText === 'string' ? [[dataText, squeeze(textOf(node))] as const] : []),
    ...(typeof dataLabel === 'string' ? [[dataLabel, String(ariaLabel)] as const] : []),
    ...(node.children ?? []).flatMap(listMarked),
  ]
}

/** Words that no language chooses: outside an element with a name. */
function listUnmarked(node: HtmlNode): readonly string[] {
  const { dataText, dataLabel, ariaLabel } = node.properties ?? {}
  // Without scripts the language cannot be changed.
  if (dataText !== undefined || ['noscript', 'script', 'style'].includes(node.tagName ?? '')) return []
  return [
    ...(node.type === 'text' && /\p{L}/u.test(node.value ?? '') ? [squeeze(node.value ?? '')] : []),
    ...(typeof ariaLabel === 'string' && dataLabel === undefined ? [ariaLabel] : []),
    ...(node.children ?? []).flatMap(listUnmarked),
  ]
}

/** The texts of a table by path; functions are called with their own names as values. */
function listTexts(value: unknown, path = ''): readonly (readonly [string, string])[] {
  if (typeof value === 'string') return [[path, value]]
  if (typeof value === 'function') {
    const document = { id: 'a', revision: 'b' }
    const files = ['a', 'b']
    const given = path === 'advice' ? [files] : path === 'otherLog' ? [document, document] : files
    return [[path, value(...given, path === 'left' ? false : 'c', { at: 'd' })]]
  }
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, item]) => listTexts(item, path === '' ? key : `${path}/${key}`))
}

it('the page has words in each language of the library', () => {
  const files = readdirSync(new URL('labels', PAGE)).map((file) => file.replace('.ts', ''))
  expect(files.filter((file) => file.length === 2).sort()).toEqual(LANGUAGES)
  expect(['en', ...Object.keys(TRANSLATIONS)].sort()).toEqual([...LANGUAGES].sort())
})

it.each([
  ['index.html', english.pageLabels],
  ['question.html', english.questionLabels],
] as const)('%s has the English words, each under its name', (file, { texts }) => {
  const html = readHtml(file)
  const marked = listMarked(html)
  const ownText = file === 'index.html' ? [['ownText', english.pageLabels.texts.ownText] as const] : []
  expect(Object.fromEntries([...marked, ...ownText])).toEqual(texts)
  expect(new Set(marked.map(([name, text]) => `${name} ${text}`)).size).toBe(
    new Set(marked.map(([name]) => name)).size,
  )
  // The text field has another name for each tab.
  expect(listUnmarked(html).filter((text) => text !== english.pageLabels.fields.sheet)).toEqual([])
})

/** What is the same word, symbol or key in two languages. */
const SAME = ['Date', 'Documents', 'error', 'Error', 'Manual', 'Link', 'US', 'Air, °C']

describe.each(Object.entries(TRANSLATIONS))('%s', (_language, { pageLabels, questionLabels }) => {
  it.each([
    ['the page', pageLabels, english.pageLabels],
    ['the page of one question', questionLabels, english.questionLabels],
  ])('%s: no English left, and the same values in each sentence', (_name, words, inEnglish) => {
    const texts = new Map(listTexts(inEnglish))
    const translated = listTexts(words)
    expect(translated.map(([path]) => path)).toEqual([...texts.keys()])
    expect(
      translated
        .filter(([path, text]) => text === texts.get(path) && !SAME.includes(text))
        .map(([path]) => path),
    ).toEqual([])
    expect(
      translated.filter(([, text]) => /\b(the|with|and|which|from|this|that|its|must)\b/i.test(text)),
    ).toEqual([])
    const digits = (text = ''): string => (text.match(/\d+/g) ?? []).toSorted().join(' ')
    expect(translated.filter(([path, text]) => digits(text) !== digits(texts.get(path)))).toEqual([])
  })
})
