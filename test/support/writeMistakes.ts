import { existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { applyPatch } from '../../src/base/applyPatch.js'
import { MISTAKES, type Mistake } from './mistakes.js'
import { printJson } from './printJson.js'
import { readExample } from './readExample.js'

const FILE = 'examples/mistakes.json'

/** A document of an example as JSON text, in full form. */
export function exampleText(machine: string, file: string): string {
  const base = `schemas/v1/vectors/bases/${machine}/${file}`
  if (existsSync(base)) return readFileSync(base, 'utf8')
  const kind = file.replace('.json', '')
  return kind === 'procedure'
    ? readFileSync(`examples/${machine}/${file}`, 'utf8')
    : JSON.stringify(readExample(machine, kind as 'log'), null, 2)
}

/** The files of one mistake's set, by name: those of the good example, one of them with the mistake. */
export function mistakeFiles({ name, base, files, edit }: Mistake): ReadonlyMap<string, string> {
  return new Map(
    files.map((file) => {
      const text = exampleText(base, file)
      if (file !== edit.file) return [file, text]
      if ('text' in edit) {
        const [from, to] = edit.text
        if (!text.includes(from)) throw new Error(`${name}: ${file} has no ${from}`)
        return [file, text.replace(from, to)]
      }
      return [file, `${JSON.stringify(applyPatch(JSON.parse(text), edit.patch), null, 2)}\n`]
    }),
  )
}

const folders = new Map<string, string>()

/** A folder with the set of one mistake, written at first use. */
export function mistakeFolder(name: string): string {
  const known = folders.get(name)
  if (known !== undefined) return known
  const mistake = MISTAKES.find((candidate) => candidate.name === name)
  if (mistake === undefined) throw new Error(`no mistake ${name}`)
  const folder = join(mkdtempSync(join(tmpdir(), 'mistake-')), name)
  mkdirSync(folder)
  for (const [file, text] of mistakeFiles(mistake)) writeFileSync(join(folder, file), text)
  folders.set(name, folder)
  return folder
}

/** The mistakes as data, for readers in other languages. */
export const mistakesText = (): string => printJson(MISTAKES)

export const writeMistakes = (): void => writeFileSync(FILE, mistakesText())
