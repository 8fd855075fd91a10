import { readlinkSync } from 'node:fs'
import { open, readdir, readFile, rm, stat } from 'node:fs/promises'
import { hostname } from 'node:os'
import { basename, dirname, join } from 'node:path'

/** The right to replace one version of a file. */
export interface Claim {
  /** The name for the new text until it is complete. */
  readonly part: string
  /** False if another process has taken over, because it holds this one to be dead. */
  readonly isLast: () => Promise<boolean>
  /** Deletes what dead writers of earlier versions left. Only if the file still has this version. */
  readonly sweep: () => Promise<void>
  /** Without `replaced`, claims of dead writers stay: while the version is there, their numbers are used up. */
  readonly release: (replaced: boolean) => Promise<void>
}

/** After this time a claim counts as left by a dead writer, even if its process cannot be looked up. */
export const ABANDONED_MS = 120_000

/** A claim without a text is one whose writer died between two system calls. */
const EMPTY_MS = 5000

/**
 * Claims a version of a file (a hash of its text), or gives the process that has the claim. Each claim has a number of its
 * own: the claim of a dead process is not deleted, but the next number is claimed, so that only one process takes over.
 */
export async function claimVersion(
  target: string,
  version: string,
): Promise<Claim | { readonly holder: string }> {
  const folder = dirname(target)
  const prefix = `.${basename(target)}.`
  const nameOf = (number: number, ending: string): string =>
    join(folder, `${prefix}${version}.${number}.${ending}`)
  let number = 1
  while (!(await create(nameOf(number, 'lock')))) {
    const holder = await findHolder(nameOf(number, 'lock'))
    if (holder !== undefined) return { holder }
    number += 1
  }
  const drop = async (isDropped: (version: string, number: number) => boolean): Promise<void> => {
    for (const name of await readdir(folder)) {
      const [, of, at] =
        /^(none|[0-9a-f]{16})\.([0-9]+)\.(?:lock|part)$/.exec(name.slice(prefix.length)) ?? []
      if (name.startsWith(prefix) && of !== undefined && isDropped(of, Number(at)))
        // That of another user may have to stay, where only owners delete.
        await rm(join(folder, name), { force: true }).catch(() => undefined)
    }
  }
  return {
    part: nameOf(number, 'part'),
    isLast: async () => !(await exists(nameOf(number + 1, 'lock'))),
    sweep: () => drop((of) => of !== version),
    release: (replaced) => drop((of, at) => of === version && (replaced ? at <= number : at === number)),
  }
}

/** Creates a claim with the name of this process in it; false if it is there. */
async function create(path: string): Promise<boolean> {
  try {
    const file = await open(path, 'wx')
    try {
      await file.writeFile(`process ${process.pid} on ${placeOfProcess()}`)
    } catch (error) {
      await rm(path, { force: true })
      throw error
    } finally {
      await file.close()
    }
    return true
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false
    throw error
  }
}

/** The process that has a claim; undefined if it is dead. */
async function findHolder(path: string): Promise<string | undefined> {
  const unknown = 'another process'
  const text = await readFile(path, 'utf8').catch(() => unknown)
  const made = await stat(path).catch(() => undefined)
  // It was released just now.
  if (made === undefined) return unknown
  const age = Date.now() - made.mtimeMs
  if (age > ABANDONED_MS || (text === '' && age > EMPTY_MS)) return undefined
  const [, pid, place] = /^process (\d+) on (.*)$/.exec(text) ?? []
  if (place === placeOfProcess() && !isRunning(Number(pid))) return undefined
  return text.replace(/ pid:\[\d+\]$/, '') || unknown
}

/** Where a process number means this process: the machine and, on Linux, the space of process numbers (a container has its own). */
function placeOfProcess(): string {
  try {
    return `${hostname()} ${readlinkSync('/proc/self/ns/pid')}`
  } catch {
    return hostname()
  }
}

function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0)
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM'
  }
}

async function exists(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  )
}
