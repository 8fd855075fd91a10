import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { Readable } from 'node:stream'
import { Ajv2020 } from 'ajv/dist/2020.js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applyPatch, type PatchOperation } from '../../src/base/applyPatch.js'
import { joinPointer } from '../../src/base/pointers.js'
import { shortenCard } from '../../src/card/shortenCard.js'
import { judgeLogLines } from '../../src/cli/judgeLogLines.js'
import { runCommand } from '../../src/cli/runCommand.js'
import { cardModel, cueList, type PaperFacts, paperModel, slipModel, wallModel } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import { kitContents, ownerSlip, wallFacts } from '../../src/v1/service.js'
import { planExamples } from '../card/planExamples.js'
import { readVectors, runVector } from '../rules/support/vectors.js'
import { planOf } from '../service/goodMachines/goodMachine.js'
import { GOOD_MACHINES } from '../service/goodMachines/index.js'
import { law } from '../support/law.js'
import { memoryIo } from '../support/memoryIo.js'
import { MISTAKES } from '../support/mistakes.js'
import { printJson } from '../support/printJson.js'
import { readExample } from '../support/readExample.js'
import { makeResultSchemas, RESULT_NAMES } from '../support/resultSchemas.js'
import type { ResultName } from '../support/resultTypes.js'
import { mistakeFolder } from '../support/writeMistakes.js'

interface Result {
  readonly kind: ResultName
  readonly what: string
  readonly value: unknown
}

const fileOf = (name: ResultName): string => readFileSync(`schemas/v1/${name}.json`, 'utf8')
const schemas = Object.fromEntries(RESULT_NAMES.map((name) => [name, JSON.parse(fileOf(name))]))
const ajv = new Ajv2020({ strict: true })
const judges = new Map(RESULT_NAMES.map((name) => [name, ajv.compile(schemas[name])]))
const isAccepted = ({ kind, value }: Pick<Result, 'kind' | 'value'>) => judges.get(kind)?.(value) === true

function explain(result: Result): string {
  isAccepted(result)
  return JSON.stringify(judges.get(result.kind)?.errors).slice(0, 300)
}

/** What other programs read: the value as JSON. */
const asResult = (kind: ResultName, what: string, value: unknown): Result => ({
  kind,
  what,
  value: JSON.parse(JSON.stringify(value)),
})

const examples = planExamples().map(([what, { findings, ...value }]) => ({ what, value, findings }))
const machines = Object.entries(GOOD_MACHINES).map(([what, machine]) => ({ what, ...planOf(machine) }))
const plans = [...examples, ...machines]

function planResults(): readonly Result[] {
  return plans.flatMap(({ what, value, findings }) => {
    const card = cardModel({ value, findings }, en)
    const papers: readonly PaperFacts[] = [
      { kind: 'record', plan: value } as const,
      { kind: 'picks', kits: [kitContents(value)], today: value.today } as const,
      { kind: 'cues', plan: value, cues: cueList(value, en) } as const,
    ]
    return [
      asResult('visit-plan', what, value),
      asResult('service-card', what, card),
      asResult('service-card', `${what}, short`, shortenCard(card)),
      ...papers.map((facts) => asResult('service-card', `${what}, ${facts.kind}`, paperModel(facts, en))),
      ...findings.map((finding) => asResult('finding', what, finding)),
    ]
  })
}

function sheetResults(): readonly Result[] {
  const due = { soon: { days: 14 }, staleAfter: { days: 30 }, severity: 'normal' } as const
  return ['tind-4', 'bud-3', 'kvist-2', 'reach-55', 'acre-26'].flatMap((folder) => {
    const [sheet, log, toolbox] = [
      readExample(folder, 'sheet'),
      readExample(folder, 'log'),
      readExample(folder, 'toolbox'),
    ]
    const slips =
      log.records.length === 0 ? [] : [ownerSlip({ sheet, log, today: '2023-10-06', faults: [] }, { due })]
    const wall = wallFacts({ sheet, toolbox, identity: log.identity }, { iso6789: '2017' })
    if (!wall.ok) throw new Error(`no wall card for ${folder}`)
    return [
      ...slips.map((slip) => asResult('service-card', `${folder}, slip`, slipModel(slip, en))),
      asResult('service-card', `${folder}, wall`, wallModel(wall.value, en)),
    ]
  })
}

async function dueResults(): Promise<readonly Result[]> {
  const goodMachines = Object.values(GOOD_MACHINES)
  const folders = ['tind-4', 'bud-3', 'kvist-2', 'reach-55', 'acre-26']
  const sheets = [
    ...folders.map((folder) => readExample(folder, 'sheet')),
    ...goodMachines.map(({ sheet }) => sheet),
  ]
  const logs = [...folders.map((folder) => readExample(folder, 'log')), ...goodMachines.map(({ log }) => log)]
  const { meters: _meters, ...logWithoutMeters } = logs[0] ?? { meters: {} }
  const lines = [...logs, logWithoutMeters, { ...logs[1], sheet: { id: 'x', revision: '1' } }].map((log) =>
    JSON.stringify(log),
  )
  const io = memoryIo()
  const chooseOptions = () => ({ soon: { days: 14 }, staleAfter: { days: 30 }, severity: 'normal' }) as const
  const input = Readable.from([[...lines, 'not json'].join('\n')])
  await judgeLogLines({
    input,
    output: io.openOutput(),
    sheets,
    today: '2023-10-06',
    catalogue: en,
    chooseOptions,
  })
  const answers = io.out.flatMap((text) => text.split('\n'))
  return answers.map((line, index) => ({
    kind: 'due-line',
    what: `line ${index + 1}`,
    value: JSON.parse(line),
  }))
}

async function findingResults(): Promise<readonly Result[]> {
  const vectors = readVectors().flatMap(({ file, vector }) =>
    runVector(vector).map((finding) => asResult('finding', file, finding)),
  )
  const printed = await Promise.all(
    MISTAKES.map(async ({ name, command }) => {
      const io = memoryIo()
      await runCommand([command, mistakeFolder(name), '--today', '2023-10-06', '--format', 'json'], io)
      const { findings, plan } = JSON.parse(io.out.join('\n'))
      const found: readonly Result[] = findings.map((value: unknown) => ({
        kind: 'finding',
        what: name,
        value,
      }))
      return plan ? [...found, { kind: 'visit-plan' as const, what: name, value: plan }] : found
    }),
  )
  return [...vectors, ...printed.flat()]
}

const results = Promise.all([planResults(), sheetResults(), dueResults(), findingResults()]).then((all) =>
  all.flat(),
)

describe('the schemas of results', () => {
  it('are what the interfaces say today', { timeout: 60_000 }, () => {
    const writtenSchemas = [...makeResultSchemas()].map(
      ([name, schema]) => [name, printJson(schema)] as const,
    )
    expect(writtenSchemas.map(([name]) => name)).toEqual(RESULT_NAMES)
    for (const [name, text] of writtenSchemas)
      expect(text === fileOf(name), `${name}: run npm run generate`).toBe(true)
  })

  it('accept every plan, card, due line and finding of the examples, good machines, vectors and mistakes', async () => {
    const all = await results
    const counts = RESULT_NAMES.map((name) => all.filter(({ kind }) => kind === name).length)
    console.log(RESULT_NAMES.map((name, index) => `${name}: ${counts[index]}`).join(', '))
    expect(Math.min(...counts)).toBeGreaterThan(15)
    const refusedResults = all.filter((result) => !isAccepted(result))
    expect(refusedResults.map((result) => `${result.kind} ${result.what}: ${explain(result)}`)).toEqual([])
  })

  it('refuse a result without a required key, with an unknown key, or with a value of another type', async () => {
    const all = await results
    law(
      300,
      fc.constantFrom(...all),
      fc.nat(),
      fc.constantFrom('remove', 'add', 'type'),
      (result, pick, how) => {
        // Params of findings and texts by a name of the manual may have any key.
        const objects = listObjects(result.value).filter(
          (path) => !/\/(params|sources|cures|pictures)\b/.test(path),
        )
        const path = objects[pick % objects.length] ?? ''
        const [root = ''] = Object.keys(Object(result.value)).filter((key) =>
          (schemas[result.kind].required as readonly string[]).includes(key),
        )
        const fix: PatchOperation =
          how === 'add'
            ? { op: 'add', path: `${path}/zz`, value: 1 }
            : how === 'remove'
              ? { op: 'remove', path: `/${root}` }
              : { op: 'replace', path: `/${root}`, value: [true] }
        expect(isAccepted({ ...result, value: applyPatch(result.value, [fix]) })).toBe(false)
      },
    )
  })

  it("Debian's jsonschema says the same", { timeout: 120_000 }, async (ctx) => {
    const python = '/usr/bin/python3'
    if (spawnSync(python, ['-c', 'import jsonschema']).status !== 0) {
      if (process.env['DRIVETRAIN_REQUIRE_TOOLS'] === '1') throw new Error('python3-jsonschema is missing')
      console.log('outside tool skipped: python3-jsonschema')
      return ctx.skip()
    }
    const all = await results
    const samples = RESULT_NAMES.flatMap((name) => all.filter(({ kind }) => kind === name).slice(0, 12))
    const invalidResults = samples.map((result) => ({ ...result, value: { ...Object(result.value), zz: 1 } }))
    const script = `import json, sys, jsonschema
given = json.load(sys.stdin)
for schema in given["schemas"].values(): jsonschema.Draft202012Validator.check_schema(schema)
judges = {kind: jsonschema.Draft202012Validator(schema) for kind, schema in given["schemas"].items()}
print(json.dumps([judges[one["kind"]].is_valid(one["value"]) for one in given["cases"]]))`
    const cases = [...samples, ...invalidResults]
    const run = spawnSync(python, ['-c', script], {
      input: JSON.stringify({ schemas, cases }),
      encoding: 'utf8',
    })
    expect(run.stderr).toBe('')
    expect(JSON.parse(run.stdout)).toEqual([...samples.map(() => true), ...invalidResults.map(() => false)])
  })
})

/** Pointers to the objects of a value. */
function listObjects(value: unknown, path: readonly string[] = []): readonly string[] {
  if (typeof value !== 'object' || value === null) return []
  const below = Object.entries(value).flatMap(([key, child]) => listObjects(child, [...path, key]))
  return Array.isArray(value) ? below : [joinPointer(path), ...below]
}
