import { dropUndefined } from '../../src/base/dropUndefined.js'
import {
  cardModel,
  cueList,
  paperModel,
  renderHtml,
  renderMarkdown,
  renderText,
  wallModel,
} from '../../src/v1/card.js'
import { de } from '../../src/v1/message/de.js'
import { en } from '../../src/v1/message/en.js'
import { es } from '../../src/v1/message/es.js'
import { fr } from '../../src/v1/message/fr.js'
import { checkDocuments } from '../../src/v1/rules.js'
import { lubeChart, nextDue, planVisit, wallFacts } from '../../src/v1/service.js'
import { parseMachineLog, parseSpecSheet, parseStock, parseToolbox } from '../../src/v1/spec.js'

/** The documents of one example machine, as data. */
export interface MachineInput {
  readonly name: string
  readonly sheet: unknown
  readonly log: unknown
  readonly toolbox: unknown
  readonly stock: unknown
}

const TODAY = '2023-10-06'
const DUE = { soon: { days: 14 }, staleAfter: { days: 30 }, severity: 'normal' } as const

function requireValue<T>(result: { readonly ok: true; readonly value: T } | { readonly ok: false }): T {
  if (!result.ok) throw new Error(JSON.stringify(result))
  return result.value
}

/** Plans the visit of each machine and writes its papers in every language: the name of each text, and the text. */
export function writeEverything(machines: readonly MachineInput[]): readonly (readonly [string, string])[] {
  return machines.flatMap(({ name, ...documents }) => {
    const sheet = requireValue(parseSpecSheet(documents.sheet))
    const log = requireValue(parseMachineLog(documents.log))
    const toolbox = requireValue(parseToolbox(documents.toolbox))
    const stock = requireValue(parseStock(documents.stock))
    const findings = checkDocuments({
      sheets: [{ document: sheet }],
      logs: [{ document: log }],
      toolboxes: [{ document: toolbox }],
      stocks: [{ document: stock }],
      procedures: [],
      records: [],
    })
    const planned = planVisit(
      { sheet, log, toolbox, stock, today: TODAY, ambient: { value: 6, unit: 'degC' } },
      { services: 'due', due: DUE, iso6789: '2017' },
    )
    if (!planned.ok) throw new Error(JSON.stringify(planned.findings))
    const plan = planned.value
    const wall = requireValue(
      wallFacts(dropUndefined({ sheet, identity: log.identity, toolbox, stock }), { iso6789: '2017' }),
    )
    const papers = [en, de, es, fr].flatMap((catalogue) =>
      [
        cardModel(planned, catalogue),
        wallModel(wall, catalogue),
        paperModel({ kind: 'cues', plan, cues: cueList(plan, catalogue) }, catalogue),
        paperModel(nextDue({ sheet, log, today: TODAY }, DUE), catalogue),
        paperModel(lubeChart({ sheet, identity: log.identity }), catalogue),
      ].flatMap((card) =>
        [renderHtml, renderMarkdown, renderText].map(
          (render) =>
            [`${name}, ${card.extent}, ${catalogue.language}, ${render.name}`, render(card)] as const,
        ),
      ),
    )
    return [
      [`${name}, findings`, JSON.stringify(findings)] as const,
      [`${name}, plan`, JSON.stringify(planned)] as const,
      ...papers,
    ]
  })
}
