import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import ts from 'typescript'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { cleanLine } from '../../src/cli/cleanLine.js'
import { UsageError } from '../../src/cli/cliIo.js'
import { COMMAND_NAMES, COMMAND_TABLE } from '../../src/cli/commandTable.js'
import { LANGUAGE_NAMES } from '../../src/cli/loadCatalogue.js'
import { loadWords } from '../../src/cli/loadWords.js'
import type { TranslatedWords } from '../../src/cli/message/cliWords.js'
import { blanks } from '../../src/cli/message/en/blanks.js'
import { en as words } from '../../src/cli/message/en/index.js'
import { keys } from '../../src/cli/message/en/keys.js'
import { renderUsageError } from '../../src/cli/message/renderUsageError.js'
import { OPTION_TABLE } from '../../src/cli/optionTable.js'
import { renderHelp, runCommand } from '../../src/cli/runCommand.js'
import { ENGLISH_WORD, listKeys, listTexts } from '../support/catalogueTexts.js'
import { LANGUAGES } from '../support/languages.js'
import { memoryIo } from '../support/memoryIo.js'

const WORDS = join(import.meta.dirname, '../../src/cli/message')
const CATALOGUES = join(import.meta.dirname, '../../src/message')
const TRANSLATIONS = LANGUAGES.filter((language) => language !== 'en')

/** English with the words that come with some commands. */
const en: TranslatedWords = { ...words, blanks, keys }
const load = async (language: string): Promise<TranslatedWords> => (await loadWords(language)) ?? en
const listFolderTexts = (folder: string) =>
  readdirSync(folder).flatMap((file) => listTexts(join(folder, file)))

/** What the user types stays English: words in double quotes, options, and the examples of the help. */
const withoutTyped = (text: string): string =>
  // A piece of a text may end a quotation that another piece begins.
  (text.split('"').length % 2 === 0 ? text.replace(/^[^"]*"/, '') : text)
    .replaceAll(/"[^"]*"|^ {2}(bash|zsh|fish|\{).*$/gm, '')
    .replaceAll(/--[a-z-]+|<\(.*\)/g, '')

/** A value for each value of each text, by interface and name. Numbers are long, so that nothing else prints them. */
function readSampleValues(): ReadonlyMap<string, Readonly<Record<string, string | number>>> {
  const samples = new Map<string, Record<string, string | number>>()
  const namesOf = (node: ts.TypeNode | undefined): readonly string[] =>
    node === undefined ? [] : [...node.getText().matchAll(/'([^']+)'/g)].flatMap(([, name]) => name ?? [])
  for (const file of ['errorTexts', 'reportTexts', 'blankWords', 'cliWords']) {
    const path = join(WORDS, `${file}.ts`)
    const source = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true)
    source.forEachChild((node) => {
      if (!ts.isInterfaceDeclaration(node)) return
      for (const member of node.members) {
        if (!ts.isPropertySignature(member) || member.type === undefined) continue
        const { type } = member
        const values: Record<string, string | number> = {}
        if (ts.isTypeReferenceNode(type) && type.typeName.getText() === 'Text') {
          const [strings, numbers] = type.typeArguments ?? []
          for (const name of namesOf(strings)) values[name] = `‹${name}›`
          for (const [place, name] of namesOf(numbers).entries()) values[name] = 40_001 + place
        } else if (ts.isFunctionTypeNode(type))
          for (const [, name = '', word] of type.getText().matchAll(/readonly (\w+): (?:string|'([^']+)')/g))
            values[name] = word ?? `‹${name}›`
        else continue
        samples.set(`${node.name.text}.${member.name.getText()}`, values)
      }
    })
  }
  return samples
}
const SAMPLES = readSampleValues()

type TextFunctions = Readonly<Record<string, unknown>>
/** Every text with values of one language, written with its sample values. */
function writeSamples({ errors, reports, answers, blanks, help }: TranslatedWords) {
  const groups: readonly (readonly [string, object])[] = [
    ['ErrorTexts', errors],
    ['ReportTexts', reports],
    ['AnswerTexts', answers],
    ['BlankWords', blanks],
    ['HelpWords', help],
  ]
  return groups.flatMap(([group, texts]) =>
    Object.entries(texts as TextFunctions).flatMap(([name, write]) => {
      // The marks of a jug are a list; the answers below print them.
      if (typeof write !== 'function' || name === 'marks') return []
      const values = SAMPLES.get(`${group}.${name}`)
      if (values === undefined) throw new Error(`no sample for ${group}.${name}`)
      return [{ name: `${group}.${name}`, values, text: String(write(values)) }]
    }),
  )
}

/** The sample values that a text prints. */
const listPrinted = (text: string, values: Readonly<Record<string, string | number>>) =>
  Object.entries(values)
    .filter(([, value]) => /^‹|^[0-9]/.test(String(value)) && text.includes(String(value)))
    .map(([name]) => name)

it('each language of the library has words, and its name stands in the help of --language', async () => {
  expect(LANGUAGE_NAMES).toEqual(LANGUAGES)
  expect([...OPTION_TABLE.language.words]).toEqual(LANGUAGES)
  for (const language of LANGUAGES) {
    const words = await load(language)
    expect(words.language).toBe(language)
    for (const name of LANGUAGES) expect(words.options.language).toMatch(new RegExp(`\\b${name}\\b`))
  }
})

it('English texts are found by the search for English', () => {
  const texts = listFolderTexts(join(WORDS, 'en'))
  expect(texts.length).toBeGreaterThan(500)
  expect(texts.filter((text) => ENGLISH_WORD.test(withoutTyped(text))).length).toBeGreaterThan(150)
  expect(writeSamples(en).length).toBeGreaterThan(200)
})

it('English prints each of its values', () => {
  const silent = writeSamples(en).filter(({ text, values }) => {
    const expected = Object.entries(values).filter(([, value]) => /^‹|^[0-9]/.test(String(value)))
    return listPrinted(text, values).length !== expected.length
  })
  expect(silent.map(({ name }) => name)).toEqual([])
})

describe.each(TRANSLATIONS)('the words of the command line in %s', (language) => {
  it('have every text of English, and no others', async () => {
    // English needs no table for the English texts of the YAML reader.
    const keys = (words: TranslatedWords) => listKeys({ ...words, yamlProblems: '' }).toSorted()
    expect(keys(await load(language))).toEqual(keys(en))
  })

  it('print the same values as English', async () => {
    const english = new Map(
      writeSamples(en).map(({ name, text, values }) => [name, listPrinted(text, values)]),
    )
    const different = writeSamples(await load(language)).filter(
      ({ name, text, values }) => listPrinted(text, values).join() !== english.get(name)?.join(),
    )
    expect(different).toEqual([])
  })

  it('have no English text left', () => {
    const english = new Set(
      listFolderTexts(join(WORDS, 'en'))
        .map(withoutTyped)
        .filter((text) => /[a-z]{2,} +[a-z]{2,}/i.test(text)),
    )
    const texts = listFolderTexts(join(WORDS, language)).filter((text) => / /.test(text))
    expect(texts.length).toBeGreaterThan(350)
    expect(texts.map(withoutTyped).filter((text) => english.has(text) || ENGLISH_WORD.test(text))).toEqual([])
  })

  it('keep the options, quoted examples and paths of English', async () => {
    const words = await load(language)
    // A command, an option or a text to copy is the same in each language.
    const listTyped = (text: string) =>
      [
        ...new Set(text.match(/--[a-z][a-z-]+|"[^"‹]+"|(?<![\w.])\.(?:json|yaml|yml|csv|md|html|txt)\b/g)),
      ].sort()
    const help = (of: TranslatedWords) =>
      COMMAND_NAMES.map((name) => [name, listTyped(renderHelp(name, of).replaceAll('"not due"', ''))])
    const typed = (of: TranslatedWords) =>
      writeSamples(of).map(({ name, text }) => [name, listTyped(text.replaceAll(/"‹\w+›"/g, ''))])
    const withoutPlaceholders = (of: TranslatedWords) => ({ ...of, placeholders: en.placeholders })
    expect(help(withoutPlaceholders(words))).toEqual(help(en))
    expect(typed(words)).toEqual(typed(en))
  })

  it('write each error in the language, and make foreign text safe', async () => {
    const words = await load(language)
    for (const { name, text } of writeSamples(words)) expect(text, name).not.toMatch(/undefined|NaN/)
    const error = new UsageError('noSuchFile', { path: 'a\u001b[2Jb' })
    const text = renderUsageError(error, words, cleanLine)
    expect(text).toContain('a\\u{1b}[2Jb')
    expect(text).not.toBe(renderUsageError(error, en, cleanLine))
    const unread = new UsageError('noSuchFile', { path: 'standard input' })
    expect(renderUsageError(unread, words, cleanLine)).toContain(words.standardInput)
  })

  it('make the same blank documents, with comments of at most 120 characters', async () => {
    for (const more of [
      ['sheet', '--gearcases', 'front,rear', '--variants', 'short,long'],
      ['sheet'],
      ['log'],
      ['log', '--sheet', 'examples/tind-4/sheet.yaml'],
      ['toolbox'],
      ['stock'],
    ]) {
      const print = async (name: string) => {
        const io = memoryIo()
        expect(await runCommand(['new', ...more, '--language', name], io)).toBe(0)
        return io.out.join('\n')
      }
      const [english, translated] = [await print('en'), await print(language)]
      expect(parse(translated)).toEqual(parse(english))
      expect(translated).not.toBe(english)
      expect(translated.split('\n').length).toBe(english.split('\n').length)
      // The line with the data of an oil is long in every language.
      const long = (text: string) =>
        text
          .split('\n')
          .filter((line) => line.startsWith('#') && line.length > 120 && !line.includes('kv100'))
      expect(long(english)).toEqual([])
      expect(long(translated)).toEqual([])
    }
  })
})

it('French has its spaces: no-break before a colon and in quotation marks, narrow before ; ! and ?', () => {
  for (const folder of [join(WORDS, 'fr'), join(CATALOGUES, 'fr')]) {
    const texts = listFolderTexts(folder)
    expect(texts.filter((text) => /\u00a0:/.test(text)).length).toBeGreaterThan(50)
    // In a path, a time or a text to copy a colon has no space before it.
    expect(texts.filter((text) => / [:;!?]|« | »/.test(text.replaceAll(/"[^"]*"/g, '')))).toEqual([])
  }
})

describe('--language', () => {
  it('works before and after the other words, with = and without', async () => {
    const { errors } = await load('fr')
    const expected = `drivetrain-service: ${errors.nameFilesToCheck()}`
    for (const words of [
      ['check', '--language', 'fr'],
      ['check', '--language=fr', '--quiet'],
      ['check', '--quiet', '--language', 'de', '--language=fr'],
    ]) {
      const io = memoryIo()
      expect(await runCommand(words, io)).toBe(2)
      expect(io.err).toEqual([expected])
    }
  })

  it('is the language of an error in the words before it', async () => {
    const { errors } = await load('de')
    const io = memoryIo()
    expect(await runCommand(['plan', '--quite', '--language', 'de'], io)).toBe(2)
    const options = COMMAND_TABLE.plan.options.map((name) => `--${name}`).join(', ')
    expect(io.err.join('')).toContain(errors.unknownOption({ option: '--quite', suggestion: '', options }))
  })

  it('without a value, or with an unknown one, is an English error', async () => {
    for (const [words, text] of [
      [['check', '--language'], '--language: expected a value'],
      [['help', '--language', 'xx'], '--language xx: expected one of de, en, es, fr'],
    ] as const) {
      const io = memoryIo()
      expect(await runCommand(words, io)).toBe(2)
      expect(io.err.join('')).toContain(text)
    }
  })

  it.each(LANGUAGES)('help, the list of commands and completions are in %s', async (language) => {
    const words = await load(language)
    const print = async (...line: readonly string[]) => {
      const io = memoryIo()
      expect(await runCommand([...line, '--language', language], io)).toBe(0)
      return io.out.join('\n')
    }
    const overview = await print('help')
    for (const name of COMMAND_NAMES) {
      const { summary, help } = words.commands[name]
      expect(overview).toContain(`${name.padEnd(11)} ${summary}`)
      const text = await print(name, '--help')
      expect(text).toContain(help)
      expect(await print('help', name)).toBe(text)
      expect(text.startsWith(`${words.help.usage} drivetrain-service ${name} `)).toBe(true)
    }
    const fish = await print('completion', 'fish')
    expect(fish).toContain(words.help.printHelp.replaceAll("'", '\u2019'))
    expect(fish).toContain("-l language -x -a 'de en es fr'")
  })
})
