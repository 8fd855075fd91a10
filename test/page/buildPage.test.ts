import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { buildPage } from '../../docs/page/buildPage.js'

let folder = ''
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'page-'))
  await buildPage(folder)
})
afterAll(() => {
  rmSync(folder, { recursive: true, force: true })
})

const read = (file: string): string => readFileSync(join(folder, file), 'utf8')

/** The files that a page loads before anybody does something: its own, and what their code imports at once. */
function listStartFiles(page: string): readonly string[] {
  const files = new Set([page])
  for (const file of files)
    for (const [, found = ''] of read(file).matchAll(
      /(?:(?:href|src)="|(?:\bfrom|\bimport)\s*"\.\/)([\w.-]+\.(?:js|css|svg))"/g,
    ))
      files.add(found)
  return [...files]
}

const kilobytesOf = (files: readonly string[]): number =>
  files.reduce((sum, file) => sum + gzipSync(read(file), { level: 9 }).length, 0) / 1000

it.each([
  [
    'index.html',
    300,
    'library and English texts 220 kB, YAML 30; the editor and other languages come when they are used',
  ],
  ['question.html', 40, 'two calculations with their texts'],
])('%s loads at most %d kB gzip at the start', (page, ceiling) => {
  const files = listStartFiles(page)
  console.log(`${page}: ${kilobytesOf(files).toFixed(1)} kB gzip of ${ceiling}`)
  expect(files.filter((file) => file.endsWith('.js')).length).toBeGreaterThan(0)
  expect(kilobytesOf(files)).toBeLessThanOrEqual(ceiling)
})

it('the editor and each language beside English are files of their own', () => {
  const late = readdirSync(folder).filter((file) => !listStartFiles('index.html').includes(file))
  expect(late.some((file) => file.startsWith('editor-'))).toBe(true)
  const languages = readdirSync('dist/v1/message').filter(
    (file) => /^[a-z]+\.js$/.test(file) && file !== 'en.js',
  )
  for (const language of languages)
    expect(late.some((file) => file.startsWith(language.replace('.js', '-')))).toBe(true)
})

it('no file makes code from text, or names another host to load from', () => {
  for (const file of readdirSync(folder).filter((name) => /\.(js|html|css)$/.test(name))) {
    expect(read(file), file).not.toMatch(
      /\beval\(|new Function\(|url\(["']?https?:|(?:src|href)="https?:|importScripts/,
    )
    if (file.endsWith('.html'))
      expect(read(file)).toMatch(/default-src 'none'; script-src 'self'; style-src 'self'/)
  }
})
