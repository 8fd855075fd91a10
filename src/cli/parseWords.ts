import { parseArgs } from 'node:util'
import { suggestName } from '../base/index.js'
import { UsageError } from './cliIo.js'
import { OPTION_TABLE, type OptionName, type OptionRow } from './optionTable.js'

/** The words after a command's name, sorted: options by name, and the rest. */
export interface Words {
  readonly positionals: readonly string[]
  readonly values: { readonly [Name in OptionName | 'help']?: WordValue<Name> }
}

type WordValue<Name> = Name extends 'help' | 'exit-code' | 'from-plan'
  ? boolean
  : Name extends 'service' | 'sample' | 'sheet' | 'times-from'
    ? string[]
    : string

type Flag = { readonly type: 'string' | 'boolean'; readonly short?: string; readonly multiple?: boolean }

const FLAGS: { readonly [name: string]: Flag } = {
  help: { type: 'boolean', short: 'h' },
  ...Object.fromEntries(
    Object.entries(OPTION_TABLE).map(([name, { value, repeats }]: [string, OptionRow]): [string, Flag] => [
      name,
      { type: value === undefined ? 'boolean' : 'string', multiple: repeats === true },
    ]),
  ),
}

/** Sorts words; an option of another command is refused. */
export function parseWords(words: readonly string[], takes: readonly OptionName[]): Words {
  const args = keepNegatives(words)
  const { tokens } = parseArgs({ args, options: FLAGS, allowPositionals: true, strict: false, tokens: true })
  for (const token of tokens)
    if (token.kind === 'option') refuseOtherOptions(token.name, token.rawName, takes)
  try {
    const { values, positionals } = parseArgs({ args, options: FLAGS, allowPositionals: true, strict: true })
    return {
      values: values as Words['values'],
      positionals: positionals.map((word) => (MINUS.test(word) ? `-${word.slice(1)}` : word)),
    }
  } catch (error) {
    throw new UsageError(error instanceof Error ? (error.message.split('\n', 1)[0] ?? '') : String(error))
  }
}

function refuseOtherOptions(name: string, rawName: string, takes: readonly OptionName[]): void {
  const taken: readonly string[] = ['help', ...takes]
  if (taken.includes(name)) return
  const nearName = suggestName(name, taken)
  const problem = isOption(name) ? 'is not an option of this command' : 'is unknown'
  const hint = nearName === undefined ? '' : `; did you mean --${nearName}?`
  throw new UsageError(`${rawName} ${problem}${hint} (options: ${takes.map((one) => `--${one}`).join(', ')})`)
}

function isOption(name: string): boolean {
  return Object.hasOwn(FLAGS, name)
}

const MINUS = /^\u2212(?=[0-9.])/

/** A word such as `-10degC` is a value, not an option. */
function keepNegatives(words: readonly string[]): string[] {
  const kept: string[] = []
  for (const word of words) {
    const before = kept.at(-1)
    if (!/^-[0-9.]/.test(word)) kept.push(word)
    else if (before !== undefined && takesValue(before)) kept[kept.length - 1] = `${before}=${word}`
    else kept.push(`\u2212${word.slice(1)}`)
  }
  return kept
}

function takesValue(word: string): boolean {
  const name = word.slice(2)
  return word.startsWith('--') && isOption(name) && FLAGS[name]?.type === 'string'
}
