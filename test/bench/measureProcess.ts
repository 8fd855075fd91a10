import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { pathToFileURL } from 'node:url'

export interface ProcessUse {
  readonly micros: number
  readonly mebibytes: number
}

/** CPU time and most memory of a fresh process that imports a file of dist with these arguments; without a file, an empty one. */
export function measureProcess(file?: string, words: readonly string[] = []): ProcessUse {
  if (!existsSync('dist/index.js')) throw new Error('Nothing is built; run npm run build first')
  const load =
    file === undefined ? '' : `await import(${JSON.stringify(pathToFileURL(`dist/${file}.js`).href)})`
  const code = `process.argv.splice(1, 0, 'drivetrain-service')
process.on('exit', () => {
  const { user, system } = process.cpuUsage()
  process.stderr.write(\`\\n\${user + system} \${process.resourceUsage().maxRSS}\`)
})
${load}`
  const { stderr, status } = spawnSync('node', ['--input-type=module', '-e', code, '--', ...words], {
    encoding: 'utf8',
    stdio: ['ignore', 'ignore', 'pipe'],
    maxBuffer: 1 << 28,
  })
  // A command may write there first.
  const [micros, kibibytes] = (stderr.trim().split('\n').at(-1) ?? '').split(' ').map(Number)
  // 1: an answer with findings.
  if ((status !== 0 && status !== 1) || !micros || !kibibytes)
    throw new Error(`${file} ${words.join(' ')} ended with ${status}: ${stderr}`)
  return { micros, mebibytes: kibibytes / 1024 }
}
