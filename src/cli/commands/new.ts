import { parse, stringify } from 'yaml'
import { isUnit, measureOf, parseQuantity, type Unit } from '../../quantity/index.js'
import { parseDocument, writeShort } from '../../schema/index.js'
import type { SpecSheet } from '../../spec/index.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import type { BlankWords } from '../message/blankWords.js'
import { blanks as englishBlanks } from '../message/en/blanks.js'
import type { ParsedWords } from '../parseWords.js'
import { listDocuments, readDocuments, readWholeText } from '../readDocuments.js'
import { readYaml } from '../readYaml.js'
import type { ExampleUnits, LogSheet } from '../renderBlank.js'
import { renderBlankLog, renderBlankSheet, renderBlankStock, renderBlankToolbox } from '../renderBlank.js'
import { locateFindings, renderFindings, reportReadErrors } from '../renderFindings.js'
import { writeOut } from '../writeOut.js'

/** Kinds of document by their names on the command line; help gives the first name of each. */
const KINDS = {
  sheet: 'spec-sheet',
  'spec-sheet': 'spec-sheet',
  log: 'machine-log',
  'machine-log': 'machine-log',
  toolbox: 'toolbox',
  stock: 'stock',
} as const

/** A log without --sheet is made for this blank sheet. */
const BLANK_SHEET: LogSheet = {
  id: 'my-machine',
  revision: '1',
  machine: { variants: {} },
  services: { 'gear-oil-change': { gearcases: ['rear'] } },
}

/** `new`: writes a document to fill in, or a sheet in short notation; a sheet also as a table and from one. */
export async function runNew(words: ParsedWords, io: CommandIo): Promise<ExitCode> {
  const { out, format } = words.values
  if (out !== undefined && !/\.(ya?ml|json|csv)$/i.test(out))
    throw new UsageError('badEnding', { given: `--out ${out}`, endings: '.yaml, .yml, .json, .csv' })
  const isTable = format === 'csv' || /\.csv$/i.test(out ?? '')
  if (isTable && readKind(words.positionals) !== 'spec-sheet') throw new UsageError('onlySheetIsTable')
  const text = await writeDocument(words, io)
  if (text === undefined) return 1
  const isJson = format === 'json' || /\.json$/i.test(out ?? '')
  const output = isTable
    ? (await import('../tables/sheetTable.js')).writeSheetTable(parse(text))
    : isJson
      ? `${JSON.stringify(parse(text), null, 2)}\n`
      : text
  if (out === undefined) io.print(output)
  else {
    await writeOut(out, output, io, { mustBeNew: true })
    io.print(io.words.reports.written({ path: out }))
  }
  return 0
}

/** The document as YAML; undefined if its sheet has errors. */
async function writeDocument(
  { values, positionals }: ParsedWords,
  io: CommandIo,
): Promise<string | undefined> {
  const { gearcases, variants, unit, sheet: sheets = [], from } = values
  const kind = readKind(positionals)
  if (kind !== 'spec-sheet' && (gearcases ?? variants ?? from) !== undefined)
    throw new UsageError('onlyForSheet')
  if (kind !== 'machine-log' && sheets.length > 0) throw new UsageError('onlyForLog')
  const units = readUnits(unit)
  const blanks = 'blanks' in io.words ? io.words.blanks : englishBlanks
  if (from !== undefined) {
    if ((gearcases ?? variants ?? unit) !== undefined) throw new UsageError('notWithFrom')
    const sheet = /\.csv$/i.test(from) ? await readTableSheet(from, io) : await readSheet([from], io)
    return sheet && stringify(writeShort(sheet), { lineWidth: 0 })
  }
  if (kind === 'spec-sheet') return writeBlankSheet(gearcases ?? 'rear', variants, units, blanks)
  if (kind === 'toolbox') return renderBlankToolbox(units, blanks)
  if (kind === 'stock') return renderBlankStock(units, blanks)
  const sheet = sheets.length === 0 ? BLANK_SHEET : await readSheet(sheets, io)
  return sheet && renderBlankLog(sheet, units, blanks)
}

async function readSheet(paths: readonly string[], io: CommandIo): Promise<SpecSheet | undefined> {
  const readSets = await readDocuments(paths, io)
  if (reportReadErrors(readSets, io)) return undefined
  const [sheet, ...others] = listDocuments(readSets, (set) => set.sheets)
  if (sheet === undefined || others.length > 0)
    throw new UsageError('oneSheet', {
      given: 'new',
      count: sheet === undefined ? 0 : others.length + 1,
    })
  return sheet
}

/** The sheet of a table; undefined if it has errors, which are printed with their cells. */
async function readTableSheet(path: string, io: CommandIo): Promise<SpecSheet | undefined> {
  const { readSheetTable } = await import('../tables/sheetTable.js')
  const {
    data,
    findings: tableFindings,
    findCell,
  } = readSheetTable(await readWholeText(path, io), path, io.words.reports)
  const parsed = parseDocument('spec-sheet', data, { name: path })
  const findings = [
    ...tableFindings,
    ...locateFindings(parsed.findings, [], io).map((finding) => {
      const { line = 1, column = '' } = findCell(finding.path) ?? {}
      const { message: text } = finding
      const message = column === '' ? text : io.words.reports.column({ column, message: text })
      return { ...finding, message, position: { line, column: 1 } }
    }),
  ]
  if (findings.length > 0) io.printError(renderFindings(findings, 'text', io))
  return parsed.ok && findings.every(({ severity }) => severity !== 'error') ? parsed.value : undefined
}

function readKind([word = 'sheet', ...others]: readonly string[]): (typeof KINDS)[keyof typeof KINDS] {
  const found = Object.entries(KINDS).find(([name]) => name === word)
  if (found === undefined || others.length > 0)
    throw new UsageError('notOneOf', { given: 'new', expected: 'sheet, log, toolbox, stock' })
  return found[1]
}

/** A blank sheet for these gearcases and variants; bad ids are a usage error. */
function writeBlankSheet(
  gearcases: string,
  variants: string | undefined,
  units: ExampleUnits,
  blanks: BlankWords,
): string {
  const splitIds = (word: string) => word.split(',').map((id) => id.trim())
  const gearcaseIds = splitIds(gearcases)
  const variantIds = variants === undefined ? [] : splitIds(variants)
  const text = renderBlankSheet(gearcaseIds, variantIds, units, blanks)
  const parsed = readYaml(text, 'sheet')
  const sheet =
    parsed.ok && parsed.findings.length === 0 ? parseDocument('spec-sheet', parsed.value) : undefined
  const { gearcases: readGearcases = {}, machine } = sheet?.ok ? sheet.value : {}
  const hasIds = (found: object, ids: readonly string[]) =>
    JSON.stringify(Object.keys(found)) === JSON.stringify(ids)
  if (
    !hasIds(readGearcases, gearcaseIds) ||
    !(variants === undefined || hasIds(machine?.variants ?? {}, variantIds))
  )
    throw new UsageError('badIds', {
      given: `--gearcases ${gearcases}${variants === undefined ? '' : ` --variants ${variants}`}`,
    })
  return text
}

/** The units of the examples, as in documents or as people write them. */
function readUnits(word: string | undefined): ExampleUnits {
  const units: Record<keyof ExampleUnits, Unit> = {
    torque: 'N.m',
    volume: 'mL',
    distance: 'km',
    temperature: 'degC',
  }
  for (const name of word?.split(',').map((unitName) => unitName.trim()) ?? []) {
    const parsed = parseQuantity(`1 ${name}`)
    const unit = isUnit(name) ? name : parsed.ok ? parsed.value.unit : undefined
    const measure = unit && measureOf(unit)
    if (unit === undefined || measure === undefined || !Object.hasOwn(units, measure))
      throw new UsageError('badExampleUnit', { given: `--unit ${name}` })
    units[measure as keyof ExampleUnits] = unit
  }
  return units as ExampleUnits
}
