import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import type { Toolbox } from '../../src/index.js'
import { readVectors } from '../rules/support/vectors.js'
import { type BaselineSet, baseNames, FOLDER, readBase } from '../walls/support/baselineSets.js'
import { findChanges, type Json } from '../walls/support/jsonChanges.js'
import { judgeBase } from '../walls/support/judgeBase.js'
import { MISTAKES } from './mistakes.js'

/**
 * Wrote `test/fixtures/valid-0.1/` once, of the documents and the code of 0.1. It refuses to write over any file: the
 * baseline is worth nothing once it is frozen anew from the code that it judges. A result that changes on purpose goes
 * into `renames.json`.
 */

if (existsSync(`${FOLDER}/frozen`)) throw new Error(`${FOLDER} is frozen, and is never written again`)

function write(file: string, text: string): void {
  const path = `${FOLDER}/${file}`
  mkdirSync(dirname(path), { recursive: true })
  writeFileSync(path, text, { flag: 'wx' })
}

const compact = (file: string): string => `${JSON.stringify(JSON.parse(readFileSync(file, 'utf8')))}\n`

const listLines = (items: readonly unknown[]): string =>
  `[\n${items.map((item) => JSON.stringify(item)).join(',\n')}\n]\n`

const examples = readdirSync('examples', { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== 'mistakes')
  .map(({ name }) => name)
for (const name of examples)
  for (const file of readdirSync(`examples/${name}`).filter((each) => each.endsWith('.json')))
    write(`documents/${name}/${file}`, compact(`examples/${name}/${file}`))

const FILE_OF = { 'machine-log': 'log', 'service-record': 'record' } as Readonly<Record<string, string>>
for (const file of readdirSync('test/fixtures').filter((each) => each.endsWith('.json'))) {
  const [name = '', kind = ''] = file.split('.')
  write(`documents/${name}/${FILE_OF[kind] ?? kind}.json`, compact(`test/fixtures/${file}`))
}

// A sheet without a log is planned for a machine that has done nothing yet.
for (const base of baseNames()) {
  const files = readBase(base)
  const sheet = files.get('sheet.json')
  if (sheet === undefined || files.has('log.json')) continue
  const { id, revision, machine } = JSON.parse(sheet)
  const log = {
    kind: 'machine-log',
    version: '1.0',
    id: 'one',
    name: 'One',
    sheet: { id, revision },
    identity: { variant: Object.keys(machine.variants)[0] },
    meters: {},
    records: [],
  }
  write(`documents/${base}/log.json`, `${JSON.stringify(log)}\n`)
}

const NAMES = ['sheet.json', 'log.json', 'toolbox.json', 'stock.json', 'procedure.json', 'record.json']

function setsOf(base: string): readonly BaselineSet[] {
  const texts = readBase(base)
  const files = NAMES.filter((file) => texts.has(file))
  const today = '2023-10-06'
  const first: BaselineSet = { name: base, files, today }
  const otherLogs = [...texts.keys()].filter((file) => file.startsWith('log-'))
  const sheet = texts.get('sheet.json')
  const variants = sheet === undefined ? [] : Object.keys(JSON.parse(sheet).machine.variants)
  const wrenches: Toolbox['wrenches'] = JSON.parse(texts.get('toolbox.json') ?? '{}').wrenches ?? {}
  return [
    first,
    ...otherLogs.map((log) => ({
      name: `${base}/${log}`,
      files: files.map((file) => (file === 'log.json' ? log : file)),
      today,
    })),
    ...(sheet === undefined
      ? []
      : [
          { name: `${base}/later`, files, today: '2024-06-01' },
          {
            name: `${base}/tolerance`,
            files,
            today,
            choices: { edition: '2003' as const, tolerancePercent: 10 },
          },
        ]),
    // Whoever lacks a wrench under the older practice, the others having its drive and a mark at their first graduation.
    ...Object.keys(wrenches).map((lacking) => ({
      name: `${base}/without/${lacking}`,
      files,
      today,
      choices: { edition: '2003' as const },
      patch: [
        { op: 'remove' as const, path: `/toolbox.json/wrenches/${lacking}` },
        ...Object.entries(wrenches)
          .filter(([id]) => id !== lacking)
          .flatMap(([id, { scales }]) => [
            {
              op: 'replace' as const,
              path: `/toolbox.json/wrenches/${id}/drive`,
              value: wrenches[lacking]?.drive,
            },
            ...scales.map(({ graduation }, place) => ({
              op: 'replace' as const,
              path: `/toolbox.json/wrenches/${id}/scales/${place}/lowest`,
              value: graduation,
            })),
          ]),
      ],
    })),
    ...(sheet === undefined || !texts.has('stock.json')
      ? []
      : [
          {
            name: `${base}/empty-shelf`,
            files,
            today,
            patch: [{ op: 'replace' as const, path: '/stock.json/containers', value: {} }],
          },
        ]),
    ...variants.map((variant) => ({
      name: `${base}/variant/${variant}`,
      files,
      today,
      patch: [{ op: 'replace' as const, path: '/log.json/identity', value: { variant } }],
    })),
    ...readVectors()
      .filter(({ vector }) => vector.base === `examples/${base}`)
      .map(({ file, vector }) => ({
        name: `${base}/vector/${file.replace('.json', '')}`,
        files: vector.files,
        ...(vector.today === undefined ? {} : { today: vector.today }),
        patch: vector.patch,
      })),
    ...MISTAKES.flatMap((mistake): BaselineSet[] => {
      const { edit } = mistake
      if (mistake.base !== base || 'text' in edit) return []
      const at = (path: string) => `/${edit.file}${path}`
      const patch = edit.patch.map((operation) => ({
        ...operation,
        path: at(operation.path),
        ...('from' in operation && { from: at(operation.from) }),
      }))
      return [{ name: `${base}/mistake/${mistake.folder}`, files: mistake.files, today, patch }]
    }),
  ]
}

for (const base of baseNames()) {
  const sets = setsOf(base)
  write(`sets/${base}.json`, listLines(sets))
  const [first, ...others] = judgeBase(readBase(base), sets)
  if (first === undefined) continue
  const lines = others.map(
    ([name, judged]) => `${JSON.stringify(name)}:${JSON.stringify(findChanges(first[1] as Json, judged))}`,
  )
  write(
    `frozen/${base}.json`,
    `{"first":${JSON.stringify(first[1])},\n"others":{\n${lines.join(',\n')}\n}}\n`,
  )
}
write('renames.json', '{}\n')
