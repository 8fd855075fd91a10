import { readdirSync, readFileSync } from 'node:fs'
import * as flowThroughTubes from '../../published/flowThroughTubes.js'
import * as inspectionWindows from '../../published/inspectionWindows.js'
import * as meterSignals from '../../published/meterSignals.js'
import * as oilGrades from '../../published/oilGrades.js'
import * as plainDateArithmetic from '../../published/plainDateArithmetic.js'
import * as plugsMtn5183 from '../../published/plugsMtn5183.js'
import * as proofLoads from '../../published/proofLoads.js'
import * as proofSaeJ429 from '../../published/proofSaeJ429.js'
import * as referencePrograms from '../../published/referencePrograms.js'
import * as seals from '../../published/seals.js'
import * as sen1968 from '../../published/sen1968.js'
import * as signalWords from '../../published/signalWords.js'
import * as threadStressAreas from '../../published/threadStressAreas.js'
import * as torqueAdaptors from '../../published/torqueAdaptors.js'
import * as torqueIso6789 from '../../published/torqueIso6789.js'
import * as torqueVdi2230 from '../../published/torqueVdi2230.js'
import * as unitCodes from '../../published/unitCodes.js'
import * as unitConversions from '../../published/unitConversions.js'
import * as viscosityIndex from '../../published/viscosityIndex.js'
import * as viscosityTemperature from '../../published/viscosityTemperature.js'
import { type OriginOfRows, OUTSIDE, originOf, type Room } from '../../support/published.js'

/** Every file of `test/published/`; a test compares this list with the folder. */
export const PUBLISHED = {
  flowThroughTubes,
  inspectionWindows,
  meterSignals,
  oilGrades,
  plainDateArithmetic,
  plugsMtn5183,
  proofLoads,
  proofSaeJ429,
  referencePrograms,
  seals,
  sen1968,
  signalWords,
  threadStressAreas,
  torqueAdaptors,
  torqueIso6789,
  torqueVdi2230,
  unitCodes,
  unitConversions,
  viscosityIndex,
  viscosityTemperature,
}

/** Rooms in the order of the page, with what was searched and not found. */
const ROOMS: Readonly<Record<Room, string | undefined>> = {
  units: undefined,
  calendar: undefined,
  interval:
    'A published date forecast from readings of an hour meter: found only in manuals of products for this job, which are not used here.',
  torque:
    'VDI 2230 for coarse threads as text, and the class table of ISO 6789-1:2017, clause 5.1.5: not found.',
  thread: 'A table of plug torques by thread for dry threads: not found.',
  oil: 'A printed value of ASTM D1250, Table 54D: only its errata could be read. ISO 3448 above VG 1000, SAE J300 grade 12: from memory.',
  fill: 'Printed answers of White’s problems 6.18 and 6.27, and of a tube of oil that falls freely: the copies end before them.',
  seal: 'The table of DIN 7603 itself, and of ISO 3601-2: not found. Rows of AS568 from 3xx up contradict each other.',
  'signal words':
    'The text of ANSI Z535.6, ISO 3864-2 or IEC/IEEE 82079-1: only quotations were found. AVISO, ATTENTION and AVIS in this sense in a manual: not found.',
}

/** Conversions are easy to check: no more of them count. */
const MOST_UNITS = 60

/** Programs of others that judge results, but publish no values to compare; by their package, or the name in the test. */
const JUDGES: readonly (readonly [program: string, judges: string, test: string])[] = [
  ['ajv', 'documents good and bad, by the JSON Schemas', 'test/schema/jsonSchema.test.ts'],
  ['python3-jsonschema', 'the same documents and schemas, in Python', 'test/schema/jsonSchema.test.ts'],
  ['@duckdb/node-api', 'the due rule as SQL, on thousands of drawn rows', 'test/interval/fleet.test.ts'],
  ['@electric-sql/pglite', 'the same in PostgreSQL', 'test/interval/fleet.test.ts'],
  ['sql.js', 'the same in SQLite', 'test/interval/fleet.test.ts'],
  ['hast-util-from-html', 'cards as HTML, read as a browser reads them', 'test/card/renderHtml.test.ts'],
  ['mdast-util-from-markdown', 'cards as Markdown, read back', 'test/card/markdownOracle.test.ts'],
  ['csv-parse', 'tables that the command line writes', 'test/cli/sheetTable.test.ts'],
  ['n2words', 'numbers in words, German, Spanish and French', 'test/message/de.test.ts'],
  ['axe-core', 'cards in a browser: whether everybody can read them', 'test/browser/judgeCards.ts'],
]

interface Table {
  readonly name: string
  readonly origin: OriginOfRows
  readonly tests: readonly string[]
}

/** Exported tables and worked examples that declare no origin. */
export function listUndeclared(): readonly string[] {
  return exportedTables().flatMap(([name, rows]) => (originOf(rows) === undefined ? [name] : []))
}

export function readTables(): readonly Table[] {
  const tests = readdirSync('test', { recursive: true, encoding: 'utf8' })
    .map((file) => `test/${file.replaceAll('\\', '/')}`)
    .filter((file) => file.endsWith('.test.ts') && !file.startsWith('test/docs/'))
    .map((file) => [file, readFileSync(file, 'utf8')] as const)
  return exportedTables().flatMap(([name, rows, file]) => {
    const origin = originOf(rows)
    // An import alone compares nothing: the name must come again.
    const used = tests.filter(
      ([, text]) =>
        text.includes(`/published/${file}.js'`) &&
        (text.match(new RegExp(`\\b${name}\\b`, 'g')) ?? []).length > 1,
    )
    return origin === undefined ? [] : [{ name, origin, tests: used.map(([file]) => file) }]
  })
}

/** The programs that judge results, each with the test that runs it. */
export function listJudges(): readonly (readonly [program: string, test: string])[] {
  return JUDGES.map(([program, , test]) => [program, test])
}

/** Statements of outside sources that tests compare with results, by room; of units at most 60. */
export function countChecks(tables: readonly Table[]): ReadonlyMap<Room, number> {
  return new Map(
    (Object.keys(ROOMS) as Room[]).map((room) => {
      const found = sum(outside(tables, room), ({ statements }) => statements)
      return [room, room === 'units' ? Math.min(found, MOST_UNITS) : found]
    }),
  )
}

export function renderChecks(): string {
  const tables = readTables()
  const counts = countChecks(tables)
  const total = sum([...counts.values()], (count) => count)
  const others = tables.filter(({ origin }) => !OUTSIDE.includes(origin.read))
  const rooms = [...counts.keys()]
  const { devDependencies: versions } = JSON.parse(readFileSync('package.json', 'utf8')) as {
    readonly devDependencies: Readonly<Record<string, string>>
  }
  return `# Outside checks

What the tests compare with a standard, a handbook, a data set or a program of others. Generated from the declarations in
\`test/published/\` by \`npm run generate\`; a test compares this page with them.

- A **check** is one statement that its source makes by itself: a row of a table, a worked example. Several points of one window,
  or several examples in one sentence, are one check.
- **Read** says how the value came here. *In the source* and *where it is quoted* (a page that prints the standard's numbers; the
  standard itself was not seen) count, and so does a program that runs in the test. Values that were *calculated* here from what a
  source states, or that are *from memory*, are listed at the end and do not count.
- **Result**: every test named here passes in the commit of this page, with the agreement that is stated. And it can fail:
  \`test/docs/checks.long.test.ts\` changes a value in each row of a table that was read, and its test notices: one table of each room
  in \`npm run test:all\`, all of them with \`DRIVETRAIN_SPOIL_ALL=1\`.

\`\`\`sh
npx vitest run --config test/vitest.config.ts test/oil   # the checks of one room
\`\`\`

| room | checks | published values compared |
| --- | --- | --- |
${rooms.map((room) => `| ${room} | ${counts.get(room)}${room === 'units' ? ` (of ${sum(outside(tables, room), ({ statements }) => statements)}; ${MOST_UNITS} count)` : ''} | ${sum(outside(tables, room), ({ values }) => values)} |`).join('\n')}
| **all** | **${total}** | **${sum(
    rooms.flatMap((room) => outside(tables, room)),
    ({ values }) => values,
  )}** |

${rooms.map((room) => renderRoom(room, tables)).join('\n')}
## Not counted

| what | edition, place | read | values | result | test |
| --- | --- | --- | --- | --- | --- |
${others.map((table) => renderRow(table)).join('\n')}

Spellings of quantities (\`test/quantity/support/unitTexts.ts\`), the sizes of bolt heads in \`test/torque/clampLoad.test.ts\` and the
limit from which a wrench is called low on its scale are common practice or from memory, and not in these tables.

## Programs that judge results

They publish no values, so they do not count, but a mistake of ours is unlikely to be theirs too.

| program | version | judges | test |
| --- | --- | --- | --- |
${JUDGES.map(([program, judges, test]) => `| ${program} | ${versions[program] ?? 'of Debian'} | ${judges} | \`${test}\` |`).join('\n')}
`
}

function renderRoom(room: Room, tables: readonly Table[]): string {
  const rows = tables.filter(({ origin }) => origin.room === room && OUTSIDE.includes(origin.read))
  return `## ${room.charAt(0).toUpperCase()}${room.slice(1)}

| source | edition, place | read | checks | values | result | test |
| --- | --- | --- | --- | --- | --- | --- |
${rows.map((table) => renderRow(table, true)).join('\n')}
${ROOMS[room] === undefined ? '' : `\nSearched: ${ROOMS[room]}\n`}`
}

function renderRow({ origin, tests }: Table, counted = false): string {
  const { source, edition, place, read, note, statements, values, agrees } = origin
  const cells = [
    note === undefined ? source : `${source} (${note})`,
    `${edition}; ${place}`,
    read,
    ...(counted ? [statements] : []),
    values,
    agrees,
    tests.map((file) => `\`${file.slice('test/'.length)}\``).join(', '),
  ]
  return `| ${cells.map((cell) => String(cell).replaceAll('|', '\\|').replaceAll('*', '\\*')).join(' | ')} |`
}

/** By name in each file: a bundle and a test runner list the exports of a module in different orders. */
function exportedTables(): readonly (readonly [name: string, rows: object, file: string])[] {
  return Object.entries(PUBLISHED).flatMap(([file, exported]) =>
    Object.entries(exported)
      .filter((entry): entry is [string, object] => typeof entry[1] === 'object')
      .sort(([first], [second]) => (first < second ? -1 : 1))
      .map(([name, rows]) => [name, rows, file] as const),
  )
}

function outside(tables: readonly Table[], room: Room): readonly OriginOfRows[] {
  return tables
    .map(({ origin }) => origin)
    .filter((origin) => origin.room === room && OUTSIDE.includes(origin.read))
}

function sum<Item>(items: readonly Item[], of: (item: Item) => number): number {
  return items.reduce((total, item) => total + of(item), 0)
}
