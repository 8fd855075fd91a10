import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { applyPatch } from '../../src/base/applyPatch.js'
import { MISTAKES, type Mistake } from './mistakes.js'

const EXAMPLES = 'examples'

/** The files of one mistake's folder, by name: the good example's, one of them with the mistake. */
export function mistakeFiles(mistake: Mistake): ReadonlyMap<string, string> {
  const { base, files, edit } = mistake
  return new Map(
    files.map((file) => {
      const text = readFileSync(`${EXAMPLES}/${base}/${file}`, 'utf8')
      if (file !== edit.file) return [file, text]
      if ('text' in edit) {
        const [from, to] = edit.text
        if (!text.includes(from)) throw new Error(`${mistake.folder}: ${file} has no ${from}`)
        return [file, text.replace(from, to)]
      }
      return [file, `${JSON.stringify(applyPatch(JSON.parse(text), edit.patch), null, 2)}\n`]
    }),
  )
}

/** What stands in `examples/mistakes.expected.json`. */
export function expectedText(): string {
  const rows = MISTAKES.map(({ folder, command, findings }) => ({
    folder: `mistakes/${folder}`,
    command,
    findings,
  }))
  return `${JSON.stringify(rows, null, 2)}\n`
}

/** Lays out `examples/mistakes/` and the list of what each must give. */
export function writeMistakes(): void {
  rmSync(`${EXAMPLES}/mistakes`, { recursive: true, force: true })
  for (const mistake of MISTAKES) {
    const folder = `${EXAMPLES}/mistakes/${mistake.folder}`
    mkdirSync(folder, { recursive: true })
    for (const [file, text] of mistakeFiles(mistake)) writeFileSync(`${folder}/${file}`, text)
  }
  writeFileSync(`${EXAMPLES}/mistakes.expected.json`, expectedText())
}
