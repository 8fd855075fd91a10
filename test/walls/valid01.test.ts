import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { afterAll, describe, expect, it } from 'vitest'
import { baseNames, FOLDER, readBase, readFrozen, readSets } from './support/baselineSets.js'
import { type Difference, findDifferences, isAccepted, reportDifferences } from './support/compareBaseline.js'
import { applyChanges, isSame, type Json } from './support/jsonChanges.js'
import { judgeBase } from './support/judgeBase.js'
import { lostSteps } from './support/lostSteps.js'
import { omitAddedKeys, type Rename, refuseFrozen, renameFrozen } from './support/renames.js'

const sections: Readonly<Record<string, readonly Rename[]>> = JSON.parse(
  readFileSync(`${FOLDER}/renames.json`, 'utf8'),
)
const table = Object.values(sections).flat()
const used = new Set<Rename>()
const unexplained: Difference[] = []

function compareBase(base: string) {
  const frozen = readFrozen(base)
  const judgedSets = [...judgeBase(readBase(base), readSets(base))]
  const first = renameFrozen(frozen.first, table, used)
  const lost: string[] = []
  const differences = judgedSets.flatMap(([set, result], place) => {
    const changes = place === 0 ? [] : frozen.others[set]
    if (changes === undefined) throw new Error(`${set} is not frozen`)
    const before =
      place === 0
        ? first
        : refuseFrozen(set, renameFrozen(applyChanges(frozen.first, changes), table, used), table, used)
    lost.push(...lostSteps(applyChanges(frozen.first, changes), result).map((step) => `${set} ${step}`))
    const after = omitAddedKeys(result, table, used)
    return isSame(before, after) ? [] : findDifferences(set, before, after)
  })
  return {
    sets: judgedSets.length,
    lost,
    differences: differences.filter((difference) => !isAccepted(difference, table, used)),
  }
}

/** Every file of the baseline except the table, in the order of their names. */
function hashBaseline(): string {
  const hash = createHash('sha256')
  const files = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' }).map((file) =>
    file.replaceAll('\\', '/'),
  )
  for (const file of files.filter((name) => /^[a-z]+\/.*\.json$/.test(name)).sort())
    hash.update(`${file}\n`).update(readFileSync(`${FOLDER}/${file}`))
  return hash.digest('hex')
}

describe('what was valid under 0.1', () => {
  afterAll(() => {
    if (unexplained.length > 0)
      console.log(
        `${unexplained.length} differences from 0.1. A bug, or a line for ${FOLDER}/renames.json:\n\n${reportDifferences(unexplained)}`,
      )
  })

  it.each(baseNames())('%s: reads, checks and plans as it did', { timeout: 600_000 }, (base) => {
    const { sets, lost, differences } = compareBase(base)
    unexplained.push(...differences)
    expect(sets).toBe(1 + Object.keys(readFrozen(base).others).length)
    expect(differences.length, 'differences, listed at the end').toBe(0)
    expect(lost).toEqual([])
  })

  it('is never frozen again', () => {
    expect(hashBaseline()).toBe('961183728e88e96882f3d47e3c9973a99bbbcf883985536b59ea59c6702a6774')
  })

  it('has no rename that changes nothing or gives no reason', () => {
    const unusedRenames = table.filter((entry) => !used.has(entry) || !/\w+ \w+/.test(entry.why))
    expect(unusedRenames).toEqual([])
  })
})

describe('the comparison', () => {
  const before: Json = {
    a: [{ code: 'x/y', params: { n: 1 } }],
    verdict: { kind: 'fits' },
    old: '/figures/1',
  }
  const compare = (after: Json, ...entries: readonly Rename[]): readonly string[] => {
    const seen = new Set<Rename>()
    return findDifferences(
      'set/one',
      renameFrozen(before, entries, seen),
      omitAddedKeys(after, entries, seen),
    )
      .filter((difference) => !isAccepted(difference, entries, seen))
      .map(({ path }) => path)
  }
  const why = 'as a trial'

  it('sees a number, a code, a pointer, a key and an item that changed', () => {
    expect(compare(before)).toEqual([])
    expect(
      compare({
        a: [{ code: 'x/z', params: { n: 2 } }, 5],
        verdict: { kind: 'fits', more: 1 },
        old: '/figures/2',
      }),
    ).toEqual(['/a/0/code', '/a/0/params/n', '/a/1', '/verdict/more', '/old'])
    expect(compare({ a: [], verdict: {} })).toEqual(['/a/0', '/verdict/kind', '/old'])
  })

  it('finds a step that a plan lost, but not a new order', () => {
    const plan = (...steps: readonly Json[]): Json => ({ plans: { due: { value: { steps } } } })
    const drain = { id: 'a', do: 'let drain', part: { path: '/gearcases/front' }, figures: {} }
    const warmStep = { id: 'b', do: 'warm the oil', figures: {} }
    const carryStep = { id: 'c', do: 'carry to level ground', figures: {} }
    expect(
      lostSteps(plan(warmStep, drain), plan(drain, carryStep, { ...warmStep, id: 'z', cautions: [] })),
    ).toEqual([])
    expect(lostSteps(plan(drain, drain), plan(drain))).toHaveLength(1)
    expect(lostSteps(plan(drain), plan({ ...drain, figures: { place: '/figures/1' } }))).toHaveLength(1)
    expect(lostSteps(plan(warmStep, drain), plan(drain))).toHaveLength(1)
    expect(lostSteps(plan(warmStep, drain), plan(carryStep, drain))).toEqual([])
  })

  it('accepts a set that is now refused only with the finding of its old rule', () => {
    const found = { code: 'x/y', severity: 'error', path: '/a', params: { n: 1 } }
    const frozen: Json = {
      read: { 'a.json': { ok: true, findings: [], value: [] } },
      check: [found],
      records: {},
      due: [],
      plans: {},
    }
    const entry: Rename = { set: 'set/one', refused: 'a.json', by: 'x/y', why }
    const used = new Set<Rename>()
    const expected = { read: { 'a.json': { ok: false, findings: [found] } }, check: [], records: {} }
    expect(refuseFrozen('set/one', frozen, [entry], used)).toEqual(expected)
    expect([...used]).toEqual([entry])
    expect(refuseFrozen('set/other', frozen, [entry], new Set())).toBe(frozen)
    const unusedRenames = new Set<Rename>()
    refuseFrozen('set/one', { ...frozen, check: [] }, [entry], unusedRenames)
    expect(unusedRenames.size).toBe(0)
  })

  it('takes each kind of entry', () => {
    const after = { a: [{ code: 'x/z', params: { n: 2 } }], verdict: 'held', more: 1 }
    const entries: readonly Rename[] = [
      { code: 'x/y', to: 'x/z', why },
      { moved: 'verdict/kind', to: 'verdict', at: '', why },
      { value: 'fits', to: 'held', key: 'verdict', why },
      { key: 'old', dropped: true, at: '', why },
      { key: 'more', added: true, why },
      { set: 'set/*', path: '/a/*/params/n', from: 1, to: 2, why },
    ]
    expect(compare(after, ...entries)).toEqual([])
    for (const left of entries.keys()) expect(compare(after, ...entries.toSpliced(left, 1))).not.toEqual([])
    const moved = { ...(before as object), old: undefined, next: '/leaves/1' }
    expect(
      compare(
        JSON.parse(JSON.stringify(moved)),
        { key: 'old', to: 'next', why },
        { value: '/figures/', to: '/leaves/', prefix: true, why },
      ),
    ).toEqual([])
  })
})
