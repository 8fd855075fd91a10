import { execFileSync, spawnSync } from 'node:child_process'
import {
  chmod,
  chown,
  lstat,
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  readlink,
  rm,
  stat,
  symlink,
  utimes,
  writeFile,
} from 'node:fs/promises'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { type SaveOptions, type SaveStep, saveFile } from '../../src/cli/saveFile.js'
import { cases } from '../support/law.js'
import { usageText } from '../support/usageText.js'

const STEPS: readonly SaveStep[] = [
  'claimed',
  'swept',
  'opened',
  'piece written',
  'synced',
  'checked',
  'renamed',
  'confirmed',
]
/** The steps after which the file has the new text. */
const NEW: readonly SaveStep[] = ['renamed', 'confirmed']
const isRoot = process.getuid?.() === 0
/** Three pieces. */
const LONG = `${'A log that is longer than one piece. '.repeat(4000)}\n`

let root = ''
let folder = ''
let log = ''
let child = ''

beforeAll(async () => {
  root = await mkdtemp(join(tmpdir(), 'skarnfell-save-'))
  await chmod(root, 0o755)
  child = join(root, 'child.mjs')
  // Appends a line to a file; dies at a step, if one is named.
  const contents = `
    import { saveFile } from './saveFile.ts'
    const [path, line, step, times = '1'] = process.argv.slice(2)
    let left = Number(times)
    const onStep = (at) => { if (at === step && --left === 0) process.kill(process.pid, 'SIGKILL') }
    await saveFile(path, (old = '') => old + line + '\\n', { onStep }).catch((error) => {
      process.stderr.write(error.code ?? error.message)
      process.exitCode = 1
    })`
  const stdin = { contents, resolveDir: 'src/cli', loader: 'ts' } as const
  await build({ stdin, bundle: true, platform: 'node', format: 'esm', outfile: child, logLevel: 'error' })
})
afterAll(() => rm(root, { recursive: true, force: true }))
beforeEach(async () => {
  folder = await mkdtemp(join(root, 'set-'))
  await chmod(folder, 0o777)
  log = join(folder, 'log.json')
})

const text = (path = log) => readFile(path, 'utf8')
const save = (path: string, written: string, options: SaveOptions = {}) =>
  saveFile(path, () => written, options)
const append = (line: string, options: SaveOptions = {}) =>
  saveFile(log, (oldText = '') => `${oldText}${line}\n`, options)
const runChild = (words: readonly string[], options: object = {}) =>
  spawnSync(process.execPath, [child, ...words], { encoding: 'utf8', ...options })

describe('a file', () => {
  it('is written into folders that are made first, then replaced, and nothing else is left', async () => {
    const card = join(folder, 'one', 'two', 'card.txt')
    await save(card, 'first')
    await save(card, 'second')
    await save(card, 'second')
    expect(await text(card)).toBe('second')
    expect(await readdir(join(folder, 'one', 'two'))).toEqual(['card.txt'])
  })

  it('is made from what is there, and left if there is nothing to write', async () => {
    const oldTexts: (string | undefined)[] = []
    const make = (nextText: string | undefined) => (oldText: string | undefined) => {
      oldTexts.push(oldText)
      return nextText
    }
    await saveFile(log, make(undefined))
    expect(await readdir(folder)).toEqual([])
    await saveFile(log, make('Größe ½'))
    await saveFile(log, make(undefined))
    expect(oldTexts).toEqual([undefined, undefined, 'Größe ½'])
    expect(await text()).toBe('Größe ½')
  })

  it('keeps its mode', async () => {
    await save(log, 'old')
    await chmod(log, 0o640)
    await save(log, 'new')
    expect((await stat(log)).mode & 0o7777).toBe(0o640)
  })

  it.skipIf(!isRoot)('keeps its owner; the group loses its rights if it cannot stay', async () => {
    await save(log, 'old\n')
    await chmod(log, 0o664)
    await chown(log, 4321, 1234)
    await append('root')
    expect(await stat(log)).toMatchObject({ uid: 4321, gid: 1234 })
    expect(runChild([log, 'other'], { uid: 4999, gid: 1234 }).status).toBe(0)
    expect(await stat(log)).toMatchObject({ uid: 4999, gid: 1234, mode: 0o100664 })
    await chmod(log, 0o666)
    expect(runChild([log, 'stranger'], { uid: 5000, gid: 5000 }).status).toBe(0)
    expect(await stat(log)).toMatchObject({ uid: 5000, gid: 5000, mode: 0o100606 })
    expect(await text()).toBe('old\nroot\nother\nstranger\n')
  })

  it.skipIf(!isRoot)('is written beside what another user left, where only owners delete', async () => {
    const left = join(folder, '.log.json.0123456789abcdef.1.lock')
    await save(log, 'old\n')
    await writeFile(left, 'process 1 on another machine')
    await chown(log, 4999, 4999)
    await chmod(folder, 0o1777)
    expect(runChild([log, 'new'], { uid: 4999, gid: 4999 })).toMatchObject({ status: 0 })
    expect(await text()).toBe('old\nnew\n')
    expect(await readdir(folder)).toEqual(['.log.json.0123456789abcdef.1.lock', 'log.json'])
  })

  it.skipIf(!isRoot)('that must not be written, or whose folder must not, stays', async () => {
    await save(log, 'old')
    await chmod(log, 0o444)
    expect(runChild([log, 'x'], { uid: 4999, gid: 4999 })).toMatchObject({ status: 1, stderr: 'EACCES' })
    await chmod(log, 0o666)
    await chmod(folder, 0o555)
    expect(runChild([log, 'x'], { uid: 4999, gid: 4999 })).toMatchObject({ status: 1, stderr: 'EACCES' })
    expect(await text()).toBe('old')
    expect(await readdir(folder)).toEqual(['log.json'])
  })
})

describe('links', () => {
  it('stay, and the file behind them is written', async () => {
    const realPath = join(folder, 'real', 'log.json')
    await save(realPath, 'old')
    await symlink('real/log.json', log)
    await save(log, 'new')
    expect(await readlink(log)).toBe('real/log.json')
    expect(await text(realPath)).toBe('new')
    expect(await readdir(join(folder, 'real'))).toEqual(['log.json'])
  })

  it('to a file that does not exist yet make it', async () => {
    await mkdir(join(folder, 'real'))
    await symlink('real', join(folder, 'short'))
    await symlink('../log.json', join(folder, 'real', 'up'))
    await save(join(folder, 'short', 'up'), 'new')
    expect(await text()).toBe('new')
  })

  it('in a circle are an error', async () => {
    await symlink('b', join(folder, 'a'))
    await symlink('a', join(folder, 'b'))
    await expect(save(join(folder, 'a'), 'x')).rejects.toMatchObject({ code: 'ELOOP' })
  })
})

describe('anything but a file is refused and unchanged', () => {
  const expectRefused = async (word: string) => {
    const before = await lstat(log)
    expect(await usageText(() => save(log, 'x'))).toContain(
      `log.json: is ${word}, not a file; nothing was written`,
    )
    expect(await lstat(log)).toMatchObject({ mode: before.mode, ino: before.ino })
    expect(await readdir(folder)).toEqual(['log.json'])
  }

  it('a folder', async () => {
    await mkdir(log)
    await expectRefused('a folder')
  })
  it('a pipe', async () => {
    execFileSync('mkfifo', [log])
    await expectRefused('a pipe')
  })
  it('a socket', async () => {
    const server = createServer().listen(log)
    await new Promise((listening) => server.on('listening', listening))
    await expectRefused('a socket')
    server.close()
  })
  it('a device', async ({ skip }) => {
    // Our own device node, with the numbers of the null device.
    skip(spawnSync('mknod', [log, 'c', '1', '3']).status !== 0, 'this account cannot make a device')
    await expectRefused('a device')
  })
  it('a place below a file', async () => {
    await save(log, 'old')
    await expect(save(join(log, 'card.txt'), 'x')).rejects.toThrow(/ENOTDIR|EEXIST/)
    expect(await text()).toBe('old')
  })
})

describe('a save that fails', () => {
  it.each(STEPS)('at “%s” leaves the old file or the new one, and nothing else', async (step) => {
    await save(log, 'old')
    const onStep = (at: SaveStep) => {
      if (at === step) throw Object.assign(new Error('no space'), { code: 'ENOSPC' })
    }
    await expect(save(log, LONG, { onStep })).rejects.toMatchObject({ code: 'ENOSPC' })
    expect(await text()).toBe(NEW.includes(step) ? LONG : 'old')
    expect(await readdir(folder)).toEqual(['log.json'])
  })

  it('on a full disk leaves the old file', async ({ skip }) => {
    const disk = join(folder, 'disk')
    await mkdir(disk)
    const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', disk]).status === 0
    skip(!mounted, 'this account cannot mount a small disk')
    try {
      await save(join(disk, 'log.json'), 'old')
      await expect(save(join(disk, 'log.json'), LONG)).rejects.toMatchObject({ code: 'ENOSPC' })
      expect(await text(join(disk, 'log.json'))).toBe('old')
      expect(await readdir(disk)).toEqual(['log.json'])
      // There is not even space for the claim.
      await writeFile(join(disk, 'filler'), Buffer.alloc(65_536)).catch(() => undefined)
      await expect(save(join(disk, 'log.json'), 'new')).rejects.toMatchObject({ code: 'ENOSPC' })
      await rm(join(disk, 'filler'))
      await save(join(disk, 'log.json'), 'new')
      expect(await readdir(disk)).toEqual(['log.json'])
    } finally {
      spawnSync('umount', [disk])
    }
  })

  it('on a limit of the file size leaves the old file', async () => {
    await save(log, LONG)
    // In blocks of 512 or 1024 bytes, as the shell counts: less than the file has.
    const words = ['-c', 'ulimit -f 100; exec "$0" "$@"', process.execPath, child, log, 'x']
    expect(spawnSync('sh', words, { encoding: 'utf8' })).toMatchObject({ status: 1, stderr: 'EFBIG' })
    expect(await text()).toBe(LONG)
    expect(await readdir(folder)).toEqual(['log.json'])
  })

  it('on a disk that is too slow leaves the old file', async () => {
    await save(log, 'old')
    const onStep = async (step: SaveStep) => {
      if (step === 'synced') await new Promise((done) => setTimeout(done, 60))
    }
    expect(await usageText(() => save(log, 'new', { onStep, maxMs: 50 }))).toMatch(
      /the disk is too slow; nothing was written/,
    )
    expect(await text()).toBe('old')
    expect(await readdir(folder)).toEqual(['log.json'])
  })
})

/** 10 kills or pairs in `npm test`, 120 in the long run, 200 with `DRIVETRAIN_LAW_TIMES=10`. */
const KILLS = cases(20)

describe('writers that die', () => {
  it(`${KILLS} kills inside the write: old or new, and the next writer writes`, async () => {
    let expected = LONG
    await save(log, expected)
    for (let kill = 0; kill < KILLS; kill++) {
      const step = STEPS[kill % STEPS.length] as SaveStep
      // The first, second or third piece.
      const times = step === 'piece written' ? String(1 + (Math.floor(kill / STEPS.length) % 3)) : '1'
      const died = runChild([log, `killed ${kill}`, step, times])
      expect(died, `${step} ${died.stderr}`).toMatchObject({ signal: 'SIGKILL' })
      if (NEW.includes(step)) expected += `killed ${kill}\n`
      expect(await text(), step).toBe(expected)
      // Two deaths, one after the other, in every third case.
      if (kill % 3 === 0) {
        await append(`alive ${kill}`)
        expected += `alive ${kill}\n`
        expect(await text()).toBe(expected)
        expect(await readdir(folder)).toEqual(['log.json'])
      }
    }
    await append('last')
    expect(await text()).toBe(`${expected}last\n`)
    expect(await readdir(folder)).toEqual(['log.json'])
  }, 1_800_000)

  const claimOf = async (content: string, agedSeconds = 0) => {
    await save(log, 'old\n')
    // A process makes a claim and dies.
    runChild([log, 'x', 'claimed'])
    const [name = ''] = (await readdir(folder)).filter((candidate) => candidate.endsWith('.lock'))
    const claim = join(folder, name)
    await writeFile(claim, content === 'as written' ? await text(claim) : content)
    const createdSeconds = Date.now() / 1000 - agedSeconds
    await utimes(claim, createdSeconds, createdSeconds)
    return claim
  }

  it('are known by their process; a claim of another machine or without a text counts for a time', async () => {
    for (const [content, seconds, isFree] of [
      ['as written', 0, true],
      [`process 1 on another machine`, 0, false],
      [`process 1 on another machine`, 100, false],
      [`process 1 on another machine`, 121, true],
      ['', 0, false],
      ['', 6, true],
    ] as const) {
      const claim = await claimOf(content, seconds)
      const pendingSave = append('new', { waitMs: 0 })
      if (isFree) await pendingSave
      else {
        const writer = content === '' ? 'another process' : content
        expect(await usageText(() => pendingSave)).toContain(`${writer} is writing it; try again`)
        await rm(claim)
      }
      expect(await text(), `${content} ${seconds}`).toBe(isFree ? 'old\nnew\n' : 'old\n')
      expect(await readdir(folder)).toEqual(['log.json'])
      await rm(log)
    }
  })

  it('waits for the claim of a running process, then takes it when the process ends', async () => {
    const claim = await claimOf('')
    await writeFile(claim, (await text(claim)) || `process ${process.pid} on x`)
    setTimeout(() => void rm(claim), 80)
    await append('new', { waitMs: 5000 })
    expect(await text()).toBe('old\nnew\n')
  })

  it('one that was held to be dead, and wakes, does not write over the other', async () => {
    await save(log, 'old\n')
    let isFirst = true
    const onStep = async (step: SaveStep) => {
      if (step !== 'synced' || !isFirst) return
      isFirst = false
      const [name = ''] = (await readdir(folder)).filter((candidate) => candidate.endsWith('.lock'))
      await utimes(join(folder, name), 0, 0)
      await append('second')
    }
    await append('first', { onStep })
    expect(await text()).toBe('old\nsecond\nfirst\n')
    expect(await readdir(folder)).toEqual(['log.json'])
  })
})

describe('writers at the same time', () => {
  it('in one process: all lines are there', async () => {
    const lines = Array.from({ length: 30 }, (_, place) => `line ${place}`)
    await Promise.all(lines.map((line) => append(line, { waitMs: 60_000 })))
    expect((await text()).trim().split('\n').sort()).toEqual([...lines].sort())
    expect(await readdir(folder)).toEqual(['log.json'])
  })

  it('on a slow disk: a reader sees old or new, and no line is lost', async () => {
    await save(log, LONG)
    const onStep = () => new Promise<void>((done) => setTimeout(done, 15))
    let isDone = false
    const pendingSave = Promise.all(['a', 'b', 'c'].map((line) => append(line, { onStep, waitMs: 60_000 })))
    const whenSaved = pendingSave.then(() => {
      isDone = true
    })
    const seen = new Set<string>()
    while (!isDone) {
      seen.add((await text()).slice(LONG.length))
      await new Promise((done) => setTimeout(done, 2))
    }
    await whenSaved
    const last = (await text()).slice(LONG.length)
    expect(last.trim().split('\n').sort()).toEqual(['a', 'b', 'c'])
    for (const candidate of seen) expect(['', last.slice(0, 2), last.slice(0, 4), last]).toContain(candidate)
    expect(seen.size).toBeGreaterThan(2)
  })

  it('a change by a program without claims is not overwritten', async () => {
    await save(log, 'old\n')
    let isFirst = true
    const onStep = async (step: SaveStep) => {
      if (step === 'synced' && isFirst) await writeFile(log, 'edited\n')
      isFirst &&= step !== 'synced'
    }
    await append('new', { onStep })
    expect(await text()).toBe('edited\nnew\n')
  })
})
