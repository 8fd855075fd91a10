import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'

const page = readFileSync('docs/reliability.md', 'utf8')
const source = (name: string): string => readFileSync(`test/cli/${name}.test.ts`, 'utf8')
const rows = [...page.matchAll(/^\| ([^|]+) \| ([^|]+) \| ([\d, ]+) \| `(\w+)`: ([^|]+) \|$/gm)].map(
  ([, fault = '', , runs = '', file = '', title = '']) => ({ fault, runs, file, title }),
)
/** `cases(n)` in npm test, in the long run and with ten times the cases. */
const drawn = (file: string, constant: string): string => {
  const cases = Number(new RegExp(`^const ${constant} = cases\\((\\d+)\\)$`, 'm').exec(source(file))?.[1])
  return [0.5, 6, 10].map((times) => Math.ceil(cases * times)).join(', ')
}
const runsOf = (title: string): string | undefined => rows.find((row) => row.title.startsWith(title))?.runs

it('names tests that exist', () => {
  expect(rows).toHaveLength(page.match(/^\| .*`: /gm)?.length ?? 0)
  expect(rows.length).toBeGreaterThanOrEqual(16)
  const missing = rows.filter(({ file, title }) => !source(file).includes(title))
  expect(missing).toEqual([])
})

it('has the numbers of the tests', () => {
  const saves = source('saveFile')
  expect(runsOf('kills inside')).toBe(drawn('saveFile', 'KILLS'))
  expect(runsOf('pairs of records')).toBe(drawn('saveLog', 'PAIRS'))
  const steps = /const STEPS[^[]*\[[^[]*\[([^\]]+)\]/.exec(saves)?.[1]?.match(/'/g)?.length ?? 0
  expect(runsOf('leaves the old file or the new')).toBe(`${steps / 2}`)
  expect(page.match(/each of (\d+) steps/g)).toEqual([
    `each of ${steps / 2} steps`,
    `each of ${steps / 2} steps`,
  ])
  const writers = /Array\.from\(\{ length: (\d+) \}, \(_, place\) => `line/.exec(saves)?.[1]
  expect(page).toContain(`| ${writers} writers at once in one process`)
  const claims =
    /of another machine or without a text counts[\s\S]*?for \(const \[.*of \[\n([\s\S]*?)\] as const/.exec(
      saves,
    )?.[1]
  expect(runsOf('are known by their process')).toBe(`${claims?.trim().split('\n').length}`)
  const refused = /describe\('anything but a file[\s\S]*?\n\}\)\n/
    .exec(saves)?.[0]
    .match(/^ {2}it\(/gm)?.length
  expect(runsOf('a device')).toBe(`${refused}`)
  const links = /describe\('links'[\s\S]*?\n\}\)\n/.exec(saves)?.[0].match(/^ {2}it\(/gm)?.length
  expect(runsOf('in a circle')).toBe(`${links}`)
  expect(saves).toContain('size=64k')
  const input = source('badInput')
  expect(input).toContain("'x'.repeat(10_000_000)")
  expect(input).toContain("'['.repeat(9000)")
})
