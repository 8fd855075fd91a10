import type { Element, Nodes } from 'hast'
import { fromHtml } from 'hast-util-from-html'
import type { Nodes as MarkdownNodes } from 'mdast'
import { fromMarkdown } from 'mdast-util-from-markdown'
import { gfmFromMarkdown } from 'mdast-util-gfm'
import { gfm } from 'micromark-extension-gfm'
import { expect, it } from 'vitest'
import { shortenCard } from '../../src/card/shortenCard.js'
import { joinSpans } from '../../src/card/spans.js'
import { writeCsv } from '../../src/exchange/writeCsv.js'
import type { CardModel, Line } from '../../src/v1/card.js'
import {
  cardModel,
  cardStyle,
  cueList,
  paperModel,
  renderHtml,
  renderMarkdown,
  renderText,
  renderWebVtt,
  slipModel,
  wallModel,
} from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import {
  kitContents,
  listVariantDifferences,
  lubeChart,
  nextDue,
  ownerSlip,
  planVisit,
  wallFacts,
} from '../../src/v1/service.js'
import {
  type MachineLog,
  type ProcedureDocument,
  parseDocument,
  type ServiceRecord,
  type SpecSheet,
  type Stock,
  type Toolbox,
} from '../../src/v1/spec.js'
import { requestExample } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'

// Hostile text in every free-text field of every document, on every paper and in every format.

const KINDS = ['sheet', 'log', 'toolbox', 'stock', 'procedure', 'record'] as const
interface Documents {
  readonly sheet: SpecSheet
  readonly log: MachineLog
  readonly toolbox: Toolbox
  readonly stock: Stock
  /** A writer's procedure, and the record of a visit. */
  readonly procedure: ProcedureDocument
  readonly record: ServiceRecord
}
type Path = readonly string[]

const ATTACKS: readonly ((token: string) => string)[] = [
  (token) => `=1+1|${token}<script>alert(1)</script><img src=x onerror=alert(1)>"'</style></svg>&lt;b&gt;`,
  (token) =>
    `@${token} [a](javascript:alert(1)) ![b](x) <b> \`c\` | 00:00:00.000 --> 99:00:00.000 # https://evil.example`,
  (token) => `-${token}\u202egnp\u001b[31m\u2028\nNOTE\n\n# forged`,
]

function listStrings(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value === 'string') return [path]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, child]) => listStrings(child, [...path, key]))
}

function replaceAt<Value>(value: Value, [key, ...rest]: Path, text: string): Value {
  if (key === undefined) return text as Value
  const copy = Array.isArray(value) ? [...value] : { ...value }
  const copiedObject = copy as Record<string, unknown>
  copiedObject[key] = replaceAt(copiedObject[key], rest, text)
  return copy as Value
}

const isAccepted = (document: unknown) => parseDocument('any', document).ok

/** Every free-text field: the documents can be read with another text in it. */
const findFields = (documents: Documents) =>
  KINDS.flatMap((kind) =>
    listStrings(documents[kind])
      .filter((path) => isAccepted(replaceAt(documents[kind], path, 'x <y>')))
      .map((path) => ({ kind, path })),
  )

/** The documents with the attack in every such field, each with its own token. */
function makeHostile(
  documents: Documents,
  fields: ReturnType<typeof findFields>,
  write: (token: string) => string,
) {
  const hostileDocuments: Record<string, unknown> = { ...documents }
  for (const [index, { kind, path }] of fields.entries())
    hostileDocuments[kind] = replaceAt(hostileDocuments[kind], path, write(tokenOf(index)))
  for (const kind of KINDS) expect(isAccepted(hostileDocuments[kind]), kind).toBe(true)
  const { sheet, log, procedure, record, ...others } = hostileDocuments as unknown as Documents
  // The documents name the revision of their sheet.
  const named = { id: sheet.id, revision: sheet.revision }
  return {
    ...others,
    sheet,
    log: { ...log, sheet: named },
    procedure: { ...procedure, sheet: named },
    record: { ...record, sheet: named },
  }
}

const tokenOf = (index: number) => `q${index}z`

function makePapers({ sheet, log, toolbox, stock, procedure, record }: Documents): readonly CardModel[] {
  const { today, due, ambient } = requestExample('tind-4')
  const services = Object.keys(sheet.services).slice(0, 1)
  const facts = { sheet, log, toolbox, stock, today, ...(ambient !== undefined && { ambient }) }
  const planned = planVisit(facts, { services, due, iso6789: '2017' })
  if (!planned.ok) throw new Error(JSON.stringify(planned.findings))
  const plan = planned.value
  const differences = listVariantDifferences(sheet)
  const wall = wallFacts({ sheet, identity: log.identity, toolbox, stock }, { iso6789: '2017' })
  const card = cardModel(planned, en)
  const written = planVisit({ ...facts, procedure }, { services: procedure.services, due, iso6789: '2017' })
  if (!written.ok) throw new Error(JSON.stringify(written.findings))
  const serviced = { ...log, records: [...log.records, record] }
  return [
    ...[
      cardModel(written, en),
      paperModel({ kind: 'cues', plan: written.value, cues: cueList(written.value, en) }, en),
    ],
    slipModel(ownerSlip({ sheet, log: serviced, today, faults: [] }, { due }), en),
    ...[card, shortenCard(card)],
    ...(log.records.length === 0
      ? []
      : [slipModel(ownerSlip({ sheet, log, today, faults: [] }, { due }), en)]),
    ...(wall.ok ? [wallModel(wall.value, en)] : []),
    paperModel({ kind: 'cues', plan, cues: cueList(plan, en, differences) }, en),
    paperModel({ kind: 'record', plan }, en),
    paperModel(nextDue({ sheet, log, today }, due), en),
    paperModel(lubeChart({ sheet, identity: log.identity }), en),
    paperModel({ kind: 'picks', kits: [kitContents(plan), kitContents(plan)], today }, en),
    paperModel(
      { kind: 'differences', machine: { ...sheet.machine, header: sheet.header ?? '' }, differences },
      en,
    ),
  ]
}

const makeCaptions = ({ sheet, log, toolbox, stock }: Documents) => {
  const { today, due } = requestExample('tind-4')
  const planned = planVisit(
    { sheet, log, toolbox, stock, today },
    { services: Object.keys(sheet.services).slice(0, 1), due, iso6789: '2017' },
  )
  if (!planned.ok) throw new Error(JSON.stringify(planned.findings))
  const cues = cueList(planned.value, en, listVariantDifferences(sheet))
  return renderWebVtt(
    cues,
    cues.map((_cue, index) => index * 4000),
  )
}

const elementsOf = (node: Nodes): readonly Element[] => [
  ...(node.type === 'element' ? [node] : []),
  ...('children' in node ? node.children.flatMap((child) => elementsOf(child)) : []),
]
const kindsOf = (node: MarkdownNodes): readonly string[] => [
  node.type,
  ...('children' in node ? node.children.flatMap((child) => kindsOf(child)) : []),
]
function linesOf(value: unknown): readonly Line[] {
  if (
    Array.isArray(value) &&
    value.length > 0 &&
    value.every((candidate) => typeof candidate?.text === 'string')
  )
    return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(linesOf) : []
}

const plainDocuments = (folder: string): Documents => {
  const { sheet, log, toolbox, stock } = requestExample(folder)
  if (toolbox === undefined || stock === undefined) throw new Error(`${folder} has no toolbox or no stock`)
  const procedure = readExample(folder, 'procedure')
  // Only one example has a record.
  return { sheet, log, toolbox, stock, procedure, record: readExample('tind-4', 'record') }
}

const tagsOf = (html: string) => new Set(elementsOf(fromHtml(html)).map(({ tagName }) => tagName))
/** Only the syntax, without the reader's later step that links escaped addresses. */
const EXTENSIONS = gfmFromMarkdown().map((extension) => ({ ...extension, transforms: [] }))

/** Content that each format must not have. Its text is searched for the tokens. */
const SINKS: Readonly<Record<string, (papers: readonly CardModel[], documents: Documents) => string>> = {
  'HTML and SVG': (papers) => {
    const written = papers.map((paper) => renderHtml(paper))
    for (const { tagName, properties } of written.flatMap((html) => elementsOf(fromHtml(html)))) {
      expect(TAGS).toContain(tagName)
      expect(Object.keys(properties).join(' ')).not.toMatch(/\b(on[A-Z]\w*|href|src|style|srcDoc|action)\b/)
    }
    return written.join()
  },
  Markdown: (papers) => {
    const written = papers.map(renderMarkdown)
    for (const markdown of written) {
      const kinds = kindsOf(fromMarkdown(markdown, { extensions: [gfm()], mdastExtensions: EXTENSIONS }))
      for (const kind of ['link', 'image', 'html', 'code', 'inlineCode', 'definition', 'emphasis'])
        expect(kinds).not.toContain(kind)
      expect(kinds.filter((kind) => kind === 'heading').length).toBeLessThan(120)
    }
    return written.join()
  },
  terminal: (papers) => {
    const written = papers.map((paper) => renderText(paper)).join('')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: it must find control characters
    expect(written).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028-\u202e\u2066-\u2069]|\p{Cs}/u)
    expect(written).not.toMatch(/^(NOTE|# forged)$/m)
    return written
  },
  CSV: (papers) => {
    const cells = papers.flatMap(linesOf).map(joinSpans)
    const written = writeCsv(cells.map((cell) => [cell]))
    for (const row of written.split('\r\n')) expect(row).not.toMatch(/^"?\s*[=+\-@]/)
    return written
  },
  WebVTT: (_papers, documents) => {
    const written = makeCaptions(documents)
    for (const line of written.split('\n'))
      if (line.includes('-->')) expect(line).toMatch(/^[0-9:.]{12} --> [0-9:.]{12}$/)
    expect(written).not.toMatch(/[<\u202e]|^NOTE/m)
    expect(written).not.toContain('\u001b')
    return written.replace(/\n/g, '')
  },
}
const TAGS = new Set(
  [...makePapers(plainDocuments('tind-4'))].flatMap((paper) => [...tagsOf(renderHtml(paper))]),
)

it('hostile text in any field is inert on every paper and in every form', () => {
  const documents = plainDocuments('tind-4')
  const fields = findFields(documents)
  const reached: Record<string, Set<number>> = {}
  let paperCount = 0
  for (const write of ATTACKS) {
    const hostileDocuments = makeHostile(documents, fields, write)
    const papers = makePapers(hostileDocuments)
    paperCount = papers.length
    for (const paper of papers) expect(cardStyle(paper)).not.toMatch(/url\(|@import|q[0-9]+z/)
    for (const [sink, check] of Object.entries(SINKS)) {
      const written = check(papers, hostileDocuments)
      const found = fields.flatMap((_field, index) => (written.includes(tokenOf(index)) ? [index] : []))
      reached[sink] = new Set([...(reached[sink] ?? []), ...found])
    }
  }
  const counts = Object.entries(reached).map(([sink, found]) => `${sink} ${found.size}`)
  console.log(
    `${fields.length} fields x ${counts.length} sinks x ${paperCount} papers x ${ATTACKS.length} texts; fields that reach a sink: ${counts.join(', ')}`,
  )
  expect(fields.length).toBeGreaterThan(50)
  for (const sink of ['HTML and SVG', 'Markdown', 'terminal', 'CSV'])
    expect(reached[sink]?.size).toBeGreaterThan(30)
})
