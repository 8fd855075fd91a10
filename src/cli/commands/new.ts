import { isUnit, measureOf, parseQuantity, type Unit } from '../../quantity/index.js'
import { parseDocument } from '../../schema/index.js'
import { blankLog, type SheetOfLog } from '../blanks/blankLog.js'
import { blankSheet } from '../blanks/blankSheet.js'
import { blankStock } from '../blanks/blankStock.js'
import { blankToolbox } from '../blanks/blankToolbox.js'
import type { ExampleUnits } from '../blanks/exampleIn.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import type { Words } from '../parseWords.js'
import { documentsOf, readDocuments } from '../readDocuments.js'
import { readYaml } from '../readYaml.js'
import { reportReading } from '../renderFindings.js'
import { writeOut } from '../writeOut.js'

/** The kinds by the words for them; the first word of each kind is in the help. */
const KINDS = {
  sheet: 'spec-sheet',
  'spec-sheet': 'spec-sheet',
  log: 'machine-log',
  'machine-log': 'machine-log',
  toolbox: 'toolbox',
  stock: 'stock',
} as const

/** The sheet of a log, if none is given: the blank one. */
const BLANK_SHEET: SheetOfLog = {
  id: 'my-machine',
  revision: '1',
  machine: { variants: {} },
  services: { 'gear-oil-change': { gearcases: ['rear'] } },
}

/** `new`: writes a document to fill in. */
export async function runNew({ values, positionals }: Words, io: CliIo): Promise<ExitCode> {
  const kind = readKind(positionals)
  const { gearcases, sheet: sheets = [], unit, out, format } = values
  if (gearcases !== undefined && kind !== 'spec-sheet')
    throw new UsageError('new: --gearcases is for a sheet; a log takes them from its --sheet')
  if (sheets.length > 0 && kind !== 'machine-log') throw new UsageError('new: --sheet is for a log')
  if (out !== undefined && !/\.(ya?ml|json)$/i.test(out))
    throw new UsageError(`--out ${out}: expected a name that ends in .yaml, .yml or .json`)
  if (out !== undefined && (await isTaken(out, io)))
    throw new UsageError(`${out} exists; choose another name, or delete it first`)

  const units = readUnits(unit)
  let text: string
  if (kind === 'spec-sheet') text = sheetFor(gearcases ?? 'rear', units)
  else if (kind === 'machine-log') {
    const read = await readDocuments(sheets, io)
    if (reportReading(read, io)) return 1
    const found = documentsOf(read, (set) => set.sheets)
    if (sheets.length > 0 && found.length !== 1)
      throw new UsageError(`new log: expected one sheet, found ${found.length}`)
    text = blankLog(found[0] ?? BLANK_SHEET, units)
  } else text = kind === 'toolbox' ? blankToolbox(units) : blankStock(units)

  const isJson = format === 'json' || /\.json$/i.test(out ?? '')
  const written = isJson ? `${JSON.stringify(requireYaml(text), null, 2)}\n` : text
  if (out === undefined) io.print(written)
  else {
    await writeOut(out, written, io)
    io.print(`Written: ${out}`)
  }
  return 0
}

function readKind([word = 'sheet', ...others]: readonly string[]): (typeof KINDS)[keyof typeof KINDS] {
  const found = Object.entries(KINDS).find(([name]) => name === word)
  if (found === undefined || others.length > 0)
    throw new UsageError('new: expected one of sheet, log, toolbox, stock')
  return found[1]
}

async function isTaken(path: string, io: CliIo): Promise<boolean> {
  return io.kindOf(path).then(
    () => true,
    () => false,
  )
}

/** The blank sheet of these gearcases; ids that do not make a sheet are refused. */
function sheetFor(word: string, units: ExampleUnits): string {
  const ids = word.split(',').map((id) => id.trim())
  const text = blankSheet(ids, units)
  const read = readYaml(text, 'sheet')
  const sheet = read.ok && read.findings.length === 0 ? parseDocument('spec-sheet', read.value) : undefined
  if (!sheet?.ok || Object.keys(sheet.value.gearcases).join(',') !== ids.join(','))
    throw new UsageError(
      `--gearcases ${word}: expected different ids of lower-case letters, digits and hyphens, such as front,rear`,
    )
  return text
}

function requireYaml(text: string): unknown {
  const read = readYaml(text, 'new')
  if (!read.ok) throw new Error('a blank document is not YAML')
  return read.value
}

/** The units of the examples, by name or as people write them. */
function readUnits(word: string | undefined): ExampleUnits {
  const units: Record<keyof ExampleUnits, Unit> = {
    torque: 'N.m',
    volume: 'mL',
    distance: 'km',
    temperature: 'degC',
  }
  for (const name of word?.split(',').map((one) => one.trim()) ?? []) {
    const read = parseQuantity(`1 ${name}`)
    const unit = isUnit(name) ? name : read.ok ? read.value.unit : undefined
    const measure = unit && measureOf(unit)
    if (unit === undefined || measure === undefined || !Object.hasOwn(units, measure))
      throw new UsageError(
        `--unit ${name}: expected a unit of torque, volume, distance or temperature, such as lbf.ft or qt_us`,
      )
    units[measure as keyof ExampleUnits] = unit
  }
  return units as ExampleUnits
}
