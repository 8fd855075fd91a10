import { join } from 'node:path'
import { dropUndefined } from '../../base/index.js'
import type { CardModel } from '../../card/index.js'
import { paperModel, renderHtml, renderMarkdown, renderText } from '../../card/index.js'
import { en } from '../../message/en/index.js'
import {
  kitContents,
  listVariantDifferences,
  lubeChart,
  nextDue,
  remainingStock,
} from '../../service/index.js'
import type { Stock } from '../../spec/index.js'
import type { MachineFiles } from '../chooseMachine.js'
import { chooseDueOptions, chooseToolboxAndStock, listMachines, planMachine } from '../chooseMachine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { type FileSet, readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { locateFindings, renderFindings, reportReadErrors } from '../renderFindings.js'
import { writeOut } from '../writeOut.js'

/** A paper with the name of its files. */
interface NamedPaper {
  readonly name: string
  readonly paper: CardModel
}

/** `card --paper`: writes one of the small papers for each machine or sheet among the files, or one pick list. */
export async function runPapers(options: Options, io: CliIo): Promise<ExitCode> {
  const { paths, paper, out } = options
  if (out === undefined) throw new UsageError('card: name the folder for the papers with --out FOLDER')
  if (paths.length === 0) throw new UsageError(`card: --paper ${paper} needs files or folders`)
  const sets = await readDocuments(paths, io)
  if (reportReadErrors(sets, io)) return 1
  const papers =
    paper === 'differences'
      ? makeDifferencePages(sets)
      : paper === 'picks'
        ? [makePickList(sets, options, io)]
        : listMachines(sets, options).flatMap((machine) => makeMachinePapers(machine, options, io))
  const files = papers.flatMap(({ name, paper: model }) => [
    [join(out, `${name}.html`), renderHtml(model)] as const,
    [join(out, `${name}.md`), renderMarkdown(model)] as const,
    [join(out, `${name}.txt`), renderText(model)] as const,
  ])
  for (const [path, text] of files) await writeOut(path, text, io)
  io.print(`Papers written: ${files.map(([path]) => path).join(', ')}`)
  return 0
}

/** The label in both orientations, the chart, or the blank record of one machine. */
function makeMachinePapers(machine: MachineFiles, options: Options, io: CliIo): readonly NamedPaper[] {
  const { log, sheet, fileSet } = machine
  switch (options.paper) {
    case 'label': {
      const facts = nextDue({ sheet, log, today: options.today }, chooseDueOptions(options, log))
      return [
        { name: `${log.id}-label`, paper: paperModel(facts, en) },
        { name: `${log.id}-label-upright`, paper: paperModel({ ...facts, upright: true }, en) },
      ]
    }
    case 'chart': {
      const facts = lubeChart({ sheet, identity: log.identity })
      return [{ name: `${log.id}-chart`, paper: paperModel(facts, en) }]
    }
    default: {
      const planned = planMachine(machine, options, chooseToolboxAndStock(fileSet))
      if (!planned.ok) {
        io.printError(renderFindings(locateFindings(planned.findings, [fileSet]), 'text'))
        return []
      }
      return [{ name: `${log.id}-record`, paper: paperModel({ kind: 'record', plan: planned.value }, en) }]
    }
  }
}

function makeDifferencePages(sets: readonly FileSet[]): readonly NamedPaper[] {
  const sheets = sets.flatMap(({ set }) => set.sheets.map(({ document }) => document))
  if (sheets.length === 0) throw new UsageError('card: --paper differences needs a sheet')
  return sheets.map((sheet) => {
    const facts = {
      kind: 'differences',
      machine: dropUndefined({ ...sheet.machine, header: sheet.header }),
      differences: listVariantDifferences(sheet),
    } as const
    return { name: `${sheet.id}-differences`, paper: paperModel(facts, en) }
  })
}

/** Each machine gets the stock left by the machines before it. */
function makePickList(sets: readonly FileSet[], options: Options, io: CliIo): NamedPaper {
  const stocks = new Map<FileSet, Stock>()
  const kits = listMachines(sets, options).flatMap((machine) => {
    const { fileSet } = machine
    const own = chooseToolboxAndStock(fileSet)
    const stock = stocks.get(fileSet) ?? own.stock
    const planned = planMachine(machine, options, stock === undefined ? own : { ...own, stock })
    if (!planned.ok) {
      io.printError(renderFindings(locateFindings(planned.findings, sets), 'text'))
      return []
    }
    if (stock !== undefined) stocks.set(fileSet, remainingStock(stock, planned.value))
    return planned.value.work.length > 0 ? [kitContents(planned.value)] : []
  })
  return {
    name: `picks-${options.today}`,
    paper: paperModel({ kind: 'picks', kits, today: options.today }, en),
  }
}
