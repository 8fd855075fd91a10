import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'

const COUNT = 1000
const { resolve } = createRequire(import.meta.url)
const example = JSON.parse(
  readFileSync(resolve('drivetrain-service/schemas/v1/vectors/bases/kvist-2/sheet.json'), 'utf8'),
)

/** Mistakes as people make them, each in one sheet of so many, counted from `first`: no sheet has two. */
const MISTAKES = [
  {
    // A figure with one digit too many.
    oneIn: 20,
    first: 1,
    make: (sheet) => {
      sheet.services['bevel-oil-change'].intervals.repeat.hours = '2500'
    },
  },
  {
    // A service of an unknown gearcase.
    oneIn: 50,
    first: 2,
    make: (sheet) => {
      sheet.services['bevel-oil-change'].gearcases = ['bevle']
    },
  },
  {
    // A misspelt key.
    oneIn: 125,
    first: 4,
    make: (sheet) => {
      sheet.gearcases.bevel.nmae = sheet.gearcases.bevel.name
      delete sheet.gearcases.bevel.name
    },
  },
]

rmSync('sheets', { recursive: true, force: true })
for (let number = 1; number <= COUNT; number += 1) {
  const id = `kvist-2-${String(number).padStart(4, '0')}`
  const sheet = { ...structuredClone(example), id }
  // A harmless difference, so that no two sheets are equal.
  sheet.machine.model = `Kvist 2 no. ${number}`
  for (const { oneIn, first, make } of MISTAKES) if (number % oneIn === first) make(sheet)
  mkdirSync(join('sheets', id), { recursive: true })
  writeFileSync(join('sheets', id, 'sheet.json'), JSON.stringify(sheet, null, 2))
}

const command = join(dirname(resolve('drivetrain-service/package.json')), 'dist/cli/main.js')
const check = spawnSync(process.execPath, [command, 'check', 'sheets', '--format', 'sarif'], {
  encoding: 'utf8',
  maxBuffer: 1e9,
  stdio: ['ignore', 'pipe', 'inherit'],
})
writeFileSync('findings.sarif', check.stdout)
const { results } = JSON.parse(check.stdout).runs[0]
const counts = new Map()
for (const { level, ruleId } of results) {
  const key = `${level} ${ruleId}`
  counts.set(key, (counts.get(key) ?? 0) + 1)
}
console.log(`${COUNT} sheets, ${results.length} findings in findings.sarif`)
for (const [key, count] of [...counts].sort()) console.log(`${count} × ${key}`)
console.log(`exit code ${check.status}`)
// A build stops at the code of the command.
process.exitCode = check.status ?? 2
