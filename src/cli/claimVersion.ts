import { readlinkSync } from 'node:fs'
import { open, readdir, readFile, rm, stat } from 'node:fs/promises'
import { hostname } from 'node:os'
import { basename, dirname, join } from 'node:path'

/** The right to replace one version of a file. */
export interface Claim {
  /** Path of the new text until it is complete. */
  readonly part: string
  /** False if another process has taken over because it considers this one dead. */
  readonly isCurrent: () => Promise<boolean>
  /**
   * Deletes the claims of dead writers for earlier versions. Call it only if the file still has this
   * version.
   */
  readonly deleteLeftovers: () => Promise<void>
  /**
   * If the file was not replaced, claims of dead writers stay: their numbers must not be used again for this
   * version.
   */
  readonly release: (isReplaced: boolean) => Promise<void>
}

/** After this time the writer of a claim is considered dead, even if its process cannot be looked up. */
export const ABANDONED_AFTER_MS = 120_000

/** The writer of an empty claim died between two system calls. */
const EMPTY_CLAIM_AFTER_MS = 5000

/**
 * Claims a version of a file (a hash of its text), or returns the process that holds the claim. Claims are
 * numbered: a dead process's claim is not deleted, and the next number is claimed instead, so only one
 * process takes over.
 */
export async function claimVersion(
  target: string,
  version: string,
): Promise<Claim | { readonly holder: string }> {
  const folder = dirname(target)
  const prefix = `.${basename(target)}.`
  const makePath = (number: number, fileEnding: string): string =>
    join(folder, `${prefix}${version}.${number}.${fileEnding}`)
  let number = 1
  while (!(await createClaim(makePath(number, 'lock')))) {
    const holder = await findHolder(makePath(number, 'lock'))
    if (holder !== undefined) return { holder }
    number += 1
  }
  const deleteClaims = async (isDeletable: (version: string, number: number) => boolean): Promise<void> => {
    for (const name of await readdir(folder)) {
      const [, claimedVersion, claimNumber] =
        /^(none|[0-9a-f]{16})\.([0-9]+)\.(?:lock|part)$/.exec(name.slice(prefix.length)) ?? []
      if (
        name.startsWith(prefix) &&
        claimedVersion !== undefined &&
        isDeletable(claimedVersion, Number(claimNumber))
      )
        // Another user's file may have to stay: in some folders only the owner may delete.
        await rm(join(folder, name), { force: true }).catch(() => undefined)
    }
  }
  return {
    part: makePath(number, 'part'),
    isCurrent: async () => !(await exists(makePath(number + 1, 'lock'))),
    deleteLeftovers: () => deleteClaims((claimedVersion) => claimedVersion !== version),
    release: (isReplaced) =>
      deleteClaims(
        (claimedVersion, claimNumber) =>
          claimedVersion === version && (isReplaced ? claimNumber <= number : claimNumber === number),
      ),
  }
}

/** Creates a claim that names this process; false if the claim exists. */
async function createClaim(path: string): Promise<boolean> {
  try {
    const file = await open(path, 'wx')
    try {
      await file.writeFile(`process ${process.pid} on ${describeHost()}`)
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

/** The process that holds a claim: its number and host, empty if unknown; undefined if it is dead. */
async function findHolder(path: string): Promise<string | undefined> {
  const unknownHolder = ''
  const text = await readFile(path, 'utf8').catch(() => '?')
  const stats = await stat(path).catch(() => undefined)
  // The claim has just been released.
  if (stats === undefined) return unknownHolder
  const age = Date.now() - stats.mtimeMs
  if (age > ABANDONED_AFTER_MS || (text === '' && age > EMPTY_CLAIM_AFTER_MS)) return undefined
  const [, pid, host] = /^process (\d+) on (.*)$/.exec(text) ?? []
  if (host === describeHost() && !isRunning(Number(pid))) return undefined
  return host === undefined ? unknownHolder : `${pid} on ${host.replace(/ pid:\[\d+\]$/, '')}`
}

/** The scope of process numbers: the host and, on Linux, the process namespace (a container has its own). */
function describeHost(): string {
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
