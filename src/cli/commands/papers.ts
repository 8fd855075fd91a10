import { join } from 'node:path'
import { dropUndefined, type Finding } from '../../base/index.js'
import type { CardModel, PaperFacts } from '../../card/index.js'
import { paperModel, renderHtml, renderMarkdown, renderText } from '../../card/index.js'
import { listVariantDifferences, lubeChart, nextDue } from '../../service/index.js'
import type { MachineFiles } from '../chooseMachine.js'
import { chooseDueOptions, chooseToolboxAndStock, listMachines, planMachine } from '../chooseMachine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import { collectKits, writeUndecided } from '../collectKits.js'
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
export async function runPapers(options: Options, io: CommandIo): Promise<ExitCode> {
  const { paths, paper, out } = options
  if (out === undefined) throw new UsageError('namePaperFolder')
  if (paths.length === 0) throw new UsageError('paperNeedsFiles', { paper })
  const sets = await readDocuments(paths, io)
  if (reportReadErrors(sets, io)) return 1
  const { papers, findings } = makePapers(sets, options, io)
  if (findings.length > 0) io.printError(renderFindings(locateFindings(findings, sets, io), 'text', io))
  const files = papers.flatMap(({ name, paper: model }) => [
    [join(out, `${name}.html`), renderHtml(model)] as const,
    [join(out, `${name}.md`), renderMarkdown(model)] as const,
    [join(out, `${name}.txt`), renderText(model)] as const,
  ])
  for (const [path, text] of files) await writeOut(path, text, io)
  if (files.length > 0)
    io.print(io.words.reports.papersWritten({ paths: files.map(([path]) => path).join(', ') }))
  return findings.length > 0 ? 1 : 0
}

/** The papers, and the findings of machines without one. */
interface MadePapers {
  readonly papers: readonly NamedPaper[]
  readonly findings: readonly Finding[]
}

function makePapers(sets: readonly FileSet[], options: Options, io: CommandIo): MadePapers {
  if (options.paper === 'differences') return { papers: makeDifferencePages(sets, io), findings: [] }
  if (options.paper === 'picks') {
    const { kits, undecidedMachines, findings } = collectKits(sets, options)
    for (const line of writeUndecided(undecidedMachines, io)) io.printError(line)
    const facts = { kind: 'picks', kits, today: options.today } as const
    return { papers: [{ name: `picks-${options.today}`, paper: paperModel(facts, io.catalogue) }], findings }
  }
  const made = listMachines(sets, options).map((machine) => makeMachinePapers(machine, options, io))
  return {
    papers: made.flatMap(({ papers }) => papers),
    findings: made.flatMap(({ findings }) => findings),
  }
}

/** The label in both orientations, the chart, or the blank record of one machine. */
function makeMachinePapers(machine: MachineFiles, options: Options, io: CommandIo): MadePapers {
  const { log, sheet, fileSet } = machine
  const make = (ending: string, facts: PaperFacts): NamedPaper => ({
    name: `${log.id}-${ending}`,
    paper: paperModel(facts, io.catalogue),
  })
  switch (options.paper) {
    case 'label': {
      const facts = nextDue({ sheet, log, today: options.today }, chooseDueOptions(options, log))
      return {
        papers: [make('label', facts), make('label-upright', { ...facts, upright: true })],
        findings: [],
      }
    }
    case 'chart':
      return { papers: [make('chart', lubeChart({ sheet, identity: log.identity }))], findings: [] }
    default: {
      const planned = planMachine(machine, options, chooseToolboxAndStock(fileSet))
      return planned.ok
        ? { papers: [make('record', { kind: 'record', plan: planned.value })], findings: [] }
        : { papers: [], findings: planned.findings }
    }
  }
}

function makeDifferencePages(sets: readonly FileSet[], io: CommandIo): readonly NamedPaper[] {
  const sheets = sets.flatMap(({ set }) => set.sheets.map(({ document }) => document))
  if (sheets.length === 0) throw new UsageError('differencesNeedSheet')
  return sheets.map((sheet) => {
    const facts = {
      kind: 'differences',
      machine: dropUndefined({ ...sheet.machine, header: sheet.header }),
      differences: listVariantDifferences(sheet),
    } as const
    return { name: `${sheet.id}-differences`, paper: paperModel(facts, io.catalogue) }
  })
}
