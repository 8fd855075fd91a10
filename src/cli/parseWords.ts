import { parseArgs } from 'node:util'
import { suggestName } from '../base/index.js'
import { UsageError } from './cliIo.js'
import { OPTION_TABLE, type OptionName, type OptionRow } from './optionTable.js'

/** The words after a command's name: options by name, and positionals. */
export interface ParsedWords {
  readonly positionals: readonly string[]
  readonly values: { readonly [Name in OptionName | 'help']?: OptionValue<Name> }
}

type OptionValue<Name> = Name extends OptionName
  ? (typeof OPTION_TABLE)[Name] extends { readonly isRepeatable: true }
    ? string[]
    : (typeof OPTION_TABLE)[Name] extends { readonly value: string }
      ? string
      : boolean
  : boolean

type Flag = { readonly type: 'string' | 'boolean'; readonly short?: string; readonly multiple?: boolean }

const FLAGS: { readonly [name: string]: Flag } = {
  help: { type: 'boolean', short: 'h' },
  ...Object.fromEntries(
    Object.entries(OPTION_TABLE).map(
      ([name, { value, isRepeatable }]: [string, OptionRow]): [string, Flag] => [
        name,
        { type: value === undefined ? 'boolean' : 'string', multiple: isRepeatable === true },
      ],
    ),
  ),
}

/** Parses words; an option of another command is a usage error. */
export function parseWords(words: readonly string[], allowed: readonly OptionName[]): ParsedWords {
  const args = keepNegativeNumbers(words)
  const config = { args, options: FLAGS, allowPositionals: true, strict: false, tokens: true } as const
  const { values, positionals, tokens } = parseArgs(config)
  for (const token of tokens) {
    if (token.kind !== 'option') continue
    refuseOtherOptions(token.name, token.rawName, allowed)
    requireValue(token)
  }
  return {
    values: values as ParsedWords['values'],
    positionals: positionals.map((word) => (LEADING_MINUS.test(word) ? `-${word.slice(1)}` : word)),
  }
}

/** A word that begins with a minus is another option, not a value, unless it is joined by `=`. */
function requireValue({ name, rawName, value, inlineValue = false }: OptionToken): void {
  if (FLAGS[name]?.type === 'boolean') {
    if (value !== undefined) throw new UsageError('optionTakesNoValue', { option: rawName })
  } else if (value === undefined || (!inlineValue && /^-./.test(value)))
    throw new UsageError('optionNeedsValue', { option: rawName })
}

interface OptionToken {
  readonly name: string
  readonly rawName: string
  readonly value?: string | undefined
  readonly inlineValue?: boolean | undefined
}

function refuseOtherOptions(name: string, rawName: string, allowed: readonly OptionName[]): void {
  const allowedNames: readonly string[] = ['help', ...allowed]
  if (allowedNames.includes(name)) return
  const suggestion = suggestName(name, allowedNames)
  throw new UsageError(isAnyOption(name) ? 'otherCommandsOption' : 'unknownOption', {
    option: rawName,
    suggestion: suggestion === undefined ? '' : `--${suggestion}`,
    options: allowed.map((option) => `--${option}`).join(', '),
  })
}

function isAnyOption(name: string): boolean {
  return Object.hasOwn(FLAGS, name)
}

const LEADING_MINUS = /^\u2212(?=[0-9.])/

/** A word such as `-10degC` is a value, not an option. */
function keepNegativeNumbers(words: readonly string[]): string[] {
  const args: string[] = []
  for (const word of words) {
    const before = args.at(-1)
    if (!/^-[0-9.]/.test(word)) args.push(word)
    else if (before !== undefined && takesValue(before)) args[args.length - 1] = `${before}=${word}`
    else args.push(`\u2212${word.slice(1)}`)
  }
  return args
}

function takesValue(word: string): boolean {
  const name = word.slice(2)
  return word.startsWith('--') && isAnyOption(name) && FLAGS[name]?.type === 'string'
}
