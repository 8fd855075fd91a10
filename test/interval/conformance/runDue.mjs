// Tests any implementation of the due rule against the cases of due.jsonl: node runDue.mjs <command> [arguments].
// The command gets one question in each line of standard input, and writes its verdict as a JSON text in one line.
import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'

const [command, ...words] = process.argv.slice(2)
if (command === undefined) {
  console.error('Which command? node runDue.mjs <command> [arguments]')
  process.exit(2)
}
const cases = readFileSync(new URL('due.jsonl', import.meta.url), 'utf8')
  .trimEnd()
  .split('\n')
  .map((line) => JSON.parse(line))
const input = cases.map(({ question }) => `${JSON.stringify(question)}\n`).join('')
const { stdout, status, error } = spawnSync(command, words, {
  input,
  encoding: 'utf8',
  stdio: ['pipe', 'pipe', 'inherit'],
})
if (error !== undefined || status !== 0) {
  console.error(error?.message ?? `${command} ended with ${status}`)
  process.exit(2)
}
const answers = stdout.trimEnd().split(/\r?\n/)
if (answers.length !== cases.length) {
  console.error(`${cases.length} questions, ${answers.length} answers`)
  process.exit(2)
}
const wrong = cases.flatMap(({ question, verdict }, place) =>
  answers[place] === JSON.stringify(verdict)
    ? []
    : [{ line: place + 1, question, verdict, answer: answers[place] }],
)
for (const one of wrong.slice(0, 5)) console.log(JSON.stringify(one))
console.log(`${cases.length} cases, ${wrong.length} wrong`)
process.exitCode = wrong.length > 0 ? 1 : 0
